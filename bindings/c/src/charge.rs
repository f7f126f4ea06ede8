//! Any charge: leaked, mixed, contaminated
//!
//! The saturation lines of listed refrigerants are precomputed. Any other charge is given by its parts: refrigerants, pure or
//! blends, by mass in any common unit, and air. Its bubble and dew points are solved with the mixture model, which takes about
//! a tenth of a millisecond.
//!
//!     double pressure_pa_abs;
//!     coldloop_shares charge = {.count = 2};
//!     charge.refrigerants[0] = COLDLOOP_REFRIGERANT_R134A, charge.masses[0] = 0.9;
//!     charge.refrigerants[1] = COLDLOOP_REFRIGERANT_R22, charge.masses[1] = 0.1;
//!     coldloop_charge_bubble_pressure(&charge, 273.15, &pressure_pa_abs, NULL);
//!
//! All of them refuse a number that is no coldloop_refrigerant with UNKNOWN_NAME, NaN and infinities with NOT_FINITE, a
//! charge without a refrigerant with MISSING, and with OUT_OF_RANGE a mass below zero or above 1000, more than eight
//! components (the parts of blends count, and three for air), temperatures below 193.15 K or above 473.15 K, and what lies
//! beyond the critical point of the charge. A search that does not end is NO_CONVERGENCE.

use crate::boundary::{Failure, Record, known, member, number, record, sized, value};
use crate::error::ColdloopError;
use crate::memory::read;
use crate::names::ColdloopStatus;
use coldloop::LeakPhase;
use coldloop::saturation::MOST_COMPONENTS;
use coldloop::saturation::{Charge, Shares};
use coldloop::units::{AbsolutePressure, Density, in_kelvins, kelvins};
use coldloop::{Error, Quantity, Refrigerant};
use core::mem::{MaybeUninit, size_of};

/// The most parts of a charge, and the most components.
pub const COLDLOOP_MOST_COMPONENTS: usize = 8;

/// What a charge or one of its phases is made of. As an answer, pure refrigerants with mass fractions, each once.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopShares {
    /// How many places of the two arrays are in use, at most COLDLOOP_MOST_COMPONENTS.
    pub count: u32,
    /// Each a coldloop_refrigerant.
    pub refrigerants: [u32; COLDLOOP_MOST_COMPONENTS],
    /// Their masses.
    pub masses: [f64; COLDLOOP_MOST_COMPONENTS],
    /// The mass of air.
    pub air: f64,
}

const _: () = assert!(COLDLOOP_MOST_COMPONENTS == MOST_COMPONENTS);

const NAN: f64 = f64::NAN;

const NOTHING: ColdloopShares = ColdloopShares {
    count: 0,
    refrigerants: [0; COLDLOOP_MOST_COMPONENTS],
    masses: [NAN; COLDLOOP_MOST_COMPONENTS],
    air: NAN,
};

/// A charge at a temperature and pressure. Set `size` to sizeof(coldloop_phase_split).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopPhaseSplit {
    /// sizeof(coldloop_phase_split), so that the struct can grow.
    pub size: usize,
    /// Density of all, kg/m3.
    pub density_kg_m3: f64,
    /// Mass fraction of vapour, 0 to 1; NaN where there is one phase, as are the figures below.
    pub quality: f64,
    /// Density of the denser phase, kg/m3.
    pub liquid_density_kg_m3: f64,
    /// Density of the other, kg/m3.
    pub vapour_density_kg_m3: f64,
    /// Composition of the denser phase; a count of 0 where there is one phase.
    pub liquid: ColdloopShares,
    /// Composition of the other.
    pub vapour: ColdloopShares,
}

sized!(
    ColdloopPhaseSplit,
    Self {
        size: 0,
        density_kg_m3: NAN,
        quality: NAN,
        liquid_density_kg_m3: NAN,
        vapour_density_kg_m3: NAN,
        liquid: NOTHING,
        vapour: NOTHING,
    }
);

/// What a leak has left. Set `size` to sizeof(coldloop_remainder).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopRemainder {
    /// sizeof(coldloop_remainder), so that the struct can grow.
    pub size: usize,
    /// Whether liquid is left: 1 or 0.
    pub has_liquid: u32,
    /// Pressure at rest above vacuum, Pa.
    pub pressure_pa_abs: f64,
    /// Composition, which can be the charge of a further call.
    pub shares: ColdloopShares,
}

sized!(
    ColdloopRemainder,
    Self {
        size: 0,
        has_liquid: 0,
        pressure_pa_abs: NAN,
        shares: NOTHING,
    }
);

/// `ColdloopShares` as an argument: places that are not in use need not be initialised.
#[repr(C)]
#[derive(Clone, Copy)]
struct AsGiven {
    count: u32,
    refrigerants: [MaybeUninit<u32>; COLDLOOP_MOST_COMPONENTS],
    masses: [MaybeUninit<f64>; COLDLOOP_MOST_COMPONENTS],
    air: f64,
}

const _: () = assert!(size_of::<AsGiven>() == size_of::<ColdloopShares>());

fn charge_of(shares: *const ColdloopShares) -> Result<Charge, Failure> {
    let shares = read(shares.cast::<AsGiven>()).ok_or(Failure::Door(ColdloopStatus::NullPointer))?;
    let count = usize::try_from(shares.count).unwrap_or(usize::MAX);
    let mut parts = [(Refrigerant::R134a, 0.0); COLDLOOP_MOST_COMPONENTS];
    let Some(places) = parts.get_mut(..count) else {
        let most = f64::from(u8::try_from(COLDLOOP_MOST_COMPONENTS).unwrap_or(u8::MAX));
        return Err(Error::out_of_range(Quantity::Rows, f64::from(shares.count), 1.0, most).into());
    };
    for ((place, code), mass) in places.iter_mut().zip(shares.refrigerants).zip(shares.masses) {
        // SAFETY: the header asks for as many initialised places as `count` says.
        let (code, mass) = unsafe { (code.assume_init(), mass.assume_init()) };
        *place = (known(code)?, mass);
    }
    Ok(Charge::new(places, shares.air)?)
}

