//! The Python door: the error kinds of `tables/names.toml` into `coldloop/_errors.py`.

use crate::names::Vocabulary;
use crate::output::Output;

/// Kinds that are not the fault of one argument's value; every other kind is a `ValueError`.
const BASES: [(&str, &str); 2] = [("NoConvergence", "ArithmeticError"), ("NotAvailable", "LookupError")];

const HEAD: &str = r#""""What the library raises, one class for each kind of error.

Generated from tables/names.toml by tables/names; edit the table, not this file.
"""

from math import nan
from typing import ClassVar


class ColdloopError(Exception):
    """Any refusal of the library.

    ``quantity`` names what it concerns; ``value``, ``low`` and ``high`` are in SI, NaN where they do not apply; ``key``
    is the entry of the readings that was refused, empty elsewhere.
    """

    code: ClassVar[int] = 0

    def __init__(
        self,
        message: str,
        quantity: str = "",
        value: float = nan,
        low: float = nan,
        high: float = nan,
        key: str = "",
    ):
        super().__init__(message, quantity, value, low, high, key)
        self.quantity = quantity
        self.value = value
        self.low = low
        self.high = high
        self.key = key

    def __str__(self) -> str:
        return str(self.args[0])
"#;

/// Writes `bindings/python/python/coldloop/_errors.py`.
pub(crate) fn compile(vocabularies: &[Vocabulary], out: &mut Output) -> Result<(), String> {
    let kinds = vocabularies
        .iter()
        .find(|v| v.name == "ErrorKind")
        .ok_or("the table has no ErrorKind")?;
    let (mut classes, mut rows) = (String::new(), String::new());
    let mut all = String::from("    \"ColdloopError\",\n");
    for kind in &kinds.entries {
        let name = class(kind.python.as_ref().unwrap_or(&kind.variant));
        let base = BASES
            .iter()
            .find(|(variant, _)| *variant == kind.variant)
            .map_or("ValueError", |(_, base)| base);
        classes += &format!(
            "\n\nclass {name}(ColdloopError, {base}):\n    \"\"\"{}\"\"\"\n\n    code = {}\n",
            kind.doc, kind.code
        );
        all += &format!("    {name:?},\n");
        rows += &format!("    {}: {name},\n", kind.code);
    }
    let table = format!("\n\nBY_CODE: dict[int, type[ColdloopError]] = {{\n{rows}}}\n");
    out.text(
        "bindings/python/python/coldloop/_errors.py",
        &format!("{HEAD}{classes}{table}\n__all__ = [\n{all}]\n"),
    )
}

fn class(variant: &str) -> String {
    format!("{variant}Error")
}
