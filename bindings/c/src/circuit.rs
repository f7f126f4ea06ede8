//! Superheat, subcooling and what else follows from readings
//!
//! A pressure comes with its datum: COLDLOOP_DATUM_ABSOLUTE, or COLDLOOP_DATUM_GAUGE with the pressure of the air in
//! which the gauge was zeroed. For an absolute pressure the air is ignored; pass 0.
//!
//! A reading is a value with the standard uncertainty (one sigma) of its instrument, and what follows from readings
//! carries its own: the root of the sum of squares of what the instruments, the air and the property model contribute
//! (JCGM 100:2008). The true value lies within twice that in about 95 of 100 cases.

use crate::arrays::rows;
use crate::boundary::{Failure, Growing, known, member, number, record, sized};
use crate::error::ColdloopError;
use crate::memory::{Answers, Column, given};
use crate::units::{COLDLOOP_DATUM_ABSOLUTE, COLDLOOP_DATUM_GAUGE};
use coldloop::circuit::{Derived, Estimate, Gauge, Reading, Readings, at_rest, subcooling, superheat};
use coldloop::units::{
    AbsolutePressure, GaugePressure, InSi, Measurable, Pressure, PressureDifference, Surroundings, Temperature,
    TemperatureDifference, difference_in_kelvins, kelvins, kelvins_difference,
};
use coldloop::{Error, ErrorKind, GaugeClass, Quantity, Refrigerant, Thermometer};

/// How far the suction line is above the dew point of the low-side pressure, K; negative when it reads colder than
/// vapour of that pressure can be.
///
/// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, MISSING_DATUM for a number that is no datum,
/// NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_superheat(
    refrigerant: u32,
    suction_line_k: f64,
    datum: u32,
    pressure_pa: f64,
    air_pa_abs: f64,
    superheat_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(superheat_k, error, || {
        let given = (datum, pressure_pa, air_pa_abs);
        Ok(line_and_pressure(superheat, refrigerant, suction_line_k, given)?)
    })
}

/// How far the liquid line is below the bubble point of the high-side pressure, K; negative when it carries bubbles or
/// the high side holds a gas that does not condense. Errors as coldloop_superheat.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_subcooling(
    refrigerant: u32,
    liquid_line_k: f64,
    datum: u32,
    pressure_pa: f64,
    air_pa_abs: f64,
    subcooling_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(subcooling_k, error, || {
        let given = (datum, pressure_pa, air_pa_abs);
        Ok(line_and_pressure(subcooling, refrigerant, liquid_line_k, given)?)
    })
}

/// Superheats of `count` rows that share datum and air. Strides and failures as for coldloop_dew_pressures, errors as
/// coldloop_superheat.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_superheats(
    refrigerant: u32,
    datum: u32,
    air_pa_abs: f64,
    count: usize,
    suction_line_k: *const f64,
    suction_line_stride: isize,
    pressure_pa: *const f64,
    pressure_stride: isize,
    superheat_k: *mut f64,
    superheat_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = [(suction_line_k, suction_line_stride), (pressure_pa, pressure_stride)];
    let columns = columns.map(|(at, stride)| Column::new(at, stride));
    let output = Answers::new(superheat_k, superheat_stride);
    rows(count, columns, output, (failed, error), f64::NAN, |[line_k, pa]| {
        line_and_pressure(superheat, refrigerant, line_k, (datum, pa, air_pa_abs))
    })
}

/// Subcoolings of `count` rows that share datum and air. Strides and failures as for coldloop_dew_pressures, errors as
/// coldloop_superheat.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_subcoolings(
    refrigerant: u32,
    datum: u32,
    air_pa_abs: f64,
    count: usize,
    liquid_line_k: *const f64,
    liquid_line_stride: isize,
    pressure_pa: *const f64,
    pressure_stride: isize,
    subcooling_k: *mut f64,
    subcooling_stride: isize,
    failed: *mut usize,
    error: *mut ColdloopError,
) -> u32 {
    let columns = [(liquid_line_k, liquid_line_stride), (pressure_pa, pressure_stride)];
    let columns = columns.map(|(at, stride)| Column::new(at, stride));
    let output = Answers::new(subcooling_k, subcooling_stride);
    rows(count, columns, output, (failed, error), f64::NAN, |[line_k, pa]| {
        line_and_pressure(subcooling, refrigerant, line_k, (datum, pa, air_pa_abs))
    })
}

