//! Every number of the tables has a source, every source that is cited is in the literature, and the literature holds
//! nothing that nobody cites.

#![allow(clippy::panic, clippy::unwrap_used, clippy::expect_used)] // tests fail by panicking

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use toml::{Table, Value};

/// Phrases that a source may use instead of naming a publication.
const WITHOUT: [&str; 10] = [
    "judgement",
    "common practice",
    "from memory",
    "physics",
    "by its meaning",
    "by their meaning",
    "computed",
    "derivation",
    "definition",
    "set by the vehicle",
];

fn tables() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tables")
}

/// The files below a folder of tables whose names end so, sorted.
fn files(folder: &str, end: &str) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = fs::read_dir(tables().join(folder))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|extension| extension == end))
        .collect();
    found.sort();
    assert!(!found.is_empty(), "{folder}");
    found
}

fn name(path: &Path) -> String {
    path.file_name().unwrap().to_string_lossy().into_owned()
}

/// The tables whose numbers need a source.
fn sourced() -> Vec<(String, Table)> {
    ["faults", "checks", "bands", "vehicle"]
        .into_iter()
        .flat_map(|folder| files(folder, "toml"))
        .map(|path| (name(&path), fs::read_to_string(&path).unwrap().parse().unwrap()))
        .collect()
}

/// Whether a text names a publication or says that there is none.
fn says_where_from(text: &str) -> bool {
    !cited(text).is_empty() || WITHOUT.iter().any(|word| text.contains(word))
}

/// The keys behind `@` in a text.
fn cited(text: &str) -> Vec<String> {
    text.split('@')
        .skip(1)
        .map(|rest| {
            let end = rest
                .find(|c: char| !c.is_ascii_alphanumeric() && c != '-')
                .unwrap_or(rest.len());
            rest[..end].trim_end_matches('-').to_string()
        })
        .filter(|key| !key.is_empty())
        .collect()
}

/// Numbers (also those written as text, to keep their digits) without a source, by their place in the file.
///
/// A number takes the source of its own table: `<key>_source`, else `source`; or, where that has none, of the tables
/// around it.
fn unsourced(place: &str, table: &Table, around: &dyn Fn(&str) -> bool, missing: &mut Vec<String>) {
    let own = |key: &str| table.get(key).and_then(Value::as_str).is_some_and(says_where_from);
    let here = |key: &str| {
        // A row's source speaks of its effect, not of these.
        let apart = APART.iter().any(|(apart, _)| *apart == key);
        let general = if table.contains_key("source") && !apart {
            own("source")
        } else {
            around(key)
        };
        if table.contains_key(&format!("{key}_source")) {
            own(&format!("{key}_source"))
        } else {
            general
        }
    };
    for (key, value) in table {
        let place = format!("{place}.{key}");
        each(&place, key, value, &here, missing);
    }
}

fn each(place: &str, key: &str, value: &Value, here: &dyn Fn(&str) -> bool, missing: &mut Vec<String>) {
    match value {
        Value::Table(table) => unsourced(place, table, here, missing),
        Value::Array(values) => {
            for (index, value) in values.iter().enumerate() {
                each(&format!("{place}[{index}]"), key, value, here, missing);
            }
        }
        Value::Integer(_) | Value::Float(_) if !here(key) => missing.push(place.to_string()),
        Value::String(text) if text.parse::<f64>().is_ok() && !here(key) => missing.push(place.to_string()),
        Value::String(_) | Value::Integer(_) | Value::Float(_) | Value::Boolean(_) | Value::Datetime(_) => {}
    }
}

/// Numbers whose source a file states once, under which key. A severity and its weight share one source, and so do the two numbers
/// of a system at rest.
const APART: [(&str, &str); 5] = [
    ("severity", "severity_source"),
    ("weight", "severity_source"),
    ("no_change", "no_change_source"),
    ("rest_k", "rest_source"),
    ("rest_spread_k", "rest_source"),
];

/// The sources that a file states for all its numbers of one name.
fn of_file(table: &Table) -> impl Fn(&str) -> bool {
    let stated: BTreeMap<&str, &str> = APART
        .into_iter()
        .filter(|(_, source)| table.get(*source).and_then(Value::as_str).is_some_and(says_where_from))
        .collect();
    move |key| stated.contains_key(key)
}

fn without_source(table: &Table) -> Vec<String> {
    let mut missing = Vec::new();
    unsourced("", table, &of_file(table), &mut missing);
    missing
}

