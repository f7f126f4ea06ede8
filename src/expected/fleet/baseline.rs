//! A vehicle's own healthy readings, and how they sharpen the bands.

use super::figures::{CYCLES, DISCHARGE_SUPERHEAT, FIGURES, HIGH_SIDE, LOW_SIDE, SUBCOOLING, SUPERHEAT, VENT};
use super::{Fleet, FleetBands};
use crate::circuit::{Reading, Readings};
use crate::error::Error;
use crate::numerics::sqrt;
use crate::saturation::pseudo_critical;
use crate::units::{Pressure, in_kelvins};
use crate::vehicle::Conditions;

type Matrix = [[f64; FIGURES]; FIGURES];

/// What is known of one vehicle of a fleet from its own healthy readings in other weather.
///
/// The deviations of a vehicle from the medians of its fleet, each in standard deviations of the fleet, are taken as a
/// sum of two normal vectors: one that the vehicle keeps in any weather and one that changes with the weather. Both
/// covariances are fitted to the vehicle model. Each healthy reading then updates the first by Bayes' rule, which for
/// normal distributions is closed (conjugate): the Kalman measurement update, one reading at a time within a visit, the
/// changing part and the instrument's own error counting as noise. The bands for other conditions are those of the
/// fleet moved by the mean and narrowed by the variance that is left.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::expected::{Baseline, Fleet};
/// use coldloop::units::{GaugePressure, Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let fleet = Fleet::of(&System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableExternal))?;
/// let day = |c: f64| Conditions {
///     relative_humidity: Some(0.4),
///     engine_speed_hz: Some(25.0),
///     ..Conditions::new(celsius(c), Surroundings::SEA_LEVEL)
/// };
/// let in_may = Readings {
///     high_side: Some(Reading::pressure(GaugePressure::from_pa(1.0e6), Gauge::HIGH_SIDE)),
///     ..Readings::default()
/// };
/// let mut van = Baseline::new(fleet);
/// van.learn(&day(24.0), &in_may)?;
/// let (own, any) = (van.bands(&day(35.0))?, fleet.bands(&day(35.0))?);
/// assert!(own.healthy.high_side.up < any.healthy.high_side.up);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Baseline {
    fleet: Fleet,
    /// Mean of what the vehicle keeps.
    mean: [f64; FIGURES],
    /// Covariance of it.
    covariance: Matrix,
    /// Readings learnt from.
    readings: usize,
}

impl Baseline {
    /// A vehicle of which nothing is known but its kind.
    pub fn new(fleet: Fleet) -> Self {
        Self {
            fleet,
            mean: [0.0; FIGURES],
            covariance: unpacked(fleet.kind.kept),
            readings: 0,
        }
    }

    /// How many figures it has learnt from.
    pub const fn readings(&self) -> usize {
        self.readings
    }

    /// Learns from readings of this vehicle that were taken when it was sound, in their conditions.
    ///
    /// Vent and clutch cycles are taken as read, pressures as saturation temperatures, lines as superheat, subcooling and
    /// discharge superheat where the pressure beside them was read too. What is not there teaches nothing.
    ///
    /// Errors: those of [`Fleet::bands`], and `OutOfRange` for a pressure off the saturation line.
    pub fn learn(&mut self, conditions: &Conditions, readings: &Readings) -> Result<(), Error> {
        let spreads = self.fleet.spreads(conditions)?;
        let seen = self.seen(conditions, readings)?;
        let changing = unpacked(self.fleet.kind.changing);
        // The state while one visit is read: what the vehicle keeps, and what it adds to that in this weather.
        let mut mean = [self.mean, [0.0; FIGURES]];
        let mut own = self.covariance;
        let mut cross = [[0.0; FIGURES]; FIGURES];
        let mut now = changing;
        for figure in 0..FIGURES {
            let Some((value, uncertainty)) = seen[figure] else {
                continue;
            };
            let spread = spreads[figure];
            let scale = if value < spread.median { spread.down } else { spread.up };
            let noise = uncertainty / scale;
            let miss = spread.deviation(value) - mean[0][figure] - mean[1][figure];
            // Covariance of each part with the reading, and variance of the reading.
            let with_own: [f64; FIGURES] = core::array::from_fn(|i| own[i][figure] + cross[i][figure]);
            let with_now: [f64; FIGURES] = core::array::from_fn(|i| cross[figure][i] + now[i][figure]);
            let variance = with_own[figure] + with_now[figure] + noise * noise;
            if variance <= 0.0 {
                continue;
            }
            for i in 0..FIGURES {
                mean[0][i] += with_own[i] * miss / variance;
                mean[1][i] += with_now[i] * miss / variance;
                for j in 0..FIGURES {
                    own[i][j] -= with_own[i] * with_own[j] / variance;
                    cross[i][j] -= with_own[i] * with_now[j] / variance;
                    now[i][j] -= with_now[i] * with_now[j] / variance;
                }
            }
            self.readings += 1;
        }
        (self.mean, self.covariance) = (mean[0], own);
        Ok(())
    }

