//! A station in the engine bay: two ratiometric pressure transducers and two thermistors, read by a microcontroller
//! without std and without an allocator, become superheat, subcooling and a verdict.
//!
//! `tests/small_machine` is the program around it: start-up code calls it on bare metal, and on any other machine it is a
//! test. benches/README.md has its sizes.

#![no_std]
#![forbid(unsafe_code)]

#[cfg(feature = "live")]
pub mod live;
pub mod sensors;
pub mod station;

use coldloop::units::Surroundings;
use coldloop::{Error, Refrigerant};
use sensors::{Curve, Thermistor, Transducer};
use station::Station;

/// The refrigerant of the circuit: fixed, so that only its curves are in flash, or set at run time.
pub fn refrigerant() -> Refrigerant {
    #[cfg(feature = "every_refrigerant")]
    return core::hint::black_box(Refrigerant::R134a);
    #[cfg(not(feature = "every_refrigerant"))]
    return Refrigerant::R134a;
}

/// A low-side transducer to 1 MPa, a high-side one to 3.5 MPa, both to 1 % of their span; 10 kohm thermistors clamped to
/// the lines. The figures of the parts are examples.
pub fn station(altitude_m: f64) -> Result<Station, Error> {
    let line = |curve| Thermistor {
        curve,
        resistor_ohm: 10_000.0,
        limit_k: 1.0,
    };
    let side = |span_pa: f64| Transducer {
        span_pa,
        limit_pa: 0.01 * span_pa,
    };
    Ok(Station {
        air: Surroundings::at_altitude(altitude_m)?,
        low_side: side(1e6),
        high_side: side(3.5e6),
        suction_line: line(Curve::Beta {
            at_25_ohm: 10_000.0,
            b_k: 3_435.0,
        }),
        // The same part by its other equation: a = 1/298.15 - ln(10000)/3435, b = 1/3435.
        liquid_line: line(Curve::SteinhartHart {
            a: 6.726_946_379e-4,
            b: 2.911_208_151e-4,
            c: 0.0,
        }),
    })
}
