//! Follows the seconds in the order of time: blocks, cycles, states.

use super::bins::Row;
use super::curve::Curve;
use super::instruments::Datum;
use super::sample::{CHANNELS, place};
use super::state::State;
use super::steady::Steady;
use super::swing::{Swing, Turn};
use crate::names::Channel;
use crate::units::STANDARD_PRESSURE_PA;

/// States of a log that are kept; when there are more, the shortest earlier one is dropped.
pub(super) const STATES: usize = 4;

/// Least length of a block, s: of a steady system, and of whole cycles.
const BLOCK_S: i64 = 10;
const CYCLES_S: i64 = 20;
/// Time after a change that belongs to no state, s. Source: engineering judgement: pressures take that long to turn.
const CHANGING_S: i64 = 15;
/// A speed has changed if it differs by this share, and by so much (1/s), for so many seconds. Source: engineering judgement.
const OTHER_SPEED: (f32, f32) = (0.12, 1.5);
const OTHER_SPEED_S: u8 = 3;
/// Seconds between samples up to which cycles are seen.
const SEEN_S: f32 = 2.2;
/// A system has stopped cycling if there was no trough for so many of its cycles, and for so many seconds.
const CEASED: (f32, f32) = (3.0, 90.0);
/// Largest weight, in seconds, of what was seen of a system before it began to cycle.
const BEFORE_CYCLES_S: f64 = 20.0;
/// A new state begins with a step of low or high side between blocks that is at least so large (Pa), and so many times the
/// usual step, which must be known from so many blocks. Source: engineering judgement.
const STEP_PA: [f32; 2] = [10e3, 40e3];
const STEP_RATIO: f32 = 8.0;
const STEP_BLOCKS: u32 = 6;
/// From so many states at one speed on, a system is restless, and further steps do not begin a state. Source: engineering
/// judgement: a fan is switched or a door opened once or twice.
const RESTLESS: u8 = 3;
/// Movement that counts as steady: low side, high side (Pa), vent (K). Source: engineering judgement, half of the resolution
/// of a gauge or a pocket thermometer.
pub(super) const STILL: [f32; 3] = [3e3, 10e3, 0.3];

/// The channels that show whether a system has settled.
pub(super) const TELLING: [Channel; 3] = [Channel::LowSide, Channel::HighSide, Channel::Vent];

/// Sums of a block.
#[derive(Clone, Copy, Debug)]
struct Block {
    began: i64,
    sums: [f64; CHANNELS],
    counts: [u16; CHANNELS],
}

impl Block {
    const fn new(began: i64) -> Self {
        Self {
            began,
            sums: [0.0; CHANNELS],
            counts: [0; CHANNELS],
        }
    }

    fn add(&mut self, row: &Row) {
        for ((sum, count), value) in self.sums.iter_mut().zip(&mut self.counts).zip(row.values) {
            if !value.is_nan() {
                *sum += f64::from(value);
                *count = count.saturating_add(1);
            }
        }
    }

    fn means(&self) -> [f64; CHANNELS] {
        core::array::from_fn(|at| match self.counts[at] {
            0 => f64::NAN,
            count => self.sums[at] / f64::from(count),
        })
    }
}

/// The steps of the two pressures from block to block.
#[derive(Clone, Copy, Debug)]
struct Steps {
    last: [f32; 2],
    squared: [f32; 2],
    blocks: u32,
    /// The pressures before a step that may be the start of another state, and when that block began.
    before: Option<([f32; 2], i64)>,
}

impl Steps {
    const NEW: Self = Self {
        last: [f32::NAN; 2],
        squared: [0.0; 2],
        blocks: 0,
        before: None,
    };

    fn is_step(&self, from: [f32; 2], to: [f32; 2], part: f32) -> bool {
        (0..2).any(|side| {
            let usual = STEP_RATIO * libm::sqrtf(self.squared[side]);
            (to[side] - from[side]).abs() > part * usual.max(STEP_PA[side])
        })
    }

    fn take(&mut self, now: [f32; 2]) {
        for ((squared, now), last) in self.squared.iter_mut().zip(now).zip(self.last) {
            let step = now - last;
            if step.is_finite() {
                *squared += (step * step - *squared) / (self.blocks.min(5) as f32);
            }
        }
        self.last = now;
        self.blocks = self.blocks.saturating_add(1);
    }
}

/// What is known of a log up to some second.
#[derive(Clone, Copy, Debug)]
pub(super) struct Track {
    pub(super) earlier: [Option<State>; STATES - 1],
    pub(super) now: State,
    block: Block,
    steps: Steps,
    steady: [Steady; TELLING.len()],
    swing: Swing,
    trough: Option<i64>,
    other_speed: u8,
    /// Seconds between samples, and when the last one was.
    pub(super) interval: f32,
    last: Option<i64>,
    pub(super) rows: u32,
    pub(super) vent: Curve,
    pub(super) cabin: Curve,
    /// States that began without another speed.
    steps_alone: u8,
    /// Whether the low side is near vacuum, and how often it came back from there.
    near_vacuum: bool,
    pub(super) recoveries: u32,
    pub(super) datum: Datum,
    /// Seconds from the stop of the compressor until the two sides were equal.
    pub(super) equal_after: Option<i64>,
}

