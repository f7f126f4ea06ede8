//! JSON objects, put together in one place: `serde_json::json!` writes all of that out again at every place.

use alloc::string::{String, ToString};
use alloc::vec::Vec;
use serde_json::{Map, Value};

/// An object of these entries in this order.
macro_rules! record {
    ({ $($key:literal: $value:expr),+ $(,)? }) => {{
        let mut entries = $crate::report::record::none();
        $($crate::report::record::tell(&mut entries, $key, $value);)+
        serde_json::Value::Object(entries)
    }};
}
pub(super) use record;

/// An object without entries.
#[inline(never)]
pub(super) fn none() -> Map<String, Value> {
    Map::new()
}

/// Adds an entry; kept out of line, since hundreds of entries are numbers.
#[inline(never)]
pub(super) fn tell<T: Told>(entries: &mut Map<String, Value>, key: &str, value: T) {
    entries.insert(key.to_string(), value.told());
}

/// What an entry can hold.
pub(super) trait Told {
    fn told(self) -> Value;
}

impl Told for Value {
    fn told(self) -> Value {
        self
    }
}

/// What serde_json tells by itself.
macro_rules! as_it_is {
    ($($kind:ty),+) => {
        $(impl Told for $kind {
            fn told(self) -> Value {
                self.into()
            }
        })+
    };
}

as_it_is!(bool, f64, u32, usize, &str, String);

impl<T: Told> Told for Option<T> {
    fn told(self) -> Value {
        self.map_or(Value::Null, T::told)
    }
}

impl<T: Told> Told for Vec<T> {
    fn told(self) -> Value {
        self.into_iter().map(T::told).collect()
    }
}

impl<T: Told, const N: usize> Told for [T; N] {
    fn told(self) -> Value {
        self.into_iter().map(T::told).collect()
    }
}
