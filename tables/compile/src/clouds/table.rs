//! Clouds in whole numbers, as Rust: the parts of each kind of system many side by side.

use super::em::Part;
use super::{Cloud, X, Y};

/// Parts that stand side by side; `src/diagnosis/lanes.rs` has the same.
pub(super) const LANES: usize = 32;

/// Units of the table; `src/diagnosis/part.rs` has the same.
const STEP: [f64; Y] = [0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 1e-3, 1e-4];
const CENTRE_STEP: f64 = 1.0 / 32.0;
const WIDTH_STEP: f64 = 1.0 / 64.0;

const HEADER: &str = "//! Clouds of simulated vehicles, fitted to the vehicle model.\n//!\n\
    //! Generated from the vehicle model by `cargo run --release -p tables-compile -- --fit-clouds`; edit the fit, not this\n//! file.\n\n\
    use super::part::Parts;\nuse crate::names::Fault;\n\n\
    /// The parts of every kind of system, many side by side: expansion device by compressor, in the order of their codes,\n/// and R-744 by expansion device.\n\
    pub(super) static CLOUDS: [&[Parts]; 10] = [\n";

/// The file.
pub(crate) fn rust(kinds: &[Vec<Cloud>]) -> String {
    let mut source = HEADER.to_string();
    for clouds in kinds {
        let parts: Vec<Whole> = clouds
            .iter()
            .flat_map(|cloud| {
                cloud
                    .parts
                    .iter()
                    .map(|part| Whole::of(&format!("Fault::{:?}", cloud.fault), part))
            })
            .collect();
        source += "&[\n";
        for some in parts.chunks(LANES) {
            source += &side_by_side(some);
        }
        source += "],\n";
    }
    source + "];\n"
}

/// A part in whole numbers.
struct Whole {
    fault: String,
    weight: i64,
    /// By the name of the field, what stands there.
    rows: Vec<(&'static str, Vec<i64>)>,
    slope: Vec<Vec<i64>>,
}

impl Whole {
    fn of(fault: &str, part: &Part<X, Y>) -> Self {
        let spread: [f64; Y] = std::array::from_fn(|i| part.covariance[i][i].sqrt());
        let steepest = part.slope.map(|row| row.into_iter().map(f64::abs).fold(0.0, f64::max));
        let pairs = (0..Y).flat_map(|i| (0..i).map(move |k| (i, k)));
        let correlations = pairs.map(|(i, k)| part.covariance[i][k] / (spread[i] * spread[k]));
        let each =
            |values: &[f64], unit: f64, least, most| values.iter().map(|v| whole(*v, unit, least, most)).collect();
        let stepped = |values: [f64; Y], least| {
            (0..Y)
                .map(|i| whole(values[i], STEP[i], least, least + 65_535.0))
                .collect()
        };
        let slope = part.slope.iter().zip(steepest);
        Self {
            fault: fault.to_string(),
            weight: whole(part.share, 1.0 / 65_535.0, 1.0, 65_535.0),
            slope: slope
                .map(|(row, most)| each(row, most.max(1e-9) / 127.0, -127.0, 127.0))
                .collect(),
            rows: vec![
                ("centre", each(&part.centre, CENTRE_STEP, -127.0, 127.0)),
                ("width", each(&part.width, WIDTH_STEP, 1.0, 255.0)),
                ("at", stepped(part.at, -32_768.0)),
                ("steepest", stepped(steepest, 0.0)),
                ("spread", stepped(spread, 0.0)),
                (
                    "correlation",
                    correlations
                        .map(|r| whole(r, 1.0 / 32_767.0, -32_767.0, 32_767.0))
                        .collect(),
                ),
            ],
        }
    }
}

/// A part as the table holds it.
pub(super) fn rounded(part: &Part<X, Y>) -> Part<X, Y> {
    let whole = Whole::of("", part);
    let row = |name: &str| {
        whole
            .rows
            .iter()
            .find(|(of, _)| *of == name)
            .map_or(&[][..], |(_, row)| row)
    };
    let stepped = |name: &str| -> [f64; Y] { std::array::from_fn(|i| STEP[i] * row(name)[i] as f64) };
    let (spread, steepest, correlation) = (stepped("spread"), stepped("steepest"), row("correlation"));
    let mut covariance = [[0.0; Y]; Y];
    for i in 0..Y {
        for k in 0..i {
            covariance[i][k] = correlation[i * (i - 1) / 2 + k] as f64 / 32_767.0 * spread[i] * spread[k];
        }
        covariance[i][i] = spread[i] * spread[i];
    }
    Part {
        share: whole.weight as f64 / 65_535.0,
        centre: std::array::from_fn(|j| CENTRE_STEP * row("centre")[j] as f64),
        width: std::array::from_fn(|j| WIDTH_STEP * row("width")[j] as f64),
        at: stepped("at"),
        slope: std::array::from_fn(|i| std::array::from_fn(|j| steepest[i] / 127.0 * whole.slope[i][j] as f64)),
        covariance,
    }
}

fn whole(value: f64, unit: f64, least: f64, most: f64) -> i64 {
    (value / unit).round().clamp(least, most) as i64
}

/// Up to [`LANES`] parts, the last of them again where there are fewer, but without weight.
fn side_by_side(parts: &[Whole]) -> String {
    let lane = |lane: usize| &parts[lane.min(parts.len() - 1)];
    let across = |of: &dyn Fn(&Whole) -> i64| -> Vec<i64> { (0..LANES).map(|l| of(lane(l))).collect() };
    let weight: Vec<i64> = (0..LANES).map(|l| parts.get(l).map_or(0, |part| part.weight)).collect();
    let faults: Vec<&str> = (0..LANES).map(|l| lane(l).fault.as_str()).collect();
    let mut source = format!("Parts {{ fault: [{}], weight: {weight:?}, ", faults.join(", "));
    for (n, (name, values)) in parts[0].rows.iter().enumerate() {
        let rows: Vec<Vec<i64>> = (0..values.len()).map(|i| across(&|part| part.rows[n].1[i])).collect();
        source += &format!("{name}: {rows:?}, ");
    }
    let slopes = (0..Y).map(|i| (0..X).map(|j| across(&|part| part.slope[i][j])).collect());
    let slopes: Vec<Vec<Vec<i64>>> = slopes.collect();
    source + &format!("slope: {slopes:?} }},\n")
}
