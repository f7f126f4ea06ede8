//! The model of sound systems, judged on makes and weathers that it was not fitted to, and against what a vehicle itself read.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::air::MoistAir;
use coldloop::circuit::{FeatureVector, Gauge, Reading, Readings};
use coldloop::expected::{OwnVehicle, SoundModel, Weather};
use coldloop::units::{
    AbsolutePressure, RelativeHumidity, RotationalSpeed, Speed, Surroundings, celsius, in_kelvins, kelvins,
};
use coldloop::vehicle::{Conditions, FaultSeverity, Instruments, Make, Population, System, Vehicle, simulate};
use coldloop::{
    AirSource, Compressor, ErrorKind, Expansion, Fault, Feature, Quantity, Refrigerant, VehicleClass, saturation,
};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

const QUANTILE_80: f64 = 1.281_551_565_544_6;
const QUANTILE_95: f64 = 1.959_963_984_540_054;
const CLASSES: [VehicleClass; 4] = [
    VehicleClass::SmallCar,
    VehicleClass::Car,
    VehicleClass::LargeCar,
    VehicleClass::Van,
];
const FIGURES: [Feature; 7] = [
    Feature::LowSide,
    Feature::HighSide,
    Feature::Vent,
    Feature::Superheat,
    Feature::Subcooling,
    Feature::DischargeSuperheat,
    Feature::ClutchCycles,
];

fn day(ambient_c: f64) -> Conditions {
    Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.4)),
        engine_speed: Some(RotationalSpeed::from_hz(25.0)),
        air_source: Some(AirSource::Fresh),
        ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
    }
}

/// Weather of a year in which one cools, somewhere up to 2,500 m.
fn weather(system: &System, rng: &mut ChaCha8Rng) -> Conditions {
    let ambient_k = 273.15 + rng.random_range(7.0..48.0);
    let place = Surroundings::at_altitude(rng.random_range(0.0..2_500.0)).unwrap();
    let air_pa = place.pressure().pa();
    let dew_k: f64 = rng.random_range(275.0..297.0);
    let air = MoistAir::from_dew_point(ambient_k, air_pa, dew_k.min(ambient_k - 1.0)).unwrap();
    Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(air.relative_humidity())),
        engine_speed: (system.compressor != Compressor::Electric)
            .then(|| rng.random_range(12.0..42.0))
            .map(RotationalSpeed::from_hz),
        air_source: Some(AirSource::ALL[rng.random_range(0..2)]),
        blower: Some(rng.random_range(0.4..1.0)),
        vehicle_speed: Some(Speed::from_m_s(rng.random_range(-20.0f64..28.0).max(0.0))),
        ..Conditions::new(kelvins(ambient_k), place)
    }
}

/// A vehicle of a make that no fit has seen.
fn vehicle(system: System, rng: &mut ChaCha8Rng) -> (Make, Vehicle) {
    loop {
        if let Some(drawn) = drawn(system, rng) {
            return drawn;
        }
    }
}

/// `None` where the parts have no design state.
fn drawn(system: System, rng: &mut ChaCha8Rng) -> Option<(Make, Vehicle)> {
    let mut class = CLASSES[rng.random_range(0..CLASSES.len())];
    if [Refrigerant::R407C, Refrigerant::R513A].contains(&system.refrigerant) {
        class = VehicleClass::Bus;
    }
    let make = Make::numbered(rng.random_range(Make::TO_JUDGE));
    let uniforms = std::array::from_fn(|_| rng.random());
    Some((make, Population::of_make(make, system, class).vehicle(&uniforms).ok()?))
}

/// Its readings by faultless instruments while it is sound.
fn noted((make, vehicle): &(Make, Vehicle), conditions: &Conditions) -> Option<Readings> {
    let sound = [FaultSeverity::new(Fault::NoFault, 0.0)];
    let truth = simulate(vehicle, conditions, &sound).ok()?;
    let noted = make.habits.noted(&truth, vehicle, conditions, &sound).ok()?;
    let exact = Instruments {
        missing: 0.0,
        ..Instruments::SHOP
    };
    exact
        .measure(&noted, conditions.surroundings, &[0.5; Instruments::UNIFORMS])
        .ok()
}

