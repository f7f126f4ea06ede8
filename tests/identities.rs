//! Thermodynamic identities, for every refrigerant, each with the error it may have.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::inner::eos::Isotherm;
use coldloop::saturation::{self, Pure, Response, State};
use coldloop::units::in_kelvins;
use coldloop::{Reference, Refrigerant};
use proptest::prelude::*;

const REFERENCE: Reference = Reference::Iir;

fn any() -> impl Strategy<Value = &'static Pure> {
    let pure = Refrigerant::ALL
        .map(saturation::pure)
        .into_iter()
        .flatten()
        .collect::<Vec<_>>();
    proptest::sample::select(pure)
}

/// A homogeneous state with its response, at a place of the unit square over T and ln p, well away from the line.
fn placed(pure: &Pure, warm: f64, dense: f64) -> Option<(State, Response)> {
    let (t, p) = (pure.valid_temperatures(), pure.valid_pressures());
    let t_k = t.low + (0.01 + 0.98 * warm) * (t.high - t.low);
    let p_pa = (1e3f64.ln() + 0.98 * dense * (p.high / 1e3).ln()).exp();
    let on_the_line = pure.pressure_pa(t_k).is_ok_and(|line| (p_pa / line - 1.0).abs() < 0.02);
    let critical = (t_k / pure.critical_t_k - 1.0).abs() < 0.05 && (p_pa / pure.critical_p_pa - 1.0).abs() < 0.5;
    if on_the_line || critical {
        return None;
    }
    let state = pure.state_tp(t_k, p_pa, REFERENCE).ok()?;
    Some((state, state.response?))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    /// Clausius and Clapeyron: dp/dT = L / (T (v'' - v')). The slope is the derivative of a curve good to 1e-14 whose
    /// pieces span a twentieth of the line or less: their derivative loses two or three digits, and up to six close to
    /// the lowest temperatures, where the pressure is a polynomial over many decades.
    #[test]
    fn latent_heat_is_the_slope_of_the_line(pure in any(), place in 0.0..1.0f64) {
        let t = pure.temperatures();
        let t_k = t.low + place * (0.995 * t.high - t.low);
        let (liquid, vapour) = (pure.liquid(t_k).unwrap(), pure.vapour(t_k).unwrap());
        let volume = (1.0 / vapour.rho_mol_m3 - 1.0 / liquid.rho_mol_m3) / pure.fluid.equation.molar_mass;
        let slope = pure.latent_heat_j_kg(t_k).unwrap() / (t_k * volume);
        let off = pure.slope_pa_k(t_k).unwrap() / slope - 1.0;
        prop_assert!(off.abs() < 1e-8, "{} at {t_k} K: {off:e}", pure.fluid.facts.name);
    }

    /// g' = g'': the difference of four curve values, each good to 1e-14 of some ten RT/M.
    #[test]
    fn both_phases_have_one_gibbs_energy(pure in any(), place in 0.0..1.0f64) {
        let t = pure.temperatures();
        let t_k = t.low + place * (t.high - t.low);
        let (liquid, vapour) = (pure.liquid(t_k).unwrap(), pure.vapour(t_k).unwrap());
        let off = (vapour.h_j_kg - liquid.h_j_kg) - t_k * (vapour.s_j_kg_k - liquid.s_j_kg_k);
        let scale = pure.fluid.equation.gas_constant * t_k / pure.fluid.equation.molar_mass;
        prop_assert!(off.abs() < 1e-11 * scale, "{} at {t_k} K: {:e}", pure.fluid.facts.name, off / scale);
    }

    /// cp - cv = T v beta^2 / kappa, and w^2 = (cp/cv) dp/drho: the last step to the density, up to 1e-12 of it, leaves
    /// the response as it is; the rest is rounding, some 1e-14 of the larger term.
    #[test]
    fn heat_capacities_differ_by_the_expansion(pure in any(), warm in 0.0..1.0f64, dense in 0.0..1.0f64) {
        let Some((state, r)) = placed(pure, warm, dense) else { return Ok(()) };
        let work = in_kelvins(state.temperature()) * r.isobaric_expansion_1_k * r.isobaric_expansion_1_k
            / (state.density().kg_m3() * r.isothermal_compressibility_1_pa);
        prop_assert!((r.cp.j_kg_k() - r.cv.j_kg_k() - work).abs() < 1e-11 * r.cp.j_kg_k(), "{state:?}");
        let w2 = r.cp.j_kg_k() / r.cv.j_kg_k() * r.dp_drho_j_mol / pure.fluid.equation.molar_mass;
        prop_assert!((r.speed_of_sound.m_s() * r.speed_of_sound.m_s() / w2 - 1.0).abs() < 1e-11, "{state:?}");
    }

    /// Maxwell: (ds/dv) at constant T is (dp/dT) at constant v. Central differences over 2e-4 of the density err by
    /// about 1e-8 in the curvature and 1e-16 / 1e-4 by rounding of an entropy some hundred times the difference.
    #[test]
    fn entropy_follows_volume_as_pressure_follows_temperature(pure in any(), warm in 0.0..1.0f64, dense in 0.0..1.0f64) {
        let Some((state, r)) = placed(pure, warm, dense) else { return Ok(()) };
        let at = |share: f64| pure.state_t_rho(in_kelvins(state.temperature()), state.molar_density().mol_m3() * (1.0 + share), REFERENCE);
        let (Ok(more), Ok(less)) = (at(1e-4), at(-1e-4)) else { return Ok(()) };
        if [more.phase, less.phase] != [state.phase; 2] {
            return Ok(()); // a cold liquid boils when it is stretched by this little
        }
        let slope = (more.entropy().j_kg_k() - less.entropy().j_kg_k()) / (1.0 / more.density().kg_m3() - 1.0 / less.density().kg_m3());
        let off = slope / r.dp_dt_pa_k - 1.0;
        prop_assert!(off.abs() < 1e-5, "{off:e} at {state:?}");
    }
}

