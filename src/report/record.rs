//! JSON values: a tree whose keys are not copied, written in one pass.

use crate::intake::FORMAT;
use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;
use serde::{Serialize, Serializer};

/// A JSON value. A number that is not finite is written as null.
///
/// The Python bindings make dictionaries from it: 125 us for an answer whose text takes 240 us to parse.
#[doc(hidden)]
pub enum Json {
    Null,
    Bool(bool),
    Number(f64),
    Count(u64),
    Text(Cow<'static, str>),
    List(Vec<Json>),
    Object(Vec<(Cow<'static, str>, Json)>),
}

impl Serialize for Json {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        match self {
            Json::Null => to.serialize_unit(),
            Json::Bool(truth) => to.serialize_bool(*truth),
            Json::Number(number) => to.serialize_f64(*number),
            Json::Count(count) => to.serialize_u64(*count),
            Json::Text(text) => to.serialize_str(text),
            Json::List(items) => to.collect_seq(items),
            Json::Object(entries) => to.collect_map(entries.iter().map(|(key, value)| (key, value))),
        }
    }
}

impl Json {
    /// The text of an answer, on one line.
    pub(super) fn answer(self) -> String {
        self.signed().to_string()
    }

    /// The same with the versions of the library (`coldloop`) and of its formats (`format`) as the last entries.
    pub(super) fn signed(mut self) -> Self {
        if let Self::Object(entries) = &mut self {
            tell(entries, "coldloop", env!("CARGO_PKG_VERSION"));
            tell(entries, "format", FORMAT);
        }
        self
    }
}

/// On one line.
impl fmt::Display for Json {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&serde_json::to_string(self).map_err(|_| fmt::Error)?)
    }
}

/// An object of these entries in this order.
macro_rules! record {
    ({ $($key:literal: $value:expr),+ $(,)? }) => {{
        let mut entries = $crate::report::record::none();
        $($crate::report::record::tell(&mut entries, $key, $value);)+
        $crate::report::record::Json::Object(entries)
    }};
}
pub(super) use record;

/// An object without entries.
pub(super) fn none() -> Vec<(Cow<'static, str>, Json)> {
    Vec::with_capacity(8)
}

/// Adds an entry; not inlined, since there are hundreds of calls.
#[inline(never)]
pub(super) fn tell<T: Told>(entries: &mut Vec<(Cow<'static, str>, Json)>, key: &'static str, value: T) {
    entries.push((key.into(), value.told()));
}

/// What an entry can hold.
pub(super) trait Told {
    fn told(self) -> Json;
}

impl Told for Json {
    fn told(self) -> Json {
        self
    }
}

impl Told for bool {
    fn told(self) -> Json {
        Json::Bool(self)
    }
}

impl Told for f64 {
    fn told(self) -> Json {
        Json::Number(self)
    }
}

impl Told for u32 {
    fn told(self) -> Json {
        Json::Count(self.into())
    }
}

impl Told for usize {
    fn told(self) -> Json {
        Json::Count(self as u64)
    }
}

impl Told for &'static str {
    fn told(self) -> Json {
        Json::Text(self.into())
    }
}

impl Told for String {
    fn told(self) -> Json {
        Json::Text(self.into())
    }
}

impl<T: Told> Told for Option<T> {
    fn told(self) -> Json {
        self.map_or(Json::Null, T::told)
    }
}

impl<T: Told> Told for Vec<T> {
    fn told(self) -> Json {
        self.into_iter().collect()
    }
}

impl<T: Told, const N: usize> Told for [T; N] {
    fn told(self) -> Json {
        self.into_iter().collect()
    }
}

impl<T: Told> FromIterator<T> for Json {
    fn from_iter<I: IntoIterator<Item = T>>(items: I) -> Self {
        Json::List(items.into_iter().map(T::told).collect())
    }
}
