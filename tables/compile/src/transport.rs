//! `tables/transport/*.toml` into the constants of the transport room.

use crate::transport_file::{
    ConductivitySource, ConformalSource, DiluteConductivitySource, DiluteSource, File, PotentialSource, ResidualSource,
    TensionSource, ViscositySource, digits,
};
use coldloop::Refrigerant;
use coldloop::inner::fluid;
use coldloop::inner::transport::{
    Conductivity, ConductivityForm, Conformal, CriticalEnhancement, DiluteConductivity, DiluteViscosity, LennardJones,
    ResidualViscosity, SurfaceTension, Term, Transport, Viscosity, ViscosityForm,
};
use std::fmt::Write;
use std::fs;
use std::path::Path;
use tables_names::Output;

/// Writes the correlations of every refrigerant that has any, and the list that finds them.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let entries = fs::read_dir(root.join("tables/transport")).map_err(|e| e.to_string())?;
    let mut paths: Vec<_> = entries
        .filter_map(|entry| entry.ok().map(|entry| entry.path()))
        .collect();
    paths.retain(|path| path.extension().is_some_and(|end| end == "toml"));
    paths.sort();
    let (mut modules, mut arms) = (String::new(), String::new());
    for path in &paths {
        let name = |e: &dyn std::fmt::Display| format!("{}: {e}", path.display());
        let text = fs::read_to_string(path).map_err(|e| name(&e))?;
        let file: File = toml::from_str(&text).map_err(|e| name(&e))?;
        let refrigerant =
            Refrigerant::from_id(&file.designation).ok_or_else(|| name(&"no refrigerant of this name"))?;
        let module = format!("{refrigerant:?}").to_lowercase();
        let constant = module.to_uppercase();
        let source = rust(&file, refrigerant, &constant).map_err(|e| name(&e))?;
        out.rust(&format!("src/transport/tables/{module}.rs"), &source)?;
        writeln!(modules, "mod {module};").map_err(|e| e.to_string())?;
        writeln!(arms, "Refrigerant::{refrigerant:?} => Ok(&{module}::{constant}),").map_err(|e| e.to_string())?;
    }
    let index = format!(
        "//! The correlations of every refrigerant that has any.\n//!\n//! Generated from tables/transport by tables/compile; edit the tables, not this file.\n\n\
         {modules}\nuse crate::error::Error;\nuse crate::names::{{ErrorKind, Quantity, Refrigerant}};\nuse crate::transport::Transport;\n\n\
         /// What is published of the transport properties of a refrigerant.\n///\n/// Errors: `NotAvailable` where nothing is, and for a blend.\n\
         #[allow(clippy::wildcard_enum_match_arm)] // a refrigerant without a table has no correlation\n\
         pub const fn of(refrigerant: Refrigerant) -> Result<&'static Transport, Error> {{\nmatch refrigerant {{\n{arms}_ => Err(Error::of(ErrorKind::NotAvailable, Quantity::Name)),\n}}\n}}\n"
    );
    out.rust("src/transport/tables/mod.rs", &index)
}

fn rust(file: &File, refrigerant: Refrigerant, constant: &str) -> Result<String, String> {
    let molar_mass = fluid::fluid_of(refrigerant)
        .map_err(|e| e.to_string())?
        .equation
        .molar_mass;
    let transport = Transport {
        viscosity: file
            .viscosity
            .as_ref()
            .map(|source| source.compile(molar_mass))
            .transpose()?,
        conductivity: file
            .conductivity
            .as_ref()
            .map(|source| source.compile(molar_mass))
            .transpose()?,
        surface_tension: file.surface_tension.as_ref().map(TensionSource::compile).transpose()?,
    };
    let text = format!("{transport:?}").replace(": [", ": &[");
    // Two fields are arrays in place.
    let text = text.replace("a: &[1749", "a: [1749").replace(" c: &[", " c: [");
    let text = qualified(&text);
    Ok(format!(
        "//! Transport properties of {0}.\n//!\n//! Generated from tables/transport/{0}.toml by tables/compile; edit the table, not this file.\n\n\
         #[allow(unused_imports)] // not every form is in every file\nuse crate::names::Refrigerant;\n\
         #[allow(unused_imports)]\nuse crate::transport::*;\n\npub(super) static {constant}: Transport = {text};\n",
        file.designation
    ))
}

