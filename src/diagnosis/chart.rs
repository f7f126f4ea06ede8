//! Likelihoods by the tables of the trade: every fault moves the figures by sizes that one severity sets.
//!
//! The likelihood of the readings under a fault is the mean over its severities of the product over the figures. A figure
//! may also stay where it was although the fault is there: that is probability, not evidence against.
//!
//! Of a system that no table speaks of there are no patterns, and every fault says what an unknown cause does.

use super::density::TwoPiece;
use super::faults::{Effect, FaultRow, SEVERITIES, index};
use super::features::{FEATURES, Features, place};
use super::list::List;
use super::scene::{Scene, about, anything};
#[cfg(test)]
use super::tally::{self, Work};
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

/// A number for each pattern.
type Row = [f64; PATTERNS];

/// A figure under the patterns that move it.
#[derive(Clone, Copy)]
struct Column {
    /// Places of these patterns.
    places: List<u8, PATTERNS>,
    /// Where the median then is, the variances of the two sides that are then left, and the chance of no move.
    median: Row,
    down: Row,
    up: Row,
    unmoved: Row,
    /// Density of the figure as it was read, under every pattern.
    as_read: Row,
    /// The same of the figure that was asked for last.
    lately: Option<(Estimate, Row)>,
}

impl Column {
    const NOTHING: Self = Self {
        places: List::new(0),
        median: [0.0; PATTERNS],
        down: [0.0; PATTERNS],
        up: [0.0; PATTERNS],
        unmoved: [0.0; PATTERNS],
        as_read: [0.0; PATTERNS],
        lately: None,
    };

    /// Density of a figure under every pattern.
    fn densities(&self, healthy: Spread, measured: Estimate) -> Row {
        let count = self.places.len().min(PATTERNS);
        let uncertainty = measured.standard_uncertainty;
        let sound = about(healthy, uncertainty).density(measured.value);
        let mut moved = [0.0; PATTERNS];
        let there = self.median[..count]
            .iter()
            .zip(&self.down[..count])
            .zip(&self.up[..count]);
        for ((moved, unmoved), ((median, down), up)) in moved[..count].iter_mut().zip(&self.unmoved[..count]).zip(there)
        {
            let there = TwoPiece {
                median: *median,
                down: *down,
                up: *up,
            };
            *moved = mixed(*unmoved, sound, there.as_read(uncertainty).density(measured.value));
        }
        let mut densities = [sound; PATTERNS];
        for (place, moved) in self.places.iter().zip(&moved) {
            densities[usize::from(*place) % PATTERNS] = *moved;
        }
        densities
    }
}

/// The tables beside the readings of one vehicle.
pub(super) struct Chart<'a> {
    scene: &'a Scene,
    figures: Features,
    pub(super) patterns: List<Pattern, PATTERNS>,
    /// The chance of each pattern.
    chances: Row,
    columns: [Column; FEATURES],
}

impl<'a> Chart<'a> {
    /// The tables beside these figures, under no fault.
    #[inline(always)] // it is large
    pub(super) const fn beside(scene: &'a Scene, figures: &Features) -> Self {
        Self {
            scene,
            figures: *figures,
            patterns: List::new(Pattern::BLANK),
            chances: [0.0; PATTERNS],
            columns: [Column::NOTHING; FEATURES],
        }
    }

    /// Takes in the faults that are there.
    pub(super) fn take(&mut self, faults: impl Iterator<Item = &'static FaultRow>) {
        let scene = self.scene;
        for row in faults.filter(|_| scene.by_tables) {
            let effects = moving(scene, row);
            for (pattern, chance) in patterns(row) {
                let place = self.patterns.len() % PATTERNS;
                self.chances[place] = chance;
                self.patterns.push(pattern);
                for ((column, effect), healthy) in self.columns.iter_mut().zip(effects).zip(scene.healthy) {
                    if let (Some(effect), Some(healthy)) = (effect, healthy) {
                        let n = column.places.len() % PATTERNS;
                        let at = (pattern.severity, pattern.rest_k);
                        let moved = scene.motion(effect, at).of(TwoPiece::of(healthy));
                        (column.median[n], column.down[n], column.up[n]) = (moved.median, moved.down, moved.up);
                        column.unmoved[n] = unmoved(effect, pattern.severity);
                        column.places.push(place as u8);
                    }
                }
            }
        }
        for (feature, column) in self.columns.iter_mut().enumerate() {
            if let (Some(measured), Some(healthy)) = (self.figures.measured[feature], scene.healthy[feature]) {
                column.as_read = column.densities(healthy, measured);
            }
        }
        let figures = self.figures;
        let weights = self.weights(&figures, 0.0);
        for (pattern, weight) in self.patterns.items_mut().iter_mut().zip(&weights) {
            pattern.weight = *weight;
        }
    }

