//! Where a vehicle stands, as the likelihoods see it.

use super::case::Case;
use super::cloud::Cloud;
use super::coordinates;
use super::density::TwoPiece;
use super::faults::{Effect, FaultRow, Toward, bit};
use super::features::{self, FEATURES, place};
use super::own::Own;
use crate::error::Error;
use crate::expected::{Healthy, Spread, unsettled};
use crate::names::{AirSource, Feature};
use crate::units::in_kelvins;

/// The size of an effect differs between vehicles by this share of itself. Source: engineering judgement.
const EFFECT_SPREAD: f64 = 0.3;

/// Parts of a system that does not pump, and the air of a vehicle, differ in temperature by this much, K. Source:
/// engineering judgement.
const END_SPREAD_K: f64 = 1.8;

/// Standard deviation of each figure when the cause is none of the list, in its own unit. Source: engineering
/// judgement: about as far as a figure can stray.
const ANYTHING: [f64; FEATURES] = [18.0, 20.0, 14.0, 14.0, 12.0, 20.0, 1.0, 12.0];

/// Where a vehicle stands, as the likelihoods see it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scene {
    /// The bit of the system in the masks of the tables.
    pub(super) bit: u8,
    ambient_k: f64,
    inlet_k: f64,
    /// What a sound system shows; `None` for a figure that cannot be judged here.
    pub(super) healthy: [Option<Spread>; FEATURES],
    /// The simulated vehicles of its kind; `None` at rest.
    pub(super) cloud: Option<Cloud>,
    /// Whether the tables of the trade speak of it.
    pub(super) by_tables: bool,
    /// Whether there may be a sight glass.
    pub(super) sight_glass: bool,
}

impl Scene {
    /// A running system.
    ///
    /// Errors: those of moist air for a humidity that cannot be.
    pub(super) fn running(case: &Case, healthy: &Healthy) -> Result<Self, Error> {
        let own = Own::of(case, healthy)?;
        let mut scene = Self::banded(case, healthy);
        for (spread, apart) in scene.healthy.iter_mut().zip(&own.apart) {
            *spread = spread.map(|all| apart.as_shown(all));
        }
        let (pressures_k, to_come) = unsettled(&case.conditions);
        let vent_k = to_come * f64::max(scene.ambient_k - healthy.vent.median, 0.0);
        let by_tables = !coordinates::is_carbon_dioxide(case.system.refrigerant);
        let own_table = case.own_table.is_some();
        let trade = core::array::from_fn(|i| {
            let origin_k = scene.origin_k(Feature::ALL[i]);
            let median = scene.healthy[i].map(|healthy| healthy.median - origin_k);
            median.filter(|_| by_tables || own_table)
        });
        scene.by_tables = by_tables;
        scene.cloud = Cloud::of(
            coordinates::kind(&case.system),
            coordinates::conditions(case)?,
            scene.ambient_k,
            [pressures_k, pressures_k, vent_k],
            (trade, own_table, &own),
        );
        Ok(scene)
    }

    /// A running system beside the bands of sound ones alone.
    fn banded(case: &Case, healthy: &Healthy) -> Self {
        Self::of(case, features::sound(healthy))
    }

    /// A system of which no figure can be judged.
    pub(super) fn blank(case: &Case) -> Self {
        Self::of(case, [None; FEATURES])
    }

    /// A system at rest.
    pub(super) fn resting(case: &Case) -> Self {
        let mut spreads = [None; FEATURES];
        spreads[place(Feature::RestPressure)] = Some(Healthy::at_rest());
        Self::of(case, spreads)
    }

    fn of(case: &Case, healthy: [Option<Spread>; FEATURES]) -> Self {
        let ambient_k = in_kelvins(case.conditions.ambient);
        let cabin_k = case.readings.cabin.map(|reading| in_kelvins(reading.value));
        let inlet_k = match (case.conditions.air_source, cabin_k) {
            (Some(AirSource::Recirculated), Some(cabin_k)) => cabin_k,
            (Some(AirSource::Recirculated), None) | (Some(AirSource::Fresh) | None, _) => ambient_k,
        };
        Self {
            bit: bit(&case.system),
            ambient_k,
            inlet_k,
            healthy,
            cloud: None,
            by_tables: true,
            sight_glass: case.system.may_have_sight_glass(),
        }
    }

