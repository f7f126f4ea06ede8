//! A blend with its mixture model: one phase at a temperature and pressure, or liquid and vapour at a share of vapour.

use super::blend::Blend;
use super::state::{ON_THE_LINE, State};
use crate::eos::Properties;
use crate::error::Error;
use crate::mixture::{Boiling, Fixed, Incipient, MOST_COMPONENTS, Mixture, Side, Split, Two, Vector};
use crate::names::{ErrorKind, Phase, Quantity, Reference};
use crate::numerics::GAS_J_MOL_K;
use core::cell::Cell;

/// Steps of a search within a bracket; five are usual, and this many halvings reduce any bracket to rounding.
const MOST_STEPS: usize = 60;
/// The relative difference of bubble and dew pressure below which temperature and pressure do not determine the share of
/// vapour.
const NO_GLIDE: f64 = 1e-9;
/// A share of vapour this near to the last one is searched from the equilibrium found there.
const BESIDE: f64 = 0.2;
/// What one state may cost, in equilibria of known phases: the bound of every search. Most states take less than 20.
const MOST_WORK: u32 = 400;
/// What the other searches cost in that unit: a bubble or dew point, and whether a phase splits.
const POINT: u32 = 2;
const SPLITTING: u32 = 8;

/// Pressures between which liquid and vapour part above the end of the lines, per the critical one.
const AROUND: [f64; 2] = [0.6, 1.4];

/// A density or an energy closer to the line than this, relatively, is on it.
pub(super) const EDGE: f64 = 1e-10;

/// A state, with its equilibrium where it has two phases.
#[derive(Clone, Copy, Debug)]
pub(super) struct Found {
    pub(super) state: State,
    pub(super) boiling: Option<Boiling>,
}

impl Found {
    pub(super) fn with_pressure(mut self, p_pa: f64) -> Self {
        self.state = self.state.with_pressure(p_pa);
        self
    }
}

impl From<State> for Found {
    fn from(state: State) -> Self {
        Self { state, boiling: None }
    }
}

/// A blend with its model at hand and the reference that its energies count from.
pub(super) struct Model {
    pub(super) blend: &'static Blend,
    pub(super) mixture: Mixture<f64>,
    z: [f64; MOST_COMPONENTS],
    reference: Reference,
    /// What is left of [`MOST_WORK`].
    left: Cell<u32>,
}

impl Model {
    pub(super) fn new(blend: &'static Blend, reference: Reference) -> Result<Self, Error> {
        let (mixture, z) = blend.mixture()?;
        Ok(Self {
            blend,
            mixture,
            z,
            reference,
            left: Cell::new(MOST_WORK),
        })
    }

    /// Subtracts a cost from what is left for one state.
    ///
    /// Errors: `NoConvergence` where less is left.
    pub(super) fn spend(&self, cost: u32) -> Result<(), Error> {
        let left = self.left.get().checked_sub(cost);
        self.left.set(left.unwrap_or(0));
        left.map(|_| ()).ok_or(Error::no_convergence(f64::INFINITY, 0.0))
    }

    /// The amounts of the components per volume in one phase of the blend's composition.
    pub(super) fn amounts(&self, rho_mol_m3: f64) -> Vector<f64> {
        let mut rho = [1.0; MOST_COMPONENTS];
        for (rho, z) in rho.iter_mut().zip(self.z()) {
            *rho = z * rho_mol_m3;
        }
        rho
    }

    /// The phase at a temperature outside the two phases, on one side of them.
    pub(super) fn phase_at(&self, t_k: f64, side: Side) -> Phase {
        match side {
            _ if t_k >= self.blend.critical_t_k => Phase::Supercritical,
            Side::Bubble => Phase::Liquid,
            Side::Dew => Phase::Vapour,
        }
    }

    pub(super) fn z(&self) -> &[f64] {
        &self.z[..self.blend.parts.len()]
    }

    pub(super) fn one(&self, properties: &Properties, phase: Phase) -> State {
        State::of(
            properties,
            self.blend.molar_mass,
            phase,
            self.blend.offset(self.reference),
        )
    }

