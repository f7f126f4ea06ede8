//! The equation of state of R-115.
//!
//! Generated from tables/refrigerants/R-115.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R115: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.3144621,
        molar_mass: 0.15446641600000002,
        reducing_t_k: 353.1,
        reducing_rho_mol_m3: 3980.0,
        ideal: Ideal {
            constant: 0.0,
            slope: 0.0,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[(7.142, 0.8184650240725007), (10.61, 3.6845086377796656)],
        },
        power: &[
            Power {
                n: 1.20873,
                t: 0.25,
                d: 1,
                l: 0,
            },
            Power {
                n: -3.5446,
                t: 1.25,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.745302,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.114128,
                t: 0.25,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.000436572,
                t: 0.875,
                d: 7,
                l: 0,
            },
            Power {
                n: 0.988385,
                t: 2.375,
                d: 1,
                l: 1,
            },
            Power {
                n: 1.13878,
                t: 2.0,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.0215633,
                t: 2.125,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.63023,
                t: 3.5,
                d: 1,
                l: 2,
            },
            Power {
                n: 0.0167901,
                t: 6.5,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.149412,
                t: 4.75,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.0271153,
                t: 12.5,
                d: 2,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 173.75,
    highest_t_k: 550.0,
    highest_p_pa: 60000000.0,
    melting: None,
    facts: Facts {
        name: "chloropentafluoroethane",
        cas: Some("76-15-3"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A1,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: None,
        ozone_depletion: Some(Sourced {
            value: 0.6,
            source: "Montreal Protocol annex A (40 CFR 82 subpart A, appendix A), from memory",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR4",
                    value: 7370.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 7670.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 9600.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, R. Span: Thermodynamic Properties of R-227ea, R-365mfc, R-115, and R-13I1. J. Chem. Eng. Data 60 (2015) 3745-3758",
        equation_doi: Some("10.1021/acs.jced.5b00684"),
        equation_uncertainty: None,
        saturation_uncertainty: None,
    },
};
