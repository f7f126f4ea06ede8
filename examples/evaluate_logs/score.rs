//! The counts over all logs.

use coldloop::diagnosis::Judgement;
use coldloop::{Fault, VerdictKind};
use std::error::Error;
use std::fmt;

/// One line of the index.
pub(crate) struct Entry {
    pub(crate) id: String,
    /// System and conditions as a readings file.
    pub(crate) case: String,
    pub(crate) changes: bool,
    truth: Fault,
}

impl Entry {
    pub(crate) fn of(line: &str) -> Result<Self, Box<dyn Error>> {
        let value: serde_json::Value = serde_json::from_str(line)?;
        let text = |value: &serde_json::Value| value.as_str().unwrap_or_default().to_string();
        let speeds: Vec<f64> = value["speeds_rpm"]
            .as_array()
            .into_iter()
            .flatten()
            .filter_map(|rpm| rpm.as_f64())
            .collect();
        Ok(Self {
            id: text(&value["id"]),
            case: serde_json::json!({"system": value["system"], "conditions": value["conditions"]}).to_string(),
            changes: speeds.first() != speeds.last(),
            truth: Fault::from_id(&text(&value["truth"]["fault"])).ok_or("unknown fault")?,
        })
    }
}

/// The verdict at one time.
#[derive(Clone, PartialEq)]
pub(crate) struct Told {
    time_s: f64,
    kind: VerdictKind,
    faults: Vec<Fault>,
    first: Vec<Fault>,
    probabilities: Vec<(Fault, f64)>,
}

impl Told {
    pub(crate) fn of(time_s: f64, judgement: &Judgement) -> Self {
        let verdict = judgement.verdict();
        Self {
            time_s,
            kind: verdict.kind,
            faults: verdict.faults.to_vec(),
            first: first_three(judgement),
            probabilities: judgement
                .faults()
                .iter()
                .map(|ranked| (ranked.fault, ranked.probability))
                .collect(),
        }
    }
}

fn first_three(judgement: &Judgement) -> Vec<Fault> {
    judgement.faults().iter().take(3).map(|ranked| ranked.fault).collect()
}

/// The least probability that the log loss takes for the truth.
const LEAST: f64 = 1e-4;
/// Changes of the verdict after this time are counted, s.
const THIRD_MINUTE_S: f64 = 180.0;

#[derive(Default)]
pub(crate) struct Score {
    logs: usize,
    changing: usize,
    sound: usize,
    /// By the log, and by hand: truth first, among three, among three where the speed changes, sound ones named faulty.
    ours: [usize; 4],
    by_hand: [usize; 4],
    /// Logs with at most one change after the third minute: of the kind of verdict with all its faults, with the first of them.
    stable: [usize; 2],
    /// Sums of the logarithms of the truth's probability: of all logs, and of those whose speed changes; by the log, and by hand.
    log_loss: [[f64; 2]; 2],
    changes: usize,
}

impl Score {
    pub(crate) fn add(&mut self, entry: &Entry, told: &[Told], by_hand: &Judgement) -> String {
        let hand = Told::of(0.0, by_hand);
        self.logs += 1;
        self.changing += usize::from(entry.changes);
        let sound = entry.truth == Fault::NoFault;
        self.sound += usize::from(sound);
        let count = |counts: &mut [usize; 4], told: &Told| {
            let three = told.first.contains(&entry.truth);
            counts[0] += usize::from(told.first.first() == Some(&entry.truth));
            counts[1] += usize::from(three);
            counts[2] += usize::from(three && entry.changes);
            counts[3] += usize::from(sound && told.kind == VerdictKind::NamedFault);
        };
        count(&mut self.by_hand, &hand);
        let late: Vec<&Told> = told.iter().filter(|told| told.time_s >= THIRD_MINUTE_S).collect();
        let changes =
            |same: &dyn Fn(&Told, &Told) -> bool| late.windows(2).filter(|pair| !same(pair[0], pair[1])).count();
        let whole = changes(&|one, other| {
            let of = |told: &Told| {
                let mut faults = told.faults.clone();
                faults.sort_by_key(|fault| fault.code());
                (told.kind, faults)
            };
            of(one) == of(other)
        });
        let first = changes(&|one, other| {
            let of = |told: &Told| {
                (
                    told.kind,
                    told.faults
                        .first()
                        .filter(|_| told.kind == VerdictKind::NamedFault)
                        .copied(),
                )
            };
            of(one) == of(other)
        });
        self.changes += whole;
        self.stable[0] += usize::from(whole <= 1);
        self.stable[1] += usize::from(first <= 1);
        let Some(last) = told.last() else {
            return format!("{} {} nothing told", entry.id, entry.truth.id());
        };
        count(&mut self.ours, last);
        for (side, told) in [last, &hand].into_iter().enumerate() {
            let of_truth = told.probabilities.iter().find(|(fault, _)| *fault == entry.truth);
            let loss = -of_truth.map_or(LEAST, |(_, probability)| probability.max(LEAST)).ln();
            self.log_loss[0][side] += loss;
            self.log_loss[1][side] += if entry.changes { loss } else { 0.0 };
        }
        let ids = |faults: &[Fault]| faults.iter().map(|fault| fault.id()).collect::<Vec<_>>().join(",");
        format!(
            "{} {}{} changes {whole}/{first}; {} [{}]; by hand {} [{}]",
            entry.id,
            entry.truth.id(),
            if entry.changes { " *" } else { "" },
            last.kind.id(),
            ids(&last.first),
            hand.kind.id(),
            ids(&hand.first),
        )
    }
}

impl fmt::Display for Score {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(
            f,
            "{} logs, {} with another speed, {} sound",
            self.logs, self.changing, self.sound
        )?;
        writeln!(f, "                                     log  by hand")?;
        let rows = [
            "truth first",
            "truth among three",
            "  where the speed changes",
            "sound named faulty",
        ];
        for (at, row) in rows.into_iter().enumerate() {
            writeln!(f, "{row:35} {:5} {:5}", self.ours[at], self.by_hand[at])?;
        }
        for (row, [ours, by_hand], logs) in [
            ("mean log loss", self.log_loss[0], self.logs),
            ("  where the speed changes", self.log_loss[1], self.changing),
        ] {
            let logs = logs.max(1) as f64;
            writeln!(f, "{row:35} {:5.2} {:5.2}", ours / logs, by_hand / logs)?;
        }
        write!(
            f,
            "at most one change after 180 s: {} (kind and all faults), {} (kind and the named fault); {} changes in all",
            self.stable[0], self.stable[1], self.changes
        )
    }
}
