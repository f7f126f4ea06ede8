//! The coordinates in which vehicles are compared: their conditions, and the figures that their readings give.

use super::case::Case;
use super::faults::bit;
use super::features::{self, FEATURES, Features, place};
use crate::air::MoistAir;
use crate::circuit::Estimate;
use crate::error::Error;
use crate::names::{AirSource, Compressor, Expansion, Feature, Refrigerant};
use crate::units::{STANDARD_PRESSURE_PA, in_kelvins};
use crate::vehicle::System;

/// What is known of the conditions: as many coordinates.
pub(super) const CONDITIONS: usize = 9;
/// Figures of a running system: all but the pressure at rest.
pub(super) const FIGURES: usize = FEATURES - 1;

/// A case as the fitted likelihoods see it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coordinates {
    /// Ambient temperature, moisture of the air, thin air, engine speed, ram air, fresh air, blower, refrigerant (with R-744:
    /// belt or motor) and time since the start, each scaled to about -2 to 2; `None` for what is not known.
    pub conditions: [Option<f64>; CONDITIONS],
    /// The figures in the order of [`Feature`], temperatures of both sides and of the vent above the ambient, K, cycles as
    /// ln(1 + engagements per minute); `None` for what was not read.
    pub figures: [Option<f64>; FIGURES],
}

impl Coordinates {
    /// The coordinates of a running system.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for readings and conditions that cannot be; `NotAvailable` for a system of
    /// which no source speaks.
    ///
    /// ```
    /// use coldloop::circuit::{Reading, Readings};
    /// use coldloop::diagnosis::{Case, Coordinates};
    /// use coldloop::units::{Surroundings, celsius};
    /// use coldloop::vehicle::{Conditions, System};
    /// use coldloop::{Compressor, Expansion, Feature, Refrigerant, Thermometer};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let readings = Readings {
    ///     vent: Some(Reading::temperature(celsius(8.0), Thermometer::PocketDigital)),
    ///     ..Readings::default()
    /// };
    /// let case = Case::new(system, Conditions::new(celsius(29.0), Surroundings::SEA_LEVEL), readings);
    /// let vent = Feature::ALL.iter().position(|f| *f == Feature::Vent).unwrap();
    /// assert!((Coordinates::of(&case)?.figures[vent].unwrap() + 21.0).abs() < 1e-9);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn of(case: &Case) -> Result<Self, Error> {
        case.check()?;
        super::derived(case)?;
        let healthy = super::healthy(case)?;
        let ambient_k = in_kelvins(case.conditions.ambient);
        let figures = features::running(case, &healthy, None).map_or([None; FIGURES], |features| {
            figures(&features, ambient_k).map(|f| f.map(|f| f.value))
        });
        Ok(Self {
            conditions: conditions(case)?,
            figures,
        })
    }
}

/// The figures, temperatures counted from the ambient where they stand for themselves.
pub(super) fn figures(features: &Features, ambient_k: f64) -> [Option<Estimate>; FIGURES] {
    core::array::from_fn(|i| {
        features.measured[i].map(|measured| Estimate {
            value: measured.value - origin_k(Feature::ALL[i], ambient_k),
            ..measured
        })
    })
}

/// From where a figure counts.
pub(super) fn origin_k(feature: Feature, ambient_k: f64) -> f64 {
    match feature {
        Feature::LowSide | Feature::HighSide | Feature::Vent => ambient_k,
        Feature::Superheat
        | Feature::Subcooling
        | Feature::DischargeSuperheat
        | Feature::ClutchCycles
        | Feature::RestPressure => 0.0,
    }
}

