//! What is known of one vehicle: its own pressure table, and its earlier visits when it was sound.

#![allow(clippy::needless_range_loop)] // rows and columns of matrices

use super::model::{Component, QUANTILE_95, SoundModel};
use super::sources::{SOURCES, Source};
use crate::circuit::{FeatureVector, Readings};
use crate::error::Error;
use crate::names::{ErrorKind, ExpectedBasis, Quantity, Refrigerant};
use crate::numerics::multivariate_t::{DIMENSIONS, Factor, Freedom, Read, Symmetric, Vector, Vectors};
use crate::numerics::sqrt;
use crate::range::AMBIENT;
use crate::saturation::{self, pseudo_critical};
use crate::units::{GaugePressure, Surroundings, Temperature, in_kelvins};
use crate::vehicle::{Conditions, System};

impl SoundModel {
    /// The same vehicle, once its earlier sound visits and its own pressure table are known.
    ///
    /// Visits and table are readings of the vehicle's lasting deviation: the components become the conditional distributions
    /// (Kotz & Nadarajah 2004, 1.11), and their weights are multiplied by the density that each gave to what was read.
    ///
    /// Errors: those of [`PressureTable::at`].
    pub fn knowing(
        self,
        system: &System,
        conditions: &Conditions,
        visits: Option<&OwnVehicle>,
        table: Option<&PressureTable>,
    ) -> Result<Self, Error> {
        let mut model = self;
        model.know(system, conditions, visits, table)?;
        Ok(model)
    }

    /// The same in place.
    pub(crate) fn know(
        &mut self,
        system: &System,
        conditions: &Conditions,
        visits: Option<&OwnVehicle>,
        table: Option<&PressureTable>,
    ) -> Result<(), Error> {
        if let Some(own) = visits.filter(|own| own.readings() > 0) {
            self.known(ExpectedBasis::OwnReadings, |component| {
                own.knowledge(component.source).apply(component)
            });
        }
        if let Some(table) = table {
            let sides = table.at(system.refrigerant, conditions.ambient)?;
            self.known(ExpectedBasis::OwnTable, |component| {
                Knowledge::by_table(component, &sides)
            });
        }
        self.bound(system, conditions.surroundings);
        Ok(())
    }
}

/// One vehicle, from what it read on days when it was sound.
///
/// What a vehicle keeps in any weather is its deviation from its kind, counted in lasting standard deviations. Each visit
/// updates the distribution of this deviation (the conditional t distribution, Kotz & Nadarajah 2004, 1.11), for every source
/// by itself, with the correlations in the weather of the first visit. Since the last visit 12 % of the lasting variance may
/// have changed, and no more than eight degrees of freedom are used; both are engineering judgement.
///
/// ```
/// use coldloop::Feature;
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::expected::{OwnVehicle, SoundModel};
/// use coldloop::units::{GaugePressure, RelativeHumidity, RotationalSpeed, Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableExternal);
/// let day = |c: f64| Conditions {
///     relative_humidity: Some(RelativeHumidity::from_percent(40.0)),
///     engine_speed: Some(RotationalSpeed::from_rpm(1_500.0)),
///     ..Conditions::new(celsius(c), Surroundings::SEA_LEVEL)
/// };
/// let in_may = Readings {
///     high_side: Some(Reading::pressure(GaugePressure::from_pa(1.0e6), Gauge::HIGH_SIDE)),
///     ..Readings::default()
/// };
/// let mut van = OwnVehicle::new(system);
/// van.learn(&day(24.0), &in_may)?;
/// let any = SoundModel::of(&system, &day(35.0))?;
/// let own = any.knowing(&system, &day(35.0), Some(&van), None)?;
/// let width = |model: &SoundModel| model.band(Feature::HighSide).map(|band| band.high_95 - band.low_95);
/// assert!(width(&own) < width(&any));
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OwnVehicle {
    system: System,
    knowledge: [Knowledge; SOURCES],
    readings: usize,
}

/// What is known of a vehicle by one source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Knowledge {
    /// Deviation of the vehicle from its kind, in lasting standard deviations, and its remaining covariance; `None` before the
    /// first visit.
    state: Option<(Vector, Symmetric)>,
    freedom: Freedom,
    /// Factor by which every variance of this vehicle has grown.
    stretch: f64,
    /// Logarithm of the factor on the weight of the source.
    ln_weight: f64,
}

impl Knowledge {
    const NOTHING: Self = Self {
        state: None,
        freedom: Freedom::USUAL,
        stretch: 1.0,
        ln_weight: 0.0,
    };

