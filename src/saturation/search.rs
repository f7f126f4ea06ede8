//! States from pressure and an energy, and from enthalpy and entropy.
//!
//! At constant pressure enthalpy and entropy rise with temperature, and jump across the saturation line: the curves
//! tell the phase, and what remains is one state on one side. It is searched in temperature and density at once; where
//! that leaves the side, in temperature alone between ends that enclose it.

use super::pure::{Branch, Offset, Pure};
use super::state::State;
use crate::eos::{Isotherm, Properties, density_mol_m3};
use crate::error::Error;
use crate::names::{ErrorKind, Phase, Quantity, Reference};

/// The relative step that is exact to first order, and below which cp and w need no second look.
const NEAR: f64 = 1e-12;
/// The relative step below which steps that no longer shrink are rounding, as they are close to the critical point.
const STEP: f64 = 1e-8;
/// What counts as rounding in a temperature, relatively.
const ROUNDING: f64 = 1e-13;
/// Steps in temperature and density; most states take four or five.
const MOST_STEPS: usize = 12;
/// Steps within a bracket: as many halvings leave nothing of the widest one.
const MOST_HALVINGS: usize = 120;
/// The share by which curve and equation may differ in density; see the head of the generated curves.
const BLUR: f64 = 1e-9;

/// The energy that is given beside the pressure.
#[derive(Clone, Copy, Debug)]
enum Energy {
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

