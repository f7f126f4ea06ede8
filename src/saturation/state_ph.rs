//! States from pressure and an energy.
//!
//! At constant pressure enthalpy and entropy rise with temperature, and jump across the saturation line: the curves
//! tell the phase. In one phase the state is searched in temperature and density at once; where that leaves the phase, in
//! temperature alone in a bracket.

use super::accuracy::{BLUR, NEAR, ROUNDING};
use super::newton_step::{Balance, Step, newton_step};
use super::pure::{Offset, Pure, SaturatedPhase};
use super::state::{DENSE, ON_THE_LINE, State};
use crate::eos::{Isotherm, Properties, density_mol_m3};
use crate::error::Error;
use crate::names::{Phase, Quantity, Reference};

/// The relative step below which steps that no longer shrink are rounding, as they are close to the critical point.
const STEP: f64 = 1e-8;
/// Steps in temperature and density; most states take four or five.
const MOST_STEPS: usize = 12;
/// Steps within a bracket: this many halvings reduce the widest one to rounding.
const MOST_HALVINGS: usize = 120;
/// A liquid up to this multiple of its saturated density needs no further check.
const COMPRESSED: f64 = 1.02;

/// The energy that is given together with the pressure.
#[derive(Clone, Copy, Debug)]
pub(super) enum Energy {
    Enthalpy,
    Entropy,
}

impl Energy {
    const fn quantity(self) -> Quantity {
        match self {
            Energy::Enthalpy => Quantity::Enthalpy,
            Energy::Entropy => Quantity::Entropy,
        }
    }

    const fn shift(self, offset: Offset) -> f64 {
        match self {
            Energy::Enthalpy => offset.h_j_kg,
            Energy::Entropy => offset.s_j_kg_k,
        }
    }

    /// The size of such an energy at the critical point: R T / M, R / M.
    fn by_thermal(self, pure: &Pure) -> f64 {
        let specific_gas = pure.fluid.equation.gas_constant / pure.fluid.equation.molar_mass;
        match self {
            Energy::Enthalpy => specific_gas * pure.critical_t_k,
            Energy::Entropy => specific_gas,
        }
    }

    const fn on(self, branch: &SaturatedPhase) -> f64 {
        match self {
            Energy::Enthalpy => branch.h_j_kg,
            Energy::Entropy => branch.s_j_kg_k,
        }
    }

    pub(super) const fn of_vapour(self, h_j_kg: f64, s_j_kg_k: f64) -> f64 {
        match self {
            Energy::Enthalpy => h_j_kg,
            Energy::Entropy => s_j_kg_k,
        }
    }

    const fn of(self, properties: &Properties) -> f64 {
        match self {
            Energy::Enthalpy => properties.h_j_kg,
            Energy::Entropy => properties.s_j_kg_k,
        }
    }

    /// The derivative by temperature at constant pressure.
    fn by_t_along_isobar(self, properties: &Properties) -> f64 {
        match self {
            Energy::Enthalpy => properties.cp_j_kg_k,
            Energy::Entropy => properties.cp_j_kg_k / properties.t_k,
        }
    }

    /// The derivatives by temperature at constant density, and by molar density at constant temperature.
    fn slopes(self, properties: &Properties, molar_mass: f64) -> (f64, f64) {
        match self {
            Energy::Enthalpy => properties.enthalpy_slopes(molar_mass),
            Energy::Entropy => properties.entropy_slopes(molar_mass),
        }
    }
}

/// What is looked for on one side of the saturation line; energies with the constants of the paper.
#[derive(Clone, Copy, Debug)]
pub(super) struct Target {
    pub(super) p_pa: f64,
    pub(super) energy: Energy,
    pub(super) value: f64,
    /// `Supercritical` above the critical pressure, where there are no sides.
    side: Phase,
    /// Temperatures that enclose the state, if it exists.
    pub(super) low_t_k: f64,
    pub(super) high_t_k: f64,
}

