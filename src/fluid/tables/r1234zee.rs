//! The equation of state of R-1234ze(E).
//!
//! Generated from tables/refrigerants/R-1234ze(E).toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Gaussian, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R1234ZEE: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.3144621,
        molar_mass: 0.1140416,
        reducing_t_k: 382.513,
        reducing_rho_mol_m3: 4290.0,
        ideal: Ideal {
            constant: -12.558347537,
            slope: 8.7912297624,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[(9.3575, 1.3411308896691094), (10.717, 5.155380340014588)],
        },
        power: &[
            Power {
                n: 0.03982797,
                t: 1.0,
                d: 4,
                l: 0,
            },
            Power {
                n: 1.812227,
                t: 0.223,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.537512,
                t: 0.755,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.5333254,
                t: 1.24,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.1677031,
                t: 0.44,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.8072718,
                t: 1.2,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.01843846,
                t: 0.9,
                d: 7,
                l: 1,
            },
            Power {
                n: -1.323801,
                t: 2.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.6694654,
                t: 2.2,
                d: 3,
                l: 2,
            },
            Power {
                n: -0.7740229,
                t: 1.5,
                d: 2,
                l: 2,
            },
        ],
        gaussian: &[
            Gaussian {
                n: 1.407916,
                t: 1.33,
                d: 1,
                eta: 1.0,
                beta: 1.21,
                gamma: 0.943,
                epsilon: 0.728,
            },
            Gaussian {
                n: -0.4237082,
                t: 1.75,
                d: 1,
                eta: 1.61,
                beta: 1.37,
                gamma: 0.642,
                epsilon: 0.87,
            },
            Gaussian {
                n: -0.2270068,
                t: 2.11,
                d: 3,
                eta: 1.24,
                beta: 0.98,
                gamma: 0.59,
                epsilon: 0.855,
            },
            Gaussian {
                n: -0.805213,
                t: 1.0,
                d: 3,
                eta: 9.34,
                beta: 171.0,
                gamma: 1.2,
                epsilon: 0.79,
            },
            Gaussian {
                n: 0.00994318,
                t: 1.5,
                d: 2,
                eta: 5.78,
                beta: 47.4,
                gamma: 1.33,
                epsilon: 1.3,
            },
            Gaussian {
                n: -0.008798793,
                t: 1.0,
                d: 1,
                eta: 3.08,
                beta: 15.4,
                gamma: 0.64,
                epsilon: 0.71,
            },
        ],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 168.62,
    highest_t_k: 420.0,
    highest_p_pa: 20000000.0,
    melting: None,
    facts: Facts {
        name: "trans-1,3,3,3-tetrafluoroprop-1-ene",
        cas: Some("29118-24-9"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A2L,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.065),
                kg_m3: Some(0.303),
            },
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        ozone_depletion: Some(Sourced {
            value: 0.0,
            source: "the molecule holds no chlorine, bromine or iodine",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 1.0,
                    is_upper_bound: true,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 1.37,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "M. Thol, E. W. Lemmon: Equation of State for the Thermodynamic Properties of trans-1,3,3,3-Tetrafluoropropene [R-1234ze(E)]. Int. J. Thermophys. 37 (2016) 28",
        equation_doi: Some("10.1007/s10765-016-2040-6"),
        equation_uncertainty: Some("psat 0.1%, liq rho 0.1%, vap rho 0.3%, w 0.05-0.1% (from memory)"),
        saturation_uncertainty: Some(0.001),
    },
};
