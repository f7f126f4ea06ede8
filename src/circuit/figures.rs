//! The figures of [`super::Derived`], each with what it depends on.

use super::estimate::{Estimate, Input, Known};
use super::instrument::rectangular;
use super::readings::Reading;
use crate::error::Error;
use crate::mixture::Side;
use crate::names::{Phase, Quantity, Reference, Refrigerant};
use crate::range::{ABSOLUTE_PRESSURE, GAUGE_PRESSURE, LINE_TEMPERATURE, Range};
use crate::saturation::{self, Line, Response, State, pseudo_critical};
use crate::units::{Pressure, SpecificEnergy, Surroundings, Temperature, difference_in_kelvins, in_kelvins};

/// Limit of error of an enthalpy difference of the property model, relative.
///
/// Source: the uncertainty of heat capacities, 0.5 to 1 %, that Tillner-Roth & Baehr (1994),
/// doi:10.1063/1.555958, state for R-134a; taken for the other refrigerants too.
const ENTHALPY_LIMIT: f64 = 0.01;

/// The pressure above vacuum, Pa; that of a gauge includes the uncertainty of its datum.
pub(super) fn pressure(reading: Reading<Pressure>, datum: Surroundings, input: Input) -> Result<Known, Error> {
    let own = not_negative(
        Quantity::AbsolutePressure,
        ABSOLUTE_PRESSURE.high,
        reading.standard_uncertainty.pa(),
    )?;
    let (pa, datum_uncertainty_pa) = match reading.value {
        Pressure::Absolute(pressure) => (pressure.pa(), 0.0),
        Pressure::Gauge(pressure) => {
            let shown_pa = GAUGE_PRESSURE.check(pressure.pa())?;
            (shown_pa + datum.pressure().pa(), datum.standard_uncertainty().pa())
        }
    };
    Ok(Known::measured(ABSOLUTE_PRESSURE.check(pa)?, input, own).and(Input::Air, datum_uncertainty_pa))
}

