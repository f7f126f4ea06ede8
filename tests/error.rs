//! One error for everything: its codes stay, and its text names the quantity, the value and the bounds.

use coldloop::{Error, ErrorKind, Quantity};

/// Codes are shared with C and Python programs that were built against an earlier version.
#[test]
fn codes_are_pinned() {
    let pinned = [
        (1, "out-of-range"),
        (2, "not-finite"),
        (3, "missing-unit"),
        (4, "missing-datum"),
        (5, "unknown-unit"),
        (6, "decimal-comma"),
        (7, "not-a-number"),
        (8, "unknown-name"),
        (9, "no-convergence"),
        (10, "two-phase"),
        (11, "missing"),
        (12, "inconsistent"),
        (13, "not-available"),
    ];
    for (code, id) in pinned {
        assert_eq!(ErrorKind::from_code(code).map(ErrorKind::id), Some(id));
    }
    for kind in ErrorKind::ALL {
        assert_eq!(ErrorKind::from_code(kind.code()), Some(kind));
        assert!(kind.code() >= 1 && kind.code() <= u32::try_from(ErrorKind::ALL.len()).unwrap_or(0));
    }
}

#[test]
fn every_text_is_one_line_without_markup() {
    for kind in ErrorKind::ALL {
        for quantity in Quantity::ALL {
            let text = Error::of(kind, quantity).to_string();
            assert!(
                text.len() > 10 && !text.contains('\n') && !text.contains("::"),
                "{text}"
            );
        }
    }
}

#[test]
fn text_names_quantity_value_and_bounds_in_their_unit() {
    for quantity in Quantity::ALL {
        let text = Error::out_of_range(quantity, 7.5, 1.25, 2.5).to_string();
        let unit = quantity.unit();
        assert_eq!(text, format!("{quantity} 7.5{unit} is outside 1.25{unit} to 2.5{unit}"));
    }
    assert_eq!(
        Error::not_finite(Quantity::GaugePressure, f64::NAN).to_string(),
        "gauge pressure is NaN, not a finite number"
    );
    assert_eq!(
        Error::of(ErrorKind::MissingUnit, Quantity::Temperature).to_string(),
        "temperature needs its unit, as in \"74 °F\" or \"23.3 °C\""
    );
}

#[test]
fn figures_of_a_text_are_short_unless_that_would_hide_the_mistake() {
    let pressure = Error::out_of_range(Quantity::AbsolutePressure, 123_456.789_01, 200_000.0, 4_059_280.123_4);
    let text = format!(
        "{} 123457 Pa is outside 200000 Pa to 4059280 Pa",
        Quantity::AbsolutePressure
    );
    assert_eq!(pressure.to_string(), text);
    let just = Error::out_of_range(Quantity::Temperature, 374.210_000_1, 169.85, 374.21);
    assert_eq!(
        just.to_string(),
        "temperature 374.2100001 K is outside 169.85 K to 374.21 K"
    );
    let far = Error::out_of_range(Quantity::Mass, f64::MAX, 1e-300, 2.0);
    assert!(far.to_string().len() < 80, "{far}");
    assert_eq!(
        Error::no_convergence(0.012_345_678_9, 1e-9).to_string(),
        "the solver stopped at a residual of 0.0123457, above 1e-9"
    );
}

/// Figures that do not apply are NaN and still compare equal, so that errors can be compared in tests.
#[test]
fn errors_compare_by_all_that_they_say() {
    let missing = Error::of(ErrorKind::Missing, Quantity::Mass);
    assert_eq!(missing, Error::of(ErrorKind::Missing, Quantity::Mass));
    assert_ne!(missing, Error::of(ErrorKind::Missing, Quantity::Duration));
    let outside = |value| Error::out_of_range(Quantity::Mass, value, 0.0, 1.0);
    assert_eq!(outside(2.0), outside(2.0));
    assert_ne!(outside(2.0), outside(3.0));
    assert!(size_of::<Error>() <= 32);
}
