//! `tables/pairs/*.toml` into the components and pairs of the mixture room.

use crate::blends;
use crate::double::Double;
use crate::equilibrium;
use crate::fluid_file::{self, Compiled};
use crate::refrigerants::blend_pattern;
use coldloop::inner::fluid::Equation;
use coldloop::inner::numerics::Real;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::path::Path;
use tables_names::Output;
use tables_names::Vocabulary;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Publication {
    citation: String,
    doi: Option<String>,
    #[allow(dead_code)] // for the reader of the table
    read: String,
    #[serde(default)]
    pair: Vec<Published>,
    #[serde(default)]
    departure: Vec<Departure>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Published {
    fluids: [String; 2],
    beta_t: Option<String>,
    gamma_t: Option<String>,
    beta_v: Option<String>,
    gamma_v: Option<String>,
    xi_k: Option<String>,
    zeta_m3_mol: Option<String>,
    departure: Option<String>,
    factor: Option<String>,
    #[allow(dead_code)] // for the reader of the table
    note: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Departure {
    name: String,
    columns: [String; 4],
    rows: Vec<[String; 4]>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Scheme {
    scheme: String,
    published: String,
    fitted: String,
    class: Vec<Class>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Class {
    name: String,
    fluids: Vec<String>,
}

/// A pair as it is written: seen from the fluid with the lower number.
struct Pair {
    beta_t: f64,
    gamma_t: f64,
    beta_v: f64,
    gamma_v: f64,
    factor: f64,
    departure: Option<String>,
    gamma_t_uncertainty: f64,
    is_estimated: bool,
    source: String,
}

/// Reads the fluids and pairs and writes `src/mixture/tables/mod.rs`.
pub(crate) fn compile(
    root: &Path,
    vocabularies: &[Vocabulary],
    blends: &[blends::Compiled],
    out: &mut Output,
) -> Result<(), String> {
    let fluids = fluid_file::read_all(&root.join("tables/refrigerants"))?;
    let folder = root.join("tables/pairs");
    let scheme: Scheme = read(&folder.join("estimated.toml"))?;
    let mut publications = Vec::new();
    let entries = fs::read_dir(&folder).map_err(|e| e.to_string())?;
    let mut paths: Vec<_> = entries.filter_map(|entry| entry.ok().map(|e| e.path())).collect();
    paths.sort();
    for path in paths.iter().filter(|path| !path.ends_with("estimated.toml")) {
        publications.push(read::<Publication>(path)?);
    }
    let mut departures = String::new();
    let mut pairs: BTreeMap<(usize, usize), Pair> = BTreeMap::new();
    for publication in &publications {
        for departure in &publication.departure {
            departures += &departure.rust()?;
        }
        for published in &publication.pair {
            let (place, pair) = published.compile(publication, &scheme, &fluids)?;
            if pairs.insert(place, pair).is_some() {
                return Err(format!("{:?} stands twice", published.fluids));
            }
        }
    }
    let estimates = Estimates::new(&scheme, &fluids, &pairs)?;
    let mut components = String::new();
    for (number, fluid) in fluids.iter().enumerate() {
        components += &component(number, fluid)?;
    }
    let mut table = String::new();
    let mut different: Vec<String> = Vec::new();
    let mut places: Vec<usize> = Vec::new();
    for low in 0..fluids.len() {
        for high in low + 1..fluids.len() {
            let pair = match pairs.remove(&(low, high)) {
                Some(pair) => pair,
                None => estimates.pair(low, high)?,
            };
            // Pairs of two classes without publication are alike.
            let text = pair.rust();
            let place = different
                .iter()
                .position(|other| *other == text)
                .unwrap_or(different.len());
            if place == different.len() {
                let alike = if pair.is_estimated { " and all alike" } else { "" };
                let (one, other) = (&fluids[low].designation, &fluids[high].designation);
                table += &format!("// {one} with {other}{alike}\n{text}");
                different.push(text);
            }
            places.push(place);
        }
    }
    let named: Vec<&str> = vocabularies
        .iter()
        .filter(|vocabulary| vocabulary.name == "Refrigerant")
        .flat_map(|vocabulary| vocabulary.entries.iter().map(|entry| entry.id.as_str()))
        .collect();
    let mut arms = String::new();
    for (number, fluid) in fluids.iter().enumerate() {
        if named.contains(&fluid.designation.as_str()) {
            writeln!(arms, "Refrigerant::{} => Ok(&COMPONENTS[{number}]),", fluid.variant())
                .map_err(|e| e.to_string())?;
        }
    }
    let gas = |designation: &str| place(designation, &fluids).map(|number| format!("&COMPONENTS[{number}]"));
    let air = [gas("R-728")?, gas("R-732")?, gas("R-740")?].join(", ");
    let several = blend_pattern(blends);
    let (fluid_count, count, kinds) = (fluids.len(), places.len(), different.len());
    if kinds > 256 {
        return Err("more kinds of pairs than a byte tells".to_string());
    }
    let source = format!(
        "//! The components of mixtures and their pairs.\n//!\n//! Generated from tables/refrigerants and tables/pairs by tables/compile; edit the tables, not this file.\n\n\
         use super::component::{{Component, Pair}};\nuse crate::error::Error;\nuse crate::fluid::Power;\nuse crate::fluid::tables as fluid;\nuse crate::names::{{ErrorKind, Quantity, Refrigerant}};\n\n\
         /// The component of a mixture that a pure refrigerant is.\n///\n/// Errors: `NotAvailable` for a blend, which has several.\n\
         pub const fn component_of(refrigerant: Refrigerant) -> Result<&'static Component, Error> {{\nmatch refrigerant {{\n{arms}{several} => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),\n}}\n}}\n\n\
         /// Every fluid that a mixture may hold.\npub(crate) static COMPONENTS: [Component; {fluid_count}] = [\n{components}];\n\n\
         /// Nitrogen, oxygen and argon.\npub(super) static AIR: [&Component; 3] = [{air}];\n\n\
         /// The different ways in which two of them meet.\npub(super) static PAIRS: [Pair; {kinds}] = [\n{table}];\n\n\
         /// Where in them each pair stands: first those with component 0, then those of component 1 with the ones after it, and so on.\n\
         pub(super) static PLACES: [u8; {count}] = {places:?};\n\n{departures}"
    );
    out.rust("src/mixture/tables/mod.rs", &source)
}

fn read<T: for<'a> Deserialize<'a>>(path: &Path) -> Result<T, String> {
    let text = fs::read_to_string(path).map_err(|e| format!("{}: {e}", path.display()))?;
    toml::from_str(&text).map_err(|e| format!("{}: {e}", path.display()))
}

fn digits(text: &str) -> Result<f64, String> {
    text.parse().map_err(|e| format!("{text:?}: {e}"))
}

fn place(designation: &str, fluids: &[Compiled]) -> Result<usize, String> {
    fluids
        .iter()
        .position(|fluid| fluid.designation == designation)
        .ok_or_else(|| format!("no fluid {designation}"))
}

/// A component with what a search starts from: its critical point and a straight saturation line.
fn component(number: usize, fluid: &Compiled) -> Result<String, String> {
    let critical = equilibrium::critical(fluid.equation).map_err(|e| format!("{}: {e}", fluid.designation))?;
    let steepness = steepness(fluid.equation, critical).map_err(|e| format!("{}: {e}", fluid.designation))?;
    Ok(format!(
        "Component {{ number: {number}, fluid: &fluid::{}::{}, critical_t_k: {:?}, critical_p_pa: {:?}, steepness: {steepness:?} }},\n",
        fluid.module,
        fluid.constant(),
        critical.t_k.to_f64(),
        critical.p_pa.to_f64()
    ))
}

/// ln(p_c / p) at 0.7 T_c over (1 / 0.7 - 1), reached from 0.9 T_c in steps.
fn steepness(equation: &'static Equation, critical: equilibrium::Critical) -> Result<f64, String> {
    let number = Double::from_f64;
    let rho = critical.rho_mol_m3.to_f64();
    // Densities by corresponding states, after Guggenheim, J. Chem. Phys. 13 (1945) 253, doi 10.1063/1.1724033
    let s2: f64 = 0.1;
    let bent = 1.75 * s2.cbrt();
    let (mut liquid, mut vapour) = (rho * (1.0 + 0.75 * s2 + bent), rho * (1.0 + 0.75 * s2 - bent));
    let mut p_pa = f64::NAN;
    for step in 0..=20 {
        let reduced = 0.9 - 0.01 * f64::from(step);
        let t = critical.t_k * number(reduced);
        let found = equilibrium::equilibrium(equation, t, number(liquid), number(vapour))?;
        (liquid, vapour) = (found.liquid_rho_mol_m3.to_f64(), found.vapour_rho_mol_m3.to_f64());
        p_pa = found.p_pa.to_f64();
    }
    Ok((critical.p_pa.to_f64() / p_pa).ln() / (1.0 / 0.7 - 1.0))
}

impl Published {
    /// The places of the two fluids, the lower first, and the pair seen from it.
    fn compile(
        &self,
        publication: &Publication,
        scheme: &Scheme,
        fluids: &[Compiled],
    ) -> Result<((usize, usize), Pair), String> {
        let [a, b] = [place(&self.fluids[0], fluids)?, place(&self.fluids[1], fluids)?];
        let parameters = [&self.beta_t, &self.gamma_t, &self.beta_v, &self.gamma_v];
        let [beta_t, gamma_t, beta_v, gamma_v] = match (parameters, &self.xi_k, &self.zeta_m3_mol) {
            ([Some(beta_t), Some(gamma_t), Some(beta_v), Some(gamma_v)], None, None) => {
                [digits(beta_t)?, digits(gamma_t)?, digits(beta_v)?, digits(gamma_v)?]
            }
            ([None, None, None, None], Some(xi), Some(zeta)) => {
                let (first, second) = (fluids[a].equation, fluids[b].equation);
                from_differences(first, second, digits(xi)?, digits(zeta)?)
            }
            _ => return Err(format!("{:?}: four parameters or xi and zeta", self.fluids)),
        };
        let factor = self.factor.as_deref().map(digits).transpose()?.unwrap_or(0.0);
        let turn = |beta: f64| if a < b { beta } else { 1.0 / beta };
        let doi = publication.doi.as_ref().map(|doi| format!(", doi {doi}"));
        let pair = Pair {
            beta_t: turn(beta_t),
            gamma_t,
            beta_v: turn(beta_v),
            gamma_v,
            factor,
            departure: self.departure.clone(),
            gamma_t_uncertainty: digits(if self.departure.is_some() {
                &scheme.fitted
            } else {
                &scheme.published
            })?,
            is_estimated: false,
            source: publication.citation.clone() + &doi.unwrap_or_default(),
        };
        Ok(((a.min(b), a.max(b)), pair))
    }
}

/// xi and zeta add to the linear means of the critical temperatures and volumes: T_r = sum x_i T_i + x_1 x_2 xi.
fn from_differences(first: &Equation, second: &Equation, xi_k: f64, zeta_m3_mol: f64) -> [f64; 4] {
    let (t1, t2) = (first.reducing_t_k, second.reducing_t_k);
    let (v1, v2) = (1.0 / first.reducing_rho_mol_m3, 1.0 / second.reducing_rho_mol_m3);
    let gamma_t = 0.5 * (t1 + t2 + xi_k) / (t1 * t2).sqrt();
    let gamma_v = 4.0 * (v1 + v2 + zeta_m3_mol) / (v1.cbrt() + v2.cbrt()).powi(3);
    [1.0, gamma_t, 1.0, gamma_v]
}

/// The estimates for pairs without publication, by the classes of the two fluids.
struct Estimates {
    scheme: String,
    names: Vec<String>,
    /// The class of each fluid.
    classes: Vec<usize>,
    /// gamma_T of the published pairs of two classes, sorted.
    published: BTreeMap<(usize, usize), Vec<f64>>,
    widest: f64,
}

impl Estimates {
    fn new(scheme: &Scheme, fluids: &[Compiled], pairs: &BTreeMap<(usize, usize), Pair>) -> Result<Self, String> {
        let class = |fluid: &Compiled| {
            let mut found = scheme
                .class
                .iter()
                .enumerate()
                .filter(|(_, class)| class.fluids.contains(&fluid.designation));
            match (found.next(), found.next()) {
                (Some((place, _)), None) => Ok(place),
                _ => Err(format!("{} belongs to one class of estimated.toml", fluid.designation)),
            }
        };
        let classes: Vec<usize> = fluids.iter().map(class).collect::<Result<_, _>>()?;
        let mut published: BTreeMap<(usize, usize), Vec<f64>> = BTreeMap::new();
        for ((a, b), pair) in pairs {
            if pair.departure.is_none() {
                let key = ordered(classes[*a], classes[*b]);
                published.entry(key).or_default().push(pair.gamma_t);
            }
        }
        published.values_mut().for_each(|values| values.sort_by(f64::total_cmp));
        let widest = published.values().map(|values| spread(values)).fold(0.0, f64::max);
        Ok(Self {
            scheme: scheme.scheme.clone(),
            names: scheme.class.iter().map(|class| class.name.clone()).collect(),
            classes,
            published,
            widest,
        })
    }

    fn pair(&self, low: usize, high: usize) -> Result<Pair, String> {
        let key = ordered(self.classes[low], self.classes[high]);
        let none = Vec::new();
        let values = self.published.get(&key).unwrap_or(&none);
        let (gamma_t, gamma_t_uncertainty) = match values.len() {
            0 => (1.0, self.widest),
            // One or two pairs tell little of how the class spreads.
            1 | 2 => (median(values), self.widest),
            _ => (median(values), spread(values)),
        };
        let source = format!(
            "estimate from {} published pairs of {} with {}: {}",
            values.len(),
            self.names[key.0],
            self.names[key.1],
            self.scheme
        );
        Ok(Pair {
            beta_t: 1.0,
            gamma_t,
            beta_v: 1.0,
            gamma_v: 1.0,
            factor: 0.0,
            departure: None,
            gamma_t_uncertainty,
            is_estimated: true,
            source,
        })
    }
}

fn ordered(a: usize, b: usize) -> (usize, usize) {
    (a.min(b), a.max(b))
}

fn median(sorted: &[f64]) -> f64 {
    let last = sorted.len() - 1;
    0.5 * (sorted[last / 2] + sorted[last - last / 2])
}

fn spread(values: &[f64]) -> f64 {
    let count = values.len() as f64;
    let mean = values.iter().sum::<f64>() / count;
    (values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / count).sqrt()
}

impl Pair {
    fn rust(&self) -> String {
        let departure = match &self.departure {
            Some(name) => format!("&{}", constant(name)),
            None => "&[]".to_string(),
        };
        format!(
            "Pair {{ beta_t: {:?}, gamma_t: {:?}, beta_v: {:?}, gamma_v: {:?}, factor: {:?}, departure: {departure}, gamma_t_uncertainty: {:?}, is_estimated: {:?}, source: {:?} }},\n",
            self.beta_t,
            self.gamma_t,
            self.beta_v,
            self.gamma_v,
            self.factor,
            self.gamma_t_uncertainty,
            self.is_estimated,
            self.source
        )
    }
}

impl Departure {
    fn rust(&self) -> Result<String, String> {
        if self.columns != ["n", "t", "d", "l"] {
            return Err(format!("{}: the columns are n, t, d, l", self.name));
        }
        let mut terms = String::new();
        for [n, t, d, l] in &self.rows {
            let whole = |text: &str| text.parse::<u8>().map_err(|e| format!("{text:?}: {e}"));
            let (n, t, d, l) = (digits(n)?, digits(t)?, whole(d)?, whole(l)?);
            writeln!(terms, "Power {{ n: {n:?}, t: {t:?}, d: {d}, l: {l} }},").map_err(|e| e.to_string())?;
        }
        let (name, count) = (constant(&self.name), self.rows.len());
        Ok(format!(
            "/// The departure function of {}.\nstatic {name}: [Power; {count}] = [\n{terms}];\n\n",
            self.name
        ))
    }
}

/// The constant that holds a departure function: `R32_R125`.
fn constant(name: &str) -> String {
    name.replace('/', "_").replace(['-', '(', ')'], "").to_uppercase()
}
