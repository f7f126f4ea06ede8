//! How weather, place and driving move the readings: the terms in which the means of the sources are linear.

use super::atlas_weather::AtlasWeather;
use crate::air::MoistAir;
use crate::error::Error;
use crate::names::{AirSource, Compressor, Quantity};
use crate::numerics::sqrt;
use crate::range::Range;
use crate::units::{Speed, in_kelvins};
use crate::vehicle::{Conditions, System};

/// Engine speed taken where none is given, 1/s: 1,500 rpm, the usual test speed.
const USUAL_SPEED_HZ: f64 = 25.0;
/// Speed taken for a motor-driven compressor where none is given, 1/s: the typical speed limit of the vehicle model.
const USUAL_MOTOR_SPEED_HZ: f64 = 130.0;
/// Relative humidity taken where none is given.
const USUAL_HUMIDITY: f64 = 0.5;
/// Largest humidity ratio taken where no humidity is given: a dew point of about 23 °C. Source: engineering judgement: muggy
/// weather.
const MOST_USUAL_HUMIDITY_RATIO: f64 = 0.018;

/// Number of terms, the first ones, in which the logarithms of the spreads are linear.
pub(crate) const SPREAD_TERMS: usize = 13;

/// Weather, place and driving as terms of the means of a sound system.
///
/// The terms are a constant, ambient temperature, humidity ratio, logarithms of barometric pressure and speed, blower,
/// what driving does to the air of the condenser, air source, the load of the coil's air against what the compressor
/// sweeps (with corners, rounded, where clutches begin to cycle and variable compressors run out of stroke), and
/// products of two of them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weather {
    terms: [f64; Self::TERMS],
}

impl Weather {
    /// How many terms there are.
    pub const TERMS: usize = 62;
    /// Ambient temperatures of the fit: 5 to 50 °C; what lies outside is refused.
    pub const AMBIENT: Range = Range::new(Quantity::Temperature, 278.15, 323.15);
    /// Barometric pressures of the fit: up to about 4,200 m; what lies outside is refused.
    pub const BAROMETER: Range = Range::new(Quantity::AbsolutePressure, 60_000.0, 106_000.0);
    /// Humidity ratios of the fit: from desert air to a dew point of 30 °C at sea level.
    pub const HUMIDITY_RATIO: Range = Range::new(Quantity::HumidityRatio, 0.000_5, 0.028);
    /// Engine speeds of the fit: 600 to 3,000 rpm.
    pub const ENGINE_SPEED: Range = Range::new(Quantity::RotationalSpeed, 10.0, 50.0);
    /// Speeds of a motor-driven compressor of the fit.
    pub const MOTOR_SPEED: Range = Range::new(Quantity::RotationalSpeed, 30.0, 150.0);
    /// Blower settings of the fit.
    pub const BLOWER: Range = Range::new(Quantity::BlowerSetting, 0.3, 1.0);
    /// Vehicle speeds of the fit, m/s.
    pub const SPEED: Range = Range::new(Quantity::Speed, 0.0, 36.0);
    /// Times since switching on from which a system counts as settled, s. Common practice, no source: 10 minutes.
    pub const RUNNING: Range = Range::new(Quantity::Duration, 600.0, crate::range::DURATION.high);

    /// The terms of these conditions; what is not given is taken as in a workshop: 50 % relative humidity but not more
    /// than a dew point of about 23 °C, 1,500 rpm, half fresh and half recirculated air, highest blower, standstill.
    ///
    /// What lies beyond the conditions of the fit is taken at their end: [`super::SoundModel`] widens its spread for it.
    ///
    /// Errors: `NotFinite`; `OutOfRange` for an ambient outside [`Self::AMBIENT`] and a barometer outside
    /// [`Self::BAROMETER`].
    ///
    /// ```
    /// use coldloop::expected::Weather;
    /// use coldloop::units::{Surroundings, celsius};
    /// use coldloop::vehicle::{Conditions, System};
    /// use coldloop::{Compressor, ErrorKind, Expansion, Refrigerant};
    /// let car = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let day = |c: f64| Conditions::new(celsius(c), Surroundings::SEA_LEVEL);
    /// assert_eq!(Weather::of(&car, &day(30.0))?.terms()[0], 1.0);
    /// assert_eq!(Weather::of(&car, &day(0.0)).unwrap_err().kind, ErrorKind::OutOfRange);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        Ok(Facts::of(system, conditions)?.weather())
    }

    /// The terms.
    pub const fn terms(&self) -> &[f64; Self::TERMS] {
        &self.terms
    }
}