/// The variants of the enums with the names of their enums, which `Debug` leaves out.
fn qualified(text: &str) -> String {
    const FORMS: [(&str, &str); 12] = [
        (
            "form: Sum { dilute: Polynomial",
            "form: ConductivityForm::Sum { dilute: DiluteConductivity::Polynomial",
        ),
        (
            "form: Sum { dilute: Inverse",
            "form: ConductivityForm::Sum { dilute: DiluteConductivity::Inverse",
        ),
        (
            "form: Sum { dilute: Collision",
            "form: ViscosityForm::Sum { dilute: DiluteViscosity::Collision",
        ),
        (
            "form: Sum { dilute: Neufeld",
            "form: ViscosityForm::Sum { dilute: DiluteViscosity::Neufeld",
        ),
        (
            "form: Sum { dilute: Ratio",
            "form: ViscosityForm::Sum { dilute: DiluteViscosity::Ratio",
        ),
        (
            "form: Sum { dilute: CarbonDioxide",
            "form: ViscosityForm::Sum { dilute: DiluteViscosity::CarbonDioxide",
        ),
        ("residual: FreeVolume", "residual: ResidualViscosity::FreeVolume"),
        ("residual: Scaled", "residual: ResidualViscosity::Scaled"),
        ("residual: CarbonDioxide", "residual: ResidualViscosity::CarbonDioxide"),
        ("form: Conformal(", "form: ViscosityForm::Conformal("),
        ("form: Conformal {", "form: ConductivityForm::Conformal {"),
        ("reference: R", "reference: Refrigerant::R"),
    ];
    FORMS
        .iter()
        .fold(text.to_string(), |text, (short, long)| text.replace(short, long))
}

impl ViscositySource {
    fn compile(&self, molar_mass: f64) -> Result<Viscosity, String> {
        let form = match (&self.dilute, &self.residual, &self.conformal) {
            (Some(dilute), Some(residual), None) => ViscosityForm::Sum {
                dilute: dilute.compile(molar_mass)?,
                initial: self.initial.as_ref().map(PotentialSource::compile).transpose()?,
                residual: residual.compile(molar_mass)?,
            },
            (None, None, Some(conformal)) => ViscosityForm::Conformal(conformal.compile()?),
            _ => return Err("viscosity: dilute and residual, or conformal".to_string()),
        };
        Ok(Viscosity {
            published: self.published()?,
            highest_p_pa: digits(&self.p_max_mpa)? * 1e6,
            form,
        })
    }
}

impl PotentialSource {
    fn compile(&self) -> Result<LennardJones, String> {
        potential(&self.sigma_nm, &self.energy_k)
    }
}

impl DiluteSource {
    fn compile(&self, molar_mass: f64) -> Result<DiluteViscosity, String> {
        Ok(match self {
            Self::Collision {
                factor_upa_s,
                molar_mass_g_mol,
                sigma_nm,
                energy_k,
                terms,
            } => {
                let sigma_nm = digits(sigma_nm)?;
                let mass = molar_mass_g_mol.as_deref().map_or(Ok(1.0), digits)?;
                let mut rows = Vec::new();
                for [a, t] in terms {
                    rows.push((digits(a)?, t.parse().map_err(|_| format!("{t} is no whole number"))?));
                }
                DiluteViscosity::Collision {
                    factor: digits(factor_upa_s)? * 1e-6 * mass.sqrt() / (sigma_nm * sigma_nm),
                    energy_k: digits(energy_k)?,
                    terms: rows.leak(),
                }
            }
            Self::Neufeld {
                factor_upa_s,
                sigma_nm,
                energy_k,
            } => {
                let sigma_nm = digits(sigma_nm)?;
                DiluteViscosity::Neufeld {
                    factor: digits(factor_upa_s)? * 1e-6 * (1e3 * molar_mass).sqrt() / (sigma_nm * sigma_nm),
                    energy_k: digits(energy_k)?,
                }
            }
            Self::Ratio {
                numerator_upa_s,
                denominator,
            } => DiluteViscosity::Ratio {
                numerator: scaled(numerator_upa_s, 1e-6)?,
                denominator: scaled(denominator, 1.0)?,
            },
            Self::CarbonDioxide { factor_upa_s, a } => DiluteViscosity::CarbonDioxide {
                factor: digits(factor_upa_s)? * 1e-6,
                a: scaled(a, 1.0)?
                    .try_into()
                    .map_err(|_| "carbon-dioxide: a has seven numbers")?,
            },
        })
    }
}

