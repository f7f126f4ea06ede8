//! Moist air: one state, described by any one of its humidities.

use super::relations::{self, EPSILON};
use super::water::{enhancement, ln_saturation};
use crate::error::Error;
use crate::names::Quantity;
use crate::range::{AIR_TEMPERATURE, BAROMETER, HUMIDITY_RATIO, RELATIVE_HUMIDITY, Range, WATER_TEMPERATURE};

/// Moist air at a temperature and a pressure, with no more water than saturates it.
///
/// Perfect-gas relations of the ASHRAE Handbook - Fundamentals (2017), ch. 1, with the saturation pressure raised by the
/// [enhancement factor](super::enhancement_factor). Enthalpy and volume count per kilogram of dry air; enthalpy is zero
/// for dry air and for liquid water at 0 °C.
///
/// Valid from -70 to 100 °C at the air pressures of [`BAROMETER`].
///
/// ```
/// use coldloop::air::MoistAir;
/// // Cengel & Boles, example 14-3: 25 °C, wet bulb 15 °C, 1 atm, from ideal-gas relations
/// let air = MoistAir::from_wet_bulb(298.15, 101_325.0, 288.15)?;
/// assert!((air.humidity_ratio() - 0.006_53).abs() < 5e-5);
/// assert!((air.relative_humidity() - 0.332).abs() < 2e-3);
/// assert!((air.enthalpy_j_kg() - 41_800.0).abs() < 100.0);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoistAir {
    t_k: f64,
    p_pa: f64,
    humidity_ratio: f64,
}

/// Vapour pressure of saturated air, Pa; no check.
fn saturated_vapour_pa(t_k: f64, p_pa: f64) -> f64 {
    let pure_pa = libm::exp(ln_saturation(t_k));
    enhancement(t_k, p_pa, pure_pa) * pure_pa
}

impl MoistAir {
    /// Air of this relative humidity, 0 to 1.
    ///
    /// W = 0.621945 e/(p - e), e = phi f p_ws. Source: ASHRAE Fundamentals (2017), ch. 1, eq. 12, 20.
    ///
    /// Errors: `NotFinite`; `OutOfRange` for a temperature outside [`AIR_TEMPERATURE`], a pressure outside
    /// [`BAROMETER`], a relative humidity outside 0 to 1, or a humidity ratio above that of [`HUMIDITY_RATIO`].
    pub fn from_relative_humidity(t_k: f64, p_pa: f64, relative_humidity: f64) -> Result<Self, Error> {
        let (t_k, p_pa) = checked(t_k, p_pa)?;
        let e_pa = RELATIVE_HUMIDITY.check(relative_humidity)? * saturated_vapour_pa(t_k, p_pa);
        let humidity_ratio = some_air(relations::humidity_ratio(e_pa, p_pa))?;
        Ok(Self {
            t_k,
            p_pa,
            humidity_ratio,
        })
    }

    /// Air with this mass of water per mass of dry air.
    ///
    /// Errors: as [`MoistAir::from_relative_humidity`]; `OutOfRange` for more water than saturates the air.
    pub fn from_humidity_ratio(t_k: f64, p_pa: f64, humidity_ratio: f64) -> Result<Self, Error> {
        let (t_k, p_pa) = checked(t_k, p_pa)?;
        let saturated = relations::humidity_ratio(saturated_vapour_pa(t_k, p_pa), p_pa);
        let most = f64::min(saturated, HUMIDITY_RATIO.high);
        Range::new(Quantity::HumidityRatio, 0.0, most).check(humidity_ratio)?;
        Ok(Self {
            t_k,
            p_pa,
            humidity_ratio,
        })
    }

    /// Air that is saturated when cooled to this dew point (below 0 °C, frost point).
    ///
    /// Errors: as [`MoistAir::from_relative_humidity`]; `OutOfRange` for a dew point above the temperature.
    pub fn from_dew_point(t_k: f64, p_pa: f64, dew_point_k: f64) -> Result<Self, Error> {
        let (t_k, p_pa) = checked(t_k, p_pa)?;
        let dew_point_k = Range::new(Quantity::Temperature, WATER_TEMPERATURE.low, t_k).check(dew_point_k)?;
        let e_pa = saturated_vapour_pa(dew_point_k, p_pa);
        let humidity_ratio = some_air(relations::humidity_ratio(e_pa, p_pa))?;
        Ok(Self {
            t_k,
            p_pa,
            humidity_ratio,
        })
    }

