//! The result of an evaluation.

use super::bootstrap::intervals;
use super::sums::{BINS, Bin, Ratio, Sums};
use crate::intake::Refusal;
use alloc::string::String;
use alloc::vec::Vec;

/// A share or a mean over some of the cases, with its interval.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Score {
    /// The share, 0 to 1, or the mean; `None` where there is no such case.
    pub value: Option<f64>,
    /// Its 95 % interval: percentiles of 1,000 resamples of the groups; `None` for fewer than two groups.
    pub interval: Option<(f64, f64)>,
    /// The cases over which it is taken.
    pub cases: u64,
}

/// The cases whose leader has a probability between two limits.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ReliabilityBin {
    /// The lower limit, which belongs to the bin.
    pub low: f64,
    /// The upper limit, which belongs to the next bin; that of the last bin belongs to it.
    pub high: f64,
    /// Number of cases.
    pub cases: u64,
    /// Mean probability of the leaders; `None` without a case.
    pub probability: Option<f64>,
    /// Share of the leaders that are right; `None` without a case.
    pub right: Option<f64>,
}

/// A line that could not be read or judged.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct RefusedCase {
    /// Its number in the file, from one.
    pub line: usize,
    /// The name of the case; empty where it is unknown.
    pub id: String,
    /// The reason.
    pub refusal: Refusal,
}

/// How good the answers to confirmed cases were.
///
/// Where cases are few, the percentile interval of the calibration error lies above the error itself: a resample has the
/// scatter of the cases and that of the resampling.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Summary {
    /// Cases that were judged.
    pub cases: u64,
    /// Lines that could not be read or judged.
    pub refused: u64,
    /// The first dozen of these.
    pub refusals: Vec<RefusedCase>,
    /// Groups that the cases name; without any the intervals are over cases.
    pub groups: usize,
    /// Of all cases: the leader is what was found.
    pub first_right: Score,
    /// Of all cases: what was found is among the first three.
    pub in_first_three: Score,
    /// Of sound vehicles: a fault leads.
    pub sound_led: Score,
    /// Of sound vehicles: a fault is named.
    pub sound_named: Score,
    /// Of significant faults: named, and rightly.
    pub named_right: Score,
    /// Of significant faults: another one is named.
    pub named_wrong: Score,
    /// Of significant faults: the vehicle is called sound.
    pub missed: Score,
    /// Of significant faults: nothing is named and the vehicle is not called sound.
    pub not_told: Score,
    /// Of the significant faults of which nothing is told: the list holds what was found.
    pub list_holds: Score,
    /// Of all cases whose leader has a probability of 0.8 or more: it is right.
    pub sure_right: Score,
    /// Mean of -ln(probability of what was found), no probability counted as less than 1e-6; nats.
    pub log_loss: Score,
    /// Expected calibration error over ten bins: how far the probability of the leader is from the share that is right.
    pub calibration_error: Score,
    /// The calibration in each bin.
    pub reliability: [ReliabilityBin; BINS],
}

impl Summary {
    pub(super) fn of(groups: &[&Sums], named: usize, refused: u64, refusals: Vec<RefusedCase>) -> Self {
        let mut all = Sums::default();
        for sums in groups {
            all.add(sums);
        }
        let (figures, intervals) = (all.figures(), intervals(groups));
        let score = |at: usize| Score {
            value: figures[at].value(),
            interval: intervals[at],
            cases: figures[at].whole as u64,
        };
        Self {
            cases: all.first_right.whole as u64,
            refused,
            refusals,
            groups: named,
            // The order is that of `Sums::figures`.
            first_right: score(0),
            in_first_three: score(1),
            sound_led: score(2),
            sound_named: score(3),
            named_right: score(4),
            named_wrong: score(5),
            missed: score(6),
            not_told: score(7),
            list_holds: score(8),
            sure_right: score(9),
            log_loss: score(10),
            calibration_error: score(11),
            reliability: core::array::from_fn(|at| reliability(at, &all.bins[at])),
        }
    }

    /// Every figure with its name, in the order of the fields.
    pub fn scores(&self) -> [(&'static str, Score); 12] {
        [
            ("first_right", self.first_right),
            ("in_first_three", self.in_first_three),
            ("sound_led", self.sound_led),
            ("sound_named", self.sound_named),
            ("named_right", self.named_right),
            ("named_wrong", self.named_wrong),
            ("missed", self.missed),
            ("not_told", self.not_told),
            ("list_holds", self.list_holds),
            ("sure_right", self.sure_right),
            ("log_loss", self.log_loss),
            ("calibration_error", self.calibration_error),
        ]
    }
}

fn reliability(at: usize, bin: &Bin) -> ReliabilityBin {
    let mean = |part: f64| {
        let whole = bin.cases;
        Ratio { part, whole }.value()
    };
    ReliabilityBin {
        low: at as f64 / BINS as f64,
        high: (at + 1) as f64 / BINS as f64,
        cases: bin.cases as u64,
        probability: mean(bin.probability),
        right: mean(bin.right),
    }
}
