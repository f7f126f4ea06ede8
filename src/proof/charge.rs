//! What was in the vehicle, and what is in it now, by the scales.

use super::COVERAGE;
use super::gas::DecayGas;
use crate::circuit::{Estimate, Reading};
use crate::error::Error;
use crate::mixture::Side;
use crate::names::{ChargeFinding, ErrorKind, Quantity, Refrigerant};
use crate::numerics::sqrt;
use crate::range::{ABSOLUTE_PRESSURE, LINE_TEMPERATURE, MASS, TEMPERATURE, VOLUME};
use crate::saturation;
use crate::units::{Mass, Pressure, Surroundings, Temperature, Volume, difference_in_kelvins, in_kelvins};

/// Largest error of the scale in a recovery and charging machine. Source: SAE J2788 asks for 15 g in charging (from
/// memory).
pub const MACHINE_SCALE: Mass = Mass::from_kg(0.015);

/// Largest error of the same scale in what was recovered. Source: SAE J2788 and J2843 ask for 30 g (from memory).
pub const RECOVERY_SCALE: Mass = Mass::from_kg(0.030);

/// The least share of the charge that a recovery takes out. Source: SAE J2788 and J2843 ask for 95 % (from memory).
pub const LEAST_RECOVERED: f64 = 0.95;

/// How far a charge may lie from the label where that does not say, kg, and as a share of it; the larger counts. Source: common
/// practice, no source: 15 g on charges below 300 g, 25 to 50 g on larger ones.
const USUAL_TOLERANCE: (f64, f64) = (0.015, 0.05);

/// How far a charge may lie from the label where that does not say: 15 g or 5 %, whichever is more.
///
/// ```
/// use coldloop::{proof::usual_tolerance, units::Mass};
/// assert_eq!(usual_tolerance(Mass::from_kg(0.250)), Mass::from_kg(0.015));
/// assert_eq!(usual_tolerance(Mass::from_kg(1.000)), Mass::from_kg(0.050));
/// ```
pub const fn usual_tolerance(nominal: Mass) -> Mass {
    let (least_kg, share) = USUAL_TOLERANCE;
    Mass::from_kg(f64::max(least_kg, share * nominal.kg()))
}

/// Half-width of the middle 95 % of a rectangular distribution, in standard uncertainties: 0.95 times the root of 3. The error
/// of a scale is bounded, so that its tails are shorter than those of a normal distribution. Source: JCGM 100:2008, 4.3.7 and
/// G.1.3.
const SCALE_COVERAGE: f64 = 1.645;

/// Refrigerant that is neither in a cylinder nor counted in the vehicle: in a hose, or left behind by a recovery.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading};
/// use coldloop::proof::Kept;
/// use coldloop::units::{GaugePressure, Volume, celsius, kelvins_difference};
/// // A charging hose that was left at the pressure of its vapour.
/// let hose = Kept {
///     volume: Reading::within(Volume::from_litres(0.060), Volume::from_litres(0.006)),
///     temperature: Reading::within(celsius(25.0), kelvins_difference(2.0)),
///     vapour: Some(Reading::pressure(GaugePressure::from_bar(3.0), Gauge::DIGITAL)),
/// };
/// assert!(hose.vapour.is_some());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kept {
    /// The volume that holds it.
    pub volume: Reading<Volume>,
    /// Its temperature.
    pub temperature: Reading<Temperature>,
    /// The pressure of vapour; `None` for a volume full of liquid.
    pub vapour: Option<Reading<Pressure>>,
}

/// The masses of a service, each with the uncertainty of its scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChargeBook {
    /// The refrigerant.
    pub refrigerant: Refrigerant,
    /// The air at the place.
    pub surroundings: Surroundings,
    /// The charge that the label names.
    pub nominal: Option<Mass>,
    /// How far the charge may lie from it; [`usual_tolerance`] where the label does not say.
    pub tolerance: Option<Mass>,
    /// What was recovered.
    pub recovered: Option<Reading<Mass>>,
    /// Oil that came out with it.
    pub oil_recovered: Option<Reading<Mass>>,
    /// Whether the scale of the recovery weighed that oil too.
    pub oil_weighed_in: bool,
    /// What the recovery left in the circuit; where it was not measured, up to what [`LEAST_RECOVERED`] lets a machine leave.
    pub left: Option<Kept>,
    /// Whether the circuit was evacuated after the recovery, so that nothing is left of it.
    pub evacuated: bool,
    /// What left the cylinder of the charging machine.
    pub charged: Option<Reading<Mass>>,
    /// What of it stayed in the hoses.
    pub hose: Option<Kept>,
    /// Oil put in.
    pub oil_added: Option<Reading<Mass>>,
}

