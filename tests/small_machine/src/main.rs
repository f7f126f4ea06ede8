//! The station of examples/small_machine on a machine without std, alloc and a Rust runtime; the exit status is the
//! answer.

#![no_std]
#![no_main]

use coldloop::{Error, ErrorKind};
use core::hint::black_box;
use core::panic::PanicInfo;
use small_machine::station;
use small_machine::station::{Counts, Verdict};

// The C runtime of the machine that runs the tests calls `main`; nothing else of it is used.
#[cfg(not(target_os = "none"))]
#[link(name = "c")]
unsafe extern "C" {}

/// 0 when everything is right, 1 when a figure or verdict is wrong, 2 when one is refused that should not be.
#[unsafe(no_mangle)]
pub extern "C" fn main() -> i32 {
    match looks() {
        Ok(true) => 0,
        Ok(false) => 1,
        Err(_) => 2,
    }
}

/// Three looks whose answers are known. Source: CoolProp 8.0.0 in air of 83.52 kPa, superheat 9.07 and 37.28 K, subcooling
/// 10.54 and 0.78 K.
fn looks() -> Result<bool, Error> {
    let station = station(1_600.0)?;
    // 241.6 kPa, 1,186 kPa gauge, 12 and 38 degrees Celsius
    let sound = black_box(Counts {
        low_side: 1_201,
        high_side: 1_520,
        suction_line: 2_573,
        liquid_line: 1_564,
    });
    // 99.7 kPa, 900 kPa gauge, 25 and 38 degrees Celsius
    let starved = black_box(Counts {
        low_side: 736,
        high_side: 1_252,
        suction_line: 2_048,
        liquid_line: 1_564,
    });
    let broken_wire = black_box(Counts {
        low_side: 4_095,
        ..sound
    });
    let figures = station.figures(sound)?;
    let hungry = station.figures(starved)?;
    let right = near(figures.superheat.si().value, 9.07)
        && near(figures.subcooling.si().value, 10.54)
        && figures.superheat.si().standard_uncertainty < 1.6
        && figures.verdict() == Verdict::Sound
        && near(hungry.superheat.si().value, 37.28)
        && near(hungry.subcooling.si().value, 0.78)
        && hungry.verdict() == Verdict::TooLittleRefrigerant
        && station
            .figures(broken_wire)
            .is_err_and(|error| error.kind == ErrorKind::OutOfRange);
    #[cfg(feature = "diagnosis")]
    let right = right && station.diagnosed(starved, 302.15, 25.0)?.faults[0].fault == coldloop::Fault::Undercharge;
    #[cfg(feature = "live")]
    let right = right && guided(station, starved, broken_wire)?;
    Ok(right)
}

/// Five minutes of one starved circuit, in which a wire breaks for a moment, are judged as one look at it is, and lead to a step.
#[cfg(feature = "live")]
fn guided(station: station::Station, starved: Counts, broken_wire: Counts) -> Result<bool, Error> {
    let mut live = small_machine::live::Live::new(station, 302.15)?;
    let early = live.conclude().is_err_and(|error| error.kind == ErrorKind::Missing);
    for second in 0..300_u16 {
        let counts = if second == 200 { broken_wire } else { starved };
        let taken = live.take(f64::from(second), counts, 25.0);
        if taken.is_err() != (second == 200) {
            return Ok(false);
        }
    }
    live.conclude()?;
    let leading = live.session().judge()?.faults()[0].fault;
    Ok(early && leading == coldloop::Fault::Undercharge && live.next_step()?.is_some())
}

fn near(found_k: f64, right_k: f64) -> bool {
    (found_k - right_k).abs() < 0.02
}

#[panic_handler]
fn panic(_: &PanicInfo<'_>) -> ! {
    loop {}
}
