//! The looks that can still be taken, what they would show, and which of them must come before others.

use super::super::check_table::{BEFORE_OPENING, CHECKS, LOOKS_FIRST};
use super::super::faults::HYPOTHESES;
use super::super::list::List;
use super::super::looks;
use super::super::posterior::{Foreseen, Posterior};
use super::super::rows::{CheckRow, Once, Reveals};
use super::super::scene::Scene;
use super::super::settings::Settings;
use super::Standing;
use super::cost::{Belief, Jobs};
use super::followed::Followed;
use crate::names::{Check, Fault, Feature, Observation, ResultKind};

/// A result, and its chance under each hypothesis that is followed.
#[derive(Clone, Copy)]
pub(super) struct Result {
    pub(super) kind: ResultKind,
    /// The question that is answered with yes, where a check has several.
    pub(super) observation: Option<Observation>,
    pub(super) chance: Belief,
}

/// One look that can be taken, with all that it can show.
#[derive(Clone, Copy)]
pub(super) struct Prospect {
    pub(super) check: Check,
    /// Minutes of work, the recovery aside.
    pub(super) minutes: f64,
    pub(super) recovery: bool,
    pub(super) results: List<Result, 3>,
    /// The first question that it answers.
    pub(super) asks: Option<Observation>,
    /// The other looks that tell little after this one, one bit each.
    pub(super) related: u64,
    /// The looks that come before it, one bit each.
    pub(super) after: u64,
    /// One of these faults has to lead; an empty list asks for none.
    pub(super) once_leads: &'static [Fault],
    /// Unless one of these looks is still to be taken, one bit each.
    pub(super) or_open: u64,
}

/// All looks that can be taken.
pub(super) struct Prospects {
    looks: List<Prospect, { Check::ALL.len() }>,
    /// The looks that come before the circuit is opened, before it is handed over and before the vehicle is given back, one
    /// bit each.
    pub(super) before_opening: u64,
}

impl Prospects {
    /// None.
    pub(super) const NONE: Self = Self {
        looks: List::new(Prospect::BLANK),
        before_opening: 0,
    };

    /// Adds the looks that can be taken in this system and tell something that is not known yet.
    #[inline(never)]
    pub(super) fn look_ahead(
        &mut self,
        posterior: &Posterior<'_>,
        scene: &Scene,
        settings: &Settings,
        standing: Standing,
        followed: &Followed,
    ) {
        let known = |row: &CheckRow| match row.reveals {
            Reveals::Feature(feature) => posterior.knows(feature) || scene.cannot_judge(feature),
            Reveals::Observation(Observation::SightGlassBubbles) if !scene.sight_glass => true,
            Reveals::Observation(Observation::TransducerAgrees) if !standing.one_high_side => true,
            Reveals::Observation(observation) => {
                posterior.answers(observation) || looks::implied(posterior.observations(), observation)
            }
        };
        let can_be_taken = |row: &&CheckRow| row.systems & scene.bit != 0 && (row.at_rest || !standing.at_rest);
        let source = Source {
            posterior,
            foreseen: posterior.foreseen(scene),
            settings,
            followed,
        };
        for row in CHECKS.iter().filter(can_be_taken).filter(|row| !known(row)) {
            if let Some(first) = self.looks.items_mut().iter_mut().find(|known| known.check == row.check) {
                let mut second = List::new(Result::BLANK);
                source.foresee(&mut second, row);
                first.results = refined(&first.results, &second);
            } else if let Some(prospect) = self.looks.grow() {
                prospect.check = row.check;
                prospect.minutes = settings.prices.in_minutes(settings.prices.check(row.check));
                prospect.recovery = row.recovery;
                prospect.asks = match row.reveals {
                    Reveals::Feature(_) => None,
                    Reveals::Observation(observation) => Some(observation),
                };
                source.foresee(&mut prospect.results, row);
            }
        }
        self.order(posterior);
    }

    /// Only these looks, without any order among them.
    #[cfg(test)]
    pub(super) const fn of(looks: List<Prospect, { Check::ALL.len() }>) -> Self {
        Self {
            looks,
            before_opening: 0,
        }
    }

    /// The looks.
    pub(super) fn all(&self) -> &[Prospect] {
        &self.looks
    }

    /// Where a check stands.
    pub(super) fn place(&self, check: Check) -> Option<usize> {
        self.looks.iter().position(|prospect| prospect.check == check)
    }

    /// One bit for each of these checks that can be made.
    fn bits(&self, checks: &[Check]) -> u64 {
        let places = checks.iter().filter_map(|check| self.place(*check));
        places.fold(0, |bits, at| bits | 1 << at)
    }

