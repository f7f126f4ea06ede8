//! The equation of state of R-601.
//!
//! Generated from tables/refrigerants/R-601.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Ideal, Power, Sourced};
use crate::names::SafetyGroup;

pub(crate) static R601: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.31451,
        molar_mass: 0.07215,
        reducing_t_k: 469.7,
        reducing_rho_mol_m3: 3215.523215523215,
        ideal: Ideal {
            constant: 0.0,
            slope: 0.0,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[
                (8.95043, 0.7607834788162656),
                (33.4032, 7.554822226953375),
                (21.836, 3.5790419416648924),
                (-21.836, 7.158083883329785),
            ],
        },
        power: &[
            Power {
                n: 1.0968643,
                t: 0.25,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.9988888,
                t: 1.125,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.99516887,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.16170709,
                t: 1.375,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.1133446,
                t: 0.25,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.00026760595,
                t: 0.875,
                d: 7,
                l: 0,
            },
            Power {
                n: 0.40979882,
                t: 0.625,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.040876423,
                t: 1.75,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.38169482,
                t: 3.625,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.10931957,
                t: 3.625,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.032073223,
                t: 14.5,
                d: 3,
                l: 3,
            },
            Power {
                n: 0.016877016,
                t: 12.0,
                d: 4,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 143.47,
    highest_t_k: 600.0,
    highest_p_pa: 100000000.0,
    melting: None,
    facts: Facts {
        name: "pentane",
        cas: Some("109-66-0"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A3,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.012),
                kg_m3: Some(0.035),
            },
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        ozone_depletion: Some(Sourced {
            value: 0.0,
            source: "the molecule holds no chlorine, bromine or iodine",
        }),
        warming: &[],
        equation: "R. Span, W. Wagner: Equations of State for Technical Applications. II. Results for Nonpolar Fluids. Int. J. Thermophys. 24 (2003) 41-109",
        equation_doi: Some("10.1023/A:1022310214958"),
        equation_uncertainty: None,
        saturation_uncertainty: None,
    },
};
