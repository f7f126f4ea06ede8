//! Where one vehicle stands beside those whose faults were simulated: by its refrigerant, and by its own sound readings.

use super::case::Case;
use super::coordinates::{self, FIGURES};
use super::features::{place, sound};
use crate::error::Error;
use crate::expected::{Baseline, Fleet, FleetBands, Healthy, Spread};
use crate::names::{Feature, Refrigerant};
use crate::vehicle::System;

/// The refrigerant of the fit whose clouds speak for others.
const SPOKESMAN: Refrigerant = Refrigerant::R134a;

/// Where a vehicle stands beside those of the fit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Own {
    /// Above where these stand while they are sound.
    pub(super) above: [f64; FIGURES],
    pub(super) sharper: [Sharper; FIGURES],
}

/// What is left of the spread of a figure between vehicles, once this one is known by its own sound readings or its refrigerant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Sharper {
    /// Variance between sound vehicles.
    variance: f64,
    /// The part of it that is left; above one where vehicles with this refrigerant stray farther than those of the fit.
    left: f64,
    /// Where this vehicle stands above the others.
    moved: f64,
}

impl Sharper {
    /// Nothing is known but the kind of vehicle.
    pub(super) const NOT: Self = Self {
        variance: 0.0,
        left: 1.0,
        moved: 0.0,
    };

    fn of(own: Spread, all: Spread) -> Self {
        let spread = 0.5 * (all.down + all.up);
        let left = own.down / all.down;
        Self {
            variance: spread * spread,
            left: left * left,
            moved: own.median - all.median,
        }
    }

    /// The part of a variance that is left, of which the spread between vehicles is a part, or all.
    pub(super) fn left_of(&self, variance: f64) -> f64 {
        1.0 - (1.0 - self.left) * f64::min(self.variance / variance, 1.0)
    }

    /// What vehicles in general show, as this one does.
    pub(super) fn sharpened(&self, all: Spread) -> Spread {
        let left = libm::sqrt(self.left);
        Spread {
            median: all.median + self.moved,
            down: all.down * left,
            up: all.up * left,
        }
    }
}

impl Own {
    /// This vehicle, of which the trade has `healthy` if it is sound.
    ///
    /// Errors: those of [`Healthy::of`].
    pub(super) fn of(case: &Case, healthy: &Healthy) -> Result<Self, Error> {
        let sharper = sharper(case);
        let mut above = beside(case, healthy)?;
        for (above, sharper) in above.iter_mut().zip(sharper) {
            *above += sharper.moved;
        }
        Ok(Self { above, sharper })
    }
}

/// What is left of each spread: all of it where the vehicle's own table speaks of the figure.
fn sharper(case: &Case) -> [Sharper; FIGURES] {
    let mut sharper = match case.own_readings.filter(|own| own.readings() > 0) {
        Some(readings) => by_readings(case, &readings),
        None => farther(case),
    };
    if case.own_table.is_some() {
        (sharper[place(Feature::LowSide)], sharper[place(Feature::HighSide)]) = (Sharper::NOT, Sharper::NOT);
    }
    sharper
}

/// What the vehicle's own readings leave of each spread: all of it where the bands of the fleet end.
fn by_readings(case: &Case, readings: &Baseline) -> [Sharper; FIGURES] {
    match (readings.bands(&case.conditions), bands(case, &case.system)) {
        (Ok(own), Ok(all)) => each(&own, &all, Sharper::of),
        (Err(_), _) | (_, Err(_)) => [Sharper::NOT; FIGURES],
    }
}

/// Where vehicles with a refrigerant that no cloud has seen stray farther than those of the fit: R-152a by its discharge line.
fn farther(case: &Case) -> [Sharper; FIGURES] {
    if coordinates::is_fitted(case.system.refrigerant) {
        return [Sharper::NOT; FIGURES];
    }
    match (bands(case, &case.system), bands(case, &spokesman(case))) {
        (Ok(own), Ok(other)) => each(&own, &other, |own, other| {
            let times = f64::max((own.down + own.up) / (other.down + other.up), 1.0);
            Sharper {
                left: times * times,
                moved: 0.0,
                ..Sharper::of(own, other)
            }
        }),
        (Err(_), _) | (_, Err(_)) => [Sharper::NOT; FIGURES],
    }
}

/// What is left of each spread that both bands have.
fn each(own: &FleetBands, other: &FleetBands, left: impl Fn(Spread, Spread) -> Sharper) -> [Sharper; FIGURES] {
    let mut sharper = [Sharper::NOT; FIGURES];
    let both = sound(&own.healthy).into_iter().zip(sound(&other.healthy));
    for (sharper, (own, other)) in sharper.iter_mut().zip(both) {
        if let (Some(own), Some(other)) = (own, other) {
            *sharper = left(own, other);
        }
    }
    sharper
}

/// The same vehicle with the refrigerant that speaks for its own.
fn spokesman(case: &Case) -> System {
    System {
        refrigerant: SPOKESMAN,
        ..case.system
    }
}

/// The bands of sound vehicles of this kind here.
///
/// Errors: those of [`Fleet::of`] and [`Fleet::bands`].
fn bands(case: &Case, system: &System) -> Result<FleetBands, Error> {
    Fleet::of(system)?.bands(&case.conditions)
}

/// Where sound vehicles with a refrigerant that no cloud has seen stand, above where those of the fit do: by the bands of the
/// fleet where both have them, and by the figures of the trade otherwise. Clutch cycles count as alike.
///
/// Errors: those of [`Healthy::of`].
fn beside(case: &Case, healthy: &Healthy) -> Result<[f64; FIGURES], Error> {
    let mut above = [0.0; FIGURES];
    if coordinates::is_fitted(case.system.refrigerant) {
        return Ok(above);
    }
    let other = spokesman(case);
    let (own, other) = match (bands(case, &case.system), bands(case, &other)) {
        (Ok(own), Ok(other)) => (own.healthy, other.healthy),
        (Err(_), _) | (_, Err(_)) => (*healthy, Healthy::of(&other, &case.conditions)?),
    };
    for (above, (own, other)) in above.iter_mut().zip(sound(&own).into_iter().zip(sound(&other))) {
        if let (Some(own), Some(other)) = (own, other) {
            *above = own.median - other.median;
        }
    }
    above[place(Feature::ClutchCycles)] = 0.0;
    Ok(above)
}