/// Standard uncertainty of a gauge of a coldloop_gauge_class whose scale runs from `low_pa_gauge` to `high_pa_gauge`,
/// where it shows `shown_pa_gauge`, Pa. Source: EN 837-1:1996, ASME B40.100; electronic gauges: common practice.
///
/// Errors: UNKNOWN_NAME for a number that is no coldloop_gauge_class, NOT_FINITE, OUT_OF_RANGE for a scale whose ends are equal or swapped.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_gauge_uncertainty(
    gauge_class: u32,
    low_pa_gauge: f64,
    high_pa_gauge: f64,
    shown_pa_gauge: f64,
    uncertainty_pa: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(uncertainty_pa, error, || {
        let [low, high] = [low_pa_gauge, high_pa_gauge].map(GaugePressure::from_pa);
        let gauge = Gauge::new(member(gauge_class, GaugeClass::from_code)?, low, high)?;
        let shown_pa = coldloop::range::GAUGE_PRESSURE.check(shown_pa_gauge)?;
        Ok(Reading::pressure(GaugePressure::from_pa(shown_pa), gauge)
            .standard_uncertainty
            .pa())
    })
}

/// Standard uncertainty of a coldloop_thermometer where it shows `temperature_k`, K. Source: IEC 60584-1:2013 for
/// thermocouples, common practice for the others.
///
/// Errors: UNKNOWN_NAME for a number that is no coldloop_thermometer, NOT_FINITE, OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_thermometer_uncertainty(
    thermometer: u32,
    temperature_k: f64,
    uncertainty_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    number(uncertainty_k, error, || {
        let thermometer = member(thermometer, Thermometer::from_code)?;
        let shown_k = coldloop::range::TEMPERATURE.check(temperature_k)?;
        let reading = Reading::temperature(kelvins(shown_k), thermometer);
        Ok(difference_in_kelvins(reading.standard_uncertainty))
    })
}

/// A value and its standard uncertainty (one sigma), in the same unit; a NaN value was not read, or does not follow.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopEstimate {
    /// The value.
    pub value: f64,
    /// Its standard uncertainty.
    pub standard_uncertainty: f64,
}

/// What the instruments show, in SI; what was not read has a NaN value. Set `size` to sizeof(coldloop_readings).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopReadings {
    /// sizeof(coldloop_readings), so that the struct can grow.
    pub size: usize,
    /// Where both pressures count from: COLDLOOP_DATUM_GAUGE or COLDLOOP_DATUM_ABSOLUTE.
    pub datum: u32,
    /// The air in which the gauges were zeroed, Pa above vacuum; ignored for absolute pressures.
    pub air_pa_abs: f64,
    /// Low side, Pa.
    pub low_side: ColdloopEstimate,
    /// High side, Pa.
    pub high_side: ColdloopEstimate,
    /// Air in front of the vehicle, K.
    pub ambient: ColdloopEstimate,
    /// Air at the centre vent, K.
    pub vent: ColdloopEstimate,
    /// Suction line at the compressor, K.
    pub suction_line: ColdloopEstimate,
    /// Discharge line at the compressor, K.
    pub discharge_line: ColdloopEstimate,
    /// Liquid line before the expansion device, or the condenser outlet, K.
    pub liquid_line: ColdloopEstimate,
}

impl Growing for ColdloopReadings {}

/// What follows from readings; a NaN value has no answer. Set `size` to sizeof(coldloop_derived).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopDerived {
    /// sizeof(coldloop_derived), so that the struct can grow.
    pub size: usize,
    /// Low-side pressure above vacuum, Pa.
    pub low_side_pa_abs: ColdloopEstimate,
    /// High-side pressure above vacuum, Pa.
    pub high_side_pa_abs: ColdloopEstimate,
    /// High side over low side, both above vacuum.
    pub pressure_ratio: ColdloopEstimate,
    /// Dew temperature of the low side, K: where evaporation ends.
    pub low_dew_k: ColdloopEstimate,
    /// Bubble temperature of the low side, K.
    pub low_bubble_k: ColdloopEstimate,
    /// Dew temperature of the high side, K: where condensation begins.
    pub high_dew_k: ColdloopEstimate,
    /// Bubble temperature of the high side, K.
    pub high_bubble_k: ColdloopEstimate,
    /// Suction line above low-side dew point, K.
    pub superheat_k: ColdloopEstimate,
    /// Liquid line below high-side bubble point, K.
    pub subcooling_k: ColdloopEstimate,
    /// Discharge line above high-side dew point, K.
    pub discharge_superheat_k: ColdloopEstimate,
    /// High-side dew point above the ambient air, K.
    pub condensing_above_ambient_k: ColdloopEstimate,
    /// Vent air above the low-side dew point, K.
    pub vent_above_evaporating_k: ColdloopEstimate,
    /// Heat taken up by each kilogram between liquid line and suction line, J/kg.
    pub cooling_j_kg: ColdloopEstimate,
    /// Work of a loss-free compressor over the work done, 0 to 1.
    pub isentropic_efficiency: ColdloopEstimate,
}

