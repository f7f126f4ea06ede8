//! Likelihoods by the tables of the trade: every fault moves the figures by sizes that one severity sets.
//!
//! The likelihood of the readings under a fault is the mean over its severities of the product over the figures. A figure
//! may also stay where it was although the fault is there: that is probability, not evidence against.

use super::faults::{Effect, FaultRow, SEVERITIES, index};
use super::features::{FEATURES, Features, place};
use super::list::List;
use super::scene::{Scene, about, narrowest};
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

/// The temperature at rest where a fault does not draw towards it.
const ONE_STEP: [(f64, f64); 1] = [(0.0, 1.0)];

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
    /// Whether it is that of the readings as they stand.
    as_read: bool,
    /// The densities of all figures after it are together no larger than this.
    rest: f64,
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
                ..Seen::BLANK
            });
        }
    }
    let mut rest = 1.0;
    for figure in all.items_mut().iter_mut().rev() {
        figure.rest = rest;
        rest *= narrowest(figure.healthy, figure.measured.standard_uncertainty).peak();
    }
    all
}

/// What is followed no further: it would change no answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Negligible {
    /// Two pressures less likely than this.
    pub(super) pressures: f64,
    /// Figures less likely than this, whatever is still to come.
    pub(super) all: f64,
}

impl Negligible {
    /// Everything counts.
    pub(super) const NOTHING: Self = Self {
        pressures: 0.0,
        all: 0.0,
    };

    fn has(self, product: f64, figure: &Seen) -> bool {
        (product < self.pressures && figure.feature <= place(Feature::HighSide)) || product * figure.rest < self.all
    }
}

/// What moves the figures under each fault.
type Effects = [[Option<&'static Effect>; FEATURES]; Fault::ALL.len()];

/// The tables beside the readings of one vehicle.
pub(super) struct Chart<'a> {
    scene: &'a Scene,
    effects: Effects,
    pub(super) patterns: List<Pattern, PATTERNS>,
    /// Chance of each pattern, and the density of each figure under it.
    densities: List<(f64, [f64; FEATURES]), PATTERNS>,
    figures: Features,
}

impl<'a> Chart<'a> {
    /// The tables beside these figures, under some faults.
    pub(super) fn of(scene: &'a Scene, figures: &Features, faults: impl Iterator<Item = &'static FaultRow>) -> Self {
        let mut chart = Self {
            scene,
            effects: [[None; FEATURES]; Fault::ALL.len()],
            patterns: List::new(Pattern::BLANK),
            densities: List::new((0.0, [1.0; FEATURES])),
            figures: *figures,
        };
        let seen = seen(scene, figures);
        for row in faults {
            let effects = &mut chart.effects[index(row.fault)];
            *effects = moving(scene, row);
            for (pattern, chance) in patterns(row) {
                let mut densities = [1.0; FEATURES];
                let mut weight = chance;
                for figure in &seen {
                    let density = density(scene, figure, effects[figure.feature], &pattern);
                    densities[figure.feature] = density;
                    weight *= density;
                }
                chart.patterns.push(Pattern { weight, ..pattern });
                chart.densities.push((chance, densities));
            }
        }
        chart
    }

    /// Likelihood of the figures as they stand under every fault.
    pub(super) fn likelihoods(&self) -> [f64; Fault::ALL.len()] {
        let mut sums = [0.0; Fault::ALL.len()];
        for pattern in &self.patterns {
            sums[index(pattern.fault)] += pattern.weight;
        }
        sums
    }

    /// Those of other figures; where these are the same, what is known of them is not worked out again.
    pub(super) fn likelihoods_of(&self, seen: &AllSeen, negligible: Negligible) -> [f64; Fault::ALL.len()] {
        let mut sums = [0.0; Fault::ALL.len()];
        for (pattern, (chance, known)) in self.patterns.iter().zip(&self.densities) {
            let effects = &self.effects[index(pattern.fault)];
            let mut product = *chance;
            for figure in seen {
                product *= if figure.as_read {
                    known[figure.feature]
                } else {
                    density(self.scene, figure, effects[figure.feature], pattern)
                };
                if negligible.has(product, figure) {
                    product = 0.0;
                    break;
                }
            }
            sums[index(pattern.fault)] += product;
        }
        sums
    }

    /// Other figures that were read and can be judged.
    pub(super) fn seen(&self, figures: &Features) -> AllSeen {
        let mut all = seen(self.scene, figures);
        for figure in all.items_mut() {
            figure.as_read = self.figures.measured[figure.feature] == Some(figure.measured);
        }
        all
    }
}

/// Likelihood of the first k figures under a fault, its severities weighed.
pub(super) fn steps(
    scene: &Scene,
    seen: &AllSeen,
    row: &'static FaultRow,
    negligible: Negligible,
) -> [f64; FEATURES + 1] {
    let effects = moving(scene, row);
    let mut sums = [0.0; FEATURES];
    let mut all = 0.0;
    for (pattern, chance) in patterns(row) {
        let mut product = chance;
        all += product;
        for (figure, sum) in seen.iter().zip(&mut sums) {
            product *= density(scene, figure, effects[figure.feature], &pattern);
            *sum += product;
            if negligible.has(product, figure) {
                break;
            }
        }
    }
    let mut cumulative = [all; FEATURES + 1];
    for (figure, sum) in seen.iter().zip(sums) {
        cumulative[figure.feature + 1..].fill(sum);
    }
    cumulative
}

/// What moves each figure under a fault here.
fn moving(scene: &Scene, row: &'static FaultRow) -> [Option<&'static Effect>; FEATURES] {
    let mut effects = [None; FEATURES];
    for effect in row.effects.iter().filter(|effect| effect.systems & scene.bit != 0) {
        effects[place(effect.feature)] = Some(effect);
    }
    effects
}

/// The patterns of a fault, each with its chance.
fn patterns(row: &'static FaultRow) -> impl Iterator<Item = (Pattern, f64)> {
    let steps = if row.rest_spread_k > 0.0 {
        &REST_STEPS[..]
    } else {
        &ONE_STEP
    };
    (0..SEVERITIES).flat_map(move |severity| {
        let of_severity = move |(step, chance): &(f64, f64)| {
            let pattern = Pattern {
                fault: row.fault,
                severity,
                rest_k: step * row.rest_spread_k,
                weight: 0.0,
            };
            (pattern, row.weight[severity] * chance)
        };
        steps.iter().map(of_severity).filter(|(_, chance)| *chance > 0.0)
    })
}

/// Density of a figure under a pattern.
#[inline]
fn density(scene: &Scene, figure: &Seen, effect: Option<&Effect>, pattern: &Pattern) -> f64 {
    let Some(effect) = effect else {
        return figure.sound;
    };
    let uncertainty = figure.measured.standard_uncertainty;
    let moved = scene.moved(effect, (pattern.severity, pattern.rest_k), figure.healthy, uncertainty);
    mixed(
        effect,
        pattern.severity,
        figure.sound,
        moved.density(figure.measured.value),
    )
}

impl Pattern {
    pub(super) const BLANK: Self = Self {
        fault: Fault::NoFault,
        severity: 0,
        rest_k: 0.0,
        weight: 0.0,
    };
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
        as_read: false,
        rest: 1.0,
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
