//! Every state that one pair of figures gives comes back from all the others, for all refrigerants.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::saturation::Side;
use coldloop::saturation::{self, Line, State};
use coldloop::units::in_kelvins;
use coldloop::{Error, Phase, Reference, Refrigerant};

const IIR: Reference = Reference::Iir;

/// Whether a state is next to the critical point, where temperature and density depend on the last digits of pressure and energy.
fn is_near_critical(line: Line, state: &State) -> bool {
    (in_kelvins(state.temperature()) / line.critical_t_k() - 1.0).abs() < 0.005
        && (state.pressure().pa() / line.critical_p_pa() - 1.0).abs() < 0.03
}

/// What a state found again has to have in common: temperature and density to 1e-6. Enthalpy and entropy of a liquid
/// fix its density well and its pressure badly.
fn comes_back(refrigerant: Refrigerant, how: &str, right: &State, found: Result<State, Error>) {
    let found = found.unwrap_or_else(|error| panic!("{refrigerant} {how}: {error:?} for {right:?}"));
    let t = (in_kelvins(found.temperature()) / in_kelvins(right.temperature()) - 1.0).abs();
    let rho = (found.molar_density().mol_m3() / right.molar_density().mol_m3() - 1.0).abs();
    // On the saturation line a saturated liquid is as right as a subcooled one, and its density may differ: at 60 Pa a share of
    // vapour of 1e-11, which is rounding of the energies, is 3e-6 of the volume.
    let near = |state: &State, share: f64| state.quality.is_none_or(|x| x < share || x > 1.0 - share);
    let is_rounding = near(&found, 1e-9) && near(right, 1e-9) && found.quality.is_some() && rho < 1e-3;
    assert!(
        t < 1e-6 && (rho < 1e-6 || is_rounding),
        "{refrigerant} {how}: {found:?} instead of {right:?}"
    );
    let on_the_line = |state: &State| near(state, 1e-6);
    assert!(
        found.phase == right.phase || (on_the_line(&found) && on_the_line(right)),
        "{refrigerant} {how}: {found:?} instead of {right:?}"
    );
}

fn all_pairs(refrigerant: Refrigerant, right: &State) {
    let line = saturation::line_of(refrigerant);
    if is_near_critical(line, right) {
        return;
    }
    let (t_k, p_pa, rho_mol_m3) = (
        in_kelvins(right.temperature()),
        right.pressure().pa(),
        right.molar_density().mol_m3(),
    );
    let (h_j_kg, s_j_kg_k) = (right.enthalpy().j_kg(), right.entropy().j_kg_k());
    comes_back(refrigerant, "(p,h)", right, line.state_ph(p_pa, h_j_kg, IIR));
    comes_back(refrigerant, "(p,s)", right, line.state_ps(p_pa, s_j_kg_k, IIR));
    comes_back(refrigerant, "(h,s)", right, line.state_hs(h_j_kg, s_j_kg_k, IIR));
    comes_back(refrigerant, "(T,rho)", right, line.state_t_rho(t_k, rho_mol_m3, IIR));
    match right.quality {
        None => comes_back(refrigerant, "(T,p)", right, line.state_tp(t_k, p_pa, IIR)),
        Some(quality) if t_k <= line.temperatures().high => {
            let t_k = t_k.max(line.temperatures().low);
            comes_back(refrigerant, "(T,x)", right, line.state_tq(t_k, quality, IIR));
        }
        Some(_) => {}
    }
}

/// A grid over the valid temperatures and pressures and one over the two phases, the ends of all ranges among them.
#[test]
fn every_state_comes_back_from_every_pair() {
    let mut count = 0;
    for refrigerant in Refrigerant::ALL {
        let line = saturation::line_of(refrigerant);
        let steps = if refrigerant.is_blend() { 6 } else { 16 };
        let between = |low: f64, high: f64, i: u32| low + (high - low) * f64::from(i) / f64::from(steps - 1);
        let (t, p, lines) = (line.valid_temperatures(), line.valid_pressures(), line.temperatures());
        let boils = (line.pressures(Side::Bubble).low, line.pressures(Side::Dew).high);
        for i in 0..steps {
            for j in 0..steps {
                let p_pa = between(100f64.ln(), p.high.ln(), j).exp().min(p.high);
                let quality = between(0.0, 1.0, j);
                let t_k = between(lines.low, lines.high, i).min(lines.high);
                let boiling_pa = between(boils.0, boils.1, i).min(boils.1);
                let solid = line.state_tp(between(t.low, t.high, i), p_pa, IIR);
                for state in [
                    solid,
                    line.state_tq(t_k, quality, IIR),
                    line.state_pq(boiling_pa, quality, IIR),
                ] {
                    // Beyond the melting line there is none.
                    let Ok(state) = state else { continue };
                    all_pairs(refrigerant, &state);
                    count += 1;
                }
            }
        }
    }
    assert!(count > 15_000, "{count} states");
}

