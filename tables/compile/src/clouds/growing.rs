//! Clouds that grow part by part.

use super::em::{self, Floor, Part, Point};
use super::{Cloud, DRAWN, DRAWN_AGAIN, JUDGES, X, Y, said, table};
use coldloop::Fault;

/// The most parts that a cloud may have.
const MOST: usize = 8;

const FLOOR: Floor<Y> = Floor {
    spread: [0.3, 0.3, 0.3, 0.3, 0.3, 0.5, 0.05, 0.01],
    width: 0.3,
    ridge: 20.0,
};

/// A cloud that may get a further part.
pub(super) struct Growing {
    pub(super) fault: Fault,
    pub(super) parts: Vec<Part<X, Y>>,
    /// Mean log density of the judges.
    pub(super) score: f64,
    points: Vec<Point<X, Y>>,
    /// The parts with one more, and their score.
    next: (Vec<Part<X, Y>>, f64),
}

impl Growing {
    /// A cloud of one part.
    pub(super) fn of(fault: Fault, points: Vec<Point<X, Y>>) -> Self {
        let (parts, score) = with(&points, 1);
        let next = with(&points, 2);
        Self {
            fault,
            parts,
            score,
            points,
            next,
        }
    }

    /// By how much a further part would raise the score.
    pub(super) fn gain(&self) -> f64 {
        if self.parts.len() < MOST {
            self.next.1 - self.score
        } else {
            f64::NEG_INFINITY
        }
    }

    /// Takes the further part.
    pub(super) fn grow(&mut self) {
        let next = with(&self.points, self.next.0.len() + 1);
        (self.parts, self.score) = std::mem::replace(&mut self.next, next);
    }

    pub(super) fn grown(self) -> Cloud {
        let rounded: Vec<Part<X, Y>> = self.parts.iter().map(table::rounded).collect();
        let said = said::mean(&rounded, &self.points[..DRAWN_AGAIN]);
        Cloud {
            fault: self.fault,
            parts: self.parts,
            said,
        }
    }
}

/// So many parts, and their score.
fn with(points: &[Point<X, Y>], count: usize) -> (Vec<Part<X, Y>>, f64) {
    let (judges, learnt) = points.split_at(points.len() * JUDGES / DRAWN);
    let parts = mixture(learnt, count);
    let score = em::score(&parts, judges);
    (parts, score)
}

/// The best of two searches: parts by rank of the severity, and by rank of the superheat.
fn mixture(points: &[Point<X, Y>], count: usize) -> Vec<Part<X, Y>> {
    let mut guesses = Vec::new();
    for along in [Y - 1, 3] {
        guesses.push(quantiles(points, along, count));
        if count == 1 {
            break;
        }
    }
    guesses
        .into_iter()
        .map(|first| em::fit(points, &first, count, &FLOOR))
        .max_by(|a, b| em::score(a, points).total_cmp(&em::score(b, points)))
        .unwrap_or_default()
}

/// Parts of equal size by rank along a figure.
fn quantiles(points: &[Point<X, Y>], along: usize, count: usize) -> Vec<usize> {
    let mut order: Vec<usize> = (0..points.len()).collect();
    order.sort_by(|a, b| points[*a].y[along].total_cmp(&points[*b].y[along]));
    let mut of = vec![0; points.len()];
    for (rank, at) in order.into_iter().enumerate() {
        of[at] = rank * count / points.len();
    }
    of
}
