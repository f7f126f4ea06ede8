//! The sizes of fault effects in the vehicle model against published ones, or against first principles where none is published.

#![allow(clippy::unwrap_used)] // helpers of tests

use coldloop::units::{
    RelativeHumidity, RotationalSpeed, Speed, Surroundings, celsius, difference_in_kelvins, in_kelvins,
};
use coldloop::vehicle::{Conditions, FaultCause, FaultSeverity, Simulation, System, Vehicle, simulate};
use coldloop::{Compressor, Expansion, Fault, Refrigerant, VehicleClass, saturation};

const ATMOSPHERE_PA: f64 = 101_325.0;
const PSI: f64 = 6_894.757_293_168;

fn car(expansion: Expansion) -> Vehicle {
    let system = System::new(Refrigerant::R134a, expansion, Compressor::FixedClutch);
    Vehicle::typical(system, VehicleClass::Car).unwrap()
}

fn at(vehicle: &Vehicle, ambient_c: f64, rpm: f64, faults: &[FaultSeverity]) -> Simulation {
    let day = Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(0.5)),
        engine_speed: Some(RotationalSpeed::from_rpm(rpm)),
        ..Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL)
    };
    simulate(vehicle, &day, faults).unwrap()
}

fn dew_k(pa: f64) -> f64 {
    saturation::dew_temperature_k(Refrigerant::R134a, pa).unwrap()
}

/// Low and high side, kPa gauge.
fn sides(s: &Simulation) -> (f64, f64) {
    (
        (s.low_side.pa() - ATMOSPHERE_PA) / 1e3,
        (s.high_side.pa() - ATMOSPHERE_PA) / 1e3,
    )
}

/// One maker's fault table of a car with a valve and a clutch, R-134a, 30 °C, idle, highest blower, doors open (published low
/// and high side in kPa gauge, a tenth of the range allowed on either side): each state is reached at some severity of its fault. The
/// table's high side of a shut valve (500 to 600 kPa) lies below saturation at 30 °C (669 kPa), which no condenser of that day can
/// hold with liquid in it: 900 kPa is allowed there. Its rows with 400 to 550 kPa against 2,000 to 2,500 kPa (overcharge, air,
/// fan and a valve stuck open in merged cells) are not among those judged here: lost condenser air reaches their high side, but a
/// valve holds the low side, in the model as in the laboratory of the test below; and a valve stuck open does not raise the high
/// side of the model.
#[test]
fn each_state_of_a_makers_fault_table_is_reached_by_its_fault() {
    let rows = [
        (
            FaultSeverity::new(Fault::Undercharge, 0.0),
            (50.0, 150.0),
            (700.0, 1_000.0),
        ),
        (
            FaultSeverity::new(Fault::WornCompressor, 0.0),
            (400.0, 600.0),
            (700.0, 1_000.0),
        ),
        (
            FaultSeverity::new(Fault::ExpansionValveStuckClosed, 0.0),
            (-101.0, 0.0),
            (500.0, 900.0),
        ),
    ];
    let car = car(Expansion::Txv);
    for (fault, low, high) in rows {
        let met = (1..=40).find(|step| {
            let severity = f64::from(*step) / 40.0;
            let (now_low, now_high) = sides(&at(&car, 30.0, 800.0, &[FaultSeverity { severity, ..fault }]));
            let within = |x: f64, band: (f64, f64)| {
                let slack = 0.1 * (band.1 - band.0);
                x > band.0 - slack && x < band.1 + slack
            };
            within(now_low, low) && within(now_high, high)
        });
        println!("{} {:?}: {met:?} of 40", fault.fault, fault.cause);
        assert!(met.is_some(), "{} {:?}", fault.fault, fault.cause);
    }
}

