//! Any charge by mass: listed refrigerants, pure or blends, mixed with each other and with air.
//!
//! This is the public interface to `mixture` for a charge that was leaked, mixed or contaminated: a blend is replaced by its
//! parts, a refrigerant that is given twice is added up, and air counts as one component.

use super::by_name::blend;
use crate::error::Error;
use crate::mixture::{self, Component, Fixed, LeakPhase, MOST_COMPONENTS, Mixture, Side, Split, TEMPERATURES, Vector};
use crate::names::{ErrorKind, Quantity, Refrigerant};
use crate::range::{ABSOLUTE_PRESSURE, MASS};
use crate::units::{AbsolutePressure, Density, Temperature, in_kelvins, kelvins};

/// A charge of any composition with its mixture model at hand.
///
/// ```
/// use coldloop::saturation::Charge;
/// use coldloop::{Refrigerant, units::celsius};
/// // 2 % of air by mass lift the pressure at which liquid begins to boil.
/// let [pure, with_air] = [0.0, 0.02].map(|air| Charge::new(&[(Refrigerant::R134a, 1.0 - air)], air));
/// assert!(with_air?.bubble_pressure(celsius(25.0))? > pure?.bubble_pressure(celsius(25.0))?);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Charge {
    mixture: Mixture<f64>,
    z: Vector<f64>,
    refrigerants: Shares,
}

/// What a charge or one of its phases is made of, by mass.
///
/// ```
/// use coldloop::Refrigerant;
/// use coldloop::saturation::Charge;
/// let shares = Charge::new(&[(Refrigerant::R134a, 0.97)], 0.03)?.shares();
/// assert!((shares.air() - 0.03).abs() < 1e-12 && (shares.of(Refrigerant::R134a) - 0.97).abs() < 1e-12);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shares {
    refrigerants: [Refrigerant; MOST_COMPONENTS],
    masses: Vector<f64>,
    count: usize,
    air: f64,
}

/// A charge at a temperature and pressure.
///
/// ```
/// use coldloop::saturation::Charge;
/// use coldloop::{Refrigerant, units::{AbsolutePressure, celsius}};
/// let charge = Charge::new(&[(Refrigerant::R407C, 1.0)], 0.0)?;
/// let split = charge.split(celsius(25.0), AbsolutePressure::from_kpa(1_100.0))?;
/// let ((liquid, _), (vapour, _)) = split.liquid.zip(split.vapour).expect("both are there");
/// assert!(liquid > split.density && split.density > vapour);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PhaseSplit {
    /// Density of all.
    pub density: Density,
    /// Mass fraction of vapour; `None` where there is one phase.
    pub quality: Option<f64>,
    /// Density and composition of the denser phase; `None` where there is one phase.
    pub liquid: Option<(Density, Shares)>,
    /// The same of the other.
    pub vapour: Option<(Density, Shares)>,
}

/// What a leak has left.
///
/// ```
/// use coldloop::saturation::Charge;
/// use coldloop::units::{Density, celsius};
/// use coldloop::{LeakPhase, Refrigerant};
/// let full = Charge::new(&[(Refrigerant::R407C, 1.0)], 0.0)?;
/// let left = full.leaked(celsius(25.0), Density::from_kg_m3(300.0), LeakPhase::Vapour, 0.3)?;
/// // What boils first is gone, and the pressure at rest with it.
/// assert!(left.has_liquid && left.pressure < full.bubble_pressure(celsius(25.0))?);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Remainder {
    /// Its composition.
    pub shares: Shares,
    /// Pressure at rest.
    pub pressure: AbsolutePressure,
    /// Whether liquid is left.
    pub has_liquid: bool,
}

impl Shares {
    const NONE: Self = Self {
        refrigerants: [Refrigerant::R134a; MOST_COMPONENTS],
        masses: [0.0; MOST_COMPONENTS],
        count: 0,
        air: 0.0,
    };

