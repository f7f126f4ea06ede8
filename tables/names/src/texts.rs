//! `tables/texts.toml` into `src/report/texts.rs`: the texts of the page in every language.

use crate::names::Vocabulary;
use crate::output::Output;
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

type Rows<T> = BTreeMap<String, T>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    page: Rows<Text>,
    names: Rows<Rows<Text>>,
    severity: Rows<Text>,
    seen: Rows<Answers>,
    none_of: Rows<Text>,
    short: Rows<Rows<Text>>,
    sentences: Rows<Rows<String>>,
    repairs: Rows<String>,
    repairs_r744: Rows<String>,
}

/// One text.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Text {
    en: String,
    es: String,
}

/// What was seen, for either answer.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Answers {
    yes: Text,
    no: Text,
}

/// Reads `tables/texts.toml`, refuses what is missing in a language, and writes `src/report/texts.rs`.
pub(crate) fn compile(root: &Path, vocabularies: &[Vocabulary], out: &mut Output) -> Result<(), String> {
    let text = fs::read_to_string(root.join("tables/texts.toml")).map_err(|e| format!("texts.toml: {e}"))?;
    let file: File = toml::from_str(&text).map_err(|e| format!("texts.toml: {e}"))?;
    let of = |name: &str| {
        let found = vocabularies.iter().find(|vocabulary| vocabulary.name == name);
        found.ok_or(format!("texts.toml: there is no vocabulary {name}"))
    };
    let mut source = HEADER.to_string();
    source += &page(&file.page)?;
    for (name, texts) in &file.names {
        source += &member(of(name)?, texts, "Named", "name")?;
    }
    for (name, texts) in &file.short {
        source += &member(of(name)?, texts, "Short", "short")?;
    }
    for (name, texts) in &file.sentences {
        source += &sentences(of(name)?, texts)?;
    }
    let fault = of("Fault")?;
    source += &optional(
        fault,
        &file.severity,
        "severity",
        "The severity of a fault in its own measure",
    )?;
    source += &optional(
        of("Check")?,
        &file.none_of,
        "none_of",
        "What a check finds that answers none of its questions with yes",
    )?;
    let mut answers = [Rows::new(), Rows::new()];
    for (id, both) in file.seen {
        answers[0].insert(id.clone(), both.no);
        answers[1].insert(id, both.yes);
    }
    let [no, yes] = answers;
    let observation = of("Observation")?;
    source += &format!(
        "/// What was seen.\npub(super) fn seen(question: Observation, yes: bool, language: Language) -> &'static str {{\n\
         let both = if yes {{ match question {{ {} }} }} else {{ match question {{ {} }} }};\nboth[column(language)]\n}}\n\n",
        arms(observation, &yes)?,
        arms(observation, &no)?
    );
    let mut of_r744 = file.repairs.clone();
    known(fault, file.repairs_r744.keys())?;
    of_r744.extend(file.repairs_r744);
    source += &format!(
        "/// What to do to repair a fault, in Spanish.\npub(super) const fn repair_in_spanish(fault: Fault, r744: bool) -> &'static str {{\n\
         if r744 {{ match fault {{ {} }} }} else {{ match fault {{ {} }} }}\n}}\n",
        spanish(fault, &of_r744)?,
        spanish(fault, &file.repairs)?
    );
    out.rust("src/report/texts.rs", &source)
}

const HEADER: &str = "//! The texts of the page in every language.\n//!\n\
    //! Generated from tables/texts.toml by tables/names; edit the table, not this file.\n\n\
    use super::language::column;\n\
    use crate::names::*;\n\n\
    /// What the page calls a member of a vocabulary.\n\
    pub(super) trait Named {\n/// Its name.\nfn name(self, language: Language) -> &'static str;\n}\n\n\
    /// What the page says in a few words.\n\
    pub(super) trait Short {\n/// A few words.\nfn short(self, language: Language) -> &'static str;\n}\n\n\
    /// What the page says in a sentence.\n\
    pub(super) trait Sentence {\n/// A sentence.\nfn sentence(self, language: Language) -> &'static str;\n}\n\n";

/// The words of the page itself, as an enum.
fn page(texts: &Rows<Text>) -> Result<String, String> {
    texts.iter().try_for_each(|(key, text)| text.check(key))?;
    let variants: Vec<String> = texts.keys().map(|key| camel(key)).collect();
    let docs: String = texts
        .values()
        .zip(&variants)
        .map(|(text, variant)| format!("/// {}\n{variant},\n", text.en))
        .collect();
    let rows: String = texts
        .values()
        .zip(&variants)
        .map(|(text, variant)| format!("Text::{variant} => {},\n", text.both()))
        .collect();
    Ok(format!(
        "/// A text of the page.\n#[derive(Clone, Copy, Debug, PartialEq, Eq)]\npub(super) enum Text {{\n{docs}}}\n\n\
         impl Text {{\n/// In a language.\npub(super) const fn of(self, language: Language) -> &'static str {{\n\
         let both = match self {{ {rows} }};\nboth[column(language)]\n}}\n}}\n\n"
    ))
}

