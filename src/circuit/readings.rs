//! What the instruments show.

use super::instrument::{Gauge, rectangular};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, ReadingKind, Thermometer};
use crate::units::{
    AbsolutePressure, Frequency, GaugePressure, InSi, Measurable, Pressure, PressureDifference, STANDARD_PRESSURE_PA,
    Surroundings, Temperature,
};

/// A measured value with the standard uncertainty of its instrument.
///
/// The uncertainty of a temperature is a temperature difference, and no temperature:
///
/// ```compile_fail,E0308
/// use coldloop::{circuit::Reading, units::celsius};
/// let _ = Reading::within(celsius(7.0), celsius(0.5));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading<Q: Measurable> {
    /// What the instrument shows.
    pub value: Q,
    /// Standard uncertainty (one sigma).
    pub standard_uncertainty: Q::Difference,
}

impl<Q: Measurable> Reading<Q> {
    /// A value that is wrong by no more than `limit_of_error`.
    ///
    /// The standard uncertainty is the limit over sqrt(3). Source: JCGM 100:2008, 4.3.7.
    ///
    /// ```
    /// use coldloop::circuit::Reading;
    /// use coldloop::units::{celsius, difference_in_kelvins, kelvins_difference};
    /// let vent = Reading::within(celsius(7.0), kelvins_difference(0.5));
    /// assert!((difference_in_kelvins(vent.standard_uncertainty) - 0.2887).abs() < 1e-4);
    /// ```
    pub fn within(value: Q, limit_of_error: Q::Difference) -> Self {
        Self {
            value,
            standard_uncertainty: InSi::from_si(rectangular(limit_of_error.si())),
        }
    }
}

impl Reading<Pressure> {
    /// What a gauge shows. An absolute pressure is placed on the scale as at standard sea level.
    ///
    /// ```
    /// use coldloop::circuit::{Gauge, Reading};
    /// use coldloop::units::{GaugePressure, Pressure};
    /// let low_side = Reading::pressure(GaugePressure::from_pa(241_000.0), Gauge::LOW_SIDE);
    /// assert!((low_side.standard_uncertainty.pa() - 0.016 * 1.1e6 / 3f64.sqrt()).abs() < 1e-6);
    /// ```
    pub fn pressure(value: impl Into<Pressure>, gauge: Gauge) -> Self {
        let value = value.into();
        let shown = match value {
            Pressure::Absolute(pressure) => GaugePressure::from_pa(pressure.pa() - STANDARD_PRESSURE_PA),
            Pressure::Gauge(pressure) => pressure,
        };
        Self::within(value, gauge.limit_of_error(shown))
    }
}

impl Reading<Temperature> {
    /// What a thermometer shows.
    ///
    /// ```
    /// use coldloop::{Thermometer, circuit::Reading, units::{difference_in_kelvins, fahrenheit}};
    /// let vent = Reading::temperature(fahrenheit(40.0), Thermometer::PocketDigital);
    /// assert!((difference_in_kelvins(vent.standard_uncertainty) - 1.0 / 3f64.sqrt()).abs() < 1e-15);
    /// ```
    pub fn temperature(value: Temperature, thermometer: Thermometer) -> Self {
        Self::within(value, thermometer.limit_of_error(value))
    }
}

impl Reading<Frequency> {
    /// Clutch engagements, counted over three minutes: one event more or less at either end.
    ///
    /// ```
    /// use coldloop::{circuit::Reading, units::Frequency};
    /// let cycles = Reading::counted(Frequency::from_per_minute(3.0));
    /// assert!((cycles.standard_uncertainty.hz() * 180.0 - 1.0 / 3f64.sqrt()).abs() < 1e-12);
    /// ```
    pub fn counted(value: Frequency) -> Self {
        Self::within(value, Frequency::from_hz(1.0 / COUNTED_S))
    }
}

const COUNTED_S: f64 = 180.0; // common practice, no source

/// The readings of one moment; each is optional.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::units::{GaugePressure, celsius, kelvins_difference};
/// let readings = Readings {
///     low_side: Some(Reading::pressure(GaugePressure::from_psig(35.0), Gauge::LOW_SIDE)),
///     vent: Some(Reading::within(celsius(7.0), kelvins_difference(0.5))),
///     ..Readings::default()
/// };
/// assert!(readings.high_side.is_none());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Readings {
    /// Low-side pressure.
    pub low_side: Option<Reading<Pressure>>,
    /// High-side pressure.
    pub high_side: Option<Reading<Pressure>>,
    /// Air at the centre vent.
    pub vent: Option<Reading<Temperature>>,
    /// Cabin air.
    pub cabin: Option<Reading<Temperature>>,
    /// Suction line at the compressor.
    pub suction_line: Option<Reading<Temperature>>,
    /// Discharge line at the compressor.
    pub discharge_line: Option<Reading<Temperature>>,
    /// Liquid line before the expansion device.
    pub liquid_line: Option<Reading<Temperature>>,
    /// Line at the condenser outlet; it speaks for the liquid line where that was not read.
    pub condenser_outlet: Option<Reading<Temperature>>,
    /// High-side pressure that the vehicle's own transducer tells a scan tool.
    pub high_side_transducer: Option<Reading<Pressure>>,
    /// Fins, or air behind the evaporator, as the vehicle's own sensor tells a scan tool.
    pub evaporator_sensor: Option<Reading<Temperature>>,
    /// How often the clutch engages.
    pub clutch_cycles: Option<Reading<Frequency>>,
    /// The air in which the gauges were zeroed, when that was elsewhere.
    ///
    /// A sealed electronic gauge keeps the air in which it was zeroed as its datum; a dial gauge is open to the air
    /// and does not.
    pub gauge_zero: Option<Surroundings>,
}

