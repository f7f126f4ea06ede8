//! Quantities as text: what a technician types is read as meant, what is ambiguous is refused, and what the library
//! prints it reads back to the bit.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::units::text::{self, Written};
use coldloop::units::{
    AbsolutePressure, Frequency, GaugePressure, Mass, Pressure, RelativeHumidity, RotationalSpeed, Speed, TimeSpan,
    Volume, difference_in_kelvins, in_celsius, in_kelvins,
};
use coldloop::{ErrorKind, Quantity, range};
use proptest::prelude::*;

/// From text to SI.
type Reader = fn(&str) -> Result<f64, coldloop::Error>;

fn gauge_pa(text: &str) -> f64 {
    match text::pressure(text) {
        Ok(Pressure::Gauge(pressure)) => pressure.pa(),
        other => panic!("{text}: {other:?}"),
    }
}

fn absolute_pa(text: &str) -> f64 {
    match text::pressure(text) {
        Ok(Pressure::Absolute(pressure)) => pressure.pa(),
        other => panic!("{text}: {other:?}"),
    }
}

fn refused(text: &str) -> ErrorKind {
    text::pressure(text).unwrap_err().kind
}

#[test]
fn one_pressure_has_many_spellings() {
    let psig = GaugePressure::from_psig(35.0).pa();
    for spelling in [
        "35 psig",
        "35psig",
        "35 PSIG",
        "35 Psi gauge",
        "35 psi (g)",
        "35 psi(gauge)",
        "35 psi gage",
        "35 psi-g",
        "35.0 p.s.i.g.",
        "35 lb/in² gauge",
        "35 lbf/in2 g",
        "35 lb/sq.in. gauge",
        "+35 psig",
        " 35\u{a0}psig ",
        "35\u{202f}psig",
        "3.5e1 psig",
    ] {
        assert_eq!(gauge_pa(spelling), psig, "{spelling}");
    }
    for spelling in [
        "2.4 bar gauge",
        "2.4 barg",
        "2.4 bar(g)",
        "2.4 bar (g)",
        "240 kPag",
        "240 kPa g",
        "240 kpa gauge",
        "0.24 MPa gauge",
        "0.24 MPag",
        "2400 mbar gauge",
        "2400 hPa gauge",
        "240000 Pa gauge",
    ] {
        assert!((gauge_pa(spelling) - 240_000.0).abs() < 1e-9, "{spelling}");
    }
    for spelling in [
        "101.3 kPa abs",
        "101.3 kPa a",
        "101.3 kPaa",
        "1013 mbar absolute",
        "1.013 bara",
        "1.013 bar(a)",
    ] {
        assert!((absolute_pa(spelling) - 101_300.0).abs() < 1e-9, "{spelling}");
    }
    for spelling in [
        "18 inHg vacuum",
        "18 in.Hg vac",
        "18 in. Hg vacuum",
        "18\" Hg vac",
        "18 inches of mercury vacuum",
    ] {
        assert_eq!(
            gauge_pa(spelling),
            GaugePressure::from_inhg_vacuum(18.0).pa(),
            "{spelling}"
        );
    }
    for spelling in [
        "500 micron",
        "500 microns",
        "500 micron abs",
        "500 µmHg",
        "500 um Hg",
        "500 microns vacuum",
    ] {
        assert_eq!(
            absolute_pa(spelling),
            AbsolutePressure::from_microns(500.0).pa(),
            "{spelling}"
        );
    }
    for spelling in ["10 kg/cm2 gauge", "10 kgf/cm² g", "10 kg/cm²(g)"] {
        assert_eq!(gauge_pa(spelling), 980_665.0, "{spelling}");
    }
    assert_eq!(absolute_pa("760 torr abs"), 101_325.0);
    assert!((absolute_pa("29.92 inHg abs") - 101_320.7).abs() < 0.1);
    assert!((absolute_pa("500 mtorr") - absolute_pa("500 micron")).abs() < 1e-5);
    assert!((gauge_pa("457.2 mmHg vacuum") - gauge_pa("18 inHg vacuum")).abs() < 1e-9);
    assert_eq!(gauge_pa("\u{2212}0.5 bar gauge"), -50_000.0);
    assert_eq!(gauge_pa("\u{2013}0.5 bar gauge"), -50_000.0);
}

