//! Moist air and the standard atmosphere against published tables and worked examples, and against themselves.

#![allow(clippy::panic, clippy::unwrap_used)] // tests fail by panicking

use approx::assert_relative_eq;
use coldloop::air::{self, MoistAir};
use coldloop::units::{standard_altitude_m, standard_pressure_pa};
use coldloop::{Error, ErrorKind, Quantity, range};
use proptest::prelude::*;

const ATMOSPHERE_PA: f64 = 101_325.0;

/// ASHRAE Handbook - Fundamentals (2017), ch. 1, table 3 (water at saturation). The table rests on newer formulations
/// (IAPWS) than the equations of the same chapter, so the last printed digits differ: by up to 0.03 % over water, and
/// 0.5 % at -60 °C, where the print has three digits.
#[test]
fn saturation_pressures_are_those_of_ashrae_table_3() {
    for (t_c, printed_pa, relative) in [
        (-60.0, 1.08, 5e-3),
        (-20.0, 103.24, 2e-4),
        (-5.0, 401.74, 2e-4),
        (5.0, 872.6, 2e-4),
        (25.0, 3_169.7, 2e-4),
        (50.0, 12_351.3, 2e-4),
        (100.0, 101_418.0, 3e-4),
        (150.0, 476_101.4, 3e-4),
    ] {
        let p_pa = air::water_saturation_pressure_pa(t_c + 273.15).unwrap();
        assert_relative_eq!(p_pa, printed_pa, max_relative = relative);
    }
}

/// ASHRAE Handbook - Fundamentals (2017), ch. 1, table 2 (moist air at 101.325 kPa, saturated): a real-gas model. The
/// enhancement factor brings the humidity ratio to its fourth digit; without it the difference is 0.5 %. Enthalpy is
/// computed with constant heat capacities, an error of 0.1 % in weather and 0.3 % at 85 °C.
#[test]
fn saturated_air_is_that_of_ashrae_table_2() {
    for (t_c, printed_ratio, printed_j_kg, relative) in [
        (-20.0, 0.000_637_3, -18_542.0, 1e-3),
        (5.0, 0.005_425, 18_639.0, 1e-3),
        (25.0, 0.020_173, 76_504.0, 1e-3),
        (50.0, 0.086_863, 275_353.0, 1e-3),
        (85.0, 0.838_105, 2_307_539.0, 3e-3),
    ] {
        let air = MoistAir::saturated(t_c + 273.15, ATMOSPHERE_PA).unwrap();
        assert_relative_eq!(air.humidity_ratio(), printed_ratio, max_relative = 4e-4);
        assert_relative_eq!(air.enthalpy_j_kg(), printed_j_kg, max_relative = relative);
    }
}

/// Cengel & Boles, Thermodynamics: An Engineering Approach, examples 14-1 and 14-3 (perfect gas without
/// enhancement factor, a difference of 0.4 % of the humidity ratio).
#[test]
fn rooms_are_those_of_cengel_and_boles() {
    let room = MoistAir::from_relative_humidity(298.15, 100_000.0, 0.75).unwrap();
    assert_relative_eq!(room.humidity_ratio(), 0.0152, max_relative = 6e-3);
    assert_relative_eq!(room.p_pa() - room.vapour_pressure_pa(), 97_620.0, max_relative = 2e-4);
    let room = MoistAir::from_wet_bulb(298.15, ATMOSPHERE_PA, 288.15).unwrap();
    assert_relative_eq!(room.humidity_ratio(), 0.006_53, max_relative = 7e-3);
    assert_relative_eq!(room.relative_humidity(), 0.332, max_relative = 3e-3);
    assert_relative_eq!(room.enthalpy_j_kg(), 41_800.0, max_relative = 3e-3);
}

