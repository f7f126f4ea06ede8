//! The figures behind [`super::Derived`], as values that know what they depend on.

use super::estimate::{Estimate, Input, Known};
use super::instrument::rectangular;
use super::readings::Reading;
use crate::error::Error;
use crate::fluid;
use crate::names::{Phase, Quantity, Reference, Refrigerant};
use crate::range::{ABSOLUTE_PRESSURE, GAUGE_PRESSURE, LINE_TEMPERATURE, Range};
use crate::saturation::{self, State};
use crate::units::{Pressure, Surroundings, Temperature, in_kelvins};

/// Limit of error of an enthalpy difference of the property model, relative.
///
/// Source: the uncertainty of heat capacities, 0.5 to 1 %, that Tillner-Roth & Baehr (1994),
/// doi:10.1063/1.555958, state for R-134a; taken for the other refrigerants too.
const ENTHALPY_LIMIT: f64 = 0.01;

/// The pressure above vacuum, Pa, with the datum's uncertainty when the gauge shows a difference to it.
pub(super) fn pressure(reading: Reading<Pressure>, datum: Surroundings, input: Input) -> Result<Known, Error> {
    let own = not_negative(
        Quantity::AbsolutePressure,
        ABSOLUTE_PRESSURE.high,
        reading.standard_uncertainty,
    )?;
    let (pa, datum_uncertainty_pa) = match reading.value {
        Pressure::Absolute(pressure) => (pressure.pa(), 0.0),
        Pressure::Gauge(pressure) => {
            let shown_pa = GAUGE_PRESSURE.check(pressure.pa())?;
            (shown_pa + datum.pressure().pa(), datum.standard_uncertainty_pa())
        }
    };
    Ok(Known::measured(ABSOLUTE_PRESSURE.check(pa)?, input, own).and(Input::Air, datum_uncertainty_pa))
}

/// The temperature, K.
pub(super) fn temperature(reading: Reading<Temperature>, input: Input) -> Result<Known, Error> {
    let own = not_negative(
        Quantity::TemperatureDifference,
        LINE_TEMPERATURE.high,
        reading.standard_uncertainty,
    )?;
    Ok(Known::measured(
        LINE_TEMPERATURE.check(in_kelvins(reading.value))?,
        input,
        own,
    ))
}

fn not_negative(quantity: Quantity, high: f64, standard_uncertainty: f64) -> Result<f64, Error> {
    Range::new(quantity, 0.0, high).check(standard_uncertainty)
}

/// Dew temperature of a pressure, K.
pub(super) fn dew(refrigerant: Refrigerant, pressure: Known) -> Result<Known, Error> {
    saturated(
        refrigerant,
        pressure,
        saturation::dew_temperature_k(refrigerant, pressure.value)?,
    )
}

/// Bubble temperature of a pressure, K.
pub(super) fn bubble(refrigerant: Refrigerant, pressure: Known) -> Result<Known, Error> {
    saturated(
        refrigerant,
        pressure,
        saturation::bubble_temperature_k(refrigerant, pressure.value)?,
    )
}

fn saturated(refrigerant: Refrigerant, pressure: Known, t_k: f64) -> Result<Known, Error> {
    let slope_k_pa = 1.0 / saturation::slope_pa_k(refrigerant, t_k)?;
    let model_pa = rectangular(saturation_limit(refrigerant)) * pressure.value;
    Ok(Known::of(t_k, &[(slope_k_pa, pressure)]).and(Input::SaturationModel, slope_k_pa * model_pa))
}

/// Limit of error of the saturation pressure, relative: as published with the equation of state.
fn saturation_limit(refrigerant: Refrigerant) -> f64 {
    fluid::of(refrigerant)
        .facts
        .saturation_uncertainty
        .unwrap_or(SATURATION_LIMIT)
}

/// Where the publication states none. Source: engineering judgement; equations of state of this kind state 0.02 to 0.5 %.
const SATURATION_LIMIT: f64 = 0.005;

