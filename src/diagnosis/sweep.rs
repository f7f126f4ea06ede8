//! Vehicles drawn from the fault table itself: the answer by that table must find its way back.

use super::*;
use crate::circuit::Readings;
use crate::names::{Compressor, Expansion, Refrigerant, VerdictKind};
use crate::numerics::sqrt;
use crate::saturation;
use crate::units::{AbsolutePressure, Pressure, Surroundings, celsius, kelvins};
use crate::vehicle::{Conditions, System};
use density::TwoPiece;
use fault_table::FAULTS;
use faults::{FaultRow, SEVERITIES};
use features::FEATURES;

/// The figures of a vehicle, in the order of `Feature`; `NaN` where there is none.
type Figures = [f64; FEATURES];

fn vehicle(expansion: Expansion, compressor: Compressor, ambient_c: f64) -> Case {
    let system = System::new(Refrigerant::R134a, expansion, compressor);
    let mut conditions = Conditions::new(celsius(ambient_c), Surroundings::SEA_LEVEL);
    conditions.running_s = Some(900.0);
    conditions.relative_humidity = Some(0.5);
    Case::new(system, conditions, Readings::default())
}

/// The readings that show these figures on good instruments.
fn showing(mut case: Case, figures: &Figures) -> Case {
    let refrigerant = case.system.refrigerant;
    let at = |feature: Feature| figures[features::place(feature)];
    let (low_k, high_k) = (at(Feature::LowSide), f64::min(at(Feature::HighSide), 368.0));
    let side = |t_k: f64| {
        let pressure: Pressure =
            AbsolutePressure::from_pa(saturation::dew_pressure_pa(refrigerant, t_k).unwrap()).into();
        Some(Reading {
            value: pressure,
            standard_uncertainty: 5_000.0,
        })
    };
    let line = |t_k: f64| {
        Some(Reading {
            value: kelvins(t_k.clamp(200.0, 470.0)), // the far tail of a draw is no line
            standard_uncertainty: 0.5,
        })
    };
    case.readings.low_side = side(low_k);
    case.readings.high_side = side(high_k);
    case.readings.vent = line(at(Feature::Vent));
    case.readings.suction_line = line(low_k + at(Feature::Superheat));
    case.readings.liquid_line = line(high_k - at(Feature::Subcooling));
    case.readings.discharge_line = line(high_k + at(Feature::DischargeSuperheat));
    let cycles_hz = libm::expm1(f64::max(at(Feature::ClutchCycles), 0.0)) / 60.0;
    case.readings.clutch_cycles_hz = cycles_hz.is_finite().then_some(Reading {
        value: cycles_hz,
        standard_uncertainty: 0.002,
    });
    case
}

/// The figures of a vehicle with one fault, `draw` giving each about its median.
fn figures(
    case: &Case,
    row: &'static FaultRow,
    severity: usize,
    rest_k: f64,
    mut draw: impl FnMut(Feature, f64, crate::expected::Spread) -> f64,
) -> Figures {
    let scene = Scene::running(case, &healthy(case).unwrap()).unwrap();
    core::array::from_fn(|i| {
        let feature = Feature::ALL[i];
        let Some(spread) = scene.healthy[i] else {
            return f64::NAN;
        };
        let effect = scene.effect(row, feature);
        let unmoved = effect.map_or(1.0, |effect| effect.no_change * chart::UNMOVED[severity]);
        let left = effect.map_or(spread, |effect| {
            scene
                .motion(effect, (severity, rest_k))
                .of(TwoPiece::of(spread))
                .spread()
        });
        draw(feature, unmoved, left)
    })
}

fn systems() -> impl Iterator<Item = (Expansion, Compressor)> {
    Expansion::ALL
        .into_iter()
        .flat_map(|expansion| Compressor::ALL.map(|compressor| (expansion, compressor)))
}

/// The answer by the tables of the trade alone.
fn by_tables(case: &Case, settings: &Settings) -> Diagnosis {
    let healthy = healthy(case).unwrap();
    let mut scene = Scene::running(case, &healthy).unwrap();
    scene.cloud = None;
    running(case, settings, &scene, (&healthy, derived(case).unwrap())).unwrap()
}

