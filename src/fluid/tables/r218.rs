//! The equation of state of R-218.
//!
//! Generated from tables/refrigerants/R-218.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R218: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.18801932999999998,
        reducing_t_k: 345.02,
        reducing_rho_mol_m3: 3340.0,
        ideal: Ideal {
            constant: -15.6587335175,
            slope: 11.4531412796,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[
                (7.2198, 0.9448727609993625),
                (7.2692, 1.724537707958959),
                (11.599, 4.315691843951075),
            ],
        },
        power: &[
            Power {
                n: 1.327,
                t: 0.25,
                d: 1,
                l: 0,
            },
            Power {
                n: -3.8433,
                t: 1.25,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.922,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.1136,
                t: 0.25,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.00036195,
                t: 0.875,
                d: 7,
                l: 0,
            },
            Power {
                n: 1.1001,
                t: 2.375,
                d: 1,
                l: 1,
            },
            Power {
                n: 1.1896,
                t: 2.0,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.025147,
                t: 2.125,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.65923,
                t: 3.5,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.027969,
                t: 6.5,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.1833,
                t: 4.75,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.02163,
                t: 12.5,
                d: 2,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 125.45,
    highest_t_k: 440.0,
    highest_p_pa: 20000000.0,
    melting: None,
    facts: Facts {
        name: "octafluoropropane",
        cas: Some("76-19-7"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A1,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: None,
        ozone_depletion: Some(Sourced {
            value: 0.0,
            source: "the molecule holds no chlorine, bromine or iodine",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR4",
                    value: 8830.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 8900.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 9290.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, R. Span: Short Fundamental Equations of State for 20 Industrial Fluids. J. Chem. Eng. Data 51 (2006) 785-850",
        equation_doi: Some("10.1021/je050186n"),
        equation_uncertainty: None,
        saturation_uncertainty: None,
    },
};
