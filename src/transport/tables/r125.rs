//! Transport properties of R-125.
//!
//! Generated from tables/transport/R-125.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R125: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "M. L. Huber, A. Laesecke: Correlation for the Viscosity of Pentafluoroethane (R125) from the Triple Point to 500 K at Pressures up to 60 MPa. Ind. Eng. Chem. Res. 45 (2006) 4447-4453",
            doi: Some("10.1021/ie051367l"),
            uncertainty: "3 % liquid, 0.8 % dilute gas (from memory)",
            lowest_t_k: 172.52,
            highest_t_k: 500.0,
        },
        highest_p_pa: 60000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::Neufeld {
                factor: 1.067183033737631e-6,
                energy_k: 237.077,
            },
            initial: Some(LennardJones {
                sigma_m: 5.235e-10,
                energy_k: 237.077,
            }),
            residual: ResidualViscosity::FreeVolume {
                reducing_t_k: 339.173,
                reducing_rho_mol_m3: 4779.0,
                terms: &[
                    Term {
                        n: 5.677448e-6,
                        d: 2.0,
                        t: -2.0,
                    },
                    Term {
                        n: -5.096662e-6,
                        d: 3.0,
                        t: -1.0,
                    },
                ],
                factor: 0.0001412564,
                power: 1,
                packed: &[(3.033797, 0.0), (0.2992464, 0.5)],
                packed_by: &[(1.0, 0.0)],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "R. A. Perkins, M. L. Huber: Measurement and Correlation of the Thermal Conductivity of Pentafluoroethane (R125) from 190 K to 512 K at Pressures to 70 MPa. J. Chem. Eng. Data 51 (2006) 898-904",
            doi: Some("10.1021/je050372t"),
            uncertainty: "3 % (from memory)",
            lowest_t_k: 190.0,
            highest_t_k: 500.0,
        },
        highest_p_pa: 60000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Polynomial {
                reducing_t_k: 339.173,
                a: &[-0.0046082, 0.0168688, 0.00488345],
            },
            reducing_t_k: 339.173,
            reducing_rho_mol_m3: 4779.0,
            terms: &[
                Term {
                    n: -0.0072941,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0416339,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.0311487,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0112682,
                    d: 4.0,
                    t: 0.0,
                },
                Term {
                    n: -0.00138322,
                    d: 5.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0110497,
                    d: 1.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0289236,
                    d: 2.0,
                    t: 1.0,
                },
                Term {
                    n: 0.0278399,
                    d: 3.0,
                    t: 1.0,
                },
                Term {
                    n: -0.01211,
                    d: 4.0,
                    t: 1.0,
                },
                Term {
                    n: 0.00211196,
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
            cut_off_1_m: 1713900037.8086348,
            reference_t_k: 508.755,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 172.52,
            highest_t_k: 339.173,
        },
        terms: &[(0.05252, 1.237)],
    }),
};
