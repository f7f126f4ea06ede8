//! Units and text
//!
//! Every function of this library takes and gives SI; these convert what a gauge shows or a person writes. The factors follow
//! from exact definitions: a psi is a pound times standard gravity over an inch squared, an inch of mercury has the density
//! of mercury at 0 degrees Celsius. The conversions are plain arithmetic without a check of range; the datum of a
//! pressure does not change.
//!
//! Text is read strictly: a unit is required, a pressure must say gauge, absolute or vacuum, a comma is refused. Case,
//! spaces, dots, brackets and degree signs do not matter:
//!
//!     uint32_t datum;
//!     double pressure_pa;
//!     coldloop_read_pressure("35 psig", &datum, &pressure_pa, NULL);

use crate::boundary::{Failure, answer, member, number};
use crate::error::ColdloopError;
use crate::memory::{text, write};
use crate::names::ColdloopStatus;
use coldloop::units::constants::{INHG_PA, MICRON_PA, PSI_PA};
use coldloop::units::text as read;
use coldloop::units::{self, Pressure, difference_in_kelvins, in_kelvins};
use coldloop::{Error, ErrorKind, Quantity};
use core::ffi::c_char;

/// The pressure counts from vacuum.
pub const COLDLOOP_DATUM_ABSOLUTE: u32 = 1;
/// The pressure counts from the surrounding air.
pub const COLDLOOP_DATUM_GAUGE: u32 = 2;

/// Kelvin of degrees Celsius.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_celsius_to_kelvin(celsius: f64) -> f64 {
    in_kelvins(units::celsius(celsius))
}

/// Kelvin of degrees Fahrenheit.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_fahrenheit_to_kelvin(fahrenheit: f64) -> f64 {
    in_kelvins(units::fahrenheit(fahrenheit))
}

/// Degrees Celsius of kelvin.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_kelvin_to_celsius(temperature_k: f64) -> f64 {
    units::in_celsius(units::kelvins(temperature_k))
}

/// Degrees Fahrenheit of kelvin.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_kelvin_to_fahrenheit(temperature_k: f64) -> f64 {
    units::in_fahrenheit(units::kelvins(temperature_k))
}

/// Pascals of pounds-force per square inch.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_psi_to_pa(psi: f64) -> f64 {
    psi * PSI_PA
}

/// Pounds-force per square inch of pascals.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_pa_to_psi(pa: f64) -> f64 {
    pa / PSI_PA
}

/// Pascals of bars.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_bar_to_pa(bar: f64) -> f64 {
    bar * 100_000.0
}

/// Bars of pascals.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_pa_to_bar(pa: f64) -> f64 {
    pa / 100_000.0
}

/// Pascals of inches of mercury; a vacuum of 20 inches is a gauge pressure of minus that.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_inhg_to_pa(inhg: f64) -> f64 {
    inhg * INHG_PA
}

/// Inches of mercury of pascals.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_pa_to_inhg(pa: f64) -> f64 {
    pa / INHG_PA
}

/// Pascals of microns of mercury.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_microns_to_pa(microns: f64) -> f64 {
    microns * MICRON_PA
}

/// Microns of mercury of pascals.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_pa_to_microns(pa: f64) -> f64 {
    pa / MICRON_PA
}

/// Reads a pressure with its unit and datum: "35 psig", "2.4 bar gauge", "101.3 kPa abs", "18 inHg vacuum".
///
/// `datum` receives COLDLOOP_DATUM_ABSOLUTE or COLDLOOP_DATUM_GAUGE (0 on failure), `pressure_pa` the pascals from there.
///
/// Errors: MISSING_DATUM, MISSING_UNIT, UNKNOWN_UNIT, DECIMAL_COMMA, NOT_A_NUMBER, OUT_OF_RANGE; coldloop_error_message
/// says what to write instead.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_read_pressure(
    text: *const c_char,
    datum: *mut u32,
    pressure_pa: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    if datum.is_null() || pressure_pa.is_null() {
        return answer(error, || Err(Failure::Door(ColdloopStatus::NullPointer)));
    }
    let mut found = (0, f64::NAN);
    let status = answer(error, || {
        found = match read::pressure(&self::text(text)?)? {
            Pressure::Absolute(pressure) => (COLDLOOP_DATUM_ABSOLUTE, pressure.pa()),
            Pressure::Gauge(pressure) => (COLDLOOP_DATUM_GAUGE, pressure.pa()),
        };
        Ok(())
    });
    write(datum, found.0);
    write(pressure_pa, found.1);
    status
}

/// Reads any other quantity with its unit into SI: "74 °F" as COLDLOOP_QUANTITY_TEMPERATURE, "5250 ft" as
/// COLDLOOP_QUANTITY_ALTITUDE, "1500 rpm" as COLDLOOP_QUANTITY_ROTATIONAL_SPEED.
///
/// Errors: those of coldloop_read_pressure; NOT_AVAILABLE for a quantity that is not read from text; UNKNOWN_NAME for a
/// number that is no coldloop_quantity. The two pressures are read too, and refused when the text has the other datum.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_read_quantity(
    text: *const c_char,
    quantity: u32,
    value: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(value, error, || {
        let text = &self::text(text)?;
        let quantity = member(quantity, Quantity::from_code)?;
        Ok(match quantity {
            Quantity::Temperature => in_kelvins(read::temperature(text)?),
            Quantity::TemperatureDifference => difference_in_kelvins(read::temperature_difference(text)?),
            Quantity::AbsolutePressure => read::absolute_pressure(text)?.pa(),
            Quantity::GaugePressure => read::gauge_pressure(text)?.pa(),
            Quantity::Altitude => read::altitude_m(text)?,
            Quantity::RelativeHumidity => read::relative_humidity(text)?.fraction(),
            Quantity::Speed => read::speed(text)?.m_s(),
            Quantity::RotationalSpeed => read::rotational_speed(text)?.hz(),
            Quantity::Mass => read::mass(text)?.kg(),
            Quantity::Duration => read::duration(text)?.seconds(),
            Quantity::Frequency => read::frequency(text)?.hz(),
            Quantity::Voltage => read::voltage_v(text)?,
            Quantity::Volume => read::volume(text)?.m3(),
            Quantity::BlowerSetting => read::blower_setting(text)?,
            Quantity::Severity => read::severity(text)?,
            Quantity::Displacement => read::commanded_displacement(text)?,
            Quantity::FanCommand => read::fan_command(text)?,
            Quantity::HumidityRatio
            | Quantity::Density
            | Quantity::Enthalpy
            | Quantity::Entropy
            | Quantity::Quality
            | Quantity::Probability
            | Quantity::Cost
            | Quantity::Name
            | Quantity::Residual
            | Quantity::Rows
            | Quantity::Evaporators
            | Quantity::Size
            | Quantity::Viscosity
            | Quantity::Conductivity
            | Quantity::SurfaceTension => return Err(Error::of(ErrorKind::NotAvailable, quantity).into()),
            _ => return Err(Error::of(ErrorKind::NotAvailable, quantity).into()),
        })
    })
}
