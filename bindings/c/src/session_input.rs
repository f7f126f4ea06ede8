//! The arguments of session functions, checked and converted.

use crate::boundary::{known, member};
use crate::session::ColdloopVehicleSystem;
use crate::units::{COLDLOOP_DATUM_ABSOLUTE, COLDLOOP_DATUM_GAUGE};
use coldloop::circuit::{Measured, Reading};
use coldloop::units::{
    AbsolutePressure, Frequency, GaugePressure, Mass, Pressure, PressureDifference, kelvins, kelvins_difference,
};
use coldloop::vehicle::System;
use coldloop::{Compressor, Error, ErrorKind, Expansion, HighPort, LowPort, Quantity, ReadingKind};

/// An answer that is 1 or 0.
pub(crate) fn yes_or_no(code: u32) -> Result<bool, Error> {
    match code {
        0 => Ok(false),
        1 => Ok(true),
        _ => Err(Error::out_of_range(Quantity::Name, f64::from(code), 0.0, 1.0)),
    }
}

/// An answer that is 1 for yes, 2 for no, or 0 where it is not known.
pub(crate) fn known_or_not(code: u32) -> Result<Option<bool>, Error> {
    match code {
        0 => Ok(None),
        1 => Ok(Some(true)),
        2 => Ok(Some(false)),
        _ => Err(Error::out_of_range(Quantity::Name, f64::from(code), 0.0, 2.0)),
    }
}

/// A reading with its standard uncertainty; the datum is that of a pressure.
pub(crate) fn measured(
    kind: ReadingKind,
    datum: u32,
    value: f64,
    standard_uncertainty: f64,
) -> Result<Measured, Error> {
    let read = |quantity| {
        for figure in [value, standard_uncertainty] {
            if !figure.is_finite() {
                return Err(Error {
                    value: figure,
                    ..Error::of(ErrorKind::NotFinite, quantity)
                });
            }
        }
        if standard_uncertainty < 0.0 {
            return Err(Error::out_of_range(quantity, standard_uncertainty, 0.0, f64::INFINITY));
        }
        Ok(())
    };
    match kind {
        ReadingKind::LowSide | ReadingKind::HighSide | ReadingKind::HighSideTransducer => {
            read(Quantity::GaugePressure)?;
            let value: Pressure = match datum {
                COLDLOOP_DATUM_GAUGE => GaugePressure::from_pa(value).into(),
                COLDLOOP_DATUM_ABSOLUTE => AbsolutePressure::from_pa(value).into(),
                _ => return Err(Error::of(ErrorKind::MissingDatum, Quantity::Name)),
            };
            let reading = Reading {
                value,
                standard_uncertainty: PressureDifference::from_pa(standard_uncertainty),
            };
            Ok(reading.into())
        }
        ReadingKind::Vent
        | ReadingKind::Cabin
        | ReadingKind::SuctionLine
        | ReadingKind::DischargeLine
        | ReadingKind::LiquidLine
        | ReadingKind::CondenserOutlet
        | ReadingKind::EvaporatorSensor => {
            read(Quantity::Temperature)?;
            let reading = Reading {
                value: kelvins(value),
                standard_uncertainty: kelvins_difference(standard_uncertainty),
            };
            Ok(reading.into())
        }
        ReadingKind::ClutchCycles => {
            read(Quantity::Frequency)?;
            let reading = Reading {
                value: Frequency::from_hz(value),
                standard_uncertainty: Frequency::from_hz(standard_uncertainty),
            };
            Ok(reading.into())
        }
        _ => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),
    }
}

/// The system that a struct describes.
pub(crate) fn system_of(given: &ColdloopVehicleSystem) -> Result<System, Error> {
    let mut system = System::new(
        known(given.refrigerant)?,
        member(given.expansion, Expansion::from_code)?,
        member(given.compressor, Compressor::from_code)?,
    );
    let some = |value: f64| (!value.is_nan()).then_some(value);
    system.nominal_charge = some(given.nominal_charge_kg).map(Mass::from_kg);
    system.high_cut_out = some(given.high_cut_out_pa_gauge).map(GaugePressure::from_pa);
    if given.low_port != 0 {
        system.low_port = Some(member(given.low_port, LowPort::from_code)?);
    }
    if given.high_port != 0 {
        system.high_port = Some(member(given.high_port, HighPort::from_code)?);
    }
    system.sight_glass = known_or_not(given.sight_glass)?;
    if given.evaporators != 0 {
        let wrong = || Error::out_of_range(Quantity::Evaporators, f64::from(given.evaporators), 1.0, 2.0);
        system.evaporators = Some(u8::try_from(given.evaporators).map_err(|_| wrong())?);
    }
    system.check()?;
    Ok(system)
}
