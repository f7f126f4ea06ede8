//! `tables/names.toml` into `src/names/table.rs`: one vocabulary after the other, with pinned codes and ids.

use crate::output::Output;
use serde::Deserialize;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

#[derive(Deserialize)]
struct File {
    #[serde(rename = "enum")]
    enums: Vec<Vocabulary>,
}

/// One vocabulary of the table.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Vocabulary {
    /// Its name in Rust.
    pub name: String,
    /// What stands above it.
    pub doc: String,
    /// Its names, in the order of their codes.
    pub entries: Vec<Entry>,
    /// Words that the trade writes before a spelling.
    #[serde(default)]
    prefixes: Vec<String>,
}

/// One name of a vocabulary.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// The number that stands for it in C, pinned.
    pub code: u32,
    /// Its name in Rust.
    pub variant: String,
    /// Its name in text.
    pub id: String,
    /// What stands above it.
    pub doc: String,
    #[serde(default)]
    also: Vec<String>,
    /// Common names, which are refused with the id as advice.
    #[serde(default)]
    called: Vec<String>,
    /// The name of the Python exception without `Error`, where it is not that of the variant.
    pub python: Option<String>,
}

/// Reads `tables/names.toml` and refuses a name that stands twice and a code out of sequence.
///
/// Errors: a sentence that names the file and what is wrong with it.
pub fn read(root: &Path) -> Result<Vec<Vocabulary>, String> {
    let text = fs::read_to_string(root.join("tables/names.toml")).map_err(|e| format!("names.toml: {e}"))?;
    let file: File = toml::from_str(&text).map_err(|e| format!("names.toml: {e}"))?;
    file.enums.iter().try_for_each(Vocabulary::check)?;
    Ok(file.enums)
}

/// Writes `src/names/table.rs`.
pub(crate) fn compile(vocabularies: &[Vocabulary], out: &mut Output) -> Result<(), String> {
    let body: String = vocabularies.iter().map(|v| v.rust() + &v.meant()).collect();
    out.rust("src/names/table.rs", &format!("{HEADER}{}", body.trim_end()))
}

const HEADER: &str = "//! The words of every vocabulary.\n//!\n\
    //! Generated from tables/names.toml by tables/names; edit the table, not this file.\n\n";

impl Vocabulary {
    fn check(&self) -> Result<(), String> {
        let mut names = BTreeSet::new();
        for (code, entry) in (self.entries[0].code..).zip(&self.entries) {
            if entry.code != code {
                return Err(format!(
                    "{}: {} has code {}, but {code} follows",
                    self.name, entry.id, entry.code
                ));
            }
            for name in entry.spellings() {
                if !names.insert(name.to_lowercase()) {
                    return Err(format!("{}: {name} stands twice", self.name));
                }
            }
        }
        for name in self.entries.iter().flat_map(|entry| &entry.called) {
            if !names.insert(name.to_lowercase()) {
                return Err(format!("{}: {name} stands twice", self.name));
            }
        }
        Ok(())
    }

    /// The vocabulary for the macro of `src/names.rs`.
    fn rust(&self) -> String {
        let (name, doc, count) = (&self.name, &self.doc, self.entries.len());
        let members: String = self
            .entries
            .iter()
            .map(|e| {
                let names: Vec<&String> = e.spellings().collect();
                format!("        {} = {}, {names:?}, {:?};\n", e.variant, e.code, e.doc)
            })
            .collect();
        let example = &self.entries[0];
        let (first, first_id, first_code) = (&example.variant, &example.id, example.code);
        format!(
            "vocabulary! {{\n    /// {doc}\n    ///\n    /// ```\n    /// use coldloop::{name};\n    \
             /// assert_eq!({name}::{first}.id(), {first_id:?});\n    \
             /// assert_eq!({name}::from_id({first_id:?}), Some({name}::{first}));\n    \
             /// assert_eq!({name}::from_code({first_code}), Some({name}::{first}));\n    /// ```\n    \
             {name}[{count}] {{\n{members}    }}\n}}\n\n"
        )
    }

    /// The common names of a vocabulary for the macro of `src/names.rs`; nothing where there are none.
    fn meant(&self) -> String {
        let called: Vec<&Entry> = self.entries.iter().filter(|entry| !entry.called.is_empty()).collect();
        let Some(example) = called.first() else {
            return String::new();
        };
        let (name, count) = (&self.name, called.len());
        let rows: String = called
            .iter()
            .map(|e| format!("        {}: {:?};\n", e.variant, e.called))
            .collect();
        format!(
            "common_names! {{\n    \
             /// The member that a text means, also by a common name or with capitals, spaces and strokes as they come:\n    \
             /// [`{name}::from_id`] accepts none of these, and its refusal can say what to write. Source: common practice, no source.\n    ///\n    \
             /// ```\n    /// use coldloop::{name};\n    \
             /// assert_eq!({name}::from_id({common:?}), None);\n    \
             /// assert_eq!({name}::meant_by({common:?}), Some({name}::{variant}));\n    \
             /// assert_eq!({name}::meant_by(\"colour\"), None);\n    /// ```\n    \
             {name}[{count}], {prefixes:?} {{\n{rows}    }}\n}}\n\n",
            common = example.called[0],
            variant = example.variant,
            prefixes = self.prefixes,
        )
    }
}

impl Entry {
    fn spellings(&self) -> impl Iterator<Item = &String> {
        std::iter::once(&self.id).chain(&self.also)
    }
}
