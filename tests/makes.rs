//! Makes: each is drawn the same again, its vehicles share what a make fixes, and other makes differ from it.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::units::{RelativeHumidity, RotationalSpeed, Speed, Surroundings, celsius, in_kelvins};
use coldloop::vehicle::{
    ClutchSense, Conditions, FanDrive, FaultCause, Habits, Hardware, HighPort, LowPort, Make, Needle, Options,
    Population, System, Vehicle, simulate,
};
use coldloop::{Compressor, ErrorKind, Expansion, Fault, Quantity, Refrigerant, VehicleClass};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

fn all() -> impl Iterator<Item = Make> {
    (Make::TO_FIT.start..Make::TO_JUDGE.end).map(Make::numbered)
}

fn cars(make: Make, expansion: Expansion) -> Population {
    let system = System::new(Refrigerant::R134a, expansion, Compressor::FixedClutch);
    Population::of_make(make, system, VehicleClass::Car)
}

fn drawn(population: &Population, seed: u64) -> Vehicle {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    population.vehicle(&std::array::from_fn(|_| rng.random())).unwrap()
}

/// What a make fixes of a vehicle, apart from how far its parts deviate.
fn switches(vehicle: &Vehicle) -> (HighPort, LowPort, ClutchSense, FanDrive, [f64; 4]) {
    let h = &vehicle.hardware;
    (
        vehicle.high_port,
        vehicle.low_port,
        vehicle.clutch_sense,
        vehicle.fan,
        [h.subcooler_share, h.exchanger, h.start_pa, h.low_cutout_pa],
    )
}

/// The makes of committed fits have to stay what they were: when this fails, what is drawn has changed, and bands and
/// faults have to be fitted anew.
#[test]
fn numbered_makes_are_what_they_were() {
    let golden = include_str!("data/makes.csv");
    let mut lines = golden.lines().filter(|line| !line.starts_with('#')).skip(1);
    for number in [0u32, 1, 47, 48, 59] {
        let m = Make::numbered(number);
        let now = format!(
            "{number},{:?},{:?},{:?},{:?},{:?},{:?},{:?},{:?},{:?},{},{:.6},{:.6}",
            m.high_port,
            m.low_port_valve,
            m.low_port_orifice,
            m.valve_sense,
            m.fan,
            m.wear,
            m.shut,
            m.habits.needle,
            m.valve_limited,
            m.habits.vent_on_road,
            m.size,
            m.deviations[0],
        );
        assert_eq!(lines.next(), Some(now.as_str()));
    }
    assert_eq!(lines.next(), None);
    assert_eq!(Make::TO_FIT.len() + Make::TO_JUDGE.len(), 60);
    assert_eq!(Make::TO_FIT.end, Make::TO_JUDGE.start);
}

#[test]
fn vehicles_of_one_make_share_its_switches_and_differ_in_size() {
    for expansion in Expansion::ALL {
        for number in [2, 9, 50] {
            let population = cars(Make::numbered(number), expansion);
            let (one, other) = (drawn(&population, 1), drawn(&population, 2));
            assert_eq!(switches(&one), switches(&other));
            assert_ne!(one.hardware.displacement_m3, other.hardware.displacement_m3);
        }
    }
}

#[test]
fn two_makes_differ() {
    // With the same uniform numbers for the vehicle, all that is left is the make.
    let makes: Vec<Vehicle> = all().map(|make| drawn(&cars(make, Expansion::Txv), 3)).collect();
    for (index, one) in makes.iter().enumerate() {
        for other in &makes[index + 1..] {
            assert_ne!(one.hardware.displacement_m3, other.hardware.displacement_m3);
        }
    }
    // Few share all of the switches that a car with a valve and a clutch shows.
    let own = |one: &&Vehicle| makes.iter().filter(|other| switches(other) == switches(one)).count() == 1;
    let alone = makes.iter().filter(own).count();
    println!("{alone} of {} makes share all switches with no other", makes.len());
    assert!(alone > 45, "{alone}");
}

