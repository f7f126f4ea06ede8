//! The composition of a charge after a leak of vapour or of liquid.
//!
//! The circuit is at rest at one temperature and its volume stays; what escapes has the composition of the phase that is at the
//! leak, in equilibrium with the rest at every moment (Rayleigh's distillation, Phil. Mag. 4 (1902) 521, doi
//! 10.1080/14786440209462876). Steps of equal mass by the midpoint rule. Once no liquid is left, what escapes has the
//! composition of the rest.

use super::MOST_COMPONENTS;
use super::boiling::Boiling;
use super::incipient::Fixed;
use super::phase::{Mixture, Vector};
use super::search::Side;
use super::split::{Closing, Two};
use crate::error::Error;
use crate::names::{LeakPhase, Quantity};
use crate::numerics::GAS_J_MOL_K;
use crate::range::Range;

const STEPS: i32 = 64;

/// The share of a charge that can be lost; the composition of the last hundredth is of no use.
pub const LOST: Range = Range::new(Quantity::Severity, 0.0, 0.99);

/// A charge after a leak.
#[derive(Clone, Copy, Debug)]
pub struct Leaked {
    /// Mole fractions of what is left.
    pub z: Vector<f64>,
    /// Mass fractions of it.
    pub mass: Vector<f64>,
    /// Pressure at rest, Pa.
    pub p_pa: f64,
    /// Whether liquid is left.
    pub has_liquid: bool,
}

impl Mixture<f64> {
    /// What is left of a charge of the mole fractions `z` (above zero, of sum one) in a circuit at rest at `t_k` (K), which
    /// it fills with `rho_kg_m3` on average, when the share `lost` of its mass has escaped as `leak_phase`.
    ///
    /// Method: see the head of this module; composition within 1e-4. A leak while the system runs lies between the two
    /// kinds.
    ///
    /// Errors: `NotFinite`; `OutOfRange` for a share outside [`LOST`], a density at which the charge is not liquid and
    /// vapour, and a temperature outside [`super::TEMPERATURES`] or above its critical point; `NoConvergence`.
    ///
    /// ```
    /// use coldloop::Refrigerant;
    /// use coldloop::inner::mixture::{self, LeakPhase, Mixture};
    ///
    /// // R-407C: R-32, R-125, R-134a. Half of it leaks as vapour at 25 °C from a circuit filled with 300 kg/m3.
    /// let parts = [Refrigerant::R32, Refrigerant::R125, Refrigerant::R134a].map(mixture::component_of);
    /// let mixture = Mixture::new(&[parts[0]?, parts[1]?, parts[2]?])?;
    /// let z = [0.381_1, 0.179_6, 0.439_3];
    /// let left = mixture.leaked(&z, 298.15, 300.0, LeakPhase::Vapour, 0.5)?;
    /// assert!(left.mass[2] > 0.56 && left.mass[0] < 0.21);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn leaked(
        &self,
        z: &[f64],
        t_k: f64,
        rho_kg_m3: f64,
        leak_phase: LeakPhase,
        lost: f64,
    ) -> Result<Leaked, Error> {
        let lost = LOST.check(lost)?;
        let mut rest = self.filled_circuit(z, t_k, rho_kg_m3)?;
        let step_kg_m3 = rho_kg_m3 * lost / f64::from(STEPS);
        for _ in 0..STEPS {
            let half = self.after(&rest, t_k, leak_phase, &rest, 0.5 * step_kg_m3)?;
            rest = self.after(&rest, t_k, leak_phase, &half, step_kg_m3)?;
        }
        Ok(self.left(&rest, t_k))
    }

    /// The charge in its circuit before the leak.
    fn filled_circuit(&self, z: &[f64], t_k: f64, rho_kg_m3: f64) -> Result<Rest, Error> {
        let mut fractions = [0.0; MOST_COMPONENTS];
        fractions[..z.len()].copy_from_slice(z);
        let molar_mass = self.molar_mass(&fractions);
        let [bubble, dew] = [Side::Bubble, Side::Dew].map(|side| self.point(z, side, Fixed::Temperature(t_k)));
        let (bubble, dew) = (bubble?, dew?);
        let [densest, thinnest] = [bubble.rho_mol_m3, dew.rho_mol_m3].map(|rho| rho * molar_mass);
        let rho_mol_m3 = Range::new(Quantity::Density, thinnest, densest).check(rho_kg_m3)? / molar_mass;
        let volume = |rho: f64| 1.0 / rho;
        let quality =
            (volume(rho_mol_m3) - volume(bubble.rho_mol_m3)) / (volume(dew.rho_mol_m3) - volume(bubble.rho_mol_m3));
        let start = Boiling::between(z, quality, &bubble, &dew);
        let start = self.boiling(z, Fixed::Temperature(t_k), quality, &start)?;
        let two = self.two(z, t_k, Closing::Volume(volume(rho_mol_m3)), &start.two)?;
        Ok(Rest {
            amounts: fractions.map(|z| z * rho_mol_m3),
            two: Some(two),
        })
    }

    /// The rest when `mass_kg_m3` more has escaped, of the phase that is at the leak in `at`.
    fn after(&self, from: &Rest, t_k: f64, leak_phase: LeakPhase, at: &Rest, mass_kg_m3: f64) -> Result<Rest, Error> {
        let n = self.components().len();
        let escaping = match (&at.two, leak_phase) {
            (Some(two), LeakPhase::Vapour) => two.vapour,
            (Some(two), LeakPhase::Liquid) => two.liquid,
            (None, LeakPhase::Vapour | LeakPhase::Liquid) => at.amounts,
        };
        let moles = mass_kg_m3 / self.molar_mass(&escaping);
        let share = moles / escaping[..n].iter().sum::<f64>();
        let mut amounts = from.amounts;
        for (amount, escaping) in amounts.iter_mut().zip(escaping) {
            *amount -= share * escaping;
        }
        let total: f64 = amounts[..n].iter().sum();
        let z = amounts.map(|amount| amount / total);
        let Some(mut guess) = at.two else {
            return Ok(Rest { amounts, two: None });
        };
        let thinner = at.amounts[..n].iter().sum::<f64>() / total;
        guess.liquid_m3_mol *= thinner;
        guess.vapour_m3_mol *= thinner;
        match self.two(&z[..n], t_k, Closing::Volume(1.0 / total), &guess) {
            Ok(two) => Ok(Rest {
                amounts,
                two: Some(two),
            }),
            Err(failure) => {
                let dew = self.point(&z[..n], Side::Dew, Fixed::Temperature(t_k))?;
                if total > dew.rho_mol_m3 * (1.0 + NEAR_DEW) {
                    return Err(failure);
                }
                Ok(Rest { amounts, two: None })
            }
        }
    }

    fn left(&self, rest: &Rest, t_k: f64) -> Leaked {
        let n = self.components().len();
        let total: f64 = rest.amounts[..n].iter().sum();
        let weight = total * self.molar_mass(&rest.amounts);
        let mut mass = [0.0; MOST_COMPONENTS];
        for (i, component) in self.components().iter().enumerate() {
            mass[i] = rest.amounts[i] * component.fluid.equation.molar_mass / weight;
        }
        let p_pa = match &rest.two {
            Some(two) => two.p_pa,
            None => self.phase(t_k, &rest.amounts).pi * GAS_J_MOL_K * t_k,
        };
        Leaked {
            z: rest.amounts.map(|amount| amount / total),
            mass,
            p_pa,
            has_liquid: rest.two.is_some(),
        }
    }
}

