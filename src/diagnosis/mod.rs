//! From readings to a defended verdict: which faults explain them, how likely each is, and what to check next.
//!
//! rows and tables -> feature vector -> sound model -> atlas -> likelihood -> posterior -> verdict and predictions -> planner.
//!
//! The readings become one [`FeatureVector`](crate::circuit::FeatureVector). What a sound system shows is one
//! [`SoundModel`]: a mixture over sources of multivariate t distributions. The atlas (`tables/atlas`) says by how much each fault
//! moves every feature, at several severities, from each source. The likelihood of a fault is the sum over sources and severities of
//! a t density at sound mean plus shift; a feature that was not read drops out of it, which is the same as averaging over all
//! it could have been. Answers to yes-or-no questions multiply the odds by their likelihood ratio. Two more hypotheses stand
//! beside the faults: that the instruments mislead in a known way, and that the cause is none of the list.
//!
//! Sources: Rossi & Braun 1997 and Li & Braun 2003, 2007 for faults as shifts of features; every row of the atlas and every chance
//! of an observation has its own.

mod answer;
mod atlas;
mod atlas_table;
mod case;
mod cautions;
mod check_table;
mod checks;
mod effects;
#[cfg(all(test, feature = "std"))]
mod effort;
mod fault_table;
mod faults;
mod features;
mod learning;
mod likelihood;
mod list;
mod looks;
mod next_check;
mod notes;
mod pairs;
mod posterior;
mod prices;
mod rest;
mod scene;
mod stakes;
mod strays;
#[cfg(test)]
mod tally;
mod verdict;

pub use answer::{
    Action, Branch, Contribution, Deviation, Diagnosis, EVIDENCE, Evidence, Outcome, Plan, RankedCheck, RankedFault,
    Reasons, STEPS, Step, TwoFaults, Verdict,
};
pub use case::{Case, Observations, Settings};
pub use cautions::{Cautions, check_cautions, repair_cautions};
pub use checks::{Repair, can_check, questions, repair};
pub use effects::{Effect, effects};
pub use faults::{exists, measure};
pub use learning::Counts;
pub use list::List;
pub use looks::Looks;
pub use prices::{Cost, Prices};
pub use stakes::Stakes;

use crate::circuit::{Derived, Estimate, Reading};
use crate::error::Error;
use crate::expected::{Bands, SoundModel};
use crate::names::{Fault, MixUp, QualityNote, RestFinding};
use crate::saturation;
use crate::units::in_kelvins;
use faults::{NONE, index};
use next_check::Standing;
use posterior::Posterior;
use scene::Scene;

/// What explains these readings?
///
/// A running system is judged against what a sound one shows; one whose compressor is known to stand still
/// ([`Conditions::at_rest`](crate::vehicle::Conditions::at_rest)) only by its pressure at rest. A transducer of the high side
/// stands in for a gauge, or is pooled with it where they agree. At rest where the pressure of a sound system is not that
/// of saturation only observations are judged, and [`QualityNote::BandsOnly`] says so.
///
/// Errors: `NotFinite` and `OutOfRange` for readings, conditions and settings that cannot be, and for conditions of
/// which no source speaks ([`SoundModel::of`]); `NotAvailable` for a refrigerant of which none does.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::diagnosis::{Case, Settings, diagnose};
/// use coldloop::units::{GaugePressure, Pressure, Surroundings, Temperature, fahrenheit};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Fault, Refrigerant, Thermometer, VerdictKind};
///
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let conditions = Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL);
/// let readings = Readings {
///     low_side: Some(Reading::pressure(GaugePressure::from_psig(70.0), Gauge::LOW_SIDE)),
///     high_side: Some(Reading::pressure(GaugePressure::from_psig(125.0), Gauge::HIGH_SIDE)),
///     vent: Some(Reading::temperature(fahrenheit(63.0), Thermometer::PocketDigital)),
///     ..Readings::default()
/// };
/// let answer = diagnose(&Case::new(system, conditions, readings), &Settings::default())?;
/// assert_eq!(answer.faults[0].fault, Fault::WornCompressor);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn diagnose(case: &Case, settings: &Settings) -> Result<Diagnosis, Error> {
    settings.check()?;
    judge(case, settings)
}

/// Diagnoses many cases by the same settings.
///
/// The settings are looked through once; the answers are those of [`diagnose`] to the bit.
///
/// ```
/// use coldloop::circuit::Readings;
/// use coldloop::diagnosis::{Case, Judge, Settings, diagnose};
/// use coldloop::units::{Surroundings, fahrenheit};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let settings = Settings::default();
/// let judge = Judge::new(&settings)?;
/// for ambient in [70.0, 80.0, 90.0] {
///     let conditions = Conditions::new(fahrenheit(ambient), Surroundings::SEA_LEVEL);
///     let case = Case::new(system, conditions, Readings::default());
///     assert_eq!(judge.diagnose(&case)?, diagnose(&case, &settings)?);
/// }
/// # Ok::<(), coldloop::Error>(())
/// ```
pub struct Judge<'a> {
    settings: &'a Settings,
}

impl<'a> Judge<'a> {
    /// A judge by these settings.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for settings that cannot be.
    pub fn new(settings: &'a Settings) -> Result<Self, Error> {
        settings.check()?;
        Ok(Self { settings })
    }

    /// What explains the readings of this case?
    ///
    /// Errors: as [`diagnose`].
    pub fn diagnose(&self, case: &Case) -> Result<Diagnosis, Error> {
        judge(case, self.settings)
    }
}

