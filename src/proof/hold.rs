//! Does a held vacuum stay?

use super::COVERAGE;
use super::evacuation::{DRY_PA, water};
use super::line::{Point, halves};
use crate::circuit::{Estimate, Reading};
use crate::error::Error;
use crate::names::{ErrorKind, HoldFinding, Quantity};
use crate::range::{ABSOLUTE_PRESSURE, DURATION, VOLUME};
use crate::units::{Pressure, Surroundings, Temperature, in_kelvins};

/// The shortest hold that proves anything, s. Source: common practice, no source: 10 to 30 minutes.
pub const LEAST_HOLD_S: f64 = 600.0;

/// Molar mass of dry air, kg/mol. Source: ISO 2533:1975, 2.1 (28.964 420 g/mol).
const AIR_KG_MOL: f64 = 0.028_964_420;

/// Gas constant, J/(mol K). Exact since 2019.
const GAS_J_MOL_K: f64 = 8.314_462_618_153_24;

/// A rise whose second half is steeper than this share of its first half does not level off. Source: engineering
/// judgement: a leak into vacuum is choked and keeps its rate (share 1); water that comes to its vapour pressure loses
/// more than half of it.
const LEVELS_OFF: f64 = 0.5;

/// One reading of a held vacuum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Time since the pump was shut off from the circuit, s.
    pub after_s: f64,
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
    /// Volume of the circuit and the hoses, m3, for the rate of a leak.
    pub volume_m3: Option<Reading<f64>>,
}

/// What a held vacuum tells.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HoldJudgement {
    /// The judgement.
    pub finding: HoldFinding,
    /// How long it was held, s.
    pub held_s: f64,
    /// Rise of the pressure, Pa.
    pub rise_pa: Estimate,
    /// Steepness of the rise in the first half, Pa/s; `None` with fewer than four readings.
    pub early_pa_s: Option<Estimate>,
    /// Steepness in the second half, Pa/s; `None` with fewer than four readings.
    pub late_pa_s: Option<Estimate>,
    /// The vapour pressure of water in the warmest part, beyond which no moisture lifts the pressure, Pa.
    pub water_pa: Estimate,
    /// Air that comes in if the whole of the late rise is a leak, kg/s; `None` without a volume.
    pub air_kg_s: Option<Estimate>,
}

