//! The same bits everywhere: debug and release builds, and every machine, agree with tests/data/golden.csv.
//!
//! `COLDLOOP_WRITE_GOLDEN=1 cargo test --test golden` writes the file again, after a change that is meant to move bits.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::saturation::{self, State};
use coldloop::units::in_kelvins;
use coldloop::{Error, Reference, Refrigerant};
use std::fmt::Write;

fn line(text: &mut String, refrigerant: Refrigerant, call: &str, state: Result<State, Error>) {
    let state = state.unwrap();
    write!(text, "{},{call}", refrigerant.id()).unwrap();
    let w_m_s = state.response.map_or(0.0, |r| r.speed_of_sound.m_s());
    let figures = [
        in_kelvins(state.temperature()),
        state.pressure().pa(),
        state.molar_density().mol_m3(),
        state.enthalpy().j_kg(),
        state.entropy().j_kg_k(),
        w_m_s,
    ];
    for figure in figures {
        write!(text, ",{:016x}", figure.to_bits()).unwrap();
    }
    text.push('\n');
}

fn calls() -> String {
    let mut text = String::from(
        "# The bits of temperature, pressure, molar density, enthalpy, entropy (IIR) and speed of sound (0 in two phases).\n\
         refrigerant,call,t_k,p_pa,rho_mol_m3,h_j_kg,s_j_kg_k,w_m_s\n",
    );
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let (t_c, p_c) = (pure.critical_t_k, pure.critical_p_pa);
        let iir = Reference::Iir;
        let mut add = |call, state| line(&mut text, refrigerant, call, state);
        let gas = pure.state_tp(0.9 * t_c, 0.05 * p_c, iir);
        let liquid = pure.state_tp(0.8 * t_c, 1.1 * p_c, iir);
        add("tp gas", gas);
        add("tp liquid", liquid);
        add("tq", pure.state_tq(0.85 * t_c, 0.3, iir));
        add("pq", pure.state_pq(0.3 * p_c, 0.7, iir));
        let (gas, liquid) = (gas.unwrap(), liquid.unwrap());
        add("ph gas", pure.state_ph(gas.pressure().pa(), gas.enthalpy().j_kg(), iir));
        add(
            "ps liquid",
            pure.state_ps(liquid.pressure().pa(), liquid.entropy().j_kg_k(), iir),
        );
        add(
            "hs gas",
            pure.state_hs(gas.enthalpy().j_kg(), gas.entropy().j_kg_k(), iir),
        );
    }
    text
}

#[test]
fn the_bits_are_those_of_the_file() {
    let found = calls();
    if std::env::var_os("COLDLOOP_WRITE_GOLDEN").is_some() {
        std::fs::write("tests/data/golden.csv", &found).unwrap();
    }
    let right = std::fs::read_to_string("tests/data/golden.csv").unwrap();
    let mut lines = 0;
    for (found, right) in found.lines().zip(right.lines()) {
        assert_eq!(found, right);
        lines += 1;
    }
    assert_eq!(lines, right.lines().count());
    assert_eq!(found.lines().count(), right.lines().count());
}
