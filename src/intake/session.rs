//! A session as a readings file: the present state in the usual tables, the steps that can be undone in `[[undo]]`.

use super::FORMAT;
use super::case::moment;
use super::file::repairs;
use super::instruments::given;
use super::kept::Kept;
use super::limit::Limit;
use super::mistakes::Refused;
use super::refusal::{Mistake, Refusal};
use super::settings::held;
use super::tree::{Entry, Table};
use super::visit::{Visit, as_came_in};
use super::written;
use crate::diagnosis::Case;
use crate::error::Error;
use crate::names::{Check, ErrorKind, Fault, Observation, Quantity, ReadingKind};
use crate::session::{Done, Moment, Session, Standing};
use alloc::boxed::Box;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// A session, with the other tables of its file.
///
/// The tables that a session does not change are kept as they were written: `meta`, with any keys (a work order, the
/// vehicle, the date), the vehicle's own pressure table and earlier visits, and the tests, evacuation and charge.
#[derive(Clone, Debug, PartialEq)]
pub struct SessionFile {
    /// The session.
    pub session: Session,
    kept: Vec<(String, Kept)>,
}

/// The tables that are kept as they were written.
const KEPT: [&str; 8] = [
    "meta",
    "pressure_table",
    "baseline",
    "pressure_test",
    "evacuation",
    "hold",
    "charge",
    "pull_down",
];

impl SessionFile {
    /// A file that holds nothing but the session.
    pub const fn new(session: Session) -> Self {
        Self {
            session,
            kept: Vec::new(),
        }
    }

    /// The text under a key of `meta`; `None` where there is none.
    pub fn meta(&self, key: &str) -> Option<&str> {
        let (_, Kept::Table(entries)) = self.kept.iter().find(|(name, _)| name == "meta")? else {
            return None;
        };
        match entries.iter().find(|(name, _)| name == key)? {
            (_, Kept::Text(text)) => Some(text),
            _ => None,
        }
    }

    /// Writes a text into `meta`; it replaces what was under the key.
    ///
    /// ```
    /// use coldloop::intake;
    /// let mut file = intake::session_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
    /// file.set_meta("work order", "117");
    /// let written = intake::session_to_toml(&file)?;
    /// assert_eq!(intake::session_from_toml(&written)?.meta("work order"), Some("117"));
    /// # Ok::<(), intake::Refusal>(())
    /// ```
    pub fn set_meta(&mut self, key: &str, text: &str) {
        if !self.kept.iter().any(|(name, _)| name == "meta") {
            self.kept.push(("meta".to_string(), Kept::Table(Vec::new())));
            self.kept.sort_by(|one, other| one.0.cmp(&other.0));
        }
        for (_, meta) in self.kept.iter_mut().filter(|(name, _)| name == "meta") {
            if let Kept::Table(entries) = meta {
                entries.retain(|(name, _)| name != key);
                entries.push((key.to_string(), Kept::Text(text.to_string())));
                entries.sort_by(|one, other| one.0.cmp(&other.0));
            }
        }
    }

    /// The same as a visit, including the tests, evacuation and charge, for its text and its proofs.
    ///
    /// Errors: as [`session_to_toml`].
    pub fn visit(&self) -> Result<Box<Visit>, Refusal> {
        super::visit_from_json(&session_to_json(self)?)?.whole()
    }

    pub(super) fn written(&self) -> Result<Kept, Refusal> {
        let came_in = self.session.came_in();
        for (key, given) in [
            ("pressure_table", came_in.own_table.is_some()),
            ("baseline", came_in.own_readings.is_some()),
        ] {
            if given && !self.kept.iter().any(|(name, _)| name == key) {
                let error = Error::of(ErrorKind::NotAvailable, Quantity::Name);
                let advice =
                    "it was set by a program and cannot be written; give it in the file that the session starts from";
                return Err(Mistake::new(key, "", error, advice).into());
            }
        }
        let mut entries = alloc::vec![("format".to_string(), Kept::Count(u64::from(FORMAT)))];
        let is_meta = |name: &str| name == "meta";
        entries.extend(self.kept.iter().filter(|(name, _)| is_meta(name)).cloned());
        entries.extend(written::session(&self.session));
        entries.extend(self.kept.iter().filter(|(name, _)| !is_meta(name)).cloned());
        entries.extend(written::undo(&self.session));
        Ok(Kept::Table(entries))
    }
}

/// The session that a readings file in TOML holds: one that was stored, or the start of one from any readings file.
///
/// Errors: a [`Refusal`] that names, for every mistake, the key, the value and what to write instead.
///
/// ```
/// use coldloop::{Observation, intake};
/// let mut file = intake::session_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// file.session.add_observation(Observation::OilTraces, true)?;
/// let answer = file.session.answer()?;
/// // Resumed from its file, it answers with the same bits, and its steps can still be undone.
/// let mut again = intake::session_from_toml(&intake::session_to_toml(&file)?)?;
/// assert_eq!(again, file);
/// assert_eq!(again.session.answer()?, answer);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub fn session_from_toml(text: &str) -> Result<Box<SessionFile>, Refusal> {
    Limit::default().session_from_toml(text)
}

/// The same from JSON of the same shape.
///
/// Errors: as [`session_from_toml`].
pub fn session_from_json(text: &str) -> Result<Box<SessionFile>, Refusal> {
    Limit::default().session_from_json(text)
}

