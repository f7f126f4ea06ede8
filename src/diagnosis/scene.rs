//! What the planner and the verdict know of the system: what it has, and what a sound one shows.

use super::case::Case;
use super::faults::bit;
use crate::expected::SoundModel;
use crate::names::Feature;

/// A system in its conditions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scene {
    /// The bit of the system in the masks of the tables.
    pub(super) bit: u8,
    /// What a sound system shows; `None` at rest.
    pub(super) sound: Option<SoundModel>,
    /// Whether there may be a sight glass.
    pub(super) sight_glass: bool,
}

impl Scene {
    pub(super) fn of(case: &Case, sound: Option<SoundModel>) -> Self {
        Self {
            bit: bit(&case.system),
            sound,
            sight_glass: case.system.may_have_sight_glass(),
        }
    }

    /// Whether a figure means nothing in this system or state.
    pub(super) fn cannot_judge(&self, feature: Feature) -> bool {
        self.sound.as_ref().and_then(|sound| sound.view(feature)).is_none()
    }
}