/// The charge before and after, by the masses.
///
/// ```
/// use coldloop::{ChargeFinding, intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let balance = visit.prove()?.charge.expect("it was charged");
/// assert_eq!(balance.now, Some(ChargeFinding::Within));
/// assert!(balance.charge_now.is_some_and(|now| (now.value.kg() - 0.85).abs() < 0.05));
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Balance {
    /// Charge found in the vehicle; `None` when nothing was recovered by weight.
    pub charge_found: Option<Estimate<Mass>>,
    /// Charge in the vehicle now; `None` when nothing was charged by weight.
    pub charge_now: Option<Estimate<Mass>>,
    /// What stayed in the hoses.
    pub hose: Option<Estimate<Mass>>,
    /// The charge found against the label; `None` without either.
    pub found: Option<ChargeFinding>,
    /// The charge now against the label; `None` without either.
    pub now: Option<ChargeFinding>,
    /// Oil put in less oil that came out.
    pub oil_change: Option<Estimate<Mass>>,
}

impl ChargeBook {
    /// A service before anything is weighed.
    pub const fn new(refrigerant: Refrigerant, surroundings: Surroundings) -> Self {
        Self {
            refrigerant,
            surroundings,
            nominal: None,
            tolerance: None,
            recovered: None,
            oil_recovered: None,
            oil_weighed_in: false,
            left: None,
            evacuated: true,
            charged: None,
            hose: None,
            oil_added: None,
        }
    }

    /// What was in the vehicle and what is in it now, against the label.
    ///
    /// A finding other than `CannotTell` holds for the whole 95 % interval.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for masses, volumes, temperatures; `Inconsistent` for vapour that would
    /// condense at its temperature.
    ///
    /// ```
    /// use coldloop::circuit::Reading;
    /// use coldloop::proof::{ChargeBook, Kept};
    /// use coldloop::units::{Mass, Surroundings, Volume, celsius, kelvins_difference};
    /// use coldloop::{ChargeFinding, Refrigerant};
    /// let place = Surroundings::at_altitude(1_600.0)?;
    /// let book = ChargeBook {
    ///     nominal: Some(Mass::from_g(650.0)),
    ///     charged: Some(Reading::within(Mass::from_g(650.0), Mass::from_g(5.0))),
    ///     // Three metres of charging hose, left full of liquid.
    ///     hose: Some(Kept {
    ///         volume: Reading::within(Volume::from_litres(0.060), Volume::from_litres(0.006)),
    ///         temperature: Reading::within(celsius(25.0), kelvins_difference(2.0)),
    ///         vapour: None,
    ///     }),
    ///     ..ChargeBook::new(Refrigerant::R134a, place)
    /// };
    /// let balance = book.balance()?;
    /// assert!(balance.hose.is_some_and(|hose| (hose.value.kg() - 0.072).abs() < 0.001));
    /// assert_eq!(balance.now, Some(ChargeFinding::Under));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn balance(&self) -> Result<Balance, Error> {
        let recovered = mass(self.recovered)?;
        let oil_out = mass(self.oil_recovered)?;
        let recovered = recovered.map(|weighed| {
            let oil = oil_out.filter(|_| self.oil_weighed_in);
            sum(weighed, [(-1.0, oil)])
        });
        let left = match self.kept(self.left)? {
            Some(left) => Some(left),
            None => recovered.map(left_behind),
        };
        let hose = self.kept(self.hose)?;
        let found_kg = recovered.map(|recovered| sum(recovered, [(1.0, left)]));
        let now_kg = mass(self.charged)?.map(|charged| {
            let left = left.filter(|_| !self.evacuated);
            sum(charged, [(-1.0, hose), (1.0, left)])
        });
        if let Some(tolerance) = self.tolerance {
            MASS.check(tolerance.kg())?;
        }
        if let Some(nominal) = self.nominal {
            MASS.check(nominal.kg())?;
        }
        let oil_change_kg = match (mass(self.oil_added)?, oil_out) {
            (None, None) => None,
            (added, out) => Some(sum(NOTHING, [(1.0, added), (-1.0, out)])),
        };
        Ok(Balance {
            charge_found: found_kg.map(Estimate::from_si),
            charge_now: now_kg.map(Estimate::from_si),
            hose: hose.map(Estimate::from_si),
            found: self.against_label(found_kg, self.recovered),
            now: self.against_label(now_kg, self.charged),
            oil_change: oil_change_kg.map(Estimate::from_si),
        })
    }

    /// The charge, of which `weighed` went over the scale, against the label.
    fn against_label(&self, charge: Option<Estimate>, weighed: Option<Reading<Mass>>) -> Option<ChargeFinding> {
        let (nominal, charge, weighed) = (self.nominal?, charge?, weighed?);
        let tolerance_kg = self.tolerance.unwrap_or_else(|| usual_tolerance(nominal)).kg();
        let nominal_kg = nominal.kg();
        let (least, most) = (nominal_kg - tolerance_kg, nominal_kg + tolerance_kg);
        let half_kg = half_width_kg(charge, weighed.standard_uncertainty.kg());
        let (low, high) = (charge.value - half_kg, charge.value + half_kg);
        Some(if high < least {
            ChargeFinding::Under
        } else if low > most {
            ChargeFinding::Over
        } else if low >= least && high <= most {
            ChargeFinding::Within
        } else {
            ChargeFinding::CannotTell
        })
    }

    /// Mass of refrigerant in a volume: m = V rho(T, p), or V rho'(T) for liquid.
    fn kept(&self, kept: Option<Kept>) -> Result<Option<Estimate>, Error> {
        let Some(kept) = kept else { return Ok(None) };
        let volume = VOLUME.check(kept.volume.value.m3())?;
        let u_volume = VOLUME.check(kept.volume.standard_uncertainty.m3())?;
        let t_k = LINE_TEMPERATURE.check(in_kelvins(kept.temperature.value))?;
        let u_k = TEMPERATURE.check(difference_in_kelvins(kept.temperature.standard_uncertainty))?;
        let vapour = match kept.vapour {
            Some(reading) => Some((
                ABSOLUTE_PRESSURE.check(reading.value.absolute(self.surroundings).pa())?,
                ABSOLUTE_PRESSURE.check(reading.standard_uncertainty.pa())?,
            )),
            None => None,
        };
        let rho = self.density_kg_m3(t_k, vapour.map(|(p_pa, _)| p_pa))?;
        let warmer = self.density_kg_m3(t_k + STEP_K, vapour.map(|(p_pa, _)| p_pa))?;
        let u_rho = match vapour {
            // At these pressures the density is nearly proportional to the pressure.
            Some((p_pa, u_pa)) => libm::hypot((warmer - rho) / STEP_K * u_k, rho / p_pa * u_pa),
            None => (warmer - rho) / STEP_K * u_k,
        };
        Ok(Some(Estimate {
            value: volume * rho,
            standard_uncertainty: libm::hypot(volume * u_rho, rho * u_volume),
        }))
    }

    fn density_kg_m3(&self, t_k: f64, vapour_pa: Option<f64>) -> Result<f64, Error> {
        let Some(p_pa) = vapour_pa else {
            return saturation::line_of(self.refrigerant).density_kg_m3(Side::Bubble, t_k);
        };
        let gas = DecayGas::Vapour(self.refrigerant);
        if gas
            .saturation_pa(t_k)?
            .is_some_and(|(saturation_pa, _)| p_pa > saturation_pa)
        {
            return Err(Error::of(ErrorKind::Inconsistent, Quantity::AbsolutePressure));
        }
        gas.density_kg_m3(t_k, p_pa)
    }
}