fn told(shares: &Shares) -> ColdloopShares {
    let mut answer = ColdloopShares {
        masses: [0.0; COLDLOOP_MOST_COMPONENTS],
        air: shares.air(),
        ..NOTHING
    };
    let places = answer.refrigerants.iter_mut().zip(&mut answer.masses);
    for ((code, mass), (refrigerant, share)) in places.zip(shares.refrigerants()) {
        (*code, *mass) = (refrigerant.code(), share);
        answer.count += 1;
    }
    answer
}

fn point(
    charge: *const ColdloopShares,
    out: *mut f64,
    details: *mut ColdloopError,
    of: impl FnOnce(&Charge) -> Result<f64, Error>,
) -> u32 {
    number(out, details, || Ok(of(&charge_of(charge)?)?))
}

/// The composition of a charge: blends as their parts, each component once, as mass fractions of sum one with the air.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_charge_shares(
    charge: *const ColdloopShares,
    shares: *mut ColdloopShares,
    error: *mut ColdloopError,
) -> u32 {
    value(shares, NOTHING, error, || Ok(told(&charge_of(charge)?.shares())))
}

/// Pressure at which the liquid of a charge begins to boil; air dissolved in it counts.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_charge_bubble_pressure(
    charge: *const ColdloopShares,
    temperature_k: f64,
    pressure_pa_abs: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    point(charge, pressure_pa_abs, error, |charge| {
        Ok(charge.bubble_pressure(kelvins(temperature_k))?.pa())
    })
}

/// Pressure at which the vapour of a charge begins to condense.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_charge_dew_pressure(
    charge: *const ColdloopShares,
    temperature_k: f64,
    pressure_pa_abs: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    point(charge, pressure_pa_abs, error, |charge| {
        Ok(charge.dew_pressure(kelvins(temperature_k))?.pa())
    })
}

/// Temperature at which the liquid of a charge begins to boil.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_charge_bubble_temperature(
    charge: *const ColdloopShares,
    pressure_pa_abs: f64,
    temperature_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    point(charge, temperature_k, error, |charge| {
        charge
            .bubble_temperature(AbsolutePressure::from_pa(pressure_pa_abs))
            .map(in_kelvins)
    })
}

/// Temperature at which the vapour of a charge begins to condense.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_charge_dew_temperature(
    charge: *const ColdloopShares,
    pressure_pa_abs: f64,
    temperature_k: *mut f64,
    error: *mut ColdloopError,
) -> u32 {
    point(charge, temperature_k, error, |charge| {
        charge
            .dew_temperature(AbsolutePressure::from_pa(pressure_pa_abs))
            .map(in_kelvins)
    })
}

/// A charge at a temperature and pressure: one phase, or liquid and vapour with what each is made of.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_charge_split(
    charge: *const ColdloopShares,
    temperature_k: f64,
    pressure_pa_abs: f64,
    phase_split: *mut ColdloopPhaseSplit,
    error: *mut ColdloopError,
) -> u32 {
    record(phase_split, error, || {
        let found = charge_of(charge)?.split(kelvins(temperature_k), AbsolutePressure::from_pa(pressure_pa_abs))?;
        let density = |phase: &Option<(Density, Shares)>| phase.as_ref().map_or(NAN, |(density, _)| density.kg_m3());
        let shares = |phase: &Option<(Density, Shares)>| phase.as_ref().map_or(NOTHING, |(_, shares)| told(shares));
        Ok(ColdloopPhaseSplit {
            density_kg_m3: found.density.kg_m3(),
            quality: found.quality.unwrap_or(NAN),
            liquid_density_kg_m3: density(&found.liquid),
            vapour_density_kg_m3: density(&found.vapour),
            liquid: shares(&found.liquid),
            vapour: shares(&found.vapour),
            ..ColdloopPhaseSplit::BLANK
        })
    })
}

/// What is left of a charge in a circuit at rest at a temperature, when the share `lost` (0 to 0.99) of its mass has escaped
/// as one phase. `density_kg_m3` is the charge before the leak over the inner volume of the circuit; `leak_phase` is a
/// coldloop_leak_phase: the phase that escapes, in equilibrium with the rest (Rayleigh's distillation). A leak while the system
/// runs lies between the two phases.
///
/// Errors: those above; OUT_OF_RANGE also for a density at which the charge is not liquid and vapour.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_charge_leaked(
    charge: *const ColdloopShares,
    temperature_k: f64,
    density_kg_m3: f64,
    leak_phase: u32,
    lost: f64,
    remainder: *mut ColdloopRemainder,
    error: *mut ColdloopError,
) -> u32 {
    record(remainder, error, || {
        let leak_phase = member(leak_phase, LeakPhase::from_code)?;
        let left = charge_of(charge)?.leaked(
            kelvins(temperature_k),
            Density::from_kg_m3(density_kg_m3),
            leak_phase,
            lost,
        )?;
        Ok(ColdloopRemainder {
            has_liquid: u32::from(left.has_liquid),
            pressure_pa_abs: left.pressure.pa(),
            shares: told(&left.shares),
            ..ColdloopRemainder::BLANK
        })
    })
}
