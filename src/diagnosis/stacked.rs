//! The joint t distribution of two visits of one vehicle by one source: the density of the first, times that of the second given
//! the first (Kotz & Nadarajah 2004, 1.11).

#![allow(clippy::needless_range_loop)] // rows and columns of matrices

use super::atlas::{AMBIENT, ANYTHING};
use super::rows::{Bits, CountedFrom, FaultRows, ShiftRow, number};
use super::scale::KNOWN_OF_FAULTY;
use crate::circuit::{FeatureVector, Reading, Readings};
use crate::expected::Component;
use crate::numerics::multivariate_t::{DIMENSIONS, Factor, Read, Symmetric, TRIANGLE, Vector, Vectors};
use crate::numerics::sqrt;
use crate::units::Pressure;

/// How many parts of a fault may be left.
pub(crate) const PARTS: usize = 5;
/// The parts of its severity that may be left after a repair: nothing, some of it, all of it, more than before. Source: engineering
/// judgement; a half repair lies between the second and the third.
pub(crate) const LEFT: [f64; PARTS] = [0.0, 0.45, 0.75, 1.0, 1.7];
/// The place in [`LEFT`] of a fault that is gone.
pub(crate) const GONE: usize = 0;
/// The place of one that is as it was.
pub(crate) const WHOLE: usize = 3;

/// Parts of the shift that go with [`LEFT`] in the scale matrices; the means follow each fault's own curve. Source: engineering
/// judgement, as most faults show less than half of their shift at half of their severity.
const SHIFTED: [f64; PARTS] = [0.0, 0.25, 0.6, 1.0, 1.7];

/// Share of the lasting deviation of a sound vehicle that its faulty state keeps. Fitted to log loss and proven repairs on
/// building makes of the independent simulator: 0.5 is best, 0.3 to 0.7 do almost as well.
const LASTS_IN_FAULTY: f64 = 0.5;
/// Share of the lasting deviation that remains at the second visit. 0.75 to 0.9 do equally well.
const LASTS: f64 = 0.85;
/// Bounds of the passing share of a faulty state's variance. Source: engineering judgement.
const PASSES: (f64, f64) = (0.05, 0.8);
/// Part of a gauge's variance that is an offset common to both visits. Source: engineering judgement: zero and gain, and not the
/// step to which it is read.
const OFFSET: f64 = 0.6;

/// Which gauges were the same at both visits, as far as their uncertainties tell.
pub(super) struct Instruments([bool; 2]);

impl Instruments {
    /// The errors of thermometers are independent, as they are attached anew at each visit.
    pub(super) fn same(before: &Readings, after: &Readings) -> Self {
        fn same(one: Option<Reading<Pressure>>, other: Option<Reading<Pressure>>) -> bool {
            let (Some(one), Some(other)) = (one, other) else {
                return false;
            };
            let (one, other) = (one.standard_uncertainty.pa(), other.standard_uncertainty.pa());
            libm::fabs(one - other) <= 0.01 * f64::max(one, other)
        }
        Self([
            same(before.low_side, after.low_side),
            same(before.high_side, after.high_side),
        ])
    }
}

/// One visit by one source.
pub(super) struct Moment<'a> {
    component: &'a Component,
    few: &'a [f64; 4],
    read: Read,
    value: Vector,
    uncertainty: Vector,
}

impl<'a> Moment<'a> {
    pub(super) fn of(component: &'a Component, features: &FeatureVector, few: &'a [f64; 4]) -> Self {
        let of = |i: usize| features.read[i].map_or((0.0, 0.0), |read| (read.value, read.standard_uncertainty));
        Self {
            component,
            few,
            read: Read::of(|i| features.read[i].is_some()),
            value: core::array::from_fn(|i| of(i).0),
            uncertainty: core::array::from_fn(|i| of(i).1),
        }
    }

    fn noise(&self) -> Vector {
        self.read
            .part(&self.uncertainty.map(|uncertainty| uncertainty * uncertainty))
    }

    /// The mean from which the shifts of a fault count.
    fn base(&self, of: &Scales) -> &Vector {
        match of.counted_from {
            CountedFrom::Vehicle => &self.component.mean,
            CountedFrom::Kind => &self.component.of_kind,
            CountedFrom::Ambient => &AMBIENT,
        }
    }

