//! The judgement of a case, and what follows from it: the answer, the reasons, the plan.

use super::answer::{Action, Contribution, Diagnosis, EVIDENCE, Plan, RankedFault, TwoFaults, Verdict};
use super::case::Case;
use super::faults::{NONE, Priors, index};
use super::limits::{self, Stop};
use super::list::List;
use super::looks::Looks;
use super::next_check::{self, Next, Standing};
use super::posterior::{Alone, Posterior};
use super::rest::Resting;
use super::scene::{Scene, warm_for_rest};
use super::settings::Settings;
use super::verdict::{self, Measured};
use super::{cautions, features, notes, pairs, rest};
use crate::circuit::{Derived, FeatureVector, Observations, Reading, Readings};
use crate::error::Error;
use crate::expected::{Bands, SoundModel};
use crate::names::{Check, EntryError, Fault, Feature, QualityNote, RestFinding, VerdictKind};
use crate::units::kelvins_difference;

/// The judgement of a case, from which the answer, the reasons and the plan follow; [`judge`](super::judge()) calculates it.
///
/// It holds the posterior, from which reasons and plan are calculated. The answer as plain data is a [`Diagnosis`].
///
/// ```
/// use coldloop::diagnosis::{Settings, judge};
/// use coldloop::intake;
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let settings = Settings::default();
/// let judgement = judge(&case, &settings)?;
/// assert_eq!(judgement.plan(&settings).steps[0].action, judgement.diagnosis(&settings)?.next_step.unwrap());
/// # Ok::<(), intake::Refusal>(())
/// ```
pub struct Judgement {
    scene: Scene,
    posterior: Posterior,
    standing: Standing,
    derived: Derived,
    faults: List<RankedFault, { Fault::ALL.len() }>,
    none_of_these: f64,
    measured: List<Measured, { Feature::ALL.len() }>,
    out_of_line: Option<Feature>,
    two_faults: Option<TwoFaults>,
    verdict: Verdict,
    rest: Option<RestFinding>,
    resting: Option<Resting>,
    stop: Option<Stop>,
    near_limit: bool,
    quality: List<QualityNote, { QualityNote::ALL.len() }>,
}

impl Judgement {
    /// Judges a case; the settings are checked already. With the compressor at rest both sides are at saturation while any
    /// liquid is left.
    pub(super) fn of(case: &Case, settings: &Settings, priors: &Priors) -> Result<Self, Error> {
        case.check()?;
        let at_rest = case.conditions.at_rest(case.system.compressor);
        if at_rest && warm_for_rest(case) {
            return Self::unread(case, (settings, priors));
        }
        let mut scene = Scene::of(case);
        let read = read(case, &mut scene, at_rest)?;
        Ok(Self::weighed(case, (settings, priors), &scene, (derived(case)?, read)))
    }

    /// A judgement that rests on observations alone, whatever was read.
    #[inline(never)]
    fn unread(case: &Case, by: (&Settings, &Priors)) -> Result<Self, Error> {
        let mut silent = *case;
        silent.readings = Readings::default();
        let derived = derived(case)?;
        let mut judgement = Self::weighed(&silent, by, &Scene::of(case), (derived, None));
        (judgement.rest, judgement.resting, judgement.stop) = (None, None, None);
        if case.observations == Observations::NONE {
            // The odds would be the priors alone.
            judgement.faults.clear();
            judgement.none_of_these = 0.0;
        }
        let notes = judgement.quality;
        judgement.quality = List::new(QualityNote::BandsOnly);
        for note in notes.iter().filter(|note| **note != QualityNote::FewReadings) {
            judgement.quality.push(*note);
        }
        judgement.quality.push(QualityNote::BandsOnly);
        Ok(judgement)
    }

    /// A case in its conditions.
    #[inline(never)]
    fn weighed(
        case: &Case,
        (settings, priors): (&Settings, &Priors),
        scene: &Scene,
        (derived, read): (Derived, Option<FeatureVector>),
    ) -> Self {
        let at_rest = case.conditions.at_rest(case.system.compressor);
        let posterior = Posterior::of(case, (settings, priors), scene, (read, at_rest));
        Self::concluded(case, settings, scene, (derived, posterior))
    }

