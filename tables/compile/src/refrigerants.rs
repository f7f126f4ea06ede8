//! `tables/refrigerants/*.toml` into the constants of the fluid and saturation rooms.

use crate::blends;
use crate::curves::{self, Fitted, Saturation};
use crate::fluid_file::{self, Compiled};
use coldloop::inner::numerics::Real;
use std::fmt::Write;
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};
use std::thread;
use tables_names::Output;
use tables_names::Vocabulary;

/// Reads every fluid and writes its equation, and of the refrigerants among them the saturation curves; then the two
/// lists that find them. A fluid that is not in the vocabulary (a gas of the air) is there by its equation alone.
pub(crate) fn compile(
    root: &Path,
    vocabularies: &[Vocabulary],
    blends: &[blends::Compiled],
    out: &mut Output,
) -> Result<(), String> {
    let named: Vec<&str> = vocabularies
        .iter()
        .filter(|vocabulary| vocabulary.name == "Refrigerant")
        .flat_map(|vocabulary| vocabulary.entries.iter().map(|entry| entry.id.as_str()))
        .collect();
    let (refrigerants, gases): (Vec<Compiled>, Vec<Compiled>) =
        fluid_file::read_all(&root.join("tables/refrigerants"))?
            .into_iter()
            .partition(|fluid| named.contains(&fluid.designation.as_str()));
    for fluid in refrigerants.iter().chain(&gases) {
        out.rust(&format!("src/fluid/tables/{}.rs", fluid.module), &fluid.rust())?;
    }
    let fit = |fluid: &Compiled| curves::fit(fluid.equation, fluid.lowest_t_k);
    for (fluid, saturation) in refrigerants.iter().zip(fit_all(&refrigerants, fit)) {
        let saturation = saturation.map_err(|e| format!("{}: {e}", fluid.designation))?;
        let source = saturation_rust(fluid, &saturation)?;
        out.rust(&format!("src/saturation/tables/{}.rs", fluid.module), &source)?;
    }
    out.rust("src/fluid/tables/mod.rs", &fluid_index(&refrigerants, &gases, blends))?;
    out.rust("src/saturation/tables/mod.rs", &line_index(&refrigerants, blends))
}

/// What `fit` makes of every one, each core taking the next.
pub(crate) fn fit_all<T: Sync, F: Send>(
    all: &[T],
    fit: impl Fn(&T) -> Result<F, String> + Sync,
) -> Vec<Result<F, String>> {
    let next = AtomicUsize::new(0);
    let done = Mutex::new(Vec::new());
    thread::scope(|scope| {
        for _ in 0..thread::available_parallelism().map_or(1, usize::from) {
            scope.spawn(|| {
                while let Some((place, one)) = all.iter().enumerate().nth(next.fetch_add(1, Ordering::Relaxed)) {
                    let fitted = fit(one);
                    done.lock()
                        .unwrap_or_else(PoisonError::into_inner)
                        .push((place, fitted));
                }
            });
        }
    });
    let mut done = done.into_inner().unwrap_or_else(PoisonError::into_inner);
    done.sort_by_key(|(place, _)| *place);
    done.into_iter().map(|(_, fitted)| fitted).collect()
}

const HEAD: &str = "//!\n//! Generated from tables/refrigerants and tables/blends by tables/compile; edit the tables, not this file.\n\n";

/// The patterns that match every blend.
pub(crate) fn blend_pattern(blends: &[blends::Compiled]) -> String {
    let patterns: Vec<String> = blends
        .iter()
        .map(|blend| format!("Refrigerant::{}", blend.variant()))
        .collect();
    patterns.join(" | ")
}

/// The list of modules and the function that finds a pure refrigerant's fluid.
fn fluid_index(refrigerants: &[Compiled], gases: &[Compiled], blends: &[blends::Compiled]) -> String {
    let modules: String = refrigerants
        .iter()
        .chain(gases)
        .map(|f| format!("pub(crate) mod {};\n", f.module))
        .collect();
    let arms: String = refrigerants
        .iter()
        .map(|f| format!("Refrigerant::{} => Ok(&{}::{}),\n", f.variant(), f.module, f.constant()))
        .collect();
    format!(
        "//! The constants of the equation of state of every pure refrigerant.\n{HEAD}\
         {modules}\nuse crate::error::Error;\nuse crate::fluid::Fluid;\nuse crate::names::{{ErrorKind, Quantity, Refrigerant}};\n\n\
         /// The fluid that a pure refrigerant is.\n///\n/// Errors: `NotAvailable` for a blend.\n\
         pub const fn fluid_of(refrigerant: Refrigerant) -> Result<&'static Fluid, Error> {{\nmatch refrigerant {{\n{arms}{} => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),\n}}\n}}\n",
        blend_pattern(blends)
    )
}

