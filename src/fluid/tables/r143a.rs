//! The equation of state of R-143a.
//!
//! Generated from tables/refrigerants/R-143a.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R143A: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.08404099999999999,
        reducing_t_k: 345.857,
        reducing_rho_mol_m3: 5128.45,
        ideal: Ideal {
            constant: 5.903087,
            slope: 7.307253,
            log_tau: -1.0,
            powers: &[(-16.591049152078973, -0.33)],
            planck_einstein: &[(4.4402, 5.178440800677737), (3.7515, 2.3795961914895463)],
        },
        power: &[
            Power {
                n: 7.7736443,
                t: 0.67,
                d: 1,
                l: 0,
            },
            Power {
                n: -8.70185,
                t: 0.833,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.27779799,
                t: 1.7,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.1460922,
                t: 1.82,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.0089581616,
                t: 0.35,
                d: 5,
                l: 0,
            },
            Power {
                n: -0.20552116,
                t: 3.9,
                d: 1,
                l: 1,
            },
            Power {
                n: 0.10653258,
                t: 0.95,
                d: 3,
                l: 1,
            },
            Power {
                n: 0.023270816,
                t: 0.0,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.013247542,
                t: 1.19,
                d: 7,
                l: 1,
            },
            Power {
                n: -0.04279387,
                t: 7.2,
                d: 1,
                l: 2,
            },
            Power {
                n: 0.36221685,
                t: 5.9,
                d: 2,
                l: 2,
            },
            Power {
                n: -0.25671899,
                t: 7.65,
                d: 2,
                l: 2,
            },
            Power {
                n: -0.092326113,
                t: 7.5,
                d: 3,
                l: 2,
            },
            Power {
                n: 0.083774837,
                t: 7.45,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.017128445,
                t: 15.5,
                d: 2,
                l: 3,
            },
            Power {
                n: -0.01725611,
                t: 22.0,
                d: 3,
                l: 3,
            },
            Power {
                n: 0.0049080492,
                t: 19.0,
                d: 5,
                l: 3,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 161.34,
    highest_t_k: 450.0,
    highest_p_pa: 50000000.0,
    melting: None,
    facts: Facts {
        name: "1,1,1-trifluoroethane",
        cas: Some("420-46-2"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A2L,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.08199999999999999),
                kg_m3: Some(0.282),
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
                    value: 4470.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 4800.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 5810.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, R. T Jacobsen: An International Standard Formulation for the Thermodynamic Properties of 1,1,1-Trifluoroethane (HFC-143a) for Temperatures From 161 to 450 K and Pressures to 50 MPa. J. Phys. Chem. Ref. Data 29 (2000) 521-552",
        equation_doi: Some("10.1063/1.1318909"),
        equation_uncertainty: Some("rho 0.1%, cp 0.5%, w 0.02% vap, psat 0.1-0.25% (from memory)"),
        saturation_uncertainty: Some(0.0025),
    },
};