/// p = rho R T (1 + B rho + C rho^2): at a thousandth of the critical density the next term is worth about 1e-9.
#[test]
fn a_thin_gas_follows_its_virial_coefficients() {
    for refrigerant in Refrigerant::ALL.into_iter().filter(|r| !r.is_blend()) {
        let pure = saturation::pure(refrigerant).unwrap();
        let isotherm = Isotherm::new(&pure.fluid.equation, 0.9 * pure.critical_t_k);
        let rho = 1e-3 * pure.critical_rho_mol_m3;
        let ideal = rho * pure.fluid.equation.gas_constant * isotherm.t_k();
        let (b, c) = (isotherm.second_virial_m3_mol(), isotherm.third_virial_m6_mol2());
        let off = isotherm.pressure_pa(rho).0 / ideal - (1.0 + b * rho + c * rho * rho);
        assert!(off.abs() < 1e-8, "{}: {off:e}, B {b:e}, C {c:e}", refrigerant.id());
        assert!(
            (b * rho).abs() > 1e-4 && (c * rho * rho).abs() > 1e-8,
            "{}: B {b:e}, C {c:e}",
            refrigerant.id()
        );
    }
}

/// CoolProp 8.0.0, BVIRIAL and CVIRIAL at 300 K; the budget is that of the coefficients' own doc.
#[test]
fn virial_coefficients_are_those_of_an_independent_program() {
    // That program rounds the reducing density of R-744 by 2.7e-9, which is what B differs by. Its C, 4.71355e-9, does
    // not fit its own pressures, whose (Z - 1)/rho from 1 to 10 mol/m3 has the slope 4.71309e-9; here it is 4.71312e-9.
    for (refrigerant, b, c, b_off, c_off) in [
        (
            Refrigerant::R134a,
            -0.00048544845068684676,
            4.457348798465016e-08,
            1e-9,
            1e-6,
        ),
        (
            Refrigerant::R744,
            -0.00012127379512124498,
            4.71355025828004e-09,
            1e-8,
            2e-4,
        ),
    ] {
        let isotherm = Isotherm::new(&saturation::pure(refrigerant).unwrap().fluid.equation, 300.0);
        assert!((isotherm.second_virial_m3_mol() / b - 1.0).abs() < b_off);
        assert!((isotherm.third_virial_m6_mol2() / c - 1.0).abs() < c_off);
    }
}
