//! A repair is proved by what the instruments can tell, and by no more than that.

#![allow(clippy::unwrap_used)] // tests fail by panicking

#[path = "shared/garage.rs"]
mod garage;

use approx::assert_relative_eq;
use coldloop::air::water_boiling_point_k;
use coldloop::circuit::Reading;
use coldloop::proof::{ChargeBook, Evacuation, Hold, Kept, LEAST_RECOVERED, MACHINE_SCALE, RECOVERY_SCALE, Rise};
use coldloop::proof::{Sample, usual_tolerance};
use coldloop::units::{GaugePressure, Mass, PressureDifference, TimeSpan, Volume};
use coldloop::{ChargeFinding, ErrorKind, EvacuationFinding, HoldFinding, Quantity, Refrigerant};
use garage::{degrees, garage, pascals};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// Source: IAPWS-IF97 saturation table as printed in steam tables: °C and kPa.
#[test]
fn water_boils_where_the_steam_tables_say() {
    for (c, kpa) in [
        (5.0, 0.872_58),
        (10.0, 1.228_2),
        (20.0, 2.339_3),
        (25.0, 3.169_9),
        (30.0, 4.247_0),
        (50.0, 12.352),
        (100.0, 101.42),
    ] {
        let t_k = water_boiling_point_k(1e3 * kpa).unwrap();
        assert!((t_k - 273.15 - c).abs() < 0.02, "{kpa} kPa: {t_k} K");
    }
    // Common practice, no source: at 1,600 m water boils at about 94.7 °C.
    let here_k = water_boiling_point_k(garage().pressure().pa()).unwrap();
    assert!((here_k - 273.15 - 94.7).abs() < 0.2);
}

fn evacuated(reached: Reading<coldloop::units::Pressure>, coldest_c: f64) -> Evacuation {
    Evacuation {
        reached,
        coldest: degrees(coldest_c, 1.0),
        surroundings: garage(),
    }
}

#[test]
fn a_vacuum_is_judged_by_the_water_in_the_coldest_part() {
    let finding = |pa: f64, limit_pa: f64, c: f64| evacuated(pascals(pa, limit_pa), c).judge().unwrap().finding;
    assert_eq!(finding(60.0, 10.0, 20.0), EvacuationFinding::Deep);
    assert_eq!(finding(1_500.0, 50.0, 20.0), EvacuationFinding::WaterBoils);
    assert_eq!(finding(5_000.0, 100.0, 20.0), EvacuationFinding::WaterStays);
    // The same pressure is deep enough for a warm engine bay and not for a frosty morning.
    assert_eq!(finding(1_500.0, 50.0, 2.0), EvacuationFinding::WaterStays);
    assert_eq!(finding(1_500.0, 1_500.0, 20.0), EvacuationFinding::GaugeCannotTell);
    // At -25 °C even ice hardly leaves at a pressure that is deep elsewhere.
    assert_eq!(finding(100.0, 5.0, -25.0), EvacuationFinding::WaterStays);
}

#[test]
fn the_judgement_gives_its_figures_with_their_uncertainty() {
    let vacuum = evacuated(pascals(60.0, 10.0), 20.0).judge().unwrap();
    assert_relative_eq!(vacuum.water.value.pa(), 2_339.0, max_relative = 1e-3);
    // 6.2 % per kelvin: the slope of the vapour pressure at 20 °C.
    assert_relative_eq!(
        vacuum.water.standard_uncertainty.pa(),
        0.0617 * 2_339.0 / 3f64.sqrt(),
        max_relative = 0.02
    );
    assert!(vacuum.water_freezes);
    assert_relative_eq!(vacuum.deepest.pa(), -garage().pressure().pa());
    assert!(
        vacuum
            .boiling_point
            .is_some_and(|t| t.si().value < 250.0 && t.si().standard_uncertainty > 0.5)
    );
    assert!(!evacuated(pascals(1_500.0, 50.0), 20.0).judge().unwrap().water_freezes);
}

