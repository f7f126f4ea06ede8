//! How well the instruments measure.

use crate::error::Error;
use crate::names::{GaugeClass, Thermometer};
use crate::range::GAUGE_PRESSURE;
use crate::units::{
    GaugePressure, PressureDifference, Temperature, TemperatureDifference, in_kelvins, kelvins_difference,
};

/// The standard uncertainty of a limit of error: an error anywhere within the limit is taken as equally likely.
///
/// u = a / sqrt(3). Source: JCGM 100:2008, 4.3.7.
pub(crate) fn rectangular(limit_of_error: f64) -> f64 {
    limit_of_error / SQRT_3
}

const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// A pressure gauge: its class and the ends of its scale.
///
/// The maker's limit of error is a fraction of the span, so the same gauge is six times as uncertain, relative to
/// what it shows, at a sixth of its scale.
///
/// ```
/// use coldloop::circuit::Gauge;
/// use coldloop::units::GaugePressure;
/// let shown = GaugePressure::from_bar(2.0);
/// assert!(Gauge::DIGITAL.limit_of_error(shown) > Gauge::LOW_SIDE.limit_of_error(shown)); // its scale is three times as long
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gauge {
    class: GaugeClass,
    low_pa: f64,
    high_pa: f64,
}

impl Gauge {
    /// The low-side dial of a shop manifold: class 1.6, from full vacuum to 1 MPa.
    ///
    /// Source: scales printed as 0 to 10 bar and 0 to 1 bar vacuum in workshop manuals; the class is common practice.
    pub const LOW_SIDE: Self = Self {
        class: GaugeClass::Class1p6,
        low_pa: -100_000.0,
        high_pa: 1_000_000.0,
    };

    /// The high-side dial of a shop manifold: class 1.6, from zero to 3.5 MPa.
    ///
    /// Source: scales printed as 0 to 500 psi in workshop manuals; the class is common practice.
    pub const HIGH_SIDE: Self = Self {
        class: GaugeClass::Class1p6,
        low_pa: 0.0,
        high_pa: 3_500_000.0,
    };

    /// The pressure transducer that a vehicle has on its high side, as a scan tool shows it: class 2.5, from zero to 3.5 MPa.
    ///
    /// Source: common practice, no source; the sealed datum of such a transducer, which thin air moves, is part of it.
    pub const TRANSDUCER: Self = Self {
        class: GaugeClass::Class2p5,
        low_pa: 0.0,
        high_pa: 3_500_000.0,
    };

    /// Either side of an electronic manifold: from full vacuum to 3.5 MPa.
    ///
    /// Source: common practice.
    pub const DIGITAL: Self = Self {
        class: GaugeClass::Digital,
        low_pa: -100_000.0,
        high_pa: 3_500_000.0,
    };

    /// A gauge of this class whose scale runs from one pressure to another.
    ///
    /// Errors: `NotFinite`; `OutOfRange` when an end lies outside [`GAUGE_PRESSURE`] or the upper end is not above the lower.
    ///
    /// ```
    /// use coldloop::{GaugeClass, circuit::Gauge, units::{GaugePressure, PressureDifference}};
    /// let gauge = Gauge::new(GaugeClass::Class1, GaugePressure::from_bar(0.0), GaugePressure::from_bar(25.0))?;
    /// assert_eq!(gauge.limit_of_error(GaugePressure::from_bar(8.0)), PressureDifference::from_kpa(25.0));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn new(class: GaugeClass, low: GaugePressure, high: GaugePressure) -> Result<Self, Error> {
        let (low_pa, high_pa) = (GAUGE_PRESSURE.check(low.pa())?, GAUGE_PRESSURE.check(high.pa())?);
        if high_pa <= low_pa {
            return Err(Error::out_of_range(
                GAUGE_PRESSURE.quantity,
                high_pa,
                low_pa,
                GAUGE_PRESSURE.high,
            ));
        }
        Ok(Self { class, low_pa, high_pa })
    }

    /// A gauge with the same scale and another class.
    ///
    /// ```
    /// use coldloop::{GaugeClass, circuit::Gauge, units::{GaugePressure, PressureDifference}};
    /// let better = Gauge::LOW_SIDE.of_class(GaugeClass::Class1);
    /// assert_eq!(better.limit_of_error(GaugePressure::from_bar(2.0)), PressureDifference::from_kpa(11.0));
    /// ```
    pub const fn of_class(self, class: GaugeClass) -> Self {
        Self { class, ..self }
    }

    /// The largest error that the class allows where the gauge shows this.
    ///
    /// Source: EN 837-1:1996, accuracy classes (a fraction of the span); ASME B40.100, grades A and B (a smaller fraction
    /// in the middle half of the scale than in its outer quarters); electronic manifolds: common practice.
    ///
    /// That is the error at the temperature of calibration, 20 °C; a hot gauge errs by more (EN 837-1 allows 0.04 % of
    /// the span for each kelvin, from memory).
    pub fn limit_of_error(self, shown: GaugePressure) -> PressureDifference {
        let span_pa = self.high_pa - self.low_pa;
        let position = (shown.pa() - self.low_pa) / span_pa;
        let graded = |middle: f64, outside: f64| {
            if (0.25..=0.75).contains(&position) {
                middle
            } else {
                outside
            }
        };
        let fraction = match self.class {
            GaugeClass::Class1 => 0.01,
            GaugeClass::Class1p6 => 0.016,
            GaugeClass::Class2p5 => 0.025,
            GaugeClass::GradeA => graded(0.01, 0.02),
            GaugeClass::GradeB => graded(0.02, 0.03),
            GaugeClass::Digital => 0.005,
        };
        PressureDifference::from_pa(fraction * span_pa)
    }
}

impl Thermometer {
    /// The largest error to expect at a temperature.
    ///
    /// | thermometer | limit of error | source |
    /// |---|---|---|
    /// | clamp thermocouple | the larger of 2.5 K and 0.75 % of the Celsius temperature | IEC 60584-1:2013, type K, class 2 |
    /// | clamp thermistor | 1.3 K | common practice |
    /// | pocket dial | 1.2 K, 1 % of a scale from -10 to 110 °C | common practice |
    /// | pocket digital | 1 K | common practice |
    /// | infrared | the larger of 2 K and 2 % of the Celsius temperature | common practice |
    ///
    /// The limits are those of the instrument; a clamp on a dirty line or an infrared thermometer on bright metal
    /// errs by more.
    ///
    /// ```
    /// use coldloop::{Thermometer, units::{celsius, kelvins_difference}};
    /// assert_eq!(Thermometer::PocketDigital.limit_of_error(celsius(7.0)), kelvins_difference(1.0));
    /// assert_eq!(Thermometer::Infrared.limit_of_error(celsius(150.0)), kelvins_difference(3.0));
    /// ```
    pub fn limit_of_error(self, temperature: Temperature) -> TemperatureDifference {
        let t_k = in_kelvins(temperature);
        let larger = |limit_k: f64, fraction: f64| f64::max(limit_k, fraction * libm::fabs(t_k - 273.15));
        kelvins_difference(match self {
            Thermometer::ClampThermocouple => larger(2.5, 0.0075),
            Thermometer::ClampThermistor => 1.3,
            Thermometer::PocketDial => 1.2,
            Thermometer::PocketDigital => 1.0,
            Thermometer::Infrared => larger(2.0, 0.02),
        })
    }
}
