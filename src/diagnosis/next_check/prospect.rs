//! The looks that can still be taken, what they would show, and which of them must come before others.

use super::super::check_table::{BEFORE_OPENING, CHECKS, LOOKS_FIRST};
use super::super::faults::HYPOTHESES;
use super::super::list::List;
use super::super::looks;
use super::super::posterior::Posterior;
use super::super::rows::{CheckRow, Once, Reveals};
use super::super::scene::Scene;
use super::super::settings::Settings;
use super::Standing;
use super::cost::{Belief, Jobs};
use super::followed::Followed;
use crate::names::{Check, Fault, Feature, Observation, Refrigerant, ResultKind};

/// A result of a look.
#[derive(Clone, Copy)]
pub(super) struct Result {
    pub(super) kind: ResultKind,
    /// The question that is answered with yes, where a check has several.
    pub(super) observation: Option<Observation>,
    /// The row of its chances among those of the look.
    row: usize,
    /// Whether its chances are one minus those of that row.
    other: bool,
}

/// What a look shows.
#[derive(Clone, Copy)]
pub(super) enum Shows {
    /// A figure, below, within or above the limits of a sound system.
    Figure,
    /// The answer to a question, yes or no.
    Answer(Observation),
    /// The answers to two: the first is answered with yes, or else the second, or neither.
    Answers([Observation; 2]),
}

/// One look that can be taken, with all that it can show.
#[derive(Clone, Copy)]
pub(super) struct Prospect {
    pub(super) check: Check,
    /// Minutes of work, the recovery aside.
    pub(super) minutes: f64,
    pub(super) recovery: bool,
    pub(super) shows: Shows,
    /// The index of its first row of chances.
    pub(super) at: usize,
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
    /// Of each result in turn, under each hypothesis that is followed; of a single question those of a yes.
    chances: List<Belief, CHANCES>,
    /// The looks that come before the circuit is opened, before it is handed over and before the vehicle is given back, one
    /// bit each.
    pub(super) before_opening: u64,
}

/// Three for every figure that a check reveals, one for a question, two more for a second question of the same check.
const CHANCES: usize = {
    let (mut count, mut at) = (0, 0);
    while at < CHECKS.len() {
        let second = at > 0 && CHECKS[at - 1].check.code() == CHECKS[at].check.code();
        count += match CHECKS[at].reveals {
            Reveals::Feature(_) => 3,
            Reveals::Observation(_) if second => 2,
            Reveals::Observation(_) => 1,
        };
        at += 1;
    }
    count
};

impl Prospects {
    /// No looks.
    pub(super) const NONE: Self = Self {
        looks: List::new(Prospect::BLANK),
        chances: List::new([0.0; HYPOTHESES]),
        before_opening: 0,
    };

    /// Adds the looks that can be taken in this system and tell something that is not known yet.
    #[inline(never)]
    pub(super) fn look_ahead(
        &mut self,
        posterior: &Posterior,
        scene: &Scene,
        settings: &Settings,
        standing: Standing,
        followed: &Followed,
    ) {
        let known = |row: &CheckRow| match row.reveals {
            Reveals::Feature(feature) => posterior.knows(feature) || scene.cannot_judge(feature),
            Reveals::Observation(Observation::SightGlassBubbles) if !scene.sight_glass => true,
            Reveals::Observation(Observation::RestPressureHigh | Observation::RestPressureLow)
                if scene.warm_for_rest =>
            {
                true
            }
            Reveals::Observation(Observation::TransducerAgrees) if !standing.one_high_side => true,
            Reveals::Observation(observation) => {
                posterior.answers(observation) || looks::implied(posterior.observations(), observation)
            }
        };
        let can_be_taken = |row: &&CheckRow| {
            row.systems & scene.bit != 0
                && (row.at_rest || !standing.at_rest)
                && !(row.not_r744 && scene.system.refrigerant == Refrigerant::R744)
        };
        let foreseen = posterior.foreseen(scene);
        for row in CHECKS.iter().filter(can_be_taken).filter(|row| !known(row)) {
            let at = self.chances.len();
            let shows = match row.reveals {
                Reveals::Feature(feature) => {
                    for at in 0..3 {
                        let chance = |h: usize| foreseen.chances(posterior, feature, h)[at];
                        self.chances.push(followed.gather(chance));
                    }
                    Shows::Figure
                }
                Reveals::Observation(observation) => {
                    let yes = looks::expected(&settings.looks, posterior.observations(), observation);
                    self.chances.push(followed.gather(|h| yes[h]));
                    Shows::Answer(observation)
                }
            };
            let known = self.looks.items_mut().iter_mut().find(|known| known.check == row.check);
            if let Some(known) = known {
                // Rows of one check follow each other.
                if let (Shows::Answer(first), Shows::Answer(second)) = (known.shows, shows) {
                    known.shows = Shows::Answers([first, second]);
                    // The second question counts where the first is answered with no.
                    self.chances.push([0.0; HYPOTHESES]);
                    if let [yes, yes_then, neither, ..] = &mut self.chances.items_mut()[known.at..] {
                        for ((yes, yes_then), neither) in yes.iter().zip(yes_then).zip(neither) {
                            *neither = (1.0 - *yes_then) * (1.0 - yes);
                            *yes_then *= 1.0 - yes;
                        }
                    }
                }
            } else {
                self.looks.push(Prospect {
                    check: row.check,
                    minutes: settings.prices.in_minutes(settings.prices.check(row.check)),
                    recovery: row.recovery,
                    shows,
                    at,
                    ..Prospect::BLANK
                });
            }
        }
        self.order(posterior);
    }

