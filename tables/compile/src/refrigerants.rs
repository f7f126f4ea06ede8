//! `tables/refrigerants/*.toml` into the constants of the fluid and saturation rooms.

use crate::curves::{self, Fitted, Saturation};
use crate::fluid_file::{self, Compiled};
use crate::output::Output;
use coldloop::numerics::Real;
use std::fmt::Write;
use std::path::Path;

/// Reads every refrigerant and writes its equation, its saturation curves and the two lists that find them.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let fluids = fluid_file::read_all(&root.join("tables/refrigerants"))?;
    for fluid in &fluids {
        out.rust(&format!("src/fluid/tables/{}.rs", fluid.module), &fluid.rust())?;
        let saturation = curves::fit(fluid.equation, fluid.lowest_t_k).map_err(|e| format!("{}: {e}", fluid.module))?;
        let source = saturation_rust(fluid, &saturation)?;
        out.rust(&format!("src/saturation/tables/{}.rs", fluid.module), &source)?;
    }
    out.rust(
        "src/fluid/tables/mod.rs",
        &index(&fluids, "fluid::Fluid", "constants of the equation of state"),
    )?;
    out.rust(
        "src/saturation/tables/mod.rs",
        &index(&fluids, "saturation::Pure", "saturation curves"),
    )
}

/// The list of modules and the function that finds a refrigerant's constant.
fn index(fluids: &[Compiled], target: &str, what: &str) -> String {
    let each = |line: &dyn Fn(&Compiled) -> String| fluids.iter().map(line).collect::<String>();
    let modules = each(&|f| format!("pub(crate) mod {};\n", f.module));
    let arms = each(&|f| format!("Refrigerant::{} => &{}::{},\n", f.variant(), f.module, f.constant()));
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
    let mut text = format!(
        "//! Saturation curves of {}.\n//!\n//! Generated from tables/refrigerants/{}.toml by tables/compile; edit the table, not this file.\n\n\
         use crate::fluid::tables::{module} as fluid;\nuse crate::numerics::{{Curve, Piece}};\nuse crate::saturation::{{Offset, Pure}};\n\n\
         pub(crate) static {constant}: Pure = Pure {{\nfluid: &fluid::{constant},\ncritical_t_k: {:?},\ncritical_p_pa: {:?},\ncritical_rho_mol_m3: {:?},\n",
        fluid.designation,
        fluid.designation,
        critical.t_k.to_f64(),
        critical.p_pa.to_f64(),
        critical.rho_mol_m3.to_f64(),
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
