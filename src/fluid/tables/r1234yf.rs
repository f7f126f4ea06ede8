//! The equation of state of R-1234yf.
//!
//! Generated from tables/refrigerants/R-1234yf.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Gaussian, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R1234YF: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314462618,
        molar_mass: 0.1140416,
        reducing_t_k: 367.85,
        reducing_rho_mol_m3: 4180.0,
        ideal: Ideal {
            constant: -12.081525543189,
            slope: 8.52896238365,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[
                (8.65, 1.3918716868288703),
                (9.75, 4.268044039690091),
                (2.11, 12.233247247519369),
            ],
        },
        power: &[
            Power {
                n: 0.0340387,
                t: 1.0,
                d: 4,
                l: 0,
            },
            Power {
                n: 1.912859,
                t: 0.222,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.1984719881617,
                t: 0.61,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.8147645305033,
                t: 1.122,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.2288282,
                t: 0.5,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.5961722,
                t: 1.05,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.0180069,
                t: 0.778,
                d: 7,
                l: 1,
            },
            Power {
                n: -1.65436,
                t: 2.14,
                d: 1,
                l: 2,
            },
            Power {
                n: -1.446628,
                t: 2.284,
                d: 3,
                l: 2,
            },
            Power {
                n: -0.6148209,
                t: 2.33,
                d: 2,
                l: 2,
            },
        ],
        gaussian: &[
            Gaussian {
                n: 0.2845275,
                t: 1.0,
                d: 1,
                eta: 28.1,
                beta: 1016.0,
                gamma: 1.061,
                epsilon: 0.96,
            },
            Gaussian {
                n: -0.3050809,
                t: 2.0,
                d: 1,
                eta: 28.0,
                beta: 1000.0,
                gamma: 1.062,
                epsilon: 0.96,
            },
            Gaussian {
                n: 2.198935,
                t: 1.236,
                d: 1,
                eta: 1.307,
                beta: 1.16,
                gamma: 1.3,
                epsilon: 0.853,
            },
            Gaussian {
                n: -0.4270329,
                t: 1.6,
                d: 1,
                eta: 1.96,
                beta: 1.2,
                gamma: 1.04,
                epsilon: 1.15,
            },
            Gaussian {
                n: -0.4015581,
                t: 1.85,
                d: 1,
                eta: 1.25,
                beta: 1.26,
                gamma: 1.0,
                epsilon: 1.3,
            },
            Gaussian {
                n: 0.1179587,
                t: 0.7,
                d: 1,
                eta: 1.0,
                beta: 1.6,
                gamma: 1.14,
                epsilon: 1.5,
            },
            Gaussian {
                n: -0.3141002,
                t: 1.75,
                d: 1,
                eta: 2.2,
                beta: 0.87,
                gamma: 1.1,
                epsilon: 0.762,
            },
        ],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 121.6,
    highest_t_k: 410.0,
    highest_p_pa: 100000000.0,
    melting: None,
    facts: Facts {
        name: "2,3,3,3-tetrafluoroprop-1-ene",
        cas: Some("754-12-1"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A2L,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.062),
                kg_m3: Some(0.289),
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
                    report: "AR5",
                    value: 1.0,
                    is_upper_bound: true,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 0.501,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "E. W. Lemmon, R. Akasaka: An International Standard Formulation for 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf) Covering Temperatures from the Triple Point Temperature to 410 K and Pressures up to 100 MPa. Int. J. Thermophys. 43 (2022) 119",
        equation_doi: Some("10.1007/s10765-022-03015-y"),
        equation_uncertainty: Some(
            "saturation pressure 0.1 %, liquid rho 0.1 %, vapour rho 0.2 % to 0.3 %, w 0.02 % to 0.1 % (from memory)",
        ),
        saturation_uncertainty: Some(0.001),
    },
};
