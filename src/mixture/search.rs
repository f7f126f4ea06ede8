//! Bubble and dew points of any composition at a temperature or a pressure, without a guess from the caller.
//!
//! First a start at a temperature at which the vapour is thin: there the chemical potentials in the liquid give the vapour
//! directly, without Raoult's law. Then Newton's method; where that fails or the answer lies near the critical point, the line
//! is followed from a colder start, and what is fixed moves in steps that halve where they are too long. A line that ends
//! before it gets there ends in a critical point.

use super::MOST_COMPONENTS;
use super::density::Root;
use super::incipient::{Fixed, Incipient, filled};
use super::phase::{Mixture, Vector};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use crate::numerics::GAS_J_MOL_K;
use crate::range::Range;

/// The temperatures at which mixtures are asked for: those of lines. Below, the equations of some components leave the
/// range in which they were made; above, no charge boils.
pub const TEMPERATURES: Range = crate::range::LINE_TEMPERATURE;

/// The pressures of points; vacuum is not among them.
const PRESSURES: Range = Range::new(Quantity::AbsolutePressure, 1e-6, 1e9);

/// A start is trusted up to this share of the reducing temperature.
const COOL: f64 = 0.85;
/// Where lines are followed from, as shares of the reducing temperature.
const STARTS: [f64; 3] = [0.8, 0.7, 0.55];
/// The longest and the shortest step along a line, in ln T, and the factor on them in ln p.
const LONGEST: f64 = 0.08;
const SHORTEST: f64 = 3e-4;
const STEEPNESS: f64 = 8.0;
const MOST_STEPS: usize = 200;
/// A line turns in pressure where ln p changes less than `FLAT` as fast as ln T, over `BESIDE` to both sides; elsewhere it
/// changes about ten times as fast.
const BESIDE: f64 = 1e-3;
const FLAT: f64 = 0.5;
/// A vapour thinner than this share of the reducing density is taken for an ideal gas to start from.
const THIN: f64 = 0.05;
/// Rounds of successive substitution where it is not.
const THICKENINGS: usize = 8;
/// Phases whose densities differ by less than this, in the logarithm, are near a critical point.
const NEARLY_ONE: f64 = 0.7;

/// Which phase has the composition asked for.
///
/// ```
/// use coldloop::{Refrigerant, saturation::{self, Side}};
/// let blend = saturation::line_of(Refrigerant::R407C);
/// assert!(blend.pressure_pa(Side::Bubble, 280.0)? > blend.pressure_pa(Side::Dew, 280.0)?);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The liquid: bubble points.
    Bubble,
    /// The vapour: dew points.
    Dew,
}

impl Mixture<f64> {
    /// The bubble or dew point of the mole fractions `z` (above zero, of sum one) at a temperature or pressure.
    ///
    /// Of two points at one temperature or pressure (a line may turn back) the one of the lower temperature is found, or,
    /// at a temperature, the one of the lower pressure.
    ///
    /// Method: see the head of this module.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside [`TEMPERATURES`], and with the temperature or pressure at which the line
    /// ends, where it ends in a critical point, turns, or meets the lowest temperature before it reaches what is fixed;
    /// `NoConvergence` with the residual.
    pub fn point(&self, z: &[f64], side: Side, fixed: Fixed<f64>) -> Result<Incipient<f64>, Error> {
        let reducing_t_k = self.reducing_t_k(z);
        let about_t_k = match fixed {
            Fixed::Temperature(t_k) => TEMPERATURES.check(t_k)?,
            Fixed::Pressure(p_pa) => {
                let p_pa = PRESSURES.check(p_pa)?;
                f64::max(self.about_t_k(z, side, p_pa), TEMPERATURES.low)
            }
        };
        let mut error = Error::no_convergence(f64::INFINITY, 0.0);
        if about_t_k < COOL * reducing_t_k {
            let found = self
                .start(z, side, about_t_k)
                .and_then(|start| self.incipient(z, fixed, &start));
            match found {
                Ok(point) if point.t_k >= TEMPERATURES.low => return Ok(point),
                Ok(_) => {}
                Err(failure) => error = failure,
            }
        }
        for share in STARTS {
            let t_k = f64::max(f64::min(share * reducing_t_k, about_t_k), TEMPERATURES.low);
            let first = self
                .start(z, side, t_k)
                .and_then(|start| self.incipient(z, Fixed::Temperature(t_k), &start));
            match first.and_then(|first| self.follow(z, &first, fixed)) {
                Ok(point) => return Ok(point),
                Err(failure) if failure.kind == ErrorKind::OutOfRange => return Err(failure),
                Err(failure) => error = failure,
            }
        }
        Err(error)
    }

