//! What is left of a charge that leaks, against the same leak in small steps by another way, and against what is known.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::inner::mixture::{self, Fixed, LeakPhase, Leaked, MOST_COMPONENTS, Mixture, Side, Split};
use coldloop::{ErrorKind, Quantity, Refrigerant};

const WARM_K: f64 = 298.15;
/// R-407C by ANSI/ASHRAE 34, R-134a, mass fractions 0.23, 0.25, 0.52.
const R407C: [(Refrigerant, f64); 3] = [
    (Refrigerant::R32, 0.23),
    (Refrigerant::R125, 0.25),
    (Refrigerant::R134a, 0.52),
];
/// R-410A, 0.5 and 0.5.
const R410A: [(Refrigerant, f64); 2] = [(Refrigerant::R32, 0.5), (Refrigerant::R125, 0.5)];

fn charge(parts: &[(Refrigerant, f64)]) -> (Mixture<f64>, Vec<f64>) {
    let components: Vec<_> = parts
        .iter()
        .map(|(part, _)| mixture::component_of(*part).unwrap())
        .collect();
    let moles: Vec<f64> = components
        .iter()
        .zip(parts)
        .map(|(component, (_, mass))| mass / component.fluid.equation.molar_mass)
        .collect();
    let total: f64 = moles.iter().sum();
    (
        Mixture::new(&components).unwrap(),
        moles.iter().map(|n| n / total).collect(),
    )
}

fn leaked(parts: &[(Refrigerant, f64)], rho_kg_m3: f64, leak_phase: LeakPhase, lost: f64) -> Leaked {
    let (mixture, z) = charge(parts);
    mixture.leaked(&z, WARM_K, rho_kg_m3, leak_phase, lost).unwrap()
}

/// The same leak of vapour in many plain steps, each with its pressure sought among splits at given pressures.
fn in_small_steps(parts: &[(Refrigerant, f64)], rho_kg_m3: f64, lost: f64, steps: u32) -> Vec<f64> {
    let (mixture, z) = charge(parts);
    let n = z.len();
    let molar_mass = |amounts: &[f64]| {
        let mut all = [0.0; MOST_COMPONENTS];
        all[..n].copy_from_slice(amounts);
        mixture.molar_mass(&all)
    };
    let rho_mol_m3 = rho_kg_m3 / molar_mass(&z);
    let mut amounts: Vec<f64> = z.iter().map(|z| z * rho_mol_m3).collect();
    let (mut low_pa, mut high_pa) = (1e5, 3e6);
    for _ in 0..steps {
        let total: f64 = amounts.iter().sum();
        let z: Vec<f64> = amounts.iter().map(|amount| amount / total).collect();
        let mut vapour = None;
        for _ in 0..40 {
            let p_pa = 0.5 * (low_pa + high_pa);
            // Too low a pressure leaves too little liquid, and too much volume.
            let wide = match mixture.split(&z, WARM_K, p_pa).unwrap() {
                Split::One { rho_mol_m3, .. } => rho_mol_m3 < total,
                Split::Two(two) => {
                    vapour = Some(two.vapour);
                    two.liquid_m3_mol + two.vapour_m3_mol > 1.0 / total
                }
            };
            if wide { low_pa = p_pa } else { high_pa = p_pa }
        }
        let vapour = vapour.unwrap();
        let share = rho_kg_m3 * lost / f64::from(steps) / molar_mass(&vapour[..n]) / vapour[..n].iter().sum::<f64>();
        for (amount, vapour) in amounts.iter_mut().zip(vapour) {
            *amount -= share * vapour;
        }
        (low_pa, high_pa) = (0.9 * low_pa, 1.02 * high_pa);
    }
    let total: f64 = amounts.iter().sum();
    amounts.iter().map(|amount| amount / total).collect()
}

#[test]
fn a_leak_is_what_many_small_steps_come_to() {
    let found = leaked(&R407C, 300.0, LeakPhase::Vapour, 0.4);
    // The error of one plain step is of second order: twice as many steps halve the total error, and extrapolation removes it.
    let [coarse, fine] = [50, 100].map(|steps| in_small_steps(&R407C, 300.0, 0.4, steps));
    for i in 0..R407C.len() {
        let limit = 2.0 * fine[i] - coarse[i];
        assert!((found.z[i] - limit).abs() < 2e-5, "{i}: {} and {limit}", found.z[i]);
    }
}