/// Conditions with usual values in place of unknown ones, and with the end of the fit in place of values beyond it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Facts {
    pub ambient_k: f64,
    pub air_pa: f64,
    pub humidity_ratio: f64,
    /// Speed per that of 1,500 rpm, or of a motor at 6,000.
    pub relative_speed: f64,
    pub blower: f64,
    pub speed_m_s: f64,
    /// 0 for fresh air, 1 for recirculated.
    pub recirculated: f64,
    /// Whether a motor drives the compressor.
    pub motor: bool,
}

/// The same conditions twice: with the one that is unknown, or beyond the fit, one standard deviation lower and higher.
#[derive(Clone, Copy, Debug)]
pub(super) struct Doubt {
    pub low: Facts,
    pub high: Facts,
}

/// How many conditions may be in doubt.
pub(super) const DOUBTS: usize = 5;

/// Standard deviations of unknown conditions: of humidity ratio and speed as a share of the usual value, of the blower's
/// setting, of the share of recirculated air. Source: engineering judgement.
const UNKNOWN_HUMIDITY: f64 = 0.5;
const UNKNOWN_SPEED: f64 = 0.25;
const UNKNOWN_BLOWER: f64 = 0.15;
const UNKNOWN_RECIRCULATED: f64 = 0.5;
/// Standard deviation of the speed of a vehicle where it is not known whether it stands, m/s.
const UNKNOWN_DRIVING_M_S: f64 = 3.0;