/// Two phases whose bubble point at that pressure is colder than the lines, and two phases near the end of the lines.
#[test]
fn two_phases_at_the_edges_of_a_blend_come_back() {
    let cold = saturation::line_of(Refrigerant::R445A)
        .state_tp(237.827_591_826_048_75, 74_505.693_058_513_59, IIR)
        .unwrap();
    assert_eq!(cold.phase, Phase::TwoPhase);
    all_pairs(Refrigerant::R445A, &cold);

    let line = saturation::line_of(Refrigerant::R448A);
    let found = line
        .state_hs(371_625.006_669_251_83, 1_520.422_933_015_670_9, IIR)
        .unwrap();
    assert!(
        (found.enthalpy().j_kg() / 371_625.006_669_251_83 - 1.0).abs() < 1e-9,
        "{found:?}"
    );
    assert!(
        (found.entropy().j_kg_k() / 1_520.422_933_015_670_9 - 1.0).abs() < 1e-9,
        "{found:?}"
    );
    for refrigerant in [Refrigerant::R448A, Refrigerant::R449A, Refrigerant::R455A] {
        let line = saturation::line_of(refrigerant);
        for i in 0..12 {
            for j in 0..12 {
                let t_k = line.critical_t_k() * (0.965 + 0.0028 * f64::from(i));
                let p_pa = line.critical_p_pa() * (0.84 + 0.016 * f64::from(j));
                let right = line.state_tp(t_k, p_pa, IIR).unwrap();
                let found = line.state_hs(right.enthalpy().j_kg(), right.entropy().j_kg_k(), IIR);
                let found = found.unwrap_or_else(|error| panic!("{refrigerant} {error:?} for {right:?}"));
                assert!(
                    (found.enthalpy().j_kg() / right.enthalpy().j_kg() - 1.0).abs() < 1e-9,
                    "{found:?}"
                );
                assert!(
                    (found.entropy().j_kg_k() / right.entropy().j_kg_k() - 1.0).abs() < 1e-9,
                    "{found:?}"
                );
                assert!(
                    (found.pressure().pa() / right.pressure().pa() - 1.0).abs() < 1e-6,
                    "{found:?} instead of {right:?}"
                );
            }
        }
    }
}

/// Saturated liquid and vapour respond to change as the phase beside them does; both together do not.
#[test]
fn a_saturated_side_answers_all_that_one_phase_has() {
    for refrigerant in Refrigerant::ALL {
        let line = saturation::line_of(refrigerant);
        let t_k = 0.8 * line.critical_t_k();
        for (side, quality, beside) in [(Side::Bubble, 0.0, 1.0 + 1e-9), (Side::Dew, 1.0, 1.0 - 1e-9)] {
            let sides = [
                line.state_tq(t_k, quality, IIR).unwrap(),
                line.state_pq(line.pressure_pa(side, t_k).unwrap(), quality, IIR)
                    .unwrap(),
            ];
            let p_pa = beside * line.pressure_pa(side, t_k).unwrap();
            let one = line.state_tp(t_k, p_pa, IIR).unwrap().response.unwrap();
            for state in sides {
                let found = state.response.unwrap();
                for (found, right) in [
                    (found.cp.j_kg_k(), one.cp.j_kg_k()),
                    (found.cv.j_kg_k(), one.cv.j_kg_k()),
                    (found.speed_of_sound.m_s(), one.speed_of_sound.m_s()),
                    (found.joule_thomson_k_pa, one.joule_thomson_k_pa),
                    (found.isobaric_expansion_1_k, one.isobaric_expansion_1_k),
                ] {
                    assert!((found / right - 1.0).abs() < 1e-6, "{refrigerant} {found} {right}");
                }
            }
        }
        assert!(line.state_tq(t_k, 0.5, IIR).unwrap().response.is_none());
    }
}
