//! Critical point and vapour-liquid equilibria of an equation of state, in extended precision.

use crate::double::Double;
use crate::dual::Dual;
use coldloop::inner::eos::{Isotherm, pressure_enthalpy_entropy};
use coldloop::inner::fluid::Equation;
use coldloop::inner::numerics::Real;

/// Liquid and vapour in equilibrium.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Equilibrium {
    pub(crate) p_pa: Double,
    pub(crate) liquid_rho_mol_m3: Double,
    pub(crate) vapour_rho_mol_m3: Double,
    pub(crate) liquid_h_j_mol: Double,
    pub(crate) vapour_h_j_mol: Double,
    pub(crate) liquid_s_j_mol_k: Double,
}

/// The point at which liquid and vapour become one by the equation itself.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Critical {
    pub(crate) t_k: Double,
    pub(crate) p_pa: Double,
    pub(crate) rho_mol_m3: Double,
}

/// Solves dp/drho = 0 and d2p/drho2 = 0, from the reducing point. The non-analytic terms have no third derivatives
/// there; an equation with them is built to be critical at its reducing point, which is then taken.
pub(crate) fn critical(equation: &'static Equation) -> Result<Critical, String> {
    let mut t = Double::from_f64(equation.reducing_t_k);
    let mut rho = Double::from_f64(equation.reducing_rho_mol_m3);
    if !equation.non_analytic.is_empty() {
        let p_pa = Isotherm::new(equation, t).pressure_pa(rho).0;
        return Ok(Critical {
            t_k: t,
            p_pa,
            rho_mol_m3: rho,
        });
    }
    for _ in 0..100 {
        let by_rho = slopes(equation, Dual::constant(t), Dual::variable(rho));
        let by_t = slopes(equation, Dual::variable(t), Dual::constant(rho));
        // rows: first and second derivative of pressure by density; columns: density, temperature
        let (a, b, c, d) = (by_rho.0.slope, by_t.0.slope, by_rho.1.slope, by_t.1.slope);
        let (f, g) = (by_rho.0.value, by_rho.1.value);
        let determinant = a * d - b * c;
        let rho_step = (f * d - b * g) / determinant;
        let t_step = (a * g - f * c) / determinant;
        let change = (rho_step / rho).to_f64().abs().max((t_step / t).to_f64().abs());
        let held = Double::from_f64((0.02 / change).min(1.0));
        rho = rho - held * rho_step;
        t = t - held * t_step;
        if change < 1e-25 {
            let p_pa = Isotherm::new(equation, t).pressure_pa(rho).0;
            return Ok(Critical {
                t_k: t,
                p_pa,
                rho_mol_m3: rho,
            });
        }
    }
    Err("no critical point found".to_string())
}

/// (dp/drho) and rho (d2p/drho2), each over R T. The second comes from the first by its own derivative.
fn slopes(equation: &'static Equation, t: Dual<Double>, rho: Dual<Double>) -> (Dual<Double>, Dual<Double>) {
    let inner = |r: Dual<Dual<Double>>| {
        let t = Dual::constant(t);
        Isotherm::new(equation, t).pressure_pa(r).1 / (Dual::from_f64(equation.gas_constant) * t)
    };
    let both = inner(Dual::variable(rho));
    (both.value, both.slope * rho)
}

/// The equilibrium at `t`, from the guesses `liquid` and `vapour` of the densities in mol/m3.
///
/// Newton's method for equal pressure and equal Gibbs energy in the liquid density and the logarithm of the vapour
/// density. Fails rather than returning two equal densities.
pub(crate) fn equilibrium(
    equation: &'static Equation,
    t: Double,
    liquid: Double,
    vapour: Double,
) -> Result<Equilibrium, String> {
    let number = Double::from_f64;
    let isotherm = Isotherm::new(equation, t);
    let rt = number(equation.gas_constant) * t;
    let (mut liquid, mut vapour) = (liquid, vapour);
    let mut last = f64::INFINITY;
    for round in 0..60 {
        let (p1, slope1) = isotherm.pressure_pa(liquid);
        let (p2, slope2) = isotherm.pressure_pa(vapour);
        let (g1, g2) = (gibbs(&isotherm, liquid), gibbs(&isotherm, vapour));
        let (f, g) = (p1 - p2, (g1 - g2) * rt);
        let (a, b) = (slope1, -(slope2 * vapour));
        let (c, d) = (slope1 / liquid, -slope2);
        let determinant = a * d - b * c;
        let liquid_step = (f * d - b * g) / determinant;
        let log_step = (a * g - f * c) / determinant;
        let change = (liquid_step / liquid).to_f64().abs().max(log_step.to_f64().abs());
        if !change.is_finite() {
            break;
        }
        // Two equal densities solve the equations too: never come more than two thirds closer in one step.
        let mut held = (0.3 / change).min(1.0);
        let gap = (liquid - vapour).to_f64();
        let closing = (liquid_step - vapour * log_step).to_f64();
        if held * closing > 0.67 * gap {
            held = 0.67 * gap / closing;
        }
        let held = number(held);
        liquid = liquid - held * liquid_step;
        vapour = vapour * (-(held * log_step)).exponential();
        // Close to the critical point rounding leaves less than the full number of digits: stop where steps stop
        // shrinking.
        if change < 1e-24 || (round > 3 && change < 1e-15 && change >= last) {
            return finish(&isotherm, liquid, vapour);
        }
        last = change;
    }
    Err(format!("no equilibrium at {} K, last step {last:e}", t.to_f64()))
}

fn gibbs(isotherm: &Isotherm<Double>, rho: Double) -> Double {
    let residual = isotherm.residual(rho);
    residual.a + isotherm.ln_delta(rho) + residual.d
}

fn finish(isotherm: &Isotherm<Double>, liquid: Double, vapour: Double) -> Result<Equilibrium, String> {
    if ((liquid - vapour) / liquid).to_f64() < 1e-12 {
        return Err(format!(
            "liquid and vapour fell together at {} K",
            isotherm.t_k().to_f64()
        ));
    }
    Ok(both(isotherm, liquid, vapour))
}

/// What is read off two densities in equilibrium.
pub(crate) fn both(isotherm: &Isotherm<Double>, liquid: Double, vapour: Double) -> Equilibrium {
    let (_, h1, s1) = pressure_enthalpy_entropy(isotherm, liquid);
    let (p, h2, _) = pressure_enthalpy_entropy(isotherm, vapour);
    Equilibrium {
        p_pa: p,
        liquid_rho_mol_m3: liquid,
        vapour_rho_mol_m3: vapour,
        liquid_h_j_mol: h1,
        vapour_h_j_mol: h2,
        liquid_s_j_mol_k: s1,
    }
}
