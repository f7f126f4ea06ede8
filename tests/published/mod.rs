//! The check rows of tables/refrigerants, and what the library makes of them.

#![allow(clippy::panic, clippy::unwrap_used)] // part of tests

use coldloop::Refrigerant;
use coldloop::inner::eos::{Isotherm, Properties, density_mol_m3};
use coldloop::saturation::{self, Pure};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

#[derive(Deserialize)]
pub(crate) struct Paper {
    pub(crate) designation: String,
    /// Authors and year, from the first line of the file.
    #[serde(skip)]
    pub(crate) headline: String,
    equation: Equation,
    #[serde(default)]
    check: Vec<Table>,
    #[serde(default)]
    pub(crate) erratum: Vec<Erratum>,
}

#[derive(Deserialize)]
struct Equation {
    doi: Option<String>,
    reference: ReferenceState,
    pub(crate) printed: Option<Printed>,
}

/// The state to which the enthalpies and entropies of a paper refer.
#[derive(Deserialize)]
struct ReferenceState {
    state: String,
    t_k: String,
    p_mpa: Option<String>,
    h_kj_kg: String,
    s_kj_kg_k: String,
}

/// A modified Benedict-Webb-Rubin equation as printed.
#[derive(Deserialize)]
pub(crate) struct Printed {
    pub(crate) form: String,
    pub(crate) rho_critical_mol_dm3: String,
    pub(crate) b: Vec<String>,
}

#[derive(Deserialize)]
struct Table {
    table: String,
    given: Vec<String>,
    columns: Vec<String>,
    rows: Vec<Vec<String>>,
}

/// A cell that is set aside, with the reason.
#[derive(Deserialize)]
pub(crate) struct Erratum {
    pub(crate) table: String,
    pub(crate) row: Vec<String>,
    pub(crate) column: String,
    pub(crate) printed: String,
    pub(crate) computed: String,
    pub(crate) reason: String,
}

/// One printed number and what the equation gives for it.
pub(crate) struct Cell {
    pub(crate) table: String,
    /// The cells that fix the state, as printed.
    pub(crate) row: Vec<String>,
    pub(crate) column: String,
    pub(crate) printed: String,
    pub(crate) found: f64,
}

impl Cell {
    /// The difference in units of the last printed digit; up to 0.5 is the rounding of the print.
    pub(crate) fn last_digits(&self) -> f64 {
        let decimals = self.printed.split_once('.').map_or(0, |(_, after)| after.len());
        let scale = 10f64.powi(i32::try_from(decimals).unwrap());
        (self.found - number(&self.printed)) * scale
    }

    /// Whether every printed digit comes out; with a small margin for cells that round at the half.
    pub(crate) fn is_met(&self) -> bool {
        self.last_digits().abs() <= 0.5 + 1e-5
    }
}

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|e| panic!("{text:?}: {e}"))
}

/// Every file of tables/refrigerants.
pub(crate) fn papers() -> Vec<Paper> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tables/refrigerants");
    let mut papers = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_some_and(|end| end == "toml") {
            let text = std::fs::read_to_string(&path).unwrap();
            let mut paper: Paper = toml::from_str(&text).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
            let first = text.lines().next().unwrap_or_default();
            let (_, headline) = first.split_once(": ").unwrap();
            let year = headline.find(|c: char| c.is_ascii_digit()).unwrap();
            paper.headline = headline[..year + 4].to_string();
            papers.push(paper);
        }
    }
    papers.sort_by(|a: &Paper, b: &Paper| a.designation.cmp(&b.designation));
    papers
}

impl Paper {
    pub(crate) fn refrigerant(&self) -> Option<Refrigerant> {
        Refrigerant::from_id(&self.designation)
    }

    pub(crate) fn doi(&self) -> Option<&str> {
        self.equation.doi.as_deref()
    }

    pub(crate) fn printed(&self) -> Option<&Printed> {
        self.equation.printed.as_ref()
    }

    /// Whether a cell is set aside.
    pub(crate) fn is_erratum(&self, cell: &Cell) -> bool {
        self.erratum
            .iter()
            .any(|e| e.table == cell.table && e.row == cell.row && e.column == cell.column)
    }

    /// Every printed cell, the set aside ones too.
    pub(crate) fn cells(&self) -> Vec<Cell> {
        let pure = saturation::pure(self.refrigerant().unwrap()).unwrap();
        let (h0, s0) = self.equation.reference.offset(pure);
        let mut cells = Vec::new();
        for table in &self.check {
            for row in &table.rows {
                let values: BTreeMap<&str, &str> = table
                    .columns
                    .iter()
                    .map(String::as_str)
                    .zip(row.iter().map(String::as_str))
                    .collect();
                let given: Vec<String> = table.given.iter().map(|key| values[key.as_str()].to_string()).collect();
                let state = state(pure, &values, &table.given);
                for (column, printed) in &values {
                    if printed.is_empty() || table.given.iter().any(|key| key == column) {
                        continue;
                    }
                    cells.push(Cell {
                        table: table.table.clone(),
                        row: given.clone(),
                        column: column.to_string(),
                        printed: printed.to_string(),
                        found: figure(pure, &state, column, h0, s0),
                    });
                }
            }
        }
        cells
    }
}

