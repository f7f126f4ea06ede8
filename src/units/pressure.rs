//! Absolute and gauge pressure as two types, and the air that joins them.

use super::atmosphere::{STANDARD_PRESSURE_PA, standard_pressure_pa};
use super::constants::{INHG_PA, MICRON_PA, PSI_PA};
use super::quantities::PressureDifference;
use crate::error::Error;
use crate::range::{ABSOLUTE_PRESSURE, BAROMETER, GAUGE_PRESSURE};

/// A pressure above vacuum.
///
/// ```
/// use coldloop::units::{AbsolutePressure, Surroundings};
/// let low_side = AbsolutePressure::from_kpa(342.6);
/// assert!((low_side.gauge(Surroundings::SEA_LEVEL).psig() - 35.0).abs() < 0.01);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(transparent))]
pub struct AbsolutePressure {
    pa: f64,
}

/// A pressure above (or, negative, below) the surrounding air.
///
/// ```
/// use coldloop::units::{GaugePressure, Surroundings};
/// let low_side = GaugePressure::from_psig(35.0);
/// assert!((low_side.absolute(Surroundings::SEA_LEVEL).psia() - 49.7).abs() < 0.01);
/// assert!((low_side.absolute(Surroundings::at_altitude(1_600.0)?).psia() - 47.1).abs() < 0.02);
/// # Ok::<(), coldloop::Error>(())
/// ```
///
/// It is no absolute pressure, and cannot be used as one:
///
/// ```compile_fail,E0308
/// use coldloop::units::{GaugePressure, Surroundings};
/// let _ = Surroundings::measured(GaugePressure::from_bar(1.0));
/// ```
///
/// ```compile_fail,E0308
/// use coldloop::{Refrigerant, units::GaugePressure};
/// let _ = Refrigerant::R134a.dew_temperature(GaugePressure::from_psig(35.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct GaugePressure {
    pa: f64,
}

/// A pressure whose datum is known at run time only.
///
/// ```
/// use coldloop::units::{AbsolutePressure, GaugePressure, Pressure};
/// let read: Pressure = GaugePressure::from_psig(35.0).into();
/// assert!(matches!(read, Pressure::Gauge(_)));
/// assert!(matches!(Pressure::from(AbsolutePressure::from_kpa(342.6)), Pressure::Absolute(_)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pressure {
    /// Above vacuum.
    Absolute(AbsolutePressure),
    /// Above the surrounding air.
    Gauge(GaugePressure),
}

/// The pressure of the air around the gauge, and how well it is known.
///
/// ```
/// use coldloop::units::{AbsolutePressure, Surroundings};
/// let garage = Surroundings::at_altitude(1_600.0)?;
/// assert!((garage.pressure().kpa() - 83.5).abs() < 0.1);
/// let measured = Surroundings::measured(AbsolutePressure::from_kpa(83.9))?;
/// assert!(measured.standard_uncertainty() < garage.standard_uncertainty());
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    pa: f64,
    standard_uncertainty_pa: f64,
}

/// Standard deviation of the weather's air pressure about the standard atmosphere. From general knowledge, no source.
const WEATHER_PA: f64 = 700.0;
/// Standard uncertainty of a workshop or telephone barometer. From general knowledge, no source.
const BAROMETER_PA: f64 = 100.0;

impl AbsolutePressure {
    /// `pa` pascals above vacuum.
    pub const fn from_pa(pa: f64) -> Self {
        Self { pa }
    }

    /// `kpa` kilopascals above vacuum.
    pub const fn from_kpa(kpa: f64) -> Self {
        Self { pa: kpa * 1_000.0 }
    }

    /// `bar` bars above vacuum.
    pub const fn from_bar(bar: f64) -> Self {
        Self { pa: bar * 100_000.0 }
    }

    /// `psia` pounds-force per square inch above vacuum.
    pub const fn from_psia(psia: f64) -> Self {
        Self { pa: psia * PSI_PA }
    }

    /// `microns` microns of mercury above vacuum.
    pub const fn from_microns(microns: f64) -> Self {
        Self {
            pa: microns * MICRON_PA,
        }
    }

    /// Pascals above vacuum.
    pub const fn pa(self) -> f64 {
        self.pa
    }

    /// Kilopascals above vacuum.
    pub const fn kpa(self) -> f64 {
        self.pa / 1_000.0
    }

    /// Bars above vacuum.
    pub const fn bar(self) -> f64 {
        self.pa / 100_000.0
    }

    /// Pounds-force per square inch above vacuum.
    pub const fn psia(self) -> f64 {
        self.pa / PSI_PA
    }

