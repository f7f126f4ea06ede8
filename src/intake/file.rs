//! The format of a readings file, and the repairs that were tried.

use super::FORMAT;
use super::instruments::given;
use super::mistakes::Refused;
use super::tree::{Entry, Table};
use crate::error::Error;
use crate::names::{ErrorKind, Fault, Quantity};
use crate::range::Range;
use crate::session::Faults;

/// Keys of the file itself: its format, the data of its owner, and the session that it holds.
pub(super) const OF_FILE: [&str; 5] = ["format", "meta", "repairs", "undo", "forgot"];

/// Refuses a file of a later format, and one whose format is not a number.
pub(super) fn known_format(root: &Table<'_>) -> Result<(), Refused> {
    let Some(entry) = root.get("format") else { return Ok(()) };
    let formats = Range::new(Quantity::Rows, 1.0, f64::from(FORMAT));
    match entry.count() {
        Some(format) if (1..=u64::from(FORMAT)).contains(&format) => Ok(()),
        Some(format) if format > u64::from(FORMAT) => {
            let error = Error::of(ErrorKind::NotAvailable, Quantity::Name);
            let advice = alloc::format!(
                "this file is of a later format; coldloop {} knows formats up to {FORMAT}",
                env!("CARGO_PKG_VERSION")
            );
            Err(entry.refuse(error, &advice))
        }
        Some(_) | None => {
            let fraction = Error::of(ErrorKind::Syntax, Quantity::Name);
            let error = formats.check(entry.number()).err().unwrap_or(fraction);
            Err(entry.refuse(error, "the version of the format is a whole number without quotes: 1"))
        }
    }
}

/// The repairs that were done, and those that did not help.
#[derive(Default)]
pub(super) struct Repairs {
    pub(super) done: Faults,
    pub(super) in_vain: Faults,
}

/// `[repairs]` with the ids of faults in `done` and `in_vain`.
pub(super) fn repairs(table: &Table<'_>) -> Repairs {
    let told = table.told("repairs", |table| {
        table.only(&["done", "in_vain"]);
        let faults = |key: &str| given(table, key, faults).unwrap_or_default();
        Ok(Repairs {
            done: faults("done"),
            in_vain: faults("in_vain"),
        })
    });
    told.unwrap_or_default()
}

fn faults(list: &Entry<'_>) -> Result<Faults, Refused> {
    let mut faults = Faults::default();
    for item in list.items()? {
        faults = faults.with(item.member(&Fault::ALL, Fault::id, Fault::from_id)?);
    }
    Ok(faults)
}
