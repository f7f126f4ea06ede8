//! One step of Newton's method for two balances in temperature and density.

/// A balance of a state: what is missing, and its slopes over temperature (K) and molar density (mol/m3).
#[derive(Clone, Copy, Debug)]
pub(super) struct Balance {
    pub(super) missing: f64,
    pub(super) by_t: f64,
    pub(super) by_rho: f64,
}

/// The step that meets two balances to first order.
#[derive(Clone, Copy, Debug)]
pub(super) struct Step {
    /// Change of temperature, K.
    pub(super) warmer: f64,
    /// Change of molar density, mol/m3.
    pub(super) denser: f64,
    /// Determinant of the slopes; the step is not finite where it is zero.
    pub(super) determinant: f64,
}

/// The step in temperature and density that meets both balances to first order, by Cramer's rule.
#[inline]
pub(super) fn newton_step(one: &Balance, other: &Balance) -> Step {
    let determinant = one.by_t * other.by_rho - one.by_rho * other.by_t;
    Step {
        warmer: (one.missing * other.by_rho - other.missing * one.by_rho) / determinant,
        denser: (other.missing * one.by_t - one.missing * other.by_t) / determinant,
        determinant,
    }
}
