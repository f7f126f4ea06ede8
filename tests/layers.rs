//! The rooms of the house depend downwards only, and what one room alone may do stays in that room.
//!
//! The sources are read as text; comments and the contents of strings are blanked first, so that prose may name
//! anything.

#![allow(clippy::panic)] // tests fail by panicking

mod rooms;

use rooms::{Source, names_between_files, sources};
use std::collections::BTreeSet;

/// The floors of the house from the ground up. A room may name the rooms on the floors below it.
const FLOORS: [&[&str]; 19] = [
    &["names"],
    &["error"],
    &["range"],
    &["numerics"],
    &["units"],
    &["fluid"],
    &["eos"],
    &["mixture"],
    &["saturation"],
    &["circuit", "air", "transport"],
    &["vehicle"],
    &["expected"],
    &["log"],
    &["diagnosis"],
    &["proof"],
    &["session"],
    &["intake"],
    &["evaluate"],
    &["report"],
];

/// Lines of code, comments and tests aside, that one file written by hand may have.
const LONGEST_FILE: usize = 400;

#[test]
fn rooms_name_only_rooms_below_them() {
    let mut wrong = Vec::new();
    for source in sources("src") {
        let room = source.room();
        if room == "lib" {
            continue;
        }
        let Some(floor) = floor(&room) else {
            wrong.push(format!("{}: the room {room} is on no floor", source.path));
            continue;
        };
        for (line, name) in source.rooms_named() {
            let allowed = name == room || self::floor(&name).is_some_and(|below| below < floor);
            if !allowed {
                wrong.push(format!("{}:{line}: {room} names {name}", source.path));
            }
        }
    }
    assert_none(&wrong);
}

/// Rooms whose files depend on each other in one direction only.
const ONE_WAY: [&str; 9] = [
    "names",
    "numerics",
    "fluid",
    "eos",
    "mixture",
    "saturation",
    "vehicle",
    "expected",
    "diagnosis",
];

/// Generated tables of these rooms name the file that reads them, for the shape of their rows.
const TABLES_NAME_THEIR_READER: [&str; 1] = ["expected"];

/// A file of such a room that names another one, by whatever path, is never named by it in turn, however long the way round.
#[test]
fn no_circle_of_files_in_a_room() {
    let every = sources("src");
    let names: BTreeSet<(String, String)> = names_between_files(&every).into_iter().collect();
    let named = |from: &str, to: &str| from != to && names.contains(&(from.to_string(), to.to_string()));
    let mut wrong = Vec::new();
    for room in ONE_WAY {
        let files = every
            .iter()
            .filter(|source| source.room() == room)
            .filter(|source| !(source.generated && TABLES_NAME_THEIR_READER.contains(&room)));
        let mut left: Vec<&str> = files.map(|source| source.path.as_str()).collect();
        assert!(left.len() > 1, "{room} has {} files", left.len());
        // What names none of those left, or is named by none of them, is in no circle.
        while let Some(at) = left
            .iter()
            .position(|own| left.iter().all(|other| !named(own, other)) || left.iter().all(|other| !named(other, own)))
        {
            left.remove(at);
        }
        if !left.is_empty() {
            wrong.push(format!("{room}: {left:#?} depend on each other in a circle"));
        }
    }
    assert_none(&wrong);
}

/// The rooms inside `vehicle`, from the ground up.
const FLOORS_OF_VEHICLE: [&[&str]; 5] = [
    &["description", "working_fluid"],
    &["parts"],
    &["circuit"],
    &["operation"],
    &["population"],
];

#[test]
fn rooms_of_the_vehicle_name_only_rooms_below_them() {
    let every = sources("src");
    let room = |path: &str| {
        let below = path.strip_prefix("src/vehicle/")?;
        below.split_once('/').map(|(room, _)| room.to_string())
    };
    let floor = |room: &str| FLOORS_OF_VEHICLE.iter().position(|rooms| rooms.contains(&room));
    let mut wrong = Vec::new();
    for (from, to) in names_between_files(&every) {
        let (Some(own), Some(named)) = (room(&from), room(&to)) else {
            continue;
        };
        if own != named && floor(&named) >= floor(&own) {
            wrong.push(format!("{from} names {to}"));
        }
    }
    for source in &every {
        if let Some(room) = room(&source.path).filter(|room| floor(room).is_none()) {
            wrong.push(format!("{}: the room {room} is on no floor", source.path));
        }
    }
    assert_none(&wrong);
}