    /// Updates with one visit; `component` is the distribution for its conditions.
    fn learn(&mut self, component: &Component, features: &FeatureVector) {
        let deviation = deviations(&component.lasting);
        let (mean, covariance) = self.state.unwrap_or((
            [0.0; DIMENSIONS],
            component.lasting.scaled(&deviation.map(|own| 1.0 / own)),
        ));
        let lasting = covariance.scaled(&deviation);
        let read = Read::of(|i| features.read[i].is_some());
        let mut noise = [0.0; DIMENSIONS];
        let mut off = [0.0; DIMENSIONS];
        for i in read.places().iter().copied() {
            if let Some(reading) = features.read[i] {
                noise[i] = reading.standard_uncertainty * reading.standard_uncertainty;
                off[i] = reading.value - component.of_kind[i] - deviation[i] * mean[i];
            }
        }
        let scale = Symmetric::of(|i, j| lasting.at(i, j) + self.stretch * component.passing.at(i, j));
        let seen = Seen::of(&scale, &noise, &off, &read);
        self.ln_weight += libm::log(f64::max(seen.density(self.freedom), f64::MIN_POSITIVE));
        // Every lasting deviation, given the visit.
        let rows = seen.rows(&lasting);
        let grown = self.freedom.stretch(seen.squared, read.count());
        let after = core::array::from_fn(|i| mean[i] + seen.product(&rows[i], &seen.independent) / deviation[i]);
        let left = Symmetric::of(|i, j| {
            let explained = seen.product(&rows[i], &rows[j]);
            grown * (covariance.at(i, j) - explained / (deviation[i] * deviation[j]))
        });
        self.state = Some((after, left));
        self.stretch *= grown;
        self.freedom = self.freedom.after(read.count());
    }

    /// Applies what is known to a component of the sound model.
    pub(super) fn apply(&self, component: &mut Component) {
        let Some((mean, covariance)) = &self.state else { return };
        let deviation = deviations(&component.lasting);
        let left = covariance.scaled(&deviation);
        let left = Symmetric::of(|i, j| left.at(i, j) + DRIFT * component.lasting.at(i, j));
        for i in 0..DIMENSIONS {
            component.mean[i] += deviation[i] * mean[i];
            component.gained[i] += component.lasting.at(i, i) - left.at(i, i);
        }
        component.passing.0 = component.passing.0.map(|entry| self.stretch * entry);
        component.known = true;
        component.lasting = left;
        component.freedom = Freedom(self.freedom.0.min(MOST_FREEDOM));
        component.weight *= libm::exp(self.ln_weight);
    }

    /// Applies the vehicle's own pressure table to a component: its middle is a reading of both sides with hardly any error,
    /// and its limits are the 95 % band of their readings.
    pub(super) fn by_table(component: &mut Component, sides: &[(f64, f64); 2]) {
        let read = Read::of(|i| i < sides.len());
        let mut off = [0.0; DIMENSIONS];
        let mut noise = [0.0; DIMENSIONS];
        for (i, (middle_k, deviation_k)) in sides.iter().enumerate() {
            off[i] = middle_k - component.mean[i];
            let unsure_k = TABLE_UNSURE * deviation_k;
            noise[i] = unsure_k * unsure_k;
        }
        let seen = Seen::of(&component.lasting, &noise, &off, &read);
        component.weight *= seen.density(component.freedom);
        let rows = seen.rows(&component.lasting);
        let left = Symmetric::of(|i, j| component.lasting.at(i, j) - seen.product(&rows[i], &rows[j]));
        for i in 0..DIMENSIONS {
            component.mean[i] += seen.product(&rows[i], &seen.independent);
            component.gained[i] += seen.product(&rows[i], &rows[i]);
        }
        component.known = true;
        component.lasting = left;
        for (i, (_, deviation_k)) in sides.iter().enumerate() {
            // Positive: the mean of the component is known better than the middle of the table is.
            let passing = deviation_k * deviation_k - left.at(i, i);
            let mut factors = [1.0; DIMENSIONS];
            factors[i] = sqrt(passing / component.passing.at(i, i));
            component.passing = component.passing.scaled(&factors);
        }
        component.freedom = TABLE_FREEDOM;
    }
}

/// Readings less their mean, decorrelated with their scale matrix.
struct Seen<'a> {
    read: &'a Read,
    factor: Factor<1>,
    independent: Vectors<1>,
    squared: f64,
}

impl<'a> Seen<'a> {
    fn of(scale: &Symmetric, noise: &Vector, off: &Vector, read: &'a Read) -> Self {
        let part = read.part_of(|i, j| scale.at(i, j));
        let mut factor = Factor::empty(read.count());
        factor.fill(0, |at| part[at], &read.part(noise));
        factor.factorise();
        let mut independent = read.part(off).map(|off| [off]);
        factor.solve(&mut independent);
        let [squared] = factor.product(&independent, &independent);
        Self {
            read,
            factor,
            independent,
            squared,
        }
    }

    fn density(&self, freedom: Freedom) -> f64 {
        let count = self.read.count();
        let ([narrow], [fall]) = (self.factor.narrow(), freedom.fall([self.squared], count));
        freedom.peaks()[count] * narrow * fall
    }

    /// The decorrelated covariances of every dimension with what was read.
    fn rows(&self, scale: &Symmetric) -> [Vectors<1>; DIMENSIONS] {
        core::array::from_fn(|i| {
            let row = core::array::from_fn(|j| scale.at(i, j));
            let mut row = self.read.part(&row).map(|entry| [entry]);
            self.factor.solve(&mut row);
            row
        })
    }

