//! Two faults at once, considered when no single one fits well.

use super::answer::TwoFaults;
use super::batch::Seen;
use super::fault_table::FAULTS;
use super::likelihood::Grounds;
use super::looks::Looks;
use super::posterior::Posterior;
use super::rows::FaultRow;
use super::scene::Scene;
use super::settings::Settings;
#[cfg(test)]
use super::tally::{self, Work};
use crate::names::Fault;

/// Pairs less common than this are not tried.
const RARE: f64 = 5e-4;

/// The likeliest pair of faults, weighed against all single explanations.
///
/// Their shifts add up, at every pair of severities. The prior of a pair is the product of both priors, scaled so that all
/// pairs together have `settings.two_faults`.
#[inline(never)]
pub(super) fn likeliest(posterior: &Posterior, settings: &Settings, scene: &Scene) -> Option<TwoFaults> {
    let (sound, features) = (scene.sound.as_ref()?, posterior.features()?);
    let grounds = Grounds {
        sound,
        pages: posterior.pages(),
    };
    let seen = Seen::of(features);
    let real =
        |row: &&FaultRow| !matches!(row.fault, Fault::NoFault | Fault::GaugeError) && posterior.prior(row.fault) > 0.0;
    let priors = FAULTS.iter().filter(real).map(|row| posterior.prior(row.fault));
    let (sum, squares) = priors.fold((0.0, 0.0), |(sum, squares), p| (sum + p, squares + p * p));
    let possible = 0.5 * (sum * sum - squares);
    let prior = |first: Fault, second: Fault| posterior.prior(first) * posterior.prior(second);
    let mut all = 0.0;
    let mut best: Option<(Fault, Fault, f64)> = None;
    let tried = |first: Fault, second: Fault| prior(first, second) >= RARE;
    grounds.each_pair(&seen, tried, |first, second, density| {
        #[cfg(test)]
        tally::one_more(Work::Pair);
        let weight = prior(first, second) * density * answers(posterior, &settings.looks, first, second);
        all += weight;
        if best.is_none_or(|(_, _, most)| weight > most) {
            best = Some((first, second, weight));
        }
    });
    let (first, second, weight) = best?;
    let scale = settings.two_faults / possible;
    let everything = posterior.evidence + scale * all;
    (everything > 0.0).then(|| TwoFaults {
        faults: [first, second],
        probability: scale * weight / everything,
        any_pair: scale * all / everything,
    })
}

/// The chance of the answers when two faults are there: each answer has the chance of the fault that differs more from a sound
/// system in it.
fn answers(posterior: &Posterior, looks: &Looks, first: Fault, second: Fault) -> f64 {
    let mut product = 1.0;
    for [sound, a, b] in posterior.sights(looks, [Fault::NoFault, first, second]) {
        product *= if libm::fabs(a - sound) > libm::fabs(b - sound) {
            a
        } else {
            b
        };
    }
    product
}
