//! The saturation of a refrigerant by its name.

use super::blend::Blend;
use super::line::Line;
use super::pure::Pure;
use super::tables;
use crate::error::Error;
use crate::names::Refrigerant;

/// The saturation line of a pure refrigerant.
///
/// Errors: `NotAvailable` for a blend, which has two.
///
/// ```
/// use coldloop::{ErrorKind, Refrigerant, saturation};
/// assert!(saturation::pure(Refrigerant::R134a)?.critical_t_k > 374.0);
/// assert_eq!(saturation::pure(Refrigerant::R407C).unwrap_err().kind, ErrorKind::NotAvailable);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub const fn pure(refrigerant: Refrigerant) -> Result<&'static Pure, Error> {
    tables::line_of(refrigerant).pure()
}

/// The blend of this name; `None` for a pure refrigerant.
///
/// ```
/// use coldloop::{Refrigerant, saturation};
/// let blend = saturation::blend(Refrigerant::R407C).unwrap();
/// assert_eq!(blend.parts[0].refrigerant, Refrigerant::R32);
/// assert!((blend.parts[0].mass_fraction - 0.23).abs() < 1e-15);
/// assert!(saturation::blend(Refrigerant::R134a).is_none());
/// ```
pub const fn blend(refrigerant: Refrigerant) -> Option<&'static Blend> {
    match tables::line_of(refrigerant) {
        Line::Pure(_) => None,
        Line::Blend(blend) => Some(blend),
    }
}
