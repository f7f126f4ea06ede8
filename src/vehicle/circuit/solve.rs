//! The steady state: the one point at which all balances of the circuit hold.
//!
//! Seven equations in seven unknowns: the evaporator's energy, the expansion device's flow, the charge, the compressor's
//! control, the cabin's heat and water, and the flow of a second expansion device. They are continuous, with corners where a
//! zone vanishes or a control saturates. Newton's method with damped steps, a Jacobian by finite differences that Broyden's
//! update (Dennis & Schnabel 1983, chapter 8) continues while the steps converge, and further starts where one start does not
//! converge.
//!
//! A step is judged by the natural level function (Deuflhard 2004, Newton Methods for Nonlinear Problems, section 3.3): the
//! correction that the same Jacobian gives after the step has to be smaller than the one before. This does not depend on the scale
//! of the residuals; that of a nearly shut valve is a hundred times the others. `tables/vehicle/README.md` has the figures.

use super::cycle::{Cycle, INTAKE_SCALE_HUMIDITY, INTAKE_SCALE_K, LEAST_LN_REAR, MOST_LN_REAR};
use super::plant::{Demand, Plant};
use super::unknowns::{Point, UNKNOWNS, Unknown, Vector};
use crate::error::Error;
use crate::numerics::{solve, sqrt};
use crate::vehicle::parts::co2_metering::best_pa;

/// The largest relative imbalance of a steady state.
pub(in crate::vehicle) const TOLERANCE: f64 = 1e-9;
/// The evaluations of the circuit that one simulation may take, over all starts and the continuation. One in a thousand simulations
/// takes 700 (`tables/vehicle/README.md`).
pub(in crate::vehicle) const MOST_ROUNDS: usize = 2_400;
const MOST_STEPS: usize = 60;
const MOST_HALVINGS: usize = 7;
/// Steps that a bold search takes whether or not they reduce the correction, to leave a corner of the equations.
const BOLD_STEPS: usize = 12;
/// The least part of a full step by which the next correction has to be smaller, per the part that is taken.
const LEAST_GAIN: f64 = 0.25;
/// Broyden's update is kept while each correction is less than this part of the one before; otherwise the Jacobian is
/// calculated again.
const SERVED: f64 = 0.5;
/// Step of the differences, in the scale of each unknown.
const DIFFERENCE: f64 = 1e-7;
/// The least logarithm of the pressure ratio that is searched; less for R-744, of which an open valve passes a little gas at a
/// very small difference.
const LEAST_LIFT: f64 = 0.005;
const LEAST_LIFT_R744: f64 = 2e-4;
/// The largest step in each unknown.
const REACH: Vector = Point {
    ln_suction_pa: 0.35,
    ln_discharge_pa: 0.25,
    suction: 0.12,
    demand: 0.4,
    intake_k: 12.0,
    intake_humidity: 0.006,
    ln_rear: 0.7,
}
.values();
/// The scale of each unknown.
const SCALE: Vector = Point {
    ln_suction_pa: 1.0,
    ln_discharge_pa: 1.0,
    suction: 1.0,
    demand: 1.0,
    intake_k: 50.0,
    intake_humidity: 0.01,
    ln_rear: 1.0,
}
.values();
/// Start of the logarithm of a second evaporator's part of the flow: a third.
const REAR_START: f64 = -1.1;

type Matrix = [Vector; UNKNOWNS];

/// What the search found.
#[derive(Clone, Copy, Debug)]
pub(in crate::vehicle) struct Solution {
    pub point: Point,
    pub cycle: Cycle,
}

/// The evaluations of the circuit that one simulation may take, over all its searches.
#[derive(Debug)]
pub(in crate::vehicle) struct Budget {
    /// Evaluations so far.
    pub spent: usize,
    most: usize,
    /// Steps that a search takes whether or not they reduce the correction.
    bold: usize,
}

impl Budget {
    /// The budget of one simulation.
    pub(in crate::vehicle) const fn new() -> Self {
        Self {
            spent: 0,
            most: MOST_ROUNDS,
            bold: 0,
        }
    }

    /// Lets the next searches take their first steps whether or not these reduce the correction.
    pub(in crate::vehicle) const fn embolden(&mut self) {
        self.bold = BOLD_STEPS;
    }

