//! The levels of the vehicle model: published charts and trade facts lie inside the population of vehicles, and its medians
//! near those of the voices that publish any.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::air::MoistAir;
use coldloop::units::{
    RelativeHumidity, RotationalSpeed, Speed, Surroundings, TimeSpan, celsius, fahrenheit, in_kelvins,
};
use coldloop::vehicle::{Conditions, Habits, Make, Needle, Population, Simulation, System, Vehicle, simulate};
use coldloop::{AirSource, Compressor, Expansion, Refrigerant, VehicleClass, saturation};
use rand::{RngExt, SeedableRng};

const PSI: f64 = 6_894.757_293_168;
/// Lowest and highest.
type Span = (f64, f64);

/// US Army TM 5-3805-291-23-1, table 1: ambient in °F, low side before the clutch lets go, high side, psig.
const CHART: [(f64, Span, Span); 5] = [
    (70.0, (10.0, 20.0), (120.0, 190.0)),
    (80.0, (10.0, 25.0), (140.0, 210.0)),
    (90.0, (15.0, 30.0), (170.0, 240.0)),
    (100.0, (15.0, 30.0), (190.0, 270.0)),
    (110.0, (15.0, 30.0), (210.0, 300.0)),
];
const CLUTCH: [(Expansion, Compressor); 2] = [
    (Expansion::Txv, Compressor::FixedClutch),
    (Expansion::OrificeTube, Compressor::FixedClutch),
];

fn draws(kind: (Expansion, Compressor), count: usize, day: impl Fn(f64) -> Conditions) -> Vec<Simulation> {
    let system = System::new(Refrigerant::R134a, kind.0, kind.1);
    draws_of(&Population::usual(system, VehicleClass::Car), count, day)
}

/// Vehicles of a population, with each make in turn and equally often.
fn draws_of(population: &Population, count: usize, day: impl Fn(f64) -> Conditions) -> Vec<Simulation> {
    drawn(population, count, day)
        .map(|(_, _, _, simulation)| simulation)
        .collect()
}

fn drawn(
    population: &Population,
    count: usize,
    day: impl Fn(f64) -> Conditions,
) -> impl Iterator<Item = (Make, Vehicle, Conditions, Simulation)> {
    let mut rng = rand_chacha::ChaCha8Rng::seed_from_u64(11);
    (0..count).map(move |index| {
        let make = Make::numbered(index as u32 % Make::TO_JUDGE.end);
        let of_make = Population {
            make: Some(make),
            ..*population
        };
        let vehicle = of_make.vehicle(&std::array::from_fn(|_| rng.random())).unwrap();
        let day = day(rng.random());
        let simulation = simulate(&vehicle, &day, &[]).unwrap();
        (make, vehicle, day, simulation)
    })
}

/// What the makes note of their cars: low and high side, psig; or with `needle` all alike.
fn noted(
    kind: (Expansion, Compressor),
    count: usize,
    needle: Option<Needle>,
    day: impl Fn(f64) -> Conditions,
) -> Vec<(f64, f64)> {
    let system = System::new(Refrigerant::R134a, kind.0, kind.1);
    drawn(&Population::usual(system, VehicleClass::Car), count, day)
        .map(|(make, vehicle, day, simulation)| {
            let habits = Habits {
                needle: needle.unwrap_or(make.habits.needle),
                vent_on_road: false,
            };
            let noted = habits.noted(&simulation, &vehicle, &day, &[]).unwrap();
            (psig(noted.low_side.pa()), psig(noted.high_side.pa()))
        })
        .collect()
}

/// The value below which the part `part` lies.
fn quantile(values: impl Iterator<Item = f64>, part: f64) -> f64 {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    values[((values.len() - 1) as f64 * part) as usize]
}

fn band(all: &[Simulation], read: impl Fn(&Simulation) -> f64) -> (f64, f64) {
    (
        quantile(all.iter().map(&read), 0.025),
        quantile(all.iter().map(&read), 0.975),
    )
}

fn psig(pa: f64) -> f64 {
    (pa - 101_325.0) / PSI
}

/// Lowest of the low side before the clutch opens, and highest of the high side.
fn low(s: &Simulation) -> f64 {
    psig(s.swing.map_or(s.low_side, |swing| swing.low_side.0).pa())
}

fn high(s: &Simulation) -> f64 {
    psig(s.swing.map_or(s.high_side, |swing| swing.high_side.1).pa())
}

