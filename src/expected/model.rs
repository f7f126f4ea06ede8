//! The model of what a sound system shows: a mixture of multivariate t distributions, one for each source.

use super::constants::{
    REST_DOWN_K, REST_K, REST_UP_K, SETTLE_PRESSURES_S, SETTLE_VENT_S, SETTLED_S, STROKE_LIMIT_AMBIENT_K,
    STROKE_LIMIT_ENGINE_SPEED_HZ, UNSETTLED_PRESSURES_K,
};
use super::known::Known;
use super::sources::{Charts, IndependentKind, SOURCES, Said, Source, VehicleModelKind, add_doubt, between_sources};
use super::weather::Facts;
use crate::circuit::FeatureVector;
use crate::error::Error;
use crate::names::{Compressor, ErrorKind, ExpectedBasis, Feature, Quantity, Refrigerant};
use crate::numerics::multivariate_t::{DIMENSIONS, Freedom, Student, Symmetric, Vector};
use crate::numerics::{normal_quantile, sqrt};
use crate::saturation::{self, pseudo_critical};
use crate::units::{Surroundings, in_kelvins};
use crate::vehicle::{Conditions, System};

/// Normal quantile that bounds the middle 80 %.
pub(super) const QUANTILE_80: f64 = 1.281_551_565_544_600_4;
/// Normal quantile that bounds the middle 95 %.
pub(super) const QUANTILE_95: f64 = 1.959_963_984_540_054;

/// The distribution of a figure over sound vehicles.
///
/// ```
/// use coldloop::expected::Bands;
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let vent = Bands::of(&system, &Conditions::new(celsius(29.0), Surroundings::at_altitude(1_600.0)?))?.vent;
/// assert!(vent.low_95 < vent.low_80 && vent.low_80 < vent.median && vent.median < vent.high_80 && vent.high_80 < vent.high_95);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Band<Q> {
    /// 2.5 % of sound vehicles lie below.
    pub low_95: Q,
    /// 10 % lie below.
    pub low_80: Q,
    /// Half lie below.
    pub median: Q,
    /// 10 % lie above.
    pub high_80: Q,
    /// 2.5 % lie above.
    pub high_95: Q,
}

impl<Q: Copy> Band<Q> {
    /// The band with each limit converted.
    pub(crate) fn map<R>(&self, convert: impl Fn(Q) -> R) -> Band<R> {
        Band {
            low_95: convert(self.low_95),
            low_80: convert(self.low_80),
            median: convert(self.median),
            high_80: convert(self.high_80),
            high_95: convert(self.high_95),
        }
    }
}

/// The highest pressure to which a band reaches, Pa absolute: by then protection has stopped the compressor, at 27 to 32 bar gauge as
/// in the vehicle model.
const PROTECTION_PA: f64 = 3.25e6;
/// The same of R-744, as its vehicles have it.
const PROTECTION_R744_PA: f64 = 14.0e6;

/// What a sound system of one kind shows in some conditions.
///
/// For every source one multivariate t distribution with five degrees of freedom over the whole [`FeatureVector`]: its mean
/// follows the conditions, its scale matrix has a lasting part (make, vehicle, disagreement between sources: the same in every
/// visit of a vehicle) and a passing one (conditions that were not noted, repeatability). Everything said about sound systems
/// comes from here: bands, deviations, the likelihood of "no fault", predictions and proof.
///
/// Sources: `tables/atlas` and `tables/bands`, each figure with its own. For R-744, R-152a and the refrigerants of buses there
/// is only one source; the disagreement between sources is taken from R-134a then, and [`Self::basis`] says so.
///
/// ```
/// use coldloop::Feature;
/// use coldloop::expected::SoundModel;
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal);
/// let model = SoundModel::of(&system, &Conditions::new(celsius(25.0), Surroundings::SEA_LEVEL))?;
/// let low_side = model.band(Feature::LowSide).unwrap();
/// assert!((268.0..280.0).contains(&low_side.median));
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SoundModel {
    components: [Component; SOURCES],
    count: usize,
    few: [f64; 4],
    ambient_k: f64,
    /// Glide at the high side's median, K; zero for a pure refrigerant.
    glide_k: f64,
    /// Upper limit of the high side's band, K above the ambient.
    limit_k: f64,
    cycles: bool,
    beyond_fit: bool,
    basis: ExpectedBasis,
}

