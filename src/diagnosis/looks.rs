//! What eyes, ears and hands find, as chances under each hypothesis.

use super::check_table::{EXCLUSIVE, OBSERVATIONS, SHARED};
use super::faults::{HYPOTHESES, index};
use super::list::List;
use crate::circuit::{Observations, place};
use crate::error::Error;
use crate::names::{Fault, Observation, Quantity};
use crate::numerics::{exp_all, ln_all};
use crate::range::Range;

/// Range of a chance: at 0 or 1, one wrong answer could not be outweighed by any number of right ones.
pub(super) const CHANCE: Range = Range::new(Quantity::Probability, 0.001, 0.999);

/// An answer that a sound system gives less often than this, mistakes of noting included, contradicts a sound system whatever
/// the odds. Source: engineering judgement: what is seen, heard or felt is noted wrongly more often, so that only answers from
/// instruments and from turning the hub by hand fall below it.
const SELDOM: f64 = 0.05;

/// How likely the answer "yes" is to every question under every fault.
///
/// The defaults are those of `tables/checks/observations.toml`, each with its source.
///
/// ```
/// use coldloop::{Fault, Observation, diagnosis::Looks};
/// let looks = Looks::default();
/// let bubbles = Observation::SightGlassBubbles;
/// assert!(looks.yes(bubbles, Fault::Undercharge) > 5.0 * looks.yes(bubbles, Fault::NoFault));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Looks {
    yes: [[f64; Fault::ALL.len()]; Observation::ALL.len()],
}

impl Looks {
    /// The chance of the answer "yes" under a fault.
    pub const fn yes(&self, observation: Observation, fault: Fault) -> f64 {
        self.yes[place(observation)][index(fault)]
    }

    /// The same with another chance.
    pub const fn with(mut self, observation: Observation, fault: Fault, chance: f64) -> Self {
        self.yes[place(observation)][index(fault)] = chance;
        self
    }

    /// Checks that every chance leaves room for a mistake.
    ///
    /// Errors: `NotFinite` and `OutOfRange` outside 0.001 to 0.999.
    pub fn check(&self) -> Result<(), Error> {
        let beyond = |chance: &&f64| !(CHANCE.low..=CHANCE.high).contains(*chance);
        let first = self.yes.as_flattened().iter().find(beyond);
        first.map_or(Ok(()), |chance| CHANCE.check(*chance).map(|_| ()))
    }

    /// The chance of "yes" under a hypothesis.
    ///
    /// Under an unknown cause it is the chance under a fault without a row of its own, moved a little towards one half.
    fn chance(&self, observation: Observation, hypothesis: usize) -> f64 {
        let known = self.yes[place(observation)].get(hypothesis);
        let yes = known.map_or_else(|| 0.8 * OBSERVATIONS[place(observation)].otherwise + 0.1, |yes| *yes);
        let mistaken = OBSERVATIONS[place(observation)].mistaken;
        (1.0 - 2.0 * mistaken) * yes + mistaken
    }
}

impl Default for Looks {
    fn default() -> Self {
        let mut looks = Self {
            yes: [[0.0; Fault::ALL.len()]; Observation::ALL.len()],
        };
        for (yes, row) in looks.yes.iter_mut().zip(&OBSERVATIONS) {
            *yes = row.yes;
        }
        looks
    }
}

/// One answer that counts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Sight {
    pub(super) observation: Observation,
    answer: bool,
    /// Factor of its log-odds; below 1 beside other answers with the same cause.
    weight: f64,
}

impl Sight {
    /// Its chance under a hypothesis.
    pub(super) fn chance(&self, looks: &Looks, hypothesis: usize) -> f64 {
        let mut yes = [looks.chance(self.observation, hypothesis)];
        temper(&mut yes, self.weight);
        if self.answer { yes[0] } else { 1.0 - yes[0] }
    }
}

/// The answers that count.
pub(super) type Sights = List<Sight, { Observation::ALL.len() }>;

/// What was seen, correlated answers not counted twice: a "no" that the "yes" of another implies is left out, and answers
/// that share a cause are weakened together.
pub(super) fn sights(observations: &Observations) -> Sights {
    let mut sights = List::new(Sight {
        observation: Observation::ClutchEngaged,
        answer: true,
        weight: 1.0,
    });
    for (observation, answer) in observations.answered() {
        if answer || !implied(observations, observation) {
            let weight = weight(observations, observation);
            sights.push(Sight {
                observation,
                answer,
                weight,
            });
        }
    }
    sights
}

/// Whether a sound system hardly ever gives one of the answers, such as a charge clearly below the label or a lost test
/// pressure.
pub(crate) fn speak_against_sound(observations: &Observations, looks: &Looks) -> bool {
    let mut answered = observations.answered();
    answered.any(|(observation, answer)| {
        let yes = looks.chance(observation, index(Fault::NoFault));
        (if answer { yes } else { 1.0 - yes }) < SELDOM
    })
}

