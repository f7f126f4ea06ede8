//! The distribution of each figure over sound vehicles, in the space in which it is natural.

use super::constants as c;
use super::low_side;
use super::spread::Spread;
use crate::air::MoistAir;
use crate::error::Error;
use crate::names::{AirSource, Compressor, ErrorKind, Expansion, Quantity, Refrigerant};
use crate::range::Range;
use crate::saturation::{self, pseudo_critical};
use crate::units::{STANDARD_PRESSURE_PA, Surroundings, in_kelvins};
use crate::vehicle::{Conditions, System};

/// Ambient temperatures of the published charts: 12.8 to 43.3 °C.
pub const AMBIENT_OF_SOURCES: Range = Range::new(Quantity::Temperature, c::AMBIENT_LOW_K, c::AMBIENT_HIGH_K);

/// Barometric pressures down to which the effect of thin air is trusted: about 4,200 m.
pub const BAROMETER_OF_SOURCES: Range = Range::new(Quantity::AbsolutePressure, c::BAROMETER_LOW_PA, 112_000.0);

/// What sound systems show in given conditions: one distribution per figure.
///
/// The pressures are given as saturation (dew) temperatures: there the spread between vehicles is the same for every
/// refrigerant and altitude.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Healthy {
    /// Saturation temperature of the low side, K.
    pub low_side: Spread,
    /// Saturation temperature of the high side, K.
    pub high_side: Spread,
    /// Air at the centre vent, K.
    pub vent: Spread,
    /// Superheat at the compressor, K.
    pub superheat: Spread,
    /// Subcooling in the liquid line, K.
    pub subcooling: Spread,
    /// Discharge line above the saturation temperature of the high side, K.
    pub discharge_superheat: Spread,
    /// ln(1 + clutch engagements per minute); `None` where no clutch cycles.
    pub clutch_cycles: Option<Spread>,
}

impl Healthy {
    /// The distributions for this system in these conditions.
    ///
    /// Source: published charts, approach temperatures and trade facts, each constant with its own, in
    /// `tables/bands/healthy.toml`.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for the conditions, the ambient against [`AMBIENT_OF_SOURCES`];
    /// `NotAvailable` for a refrigerant or a system of which no source speaks.
    pub fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        conditions.check()?;
        let site = Site::of(system, conditions)?;
        let discharge_k = c::DISCHARGE_SUPERHEAT_K
            .iter()
            .find(|(refrigerant, _)| *refrigerant == system.refrigerant)
            .map(|(_, superheat_k)| *superheat_k)
            .ok_or(Error::of(ErrorKind::NotAvailable, Quantity::GaugePressure))?;
        let superheat = match system.expansion {
            Expansion::Txv => spread(c::SUPERHEAT_TXV_K, c::SUPERHEAT_TXV_SPREAD_K, c::SUPERHEAT_TXV_SPREAD_K),
            Expansion::OrificeTube => spread(
                c::SUPERHEAT_ORIFICE_K,
                c::SUPERHEAT_ORIFICE_DOWN_K,
                c::SUPERHEAT_ORIFICE_UP_K,
            ),
        };
        let of_range = |spread: Spread| mid_range(system.refrigerant, spread);
        Ok(Self {
            low_side: of_range(site.low_side(system, conditions)?)?,
            high_side: of_range(site.high_side(conditions))?,
            vent: site.vent(conditions),
            superheat,
            subcooling: spread(c::SUBCOOLING_K, c::SUBCOOLING_SPREAD_K, c::SUBCOOLING_SPREAD_K),
            discharge_superheat: spread(discharge_k, c::DISCHARGE_SUPERHEAT_DOWN_K, c::DISCHARGE_SUPERHEAT_UP_K),
            clutch_cycles: site.clutch_cycles(system),
        })
    }

    /// The low side of a clutch that was seen to cycle: the needle swings between the pressure of a running compressor
    /// and the one at which the clutch lets go, and may have been read anywhere between.
    pub fn with_cycling_clutch(mut self) -> Self {
        let swing_k = (self.low_side.median - c::CUT_OUT_K) / super::spread::QUANTILE_95;
        self.low_side.down = f64::max(self.low_side.down, swing_k);
        self
    }

    /// Ends the 95 % band of the high side at the pressure, `limit_pa` above the air, at which its compressor is stopped; not
    /// below the median.
    ///
    /// Errors: those of the saturation line.
    pub(crate) fn end_high_side(
        &mut self,
        refrigerant: Refrigerant,
        air: Surroundings,
        limit_pa: f64,
    ) -> Result<(), Error> {
        let limit_k = pseudo_critical::along_k(refrigerant, air.pressure().pa() + limit_pa)?;
        let room_k = f64::max(limit_k - self.high_side.median, 0.0) / super::spread::QUANTILE_95;
        self.high_side.up = f64::min(self.high_side.up, room_k);
        Ok(())
    }

    /// Saturation temperature of a system at rest above the ambient, K.
    pub const fn at_rest() -> Spread {
        spread(c::REST_K, c::REST_DOWN_K, c::REST_UP_K)
    }
}