/// A reading of any kind.
///
/// ```
/// use coldloop::circuit::{Measured, Reading};
/// use coldloop::units::{celsius, kelvins_difference};
/// assert!(matches!(Measured::from(Reading::within(celsius(7.0), kelvins_difference(0.5))), Measured::Temperature(_)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Measured {
    /// Of a gauge or a transducer.
    Pressure(Reading<Pressure>),
    /// Of a thermometer.
    Temperature(Reading<Temperature>),
    /// Events per second that were counted.
    Frequency(Reading<Frequency>),
}

impl From<Reading<Pressure>> for Measured {
    fn from(reading: Reading<Pressure>) -> Self {
        Self::Pressure(reading)
    }
}

impl From<Reading<Temperature>> for Measured {
    fn from(reading: Reading<Temperature>) -> Self {
        Self::Temperature(reading)
    }
}

impl From<Reading<Frequency>> for Measured {
    fn from(reading: Reading<Frequency>) -> Self {
        Self::Frequency(reading)
    }
}

/// Where a reading of a kind stands.
enum Place<'a> {
    Pressure(&'a mut Option<Reading<Pressure>>),
    Temperature(&'a mut Option<Reading<Temperature>>),
    Frequency(&'a mut Option<Reading<Frequency>>),
}

impl Readings {
    /// The reading of this kind; `None` where it was not taken.
    ///
    /// ```
    /// use coldloop::circuit::{Reading, Readings};
    /// use coldloop::{ReadingKind, Thermometer, units::celsius};
    /// let vent = Reading::temperature(celsius(7.0), Thermometer::PocketDigital);
    /// let readings = Readings::default().with(ReadingKind::Vent, vent)?;
    /// assert_eq!(readings.get(ReadingKind::Vent), Some(vent.into()));
    /// assert_eq!(readings.vent, Some(vent));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn get(&self, kind: ReadingKind) -> Option<Measured> {
        let mut readings = *self;
        match readings.place(kind) {
            Place::Pressure(reading) => reading.map(Measured::Pressure),
            Place::Temperature(reading) => reading.map(Measured::Temperature),
            Place::Frequency(reading) => reading.map(Measured::Frequency),
        }
    }

    /// The same with this reading more, or changed.
    ///
    /// Errors: `Inconsistent` for a temperature where a pressure is read, and the like.
    ///
    /// ```
    /// use coldloop::circuit::{Reading, Readings};
    /// use coldloop::{ErrorKind, ReadingKind, Thermometer, units::celsius};
    /// let vent = Reading::temperature(celsius(7.0), Thermometer::PocketDigital);
    /// let refused = Readings::default().with(ReadingKind::LowSide, vent).unwrap_err();
    /// assert_eq!(refused.kind, ErrorKind::Inconsistent);
    /// ```
    pub fn with(mut self, kind: ReadingKind, measured: impl Into<Measured>) -> Result<Self, Error> {
        let wrong = |quantity| Err(Error::of(ErrorKind::Inconsistent, quantity));
        match (self.place(kind), measured.into()) {
            (Place::Pressure(place), Measured::Pressure(reading)) => *place = Some(reading),
            (Place::Temperature(place), Measured::Temperature(reading)) => *place = Some(reading),
            (Place::Frequency(place), Measured::Frequency(reading)) => *place = Some(reading),
            (Place::Pressure(_), _) => return wrong(Quantity::GaugePressure),
            (Place::Temperature(_), _) => return wrong(Quantity::Temperature),
            (Place::Frequency(_), _) => return wrong(Quantity::Frequency),
        }
        Ok(self)
    }

    /// The same with all that `newer` has; what it lacks stays.
    pub fn updated(mut self, newer: &Self) -> Self {
        for kind in ReadingKind::ALL {
            match (self.place(kind), newer.get(kind)) {
                (Place::Pressure(place), Some(Measured::Pressure(reading))) => *place = Some(reading),
                (Place::Temperature(place), Some(Measured::Temperature(reading))) => *place = Some(reading),
                (Place::Frequency(place), Some(Measured::Frequency(reading))) => *place = Some(reading),
                (Place::Pressure(_) | Place::Temperature(_) | Place::Frequency(_), _) => {}
            }
        }
        self.gauge_zero = newer.gauge_zero.or(self.gauge_zero);
        self
    }

    const fn place(&mut self, kind: ReadingKind) -> Place<'_> {
        match kind {
            ReadingKind::LowSide => Place::Pressure(&mut self.low_side),
            ReadingKind::HighSide => Place::Pressure(&mut self.high_side),
            ReadingKind::HighSideTransducer => Place::Pressure(&mut self.high_side_transducer),
            ReadingKind::Vent => Place::Temperature(&mut self.vent),
            ReadingKind::Cabin => Place::Temperature(&mut self.cabin),
            ReadingKind::SuctionLine => Place::Temperature(&mut self.suction_line),
            ReadingKind::DischargeLine => Place::Temperature(&mut self.discharge_line),
            ReadingKind::LiquidLine => Place::Temperature(&mut self.liquid_line),
            ReadingKind::CondenserOutlet => Place::Temperature(&mut self.condenser_outlet),
            ReadingKind::EvaporatorSensor => Place::Temperature(&mut self.evaporator_sensor),
            ReadingKind::ClutchCycles => Place::Frequency(&mut self.clutch_cycles),
        }
    }
}

