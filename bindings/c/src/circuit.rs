//! Superheat and subcooling
//!
//! A pressure comes with its datum: COLDLOOP_DATUM_ABSOLUTE, or COLDLOOP_DATUM_GAUGE with the pressure of the air in
//! which the gauge was zeroed. For an absolute pressure the air is not looked at; pass 0.

use crate::boundary::{Failure, known, number};
use crate::error::ColdloopError;
use coldloop::circuit::{Reading, subcooling, superheat};
use coldloop::units::{AbsolutePressure, GaugePressure, Pressure, Surroundings, kelvins};
use coldloop::{Error, ErrorKind, Quantity};
use core::mem::MaybeUninit;

/// The pressure counts from vacuum.
pub const COLDLOOP_DATUM_ABSOLUTE: u32 = 1;
/// The pressure counts from the surrounding air.
pub const COLDLOOP_DATUM_GAUGE: u32 = 2;

/// How far the suction line is above the dew point of the low-side pressure; negative when it reads colder than vapour
/// of that pressure can be.
///
/// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, MISSING_DATUM for one that is no datum,
/// NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_superheat(
    refrigerant: u32,
    suction_line_k: f64,
    datum: u32,
    pressure_pa: f64,
    air_pa_abs: f64,
    superheat_k: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(superheat_k, error, || {
        let (pressure, air) = pressure(datum, pressure_pa, air_pa_abs)?;
        Ok(superheat(
            known(refrigerant)?,
            exact(kelvins(suction_line_k)),
            exact(pressure),
            air,
        )?
        .value)
    })
}

/// How far the liquid line is below the bubble point of the high-side pressure; negative when it carries bubbles or
/// the high side holds a gas that does not condense. Errors as coldloop_superheat.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_subcooling(
    refrigerant: u32,
    liquid_line_k: f64,
    datum: u32,
    pressure_pa: f64,
    air_pa_abs: f64,
    subcooling_k: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut ColdloopError>,
) -> u32 {
    number(subcooling_k, error, || {
        let (pressure, air) = pressure(datum, pressure_pa, air_pa_abs)?;
        Ok(subcooling(known(refrigerant)?, exact(kelvins(liquid_line_k)), exact(pressure), air)?.value)
    })
}

fn pressure(datum: u32, pa: f64, air_pa: f64) -> Result<(Pressure, Surroundings), Failure> {
    match datum {
        COLDLOOP_DATUM_ABSOLUTE => Ok((
            Pressure::Absolute(AbsolutePressure::from_pa(pa)),
            Surroundings::SEA_LEVEL,
        )),
        COLDLOOP_DATUM_GAUGE => {
            let air = Surroundings::measured(AbsolutePressure::from_pa(air_pa))?;
            Ok((Pressure::Gauge(GaugePressure::from_pa(pa)), air))
        }
        _ => Err(Error::of(ErrorKind::MissingDatum, Quantity::Name).into()),
    }
}

const fn exact<Q>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: 0.0,
    }
}
