//! Absolute and gauge pressure as two types, and the air that joins them.

use super::atmosphere::{STANDARD_PRESSURE_PA, standard_pressure_pa};
use crate::error::Error;
use crate::range::BAROMETER;

/// A pressure above vacuum.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct AbsolutePressure {
    pa: f64,
}

/// A pressure above (or, negative, below) the surrounding air.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct GaugePressure {
    pa: f64,
}

/// A pressure whose datum is known at run time only.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pressure {
    /// Above vacuum.
    Absolute(AbsolutePressure),
    /// Above the surrounding air.
    Gauge(GaugePressure),
}

/// The pressure of the air around the gauge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    pa: f64,
}

impl AbsolutePressure {
    /// `pa` pascals above vacuum.
    pub const fn from_pa(pa: f64) -> Self {
        Self { pa }
    }

    /// Pascals above vacuum.
    pub const fn pa(self) -> f64 {
        self.pa
    }

    /// What a gauge zeroed in these surroundings shows.
    pub const fn gauge(self, surroundings: Surroundings) -> GaugePressure {
        GaugePressure {
            pa: self.pa - surroundings.pa,
        }
    }
}

impl GaugePressure {
    /// `pa` pascals above the surrounding air.
    pub const fn from_pa(pa: f64) -> Self {
        Self { pa }
    }

    /// Pascals above the surrounding air.
    pub const fn pa(self) -> f64 {
        self.pa
    }

    /// The pressure above vacuum of a gauge zeroed in these surroundings.
    pub const fn absolute(self, surroundings: Surroundings) -> AbsolutePressure {
        AbsolutePressure {
            pa: self.pa + surroundings.pa,
        }
    }
}

impl Pressure {
    /// The pressure above vacuum.
    pub const fn absolute(self, surroundings: Surroundings) -> AbsolutePressure {
        match self {
            Pressure::Absolute(pressure) => pressure,
            Pressure::Gauge(pressure) => pressure.absolute(surroundings),
        }
    }
}

impl From<AbsolutePressure> for Pressure {
    fn from(pressure: AbsolutePressure) -> Self {
        Pressure::Absolute(pressure)
    }
}

impl From<GaugePressure> for Pressure {
    fn from(pressure: GaugePressure) -> Self {
        Pressure::Gauge(pressure)
    }
}

impl Surroundings {
    /// Standard sea level, said aloud.
    pub const SEA_LEVEL: Self = Self {
        pa: STANDARD_PRESSURE_PA,
    };

    /// The standard atmosphere at a geopotential altitude in metres. Source: ISO 2533:1975.
    ///
    /// Errors: `NotFinite` and `OutOfRange` outside [`crate::range::ALTITUDE`].
    pub fn at_altitude(altitude_m: f64) -> Result<Self, Error> {
        Ok(Self {
            pa: standard_pressure_pa(altitude_m)?,
        })
    }

    /// The air pressure of a barometer at this place, not reduced to sea level.
    ///
    /// Errors: `NotFinite` and `OutOfRange` outside [`BAROMETER`].
    pub fn measured(barometer: AbsolutePressure) -> Result<Self, Error> {
        Ok(Self {
            pa: BAROMETER.check(barometer.pa)?,
        })
    }

    /// The pressure of the air.
    pub const fn pressure(self) -> AbsolutePressure {
        AbsolutePressure { pa: self.pa }
    }
}
