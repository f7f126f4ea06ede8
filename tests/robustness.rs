//! Any bits at every door: a value with its phase, or a typed error; no panic, no hang, no silent NaN.
//!
//! `COLDLOOP_INPUTS` sets how many inputs each entry point gets; 10,000 without it. The long run is
//!
//! ```sh
//! COLDLOOP_INPUTS=10000000 cargo test --release --test robustness -- --test-threads=1
//! ```

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::saturation::{self, Line, SaturatedPhase, pure};
use coldloop::{Error, Reference, Refrigerant};
use states::{H, P, RHO, S, T, X, sound, typed};

/// What has to hold of a state, as the fuzzer has it.
#[path = "fuzz/src/states.rs"]
#[allow(dead_code, unreachable_pub)] // the fuzzer has all of it, as a library
mod states;

/// Marsaglia, Xorshift RNGs, J. Stat. Softw. 8 (2003) 14, the 64-bit triple (13, 7, 17).
struct Random(u64);

impl Random {
    fn bits(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    /// From 0 to 1.
    fn share(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Half of them something sensible, the other half any bits, special numbers among them.
    fn number(&mut self, low: f64, high: f64) -> f64 {
        const SPECIAL: [f64; 10] = [
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            0.0,
            -0.0,
            f64::MIN_POSITIVE,
            5e-324,
            -5e-324,
            f64::MAX,
            f64::MIN,
        ];
        match self.bits() % 8 {
            0..=3 => low + (high - low) * self.share(),
            4 => low * (self.share() * (high / low).ln()).exp(),
            5 => SPECIAL[(self.bits() % 10) as usize],
            _ => f64::from_bits(self.bits()),
        }
    }
}

fn inputs() -> u64 {
    std::env::var("COLDLOOP_INPUTS").map_or(10_000, |n| n.parse().unwrap())
}

/// Calls `entry` with a refrigerant and two numbers, of these ranges where they are sensible.
fn try_all(first: (f64, f64), second: (f64, f64), entry: impl Fn(Refrigerant, f64, f64)) {
    let mut random = Random(0x9e37_79b9_7f4a_7c15);
    for _ in 0..inputs() {
        let refrigerant = Refrigerant::ALL[(random.bits() % Refrigerant::ALL.len() as u64) as usize];
        entry(
            refrigerant,
            random.number(first.0, first.1),
            random.number(second.0, second.1),
        );
    }
}

fn any(refrigerant: Refrigerant) -> Result<Line, Error> {
    Ok(saturation::line_of(refrigerant))
}

macro_rules! any_bits {
    ($($name:ident: $line:ident.$method:ident($first:expr, $second:expr);)*) => {$(
        #[test]
        fn $name() {
            try_all($first, $second, |refrigerant, a, b| {
                sound($line(refrigerant).and_then(|line| line.$method(a, b, Reference::Iir)), (refrigerant, a, b));
            });
        }
    )*};
}

any_bits! {
    temperature_and_pressure: any.state_tp(T, P);
    temperature_and_density: any.state_t_rho(T, RHO);
    temperature_and_quality: any.state_tq(T, X);
    pressure_and_quality: any.state_pq(P, X);
    pressure_and_enthalpy: any.state_ph(P, H);
    pressure_and_entropy: any.state_ps(P, S);
    enthalpy_and_entropy: any.state_hs(H, S);
    superheated_liquid: pure.superheated_liquid(T, P);
    subcooled_vapour: pure.subcooled_vapour(T, P);
}

#[test]
fn the_saturation_line() {
    try_all(T, P, |refrigerant, t_k, p_pa| {
        let line = saturation::line_of(refrigerant);
        let given = (refrigerant, t_k, p_pa);
        states::saturated(refrigerant, t_k, p_pa);
        let Line::Pure(pure) = line else { return };
        for branch in [pure.liquid(t_k), pure.vapour(t_k)] {
            match branch {
                Ok(SaturatedPhase {
                    rho_mol_m3,
                    h_j_kg,
                    s_j_kg_k,
                }) => assert!(
                    rho_mol_m3 > 0.0 && h_j_kg.is_finite() && s_j_kg_k.is_finite(),
                    "{given:?}"
                ),
                Err(error) => typed(error, given),
            }
        }
    });
}

/// Every element of an array is a value or NaN, and the refusal counts the NaN and says why the first one is one.
#[test]
fn arrays() {
    const LENGTH: usize = 1_000;
    let mut random = Random(0x2545_f491_4f6c_dd1d);
    let (mut t_k, mut p_pa, mut found) = ([0.0; LENGTH], [0.0; LENGTH], [0.0; LENGTH]);
    for _ in 0..inputs().div_ceil(LENGTH as u64) {
        let refrigerant = Refrigerant::ALL[(random.bits() % Refrigerant::ALL.len() as u64) as usize];
        t_k.fill_with(|| random.number(T.0, T.1));
        p_pa.fill_with(|| random.number(P.0, P.1));
        for (fill, from) in [
            (saturation::bubble_pressures_pa as Fill, &t_k),
            (saturation::dew_pressures_pa, &t_k),
            (saturation::bubble_temperatures_k, &p_pa),
            (saturation::dew_temperatures_k, &p_pa),
        ] {
            let told = fill(refrigerant, from, &mut found);
            let first = found.iter().position(|x| x.is_nan());
            assert!(found.iter().all(|x| !x.is_infinite()), "{refrigerant}");
            let missing = told.err().map(|told| {
                typed(told.error, (refrigerant, from[told.first], f64::NAN));
                (told.count, told.first)
            });
            let count = found.iter().filter(|x| x.is_nan()).count();
            assert_eq!(missing, first.map(|first| (count, first)), "{refrigerant}");
        }
    }
}

type Fill = fn(Refrigerant, &[f64], &mut [f64]) -> Result<(), saturation::Unanswered>;
