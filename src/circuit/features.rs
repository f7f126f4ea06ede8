//! The readings as one vector: saturation temperatures of both sides and the lines, above the ambient.

use super::estimate::{Estimate, Input, Known};
use super::figures;
use super::readings::{Reading, Readings};
use crate::error::Error;
use crate::names::{ErrorKind, Refrigerant};
use crate::saturation;
use crate::units::{Pressure, Surroundings, Temperature, in_kelvins};

/// What a system shows, in the coordinates of the sound model and the atlas of faults.
///
/// In this order, each in K above the ambient: dew temperature of the low side, bubble temperature of the high side (for R-744
/// above its critical pressure the pseudo-critical temperature), vent, suction line, liquid line, condenser outlet, discharge
/// line; and last ln(1 + clutch engagements per minute). Superheat, subcooling and discharge superheat are differences of
/// these.
///
/// A dew temperature below -45 °C is replaced by -45 °C: a shop's gauge does not resolve a vacuum any better. Above the
/// critical pressure the saturation line is extrapolated along ln p, and [`Self::off_scale`] is true.
///
/// ```
/// use coldloop::circuit::{FeatureVector, Reading, Readings};
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::{Refrigerant, Thermometer};
/// let readings = Readings {
///     vent: Some(Reading::temperature(celsius(8.0), Thermometer::PocketDigital)),
///     ..Readings::default()
/// };
/// let features = FeatureVector::of(Refrigerant::R134a, &readings, celsius(29.0), Surroundings::SEA_LEVEL)?;
/// assert!((features.read[FeatureVector::VENT].unwrap().value + 21.0).abs() < 1e-9);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FeatureVector {
    /// Value and standard uncertainty of each; `None` for what was not read.
    pub read: [Option<Estimate>; Self::COUNT],
    /// Whether a pressure lies above the critical pressure of the refrigerant.
    pub off_scale: bool,
}

/// Slope of the extrapolation beyond the critical point: d ln T / d ln p.
///
/// Source: engineering judgement; the saturation line of R-134a has 0.134 at 3 MPa and 0.130 at its end. Nothing condenses
/// beyond it; the slope only continues the scale.
const BEYOND: f64 = 0.14;

impl FeatureVector {
    /// How many there are.
    pub const COUNT: usize = 8;
    /// The coldest saturation temperature that counts, K. Source: engineering judgement; 39 kPa of R-134a.
    pub const COLDEST_K: f64 = 228.15;
    /// Place of the dew temperature of the low side.
    pub const LOW_SIDE: usize = 0;
    /// Place of the bubble temperature of the high side.
    pub const HIGH_SIDE: usize = 1;
    /// Place of the vent.
    pub const VENT: usize = 2;
    /// Place of the suction line.
    pub const SUCTION_LINE: usize = 3;
    /// Place of the liquid line.
    pub const LIQUID_LINE: usize = 4;
    /// Place of the condenser outlet.
    pub const CONDENSER_OUTLET: usize = 5;
    /// Place of the discharge line.
    pub const DISCHARGE_LINE: usize = 6;
    /// Place of the clutch's cycles.
    pub const CLUTCH_CYCLES: usize = 7;

    /// The vector of these readings; the datum of gauges is [`Readings::gauge_zero`], or `air`.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for an impossible reading.
    pub fn of(
        refrigerant: Refrigerant,
        readings: &Readings,
        ambient: Temperature,
        air: Surroundings,
    ) -> Result<Self, Error> {
        let datum = readings.gauge_zero.unwrap_or(air);
        let ambient_k = in_kelvins(ambient);
        let mut off_scale = false;
        let mut side = |pressure: Option<Reading<Pressure>>, input: Input| {
            let Some(pressure) = pressure else { return Ok(None) };
            let (known, beyond) = saturated(refrigerant, figures::pressure(pressure, datum, input)?, input)?;
            off_scale |= beyond;
            Ok::<_, Error>(Some(known))
        };
        let low = side(readings.low_side, Input::LowSide)?;
        let high = side(readings.high_side_known(air), Input::HighSide)?;
        let line = |reading: Option<Reading<Temperature>>, input: Input| {
            let known = reading
                .map(|reading| figures::temperature(reading, input))
                .transpose()?;
            Ok::<_, Error>(known.map(|known| above(known.estimate(), ambient_k)))
        };
        let cycles = readings.clutch_cycles.map(|reading| {
            let per_minute = 60.0 * reading.value.hz();
            Estimate {
                value: libm::log1p(per_minute),
                standard_uncertainty: 60.0 * reading.standard_uncertainty.hz() / (1.0 + per_minute),
            }
        });
        let read = [
            low.map(|low| above(low, ambient_k)),
            high.map(|high| above(high, ambient_k)),
            line(readings.vent, Input::Vent)?,
            line(readings.suction_line, Input::SuctionLine)?,
            line(readings.liquid_line, Input::LiquidLine)?,
            line(readings.condenser_outlet, Input::LiquidLine)?,
            line(readings.discharge_line, Input::DischargeLine)?,
            cycles,
        ];
        Ok(Self { read, off_scale })
    }
}

fn above(estimate: Estimate, ambient_k: f64) -> Estimate {
    Estimate {
        value: estimate.value - ambient_k,
        ..estimate
    }
}

/// Saturation temperature of a side, K, and whether it lies beyond the critical pressure.
fn saturated(refrigerant: Refrigerant, pressure: Known, side: Input) -> Result<(Estimate, bool), Error> {
    let on_line = if side == Input::LowSide {
        figures::dew(refrigerant, pressure)
    } else {
        figures::bubble(refrigerant, pressure)
    };
    match on_line {
        Ok(known) => {
            let estimate = known.estimate();
            let value = f64::max(estimate.value, FeatureVector::COLDEST_K);
            Ok((Estimate { value, ..estimate }, false))
        }
        Err(error) if error.kind == ErrorKind::OutOfRange => {
            let line = saturation::line_of(refrigerant);
            let (critical_k, critical_pa) = (line.critical_t_k(), line.critical_p_pa());
            let known: Estimate = pressure.estimate();
            if known.value < critical_pa {
                let coldest = Estimate {
                    value: FeatureVector::COLDEST_K,
                    standard_uncertainty: 0.0,
                };
                return Ok((coldest, false));
            }
            let value = critical_k * libm::pow(known.value / critical_pa, BEYOND);
            let standard_uncertainty = BEYOND * value * known.standard_uncertainty / known.value;
            Ok((
                Estimate {
                    value,
                    standard_uncertainty,
                },
                true,
            ))
        }
        Err(error) => Err(error),
    }
}
