//! Tolerances of the searches for states.

/// The relative step, times cp/cv, that is exact to first order, and below which cp and w need no second look: they
/// answer to it about cp/cv-fold, which near the critical point is much.
pub(super) const NEAR: f64 = 2e-11;
/// What counts as rounding in a temperature, relatively.
pub(super) const ROUNDING: f64 = 1e-13;
/// The share by which curve and equation may differ in density; see the head of the generated curves.
pub(super) const BLUR: f64 = 1e-9;
