//! Does a test pressure stay, once its temperature is taken into account?

use super::COVERAGE;
use super::flow::Before;
use super::gas::DecayGas;
use crate::circuit::{Estimate, Reading};
use crate::error::Error;
use crate::names::{LeakFinding, Quantity, Refrigerant};
use crate::numerics::sqrt;
use crate::range::{ABSOLUTE_PRESSURE, DURATION, GAUGE_PRESSURE, LINE_TEMPERATURE, MASS, Range, TEMPERATURE, VOLUME};
use crate::units::{
    AbsolutePressure, GaugePressure, Mass, MassFlow, Pressure, PressureDifference, Surroundings, Temperature, TimeSpan,
    Volume, difference_in_kelvins, in_kelvins,
};

/// Step of temperature for derivatives, K.
const STEP_K: f64 = 0.5;

/// Step of pressure for derivatives, relative.
const STEP: f64 = 1e-4;

/// The highest test pressure without a caution where no label names one. Source: engineering judgement: the high
/// sides of condensing systems are cut out near 30 bar (`tables/evidence/limits.csv`), and low sides withstand less.
pub const MOST_TEST: GaugePressure = GaugePressure::from_pa(3_000_000.0);

/// A test should be able to show a leak that empties the vehicle in this time, s: a year. Source: engineering judgement: a
/// vehicle that comes back within a season counts as a failed repair.
const EMPTY_WITHIN_S: f64 = 365.25 * 86_400.0;

/// What the circuit is filled with in service, for the loss as refrigerant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Served {
    /// The refrigerant.
    pub refrigerant: Refrigerant,
    /// Its temperature at rest, vapour over liquid; the ambient.
    pub temperature: Temperature,
    /// The charge that the label names.
    pub charge: Option<Mass>,
}

/// A test pressure that is watched.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Decay {
    /// The gas.
    pub gas: DecayGas,
    /// Pressure at the start.
    pub start: Reading<Pressure>,
    /// Temperature of the gas at the start.
    pub start_temperature: Reading<Temperature>,
    /// Pressure at the end, on the same gauge.
    pub end: Reading<Pressure>,
    /// Temperature of the gas at the end.
    pub end_temperature: Reading<Temperature>,
    /// Repeatability of the gauge from one reading to the next, as a standard uncertainty; the rest of its error is the same
    /// both times.
    pub repeatability: PressureDifference,
    /// Time between the two.
    pub held: TimeSpan,
    /// The air at the place.
    pub surroundings: Surroundings,
    /// Volume of the circuit and the hoses, for the rate.
    pub volume: Option<Reading<Volume>>,
    /// The loss that is allowed, of this gas.
    pub allowed: Option<MassFlow>,
    /// The highest test pressure that the label allows; [`MOST_TEST`] where it was not given.
    pub label_pressure: Option<GaugePressure>,
    /// What the circuit is filled with in service.
    pub served: Option<Served>,
}

/// The judgement of the decay of a test pressure.
///
/// ```
/// use coldloop::{LeakFinding, intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let leak = visit.prove()?.pressure_test.expect("it was tested");
/// assert_eq!(leak.finding, LeakFinding::NoLossSeen);
/// // What a test of this length in this air can see: smaller leaks are not excluded.
/// assert!(leak.least_seen.is_some_and(|least| least.kg_s() > 0.0));
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Leak {
    /// The judgement.
    pub finding: LeakFinding,
    /// The pressure that the end would have shown without any loss.
    pub tight_end: AbsolutePressure,
    /// Share of the gas that was lost; `None` where liquid is or may be present.
    pub lost: Option<Estimate>,
    /// Mass lost by time; `None` without a volume, or with liquid.
    pub rate: Option<Estimate<MassFlow>>,
    /// The least rate that these instruments would have shown in this time.
    pub least_seen: Option<MassFlow>,
    /// How long to hold until the allowed rate shows; `None` without an allowed rate.
    pub needed: Option<TimeSpan>,
    /// How long to hold until a leak shows that empties the vehicle within a year; `None` without a volume or a charge.
    pub needed_for_a_year: Option<TimeSpan>,
    /// The loss in refrigerant at rest, where one shows: through a hole or a crack, the smaller and the larger, with the
    /// uncertainty of the rate. `None` without a volume or what the circuit holds in service.
    pub refrigerant: Option<(MassFlow, MassFlow)>,
    /// The least loss of refrigerant that would have shown, in the same two ways.
    pub least_seen_refrigerant: Option<(MassFlow, MassFlow)>,
    /// In what time that loss empties the vehicle, the shorter and the longer; `None` without a charge.
    pub empty: Option<(TimeSpan, TimeSpan)>,
    /// The highest test pressure that is allowed, where this one was above it.
    pub above: Option<GaugePressure>,
}