#[test]
fn a_pressure_without_its_datum_is_refused() {
    for text in [
        "35 psi",
        "35psi",
        "2.4 bar",
        "101.3 kPa",
        "0.5 MPa",
        "18 inHg",
        "760 mmHg",
        "760 torr",
        "10 kg/cm2",
    ] {
        let error = text::pressure(text).unwrap_err();
        assert_eq!(error.kind, ErrorKind::MissingDatum, "{text}");
        let message = error.to_string();
        assert!(message.contains("psig") && message.contains("psia"), "{message}");
    }
    assert_eq!(refused("35"), ErrorKind::MissingUnit);
}

#[test]
fn commas_are_refused_with_a_hint() {
    for text in ["2,4 bar gauge", "1,234 kPa abs", "1,234.5 kPa abs", "35, psig"] {
        let error = text::pressure(text).unwrap_err();
        assert_eq!(error.kind, ErrorKind::DecimalComma, "{text}");
        assert!(error.to_string().contains("write 2.4 and 1500"), "{error}");
    }
    assert_eq!(text::altitude_m("5,250 ft").unwrap_err().kind, ErrorKind::DecimalComma);
}

#[test]
fn what_is_no_quantity_is_refused() {
    for text in [
        "",
        " ",
        "psig",
        "NaN psig",
        "inf psig",
        "-inf psig",
        "--5 psig",
        ".",
        "-",
        "e5 psig",
        "thirty psig",
        "٣٥ psig",
    ] {
        assert_eq!(refused(text), ErrorKind::NotANumber, "{text}");
    }
    assert_eq!(refused("1e999 psig"), ErrorKind::NotFinite);
    for text in [
        "35 psig low",
        "35 psig 40",
        "35-40 psig",
        "1 234 kPa abs",
        "1'234 kPa abs",
        "35 °F",
        "35 psigg",
        "35 psig;",
        "35 ☃",
        "500 micron gauge",
        "1.2.3 psig",
        "35 psig psig psig psig psig psig psig psig psig psig psig",
        "30- psig",
        "30-psig",
        "30 \u{2212} psig",
        "35 psig-",
        "35 psi--g",
        "35 .psig",
        // A millipascal is a billionth of what its writer may have meant.
        "1 mPa gauge",
        "1 mPa abs",
        "1mPaG",
        "1 m Pa gauge",
        "1 mPa",
    ] {
        assert_eq!(refused(text), ErrorKind::UnknownUnit, "{text}");
    }
    for text in ["-1 psia", "-20 psig", "35 inHg vacuum", "-18 inHg vacuum", "1e9 psig"] {
        assert_eq!(refused(text), ErrorKind::OutOfRange, "{text}");
    }
    assert_eq!(
        text::absolute_pressure("29.9 inHg vacuum").unwrap_err().kind,
        ErrorKind::UnknownUnit
    );
    assert_eq!(
        text::gauge_pressure("14.7 psia").unwrap_err().kind,
        ErrorKind::UnknownUnit
    );
}

/// The other spellings of a megapascal mean nothing else.
#[test]
fn a_megapascal_may_be_written_in_small_letters() {
    for spelling in ["0.24 MPa gauge", "0.24 mpa gauge", "0.24 MPAG", "0.24 Mpag"] {
        assert!((gauge_pa(spelling) - 240_000.0).abs() < 1e-9, "{spelling}");
    }
}

#[test]
fn temperatures_are_points_and_differences_are_not() {
    for spelling in [
        "23.5 °C",
        "23.5C",
        "23.5 deg C",
        "23.5 ℃",
        "23.5 degrees Celsius",
        "23.5 º C",
    ] {
        assert_eq!(in_celsius(text::temperature(spelling).unwrap()), 23.5, "{spelling}");
    }
    // The fixed points of the scales, exact by definition.
    for (spelling, t_k) in [
        ("32 °F", 273.15),
        ("212 F", 373.15),
        ("-40 °F", 233.15),
        ("−40 °C", 233.15),
        ("491.67 °R", 273.15),
    ] {
        assert!(
            (in_kelvins(text::temperature(spelling).unwrap()) - t_k).abs() < 1e-12,
            "{spelling}"
        );
    }
    assert_eq!(
        difference_in_kelvins(text::temperature_difference("18 °F").unwrap()),
        10.0
    );
    assert_eq!(
        difference_in_kelvins(text::temperature_difference("-3 °C").unwrap()),
        -3.0
    );
    assert_eq!(text::temperature("74").unwrap_err().kind, ErrorKind::MissingUnit);
    assert_eq!(text::temperature("74 °").unwrap_err().kind, ErrorKind::MissingUnit);
    assert_eq!(text::temperature("-500 °F").unwrap_err().kind, ErrorKind::OutOfRange);
    assert_eq!(text::temperature("74 psig").unwrap_err().kind, ErrorKind::UnknownUnit);
}