/// A figure of readings, in the space of its band.
fn figure(system: &System, conditions: &Conditions, readings: &Readings, figure: Feature) -> Option<f64> {
    use FeatureVector as F;
    let air = conditions.surroundings;
    let x = FeatureVector::of(system.refrigerant, readings, conditions.ambient, air)
        .unwrap()
        .read;
    let at = |place: usize| x[place].map(|reading| reading.value);
    let above = in_kelvins(conditions.ambient);
    Some(match figure {
        Feature::LowSide => at(F::LOW_SIDE)? + above,
        Feature::HighSide => at(F::HIGH_SIDE)? + above,
        Feature::Vent => at(F::VENT)? + above,
        Feature::Superheat => at(F::SUCTION_LINE)? - at(F::LOW_SIDE)?,
        Feature::Subcooling => at(F::HIGH_SIDE)? - at(F::LIQUID_LINE)?,
        Feature::DischargeSuperheat => at(F::DISCHARGE_LINE)? - at(F::HIGH_SIDE)?,
        Feature::ClutchCycles => at(F::CLUTCH_CYCLES)?,
        Feature::RestPressure => return None,
        _ => unreachable!("a new member of the vocabulary"),
    })
}

/// 34 systems; of each, 60 vehicles of makes that no fit has seen, in two weathers.
#[test]
fn makes_left_out_lie_in_the_bands_as_often_as_the_bands_say() {
    let mut rng = ChaCha8Rng::seed_from_u64(20_250_601);
    let mut counts = [[0usize; 4]; FIGURES.len()];
    assert_eq!(SoundModel::systems().count(), 34);
    for system in SoundModel::systems() {
        for _ in 0..60 {
            let vehicle = vehicle(system, &mut rng);
            for _ in 0..2 {
                let conditions = weather(&system, &mut rng);
                let Some(readings) = noted(&vehicle, &conditions) else {
                    continue;
                };
                let model = SoundModel::of(&system, &conditions).unwrap();
                for (count, of) in counts.iter_mut().zip(FIGURES) {
                    let Some(value) = figure(&system, &conditions, &readings, of) else {
                        continue;
                    };
                    let Some(z) = model.deviation(of, value, 0.0) else {
                        continue;
                    };
                    count[0] += 1;
                    count[1] += usize::from(z < 0.0);
                    count[2] += usize::from(z.abs() < QUANTILE_80);
                    count[3] += usize::from(z.abs() < QUANTILE_95);
                }
            }
        }
    }
    let mut wrong = Vec::new();
    for (of, [all, below, within_80, within_95]) in FIGURES.into_iter().zip(counts) {
        let part = |count: usize| count as f64 / all as f64;
        let said = format!(
            "{of}: {all} readings, {:.3} below, {:.3} in 80 %, {:.3} in 95 %",
            part(below),
            part(within_80),
            part(within_95)
        );
        println!("{said}");
        // Sources that disagree make the bands wider than one of them alone needs.
        let held = (0.74..0.98).contains(&part(within_80)) && (0.90..1.0).contains(&part(within_95));
        if all < 600 || !held || (part(below) - 0.5).abs() > 0.25 {
            wrong.push(said);
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Two visits of a sound vehicle narrow its bands for a third weather to half, and the third reading lies in them as often as they
/// say.
#[test]
fn earlier_sound_visits_narrow_the_bands_and_keep_their_promise() {
    let mut rng = ChaCha8Rng::seed_from_u64(4);
    let mut counts = [[0usize; 2]; 6];
    let (mut narrower, mut nearer, mut all) = ([0.0; 6], [0.0; 6], 0.0);
    let usual = [Refrigerant::R134a, Refrigerant::R1234yf];
    for system in SoundModel::systems().filter(|system| usual.contains(&system.refrigerant)) {
        for _ in 0..60 {
            let vehicle = vehicle(system, &mut rng);
            let mut own = OwnVehicle::new(system);
            for _ in 0..2 {
                let conditions = weather(&system, &mut rng);
                if let Some(readings) = noted(&vehicle, &conditions) {
                    own.learn(&conditions, &readings).unwrap();
                }
            }
            let conditions = weather(&system, &mut rng);
            let Some(readings) = noted(&vehicle, &conditions) else {
                continue;
            };
            let any = SoundModel::of(&system, &conditions).unwrap();
            let own = any.knowing(&system, &conditions, Some(&own), None).unwrap();
            all += 1.0;
            for (at, of) in FIGURES.into_iter().take(6).enumerate() {
                let value = figure(&system, &conditions, &readings, of).unwrap();
                let (wide, narrow) = (any.band(of).unwrap(), own.band(of).unwrap());
                counts[at][0] += 1;
                counts[at][1] += usize::from(own.deviation(of, value, 0.0).unwrap().abs() < QUANTILE_95);
                narrower[at] += (narrow.high_95 - narrow.low_95) / (wide.high_95 - wide.low_95);
                nearer[at] += (value - narrow.median).abs() - (value - wide.median).abs();
            }
        }
    }
    let mut wrong = Vec::new();
    for (at, of) in FIGURES.into_iter().take(6).enumerate() {
        let held = counts[at][1] as f64 / counts[at][0] as f64;
        let said = format!(
            "{of}: bands {:.2} as wide, {held:.3} in 95 %, median nearer by {:.2} K",
            narrower[at] / all,
            -nearer[at] / all
        );
        println!("{said}");
        if narrower[at] / all > 0.8 || nearer[at] > 0.0 || !(0.85..0.995).contains(&held) {
            wrong.push(said);
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// The visits of a vehicle are one joint distribution: their order does not matter, and a visit without readings changes nothing.
#[test]
fn the_order_of_visits_does_not_matter() {
    let mut rng = ChaCha8Rng::seed_from_u64(11);
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal);
    let vehicle = vehicle(system, &mut rng);
    let days = [day(24.0), day(38.0)];
    let readings = days.map(|day| noted(&vehicle, &day).unwrap());
    let known = |order: [usize; 2]| {
        let mut own = OwnVehicle::new(system);
        own.learn(&day(30.0), &Readings::default()).unwrap();
        assert_eq!(own.readings(), 0);
        for at in order {
            own.learn(&days[at], &readings[at]).unwrap();
        }
        SoundModel::of(&system, &day(33.0))
            .unwrap()
            .knowing(&system, &day(33.0), Some(&own), None)
            .unwrap()
    };
    let (one, other) = (known([0, 1]), known([1, 0]));
    for of in FIGURES.into_iter().take(6) {
        let (a, b) = (one.band(of).unwrap(), other.band(of).unwrap());
        // The correlations of what lasts follow the weather a little; they are those of the first visit.
        assert!(
            (a.median - b.median).abs() < 0.4 && (a.high_95 - b.high_95).abs() < 0.8,
            "{of}: {a:?} {b:?}"
        );
    }
}

/// A high side two deviations up moves the band of another day up, by less than that. Under a t distribution so
/// unusual a visit also makes other deviations of this vehicle likelier, so that the band is about as wide as before.
#[test]
fn an_unusual_visit_moves_the_band() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal);
    let any = |c: f64| SoundModel::of(&system, &day(c)).unwrap();
    let band = any(25.0).band(Feature::HighSide).unwrap();
    let t_k = band.high_95;
    let p_pa = saturation::bubble_pressure_pa(Refrigerant::R134a, t_k).unwrap();
    let unusual = Readings {
        high_side: Some(Reading::pressure(AbsolutePressure::from_pa(p_pa), Gauge::HIGH_SIDE)),
        ..Readings::default()
    };
    let mut own = OwnVehicle::new(system);
    own.learn(&day(25.0), &unusual).unwrap();
    assert_eq!(own.readings(), 1);
    let (before, after) = (
        any(35.0).band(Feature::HighSide).unwrap(),
        any(35.0)
            .knowing(&system, &day(35.0), Some(&own), None)
            .unwrap()
            .band(Feature::HighSide)
            .unwrap(),
    );
    let shift = (after.median - before.median) / (before.high_95 - before.median);
    assert!((0.3..1.0).contains(&shift), "{shift}");
    assert!(
        after.high_95 - after.low_95 < 1.1 * (before.high_95 - before.low_95),
        "{before:?} {after:?}"
    );
}

#[test]
fn weather_outside_the_sources_is_refused_and_other_conditions_are_taken_at_their_end() {
    let clutch = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let of = |conditions: &Conditions| SoundModel::of(&clutch, conditions);
    for (ambient_k, fits) in [(278.0, false), (278.2, true), (323.1, true), (323.3, false)] {
        let model = of(&Conditions::new(kelvins(ambient_k), Surroundings::SEA_LEVEL));
        assert_eq!(model.is_ok(), fits, "{ambient_k}");
        if let Err(error) = model {
            assert_eq!(
                (error.kind, error.quantity),
                (ErrorKind::OutOfRange, Quantity::Temperature)
            );
        }
    }
    let thin = Surroundings::measured(AbsolutePressure::from_pa(55_000.0)).unwrap();
    assert_eq!(
        of(&Conditions::new(celsius(25.0), thin)).unwrap_err().quantity,
        Quantity::AbsolutePressure
    );
    assert!(!of(&day(25.0)).unwrap().is_beyond_fit());
    let width = |conditions: &Conditions| {
        let band = of(conditions).unwrap().band(Feature::LowSide).unwrap();
        band.high_95 - band.low_95
    };
    for beyond in [
        Conditions {
            engine_speed: Some(RotationalSpeed::from_hz(80.0)),
            ..day(25.0)
        },
        Conditions {
            blower: Some(0.1),
            ..day(25.0)
        },
    ] {
        assert!(of(&beyond).unwrap().is_beyond_fit());
        let at_the_end = Conditions {
            engine_speed: beyond
                .engine_speed
                .map(|speed| RotationalSpeed::from_hz(speed.hz().min(Weather::ENGINE_SPEED.high))),
            blower: Some(beyond.blower.unwrap_or(1.0).max(Weather::BLOWER.low)),
            ..beyond
        };
        assert!(width(&beyond) > width(&at_the_end), "{beyond:?}");
    }
    // R-744 has a model, but not with a clutch that cycles.
    for refrigerant in [Refrigerant::R12, Refrigerant::R744] {
        let other = System { refrigerant, ..clutch };
        assert_eq!(
            SoundModel::of(&other, &day(25.0)).unwrap_err().kind,
            ErrorKind::NotAvailable
        );
        assert!(!SoundModel::speaks_of(&other));
    }
}

/// What is not known widens the bands.
#[test]
fn unknown_conditions_widen_the_bands() {
    for system in SoundModel::systems() {
        for ambient_c in [15.0, 25.0, 35.0, 45.0] {
            let known = AirSource::ALL.map(|source| {
                let conditions = Conditions {
                    engine_speed: (system.compressor != Compressor::Electric).then_some(RotationalSpeed::from_hz(25.0)),
                    air_source: Some(source),
                    ..day(ambient_c)
                };
                SoundModel::of(&system, &conditions).unwrap()
            });
            let unknown = Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL);
            let unknown = SoundModel::of(&system, &unknown).unwrap();
            for of in [Feature::LowSide, Feature::HighSide, Feature::Vent] {
                let width = |model: &SoundModel| model.band(of).map(|band| band.high_95 - band.low_95).unwrap();
                assert!(
                    width(&unknown) > 0.98 * width(&known[0]).min(width(&known[1])),
                    "{system:?} {ambient_c} {of}"
                );
            }
        }
    }
}

/// Over all weathers of the fit the bands stay in order and physical.
#[test]
fn bands_are_physical_in_every_weather_of_the_fit() {
    let mut rng = ChaCha8Rng::seed_from_u64(9);
    for system in SoundModel::systems() {
        for _ in 0..200 {
            let conditions = weather(&system, &mut rng);
            let model = SoundModel::of(&system, &conditions).unwrap();
            let median = |of| model.band(of).unwrap().median;
            let ambient_k = in_kelvins(conditions.ambient);
            let (low, high, vent) = (
                median(Feature::LowSide),
                median(Feature::HighSide),
                median(Feature::Vent),
            );
            assert!(
                low < vent && vent < ambient_k + 2.0,
                "{system:?} {conditions:?}: {low} {vent}"
            );
            // A gas cooler may leave its gas warmer than the pseudo-critical temperature.
            let least = if system.refrigerant == Refrigerant::R744 {
                8.0
            } else {
                1.0
            };
            assert!(
                high > ambient_k - least && high < ambient_k + 60.0,
                "{system:?} {conditions:?}: {high}"
            );
            assert!(median(Feature::Subcooling) > -3.0, "{system:?} {conditions:?}");
            for of in FIGURES {
                if let Some(band) = model.band(of) {
                    let order = [band.low_95, band.low_80, band.median, band.high_80, band.high_95];
                    assert!(
                        order.windows(2).all(|pair| pair[0] <= pair[1]),
                        "{system:?} {of} {band:?}"
                    );
                }
            }
        }
    }
}

/// The limits of a band hold what they say, and a deviation is the normal one with the same probability below.
#[test]
fn bands_and_deviations_are_one_distribution() {
    for system in SoundModel::systems() {
        let conditions = day(33.0);
        let conditions = Conditions {
            engine_speed: conditions
                .engine_speed
                .filter(|_| system.compressor != Compressor::Electric),
            ..conditions
        };
        let model = SoundModel::of(&system, &conditions).unwrap();
        for of in FIGURES {
            let Some(band) = model.band(of) else { continue };
            for (value, z) in [
                (band.low_95, -QUANTILE_95),
                (band.low_80, -QUANTILE_80),
                (band.median, 0.0),
                (band.high_80, QUANTILE_80),
                (band.high_95, QUANTILE_95),
            ] {
                let ended = of == Feature::HighSide && z > 0.0;
                let found = model.deviation(of, value, 0.0).unwrap();
                assert!(
                    (found - z).abs() < 1e-3 || (ended && found < z),
                    "{system:?} {of}: {found} {z}"
                );
            }
        }
    }
}