/// ASHRAE Handbook - Fundamentals (2017), ch. 1, table 1, which is ISO 2533; printed in whole pascals.
#[test]
fn the_standard_atmosphere_is_that_of_the_standard() {
    for (altitude_m, printed_pa) in [
        (-500.0, 107_478.0),
        (500.0, 95_461.0),
        (1_000.0, 89_875.0),
        (4_000.0, 61_640.0),
    ] {
        let p_pa = standard_pressure_pa(altitude_m).unwrap();
        assert!((p_pa - printed_pa).abs() <= 0.6, "{altitude_m} m: {p_pa}");
    }
    // ISO 2533:1975, table 5: density at sea level 1.225 kg/m3 (1 km: 1.1116, from memory); 15 and 8.5 °C
    assert_relative_eq!(air::standard_density_kg_m3(0.0).unwrap(), 1.225, max_relative = 1e-6);
    assert_relative_eq!(
        air::standard_density_kg_m3(1_000.0).unwrap(),
        1.111_6,
        max_relative = 5e-5
    );
    assert_relative_eq!(
        air::standard_temperature_k(1_000.0).unwrap(),
        281.65,
        max_relative = 1e-15
    );
}

/// Water boils at 100 °C under one atmosphere and freezes at 0.01 °C at its triple point: 611.657 Pa, Guildner, Johnson
/// & Jones (1976), Journal of Research of the NBS 80A, 505. The old formulation is 0.03 K off at 100 °C.
#[test]
fn water_boils_where_it_should() {
    assert_relative_eq!(
        air::water_boiling_point_k(ATMOSPHERE_PA).unwrap(),
        373.124,
        epsilon = 0.03
    );
    assert_relative_eq!(air::water_boiling_point_k(611.657).unwrap(), 273.16, epsilon = 0.005);
    let error = air::water_boiling_point_k(0.0).unwrap_err();
    assert_eq!(
        (error.kind, error.quantity),
        (ErrorKind::OutOfRange, Quantity::AbsolutePressure)
    );
}

#[test]
fn impossible_air_is_refused() {
    let kind = |result: Result<MoistAir, Error>| result.unwrap_err().kind;
    assert_eq!(
        kind(MoistAir::from_relative_humidity(f64::NAN, ATMOSPHERE_PA, 0.5)),
        ErrorKind::NotFinite
    );
    assert_eq!(
        kind(MoistAir::from_relative_humidity(298.15, f64::INFINITY, 0.5)),
        ErrorKind::NotFinite
    );
    assert_eq!(
        kind(MoistAir::from_relative_humidity(298.15, ATMOSPHERE_PA, 50.0)),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        kind(MoistAir::from_relative_humidity(25.0, ATMOSPHERE_PA, 0.5)),
        ErrorKind::OutOfRange
    );
    // 100 °C saturated is steam, not air
    assert_eq!(kind(MoistAir::saturated(373.15, ATMOSPHERE_PA)), ErrorKind::OutOfRange);
    let fog = MoistAir::from_humidity_ratio(283.15, ATMOSPHERE_PA, 0.02).unwrap_err();
    assert_eq!(
        (fog.kind, fog.quantity),
        (ErrorKind::OutOfRange, Quantity::HumidityRatio)
    );
    assert!(fog.high < 0.008);
    assert_eq!(
        kind(MoistAir::from_dew_point(283.15, ATMOSPHERE_PA, 284.15)),
        ErrorKind::OutOfRange
    );
    assert_eq!(
        kind(MoistAir::from_wet_bulb(283.15, ATMOSPHERE_PA, 284.15)),
        ErrorKind::OutOfRange
    );
    // dry air at 40 °C has its wet bulb near 13 °C; none can be lower
    assert_eq!(
        kind(MoistAir::from_wet_bulb(313.15, ATMOSPHERE_PA, 280.15)),
        ErrorKind::OutOfRange
    );
    let dry = MoistAir::from_humidity_ratio(298.15, ATMOSPHERE_PA, 0.0).unwrap();
    assert_eq!(dry.dew_point_k().unwrap_err().quantity, Quantity::HumidityRatio);
    assert!(dry.wet_bulb_k().unwrap() < 283.15);
}