/// What is known of the conditions.
pub(super) fn conditions(case: &Case) -> Result<[Option<f64>; CONDITIONS], Error> {
    let c = &case.conditions;
    let ambient_k = in_kelvins(c.ambient);
    let air_pa = c.surroundings.pressure().pa();
    let water =
        |relative: f64| MoistAir::from_relative_humidity(ambient_k, air_pa, relative).map(MoistAir::humidity_ratio);
    let moisture = match c.relative_humidity {
        Some(relative) => Some((water(relative)? - water(0.5)?) / 0.006),
        None => None,
    };
    // The speed of an electric compressor is its control's own; what is told of it says little.
    let belt = case.system.compressor != Compressor::Electric;
    Ok([
        Some((ambient_k - 302.0) / 8.0),
        moisture,
        Some((STANDARD_PRESSURE_PA - air_pa) / 8_000.0 - 1.5),
        c.driving_hz(case.system.compressor)
            .filter(|_| belt)
            .map(|hz| (hz - 26.0) / 8.5),
        c.vehicle_speed_m_s.map(|v| 2.0 - 4.0 * libm::exp(-v / 8.0)),
        c.air_source.map(|source| match source {
            AirSource::Fresh => 1.0,
            AirSource::Recirculated => -1.0,
        }),
        c.blower.map(|step| (step - 0.75) / 0.15),
        if is_carbon_dioxide(case.system.refrigerant) {
            Some(if belt { -1.0 } else { 1.0 })
        } else {
            refrigerant(case.system.refrigerant)
        },
        c.running_s.map(|s| 10.0 * libm::exp(-f64::max(s, 300.0) / 300.0) - 1.0),
    ])
}

/// The place of the clouds of a system in their table: those of R-744 behind the others, one for each expansion device.
pub(super) fn kind(system: &System) -> usize {
    let bit = bit(system).trailing_zeros() as usize;
    if is_carbon_dioxide(system.refrigerant) {
        KINDS + bit / COMPRESSORS
    } else {
        bit
    }
}

/// Kinds of compressor, and of system: expansion device by compressor.
const COMPRESSORS: usize = Compressor::ALL.len();
const KINDS: usize = Expansion::ALL.len() * COMPRESSORS;

/// The conditions of the vehicles of the fit: 13 to 43 °C, any moisture, from sea level to 2,500 m, 750 to 2,520 rpm, standing
/// or driving, any air, half the blower and more, any refrigerant, five minutes after the start and more.
const OF_FIT: [(f64, f64); CONDITIONS] = [
    (-2.01, 1.81),
    ANY,
    (-1.51, 1.84),
    (-1.59, 1.89),
    ANY,
    ANY,
    (-1.67, 1.67),
    ANY,
    ANY,
];
const ANY: (f64, f64) = (f64::NEG_INFINITY, f64::INFINITY);

/// How far each condition lies beyond those of the fit.
pub(super) fn beyond_fit(conditions: &[Option<f64>; CONDITIONS]) -> [f64; CONDITIONS] {
    core::array::from_fn(|j| {
        let (low, high) = OF_FIT[j];
        conditions[j].map_or(0.0, |x| f64::max(low - x, x - high).max(0.0))
    })
}

/// The refrigerants of the fit, and where they stand in it.
const FITTED: [(Refrigerant, f64); 2] = [(Refrigerant::R134a, 1.0), (Refrigerant::R1234yf, -1.0)];

/// Whether the fit has seen this refrigerant.
pub(super) fn is_fitted(refrigerant: Refrigerant) -> bool {
    is_carbon_dioxide(refrigerant) || FITTED.into_iter().any(|(of_fit, _)| of_fit == refrigerant)
}

/// Whether it has clouds to itself, and no tables of the trade: above the critical pressure nothing condenses.
pub(super) fn is_carbon_dioxide(refrigerant: Refrigerant) -> bool {
    refrigerant == Refrigerant::R744
}

/// Those that stand where R-134a does, by saturation temperatures: R-152a boils and condenses at nearly its pressures, and
/// systems made for the two blends differ from its own by little else.
const BESIDE: [Refrigerant; 3] = [Refrigerant::R152a, Refrigerant::R407C, Refrigerant::R513A];

/// Which of the two refrigerants of the fit it is or stands beside; any other is somewhere about them.
fn refrigerant(refrigerant: Refrigerant) -> Option<f64> {
    let refrigerant = if BESIDE.contains(&refrigerant) {
        Refrigerant::R134a
    } else {
        refrigerant
    };
    let found = FITTED.into_iter().find(|(of_fit, _)| *of_fit == refrigerant);
    found.map(|(_, coordinate)| coordinate)
}

/// The place of a figure, where it has one among those of a running system.
pub(super) fn running_place(feature: Feature) -> Option<usize> {
    Some(place(feature)).filter(|at| *at < FIGURES)
}
