//! A vehicle's visit, as its readings file tells it: what was read, how to judge it, and what was done since.

use super::case::{TABLES, case, moment};
use super::evidence;
use super::file::{OF_FILE, known_format, repairs};
use super::mistakes::Refused;
use super::refusal::{Mistake, Refusal};
use super::settings::settings;
use super::tree::Table;
use super::work::{charge, evacuation, held, hold, pressure_test, vents};
use crate::circuit::Readings;
use crate::diagnosis::{Case, Settings};
use crate::names::{Compressor, ErrorKind, Expansion, Fault, Refrigerant};
use crate::proof::{ChargeBook, Decay, Evacuation, Hold, Sample, VentSample};
use crate::units::{Surroundings, celsius};
use crate::vehicle::{Conditions, System};
use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec::Vec;

/// A readings file: a case, how to judge it, and whatever was done to the vehicle since.
///
/// ```
/// use coldloop::intake;
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// assert!(visit.refused.is_empty() && visit.after.is_some());
/// let judged = visit.prove()?;
/// assert!(judged.pressure_test.is_some() && judged.repair.is_some());
/// # Ok::<(), intake::Refusal>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Visit {
    /// The vehicle as it came in.
    pub case: Case,
    /// How to judge it.
    pub settings: Settings,
    /// The same vehicle after the repair.
    pub after: Option<Case>,
    /// A test pressure that was watched.
    pub pressure_test: Option<Decay>,
    /// What the vacuum pump reached.
    pub evacuation: Option<Evacuation>,
    /// The vacuum that was held; its samples stand in `held`.
    hold: Option<Hold<'static>>,
    held: Vec<Sample>,
    /// The masses.
    pub charge: Option<ChargeBook>,
    /// The vent after the start, in the conditions of `after`, or of the case where there is none.
    pub pull_down: Vec<VentSample>,
    /// The mistakes in the tables of what was done; those tables are left out.
    pub refused: Vec<Mistake>,
    /// The ambient as it was written, to speak of it in that unit.
    pub(super) ambient: String,
}

impl Visit {
    /// The vacuum that was held.
    pub fn hold(&self) -> Option<Hold<'_>> {
        let hold = self.hold?;
        Some(Hold {
            samples: &self.held,
            ..hold
        })
    }

    /// Whether anything was done that can be judged.
    pub fn has_proof(&self) -> bool {
        let tested = self.pressure_test.is_some() || self.evacuation.is_some() || self.hold.is_some();
        let since = !self.pull_down.is_empty() || self.after.is_some() || !self.refused.is_empty();
        tested || self.charge.is_some() || since
    }

    /// Whether the circuit was pressed or evacuated last, and not charged since, so that it must not be run.
    pub fn is_uncharged(&self) -> bool {
        let opened = self.pressure_test.is_some() || self.evacuation.is_some() || self.hold.is_some();
        opened && self.after.is_none() && self.charge.is_none_or(|charge| charge.charged.is_none())
    }

    /// Whether a mistake stands in a table of what was done, in a file that is one.
    pub(super) fn is_done(mistake: &Mistake) -> bool {
        let readable = mistake.error.kind != ErrorKind::Syntax;
        readable && table_of(mistake).is_some_and(|table| DONE.contains(&table))
    }

    /// Leaves out the tables of these mistakes, and keeps them.
    pub(super) fn refuse(&mut self, mistakes: Vec<Mistake>) {
        let refused = |table: &str| mistakes.iter().any(|mistake| table_of(mistake) == Some(table));
        self.pressure_test = self.pressure_test.filter(|_| !refused("pressure_test"));
        self.evacuation = self.evacuation.filter(|_| !refused("evacuation"));
        self.hold = self.hold.filter(|_| !refused("hold"));
        self.charge = self.charge.filter(|_| !refused("charge"));
        self.after = self.after.filter(|_| !refused("after"));
        if self.hold.is_none() {
            self.held.clear();
        }
        if refused("pull_down") {
            self.pull_down.clear();
        }
        self.refused = mistakes;
    }

    /// The visit, where nothing in it was refused.
    pub(super) fn whole(mut self: Box<Self>) -> Result<Box<Self>, Refusal> {
        match Refusal::of(core::mem::take(&mut self.refused)) {
            None => Ok(self),
            Some(refusal) => Err(refusal),
        }
    }
}

