//! The one error of the library: Copy, without text, so that every binding can carry it whole.

use crate::names::{ErrorKind, Quantity};
use core::fmt;

/// What went wrong, with which quantity, at which value, outside which bounds.
///
/// `value`, `low` and `high` are in the SI unit of [`Quantity::unit`]; a figure that does not apply is NaN.
///
/// ```
/// use coldloop::{Error, ErrorKind, Quantity};
/// let error = Error::out_of_range(Quantity::Temperature, 500.0, 169.85, 374.21);
/// assert_eq!(error.kind, ErrorKind::OutOfRange);
/// assert_eq!(error.to_string(), "temperature 500 K is outside 169.85 K to 374.21 K");
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Error {
    /// What went wrong.
    pub kind: ErrorKind,
    /// The quantity it concerns.
    pub quantity: Quantity,
    /// The value given, in SI.
    pub value: f64,
    /// The lowest value with an answer, in SI.
    pub low: f64,
    /// The highest value with an answer, in SI.
    pub high: f64,
}

impl Error {
    /// A value outside the bounds within which an answer would be physical.
    pub const fn out_of_range(quantity: Quantity, value: f64, low: f64, high: f64) -> Self {
        Self {
            kind: ErrorKind::OutOfRange,
            quantity,
            value,
            low,
            high,
        }
    }

    /// NaN or an infinity.
    pub const fn not_finite(quantity: Quantity, value: f64) -> Self {
        Self {
            kind: ErrorKind::NotFinite,
            quantity,
            value,
            low: f64::NAN,
            high: f64::NAN,
        }
    }

    /// An error that has a kind and a quantity but no figures.
    pub const fn of(kind: ErrorKind, quantity: Quantity) -> Self {
        Self {
            kind,
            quantity,
            value: f64::NAN,
            low: f64::NAN,
            high: f64::NAN,
        }
    }

    /// A solver that stopped at this relative residual, above the tolerance it had to reach.
    pub const fn no_convergence(residual: f64, tolerance: f64) -> Self {
        Self {
            kind: ErrorKind::NoConvergence,
            quantity: Quantity::Residual,
            value: residual,
            low: 0.0,
            high: tolerance,
        }
    }
}

/// Equal when kind, quantity and every figure are equal; NaN, a figure that does not apply, equals NaN.
impl PartialEq for Error {
    fn eq(&self, other: &Self) -> bool {
        let figures = |e: &Self| [e.value.to_bits(), e.low.to_bits(), e.high.to_bits()];
        self.kind == other.kind && self.quantity == other.quantity && figures(self) == figures(other)
    }
}

impl Eq for Error {}

impl core::error::Error for Error {}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self {
            quantity,
            value,
            low,
            high,
            ..
        } = *self;
        match self.kind {
            ErrorKind::OutOfRange => outside(f, quantity, [value, low, high], quantity.unit().trim_start()),
            ErrorKind::NotFinite => write!(f, "{quantity} is {value}, not a finite number"),
            ErrorKind::MissingUnit => write!(f, "{quantity} needs its unit, as in {}", quantity.spelling()),
            ErrorKind::MissingDatum => {
                write!(
                    f,
                    "a pressure needs its datum: write psig or psia, \"kPa gauge\" or \"kPa abs\", inHg vacuum"
                )
            }
            ErrorKind::UnknownUnit => write!(f, "this is not a unit of {quantity}; write {}", quantity.spelling()),
            ErrorKind::DecimalComma => {
                write!(
                    f,
                    "a comma marks neither decimals nor thousands here: write 2.4 and 1500, not 2,4 and 1,500"
                )
            }
            ErrorKind::NotANumber => write!(f, "{quantity} starts with a number, as in {}", quantity.spelling()),
            ErrorKind::UnknownName => write!(f, "this name is not in the vocabulary"),
            ErrorKind::NoConvergence => {
                let [value, high] = [value, high].map(Figure::rounded);
                write!(f, "the solver stopped at a residual of {value}, above {high}")
            }
            ErrorKind::TwoPhase => write!(
                f,
                "pressure and temperature lie on the saturation line: give the quality"
            ),
            ErrorKind::Missing => write!(f, "{quantity} is missing"),
            ErrorKind::Inconsistent => write!(f, "{quantity} contradicts another value"),
            ErrorKind::Syntax => write!(f, "this is not a readings file"),
            ErrorKind::NotAvailable => write!(f, "{quantity} is not available here: no published data support it"),
        }
    }
}

/// Writes that a value, the first figure, is outside its bounds, the other two.
pub(crate) fn outside(f: &mut fmt::Formatter<'_>, quantity: Quantity, figures: [f64; 3], unit: &str) -> fmt::Result {
    let [value, low, high] = readable(figures);
    let space = if unit.is_empty() { "" } else { " " };
    write!(
        f,
        "{quantity} {value}{space}{unit} is outside {low}{space}{unit} to {high}{space}{unit}"
    )
}

