//! What a simulated vehicle reads, as JSON.

use super::record::{Json, record};
use crate::units::{Surroundings, difference_in_kelvins, in_kelvins};
use crate::vehicle::{Simulation, StatePoint, Swing, VisibleSigns};
use alloc::string::String;

/// A simulation as one JSON object, on one line; `place` is the air in which the gauges are read.
///
/// Numbers are plain SI with the unit and the datum in the key. Keys: `readings` (what the instruments show),
/// `swing` (between what the pressures swing where the clutch cycles, else `null`), `looks` (what eyes see), `states`
/// (around the circuit), `figures` (heat, power, flow, efficiencies, fill), `solver` (how well the balances close).
///
/// ```
/// use coldloop::{intake, report, vehicle::simulate};
/// let trial = intake::trial_from_json(r#"{
///     "system": { "refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal" },
///     "conditions": { "ambient": "30 °C", "altitude": "0 m" }
/// }"#)?;
/// let read = simulate(&trial.vehicle, &trial.conditions, &trial.faults)?;
/// let answer = report::simulation_json(&read, trial.conditions.surroundings);
/// assert!(answer.starts_with(r#"{"readings":{"low_side_pa_gauge":"#));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn simulation_json(simulation: &Simulation, place: Surroundings) -> String {
    let s = simulation;
    let air_pa = place.pressure().pa();
    record!({
        "readings": record!({
            "low_side_pa_gauge": s.low_side.pa() - air_pa,
            "high_side_pa_gauge": s.high_side.pa() - air_pa,
            "vent_k": in_kelvins(s.vent),
            "cabin_k": in_kelvins(s.cabin),
            "suction_line_k": in_kelvins(s.suction_line),
            "discharge_line_k": in_kelvins(s.discharge_line),
            "liquid_line_k": in_kelvins(s.liquid_line),
            "condenser_outlet_k": in_kelvins(s.condenser_outlet),
            "clutch_cycles_hz": s.clutch_cycles.hz(),
        }),
        "swing": s.swing.map(|swing| self::swing(swing, air_pa)),
        "looks": looks(s.looks),
        "states": record!({
            "suction": state(s.states.suction),
            "discharge": state(s.states.discharge),
            "condenser_outlet": state(s.states.condenser_outlet),
            "liquid": state(s.states.liquid),
            "evaporator_inlet": state(s.states.evaporator_inlet),
            "evaporator_outlet": state(s.states.evaporator_outlet),
        }),
        "figures": record!({
            "capacity_w": s.capacity.w(),
            "rejected_w": s.rejected.w(),
            "power_w": s.power.w(),
            "cop": s.cop,
            "flow_kg_s": s.flow.kg_s(),
            "superheat_k": difference_in_kelvins(s.superheat),
            "subcooling_k": difference_in_kelvins(s.subcooling),
            "evaporator_air_k": in_kelvins(s.evaporator_air),
            "demand": s.demand,
            "volumetric_efficiency": s.volumetric_efficiency,
            "isentropic_efficiency": s.isentropic_efficiency,
            "fill": s.fill,
            "opening": s.opening,
            "charge_kg": s.charge.kg(),
        }),
        "solver": record!({ "residual": s.residual, "rounds": s.rounds }),
    })
    .answer()
}

fn swing(swing: Swing, air_pa: f64) -> Json {
    let (low, high) = (swing.low_side, swing.high_side);
    record!({
        "low_side_pa_gauge": [low.0.pa() - air_pa, low.1.pa() - air_pa],
        "high_side_pa_gauge": [high.0.pa() - air_pa, high.1.pa() - air_pa],
        "cycles_hz": swing.cycles.hz(),
        "engaged": swing.engaged,
    })
}

fn looks(looks: VisibleSigns) -> Json {
    record!({
        "clutch_engaged": looks.clutch_engaged,
        "bubbles": looks.bubbles,
        "evaporator_frosts": looks.evaporator_frosts,
        "suction_frosts": looks.suction_frosts,
        "liquid_frosts": looks.liquid_frosts,
    })
}

fn state(state: StatePoint) -> Json {
    record!({
        "pressure_pa_abs": state.pressure.pa(),
        "temperature_k": in_kelvins(state.temperature),
        "enthalpy_j_kg": state.enthalpy.j_kg(),
        "entropy_j_kg_k": state.entropy.j_kg_k(),
        "quality": state.quality,
    })
}
