//! `tables/vehicle/hardware.toml` into `src/vehicle/description/hardware.rs`: the parameters of the vehicle model.

use serde::Deserialize;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use tables_names::Output;

/// The examples of the documentation of what is written.
const HARDWARE_EXAMPLE: &str = r"///
/// ```
/// use coldloop::VehicleClass;
/// use coldloop::vehicle::Hardware;
/// let (van, bus) = (Hardware::typical(VehicleClass::Van), Hardware::typical(VehicleClass::Bus));
/// assert!(van.displacement_m3 < bus.displacement_m3);
/// assert_eq!(Hardware::from_values(van.values()), van);
/// ```
";
const OPTIONS_EXAMPLE: &str = r"///
/// ```
/// use coldloop::vehicle::{Options, Population, System};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let population = Population {
///     options: Options { fan_always: 1.0, ..Options::USUAL },
///     ..Population::usual(system, VehicleClass::Van)
/// };
/// assert!(population.vehicle(&[0.5; Population::UNIFORMS]).is_ok());
/// ```
";

/// The classes of vehicle, in the order of the `typical` lists and of `VehicleClass`.
const CLASSES: [&str; 5] = ["SmallCar", "Car", "LargeCar", "Van", "Bus"];

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    size: Size,
    choice: Vec<Choice>,
    parameter: Vec<Parameter>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Size {
    spread_make: String,
    spread: String,
    source: String,
}

/// What some makes or vehicles have and others have not: one figure or several.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Choice {
    name: String,
    doc: String,
    value: Vec<String>,
    source: String,
}

impl Choice {
    /// The field, documented, and its usual value.
    fn rust(&self) -> Result<(String, String), String> {
        let name = &self.name;
        if self.source.is_empty() || self.value.is_empty() {
            return Err(format!("hardware.toml, {name}: no source or no value"));
        }
        let digits: Result<Vec<String>, String> = self
            .value
            .iter()
            .map(|digits| Ok(format!("{:?}", number(name, digits)?)))
            .collect();
        let digits = digits?.join(", ");
        let (kind, value) = match self.value.len() {
            1 => ("f64".into(), digits),
            many => (format!("[f64; {many}]"), format!("[{digits}]")),
        };
        Ok((
            format!("{}pub {name}: {kind},\n", documented(&self.doc, &self.source)),
            format!("{name}: {value},\n"),
        ))
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Parameter {
    name: String,
    doc: String,
    typical: Vec<String>,
    spread_make: String,
    spread: String,
    #[serde(default)]
    additive: bool,
    #[serde(default)]
    extensive: bool,
    source: String,
}

fn documented(doc: &str, source: &str) -> String {
    format!("/// {doc}\n///\n/// Source: {}.\n", source.trim_end_matches('.'))
}

/// Reads `tables/vehicle/hardware.toml` and writes `src/vehicle/description/hardware.rs`.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let text =
        fs::read_to_string(root.join("tables/vehicle/hardware.toml")).map_err(|e| format!("hardware.toml: {e}"))?;
    let file: File = toml::from_str(&text).map_err(|e| format!("hardware.toml: {e}"))?;
    if file.size.source.is_empty() {
        return Err("hardware.toml: the size needs a source".to_string());
    }
    for parameter in &file.parameter {
        parameter.check()?;
    }
    once(file.parameter.iter().map(|parameter| parameter.name.as_str()))?;
    once(file.choice.iter().map(|choice| choice.name.as_str()))?;
    out.rust("src/vehicle/description/hardware.rs", &rust(&file)?)
}

/// Nothing, when every name stands once.
fn once<'a>(names: impl Iterator<Item = &'a str>) -> Result<(), String> {
    let mut seen = BTreeSet::new();
    for name in names {
        if !seen.insert(name) {
            return Err(format!("hardware.toml: {name} stands twice"));
        }
    }
    Ok(())
}

impl Parameter {
    fn check(&self) -> Result<(), String> {
        let complaint = |what: &str| Err(format!("hardware.toml, {}: {what}", self.name));
        if self.typical.len() != 1 && self.typical.len() != CLASSES.len() {
            return complaint("typical needs one value or one per class");
        }
        if self.source.is_empty() {
            return complaint("no source");
        }
        if self.additive && self.extensive {
            return complaint("a parameter cannot be additive and extensive");
        }
        Ok(())
    }