/// A low side below the first is near vacuum, one above the second has come back, Pa above the surrounding air.
///
/// Source: the wording of the observation that cooling comes and goes; the numbers are engineering judgement.
const VACUUM_PA: (f32, f32) = (20e3, 80e3);
/// Cycles after which a cycling state counts as settled.
const SETTLED_CYCLES: u32 = 3;

/// Two sides are equal if they differ by less than this share of their difference when the compressor ran. Source: engineering
/// judgement.
const EQUAL: f64 = 0.1;

impl Track {
    pub(super) const fn new(datum: Datum) -> Self {
        Self {
            earlier: [None; STATES - 1],
            now: State::new(0),
            block: Block::new(0),
            steps: Steps::NEW,
            steady: [Steady::NEW; TELLING.len()],
            swing: Swing::NEW,
            trough: None,
            other_speed: 0,
            interval: 1.0,
            last: None,
            rows: 0,
            vent: Curve::NEW,
            cabin: Curve::NEW,
            steps_alone: 0,
            near_vacuum: false,
            recoveries: 0,
            datum,
            equal_after: None,
        }
    }

    /// Whether samples come often enough to see cycles.
    pub(super) fn sees_cycles(&self) -> bool {
        self.interval <= SEEN_S
    }

    /// Whether the pressures step again and again at one speed, which no change of load explains.
    pub(super) const fn is_restless(&self) -> bool {
        self.steps_alone >= RESTLESS || self.recoveries > 0
    }

    /// Whether the compressor is known to stand still.
    pub(super) fn is_at_rest(&self) -> bool {
        let stands = |channel| {
            let known = self.now.mean(channel);
            known.map(|mean| mean.mean < f64::from(OTHER_SPEED.1))
        };
        stands(Channel::CompressorSpeed).or_else(|| stands(Channel::EngineSpeed)) == Some(true)
    }

    /// Whether pressures and vent are steady.
    pub(super) fn is_settled(&self) -> bool {
        let known = |channel: &Channel| self.now.mean(*channel).is_some();
        let mut telling = TELLING.into_iter().zip(&self.steady).zip(STILL);
        TELLING.iter().any(known)
            && telling.all(|((channel, steady), still)| !known(&channel) || steady.is_settled(still))
    }

    /// Takes one second.
    pub(super) fn push(&mut self, row: &Row) {
        if row.is_empty() {
            return;
        }
        let second = row.second;
        match self.last {
            None => (self.now, self.block) = (State::new(second), Block::new(second)),
            Some(last) => self.interval += 0.1 * ((second - last) as f32 - self.interval),
        }
        (self.last, self.rows) = (Some(second), self.rows.saturating_add(1));
        self.now.ended = second;
        let value = |channel| row.values[place(channel)];
        self.vent.push(second, value(Channel::Vent));
        self.cabin.push(second, value(Channel::Cabin));
        if self.is_other_speed(row) {
            self.begin(second);
            self.steps_alone = 0;
        }
        self.equalise(row);
        self.watch_vacuum(value(Channel::LowSide));
        self.close_block(second);
        self.block.add(row);
        if self.sees_cycles() {
            let sides = (value(Channel::LowSide), value(Channel::HighSide));
            self.follow(second, sides, value(Channel::Clutch));
        }
    }

    /// Whether engine or compressor have turned at another speed than that of this state for some seconds.
    fn is_other_speed(&mut self, row: &Row) -> bool {
        let other = [Channel::EngineSpeed, Channel::CompressorSpeed]
            .into_iter()
            .any(|channel| {
                let value = row.values[place(channel)];
                let known = self.now.mean(channel).map(|mean| mean.recent as f32);
                known.is_some_and(|known| (value - known).abs() > (OTHER_SPEED.0 * known).max(OTHER_SPEED.1))
            });
        self.other_speed = if other { self.other_speed.saturating_add(1) } else { 0 };
        self.other_speed >= OTHER_SPEED_S
    }

    /// Begins a new state; the one before is kept.
    pub(super) fn begin(&mut self, second: i64) {
        let state = self.now;
        if state.seconds > 0.0 {
            let least = |one: &&mut Option<State>, other: &&mut Option<State>| {
                let seconds = |state: &Option<State>| state.map_or(0.0, |state| state.seconds);
                seconds(one).total_cmp(&seconds(other))
            };
            if let Some(place) = self.earlier.iter_mut().min_by(least)
                && place.is_none_or(|kept| kept.seconds < state.seconds)
            {
                *place = Some(state);
            }
        }
        self.now = State::new(second);
        self.block = Block::new(second);
        self.steps = Steps::NEW;
        self.steady = [Steady::NEW; TELLING.len()];
        self.swing = Swing::NEW;
        (self.trough, self.other_speed, self.equal_after) = (None, 0, None);
    }