/// One end of the test: density and what moves it.
struct End {
    t_k: f64,
    p_pa: f64,
    u_k: f64,
    u_pa: f64,
}

impl End {
    fn of(pressure: Reading<Pressure>, temperature: Reading<Temperature>, air: Surroundings) -> Result<Self, Error> {
        let pressures = Range::new(Quantity::AbsolutePressure, 1.0, ABSOLUTE_PRESSURE.high);
        Ok(Self {
            t_k: LINE_TEMPERATURE.check(in_kelvins(temperature.value))?,
            p_pa: pressures.check(pressure.value.absolute(air).pa())?,
            u_k: TEMPERATURE.check(difference_in_kelvins(temperature.standard_uncertainty))?,
            u_pa: ABSOLUTE_PRESSURE.check(pressure.standard_uncertainty.pa())?,
        })
    }

    /// Whether the pressure is, or may be, the one at which liquid boils.
    fn may_hold_liquid(&self, gas: DecayGas) -> Result<bool, Error> {
        Ok(gas.saturation_pa(self.t_k)?.is_some_and(|(saturation_pa, slope)| {
            let u_pa = libm::hypot(self.u_pa, slope * self.u_k);
            self.p_pa + COVERAGE * u_pa >= saturation_pa
        }))
    }

    /// The pressure without any loss at another temperature, Pa: that of the same density, and of saturation where it condenses.
    fn tight_end_pa(&self, gas: DecayGas, t_k: f64) -> Result<f64, Error> {
        let saturated = gas
            .saturation_pa(self.t_k)?
            .is_some_and(|(saturation_pa, _)| self.p_pa >= saturation_pa);
        match gas.saturation_pa(t_k)? {
            // The amount of liquid is unknown; some of it is assumed to be left.
            Some((saturation_pa, _)) if saturated => Ok(saturation_pa),
            Some(_) | None => gas.pressure_pa(t_k, gas.density_kg_m3(self.t_k, self.p_pa)?),
        }
    }

    /// Density, and its derivatives by pressure and temperature.
    fn density(&self, gas: DecayGas) -> Result<(f64, f64, f64), Error> {
        let at = |t_k: f64, p_pa: f64| gas.density_kg_m3(t_k, p_pa);
        let (t_k, p_pa) = (self.t_k, self.p_pa);
        let by_pressure = (at(t_k, p_pa)? - at(t_k, p_pa * (1.0 - STEP))?) / (p_pa * STEP);
        // Towards the warm side, where no vapour condenses.
        let by_temperature = (at(t_k + STEP_K, p_pa)? - at(t_k, p_pa)?) / STEP_K;
        Ok((at(t_k, p_pa)?, by_pressure, by_temperature))
    }
}

