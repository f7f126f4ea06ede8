//! The saturation line of a fluid in extended precision, at any temperature up to the critical point.

use crate::double::Double;
use crate::equilibrium::{self, Critical, Equilibrium};
use coldloop::inner::eos::Isotherm;
use coldloop::inner::fluid::Equation;
use coldloop::inner::numerics::Real;

/// The saturation line, traced from a safe point in both directions, to start Newton's method anywhere on it.
pub(crate) struct Line {
    equation: &'static Equation,
    critical: Critical,
    /// (s, liquid density, ln vapour density), s rising.
    trace: Vec<(f64, f64, f64)>,
}

impl Line {
    const STEPS: usize = 400;
    const HALVINGS: usize = 7;
    /// The same where the densities go as a power of s that no polynomial follows; this leads below the last digit of T.
    const OPEN_HALVINGS: usize = 17;

    pub(crate) fn trace(equation: &'static Equation, critical: Critical, lowest_t_k: f64) -> Result<Self, String> {
        let mut line = Self {
            equation,
            critical,
            trace: Vec::new(),
        };
        let end = line.s_of_t(Double::from_f64(lowest_t_k)).to_f64();
        let grid = |k: usize| end * k as f64 / Self::STEPS as f64;
        let middle = (1..Self::STEPS).find(|&k| grid(k) > 0.3).unwrap_or(Self::STEPS / 2);
        // Densities by corresponding states, after Guggenheim, J. Chem. Phys. 13 (1945) 253, doi 10.1063/1.1724033
        let first = |s: f64| {
            let (straight, bent) = (0.75 * s * s, 1.75 * s.powf(2.0 / 3.0));
            let rho = critical.rho_mol_m3.to_f64();
            (rho * (1.0 + straight + bent), (rho * (1.0 + straight - bent)).ln())
        };
        let (liquid, vapour) = first(grid(middle));
        let mut up = vec![line.point(grid(middle), liquid, vapour)?];
        for k in middle + 1..=Self::STEPS {
            let next = ahead(&up, grid(k));
            up.push(line.point(grid(k), next.0, next.1)?);
        }
        let mut down = vec![up[1], up[0]];
        for k in (1..middle).rev() {
            let next = ahead(&down, grid(k));
            down.push(line.point(grid(k), next.0, next.1)?);
        }
        // On towards the critical point by halves of s, which itself stands at the end of every parabola.
        let rho = critical.rho_mol_m3.to_f64();
        let point = (0.0, rho, rho.ln());
        let open = !equation.non_analytic.is_empty();
        for _ in 0..if open { Self::OPEN_HALVINGS } else { Self::HALVINGS } {
            let near = [down[down.len() - 2], down[down.len() - 1], point];
            let s = 0.5 * near[1].0;
            let next = if open {
                let two = [near[0], near[1]];
                (
                    go_on(s, rho, two.map(|p| (p.0, p.1))),
                    go_on(s, rho, two.map(|p| (p.0, p.2.exp()))).ln(),
                )
            } else {
                ahead(&near, s)
            };
            match line.point(s, next.0, next.1) {
                Ok(found) => down.push(found),
                Err(_) if open => break,
                Err(error) => return Err(error),
            }
        }
        line.trace.push(point);
        line.trace.extend(down[2..].iter().rev());
        line.trace.extend(up);
        Ok(line)
    }

    fn point(&self, s: f64, liquid: f64, log_vapour: f64) -> Result<(f64, f64, f64), String> {
        let number = Double::from_f64;
        let t = self.t_of_s(number(s));
        let found = equilibrium::equilibrium(self.equation, t, number(liquid), number(log_vapour.exp()))?;
        Ok((
            s,
            found.liquid_rho_mol_m3.to_f64(),
            found.vapour_rho_mol_m3.to_f64().ln(),
        ))
    }

    pub(crate) fn s_of_t(&self, t: Double) -> Double {
        ((self.critical.t_k - t) / self.critical.t_k).square_root()
    }

    fn t_of_s(&self, s: Double) -> Double {
        self.critical.t_k - self.critical.t_k * s * s
    }

    /// The equilibrium at `s`, started by a parabola through the three nearest traced points.
    pub(crate) fn at(&self, s: Double) -> Result<Equilibrium, String> {
        let at = s.to_f64();
        if at < 1e-8 {
            let isotherm = Isotherm::new(self.equation, self.critical.t_k);
            return Ok(equilibrium::both(
                &isotherm,
                self.critical.rho_mol_m3,
                self.critical.rho_mol_m3,
            ));
        }
        if !self.equation.non_analytic.is_empty() && at < self.trace[1].0 {
            return self.beyond(s);
        }
        let place = self
            .trace
            .partition_point(|point| point.0 < at)
            .clamp(2, self.trace.len() - 1);
        let three = &self.trace[place - 2..=place];
        let liquid = parabola(at, three.iter().map(|p| (p.0, p.1)));
        let vapour = parabola(at, three.iter().map(|p| (p.0, p.2)));
        let number = Double::from_f64;
        equilibrium::equilibrium(self.equation, self.t_of_s(s), number(liquid), number(vapour.exp()))
    }

    /// Closer to the critical point than equilibria can be found: the densities go on by the power of s that they
    /// have between the last two points found.
    fn beyond(&self, s: Double) -> Result<Equilibrium, String> {
        let near = [self.trace[2], self.trace[1]];
        let rho = self.critical.rho_mol_m3.to_f64();
        let densities = [
            go_on(s.to_f64(), rho, near.map(|p| (p.0, p.1))),
            go_on(s.to_f64(), rho, near.map(|p| (p.0, p.2.exp()))),
        ];
        let isotherm = Isotherm::new(self.equation, self.t_of_s(s));
        let [liquid, vapour] = densities.map(Double::from_f64);
        Ok(equilibrium::both(&isotherm, liquid, vapour))
    }
}

/// The density at `s` by the power of s that it is away from the critical density in two points (s, density).
fn go_on(s: f64, critical: f64, [far, near]: [(f64, f64); 2]) -> f64 {
    let power = ((far.1 - critical) / (near.1 - critical)).ln() / (far.0 / near.0).ln();
    critical + (near.1 - critical) * (s / near.0).powf(power)
}

/// The next point of a trace, on the parabola through the last three (or the line through fewer).
fn ahead(trace: &[(f64, f64, f64)], s: f64) -> (f64, f64) {
    let last = &trace[trace.len().saturating_sub(3)..];
    (
        parabola(s, last.iter().map(|p| (p.0, p.1))),
        parabola(s, last.iter().map(|p| (p.0, p.2))),
    )
}

/// The polynomial through the given points, by Lagrange's formula.
fn parabola(x: f64, points: impl Iterator<Item = (f64, f64)> + Clone) -> f64 {
    let term = |(at, value): (f64, f64)| {
        let others = points.clone().filter(|other| other.0 != at);
        others.fold(value, |product, other| product * (x - other.0) / (at - other.0))
    };
    points.clone().map(term).sum()
}
