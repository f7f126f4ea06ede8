//! States from enthalpy and entropy.
//!
//! In two phases h - h' = T (s - s'); the saturation curves give the temperature that fulfils it, if there is one. In one phase the
//! state is searched in temperature and density at once from the nearest saturated state. Where that fails it is searched along
//! the isentrope, whose ends are the bounds of the error when there is no such state.

use super::accuracy::{BLUR, NEAR, ROUNDING};
use super::newton_step::{Balance, Step, newton_step};
use super::pure::{Offset, Pure};
use super::state::State;
use super::state_ph::{Energy, finite};
use crate::eos::{Isotherm, Properties};
use crate::error::Error;
use crate::names::{Phase, Quantity, Reference};
use crate::numerics::{exp, sqrt};

/// Steps along the saturation line; most take six to eight.
const MOST_ON_THE_LINE: usize = 60;
/// Steps in temperature and density; most take five.
const MOST_STEPS: usize = 40;
/// Steps along an isentrope, of which most take ten, and along an isotherm.
const MOST_ALONG: usize = 80;
/// The search fails after this many steps in a row that would leave the temperatures of the equation.
const MOST_CUT: usize = 3;
/// No step changes the logarithm of the density by more.
const LONGEST: f64 = 4.0;
/// What counts as met along an isentrope, in units of R T / M.
const ENOUGH: f64 = 1e-12;
/// What is close enough to a boiling point to begin there, relatively.
const CLOSE: f64 = 1e-6;
/// Above this share of the critical temperature a search does not begin on the saturation line.
const NEAR_CRITICAL: f64 = 0.999;
/// A search above the critical point begins at this multiple of its temperature, at its density.
const WARMER: f64 = 1.05;

/// Enthalpy and entropy with the constants of the paper.
#[derive(Clone, Copy)]
struct Target {
    h_j_kg: f64,
    s_j_kg_k: f64,
}

/// What the curves say of a target.
enum Place {
    /// In two phases, at a temperature (K) and quality.
    Within(f64, f64),
    /// Outside; a temperature (K) and density (mol/m3) to begin at.
    Beside(f64, f64),
}

/// A target relative to the saturation line at one temperature.
#[derive(Clone, Copy)]
struct View {
    t_k: f64,
    /// s - s', J/(kg K), and s'' - s'.
    above: f64,
    width: f64,
    /// h - h' - T (s - s'), J/kg, which is zero in two phases. It falls with temperature as long as s is above s' (by
    /// dg' = -s' dT + v' dp it has the slope s' - s - v' dp/dT); where s is below s' it is too warm for two phases.
    missing: f64,
    /// Newton's steps (K) to where that is zero and to where s is s'.
    to_both: f64,
    to_boiling: f64,
}

impl Pure {
    /// The state at a specific enthalpy (J/kg) and entropy (J/(kg K)), both counted from `reference`.
    ///
    /// Along an isentrope enthalpy rises with pressure, dh/dp = v > 0, in one phase and in two: the state is unique.
    /// Where the isentrope leaves the equation at low pressure it does so at the lowest temperature, at high pressure at
    /// the highest. Newton's method in temperature and density, and failing that a bracket in pressure.
    ///
    /// Errors: as [`Pure::state_ph`]; `OutOfRange` names the enthalpies that the equation has at this entropy, or its
    /// entropies.
    pub fn state_hs(&self, h_j_kg: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        let h_j_kg = finite(Quantity::Enthalpy, h_j_kg)?;
        let s_j_kg_k = finite(Quantity::Entropy, s_j_kg_k)?;
        let offset = self.offset(reference)?;
        let target = Target {
            h_j_kg: h_j_kg - offset.h_j_kg,
            s_j_kg_k: s_j_kg_k - offset.s_j_kg_k,
        };
        let start = match self.place(&target) {
            Place::Within(t_k, quality) => {
                return self.state_tq(t_k, quality, reference);
            }
            Place::Beside(t_k, rho) => (t_k, rho),
        };
        if let Some(found) = self.both_at_once(&target, start) {
            let phase = self.phase_of(&found);
            let state = State::of(&found, self.fluid.equation.molar_mass, phase, offset);
            // The pressure of a liquid amplifies rounding, so that an end of the range counts as met within rounding.
            let range = self.valid_pressures();
            let p_pa = state.p_pa.clamp(range.low, range.high);
            if libm::fabs(state.p_pa - p_pa) <= BLUR * p_pa {
                return self.fluid_only(state.with_pressure(p_pa));
            }
        }
        let state = self.along_isentrope(&target, offset, reference)?;
        self.fluid_only(state)
    }

