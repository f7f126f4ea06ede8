//! Transport properties of R-134a.
//!
//! Generated from tables/transport/R-134a.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R134A: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "M. L. Huber, A. Laesecke, R. A. Perkins: Model for the Viscosity and Thermal Conductivity of Refrigerants, Including a New Correlation for the Viscosity of R134a. Ind. Eng. Chem. Res. 42 (2003) 3163-3178",
            doi: Some("10.1021/ie0300880"),
            uncertainty: "1.5 % saturated liquid, 3 % liquid, 0.5 % dilute gas, 3 to 5 % vapour (from memory)",
            lowest_t_k: 169.85,
            highest_t_k: 455.0,
        },
        highest_p_pa: 70000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::Collision {
                factor: 9.810396923937954e-7,
                energy_k: 299.363,
                terms: &[(0.355404, 0), (-0.464337, 1), (0.0257353, 2)],
            },
            initial: Some(LennardJones {
                sigma_m: 4.689320000000001e-10,
                energy_k: 299.363,
            }),
            residual: ResidualViscosity::FreeVolume {
                reducing_t_k: 374.21,
                reducing_rho_mol_m3: 5017.053473420104,
                terms: &[
                    Term {
                        n: -2.06900719e-5,
                        d: 1.0,
                        t: 0.0,
                    },
                    Term {
                        n: 3.56029549e-7,
                        d: 2.0,
                        t: -6.0,
                    },
                    Term {
                        n: 2.11101816e-6,
                        d: 2.0,
                        t: -2.0,
                    },
                    Term {
                        n: 1.39601415e-5,
                        d: 2.0,
                        t: -0.5,
                    },
                    Term {
                        n: -4.5643502000000005e-6,
                        d: 2.0,
                        t: 2.0,
                    },
                    Term {
                        n: -3.51593275e-6,
                        d: 3.0,
                        t: 0.0,
                    },
                ],
                factor: 0.00021476332,
                power: 0,
                packed: &[(3.163695636, 0.0)],
                packed_by: &[(1.0, 0.0), (-0.0890173375, 1.0), (0.100035295, 2.0)],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "R. A. Perkins, A. Laesecke, J. Howley, M. L. V. Ramires, A. N. Gurova, L. Cusco: Experimental Thermal Conductivity Values for the IUPAC Round-Robin Sample of 1,1,1,2-Tetrafluoroethane (R134a). NISTIR 6605 (2000)",
            doi: None,
            uncertainty: "5 % (from memory)",
            lowest_t_k: 169.85,
            highest_t_k: 455.0,
        },
        highest_p_pa: 70000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Polynomial {
                reducing_t_k: 1.0,
                a: &[-0.0105248, 8.00982e-5],
            },
            reducing_t_k: 1.0,
            reducing_rho_mol_m3: 5049.8859999999995,
            terms: &[
                Term {
                    n: 0.0037740609300000003,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.010534223865,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.002952794565,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0012867261255,
                    d: 4.0,
                    t: 0.0,
                },
            ],
        },
        critical: CriticalEnhancement {
            amplitude: 1.03,
            nu: 0.63,
            gamma: 1.239,
            susceptibility: 0.0496,
            length_m: 1.9400000000000003e-10,
            cut_off_1_m: 1892020140.1759882,
            reference_t_k: 561.411,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 169.85,
            highest_t_k: 374.21,
        },
        terms: &[(0.05801, 1.241)],
    }),
};
