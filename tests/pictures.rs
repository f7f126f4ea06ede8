//! The drawings show what the page says, and page and drawings are well-formed, without colour, script or anything to fetch.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::intake::{self, Visit};
use coldloop::report::{self, Page, Units};
use coldloop::{Language, Picture};
use roxmltree::{Document, Node, ParsingOptions};
use std::fs;

/// Width of every drawing, px.
const WIDTH: f64 = 360.0;

fn file(name: &str) -> String {
    fs::read_to_string(format!("examples/readings/{name}.toml")).unwrap()
}

fn visit(name: &str) -> Box<Visit> {
    intake::visit_from_toml(&file(name)).unwrap()
}

/// Every visit of the examples, by the name of its file.
fn visits() -> Vec<(String, Box<Visit>, Units)> {
    let names = fs::read_dir("examples/readings").unwrap();
    let names = names.map(|entry| entry.unwrap().path().file_stem().unwrap().to_str().unwrap().to_owned());
    let good = names.filter(|name| !name.starts_with("bad"));
    let all: Vec<_> = good
        .map(|name| (name.clone(), visit(&name), Units::as_written(&file(&name))))
        .collect();
    assert!(all.len() > 20);
    all
}

fn parsed(text: &str) -> Document<'_> {
    let options = ParsingOptions {
        allow_dtd: true,
        ..ParsingOptions::default()
    };
    Document::parse_with_options(text, options).unwrap_or_else(|error| panic!("{error}: {text}"))
}

fn drawing(visit: &Visit, picture: Picture, units: Units) -> String {
    report::svg(visit, picture, units).unwrap().unwrap()
}

fn number(node: Node<'_, '_>, name: &str) -> f64 {
    node.attribute(name).unwrap().parse().unwrap()
}

fn all<'a>(document: &'a Document<'_>, name: &'static str) -> impl Iterator<Item = Node<'a, 'a>> {
    document
        .descendants()
        .filter(move |node| node.has_tag_name(("http://www.w3.org/2000/svg", name)))
}

fn texts(document: &Document<'_>) -> Vec<String> {
    all(document, "text")
        .map(|node| node.text().unwrap().to_owned())
        .collect()
}

#[test]
fn every_page_is_xml_in_black_without_script_or_anything_to_fetch() {
    for (name, mut visit, units) in visits() {
        for language in Language::ALL {
            visit.settings.language = language;
            let page = report::html(&visit, units).unwrap();
            let document = parsed(&page);
            assert_eq!(document.root_element().attribute("lang"), Some(language.id()), "{name}");
            for node in document.descendants().filter(Node::is_element) {
                assert!(!["script", "img", "link", "iframe", "object"].contains(&node.tag_name().name()));
                for attribute in node.attributes() {
                    let value = attribute.value();
                    assert!(
                        !attribute.name().starts_with("on") && attribute.name() != "href",
                        "{name}"
                    );
                    let colour = ["fill", "stroke"].contains(&attribute.name());
                    assert!(!colour || ["none", "currentColor"].contains(&value), "{name}: {value}");
                    assert!(!value.contains("NaN") && !value.contains("inf"), "{name}: {value}");
                }
            }
            assert!(
                !page.contains('#') && !page.contains("rgb(") && !page.contains("url("),
                "{name}"
            );
        }
    }
}

/// Every drawing by itself is the one of the page, and all of it lies on its sheet.
#[test]
fn every_drawing_stands_by_itself_and_within_its_sheet() {
    for (name, visit, units) in visits() {
        let page = report::html(&visit, units).unwrap();
        for picture in Picture::ALL {
            let Some(svg) = report::svg(&visit, picture, units).unwrap() else {
                continue;
            };
            assert!(page.contains(&svg), "{name}, {picture}");
            let document = parsed(&svg);
            let height = number(document.root_element(), "height");
            assert!(all(&document, "title").count() == 1 && texts(&document).len() > 2);
            let within = |x: f64, y: f64| {
                let inside = (-0.5..=WIDTH + 0.5).contains(&x) && (-0.5..=height + 0.5).contains(&y);
                assert!(inside, "{name}, {picture}: {x}, {y} of {height}");
            };
            all(&document, "text").for_each(|node| within(number(node, "x"), number(node, "y")));
            all(&document, "circle").for_each(|node| within(number(node, "cx"), number(node, "cy")));
            for node in all(&document, "rect") {
                let (x, y) = (number(node, "x"), number(node, "y"));
                within(x, y);
                within(x + number(node, "width"), y + number(node, "height"));
            }
            for node in document.descendants().filter(|node| node.has_attribute("points")) {
                for point in node.attribute("points").unwrap().split(' ') {
                    let (x, y) = point.split_once(',').unwrap();
                    within(x.parse().unwrap(), y.parse().unwrap());
                }
            }
        }
    }
}