impl Facts {
    /// Errors: as [`Weather::of`].
    pub(super) fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        conditions.check()?;
        let ambient_k = Weather::AMBIENT.check(in_kelvins(conditions.ambient))?;
        let air_pa = Weather::BAROMETER.check(conditions.surroundings.pressure().pa())?;
        let ratio =
            |relative| Ok::<_, Error>(MoistAir::from_relative_humidity(ambient_k, air_pa, relative)?.humidity_ratio());
        let humidity_ratio = match conditions.relative_humidity {
            Some(relative) => ratio(relative.fraction())?,
            None => ratio(USUAL_HUMIDITY)?.min(MOST_USUAL_HUMIDITY_RATIO),
        };
        let driving_hz = conditions.driving_hz(system.compressor);
        let motor = system.compressor == Compressor::Electric;
        let relative_speed = if motor {
            nearest(Weather::MOTOR_SPEED, driving_hz.unwrap_or(USUAL_MOTOR_SPEED_HZ)) / MOTOR_REFERENCE_HZ
        } else {
            nearest(Weather::ENGINE_SPEED, driving_hz.unwrap_or(USUAL_SPEED_HZ)) / USUAL_SPEED_HZ
        };
        Ok(Self {
            ambient_k,
            air_pa,
            humidity_ratio: nearest(Weather::HUMIDITY_RATIO, humidity_ratio),
            relative_speed,
            blower: nearest(Weather::BLOWER, conditions.blower.unwrap_or(1.0)),
            speed_m_s: nearest(Weather::SPEED, conditions.vehicle_speed.map_or(0.0, Speed::m_s)),
            recirculated: match conditions.air_source {
                Some(AirSource::Recirculated) => 1.0,
                Some(AirSource::Fresh) => 0.0,
                None => 0.5,
            },
            motor,
        })
    }

    /// What is not known of the conditions, or lies beyond the fit.
    pub(super) fn doubts(&self, system: &System, conditions: &Conditions) -> [Option<Doubt>; DOUBTS] {
        let driving_hz = conditions.driving_hz(system.compressor);
        let reference_hz = if self.motor { MOTOR_REFERENCE_HZ } else { USUAL_SPEED_HZ };
        let beyond =
            |range: Range, value: Option<f64>| value.map_or(0.0, |value| libm::fabs(value - nearest(range, value)));
        let speeds = if self.motor {
            Weather::MOTOR_SPEED
        } else {
            Weather::ENGINE_SPEED
        };
        // A motor's speed follows the load by itself: the spread of the fit already contains an unknown speed.
        let speed = match driving_hz {
            None if self.motor => 0.0,
            None => UNKNOWN_SPEED * self.relative_speed,
            Some(hz) => beyond(speeds, Some(hz)) / reference_hz,
        };
        let humidity = match conditions.relative_humidity {
            None => UNKNOWN_HUMIDITY * self.humidity_ratio,
            Some(_) => 0.0,
        };
        let blower = conditions
            .blower
            .map_or(UNKNOWN_BLOWER, |step| beyond(Weather::BLOWER, Some(step)));
        let driving = conditions
            .vehicle_speed
            .map_or(UNKNOWN_DRIVING_M_S, |speed| beyond(Weather::SPEED, Some(speed.m_s())));
        let around = if conditions.air_source.is_none() {
            UNKNOWN_RECIRCULATED
        } else {
            0.0
        };
        let about = |by: f64, moved: &dyn Fn(f64) -> Self| {
            (by > 0.0).then(|| Doubt {
                low: moved(-by),
                high: moved(by),
            })
        };
        [
            about(humidity, &|by| Self {
                humidity_ratio: self.humidity_ratio + by,
                ..*self
            }),
            about(speed, &|by| Self {
                relative_speed: f64::max(self.relative_speed + by, 0.2),
                ..*self
            }),
            about(blower, &|by| Self {
                blower: f64::max(self.blower + by, 0.1),
                ..*self
            }),
            about(driving, &|by| Self {
                speed_m_s: f64::max(self.speed_m_s + by, 0.0),
                ..*self
            }),
            about(around, &|by| Self {
                recirculated: self.recirculated + by,
                ..*self
            }),
        ]
    }

    /// Whether a condition that was given lies beyond the fit.
    pub(super) fn beyond_fit(&self, system: &System, conditions: &Conditions) -> bool {
        let speeds = if self.motor {
            Weather::MOTOR_SPEED
        } else {
            Weather::ENGINE_SPEED
        };
        let outside = |range: Range, value: Option<f64>| value.is_some_and(|value| range.check(value).is_err());
        outside(speeds, conditions.driving_hz(system.compressor))
            || outside(Weather::BLOWER, conditions.blower)
            || outside(Weather::SPEED, conditions.vehicle_speed.map(Speed::m_s))
    }

    pub(super) fn weather(&self) -> Weather {
        Weather { terms: terms(self) }
    }

    /// The same as the atlas counts it.
    pub(super) fn of_atlas(&self) -> AtlasWeather {
        AtlasWeather {
            ambient_k: self.ambient_k,
            air_pa: self.air_pa,
            humidity_ratio: self.humidity_ratio,
            ln_speed: if self.motor {
                0.0
            } else {
                libm::log(self.relative_speed)
            },
            recirculated: self.recirculated,
            blower: self.blower,
        }
    }
}

/// The value, or the end of the range where it lies beyond.
fn nearest(range: Range, value: f64) -> f64 {
    value.clamp(range.low, range.high)
}

/// Speed of a motor with the relative speed 1, 1/s: 6,000 rpm.
const MOTOR_REFERENCE_HZ: f64 = 100.0;

/// The corners of the load, in the logarithm of load over swept volume.
const CORNERS: [f64; 4] = [-1.1, -0.6, -0.1, 0.4];
/// Their rounding.
const ROUNDING: f64 = 0.25;

/// The positive part of `x`, with its corner rounded over `softness`.
fn above(x: f64, softness: f64) -> f64 {
    0.5 * (x + sqrt(x * x + softness * softness))
}