impl Pure {
    /// The state at a pressure (Pa) and specific enthalpy (J/kg), the latter counted from `reference`.
    ///
    /// Assumes that enthalpy rises with temperature along an isobar (cp > 0), as it does in every stable state: the
    /// state is then unique. Newton's method in temperature and density, and failing that a bracket in temperature.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside the pressures of the equation, in the solid, or where the temperature
    /// would lie outside those of the equation; `NotAvailable` when the fluid has no such reference state; `NoConvergence` with
    /// the relative residual.
    pub fn state_ph(&self, p_pa: f64, h_j_kg: f64, reference: Reference) -> Result<State, Error> {
        self.fluid_only(self.state_p_energy(p_pa, Energy::Enthalpy, h_j_kg, reference)?)
    }

    /// The state at a pressure (Pa) and specific entropy (J/(kg K)), the latter counted from `reference`.
    ///
    /// Method and errors: as [`Pure::state_ph`].
    pub fn state_ps(&self, p_pa: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        self.fluid_only(self.state_p_energy(p_pa, Energy::Entropy, s_j_kg_k, reference)?)
    }

    /// The state itself unless it is beyond the melting line.
    pub(super) fn fluid_only(&self, state: State) -> Result<State, Error> {
        if state.quality.is_none() {
            self.fluid_pressures(state.t_k).check(state.p_pa)?;
        }
        Ok(state)
    }

    pub(super) fn state_p_energy(
        &self,
        p_pa: f64,
        energy: Energy,
        value: f64,
        reference: Reference,
    ) -> Result<State, Error> {
        let p_pa = self.valid_pressures().check(p_pa)?;
        let offset = self.offset(reference)?;
        let value = finite(energy.quantity(), value)? - energy.shift(offset);
        let mut target = Target {
            p_pa,
            energy,
            value,
            side: Phase::Supercritical,
            low_t_k: self.fluid.lowest_t_k,
            high_t_k: self.fluid.highest_t_k,
        };
        let start = if p_pa >= self.critical_p_pa {
            if p_pa <= self.critical_p_pa * (1.0 + ON_THE_LINE) {
                let critical = self.liquid(self.critical_t_k)?;
                if libm::fabs(value - energy.on(&critical)) <= BLUR * energy.by_thermal(self) {
                    return Ok(self.two_phase(self.critical_t_k, p_pa, 0.0, offset, critical, critical));
                }
            }
            let isotherm = Isotherm::new(&self.fluid.equation, self.critical_t_k);
            (
                self.critical_t_k,
                self.density_on(&isotherm, self.critical_t_k, p_pa, Phase::Supercritical)?,
            )
        } else if p_pa < self.pressures().low {
            target.side = Phase::Vapour;
            let t_k = target.low_t_k;
            (t_k, p_pa / (self.fluid.equation.gas_constant * t_k))
        } else {
            let t_k = self.temperature_k(p_pa)?;
            let (liquid, vapour) = (self.liquid(t_k)?, self.vapour(t_k)?);
            let (boiling, dry) = (energy.on(&liquid), energy.on(&vapour));
            if value >= boiling && value <= dry && dry > boiling {
                let quality = (value - boiling) / (dry - boiling);
                return Ok(self
                    .two_phase(t_k, p_pa, quality, offset, liquid, vapour)
                    .with_pressure(p_pa));
            }
            if value < boiling {
                target.side = Phase::Liquid;
                target.high_t_k = t_k;
                self.near_liquid(&target, t_k, liquid.rho_mol_m3)
            } else {
                target.side = Phase::Vapour;
                target.low_t_k = t_k;
                self.near_vapour(&target, t_k, vapour.rho_mol_m3)
            }
        };
        let properties = match self.jointly(&target, start) {
            Some(found) => found,
            None => self.along_isobar(&target, offset)?,
        };
        let phase = self.phase_at(properties.t_k, target.side);
        Ok(State::of(&properties, self.fluid.equation.molar_mass, phase, offset).with_pressure(p_pa))
    }

