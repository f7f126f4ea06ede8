//! What makes of vehicles differ in: ports, fans, switches, accumulators, clamps; and circuits with little or nothing in them.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::units::{RelativeHumidity, RotationalSpeed, Surroundings, celsius, in_kelvins};
use coldloop::vehicle::{
    ClutchSense, Conditions, FanDrive, FaultCause, FaultSeverity, LowPort, Population, Simulation, System, Vehicle,
    simulate,
};
use coldloop::{Compressor, ErrorKind, Expansion, Fault, Refrigerant, VehicleClass, saturation};
use rand::{RngExt, SeedableRng};

const ATMOSPHERE_PA: f64 = 101_325.0;
/// Below any vacuum: no such switch, or a bridged one.
const NO_SWITCH_PA: f64 = -200e3;

fn car(expansion: Expansion, compressor: Compressor) -> Vehicle {
    Vehicle::typical(
        System::new(Refrigerant::R134a, expansion, compressor),
        VehicleClass::Car,
    )
    .unwrap()
}

fn day(ambient_c: f64, rpm: f64) -> Conditions {
    Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.5)),
        engine_speed: Some(RotationalSpeed::from_rpm(rpm)),
        ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
    }
}

fn short(share: f64) -> [FaultSeverity; 1] {
    [FaultSeverity::new(Fault::Undercharge, share)]
}

/// Everything leaked out: no pressure on either side, warm air, a compressor that is not driven. First principles.
#[test]
fn an_empty_circuit_is_a_state_of_its_own() {
    for expansion in Expansion::ALL {
        for compressor in Compressor::ALL {
            for start_pa in [196e3, NO_SWITCH_PA] {
                let mut vehicle = car(expansion, compressor);
                vehicle.hardware.start_pa = start_pa;
                let empty = simulate(&vehicle, &day(30.0, 1_500.0), &short(1.0)).unwrap();
                assert_eq!(
                    (empty.low_side.pa(), empty.high_side.pa()),
                    (ATMOSPHERE_PA, ATMOSPHERE_PA)
                );
                assert!(in_kelvins(empty.vent) > 303.0 && empty.capacity.w() == 0.0 && empty.charge.kg() == 0.0);
            }
        }
    }
}

/// Makers' dual pressure switches open at 1.1 to 2.0 bar: with a twentieth of the charge left the compressor does not start. Where
/// the switch is bridged, a system with a tenth left pulls its low side down instead.
#[test]
fn a_pressure_switch_guards_a_circuit_with_little_left() {
    let guarded = car(Expansion::Txv, Compressor::FixedClutch);
    let mut bridged = guarded;
    bridged.hardware.start_pa = NO_SWITCH_PA;
    let still = simulate(&guarded, &day(30.0, 1_500.0), &short(0.96)).unwrap();
    assert!(!still.looks.clutch_engaged && still.low_side.pa() == still.high_side.pa());
    assert!(still.high_side.pa() < ATMOSPHERE_PA + 196e3);
    let pulled = simulate(&bridged, &day(30.0, 1_500.0), &short(0.92)).unwrap();
    assert!(
        pulled.looks.clutch_engaged && pulled.low_side.pa() < ATMOSPHERE_PA,
        "{}",
        pulled.low_side.pa()
    );
    assert!(pulled.high_side.pa() > 1.5 * pulled.low_side.pa());
}

/// A starved system without a switch pulls a vacuum (a maker's fault table of a shut valve); a cut-out on the low side stops it
/// there, and a thermostat on dry fins never does.
#[test]
fn a_starved_system_pulls_a_vacuum_unless_a_switch_stops_it() {
    let shut = [FaultSeverity::new(Fault::ExpansionValveStuckClosed, 0.95)];
    let free = car(Expansion::Txv, Compressor::FixedClutch);
    let mut guarded = free;
    guarded.hardware.low_cutout_pa = 50e3;
    let low_pa =
        |vehicle: &Vehicle| simulate(vehicle, &day(30.0, 1_500.0), &shut).unwrap().low_side.pa() - ATMOSPHERE_PA;
    assert!(low_pa(&free) < -20e3, "{}", low_pa(&free));
    assert!(low_pa(&guarded) > 49e3, "{}", low_pa(&guarded));
}

