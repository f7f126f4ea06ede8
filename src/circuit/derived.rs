//! What follows from the readings, with its uncertainty.

use super::estimate::{Estimate, Input, Known};
use super::figures;
use super::readings::{Reading, Readings};
use crate::error::Error;
use crate::names::Refrigerant;
use crate::units::{Pressure, Surroundings, Temperature};

/// Dew temperature of a pressure, K: where its last liquid evaporates, or its first condenses. Of R-744 above its critical
/// pressure the pseudo-critical temperature, at which the specific heat has its peak and a gas cooler gives off most heat, takes
/// its place, here and in all figures that count from it.
///
/// Errors: as [`superheat`].
pub fn dew_temperature(
    refrigerant: Refrigerant,
    pressure: Reading<Pressure>,
    surroundings: Surroundings,
) -> Result<Estimate, Error> {
    let pressure = figures::pressure(pressure, surroundings, Input::LowSide)?;
    Ok(figures::dew(refrigerant, pressure)?.estimate())
}

/// Superheat: how far the suction line is above the dew point of the low-side pressure, K.
///
/// Negative when the line reads colder than vapour of that pressure can be: the thermometer or the gauge errs, or the
/// charge is not the refrigerant that the label names.
///
/// Errors: `NotFinite` and `OutOfRange` for a reading that cannot be; `OutOfRange` when the pressure has no saturation
/// temperature.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, superheat};
/// use coldloop::units::{GaugePressure, Pressure, Surroundings, Temperature, celsius};
/// use coldloop::{Refrigerant, Thermometer};
/// let low_side = Reading::pressure(GaugePressure::from_psig(35.0), Gauge::LOW_SIDE);
/// let suction_line = Reading::temperature(celsius(12.0), Thermometer::ClampThermistor);
/// let superheat = superheat(Refrigerant::R134a, suction_line, low_side, Surroundings::SEA_LEVEL)?;
/// assert!((superheat.value - 7.6).abs() < 0.05); // dew point 4.4 °C
/// assert!((superheat.standard_uncertainty - 1.2).abs() < 0.1);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn superheat(
    refrigerant: Refrigerant,
    suction_line: Reading<Temperature>,
    low_side: Reading<Pressure>,
    surroundings: Surroundings,
) -> Result<Estimate, Error> {
    let line = figures::temperature(suction_line, Input::SuctionLine)?;
    let dew = figures::dew(refrigerant, figures::pressure(low_side, surroundings, Input::LowSide)?)?;
    Ok(line.minus(dew).estimate())
}

/// Subcooling: how far the liquid line is below the bubble point of the high-side pressure, K.
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
) -> Result<Estimate, Error> {
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
/// use coldloop::units::{GaugePressure, Pressure, Surroundings, Temperature, celsius};
/// use coldloop::{Refrigerant, Thermometer};
/// let readings = Readings {
///     low_side: Some(Reading::pressure(GaugePressure::from_psig(35.0), Gauge::LOW_SIDE)),
///     high_side: Some(Reading::pressure(GaugePressure::from_psig(175.0), Gauge::HIGH_SIDE)),
///     ..Readings::default()
/// };
/// let derived = Derived::new(Refrigerant::R134a, &readings, Surroundings::SEA_LEVEL, None)?;
/// let ratio = derived.pressure_ratio.ok_or("both sides were read")?;
/// assert!((ratio.value - 3.82).abs() < 0.01); // (175 + 14.7)/(35 + 14.7)
/// assert!(derived.superheat_k.is_none()); // no line temperature was taken
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Derived {
    /// Low-side pressure above vacuum, Pa.
    pub low_side_pa: Option<Estimate>,
    /// High-side pressure above vacuum, Pa.
    pub high_side_pa: Option<Estimate>,
    /// High-side over low-side pressure, both above vacuum.
    pub pressure_ratio: Option<Estimate>,
    /// Dew temperature of the low side, K: where evaporation ends.
    pub low_dew_k: Option<Estimate>,
    /// Bubble temperature of the low side, K.
    pub low_bubble_k: Option<Estimate>,
    /// Dew temperature of the high side, K: where condensation begins.
    pub high_dew_k: Option<Estimate>,
    /// Bubble temperature of the high side, K.
    pub high_bubble_k: Option<Estimate>,
    /// Suction line above low-side dew point, K; see [`superheat`].
    pub superheat_k: Option<Estimate>,
    /// Liquid line (condenser outlet when the liquid line was not taken) below high-side bubble point, K; see
    /// [`subcooling`].
    pub subcooling_k: Option<Estimate>,
    /// Discharge line above high-side dew point, K.
    pub discharge_superheat_k: Option<Estimate>,
    /// High-side dew point above the ambient air, K.
    pub condensing_above_ambient_k: Option<Estimate>,
    /// Vent air above the low-side dew point, K.
    pub vent_above_evaporating_k: Option<Estimate>,
    /// Heat taken up by each kilogram between liquid line and suction line, J/kg; only when the one is liquid and the
    /// other vapour, since the share of vapour in a mixture cannot be read.
    pub cooling_j_kg: Option<Estimate>,
    /// Work of a loss-free compressor over the work done, from suction line to discharge line, both at the compressor.
    ///
    /// Holds for a compressor that loses no heat; a hot engine next to it, or oil, moves it by several per cent.
    pub isentropic_efficiency: Option<Estimate>,
}

impl Derived {
    /// The figures of these readings.
    ///
    /// `surroundings` is the air around the gauges; [`Readings::gauge_zero`] takes its place where the gauges keep
    /// another datum. `ambient` is the air in front of the vehicle.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for a reading that cannot be: a pressure below vacuum, a temperature that
    /// no line has, an uncertainty below zero.
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

        // Where the pressure has no saturation temperature there is no figure, and that is no error of the reading.
        let dew = |pressure: Option<Known>| figures::dew(refrigerant, pressure?).ok();
        let bubble = |pressure: Option<Known>| figures::bubble(refrigerant, pressure?).ok();
        let (low_dew, low_bubble) = (dew(low), bubble(low));
        let (high_dew, high_bubble) = (dew(high), bubble(high));
        Ok(Self {
            low_side_pa: low.map(Known::estimate),
            high_side_pa: high.map(Known::estimate),
            pressure_ratio: both(high, low)
                .filter(|(_, low)| low.value > 0.0)
                .map(|(high, low)| high.over(low).estimate()),
            low_dew_k: low_dew.map(Known::estimate),
            low_bubble_k: low_bubble.map(Known::estimate),
            high_dew_k: high_dew.map(Known::estimate),
            high_bubble_k: high_bubble.map(Known::estimate),
            superheat_k: difference(suction, low_dew),
            subcooling_k: difference(high_bubble, liquid),
            discharge_superheat_k: difference(discharge, high_dew),
            condensing_above_ambient_k: difference(high_dew, ambient),
            vent_above_evaporating_k: difference(vent, low_dew),
            cooling_j_kg: figures::cooling(refrigerant, (low, suction), (high, liquid)),
            isentropic_efficiency: figures::isentropic_efficiency(refrigerant, (low, suction), (high, discharge)),
        })
    }
}

fn both<T>(a: Option<T>, b: Option<T>) -> Option<(T, T)> {
    a.zip(b)
}

fn difference(upper: Option<Known>, lower: Option<Known>) -> Option<Estimate> {
    both(upper, lower).map(|(upper, lower)| upper.minus(lower).estimate())
}
