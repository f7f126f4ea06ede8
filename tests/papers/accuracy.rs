//! The library against CoolProp 8.0.0 over the whole range of every refrigerant, and the table of docs/accuracy.md.
//!
//! The states are written by tests/python/grid.py; `tests/run grid` does both. `COLDLOOP_WRITE=1 tests/run grid`
//! rewrites that table instead of comparing it.

use crate::published;
use coldloop::inner::eos::{Isotherm, Properties};
use coldloop::{ErrorKind, Reference, Refrigerant, saturation};
use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;

/// Allowed relative difference in p, h, s, cp, w and in the density found from (T, p).
///
/// Enthalpy counts in units of RT and entropy in units of R, since their zeros are arbitrary. The pressure of a liquid
/// is a small difference of large terms: the last bit of its density moves it by 1e-16 rho (dp/drho), which is up to
/// 1e6 times the pressure itself near the triple point. It counts in units of the larger of p and 1e-2 rho (dp/drho).
/// What is found from (T, p) counts in units of what the last bits of p move it by, where those are larger than its own:
/// next to the critical point a part in 1e15 of the pressure is one in 1e13 of the density, and one in 1e11 of cp.
const ALLOWED: f64 = 1e-11;

/// Allowed relative difference for a refrigerant; where it is more than usual, with the reason.
fn allowed(refrigerant: Refrigerant) -> f64 {
    if refrigerant == Refrigerant::R22 {
        // Its first terms have coefficients of up to 350 and opposite signs: two to three digits cancel, and the enthalpy
        // shows it most: 6e-11 was measured.
        10.0 * ALLOWED
    } else {
        ALLOWED
    }
}

/// The relative step in density for the derivative of cp.
const STEP: f64 = 1e-6;

#[derive(Default)]
struct Row {
    states: usize,
    /// States of which CoolProp has no finite figures; they are not compared.
    unanswered: usize,
    /// States that the library refuses by (T, p): outside the limits that it keeps, or solid.
    refused: usize,
    worst: [f64; 6],
    shipped: [f64; 2],
}

fn grid() -> BTreeMap<Refrigerant, Row> {
    let path = std::env::var("COLDLOOP_GRID").unwrap_or_else(|_| "target/run/grid.csv".to_string());
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .from_path(path)
        .unwrap();
    let mut rows: BTreeMap<Refrigerant, Row> = BTreeMap::new();
    let mut wrong = Vec::new();
    for record in reader.records() {
        let record = record.unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        if &record[0] == "shipped" {
            if let Some(refrigerant) = Refrigerant::from_id(&record[1]) {
                let row = rows.entry(refrigerant).or_default();
                row.shipped = [number(2), number(3)];
                row.unanswered = record[4].parse().unwrap();
            }
            continue;
        }
        // The gases of the air are no refrigerants.
        let Some(refrigerant) = Refrigerant::from_id(&record[0]) else {
            continue;
        };
        let right: [f64; 7] = core::array::from_fn(|k| number(k + 1));
        let row = rows.entry(refrigerant).or_default();
        row.states += 1;
        let (found, refused) = differences(refrigerant, &right);
        row.refused += usize::from(refused);
        for (k, (found, worst)) in found.into_iter().zip(&mut row.worst).enumerate() {
            *worst = worst.max(found);
            if found.is_nan() || found > allowed(refrigerant) {
                wrong.push(format!("{refrigerant} {right:?} quantity {k}: off by {found:.1e}"));
            }
        }
    }
    let count = wrong.len();
    wrong.truncate(40);
    assert!(wrong.is_empty(), "{count} are off\n{}", wrong.join("\n"));
    rows
}

/// How far the figures of a state (T, rho, then p, h, s, cp, w) are from ours, and whether it is refused by (T, p).
fn differences(refrigerant: Refrigerant, right: &[f64; 7]) -> ([f64; 6], bool) {
    let mut refused = false;
    let [t_k, rho, p, h, s, cp, w] = *right;
    let pure = saturation::pure(refrigerant).unwrap();
    let equation = &pure.fluid.equation;
    let specific = equation.gas_constant / equation.molar_mass;
    let off = |found: f64, right: f64, unit: f64| (found - right).abs() / unit;
    let isotherm = Isotherm::new(equation, t_k);
    let ours = Properties::new(&isotherm, rho);
    let mut worst = [
        off(ours.p_pa, p, p.max(1e-2 * rho * ours.dp_drho_j_mol)),
        off(ours.h_j_kg, h, specific * t_k),
        off(ours.s_j_kg_k, s, specific),
        off(ours.cp_j_kg_k, cp, cp),
        off(ours.w2_m2_s2.sqrt(), w, w),
        0.0,
    ];
    // The same state found from temperature and pressure. Outside the limits that the library keeps, and in the
    // solid, it is refused.
    match pure.state_tp(t_k, p, Reference::Iir) {
        Ok(state) => {
            let response = state.response.unwrap();
            let slope = p / (rho * response.dp_drho_j_mol);
            let denser = Properties::new(&isotherm, rho * (1.0 + STEP)).cp_j_kg_k;
            let steepness = slope * (denser / ours.cp_j_kg_k - 1.0).abs() / STEP;
            worst[3] = worst[3].max(off(response.cp.j_kg_k(), cp, cp * steepness.max(1.0)));
            worst[4] = worst[4].max(off(response.speed_of_sound.m_s(), w, w));
            worst[5] = off(state.molar_density().mol_m3(), rho, rho * slope.max(1.0));
        }
        Err(error) => {
            refused = true;
            assert!(
                [ErrorKind::OutOfRange, ErrorKind::NotAvailable].contains(&error.kind),
                "{refrigerant} {t_k} K {p} Pa: {error}"
            );
        }
    }
    (worst, refused)
}