    /// What follows from the posterior.
    #[inline(never)] // so that the posterior is worked out on less stack
    fn concluded(case: &Case, settings: &Settings, scene: &Scene, (derived, posterior): (Derived, Posterior)) -> Self {
        let at_rest = case.conditions.at_rest(case.system.compressor);
        let mut faults = verdict::ranked(&posterior, scene);
        let leading = faults.first().map_or(Fault::NoFault, |ranked| ranked.fault);
        let measured = verdict::measured(&posterior, scene, &derived);
        let out_of_line = verdict::out_of_line(&posterior, scene, &measured, leading);
        let doubtful = posterior.unexplained >= BAD_FIT || out_of_line.is_some();
        let two_faults = doubtful
            .then(|| pairs::likeliest(&posterior, settings, scene))
            .flatten();
        let mut quality = verdict::quality(case, scene, &posterior, (out_of_line, two_faults));
        notes::add(case, &derived, &mut quality);
        let resting = posterior.rest().and_then(|_| rest::resting(case, AMBIENT_ERROR_K));
        let rest = match &resting {
            Some(resting) => Some(resting.finding),
            None if at_rest => features::equal_sides(case).map(|_| RestFinding::NotEqualised),
            None => None,
        };
        if let Some(missing) = resting.and_then(|resting| resting.missing) {
            verdict::weigh_missing(faults.items_mut(), missing);
        }
        let high_side = limits::high_side(case);
        let stop = limits::stop(case, high_side, &derived, rest);
        Self {
            verdict: verdict::verdict(settings, &posterior, &faults, &measured, (out_of_line, two_faults)),
            standing: Standing::of(case, &posterior, stop.map(|stop| stop.reason)),
            none_of_these: posterior.probability[NONE],
            rest,
            resting,
            stop,
            near_limit: high_side.is_some_and(|high| high.is_near(case.system.refrigerant)),
            scene: *scene,
            posterior,
            derived,
            faults,
            measured,
            out_of_line,
            two_faults,
            quality,
        }
    }

    /// Makes this reading the next step, where it can be taken, so that it proves a repair.
    pub(crate) const fn ask_for(&mut self, wanted: Check) {
        self.standing = self.standing.proving(wanted);
    }

    /// The answer as plain data, with the next step for these settings.
    ///
    /// Errors: `OutOfRange` where a band of a sound system leaves the saturation line.
    pub fn diagnosis(&self, settings: &Settings) -> Result<Diagnosis, Error> {
        let next = settings
            .next_checks
            .then(|| next_check::next(&self.posterior, &self.scene, settings, self.standing));
        self.with_next(next)
    }

    #[inline(never)] // so that the next step is searched on less stack
    fn with_next(&self, next: Option<Next>) -> Result<Diagnosis, Error> {
        let bands = self.scene.bands();
        let expected = self.scene.sound.as_ref().map(|sound| {
            let (system, air) = (&self.scene.system, self.scene.air);
            Bands::from_bands(sound, &bands, system.refrigerant, air)
        });
        let expected = expected.transpose()?;
        Ok(Diagnosis {
            verdict: self.verdict,
            faults: self.faults,
            none_of_these: self.none_of_these,
            expected,
            basis: self.scene.sound.as_ref().map(SoundModel::basis),
            derived: self.derived,
            deviations: verdict::deviations(&self.measured, &bands),
            out_of_line: self.out_of_line,
            rest: self.rest,
            resting: self.resting,
            entry_error: self.entry_error(),
            two_faults: self.two_faults,
            next_step: next
                .as_ref()
                .and_then(|next| next.step)
                .filter(|step| !self.is_too_much(*step)),
            next_checks: next.map_or_else(next_check::unranked, |next| next.checks),
            stop: self.stop,
            cautions: cautions::general(&self.scene.system, self.stop.as_ref(), self.near_limit),
            quality: self.quality,
        })
    }

