//! `tables/refrigerants/*.toml` into the constants of the fluid and saturation rooms.

use crate::curves::{self, Fitted, Saturation};
use crate::fluid_file::{self, Compiled};
use crate::names::Vocabulary;
use crate::output::Output;
use coldloop::numerics::Real;
use std::fmt::Write;
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};
use std::thread;

/// Reads every fluid and writes its equation, and of the refrigerants among them the saturation curves; then the two
/// lists that find them. A fluid that is not in the vocabulary (a gas of the air) is there by its equation alone.
pub(crate) fn compile(root: &Path, vocabularies: &[Vocabulary], out: &mut Output) -> Result<(), String> {
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
    for (fluid, saturation) in refrigerants.iter().zip(fit_all(&refrigerants)) {
        let saturation = saturation.map_err(|e| format!("{}: {e}", fluid.designation))?;
        let source = saturation_rust(fluid, &saturation)?;
        out.rust(&format!("src/saturation/tables/{}.rs", fluid.module), &source)?;
    }
    out.rust(
        "src/fluid/tables/mod.rs",
        &index(
            &refrigerants,
            &gases,
            "fluid::Fluid",
            "constants of the equation of state",
        ),
    )?;
    out.rust(
        "src/saturation/tables/mod.rs",
        &index(&refrigerants, &[], "saturation::Pure", "saturation curves"),
    )
}

/// The saturation curves of every fluid, each core taking the next one.
fn fit_all(fluids: &[Compiled]) -> Vec<Result<Saturation, String>> {
    let next = AtomicUsize::new(0);
    let done = Mutex::new(Vec::new());
    thread::scope(|scope| {
        for _ in 0..thread::available_parallelism().map_or(1, usize::from) {
            scope.spawn(|| {
                while let Some((place, fluid)) = fluids.iter().enumerate().nth(next.fetch_add(1, Ordering::Relaxed)) {
                    let fitted = curves::fit(fluid.equation, fluid.lowest_t_k);
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

/// The list of modules and the function that finds a refrigerant's constant.
fn index(refrigerants: &[Compiled], gases: &[Compiled], target: &str, what: &str) -> String {
    let modules: String = refrigerants
        .iter()
        .chain(gases)
        .map(|f| format!("pub(crate) mod {};\n", f.module))
        .collect();
    let arms: String = refrigerants
        .iter()
        .map(|f| format!("Refrigerant::{} => &{}::{},\n", f.variant(), f.module, f.constant()))
        .collect();
    let (room, kind) = target.split_once("::").unwrap_or(("", target));
    format!(
        "//! The {what} of every refrigerant.\n//!\n//! Generated from tables/refrigerants by tables/compile; edit the tables, not this file.\n\n\
         {modules}\nuse crate::names::Refrigerant;\nuse crate::{room}::{kind};\n\n\
         /// The {what} of a refrigerant.\npub const fn of(refrigerant: Refrigerant) -> &'static {kind} {{\nmatch refrigerant {{\n{arms}}}\n}}\n"
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