/// Without a low limit a clutch runs through however cold the fins are.
#[test]
fn a_clutch_that_nothing_opens_runs_through() {
    let mut vehicle = car(Expansion::OrificeTube, Compressor::FixedClutch);
    let cool = day(16.0, 1_500.0);
    assert!(simulate(&vehicle, &cool, &[]).unwrap().swing.is_some());
    vehicle.clutch_sense = ClutchSense::Neither;
    let through = simulate(&vehicle, &cool, &[]).unwrap();
    assert!(through.swing.is_none() && through.demand > 0.99 && through.looks.evaporator_frosts);
}

/// The vapour is taken to have one specific heat from dew to the end of its superheat of 40 K and more: a few per cent of that.
const LINEAR_K: f64 = 1.0;

/// Vapour in a pipe cannot become warmer than what surrounds the pipe: the air in the evaporator, then that of the engine bay.
/// First principles; without an exchanger, which brings heat from the liquid line.
#[test]
fn starved_superheat_ends_at_the_temperature_of_the_air_round_the_pipe() {
    for expansion in Expansion::ALL {
        for compressor in [Compressor::FixedClutch, Compressor::VariableInternal] {
            let vehicle = car(expansion, compressor);
            let device = match expansion {
                Expansion::Txv => Fault::ExpansionValveStuckClosed,
                Expansion::OrificeTube => Fault::OrificeRestricted,
                _ => unreachable!("a new member of the vocabulary"),
            };
            for fault in [
                Fault::Undercharge,
                device,
                Fault::LiquidLineRestriction,
                Fault::SuctionLineRestriction,
            ] {
                for step in 1..=19 {
                    let s = simulate(
                        &vehicle,
                        &day(35.0, 1_500.0),
                        &[FaultSeverity::new(fault, 0.05 * f64::from(step))],
                    )
                    .unwrap();
                    let bay_k = 308.15 + vehicle.hardware.bay_rise_k;
                    assert!(
                        in_kelvins(s.states.evaporator_outlet.temperature) < 308.15 + LINEAR_K,
                        "{fault} {}",
                        in_kelvins(s.states.evaporator_outlet.temperature)
                    );
                    assert!(
                        in_kelvins(s.suction_line) < bay_k + LINEAR_K,
                        "{fault} {}",
                        in_kelvins(s.suction_line)
                    );
                }
            }
        }
    }
}

/// Superheat at the port of orifice systems: the accumulator's bleed, the pressure drop and a clamp in a hot bay give 0 to 6 K and
/// more. Engineering judgement, with a spread over an independent simulator (0 to 2.6 K in its middle two thirds).
#[test]
fn an_orifice_system_shows_some_superheat_at_its_port() {
    let system = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
    let cars = Population::usual(system, VehicleClass::Car);
    let mut rng = rand_chacha::ChaCha8Rng::seed_from_u64(3);
    let mut all: Vec<f64> = (0..120)
        .map(|_| {
            let vehicle = cars.vehicle(&std::array::from_fn(|_| rng.random())).unwrap();
            let s = simulate(&vehicle, &day(30.0, 1_500.0), &[]).unwrap();
            in_kelvins(s.suction_line) - saturation::dew_temperature_k(Refrigerant::R134a, s.low_side.pa()).unwrap()
        })
        .collect();
    all.sort_by(f64::total_cmp);
    let (low_k, middle_k, high_k) = (all[6], all[60], all[113]);
    println!("superheat {low_k:.1}, {middle_k:.1}, {high_k:.1} K");
    assert!((0.0..2.0).contains(&low_k) && (1.0..4.5).contains(&middle_k) && (4.0..9.0).contains(&high_k));
}