impl ResidualSource {
    fn compile(&self, molar_mass: f64) -> Result<ResidualViscosity, String> {
        Ok(match self {
            Self::FreeVolume {
                reducing_t_k,
                reducing_rho_kg_m3,
                reducing_rho_mol_dm3,
                unit_upa_s,
                factor,
                power,
                packed,
                packed_by,
                terms,
            } => {
                let unit = digits(unit_upa_s)? * 1e-6;
                ResidualViscosity::FreeVolume {
                    reducing_t_k: digits(reducing_t_k)?,
                    reducing_rho_mol_m3: density(reducing_rho_kg_m3, reducing_rho_mol_dm3, molar_mass)?,
                    terms: all_terms(terms, unit)?,
                    factor: digits(factor)? * unit,
                    power: *power,
                    packed: pairs(packed)?,
                    packed_by: pairs(packed_by)?,
                }
            }
            Self::Scaled {
                reducing_t_k,
                reducing_rho_mol_dm3,
                terms,
                numerator,
                denominator,
            } => ResidualViscosity::Scaled {
                reducing_t_k: digits(reducing_t_k)?,
                reducing_rho_mol_m3: digits(reducing_rho_mol_dm3)? * 1e3,
                terms: all_terms(terms, 1e-6)?,
                numerator: all_terms(numerator, 1e-6)?,
                denominator: all_terms(denominator, 1.0)?,
            },
            Self::CarbonDioxide {
                triple_t_k,
                triple_rho_kg_m3,
                gamma,
                c: [c1, c2],
            } => {
                let (t_k, rho_kg_m3) = (digits(triple_t_k)?, digits(triple_rho_kg_m3)?);
                // rho^(2/3) (R T)^(1/2) M^(-1/6) N_A^(-1/3), the unit of viscosity of the liquid at the triple point.
                let factor = rho_kg_m3.powf(2.0 / 3.0) * (GAS_CONSTANT * t_k).sqrt()
                    / (molar_mass.powf(1.0 / 6.0) * AVOGADRO.powf(1.0 / 3.0));
                ResidualViscosity::CarbonDioxide {
                    triple_t_k: t_k,
                    triple_rho_mol_m3: rho_kg_m3 / molar_mass,
                    factor,
                    gamma: digits(gamma)?,
                    c: [digits(c1)?, digits(c2)?],
                }
            }
        })
    }
}

/// Exact by the definitions of mole and kelvin: J/(mol K) and 1/mol.
const GAS_CONSTANT: f64 = 8.314_462_618_153_24;
const AVOGADRO: f64 = 6.022_140_76e23;

impl ConformalSource {
    fn compile(&self) -> Result<Conformal, String> {
        Ok(Conformal {
            reference: Refrigerant::from_id(&self.reference).ok_or("no refrigerant of the reference's name")?,
            potential: potential(&self.sigma_nm, &self.energy_k)?,
            shape: scaled(&self.shape, 1.0)?,
            reducing_rho_mol_m3: digits(&self.reducing_rho_mol_dm3)? * 1e3,
        })
    }
}

