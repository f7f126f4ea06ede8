//! The refrigerant of the circuit, pure or mixed, with one set of functions.

use super::equilibrium::{Critical, Saturation, State};
use super::made::Composition;
use super::mixed::Mixed;
use super::mixed_table as table;
use super::pure::{LEAST_CRITICAL_K, Single};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::range::Range;

/// A refrigerant in the circuit.
#[derive(Clone, Copy, Debug)]
#[allow(clippy::large_enum_variant)] // without alloc the larger one cannot be boxed
pub(in crate::vehicle) enum WorkingFluid<'a> {
    /// A pure one.
    Single(Single),
    /// A blend or a charge of two.
    Mixed(&'a Mixed),
}

/// A fluid, or the mixture that it is borrowed from.
#[allow(clippy::large_enum_variant)] // without alloc the larger one cannot be boxed
pub(in crate::vehicle) enum Filling {
    /// One that is in the tables.
    Ready(WorkingFluid<'static>),
    /// One calculated for this composition.
    Made(Mixed),
}

impl Filling {
    /// The fluid of a composition.
    ///
    /// Errors: those of [`WorkingFluid::of`] and of [`Mixed::of`].
    pub(in crate::vehicle) fn of(composition: &Composition) -> Result<Self, Error> {
        if let Some(refrigerant) = composition.listed()
            && let Some(ready) = WorkingFluid::ready(refrigerant)
        {
            return ready.map(Self::Ready);
        }
        // No mixture with R-744 condenses as these circuits need it.
        if composition.holds(Refrigerant::R744) {
            return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
        }
        let mixed = Mixed::of(composition)?;
        if mixed.critical.0 < LEAST_CRITICAL_K {
            return Err(Error::of(ErrorKind::NotAvailable, Quantity::Name));
        }
        Ok(Self::Made(mixed))
    }

    /// The fluid.
    pub(in crate::vehicle) fn fluid(&self) -> WorkingFluid<'_> {
        match self {
            Self::Ready(fluid) => *fluid,
            Self::Made(mixed) => WorkingFluid::Mixed(mixed),
        }
    }
}

impl WorkingFluid<'static> {
    /// A fluid that needs no calculation; `None` for a blend that does.
    fn ready(refrigerant: Refrigerant) -> Option<Result<Self, Error>> {
        match crate::saturation::blend(refrigerant) {
            None => Some(Single::of(refrigerant).map(Self::Single)),
            Some(_) => table::of(refrigerant).map(|mixed| Ok(Self::Mixed(mixed))),
        }
    }

    /// The fluid of a refrigerant that is in the tables: any pure one, R-407C and R-513A.
    ///
    /// Errors: `NotAvailable` for one that does not condense at the temperatures of a vehicle's condenser, and for other
    /// blends.
    #[cfg(test)]
    pub(in crate::vehicle) fn of(refrigerant: Refrigerant) -> Result<Self, Error> {
        Self::ready(refrigerant).unwrap_or(Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)))
    }
}

