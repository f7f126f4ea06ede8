//! The equation of state of R-227ea.
//!
//! Generated from tables/refrigerants/R-227ea.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Gaussian, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R227EA: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.3144621,
        molar_mass: 0.17002886,
        reducing_t_k: 374.9,
        reducing_rho_mol_m3: 3495.0,
        ideal: Ideal {
            constant: -15.8291124137,
            slope: 11.0879509962,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[(11.43, 1.0749533208855695), (12.83, 3.809015737530008)],
        },
        power: &[
            Power {
                n: 2.024341,
                t: 0.34,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.60593,
                t: 0.77,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.4957216,
                t: 0.36,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.824082,
                t: 0.9,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.06543703,
                t: 1.0,
                d: 4,
                l: 0,
            },
            Power {
                n: -1.02461,
                t: 2.82,
                d: 1,
                l: 1,
            },
            Power {
                n: 0.6247065,
                t: 2.1,
                d: 3,
                l: 1,
            },
            Power {
                n: 0.2997521,
                t: 0.9,
                d: 6,
                l: 1,
            },
            Power {
                n: -0.353917,
                t: 1.13,
                d: 6,
                l: 1,
            },
            Power {
                n: -1.232043,
                t: 3.8,
                d: 2,
                l: 2,
            },
            Power {
                n: -0.8824483,
                t: 2.75,
                d: 3,
                l: 2,
            },
        ],
        gaussian: &[
            Gaussian {
                n: 0.1349661,
                t: 1.5,
                d: 1,
                eta: 0.83,
                beta: 1.72,
                gamma: 0.414,
                epsilon: 1.13,
            },
            Gaussian {
                n: -0.2662928,
                t: 2.5,
                d: 2,
                eta: 2.19,
                beta: 5.2,
                gamma: 1.051,
                epsilon: 0.71,
            },
            Gaussian {
                n: 0.1764733,
                t: 2.5,
                d: 1,
                eta: 2.44,
                beta: 2.31,
                gamma: 1.226,
                epsilon: 1.2,
            },
            Gaussian {
                n: 0.01536163,
                t: 5.4,
                d: 1,
                eta: 3.65,
                beta: 1.02,
                gamma: 1.7,
                epsilon: 1.7,
            },
            Gaussian {
                n: -0.004667185,
                t: 4.0,
                d: 4,
                eta: 8.88,
                beta: 5.63,
                gamma: 0.904,
                epsilon: 0.546,
            },
            Gaussian {
                n: -11.70854,
                t: 1.0,
                d: 2,
                eta: 8.23,
                beta: 50.9,
                gamma: 1.42,
                epsilon: 0.896,
            },
            Gaussian {
                n: 0.9114512,
                t: 3.5,
                d: 1,
                eta: 2.01,
                beta: 1.56,
                gamma: 0.926,
                epsilon: 0.747,
            },
        ],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 146.35,
    highest_t_k: 475.0,
    highest_p_pa: 60000000.0,
    melting: None,
    facts: Facts {
        name: "1,1,1,2,3,3,3-heptafluoropropane",
        cas: Some("431-89-0"),
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
                    value: 3220.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 3350.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 3600.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, R. Span: Thermodynamic Properties of R-227ea, R-365mfc, R-115, and R-13I1. J. Chem. Eng. Data 60 (2015) 3745-3758",
        equation_doi: Some("10.1021/acs.jced.5b00684"),
        equation_uncertainty: Some("rho 0.05-0.2%, psat 0.1%, w 0.05% (from memory)"),
        saturation_uncertainty: Some(0.001),
    },
};