    /// Scale matrix of a faulty state.
    fn scale(&self, of: &Scales) -> Symmetric {
        let component = self.component;
        let Some(table) = of.table else {
            let scale = component.scale();
            return of.more.map_or(scale, |more| scale.plus(more));
        };
        let table = Symmetric(table.map(number));
        if of.counted_from == CountedFrom::Ambient {
            return table;
        }
        let scale = component.more.plus(&table);
        if !component.is_known() || of.counted_from != CountedFrom::Vehicle {
            return scale;
        }
        scale.scaled(&core::array::from_fn(|i| {
            let gained = KNOWN_OF_FAULTY * component.gained[i] / scale.at(i, i);
            sqrt(f64::max(1.0 - gained, 0.0))
        }))
    }
}

/// The scale matrix of a faulty state: that of its table, or of a sound system and more.
pub(super) struct Scales {
    table: Option<&'static [Bits; TRIANGLE]>,
    more: Option<&'static Symmetric>,
    counted_from: CountedFrom,
}

impl Scales {
    pub(super) const SOUND: Self = Self {
        table: None,
        more: None,
        counted_from: CountedFrom::Vehicle,
    };
    pub(super) const ANYTHING: Self = Self {
        more: Some(&ANYTHING),
        ..Self::SOUND
    };

    pub(super) fn of(rows: &FaultRows, table: &'static [Bits; TRIANGLE]) -> Self {
        Self {
            table: Some(table),
            more: None,
            counted_from: rows.counted_from,
        }
    }

    const fn is_sound(&self) -> bool {
        self.table.is_none() && self.more.is_none()
    }
}

/// Both visits by one source.
pub(super) struct Stacked<'a> {
    before: Moment<'a>,
    after: Moment<'a>,
    /// Covariance of each reading with itself at the other visit, by its instrument.
    offset: Vector,
    /// Densities at the means for unit scales: of the first visit, and of the second given the first.
    peaks: [[f64; DIMENSIONS + 1]; 2],
}

impl<'a> Stacked<'a> {
    pub(super) fn of(before: Moment<'a>, after: Moment<'a>, same: &Instruments) -> Self {
        let freedom = before.component.freedom;
        let mut offset = [0.0; DIMENSIONS];
        let sides = [FeatureVector::LOW_SIDE, FeatureVector::HIGH_SIDE];
        for (side, _) in sides.into_iter().zip(same.0).filter(|(_, same)| *same) {
            offset[side] = OFFSET * before.uncertainty[side] * after.uncertainty[side];
        }
        Self {
            offset,
            peaks: [freedom.peaks(), freedom.after(before.read.count()).peaks()],
            before,
            after,
        }
    }