#[test]
fn each_fault_at_moderate_severity_is_among_the_first_three() {
    let (mut first, mut all) = (0, 0);
    for (expansion, compressor) in systems() {
        let case = vehicle(expansion, compressor, 28.0);
        for row in FAULTS
            .iter()
            .filter(|row| row.exists(bit_of(&case)) && row.fault != Fault::GaugeError)
        {
            for severity in [1, 2] {
                let typical = figures(&case, row, severity, 0.0, |_, _, left| left.median);
                let answer = by_tables(&showing(case, &typical), &Settings::default());
                let place = answer
                    .faults
                    .iter()
                    .position(|ranked| ranked.fault == row.fault)
                    .unwrap();
                all += 1;
                first += usize::from(place == 0);
                assert!(
                    place < 3,
                    "{} {expansion} {compressor} {severity}: place {place}",
                    row.fault
                );
            }
        }
    }
    assert!(first * 3 >= all * 2, "{first} of {all} in the first place");
}

fn bit_of(case: &Case) -> u8 {
    faults::bit(&case.system)
}

/// Numbers between 0 and 1 from a counter. Source: Steele, Lea & Flood 2014 (SplitMix64).
struct Random(u64);

impl Random {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    /// A place in a list of weights.
    fn among(&mut self, weights: impl Iterator<Item = f64> + Clone) -> usize {
        let mut left = self.next() * weights.clone().sum::<f64>();
        for (place, weight) in weights.enumerate() {
            left -= weight;
            if left < 0.0 {
                return place;
            }
        }
        0
    }

    /// A standard normal figure (Box & Muller).
    fn normal(&mut self) -> f64 {
        let (a, b) = (self.next(), self.next());
        sqrt(-2.0 * libm::log(1.0 - a)) * libm::cos(2.0 * core::f64::consts::PI * b)
    }

    /// The scaled t distribution with five degrees of freedom that the likelihoods assume.
    fn t5(&mut self) -> f64 {
        let chi2: f64 = (0..5).map(|_| self.normal()).map(|x| x * x).sum();
        0.762_459_4 * self.normal() / sqrt(chi2 / 5.0)
    }
}

/// Vehicles drawn from the priors: of the answers given with a probability, that share is right.
#[test]
fn probabilities_are_kept() {
    const DRAWS: usize = 3_000;
    let mut random = Random(1);
    let settings = Settings::default();
    let case = vehicle(Expansion::Txv, Compressor::VariableInternal, 30.0);
    let listed = |row: &FaultRow| row.exists(bit_of(&case)) && row.fault != Fault::GaugeError;
    let priors = FAULTS
        .iter()
        .map(|row| if listed(row) { settings.prior(row.fault) } else { 0.0 });
    let mut bins = [(0.0, 0.0, 0.0); 5];
    let (mut named, mut right) = (0, 0);
    let (mut sound, mut alarms) = (0, 0);
    for _ in 0..DRAWS {
        let row = &FAULTS[random.among(priors.clone())];
        let severity = random.among((0..SEVERITIES).map(|s| row.weight[s]));
        let rest_k = row.rest_spread_k * random.normal();
        let drawn = figures(&case, row, severity, rest_k, |feature, unmoved, left| {
            let still = random.next() < unmoved;
            let sound =
                Scene::running(&case, &healthy(&case).unwrap()).unwrap().healthy[features::place(feature)].unwrap();
            let spread = if still { sound } else { left };
            let up = random.next() * (spread.up + spread.down) < spread.up;
            spread.median + libm::fabs(random.t5()) * if up { spread.up } else { -spread.down }
        });
        let answer = by_tables(&showing(case, &drawn), &settings);
        let best = answer.faults[0];
        let bin = &mut bins[((best.probability * 5.0) as usize).min(4)];
        let hit = best.fault == row.fault;
        *bin = (bin.0 + 1.0, bin.1 + best.probability, bin.2 + f64::from(u8::from(hit)));
        if row.fault == Fault::NoFault {
            sound += 1;
            alarms += usize::from(answer.verdict.kind == VerdictKind::NamedFault);
        }
        if answer.verdict.kind == VerdictKind::NamedFault {
            named += 1;
            right += usize::from(answer.verdict.faults[0] == row.fault);
        }
    }
    for (count, said, right) in bins {
        // Three standard errors of a share, and what the instruments and the two extra hypotheses take away.
        let tolerance = 3.0 * sqrt(0.25 / f64::max(count, 1.0)) + 0.04;
        assert!(count < 20.0 || libm::fabs(said - right) / count < tolerance, "{bins:?}");
    }
    assert!(alarms * 50 <= sound, "{alarms} false alarms in {sound} sound vehicles");
    assert!(
        named > DRAWS / 5 && right * 10 >= named * 8,
        "{right} of {named} named rightly; {bins:?}"
    );
}