/// The temperature, K.
pub(super) fn temperature(reading: Reading<Temperature>, input: Input) -> Result<Known, Error> {
    let own = not_negative(
        Quantity::TemperatureDifference,
        LINE_TEMPERATURE.high,
        difference_in_kelvins(reading.standard_uncertainty),
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
    saturated(refrigerant, pressure, Side::Dew)
}

/// Bubble temperature of a pressure, K.
pub(super) fn bubble(refrigerant: Refrigerant, pressure: Known) -> Result<Known, Error> {
    saturated(refrigerant, pressure, Side::Bubble)
}

fn saturated(refrigerant: Refrigerant, pressure: Known, side: Side) -> Result<Known, Error> {
    if let Some(slope_k_pa) = pseudo_critical::slope_k_pa(refrigerant, pressure.value) {
        let t_k = pseudo_critical::along_k(refrigerant, pressure.value)?;
        let model_k = rectangular(pseudo_critical::LINE_LIMIT_K);
        return Ok(Known::of(t_k, &[(slope_k_pa, pressure)]).and(Input::SaturationModel, model_k));
    }
    let line = saturation::line_of(refrigerant);
    let t_k = line.temperature_k(side, pressure.value)?;
    let slope_k_pa = 1.0 / line.slope_pa_k(side, t_k)?;
    let model_k = slope_k_pa * model_pa(line, side, pressure.value, 1.0 / slope_k_pa);
    Ok(Known::of(t_k, &[(slope_k_pa, pressure)]).and(Input::SaturationModel, model_k))
}

/// Bubble or dew pressure of a temperature, Pa.
pub(super) fn saturation_pressure(refrigerant: Refrigerant, temperature: Known, side: Side) -> Result<Known, Error> {
    let line = saturation::line_of(refrigerant);
    let p_pa = line.pressure_pa(side, temperature.value)?;
    let slope_pa_k = line.slope_pa_k(side, temperature.value)?;
    Ok(Known::of(p_pa, &[(slope_pa_k, temperature)])
        .and(Input::SaturationModel, model_pa(line, side, p_pa, slope_pa_k)))
}

/// Standard uncertainty of a line's pressure, Pa.
fn model_pa(line: Line, side: Side, p_pa: f64, slope_pa_k: f64) -> f64 {
    match line {
        Line::Pure(pure) => rectangular(pure.fluid.facts.saturation_uncertainty.unwrap_or(SATURATION_LIMIT)) * p_pa,
        Line::Blend(blend) => blend.boundary(side).uncertainty_k * slope_pa_k,
    }
}

/// Limit of error of the saturation pressure, relative, where the publication of the equation states none.
///
/// Source: engineering judgement; equations of state of this kind state 0.02 to 0.5 %.
const SATURATION_LIMIT: f64 = 0.005;

/// Heat taken up between liquid line and suction line, J/kg; `None` where a line is wet.
pub(super) fn cooling(
    refrigerant: Refrigerant,
    (low, suction): (Option<Known>, Option<Known>),
    (high, liquid): (Option<Known>, Option<Known>),
) -> Option<Estimate<SpecificEnergy>> {
    let leaving = Point::of(refrigerant, low?, suction?, GAS)?;
    let entering = Point::of(refrigerant, high?, liquid?, LIQUID)?;
    let difference = leaving.enthalpy().minus(entering.enthalpy());
    let model = rectangular(ENTHALPY_LIMIT) * difference.value;
    Some(difference.and(Input::EnthalpyModel, model).estimate())
}

/// Work of a loss-free compressor over the work done.
///
/// (h2s - h1)/(h2 - h1), h2s at the discharge pressure with the entropy of the suction line. Derivatives follow from
/// dh = T ds + v dp and ds = cp dT/T - v beta dp. `None` when either line is wet or the compressor does no work on the
/// refrigerant.
pub(super) fn isentropic_efficiency(
    refrigerant: Refrigerant,
    (low, suction): (Option<Known>, Option<Known>),
    (high, discharge): (Option<Known>, Option<Known>),
) -> Option<Estimate> {
    let (low, suction, high, discharge) = (low?, suction?, high?, discharge?);
    let inlet = Point::of(refrigerant, low, suction, GAS)?;
    let outlet = Point::of(refrigerant, high, discharge, GAS)?;
    if high.value <= low.value || outlet.state.h_j_kg <= inlet.state.h_j_kg {
        return None;
    }
    let ideal = saturation::line_of(refrigerant)
        .state_ps(outlet.state.p_pa, inlet.state.s_j_kg_k, Reference::Iir)
        .ok()?;
    let s_by_t = inlet.response.cp.j_kg_k() / inlet.state.t_k;
    let s_by_p = -inlet.response.isobaric_expansion_1_k / inlet.state.rho_kg_m3;
    let ideal_h = Known::of(
        ideal.h_j_kg,
        &[
            (ideal.t_k * s_by_t, suction),
            (ideal.t_k * s_by_p, low),
            (1.0 / ideal.rho_kg_m3, high),
        ],
    );
    let inlet_h = inlet.enthalpy();
    let efficiency = ideal_h.minus(inlet_h).over(outlet.enthalpy().minus(inlet_h));
    // Both differences carry the model's own uncertainty.
    let model = core::f64::consts::SQRT_2 * rectangular(ENTHALPY_LIMIT) * efficiency.value;
    Some(efficiency.and(Input::EnthalpyModel, model).estimate())
}

/// Phases at the inlet and outlet of a compressor; a discharge line is often above the critical temperature.
const GAS: [Phase; 2] = [Phase::Vapour, Phase::Supercritical];
/// Phases before the expansion device; supercritical in an R-744 system on a warm day.
const LIQUID: [Phase; 2] = [Phase::Liquid, Phase::Supercritical];

/// The state at a pressure and a temperature that were read.
#[derive(Clone, Copy)]
struct Point {
    pressure: Known,
    temperature: Known,
    state: State,
    response: Response,
}

impl Point {
    /// `None` unless the refrigerant has one of these phases there: the share of vapour in a mixture cannot be read.
    fn of(refrigerant: Refrigerant, pressure: Known, temperature: Known, phases: [Phase; 2]) -> Option<Self> {
        let state = saturation::line_of(refrigerant)
            .state_tp(temperature.value, pressure.value, Reference::Iir)
            .ok()?;
        let response = state.response.filter(|_| phases.contains(&state.phase))?;
        Some(Self {
            pressure,
            temperature,
            state,
            response,
        })
    }

    /// dh = cp dT - mu cp dp, mu being the Joule-Thomson coefficient.
    fn enthalpy(self) -> Known {
        let cp = self.response.cp.j_kg_k();
        let by_pressure = -self.response.joule_thomson_k_pa * cp;
        Known::of(
            self.state.h_j_kg,
            &[(cp, self.temperature), (by_pressure, self.pressure)],
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Of an exact pressure the dew temperature of a blend is as uncertain as its line, which is stated in kelvins.
    #[test]
    fn a_blend_is_as_uncertain_as_its_line() {
        let Line::Blend(blend) = saturation::line_of(Refrigerant::R407C) else {
            unreachable!()
        };
        let exact = Known::measured(400_000.0, Input::LowSide, 0.0);
        let dew: Estimate = saturated(Refrigerant::R407C, exact, Side::Dew).unwrap().estimate();
        let stated_k = blend.boundary(Side::Dew).uncertainty_k;
        assert!(
            libm::fabs(dew.standard_uncertainty / stated_k - 1.0) < 1e-9,
            "{dew:?} {stated_k}"
        );
    }
}
