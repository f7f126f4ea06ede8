//! Asks the core for figures on a machine without std, alloc and a Rust runtime; the exit status is the answer.

#![no_std]
#![no_main]

use coldloop::circuit::{Gauge, Reading, superheat};
use coldloop::units::{GaugePressure, Surroundings, celsius, kelvins};
use coldloop::{Error, Refrigerant, Thermometer};
use core::panic::PanicInfo;

// The C runtime of the machine that runs the tests calls `main`; nothing else of it is used.
#[link(name = "c")]
unsafe extern "C" {}

/// 0 when every figure is right, 1 when one is wrong, 2 when one is refused.
#[unsafe(no_mangle)]
pub extern "C" fn main() -> i32 {
    match figures() {
        Ok(true) => 0,
        Ok(false) => 1,
        Err(_) => 2,
    }
}

fn figures() -> Result<bool, Error> {
    // Source: Tillner-Roth & Baehr 1994, doi:10.1063/1.555958, table 8: 0.11561 MPa at 250 K.
    let dew = Refrigerant::R134a.dew_pressure(kelvins(250.0))?;
    // Source: ISO 2533:1975, table 5: 898.746 hPa at 1,000 m.
    let air = Surroundings::at_altitude(1_000.0)?;
    let low_side = Reading::pressure(GaugePressure::from_psig(35.0), Gauge::LOW_SIDE);
    let suction_line = Reading::temperature(celsius(12.0), Thermometer::ClampThermistor);
    let superheat = superheat(Refrigerant::R134a, suction_line, low_side, air)?;
    Ok((dew.pa() - 115_610.0).abs() < 10.0
        && (air.pressure().pa() - 89_874.6).abs() < 0.1
        && superheat.si().value > 8.0
        && superheat.si().value < 9.5)
}

#[panic_handler]
fn panic(_: &PanicInfo<'_>) -> ! {
    loop {}
}
