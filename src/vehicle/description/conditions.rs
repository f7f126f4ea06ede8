//! The conditions in which the readings were taken.

use crate::error::Error;
use crate::names::{AirSource, Compressor, ErrorKind, Quantity};
use crate::range::{AMBIENT, BLOWER, DISPLACEMENT, DURATION, FAN_COMMAND, RELATIVE_HUMIDITY, ROTATIONAL_SPEED, SPEED};
use crate::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, Temperature, TimeSpan, in_kelvins};

/// Weather, place and how the vehicle is run.
///
/// ```
/// use coldloop::units::{RelativeHumidity, RotationalSpeed, Surroundings, celsius};
/// use coldloop::vehicle::Conditions;
/// let mut day = Conditions::new(celsius(31.0), Surroundings::at_altitude(1_600.0)?);
/// day.relative_humidity = Some(RelativeHumidity::from_percent(30.0));
/// day.engine_speed = Some(RotationalSpeed::from_rpm(1_500.0));
/// day.check()?;
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Conditions {
    /// Air in the shade, in front of the vehicle.
    pub ambient: Temperature,
    /// Relative humidity of that air.
    pub relative_humidity: Option<RelativeHumidity>,
    /// The pressure of that air.
    pub surroundings: Surroundings,
    /// Engine speed; of an electric compressor its own speed, where zero counts as unknown.
    pub engine_speed: Option<RotationalSpeed>,
    /// Where the blower draws from.
    pub air_source: Option<AirSource>,
    /// Blower setting, 0 (off) to 1 (highest).
    pub blower: Option<f64>,
    /// Vehicle speed; zero at a standstill.
    pub vehicle_speed: Option<Speed>,
    /// Time since the system was switched on.
    pub running_for: Option<TimeSpan>,
    /// Whether the compressor is driven, as seen or as a scan tool shows it; it takes precedence over any speed.
    pub compressor_running: Option<bool>,
    /// Speed of the compressor itself, as a scan tool shows it.
    pub compressor_speed: Option<RotationalSpeed>,
    /// Displacement that the control of an externally controlled compressor commands, 0 to 1 of the full one.
    pub commanded_displacement: Option<f64>,
    /// Command of the condenser's fan, 0 (off) to 1 (full speed); the expected readings depend on it, except with R-744.
    pub fan_command: Option<f64>,
}

/// Two speeds of one compressor that differ by more than this share of the larger one contradict each other. Source:
/// engineering judgement.
const SAME_SPEED: f64 = 0.1;

impl Conditions {
    /// A place and its temperature, with nothing else known.
    pub const fn new(ambient: Temperature, surroundings: Surroundings) -> Self {
        Self {
            ambient,
            relative_humidity: None,
            surroundings,
            engine_speed: None,
            air_source: None,
            blower: None,
            vehicle_speed: None,
            running_for: None,
            compressor_running: None,
            compressor_speed: None,
            commanded_displacement: None,
            fan_command: None,
        }
    }

    /// Checks that every figure is finite and within its range.
    ///
    /// Errors: `NotFinite` and `OutOfRange`, naming the quantity; `Inconsistent` for a compressor that runs at no speed, or
    /// turns without running.
    pub fn check(&self) -> Result<(), Error> {
        AMBIENT.check(in_kelvins(self.ambient))?;
        let optional = [
            (
                RELATIVE_HUMIDITY,
                self.relative_humidity.map(RelativeHumidity::fraction),
            ),
            (ROTATIONAL_SPEED, self.engine_hz()),
            (BLOWER, self.blower),
            (SPEED, self.vehicle_speed.map(Speed::m_s)),
            (DURATION, self.running_for.map(TimeSpan::seconds)),
            (ROTATIONAL_SPEED, self.compressor_hz()),
            (DISPLACEMENT, self.commanded_displacement),
            (FAN_COMMAND, self.fan_command),
        ];
        for (range, value) in optional {
            if let Some(value) = value {
                range.check(value)?;
            }
        }
        match (self.compressor_running, self.compressor_hz()) {
            (Some(running), Some(hz)) if running != (hz > 0.0) => {
                Err(Error::of(ErrorKind::Inconsistent, Quantity::RotationalSpeed))
            }
            _ => Ok(()),
        }
    }

