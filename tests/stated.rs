//! An error about a text speaks in the unit of that text.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use coldloop::ErrorKind;
use coldloop::units::{Mass, RotationalSpeed, Speed, TimeSpan, Volume, text};

/// What was written, in every unit of the trade, comes back as the figure that was written, and the bounds in that unit.
#[test]
fn an_error_is_told_in_the_unit_that_was_written() {
    for (text, told) in [
        (
            "9000 psia",
            "absolute pressure 9000 psia is outside 0 psia to 5801.51 psia",
        ),
        (
            "9000 psig",
            "gauge pressure 9000 psig is outside -16.2442 psig to 5801.51 psig",
        ),
        (
            "500 bar gauge",
            "gauge pressure 500 bar gauge is outside -1.12 bar gauge to 400 bar gauge",
        ),
        (
            "35 inHg vacuum",
            "gauge pressure 35 inHg vacuum is outside 0 inHg vacuum to 33.0736 inHg vacuum",
        ),
        (
            "5e9 micron",
            "absolute pressure 5000000000 micron is outside 0 micron to 300024630 micron",
        ),
    ] {
        let error = text::pressure(text).unwrap_err();
        if error.kind == ErrorKind::OutOfRange {
            assert_eq!(text::Restated { error, text }.to_string(), told);
        } else {
            panic!("{text}: {error}");
        }
    }
    type Reader = fn(&str) -> Result<f64, coldloop::Error>;
    let others: [(Reader, &str, &str); 9] = [
        (
            text::altitude_m,
            "40000 ft",
            "altitude 40000 ft is outside -1640.42 ft to 29527.6 ft",
        ),
        (
            |t| text::speed(t).map(Speed::m_s),
            "400 mph",
            "speed 400 mph is outside 0 mph to 223.694 mph",
        ),
        (
            |t| text::rotational_speed(t).map(RotationalSpeed::hz),
            "-1 rpm",
            "rotational speed -1 rpm is outside 0 rpm to 18000 rpm",
        ),
        (
            |t| text::mass(t).map(Mass::kg),
            "-3 oz",
            "mass -3 oz is outside 0 oz to 35274 oz",
        ),
        (
            |t| text::volume(t).map(Volume::m3),
            "2000 L",
            "volume 2000 L is outside 0 L to 1000 L",
        ),
        (
            |t| text::duration(t).map(TimeSpan::seconds),
            "1e9 min",
            "duration 1000000000 min is outside 0 min to 527040 min",
        ),
        (text::voltage_v, "3 kV", "voltage 3 kV is outside -2 kV to 2 kV"),
        (text::severity, "140 %", "severity 140 % is outside 0 % to 100 %"),
        (text::severity, "-0.5", "severity -0.5 is outside 0 to 1"),
    ];
    for (read, text, told) in others {
        let error = read(text).unwrap_err();
        assert_eq!(text::Restated { error, text }.to_string(), told);
    }
    let error = text::temperature_difference("2000 °F").unwrap_err();
    assert_eq!(
        text::Restated {
            error, text: "2000 °F"
        }
        .to_string(),
        "temperature difference 2000 °F is outside -900 °F to 900 °F"
    );
    // A text that says something else leaves the figures in SI.
    assert_eq!(
        text::Restated {
            error,
            text: "2000 psig"
        }
        .to_string(),
        error.to_string()
    );
}