    /// Follows the saw-tooth of the low side.
    fn follow(&mut self, second: i64, (low, high): (f32, f32), clutch: f32) {
        let turn = self.swing.push(second, low, high, clutch);
        if let (true, Some(trough)) = (self.now.cycling, self.trough) {
            let (cycles, seconds) = CEASED;
            if (second - trough) as f32 > (cycles * self.now.cycles.seconds).max(seconds) {
                self.now.cycling = false;
                self.change_mode();
                self.block = Block::new(second);
            }
        }
        let Some((Turn::Trough, cycle)) = turn else { return };
        self.trough = Some(second);
        let Some(cycle) = cycle else {
            self.block = Block::new(second);
            return;
        };
        if self.now.cycling {
            self.now.cycles.push(&cycle);
        } else {
            self.now.cycling = true;
            self.change_mode();
            (self.steps, self.steady) = (Steps::NEW, [Steady::NEW; TELLING.len()]);
        }
        if second - self.block.began >= CYCLES_S {
            self.end_block(second);
        }
    }

    /// Cycling begins or ends: what was seen before gets a small weight, unless the system is restless.
    fn change_mode(&mut self) {
        if !self.is_restless() {
            self.now.fade(BEFORE_CYCLES_S);
        }
    }

    /// Ends a block of a steady system that is long enough.
    fn close_block(&mut self, second: i64) {
        if !self.now.cycling && second - self.block.began >= BLOCK_S {
            self.end_block(second);
        }
    }

    /// Adds the block to the state, unless the state is still changing or this block belongs to another one.
    fn end_block(&mut self, second: i64) {
        let block = core::mem::replace(&mut self.block, Block::new(second));
        let means = block.means();
        if block.began - self.now.began < CHANGING_S && self.now.began > 0 {
            return;
        }
        let sides = [Channel::LowSide, Channel::HighSide].map(|channel| means[place(channel)] as f32);
        match self.steps.before {
            Some((before, began)) if self.steps.is_step(before, sides, 0.5) => {
                self.begin(began);
                self.block = Block::new(second);
                self.steps_alone = self.steps_alone.saturating_add(1);
                return;
            }
            Some(_) => self.steps.before = None,
            None => {
                if !self.is_restless()
                    && self.steps.blocks >= STEP_BLOCKS
                    && self.steps.is_step(self.steps.last, sides, 1.0)
                {
                    self.steps.before = Some((self.steps.last, block.began));
                    return;
                }
            }
        }
        self.steps.take(sides);
        for (steady, channel) in self.steady.iter_mut().zip(TELLING) {
            let value = means[place(channel)] as f32;
            if !value.is_nan() {
                steady.push(value);
            }
        }
        self.now.push(&means, (second - block.began) as f64);
        self.now.settled |= if self.now.cycling {
            self.now.cycles.count >= SETTLED_CYCLES
        } else {
            self.is_settled()
        };
    }

    /// Counts how often the low side comes back from near vacuum; at the first time the earlier states are dropped, since they
    /// were parts of this swing.
    fn watch_vacuum(&mut self, low: f32) {
        let (near, back) = match self.datum {
            Datum::Gauge => VACUUM_PA,
            Datum::Absolute => (
                VACUUM_PA.0 + STANDARD_PRESSURE_PA as f32,
                VACUUM_PA.1 + STANDARD_PRESSURE_PA as f32,
            ),
        };
        if low < near {
            self.near_vacuum = true;
        } else if self.near_vacuum && low > back {
            self.near_vacuum = false;
            self.recoveries = self.recoveries.saturating_add(1);
            if self.recoveries == 1 {
                self.earlier = [None; STATES - 1];
            }
        }
    }

    /// Notes when the two sides have become equal after the compressor stopped.
    fn equalise(&mut self, row: &Row) {
        let before = self
            .earlier
            .iter()
            .flatten()
            .find(|state| state.ended <= self.now.began);
        let mean = |state: &State, channel| state.mean(channel).map(|mean| mean.mean);
        let sides = (
            row.values[place(Channel::LowSide)],
            row.values[place(Channel::HighSide)],
        );
        if let Some(before) = before
            && let (Some(low), Some(high)) = (mean(before, Channel::LowSide), mean(before, Channel::HighSide))
            && self.equal_after.is_none()
            && f64::from(sides.1 - sides.0) < EQUAL * (high - low)
        {
            self.equal_after = Some(row.second - self.now.began);
        }
    }
}
