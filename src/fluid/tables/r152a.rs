//! The equation of state of R-152a.
//!
//! Generated from tables/refrigerants/R-152a.toml by tables/compile; edit the table, not this file.

use crate::fluid::{Equation, Facts, Flammability, Fluid, Ideal, Power, Sourced, Warming};
use crate::names::SafetyGroup;

pub(crate) static R152A: Fluid = Fluid {
    equation: Equation {
        gas_constant: 8.314471,
        molar_mass: 0.066051,
        reducing_t_k: 386.411,
        reducing_rho_mol_m3: 5571.45,
        ideal: Ideal {
            constant: 0.0,
            slope: 0.0,
            log_tau: 2.354951,
            powers: &[
                (-2.1226505, -1.0),
                (-0.6225413333333333, -2.0),
                (0.13402116666666666, -3.0),
            ],
            planck_einstein: &[],
        },
        power: &[
            Power {
                n: -0.6809684351167602,
                t: 0.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 7.352126468006199,
                t: 0.5,
                d: 1,
                l: 0,
            },
            Power {
                n: -11.247306383849155,
                t: 1.0,
                d: 1,
                l: 0,
            },
            Power {
                n: 5.499167156574648,
                t: 2.0,
                d: 1,
                l: 0,
            },
            Power {
                n: -2.4018632732217053,
                t: 3.0,
                d: 1,
                l: 0,
            },
            Power {
                n: -0.07090364470424149,
                t: 0.0,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.2132008868136403,
                t: 1.0,
                d: 2,
                l: 0,
            },
            Power {
                n: 0.19783973636779337,
                t: 2.0,
                d: 2,
                l: 0,
            },
            Power {
                n: 1.8249476990942297,
                t: 3.0,
                d: 2,
                l: 0,
            },
            Power {
                n: -0.08605464796927734,
                t: 0.0,
                d: 3,
                l: 0,
            },
            Power {
                n: 0.8881373665401952,
                t: 1.0,
                d: 3,
                l: 0,
            },
            Power {
                n: -0.9661273463699487,
                t: 2.0,
                d: 3,
                l: 0,
            },
            Power {
                n: -0.09852234793243135,
                t: 1.0,
                d: 4,
                l: 0,
            },
            Power {
                n: 0.018341936847159263,
                t: 2.0,
                d: 5,
                l: 0,
            },
            Power {
                n: -0.03385502042523505,
                t: 3.0,
                d: 5,
                l: 0,
            },
            Power {
                n: 0.012492110101641217,
                t: 2.0,
                d: 6,
                l: 0,
            },
            Power {
                n: -0.0022105670642304223,
                t: 2.0,
                d: 7,
                l: 0,
            },
            Power {
                n: 0.00216879133161324,
                t: 3.0,
                d: 7,
                l: 0,
            },
            Power {
                n: -0.00023359769047801045,
                t: 3.0,
                d: 8,
                l: 0,
            },
            Power {
                n: -3.5465794998234226,
                t: 3.0,
                d: 0,
                l: 0,
            },
            Power {
                n: -0.36463128062012146,
                t: 4.0,
                d: 0,
                l: 0,
            },
            Power {
                n: 0.033323333555841904,
                t: 5.0,
                d: 0,
                l: 0,
            },
            Power {
                n: 3.5465794998234226,
                t: 3.0,
                d: 0,
                l: 2,
            },
            Power {
                n: 0.36463128062012146,
                t: 4.0,
                d: 0,
                l: 2,
            },
            Power {
                n: -0.033323333555841904,
                t: 5.0,
                d: 0,
                l: 2,
            },
            Power {
                n: 2.76133830253568,
                t: 3.0,
                d: 2,
                l: 2,
            },
            Power {
                n: -0.06911857118799047,
                t: 4.0,
                d: 2,
                l: 2,
            },
            Power {
                n: -0.033323333555841904,
                t: 5.0,
                d: 2,
                l: 2,
            },
            Power {
                n: 0.7827613277174056,
                t: 3.0,
                d: 4,
                l: 2,
            },
            Power {
                n: -0.03455928559399524,
                t: 4.0,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.13781353190596002,
                t: 5.0,
                d: 4,
                l: 2,
            },
            Power {
                n: 0.18617312615311335,
                t: 3.0,
                d: 6,
                l: 2,
            },
            Power {
                n: -0.034111939329683844,
                t: 4.0,
                d: 6,
                l: 2,
            },
            Power {
                n: 0.04593784396865334,
                t: 5.0,
                d: 6,
                l: 2,
            },
            Power {
                n: 0.021647001260731293,
                t: 3.0,
                d: 8,
                l: 2,
            },
            Power {
                n: -0.008527984832420961,
                t: 4.0,
                d: 8,
                l: 2,
            },
            Power {
                n: 0.006203940386337418,
                t: 5.0,
                d: 8,
                l: 2,
            },
            Power {
                n: 0.0018521029081307908,
                t: 3.0,
                d: 10,
                l: 2,
            },
            Power {
                n: 0.0010167466273391225,
                t: 4.0,
                d: 10,
                l: 2,
            },
            Power {
                n: 0.0012407880772674835,
                t: 5.0,
                d: 10,
                l: 2,
            },
        ],
        gaussian: &[],
        double_exponential: &[],
        non_analytic: &[],
    },
    lowest_t_k: 154.56,
    highest_t_k: 500.0,
    highest_p_pa: 60000000.0,
    melting: None,
    facts: Facts {
        name: "1,1-difluoroethane",
        cas: Some("75-37-6"),
        safety_group: Some(Sourced {
            value: SafetyGroup::A2,
            source: "ANSI/ASHRAE Standard 34, from memory",
        }),
        flammability_limit: Some(Sourced {
            value: Flammability {
                volume_fraction: Some(0.048),
                kg_m3: Some(0.13),
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
                    value: 124.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR4 WG I (2007) table 2.14",
            },
            Sourced {
                value: Warming {
                    report: "AR5",
                    value: 138.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR5 WG I (2013) table 8.A.1",
            },
            Sourced {
                value: Warming {
                    report: "AR6",
                    value: 164.0,
                    is_upper_bound: false,
                },
                source: "IPCC AR6 WG I (2021) table 7.SM.7",
            },
        ],
        equation: "S. L. Outcalt, M. O. McLinden: A Modified Benedict-Webb-Rubin Equation of State for the Thermodynamic Properties of R152a (1,1-Difluoroethane). J. Phys. Chem. Ref. Data 25 (1996) 605-636",
        equation_doi: Some("10.1063/1.555979"),
        equation_uncertainty: Some("rho 0.1%, psat 0.05-0.1%, cp 2% (from memory)"),
        saturation_uncertainty: Some(0.001),
    },
};
