//! The cost of a search is bounded: evaluations of the equation, for states that exist and for meaningless numbers.

#![cfg(test)]

extern crate std;

use super::{Blend, Pure, State, blend, line_of, pure};
use crate::eos::tally::evaluations;
use crate::error::Error;
use crate::names::{Reference, Refrigerant};
use crate::numerics::random::Random;
use std::println;
use std::vec::Vec;

impl Random {
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    fn pure(&mut self) -> &'static Pure {
        loop {
            let refrigerant = Refrigerant::ALL[(self.bits() % Refrigerant::ALL.len() as u64) as usize];
            if let Ok(pure) = pure(refrigerant) {
                return pure;
            }
        }
    }
}

/// The same for blends, in evaluations of a component's equation: one evaluation of a mixture of five counts as five.
const BLENDS: [BlendDoor; 5] = [
    ("(T,p)", |blend, a, b| blend.state_tp(a, b, IIR), 200.0, 30_000),
    ("(T,rho)", |blend, a, b| blend.state_t_rho(a, b, IIR), 200.0, 30_000),
    ("(p,h)", |blend, a, b| blend.state_ph(a, b, IIR), 500.0, 30_000),
    ("(p,s)", |blend, a, b| blend.state_ps(a, b, IIR), 500.0, 30_000),
    ("(h,s)", |blend, a, b| blend.state_hs(a, b, IIR), 5_000.0, 70_000),
];
type BlendDoor = (
    &'static str,
    fn(&'static Blend, f64, f64) -> Result<State, Error>,
    f64,
    u64,
);

/// A search: its name, its function, and the most evaluations that it may take over odd inputs, on average and for one input.
/// About twice what was found.
type Door = (&'static str, fn(&Pure, f64, f64) -> Result<State, Error>, f64, u64);

const IIR: Reference = Reference::Iir;
const DOORS: [Door; 7] = [
    ("(T,p)", |pure, a, b| pure.state_tp(a, b, IIR), 3.0, 40),
    ("(T,rho)", |pure, a, b| pure.state_t_rho(a, b, IIR), 2.0, 30),
    ("(p,h)", |pure, a, b| pure.state_ph(a, b, IIR), 25.0, 300),
    ("(p,s)", |pure, a, b| pure.state_ps(a, b, IIR), 25.0, 300),
    ("(h,s)", |pure, a, b| pure.state_hs(a, b, IIR), 45.0, 2_000),
    (
        "superheated liquid",
        |pure, a, b| pure.superheated_liquid(a, b, IIR),
        60.0,
        400,
    ),
    (
        "subcooled vapour",
        |pure, a, b| pure.subcooled_vapour(a, b, IIR),
        60.0,
        400,
    ),
];

/// The ranges of the two numbers of each search.
const RANGES: [[(f64, f64); 2]; 7] = [
    [(80.0, 700.0), (1.0, 1e8)],
    [(80.0, 700.0), (1e-6, 4e4)],
    [(1.0, 1e8), (1.0, 9e5)],
    [(1.0, 1e8), (1.0, 4e3)],
    [(1.0, 9e5), (1.0, 4e3)],
    [(80.0, 700.0), (1.0, 1e8)],
    [(80.0, 700.0), (1.0, 1e8)],
];

#[test]
fn odd_inputs_cost_a_bounded_number_of_evaluations() {
    const INPUTS: u32 = 100_000;
    for ((name, door, mean, most), [first, second]) in DOORS.into_iter().zip(RANGES) {
        let mut random = Random(0x9e37_79b9_7f4a_7c15);
        let (mut sum, mut worst) = (0, 0);
        for _ in 0..INPUTS {
            let pure = random.pure();
            let mut number = |(low, high): (f64, f64)| match random.bits() % 4 {
                0 | 1 => random.between(low, high),
                2 => f64::exp(random.between(f64::ln(low), f64::ln(high))),
                _ => f64::from_bits(random.bits()),
            };
            let (a, b) = (number(first), number(second));
            let cost = evaluations(|| door(pure, a, b));
            sum += cost;
            worst = worst.max(cost);
        }
        let found = sum as f64 / f64::from(INPUTS);
        println!("{name}: {found:.1} evaluations on average, {worst} at most");
        assert!(
            found <= mean && worst <= most,
            "{name}: {found} on average, {worst} at most"
        );
    }
}

#[test]
fn odd_inputs_of_blends_cost_a_bounded_number_of_evaluations() {
    const INPUTS: u32 = 2_000;
    for ((name, door, mean, most), [first, second]) in BLENDS.into_iter().zip(RANGES) {
        let mut random = Random(0x9e37_79b9_7f4a_7c15);
        let (mut sum, mut worst, mut asked) = (0, 0, 0u32);
        while asked < INPUTS {
            let refrigerant = Refrigerant::ALL[(random.bits() % Refrigerant::ALL.len() as u64) as usize];
            let Some(blend) = blend(refrigerant) else { continue };
            asked += 1;
            let (a, b) = (random.between(first.0, first.1), random.between(second.0, second.1));
            let cost = evaluations(|| door(blend, a, b));
            sum += cost;
            worst = worst.max(cost);
        }
        let found = sum as f64 / f64::from(INPUTS);
        println!("blends {name}: {found:.1} evaluations on average, {worst} at most");
        assert!(
            found <= mean && worst <= most,
            "{name}: {found} on average, {worst} at most"
        );
    }
}

/// States of every blend, among them those next to the critical point, from each pair of their properties.
#[test]
fn states_of_blends_are_found_in_few_evaluations() {
    let mut costs = [Vec::new(), Vec::new(), Vec::new()];
    for line in Refrigerant::ALL.into_iter().filter(|r| r.is_blend()).map(line_of) {
        let (t, p) = (line.valid_temperatures(), line.valid_pressures());
        for i in 0..8 {
            for j in 0..8 {
                let part = |k: u32| f64::from(k) / 7.0;
                let spread = (
                    t.low + (t.high - t.low) * part(i),
                    f64::exp(f64::ln(1e3) + (f64::ln(p.high) - f64::ln(1e3)) * part(j)),
                );
                let critical = (
                    line.critical_t_k() * (0.97 + 0.05 * part(i)),
                    line.critical_p_pa() * (0.85 + 0.25 * part(j)),
                );
                let cool = (line.critical_t_k() * (0.7 + 0.28 * part(i)), part(j));
                let states = [
                    line.state_tp(spread.0, spread.1, IIR),
                    line.state_tp(critical.0, critical.1, IIR),
                    line.state_tq(cool.0, cool.1, IIR),
                ];
                for state in states.into_iter().flatten() {
                    let State {
                        p_pa, h_j_kg, s_j_kg_k, ..
                    } = state;
                    costs[0].push(evaluations(|| line.state_ph(p_pa, h_j_kg, IIR)));
                    costs[1].push(evaluations(|| line.state_ps(p_pa, s_j_kg_k, IIR)));
                    costs[2].push(evaluations(|| line.state_hs(h_j_kg, s_j_kg_k, IIR)));
                }
            }
        }
    }
    for ((name, costs), (mean, most)) in (["(p,h)", "(p,s)", "(h,s)"].into_iter().zip(costs)).zip([
        (1_200.0, 100_000),
        (1_200.0, 100_000),
        (1_200.0, 100_000),
    ]) {
        let found = costs.iter().sum::<u64>() as f64 / costs.len() as f64;
        let worst = costs.iter().max().copied().unwrap_or(0);
        println!(
            "blends {name}: {found:.1} evaluations on average, {worst} at most, of {}",
            costs.len()
        );
        assert!(
            found <= mean && worst <= most,
            "{name}: {found} on average, {worst} at most"
        );
    }
}

/// The states of a grid over temperature and ln p, from each pair of their properties.
#[test]
fn states_that_exist_are_found_in_few_evaluations() {
    let mut costs = [Vec::new(), Vec::new(), Vec::new(), Vec::new()];
    for pure in Refrigerant::ALL
        .into_iter()
        .filter_map(|refrigerant| pure(refrigerant).ok())
    {
        let (t, p) = (pure.valid_temperatures(), pure.valid_pressures());
        for i in 0..40 {
            for j in 0..40 {
                let t_k = t.low + (t.high - t.low) * f64::from(i) / 39.0;
                let p_pa = f64::exp(f64::ln(1e3) + (f64::ln(p.high) - f64::ln(1e3)) * f64::from(j) / 39.0);
                let Ok(state) = pure.state_tp(t_k, p_pa, IIR) else {
                    continue;
                };
                costs[0].push(evaluations(|| pure.state_tp(t_k, p_pa, IIR)));
                costs[1].push(evaluations(|| pure.state_ph(p_pa, state.h_j_kg, IIR)));
                costs[2].push(evaluations(|| pure.state_ps(p_pa, state.s_j_kg_k, IIR)));
                costs[3].push(evaluations(|| pure.state_hs(state.h_j_kg, state.s_j_kg_k, IIR)));
            }
        }
    }
    for ((name, costs), (mean, most)) in (["(T,p)", "(p,h)", "(p,s)", "(h,s)"].into_iter().zip(costs)).zip([
        (6.0, 40),
        (12.0, 400),
        (12.0, 400),
        (14.0, 600),
    ]) {
        let found = costs.iter().sum::<u64>() as f64 / costs.len() as f64;
        let worst = costs.iter().max().copied().unwrap_or(0);
        println!("{name}: {found:.2} evaluations on average, {worst} at most");
        assert!(
            found <= mean && worst <= most,
            "{name}: {found} on average, {worst} at most"
        );
    }
}
