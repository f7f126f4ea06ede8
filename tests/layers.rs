//! The rooms of the house depend downwards only, and what one room alone may do stays in that room.
//!
//! The sources are read as text; comments and the contents of strings are blanked first, so that prose may name
//! anything.

#![allow(clippy::panic)] // a test ends that way

use std::fs;
use std::path::{Path, PathBuf};

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
            wrong.push(format!("{}: the room {room} is not in the picture", source.path));
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
const ONE_WAY: [&str; 2] = ["diagnosis", "expected"];

/// A file of such a room that names another one, by `super::`, is never named by it in turn, however long the way round.
#[test]
fn no_circle_of_files_in_a_room() {
    for room in ONE_WAY {
        let own: Vec<Source> = sources("src")
            .into_iter()
            // The table of `expected` names the file that reads it, for the shape of its rows.
            .filter(|source| source.room() == room && !(source.generated && room == "expected"))
            .collect();
        let name = |source: &Source| {
            source
                .path
                .rsplit('/')
                .next()
                .unwrap_or_default()
                .trim_end_matches(".rs")
                .to_owned()
        };
        let files: Vec<(String, Vec<String>)> = own
            .iter()
            .filter(|source| name(source) != "mod")
            .map(|source| {
                let inside = source.without_tests.replace(&format!("crate::{room}::"), "super::");
                let named = inside.split("super::").skip(1);
                let named = named.map(word);
                (name(source), named.collect())
            })
            .collect();
        assert!(files.len() > 3, "{room} has {} files", files.len());
        let mut left: Vec<&(String, Vec<String>)> = files.iter().collect();
        // What names none of those left can be taken away; a circle is left over.
        while let Some(at) = left
            .iter()
            .position(|(own, named)| left.iter().all(|(other, _)| other == own || !named.contains(other)))
        {
            left.remove(at);
        }
        let left: Vec<&String> = left.iter().map(|(name, _)| name).collect();
        assert!(left.is_empty(), "{room}: {left:?} depend on each other in a circle");
    }
}

#[test]
fn every_room_is_a_folder_or_a_file_named_in_the_picture() {
    let rooms: Vec<String> = sources("src").iter().map(Source::room).collect();
    for room in ["names", "error", "range", "units", "circuit", "vehicle"] {
        assert!(rooms.iter().any(|r| r == room), "{room} has gone; the picture is stale");
    }
}

#[test]
fn only_units_names_uom() {
    let wrong = places(&sources("src"), "uom::", |source| source.room() == "units");
    assert_none(&wrong);
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

/// A Rust file: its path below the root, and its code with comments and string contents blanked.
struct Source {
    path: String,
    generated: bool,
    without_tests: String,
}

impl Source {
    fn of(path: &str, text: &str) -> Self {
        let generated = text.lines().take(6).any(|line| line.contains("Generated from"));
        Self {
            path: path.to_string(),
            generated,
            without_tests: without_tests(&blanked(text)),
        }
    }

    /// The first part of the path below `src`, without `.rs`.
    fn room(&self) -> String {
        let below = self.path.trim_start_matches("src/");
        let first = below.split('/').next().unwrap_or(below);
        first.trim_end_matches(".rs").to_string()
    }

    /// Each room named by a path that starts with `crate::`, with its line; a name of the crate's root counts as
    /// itself, and so is refused: inside the house a thing is named by its room.
    fn rooms_named(&self) -> Vec<(usize, String)> {
        let code = &self.without_tests;
        let mut found = Vec::new();
        for (at, _) in code.match_indices("crate::") {
            let line = code[..at].matches('\n').count() + 1;
            let rest = &code[at + "crate::".len()..];
            let names = match rest.strip_prefix('{') {
                Some(list) => heads(list),
                None => vec![word(rest)],
            };
            found.extend(names.into_iter().map(|name| (line, name)));
        }
        found
    }
}

/// The first words of the entries of a `use` list, which starts after its opening brace.
fn heads(list: &str) -> Vec<String> {
    let (mut depth, mut start, mut heads) = (0, 0, Vec::new());
    for (at, c) in list.char_indices() {
        match c {
            '{' => depth += 1,
            '}' if depth > 0 => depth -= 1,
            ',' if depth == 0 => {
                heads.push(word(&list[start..at]));
                start = at + 1;
            }
            '}' => {
                heads.push(word(&list[start..at]));
                break;
            }
            _ => {}
        }
    }
    heads.retain(|head| !head.is_empty());
    heads
}

fn word(text: &str) -> String {
    text.trim_start()
        .chars()
        .take_while(|c| c.is_alphanumeric() || *c == '_')
        .collect()
}

fn floor(room: &str) -> Option<usize> {
    FLOORS.iter().position(|rooms| rooms.contains(&room))
}

/// The text with comments, string contents and character literals replaced by spaces, line breaks kept.
fn blanked(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(c) = rest.chars().next() {
        let length = if rest.starts_with("//") {
            rest.find('\n').unwrap_or(rest.len())
        } else if rest.starts_with("/*") {
            rest.find("*/").map_or(rest.len(), |end| end + 2)
        } else if let Some(raw) = rest.strip_prefix("r#\"") {
            raw.find("\"#").map_or(rest.len(), |end| end + 5)
        } else if c == '"' {
            string_length(rest)
        } else if rest.starts_with("'\"'") || rest.starts_with("'{'") || rest.starts_with("'}'") {
            3
        } else if let Some(escape) = rest.strip_prefix("'\\") {
            escape
                .char_indices()
                .skip(1)
                .find(|(_, c)| *c == '\'')
                .map_or(2, |(end, _)| end + 3)
        } else {
            out.push(c);
            rest = &rest[c.len_utf8()..];
            continue;
        };
        out.extend(rest[..length].chars().map(|c| if c == '\n' { '\n' } else { ' ' }));
        rest = &rest[length..];
    }
    out
}

fn string_length(text: &str) -> usize {
    let mut escaped = false;
    for (at, c) in text.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return at + 1,
            _ => {}
        }
    }
    text.len()
}

/// The code without its `#[cfg(test)]` modules, line breaks kept; nothing of a file that is all test.
fn without_tests(code: &str) -> String {
    if code.contains("#![cfg(test)]") {
        return String::new();
    }
    let mut out = String::new();
    let mut rest = code;
    while let Some(at) = rest.find("#[cfg(test)]\nmod ") {
        out += &rest[..at];
        let end = module_end(&rest[at..]);
        out.extend(rest[at..at + end].chars().filter(|c| *c == '\n'));
        rest = &rest[at + end..];
    }
    out + rest
}

fn module_end(module: &str) -> usize {
    let mut depth = 0;
    for (at, c) in module.char_indices() {
        match c {
            ';' if depth == 0 => return at + 1,
            '{' => depth += 1,
            '}' if depth == 1 => return at + 1,
            '}' => depth -= 1,
            _ => {}
        }
    }
    module.len()
}

/// Every Rust file below a folder of the project; none where the folder is missing.
fn sources(folder: &str) -> Vec<Source> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut paths = Vec::new();
    walk(&root.join(folder), &mut paths);
    paths.sort();
    let read = |path: &PathBuf| {
        let text = fs::read_to_string(path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
        Source::of(&path.strip_prefix(root).unwrap_or(path).display().to_string(), &text)
    };
    paths.iter().map(read).collect()
}

fn walk(folder: &Path, paths: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if path.is_dir() && !path.ends_with("target") {
            walk(&path, paths);
        } else if path.extension().is_some_and(|end| end == "rs") {
            paths.push(path);
        }
    }
}

/// Where `word` stands in code, in the files that are not allowed to have it.
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
