//! What follows from the readings, with its uncertainty.

use super::estimate::{Estimate, Input, Known};
use super::figures;
use super::readings::{Reading, Readings};
use crate::error::Error;
use crate::names::Refrigerant;
use crate::units::{AbsolutePressure, Pressure, SpecificEnergy, Surroundings, Temperature, TemperatureDifference};

/// Dew temperature of a pressure: where the last liquid evaporates, or the first condenses.
///
/// For R-744 above its critical pressure it is the pseudo-critical temperature, at which the specific heat has its peak and a
/// gas cooler gives off most heat; this holds for all figures that are measured from it.
///
/// Errors: as [`superheat`].
pub fn dew_temperature(
    refrigerant: Refrigerant,
    pressure: Reading<Pressure>,
    surroundings: Surroundings,
) -> Result<Estimate<Temperature>, Error> {
    let pressure = figures::pressure(pressure, surroundings, Input::LowSide)?;
    Ok(figures::dew(refrigerant, pressure)?.estimate())
}

/// Superheat: how far the suction line is above the dew point of the low-side pressure.
///
/// Negative when the line reads colder than vapour of that pressure can be: the thermometer or the gauge errs, or the
/// charge is not the refrigerant that the label names.
///
/// Errors: `NotFinite` and `OutOfRange` for an impossible reading; `OutOfRange` when the pressure has no saturation
/// temperature.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, superheat};
/// use coldloop::units::{GaugePressure, Surroundings, celsius, difference_in_kelvins};
/// use coldloop::{Refrigerant, Thermometer};
/// let low_side = Reading::pressure(GaugePressure::from_psig(35.0), Gauge::LOW_SIDE);
/// let suction_line = Reading::temperature(celsius(12.0), Thermometer::ClampThermistor);
/// let superheat = superheat(Refrigerant::R134a, suction_line, low_side, Surroundings::SEA_LEVEL)?;
/// assert!((difference_in_kelvins(superheat.value) - 7.6).abs() < 0.05); // dew point 4.4 °C
/// assert!((difference_in_kelvins(superheat.standard_uncertainty) - 1.2).abs() < 0.1);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn superheat(
    refrigerant: Refrigerant,
    suction_line: Reading<Temperature>,
    low_side: Reading<Pressure>,
    surroundings: Surroundings,
) -> Result<Estimate<TemperatureDifference>, Error> {
    let line = figures::temperature(suction_line, Input::SuctionLine)?;
    let dew = figures::dew(refrigerant, figures::pressure(low_side, surroundings, Input::LowSide)?)?;
    Ok(line.minus(dew).estimate())
}

/// Subcooling: how far the liquid line is below the bubble point of the high-side pressure.
///
/// Negative when the line is warmer than the refrigerant can be as liquid: it carries bubbles, or the high side holds a
/// gas that does not condense.
///
/// Errors: as [`superheat`].
pub fn subcooling(
    refrigerant: Refrigerant,
    liquid_line: Reading<Temperature>,
    high_side: Reading<Pressure>,
    surroundings: Surroundings,
) -> Result<Estimate<TemperatureDifference>, Error> {
    let line = figures::temperature(liquid_line, Input::LiquidLine)?;
    let bubble = figures::bubble(
        refrigerant,
        figures::pressure(high_side, surroundings, Input::HighSide)?,
    )?;
    Ok(bubble.minus(line).estimate())
}