/// Heat taken up between liquid line and suction line, J/kg.
pub(super) fn cooling(
    refrigerant: Refrigerant,
    suction: (Option<Known>, Option<Known>),
    liquid: (Option<Known>, Option<Known>),
) -> Option<Estimate> {
    let out = enthalpy(refrigerant, suction.0?, suction.1?, Phase::Vapour)?;
    let entering = enthalpy(refrigerant, liquid.0?, liquid.1?, Phase::Liquid)?;
    let difference = out.minus(entering);
    Some(
        difference
            .and(Input::EnthalpyModel, rectangular(ENTHALPY_LIMIT) * difference.value)
            .estimate(),
    )
}

/// Enthalpy, J/kg; `None` unless the refrigerant has this phase there.
fn enthalpy(refrigerant: Refrigerant, pressure: Known, temperature: Known, phase: Phase) -> Option<Known> {
    let state = state(refrigerant, pressure, temperature)?;
    if state.phase != phase {
        return None;
    }
    let response = state.response?;
    let by_pressure = -response.joule_thomson_k_pa * response.cp_j_kg_k;
    Some(Known::of(
        state.h_j_kg,
        &[(response.cp_j_kg_k, temperature), (by_pressure, pressure)],
    ))
}

fn state(refrigerant: Refrigerant, pressure: Known, temperature: Known) -> Option<State> {
    saturation::of(refrigerant)
        .state_tp(temperature.value, pressure.value, Reference::Iir)
        .ok()
}

/// Work of a loss-free compressor over the work done.
///
/// (h2s - h1)/(h2 - h1), h2s at the discharge pressure with the entropy of the suction line. Derivatives follow from
/// dh = T ds + v dp and ds = cp dT/T - v beta dp.
pub(super) fn isentropic_efficiency(
    refrigerant: Refrigerant,
    (low, suction): (Option<Known>, Option<Known>),
    (high, discharge): (Option<Known>, Option<Known>),
) -> Option<Estimate> {
    let (low, suction, high, discharge) = (low?, suction?, high?, discharge?);
    let inlet_h = enthalpy(refrigerant, low, suction, Phase::Vapour)?;
    let outlet_h = enthalpy(refrigerant, high, discharge, Phase::Vapour)?;
    if high.value <= low.value || outlet_h.value <= inlet_h.value {
        return None; // the compressor does no work on the refrigerant
    }
    let inlet = state(refrigerant, low, suction)?;
    let ideal = isentropic(refrigerant, inlet.s_j_kg_k, high.value, discharge.value)?;
    let response = inlet.response?;
    let s_by_t = response.cp_j_kg_k / inlet.t_k;
    let s_by_p = -response.isobaric_expansion_1_k / inlet.rho_kg_m3;
    let ideal_h = Known::of(
        ideal.h_j_kg,
        &[
            (ideal.t_k * s_by_t, suction),
            (ideal.t_k * s_by_p, low),
            (1.0 / ideal.rho_kg_m3, high),
        ],
    );
    let efficiency = ideal_h.minus(inlet_h).over(outlet_h.minus(inlet_h));
    // Both differences carry the model's own uncertainty.
    let model = libm::sqrt(2.0) * rectangular(ENTHALPY_LIMIT) * efficiency.value;
    Some(efficiency.and(Input::EnthalpyModel, model).estimate())
}

/// The vapour at `p_pa` with this entropy, found from a temperature near it; `None` when it would be wet.
///
/// At constant pressure d ln T = ds/cp, which is close to straight: five steps reach the last bits.
fn isentropic(refrigerant: Refrigerant, s_j_kg_k: f64, p_pa: f64, near_k: f64) -> Option<State> {
    const STEPS: usize = 12;
    const CLOSE_J_KG_K: f64 = 1e-7; // in an entropy of some 1700
    let mut t_k = near_k;
    for _ in 0..STEPS {
        let state = saturation::of(refrigerant).state_tp(t_k, p_pa, Reference::Iir).ok()?;
        let missing = s_j_kg_k - state.s_j_kg_k;
        if libm::fabs(missing) <= CLOSE_J_KG_K {
            return (state.phase == Phase::Vapour).then_some(state);
        }
        t_k *= libm::exp(missing / state.response?.cp_j_kg_k);
    }
    None
}