    /// The components, each once, with their mass fractions.
    pub fn refrigerants(&self) -> impl Iterator<Item = (Refrigerant, f64)> {
        self.refrigerants.into_iter().zip(self.masses).take(self.count)
    }

    /// The mass fraction of air.
    pub const fn air(&self) -> f64 {
        self.air
    }

    /// The mass fraction of a component; 0 for what is not in it.
    pub fn of(&self, refrigerant: Refrigerant) -> f64 {
        let found = self.refrigerants().find(|(component, _)| *component == refrigerant);
        found.map_or(0.0, |(_, share)| share)
    }

    /// Adds a mass of a pure refrigerant.
    fn add(&mut self, refrigerant: Refrigerant, mass: f64) -> Result<(), Error> {
        let place = self.refrigerants[..self.count]
            .iter()
            .position(|known| *known == refrigerant);
        let place = place.unwrap_or(self.count);
        let (Some(known), Some(sum)) = (self.refrigerants.get_mut(place), self.masses.get_mut(place)) else {
            return Err(too_many(place + 1));
        };
        *known = refrigerant;
        *sum += mass;
        self.count = usize::max(self.count, place + 1);
        Ok(())
    }
}

const fn too_many(components: usize) -> Error {
    Error::out_of_range(Quantity::Rows, components as f64, 1.0, MOST_COMPONENTS as f64)
}

