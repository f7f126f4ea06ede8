//! What became of a fault between two visits: prior times the joint density of both.

use crate::diagnosis::{GONE, LEFT, OfEach, PARTS, Visits, WHOLE, hypothesis};
use crate::names::Fault;

/// Chances that a repair leaves the parts [`LEFT`] of what was wrong, and that it leaves something new. Source: engineering
/// judgement: a repair sets right what was wrong more often than not, and one in five does not change it.
const LEAVES: [f64; PARTS] = [0.46, 0.11, 0.09, 0.18, 0.05];
const SOMETHING_NEW: f64 = 0.11;

/// Part of the usual chance of a sound system for one that was repaired: somebody found it faulty. Source: engineering judgement.
const WAS_SOUND: f64 = 0.2;

/// Probabilities of what happened, and the part of the fault that is expected to be gone.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Change {
    /// Faulty before, sound now.
    pub(super) set_right: f64,
    /// The same fault is there as before.
    pub(super) unchanged: f64,
    /// The same fault, more of it.
    pub(super) worse: f64,
    /// Another fault than before, or the first one.
    pub(super) another: f64,
    /// Sound both times.
    pub(super) sound_both: f64,
    /// The part of the fault that is expected to be gone.
    pub(super) gone: f64,
    /// The fault that explains the readings before best, and the probability that any of it is there now.
    pub(super) fault: Fault,
    pub(super) same_fault: f64,
    /// Probability of every state now.
    pub(super) now: OfEach,
    /// The priors with which judging the second visit alone gives the result of both: the probabilities now over the
    /// likelihoods of the second visit; the largest is 1.
    then: OfEach,
}

impl Change {
    pub(super) const NOTHING: Self = Self {
        set_right: 0.0,
        unchanged: 0.0,
        worse: 0.0,
        another: 0.0,
        sound_both: 0.0,
        gone: 0.0,
        fault: Fault::NoFault,
        same_fault: 0.0,
        now: [0.0; Fault::ALL.len() + 1],
        then: [0.0; Fault::ALL.len() + 1],
    };

    pub(super) fn of(visits: &Visits) -> Self {
        let sound = hypothesis(Fault::NoFault);
        let [seen, seen_after] = &visits.seen;
        let [alone, alone_after] = &visits.alone;
        let mut prior = visits.prior;
        let faulty: f64 = 1.0 - prior[sound];
        prior[sound] *= WAS_SOUND;
        let new = |h: usize| {
            let share = if faulty > 0.0 { visits.prior[h] / faulty } else { 0.0 };
            SOMETHING_NEW * share * seen_after[h] * alone_after[h]
        };
        let mut change = Self {
            sound_both: (1.0 - SOMETHING_NEW)
                * prior[sound]
                * seen[sound]
                * seen_after[sound]
                * visits.joint[sound][WHOLE],
            ..Self::NOTHING
        };
        change.now[sound] = change.sound_both;
        let all_before: f64 = (0..prior.len()).map(|h| prior[h] * seen[h] * alone[h]).sum();
        let mut likeliest = 0.0;
        for h in 0..prior.len() {
            let weight = prior[h] * seen[h];
            if h != sound {
                let mut left_of_it = 0.0;
                let mut was = 0.0;
                for (place, (leaves, left)) in LEAVES.into_iter().zip(LEFT).enumerate() {
                    // Observations of a part of a fault have the chances of the whole fault: a charge that was weighed excludes
                    // either.
                    let seen_now = seen_after[if place == GONE { sound } else { h }];
                    let chance = weight * leaves * seen_now * visits.joint[h][place];
                    was += chance;
                    change.gone += (1.0 - left) * chance;
                    if place == GONE {
                        change.set_right += chance;
                        change.now[sound] += chance;
                        continue;
                    }
                    left_of_it += chance;
                    match place {
                        WHOLE => change.unchanged += chance,
                        _ if place > WHOLE => change.worse += chance,
                        _ => {}
                    }
                }
                change.now[h] += left_of_it;
                if let Some(fault) = Fault::ALL.get(h).filter(|_| was > likeliest) {
                    (change.fault, change.same_fault, likeliest) = (*fault, left_of_it, was);
                }
                // A new fault in place of any other state before.
                let others = all_before - weight * alone[h];
                let chance = f64::max(others, 0.0) * new(h);
                change.another += chance;
                change.now[h] += chance;
            }
        }
        for (h, then) in change.then.iter_mut().enumerate() {
            let likelihood = seen_after[h] * alone_after[h];
            *then = if likelihood > 0.0 {
                change.now[h] / likelihood
            } else {
                0.0
            };
        }
        let most = change.then.iter().copied().fold(f64::MIN_POSITIVE, f64::max);
        change.then.iter_mut().for_each(|then| *then /= most);
        change.over(change.now.iter().sum())
    }

