//! One judgement over all proofs of a visit, at most as good as the weakest of them.

use super::{Balance, HoldJudgement, Leak, Proof, PullDown, Vacuum};
use crate::names::{
    ChargeFinding, ClosingFinding, EvacuationFinding, HoldFinding, LeakFinding, ProofKind, PullDownFinding,
    RepairFinding,
};

/// All that was proven at a visit, as far as it was done.
///
/// ```
/// use coldloop::proof::Proofs;
/// assert!(Proofs::default().closing().is_none()); // nothing was done
/// let found = Proofs { leak_found: Some(true), ..Proofs::default() };
/// assert!(found.closing().is_some());
/// ```
#[derive(Clone, Copy, Debug, Default)]
pub struct Proofs<'a> {
    /// The test pressure.
    pub pressure_test: Option<&'a Leak>,
    /// The evacuation.
    pub evacuation: Option<&'a Vacuum>,
    /// The held vacuum.
    pub hold: Option<&'a HoldJudgement>,
    /// The masses.
    pub charge: Option<&'a Balance>,
    /// The vent after the start.
    pub pull_down: Option<&'a PullDown>,
    /// Whether dye, a detector or trace gas showed a leak after the repair.
    pub leak_found: Option<bool>,
    /// Before against after.
    pub repair: Option<&'a Proof>,
}

/// The judgement over all of them. Masses and tests need no rule of their own to raise "better" to "proven": weighing, pressure
/// test and evacuation answer questions whose odds are already part of the proof of the repair, for the faults that they
/// concern. The vent after the start is one of the proofs and moves no odds, as the readings after the repair contain the same
/// vent.
///
/// ```
/// use coldloop::{ClosingFinding, intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let closing = visit.prove()?.closing.expect("there are proofs");
/// assert_ne!(closing.finding, ClosingFinding::Fails);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Closing {
    /// The judgement.
    pub finding: ClosingFinding,
    /// The weakest proof, which limits it; `None` where the repair is proven and no test leaves anything open.
    pub weakest: Option<ProofKind>,
}

/// How a proof ended.
#[derive(Clone, Copy, PartialEq)]
enum End {
    Fails,
    /// Something was found, but not what it is.
    Doubtful,
    Open,
    Better,
    Holds,
}

impl Proofs<'_> {
    /// What all of them tell together; `None` where nothing was done.
    ///
    /// A test that failed outweighs all others, so that a repair is not "proven" when air comes in, or when the charge is
    /// surely less than that of the label.
    ///
    /// ```
    /// use coldloop::proof::Proofs;
    /// use coldloop::{ClosingFinding, ProofKind, intake};
    /// let text = include_str!("../../examples/readings/repaired-van.toml");
    /// let closing = intake::visit_from_toml(text)?.prove()?.closing.unwrap();
    /// assert_ne!(closing.finding, ClosingFinding::Fails);
    /// let short = intake::visit_from_toml(&text.replace("charged = \"900 g\"", "charged = \"700 g\""))?;
    /// let closing = short.prove()?.closing.unwrap();
    /// assert_eq!((closing.finding, closing.weakest), (ClosingFinding::Fails, Some(ProofKind::Charge)));
    /// assert!(Proofs::default().closing().is_none());
    /// # Ok::<(), coldloop::intake::Refusal>(())
    /// ```
    pub fn closing(&self) -> Option<Closing> {
        let tests = [
            (
                ProofKind::PressureTest,
                self.pressure_test.map(|test| tight(test.finding)),
            ),
            (ProofKind::Evacuation, self.evacuation.map(|vacuum| dry(vacuum.finding))),
            (ProofKind::Hold, self.hold.map(|hold| held(hold.finding))),
            (ProofKind::Charge, self.charge.and_then(|book| Some(filled(book.now?)))),
            (ProofKind::PullDown, self.pull_down.map(|fall| cold(fall.finding))),
            (ProofKind::LeakSearch, self.leak_found.map(searched)),
        ];
        let done = || tests.into_iter().filter_map(|(kind, end)| Some((kind, end?)));
        let first = |wanted: End| done().find(|(_, end)| *end == wanted).map(|(kind, _)| kind);
        if let Some(kind) = first(End::Fails) {
            return Some(Closing::at(ClosingFinding::Fails, Some(kind)));
        }
        let Some(repair) = self.repair else {
            // Without readings after the repair nothing says that it helped.
            let open = first(End::Doubtful).or(first(End::Open));
            let weakest = open.or(done().next().map(|_| ProofKind::Repair))?;
            return Some(Closing::at(ClosingFinding::Open, Some(weakest)));
        };
        let (finding, weakest) = match helped(repair.finding) {
            End::Fails => (ClosingFinding::Fails, Some(ProofKind::Repair)),
            End::Open | End::Doubtful => (ClosingFinding::Open, Some(ProofKind::Repair)),
            End::Better => (ClosingFinding::Better, Some(ProofKind::Repair)),
            // A test without a result leaves a proven repair proven, and is named; one that found something makes it open.
            End::Holds => match (first(End::Doubtful), first(End::Open)) {
                (Some(doubtful), _) => (ClosingFinding::Open, Some(doubtful)),
                (None, open) => (ClosingFinding::Proven, open),
            },
        };
        Some(Closing::at(finding, weakest))
    }
}

impl Closing {
    const fn at(finding: ClosingFinding, weakest: Option<ProofKind>) -> Self {
        Self { finding, weakest }
    }
}

const fn tight(finding: LeakFinding) -> End {
    match finding {
        LeakFinding::Tight => End::Holds,
        LeakFinding::Leaks => End::Fails,
        LeakFinding::NoLossSeen | LeakFinding::LiquidPresent | LeakFinding::GasGained | LeakFinding::LimitUnclear => {
            End::Open
        }
    }
}

const fn dry(finding: EvacuationFinding) -> End {
    match finding {
        EvacuationFinding::Deep => End::Holds,
        EvacuationFinding::WaterStays => End::Fails,
        EvacuationFinding::WaterBoils | EvacuationFinding::GaugeCannotTell => End::Open,
    }
}

const fn held(finding: HoldFinding) -> End {
    match finding {
        HoldFinding::Tight => End::Holds,
        HoldFinding::Leak | HoldFinding::Moisture => End::Fails,
        HoldFinding::RiseUnclear => End::Doubtful,
        HoldFinding::TooShort | HoldFinding::GaugeCannotTell | HoldFinding::Falling | HoldFinding::NotDeep => End::Open,
    }
}

const fn filled(finding: ChargeFinding) -> End {
    match finding {
        ChargeFinding::Within => End::Holds,
        ChargeFinding::Under | ChargeFinding::Over => End::Fails,
        ChargeFinding::CannotTell => End::Open,
    }
}

const fn cold(finding: PullDownFinding) -> End {
    match finding {
        PullDownFinding::Reached => End::Holds,
        PullDownFinding::Stalled | PullDownFinding::Rising | PullDownFinding::Freezing => End::Fails,
        PullDownFinding::Falling | PullDownFinding::CannotTell => End::Open,
    }
}

const fn searched(found: bool) -> End {
    if found { End::Fails } else { End::Holds }
}

const fn helped(finding: RepairFinding) -> End {
    match finding {
        RepairFinding::Proven => End::Holds,
        RepairFinding::Better => End::Better,
        RepairFinding::StillFaulty | RepairFinding::Worse | RepairFinding::AnotherFault => End::Fails,
        RepairFinding::SoundBefore | RepairFinding::CannotTell => End::Open,
    }
}
