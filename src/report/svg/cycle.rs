//! The cycle on axes of pressure and enthalpy, with the dome of the two phases.

use super::axis::{Axis, range, round_step};
use super::draw::{Anchor, Drawing, Fill, LINE, Mark, Stroke, WIDTH};
use super::scale::pressure_unit_pa;
use crate::circuit::Reading;
use crate::diagnosis::Case;
use crate::error::Error;
use crate::mixture::Side;
use crate::names::{Reference, Refrigerant};
use crate::report::page::{Page, Scale};
use crate::report::texts::Text;
use crate::report::units::Units;
use crate::report::words::Wording;
use crate::saturation::{self, Line, State};
use crate::units::constants::BTU_PER_POUND_J_KG;
use crate::units::{Temperature, in_kelvins};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// Reference state of the enthalpy; only differences matter.
const REFERENCE: Reference = Reference::Iir;
/// Points on each side of the dome.
const DOME: u32 = 40;
/// How far below the temperature of the low side the dome begins, K.
const BELOW_K: f64 = 12.0;
/// Least ratio of high side to low side for which a cycle is drawn. Source: engineering judgement.
const LEAST_RATIO: f64 = 1.15;

const TOP: f64 = 36.0;
const BOTTOM: f64 = 226.0;
const LEFT: f64 = 48.0;
const RIGHT: f64 = WIDTH - 12.0;

/// A corner of the cycle.
struct Corner {
    h_j_kg: f64,
    p_pa: f64,
    says: String,
}

/// The corners: suction, discharge, liquid, and behind the expansion device; and whether the discharge was measured.
struct Cycle {
    corners: [Corner; 4],
    measured: bool,
}

/// The drawing; `None` for a system at rest and without both pressures.
///
/// Errors: those of the states: `OutOfRange` where the equation of the refrigerant gives none.
pub(super) fn cycle(case: &Case, page: &Page, wording: Wording) -> Result<Option<String>, Error> {
    let Some(cycle) = corners(case, wording)? else {
        return Ok(None);
    };
    let refrigerant = case.system.refrigerant;
    let line = saturation::line_of(refrigerant);
    let lowest_k = line.temperature_k(Side::Dew, cycle.corners[0].p_pa)? - BELOW_K;
    let dome = dome(line, f64::max(lowest_k, line.temperatures().low))?;
    let all = || {
        let corners = cycle.corners.iter().map(|corner| [corner.h_j_kg, corner.p_pa]);
        corners.chain(dome.iter().copied())
    };
    let (Some(h_j_kg), Some(ln_p)) = (
        range(all().map(|[h, _]| h), 0.08),
        range(all().map(|[_, p]| libm::log(p)), 0.1),
    ) else {
        return Ok(None);
    };
    let (across, up) = (Axis::new(h_j_kg, [LEFT, RIGHT]), Axis::new(ln_p, [BOTTOM, TOP]));
    let place = |h_j_kg: f64, p_pa: f64| [across.at(h_j_kg), up.at(libm::log(p_pa))];

    let mut to = Drawing::new();
    let air_pa = case.conditions.surroundings.pressure().pa();
    axes(&mut to, h_j_kg, &up, air_pa, ln_p.map(libm::exp), wording);
    for reading in page.readings.iter().filter(|reading| reading.scale == Scale::PaGauge) {
        let ends = [reading.band_80.0, reading.band_80.1].map(|pa| libm::log(f64::max(pa + air_pa, 1.0)));
        let [low, high] = ends.map(|ln_p| up.at(ln_p).clamp(TOP, BOTTOM));
        to.area([LEFT, high], [7.0, low - high], Fill::Hatched);
    }
    let points: Vec<[f64; 2]> = dome.iter().map(|[h, p]| place(*h, *p)).collect();
    to.path(&points, Stroke::Thin);
    for (from, end) in [(0, 1), (1, 2), (2, 3), (3, 0)] {
        let stroke = if from == 0 && !cycle.measured {
            Stroke::Dashed
        } else {
            Stroke::Strong
        };
        let [from, end] = [from, end].map(|at: usize| {
            let Corner { h_j_kg, p_pa, .. } = cycle.corners[at];
            place(h_j_kg, p_pa)
        });
        to.line(from, end, stroke);
    }
    let numbered = || cycle.corners.iter().zip(["1", "2", "3", "4"]);
    // Each number is outside of its corner.
    for ((corner, number), [right, down]) in numbered().zip([[7.0, 14.0], [7.0, -5.0], [-14.0, -5.0], [-14.0, 14.0]]) {
        let [x, y] = place(corner.h_j_kg, corner.p_pa);
        to.mark([x, y], Mark::Dot);
        to.text([x + right, y + down], Anchor::Start, number);
    }
    let mut y = BOTTOM + 46.0;
    for (corner, number) in numbered() {
        to.bold([4.0, y], Anchor::Start, number);
        y = to.lines([18.0, y], &corner.says);
    }
    to.path(&[[2.0, y - 4.0], [14.0, y - 4.0]], Stroke::Thin);
    y = to.lines([18.0, y], wording.text(Text::SaturationLine));
    to.area([4.0, y - 9.0], [7.0, 10.0], Fill::Hatched);
    y = to.lines([18.0, y], &wording.filled(Text::NormalShare, &[("share", "80")]));
    Ok(Some(to.finish(wording.text(Text::PictureCycle), y - LINE + 6.0)))
}

