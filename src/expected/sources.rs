//! What each source says of a sound system of one kind: mean, lasting and passing spread.

#![allow(clippy::needless_range_loop)] // rows and columns of matrices

use super::sound_table::{INDEPENDENT, VEHICLE_MODEL};
use super::weather::{Doubt, Facts, INDEPENDENT_TERMS, SPREAD_TERMS, Weather};
use crate::circuit::FeatureVector;
use crate::names::{Compressor, Expansion, Refrigerant};
use crate::numerics::multivariate_t::{DIMENSIONS, Matrix, Vector, ZERO};
use crate::vehicle::System;

/// Who says what a sound system and a fault look like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// The vehicle model of this crate, over its makes.
    VehicleModel,
    /// A simulator written without knowledge of it.
    IndependentSimulator,
    /// Published charts, and the fault tables of the trade.
    Published,
}

/// How many sources there are.
pub(crate) const SOURCES: usize = 3;

impl Source {
    /// All of them, in the order of their places.
    pub(crate) const ALL: [Self; SOURCES] = [Self::VehicleModel, Self::IndependentSimulator, Self::Published];

    /// How much it counts where all three speak. Source: engineering judgement: each simulator foresees its own makes best, and the two
    /// about even lose 0.02 to 0.03 nats in either world against that world's own.
    pub(crate) const fn weight(self) -> f64 {
        match self {
            Self::VehicleModel => 0.4,
            Self::IndependentSimulator => 0.5,
            Self::Published => 0.1,
        }
    }
}

/// The vehicle model's sound systems of one kind.
pub(super) struct VehicleModelKind {
    pub(super) refrigerant: Refrigerant,
    pub(super) expansion: Expansion,
    pub(super) compressor: Compressor,
    /// Coefficients of the terms of [`Weather`].
    pub(super) mean: [[f32; Weather::TERMS]; DIMENSIONS],
    /// The same of the logarithm of the standard deviation, of the first terms.
    pub(super) ln_deviation: [[f32; SPREAD_TERMS]; DIMENSIONS],
    /// Correlations of what the weathers of one vehicle have in common, and of what they do not; lower triangles, row by row, of which
    /// the sum has ones on its diagonal.
    pub(super) lasting: [f32; TRIANGLE],
    pub(super) passing: [f32; TRIANGLE],
}

/// The independent simulator's sound systems of one kind.
pub(super) struct IndependentKind {
    pub(super) refrigerant: Refrigerant,
    pub(super) expansion: Expansion,
    pub(super) compressor: Compressor,
    pub(super) mean: [[f32; INDEPENDENT_TERMS]; DIMENSIONS],
    /// Scale matrices between makes, and between vehicles and moments of one make, K2.
    pub(super) makes: [f32; TRIANGLE],
    pub(super) vehicles: [f32; TRIANGLE],
}

/// Entries of a lower triangle.
pub(crate) const TRIANGLE: usize = DIMENSIONS * (DIMENSIONS + 1) / 2;

/// What one source says of a sound system in some conditions.
pub(super) struct Said {
    pub(super) mean: Vector,
    pub(super) lasting: Matrix,
    pub(super) passing: Matrix,
}

/// Part of the independent simulator's spread between vehicles and moments of one make that lasts. Source: engineering judgement;
/// each of its vehicles was seen once.
const LASTING_PART: f64 = 0.5;

/// How far the sources disagree about the middle of a sound system, as standard deviations, K: low side, high side, vent,
/// superheat, subcooling (liquid line and condenser outlet together), discharge superheat. Source: random effects over the voices
/// of the published charts and over both simulators, to one digit.
const BETWEEN_SOURCES: [f64; 6] = [4.0, 4.5, 2.5, 4.5, 3.0, 7.5];

