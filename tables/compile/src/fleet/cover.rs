//! How well the bands of the fleet hold, on vehicles that the fit has not seen.

use super::draw::{self, FIGURES, Sample, WEATHERS};
use super::figures;
use coldloop::AirSource;
use coldloop::expected::{Baseline, Fleet, FleetBands, Spread};
use coldloop::units::in_kelvins;
use coldloop::vehicle::System;

const VEHICLES: usize = 1_500;
const SEED: u64 = 77;
const NAMES: [&str; FIGURES] = [
    "low side",
    "high side",
    "vent",
    "superheat",
    "subcooling",
    "discharge superheat",
    "clutch cycles",
    "low side, opens",
    "low side, closes",
    "high side, engaged",
];
/// Quantiles that bound the middle 80 and 95 %.
const QUANTILES: [f64; 2] = [1.281_551_565_544_6, 1.959_963_984_540_054];
/// Corners of the weather in which coverage is counted apart.
const CORNERS: usize = 16;

/// Counts of one figure.
#[derive(Clone, Copy, Default)]
struct Count {
    all: usize,
    below: usize,
    within: [usize; 2],
}

impl Count {
    fn add(&mut self, spread: Spread, value: f64) {
        let deviation = spread.deviation(value);
        self.all += 1;
        self.below += usize::from(deviation < 0.0);
        for (within, quantile) in self.within.iter_mut().zip(QUANTILES) {
            *within += usize::from(deviation.abs() <= quantile);
        }
    }

    fn part(&self, count: usize) -> f64 {
        count as f64 / self.all.max(1) as f64
    }
}

/// Draws vehicles of every kind and prints what part of them lies in the bands: over all weathers, and in the worst of
/// 16 corners of it.
pub(crate) fn cover() -> Result<(), String> {
    println!("{VEHICLES} vehicles of each kind in {WEATHERS} weathers each");
    println!("  figure               below  in 80 %  in 95 %   worst corner: below, in 80 %, in 95 %   spread");
    for system in draw::systems() {
        println!("{}, {}, {}", system.refrigerant, system.expansion, system.compressor);
        kind(&system).map_err(|e| format!("{system:?}: {e}"))?;
    }
    Ok(())
}

fn kind(system: &System) -> Result<(), coldloop::Error> {
    let fleet = Fleet::of(system)?;
    let vehicles = draw::vehicles(system, VEHICLES, SEED);
    let mut counts = [[Count::default(); CORNERS + 1]; FIGURES];
    let mut widths = [0.0; FIGURES];
    for sample in vehicles.iter().flatten() {
        let bands = spreads(&fleet.bands(&sample.conditions)?);
        for figure in 0..figures(system) {
            let Some(spread) = bands[figure] else { continue };
            widths[figure] += 0.5 * (spread.down + spread.up) / (vehicles.len() * WEATHERS) as f64;
            for cell in [corner(sample), CORNERS] {
                counts[figure][cell].add(spread, sample.figures[figure]);
            }
        }
    }
    for figure in 0..figures(system) {
        let all = &counts[figure][CORNERS];
        let worst = |read: &dyn Fn(&Count) -> f64, aim: f64| {
            counts[figure][..CORNERS]
                .iter()
                .filter(|count| count.all > 100)
                .map(read)
                .fold(aim, |worst, part| {
                    if (part - aim).abs() > (worst - aim).abs() {
                        part
                    } else {
                        worst
                    }
                })
        };
        println!(
            "  {:20} {:.3}    {:.3}    {:.3}                 {:.2}     {:.2}     {:.2}          {:.2}",
            NAMES[figure],
            all.part(all.below),
            all.part(all.within[0]),
            all.part(all.within[1]),
            worst(&|count| count.part(count.below), 0.5),
            worst(&|count| count.part(count.within[0]), 0.8),
            worst(&|count| count.part(count.within[1]), 0.95),
            widths[figure]
        );
    }
    let _ = Baseline::new(fleet);
    Ok(())
}

/// Hot or mild, slow or fast, standing or driving, fresh or recirculated.
fn corner(sample: &Sample) -> usize {
    let c = &sample.conditions;
    usize::from(in_kelvins(c.ambient) > 301.15)
        + 2 * usize::from(c.engine_speed_hz.unwrap_or(130.0) > 25.0)
        + 4 * usize::from(c.vehicle_speed_m_s.unwrap_or(0.0) > 3.0)
        + 8 * usize::from(c.air_source == Some(AirSource::Recirculated))
}

/// The bands in the order of the figures.
fn spreads(bands: &FleetBands) -> [Option<Spread>; FIGURES] {
    let h = &bands.healthy;
    let swing = bands.swing;
    [
        Some(h.low_side),
        Some(h.high_side),
        Some(h.vent),
        Some(h.superheat),
        Some(h.subcooling),
        Some(h.discharge_superheat),
        h.clutch_cycles,
        swing.map(|s| s.opens),
        swing.map(|s| s.closes),
        swing.map(|s| s.engaged),
    ]
}
