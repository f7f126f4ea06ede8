//! `tables/vehicle/hardware.toml` into `src/vehicle/hardware.rs`: the parameters of the vehicle model.

use crate::output::Output;
use serde::Deserialize;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// The classes of vehicle, in the order of the `typical` lists and of `VehicleClass`.
const CLASSES: [&str; 5] = ["SmallCar", "Car", "LargeCar", "Van", "Bus"];

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    size: Size,
    options: Options,
    parameter: Vec<Parameter>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Size {
    spread: String,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Options {
    source: String,
    integrated_receiver: String,
    subcooler_share: [String; 2],
    exchanger_new: String,
    exchanger_old: String,
    exchanger: [String; 2],
    liquid_port: String,
    valve_low_side_switch: String,
    fan_by_pressure: String,
    rear: [String; 5],
    rear_size: [String; 2],
}

impl Options {
    fn rust(&self) -> Result<String, String> {
        let one = |name: &str, digits: &String| Ok::<_, String>(format!("{name}: {:?},\n", number(name, digits)?));
        let many = |name: &str, all: &[String]| {
            let all: Result<Vec<String>, String> = all.iter().map(|d| Ok(format!("{:?}", number(name, d)?))).collect();
            Ok::<_, String>(format!("{name}: [{}],\n", all?.join(", ")))
        };
        Ok([
            one("integrated_receiver", &self.integrated_receiver)?,
            many("subcooler_share", &self.subcooler_share)?,
            one("exchanger_new", &self.exchanger_new)?,
            one("exchanger_old", &self.exchanger_old)?,
            many("exchanger", &self.exchanger)?,
            one("liquid_port", &self.liquid_port)?,
            one("valve_low_side_switch", &self.valve_low_side_switch)?,
            one("fan_by_pressure", &self.fan_by_pressure)?,
            many("rear", &self.rear)?,
            many("rear_size", &self.rear_size)?,
        ]
        .concat())
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Parameter {
    name: String,
    doc: String,
    typical: Vec<String>,
    spread: String,
    #[serde(default)]
    additive: bool,
    #[serde(default)]
    extensive: bool,
    source: String,
}

/// Reads `tables/vehicle/hardware.toml` and writes `src/vehicle/hardware.rs`.
pub(crate) fn compile(root: &Path, out: &mut Output) -> Result<(), String> {
    let text =
        fs::read_to_string(root.join("tables/vehicle/hardware.toml")).map_err(|e| format!("hardware.toml: {e}"))?;
    let file: File = toml::from_str(&text).map_err(|e| format!("hardware.toml: {e}"))?;
    if file.size.source.is_empty() || file.options.source.is_empty() {
        return Err("hardware.toml: size and options need a source".to_string());
    }
    let mut names = BTreeSet::new();
    for parameter in &file.parameter {
        parameter.check()?;
        if !names.insert(&parameter.name) {
            return Err(format!("hardware.toml: {} stands twice", parameter.name));
        }
    }
    out.rust("src/vehicle/hardware.rs", &rust(&file)?)
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
        fields += &format!(
            "/// {}\n///\n/// Source: {}.\npub {name}: f64,\n",
            p.doc,
            p.source.trim_end_matches('.')
        );
        unpack += &format!("{name}: values[{index}],");
        pack += &format!("self.{name},");
        let spread = number(name, &p.spread)?;
        rows += &format!(
            "Spread {{ deviation: {spread:?}, additive: {}, extensive: {} }}, // {name}\n",
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
    let size = number("size", &file.size.spread)?;
    let options = file.options.rust()?;
    Ok(format!(
        "//! The parameters of the vehicle model: typical values by class, and their spread.\n//!\n\
         //! Generated from tables/vehicle/hardware.toml by tables/compile; edit the table, not this file.\n\n\
         use crate::names::VehicleClass;\n\n\
         /// The hardware of one vehicle A/C.\n\
         #[derive(Clone, Copy, Debug, PartialEq)]\npub struct Hardware {{\n{fields}}}\n\n\
         /// How a parameter varies from vehicle to vehicle.\n\
         #[derive(Clone, Copy, Debug, PartialEq)]\npub struct Spread {{\n\
         /// Standard deviation: of the value when `additive`, else of its natural logarithm.\npub deviation: f64,\n\
         /// Whether the deviation is added to the typical value.\npub additive: bool,\n\
         /// Whether the parameter grows with the size of the system.\npub extensive: bool,\n}}\n\n\
         /// What some vehicles have and others have not.\n\
         #[derive(Clone, Copy, Debug, PartialEq)]\npub struct Options {{\n\
         /// Part of valve systems whose receiver is built into the condenser.\npub integrated_receiver: f64,\n\
         /// Least and most of the face that its subcooling pass takes.\npub subcooler_share: [f64; 2],\n\
         /// Part of R-1234yf systems with an internal heat exchanger.\npub exchanger_new: f64,\n\
         /// Part of all other systems with one.\npub exchanger_old: f64,\n\
         /// Its least and most effectiveness.\npub exchanger: [f64; 2],\n\
         /// Part whose high-side port stands behind the condenser.\npub liquid_port: f64,\n\
         /// Part of clutch systems with a valve that cycle on a low-side switch.\npub valve_low_side_switch: f64,\n\
         /// Part whose condenser fan turns slowly while the high side is low.\npub fan_by_pressure: f64,\n\
         /// Part with a second evaporator, by class.\npub rear: [f64; 5],\n\
         /// Its least and most size per that of the front one.\npub rear_size: [f64; 2],\n}}\n\n\
         impl Options {{\n\
         /// What is usual.\npub const USUAL: Self = Self {{ {options} }};\n}}\n\n\
         impl Hardware {{\n\
         /// How many parameters there are.\npub const COUNT: usize = {count};\n\n\
         /// How each of them varies, in the order of [`Hardware::values`].\n\
         pub const SPREAD: [Spread; {count}] = [\n{rows}];\n\n\
         /// Standard deviation of the natural logarithm of the size that all extensive parameters share.\n\
         pub const SIZE_DEVIATION: f64 = {size:?};\n\n\
         /// What is typical of a class of vehicle.\n\
         pub const fn typical(class: VehicleClass) -> Self {{\nSelf::from_values(match class {{ {classes} }})\n}}\n\n\
         /// The parameters as one array, in the order of the fields.\n\
         pub const fn values(&self) -> [f64; {count}] {{ [{pack}] }}\n\n\
         /// The parameters from one array, in the order of the fields.\n\
         pub const fn from_values(values: [f64; {count}]) -> Self {{ Self {{ {unpack} }} }}\n}}\n"
    ))
}
