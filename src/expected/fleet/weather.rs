//! What of weather, place and driving moves the readings: the terms in which the bands of the fleet are linear.

use crate::air::MoistAir;
use crate::error::Error;
use crate::names::{AirSource, Compressor, Quantity};
use crate::numerics::sqrt;
use crate::range::Range;
use crate::units::in_kelvins;
use crate::vehicle::{Conditions, System};

/// Ambient temperatures over which the bands of the fleet are fitted: 5 to 50 °C.
pub const FLEET_AMBIENT: Range = Range::new(Quantity::Temperature, 278.15, 323.15);
/// Barometric pressures over which they are fitted: up to about 4,200 m.
pub const FLEET_BAROMETER: Range = Range::new(Quantity::AbsolutePressure, 60_000.0, 106_000.0);
/// Humidity ratios over which they are fitted: from desert air to a dew point of 30 °C at sea level.
pub const FLEET_HUMIDITY_RATIO: Range = Range::new(Quantity::HumidityRatio, 0.000_5, 0.028);
/// Engine speeds over which they are fitted: 600 to 3,000 rpm.
pub const FLEET_ENGINE_SPEED: Range = Range::new(Quantity::RotationalSpeed, 10.0, 50.0);
/// Speeds of a motor-driven compressor over which they are fitted.
pub const FLEET_MOTOR_SPEED: Range = Range::new(Quantity::RotationalSpeed, 30.0, 150.0);
/// Blower settings over which they are fitted.
pub const FLEET_BLOWER: Range = Range::new(Quantity::BlowerSetting, 0.3, 1.0);
/// Vehicle speeds over which they are fitted, m/s.
pub const FLEET_SPEED: Range = Range::new(Quantity::Speed, 0.0, 36.0);
/// Times since switching on from which a system counts as settled, s. Common practice, no source: 10 minutes.
pub const FLEET_RUNNING: Range = Range::new(Quantity::Duration, 600.0, crate::range::DURATION.high);

/// Engine speed taken where none is given, 1/s: 1,500 rpm, the usual test speed.
const USUAL_SPEED_HZ: f64 = 25.0;
/// Speed limit taken for a motor-driven compressor of which none is given, 1/s: the typical one of the vehicle model.
const USUAL_MOTOR_SPEED_HZ: f64 = 130.0;
/// Relative humidity taken where none is given.
const USUAL_HUMIDITY: f64 = 0.5;
/// The most water taken where no humidity is given: a dew point of about 23 °C. Judgement: what muggy weather has.
const MOST_USUAL_HUMIDITY_RATIO: f64 = 0.018;

/// How far the terms reach that the spreads are linear in.
pub(super) const SPREAD_TERMS: usize = 13;

/// Weather, place and driving as the bands of the fleet see them.
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

    /// The terms of these conditions; what is not given is taken as in a workshop: 50 % relative humidity but not more
    /// than a dew point of about 23 °C, 1,500 rpm, fresh air, highest blower, standstill, long enough running.
    ///
    /// Errors: `NotFinite` and `OutOfRange`, against the ranges over which the bands of the fleet are fitted; the one
    /// of the humidity is told as relative humidity.
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

/// Conditions with the usual in place of what is not known.
#[derive(Clone, Copy, Debug)]
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
}

impl Facts {
    /// Errors: as [`Weather::of`].
    pub(super) fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        conditions.check()?;
        let ambient_k = FLEET_AMBIENT.check(in_kelvins(conditions.ambient))?;
        let air_pa = FLEET_BAROMETER.check(conditions.surroundings.pressure().pa())?;
        let blower = FLEET_BLOWER.check(conditions.blower.unwrap_or(1.0))?;
        let speed_m_s = FLEET_SPEED.check(conditions.vehicle_speed_m_s.unwrap_or(0.0))?;
        FLEET_RUNNING.check(conditions.running_s.unwrap_or(FLEET_RUNNING.low))?;
        let ratio =
            |relative| Ok::<_, Error>(MoistAir::from_relative_humidity(ambient_k, air_pa, relative)?.humidity_ratio());
        let humidity_ratio = match conditions.relative_humidity {
            Some(relative) => {
                let given = ratio(relative)?;
                if FLEET_HUMIDITY_RATIO.check(given).is_err() {
                    // Humidity ratio is all but proportional to relative humidity: that of the value itself keeps the value
                    // on its side of the bound.
                    let per_ratio = if relative > 0.0 {
                        given / relative
                    } else {
                        ratio(0.1)? / 0.1
                    };
                    let low = FLEET_HUMIDITY_RATIO.low / per_ratio;
                    let high = f64::min(FLEET_HUMIDITY_RATIO.high / per_ratio, 1.0);
                    return Err(Error::out_of_range(Quantity::RelativeHumidity, relative, low, high));
                }
                given
            }
            None => ratio(USUAL_HUMIDITY)?.min(MOST_USUAL_HUMIDITY_RATIO),
        };
        let driving_hz = conditions.driving_hz(system.compressor);
        let relative_speed = match system.compressor {
            Compressor::Electric => FLEET_MOTOR_SPEED.check(driving_hz.unwrap_or(USUAL_MOTOR_SPEED_HZ))? / 100.0,
            Compressor::FixedClutch | Compressor::VariableInternal | Compressor::VariableExternal => {
                FLEET_ENGINE_SPEED.check(driving_hz.unwrap_or(USUAL_SPEED_HZ))? / USUAL_SPEED_HZ
            }
        };
        let recirculated = match conditions.air_source {
            Some(AirSource::Recirculated) => 1.0,
            Some(AirSource::Fresh) | None => 0.0,
        };
        Ok(Self {
            ambient_k,
            air_pa,
            humidity_ratio,
            relative_speed,
            blower,
            speed_m_s,
            recirculated,
        })
    }

    pub(super) fn weather(&self) -> Weather {
        Weather { terms: terms(self) }
    }
}

/// The corners of the load, in the logarithm of load over swept volume.
const CORNERS: [f64; 4] = [-1.1, -0.6, -0.1, 0.4];
/// Their rounding.
const ROUNDING: f64 = 0.25;

/// What is left of `x` above zero, rounded over `softness`.
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
    // Hot air comes back less, and more air comes through, the faster the vehicle: as in the vehicle model.
    let slow = f.speed_m_s / 4.0;
    let r = 1.0 / (1.0 + slow * slow);
    let ram = f.speed_m_s / 12.0;
    let s = sqrt(1.0 + ram * ram) - 1.0;
    let c = f.recirculated;
    // Heat of the air above that of a cold coil, kJ/kg; cabin air that goes round brings a share of it and the cabin's.
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