#[test]
fn bars_are_as_long_as_their_odds() {
    for (name, visit, units) in visits() {
        let odds = Page::of_visit(&visit).unwrap().result.odds;
        let drawn = report::svg(&visit, Picture::Odds, units).unwrap();
        assert_eq!(drawn.is_none(), odds.is_empty(), "{name}");
        let Some(svg) = drawn else { continue };
        let document = parsed(&svg);
        let bars: Vec<f64> = all(&document, "rect").map(|node| number(node, "width")).collect();
        assert!(bars.len() >= odds.len(), "{name}");
        for (bar, odds) in bars.iter().zip(odds) {
            // Written to a tenth of a px.
            assert!(
                (bar - odds.probability * (WIDTH - 1.0)).abs() < 0.06,
                "{name}: {bar} for {odds:?}"
            );
        }
    }
}

/// A reading lies outside of the frame of its 95 % band where the page says that it is too low or too high.
#[test]
fn a_reading_is_marked_where_it_lies_in_its_band() {
    let mut outside = 0;
    for (name, visit, units) in visits() {
        let page = Page::of_visit(&visit).unwrap();
        let Some(svg) = report::svg(&visit, Picture::Readings, units).unwrap() else {
            assert!(page.readings.is_empty());
            continue;
        };
        let document = parsed(&svg);
        // The last mark and the last two boxes are those of the key.
        let marks: Vec<f64> = all(&document, "polygon")
            .map(|node| {
                let points = node.attribute("points").unwrap();
                let (x, _) = points.split(' ').nth(1).unwrap().split_once(',').unwrap();
                x.parse().unwrap()
            })
            .collect();
        let frames: Vec<(f64, f64)> = all(&document, "rect")
            .step_by(2)
            .map(|node| (number(node, "x"), number(node, "x") + number(node, "width")))
            .collect();
        let read: Vec<_> = page
            .readings
            .iter()
            .zip(frames)
            .filter(|(row, _)| row.measured.is_some())
            .collect();
        assert_eq!(marks.len(), read.len() + 1, "{name}");
        for ((row, (low, high)), mark) in read.into_iter().zip(marks) {
            let measured = row.measured.unwrap();
            let (below, above) = (measured < row.band_95.0, measured > row.band_95.1);
            assert!(
                below == (mark < low) && above == (mark > high),
                "{name}: {row:?} at {mark} in {low} to {high}"
            );
            outside += usize::from(below || above);
        }
    }
    assert!(outside > 10);
}

/// Evaporation and condensation are level, the expansion is upright, and a discharge that was not read is dashed.
#[test]
fn the_cycle_goes_round_its_four_corners() {
    for (name, dashed) in [
        ("low-charge", true),
        ("carbon-dioxide-van", false),
        ("electric-van", true),
    ] {
        let svg = drawing(&visit(name), Picture::Cycle, Units::Metric);
        let document = parsed(&svg);
        let corners: Vec<[f64; 2]> = all(&document, "circle")
            .map(|node| [number(node, "cx"), number(node, "cy")])
            .collect();
        let [suction, discharge, liquid, expanded] = corners[..] else {
            panic!("{name}: {corners:?}");
        };
        assert_eq!(
            (suction[1], discharge[1], liquid[0]),
            (expanded[1], liquid[1], expanded[0]),
            "{name}"
        );
        assert!(
            discharge[0] > suction[0] && suction[0] > expanded[0] && suction[1] > discharge[1],
            "{name}"
        );
        assert_eq!(svg.contains("stroke-dasharray"), dashed, "{name}");
    }
}