/// The same from a text of either kind: JSON starts with a brace, which no TOML does.
///
/// Errors: as [`session_from_toml`].
///
/// ```
/// let file = include_str!("../../examples/readings/low-charge.toml");
/// assert_eq!(coldloop::intake::session_from_text(file), coldloop::intake::session_from_toml(file));
/// ```
pub fn session_from_text(text: &str) -> Result<Box<SessionFile>, Refusal> {
    Limit::default().session_from_text(text)
}

/// A session as a readings file in TOML, from which it is resumed to the same bits.
///
/// The present state is in the usual tables, so that every reader of readings files reads this one; `[[undo]]` has the state
/// before every step that can be undone. Quantities are in SI, with as many digits as their bits need.
///
/// Errors: `NotAvailable` for a pressure table or earlier visits that were set by a program and are not in the file.
pub fn session_to_toml(file: &SessionFile) -> Result<String, Refusal> {
    file.written().map(|written| written.toml())
}

/// The same in JSON, on one line.
///
/// Errors: as [`session_to_toml`].
pub fn session_to_json(file: &SessionFile) -> Result<String, Refusal> {
    file.written().map(|written| written.json())
}

/// The session of a file.
pub(super) fn session(root: &Table<'_>) -> Result<Box<SessionFile>, Refused> {
    let visit = as_came_in(root)?;
    let kept: Vec<Result<(String, Kept), Refused>> = root
        .entries()
        .filter(|entry| KEPT.contains(&entry.name()))
        .map(|entry| Ok((entry.name().to_string(), Kept::of(&entry)?)))
        .collect();
    let mut kept = kept.into_iter().collect::<Result<Vec<_>, _>>()?;
    kept.sort_by(|one, other| one.0.cmp(&other.0));
    let now = visit.after.as_ref().unwrap_or(&visit.case);
    let repairs = repairs(root);
    let standing = Standing {
        after: visit.after.is_some(),
        repaired: repairs.done,
        ruled_out: repairs.in_vain,
        ..Standing::of(now, &visit.settings)
    };
    let steps = given(root, "undo", |list| {
        let rows: Vec<Result<(Done, Standing), Refused>> = list.items()?.map(|row| step(&row, &visit.case)).collect();
        rows.into_iter().collect::<Result<Vec<_>, _>>()
    });
    let forgot = given(root, "forgot", |entry| entry.yes_or_no()).unwrap_or(false);
    let steps = (&steps.unwrap_or_default()[..], forgot);
    let session = Session::resumed(&visit.case, &visit.settings, standing, steps);
    let session = session.map_err(|error| {
        let blamed = root.get("undo").or_else(|| root.get("readings"));
        blamed.map_or_else(
            || root.missing("readings", error.quantity, ""),
            |entry| entry.refuse(error, ""),
        )
    })?;
    Ok(with_kept(session, kept))
}

#[inline(never)] // a session is large: this keeps it off the stack while a file is read
fn with_kept(session: Box<Session>, kept: Vec<(String, Kept)>) -> Box<SessionFile> {
    Box::new(SessionFile {
        session: *session,
        kept,
    })
}

/// A row of `[[undo]]`: the step, and the state of the visit before it.
fn step(row: &Entry<'_>, vehicle: &Case) -> Result<(Done, Standing), Refused> {
    let table = row.table()?;
    table.only(&[
        "step",
        "conditions",
        "readings",
        "observations",
        "after",
        "repairs",
        "recovered",
        "held",
    ]);
    let moment = moment(&table)?;
    moment.fits(&table, &vehicle.system)?;
    let step = table.require("step", Quantity::Name, "a step that can be undone says what it did")?;
    let yes = |key: &str| given(&table, key, |entry| entry.yes_or_no()).unwrap_or(false);
    let repairs = repairs(&table);
    let before = Standing {
        moment: Moment::of(&moment.of(vehicle.system)),
        after: yes("after"),
        repaired: repairs.done,
        ruled_out: repairs.in_vain,
        recovered: yes("recovered"),
        held: given(&table, "held", held),
    };
    Ok((done(&step)?, before))
}

/// `{ reading = "vent" }` and the like, or `"log"`, `"conditions"`.
fn done(entry: &Entry<'_>) -> Result<Done, Refused> {
    let wrong = || {
        let error = Error::of(ErrorKind::UnknownName, Quantity::Name);
        let advice =
            "write \"log\", \"conditions\", or a table with one of reading, observation, check, repair and in_vain";
        entry.refuse(error, advice)
    };
    match entry.as_text() {
        Some("log") => return Ok(Done::Log),
        Some("conditions") => return Ok(Done::Conditions),
        Some(_) => return Err(wrong()),
        None => {}
    }
    let table = entry.table()?;
    let mut entries = table.entries();
    let (Some(entry), None) = (entries.next(), entries.next()) else {
        return Err(wrong());
    };
    let fault = || entry.member(&Fault::ALL, Fault::id, Fault::from_id);
    Ok(match entry.name() {
        "reading" => Done::Reading(entry.member(&ReadingKind::ALL, ReadingKind::id, ReadingKind::from_id)?),
        "observation" => Done::Observation(entry.member(&Observation::ALL, Observation::id, Observation::from_id)?),
        "check" => Done::Outcome(entry.member(&Check::ALL, Check::id, Check::from_id)?),
        "repair" => Done::Repaired(fault()?),
        "in_vain" => Done::RepairedInVain(fault()?),
        _ => return Err(wrong()),
    })
}