/// A value and the bounds it is outside of, rounded to six digits; not rounded if that would put the value within them.
fn readable(figures: [f64; 3]) -> [Figure; 3] {
    let rounded = figures.map(Figure::rounded);
    let [Figure(value), Figure(low), Figure(high)] = rounded;
    if value >= low && value <= high {
        figures.map(Figure)
    } else {
        rounded
    }
}

/// A figure in a text.
#[derive(Clone, Copy)]
struct Figure(f64);

impl Figure {
    /// Rounded to six significant digits, but never to the left of the decimal point.
    fn rounded(value: f64) -> Self {
        if value == 0.0 || !value.is_finite() {
            return Self(value);
        }
        let before = libm::floor(libm::log10(libm::fabs(value)));
        let scale = libm::pow(10.0, (5.0 - before).clamp(0.0, 300.0));
        let rounded = libm::round(value * scale) / scale;
        Self(if rounded.is_finite() { rounded } else { value })
    }
}

/// Very small and very large figures are written with a power of ten.
impl fmt::Display for Figure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(value) = *self;
        if value == 0.0 || (1e-4..1e12).contains(&libm::fabs(value)) || !value.is_finite() {
            write!(f, "{value}")
        } else {
            write!(f, "{value:e}")
        }
    }
}

impl Quantity {
    /// The SI unit with a leading space, ready to follow a number; empty for a pure number.
    pub const fn unit(self) -> &'static str {
        match self {
            Quantity::Temperature | Quantity::TemperatureDifference => " K",
            Quantity::AbsolutePressure => " Pa",
            Quantity::GaugePressure => " Pa gauge",
            Quantity::Altitude => " m",
            Quantity::Density => " mol/m3",
            Quantity::Volume => " m3",
            Quantity::Enthalpy => " J/kg",
            Quantity::Entropy => " J/(kg K)",
            Quantity::Speed => " m/s",
            Quantity::RotationalSpeed => " 1/s",
            Quantity::Mass => " kg",
            Quantity::Duration => " s",
            Quantity::Frequency => " 1/s",
            Quantity::Voltage => " V",
            Quantity::Size => " bytes",
            Quantity::Viscosity => " Pa s",
            Quantity::Conductivity => " W/(m K)",
            Quantity::SurfaceTension => " N/m",
            Quantity::RelativeHumidity
            | Quantity::HumidityRatio
            | Quantity::Quality
            | Quantity::Probability
            | Quantity::Cost
            | Quantity::BlowerSetting
            | Quantity::Severity
            | Quantity::Displacement
            | Quantity::FanCommand
            | Quantity::Evaporators
            | Quantity::Rows
            | Quantity::Name
            | Quantity::Residual => "",
        }
    }

    /// How a value of this quantity is written.
    pub const fn spelling(self) -> &'static str {
        match self {
            Quantity::Temperature => "\"74 °F\" or \"23.3 °C\"",
            Quantity::TemperatureDifference => "\"5 K\" or \"9 °F\"",
            Quantity::AbsolutePressure => "\"101.3 kPa abs\" or \"14.7 psia\"",
            Quantity::GaugePressure => "\"35 psig\" or \"2.4 bar gauge\"",
            Quantity::Altitude => "\"5250 ft\" or \"1600 m\"",
            Quantity::RelativeHumidity
            | Quantity::Probability
            | Quantity::Quality
            | Quantity::BlowerSetting
            | Quantity::Displacement
            | Quantity::FanCommand
            | Quantity::Severity => "\"40 %\"",
            Quantity::HumidityRatio => "\"8 g/kg\"",
            Quantity::Density => "\"50 mol/m3\"",
            Quantity::Volume => "\"2.1 L\" or \"90 cm3\"",
            Quantity::Enthalpy => "\"250 kJ/kg\" or \"107 Btu/lb\"",
            Quantity::Entropy => "\"1.7 kJ/(kg K)\"",
            Quantity::Speed => "\"50 km/h\" or \"30 mph\"",
            Quantity::RotationalSpeed => "\"1500 rpm\"",
            Quantity::Mass => "\"650 g\" or \"1.4 lb\"",
            Quantity::Duration => "\"10 min\"",
            Quantity::Frequency => "\"3 /min\"",
            Quantity::Voltage => "\"2.5 V\"",
            Quantity::Viscosity => "\"12e-6 Pa s\"",
            Quantity::Conductivity => "\"0.08 W/(m K)\"",
            Quantity::SurfaceTension => "\"0.008 N/m\"",
            Quantity::Cost
            | Quantity::Rows
            | Quantity::Name
            | Quantity::Residual
            | Quantity::Size
            | Quantity::Evaporators => "the value alone",
        }
    }
}
