//! Makes the logs of `examples/logs`: invented vehicles of a municipal fleet garage at 1,600 m.
//!
//! ```text
//! cargo run --release --example make_logs -- examples/logs
//! ```
//!
//! The vehicle model run in time, in the simplest way: from a start at rest each reading approaches its steady state at the present
//! speed and fault, with a time constant of its own (pressures seconds, air and lines a minute, cabin several). Where the clutch
//! cycles in the steady state, the pressures follow a saw-tooth with the ends, the rate and the running part of that steady state.
//! Noise is that of transducers and thermocouples. Time constants and noise are engineering judgement.

use coldloop::units::{RelativeHumidity, RotationalSpeed, Surroundings, celsius, in_kelvins};
use coldloop::vehicle::{Conditions, FaultSeverity, Simulation, System, Vehicle, simulate};
use coldloop::{AirSource, Compressor, Expansion, Fault, Refrigerant, VehicleClass};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::error::Error;
use std::fmt::Write;
use std::path::Path;

/// Time constants, s: low side, high side, vent, cabin, lines.
const LOW_S: f64 = 6.0;
const HIGH_S: f64 = 20.0;
const VENT_S: f64 = 40.0;
const LINES_S: f64 = 45.0;

/// One vehicle and what happens to it.
struct Story {
    name: &'static str,
    says: &'static str,
    system: System,
    class: VehicleClass,
    ambient_c: f64,
    humidity: f64,
    /// Cabin air at the start, °C, and its time constant, s.
    cabin: (f64, f64),
    seconds: usize,
    /// From each second on: engine speed in rpm, and fault.
    parts: Vec<(usize, f64, Option<FaultSeverity>)>,
    /// Seconds in which the high side's transducer gives nothing or a spike.
    drops_out: bool,
}

fn main() -> Result<(), Box<dyn Error>> {
    let folder = std::env::args().nth(1).unwrap_or_else(|| "examples/logs".into());
    std::fs::create_dir_all(&folder)?;
    for (name, text) in files()? {
        std::fs::write(Path::new(&folder).join(name), text)?;
    }
    for story in stories() {
        println!("{}: {}", story.name, story.says);
    }
    Ok(())
}

/// The files of the folder, each with its name.
pub(crate) fn files() -> Result<Vec<(String, String)>, Box<dyn Error>> {
    let (mut files, mut index) = (Vec::new(), String::new());
    for (seed, story) in stories().iter().enumerate() {
        let (toml, csv) = story.told(seed as u64)?;
        files.push((format!("{}.toml", story.name), toml));
        files.push((format!("{}.csv", story.name), csv));
        writeln!(index, "{}", story.truth())?;
    }
    files.push(("index.jsonl".into(), index));
    Ok(files)
}

fn stories() -> Vec<Story> {
    let orifice = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
    let valve = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal);
    let clutch = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let van = Story {
        name: "cycling-van",
        says: "Van 5: cools well. The clutch cycles on its low-side switch, and no single reading says what the low side is.",
        system: orifice,
        class: VehicleClass::Van,
        ambient_c: 22.0,
        humidity: 0.35,
        cabin: (24.0, 240.0),
        seconds: 600,
        parts: vec![(0, 1_500.0, None)],
        drops_out: false,
    };
    // Ice forms and melts irregularly.
    let mut rng = ChaCha8Rng::seed_from_u64(20);
    let (mut at, mut frozen, mut freezes) = (0, false, Vec::new());
    while at < 720 {
        let severity = if frozen { 0.85 } else { 0.15 };
        freezes.push((at, 1_500.0, Some(FaultSeverity::new(Fault::MoistureIcing, severity))));
        at += rng.random_range(25..110);
        frozen = !frozen;
    }
    vec![
        Story {
            name: "bus-pull-down",
            says: "Bus 7: parked in the sun and started. Vent and cabin come down; a verdict in the first minutes would be early.",
            system: valve,
            class: VehicleClass::Bus,
            ambient_c: 33.0,
            humidity: 0.25,
            cabin: (43.0, 420.0),
            seconds: 900,
            parts: vec![(0, 1_500.0, None)],
            ..story_of(&van)
        },
        Story {
            name: "frozen-moisture",
            says: "Van 8: cools, stops, and cools again. Water freezes in the expansion valve at no fixed pace.",
            system: clutch,
            ambient_c: 30.0,
            seconds: 720,
            parts: freezes,
            ..story_of(&van)
        },
        Story {
            name: "worn-compressor",
            says: "Street sweeper: idles for five minutes, then works at 2,000 rpm. The compressor delivers too little at both.",
            system: clutch,
            ambient_c: 29.0,
            parts: [(0, 800.0), (300, 2_000.0)]
                .map(|(at, rpm)| (at, rpm, Some(FaultSeverity::new(Fault::WornCompressor, 0.7))))
                .to_vec(),
            ..story_of(&van)
        },
        Story {
            name: "sensor-drops-out",
            says: "Van 6: the high side's transducer drops out, and its plug adds spikes.",
            system: valve,
            ambient_c: 27.0,
            parts: vec![(0, 1_800.0, None)],
            drops_out: true,
            ..story_of(&van)
        },
        van,
    ]
}

