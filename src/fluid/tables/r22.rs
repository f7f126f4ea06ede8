//! The equation of state of R-22.
//!
//! Generated from tables/refrigerants/R-22.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R22: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.31451,
        molar_mass: 0.086468,
        reducing_t_k: 369.295,
        reducing_rho_mol_m3: 6058.22,
        ideal: Ideal {
            constant: 0.0,
            slope: 0.0,
            log_tau: 3.0052614044599997,
            powers: &[(-0.0222800387550675, -1.0)],
            planck_einstein: &[
                (1.0, 11.785454717773055),
                (1.0, 5.240144329059424),
                (1.0, 5.111575732138263),
                (1.0, 4.589509308276581),
                (1.0, 4.34795618678834),
                (1.0, 3.147982615524174),
                (1.0, 2.3220267807579305),
                (1.0, 1.6402236152669274),
                (1.0, 1.4376306746638865),
            ],
        },
        power: &[
            Power {
                n: 0.0695645445236,
                t: -1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 25.2275419999,
                t: 1.75,
                d: 1,
                l: 0,
            },
            Power {
                n: -202.351148311,
                t: 2.25,
                d: 1,
                l: 0,
            },
            Power {
                n: 350.063090302,
                t: 2.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -223.134648863,
                t: 2.75,
                d: 1,
                l: 0,
            },
            Power {
                n: 48.8345904592,
                t: 3.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.0108874958556,
                t: 5.5,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.590315073614,
                t: 1.5,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.689043767432,
                t: 1.75,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.284224445844,
                t: 3.5,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.125436457897,
                t: 1.0,
                d: 3,
                l: 0,
            },
            Power {
                n: -0.0113338666416,
                t: 4.5,
                d: 3,
                l: 0,
            },
            Power {
                n: -0.063138895917,
                t: 1.5,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.00974021015232,
                t: 0.5,
                d: 5,
                l: 0,
            },
            Power {
                n: -0.000408406844722,
                t: 4.5,
                d: 6,
                l: 0,
            },
            Power {
                n: 0.00074194877357,
                t: 1.0,
                d: 7,
                l: 0,
            },
            Power {
                n: 0.000315912525922,
                t: 4.0,
                d: 7,
                l: 0,
            },
            Power {
                n: 8.76009723338e-6,
                t: 5.0,
                d: 7,
                l: 0,
            },
            Power {
                n: -0.000110343340301,
                t: -0.5,
                d: 8,
                l: 0,
            },
            Power {
                n: -7.05323356879e-5,
                t: 3.5,
                d: 8,
                l: 0,
            },
            Power {
                n: 0.23585073151,
                t: 5.0,
                d: 2,
                l: 2,
            },
            Power {
                n: -0.192640494729,
                t: 7.0,
                d: 2,
                l: 2,
            },
            Power {
                n: 0.00375218008557,
                t: 12.0,
                d: 2,
                l: 2,
            },
            Power {
                n: -4.48926036678e-5,
                t: 15.0,
                d: 2,
                l: 2,
            },
            Power {
                n: -0.0356958425255,
                t: 3.5,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.0319594161562,
                t: 8.0,
                d: 4,
                l: 2,
            },
            Power {
                n: 2.60284291078e-6,
                t: 15.0,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.0345482791645,
                t: 3.0,
                d: 6,
                l: 2,
            },
            Power {
                n: -0.00411831711251,
                t: 9.0,
                d: 6,
                l: 2,
            },
            Power {
                n: -0.00563368989908,
                t: 2.0,
                d: 8,
                l: 2,
            },
            Power {
                n: 0.00191384919423,
                t: 7.0,
                d: 8,
                l: 2,
            },
            Power {
                n: 0.0198120520635,
                t: 3.5,
                d: 3,
                l: 3,
            },
            Power {
                n: -0.00897629021967,
                t: 25.0,
                d: 4,
                l: 4,
            },
            Power {
                n: 0.00567428536529,
                t: 19.0,
                d: 6,
                l: 4,
            },
            Power {
                n: -0.00178930036389,
                t: 13.0,
                d: 8,
                l: 4,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 115.73,
    highest_t_k: 550.0,
    highest_p_pa: 60000000.0,
    melting: None,
    facts: Facts {
        name: "chlorodifluoromethane",
        cas: Some("75-45-6"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A1,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: None,
        ozone_depletion: Some(Sourced {
            value: 0.055,
            source: "40 CFR 82 subpart A, appendix B",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR4",
                    value: 1810.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 1760.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 1960.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "A. Kamei, S. W. Beyerlein, R. T Jacobsen: Application of Nonlinear Regression in the Development of a Wide Range Formulation for HCFC-22. Int. J. Thermophys. 16 (1995) 1155-1164",
        equation_doi: Some("10.1007/BF02081283"),
        equation_uncertainty: Some("rho 0.1%, psat 0.2%, cp 1% (from memory)"),
        saturation_uncertainty: Some(0.002),
    },
};
