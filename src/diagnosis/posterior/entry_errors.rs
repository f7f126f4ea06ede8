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
use crate::names::{EntryError, Fault, Feature};
use crate::numerics::multivariate_t::DIMENSIONS;

/// Share of sound vehicles behind an entry error; the others show what an unlisted cause does. Source: engineering judgement.
const SOUND: f64 = 0.6;

/// The place of an entry error in arrays over the vocabulary; codes count from one.
const fn place(entry_error: EntryError) -> usize {
    entry_error.code() as usize - 1
}

/// The share of an entry error in all of them; those that can have happened together sum to one. Source: engineering judgement.
const fn chance(entry_error: EntryError) -> f64 {
    match entry_error {
        EntryError::AbsoluteTypedAsGauge | EntryError::GaugeTypedAsAbsolute => 0.2,
        EntryError::SwappedHoses => 0.1,
        EntryError::LowGaugeOff => 0.09,
        EntryError::ZeroedAtSeaLevel | EntryError::VentProbeAside => 0.08,
        EntryError::HighGaugeOff => 0.07,
        EntryError::KpaTypedAsPsi
        | EntryError::PsiTypedAsKpa
        | EntryError::SuctionProbeLoose
        | EntryError::DischargeProbeLoose => 0.06,
        EntryError::BothGaugesOff | EntryError::LiquidProbeLoose => 0.04,
        EntryError::LowHoseShut | EntryError::HighHoseShut => 0.03,
    }
}

impl Weighed {
    /// Likelihood of the first k figures under misleading instruments: a sound system or an unlisted cause, with the features
    /// corrected for each entry error. `entry_errors` gets the part of each in the likelihood of all figures.
    #[inline(never)]
    pub(super) fn misled(&mut self, case: &Case, grounds: &Grounds<'_>) -> [f64; FeatureVector::COUNT + 1] {
        let nothing = (EntryError::SwappedHoses, [0.0; DIMENSIONS], [0.0; DIMENSIONS]);
        let mut meant: List<_, { EntryError::ALL.len() }> = List::new(nothing);
        // Density of what the gauge of a shut hose shows; it counts once the figure of that gauge is among the first k.
        let mut besides: List<f64, { EntryError::ALL.len() }> = List::new(1.0);
        let mut seen: Option<Seen> = None;
        for entry_error in EntryError::ALL {
            let Ok(Some(features)) = features::running(case, grounds.sound, Some(entry_error)) else {
                continue;
            };
            let Some((features, beside)) = strays::beyond_a_shut_hose(case, grounds.sound, entry_error, features)
            else {
                continue;
            };
            self.know(&features);
            // An entry error leaves none of the readings out.
            let (value, noise) = values(&seen.get_or_insert_with(|| Seen::of(&features)).read, &features);
            meant.push((entry_error, value, noise));
            besides.push(beside);
        }
        let mut likelihood = [0.0; FeatureVector::COUNT + 1];
        let Some(seen) = seen else { return likelihood };
        let mut densities = [[0.0; 2 * EntryError::ALL.len()]; FeatureVector::COUNT + 1];
        grounds.of_unmoved(&seen, &meant, &mut |batch| batch.add_steps(&mut densities, |_, _| ()));
        for (count, (likelihood, densities)) in likelihood
            .iter_mut()
            .zip(&densities)
            .take(seen.read.count() + 1)
            .enumerate()
        {
            let known = seen.read.places().get(..count).unwrap_or_default();
            for (((entry_error, _, _), beside), densities) in meant.iter().zip(&*besides).zip(densities.chunks_exact(2))
            {
                let is_shown = strays::shut_side(*entry_error).is_none_or(|place| known.contains(&place));
                let beside = if is_shown { *beside } else { 1.0 };
                let part = chance(*entry_error) * beside * behind(densities[0], densities[1]);
                *likelihood += part;
                // That of all figures comes last.
                self.entry_errors[place(*entry_error)] = part;
            }
        }
        likelihood
    }

    /// The same of a system at rest, any of the other faults behind it.
    pub(super) fn misled_at_rest(&mut self, case: &Case, priors: &Priors) -> f64 {
        let others = FAULTS.iter().filter(|row| row.fault != Fault::GaugeError);
        let common: f64 = others.clone().map(|row| priors[index(row.fault)]).sum();
        let mut all = 0.0;
        for entry_error in EntryError::ALL {
            let Some((measured, _, beside)) = features::resting(case, Some(entry_error)) else {
                continue;
            };
            self.known[figure_place(Feature::RestPressure)] = true;
            let densities = rest::densities(measured);
            let behind = others.clone().filter(|row| priors[index(row.fault)] > 0.0);
            let behind: f64 = behind
                .map(|row| priors[index(row.fault)] / common * densities[index(row.fault)])
                .sum();
            self.entry_errors[place(entry_error)] = chance(entry_error) * beside * behind;
            all += self.entry_errors[place(entry_error)];
        }
        all
    }

    /// Sets the likelihood of misleading instruments for all figures, and the share of each entry error in it.
    pub(super) fn share(&mut self, all: f64) {
        let last = &mut self.likelihood[self.figures.len()];
        last[index(Fault::GaugeError)] = if all > 0.0 {
            self.entry_errors = self.entry_errors.map(|share| share / all);
            all
        } else {
            // No entry error is possible: a gauge that errs in another way says no more than an unknown cause.
            last[NONE]
        };
    }
}

/// Density of the corrected readings, by those under a sound system and under an unlisted cause.
fn behind(sound: f64, any: f64) -> f64 {
    SOUND * sound + (1.0 - SOUND) * any
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shares_sum_to_one() {
        // A pressure is noted either as gauge or as absolute, so that only one of the two errors is possible.
        let possible = EntryError::ALL
            .into_iter()
            .filter(|entry_error| *entry_error != EntryError::GaugeTypedAsAbsolute);
        let sum: f64 = possible.map(chance).sum();
        assert!((sum - 1.0).abs() < 1e-12, "{sum}");
        for (at, entry_error) in EntryError::ALL.into_iter().enumerate() {
            assert_eq!(place(entry_error), at);
        }
    }
}