const NOTHING: ColdloopEstimate = ColdloopEstimate {
    value: f64::NAN,
    standard_uncertainty: f64::NAN,
};

sized!(
    ColdloopDerived,
    Self {
        size: 0,
        low_side_pa_abs: NOTHING,
        high_side_pa_abs: NOTHING,
        pressure_ratio: NOTHING,
        low_dew_k: NOTHING,
        low_bubble_k: NOTHING,
        high_dew_k: NOTHING,
        high_bubble_k: NOTHING,
        superheat_k: NOTHING,
        subcooling_k: NOTHING,
        discharge_superheat_k: NOTHING,
        condensing_above_ambient_k: NOTHING,
        vent_above_evaporating_k: NOTHING,
        cooling_j_kg: NOTHING,
        isentropic_efficiency: NOTHING,
    }
);

/// All that follows from readings, each figure with its uncertainty.
///
/// Errors: those of coldloop_superheat for readings that are impossible. A figure for which a reading is missing, or that
/// this refrigerant does not have there, is NaN; that is no error.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_derive(
    refrigerant: u32,
    readings: *const ColdloopReadings,
    derived: *mut ColdloopDerived,
    error: *mut ColdloopError,
) -> u32 {
    record(derived, error, || {
        let given = given(readings)?;
        let refrigerant = known(refrigerant)?;
        let (low_side, air) = reading_of_pressure(given.datum, given.low_side, given.air_pa_abs)?;
        let (high_side, _) = reading_of_pressure(given.datum, given.high_side, given.air_pa_abs)?;
        let readings = Readings {
            low_side,
            high_side,
            vent: temperature(given.vent),
            suction_line: temperature(given.suction_line),
            discharge_line: temperature(given.discharge_line),
            liquid_line: temperature(given.liquid_line),
            ..Readings::default()
        };
        let derived = Derived::new(refrigerant, &readings, air, temperature(given.ambient))?;
        Ok(ColdloopDerived {
            size: 0,
            low_side_pa_abs: estimate(derived.low_side),
            high_side_pa_abs: estimate(derived.high_side),
            pressure_ratio: estimate(derived.pressure_ratio),
            low_dew_k: estimate(derived.low_dew),
            low_bubble_k: estimate(derived.low_bubble),
            high_dew_k: estimate(derived.high_dew),
            high_bubble_k: estimate(derived.high_bubble),
            superheat_k: estimate(derived.superheat),
            subcooling_k: estimate(derived.subcooling),
            discharge_superheat_k: estimate(derived.discharge_superheat),
            condensing_above_ambient_k: estimate(derived.condensing_above_ambient),
            vent_above_evaporating_k: estimate(derived.vent_above_evaporating),
            cooling_j_kg: estimate(derived.cooling),
            isentropic_efficiency: estimate(derived.isentropic_efficiency),
        })
    })
}

/// A pressure at rest beside the lines of one refrigerant. Set `size` to sizeof(coldloop_resting).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopResting {
    /// sizeof(coldloop_resting), so that the struct can grow.
    pub size: usize,
    /// A coldloop_pressure_match.
    pub pressure_match: u32,
    /// The pressure above that of the bubble line, Pa; where it is too high, the partial pressure of the gas, if it is gas.
    pub excess_pa: ColdloopEstimate,
    /// The pressure above that of the dew line, Pa; of a pure refrigerant the same.
    pub above_dew_pa: ColdloopEstimate,
    /// The mole share of gas in the vapour space, if it is gas; 0 unless the pressure is too high.
    pub gas_share: f64,
}

