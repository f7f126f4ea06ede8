//! A walk over the parsed file that remembers where it is and which keys it has not understood.
//!
//! What is called from every entry is kept out of line: it need not be fast, and it would fill the library.

use super::refusal::Refusal;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use serde_json::{Map, Value};

/// A table of the file with its dotted path.
pub(super) struct Table<'a> {
    path: String,
    entries: &'a Map<String, Value>,
}

/// One entry of a table: its dotted key and its value.
#[derive(Clone)]
pub(super) struct Entry<'a> {
    pub(super) key: String,
    pub(super) value: &'a Value,
}

impl<'a> Table<'a> {
    pub(super) fn root(value: &'a Value) -> Result<Self, Refusal> {
        match value {
            Value::Object(entries) => Ok(Self {
                path: String::new(),
                entries,
            }),
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) | Value::Array(_) => Err(
                Refusal::syntax("a readings file has the tables system, conditions, readings and observations"),
            ),
        }
    }

    /// Refuses a key that is none of `known`, naming those.
    #[inline(never)]
    pub(super) fn only(&self, known: &[&str]) -> Result<(), Refusal> {
        match self.entries.iter().find(|(key, _)| !known.contains(&key.as_str())) {
            None => Ok(()),
            Some((key, value)) => Err(Entry {
                key: self.key(key),
                value,
            }
            .refuse(
                Error::of(ErrorKind::UnknownName, Quantity::Name),
                &format!("known here: {}", known.join(", ")),
            )),
        }
    }

    #[inline(never)]
    pub(super) fn get(&self, key: &str) -> Option<Entry<'a>> {
        self.entries.get(key).map(|value| Entry {
            key: self.key(key),
            value,
        })
    }

    #[inline(never)]
    pub(super) fn require(&self, key: &str, quantity: Quantity, advice: &str) -> Result<Entry<'a>, Refusal> {
        self.get(key)
            .ok_or_else(|| Refusal::missing(&self.key(key), quantity, advice))
    }

    /// A table below this one, or `None` when it is not there.
    #[inline(never)]
    pub(super) fn table(&self, key: &str) -> Result<Option<Table<'a>>, Refusal> {
        self.get(key).map(|entry| entry.table()).transpose()
    }

    pub(super) fn entries(&self) -> impl Iterator<Item = Entry<'a>> + '_ {
        self.entries.iter().map(|(key, value)| Entry {
            key: self.key(key),
            value,
        })
    }

    #[inline(never)]
    pub(super) fn key(&self, key: &str) -> String {
        if self.path.is_empty() {
            key.to_string()
        } else {
            format!("{}.{key}", self.path)
        }
    }
}

impl<'a> Entry<'a> {
    /// The last part of the dotted key.
    pub(super) fn name(&self) -> &str {
        self.key.rsplit('.').next().unwrap_or(&self.key)
    }

    #[inline(never)]
    pub(super) fn refuse(&self, error: Error, advice: &str) -> Refusal {
        Refusal::new(&self.key, &self.value.to_string(), error, advice)
    }

    #[inline(never)]
    pub(super) fn table(&self) -> Result<Table<'a>, Refusal> {
        match self.value.as_object() {
            Some(entries) => Ok(Table {
                path: self.key.clone(),
                entries,
            }),
            None => Err(self.refuse(Error::of(ErrorKind::Syntax, Quantity::Name), "this has to be a table")),
        }
    }

    #[inline(never)]
    pub(super) fn text(&self, quantity: Quantity) -> Result<&'a str, Refusal> {
        match self.value {
            Value::String(text) => Ok(text),
            Value::Number(_) => Err(self.refuse(Error::of(ErrorKind::MissingUnit, quantity), "")),
            Value::Null | Value::Bool(_) | Value::Array(_) | Value::Object(_) => Err(self.refuse(
                Error::of(ErrorKind::NotANumber, quantity),
                &format!("write it in quotes: {}", quantity.spelling()),
            )),
        }
    }

    /// Text read by one of the parsers of quantities.
    #[inline(never)]
    pub(super) fn quantity<T>(&self, quantity: Quantity, parse: fn(&str) -> Result<T, Error>) -> Result<T, Refusal> {
        parse(self.text(quantity)?).map_err(|error| self.refuse(error, ""))
    }

    /// A member of a vocabulary by its id; a refusal lists the ids.
    #[inline(never)]
    pub(super) fn member<T: Copy>(
        &self,
        all: &[T],
        id: fn(T) -> &'static str,
        from_id: fn(&str) -> Option<T>,
    ) -> Result<T, Refusal> {
        self.value.as_str().and_then(from_id).ok_or_else(|| {
            let ids: Vec<&str> = all.iter().map(|&member| id(member)).collect();
            self.refuse(
                Error::of(ErrorKind::UnknownName, Quantity::Name),
                &format!("write one of {}", ids.join(", ")),
            )
        })
    }

    /// A bare number; NaN where there is none, which every range refuses.
    #[inline(never)]
    pub(super) fn number(&self) -> f64 {
        self.value.as_f64().unwrap_or(f64::NAN)
    }

    pub(super) fn yes_or_no(&self) -> Result<bool, Refusal> {
        self.value.as_bool().ok_or_else(|| {
            self.refuse(
                Error::of(ErrorKind::UnknownName, Quantity::Name),
                "write true or false, without quotes",
            )
        })
    }

    /// The value of a reading and, where the entry is a table, what stands there under each of `keys`.
    pub(super) fn instrument<const N: usize>(
        &self,
        keys: [&str; N],
    ) -> Result<(Entry<'a>, [Option<Entry<'a>>; N]), Refusal> {
        let Some(entries) = self.value.as_object() else {
            return Ok((self.clone(), [const { None }; N]));
        };
        let table = Table {
            path: self.key.clone(),
            entries,
        };
        let mut known = alloc::vec!["value"];
        known.extend(keys);
        table.only(&known)?;
        Ok((
            table.require("value", Quantity::Name, "a reading has a value")?,
            keys.map(|key| table.get(key)),
        ))
    }

    #[inline(never)]
    pub(super) fn items(&self) -> Result<impl Iterator<Item = Entry<'a>> + use<'a>, Refusal> {
        let key = self.key.clone();
        match self.value {
            Value::Array(items) => Ok(items.iter().enumerate().map(move |(row, value)| Entry {
                key: format!("{key}[{}]", row + 1),
                value,
            })),
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) | Value::Object(_) => Err(self.refuse(
                Error::of(ErrorKind::Syntax, Quantity::Name),
                "this has to be a list in square brackets",
            )),
        }
    }
}
