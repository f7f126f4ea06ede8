//! The sources of the house read as text: which room a file is in, and which other files it names.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// A Rust file: its path below the root, and its code with comments and string contents blanked.
pub(crate) struct Source {
    pub(crate) path: String,
    pub(crate) generated: bool,
    pub(crate) without_tests: String,
}

impl Source {
    pub(crate) fn of(path: &str, text: &str) -> Self {
        let generated = text.lines().take(6).any(|line| line.contains("Generated from"));
        Self {
            path: path.to_string(),
            generated,
            without_tests: without_tests(&blanked(text)),
        }
    }

    /// The first part of the path below `src`, without `.rs`.
    pub(crate) fn room(&self) -> String {
        let below = self.path.trim_start_matches("src/");
        let first = below.split('/').next().unwrap_or(below);
        first.trim_end_matches(".rs").to_string()
    }

    /// Each room named by a path that starts with `crate::`, with its line; a name of the crate's root counts as
    /// itself, and so is refused: inside the house a thing is named by its room.
    pub(crate) fn rooms_named(&self) -> Vec<(usize, String)> {
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
pub(crate) fn sources(folder: &str) -> Vec<Source> {
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

/// A path of names, from the root of the crate.
type Names = Vec<String>;

/// Each file that names another, and that other one: by a path that starts with `crate::` or `super::`, re-exports followed to
/// the file that has the name. What a file re-exports, it does not use.
pub(crate) fn names_between_files(sources: &[Source]) -> Vec<(String, String)> {
    let modules: BTreeMap<Names, &Source> = sources.iter().map(|source| (source.module(), source)).collect();
    let reexports: BTreeMap<(Names, String), Names> = sources.iter().flat_map(Source::reexports).collect();
    let mut found = BTreeSet::new();
    for source in sources {
        for path in source.paths_used() {
            if let Some(named) = file_of(&path, &modules, &reexports)
                && named.path != source.path
            {
                found.insert((source.path.clone(), named.path.clone()));
            }
        }
    }
    found.into_iter().collect()
}

/// The file in which a path from the root ends.
fn file_of<'a>(
    path: &[String],
    modules: &BTreeMap<Names, &'a Source>,
    reexports: &BTreeMap<(Names, String), Names>,
) -> Option<&'a Source> {
    let length = (0..=path.len())
        .rev()
        .find(|length| modules.contains_key(&path[..*length]))?;
    let (module, rest) = path.split_at(length);
    let led = rest
        .first()
        .and_then(|name| reexports.get(&(module.to_vec(), name.clone())));
    match led {
        // What is re-exported under its own path comes from another crate.
        Some(led) if led[..] != path[..length + 1] => file_of(&[led, &rest[1..]].concat(), modules, reexports),
        _ => modules.get(module).copied(),
    }
}

impl Source {
    /// The module that this file is, as a path from the root.
    fn module(&self) -> Names {
        let below = self.path.trim_start_matches("src/").trim_end_matches(".rs");
        let mut names: Names = below.split('/').map(str::to_string).collect();
        if matches!(names.last().map(String::as_str), Some("mod" | "lib")) {
            names.pop();
        }
        names
    }

    /// The paths from the root that this file uses, re-exports left out.
    fn paths_used(&self) -> Vec<Names> {
        let own = self.module();
        let mut found = Vec::new();
        let code = without_reexports(&self.without_tests);
        let bytes = code.as_bytes();
        for word in ["crate::", "super::"] {
            for (at, _) in code.match_indices(word) {
                let inside =
                    at > 0 && (bytes[at - 1] == b':' || bytes[at - 1] == b'_' || bytes[at - 1].is_ascii_alphanumeric());
                if !inside {
                    leaves(&code[at..], &[], &mut |path, _| found.extend(from_root(&own, path)));
                }
            }
        }
        found
    }

    /// The names that this module re-exports, and where each leads.
    fn reexports(&self) -> Vec<((Names, String), Names)> {
        let own = self.module();
        let mut found = Vec::new();
        for statement in reexports(&self.without_tests) {
            leaves(statement, &[], &mut |path, name| {
                let full = match path.first().map(String::as_str) {
                    Some("crate" | "super" | "self") => from_root(&own, path),
                    _ => Some([&own, path].concat()),
                };
                if let Some(full) = full {
                    found.push(((own.clone(), name.to_string()), full));
                }
            });
        }
        found
    }
}

/// A path as written in the module `own`, from the root; `None` where it leads out of the crate.
fn from_root(own: &[String], path: &[String]) -> Option<Names> {
    let mut at = own.to_vec();
    let mut rest = path;
    while let Some((first, others)) = rest.split_first() {
        match first.as_str() {
            "crate" => at.clear(),
            "super" => {
                at.pop()?;
            }
            "self" => {}
            _ => break,
        }
        rest = others;
    }
    Some([&at, rest].concat())
}

/// Every leaf of a path with lists in braces: the whole path, and the name under which it is known.
fn leaves(text: &str, before: &[String], each: &mut dyn FnMut(&[String], &str)) {
    let mut path = before.to_vec();
    let mut rest = text.trim_start();
    loop {
        if let Some(list) = rest.strip_prefix('{') {
            for item in items(list) {
                leaves(item, &path, each);
            }
            return;
        }
        let name = word(rest);
        rest = rest[name.len()..].trim_start();
        if name.is_empty() {
            break;
        }
        if name != "self" || path.is_empty() {
            path.push(name);
        }
        match rest.strip_prefix("::") {
            Some(further) => rest = further.trim_start(),
            None => break,
        }
    }
    let renamed = rest.strip_prefix("as ").map(word);
    let known_as = renamed.or(path.last().cloned()).unwrap_or_default();
    each(&path, &known_as);
}

/// The entries of a list, which starts after its opening brace.
fn items(list: &str) -> Vec<&str> {
    let (mut depth, mut start, mut found) = (0, 0, Vec::new());
    for (at, c) in list.char_indices() {
        match c {
            '{' => depth += 1,
            '}' if depth > 0 => depth -= 1,
            ',' | '}' if depth == 0 => {
                found.push(list[start..at].trim());
                start = at + 1;
                if c == '}' {
                    break;
                }
            }
            _ => {}
        }
    }
    found.retain(|item| !item.is_empty());
    found
}

/// The paths of the `pub use` statements of some code, without their semicolon.
fn reexports(code: &str) -> Vec<&str> {
    let lines = code.match_indices("pub").filter_map(|(at, _)| {
        let rest = &code[at + 3..];
        let rest = match rest.strip_prefix('(') {
            Some(inside) => &inside[inside.find(')')? + 1..],
            None => rest,
        };
        let path = rest.strip_prefix(" use ")?;
        path.split(';').next()
    });
    lines.collect()
}

/// The code without its `pub use` statements.
fn without_reexports(code: &str) -> String {
    let mut out = code.to_string();
    for statement in reexports(code) {
        out = out.replace(statement, "");
    }
    out
}
