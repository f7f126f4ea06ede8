//! Moist air and water
//!
//! One struct holds all that is known of moist air; a function fills it in from whichever humidity was measured. The
//! relations are those of the ASHRAE Handbook - Fundamentals (2017), chapter 1, with the saturation pressure raised by
//! the enhancement factor. Enthalpy and volume count per kilogram of dry air; enthalpy is zero for dry air and for
//! liquid water at 0 degrees Celsius. Temperatures go from 203.15 K to 373.15 K, air pressures from 28,000 Pa to
//! 112,000 Pa.

use crate::boundary::{number, record, sized};
use crate::error::ColdloopError;
use coldloop::Error;
use coldloop::air::{MoistAir, enhancement_factor, water_boiling_point_k, water_saturation_pressure_pa};

/// Moist air in SI. Set `size` to sizeof(coldloop_moist_air) before the call.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopMoistAir {
    /// sizeof(coldloop_moist_air), so that the struct can grow.
    pub size: usize,
    /// Temperature, K.
    pub temperature_k: f64,
    /// Pressure above vacuum, Pa.
    pub pressure_pa_abs: f64,
    /// Mass of water per mass of dry air.
    pub humidity_ratio: f64,
    /// Relative humidity, 0 to 1.
    pub relative_humidity: f64,
    /// Dew point, below 273.15 K frost point, K; NaN for air so dry that it lies below 173.15 K.
    pub dew_point_k: f64,
    /// Thermodynamic wet-bulb temperature, K.
    pub wet_bulb_k: f64,
    /// Partial pressure of the water vapour, Pa.
    pub vapour_pressure_pa: f64,
    /// Enthalpy, J per kg of dry air.
    pub enthalpy_j_kg: f64,
    /// Volume, m3 per kg of dry air.
    pub volume_m3_kg: f64,
    /// Density of the mixture, kg/m3.
    pub density_kg_m3: f64,
}

const NAN: f64 = f64::NAN;

sized!(
    ColdloopMoistAir,
    Self {
        size: 0,
        temperature_k: NAN,
        pressure_pa_abs: NAN,
        humidity_ratio: NAN,
        relative_humidity: NAN,
        dew_point_k: NAN,
        wet_bulb_k: NAN,
        vapour_pressure_pa: NAN,
        enthalpy_j_kg: NAN,
        volume_m3_kg: NAN,
        density_kg_m3: NAN,
    }
);

fn filled(out: *mut ColdloopMoistAir, error: *mut ColdloopError, air: impl FnOnce() -> Result<MoistAir, Error>) -> u32 {
    record(out, error, || {
        let air = air()?;
        Ok(ColdloopMoistAir {
            size: 0,
            temperature_k: air.t_k(),
            pressure_pa_abs: air.p_pa(),
            humidity_ratio: air.humidity_ratio(),
            relative_humidity: air.relative_humidity(),
            // Its only error means that the air is too dry to have one.
            dew_point_k: air.dew_point_k().unwrap_or(NAN),
            wet_bulb_k: air.wet_bulb_k()?,
            vapour_pressure_pa: air.vapour_pressure_pa(),
            enthalpy_j_kg: air.enthalpy_j_kg(),
            volume_m3_kg: air.volume_m3_kg(),
            density_kg_m3: air.density_kg_m3(),
        })
    })
}

/// Moist air of a relative humidity, 0 to 1.
///
/// Errors: NOT_FINITE; OUT_OF_RANGE, also where the water vapour would leave hardly any air.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_air_of_relative_humidity(
    temperature_k: f64,
    pressure_pa_abs: f64,
    relative_humidity: f64,
    air: *mut ColdloopMoistAir,
    error: *mut ColdloopError,
) -> u32 {
    filled(air, error, || {
        MoistAir::from_relative_humidity(temperature_k, pressure_pa_abs, relative_humidity)
    })
}

/// Moist air with this mass of water per mass of dry air; more than saturates the air is OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_air_of_humidity_ratio(
    temperature_k: f64,
    pressure_pa_abs: f64,
    humidity_ratio: f64,
    air: *mut ColdloopMoistAir,
    error: *mut ColdloopError,
) -> u32 {
    filled(air, error, || {
        MoistAir::from_humidity_ratio(temperature_k, pressure_pa_abs, humidity_ratio)
    })
}

/// Moist air of a dew point (below 273.15 K, frost point); one above the temperature is OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_air_of_dew_point(
    temperature_k: f64,
    pressure_pa_abs: f64,
    dew_point_k: f64,
    air: *mut ColdloopMoistAir,
    error: *mut ColdloopError,
) -> u32 {
    filled(air, error, || {
        MoistAir::from_dew_point(temperature_k, pressure_pa_abs, dew_point_k)
    })
}

/// Moist air of a thermodynamic wet-bulb temperature; one above the temperature, or below that of dry air, is
/// OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_air_of_wet_bulb(
    temperature_k: f64,
    pressure_pa_abs: f64,
    wet_bulb_k: f64,
    air: *mut ColdloopMoistAir,
    error: *mut ColdloopError,
) -> u32 {
    filled(air, error, || {
        MoistAir::from_wet_bulb(temperature_k, pressure_pa_abs, wet_bulb_k)
    })
}

/// Moist air of an enthalpy (J per kg of dry air) and a humidity ratio. Errors as coldloop_air_of_humidity_ratio.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_air_of_enthalpy(
    enthalpy_j_kg: f64,
    pressure_pa_abs: f64,
    humidity_ratio: f64,
    air: *mut ColdloopMoistAir,
    error: *mut ColdloopError,
) -> u32 {
    filled(air, error, || {
        MoistAir::from_enthalpy(enthalpy_j_kg, pressure_pa_abs, humidity_ratio)
    })
}

/// How much more water vapour saturated air holds than the same space without air, as a factor. Source: Greenspan 1976.
///
/// Errors: NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_enhancement_factor(
    temperature_k: f64,
    pressure_pa_abs: f64,
    factor: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(factor, error, || {
        Ok(enhancement_factor(temperature_k, pressure_pa_abs)?)
    })
}

/// Pressure above vacuum under which water boils, or below 273.16 K ice sublimes, from 173.15 K to 473.15 K.
///
/// Errors: NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_water_saturation_pressure(
    temperature_k: f64,
    pressure_pa_abs: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(pressure_pa_abs, error, || {
        Ok(water_saturation_pressure_pa(temperature_k)?)
    })
}

/// Temperature at which water boils, or ice sublimes, under a pressure above vacuum: what an evacuation has to stay
/// below to dry a circuit. The inverse of coldloop_water_saturation_pressure.
///
/// Errors: NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_water_boiling_point(
    pressure_pa_abs: f64,
    temperature_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(temperature_k, error, || Ok(water_boiling_point_k(pressure_pa_abs)?))
}
