//! What a correlation of a transport property is made of: the numbers of its paper.

use crate::names::Refrigerant;

/// What is published of one refrigerant; `None` where nothing is, or nothing that fits this library.
#[derive(Clone, Copy, Debug)]
pub struct Transport {
    /// Viscosity.
    pub viscosity: Option<Viscosity>,
    /// Thermal conductivity.
    pub conductivity: Option<Conductivity>,
    /// Surface tension.
    pub surface_tension: Option<SurfaceTension>,
}

/// Where a correlation was published, how good it is said to be, and between which temperatures.
///
/// ```
/// use coldloop::{Quantity, Refrigerant, transport};
/// let source = transport::published(Refrigerant::R744, Quantity::Viscosity)?;
/// assert!(source.temperatures().check(300.0).is_ok() && source.doi.is_some());
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Published {
    /// The publication.
    pub citation: &'static str,
    /// Its DOI.
    pub doi: Option<&'static str>,
    /// The uncertainty that it states, and whether that was read or is from memory.
    pub uncertainty: &'static str,
    /// The lowest temperature, K.
    pub lowest_t_k: f64,
    /// The highest temperature, K.
    pub highest_t_k: f64,
}

/// A correlation of the dynamic viscosity.
#[derive(Clone, Copy, Debug)]
pub struct Viscosity {
    /// The publication.
    pub published: Published,
    /// The highest pressure, Pa.
    pub highest_p_pa: f64,
    /// Its form.
    pub form: ViscosityForm,
}

/// The forms of a correlation of the viscosity.
#[derive(Clone, Copy, Debug)]
pub enum ViscosityForm {
    /// Dilute gas, first density correction where there is one, and the rest.
    Sum {
        /// The gas at zero density.
        dilute: DiluteViscosity,
        /// Its first correction in density.
        initial: Option<LennardJones>,
        /// The rest.
        residual: ResidualViscosity,
    },
    /// Extended corresponding states.
    Conformal(Conformal),
}

/// Parameters of the Lennard-Jones potential.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LennardJones {
    /// Diameter, m.
    pub sigma_m: f64,
    /// Energy over the Boltzmann constant, K.
    pub energy_k: f64,
}

/// The viscosity of the dilute gas, Pa s.
#[derive(Clone, Copy, Debug)]
pub enum DiluteViscosity {
    /// factor sqrt(T) exp(-sum a (ln T*)^t), with T* = T / energy.
    Collision {
        /// Pa s / K^0.5.
        factor: f64,
        /// Energy over the Boltzmann constant, K.
        energy_k: f64,
        /// (a, t).
        terms: &'static [(f64, i32)],
    },
    /// factor sqrt(T) over the collision integral of Neufeld, Janzen & Aziz 1972.
    Neufeld {
        /// Pa s / K^0.5.
        factor: f64,
        /// Energy over the Boltzmann constant, K.
        energy_k: f64,
    },
    /// A ratio of polynomials in T (K), lowest power first.
    Ratio {
        /// Pa s.
        numerator: &'static [f64],
        /// Without a unit.
        denominator: &'static [f64],
    },
    /// The form of Laesecke & Muzny 2017 for R-744: factor T^(1/2) / (a_0 + a_1 T^(1/6) + a_2 exp(a_3 T^(1/3)) +
    /// (a_4 + a_5 T^(1/3)) exp(-T^(1/3)) + a_6 T^(1/2)).
    CarbonDioxide {
        /// Pa s / K^0.5.
        factor: f64,
        /// a_0 to a_6.
        a: [f64; 7],
    },
}

/// n (rho / rho_r)^d (T / T_r)^t.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Term {
    /// Factor, in the unit of the property.
    pub n: f64,
    /// Exponent of the reduced density.
    pub d: f64,
    /// Exponent of the reduced temperature.
    pub t: f64,
}

