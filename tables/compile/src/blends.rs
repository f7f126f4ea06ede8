//! `tables/blends/*.toml` into the constants of the blends: composition, facts, bubble and dew lines.

use crate::blend_line::{Critical, Model, Traced};
use crate::double::Double;
use crate::even::{Fitted, fit_curve};
use crate::fluid_file::digits;
use crate::refrigerants::fit_all;
use coldloop::Refrigerant;
use coldloop::inner::fluid::{self, Facts};
use coldloop::inner::mixture::{self, Fixed, Side};
use coldloop::inner::numerics::Real;
use serde::Deserialize;
use std::fmt::Write;
use std::fs;
use std::path::Path;
use tables_names::Output;

/// Lines begin here, or where the last component's equation does; at -50 C at the latest.
const LOWEST_K: f64 = 208.15;
const LATEST_K: f64 = 223.15;
/// Lines end at this share of the critical temperature.
const END: f64 = 0.99;
/// What a piece may differ from the line, relatively: pressures and temperatures.
const TOLERANCES: [f64; 2] = [4e-13, 1.5e-13];
/// Where the uncertainty of the pairs is looked at, K.
const LOOKS_K: [f64; 3] = [243.15, 273.15, 313.15];
/// Limit of error of the pure components' saturation pressures, relative, in one figure: most state less.
const PURE_LIMIT: f64 = 0.005;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    designation: String,
    mass_percent: Vec<[String; 2]>,
    composition_source: String,
    safety_group: Group,
    on_the_road: String,
    /// The standard uncertainty (K) of a bubble line that is known to be off by more than its pairs tell.
    unreliable_bubble_k: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Group {
    value: String,
    source: String,
}

/// A blend as it is found in its file.
pub(crate) struct Compiled {
    file: File,
    parts: Vec<(Refrigerant, f64)>,
}

/// What is committed of one side.
struct Boundary {
    pressure: Fitted,
    temperature: Fitted,
    uncertainty_k: f64,
    is_reliable: bool,
}