impl VehicleModelKind {
    /// The kind of a system.
    pub(super) fn of(system: &System) -> Option<&'static Self> {
        VEHICLE_MODEL.iter().find(|kind| {
            kind.refrigerant == system.refrigerant
                && kind.expansion == system.expansion
                && kind.compressor == system.compressor
        })
    }

    /// The systems that have one.
    pub(super) fn systems() -> impl Iterator<Item = System> {
        VEHICLE_MODEL
            .iter()
            .map(|kind| System::new(kind.refrigerant, kind.expansion, kind.compressor))
    }

    pub(super) fn mean(&self, weather: &Weather) -> Vector {
        sums(&self.mean, weather.terms())
    }

    pub(super) fn said(&self, facts: &Facts) -> Said {
        let weather = facts.weather();
        let (first, _) = weather.terms().split_at(SPREAD_TERMS);
        let deviation: Vector = core::array::from_fn(|i| libm::exp(sum(&self.ln_deviation[i], first)));
        let scaled = |triangle: &[f32; TRIANGLE]| {
            let mut matrix = unpacked(triangle);
            for (row, own) in matrix.iter_mut().zip(deviation) {
                for (entry, other) in row.iter_mut().zip(deviation) {
                    *entry *= own * other;
                }
            }
            matrix
        };
        Said {
            mean: self.mean(&weather),
            lasting: scaled(&self.lasting),
            passing: scaled(&self.passing),
        }
    }
}

impl IndependentKind {
    /// The kind of a system; `None` where this source does not speak of it.
    pub(super) fn of(system: &System) -> Option<&'static Self> {
        INDEPENDENT.iter().find(|kind| {
            kind.refrigerant == system.refrigerant
                && kind.expansion == system.expansion
                && kind.compressor == system.compressor
        })
    }

    /// What driving does, and how the clutch cycles, it does not say: `own` fills that in.
    pub(super) fn said(&self, facts: &Facts, own: (&VehicleModelKind, &Said)) -> Said {
        let (kind, own) = own;
        let mut mean = sums(&self.mean, &facts.of_independent());
        if facts.speed_m_s > 0.0 {
            let standing = kind.mean(
                &Facts {
                    speed_m_s: 0.0,
                    ..*facts
                }
                .weather(),
            );
            for ((mean, driving), standing) in mean.iter_mut().zip(own.mean).zip(standing) {
                *mean += driving - standing;
            }
        }
        let (mut lasting, vehicles) = (unpacked(&self.makes), unpacked(&self.vehicles));
        let mut passing = ZERO;
        for i in 0..DIMENSIONS {
            for j in 0..DIMENSIONS {
                lasting[i][j] += LASTING_PART * vehicles[i][j];
                passing[i][j] = (1.0 - LASTING_PART) * vehicles[i][j];
            }
        }
        let cycles = FeatureVector::CLUTCH_CYCLES;
        mean[cycles] = own.mean[cycles];
        lasting[cycles][cycles] = own.lasting[cycles][cycles];
        passing[cycles][cycles] = own.passing[cycles][cycles];
        Said { mean, lasting, passing }
    }
}

/// How far the published charts lie from the vehicle model's mean, K; `None` where none speak of the system.
pub(super) fn published_shift(system: &System, facts: &Facts) -> Option<Vector> {
    if system.refrigerant != Refrigerant::R134a && system.refrigerant != Refrigerant::R1234yf {
        return None;
    }
    let [one, ambient, ..] = facts.few();
    let [low, high] = match system.expansion {
        Expansion::Txv => PUBLISHED_TXV,
        Expansion::OrificeTube => PUBLISHED_ORIFICE_TUBE,
    };
    let at = |row: [f64; 2]| row[0] * one + row[1] * ambient;
    let (low, high) = (at(low), at(high));
    // The lines follow their side.
    let mut shift = [0.0; DIMENSIONS];
    shift[FeatureVector::LOW_SIDE] = low;
    shift[FeatureVector::SUCTION_LINE] = low;
    for line in [
        FeatureVector::HIGH_SIDE,
        FeatureVector::LIQUID_LINE,
        FeatureVector::CONDENSER_OUTLET,
        FeatureVector::DISCHARGE_LINE,
    ] {
        shift[line] = high;
    }
    Some(shift)
}

