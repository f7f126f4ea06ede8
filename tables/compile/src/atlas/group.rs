//! Compressors that share rows of the atlas.

use coldloop::Compressor;

/// A group of compressors.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Group {
    FixedClutch,
    Variable,
    Electric,
}

impl Group {
    pub(crate) const ALL: [Self; 3] = [Self::FixedClutch, Self::Variable, Self::Electric];

    pub(crate) const fn id(self) -> &'static str {
        match self {
            Self::FixedClutch => "fixed-clutch",
            Self::Variable => "variable",
            Self::Electric => "electric",
        }
    }

    pub(crate) fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|group| group.id() == id)
    }

    /// Its compressors.
    pub(crate) const fn compressors(self) -> &'static [Compressor] {
        match self {
            Self::FixedClutch => &[Compressor::FixedClutch],
            Self::Variable => &[Compressor::VariableInternal, Compressor::VariableExternal],
            Self::Electric => &[Compressor::Electric],
        }
    }
}

/// The group of a compressor.
pub(crate) fn group(compressor: Compressor) -> Group {
    match compressor {
        Compressor::FixedClutch => Group::FixedClutch,
        Compressor::VariableInternal | Compressor::VariableExternal => Group::Variable,
        Compressor::Electric => Group::Electric,
        _ => unreachable!("a new member of the vocabulary"),
    }
}