/// A trade association's charge curve of a valve car at 38 °C: 7 to 21 % short, the high side of 300 psi falls by 5 psi; and its
/// test of an orifice car 25 % short: high side -2 psi, low side -3 psi. Both are read to a psi or two.
#[test]
fn a_fifth_of_the_charge_missing_hardly_shows_on_gauges() {
    for (expansion, ambient_c, short, most_psi) in [
        (Expansion::Txv, 38.0, 0.07, 5.0),
        (Expansion::Txv, 38.0, 0.21, 7.0),
        (Expansion::OrificeTube, 30.0, 0.25, 4.0),
    ] {
        let car = car(expansion);
        let sound = at(&car, ambient_c, 1_500.0, &[]);
        let low = at(
            &car,
            ambient_c,
            1_500.0,
            &[FaultSeverity::new(Fault::Undercharge, short)],
        );
        let high_psi = (low.high_side.pa() - sound.high_side.pa()) / PSI;
        let low_psi = (low.low_side.pa() - sound.low_side.pa()) / PSI;
        println!("{expansion} {short}: high {high_psi:+.1} psi, low {low_psi:+.1} psi");
        assert!(
            high_psi.abs() < most_psi && low_psi.abs() < 3.0,
            "{expansion} {short}: {high_psi} {low_psi}"
        );
    }
    // The receiver has run dry by a third: bubbles pass the sight glass. Engineering judgement: charge tolerances of 15 g on
    // modern systems say that their reserve is small.
    let third = at(
        &car(Expansion::Txv),
        38.0,
        1_500.0,
        &[FaultSeverity::new(Fault::Undercharge, 0.35)],
    );
    assert!(third.looks.bubbles && third.fill < 0.1, "{}", third.fill);
}

/// Datta, Das & Mukhopadhyay 2014 (Appl. Therm. Eng., 10.1016/j.applthermaleng.2014.05.066; abstract read): half of the face of a car's
/// condenser covered costs 8.16 % of the capacity and 16.8 % of the coefficient of performance.
#[test]
fn half_a_condenser_face_costs_what_a_bench_measured() {
    let mut car = car(Expansion::Txv);
    // On a bench the air is moved at one speed and none comes back.
    car.hardware.fan_slow = 1.0;
    car.hardware.hot_air_return = 0.0;
    let sound = at(&car, 35.0, 1_500.0, &[]);
    let half = at(
        &car,
        35.0,
        1_500.0,
        &[FaultSeverity::caused(FaultCause::FaceBlocked, 0.5 / 0.97)],
    );
    let (capacity, cop) = (half.capacity.w() / sound.capacity.w() - 1.0, half.cop / sound.cop - 1.0);
    println!("capacity {capacity:+.3}, COP {cop:+.3}");
    assert!((-0.14..-0.04).contains(&capacity), "{capacity}");
    assert!((-0.28..-0.10).contains(&cop), "{cop}");
}

/// A student laboratory's rig: its condenser fan at two thirds of the current raises the high side of a valve system by 9 %
/// absolute and the low side by 2 %, those of a fixed restriction by 19 % and 11 %.
#[test]
fn a_slow_condenser_fan_moves_the_high_side_and_hardly_the_low_side_of_a_valve() {
    let mut car = car(Expansion::Txv);
    car.hardware.fan_slow = 1.0;
    let sound = at(&car, 30.0, 800.0, &[]);
    let slow = at(&car, 30.0, 800.0, &[FaultSeverity::caused(FaultCause::FanSlow, 0.33)]);
    let (high, low) = (
        slow.high_side.pa() / sound.high_side.pa() - 1.0,
        slow.low_side.pa() / sound.low_side.pa() - 1.0,
    );
    println!("high {high:+.3}, low {low:+.3}");
    assert!((0.05..0.20).contains(&high), "{high}");
    assert!(low > 0.0 && low < 0.04, "{low}");
}

/// A dead fan lets the high side run into its limit; driving gives the air that the fan does not. First principles.
#[test]
fn a_dead_fan_is_felt_at_a_standstill_and_hardly_on_the_road() {
    let car = car(Expansion::Txv);
    let dead = [FaultSeverity::caused(FaultCause::FanDead, 0.5)];
    let (sound, still) = (at(&car, 30.0, 1_500.0, &[]), at(&car, 30.0, 1_500.0, &dead));
    assert!(dew_k(still.high_side.pa()) > dew_k(sound.high_side.pa()) + 15.0);
    let road = Conditions {
        engine_speed: Some(RotationalSpeed::from_hz(33.0)),
        vehicle_speed: Some(Speed::from_m_s(25.0)),
        ..Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)
    };
    let (fast, fast_dead) = (
        simulate(&car, &road, &[]).unwrap(),
        simulate(&car, &road, &dead).unwrap(),
    );
    assert!(dew_k(fast_dead.high_side.pa()) < dew_k(fast.high_side.pa()) + 3.0);
    // Hot air of 18 K (Song, Fortier & Sarnia 2015) raises condensation by most of that.
    let hot = at(
        &car,
        30.0,
        1_500.0,
        &[FaultSeverity::caused(FaultCause::HotAirTakenIn, 1.0)],
    );
    let raised_k = dew_k(hot.high_side.pa()) - dew_k(sound.high_side.pa());
    assert!((6.0..18.0).contains(&raised_k), "{raised_k}");
}

