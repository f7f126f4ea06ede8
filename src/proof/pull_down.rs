//! How the air at the vent comes down after the start.

use super::COVERAGE;
use super::line::{Point, halves};
use crate::circuit::{Estimate, Reading};
use crate::error::Error;
use crate::expected::{Band, Bands};
use crate::names::{ErrorKind, PullDownFinding, Quantity};
use crate::range::{DURATION, LINE_TEMPERATURE, TEMPERATURE};
use crate::units::{Temperature, TimeSpan, difference_in_kelvins, in_kelvins};
use crate::vehicle::{Conditions, System};

/// A vent counts as rising when it is this far above its lowest reading, beyond the uncertainty of the instruments, K. Source:
/// engineering judgement: with a cycling clutch it swings by less.
const RISE_K: f64 = 2.0;

/// The fewest readings that show how the vent came down. Source: engineering judgement: one reading may be part of a swing.
const FEWEST: usize = 2;

/// Freezing point of water, K.
const FREEZING_K: f64 = 273.15;

/// One reading of the vent.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VentSample {
    /// Time since the start on the coldest setting.
    pub after: TimeSpan,
    /// Air at the centre vent.
    pub vent: Reading<Temperature>,
}

/// How the vent came down.
///
/// ```
/// use coldloop::{PullDownFinding, intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let pull_down = visit.prove()?.pull_down.expect("the vent was read");
/// assert_eq!(pull_down.finding, PullDownFinding::Reached);
/// assert!(pull_down.expected.low_95 < pull_down.expected.high_95);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PullDown {
    /// The judgement.
    pub finding: PullDownFinding,
    /// What the vent of a sound system comes to here.
    pub expected: Band<Temperature>,
    /// When it first came into that band.
    pub reached: Option<TimeSpan>,
    /// Where it levels off, from how its fall slows; `None` where that cannot be estimated.
    pub levels_off: Option<Estimate<Temperature>>,
}

/// How the vent of a vehicle came down after the start, against what a sound system of its kind reaches here.
///
/// The fall of the vent is taken as exponential: its slope in the two halves of the readings gives the time constant and the
/// end, T_end = T_last + slope_late * tau, tau = apart / ln(slope_early / slope_late).
///
/// Errors: those of [`Bands::of`]; `NotFinite` and `OutOfRange` for the readings; `Missing` without any; `Inconsistent`
/// when they do not follow each other in time.
///
/// ```
/// use coldloop::circuit::Reading;
/// use coldloop::proof::{VentSample, pull_down};
/// use coldloop::units::{Surroundings, TimeSpan, celsius, kelvins_difference};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, PullDownFinding, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let conditions = Conditions::new(celsius(28.0), Surroundings::at_altitude(1_600.0)?);
/// let at = |minutes: f64, c: f64| VentSample {
///     after: TimeSpan::from_minutes(minutes),
///     vent: Reading::within(celsius(c), kelvins_difference(0.5)),
/// };
/// let samples = [at(1.0, 24.0), at(3.0, 15.0), at(5.0, 10.5), at(8.0, 8.0)];
/// assert_eq!(pull_down(&system, &conditions, &samples)?.finding, PullDownFinding::Reached);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn pull_down(system: &System, conditions: &Conditions, samples: &[VentSample]) -> Result<PullDown, Error> {
    // The band is that of a system that has run long enough, whenever the readings were taken.
    let settled = Conditions {
        running_for: None,
        ..*conditions
    };
    let expected = Bands::of(system, &settled)?.vent;
    let Some(last) = samples.last() else {
        return Err(Error::of(ErrorKind::Missing, Quantity::Temperature));
    };
    for sample in samples {
        DURATION.check(sample.after.seconds())?;
        LINE_TEMPERATURE.check(in_kelvins(sample.vent.value))?;
        TEMPERATURE.check(difference_in_kelvins(sample.vent.standard_uncertainty))?;
    }
    if !samples.is_sorted_by(|a, b| a.after < b.after) {
        return Err(Error::of(ErrorKind::Inconsistent, Quantity::Duration));
    }
    let high_k = in_kelvins(expected.high_95);
    let within = |sample: &VentSample| in_kelvins(sample.vent.value) <= high_k;
    let levels_off_k = levels_off(samples);
    Ok(PullDown {
        finding: finding(samples, last, high_k, levels_off_k),
        expected,
        reached: samples
            .iter()
            .find(|sample| samples.len() >= FEWEST && within(sample))
            .map(|sample| sample.after),
        levels_off: levels_off_k.map(Estimate::from_si),
    })
}

fn finding(samples: &[VentSample], last: &VentSample, high_k: f64, levels_off_k: Option<Estimate>) -> PullDownFinding {
    let lowest_k = samples
        .iter()
        .fold(f64::INFINITY, |k, sample| f64::min(k, in_kelvins(sample.vent.value)));
    let last_k = in_kelvins(last.vent.value);
    let own_k = difference_in_kelvins(last.vent.standard_uncertainty);
    if last_k - lowest_k > RISE_K + COVERAGE * core::f64::consts::SQRT_2 * own_k {
        return PullDownFinding::Rising;
    }
    // Frozen fins let no air through, so that a vent below freezing is no success, whatever a sound system reaches.
    if lowest_k < FREEZING_K {
        return PullDownFinding::Freezing;
    }
    if last_k <= high_k && samples.len() >= FEWEST {
        return PullDownFinding::Reached;
    }
    match levels_off_k {
        Some(end) if end.high() <= high_k => PullDownFinding::Falling,
        Some(end) if end.low() > high_k => PullDownFinding::Stalled,
        Some(_) | None => PullDownFinding::CannotTell,
    }
}

/// Where an exponential fall ends; `None` for fewer than four readings, or a fall that does not slow.
fn levels_off(samples: &[VentSample]) -> Option<Estimate> {
    let last = samples.last()?;
    let halves = halves(samples, |sample| Point {
        after_s: sample.after.seconds(),
        value: in_kelvins(sample.vent.value),
        standard_uncertainty: difference_in_kelvins(sample.vent.standard_uncertainty),
    })?;
    let end = |early: f64, late: f64| {
        let ratio = early / late;
        let slows = early < 0.0 && late < 0.0 && ratio > 1.0;
        slows.then(|| in_kelvins(last.vent.value) + late * halves.apart_s / libm::log(ratio))
    };
    let (early, late) = (halves.early, halves.late);
    let own_k = difference_in_kelvins(last.vent.standard_uncertainty);
    if early.high() < 0.0 && libm::fabs(late.value) <= COVERAGE * late.standard_uncertainty {
        // It no longer falls: it has reached its end.
        return Some(Estimate {
            value: in_kelvins(last.vent.value),
            standard_uncertainty: own_k,
        });
    }
    let value = end(early.value, late.value)?;
    let by_early = end(early.value - early.standard_uncertainty, late.value)? - value;
    let by_late = end(early.value, late.value + late.standard_uncertainty)? - value;
    Some(Estimate {
        value,
        standard_uncertainty: libm::hypot(libm::hypot(by_early, by_late), own_k),
    })
}
