//! JSON objects, put together in one place: `serde_json::json!` writes all of that out again at every place.

use alloc::string::ToString;
use alloc::vec::Vec;
use serde_json::{Map, Value};

/// An object of these entries in this order.
macro_rules! record {
    ({ $($key:literal: $value:expr),+ $(,)? }) => {
        $crate::report::record::object(alloc::vec![$(($key, $crate::report::record::value($value))),+])
    };
}
pub(super) use record;

#[inline(never)]
pub(super) fn object(entries: Vec<(&'static str, Value)>) -> Value {
    let entries = entries.into_iter().map(|(key, value)| (key.to_string(), value));
    Value::Object(entries.collect::<Map<_, _>>())
}

/// The value of an entry; kept out of line, since hundreds of entries are numbers.
#[inline(never)]
pub(super) fn value<T: Into<Value>>(value: T) -> Value {
    value.into()
}
