//! Does a held vacuum stay?

use super::evacuation::{DRY, water};
use super::line::{Point, halves};
use super::rise::shapes;
use crate::circuit::{Estimate, Reading};
use crate::error::Error;
use crate::names::{ErrorKind, HoldFinding, Quantity};
use crate::numerics::GAS_J_MOL_K;
use crate::range::{ABSOLUTE_PRESSURE, DURATION, Range, VOLUME};
use crate::units::{
    AbsolutePressure, MassFlow, Pressure, PressureDifference, PressureRate, Surroundings, Temperature, TimeSpan,
    Volume, in_kelvins,
};

/// The shortest hold that proves anything. Source: common practice, no source: 10 to 30 minutes.
pub const LEAST_HOLD: TimeSpan = TimeSpan::from_seconds(600.0);

/// Molar mass of dry air, kg/mol. Source: ISO 2533:1975, 2.1 (28.964 420 g/mol).
const AIR_KG_MOL: f64 = 0.028_964_420;

/// A slope counts as a fall when it is negative by this many of its standard uncertainties. Source: engineering judgement:
/// scatter alone makes one in a thousand circuits look as if they fell.
const FALLS: f64 = 3.0;

/// A vacuum gauge may show this share too much over its whole range, which moves the level at which a rise seems to settle.
/// Source: common practice, no source: a tenth.
const GAUGE_SHARE: f64 = 0.1;

/// How fast the pressure of a tight and dry circuit may rise once it has settled.
///
/// ```
/// use coldloop::proof::Rise;
/// use coldloop::units::{PressureDifference, TimeSpan};
/// let strict = Rise { rise: PressureDifference::from_microns(25.0), over: TimeSpan::from_minutes(10.0) };
/// assert!(strict.rise < Rise::USUAL.rise && strict.over == Rise::USUAL.over);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rise {
    /// By how much.
    pub rise: PressureDifference,
    /// In which time.
    pub over: TimeSpan,
}

impl Rise {
    /// 50 microns in ten minutes. Source: common practice in its form, engineering judgement in its size: a tenth of the usual
    /// vacuum, about the repeatability of a vacuum gauge.
    pub const USUAL: Self = Self {
        rise: PressureDifference::from_microns(50.0),
        over: TimeSpan::from_seconds(600.0),
    };

    pub(super) fn pa_s(self) -> f64 {
        self.rise.pa() / self.over.seconds()
    }

    /// Errors: `NotFinite`, `OutOfRange` for nothing, and for a time below a second.
    fn check(self) -> Result<(), Error> {
        Range::new(Quantity::AbsolutePressure, f64::MIN_POSITIVE, ABSOLUTE_PRESSURE.high).check(self.rise.pa())?;
        Range::new(Quantity::Duration, 1.0, DURATION.high).check(self.over.seconds())?;
        Ok(())
    }
}

/// One reading of a held vacuum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Time since the pump was shut off from the circuit.
    pub after: TimeSpan,
    /// The pressure.
    pub pressure: Reading<Pressure>,
}

/// A vacuum that is held, the pump shut off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hold<'a> {
    /// The readings, in the order of time; two at least, and four or more tell a leak from moisture.
    pub samples: &'a [Sample],
    /// The warmest part of the circuit that may be wet; the ambient when nothing is warmer.
    pub warmest: Reading<Temperature>,
    /// The air at the place.
    pub surroundings: Surroundings,
    /// Volume of the circuit and the hoses, for the rate of a leak.
    pub volume: Option<Reading<Volume>>,
    /// The rise that is allowed once the pressure has settled; [`Rise::USUAL`] where nothing else is asked for.
    pub allowed: Rise,
}