impl Charge {
    /// A charge of masses of refrigerants and of air, in any unit that they share: kilograms, fractions or percent.
    ///
    /// A mass of zero is left out. Air is that of ISO 2533:1975 without its traces. Source of the model: `mixture`.
    ///
    /// Errors: `NotFinite`; `OutOfRange` for a mass below zero or above [`MASS`], and for more than
    /// [`MOST_COMPONENTS`] components, the three gases of air among them; `Missing` where there is no refrigerant.
    ///
    /// ```
    /// use coldloop::saturation::Charge;
    /// use coldloop::{Refrigerant, units::celsius};
    ///
    /// // A tenth of R-22 in R-134a boils at a higher pressure than R-134a.
    /// let mixed = Charge::new(&[(Refrigerant::R134a, 0.9), (Refrigerant::R22, 0.1)], 0.0)?;
    /// assert!(mixed.bubble_pressure(celsius(0.0))?.kpa() > 310.0);
    /// assert!(Charge::new(&[], 1.0).is_err());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn new(parts: &[(Refrigerant, f64)], air: f64) -> Result<Self, Error> {
        let mut shares = Shares::NONE;
        for &(refrigerant, mass) in parts {
            let mass = MASS.check(mass)?;
            if mass <= 0.0 {
                continue;
            }
            match blend(refrigerant) {
                None => shares.add(refrigerant, mass)?,
                Some(blend) => {
                    for part in blend.parts {
                        shares.add(part.refrigerant, mass * part.mass_fraction)?;
                    }
                }
            }
        }
        if shares.count == 0 {
            return Err(Error::of(ErrorKind::Missing, Quantity::Mass));
        }
        shares.air = MASS.check(air)?;
        Self::of(shares)
    }

    /// A charge with the composition of a phase or of what a leak has left; its air has the usual composition.
    ///
    /// Errors: none for shares that this module gave; otherwise those of [`Charge::new`].
    pub fn of(shares: Shares) -> Result<Self, Error> {
        let mut components = [mixture::component_of(Refrigerant::R134a)?; MOST_COMPONENTS];
        let mut z = [1.0; MOST_COMPONENTS];
        let mut count = 0;
        let mut push = |component: &'static Component, moles: f64| {
            let (Some(place), Some(z)) = (components.get_mut(count), z.get_mut(count)) else {
                return Err(too_many(count + 1));
            };
            (*place, *z) = (component, moles);
            count += 1;
            Ok(())
        };
        for (refrigerant, mass) in shares.refrigerants() {
            let component = mixture::component_of(refrigerant)?;
            push(component, mass / component.fluid.equation.molar_mass)?;
        }
        if shares.air > 0.0 {
            let gases = mixture::air();
            let molar_mass: f64 = gases.iter().map(|(gas, x)| x * gas.fluid.equation.molar_mass).sum();
            for (gas, x) in gases {
                push(gas, x * shares.air / molar_mass)?;
            }
        }
        let total: f64 = z[..count].iter().sum();
        for z in &mut z[..count] {
            *z /= total;
        }
        let mixture = Mixture::new(&components[..count])?;
        let mut charge = Self {
            mixture,
            z,
            refrigerants: shares,
        };
        charge.refrigerants = charge.shares_of(&charge.z);
        Ok(charge)
    }

    /// The composition: blends as their parts, each component once, in the order in which they came.
    ///
    /// ```
    /// use coldloop::Refrigerant;
    /// use coldloop::saturation::Charge;
    ///
    /// let topped_up = Charge::new(&[(Refrigerant::R407C, 4.0), (Refrigerant::R134a, 1.0)], 0.0)?;
    /// assert!((topped_up.shares().of(Refrigerant::R134a) - (0.8 * 0.52 + 0.2)).abs() < 1e-12);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub const fn shares(&self) -> Shares {
        self.refrigerants
    }

    /// The mixture model.
    #[doc(hidden)]
    pub const fn mixture(&self) -> &Mixture<f64> {
        &self.mixture
    }

    /// Mole fractions of the components, in the order of [`Shares::refrigerants`], the gases of the air behind them.
    pub fn mole_fractions(&self) -> &[f64] {
        &self.z[..self.mixture.components().len()]
    }

    /// The pressure at which the liquid begins to boil at a temperature; air in it counts.
    ///
    /// Errors: as [`Mixture::point`].
    pub fn bubble_pressure(&self, temperature: Temperature) -> Result<AbsolutePressure, Error> {
        let fixed = Fixed::Temperature(in_kelvins(temperature));
        Ok(AbsolutePressure::from_pa(self.point(Side::Bubble, fixed)?.0))
    }

    /// The pressure at which the vapour begins to condense at a temperature.
    ///
    /// Errors: as [`Mixture::point`].
    pub fn dew_pressure(&self, temperature: Temperature) -> Result<AbsolutePressure, Error> {
        let fixed = Fixed::Temperature(in_kelvins(temperature));
        Ok(AbsolutePressure::from_pa(self.point(Side::Dew, fixed)?.0))
    }

    /// The temperature at which the liquid begins to boil at a pressure.
    ///
    /// Errors: as [`Mixture::point`].
    pub fn bubble_temperature(&self, pressure: AbsolutePressure) -> Result<Temperature, Error> {
        Ok(kelvins(self.point(Side::Bubble, Fixed::Pressure(pressure.pa()))?.1))
    }

    /// The temperature at which the vapour begins to condense at a pressure.
    ///
    /// Errors: as [`Mixture::point`].
    pub fn dew_temperature(&self, pressure: AbsolutePressure) -> Result<Temperature, Error> {
        Ok(kelvins(self.point(Side::Dew, Fixed::Pressure(pressure.pa()))?.1))
    }

    fn point(&self, side: Side, fixed: Fixed<f64>) -> Result<(f64, f64), Error> {
        let point = self.mixture.point(self.mole_fractions(), side, fixed)?;
        Ok((point.p_pa, point.t_k))
    }

    /// The charge at a temperature and pressure: one phase, or liquid and vapour with what each is made of.
    ///
    /// Errors: `NotFinite`; `OutOfRange` outside [`TEMPERATURES`] and the pressures that a reading can have; those of
    /// [`Mixture::split`].
    ///
    /// ```
    /// use coldloop::saturation::Charge;
    /// use coldloop::{Refrigerant, units::{AbsolutePressure, celsius}};
    ///
    /// // What boils off R-407C first is rich in R-32.
    /// let charge = Charge::new(&[(Refrigerant::R407C, 1.0)], 0.0)?;
    /// let phase_split = charge.split(celsius(25.0), AbsolutePressure::from_kpa(1_150.0))?;
    /// assert!(phase_split.vapour.is_some_and(|(_, made_of)| made_of.of(Refrigerant::R32) > 0.3));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn split(&self, temperature: Temperature, pressure: AbsolutePressure) -> Result<PhaseSplit, Error> {
        let t_k = TEMPERATURES.check(in_kelvins(temperature))?;
        let p_pa = ABSOLUTE_PRESSURE.check(pressure.pa())?;
        let molar_mass = self.mixture.molar_mass(&self.z);
        Ok(match self.mixture.split(self.mole_fractions(), t_k, p_pa)? {
            Split::One { rho_mol_m3, .. } => PhaseSplit {
                density: Density::from_kg_m3(rho_mol_m3 * molar_mass),
                quality: None,
                liquid: None,
                vapour: None,
            },
            Split::Two(two) => {
                let [liquid, vapour] = [&two.liquid, &two.vapour].map(|rho| (self.density(rho), self.shares_of(rho)));
                PhaseSplit {
                    density: Density::from_kg_m3(molar_mass / (two.liquid_m3_mol + two.vapour_m3_mol)),
                    quality: Some(two.vapour_m3_mol * vapour.0.kg_m3() / molar_mass),
                    liquid: Some(liquid),
                    vapour: Some(vapour),
                }
            }
        })
    }

    /// What is left of the charge in a circuit at rest at a temperature, which it fills with a mean density, when the share
    /// `lost` of its mass has escaped as `leak_phase`.
    ///
    /// Method, accuracy and errors: as [`Mixture::leaked`].
    ///
    /// ```
    /// use coldloop::units::{Density, celsius};
    /// use coldloop::{LeakPhase, Refrigerant, saturation::Charge};
    ///
    /// // Half of it lost as vapour, R-407C is no longer R-407C.
    /// let full = Charge::new(&[(Refrigerant::R407C, 1.0)], 0.0)?;
    /// let left = full.leaked(celsius(25.0), Density::from_kg_m3(300.0), LeakPhase::Vapour, 0.5)?;
    /// assert!(left.shares.of(Refrigerant::R134a) > 0.56);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn leaked(
        &self,
        temperature: Temperature,
        density: Density,
        leak_phase: LeakPhase,
        lost: f64,
    ) -> Result<Remainder, Error> {
        let (t_k, rho_kg_m3) = (in_kelvins(temperature), density.kg_m3());
        let left = self
            .mixture
            .leaked(self.mole_fractions(), t_k, rho_kg_m3, leak_phase, lost)?;
        Ok(Remainder {
            shares: self.shares_of(&left.z),
            pressure: AbsolutePressure::from_pa(left.p_pa),
            has_liquid: left.has_liquid,
        })
    }

    fn density(&self, rho: &Vector<f64>) -> Density {
        let moles: f64 = rho[..self.mixture.components().len()].iter().sum();
        Density::from_kg_m3(moles * self.mixture.molar_mass(rho))
    }

    /// The composition, by mass, of amounts of the components.
    fn shares_of(&self, amounts: &Vector<f64>) -> Shares {
        let mut masses = [0.0; MOST_COMPONENTS];
        for ((mass, component), moles) in masses.iter_mut().zip(self.mixture.components()).zip(amounts) {
            *mass = component.fluid.equation.molar_mass * moles;
        }
        let total: f64 = masses.iter().sum();
        let (refrigerants, gases) = masses.split_at(self.refrigerants.count);
        let mut shares = Shares {
            masses: [0.0; MOST_COMPONENTS],
            air: gases.iter().sum::<f64>() / total,
            ..self.refrigerants
        };
        for (share, mass) in shares.masses.iter_mut().zip(refrigerants) {
            *share = mass / total;
        }
        shares
    }
}