    /// Whether no evaluation is left.
    pub(in crate::vehicle) const fn is_spent(&self) -> bool {
        self.spent >= self.most
    }

    /// Takes one evaluation, where one is left.
    fn take(&mut self) -> Option<()> {
        if self.is_spent() {
            return None;
        }
        self.spent += 1;
        Some(())
    }
}

/// The steady state of a plant.
///
/// A state exists: pressures between the bounds make the flow of the device minus that of the compressor change sign
/// (no pressure difference passes nothing, the highest passes more than the compressor moves), the evaporator's
/// balance changes sign between liquid and air-warm vapour, and the charge goes from nearly nothing (vapour
/// everywhere) to a circuit full of liquid. A charge beyond those ends is one of the ways not to converge.
///
/// Errors: `NoConvergence` with the largest relative imbalance of the best point met, also where the budget is spent.
pub(in crate::vehicle) fn steady(plant: &Plant, first: Option<Point>, budget: &mut Budget) -> Result<Solution, Error> {
    let mut best = f64::INFINITY;
    for start in first.into_iter().chain(starts(plant)?) {
        if budget.is_spent() {
            break;
        }
        match from(plant, start, budget) {
            Ok(found) => return Ok(found),
            Err(residual) => best = best.min(residual),
        }
    }
    Err(Error::no_convergence(best, TOLERANCE))
}

/// The steady state of a plant that differs little from the one whose state is `near`.
///
/// Errors: as [`steady`].
pub(in crate::vehicle) fn steady_near(plant: &Plant, near: Point, budget: &mut Budget) -> Result<Solution, Error> {
    from(plant, near, budget).map_err(|residual| Error::no_convergence(residual, TOLERANCE))
}

/// The steady state from one start, or the largest imbalance where the search ended.
fn from(plant: &Plant, start: Point, budget: &mut Budget) -> Result<Solution, f64> {
    let (point, cycle) = Search { plant, budget }.run(start)?;
    Ok(Solution { point, cycle })
}

/// A start of the search.
struct Start {
    /// Evaporating temperature below the air that enters, K.
    below_intake_k: f64,
    /// Condensing temperature above the outside air, K.
    above_outside_k: f64,
    /// State at the compressor inlet, see [`Point::suction`].
    suction: f64,
    /// The part of the range of the demand.
    demand: f64,
}

impl Start {
    const fn of(below_intake_k: f64, above_outside_k: f64, suction: f64, demand: f64) -> Self {
        Self {
            below_intake_k,
            above_outside_k,
            suction,
            demand,
        }
    }
}

/// The starts, in the order in which they are tried.
const TRIES: [Start; 8] = [
    Start::of(24.0, 16.0, 0.04, 0.7),
    Start::of(32.0, 8.0, 0.12, 0.9),
    Start::of(15.0, 25.0, -0.05, 0.9),
    Start::of(40.0, 4.0, 0.2, 1.0),
    Start::of(10.0, 35.0, 0.0, 0.3),
    Start::of(55.0, 2.0, 0.15, 1.0),
    Start::of(20.0, 12.0, 0.02, 0.1),
    Start::of(5.0, 10.0, 0.0, 1.0),
];

/// The starts for a plant.
fn starts(plant: &Plant<'_>) -> Result<impl Iterator<Item = Point>, Error> {
    let cabin = &plant.cabin;
    let fluid = plant.fluid;
    let Demand { least, most } = plant.demand;
    let air_k = plant.draught.standing.t_k;
    let intake_k = if cabin.fresh < 1.0 {
        (cabin.outside_k - 4.0).min(302.0)
    } else {
        cabin.outside_k
    };
    let humidity = if cabin.fresh < 1.0 {
        cabin.outside_humidity.min(0.008)
    } else {
        cabin.outside_humidity
    };
    let (low, high) = (fluid.lowest_pa(), fluid.highest_pa());
    let base_pa = fluid.dew_pa(air_k)?;
    Ok(TRIES.into_iter().filter_map(move |start| {
        let suction_pa = fluid.dew_pa(intake_k - start.below_intake_k).ok()?.max(low);
        let above_pa = if fluid.is_transcritical() {
            best_pa(
                &fluid,
                air_k + 0.3 * start.above_outside_k,
                intake_k - start.below_intake_k,
            )
            .ok()?
        } else {
            fluid.dew_pa(air_k + start.above_outside_k).ok()?
        };
        let discharge_pa = above_pa.max(base_pa * 1.02).min(0.98 * high);
        Some(Point {
            ln_suction_pa: libm::log(suction_pa.min(0.8 * discharge_pa)),
            ln_discharge_pa: libm::log(discharge_pa),
            suction: start.suction,
            demand: least + (most - least) * start.demand,
            intake_k,
            intake_humidity: humidity,
            ln_rear: REAR_START,
        })
    }))
}