fn terms(f: &Facts) -> [f64; Weather::TERMS] {
    let t = (f.ambient_k - 303.15) / 16.0;
    let y = (f.humidity_ratio - 0.011) / 0.011;
    let ln_pressure = libm::log(f.air_pa / 85e3);
    let a = ln_pressure / 0.3;
    let ln_speed = libm::log(f.relative_speed);
    let n = ln_speed / 0.7;
    let b = (f.blower - 0.65) / 0.35;
    // The faster the vehicle, the less hot air recirculates and the more air passes through: as in the vehicle model.
    let slow = f.speed_m_s / 4.0;
    let r = 1.0 / (1.0 + slow * slow);
    let ram = f.speed_m_s / 12.0;
    let s = sqrt(1.0 + ram * ram) - 1.0;
    let c = f.recirculated;
    // Heat of the air above that of a cold coil, kJ/kg; recirculated cabin air brings a share of it and the load of the cabin.
    let outside = 1.006 * (f.ambient_k - 277.15) + 2_500.0 * above(f.humidity_ratio - 0.005, 0.001);
    let brought = outside + c * (0.28 * outside + 6.0 / f.blower - outside);
    let load = libm::log(f.blower * above(brought, 4.0) / 40.0) + ln_pressure - 0.85 * ln_speed;
    let [k0, k1, k2, k3] = CORNERS.map(|corner| above(load - corner, ROUNDING));
    let mut terms = [0.0; Weather::TERMS];
    let first = [1.0, t, y, a, n, b, r, s, c, k0, k1, k2, k3];
    let products = [
        t * t,
        t * y,
        t * a,
        t * n,
        t * b,
        t * r,
        t * s, //
        y * y,
        y * a,
        y * n,
        y * b,
        y * r,
        y * s, //
        a * a,
        a * n,
        a * b,
        a * r,
        a * s, //
        n * n,
        n * b,
        n * r,
        n * s, //
        b * b,
        b * r,
        b * s, //
        r * s,
        s * s, //
        c * t,
        c * y,
        c * a,
        c * n,
        c * b,
        c * r,
        c * s, //
        k0 * t,
        k0 * n,
        k1 * t,
        k1 * y,
        k1 * n,
        k1 * b,
        k1 * c,
        k2 * t,
        k2 * y,
        k2 * n,
        k2 * b,
        k2 * c,
        k3 * t,
        k3 * n,
        load * load,
    ];
    let (head, tail) = terms.split_at_mut(SPREAD_TERMS);
    head.copy_from_slice(&first);
    tail.copy_from_slice(&products);
    terms
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::names::{Expansion, Refrigerant};
    use crate::units::{RotationalSpeed, Surroundings, celsius};

    /// An engine of which no speed is given counts as held at 1,500 rpm, as in a workshop; a motor as turning 7,800 times a minute, its
    /// fit being counted from 6,000.
    #[test]
    fn a_speed_that_is_not_given_is_that_of_a_workshop() {
        for (compressor, rpm) in [(Compressor::FixedClutch, 1_500.0), (Compressor::Electric, 7_800.0)] {
            let system = System::new(Refrigerant::R134a, Expansion::Txv, compressor);
            let day = Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL);
            let at = |rpm: f64| {
                let speed = Some(RotationalSpeed::from_hz(rpm / 60.0));
                let conditions = Conditions {
                    engine_speed: speed.filter(|_| compressor != Compressor::Electric),
                    compressor_speed: speed.filter(|_| compressor == Compressor::Electric),
                    ..day
                };
                Facts::of(&system, &conditions).unwrap().relative_speed
            };
            let usual = Facts::of(&system, &day).unwrap().relative_speed;
            assert!((at(rpm) - usual).abs() < 1e-9, "{compressor}: {usual}");
            let reference = if compressor == Compressor::Electric {
                6_000.0
            } else {
                1_500.0
            };
            assert!((at(reference) - 1.0).abs() < 1e-9, "{compressor}");
        }
    }
}
