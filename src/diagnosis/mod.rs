//! From readings to a defended verdict: which faults explain them, how likely each is, and what to check next.
//!
//! Every fault is a hypothesis about what the readings would be. Two sources say what that is, and the likelihood of the
//! readings under a fault is the mean of what they say:
//!
//! - clouds of vehicles simulated with that fault at every severity (`cloud`, fitted by `tables/compile` to
//!   [`crate::vehicle`] and its population): they know how the figures hang together, and how speed, air and weather move
//!   them. They count once where the model has sound vehicles and once moved to where the trade has them;
//! - the tables of the trade (`chart`, `tables/faults`): each fault moves figures (saturation temperatures of both sides,
//!   superheat, subcooling, discharge superheat, vent, clutch cycles) by sizes that one severity sets. They are blunter,
//!   but reach to where no simulated vehicle stands.
//!
//! Where both speak, neither is trusted alone: a model is not the vehicle in the yard, and its vehicles read lower on the
//! low side than the trade's. A figure that was not read drops out of both, which is the same as averaging over all it
//! could have been. Answers to yes-or-no questions multiply the odds by their likelihood ratio. Two more hypotheses stand
//! beside the faults: that the gauges mislead in a known way, and that the cause is none of the list.
//!
//! Sources: Rossi & Braun 1997 and Li & Braun 2003, 2007 for the directions; the sizes and chances stand in
//! `tables/faults` and `tables/checks`, each with its own; the clouds follow from the vehicle model.

mod against;
mod answer;
mod case;
mod cautions;
mod chart;
mod check_table;
mod checks;
mod cloud;
mod cloud_table;
mod coordinates;
mod density;
#[cfg(all(test, feature = "std"))]
mod effort;
mod fault_table;
mod faults;
mod features;
mod figures;
mod lanes;
mod learning;
mod list;
mod looks;
mod next_check;
mod notes;
mod own;
mod pairs;
mod part;
mod posterior;
mod prediction;
mod prices;
#[cfg(test)]
mod published;
mod scene;
mod stakes;
#[cfg(all(test, feature = "std"))]
mod stale;
mod student;
#[cfg(test)]
mod sweep;
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
pub use coordinates::Coordinates;
pub use faults::{exists, measure};
pub use learning::Counts;
pub use list::List;
pub use looks::Looks;
pub use prices::{Cost, Prices};
pub use stakes::Stakes;

use crate::circuit::{Derived, Estimate, Reading};
use crate::error::Error;
use crate::expected::{Bands, Expectation, Fleet, Healthy};
use crate::names::{ErrorKind, Fault, Feature, MixUp, QualityNote, RestFinding, VerdictKind};
use crate::saturation;
use crate::units::in_kelvins;
use faults::index;
use features::{Features, NOTHING};
use posterior::{NONE, Posterior};
use scene::Scene;

/// What explains these readings?
///
/// A running system is judged against what a sound one shows; one whose compressor is known to stand still
/// ([`Conditions::at_rest`](crate::vehicle::Conditions::at_rest)) only by its pressure at rest. A transducer of the high side
/// stands in for a gauge, or is pooled with it where they agree. Of R-744 no table of the trade speaks, and its clouds judge alone; at rest where its pressure is not that
/// of saturation only observations are judged, and [`QualityNote::BandsOnly`] says so.
///
/// Errors: `NotFinite` and `OutOfRange` for readings, conditions and settings that cannot be, and for conditions of
/// which no source speaks ([`Healthy::of`]).
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
    let healthy = healthy(case)?;
    let scene = Scene::running(case, &healthy)?;
    running(case, settings, &scene, (&healthy, derived))
}

/// A running system; `scene` has the clouds, or goes by the tables alone.
fn running(
    case: &Case,
    settings: &Settings,
    scene: &Scene,
    (healthy, derived): (&Healthy, Derived),
) -> Result<Diagnosis, Error> {
    let expectation = Expectation::of(
        &case.system,
        &case.conditions,
        case.own_table.as_ref(),
        case.own_readings.as_ref(),
    )?;
    let figures = features::running(case, healthy, None).unwrap_or(NOTHING);
    let mixed_up = |mix_up| features::running(case, healthy, Some(mix_up));
    answer(
        case,
        settings,
        scene,
        (&figures, &mixed_up),
        (derived, Some(expectation)),
    )
}

