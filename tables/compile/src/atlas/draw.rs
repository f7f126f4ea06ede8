//! Vehicles of the model with a fault each, as deviations from sound ones in the conditions that were written down.

use super::FaultRows;
use super::draws::{self, Draw, World};
use super::group::{Group, group};
use crate::features::{self, FEATURES, NOTHING};
use crate::sound::fit::Kind;
use coldloop::vehicle::{FaultCause, System};
use coldloop::{Error, Expansion, Fault, Refrigerant};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

const SEED: u64 = 20_261_126;

/// One vehicle with its fault.
#[derive(Clone)]
pub(crate) struct Point {
    pub(crate) group: Group,
    pub(crate) severity: f64,
    /// The form of the fault, empty where it has one only.
    pub(crate) cause: &'static str,
    /// Whether the compressor stands.
    pub(crate) stands: bool,
    /// Place among the vehicles of its kind of compressor.
    pub(crate) place: usize,
    /// 1, a, w, s.
    pub(crate) moves: [f64; 4],
    /// Features less those of a sound system in the same conditions.
    pub(crate) shift: [f64; FEATURES],
}

/// A fault of one expansion device, with R-744 or with all other refrigerants.
#[derive(Clone, Copy)]
pub(crate) struct Job {
    pub(crate) carbon_dioxide: bool,
    pub(crate) expansion: Expansion,
    pub(crate) fault: Fault,
}

impl Job {
    /// The same systems without a fault.
    pub(crate) const fn sound(&self) -> Self {
        Self {
            fault: Fault::NoFault,
            ..*self
        }
    }

    /// Whether both are of the same systems.
    pub(crate) fn is_of(&self, other: &Self) -> bool {
        (self.carbon_dioxide, self.expansion) == (other.carbon_dioxide, other.expansion)
    }

    /// No rows yet.
    pub(crate) fn rows(&self, points: &[Point]) -> FaultRows {
        FaultRows {
            source: "vehicle-model",
            carbon_dioxide: self.carbon_dioxide,
            expansion: self.expansion,
            fault: self.fault,
            scales: [NOTHING; 2],
            rows: Vec::new(),
            drawn: first(points),
        }
    }

    const fn world(&self) -> World {
        if self.carbon_dioxide {
            World::With(Refrigerant::R744)
        } else {
            World::Own
        }
    }

    /// The kinds of system that can have the fault.
    fn kinds(&self) -> Vec<usize> {
        (0..draws::KINDS)
            .filter(|kind| {
                let system = draws::system(*kind, Refrigerant::R134a);
                system.expansion == self.expansion
                    && draws::is_built(self.world(), *kind)
                    && draws::faults_in(self.world(), *kind).contains(&self.fault)
            })
            .collect()
    }

    /// `count` vehicles of each kind of compressor.
    ///
    /// Errors: too many without an answer.
    pub(crate) fn points(&self, count: usize, sound: &[(System, Kind)]) -> Result<Vec<Point>, String> {
        let mut points = Vec::new();
        for kind in self.kinds() {
            let mut rng = ChaCha8Rng::seed_from_u64(SEED);
            let place = kind as u64 + if self.carbon_dioxide { 8 } else { 0 };
            rng.set_stream(place * 64 + u64::from(self.fault.code()));
            let draws = std::iter::repeat_with(|| {
                let severity = draws::severity(&mut rng, self.fault);
                Draw::new(&mut rng, self.world(), kind, self.fault, severity)
            });
            let own: Vec<Point> = draws
                .take(3 * count + 20)
                .filter_map(|draw| point(&draw.ok()?, sound).ok())
                .take(count)
                .enumerate()
                .map(|(place, point)| Point { place, ..point })
                .collect();
            if own.len() < count {
                return Err(format!(
                    "{} {} {kind}: {} of {count}",
                    self.fault,
                    self.expansion,
                    own.len()
                ));
            }
            points.extend(own);
        }
        Ok(points)
    }
}

/// How many vehicles of each kind of compressor are drawn again to see whether the table still belongs to the model.
pub(super) const DRAWN: usize = 3;

/// Mean shift of the first [`DRAWN`] vehicles of each kind of compressor.
pub(super) fn first(points: &[Point]) -> [f64; FEATURES] {
    let mut mean = [0.0; FEATURES];
    let first = || points.iter().filter(|point| point.place < DRAWN);
    for point in first() {
        for (mean, shift) in mean.iter_mut().zip(&point.shift) {
            *mean += shift / first().count() as f64;
        }
    }
    mean
}

fn point(draw: &Draw, sound: &[(System, Kind)]) -> Result<Point, Error> {
    let case = draw.plainly()?;
    let seen = features::of(&draw.system, &case.conditions, &case.readings)?;
    let terms = features::weather(&draw.system, &case.conditions)?;
    let kind = sound.iter().find(|(system, _)| *system == draw.system);
    let missing = Error::of(coldloop::ErrorKind::NotAvailable, coldloop::Quantity::Residual);
    let (mean, _) = kind.ok_or(missing)?.1.at(terms.terms());
    Ok(Point {
        group: group(draw.system.compressor),
        severity: draw.fault.severity,
        cause: draw.fault.cause.map_or(form(draw.fault.other.is_some()), cause),
        stands: draw.truth.cop <= 0.0,
        place: 0,
        moves: features::moves(&draw.system, &case.conditions)?,
        shift: std::array::from_fn(|i| seen[i] - mean[i]),
    })
}

const fn form(part_of_charge: bool) -> &'static str {
    if part_of_charge { "part of the charge" } else { "" }
}

/// The name of a form of a fault.
fn cause(cause: FaultCause) -> &'static str {
    match cause {
        FaultCause::Leakage => "leakage",
        FaultCause::LostDisplacement => "lost displacement",
        FaultCause::FanSlow => "fan slow",
        FaultCause::FanDead => "fan dead",
        FaultCause::FaceBlocked => "face blocked",
        FaultCause::HotAirTakenIn => "hot air taken in",
        FaultCause::BehindHighPort => "behind the port",
        FaultCause::BeforeHighPort => "before the port",
        FaultCause::BeforeClamp => "before the clamp",
        FaultCause::BehindClamp => "behind the clamp",
        FaultCause::ShutWithBleed => "with bleed",
        FaultCause::ShutWithoutBleed => "without bleed",
        FaultCause::ControlStuckLow => "stuck low",
        FaultCause::ControlStuckHigh => "stuck high",
        FaultCause::SwitchOpensEarly => "opens early",
        _ => unreachable!("a new member of the vocabulary"),
    }
}