#[test]
fn no_gauge_shows_a_deeper_vacuum_than_the_air_of_the_place() {
    // 29 inches are all but a whole atmosphere: at 1,600 m there are only 24.7.
    let inches = |inhg: f64| {
        Reading::within(
            GaugePressure::from_inhg_vacuum(inhg).into(),
            PressureDifference::from_pa(1_000.0),
        )
    };
    let off = evacuated(inches(29.0), 20.0).judge().unwrap();
    // Its zero is off by what it shows too much: all the vacuum that it can show, and it may be as much less than that.
    let too_much_pa = GaugePressure::from_inhg_vacuum(-29.0).pa() + off.deepest.pa();
    assert_relative_eq!(off.zero_off.unwrap().pa(), too_much_pa, max_relative = 1e-12);
    assert_eq!(
        (off.finding, off.reached.value.pa()),
        (EvacuationFinding::GaugeCannotTell, 0.0)
    );
    assert!(off.reached.standard_uncertainty.pa() > too_much_pa);
    let right = evacuated(inches(24.6), 20.0).judge().unwrap();
    assert_eq!(right.zero_off, None);
    // No air on earth lets a gauge show 40 inches.
    let refused = evacuated(inches(40.0), 20.0).judge().unwrap_err();
    assert_eq!(
        (refused.kind, refused.quantity),
        (ErrorKind::OutOfRange, Quantity::GaugePressure)
    );
    let nan = evacuated(pascals(f64::NAN, 1.0), 20.0).judge().unwrap_err();
    assert_eq!(nan.kind, ErrorKind::NotFinite);
}

fn held(samples: &[Sample]) -> Hold<'_> {
    Hold {
        samples,
        warmest: degrees(22.0, 1.0),
        surroundings: garage(),
        volume: Some(Reading::within(Volume::from_m3(2.2e-3), Volume::from_m3(0.3e-3))),
        allowed: Rise::USUAL,
    }
}

/// Readings every four minutes of a gauge that is right within 3 % of what it shows.
fn samples(pressure_pa: impl Fn(f64) -> f64, count: usize, mut error: impl FnMut() -> f64) -> Vec<Sample> {
    (0..count)
        .map(|at| {
            let after_s = 240.0 * at as f64;
            let p_pa = pressure_pa(after_s);
            Sample {
                after: TimeSpan::from_seconds(after_s),
                pressure: pascals(p_pa * (1.0 + 0.03 * error()), 0.03 * p_pa),
            }
        })
        .collect()
}

#[test]
fn a_leak_rises_on_and_moisture_levels_off() {
    let finding = |rise: &dyn Fn(f64) -> f64| held(&samples(rise, 6, || 0.0)).judge().unwrap();
    let leak = finding(&|s| 60.0 + 0.4 * s);
    assert_eq!(leak.finding, HoldFinding::Leak);
    // m = p V M / (R T): 0.4 Pa/s in 2.2 L of air at 22 °C.
    let air = leak.air.unwrap().si();
    assert_relative_eq!(
        air.value,
        0.4 * 2.2e-3 * 0.028_964 / (8.314_46 * 295.15),
        max_relative = 1e-3
    );
    assert!(air.standard_uncertainty > 0.05 * air.value);
    let wet = finding(&|s| 60.0 + 1_400.0 * (1.0 - (-s / 250.0).exp()));
    assert_eq!(wet.finding, HoldFinding::Moisture);
    assert_eq!(finding(&|_| 60.0).finding, HoldFinding::Tight);
    // Beyond the vapour pressure of water no moisture lifts it, however it bends.
    assert_eq!(
        finding(&|s| 60.0 + 20_000.0 * (1.0 - (-s / 250.0).exp())).finding,
        HoldFinding::Leak
    );
}

#[test]
fn what_a_hold_cannot_tell_it_does_not_tell() {
    let two = [
        Sample {
            after: TimeSpan::from_seconds(0.0),
            pressure: pascals(60.0, 2.0),
        },
        Sample {
            after: TimeSpan::from_seconds(900.0),
            pressure: pascals(500.0, 15.0),
        },
    ];
    assert_eq!(held(&two).judge().unwrap().finding, HoldFinding::RiseUnclear);
    let short = [
        Sample {
            after: TimeSpan::from_seconds(0.0),
            pressure: pascals(60.0, 2.0),
        },
        Sample {
            after: TimeSpan::from_seconds(120.0),
            pressure: pascals(60.0, 2.0),
        },
    ];
    assert_eq!(held(&short).judge().unwrap().finding, HoldFinding::TooShort);
    let dial = [
        Sample {
            after: TimeSpan::from_seconds(0.0),
            pressure: pascals(2_000.0, 17_600.0),
        },
        Sample {
            after: TimeSpan::from_seconds(1_200.0),
            pressure: pascals(2_000.0, 17_600.0),
        },
    ];
    assert_eq!(held(&dial).judge().unwrap().finding, HoldFinding::GaugeCannotTell);
    assert_eq!(held(&short[..1]).judge().unwrap_err().kind, ErrorKind::Missing);
    let backwards = [short[1], short[0]];
    assert_eq!(held(&backwards).judge().unwrap_err().kind, ErrorKind::Inconsistent);
}