/// An answer that rests on observations alone, whatever was read.
fn unjudged(case: &Case, settings: &Settings, derived: Derived) -> Result<Diagnosis, Error> {
    let scene = Scene::blank(case);
    let mut diagnosis = answer(case, settings, &scene, (&NOTHING, &|_| None), (derived, None))?;
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

/// What a sound system shows here, with the vehicle's own table and a cycling clutch taken into account.
fn healthy(case: &Case) -> Result<Healthy, Error> {
    let mut healthy = match Healthy::of(&case.system, &case.conditions) {
        // Of some no chart is known, but the model knows how sound ones stand.
        Err(error) if error.kind == ErrorKind::NotAvailable => {
            Fleet::of(&case.system)?.bands(&case.conditions)?.healthy
        }
        other => other?,
    };
    if let Some(table) = &case.own_table {
        healthy = table.replace(healthy, case.system.refrigerant, case.conditions.ambient)?;
    }
    if let Some(limit_pa) = case.system.high_cut_out_pa {
        healthy.end_high_side(case.system.refrigerant, case.conditions.surroundings, limit_pa)?;
    }
    let cycles = case
        .readings
        .clutch_cycles_hz
        .is_some_and(|reading| reading.value > 0.0);
    Ok(if cycles && healthy.clutch_cycles.is_some() {
        healthy.with_cycling_clutch()
    } else {
        healthy
    })
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

/// The answer to figures, and to those that a mix-up would have hidden, where it can have happened.
fn answer(
    case: &Case,
    settings: &Settings,
    scene: &Scene,
    (figures, mixed_up): (&Features, &dyn Fn(MixUp) -> Option<Features>),
    (derived, expectation): (Derived, Option<Expectation>),
) -> Result<Diagnosis, Error> {
    let expected = expectation
        .map(|expectation| Bands::from_healthy(&expectation.healthy, &case.system, &case.conditions))
        .transpose()?;
    let at_rest = case.conditions.at_rest(case.system.compressor);
    // It is large, and so put together where it stands.
    let mut diagnosis = Diagnosis {
        verdict: Verdict::of(VerdictKind::NotEnoughEvidence),
        faults: List::new(RankedFault::BLANK),
        none_of_these: 0.0,
        expected,
        expectation,
        derived,
        deviations: verdict::deviations(figures, scene),
        out_of_line: None,
        rest: None,
        mix_up: None,
        two_faults: None,
        next_checks: next_check::unranked(),
        cautions: cautions::general(&case.system),
        quality: List::new(QualityNote::FewReadings),
        posterior: Posterior::before(case, settings, scene, figures),
        scene: *scene,
    };
    diagnosis.posterior.weigh(scene, mixed_up);
    let posterior = &diagnosis.posterior;
    diagnosis.none_of_these = posterior.probability[NONE];
    diagnosis.mix_up = mix_up(posterior);
    diagnosis.faults = verdict::ranked(posterior, scene);
    let leading = diagnosis.faults.first().map_or(Fault::NoFault, |ranked| ranked.fault);
    diagnosis.out_of_line = verdict::out_of_line(posterior, scene, figures, leading);
    if posterior.probability[NONE] >= BAD_FIT || diagnosis.out_of_line.is_some() {
        diagnosis.two_faults = pairs::likeliest(posterior, settings, scene, figures);
    }
    let parting = |first, second| next_check::parting(posterior, scene, (settings, at_rest), (first, second));
    diagnosis.verdict = verdict::verdict(
        settings,
        posterior,
        &diagnosis.faults,
        &diagnosis.deviations,
        diagnosis.two_faults,
        &parting,
    );
    if settings.next_checks {
        let doubtful = figures.off_scale || notes::contradicts(case);
        diagnosis.next_checks = next_check::ranked(posterior, scene, settings, (at_rest, doubtful));
    }
    let doubts = (diagnosis.out_of_line, diagnosis.two_faults);
    diagnosis.quality = verdict::quality(case, scene, posterior, figures.off_scale, doubts);
    notes::add(case, &diagnosis.derived, &mut diagnosis.quality);
    Ok(diagnosis)
}

/// From this probability of none of these on, two faults at once are considered.
const BAD_FIT: f64 = 0.04;

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
    let scene = Scene::resting(case);
    let figures = features::resting(case, None);
    let judged = figures.unwrap_or(NOTHING);
    let mixed_up = |mix_up| features::resting(case, Some(mix_up));
    let mut diagnosis = answer(case, settings, &scene, (&judged, &mixed_up), (derived, None))?;
    diagnosis.rest = match figures.and_then(|figures| figures.measured[features::place(Feature::RestPressure)]) {
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
    let sound = Healthy::at_rest().widened(measured.standard_uncertainty, measured.standard_uncertainty);
    match sound.deviation(measured.value) {
        z if z < -verdict::LIMIT_95 => RestFinding::NearlyEmpty,
        z if z > verdict::LIMIT_95 => RestFinding::AirPresent,
        _ => RestFinding::Consistent,
    }
}