/// A text for every member of a vocabulary.
fn member(vocabulary: &Vocabulary, texts: &Rows<Text>, of: &str, function: &str) -> Result<String, String> {
    Ok(format!(
        "impl {of} for {name} {{\nfn {function}(self, language: Language) -> &'static str {{\n\
         let both = match self {{ {arms} }};\nboth[column(language)]\n}}\n}}\n\n",
        name = vocabulary.name,
        arms = arms(vocabulary, texts)?
    ))
}

/// A text for some members of a vocabulary.
fn optional(vocabulary: &Vocabulary, texts: &Rows<Text>, function: &str, doc: &str) -> Result<String, String> {
    known(vocabulary, texts.keys())?;
    let mut arms = String::new();
    let mut others = Vec::new();
    for entry in &vocabulary.entries {
        let member = format!("{}::{}", vocabulary.name, entry.variant);
        match texts.get(&entry.id) {
            Some(text) => {
                text.check(&entry.id)?;
                arms += &format!("{member} => {},\n", text.both());
            }
            None => others.push(member),
        }
    }
    Ok(format!(
        "/// {doc}; `None` where there is none.\n\
         pub(super) const fn {function}(of: {}, language: Language) -> Option<&'static str> {{\n\
         let both = match of {{ {arms} {} => return None, }};\nSome(both[column(language)])\n}}\n\n",
        vocabulary.name,
        others.join(" | ")
    ))
}

/// The sentences of a vocabulary: in English its own descriptions.
fn sentences(vocabulary: &Vocabulary, texts: &Rows<String>) -> Result<String, String> {
    Ok(format!(
        "impl Sentence for {} {{\nfn sentence(self, language: Language) -> &'static str {{\nmatch language {{\n\
         Language::English => self.description(),\nLanguage::Spanish => match self {{ {} }},\n}}\n}}\n}}\n\n",
        vocabulary.name,
        spanish(vocabulary, texts)?
    ))
}

fn arms(vocabulary: &Vocabulary, texts: &Rows<Text>) -> Result<String, String> {
    known(vocabulary, texts.keys())?;
    let arm = |entry: &crate::names::Entry| {
        let text = texts.get(&entry.id).ok_or(missing(vocabulary, &entry.id))?;
        text.check(&entry.id)?;
        Ok(format!("{}::{} => {},\n", vocabulary.name, entry.variant, text.both()))
    };
    vocabulary.entries.iter().map(arm).collect()
}

fn spanish(vocabulary: &Vocabulary, texts: &Rows<String>) -> Result<String, String> {
    known(vocabulary, texts.keys())?;
    let arm = |entry: &crate::names::Entry| {
        let text = texts.get(&entry.id).filter(|text| !text.trim().is_empty());
        let text = text.ok_or(missing(vocabulary, &entry.id))?;
        Ok(format!("{}::{} => {text:?},\n", vocabulary.name, entry.variant))
    };
    vocabulary.entries.iter().map(arm).collect()
}

fn missing(vocabulary: &Vocabulary, id: &str) -> String {
    format!("texts.toml: {} {id} has no text", vocabulary.name)
}

/// Refuses a key that is no id.
fn known<'a>(vocabulary: &Vocabulary, mut keys: impl Iterator<Item = &'a String>) -> Result<(), String> {
    let unknown = keys.find(|key| vocabulary.entries.iter().all(|entry| entry.id != **key));
    unknown.map_or(Ok(()), |key| {
        Err(format!("texts.toml: {} has no {key}", vocabulary.name))
    })
}

impl Text {
    /// Refuses an empty text and placeholders that differ between the languages.
    fn check(&self, key: &str) -> Result<(), String> {
        if self.en.trim().is_empty() || self.es.trim().is_empty() {
            return Err(format!("texts.toml: {key} is empty"));
        }
        if placeholders(&self.en) != placeholders(&self.es) {
            return Err(format!("texts.toml: the placeholders of {key} differ"));
        }
        Ok(())
    }

    fn both(&self) -> String {
        format!("[{:?}, {:?}]", self.en, self.es)
    }
}

fn placeholders(text: &str) -> BTreeSet<&str> {
    let opened = text.split('{').skip(1);
    opened
        .filter_map(|rest| rest.split_once('}'))
        .map(|(name, _)| name)
        .collect()
}

fn camel(key: &str) -> String {
    let words = key.split('-');
    words
        .map(|word| {
            let (first, rest) = word.split_at(1);
            first.to_uppercase() + rest
        })
        .collect()
}