    /// Microns of mercury above vacuum.
    pub const fn microns(self) -> f64 {
        self.pa / MICRON_PA
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

    /// `kpa` kilopascals above the surrounding air.
    pub const fn from_kpa(kpa: f64) -> Self {
        Self { pa: kpa * 1_000.0 }
    }

    /// `bar` bars above the surrounding air.
    pub const fn from_bar(bar: f64) -> Self {
        Self { pa: bar * 100_000.0 }
    }

    /// `psig` pounds-force per square inch above the surrounding air.
    pub const fn from_psig(psig: f64) -> Self {
        Self { pa: psig * PSI_PA }
    }

    /// A vacuum of `inhg` inches of mercury below the surrounding air.
    pub const fn from_inhg_vacuum(inhg: f64) -> Self {
        Self { pa: -inhg * INHG_PA }
    }

    /// Pascals above the surrounding air.
    pub const fn pa(self) -> f64 {
        self.pa
    }

    /// Kilopascals above the surrounding air.
    pub const fn kpa(self) -> f64 {
        self.pa / 1_000.0
    }

    /// Bars above the surrounding air.
    pub const fn bar(self) -> f64 {
        self.pa / 100_000.0
    }

    /// Pounds-force per square inch above the surrounding air.
    pub const fn psig(self) -> f64 {
        self.pa / PSI_PA
    }

    /// Inches of mercury below the surrounding air.
    pub const fn inhg_vacuum(self) -> f64 {
        -self.pa / INHG_PA
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
        standard_uncertainty_pa: WEATHER_PA,
    };

    /// The standard atmosphere at a geopotential altitude in metres. Source: ISO 2533:1975.
    ///
    /// Errors: `NotFinite` and `OutOfRange` outside [`crate::range::ALTITUDE`].
    pub fn at_altitude(altitude_m: f64) -> Result<Self, Error> {
        Ok(Self {
            pa: standard_pressure_pa(altitude_m)?,
            standard_uncertainty_pa: WEATHER_PA,
        })
    }

    /// The air pressure of a barometer at this place, not reduced to sea level.
    ///
    /// Errors: `NotFinite` and `OutOfRange` outside [`BAROMETER`].
    pub fn measured(barometer: AbsolutePressure) -> Result<Self, Error> {
        Ok(Self {
            pa: BAROMETER.check(barometer.pa)?,
            standard_uncertainty_pa: BAROMETER_PA,
        })
    }

    /// The air pressure as it was known elsewhere, with its standard uncertainty.
    ///
    /// Errors: as [`Self::measured`]; `OutOfRange` for an uncertainty below zero.
    ///
    /// ```
    /// use coldloop::units::{AbsolutePressure, Surroundings};
    /// let yard = Surroundings::at_altitude(1_600.0)?;
    /// assert_eq!(Surroundings::known(yard.pressure(), yard.standard_uncertainty())?, yard);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn known(air: AbsolutePressure, standard_uncertainty: PressureDifference) -> Result<Self, Error> {
        Ok(Self {
            pa: BAROMETER.check(air.pa)?,
            standard_uncertainty_pa: ABSOLUTE_PRESSURE.check(standard_uncertainty.pa())?,
        })
    }

    /// The pressure of the air.
    pub const fn pressure(self) -> AbsolutePressure {
        AbsolutePressure { pa: self.pa }
    }

    /// Standard uncertainty (one sigma) of that pressure: 100 Pa when measured, 700 Pa (the weather) when taken from
    /// the altitude.
    pub const fn standard_uncertainty(self) -> PressureDifference {
        PressureDifference::from_pa(self.standard_uncertainty_pa)
    }
}

/// The pressure above vacuum (Pa) of what a gauge shows that was zeroed in air of `air_pa`, Pa; for doors that speak
/// plain numbers.
///
/// Errors: `NotFinite` and `OutOfRange` outside [`GAUGE_PRESSURE`], [`BAROMETER`] and, for a gauge that shows less
/// than a vacuum, [`ABSOLUTE_PRESSURE`].
///
/// ```
/// use coldloop::units::absolute_pressure_pa;
/// assert_eq!(absolute_pressure_pa(250_000.0, 84_000.0)?, 334_000.0);
/// assert!(absolute_pressure_pa(-90_000.0, 84_000.0).is_err());
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn absolute_pressure_pa(gauge_pa: f64, air_pa: f64) -> Result<f64, Error> {
    ABSOLUTE_PRESSURE.check(GAUGE_PRESSURE.check(gauge_pa)? + BAROMETER.check(air_pa)?)
}

/// What a gauge zeroed in air of `air_pa` (Pa) shows of a pressure above vacuum, Pa: the inverse of [`absolute_pressure_pa`].
///
/// Errors: `NotFinite` and `OutOfRange` outside [`ABSOLUTE_PRESSURE`] and [`BAROMETER`].
///
/// ```
/// use coldloop::units::gauge_pressure_pa;
/// assert_eq!(gauge_pressure_pa(334_000.0, 84_000.0)?, 250_000.0);
/// assert!(gauge_pressure_pa(334_000.0, 0.0).is_err());
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn gauge_pressure_pa(absolute_pa: f64, air_pa: f64) -> Result<f64, Error> {
    Ok(ABSOLUTE_PRESSURE.check(absolute_pa)? - BAROMETER.check(air_pa)?)
}
