//! What each source says of a sound system of one kind: mean, lasting and passing spread.

use super::atlas_weather::AtlasWeather;
use super::sound_table::{INDEPENDENT, VEHICLE_MODEL};
use super::weather::{Doubt, Facts, SPREAD_TERMS, Weather};
use crate::circuit::FeatureVector;
use crate::names::{Compressor, Expansion, Refrigerant};
use crate::numerics::multivariate_t::{DIMENSIONS, Symmetric, TRIANGLE, Vector};
use crate::vehicle::System;

/// Who says what a sound system and a fault look like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// The vehicle model of this crate, over its makes.
    VehicleModel,
    /// A simulator that is independent of it.
    IndependentSimulator,
    /// Published charts, and the fault tables of the trade.
    Published,
}

/// How many sources there are.
pub(crate) const SOURCES: usize = 3;

impl Source {
    /// All of them, in the order of their places.
    pub(crate) const ALL: [Self; SOURCES] = [Self::VehicleModel, Self::IndependentSimulator, Self::Published];

    /// Weight where all three sources cover the system. Source: engineering judgement, after the log loss of a prototype of
    /// this mixture on a third simulator.
    pub(crate) const fn weight(self) -> f64 {
        match self {
            Self::VehicleModel => 0.25,
            Self::IndependentSimulator => 0.6,
            Self::Published => 0.15,
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
    /// Correlations of the part that lasts in one vehicle over all weather, and of the part that does not; lower triangles, row
    /// by row, whose sum has ones on its diagonal.
    pub(super) lasting: [f32; TRIANGLE],
    pub(super) passing: [f32; TRIANGLE],
}

/// The independent simulator's sound systems of one kind.
pub(super) struct IndependentKind {
    pub(super) refrigerant: Refrigerant,
    pub(super) expansion: Expansion,
    pub(super) compressor: Compressor,
    pub(super) mean: [[f32; AtlasWeather::TERMS]; DIMENSIONS],
    /// Scale matrices between makes, and between vehicles and moments of one make, K2.
    pub(super) makes: [f32; TRIANGLE],
    pub(super) vehicles: [f32; TRIANGLE],
}

/// What one source says of a sound system in some conditions.
pub(super) struct Said {
    pub(super) mean: Vector,
    pub(super) lasting: Symmetric,
    pub(super) passing: Symmetric,
}

/// Part of the independent simulator's spread between vehicles and moments of one make that lasts. Source: engineering judgement;
/// each of its vehicles was seen once.
const LASTING_PART: f64 = 0.5;

/// Standard deviation between sources that is left in each component of a mixture, K: low side, high side, vent, superheat,
/// subcooling (liquid line and condenser outlet together), discharge superheat. Source: the coverage of published voices for the
/// low side, log loss on building makes of the independent simulator and facts of the trade for the rest.
const BETWEEN_SOURCES: [f64; 6] = [2.7, 2.3, 1.9, 2.6, 1.8, 4.0];

/// Factor on that variance where there is only one source. Source: log loss on makes that were left out of the fit: 16 to 25 K2
/// for a side do equally well.
const BETWEEN_ONE: f64 = 3.3;

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
        Said {
            mean: self.mean(&weather),
            lasting: unpacked(&self.lasting).scaled(&deviation),
            passing: unpacked(&self.passing).scaled(&deviation),
        }
    }
}

impl IndependentKind {
    /// The kind of a system; `None` where this source does not cover it.
    pub(super) fn of(system: &System) -> Option<&'static Self> {
        INDEPENDENT.iter().find(|kind| {
            kind.refrigerant == system.refrigerant
                && kind.expansion == system.expansion
                && kind.compressor == system.compressor
        })
    }

    /// What this source says; the effect of driving and the cycles of the clutch, which it lacks, are taken from `own`.
    pub(super) fn said(&self, facts: &Facts, own: (&VehicleModelKind, &Said)) -> Said {
        let (kind, own) = own;
        let mut mean = sums(&self.mean, &facts.of_atlas().terms());
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
        let vehicles = unpacked(&self.vehicles);
        let part = |part: f64| Symmetric(vehicles.0.map(|entry| part * entry));
        let mut lasting = unpacked(&self.makes).plus(&part(LASTING_PART));
        let mut passing = part(1.0 - LASTING_PART);
        let cycles = FeatureVector::CLUTCH_CYCLES;
        mean[cycles] = own.mean[cycles];
        *lasting.at_mut(cycles, cycles) = own.lasting.at(cycles, cycles);
        *passing.at_mut(cycles, cycles) = own.passing.at(cycles, cycles);
        Said { mean, lasting, passing }
    }
}

