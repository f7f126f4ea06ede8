//! Walks over the parsed file, knows the path of every entry, and records every mistake.
//!
//! Functions that every entry calls are not inlined: speed does not matter here, and the library stays smaller.

use super::mistakes::{Mistakes, Refused};
use super::node::{Content, Named, Node, Number};
use super::refusal::Mistake;
use crate::error::Error;
use crate::names::{ErrorKind, Quantity, Refrigerant};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The path of an entry: its key below that of its table, or its row in a list. Its text is made only for a refusal.
#[derive(Clone, Copy)]
pub(super) struct Place<'a> {
    above: Option<&'a Place<'a>>,
    step: Step<'a>,
}

#[derive(Clone, Copy)]
pub(super) enum Step<'a> {
    /// The file itself.
    Root,
    /// A key of a table.
    Key(&'a str),
    /// A row of a list, counted from zero.
    Row(usize),
}

impl<'a> Place<'a> {
    /// The file itself.
    pub(super) const ROOT: Self = Self {
        above: None,
        step: Step::Root,
    };

    pub(super) fn below(&'a self, step: Step<'a>) -> Self {
        Self {
            above: Some(self),
            step,
        }
    }

    /// The dotted path.
    #[inline(never)]
    pub(super) fn path(&self) -> String {
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

/// The text that is walked over, and the list of its mistakes.
#[derive(Clone, Copy)]
pub(super) struct File<'a> {
    pub(super) text: &'a str,
    pub(super) mistakes: &'a Mistakes,
    /// Whether a mistake names its line and column.
    pub(super) placed: bool,
}

impl File<'_> {
    /// Records a mistake about what is at an offset.
    #[cold]
    #[inline(never)]
    fn record(&self, order: usize, offset: usize, error: Error, mistake: impl FnOnce() -> Mistake) -> Refused {
        self.mistakes.record(order, error, || match self.placed {
            true => mistake().at(self.text, offset),
            false => mistake(),
        })
    }
}

/// A table of the file, with its place.
#[derive(Clone, Copy)]
pub(super) struct Table<'a> {
    file: File<'a>,
    place: Place<'a>,
    /// Offset of its own key or header.
    at: usize,
    entries: &'a [Named<'a>],
}

/// One entry of a table: its place and its value.
#[derive(Clone, Copy)]
pub(super) struct Entry<'a> {
    file: File<'a>,
    place: Place<'a>,
    /// Offset of its key, or of the row itself.
    at: usize,
    node: &'a Node<'a>,
}

impl<'a> Table<'a> {
    pub(super) fn root(file: File<'a>, node: &'a Node<'a>) -> Result<Self, Refused> {
        match &node.content {
            Content::Table(entries) => Ok(Self {
                file,
                place: Place::ROOT,
                at: 0,
                entries,
            }),
            Content::Null | Content::YesOrNo(_) | Content::Number(_) | Content::Text(_) | Content::List(_) => {
                let error = Error::of(ErrorKind::Syntax, Quantity::Name);
                let says = "a readings file has the tables system, conditions, readings and observations";
                Err(file.record(0, 0, error, || Mistake::syntax(says)))
            }
        }
    }

    /// Refuses every key that is not one of `known`, and lists those.
    #[inline(never)]
    pub(super) fn only(&self, known: &[&str]) {
        for entry in self.entries().filter(|entry| !known.contains(&entry.name())) {
            entry.unknown("known here", known);
        }
    }