/// What one source says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Component {
    pub(crate) source: Source,
    /// Share in the mixture.
    pub(crate) weight: f64,
    pub(crate) mean: Vector,
    pub(crate) lasting: Symmetric,
    pub(crate) passing: Symmetric,
    pub(crate) freedom: Freedom,
    /// What is added to the table's scale matrix of a fault in this case: disagreement between sources, conditions that were
    /// not noted.
    pub(crate) more: Symmetric,
    /// The mean of the kind, and by how much each lasting variance has shrunk, where this vehicle is known.
    pub(crate) of_kind: Vector,
    pub(crate) gained: Vector,
    pub(super) known: bool,
}

impl Component {
    const NONE: Self = Self {
        source: Source::VehicleModel,
        weight: 0.0,
        mean: [0.0; DIMENSIONS],
        lasting: Symmetric::ZERO,
        passing: Symmetric::ZERO,
        freedom: Freedom::USUAL,
        more: Symmetric::ZERO,
        of_kind: [0.0; DIMENSIONS],
        gained: [0.0; DIMENSIONS],
        known: false,
    };

    /// The component of a source: the mean of `said`, moved.
    fn of(source: Source, said: &Said, moved: &Vector, doubted: &Symmetric, between: &Symmetric) -> Self {
        let mean = core::array::from_fn(|i| said.mean[i] + moved[i]);
        Self {
            source,
            weight: source.weight(),
            mean,
            of_kind: mean,
            lasting: said.lasting.plus(between),
            passing: said.passing.plus(doubted),
            more: between.plus(doubted),
            ..Self::NONE
        }
    }

    /// Whether something is known of the vehicle itself.
    pub(crate) fn is_known(&self) -> bool {
        self.known
    }

    /// Scale matrix of one state.
    pub(crate) fn scale(&self) -> Symmetric {
        self.lasting.plus(&self.passing)
    }

    /// The distribution of a sum of features.
    fn along(&self, view: &View) -> Student {
        let (mut mean, mut variance) = (view.from, 0.0);
        for (i, one) in view.features() {
            mean += one * self.mean[i];
            for (j, other) in view.features() {
                variance += one * other * (self.lasting.at(i, j) + self.passing.at(i, j));
            }
        }
        Student {
            mean,
            scale: sqrt(variance),
            freedom: self.freedom,
        }
    }
}

/// A figure as one feature, or as one less another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct View {
    pub(crate) plus: usize,
    pub(crate) minus: Option<usize>,
    /// The value that is added to them, K.
    pub(crate) from: f64,
}

impl View {
    pub(crate) fn features(self) -> impl Iterator<Item = (usize, f64)> {
        let minus = self.minus.map(|i| (i, -1.0));
        core::iter::once((self.plus, 1.0)).chain(minus)
    }
}

impl SoundModel {
    /// Whether any source covers such systems.
    pub fn speaks_of(system: &System) -> bool {
        VehicleModelKind::of(system).is_some()
    }

    /// The systems that a source covers.
    pub fn systems() -> impl Iterator<Item = System> {
        VehicleModelKind::systems()
    }