/// By settings that can be.
fn judge(case: &Case, settings: &Settings) -> Result<Diagnosis, Error> {
    case.check()?;
    let derived = derived(case)?;
    if case.conditions.at_rest(case.system.compressor) {
        return at_rest(case, settings, derived);
    }
    let sound = SoundModel::of(&case.system, &case.conditions)?.knowing(
        &case.system,
        &case.conditions,
        case.own_readings.as_ref(),
        case.own_table.as_ref(),
    )?;
    answer(case, settings, &Scene::of(case, Some(sound)), derived)
}

/// An answer that rests on observations alone, whatever was read.
fn unjudged(case: &Case, settings: &Settings, derived: Derived) -> Result<Diagnosis, Error> {
    let mut silent = *case;
    silent.readings = crate::circuit::Readings::default();
    let mut diagnosis = answer(&silent, settings, &Scene::of(case, None), derived)?;
    if case.observations == Observations::NONE {
        // Nothing but what is usual would speak from the odds.
        diagnosis.faults.clear();
        diagnosis.none_of_these = 0.0;
    }
    let notes = diagnosis.quality;
    diagnosis.quality = List::new(QualityNote::BandsOnly);
    for note in notes.iter().filter(|note| **note != QualityNote::FewReadings) {
        diagnosis.quality.push(*note);
    }
    diagnosis.quality.push(QualityNote::BandsOnly);
    Ok(diagnosis)
}

/// What follows from the readings without any judgement.
fn derived(case: &Case) -> Result<Derived, Error> {
    let ambient = Reading::within(case.conditions.ambient, AMBIENT_ERROR_K);
    Derived::new(
        case.system.refrigerant,
        &case.readings,
        case.conditions.surroundings,
        Some(ambient),
    )
}

/// The largest error of an ambient temperature, K. Source: engineering judgement: sun, road and the engine nearby.
const AMBIENT_ERROR_K: f64 = 1.5;

/// The answer to a case in its conditions.
fn answer(case: &Case, settings: &Settings, scene: &Scene, derived: Derived) -> Result<Diagnosis, Error> {
    let air = case.conditions.surroundings;
    let expected = scene
        .sound
        .as_ref()
        .map(|sound| Bands::from_model(sound, case.system.refrigerant, air));
    let at_rest = case.conditions.at_rest(case.system.compressor);
    let posterior = Posterior::of(case, settings, scene, at_rest)?;
    let faults = verdict::ranked(&posterior, scene);
    let leading = faults.first().map_or(Fault::NoFault, |ranked| ranked.fault);
    let out_of_line = verdict::out_of_line(&posterior, scene, leading);
    let doubtful = posterior.unexplained >= BAD_FIT || out_of_line.is_some();
    let two_faults = doubtful
        .then(|| pairs::likeliest(&posterior, settings, scene))
        .flatten();
    let deviations = verdict::deviations(&posterior, scene);
    let mut quality = verdict::quality(case, scene, &posterior, posterior.off_scale, (out_of_line, two_faults));
    notes::add(case, &derived, &mut quality);
    let standing = Standing::of(case, posterior.off_scale);
    let next = settings
        .next_checks
        .then(|| next_check::next(&posterior, scene, settings, standing));
    Ok(Diagnosis {
        verdict: verdict::verdict(settings, &posterior, &faults, &deviations, (out_of_line, two_faults)),
        faults,
        none_of_these: posterior.probability[NONE],
        expected: expected.transpose()?,
        basis: scene.sound.as_ref().map(SoundModel::basis),
        derived,
        deviations,
        out_of_line,
        rest: None,
        mix_up: mix_up(&posterior),
        two_faults,
        next_step: next.as_ref().and_then(|next| next.step),
        next_checks: next.map_or_else(next_check::unranked, |next| next.checks),
        cautions: cautions::general(&case.system),
        quality,
        posterior,
        scene: *scene,
        standing,
    })
}

/// From this probability of an unknown cause or way on, two faults at once are considered. Source: engineering judgement.
const BAD_FIT: f64 = 0.1;

/// The likeliest mix-up, from 1 % on.
fn mix_up(posterior: &Posterior) -> Option<(MixUp, f64)> {
    let gauge_error = posterior.probability[index(Fault::GaugeError)];
    let shares = MixUp::ALL.into_iter().zip(posterior.mix_ups);
    let (likeliest, share) = shares.max_by(|a, b| a.1.total_cmp(&b.1))?;
    let probability = gauge_error * share;
    (probability >= 0.01).then_some((likeliest, probability))
}

/// A system whose compressor stands still: both sides at saturation while any liquid is left.
fn at_rest(case: &Case, settings: &Settings, derived: Derived) -> Result<Diagnosis, Error> {
    if warm_for_rest(case) {
        return unjudged(case, settings, derived);
    }
    let mut diagnosis = answer(case, settings, &Scene::of(case, None), derived)?;
    diagnosis.rest = match diagnosis.posterior.rest() {
        Some(measured) => Some(rest_finding(measured)),
        None => features::equal_sides(case).map(|_| RestFinding::NotEqualised),
    };
    Ok(diagnosis)
}

/// How near to its critical temperature no liquid is left in a sound system at rest, whose pressure then tells of its charge and
/// volume, K. Judgement.
const NO_LIQUID_K: f64 = 3.0;

/// Whether it is so warm that the pressure at rest of a sound system is not that of saturation.
fn warm_for_rest(case: &Case) -> bool {
    let critical_k = saturation::of(case.system.refrigerant).critical_t_k();
    in_kelvins(case.conditions.ambient) > critical_k - NO_LIQUID_K
}

/// Beyond the 95 % band of a sound system at rest, the instrument's uncertainty added.
fn rest_finding(measured: Estimate) -> RestFinding {
    match rest::deviation(measured) {
        z if z < -verdict::LIMIT_95 => RestFinding::NearlyEmpty,
        z if z > verdict::LIMIT_95 => RestFinding::AirPresent,
        _ => RestFinding::Consistent,
    }
}
