//! Liquid held above its boiling point and vapour held below its dew point, up to the spinodal.
//!
//! Only these functions give metastable states. They matter where a fluid has no time to boil or to condense, as in a
//! short nozzle.

use super::pure::Pure;
use super::state::State;
use crate::eos::{Isotherm, Properties, density_mol_m3};
use crate::error::Error;
use crate::names::{Phase, Quantity, Reference};
use crate::range::Range;

/// Steps from the saturation line to the critical density in search of the spinodal, and then halvings of one step.
const STEPS: u32 = 200;
const HALVINGS: u32 = 50;

impl Pure {
    /// The liquid at a temperature (K) below its saturation pressure (Pa), which has not boiled yet.
    ///
    /// Between the saturation line and the spinodal, where dp/drho (or c_v) is zero and no liquid can be, an equation of state goes on
    /// smoothly from what was measured: the state is an extrapolation of it. Pressures are positive here, though a liquid
    /// can stand tension.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the temperatures of the saturation line, and in pressure with the
    /// spinodal (or the lowest pressure of the equation) and the saturation line as bounds; `NotAvailable` when the fluid
    /// has no such reference state.
    ///
    /// ```
    /// use coldloop::{Phase, Reference, Refrigerant, saturation};
    /// let pure = saturation::pure(Refrigerant::R134a)?;
    /// let boiling_pa = pure.pressure_pa(300.0)?;
    /// let held = pure.superheated_liquid(300.0, 0.9 * boiling_pa, Reference::Iir)?;
    /// assert_eq!(held.phase, Phase::Liquid);
    /// assert!(pure.superheated_liquid(300.0, 1.1 * boiling_pa, Reference::Iir).is_err()); // stable: `state_tp`
    /// assert!(pure.superheated_liquid(370.0, 1e5, Reference::Iir).is_err()); // beyond the spinodal
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn superheated_liquid(&self, t_k: f64, p_pa: f64, reference: Reference) -> Result<State, Error> {
        self.metastable(t_k, p_pa, Phase::Liquid, reference)
    }

    /// The vapour at a temperature (K) above its saturation pressure (Pa), which has not condensed yet.
    ///
    /// Errors: as [`Pure::superheated_liquid`].
    pub fn subcooled_vapour(&self, t_k: f64, p_pa: f64, reference: Reference) -> Result<State, Error> {
        self.metastable(t_k, p_pa, Phase::Vapour, reference)
    }

    fn metastable(&self, t_k: f64, p_pa: f64, phase: Phase, reference: Reference) -> Result<State, Error> {
        let t_k = self.temperatures().check(t_k)?;
        let saturation_pa = self.pressure_pa(t_k)?;
        let offset = self.offset(reference)?;
        let isotherm = Isotherm::new(&self.fluid.equation, t_k);
        let (liquid, vapour) = (self.liquid(t_k)?.rho_mol_m3, self.vapour(t_k)?.rho_mol_m3);
        let from = if phase == Phase::Liquid { liquid } else { vapour };
        let spinodal = spinodal_mol_m3(&isotherm, from, self.critical_rho_mol_m3);
        let last_pa = isotherm.pressure_pa(spinodal).0;
        let (range, low, high) = if phase == Phase::Liquid {
            let lowest = f64::max(last_pa, self.valid_pressures().low);
            (
                Range::new(Quantity::AbsolutePressure, lowest, saturation_pa),
                spinodal,
                from,
            )
        } else {
            (
                Range::new(Quantity::AbsolutePressure, saturation_pa, last_pa),
                from,
                spinodal,
            )
        };
        let p_pa = range.check(p_pa)?;
        let near = density_mol_m3(&isotherm, p_pa, from, low, high)?;
        let properties = Properties::at_pressure(&isotherm, p_pa, near);
        if properties.dp_drho_j_mol <= 0.0 || properties.cv_j_kg_k <= 0.0 {
            return Err(Error::out_of_range(
                Quantity::AbsolutePressure,
                p_pa,
                range.low,
                range.high,
            ));
        }
        Ok(State::of(&properties, self.fluid.equation.molar_mass, phase, offset).with_pressure(p_pa))
    }
}

/// The last density, on the way from a saturated phase to the critical density, at which the phase is stable by itself: the
/// pressure rises with density, and the energy with temperature.
///
/// Assumes that it is at `from`. Steps, because equations of state have more than one such place between the phases
/// and the first one counts; then bisection.
fn spinodal_mol_m3(isotherm: &Isotherm<f64>, from: f64, critical: f64) -> f64 {
    let is_stable = |rho: f64| {
        let properties = Properties::new(isotherm, rho);
        properties.dp_drho_j_mol > 0.0 && properties.cv_j_kg_k > 0.0
    };
    let step = (critical - from) / f64::from(STEPS);
    let place = |k: u32| from + step * f64::from(k);
    let Some(first) = (1..=STEPS).find(|&k| !is_stable(place(k))) else {
        return critical;
    };
    let (mut stable, mut unstable) = (place(first - 1), place(first));
    for _ in 0..HALVINGS {
        let middle = 0.5 * (stable + unstable);
        if is_stable(middle) {
            stable = middle;
        } else {
            unstable = middle;
        }
    }
    stable
}