#[test]
fn every_number_has_a_source() {
    let mut count = 0;
    for (file, table) in sourced() {
        let missing = without_source(&table);
        assert!(missing.is_empty(), "{file}: no source for {}", missing.join(", "));
        count += 1;
    }
    assert!(count >= 9, "{count} files");
}

/// The search itself finds a number whose source was taken away, or does not say where it comes from.
#[test]
fn a_number_without_a_source_is_found() {
    let (_, faults) = sourced().into_iter().find(|(file, _)| file == "charge.toml").unwrap();
    for key in ["severity_source", "no_change_source"] {
        let mut without = faults.clone();
        without.remove(key).unwrap();
        assert!(!without_source(&without).is_empty(), "{key}");
    }
    let table: Table = "[[row]]\nvalue = 3.0\nsource = 'somebody told so'\n".parse().unwrap();
    assert_eq!(without_source(&table), [".row[0].value"]);
    let table: Table = "[[row]]\nvalue = '3'\n".parse().unwrap();
    assert_eq!(without_source(&table), [".row[0].value"]);
    assert!(without_source(&"[[row]]\nvalue = 3\nsource = '@Darr1992'\n".parse().unwrap()).is_empty());
}

/// A test of the project is no source: the tables are what the tests judge.
#[test]
fn no_table_cites_a_test_of_the_project() {
    for (file, table) in sourced() {
        for text in texts(&Value::Table(table)) {
            assert!(!text.contains("tests/"), "{file}: {text}");
        }
    }
}

/// A source without a title is "from memory", and is not cited vaguely, as "one maker" or "a page".
#[test]
fn unnamed_sources_are_from_memory() {
    for (file, table) in sourced() {
        for text in texts(&Value::Table(table)) {
            let unnamed = ["one maker", "a maker", "makers' "];
            if unnamed.iter().any(|words| text.contains(words)) {
                assert!(text.contains("from memory"), "{file}: {text}");
            }
        }
    }
}

fn texts(value: &Value) -> Vec<String> {
    match value {
        Value::Table(table) => table.values().flat_map(texts).collect(),
        Value::Array(values) => values.iter().flat_map(texts).collect(),
        Value::String(text) => vec![text.clone()],
        Value::Integer(_) | Value::Float(_) | Value::Boolean(_) | Value::Datetime(_) => Vec::new(),
    }
}

/// One entry of `literature.bib`: its fields by name.
type Entry = BTreeMap<String, String>;

fn literature() -> BTreeMap<String, Entry> {
    let text = fs::read_to_string(tables().join("literature.bib")).unwrap();
    let mut entries = BTreeMap::new();
    let mut key = String::new();
    for line in text.lines() {
        if let Some((_, rest)) = line.strip_prefix('@').and_then(|rest| rest.split_once('{')) {
            key = rest.trim_end_matches(',').to_string();
            assert!(
                entries.insert(key.clone(), Entry::new()).is_none(),
                "{key} stands twice"
            );
        } else if let Some((field, value)) = line.trim().split_once(" = {") {
            let value = value
                .trim_end_matches(',')
                .trim_end_matches('}')
                .trim_start_matches('{');
            entries
                .get_mut(&key)
                .unwrap()
                .insert(field.to_string(), value.to_string());
        }
    }
    assert!(entries.len() > 100, "{}", entries.len());
    entries
}

/// The rows of a table of evidence, by column.
fn rows(path: &Path) -> Vec<BTreeMap<String, String>> {
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(path).unwrap();
    let header = reader.headers().unwrap().clone();
    reader
        .records()
        .map(|row| {
            let row = row.unwrap();
            header
                .iter()
                .map(str::to_string)
                .zip(row.iter().map(str::to_string))
                .collect()
        })
        .collect()
}

/// Every key that a table cites, with the file.
fn citations() -> Vec<(String, String)> {
    let mut found = Vec::new();
    for (file, table) in sourced() {
        for text in texts(&Value::Table(table)) {
            found.extend(cited(&text).into_iter().map(|key| (file.clone(), key)));
        }
    }
    for path in files("evidence", "csv") {
        let sources = rows(&path).into_iter().map(|row| row["source"].clone());
        found.extend(
            sources
                .filter(|source| source != "from memory")
                .map(|key| (name(&path), key)),
        );
    }
    found
}

#[test]
fn what_is_cited_is_in_the_literature() {
    let literature = literature();
    let citations = citations();
    assert!(citations.len() > 400, "{}", citations.len());
    for (file, key) in citations {
        assert!(literature.contains_key(&key), "{file} cites {key}");
    }
}

