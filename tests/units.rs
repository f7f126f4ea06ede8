//! The units the library converts by are those of the table that is compared with pint, and pressures keep their datum.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use approx::assert_relative_eq;
use coldloop::units::constants as c;
use coldloop::units::{AbsolutePressure, GaugePressure, Surroundings};
use proptest::prelude::*;
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

#[test]
fn pressures_are_what_their_units_say() {
    let psi = 6_894.757_293_168_361;
    assert_eq!(GaugePressure::from_psig(35.0).pa(), 35.0 * psi);
    assert_eq!(AbsolutePressure::from_psia(14.0).pa(), 14.0 * psi);
    assert_eq!(GaugePressure::from_bar(2.4).pa(), 240_000.0);
    assert_eq!(AbsolutePressure::from_kpa(101.325).pa(), 101_325.0);
    assert_relative_eq!(
        GaugePressure::from_inhg_vacuum(18.0).pa(),
        -60_954.995_526_138,
        max_relative = 1e-15
    );
    assert_relative_eq!(
        AbsolutePressure::from_microns(500.0).pa(),
        66.661_193_707_5,
        max_relative = 1e-15
    );
    // a full vacuum at standard sea level is 29.92 inches, as every barometer says
    let vacuum = AbsolutePressure::from_pa(0.0).gauge(Surroundings::SEA_LEVEL);
    assert_relative_eq!(vacuum.inhg_vacuum(), 29.92, max_relative = 1e-4);
}

/// U.S. Standard Atmosphere (1976), the same as ISO 2533 here: 12.228 psi at 5,000 ft (from memory).
#[test]
fn air_is_thinner_higher_up() {
    let air = Surroundings::at_altitude(1_524.0).unwrap();
    assert_relative_eq!(air.pressure().psia(), 12.228, max_relative = 1e-4);
    assert!(Surroundings::at_altitude(20_000.0).is_err() && Surroundings::at_altitude(f64::NAN).is_err());
    assert!(Surroundings::measured(AbsolutePressure::from_bar(1.2)).is_err());
    let measured = Surroundings::measured(AbsolutePressure::from_kpa(84.3)).unwrap();
    assert_eq!(measured.pressure().kpa(), 84.3);
    assert!(measured.standard_uncertainty() < air.standard_uncertainty());
}

proptest! {
    #[test]
    fn getters_undo_constructors(x in -1e6..1e6f64) {
        for (there_and_back, name) in [
            (AbsolutePressure::from_psia(x).psia(), "psia"),
            (AbsolutePressure::from_kpa(x).kpa(), "kPa"),
            (AbsolutePressure::from_bar(x).bar(), "bar"),
            (AbsolutePressure::from_microns(x).microns(), "micron"),
            (GaugePressure::from_psig(x).psig(), "psig"),
            (GaugePressure::from_kpa(x).kpa(), "kPa gauge"),
            (GaugePressure::from_bar(x).bar(), "bar gauge"),
            (GaugePressure::from_inhg_vacuum(x).inhg_vacuum(), "inHg vacuum"),
        ] {
            // one rounding there, one back
            prop_assert!((there_and_back - x).abs() <= 2.0 * f64::EPSILON * x.abs(), "{name}");
        }
    }

    /// What a gauge shows, turned into absolute and back in the same air, is what it shows.
    #[test]
    fn datum_there_and_back(gauge_pa in -28_000.0..4e6f64, altitude_m in -500.0..9_000.0f64) {
        let air = Surroundings::at_altitude(altitude_m).unwrap();
        let back = GaugePressure::from_pa(gauge_pa).absolute(air).gauge(air);
        prop_assert!((back.pa() - gauge_pa).abs() <= 1e-9);
    }
}
