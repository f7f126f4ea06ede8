//! Two faults at once, asked for when no single one fits well.

use super::answer::TwoFaults;
use super::case::Settings;
use super::chart::{Judged, mixed, unmoved};
use super::fault_table::FAULTS;
use super::faults::{FaultRow, index};
use super::features::{FEATURES, Features};
use super::posterior::Posterior;
use super::scene::Scene;
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
    let answers = answers(posterior);
    let alone = FAULTS
        .each_ref()
        .map(|row| real(row).then(|| Alone::of(scene, figures, row)));
    let each = || {
        FAULTS
            .iter()
            .zip(&alone)
            .filter_map(|(row, alone)| Some((row, alone.as_ref()?)))
    };
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
            let weight = prior * likelihood(scene, first, second) * answers(of_first, of_second);
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

/// What each fault alone does to each measured figure, at the severities that are tried.
struct Alone {
    judged: [Option<Judged>; FEATURES],
    density: [[f64; FEATURES]; TRIED.len()],
}

impl Alone {
    fn of(scene: &Scene, figures: &Features, row: &'static FaultRow) -> Self {
        let judged: [Option<Judged>; FEATURES] = core::array::from_fn(|i| {
            let (measured, healthy) = (figures.measured[i]?, scene.healthy[i]?);
            Some(Judged::of(scene, measured, healthy, row, Feature::ALL[i]))
        });
        let density = TRIED.map(|severity| {
            core::array::from_fn(|i| {
                judged[i]
                    .as_ref()
                    .map_or(1.0, |judged| judged.density(scene, severity, 0.0))
            })
        });
        Self { judged, density }
    }
}

/// Likelihood of the figures when both faults are there, their severities weighed.
fn likelihood(scene: &Scene, first: (&FaultRow, &Alone), second: (&FaultRow, &Alone)) -> f64 {
    let ((first, of_first), (second, of_second)) = (first, second);
    let total = |row: &FaultRow| TRIED.iter().map(|severity| row.weight[*severity]).sum::<f64>();
    let weights = total(first) * total(second);
    let mut sum = 0.0;
    for (a, one) in TRIED.into_iter().enumerate() {
        for (b, other) in TRIED.into_iter().enumerate() {
            let mut product = first.weight[one] * second.weight[other] / weights;
            for i in 0..FEATURES {
                let (Some(by_first), Some(by_second)) = (&of_first.judged[i], &of_second.judged[i]) else {
                    continue;
                };
                product *= match (by_first.effect, by_second.effect) {
                    (_, None) => of_first.density[a][i],
                    (None, Some(_)) => of_second.density[b][i],
                    (Some(effect), Some(then)) => {
                        let Judged { measured, healthy, .. } = *by_first;
                        let left = scene.moved(effect, (one, 0.0), healthy, 0.0).spread();
                        let moved = scene.moved(then, (other, 0.0), left, measured.standard_uncertainty);
                        mixed(
                            unmoved(then, other),
                            of_first.density[a][i],
                            moved.density(measured.value),
                        )
                    }
                };
            }
            sum += product;
        }
    }
    sum
}
