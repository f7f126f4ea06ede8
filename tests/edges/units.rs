//! The air, and what a gauge counts from.

use coldloop::ErrorKind;
use coldloop::units::{
    AbsolutePressure, Mass, PressureDifference, Surroundings, absolute_pressure_pa, celsius, difference_in_kelvins,
    gauge_pressure_pa, in_celsius, in_fahrenheit, kelvins_difference, standard_altitude_m, text,
};

/// The weather, 700 Pa; a barometer, 100 Pa.
#[test]
fn the_air_is_known_by_a_barometer_better_than_by_the_altitude() {
    let barometer = Surroundings::measured(AbsolutePressure::from_pa(84_000.0)).unwrap();
    assert_eq!(barometer.standard_uncertainty().pa(), 100.0);
    let altitude = Surroundings::at_altitude(1_600.0).unwrap();
    assert_eq!(altitude.standard_uncertainty().pa(), 700.0);
    assert_eq!(Surroundings::SEA_LEVEL.standard_uncertainty().pa(), 700.0);
}

/// A gauge counts from the air of the place, in both directions, and a difference of pressures has no datum.
#[test]
fn gauge_and_absolute_differ_by_the_air() {
    assert_eq!(absolute_pressure_pa(250_000.0, 84_000.0), Ok(334_000.0));
    assert_eq!(gauge_pressure_pa(334_000.0, 84_000.0), Ok(250_000.0));
    assert_eq!(
        text::pressure_difference("2 kPa"),
        Ok(PressureDifference::from_pa(2_000.0))
    );
}

/// A blower runs at a part of its full speed.
#[test]
fn a_blower_setting_is_a_share() {
    assert_eq!(
        (text::blower_setting("60 %"), text::blower_setting("0.25")),
        (Ok(0.6), Ok(0.25))
    );
    assert!(text::blower_setting("101 %").is_err());
}

/// The factors of NIST Special Publication 811 (2008), B.8, to the seven digits that are printed there.
#[test]
fn volumes_and_columns_of_mercury_have_the_published_factors() {
    let near = |text: &str, factor: f64, count: f64| {
        let read = text::volume(text).unwrap().m3();
        assert!((read / (count * factor) - 1.0).abs() < 3e-7, "{text}: {read}");
    };
    near("8 fl oz", 2.957_353e-5, 8.0);
    near("100 in3", 1.638_706e-5, 100.0);
    near("0.5 ft3", 2.831_685e-2, 0.5);
    let mercury = text::absolute_pressure("76 cmHg abs").unwrap().pa();
    assert!((mercury / (76.0 * 1.333_224e3) - 1.0).abs() < 3e-7, "{mercury}");
}

/// Commands are shares as settings are; an exponent without digits belongs to the unit.
#[test]
fn commands_are_shares_and_an_exponent_has_digits() {
    assert_eq!(text::commanded_displacement("60 %"), Ok(0.6));
    assert_eq!(text::fan_command("0.25"), Ok(0.25));
    assert!(text::commanded_displacement("101 %").is_err() && text::fan_command("101 %").is_err());
    assert_eq!(text::mass("5e kg").unwrap_err().kind, ErrorKind::UnknownUnit);
    assert_eq!(text::mass("5e-1 kg"), Ok(Mass::from_kg(0.5)));
}

/// 32 °F and 212 °F by definition; a difference has no datum; 795.0 hPa at 2,000 m (ISO 2533:1975, from memory).
#[test]
fn temperatures_add_and_altitudes_come_back() {
    assert!((in_fahrenheit(celsius(100.0)) - 212.0).abs() < 1e-9 && (in_fahrenheit(celsius(0.0)) - 32.0).abs() < 1e-9);
    assert!((in_celsius(celsius(20.0) + kelvins_difference(5.0)) - 25.0).abs() < 1e-9);
    assert!((standard_altitude_m(79_500.0).unwrap() - 2_000.0).abs() < 1.0);
}

/// Signs that keyboards and documents write: ℉, ′ for feet, ″ for inches of mercury; and two temperatures have a difference.
#[test]
fn signs_are_read_as_the_words_for_them() {
    assert_eq!(text::temperature("74 ℉"), text::temperature("74 °F"));
    assert_eq!(text::altitude_m("5250′"), text::altitude_m("5250 ft"));
    assert_eq!(
        text::gauge_pressure("18 ″Hg vacuum"),
        text::gauge_pressure("18 inHg vacuum")
    );
    assert!((difference_in_kelvins(celsius(25.0) - celsius(20.0)) - 5.0).abs() < 1e-9);
}
