//! Transport properties of R-1234yf.
//!
//! Generated from tables/transport/R-1234yf.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R1234YF: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "M. L. Huber, M. J. Assael: Correlations for the Viscosity of 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf) and trans-1,3,3,3-Tetrafluoropropene (R1234ze(E)). Int. J. Refrigeration 71 (2016) 39-45",
            doi: Some("10.1016/j.ijrefrig.2016.08.007"),
            uncertainty: "2 % liquid from 243 to 363 K up to 30 MPa, 3 % gas at atmospheric pressure (read in the abstract)",
            lowest_t_k: 220.0,
            highest_t_k: 410.0,
        },
        highest_p_pa: 30000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::Ratio {
                numerator: &[-0.83695, 0.00633628, -2.3546999999999997e-6, 3.95563e-8],
                denominator: &[39509.1, 121.018, 1.0],
            },
            initial: Some(LennardJones {
                sigma_m: 5.31e-10,
                energy_k: 275.0,
            }),
            residual: ResidualViscosity::Scaled {
                reducing_t_k: 367.85,
                reducing_rho_mol_m3: 4170.0,
                terms: &[
                    Term {
                        n: -1.9425909999999998e-7,
                        d: 0.0,
                        t: 0.0,
                    },
                    Term {
                        n: -2.079577245e-6,
                        d: 1.0,
                        t: 0.0,
                    },
                ],
                numerator: &[Term {
                    n: -4.3470272880000004e-5,
                    d: 1.0,
                    t: 0.0,
                }],
                denominator: &[
                    Term {
                        n: -3.53682791,
                        d: 0.0,
                        t: 1.0,
                    },
                    Term { n: 1.0, d: 1.0, t: 1.0 },
                ],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "R. A. Perkins, M. L. Huber: Measurement and Correlation of the Thermal Conductivity of 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf) and trans-1,3,3,3-Tetrafluoropropene (R1234ze(E)). J. Chem. Eng. Data 56 (2011) 4868-4874",
            doi: Some("10.1021/je200811n"),
            uncertainty: "1 % liquid, 3 % vapour (from memory); measured from 242 to 344 K up to 23 MPa",
            lowest_t_k: 220.0,
            highest_t_k: 410.0,
        },
        highest_p_pa: 30000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Polynomial {
                reducing_t_k: 367.85,
                a: &[-0.0102778, 0.0291098, 0.000860643],
            },
            reducing_t_k: 367.85,
            reducing_rho_mol_m3: 4169.969554969414,
            terms: &[
                Term {
                    n: -0.0368219,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0883226,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.0705909,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0259026,
                    d: 4.0,
                    t: 0.0,
                },
                Term {
                    n: -0.0032295,
                    d: 5.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0397166,
                    d: 1.0,
                    t: 1.0,
                },
                Term {
                    n: -0.077239,
                    d: 2.0,
                    t: 1.0,
                },
                Term {
                    n: 0.0664707,
                    d: 3.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0249071,
                    d: 4.0,
                    t: 1.0,
                },
                Term {
                    n: 0.00336228,
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
            cut_off_1_m: 1713796058.2690659,
            reference_t_k: 551.775,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 220.0,
            highest_t_k: 367.85,
        },
        terms: &[(0.06274, 1.394)],
    }),
};
