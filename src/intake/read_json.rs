//! JSON to nodes.
//!
//! Each table is read as pairs of raw texts and then entry by entry. So a key that is given twice is found, every value has
//! its position, `core` parses the numbers to the last bit, and the depth is checked before each level.

use super::mistakes::{Mistakes, Refused};
use super::node::{Content, DEEPEST, Named, Node, Number, too_deep_says};
use super::refusal::Mistake;
use super::tree::{Place, Step};
use crate::error::Error;
use crate::names::{ErrorKind, Quantity};
use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;
use serde::Deserializer as _;
use serde::de::{MapAccess, Visitor};
use serde_json::Deserializer;
use serde_json::value::RawValue;

/// The value that the text holds.
///
/// Errors: a mistake of syntax, with its position. A key that is given twice is added to the mistakes; its first value counts.
pub(super) fn node<'t>(text: &'t str, mistakes: &Mistakes) -> Result<Node<'t>, Refused> {
    let json = Json { text, mistakes };
    let raw = serde_json::from_str::<&RawValue>(text).map_err(|error| json.no_json(0, &error))?;
    json.node(raw, &Place::ROOT, 0)
}

struct Json<'t, 'm> {
    text: &'t str,
    mistakes: &'m Mistakes,
}

impl<'t> Json<'t, '_> {
    #[inline(never)]
    fn node(&self, raw: &'t RawValue, place: &Place<'_>, depth: usize) -> Result<Node<'t>, Refused> {
        let written = raw.get();
        let start = self.offset(written);
        if depth > DEEPEST {
            return Err(self.syntax(start, &too_deep_says()));
        }
        let content = match written.as_bytes().first() {
            Some(b'{') => self.table(written, place, depth)?,
            Some(b'[') => self.list(written, place, depth)?,
            Some(b'"') => Content::Text(self.string(written)?),
            Some(b't') => Content::YesOrNo(true),
            Some(b'f') => Content::YesOrNo(false),
            Some(b'n') => Content::Null,
            Some(_) | None => Content::Number(Number {
                value: written.parse().unwrap_or(f64::NAN),
                count: written.parse().ok(),
            }),
        };
        Ok(Node {
            span: start..start + written.len(),
            content,
        })
    }

    fn list(&self, written: &'t str, place: &Place<'_>, depth: usize) -> Result<Content<'t>, Refused> {
        let items: Vec<&RawValue> =
            serde_json::from_str(written).map_err(|error| self.no_json(self.offset(written), &error))?;
        let items = items
            .into_iter()
            .enumerate()
            .map(|(row, raw)| self.node(raw, &place.below(Step::Row(row)), depth + 1));
        items.collect::<Result<_, _>>().map(Content::List)
    }

    fn table(&self, written: &'t str, place: &Place<'_>, depth: usize) -> Result<Content<'t>, Refused> {
        let pairs = Deserializer::from_str(written)
            .deserialize_map(Pairs)
            .map_err(|error| self.no_json(self.offset(written), &error))?;
        let mut entries = Vec::with_capacity(pairs.len());
        for (key, raw) in pairs {
            let at = self.offset(key.get());
            let key = self.string(key.get())?;
            let node = self.node(raw, &place.below(Step::Key(&key)), depth + 1)?;
            entries.push(Named { at, key, node });
        }
        self.only_once(&mut entries, place);
        Ok(Content::Table(entries))
    }

    /// Refuses and removes every key that is in the table a second time.
    fn only_once(&self, entries: &mut Vec<Named<'t>>, place: &Place<'_>) {
        let mut order: Vec<usize> = (0..entries.len()).collect();
        order.sort_by(|a, b| entries[*a].key.cmp(&entries[*b].key));
        let mut again = Vec::new();
        for two in order.windows(2) {
            if let [first, second] = two
                && entries[*first].key == entries[*second].key
            {
                again.push(*second);
            }
        }
        again.sort_unstable();
        for entry in again.iter().map(|again| &entries[*again]) {
            let error = Error::of(ErrorKind::Syntax, Quantity::Name);
            self.mistakes.record(entry.at, error, || {
                let path = place.below(Step::Key(&entry.key)).path();
                let advice = "this key is in its table twice: keep one of the two";
                self.placed(
                    Mistake::new(&path, entry.node.written(self.text), error, advice),
                    entry.at,
                )
            });
        }
        let mut index = 0..;
        entries.retain(|_| index.next().is_some_and(|index| again.binary_search(&index).is_err()));
    }

    fn string(&self, written: &'t str) -> Result<Cow<'t, str>, Refused> {
        let inside = written.strip_prefix('"').and_then(|rest| rest.strip_suffix('"'));
        match inside.filter(|inside| !inside.contains('\\')) {
            Some(plain) => Ok(Cow::Borrowed(plain)),
            None => serde_json::from_str::<String>(written)
                .map(Cow::Owned)
                .map_err(|error| self.no_json(self.offset(written), &error)),
        }
    }

    /// Offset of a part of the text.
    fn offset(&self, part: &str) -> usize {
        part.as_ptr().addr() - self.text.as_ptr().addr()
    }

    fn no_json(&self, start: usize, error: &serde_json::Error) -> Refused {
        let said = error.to_string();
        let message = said.split(" at line ").next().unwrap_or_default();
        let part = self.text.get(start..).unwrap_or_default();
        let lines = part.split_inclusive('\n').take(error.line().saturating_sub(1));
        let offset = start + lines.map(str::len).sum::<usize>() + error.column().saturating_sub(1);
        self.syntax(offset, message)
    }

    fn syntax(&self, offset: usize, message: &str) -> Refused {
        let error = Error::of(ErrorKind::Syntax, Quantity::Name);
        self.mistakes
            .record(offset, error, || Mistake::syntax(message).at(self.text, offset))
    }

    /// The mistake with its position, in a text of more than one line.
    fn placed(&self, mistake: Mistake, offset: usize) -> Mistake {
        match self.text.trim_end().contains('\n') {
            true => mistake.at(self.text, offset),
            false => mistake,
        }
    }
}

/// The entries of an object in their order, including repeated keys.
struct Pairs;

impl<'t> Visitor<'t> for Pairs {
    type Value = Vec<(&'t RawValue, &'t RawValue)>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("an object")
    }

    fn visit_map<A: MapAccess<'t>>(self, mut map: A) -> Result<Self::Value, A::Error> {
        let mut pairs = Vec::new();
        while let Some(pair) = map.next_entry()? {
            pairs.push(pair);
        }
        Ok(pairs)
    }
}