    /// The model of sound systems of this kind in these conditions.
    ///
    /// What is not given is taken as [`super::Weather::of`] says, and widens the passing spread. A command of the condenser's fan,
    /// the number of evaporators and the places of the ports move the mean of every source and scale its spread, as
    /// `tables/atlas/vehicle-model-known.csv` has it; with R-744 they do nothing.
    ///
    /// Errors: as [`super::Weather::of`]; `NotAvailable` for a refrigerant that no source covers.
    pub fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        let facts = Facts::of(system, conditions)?;
        let kind = VehicleModelKind::of(system).ok_or(Error::of(ErrorKind::NotAvailable, Quantity::Name))?;
        let mut own = kind.said(&facts);
        let mut doubted = Symmetric::ZERO;
        let doubts = facts.doubts(system, conditions);
        for doubt in doubts.iter().flatten() {
            add_doubt(&mut doubted, doubt, &|facts| kind.mean(&facts.weather()));
        }
        add_unsettled(&mut doubted, conditions);
        let mut independent = IndependentKind::of(system).map(|of| of.said(&facts, (kind, &own)));
        let between = between_sources(independent.is_none());
        if let Some(known) = Known::of(system, conditions, &facts) {
            known.apply(&mut own);
            independent.iter_mut().for_each(|said| known.apply(said));
            known.add_doubt(&mut doubted);
        }
        let mut model = Self {
            components: [Component::NONE; SOURCES],
            count: 0,
            few: facts.of_atlas().moves(),
            ambient_k: facts.ambient_k,
            glide_k: 0.0,
            limit_k: f64::INFINITY,
            cycles: system.compressor == Compressor::FixedClutch && system.refrigerant != Refrigerant::R744,
            beyond_fit: facts.beyond_fit(system, conditions),
            basis: ExpectedBasis::VehicleModel,
        };
        let late_k = vent_to_come(conditions) * f64::max(-own.mean[FeatureVector::VENT], 0.0);
        let mut add = |source: Source, said: &Said, moved: &Vector| {
            let mut component = Component::of(source, said, moved, &doubted, &between);
            component.mean[FeatureVector::VENT] += 0.5 * late_k;
            *component.passing.at_mut(FeatureVector::VENT, FeatureVector::VENT) += 0.25 * late_k * late_k;
            model.components[model.count] = component;
            model.count += 1;
        };
        let charts = Charts::of(system, &facts);
        let pull = charts.as_ref().map_or([0.0; DIMENSIONS], |charts| charts.pull);
        add(Source::VehicleModel, &own, &pull);
        if let Some(independent) = &independent {
            add(Source::IndependentSimulator, independent, &pull);
        }
        if let Some(charts) = charts {
            add(Source::Published, &own, &charts.mean);
        }
        if model.count > 1 {
            model.basis = ExpectedBasis::Sources;
        }
        model.normalise();
        model.bound(system, conditions.surroundings);
        Ok(model)
    }

    /// Changes every component by what is known of the vehicle, and sets the basis.
    pub(super) fn known(&mut self, basis: ExpectedBasis, change: impl Fn(&mut Component)) {
        self.components[..self.count].iter_mut().for_each(change);
        self.basis = basis;
        self.normalise();
    }

    fn normalise(&mut self) {
        let components = &mut self.components[..self.count];
        let all: f64 = components.iter().map(|component| component.weight).sum();
        if all > 0.0 {
            for component in components {
                component.weight /= all;
            }
        }
    }

    /// Glide and highest pressure of the high side.
    pub(super) fn bound(&mut self, system: &System, air: Surroundings) {
        let limit_pa = match system.high_cut_out {
            Some(pressure) => pressure.pa() + air.pressure().pa(),
            None if system.refrigerant == Refrigerant::R744 => PROTECTION_R744_PA,
            None => PROTECTION_PA,
        };
        let limit_k = if system.refrigerant == Refrigerant::R744 {
            pseudo_critical::along_k(system.refrigerant, limit_pa)
        } else {
            saturation::bubble_temperature_k(system.refrigerant, limit_pa)
        };
        self.limit_k = limit_k.map_or(f64::INFINITY, |limit_k| limit_k - self.ambient_k);
        let high_k = self.ambient_k + self.components[0].mean[FeatureVector::HIGH_SIDE];
        let glide_k = saturation::bubble_pressure_pa(system.refrigerant, high_k)
            .and_then(|p_pa| saturation::glide_k(system.refrigerant, p_pa));
        self.glide_k = glide_k.unwrap_or(0.0);
    }

    /// What the model is based on.
    pub const fn basis(&self) -> ExpectedBasis {
        self.basis
    }

    /// Whether a condition lies beyond those of the fit, so that the end of the fit is used instead.
    pub const fn is_beyond_fit(&self) -> bool {
        self.beyond_fit
    }

    /// The band of a figure of sound systems, in K (points as temperatures, differences as such) or as ln(1 + engagements per
    /// minute); `None` for a clutch that does not cycle and for a pressure at rest.
    ///
    /// The band of the high side ends at the system's cut-out, or where protection takes over.
    pub fn band(&self, feature: Feature) -> Option<Band<f64>> {
        let view = self.view(feature)?;
        let z = [-QUANTILE_95, -QUANTILE_80, 0.0, QUANTILE_80, QUANTILE_95];
        let [low_95, low_80, median, high_80, high_95] = self.quantiles(&view, z);
        let mut band = Band {
            low_95,
            low_80,
            median,
            high_80,
            high_95,
        };
        if feature == Feature::HighSide {
            let limit_k = f64::max(self.limit_k + self.ambient_k, band.median);
            band.high_80 = f64::min(band.high_80, limit_k);
            band.high_95 = f64::min(band.high_95, limit_k);
        }
        Some(band)
    }

    /// How far a reading of a figure lies from the median of sound systems, in standard deviations of a normal distribution with the
    /// same probability below; `standard_uncertainty` is that of the instrument.
    pub fn deviation(&self, feature: Feature, value: f64, standard_uncertainty: f64) -> Option<f64> {
        let view = self.view(feature)?;
        Some(self.deviation_along(&view, value, standard_uncertainty))
    }

    pub(crate) fn deviation_along(&self, view: &View, value: f64, standard_uncertainty: f64) -> f64 {
        let noise = standard_uncertainty * standard_uncertainty;
        let (mut below, mut above) = (0.0, 0.0);
        for component in self.components() {
            let student = component.along(view).as_read(noise);
            below += component.weight * student.below(value);
            // The upper tail by symmetry, so that it is not lost to rounding beside one.
            above += component.weight * student.below(2.0 * student.mean - value);
        }
        if below < above {
            normal_quantile(f64::max(below, f64::MIN_POSITIVE))
        } else {
            -normal_quantile(f64::max(above, f64::MIN_POSITIVE))
        }
    }

    /// A figure as features; `None` where it has no band.
    pub(crate) fn view(&self, feature: Feature) -> Option<View> {
        use FeatureVector as F;
        let point = |plus: usize| View {
            plus,
            minus: None,
            from: self.ambient_k,
        };
        let difference = |plus: usize, minus: usize, from: f64| View {
            plus,
            minus: Some(minus),
            from,
        };
        Some(match feature {
            Feature::LowSide => point(F::LOW_SIDE),
            Feature::HighSide => point(F::HIGH_SIDE),
            Feature::Vent => point(F::VENT),
            Feature::Superheat => difference(F::SUCTION_LINE, F::LOW_SIDE, 0.0),
            Feature::Subcooling => difference(F::HIGH_SIDE, F::LIQUID_LINE, 0.0),
            Feature::DischargeSuperheat => difference(F::DISCHARGE_LINE, F::HIGH_SIDE, -self.glide_k),
            Feature::ClutchCycles if self.cycles => View {
                plus: F::CLUTCH_CYCLES,
                minus: None,
                from: 0.0,
            },
            Feature::ClutchCycles | Feature::RestPressure => return None,
        })
    }

    /// How far the mean of a feature lies below the ambient, K, and its standard deviation: of a sound system, over the sources.
    pub(crate) fn below_ambient(&self, place: usize) -> (f64, f64) {
        let (mut mean, mut variance) = (0.0, 0.0);
        for component in self.components() {
            mean += component.weight * component.mean[place];
            variance += component.weight * (component.lasting.at(place, place) + component.passing.at(place, place));
        }
        (-mean, sqrt(variance))
    }

    /// The sources, each with its weight.
    pub(crate) fn components(&self) -> &[Component] {
        &self.components[..self.count]
    }

    /// Ambient, water and speed as the atlas counts them.
    pub(crate) const fn few(&self) -> &[f64; 4] {
        &self.few
    }

    pub(crate) const fn ambient_k(&self) -> f64 {
        self.ambient_k
    }

    /// The figures below which lie as many sound systems as below each `z` of a standard normal distribution.
    pub(crate) fn quantiles<const N: usize>(&self, view: &View, z: [f64; N]) -> [f64; N] {
        let mixture = Mixture(core::array::from_fn(|at| {
            let component = self.components().get(at)?;
            let student = component.along(view);
            Some((component.weight, student, student.top()))
        }));
        z.map(|z| mixture.quantile(z))
    }
}