    /// Where a figure of the clouds counts from.
    pub(super) fn origin_k(&self, feature: Feature) -> f64 {
        coordinates::origin_k(feature, self.ambient_k)
    }

    /// Whether a figure means nothing in this system or state.
    pub(super) fn cannot_judge(&self, feature: Feature) -> bool {
        self.healthy[place(feature)].is_none()
    }

    /// The limits of a sound system, `quantile` standard deviations below and above the median.
    pub(super) fn limits(&self, feature: Feature, quantile: f64) -> (f64, f64) {
        self.healthy[place(feature)].map_or((0.0, 0.0), |healthy| (healthy.at(-quantile), healthy.at(quantile)))
    }

    /// How an effect moves a figure, at a severity and with the temperature at rest so much above its median.
    pub(super) fn motion(&self, effect: &Effect, (severity, rest_k): (usize, f64)) -> Motion {
        let size = effect.size[severity];
        match effect.toward {
            Toward::Nothing => Motion {
                by: size,
                along: 0.0,
                to_k: 0.0,
                least_k: 0.0,
                left: 1.0,
                end: 0.0,
            },
            Toward::Rest(above_k) => Motion {
                by: 0.0,
                along: size,
                to_k: self.ambient_k + above_k + rest_k,
                least_k: f64::NEG_INFINITY,
                left: 1.0 - size,
                end: size * size * END_SPREAD_K * END_SPREAD_K,
            },
            Toward::Inlet => Motion {
                by: 0.0,
                along: size,
                to_k: self.inlet_k,
                least_k: LEAST_DIFFERENCE_K,
                left: 1.0 - f64::max(size, 0.0),
                end: size * size * END_SPREAD_K * END_SPREAD_K,
            },
        }
    }

    /// The effect of a fault on a figure, where there is one.
    pub(super) fn effect(&self, row: &'static FaultRow, feature: Feature) -> Option<&'static Effect> {
        row.effects
            .iter()
            .find(|effect| effect.feature == feature && effect.systems & self.bit != 0)
    }
}

/// How a figure moves: by so much, and along so much of the way to a temperature.
///
/// The size of an effect differs between vehicles. What goes all the way to rest, or to the air that enters, no longer
/// depends on the vehicle it comes from.
#[derive(Clone, Copy)]
pub(super) struct Motion {
    by: f64,
    along: f64,
    to_k: f64,
    /// The way is at least this long.
    least_k: f64,
    /// Share of the vehicle's own spread that is left, and the variance at the end of the way.
    left: f64,
    end: f64,
}

impl Motion {
    /// To be replaced; all its bits are zero.
    pub(super) const NONE: Self = Self {
        by: 0.0,
        along: 0.0,
        to_k: 0.0,
        least_k: 0.0,
        left: 0.0,
        end: 0.0,
    };

    /// A figure once it has moved.
    #[inline(always)]
    pub(super) fn of(self, healthy: TwoPiece) -> TwoPiece {
        let way_k = self.to_k - healthy.median;
        let way_k = if way_k > self.least_k { way_k } else { self.least_k };
        let shift = self.by + self.along * way_k;
        let spread = EFFECT_SPREAD * shift * self.left;
        let added = spread * spread + self.end;
        let left = self.left * self.left;
        TwoPiece {
            median: healthy.median + shift,
            down: healthy.down * left + added,
            up: healthy.up * left + added,
        }
    }
}

/// Losing all capacity warms the vent by at least this much, K: the vent of a sound system is that much cooler than
/// its air even in mild weather.
const LEAST_DIFFERENCE_K: f64 = 5.0;

/// A sound system as an instrument shows it.
pub(super) fn about(healthy: Spread, uncertainty: f64) -> TwoPiece {
    TwoPiece::of(healthy).as_read(uncertainty)
}

/// A figure when the cause is none of the list.
pub(super) fn anything(figure: usize, healthy: Spread) -> TwoPiece {
    let variance = ANYTHING[figure] * ANYTHING[figure];
    TwoPiece {
        median: healthy.median,
        down: variance,
        up: variance,
    }
}
