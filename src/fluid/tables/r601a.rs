//! The equation of state of R-601a.
//!
//! Generated from tables/refrigerants/R-601a.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Ideal, Power, Sourced};
use crate::names::SafetyGroup;

pub(crate) static R601A: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.07214878,
        reducing_t_k: 460.35,
        reducing_rho_mol_m3: 3271.0,
        ideal: Ideal {
            constant: 2.5822330405,
            slope: 1.1609103419,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[
                (7.4056, 0.9601390246551537),
                (9.5772, 2.4090366025849894),
                (15.765, 4.494406429890301),
                (12.119, 9.108287172803301),
            ],
        },
        power: &[
            Power {
                n: 1.0963,
                t: 0.25,
                d: 1,
                l: 0,
            },
            Power {
                n: -3.0402,
                t: 1.125,
                d: 1,
                l: 0,
            },
            Power {
                n: 1.0317,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.1541,
                t: 1.375,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.11535,
                t: 0.25,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.00029809,
                t: 0.875,
                d: 7,
                l: 0,
            },
            Power {
                n: 0.39571,
                t: 0.625,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.045881,
                t: 1.75,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.35804,
                t: 3.625,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.10107,
                t: 3.625,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.035484,
                t: 14.5,
                d: 3,
                l: 3,
            },
            Power {
                n: 0.018156,
                t: 12.0,
                d: 4,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 112.65,
    highest_t_k: 500.0,
    highest_p_pa: 1000000000.0,
    melting: None,
    facts: Facts {
        name: "2-methylbutane (isopentane)",
        cas: Some("78-78-4"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A3,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.013000000000000001),
                kg_m3: Some(0.038),
            },
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        ozone_depletion: Some(Sourced {
            value: 0.0,
            source: "the molecule holds no chlorine, bromine or iodine",
        }),
        warming: &[],
        equation: "E. W. Lemmon, R. Span: Short Fundamental Equations of State for 20 Industrial Fluids. J. Chem. Eng. Data 51 (2006) 785-850",
        equation_doi: Some("10.1021/je050186n"),
        equation_uncertainty: None,
        saturation_uncertainty: None,
    },
};
