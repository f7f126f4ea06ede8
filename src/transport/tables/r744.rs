//! Transport properties of R-744.
//!
//! Generated from tables/transport/R-744.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R744: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "A. Laesecke, C. D. Muzny: Reference Correlation for the Viscosity of Carbon Dioxide. J. Phys. Chem. Ref. Data 46 (2017) 013107",
            doi: Some("10.1063/1.4977429"),
            uncertainty: "0.2 % dilute gas, 1 to 2 % up to 30 MPa, more beyond (from memory)",
            lowest_t_k: 216.592,
            highest_t_k: 1100.0,
        },
        highest_p_pa: 800000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::CarbonDioxide {
                factor: 0.0010054999999999999,
                a: [
                    1749.35489318835,
                    -369.069300007128,
                    5423856.34887691,
                    -2.21283852168356,
                    -269503.247933569,
                    73145.021531826,
                    5.34368649509278,
                ],
            },
            initial: Some(LennardJones {
                sigma_m: 3.7842100000000003e-10,
                energy_k: 200.76,
            }),
            residual: ResidualViscosity::CarbonDioxide {
                triple_t_k: 216.592,
                triple_rho_mol_m3: 26778.808356320635,
                factor: 9.436049123636011e-5,
                gamma: 8.06282737481277,
                c: [0.360603235428487, 0.121550806591497],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "M. L. Huber, E. A. Sykioti, M. J. Assael, R. A. Perkins: Reference Correlation of the Thermal Conductivity of Carbon Dioxide from the Triple Point to 1100 K and up to 200 MPa. J. Phys. Chem. Ref. Data 45 (2016) 013102",
            doi: Some("10.1063/1.4940892"),
            uncertainty: "1 % gas and liquid below 30 MPa, 3 to 5 % elsewhere (from memory)",
            lowest_t_k: 216.592,
            highest_t_k: 1100.0,
        },
        highest_p_pa: 200000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Inverse {
                reducing_t_k: 304.1282,
                l: &[15.1874307, 28.067404, 22.856419, -7.4162421],
            },
            reducing_t_k: 304.1282,
            reducing_rho_mol_m3: 10624.906270876032,
            terms: &[
                Term {
                    n: 0.0100128,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0560488,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.081162,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0624337,
                    d: 4.0,
                    t: 0.0,
                },
                Term {
                    n: -0.0206336,
                    d: 5.0,
                    t: 0.0,
                },
                Term {
                    n: 0.00253248,
                    d: 6.0,
                    t: 0.0,
                },
                Term {
                    n: 0.00430829,
                    d: 1.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0358563,
                    d: 2.0,
                    t: 1.0,
                },
                Term {
                    n: 0.067148,
                    d: 3.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0522855,
                    d: 4.0,
                    t: 1.0,
                },
                Term {
                    n: 0.0174571,
                    d: 5.0,
                    t: 1.0,
                },
                Term {
                    n: -0.00196414,
                    d: 6.0,
                    t: 1.0,
                },
            ],
        },
        critical: CriticalEnhancement {
            amplitude: 1.02,
            nu: 0.63,
            gamma: 1.239,
            susceptibility: 0.052,
            length_m: 1.5e-10,
            cut_off_1_m: 2500000000.0,
            reference_t_k: 456.19,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 216.592,
            highest_t_k: 304.128,
        },
        terms: &[(0.07863, 1.254)],
    }),
};