/// The air conditioning of a wheel loader's cab. The manual names neither machine nor parts, so this is a car's with what
/// the setting changes: a diesel of 2,200 rpm drives the same compressor (which bears 6,000) faster by its pulley, and
/// the cab is smaller. One chart for machines large and small: they vary by a third more than cars of one class do.
/// Judgement.
fn loader(expansion: Expansion) -> Population {
    let system = System::new(Refrigerant::R134a, expansion, Compressor::FixedClutch);
    let mut loaders = Population::usual(system, VehicleClass::Car);
    loaders.typical.pulley_ratio = 1.9;
    loaders.typical.cabin_w_k = 45.0;
    loaders.typical.cabin_load_w = 640.0;
    loaders.spread = 1.3;
    loaders
}

/// Relative humidity of weather: dew points from 2 to 24 °C, the air never saturated.
fn weather(ambient_k: f64, u: f64) -> f64 {
    let dew_k = 275.15 + u * (297.15f64.min(ambient_k - 1.0) - 275.15);
    let water = |t_k: f64| MoistAir::saturated(t_k, 101_325.0).unwrap().vapour_pressure_pa();
    water(dew_k) / water(ambient_k)
}

/// US Army TM 5-3805-291-23-1, table 1 and performance check: R-134a, wheel loader, valve or orifice tube; 1,000 rpm,
/// coldest setting, highest fan, ten minutes or more; low side before the clutch disengages, high side higher in very
/// humid weather. It does not say whether the doors are open, so they do in half of the cases; nor where in a cycle
/// the high side is read, so its band goes from the mean of a cycle to its highest. The chart is rounded to 10 psi
/// there: half of that is allowed.
#[test]
fn the_army_chart_lies_in_the_bands() {
    let holds =
        |band: (f64, f64), chart: (f64, f64), slack: f64| band.0 <= chart.0 + slack && band.1 >= chart.1 - slack;
    let mut off: Vec<f64> = Vec::new();
    for (ambient_f, chart_low, chart_high) in CHART {
        let ambient = fahrenheit(ambient_f);
        let mut all = Vec::new();
        for doors in [AirSource::Recirculated, AirSource::Fresh] {
            for (expansion, _) in CLUTCH {
                all.extend(draws_of(&loader(expansion), 150, |u| Conditions {
                    relative_humidity: Some(RelativeHumidity::from_fraction(weather(in_kelvins(ambient), u))),
                    engine_speed: Some(RotationalSpeed::from_rpm(1_000.0)),
                    air_source: Some(doors),
                    ..Conditions::new(ambient, Surroundings::SEA_LEVEL)
                }));
            }
        }
        let lows = band(&all, low);
        let highs = (band(&all, |s| psig(s.high_side.pa())).0, band(&all, high).1);
        println!("{ambient_f} F: low {lows:.1?} for {chart_low:?}, high {highs:.0?} for {chart_high:?}");
        assert!(holds(lows, chart_low, 0.0), "{ambient_f} F: low {lows:?}");
        assert!(holds(highs, chart_high, 5.0), "{ambient_f} F: high {highs:?}");
        // The chart's middle, and that of the machines while the clutch pulls.
        let middle = 0.5 * (chart_high.0 + chart_high.1);
        let median = quantile(all.iter().map(high), 0.5);
        off.push(median / middle - 1.0);
    }
    println!("median of the high side per middle of the chart: {off:+.3?}");
    assert!(off.iter().all(|off| off.abs() < 0.12), "{off:+.3?}");
}

/// Common practice, no source: R-134a at about 74 F, healthy: low side 35 to 45 psig, high side about 175 psig; at 80
/// to 90 F the high side reaches 225 to 250 psig while the low side about keeps.
#[test]
fn trade_facts_lie_in_the_bands() {
    for (ambient_f, trade_low, trade_high) in [
        (74.0, 35.0, 175.0),
        (74.0, 45.0, 175.0),
        (88.0, 40.0, 225.0),
        (88.0, 40.0, 250.0),
    ] {
        let mut all = Vec::new();
        for kind in CLUTCH {
            all.extend(draws(kind, 150, |u| Conditions {
                relative_humidity: Some(RelativeHumidity::from_fraction(0.3 + 0.6 * u)),
                engine_speed: Some(RotationalSpeed::from_hz(14.0 + 16.0 * u)),
                ..Conditions::new(fahrenheit(ambient_f), Surroundings::SEA_LEVEL)
            }));
        }
        let top = quantile(
            all.iter()
                .map(|s| psig(s.swing.map_or(s.low_side, |w| w.low_side.1).pa())),
            0.975,
        );
        let highs = band(&all, high);
        println!("{ambient_f} F: low up to {top:.0}, high {highs:.0?}");
        assert!(
            band(&all, low).0 < trade_low && top > trade_low,
            "{ambient_f} F: low up to {top}"
        );
        assert!(
            highs.0 < trade_high && highs.1 > trade_high,
            "{ambient_f} F: high {highs:?}"
        );
    }
}