/// Half of the 95 % interval of a charge, kg: twice its standard uncertainty, or less where most of it comes from the scale,
/// whose error is bounded.
fn half_width_kg(charge: Estimate, scale_kg: f64) -> f64 {
    let total_kg = charge.standard_uncertainty;
    let others_kg = sqrt(f64::max(total_kg * total_kg - scale_kg * scale_kg, 0.0));
    f64::min(COVERAGE * total_kg, SCALE_COVERAGE * scale_kg + COVERAGE * others_kg)
}

/// What is left in the circuit by a machine that takes out [`LEAST_RECOVERED`] of the charge or more, kg: uniformly distributed
/// between nothing and the rest.
fn left_behind(recovered: Estimate) -> Estimate {
    let most_kg = recovered.value * (1.0 / LEAST_RECOVERED - 1.0);
    let half_kg = 0.5 * most_kg;
    Estimate {
        value: half_kg,
        standard_uncertainty: half_kg / sqrt(3.0),
    }
}

/// Step of temperature for the derivative of a density, K.
const STEP_K: f64 = 0.5;

const NOTHING: Estimate = Estimate {
    value: 0.0,
    standard_uncertainty: 0.0,
};

fn mass(reading: Option<Reading<Mass>>) -> Result<Option<Estimate>, Error> {
    let Some(reading) = reading else { return Ok(None) };
    Ok(Some(Estimate {
        value: MASS.check(reading.value.kg())?,
        standard_uncertainty: MASS.check(reading.standard_uncertainty.kg())?,
    }))
}

/// A mass with others added or taken away, their errors independent.
fn sum<const N: usize>(first: Estimate, others: [(f64, Option<Estimate>); N]) -> Estimate {
    let mut sum = first;
    for (sign, other) in others {
        let other = other.unwrap_or(NOTHING);
        sum.value += sign * other.value;
        sum.standard_uncertainty = libm::hypot(sum.standard_uncertainty, other.standard_uncertainty);
    }
    sum
}