/// The port at the evaporator reads the pressure before the drop of the suction line; a restriction of that line makes the two ports
/// differ.
#[test]
fn a_low_port_reads_the_pressure_at_its_place() {
    let mut vehicle = car(Expansion::Txv, Compressor::FixedClutch);
    let tight = [FaultSeverity::new(Fault::SuctionLineRestriction, 0.7)];
    let read = |vehicle: &Vehicle| {
        let at = |faults: &[FaultSeverity]| simulate(vehicle, &day(30.0, 1_500.0), faults).unwrap().low_side.pa();
        (at(&[]), at(&tight))
    };
    let (behind, behind_tight) = read(&vehicle);
    vehicle.low_port = LowPort::Evaporator;
    let (before, before_tight) = read(&vehicle);
    assert!(before > behind + 2e3 && before < behind + 40e3, "{before} {behind}");
    assert!(
        behind_tight < behind - 10e3 && before_tight > before - 5e3,
        "{behind_tight} {before_tight}"
    );
}

/// A fan on the engine moves little air at idle and its full flow at speed; one that always runs holds the high side lower in mild
/// weather than one that waits for it.
#[test]
fn fans_differ_by_what_drives_them() {
    let mut vehicle = car(Expansion::Txv, Compressor::FixedClutch);
    let high = |vehicle: &Vehicle, ambient_c: f64, rpm: f64| {
        simulate(vehicle, &day(ambient_c, rpm), &[]).unwrap().high_side.pa()
    };
    let waits = high(&vehicle, 22.0, 1_500.0);
    vehicle.fan = FanDrive::Always;
    let (always, always_idle, always_fast) = (
        high(&vehicle, 22.0, 1_500.0),
        high(&vehicle, 32.0, 700.0),
        high(&vehicle, 32.0, 2_200.0),
    );
    vehicle.fan = FanDrive::Engine;
    let (idle, fast) = (high(&vehicle, 32.0, 700.0), high(&vehicle, 32.0, 2_200.0));
    assert!(always < 0.95 * waits, "{always} {waits}");
    assert!(
        idle > 1.1 * always_idle && (fast / always_fast - 1.0).abs() < 1e-6,
        "{idle} {always_idle}"
    );
}

/// A motor-driven compressor runs with the engine at rest; a belt-driven one does not.
#[test]
fn an_engine_at_rest_does_not_stop_a_motor_driven_compressor() {
    let parked = day(30.0, 0.0);
    let electric = simulate(&car(Expansion::Txv, Compressor::Electric), &parked, &[]).unwrap();
    assert!(electric.capacity.w() > 1_000.0 && electric.looks.clutch_engaged);
    let belted = simulate(&car(Expansion::Txv, Compressor::FixedClutch), &parked, &[]).unwrap();
    assert!(belted.capacity.w() == 0.0 && !belted.looks.clutch_engaged);
}

/// A control that is stuck high frosts the evaporator; a limit that comes too early keeps it warm.
#[test]
fn controls_fail_both_ways() {
    for (expansion, compressor) in [
        (Expansion::OrificeTube, Compressor::FixedClutch),
        (Expansion::Txv, Compressor::VariableInternal),
        (Expansion::Txv, Compressor::VariableExternal),
        (Expansion::Txv, Compressor::Electric),
    ] {
        let vehicle = car(expansion, compressor);
        let conditions = Conditions {
            // A motor-driven compressor is free up to its own limit.
            engine_speed: (compressor != Compressor::Electric).then_some(RotationalSpeed::from_hz(30.0)),
            ..day(20.0, 0.0)
        };
        let low_pa = |faults: &[FaultSeverity]| simulate(&vehicle, &conditions, faults).unwrap().low_side.pa();
        let sound = low_pa(&[]);
        let high = low_pa(&[FaultSeverity::caused(FaultCause::ControlStuckHigh, 1.0)]);
        let early = low_pa(&[FaultSeverity::caused(FaultCause::SwitchOpensEarly, 0.8)]);
        assert!(
            high < sound - 20e3 && early > sound + 20e3,
            "{compressor}: {high} {sound} {early}"
        );
    }
}

#[test]
fn a_cause_belongs_to_one_fault() {
    let vehicle = car(Expansion::Txv, Compressor::FixedClutch);
    let mismatched = FaultSeverity {
        cause: Some(FaultCause::FanDead),
        ..FaultSeverity::new(Fault::Overcharge, 0.3)
    };
    let told: Result<Simulation, _> = simulate(&vehicle, &day(30.0, 1_500.0), &[mismatched]);
    assert_eq!(told.unwrap_err().kind, ErrorKind::NotAvailable);
}