/// Common practice, no source: vent 36 to 46 F after a drive of 10 to 15 minutes on maximum cooling.
#[test]
fn a_drive_on_maximum_cooling_makes_cold_air() {
    for kind in [CLUTCH[0], CLUTCH[1], (Expansion::Txv, Compressor::VariableExternal)] {
        let all = draws(kind, 150, |u| Conditions {
            relative_humidity: Some(RelativeHumidity::from_fraction(0.3 + 0.3 * u)),
            air_source: Some(AirSource::Recirculated),
            blower: Some(0.6 + 0.2 * u),
            vehicle_speed: Some(Speed::from_m_s(15.0)),
            running_for: Some(TimeSpan::from_seconds(750.0)),
            ..Conditions::new(fahrenheit(74.0 + 8.0 * u), Surroundings::SEA_LEVEL)
        });
        let (cold, warm) = band(&all, |s| in_kelvins(s.vent) - 273.15);
        println!("{kind:?}: vent {cold:.1} to {warm:.1} C");
        assert!(cold < 7.0 && warm > 2.3 && warm < 15.0, "{kind:?} {cold} {warm}");
    }
}

/// Mean condensing approach 15 to 25 K at moderate load (common practice, no source), taken as a blower at 0.7; one
/// maker's page gives 19 to 22 K under ram air, taken as a drive at 36 km/h with the highest blower. At a standstill with the
/// highest blower, charts have 21 to 32 K at 28 to 33 °C, 27 in the middle: which the test of the medians over voices checks.
#[test]
fn the_condensing_approach_is_that_of_vehicles() {
    for kind in CLUTCH {
        let mean = |speed_m_s: f64, blower: f64| {
            let all = draws(kind, 180, |u| Conditions {
                relative_humidity: Some(RelativeHumidity::from_fraction(0.3 + 0.2 * u)),
                blower: Some(blower),
                vehicle_speed: Some(Speed::from_m_s(speed_m_s)),
                ..Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)
            });
            let approach =
                |s: &Simulation| saturation::dew_temperature_k(Refrigerant::R134a, s.high_side.pa()).unwrap() - 303.15;
            all.iter().map(approach).sum::<f64>() / all.len() as f64
        };
        let (moderate, driving, full) = (mean(0.0, 0.7), mean(10.0, 1.0), mean(0.0, 1.0));
        println!("{kind:?}: approach {moderate:.1} K, driving {driving:.1} K, standing at full load {full:.1} K");
        assert!((15.0..25.0).contains(&moderate), "{kind:?} {moderate}");
        assert!((15.0..25.0).contains(&driving), "{kind:?} {driving}");
        assert!(full > moderate && full > driving, "{kind:?} {full}");
    }
}

/// Evaporator outlet air 3 to 8 C in mild, dry weather.
#[test]
fn mild_dry_weather_leaves_the_evaporator_at_its_limit() {
    for kind in [
        CLUTCH[0],
        CLUTCH[1],
        (Expansion::Txv, Compressor::VariableInternal),
        (Expansion::Txv, Compressor::Electric),
    ] {
        let all = draws(kind, 150, |_| Conditions {
            relative_humidity: Some(RelativeHumidity::from_fraction(0.3)),
            ..Conditions::new(celsius(20.0), Surroundings::SEA_LEVEL)
        });
        let mean = all.iter().map(|s| in_kelvins(s.evaporator_air) - 273.15).sum::<f64>() / all.len() as f64;
        println!("{kind:?}: evaporator air {mean:.1} C");
        assert!((3.0..8.0).contains(&mean), "{kind:?} {mean}");
    }
}

