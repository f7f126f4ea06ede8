//! A vehicle that is simulated from a file has the ports and the cut-out of its system, and follows what is commanded.

#![cfg(feature = "report")]
#![allow(clippy::unwrap_used)]

use coldloop::units::{GaugePressure, in_kelvins};
use coldloop::vehicle::{HighPort, LowPort, System, Vehicle, simulate};
use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass, intake};

fn trial(system: &str, conditions: &str) -> coldloop::vehicle::Simulation {
    let text = format!(
        r#"{{ "vehicle": {{ "class": "van" }},
        "system": {{ "refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-external"{system} }},
        "conditions": {{ "ambient": "32 °C", "altitude": "1600 m"{conditions} }} }}"#
    );
    let trial = intake::trial_from_json(&text).unwrap();
    simulate(&trial.vehicle, &trial.conditions, &trial.faults).unwrap()
}

#[test]
fn a_trial_has_the_ports_evaporators_and_cut_out_of_its_system() {
    let usual = trial("", "");
    assert_eq!(
        usual,
        trial(r#", "low_port": "compressor", "high_port": "liquid-line""#, "")
    );
    let before = trial(r#", "low_port": "evaporator", "high_port": "discharge-line""#, "");
    assert!(before.low_side.pa() > usual.low_side.pa() + 1e3 && before.high_side.pa() > usual.high_side.pa() + 1e3);
    let van = |change: &dyn Fn(&mut System)| {
        let mut system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableExternal);
        change(&mut system);
        Vehicle::typical(system, VehicleClass::Van).unwrap()
    };
    assert_eq!(
        van(&|system| system.low_port = Some(LowPort::Evaporator)).low_port,
        LowPort::Evaporator
    );
    assert_eq!(
        van(&|system| system.high_port = Some(HighPort::Discharge)).high_port,
        HighPort::Discharge
    );
    assert!(van(&|_| {}).rear.is_none() && van(&|system| system.evaporators = Some(1)).rear.is_none());
    let two = van(&|system| system.evaporators = Some(2));
    assert!(two.rear.is_some() && two.charge.kg() > van(&|_| {}).charge.kg());
    assert_eq!(
        van(&|system| system.high_cut_out = Some(GaugePressure::from_bar(25.0)))
            .hardware
            .high_limit_pa,
        25e5
    );
}

#[test]
fn a_trial_follows_what_is_commanded() {
    let usual = trial("", "");
    let least = trial("", r#", "commanded_displacement": "20 %""#);
    assert!(
        least.demand <= 0.2 + 1e-9
            && least.demand < usual.demand
            && in_kelvins(least.vent) > in_kelvins(usual.vent) + 1.0
    );
    let calm = trial("", r#", "fan_command": "20 %""#);
    assert!(calm.high_side.pa() > trial("", r#", "fan_command": "100 %""#).high_side.pa() + 50e3);
    let rest = trial("", r#", "compressor_running": false"#);
    assert_eq!((rest.low_side.pa(), rest.flow.kg_s()), (rest.high_side.pa(), 0.0));
    assert_eq!(trial("", r#", "engine_speed": "0 rpm""#), rest);
    let running = trial("", r#", "engine_speed": "0 rpm", "compressor_running": true"#);
    assert_eq!(running, usual);
    let faster = trial("", r#", "compressor_speed": "4000 rpm""#);
    assert!(faster.demand < usual.demand);
}