    /// The phase at a temperature on one side of the saturation line.
    pub(super) fn phase_at(&self, t_k: f64, side: Phase) -> Phase {
        if t_k >= self.critical_t_k {
            Phase::Supercritical
        } else if side == Phase::Vapour {
            Phase::Vapour
        } else {
            Phase::Liquid
        }
    }

    /// Newton's method in temperature and density; `None` unless it ends in a stable state on the right side.
    fn jointly(&self, target: &Target, start: (f64, f64)) -> Option<Properties> {
        let equation = &self.fluid.equation;
        let (mut t_k, mut rho) = start;
        let mut before = f64::INFINITY;
        for _ in 0..MOST_STEPS {
            let properties = Properties::new(&Isotherm::new(equation, t_k), rho);
            let Properties {
                dp_dt_pa_k,
                dp_drho_j_mol,
                ..
            } = properties;
            let (by_t, by_rho) = target.energy.slopes(&properties, equation.molar_mass);
            let energy = Balance {
                missing: target.value - target.energy.of(&properties),
                by_t,
                by_rho,
            };
            let pressure = Balance {
                missing: target.p_pa - properties.p_pa,
                by_t: dp_dt_pa_k,
                by_rho: dp_drho_j_mol,
            };
            let Step {
                warmer,
                denser,
                determinant,
            } = newton_step(&energy, &pressure);
            if dp_drho_j_mol <= 0.0 || properties.cv_j_kg_k <= 0.0 || determinant <= 0.0 {
                return None;
            }
            let next = (t_k + warmer).clamp(target.low_t_k, target.high_t_k);
            // A step that would end beyond the ends by more than rounding has not converged.
            let cut = libm::fabs(t_k + warmer - next) > ROUNDING * t_k;
            let change = f64::max(libm::fabs(warmer) / t_k, libm::fabs(denser) / rho);
            if !(warmer + denser).is_finite() {
                return None;
            }
            let response = properties.cp_j_kg_k / properties.cv_j_kg_k;
            if !cut && (change * response <= NEAR || change <= STEP && change > 0.5 * before) {
                let found = properties.moved(next - t_k, denser, equation.molar_mass);
                return self.is_stable(&found, target.side).then_some(found);
            }
            // Where the density falls, the step is taken in volume, which in a gas is nearly linear in temperature, and keeps
            // the density positive.
            rho = if denser < 0.0 {
                rho / (1.0 - denser / rho)
            } else {
                rho + denser
            };
            t_k = next;
            before = change;
            if rho > self.densest_mol_m3() {
                return None;
            }
        }
        None
    }

    /// Whether a state lies outside the two phases, on this side of them, and not among the densities far beyond those
    /// that an equation was made for, where some fall back to valid pressures.
    pub(super) fn is_stable(&self, found: &Properties, side: Phase) -> bool {
        let Properties { t_k, rho_mol_m3, .. } = *found;
        let mut common = DENSE * self.critical_rho_mol_m3;
        if t_k < self.critical_t_k {
            let s = self.distance(t_k);
            if side == Phase::Vapour {
                return rho_mol_m3 <= self.vapour_rho_mol_m3.at(s) * (1.0 + BLUR);
            }
            let boiling = self.liquid_rho_mol_m3.at(s);
            if rho_mol_m3 < boiling * (1.0 - BLUR) {
                return false;
            }
            common = f64::max(common, COMPRESSED * boiling);
        }
        rho_mol_m3 <= common || {
            let isotherm = Isotherm::new(&self.fluid.equation, t_k);
            let phase = self.phase_at(t_k, Phase::Liquid);
            let last = self.density_on(&isotherm, t_k, self.fluid.highest_p_pa, phase);
            last.is_ok_and(|last| rho_mol_m3 <= last * (1.0 + BLUR))
        }
    }