    /// Follows the line of `z` from `first` until what is fixed is reached.
    fn follow(&self, z: &[f64], first: &Incipient<f64>, fixed: Fixed<f64>) -> Result<Incipient<f64>, Error> {
        let (mut at, end) = match fixed {
            Fixed::Temperature(t_k) => (libm::log(first.t_k), libm::log(t_k)),
            Fixed::Pressure(p_pa) => (libm::log(first.p_pa), libm::log(p_pa)),
        };
        let unit = match fixed {
            Fixed::Temperature(_) => 1.0,
            Fixed::Pressure(_) => STEEPNESS,
        };
        let place = |at: f64| match fixed {
            Fixed::Temperature(_) => Fixed::Temperature(libm::exp(at)),
            Fixed::Pressure(_) => Fixed::Pressure(libm::exp(at)),
        };
        let mut point = *first;
        let mut step = LONGEST * unit;
        let mut error = Error::no_convergence(f64::INFINITY, 0.0);
        for _ in 0..MOST_STEPS {
            let left = end - at;
            let is_last = libm::fabs(left) <= step;
            let next = if is_last { end } else { at + libm::copysign(step, left) };
            let aim = if is_last { fixed } else { place(next) };
            // A step that makes the phases change places has jumped to another line.
            let found = self.incipient(z, aim, &point).and_then(|found| {
                if is_near(z.len(), &point, &found) {
                    Ok(found)
                } else {
                    Err(Error::no_convergence(f64::INFINITY, 0.0))
                }
            });
            match found {
                Ok(found) if found.t_k < TEMPERATURES.low => {
                    // This happens only where the pressure is fixed.
                    let lowest = self.incipient(z, Fixed::Temperature(TEMPERATURES.low), &point)?;
                    let (asked, low) = (libm::exp(end), lowest.p_pa);
                    return Err(Error::out_of_range(Quantity::AbsolutePressure, asked, low, f64::NAN));
                }
                Ok(found) if is_last => return Ok(found),
                Ok(found) => {
                    point = found;
                    at = next;
                    step = f64::min(1.5 * step, LONGEST * unit);
                }
                Err(failure) => {
                    error = failure;
                    step *= 0.4;
                    if step < SHORTEST * unit {
                        break;
                    }
                }
            }
        }
        let (quantity, asked, last) = match fixed {
            Fixed::Temperature(t_k) => (Quantity::Temperature, t_k, point.t_k),
            Fixed::Pressure(p_pa) => (Quantity::AbsolutePressure, p_pa, point.p_pa),
        };
        let turns = match fixed {
            Fixed::Temperature(_) => false,
            Fixed::Pressure(_) => self.turns(z, &point),
        };
        if point.contrast(self) > NEARLY_ONE && !turns {
            return Err(error);
        }
        Err(if asked > last {
            Error::out_of_range(quantity, asked, f64::NAN, last)
        } else {
            Error::out_of_range(quantity, asked, last, f64::NAN)
        })
    }

    /// Whether the pressure of the line has its least or greatest value near this point: the bubble pressure of a liquid
    /// with dissolved air falls with temperature before it rises.
    fn turns(&self, z: &[f64], point: &Incipient<f64>) -> bool {
        let beside = |share: f64| {
            self.incipient(z, Fixed::Temperature(point.t_k * share), point)
                .map(|beside| libm::log(beside.p_pa))
        };
        match (beside(1.0 - BESIDE), beside(1.0 + BESIDE)) {
            (Ok(colder), Ok(warmer)) => libm::fabs(warmer - colder) < 2.0 * BESIDE * FLAT,
            _ => false,
        }
    }

    /// Liquid and vapour at a temperature low enough for the vapour to be nearly an ideal gas.
    fn start(&self, z: &[f64], side: Side, t_k: f64) -> Result<Incipient<f64>, Error> {
        let n = z.len();
        let rt = GAS_J_MOL_K * t_k;
        let mut about = [0.0; MOST_COMPONENTS];
        for (about, component) in about.iter_mut().zip(self.components()) {
            *about = component.about_saturation_pa(t_k);
        }
        match side {
            Side::Bubble => {
                let p_pa = z.iter().zip(about).map(|(z, p)| z * p).sum::<f64>();
                let (rho, mu) = self.liquid(z, t_k, p_pa)?;
                let mut new = [1.0; MOST_COMPONENTS];
                for i in 0..n {
                    new[i] = z[i] * rho * libm::exp(mu[i]);
                }
                let start = Incipient {
                    t_k,
                    p_pa,
                    rho_mol_m3: rho,
                    new,
                };
                let vapour = new[..n].iter().sum::<f64>();
                if vapour < THIN * self.reducing_rho_mol_m3(z) {
                    return Ok(start);
                }
                Ok(self.thickened(z, start).unwrap_or(start))
            }
            Side::Dew => {
                let mut x = [0.0; MOST_COMPONENTS];
                let mut p_pa = 1.0 / z.iter().zip(about).map(|(z, p)| z / p).sum::<f64>();
                for i in 0..n {
                    x[i] = z[i] * p_pa / about[i];
                }
                let mut rho = 0.0;
                for _ in 0..4 {
                    let (found, mu) = self.liquid(&x[..n], t_k, p_pa)?;
                    rho = found;
                    let mut sum = 0.0;
                    for i in 0..n {
                        x[i] = z[i] / (rt * rho * libm::exp(mu[i]));
                        sum += x[i];
                    }
                    p_pa = 1.0 / sum;
                    for x in &mut x[..n] {
                        *x /= sum;
                    }
                }
                Ok(Incipient {
                    t_k,
                    p_pa,
                    rho_mol_m3: p_pa / rt,
                    new: filled(&x[..n], rho),
                })
            }
        }
    }