sized!(
    ColdloopResting,
    Self {
        size: 0,
        pressure_match: 0,
        excess_pa: NOTHING,
        above_dew_pa: NOTHING,
        gas_share: f64::NAN,
    }
);

/// Whether a circuit or cylinder at rest, with liquid in it and at one temperature throughout, can hold this refrigerant, and how
/// much non-condensable gas with it. Pressure and temperature have their standard uncertainties. Call it for every refrigerant to
/// see which ones a pressure agrees with; often several do. A second reading some 15 K warmer or colder tells more than the
/// first, an analyser more than both. Source: Dalton's law; the method is common practice, no source.
///
/// Errors: as coldloop_superheat; OUT_OF_RANGE where the refrigerant has no line at that temperature.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_at_rest(
    refrigerant: u32,
    datum: u32,
    pressure_pa: f64,
    pressure_uncertainty_pa: f64,
    air_pa_abs: f64,
    temperature_k: f64,
    temperature_uncertainty_k: f64,
    resting: *mut ColdloopResting,
    error: *mut ColdloopError,
) -> u32 {
    record(resting, error, || {
        let (value, air) = pressure(datum, pressure_pa, air_pa_abs)?;
        let pressure = Reading {
            value,
            standard_uncertainty: PressureDifference::from_pa(pressure_uncertainty_pa),
        };
        let temperature = Reading {
            value: kelvins(temperature_k),
            standard_uncertainty: kelvins_difference(temperature_uncertainty_k),
        };
        let found = at_rest(known(refrigerant)?, pressure, temperature, air)?;
        Ok(ColdloopResting {
            size: 0,
            pressure_match: found.pressure_match.code(),
            excess_pa: estimate(Some(found.excess)),
            above_dew_pa: estimate(Some(found.above_dew)),
            gas_share: found.gas_share,
        })
    })
}

fn estimate<Q: InSi>(estimate: Option<Estimate<Q>>) -> ColdloopEstimate {
    estimate.map(Estimate::si).map_or(NOTHING, |estimate| ColdloopEstimate {
        value: estimate.value,
        standard_uncertainty: estimate.standard_uncertainty,
    })
}

fn temperature(reading: ColdloopEstimate) -> Option<Reading<Temperature>> {
    (!reading.value.is_nan()).then(|| Reading {
        value: kelvins(reading.value),
        standard_uncertainty: kelvins_difference(reading.standard_uncertainty),
    })
}

fn reading_of_pressure(
    datum: u32,
    reading: ColdloopEstimate,
    air_pa: f64,
) -> Result<(Option<Reading<Pressure>>, Surroundings), Failure> {
    let (value, air) = pressure(datum, reading.value, air_pa)?;
    let reading = (!reading.value.is_nan()).then_some(Reading {
        value,
        standard_uncertainty: PressureDifference::from_pa(reading.standard_uncertainty),
    });
    Ok((reading, air))
}

type Difference = fn(
    Refrigerant,
    Reading<Temperature>,
    Reading<Pressure>,
    Surroundings,
) -> Result<Estimate<TemperatureDifference>, Error>;

fn line_and_pressure(
    difference: Difference,
    refrigerant: u32,
    line_k: f64,
    (datum, pa, air_pa): (u32, f64, f64),
) -> Result<f64, Error> {
    let (pressure, air) = pressure(datum, pa, air_pa)?;
    let found = difference(known(refrigerant)?, exact(kelvins(line_k)), exact(pressure), air)?;
    Ok(difference_in_kelvins(found.value))
}

fn pressure(datum: u32, pa: f64, air_pa: f64) -> Result<(Pressure, Surroundings), Error> {
    match datum {
        COLDLOOP_DATUM_ABSOLUTE => Ok((
            Pressure::Absolute(AbsolutePressure::from_pa(pa)),
            Surroundings::SEA_LEVEL,
        )),
        COLDLOOP_DATUM_GAUGE => {
            let air = Surroundings::measured(AbsolutePressure::from_pa(air_pa))?;
            Ok((Pressure::Gauge(GaugePressure::from_pa(pa)), air))
        }
        _ => Err(Error::of(ErrorKind::MissingDatum, Quantity::Name)),
    }
}

fn exact<Q: Measurable>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: InSi::from_si(0.0),
    }
}