    fn typical(&self, class: usize) -> Result<f64, String> {
        number(&self.name, self.typical.get(class).unwrap_or(&self.typical[0]))
    }
}

fn number(name: &str, digits: &str) -> Result<f64, String> {
    digits
        .parse()
        .map_err(|_| format!("hardware.toml, {name}: {digits} is not a number"))
}

fn rust(file: &File) -> Result<String, String> {
    let parameters = &file.parameter;
    let count = parameters.len();
    let mut fields = String::new();
    let mut unpack = String::new();
    let mut pack = String::new();
    let mut rows = String::new();
    for (index, p) in parameters.iter().enumerate() {
        let name = &p.name;
        fields += &format!("{}pub {name}: f64,\n", documented(&p.doc, &p.source));
        unpack += &format!("{name}: values[{index}],");
        pack += &format!("self.{name},");
        let (make, vehicle) = (number(name, &p.spread_make)?, number(name, &p.spread)?);
        rows += &format!(
            "Spread {{ make: {make:?}, vehicle: {vehicle:?}, additive: {}, extensive: {} }}, // {name}\n",
            p.additive, p.extensive
        );
    }
    let mut classes = String::new();
    for (index, class) in CLASSES.iter().enumerate() {
        let values: Result<Vec<String>, String> = parameters
            .iter()
            .map(|p| Ok(format!("{:?}", p.typical(index)?)))
            .collect();
        classes += &format!("VehicleClass::{class} => [{}],", values?.join(", "));
    }
    let size_make = number("size", &file.size.spread_make)?;
    let size = number("size", &file.size.spread)?;
    let (mut choices, mut usual) = (String::new(), String::new());
    for choice in &file.choice {
        let (field, value) = choice.rust()?;
        choices += &field;
        usual += &value;
    }
    Ok(format!(
        "//! The parameters of the vehicle model: typical values by class, and their spreads.\n//!\n\
         //! Generated from tables/vehicle/hardware.toml by tables/compile; edit the table, not this file.\n\n\
         use crate::names::VehicleClass;\n\n\
         /// The hardware of one vehicle A/C.\n{HARDWARE_EXAMPLE}\
         #[derive(Clone, Copy, Debug, PartialEq)]\npub struct Hardware {{\n{fields}}}\n\n\
         /// How a parameter varies: standard deviations of the value when `additive`, else of its natural logarithm.\n\
         #[derive(Clone, Copy, Debug, PartialEq)]\npub struct Spread {{\n\
         /// Between makes.\npub make: f64,\n\
         /// Between the vehicles of one make.\npub vehicle: f64,\n\
         /// Whether the deviation is added to the typical value.\npub additive: bool,\n\
         /// Whether the parameter grows with the size of the system.\npub extensive: bool,\n}}\n\n\
         /// What some makes and vehicles have and others have not.\n{OPTIONS_EXAMPLE}\
         #[derive(Clone, Copy, Debug, PartialEq)]\npub struct Options {{\n{choices}}}\n\n\
         impl Options {{\n\
         /// What is usual.\npub const USUAL: Self = Self {{ {usual} }};\n}}\n\n\
         impl Hardware {{\n\
         /// How many parameters there are.\npub const COUNT: usize = {count};\n\n\
         /// How each of them varies between makes and between vehicles, in the order of [`Hardware::values`].\n\
         pub const SPREAD: [Spread; {count}] = [\n{rows}];\n\n\
         /// How the size varies that all extensive parameters share.\n\
         pub const SIZE: Spread = Spread {{ make: {size_make:?}, vehicle: {size:?}, additive: false, extensive: true }};\n\n\
         /// What is typical of a class of vehicle.\n\
         pub const fn typical(class: VehicleClass) -> Self {{\nSelf::from_values(match class {{ {classes} }})\n}}\n\n\
         /// The parameters as one array, in the order of the fields.\n\
         pub const fn values(&self) -> [f64; {count}] {{ [{pack}] }}\n\n\
         /// The parameters from one array, in the order of the fields.\n\
         pub const fn from_values(values: [f64; {count}]) -> Self {{ Self {{ {unpack} }} }}\n}}\n"
    ))
}
