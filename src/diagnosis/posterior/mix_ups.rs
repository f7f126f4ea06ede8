//! Instruments that mislead: in which ways, how common each is, and what the readings say of it.

use super::{NONE, Posterior, trust};
use crate::diagnosis::chart::Chart;
use crate::diagnosis::cloud::{InCloud, UNKNOWN};
use crate::diagnosis::faults::index;
use crate::diagnosis::features::Features;
use crate::diagnosis::scene::Scene;
use crate::names::{Fault, MixUp};

/// Readings that the faults explain this many times as well as an unknown cause does raise no suspicion that an instrument
/// strays: among those of good instruments three in four, among those of gauges and probes that were then blamed one in ten.
const EXPLAINED: f64 = 30.0;

/// The place of a mix-up in arrays over the vocabulary; codes count from one.
pub(super) const fn place(mix_up: MixUp) -> usize {
    mix_up.code() as usize - 1
}

/// Whether a reading strays by nobody knows how much; the others change what was read by what is known.
pub(super) const fn strays(mix_up: MixUp) -> bool {
    match mix_up {
        MixUp::LowGaugeOff
        | MixUp::HighGaugeOff
        | MixUp::BothGaugesOff
        | MixUp::VentProbeAside
        | MixUp::SuctionProbeLoose
        | MixUp::LiquidProbeLoose
        | MixUp::DischargeProbeLoose => true,
        MixUp::SwappedHoses
        | MixUp::KpaTypedAsPsi
        | MixUp::PsiTypedAsKpa
        | MixUp::AbsoluteTypedAsGauge
        | MixUp::GaugeTypedAsAbsolute
        | MixUp::ZeroedAtSeaLevel => false,
    }
}

/// The share of a mix-up in all of them; those that can have happened together sum to one. Source: engineering judgement.
pub(super) const fn chance(mix_up: MixUp) -> f64 {
    match mix_up {
        MixUp::AbsoluteTypedAsGauge | MixUp::GaugeTypedAsAbsolute => 0.22,
        MixUp::SwappedHoses | MixUp::ZeroedAtSeaLevel | MixUp::LowGaugeOff => 0.1,
        MixUp::HighGaugeOff | MixUp::VentProbeAside => 0.08,
        MixUp::KpaTypedAsPsi | MixUp::PsiTypedAsKpa | MixUp::SuctionProbeLoose | MixUp::DischargeProbeLoose => 0.06,
        MixUp::BothGaugesOff | MixUp::LiquidProbeLoose => 0.04,
    }
}

/// Readings that are doubted: what they would be under each mix-up, and where they are judged.
pub(super) struct Doubted<'a, 'of> {
    pub(super) scene: &'a Scene,
    pub(super) mixed_up: &'a dyn Fn(MixUp) -> Option<Features>,
    pub(super) in_cloud: Option<&'a mut InCloud<'of>>,
    pub(super) chart: &'a mut Chart<'of>,
    /// Two pressures less likely than this are followed no further.
    pub(super) least: f64,
}

impl Posterior {
    /// Whether no fault explains the figures as they stand much better than an unknown cause does.
    pub(super) fn unexplained(&self) -> bool {
        let explained: f64 = self
            .others()
            .map(|(row, prior)| prior * self.likelihood[index(row.fault)])
            .sum();
        explained < EXPLAINED * self.likelihood[NONE]
    }

    /// Misleading instruments: any of the other faults, or none, with the figures that some of the mix-ups would have hidden,
    /// where they can have happened.
    pub(super) fn gauge_error(&mut self, doubted: &mut Doubted<'_, '_>, some: impl Fn(MixUp) -> bool) {
        let scene = doubted.scene;
        for mix_up in MixUp::ALL.into_iter().filter(|mix_up| some(*mix_up)) {
            let Some(figures) = (doubted.mixed_up)(mix_up) else {
                continue;
            };
            let weight = chance(mix_up) * figures.beside;
            self.mixed_up.push((mix_up, figures));
            for (known, figure) in self.measured.iter_mut().zip(figures.measured) {
                *known |= figure.is_some();
            }
            let in_cloud = doubted.in_cloud.as_deref_mut();
            let by_cloud = in_cloud.map_or(UNKNOWN, |in_cloud| in_cloud.likelihoods(&figures));
            let by_chart = doubted.chart.likelihoods(&figures, doubted.least);
            let mut likelihood = 0.0;
            for (row, prior) in self.others() {
                let (share, fault) = (trust(scene, row.fault), index(row.fault));
                likelihood += prior * (share * by_cloud[fault] + (1.0 - share) * by_chart[fault]);
            }
            self.mix_ups[place(mix_up)] = weight * likelihood;
        }
    }

    /// The likelihood of misleading instruments, and the share of each mix-up in it.
    pub(super) fn share_gauge_error(&mut self) {
        let all: f64 = self.mix_ups.iter().sum();
        self.likelihood[index(Fault::GaugeError)] = if all > 0.0 {
            self.mix_ups = self.mix_ups.map(|share| share / all);
            all
        } else {
            // No mix-up is possible: a gauge that errs in another way says no more than an unknown cause.
            self.likelihood[NONE]
        };
    }
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
