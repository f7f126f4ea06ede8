//! The equation of state of R-1336mzz(E).
//!
//! Generated from tables/refrigerants/R-1336mzz(E).toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Gaussian, Ideal, Power, Sourced};
use crate::names::SafetyGroup;

pub(crate) static R1336MZZE: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314462618,
        molar_mass: 0.1640491,
        reducing_t_k: 403.53,
        reducing_rho_mol_m3: 3129.0,
        ideal: Ideal {
            constant: -17.583859885194016,
            slope: 11.524417012948918,
            log_tau: 3.0,
            powers: &[],
            planck_einstein: &[(15.891, 1.3629717740936238), (14.143, 8.609025351275)],
        },
        power: &[
            Power {
                n: 0.08297005,
                t: 1.0,
                d: 4,
                l: 0,
            },
            Power {
                n: 1.1213658,
                t: 0.117,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.0279038680756,
                t: 1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.3486706213113,
                t: 1.0,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.13227952,
                t: 0.413,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.11190839,
                t: 0.535,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.050014594,
                t: 1.186,
                d: 7,
                l: 1,
            },
            Power {
                n: -1.3751844,
                t: 2.44,
                d: 1,
                l: 2,
            },
            Power {
                n: -1.3939029,
                t: 2.51,
                d: 3,
                l: 2,
            },
            Power {
                n: -0.90635088,
                t: 1.927,
                d: 2,
                l: 2,
            },
        ],
        gaussian: &[
            Gaussian {
                n: 1.7953748,
                t: 0.876,
                d: 1,
                eta: 1.234,
                beta: 1.237,
                gamma: 1.21,
                epsilon: 1.23,
            },
            Gaussian {
                n: 2.0579712,
                t: 1.23,
                d: 1,
                eta: 1.34,
                beta: 0.384,
                gamma: 2.0,
                epsilon: 0.751,
            },
            Gaussian {
                n: -1.0433081,
                t: 0.875,
                d: 3,
                eta: 1.13,
                beta: 1.24,
                gamma: 1.216,
                epsilon: 0.522,
            },
            Gaussian {
                n: -1.2459808,
                t: 0.5181,
                d: 2,
                eta: 1.15,
                beta: 0.46,
                gamma: 2.27,
                epsilon: 0.32,
            },
            Gaussian {
                n: -0.49712249,
                t: 0.86,
                d: 2,
                eta: 1.3,
                beta: 1.326,
                gamma: 1.26,
                epsilon: 1.22,
            },
        ],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 200.15,
    highest_t_k: 410.0,
    highest_p_pa: 6000000.0,
    melting: None,
    facts: Facts {
        name: "trans-1,1,1,4,4,4-hexafluorobut-2-ene",
        cas: Some("66711-86-2"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A1,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: None,
        ozone_depletion: Some(Sourced {
            value: 0.0,
            source: "the molecule holds no chlorine, bromine or iodine",
        }),
        warming: &[],
        equation: "R. Akasaka, M. L. Huber, L. D. Simoni, E. W. Lemmon: A Helmholtz Energy Equation of State for trans-1,1,1,4,4,4-Hexafluoro-2-butene [R-1336mzz(E)] and an Auxiliary Extended Corresponding States Model for the Transport Properties. Int. J. Thermophys. 44 (2023) 50",
        equation_doi: Some("10.1007/s10765-022-03143-5"),
        equation_uncertainty: Some("rho 0.1-0.2%, psat 0.1-0.2% (from memory)"),
        saturation_uncertainty: Some(0.002),
    },
};