    /// The evidence of one visit, to be combined with that of another one: the posterior of [`Self::of`] without a verdict.
    ///
    /// Errors: those of [`Self::of`].
    #[inline(never)]
    pub(super) fn alone(case: &Case, settings: &Settings) -> Result<Alone, Error> {
        case.check()?;
        let at_rest = case.conditions.at_rest(case.system.compressor);
        let (priors, mut scene) = (settings.priors(), Scene::of(case));
        if at_rest && warm_for_rest(case) {
            derived(case)?;
            let mut silent = *case;
            silent.readings = Readings::default();
            let posterior = Posterior::of(&silent, (settings, &priors), &scene, (None, at_rest));
            return Ok(posterior.alone(&settings.looks));
        }
        let read = read(case, &mut scene, at_rest)?;
        derived(case)?;
        let posterior = Posterior::of(case, (settings, &priors), &scene, (read, at_rest));
        Ok(posterior.alone(&settings.looks))
    }

    /// What the readings allow one to say.
    pub const fn verdict(&self) -> &Verdict {
        &self.verdict
    }

    /// Every fault that exists in the system, the likeliest first.
    pub fn faults(&self) -> &[RankedFault] {
        &self.faults
    }

    /// Probability that the cause is none of the list.
    pub const fn none_of_these(&self) -> f64 {
        self.none_of_these
    }

    /// The finding from the pressure at rest; `None` for a running system.
    pub const fn rest(&self) -> Option<RestFinding> {
        self.rest
    }

    /// Superheat, subcooling, pressure ratio and the other derived figures, each with its uncertainty.
    pub const fn derived(&self) -> &Derived {
        &self.derived
    }

    /// The likeliest way in which the gauges mislead, with its probability; `None` below 1 %.
    pub fn entry_error(&self) -> Option<(EntryError, f64)> {
        let gauge_error = self.posterior.probability[index(Fault::GaugeError)];
        let shares = EntryError::ALL.into_iter().zip(*self.posterior.entry_errors());
        let (likeliest, share) = shares.max_by(|a, b| a.1.total_cmp(&b.1))?;
        let probability = gauge_error * share;
        (probability >= 0.01).then_some((likeliest, probability))
    }

    /// What to do next and what then, three steps deep, for the prices of `settings`.
    ///
    /// At every step the plan weighs each check by what it saves on average (the value of information of Heckerman, Breese &
    /// Rommelse 1995, looking as far ahead as the plan is deep), against repairing the fault with the highest probability for
    /// its cost and checking again. What several steps need, such as recovering the charge, is paid once.
    ///
    /// ```
    /// use coldloop::circuit::{Gauge, Reading, Readings};
    /// use coldloop::diagnosis::{Action, Case, Settings, judge};
    /// use coldloop::units::{GaugePressure, Surroundings, fahrenheit};
    /// use coldloop::vehicle::{Conditions, System};
    /// use coldloop::{Compressor, Expansion, Refrigerant};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let readings = Readings {
    ///     low_side: Some(Reading::pressure(GaugePressure::from_psig(70.0), Gauge::LOW_SIDE)),
    ///     high_side: Some(Reading::pressure(GaugePressure::from_psig(125.0), Gauge::HIGH_SIDE)),
    ///     ..Readings::default()
    /// };
    /// let case = Case::new(system, Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL), readings);
    /// let settings = Settings::default();
    /// let plan = judge(&case, &settings)?.plan(&settings);
    /// // Two pressures are not enough to replace a compressor.
    /// assert!(matches!(plan.steps[0].action, Action::Check(_)));
    /// assert!(plan.expected_minutes < plan.without_checks_minutes);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    #[inline(never)] // so that only one plan is on the stack
    pub fn plan(&self, settings: &Settings) -> Plan {
        let mut plan = Plan::EMPTY;
        next_check::plan(&mut plan, &self.posterior, &self.scene, settings, self.standing);
        if plan.steps.first().is_some_and(|step| self.is_too_much(step.action)) {
            plan.clear();
        }
        plan
    }