/// A figure over the sources: the weight of each, and its distribution with the density at the mean.
struct Mixture([Option<(f64, Student, f64)>; SOURCES]);

impl Mixture {
    /// Halley's method from the normal distribution of the same mean and variance with the tails of a t distribution, kept
    /// within a shrinking interval. Tails: Abramowitz & Stegun, 26.7.5, first term.
    fn quantile(&self, z: f64) -> f64 {
        let share = normal_share(z);
        let each = || self.0.iter().flatten();
        let mean: f64 = each().map(|(weight, student, _)| weight * student.mean).sum();
        let spread = |(weight, student, _): &(f64, Student, f64)| {
            let apart = student.mean - mean;
            weight * (student.scale * student.scale + apart * apart)
        };
        let scale = sqrt(each().map(spread).sum());
        if scale <= 0.0 {
            return mean;
        }
        let least = each().map(|(_, student, _)| student.freedom.0).min().unwrap_or(1);
        let (mut low, mut high) = (mean - FARTHEST * scale, mean + FARTHEST * scale);
        let mut x = mean + scale * (z + z * (z * z + 1.0) / (4.0 * f64::from(least)));
        for _ in 0..STEPS {
            let (mut off, mut density, mut slope) = (-share, 0.0, 0.0);
            for (weight, student, top) in each() {
                let (own, own_slope) = student.density_from(*top, x);
                off += weight * student.below(x);
                density += weight * own;
                slope += weight * own_slope;
            }
            if off < 0.0 {
                low = x;
            } else {
                high = x;
            }
            let newton = off / density;
            let next = x - newton / (1.0 - 0.5 * newton * slope / density).clamp(0.5, 2.0);
            let next = if next > low && next < high {
                next
            } else {
                0.5 * (low + high)
            };
            let moved = libm::fabs(next - x);
            x = next;
            if moved < NEAR_ENOUGH * scale {
                break;
            }
        }
        x
    }
}