    /// One phase as liquid or vapour.
    pub(super) fn one_phase(&self, t_k: f64, p_pa: f64, side: Side) -> Result<State, Error> {
        self.spend(1)?;
        let phase = self.phase_at(t_k, side);
        let properties = self.mixture.one_phase(self.z(), t_k, p_pa, side)?;
        Ok(self.one(&properties, phase).with_pressure(p_pa))
    }

    /// The state at a temperature and pressure within the valid ones.
    pub(super) fn at(&self, t_k: f64, p_pa: f64) -> Result<Found, Error> {
        let blend = self.blend;
        if t_k <= blend.highest_t_k {
            let bubble_pa = blend.pressure_pa(Side::Bubble, t_k)?;
            let dew_pa = blend.pressure_pa(Side::Dew, t_k)?;
            if p_pa > bubble_pa * (1.0 + ON_THE_LINE) {
                return Ok(self.one_phase(t_k, p_pa, Side::Bubble)?.into());
            }
            if p_pa < dew_pa * (1.0 - ON_THE_LINE) {
                return Ok(self.one_phase(t_k, p_pa, Side::Dew)?.into());
            }
            if bubble_pa - dew_pa < NO_GLIDE * bubble_pa {
                return Err(Error::of(ErrorKind::TwoPhase, Quantity::AbsolutePressure));
            }
            let fixed = Fixed::Temperature(t_k);
            let ends = self.ends(fixed)?;
            let found = self.between(&ends, fixed, |state| -state.p_pa, -p_pa)?;
            return Ok(found.with_pressure(p_pa));
        }
        self.spend(SPLITTING)?;
        match self.mixture.split(self.z(), t_k, p_pa)? {
            Split::One { rho_mol_m3, .. } => {
                let side = if rho_mol_m3 > blend.critical_rho_mol_m3 {
                    Side::Bubble
                } else {
                    Side::Dew
                };
                let properties = self.mixture.properties(t_k, &self.amounts(rho_mol_m3));
                let state = self.one(&properties, self.phase_at(t_k, side));
                Ok(state.with_pressure(p_pa).into())
            }
            Split::Two(two) => Ok(Found {
                state: self.two(t_k, &two),
                boiling: Some(Boiling { t_k, two }),
            }),
        }
    }

    /// Whether a homogeneous phase of the blend is stable, so that it lies outside the lines.
    pub(super) fn is_stable(&self, found: &Properties) -> Result<bool, Error> {
        let blend = self.blend;
        let Properties {
            t_k, p_pa, rho_mol_m3, ..
        } = *found;
        if t_k <= blend.highest_t_k {
            let t_k = t_k.max(blend.lowest_t_k);
            let (bubble_pa, dew_pa) = (
                blend.pressure_pa(Side::Bubble, t_k)?,
                blend.pressure_pa(Side::Dew, t_k)?,
            );
            // The rounding of the density moves the pressure, in a liquid by much more than the pressure's own rounding.
            let blur = EDGE * (p_pa + rho_mol_m3 * GAS_J_MOL_K * t_k);
            let side = if p_pa >= bubble_pa - blur {
                Side::Bubble
            } else if p_pa <= dew_pa + blur {
                Side::Dew
            } else {
                return Ok(false);
            };
            // The pressure may be that of another density between the phases.
            let one = self.one_phase(t_k, p_pa, side)?;
            return Ok(libm::fabs(one.rho_mol_m3 / rho_mol_m3 - 1.0) < SAME);
        }
        if found.dp_drho_j_mol <= 0.0 || p_pa <= 0.0 {
            return Ok(false);
        }
        self.spend(SPLITTING)?;
        Ok(match self.mixture.split(self.z(), t_k, p_pa)? {
            Split::One { rho_mol_m3: one, .. } => libm::fabs(one / rho_mol_m3 - 1.0) < SAME,
            Split::Two(_) => false,
        })
    }

