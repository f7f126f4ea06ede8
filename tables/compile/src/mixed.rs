//! The blends of buses in the circuit, from the mixture model into `src/vehicle/working_fluid/mixed_table.rs`.

use coldloop::Refrigerant;
use coldloop::inner::vehicle::blend_in_the_circuit;
use std::fmt::Write;
use tables_names::Output;

const HEADER: &str = "//! Blends in the circuit: Chebyshev coefficients of their lines and of their vapour.\n//!\n\
    //! Generated from the mixture model by tables/compile; edit its program, not this file.\n\n\
    use super::mixed::Mixed;\nuse crate::names::Refrigerant;\n\n";

/// The blends that stand ready; any other is made at the start of a simulation.
const READY: [Refrigerant; 2] = [Refrigerant::R407C, Refrigerant::R513A];

/// Writes `src/vehicle/working_fluid/mixed_table.rs`.
pub(crate) fn compile(out: &mut Output) -> Result<(), String> {
    let mut source = String::from(HEADER);
    let mut arms = String::new();
    for refrigerant in READY {
        let name = refrigerant.id().replace('-', "");
        let mixed = blend_in_the_circuit(refrigerant).map_err(|e| format!("{}: {e}", refrigerant.id()))?;
        let _ = write!(arms, "Refrigerant::{name} => Some(&{name}),");
        let _ = write!(
            source,
            "/// {}.\nstatic {name}: Mixed = {mixed:?};\n\n",
            refrigerant.id()
        );
    }
    let _ = write!(
        source,
        "/// The blend of this name, where it stands ready.\n\
         pub(super) const fn of(refrigerant: Refrigerant) -> Option<&'static Mixed> {{\n\
         #[allow(clippy::wildcard_enum_match_arm)] // all others are made when they are wanted\n\
         match refrigerant {{ {arms} _ => None }} }}\n"
    );
    out.rust("src/vehicle/working_fluid/mixed_table.rs", &source)
}