impl Hold<'_> {
    /// What the rise tells: a leak into a vacuum keeps its rate, moisture levels off at the vapour pressure of water.
    ///
    /// The errors of the readings count as independent.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for the readings; `Missing` with fewer than two; `Inconsistent` when they do
    /// not follow each other in time.
    ///
    /// ```
    /// use coldloop::HoldFinding;
    /// use coldloop::circuit::Reading;
    /// use coldloop::proof::{Hold, Sample};
    /// use coldloop::units::{AbsolutePressure, Surroundings, celsius};
    /// let at = |minutes: f64, microns: f64| Sample {
    ///     after_s: 60.0 * minutes,
    ///     pressure: Reading::within(AbsolutePressure::from_microns(microns).into(), 3.0),
    /// };
    /// let hold = Hold {
    ///     samples: &[at(0.0, 400.0), at(5.0, 1_300.0), at(10.0, 2_200.0), at(20.0, 4_000.0)],
    ///     warmest: Reading::within(celsius(24.0), 1.0),
    ///     surroundings: Surroundings::at_altitude(1_600.0)?,
    ///     volume_m3: None,
    /// };
    /// assert_eq!(hold.judge()?.finding, HoldFinding::Leak);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn judge(&self) -> Result<HoldJudgement, Error> {
        let (first, last) = self.ends()?;
        let held_s = last.after_s - first.after_s;
        let (start, end) = (self.pressure(first)?, self.pressure(last)?);
        let rise_pa = Estimate {
            value: end.value - start.value,
            standard_uncertainty: libm::hypot(start.standard_uncertainty, end.standard_uncertainty),
        };
        let water_pa = water(self.warmest)?;
        let (early_pa_s, late_pa_s) = self.halves()?;
        let rose = rise_pa.low() > 0.0;
        let finding = if rose && end.low() > water_pa.high() {
            HoldFinding::Leak
        } else if rose {
            match (early_pa_s, late_pa_s) {
                (Some(early), Some(late)) => shape(early, late),
                (None, None) | (Some(_), None) | (None, Some(_)) => HoldFinding::RiseUnclear,
            }
        } else if end.high() > DRY_PA {
            HoldFinding::GaugeCannotTell
        } else if held_s < LEAST_HOLD_S {
            HoldFinding::TooShort
        } else {
            HoldFinding::Tight
        };
        let overall = Estimate {
            value: rise_pa.value / held_s,
            standard_uncertainty: rise_pa.standard_uncertainty / held_s,
        };
        let air_kg_s = match self.volume_m3 {
            Some(volume) => Some(self.air(volume, late_pa_s.unwrap_or(overall))?),
            None => None,
        };
        Ok(HoldJudgement {
            finding,
            held_s,
            rise_pa,
            early_pa_s,
            late_pa_s,
            water_pa,
            air_kg_s,
        })
    }

    fn ends(&self) -> Result<(&Sample, &Sample), Error> {
        let [first, .., last] = self.samples else {
            return Err(Error::of(ErrorKind::Missing, Quantity::AbsolutePressure));
        };
        for sample in self.samples {
            DURATION.check(sample.after_s)?;
        }
        if self.samples.is_sorted_by(|a, b| a.after_s < b.after_s) {
            Ok((first, last))
        } else {
            Err(Error::of(ErrorKind::Inconsistent, Quantity::Duration))
        }
    }

    fn pressure(&self, sample: &Sample) -> Result<Estimate, Error> {
        Ok(Estimate {
            value: ABSOLUTE_PRESSURE.check(sample.pressure.value.absolute(self.surroundings).pa())?,
            standard_uncertainty: ABSOLUTE_PRESSURE.check(sample.pressure.standard_uncertainty)?,
        })
    }

    fn halves(&self) -> Result<(Option<Estimate>, Option<Estimate>), Error> {
        for sample in self.samples {
            self.pressure(sample)?;
        }
        let point = |sample: &Sample| Point {
            after_s: sample.after_s,
            value: sample.pressure.value.absolute(self.surroundings).pa(),
            standard_uncertainty: sample.pressure.standard_uncertainty,
        };
        Ok(halves(self.samples, point).map_or((None, None), |halves| (Some(halves.early), Some(halves.late))))
    }

    /// Mass of air that a rise stands for: m = p V M / (R T), an ideal gas at these pressures.
    fn air(&self, volume_m3: Reading<f64>, rise: Estimate) -> Result<Estimate, Error> {
        let volume = VOLUME.check(volume_m3.value)?;
        let t_k = in_kelvins(self.warmest.value);
        let per_pa = volume * AIR_KG_MOL / (GAS_J_MOL_K * t_k);
        let relative = VOLUME.check(volume_m3.standard_uncertainty)? / f64::max(volume, f64::MIN_POSITIVE);
        Ok(Estimate {
            value: per_pa * rise.value,
            standard_uncertainty: per_pa * libm::hypot(rise.standard_uncertainty, rise.value * relative),
        })
    }
}

/// What a rise is by how it bends.
fn shape(early: Estimate, late: Estimate) -> HoldFinding {
    // How far the late slope lies above the share of the early one at which a rise counts as levelling off.
    let above = late.value - LEVELS_OFF * early.value;
    let u = libm::hypot(late.standard_uncertainty, LEVELS_OFF * early.standard_uncertainty);
    match above {
        above if above > COVERAGE * u => HoldFinding::Leak,
        above if above < -COVERAGE * u => HoldFinding::Moisture,
        _ => HoldFinding::RiseUnclear,
    }
}
