//! The equation of state of R-12.
//!
//! Generated from tables/refrigerants/R-12.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R12: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314471,
        molar_mass: 0.12091299999999999,
        reducing_t_k: 385.12,
        reducing_rho_mol_m3: 4672.781255944357,
        ideal: Ideal {
            constant: 10.0100905,
            slope: -4.66434985,
            log_tau: 3.00361975,
            powers: &[],
            planck_einstein: &[
                (3.16062357, 3.72204562),
                (0.371258136, 6.30985083),
                (3.56226039, 1.78037889),
                (2.12152336, 1.07087607),
            ],
        },
        power: &[
            Power {
                n: 2.075343402,
                t: 0.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.962525996,
                t: 1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.01001589616,
                t: 2.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 0.01781347612,
                t: 2.5,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.02556929157,
                t: -0.5,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.002352142637,
                t: 0.0,
                d: 6,
                l: 0,
            },
            Power {
                n: -8.495553314e-5,
                t: 0.0,
                d: 8,
                l: 0,
            },
            Power {
                n: -0.01535945599,
                t: -0.5,
                d: 1,
                l: 1,
            },
            Power {
                n: -0.2108816776,
                t: 1.5,
                d: 1,
                l: 1,
            },
            Power {
                n: -0.01654228806,
                t: 2.5,
                d: 5,
                l: 1,
            },
            Power {
                n: -0.0118131613,
                t: -0.5,
                d: 7,
                l: 1,
            },
            Power {
                n: -4.16029583e-5,
                t: 0.0,
                d: 12,
                l: 1,
            },
            Power {
                n: 2.784861664e-5,
                t: 0.5,
                d: 12,
                l: 1,
            },
            Power {
                n: 1.618686433e-6,
                t: -0.5,
                d: 14,
                l: 1,
            },
            Power {
                n: -0.1064614686,
                t: 4.0,
                d: 1,
                l: 2,
            },
            Power {
                n: 0.0009369665207,
                t: 4.0,
                d: 9,
                l: 2,
            },
            Power {
                n: 0.02590095447,
                t: 2.0,
                d: 1,
                l: 3,
            },
            Power {
                n: -0.04347025025,
                t: 4.0,
                d: 1,
                l: 3,
            },
            Power {
                n: 0.1012308449,
                t: 12.0,
                d: 3,
                l: 3,
            },
            Power {
                n: -0.1100003438,
                t: 14.0,
                d: 3,
                l: 3,
            },
            Power {
                n: -0.003361012009,
                t: 0.0,
                d: 5,
                l: 3,
            },
            Power {
                n: 0.0003789190008,
                t: 14.0,
                d: 9,
                l: 4,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 116.099,
    highest_t_k: 525.0,
    highest_p_pa: 200000000.0,
    melting: None,
    facts: Facts {
        name: "dichlorodifluoromethane",
        cas: Some("75-71-8"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A1,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: None,
        ozone_depletion: Some(Sourced {
            value: 1.0,
            source: "Montreal Protocol annex A (40 CFR 82 subpart A, appendix A), from memory",
        }),
        warming: &[
            Sourced {
                value: Warming {
                    report: "AR4",
                    value: 10900.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 10200.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 12500.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "V. Marx, A. Pruß, W. Wagner: Neue Zustandsgleichungen für R 12, R 22, R 11 und R 113. Fortschritt-Berichte VDI, Reihe 19, Nr. 57. VDI Verlag, Düsseldorf 1992",
        equation_doi: None,
        equation_uncertainty: Some("rho 0.2%, psat 0.2%, cp 1-2% (from memory)"),
        saturation_uncertainty: Some(0.002),
    },
};
