//! The saturation line over arrays: the same bits as for one value, in vector code.
//!
//! States have no such form: one state costs a hundred times as much as the loop around it.

use super::line::Line;
use super::pure::Pure;
use super::tables::line_of;
use crate::error::Error;
use crate::mixture::Side;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::range::Range;

/// The elements of an array that have no answer, in whose place NaN was written; all others were computed.
///
/// ```
/// use coldloop::{ErrorKind, Refrigerant, saturation};
/// let mut p_pa = [0.0; 2];
/// let unanswered = saturation::dew_pressures_pa(Refrigerant::R134a, &[273.15, 900.0], &mut p_pa).unwrap_err();
/// assert_eq!((unanswered.first, unanswered.error.kind), (1, ErrorKind::OutOfRange));
/// assert!(p_pa[0] > 290e3 && p_pa[1].is_nan());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Unanswered {
    /// How many there are.
    pub count: usize,
    /// The index of the first.
    pub first: usize,
    /// Why the first has none: what the function for one value says.
    pub error: Error,
}

/// The dew pressure (Pa) of each temperature (K) into the same place of `p_pa`, bit for bit that of
/// [`dew_pressure_pa`](super::dew_pressure_pa). Strided data goes through in blocks.
///
/// Errors: an element without an answer becomes NaN and the rest are computed all the same; the error then tells how
/// many there are, the first of them and why, as [`dew_pressure_pa`](super::dew_pressure_pa) would. `Inconsistent` rows
/// when the slices differ in length, with all of `p_pa` NaN.
///
/// ```
/// use coldloop::{ErrorKind, Refrigerant, saturation};
/// let mut p_pa = [0.0; 3];
/// saturation::dew_pressures_pa(Refrigerant::R134a, &[263.15, 273.15, 283.15], &mut p_pa).unwrap();
/// assert_eq!(p_pa[1], saturation::dew_pressure_pa(Refrigerant::R134a, 273.15).unwrap());
///
/// let refusal = saturation::dew_pressures_pa(Refrigerant::R134a, &[273.15, 500.0, 283.15], &mut p_pa).unwrap_err();
/// assert_eq!((refusal.count, refusal.first, refusal.error.kind), (1, 1, ErrorKind::OutOfRange));
/// assert!(p_pa[1].is_nan() && p_pa[2] > 0.0);
/// ```
pub fn dew_pressures_pa(refrigerant: Refrigerant, t_k: &[f64], p_pa: &mut [f64]) -> Result<(), Unanswered> {
    line_of(refrigerant).pressures_pa(Side::Dew, t_k, p_pa)
}

/// The bubble pressure (Pa) of each temperature (K) into the same place of `p_pa`.
///
/// Errors: as [`dew_pressures_pa`].
pub fn bubble_pressures_pa(refrigerant: Refrigerant, t_k: &[f64], p_pa: &mut [f64]) -> Result<(), Unanswered> {
    line_of(refrigerant).pressures_pa(Side::Bubble, t_k, p_pa)
}

/// The dew temperature (K) of each pressure (Pa) into the same place of `t_k`.
///
/// Errors: as [`dew_pressures_pa`].
pub fn dew_temperatures_k(refrigerant: Refrigerant, p_pa: &[f64], t_k: &mut [f64]) -> Result<(), Unanswered> {
    line_of(refrigerant).temperatures_k(Side::Dew, p_pa, t_k)
}

/// The bubble temperature (K) of each pressure (Pa) into the same place of `t_k`.
///
/// Errors: as [`dew_pressures_pa`].
pub fn bubble_temperatures_k(refrigerant: Refrigerant, p_pa: &[f64], t_k: &mut [f64]) -> Result<(), Unanswered> {
    line_of(refrigerant).temperatures_k(Side::Bubble, p_pa, t_k)
}

impl Pure {
    /// The saturation pressure (Pa) of each temperature (K).
    ///
    /// Errors: as [`dew_pressures_pa`].
    pub fn pressures_pa(&self, t_k: &[f64], p_pa: &mut [f64]) -> Result<(), Unanswered> {
        each(self.temperatures(), t_k, p_pa, |t_k| self.pressure_pa.at(t_k))
    }

    /// The saturation temperature (K) of each pressure (Pa).
    ///
    /// Errors: as [`dew_pressures_pa`].
    pub fn temperatures_k(&self, p_pa: &[f64], t_k: &mut [f64]) -> Result<(), Unanswered> {
        each(self.pressures(), p_pa, t_k, |p_pa| self.temperature_at(p_pa))
    }
}

impl Line {
    /// The pressure (Pa) of one side at each temperature (K).
    ///
    /// Errors: as [`dew_pressures_pa`].
    pub fn pressures_pa(self, side: Side, t_k: &[f64], p_pa: &mut [f64]) -> Result<(), Unanswered> {
        match self {
            Line::Pure(pure) => pure.pressures_pa(t_k, p_pa),
            Line::Blend(blend) => {
                let boundary = blend.boundary(side);
                each(blend.temperatures(), t_k, p_pa, |t_k| boundary.pressure_pa.at(t_k))
            }
        }
    }

    /// The temperature (K) of one side at each pressure (Pa).
    ///
    /// Errors: as [`dew_pressures_pa`].
    pub fn temperatures_k(self, side: Side, p_pa: &[f64], t_k: &mut [f64]) -> Result<(), Unanswered> {
        match self {
            Line::Pure(pure) => pure.temperatures_k(p_pa, t_k),
            Line::Blend(blend) => {
                let boundary = blend.boundary(side);
                each(boundary.pressures(), p_pa, t_k, |p_pa| {
                    blend.temperature_at(boundary, p_pa)
                })
            }
        }
    }
}

/// Writes `value` of each element within the range, or NaN, to the same place.
#[inline(always)]
fn each(range: Range, from: &[f64], to: &mut [f64], value: impl Fn(f64) -> f64) -> Result<(), Unanswered> {
    if from.len() != to.len() {
        to.fill(f64::NAN);
        return Err(Unanswered {
            count: from.len().max(to.len()),
            first: from.len().min(to.len()),
            error: Error::of(ErrorKind::Inconsistent, Quantity::Rows),
        });
    }
    let mut count = 0;
    for (&x, y) in from.iter().zip(to.iter_mut()) {
        *y = if x >= range.low && x <= range.high {
            value(x)
        } else {
            count += 1;
            f64::NAN
        };
    }
    if count == 0 {
        return Ok(());
    }
    // Found in a second pass, so that the loop above only counts.
    let found = from
        .iter()
        .enumerate()
        .find_map(|(first, &x)| range.check(x).err().map(|error| (first, error)));
    found.map_or(Ok(()), |(first, error)| Err(Unanswered { count, first, error }))
}
