//! Nanoseconds per call of the hot paths, one line each: `what|refrigerant|ns`. `benches/compare.py` reads them beside a peer.
//!
//! Each figure is the least of several passes over a thousand different inputs, so that no branch is learnt by heart
//! and a busy machine disturbs least. `cargo test` runs one short pass.

use coldloop::diagnosis::{Settings, diagnose};
use coldloop::saturation::State;
use coldloop::{Reference, Refrigerant, intake, saturation};
use std::hint::black_box;
use std::time::Instant;

const INPUTS: usize = 1_000;

fn main() {
    let passes = if std::env::args().any(|argument| argument == "--bench") {
        200
    } else {
        1
    };
    for refrigerant in [Refrigerant::R134a, Refrigerant::R1234yf, Refrigerant::R744] {
        properties(refrigerant, passes);
        inverse(refrigerant, passes);
    }
    let file = include_str!("../examples/readings/worn-compressor.toml");
    match intake::case_from_toml(file) {
        Ok(case) => measure("diagnosis", "R-134a", passes, |_| {
            diagnose(&case, &Settings::default()).map_or(f64::NAN, |answer| answer.none_of_these)
        }),
        Err(refusal) => eprintln!("{refusal}"),
    }
}

fn properties(refrigerant: Refrigerant, passes: usize) {
    let pure = saturation::of(refrigerant);
    let name = refrigerant.id();
    let temperatures: Vec<f64> = (0..INPUTS).map(|k| 250.0 + 50.0 * scattered(k)).collect();
    let pressures: Vec<f64> = temperatures
        .iter()
        .map(|&t| pure.pressure_pa(t).unwrap_or(f64::NAN))
        .collect();
    measure("psat(T)", name, passes, |k| {
        pure.pressure_pa(temperatures[k]).unwrap_or(f64::NAN)
    });
    measure_array("psat(T), array", name, passes, |found| {
        pure.pressures_pa(&temperatures, found).is_ok()
    });
    measure_array("Tsat(p), array", name, passes, |found| {
        pure.temperatures_k(&pressures, found).is_ok()
    });
    measure("Tsat(p)", name, passes, |k| {
        pure.temperature_k(pressures[k]).unwrap_or(f64::NAN)
    });
    measure("saturated liquid: rho, h, s", name, passes, |k| {
        pure.liquid(temperatures[k]).map_or(f64::NAN, |branch| branch.h_j_kg)
    });
    measure("h(T, p) superheated", name, passes, |k| {
        let state = pure.state_tp(temperatures[k] + 15.0, 0.9 * pressures[k], Reference::Iir);
        state.map_or(f64::NAN, |state| state.h_j_kg)
    });
    measure("h(T, p) subcooled", name, passes, |k| {
        let state = pure.state_tp(temperatures[k] - 8.0, 1.1 * pressures[k], Reference::Iir);
        state.map_or(f64::NAN, |state| state.h_j_kg)
    });
}

/// States from pressure and enthalpy or entropy: the ones after the evaporator, told by their energies.
fn inverse(refrigerant: Refrigerant, passes: usize) {
    let pure = saturation::of(refrigerant);
    let states: Vec<State> = (0..INPUTS)
        .filter_map(|k| {
            let t_k = 250.0 + 50.0 * scattered(k);
            let p_pa = pure.pressure_pa(t_k).ok()?;
            pure.state_tp(t_k + 15.0, 0.9 * p_pa, Reference::Iir).ok()
        })
        .collect();
    let name = refrigerant.id();
    measure("T(p, h) superheated", name, passes, |k| {
        let State { p_pa, h_j_kg, .. } = states[k % states.len()];
        pure.state_ph(p_pa, h_j_kg, Reference::Iir)
            .map_or(f64::NAN, |state| state.t_k)
    });
    measure("T(p, s) superheated", name, passes, |k| {
        let State { p_pa, s_j_kg_k, .. } = states[k % states.len()];
        pure.state_ps(p_pa, s_j_kg_k, Reference::Iir)
            .map_or(f64::NAN, |state| state.t_k)
    });
}

/// Numbers between 0 and 1 in no order (the fractional parts of multiples of the golden ratio).
fn scattered(k: usize) -> f64 {
    (k as f64 * 0.618_033_988_749_894_9).fract()
}

fn measure(what: &str, refrigerant: &str, passes: usize, call: impl Fn(usize) -> f64) {
    let mut least = f64::INFINITY;
    for _ in 0..passes {
        let began = Instant::now();
        let mut sum = 0.0;
        for k in 0..INPUTS {
            sum += call(black_box(k));
        }
        black_box(sum);
        least = least.min(began.elapsed().as_secs_f64() * 1e9 / INPUTS as f64);
    }
    println!("{what}|{refrigerant}|{least:.1}");
}

fn measure_array(what: &str, refrigerant: &str, passes: usize, call: impl Fn(&mut [f64]) -> bool) {
    let mut least = f64::INFINITY;
    let mut found = [0.0; INPUTS];
    for _ in 0..passes {
        let began = Instant::now();
        black_box(call(black_box(&mut found)));
        least = least.min(began.elapsed().as_secs_f64() * 1e9 / INPUTS as f64);
    }
    println!("{what}|{refrigerant}|{least:.1}");
}