/// Every switch has each of its positions among the sixty makes, about as often as the table says.
#[test]
fn the_sixty_makes_have_every_switch_in_every_position() {
    let part = |has: &dyn Fn(&Make) -> bool| all().filter(|make| has(make)).count() as f64 / 60.0;
    let o = Options::USUAL;
    let stands = [
        ("liquid port", part(&|m| m.high_port == HighPort::Liquid), o.liquid_port),
        (
            "evaporator port",
            part(&|m| m.low_port_valve == LowPort::Evaporator),
            o.evaporator_port[0],
        ),
        (
            "accumulator port",
            part(&|m| m.low_port_orifice == LowPort::Evaporator),
            o.evaporator_port[1],
        ),
        (
            "low-side switch",
            part(&|m| m.valve_sense == ClutchSense::LowSide),
            o.valve_low_side_switch,
        ),
        (
            "no low limit",
            part(&|m| m.valve_sense == ClutchSense::Neither),
            o.valve_no_low_limit,
        ),
        (
            "subcooler",
            part(&|m| m.subcooler_share.is_some()),
            o.integrated_receiver,
        ),
        ("exchanger", part(&|m| m.exchanger_new.is_some()), o.exchanger_new),
        ("old exchanger", part(&|m| m.exchanger_old.is_some()), o.exchanger_old),
        ("unlimited valve", part(&|m| !m.valve_limited), o.valve_unlimited),
        ("rotary", part(&|m| m.rotary), o.rotary),
        ("one fan speed", part(&|m| m.fan == FanDrive::Always), o.fan_always),
        ("fan on the engine", part(&|m| m.fan == FanDrive::Engine), o.fan_engine),
        ("stepless fan", part(&|m| m.fan_stepless), o.fan_stepless),
        ("start switch", part(&|m| m.start_pa.is_some()), o.start_switch),
        ("low cut-out", part(&|m| m.low_cut_out_pa.is_some()), o.low_cut_out),
        (
            "lost displacement",
            part(&|m| m.wear == FaultCause::LostDisplacement),
            o.worn_by_displacement,
        ),
        (
            "no bleed",
            part(&|m| m.shut == FaultCause::ShutWithoutBleed),
            o.shut_without_bleed,
        ),
        (
            "engaged needle",
            part(&|m| m.habits.needle == Needle::Engaged),
            o.needle_engaged,
        ),
        (
            "ends of the needle",
            part(&|m| m.habits.needle == Needle::Ends),
            o.needle_ends,
        ),
        ("vent on the road", part(&|m| m.habits.vent_on_road), o.vent_on_road),
    ];
    for (name, found, expected) in stands {
        // Three standard deviations of sixty draws.
        let allowed = 3.0 * (expected * (1.0 - expected) / 60.0f64).sqrt();
        println!("{name}: {found:.2} for {expected:.2}");
        assert!(found > 0.0 && found < 1.0, "{name}");
        assert!((found - expected).abs() < allowed, "{name}: {found} for {expected}");
    }
}

/// Makes lie apart and the vehicles of one make near each other, as the two columns of the table say.
#[test]
fn the_spread_is_that_of_makes_and_that_of_vehicles() {
    let deviation = |values: &[f64]| {
        let mean = values.iter().sum::<f64>() / values.len() as f64;
        (values.iter().map(|v| (v - mean) * (v - mean)).sum::<f64>() / values.len() as f64).sqrt()
    };
    let mut rng = ChaCha8Rng::seed_from_u64(5);
    let face = |h: Hardware| (h.fan_velocity_m_s).ln();
    let (mut means, mut within) = (Vec::new(), Vec::new());
    for make in all() {
        let population = cars(make, Expansion::Txv);
        let own: Vec<f64> = (0..100)
            .map(|_| face(population.hardware(&std::array::from_fn(|_| rng.random())).unwrap()))
            .collect();
        means.push(own.iter().sum::<f64>() / 100.0);
        within.push(deviation(&own));
    }
    let place = {
        let mut marked = Hardware::typical(VehicleClass::Car);
        marked.fan_velocity_m_s = -1.0;
        marked.values().iter().position(|value| *value == -1.0).unwrap()
    };
    let spread = Hardware::SPREAD[place];
    let (between, within) = (deviation(&means), within.iter().sum::<f64>() / 60.0);
    println!(
        "between makes {between:.3} for {}, within {within:.3} for {}",
        spread.make, spread.vehicle
    );
    // Sixty makes: the deviation of a deviation is a tenth; the cut takes a few hundredths off.
    assert!((between / spread.make - 1.0).abs() < 0.3);
    assert!((within / spread.vehicle - 1.0).abs() < 0.08);
}

#[test]
fn numbers_outside_0_to_1_are_refused() {
    for place in [0, Make::UNIFORMS - 1] {
        for (wrong, kind) in [(1.5, ErrorKind::OutOfRange), (f64::NAN, ErrorKind::NotFinite)] {
            let mut uniforms = [0.5; Make::UNIFORMS];
            uniforms[place] = wrong;
            let error = Make::drawn(&Options::USUAL, &uniforms).unwrap_err();
            assert_eq!((error.kind, error.quantity), (kind, Quantity::Probability));
        }
    }
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    for place in [Make::UNIFORMS, Population::UNIFORMS - 2, Population::UNIFORMS - 1] {
        let mut uniforms = [0.5; Population::UNIFORMS];
        uniforms[place] = -0.1;
        let error = Population::usual(system, VehicleClass::Van)
            .vehicle(&uniforms)
            .unwrap_err();
        assert_eq!(
            (error.kind, error.quantity),
            (ErrorKind::OutOfRange, Quantity::Probability)
        );
    }
    assert_eq!(
        Make::numbered(0)
            .fault(&system, Fault::WornCompressor, 0.5, 2.0)
            .unwrap_err()
            .kind,
        ErrorKind::OutOfRange
    );
}

/// With a spread of 0 the parts of all makes are the same, and makes differ by their switches only.
#[test]
fn a_spread_of_zero_leaves_the_switches() {
    let parts = |number| {
        let mut population = cars(Make::numbered(number), Expansion::OrificeTube);
        population.spread = 0.0;
        let mut h = drawn(&population, 4).hardware;
        (h.start_pa, h.fan_rise_pa, h.clearance, h.volumetric_factor) = (0.0, 0.0, 0.0, 0.0);
        h
    };
    assert_eq!(parts(0), parts(1));
}

