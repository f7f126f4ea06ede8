//! The charts of R-744 about its critical point, from its equation of state into `src/vehicle/working_fluid/co2_chart_table.rs`.

use coldloop::saturation::{self, Pure};
use coldloop::units::in_kelvins;
use coldloop::{Reference, Refrigerant};
use std::fmt::Write;
use tables_names::Output;

const HEADER: &str = "//! R-744 about its critical point: temperature (K), logarithm of density (kg/m3), entropy (J/(kg K)).\n//!\n\
    //! Generated from the equation of state of R-744 by tables/compile; edit its program, not this file.\n\n\
    use super::chart::Chart;\n\n";
/// Steps over the pressure coordinate and over enthalpy, J/kg.
const ABOVE: (usize, f64) = (24, 0.03);
const BELOW: (usize, f64) = (17, 0.05);
const STEP_J_KG: f64 = 6.5e3;
/// Enthalpies about that of the critical point, J/kg: coldest liquid and hottest gas of a vehicle.
const COLDEST_J_KG: f64 = -195e3;
const HOTTEST_J_KG: f64 = 338e3;
/// Coldest liquid below the critical pressure, from the saturated one: colder it freezes at the lowest of these pressures.
const LIQUID_J_KG: f64 = -78e3;

/// Writes `src/vehicle/working_fluid/co2_chart_table.rs`.
pub(crate) fn compile(out: &mut Output) -> Result<(), String> {
    let source = rust().map_err(|e| format!("R-744: {e}"))?;
    out.rust("src/vehicle/working_fluid/co2_chart_table.rs", &source)
}

fn rust() -> Result<String, coldloop::Error> {
    let pure = saturation::pure(Refrigerant::R744)?;
    let critical_j_kg = pure.liquid(pure.critical_t_k)?.h_j_kg;
    let columns = |low: f64, high: f64| ((high - low) / STEP_J_KG).round() as usize + 1;
    let mut source = String::from(HEADER);
    let mut chart = |name: &str, doc: &str, first_step: f64, second: f64, columns: usize, rows: &[Vec<[f64; 3]>]| {
        let _ = write!(
            source,
            "/// {doc}\npub(super) static {name}: Chart = Chart {{ first: 0.0, first_step: {first_step:?}, \
             second: {second:?}, second_step: {STEP_J_KG:?}, columns: {columns}, nodes: &["
        );
        for [t_k, ln_rho, s] in rows.iter().flatten() {
            let _ = write!(source, "[{:?}, {:?}, {:?}],", *t_k as f32, *ln_rho as f32, *s as f32);
        }
        source.push_str("] };\n\n");
    };
    let count = columns(COLDEST_J_KG, HOTTEST_J_KG);
    let first_j_kg = critical_j_kg + COLDEST_J_KG;
    let above = (0..ABOVE.0)
        .map(|row| {
            let p_pa = pure.critical_p_pa * (ABOVE.1 * row as f64).exp();
            (0..count)
                .map(|column| node(pure, p_pa, first_j_kg + STEP_J_KG * column as f64))
                .collect()
        })
        .collect::<Result<Vec<Vec<[f64; 3]>>, coldloop::Error>>()?;
    chart(
        "ABOVE",
        "Above the critical pressure, over the logarithm of the ratio of pressures and enthalpy.",
        ABOVE.1,
        first_j_kg,
        count,
        &above,
    );
    for (name, low, high, doc) in [
        (
            "LIQUID",
            LIQUID_J_KG,
            0.0,
            "Liquid below it, over sqrt(1 - p / pc) and enthalpy from the saturated liquid's.",
        ),
        (
            "VAPOUR",
            0.0,
            HOTTEST_J_KG,
            "Vapour below it, over sqrt(1 - p / pc) and enthalpy from the saturated vapour's.",
        ),
    ] {
        let count = columns(low, high);
        let rows = (0..BELOW.0)
            .map(|row| {
                let u = BELOW.1 * row as f64;
                let p_pa = pure.critical_p_pa * (1.0 - u * u);
                let t_k = pure.temperature_k(p_pa)?;
                let branch = if low < 0.0 {
                    pure.liquid(t_k)?
                } else {
                    pure.vapour(t_k)?
                };
                (0..count)
                    .map(|column| {
                        let beyond = low + STEP_J_KG * column as f64;
                        if beyond.abs() < 1.0 {
                            let molar_kg = pure.fluid.equation.molar_mass;
                            return Ok([t_k, (branch.rho_mol_m3 * molar_kg).ln(), branch.s_j_kg_k]);
                        }
                        node(pure, p_pa, branch.h_j_kg + beyond)
                    })
                    .collect()
            })
            .collect::<Result<Vec<Vec<[f64; 3]>>, coldloop::Error>>()?;
        chart(name, doc, BELOW.1, low, count, &rows);
    }
    Ok(source)
}

/// The equation of state at a pressure and an enthalpy that counts as the saturation curves do.
fn node(pure: &Pure, p_pa: f64, h_j_kg: f64) -> Result<[f64; 3], coldloop::Error> {
    let zero = pure.liquid(273.15)?;
    let (shift_h, shift_s) = (200e3 - zero.h_j_kg, 1e3 - zero.s_j_kg_k);
    let state = pure.state_ph(p_pa, h_j_kg + shift_h, Reference::Iir)?;
    Ok([
        in_kelvins(state.temperature()),
        state.density().kg_m3().ln(),
        state.entropy().j_kg_k() - shift_s,
    ])
}