/// The judgement of a held vacuum.
///
/// ```
/// use coldloop::{HoldFinding, intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let hold = visit.prove()?.hold.expect("the vacuum was held");
/// assert_ne!(hold.finding, HoldFinding::Leak);
/// assert_eq!(hold.held.minutes(), 20.0);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HoldJudgement {
    /// The judgement.
    pub finding: HoldFinding,
    /// How long it was held.
    pub held: TimeSpan,
    /// Rise of the pressure.
    pub rise: Estimate<PressureDifference>,
    /// Steepness of the rise in the first half; `None` with fewer than four readings.
    pub early: Option<Estimate<PressureRate>>,
    /// Steepness in the second half; `None` with fewer than four readings.
    pub late: Option<Estimate<PressureRate>>,
    /// The lowest and the highest pressure at which the rise would end without a leak, as far as these readings
    /// tell; `None` with fewer than four of them, and where no shape of a rise fits them.
    pub levels: Option<(AbsolutePressure, AbsolutePressure)>,
    /// The vapour pressure of water in the warmest part, beyond which no moisture lifts the pressure.
    pub water: Estimate<AbsolutePressure>,
    /// Air that comes in if the whole of the late rise is a leak; `None` without a volume.
    pub air: Option<Estimate<MassFlow>>,
}