fn axes(to: &mut Drawing, h_j_kg: [f64; 2], up: &Axis, air_pa: f64, p_pa: [f64; 2], wording: Wording) {
    let (per, unit) = match wording.units {
        Units::Metric | Units::Bar => (1e3, "kJ/kg"),
        Units::Us => (BTU_PER_POUND_J_KG, "Btu/lb"),
    };
    to.area([LEFT, TOP], [RIGHT - LEFT, BOTTOM - TOP], Fill::Blank);
    let across = Axis::new(h_j_kg.map(|h| h / per), [LEFT, RIGHT]);
    for (value, text) in across.ticks(5.0) {
        let x = across.at(value);
        to.line([x, BOTTOM], [x, BOTTOM + 4.0], Stroke::Thin);
        to.near([x, BOTTOM + 15.0], &text);
    }
    to.text(
        [(LEFT + RIGHT) / 2.0, BOTTOM + 29.0],
        Anchor::Middle,
        &format!("{}, {unit}", wording.text(Text::Enthalpy)),
    );
    for (shown, p_pa) in pressures(p_pa, air_pa, pressure_unit_pa(wording.units)) {
        let y = up.at(libm::log(p_pa));
        to.line([LEFT - 4.0, y], [LEFT, y], Stroke::Thin);
        to.text([LEFT - 6.0, y + 4.0], Anchor::End, &shown);
    }
    let label = format!(
        "{}, {} ({})",
        wording.text(Text::Pressure),
        wording.units.unit(Scale::PaGauge, wording.language),
        wording.text(Text::Logarithmic)
    );
    to.bold([0.0, 11.0], Anchor::Start, wording.text(Text::PictureCycle));
    to.text([0.0, 27.0], Anchor::Start, &label);
}

/// Round gauge pressures between two absolute pressures, as text and in Pa absolute; on a logarithmic scale they are far
/// enough apart for their labels.
fn pressures([low_pa, high_pa]: [f64; 2], air_pa: f64, unit_pa: f64) -> Vec<(String, f64)> {
    let apart = libm::log(high_pa / low_pa) / 9.0;
    let mut all = Vec::new();
    let step = round_step(low_pa * (libm::exp(apart) - 1.0) / unit_pa);
    let mut shown = f64::max(libm::ceil((low_pa - air_pa) / unit_pa / step) * step, 0.0) + 0.0; // no negative zero
    while shown * unit_pa + air_pa < high_pa {
        let p_pa = shown * unit_pa + air_pa;
        all.push((format!("{shown:.0}"), p_pa));
        // The next round value that is far enough away.
        let step = round_step((p_pa * libm::exp(apart) - p_pa) / unit_pa);
        shown = (libm::floor(shown / step + 1e-9) + 1.0) * step;
    }
    all.retain(|(_, p_pa)| *p_pa >= low_pa);
    let mut last_pa = 0.0;
    all.retain(|(_, p_pa)| {
        let far = last_pa == 0.0 || libm::log(p_pa / last_pa) > 0.6 * apart;
        if far {
            last_pa = *p_pa;
        }
        far
    });
    all
}

/// The saturated liquid up to the critical point and the saturated vapour down again: enthalpy and pressure.
fn dome(line: Line, lowest_k: f64) -> Result<Vec<[f64; 2]>, Error> {
    let highest_k = line.temperatures().high;
    // Closer together towards the critical point, where the dome bends.
    let at = |i: u32| {
        let left = 1.0 - f64::from(i) / f64::from(DOME);
        highest_k - (highest_k - lowest_k) * left * left
    };
    let side = |quality: f64, steps: &mut dyn Iterator<Item = u32>| {
        let point = |i| {
            let state = line.state_tq(at(i), quality, REFERENCE)?;
            Ok([state.h_j_kg, state.p_pa])
        };
        steps.map(point).collect::<Result<Vec<_>, Error>>()
    };
    let mut points = side(0.0, &mut (0..DOME))?;
    points.extend(side(1.0, &mut (0..DOME).rev())?);
    Ok(points)
}