/// What the published charts say of both sides, K.
pub(super) struct Charts {
    /// How far their mean lies from that of the vehicle model.
    pub(super) mean: Vector,
    /// By how much they move the mean of a simulator.
    pub(super) pull: Vector,
}

impl Charts {
    pub(super) fn of(system: &System, facts: &Facts) -> Option<Self> {
        if system.refrigerant != Refrigerant::R134a && system.refrigerant != Refrigerant::R1234yf {
            return None;
        }
        let warm = f64::clamp((facts.ambient_k - COLDEST_K) / (COLDEST_CHART_K - COLDEST_K), 0.0, 1.0);
        let [low, high] = match system.expansion {
            Expansion::Txv => CHARTS_TXV,
            Expansion::OrificeTube => CHARTS_ORIFICE_TUBE,
        };
        Some(Self {
            mean: along_sides(warm * low, high),
            pull: along_sides(warm * PULL_K, PULL_K),
        })
    }
}

/// How far the mean over the voices of `tests/data/sound_voices.csv` lies from the vehicle model: low side and high side, K. The standard
/// error is 2 K; the voices differ by 5 K.
const CHARTS_TXV: [f64; 2] = [2.0, 5.0];
const CHARTS_ORIFICE_TUBE: [f64; 2] = [2.0, 1.0];

/// By how much the charts move a simulator's mean of either side, K. Both simulators lie about 2 K below the mean over the
/// voices; half of that is corrected, which is the estimate with a prior as wide as the standard error.
const PULL_K: f64 = 1.0;
/// The coldest chart is of 15.6 °C. Below it they move the low side less, and not at all from 10 °C down, where it is near the vent
/// already. Engineering judgement.
const COLDEST_CHART_K: f64 = 288.15;
const COLDEST_K: f64 = 283.15;

/// The shift of both sides, and of the lines that follow each.
fn along_sides(low: f64, high: f64) -> Vector {
    let mut shift = [0.0; DIMENSIONS];
    for line in [FeatureVector::LOW_SIDE, FeatureVector::SUCTION_LINE] {
        shift[line] = low;
    }
    for line in [
        FeatureVector::HIGH_SIDE,
        FeatureVector::LIQUID_LINE,
        FeatureVector::CONDENSER_OUTLET,
        FeatureVector::DISCHARGE_LINE,
    ] {
        shift[line] = high;
    }
    shift
}

/// The scale matrix of the disagreement between sources, K2: what moves a side moves the lines that follow it.
pub(super) fn between_sources(alone: bool) -> Symmetric {
    const F: [usize; 6] = [
        FeatureVector::LOW_SIDE,
        FeatureVector::HIGH_SIDE,
        FeatureVector::VENT,
        FeatureVector::SUCTION_LINE,
        FeatureVector::LIQUID_LINE,
        FeatureVector::DISCHARGE_LINE,
    ];
    let factor = if alone { BETWEEN_ONE } else { 1.0 };
    let mut matrix = Symmetric::ZERO;
    let mut along = |moved: &[usize], deviation: f64| {
        for i in moved {
            for j in moved.iter().filter(|j| *j <= i) {
                *matrix.at_mut(*i, *j) += factor * deviation * deviation;
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

/// Adds the effect of an uncertain condition to the passing spread: half the difference of the means at its ends is one
/// standard deviation.
pub(super) fn add_doubt(passing: &mut Symmetric, doubt: &Doubt, mean: &dyn Fn(&Facts) -> Vector) {
    let (low, high) = (mean(&doubt.low), mean(&doubt.high));
    passing.add_along(&core::array::from_fn(|i| 0.5 * (high[i] - low[i])));
}

/// A matrix from its lower triangle, row by row.
fn unpacked(triangle: &[f32; TRIANGLE]) -> Symmetric {
    Symmetric(triangle.map(f64::from))
}

fn sums<const N: usize>(rows: &[[f32; N]; DIMENSIONS], terms: &[f64]) -> Vector {
    core::array::from_fn(|i| sum(&rows[i], terms))
}

/// The sum in four strands, so that a processor can add them side by side.
fn sum(coefficients: &[f32], terms: &[f64]) -> f64 {
    let mut strands = [0.0; 4];
    for (coefficients, terms) in coefficients.chunks(4).zip(terms.chunks(4)) {
        for ((strand, coefficient), term) in strands.iter_mut().zip(coefficients).zip(terms) {
            *strand += f64::from(*coefficient) * term;
        }
    }
    (strands[0] + strands[1]) + (strands[2] + strands[3])
}