    /// Checks that the conditions are possible for a compressor of this kind.
    ///
    /// For an electric compressor the engine speed counts as the compressor's own, except zero, as the motor runs without the
    /// engine.
    ///
    /// Errors: those of [`Conditions::check`]; `Inconsistent` for two speeds of an electric compressor that differ by more than
    /// a tenth, and for a commanded displacement where no electric valve controls it.
    ///
    /// ```
    /// use coldloop::units::{RotationalSpeed, Surroundings, celsius};
    /// use coldloop::vehicle::Conditions;
    /// use coldloop::{Compressor, ErrorKind};
    /// let told = Conditions {
    ///     engine_speed: Some(RotationalSpeed::from_rpm(1_500.0)),
    ///     compressor_speed: Some(RotationalSpeed::from_rpm(3_000.0)),
    ///     ..Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)
    /// };
    /// assert!(told.check_for(Compressor::FixedClutch).is_ok());
    /// assert_eq!(told.check_for(Compressor::Electric).unwrap_err().kind, ErrorKind::Inconsistent);
    /// ```
    pub fn check_for(&self, compressor: Compressor) -> Result<(), Error> {
        self.check()?;
        let electric = compressor == Compressor::Electric;
        let engine_hz = self.engine_hz().filter(|hz| electric && *hz > 0.0);
        let apart = |(one, other): &(f64, f64)| libm::fabs(one - other) > SAME_SPEED * f64::max(*one, *other);
        if engine_hz.zip(self.compressor_hz()).as_ref().is_some_and(apart) {
            return Err(Error::of(ErrorKind::Inconsistent, Quantity::RotationalSpeed));
        }
        if self.commanded_displacement.is_some() && compressor != Compressor::VariableExternal {
            return Err(Error::of(ErrorKind::Inconsistent, Quantity::Displacement));
        }
        Ok(())
    }

    fn engine_hz(&self) -> Option<f64> {
        self.engine_speed.map(RotationalSpeed::hz)
    }

    fn compressor_hz(&self) -> Option<f64> {
        self.compressor_speed.map(RotationalSpeed::hz)
    }

    /// The speed that sets how fast a compressor of this kind turns, revolutions per second: of an electric one its own, of any
    /// other that of the engine. Zero counts as unknown where the compressor runs.
    pub(crate) fn driving_hz(&self, compressor: Compressor) -> Option<f64> {
        if compressor == Compressor::Electric {
            let own_hz = self.compressor_hz().or(self.engine_hz());
            return own_hz.filter(|hz| *hz > 0.0);
        }
        let runs = self.compressor_running == Some(true);
        self.engine_hz().filter(|hz| !runs || *hz > 0.0)
    }

    /// Whether a compressor of this kind is known to stand still: a motor-driven one runs without the engine.
    ///
    /// What is known of the compressor itself takes precedence over the engine's speed.
    ///
    /// ```
    /// use coldloop::Compressor;
    /// use coldloop::units::{RotationalSpeed, Surroundings, celsius};
    /// use coldloop::vehicle::Conditions;
    /// let parked = Conditions {
    ///     engine_speed: Some(RotationalSpeed::from_rpm(0.0)),
    ///     ..Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)
    /// };
    /// assert!(parked.at_rest(Compressor::FixedClutch) && !parked.at_rest(Compressor::Electric));
    /// let off = Conditions { compressor_running: Some(false), ..parked };
    /// assert!(off.at_rest(Compressor::Electric));
    /// ```
    pub fn at_rest(&self, compressor: Compressor) -> bool {
        match (self.compressor_running, self.compressor_hz()) {
            (Some(running), _) => !running,
            (None, Some(hz)) => hz == 0.0,
            (None, None) => compressor != Compressor::Electric && self.engine_hz() == Some(0.0),
        }
    }
}