    /// Air with this thermodynamic wet-bulb temperature.
    ///
    /// Source: ASHRAE Fundamentals (2017), ch. 1, eq. 33 (water on the bulb) and 35 (ice).
    ///
    /// Errors: as [`MoistAir::from_relative_humidity`]; `OutOfRange` for a wet bulb above the temperature, or so far
    /// below it that even dry air has a higher one.
    pub fn from_wet_bulb(t_k: f64, p_pa: f64, wet_bulb_k: f64) -> Result<Self, Error> {
        let (t_k, p_pa) = checked(t_k, p_pa)?;
        let wet_bulb_k = Range::new(Quantity::Temperature, WATER_TEMPERATURE.low, t_k).check(wet_bulb_k)?;
        let saturated = relations::humidity_ratio(saturated_vapour_pa(wet_bulb_k, p_pa), p_pa);
        let humidity_ratio = HUMIDITY_RATIO.check(relations::humidity_ratio_of_wet_bulb(t_k, wet_bulb_k, saturated))?;
        Ok(Self {
            t_k,
            p_pa,
            humidity_ratio,
        })
    }

    /// Saturated air.
    ///
    /// Errors: as [`MoistAir::from_relative_humidity`].
    pub fn saturated(t_k: f64, p_pa: f64) -> Result<Self, Error> {
        Self::from_relative_humidity(t_k, p_pa, 1.0)
    }

    /// Air of this enthalpy (J per kg of dry air) and humidity ratio; the inverse of [`MoistAir::enthalpy_j_kg`].
    ///
    /// Errors: as [`MoistAir::from_humidity_ratio`].
    pub fn from_enthalpy(enthalpy_j_kg: f64, p_pa: f64, humidity_ratio: f64) -> Result<Self, Error> {
        let humidity_ratio = HUMIDITY_RATIO.check(humidity_ratio)?;
        Self::from_humidity_ratio(
            relations::temperature_k(enthalpy_j_kg, humidity_ratio),
            p_pa,
            humidity_ratio,
        )
    }

    /// Temperature, K.
    pub const fn t_k(self) -> f64 {
        self.t_k
    }

    /// Pressure, Pa.
    pub const fn p_pa(self) -> f64 {
        self.p_pa
    }

    /// Mass of water per mass of dry air.
    pub const fn humidity_ratio(self) -> f64 {
        self.humidity_ratio
    }

    /// Partial pressure of the water vapour, Pa: e = p W/(0.621945 + W).
    pub const fn vapour_pressure_pa(self) -> f64 {
        self.p_pa * self.humidity_ratio / (EPSILON + self.humidity_ratio)
    }

    /// Relative humidity, 0 to 1: the vapour pressure over that of saturated air.
    pub fn relative_humidity(self) -> f64 {
        self.vapour_pressure_pa() / saturated_vapour_pa(self.t_k, self.p_pa)
    }

    /// Dew point (below 0 °C, frost point), K.
    ///
    /// Errors: `OutOfRange` (humidity ratio) when the air is so dry that the frost point lies below -100 °C.
    pub fn dew_point_k(self) -> Result<f64, Error> {
        let saturated = |t_k: f64| relations::humidity_ratio(saturated_vapour_pa(t_k, self.p_pa), self.p_pa);
        relations::dew_point_k(self.t_k, self.humidity_ratio, saturated)
    }

    /// Thermodynamic wet-bulb temperature, K; at the freezing point, where water and ice both give a solution, that of water.
    ///
    /// Errors: `NoConvergence`; no test has produced it.
    pub fn wet_bulb_k(self) -> Result<f64, Error> {
        let saturated = |t_k: f64| relations::humidity_ratio(saturated_vapour_pa(t_k, self.p_pa), self.p_pa);
        relations::wet_bulb_k(self.t_k, self.humidity_ratio, saturated)
    }

    /// Enthalpy, J per kg of dry air. Source: ASHRAE Fundamentals (2017), ch. 1, eq. 30.
    pub fn enthalpy_j_kg(self) -> f64 {
        relations::enthalpy_j_kg(self.t_k, self.humidity_ratio)
    }

    /// Volume, m3 per kg of dry air. Source: ASHRAE Fundamentals (2017), ch. 1, eq. 26.
    pub fn volume_m3_kg(self) -> f64 {
        relations::volume_m3_kg(self.t_k, self.p_pa, self.humidity_ratio)
    }

    /// Density of the mixture, kg/m3. Source: ASHRAE Fundamentals (2017), ch. 1, eq. 11.
    pub fn density_kg_m3(self) -> f64 {
        (1.0 + self.humidity_ratio) / self.volume_m3_kg()
    }
}

fn checked(t_k: f64, p_pa: f64) -> Result<(f64, f64), Error> {
    Ok((AIR_TEMPERATURE.check(t_k)?, BAROMETER.check(p_pa)?))
}

/// The humidity ratio, if it is not above [`HUMIDITY_RATIO`]; where water boils it is infinite, and also out of range.
fn some_air(humidity_ratio: f64) -> Result<f64, Error> {
    if humidity_ratio > HUMIDITY_RATIO.high {
        let (low, high) = (HUMIDITY_RATIO.low, HUMIDITY_RATIO.high);
        return Err(Error::out_of_range(Quantity::HumidityRatio, humidity_ratio, low, high));
    }
    Ok(humidity_ratio)
}
