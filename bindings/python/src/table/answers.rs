//! The answers of many rows, by columns.

use super::columns::{Refused, Table};
use coldloop::circuit::{Derived, Estimate};
use coldloop::diagnosis::{Judge, Judgement};
use coldloop::{EntryError, Fault, RestFinding, VerdictKind};
use std::collections::HashMap;

/// Rows that a thread judges at a time.
pub(super) const BLOCK: usize = 512;

const FAULTS: usize = Fault::ALL.len();
const DERIVED: usize = 12;
/// None of these, the entry error, and a value and an uncertainty of every derived figure.
const FIGURES: usize = FAULTS + 2 + 2 * DERIVED;
/// The columns of places in a vocabulary: verdict, rival, entry error, rest.
const CODES: usize = 4;

/// The derived figures, in the order of [`DERIVED_NAMES`].
fn derived(derived: &Derived) -> [Option<Estimate>; DERIVED] {
    [
        derived.low_dew.map(Estimate::si),
        derived.low_bubble.map(Estimate::si),
        derived.high_dew.map(Estimate::si),
        derived.high_bubble.map(Estimate::si),
        derived.superheat.map(Estimate::si),
        derived.subcooling.map(Estimate::si),
        derived.discharge_superheat.map(Estimate::si),
        derived.condensing_above_ambient.map(Estimate::si),
        derived.vent_above_evaporating.map(Estimate::si),
        derived.pressure_ratio,
        derived.cooling.map(Estimate::si),
        derived.isentropic_efficiency,
    ]
}

/// The derived figures by their name and unit, as in the JSON answer.
const DERIVED_NAMES: [(&str, &str); DERIVED] = [
    ("low_side_dew", "_k"),
    ("low_side_bubble", "_k"),
    ("high_side_dew", "_k"),
    ("high_side_bubble", "_k"),
    ("superheat", "_k"),
    ("subcooling", "_k"),
    ("discharge_superheat", "_k"),
    ("condensing_above_ambient", "_k"),
    ("vent_above_evaporating", "_k"),
    ("pressure_ratio", ""),
    ("cooling", "_j_kg"),
    ("isentropic_efficiency", ""),
];

/// The answer to one row.
#[derive(Clone, Copy)]
struct Row {
    figures: [f64; FIGURES],
    codes: [i32; CODES],
    named: [i32; 4],
}

impl Row {
    const NONE: Self = Self {
        figures: [f64::NAN; FIGURES],
        codes: [0; CODES],
        named: [0; 4],
    };

    fn of(judgement: &Judgement) -> Self {
        let mut row = Self::NONE;
        let (odds, rest) = row.figures.split_at_mut(FAULTS);
        for ranked in judgement.faults() {
            if let Some(index) = Fault::ALL.iter().position(|fault| *fault == ranked.fault) {
                odds[index] = ranked.probability;
            }
        }
        let entry_error = judgement.entry_error();
        rest[0] = judgement.none_of_these();
        rest[1] = entry_error.map_or(f64::NAN, |(_, probability)| probability);
        for (estimate, place) in derived(judgement.derived())
            .into_iter()
            .zip(rest[2..].chunks_exact_mut(2))
        {
            if let Some(estimate) = estimate {
                place[0] = estimate.value;
                place[1] = estimate.standard_uncertainty;
            }
        }
        let verdict = judgement.verdict();
        row.codes = [
            place(&VerdictKind::ALL, Some(verdict.kind)),
            place(&Fault::ALL, verdict.rival),
            place(&EntryError::ALL, entry_error.map(|(kind, _)| kind)),
            place(&RestFinding::ALL, judgement.rest()),
        ];
        for (named, fault) in row.named.iter_mut().zip(verdict.faults.iter()) {
            *named = place(&Fault::ALL, Some(*fault));
        }
        row
    }
}

/// The answers to a block of rows.
pub(super) struct Block {
    first: usize,
    rows: Vec<Row>,
    refused: Vec<(usize, Refused)>,
}

impl Block {
    /// Judges the rows of a block.
    pub(super) fn judged(table: &Table<'_>, judge: &Judge<'_>, block: usize) -> Self {
        let first = block * BLOCK;
        let last = (first + BLOCK).min(table.rows);
        let mut rows = vec![Row::NONE; last - first];
        let (mut refused, mut text) = (Vec::new(), String::new());
        for row in first..last {
            let judged = table.case(row, &mut text).and_then(|case| {
                judge.judge(&case).map_err(|error| Refused {
                    column: error.quantity.id().into(),
                    error,
                })
            });
            match judged {
                Ok(judgement) => rows[row - first] = Row::of(&judgement),
                Err(reason) => refused.push((row, reason)),
            }
        }
        Self { first, rows, refused }
    }