#[test]
fn the_other_quantities_are_read_in_the_units_of_the_trade() {
    assert_eq!(text::altitude_m("1600 m"), Ok(1_600.0));
    assert_eq!(text::altitude_m("1 mile").unwrap_err().kind, ErrorKind::UnknownUnit);
    assert_eq!(
        text::relative_humidity("40 %"),
        Ok(RelativeHumidity::from_fraction(0.4))
    );
    assert_eq!(
        text::relative_humidity("55%RH"),
        Ok(RelativeHumidity::from_fraction(0.55))
    );
    assert_eq!(
        text::relative_humidity("140 %").unwrap_err().kind,
        ErrorKind::OutOfRange
    );
    assert_eq!(
        text::relative_humidity("0.4 kg").unwrap_err().kind,
        ErrorKind::UnknownUnit
    );
    assert_eq!(text::speed("36 km/h"), Ok(Speed::from_m_s(10.0)));
    assert!((text::speed("30 mph").unwrap().m_s() - 13.4112).abs() < 1e-14);
    assert_eq!(text::rotational_speed("1500 rpm"), Ok(RotationalSpeed::from_hz(25.0)));
    assert_eq!(text::rotational_speed("1500 1/min"), Ok(RotationalSpeed::from_hz(25.0)));
    assert_eq!(text::rotational_speed("1500 min⁻¹"), Ok(RotationalSpeed::from_hz(25.0)));
    assert_eq!(text::mass("650 g"), Ok(Mass::from_kg(0.65)));
    assert_eq!(text::mass("16 oz"), text::mass("1 lb"));
    assert_eq!(text::mass("-1 g").unwrap_err().kind, ErrorKind::OutOfRange);
    assert_eq!(text::duration("10 min"), Ok(TimeSpan::from_seconds(600.0)));
    assert_eq!(text::duration("1.5 h"), Ok(TimeSpan::from_seconds(5_400.0)));
    assert_eq!(text::volume("128 fl oz"), text::volume("231 cu in"));
    assert_eq!(text::frequency("3 /min"), Ok(Frequency::from_hz(0.05)));
    assert_eq!(text::frequency("3 cycles per minute"), Ok(Frequency::from_hz(0.05)));
    assert_eq!(text::voltage_v("450 mV"), Ok(0.45));
}

/// A mass or a time in two units is their sum, the smaller unit last and less than one of the larger.
#[test]
fn pounds_with_ounces_and_hours_with_minutes_are_read() {
    let close =
        |found: Result<f64, coldloop::Error>, wanted: f64| assert!((found.unwrap() / wanted - 1.0).abs() < 1e-14);
    for spelling in ["1 lb 4 oz", "1lb 4oz", "1 pound 4.0 ounces", "1 lb. 4 oz."] {
        close(text::mass(spelling).map(Mass::kg), 1.25 * 0.453_592_37);
    }
    close(text::duration("1 h 30 min").map(TimeSpan::seconds), 5_400.0);
    close(text::duration("2 min 5 s").map(TimeSpan::seconds), 125.0);
    close(text::mass("0 lb 12 oz").map(Mass::kg), 0.75 * 0.453_592_37);
    close(text::volume("20 ml").map(Volume::m3), 20e-6);
    close(text::volume("1 fl oz").map(Volume::m3), 29.573_529_562_5e-6);
    assert_eq!(text::pressure("0.5 torr abs"), text::pressure("500 mtorr"));
    for spelling in [
        "1 lb 16 oz",
        "4 oz 1 lb",
        "1 lb 4",
        "1 lb -4 oz",
        "-1 lb 4 oz",
        "1 lb 4 oz 2 g",
        "1 lb 4 min",
        "1 lb 4 lb",
    ] {
        assert!(text::mass(spelling).is_err(), "{spelling}");
    }
    for spelling in ["1 h 60 min", "1 h 30", "30 min 1 h", "1 h 1,5 min"] {
        assert!(text::duration(spelling).is_err(), "{spelling}");
    }
    assert!(text::altitude_m("5 km 200 m").is_err());
}