/// Service readings of one maker's internally controlled compressor: the low side falls from 180-206 to 159-186 kPa
/// gauge from 21 to 38 C. In the model it falls until full stroke is reached, and rises from there.
#[test]
fn an_internal_control_lets_the_low_side_fall_with_the_weather() {
    let kind = (Expansion::Txv, Compressor::VariableInternal);
    let median = |t: f64| {
        let all = draws(kind, 100, |_| Conditions {
            relative_humidity: Some(RelativeHumidity::from_fraction(0.2)),
            engine_speed: Some(RotationalSpeed::from_hz(33.0)),
            blower: Some(0.6),
            ..Conditions::new(celsius(t), Surroundings::SEA_LEVEL)
        });
        quantile(all.iter().map(|s| s.low_side.pa() - 101_325.0), 0.5) / 1e3
    };
    let (mild, hot) = (median(21.0), median(36.0));
    println!("{mild:.0} {hot:.0} kPa gauge");
    assert!(
        hot < mild && (175.0..212.0).contains(&mild) && (155.0..195.0).contains(&hot),
        "{mild} {hot}"
    );
}

/// Orifice systems cycle a few times a minute in mild weather; low charge makes it rapid (common practice, no source).
#[test]
fn low_charge_cycles_rapidly() {
    use coldloop::Fault;
    use coldloop::vehicle::FaultSeverity;
    let system = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
    let car = Vehicle::typical(system, VehicleClass::Car).unwrap();
    let day = Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.4)),
        ..Conditions::new(celsius(21.0), Surroundings::SEA_LEVEL)
    };
    let sound = simulate(&car, &day, &[]).unwrap().clutch_cycles.hz() * 60.0;
    let low = simulate(&car, &day, &[FaultSeverity::new(Fault::Undercharge, 0.55)])
        .unwrap()
        .clutch_cycles
        .hz()
        * 60.0;
    println!("{sound:.1} and {low:.1} a minute");
    assert!((1.5..8.0).contains(&sound), "{sound}");
    assert!(low > 1.3 * sound, "{low} {sound}");
}

/// Where a clutch begins to cycle, the means of pressures and vent join those of running through: in steps of a twentieth of
/// a kelvin of weather no reading jumps.
#[test]
fn no_reading_jumps_where_a_clutch_begins_to_cycle() {
    for (expansion, compressor) in CLUTCH {
        let system = System::new(Refrigerant::R134a, expansion, compressor);
        let car = Vehicle::typical(system, VehicleClass::Car).unwrap();
        let at = |ambient_c: f64| {
            let day = Conditions {
                relative_humidity: Some(RelativeHumidity::from_fraction(0.4)),
                ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
            };
            simulate(&car, &day, &[]).unwrap()
        };
        let readings = |s: &Simulation| [s.low_side.pa() / 1e3, s.high_side.pa() / 10e3, in_kelvins(s.vent)];
        let (mut cycling, mut farthest) = (0, [0.0f64; 3]);
        let mut last = at(15.0);
        for step in 1..=400 {
            let next = at(15.0 + 0.05 * f64::from(step));
            cycling += usize::from(next.swing.is_some());
            for ((far, a), b) in farthest.iter_mut().zip(readings(&last)).zip(readings(&next)) {
                *far = far.max((a - b).abs());
            }
            last = next;
        }
        println!("{expansion}: cycles at {cycling} of 400; farthest {farthest:.2?} (kPa, 10 kPa, K)");
        assert!((100..300).contains(&cycling), "{expansion} {cycling}");
        assert!(
            farthest[0] < 4.0 && farthest[1] < 2.0 && farthest[2] < 0.2,
            "{expansion} {farthest:?}"
        );
    }
}

/// A row of tests/data/sound_voices.csv.
struct Row<'a> {
    cells: Vec<&'a str>,
}

impl Row<'_> {
    fn number(&self, column: usize) -> Option<f64> {
        self.cells[column].parse().ok()
    }

    fn middle(&self, low: usize) -> f64 {
        0.5 * (self.number(low).unwrap() + self.number(low + 1).unwrap())
    }

    fn ambient_c(&self) -> f64 {
        self.middle(4)
    }

    /// What cars of all makes read in the conditions of the row: medians of low and high side, psig.
    fn medians(&self) -> (f64, f64) {
        let expansions: &[Expansion] = match self.cells[2] {
            "txv" => &[Expansion::Txv],
            _ => &Expansion::ALL,
        };
        let compressors: &[Compressor] = match self.cells[3] {
            "electric" => &[Compressor::Electric],
            _ => &[Compressor::FixedClutch, Compressor::VariableInternal],
        };
        let speed = self.number(6).map(|rpm| rpm / 60.0);
        let needle = (self.cells[9] == "lowest").then_some(Needle::Ends);
        let mut all = Vec::new();
        for expansion in expansions {
            for compressor in compressors {
                all.extend(noted((*expansion, *compressor), 60, needle, |u| Conditions {
                    relative_humidity: Some(RelativeHumidity::from_fraction(
                        self.number(7).unwrap_or(weather(self.ambient_c() + 273.15, u)),
                    )),
                    engine_speed: speed
                        .filter(|_| *compressor != Compressor::Electric)
                        .map(RotationalSpeed::from_hz),
                    air_source: AirSource::ALL.into_iter().find(|source| source.id() == self.cells[8]),
                    ..Conditions::new(celsius(self.ambient_c()), Surroundings::SEA_LEVEL)
                }));
            }
        }
        (
            quantile(all.iter().map(|(low, _)| *low), 0.5),
            quantile(all.iter().map(|(_, high)| *high), 0.5),
        )
    }
}

