//! Every public function of Rust is available from C and Python, or `tables/doors.csv` says why not; every function of C and
//! Python is in that table.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

struct Row {
    rust: String,
    c: Vec<String>,
    python: Vec<String>,
    why: String,
}

fn table() -> Vec<Row> {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path("tables/doors.csv")
        .unwrap();
    let words = |cell: &str| cell.split_whitespace().map(str::to_string).collect();
    let rows = reader.records().map(|row| {
        let row = row.unwrap();
        Row {
            rust: row[0].to_string(),
            c: words(&row[1]),
            python: words(&row[2]),
            why: row[3].to_string(),
        }
    });
    rows.collect()
}

fn files(folder: &str, ending: &str) -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut folders = vec![Path::new(folder).to_path_buf()];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            let name = path.to_str().unwrap().to_string();
            if path.is_dir() {
                folders.push(path);
            } else if name.ends_with(ending) {
                found.push((name.clone(), fs::read_to_string(&name).unwrap()));
            }
        }
    }
    found
}

/// The word that follows the first of these that the line begins with.
fn after<'a>(line: &'a str, starts: &[&str]) -> Option<&'a str> {
    let rest = starts.iter().find_map(|start| line.strip_prefix(start))?;
    let end = rest
        .find(|c: char| !c.is_alphanumeric() && c != '_')
        .unwrap_or(rest.len());
    Some(&rest[..end]).filter(|word| !word.is_empty())
}

/// The type whose methods begin at a line: the one behind `for`, or else the one behind `impl`.
fn implementing(line: &str) -> Option<&str> {
    let mut rest = line.strip_prefix("impl")?;
    if rest.starts_with('<') {
        rest = rest.split_once("> ")?.1;
    }
    let rest = rest.split_once(" for ").map_or(rest, |(_, rest)| rest).trim_start();
    after(rest, &[""])
}

/// The rooms that programs cannot name; the vocabulary can be named, by the crate.
fn private_rooms() -> BTreeSet<String> {
    let text = fs::read_to_string("src/lib.rs").unwrap();
    let rooms = text.lines().filter_map(|line| after(line, &["mod "]));
    let rooms: BTreeSet<String> = rooms
        .filter(|room| *room != "names" && *room != "pages")
        .map(str::to_string)
        .collect();
    assert!(rooms.contains("numerics"));
    rooms
}

/// `room::Type::function` of every public function. The vocabulary, which is generated, has its ids and codes at every door.
fn public_functions() -> BTreeSet<String> {
    let (private, mut all) = (private_rooms(), BTreeSet::new());
    for (path, text) in files("src", ".rs") {
        if path.contains("/tables/") || path == "src/names.rs" {
            continue;
        }
        let room = path["src/".len()..].split('/').next().unwrap().trim_end_matches(".rs");
        if private.contains(room) {
            continue;
        }
        let mut owner = String::new();
        for line in text.split("#[cfg(test)]\nmod tests {").next().unwrap().lines() {
            if let Some(name) = implementing(line) {
                owner = format!("{name}::");
            }
            if line.starts_with('}') {
                owner.clear();
            }
            if let Some(name) = after(line.trim_start(), &["pub fn ", "pub const fn "]) {
                all.insert(format!("{room}::{owner}{name}"));
            }
        }
    }
    assert!(all.len() > 300 && all.contains("circuit::at_rest") && all.contains("saturation::Charge::leaked"));
    all
}

fn covers(row: &Row, function: &str) -> bool {
    match row.rust.strip_suffix('*') {
        Some(start) => function.starts_with(start),
        None => row.rust == function,
    }
}

#[test]
fn every_public_function_is_in_the_table() {
    let (functions, rows) = (public_functions(), table());
    let none: Vec<&String> = functions
        .iter()
        .filter(|f| !rows.iter().any(|row| covers(row, f)))
        .collect();
    assert!(none.is_empty(), "without a row in tables/doors.csv: {none:#?}");
    let stale: Vec<&str> = rows
        .iter()
        .filter(|row| !functions.iter().any(|f| covers(row, f)))
        .map(|row| row.rust.as_str())
        .collect();
    assert!(stale.is_empty(), "of tables/doors.csv, no such function: {stale:#?}");
}

#[test]
fn what_is_missing_at_a_door_has_a_reason() {
    for row in table() {
        assert!(
            !row.why.is_empty() || !(row.c.is_empty() || row.python.is_empty()),
            "{}",
            row.rust
        );
        let is_sorted_in = row.rust.contains("::");
        assert!(is_sorted_in, "{} names no room", row.rust);
    }
}

#[test]
fn the_header_has_what_the_table_says_and_no_more() {
    let header = fs::read_to_string("bindings/c/coldloop.h").unwrap();
    let words: BTreeSet<&str> = header.split(|c: char| !c.is_alphanumeric() && c != '_').collect();
    let told: BTreeSet<String> = table().into_iter().flat_map(|row| row.c).collect();
    for name in &told {
        assert!(
            words.contains(name.as_str()),
            "tables/doors.csv names {name}, the header does not"
        );
    }
    // A function of the header is a word before a bracket in a line that begins with its type.
    let types = ["uint32_t ", "double ", "size_t ", "const char *"];
    let functions = header
        .lines()
        .filter(|line| line.contains('('))
        .filter_map(|line| after(line, &types));
    let mut count = 0;
    for function in functions {
        count += 1;
        // Functions of the vocabulary, of arrays of states, and of the library itself have no single counterpart in Rust.
        let is_own = function.ends_with("_name") || ["coldloop_version", "coldloop_refrigerants"].contains(&function);
        assert!(
            is_own || told.contains(function),
            "{function} of the header is not in tables/doors.csv"
        );
    }
    assert!(count > 80, "{count}");
}

#[test]
fn the_package_has_what_the_table_says_and_no_more() {
    let sources = files("bindings/python/python/coldloop", ".py");
    let all: String = sources.iter().map(|(_, text)| text.as_str()).collect();
    let init = &sources
        .iter()
        .find(|(path, _)| path.ends_with("__init__.py"))
        .unwrap()
        .1;
    // The names of `__all__` are in quotes, one in a line; other names are imported under another name.
    let exported: BTreeSet<&str> = init
        .lines()
        .filter_map(|line| match line.strip_prefix("from ") {
            Some(import) => import.split_once(" as ").map(|(_, name)| name),
            None => line.trim().strip_prefix('"')?.strip_suffix("\","),
        })
        .collect();
    let told: BTreeSet<String> = table().into_iter().flat_map(|row| row.python).collect();
    for name in &told {
        let (first, rest) = name.split_once('.').unwrap_or((name, ""));
        assert!(
            exported.contains(first) || all.contains(&format!("class {first}(")),
            "{name} is not exported"
        );
        let is_member = [format!("    def {rest}("), format!("    {rest}: ")]
            .iter()
            .any(|member| all.contains(member.as_str()));
        assert!(rest.is_empty() || is_member, "there is no {name}");
    }
    for name in exported {
        // The exceptions are those of the kinds of an error.
        let is_own =
            name.ends_with("Error") || ["__version__", "refrigerants", "quantities", "column_names"].contains(&name);
        let is_told = told.iter().any(|told| told.split('.').next() == Some(name));
        assert!(is_own || is_told, "{name} of the package is not in tables/doors.csv");
    }
}
