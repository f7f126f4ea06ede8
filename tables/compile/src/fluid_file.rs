//! One file of `tables/refrigerants`: what it may hold, and how its printed digits become constants.

use crate::fluid_facts::Facts;
use coldloop::inner::fluid::{DoubleExponential, Equation, Gaussian, Ideal, Melting, NonAnalytic, Power};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

#[derive(Deserialize)]
struct File {
    designation: String,
    name: String,
    cas: String,
    molar_mass_g_mol: String,
    facts: Facts,
    equation: Source,
}

#[derive(Deserialize)]
struct Source {
    citation: String,
    doi: Option<String>,
    uncertainty: Option<String>,
    saturation_uncertainty: Option<String>,
    gas_constant_j_mol_k: String,
    reducing_temperature_k: String,
    reducing_density_kg_m3: Option<String>,
    reducing_density_mol_dm3: Option<String>,
    reducing_density_mol_m3: Option<String>,
    limits: Limits,
    melting: Option<MeltingSource>,
    ideal: IdealSource,
    residual: Vec<Group>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct MeltingSource {
    t_triple_k: String,
    p_triple_mpa: String,
    a: [String; 2],
}

#[derive(Deserialize)]
struct Limits {
    t_min_k: String,
    t_max_k: String,
    p_max_mpa: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct IdealSource {
    lead: Option<[String; 2]>,
    log_tau: Option<String>,
    cp0_constant: Option<String>,
    #[serde(default)]
    power: Vec<[String; 2]>,
    #[serde(default)]
    cp0_power: Vec<[String; 2]>,
    #[serde(default)]
    cp0_power_k: Vec<[String; 2]>,
    #[serde(default)]
    planck_einstein: Vec<[String; 2]>,
    #[serde(default)]
    planck_einstein_k: Vec<[String; 2]>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Group {
    form: String,
    columns: Vec<String>,
    rows: Vec<Vec<String>>,
}

/// A fluid as compiled: its constants, leaked so that the crate's own equations can be run on them.
pub(crate) struct Compiled {
    /// Name of the Rust module and of its file: `r134a`.
    pub(crate) module: String,
    pub(crate) designation: String,
    pub(crate) equation: &'static Equation,
    pub(crate) lowest_t_k: f64,
    highest_t_k: f64,
    highest_p_pa: f64,
    melting: Option<Melting>,
    facts: String,
}

/// Every fluid of a folder, by file name.
pub(crate) fn read_all(folder: &Path) -> Result<Vec<Compiled>, String> {
    let entries = fs::read_dir(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    let mut paths: Vec<_> = entries
        .filter_map(|entry| entry.ok().map(|entry| entry.path()))
        .collect();
    paths.retain(|path| path.extension().is_some_and(|end| end == "toml"));
    paths.sort();
    let read = |path: &Path| {
        let text = fs::read_to_string(path).map_err(|e| e.to_string())?;
        let file: File = toml::from_str(&text).map_err(|e| e.to_string())?;
        file.compile()
    };
    paths
        .iter()
        .map(|path| read(path).map_err(|e| format!("{}: {e}", path.display())))
        .collect()
}

impl Compiled {
    /// The variant of the vocabulary: the designation without its marks.
    pub(crate) fn variant(&self) -> String {
        self.designation.replace(['-', '(', ')'], "")
    }

    /// The constant that holds the fluid.
    pub(crate) fn constant(&self) -> String {
        self.module.to_uppercase()
    }

    /// The module that holds the equation and the facts.
    pub(crate) fn rust(&self) -> String {
        let Self {
            designation,
            equation,
            lowest_t_k,
            highest_t_k,
            highest_p_pa,
            melting,
            facts,
            ..
        } = self;
        let constant = self.constant();
        let equation = format!("{equation:?}").replace(": [", ": &[");
        let has = |text: &str, name: &str| {
            if text.contains(name) {
                format!("{name}, ")
            } else {
                String::new()
            }
        };
        let facts_named = ["Flammability", "Warming"].map(|name| has(facts, name)).concat();
        let melting_named = if melting.is_some() { "Melting, " } else { "" };
        let terms = ["DoubleExponential", "Gaussian", "NonAnalytic", "Power"]
            .map(|name| has(&equation, &format!("{name} {{")).replace(" {", ""));
        let group = if facts.contains("SafetyGroup::") {
            "use crate::names::SafetyGroup;\n"
        } else {
            ""
        };
        format!(
            "//! The equation of state of {designation}.\n//!\n//! Generated from tables/refrigerants/{designation}.toml by tables/compile; edit the table, not this file.\n\n\
             use crate::fluid::{{Equation, Facts, Fluid, Ideal, Sourced, {facts_named}{melting_named}{}}};\n{group}\n\
             pub(crate) static {constant}: Fluid = Fluid {{\nequation: {equation},\nlowest_t_k: {lowest_t_k:?},\nhighest_t_k: {highest_t_k:?},\nhighest_p_pa: {highest_p_pa:?},\nmelting: {melting:?},\nfacts: {facts},\n}};\n",
            terms.concat()
        )
    }
}

impl File {
    fn compile(self) -> Result<Compiled, String> {
        let source = &self.equation;
        let molar_mass = digits(&self.molar_mass_g_mol)? / 1000.0;
        let densities = (
            &source.reducing_density_kg_m3,
            &source.reducing_density_mol_dm3,
            &source.reducing_density_mol_m3,
        );
        let reducing_rho_mol_m3 = match densities {
            (Some(kg_m3), None, None) => digits(kg_m3)? / molar_mass,
            (None, Some(mol_dm3), None) => digits(mol_dm3)? * 1000.0,
            (None, None, Some(mol_m3)) => digits(mol_m3)?,
            _ => return Err("one reducing density is needed".to_string()),
        };
        let reducing_t_k = digits(&source.reducing_temperature_k)?;
        let mut equation = Equation {
            gas_constant: digits(&source.gas_constant_j_mol_k)?,
            molar_mass,
            reducing_t_k,
            reducing_rho_mol_m3,
            ideal: source.ideal.compile(reducing_t_k)?,
            power: &[],
            gaussian: &[],
            double_exponential: &[],
            non_analytic: &[],
        };
        for group in &source.residual {
            group.compile(&mut equation)?;
        }
        coldloop::inner::eos::fits(&equation)?;
        let melting = match &source.melting {
            Some(MeltingSource {
                t_triple_k,
                p_triple_mpa,
                a: [linear, square],
            }) => Some(Melting {
                triple_t_k: digits(t_triple_k)?,
                triple_p_pa: digits(p_triple_mpa)? * 1e6,
                a: [digits(linear)?, digits(square)?],
            }),
            None => None,
        };
        let facts = self.facts()?;
        Ok(Compiled {
            melting,
            module: self.designation.replace(['-', '(', ')'], "").to_lowercase(),
            equation: Box::leak(Box::new(equation)),
            lowest_t_k: digits(&self.equation.limits.t_min_k)?,
            highest_t_k: digits(&self.equation.limits.t_max_k)?,
            highest_p_pa: digits(&self.equation.limits.p_max_mpa)? * 1e6,
            designation: self.designation,
            facts,
        })
    }

    /// The facts as a Rust expression.
    fn facts(&self) -> Result<String, String> {
        let label = self.facts.rust()?;
        let source = &self.equation;
        let saturation = source.saturation_uncertainty.as_deref().map(digits).transpose()?;
        Ok(format!(
            "Facts {{ name: {:?}, cas: Some({:?}), {label}, equation: {:?}, equation_doi: {:?}, equation_uncertainty: {:?}, saturation_uncertainty: {saturation:?} }}",
            self.name, self.cas, source.citation, source.doi, source.uncertainty
        ))
    }
}

impl IdealSource {
    fn compile(&self, reducing_t_k: f64) -> Result<Ideal, String> {
        let log_tau = match (&self.log_tau, &self.cp0_constant) {
            (Some(log_tau), None) => digits(log_tau)?,
            // cp0/R = c0 + ... integrates to (c0 - 1) ln tau
            (None, Some(constant)) => digits(constant)? - 1.0,
            _ => return Err("ideal: one of log_tau and cp0_constant".to_string()),
        };
        let mut planck_einstein = Vec::new();
        for [n, theta] in &self.planck_einstein {
            planck_einstein.push((digits(n)?, digits(theta)?));
        }
        for [n, theta_k] in &self.planck_einstein_k {
            planck_einstein.push((digits(n)?, digits(theta_k)? / reducing_t_k));
        }
        let mut powers = Vec::new();
        for [n, t] in &self.power {
            powers.push((digits(n)?, digits(t)?));
        }
        // c (T/Tr)^k in cp0/R integrates to -c tau^-k / (k (k + 1)).
        for [c, k] in &self.cp0_power {
            let (c, k) = (digits(c)?, digits(k)?);
            powers.push((-c / (k * (k + 1.0)), -k));
        }
        for [c, k] in &self.cp0_power_k {
            let (c, k) = (digits(c)?, digits(k)?);
            powers.push((-c * reducing_t_k.powf(k) / (k * (k + 1.0)), -k));
        }
        let (constant, slope) = match &self.lead {
            Some([constant, slope]) => (digits(constant)?, digits(slope)?),
            None => (0.0, 0.0),
        };
        Ok(Ideal {
            constant,
            slope,
            log_tau,
            powers: Vec::leak(powers),
            planck_einstein: Vec::leak(planck_einstein),
        })
    }
}

impl Group {
    /// Puts the terms of this group in their place in the equation.
    fn compile(&self, equation: &mut Equation) -> Result<(), String> {
        let expected: &[&str] = match self.form.as_str() {
            "power" => &["n", "t", "d", "l"],
            "gaussian" => &["n", "t", "d", "eta", "beta", "gamma", "epsilon"],
            "double-exponential" => &["n", "t", "d", "l", "m"],
            "non-analytic" => &["n", "a", "b", "beta", "A", "B", "C", "D"],
            other => return Err(format!("unknown form of term: {other}")),
        };
        let named: BTreeSet<&str> = self.columns.iter().map(String::as_str).collect();
        if self.columns.len() != expected.len() || named != expected.iter().copied().collect() {
            return Err(format!(
                "{}: the columns are {expected:?}, not {:?}",
                self.form, self.columns
            ));
        }
        let mut rows = Vec::new();
        for row in &self.rows {
            if row.len() != self.columns.len() {
                return Err(format!("{}: {row:?} has not {} columns", self.form, self.columns.len()));
            }
            rows.push(
                self.columns
                    .iter()
                    .map(String::as_str)
                    .zip(row.iter().map(String::as_str))
                    .collect(),
            );
        }
        let is_new = match self.form.as_str() {
            "power" => equation.power.is_empty(),
            "gaussian" => equation.gaussian.is_empty(),
            "double-exponential" => equation.double_exponential.is_empty(),
            _ => equation.non_analytic.is_empty(),
        };
        if !is_new {
            return Err(format!("two groups of the form {}", self.form));
        }
        match self.form.as_str() {
            "power" => {
                let mut terms = compile_rows(&rows, |row| {
                    Ok(Power {
                        n: row.number("n")?,
                        t: row.number("t")?,
                        d: row.whole("d")?,
                        l: row.whole("l")?,
                    })
                })?;
                terms.sort_by_key(|term: &Power| term.l);
                equation.power = Vec::leak(terms);
            }
            "gaussian" => {
                let terms = compile_rows(&rows, |row| {
                    Ok(Gaussian {
                        n: row.number("n")?,
                        t: row.number("t")?,
                        d: row.whole("d")?,
                        eta: row.number("eta")?,
                        beta: row.number("beta")?,
                        gamma: row.number("gamma")?,
                        epsilon: row.number("epsilon")?,
                    })
                })?;
                equation.gaussian = Vec::leak(terms);
            }
            "double-exponential" => {
                let mut terms = compile_rows(&rows, |row| {
                    Ok(DoubleExponential {
                        n: row.number("n")?,
                        t: row.number("t")?,
                        d: row.whole("d")?,
                        l: row.whole("l")?,
                        m: row.number("m")?,
                    })
                })?;
                terms.sort_by_key(|term: &DoubleExponential| term.l);
                if terms.iter().any(|term| term.m == 0.0) {
                    let (plain, double): (Vec<_>, Vec<_>) = terms.into_iter().partition(|term| term.m == 0.0);
                    let plain = plain
                        .into_iter()
                        .map(|DoubleExponential { n, t, d, l, .. }| Power { n, t, d, l });
                    if !equation.power.is_empty() {
                        return Err("terms without exponential of tau beside a group of powers".to_string());
                    }
                    equation.power = Vec::leak(plain.collect());
                    terms = double;
                }
                equation.double_exponential = Vec::leak(terms);
            }
            "non-analytic" => {
                let terms = compile_rows(&rows, |row| {
                    Ok(NonAnalytic {
                        n: row.number("n")?,
                        a: row.number("a")?,
                        b: row.number("b")?,
                        beta: row.number("beta")?,
                        theta_factor: row.number("A")?,
                        delta_factor: row.number("B")?,
                        density_width: row.number("C")?,
                        temperature_width: row.number("D")?,
                    })
                })?;
                equation.non_analytic = Vec::leak(terms);
            }
            other => return Err(format!("unknown form of term: {other}")),
        }
        Ok(())
    }
}

/// A row by its column names.
type Row<'a> = BTreeMap<&'a str, &'a str>;

trait Columns {
    fn number(&self, column: &str) -> Result<f64, String>;
    fn whole(&self, column: &str) -> Result<u8, String>;
}

impl Columns for Row<'_> {
    fn number(&self, column: &str) -> Result<f64, String> {
        digits(self.get(column).ok_or_else(|| format!("column {column} is missing"))?)
    }

    fn whole(&self, column: &str) -> Result<u8, String> {
        let text = self.get(column).ok_or_else(|| format!("column {column} is missing"))?;
        text.parse().map_err(|e| format!("{column} = {text:?}: {e}"))
    }
}

fn compile_rows<T>(rows: &[Row], compile: impl Fn(&Row) -> Result<T, String>) -> Result<Vec<T>, String> {
    rows.iter().map(compile).collect()
}

pub(crate) fn digits(text: &str) -> Result<f64, String> {
    text.parse().map_err(|e| format!("{text:?}: {e}"))
}