#[test]
fn a_make_wears_and_sticks_in_its_own_way() {
    let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableExternal);
    for make in all().take(12) {
        for u in [0.0, 0.4, 0.99] {
            let cause = |fault| make.fault(&system, fault, 0.5, u).unwrap().cause;
            assert_eq!(cause(Fault::WornCompressor), Some(make.wear));
            assert_eq!(cause(Fault::ExpansionValveStuckClosed), Some(make.shut));
            assert_eq!(cause(Fault::Overcharge), None);
            for fault in Fault::ALL {
                let drawn = make.fault(&system, fault, 0.5, u).unwrap();
                assert_eq!((drawn.fault, drawn.severity), (fault, 0.5));
            }
        }
    }
    let air = |u| {
        Make::numbered(0)
            .fault(&system, Fault::CondenserAirflowLoss, 0.5, u)
            .unwrap()
            .cause
            .unwrap()
    };
    assert_eq!(
        [0.1, 0.4, 0.6, 0.95].map(air),
        [
            FaultCause::FanDead,
            FaultCause::FanSlow,
            FaultCause::FaceBlocked,
            FaultCause::HotAirTakenIn
        ]
    );
}

/// A needle that swings is noted as its habit has it; one that does not move is noted as it is.
#[test]
fn a_swinging_needle_is_noted_by_habit() {
    let system = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
    let car = Vehicle::typical(system, VehicleClass::Car).unwrap();
    let day = |ambient_c: f64| Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.3)),
        engine_speed: Some(RotationalSpeed::from_hz(25.0)),
        ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
    };
    let noted = |ambient_c: f64, needle: Needle| {
        let habits = Habits {
            needle,
            ..Habits::PLAIN
        };
        let truth = simulate(&car, &day(ambient_c), &[]).unwrap();
        (truth, habits.noted(&truth, &car, &day(ambient_c), &[]).unwrap())
    };
    let (truth, mean) = noted(20.0, Needle::Mean);
    let swing = truth.swing.unwrap();
    assert_eq!(mean, truth);
    let (_, ends) = noted(20.0, Needle::Ends);
    assert_eq!((ends.low_side, ends.high_side), (swing.low_side.0, swing.high_side.1));
    let (_, engaged) = noted(20.0, Needle::Engaged);
    assert!(engaged.low_side > ends.low_side && engaged.low_side < swing.low_side.1);
    assert!(engaged.high_side < ends.high_side && engaged.high_side > swing.high_side.0);
    let (truth, still) = noted(43.0, Needle::Ends);
    assert!(truth.swing.is_none() && still == truth);
}

#[test]
fn a_vent_read_on_the_road_leaves_the_gauges_at_a_standstill() {
    let habits = Habits {
        vent_on_road: true,
        ..Habits::PLAIN
    };
    let standing = Conditions {
        engine_speed: Some(RotationalSpeed::from_hz(12.0)),
        ..Conditions::new(celsius(35.0), Surroundings::SEA_LEVEL)
    };
    for compressor in [Compressor::FixedClutch, Compressor::Electric] {
        let system = System::new(Refrigerant::R134a, Expansion::Txv, compressor);
        let car = Vehicle::typical(system, VehicleClass::Car).unwrap();
        let speed = Some(RotationalSpeed::from_hz(if compressor == Compressor::Electric {
            80.0
        } else {
            12.0
        }));
        let standing = Conditions {
            engine_speed: speed,
            ..standing
        };
        let road = habits.vent_conditions(&car, &standing);
        assert_eq!(in_kelvins(road.ambient), in_kelvins(standing.ambient));
        assert_eq!(road.vehicle_speed, Some(Speed::from_m_s(15.0)));
        assert_eq!(road.engine_speed == speed, compressor == Compressor::Electric);
        let truth = simulate(&car, &standing, &[]).unwrap();
        let noted = habits.noted(&truth, &car, &standing, &[]).unwrap();
        assert_eq!(
            (noted.low_side.pa(), noted.high_side.pa()),
            (truth.low_side.pa(), truth.high_side.pa())
        );
        assert!(
            in_kelvins(noted.vent) < in_kelvins(truth.vent) - 0.2,
            "{compressor}: {} {}",
            in_kelvins(noted.vent),
            in_kelvins(truth.vent)
        );
        // A vehicle that is driving already is read as it drives.
        let there = Conditions {
            vehicle_speed: Some(Speed::from_m_s(20.0)),
            ..standing
        };
        assert_eq!(habits.vent_conditions(&car, &there), there);
    }
    // A vehicle whose engine is off is not driven.
    let belt = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    let rest = Conditions {
        engine_speed: Some(RotationalSpeed::from_hz(0.0)),
        ..standing
    };
    let car = Vehicle::typical(belt, VehicleClass::Car).unwrap();
    assert_eq!(habits.vent_conditions(&car, &rest), rest);
}
