//! What a simulated vehicle reads, as JSON.

use super::record::{Json, record};
use crate::units::Surroundings;
use crate::vehicle::{Simulation, StatePoint, Swing, VisibleSigns};
use alloc::string::String;

/// A simulation as one JSON object, on one line; `place` is the air in which the gauges are read.
///
/// Numbers are plain SI with the unit and the datum in the key. Keys: `readings` (what the instruments show),
/// `swing` (the lowest and highest pressures where the clutch cycles, else `null`), `looks` (what can be seen), `states`
/// (around the circuit), `figures` (heat, power, flow, efficiencies, fill), `solver` (the residual of the balances).
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
            "low_side_pa_gauge": s.low_side_pa - air_pa,
            "high_side_pa_gauge": s.high_side_pa - air_pa,
            "vent_k": s.vent_k,
            "cabin_k": s.cabin_k,
            "suction_line_k": s.suction_line_k,
            "discharge_line_k": s.discharge_line_k,
            "liquid_line_k": s.liquid_line_k,
            "condenser_outlet_k": s.condenser_outlet_k,
            "clutch_cycles_hz": s.clutch_cycles_hz,
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
            "capacity_w": s.capacity_w,
            "rejected_w": s.rejected_w,
            "power_w": s.power_w,
            "cop": s.cop,
            "flow_kg_s": s.flow_kg_s,
            "superheat_k": s.superheat_k,
            "subcooling_k": s.subcooling_k,
            "evaporator_air_k": s.evaporator_air_k,
            "demand": s.demand,
            "volumetric_efficiency": s.volumetric_efficiency,
            "isentropic_efficiency": s.isentropic_efficiency,
            "fill": s.fill,
            "opening": s.opening,
            "charge_kg": s.charge_kg,
        }),
        "solver": record!({ "residual": s.residual, "rounds": s.rounds }),
    })
    .answer()
}

fn swing(swing: Swing, air_pa: f64) -> Json {
    let (low, high) = (swing.low_side_pa, swing.high_side_pa);
    record!({
        "low_side_pa_gauge": [low.0 - air_pa, low.1 - air_pa],
        "high_side_pa_gauge": [high.0 - air_pa, high.1 - air_pa],
        "cycles_hz": swing.cycles_hz,
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
        "pressure_pa_abs": state.p_pa,
        "temperature_k": state.t_k,
        "enthalpy_j_kg": state.h_j_kg,
        "entropy_j_kg_k": state.s_j_kg_k,
        "quality": state.quality,
    })
}