fn any_air() -> impl Strategy<Value = MoistAir> {
    (
        range::AIR_TEMPERATURE.low..368.15,
        range::BAROMETER.low..range::BAROMETER.high,
        0.0..=1.0f64,
    )
        .prop_filter_map("no air left", |(t_k, p_pa, humidity)| {
            MoistAir::from_relative_humidity(t_k, p_pa, humidity).ok()
        })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn any_humidity_gives_the_air_back(air in any_air()) {
        let (t_k, p_pa, ratio) = (air.t_k(), air.p_pa(), air.humidity_ratio());
        let again = MoistAir::from_relative_humidity(t_k, p_pa, air.relative_humidity().min(1.0)).unwrap();
        prop_assert!((again.humidity_ratio() - ratio).abs() <= 1e-12 * ratio * (1.0 + ratio / 0.62));
        let again = MoistAir::from_enthalpy(air.enthalpy_j_kg(), p_pa, ratio);
        if air.relative_humidity() < 1.0 - 1e-9 {
            prop_assert!((again.unwrap().t_k() - t_k).abs() <= 1e-10);
        }
        if let Ok(dew_k) = air.dew_point_k() {
            prop_assert!(dew_k <= t_k);
            // The formulas over ice and water agree to 1e-5 at the triple point; elsewhere the solver's tolerance of 1e-9 K decides.
            let again = MoistAir::from_dew_point(t_k, p_pa, dew_k).unwrap();
            let allowed = if (dew_k - 273.16).abs() < 0.01 { 1e-4 } else { 1e-8 };
            prop_assert!((again.humidity_ratio() / ratio - 1.0).abs() <= allowed * (1.0 + ratio / 0.62));
        }
        if let Ok(wet_k) = air.wet_bulb_k() {
            prop_assert!(wet_k <= t_k);
            if let Ok(again) = MoistAir::from_wet_bulb(t_k, p_pa, wet_k) {
                let allowed = if (wet_k - 273.155).abs() < 0.01 { 1e-4 } else { 1e-8 };
                prop_assert!((again.humidity_ratio() / ratio - 1.0).abs() <= allowed * (1.0 + ratio / 0.62) + 1e-10 / ratio);
            }
        }
    }

    /// Dew point, wet bulb and temperature are in ascending order, and equal when the air is saturated.
    #[test]
    fn the_wet_bulb_lies_between_dew_point_and_temperature(air in any_air()) {
        // Below freezing the frost point takes the place of the dew point; near it the wet bulb may carry water.
        if let (Ok(dew_k), Ok(wet_k)) = (air.dew_point_k(), air.wet_bulb_k()) {
            prop_assert!(dew_k <= wet_k + 0.05 && wet_k <= air.t_k(), "{dew_k} {wet_k} {}", air.t_k());
        }
    }

    #[test]
    fn boiling_is_the_inverse_of_saturation(t_k in range::WATER_TEMPERATURE.low..range::WATER_TEMPERATURE.high) {
        let p_pa = air::water_saturation_pressure_pa(t_k).unwrap();
        prop_assert!((air::water_boiling_point_k(p_pa).unwrap() - t_k).abs() <= 1e-5);
    }

    #[test]
    fn altitude_is_the_inverse_of_standard_pressure(altitude_m in -499.0..8_999.0f64) {
        prop_assert!((standard_altitude_m(standard_pressure_pa(altitude_m).unwrap()).unwrap() - altitude_m).abs() < 1e-8);
    }

    #[test]
    fn no_number_breaks_the_air(t_k in prop::num::f64::ANY, p_pa in prop::num::f64::ANY, x in prop::num::f64::ANY) {
        for air in [
            MoistAir::from_relative_humidity(t_k, p_pa, x),
            MoistAir::from_humidity_ratio(t_k, p_pa, x),
            MoistAir::from_dew_point(t_k, p_pa, x),
            MoistAir::from_wet_bulb(t_k, p_pa, x),
            MoistAir::from_enthalpy(t_k, p_pa, x),
        ].into_iter().flatten() {
            prop_assert!(air.enthalpy_j_kg().is_finite() && air.volume_m3_kg().is_finite());
        }
        if let Ok(t_k) = air::water_boiling_point_k(x) { prop_assert!(t_k.is_finite()) }
    }
}