/// Whether a variable compressor may be out of stroke here, which is no fault.
pub(crate) fn stroke_limit(system: &System, conditions: &Conditions) -> bool {
    let variable = matches!(
        system.compressor,
        Compressor::VariableInternal | Compressor::VariableExternal
    );
    let slow = conditions
        .driving_hz(system.compressor)
        .is_none_or(|hz| hz < c::STROKE_LIMIT_ENGINE_SPEED_HZ);
    variable && slow && in_kelvins(conditions.ambient) > c::STROKE_LIMIT_AMBIENT_K
}

/// Whether the system had run long enough, when that was told.
pub(crate) fn settled(conditions: &Conditions) -> Option<bool> {
    conditions.running_s.map(|s| s >= c::SETTLED_S)
}

/// What has not settled: spread of the pressures, K, and the part of the way of the vent that is still to come beyond
/// five minutes, from when on the vehicle model follows the cabin.
pub(crate) fn unsettled(conditions: &Conditions) -> (f64, f64) {
    let left = |time_s: f64| conditions.running_s.map_or(0.0, |s| libm::exp(-s / time_s));
    let followed = libm::exp(-300.0 / c::SETTLE_VENT_S);
    (
        c::UNSETTLED_PRESSURES_K * left(c::SETTLE_PRESSURES_S),
        f64::max(left(c::SETTLE_VENT_S) - followed, 0.0),
    )
}

/// A saturation temperature of the sources, which speak of pure refrigerants, as dew temperature of a blend: an exchanger
/// works at the middle of the range of temperatures, which lies half the glide below dew. Engineering judgement.
///
/// Errors: those of the saturation line.
fn mid_range(refrigerant: Refrigerant, spread: Spread) -> Result<Spread, Error> {
    if saturation::blend(refrigerant).is_none() {
        return Ok(spread);
    }
    let p_pa = saturation::dew_pressure_pa(refrigerant, spread.median)?;
    Ok(Spread {
        median: spread.median + 0.5 * saturation::glide_k(refrigerant, p_pa)?,
        ..spread
    })
}

const fn spread(median: f64, down: f64, up: f64) -> Spread {
    Spread { median, down, up }
}

/// What place and weather do to every figure.
struct Site {
    ambient_k: f64,
    /// Ambient above the reference, K.
    above_k: f64,
    thin_air: f64,
    /// Humidity ratio above that of half-saturated air.
    moisture: f64,
    /// Spread of that where the humidity was not given.
    moisture_spread: f64,
    /// Spread of the pressures that have not settled, K.
    unsettled_k: f64,
    /// Share of the pull-down of the vent that is still to come.
    pull_down_left: f64,
    /// Engine speed above the reference, within the reach of its effect, 1/s.
    faster_hz: f64,
}