impl WorkingFluid<'_> {
    /// The lowest pressure at which the circuit is modelled, Pa: a deep vacuum.
    pub(in crate::vehicle) fn lowest_pa(&self) -> f64 {
        match self {
            Self::Single(single) => single.lowest_pa(),
            Self::Mixed(mixed) => mixed.pressures.0,
        }
    }

    /// The highest pressure of a condenser, Pa: near the critical one; of a gas cooler, 14.5 MPa.
    pub(in crate::vehicle) fn highest_pa(&self) -> f64 {
        match self {
            Self::Single(single) => single.highest_pa(),
            Self::Mixed(mixed) => mixed.pressures.1,
        }
    }

    /// Whether the high side works above the critical pressure in warm weather.
    pub(in crate::vehicle) fn is_transcritical(&self) -> bool {
        match self {
            Self::Single(single) => single.is_transcritical(),
            Self::Mixed(_) => false,
        }
    }

    /// Condensing conductance per that of R-134a in the same tubes at the same flow; of a mixture the mean by mass.
    pub(in crate::vehicle) fn condensing_ratio(&self) -> f64 {
        match self {
            Self::Single(single) => single.condensing_ratio(),
            Self::Mixed(mixed) => mixed.ratios.0,
        }
    }

    /// Boiling conductance per that of R-134a in the same tubes at the same flow; of a mixture the mean by mass.
    pub(in crate::vehicle) fn boiling_ratio(&self) -> f64 {
        match self {
            Self::Single(single) => single.boiling_ratio(),
            Self::Mixed(mixed) => mixed.ratios.1,
        }
    }

    /// Equilibrium at a pressure.
    pub(in crate::vehicle) fn saturation(&self, p_pa: f64) -> Result<Saturation, Error> {
        match self {
            Self::Single(single) => single.saturation(p_pa),
            Self::Mixed(mixed) => mixed.saturation(p_pa),
        }
    }

    /// Pressure and state above the critical temperature at a density.
    ///
    /// Errors: `OutOfRange` for a mixture, which in no vehicle is this warm at rest.
    pub(in crate::vehicle) fn filling(&self, t_k: f64, rho_kg_m3: f64) -> Result<(f64, State), Error> {
        match self {
            Self::Single(single) => single.filling(t_k, rho_kg_m3),
            Self::Mixed(mixed) => {
                let reached = Range::new(Quantity::Temperature, mixed.dew_k(mixed.pressures.0), mixed.critical.0);
                let refused = reached.check(t_k).err();
                Err(refused.unwrap_or(Error::of(ErrorKind::NotAvailable, Quantity::Temperature)))
            }
        }
    }

    /// Dew temperature at a pressure, K.
    pub(in crate::vehicle) fn dew_k(&self, p_pa: f64) -> Result<f64, Error> {
        match self {
            Self::Single(single) => single.dew_k(p_pa),
            Self::Mixed(mixed) => Ok(mixed.dew_k(p_pa)),
        }
    }

    /// Bubble temperature at a pressure, K.
    pub(in crate::vehicle) fn bubble_k(&self, p_pa: f64) -> Result<f64, Error> {
        match self {
            Self::Single(single) => single.dew_k(p_pa),
            Self::Mixed(mixed) => Ok(mixed.bubble_k(p_pa)),
        }
    }

    /// Dew pressure at a temperature, Pa; that of the end of the curve beyond its ends.
    pub(in crate::vehicle) fn dew_pa(&self, t_k: f64) -> Result<f64, Error> {
        match self {
            Self::Single(single) => single.dew_pa(t_k),
            Self::Mixed(mixed) => Ok(mixed.dew_pa(t_k)),
        }
    }

    /// Bubble pressure at a temperature, Pa; that of the end of the curve beyond its ends.
    pub(in crate::vehicle) fn bubble_pa(&self, t_k: f64) -> Result<f64, Error> {
        match self {
            Self::Single(single) => single.bubble_pa(t_k),
            Self::Mixed(mixed) => Ok(mixed.bubble_pa(t_k)),
        }
    }

    /// Critical temperature (K) and pressure (Pa); of a charge on no list, means by moles.
    pub(in crate::vehicle) fn critical(&self) -> Critical {
        match self {
            Self::Single(single) => single.critical(),
            Self::Mixed(mixed) => Critical {
                t_k: mixed.critical.0,
                p_pa: mixed.critical.1,
            },
        }
    }

    /// Enthalpy and density of liquid at `t_k` under the pressure of `saturation`, from the saturated liquid of that
    /// temperature.
    pub(in crate::vehicle) fn subcooled(&self, saturation: &Saturation, t_k: f64) -> Result<(f64, f64), Error> {
        match self {
            Self::Single(single) => single.subcooled(saturation, t_k),
            Self::Mixed(mixed) => Ok(mixed.subcooled(saturation, t_k)),
        }
    }

    /// The temperature at which saturated liquid has the enthalpy `h_j_kg`, below that of `saturation`, K.
    pub(in crate::vehicle) fn liquid_k(&self, saturation: &Saturation, h_j_kg: f64) -> Result<f64, Error> {
        match self {
            Self::Single(single) => single.liquid_k(saturation, h_j_kg),
            Self::Mixed(mixed) => Ok(mixed.liquid_k(saturation, h_j_kg)),
        }
    }

    /// Specific heat of liquid along the saturation line at `saturation`, J/(kg K).
    pub(in crate::vehicle) fn liquid_cp_j_kg_k(&self, saturation: &Saturation) -> Result<f64, Error> {
        match self {
            Self::Single(single) => single.liquid_cp_j_kg_k(saturation),
            Self::Mixed(mixed) => Ok(mixed.liquid_cp_j_kg_k(saturation)),
        }
    }

    /// The state at the suction coordinate `x`: quality `1 + x` below zero, superheat `200 K x` above.
    pub(in crate::vehicle) fn at_coordinate(&self, saturation: &Saturation, x: f64) -> Result<State, Error> {
        match self {
            Self::Single(single) => single.at_coordinate(saturation, x),
            Self::Mixed(mixed) => Ok(mixed.at_coordinate(saturation, x)),
        }
    }

    /// The state at the pressure of `saturation` and an entropy.
    pub(in crate::vehicle) fn at_entropy(&self, saturation: &Saturation, s_j_kg_k: f64) -> Result<State, Error> {
        match self {
            Self::Single(single) => single.at_entropy(saturation, s_j_kg_k),
            Self::Mixed(mixed) => mixed.at_entropy(saturation, s_j_kg_k),
        }
    }

    /// The state at the pressure of `saturation` and an enthalpy.
    pub(in crate::vehicle) fn at_enthalpy(&self, saturation: &Saturation, h_j_kg: f64) -> Result<State, Error> {
        match self {
            Self::Single(single) => single.at_enthalpy(saturation, h_j_kg),
            Self::Mixed(mixed) => mixed.at_enthalpy(saturation, h_j_kg),
        }
    }
}