/// 400 leaks and 400 damp circuits of all sizes, read with errors: one is hardly ever taken for the other.
#[test]
fn leaks_and_moisture_are_not_mistaken_for_each_other() {
    let mut rng = ChaCha8Rng::seed_from_u64(5);
    let (mut wrong, mut named) = (0, 0);
    for _ in 0..400 {
        let rate = 10f64.powf(rng.random_range(-1.0..1.0));
        let leak = samples(|s| 60.0 + rate * s, 6, || rng.random_range(-1.0..1.0));
        let (end_pa, tau_s) = (rng.random_range(300.0..2_300.0), rng.random_range(100.0..500.0));
        let wet = samples(
            |s| 60.0 + (end_pa - 60.0) * (1.0 - f64::exp(-s / tau_s)),
            6,
            || rng.random_range(-1.0..1.0),
        );
        let (leak, wet) = (
            held(&leak).judge().unwrap().finding,
            held(&wet).judge().unwrap().finding,
        );
        named += usize::from(leak == HoldFinding::Leak) + usize::from(wet == HoldFinding::Moisture);
        wrong += usize::from(leak == HoldFinding::Moisture) + usize::from(wet == HoldFinding::Leak);
    }
    assert!(wrong <= 4 && named >= 680, "{wrong} wrong, {named} of 800 named");
}

#[test]
fn the_masses_of_a_service_balance() {
    let weighed = |kg: f64| Some(Reading::within(Mass::from_kg(kg), Mass::from_kg(0.005)));
    let vapour = Kept {
        volume: Reading::within(Volume::from_m3(2.2e-3), Volume::from_m3(0.2e-3)),
        temperature: degrees(25.0, 2.0),
        vapour: Some(pascals(50_000.0, 2_000.0)),
    };
    let book = ChargeBook {
        nominal: Some(Mass::from_kg(0.650)),
        recovered: weighed(0.310),
        oil_recovered: weighed(0.020),
        oil_weighed_in: true,
        left: Some(vapour),
        charged: weighed(0.650),
        oil_added: weighed(0.030),
        ..ChargeBook::new(Refrigerant::R134a, garage())
    };
    let balance = book.balance().unwrap();
    // 2.2 L of vapour at half an atmosphere: p V M / (R T) is 4.5 g.
    let found = balance.charge_found.unwrap().si();
    assert_relative_eq!(found.value, 0.310 - 0.020 + 0.0045, max_relative = 1e-3);
    assert_eq!(
        (balance.found, balance.now),
        (Some(ChargeFinding::Under), Some(ChargeFinding::Within))
    );
    assert_relative_eq!(balance.oil_change.unwrap().value.kg(), 0.010, max_relative = 1e-12);
    let charged = |kg: f64, limit: Mass| {
        let charged = Some(Reading::within(Mass::from_kg(kg), limit));
        ChargeBook { charged, ..book }.balance().unwrap().now.unwrap()
    };
    assert_eq!(charged(0.690, Mass::from_kg(0.005)), ChargeFinding::Over);
    // The label does not say how far: 5 % of 650 g are 32.5 g, and a machine's scale is off by 15 g at most.
    assert_eq!(charged(0.655, MACHINE_SCALE), ChargeFinding::Within);
    assert_eq!(charged(0.680, MACHINE_SCALE), ChargeFinding::CannotTell);
    let nothing = ChargeBook::new(Refrigerant::R1234yf, garage()).balance().unwrap();
    assert_eq!(
        (
            nothing.charge_found,
            nothing.charge_now,
            nothing.now,
            nothing.oil_change
        ),
        (None, None, None, None)
    );
}

#[test]
fn a_hose_full_of_liquid_is_missing_in_the_vehicle() {
    // Source: saturated liquid density at 25 °C, Tillner-Roth & Baehr 1994: 1206.7 kg/m3.
    let hose = |vapour| Kept {
        volume: Reading::within(Volume::from_m3(50e-6), Volume::from_m3(5e-6)),
        temperature: degrees(25.0, 2.0),
        vapour,
    };
    let book = |vapour| ChargeBook {
        charged: Some(Reading::within(Mass::from_kg(0.650), Mass::from_kg(0.005))),
        hose: Some(hose(vapour)),
        ..ChargeBook::new(Refrigerant::R134a, garage())
    };
    let liquid = book(None).balance().unwrap().hose.unwrap().si();
    assert_relative_eq!(liquid.value, 50e-6 * 1_206.7, max_relative = 1e-4);
    assert_relative_eq!(
        liquid.standard_uncertainty,
        0.1 * liquid.value / 3f64.sqrt(),
        max_relative = 0.02
    );
    let vapour = book(Some(pascals(300_000.0, 10_000.0)))
        .balance()
        .unwrap()
        .hose
        .unwrap()
        .si();
    assert!(vapour.value < 0.02 * liquid.value);
    // R-407C: 1,136 kg/m3 at 25 °C, from memory of makers' tables.
    let blend = ChargeBook {
        charged: Some(Reading::within(Mass::from_kg(0.650), Mass::from_kg(0.005))),
        hose: Some(hose(None)),
        ..ChargeBook::new(Refrigerant::R407C, garage())
    };
    assert_relative_eq!(
        blend.balance().unwrap().hose.unwrap().value.kg(),
        50e-6 * 1_136.0,
        max_relative = 5e-3
    );
    // Vapour cannot be above its saturation pressure, 665 kPa at 25 °C.
    assert_eq!(
        book(Some(pascals(900_000.0, 10_000.0))).balance().unwrap_err().kind,
        ErrorKind::Inconsistent
    );
}

