//! Transport properties of R-22.
//!
//! Generated from tables/transport/R-22.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R22: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "S. A. Klein, M. O. McLinden, A. Laesecke: An Improved Extended Corresponding States Method for Estimation of Viscosity of Pure Refrigerants and Mixtures. Int. J. Refrigeration 20 (1997) 208-217",
            doi: Some("10.1016/S0140-7007(96)00073-4"),
            uncertainty: "5 % (from memory)",
            lowest_t_k: 168.0,
            highest_t_k: 449.0,
        },
        highest_p_pa: 60000000.0,
        form: ViscosityForm::Conformal(Conformal {
            reference: Refrigerant::R134a,
            potential: LennardJones {
                sigma_m: 4.666e-10,
                energy_k: 284.72,
            },
            shape: &[1.106, -0.0491],
            reducing_rho_mol_m3: 6058.22,
        }),
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "M. O. McLinden, S. A. Klein, R. A. Perkins: An Extended Corresponding States Model for the Thermal Conductivity of Refrigerants and Refrigerant Mixtures. Int. J. Refrigeration 23 (2000) 43-63",
            doi: Some("10.1016/S0140-7007(99)00024-9"),
            uncertainty: "5 % (from memory)",
            lowest_t_k: 168.0,
            highest_t_k: 449.0,
        },
        highest_p_pa: 60000000.0,
        form: ConductivityForm::Conformal {
            conformal: Conformal {
                reference: Refrigerant::R134a,
                potential: LennardJones {
                    sigma_m: 4.666e-10,
                    energy_k: 284.72,
                },
                shape: &[1.075, -0.038574],
                reducing_rho_mol_m3: 6058.22,
            },
            internal: &[0.77817, 0.0012536],
        },
        critical: CriticalEnhancement {
            amplitude: 1.03,
            nu: 0.63,
            gamma: 1.239,
            susceptibility: 0.0496,
            length_m: 1.9400000000000003e-10,
            cut_off_1_m: 2000000000.0,
            reference_t_k: 553.9425,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 115.73,
            highest_t_k: 369.295,
        },
        terms: &[(3.0587, 1.41809), (-2.99856, 1.42291)],
    }),
};