impl ConductivitySource {
    fn compile(&self, molar_mass: f64) -> Result<Conductivity, String> {
        let form = match (&self.dilute, &self.residual, &self.conformal) {
            (Some(dilute), Some(residual), None) => ConductivityForm::Sum {
                dilute: dilute.compile()?,
                reducing_t_k: digits(&residual.reducing_t_k)?,
                reducing_rho_mol_m3: density(&residual.reducing_rho_kg_m3, &residual.reducing_rho_mol_dm3, molar_mass)?,
                terms: all_terms(&residual.terms, residual.unit_w_m_k.as_deref().map_or(Ok(1.0), digits)?)?,
            },
            (None, None, Some(conformal)) => ConductivityForm::Conformal {
                conformal: conformal.compile()?,
                // Printed for a viscosity in µPa s and heats in kJ: a thousandth of the figure without a unit.
                internal: scaled(conformal.internal.as_deref().ok_or("conformal: no internal")?, 1e3)?,
            },
            _ => return Err("conductivity: dilute and residual, or conformal".to_string()),
        };
        let critical = &self.critical;
        Ok(Conductivity {
            published: self.published()?,
            highest_p_pa: digits(&self.p_max_mpa)? * 1e6,
            form,
            critical: CriticalEnhancement {
                amplitude: digits(&critical.amplitude)?,
                nu: digits(&critical.nu)?,
                gamma: digits(&critical.gamma)?,
                susceptibility: digits(&critical.susceptibility)?,
                length_m: digits(&critical.length_nm)? * 1e-9,
                cut_off_1_m: 1e9 / digits(&critical.cut_off_nm)?,
                reference_t_k: digits(&critical.reference_t_k)?,
            },
        })
    }
}

impl DiluteConductivitySource {
    fn compile(&self) -> Result<DiluteConductivity, String> {
        Ok(match self {
            Self::Polynomial { reducing_t_k, a } => DiluteConductivity::Polynomial {
                reducing_t_k: digits(reducing_t_k)?,
                a: scaled(a, 1.0)?,
            },
            // Printed for mW/(m K).
            Self::Inverse { reducing_t_k, l } => DiluteConductivity::Inverse {
                reducing_t_k: digits(reducing_t_k)?,
                l: scaled(l, 1e3)?,
            },
        })
    }
}

impl TensionSource {
    fn compile(&self) -> Result<SurfaceTension, String> {
        Ok(SurfaceTension {
            published: self.published()?,
            terms: pairs(&self.terms)?,
        })
    }
}

fn potential(sigma_nm: &str, energy_k: &str) -> Result<LennardJones, String> {
    Ok(LennardJones {
        sigma_m: digits(sigma_nm)? * 1e-9,
        energy_k: digits(energy_k)?,
    })
}

/// A density in mol/m3 of the one that is given.
fn density(kg_m3: &Option<String>, mol_dm3: &Option<String>, molar_mass: f64) -> Result<f64, String> {
    match (kg_m3, mol_dm3) {
        (Some(kg_m3), None) => Ok(digits(kg_m3)? / molar_mass),
        (None, Some(mol_dm3)) => Ok(digits(mol_dm3)? * 1e3),
        _ => Err("one reducing density is needed".to_string()),
    }
}

fn all_terms(rows: &[[String; 3]], unit: f64) -> Result<&'static [Term], String> {
    let mut terms = Vec::new();
    for [n, d, t] in rows {
        terms.push(Term {
            n: digits(n)? * unit,
            d: digits(d)?,
            t: digits(t)?,
        });
    }
    Ok(terms.leak())
}

fn pairs(rows: &[[String; 2]]) -> Result<&'static [(f64, f64)], String> {
    let mut found = Vec::new();
    for [a, b] in rows {
        found.push((digits(a)?, digits(b)?));
    }
    Ok(found.leak())
}

fn scaled(numbers: &[String], unit: f64) -> Result<&'static [f64], String> {
    let found: Result<Vec<f64>, String> = numbers.iter().map(|number| Ok(digits(number)? * unit)).collect();
    Ok(found?.leak())
}
