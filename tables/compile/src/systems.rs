//! The systems a row speaks of, as one bit per expansion device and compressor.

use coldloop::{Compressor, Expansion};

/// The bits of the named systems; an empty list names them all. The same order as `System::bit` in the crate.
pub(crate) fn systems(expansions: &[String], compressors: &[String]) -> Result<u8, String> {
    let expansions: Vec<Expansion> = match expansions {
        [] => Expansion::ALL.to_vec(),
        named => named
            .iter()
            .map(|id| Expansion::from_id(id).ok_or(format!("{id} is no expansion device")))
            .collect::<Result<_, _>>()?,
    };
    let compressors: Vec<Compressor> = match compressors {
        [] => Compressor::ALL.to_vec(),
        named => named
            .iter()
            .map(|id| Compressor::from_id(id).ok_or(format!("{id} is no compressor")))
            .collect::<Result<_, _>>()?,
    };
    let mut bits = 0;
    for expansion in &expansions {
        for compressor in &compressors {
            bits |= 1 << ((expansion.code() - 1) * 4 + compressor.code() - 1);
        }
    }
    Ok(bits)
}
