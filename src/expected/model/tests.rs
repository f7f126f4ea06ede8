//! Quantiles, bands and settling of a sound system.

#![allow(clippy::unwrap_used)] // a test ends that way

use super::*;
use crate::names::Expansion;
use crate::units::{Surroundings, TimeSpan, celsius};

fn model(refrigerant: Refrigerant) -> SoundModel {
    let system = System::new(refrigerant, Expansion::Txv, Compressor::VariableExternal);
    SoundModel::of(&system, &Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)).unwrap()
}

/// A normal deviate and its distribution function are inverse to each other: as many sound systems lie below a quantile as below
/// the deviate. Newton's method alone, or bisection, ends within 1e-4 of a scale; with the curvature the error is far less.
#[test]
fn as_many_lie_below_a_quantile_as_below_the_deviate() {
    let model = model(Refrigerant::R134a);
    assert!(model.components().len() > 1);
    for feature in [Feature::LowSide, Feature::Vent, Feature::Superheat] {
        let view = model.view(feature).unwrap();
        let z = [
            -2.5,
            -QUANTILE_95,
            -QUANTILE_80,
            -0.3,
            0.0,
            0.7,
            QUANTILE_80,
            QUANTILE_95,
            2.5,
        ];
        for (z, x) in z.into_iter().zip(model.quantiles(&view, z)) {
            let components = model.components().iter();
            let below: f64 = components.map(|of| of.weight * of.along(&view).below(x)).sum();
            assert!((below - normal_share(z)).abs() < 1e-9, "{feature} {z}: {below}");
            assert!(
                (model.deviation(feature, x, 0.0).unwrap() - z).abs() < 1e-7,
                "{feature} {z}"
            );
        }
    }
}

/// Ten of a hundred sound systems lie below the 80 % band and ten above it; of the 95 % band it is 25 of a thousand on either side.
#[test]
fn a_band_contains_the_share_that_it_names() {
    let model = model(Refrigerant::R134a);
    let (band, view) = (model.band(Feature::Vent).unwrap(), model.view(Feature::Vent).unwrap());
    let limits = [band.low_95, band.low_80, band.median, band.high_80, band.high_95];
    for (limit, share) in limits.into_iter().zip([0.025, 0.1, 0.5, 0.9, 0.975]) {
        let components = model.components().iter();
        let below: f64 = components.map(|of| of.weight * of.along(&view).below(limit)).sum();
        assert!((below - share).abs() < 1e-6, "{limit}: {below}");
    }
}

/// R-744 has one source, whose distribution is symmetric: a reading as far above the median as another lies below it deviates as
/// much, out to readings that no sound system shows, where one of the two tails is all but one.
#[test]
fn a_deviation_changes_its_sign_with_the_side() {
    let model = model(Refrigerant::R744);
    assert_eq!(model.components().len(), 1);
    let median = model.band(Feature::Vent).unwrap().median;
    let deviation = |off: f64| model.deviation(Feature::Vent, median + off, 0.5).unwrap();
    assert!(deviation(0.0).abs() < 1e-6);
    for off in [1.0, 5.0, 100.0, 1e5] {
        assert!(deviation(off) > 0.0 && deviation(off).is_finite(), "{off}");
        assert!(
            (deviation(off) + deviation(-off)).abs() < 1e-6 * deviation(off),
            "{off}"
        );
    }
}

/// The mean and the standard deviation over the sources are those of the band, as nearly as a mixture is symmetric: the scale of a
/// t distribution with five degrees of freedom is its 80 % limit over 1.476 (Abramowitz & Stegun, table 26.10).
#[test]
fn the_mean_below_the_ambient_is_that_of_the_band() {
    for refrigerant in [Refrigerant::R134a, Refrigerant::R744] {
        let model = model(refrigerant);
        for (feature, place) in [
            (Feature::Vent, FeatureVector::VENT),
            (Feature::HighSide, FeatureVector::HIGH_SIDE),
        ] {
            let (below_k, deviation_k) = model.below_ambient(place);
            let view = model.view(feature).unwrap();
            let [low, median, high] = model.quantiles(&view, [-QUANTILE_80, 0.0, QUANTILE_80]);
            assert!(
                (model.ambient_k - below_k - median).abs() < 0.2 * deviation_k,
                "{refrigerant} {feature}"
            );
            let of_band = 0.5 * (high - low) / 1.476;
            assert!(
                (0.85..1.02).contains(&(deviation_k / of_band)),
                "{refrigerant} {feature}: {deviation_k} {of_band}"
            );
        }
    }
}

fn after(seconds: f64) -> Conditions {
    Conditions {
        running_for: Some(TimeSpan::from_seconds(seconds)),
        ..Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)
    }
}

/// The vent has 5 % of its fall before it after ten minutes, which counts as settled; with a time constant that is a third of
/// them. Engineering judgement, `tables/bands/healthy.toml`.
#[test]
fn a_vent_has_five_per_cent_of_its_fall_before_it_after_ten_minutes() {
    assert!((1.0 - vent_to_come(&after(0.0)) - 0.05).abs() < 0.001);
    // Half of it has come after ln 2 of the time constant: 139 s.
    let half = vent_to_come(&after(139.0)) + 0.05;
    assert!((half - 0.5).abs() < 0.002, "{half}");
    assert_eq!((vent_to_come(&after(600.0)), vent_to_come(&after(3_600.0))), (0.0, 0.0));
}

/// Pressures scatter by 5 K more at the moment of switching on, by half of that after ln 2 of 90 s, and by less than any gauge tells
/// after five minutes. Engineering judgement, `tables/bands/healthy.toml`.
#[test]
fn pressures_settle_within_five_minutes() {
    let scatter_k = |seconds: f64| {
        let mut passing = Symmetric::ZERO;
        add_unsettled(&mut passing, &after(seconds));
        let [low, high] = [FeatureVector::LOW_SIDE, FeatureVector::HIGH_SIDE].map(|i| sqrt(passing.at(i, i)));
        assert!((low - high).abs() < 1e-12 && passing.at(FeatureVector::VENT, FeatureVector::VENT) <= 0.0);
        low
    };
    assert!((scatter_k(0.0) - 5.0).abs() < 1e-9);
    assert!((scatter_k(62.4) - 2.5).abs() < 0.01, "{}", scatter_k(62.4));
    assert!(scatter_k(300.0) < 0.2);
}
