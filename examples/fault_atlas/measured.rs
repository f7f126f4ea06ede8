//! Measured changes that others have published: rows of `tables/evidence/effects.csv`.

use crate::rows::Page;
use coldloop::units::constants::PSI_PA;
use coldloop::units::{AbsolutePressure, in_kelvins, kelvins};
use coldloop::{Error, Fault, Feature, Refrigerant};
use std::collections::BTreeMap;
use std::path::Path;

/// One published change of one figure.
pub(crate) struct Fact {
    /// Key of the literature.
    pub(crate) source: String,
    pub(crate) kind: String,
    pub(crate) fault: Fault,
    /// The severity in the source's own words.
    pub(crate) level: String,
    /// The refrigerant that was measured; `None` where the source names none.
    pub(crate) refrigerant: Option<Refrigerant>,
    expansion: String,
    pub(crate) figure: Feature,
    change: Change,
}

enum Change {
    /// The printed ends, Pa.
    Pressure([f64; 2]),
    /// The printed ends, K.
    Temperature([f64; 2]),
    /// Its sign only.
    Direction(f64),
}

/// The position of a change on the scale of a page.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Mark {
    /// K, from one end to the other.
    Ends([f64; 2]),
    /// Its sign only.
    Direction(f64),
}

type Row = BTreeMap<String, String>;

/// The changes of figures that pages have.
pub(crate) fn facts(path: &Path) -> Result<Vec<Fact>, Box<dyn std::error::Error>> {
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path)?;
    let mut facts = Vec::new();
    for row in reader.deserialize() {
        let row: Row = row?;
        facts.extend(fact(&row)?);
    }
    Ok(facts)
}

fn fact(row: &Row) -> Result<Option<Fact>, Box<dyn std::error::Error>> {
    let cell = |name: &str| row.get(name).map_or("", String::as_str);
    let quantity = cell("quantity");
    let figure = match quantity.strip_prefix("direction of ").unwrap_or(quantity) {
        "low_side" => Feature::LowSide,
        "high_side" => Feature::HighSide,
        "vent" => Feature::Vent,
        _ => return Ok(None),
    };
    let Some(fault) = Fault::from_id(cell("fault")).filter(|fault| *fault != Fault::NoFault) else {
        return Ok(None);
    };
    let (Ok(low), Ok(high)) = (cell("change_low").parse::<f64>(), cell("change_high").parse::<f64>()) else {
        return Ok(None);
    };
    let change = match cell("unit") {
        "psi" => Change::Pressure([PSI_PA * low, PSI_PA * high]),
        "kPa" => Change::Pressure([1e3 * low, 1e3 * high]),
        "K" => Change::Temperature([low, high]),
        "°F" => Change::Temperature([low / 1.8, high / 1.8]),
        "sign" => Change::Direction(low),
        unit => return Err(format!("{}: unit {unit}", cell("id")).into()),
    };
    Ok(Some(Fact {
        source: cell("source").into(),
        kind: cell("kind").into(),
        fault,
        level: cell("level").into(),
        refrigerant: Refrigerant::from_id(cell("refrigerant")),
        expansion: cell("expansion").into(),
        figure,
        change,
    }))
}

impl Fact {
    /// The position of the change on a page; `None` where it was measured on another kind of system.
    ///
    /// A change of pressure becomes one of saturation temperature, from the median of sound systems on, of the refrigerant that was
    /// measured. What was measured with R-12 is on the pages of R-134a, which replaced it in the same systems.
    pub(crate) fn mark(&self, page: &Page) -> Option<Mark> {
        let own = page.system.refrigerant;
        let refrigerant = self.refrigerant.unwrap_or(own);
        let carbon_dioxide = |refrigerant| refrigerant == Refrigerant::R744;
        let expansion = page.system.expansion.id();
        let alike = carbon_dioxide(own) == carbon_dioxide(refrigerant)
            && (self.expansion.is_empty() || self.expansion == expansion)
            && page.faults.contains(&self.fault);
        if !alike {
            return None;
        }
        let (_, band) = page.figures.iter().find(|(figure, _)| *figure == self.figure)?;
        match self.change {
            Change::Direction(sign) => Some(Mark::Direction(sign)),
            Change::Temperature(ends) => Some(Mark::Ends(ends)),
            Change::Pressure([low, high]) => {
                let at = |by_pa| shifted_k(refrigerant, self.figure, band.median, by_pa).ok();
                Some(Mark::Ends([at(low)?, at(high)?]))
            }
        }
    }
}

/// By how much a side's saturation temperature moves from `from_k` on when its pressure moves by `by_pa`.
fn shifted_k(refrigerant: Refrigerant, side: Feature, from_k: f64, by_pa: f64) -> Result<f64, Error> {
    let moved = AbsolutePressure::from_pa(saturation_pa(refrigerant, side, from_k)? + by_pa);
    let t = if side == Feature::HighSide {
        refrigerant.bubble_temperature(moved)?
    } else {
        refrigerant.dew_temperature(moved)?
    };
    Ok(in_kelvins(t) - from_k)
}

/// The pressure of a side at a saturation temperature, Pa absolute: bubble point on the high side, dew point on the low.
pub(crate) fn saturation_pa(refrigerant: Refrigerant, side: Feature, t_k: f64) -> Result<f64, Error> {
    let pressure = if side == Feature::HighSide {
        refrigerant.bubble_pressure(kelvins(t_k))?
    } else {
        refrigerant.dew_pressure(kelvins(t_k))?
    };
    Ok(pressure.pa())
}