impl ReferenceState {
    /// What has to be added to h (J/kg) and s (J/(kg K)) of the bare equation.
    fn offset(&self, pure: &Pure) -> (f64, f64) {
        let equation = &pure.fluid.equation;
        let t_k = number(&self.t_k);
        let isotherm = Isotherm::new(equation, t_k);
        let (h, s) = match (self.state.as_str(), &self.p_mpa) {
            ("saturated liquid", None) => {
                let state = Properties::new(&isotherm, pure.liquid(t_k).unwrap().rho_mol_m3);
                (state.h_j_kg, state.s_j_kg_k)
            }
            ("ideal gas", Some(p_mpa)) => {
                // The ideal gas at this pressure: the real gas at a density so low that it is ideal, with the entropy of an ideal
                // compression to the pressure.
                let thin = 1e-9;
                let state = Properties::new(&isotherm, thin);
                let rho = number(p_mpa) * 1e6 / (equation.gas_constant * t_k);
                let specific = equation.gas_constant / equation.molar_mass;
                (state.h_j_kg, state.s_j_kg_k + specific * (thin / rho).ln())
            }
            _ => panic!("unknown reference state {}", self.state),
        };
        (number(&self.h_kj_kg) * 1e3 - h, number(&self.s_kj_kg_k) * 1e3 - s)
    }
}

/// The state that the given columns fix.
fn state(pure: &Pure, values: &BTreeMap<&str, &str>, given: &[String]) -> Properties {
    let equation = &pure.fluid.equation;
    let get = |key: &str| number(values[key]);
    let has = |key: &str| given.iter().any(|name| name == key);
    if has("phase") {
        let t_k = if has("t_k") {
            get("t_k")
        } else {
            pure.temperature_k(get("p_mpa") * 1e6).unwrap()
        };
        let branch = match values["phase"] {
            "liquid" => pure.liquid(t_k),
            "vapour" => pure.vapour(t_k),
            other => panic!("unknown phase {other}"),
        };
        let state = Properties::new(&Isotherm::new(equation, t_k), branch.unwrap().rho_mol_m3);
        return Properties {
            p_pa: pure.pressure_pa(t_k).unwrap(),
            ..state
        };
    }
    let t_k = get("t_k");
    let isotherm = Isotherm::new(equation, t_k);
    let rho = if has("rho_mol_dm3") {
        get("rho_mol_dm3") * 1e3
    } else if has("rho_kg_m3") {
        get("rho_kg_m3") / equation.molar_mass
    } else {
        density(pure, &isotherm, t_k, get("p_mpa") * 1e6)
    };
    // Papers print the limit of zero density.
    Properties::new(&isotherm, rho.max(1e-9))
}

/// The density of the stable phase; papers print states beyond the limits that the library keeps.
fn density(pure: &Pure, isotherm: &Isotherm<f64>, t_k: f64, p_pa: f64) -> f64 {
    let densest = 5.0 * pure.critical_rho_mol_m3;
    let ideal = p_pa / (pure.fluid.equation.gas_constant * t_k);
    let (start, low, high) = if t_k >= pure.critical_t_k {
        (ideal.min(pure.critical_rho_mol_m3), 0.0, densest)
    } else if p_pa < pure.pressure_pa(t_k).unwrap() {
        (ideal, 0.0, pure.vapour(t_k).unwrap().rho_mol_m3)
    } else {
        let first = pure.liquid(t_k).unwrap().rho_mol_m3;
        (first, first, densest)
    };
    density_mol_m3(isotherm, p_pa, start, low, high).unwrap()
}

/// A figure in the unit of its column.
fn figure(pure: &Pure, state: &Properties, column: &str, h0: f64, s0: f64) -> f64 {
    let molar_mass = pure.fluid.equation.molar_mass;
    let rho_kg_m3 = state.rho_mol_m3 * molar_mass;
    match column {
        "t_k" => state.t_k,
        "p_mpa" => state.p_pa / 1e6,
        "rho_kg_m3" => rho_kg_m3,
        "rho_mol_dm3" => state.rho_mol_m3 / 1e3,
        "h_kj_kg" => (state.h_j_kg + h0) / 1e3,
        "h_j_mol" => (state.h_j_kg + h0) * molar_mass,
        "u_kj_kg" => (state.h_j_kg + h0 - state.p_pa / rho_kg_m3) / 1e3,
        "s_kj_kg_k" => (state.s_j_kg_k + s0) / 1e3,
        "s_j_mol_k" => (state.s_j_kg_k + s0) * molar_mass,
        "cv_kj_kg_k" => state.cv_j_kg_k / 1e3,
        "cp_kj_kg_k" => state.cp_j_kg_k / 1e3,
        "cv_j_mol_k" => state.cv_j_kg_k * molar_mass,
        "cp_j_mol_k" => state.cp_j_kg_k * molar_mass,
        "w_m_s" => state.w2_m2_s2.sqrt(),
        other => panic!("unknown column {other}"),
    }
}