    /// Which looks tell little after others, and which come before others.
    fn order(&mut self, posterior: &Posterior<'_>) {
        let asked: [Option<Observation>; Check::ALL.len()] =
            core::array::from_fn(|at| self.looks.get(at).and_then(|prospect| prospect.asks));
        let no_pressure = !posterior.knows(Feature::LowSide) && !posterior.knows(Feature::HighSide);
        let first = if no_pressure { self.bits(&LOOKS_FIRST) } else { 0 };
        let gauges = self.bits(&[Check::ReadLowSide, Check::ReadHighSide]);
        let before_opening = self.bits(&BEFORE_OPENING);
        self.before_opening = before_opening;
        for at in 0..self.looks.len() {
            let once = CHECKS
                .iter()
                .find(|row| row.check == self.looks[at].check && row.once.is_some());
            let or_open = once
                .and_then(|row| row.once.as_ref())
                .map_or(0, |once| self.bits(once.or_open));
            let prospect = &mut self.looks.items_mut()[at];
            if let Some(Once { leads, .. }) = once.and_then(|row| row.once.as_ref()) {
                prospect.once_leads = leads;
                prospect.or_open = or_open;
            }
            if gauges & 1 << at != 0 {
                prospect.after |= first;
            }
            if prospect.recovery {
                prospect.after |= before_opening;
            }
            for (other_at, other) in asked.iter().enumerate() {
                let tells_little = prospect
                    .asks
                    .zip(*other)
                    .is_some_and(|(a, b)| a != b && looks::related(a, b));
                prospect.related |= u64::from(tells_little) << other_at;
            }
        }
    }
}

impl Prospect {
    /// Whether it may be taken where this is believed and these looks tell nothing new, one bit each.
    pub(super) fn may_come(&self, used: u64, jobs: &Jobs, belief: &Belief) -> bool {
        if self.after & !used != 0 {
            return false;
        }
        if self.once_leads.is_empty() || self.or_open & !used != 0 {
            return true;
        }
        let leading = jobs.leading(belief).0;
        leading.is_some_and(|at| self.once_leads.contains(&jobs.jobs[at].fault))
    }
}

/// What looks are foreseen from.
struct Source<'a> {
    posterior: &'a Posterior<'a>,
    foreseen: Foreseen,
    settings: &'a Settings,
    followed: &'a Followed,
}

impl Source<'_> {
    /// Takes in how a look can come out.
    fn foresee(&self, results: &mut List<Result, 3>, row: &CheckRow) {
        let mut can_be = |kind, observation, chance: &dyn Fn(usize) -> f64| {
            if let Some(result) = results.grow() {
                result.kind = kind;
                result.observation = observation;
                self.followed.gather(&mut result.chance, chance);
            }
        };
        match row.reveals {
            Reveals::Observation(observation) => {
                let seen = self.posterior.observations();
                let yes = looks::expected(&self.settings.looks, seen, observation, &ALL);
                can_be(ResultKind::Yes, Some(observation), &|h| yes[h]);
                can_be(ResultKind::No, Some(observation), &|h| 1.0 - yes[h]);
            }
            Reveals::Feature(feature) => {
                let Some(chances) = self.foreseen.chances(feature) else {
                    return;
                };
                for (at, kind) in [ResultKind::Below, ResultKind::Within, ResultKind::Above]
                    .into_iter()
                    .enumerate()
                {
                    can_be(kind, None, &|h| chances[h][at]);
                }
            }
        }
    }
}

/// Every hypothesis.
const ALL: [usize; HYPOTHESES] = {
    let mut all = [0; HYPOTHESES];
    let mut h = 0;
    while h < HYPOTHESES {
        all[h] = h;
        h += 1;
    }
    all
};

/// Two questions that one look answers: the first is answered with yes, or else the second, or neither.
fn refined(first: &List<Result, 3>, second: &List<Result, 3>) -> List<Result, 3> {
    let mut results = List::new(Result::BLANK);
    let [yes, no, ..] = **first else { return *first };
    results.push(yes);
    for result in second {
        results.push(Result {
            chance: core::array::from_fn(|h| no.chance[h] * result.chance[h]),
            observation: result.observation.filter(|_| result.kind == ResultKind::Yes),
            ..*result
        });
    }
    results
}

impl Result {
    pub(super) const BLANK: Self = Self {
        kind: ResultKind::No,
        observation: None,
        chance: [0.0; HYPOTHESES],
    };
}

impl Prospect {
    pub(super) const BLANK: Self = Self {
        check: Check::RunAndRead,
        minutes: 0.0,
        recovery: false,
        results: List::new(Result::BLANK),
        asks: None,
        related: 0,
        after: 0,
        once_leads: &[],
        or_open: 0,
    };
}