/// Liquid R-134a of 41.5 °C at 1,093.5 kPa, saturated liquid at 0 °C having 200 kJ/kg: 258.65 kJ/kg, CoolProp 8.0.0. A tenth of a px is 0.1 kJ/kg.
#[test]
fn the_liquid_line_stands_at_its_enthalpy() {
    let svg = drawing(&visit("low-charge"), Picture::Cycle, Units::Metric);
    let document = parsed(&svg);
    // The numbers of the enthalpy axis are 15 px below the frame and give its scale.
    let frame = all(&document, "rect").next().unwrap();
    let below = number(frame, "y") + number(frame, "height") + 15.0;
    let ticks: Vec<(f64, f64)> = all(&document, "text")
        .filter(|node| number(*node, "y") == below)
        .map(|node| (number(node, "x"), node.text().unwrap().parse().unwrap()))
        .collect();
    let ((x0, h0), (x1, h1)) = (ticks[0], ticks[ticks.len() - 1]);
    let liquid = number(all(&document, "circle").nth(2).unwrap(), "cx");
    let enthalpy = h0 + (h1 - h0) * (liquid - x0) / (x1 - x0);
    assert!((enthalpy - 258.65).abs() < 0.4, "{enthalpy} kJ/kg");
}

#[test]
fn what_was_watched_has_a_mark_for_each_sample() {
    let repaired = visit("repaired-van");
    for (picture, samples) in [(Picture::PullDown, 4), (Picture::Hold, 4), (Picture::PressureTest, 3)] {
        let svg = drawing(&repaired, picture, Units::Metric);
        let key = if picture == Picture::PressureTest { 2 } else { 1 };
        assert_eq!(all(&parsed(&svg), "circle").count(), samples + key, "{picture}");
    }
    assert!(
        report::svg(&visit("low-charge"), Picture::Hold, Units::Metric)
            .unwrap()
            .is_none()
    );
}

/// The held vacuum ends at 429 micron after 20 min, and the axes place its mark at these values.
#[test]
fn a_mark_stands_at_its_minutes_and_microns() {
    let svg = drawing(&visit("repaired-van"), Picture::Hold, Units::Metric);
    let document = parsed(&svg);
    let ticks: Vec<([f64; 2], f64)> = all(&document, "text")
        .filter_map(|node| Some(([number(node, "x"), number(node, "y")], node.text()?.parse().ok()?)))
        .collect();
    // The minutes stand in one row below all else, the microns in one column left of it.
    let row = ticks.iter().map(|([_, y], _)| *y).fold(0.0, f64::max);
    let column = ticks.iter().map(|([x, _], _)| *x).fold(f64::INFINITY, f64::min);
    let read = |axis: usize, at: f64| {
        let on = |ends: &&([f64; 2], f64)| {
            if axis == 0 {
                ends.0[1] == row
            } else {
                ends.0[0] == column
            }
        };
        let on: Vec<_> = ticks.iter().filter(on).collect();
        let (first, last) = (on[0], on[on.len() - 1]);
        first.1 + (last.1 - first.1) * (at - first.0[axis]) / (last.0[axis] - first.0[axis])
    };
    let end = all(&document, "circle").nth(3).unwrap();
    let minutes = read(0, number(end, "cx"));
    assert!((minutes - 20.0).abs() < 0.2, "{minutes} min");
    // The numbers of a column stand 4 px below their ticks.
    let micron = read(1, number(end, "cy") + 4.0);
    assert!((micron - 429.0).abs() < 2.0, "{micron} micron");
}

#[test]
fn axes_and_values_are_in_the_units_that_are_asked_for() {
    let visit = visit("low-charge");
    for (units, own, others) in [
        (Units::Metric, ["kPa gauge", "kJ/kg", "°C"], ["psig", "Btu/lb", "bar"]),
        (Units::Bar, ["bar gauge", "kJ/kg", "°C"], ["psig", "Btu/lb", "kPa"]),
        (Units::Us, ["psig", "Btu/lb", "°F"], ["kPa", "kJ/kg", "°C"]),
    ] {
        let drawn = [Picture::Readings, Picture::Cycle]
            .map(|picture| drawing(&visit, picture, units))
            .concat();
        own.iter().for_each(|unit| assert!(drawn.contains(unit), "{unit}"));
        others.iter().for_each(|unit| assert!(!drawn.contains(unit), "{unit}"));
    }
}