impl Site {
    fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        let ambient_k = AMBIENT_OF_SOURCES.check(in_kelvins(conditions.ambient))?;
        let barometer_pa = BAROMETER_OF_SOURCES.check(conditions.surroundings.pressure().pa())?;
        let humidity_ratio = |relative: f64| {
            MoistAir::from_relative_humidity(ambient_k, barometer_pa, relative).map(MoistAir::humidity_ratio)
        };
        let half = humidity_ratio(0.5)?;
        let (moisture, moisture_spread) = match conditions.relative_humidity {
            Some(relative) => (humidity_ratio(relative)? - half, 0.0),
            None => (0.0, 2.0 * half * c::HUMIDITY_UNKNOWN_SPREAD),
        };
        let left = |time_s: f64| conditions.running_s.map_or(0.0, |s| libm::exp(-s / time_s));
        let faster_hz = conditions
            .driving_hz(system.compressor)
            .map_or(0.0, |hz| hz - c::REFERENCE_ENGINE_SPEED_HZ);
        Ok(Self {
            ambient_k,
            above_k: ambient_k - c::REFERENCE_AMBIENT_K,
            thin_air: libm::pow(STANDARD_PRESSURE_PA / barometer_pa, c::APPROACH_THIN_AIR_EXPONENT),
            moisture,
            moisture_spread,
            unsettled_k: c::UNSETTLED_PRESSURES_K * left(c::SETTLE_PRESSURES_S),
            pull_down_left: left(c::SETTLE_VENT_S),
            faster_hz: faster_hz.clamp(-c::ENGINE_SPEED_REACH_HZ, c::ENGINE_SPEED_REACH_HZ),
        })
    }

    fn low_side(&self, system: &System, conditions: &Conditions) -> Result<Spread, Error> {
        let row = low_side::of(system)?;
        let share = if row.held { c::HELD_LOW_SIDE_SHARE } else { 1.0 };
        let per_moisture = share * c::LOW_SIDE_PER_HUMIDITY_RATIO_K;
        let median = row.at_reference_k
            + row.per_ambient * self.above_k
            + per_moisture * self.moisture
            + share * c::LOW_SIDE_PER_ENGINE_SPEED_K_S * self.faster_hz;
        let out_of_stroke = if stroke_limit(system, conditions) {
            c::STROKE_LIMIT_UP_K
        } else {
            0.0
        };
        let unknown = per_moisture * self.moisture_spread;
        Ok(spread(median, row.down_k, row.up_k)
            .widened(unknown, unknown)
            .widened(self.unsettled_k, self.unsettled_k)
            .widened(0.0, out_of_stroke))
    }

    fn high_side(&self, conditions: &Conditions) -> Spread {
        let ram = conditions
            .vehicle_speed_m_s
            .map_or(0.0, |v| 1.0 - libm::exp(-v / c::RAM_AIR_SPEED_M_S));
        let standing_k = c::APPROACH_STANDING_K + c::APPROACH_PER_AMBIENT * self.above_k;
        let approach_k = standing_k + ram * (c::APPROACH_RAM_AIR_K - c::APPROACH_STANDING_K);
        let median = self.ambient_k
            + approach_k * self.thin_air
            + c::HIGH_SIDE_PER_HUMIDITY_RATIO_K * self.moisture
            + c::HIGH_SIDE_PER_ENGINE_SPEED_K_S * self.faster_hz;
        let unknown = c::HIGH_SIDE_PER_HUMIDITY_RATIO_K * self.moisture_spread;
        spread(median, c::APPROACH_DOWN_K, c::APPROACH_UP_K)
            .widened(unknown, unknown)
            .widened(self.unsettled_k, self.unsettled_k)
    }

    fn vent(&self, conditions: &Conditions) -> Spread {
        let half_difference_k = c::VENT_FRESH_AIR_SHARE * f64::max(self.ambient_k - 293.15, 0.0);
        let (source_k, source_spread_k) = match conditions.air_source {
            Some(AirSource::Fresh) => (half_difference_k, 0.0),
            Some(AirSource::Recirculated) => (-half_difference_k, 0.0),
            None => (0.0, c::AIR_SOURCE_UNKNOWN_SHARE * half_difference_k),
        };
        let blower_k = conditions
            .blower
            .map_or(0.0, |step| (1.0 - step) * c::VENT_LOWER_BLOWER_K);
        let settled_k = c::VENT_K
            + c::VENT_PER_AMBIENT * self.above_k
            + c::VENT_PER_HUMIDITY_RATIO_K * self.moisture
            + source_k
            + blower_k;
        let settled_k = f64::max(settled_k, c::VENT_COLDEST_K);
        let to_come_k = self.pull_down_left * f64::max(self.ambient_k - settled_k, 0.0);
        let unknown = c::VENT_PER_HUMIDITY_RATIO_K * self.moisture_spread;
        spread(settled_k, c::VENT_DOWN_K, c::VENT_UP_K)
            .widened(unknown, unknown)
            .widened(source_spread_k, source_spread_k)
            .widened(0.0, to_come_k)
    }

    fn clutch_cycles(&self, system: &System) -> Option<Spread> {
        match system.compressor {
            Compressor::FixedClutch => {
                let median = c::CLUTCH_CYCLES + c::CLUTCH_CYCLES_PER_AMBIENT * self.above_k;
                Some(spread(
                    f64::max(median, 0.0),
                    c::CLUTCH_CYCLES_SPREAD,
                    c::CLUTCH_CYCLES_SPREAD,
                ))
            }
            Compressor::VariableInternal | Compressor::VariableExternal | Compressor::Electric => None,
        }
    }
}