impl Hold<'_> {
    /// Judges the rise: a leak into a vacuum keeps its rate, gas from oil and rubber is spent within minutes, and moisture
    /// levels off no higher than the vapour pressure of water.
    ///
    /// The readings are compared with these shapes and their sums; whatever they do not rule out stays possible, and only what
    /// all remaining shapes agree on is reported. A leak is reported where every shape with a slope within `allowed` is ruled
    /// out; `Moisture` where every remaining one settles above [`DRY`], by more than a vacuum gauge is off; `Tight` where
    /// none remains that leaks faster than allowed, and all settle below. A small leak may hide behind moisture: dry the
    /// circuit and hold it again.
    ///
    /// The errors of the readings count as independent.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for the readings; `Missing` with fewer than two; `Inconsistent` when they do
    /// not follow each other in time.
    ///
    /// ```
    /// use coldloop::HoldFinding;
    /// use coldloop::circuit::Reading;
    /// use coldloop::proof::{Hold, Rise, Sample};
    /// use coldloop::units::{
    ///     AbsolutePressure, PressureDifference, Surroundings, TimeSpan, celsius, kelvins_difference,
    /// };
    /// let at = |minutes: f64, microns: f64| Sample {
    ///     after: TimeSpan::from_minutes(minutes),
    ///     pressure: Reading::within(AbsolutePressure::from_microns(microns).into(), PressureDifference::from_pa(3.0)),
    /// };
    /// let hold = Hold {
    ///     samples: &[at(0.0, 400.0), at(5.0, 1_300.0), at(10.0, 2_200.0), at(20.0, 4_000.0)],
    ///     warmest: Reading::within(celsius(24.0), kelvins_difference(1.0)),
    ///     surroundings: Surroundings::at_altitude(1_600.0)?,
    ///     volume: None,
    ///     allowed: Rise::USUAL,
    /// };
    /// assert_eq!(hold.judge()?.finding, HoldFinding::Leak);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn judge(&self) -> Result<HoldJudgement, Error> {
        self.allowed.check()?;
        let (first, last) = self.ends()?;
        let held_s = last.after.seconds() - first.after.seconds();
        let (start, end) = (self.pressure(first)?, self.pressure(last)?);
        let rise_pa = Estimate {
            value: end.value - start.value,
            standard_uncertainty: libm::hypot(start.standard_uncertainty, end.standard_uncertainty),
        };
        let water_pa = water(self.warmest)?;
        let (early_pa_s, late_pa_s) = self.halves()?;
        let most_pa = (1.0 + GAUGE_SHARE) * water_pa.high();
        let shapes = early_pa_s.and_then(|_| shapes(self.samples, |sample| self.point(sample), self.allowed, most_pa));
        let falls = |slope: Estimate| slope.value < -FALLS * slope.standard_uncertainty;
        let rose = rise_pa.low() > 0.0;
        let dry = |pa: f64| pa <= DRY.pa();
        let long_enough = held_s >= LEAST_HOLD.seconds();
        // Two or three readings do not determine a shape: the whole rise counts as a leak.
        let slow = match (early_pa_s, shapes) {
            (None, _) => rise_pa.high() / held_s <= self.allowed.pa_s() && dry(end.high()),
            (Some(_), shapes) => shapes.is_some_and(|shapes| shapes.no_leak && dry(shapes.levels_pa.1)),
        };
        let finding = if rose && end.low() > water_pa.high() {
            HoldFinding::Leak
        } else if falls(rise_pa)
            || early_pa_s
                .zip(late_pa_s)
                .is_some_and(|(early, late)| falls(early) && falls(late))
        {
            HoldFinding::Falling
        } else if shapes.is_some_and(|shapes| shapes.leaks) {
            HoldFinding::Leak
        } else if rose && shapes.is_some_and(|shapes| !dry(shapes.levels_pa.0 / (1.0 + GAUGE_SHARE))) {
            HoldFinding::Moisture
        } else if slow && long_enough {
            HoldFinding::Tight
        } else if slow {
            HoldFinding::TooShort
        } else if rose {
            HoldFinding::RiseUnclear
        } else if !dry(end.low()) {
            HoldFinding::NotDeep
        } else if !dry(end.high()) || long_enough {
            HoldFinding::GaugeCannotTell
        } else {
            HoldFinding::TooShort
        };
        let overall = Estimate {
            value: rise_pa.value / held_s,
            standard_uncertainty: rise_pa.standard_uncertainty / held_s,
        };
        let air_kg_s = match self.volume {
            Some(volume) => Some(self.air(volume, late_pa_s.unwrap_or(overall))?),
            None => None,
        };
        Ok(HoldJudgement {
            finding,
            held: TimeSpan::from_seconds(held_s),
            rise: Estimate::from_si(rise_pa),
            early: early_pa_s.map(Estimate::from_si),
            late: late_pa_s.map(Estimate::from_si),
            levels: shapes.map(|shapes| {
                let (low_pa, high_pa) = shapes.levels_pa;
                (AbsolutePressure::from_pa(low_pa), AbsolutePressure::from_pa(high_pa))
            }),
            water: Estimate::from_si(water_pa),
            air: air_kg_s.map(Estimate::from_si),
        })
    }

    fn ends(&self) -> Result<(&Sample, &Sample), Error> {
        let [first, .., last] = self.samples else {
            return Err(Error::of(ErrorKind::Missing, Quantity::AbsolutePressure));
        };
        for sample in self.samples {
            DURATION.check(sample.after.seconds())?;
        }
        if self.samples.is_sorted_by(|a, b| a.after < b.after) {
            Ok((first, last))
        } else {
            Err(Error::of(ErrorKind::Inconsistent, Quantity::Duration))
        }
    }

    fn pressure(&self, sample: &Sample) -> Result<Estimate, Error> {
        super::above_vacuum(sample.pressure, self.surroundings).map(|(pressure, _)| pressure)
    }

    fn point(&self, sample: &Sample) -> Point {
        Point {
            after_s: sample.after.seconds(),
            value: sample.pressure.value.absolute(self.surroundings).pa(),
            standard_uncertainty: sample.pressure.standard_uncertainty.pa(),
        }
    }

    fn halves(&self) -> Result<(Option<Estimate>, Option<Estimate>), Error> {
        for sample in self.samples {
            self.pressure(sample)?;
        }
        let halves = halves(self.samples, |sample| self.point(sample));
        Ok(halves.map_or((None, None), |halves| (Some(halves.early), Some(halves.late))))
    }

    /// Mass of air that a rise corresponds to: m = p V M / (R T), an ideal gas at these pressures.
    fn air(&self, volume: Reading<Volume>, rise: Estimate) -> Result<Estimate, Error> {
        let volume_m3 = VOLUME.check(volume.value.m3())?;
        let t_k = in_kelvins(self.warmest.value);
        let per_pa = volume_m3 * AIR_KG_MOL / (GAS_J_MOL_K * t_k);
        let relative = VOLUME.check(volume.standard_uncertainty.m3())? / f64::max(volume_m3, f64::MIN_POSITIVE);
        Ok(Estimate {
            value: per_pa * rise.value,
            standard_uncertainty: per_pa * libm::hypot(rise.standard_uncertainty, rise.value * relative),
        })
    }
}
