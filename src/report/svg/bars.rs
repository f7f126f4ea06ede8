//! Readings in their bands, and odds as bars.

use super::axis::{Axis, range};
use super::draw::{Anchor, Drawing, Fill, LETTERS, Mark, Stroke, WIDTH};
use super::scale::shown;
use crate::names::{Fault, VerdictKind};
use crate::report::page::{Page, PageReading, TOLD_FROM};
use crate::report::texts::{Named, Text};
use crate::report::words::Wording;
use alloc::format;
use alloc::string::String;

/// Height of a row of readings, px: name with value, band with mark, ends of the band.
const ROW: f64 = 47.0;
const LEFT: f64 = 6.0;
const RIGHT: f64 = WIDTH - 6.0;

/// A row for each reading, each with its own scale: the 95 % band as a frame, the 80 % band hatched, the median as a stroke, the
/// reading as a mark. `None` where there are no bands.
pub(super) fn readings(page: &Page, wording: Wording) -> Option<String> {
    let mut to = Drawing::new();
    let mut y = 4.0;
    for reading in &page.readings {
        row(&mut to, y, reading, wording);
        y += ROW;
    }
    if y < ROW {
        return None;
    }
    y += 10.0;
    to.mark([12.0, y - 4.0], Mark::Diamond);
    to.text([22.0, y], Anchor::Start, wording.text(Text::Measured));
    to.area([96.0, y - 9.0], [16.0, 10.0], Fill::Hatched);
    to.text(
        [118.0, y],
        Anchor::Start,
        &wording.filled(Text::ShareOfVehicles, &[("share", "80")]),
    );
    to.area([262.0, y - 9.0], [16.0, 10.0], Fill::Blank);
    to.text([284.0, y], Anchor::Start, "95 %");
    Some(to.finish(wording.text(Text::PictureReadings), y + 6.0))
}

fn row(to: &mut Drawing, top: f64, reading: &PageReading, wording: Wording) {
    let scale = reading.scale;
    let number = |si: f64| shown(wording.units, scale, si);
    let band = [reading.band_95.0, reading.band_95.1].map(number);
    let measured = reading.measured.map(number);
    let Some(ends) = range(band.into_iter().chain(measured), 0.1) else {
        return;
    };
    let axis = Axis::new(ends, [LEFT, RIGHT]);
    to.bold(
        [0.0, top + LETTERS],
        Anchor::Start,
        reading.feature.name(wording.language),
    );
    let value = match reading.measured {
        Some(si) => wording.with_unit(scale, si),
        None => wording.text(Text::NotRead).into(),
    };
    let standing = reading.standing.map(|standing| standing.name(wording.language));
    let value = standing.map_or(value.clone(), |standing| format!("{value}, {standing}"));
    to.text([WIDTH, top + LETTERS], Anchor::End, &value);
    let line = top + 23.0;
    to.line([LEFT, line], [RIGHT, line], Stroke::Thin);
    let [low_95, high_95] = band.map(|value| axis.at(value));
    let [low_80, high_80] = [reading.band_80.0, reading.band_80.1].map(|si| axis.at(number(si)));
    to.area([low_95, line - 5.0], [high_95 - low_95, 10.0], Fill::Blank);
    to.area([low_80, line - 5.0], [high_80 - low_80, 10.0], Fill::Hatched);
    let median = axis.at(number(reading.median));
    to.line([median, line - 8.0], [median, line + 8.0], Stroke::Strong);
    if let Some(measured) = measured {
        to.mark([axis.at(measured), line], Mark::Diamond);
    }
    let (low, high) = (
        wording.units.value(scale, reading.band_95.0),
        wording.with_unit(scale, reading.band_95.1),
    );
    let normal = wording.filled(Text::NormalRange, &[("low", &low), ("high", &high)]);
    to.near([(low_95 + high_95) / 2.0, line + 17.0], &normal);
}

/// Height of a bar of odds with its name, px.
const BAR: f64 = 32.0;

/// A bar for each explanation, from 0 to 100 %: full for those that the result names, hatched for the others. `None` where
/// there are no explanations.
pub(super) fn odds(page: &Page, wording: Wording) -> Option<String> {
    let result = &page.result;
    let named = |fault| {
        // "No fault" is the result where nothing else is named.
        result.faults.contains(&fault)
            || (result.faults.is_empty() && (result.kind == VerdictKind::Healthy && fault == Fault::NoFault))
    };
    let mut to = Drawing::new();
    let axis = Axis::new([0.0, 1.0], [0.0, WIDTH - 1.0]);
    let mut y = 2.0;
    let mut bar = |to: &mut Drawing, name: &str, probability: f64, fill: Fill| {
        to.text([0.0, y + LETTERS], Anchor::Start, name);
        to.text([WIDTH, y + LETTERS], Anchor::End, &wording.per_cent(probability));
        let length = f64::max(axis.at(probability), 0.5);
        to.line([0.0, y + 25.0], [WIDTH, y + 25.0], Stroke::Thin);
        to.area([0.5, y + 16.0], [length, 9.0], fill);
        y += BAR;
    };
    for odds in &result.odds {
        let fill = if named(odds.fault) { Fill::Full } else { Fill::Hatched };
        bar(&mut to, odds.fault.name(wording.language), odds.probability, fill);
    }
    if result.none_of_these >= TOLD_FROM {
        bar(
            &mut to,
            wording.text(Text::NoneOfThese),
            result.none_of_these,
            Fill::Blank,
        );
    }
    if y < BAR {
        return None;
    }
    for (value, text) in [(0.0, "0 %"), (0.25, "25"), (0.5, "50"), (0.75, "75"), (1.0, "100 %")] {
        to.near([axis.at(value), y + LETTERS], text);
    }
    Some(to.finish(wording.text(Text::PictureOdds), y + LETTERS + 5.0))
}
