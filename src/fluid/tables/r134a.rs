//! The equation of state of R-134a.
//!
//! Generated from tables/refrigerants/R-134a.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R134A: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314471,
        molar_mass: 0.102032,
        reducing_t_k: 374.18,
        reducing_rho_mol_m3: 4978.830170926768,
        ideal: Ideal {
            constant: -1.019535,
            slope: 9.047135,
            log_tau: -1.629789,
            powers: &[(-9.723916, -0.5), (-3.92717, -0.75)],
            planck_einstein: &[],
        },
        power: &[
            Power {
                n: 0.05586817,
                t: -0.5,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.498223,
                t: 0.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.02458698,
                t: 0.0,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.0008570145,
                t: 0.0,
                d: 6,
                l: 0,
            },
            Power {
                n: 0.0004788584,
                t: 1.5,
                d: 6,
                l: 0,
            },
            Power {
                n: -1.800808,
                t: 1.5,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.2671641,
                t: 2.0,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.04781652,
                t: 2.0,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.01423987,
                t: 1.0,
                d: 5,
                l: 1,
            },
            Power {
                n: 0.3324062,
                t: 3.0,
                d: 2,
                l: 1,
            },
            Power {
                n: -0.007485907,
                t: 5.0,
                d: 2,
                l: 1,
            },
            Power {
                n: 0.0001017263,
                t: 1.0,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.5184567,
                t: 5.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.08692288,
                t: 5.0,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.2057144,
                t: 6.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.005000457,
                t: 10.0,
                d: 2,
                l: 2,
            },
            Power {
                n: 0.0004603262,
                t: 10.0,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.003497836,
                t: 10.0,
                d: 1,
                l: 3,
            },
            Power {
                n: 0.006995038,
                t: 18.0,
                d: 5,
                l: 3,
            },
            Power {
                n: -0.01452184,
                t: 22.0,
                d: 3,
                l: 3,
            },
            Power {
                n: -0.0001285458,
                t: 50.0,
                d: 10,
                l: 4,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 169.85,
    highest_t_k: 455.0,
    highest_p_pa: 70000000.0,
    melting: None,
    facts: Facts {
        name: "1,1,1,2-tetrafluoroethane",
        cas: Some("811-97-2"),
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
                    value: 1430.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 1300.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 1530.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "R. Tillner-Roth, H. D. Baehr: An International Standard Formulation for the Thermodynamic Properties of 1,1,1,2-Tetrafluoroethane (HFC-134a) for Temperatures from 170 K to 455 K and Pressures up to 70 MPa. J. Phys. Chem. Ref. Data 23 (1994) 657-729",
        equation_doi: Some("10.1063/1.555958"),
        equation_uncertainty: Some("rho 0.05 %, saturation pressure 0.02 %, cp 0.5 % to 1 % (abstract)"),
        saturation_uncertainty: Some(0.0002),
    },
};
