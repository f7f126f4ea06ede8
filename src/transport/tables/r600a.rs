//! Transport properties of R-600a.
//!
//! Generated from tables/transport/R-600a.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R600A: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "E. Vogel, C. Küchenmeister, E. Bich: Viscosity Correlation for Isobutane over Wide Ranges of the Fluid Region. Int. J. Thermophysics 21 (2000) 343-356",
            doi: Some("10.1023/A:1006623310780"),
            uncertainty: "0.4 % dilute gas, 3 % liquid (from memory)",
            lowest_t_k: 120.0,
            highest_t_k: 575.0,
        },
        highest_p_pa: 35000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::Collision {
                factor: 7.54802509672481e-7,
                energy_k: 307.55,
                terms: &[(0.53583008, 0), (-0.4562963, 1), (0.049911282, 2)],
            },
            initial: Some(LennardJones {
                sigma_m: 4.6445e-10,
                energy_k: 307.55,
            }),
            residual: ResidualViscosity::FreeVolume {
                reducing_t_k: 407.817,
                reducing_rho_mol_m3: 3860.0,
                terms: &[
                    Term {
                        n: 0.000103511763411,
                        d: 2.0,
                        t: 0.0,
                    },
                    Term {
                        n: -0.00031267089623399996,
                        d: 2.0,
                        t: -1.0,
                    },
                    Term {
                        n: 0.000145253750239,
                        d: 2.0,
                        t: -2.0,
                    },
                    Term {
                        n: -0.00021064989419299998,
                        d: 3.0,
                        t: 0.0,
                    },
                    Term {
                        n: 0.000386269696509,
                        d: 3.0,
                        t: -1.0,
                    },
                    Term {
                        n: -0.000214963015527,
                        d: 3.0,
                        t: -2.0,
                    },
                    Term {
                        n: 0.00011258036092,
                        d: 4.0,
                        t: 0.0,
                    },
                    Term {
                        n: -0.00022324203315400001,
                        d: 4.0,
                        t: -1.0,
                    },
                    Term {
                        n: 0.000119114788598,
                        d: 4.0,
                        t: -2.0,
                    },
                    Term {
                        n: -1.8190974589999998e-5,
                        d: 5.0,
                        t: 0.0,
                    },
                    Term {
                        n: 3.60438957232e-5,
                        d: 5.0,
                        t: -1.0,
                    },
                    Term {
                        n: -2.1396018404999997e-5,
                        d: 5.0,
                        t: -2.0,
                    },
                ],
                factor: 0.0019403760698999998,
                power: 1,
                packed: &[(2.33859774637, 0.0), (2.352551508384381, 0.5)],
                packed_by: &[(1.0, 0.0)],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "R. A. Perkins: Measurement and Correlation of the Thermal Conductivity of Isobutane from 114 K to 600 K at Pressures to 70 MPa. J. Chem. Eng. Data 47 (2002) 1272-1279",
            doi: Some("10.1021/je010121u"),
            uncertainty: "3 % (from memory)",
            lowest_t_k: 114.0,
            highest_t_k: 575.0,
        },
        highest_p_pa: 35000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Polynomial {
                reducing_t_k: 407.85,
                a: &[-0.00237901, 0.0106601, 0.0215811],
            },
            reducing_t_k: 407.85,
            reducing_rho_mol_m3: 3860.831145414317,
            terms: &[
                Term {
                    n: -0.0411789,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.146805,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.11919,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0410226,
                    d: 4.0,
                    t: 0.0,
                },
                Term {
                    n: -0.00488704,
                    d: 5.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0476346,
                    d: 1.0,
                    t: 1.0,
                },
                Term {
                    n: -0.128445,
                    d: 2.0,
                    t: 1.0,
                },
                Term {
                    n: 0.107565,
                    d: 3.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0385968,
                    d: 4.0,
                    t: 1.0,
                },
                Term {
                    n: 0.00520901,
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
            cut_off_1_m: 1520540217.5284834,
            reference_t_k: 611.73,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 113.73,
            highest_t_k: 407.81,
        },
        terms: &[(-0.01639, 2.102), (0.06121, 1.304)],
    }),
};