/// Quantiles are searched within this many scales of the mean, in at most this many steps, until a step is less than this part
/// of a scale; the error is then of its third power.
const FARTHEST: f64 = 60.0;
const NEAR_ENOUGH: f64 = 1e-4;
const STEPS: u32 = 60;

/// Probability below `z` of a standard normal distribution.
fn normal_share(z: f64) -> f64 {
    0.5 * libm::erfc(-z * core::f64::consts::FRAC_1_SQRT_2)
}

/// Whether the system had run long enough; `None` where that is unknown.
pub(crate) fn settled(conditions: &Conditions) -> Option<bool> {
    conditions.running_for.map(|time| time.seconds() >= SETTLED_S)
}

/// Whether a variable compressor may be out of stroke here, which is no fault.
pub(crate) fn stroke_limit(system: &System, conditions: &Conditions) -> bool {
    let variable = matches!(
        system.compressor,
        Compressor::VariableInternal | Compressor::VariableExternal
    );
    let slow = conditions
        .driving_hz(system.compressor)
        .is_none_or(|hz| hz < STROKE_LIMIT_ENGINE_SPEED_HZ);
    variable && slow && in_kelvins(conditions.ambient) > STROKE_LIMIT_AMBIENT_K
}

/// Adds what has not settled to the passing spread of both sides.
fn add_unsettled(passing: &mut Symmetric, conditions: &Conditions) {
    let left = conditions
        .running_for
        .map_or(0.0, |time| libm::exp(-time.seconds() / SETTLE_PRESSURES_S));
    let unsettled_k = UNSETTLED_PRESSURES_K * left;
    for side in [FeatureVector::LOW_SIDE, FeatureVector::HIGH_SIDE] {
        *passing.at_mut(side, side) += unsettled_k * unsettled_k;
    }
}

/// The part of the vent's fall that is still to come, less what is left of it after ten minutes.
fn vent_to_come(conditions: &Conditions) -> f64 {
    let left = |s: f64| libm::exp(-s / SETTLE_VENT_S);
    conditions
        .running_for
        .map_or(0.0, |time| f64::max(left(time.seconds()) - left(SETTLED_S), 0.0))
}

/// Saturation temperature of a sound system at rest above the ambient, K: median, and standard deviations below and above it.
/// Sources: `tables/bands/healthy.toml`.
pub(crate) const AT_REST: (f64, f64, f64) = (REST_K, REST_DOWN_K, REST_UP_K);

#[cfg(test)]
mod tests;