fn corners(case: &Case, wording: Wording) -> Result<Option<Cycle>, Error> {
    let air = case.conditions.surroundings;
    let datum = case.readings.gauge_zero.unwrap_or(air);
    let readings = &case.readings;
    let (Some(low), Some(high)) = (readings.low_side, readings.high_side_known(air)) else {
        return Ok(None);
    };
    let [low_pa, high_pa] = [low, high].map(|reading| reading.value.absolute(datum).pa());
    if case.conditions.at_rest(case.system.compressor) || high_pa < LEAST_RATIO * low_pa {
        return Ok(None);
    }
    let refrigerant = case.system.refrigerant;
    let line = saturation::line_of(refrigerant);
    let told = |name: Text, reading: Option<Temperature>, otherwise: Text| {
        let name = wording.text(name);
        match reading {
            Some(t) => format!("{name}, {}", wording.with_unit(Scale::Kelvin, in_kelvins(t))),
            None => format!("{name}: {}, {}", wording.text(Text::NotRead), wording.text(otherwise)),
        }
    };
    let value = |reading: Option<Reading<Temperature>>| reading.map(|reading| reading.value);
    let suction = value(readings.suction_line);
    let (liquid_kind, liquid) = match readings.liquid_line {
        None if readings.condenser_outlet.is_some() => (Text::CondenserOutlet, value(readings.condenser_outlet)),
        reading => (Text::LiquidLine, value(reading)),
    };
    let discharge = value(readings.discharge_line);

    let dew_k = saturation::dew_temperature_k(refrigerant, low_pa)?;
    let vapour = suction.filter(|t| in_kelvins(*t) > dew_k);
    let first = match vapour {
        Some(t) => line.state_tp(in_kelvins(t), low_pa, REFERENCE)?,
        None => line.state_pq(low_pa, 1.0, REFERENCE)?,
    };
    let Some((third, is_liquid)) = liquid_state(refrigerant, high_pa, liquid)? else {
        return Ok(None);
    };
    let (second, measured) = match discharge {
        Some(t) => (discharge_state(refrigerant, high_pa, t)?, true),
        None => (line.state_ps(high_pa, first.s_j_kg_k, REFERENCE)?, false),
    };
    let corner = |h_j_kg: f64, p_pa: f64, says: String| Corner { h_j_kg, p_pa, says };
    let saturated = |says: String, as_read: bool, reading: Option<Temperature>| match reading {
        Some(_) if !as_read => format!("{says}; {}", wording.text(Text::DrawnSaturated)),
        Some(_) | None => says,
    };
    let suction_says = told(Text::SuctionLine, suction, Text::DrawnSaturated);
    let liquid_says = told(liquid_kind, liquid, Text::DrawnSaturated);
    Ok(Some(Cycle {
        corners: [
            corner(first.h_j_kg, low_pa, saturated(suction_says, vapour.is_some(), suction)),
            corner(
                second.h_j_kg,
                high_pa,
                told(Text::DischargeLine, discharge, Text::DrawnIdeal),
            ),
            corner(third, high_pa, saturated(liquid_says, is_liquid, liquid)),
            corner(third, low_pa, wording.text(Text::AfterExpansion).into()),
        ],
        measured,
    }))
}

/// The enthalpy before the expansion device, and whether it is that of the temperature that was read.
///
/// A line that was not read, or that is as warm as boiling liquid, is taken as saturated liquid. `None` above the critical
/// pressure without a temperature.
fn liquid_state(refrigerant: Refrigerant, p_pa: f64, t: Option<Temperature>) -> Result<Option<(f64, bool)>, Error> {
    let line = saturation::line_of(refrigerant);
    if p_pa >= line.pressures(Side::Bubble).high {
        return t
            .map(|t| Ok((line.state_tp(in_kelvins(t), p_pa, REFERENCE)?.h_j_kg, true)))
            .transpose();
    }
    let boiling_k = saturation::bubble_temperature_k(refrigerant, p_pa)?;
    Ok(Some(match t.filter(|t| in_kelvins(*t) < boiling_k) {
        Some(t) => (line.state_tp(in_kelvins(t), p_pa, REFERENCE)?.h_j_kg, true),
        None => (line.state_pq(p_pa, 0.0, REFERENCE)?.h_j_kg, false),
    }))
}

/// The state in the discharge line; one that reads colder than condensing vapour is taken as saturated vapour.
fn discharge_state(refrigerant: Refrigerant, p_pa: f64, t: Temperature) -> Result<State, Error> {
    let line = saturation::line_of(refrigerant);
    let condenses = p_pa < line.pressures(Side::Dew).high;
    if condenses && in_kelvins(t) <= saturation::dew_temperature_k(refrigerant, p_pa)? {
        return line.state_pq(p_pa, 1.0, REFERENCE);
    }
    line.state_tp(in_kelvins(t), p_pa, REFERENCE)
}
