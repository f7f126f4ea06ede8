//! The equation of state of R-290.
//!
//! Generated from tables/refrigerants/R-290.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Gaussian, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R290: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.044095619999999995,
        reducing_t_k: 369.89,
        reducing_rho_mol_m3: 5000.0,
        ideal: Ideal {
            constant: -4.970583,
            slope: 4.29352,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[
                (3.043, 1.0624780340101112),
                (5.874, 3.34423747600638),
                (9.337, 5.3637567925599505),
                (7.922, 11.762956554651383),
            ],
        },
        power: &[
            Power {
                n: 0.042910051,
                t: 1.0,
                d: 4,
                l: 0,
            },
            Power {
                n: 1.7313671,
                t: 0.33,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.4516524,
                t: 0.8,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.34157466,
                t: 0.43,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.46047898,
                t: 0.9,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.66847295,
                t: 2.46,
                d: 1,
                l: 1,
            },
            Power {
                n: 0.20889705,
                t: 2.09,
                d: 3,
                l: 1,
            },
            Power {
                n: 0.19421381,
                t: 0.88,
                d: 6,
                l: 1,
            },
            Power {
                n: -0.22917851,
                t: 1.09,
                d: 6,
                l: 1,
            },
            Power {
                n: -0.60405866,
                t: 3.25,
                d: 2,
                l: 2,
            },
            Power {
                n: 0.066680654,
                t: 4.62,
                d: 3,
                l: 2,
            },
        ],
        gaussian: &[
            Gaussian {
                n: 0.017534618,
                t: 0.76,
                d: 1,
                eta: 0.963,
                beta: 2.33,
                gamma: 0.684,
                epsilon: 1.283,
            },
            Gaussian {
                n: 0.33874242,
                t: 2.5,
                d: 1,
                eta: 1.977,
                beta: 3.47,
                gamma: 0.829,
                epsilon: 0.6936,
            },
            Gaussian {
                n: 0.22228777,
                t: 2.75,
                d: 1,
                eta: 1.917,
                beta: 3.15,
                gamma: 1.419,
                epsilon: 0.788,
            },
            Gaussian {
                n: -0.23219062,
                t: 3.05,
                d: 2,
                eta: 2.307,
                beta: 3.19,
                gamma: 0.817,
                epsilon: 0.473,
            },
            Gaussian {
                n: -0.09220694,
                t: 2.55,
                d: 2,
                eta: 2.546,
                beta: 0.92,
                gamma: 1.5,
                epsilon: 0.8577,
            },
            Gaussian {
                n: -0.47575718,
                t: 8.4,
                d: 4,
                eta: 3.28,
                beta: 18.8,
                gamma: 1.426,
                epsilon: 0.271,
            },
            Gaussian {
                n: -0.017486824,
                t: 6.75,
                d: 1,
                eta: 14.6,
                beta: 547.8,
                gamma: 1.093,
                epsilon: 0.948,
            },
        ],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 85.525,
    highest_t_k: 650.0,
    highest_p_pa: 1000000000.0,
    melting: None,
    facts: Facts {
        name: "propane",
        cas: Some("74-98-6"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A3,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.021),
                kg_m3: Some(0.038),
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
                    report: "AR4",
                    value: 3.3,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.15 (indirect; its table 2.14 of direct values has no propane), from memory; Regulation (EU) 517/2014 annex IV gives 3 after AR4, read as quoted by the European fluorocarbons association",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 0.02,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, M. O. McLinden, W. Wagner: Thermodynamic Properties of Propane. III. A Reference Equation of State for Temperatures from the Melting Line to 650 K and Pressures up to 1000 MPa. J. Chem. Eng. Data 54 (2009) 3141-3180",
        equation_doi: Some("10.1021/je900217v"),
        equation_uncertainty: Some("rho 0.01-0.03%, psat 0.02%, cp 0.5%, w 0.01-0.03% (from memory)"),
        saturation_uncertainty: Some(0.0002),
    },
};
