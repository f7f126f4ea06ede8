//! Readings with their instruments: the value alone, or a table of the value and how well it was read.

use super::mistakes::Refused;
use super::tree::{Entry, Table};
use crate::circuit::{Gauge, Reading};
use crate::error::Error;
use crate::names::{GaugeClass, Quantity, Thermometer};
use crate::range::LINE_TEMPERATURE;
use crate::units::{
    Frequency, InSi, Mass, Measurable, Pressure, PressureDifference, Surroundings, Temperature, Volume, text,
};

/// How far a volume found from the parts of a circuit may be off. Source: engineering judgement.
const VOLUME_SHARE: f64 = 0.15;

/// `"35 psig"`, `{ value = "35 psig", gauge = "digital" }`, or `{ value = "35 psig", within = "1 psi" }`.
pub(super) fn pressure(entry: &Entry<'_>, dial: Gauge) -> Result<Reading<Pressure>, Refused> {
    pressure_by(entry, Reading::pressure, dial)
}

/// The same, where what is usual is not a dial.
pub(super) fn pressure_by(
    entry: &Entry<'_>,
    usual: impl Fn(Pressure, Gauge) -> Reading<Pressure>,
    dial: Gauge,
) -> Result<Reading<Pressure>, Refused> {
    let (value, [class, within, uncertainty]) = entry.instrument(["gauge", "within", "uncertainty"])?;
    let value = value.quantity(Quantity::GaugePressure, text::pressure)?;
    if let Some(uncertainty) = uncertainty {
        return Ok(Reading {
            value,
            standard_uncertainty: limit(&uncertainty)?,
        });
    }
    if let Some(within) = within {
        let shown_pa = match value {
            Pressure::Absolute(pressure) => pressure.pa(),
            Pressure::Gauge(pressure) => libm::fabs(pressure.pa()),
        };
        let share = share_of(&within, shown_pa).map(PressureDifference::from_pa);
        return Ok(Reading::within(value, share.map_or_else(|| limit(&within), Ok)?));
    }
    Ok(match class {
        None => usual(value, dial),
        Some(class) => {
            let class = class.member(&GaugeClass::ALL, GaugeClass::id, GaugeClass::from_id)?;
            Reading::pressure(value, dial.of_class(class))
        }
    })
}

/// How far a pressure may be off.
pub(super) fn limit(entry: &Entry<'_>) -> Result<PressureDifference, Refused> {
    let text = entry.text(Quantity::AbsolutePressure)?;
    text::pressure_difference(text).map_err(|error| entry.refuse(error, "a difference has no datum: \"2 kPa\""))
}

/// `"37 °F"`, `{ value = "37 °F", thermometer = "pocket-dial" }`, or `{ value = "37 °F", within = "1 °F" }`.
pub(super) fn temperature(entry: &Entry<'_>, usual: Thermometer) -> Result<Reading<Temperature>, Refused> {
    let (value, [name, within, uncertainty]) = entry.instrument(["thermometer", "within", "uncertainty"])?;
    let value = super::case::within(&value, LINE_TEMPERATURE)?;
    if let Some(uncertainty) = uncertainty {
        return Ok(Reading {
            value,
            standard_uncertainty: uncertainty
                .quantity(Quantity::TemperatureDifference, text::temperature_difference)?,
        });
    }
    if let Some(within) = within {
        let limit = within.quantity(Quantity::TemperatureDifference, text::temperature_difference)?;
        return Ok(Reading::within(value, limit));
    }
    let thermometer = match name {
        None => usual,
        Some(name) => name.member(&Thermometer::ALL, Thermometer::id, Thermometer::from_id)?,
    };
    Ok(Reading::temperature(value, thermometer))
}

/// `"3 /min"`, counted over three minutes, or `{ value = "3 /min", uncertainty = "0.2 /min" }`.
pub(super) fn frequency(entry: &Entry<'_>) -> Result<Reading<Frequency>, Refused> {
    let (value, [uncertainty]) = entry.instrument(["uncertainty"])?;
    let value = value.quantity(Quantity::Frequency, text::frequency)?;
    match uncertainty {
        None => Ok(Reading::counted(value)),
        Some(uncertainty) => Ok(Reading {
            value,
            standard_uncertainty: uncertainty.quantity(Quantity::Frequency, text::frequency)?,
        }),
    }
}

/// `"83.5 kPa abs"`, or `{ value = "83.5 kPa abs", uncertainty = "700 Pa" }`.
pub(super) fn barometer(entry: &Entry<'_>) -> Result<Surroundings, Refused> {
    let (value, [uncertainty]) = entry.instrument(["uncertainty"])?;
    let air = value.quantity(Quantity::AbsolutePressure, text::absolute_pressure)?;
    let known = match uncertainty {
        None => Surroundings::measured(air),
        Some(uncertainty) => Surroundings::known(air, limit(&uncertainty)?),
    };
    known.map_err(|error| value.refuse(error, ""))
}

/// `"650 g"`, or `{ value = "650 g", within = "5 g" }`; the scale of a machine where nothing is said.
pub(super) fn mass(entry: &Entry<'_>, scale: Mass) -> Result<Reading<Mass>, Refused> {
    limited(entry, Quantity::Mass, text::mass, |_| scale)
}

/// `"2.4 L"`, or `{ value = "2.4 L", within = "0.2 L" }`.
pub(super) fn volume(entry: &Entry<'_>) -> Result<Reading<Volume>, Refused> {
    limited(entry, Quantity::Volume, text::volume, |value| {
        Volume::from_m3(VOLUME_SHARE * value.m3())
    })
}

fn limited<Q: InSi + Measurable<Difference = Q>>(
    entry: &Entry<'_>,
    quantity: Quantity,
    parse: fn(&str) -> Result<Q, Error>,
    usual: impl Fn(Q) -> Q,
) -> Result<Reading<Q>, Refused> {
    let (value, [within]) = entry.instrument(["within"])?;
    let value = value.quantity(quantity, parse)?;
    let limit = match within {
        None => usual(value),
        Some(within) => share_of(&within, value.si())
            .map(Q::from_si)
            .map_or_else(|| within.quantity(quantity, parse), Ok)?,
    };
    Ok(Reading::within(value, limit))
}

/// `"5 %"` of a value; `None` where the text is no share.
pub(super) fn share_of(entry: &Entry<'_>, value: f64) -> Option<f64> {
    Some(text::share(entry.as_text()?)? * value)
}

/// What an optional entry of a table reads as; nothing where it is refused, too, for then the mistake stands in the list.
pub(super) fn given<T>(table: &Table<'_>, key: &str, read: impl Fn(&Entry<'_>) -> Result<T, Refused>) -> Option<T> {
    read(&table.get(key)?).ok()
}