    /// A liquid with its vapour by successive substitution, where the vapour is no ideal gas: air dissolved in the liquid
    /// makes it dense at any temperature.
    fn thickened(&self, z: &[f64], start: Incipient<f64>) -> Option<Incipient<f64>> {
        let n = z.len();
        let mut at = start;
        at.p_pa = GAS_J_MOL_K * at.t_k * at.new[..n].iter().sum::<f64>();
        for _ in 0..THICKENINGS {
            let total = at.new[..n].iter().sum::<f64>();
            let y = at.new.map(|amount| amount / total);
            let vapour = self.homogeneous(&y[..n], at.t_k, at.p_pa, Root::Thin)?;
            let liquid = self.homogeneous(z, at.t_k, at.p_pa, Root::Dense)?;
            for (i, (new, z)) in at.new.iter_mut().zip(z).enumerate() {
                let ln = liquid.phase.mu[i] - vapour.phase.mu[i];
                *new = z * liquid.rho_mol_m3 * libm::exp(ln);
            }
            let total = at.new[..n].iter().sum::<f64>();
            at.p_pa *= (total / vapour.rho_mol_m3).clamp(0.3, 3.0);
            at.rho_mol_m3 = liquid.rho_mol_m3;
        }
        Some(at)
    }

    /// Density (mol/m3) and residual chemical potentials of a liquid at a temperature (K) and low pressure (Pa).
    fn liquid(&self, x: &[f64], t_k: f64, p_pa: f64) -> Result<(f64, Vector<f64>), Error> {
        let n = x.len();
        let aim = p_pa / (GAS_J_MOL_K * t_k);
        let off = f64::max(1.0 - t_k / self.reducing_t_k(x), 0.05);
        // Corresponding states, after Guggenheim, J. Chem. Phys. 13 (1945) 253, doi 10.1063/1.1724033
        let mut rho = self.reducing_rho_mol_m3(x) * (1.0 + 0.75 * off + 1.75 * libm::cbrt(off));
        for _ in 0..40 {
            let amounts = filled(x, rho);
            let phase = self.phase(t_k, &amounts);
            let slope = super::incipient::pi_by_ln_rho(n, &amounts, &phase)[..n]
                .iter()
                .sum::<f64>();
            if slope <= 0.0 {
                rho *= 1.05;
                continue;
            }
            let step = ((aim - phase.pi) / slope).clamp(-0.05, 0.1);
            rho *= 1.0 + step;
            // An error of ln rho causes one of about the same size in the vapour: a start needs no more accuracy.
            if libm::fabs(step) < 1e-3 {
                return Ok((rho, phase.mu));
            }
        }
        Err(Error::no_convergence(f64::INFINITY, 1e-3))
    }

    /// About the temperature (K) of the bubble or dew point at `p_pa`, Pa, by Raoult's law on straight saturation lines.
    fn about_t_k(&self, z: &[f64], side: Side, p_pa: f64) -> f64 {
        let miss = |t_k: f64| {
            let parts = z.iter().zip(self.components());
            let about = parts.map(|(z, component)| (z, component.about_saturation_pa(t_k)));
            match side {
                Side::Bubble => libm::log(about.map(|(z, p)| z * p).sum::<f64>() / p_pa),
                Side::Dew => -libm::log(about.map(|(z, p)| z / p).sum::<f64>() * p_pa),
            }
        };
        let (mut low, mut high) = (20.0, 2_000.0);
        for _ in 0..20 {
            let middle = 2.0 / (1.0 / low + 1.0 / high);
            if miss(middle) > 0.0 {
                high = middle;
            } else {
                low = middle;
            }
        }
        low
    }
}

/// Whether two points can be neighbours on a line: the phases have not changed places.
fn is_near(n: usize, from: &Incipient<f64>, to: &Incipient<f64>) -> bool {
    let total = |point: &Incipient<f64>| point.new[..n].iter().sum::<f64>();
    (from.rho_mol_m3 > total(from)) == (to.rho_mol_m3 > total(to))
}
