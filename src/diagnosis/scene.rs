//! What the planner and the verdict know of the system: what it has, and what a sound one shows.

use super::case::Case;
use super::faults::bit;
use super::features::FEATURES;
use crate::expected::{Band, SoundModel};
use crate::names::Feature;
use crate::saturation;
use crate::units::{Surroundings, in_kelvins};
use crate::vehicle::System;

/// A system in its conditions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scene {
    pub(super) system: System,
    pub(super) air: Surroundings,
    /// The bit of the system in the masks of the tables.
    pub(super) bit: u8,
    /// What a sound system shows; `None` at rest.
    pub(super) sound: Option<SoundModel>,
    /// Whether there may be a sight glass.
    pub(super) sight_glass: bool,
    /// Whether it is so warm that its pressure at rest tells nothing of air or of an empty circuit.
    pub(super) warm_for_rest: bool,
}

impl Scene {
    /// A scene without a sound model yet.
    pub(super) fn of(case: &Case) -> Self {
        Self {
            system: case.system,
            air: case.conditions.surroundings,
            bit: bit(&case.system),
            sound: None,
            sight_glass: case.system.may_have_sight_glass(),
            warm_for_rest: warm_for_rest(case),
        }
    }

    /// Where each figure of a sound system lies.
    pub(super) fn bands(&self) -> [Option<Band<f64>>; FEATURES] {
        Feature::ALL.map(|feature| self.sound.as_ref()?.band(feature))
    }

    /// Whether a figure means nothing in this system or state.
    pub(super) fn cannot_judge(&self, feature: Feature) -> bool {
        self.sound.as_ref().and_then(|sound| sound.view(feature)).is_none()
    }
}

/// From this far below the critical temperature on, a sound system at rest holds no liquid, and its pressure depends on charge
/// and volume, K. Source: engineering judgement.
const NO_LIQUID_K: f64 = 3.0;

/// Whether it is so warm that the pressure at rest of a sound system is not that of saturation.
pub(super) fn warm_for_rest(case: &Case) -> bool {
    let critical_k = saturation::line_of(case.system.refrigerant).critical_t_k();
    in_kelvins(case.conditions.ambient) > critical_k - NO_LIQUID_K
}
