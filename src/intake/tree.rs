//! A walk over the parsed file that remembers where it is and which keys it has not understood.
//!
//! What is called from every entry is kept out of line: it need not be fast, and it would fill the library.

use super::refusal::{Refusal, Refused};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use serde_json::{Map, Value};

/// The way to an entry: its key below that of its table, or its row in a list. It is put into words only for a refusal.
#[derive(Clone, Copy)]
struct Place<'a> {
    above: Option<&'a Place<'a>>,
    step: Step<'a>,
}

#[derive(Clone, Copy)]
enum Step<'a> {
    /// The file itself.
    Root,
    /// A key of a table.
    Key(&'a str),
    /// A row of a list, counted from zero.
    Row(usize),
}

impl<'a> Place<'a> {
    fn below(&'a self, step: Step<'a>) -> Self {
        Self {
            above: Some(self),
            step,
        }
    }

    /// The dotted path.
    #[inline(never)]
    fn path(&self) -> String {
        let mut path = self.above.map_or_else(String::new, Place::path);
        match self.step {
            Step::Root => {}
            Step::Key(key) => {
                if !path.is_empty() {
                    path.push('.');
                }
                path.push_str(key);
            }
            Step::Row(row) => path.push_str(&format!("[{}]", row + 1)),
        }
        path
    }
}

/// A table of the file and where it stands.
#[derive(Clone, Copy)]
pub(super) struct Table<'a> {
    place: Place<'a>,
    entries: &'a Map<String, Value>,
}

/// One entry of a table: where it stands and its value.
#[derive(Clone, Copy)]
pub(super) struct Entry<'a> {
    place: Place<'a>,
    pub(super) value: &'a Value,
}

impl<'a> Table<'a> {
    pub(super) fn root(value: &'a Value) -> Result<Self, Refused> {
        match value {
            Value::Object(entries) => Ok(Self {
                place: Place {
                    above: None,
                    step: Step::Root,
                },
                entries,
            }),
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) | Value::Array(_) => Err(
                Refusal::syntax("a readings file has the tables system, conditions, readings and observations"),
            ),
        }
    }

    /// Refuses a key that is none of `known`, naming those.
    #[inline(never)]
    pub(super) fn only(&self, known: &[&str]) -> Result<(), Refused> {
        match self.entries().find(|entry| !known.contains(&entry.name())) {
            None => Ok(()),
            Some(entry) => Err(entry.unknown("known here", known)),
        }
    }

    #[inline(never)]
    pub(super) fn get(&self, key: &str) -> Option<Entry<'_>> {
        entry(&self.place, self.entries, key)
    }

    #[inline(never)]
    pub(super) fn require(&self, key: &str, quantity: Quantity, advice: &str) -> Result<Entry<'_>, Refused> {
        self.get(key).ok_or_else(|| self.missing(key, quantity, advice))
    }

    #[cold]
    #[inline(never)]
    pub(super) fn missing(&self, key: &str, quantity: Quantity, advice: &str) -> Refused {
        let place = self.place.below(Step::Key(key));
        Refusal::new(&place.path(), "", Error::of(ErrorKind::Missing, quantity), advice)
    }

    /// A table below this one, or `None` when it is not there.
    #[inline(never)]
    pub(super) fn table(&self, key: &str) -> Result<Option<Table<'_>>, Refused> {
        self.get(key).map(|entry| entry.table()).transpose()
    }

    pub(super) fn entries(&self) -> impl Iterator<Item = Entry<'_>> {
        self.entries.iter().map(|(key, value)| Entry {
            place: self.place.below(Step::Key(key)),
            value,
        })
    }
}

fn entry<'a>(place: &'a Place<'a>, entries: &'a Map<String, Value>, key: &str) -> Option<Entry<'a>> {
    entries.get_key_value(key).map(|(key, value)| Entry {
        place: place.below(Step::Key(key)),
        value,
    })
}

