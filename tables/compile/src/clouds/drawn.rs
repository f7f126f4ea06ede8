//! The vehicles that the clouds are fitted to, drawn for each fault of each kind of system.
//!
//! `src/diagnosis/stale.rs` draws the first of them again, from this file, to see whether the clouds are of the model as it is.

use super::draws::{self, Draw, World};
use coldloop::diagnosis::Coordinates;
use coldloop::{Fault, Refrigerant};
use rand::{Rng, RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Kinds of system that have clouds: expansion device by compressor, and R-744 by expansion device, whose compressors are
/// told apart by a condition.
pub(crate) const KINDS: usize = draws::KINDS + 2;

const SEED: u64 = 20_261_126;
const CARBON_DIOXIDE: World = World::With(Refrigerant::R744);

/// What faultless instruments show of a vehicle, in conditions as somebody wrote them down.
pub(crate) struct Seen {
    /// Coordinates of the conditions, none where a condition says nothing of this kind.
    pub(crate) conditions: [f64; 9],
    /// All figures of a running system.
    pub(crate) figures: [f64; 7],
}

/// Vehicles of a kind with a fault; `None` where the model has no answer, or a figure is beyond what instruments or tables
/// reach.
pub(crate) fn vehicles(kind: usize, fault: Fault) -> impl Iterator<Item = Option<(Draw, Seen)>> {
    let mut rng = ChaCha8Rng::seed_from_u64(SEED);
    rng.set_stream(kind as u64 * 64 + u64::from(fault.code()));
    std::iter::repeat_with(move || {
        let severity = draws::severity(&mut rng, fault);
        let (world, system) = system(&mut rng, kind, fault);
        let draw = Draw::new(&mut rng, world, system, fault, severity).ok()?;
        let seen = Seen::of(&draw)?;
        Some((draw, seen))
    })
}

impl Seen {
    fn of(draw: &Draw) -> Option<Self> {
        let coordinates = Coordinates::of(&draw.plainly().ok()?).ok()?;
        let mut figures = [0.0; 7];
        for (figure, seen) in figures.iter_mut().zip(coordinates.figures) {
            *figure = seen?;
        }
        Some(Self {
            conditions: coordinates.conditions.map(|c| c.unwrap_or(0.0)),
            figures,
        })
    }
}

/// Where a vehicle of a kind of cloud with a fault is drawn, and the system it has there.
fn system(rng: &mut impl Rng, kind: usize, fault: Fault) -> (World, usize) {
    let Some(expansion) = kind.checked_sub(draws::KINDS) else {
        return (World::Own, kind);
    };
    let built = systems_r744(expansion).filter(|system| draws::faults(*system).contains(&fault));
    let built: Vec<usize> = built.collect();
    (CARBON_DIOXIDE, built[rng.random_range(0..built.len())])
}

/// The systems of R-744 with an expansion device.
fn systems_r744(expansion: usize) -> impl Iterator<Item = usize> {
    let each = draws::KINDS / 2;
    (expansion * each..(expansion + 1) * each).filter(|system| draws::is_built(CARBON_DIOXIDE, *system))
}

/// The faults that a kind of cloud can have.
pub(crate) fn faults(kind: usize) -> Vec<Fault> {
    match kind.checked_sub(draws::KINDS) {
        None => draws::faults(kind),
        Some(expansion) => {
            let of_any: Vec<Fault> = systems_r744(expansion)
                .flat_map(|system| draws::faults_in(CARBON_DIOXIDE, system))
                .collect();
            Fault::ALL.into_iter().filter(|fault| of_any.contains(fault)).collect()
        }
    }
}