    /// Looks for the temperature at which the heat that is missing is zero, between the ends of the saturation line.
    fn place(&self, target: &Target) -> Place {
        let (mut low, mut high) = (self.fluid.lowest_t_k, self.critical_t_k);
        let coldest = self.view(target, low);
        if coldest.above < 0.0 || coldest.to_both < -ROUNDING * low {
            return self.beside(&coldest);
        }
        let warmest = self.view(target, high);
        if warmest.above >= 0.0 && warmest.missing > 0.0 {
            return self.beside(&warmest);
        }
        let mut view = self.view(target, 0.5 * (low + high));
        for _ in 0..MOST_ON_THE_LINE {
            let View {
                t_k,
                above,
                width,
                missing,
                to_both,
                to_boiling,
            } = view;
            if above >= 0.0 && libm::fabs(to_both) <= ROUNDING * t_k {
                if above > width {
                    break;
                }
                let t_k = (t_k + to_both).clamp(self.fluid.lowest_t_k, self.critical_t_k);
                let View { above, width, .. } = self.view(target, t_k);
                // In the critical point there is no width.
                let quality = if width > 0.0 { above / width } else { 0.0 };
                return Place::Within(t_k, quality.clamp(0.0, 1.0));
            }
            // Where boiling begins before both balance, there is a liquid.
            let boils_first = above < 0.0 || to_both > 2.0 * to_boiling;
            if missing > 0.0 && boils_first && libm::fabs(to_boiling) <= CLOSE * t_k {
                break;
            }
            if above < 0.0 || missing < 0.0 {
                high = t_k;
            } else {
                low = t_k;
            }
            let next = t_k
                + if above < 0.0 || to_both > high - t_k {
                    to_boiling
                } else {
                    to_both
                };
            let inside = next > low && next < high;
            view = self.view(target, if inside { next } else { 0.5 * (low + high) });
        }
        self.beside(&view)
    }

    /// The target relative to the saturation line at `t_k`.
    fn view(&self, target: &Target, t_k: f64) -> View {
        let s = self.distance(t_k);
        let (boiling, by_s) = self.liquid_s_j_kg_k.with_slope(s);
        let above = target.s_j_kg_k - boiling;
        let h_boiling = self.liquid_h_j_kg.at(s);
        let missing = target.h_j_kg - h_boiling - t_k * above;
        let volume = 1.0 / (self.liquid_rho_mol_m3.at(s) * self.fluid.equation.molar_mass);
        View {
            t_k,
            above,
            width: (self.vapour_h_j_kg.at(s) - h_boiling) / t_k,
            missing,
            to_both: missing / (above + volume * self.pressure_pa.with_slope(t_k).1),
            to_boiling: above / (by_s * self.distance_by_t(s)),
        }
    }

    /// Where to begin outside the two phases.
    fn beside(&self, view: &View) -> Place {
        let s = self.distance(view.t_k);
        if view.t_k > NEAR_CRITICAL * self.critical_t_k {
            Place::Beside(WARMER * self.critical_t_k, self.critical_rho_mol_m3)
        } else if view.above > view.width {
            Place::Beside(view.t_k, self.vapour_rho_mol_m3.at(s))
        } else {
            Place::Beside(view.t_k, self.liquid_rho_mol_m3.at(s))
        }
    }

