//! The equation of state of R-600.
//!
//! Generated from tables/refrigerants/R-600.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Gaussian, Ideal, Power, Sourced};
use crate::names::SafetyGroup;

pub(crate) static R600: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.0581222,
        reducing_t_k: 425.125,
        reducing_rho_mol_m3: 3922.7696129878086,
        ideal: Ideal {
            constant: 12.54882924,
            slope: -5.46976878,
            log_tau: 3.24680487,
            powers: &[],
            planck_einstein: &[
                (5.54913289, 0.774840445),
                (11.4648996, 3.340602552),
                (7.59987584, 4.970513096),
                (9.66033239, 9.975553778),
            ],
        },
        power: &[
            Power {
                n: 2.5536998241635,
                t: 0.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -4.4585951806696,
                t: 1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.82425886369063,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.11215007011442,
                t: 0.0,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.035910933680333,
                t: 0.5,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.016790508518103,
                t: 0.5,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.032734072508724,
                t: 0.75,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.95571232982005,
                t: 2.0,
                d: 1,
                l: 1,
            },
            Power {
                n: -1.0003385753419,
                t: 2.5,
                d: 1,
                l: 1,
            },
            Power {
                n: 0.085581548803855,
                t: 2.5,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.025147918369616,
                t: 1.5,
                d: 7,
                l: 1,
            },
            Power {
                n: -0.0015202958578918,
                t: 1.0,
                d: 8,
                l: 1,
            },
            Power {
                n: 0.004706068232642,
                t: 1.5,
                d: 8,
                l: 1,
            },
            Power {
                n: -0.097845414174006,
                t: 4.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.04831790415876,
                t: 7.0,
                d: 2,
                l: 2,
            },
            Power {
                n: 0.17841271865468,
                t: 3.0,
                d: 3,
                l: 2,
            },
            Power {
                n: 0.018173836739334,
                t: 7.0,
                d: 3,
                l: 2,
            },
            Power {
                n: -0.11399068074953,
                t: 3.0,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.019329896666669,
                t: 1.0,
                d: 5,
                l: 2,
            },
            Power {
                n: 0.001157587740101,
                t: 6.0,
                d: 5,
                l: 2,
            },
            Power {
                n: 0.00015253808698116,
                t: 0.0,
                d: 10,
                l: 2,
            },
            Power {
                n: -0.043688558458471,
                t: 6.0,
                d: 2,
                l: 3,
            },
            Power {
                n: -0.0082403190629989,
                t: 13.0,
                d: 6,
                l: 3,
            },
        ],
        gaussian: &[
            Gaussian {
                n: -0.028390056949441,
                t: 2.0,
                d: 1,
                eta: 10.0,
                beta: 150.0,
                gamma: 1.16,
                epsilon: 0.85,
            },
            Gaussian {
                n: 0.0014904666224681,
                t: 0.0,
                d: 2,
                eta: 10.0,
                beta: 200.0,
                gamma: 1.13,
                epsilon: 1.0,
            },
        ],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 134.895,
    highest_t_k: 575.0,
    highest_p_pa: 69000000.0,
    melting: None,
    facts: Facts {
        name: "butane",
        cas: Some("106-97-8"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A3,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.02),
                kg_m3: Some(0.038),
            },
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        ozone_depletion: Some(Sourced {
            value: 0.0,
            source: "the molecule holds no chlorine, bromine or iodine",
        }),
        warming: &[],
        equation: "D. Bücker, W. Wagner: Reference Equations of State for the Thermodynamic Properties of Fluid Phase n-Butane and Isobutane. J. Phys. Chem. Ref. Data 35 (2006) 929-1019",
        equation_doi: Some("10.1063/1.1901687"),
        equation_uncertainty: None,
        saturation_uncertainty: None,
    },
};
