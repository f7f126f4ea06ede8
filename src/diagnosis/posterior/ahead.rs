//! What a figure that is still to be read would show.

use super::super::chart::mixed;
use super::super::coordinates::running_place;
use super::super::fault_table::FAULTS;
use super::super::faults::FaultRow;
use super::super::features::place;
use super::super::scene::{Scene, about, anything};
use super::{NEGLIGIBLE, Posterior};
use crate::expected::Spread;
use crate::names::{Fault, Feature};

impl Posterior {
    /// Probability that `feature` would read below `x` under each of some hypotheses, given what was read.
    pub(in crate::diagnosis) fn below<const N: usize>(
        &self,
        scene: &Scene,
        feature: Feature,
        (x, uncertainty): (f64, f64),
        of: &[usize; N],
    ) -> [f64; N] {
        let Some(healthy) = scene.healthy[place(feature)] else {
            return [0.0; N];
        };
        let sound = about(healthy, uncertainty).below(x);
        of.map(|hypothesis| match FAULTS.get(hypothesis) {
            None => anything(place(feature), healthy).below(x),
            Some(row) if row.fault == Fault::GaugeError || self.probability[hypothesis] < NEGLIGIBLE => sound,
            Some(row) => {
                let by_cloud = self.below_by_cloud(row.fault, feature, x - scene.origin_k(feature), uncertainty);
                let by_chart = self.below_by_chart(scene, row, (feature, healthy), (x, uncertainty), sound);
                self.by_cloud[hypothesis] * by_cloud + (1.0 - self.by_cloud[hypothesis]) * by_chart
            }
        })
    }

    /// The same by the tables alone, under a fault that is not ruled out.
    fn below_by_chart(
        &self,
        scene: &Scene,
        row: &'static FaultRow,
        (feature, healthy): (Feature, Spread),
        (x, uncertainty): (f64, f64),
        sound: f64,
    ) -> f64 {
        let patterns = || self.patterns.iter().filter(|pattern| pattern.fault == row.fault);
        let all: f64 = patterns().map(|pattern| pattern.weight).sum();
        if all <= 0.0 {
            return 0.0;
        }
        let effect = scene.effect(row, feature);
        let mut below = 0.0;
        for pattern in patterns() {
            let share = pattern.weight / all;
            let chance = match effect {
                Some(effect) if share >= NEGLIGIBLE => {
                    let moved = scene.moved(effect, (pattern.severity, pattern.rest_k), healthy, uncertainty);
                    mixed(effect, pattern.severity, sound, moved.below(x))
                }
                // A pattern that the readings rule out predicts nothing.
                Some(_) | None => sound,
            };
            below += share * chance;
        }
        below
    }

    /// The same by the clouds alone, `x` counted from their origin.
    fn below_by_cloud(&self, fault: Fault, feature: Feature, x: f64, uncertainty: f64) -> f64 {
        let (mut below, mut all) = (0.0, 0.0);
        if let Some(at) = running_place(feature) {
            for prediction in self.predictions.iter().filter(|prediction| prediction.fault == fault) {
                below += f64::from(prediction.share) * prediction.below(at, x, uncertainty);
                all += f64::from(prediction.share);
            }
        }
        if all > 0.0 { below / all } else { 0.0 }
    }
}
