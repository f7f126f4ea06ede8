//! Two faults at once, asked for when no single one fits well.

use super::answer::TwoFaults;
use super::case::Settings;
use super::chart::{Judged, mixed, unmoved};
use super::density::TwoPiece;
use super::fault_table::FAULTS;
use super::faults::{FaultRow, index};
use super::features::{FEATURES, Features};
use super::posterior::Posterior;
use super::scene::{Motion, Scene};
#[cfg(test)]
use super::tally::{self, Work};
use crate::circuit::Estimate;
use crate::expected::Spread;
use crate::names::{Fault, Feature};

/// The severities that are tried: the two in the middle of each fault's four. Source: engineering judgement: slight
/// faults explain little, and extreme ones hide the other.
const TRIED: [usize; 2] = [1, 2];

/// Pairs less common than this are not tried.
const RARE: f64 = 5e-4;

/// The likeliest pair of faults, weighed against all single explanations.
///
/// The second fault moves a figure from where the first has left it. Both are as common as they are alone, and a pair
/// as common as `settings.two_faults` says.
pub(super) fn likeliest(
    posterior: &Posterior,
    settings: &Settings,
    scene: &Scene,
    figures: &Features,
) -> Option<TwoFaults> {
    if !scene.by_tables {
        // Only the tables tell what two faults do together.
        return None;
    }
    let real =
        |row: &FaultRow| !matches!(row.fault, Fault::NoFault | Fault::GaugeError) && posterior.prior(row.fault) > 0.0;
    let priors = FAULTS
        .iter()
        .filter(|row| real(row))
        .map(|row| posterior.prior(row.fault));
    let commonest = priors.fold(0.0, f64::max);
    let answers = answers(posterior);
    let read: Read = core::array::from_fn(|i| Some((figures.measured[i]?, scene.healthy[i]?)));
    let mut alone = [[Alone::NOTHING; FEATURES]; FAULTS.len()];
    for (alone, row) in alone.iter_mut().zip(&FAULTS) {
        // Of others no pair is common enough.
        if real(row) && posterior.prior(row.fault) * commonest >= RARE {
            Alone::take(alone, scene, &read, row);
        }
    }
    let each = || FAULTS.iter().zip(&alone).filter(|(row, _)| real(row));
    let (mut possible, mut all) = (0.0, 0.0);
    let mut best: Option<(Fault, Fault, f64)> = None;
    for (place, first) in each().enumerate() {
        for second in each().skip(place + 1) {
            let (of_first, of_second) = (first.0.fault, second.0.fault);
            let prior = posterior.prior(of_first) * posterior.prior(of_second);
            possible += prior;
            if prior < RARE {
                continue;
            }
            let weight = prior * likelihood(&read, first, second) * answers(of_first, of_second);
            all += weight;
            if best.is_none_or(|(_, _, most)| weight > most) {
                best = Some((of_first, of_second, weight));
            }
        }
    }
    let (first, second, weight) = best?;
    let scale = settings.two_faults / possible;
    let everything = posterior.evidence + scale * all;
    (everything > 0.0).then(|| TwoFaults {
        faults: [first, second],
        probability: scale * weight / everything,
        any_pair: scale * all / everything,
    })
}

/// The chance of the answers when two faults are there: each answer is that of the fault which says more about it.
fn answers(posterior: &Posterior) -> impl Fn(Fault, Fault) -> f64 + '_ {
    move |first, second| {
        let mut product = 1.0;
        for sight in posterior.sights() {
            let [sound, a, b] = [Fault::NoFault, first, second].map(|fault| sight.chance[index(fault)]);
            product *= if libm::fabs(a - sound) > libm::fabs(b - sound) {
                a
            } else {
                b
            };
        }
        product
    }
}

/// The figures that were read and can be judged, each with a sound system's.
type Read = [Option<(Estimate, Spread)>; FEATURES];

/// What one fault alone does to one figure, at the severities that are tried.
#[derive(Clone, Copy)]
struct Alone {
    density: [f64; TRIED.len()],
    moves: bool,
    /// How it moves the figure, where it leaves it for a second one to move on, and the chance that it does not move it.
    motion: [Motion; TRIED.len()],
    left: [TwoPiece; TRIED.len()],
    unmoved: [f64; TRIED.len()],
}

impl Alone {
    /// Of a figure that cannot be judged, which is not looked at; all its bits are zero.
    const NOTHING: Self = Self {
        density: [0.0; TRIED.len()],
        moves: false,
        motion: [Motion::NONE; TRIED.len()],
        left: [TwoPiece::NOWHERE; TRIED.len()],
        unmoved: [0.0; TRIED.len()],
    };

    /// Takes in what a fault does to the figures that were read.
    fn take(alone: &mut [Self; FEATURES], scene: &Scene, read: &Read, row: &'static FaultRow) {
        for ((alone, read), feature) in alone.iter_mut().zip(read).zip(Feature::ALL) {
            let Some((measured, healthy)) = *read else { continue };
            let judged = Judged::of(scene, measured, healthy, row, feature);
            alone.density = TRIED.map(|severity| judged.density(scene, severity, 0.0));
            alone.moves = judged.effect.is_some();
            if let Some(effect) = judged.effect {
                alone.motion = TRIED.map(|severity| scene.motion(effect, (severity, 0.0)));
                alone.left = alone.motion.map(|motion| motion.of(TwoPiece::of(healthy)));
                alone.unmoved = TRIED.map(|severity| unmoved(effect, severity));
            }
        }
    }
}

/// Likelihood of the figures when both faults are there, their severities weighed.
fn likelihood(
    read: &Read,
    (first, of_first): (&FaultRow, &[Alone; FEATURES]),
    (second, of_second): (&FaultRow, &[Alone; FEATURES]),
) -> f64 {
    #[cfg(test)]
    tally::one_more(Work::Pair);
    let chance = |row: &FaultRow| {
        let chance = TRIED.map(|severity| row.weight[severity]);
        let all: f64 = chance.iter().sum();
        chance.map(|chance| chance / all)
    };
    let (of_one, of_other) = (chance(first), chance(second));
    let mut products = of_one.map(|one| of_other.map(|other| one * other));
    for ((first, second), read) in of_first.iter().zip(of_second).zip(read) {
        let Some((measured, _)) = read else { continue };
        let densities: [[f64; TRIED.len()]; TRIED.len()] = match (first.moves, second.moves) {
            (_, false) => first.density.map(|density| [density; TRIED.len()]),
            (false, true) => [second.density; TRIED.len()],
            (true, true) => core::array::from_fn(|a| {
                core::array::from_fn(|b| {
                    let moved = second.motion[b]
                        .of(first.left[a])
                        .as_read(measured.standard_uncertainty);
                    mixed(second.unmoved[b], first.density[a], moved.density(measured.value))
                })
            }),
        };
        for (product, density) in products.as_flattened_mut().iter_mut().zip(densities.as_flattened()) {
            *product *= density;
        }
    }
    products.iter().flatten().sum()
}