/// The vehicle and weather that all logs share unless they say otherwise.
fn story_of(story: &Story) -> Story {
    Story {
        parts: story.parts.clone(),
        ..*story
    }
}

/// The readings at one time.
#[derive(Clone, Copy)]
struct Now {
    low_pa: f64,
    high_pa: f64,
    vent_c: f64,
    cabin_c: f64,
    suction_c: f64,
    liquid_c: f64,
}

impl Story {
    fn told(&self, seed: u64) -> Result<(String, String), Box<dyn Error>> {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let vehicle = Vehicle::typical(self.system, self.class)?;
        let air = Surroundings::at_altitude(1_600.0)?;
        let steady = self.parts.iter().map(|(_, rpm, fault)| {
            let day = Conditions {
                relative_humidity: Some(RelativeHumidity::from_fraction(self.humidity)),
                engine_speed: Some(RotationalSpeed::from_rpm(*rpm)),
                air_source: Some(AirSource::Recirculated),
                ..Conditions::new(celsius(self.ambient_c), air)
            };
            simulate(&vehicle, &day, fault.as_slice())
        });
        let steady: Vec<Simulation> = steady.collect::<Result<_, _>>()?;
        let air_pa = air.pressure().pa();
        let rest_pa = self.system.refrigerant.dew_pressure(celsius(self.ambient_c))?.pa();
        let start = self.cabin.0;
        let mut now = Now {
            low_pa: rest_pa,
            high_pa: rest_pa,
            vent_c: start,
            cabin_c: start,
            suction_c: self.ambient_c,
            liquid_c: self.ambient_c,
        };
        let mut csv = String::from(
            "time [s],low side [kPa gauge],high side [kPa gauge],vent [°C],cabin [°C],suction line [°C],liquid line [°C],engine speed [rpm],clutch\n",
        );
        let mut phase = 0.0;
        for second in 0..self.seconds {
            let part = self.parts.iter().rposition(|(from, _, _)| *from <= second).unwrap_or(0);
            let target = &steady[part];
            let swing = target.swing.filter(|_| second > 40);
            let (mut low_pa, mut high_pa, mut vent) = (
                target.low_side.pa(),
                target.high_side.pa(),
                in_kelvins(target.vent) - 273.15,
            );
            let mut on = true;
            if let Some(swing) = swing {
                phase = (phase + swing.cycles.hz()) % 1.0;
                on = phase < swing.engaged;
                // The compressor pulls beyond the end of the swing and is stopped there; at rest the low side rises.
                let [low, high] = [swing.low_side, swing.high_side].map(|(least, most)| (least.pa(), most.pa()));
                let part = if on {
                    phase / swing.engaged
                } else {
                    (phase - swing.engaged) / (1.0 - swing.engaged)
                };
                let shape =
                    |from: f64, to: f64| from + (to - from) * (1.0 - (-2.0 * part).exp()) / (1.0 - (-2.0_f64).exp());
                low_pa = if on { shape(low.1, low.0) } else { shape(low.0, low.1) };
                high_pa = if on {
                    shape(high.0, high.1)
                } else {
                    shape(high.1, high.0)
                };
                vent += if on { 0.8 - 1.6 * part } else { 1.6 * part - 0.8 };
                (now.low_pa, now.high_pa) = (low_pa, high_pa);
            }
            now.low_pa += (low_pa - now.low_pa) / LOW_S;
            now.high_pa += (high_pa - now.high_pa) / HIGH_S;
            now.cabin_c += (in_kelvins(target.cabin) - 273.15 - now.cabin_c) / self.cabin.1;
            // The vent is above its steady value by as much as the air that it draws is above its own.
            let warmer = 0.5 * (now.cabin_c - (in_kelvins(target.cabin) - 273.15));
            now.vent_c += (vent + warmer - now.vent_c) / VENT_S;
            now.suction_c += (in_kelvins(target.suction_line) - 273.15 - now.suction_c) / LINES_S;
            now.liquid_c += (in_kelvins(target.liquid_line) - 273.15 - now.liquid_c) / LINES_S;
            self.write(&mut csv, (second, on, self.parts[part].1), (&now, air_pa), &mut rng)?;
        }
        Ok((self.header(), csv))
    }

