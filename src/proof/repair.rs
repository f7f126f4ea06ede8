//! Did the repair help? Before and after, judged together.

use crate::diagnosis::{Case, Diagnosis, List, Settings, diagnose, diagnose_with, exists};
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Feature, Quantity, RepairFinding};
use crate::units::in_kelvins;

/// Chance that a repair sets right what was wrong and leaves nothing else wrong. Source: engineering judgement.
const SET_RIGHT: f64 = 0.75;

/// Chance that a repair leaves something new: too much or too little charge, air, a hose not refitted. Source:
/// engineering judgement.
const SOMETHING_NEW: f64 = 0.10;

/// A figure of a proven repair lies within this many standard deviations. Source: engineering judgement: of seven
/// figures of a sound system one in three times lies outside its 95 % band, one in fifty times outside this.
const LIMIT: f64 = 3.0;

/// One figure before and after, in standard deviations from what a sound system shows in the conditions of its own time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seen {
    /// The figure.
    pub feature: Feature,
    /// Before the repair; `None` where it was not read.
    pub before: Option<f64>,
    /// After it.
    pub after: Option<f64>,
}

/// What the readings before and after tell together.
#[derive(Clone, Debug, PartialEq)]
pub struct Proof {
    /// The judgement.
    pub finding: RepairFinding,
    /// Probability that the system is sound now.
    pub sound: f64,
    /// The fault that explained the readings before best.
    pub fault: Fault,
    /// Probability that it is still there.
    pub same_fault: f64,
    /// The likeliest fault now, that one aside, with its probability.
    pub other_fault: Option<(Fault, f64)>,
    /// How much colder the vent is than before, measured from what a sound system shows at each time, K; `None` unless
    /// it was read both times.
    pub vent_gained_k: Option<f64>,
    /// Every figure that was read at either time.
    pub seen: List<Seen, { Feature::ALL.len() }>,
    /// The diagnosis before.
    pub before: Diagnosis,
    /// The diagnosis after, what was found before taken into account.
    pub after: Diagnosis,
}

/// What the readings before and after a repair tell together.
///
/// What explained the readings before is what may still be there: the chances before any reading of the second
/// diagnosis are those after all readings of the first, mixed with the chance that the repair set it right and the chance
/// that it left something new. Each time is judged in its own weather, so that a cool morning proves nothing.
///
/// Errors: those of [`diagnose`]; `Inconsistent` when the two cases are different systems.
pub fn prove(before: &Case, after: &Case, settings: &Settings) -> Result<Proof, Error> {
    let first = diagnose(before, settings)?;
    let second = diagnose_after(&first, before, after, settings)?;
    Ok(compared((before, &first), (after, &second), settings))
}

/// What the readings after a repair tell, where the diagnosis before is known.
#[inline(never)] // so that it is worked out on less stack than both fill
pub(crate) fn diagnose_after(
    first: &Diagnosis,
    before: &Case,
    after: &Case,
    settings: &Settings,
) -> Result<Diagnosis, Error> {
    if before.system != after.system {
        return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
    }
    again(after, settings, first)
}

/// What both diagnoses tell together.
#[inline(never)]
pub(crate) fn compared(
    (before, first): (&Case, &Diagnosis),
    (after, second): (&Case, &Diagnosis),
    settings: &Settings,
) -> Proof {
    let fault = leading(first);
    let sound = second.probability_of(&[Fault::NoFault]);
    let same_fault = second.probability_of(&[fault]);
    let other_fault = second
        .faults
        .iter()
        .find(|ranked| ranked.fault != fault && ranked.fault != Fault::NoFault)
        .map(|ranked| (ranked.fault, ranked.probability));
    let led = first
        .faults
        .first()
        .is_some_and(|ranked| ranked.fault == Fault::NoFault);
    let was_sound = led && first.probability_of(&[Fault::NoFault]) >= settings.healthy;
    let finding = if !cooling_was_seen(second) || after.conditions.at_rest(after.system.compressor) {
        RepairFinding::CannotTell
    } else if sound >= settings.named && within(second) {
        if was_sound {
            RepairFinding::SoundBefore
        } else {
            RepairFinding::Proven
        }
    } else if same_fault >= EVEN_ODDS {
        RepairFinding::StillFaulty
    } else if other_fault.is_some_and(|(_, probability)| probability >= EVEN_ODDS) {
        RepairFinding::AnotherFault
    } else {
        RepairFinding::CannotTell
    };
    Proof {
        finding,
        sound,
        fault,
        same_fault,
        other_fault,
        vent_gained_k: vent_gained_k(before, after, first, second),
        seen: seen(first, second),
        before: first.clone(),
        after: second.clone(),
    }
}

/// A fault is spoken of when it is likelier than not.
const EVEN_ODDS: f64 = 0.5;

/// The likeliest fault, a sound system aside.
fn leading(diagnosis: &Diagnosis) -> Fault {
    diagnosis
        .faults
        .iter()
        .map(|ranked| ranked.fault)
        .find(|fault| *fault != Fault::NoFault)
        .unwrap_or(Fault::NoFault)
}

/// The diagnosis after the repair: what was found before is still there, was set right, or something is new.
fn again(case: &Case, settings: &Settings, before: &Diagnosis) -> Result<Diagnosis, Error> {
    let possible = |fault: &Fault| exists(*fault, &case.system);
    let priors = Fault::ALL
        .into_iter()
        .filter(possible)
        .map(|fault| settings.prior(fault));
    let total = priors.sum::<f64>() + settings.none_of_these;
    let unchanged = 1.0 - SET_RIGHT - SOMETHING_NEW;
    diagnose_with(case, settings, |fault| {
        let Some(fault) = fault else {
            return SOMETHING_NEW * settings.none_of_these / total + unchanged * before.none_of_these;
        };
        let set_right = if fault == Fault::NoFault { SET_RIGHT } else { 0.0 };
        let new = SOMETHING_NEW * settings.prior(fault) / total;
        set_right + new + unchanged * before.probability_of(&[fault])
    })
}

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

fn vent_gained_k(before: &Case, after: &Case, first: &Diagnosis, second: &Diagnosis) -> Option<f64> {
    let above = |case: &Case, diagnosis: &Diagnosis| {
        let vent_k = in_kelvins(case.readings.vent?.value);
        Some(vent_k - in_kelvins(diagnosis.expected.as_ref()?.vent.median))
    };
    Some(above(before, first)? - above(after, second)?)
}
