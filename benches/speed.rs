//! Nanoseconds per call of the hot paths, one line each: `what|refrigerant|ns`. `benches/compare.py` reads them beside a peer.
//!
//! Each figure is the least of several passes, so that a busy machine disturbs least. `cargo test` runs one short pass.

#[allow(dead_code)] // other programs use the rest
mod paths;

use coldloop::diagnosis::{Settings, diagnose};
use coldloop::{Refrigerant, intake};
use std::hint::black_box;
use std::time::Instant;

fn main() {
    let passes = if std::env::args().any(|argument| argument == "--bench") {
        200
    } else {
        1
    };
    for path in Refrigerant::ALL.into_iter().flat_map(paths::of) {
        measure(path.what, path.refrigerant.id(), passes, paths::INPUTS, path.pass);
    }
    let file = include_str!("../examples/readings/worn-compressor.toml");
    match intake::case_from_toml(file) {
        Ok(case) => measure("diagnosis", "R-134a", passes, 100, || {
            let odds = |_| diagnose(&case, &Settings::default()).map_or(f64::NAN, |answer| answer.none_of_these);
            (0..100).map(odds).sum()
        }),
        Err(refusal) => eprintln!("{refusal}"),
    }
}

fn measure(what: &str, refrigerant: &str, passes: usize, calls: usize, mut pass: impl FnMut() -> f64) {
    let mut least = f64::INFINITY;
    for _ in 0..passes {
        let began = Instant::now();
        black_box(pass());
        least = least.min(began.elapsed().as_secs_f64() * 1e9 / calls as f64);
    }
    println!("{what}|{refrigerant}|{least:.1}");
}