    #[inline(never)]
    pub(super) fn get(&self, key: &str) -> Option<Entry<'_>> {
        self.entries().find(|entry| entry.name() == key)
    }

    #[inline(never)]
    pub(super) fn require(&self, key: &str, quantity: Quantity, advice: &str) -> Result<Entry<'_>, Refused> {
        self.get(key).ok_or_else(|| self.missing(key, quantity, advice))
    }

    /// Records that a key is missing, after all mistakes about what is in the table: one of those may be the misspelt key.
    #[cold]
    #[inline(never)]
    pub(super) fn missing(&self, key: &str, quantity: Quantity, advice: &str) -> Refused {
        let error = Error::of(ErrorKind::Missing, quantity);
        let last = match self.place.step {
            Step::Root => Some(self.file.text.len()),
            Step::Key(_) | Step::Row(_) => self.entries.iter().map(|entry| entry.node.span.end).max(),
        };
        let order = last.unwrap_or(self.at);
        let mistake = || Mistake::new(&self.place.below(Step::Key(key)).path(), "", error, advice);
        match self.place.step {
            Step::Root => self.file.mistakes.record(order, error, mistake),
            Step::Key(_) | Step::Row(_) => self.file.record(order, self.at, error, mistake),
        }
    }

    /// The table of this name, read by `read`; `None` where there is none, or where it is refused.
    pub(super) fn told<T>(&self, key: &str, read: impl FnOnce(&Table<'_>) -> Result<T, Refused>) -> Option<T> {
        let entry = self.get(key)?;
        read(&entry.table().ok()?).ok()
    }

    /// The table of this name, which is required, read by `read`.
    pub(super) fn section<T>(
        &self,
        key: &str,
        advice: &str,
        read: impl FnOnce(&Table<'_>) -> Result<T, Refused>,
    ) -> Result<T, Refused> {
        read(&self.require(key, Quantity::Name, advice)?.table()?)
    }

    pub(super) fn entries(&self) -> impl Iterator<Item = Entry<'_>> {
        self.entries.iter().map(|named| Entry {
            file: self.file,
            place: self.place.below(Step::Key(&named.key)),
            at: named.at,
            node: &named.node,
        })
    }
}

