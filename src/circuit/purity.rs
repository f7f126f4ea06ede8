//! What a circuit or a cylinder can hold, from its pressure and temperature at rest.

use super::estimate::{Estimate, Input};
use super::figures;
use super::readings::Reading;
use crate::error::Error;
use crate::mixture::Side;
use crate::names::{PressureMatch, Refrigerant};
use crate::units::{Pressure, PressureDifference, Surroundings, Temperature};

/// Standard uncertainties by which a reading may differ from a line and still agree with it.
const COVERAGE: f64 = 2.0;

/// A pressure at rest, compared with the bubble and dew lines of one refrigerant.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct AtRest {
    /// What it says.
    pub pressure_match: PressureMatch,
    /// The pressure above that of the bubble line.
    ///
    /// Where it is `TooHigh`, this is the partial pressure of the gas, if it is gas (Dalton's law, which holds within a few
    /// hundredths of it here).
    pub excess: Estimate<PressureDifference>,
    /// The pressure above that of the dew line; the same for a pure refrigerant.
    pub above_dew: Estimate<PressureDifference>,
    /// The mole share of gas in the vapour space, if it is gas; 0 unless the pressure is too high.
    pub gas_share: f64,
}

/// Can a circuit or cylinder at rest, with liquid in it and all of one temperature, hold this refrigerant, and how much gas
/// beside it?
///
/// At rest, a pure refrigerant with liquid and vapour has its saturation pressure; a blend has a pressure between dew and
/// bubble pressure, nearer to bubble pressure the more liquid there is. Air and other gases that do not condense add their
/// partial pressure. Call it for every refrigerant to see with which ones a pressure agrees. Several often do: the line of
/// R-134a crosses that of R-12 at 17 °C and that of R-1234yf at 41 °C, so a second reading some 15 K warmer or colder tells
/// more than the first, and an analyser more than both. Source: Dalton's law; the method is common practice, no source.
///
/// Errors: as [`super::superheat`] for the readings; `OutOfRange` where the refrigerant has no line at that temperature.
///
/// ```
/// use coldloop::Refrigerant;
/// use coldloop::circuit::{PressureMatch, Reading, at_rest};
/// use coldloop::units::{AbsolutePressure, PressureDifference, Surroundings, celsius, kelvins_difference};
///
/// let pressure = Reading::within(AbsolutePressure::from_pa(800_000.0).into(), PressureDifference::from_pa(5_000.0));
/// let temperature = Reading::within(celsius(25.0), kelvins_difference(0.5));
/// let found = at_rest(Refrigerant::R134a, pressure, temperature, Surroundings::SEA_LEVEL)?;
/// assert_eq!(found.pressure_match, PressureMatch::TooHigh);
/// assert!((found.excess.value.pa() - 134_600.0).abs() < 500.0);
/// # Ok::<(), coldloop::Error>(())
/// ```
pub fn at_rest(
    refrigerant: Refrigerant,
    pressure: Reading<Pressure>,
    temperature: Reading<Temperature>,
    surroundings: Surroundings,
) -> Result<AtRest, Error> {
    let pressure = figures::pressure(pressure, surroundings, Input::HighSide)?;
    let temperature = figures::temperature(temperature, Input::Ambient)?;
    let above = |side| -> Result<Estimate, Error> {
        let line = figures::saturation_pressure(refrigerant, temperature, side)?;
        Ok(pressure.minus(line).estimate())
    };
    let (excess_pa, above_dew_pa) = (above(Side::Bubble)?, above(Side::Dew)?);
    let pressure_match = if excess_pa.value > COVERAGE * excess_pa.standard_uncertainty {
        PressureMatch::TooHigh
    } else if above_dew_pa.value < -COVERAGE * above_dew_pa.standard_uncertainty {
        PressureMatch::TooLow
    } else {
        PressureMatch::Agrees
    };
    Ok(AtRest {
        pressure_match,
        excess: Estimate::from_si(excess_pa),
        above_dew: Estimate::from_si(above_dew_pa),
        gas_share: match pressure_match {
            PressureMatch::TooHigh => excess_pa.value / pressure.value,
            PressureMatch::Agrees | PressureMatch::TooLow => 0.0,
        },
    })
}