/// The scale of a charging machine, 15 g, serves a label of 15 g: its error is bounded, so that a charge within a gram of the
/// label lies within the tolerance 95 times of 100, and one two grams off does not.
#[test]
fn a_shops_scale_can_show_that_a_charge_is_within_the_label() {
    let now = |kg: f64| {
        let book = ChargeBook {
            nominal: Some(Mass::from_kg(0.650)),
            tolerance: Some(Mass::from_kg(0.015)),
            charged: Some(Reading::within(Mass::from_kg(kg), MACHINE_SCALE)),
            ..ChargeBook::new(Refrigerant::R134a, garage())
        };
        book.balance().unwrap().now.unwrap()
    };
    assert_eq!([0.6495, 0.650, 0.6505].map(now), [ChargeFinding::Within; 3]);
    assert_eq!([0.648, 0.652].map(now), [ChargeFinding::CannotTell; 2]);
    assert_eq!((now(0.620), now(0.680)), (ChargeFinding::Under, ChargeFinding::Over));
    // The larger of 15 g and 5 % where the label does not say: equal at 300 g.
    let usual = |kg: f64| usual_tolerance(Mass::from_kg(kg)).kg();
    assert_eq!([0.200, 0.300, 1.000].map(usual), [0.015, 0.015, 0.050]);
}

/// Errors of a scale drawn within its limit: of 4,000 charges that are called within the tolerance, at most one of twenty is not.
#[test]
fn what_is_called_within_is_within() {
    let mut rng = ChaCha8Rng::seed_from_u64(9);
    let (mut called, mut wrong) = (0, 0);
    while called < 4_000 {
        let true_kg = 0.650 + rng.random_range(-0.030..0.030);
        let book = ChargeBook {
            nominal: Some(Mass::from_kg(0.650)),
            tolerance: Some(Mass::from_kg(0.018)),
            charged: Some(Reading::within(
                Mass::from_kg(true_kg + MACHINE_SCALE.kg() * rng.random_range(-1.0..1.0)),
                MACHINE_SCALE,
            )),
            ..ChargeBook::new(Refrigerant::R134a, garage())
        };
        if book.balance().unwrap().now == Some(ChargeFinding::Within) {
            called += 1;
            wrong += usize::from((true_kg - 0.650_f64).abs() > 0.018);
        }
    }
    assert!(wrong <= 200, "{wrong} of {called}");
}

/// SAE J2788 lets a machine leave 5 % in the circuit: of 430 g recovered, up to 22.6 g more were in it.
#[test]
fn what_a_recovery_leaves_behind_was_in_the_vehicle() {
    let book = ChargeBook {
        nominal: Some(Mass::from_kg(0.450)),
        recovered: Some(Reading::within(Mass::from_kg(0.430), RECOVERY_SCALE)), // 30 g,
        ..ChargeBook::new(Refrigerant::R134a, garage())
    };
    let found = book.balance().unwrap();
    let most_kg = 0.430 / LEAST_RECOVERED - 0.430;
    assert_relative_eq!(most_kg, 0.0226, max_relative = 2e-3);
    assert_relative_eq!(
        found.charge_found.unwrap().value.kg(),
        0.430 + 0.5 * most_kg,
        max_relative = 1e-12
    );
    assert_relative_eq!(
        found.charge_found.unwrap().standard_uncertainty.kg(),
        f64::hypot(0.030, 0.5 * most_kg) / 3f64.sqrt(),
        max_relative = 1e-12
    );
    // Without an evacuation it is still there beside what was charged.
    let topped_up = ChargeBook {
        evacuated: false,
        charged: Some(Reading::within(Mass::from_kg(0.440), MACHINE_SCALE)),
        ..book
    };
    assert_relative_eq!(
        topped_up.balance().unwrap().charge_now.unwrap().value.kg(),
        0.440 + 0.5 * most_kg,
        max_relative = 1e-12
    );
}