/// The chances of "yes" to a question that is still to be asked, weakened by what was seen of the same cause.
pub(super) fn expected(looks: &Looks, observations: &Observations, observation: Observation) -> [f64; HYPOTHESES] {
    let weight = weight(observations, observation);
    let mut chances = core::array::from_fn(|hypothesis| looks.chance(observation, hypothesis));
    temper(&mut chances, weight);
    chances
}

/// Whether another answer already says "no" to this question.
pub(super) fn implied(observations: &Observations, observation: Observation) -> bool {
    EXCLUSIVE
        .iter()
        .filter(|group| group.contains(&observation))
        .flat_map(|group| group.iter())
        .any(|other| *other != observation && observations.answer(*other) == Some(true))
}

/// Whether two questions share a cause beyond the fault.
pub(super) fn related(one: Observation, other: Observation) -> bool {
    RELATED[place(one)] >> place(other) & 1 != 0
}

/// The questions that share a cause with each, itself included, one bit each.
const RELATED: [u64; Observation::ALL.len()] = {
    let mut related = [0; Observation::ALL.len()];
    let mut group = 0;
    while group < SHARED.len() {
        let members = SHARED[group].members;
        let (mut all, mut at) = (0, 0);
        while at < members.len() {
            all |= 1 << place(members[at]);
            at += 1;
        }
        at = 0;
        while at < members.len() {
            related[place(members[at])] |= all;
            at += 1;
        }
        group += 1;
    }
    related
};

/// Factor of the log-odds of one of n equally correlated answers: 1 / (1 + (n - 1) r).
fn weight(observations: &Observations, observation: Observation) -> f64 {
    let mut weight = 1.0;
    for group in SHARED.iter().filter(|group| group.members.contains(&observation)) {
        let others = group
            .members
            .iter()
            .filter(|member| **member != observation && observations.answer(**member).is_some())
            .fold(0.0, |n, _| n + 1.0);
        weight = f64::min(weight, 1.0 / (1.0 + others * group.correlation));
    }
    weight
}

/// Multiplies the log-odds of chances by `weight`.
fn temper(chances: &mut [f64], weight: f64) {
    if weight >= 1.0 {
        return;
    }
    for chance in &mut *chances {
        *chance = (1.0 - *chance) / *chance;
    }
    ln_all(chances);
    for chance in &mut *chances {
        *chance *= weight;
    }
    exp_all(chances);
    for chance in chances {
        *chance = 1.0 / (1.0 + *chance);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn odds(observations: &Observations, fault: Fault) -> f64 {
        let (sights, looks) = (sights(observations), Looks::default());
        let chance = |sight: &Sight, fault: Fault| sight.chance(&looks, index(fault));
        let of = |fault: Fault| sights.iter().map(|sight| chance(sight, fault)).product::<f64>();
        of(fault) / of(Fault::NoFault)
    }

    #[test]
    fn related_answers_say_less_than_unrelated_ones_and_more_than_one() {
        let bubbles = Observations::NONE.with(Observation::SightGlassBubbles, true);
        let hissing = Observations::NONE.with(Observation::HissingAtExpansion, true);
        let both = bubbles.with(Observation::HissingAtExpansion, true);
        let of = |seen: &Observations| odds(seen, Fault::Undercharge);
        assert!(of(&both) > f64::max(of(&bubbles), of(&hissing)));
        assert!(of(&both) < of(&bubbles) * of(&hissing));
        let oil = bubbles.with(Observation::OilTraces, true);
        let alone = odds(
            &Observations::NONE.with(Observation::OilTraces, true),
            Fault::Undercharge,
        );
        assert!((of(&oil) / (of(&bubbles) * alone) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_no_that_is_implied_adds_nothing() {
        let locked = Observations::NONE.with(Observation::HubLocked, true);
        let redundant = locked.with(Observation::HubTurnsFreely, false);
        assert_eq!(
            odds(&locked, Fault::ClutchSlipping),
            odds(&redundant, Fault::ClutchSlipping)
        );
    }

    #[test]
    fn the_order_of_the_answers_does_not_matter() {
        let one = Observations::NONE
            .with(Observation::AirflowFades, true)
            .with(Observation::EvaporatorFrosted, true);
        let other = Observations::NONE
            .with(Observation::EvaporatorFrosted, true)
            .with(Observation::AirflowFades, true);
        assert_eq!(odds(&one, Fault::EvaporatorIcing), odds(&other, Fault::EvaporatorIcing));
    }

    #[test]
    fn tempering_scales_the_log_odds() {
        let log_odds = |p: f64| libm::log(p / (1.0 - p));
        for p in [0.01, 0.3, 0.9] {
            let mut tempered = [p];
            temper(&mut tempered, 0.4);
            assert!((log_odds(tempered[0]) - 0.4 * log_odds(p)).abs() < 1e-12);
        }
    }
}