/// A gauge and a transducer that differ by more than this many standard uncertainties of their difference contradict each other:
/// 95 %.
const AGREE: f64 = 2.0;

impl Readings {
    /// The high side as gauge and transducer have it together, in the surroundings `air`.
    ///
    /// The mean weighted by the inverse of the variances where both were read and agree, given as the gauge gives it; the gauge
    /// alone where they contradict each other; the one that was read otherwise.
    ///
    /// ```
    /// use coldloop::circuit::{Gauge, Reading, Readings};
    /// use coldloop::units::{GaugePressure, Surroundings};
    /// let readings = Readings {
    ///     high_side_transducer: Some(Reading::pressure(GaugePressure::from_psig(172.0), Gauge::TRANSDUCER)),
    ///     ..Readings::default()
    /// };
    /// assert_eq!(readings.high_side_known(Surroundings::SEA_LEVEL), readings.high_side_transducer);
    /// ```
    pub fn high_side_known(&self, air: Surroundings) -> Option<Reading<Pressure>> {
        let (Some(gauge), Some(transducer)) = (self.high_side, self.high_side_transducer) else {
            return self.high_side.or_else(|| self.transducer_by_gauge(air));
        };
        if self.transducer_agrees(air) != Some(true) {
            return Some(gauge);
        }
        let (one, other) = (gauge.standard_uncertainty.pa(), transducer.standard_uncertainty.pa());
        let weight = match one * one + other * other {
            0.0 => 0.5,
            both => other * other / both,
        };
        let datum = self.gauge_zero.unwrap_or(air);
        let pooled_pa =
            weight * gauge.value.absolute(datum).pa() + (1.0 - weight) * transducer.value.absolute(air).pa();
        let value = match gauge.value {
            Pressure::Absolute(_) => AbsolutePressure::from_pa(pooled_pa).into(),
            Pressure::Gauge(_) => GaugePressure::from_pa(pooled_pa - datum.pressure().pa()).into(),
        };
        Some(Reading {
            value,
            standard_uncertainty: PressureDifference::from_pa(libm::sqrt(weight) * one),
        })
    }

    /// Whether gauge and transducer of the high side agree within their uncertainties, in the surroundings `air`; `None` where
    /// one of them was not read.
    ///
    /// The transducer is taken to count from this air; a gauge counts from that in which it was zeroed.
    ///
    /// ```
    /// use coldloop::circuit::{Gauge, Reading, Readings};
    /// use coldloop::units::{GaugePressure, Surroundings};
    /// let readings = Readings {
    ///     high_side: Some(Reading::pressure(GaugePressure::from_psig(172.0), Gauge::HIGH_SIDE)),
    ///     high_side_transducer: Some(Reading::pressure(GaugePressure::from_psig(230.0), Gauge::TRANSDUCER)),
    ///     ..Readings::default()
    /// };
    /// assert_eq!(readings.transducer_agrees(Surroundings::SEA_LEVEL), Some(false));
    /// ```
    pub fn transducer_agrees(&self, air: Surroundings) -> Option<bool> {
        let (gauge, transducer) = (self.high_side?, self.high_side_transducer?);
        let gauge_pa = gauge.value.absolute(self.gauge_zero.unwrap_or(air)).pa();
        let apart_pa = libm::fabs(gauge_pa - transducer.value.absolute(air).pa());
        let uncertain_pa = libm::hypot(gauge.standard_uncertainty.pa(), transducer.standard_uncertainty.pa());
        Some(apart_pa <= AGREE * uncertain_pa)
    }

    /// The transducer alone, counted from the datum of the gauges.
    fn transducer_by_gauge(&self, air: Surroundings) -> Option<Reading<Pressure>> {
        let transducer = self.high_side_transducer?;
        Some(match self.gauge_zero {
            None => transducer,
            Some(_) => Reading {
                value: transducer.value.absolute(air).into(),
                ..transducer
            },
        })
    }
}