/// An equation of state is cited by the file of its refrigerant: by its DOI, or by authors and year in the first line.
#[test]
fn the_literature_holds_nothing_that_nobody_cites() {
    let cited: BTreeSet<String> = citations().into_iter().map(|(_, key)| key).collect();
    let papers: Vec<String> = files("refrigerants", "toml")
        .iter()
        .map(|path| fs::read_to_string(path).unwrap())
        .collect();
    for (key, entry) in literature() {
        let by_doi = entry
            .get("doi")
            .is_some_and(|doi| papers.iter().any(|paper| paper.contains(doi)));
        let year = entry.get("year").cloned().unwrap_or_default();
        let family = entry.get("author").map(|author| {
            let first = author.split(" and ").next().unwrap_or_default();
            first.rsplit(". ").next().unwrap_or_default().to_string()
        });
        let by_name = entry.contains_key("note")
            && family.is_some_and(|family| papers.iter().any(|p| p.contains(&family) && p.contains(&year)));
        assert!(cited.contains(&key) || by_doi || by_name, "nobody cites {key}");
    }
}

/// The columns that a reader of the evidence needs.
#[test]
fn evidence_is_well_formed() {
    let literature = literature();
    let mut ids = BTreeSet::new();
    let mut count = 0;
    for path in files("evidence", "csv") {
        for row in rows(&path) {
            let id = &row["id"];
            assert!(ids.insert(id.clone()), "{id} stands twice");
            let status = row["status"].trim_start_matches("single case, ");
            assert!(
                ["read", "read (excerpt)", "read (abstract)", "recalled"].contains(&status),
                "{id}: {status}"
            );
            if row["source"] == "from memory" {
                assert_eq!(status, "recalled", "{id}");
            } else {
                assert_eq!(row["kind"], literature[&row["source"]]["keywords"], "{id}");
                assert!(!row["voice"].is_empty(), "{id}");
            }
            let [low, high] = ["low", "high"].map(|end| {
                let cell = row.get(end).or_else(|| row.get(&format!("change_{end}"))).unwrap();
                (!cell.is_empty()).then(|| cell.parse::<f64>().unwrap())
            });
            let says = ["says", "note"]
                .iter()
                .any(|column| row.get(*column).is_some_and(|text| !text.is_empty()));
            assert!(low.is_some() || high.is_some() || says, "{id} says nothing");
            assert!(
                low.zip(high).is_none_or(|(low, high)| low <= high),
                "{id}: {low:?} to {high:?}"
            );
            assert!(low.or(high).is_none() || !row["unit"].is_empty(), "{id} has no unit");
            for fault in [row.get("fault"), row.get("also")].into_iter().flatten() {
                for fault in fault.split(' ').filter(|fault| !fault.is_empty()) {
                    assert!(coldloop::Fault::from_id(fault).is_some(), "{id}: {fault}");
                }
            }
            if let Some(refrigerant) = row.get("refrigerant").filter(|text| !text.is_empty()) {
                assert!(
                    coldloop::Refrigerant::from_id(refrigerant).is_some(),
                    "{id}: {refrigerant}"
                );
            }
            count += 1;
        }
    }
    assert!(count > 300, "{count} facts");
}

/// Makers and their vehicles are named in the literature, where they are needed to find a source, and nowhere else.
#[test]
fn no_maker_is_named_beside_the_literature() {
    let literature = literature();
    let makers: BTreeSet<String> = literature
        .values()
        .filter(|entry| entry.get("keywords").is_some_and(|kind| kind.starts_with("maker's")))
        .filter_map(|entry| entry.get("organization"))
        .flat_map(|maker| maker.split([' ', '/', '(']).map(str::to_string).collect::<Vec<_>>())
        .filter(|word| word.len() > 3 && word.starts_with(|c: char| c.is_uppercase()))
        .filter(|word| !["Motor", "Motors", "Company", "Corporation", "General"].contains(&word.as_str()))
        .collect();
    assert!(makers.len() > 10, "{makers:?}");
    for path in ["evidence", "atlas"]
        .into_iter()
        .flat_map(|folder| [files(folder, "csv"), files(folder, "md")].concat())
    {
        let text = fs::read_to_string(&path).unwrap();
        for maker in &makers {
            assert!(!text.contains(maker.as_str()), "{} names {maker}", name(&path));
        }
    }
}
