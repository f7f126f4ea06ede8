//! The public view of the atlas: how far each fault moves each figure of a system.

use super::atlas::{AMBIENT, Pages};
use super::exists;
use super::rows::{Bits, CountedFrom, ShiftRow, number};
use crate::error::Error;
use crate::expected::{SoundModel, Source, View};
use crate::names::{Fault, Feature};
use crate::numerics::multivariate_t::{TRIANGLE, Vector, entry_of};
use crate::numerics::sqrt;
use crate::vehicle::{Conditions, System};

/// How far one severity of a fault moves one figure, according to one source.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Effect {
    /// The source.
    pub source: Source,
    /// The fault.
    pub fault: Fault,
    /// Least, mean and greatest severity, in the source's own measure; the vehicle model and the published tables use
    /// [`measure`](super::measure).
    pub severity: [f64; 3],
    /// Share of this severity among the systems with this fault. A fault that takes several forms has several effects of about the
    /// same severity.
    pub share: f64,
    /// The figure.
    pub feature: Feature,
    /// Mean of the figure less that of sound systems: K, or as ln(1 + engagements per minute).
    pub shift: f64,
    /// Scale of the t distribution with five degrees of freedom of vehicles about that mean, in the same unit: 80 % of them lie
    /// within 1.476 of it.
    pub spread: f64,
}

/// The effects of every fault on every figure of a system, as each source has them in these conditions.
///
/// These are the shifts that [`diagnose`](super::diagnose) uses, from every source that covers the system; the spread is the
/// scatter of vehicles alone, without instruments and without the disagreement between sources. Ambient, water in the air and
/// engine speed move the shifts; what is not given is taken as [`Weather::of`](crate::expected::Weather::of) says. Source:
/// `tables/atlas` and `tables/faults`, each row with its own.
///
/// Errors: those of [`SoundModel::of`].
///
/// ```
/// use coldloop::diagnosis::effects;
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Fault, Feature, Refrigerant};
/// let van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let day = Conditions::new(celsius(30.0), Surroundings::at_altitude(1_600.0)?);
/// let blocked = effects(&van, &day)?.filter(|effect| effect.fault == Fault::CondenserAirflowLoss);
/// // All sources agree that a blocked condenser raises the high side.
/// assert!(blocked.filter(|effect| effect.feature == Feature::HighSide).all(|effect| effect.shift > 0.0));
/// # Ok::<(), coldloop::Error>(())
/// ```
///
/// ```
/// use coldloop::{Compressor, ErrorKind, Expansion, Refrigerant, diagnosis::effects};
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// let van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let frost = Conditions::new(celsius(-5.0), Surroundings::SEA_LEVEL);
/// assert_eq!(effects(&van, &frost).err().map(|error| error.kind), Some(ErrorKind::OutOfRange));
/// ```
pub fn effects(system: &System, conditions: &Conditions) -> Result<impl Iterator<Item = Effect>, Error> {
    let sound = SoundModel::of(system, conditions)?;
    let (system, pages, few) = (*system, Pages::of(system), *sound.few());
    let mean = |source| {
        sound
            .components()
            .iter()
            .find(|component| component.source == source)
            .map(|of| of.mean)
    };
    let means = Source::ALL.map(mean);
    let views = Feature::ALL.map(|feature| Some((feature, sound.view(feature)?)));
    let sources = Source::ALL.into_iter().zip(means);
    let sources = sources.filter_map(|(source, mean)| Some((source, mean?)));
    let faults = sources.flat_map(move |of| pages.of_source(of.0).iter().map(move |rows| (of, rows)));
    let severities = faults
        .filter(move |(_, rows)| exists(rows.fault, &system))
        .flat_map(move |(of, rows)| {
            let severities = pages.severities(rows);
            // Stored as `f32`, the shares do not sum to exactly one.
            let all: f64 = severities.iter().map(|row| f64::from(row.weight)).sum();
            severities
                .iter()
                .map(move |row| (of, rows, row, f64::from(row.weight) / all))
        });
    Ok(severities.flat_map(move |((source, mean), rows, row, share)| {
        let sound = if rows.counted_from == CountedFrom::Ambient {
            mean
        } else {
            AMBIENT
        };
        views.into_iter().flatten().map(move |(feature, view)| Effect {
            source,
            fault: rows.fault,
            severity: row.severity.map(f64::from),
            share,
            feature,
            shift: shift(row, &few, &view, &sound),
            spread: spread(&rows.scales[usize::from(row.severe)], &view),
        })
    }))
}

/// The shift of a figure; `sound` is the sound mean for a row that counts from the ambient, and zero otherwise.
fn shift(row: &ShiftRow, few: &[f64; 4], view: &View, sound: &Vector) -> f64 {
    let features = view.features();
    features.map(|(i, one)| one * (row.shift_of(i, few) - sound[i])).sum()
}

/// The square root of a quadratic form of a scale matrix, of which the lower triangle is given.
fn spread(scale: &[Bits; TRIANGLE], view: &View) -> f64 {
    let entry = |i: usize, j: usize| number(scale[entry_of(i, j)]);
    let pairs = view
        .features()
        .flat_map(|one| view.features().map(move |other| (one, other)));
    sqrt(pairs.map(|((i, one), (j, other))| one * other * entry(i, j)).sum())
}
