//! Air, and the texts that are refused for their length.

use coldloop::units::{AbsolutePressure, Surroundings};

/// The weather, 700 Pa; a barometer, 100 Pa.
#[test]
fn the_air_is_known_by_a_barometer_better_than_by_the_altitude() {
    let barometer = Surroundings::measured(AbsolutePressure::from_pa(84_000.0)).unwrap();
    assert_eq!(barometer.standard_uncertainty_pa(), 100.0);
    let altitude = Surroundings::at_altitude(1_600.0).unwrap();
    assert_eq!(altitude.standard_uncertainty_pa(), 700.0);
    assert_eq!(Surroundings::SEA_LEVEL.standard_uncertainty_pa(), 700.0);
}
