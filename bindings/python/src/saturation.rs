//! Bubble and dew.

use crate::arrays::{Answer, each, whole};
use crate::errors::unknown;
use coldloop::saturation::Side;
use coldloop::saturation::{self, Unanswered};
use coldloop::{Error, ErrorKind, Quantity, Reference, Refrigerant};
use pyo3::prelude::*;

/// The refrigerant of a code that came from `refrigerant(name)`.
pub(crate) fn known(code: u32) -> Result<Refrigerant, Error> {
    Refrigerant::from_code(code).ok_or(Error::of(ErrorKind::UnknownName, Quantity::Name))
}

/// What a refrigerant has at one value, and over an array.
type One = fn(Refrigerant, f64) -> Result<f64, Error>;
type Many = fn(Refrigerant, &[f64], &mut [f64]) -> Result<(), Unanswered>;

/// Functions of a refrigerant at one value or an array: in a loop, or with a function that takes arrays.
macro_rules! functions {
    ($($(#[$doc:meta])* $name:ident($argument:ident): $one:path $(, $many:path)?;)+) => {
        $(
            $(#[$doc])*
            #[pyfunction]
            pub(crate) fn $name<'py>(
                py: Python<'py>,
                $argument: &Bound<'py, PyAny>,
                strict: bool,
                code: u32,
            ) -> Answer<'py> {
                let many: &[Many] = &[$($many)?];
                answered(py, $argument, strict, code, ($one, many.first().copied()))
            }
        )+
    };
}

functions! {
    /// Pressure at which the liquid begins to boil, Pa.
    bubble_pressure(temperature_k): saturation::bubble_pressure_pa, saturation::bubble_pressures_pa;
    /// Pressure at which the vapour begins to condense, Pa.
    dew_pressure(temperature_k): saturation::dew_pressure_pa, saturation::dew_pressures_pa;
    /// Temperature at which the liquid begins to boil, K.
    bubble_temperature(pressure_pa_abs): saturation::bubble_temperature_k, saturation::bubble_temperatures_k;
    /// Temperature at which the vapour begins to condense, K.
    dew_temperature(pressure_pa_abs): saturation::dew_temperature_k, saturation::dew_temperatures_k;
    /// Slope of the saturation line, Pa/K.
    saturation_slope(temperature_k): saturation::slope_pa_k;
    /// Slope of the bubble line, Pa/K.
    bubble_slope(temperature_k): saturation::bubble_slope_pa_k;
    /// How much warmer the dew point is than the bubble point, K.
    glide(pressure_pa_abs): saturation::glide_k;
    /// Heat that boils liquid into vapour, J/kg.
    latent_heat(temperature_k): saturation::latent_heat_j_kg;
    /// Density of the saturated liquid, kg/m3.
    liquid_density(temperature_k): liquid_density_kg_m3;
    /// Density of the saturated vapour, kg/m3.
    vapour_density(temperature_k): vapour_density_kg_m3;
}

/// The mean of the evaporating range, K, from an inlet of a quality, or of an enthalpy that counts from a reference.
#[pyfunction]
#[pyo3(signature = (pressure_pa_abs, inlet, strict, code, reference=None))]
pub(crate) fn evaporating_mean<'py>(
    py: Python<'py>,
    pressure_pa_abs: &Bound<'py, PyAny>,
    inlet: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
    reference: Option<&str>,
) -> Answer<'py> {
    let reference = reference
        .map(|id| Reference::from_id(id).ok_or_else(|| unknown(py, id, Reference::ALL.map(Reference::id))))
        .transpose()?;
    each(py, [pressure_pa_abs, inlet], strict, |[p_pa, inlet]| {
        let line = saturation::line_of(known(code)?);
        match reference {
            None => line.evaporating_mean_pq(p_pa, inlet),
            Some(reference) => line.evaporating_mean_ph(p_pa, inlet, reference),
        }
    })
}

fn answered<'py>(
    py: Python<'py>,
    argument: &Bound<'py, PyAny>,
    strict: bool,
    code: u32,
    (one, many): (One, Option<Many>),
) -> Answer<'py> {
    let one = |x: f64| one(known(code)?, x);
    match many {
        None => each(py, [argument], strict, |[x]| one(x)),
        Some(many) => whole(py, argument, strict, one, |from, to| {
            many(known(code)?, from, to).map_err(|unanswered| unanswered.error)
        }),
    }
}

fn liquid_density_kg_m3(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    saturation::line_of(refrigerant).density_kg_m3(Side::Bubble, t_k)
}

fn vapour_density_kg_m3(refrigerant: Refrigerant, t_k: f64) -> Result<f64, Error> {
    saturation::line_of(refrigerant).density_kg_m3(Side::Dew, t_k)
}