/// A valve whose needle reaches part of its way starves the evaporator: the low side falls and the superheat rises, long before it
/// is shut. First principles, with a spread over two simulators (an independent one: -3 K and +13 K at three eighths, -11 K and
/// +29 K at five eighths, -40 K and +83 K at seven eighths).
#[test]
fn a_valve_stuck_nearly_closed_starves_the_evaporator() {
    let car = car(Expansion::Txv);
    let sound = at(&car, 30.0, 1_500.0, &[]);
    let superheat_k = |s: &Simulation| in_kelvins(s.states.suction.temperature) - dew_k(s.low_side.pa());
    for (severity, falls_k, rises_k) in [
        (0.375, 0.5..8.0, 4.0..25.0),
        (0.625, 7.0..26.0, 20.0..50.0),
        (0.875, 28.0..50.0, 50.0..95.0),
    ] {
        let stuck = at(
            &car,
            30.0,
            1_500.0,
            &[FaultSeverity::new(Fault::ExpansionValveStuckClosed, severity)],
        );
        let (fell_k, rose_k) = (
            dew_k(sound.low_side.pa()) - dew_k(stuck.low_side.pa()),
            superheat_k(&stuck) - superheat_k(&sound),
        );
        println!("{severity}: low side -{fell_k:.1} K, superheat +{rose_k:.1} K");
        assert!(
            falls_k.contains(&fell_k) && rises_k.contains(&rose_k),
            "{severity}: {fell_k} {rose_k}"
        );
    }
    // Without a bleed hole it pulls a deeper vacuum, and the clutch does not save it: no thermostat feels cold there.
    let shut = |cause| at(&car, 30.0, 1_500.0, &[FaultSeverity::caused(cause, 0.9)]);
    let (bled, tight) = (shut(FaultCause::ShutWithBleed), shut(FaultCause::ShutWithoutBleed));
    assert!(tight.low_side.pa() < 0.9 * bled.low_side.pa() && bled.low_side.pa() < ATMOSPHERE_PA);
    assert!(tight.swing.is_none() && in_kelvins(tight.vent) > in_kelvins(sound.vent) + 8.0);
}

/// A valve stuck open floods: no superheat, the low side up (a maker's table: to 450 to 550 kPa gauge at idle). Two simulators put
/// the high side within 3 K of sound where tables say that it rises: the flow grows by a tenth.
#[test]
fn a_valve_stuck_open_floods() {
    let car = car(Expansion::Txv);
    let sound = at(&car, 30.0, 800.0, &[]);
    let open = at(
        &car,
        30.0,
        800.0,
        &[FaultSeverity::new(Fault::ExpansionValveStuckOpen, 0.9)],
    );
    let up_k = dew_k(open.low_side.pa()) - dew_k(sound.low_side.pa());
    assert!(
        (3.0..12.0).contains(&up_k) && difference_in_kelvins(open.superheat) < 1.0,
        "{up_k}"
    );
    assert!((dew_k(open.high_side.pa()) - dew_k(sound.high_side.pa())).abs() < 4.0);
}

/// Cheung & Braun 2014 (11th IEA Heat Pump Conference; read): a mild restriction of the liquid line costs nothing, since the valve
/// opens; the effect starts when it is fully open. A trade association's rule: a drier 20 °F colder behind than before is restricted.
#[test]
fn a_liquid_line_restriction_shows_once_the_valve_is_open() {
    let car = car(Expansion::Txv);
    let sound = at(&car, 30.0, 1_500.0, &[]);
    let tight = |severity| {
        at(
            &car,
            30.0,
            1_500.0,
            &[FaultSeverity::new(Fault::LiquidLineRestriction, severity)],
        )
    };
    let (mild, severe) = (tight(0.4), tight(0.9));
    assert!((mild.cop / sound.cop - 1.0).abs() < 0.005 && mild.opening > sound.opening + 0.01);
    let fell_k = dew_k(sound.low_side.pa()) - dew_k(severe.low_side.pa());
    println!("low side -{fell_k:.1} K");
    assert!((6.0..36.0).contains(&fell_k) && severe.high_side < sound.high_side);
    let colder_k = |s: &Simulation| in_kelvins(s.condenser_outlet) - in_kelvins(s.liquid_line);
    assert!(
        colder_k(&severe) > 11.0 && colder_k(&sound) < 3.0,
        "{} {}",
        colder_k(&severe),
        colder_k(&sound)
    );
    // A clamp before the restriction sees nothing of that.
    let unseen = at(
        &car,
        30.0,
        1_500.0,
        &[FaultSeverity::caused(FaultCause::BehindClamp, 0.9)],
    );
    assert!(colder_k(&unseen) < 3.0 && unseen.low_side.pa() == severe.low_side.pa());
}

