//! Where one vehicle stands beside those whose faults were simulated: by its refrigerant, and by its own sound readings.

use super::case::Case;
use super::coordinates::{self, FIGURES};
use super::features::{place, sound};
use crate::error::Error;
use crate::expected::{Baseline, Fleet, FleetBands, Healthy, Spread};
use crate::names::{Feature, Refrigerant};
use crate::numerics::sqrt;
use crate::vehicle::System;

/// The refrigerant of the fit whose clouds speak for others.
const SPOKESMAN: Refrigerant = Refrigerant::R134a;

/// Where a vehicle stands beside those of the fit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Own {
    /// Above where these stand while they are sound.
    pub(super) above: [f64; FIGURES],
    pub(super) apart: [Apart; FIGURES],
}

/// What sets a vehicle apart from those of the fit in one figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Apart {
    /// Where it stands above others of its kind while it is sound.
    moved: f64,
    /// Variance between sound vehicles of its kind in the fit, and how many times that it is for vehicles with its refrigerant.
    variance: f64,
    times: f64,
}

impl Apart {
    /// Nothing is known but the kind of vehicle.
    pub(super) const NOT: Self = Self {
        moved: 0.0,
        variance: 0.0,
        times: 1.0,
    };

    /// How many times a variance is as large, of which the spread between vehicles is a part, or all.
    pub(super) fn times(&self, variance: f64) -> f64 {
        1.0 + (self.times - 1.0) * f64::min(self.variance / variance, 1.0)
    }

    /// What vehicles in general show, as this one does.
    pub(super) fn as_shown(&self, all: Spread) -> Spread {
        let wider = sqrt(self.times);
        Spread {
            median: all.median + self.moved,
            down: all.down * wider,
            up: all.up * wider,
        }
    }
}

impl Own {
    /// This vehicle, of which the trade has `healthy` if it is sound.
    ///
    /// Errors: those of [`Healthy::of`].
    pub(super) fn of(case: &Case, healthy: &Healthy) -> Result<Self, Error> {
        let apart = apart(case);
        let mut above = beside(case, healthy)?;
        for (above, apart) in above.iter_mut().zip(apart) {
            *above += apart.moved;
        }
        Ok(Self { above, apart })
    }
}

/// What sets this vehicle apart; nothing where its own table speaks of the figure, or the bands of the fleet end.
fn apart(case: &Case) -> [Apart; FIGURES] {
    let mut apart = match case.own_readings.filter(|own| own.readings() > 0) {
        Some(readings) => by_readings(case, &readings),
        None => by_refrigerant(case),
    };
    if case.own_table.is_some() {
        (apart[place(Feature::LowSide)], apart[place(Feature::HighSide)]) = (Apart::NOT, Apart::NOT);
    }
    apart
}

/// A vehicle stands where its own sound readings have it. It is not taken for surer than others: of 798 vehicles judged so on
/// 2026-11-26 the loss fell from 1.90 to 1.86 nats, and rose to 1.94 when what these readings leave of the spread between
/// vehicles counted as well, for the parts of a cloud are narrower than all vehicles already.
fn by_readings(case: &Case, readings: &Baseline) -> [Apart; FIGURES] {
    match (readings.bands(&case.conditions), bands(case, &case.system)) {
        (Ok(own), Ok(all)) => each(&own, &all, |own, all| Apart {
            moved: own.median - all.median,
            ..Apart::NOT
        }),
        (Err(_), _) | (_, Err(_)) => [Apart::NOT; FIGURES],
    }
}

/// Vehicles with a refrigerant that no cloud has seen may stray farther than those of the fit: with R-152a the discharge line
/// does.
fn by_refrigerant(case: &Case) -> [Apart; FIGURES] {
    if coordinates::is_fitted(case.system.refrigerant) {
        return [Apart::NOT; FIGURES];
    }
    match (bands(case, &case.system), bands(case, &spokesman(case))) {
        (Ok(own), Ok(other)) => each(&own, &other, |own, other| {
            let (own, other) = (0.5 * (own.down + own.up), 0.5 * (other.down + other.up));
            Apart {
                moved: 0.0,
                variance: other * other,
                times: f64::max(own * own / (other * other), 1.0),
            }
        }),
        (Err(_), _) | (_, Err(_)) => [Apart::NOT; FIGURES],
    }
}

/// What sets a vehicle apart in each figure that both bands have.
fn each(own: &FleetBands, other: &FleetBands, of: impl Fn(Spread, Spread) -> Apart) -> [Apart; FIGURES] {
    let mut apart = [Apart::NOT; FIGURES];
    let both = sound(&own.healthy).into_iter().zip(sound(&other.healthy));
    for (apart, (own, other)) in apart.iter_mut().zip(both) {
        if let (Some(own), Some(other)) = (own, other) {
            *apart = of(own, other);
        }
    }
    apart
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
