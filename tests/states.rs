//! States found again from every pair of their properties.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::saturation::{self, Pure, State};
use coldloop::units::in_kelvins;
use coldloop::{ErrorKind, Phase, Quantity, Reference, Refrigerant};

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
/// The budget of (h,s): in a cold liquid h and s are nearly dependent, dh = T ds, and the pressure changes the energy little. Density is left out: close to the critical point it has no budget.
fn same(found: &State, right: &State, pure: &Pure, budget: f64) -> Result<(), String> {
    let equation = &pure.fluid.equation;
    let thermal = equation.gas_constant * in_kelvins(right.temperature()) / equation.molar_mass;
    let scales = [
        (
            "T",
            in_kelvins(found.temperature()) - in_kelvins(right.temperature()),
            in_kelvins(right.temperature()),
        ),
        ("h", found.enthalpy().j_kg() - right.enthalpy().j_kg(), thermal),
        (
            "s",
            found.entropy().j_kg_k() - right.entropy().j_kg_k(),
            thermal / in_kelvins(right.temperature()),
        ),
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
    let p_pa = right.pressure().pa();
    let (h_j_kg, s_j_kg_k) = (right.enthalpy().j_kg(), right.entropy().j_kg_k());
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
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
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
                    _ => unreachable!("a new member of the vocabulary"),
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

/// Source: CoolProp 8.0.0, whose equations for these refrigerants are the printed ones; see tests/python/states.py. Its
/// densities carry 1e-9 of their solver, and the reducing density of R-134a is rounded by 3e-10 there.
#[test]
fn states_of_an_independent_program_are_found_from_their_energies() {
    const BUDGET: f64 = 1e-8;
    let mut seen = [0; 4];
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path("tests/data/states.csv")
        .unwrap();
    for record in reader.records() {
        let record = record.unwrap();
        let pure = saturation::pure(Refrigerant::from_id(&record[0]).unwrap()).unwrap();
        let phase = Phase::from_id(&record[1]).unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let [t_k, p_pa, rho, h, s] = [2, 3, 4, 5, 6].map(number);
        let quality: Option<f64> = record[7].parse().ok();
        seen[usize::from(quality.is_some())] += 1;
        let thermal = pure.fluid.equation.gas_constant / pure.fluid.equation.molar_mass;
        // Where a liquid is stiff, h and s together hardly fix the pressure.
        for (name, found, budget) in [
            ("(p,h)", pure.state_ph(p_pa, h, Reference::Iir), BUDGET),
            ("(p,s)", pure.state_ps(p_pa, s, Reference::Iir), BUDGET),
            ("(h,s)", pure.state_hs(h, s, Reference::Iir), 100.0 * BUDGET),
        ] {
            let found = found.unwrap();
            let at = format!("{record:?} {name}: {found:?}");
            assert_eq!(found.phase, phase, "{at}");
            assert!((in_kelvins(found.temperature()) / t_k - 1.0).abs() < budget, "{at}");
            assert!(
                (found.molar_density().mol_m3() / rho - 1.0).abs() < 10.0 * budget,
                "{at}"
            );
            assert!((found.enthalpy().j_kg() - h).abs() < budget * thermal * t_k, "{at}");
            assert!((found.entropy().j_kg_k() - s).abs() < budget * thermal, "{at}");
            assert_eq!(found.quality.is_some(), quality.is_some(), "{at}");
            if let (Some(found), Some(right)) = (found.quality, quality) {
                assert!((found - right).abs() < budget, "{at}");
            }
        }
    }
    assert!(seen[0] > 80 && seen[1] > 80);
}

/// Source: CoolProp 8.0.0 with the phase imposed, at 0.8 of the saturation pressure for the liquid and 1.1 for the vapour.
#[test]
fn metastable_states_are_the_equation_continued() {
    let rows = [
        (
            Refrigerant::R134a,
            280.0,
            298166.71970385074,
            12461.379151414312,
            209254.8444027654,
            589.4831382467553,
        ),
        (
            Refrigerant::R134a,
            280.0,
            409979.23959294223,
            199.19112681769636,
            401461.8626166138,
            145.12090648483556,
        ),
        (
            Refrigerant::R134a,
            320.0,
            973295.1374317262,
            10921.13511060966,
            266853.0576452231,
            400.010827549614,
        ),
        (
            Refrigerant::R134a,
            320.0,
            1338280.813968584,
            683.7024797650008,
            418834.8299506937,
            133.1469297556638,
        ),
        (
            Refrigerant::R1234yf,
            280.0,
            316808.9614368735,
            10117.095545023625,
            208980.32428793202,
            525.1929101049055,
        ),
        (
            Refrigerant::R1234yf,
            280.0,
            435612.3219757009,
            215.3264842933202,
            366934.81377168134,
            133.04205761855889,
        ),
        (
            Refrigerant::R600a,
            320.0,
            506679.838615256,
            8971.179119864924,
            313827.6816410472,
            695.1943610040563,
        ),
        (
            Refrigerant::R600a,
            320.0,
            696684.7780959518,
            314.6844721270791,
            613932.9138415164,
            190.4202077028464,
        ),
    ];
    for (refrigerant, t_k, p_pa, rho, h, w) in rows {
        let pure = saturation::pure(refrigerant).unwrap();
        let liquid = p_pa < pure.pressure_pa(t_k).unwrap();
        let found = if liquid {
            pure.superheated_liquid(t_k, p_pa, Reference::Iir)
        } else {
            pure.subcooled_vapour(t_k, p_pa, Reference::Iir)
        };
        let found = found.unwrap();
        assert_eq!(found.phase, if liquid { Phase::Liquid } else { Phase::Vapour });
        assert!((found.molar_density().mol_m3() / rho - 1.0).abs() < 1e-8, "{found:?}");
        assert!((found.enthalpy().j_kg() / h - 1.0).abs() < 1e-8, "{found:?}");
        assert!(
            (found.response.unwrap().speed_of_sound.m_s() / w - 1.0).abs() < 1e-8,
            "{found:?}"
        );
        // By temperature and pressure alone the answer is the stable phase.
        assert_ne!(pure.state_tp(t_k, p_pa, Reference::Iir).unwrap().phase, found.phase);
    }
}

#[test]
fn metastable_states_end_at_the_spinodal() {
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let reference = reference(pure);
        // Warm enough that the liquid breaks at a pressure above zero.
        let t_k = 0.95 * pure.critical_t_k;
        let boiling_pa = pure.pressure_pa(t_k).unwrap();
        let stable = pure.superheated_liquid(t_k, 1.01 * boiling_pa, reference).unwrap_err();
        let broken = pure
            .superheated_liquid(t_k, stable.low * (1.0 - 1e-6), reference)
            .unwrap_err();
        assert_eq!(
            (broken.kind, broken.quantity),
            (ErrorKind::OutOfRange, Quantity::AbsolutePressure)
        );
        assert!(
            stable.low > 0.0 && stable.low < boiling_pa && stable.high == boiling_pa,
            "{refrigerant}: {stable:?}"
        );
        let last = pure
            .superheated_liquid(t_k, stable.low * (1.0 + 1e-9), reference)
            .unwrap();
        let saturated = pure.superheated_liquid(t_k, boiling_pa, reference).unwrap();
        let slope = |state: &State| state.response.unwrap().dp_drho_j_mol;
        assert!(
            slope(&last) > 0.0 && slope(&last) < 1e-3 * slope(&saturated),
            "{refrigerant}: {last:?}"
        );

        let stable = pure.subcooled_vapour(t_k, 0.99 * boiling_pa, reference).unwrap_err();
        assert!(
            stable.high > boiling_pa && stable.low == boiling_pa,
            "{refrigerant}: {stable:?}"
        );
        let last = pure
            .subcooled_vapour(t_k, stable.high * (1.0 - 1e-9), reference)
            .unwrap();
        let saturated = pure.subcooled_vapour(t_k, boiling_pa, reference).unwrap();
        assert!(
            slope(&last) > 0.0 && slope(&last) < 1e-2 * slope(&saturated),
            "{refrigerant}: {last:?}"
        );
        assert!(
            pure.subcooled_vapour(t_k, stable.high * (1.0 + 1e-6), reference)
                .is_err()
        );
        // Between the spinodals there is no state by density either: two phases are told.
        let between = pure.state_t_rho(t_k, pure.critical_rho_mol_m3, reference).unwrap();
        assert_eq!(between.phase, Phase::TwoPhase);
    }
}

/// Span and Wagner 1996, equation 3.10; at the triple point of 216.592 K and 0.51795 MPa it starts.
#[test]
fn solid_carbon_dioxide_is_refused() {
    let pure = saturation::pure(Refrigerant::R744).unwrap();
    let melting = pure.fluid.melting.unwrap();
    for t_k in [217.0, 220.0, 250.0, 300.0] {
        let p_pa = melting.pressure_pa(t_k);
        assert!(pure.state_tp(t_k, 0.999 * p_pa, Reference::Iir).is_ok());
        let refused = pure.state_tp(t_k, 1.001 * p_pa, Reference::Iir).unwrap_err();
        assert_eq!(
            (refused.kind, refused.quantity),
            (ErrorKind::OutOfRange, Quantity::AbsolutePressure)
        );
        assert_eq!(refused.high, p_pa);
        let liquid = pure.state_tp(t_k, 0.999 * p_pa, Reference::Iir).unwrap();
        let denser = 1.001 * liquid.molar_density().mol_m3();
        assert!(pure.state_t_rho(t_k, denser, Reference::Iir).is_err());
        // A cold enthalpy at a high pressure belongs to ice.
        let cold = pure.state_ph(1.1 * p_pa, liquid.enthalpy().j_kg(), Reference::Iir);
        assert_eq!(cold.unwrap_err().quantity, Quantity::AbsolutePressure);
        let cold = pure.state_ps(1.1 * p_pa, liquid.entropy().j_kg_k() - 50.0, Reference::Iir);
        assert!([Quantity::AbsolutePressure, Quantity::Entropy].contains(&cold.unwrap_err().quantity));
    }
}

/// Below its triple point R-744 is a solid or a gas over one: no door answers there.
#[test]
fn below_the_triple_point_there_is_no_answer() {
    let pure = saturation::pure(Refrigerant::R744).unwrap();
    let triple_pa = pure.pressures().low;
    assert!((triple_pa / 0.51795e6 - 1.0).abs() < 1e-4);
    let iir = Reference::Iir;
    let refusals = [
        pure.state_tp(216.5, 1e5, iir),
        pure.state_tq(216.5, 0.5, iir),
        pure.state_pq(0.9 * triple_pa, 0.5, iir),
        pure.state_t_rho(216.5, 10.0, iir),
        pure.state_ph(0.5 * triple_pa, 300e3, iir),
        pure.superheated_liquid(216.5, 1e5, iir),
    ];
    for refusal in refusals {
        assert_eq!(refusal.unwrap_err().kind, ErrorKind::OutOfRange);
    }
    assert!(pure.pressure_pa(216.5).is_err() && pure.temperature_k(0.9 * triple_pa).is_err());
}

/// What each reference state means, by its own definition: IIR, h 200 kJ/kg and s 1 kJ/(kg K) of the liquid at 0 °C;
/// ASHRAE, both zero of the liquid at -40 °C; both zero of the liquid that boils at one atmosphere.
#[test]
fn reference_states_are_what_their_names_say() {
    let mut seen = [0; 3];
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let states = [
            (Reference::Iir, pure.state_tq(273.15, 0.0, Reference::Iir), 200e3, 1e3),
            (
                Reference::Ashrae,
                pure.state_tq(233.15, 0.0, Reference::Ashrae),
                0.0,
                0.0,
            ),
            (
                Reference::NormalBoilingPoint,
                pure.state_pq(101_325.0, 0.0, Reference::NormalBoilingPoint),
                0.0,
                0.0,
            ),
        ];
        for (seen, (reference, state, h, s)) in seen.iter_mut().zip(states) {
            let Ok(state) = state else {
                // R-744 is no liquid at one atmosphere; the equation of R-1132(E) begins at 240 K, above its boiling point.
                let refused = match reference {
                    Reference::Iir => false,
                    Reference::Ashrae => pure.fluid.lowest_t_k > 233.15,
                    Reference::NormalBoilingPoint => pure.pressures().low > 101_325.0,
                    _ => unreachable!("a new member of the vocabulary"),
                };
                assert!(refused, "{refrigerant} {reference:?}");
                continue;
            };
            *seen += 1;
            assert!(
                (state.enthalpy().j_kg() - h).abs() < 1e-6 && (state.entropy().j_kg_k() - s).abs() < 1e-9,
                "{state:?}"
            );
            // The reference moves the zeros and nothing else.
            let other = pure.state_tp(300.0, 1e5, reference).unwrap();
            let same = pure.state_tp(300.0, 1e5, Reference::Iir).unwrap();
            assert_eq!(
                (other.molar_density().mol_m3(), other.response),
                (same.molar_density().mol_m3(), same.response)
            );
        }
    }
    assert_eq!(seen, [23, 22, 21]);
}