/// The smallest of 1, 2, 5, 10 ... times 1e-16 that is not below, nor below the floor.
fn bound(value: f64, floor: f64) -> String {
    let steps = (0..16).flat_map(|k| [1.0, 2.0, 5.0].map(|step| step * 10f64.powi(k - 16)));
    let bound = steps
        .into_iter()
        .find(|b| *b >= value * 0.999_999 && *b >= floor * 0.999_999);
    bound.map_or_else(|| "above 1".to_string(), |bound| format!("{bound:.0e}"))
}

/// The largest difference of pressure and densities from tests/data/equilibria.csv up to 0.999 Tc.
fn saturation_error(refrigerant: Refrigerant) -> f64 {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path("tests/data/equilibria.csv")
        .unwrap();
    let pure = saturation::pure(refrigerant).unwrap();
    let mut worst: f64 = 0.0;
    let mut rows = 0;
    for record in reader.records() {
        let record = record.unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let t_k = number(1);
        if Refrigerant::from_id(&record[0]) != Some(refrigerant) || t_k > 0.999_000_1 * pure.critical_t_k {
            continue;
        }
        rows += 1;
        for (found, right) in [
            (pure.pressure_pa(t_k).unwrap(), number(2)),
            (pure.liquid(t_k).unwrap().rho_mol_m3, number(3)),
            (pure.vapour(t_k).unwrap().rho_mol_m3, number(4)),
        ] {
            worst = worst.max((found / right - 1.0).abs());
        }
    }
    assert!(rows > 5, "{refrigerant}");
    worst
}

fn table(rows: &BTreeMap<Refrigerant, Row>) -> String {
    let mut text = String::from(
        "| refrigerant | equation | printed numbers met | saturation | states | p | h, s | cp | w | density of (T, p) | refused there | CoolProp as shipped |\n\
         |---|---|---|---|---|---|---|---|---|---|---|---|\n",
    );
    for paper in published::papers() {
        let Some(refrigerant) = paper.refrigerant() else {
            continue;
        };
        let row = &rows[&refrigerant];
        let cells = paper.cells();
        let met = match cells.len() {
            0 => "none at hand".to_string(),
            count => format!("{} of {count}", cells.iter().filter(|cell| cell.is_met()).count()),
        };
        let saturation = bound(saturation_error(refrigerant), 1e-15);
        let [p, h, s, cp, w, rho] = row.worst;
        let [p, energy, cp, w, rho] = [p, h.max(s), cp, w, rho].map(|worst| bound(worst, 2e-12));
        let [shipped_p, shipped_cp] = row.shipped;
        let shipped = match shipped_p.max(shipped_cp) {
            same if same < 1e-11 => "same".to_string(),
            other => bound(other, 1e-11),
        };
        writeln!(
            text,
            "| {refrigerant} | {} | {met} | {saturation} | {} | {p} | {energy} | {cp} | {w} | {rho} | {} | {shipped} |",
            paper.headline, row.states, row.refused
        )
        .unwrap();
    }
    text
}

const BEGIN: &str = "<!-- refrigerants:begin -->";
const PAGE: &str = "docs/accuracy.md";
const END: &str = "<!-- refrigerants:end -->";

#[test]
#[ignore = "needs the states of tests/python/grid.py: tests/run grid"]
fn coolprop_agrees_and_the_guide_says_how_well() {
    let rows = grid();
    assert_eq!(rows.len(), Refrigerant::ALL.iter().filter(|r| !r.is_blend()).count());
    for (refrigerant, row) in &rows {
        assert!(row.states >= 9_900, "{refrigerant} has {} states", row.states);
        assert_eq!(row.states + row.unanswered, 10_000, "{refrigerant}");
    }
    let table = table(&rows);
    let page = fs::read_to_string(PAGE).unwrap();
    let Some((before, rest)) = page.split_once(BEGIN) else {
        println!("note: the page has no place for the table:\n{table}");
        return;
    };
    let (block, after) = rest.split_once(END).unwrap();
    let fresh = format!("\n{table}");
    if std::env::var_os("COLDLOOP_WRITE").is_some() {
        fs::write(PAGE, format!("{before}{BEGIN}{fresh}{END}{after}")).unwrap();
    } else {
        assert_eq!(block, fresh, "stale: COLDLOOP_WRITE=1 tests/run grid");
    }
}

/// Found from temperature and pressure, as CoolProp 8.0.0 has them: liquids that are soft at saturation and stiff at
/// this pressure, and a gas as dense as a liquid. A tangent from the light side leads beyond what these equations bear.
#[test]
fn dense_states_near_the_critical_temperature_are_found() {
    for (refrigerant, t_k, p_pa, rho_mol_m3) in [
        (
            Refrigerant::R152a,
            360.09680000000003,
            54096564.69822854,
            13973.026820982472,
        ),
        (Refrigerant::R152a, 373.9144, 25867857.940898873, 12459.6104373527),
        (Refrigerant::R22, 439.26115, 50020981.03962587, 12116.44000147458),
        (Refrigerant::R22, 447.94655, 53781837.02215987, 12116.44000147458),
    ] {
        let state = saturation::pure(refrigerant)
            .unwrap()
            .state_tp(t_k, p_pa, Reference::Iir)
            .unwrap();
        assert!(
            (state.molar_density().mol_m3() / rho_mol_m3 - 1.0).abs() < 1e-11,
            "{refrigerant} {t_k} K: {}",
            state.molar_density().mol_m3()
        );
    }
}
