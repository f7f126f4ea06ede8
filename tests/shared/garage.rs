//! The garage at 1,600 m, and readings within limits that are given.

use coldloop::circuit::Reading;
use coldloop::units::{AbsolutePressure, PressureDifference, Surroundings, celsius, kelvins_difference};

pub(crate) fn garage() -> Surroundings {
    Surroundings::at_altitude(1_600.0).unwrap()
}

pub(crate) fn pascals(pa: f64, limit_pa: f64) -> Reading<coldloop::units::Pressure> {
    Reading::within(
        AbsolutePressure::from_pa(pa).into(),
        PressureDifference::from_pa(limit_pa),
    )
}

pub(crate) fn degrees(c: f64, limit_k: f64) -> Reading<coldloop::units::Temperature> {
    Reading::within(celsius(c), kelvins_difference(limit_k))
}
