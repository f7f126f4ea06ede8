//! JSON, written as it is told: what stands in an answer is put together from finished pieces of text.

use crate::intake::quote;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::Write;

/// A finished piece of JSON.
pub(super) struct Json(String);

/// An object of these entries in this order.
macro_rules! record {
    ({ $($key:literal: $value:expr),+ $(,)? }) => {{
        let mut record = $crate::report::record::Json::empty();
        $(record.tell($key, $value);)+
        record
    }};
}
pub(super) use record;

impl Json {
    /// An object without entries.
    pub(super) fn empty() -> Self {
        Self("{}".into())
    }

    /// Adds an entry to an object; kept out of line, since hundreds of entries are numbers.
    #[inline(never)]
    pub(super) fn tell<T: Told>(&mut self, key: &str, value: T) {
        self.open(key);
        value.write(&mut self.0);
        self.0.push('}');
    }

    #[inline(never)]
    fn open(&mut self, key: &str) {
        self.0.pop();
        if !self.0.ends_with('{') {
            self.0.push(',');
        }
        key.write(&mut self.0);
        self.0.push(':');
    }

    /// An object of these entries.
    pub(super) fn object<T: Told>(entries: impl Iterator<Item = (impl AsRef<str>, T)>) -> Self {
        let mut object = Self::empty();
        entries.for_each(|(key, value)| object.tell(key.as_ref(), value));
        object
    }

    /// A list of these.
    pub(super) fn list<T: Told>(items: impl Iterator<Item = T>) -> Self {
        let mut list = Self("[".into());
        for item in items {
            if list.0.len() > 1 {
                list.0.push(',');
            }
            item.write(&mut list.0);
        }
        list.0.push(']');
        list
    }

    /// The text.
    pub(super) fn text(self) -> String {
        self.0
    }
}

/// What an entry can hold.
pub(super) trait Told {
    /// Writes it.
    fn write(self, out: &mut String);
}

impl Told for Json {
    fn write(self, out: &mut String) {
        out.push_str(&self.0);
    }
}

/// In the fewest digits that give the same bits again; what is not finite has no number in JSON.
impl Told for f64 {
    #[inline(never)]
    fn write(self, out: &mut String) {
        if self.is_finite() {
            let _ = write!(out, "{self:?}");
        } else {
            out.push_str("null");
        }
    }
}

impl Told for usize {
    fn write(self, out: &mut String) {
        let _ = write!(out, "{self}");
    }
}

impl Told for bool {
    fn write(self, out: &mut String) {
        out.push_str(if self { "true" } else { "false" });
    }
}

impl Told for &str {
    fn write(self, out: &mut String) {
        quote(self, out);
    }
}

impl Told for String {
    fn write(self, out: &mut String) {
        self.as_str().write(out);
    }
}

impl<T: Told> Told for Option<T> {
    fn write(self, out: &mut String) {
        match self {
            Some(told) => told.write(out),
            None => out.push_str("null"),
        }
    }
}

impl<T: Told> Told for Vec<T> {
    fn write(self, out: &mut String) {
        Json::list(self.into_iter()).write(out);
    }
}

impl<T: Told, const N: usize> Told for [T; N] {
    fn write(self, out: &mut String) {
        Json::list(self.into_iter()).write(out);
    }
}