/// The figures that follow from readings; each is `None` when a reading that it needs was not taken, or when the
/// refrigerant has no such figure there (no saturation temperature above the critical pressure or in a deep vacuum).
///
/// ```
/// use coldloop::circuit::{Derived, Gauge, Reading, Readings};
/// use coldloop::units::{GaugePressure, Surroundings};
/// use coldloop::{Refrigerant, Thermometer};
/// let readings = Readings {
///     low_side: Some(Reading::pressure(GaugePressure::from_psig(35.0), Gauge::LOW_SIDE)),
///     high_side: Some(Reading::pressure(GaugePressure::from_psig(175.0), Gauge::HIGH_SIDE)),
///     ..Readings::default()
/// };
/// let derived = Derived::new(Refrigerant::R134a, &readings, Surroundings::SEA_LEVEL, None)?;
/// let ratio = derived.pressure_ratio.ok_or("both sides were read")?;
/// assert!((ratio.value - 3.82).abs() < 0.01); // (175 + 14.7)/(35 + 14.7)
/// assert!(derived.superheat.is_none()); // no line temperature was taken
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Derived {
    /// Low-side pressure above vacuum.
    #[cfg_attr(feature = "serde", serde(rename = "low_side_pa"))]
    pub low_side: Option<Estimate<AbsolutePressure>>,
    /// High-side pressure above vacuum.
    #[cfg_attr(feature = "serde", serde(rename = "high_side_pa"))]
    pub high_side: Option<Estimate<AbsolutePressure>>,
    /// High-side over low-side pressure, both above vacuum.
    pub pressure_ratio: Option<Estimate>,
    /// Dew temperature of the low side: where evaporation ends.
    #[cfg_attr(feature = "serde", serde(rename = "low_dew_k"))]
    pub low_dew: Option<Estimate<Temperature>>,
    /// Bubble temperature of the low side.
    #[cfg_attr(feature = "serde", serde(rename = "low_bubble_k"))]
    pub low_bubble: Option<Estimate<Temperature>>,
    /// Dew temperature of the high side: where condensation begins.
    #[cfg_attr(feature = "serde", serde(rename = "high_dew_k"))]
    pub high_dew: Option<Estimate<Temperature>>,
    /// Bubble temperature of the high side.
    #[cfg_attr(feature = "serde", serde(rename = "high_bubble_k"))]
    pub high_bubble: Option<Estimate<Temperature>>,
    /// Suction line above low-side dew point; see [`superheat`].
    #[cfg_attr(feature = "serde", serde(rename = "superheat_k"))]
    pub superheat: Option<Estimate<TemperatureDifference>>,
    /// Liquid line (condenser outlet when the liquid line was not taken) below high-side bubble point; see
    /// [`subcooling`].
    #[cfg_attr(feature = "serde", serde(rename = "subcooling_k"))]
    pub subcooling: Option<Estimate<TemperatureDifference>>,
    /// Discharge line above high-side dew point.
    #[cfg_attr(feature = "serde", serde(rename = "discharge_superheat_k"))]
    pub discharge_superheat: Option<Estimate<TemperatureDifference>>,
    /// High-side dew point above the ambient air.
    #[cfg_attr(feature = "serde", serde(rename = "condensing_above_ambient_k"))]
    pub condensing_above_ambient: Option<Estimate<TemperatureDifference>>,
    /// Vent air above the low-side dew point.
    #[cfg_attr(feature = "serde", serde(rename = "vent_above_evaporating_k"))]
    pub vent_above_evaporating: Option<Estimate<TemperatureDifference>>,
    /// Heat taken up by each kilogram between liquid line and suction line; only when the one is liquid and the
    /// other vapour, since the share of vapour in a mixture cannot be read.
    #[cfg_attr(feature = "serde", serde(rename = "cooling_j_kg"))]
    pub cooling: Option<Estimate<SpecificEnergy>>,
    /// Work of a loss-free compressor over the work done, from suction line to discharge line, both at the compressor.
    ///
    /// Holds for a compressor that loses no heat; a hot engine next to it, or oil, moves it by several per cent.
    pub isentropic_efficiency: Option<Estimate>,
}

impl Derived {
    /// The figures of these readings.
    ///
    /// `surroundings` is the air around the gauges; [`Readings::gauge_zero`] replaces it where the gauges were zeroed in other
    /// air. `ambient` is the air in front of the vehicle.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for an impossible reading: a pressure below vacuum, a temperature that no line
    /// has, an uncertainty below zero.
    pub fn new(
        refrigerant: Refrigerant,
        readings: &Readings,
        surroundings: Surroundings,
        ambient: Option<Reading<Temperature>>,
    ) -> Result<Self, Error> {
        let datum = readings.gauge_zero.unwrap_or(surroundings);
        let pressure = |reading: Option<Reading<Pressure>>, input| {
            reading
                .map(|reading| figures::pressure(reading, datum, input))
                .transpose()
        };
        let line = |reading: Option<Reading<Temperature>>, input| {
            reading.map(|reading| figures::temperature(reading, input)).transpose()
        };
        let low = pressure(readings.low_side, Input::LowSide)?;
        let high = pressure(readings.high_side_known(surroundings), Input::HighSide)?;
        let suction = line(readings.suction_line, Input::SuctionLine)?;
        let discharge = line(readings.discharge_line, Input::DischargeLine)?;
        let liquid = line(readings.liquid_line.or(readings.condenser_outlet), Input::LiquidLine)?;
        let vent = line(readings.vent, Input::Vent)?;
        let ambient = line(ambient, Input::Ambient)?;

        // A pressure without a saturation temperature is a valid reading; the figures that need one are left out.
        let dew = |pressure: Option<Known>| figures::dew(refrigerant, pressure?).ok();
        let bubble = |pressure: Option<Known>| figures::bubble(refrigerant, pressure?).ok();
        let (low_dew, low_bubble) = (dew(low), bubble(low));
        let (high_dew, high_bubble) = (dew(high), bubble(high));
        Ok(Self {
            low_side: low.map(Known::estimate),
            high_side: high.map(Known::estimate),
            pressure_ratio: both(high, low)
                .filter(|(_, low)| low.value > 0.0)
                .map(|(high, low)| high.over(low).estimate()),
            low_dew: low_dew.map(Known::estimate),
            low_bubble: low_bubble.map(Known::estimate),
            high_dew: high_dew.map(Known::estimate),
            high_bubble: high_bubble.map(Known::estimate),
            superheat: difference(suction, low_dew),
            subcooling: difference(high_bubble, liquid),
            discharge_superheat: difference(discharge, high_dew),
            condensing_above_ambient: difference(high_dew, ambient),
            vent_above_evaporating: difference(vent, low_dew),
            cooling: figures::cooling(refrigerant, (low, suction), (high, liquid)),
            isentropic_efficiency: figures::isentropic_efficiency(refrigerant, (low, suction), (high, discharge)),
        })
    }
}

fn both<T>(a: Option<T>, b: Option<T>) -> Option<(T, T)> {
    a.zip(b)
}

fn difference(upper: Option<Known>, lower: Option<Known>) -> Option<Estimate<TemperatureDifference>> {
    both(upper, lower).map(|(upper, lower)| upper.minus(lower).estimate())
}
