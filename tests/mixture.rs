//! The mixture model against printed values and against itself.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::inner::mixture::{self, Component, Fixed, MOST_COMPONENTS, Mixture, Side, Split};
use coldloop::inner::numerics::GAS_J_MOL_K;
use coldloop::{ErrorKind, Refrigerant};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

fn component(id: &str) -> &'static Component {
    mixture::component_of(Refrigerant::from_id(id).unwrap()).unwrap()
}

/// Source of the rows: see the head of the file.
#[test]
fn printed_energies_come_back() {
    let text = include_str!("data/mixture_alphar.csv");
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let mut rows = 0;
    let mut wrong = Vec::new();
    for record in reader.records() {
        let record = record.unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let z = number(2);
        for turned in [false, true] {
            // Seen from the other side the pair is the same.
            let (order, x) = if turned {
                ([1, 0], [1.0 - z, z])
            } else {
                ([0, 1], [z, 1.0 - z])
            };
            let mixture = Mixture::<f64>::new(&order.map(|k| component(&record[k]))).unwrap();
            let found = mixture.residual(number(3), number(4), &x);
            let off = (found / number(5) - 1.0).abs();
            if off > number(6) {
                wrong.push(format!("{} with {}: {found}, off by {off:e}", &record[0], &record[1]));
            }
        }
        rows += 1;
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert_eq!(rows, 10);
}

/// The derivatives of a mixture with every kind of pair, against differences of one order less.
#[test]
fn derivatives_are_those_of_the_energy() {
    let ids = ["R-32", "R-125", "R-1234yf", "R-134a", "R-1234ze(E)", "R-744", "R-600a"];
    let mixture = Mixture::<f64>::new(&ids.map(component)).unwrap();
    let n = ids.len();
    for (t_k, total) in [(320.0, 9_000.0), (320.0, 700.0), (380.0, 4_000.0), (250.0, 50.0)] {
        let mut rho = [1.0; MOST_COMPONENTS];
        for (i, rho) in rho.iter_mut().enumerate().take(n) {
            *rho = total * (1.0 + i as f64) / 28.0;
        }
        let phase = mixture.phase(t_k, &rho);
        let psi = |rho: &[f64; MOST_COMPONENTS], t_k: f64| {
            let phase = mixture.phase(t_k, rho);
            phase.rho_mol_m3 * phase.alpha
        };
        let size = phase.mu[..n].iter().fold(1.0f64, |most, mu| most.max(mu.abs()));
        for i in 0..n {
            let step = 1e-4 * rho[i];
            let moved = |by: f64| {
                let mut moved = rho;
                moved[i] += by;
                moved
            };
            let (up, down) = (moved(step), moved(-step));
            let mu = (psi(&up, t_k) - psi(&down, t_k)) / (2.0 * step);
            assert!(
                (mu - phase.mu[i]).abs() < 1e-6 * size,
                "mu of {i}: {} not {mu}",
                phase.mu[i]
            );
            let (up, down) = (mixture.phase(t_k, &up), mixture.phase(t_k, &down));
            for j in 0..n {
                let by = (up.mu[j] - down.mu[j]) / (2.0 * step);
                let off = (by - phase.mu_by_rho[i][j]).abs() * total;
                assert!(off < 1e-5 * size, "mu of {j} by rho of {i}: off by {off:e}");
            }
            let pi = (up.pi - down.pi) / (2.0 * step);
            let by = 1.0 + (0..n).map(|j| rho[j] * phase.mu_by_rho[i][j]).sum::<f64>();
            assert!((pi - by).abs() < 1e-5 * size, "pi by rho of {i}: {by} not {pi}");
        }
        let step = 1e-4 * t_k;
        let (up, down) = (mixture.phase(t_k + step, &rho), mixture.phase(t_k - step, &rho));
        for i in 0..n {
            let by = t_k * (up.mu[i] - down.mu[i]) / (2.0 * step);
            assert!((by - phase.mu_by_ln_t[i]).abs() < 1e-5 * size, "mu of {i} by ln T");
        }
        let by = t_k * (up.pi - down.pi) / (2.0 * step);
        assert!((by - phase.pi_by_ln_t).abs() < 1e-5 * size * total, "pi by ln T");
    }
}

#[test]
fn a_component_that_stands_twice_is_refused() {
    let r32 = component("R-32");
    assert!(Mixture::<f64>::new(&[r32, r32]).is_err());
    assert!(Mixture::<f64>::new(&[]).is_err());
}

/// Allowed relative difference of the points; the other program rounds the reducing density of R-32 to eight digits, 3e-9 off,
/// and its points are off as much.
fn allowed(fluids: &str) -> f64 {
    if fluids.split(' ').any(|fluid| fluid == "R-32") {
        3e-9
    } else {
        1e-9
    }
}

/// Source of the rows: see the head of the file.
#[test]
fn points_agree_with_an_independent_program() {
    let text = include_str!("data/mixture_points.csv");
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let mut rows = 0;
    let mut wrong = Vec::new();
    for record in reader.records() {
        let record = record.unwrap();
        let number = |k: usize| record[k].parse::<f64>().unwrap();
        let components: Vec<_> = record[0].split(' ').map(component).collect();
        let z: Vec<f64> = record[1].split(' ').map(|x| x.parse().unwrap()).collect();
        let side = if &record[2] == "0" { Side::Bubble } else { Side::Dew };
        let mixture = Mixture::<f64>::new(&components).unwrap();
        let (t_k, p_pa) = (number(3), number(4));
        let by_t = mixture.point(&z, side, Fixed::Temperature(t_k)).unwrap();
        let by_p = mixture.point(&z, side, Fixed::Pressure(by_t.p_pa)).unwrap();
        assert!(
            (by_p.t_k / t_k - 1.0).abs() < 1e-12,
            "{}: {} K back",
            &record[0],
            by_p.t_k
        );
        let off = (by_t.p_pa / p_pa - 1.0).abs();
        let rho = match side {
            Side::Bubble => number(5),
            Side::Dew => number(6),
        };
        let rho_off = (by_t.rho_mol_m3 / rho - 1.0).abs();
        if off > allowed(&record[0]) || rho_off > allowed(&record[0]) {
            wrong.push(format!(
                "{} {side:?} {t_k}: p off by {off:e}, rho by {rho_off:e}",
                &record[0]
            ));
        }
        rows += 1;
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(rows > 80, "{rows} rows");
}

/// Random charges and conditions: each answer is in equilibrium, and nearly every question is answered.
#[test]
fn random_charges_are_solved() {
    let mut random = ChaCha8Rng::seed_from_u64(7);
    let (mut asked, mut unsolved) = (0, 0);
    for _ in 0..3_000 {
        let count = random.random_range(2..=5);
        let mut components: Vec<&'static Component> = Vec::new();
        while components.len() < count {
            let one = mixture::component_of(Refrigerant::ALL[random.random_range(0..22)]).unwrap();
            if !components.iter().any(|other| other.number == one.number) {
                components.push(one);
            }
        }
        let shares: Vec<f64> = (0..count)
            .map(|_| 1e-9 - random.random::<f64>().max(1e-12).ln())
            .collect();
        let sum: f64 = shares.iter().sum();
        let z: Vec<f64> = shares.iter().map(|share| share / sum).collect();
        let mixture = Mixture::<f64>::new(&components).unwrap();
        let t_k = random.random_range(223.15..343.15);
        let p_pa = 50e3 * 60f64.powf(random.random());
        asked += 1;
        let solved = match random.random_range(0..3) {
            0 => check_point(&mixture, &z, Side::Bubble, Fixed::Temperature(t_k)),
            1 => check_point(&mixture, &z, Side::Dew, Fixed::Pressure(p_pa)),
            _ => check_split(&mixture, &z, t_k, p_pa),
        };
        if !solved {
            unsolved += 1;
        }
    }
    assert!(unsolved * 1_000 <= asked, "{unsolved} of {asked} unsolved");
}

/// ln of the fugacity over R T of each component.
fn potentials(mixture: &Mixture<f64>, t_k: f64, rho: &[f64; MOST_COMPONENTS]) -> Vec<f64> {
    let phase = mixture.phase(t_k, rho);
    (0..mixture.components().len())
        .map(|i| rho[i].ln() + phase.mu[i])
        .collect()
}

fn check_point(mixture: &Mixture<f64>, z: &[f64], side: Side, fixed: Fixed<f64>) -> bool {
    let point = match mixture.point(z, side, fixed) {
        Ok(point) => point,
        Err(error) => return error.kind == ErrorKind::OutOfRange,
    };
    let mut given = [1.0; MOST_COMPONENTS];
    for (given, z) in given.iter_mut().zip(z) {
        *given = z * point.rho_mol_m3;
    }
    let (one, other) = (
        potentials(mixture, point.t_k, &given),
        potentials(mixture, point.t_k, &point.new),
    );
    for (one, other) in one.iter().zip(other) {
        assert!((one - other).abs() < 1e-10 * one.abs().max(10.0), "{point:?}");
    }
    let is_dew = side == Side::Dew;
    assert_eq!(point.rho_mol_m3 < point.new_rho_mol_m3(mixture), is_dew, "{point:?}");
    true
}

fn check_split(mixture: &Mixture<f64>, z: &[f64], t_k: f64, p_pa: f64) -> bool {
    match mixture.split(z, t_k, p_pa) {
        Ok(Split::Two(two)) => {
            let (liquid, vapour) = (
                potentials(mixture, t_k, &two.liquid),
                potentials(mixture, t_k, &two.vapour),
            );
            for i in 0..z.len() {
                assert!(
                    (liquid[i] - vapour[i]).abs() < 1e-10 * liquid[i].abs().max(10.0),
                    "{two:?}"
                );
                let back = two.liquid_m3_mol * two.liquid[i] + two.vapour_m3_mol * two.vapour[i];
                assert!((back / z[i] - 1.0).abs() < 1e-10, "{two:?}");
            }
            true
        }
        Ok(Split::One { rho_mol_m3, .. }) => {
            let mut rho = [1.0; MOST_COMPONENTS];
            for (rho, z) in rho.iter_mut().zip(z) {
                *rho = z * rho_mol_m3;
            }
            let back = mixture.phase(t_k, &rho).pi * GAS_J_MOL_K * t_k;
            assert!((back / p_pa - 1.0).abs() < 1e-6, "{back} Pa, not {p_pa}");
            true
        }
        Err(_) => false,
    }
}
