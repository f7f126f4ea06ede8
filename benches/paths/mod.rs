//! The hot paths, once for every program that measures them: one pass goes over `INPUTS` different inputs without an order, so
//! that the processor cannot learn to predict branches.

use coldloop::inner::eos::{Isotherm, Properties};
use coldloop::saturation::Side;
use coldloop::saturation::{self, Charge, Pure, State};
use coldloop::units::{in_kelvins, kelvins};
use coldloop::{Reference, Refrigerant};
use std::hint::black_box;

/// Calls in one pass.
pub(crate) const INPUTS: usize = 1_000;

/// Three blends that vehicles have: one with glide, one with nearly none, one near an azeotrope.
pub(crate) const BLENDS: [Refrigerant; 3] = [Refrigerant::R407C, Refrigerant::R410A, Refrigerant::R513A];

/// A call, done for every input by `pass`, which returns the sum of the answers.
pub(crate) struct Path {
    /// What is calculated.
    pub(crate) what: &'static str,
    /// Of which refrigerant.
    pub(crate) refrigerant: Refrigerant,
    /// One pass.
    pub(crate) pass: Box<dyn FnMut() -> f64>,
}

/// The inputs: saturation between 250 and 300 K, and states about it as a vehicle has them, 15 K superheated or 8 K
/// subcooled.
struct Inputs {
    temperatures: Vec<f64>,
    pressures: Vec<f64>,
    superheated: Vec<State>,
    subcooled: Vec<State>,
    wet: Vec<State>,
}

impl Inputs {
    fn of(pure: &Pure) -> Self {
        // The fractional parts of multiples of the golden ratio.
        let scattered = |k: usize| (k as f64 * 0.618_033_988_749_894_9).fract();
        let temperatures: Vec<f64> = (0..INPUTS).map(|k| 250.0 + 50.0 * scattered(k)).collect();
        let pressure = |t: &f64| pure.pressure_pa(*t).unwrap_or(f64::NAN);
        let pressures: Vec<f64> = temperatures.iter().map(pressure).collect();
        let states = |warmer: f64, share: f64| {
            let points = temperatures.iter().zip(&pressures);
            let state = |(t, p): (&f64, &f64)| pure.state_tp(t + warmer, share * p, Reference::Iir).ok();
            points.filter_map(state).collect::<Vec<_>>()
        };
        let (superheated, subcooled) = (states(15.0, 0.9), states(-8.0, 1.1));
        let wet = |(k, t): (usize, &f64)| pure.state_tq(*t, scattered(7 * k), Reference::Iir).ok();
        let wet: Vec<State> = temperatures.iter().enumerate().filter_map(wet).collect();
        let every = [superheated.len(), subcooled.len(), wet.len()]
            .iter()
            .all(|n| *n == INPUTS);
        assert!(every, "{}: an input has no state", pure.fluid.facts.name);
        Self {
            temperatures,
            pressures,
            superheated,
            subcooled,
            wet,
        }
    }
}

/// Every hot path of the properties of a pure refrigerant.
pub(crate) fn of(refrigerant: Refrigerant) -> Vec<Path> {
    let Ok(pure) = saturation::pure(refrigerant) else {
        return Vec::new();
    };
    let iir = Reference::Iir;
    let inputs: &'static Inputs = Box::leak(Box::new(Inputs::of(pure)));
    let Inputs {
        temperatures: t,
        pressures: p,
        superheated,
        subcooled,
        wet,
    } = inputs;
    let of_temperature =
        |state: Result<State, coldloop::Error>| state.map_or(f64::NAN, |state| in_kelvins(state.temperature()));
    let of_enthalpy = |state: Result<State, coldloop::Error>| state.map_or(f64::NAN, |state| state.enthalpy().j_kg());
    let mut paths = Vec::new();
    let mut add = |what, pass| {
        paths.push(Path {
            what,
            refrigerant,
            pass,
        });
    };
    add("psat(T)", each(move |k| pure.pressure_pa(t[k]).unwrap_or(f64::NAN)));
    add(
        "psat(T), array",
        array(move |found| pure.pressures_pa(t, found).is_ok()),
    );
    add("Tsat(p)", each(move |k| pure.temperature_k(p[k]).unwrap_or(f64::NAN)));
    add(
        "Tsat(p), array",
        array(move |found| pure.temperatures_k(p, found).is_ok()),
    );
    add(
        "saturated liquid: rho, h, s",
        each(move |k| pure.liquid(t[k]).map_or(f64::NAN, |branch| branch.h_j_kg)),
    );
    let equation = &pure.fluid.equation;
    add(
        "all of (T, rho), the equation alone",
        each(move |k| {
            Properties::new(
                &Isotherm::new(equation, t[k] + 15.0),
                superheated[k].molar_density().mol_m3(),
            )
            .h_j_kg
        }),
    );
    add(
        "h(T, p) superheated",
        each(move |k| of_enthalpy(pure.state_tp(t[k] + 15.0, 0.9 * p[k], iir))),
    );
    add(
        "h(T, p) subcooled",
        each(move |k| of_enthalpy(pure.state_tp(t[k] - 8.0, 1.1 * p[k], iir))),
    );
    for (name_h, name_s, states) in [
        ("T(p, h) superheated", "T(p, s) superheated", superheated),
        ("T(p, h) subcooled", "T(p, s) subcooled", subcooled),
        ("T(p, h) two-phase", "T(p, s) two-phase", wet),
    ] {
        add(
            name_h,
            each(move |k| of_temperature(pure.state_ph(states[k].pressure().pa(), states[k].enthalpy().j_kg(), iir))),
        );
        add(
            name_s,
            each(move |k| of_temperature(pure.state_ps(states[k].pressure().pa(), states[k].entropy().j_kg_k(), iir))),
        );
    }
    for (name, states) in [("T(h, s) superheated", superheated), ("T(h, s) two-phase", wet)] {
        add(
            name,
            each(move |k| {
                of_temperature(pure.state_hs(states[k].enthalpy().j_kg(), states[k].entropy().j_kg_k(), iir))
            }),
        );
    }
    paths
}