/// Within this relative distance of the dew density the last trace of liquid counts as gone where the search for it fails: the
/// dew point itself is known to some 1e-7.
const NEAR_DEW: f64 = 1e-6;

/// What is left in the circuit: amounts per volume of the circuit (mol/m3), and the two phases while there are two.
struct Rest {
    amounts: Vector<f64>,
    two: Option<Two>,
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::mixture;
    use crate::names::Refrigerant;

    /// R-407C at 25 °C, a millionth above its dew density, and a search for its liquid that starts from nothing and fails.
    #[test]
    fn the_last_millionth_of_liquid_counts_as_gone() {
        let parts =
            [Refrigerant::R32, Refrigerant::R125, Refrigerant::R134a].map(|part| mixture::component_of(part).unwrap());
        let mixture = Mixture::new(&parts).unwrap();
        let (z, t_k) = ([0.381_1, 0.179_6, 0.439_3], 298.15);
        let dew = mixture.point(&z, Side::Dew, Fixed::Temperature(t_k)).unwrap();
        let mut rest = mixture.filled_circuit(&z, t_k, 300.0).unwrap();
        let after = |rest: &Rest| mixture.after(rest, t_k, LeakPhase::Vapour, rest, 0.0);
        assert!(after(&rest).unwrap().two.is_some());
        let mut fails = rest.two.unwrap();
        fails.liquid_m3_mol = f64::NAN;
        rest.two = Some(fails);
        let mut dried = |above: f64| {
            let total: f64 = rest.amounts.iter().sum();
            rest.amounts = rest
                .amounts
                .map(|amount| amount / total * dew.rho_mol_m3 * (1.0 + above));
            after(&rest).map(|rest| rest.two.is_none())
        };
        assert_eq!(dried(0.9e-6), Ok(true));
        assert!(dried(1.1e-6).is_err());
    }
}