/// A number anywhere in a range, its ends and zero included.
fn within(range: range::Range) -> impl Strategy<Value = f64> {
    prop_oneof![8 => range.low..=range.high, 1 => Just(range.low), 1 => Just(range.high), 1 => Just(0.0)]
}

/// Prints the value, reads it, and compares the bits.
fn comes_back(quantity: Quantity, si: f64, read: impl Fn(&str) -> Result<f64, coldloop::Error>) {
    let printed = Written { quantity, si }.to_string();
    let back = read(&printed).unwrap_or_else(|error| panic!("{printed}: {error}"));
    assert_eq!(back.to_bits(), si.to_bits(), "{printed}");
}

proptest! {
    #[test]
    fn printed_pressures_are_read_back_to_the_bit(
        absolute in within(range::ABSOLUTE_PRESSURE),
        gauge in within(range::GAUGE_PRESSURE),
    ) {
        for pressure in [Pressure::Absolute(AbsolutePressure::from_pa(absolute)), Pressure::Gauge(GaugePressure::from_pa(gauge))] {
            prop_assert_eq!(text::pressure(&pressure.to_string()), Ok(pressure));
        }
        comes_back(Quantity::AbsolutePressure, absolute, |t| text::absolute_pressure(t).map(AbsolutePressure::pa));
        comes_back(Quantity::GaugePressure, gauge, |t| text::gauge_pressure(t).map(GaugePressure::pa));
    }

    #[test]
    fn printed_temperatures_are_read_back_to_the_bit(
        point in within(range::TEMPERATURE),
        difference in within(range::TEMPERATURE_DIFFERENCE),
    ) {
        comes_back(Quantity::Temperature, point, |t| text::temperature(t).map(in_kelvins));
        comes_back(Quantity::TemperatureDifference, difference,
            |t| text::temperature_difference(t).map(difference_in_kelvins));
    }

    #[test]
    fn other_printed_quantities_are_read_back_to_the_bit(fraction in 0.0..=1.0f64) {
        let readers: [(range::Range, Reader); 8] = [
            (range::ALTITUDE, text::altitude_m),
            (range::RELATIVE_HUMIDITY, |t| text::relative_humidity(t).map(RelativeHumidity::fraction)),
            (range::SPEED, |t| text::speed(t).map(Speed::m_s)),
            (range::ROTATIONAL_SPEED, |t| text::rotational_speed(t).map(RotationalSpeed::hz)),
            (range::MASS, |t| text::mass(t).map(Mass::kg)),
            (range::DURATION, |t| text::duration(t).map(TimeSpan::seconds)),
            (range::FREQUENCY, |t| text::frequency(t).map(Frequency::hz)),
            (range::VOLTAGE, text::voltage_v),
        ];
        for (range, read) in readers {
            let si = range.low + fraction * (range.high - range.low);
            comes_back(range.quantity, si.min(range.high), read);
        }
    }

    /// Whatever is typed, there is an answer or a typed error, and an answer is finite.
    #[test]
    fn no_text_breaks_the_reader(text in "[-+−–0-9., a-zA-Z°µ²/%\"'()\u{a0}]{0,40}|\\PC*") {
        if let Ok(pressure) = text::pressure(&text) {
            let pa = match pressure { Pressure::Absolute(p) => p.pa(), Pressure::Gauge(p) => p.pa() };
            prop_assert!(pa.is_finite());
        }
        if let Ok(temperature) = text::temperature(&text) {
            prop_assert!(in_kelvins(temperature).is_finite());
        }
        let readers: [Reader; 4] = [
            text::altitude_m,
            |t| text::relative_humidity(t).map(RelativeHumidity::fraction),
            |t| text::mass(t).map(Mass::kg),
            |t| text::frequency(t).map(Frequency::hz),
        ];
        for read in readers {
            prop_assert!(read(&text).is_ok_and(f64::is_finite) || read(&text).is_err());
        }
    }
}
