//! The drawn atlas of faults says what the tables say, and can be read.

#![allow(clippy::unwrap_used, clippy::panic)] // tests fail by panicking

#[path = "../examples/fault_atlas/drawing.rs"]
mod drawing;
#[path = "../examples/fault_atlas/measured.rs"]
mod measured;
#[path = "../examples/fault_atlas/rows.rs"]
mod rows;
#[path = "../examples/fault_atlas/svg.rs"]
mod svg;
#[path = "../examples/fault_atlas/table.rs"]
mod table;

use coldloop::air::MoistAir;
use coldloop::expected::SoundModel;
use coldloop::units::{RelativeHumidity, RotationalSpeed, Surroundings, celsius};
use coldloop::vehicle::{Conditions, System};
use coldloop::{Compressor, Expansion, Refrigerant};
use rows::Page;
use std::collections::BTreeMap;
use std::path::Path;

const AMBIENT_C: f64 = 37.0;
const HUMIDITY: f64 = 0.35;
const RPM: f64 = 900.0;

fn day() -> Conditions {
    Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(HUMIDITY)),
        engine_speed: Some(RotationalSpeed::from_rpm(RPM)),
        ..Conditions::new(celsius(AMBIENT_C), Surroundings::at_altitude(1_600.0).unwrap())
    }
}

/// 1, a, w and s of that day, as `tables/atlas/README.md` defines them.
fn terms() -> [f64; 4] {
    let air_pa = Surroundings::at_altitude(1_600.0).unwrap().pressure().pa();
    let air = MoistAir::from_relative_humidity(AMBIENT_C + 273.15, air_pa, HUMIDITY).unwrap();
    [
        1.0,
        (AMBIENT_C - 30.0) / 10.0,
        (air.humidity_ratio() - 0.012) / 0.010,
        (RPM / 1_500.0).ln(),
    ]
}

type Row = BTreeMap<String, String>;

fn table_of(path: &str) -> Vec<Row> {
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path).unwrap();
    reader.deserialize().collect::<Result<_, _>>().unwrap()
}

/// Shift and spread of each figure in the printed line of a fault whose severity begins with `severity`.
fn printed(text: &str, fault: &str, source: &str, severity: &str) -> Vec<[f64; 2]> {
    let found = |line: &&str| {
        line.starts_with(&format!("{fault:28} {source:21}")) && line[51..].trim_start().starts_with(severity)
    };
    let line = text
        .lines()
        .find(found)
        .unwrap_or_else(|| panic!("no line of {fault}, {source}, {severity}"));
    let figures = line
        .split('%')
        .nth(1)
        .unwrap()
        .split_whitespace()
        .filter(|word| *word != "±");
    let figures: Vec<f64> = figures.map(|word| word.parse().unwrap()).collect();
    figures.chunks(2).map(|pair| [pair[0], pair[1]]).collect()
}

/// Shift and squared scale of low side, high side, vent, superheat, subcooling and discharge superheat, by hand from the
/// rows of `tables/atlas`.
fn by_hand(rows: &[&Row], scale: &[&Row]) -> Vec<[f64; 2]> {
    let number = |row: &Row, column: &str| row[column].parse::<f64>().unwrap_or(0.0);
    let shift = |column: &str| -> f64 {
        let term = |name: &str| {
            rows.iter()
                .find(|row| row["term"] == name)
                .map_or(0.0, |row| number(row, column))
        };
        ["1", "a", "w", "s"]
            .iter()
            .zip(terms())
            .map(|(name, term_now)| term(name) * term_now)
            .sum()
    };
    // The table holds the lower triangle: the entry is in the row of the later feature.
    let entry = |one: &str, other: &str| {
        let at = |name: &str, column: &str| {
            scale
                .iter()
                .find(|row| row["term"] == name)
                .map(|row| row[column].clone())
        };
        let cells = [at(one, other), at(other, one)];
        cells
            .into_iter()
            .flatten()
            .find_map(|cell| cell.parse::<f64>().ok())
            .unwrap()
    };
    let single = |one: &str| [shift(one), entry(one, one).sqrt()];
    let between = |plus: &str, minus: &str| {
        let variance = entry(plus, plus) + entry(minus, minus) - 2.0 * entry(plus, minus);
        [shift(plus) - shift(minus), variance.sqrt()]
    };
    vec![
        single("low_side"),
        single("high_side"),
        single("vent"),
        between("suction_line", "low_side"),
        between("high_side", "liquid_line"),
        between("discharge_line", "high_side"),
    ]
}

