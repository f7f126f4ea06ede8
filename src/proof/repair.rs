//! Did the repair help? Before and after, judged together.
//!
//! The thresholds and the chances of `change` were checked on pairs of visits of the building makes of an independent
//! simulator; the results on other makes are in `tests/repair_pairs.rs`.

use super::change::Change;
use crate::diagnosis::{Case, Diagnosis, Judgement, List, Settings, Visits, diagnose, judge_with, speak_against_sound};
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Feature, Quantity, RepairFinding};
use crate::units::{TemperatureDifference, in_kelvins, kelvins_difference};

/// What another look and wrong answers cost, min. A vehicle that comes back costs the usual repair of 160 and its handling; a
/// fault reported as smaller when nothing changed costs nearly three looks in vain. Source: engineering judgement.
const LOOK: f64 = 45.0;
const COMES_BACK: f64 = 175.0;
const LED_ASTRAY: f64 = 130.0;

/// A repair is proven from this probability on that the vehicle was faulty and is sound now: there a wrong answer costs, on
/// average, no more than another look.
const PROVEN: f64 = 1.0 - LOOK / COMES_BACK;
/// The result is "better" when at least this part of the fault is expected to be gone.
const BETTER: f64 = 1.0 - LOOK / LED_ASTRAY;

/// A figure of a proven repair lies within this many standard deviations. Source: engineering judgement: of seven
/// figures of a sound system one in three times lies outside its 95 % band, one in fifty times outside this.
const LIMIT: f64 = 3.0;

/// One figure before and after, in standard deviations from what a sound system shows in the conditions of its own time.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Seen {
    /// The figure.
    pub feature: Feature,
    /// Before the repair; `None` where it was not read.
    pub before: Option<f64>,
    /// After it.
    pub after: Option<f64>,
}

/// What the readings before and after tell together.
///
/// ```
/// use coldloop::{RepairFinding, intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let proof = visit.prove()?.repair.expect("there are readings before and after");
/// assert_ne!(proof.finding, RepairFinding::StillFaulty);
/// assert!(proof.seen.iter().any(|seen| seen.before.is_some() && seen.after.is_some()));
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Proof {
    /// The judgement.
    pub finding: RepairFinding,
    /// Probability that the system is sound now.
    pub sound: f64,
    /// Probability that it was faulty and is sound now.
    pub set_right: f64,
    /// Probability that the fault is there as before.
    pub unchanged: f64,
    /// Part of the fault that is expected to be gone: 1 for all of it, below 0 when it grew.
    pub gone: f64,
    /// The fault that explained the readings before best.
    pub fault: Fault,
    /// Probability that any of it is still there.
    pub same_fault: f64,
    /// The likeliest fault now other than that one, with its probability.
    pub other_fault: Option<(Fault, f64)>,
    /// How much colder the vent is than before, each counted from what a sound system shows at each time; `None` unless
    /// it was read both times.
    pub vent_gained: Option<TemperatureDifference>,
    /// Every figure that was read at either time.
    pub seen: List<Seen, { Feature::ALL.len() }>,
    /// The diagnosis before.
    pub before: Diagnosis,
    /// The diagnosis after, what was found before taken into account.
    pub after: Diagnosis,
}

/// What the readings before and after a repair tell together.
///
/// Calculated from the joint density of both sets of readings, under every fault before and every part of it that may be left,
/// times the chance of each: the lasting deviation of the vehicle is in both, the weather differs. "Proven" says that no fault
/// is left, from a probability of 0.74 on; "better" says that at least 65 % of the fault are expected to be gone, and leaves
/// open whether all of it is.
///
/// Errors: those of [`diagnose`]; `Inconsistent` when the two cases are different systems.
pub fn prove(before: &Case, after: &Case, settings: &Settings) -> Result<Proof, Error> {
    let first = diagnose(before, settings)?;
    let change = changed(before, after, settings)?;
    let second = judged_with(&change, after, settings)?;
    Ok(compared((before, &first), (after, &second), &change, settings))
}

/// The judgement of a vehicle after a repair, with what was found before taken into account.
///
/// Errors: those of [`prove`].
#[inline(never)]
pub(crate) fn judge_after(before: &Case, after: &Case, settings: &Settings) -> Result<Judgement, Error> {
    let change = changed(before, after, settings)?;
    judge_with(after, settings, |fault| change.then(fault))
}

