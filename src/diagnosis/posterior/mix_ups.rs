//! Instruments that mislead: in which ways, how common each is, and what the readings say of it.

use super::Weighed;
use crate::circuit::FeatureVector;
use crate::diagnosis::batch::{Seen, values};
use crate::diagnosis::case::Case;
use crate::diagnosis::fault_table::FAULTS;
use crate::diagnosis::faults::{NONE, Priors, index};
use crate::diagnosis::features::{self, place as figure_place};
use crate::diagnosis::likelihood::Grounds;
use crate::diagnosis::list::List;
use crate::diagnosis::{rest, strays};
use crate::names::{Fault, Feature, MixUp};
use crate::numerics::multivariate_t::DIMENSIONS;

/// Part of the vehicles behind an entry error that are sound; the others show anything at all. Source: engineering judgement.
const SOUND: f64 = 0.6;

/// The place of a mix-up in arrays over the vocabulary; codes count from one.
const fn place(mix_up: MixUp) -> usize {
    mix_up.code() as usize - 1
}

/// The share of a mix-up in all of them; those that can have happened together sum to one. Source: engineering judgement.
const fn chance(mix_up: MixUp) -> f64 {
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

impl Weighed {
    /// Likelihood of the first k figures under misleading instruments: a sound system, or anything at all, with the features that each
    /// entry error would have hidden. The entry errors get their parts of that of all figures.
    #[inline(never)]
    pub(super) fn misled(&mut self, case: &Case, grounds: &Grounds<'_>) -> [f64; FeatureVector::COUNT + 1] {
        let nothing = (MixUp::SwappedHoses, [0.0; DIMENSIONS], [0.0; DIMENSIONS]);
        let mut meant: List<_, { MixUp::ALL.len() }> = List::new(nothing);
        // What the gauge of a shut hose shows, from the figure on that it shows it for.
        let mut besides: List<f64, { MixUp::ALL.len() }> = List::new(1.0);
        let mut seen: Option<Seen> = None;
        for mix_up in MixUp::ALL {
            let Ok(Some(features)) = features::running(case, grounds.sound, Some(mix_up)) else {
                continue;
            };
            let Some((features, beside)) = strays::beyond_a_shut_hose(case, grounds.sound, mix_up, features) else {
                continue;
            };
            self.know(&features);
            // An entry error leaves none of the readings out.
            let (value, noise) = values(&seen.get_or_insert_with(|| Seen::of(&features)).read, &features);
            meant.push((mix_up, value, noise));
            besides.push(beside);
        }
        let mut likelihood = [0.0; FeatureVector::COUNT + 1];
        let Some(seen) = seen else { return likelihood };
        let mut densities = [[0.0; 2 * MixUp::ALL.len()]; FeatureVector::COUNT + 1];
        grounds.of_unmoved(&seen, &meant, &mut |batch| batch.add_steps(&mut densities, |_, _| ()));
        for (count, (likelihood, densities)) in likelihood
            .iter_mut()
            .zip(&densities)
            .take(seen.read.count() + 1)
            .enumerate()
        {
            let known = seen.read.places().get(..count).unwrap_or_default();
            for (((mix_up, _, _), beside), densities) in meant.iter().zip(&*besides).zip(densities.chunks_exact(2)) {
                let is_shown = strays::shut_side(*mix_up).is_none_or(|place| known.contains(&place));
                let beside = if is_shown { *beside } else { 1.0 };
                let part = chance(*mix_up) * beside * behind(densities[0], densities[1]);
                *likelihood += part;
                // That of all figures comes last.
                self.mix_ups[place(*mix_up)] = part;
            }
        }
        likelihood
    }

    /// The same of a system at rest, any of the other faults behind it.
    pub(super) fn misled_at_rest(&mut self, case: &Case, priors: &Priors) -> f64 {
        let others = FAULTS.iter().filter(|row| row.fault != Fault::GaugeError);
        let common: f64 = others.clone().map(|row| priors[index(row.fault)]).sum();
        let mut all = 0.0;
        for mix_up in MixUp::ALL {
            let Some((measured, _, beside)) = features::resting(case, Some(mix_up)) else {
                continue;
            };
            self.known[figure_place(Feature::RestPressure)] = true;
            let densities = rest::densities(measured);
            let behind = others.clone().filter(|row| priors[index(row.fault)] > 0.0);
            let behind: f64 = behind
                .map(|row| priors[index(row.fault)] / common * densities[index(row.fault)])
                .sum();
            self.mix_ups[place(mix_up)] = chance(mix_up) * beside * behind;
            all += self.mix_ups[place(mix_up)];
        }
        all
    }

    /// The likelihood of misleading instruments once all is read, and the share of each entry error in it.
    pub(super) fn share(&mut self, all: f64) {
        let last = &mut self.likelihood[self.figures.len()];
        last[index(Fault::GaugeError)] = if all > 0.0 {
            self.mix_ups = self.mix_ups.map(|share| share / all);
            all
        } else {
            // No entry error is possible: a gauge that errs in another way says no more than an unknown cause.
            last[NONE]
        };
    }
}

/// Density of what was meant, by those of a sound system and of anything at all.
fn behind(sound: f64, any: f64) -> f64 {
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