    fn write(
        &self,
        csv: &mut String,
        (second, on, rpm): (usize, bool, f64),
        (now, air_pa): (&Now, f64),
        rng: &mut ChaCha8Rng,
    ) -> Result<(), std::fmt::Error> {
        let mut noise = |size: f64| size * ((0..12).map(|_| rng.random::<f64>()).sum::<f64>() - 6.0);
        let low = format!("{:.1}", (now.low_pa - air_pa) / 1e3 + noise(1.5));
        let mut high = format!("{:.0}", (now.high_pa - air_pa) / 1e3 + noise(5.0));
        if self.drops_out {
            match second % 97 {
                40..=60 => high.clear(),
                75 => high = "3450".into(),
                _ => {}
            }
        }
        let temperatures =
            [now.vent_c, now.cabin_c, now.suction_c, now.liquid_c].map(|c| format!("{:.1}", c + noise(0.1)));
        writeln!(
            csv,
            "{second},{low},{high},{},{:.0},{}",
            temperatures.join(","),
            rpm + noise(8.0),
            u8::from(on)
        )
    }

    /// The line of the index that `evaluate_logs` reads, its keys in this order whatever features JSON is built with.
    fn truth(&self) -> String {
        let fault = self.parts.iter().find_map(|(_, _, fault)| *fault);
        let rpm = |part: Option<&(usize, f64, Option<FaultSeverity>)>| part.map_or(0.0, |(_, rpm, _)| *rpm);
        format!(
            r#"{{"id":"{}","system":{{"refrigerant":"{}","expansion":"{}","compressor":"{}"}},"conditions":{{"ambient":"{:.0} °C","humidity":"{:.0} %","altitude":"1600 m","air_source":"recirculated"}},"speeds_rpm":[{:.1},{:.1}],"truth":{{"fault":"{}"}}}}"#,
            self.name,
            self.system.refrigerant.id(),
            self.system.expansion.id(),
            self.system.compressor.id(),
            self.ambient_c,
            100.0 * self.humidity,
            rpm(self.parts.first()),
            rpm(self.parts.last()),
            fault.map_or(Fault::NoFault, |fault| fault.fault).id(),
        )
    }

    fn header(&self) -> String {
        let system = &self.system;
        format!(
            "# {}\n# Invented: municipal fleet garage, 1,600 m above the sea; made by examples/make_logs.rs with the vehicle model.\n\n\
             log = \"{}.csv\"\n\n\
             [system]\nrefrigerant = \"{}\"\nexpansion = \"{}\"\ncompressor = \"{}\"\n\n\
             [conditions]\nambient = \"{:.0} °C\"\nhumidity = \"{:.0} %\"\naltitude = \"1600 m\"\nair_source = \"recirculated\"\n",
            self.says,
            self.name,
            system.refrigerant.id(),
            system.expansion.id(),
            system.compressor.id(),
            self.ambient_c,
            100.0 * self.humidity,
        )
    }
}