/// The tables of what was done; a mistake in one of them leaves the others standing.
const DONE: [&str; 6] = ["after", "pressure_test", "evacuation", "hold", "charge", "pull_down"];

/// The table in which a mistake stands.
fn table_of(mistake: &Mistake) -> Option<&str> {
    mistake.key.split(['.', '[']).next()
}

/// The visit; in a box, for it is large and refusals have to do with little stack.
pub(super) fn visit(root: &Table<'_>) -> Result<Box<Visit>, Refused> {
    let mut visit = as_came_in(root)?;
    for fault in repairs(root).in_vain.iter() {
        rule_out(&mut visit.settings, fault);
    }
    Ok(visit)
}

#[inline(never)] // so that no caller has room for the copy on its stack
fn rule_out(settings: &mut Settings, fault: Fault) {
    *settings = settings.with_prior(fault, 0.0);
}

/// The same by the settings as they are written, whatever was repaired in vain.
pub(super) fn as_came_in(root: &Table<'_>) -> Result<Box<Visit>, Refused> {
    root.only(&[&TABLES[..], &["settings"], &DONE[..], &OF_FILE].concat());
    known_format(root)?;
    let case = case(root);
    let mut visit = blank(&usual());
    // What was done is read beside the case. Where that one is refused, the blank one stays in its place, so that the
    // further mistakes are found; nothing of it is handed out.
    if let Ok(case) = &case {
        visit.case = *case;
    }
    root.told("settings", |table| {
        settings(table, &mut visit.settings);
        Ok(())
    });
    visit.after = root.told("after", |table| after(table, &visit.case));
    visit.pressure_test = root.told("pressure_test", |table| pressure_test(table, &visit.case));
    visit.evacuation = root.told("evacuation", |table| evacuation(table, &visit.case));
    root.told("hold", |table| {
        visit.hold = Some(hold(table, &visit.case));
        visit.held = held(table)?;
        Ok(())
    });
    visit.charge = root.told("charge", |table| Ok(charge(table, &visit.case)));
    visit.pull_down = root.told("pull_down", vents).unwrap_or_default();
    case?;
    evidence::answer(&mut visit);
    visit.ambient = ambient_as_written(root);
    Ok(visit)
}

/// The ambient of conditions that could be read.
fn ambient_as_written(root: &Table<'_>) -> String {
    let text = root.told("conditions", |table| {
        Ok(table.get("ambient").and_then(|entry| entry.as_text().map(String::from)))
    });
    text.flatten().unwrap_or_default()
}

/// The usual settings; made before the visit, so that the stack holds one of the two at a time.
#[inline(never)]
fn usual() -> Box<Settings> {
    Box::default()
}

/// A visit of which nothing is known, judged so.
#[inline(never)]
fn blank(settings: &Settings) -> Box<Visit> {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let conditions = Conditions::new(celsius(20.0), Surroundings::SEA_LEVEL);
    Box::new(Visit {
        case: Case::new(system, conditions, Readings::default()),
        settings: *settings,
        after: None,
        pressure_test: None,
        evacuation: None,
        hold: None,
        held: Vec::new(),
        charge: None,
        pull_down: Vec::new(),
        refused: Vec::new(),
        ambient: String::new(),
    })
}

/// The same vehicle with the conditions of another time.
#[inline(never)]
fn after(table: &Table<'_>, before: &Case) -> Result<Case, Refused> {
    table.only(&["conditions", "readings", "observations"]);
    let moment = moment(table)?;
    moment.fits(table, &before.system)?;
    Ok(Case {
        own_table: before.own_table,
        own_readings: before.own_readings,
        ..moment.of(before.system)
    })
}
