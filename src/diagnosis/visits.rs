//! Two visits of one vehicle: what both sets of readings say together of every change of its state.

use super::atlas::{Pages, STILL};
use super::case::Case;
use super::faults::{HYPOTHESES, NONE, index};
use super::judgement::Judgement;
use super::likelihood::unknown_way;
use super::posterior::{Alone, OfEach};
use super::settings::Settings;
use super::stacked::{GONE, Instruments, Moment, PARTS, Scales, Stacked, WHOLE};
use crate::circuit::FeatureVector;
use crate::error::Error;
use crate::expected::SoundModel;
use crate::names::Fault;

/// The place of a fault in [`OfEach`].
pub(crate) const fn hypothesis(fault: Fault) -> usize {
    index(fault)
}

/// The evidence of both visits for every state before and after.
pub(crate) struct Visits {
    /// Chance of each hypothesis before any reading, by the settings.
    pub(crate) prior: OfEach,
    /// Chances of what was seen at each visit.
    pub(crate) seen: [OfEach; 2],
    /// Densities of the readings of each visit by itself.
    pub(crate) alone: [OfEach; 2],
    /// Joint density of both sets of readings when a hypothesis held before and a part of it, as in [`super::LEFT`], is left after. For a
    /// sound system only the one with [`WHOLE`] counts.
    pub(crate) joint: [[f64; PARTS]; HYPOTHESES],
}

/// Faults with a smaller share than this in what explains the first visit by itself are taken as independent in both.
const FOLLOWED: f64 = 1e-4;

impl Visits {
    /// Both visits together: the lasting deviation of a vehicle is in both.
    ///
    /// Misleading instruments, and visits of a compressor that stands still, are independent of each other.
    ///
    /// Errors: those of [`super::judge()`].
    #[inline(never)]
    pub(crate) fn of(before: &Case, after: &Case, settings: &Settings) -> Result<Self, Error> {
        let (first, second) = (alone(before, settings)?, alone(after, settings)?);
        let sound = index(Fault::NoFault);
        let mut joint = [[0.0; PARTS]; HYPOTHESES];
        for (h, joint) in joint.iter_mut().enumerate() {
            joint[GONE] = first.likelihood[h] * second.likelihood[sound];
            joint[WHOLE] = first.likelihood[h] * second.likelihood[h];
        }
        let mut visits = Self {
            prior: first.prior,
            seen: [first.seen, second.seen],
            alone: [first.likelihood, second.likelihood],
            joint,
        };
        if let (Some(read), Some(again)) = (&first.features, &second.features) {
            let same = Instruments::same(&before.readings, &after.readings);
            visits.stack((before, read), (after, again), &same)?;
        }
        Ok(visits)
    }

    /// Joint densities of two running visits.
    #[inline(never)]
    fn stack(
        &mut self,
        (before, read): (&Case, &FeatureVector),
        (after, again): (&Case, &FeatureVector),
        same: &Instruments,
    ) -> Result<(), Error> {
        let (model, model_after) = (SoundModel::of_case(before)?, SoundModel::of_case(after)?);
        let pages = Pages::of(&before.system);
        let weight = |h: usize| self.prior[h] * self.seen[0][h] * self.alone[0][h];
        let least = FOLLOWED * (0..HYPOTHESES).map(weight).sum::<f64>();
        let followed: [bool; HYPOTHESES] = core::array::from_fn(|h| h != index(Fault::GaugeError) && weight(h) > least);
        let mut joint = [[0.0; PARTS]; HYPOTHESES];
        for (component, component_after) in model.components().iter().zip(model_after.components()) {
            let visits = Stacked::of(
                Moment::of(component, read, model.few()),
                Moment::of(component_after, again, model_after.few()),
                same,
            );
            let mut add = |h: usize, densities: [f64; PARTS], weight: f64| {
                for (joint, density) in joint[h].iter_mut().zip(densities) {
                    *joint += weight * density;
                }
            };
            let share = component.weight;
            add(
                index(Fault::NoFault),
                visits.densities(&Scales::SOUND, &STILL, &STILL),
                share,
            );
            add(NONE, visits.densities(&Scales::ANYTHING, &STILL, &STILL), share);
            for rows in pages.of_source(component.source) {
                if !followed[index(rows.fault)] {
                    continue;
                }
                let severities = pages.severities(rows);
                let all: f64 = severities.iter().map(|row| f64::from(row.weight)).sum();
                let (mild, severe) = severities.split_at(severities.partition_point(|row| !row.severe));
                for (some, table) in [mild, severe].into_iter().zip(&rows.scales) {
                    if !some.is_empty() {
                        let densities = visits.densities(&Scales::of(rows, table), some, severities);
                        add(index(rows.fault), densities, share / all);
                    }
                }
            }
        }
        for fault in Fault::ALL.into_iter().filter(|fault| followed[index(*fault)]) {
            let (share, h) = (unknown_way(fault), index(fault));
            self.joint[h] = core::array::from_fn(|left| (1.0 - share) * joint[h][left] + share * joint[NONE][left]);
        }
        self.joint[NONE] = joint[NONE];
        Ok(())
    }
}

/// The evidence of one visit by itself.
fn alone(case: &Case, settings: &Settings) -> Result<Alone, Error> {
    settings.check()?;
    Judgement::alone(case, settings)
}

impl SoundModel {
    /// What this vehicle shows when it is sound.
    #[inline(never)]
    fn of_case(case: &Case) -> Result<Self, Error> {
        let mut model = Self::of(&case.system, &case.conditions)?;
        let (visits, table) = (case.own_readings.as_ref(), case.own_table.as_ref());
        model.know(&case.system, &case.conditions, visits, table)?;
        Ok(model)
    }
}
