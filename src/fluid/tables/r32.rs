//! The equation of state of R-32.
//!
//! Generated from tables/refrigerants/R-32.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R32: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314471,
        molar_mass: 0.052024,
        reducing_t_k: 351.255,
        reducing_rho_mol_m3: 8150.084576349377,
        ideal: Ideal {
            constant: -8.258096,
            slope: 6.353098,
            log_tau: 3.004486,
            powers: &[],
            planck_einstein: &[
                (1.160761, 2.2718538),
                (2.645151, 11.914421),
                (5.794987, 5.1415638),
                (1.129475, 32.768217),
            ],
        },
        power: &[
            Power {
                n: 1.046634,
                t: 0.25,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.5451165,
                t: 1.0,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.002448595,
                t: -0.25,
                d: 5,
                l: 0,
            },
            Power {
                n: -0.04877002,
                t: -1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.03520158,
                t: 2.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.00162275,
                t: 2.0,
                d: 3,
                l: 0,
            },
            Power {
                n: 2.377225e-5,
                t: 0.75,
                d: 8,
                l: 0,
            },
            Power {
                n: 0.029149,
                t: 0.25,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.0004782025,
                t: -1.0,
                d: 8,
                l: 1,
            },
            Power {
                n: -0.02418396,
                t: 1.75,
                d: 5,
                l: 1,
            },
            Power {
                n: -1.200513,
                t: 1.0,
                d: 3,
                l: 1,
            },
            Power {
                n: -2.59155,
                t: 1.5,
                d: 1,
                l: 1,
            },
            Power {
                n: -1.400145,
                t: 1.0,
                d: 2,
                l: 1,
            },
            Power {
                n: 0.8263017,
                t: 0.5,
                d: 3,
                l: 1,
            },
            Power {
                n: 0.4209034,
                t: 4.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.4616537,
                t: 5.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.004202444,
                t: 26.0,
                d: 4,
                l: 3,
            },
            Power {
                n: 0.003386203,
                t: 18.0,
                d: 4,
                l: 4,
            },
            Power {
                n: -0.005504323,
                t: 25.0,
                d: 3,
                l: 4,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 136.34,
    highest_t_k: 435.0,
    highest_p_pa: 70000000.0,
    melting: None,
    facts: Facts {
        name: "difluoromethane",
        cas: Some("75-10-5"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A2L,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.14400000000000002),
                kg_m3: Some(0.307),
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
                    value: 675.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 677.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 771.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "R. Tillner-Roth, A. Yokozeki: An International Standard Equation of State for Difluoromethane (R-32) for Temperatures from the Triple Point at 136.34 K to 435 K and Pressures up to 70 MPa. J. Phys. Chem. Ref. Data 26 (1997) 1273-1328",
        equation_doi: Some("10.1063/1.556002"),
        equation_uncertainty: Some("rho 0.05%, psat 0.02%, cp 0.5-1% (from memory)"),
        saturation_uncertainty: Some(0.0002),
    },
};
