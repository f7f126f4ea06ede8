//! Transport properties of R-12.
//!
//! Generated from tables/transport/R-12.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R12: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "S. A. Klein, M. O. McLinden, A. Laesecke: An Improved Extended Corresponding States Method for Estimation of Viscosity of Pure Refrigerants and Mixtures. Int. J. Refrigeration 20 (1997) 208-217",
            doi: Some("10.1016/S0140-7007(96)00073-4"),
            uncertainty: "5 % (from memory)",
            lowest_t_k: 175.0,
            highest_t_k: 468.0,
        },
        highest_p_pa: 70000000.0,
        form: ViscosityForm::Conformal(Conformal {
            reference: Refrigerant::R134a,
            potential: LennardJones {
                sigma_m: 5.185999999999999e-10,
                energy_k: 297.24,
            },
            shape: &[1.087, -0.0379],
            reducing_rho_mol_m3: 4672.781255944357,
        }),
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "M. O. McLinden, S. A. Klein, R. A. Perkins: An Extended Corresponding States Model for the Thermal Conductivity of Refrigerants and Refrigerant Mixtures. Int. J. Refrigeration 23 (2000) 43-63",
            doi: Some("10.1016/S0140-7007(99)00024-9"),
            uncertainty: "5 % (from memory)",
            lowest_t_k: 175.0,
            highest_t_k: 468.0,
        },
        highest_p_pa: 70000000.0,
        form: ConductivityForm::Conformal {
            conformal: Conformal {
                reference: Refrigerant::R134a,
                potential: LennardJones {
                    sigma_m: 5.185999999999999e-10,
                    energy_k: 297.24,
                },
                shape: &[0.991, 0.0029509],
                reducing_rho_mol_m3: 4672.781255944357,
            },
            internal: &[1.3439999999999999],
        },
        critical: CriticalEnhancement {
            amplitude: 1.03,
            nu: 0.63,
            gamma: 1.239,
            susceptibility: 0.0496,
            length_m: 1.9400000000000003e-10,
            cut_off_1_m: 2000000000.0,
            reference_t_k: 577.68,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 116.099,
            highest_t_k: 385.12,
        },
        terms: &[(-0.000124, 0.4318), (0.05662, 1.263)],
    }),
};
