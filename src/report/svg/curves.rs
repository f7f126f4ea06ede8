//! What was watched over some time: the vent after the start, a held vacuum, a test pressure.

use super::axis::{Axis, range};
use super::draw::{Anchor, Drawing, Fill, LINE, Mark, Stroke, WIDTH};
use super::scale::shown;
use crate::intake::Visit;
use crate::names::Feature;
use crate::proof::{DRY, Decay, Hold, HoldJudgement, Leak, PullDown};
use crate::report::page::Scale;
use crate::report::texts::{Named, Text};
use crate::report::words::Wording;
use crate::units::constants::MICRON_PA;
use crate::units::in_kelvins;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

const TOP: f64 = 36.0;
const BOTTOM: f64 = 156.0;
const LEFT: f64 = 48.0;
const RIGHT: f64 = WIDTH - 12.0;

/// A level or a band beside the curve, with its name.
struct Level {
    ends: [f64; 2],
    says: String,
}

/// A curve over minutes, in the unit that is shown.
struct Curve<'a> {
    title: &'a str,
    quantity: String,
    points: Vec<[f64; 2]>,
    levels: Vec<Level>,
    /// Where it should have ended, and what that is called.
    end: Option<(f64, String)>,
    measured: &'a str,
    minutes: &'a str,
}

/// The vent after the start, over the band of a sound system.
pub(super) fn pull_down(visit: &Visit, judged: &PullDown, wording: Wording) -> Option<String> {
    let degrees = |k: f64| shown(wording.units, Scale::Kelvin, k);
    let points = visit.pull_down.iter().map(|sample| {
        let vent = degrees(in_kelvins(sample.vent.value));
        [sample.after.minutes(), vent]
    });
    let ends = [judged.expected.low_95, judged.expected.high_95];
    Curve {
        title: wording.text(Text::PullDown),
        quantity: format!(
            "{}, {}",
            Feature::Vent.name(wording.language),
            wording.units.unit(Scale::Kelvin, wording.language)
        ),
        points: points.collect(),
        levels: alloc::vec![Level {
            ends: ends.map(|t| degrees(in_kelvins(t))),
            says: wording.filled(Text::NormalShare, &[("share", "95")]),
        }],
        end: None,
        measured: wording.text(Text::Measured),
        minutes: wording.text(Text::TimeMin),
    }
    .drawn()
}

/// A held vacuum, in microns as vacuum gauges show it, with what a dry circuit stays below.
pub(super) fn hold(hold: &Hold<'_>, judged: &HoldJudgement, wording: Wording) -> Option<String> {
    let micron = |pa: f64| pa / MICRON_PA;
    let points = hold.samples.iter().map(|sample| {
        let pa = sample.pressure.value.absolute(hold.surroundings).pa();
        [sample.after.minutes(), micron(pa)]
    });
    let points: Vec<[f64; 2]> = points.collect();
    let water = judged.water.value.microns();
    // Far above all readings its level would press the curve flat.
    let near = points.iter().any(|[_, read]| *read > water / 4.0);
    let dry = Level {
        ends: [DRY.microns(); 2],
        says: wording.filled(Text::DryBelow, &[("value", &format!("{:.0}", DRY.microns()))]),
    };
    let boils = Level {
        ends: [water; 2],
        says: wording.filled(Text::WaterBoils, &[("value", &format!("{water:.0}"))]),
    };
    Curve {
        title: wording.text(Text::HeldVacuum),
        quantity: format!(
            "{}, {}",
            wording.text(Text::PressureAbsolute),
            wording.text(Text::Micron)
        ),
        points,
        levels: core::iter::once(dry).chain(near.then_some(boils)).collect(),
        end: None,
        measured: wording.text(Text::Measured),
        minutes: wording.text(Text::TimeMin),
    }
    .drawn()
}

