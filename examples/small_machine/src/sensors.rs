//! From counts of an analogue-to-digital converter to readings.

use coldloop::circuit::Reading;
use coldloop::units::{GaugePressure, Pressure, PressureDifference, Temperature, kelvins, kelvins_difference};
use coldloop::{Error, Quantity};

/// The converter's highest count, at which its input equals its supply.
const FULL_SCALE: f64 = 4_095.0;

/// A pressure transducer that gives 0.5 to 4.5 V of a 5 V supply, and the same share of any other: the converter
/// measures against that supply, so that its drift cancels.
#[derive(Clone, Copy)]
pub struct Transducer {
    /// Gauge pressure at 4.5 V, Pa; 0.5 V is 0.
    pub span_pa: f64,
    /// Limit of error, Pa.
    pub limit_pa: f64,
}

impl Transducer {
    /// Below 5 % and above 95 % of the supply the wire is broken or shorted: out of range.
    pub fn reading(self, count: u16) -> Result<Reading<Pressure>, Error> {
        let share = f64::from(count) / FULL_SCALE;
        if !(0.05..=0.95).contains(&share) {
            return Err(Error::out_of_range(Quantity::Voltage, 5.0 * share, 0.25, 4.75));
        }
        let gauge = GaugePressure::from_pa((share - 0.1) / 0.8 * self.span_pa);
        Ok(Reading::within(
            gauge.into(),
            PressureDifference::from_pa(self.limit_pa),
        ))
    }
}

/// The equation from the resistance of a thermistor (ohm) to its temperature.
#[derive(Clone, Copy)]
pub enum Curve {
    /// 1/T = 1/T25 + ln(R/R25)/B, with both figures from the data sheet. Source: IEC 60539-1, definition of the B value.
    Beta { at_25_ohm: f64, b_k: f64 },
    /// 1/T = a + b ln R + c (ln R)^3. Source: Steinhart & Hart 1968, doi:10.1016/0011-7471(68)90057-0.
    SteinhartHart { a: f64, b: f64, c: f64 },
}

impl Curve {
    fn kelvin(self, ohm: f64) -> f64 {
        match self {
            Curve::Beta { at_25_ohm, b_k } => 1.0 / (1.0 / 298.15 + libm::log(ohm / at_25_ohm) / b_k),
            Curve::SteinhartHart { a, b, c } => {
                let ln = libm::log(ohm);
                1.0 / (a + b * ln + c * ln * ln * ln)
            }
        }
    }
}

/// A thermistor from the converter's input to ground, and a resistor from there to the supply.
#[derive(Clone, Copy)]
pub struct Thermistor {
    pub curve: Curve,
    pub resistor_ohm: f64,
    /// Limit of error, K.
    pub limit_k: f64,
}

impl Thermistor {
    /// Within 1 % of either end the wire is broken or shorted: out of range.
    pub fn reading(self, count: u16) -> Result<Reading<Temperature>, Error> {
        let share = f64::from(count) / FULL_SCALE;
        if !(0.01..=0.99).contains(&share) {
            return Err(Error::out_of_range(Quantity::Voltage, 5.0 * share, 0.05, 4.95));
        }
        let ohm = self.resistor_ohm * share / (1.0 - share);
        Ok(Reading::within(
            kelvins(self.curve.kelvin(ohm)),
            kelvins_difference(self.limit_k),
        ))
    }
}