    /// Joint densities of both visits, summed over severities, for every part of the fault that may be left.
    ///
    /// The state after is interpolated between the sound state and the faulty state before, by the part of the shift that is
    /// left. The lasting deviation of the sound vehicle is correlated with its faulty state, and the faulty state with itself.
    /// `all` are the severities of the fault, `rows` those that share this scale matrix.
    pub(super) fn densities(&self, of: &Scales, rows: &'static [ShiftRow], all: &'static [ShiftRow]) -> [f64; PARTS] {
        let (b, a) = (&self.before, &self.after);
        let (count, count_after) = (b.read.count(), a.read.count());
        let (scale, scale_after) = (b.scale(of), a.scale(of));
        let mut factor = Factor::<1>::empty(count);
        factor.fill(0, |at| scale.0[b.read.entry(at)], &b.noise());
        factor.factorise();
        let common = self.common(of, &scale, &scale_after);
        let with_sound = self.with_sound(of, &scale);
        // Decorrelated covariances of each reading after with all before, for every part left.
        let mut with = [[[[0.0; 1]; DIMENSIONS]; DIMENSIONS]; PARTS];
        let mut second = Factor::<PARTS>::empty(count_after);
        let noise = a.noise();
        for (lane, (with, left)) in with.iter_mut().zip(SHIFTED).enumerate() {
            let gone = f64::max(1.0 - left, 0.0);
            for (with, j) in with.iter_mut().zip(a.read.places()) {
                for (to, i) in with.iter_mut().zip(b.read.places()) {
                    let offset = if i == j { self.offset[*i] } else { 0.0 };
                    *to = [gone * with_sound[*i][*j] + left * common[*i][*j] + offset];
                }
                factor.solve(with);
            }
            let (sound, both) = (a.component, 2.0 * gone * f64::min(left, 1.0));
            let mut part = a.read.part_of(|i, j| {
                let correlated = sound.passing.at(i, j) + 0.5 * (with_sound[i][j] + with_sound[j][i]);
                gone * gone * (sound.lasting.at(i, j) + sound.passing.at(i, j))
                    + left * left * scale_after.at(i, j)
                    + both * correlated
            });
            let pairs = (0..count_after).flat_map(|k| (0..=k).map(move |l| (k, l)));
            for (entry, (k, l)) in part.iter_mut().zip(pairs) {
                let [explained] = factor.product(&with[k], &with[l]);
                *entry -= explained;
            }
            second.fill(lane, |at| part[at], &noise);
        }
        second.factorise();
        let [narrow] = factor.narrow();
        let narrow_after = second.narrow();
        let (base, base_after, freedom) = (b.base(of), a.base(of), b.component.freedom);
        let mut densities = [0.0; PARTS];
        for row in rows {
            let parts = self.parts(row, all);
            let mut off: Vectors<1> = [[0.0]; DIMENSIONS];
            for (off, i) in off.iter_mut().zip(b.read.places()) {
                *off = [b.value[*i] - base[*i] - row.shift_of(*i, b.few)];
            }
            factor.solve(&mut off);
            let squared = factor.product(&off, &off);
            let [fall] = freedom.fall(squared, count);
            let first = f64::from(row.weight) * self.peaks[0][count] * narrow * fall;
            let stretch = freedom.stretch(squared[0], count);
            let mut again: Vectors<PARTS> = [[0.0; PARTS]; DIMENSIONS];
            for (k, (to, i)) in again.iter_mut().zip(a.read.places()).enumerate() {
                let sound = a.component.mean[*i];
                let faulty = base_after[*i] + row.shift_of(*i, a.few);
                for (lane, left) in parts.iter().enumerate() {
                    let [told] = factor.product(&with[lane][k], &off);
                    to[lane] = a.value[*i] - (sound + left * (faulty - sound)) - told;
                }
            }
            second.solve(&mut again);
            let squared = second.product(&again, &again).map(|squared| squared / stretch);
            let fall = freedom.after(count).fall(squared, count_after);
            let top = first * self.peaks[1][count_after] / libm::pow(stretch, 0.5 * count_after as f64);
            for lane in 0..PARTS {
                densities[lane] += top * narrow_after[lane] * fall[lane];
            }
        }
        densities
    }

    /// Covariance of the faulty state with itself at the other visit. One factor for the whole matrix keeps what remains of it
    /// positive definite, whatever the correlations of the passing part.
    fn common(&self, of: &Scales, scale: &Symmetric, scale_after: &Symmetric) -> Matrix {
        let (b, a) = (self.before.component, self.after.component);
        let (matrix, matrix_after, part) = if of.is_sound() {
            (&b.lasting, &a.lasting, LASTS)
        } else {
            (scale, scale_after, LASTS * (1.0 - self.passes(scale)))
        };
        carried(matrix, matrix_after, &[part; DIMENSIONS])
    }

    /// Covariance of the faulty state before with the sound one after: zero where the compressor does not pump.
    fn with_sound(&self, of: &Scales, scale: &Symmetric) -> Matrix {
        let (b, a) = (self.before.component, self.after.component);
        let stays = (1.0 - self.passes(scale)) * f64::from(of.counted_from == CountedFrom::Vehicle);
        let part = core::array::from_fn(|i| {
            LASTS_IN_FAULTY * f64::min(ratio(stays * scale.at(i, i), b.lasting.at(i, i)), 1.0)
        });
        carried(&b.lasting, &a.lasting, &part)
    }

    /// The passing share of a faulty state's variance, on average over the features that were read.
    fn passes(&self, scale: &Symmetric) -> f64 {
        let (read, passing) = (&self.before.read, &self.before.component.passing);
        let each = read.places().iter();
        let sum: f64 = each.map(|i| f64::min(passing.at(*i, *i) / scale.at(*i, *i), 1.0)).sum();
        let (least, most) = PASSES;
        f64::clamp(sum / f64::max(read.count() as f64, 1.0), least, most)
    }

