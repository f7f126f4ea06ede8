//! Scores one answer against what was found.

use super::sums::{BINS, Sums};
use crate::diagnosis::Diagnosis;
use crate::intake::Cause;
use crate::names::{Fault, VerdictKind};
use alloc::vec::Vec;

/// Lower bound of the probability of the truth in the log loss, so that one case cannot decide the mean. Source: engineering
/// judgement.
const LEAST: f64 = 1e-6;

/// From this probability on a leader counts as sure.
const SURE: f64 = 0.8;

/// What an answer says: probabilities of the causes, and the verdict.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// Every cause with its probability, the likeliest first; `None` is "none of these".
    causes: Vec<(Option<Fault>, f64)>,
    kind: VerdictKind,
    named: Vec<Fault>,
}

impl Answer {
    /// An answer of these probabilities, whose sum is one, in any order, and with this verdict: its kind and the faults that
    /// it names or lists.
    ///
    /// ```
    /// use coldloop::{Fault, VerdictKind, evaluate::Answer};
    /// let causes = [(Some(Fault::NoFault), 0.2), (Some(Fault::Undercharge), 0.75), (None, 0.05)];
    /// let answer = Answer::new(&causes, VerdictKind::NamedFault, &[Fault::Undercharge]);
    /// assert_eq!(answer.leader(), (Some(Fault::Undercharge), 0.75));
    /// ```
    pub fn new(causes: &[(Option<Fault>, f64)], kind: VerdictKind, named: &[Fault]) -> Self {
        let mut causes = causes.to_vec();
        // Equal ones keep the order of the vocabulary, "none of these" last.
        causes.sort_by_key(|(fault, _)| (fault.is_none(), *fault));
        causes.sort_by(|(_, a), (_, b)| b.total_cmp(a));
        Self {
            causes,
            kind,
            named: named.to_vec(),
        }
    }

    /// The answer of a diagnosis.
    pub fn of(diagnosis: &Diagnosis) -> Self {
        let faults = diagnosis.faults.iter();
        let faults = faults.map(|ranked| (Some(ranked.fault), ranked.probability));
        let causes: Vec<_> = faults.chain([(None, diagnosis.none_of_these)]).collect();
        Self::new(&causes, diagnosis.verdict.kind, &diagnosis.verdict.faults)
    }

    /// The likeliest cause with its probability; "none of these" with probability 0 where there are no probabilities.
    pub fn leader(&self) -> (Option<Fault>, f64) {
        self.causes.first().copied().unwrap_or((None, 0.0))
    }
}

/// What one case adds to the sums.
pub(super) fn score(answer: &Answer, truth: &[Cause], significant: bool) -> Sums {
    let mut sums = Sums::default();
    let found = |fault: Option<Fault>| truth.iter().any(|cause| cause.fault == fault);
    let (leader, probability) = answer.leader();
    let right = found(leader);
    sums.first_right.count(right);
    sums.in_first_three
        .count(answer.causes.iter().take(3).any(|(fault, _)| found(*fault)));
    let given: f64 = answer
        .causes
        .iter()
        .filter(|(fault, _)| found(*fault))
        .map(|(_, p)| p)
        .sum();
    sums.log_loss.mean(-libm::log(given.clamp(LEAST, 1.0)));
    if probability >= SURE {
        sums.sure_right.count(right);
    }
    let bin = (probability * BINS as f64) as usize;
    let bin = &mut sums.bins[bin.min(BINS - 1)];
    bin.cases = 1.0;
    bin.probability = probability;
    bin.right = f64::from(u8::from(right));

    let named = answer.kind == VerdictKind::NamedFault;
    if found(Some(Fault::NoFault)) {
        sums.sound_led.count(!right);
        sums.sound_named.count(named);
    } else if significant {
        let holds = match answer.kind {
            VerdictKind::NamedFault | VerdictKind::CannotTell => answer.named.iter().any(|fault| found(Some(*fault))),
            VerdictKind::NothingFits => found(None),
            VerdictKind::Healthy | VerdictKind::NotEnoughEvidence => false,
        };
        let missed = answer.kind == VerdictKind::Healthy;
        let not_told = !named && !missed;
        sums.named_right.count(named && holds);
        sums.named_wrong.count(named && !holds);
        sums.missed.count(missed);
        sums.not_told.count(not_told);
        if not_told {
            sums.list_holds.count(holds);
        }
    }
    sums
}

/// A number that is the same for the same answer and truth: FNV-1a over their bits.
///
/// Source: Fowler, Noll & Vo, RFC 9923 (from memory).
pub(super) fn hash(answer: &Answer, truth: &[Cause]) -> u64 {
    let code = |fault: Option<Fault>| u64::from(fault.map_or(0, Fault::code));
    let said = answer.causes.iter().flat_map(|(fault, p)| [code(*fault), p.to_bits()]);
    let words = said.chain(truth.iter().map(|cause| code(cause.fault)));
    words
        .flat_map(u64::to_le_bytes)
        .fold(0xcbf2_9ce4_8422_2325, |hash: u64, byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
        })
}
