//! What a readings file holds before anyone asks what it means.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

/// A value of a file in TOML or JSON.
#[derive(Debug, PartialEq)]
pub(super) enum Value {
    /// What is written as `null`, and a number of TOML that is not finite.
    Null,
    /// `true` or `false`.
    Bool(bool),
    /// A number by its digits: whoever asks for it reads them, to the last bit.
    Number(String),
    /// A text.
    Text(String),
    /// A list.
    List(Vec<Value>),
    /// A table.
    Table(Entries),
}

/// The entries of a table in the order of the file. JSON may give a key twice; the last counts.
pub(super) type Entries = Vec<(String, Value)>;

impl Value {
    /// A number as its shortest digits.
    pub(super) fn of_float(value: f64) -> Self {
        if value.is_finite() {
            Value::Number(format!("{value:?}"))
        } else {
            Value::Null
        }
    }

    fn write(&self, out: &mut String) {
        match self {
            Value::Null => out.push_str("null"),
            Value::Bool(answer) => out.push_str(if *answer { "true" } else { "false" }),
            Value::Number(digits) => out.push_str(digits),
            Value::Text(text) => quote(text, out),
            Value::List(items) => {
                out.push('[');
                for (place, item) in items.iter().enumerate() {
                    out.push_str(if place > 0 { "," } else { "" });
                    item.write(out);
                }
                out.push(']');
            }
            Value::Table(entries) => {
                out.push('{');
                for (place, (key, value)) in entries.iter().enumerate() {
                    out.push_str(if place > 0 { "," } else { "" });
                    quote(key, out);
                    out.push(':');
                    value.write(out);
                }
                out.push('}');
            }
        }
    }

    /// The text, where it is one.
    pub(super) fn text(&self) -> Option<&str> {
        match self {
            Value::Text(text) => Some(text),
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::List(_) | Value::Table(_) => None,
        }
    }

    /// The number, where it is a finite one.
    pub(super) fn number(&self) -> Option<f64> {
        match self {
            Value::Number(digits) => digits.parse().ok().filter(|number: &f64| number.is_finite()),
            Value::Null | Value::Bool(_) | Value::Text(_) | Value::List(_) | Value::Table(_) => None,
        }
    }

    /// The whole number from 0, where it is written as one.
    pub(super) fn count(&self) -> Option<u32> {
        match self {
            Value::Number(digits) => digits.parse().ok(),
            Value::Null | Value::Bool(_) | Value::Text(_) | Value::List(_) | Value::Table(_) => None,
        }
    }
}

/// As JSON writes it.
impl fmt::Display for Value {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut text = String::new();
        self.write(&mut text);
        f.write_str(&text)
    }
}

/// Writes a text as JSON has it.
#[inline(never)]
pub(crate) fn quote(text: &str, out: &mut String) {
    out.push('"');
    if text.bytes().any(|byte| matches!(byte, b'"' | b'\\' | 0..=0x1f)) {
        for character in text.chars() {
            match character {
                '"' => out.push_str("\\\""),
                '\\' => out.push_str("\\\\"),
                '\n' => out.push_str("\\n"),
                '\t' => out.push_str("\\t"),
                '\u{0}'..='\u{1f}' => out.push_str(&format!("\\u{:04x}", u32::from(character))),
                _ => out.push(character),
            }
        }
    } else {
        out.push_str(text);
    }
    out.push('"');
}
