//! From readings: superheat, subcooling, what else follows, and what a pressure at rest agrees with.

use crate::arrays::{Answer, Columns, each, several};
use crate::errors::{raised, unknown};
use crate::saturation::known;
use coldloop::circuit::{
    self, Derived, Estimate, Gauge, Reading, Readings, subcooling as subcooled, superheat as superheated,
};
use coldloop::units::{
    AbsolutePressure, GaugePressure, InSi, Measurable, Pressure, Surroundings, Temperature, TemperatureDifference,
    difference_in_kelvins, kelvins,
};
use coldloop::{Error, GaugeClass, PressureMatch, Thermometer};
use pyo3::prelude::*;

/// Superheat, K. The pressure counts from vacuum without air, and from the air where it is given.
#[pyfunction]
pub(crate) fn superheat<'py>(
    py: Python<'py>,
    suction_line_k: &Bound<'py, PyAny>,
    pressure_pa: &Bound<'py, PyAny>,
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    difference(
        py,
        [suction_line_k, pressure_pa, air_pa_abs],
        strict,
        |line, pressure, air| superheated(known(code)?, line, pressure, air),
    )
}

/// Subcooling, K; arguments as `superheat`.
#[pyfunction]
pub(crate) fn subcooling<'py>(
    py: Python<'py>,
    liquid_line_k: &Bound<'py, PyAny>,
    pressure_pa: &Bound<'py, PyAny>,
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Answer<'py> {
    difference(
        py,
        [liquid_line_k, pressure_pa, air_pa_abs],
        strict,
        |line, pressure, air| subcooled(known(code)?, line, pressure, air),
    )
}

fn difference<'py>(
    py: Python<'py>,
    arguments: [&Bound<'py, PyAny>; 3],
    strict: bool,
    f: impl Fn(Reading<Temperature>, Reading<Pressure>, Surroundings) -> Result<Estimate<TemperatureDifference>, Error>
    + Sync,
) -> Answer<'py> {
    let [line, pressure, air] = arguments;
    if air.is_none() {
        return each(py, [line, pressure], strict, |[line_k, pa]| {
            let (pressure, air) = datum(pa, None)?;
            Ok(difference_in_kelvins(
                f(exact(kelvins(line_k)), exact(pressure), air)?.value,
            ))
        });
    }
    each(py, [line, pressure, air], strict, |[line_k, pa, air_pa]| {
        let (pressure, air) = datum(pa, Some(air_pa))?;
        Ok(difference_in_kelvins(
            f(exact(kelvins(line_k)), exact(pressure), air)?.value,
        ))
    })
}

/// A pressure that counts from vacuum, or from the air where that is given.
fn datum(pa: f64, air_pa: Option<f64>) -> Result<(Pressure, Surroundings), Error> {
    Ok(match air_pa {
        None => (AbsolutePressure::from_pa(pa).into(), Surroundings::SEA_LEVEL),
        Some(air_pa) => (
            GaugePressure::from_pa(pa).into(),
            Surroundings::measured(AbsolutePressure::from_pa(air_pa))?,
        ),
    })
}

/// A pressure at rest compared with a refrigerant: code of the pressure match, excess and its uncertainty (Pa), the same above the
/// dew line, mole share of gas. The pressure counts from vacuum where there is no air.
#[pyfunction]
pub(crate) fn at_rest<'py>(
    py: Python<'py>,
    temperature: [Bound<'py, PyAny>; 2],
    pressure: [Bound<'py, PyAny>; 2],
    air_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
) -> Columns<'py> {
    let rest = |[t_k, t_uncertainty_k, pa, uncertainty_pa]: [f64; 4], air_pa| {
        let (value, air) = datum(pa, air_pa)?;
        let found = circuit::at_rest(
            known(code)?,
            measured(value, uncertainty_pa),
            measured(kelvins(t_k), t_uncertainty_k),
            air,
        )?;
        let (excess, above_dew) = (found.excess.si(), found.above_dew.si());
        Ok([
            f64::from(found.pressure_match.code()),
            excess.value,
            excess.standard_uncertainty,
            above_dew.value,
            above_dew.standard_uncertainty,
            found.gas_share,
        ])
    };
    let [[t, t_uncertainty], [p, p_uncertainty]] = [&temperature, &pressure].map(|pair| pair.each_ref());
    let columns = if air_pa_abs.is_none() {
        several(py, [t, t_uncertainty, p, p_uncertainty], strict, |all| rest(all, None))?
    } else {
        several(py, [t, t_uncertainty, p, p_uncertainty, air_pa_abs], strict, |all| {
            let [t, t_uncertainty, p, p_uncertainty, air] = all;
            rest([t, t_uncertainty, p, p_uncertainty], Some(air))
        })?
    };
    Ok(columns.into())
}

