//! Saturation curves: equilibria in extended precision, fitted by pieces, each piece checked.

use crate::double::Double;
use crate::equilibrium::{self, Critical, Equilibrium};
use crate::line::Line;
use crate::root::root_between;
use coldloop::inner::fluid::Equation;
use coldloop::inner::numerics::{Curve, PIECE, Piece, Real};
use std::f64::consts::PI;

/// Nodes of the master interpolation in each cell.
const NODES: usize = 22;
/// What a piece may differ from the equilibria, relative to the value (or to R T_c / M for an energy).
const TOLERANCE: f64 = 8e-16;
/// What it may differ where even one cell alone does not meet the tolerance; beyond this nothing is written.
const LIMIT: f64 = 8e-15;
/// The same in the cell next to the critical point, above 0.9999 T_c in densities, where the equilibria themselves lose
/// their digits.
const NEAR_LIMIT: f64 = 1e-11;
/// The same there for an equation with non-analytic terms, whose densities go as a power of s that no polynomial
/// follows; in the innermost bin they are only as good as that power is known.
const OPEN_LIMIT: f64 = 1e-8;

/// Everything that is committed of a fluid's saturation line.
pub(crate) struct Saturation {
    pub(crate) critical: Critical,
    /// Pressure over temperature.
    pub(crate) pressure: Fitted,
    /// Temperature over the logarithm of pressure.
    pub(crate) temperature: Fitted,
    /// Densities and enthalpies of both phases and the entropy of the liquid over s = sqrt(1 - T / T_c): name and curve.
    pub(crate) branches: Vec<(&'static str, Fitted)>,
    /// What each reference state adds to enthalpy and entropy: name and value, `None` where the state is not liquid.
    pub(crate) offsets: Vec<(&'static str, Option<Offset>)>,
}

/// Enthalpy and entropy to be added to those with the constants of the paper.
#[derive(Debug)]
#[allow(dead_code)] // read by its Debug form
pub(crate) struct Offset {
    h_j_kg: f64,
    s_j_kg_k: f64,
}

/// A curve with the greatest error that its check found.
pub(crate) struct Fitted {
    pub(crate) start: f64,
    pub(crate) density: f64,
    pub(crate) halves: [u8; Curve::HALVES],
    pub(crate) cells: [u8; Curve::CELLS],
    pub(crate) pieces: Vec<Piece>,
    pub(crate) error: f64,
}

impl Fitted {
    /// The curve as the library will have it.
    pub(crate) fn curve(&self) -> Curve {
        Curve {
            start: self.start,
            density: self.density,
            halves: self.halves,
            cells: self.cells,
            pieces: Vec::leak(self.pieces.clone()),
        }
    }
}

/// A quantity along the saturation line: its name, how it is read off an equilibrium, and the scale its error is
/// measured by (0 for its own value).
type SaturatedPhase = (&'static str, fn(&Equilibrium) -> Double, bool);

const BRANCHES: [SaturatedPhase; 5] = [
    ("liquid_rho_mol_m3", |e| e.liquid_rho_mol_m3, true),
    ("vapour_rho_mol_m3", |e| e.vapour_rho_mol_m3, true),
    ("liquid_h_j_kg", |e| e.liquid_h_j_mol, false),
    ("vapour_h_j_kg", |e| e.vapour_h_j_mol, false),
    ("liquid_s_j_kg_k", |e| e.liquid_s_j_mol_k, false),
];

/// Fits all curves of `equation` from its lowest temperature to its critical point.
pub(crate) fn fit(equation: &'static Equation, lowest_t_k: f64) -> Result<Saturation, String> {
    let critical = equilibrium::critical(equation)?;
    let line = Line::trace(equation, critical, lowest_t_k)?;
    let gas = Double::from_f64(equation.gas_constant);
    let molar_mass = Double::from_f64(equation.molar_mass);
    let lowest = Double::from_f64(lowest_t_k);

    // How often the first cell is halved: the critical region has a scale of 1e-3 in s, 1e-6 in T.
    let open_ended = !equation.non_analytic.is_empty();
    let (straight, bent) = (if open_ended { Curve::HALVES } else { 8 }, Curve::HALVES);
    let by_temperature = Master::new(critical.t_k.to_f64(), lowest_t_k, bent, open_ended, |t| {
        line.at(line.s_of_t(t)).map(|e| [e.p_pa])
    })?;
    let pressure = fit_curve(&by_temperature, |v| v[0], None, "pressure_pa")?;
    let end = line.s_of_t(lowest).to_f64();
    let by_s = Master::new(0.0, end, straight, open_ended, |s| {
        let equilibrium = line.at(s)?;
        Ok(BRANCHES.map(|(_, read, _)| read(&equilibrium)))
    })?;
    let mut branches = Vec::new();
    for (k, (name, _, own_scale)) in BRANCHES.into_iter().enumerate() {
        let scale = gas / molar_mass
            * if name.contains("_h_") {
                critical.t_k
            } else {
                Double::from_f64(1.0)
            };
        let fitted = if own_scale {
            fit_curve(&by_s, |v| v[k], None, name)?
        } else {
            fit_curve(&by_s, |v| v[k] / molar_mass, Some(scale.to_f64()), name)?
        };
        branches.push((name, fitted));
    }

    let low = by_temperature.at(lowest)[0].logarithm().to_f64();
    let high = critical.p_pa.logarithm().to_f64();
    let by_log = Master::new(high, low, bent, open_ended, |log| {
        Ok([invert(&by_temperature, log, lowest, critical.t_k)])
    })?;
    let temperature = fit_curve(&by_log, |v| v[0], None, "temperature_k")?;
    let normal_boiling = Double::from_f64(101_325.0).logarithm();
    let normal_boiling = if normal_boiling.to_f64() > low {
        Some(invert(&by_temperature, normal_boiling, lowest, critical.t_k))
    } else {
        None
    };
    let number = Double::from_f64;
    let offset = |t_k: Option<Double>, h_j_kg: f64, s_j_kg_k: f64| {
        let t_k = t_k.filter(|t| *t >= lowest && *t < critical.t_k)?;
        let liquid = by_s.at(line.s_of_t(t_k));
        Some(Offset {
            h_j_kg: (number(h_j_kg) - liquid[2] / molar_mass).to_f64(),
            s_j_kg_k: (number(s_j_kg_k) - liquid[4] / molar_mass).to_f64(),
        })
    };
    Ok(Saturation {
        offsets: vec![
            ("iir", offset(Some(number(273.15)), 200_000.0, 1_000.0)),
            ("ashrae", offset(Some(number(233.15)), 0.0, 0.0)),
            ("normal_boiling_point", offset(normal_boiling, 0.0, 0.0)),
        ],
        critical,
        pressure,
        temperature,
        branches,
    })
}

/// The temperature at which ln p is `log`.
fn invert(pressure: &Master<1>, log: Double, low: Double, high: Double) -> Double {
    root_between(low, high, 20, |t| pressure.at(t)[0].logarithm() - log)
}

/// Values in extended precision, interpolated over each bin at its Chebyshev nodes; the pieces are fitted to it and
/// checked against it. The bins are the cells of a curve, the first one halved `depth - 1` times.
struct Master<const N: usize> {
    start: f64,
    width: f64,
    depth: usize,
    /// Whether the innermost bin may miss the limit.
    open_ended: bool,
    bins: Vec<[Node<N>; NODES]>,
}

/// Where a bin is interpolated: the argument, its barycentric weight, the values.
#[derive(Clone, Copy)]
struct Node<const N: usize> {
    x: Double,
    weight: Double,
    values: [Double; N],
}

impl<const N: usize> Master<N> {
    fn new(
        start: f64,
        end: f64,
        depth: usize,
        open_ended: bool,
        value: impl Fn(Double) -> Result<[Double; N], String>,
    ) -> Result<Self, String> {
        let number = Double::from_f64;
        let mut master = Self {
            start,
            width: (end - start) / Curve::CELLS as f64,
            depth,
            open_ended,
            bins: Vec::new(),
        };
        for bin in 0..master.bin_count() {
            let (low, high) = master.bounds(bin);
            // Equilibria lose their digits close to the critical point: the innermost bin takes the point itself and
            // keeps away from its neighbourhood, over which its polynomial carries. No polynomial carries over a power
            // of s: there the densities themselves go on to the point.
            let carries = bin == 0 && !(open_ended && start == 0.0);
            let inner = if carries { low + 0.1 * (high - low) } else { low };
            let mut xs: [f64; NODES] =
                std::array::from_fn(|k| 0.5 * (inner + high) + 0.5 * (high - inner) * chebyshev_node(k, NODES));
            if bin == 0 {
                xs[NODES - 1] = low;
            }
            let mut nodes = [Node {
                x: number(0.0),
                weight: number(1.0),
                values: [number(0.0); N],
            }; NODES];
            for (k, node) in nodes.iter_mut().enumerate() {
                node.x = number(xs[k]);
                node.values = value(node.x)?;
                for &other in xs.iter().filter(|&&other| other != xs[k]) {
                    node.weight = node.weight * number(high - low) / (node.x - number(other));
                }
            }
            master.bins.push(nodes);
        }
        Ok(master)
    }

    fn bin_count(&self) -> usize {
        Curve::CELLS - 1 + self.depth
    }

    /// The ends of a bin; the first bin touches the start.
    fn bounds(&self, bin: usize) -> (f64, f64) {
        let edge = |bin: usize| match bin {
            0 => 0.0,
            inner if inner < self.depth => 0.5f64.powi((self.depth - inner) as i32),
            outer => (outer + 1 - self.depth) as f64,
        };
        (
            self.start + self.width * edge(bin),
            self.start + self.width * edge(bin + 1),
        )
    }

    fn bin(&self, x: f64) -> usize {
        let place = (x - self.start) / self.width;
        if place < 1.0 {
            return (1..self.depth)
                .filter(|&bin| place >= 0.5f64.powi((self.depth - bin) as i32))
                .count();
        }
        (place as usize - 1 + self.depth).min(self.bin_count() - 1)
    }

    /// The values at `x`, by the barycentric formula.
    fn at(&self, x: Double) -> [Double; N] {
        let number = Double::from_f64;
        let mut top = [number(0.0); N];
        let mut bottom = number(0.0);
        for node in &self.bins[self.bin(x.to_f64())] {
            let off = x - node.x;
            if off.to_f64() == 0.0 {
                return node.values;
            }
            let weight = node.weight / off;
            bottom = bottom + weight;
            for (sum, value) in top.iter_mut().zip(&node.values) {
                *sum = *sum + weight * *value;
            }
        }
        top.map(|sum| sum / bottom)
    }
}

fn chebyshev_node(k: usize, count: usize) -> f64 {
    (PI * (k as f64 + 0.5) / count as f64).cos()
}

/// Joins bins into the longest pieces that stay within the tolerance.
fn fit_curve<const N: usize>(
    master: &Master<N>,
    read: impl Fn(&[Double; N]) -> Double,
    scale: Option<f64>,
    name: &str,
) -> Result<Fitted, String> {
    let value = |x: Double| read(&master.at(x));
    let mut fitted = Fitted {
        start: master.start,
        density: 1.0 / master.width,
        halves: [0; Curve::HALVES],
        cells: [0; Curve::CELLS],
        pieces: Vec::new(),
        error: 0.0,
    };
    let mut first = 0;
    while first < master.bin_count() {
        let fit = |last: usize| fit_piece(master.bounds(first).0, master.bounds(last).1, &value, scale);
        let mut last = first;
        let (mut piece, mut error) = fit(last);
        while error <= TOLERANCE && last + 1 < master.bin_count() {
            let (longer, longer_error) = fit(last + 1);
            if longer_error > TOLERANCE {
                break;
            }
            (piece, error, last) = (longer, longer_error, last + 1);
        }
        let index = u8::try_from(fitted.pieces.len()).map_err(|e| format!("{name}: {e}"))?;
        if (first..=last).contains(&(master.depth - 1)) {
            fitted.cells[0] = index; // the outer half of the first cell touches the second
        }
        for bin in first..=last {
            if bin >= master.depth {
                fitted.cells[bin + 1 - master.depth] = index;
            } else {
                fitted.halves[master.depth - 1 - bin] = index;
            }
        }
        let limit = match (last, master.open_ended) {
            (0, true) => f64::INFINITY,
            (near, true) if near <= master.depth => OPEN_LIMIT,
            (near, false) if near <= master.depth => NEAR_LIMIT,
            _ => LIMIT,
        };
        if error > limit {
            let (from, to) = (master.bounds(first).0, master.bounds(last).1);
            return Err(format!("{name}: the piece from {from} to {to} is off by {error:.1e}"));
        }
        fitted.error = fitted.error.max(error);
        fitted.pieces.push(piece);
        first = last + 1;
    }
    Ok(fitted)
}

/// The polynomial through the Chebyshev nodes of an interval, and its greatest error at points between them.
fn fit_piece(start: f64, end: f64, value: &impl Fn(Double) -> Double, scale: Option<f64>) -> (Piece, f64) {
    let number = Double::from_f64;
    let middle = 0.5 * (start + end);
    let piece_scale = 2.0 / (end - start).abs();
    let at = |y: f64| number(middle) + number(y) / number(piece_scale);
    let nodes: Vec<f64> = (0..PIECE).map(|k| chebyshev_node(k, PIECE)).collect();
    let values: Vec<Double> = nodes.iter().map(|&y| value(at(y))).collect();
    // Newton's divided differences, then multiplied out.
    let mut differences = values;
    for order in 1..PIECE {
        for k in (order..PIECE).rev() {
            differences[k] = (differences[k] - differences[k - 1]) / (number(nodes[k]) - number(nodes[k - order]));
        }
    }
    let mut powers = [number(0.0); PIECE];
    for k in (0..PIECE).rev() {
        for power in (1..PIECE).rev() {
            powers[power] = powers[power - 1] - powers[power] * number(nodes[k]);
        }
        powers[0] = differences[k] - powers[0] * number(nodes[k]);
    }
    // From a polynomial in y to one in x - middle.
    let mut factor = number(1.0);
    for power in &mut powers {
        *power = *power * factor;
        factor = factor * number(piece_scale);
    }
    let piece = Piece {
        middle,
        coefficients: powers.map(Real::to_f64),
    };
    let mut error: f64 = 0.0;
    for k in 0..=32 {
        let off = number((PI * f64::from(k) / 32.0).cos()) / number(piece_scale);
        let exact = value(number(middle) + off);
        let found = (piece.coefficients.iter().rev()).fold(number(0.0), |sum, &c| sum * off + number(c));
        let off = (found - exact).to_f64().abs();
        error = error.max(off / (exact.to_f64().abs() + scale.unwrap_or(0.0)));
    }
    (piece, error)
}