/// What both diagnoses tell together.
#[inline(never)]
pub(crate) fn compared(
    (before, first): (&Case, &Diagnosis),
    (after, second): (&Case, &Diagnosis),
    change: &Change,
    settings: &Settings,
) -> Proof {
    let fits = |case: &Case| !speak_against_sound(&case.observations, &settings.looks);
    let cools = cooling_was_seen(second) && !after.conditions.at_rest(after.system.compressor);
    Proof {
        finding: if cools {
            finding(change, within(second) && fits(after), fits(before), settings)
        } else {
            RepairFinding::CannotTell
        },
        sound: change.sound(),
        set_right: change.set_right,
        unchanged: change.unchanged,
        gone: change.gone,
        fault: change.fault,
        same_fault: change.same_fault,
        other_fault: change.other_fault(),
        vent_gained: vent_gained(before, after, first, second),
        seen: seen(first, second),
        before: first.clone(),
        after: second.clone(),
    }
}

/// The change between two visits; a function of its own, so that `Visits` is on the stack only until it is summed up.
#[inline(never)]
pub(crate) fn changed(before: &Case, after: &Case, settings: &Settings) -> Result<Change, Error> {
    if before.system != after.system {
        return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
    }
    Ok(Change::of(&Visits::of(before, after, settings)?))
}

/// The diagnosis of the second visit, with what was found before taken into account.
#[inline(never)]
pub(crate) fn judged_with(change: &Change, after: &Case, settings: &Settings) -> Result<Diagnosis, Error> {
    match &judge_with(after, settings, |fault| change.then(fault)) {
        Ok(judgement) => judgement.diagnosis(settings),
        Err(error) => Err(*error),
    }
}

/// `fits` says whether all figures and answers after the repair are those of a sound system, `fitted` whether the answers before were.
fn finding(change: &Change, fits: bool, fitted: bool, settings: &Settings) -> RepairFinding {
    if fits && change.set_right >= PROVEN {
        RepairFinding::Proven
    } else if change.gone >= BETTER {
        RepairFinding::Better
    } else if fits && fitted && change.sound_throughout() >= settings.named {
        RepairFinding::SoundBefore
    } else if change.unchanged + change.worse >= EVEN_ODDS {
        if change.gone < GREW {
            RepairFinding::Worse
        } else {
            RepairFinding::StillFaulty
        }
    } else if change.another >= EVEN_ODDS {
        RepairFinding::AnotherFault
    } else {
        RepairFinding::CannotTell
    }
}

/// The fault has grown when the part expected to be gone is below this. Source: engineering judgement.
const GREW: f64 = -0.04;

/// A change is reported when it is likelier than not.
const EVEN_ODDS: f64 = 0.5;

/// Both pressures and the vent are what a proof needs.
fn cooling_was_seen(diagnosis: &Diagnosis) -> bool {
    [Feature::LowSide, Feature::HighSide, Feature::Vent]
        .into_iter()
        .all(|feature| deviation(diagnosis, feature).is_some())
}

fn within(diagnosis: &Diagnosis) -> bool {
    diagnosis
        .deviations
        .iter()
        .all(|seen| libm::fabs(seen.deviation) <= LIMIT)
}

fn deviation(diagnosis: &Diagnosis, feature: Feature) -> Option<f64> {
    diagnosis
        .deviations
        .iter()
        .find(|seen| seen.feature == feature)
        .map(|seen| seen.deviation)
}

fn seen(before: &Diagnosis, after: &Diagnosis) -> List<Seen, { Feature::ALL.len() }> {
    let mut list = List::new(Seen {
        feature: Feature::LowSide,
        before: None,
        after: None,
    });
    for feature in Feature::ALL {
        let (before, after) = (deviation(before, feature), deviation(after, feature));
        if before.is_some() || after.is_some() {
            list.push(Seen { feature, before, after });
        }
    }
    list
}

