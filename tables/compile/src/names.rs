//! `tables/names.toml` into `src/names.rs`: one enum per vocabulary, with pinned codes and ids.

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
pub(crate) struct Vocabulary {
    pub(crate) name: String,
    pub(crate) doc: String,
    pub(crate) entries: Vec<Entry>,
    /// Words that the trade writes before a spelling.
    #[serde(default)]
    prefixes: Vec<String>,
}

/// One name of a vocabulary.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Entry {
    pub(crate) code: u32,
    pub(crate) variant: String,
    pub(crate) id: String,
    pub(crate) doc: String,
    #[serde(default)]
    also: Vec<String>,
    /// Common names, which are refused with the id as advice.
    #[serde(default)]
    called: Vec<String>,
    /// The name of the Python exception without `Error`, where it is not that of the variant.
    pub(crate) python: Option<String>,
}

/// Reads `tables/names.toml` and refuses a name that stands twice and a code out of sequence.
pub(crate) fn read(root: &Path) -> Result<Vec<Vocabulary>, String> {
    let text = fs::read_to_string(root.join("tables/names.toml")).map_err(|e| format!("names.toml: {e}"))?;
    let file: File = toml::from_str(&text).map_err(|e| format!("names.toml: {e}"))?;
    file.enums.iter().try_for_each(Vocabulary::check)?;
    Ok(file.enums)
}

/// Writes `src/names.rs`.
pub(crate) fn compile(vocabularies: &[Vocabulary], out: &mut Output) -> Result<(), String> {
    let body: String = vocabularies.iter().map(|v| v.rust() + &v.meant()).collect();
    out.rust("src/names.rs", &format!("{HEADER}{MEANT}{body}"))
}

const HEADER: &str = "//! The shared vocabulary: every id and every pinned code.\n//!\n\
    //! Generated from tables/names.toml by tables/compile; edit the table, not this file.\n\n\
    fn spelled<T: Copy>(all: &[(T, &[&str])], text: &str) -> Option<T> {\n\
    all.iter().find(|(_, names)| names.iter().any(|name| name.eq_ignore_ascii_case(text))).map(|(member, _)| *member)\n}\n\n";

/// Used by every vocabulary with common names.
const MEANT: &str = r#"type Names<T> = [(T, &'static [&'static str])];

/// The member of which a text is a spelling or a common name, perhaps behind a prefix; only letters and digits count.
fn meant<T: Copy>(spellings: &Names<T>, called: &Names<T>, prefixes: &[&str], text: &str) -> Option<T> {
    let mut names = called.iter().chain(spellings);
    let found = names.find(|(_, names)| {
        let mut names = names.iter();
        names.any(|name| {
            letters(text).eq(letters(name))
                || prefixes.iter().any(|prefix| letters(text).eq(letters(prefix).chain(letters(name))))
        })
    });
    found.map(|(member, _)| *member)
}

fn letters(text: &str) -> impl Iterator<Item = char> {
    let letters = text.chars().filter(|letter| letter.is_alphanumeric());
    letters.flat_map(char::to_lowercase)
}