    /// Newton's method in temperature along the isobar, kept inside a shrinking bracket by bisection.
    fn along_isobar(&self, target: &Target, offset: Offset) -> Result<Properties, Error> {
        let at = |t_k: f64, phase: Phase| -> Result<Properties, Error> {
            let isotherm = Isotherm::new(&self.fluid.equation, t_k);
            let rho = self.density_on(&isotherm, t_k, target.p_pa, phase)?;
            Ok(Properties::at_pressure(&isotherm, target.p_pa, rho))
        };
        let on_side = |t_k: f64| at(t_k, self.phase_at(t_k, target.side));
        let (mut low, mut high) = (target.low_t_k, target.high_t_k);
        let value = target.value;
        // An end on the saturation line encloses the state already; the ends of the equation have to be checked.
        let (least, most) = (self.fluid.lowest_t_k, self.fluid.highest_t_k);
        let missing_at = |t_k: f64| -> Result<f64, Error> {
            let properties = on_side(t_k)?;
            let missing = value - target.energy.of(&properties);
            Ok(missing / (target.energy.by_t_along_isobar(&properties) * t_k))
        };
        let below = low == least && missing_at(least)? < -ROUNDING;
        let above = high == most && missing_at(most)? > ROUNDING;
        if below || above {
            let dense = target.p_pa >= self.pressures().low;
            let first = target
                .energy
                .of(&at(least, if dense { Phase::Liquid } else { Phase::Vapour })?);
            let last = target.energy.of(&at(most, Phase::Supercritical)?);
            let shift = target.energy.shift(offset);
            let quantity = target.energy.quantity();
            return Err(Error::out_of_range(
                quantity,
                value + shift,
                first + shift,
                last + shift,
            ));
        }
        let mut t_k = 0.5 * (low + high);
        let mut residual = f64::INFINITY;
        for _ in 0..MOST_HALVINGS {
            let properties = on_side(t_k)?;
            let missing = value - target.energy.of(&properties);
            let slope = target.energy.by_t_along_isobar(&properties);
            residual = missing / (slope * t_k);
            if missing > 0.0 {
                low = t_k;
            } else {
                high = t_k;
            }
            let next = t_k + missing / slope;
            let inside = slope > 0.0 && next >= low && next <= high;
            let near = slope > 0.0 && libm::fabs(residual) <= ROUNDING;
            if near || high - low <= 2.0 * f64::EPSILON * high {
                return Ok(properties);
            }
            t_k = if inside { next } else { 0.5 * (low + high) };
        }
        Err(Error::no_convergence(libm::fabs(residual), ROUNDING))
    }

    /// The density (mol/m3) of a phase at a temperature (K) and pressure (Pa) at which it is stable, good to 1e-12.
    ///
    /// The bracket leaves a little room beyond the saturation line, because curve and equation differ by rounding.
    pub(super) fn density_on(&self, isotherm: &Isotherm<f64>, t_k: f64, p_pa: f64, phase: Phase) -> Result<f64, Error> {
        let ideal = p_pa / (self.fluid.equation.gas_constant * t_k);
        let densest = self.densest_mol_m3();
        if t_k >= self.critical_t_k {
            let start = ideal.min(self.critical_rho_mol_m3);
            return density_mol_m3(isotherm, p_pa, start, 0.0, densest);
        }
        let s = self.distance(t_k);
        if phase == Phase::Vapour {
            let last = self.vapour_rho_mol_m3.at(s);
            let start = self.thin_mol_m3(t_k, p_pa);
            density_mol_m3(isotherm, p_pa, start, 0.0, last * (1.0 + BLUR))
        } else {
            let first = self.liquid_rho_mol_m3.at(s);
            density_mol_m3(isotherm, p_pa, first, first * (1.0 - BLUR), densest)
        }
    }
}

pub(super) fn finite(quantity: Quantity, value: f64) -> Result<f64, Error> {
    if value.is_finite() {
        Ok(value)
    } else {
        Err(Error::not_finite(quantity, value))
    }
}