fn near(printed: &[[f64; 2]], by_hand: &[[f64; 2]], what: &str) {
    for (figure, (printed, expected)) in printed.iter().zip(by_hand).enumerate() {
        for (printed, expected) in printed.iter().zip(expected) {
            // Printed with two digits, from coefficients of three.
            assert!(
                (printed - expected).abs() < 0.011,
                "{what}, figure {figure}: {printed}, by hand {expected}"
            );
        }
    }
}

#[test]
fn printed_rows_are_those_of_the_vehicle_models_table() {
    let all = table_of("tables/atlas/vehicle-model.csv");
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let text = table::text(&Page::of(&system, &day()).unwrap());
    for (fault, low, part) in [
        ("undercharge", "0.643", "scale_severe"),
        ("overcharge", "0.020", "scale"),
        ("expansion-valve-stuck-closed", "0.337", "scale"),
        ("suction-line-restriction", "0.643", "scale_severe"),
    ] {
        let of = |row: &&Row| row["refrigerant"] == "other" && row["expansion"] == "txv" && row["fault"] == fault;
        let rows: Vec<&Row> = all.iter().filter(of).collect();
        let shift =
            |row: &&&Row| row["part"] == "shift" && row["compressor"] == "fixed-clutch" && row["severity_low"] == low;
        let shifts: Vec<&Row> = rows.iter().filter(shift).copied().collect();
        let scale: Vec<&Row> = rows.iter().filter(|row| row["part"] == part).copied().collect();
        assert_eq!(shifts.len(), 4, "{fault}");
        let rounded = format!("{:.2}", low.parse::<f64>().unwrap());
        let printed = printed(&text, &rows::spoken(fault), "vehicle model", &rounded);
        near(&printed, &by_hand(&shifts, &scale), fault);
    }
}

#[test]
fn printed_rows_are_those_of_the_independent_simulators_table() {
    let all = table_of("tables/atlas/independent-simulator.csv");
    let system = System::new(Refrigerant::R1234yf, Expansion::OrificeTube, Compressor::FixedClutch);
    let text = table::text(&Page::of(&system, &day()).unwrap());
    for (fault, place, part) in [
        ("undercharge", 0, "covariance"),
        ("evaporator-airflow-loss", 1, "covariance"),
        ("condenser-airflow-loss", 2, "covariance_severe"),
    ] {
        let of = |row: &&Row| row["expansion"] == "orifice-tube" && row["fault"] == fault;
        let rows: Vec<&Row> = all.iter().filter(of).collect();
        let shift = |row: &&&Row| row["part"] == "shift" && row["compressor"] == "fixed-clutch";
        let shifts: Vec<&Row> = rows.iter().filter(shift).copied().collect();
        let mut lows: Vec<f64> = shifts.iter().map(|row| row["severity_low"].parse().unwrap()).collect();
        lows.sort_by(f64::total_cmp);
        lows.dedup();
        assert_eq!(lows.len(), 3, "{fault}");
        let of_bin = |row: &&&Row| row["severity_low"].parse::<f64>().unwrap() == lows[place];
        let shifts: Vec<&Row> = shifts.iter().filter(of_bin).copied().collect();
        let scale: Vec<&Row> = rows.iter().filter(|row| row["part"] == part).copied().collect();
        let rounded = format!("{:.2}", lows[place]);
        let printed = printed(&text, &rows::spoken(fault), "independent simulator", &rounded);
        near(&printed, &by_hand(&shifts, &scale), fault);
    }
}

/// The shares of the severities of a fault are those of all its vehicles.
#[test]
fn shares_of_a_fault_sum_to_one() {
    for system in SoundModel::systems() {
        let page = Page::of(&system, &day_for(&system)).unwrap();
        for fault in &page.faults {
            for source in page.sources() {
                let rows: Vec<f64> = page
                    .rows(*fault)
                    .filter(|row| row.source == source)
                    .map(|row| row.share)
                    .collect();
                let drawn: f64 = page.drawn(*fault, source).iter().map(|row| row.share).sum();
                let all: f64 = rows.iter().sum();
                assert!(
                    rows.is_empty() || ((all - 1.0).abs() < 1e-9 && (drawn - 1.0).abs() < 1e-9),
                    "{fault}: {all}, {drawn}"
                );
            }
        }
    }
}

