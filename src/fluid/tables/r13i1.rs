//! The equation of state of R-13I1.
//!
//! Generated from tables/refrigerants/R-13I1.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R13I1: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.3144621,
        molar_mass: 0.1959104,
        reducing_t_k: 396.44,
        reducing_rho_mol_m3: 4430.6,
        ideal: Ideal {
            constant: 0.0,
            slope: 0.0,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[(6.2641, 1.7505801634547473)],
        },
        power: &[
            Power {
                n: 1.12191,
                t: 0.25,
                d: 1,
                l: 0,
            },
            Power {
                n: -3.08087,
                t: 1.125,
                d: 1,
                l: 0,
            },
            Power {
                n: 1.11307,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.184885,
                t: 1.375,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.110971,
                t: 0.25,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.000325,
                t: 0.875,
                d: 7,
                l: 0,
            },
            Power {
                n: 0.333357,
                t: 0.625,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.0288288,
                t: 1.75,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.371554,
                t: 3.625,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.0997985,
                t: 3.625,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.0333205,
                t: 14.5,
                d: 3,
                l: 3,
            },
            Power {
                n: 0.0207882,
                t: 12.0,
                d: 4,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 120.0,
    highest_t_k: 420.0,
    highest_p_pa: 20000000.0,
    melting: None,
    facts: Facts {
        name: "trifluoroiodomethane",
        cas: Some("2314-97-8"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A1,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: None,
        ozone_depletion: Some(Sourced {
            value: 0.008,
            source: "low-altitude emission, upper range 0.018; from memory",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR4",
                    value: 0.4,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 1.0,
                    is_upper_bound: true,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
        ],
        equation: "E. W. Lemmon, R. Span: Thermodynamic Properties of R-227ea, R-365mfc, R-115, and R-13I1. J. Chem. Eng. Data 60 (2015) 3745-3758",
        equation_doi: Some("10.1021/acs.jced.5b00684"),
        equation_uncertainty: Some("rho 0.1%, psat 0.1-0.3% (from memory)"),
        saturation_uncertainty: Some(0.003),
    },
};