/// A port before a restriction of the high side reads what the compressor pushes against, one behind it what is left. First
/// principles; an independent simulator has 8 K more there and 4 K less here over the severities that it draws.
#[test]
fn a_high_side_restriction_reads_by_the_place_of_the_port() {
    for expansion in Expansion::ALL {
        let car = car(expansion);
        let sound_k = dew_k(at(&car, 30.0, 1_500.0, &[]).high_side.pa());
        let moved_k = |cause| {
            let s = at(&car, 30.0, 1_500.0, &[FaultSeverity::caused(cause, 0.75)]);
            dew_k(s.high_side.pa()) - sound_k
        };
        let (before_k, behind_k) = (moved_k(FaultCause::BehindHighPort), moved_k(FaultCause::BeforeHighPort));
        println!("{expansion}: {before_k:+.1} K before, {behind_k:+.1} K behind");
        assert!(
            (5.0..20.0).contains(&before_k) && (-6.0..0.2).contains(&behind_k),
            "{before_k} {behind_k}"
        );
    }
}

/// A half-open blend door lets through air of a core at 67 °C: the vent warms by 8 to 20 K and, with fresh air, nothing
/// happens in the circuit. First principles; an independent simulator has 9.5 K at that severity.
#[test]
fn a_blend_door_warms_the_vent_and_nothing_else() {
    let car = car(Expansion::Txv);
    let sound = at(&car, 30.0, 1_500.0, &[]);
    let mixed = at(&car, 30.0, 1_500.0, &[FaultSeverity::new(Fault::HeaterAirMixing, 0.5)]);
    let warmer_k = in_kelvins(mixed.vent) - in_kelvins(sound.vent);
    assert!((8.0..20.0).contains(&warmer_k), "{warmer_k}");
    assert!((mixed.high_side.pa() / sound.high_side.pa() - 1.0).abs() < 1e-6);
}

/// A compressor that draws in less does not heat the vapour as one does that compresses part of it twice. First principles.
#[test]
fn lost_displacement_and_leakage_differ_at_the_discharge_line() {
    let car = car(Expansion::Txv);
    let worn = |cause| at(&car, 30.0, 1_500.0, &[FaultSeverity::caused(cause, 0.6)]);
    let (lost, leaks) = (worn(FaultCause::LostDisplacement), worn(FaultCause::Leakage));
    assert!(in_kelvins(leaks.discharge_line) > in_kelvins(lost.discharge_line) + 10.0);
    let sound = at(&car, 30.0, 1_500.0, &[]);
    for worn in [lost, leaks] {
        assert!(worn.low_side.pa() > 1.15 * sound.low_side.pa() && worn.high_side < sound.high_side);
    }
}

/// A clutch system that runs at its high-side cut-out: the needle swings between where the switch opens and where it closes 6 bar
/// lower, and the mean lies between. First principles.
#[test]
fn a_system_on_its_cut_out_swings_below_it() {
    let car = car(Expansion::Txv);
    let s = at(&car, 45.0, 1_500.0, &[FaultSeverity::caused(FaultCause::FanDead, 1.0)]);
    let swing = s.swing.unwrap();
    let opens_pa = car.hardware.high_limit_pa + ATMOSPHERE_PA;
    let (low_pa, high_pa) = (swing.high_side.0.pa(), swing.high_side.1.pa());
    println!(
        "{low_pa:.0} to {high_pa:.0} Pa, mean {:.0}, {:.1} a minute",
        s.high_side.pa(),
        s.clutch_cycles.hz() * 60.0
    );
    assert!((high_pa - low_pa - 6e5).abs() < 1.0 && high_pa <= opens_pa && high_pa > 0.95 * opens_pa);
    assert!(s.high_side.pa() > low_pa && s.high_side.pa() < high_pa - 1e5);
    assert!(swing.low_side.0 < s.low_side && s.low_side < swing.low_side.1);
    assert!((0.2..20.0).contains(&(s.clutch_cycles.hz() * 60.0)));
    // Moderate weather does not reach it.
    assert!(at(&car, 30.0, 1_500.0, &[]).swing.is_none());
}