impl Decay {
    /// Judges the decay: the mass in a fixed volume follows from the density, which is the same at a lower pressure when the
    /// gas is cooler.
    ///
    /// Densities are those of the gas's own equation of state (Span et al. 2000 for nitrogen). The error of the gauge is
    /// the same at both ends and largely cancels; what is left is how repeatably it is read, and the two temperatures.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for readings and durations; `NoConvergence`.
    ///
    /// ```
    /// use coldloop::LeakFinding;
    /// use coldloop::circuit::{Gauge, Reading};
    /// use coldloop::proof::{Decay, DecayGas};
    /// use coldloop::units::{GaugePressure, PressureDifference, Surroundings, TimeSpan, celsius, kelvins_difference};
    /// // 10 bar of nitrogen fell by 0.3 bar, and the shop cooled by 8 K: nothing was lost.
    /// let test = Decay {
    ///     gas: DecayGas::Nitrogen,
    ///     start: Reading::pressure(GaugePressure::from_bar(10.0), Gauge::DIGITAL),
    ///     start_temperature: Reading::within(celsius(26.0), kelvins_difference(1.0)),
    ///     end: Reading::pressure(GaugePressure::from_bar(9.7), Gauge::DIGITAL),
    ///     end_temperature: Reading::within(celsius(18.0), kelvins_difference(1.0)),
    ///     repeatability: PressureDifference::from_kpa(1.0),
    ///     held: TimeSpan::from_hours(1.0),
    ///     surroundings: Surroundings::at_altitude(1_600.0)?,
    ///     volume: None,
    ///     allowed: None,
    ///     label_pressure: None,
    ///     served: None,
    /// };
    /// assert_eq!(test.judge()?.finding, LeakFinding::NoLossSeen);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn judge(&self) -> Result<Leak, Error> {
        let held_s = Range::new(Quantity::Duration, 1.0, DURATION.high).check(self.held.seconds())?;
        let repeatability_pa = ABSOLUTE_PRESSURE.check(self.repeatability.pa())?;
        let start = End::of(self.start, self.start_temperature, self.surroundings)?;
        let end = End::of(self.end, self.end_temperature, self.surroundings)?;
        let above = self.above(&start, &end)?;
        if start.may_hold_liquid(self.gas)? || end.may_hold_liquid(self.gas)? {
            return Ok(Leak {
                finding: LeakFinding::LiquidPresent,
                tight_end: AbsolutePressure::from_pa(start.tight_end_pa(self.gas, end.t_k)?),
                lost: None,
                rate: None,
                least_seen: None,
                needed: None,
                needed_for_a_year: None,
                refrigerant: None,
                least_seen_refrigerant: None,
                empty: None,
                above,
            });
        }
        let (rho_0, p_0, t_0) = start.density(self.gas)?;
        let (rho_1, p_1, t_1) = end.density(self.gas)?;
        let u = root_of_squares(&[
            (p_0 - p_1) * start.u_pa,
            p_0 * repeatability_pa,
            p_1 * repeatability_pa,
            t_0 * start.u_k,
            t_1 * end.u_k,
        ]);
        let lost_kg_m3 = Estimate {
            value: rho_0 - rho_1,
            standard_uncertainty: u,
        };
        let rate_kg_s = match self.volume {
            Some(volume) => Some(rate(lost_kg_m3, volume, held_s)?),
            None => None,
        };
        let least_seen_kg_s = self.volume.map(|volume| COVERAGE * u * volume.value.m3() / held_s);
        let allowed_kg_s = match self.allowed {
            Some(allowed) => Some(Range::new(Quantity::Mass, 0.0, 1.0).check(allowed.kg_s())?),
            None => None,
        };
        let factors = self.refrigerant_for_gas(&start, &end)?;
        let seen = rate_kg_s.filter(|_| lost_kg_m3.low() > 0.0);
        let refrigerant_kg_s = seen
            .zip(factors)
            .map(|(rate, (least, most))| (f64::max(rate.low(), 0.0) * least, rate.high() * most));
        let charge_kg = self.served.and_then(|served| served.charge).map(Mass::kg);
        let a_year_kg_s = charge_kg
            .zip(factors)
            .map(|(charge, (least, most))| charge / EMPTY_WITHIN_S / sqrt(least * most));
        // A rate shows when it is twice the half-width of its 95 % interval.
        let needed = |rate_kg_s: Option<f64>| {
            let (least, rate) = least_seen_kg_s.zip(rate_kg_s.filter(|rate| *rate > 0.0))?;
            Some(2.0 * least / rate * held_s)
        };
        Ok(Leak {
            finding: finding(lost_kg_m3, rate_kg_s, allowed_kg_s),
            tight_end: AbsolutePressure::from_pa(start.tight_end_pa(self.gas, end.t_k)?),
            lost: Some(Estimate {
                value: lost_kg_m3.value / rho_0,
                standard_uncertainty: u / rho_0,
            }),
            rate: rate_kg_s.map(Estimate::from_si),
            least_seen: least_seen_kg_s.map(MassFlow::from_kg_s),
            needed: needed(allowed_kg_s).map(TimeSpan::from_seconds),
            needed_for_a_year: needed(a_year_kg_s).map(TimeSpan::from_seconds),
            refrigerant: refrigerant_kg_s.map(flows),
            least_seen_refrigerant: least_seen_kg_s
                .zip(factors)
                .map(|(seen, (least, most))| flows((seen * least, seen * most))),
            empty: charge_kg
                .zip(refrigerant_kg_s)
                .filter(|(_, (least, _))| *least > 0.0)
                .map(|(charge, (least, most))| {
                    (
                        TimeSpan::from_seconds(charge / most),
                        TimeSpan::from_seconds(charge / least),
                    )
                }),
            above,
        })
    }
}