impl<'a> Entry<'a> {
    /// Its key in its table; empty for a row of a list.
    pub(super) fn name(&self) -> &'a str {
        match self.place.step {
            Step::Key(key) => key,
            Step::Root | Step::Row(_) => "",
        }
    }

    /// Records that the value cannot be used; the figures of the error are in the unit of the value.
    #[cold]
    #[inline(never)]
    pub(super) fn refuse(&self, error: Error, advice: &str) -> Refused {
        self.refuse_part(self.as_text().unwrap_or(""), error, advice)
    }

    /// The same, where the error is about a part of the text only.
    #[cold]
    #[inline(never)]
    pub(super) fn refuse_part(&self, part: &str, error: Error, advice: &str) -> Refused {
        self.record(self.node.span.start, error, || {
            let written = self.node.written(self.file.text);
            Mistake::new(&self.place.path(), written, error, advice).in_unit_of(part)
        })
    }

    #[cold]
    fn record(&self, offset: usize, error: Error, mistake: impl FnOnce() -> Mistake) -> Refused {
        self.file.record(offset, offset, error, mistake)
    }

    /// Records the mistakes of a text in the value as those of this entry.
    pub(super) fn refuse_all(&self, refusal: &super::Refusal) -> Refused {
        for mistake in &refusal.others {
            self.refuse_inner(mistake);
        }
        self.refuse_inner(&refusal.first)
    }

    fn refuse_inner(&self, inner: &Mistake) -> Refused {
        self.record(self.node.span.start, inner.error, || {
            let place = match inner.key.is_empty() {
                true => self.place,
                false => self.place.below(Step::Key(&inner.key)),
            };
            let mut mistake = Mistake::new(&place.path(), &inner.value, inner.error, &inner.advice);
            mistake.reason.clone_from(&inner.reason);
            mistake
        })
    }

    /// Refuses a key that is not one of `known`.
    pub(super) fn unknown(&self, advice: &str, known: &[&str]) -> Refused {
        self.unknown_at(self.at, advice, known)
    }

    /// Refuses the name at this offset, a key or a value, that is not one of `known`.
    #[cold]
    #[inline(never)]
    fn unknown_at(&self, offset: usize, advice: &str, known: &[&str]) -> Refused {
        let error = Error::of(ErrorKind::UnknownName, Quantity::Name);
        self.record(offset, error, || {
            let written = self.node.written(self.file.text);
            let advice = format!("{advice}: {}", known.join(", "));
            Mistake::new(&self.place.path(), written, error, &advice)
        })
    }

    fn wrong_kind(&self, advice: &str) -> Refused {
        self.refuse(Error::of(ErrorKind::Syntax, Quantity::Name), advice)
    }

    #[inline(never)]
    pub(super) fn table(&self) -> Result<Table<'a>, Refused> {
        match &self.node.content {
            Content::Table(entries) => Ok(Table {
                file: self.file,
                place: self.place,
                at: self.at,
                entries,
            }),
            Content::Null | Content::YesOrNo(_) | Content::Number(_) | Content::Text(_) | Content::List(_) => {
                Err(self.wrong_kind("this has to be a table"))
            }
        }
    }

    /// The parsed value, of any kind.
    pub(super) const fn node(&self) -> &'a Node<'a> {
        self.node
    }

    pub(super) fn is_table(&self) -> bool {
        matches!(self.node.content, Content::Table(_))
    }

    pub(super) fn as_text(&self) -> Option<&'a str> {
        match &self.node.content {
            Content::Text(text) => Some(text),
            Content::Null | Content::YesOrNo(_) | Content::Number(_) | Content::List(_) | Content::Table(_) => None,
        }
    }

    #[inline(never)]
    pub(super) fn text(&self, quantity: Quantity) -> Result<&'a str, Refused> {
        match &self.node.content {
            Content::Text(text) => Ok(text),
            Content::Number(_) => Err(self.refuse(Error::of(ErrorKind::MissingUnit, quantity), "")),
            Content::Null => Err(self.refuse(
                Error::of(ErrorKind::NotANumber, quantity),
                "leave the entry out where nothing was measured",
            )),
            Content::YesOrNo(_) => Err(self.refuse(
                Error::of(ErrorKind::NotANumber, quantity),
                "true and false answer yes-or-no questions only",
            )),
            Content::List(_) | Content::Table(_) => Err(self.refuse(
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
        self.as_text().and_then(from_id).ok_or_else(|| {
            let ids: Vec<&str> = all.iter().map(|&member| id(member)).collect();
            self.unknown_at(self.node.span.start, "write one of", &ids)
        })
    }

    /// A refrigerant by its designation; the refusal of a common name gives the designation.
    #[inline(never)]
    pub(super) fn refrigerant(&self) -> Result<Refrigerant, Refused> {
        let text = self.as_text().unwrap_or_default();
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

    fn as_number(&self) -> Option<Number> {
        match self.node.content {
            Content::Number(number) => Some(number),
            Content::Null | Content::YesOrNo(_) | Content::Text(_) | Content::List(_) | Content::Table(_) => None,
        }
    }

    /// A bare number; NaN, which every range refuses, where there is none.
    #[inline(never)]
    pub(super) fn number(&self) -> f64 {
        self.as_number().map_or(f64::NAN, |number| number.value)
    }

    /// A number that is written as a whole number from zero.
    pub(super) fn count(&self) -> Option<u64> {
        self.as_number().and_then(|number| number.count)
    }

    pub(super) fn yes_or_no(&self) -> Result<bool, Refused> {
        match self.node.content {
            Content::YesOrNo(answer) => Ok(answer),
            Content::Null | Content::Number(_) | Content::Text(_) | Content::List(_) | Content::Table(_) => Err(self
                .refuse(
                    Error::of(ErrorKind::UnknownName, Quantity::Name),
                    "write true or false, without quotes",
                )),
        }
    }

    /// The value of a reading and, where the entry is a table, its entries under each of `keys`.
    pub(super) fn instrument<const N: usize>(
        &self,
        keys: [&str; N],
    ) -> Result<(Entry<'_>, [Option<Entry<'_>>; N]), Refused> {
        let Content::Table(entries) = &self.node.content else {
            return Ok((*self, [None; N]));
        };
        let table = self.table()?;
        let mut known = alloc::vec!["value"];
        known.extend(keys);
        table.only(&known);
        let found = |key: &str| {
            let named = entries.iter().find(|named| named.key == key)?;
            Some(Entry {
                file: self.file,
                place: self.place.below(Step::Key(&named.key)),
                at: named.at,
                node: &named.node,
            })
        };
        let value = found("value").ok_or_else(|| table.missing("value", Quantity::Name, "a reading has a value"))?;
        Ok((value, keys.map(found)))
    }

    #[inline(never)]
    pub(super) fn items(&self) -> Result<impl Iterator<Item = Entry<'_>>, Refused> {
        match &self.node.content {
            Content::List(items) => Ok(items.iter().enumerate().map(|(row, node)| Entry {
                file: self.file,
                place: self.place.below(Step::Row(row)),
                at: node.span.start,
                node,
            })),
            Content::Null | Content::YesOrNo(_) | Content::Number(_) | Content::Text(_) | Content::Table(_) => {
                Err(self.wrong_kind("this has to be a list in square brackets"))
            }
        }
    }
}
