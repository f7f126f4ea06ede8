//! Quantities as text with their unit.

use crate::errors::{raised, unknown};
use coldloop::units::{
    Frequency, Mass, RelativeHumidity, RotationalSpeed, Speed, TimeSpan, Volume, difference_in_kelvins, in_kelvins,
    text,
};
use coldloop::{Error, Quantity};
use pyo3::prelude::*;

/// A quantity in SI from its text.
#[pyfunction]
pub(crate) fn quantity(py: Python<'_>, kind: &str, text: &str) -> PyResult<f64> {
    let unknown = || unknown(py, kind, quantities());
    let quantity = Quantity::from_id(kind).ok_or_else(unknown)?;
    let read = reader(quantity).ok_or_else(unknown)?;
    read(text).map_err(|error| raised(py, error))
}

/// The quantities that can be read from text.
#[pyfunction]
pub(crate) fn quantities() -> Vec<&'static str> {
    let readable = |quantity: &&Quantity| reader(**quantity).is_some();
    Quantity::ALL
        .iter()
        .filter(readable)
        .map(|quantity| quantity.id())
        .collect()
}

/// From text to SI.
pub(crate) type Reader = fn(&str) -> Result<f64, Error>;

/// The function that reads the text of a quantity; `None` where the library reads no such text.
pub(crate) fn reader(quantity: Quantity) -> Option<Reader> {
    match quantity {
        Quantity::Temperature => Some(|text| text::temperature(text).map(in_kelvins)),
        Quantity::TemperatureDifference => Some(|text| text::temperature_difference(text).map(difference_in_kelvins)),
        Quantity::AbsolutePressure => Some(|text| text::absolute_pressure(text).map(|pressure| pressure.pa())),
        Quantity::GaugePressure => Some(|text| text::gauge_pressure(text).map(|pressure| pressure.pa())),
        Quantity::Altitude => Some(text::altitude_m),
        Quantity::RelativeHumidity => Some(|text| text::relative_humidity(text).map(RelativeHumidity::fraction)),
        Quantity::BlowerSetting => Some(text::blower_setting),
        Quantity::Speed => Some(|text| text::speed(text).map(Speed::m_s)),
        Quantity::RotationalSpeed => Some(|text| text::rotational_speed(text).map(RotationalSpeed::hz)),
        Quantity::Mass => Some(|text| text::mass(text).map(Mass::kg)),
        Quantity::Duration => Some(|text| text::duration(text).map(TimeSpan::seconds)),
        Quantity::Frequency => Some(|text| text::frequency(text).map(Frequency::hz)),
        Quantity::Voltage => Some(text::voltage_v),
        Quantity::Volume => Some(|text| text::volume(text).map(Volume::m3)),
        Quantity::Severity => Some(text::severity),
        Quantity::Displacement => Some(text::commanded_displacement),
        Quantity::FanCommand => Some(text::fan_command),
        Quantity::HumidityRatio
        | Quantity::Density
        | Quantity::Enthalpy
        | Quantity::Entropy
        | Quantity::Quality
        | Quantity::Probability
        | Quantity::Cost
        | Quantity::Rows
        | Quantity::Name
        | Quantity::Residual
        | Quantity::Evaporators
        | Quantity::Size
        | Quantity::Viscosity
        | Quantity::Conductivity
        | Quantity::SurfaceTension => None,
        _ => None,
    }
}