    /// The parts of the shift of a row that are left at the parts [`LEFT`] of its severity, along the shift curve of the fault.
    fn parts(&self, row: &ShiftRow, all: &[ShiftRow]) -> [f64; PARTS] {
        let a = &self.after;
        let own: Vector = core::array::from_fn(|i| row.shift_of(i, a.few));
        let along = |other: &ShiftRow| {
            let each = a.read.places().iter();
            each.map(|i| own[*i] * other.shift_of(*i, a.few)).sum::<f64>()
        };
        let (whole, [_, mean, _]) = (along(row), row.severity.map(f64::from));
        let mut parts = SHIFTED;
        if mean <= 0.0 || whole <= 0.0 {
            return parts;
        }
        let mildest = all.iter().map(|row| row.severity[0]).fold(f32::INFINITY, f32::min);
        for (part, left) in parts.iter_mut().zip(LEFT).take(WHOLE).skip(1) {
            let wanted = left * mean;
            let (mut sum, mut weights) = (0.0, 0.0);
            for other in all {
                let [low, middle, high] = other.severity.map(f64::from);
                // Below the mildest severity the shift falls to zero.
                let holds = wanted <= high && (wanted >= low || other.severity[0] <= mildest);
                if holds && middle > 0.0 {
                    sum += f64::from(other.weight) * wanted / middle * along(other);
                    weights += f64::from(other.weight);
                }
            }
            if weights > 0.0 {
                *part = f64::clamp(sum / weights / whole, LEAST_PART, left);
            }
        }
        parts
    }
}

/// The least part of a shift that is left with a part of a fault. Source: engineering judgement.
const LEAST_PART: f64 = 0.02;

/// Covariances of the features at one visit with those at the other.
type Matrix = [Vector; DIMENSIONS];

/// The covariance with the other visit from a scale matrix: columns rescaled to the deviations of `after`, rows times `part`.
fn carried(matrix: &Symmetric, after: &Symmetric, part: &Vector) -> Matrix {
    let grown: Vector = core::array::from_fn(|j| ratio(after.at(j, j), matrix.at(j, j)));
    core::array::from_fn(|i| core::array::from_fn(|j| part[i] * matrix.at(i, j) * grown[j]))
}

/// The ratio of two standard deviations.
fn ratio(variance: f64, other: f64) -> f64 {
    sqrt(f64::max(variance, 0.0) / f64::max(other, LEAST_VARIANCE))
}

/// Avoids a division by zero for a feature that a source does not know, in the square of its unit.
const LEAST_VARIANCE: f64 = 1e-9;

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::circuit::Reading;
    use crate::expected::SoundModel;
    use crate::names::{Compressor, Expansion, Refrigerant};
    use crate::units::{GaugePressure, PressureDifference, Surroundings, celsius};
    use crate::vehicle::{Conditions, System};

    /// Zero and gain of one gauge are the same at both visits, the step to which it is read is not: 0.6 of its variance is common,
    /// however fine or coarse it is (engineering judgement). Of two gauges nothing is.
    #[test]
    fn one_gauge_errs_alike_at_both_visits() {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let conditions = Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL);
        let model = SoundModel::of(&system, &conditions).unwrap();
        let read = |uncertain_pa: f64| Readings {
            low_side: Some(Reading {
                value: GaugePressure::from_bar(2.2).into(),
                standard_uncertainty: PressureDifference::from_pa(uncertain_pa),
            }),
            ..Readings::default()
        };
        let correlation = |before_pa: f64, after_pa: f64| {
            let visits = [before_pa, after_pa].map(read);
            let [before, after] = visits.map(|readings| {
                let air = conditions.surroundings;
                let features = FeatureVector::of(system.refrigerant, &readings, conditions.ambient, air).unwrap();
                Moment::of(&model.components()[0], &features, model.few())
            });
            let low = FeatureVector::LOW_SIDE;
            let variance = before.uncertainty[low] * after.uncertainty[low];
            let stacked = Stacked::of(before, after, &Instruments::same(&visits[0], &visits[1]));
            assert!(stacked.offset[FeatureVector::HIGH_SIDE] <= 0.0);
            stacked.offset[low] / variance
        };
        for uncertain_pa in [500.0, 20_000.0] {
            let same = correlation(uncertain_pa, uncertain_pa);
            assert!((same - 0.6).abs() < 1e-9, "{same}");
        }
        assert!(correlation(500.0, 20_000.0) <= 0.0);
    }
}