struct Lines {
    model: Model,
    critical: Critical,
    low: f64,
    high: f64,
    sides: [Boundary; 2],
    offsets: Vec<(&'static str, f64, f64)>,
}

/// Every blend, by file name.
pub(crate) fn read_all(root: &Path) -> Result<Vec<Compiled>, String> {
    let folder = root.join("tables/blends");
    let entries = fs::read_dir(&folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    let mut paths: Vec<_> = entries.filter_map(|entry| entry.ok().map(|e| e.path())).collect();
    paths.sort();
    let read = |path: &Path| {
        let text = fs::read_to_string(path).map_err(|e| e.to_string())?;
        let file: File = toml::from_str(&text).map_err(|e| e.to_string())?;
        let mut parts = Vec::new();
        for [id, percent] in &file.mass_percent {
            let refrigerant = Refrigerant::from_id(id).ok_or_else(|| format!("no refrigerant {id}"))?;
            parts.push((refrigerant, digits(percent)? / 100.0));
        }
        let total: f64 = parts.iter().map(|(_, share)| share).sum();
        if (total - 1.0).abs() > 1e-12 {
            return Err(format!("the masses make {total}"));
        }
        Ok(Compiled { file, parts })
    };
    paths
        .iter()
        .map(|path| read(path).map_err(|e| format!("{}: {e}", path.display())))
        .collect()
}

/// Writes the constants of every blend.
pub(crate) fn compile(blends: &[Compiled], out: &mut Output) -> Result<(), String> {
    let lines = fit_all(blends, Compiled::lines);
    for (blend, lines) in blends.iter().zip(lines) {
        let lines = lines.map_err(|e| format!("{}: {e}", blend.file.designation))?;
        let source = blend
            .rust(&lines)
            .map_err(|e| format!("{}: {e}", blend.file.designation))?;
        out.rust(&format!("src/saturation/tables/{}.rs", blend.module()), &source)?;
    }
    Ok(())
}

impl Compiled {
    pub(crate) fn module(&self) -> String {
        self.variant().to_lowercase()
    }

    pub(crate) fn variant(&self) -> String {
        self.file.designation.replace('-', "")
    }

    fn fluids(&self) -> Result<Vec<(&'static coldloop::inner::fluid::Fluid, f64)>, String> {
        let fluid = |(refrigerant, share): &(Refrigerant, f64)| {
            let fluid = fluid::fluid_of(*refrigerant).map_err(|e| format!("{refrigerant}: {e}"))?;
            Ok((fluid, *share))
        };
        self.parts.iter().map(fluid).collect()
    }

    fn moles(&self) -> Result<(Vec<f64>, f64), String> {
        let fluids = self.fluids()?;
        let amounts: Vec<f64> = fluids.iter().map(|(f, share)| share / f.equation.molar_mass).collect();
        let total: f64 = amounts.iter().sum();
        Ok((amounts.iter().map(|amount| amount / total).collect(), 1.0 / total))
    }

    fn lines(&self) -> Result<Lines, String> {
        let component =
            |(refrigerant, _): &(Refrigerant, f64)| mixture::component_of(*refrigerant).map_err(|e| e.to_string());
        let components = self.parts.iter().map(component).collect::<Result<Vec<_>, _>>()?;
        let (z, _) = self.moles()?;
        let model = Model::new(&components, &z)?;
        let critical = model.critical()?;
        // Where a melting line is known, the equation begins at the triple point; a dissolved part does not freeze there.
        let solvent = components.iter().filter(|c| c.fluid.melting.is_none());
        let lowest = solvent.map(|c| c.fluid.lowest_t_k).fold(LOWEST_K, f64::max);
        let (low, high) = (lowest.min(LATEST_K), END * critical.t_k);
        let mut sides = Vec::new();
        for side in [Side::Bubble, Side::Dew] {
            let traced = Traced::new(&model, side, low, high)?;
            let mut uncertainty_k = uncertainty_k(&model, side)?;
            let mut is_reliable = true;
            if let (Side::Bubble, Some(unreliable)) = (side, &self.file.unreliable_bubble_k) {
                is_reliable = false;
                uncertainty_k = digits(unreliable)?;
            }
            let number = Double::from_f64;
            let pressure = fit_curve(low, high, TOLERANCES[0], |t| traced.ln_p(t).exponential())?;
            let ends = [low, high].map(|t| (traced.ln_p(number(t)) * number(0.5)).exponential().to_f64());
            let temperature = fit_curve(ends[0], ends[1], TOLERANCES[1], |root| {
                traced.temperature(number(2.0) * root.logarithm())
            })?;
            sides.push(Boundary {
                pressure,
                temperature,
                uncertainty_k,
                is_reliable,
            });
        }
        let mut offsets = Vec::new();
        let molar_mass = self.moles()?.1;
        let normal_boiling = model
            .coarse
            .point(&z, Side::Bubble, Fixed::Pressure(101_325.0))
            .map_err(|e| format!("normal boiling point: {e}"))?;
        for (name, t_k, h_j_kg, s_j_kg_k) in [
            ("iir", 273.15, 200_000.0, 1_000.0),
            ("ashrae", 233.15, 0.0, 0.0),
            ("normal_boiling_point", normal_boiling.t_k, 0.0, 0.0),
        ] {
            let point = Traced::point(&model, Side::Bubble, t_k)?;
            let (h, s) = model.enthalpy_entropy(&point);
            offsets.push((
                name,
                h_j_kg - h.to_f64() / molar_mass,
                s_j_kg_k - s.to_f64() / molar_mass,
            ));
        }
        let sides = <[Boundary; 2]>::try_from(sides).map_err(|_| "two sides".to_string())?;
        Ok(Lines {
            model,
            critical,
            low,
            high,
            sides,
            offsets,
        })
    }

    fn rust(&self, lines: &Lines) -> Result<String, String> {
        let (z, molar_mass) = self.moles()?;
        let file = &self.file;
        let constant = self.variant();
        let mut parts = String::new();
        for ((refrigerant, mass), mole) in self.parts.iter().zip(&z) {
            let variant = refrigerant.id().replace(['-', '(', ')'], "");
            let _ = writeln!(
                parts,
                "Part {{ refrigerant: Refrigerant::{variant}, mass_fraction: {mass:?}, mole_fraction: {mole:?} }},"
            );
        }
        let mut estimated = String::new();
        for i in 0..z.len() {
            for j in i + 1..z.len() {
                if lines.model.coarse.pair(i, j).is_estimated {
                    let name = |k: usize| self.parts[k].0.id().replace(['-', '(', ')'], "");
                    let _ = writeln!(estimated, "[Refrigerant::{}, Refrigerant::{}],", name(i), name(j));
                }
            }
        }
        let facts = self.facts()?;
        let warming = if facts.contains("Warming {") { ", Warming" } else { "" };
        let fluids = self.fluids()?;
        let least = |of: &dyn Fn(&coldloop::inner::fluid::Fluid) -> f64| {
            fluids.iter().map(|(fluid, _)| of(fluid)).fold(f64::INFINITY, f64::min)
        };
        let critical = lines.critical;
        let designation = &file.designation;
        let mut text = format!(
            "//! Bubble and dew lines of {designation}.\n//!\n//! Generated from tables/blends/{designation}.toml by tables/compile; edit the table, not this file.\n\n\
             use crate::fluid::{{Facts, Sourced{warming}}};\nuse crate::names::{{Refrigerant, SafetyGroup}};\nuse crate::numerics::{{EvenCurve, ShortPiece}};\nuse crate::saturation::{{Blend, Boundary, Offset, Part}};\n\n\
             pub(crate) static {constant}: Blend = Blend {{\nrefrigerant: Refrigerant::{constant},\nparts: &[\n{parts}],\ncomposition_source: {:?},\nestimated_pairs: &[\n{estimated}],\non_the_road: {:?},\nfacts: {facts},\nmolar_mass: {molar_mass:?},\ncritical_t_k: {:?},\ncritical_p_pa: {:?},\ncritical_rho_mol_m3: {:?},\nlowest_t_k: {:?},\nhighest_t_k: {:?},\nwarmest_t_k: {:?},\nhighest_p_pa: {:?},\n",
            file.composition_source,
            file.on_the_road,
            critical.t_k,
            critical.p_pa,
            critical.rho_mol_m3,
            lines.low,
            lines.high,
            least(&|f| f.highest_t_k),
            least(&|f| f.highest_p_pa)
        );
        let mut pieces = String::new();
        for (name, side) in ["bubble", "dew"].into_iter().zip(&lines.sides) {
            let curve = |fitted: &Fitted, table: &str| {
                format!(
                    "// {} pieces, within {:.1e} of the line\n{table}: EvenCurve {{ start: {:?}, density: {:?}, cells: {:?}, pieces: &{}_{} }},\n",
                    fitted.pieces.len(),
                    fitted.error,
                    fitted.start,
                    fitted.density,
                    fitted.cells,
                    name.to_uppercase(),
                    table.to_uppercase()
                )
            };
            let ends = [lines.low, lines.high].map(|t_k| side.pressure.curve().map(|curve| curve.at(t_k)));
            let [low, high] = ends;
            let _ = writeln!(
                text,
                "{name}: Boundary {{\nuncertainty_k: {:?},\nis_reliable: {:?},\nlowest_p_pa: {:?},\nhighest_p_pa: {:?},\n{}{}}},",
                side.uncertainty_k,
                side.is_reliable,
                low?,
                high?,
                curve(&side.pressure, "pressure_pa"),
                curve(&side.temperature, "temperature_k")
            );
            for (fitted, table) in [(&side.pressure, "PRESSURE_PA"), (&side.temperature, "TEMPERATURE_K")] {
                let _ = writeln!(
                    pieces,
                    "static {}_{table}: [ShortPiece; {}] = [",
                    name.to_uppercase(),
                    fitted.pieces.len()
                );
                for piece in &fitted.pieces {
                    let _ = writeln!(pieces, "{piece:?},");
                }
                pieces += "];\n\n";
            }
        }
        for (name, h, s) in &lines.offsets {
            let _ = writeln!(text, "{name}: Offset {{ h_j_kg: {h:?}, s_j_kg_k: {s:?} }},");
        }
        Ok(text + "};\n\n" + &pieces)
    }

    /// The facts as a Rust expression: potentials are averaged by mass.
    fn facts(&self) -> Result<String, String> {
        let fluids = self.fluids()?;
        let file = &self.file;
        let mean = |of: &dyn Fn(&Facts) -> Option<f64>| -> Option<f64> {
            fluids
                .iter()
                .map(|(fluid, share)| Some(share * of(&fluid.facts)?))
                .sum()
        };
        let odp = match mean(&|facts| facts.ozone_depletion.map(|odp| odp.value)) {
            Some(value) => format!("Some(Sourced {{ value: {:?}, source: {MEAN:?} }})", rounded(value)),
            None => "None".to_string(),
        };
        let mut warming = String::new();
        for report in ["AR4", "AR5", "AR6"] {
            let (mut value, mut bound, mut source) = (0.0, false, MEAN.to_string());
            for ((refrigerant, _), (fluid, share)) in self.parts.iter().zip(&fluids) {
                let rows = fluid.facts.warming;
                let own = rows.iter().find(|row| row.value.report == report);
                match own.or(rows.iter().find(|row| row.value.report > report)) {
                    Some(row) => {
                        value += share * row.value.value;
                        bound |= row.value.is_upper_bound;
                        if row.value.report != report {
                            let _ = write!(source, "; {refrigerant} by {}", row.value.report);
                        }
                    }
                    // Hydrocarbons and R-1132(E): of the order of one, in shares of a few per cent.
                    None => {
                        let _ = write!(source, "; {refrigerant}, without a figure, counted as 0");
                    }
                }
            }
            let _ = write!(
                warming,
                "Sourced {{ value: Warming {{ report: {report:?}, value: {:?}, is_upper_bound: {bound} }}, source: {source:?} }},",
                rounded(value)
            );
        }
        let names: Vec<&str> = self.parts.iter().map(|(refrigerant, _)| refrigerant.id()).collect();
        let shares: Vec<&str> = file.mass_percent.iter().map(|[_, percent]| percent.as_str()).collect();
        let name = format!("{} ({} % by mass)", names.join("/"), shares.join("/"));
        Ok(format!(
            "Facts {{ name: {name:?}, cas: None, safety_group: Some(Sourced {{ value: SafetyGroup::{}, source: {:?} }}), flammability_limit: None, ozone_depletion: {odp}, warming: &[{warming}], equation: {EQUATION:?}, equation_doi: Some(\"10.1021/je300655b\"), equation_uncertainty: None, saturation_uncertainty: None }}",
            file.safety_group.value, file.safety_group.source
        ))
    }
}

const MEAN: &str = "the mean of the components by mass";
const EQUATION: &str = "multi-fluid mixture model of the components' equations: O. Kunz, W. Wagner: The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures. J. Chem. Eng. Data 57 (2012) 3032-3091; the pairs from the publications that each of them names";

/// To six decimals, as many as a mean by mass has.
fn rounded(value: f64) -> f64 {
    (value * 1e6).round() / 1e6
}

/// Standard uncertainty of a temperature from those of the pairs and of the pure lines, K: the largest of three places.
fn uncertainty_k(model: &Model, side: Side) -> Result<f64, String> {
    let n = model.z.len();
    let mut most: f64 = 0.0;
    for t_k in LOOKS_K {
        let error = |e: coldloop::Error| format!("uncertainty at {t_k} K: {e}");
        let point = model
            .coarse
            .point(&model.z, side, Fixed::Temperature(t_k))
            .map_err(error)?;
        let warmer = model
            .coarse
            .incipient(&model.z, Fixed::Temperature(t_k * 1.001), &point)
            .map_err(error)?;
        let per_ln_p = 0.001 * t_k / (warmer.p_pa / point.p_pa).ln();
        // A rectangular distribution of that half width.
        let mut square = (PURE_LIMIT / 3.0f64.sqrt() * per_ln_p).powi(2);
        for i in 0..n {
            for j in i + 1..n {
                let lean = 1.0 + model.coarse.pair(i, j).gamma_t_uncertainty;
                let leaned = model
                    .coarse
                    .with_gamma_t_times(i, j, lean)
                    .incipient(&model.z, Fixed::Pressure(point.p_pa), &point)
                    .map_err(error)?;
                square += (leaned.t_k - t_k).powi(2);
            }
        }
        most = most.max(square.sqrt());
    }
    Ok((most * 1000.0).round() / 1000.0)
}
