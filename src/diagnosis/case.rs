//! What is known of a vehicle.

use crate::circuit::{Observations, Readings};
use crate::error::Error;
use crate::expected::{OwnVehicle, PressureTable};
use crate::names::{ErrorKind, Observation, Quantity};
use crate::range::{ABSOLUTE_PRESSURE, FREQUENCY, GAUGE_PRESSURE, LINE_TEMPERATURE, TEMPERATURE};
use crate::units::{Pressure, difference_in_kelvins, in_kelvins};
use crate::vehicle::{Conditions, System};

/// One vehicle at one moment: its system, its conditions, its readings and its observations.
///
/// ```
/// use coldloop::circuit::{Gauge, Observations, Reading, Readings};
/// use coldloop::diagnosis::Case;
/// use coldloop::units::{GaugePressure, Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Observation, Refrigerant};
/// let system = System::new(Refrigerant::R1234yf, Expansion::Txv, Compressor::VariableExternal);
/// let conditions = Conditions::new(celsius(29.0), Surroundings::at_altitude(1_600.0)?);
/// let readings = Readings {
///     low_side: Some(Reading::pressure(GaugePressure::from_bar(1.1), Gauge::LOW_SIDE)),
///     ..Readings::default()
/// };
/// let mut case = Case::new(system, conditions, readings);
/// case.observations = Observations::NONE.with(Observation::SightGlassBubbles, true);
/// assert!(case.own_table.is_none());
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Case {
    /// The vehicle.
    pub system: System,
    /// Weather, place and how it is run.
    pub conditions: Conditions,
    /// What the instruments show.
    pub readings: Readings,
    /// What eyes, ears and hands found.
    pub observations: Observations,
    /// The vehicle's own pressure table, which replaces the bands of vehicles in general.
    pub own_table: Option<PressureTable>,
    /// Healthy readings of the same vehicle, which sharpen what is expected of it and what each reading says.
    pub own_readings: Option<OwnVehicle>,
}

impl Case {
    /// A vehicle of which nothing was read yet.
    pub const fn new(system: System, conditions: Conditions, readings: Readings) -> Self {
        Self {
            system,
            conditions,
            readings,
            observations: Observations::NONE,
            own_table: None,
            own_readings: None,
        }
    }
}

impl Case {
    /// Checks system, conditions, observations and the readings from which no figure is derived;
    /// [`Derived::new`](crate::circuit::Derived::new) checks the other readings.
    ///
    /// Errors: those of [`System::check`] and [`Conditions::check_for`]; `NotFinite` and `OutOfRange` for readings;
    /// `Inconsistent` for bubbles in a sight glass that is not there.
    pub(crate) fn check(&self) -> Result<(), Error> {
        self.system.check()?;
        self.conditions.check_for(self.system.compressor)?;
        check(&self.readings)?;
        let seen = self.observations.answer(Observation::SightGlassBubbles);
        if self.system.sight_glass == Some(false) && seen.is_some() {
            return Err(Error::of(ErrorKind::Inconsistent, Quantity::Name));
        }
        Ok(())
    }
}

/// Checks the readings from which no figure is derived.
///
/// Errors: `NotFinite`; `OutOfRange` for a temperature that no line has, or a negative uncertainty.
fn check(readings: &Readings) -> Result<(), Error> {
    if let Some(reading) = readings.high_side_transducer {
        match reading.value {
            Pressure::Absolute(pressure) => ABSOLUTE_PRESSURE.check(pressure.pa())?,
            Pressure::Gauge(pressure) => GAUGE_PRESSURE.check(pressure.pa())?,
        };
        ABSOLUTE_PRESSURE.check(reading.standard_uncertainty.pa())?;
    }
    let others = [readings.cabin, readings.condenser_outlet, readings.evaporator_sensor];
    for reading in others.into_iter().flatten() {
        LINE_TEMPERATURE.check(in_kelvins(reading.value))?;
        TEMPERATURE.check(difference_in_kelvins(reading.standard_uncertainty))?;
    }
    if let Some(reading) = readings.clutch_cycles {
        FREQUENCY.check(reading.value.hz())?;
        FREQUENCY.check(reading.standard_uncertainty.hz())?;
    }
    Ok(())
}