struct Search<'a> {
    plant: &'a Plant<'a>,
    budget: &'a mut Budget,
}

impl Search<'_> {
    fn at(&mut self, x: &Vector) -> Option<Cycle> {
        self.budget.take()?;
        let point = Point::of(*x);
        let upper = self.plant.upper(&point).ok()?;
        let cycle = self.plant.round(&point, &upper).ok()?;
        cycle.residual.iter().all(|r| r.is_finite()).then_some(cycle)
    }

    /// The steady state, or the largest imbalance where the search ended.
    fn run(&mut self, start: Point) -> Result<(Point, Cycle), f64> {
        let mut x = self.bounded(start.values());
        let mut cycle = self.at(&x).ok_or(f64::INFINITY)?;
        let mut matrix: Option<Matrix> = None;
        let mut fresh = false;
        for steps in 0..MOST_STEPS {
            if largest(&cycle.residual) <= TOLERANCE {
                return Ok((Point::of(x), cycle));
            }
            let jacobian = match matrix {
                Some(jacobian) => jacobian,
                None => {
                    fresh = true;
                    self.differences(&x, &cycle).ok_or(largest(&cycle.residual))?
                }
            };
            let Some(mut step) = solved(jacobian, &cycle.residual) else {
                if fresh {
                    return Err(largest(&cycle.residual));
                }
                matrix = None;
                continue;
            };
            let over = (0..UNKNOWNS)
                .map(|i| libm::fabs(step[i]) / REACH[i])
                .fold(1.0, f64::max);
            step.iter_mut().for_each(|s| *s /= over);

            let before = level(&step);
            let bold = self.budget.bold;
            let mut part = 1.0;
            let mut taken = None;
            // The correction that would follow with the same Jacobian.
            let left = |found: &Cycle| solved(jacobian, &found.residual).map_or(f64::INFINITY, |step| level(&step));
            for _ in 0..MOST_HALVINGS {
                let mut next = x;
                (0..UNKNOWNS).for_each(|i| next[i] -= part * step[i]);
                let next = self.bounded(next);
                let helps = |found: &Cycle| left(found) < over * before * (1.0 - LEAST_GAIN * part / over);
                if let Some(found) = self.at(&next).filter(|found| steps < bold || helps(found)) {
                    taken = Some((next, found));
                    break;
                }
                if !fresh {
                    break;
                }
                part *= 0.4;
            }
            match taken {
                Some((next, found)) => {
                    let served = left(&found) < SERVED * over * before;
                    matrix = served.then(|| updated(&jacobian, &x, &next, &cycle.residual, &found.residual));
                    (x, cycle) = (next, found);
                    fresh = false;
                }
                None if fresh => return Err(largest(&cycle.residual)),
                None => matrix = None,
            }
        }
        Err(largest(&cycle.residual))
    }

    /// The Jacobian by one-sided differences. The air before the evaporator does not reach the upper half.
    fn differences(&mut self, x: &Vector, cycle: &Cycle) -> Option<Matrix> {
        let mut jacobian = [[0.0; UNKNOWNS]; UNKNOWNS];
        for column in 0..UNKNOWNS {
            let step = DIFFERENCE * SCALE[column];
            let mut y = *x;
            y[column] += step;
            let point = Point::of(y);
            let shifted = if Unknown::reaches_the_upper_half(column) {
                self.at(&y)?
            } else if let Some(slope) = self.slope_of_absent(column) {
                jacobian[column][column] = slope;
                continue;
            } else {
                self.plant.round(&point, &cycle.upper).ok()?
            };
            let changes = shifted.residual.iter().zip(&cycle.residual);
            for (row, (after, before)) in jacobian.iter_mut().zip(changes) {
                row[column] = (after - before) / step;
            }
        }
        Some(jacobian)
    }

    /// The slope of its own balance over an unknown that this plant does not have: the flow of a second evaporator where there is
    /// none, and the intake air where all of it comes from outside.
    fn slope_of_absent(&self, place: usize) -> Option<f64> {
        let has_no_rear = self.plant.rear.is_none();
        let is_fresh = self.plant.cabin.fresh >= 1.0;
        match place {
            Unknown::LN_REAR if has_no_rear => Some(-1.0),
            Unknown::INTAKE_K if is_fresh => Some(-1.0 / INTAKE_SCALE_K),
            Unknown::INTAKE_HUMIDITY if is_fresh => Some(-1.0 / INTAKE_SCALE_HUMIDITY),
            _ => None,
        }
    }

    fn bounded(&self, mut x: Vector) -> Vector {
        let fluid = &self.plant.fluid;
        let (low, high) = (libm::log(fluid.lowest_pa()), libm::log(fluid.highest_pa()));
        x[Unknown::LN_SUCTION_PA] = x[Unknown::LN_SUCTION_PA].clamp(low, high - 0.1);
        let least = if fluid.is_transcritical() {
            LEAST_LIFT_R744
        } else {
            LEAST_LIFT
        };
        x[Unknown::LN_DISCHARGE_PA] = x[Unknown::LN_DISCHARGE_PA].clamp(x[Unknown::LN_SUCTION_PA] + least, high);
        x[Unknown::SUCTION] = x[Unknown::SUCTION].clamp(-0.85, 0.8);
        let least = self.plant.protection.least.min(self.plant.demand.least);
        x[Unknown::DEMAND] = x[Unknown::DEMAND].clamp(0.5 * least, 1.05 * self.plant.demand.most);
        x[Unknown::INTAKE_K] = x[Unknown::INTAKE_K].clamp(240.0, 350.0);
        x[Unknown::INTAKE_HUMIDITY] = x[Unknown::INTAKE_HUMIDITY].clamp(0.0, 0.08);
        x[Unknown::LN_REAR] = x[Unknown::LN_REAR].clamp(LEAST_LN_REAR, MOST_LN_REAR);
        x
    }
}