/// The viscosity beyond that of the dilute gas and its first correction, Pa s.
#[derive(Clone, Copy, Debug)]
pub enum ResidualViscosity {
    /// A sum of terms, and factor delta^power (1 / (delta_0 - delta) - 1 / delta_0), in which delta_0 is a ratio of sums of
    /// n (T / T_r)^t.
    FreeVolume {
        /// T_r, K.
        reducing_t_k: f64,
        /// rho_r, mol/m3.
        reducing_rho_mol_m3: f64,
        /// The sum of terms, Pa s.
        terms: &'static [Term],
        /// Pa s.
        factor: f64,
        /// Exponent of delta.
        power: i32,
        /// (n, t) of the numerator of delta_0.
        packed: &'static [(f64, f64)],
        /// (n, t) of its denominator.
        packed_by: &'static [(f64, f64)],
    },
    /// delta^(2/3) (T / T_r)^(1/2) times the sum of `terms` and of a ratio of two such sums.
    Scaled {
        /// T_r, K.
        reducing_t_k: f64,
        /// rho_r, mol/m3.
        reducing_rho_mol_m3: f64,
        /// Pa s.
        terms: &'static [Term],
        /// Pa s.
        numerator: &'static [Term],
        /// Without a unit.
        denominator: &'static [Term],
    },
    /// The form of Laesecke & Muzny 2017 for R-744: factor (c_1 T_r rho_r^3 + (rho_r^2 + rho_r^gamma) / (T_r - c_2)), reduced by the
    /// liquid at the triple point.
    CarbonDioxide {
        /// Temperature of the triple point, K.
        triple_t_k: f64,
        /// Density of the liquid there, mol/m3.
        triple_rho_mol_m3: f64,
        /// Its factor, Pa s.
        factor: f64,
        /// Exponent of the density.
        gamma: f64,
        /// c_1 and c_2.
        c: [f64; 2],
    },
}

/// Extended corresponding states: the reference fluid at the conformal temperature and density.
#[derive(Clone, Copy, Debug)]
pub struct Conformal {
    /// The reference fluid.
    pub reference: Refrigerant,
    /// Parameters of the dilute gas.
    pub potential: LennardJones,
    /// The factor of the conformal density, a polynomial in rho / rho_r, lowest power first.
    pub shape: &'static [f64],
    /// rho_r, mol/m3.
    pub reducing_rho_mol_m3: f64,
}

/// A correlation of the thermal conductivity.
#[derive(Clone, Copy, Debug)]
pub struct Conductivity {
    /// The publication.
    pub published: Published,
    /// The highest pressure, Pa.
    pub highest_p_pa: f64,
    /// Its form.
    pub form: ConductivityForm,
    /// The enhancement about the critical point.
    pub critical: CriticalEnhancement,
}

/// The forms of a correlation of the thermal conductivity, the enhancement about the critical point apart.
#[derive(Clone, Copy, Debug)]
pub enum ConductivityForm {
    /// Dilute gas and the rest.
    Sum {
        /// The gas at zero density.
        dilute: DiluteConductivity,
        /// T_r of the terms, K.
        reducing_t_k: f64,
        /// rho_r of the terms, mol/m3.
        reducing_rho_mol_m3: f64,
        /// The rest, W/(m K).
        terms: &'static [Term],
    },
    /// Extended corresponding states.
    Conformal {
        /// The conformal state.
        conformal: Conformal,
        /// How internal energy diffuses: a polynomial in T (K), lowest power first.
        internal: &'static [f64],
    },
}

/// The thermal conductivity of the dilute gas, W/(m K).
#[derive(Clone, Copy, Debug)]
pub enum DiluteConductivity {
    /// A polynomial in T / T_r, lowest power first.
    Polynomial {
        /// T_r, K.
        reducing_t_k: f64,
        /// W/(m K).
        a: &'static [f64],
    },
    /// (T / T_r)^(1/2) over a polynomial in T_r / T, lowest power first.
    Inverse {
        /// T_r, K.
        reducing_t_k: f64,
        /// m K/W.
        l: &'static [f64],
    },
}

/// The simplified crossover model of Olchowy & Sengers 1989.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CriticalEnhancement {
    /// Amplitude R_0.
    pub amplitude: f64,
    /// Exponent nu of the correlation length.
    pub nu: f64,
    /// Exponent gamma of the susceptibility.
    pub gamma: f64,
    /// Amplitude Gamma of the susceptibility.
    pub susceptibility: f64,
    /// Amplitude xi_0 of the correlation length, m.
    pub length_m: f64,
    /// Cut-off q_D, 1/m.
    pub cut_off_1_m: f64,
    /// The temperature without enhancement, K.
    pub reference_t_k: f64,
}

/// sum sigma_i (1 - T / T_c)^n_i, N/m.
#[derive(Clone, Copy, Debug)]
pub struct SurfaceTension {
    /// The publication; its highest temperature is T_c.
    pub published: Published,
    /// (sigma_i, n_i).
    pub terms: &'static [(f64, f64)],
}
