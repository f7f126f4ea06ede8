//! A limit on the dew point of drawn weather.

use coldloop::Error;
use coldloop::air::MoistAir;
use coldloop::units::Surroundings;

/// The relative humidity `u` of air at `ambient_c`, or less where its dew point would be above 30 °C.
pub(crate) fn at_most_wet(ambient_c: f64, place: Surroundings, u: f64) -> Result<f64, Error> {
    let wettest = MoistAir::from_dew_point(
        ambient_c + 273.15,
        place.pressure().pa(),
        WETTEST_DEW_K.min(ambient_c + 273.15),
    )?;
    Ok(u.min(wettest.relative_humidity()))
}

/// The highest dew point that is drawn, K: 30 °C. From memory: the highest dew points of weather stations lie from 30 to
/// 35 °C.
const WETTEST_DEW_K: f64 = 303.15;