fn largest(residual: &Vector) -> f64 {
    residual.iter().map(|r| libm::fabs(*r)).fold(0.0, f64::max)
}

/// Norm of a correction, in units of the largest step of each unknown.
fn level(step: &Vector) -> f64 {
    sqrt(
        step.iter()
            .zip(&REACH)
            .map(|(s, reach)| (s / reach) * (s / reach))
            .sum(),
    )
}

/// Broyden's update of the Jacobian for a step and the change of residual that it brought, in scaled unknowns.
fn updated(jacobian: &Matrix, from: &Vector, to: &Vector, before: &Vector, after: &Vector) -> Matrix {
    let mut next = *jacobian;
    let step: Vector = core::array::from_fn(|i| (to[i] - from[i]) / SCALE[i]);
    let size: f64 = step.iter().map(|s| s * s).sum();
    if size == 0.0 {
        return next;
    }
    for row in 0..UNKNOWNS {
        let predicted: f64 = (0..UNKNOWNS).map(|i| jacobian[row][i] * (to[i] - from[i])).sum();
        let miss = after[row] - before[row] - predicted;
        for column in 0..UNKNOWNS {
            next[row][column] += miss * step[column] / size / SCALE[column];
        }
    }
    next
}

/// The least pivot of the Jacobian.
const LEAST_PIVOT: f64 = 1e-14;

/// The solution of `matrix * x = right`; `None` where the matrix is singular.
fn solved(mut matrix: Matrix, right: &Vector) -> Option<Vector> {
    let mut right = *right;
    let is_regular = solve(&mut matrix, &mut right, UNKNOWNS, LEAST_PIVOT);
    (is_regular && right.iter().all(|r| r.is_finite())).then_some(right)
}
