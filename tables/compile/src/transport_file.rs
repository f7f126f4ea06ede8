//! One file of `tables/transport`: what it may hold, digits as printed.

use coldloop::transport::Published;
use serde::Deserialize;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct File {
    pub(crate) designation: String,
    pub(crate) viscosity: Option<ViscositySource>,
    pub(crate) conductivity: Option<ConductivitySource>,
    pub(crate) surface_tension: Option<TensionSource>,
}

/// What every correlation says of itself; `read` says where its coefficients were read.
macro_rules! source {
    ($(#[$meta:meta])* $name:ident { $($field:ident: $type:ty,)* }) => {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        pub(crate) struct $name {
            citation: String,
            doi: Option<String>,
            #[serde(rename = "read")]
            _read: String,
            uncertainty: String,
            t_min_k: String,
            t_max_k: String,
            $(pub(crate) $field: $type,)*
        }

        impl $name {
            pub(crate) fn published(&self) -> Result<Published, String> {
                Ok(Published {
                    citation: leaked(&self.citation),
                    doi: self.doi.as_deref().map(leaked),
                    uncertainty: leaked(&self.uncertainty),
                    lowest_t_k: digits(&self.t_min_k)?,
                    highest_t_k: digits(&self.t_max_k)?,
                })
            }
        }
    };
}

source!(ViscositySource {
    p_max_mpa: String,
    dilute: Option<DiluteSource>,
    initial: Option<PotentialSource>,
    residual: Option<ResidualSource>,
    conformal: Option<ConformalSource>,
});
source!(ConductivitySource {
    p_max_mpa: String,
    dilute: Option<DiluteConductivitySource>,
    residual: Option<TermsSource>,
    conformal: Option<ConformalSource>,
    critical: CriticalSource,
});
source!(TensionSource {
    terms: Vec<[String; 2]>,
});

#[derive(Deserialize)]
#[serde(tag = "form", rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) enum DiluteSource {
    Collision {
        factor_upa_s: String,
        molar_mass_g_mol: Option<String>,
        sigma_nm: String,
        energy_k: String,
        terms: Vec<[String; 2]>,
    },
    Neufeld {
        factor_upa_s: String,
        sigma_nm: String,
        energy_k: String,
    },
    Ratio {
        numerator_upa_s: Vec<String>,
        denominator: Vec<String>,
    },
    CarbonDioxide {
        factor_upa_s: String,
        a: Vec<String>,
    },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PotentialSource {
    pub(crate) sigma_nm: String,
    pub(crate) energy_k: String,
}

#[derive(Deserialize)]
#[serde(tag = "form", rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) enum ResidualSource {
    FreeVolume {
        reducing_t_k: String,
        reducing_rho_kg_m3: Option<String>,
        reducing_rho_mol_dm3: Option<String>,
        unit_upa_s: String,
        factor: String,
        power: i32,
        packed: Vec<[String; 2]>,
        packed_by: Vec<[String; 2]>,
        terms: Vec<[String; 3]>,
    },
    Scaled {
        reducing_t_k: String,
        reducing_rho_mol_dm3: String,
        terms: Vec<[String; 3]>,
        numerator: Vec<[String; 3]>,
        denominator: Vec<[String; 3]>,
    },
    CarbonDioxide {
        triple_t_k: String,
        triple_rho_kg_m3: String,
        gamma: String,
        c: [String; 2],
    },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ConformalSource {
    pub(crate) reference: String,
    pub(crate) sigma_nm: String,
    pub(crate) energy_k: String,
    pub(crate) reducing_rho_mol_dm3: String,
    pub(crate) shape: Vec<String>,
    pub(crate) internal: Option<Vec<String>>,
}

#[derive(Deserialize)]
#[serde(tag = "form", rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) enum DiluteConductivitySource {
    Polynomial { reducing_t_k: String, a: Vec<String> },
    Inverse { reducing_t_k: String, l: Vec<String> },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TermsSource {
    pub(crate) reducing_t_k: String,
    pub(crate) reducing_rho_kg_m3: Option<String>,
    pub(crate) reducing_rho_mol_dm3: Option<String>,
    pub(crate) unit_w_m_k: Option<String>,
    pub(crate) terms: Vec<[String; 3]>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct CriticalSource {
    pub(crate) amplitude: String,
    pub(crate) nu: String,
    pub(crate) gamma: String,
    pub(crate) susceptibility: String,
    pub(crate) length_nm: String,
    pub(crate) cut_off_nm: String,
    pub(crate) reference_t_k: String,
}

pub(crate) fn digits(text: &str) -> Result<f64, String> {
    text.parse().map_err(|e| format!("{text:?}: {e}"))
}

fn leaked(text: &str) -> &'static str {
    text.to_string().leak()
}
