//! The fault table held to the tables and figures that were published.

use super::density::TwoPiece;
use super::faults::{bit, row};
use super::scene::Scene;
use super::{Case, features};
use crate::circuit::Readings;
use crate::expected::Healthy;
use crate::names::{Compressor, Expansion, Fault, Feature, Refrigerant};
use crate::units::{Surroundings, celsius};
use crate::vehicle::{Conditions, System};

/// How far a fault moves the median of a figure at one of its severities, in the figure's unit.
fn moved(expansion: Expansion, fault: Fault, feature: Feature, severity: usize) -> f64 {
    let system = System::new(Refrigerant::R134a, expansion, Compressor::FixedClutch);
    let conditions = Conditions::new(celsius(35.0), Surroundings::SEA_LEVEL);
    let case = Case::new(system, conditions, Readings::default());
    let scene = Scene::running(&case, &Healthy::of(&system, &conditions).unwrap()).unwrap();
    let healthy = scene.healthy[features::place(feature)].unwrap();
    assert!(row(fault).exists(bit(&system)));
    scene.effect(row(fault), feature).map_or(0.0, |effect| {
        scene.motion(effect, (severity, 0.0)).of(TwoPiece::of(healthy)).median - healthy.median
    })
}

/// The discharge temperature is the condensing temperature and the superheat above it.
fn discharge(expansion: Expansion, fault: Fault, severity: usize) -> f64 {
    moved(expansion, fault, Feature::HighSide, severity)
        + moved(expansion, fault, Feature::DischargeSuperheat, severity)
}

/// Signs of evaporating temperature, superheat, condensing temperature, subcooling and discharge temperature.
fn signs(expansion: Expansion, fault: Fault) -> [f64; 5] {
    let of = |feature| moved(expansion, fault, feature, 2);
    [
        of(Feature::LowSide),
        of(Feature::Superheat),
        of(Feature::HighSide),
        of(Feature::Subcooling),
        discharge(expansion, fault, 2),
    ]
}

/// Source: Rossi, T.M. & Braun, J.E., 1997, HVAC&R Research 3(1):19-37, rules for a fixed orifice, as reprinted by Li &
/// Braun. A figure that the table leaves alone contradicts nothing.
#[test]
fn no_rule_for_a_fixed_orifice_is_contradicted() {
    const RULES: [(Fault, [f64; 5]); 5] = [
        (Fault::Undercharge, [-1.0, 1.0, -1.0, -1.0, 1.0]),
        (Fault::WornCompressor, [1.0, -1.0, -1.0, -1.0, -1.0]),
        (Fault::LiquidLineRestriction, [-1.0, 1.0, -1.0, 1.0, 1.0]),
        (Fault::CondenserAirflowLoss, [1.0, -1.0, 1.0, -1.0, 1.0]),
        (Fault::EvaporatorAirflowLoss, [-1.0, -1.0, -1.0, -1.0, -1.0]),
    ];
    for (fault, rule) in RULES {
        let signs = signs(Expansion::OrificeTube, fault);
        for (figure, (ours, published)) in signs.into_iter().zip(rule).enumerate() {
            assert!(ours * published >= 0.0, "{fault}, figure {figure}: {ours}");
        }
        assert!(signs[0] != 0.0 && signs[2] != 0.0, "both pressures move");
    }
}

/// Source: ASHRAE RP-1043, means of the measured residuals at 1 % of non-condensable gas: condensing +4.22 °F,
/// subcooling +4.18 °F, discharge +5.30 °F, evaporating -0.03 °F.
#[test]
fn air_raises_condensing_and_false_subcooling_alike_and_leaves_the_low_side() {
    for severity in 0..3 {
        let of = |feature| moved(Expansion::Txv, Fault::NonCondensables, feature, severity);
        let (condensing, subcooling) = (of(Feature::HighSide), of(Feature::Subcooling));
        assert!((subcooling / condensing - 4.18 / 4.22).abs() < 0.05);
        let ratio = discharge(Expansion::Txv, Fault::NonCondensables, severity) / condensing;
        assert!((ratio - 5.30 / 4.22).abs() < 0.1, "{ratio}");
        assert!(of(Feature::LowSide) < 0.15 * condensing);
    }
}

/// Source: Cheung & Braun 2015, NREL/SR-5500-65030: capacity at 19.4 °C wet bulb, 35 °C outdoor.
#[test]
fn the_vent_loses_what_the_capacity_loses() {
    const LOSSES: [(Fault, f64, f64); 7] = [
        (Fault::Undercharge, 0.1, 0.052),
        (Fault::Undercharge, 0.2, 0.120),
        (Fault::Undercharge, 0.3, 0.203),
        (Fault::Overcharge, 0.3, 0.098),
        (Fault::LiquidLineRestriction, 0.6, 0.215), // at a 30 % rise of the pressure drop
        (Fault::CondenserAirflowLoss, 0.3, 0.003),
        (Fault::CondenserAirflowLoss, 0.5, 0.044),
    ];
    for (fault, severity, published) in LOSSES {
        let effect = row(fault)
            .effects
            .iter()
            .find(|effect| effect.feature == Feature::Vent)
            .unwrap();
        let grid = row(fault).severity;
        let at = grid.iter().rposition(|s| *s <= severity).unwrap().min(grid.len() - 2);
        let share = (severity - grid[at]) / (grid[at + 1] - grid[at]);
        let ours = effect.size[at] + share * (effect.size[at + 1] - effect.size[at]);
        // The sizes are rounded, and a car differs from a rooftop unit.
        assert!((ours - published).abs() < 0.07, "{fault} {severity}: {ours}");
    }
}