/// Whatever a file contains is text on the page, never an element.
#[test]
fn nothing_in_a_file_becomes_an_element() {
    let good = file("repaired-van");
    let hostile = [
        "<script>alert(1)</script>",
        "\\\"><img src=x>",
        "&lt;b&gt;",
        "'/>]]><!--",
        "\\u0001\\uFFFE",
        "é ß 漢",
    ];
    for text in hostile {
        let bad = good.replace("gas = \"nitrogen\"", &format!("gas = \"{text}\""));
        assert_ne!(bad, good);
        let visit = intake::visit_from_toml(&bad).unwrap();
        assert_eq!(visit.refused.len(), 1, "{text}");
        let page = report::html(&visit, Units::Metric).unwrap();
        let document = parsed(&page);
        assert!(
            document
                .descendants()
                .all(|node| !["script", "img", "b"].contains(&node.tag_name().name()))
        );
        let refused = intake::visit_from_toml(&good.replace("\"R-134a\"", &format!("\"{text}\"")));
        assert!(refused.is_err(), "{text}");
    }
}

/// Whatever the gauges show, the page is there; where the cycle cannot be drawn, it says why.
#[test]
fn any_readings_have_a_page() {
    let good = file("worn-compressor");
    let head = &good[..good.find("[readings]").unwrap()];
    let mut pages = 0;
    for refrigerant in ["R-134a", "R-744", "R-1234yf"] {
        for (low, high) in [(-40, 20), (10, 4_500), (500, 520), (2_000, 13_000), (7_000, 15_500)] {
            for (suction, liquid) in [(-40, 95), (5, 30), (60, -5)] {
                let text = format!(
                    "{}[readings]\nlow_side = '{low} kPa gauge'\nhigh_side = '{high} kPa gauge'\nvent = '12 °C'\n\
                     suction_line = '{suction} °C'\nliquid_line = '{liquid} °C'\n",
                    head.replace("R-134a", refrigerant)
                );
                // A refused file has no page.
                let Ok(visit) = intake::visit_from_toml(&text) else {
                    continue;
                };
                let Ok(page) = report::html(&visit, Units::Metric) else {
                    assert!(visit.diagnose().is_err(), "{text}");
                    continue;
                };
                parsed(&page);
                assert!(!page.contains("NaN") && !page.contains("inf\""), "{text}");
                pages += 1;
            }
        }
    }
    assert!(pages > 20, "{pages}");
}

/// The drawing in the README: readings and cycle of one vehicle side by side, on white. `COLDLOOP_WRITE=1` writes it again.
#[test]
fn the_drawing_of_the_readme_is_fresh() {
    let visit = visit("low-charge");
    let [left, right] = [Picture::Readings, Picture::Cycle].map(|picture| drawing(&visit, picture, Units::Metric));
    let height = [&left, &right].map(|svg| number(parsed(svg).root_element(), "height"));
    let height = height[0].max(height[1]) + 24.0;
    let right = right.replacen("<svg ", "<svg x=\"396\" y=\"12\" ", 1);
    let left = left.replacen("<svg ", "<svg x=\"12\" y=\"12\" ", 1);
    let drawn = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 768 {height}\" width=\"768\" height=\"{height}\">\n\
         <rect width=\"768\" height=\"{height}\" fill=\"white\"/>\n{left}\n{right}\n</svg>\n"
    );
    parsed(&drawn);
    if std::env::var_os("COLDLOOP_WRITE").is_some() {
        fs::create_dir_all("docs").unwrap();
        fs::write("docs/page.svg", &drawn).unwrap();
    }
    let committed = fs::read_to_string("docs/page.svg").unwrap();
    assert!(
        committed == drawn,
        "docs/page.svg is stale: COLDLOOP_WRITE=1 cargo test --test pictures"
    );
}