    /// Liquid and vapour of a density above the end of the lines, where only a phase split finds them: searched over the
    /// pressure.
    pub(super) fn parted(&self, t_k: f64, rho_mol_m3: f64) -> Result<State, Error> {
        let miss_at = |p_pa: f64| -> Result<(f64, Found), Error> {
            let found = self.at(t_k, p_pa)?;
            Ok((libm::log(found.state.rho_mol_m3 / rho_mol_m3), found))
        };
        let ends = AROUND.map(|share| share * self.blend.critical_p_pa);
        let [low, high] = ends.map(|p_pa| miss_at(p_pa).map(|(miss, _)| (p_pa, miss)));
        let found = enclosed(low?, high?, 1.0, miss_at)?;
        let off = libm::fabs(found.state.rho_mol_m3 / rho_mol_m3 - 1.0);
        if off > SAME {
            return Err(Error::no_convergence(off, SAME));
        }
        Ok(found.state)
    }

    pub(super) const fn reference(&self) -> Reference {
        self.reference
    }

    /// The bubble and the dew point at a temperature or a pressure, with all that the model says of them.
    pub(super) fn ends(&self, fixed: Fixed<f64>) -> Result<(Incipient<f64>, Incipient<f64>), Error> {
        let end = |side| {
            // The curve gives the temperature, and a search at a temperature is more reliable.
            let t_k = match fixed {
                Fixed::Temperature(t_k) => t_k,
                Fixed::Pressure(p_pa) => self.blend.temperature_k(side, p_pa)?,
            };
            self.spend(POINT)?;
            let mut point = self.mixture.point(self.z(), side, Fixed::Temperature(t_k))?;
            if let Fixed::Pressure(p_pa) = fixed {
                point.p_pa = p_pa;
            }
            Ok(point)
        };
        Ok((end(Side::Bubble)?, end(Side::Dew)?))
    }

    /// The state on one side: a saturated liquid or vapour with all that one phase has.
    pub(super) fn side(&self, point: &Incipient<f64>, side: Side) -> State {
        let quality = match side {
            Side::Bubble => 0.0,
            Side::Dew => 1.0,
        };
        let properties = self.mixture.properties(point.t_k, &self.amounts(point.rho_mol_m3));
        let one = self.one(&properties, Phase::TwoPhase);
        State {
            quality: Some(quality),
            ..one
        }
        .with_pressure(point.p_pa)
    }

    /// The state with a share of vapour.
    pub(super) fn boiling_at(&self, fixed: Fixed<f64>, quality: f64) -> Result<State, Error> {
        let ends = self.ends(fixed)?;
        let found = self.at_quality(&ends, fixed, quality, None)?;
        Ok(match fixed {
            Fixed::Temperature(_) => found.state,
            Fixed::Pressure(p_pa) => found.state.with_pressure(p_pa),
        })
    }

    fn at_quality(
        &self,
        (bubble, dew): &(Incipient<f64>, Incipient<f64>),
        fixed: Fixed<f64>,
        quality: f64,
        near: Option<Boiling>,
    ) -> Result<Found, Error> {
        let start = Boiling::between(self.z(), quality, bubble, dew);
        for (share, point, side) in [(0.0, bubble, Side::Bubble), (1.0, dew, Side::Dew)] {
            if quality == share {
                return Ok(Found {
                    state: self.side(point, side),
                    boiling: Some(start),
                });
            }
        }
        if let Some(near) = near
            && let Ok(found) = self.boiling(fixed, quality, &near)
        {
            return Ok(found);
        }
        self.boiling(fixed, quality, &start)
    }

    /// Liquid and vapour at a share of vapour, from an equilibrium nearby.
    pub(super) fn boiling(&self, fixed: Fixed<f64>, quality: f64, near: &Boiling) -> Result<Found, Error> {
        self.spend(1)?;
        let boiling = self.mixture.boiling(self.z(), fixed, quality, near)?;
        let mut state = self.two(boiling.t_k, &boiling.two);
        state.quality = Some(quality);
        Ok(Found {
            state,
            boiling: Some(boiling),
        })
    }

