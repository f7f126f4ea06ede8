//! Clouds in whole numbers, as Rust.

use super::em::Part;
use super::{Cloud, X, Y};

/// Units of the table; `src/diagnosis/part.rs` has the same.
const STEP: [f64; Y] = [0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 1e-3, 1e-4];
const CENTRE_STEP: f64 = 1.0 / 32.0;
const WIDTH_STEP: f64 = 1.0 / 64.0;

const HEADER: &str = "//! Clouds of simulated vehicles, fitted to the vehicle model.\n//!\n\
    //! Generated from the vehicle model by `cargo run --release -p tables-compile -- --fit-clouds`; edit the fit, not this\n//! file.\n\n\
    use super::part::Part;\nuse crate::names::Fault;\n\n\
    /// The parts of every kind of system: expansion device by compressor, in the order of their codes.\n\
    pub(super) static CLOUDS: [&[Part]; 8] = [\n";

/// The file.
pub(crate) fn rust(kinds: &[Vec<Cloud>]) -> String {
    let mut source = HEADER.to_string();
    for clouds in kinds {
        source += "&[\n";
        for cloud in clouds {
            for part in &cloud.parts {
                source += &format!("Part {{ fault: Fault::{:?}, {} }},\n", cloud.fault, fields(part));
            }
        }
        source += "],\n";
    }
    source + "];\n"
}

fn fields(part: &Part<X, Y>) -> String {
    let whole = |value: f64, unit: f64, least: f64, most: f64| (value / unit).round().clamp(least, most) as i64;
    let spread: [f64; Y] = std::array::from_fn(|i| part.covariance[i][i].sqrt());
    let steepest = part.slope.map(|row| row.into_iter().map(f64::abs).fold(0.0, f64::max));
    let slope: Vec<Vec<i64>> = part
        .slope
        .iter()
        .zip(steepest)
        .map(|(row, most)| {
            row.iter()
                .map(|s| whole(*s, most.max(1e-9) / 127.0, -127.0, 127.0))
                .collect()
        })
        .collect();
    let mut correlation = Vec::new();
    for i in 0..Y {
        for k in 0..i {
            let r = part.covariance[i][k] / (spread[i] * spread[k]);
            correlation.push(whole(r, 1.0 / 32_767.0, -32_767.0, 32_767.0));
        }
    }
    let list = |values: Vec<i64>| format!("{values:?}");
    format!(
        "weight: {}, centre: {}, width: {}, at: {}, steepest: {}, slope: {slope:?}, spread: {}, correlation: {}",
        whole(part.share, 1.0 / 65_535.0, 1.0, 65_535.0),
        list(
            part.centre
                .iter()
                .map(|c| whole(*c, CENTRE_STEP, -127.0, 127.0))
                .collect()
        ),
        list(part.width.iter().map(|w| whole(*w, WIDTH_STEP, 1.0, 255.0)).collect()),
        list(
            (0..Y)
                .map(|i| whole(part.at[i], STEP[i], -32_767.0, 32_767.0))
                .collect()
        ),
        list((0..Y).map(|i| whole(steepest[i], STEP[i], 0.0, 65_535.0)).collect()),
        list((0..Y).map(|i| whole(spread[i], STEP[i], 0.0, 65_535.0)).collect()),
        list(correlation),
    )
}
