//! The equation of state of R-124.
//!
//! Generated from tables/refrigerants/R-124.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R124: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314471,
        molar_mass: 0.13647499999999999,
        reducing_t_k: 395.425,
        reducing_rho_mol_m3: 4103.31562557245,
        ideal: Ideal {
            constant: -11.669406,
            slope: 9.8760443,
            log_tau: 2.175638,
            powers: &[(-7.389735, -1.0), (0.8736831, -2.0), (-0.1115133, -3.0)],
            planck_einstein: &[],
        },
        power: &[
            Power {
                n: -0.01262962,
                t: 2.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 2.168373,
                t: 0.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -3.330033,
                t: 1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.1610361,
                t: 0.5,
                d: 2,
                l: 0,
            },
            Power {
                n: -9.666145e-5,
                t: 2.5,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.0119131,
                t: -1.0,
                d: 3,
                l: 0,
            },
            Power {
                n: -0.002880217,
                t: 1.0,
                d: 5,
                l: 0,
            },
            Power {
                n: 0.001681346,
                t: 0.0,
                d: 6,
                l: 0,
            },
            Power {
                n: 1.594968e-5,
                t: -0.5,
                d: 8,
                l: 0,
            },
            Power {
                n: 0.1289674,
                t: 1.5,
                d: 2,
                l: 1,
            },
            Power {
                n: 1.182213e-5,
                t: 1.0,
                d: 12,
                l: 1,
            },
            Power {
                n: -0.4713997,
                t: 2.5,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.2412873,
                t: -0.25,
                d: 1,
                l: 2,
            },
            Power {
                n: 0.6868066,
                t: 1.0,
                d: 1,
                l: 2,
            },
            Power {
                n: -0.08621095,
                t: 5.0,
                d: 1,
                l: 2,
            },
            Power {
                n: 4.728645e-6,
                t: 2.0,
                d: 15,
                l: 2,
            },
            Power {
                n: 0.01487933,
                t: 15.0,
                d: 3,
                l: 3,
            },
            Power {
                n: -0.03001338,
                t: 20.0,
                d: 3,
                l: 3,
            },
            Power {
                n: 0.001849606,
                t: 15.0,
                d: 4,
                l: 4,
            },
            Power {
                n: 0.0004126073,
                t: 45.0,
                d: 9,
                l: 4,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 120.0,
    highest_t_k: 470.0,
    highest_p_pa: 40000000.0,
    melting: None,
    facts: Facts {
        name: "2-chloro-1,1,1,2-tetrafluoroethane",
        cas: Some("2837-89-0"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A1,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: None,
        ozone_depletion: Some(Sourced {
            value: 0.022,
            source: "40 CFR 82 subpart A, appendix B",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR4",
                    value: 609.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 527.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 597.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "B. de Vries, R. Tillner-Roth, H. D. Baehr: Thermodynamic Properties of HCFC 124. 19th International Congress of Refrigeration, The Hague 1995, 582-589",
        equation_doi: None,
        equation_uncertainty: Some("rho 0.05%, psat 0.05%, cp 1% (from memory)"),
        saturation_uncertainty: Some(0.0005),
    },
};