    /// Newton's method in temperature and the logarithm of density; `None` unless it ends in a stable state within the
    /// temperatures of the equation.
    ///
    /// The determinant of the derivatives is -(p_T^2 / (M rho^2) + c_v p_rho / T) / (M rho): never zero where the state is
    /// stable, and neither at the critical point.
    fn both_at_once(&self, target: &Target, start: (f64, f64)) -> Option<Properties> {
        let equation = &self.fluid.equation;
        let (mut t_k, mut rho) = start;
        let mut cut = 0;
        for _ in 0..MOST_STEPS {
            let properties = Properties::new(&Isotherm::new(equation, t_k), rho);
            if properties.dp_drho_j_mol <= 0.0 || properties.cv_j_kg_k <= 0.0 {
                return None;
            }
            let (h_by_t, h_by_rho) = properties.enthalpy_slopes(equation.molar_mass);
            let (s_by_t, s_by_rho) = properties.entropy_slopes(equation.molar_mass);
            let enthalpy = Balance {
                missing: target.h_j_kg - properties.h_j_kg,
                by_t: h_by_t,
                by_rho: h_by_rho,
            };
            let entropy = Balance {
                missing: target.s_j_kg_k - properties.s_j_kg_k,
                by_t: s_by_t,
                by_rho: s_by_rho,
            };
            let Step { warmer, denser, .. } = newton_step(&enthalpy, &entropy);
            let change = f64::max(libm::fabs(warmer) / t_k, libm::fabs(denser) / rho);
            if !(warmer + denser).is_finite() {
                return None;
            }
            let next = (t_k + warmer).clamp(self.fluid.lowest_t_k, self.fluid.highest_t_k);
            if libm::fabs(t_k + warmer - next) <= ROUNDING * t_k {
                cut = 0;
                let response = properties.cp_j_kg_k / properties.cv_j_kg_k;
                if change * response <= NEAR {
                    let found = properties.moved(next - t_k, denser, equation.molar_mass);
                    return self.is_stable(&found, self.phase_of(&found)).then_some(found);
                }
            } else {
                cut += 1;
                if cut == MOST_CUT {
                    return None;
                }
            }
            rho = f64::min(
                rho * exp((denser / rho).clamp(-LONGEST, LONGEST)),
                self.densest_mol_m3(),
            );
            t_k = next;
        }
        None
    }

    /// The phase of a state outside the two phases.
    fn phase_of(&self, properties: &Properties) -> Phase {
        let dense = properties.rho_mol_m3 > self.critical_rho_mol_m3;
        self.phase_at(properties.t_k, if dense { Phase::Liquid } else { Phase::Vapour })
    }

    /// The state within a bracket in pressure, between the ends of its isentrope.
    fn along_isentrope(&self, target: &Target, offset: Offset, reference: Reference) -> Result<State, Error> {
        let s_j_kg_k = target.s_j_kg_k + offset.s_j_kg_k;
        let h_j_kg = target.h_j_kg + offset.h_j_kg;
        let (first, last) = self.ends_of_isentrope(target, offset, reference)?;
        let beyond = |end: &State| (h_j_kg - end.h_j_kg) / self.thermal_j_kg(end.t_k);
        if beyond(&first) < -BLUR || beyond(&last) > BLUR {
            return Err(Error::out_of_range(
                Quantity::Enthalpy,
                h_j_kg,
                first.h_j_kg,
                last.h_j_kg,
            ));
        }
        for end in [first, last] {
            if libm::fabs(beyond(&end)) <= BLUR {
                return Ok(end);
            }
        }
        let (mut low, mut high) = (first.p_pa, last.p_pa);
        let mut p_pa = sqrt(low * high);
        let mut residual = f64::INFINITY;
        for _ in 0..MOST_ALONG {
            let state = self.state_p_energy(p_pa, Energy::Entropy, s_j_kg_k, reference)?;
            let missing = h_j_kg - state.h_j_kg;
            residual = missing / self.thermal_j_kg(state.t_k);
            if missing > 0.0 {
                low = p_pa;
            } else {
                high = p_pa;
            }
            let closed = high / low - 1.0 <= 2.0 * f64::EPSILON;
            if libm::fabs(residual) <= if closed { BLUR } else { ENOUGH } {
                return Ok(state);
            }
            if closed {
                break;
            }
            let step = missing * state.rho_kg_m3 / p_pa;
            // In a gas enthalpy is nearly linear in ln p, in a liquid in p.
            let gas = state.rho_mol_m3 < self.critical_rho_mol_m3;
            let next = p_pa * if gas { exp(step) } else { 1.0 + step };
            let inside = next > low && next < high;
            p_pa = if inside { next } else { sqrt(low * high) };
        }
        Err(Error::no_convergence(libm::fabs(residual), ENOUGH))
    }

