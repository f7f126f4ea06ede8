//! Bands of sound vehicles and sweeps of faults, from the vehicle model, as SVG.
//!
//! `cargo run --release --example vehicle_bands` prints the bands of four kinds of system beside the chart of the US
//! Army (TM 5-3805-291-23-1, table 1) and draws them and the fault sweeps into target/vehicle_bands/.

use coldloop::units::{RelativeHumidity, Surroundings, celsius, difference_in_kelvins, in_kelvins};
use coldloop::vehicle::{Conditions, FaultSeverity, Make, Population, Simulation, System, Vehicle, simulate};
use coldloop::{Compressor, Error, Expansion, Fault, Refrigerant, VehicleClass};
use plotters::prelude::*;
use rand::{RngExt, SeedableRng};
use std::error::Error as AnyError;
use std::path::Path;

const KINDS: [(Expansion, Compressor); 4] = [
    (Expansion::Txv, Compressor::FixedClutch),
    (Expansion::OrificeTube, Compressor::FixedClutch),
    (Expansion::Txv, Compressor::VariableInternal),
    (Expansion::Txv, Compressor::Electric),
];
/// Lowest and highest.
type Span = (f64, f64);
/// Ambient in F, low side and high side in psig.
type Row = (f64, Span, Span);
const ARMY: [Row; 5] = [
    (70.0, (10.0, 20.0), (120.0, 190.0)),
    (80.0, (10.0, 25.0), (140.0, 210.0)),
    (90.0, (15.0, 30.0), (170.0, 240.0)),
    (100.0, (15.0, 30.0), (190.0, 270.0)),
    (110.0, (15.0, 30.0), (210.0, 300.0)),
];
const VEHICLES: usize = 300;
const SWEEP_STEPS: i32 = 40;

/// 2.5, 10, 50, 90 and 97.5 % of a reading.
type Band = [f64; 5];

fn main() -> Result<(), Box<dyn AnyError>> {
    let folder = Path::new("target/vehicle_bands");
    std::fs::create_dir_all(folder)?;
    println!("R-134a, cars, 1,500 rpm, fresh air, 20 to 60 % humidity: 2.5 | 50 | 97.5 % of {VEHICLES} vehicles");
    for (expansion, compressor) in KINDS {
        let mut low = Vec::new();
        let mut high = Vec::new();
        let mut vent = Vec::new();
        println!("{expansion}, {compressor}\n  ambient C   low side psig      high side psig     vent C");
        for ambient_c in [20.0, 25.0, 30.0, 35.0, 40.0] {
            let all = sound(expansion, compressor, ambient_c)?;
            let bands = [
                band(&all, |s| psig(s.low_side.pa())),
                band(&all, |s| psig(s.high_side.pa())),
                band(&all, |s| in_kelvins(s.vent) - 273.15),
            ];
            let text = bands.map(|b| format!("{:5.0} |{:5.0} |{:5.0}", b[0], b[2], b[4]));
            println!("  {ambient_c:6.0}   {}", text.join("   "));
            low.push((ambient_c, bands[0]));
            high.push((ambient_c, bands[1]));
            vent.push((ambient_c, bands[2]));
        }
        let name = format!("{expansion}-{compressor}");
        let army = |side: fn(&Row) -> Span| {
            ARMY.iter()
                .map(|row| ((row.0 - 32.0) / 1.8, side(row)))
                .collect::<Vec<_>>()
        };
        draw_band(
            folder,
            &format!("{name}-low"),
            "Low side, psig",
            0.0..90.0,
            &low,
            &army(|row| row.1),
        )?;
        draw_band(
            folder,
            &format!("{name}-high"),
            "High side, psig",
            50.0..400.0,
            &high,
            &army(|row| row.2),
        )?;
        draw_band(folder, &format!("{name}-vent"), "Vent, °C", 0.0..30.0, &vent, &[])?;
    }
    println!("US Army chart: ambient C, low side psig, high side psig");
    for (ambient_f, low, high) in ARMY {
        println!(
            "  {:6.1}   {:.0} to {:.0}   {:.0} to {:.0}",
            (ambient_f - 32.0) / 1.8,
            low.0,
            low.1,
            high.0,
            high.1
        );
    }
    sweeps(folder)?;
    println!("drawings in {}", folder.display());
    Ok(())
}

fn psig(pa: f64) -> f64 {
    (pa - 101_325.0) / 6_894.757_293_168
}

fn sound(expansion: Expansion, compressor: Compressor, ambient_c: f64) -> Result<Vec<Simulation>, Error> {
    let mut rng = rand_chacha::ChaCha8Rng::seed_from_u64(3);
    let system = System::new(Refrigerant::R134a, expansion, compressor);
    (0..VEHICLES)
        .map(|index| {
            // Every make equally often.
            let make = Make::numbered(index as u32 % Make::TO_JUDGE.end);
            let cars = Population::of_make(make, system, VehicleClass::Car);
            let car = cars.vehicle(&std::array::from_fn(|_| rng.random()))?;
            let day = Conditions {
                relative_humidity: Some(RelativeHumidity::from_fraction(rng.random_range(0.2..0.6))),
                ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
            };
            simulate(&car, &day, &[])
        })
        .collect()
}

