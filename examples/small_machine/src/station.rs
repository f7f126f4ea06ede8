//! One measurement of a running circuit: four counts in, superheat, subcooling and a verdict out.

use crate::sensors::{Thermistor, Transducer};
use coldloop::Error;
use coldloop::circuit::{Estimate, subcooling, superheat};
use coldloop::units::{Surroundings, TemperatureDifference};

/// The sensors, and the system in which they are mounted.
#[derive(Clone, Copy)]
pub struct Station {
    /// The surrounding air, at which the transducers show 0.
    pub air: Surroundings,
    pub low_side: Transducer,
    pub high_side: Transducer,
    pub suction_line: Thermistor,
    pub liquid_line: Thermistor,
}

/// What the converter counts on its four inputs.
#[derive(Clone, Copy)]
pub struct Counts {
    pub low_side: u16,
    pub high_side: u16,
    pub suction_line: u16,
    pub liquid_line: u16,
}

/// Superheat at the compressor and subcooling before the expansion device, K.
#[derive(Clone, Copy)]
pub struct Figures {
    pub superheat: Estimate<TemperatureDifference>,
    pub subcooling: Estimate<TemperatureDifference>,
}

impl Station {
    pub fn figures(&self, counts: Counts) -> Result<Figures, Error> {
        let low = self.low_side.reading(counts.low_side)?;
        let high = self.high_side.reading(counts.high_side)?;
        let suction = self.suction_line.reading(counts.suction_line)?;
        let liquid = self.liquid_line.reading(counts.liquid_line)?;
        Ok(Figures {
            superheat: superheat(crate::refrigerant(), suction, low, self.air)?,
            subcooling: subcooling(crate::refrigerant(), liquid, high, self.air)?,
        })
    }
}

/// The whole diagnosis, of an R-134a or R-1234yf system with a valve and a clutch: the ambient comes over the vehicle's
/// bus, as does the engine speed.
#[cfg(feature = "diagnosis")]
impl Station {
    pub fn diagnosed(
        &self,
        counts: Counts,
        ambient_k: f64,
        engine_speed_hz: f64,
    ) -> Result<coldloop::diagnosis::Diagnosis, Error> {
        use coldloop::diagnosis::{Case, Settings, diagnose};
        use coldloop::units::RotationalSpeed;
        let (system, mut conditions) = self.vehicle(ambient_k);
        conditions.engine_speed = Some(RotationalSpeed::from_hz(engine_speed_hz));
        let readings = self.readings(counts)?;
        diagnose(&Case::new(system, conditions, readings), &Settings::default())
    }

    /// The system that it is mounted in, and the conditions as far as the bus tells them.
    pub(crate) fn vehicle(&self, ambient_k: f64) -> (coldloop::vehicle::System, coldloop::vehicle::Conditions) {
        use coldloop::vehicle::{Conditions, System};
        use coldloop::{Compressor, Expansion, units::kelvins};
        let system = System::new(crate::refrigerant(), Expansion::Txv, Compressor::FixedClutch);
        (system, Conditions::new(kelvins(ambient_k), self.air))
    }

    pub(crate) fn readings(&self, counts: Counts) -> Result<coldloop::circuit::Readings, Error> {
        Ok(coldloop::circuit::Readings {
            low_side: Some(self.low_side.reading(counts.low_side)?),
            high_side: Some(self.high_side.reading(counts.high_side)?),
            suction_line: Some(self.suction_line.reading(counts.suction_line)?),
            liquid_line: Some(self.liquid_line.reading(counts.liquid_line)?),
            ..coldloop::circuit::Readings::default()
        })
    }
}

/// What superheat and subcooling say of a circuit with an expansion valve.
///
/// Source: the directions of Rossi & Braun 1997, HVAC&R Research 3(1):19-37: too little refrigerant raises the
/// one and lowers the other, a restriction before or in the valve raises both, a valve that feeds too much lowers the
/// superheat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    Sound,
    TooLittleRefrigerant,
    Restricted,
    OverfedEvaporator,
    CannotTell,
}

/// The 95 % bands of `coldloop::expected` for R-134a with an expansion valve and a clutch, K: the widest limits at 15, 25 and 35 °C,
/// 40 % relative humidity, 1,500 rpm and 1,600 m.
const SUPERHEAT_K: (f64, f64) = (1.3, 28.0);
const SUBCOOLING_K: (f64, f64) = (-5.5, 20.9);

impl Figures {
    /// A figure counts as off only where it is outside by more than twice its uncertainty.
    pub fn verdict(self) -> Verdict {
        let side = |figure: Estimate<TemperatureDifference>, (low, high): (f64, f64)| {
            let figure = figure.si();
            let reach = 2.0 * figure.standard_uncertainty;
            if figure.value - reach > high {
                1
            } else if figure.value + reach < low {
                -1
            } else {
                0
            }
        };
        let inside = |figure: Estimate<TemperatureDifference>, (low, high): (f64, f64)| {
            (low..=high).contains(&figure.si().value)
        };
        let (superheat, subcooling) = (side(self.superheat, SUPERHEAT_K), side(self.subcooling, SUBCOOLING_K));
        if superheat > 0 && self.subcooling.si().value < 4.0 {
            Verdict::TooLittleRefrigerant
        } else if superheat > 0 && subcooling >= 0 {
            Verdict::Restricted
        } else if superheat < 0 {
            Verdict::OverfedEvaporator
        } else if inside(self.superheat, SUPERHEAT_K) && inside(self.subcooling, SUBCOOLING_K) {
            Verdict::Sound
        } else {
            Verdict::CannotTell
        }
    }
}
