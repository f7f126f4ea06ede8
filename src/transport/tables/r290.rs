//! Transport properties of R-290.
//!
//! Generated from tables/transport/R-290.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R290: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "E. Vogel, C. Küchenmeister, E. Bich, A. Laesecke: Reference Correlation of the Viscosity of Propane. J. Phys. Chem. Ref. Data 27 (1998) 947-970",
            doi: Some("10.1063/1.556025"),
            uncertainty: "0.4 % dilute gas, 2.5 % up to 30 MPa and 475 K, 4 to 6 % elsewhere (from memory)",
            lowest_t_k: 90.0,
            highest_t_k: 600.0,
        },
        highest_p_pa: 100000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::Collision {
                factor: 5.730422251146793e-7,
                energy_k: 263.88,
                terms: &[(0.25104574, 0), (-0.47271238, 1), (0.060836515, 3)],
            },
            initial: Some(LennardJones {
                sigma_m: 4.9748e-10,
                energy_k: 263.88,
            }),
            residual: ResidualViscosity::FreeVolume {
                reducing_t_k: 369.825,
                reducing_rho_mol_m3: 5000.0,
                terms: &[
                    Term {
                        n: 3.5987303019499994e-5,
                        d: 2.0,
                        t: 0.0,
                    },
                    Term {
                        n: -0.000180512188564,
                        d: 2.0,
                        t: -1.0,
                    },
                    Term {
                        n: 8.77124888223e-5,
                        d: 2.0,
                        t: -2.0,
                    },
                    Term {
                        n: -0.000105773052525,
                        d: 3.0,
                        t: 0.0,
                    },
                    Term {
                        n: 0.00020531974087699997,
                        d: 3.0,
                        t: -1.0,
                    },
                    Term {
                        n: -0.00012921093261,
                        d: 3.0,
                        t: -2.0,
                    },
                    Term {
                        n: 5.89491587759e-5,
                        d: 4.0,
                        t: 0.0,
                    },
                    Term {
                        n: -0.0001297400331,
                        d: 4.0,
                        t: -1.0,
                    },
                    Term {
                        n: 7.66280419971e-5,
                        d: 4.0,
                        t: -2.0,
                    },
                    Term {
                        n: -9.59407868475e-6,
                        d: 5.0,
                        t: 0.0,
                    },
                    Term {
                        n: 2.10726986598e-5,
                        d: 5.0,
                        t: -1.0,
                    },
                    Term {
                        n: -1.4397196818699999e-5,
                        d: 5.0,
                        t: -2.0,
                    },
                ],
                factor: 0.0016168840537399997,
                power: 1,
                packed: &[(2.50053938863, 0.0), (2.1517543007382995, 0.5)],
                packed_by: &[(1.0, 0.0)],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "K. N. Marsh, R. A. Perkins, M. L. V. Ramires: Measurement and Correlation of the Thermal Conductivity of Propane from 86 to 600 K at Pressures to 70 MPa. J. Chem. Eng. Data 47 (2002) 932-940",
            doi: Some("10.1021/je010001m"),
            uncertainty: "2 to 3 %, more near the critical point (from memory)",
            lowest_t_k: 86.0,
            highest_t_k: 600.0,
        },
        highest_p_pa: 70000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Polynomial {
                reducing_t_k: 369.85,
                a: &[-0.00124778, 0.00816371, 0.0199374],
            },
            reducing_t_k: 369.82,
            reducing_rho_mol_m3: 4995.961050099761,
            terms: &[
                Term {
                    n: -0.03695,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.148658,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.119986,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0412431,
                    d: 4.0,
                    t: 0.0,
                },
                Term {
                    n: -0.00486905,
                    d: 5.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0482798,
                    d: 1.0,
                    t: 1.0,
                },
                Term {
                    n: -0.135636,
                    d: 2.0,
                    t: 1.0,
                },
                Term {
                    n: 0.117588,
                    d: 3.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0436911,
                    d: 4.0,
                    t: 1.0,
                },
                Term {
                    n: 0.00616079,
                    d: 5.0,
                    t: 1.0,
                },
            ],
        },
        critical: CriticalEnhancement {
            amplitude: 1.03,
            nu: 0.63,
            gamma: 1.239,
            susceptibility: 0.0496,
            length_m: 1.9400000000000003e-10,
            cut_off_1_m: 1395410494.8823318,
            reference_t_k: 554.73,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 85.525,
            highest_t_k: 369.89,
        },
        terms: &[(0.05334, 1.235), (-0.01748, 4.404)],
    }),
};
