//! The equation of state of R-125.
//!
//! Generated from tables/refrigerants/R-125.toml by tables/compile; edit the table, not this file.

use crate::fluid::{DoubleExponential, Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R125: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.1200214,
        reducing_t_k: 339.173,
        reducing_rho_mol_m3: 4779.0,
        ideal: Ideal {
            constant: 0.0,
            slope: 0.0,
            log_tau: -1.0,
            powers: &[(-49.865070676498284, -0.1)],
            planck_einstein: &[
                (2.303, 0.9257812384830161),
                (5.086, 2.2289510073030576),
                (7.3, 5.032829853791428),
            ],
        },
        power: &[
            Power {
                n: 5.28076,
                t: 0.669,
                d: 1,
                l: 0,
            },
            Power {
                n: -8.67658,
                t: 1.05,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.7501127,
                t: 2.75,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.7590023,
                t: 0.956,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.01451899,
                t: 1.0,
                d: 4,
                l: 0,
            },
            Power {
                n: 4.777189,
                t: 2.0,
                d: 1,
                l: 1,
            },
            Power {
                n: -3.330988,
                t: 2.75,
                d: 1,
                l: 1,
            },
            Power {
                n: 3.775673,
                t: 2.38,
                d: 2,
                l: 1,
            },
            Power {
                n: -2.290919,
                t: 3.37,
                d: 2,
                l: 1,
            },
            Power {
                n: 0.8888268,
                t: 3.47,
                d: 3,
                l: 1,
            },
            Power {
                n: -0.6234864,
                t: 2.63,
                d: 4,
                l: 1,
            },
            Power {
                n: -0.04127263,
                t: 3.45,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.08455389,
                t: 0.72,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.1308752,
                t: 4.23,
                d: 5,
                l: 2,
            },
            Power {
                n: 0.008344962,
                t: 0.2,
                d: 1,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[
            DoubleExponential {
                n: -1.532005,
                t: 4.5,
                d: 2,
                l: 2,
                m: 1.7,
            },
            DoubleExponential {
                n: -0.05883649,
                t: 29.0,
                d: 3,
                l: 3,
                m: 7.0,
            },
            DoubleExponential {
                n: 0.02296658,
                t: 24.0,
                d: 5,
                l: 3,
                m: 6.0,
            },
        ],
        non_analytic: &[],
    },
    lowest_t_k: 172.52,
    highest_t_k: 500.0,
    highest_p_pa: 60000000.0,
    melting: None,
    facts: Facts {
        name: "pentafluoroethane",
        cas: Some("354-33-6"),
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
                    value: 3500.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 3170.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 3740.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, R. T Jacobsen: A New Functional Form and New Fitting Techniques for Equations of State with Application to Pentafluoroethane (HFC-125). J. Phys. Chem. Ref. Data 34 (2005) 69-108",
        equation_doi: Some("10.1063/1.1797813"),
        equation_uncertainty: Some("rho 0.1%, cp 0.5%, w 0.05% vap/0.5%, psat 0.1% (from memory of the abstract)"),
        saturation_uncertainty: Some(0.001),
    },
};
