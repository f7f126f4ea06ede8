//! The faults: how common each is, the systems in which it exists, and what it does to the pressure at rest.

use super::fault_table::FAULTS;
use super::rows::FaultRow;
use crate::names::{Compressor, Expansion, Fault};
use crate::vehicle::System;

/// Number of hypotheses: the faults, and none of them.
pub(super) const HYPOTHESES: usize = Fault::ALL.len() + 1;
/// The place of "none of these".
pub(super) const NONE: usize = Fault::ALL.len();

/// How common each hypothesis is before anything is read, relative to the others.
pub(super) type Priors = [f64; HYPOTHESES];

/// The priors of each fault and of a cause that is none of them, as an array.
pub(super) fn priors(of: impl Fn(Option<Fault>) -> f64) -> Priors {
    core::array::from_fn(|hypothesis| of(Fault::ALL.get(hypothesis).copied()))
}

/// The row of a fault.
pub(super) fn row(fault: Fault) -> &'static FaultRow {
    &FAULTS[index(fault)]
}

/// The place of a fault in arrays over the vocabulary: its code, which counts from zero.
pub(super) const fn index(fault: Fault) -> usize {
    fault.code() as usize
}

/// The bit of a system in the masks of the tables.
pub(super) const fn bit(system: &System) -> u8 {
    let expansion = match system.expansion {
        Expansion::Txv => 0,
        Expansion::OrificeTube => 4,
    };
    let compressor = match system.compressor {
        Compressor::FixedClutch => 0,
        Compressor::VariableInternal => 1,
        Compressor::VariableExternal => 2,
        Compressor::Electric => 3,
    };
    1 << (expansion + compressor)
}

/// Whether a fault exists in a system: valve faults need an expansion valve, clutch faults a clutch.
///
/// ```
/// use coldloop::diagnosis::exists;
/// use coldloop::vehicle::System;
/// use coldloop::{Compressor, Expansion, Fault, Refrigerant};
/// let van = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
/// assert!(exists(Fault::OrificeRestricted, &van));
/// assert!(!exists(Fault::ExpansionValveStuckOpen, &van));
/// ```
pub fn exists(fault: Fault, system: &System) -> bool {
    row(fault).exists(bit(system))
}

/// What the severity of a fault is a measure of, as in "share of the charge missing"; empty where it has none.
pub fn measure(fault: Fault) -> &'static str {
    row(fault).measure
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_stand_in_the_order_of_their_codes() {
        for (place, row) in FAULTS.iter().enumerate() {
            assert_eq!(index(row.fault), place);
        }
    }

    #[test]
    fn every_fault_exists_in_some_system() {
        for row in &FAULTS {
            assert!(row.systems != 0, "{}", row.fault);
        }
    }
}
