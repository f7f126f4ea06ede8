//! A vehicle's own pressure table.

use super::healthy::Healthy;
use super::spread::{QUANTILE_95, Spread};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::range::AMBIENT;
use crate::saturation::pseudo_critical;
use crate::units::{GaugePressure, Surroundings, Temperature, in_kelvins};

/// One row of a pressure table: what a sound vehicle shows at one ambient temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TableRow {
    /// Ambient temperature.
    pub ambient: Temperature,
    /// Lowest and highest low-side pressure.
    pub low_side: (GaugePressure, GaugePressure),
    /// Lowest and highest high-side pressure.
    pub high_side: (GaugePressure, GaugePressure),
}

/// A row that a pressure table cannot have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TableError {
    /// The row, counted from zero; the number of rows when it is their count that is wrong.
    pub row: usize,
    /// What is wrong with it.
    pub error: Error,
}

impl core::error::Error for TableError {}

impl core::fmt::Display for TableError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "row {}: {}", self.row + 1, self.error)
    }
}

/// A vehicle's own pressure table, of at least two rows in rising order of ambient, between which it is linear.
///
/// Its limits count as the 95 % band, its pressures as those of gauges in the air of `surroundings`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PressureTable {
    rows: [TableRow; PressureTable::LONGEST],
    len: usize,
    surroundings: Surroundings,
}

impl PressureTable {
    /// The most rows that a table can have.
    pub const LONGEST: usize = 24;

    /// The table of these rows, read on gauges in the air of `surroundings`.
    ///
    /// Errors, each with its row: `NotFinite`; `OutOfRange` for an ambient outside [`AMBIENT`] or not above the one
    /// before it, for a pressure below vacuum or not above the lower limit of its band, and for a number of rows other
    /// than 2 to [`Self::LONGEST`].
    ///
    /// ```
    /// use coldloop::expected::{PressureTable, TableRow};
    /// use coldloop::units::{GaugePressure, Surroundings, celsius};
    /// let kpa = |low: f64, high: f64| (GaugePressure::from_pa(low * 1e3), GaugePressure::from_pa(high * 1e3));
    /// let row = |c: f64, low, high| TableRow { ambient: celsius(c), low_side: low, high_side: high };
    /// let rows = [row(20.0, kpa(200.0, 250.0), kpa(1_000.0, 1_200.0)), row(20.0, kpa(210.0, 260.0), kpa(1_100.0, 1_300.0))];
    /// let refused = PressureTable::new(&rows, Surroundings::SEA_LEVEL).unwrap_err();
    /// assert_eq!(refused.row, 1); // the ambient does not rise
    /// ```
    pub fn new(rows: &[TableRow], surroundings: Surroundings) -> Result<Self, TableError> {
        let count = |quantity| Error::out_of_range(quantity, rows.len() as f64, 2.0, Self::LONGEST as f64);
        let (Some(first), 2..=Self::LONGEST) = (rows.first(), rows.len()) else {
            return Err(TableError {
                row: rows.len(),
                error: count(Quantity::Rows),
            });
        };
        let mut table = Self {
            rows: [*first; Self::LONGEST],
            len: rows.len(),
            surroundings,
        };
        let mut warmest_k = AMBIENT.low;
        for (row, (slot, given)) in table.rows.iter_mut().zip(rows).enumerate() {
            let rising_k = if row == 0 {
                warmest_k
            } else {
                warmest_k + f64::EPSILON * warmest_k
            };
            warmest_k = given
                .check(rising_k, surroundings)
                .map_err(|error| TableError { row, error })?;
            *slot = *given;
        }
        Ok(table)
    }

    /// The rows.
    pub fn rows(&self) -> &[TableRow] {
        self.rows.get(..self.len).unwrap_or(&self.rows)
    }

    /// The distributions with both pressures replaced by those of this table at `ambient`.
    ///
    /// Errors: `OutOfRange` when the ambient lies outside the rows or a limit off the saturation line of the
    /// refrigerant.
    pub fn replace(&self, healthy: Healthy, refrigerant: Refrigerant, ambient: Temperature) -> Result<Healthy, Error> {
        let ambient_k = in_kelvins(ambient);
        let rows = self.rows();
        let (first, last) = match (rows.first(), rows.last()) {
            (Some(first), Some(last)) => (in_kelvins(first.ambient), in_kelvins(last.ambient)),
            (None, _) | (_, None) => return Err(Error::of(ErrorKind::Missing, Quantity::Rows)),
        };
        let outside = Error::out_of_range(Quantity::Temperature, ambient_k, first, last);
        let pair = rows.windows(2).find_map(|pair| match pair {
            [below, above] if (in_kelvins(below.ambient)..=in_kelvins(above.ambient)).contains(&ambient_k) => {
                Some((below, above))
            }
            [..] => None,
        });
        let (below, above) = pair.ok_or(outside)?;
        let (cold_k, warm_k) = (in_kelvins(below.ambient), in_kelvins(above.ambient));
        let share = (ambient_k - cold_k) / (warm_k - cold_k);
        let spread = |below: (GaugePressure, GaugePressure), above: (GaugePressure, GaugePressure)| {
            let low_pa = below.0.pa() + share * (above.0.pa() - below.0.pa());
            let high_pa = below.1.pa() + share * (above.1.pa() - below.1.pa());
            let saturation_k = |gauge_pa: f64| {
                let absolute = GaugePressure::from_pa(gauge_pa).absolute(self.surroundings);
                pseudo_critical::along_k(refrigerant, absolute.pa())
            };
            let median = saturation_k(0.5 * (low_pa + high_pa))?;
            Ok::<_, Error>(Spread {
                median,
                down: (median - saturation_k(low_pa)?) / QUANTILE_95,
                up: (saturation_k(high_pa)? - median) / QUANTILE_95,
            })
        };
        Ok(Healthy {
            low_side: spread(below.low_side, above.low_side)?,
            high_side: spread(below.high_side, above.high_side)?,
            ..healthy
        })
    }
}

impl TableRow {
    /// The ambient in kelvin when the row is sound and its ambient at least `rising_k`.
    fn check(&self, rising_k: f64, surroundings: Surroundings) -> Result<f64, Error> {
        let ambient_k = AMBIENT.check(in_kelvins(self.ambient))?;
        if ambient_k < rising_k {
            return Err(Error::out_of_range(
                Quantity::Temperature,
                ambient_k,
                rising_k,
                AMBIENT.high,
            ));
        }
        let vacuum_pa = -surroundings.pressure().pa();
        for (low, high) in [self.low_side, self.high_side] {
            let mut least_pa = vacuum_pa;
            for pa in [low.pa(), high.pa()] {
                if !pa.is_finite() {
                    return Err(Error::not_finite(Quantity::GaugePressure, pa));
                }
                if pa <= least_pa {
                    return Err(Error::out_of_range(
                        Quantity::GaugePressure,
                        pa,
                        least_pa,
                        f64::INFINITY,
                    ));
                }
                least_pa = pa;
            }
        }
        Ok(ambient_k)
    }
}