    /// The chance of each pattern times the density of all figures under it; where the pressures are less likely than `least`
    /// it is left at none. What of the figures is as it was read is not worked out again.
    fn weights(&mut self, figures: &Features, least: f64) -> Row {
        self.weights_by_figure(figures, least, |_, _, _| ())
    }

    /// The same; `after` is shown the patterns and their weights once a figure, by its place, is taken in.
    fn weights_by_figure(
        &mut self,
        figures: &Features,
        least: f64,
        mut after: impl FnMut(usize, &[Pattern], &[f64]),
    ) -> Row {
        #[cfg(test)]
        tally::one_more(Work::Figures);
        let count = self.patterns.len().min(PATTERNS);
        let mut weights = self.chances;
        for (feature, column) in self.columns.iter_mut().enumerate() {
            let (Some(measured), Some(healthy)) = (figures.measured[feature], self.scene.healthy[feature]) else {
                continue;
            };
            let densities = if self.figures.measured[feature] == Some(measured) {
                &column.as_read
            } else {
                if column.lately.is_none_or(|(lately, _)| lately != measured) {
                    column.lately = Some((measured, column.densities(healthy, measured)));
                }
                column
                    .lately
                    .as_ref()
                    .map_or(&column.as_read, |(_, densities)| densities)
            };
            for (weight, density) in weights[..count].iter_mut().zip(&densities[..count]) {
                *weight *= density;
            }
            if feature <= place(Feature::HighSide) {
                for weight in &mut weights[..count] {
                    *weight = if *weight < least { 0.0 } else { *weight };
                }
            }
            after(feature, &self.patterns, &weights[..count]);
            if weights[..count].iter().all(|weight| *weight <= 0.0) {
                break;
            }
        }
        weights
    }

    /// Likelihood under every fault of figures, where the pressures are no less likely than `least`.
    pub(super) fn likelihoods(&mut self, figures: &Features, least: f64) -> [f64; Fault::ALL.len()] {
        if !self.scene.by_tables {
            return [none(self.scene, figures)[FEATURES]; Fault::ALL.len()];
        }
        let weights = self.weights(figures, least);
        by_fault(&self.patterns, &weights)
    }

    /// Likelihood under every fault of the first k figures, in the same way.
    pub(super) fn steps(&mut self, figures: &Features, least: f64) -> [[f64; FEATURES + 1]; Fault::ALL.len()] {
        if !self.scene.by_tables {
            return [none(self.scene, figures); Fault::ALL.len()];
        }
        let mut known = [None; FEATURES];
        let first = by_fault(&self.patterns, &self.chances);
        self.weights_by_figure(figures, least, |feature, patterns, weights| {
            known[feature] = Some(by_fault(patterns, weights));
        });
        let (mut now, mut steps) = (first, [[0.0; FEATURES + 1]; Fault::ALL.len()]);
        for k in 0..=FEATURES {
            if let Some(known) = k.checked_sub(1).and_then(|feature| known[feature]) {
                now = known;
            }
            for (steps, likelihood) in steps.iter_mut().zip(&now) {
                steps[k] = *likelihood;
            }
        }
        steps
    }
}

/// The sums of the weights of the patterns of every fault.
fn by_fault(patterns: &[Pattern], weights: &[f64]) -> [f64; Fault::ALL.len()] {
    let mut sums = [0.0; Fault::ALL.len()];
    for (pattern, weight) in patterns.iter().zip(weights) {
        sums[index(pattern.fault)] += weight;
    }
    sums
}

/// Likelihood of the first k figures under no fault of the list: every figure strays as far as it can.
pub(super) fn none(scene: &Scene, figures: &Features) -> [f64; FEATURES + 1] {
    let mut none = [1.0; FEATURES + 1];
    for i in 0..FEATURES {
        let density = match (figures.measured[i], scene.healthy[i]) {
            (Some(measured), Some(healthy)) => anything(i, healthy).density(measured.value),
            (_, None) | (None, _) => 1.0,
        };
        none[i + 1] = none[i] * density;
    }
    none
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

impl Pattern {
    pub(super) const BLANK: Self = Self {
        fault: Fault::NoFault,
        severity: 0,
        rest_k: 0.0,
        weight: 0.0,
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
        let moved = scene
            .motion(effect, (severity, rest_k))
            .of(TwoPiece::of(self.healthy))
            .as_read(self.measured.standard_uncertainty);
        mixed(
            unmoved(effect, severity),
            self.sound,
            moved.density(self.measured.value),
        )
    }
}

/// The chance that a figure does not move.
pub(super) const fn unmoved(effect: &Effect, severity: usize) -> f64 {
    effect.no_change * UNMOVED[severity]
}

/// A figure that moved, or did not.
pub(super) fn mixed(unmoved: f64, sound: f64, moved: f64) -> f64 {
    unmoved * sound + (1.0 - unmoved) * moved
}
