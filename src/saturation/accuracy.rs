//! Tolerances of the searches for states.

/// Relative step, times cp/cv, below which a first-order correction is exact and cp and w need no new evaluation: their
/// relative change is about cp/cv times the step, which is large near the critical point.
pub(super) const NEAR: f64 = 2e-11;
/// Relative change of a temperature that counts as rounding.
pub(super) const ROUNDING: f64 = 1e-13;
/// Largest relative difference in density between curve and equation; see the head of the generated curves.
pub(super) const BLUR: f64 = 1e-9;
