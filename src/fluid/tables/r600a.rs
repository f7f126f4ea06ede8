//! The equation of state of R-600a.
//!
//! Generated from tables/refrigerants/R-600a.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Gaussian, Ideal, Power, Sourced};
use crate::names::SafetyGroup;

pub(crate) static R600A: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314472,
        molar_mass: 0.0581222,
        reducing_t_k: 407.81,
        reducing_rho_mol_m3: 3879.756788283995,
        ideal: Ideal {
            constant: 11.60865546,
            slope: -5.29450411,
            log_tau: 3.05956619,
            powers: &[],
            planck_einstein: &[
                (4.94641014, 0.951277902),
                (4.09475197, 2.387895885),
                (15.6632824, 4.346904269),
                (9.73918122, 10.36885864),
            ],
        },
        power: &[
            Power {
                n: 2.0686820727966,
                t: 0.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -3.6400098615204,
                t: 1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.51968754427244,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.17745845870123,
                t: 0.0,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.12361807851599,
                t: 0.5,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.045145314010528,
                t: 0.5,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.03047647996598,
                t: 0.75,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.75508387706302,
                t: 2.0,
                d: 1,
                l: 1,
            },
            Power {
                n: -0.85885381015629,
                t: 2.5,
                d: 1,
                l: 1,
            },
            Power {
                n: 0.036324009830684,
                t: 2.5,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.01954879945055,
                t: 1.5,
                d: 7,
                l: 1,
            },
            Power {
                n: -0.004445239290496,
                t: 1.0,
                d: 8,
                l: 1,
            },
            Power {
                n: 0.004641076366646,
                t: 1.5,
                d: 8,
                l: 1,
            },
            Power {
                n: -0.071444097992825,
                t: 4.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.080765060030713,
                t: 7.0,
                d: 2,
                l: 2,
            },
            Power {
                n: 0.15560460945053,
                t: 3.0,
                d: 3,
                l: 2,
            },
            Power {
                n: 0.0020318752160332,
                t: 7.0,
                d: 3,
                l: 2,
            },
            Power {
                n: -0.10624883571689,
                t: 3.0,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.039807690546305,
                t: 1.0,
                d: 5,
                l: 2,
            },
            Power {
                n: 0.016371431292386,
                t: 6.0,
                d: 5,
                l: 2,
            },
            Power {
                n: 0.00053212200682628,
                t: 0.0,
                d: 10,
                l: 2,
            },
            Power {
                n: -0.0078681561156387,
                t: 6.0,
                d: 2,
                l: 3,
            },
            Power {
                n: -0.0030981191888963,
                t: 13.0,
                d: 6,
                l: 3,
            },
        ],
        gaussian: &[
            Gaussian {
                n: -0.042276036810382,
                t: 2.0,
                d: 1,
                eta: 10.0,
                beta: 150.0,
                gamma: 1.16,
                epsilon: 0.85,
            },
            Gaussian {
                n: -0.0053001044558079,
                t: 0.0,
                d: 2,
                eta: 10.0,
                beta: 200.0,
                gamma: 1.13,
                epsilon: 1.0,
            },
        ],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 113.73,
    highest_t_k: 575.0,
    highest_p_pa: 35000000.0,
    melting: None,
    facts: Facts {
        name: "2-methylpropane (isobutane)",
        cas: Some("75-28-5"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A3,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.018000000000000002),
                kg_m3: Some(0.043),
            },
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        ozone_depletion: Some(Sourced {
            value: 0.0,
            source: "the molecule holds no chlorine, bromine or iodine",
        }),
        warming: &[],
        equation: "D. Bücker, W. Wagner: Reference Equations of State for the Thermodynamic Properties of Fluid Phase n-Butane and Isobutane. J. Phys. Chem. Ref. Data 35 (2006) 929-1019",
        equation_doi: Some("10.1063/1.1901687"),
        equation_uncertainty: Some("rho 0.02%, psat 0.05% (above 270 K), cp 1% (from memory)"),
        saturation_uncertainty: Some(0.0005),
    },
};