/// Both lines of a blend in both directions, from evaporating at 250 K to condensing at 335 K.
pub(crate) fn of_blend(refrigerant: Refrigerant) -> Vec<Path> {
    let Some(blend) = saturation::blend(refrigerant) else {
        return Vec::new();
    };
    let t_k = |k: usize| 250.0 + 85.0 * (k as f64 * 0.618_033_988_749_894_9).fract();
    let temperatures: &'static [f64] = Vec::leak((0..INPUTS).map(t_k).collect());
    let mut paths = Vec::new();
    for (of_temperature, of_pressure, side) in [
        ("bubble p(T)", "bubble T(p)", Side::Bubble),
        ("dew p(T)", "dew T(p)", Side::Dew),
    ] {
        let pressure = move |t_k: &f64| blend.pressure_pa(side, *t_k).unwrap_or(f64::NAN);
        let pressures: &'static [f64] = Vec::leak(temperatures.iter().map(pressure).collect());
        assert!(pressures.iter().all(|p_pa| p_pa.is_finite()), "{refrigerant}");
        paths.push(Path {
            what: of_temperature,
            refrigerant,
            pass: each(move |k| pressure(&temperatures[k])),
        });
        paths.push(Path {
            what: of_pressure,
            refrigerant,
            pass: each(move |k| blend.temperature_k(side, pressures[k]).unwrap_or(f64::NAN)),
        });
    }
    paths
}

/// Calculations by the mixture model itself: the vapour of a blend 15 K above its dew point, and the lines of a charge that
/// is not listed, that blend with a tenth of R-134a added.
pub(crate) fn of_charge(refrigerant: Refrigerant) -> Vec<Path> {
    let charge = Charge::new(&[(refrigerant, 0.9), (Refrigerant::R134a, 0.1)], 0.0);
    let (Some(blend), Ok(charge)) = (saturation::blend(refrigerant), charge) else {
        return Vec::new();
    };
    let t_k = |k: usize| 250.0 + 50.0 * (k as f64 * 0.618_033_988_749_894_9).fract();
    let temperatures: &'static [f64] = Vec::leak((0..INPUTS).map(t_k).collect());
    let pressure = |t_k: &f64| 0.9 * blend.pressure_pa(Side::Dew, *t_k).unwrap_or(f64::NAN);
    let pressures: &'static [f64] = Vec::leak(temperatures.iter().map(pressure).collect());
    let state = move |k: usize| blend.state_tp(temperatures[k] + 15.0, pressures[k], Reference::Iir);
    vec![
        Path {
            what: "h(T, p) superheated",
            refrigerant,
            pass: each(move |k| state(k).map_or(f64::NAN, |state| state.enthalpy().j_kg())),
        },
        Path {
            what: "bubble p(T), any charge",
            refrigerant,
            pass: each(move |k| {
                charge
                    .bubble_pressure(kelvins(temperatures[k]))
                    .map_or(f64::NAN, |p| p.pa())
            }),
        },
        Path {
            what: "dew p(T), any charge",
            refrigerant,
            pass: each(move |k| {
                charge
                    .dew_pressure(kelvins(temperatures[k]))
                    .map_or(f64::NAN, |p| p.pa())
            }),
        },
    ]
}

/// A pass that calls `call` with each number below `INPUTS`.
fn each(call: impl Fn(usize) -> f64 + 'static) -> Box<dyn FnMut() -> f64> {
    Box::new(move || (0..INPUTS).map(|k| call(black_box(k))).sum())
}

/// A pass that fills an array.
fn array(fill: impl Fn(&mut [f64]) -> bool + 'static) -> Box<dyn FnMut() -> f64> {
    let mut found = [0.0; INPUTS];
    Box::new(move || {
        let whole = fill(black_box(&mut found));
        if whole { found[INPUTS / 2] } else { f64::NAN }
    })
}
