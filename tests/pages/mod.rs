//! The pages of the garage's readings files, for the tests of the page.

use coldloop::Language;
use coldloop::intake::{self, Visit};
use coldloop::report::{Units, Wording};
use std::fs;

/// The readings files of the garage that can be read, by name.
pub(crate) fn files() -> Vec<(String, String, Box<Visit>)> {
    let mut files = Vec::new();
    for entry in fs::read_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/readings")).unwrap() {
        let path = entry.unwrap().path();
        let text = fs::read_to_string(&path).unwrap();
        let name = path.file_stem().unwrap().to_str().unwrap().to_string();
        if !name.starts_with("bad") {
            let visit = intake::visit_from_toml(&text).unwrap();
            files.push((name, text, visit));
        }
    }
    assert!(files.len() > 20);
    files
}

pub(crate) fn wordings(file: &str) -> Vec<Wording> {
    let all = Language::ALL.into_iter().flat_map(|language| {
        [false, true].map(|details| Wording {
            units: Units::as_written(file),
            language,
            details,
        })
    });
    all.collect()
}

pub(crate) fn flat(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
