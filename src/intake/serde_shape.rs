//! Serde for what a readings file holds, in the shape and by the rules of a readings file.
//!
//! So there is one format, every number is restored to its bits, and impossible values are refused with their key.

use super::case::{self, case};
use super::kept::Kept;
use super::limit::Limit;
use super::mistakes::Refused;
use super::read_json;
use super::session::{SessionFile, session_from_json};
use super::settings::settings;
use super::tree::Table;
use super::written;
use crate::circuit::Readings;
use crate::diagnosis::{Case, Settings};
use crate::session::{Moment, Session};
use crate::vehicle::{Conditions, System};
use alloc::boxed::Box;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;
use serde::de::{Error as _, MapAccess, SeqAccess, Visitor};
use serde::ser::Error as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

impl Serialize for Kept {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::YesOrNo(answer) => to.serialize_bool(*answer),
            Self::Number(number) => to.serialize_f64(*number),
            Self::Count(count) => to.serialize_u64(*count),
            Self::Text(text) => to.serialize_str(text),
            Self::List(items) => to.collect_seq(items),
            Self::Table(entries) => to.collect_map(entries.iter().map(|(key, value)| (key, value))),
        }
    }
}

impl<'de> Deserialize<'de> for Kept {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        from.deserialize_any(Values)
    }
}

struct Values;

impl<'de> Visitor<'de> for Values {
    type Value = Kept;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value of a readings file")
    }

    fn visit_bool<E>(self, answer: bool) -> Result<Kept, E> {
        Ok(Kept::YesOrNo(answer))
    }

    fn visit_u64<E>(self, count: u64) -> Result<Kept, E> {
        Ok(Kept::Count(count))
    }

    fn visit_i64<E>(self, number: i64) -> Result<Kept, E> {
        Ok(u64::try_from(number).map_or(Kept::Number(number as f64), Kept::Count))
    }

    fn visit_f64<E: serde::de::Error>(self, number: f64) -> Result<Kept, E> {
        match number.is_finite() {
            true => Ok(Kept::Number(number)),
            false => Err(E::custom("a number of a readings file must be finite")),
        }
    }

    fn visit_str<E>(self, text: &str) -> Result<Kept, E> {
        Ok(Kept::Text(text.to_string()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Kept, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            list.push(item);
        }
        Ok(Kept::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Kept, A::Error> {
        let mut table: Vec<(String, Kept)> = Vec::new();
        while let Some(entry) = entries.next_entry()? {
            table.push(entry);
        }
        Ok(Kept::Table(table))
    }
}

/// Reads the values by the rules of a readings file.
fn read<'de, T, D: Deserializer<'de>>(from: D, told: fn(&Table<'_>) -> Result<T, Refused>) -> Result<T, D::Error> {
    let text = Kept::deserialize(from)?.json();
    Limit::default()
        .read(&text, read_json::node, told)
        .map_err(D::Error::custom)
}

/// Serde for a type that is a table of a readings file: how it is written and how it is read.
macro_rules! table {
    ($what:ty, $written:expr, $read:expr) => {
        /// In the shape of a readings file.
        impl Serialize for $what {
            fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                Kept::Table($written(self)).serialize(to)
            }
        }

        impl<'de> Deserialize<'de> for $what {
            fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                read(from, $read)
            }
        }
    };
}

table!(System, written::system, case::system);
table!(Conditions, written::conditions, case::conditions);
table!(Readings, written::readings, |table| Ok(case::readings(table, None)));
table!(
    Settings,
    |settings: &Settings| written::settings(settings, (settings.recovered, settings.held)),
    |table| {
        let mut told = Box::<Settings>::default();
        settings(table, &mut told);
        Ok(*told)
    }
);

/// In the shape of a readings file; refused with a pressure table or earlier visits, which are kept in their own file only.
impl Serialize for Case {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        if self.own_table.is_some() || self.own_readings.is_some() {
            return Err(S::Error::custom(
                "a case with its own pressure table or earlier visits cannot be serialised; keep its readings file",
            ));
        }
        let mut entries = alloc::vec![("system".to_string(), Kept::Table(written::system(&self.system)))];
        entries.extend(written::moment(&Moment::of(self)));
        Kept::Table(entries).serialize(to)
    }
}

impl<'de> Deserialize<'de> for Case {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        read(from, case)
    }
}

/// In the shape of its file.
///
/// Errors: as [`session_to_json`](super::session_to_json).
impl Serialize for SessionFile {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        self.written().map_err(S::Error::custom)?.serialize(to)
    }
}

impl<'de> Deserialize<'de> for SessionFile {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let text = Kept::deserialize(from)?.json();
        session_from_json(&text).map(|file| *file).map_err(D::Error::custom)
    }
}

/// In the shape of its file.
///
/// Errors: as [`session_to_json`](super::session_to_json).
impl Serialize for Session {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        SessionFile::new(self.clone()).serialize(to)
    }
}

impl<'de> Deserialize<'de> for Session {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        SessionFile::deserialize(from).map(|file| file.session)
    }
}