impl<'a> Entry<'a> {
    /// Its key in its table; nothing for a row of a list.
    pub(super) fn name(&self) -> &'a str {
        match self.place.step {
            Step::Key(key) => key,
            Step::Root | Step::Row(_) => "",
        }
    }

    #[cold]
    #[inline(never)]
    pub(super) fn refuse(&self, error: Error, advice: &str) -> Refused {
        Refusal::new(&self.place.path(), &self.value.to_string(), error, advice)
    }

    /// Refuses a name that is none of `known`.
    #[cold]
    #[inline(never)]
    pub(super) fn unknown(&self, advice: &str, known: &[&str]) -> Refused {
        self.refuse(
            Error::of(ErrorKind::UnknownName, Quantity::Name),
            &format!("{advice}: {}", known.join(", ")),
        )
    }

    #[inline(never)]
    pub(super) fn table(&self) -> Result<Table<'a>, Refused> {
        match self.value.as_object() {
            Some(entries) => Ok(Table {
                place: self.place,
                entries,
            }),
            None => Err(self.refuse(Error::of(ErrorKind::Syntax, Quantity::Name), "this has to be a table")),
        }
    }

    #[inline(never)]
    pub(super) fn text(&self, quantity: Quantity) -> Result<&'a str, Refused> {
        match self.value {
            Value::String(text) => Ok(text),
            Value::Number(_) => Err(self.refuse(Error::of(ErrorKind::MissingUnit, quantity), "")),
            Value::Null => Err(self.refuse(
                Error::of(ErrorKind::NotANumber, quantity),
                "leave the entry out where nothing was measured",
            )),
            Value::Bool(_) => Err(self.refuse(
                Error::of(ErrorKind::NotANumber, quantity),
                "true and false answer yes-or-no questions only",
            )),
            Value::Array(_) | Value::Object(_) => Err(self.refuse(
                Error::of(ErrorKind::NotANumber, quantity),
                &format!("write it in quotes: {}", quantity.spelling()),
            )),
        }
    }

    /// Text read by one of the parsers of quantities.
    #[inline(never)]
    pub(super) fn quantity<T>(&self, quantity: Quantity, parse: fn(&str) -> Result<T, Error>) -> Result<T, Refused> {
        parse(self.text(quantity)?).map_err(|error| self.refuse(error, ""))
    }

    /// A member of a vocabulary by its id; a refusal lists the ids.
    #[inline(never)]
    pub(super) fn member<T: Copy>(
        &self,
        all: &[T],
        id: fn(T) -> &'static str,
        from_id: fn(&str) -> Option<T>,
    ) -> Result<T, Refused> {
        self.value.as_str().and_then(from_id).ok_or_else(|| {
            let ids: Vec<&str> = all.iter().map(|&member| id(member)).collect();
            self.unknown("write one of", &ids)
        })
    }

    /// A refrigerant by its designation; the refusal of a common name leads to the designation.
    #[inline(never)]
    pub(super) fn refrigerant(&self) -> Result<Refrigerant, Refused> {
        let text = self.value.as_str().unwrap_or_default();
        match (Refrigerant::from_id(text), Refrigerant::meant_by(text)) {
            (None, Some(meant)) => Err(self.meant(meant)),
            (Some(_), _) | (None, None) => self.member(&Refrigerant::ALL, Refrigerant::id, Refrigerant::from_id),
        }
    }

    /// Refuses a common name of a refrigerant.
    #[cold]
    #[inline(never)]
    pub(super) fn meant(&self, meant: Refrigerant) -> Refused {
        self.refuse(
            Error::of(ErrorKind::UnknownName, Quantity::Name),
            &format!("write {}", meant.id()),
        )
    }

    /// A bare number; NaN where there is none, which every range refuses.
    #[inline(never)]
    pub(super) fn number(&self) -> f64 {
        self.value.as_f64().unwrap_or(f64::NAN)
    }

    pub(super) fn yes_or_no(&self) -> Result<bool, Refused> {
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
    ) -> Result<(Entry<'_>, [Option<Entry<'_>>; N]), Refused> {
        let Some(entries) = self.value.as_object() else {
            return Ok((*self, [None; N]));
        };
        let table = self.table()?;
        let mut known = alloc::vec!["value"];
        known.extend(keys);
        table.only(&known)?;
        let found = |key| entry(&self.place, entries, key);
        let value = found("value").ok_or_else(|| table.missing("value", Quantity::Name, "a reading has a value"))?;
        Ok((value, keys.map(found)))
    }

    #[inline(never)]
    pub(super) fn items(&self) -> Result<impl Iterator<Item = Entry<'_>>, Refused> {
        match self.value {
            Value::Array(items) => Ok(items.iter().enumerate().map(|(row, value)| Entry {
                place: self.place.below(Step::Row(row)),
                value,
            })),
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) | Value::Object(_) => Err(self.refuse(
                Error::of(ErrorKind::Syntax, Quantity::Name),
                "this has to be a list in square brackets",
            )),
        }
    }
}