#[test]
fn every_room_in_floors_is_a_folder_or_a_file() {
    let rooms: Vec<String> = sources("src").iter().map(Source::room).collect();
    for room in ["names", "error", "range", "units", "circuit", "vehicle"] {
        assert!(
            rooms.iter().any(|r| r == room),
            "{room} is in FLOORS and is no folder or file"
        );
    }
}

/// The core runs without std and answers with the same bits everywhere; std's mathematics belongs to the machine.
/// Methods such as `exp` are kept out by building every room without the feature `std`.
#[test]
fn no_room_names_std() {
    let wrong = places(&sources("src"), "std::", |_| false);
    assert_none(&wrong);
}

#[test]
fn unsafe_stands_only_in_the_c_door() {
    let mut all = sources("src");
    all.extend(sources("tables/compile/src"));
    all.extend(sources("bindings/python/src"));
    all.extend(sources("examples"));
    let wrong = places(&all, "unsafe", |_| false)
        .into_iter()
        .filter(|place| !place.contains("unsafe_code"));
    assert_none(&wrong.collect::<Vec<_>>());
}

#[test]
fn files_written_by_hand_stay_short() {
    let mut wrong = Vec::new();
    for folder in [
        "src",
        "tables/compile/src",
        "bindings/c/src",
        "bindings/python/src",
        "tests",
        "examples",
        "benches",
    ] {
        for source in sources(folder) {
            let lines = source
                .without_tests
                .lines()
                .filter(|line| !line.trim().is_empty())
                .count();
            if !source.generated && lines > LONGEST_FILE {
                wrong.push(format!("{}: {lines} lines of code", source.path));
            }
        }
    }
    assert_none(&wrong);
}

#[test]
fn the_reader_sees_code_and_only_code() {
    let text = "use crate::{air, units::celsius}; // crate::report\nlet s = \"crate::vehicle\"; crate::eos::f();\n\
                #[cfg(test)]\nmod tests { use crate::intake; }\n";
    let source = Source::of("src/circuit/x.rs", text);
    let named: Vec<(usize, String)> = source.rooms_named();
    let named: Vec<(usize, &str)> = named.iter().map(|(line, name)| (*line, name.as_str())).collect();
    assert_eq!(named, [(1, "air"), (1, "units"), (2, "eos")]);
    assert_eq!(source.room(), "circuit");
}

#[test]
fn a_name_leads_to_the_file_that_has_it() {
    let sources = [
        (
            "src/a/mod.rs",
            "pub(crate) mod b;\npub use b::{Thing, c::Deep as Other};\nconst OWN: u8 = 1;\n",
        ),
        ("src/a/b/mod.rs", "pub(super) mod c;\npub struct Thing;\n"),
        ("src/a/b/c.rs", "use super::Thing;\nuse crate::d::{self, e::{F, G}};\n"),
        ("src/d.rs", "pub mod e;\nuse super::a::{OWN, Other, Thing};\n"),
        ("src/d/e.rs", ""),
    ];
    let sources = sources.map(|(path, text)| Source::of(path, text));
    let names = names_between_files(&sources);
    let names: Vec<(&str, &str)> = names.iter().map(|(a, b)| (a.as_str(), b.as_str())).collect();
    assert_eq!(
        names,
        [
            ("src/a/b/c.rs", "src/a/b/mod.rs"),
            ("src/a/b/c.rs", "src/d.rs"),
            ("src/a/b/c.rs", "src/d/e.rs"),
            ("src/d.rs", "src/a/b/c.rs"),
            ("src/d.rs", "src/a/b/mod.rs"),
            ("src/d.rs", "src/a/mod.rs"),
        ]
    );
}

fn floor(room: &str) -> Option<usize> {
    FLOORS.iter().position(|rooms| rooms.contains(&room))
}

/// Where `word` occurs in code, in the files that are not allowed to have it.
fn places(sources: &[Source], word: &str, allowed: impl Fn(&Source) -> bool) -> Vec<String> {
    let mut found = Vec::new();
    for source in sources.iter().filter(|source| !allowed(source)) {
        for (number, line) in source.without_tests.lines().enumerate() {
            if line.contains(word) {
                found.push(format!("{}:{}: {}", source.path, number + 1, line.trim()));
            }
        }
    }
    found
}

fn assert_none(wrong: &[String]) {
    assert!(wrong.is_empty(), "\n{}\n", wrong.join("\n"));
}