    /// Both phases together.
    pub(super) fn two(&self, t_k: f64, two: &Two) -> State {
        let liquid = self.mixture.properties(t_k, &two.liquid);
        let vapour = self.mixture.properties(t_k, &two.vapour);
        // Per mole of charge
        let mass =
            |volume: f64, rho: &[f64; MOST_COMPONENTS], total: f64| volume * total * self.mixture.molar_mass(rho);
        let liquid_kg = mass(two.liquid_m3_mol, &two.liquid, liquid.rho_mol_m3);
        let vapour_kg = mass(two.vapour_m3_mol, &two.vapour, vapour.rho_mol_m3);
        let quality = vapour_kg / (liquid_kg + vapour_kg);
        let offset = self.blend.offset(self.reference);
        let mixed = |liquid: f64, vapour: f64| liquid + quality * (vapour - liquid);
        let rho_mol_m3 = 1.0 / (two.liquid_m3_mol + two.vapour_m3_mol);
        State {
            phase: Phase::TwoPhase,
            quality: Some(quality),
            t_k,
            p_pa: two.p_pa,
            rho_mol_m3,
            rho_kg_m3: rho_mol_m3 * self.blend.molar_mass,
            h_j_kg: mixed(liquid.h_j_kg, vapour.h_j_kg) + offset.h_j_kg,
            s_j_kg_k: mixed(liquid.s_j_kg_k, vapour.s_j_kg_k) + offset.s_j_kg_k,
            response: None,
        }
    }

    /// The state of liquid and vapour at which `figure`, which rises with the share of vapour, has a value.
    pub(super) fn between(
        &self,
        ends: &(Incipient<f64>, Incipient<f64>),
        fixed: Fixed<f64>,
        figure: impl Fn(&State) -> f64,
        value: f64,
    ) -> Result<Found, Error> {
        let low = self.at_quality(ends, fixed, 0.0, None)?;
        let high = self.at_quality(ends, fixed, 1.0, None)?;
        let miss = |found: &Found| figure(&found.state) - value;
        if miss(&low) >= 0.0 {
            return Ok(low);
        }
        if miss(&high) <= 0.0 {
            return Ok(high);
        }
        let scale = miss(&high) - miss(&low);
        let last = Cell::new(None);
        enclosed((0.0, miss(&low)), (1.0, miss(&high)), scale, |quality| {
            let near = last.get().and_then(|(at, boiling): (f64, Option<Boiling>)| {
                boiling.filter(|_| libm::fabs(at - quality) < BESIDE)
            });
            let found = self.at_quality(ends, fixed, quality, near)?;
            last.set(Some((quality, found.boiling)));
            Ok((miss(&found), found))
        })
    }
}

/// Two densities are the same where they differ by less than this, relatively.
pub(super) const SAME: f64 = 1e-6;

/// The state at which a rising residual is zero, by a secant rule that moves both ends of a bracket.
///
/// Source of the rule: the Illinois method, Dowell and Jarratt, BIT 11 (1971) 168, doi 10.1007/BF01934364; halving where it is slow.
///
/// Errors: those of `at`.
pub(super) fn enclosed(
    (mut low, mut low_miss): (f64, f64),
    (mut high, mut high_miss): (f64, f64),
    scale: f64,
    at: impl Fn(f64) -> Result<(f64, Found), Error>,
) -> Result<Found, Error> {
    let mut kept = 0;
    let mut last = None;
    for step in 0..MOST_STEPS {
        let secant = low - low_miss * (high - low) / (high_miss - low_miss);
        let is_slow = step % 8 == 7 || !(secant > low && secant < high);
        let x = if is_slow { 0.5 * (low + high) } else { secant };
        let (miss, found) = at(x)?;
        last = Some(found);
        if libm::fabs(miss) <= 1e-14 * libm::fabs(scale) || high - low <= 1e-15 * libm::fabs(high) {
            break;
        }
        if miss < 0.0 {
            (low, low_miss) = (x, miss);
            if kept < 0 {
                high_miss *= 0.5;
            }
            kept = -1;
        } else {
            (high, high_miss) = (x, miss);
            if kept > 0 {
                low_miss *= 0.5;
            }
            kept = 1;
        }
    }
    last.ok_or(Error::no_convergence(f64::INFINITY, 0.0))
}