    /// By how much the readings move the mean of a number with such covariances, or lower the covariance of two.
    fn product(&self, one: &Vectors<1>, other: &Vectors<1>) -> f64 {
        let [product] = self.factor.product(one, other);
        product
    }
}

/// Standard error of a table's middle, as a share of the standard deviation of its band. Source: engineering judgement.
const TABLE_UNSURE: f64 = 0.02;
/// The limits of a table count as the 95 % band of a nearly normal distribution.
const TABLE_FREEDOM: Freedom = Freedom(400);

/// The most degrees of freedom after any number of visits, because the passing part is new at every visit. Source: engineering
/// judgement.
const MOST_FREEDOM: u32 = 8;

/// Share of the lasting variance that may have changed since: vehicles age, and are cleaned and repaired. Source: engineering
/// judgement; without it only 87 to 95 % of the makes left out of the fit lay in the 95 % bands after two visits.
const DRIFT: f64 = 0.12;

impl OwnVehicle {
    /// A vehicle of which nothing is known but its kind.
    pub const fn new(system: System) -> Self {
        Self {
            system,
            knowledge: [Knowledge::NOTHING; SOURCES],
            readings: 0,
        }
    }

    /// How many readings it has learnt from.
    pub const fn readings(&self) -> usize {
        self.readings
    }

    /// Learns from readings of this vehicle that were taken when it was sound, in their conditions; readings may be missing.
    ///
    /// Errors: those of [`SoundModel::of`], and of [`FeatureVector::of`].
    pub fn learn(&mut self, conditions: &Conditions, readings: &Readings) -> Result<(), Error> {
        let model = SoundModel::of(&self.system, conditions)?;
        let air = conditions.surroundings;
        let features = FeatureVector::of(self.system.refrigerant, readings, conditions.ambient, air)?;
        let count = features.read.iter().flatten().count();
        if count == 0 {
            return Ok(());
        }
        for component in model.components() {
            self.knowledge[component.source as usize].learn(component, &features);
        }
        let most = Source::ALL.map(|source| self.knowledge[source as usize].ln_weight);
        let most = most.into_iter().fold(f64::NEG_INFINITY, f64::max);
        for knowledge in &mut self.knowledge {
            knowledge.ln_weight -= most;
        }
        self.readings += count;
        Ok(())
    }

    pub(super) const fn knowledge(&self, source: Source) -> &Knowledge {
        &self.knowledge[source as usize]
    }
}

fn deviations(scale: &Symmetric) -> Vector {
    core::array::from_fn(|i| sqrt(f64::max(scale.at(i, i), LEAST_VARIANCE)))
}

/// Avoids a division by zero for a feature that a source does not know, in the square of its unit.
const LEAST_VARIANCE: f64 = 1e-6;

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

/// Why a pressure table is refused, and at which row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
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
///
/// ```
/// use coldloop::expected::{PressureTable, TableRow};
/// use coldloop::units::{GaugePressure, Surroundings, celsius};
/// let kpa = |low: f64, high: f64| (GaugePressure::from_kpa(low), GaugePressure::from_kpa(high));
/// let rows = [
///     TableRow { ambient: celsius(20.0), low_side: kpa(150.0, 220.0), high_side: kpa(900.0, 1_150.0) },
///     TableRow { ambient: celsius(35.0), low_side: kpa(190.0, 280.0), high_side: kpa(1_400.0, 1_800.0) },
/// ];
/// assert!(PressureTable::new(&rows, Surroundings::at_altitude(1_600.0)?).is_ok());
/// # Ok::<(), coldloop::Error>(())
/// ```
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

    /// Middle and standard deviation of both sides at `ambient`, as saturation temperatures above it, K.
    ///
    /// Errors: `OutOfRange` when the ambient lies outside the rows or a limit off the saturation line of the
    /// refrigerant.
    pub fn at(&self, refrigerant: Refrigerant, ambient: Temperature) -> Result<[(f64, f64); 2], Error> {
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
        let side = |below: (GaugePressure, GaugePressure), above: (GaugePressure, GaugePressure), high: bool| {
            let low_pa = below.0.pa() + share * (above.0.pa() - below.0.pa());
            let high_pa = below.1.pa() + share * (above.1.pa() - below.1.pa());
            let saturation_k = |gauge_pa: f64| {
                let p_pa = GaugePressure::from_pa(gauge_pa).absolute(self.surroundings).pa();
                if high && refrigerant != Refrigerant::R744 {
                    saturation::bubble_temperature_k(refrigerant, p_pa)
                } else {
                    pseudo_critical::along_k(refrigerant, p_pa)
                }
            };
            let (low_k, high_k) = (saturation_k(low_pa)?, saturation_k(high_pa)?);
            let middle_k = 0.5 * (low_k + high_k) - ambient_k;
            Ok::<_, Error>((middle_k, (high_k - low_k) / (2.0 * QUANTILE_95)))
        };
        Ok([
            side(below.low_side, above.low_side, false)?,
            side(below.high_side, above.high_side, true)?,
        ])
    }
}

impl TableRow {
    /// The ambient in kelvin when the row is valid and its ambient at least `rising_k`.
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

#[cfg(test)]
mod tests;