fn vent_gained(before: &Case, after: &Case, first: &Diagnosis, second: &Diagnosis) -> Option<TemperatureDifference> {
    let above = |case: &Case, diagnosis: &Diagnosis| {
        let vent_k = in_kelvins(case.readings.vent?.value);
        Some(vent_k - in_kelvins(diagnosis.expected.as_ref()?.vent.median))
    };
    Some(kelvins_difference(above(before, first)? - above(after, second)?))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;

    fn found(set: impl Fn(&mut Change)) -> RepairFinding {
        let mut change = Change::NOTHING;
        set(&mut change);
        finding(&change, true, true, &Settings::default())
    }

    /// A repair wrongly called proven costs 175 min, a look 45 min: it is proven from 1 - 45 / 175 = 0.743 on, where every
    /// figure lies within its limit.
    #[test]
    fn a_repair_is_proven_where_another_look_costs_more_than_the_risk_of_a_vehicle_that_comes_back() {
        let by = |set_right: f64| found(|change| change.set_right = set_right);
        assert_eq!((by(0.74), by(0.75)), (RepairFinding::CannotTell, RepairFinding::Proven));
        let mut change = Change::NOTHING;
        change.set_right = 0.75;
        assert_eq!(
            finding(&change, false, true, &Settings::default()),
            RepairFinding::CannotTell
        );
    }

    /// A wrong "better" costs 130 min: it is reported from 1 - 45 / 130 = 0.654 of the fault gone.
    #[test]
    fn better_is_reported_from_two_thirds_of_the_fault_gone() {
        let by = |gone: f64| found(|change| change.gone = gone);
        assert_eq!((by(0.65), by(0.66)), (RepairFinding::CannotTell, RepairFinding::Better));
    }

    /// A change is reported from even odds on; it is worse where a fault has grown by more than a twenty-fifth.
    #[test]
    fn no_change_is_reported_from_even_odds_on() {
        let still = |unchanged: f64, worse: f64, gone: f64| {
            found(|change| (change.unchanged, change.worse, change.gone) = (unchanged, worse, gone))
        };
        assert_eq!(still(0.30, 0.19, 0.0), RepairFinding::CannotTell);
        assert_eq!(still(0.30, 0.21, 0.0), RepairFinding::StillFaulty);
        assert_eq!(still(0.51, 0.0, -0.037), RepairFinding::StillFaulty);
        assert_eq!(still(0.51, 0.0, -0.043), RepairFinding::Worse);
        let another = |another: f64| found(|change| change.another = another);
        assert_eq!(
            (another(0.49), another(0.51)),
            (RepairFinding::CannotTell, RepairFinding::AnotherFault)
        );
    }

    /// A vehicle was sound both times from the probability at which a fault is named, 0.7, before its chance is divided by
    /// five.
    #[test]
    fn a_vehicle_was_sound_before_from_the_odds_at_which_a_fault_is_named() {
        let by = |sound_both: f64| found(|change| change.sound_both = sound_both);
        // 0.318 / (0.318 + 0.2 * 0.682) = 0.7.
        assert_eq!(
            (by(0.31), by(0.325)),
            (RepairFinding::CannotTell, RepairFinding::SoundBefore)
        );
    }

    /// Of a proven repair every figure lies within three standard deviations of what a sound system shows, to either side.
    #[test]
    fn figures_of_a_proven_repair_lie_within_three_standard_deviations() {
        use crate::circuit::{Reading, Readings};
        use crate::diagnosis::Deviation;
        use crate::names::{Compressor, Expansion, Refrigerant};
        use crate::units::{Surroundings, celsius, kelvins_difference};
        use crate::vehicle::{Conditions, System};
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let conditions = Conditions::new(celsius(28.0), Surroundings::SEA_LEVEL);
        let readings = Readings {
            vent: Some(Reading::within(celsius(8.0), kelvins_difference(1.0))),
            ..Readings::default()
        };
        let read = diagnose(&Case::new(system, conditions, readings), &Settings::default()).unwrap();
        let with = |deviation: f64| {
            let mut diagnosis = read.clone();
            let seen = diagnosis.deviations[0];
            diagnosis.deviations.push(Deviation { deviation, ..seen });
            within(&diagnosis)
        };
        assert!(with(2.9) && !with(3.1) && with(-2.9) && !with(-3.1));
    }
}