fn day_for(system: &System) -> Conditions {
    Conditions {
        engine_speed: Some(RotationalSpeed::from_rpm(RPM)).filter(|_| system.compressor != Compressor::Electric),
        ..day()
    }
}

fn drawings() -> Vec<(String, String)> {
    let facts = measured::facts(Path::new("tables/evidence/effects.csv")).unwrap();
    let pages = SoundModel::systems().map(|system| Page::of(&system, &day_for(&system)).unwrap());
    pages.map(|page| (page.name(), drawing::svg(&page, &facts))).collect()
}

/// An element of the drawing: its name, its attributes and its words.
#[derive(Debug)]
struct Element {
    name: String,
    attributes: BTreeMap<String, String>,
    words: String,
}

impl Element {
    fn number(&self, attribute: &str) -> f64 {
        self.attributes[attribute].parse().unwrap()
    }
}

/// The elements of well-formed XML without comments; panics where it is not.
fn elements(xml: &str) -> Vec<Element> {
    let body = xml
        .strip_prefix("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .unwrap();
    let mut elements: Vec<Element> = Vec::new();
    let mut open: Vec<usize> = Vec::new();
    for piece in body.split('<').skip(1) {
        let (tag, words) = piece
            .split_once('>')
            .unwrap_or_else(|| panic!("a tag without an end: {piece}"));
        assert!(!words.contains('>'), "{words}");
        if let Some(name) = tag.strip_prefix('/') {
            let last = open.pop().unwrap_or_else(|| panic!("</{name}> closes nothing"));
            assert_eq!(elements[last].name, name);
            assert!(words.trim().is_empty(), "words outside of a text: {words}");
            continue;
        }
        let (tag, is_closed) = tag.strip_suffix('/').map_or((tag, false), |tag| (tag, true));
        let (name, mut rest) = tag.split_once(' ').unwrap();
        let mut attributes = BTreeMap::new();
        while let Some((attribute, value)) = rest.trim_start().split_once("=\"") {
            let (value, after) = value.split_once('"').unwrap();
            assert!(
                attribute.chars().all(|c| c.is_alphanumeric() || c == '-'),
                "{attribute}"
            );
            assert!(
                attributes.insert(attribute.to_string(), value.to_string()).is_none(),
                "twice {attribute}"
            );
            rest = after;
        }
        assert!(rest.trim().is_empty(), "{rest}");
        let entities = words.split('&').skip(1);
        for entity in entities {
            assert!(
                ["amp;", "lt;", "gt;"].iter().any(|known| entity.starts_with(known)),
                "&{entity}"
            );
        }
        assert!(
            name == "text" || words.trim().is_empty(),
            "words outside of a text: {words}"
        );
        if !is_closed {
            open.push(elements.len());
        }
        elements.push(Element {
            name: name.into(),
            attributes,
            words: words.trim().into(),
        });
    }
    assert!(open.is_empty());
    assert_eq!(elements[0].name, "svg");
    assert!(elements.iter().skip(1).all(|element| element.name != "svg"));
    elements
}

/// The box that the words of a text fill, with letters as wide as those of the widest common font; left, top, right, bottom.
fn filled(text: &Element) -> [f64; 4] {
    let size = text.number("font-size");
    // Widths in ems, of DejaVu Sans rounded up; bold letters are wider.
    let letter = |c: char| match c {
        'i' | 'j' | 'l' | ' ' | '.' | ',' | ':' | ';' | '\'' | '|' | 'I' => 0.34,
        'f' | 't' | 'r' | '(' | ')' | '/' | '-' => 0.42,
        'm' | 'w' | 'M' | 'W' | '%' => 0.99,
        '+' | '\u{2212}' => 0.84,
        _ => 0.64,
    };
    let bold = if text.attributes.contains_key("font-weight") {
        1.12
    } else {
        1.0
    };
    let width: f64 = size * bold * text.words.chars().map(letter).sum::<f64>();
    let (x, y) = (text.number("x"), text.number("y"));
    let left = match text.attributes["text-anchor"].as_str() {
        "start" => x,
        "middle" => x - 0.5 * width,
        _ => x - width,
    };
    [left, y - 0.76 * size, left + width, y + 0.24 * size]
}

#[test]
fn drawings_are_well_formed_and_stay_on_their_page() {
    let drawings = drawings();
    assert_eq!(drawings.len(), SoundModel::systems().count());
    for (name, xml) in &drawings {
        let elements = elements(xml);
        let (width, height) = (elements[0].number("width"), elements[0].number("height"));
        assert!(elements.len() > 500, "{name}");
        for element in &elements[1..] {
            let pairs = |text: &str| -> Vec<[f64; 2]> {
                let pair = |pair: &str| {
                    let (x, y) = pair.split_once(',').unwrap();
                    [x.parse().unwrap(), y.parse().unwrap()]
                };
                text.split(' ').map(pair).collect()
            };
            let number = |attribute| element.number(attribute);
            let points = match element.name.as_str() {
                "rect" => {
                    assert!(number("width") > 0.0 && number("height") > 0.0, "{name}: {element:?}");
                    let (x, y) = (number("x"), number("y"));
                    vec![[x, y], [x + number("width"), y + number("height")]]
                }
                "line" => vec![[number("x1"), number("y1")], [number("x2"), number("y2")]],
                "circle" => {
                    let (x, y, r) = (number("cx"), number("cy"), number("r"));
                    vec![[x - r, y - r], [x + r, y + r]]
                }
                "polyline" | "polygon" => pairs(&element.attributes["points"]),
                "text" => {
                    let [left, top, right, bottom] = filled(element);
                    vec![[left, top], [right, bottom]]
                }
                other => panic!("{name}: {other}"),
            };
            // The height of a page is rounded.
            let inside = |[x, y]: &[f64; 2]| (0.0..=width + 0.5).contains(x) && (0.0..=height + 0.5).contains(y);
            assert!(points.iter().all(inside), "{name}: {element:?}");
        }
    }
}

#[test]
fn no_two_words_of_a_drawing_overlap() {
    for (name, xml) in drawings() {
        let elements = elements(&xml);
        let texts: Vec<(&Element, [f64; 4])> = elements
            .iter()
            .filter(|element| element.name == "text")
            .map(|text| (text, filled(text)))
            .collect();
        assert!(texts.len() > 60, "{name}");
        for (place, (one, [left, top, right, bottom])) in texts.iter().enumerate() {
            for (other, [other_left, other_top, other_right, other_bottom]) in &texts[place + 1..] {
                let apart = left >= other_right || other_left >= right || top >= other_bottom || other_top >= bottom;
                assert!(apart, "{name}: {:?} and {:?}", one.words, other.words);
            }
        }
    }
}

/// Measured changes are drawn beside the shifts on the pages of the system that was measured, each with its source at the foot.
#[test]
fn measured_changes_are_on_the_pages_of_their_system() {
    let facts = measured::facts(Path::new("tables/evidence/effects.csv")).unwrap();
    let page = |refrigerant, expansion, compressor| {
        let system = System::new(refrigerant, expansion, compressor);
        Page::of(&system, &day_for(&system)).unwrap()
    };
    let valve = page(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let tube = page(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
    let carbon_dioxide = page(Refrigerant::R744, Expansion::Txv, Compressor::Electric);
    let count = |page: &Page| facts.iter().filter(|fact| fact.mark(page).is_some()).count();
    assert_eq!(count(&carbon_dioxide), 0);
    assert!(
        count(&valve) >= 12 && count(&tube) >= 9,
        "{} {}",
        count(&valve),
        count(&tube)
    );
    for (page, source) in [(&valve, "laboratory-undated-a"), (&tube, "association-2021-a")] {
        assert!(drawing::svg(page, &facts).contains(source));
    }
}

/// A slow fan raised 190 psig by 18 psi, which is 3.9 K by the pressure-temperature chart of R-12 (130 °F at 181.0 psig, 140 °F at
/// 206.6 psig: the trade's figures, from memory).
#[test]
fn a_change_of_pressure_is_one_of_saturation_temperature() {
    let facts = measured::facts(Path::new("tables/evidence/effects.csv")).unwrap();
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let page = Page::of(&system, &day()).unwrap();
    let slow_fan = |fact: &&measured::Fact| fact.source == "laboratory-undated-a" && fact.level.contains("fan current");
    let high_side = facts
        .iter()
        .filter(slow_fan)
        .find(|fact| fact.figure == coldloop::Feature::HighSide)
        .unwrap();
    let Some(measured::Mark::Ends([low, high])) = high_side.mark(&page) else {
        panic!("the slow fan has no mark on the page of a valve");
    };
    assert!(low == high && (low - 3.9).abs() < 0.6, "{low}");
}
