//! Instruments that mislead: in which ways, how common each is, and what the readings say of it.

use super::Posterior;
use crate::diagnosis::batch::Seen;
use crate::diagnosis::case::Case;
use crate::diagnosis::faults::{NONE, index};
use crate::diagnosis::features::{self, FIGURE_OF, place as figure_place};
use crate::diagnosis::likelihood::Grounds;
use crate::diagnosis::{rest, strays};
use crate::names::{Fault, Feature, MixUp};

/// Part of the vehicles behind an entry error that are sound; the others show anything at all. Source: engineering judgement.
const SOUND: f64 = 0.6;

/// The place of a mix-up in arrays over the vocabulary; codes count from one.
pub(super) const fn place(mix_up: MixUp) -> usize {
    mix_up.code() as usize - 1
}

/// The share of a mix-up in all of them; those that can have happened together sum to one. Source: engineering judgement.
pub(super) const fn chance(mix_up: MixUp) -> f64 {
    match mix_up {
        MixUp::AbsoluteTypedAsGauge | MixUp::GaugeTypedAsAbsolute => 0.2,
        MixUp::SwappedHoses => 0.1,
        MixUp::LowGaugeOff => 0.09,
        MixUp::ZeroedAtSeaLevel | MixUp::VentProbeAside => 0.08,
        MixUp::HighGaugeOff => 0.07,
        MixUp::KpaTypedAsPsi | MixUp::PsiTypedAsKpa | MixUp::SuctionProbeLoose | MixUp::DischargeProbeLoose => 0.06,
        MixUp::BothGaugesOff | MixUp::LiquidProbeLoose => 0.04,
        MixUp::LowHoseShut | MixUp::HighHoseShut => 0.03,
    }
}

impl Posterior {
    /// Misleading instruments: a sound system, or anything at all, with the features that each entry error would have hidden.
    #[inline(never)]
    pub(super) fn gauge_error(&mut self, case: &Case, grounds: &Grounds<'_>) {
        if self.priors[index(Fault::GaugeError)] <= 0.0 {
            return;
        }
        for mix_up in MixUp::ALL {
            let Ok(Some(features)) = features::running(case, grounds.sound, Some(mix_up)) else {
                continue;
            };
            let Some((features, beside)) = strays::beyond_a_shut_hose(case, grounds.sound, mix_up, features) else {
                continue;
            };
            for (reading, figure) in features.read.iter().zip(FIGURE_OF) {
                self.known[figure_place(figure)] |= reading.is_some();
            }
            self.meant.push((mix_up, chance(mix_up) * beside, features));
        }
        let mut densities = [0.0; 2 * MixUp::ALL.len()];
        grounds.of_unmoved(&self.seen_as_meant(), |batch| batch.add_to(&mut densities));
        let mut all = 0.0;
        for ((mix_up, chance, _), densities) in self.meant.iter().zip(densities.chunks_exact(2)) {
            let likelihood = chance * behind(densities[0], densities[1]);
            self.mix_ups[place(*mix_up)] = likelihood;
            all += likelihood;
        }
        self.share(all);
    }

    /// The readings as each entry error would have hidden them; an entry error leaves none out.
    pub(super) fn seen_as_meant(&self) -> [Option<Seen>; MixUp::ALL.len()] {
        core::array::from_fn(|at| self.meant.get(at).map(|(_, _, features)| Seen::of(features)))
    }

    /// The same of a system at rest, any of the other faults behind it.
    pub(super) fn gauge_error_at_rest(&mut self, case: &Case) {
        let mut all = 0.0;
        for mix_up in MixUp::ALL {
            let Some((measured, _, beside)) = features::resting(case, Some(mix_up)) else {
                continue;
            };
            self.known[figure_place(Feature::RestPressure)] = true;
            let densities = rest::densities(measured);
            let others: f64 = self
                .others()
                .map(|(row, prior)| prior * densities[index(row.fault)])
                .sum();
            self.mix_ups[place(mix_up)] = chance(mix_up) * beside * others;
            all += self.mix_ups[place(mix_up)];
        }
        self.share(all);
    }

    /// The likelihood of misleading instruments, and the share of each entry error in it.
    fn share(&mut self, all: f64) {
        self.likelihood[index(Fault::GaugeError)] = if all > 0.0 {
            self.mix_ups = self.mix_ups.map(|share| share / all);
            all
        } else {
            // No entry error is possible: a gauge that errs in another way says no more than an unknown cause.
            self.likelihood[NONE]
        };
    }
}

/// Density of what was meant, by those of a sound system and of anything at all.
pub(super) fn behind(sound: f64, any: f64) -> f64 {
    SOUND * sound + (1.0 - SOUND) * any
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shares_are_all_there_is() {
        // A pressure is noted as gauge or as absolute, and only one of the two can be wrong of it.
        let possible = MixUp::ALL
            .into_iter()
            .filter(|mix_up| *mix_up != MixUp::GaugeTypedAsAbsolute);
        let sum: f64 = possible.map(chance).sum();
        assert!((sum - 1.0).abs() < 1e-12, "{sum}");
        for (at, mix_up) in MixUp::ALL.into_iter().enumerate() {
            assert_eq!(place(mix_up), at);
        }
    }
}
