//! The equation of state of R-142b.
//!
//! Generated from tables/refrigerants/R-142b.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R142B: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.10049503,
        reducing_t_k: 410.26,
        reducing_rho_mol_m3: 4438.0,
        ideal: Ideal {
            constant: -12.6016527149,
            slope: 8.3160183265,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[
                (5.0385, 1.152927411885146),
                (6.8356, 3.061473212109394),
                (4.0591, 6.0863842441378635),
                (2.8136, 16.672354116901477),
            ],
        },
        power: &[
            Power {
                n: 1.0038,
                t: 0.25,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.7662,
                t: 1.25,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.42921,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.081363,
                t: 0.25,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.00024174,
                t: 0.875,
                d: 7,
                l: 0,
            },
            Power {
                n: 0.48246,
                t: 2.375,
                d: 1,
                l: 1,
            },
            Power {
                n: 0.75542,
                t: 2.0,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.00743,
                t: 2.125,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.4146,
                t: 3.5,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.016558,
                t: 6.5,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.10644,
                t: 4.75,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.021704,
                t: 12.5,
                d: 2,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 142.72,
    highest_t_k: 470.0,
    highest_p_pa: 60000000.0,
    melting: None,
    facts: Facts {
        name: "1-chloro-1,1-difluoroethane",
        cas: Some("75-68-3"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A2,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.08),
                kg_m3: Some(0.329),
            },
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        ozone_depletion: Some(Sourced {
            value: 0.065,
            source: "40 CFR 82 subpart A, appendix B",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR4",
                    value: 2310.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 1980.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 2300.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, R. Span: Short Fundamental Equations of State for 20 Industrial Fluids. J. Chem. Eng. Data 51 (2006) 785-850",
        equation_doi: Some("10.1021/je050186n"),
        equation_uncertainty: Some("rho 0.3%, psat 0.5%, cp 2% (short industrial EOS) (from memory)"),
        saturation_uncertainty: Some(0.005),
    },
};