    /// Whether a step would repair or hand over a system that counts as sound.
    fn is_too_much(&self, step: Action) -> bool {
        self.verdict.kind == VerdictKind::Healthy && matches!(step, Action::Repair(_) | Action::HandOver)
    }

    /// What each piece of evidence says of every fault, for any pair of faults; `settings` are those of the judgement.
    pub const fn reasons<'a>(&'a self, settings: &'a Settings) -> Reasons<'a> {
        Reasons {
            posterior: &self.posterior,
            looks: &settings.looks,
        }
    }
}

/// What each piece of evidence says of every fault; [`Judgement::reasons`] works it out.
///
/// ```
/// use coldloop::diagnosis::{Settings, judge};
/// use coldloop::intake;
/// let case = intake::case_from_toml(include_str!("../../examples/readings/low-charge.toml"))?;
/// let settings = Settings::default();
/// let judgement = judge(&case, &settings)?;
/// let leading = judgement.faults()[0];
/// let because = judgement.reasons(&settings).because(leading.fault, leading.rival);
/// assert!(because.iter().map(|reason| reason.log_odds).sum::<f64>() > 0.0);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
pub struct Reasons<'a> {
    posterior: &'a Posterior,
    looks: &'a Looks,
}

impl Reasons<'_> {
    /// What argues for `fault` and against `rival`: the contributions add up to the logarithm of their odds.
    ///
    /// Readings share the severity of a fault, so that the contribution of each is conditional on those before it, in the order
    /// of [`Feature`]; the sum does not depend on the order.
    ///
    /// Empty when one of the two does not exist in the system.
    pub fn because(&self, fault: Fault, rival: Fault) -> List<Contribution, EVIDENCE> {
        self.posterior.because(self.looks, fault, rival)
    }
}

/// The features of a running system; puts the sound model into `scene`.
fn read(case: &Case, scene: &mut Scene, at_rest: bool) -> Result<Option<FeatureVector>, Error> {
    if !at_rest {
        sound(case, &mut scene.sound)?;
    }
    match &scene.sound {
        Some(sound) => features::running(case, sound, None),
        None => Ok(None),
    }
}

/// Sets the sound model of a running system, with what is known of this vehicle.
#[inline(never)]
fn sound(case: &Case, model: &mut Option<SoundModel>) -> Result<(), Error> {
    let (visits, table) = (case.own_readings.as_ref(), case.own_table.as_ref());
    model
        .insert(SoundModel::of(&case.system, &case.conditions)?)
        .know(&case.system, &case.conditions, visits, table)
}

/// From this probability of an unknown cause or way on, two faults at once are considered. Source: engineering judgement.
const BAD_FIT: f64 = 0.1;

/// What follows from the readings without any judgement.
fn derived(case: &Case) -> Result<Derived, Error> {
    let ambient = Reading::within(case.conditions.ambient, kelvins_difference(AMBIENT_ERROR_K));
    Derived::new(
        case.system.refrigerant,
        &case.readings,
        case.conditions.surroundings,
        Some(ambient),
    )
}

