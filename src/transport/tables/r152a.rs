//! Transport properties of R-152a.
//!
//! Generated from tables/transport/R-152a.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R152A: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "R. Krauss, V. C. Weiss, T. A. Edison, J. V. Sengers, K. Stephan: Transport Properties of 1,1-Difluoroethane (R152a). Int. J. Thermophysics 17 (1996) 731-757",
            doi: Some("10.1007/BF01439187"),
            uncertainty: "3 % (from memory)",
            lowest_t_k: 240.0,
            highest_t_k: 440.0,
        },
        highest_p_pa: 20000000.0,
        form: ViscosityForm::Sum {
            dilute: DiluteViscosity::Collision {
                factor: 1.0202299031588423e-6,
                energy_k: 354.84,
                terms: &[
                    (0.4425728, 0),
                    (-0.5138403, 1),
                    (0.1547566, 2),
                    (-0.02821844, 3),
                    (0.001578286, 4),
                ],
            },
            initial: None,
            residual: ResidualViscosity::FreeVolume {
                reducing_t_k: 386.411,
                reducing_rho_mol_m3: 5571.452362568319,
                terms: &[
                    Term {
                        n: -3.772282824e-6,
                        d: 1.0,
                        t: 0.0,
                    },
                    Term {
                        n: 2.6476274880000003e-5,
                        d: 2.0,
                        t: 0.0,
                    },
                    Term {
                        n: -1.578969e-5,
                        d: 3.0,
                        t: 0.0,
                    },
                    Term {
                        n: 5.52346488e-6,
                        d: 4.0,
                        t: 0.0,
                    },
                ],
                factor: 2.087674344e-5,
                power: 0,
                packed: &[(2.91733, 0.0)],
                packed_by: &[(1.0, 0.0)],
            },
        },
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "R. Krauss, V. C. Weiss, T. A. Edison, J. V. Sengers, K. Stephan: Transport Properties of 1,1-Difluoroethane (R152a). Int. J. Thermophysics 17 (1996) 731-757",
            doi: Some("10.1007/BF01439187"),
            uncertainty: "3 %, more near the critical point (from memory)",
            lowest_t_k: 240.0,
            highest_t_k: 440.0,
        },
        highest_p_pa: 20000000.0,
        form: ConductivityForm::Sum {
            dilute: DiluteConductivity::Polynomial {
                reducing_t_k: 1.0,
                a: &[-0.014942, 9.73283e-5],
            },
            reducing_t_k: 1.0,
            reducing_rho_mol_m3: 5571.452362568319,
            terms: &[
                Term {
                    n: 0.0106039395,
                    d: 1.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0136956435,
                    d: 2.0,
                    t: 0.0,
                },
                Term {
                    n: -0.0062916315,
                    d: 3.0,
                    t: 0.0,
                },
                Term {
                    n: 0.0019794274499999997,
                    d: 4.0,
                    t: 0.0,
                },
            ],
        },
        critical: CriticalEnhancement {
            amplitude: 1.03,
            nu: 0.63,
            gamma: 1.239,
            susceptibility: 0.0487,
            length_m: 1.894e-10,
            cut_off_1_m: 2288329519.450801,
            reference_t_k: 579.6165,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 154.56,
            highest_t_k: 386.411,
        },
        terms: &[(0.05808, 1.2115)],
    }),
};
