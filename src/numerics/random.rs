//! Random numbers for tests inside the crate.

#![cfg(test)]

/// Marsaglia, Xorshift RNGs, J. Stat. Softw. 8 (2003) 14, the 64-bit triple (13, 7, 17).
pub(crate) struct Random(pub(crate) u64);

impl Random {
    /// 64 of them.
    pub(crate) fn bits(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    /// From 0 to 1.
    pub(crate) fn share(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }
}