/// The list of modules and the function that finds a refrigerant's saturation line.
fn line_index(refrigerants: &[Compiled], blends: &[blends::Compiled]) -> String {
    let mut modules: Vec<String> = refrigerants.iter().map(|f| f.module.clone()).collect();
    modules.extend(blends.iter().map(blends::Compiled::module));
    let modules: String = modules
        .iter()
        .map(|module| format!("pub(crate) mod {module};\n"))
        .collect();
    let pure = refrigerants.iter().map(|f| {
        format!(
            "Refrigerant::{} => Line::Pure(&{}::{}),\n",
            f.variant(),
            f.module,
            f.constant()
        )
    });
    let blend = blends
        .iter()
        .map(|b| format!("Refrigerant::{0} => Line::Blend(&{1}::{0}),\n", b.variant(), b.module()));
    let arms: String = pure.chain(blend).collect();
    format!(
        "//! The saturation curves of every refrigerant.\n{HEAD}\
         {modules}\nuse crate::names::Refrigerant;\nuse crate::saturation::Line;\n\n\
         /// The saturation curves of a refrigerant.\npub const fn line_of(refrigerant: Refrigerant) -> Line {{\nmatch refrigerant {{\n{arms}}}\n}}\n"
    )
}

fn saturation_rust(fluid: &Compiled, saturation: &Saturation) -> Result<String, String> {
    let (module, constant) = (&fluid.module, fluid.constant());
    let critical = saturation.critical;
    let pressure = saturation.pressure.curve();
    let [lowest_p_pa, highest_p_pa] = [fluid.lowest_t_k, critical.t_k.to_f64()].map(|t_k| pressure.at(t_k));
    let mut text = format!(
        "//! Saturation curves of {}.\n//!\n//! Generated from tables/refrigerants/{}.toml by tables/compile; edit the table, not this file.\n\n\
         use crate::fluid::tables::{module} as fluid;\nuse crate::numerics::{{Curve, Piece}};\nuse crate::saturation::{{Offset, Pure}};\n\n\
         pub(crate) static {constant}: Pure = Pure {{\nfluid: &fluid::{constant},\ncritical_t_k: {:?},\ncritical_p_pa: {:?},\ncritical_rho_mol_m3: {:?},\nlowest_p_pa: {:?},\nhighest_p_pa: {:?},\n",
        fluid.designation,
        fluid.designation,
        critical.t_k.to_f64(),
        critical.p_pa.to_f64(),
        critical.rho_mol_m3.to_f64(),
        lowest_p_pa,
        // The curve ends at the critical pressure or a last digit above it.
        highest_p_pa.max(critical.p_pa.to_f64()),
    );
    for (name, offset) in &saturation.offsets {
        writeln!(text, "{name}: {offset:?},").map_err(|e| e.to_string())?;
    }
    let mut pieces = String::new();
    let mut curves = vec![
        ("pressure_pa", &saturation.pressure),
        ("temperature_k", &saturation.temperature),
    ];
    curves.extend(saturation.branches.iter().map(|(name, curve)| (*name, curve)));
    for (name, curve) in curves {
        let table = name.to_uppercase();
        write_curve(&mut text, &mut pieces, name, &table, curve).map_err(|e| e.to_string())?;
    }
    Ok(text + "};\n\n" + &pieces)
}

fn write_curve(text: &mut String, pieces: &mut String, name: &str, table: &str, curve: &Fitted) -> std::fmt::Result {
    let Fitted {
        start,
        density,
        halves,
        cells,
        ..
    } = curve;
    writeln!(
        text,
        "// {} pieces, within {:.1e} of the equilibria",
        curve.pieces.len(),
        curve.error
    )?;
    writeln!(
        text,
        "{name}: Curve {{ start: {start:?}, density: {density:?}, halves: {halves:?}, cells: {cells:?}, pieces: &{table} }},"
    )?;
    writeln!(pieces, "static {table}: [Piece; {}] = [", curve.pieces.len())?;
    for piece in &curve.pieces {
        writeln!(pieces, "{piece:?},")?;
    }
    writeln!(pieces, "];\n")
}