/// The median over published voices, beside that of cars of all makes in the conditions that each row states: the high side
/// within 12 %, the low side within 5 psi, which is half the width of most published bands. Voices disagree among
/// themselves by more: from 145 to 215 psig at 21 °C.
#[test]
fn the_medians_of_the_model_are_near_those_over_voices() {
    let text = include_str!("data/sound_voices.csv");
    let lines = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    let rows: Vec<Row<'_>> = lines
        .map(|line| Row {
            cells: line.split(',').collect(),
        })
        .collect();
    assert_eq!(rows.len(), 32);
    let mut wrong = Vec::new();
    for weather in [15.0..23.0, 23.0..28.0, 28.0..33.0, 33.0..47.0] {
        let mut voices: std::collections::BTreeMap<&str, Vec<(f64, f64)>> = Default::default();
        for row in rows.iter().filter(|row| weather.contains(&row.ambient_c())) {
            let (low, high) = row.medians();
            let off = (low - row.middle(10), high / row.middle(12) - 1.0);
            println!(
                "{:<24} {:5.1} C: low {low:4.0} for {:4.0}, high {high:4.0} for {:4.0}",
                row.cells[0],
                row.ambient_c(),
                row.middle(10),
                row.middle(12)
            );
            voices.entry(row.cells[1]).or_default().push(off);
        }
        let mean = |of: &dyn Fn(&(f64, f64)) -> f64| {
            let each = voices
                .values()
                .map(|all| all.iter().map(of).sum::<f64>() / all.len() as f64);
            quantile_between(each)
        };
        let (low, high) = (mean(&|off| off.0), mean(&|off| off.1));
        println!(
            "{weather:?} C, {} voices: low {low:+.1} psi, high {high:+.3}",
            voices.len()
        );
        assert!(voices.len() >= 5);
        if low.abs() > 5.0 || high.abs() > 0.12 {
            wrong.push((weather, low, high));
        }
    }
    assert!(wrong.is_empty(), "{wrong:?}");
}

/// The median, between the two middle values of an even number.
fn quantile_between(values: impl Iterator<Item = f64>) -> f64 {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    let half = values.len() / 2;
    if values.len() % 2 == 1 {
        values[half]
    } else {
        0.5 * (values[half - 1] + values[half])
    }
}

/// Common practice, no source: 60 psig and more on the low side at 74 °F is a worn compressor, so that of a hundred sound cars
/// of any make at 1,500 rpm hardly two or three read that; and a sound car reads about 175 psig, 160 to 185 in the middle.
/// The voices there say 15 to 37 psig on the low side and 145 to 215 psig on the high side.
#[test]
fn a_sound_car_at_74_f_reads_less_than_60_and_about_175_psig() {
    let mut highs = Vec::new();
    for kind in CLUTCH {
        let all = noted(kind, 240, None, |u| Conditions {
            relative_humidity: Some(RelativeHumidity::from_fraction(0.35 + 0.3 * u)),
            engine_speed: Some(RotationalSpeed::from_hz(25.0)),
            ..Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL)
        });
        let [least, low, most] = [0.025, 0.5, 0.975].map(|part| quantile(all.iter().map(|(low, _)| *low), part));
        println!("{kind:?}: low side {least:.0}, {low:.0}, {most:.0} psig");
        assert!(most < 60.0 && (15.0..=37.5).contains(&low), "{kind:?} {low} {most}");
        highs.extend(all.iter().map(|(_, high)| *high));
    }
    let high = [0.1, 0.5, 0.9].map(|part| quantile(highs.iter().copied(), part));
    println!("high side {high:.1?} psig");
    assert!(high[0] < 175.0 && high[2] > 175.0, "{high:?}");
    assert!((160.0..=185.0).contains(&high[1]), "{high:?}");
}
