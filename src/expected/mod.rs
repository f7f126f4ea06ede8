//! What a sound system shows: median, 80 % and 95 % bands of every reading, for a system and its conditions.

mod constants;
mod expectation;
mod fleet;
mod healthy;
mod low_side;
mod spread;
mod table;

pub use expectation::Expectation;
pub use fleet::{
    Baseline, FLEET_AMBIENT, FLEET_BAROMETER, FLEET_BLOWER, FLEET_ENGINE_SPEED, FLEET_HUMIDITY_RATIO,
    FLEET_MOTOR_SPEED, FLEET_RUNNING, FLEET_SPEED, Fleet, FleetBands, SwingSpread, Weather, simulated_figures,
};
pub use healthy::{AMBIENT_OF_SOURCES, BAROMETER_OF_SOURCES, Healthy};
pub(crate) use healthy::{settled, stroke_limit, unsettled};
pub use spread::{Band, Spread};
pub use table::{PressureTable, TableError, TableRow};

use crate::error::Error;
use crate::saturation::pseudo_critical;
use crate::units::kelvins_difference;
use crate::units::{AbsolutePressure, GaugePressure, Temperature, TemperatureDifference, in_kelvins, kelvins};
use crate::vehicle::{Conditions, System};

/// The bands of every reading, in the quantity that its instrument shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bands {
    /// Low-side pressure above the air of the place.
    pub low_side: Band<GaugePressure>,
    /// High-side pressure above the air of the place.
    pub high_side: Band<GaugePressure>,
    /// Air at the centre vent.
    pub vent: Band<Temperature>,
    /// Condensing temperature above the ambient.
    pub approach: Band<TemperatureDifference>,
    /// Suction line at the compressor above the saturation temperature of the low side.
    pub superheat: Band<TemperatureDifference>,
    /// Liquid line below the saturation temperature of the high side.
    pub subcooling: Band<TemperatureDifference>,
    /// Discharge line above the saturation temperature of the high side.
    pub discharge_superheat: Band<TemperatureDifference>,
    /// Clutch engagements per second; `None` where no clutch cycles.
    pub clutch_cycles_hz: Option<Band<f64>>,
}

impl Bands {
    /// What a sound system of this kind shows in these conditions, as gauges show it at any moment of a clutch's cycle:
    /// by the vehicle model where it speaks, by published figures otherwise ([`Expectation::of`]).
    ///
    /// Errors: those of [`Expectation::of`], and `OutOfRange` where a band leaves the saturation line.
    ///
    /// ```
    /// use coldloop::expected::Bands;
    /// use coldloop::units::{Surroundings, fahrenheit};
    /// use coldloop::vehicle::{Conditions, System};
    /// use coldloop::{Compressor, Expansion, Refrigerant};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let bands = Bands::of(&system, &Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL))?;
    /// let psig = |pressure: coldloop::units::GaugePressure| pressure.pa() / 6_894.757;
    /// assert!(psig(bands.low_side.low_95) < 35.0 && psig(bands.low_side.high_95) > 45.0);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        let expectation = Expectation::of(system, conditions, None, None)?;
        Self::from_healthy(&expectation.healthy, system, conditions)
    }

    /// The bands of given distributions, however they were come by.
    ///
    /// Errors: `OutOfRange` where a band leaves the saturation line.
    pub fn from_healthy(healthy: &Healthy, system: &System, conditions: &Conditions) -> Result<Self, Error> {
        let air = conditions.surroundings;
        let pressure = |t_k: f64| {
            let p_pa = pseudo_critical::along_pa(system.refrigerant, t_k)?;
            Ok::<_, Error>(AbsolutePressure::from_pa(p_pa).gauge(air))
        };
        let difference = |k: f64| Ok::<_, Error>(kelvins_difference(k));
        let ambient_k = in_kelvins(conditions.ambient);
        Ok(Self {
            low_side: healthy.low_side.band(pressure)?,
            high_side: healthy.high_side.band(pressure)?,
            vent: healthy.vent.band(|k| Ok::<_, Error>(kelvins(k)))?,
            approach: healthy.high_side.band(|k| difference(k - ambient_k))?,
            superheat: healthy.superheat.band(difference)?,
            subcooling: healthy.subcooling.band(difference)?,
            discharge_superheat: healthy.discharge_superheat.band(difference)?,
            clutch_cycles_hz: match healthy.clutch_cycles {
                Some(spread) => Some(spread.band(|log| Ok::<_, Error>(f64::max(libm::expm1(log), 0.0) / 60.0))?),
                None => None,
            },
        })
    }
}