    /// The states of the lowest and the highest pressure with this entropy.
    ///
    /// Errors: `OutOfRange` with the least and the greatest entropy of the equation.
    fn ends_of_isentrope(
        &self,
        target: &Target,
        offset: Offset,
        reference: Reference,
    ) -> Result<(State, State), Error> {
        let (coldest, warmest) = (self.fluid.lowest_t_k, self.fluid.highest_t_k);
        let pressures = self.valid_pressures();
        let at = |t_k: f64, p_pa: f64, phase: Phase| -> Result<Properties, Error> {
            let isotherm = Isotherm::new(&self.fluid.equation, t_k);
            let rho = self.density_on(&isotherm, t_k, p_pa, phase)?;
            Ok(Properties::at_pressure(&isotherm, p_pa, rho))
        };
        let cold = at(coldest, pressures.high, Phase::Liquid)?;
        let warm = at(warmest, pressures.low, Phase::Supercritical)?;
        let s = target.s_j_kg_k.clamp(cold.s_j_kg_k, warm.s_j_kg_k);
        let shift = offset.s_j_kg_k;
        if libm::fabs(target.s_j_kg_k - s) > BLUR * self.thermal_j_kg(1.0) {
            let (first, last) = (cold.s_j_kg_k + shift, warm.s_j_kg_k + shift);
            return Err(Error::out_of_range(
                Quantity::Entropy,
                target.s_j_kg_k + shift,
                first,
                last,
            ));
        }
        let dense = at(warmest, pressures.high, Phase::Supercritical)?;
        let last = if s > dense.s_j_kg_k {
            self.on_isotherm(warmest, s, (warm.rho_mol_m3, dense.rho_mol_m3), offset)?
        } else {
            self.state_p_energy(pressures.high, Energy::Entropy, s + shift, reference)?
        };
        let thin = at(coldest, pressures.low, Phase::Vapour)?;
        let (liquid, vapour) = (self.liquid(coldest)?, self.vapour(coldest)?);
        let first = if s >= thin.s_j_kg_k {
            self.state_p_energy(pressures.low, Energy::Entropy, s + shift, reference)?
        } else if s > vapour.s_j_kg_k {
            self.on_isotherm(coldest, s, (thin.rho_mol_m3, vapour.rho_mol_m3), offset)?
        } else if s >= liquid.s_j_kg_k {
            let quality = (s - liquid.s_j_kg_k) / (vapour.s_j_kg_k - liquid.s_j_kg_k);
            self.state_tq(coldest, quality, reference)?
        } else {
            self.on_isotherm(coldest, s, (liquid.rho_mol_m3, cold.rho_mol_m3), offset)?
        };
        Ok((first, last))
    }

    /// The state with an entropy (J/(kg K), with the constants of the paper) on an isotherm between two densities.
    ///
    /// Assumes that entropy falls with density there: Newton's method in ln rho, in which that of a gas is linear, inside a
    /// shrinking bracket.
    fn on_isotherm(&self, t_k: f64, s_j_kg_k: f64, (low, high): (f64, f64), offset: Offset) -> Result<State, Error> {
        let equation = &self.fluid.equation;
        let isotherm = Isotherm::new(equation, t_k);
        let (mut low, mut high) = (low, high);
        let mut rho = sqrt(low * high);
        for _ in 0..MOST_ALONG {
            let properties = Properties::new(&isotherm, rho);
            let missing = s_j_kg_k - properties.s_j_kg_k;
            let step = missing / (properties.entropy_slopes(equation.molar_mass).1 * rho);
            if missing > 0.0 {
                high = rho;
            } else {
                low = rho;
            }
            if libm::fabs(step) <= ROUNDING || high / low - 1.0 <= 2.0 * f64::EPSILON {
                let phase = self.phase_of(&properties);
                return Ok(State::of(&properties, equation.molar_mass, phase, offset));
            }
            let next = rho * exp(step);
            rho = if next > low && next < high {
                next
            } else {
                sqrt(low * high)
            };
        }
        Err(Error::no_convergence(high / low - 1.0, ROUNDING))
    }

    /// RT/M, J/kg: the scale of energies.
    fn thermal_j_kg(&self, t_k: f64) -> f64 {
        self.fluid.equation.gas_constant / self.fluid.equation.molar_mass * t_k
    }
}