"#;

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

    /// An id is looked up by its code: with a match in its place, LLVM takes longer than anybody waits to compile a
    /// program that joins the ids of a whole vocabulary.
    fn rust(&self) -> String {
        let (name, doc) = (&self.name, &self.doc);
        let variants = self.each(|e| {
            let aliases: String = e.also.iter().map(|alias| format!(", alias = {alias:?}")).collect();
            format!(
                "/// {}\n#[cfg_attr(feature = \"serde\", serde(rename = {:?}{aliases}))]\n{} = {},\n",
                e.doc, e.id, e.variant, e.code
            )
        });
        let all = self.each(|e| format!("{name}::{},", e.variant));
        let docs = self.each(|e| format!("{name}::{} => {:?},", e.variant, e.doc));
        let codes = self.each(|e| format!("{} => Some({name}::{}),", e.code, e.variant));
        let spellings = self.each(|e| {
            let names: Vec<String> = e.spellings().map(|s| format!("{s:?}")).collect();
            format!("({name}::{}, &[{}]),", e.variant, names.join(", "))
        });
        let count = self.entries.len();
        let example = &self.entries[0];
        let (first, first_id, first_code) = (&example.variant, &example.id, example.code);
        let place = match first_code {
            0 => "self.code()".to_string(),
            code => format!("(self.code() - {code})"),
        };
        format!(
            "/// {doc}\n///\n/// ```\n/// use coldloop::{name};\n\
             /// assert_eq!({name}::{first}.id(), {first_id:?});\n\
             /// assert_eq!({name}::from_id({first_id:?}), Some({name}::{first}));\n\
             /// assert_eq!({name}::from_code({first_code}), Some({name}::{first}));\n/// ```\n\
             #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]\n\
             #[cfg_attr(feature = \"serde\", derive(serde::Serialize, serde::Deserialize))]\n\
             #[repr(u32)]\npub enum {name} {{\n{variants}}}\n\n\
             impl {name} {{\n\
             /// Every member, in the order of the table.\npub const ALL: [{name}; {count}] = [{all}];\n\n\
             const SPELLINGS: [({name}, &'static [&'static str]); {count}] = [{spellings}];\n\n\
             /// The id used in text.\npub const fn id(self) -> &'static str {{\n\
             Self::SPELLINGS[{place} as usize].1[0]\n}}\n\n\
             /// One sentence that says what it is.\npub const fn description(self) -> &'static str {{ match self {{ {docs} }} }}\n\n\
             /// The pinned code.\npub const fn code(self) -> u32 {{ self as u32 }}\n\n\
             /// The member with this code, or `None`.\npub const fn from_code(code: u32) -> Option<Self> {{ match code {{ {codes} _ => None }} }}\n\n\
             /// The member with this id or accepted spelling, whatever its case, or `None`.\n\
             pub fn from_id(id: &str) -> Option<Self> {{ spelled(&Self::SPELLINGS, id) }}\n\
             }}\n\n\
             impl core::fmt::Display for {name} {{\n\
             fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {{ f.write_str(self.id()) }}\n}}\n\n"
        )
    }

    /// What finds the member that a common name means; nothing for a vocabulary without common names.
    fn meant(&self) -> String {
        let called: Vec<&Entry> = self.entries.iter().filter(|entry| !entry.called.is_empty()).collect();
        let Some(example) = called.first() else {
            return String::new();
        };
        let (name, count) = (&self.name, called.len());
        let rows: String = called
            .iter()
            .map(|e| format!("({name}::{}, &{:?}),", e.variant, e.called))
            .collect();
        format!(
            "impl {name} {{\n\
             const CALLED: [({name}, &'static [&'static str]); {count}] = [{rows}];\n\n\
             /// The member that a text means, also by a common name or with capitals, spaces and strokes as they come:\n\
             /// [`{name}::from_id`] accepts none of these, and its refusal can say what to write. Source: common practice, no source.\n///\n\
             /// ```\n/// use coldloop::{name};\n\
             /// assert_eq!({name}::from_id({common:?}), None);\n\
             /// assert_eq!({name}::meant_by({common:?}), Some({name}::{variant}));\n\
             /// assert_eq!({name}::meant_by(\"colour\"), None);\n/// ```\n\
             pub fn meant_by(text: &str) -> Option<Self> {{ meant(&Self::SPELLINGS, &Self::CALLED, &{prefixes:?}, text) }}\n}}\n\n",
            common = example.called[0],
            variant = example.variant,
            prefixes = self.prefixes,
        )
    }

    fn each(&self, line: impl Fn(&Entry) -> String) -> String {
        self.entries.iter().map(line).collect()
    }
}

impl Entry {
    fn spellings(&self) -> impl Iterator<Item = &String> {
        std::iter::once(&self.id).chain(&self.also)
    }
}