fn band(all: &[Simulation], read: impl Fn(&Simulation) -> f64) -> Band {
    let mut values: Vec<f64> = all.iter().map(read).collect();
    values.sort_by(f64::total_cmp);
    [0.025, 0.1, 0.5, 0.9, 0.975].map(|part| values[((values.len() - 1) as f64 * part).round() as usize])
}

fn draw_band(
    folder: &Path,
    name: &str,
    label: &str,
    range: std::ops::Range<f64>,
    bands: &[(f64, Band)],
    chart: &[(f64, Span)],
) -> Result<(), Box<dyn AnyError>> {
    let path = folder.join(format!("{name}.svg"));
    let root = SVGBackend::new(&path, (480, 320)).into_drawing_area();
    root.fill(&WHITE)?;
    let mut axes = ChartBuilder::on(&root)
        .margin(12)
        .x_label_area_size(36)
        .y_label_area_size(46)
        .caption(name, ("sans-serif", 14))
        .build_cartesian_2d(19.0..44.0, range)?;
    axes.configure_mesh()
        .light_line_style(WHITE)
        .x_desc("Ambient, °C")
        .y_desc(label)
        .draw()?;
    for (low, high, shade) in [(0, 4, 225u8), (1, 3, 190)] {
        let upper = bands.iter().map(|(x, b)| (*x, b[high]));
        let lower = bands.iter().rev().map(|(x, b)| (*x, b[low]));
        let fill = RGBColor(shade, shade, shade).filled();
        axes.draw_series(std::iter::once(Polygon::new(
            upper.chain(lower).collect::<Vec<_>>(),
            fill,
        )))?;
    }
    axes.draw_series(LineSeries::new(
        bands.iter().map(|(x, b)| (*x, b[2])),
        BLACK.stroke_width(2),
    ))?;
    for (x, (low, high)) in chart {
        axes.draw_series(std::iter::once(PathElement::new(
            vec![(*x, *low), (*x, *high)],
            BLACK.stroke_width(1),
        )))?;
        for y in [low, high] {
            axes.draw_series(std::iter::once(PathElement::new(
                vec![(x - 0.3, *y), (x + 0.3, *y)],
                BLACK,
            )))?;
        }
    }
    root.present()?;
    Ok(())
}

/// Low side, high side, vent, superheat and subcooling against severity, for each fault of a typical car.
fn sweeps(folder: &Path) -> Result<(), Box<dyn AnyError>> {
    let day = Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.4)),
        ..Conditions::new(celsius(32.0), Surroundings::SEA_LEVEL)
    };
    for (expansion, compressor) in [KINDS[0], KINDS[1]] {
        let system = System::new(Refrigerant::R134a, expansion, compressor);
        let car = Vehicle::typical(system, VehicleClass::Car)?;
        let faults: Vec<Fault> = Fault::ALL
            .into_iter()
            .filter(|f| {
                !matches!(
                    f,
                    Fault::NoFault | Fault::GaugeError | Fault::WrongRefrigerant | Fault::ClutchNotEngaged
                )
            })
            .filter(|f| coldloop::diagnosis::exists(*f, &system))
            .collect();
        let path = folder.join(format!("sweeps-{expansion}.svg"));
        let rows = faults.len().div_ceil(4);
        let root = SVGBackend::new(&path, (1200, 250 * rows as u32)).into_drawing_area();
        root.fill(&WHITE)?;
        for (cell, fault) in root.split_evenly((rows, 4)).iter().zip(&faults) {
            let swept: Vec<(f64, Simulation)> = (0..=SWEEP_STEPS)
                .map(|step| 0.95 * f64::from(step) / f64::from(SWEEP_STEPS))
                .filter_map(|x| Some((x, simulate(&car, &day, &[FaultSeverity::new(*fault, x)]).ok()?)))
                .collect();
            let mut axes = ChartBuilder::on(cell)
                .margin(8)
                .x_label_area_size(22)
                .y_label_area_size(34)
                .caption(fault.id(), ("sans-serif", 13))
                .build_cartesian_2d(0.0..1.0, -20.0..400.0)?;
            axes.configure_mesh()
                .light_line_style(WHITE)
                .x_labels(5)
                .y_labels(6)
                .draw()?;
            type Read = fn(&Simulation) -> f64;
            // Solid: pressures, psig; thin: vent, superheat and subcooling, ten units to the kelvin.
            let lines: [(Read, ShapeStyle); 5] = [
                (|s| psig(s.high_side.pa()), BLACK.stroke_width(2)),
                (|s| psig(s.low_side.pa()), BLACK.stroke_width(2)),
                (
                    |s| 10.0 * (in_kelvins(s.vent) - 273.15),
                    RGBColor(0, 90, 200).stroke_width(1),
                ),
                (
                    |s| 10.0 * difference_in_kelvins(s.superheat),
                    RGBColor(200, 80, 0).stroke_width(1),
                ),
                (
                    |s| 10.0 * difference_in_kelvins(s.subcooling),
                    RGBColor(0, 130, 60).stroke_width(1),
                ),
            ];
            for (read, style) in lines {
                axes.draw_series(LineSeries::new(swept.iter().map(|(x, s)| (*x, read(s))), style))?;
            }
        }
        root.present()?;
    }
    Ok(())
}
