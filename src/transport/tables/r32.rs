//! Transport properties of R-32.
//!
//! Generated from tables/transport/R-32.toml by tables/compile; edit the table, not this file.

#[allow(unused_imports)] // not every form is in every file
use crate::names::Refrigerant;
#[allow(unused_imports)]
use crate::transport::*;

pub(super) static R32: Transport = Transport {
    viscosity: Some(Viscosity {
        published: Published {
            citation: "M. L. Huber, A. Laesecke, R. A. Perkins: Model for the Viscosity and Thermal Conductivity of Refrigerants, Including a New Correlation for the Viscosity of R134a. Ind. Eng. Chem. Res. 42 (2003) 3163-3178",
            doi: Some("10.1021/ie0300880"),
            uncertainty: "5 % (from memory)",
            lowest_t_k: 136.34,
            highest_t_k: 435.0,
        },
        highest_p_pa: 70000000.0,
        form: ViscosityForm::Conformal(Conformal {
            reference: Refrigerant::R290,
            potential: LennardJones {
                sigma_m: 4.098e-10,
                energy_k: 289.65,
            },
            shape: &[0.7954, 0.0542658],
            reducing_rho_mol_m3: 8150.0,
        }),
    }),
    conductivity: Some(Conductivity {
        published: Published {
            citation: "M. L. Huber, A. Laesecke, R. A. Perkins: Model for the Viscosity and Thermal Conductivity of Refrigerants, Including a New Correlation for the Viscosity of R134a. Ind. Eng. Chem. Res. 42 (2003) 3163-3178",
            doi: Some("10.1021/ie0300880"),
            uncertainty: "5 % (from memory)",
            lowest_t_k: 136.34,
            highest_t_k: 435.0,
        },
        highest_p_pa: 70000000.0,
        form: ConductivityForm::Conformal {
            conformal: Conformal {
                reference: Refrigerant::R290,
                potential: LennardJones {
                    sigma_m: 4.098e-10,
                    energy_k: 289.65,
                },
                shape: &[1.2942, -0.0924549],
                reducing_rho_mol_m3: 8150.0,
            },
            internal: &[0.43665400000000004, 0.00178134],
        },
        critical: CriticalEnhancement {
            amplitude: 1.03,
            nu: 0.63,
            gamma: 1.239,
            susceptibility: 0.0496,
            length_m: 1.9400000000000003e-10,
            cut_off_1_m: 2000000000.0,
            reference_t_k: 526.8825,
        },
    }),
    surface_tension: Some(SurfaceTension {
        published: Published {
            citation: "A. Mulero, I. Cachadiña, M. I. Parra: Recommended Correlations for the Surface Tension of Common Fluids. J. Phys. Chem. Ref. Data 41 (2012) 043105",
            doi: Some("10.1063/1.4768782"),
            uncertainty: "a few percent of the data it was fitted to (from memory)",
            lowest_t_k: 136.34,
            highest_t_k: 351.255,
        },
        terms: &[(0.07147, 1.246)],
    }),
};
