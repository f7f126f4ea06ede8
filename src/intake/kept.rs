//! Values of a file that are kept as they are, and written again as TOML or JSON.

use super::mistakes::Refused;
use super::node::{Content, Node};
use super::tree::Entry;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// A value, independent of the text that it was read from.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Kept {
    YesOrNo(bool),
    Number(f64),
    Count(u64),
    Text(String),
    List(Vec<Kept>),
    Table(Vec<(String, Kept)>),
}

impl Kept {
    /// The value of an entry; a date of TOML is kept as its text.
    ///
    /// Errors: a mistake for `null`, which TOML does not have, and for a number that is not finite, which JSON does not have.
    pub(super) fn of(entry: &Entry<'_>) -> Result<Self, Refused> {
        let wrong = |kind: ErrorKind| entry.refuse(Error::of(kind, Quantity::Name), "leave such an entry out");
        Self::of_node(entry.node()).map_err(wrong)
    }

    fn of_node(node: &Node<'_>) -> Result<Self, ErrorKind> {
        Ok(match &node.content {
            Content::Null => return Err(ErrorKind::Missing),
            Content::YesOrNo(answer) => Self::YesOrNo(*answer),
            Content::Number(number) => match number.count {
                Some(count) => Self::Count(count),
                None if number.value.is_finite() => Self::Number(number.value),
                None => return Err(ErrorKind::NotFinite),
            },
            Content::Text(text) => Self::Text(text.to_string()),
            Content::List(items) => Self::List(items.iter().map(Self::of_node).collect::<Result<_, _>>()?),
            Content::Table(entries) => {
                let entries = entries.iter();
                let kept = entries.map(|named| Ok((named.key.to_string(), Self::of_node(&named.node)?)));
                // Sorted, so that the order of the text does not matter.
                let mut kept = kept.collect::<Result<Vec<_>, ErrorKind>>()?;
                kept.sort_by(|one, other| one.0.cmp(&other.0));
                Self::Table(kept)
            }
        })
    }

    /// Writes it on one line; JSON and TOML differ in `equals` and in the keys of tables.
    fn write(&self, out: &mut String, equals: &str, key: fn(&str) -> String) {
        let all = |out: &mut String, ends: [char; 2], each: &mut dyn FnMut(&mut String, usize), count: usize| {
            out.push(ends[0]);
            for at in 0..count {
                if at > 0 {
                    out.push_str(", ");
                }
                each(out, at);
            }
            out.push(ends[1]);
        };
        match self {
            Self::YesOrNo(answer) => out.push_str(&answer.to_string()),
            // The fewest digits that read back as the same bits.
            Self::Number(number) => out.push_str(&format!("{number:?}")),
            Self::Count(count) => out.push_str(&count.to_string()),
            Self::Text(text) => out.push_str(&quoted(text)),
            Self::List(items) => all(
                out,
                ['[', ']'],
                &mut |out, at| items[at].write(out, equals, key),
                items.len(),
            ),
            Self::Table(entries) => all(
                out,
                ['{', '}'],
                &mut |out, at| {
                    let (name, value) = &entries[at];
                    out.push_str(&key(name));
                    out.push_str(equals);
                    value.write(out, equals, key);
                },
                entries.len(),
            ),
        }
    }

    /// A JSON object on one line.
    pub(super) fn json(&self) -> String {
        let mut out = String::new();
        self.write(&mut out, ": ", quoted);
        out
    }

    /// A file in TOML: the entries of a table, its tables under headers of their own.
    pub(super) fn toml(&self) -> String {
        let Self::Table(entries) = self else { return self.json() };
        let (mut head, mut tables) = (String::new(), String::new());
        let line = |out: &mut String, (name, value): &(String, Self)| {
            out.push_str(&bare(name));
            out.push_str(" = ");
            value.write(out, " = ", bare);
            out.push('\n');
        };
        for entry in entries {
            match entry {
                (name, Self::Table(inner)) => {
                    tables.push_str(&format!("\n[{}]\n", bare(name)));
                    inner.iter().for_each(|entry| line(&mut tables, entry));
                }
                (name, Self::List(rows))
                    if !rows.is_empty() && rows.iter().all(|row| matches!(row, Self::Table(_))) =>
                {
                    for row in rows {
                        tables.push_str(&format!("\n[[{}]]\n", bare(name)));
                        if let Self::Table(inner) = row {
                            inner.iter().for_each(|entry| line(&mut tables, entry));
                        }
                    }
                }
                _ => line(&mut head, entry),
            }
        }
        head + &tables
    }
}

/// A text between quotes, with the escapes that JSON and TOML share.
fn quoted(text: &str) -> String {
    let mut out = String::from('"');
    for c in text.chars() {
        match c {
            '"' | '\\' => {
                out.push('\\');
                out.push(c);
            }
            '\n' => out.push_str("\\n"),
            c if c < ' ' || c == '\u{7f}' => out.push_str(&format!("\\u{:04x}", c as u32)),
            c => out.push(c),
        }
    }
    out.push('"');
    out
}

/// A key of TOML, without quotes where TOML allows it.
fn bare(key: &str) -> String {
    let plain = !key.is_empty() && key.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'_' || b == b'-');
    if plain { key.to_string() } else { quoted(key) }
}