/// The largest error of an ambient temperature, K. Source: engineering judgement: sun, road and the engine nearby.
const AMBIENT_ERROR_K: f64 = 1.5;

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::circuit::Gauge;
    use crate::diagnosis::faults::index;
    use crate::names::{Compressor, Expansion, Refrigerant, Thermometer};
    use crate::units::{GaugePressure, Surroundings, celsius};
    use crate::vehicle::{Conditions, System};

    fn judged(vent_c: f64) -> Judgement {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let air = Surroundings::at_altitude(1_600.0).unwrap();
        let readings = Readings {
            low_side: Some(Reading::pressure(GaugePressure::from_bar(2.0), Gauge::DIGITAL)),
            high_side: Some(Reading::pressure(GaugePressure::from_bar(13.0), Gauge::DIGITAL)),
            vent: Some(Reading::temperature(celsius(vent_c), Thermometer::PocketDigital)),
            ..Readings::default()
        };
        let case = Case::new(system, Conditions::new(celsius(28.0), air), readings);
        super::super::judge(&case, &Settings::default()).unwrap()
    }

    /// Vents from 14 °C to 33 °C beside pressures of a sound system: two faults are considered where a tenth or more is left to
    /// an unknown cause or way, or where a figure has less than 0.6 of the density that it has when the cause is anything.
    #[test]
    fn two_faults_are_considered_where_one_fits_badly() {
        let (mut left, mut fitted) = ([false; 2], [false; 2]);
        for step in 0..=190 {
            let judged = judged(14.0 + 0.1 * f64::from(step));
            let unexplained = judged.posterior.unexplained;
            let fits = judged.posterior.fits(&judged.scene, judged.faults[0].fault);
            let worst = fits.into_iter().flatten().fold(f64::INFINITY, f64::min);
            assert_eq!(judged.out_of_line.is_some(), worst < 0.6, "{step}: {worst}");
            assert_eq!(
                judged.two_faults.is_some(),
                unexplained >= 0.1 || worst < 0.6,
                "{step}: {unexplained} {worst}"
            );
            left[0] |= (0.097..0.1).contains(&unexplained) && worst >= 0.6;
            left[1] |= (0.1..0.103).contains(&unexplained) && worst >= 0.6;
            fitted[0] |= (0.58..0.6).contains(&worst) && unexplained < 0.1;
            fitted[1] |= (0.6..0.62).contains(&worst) && unexplained < 0.1;
        }
        assert_eq!(
            (left, fitted),
            ([true; 2], [true; 2]),
            "some vents lie just below and just above both limits"
        );
    }

    /// What a figure would show is told against the 80 % band of sound systems, 1.476 scales of a t distribution with five degrees of
    /// freedom to either side (Abramowitz & Stegun, table 26.10). A vent whose uncertainty of 300 K says nothing of the low side makes
    /// its tails those of six, with sqrt(5/6) of the scale (Kotz & Nadarajah 2004, 1.11), and a reading of 1.2 K of uncertainty adds to
    /// 3.5 K of scatter: the limits are at 1.476 / 0.913 / 1.06 = 1.53, within which lie 82 %. A fault of less than one in a thousand
    /// is foretold like a sound system.
    #[test]
    fn a_sound_system_is_foretold_within_its_80_per_cent_band() {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
        let readings = Readings {
            vent: Some(Reading {
                value: celsius(10.0),
                standard_uncertainty: kelvins_difference(300.0),
            }),
            ..Readings::default()
        };
        let case = Case::new(
            system,
            Conditions::new(celsius(28.0), Surroundings::SEA_LEVEL),
            readings,
        );
        let mut judged = super::super::judge(&case, &Settings::default()).unwrap();
        let foreseen = judged.posterior.foreseen(&judged.scene);
        let sound = foreseen.chances(&judged.posterior, Feature::LowSide, index(Fault::NoFault));
        assert!((sound[1] - 0.82).abs() < 0.02, "{sound:?}");
        // Behind misleading gauges a sound system is assumed, without a share that moves in an unknown way.
        let alone = foreseen.chances(&judged.posterior, Feature::LowSide, index(Fault::GaugeError));
        let low = index(Fault::Undercharge);
        let mut alike = |probability: f64| {
            judged.posterior.probability[low] = probability;
            foreseen.chances(&judged.posterior, Feature::LowSide, low) == alone
        };
        assert_eq!((alike(0.95e-3), alike(1.05e-3)), (true, false));
    }

    /// From 3 K below the critical temperature on no liquid is left at rest: R-744, 30.98 °C (Span & Wagner 1996).
    #[test]
    fn a_system_at_rest_near_its_critical_temperature_holds_no_liquid() {
        let warm = |ambient_c: f64| {
            let system = System::new(Refrigerant::R744, Expansion::Txv, Compressor::VariableExternal);
            let conditions = Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL);
            warm_for_rest(&Case::new(system, conditions, Readings::default()))
        };
        assert_eq!((warm(27.9), warm(28.1)), (false, true));
    }
}
