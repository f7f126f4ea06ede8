//! Charges of any composition.

use crate::arrays::{Answer, Columns, each, several};
use crate::errors::{raised, unknown};
use crate::saturation::known;
use coldloop::Error;
use coldloop::LeakPhase;
use coldloop::saturation::MOST_COMPONENTS;
use coldloop::saturation::{Charge, Shares};
use coldloop::units::{AbsolutePressure, Density, in_kelvins, kelvins};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;

/// The figures of a composition: a place for every component, then the air.
const PLACES: usize = MOST_COMPONENTS + 1;

/// A charge as Python holds it: codes and masses of its refrigerants, and the mass of air.
type Given = (Vec<(u32, f64)>, f64);

fn charge((parts, air): &Given) -> Result<Charge, Error> {
    let parts: Vec<_> = parts
        .iter()
        .map(|&(code, mass)| Ok((known(code)?, mass)))
        .collect::<Result<_, Error>>()?;
    Charge::new(&parts, *air)
}

/// The designations of the components with their mass fractions, and that of air.
#[pyfunction]
pub(crate) fn charge_shares(py: Python<'_>, given: Given) -> PyResult<(Vec<(&'static str, f64)>, f64)> {
    let shares = charge(&given).map_err(|error| raised(py, error))?.shares();
    let parts = shares
        .refrigerants()
        .map(|(refrigerant, share)| (refrigerant.id(), share));
    Ok((parts.collect(), shares.air()))
}

/// A bubble or dew pressure, Pa, or temperature, K.
#[pyfunction]
pub(crate) fn charge_point<'py>(
    py: Python<'py>,
    x: &Bound<'py, PyAny>,
    strict: bool,
    given: Given,
    what: &str,
) -> Answer<'py> {
    let charge = charge(&given).map_err(|error| raised(py, error))?;
    let point: fn(&Charge, f64) -> Result<f64, Error> = match what {
        "bubble_pressure" => |charge, t_k| Ok(charge.bubble_pressure(kelvins(t_k))?.pa()),
        "dew_pressure" => |charge, t_k| Ok(charge.dew_pressure(kelvins(t_k))?.pa()),
        "bubble_temperature" => |charge, p_pa| {
            charge
                .bubble_temperature(AbsolutePressure::from_pa(p_pa))
                .map(in_kelvins)
        },
        "dew_temperature" => |charge, p_pa| charge.dew_temperature(AbsolutePressure::from_pa(p_pa)).map(in_kelvins),
        _ => return Err(PyValueError::new_err("this is no bubble or dew point")),
    };
    each(py, [x], strict, |[x]| point(&charge, x))
}

/// The charge at a temperature and pressure: density, quality, density of liquid and vapour, composition of both.
#[pyfunction]
pub(crate) fn charge_split<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    strict: bool,
    given: Given,
) -> Columns<'py> {
    let charge = charge(&given).map_err(|error| raised(py, error))?;
    let columns = several(py, [temperature_k, pressure_pa_abs], strict, |[t_k, p_pa]| {
        let phase_split = charge.split(kelvins(t_k), AbsolutePressure::from_pa(p_pa))?;
        let mut figures = [f64::NAN; 4 + 2 * PLACES];
        figures[0] = phase_split.density.kg_m3();
        figures[1] = phase_split.quality.unwrap_or(f64::NAN);
        if let (Some(liquid), Some(vapour)) = (phase_split.liquid, phase_split.vapour) {
            (figures[2], figures[3]) = (liquid.0.kg_m3(), vapour.0.kg_m3());
            figures[4..4 + PLACES].copy_from_slice(&places(&liquid.1));
            figures[4 + PLACES..].copy_from_slice(&places(&vapour.1));
        }
        Ok(figures)
    })?;
    Ok(columns.into())
}

/// What a leak leaves: pressure, whether there is liquid (1 or 0), composition.
#[pyfunction]
pub(crate) fn charge_leaked<'py>(
    py: Python<'py>,
    temperature_k: &Bound<'py, PyAny>,
    density_kg_m3: &Bound<'py, PyAny>,
    lost: &Bound<'py, PyAny>,
    strict: bool,
    given: Given,
    leak_phase: &str,
) -> Columns<'py> {
    let charge = charge(&given).map_err(|error| raised(py, error))?;
    let leak_phase =
        LeakPhase::from_id(leak_phase).ok_or_else(|| unknown(py, leak_phase, LeakPhase::ALL.map(LeakPhase::id)))?;
    let columns = several(py, [temperature_k, density_kg_m3, lost], strict, |[t_k, rho, lost]| {
        let left = charge.leaked(kelvins(t_k), Density::from_kg_m3(rho), leak_phase, lost)?;
        let mut figures = [f64::NAN; 2 + PLACES];
        (figures[0], figures[1]) = (left.pressure.pa(), f64::from(u8::from(left.has_liquid)));
        figures[2..].copy_from_slice(&places(&left.shares));
        Ok(figures)
    })?;
    Ok(columns.into())
}

fn places(shares: &Shares) -> [f64; PLACES] {
    let mut figures = [0.0; PLACES];
    for (figure, (_, share)) in figures.iter_mut().zip(shares.refrigerants()) {
        *figure = share;
    }
    figures[MOST_COMPONENTS] = shares.air();
    figures
}