    /// What this vehicle shows while it is sound, in these conditions.
    ///
    /// Errors: those of [`Fleet::bands`].
    pub fn bands(&self, conditions: &Conditions) -> Result<FleetBands, Error> {
        let changing = unpacked(self.fleet.kind.changing);
        let kept = unpacked(self.fleet.kind.kept);
        let mut spreads = self.fleet.spreads(conditions)?;
        for (figure, spread) in spreads.iter_mut().enumerate() {
            let before = kept[figure][figure] + changing[figure][figure];
            if before <= 0.0 {
                continue;
            }
            let left = sqrt((self.covariance[figure][figure] + changing[figure][figure]) / before);
            spread.median = spread.at(self.mean[figure]);
            spread.down *= left;
            spread.up *= left;
        }
        self.fleet.gathered(&spreads, conditions.surroundings)
    }

    /// The figures that the readings give, each with its standard uncertainty.
    fn seen(&self, conditions: &Conditions, readings: &Readings) -> Result<[Option<(f64, f64)>; FIGURES], Error> {
        let refrigerant = self.fleet.kind.refrigerant;
        let zero = readings.gauge_zero.unwrap_or(conditions.surroundings);
        let saturation_k = |reading: Option<Reading<Pressure>>| {
            reading
                .map(|reading| {
                    let p_pa = reading.value.absolute(zero).pa();
                    let t_k = pseudo_critical::along_k(refrigerant, p_pa)?;
                    let warmer_k = pseudo_critical::along_k(refrigerant, p_pa + reading.standard_uncertainty)?;
                    Ok::<_, Error>((t_k, warmer_k - t_k))
                })
                .transpose()
        };
        let low = saturation_k(readings.low_side)?;
        let high = saturation_k(readings.high_side_known(conditions.surroundings))?;
        let both = |one: Option<(f64, f64)>, other: Option<(f64, f64)>| {
            let ((one, first), (other, second)) = (one?, other?);
            Some((one - other, libm::hypot(first, second)))
        };
        let line = |reading: Option<Reading<crate::units::Temperature>>| {
            reading.map(|reading| (in_kelvins(reading.value), reading.standard_uncertainty))
        };
        let mut seen = [None; FIGURES];
        seen[LOW_SIDE] = low;
        seen[HIGH_SIDE] = high;
        seen[VENT] = line(readings.vent);
        seen[SUPERHEAT] = both(line(readings.suction_line), low);
        seen[SUBCOOLING] = both(high, line(readings.liquid_line));
        seen[DISCHARGE_SUPERHEAT] = both(line(readings.discharge_line), high);
        if self.fleet.kind.rows.len() > CYCLES {
            seen[CYCLES] = readings.clutch_cycles_hz.map(|reading| {
                let per_minute = 60.0 * reading.value;
                let uncertainty = 60.0 * reading.standard_uncertainty / (1.0 + per_minute);
                (libm::log1p(per_minute), uncertainty)
            });
        }
        Ok(seen)
    }
}

/// A symmetric matrix from its lower triangle, row by row; nought beyond it.
fn unpacked(triangle: &[f32]) -> Matrix {
    let mut matrix = [[0.0; FIGURES]; FIGURES];
    let mut entries = triangle.iter();
    for row in 0..FIGURES {
        for column in 0..=row {
            let Some(entry) = entries.next() else {
                return matrix;
            };
            matrix[row][column] = f64::from(*entry);
            matrix[column][row] = f64::from(*entry);
        }
    }
    matrix
}