/// Low side and high side: at 30 °C, K, and per 10 K of ambient.
const PUBLISHED_TXV: [[f64; 2]; 2] = [[0.0, 0.0], [6.0, 0.0]];
const PUBLISHED_ORIFICE_TUBE: [[f64; 2]; 2] = [[0.0, 0.0], [6.0, 0.0]];

/// Part of that variance that is left in each component where several sources are mixed, and the factor on it where one stands for all.
/// Source: loss on makes that were left out: 0.1 to 0.75 alike where several are mixed, of which a large one
/// keeps charts of single makers inside the bands, and 1 to 1.25 where one stands alone.
pub(super) const BETWEEN_SEVERAL: f64 = 0.6;
pub(super) const BETWEEN_ONE: f64 = 1.15;

/// The scale matrix of the disagreement between sources, K2: what moves a side moves the lines that follow it.
pub(super) fn between_sources(share: f64) -> Matrix {
    const F: [usize; 6] = [
        FeatureVector::LOW_SIDE,
        FeatureVector::HIGH_SIDE,
        FeatureVector::VENT,
        FeatureVector::SUCTION_LINE,
        FeatureVector::LIQUID_LINE,
        FeatureVector::DISCHARGE_LINE,
    ];
    let mut matrix = ZERO;
    let mut along = |moved: &[usize], deviation: f64| {
        for i in moved {
            for j in moved {
                matrix[*i][*j] += share * deviation * deviation;
            }
        }
    };
    let outlet = FeatureVector::CONDENSER_OUTLET;
    let [low, high, vent, superheat, subcooling, discharge] = BETWEEN_SOURCES;
    along(&[F[0], F[3]], low);
    along(&[F[1], F[4], outlet, F[5]], high);
    along(&[F[2]], vent);
    along(&[F[3]], superheat);
    along(&[F[4], outlet], subcooling);
    along(&[F[5]], discharge);
    matrix
}

/// Adds what a condition in doubt does to the passing spread: half the difference of the means at its ends is one standard
/// deviation.
pub(super) fn add_doubt(passing: &mut Matrix, doubt: &Doubt, mean: &dyn Fn(&Facts) -> Vector) {
    let (low, high) = (mean(&doubt.low), mean(&doubt.high));
    let half: Vector = core::array::from_fn(|i| 0.5 * (high[i] - low[i]));
    for (row, one) in passing.iter_mut().zip(half) {
        for (entry, other) in row.iter_mut().zip(half) {
            *entry += one * other;
        }
    }
}

/// Both triangles of a matrix from its lower one, row by row.
pub(crate) fn unpacked(triangle: &[f32; TRIANGLE]) -> Matrix {
    let mut matrix = ZERO;
    let mut entries = triangle.iter();
    for i in 0..DIMENSIONS {
        for j in 0..=i {
            let entry = entries.next().map_or(0.0, |entry| f64::from(*entry));
            matrix[i][j] = entry;
            matrix[j][i] = entry;
        }
    }
    matrix
}

fn sums<const N: usize>(rows: &[[f32; N]; DIMENSIONS], terms: &[f64]) -> Vector {
    core::array::from_fn(|i| sum(&rows[i], terms))
}

/// In four strands, which a machine can add side by side.
fn sum(coefficients: &[f32], terms: &[f64]) -> f64 {
    let mut strands = [0.0; 4];
    for (coefficients, terms) in coefficients.chunks(4).zip(terms.chunks(4)) {
        for ((strand, coefficient), term) in strands.iter_mut().zip(coefficients).zip(terms) {
            *strand += f64::from(*coefficient) * term;
        }
    }
    (strands[0] + strands[1]) + (strands[2] + strands[3])
}
