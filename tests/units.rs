//! The units the library converts by are those of the table that is compared with pint.

#![allow(clippy::panic, clippy::unwrap_used)] // a test ends that way

use coldloop::units::constants as c;
use std::collections::BTreeMap;

#[test]
fn constants_are_those_of_the_table() {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path("tests/data/units.csv")
        .unwrap();
    let table: BTreeMap<String, f64> = reader
        .deserialize()
        .map(|row| row.unwrap())
        .map(|(n, _, si): (String, String, f64)| (n, si))
        .collect();
    let constants = [
        ("psi", c::PSI_PA),
        ("mmhg", c::MMHG_PA),
        ("inhg", c::INHG_PA),
        ("micron", c::MICRON_PA),
        ("kgf_cm2", c::KGF_CM2_PA),
        ("atmosphere", c::ATMOSPHERE_PA),
        ("btu", c::BTU_J),
        ("btu_per_pound", c::BTU_PER_POUND_J_KG),
        ("pound", c::POUND_KG),
        ("inch", c::INCH_M),
        ("foot", c::FOOT_M),
        ("mile", c::MILE_M),
    ];
    assert_eq!(table.len(), constants.len());
    for (name, si) in constants {
        // one unit in the last place: a product of exact constants is rounded once or twice
        assert!(
            (si / table[name] - 1.0).abs() <= f64::EPSILON,
            "{name}: {si} and {}",
            table[name]
        );
    }
}