/// A test pressure, and where it would have ended without any loss.
pub(super) fn pressure_test(test: &Decay, judged: &Leak, wording: Wording) -> Option<String> {
    let air_pa = test.surroundings.pressure().pa();
    let gauge = |pa: f64| shown(wording.units, Scale::PaGauge, pa - air_pa);
    let end = wording.with_unit(Scale::PaGauge, judged.tight_end.pa() - air_pa);
    let tight = wording.filled(Text::TightEnd, &[("value", &end)]);
    let [start, end] = [test.start, test.end].map(|reading| gauge(reading.value.absolute(test.surroundings).pa()));
    Curve {
        title: wording.text(Text::TestPressure),
        quantity: format!(
            "{}, {}",
            wording.text(Text::Pressure),
            wording.units.unit(Scale::PaGauge, wording.language)
        ),
        points: alloc::vec![[0.0, start], [test.held.minutes(), end]],
        levels: Vec::new(),
        end: Some((gauge(judged.tight_end.pa()), tight)),
        measured: wording.text(Text::Measured),
        minutes: wording.text(Text::TimeMin),
    }
    .drawn()
}

impl Curve<'_> {
    /// `None` without two points.
    fn drawn(&self) -> Option<String> {
        let (Some(first), Some(last)) = (self.points.first(), self.points.last()) else {
            return None;
        };
        if self.points.len() < 2 {
            return None;
        }
        let levels = self.levels.iter().flat_map(|level| level.ends);
        let values = self.points.iter().map(|[_, value]| *value).chain(levels);
        let values = range(values.chain(self.end.as_ref().map(|(value, _)| *value)), 0.1)?;
        let minutes = range([0.0, first[0], last[0]].into_iter(), 0.0)?;
        let (across, up) = (
            Axis::new(minutes, [LEFT + 8.0, RIGHT - 8.0]),
            Axis::new(values, [BOTTOM, TOP]),
        );
        let mut to = Drawing::new();
        self.axes(&mut to, &across, &up);
        for (level, fill) in self.levels.iter().zip([Fill::Hatched, Fill::Blank]) {
            let [low, high] = level.ends.map(|value| up.at(value));
            if low > high {
                to.area([LEFT, high], [RIGHT - LEFT, low - high], fill);
            } else {
                to.path(&[[LEFT, low], [RIGHT, low]], Stroke::Thin);
            }
        }
        let points: Vec<[f64; 2]> = self.points.iter().map(|[x, y]| [across.at(*x), up.at(*y)]).collect();
        to.path(&points, Stroke::Strong);
        points.iter().for_each(|point| to.mark(*point, Mark::Dot));
        if let Some((value, _)) = &self.end {
            let from = points[0];
            let at = [across.at(last[0]), up.at(*value)];
            to.path(&[from, at], Stroke::Dashed);
            to.mark(at, Mark::Ring);
        }
        let height = self.key(&mut to);
        Some(to.finish(self.title, height))
    }

    fn axes(&self, to: &mut Drawing, across: &Axis, up: &Axis) {
        to.area([LEFT, TOP], [RIGHT - LEFT, BOTTOM - TOP], Fill::Blank);
        to.bold([0.0, 11.0], Anchor::Start, self.title);
        to.text([0.0, 27.0], Anchor::Start, &self.quantity);
        for (value, text) in up.ticks(5.0) {
            let y = up.at(value);
            to.line([LEFT - 4.0, y], [LEFT, y], Stroke::Thin);
            to.text([LEFT - 6.0, y + 4.0], Anchor::End, &text);
        }
        for (value, text) in across.ticks(6.0) {
            let x = across.at(value);
            to.line([x, BOTTOM], [x, BOTTOM + 4.0], Stroke::Thin);
            to.near([x, BOTTOM + 15.0], &text);
        }
        to.text([(LEFT + RIGHT) / 2.0, BOTTOM + 29.0], Anchor::Middle, self.minutes);
    }

    /// What the marks, lines and bands mean, a line each; gives the height of the drawing.
    fn key(&self, to: &mut Drawing) -> f64 {
        let mut y = BOTTOM + 46.0;
        to.mark([8.0, y - 4.0], Mark::Dot);
        y = to.lines([22.0, y], self.measured);
        if let Some((_, says)) = &self.end {
            to.mark([8.0, y - 4.0], Mark::Ring);
            y = to.lines([22.0, y], says);
        }
        for level in &self.levels {
            if level.ends[0] < level.ends[1] {
                to.area([2.0, y - 9.0], [12.0, 9.0], Fill::Hatched);
            } else {
                to.path(&[[2.0, y - 4.0], [14.0, y - 4.0]], Stroke::Thin);
            }
            y = to.lines([22.0, y], &level.says);
        }
        y - LINE + 6.0
    }
}
