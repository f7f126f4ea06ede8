//! Transport properties of R-1234ze(E).
//!
//! Generated from tables/transport/R-1234ze(E).toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R1234ZEE: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "M. L. Huber, M. J. Assael: Correlations for the Viscosity of 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf) and trans-1,3,3,3-Tetrafluoropropene (R1234ze(E)). Int. J. Refrigeration 71 (2016) 39-45",
            doi: Some("10.1016/j.ijrefrig.2016.08.007"),
            uncertainty: "2 % liquid from 243 to 363 K up to 30 MPa, 3 % gas at atmospheric pressure (read in the abstract)",
            lowest_t_k: 169.0,
            highest_t_k: 420.0,
        },
        highest_p_pa: 100000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::Ratio {
                numerator: &[-0.963382, 0.00961409, -1.3233e-5, 3.605619999999999e-8],
                denominator: &[122059.0, -224.741, 1.0],
            },
            initial: Some(LennardJones {
                sigma_m: 5.017e-10,
                energy_k: 340.0,
            }),
            residual: ResidualViscosity::Scaled {
                reducing_t_k: 382.513,
                reducing_rho_mol_m3: 4290.0,
                terms: &[
                    Term {
                        n: 8.616919129999998e-6,
                        d: 0.0,
                        t: 0.0,
                    },
                    Term {
                        n: 2.0830247379999998e-5,
                        d: 2.0,
                        t: 0.0,
                    },
                ],
                numerator: &[
                    Term {
                        n: 5.424369e-7,
                        d: 6.0,
                        t: 0.0,
                    },
                    Term {
                        n: -1.049684841e-5,
                        d: 1.0,
                        t: 2.0,
                    },
                    Term {
                        n: -1.38137689e-6,
                        d: 5.0,
                        t: 1.0,
                    },
                ],
                denominator: &[Term { n: 1.0, d: 0.0, t: 1.0 }],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "R. A. Perkins, M. L. Huber: Measurement and Correlation of the Thermal Conductivity of 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf) and trans-1,3,3,3-Tetrafluoropropene (R1234ze(E)). J. Chem. Eng. Data 56 (2011) 4868-4874",
            doi: Some("10.1021/je200811n"),
            uncertainty: "1 % liquid, 3 % vapour (from memory); measured from 203 to 344 K up to 23 MPa",
            lowest_t_k: 169.0,
            highest_t_k: 420.0,
        },
        highest_p_pa: 100000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Polynomial {
                reducing_t_k: 382.52,
                a: &[-0.0103589, 0.0308929, 0.000230348],
            },
            reducing_t_k: 382.52,
            reducing_rho_mol_m3: 4290.013468769291,
            terms: &[
                Term {
                    n: -0.0428296,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0927099,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.0702107,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0249708,
                    d: 4.0,
                    t: 0.0,
                },
                Term {
                    n: -0.00301838,
                    d: 5.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0434288,
                    d: 1.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0605844,
                    d: 2.0,
                    t: 1.0,
                },
                Term {
                    n: 0.0440187,
                    d: 3.0,
                    t: 1.0,
                },
                Term {
                    n: -0.0155082,
                    d: 4.0,
                    t: 1.0,
                },
                Term {
                    n: 0.0021019,
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
            reference_t_k: 573.78,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña: Recommended Correlations for the Surface Tension of Several Fluids Included in the REFPROP Program. J. Phys. Chem. Ref. Data 43 (2014) 023104",
            doi: Some("10.1063/1.4878755"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 169.0,
            highest_t_k: 382.51,
        },
        terms: &[(0.06158, 1.281), (0.8247, 6.505)],
    }),
};
