//! What a figure that is still to be read would show.

use super::super::chart::{mixed, unmoved};
use super::super::coordinates::running_place;
use super::super::density::TwoPiece;
use super::super::fault_table::FAULTS;
use super::super::faults::FaultRow;
use super::super::features::place;
use super::super::scene::{Scene, about, anything};
use super::{NEGLIGIBLE, Posterior, trust};
use crate::expected::Spread;
use crate::names::{Fault, Feature};

impl Posterior {
    /// Probability that `feature` would read below each of two limits under each of some hypotheses, given what was read.
    pub(in crate::diagnosis) fn below<const N: usize>(
        &self,
        scene: &Scene,
        feature: Feature,
        (limits, uncertainty): ([f64; 2], f64),
        of: &[usize; N],
    ) -> [[f64; 2]; N] {
        let Some(healthy) = scene.healthy[place(feature)] else {
            return [[0.0; 2]; N];
        };
        let sound = about(healthy, uncertainty);
        let sound = limits.map(|x| sound.below(x));
        of.map(|hypothesis| match FAULTS.get(hypothesis) {
            None => limits.map(|x| anything(place(feature), healthy).below(x)),
            // Nobody knows what it reads like.
            Some(row) if !scene.by_tables && trust(scene, row.fault) == 0.0 && row.fault != Fault::GaugeError => {
                limits.map(|x| anything(place(feature), healthy).below(x))
            }
            Some(row) if row.fault == Fault::GaugeError || self.probability[hypothesis] < NEGLIGIBLE => sound,
            Some(row) => {
                let from = scene.origin_k(feature);
                let by_cloud = self.below_by_cloud(row.fault, feature, limits.map(|x| x - from), uncertainty);
                let by_chart = self.below_by_chart(scene, row, (feature, healthy), (limits, uncertainty), sound);
                let share = self.by_cloud[hypothesis];
                core::array::from_fn(|limit| share * by_cloud[limit] + (1.0 - share) * by_chart[limit])
            }
        })
    }

    /// The same by the tables alone, under a fault that is not ruled out.
    fn below_by_chart(
        &self,
        scene: &Scene,
        row: &'static FaultRow,
        (feature, healthy): (Feature, Spread),
        (limits, uncertainty): ([f64; 2], f64),
        sound: [f64; 2],
    ) -> [f64; 2] {
        let patterns = || self.patterns.iter().filter(|pattern| pattern.fault == row.fault);
        let all: f64 = patterns().map(|pattern| pattern.weight).sum();
        if all <= 0.0 {
            return [0.0; 2];
        }
        let Some(effect) = scene.effect(row, feature) else {
            return sound;
        };
        let mut below = [0.0; 2];
        for pattern in patterns() {
            let share = pattern.weight / all;
            // A pattern that the readings rule out predicts nothing.
            let mut chance = sound;
            if share >= NEGLIGIBLE {
                let moved = scene
                    .motion(effect, (pattern.severity, pattern.rest_k))
                    .of(TwoPiece::of(healthy))
                    .as_read(uncertainty);
                chance = core::array::from_fn(|at| {
                    mixed(unmoved(effect, pattern.severity), sound[at], moved.below(limits[at]))
                });
            }
            for (below, chance) in below.iter_mut().zip(chance) {
                *below += share * chance;
            }
        }
        below
    }

    /// The same by the clouds alone, the limits counted from their origin.
    fn below_by_cloud(&self, fault: Fault, feature: Feature, limits: [f64; 2], uncertainty: f64) -> [f64; 2] {
        let (mut below, mut all) = ([0.0; 2], 0.0);
        if let Some(at) = running_place(feature) {
            for prediction in self.predictions.iter().filter(|prediction| prediction.fault == fault) {
                let share = f64::from(prediction.share);
                for (below, x) in below.iter_mut().zip(limits) {
                    *below += share * prediction.below(at, x, uncertainty);
                }
                all += share;
            }
        }
        if all > 0.0 {
            below.map(|below| below / all)
        } else {
            below
        }
    }
}
