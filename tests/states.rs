//! States found again from every pair of their properties.

#![allow(clippy::panic, clippy::unwrap_used)] // a test ends that way

use coldloop::saturation::{self, Pure, State};
use coldloop::{Phase, Reference, Refrigerant};

/// Reference states exist for every refrigerant where the liquid boils at one atmosphere.
const REFERENCE: Reference = Reference::Iir;

fn reference(pure: &Pure) -> Reference {
    [REFERENCE, Reference::NormalBoilingPoint]
        .into_iter()
        .find(|&r| pure.state_tq(pure.fluid.lowest_t_k, 0.0, r).is_ok())
        .unwrap()
}

/// The state at a place of the unit square, laid over temperature and the logarithm of the pressure.
fn placed(pure: &Pure, warm: f64, dense: f64) -> Option<State> {
    let (t, p) = (pure.valid_temperatures(), pure.valid_pressures());
    let t_k = t.low + warm * (t.high - t.low);
    let p_pa = (10.0f64.ln() + dense * (p.high.ln() - 10.0f64.ln())).exp();
    pure.state_tp(t_k, p_pa, reference(pure)).ok()
}

/// What a state has to have in common with the one it was found from.
///
/// The budget of (p,h) and (p,s): the last step of the search was 1e-8 and the next is of the order of its square,
/// so that rounding of the energies remains, 1e-13 or so of RT/M, and near the critical point a hundred times as much.
/// The budget of (h,s): in a cold liquid h and s say almost the same, dh = T ds, and the pressure that tells them apart
/// is worth little energy. Density is left out: close to the critical point it has no budget.
fn same(found: &State, right: &State, pure: &Pure, budget: f64) -> Result<(), String> {
    let equation = &pure.fluid.equation;
    let thermal = equation.gas_constant * right.t_k / equation.molar_mass;
    let scales = [
        ("T", found.t_k - right.t_k, right.t_k),
        ("h", found.h_j_kg - right.h_j_kg, thermal),
        ("s", found.s_j_kg_k - right.s_j_kg_k, thermal / right.t_k),
    ];
    for (name, off, scale) in scales {
        if off.abs() > budget * scale || off.is_nan() {
            return Err(format!(
                "{name} off by {:e}: {found:?}\ninstead of {right:?}",
                off / scale
            ));
        }
    }
    if found.phase != right.phase {
        return Err(format!("{:?} instead of {:?} at {right:?}", found.phase, right.phase));
    }
    Ok(())
}

fn round_trips(pure: &Pure, right: &State) -> Result<(), String> {
    let reference = reference(pure);
    let State {
        p_pa, h_j_kg, s_j_kg_k, ..
    } = *right;
    let tell = |what: &str| {
        let at = format!("{} {what}: {right:?}", pure.fluid.facts.name);
        move |e: coldloop::Error| format!("{at}: {e}")
    };
    let ph = pure.state_ph(p_pa, h_j_kg, reference).map_err(tell("(p,h)"))?;
    same(&ph, right, pure, 1e-10)?;
    let ps = pure.state_ps(p_pa, s_j_kg_k, reference).map_err(tell("(p,s)"))?;
    same(&ps, right, pure, 1e-10)?;
    let hs = pure.state_hs(h_j_kg, s_j_kg_k, reference).map_err(tell("(h,s)"))?;
    same(&hs, right, pure, 1e-8)?;
    Ok(())
}

#[test]
fn a_grid_over_every_equation_comes_back() {
    let mut wrong = Vec::new();
    let mut seen = [0; 4];
    for refrigerant in Refrigerant::ALL {
        let pure = saturation::of(refrigerant);
        for i in 0..25 {
            for j in 0..=24 {
                let Some(state) = placed(pure, f64::from(i) / 24.0, f64::from(j) / 24.0) else {
                    continue;
                };
                seen[match state.phase {
                    Phase::Liquid => 0,
                    Phase::Vapour => 1,
                    Phase::TwoPhase => 2,
                    Phase::Supercritical => 3,
                }] += 1;
                wrong.extend(round_trips(pure, &state).err());
            }
            let t = pure.temperatures();
            let t_k = t.low + f64::from(i) / 25.0 * (t.high - t.low);
            // The ends, where rounding decides between one phase and two, are left out.
            for j in 1..8 {
                let state = pure.state_tq(t_k, f64::from(j) / 8.0, reference(pure)).unwrap();
                seen[2] += 1;
                wrong.extend(round_trips(pure, &state).err());
            }
        }
    }
    assert!(
        wrong.is_empty(),
        "{} wrong\n{}",
        wrong.len(),
        wrong[..wrong.len().min(25)].join("\n")
    );
    assert!(seen.iter().all(|&n| n > 1000), "{seen:?}");
}
