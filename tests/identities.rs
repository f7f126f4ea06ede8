//! Thermodynamic identities, for every refrigerant, each with the error it may have.

#![allow(clippy::panic, clippy::unwrap_used)] // a test ends that way

use coldloop::saturation::{self, Pure, Response, State};
use coldloop::{Reference, Refrigerant};
use proptest::prelude::*;

const REFERENCE: Reference = Reference::Iir;

fn any() -> impl Strategy<Value = &'static Pure> {
    proptest::sample::select(&Refrigerant::ALL[..]).prop_map(saturation::of)
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

    /// cp - cv = T v beta^2 / kappa, and w^2 = (cp/cv) dp/drho: rounding alone, some 1e-14 of the larger term.
    #[test]
    fn heat_capacities_differ_by_the_expansion(pure in any(), warm in 0.0..1.0f64, dense in 0.0..1.0f64) {
        let Some((state, r)) = placed(pure, warm, dense) else { return Ok(()) };
        let work = state.t_k * r.isobaric_expansion_1_k * r.isobaric_expansion_1_k
            / (state.rho_kg_m3 * r.isothermal_compressibility_1_pa);
        prop_assert!((r.cp_j_kg_k - r.cv_j_kg_k - work).abs() < 1e-12 * r.cp_j_kg_k, "{state:?}");
        let w2 = r.cp_j_kg_k / r.cv_j_kg_k * r.dp_drho_j_mol / pure.fluid.equation.molar_mass;
        prop_assert!((r.w_m_s * r.w_m_s / w2 - 1.0).abs() < 1e-11, "{state:?}");
    }

    /// Maxwell: (ds/dv) at constant T is (dp/dT) at constant v. Central differences over 2e-4 of the density err by
    /// about 1e-8 in the curvature and 1e-16 / 1e-4 by rounding of an entropy some hundred times the difference.
    #[test]
    fn entropy_follows_volume_as_pressure_follows_temperature(pure in any(), warm in 0.0..1.0f64, dense in 0.0..1.0f64) {
        let Some((state, r)) = placed(pure, warm, dense) else { return Ok(()) };
        let at = |share: f64| pure.state_t_rho(state.t_k, state.rho_mol_m3 * (1.0 + share), REFERENCE);
        let (Ok(more), Ok(less)) = (at(1e-4), at(-1e-4)) else { return Ok(()) };
        if [more.phase, less.phase] != [state.phase; 2] {
            return Ok(()); // a cold liquid boils when it is stretched by this little
        }
        let slope = (more.s_j_kg_k - less.s_j_kg_k) / (1.0 / more.rho_kg_m3 - 1.0 / less.rho_kg_m3);
        let off = slope / r.dp_dt_pa_k - 1.0;
        prop_assert!(off.abs() < 1e-5, "{off:e} at {state:?}");
    }
}