    pub(super) fn rows(&self) -> usize {
        self.rows.len()
    }

    pub(super) fn first_refused(&self) -> Option<(usize, &Refused)> {
        self.refused.first().map(|(row, refused)| (*row, refused))
    }
}

/// Texts by code, each once; 0 stands for none.
#[derive(Default)]
struct Labels<K> {
    codes: HashMap<K, i32>,
    texts: Vec<String>,
}

impl<K: std::hash::Hash + Eq> Labels<K> {
    fn code(&mut self, key: K, text: impl FnOnce() -> String) -> i32 {
        let texts = &mut self.texts;
        *self.codes.entry(key).or_insert_with(|| {
            texts.push(text());
            i32::try_from(texts.len()).unwrap_or(0)
        })
    }
}

/// A column of figures by its name.
type Figures = (String, Vec<f64>);
/// A column of codes by its name, with the texts of the codes from 1.
type Codes = (String, Vec<i32>, Vec<String>);

/// The answers to all rows.
pub(super) struct Answers {
    figures: Vec<Vec<f64>>,
    codes: Vec<Vec<i32>>,
    named: (Vec<i32>, Labels<[i32; 4]>),
    refused: (Vec<i32>, Labels<String>),
}

impl Answers {
    pub(super) fn new(rows: usize) -> Self {
        Self {
            figures: vec![vec![0.0; rows]; FIGURES],
            codes: vec![vec![0; rows]; CODES],
            named: (vec![0; rows], Labels::default()),
            refused: (vec![0; rows], Labels::default()),
        }
    }

    pub(super) fn rows(&self) -> usize {
        self.named.0.len()
    }

    /// Puts a block in its place.
    pub(super) fn put(&mut self, block: Block) {
        let places = block.first..block.first + block.rows.len();
        for (index, column) in self.figures.iter_mut().enumerate() {
            for (place, row) in column[places.clone()].iter_mut().zip(&block.rows) {
                *place = row.figures[index];
            }
        }
        for (index, column) in self.codes.iter_mut().enumerate() {
            for (place, row) in column[places.clone()].iter_mut().zip(&block.rows) {
                *place = row.codes[index];
            }
        }
        let (column, labels) = &mut self.named;
        for (place, row) in column[places].iter_mut().zip(&block.rows) {
            if row.named[0] != 0 {
                *place = labels.code(row.named, || names(row.named));
            }
        }
        let (column, labels) = &mut self.refused;
        for (row, refused) in block.refused {
            let text = format!("{}: {}", refused.column, refused.error.kind.id());
            column[row] = labels.code(text.clone(), || text);
        }
    }

    /// All columns: figures, then codes.
    pub(super) fn columns(self) -> (Vec<Figures>, Vec<Codes>) {
        let mut names: Vec<String> = Fault::ALL
            .iter()
            .map(|fault| format!("odds_{}", fault.id().replace('-', "_")))
            .collect();
        names.push("odds_none_of_these".into());
        names.push("entry_error_probability".into());
        for (name, unit) in DERIVED_NAMES {
            names.push(format!("{name}{unit}"));
            names.push(format!("{name}_uncertainty{unit}"));
        }
        let vocabulary: [(&str, Vec<String>); CODES] = [
            ("verdict", labels(&VerdictKind::ALL, VerdictKind::id)),
            ("rival", labels(&Fault::ALL, Fault::id)),
            ("entry_error", labels(&EntryError::ALL, EntryError::id)),
            ("rest", labels(&RestFinding::ALL, RestFinding::id)),
        ];
        let mut codes: Vec<Codes> = vocabulary
            .into_iter()
            .zip(self.codes)
            .map(|((name, labels), column)| (name.into(), column, labels))
            .collect();
        codes.push(("named".into(), self.named.0, self.named.1.texts));
        codes.push(("refused".into(), self.refused.0, self.refused.1.texts));
        (names.into_iter().zip(self.figures).collect(), codes)
    }
}

/// The place of a member in its vocabulary, from 1; 0 where there is none.
fn place<T: PartialEq>(all: &[T], member: Option<T>) -> i32 {
    let found = member.and_then(|member| all.iter().position(|known| *known == member));
    found.and_then(|place| i32::try_from(place + 1).ok()).unwrap_or(0)
}

/// What the places stand for.
fn labels<T: Copy>(all: &[T], id: fn(T) -> &'static str) -> Vec<String> {
    all.iter().map(|&member| id(member).to_string()).collect()
}

fn names(places: [i32; 4]) -> String {
    let member = |place: i32| Fault::ALL.get(usize::try_from(place - 1).ok()?).copied();
    let named: Vec<&str> = places.into_iter().filter_map(member).map(Fault::id).collect();
    named.join(" ")
}