impl Decay {
    /// What flows of the refrigerant at rest for a kilogram of the test gas, through a hole and through a crack.
    fn refrigerant_for_gas(&self, start: &End, end: &End) -> Result<Option<(f64, f64)>, Error> {
        let Some(served) = self.served else { return Ok(None) };
        if let Some(charge) = served.charge {
            MASS.check(charge.kg())?;
        }
        let t_k = LINE_TEMPERATURE.check(in_kelvins(served.temperature))?;
        let Some(refrigerant) = Before::at_rest(served.refrigerant, t_k)? else {
            return Ok(None);
        };
        let test = Before::of(self.gas, end.t_k, f64::min(start.p_pa, end.p_pa))?;
        Ok(test.other_for_this(&refrigerant, self.surroundings.pressure().pa()))
    }

    /// The highest pressure that is allowed, where the test went above it.
    fn above(&self, start: &End, end: &End) -> Result<Option<GaugePressure>, Error> {
        let most_pa = match self.label_pressure {
            Some(label) => GAUGE_PRESSURE.check(label.pa())?,
            None => MOST_TEST.pa(),
        };
        let highest_pa = f64::max(start.p_pa, end.p_pa) - self.surroundings.pressure().pa();
        Ok((highest_pa > most_pa).then_some(GaugePressure::from_pa(most_pa)))
    }
}

fn flows((least_kg_s, most_kg_s): (f64, f64)) -> (MassFlow, MassFlow) {
    (MassFlow::from_kg_s(least_kg_s), MassFlow::from_kg_s(most_kg_s))
}

fn finding(lost: Estimate, rate: Option<Estimate>, allowed_kg_s: Option<f64>) -> LeakFinding {
    if lost.high() < 0.0 {
        return LeakFinding::GasGained;
    }
    match (rate, allowed_kg_s) {
        (Some(rate), Some(allowed)) if rate.high() <= allowed => LeakFinding::Tight,
        (Some(rate), Some(allowed)) if rate.low() > allowed => LeakFinding::Leaks,
        (Some(_), Some(_)) if lost.low() > 0.0 => LeakFinding::LimitUnclear,
        (Some(_), Some(_)) => LeakFinding::NoLossSeen,
        (None, _) | (_, None) if lost.low() > 0.0 => LeakFinding::Leaks,
        (None, _) | (_, None) => LeakFinding::NoLossSeen,
    }
}

fn rate(lost_kg_m3: Estimate, volume: Reading<Volume>, held_s: f64) -> Result<Estimate, Error> {
    let volume_m3 = VOLUME.check(volume.value.m3())?;
    let u_volume = VOLUME.check(volume.standard_uncertainty.m3())?;
    Ok(Estimate {
        value: lost_kg_m3.value * volume_m3 / held_s,
        standard_uncertainty: libm::hypot(lost_kg_m3.standard_uncertainty * volume_m3, lost_kg_m3.value * u_volume)
            / held_s,
    })
}

fn root_of_squares(parts: &[f64]) -> f64 {
    sqrt(parts.iter().map(|part| part * part).sum())
}