    /// Questions with these chances of a yes, without any order among them.
    #[cfg(test)]
    pub(super) fn of(asked: impl Iterator<Item = (Prospect, Belief)>) -> Self {
        let mut prospects = Self::NONE;
        for (at, (look, yes)) in asked.enumerate() {
            prospects.looks.push(Prospect { at, ..look });
            prospects.chances.push(yes);
        }
        prospects
    }

    /// Multiplies the probabilities by the chances of this result.
    #[inline]
    pub(super) fn learn(&self, belief: &mut Belief, look: &Prospect, result: &Result) {
        if let Some(chances) = self.chances.get(look.at + result.row) {
            for (p, chance) in belief.iter_mut().zip(chances) {
                *p *= if result.other { 1.0 - chance } else { *chance };
            }
        }
    }

    /// The looks.
    pub(super) fn all(&self) -> &[Prospect] {
        &self.looks
    }

    /// The place of a check among the looks.
    pub(super) fn place(&self, check: Check) -> Option<usize> {
        self.looks.iter().position(|prospect| prospect.check == check)
    }

    /// One bit for each of these checks that can be made.
    fn bits(&self, checks: &[Check]) -> u64 {
        let places = checks.iter().filter_map(|check| self.place(*check));
        places.fold(0, |bits, at| bits | 1 << at)
    }

    /// Which looks tell little after others, and which come before others.
    fn order(&mut self, posterior: &Posterior) {
        let asked: [Option<Observation>; Check::ALL.len()] =
            core::array::from_fn(|at| self.looks.get(at).and_then(Prospect::asks));
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
                    .asks()
                    .zip(*other)
                    .is_some_and(|(a, b)| a != b && looks::related(a, b));
                prospect.related |= u64::from(tells_little) << other_at;
            }
        }
    }
}

impl Prospect {
    /// The first question that it answers.
    fn asks(&self) -> Option<Observation> {
        match self.shows {
            Shows::Figure => None,
            Shows::Answer(first) | Shows::Answers([first, _]) => Some(first),
        }
    }

    /// How it can come out.
    pub(super) fn results(&self) -> impl Iterator<Item = Result> + use<> {
        use ResultKind::{Above, Below, No, Within, Yes};
        let (results, count) = match self.shows {
            Shows::Figure => ([(Below, None, 0), (Within, None, 1), (Above, None, 2)], 3),
            Shows::Answer(asked) => ([(Yes, Some(asked), 0), (No, Some(asked), 0), (No, None, 0)], 2),
            Shows::Answers([first, second]) => ([(Yes, Some(first), 0), (Yes, Some(second), 1), (No, None, 2)], 3),
        };
        let single = matches!(self.shows, Shows::Answer(_));
        let results = results.into_iter().take(count);
        results.map(move |(kind, observation, row)| Result {
            kind,
            observation,
            row,
            other: single && matches!(kind, No),
        })
    }

    /// Whether it may be taken; `used` are the looks that tell nothing new, one bit each.
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

impl Prospect {
    pub(super) const BLANK: Self = Self {
        check: Check::RunAndRead,
        minutes: 0.0,
        recovery: false,
        shows: Shows::Figure,
        at: 0,
        related: 0,
        after: 0,
        once_leads: &[],
        or_open: 0,
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A measurement that pays only once a sound system leads waits for the vent: while that can still be read, the measurement may
    /// come as well; once it is read, a fault that leads keeps the measurement back.
    #[test]
    fn a_look_that_waits_for_a_leading_cause_is_free_while_a_simpler_one_is_open() {
        const VENT: u64 = 1;
        let job = super::super::cost::Job {
            fault: Fault::Undercharge,
            minutes: 60.0,
            per_minute: 1.0 / 60.0,
            recovery: false,
        };
        let jobs = Jobs::of([job; super::super::cost::REPAIRS], 1, 60.0, 240.0);
        let mut belief = [0.0; HYPOTHESES];
        belief[0] = 0.9;
        let waits = Prospect {
            once_leads: &[Fault::NoFault],
            or_open: VENT,
            ..Prospect::BLANK
        };
        assert!(waits.may_come(0, &jobs, &belief));
        assert!(!waits.may_come(VENT, &jobs, &belief));
        let leads = Prospect {
            once_leads: &[Fault::Undercharge],
            ..waits
        };
        assert!(leads.may_come(VENT, &jobs, &belief));
    }
}