    const fn on(self, branch: &Branch) -> f64 {
        match self {
            Energy::Enthalpy => branch.h_j_kg,
            Energy::Entropy => branch.s_j_kg_k,
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
struct Target {
    p_pa: f64,
    energy: Energy,
    value: f64,
    /// `Supercritical` above the critical pressure, where there are no sides.
    side: Phase,
    /// Temperatures that enclose the state, if it exists.
    low_t_k: f64,
    high_t_k: f64,
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

    /// The state at a specific enthalpy (J/kg) and entropy (J/(kg K)), both counted from `reference`.
    ///
    /// Along an isentrope enthalpy rises with pressure, dh/dp = v > 0, in one phase and in two: the state is unique,
    /// and is searched in pressure within a bracket. Where the isentrope leaves the equation at low pressure it does
    /// so at the lowest temperature, at high pressure at the highest.
    ///
    /// Errors: as [`Pure::state_ph`]; a bound of enthalpy that was not reached is NaN.
    pub fn state_hs(&self, h_j_kg: f64, s_j_kg_k: f64, reference: Reference) -> Result<State, Error> {
        const ENOUGH: f64 = 1e-12;
        let h_j_kg = finite(Quantity::Enthalpy, h_j_kg)?;
        let s_j_kg_k = finite(Quantity::Entropy, s_j_kg_k)?;
        let range = self.valid_pressures();
        let (mut low, mut high) = (range.low, range.high);
        let mut p_pa = 0.2 * self.critical_p_pa;
        let mut residual = f64::NAN;
        let mut nearest: Option<State> = None;
        for _ in 0..MOST_HALVINGS {
            let mut next = f64::NAN;
            match self.state_p_energy(p_pa, Energy::Entropy, s_j_kg_k, reference) {
                Ok(state) => {
                    let missing = h_j_kg - state.h_j_kg;
                    residual = missing / self.thermal_j_kg(state.t_k);
                    nearest = Some(state);
                    if libm::fabs(residual) <= ENOUGH {
                        return self.fluid_only(state);
                    }
                    let step = missing * state.rho_kg_m3 / p_pa;
                    // In a gas ln p is nearer to a straight line, in a liquid p.
                    let gas = state.rho_mol_m3 < self.critical_rho_mol_m3;
                    next = p_pa * if gas { libm::exp(step) } else { 1.0 + step };
                    if missing > 0.0 {
                        low = p_pa;
                    } else {
                        high = p_pa;
                    }
                }
                Err(error) if error.kind == ErrorKind::OutOfRange && error.quantity == Quantity::Entropy => {
                    if s_j_kg_k < error.low {
                        low = p_pa;
                    } else {
                        high = p_pa;
                    }
                }
                Err(error) => return Err(error),
            }
            if high / low - 1.0 <= 2.0 * f64::EPSILON {
                break;
            }
            let inside = next > low && next < high;
            p_pa = if inside { next } else { libm::sqrt(low * high) };
        }
        let Some(nearest) = nearest else {
            let (first, last) = self.entropies(reference)?;
            return Err(Error::out_of_range(Quantity::Entropy, s_j_kg_k, first, last));
        };
        if libm::fabs(residual) <= BLUR {
            return self.fluid_only(nearest); // the pressure has no digits left, or the state lies on the edge of the equation
        }
        if high / low - 1.0 > 2.0 * f64::EPSILON {
            return Err(Error::no_convergence(libm::fabs(residual), ENOUGH));
        }
        // The bracket closed on the end of the isentrope within the equation.
        Err(if residual > 0.0 {
            Error::out_of_range(Quantity::Enthalpy, h_j_kg, f64::NAN, nearest.h_j_kg)
        } else {
            Error::out_of_range(Quantity::Enthalpy, h_j_kg, nearest.h_j_kg, f64::NAN)
        })
    }

    /// The state itself unless it is beyond the melting line.
    fn fluid_only(&self, state: State) -> Result<State, Error> {
        if state.quality.is_none() {
            self.fluid_pressures(state.t_k).check(state.p_pa)?;
        }
        Ok(state)
    }

    /// The least and the greatest entropy of the equation.
    fn entropies(&self, reference: Reference) -> Result<(f64, f64), Error> {
        let first = self.state_tq(self.fluid.lowest_t_k, 0.0, reference)?;
        let last = self.state_tp(self.fluid.highest_t_k, self.valid_pressures().low, reference)?;
        Ok((first.s_j_kg_k, last.s_j_kg_k))
    }

    /// RT/M, J/kg: the scale of energies.
    fn thermal_j_kg(&self, t_k: f64) -> f64 {
        self.fluid.equation.gas_constant / self.fluid.equation.molar_mass * t_k
    }

    fn state_p_energy(&self, p_pa: f64, energy: Energy, value: f64, reference: Reference) -> Result<State, Error> {
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
                (t_k, liquid.rho_mol_m3)
            } else {
                target.side = Phase::Vapour;
                target.low_t_k = t_k;
                (t_k, vapour.rho_mol_m3)
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
    fn phase_at(&self, t_k: f64, side: Phase) -> Phase {
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
            let determinant = by_t * dp_drho_j_mol - by_rho * dp_dt_pa_k;
            if dp_drho_j_mol <= 0.0 || determinant <= 0.0 {
                return None;
            }
            let p_missing = target.p_pa - properties.p_pa;
            let missing = target.value - target.energy.of(&properties);
            let warmer = (missing * dp_drho_j_mol - p_missing * by_rho) / determinant;
            let denser = (p_missing * by_t - missing * dp_dt_pa_k) / determinant;
            let next = (t_k + warmer).clamp(target.low_t_k, target.high_t_k);
            // A step that would end beyond the ends by more than rounding has not arrived.
            let cut = libm::fabs(t_k + warmer - next) > ROUNDING * t_k;
            let change = f64::max(libm::fabs(warmer) / t_k, libm::fabs(denser) / rho);
            if !cut && (change <= NEAR || change <= STEP && change > 0.5 * before) {
                let found = properties.moved(next - t_k, denser, equation.molar_mass);
                return self
                    .is_stable(found.t_k, found.rho_mol_m3, target.side)
                    .then_some(found);
            }
            // A fluid that expands is followed in its volume, which for a gas is nearly straight over temperature and
            // leaves a density in any case.
            rho = if denser < 0.0 {
                rho / (1.0 - denser / rho)
            } else {
                rho + denser
            };
            t_k = next;
            before = change;
            if !rho.is_finite() || rho > self.densest_mol_m3() {
                return None;
            }
        }
        None
    }

    /// Whether a state lies outside the two phases, on this side of them.
    fn is_stable(&self, t_k: f64, rho_mol_m3: f64, side: Phase) -> bool {
        if t_k >= self.critical_t_k {
            return true;
        }
        let s = self.distance(t_k);
        if side == Phase::Vapour {
            rho_mol_m3 <= self.vapour_rho_mol_m3.at(s) * (1.0 + BLUR)
        } else {
            rho_mol_m3 >= self.liquid_rho_mol_m3.at(s) * (1.0 - BLUR)
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
        // An end on the saturation line encloses the state already; the ends of the equation have to be asked.
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
            // p = rho R T (1 + B rho), with the B that the saturated vapour has.
            let saturated = self.pressure_pa.at(t_k) * ideal / p_pa;
            let b = (saturated / last - 1.0) / last;
            let start = 2.0 * ideal / (1.0 + libm::sqrt(f64::max(1.0 + 4.0 * b * ideal, 0.0)));
            density_mol_m3(isotherm, p_pa, start, 0.0, last * (1.0 + BLUR))
        } else {
            let first = self.liquid_rho_mol_m3.at(s);
            density_mol_m3(isotherm, p_pa, first, first * (1.0 - BLUR), densest)
        }
    }
}

fn finite(quantity: Quantity, value: f64) -> Result<f64, Error> {
    if value.is_finite() {
        Ok(value)
    } else {
        Err(Error::not_finite(quantity, value))
    }
}
