//! Temperature and temperature difference as two types.

use core::ops::{Add, Sub};

/// A thermodynamic temperature: a point on the scale. Two of them cannot be added.
///
/// ```compile_fail,E0308
/// use coldloop::units::celsius;
/// let _ = celsius(20.0) + celsius(5.0);
/// ```
///
/// A difference can, and two temperatures have one:
///
/// ```
/// use coldloop::units::{celsius, difference_in_kelvins, in_celsius, kelvins_difference};
/// assert!((in_celsius(celsius(20.0) + kelvins_difference(5.0)) - 25.0).abs() < 1e-12);
/// assert!((difference_in_kelvins(celsius(20.0) - celsius(15.0)) - 5.0).abs() < 1e-12);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(transparent))]
pub struct Temperature {
    k: f64,
}

/// A temperature difference: superheat, subcooling, condensing above ambient.
///
/// It is not a temperature, and cannot be used as one:
///
/// ```compile_fail,E0308
/// use coldloop::{Refrigerant, units::kelvins_difference};
/// let _ = Refrigerant::R134a.dew_pressure(kelvins_difference(5.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(transparent))]
pub struct TemperatureDifference {
    k: f64,
}

/// 0 °C in kelvin. Exact: 10th General Conference on Weights and Measures, 1954.
const ZERO_CELSIUS_K: f64 = 273.15;
/// One degree Fahrenheit in kelvin, and 0 °F above absolute zero in degrees Fahrenheit. Exact: NIST Special Publication 811
/// (2008), appendix B.8.
const FAHRENHEIT_K: f64 = 5.0 / 9.0;
const ZERO_FAHRENHEIT: f64 = 459.67;

/// The temperature of `value` kelvin.
pub const fn kelvins(value: f64) -> Temperature {
    Temperature { k: value }
}

/// The temperature of `value` degrees Celsius.
pub const fn celsius(value: f64) -> Temperature {
    kelvins(value + ZERO_CELSIUS_K)
}

/// The temperature of `value` degrees Fahrenheit.
///
/// ```
/// use coldloop::units::{fahrenheit, in_celsius, in_fahrenheit};
/// assert!((in_celsius(fahrenheit(212.0)) - 100.0).abs() < 1e-12);
/// assert!((in_fahrenheit(fahrenheit(74.0)) - 74.0).abs() < 1e-12);
/// ```
pub const fn fahrenheit(value: f64) -> Temperature {
    kelvins((value + ZERO_FAHRENHEIT) * FAHRENHEIT_K)
}

/// The temperature in kelvin.
pub const fn in_kelvins(temperature: Temperature) -> f64 {
    temperature.k
}

/// The temperature in degrees Celsius.
pub const fn in_celsius(temperature: Temperature) -> f64 {
    temperature.k - ZERO_CELSIUS_K
}

/// The temperature in degrees Fahrenheit.
pub const fn in_fahrenheit(temperature: Temperature) -> f64 {
    temperature.k * (1.0 / FAHRENHEIT_K) - ZERO_FAHRENHEIT
}

/// The temperature difference of `value` kelvin.
pub const fn kelvins_difference(value: f64) -> TemperatureDifference {
    TemperatureDifference { k: value }
}

/// The temperature difference in kelvin.
pub const fn difference_in_kelvins(difference: TemperatureDifference) -> f64 {
    difference.k
}

impl Add<TemperatureDifference> for Temperature {
    type Output = Self;

    fn add(self, difference: TemperatureDifference) -> Self {
        kelvins(self.k + difference.k)
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;

    fn sub(self, other: Self) -> TemperatureDifference {
        kelvins_difference(self.k - other.k)
    }
}