/// The ids of what a pressure at rest says, by code; the first stands for no answer.
#[pyfunction]
pub(crate) fn pressure_matches() -> Vec<&'static str> {
    std::iter::once("")
        .chain(PressureMatch::ALL.iter().map(|pressure_match| pressure_match.id()))
        .collect()
}

/// A value with its standard uncertainty.
type Pair = (f64, f64);

/// All that follows from readings, by the names of `coldloop.Derived`; the pressures count from vacuum where there is no air.
#[pyfunction]
pub(crate) fn derive(
    py: Python<'_>,
    code: u32,
    pressures: [Option<Pair>; 2],
    temperatures: [Option<Pair>; 5],
    air_pa_abs: Option<f64>,
) -> PyResult<Vec<(&'static str, Option<Pair>)>> {
    let found = || -> Result<Derived, Error> {
        let mut sides = [None, None];
        let mut air = Surroundings::SEA_LEVEL;
        for (side, (pa, uncertainty_pa)) in sides
            .iter_mut()
            .zip(pressures)
            .filter_map(|(side, pair)| Some((side, pair?)))
        {
            let (value, around) = datum(pa, air_pa_abs)?;
            air = around;
            *side = Some(measured(value, uncertainty_pa));
        }
        let [low_side, high_side] = sides;
        let [ambient, vent, suction_line, discharge_line, liquid_line] =
            temperatures.map(|pair| pair.map(|(t_k, uncertainty_k)| measured(kelvins(t_k), uncertainty_k)));
        let readings = Readings {
            low_side,
            high_side,
            vent,
            suction_line,
            discharge_line,
            liquid_line,
            ..Readings::default()
        };
        Derived::new(known(code)?, &readings, air, ambient)
    };
    let found = found().map_err(|error| raised(py, error))?;
    let figures = [
        ("low_side_pa_abs", found.low_side.map(Estimate::si)),
        ("high_side_pa_abs", found.high_side.map(Estimate::si)),
        ("pressure_ratio", found.pressure_ratio),
        ("low_dew_k", found.low_dew.map(Estimate::si)),
        ("low_bubble_k", found.low_bubble.map(Estimate::si)),
        ("high_dew_k", found.high_dew.map(Estimate::si)),
        ("high_bubble_k", found.high_bubble.map(Estimate::si)),
        ("superheat_k", found.superheat.map(Estimate::si)),
        ("subcooling_k", found.subcooling.map(Estimate::si)),
        ("discharge_superheat_k", found.discharge_superheat.map(Estimate::si)),
        (
            "condensing_above_ambient_k",
            found.condensing_above_ambient.map(Estimate::si),
        ),
        (
            "vent_above_evaporating_k",
            found.vent_above_evaporating.map(Estimate::si),
        ),
        ("cooling_j_kg", found.cooling.map(Estimate::si)),
        ("isentropic_efficiency", found.isentropic_efficiency),
    ];
    let pair = |estimate: Estimate| (estimate.value, estimate.standard_uncertainty);
    Ok(figures.map(|(name, estimate)| (name, estimate.map(pair))).into())
}

/// Standard uncertainty of a gauge of a class, Pa.
#[pyfunction]
pub(crate) fn gauge_uncertainty<'py>(
    py: Python<'py>,
    scale: [Bound<'py, PyAny>; 2],
    shown_pa_gauge: &Bound<'py, PyAny>,
    strict: bool,
    gauge_class: &str,
) -> Answer<'py> {
    let class = GaugeClass::from_id(gauge_class)
        .ok_or_else(|| unknown(py, gauge_class, GaugeClass::ALL.map(GaugeClass::id)))?;
    let [low, high] = &scale;
    each(py, [low, high, shown_pa_gauge], strict, |[low, high, shown]| {
        let gauge = Gauge::new(class, GaugePressure::from_pa(low), GaugePressure::from_pa(high))?;
        let shown = coldloop::range::GAUGE_PRESSURE.check(shown)?;
        Ok(Reading::pressure(GaugePressure::from_pa(shown), gauge)
            .standard_uncertainty
            .pa())
    })
}

/// Standard uncertainty of a thermometer, K.
#[pyfunction]
pub(crate) fn thermometer_uncertainty<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    strict: bool,
    thermometer: &str,
) -> Answer<'py> {
    let thermometer = Thermometer::from_id(thermometer)
        .ok_or_else(|| unknown(py, thermometer, Thermometer::ALL.map(Thermometer::id)))?;
    each(py, [temperature_k], strict, |[t_k]| {
        let shown_k = coldloop::range::TEMPERATURE.check(t_k)?;
        let reading = Reading::temperature(kelvins(shown_k), thermometer);
        Ok(difference_in_kelvins(reading.standard_uncertainty))
    })
}

fn measured<Q: Measurable>(value: Q, standard_uncertainty: f64) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: InSi::from_si(standard_uncertainty),
    }
}

fn exact<Q: Measurable>(value: Q) -> Reading<Q> {
    Reading {
        value,
        standard_uncertainty: InSi::from_si(0.0),
    }
}