    /// All of them divided by `sum`.
    fn over(mut self, sum: f64) -> Self {
        if sum > 0.0 {
            let all = [
                &mut self.set_right,
                &mut self.unchanged,
                &mut self.worse,
                &mut self.another,
                &mut self.sound_both,
                &mut self.gone,
                &mut self.same_fault,
            ];
            for probability in all.into_iter().chain(&mut self.now) {
                *probability /= sum;
            }
        }
        self
    }

    /// Sound now, whatever it was before.
    pub(super) fn sound(&self) -> f64 {
        self.now[hypothesis(Fault::NoFault)]
    }

    /// The probability that it was sound both times, without the assumption that it was brought in as faulty.
    pub(super) fn sound_throughout(&self) -> f64 {
        self.sound_both / (self.sound_both + WAS_SOUND * (1.0 - self.sound_both))
    }

    /// The likeliest fault now, the one of before aside.
    pub(super) fn other_fault(&self) -> Option<(Fault, f64)> {
        let others = Fault::ALL.into_iter().zip(self.now);
        others
            .filter(|(fault, p)| *fault != self.fault && *fault != Fault::NoFault && *p > 0.0)
            .max_by(|one, other| one.1.total_cmp(&other.1))
    }

    /// The prior of a fault, or of none of the list, with which judging the second visit alone gives the result of both.
    pub(super) fn then(&self, fault: Option<Fault>) -> f64 {
        self.then[fault.map_or(Fault::ALL.len(), hypothesis)]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A sound system and one fault, equally likely before and explaining all readings equally well: only the chances of a
    /// repair remain. Of faults 46 % are set right, 11 % and 9 % are left at 45 % and 75 %, 18 % stay, 5 % grow to 170 %;
    /// something new comes in 11 %. A vehicle that comes back is sound a fifth as often as any.
    #[test]
    fn where_readings_say_nothing_the_chances_of_a_repair_remain() {
        let (sound, fault) = (hypothesis(Fault::NoFault), hypothesis(Fault::Undercharge));
        let mut prior = [0.0; Fault::ALL.len() + 1];
        (prior[sound], prior[fault]) = (0.5, 0.5);
        let ones = prior.map(|_| 1.0);
        let change = Change::of(&Visits {
            prior,
            seen: [ones; 2],
            alone: [ones; 2],
            joint: prior.map(|_| [1.0; PARTS]),
        });
        let sound_both = 0.89 * 0.2 * 0.5;
        let another = 0.11 * 0.2 * 0.5;
        let sum = sound_both + another + 0.5 * (0.46 + 0.11 + 0.09 + 0.18 + 0.05);
        let gone = 0.5 * (0.46 + 0.55 * 0.11 + 0.25 * 0.09 - 0.7 * 0.05);
        for (what, found, wanted) in [
            ("sound both times", change.sound_both, sound_both / sum),
            ("set right", change.set_right, 0.23 / sum),
            ("unchanged", change.unchanged, 0.09 / sum),
            ("worse", change.worse, 0.025 / sum),
            ("another", change.another, another / sum),
            ("gone", change.gone, gone / sum),
            (
                "the same fault",
                change.same_fault,
                0.5 * (0.11 + 0.09 + 0.18 + 0.05) / sum,
            ),
            ("sound", change.sound(), (sound_both + 0.23) / sum),
        ] {
            assert!(
                libm::fabs(found - wanted) < 1e-12,
                "{what}: {found} instead of {wanted}"
            );
        }
        // Without the assumption that it was brought in as faulty.
        let both = change.sound_both;
        assert!(libm::fabs(change.sound_throughout() - both / (both + 0.2 * (1.0 - both))) < 1e-12);
        assert_eq!((change.fault, change.other_fault()), (Fault::Undercharge, None));
        // The second visit has the same likelihood under all states, so that its prior is the probabilities now.
        let now = change.now[fault] / change.now[sound];
        assert!(libm::fabs(change.then(Some(Fault::Undercharge)) / change.then(Some(Fault::NoFault)) - now) < 1e-12);
        assert_eq!(change.then(None), 0.0);
    }

    /// Readings and observations weigh what was there by its chances: those of a state are multiplied, before and after.
    #[test]
    fn what_was_read_weighs_each_state_by_its_chances() {
        let states = [Fault::NoFault, Fault::Undercharge, Fault::Overcharge].map(hypothesis);
        let of = |values: [f64; 3]| {
            let mut all = [0.0; Fault::ALL.len() + 1];
            states.iter().zip(values).for_each(|(h, value)| all[*h] = value);
            all
        };
        let prior = of([0.5, 0.3, 0.2]);
        let change = Change::of(&Visits {
            prior,
            seen: [of([0.8, 0.5, 0.25]), of([0.4, 0.6, 0.7])],
            alone: [of([0.9, 0.3, 0.2]), of([0.5, 0.3, 0.4])],
            joint: prior.map(|_| [0.5; PARTS]),
        });
        // The prior of the sound system is a fifth; each state before has its prior and what was seen then.
        let sound_both = 0.89 * 0.1 * 0.8 * 0.4 * 0.5;
        let (under, over) = (0.3 * 0.5, 0.2 * 0.25);
        let (sound_alone, under_alone, over_alone) = (0.1 * 0.8 * 0.9, under * 0.3, over * 0.2);
        // Something new has its share of the faults, and what was seen of it after.
        let new_under = 0.11 * 0.6 * (0.6 * 0.3) * (sound_alone + over_alone);
        let new_over = 0.11 * 0.4 * (0.7 * 0.4) * (sound_alone + under_alone);
        let left = 0.11 + 0.09 + 0.18 + 0.05;
        let now_under = under * left * 0.6 * 0.5 + new_under;
        let now_over = over * left * 0.7 * 0.5 + new_over;
        let now_sound = sound_both + (under + over) * 0.46 * 0.4 * 0.5;
        let sum = now_sound + now_under + now_over;
        let other = change
            .other_fault()
            .map_or(0.0, |(fault, p)| if fault == Fault::Overcharge { p } else { 0.0 });
        let then = |fault| change.then(Some(fault));
        for (what, found, wanted) in [
            ("sound both times", change.sound_both, sound_both / sum),
            ("sound", change.sound(), now_sound / sum),
            ("another", change.another, (new_under + new_over) / sum),
            ("overcharge", other, now_over / sum),
            // What the second visit says by itself is taken out again.
            (
                "then",
                then(Fault::Undercharge) / then(Fault::Overcharge),
                now_under / (0.6 * 0.3) / (now_over / (0.7 * 0.4)),
            ),
        ] {
            assert!(
                libm::fabs(found - wanted) < 1e-12,
                "{what}: {found} instead of {wanted}"
            );
        }
        assert_eq!(change.fault, Fault::Undercharge);
    }
}