/// Directions: boil before R-134a (normal boiling points in `tables/refrigerants`), so vapour that leaks takes
/// more of them; the two of R-410A boil within 4 K and hardly part (common practice: it is topped up after a leak).
#[test]
fn what_boils_first_leaks_first() {
    let before = charge(&R407C).1;
    let mut last = leaked(&R407C, 300.0, LeakPhase::Vapour, 0.0);
    for i in 0..before.len() {
        assert!((last.z[i] - before[i]).abs() < 1e-12);
        assert!((last.mass[i] - R407C[i].1).abs() < 1e-12);
    }
    for tenths in 1..=8 {
        let left = leaked(&R407C, 300.0, LeakPhase::Vapour, 0.1 * f64::from(tenths));
        assert!(left.mass[0] <= last.mass[0] && left.mass[2] >= last.mass[2] && left.p_pa < last.p_pa);
        assert!((left.mass.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        last = left;
    }
    assert!(last.mass[2] > 0.58, "{:?}", last.mass);
    let near = leaked(&R410A, 300.0, LeakPhase::Vapour, 0.5);
    assert!((near.mass[0] - 0.5).abs() < 0.015, "{:?}", near.mass);
}

#[test]
fn a_leak_of_liquid_hardly_changes_the_charge() {
    let vapour = leaked(&R407C, 500.0, LeakPhase::Vapour, 0.3);
    let liquid = leaked(&R407C, 500.0, LeakPhase::Liquid, 0.3);
    let moved = |left: &Leaked| (left.mass[2] - 0.52).abs();
    assert!(
        moved(&liquid) < 0.3 * moved(&vapour),
        "{:?} {:?}",
        liquid.mass,
        vapour.mass
    );
    // The liquid is poorer in R-32 than the charge, so what stays is richer.
    assert!(liquid.mass[0] > 0.23);
}

#[test]
fn without_liquid_the_composition_stays() {
    let [dry, drier] = [0.95, 0.98].map(|lost| leaked(&R407C, 300.0, LeakPhase::Vapour, lost));
    assert!(!dry.has_liquid && leaked(&R407C, 300.0, LeakPhase::Vapour, 0.5).has_liquid);
    for i in 0..3 {
        assert!((dry.z[i] - drier.z[i]).abs() < 2e-3, "{:?} {:?}", dry.z, drier.z);
    }
    let per_mass = drier.p_pa / dry.p_pa;
    assert!((per_mass - 0.02 / 0.05).abs() < 0.03, "{per_mass}");
}

#[test]
fn what_cannot_leak_is_told() {
    let (mixture, z) = charge(&R407C);
    let refused = |rho: f64, t_k: f64, lost: f64| mixture.leaked(&z, t_k, rho, LeakPhase::Vapour, lost).unwrap_err();
    for (error, kind, quantity) in [
        (refused(300.0, WARM_K, 1.0), ErrorKind::OutOfRange, Quantity::Severity),
        (refused(300.0, WARM_K, -0.1), ErrorKind::OutOfRange, Quantity::Severity),
        (
            refused(300.0, WARM_K, f64::NAN),
            ErrorKind::NotFinite,
            Quantity::Severity,
        ),
        (refused(5_000.0, WARM_K, 0.5), ErrorKind::OutOfRange, Quantity::Density),
        (refused(1.0, WARM_K, 0.5), ErrorKind::OutOfRange, Quantity::Density),
        (refused(f64::NAN, WARM_K, 0.5), ErrorKind::NotFinite, Quantity::Density),
        (refused(300.0, 420.0, 0.5), ErrorKind::OutOfRange, Quantity::Temperature),
    ] {
        assert_eq!((error.kind, error.quantity), (kind, quantity), "{error}");
    }
}

/// What begins to leak as vapour from R-407C, 23/25/52 % in the liquid, is 33/33/34 %. Source: the McQuay installation
/// manual for air conditioners with R-407C, page 64, without a temperature; taken at 20 °C, and met within two hundredths.
#[test]
fn the_first_vapour_over_r407c_is_the_printed_one() {
    let (mixture, z) = charge(&R407C);
    let bubble = mixture.point(&z, Side::Bubble, Fixed::Temperature(293.15)).unwrap();
    let total = bubble.new[..3].iter().sum::<f64>() * mixture.molar_mass(&bubble.new);
    for ((component, rho), printed) in mixture.components().iter().zip(bubble.new).zip([0.33, 0.33, 0.34]) {
        let share = rho * component.fluid.equation.molar_mass / total;
        assert!((share - printed).abs() < 0.02, "{share} {printed}");
    }
}
