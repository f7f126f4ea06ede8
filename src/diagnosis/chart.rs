//! Likelihoods by the tables of the trade: every fault moves the figures by sizes that one severity sets.
//!
//! The likelihood of the readings under a fault is the mean over its severities of the product over the figures. A figure
//! may also stay where it was although the fault is there: that is probability, not evidence against.

use super::faults::{Effect, FaultRow, SEVERITIES};
use super::features::{FEATURES, Features, place};
use super::list::List;
use super::scene::{Scene, about};
use crate::circuit::Estimate;
use crate::expected::Spread;
use crate::names::{Fault, Feature};

/// A figure that does not move although the fault is there is the less likely the more severe the fault: the chance in
/// the table is multiplied by this. Source: engineering judgement.
pub(super) const UNMOVED: [f64; SEVERITIES] = [1.0, 0.8, 0.4, 0.1];

/// Steps of the temperature at rest about its median, in its spreads, and their weights: three points of a
/// Gauss-Hermite rule.
const REST_STEPS: [(f64, f64); 3] = [
    (-1.732_050_807_568_877_2, 1.0 / 6.0),
    (0.0, 2.0 / 3.0),
    (1.732_050_807_568_877_2, 1.0 / 6.0),
];

/// Most patterns: five faults draw towards rest or move with three steps, the others with one.
pub(super) const PATTERNS: usize = Fault::ALL.len() * SEVERITIES + 8 * SEVERITIES;

/// One fault at one severity, and its weight after the readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Pattern {
    pub(super) fault: Fault,
    pub(super) severity: usize,
    /// The temperature at rest above its median, K.
    pub(super) rest_k: f64,
    /// Chance of the severity times likelihood of the readings.
    pub(super) weight: f64,
}

/// A figure that was read, and its density in a sound system.
#[derive(Clone, Copy)]
pub(super) struct Seen {
    feature: usize,
    measured: Estimate,
    healthy: Spread,
    sound: f64,
}

/// The figures that were read and can be judged.
pub(super) type AllSeen = List<Seen, FEATURES>;

pub(super) fn seen(scene: &Scene, figures: &Features) -> AllSeen {
    let mut all = List::new(Seen::BLANK);
    for feature in 0..FEATURES {
        if let (Some(measured), Some(healthy)) = (figures.measured[feature], scene.healthy[feature]) {
            all.push(Seen {
                feature,
                measured,
                healthy,
                sound: about(healthy, measured.standard_uncertainty).density(measured.value),
            });
        }
    }
    all
}

/// Likelihood of the first k figures under a fault, its severities weighed; `keep` is given each pattern. A pattern under
/// which the pressures are less likely than `least` is followed no further.
pub(super) fn likelihoods(
    scene: &Scene,
    seen: &AllSeen,
    row: &'static FaultRow,
    least: f64,
    mut keep: impl FnMut(Pattern),
) -> [f64; FEATURES + 1] {
    let mut effects: [Option<&Effect>; FEATURES] = [None; FEATURES];
    for effect in row.effects.iter().filter(|effect| effect.systems & scene.bit != 0) {
        effects[place(effect.feature)] = Some(effect);
    }
    let mut sums = [0.0; FEATURES];
    let mut all = 0.0;
    let moves_to_rest = row.rest_spread_k > 0.0;
    let steps = if moves_to_rest {
        &REST_STEPS[..]
    } else {
        &REST_STEPS[1..2]
    };
    for severity in 0..SEVERITIES {
        for (step, step_weight) in steps {
            let mut product = row.weight[severity] * if moves_to_rest { *step_weight } else { 1.0 };
            if product <= 0.0 {
                continue;
            }
            let rest_k = step * row.rest_spread_k;
            all += product;
            for (figure, sum) in seen.iter().zip(&mut sums) {
                product *= match effects[figure.feature] {
                    Some(effect) => {
                        let uncertainty = figure.measured.standard_uncertainty;
                        let moved = scene.moved(effect, (severity, rest_k), figure.healthy, uncertainty);
                        mixed(effect, severity, figure.sound, moved.density(figure.measured.value))
                    }
                    None => figure.sound,
                };
                *sum += product;
                // No density is above one: no spread is that narrow.
                if product < least && figure.feature <= place(Feature::HighSide) {
                    product = 0.0;
                    break;
                }
            }
            keep(Pattern {
                fault: row.fault,
                severity,
                rest_k,
                weight: product,
            });
        }
    }
    let mut cumulative = [all; FEATURES + 1];
    for (figure, sum) in seen.iter().zip(sums) {
        cumulative[figure.feature + 1..].fill(sum);
    }
    cumulative
}

impl Seen {
    const BLANK: Self = Self {
        feature: 0,
        measured: Estimate {
            value: 0.0,
            standard_uncertainty: 0.0,
        },
        healthy: Spread {
            median: 0.0,
            down: 0.0,
            up: 0.0,
        },
        sound: 0.0,
    };
}

/// One measured figure and what moves it.
pub(super) struct Judged {
    pub(super) measured: Estimate,
    pub(super) healthy: Spread,
    sound: f64,
    pub(super) effect: Option<&'static Effect>,
}

impl Judged {
    pub(super) fn of(
        scene: &Scene,
        measured: Estimate,
        healthy: Spread,
        row: &'static FaultRow,
        feature: Feature,
    ) -> Self {
        let sound = about(healthy, measured.standard_uncertainty).density(measured.value);
        Self {
            measured,
            healthy,
            sound,
            effect: scene.effect(row, feature),
        }
    }

    pub(super) fn density(&self, scene: &Scene, severity: usize, rest_k: f64) -> f64 {
        let Some(effect) = self.effect else {
            return self.sound;
        };
        let moved = scene.moved(
            effect,
            (severity, rest_k),
            self.healthy,
            self.measured.standard_uncertainty,
        );
        mixed(effect, severity, self.sound, moved.density(self.measured.value))
    }
}

/// A figure that moved, or did not.
pub(super) fn mixed(effect: &Effect, severity: usize, sound: f64, moved: f64) -> f64 {
    let unmoved = effect.no_change * UNMOVED[severity];
    unmoved * sound + (1.0 - unmoved) * moved
}
