//! What each fault does to each reading.
//!
//! Generated from tables/faults by tables/compile; edit the tables, not this file.

use super::faults::{Effect, FaultRow, Toward};
use crate::names::{Fault, Feature};

/// One row per fault, in the order of its code.
pub(super) const FAULTS: [FaultRow; 21] = [
    FaultRow {
        fault: Fault::NoFault,
        systems: 0b11111111,
        // engineering judgement: checks without a complaint, and checks after a repair
        prior: 0.4,
        measure: "",
        severity: [0.0, 0.0, 0.0, 0.0],
        weight: [1.0, 0.0, 0.0, 0.0],
        rest_spread_k: 0.0,
        effects: &[],
    },
    FaultRow {
        fault: Fault::WornCompressor,
        systems: 0b11111111,
        // @association-2016-a: 23.5 % of poor-cooling complaints are component failure; the share among components is engineering judgement
        prior: 0.06,
        measure: "share of the delivery lost",
        severity: [0.2, 0.45, 0.7, 0.95],
        weight: [0.2, 0.4, 0.25, 0.15],
        rest_spread_k: 4.0,
        effects: &[
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): +; common practice, no source: 60-80 psig at 74 °F is 0.34 to 0.61 of the way, 115 psig all of it
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Rest(12.0),
                size: [0.2, 0.45, 0.7, 0.97],
                no_change: 0.02,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): -; common practice, no source: 125 psig at 74 °F is 0.8 of the way
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Rest(12.0),
                size: [0.35, 0.75, 0.9, 0.95],
                no_change: 0.05,
            },
            // common practice, no source: never below 60 °F at 74 °F, more than 0.55 of the way
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.2, 0.55, 0.8, 0.97],
                no_change: 0.03,
            },
            // @Rossi1997: -; @Chen2001, @Kim2008 (from memory): 0; sizes engineering judgement
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.5, -2.5, -3.0],
                no_change: 0.5,
            },
            // @Rossi1997: -; @Chen2001, @Kim2008 (from memory): 0 or -; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -2.5, -4.0, -5.0],
                no_change: 0.3,
            },
            // @Rossi1997: discharge -; later tests of hot-gas recirculation show +: half the chance on no change; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -4.0, -8.0, -14.0],
                no_change: 0.5,
            },
            // physics: a low side that stays high never lets the clutch go; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.3, -0.8, -1.0, -1.0],
                no_change: 0.2,
            },
        ],
    },
    FaultRow {
        fault: Fault::Undercharge,
        systems: 0b11111111,
        // @association-2016-a: 53 % of poor-cooling complaints are low charge; lowered because leaks found at once are seldom diagnosed by readings
        prior: 0.42,
        measure: "share of the charge missing",
        severity: [0.1, 0.25, 0.4, 0.65],
        weight: [0.15, 0.35, 0.3, 0.2],
        rest_spread_k: 0.0,
        effects: &[
            // @Chen2001, @Kim2008 (from memory): 0, - when severe; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b00000001,
                toward: Toward::Nothing,
                size: [0.0, -2.0, -7.0, -16.0],
                no_change: 0.3,
            },
            // @Rossi1997: -; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b00010000,
                toward: Toward::Nothing,
                size: [-1.0, -4.0, -9.0, -17.0],
                no_change: 0.1,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): -; a compressor that holds the low side hides it (sizes engineering judgement)
            Effect {
                feature: Feature::LowSide,
                systems: 0b11101110,
                toward: Toward::Nothing,
                size: [0.0, -1.0, -4.0, -11.0],
                no_change: 0.5,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): -; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -4.0, -8.0, -14.0],
                no_change: 0.15,
            },
            // @Cheung2015: capacity 0.948, 0.88, 0.797 at 10, 20, 30 % under; beyond that sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.04, 0.12, 0.3, 0.7],
                no_change: 0.15,
            },
            // @Chen2001, @Kim2008 (from memory): 0, + when severe; @Comstock1999: +; sizes engineering judgement: a starved evaporator warms the gas towards the air that enters
            Effect {
                feature: Feature::Superheat,
                systems: 0b00001111,
                toward: Toward::Nothing,
                size: [0.0, 3.0, 10.0, 24.0],
                no_change: 0.3,
            },
            // @Rossi1997: +; sizes engineering judgement: the accumulator hides it until it is empty, then the gas warms towards the air that enters
            Effect {
                feature: Feature::Superheat,
                systems: 0b11110000,
                toward: Toward::Nothing,
                size: [1.0, 4.0, 12.0, 25.0],
                no_change: 0.15,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): -; at most all of the subcooling
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.5, -4.5, -6.5, -7.5],
                no_change: 0.15,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): discharge +; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 4.0, 9.0, 14.0],
                no_change: 0.25,
            },
            // common practice, no source: very rapid cycling points to low charge; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.1, 0.5, 0.9, 1.1],
                no_change: 0.2,
            },
            // physics: saturated while any liquid is left; the last severity at rest in a warm vehicle
            Effect {
                feature: Feature::RestPressure,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.0, 0.0, 0.0, -26.0],
                no_change: 0.5,
            },
        ],
    },
    FaultRow {
        fault: Fault::Overcharge,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.06,
        measure: "share of the charge in excess",
        severity: [0.1, 0.2, 0.35, 0.5],
        weight: [0.2, 0.35, 0.3, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // @Chen2001, @Kim2008 (from memory): 0; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b00001111,
                toward: Toward::Nothing,
                size: [0.0, 0.5, 2.0, 4.0],
                no_change: 0.5,
            },
            // engineering judgement: an orifice passes more at a higher high side
            Effect {
                feature: Feature::LowSide,
                systems: 0b11110000,
                toward: Toward::Nothing,
                size: [0.5, 2.0, 4.0, 6.0],
                no_change: 0.3,
            },
            // @Chen2001, @Kim2008 (from memory), @Comstock1999: +; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.0, 5.0, 9.0, 14.0],
                no_change: 0.1,
            },
            // @Cheung2015: capacity 0.902 at 30 % over; @Atik2011: up to 25 % of capacity lost 20 % above the optimum of a R-134a bench
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.01, 0.05, 0.12, 0.25],
                no_change: 0.3,
            },
            // @Chen2001, @Kim2008 (from memory): 0; with an orifice engineering judgement
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.5, -3.0, -4.0],
                no_change: 0.6,
            },
            // @Chen2001, @Kim2008 (from memory), @Comstock1999 (+1.39 °F at 10 %): +; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.0, 5.0, 8.0, 12.0],
                no_change: 0.1,
            },
        ],
    },
    FaultRow {
        fault: Fault::CondenserAirflowLoss,
        systems: 0b11111111,
        // engineering judgement; @association-2015-a: 34 % of 667 vehicles had a fault outside the circuit only
        prior: 0.07,
        measure: "share of the air flow lost",
        severity: [0.2, 0.4, 0.6, 0.85],
        weight: [0.2, 0.35, 0.3, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // @Rossi1997: +; @Chen2001, @Kim2008 (from memory): 0 or +; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.3, 1.0, 2.5, 5.0],
                no_change: 0.3,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): +; @article-2016-a: +; sizes engineering judgement: approach in inverse proportion to the air flow, with a smaller heat rejected
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.5, 6.0, 12.0, 22.0],
                no_change: 0.05,
            },
            // @Cheung2015: capacity 0.997 and 0.956 at 30 and 50 % lost; @Datta2014: -8.2 % at 50 %
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.01, 0.05, 0.14, 0.35],
                no_change: 0.2,
            },
            // @Rossi1997: -; @Chen2001, @Kim2008 (from memory): 0 or -; @Comstock1999: +0.3 to +0.6 °F, so half the chance on no change; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.0, -1.5, -2.0],
                no_change: 0.5,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory), @article-2016-a: discharge +, more than the condensing temperature; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.5, 1.5, 3.0, 6.0],
                no_change: 0.3,
            },
        ],
    },
    FaultRow {
        fault: Fault::NonCondensables,
        systems: 0b11111111,
        // @association-2016-a: 8.6 % of vehicles carry contaminated refrigerant, half of those excess air
        prior: 0.045,
        measure: "gas as a share of what the circuit holds at one atmosphere",
        severity: [0.05, 0.15, 0.3, 0.6],
        weight: [0.2, 0.35, 0.3, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // @Comstock1999: -0.03 °F; @Chen2001, @Kim2008 (from memory): 0; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.0, 0.4, 1.0, 2.0],
                no_change: 0.6,
            },
            // @Comstock1999: +4.22 °F at 1 %; @Chen2001, @Kim2008 (from memory): +; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.5, 5.5, 10.0, 16.0],
                no_change: 0.05,
            },
            // engineering judgement: more work of the compressor, less mass flow
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.01, 0.05, 0.12, 0.25],
                no_change: 0.25,
            },
            // @Comstock1999: +4.18 °F, false, as much as the condensing rise
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.5, 5.5, 10.0, 15.0],
                no_change: 0.05,
            },
            // @Comstock1999: discharge +5.30 °F against condensing +4.22 °F; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.5, 1.0, 2.0, 3.0],
                no_change: 0.4,
            },
            // physics: the partial pressure of the gas adds to saturation; sizes engineering judgement
            Effect {
                feature: Feature::RestPressure,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.0, 5.0, 9.0, 15.0],
                no_change: 0.1,
            },
        ],
    },
    FaultRow {
        fault: Fault::LiquidLineRestriction,
        systems: 0b11111111,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.025,
        measure: "share of the flow area blocked",
        severity: [0.3, 0.6, 0.8, 0.95],
        weight: [0.2, 0.35, 0.3, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // @Chen2001, @Kim2008 (from memory): 0, - when severe: the valve opens until it is full open (@Cheung2014); sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b00001111,
                toward: Toward::Nothing,
                size: [-0.5, -3.0, -9.0, -19.0],
                no_change: 0.25,
            },
            // @Rossi1997: -; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11110000,
                toward: Toward::Nothing,
                size: [-1.5, -5.0, -11.0, -20.0],
                no_change: 0.1,
            },
            // @Rossi1997: -; @Chen2001, @Kim2008 (from memory): 0 or -; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -2.0, -4.0, -7.0],
                no_change: 0.35,
            },
            // @Cheung2015: capacity 0.785 at a 30 % rise of the pressure drop; beyond that sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.03, 0.15, 0.4, 0.75],
                no_change: 0.1,
            },
            // @Rossi1997: +; @Chen2001, @Kim2008 (from memory): 0, + when severe; sizes engineering judgement: a starved evaporator warms the gas towards the air that enters
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.5, 4.0, 12.0, 25.0],
                no_change: 0.2,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): +; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 3.0, 5.0, 7.0],
                no_change: 0.2,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): discharge +; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.5, 3.0, 7.0, 11.0],
                no_change: 0.25,
            },
            // physics: the low side reaches the cut-out sooner; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.1, 0.4, 0.8, 1.0],
                no_change: 0.3,
            },
        ],
    },
    FaultRow {
        fault: Fault::ExpansionValveStuckOpen,
        systems: 0b00001111,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.02,
        measure: "least opening of the valve",
        severity: [0.15, 0.35, 0.6, 1.0],
        weight: [0.2, 0.35, 0.3, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // @Chen2001, @Kim2008 (from memory): +; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.0, 5.0, 9.0, 13.0],
                no_change: 0.05,
            },
            // @Chen2001, @Kim2008 (from memory): 0 or +; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.0, 1.0, 1.5, 2.0],
                no_change: 0.4,
            },
            // @Chen2001, @Kim2008 (from memory): air drop 0 or -; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.03, 0.1, 0.22, 0.4],
                no_change: 0.15,
            },
            // @Chen2001, @Kim2008 (from memory): -; at most all of the superheat
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-3.0, -5.5, -7.5, -8.0],
                no_change: 0.05,
            },
            // @Chen2001, @Kim2008 (from memory): -; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -2.0, -4.0, -6.0],
                no_change: 0.2,
            },
            // @Chen2001, @Kim2008 (from memory): discharge -; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-3.0, -7.0, -11.0, -15.0],
                no_change: 0.15,
            },
            // physics: the low side stays above the cut-out; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.3, -0.7, -1.0, -1.0],
                no_change: 0.3,
            },
        ],
    },
    FaultRow {
        fault: Fault::ExpansionValveStuckClosed,
        systems: 0b00001111,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.025,
        measure: "share of the opening out of reach",
        severity: [0.15, 0.35, 0.6, 0.9],
        weight: [0.2, 0.3, 0.3, 0.2],
        rest_spread_k: 0.0,
        effects: &[
            // @Chen2001, @Kim2008 (from memory): -; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-3.0, -7.0, -13.0, -23.0],
                no_change: 0.05,
            },
            // @Chen2001, @Kim2008 (from memory): - or 0; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -2.0, -4.0, -8.0],
                no_change: 0.3,
            },
            // @Chen2001, @Kim2008 (from memory): air drop -; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.08, 0.25, 0.5, 0.85],
                no_change: 0.05,
            },
            // @Chen2001, @Kim2008 (from memory): +; sizes engineering judgement: a starved evaporator warms the gas towards the air that enters
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [3.0, 9.0, 18.0, 28.0],
                no_change: 0.05,
            },
            // @Chen2001, @Kim2008 (from memory): +; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 2.5, 4.0, 5.0],
                no_change: 0.25,
            },
            // @Chen2001, @Kim2008 (from memory): discharge +; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.0, 5.0, 9.0, 12.0],
                no_change: 0.2,
            },
            // physics: the low side reaches the cut-out sooner; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.2, 0.5, 0.9, 1.1],
                no_change: 0.3,
            },
        ],
    },
    FaultRow {
        fault: Fault::OrificeRestricted,
        systems: 0b11110000,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.035,
        measure: "share of the flow area blocked",
        severity: [0.2, 0.4, 0.65, 0.9],
        weight: [0.2, 0.35, 0.3, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // @Rossi1997, liquid-line restriction: -; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-2.0, -6.0, -12.0, -21.0],
                no_change: 0.05,
            },
            // @Rossi1997, liquid-line restriction: -; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.5, -4.0, -8.0],
                no_change: 0.35,
            },
            // @Rossi1997, liquid-line restriction: air drop -; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.06, 0.2, 0.45, 0.8],
                no_change: 0.08,
            },
            // @Rossi1997, liquid-line restriction: +; sizes engineering judgement: a starved evaporator warms the gas towards the air that enters
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 5.0, 13.0, 25.0],
                no_change: 0.15,
            },
            // @Rossi1997, liquid-line restriction: +; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 3.0, 5.0, 7.0],
                no_change: 0.15,
            },
            // @Rossi1997, liquid-line restriction: discharge +; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 4.0, 8.0, 12.0],
                no_change: 0.25,
            },
            // physics: the low side reaches the cut-out sooner; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.1, 0.5, 0.9, 1.1],
                no_change: 0.2,
            },
        ],
    },
    FaultRow {
        fault: Fault::EvaporatorAirflowLoss,
        systems: 0b11111111,
        // engineering judgement; @association-2015-a: 34 % of 667 vehicles had a fault outside the circuit only
        prior: 0.04,
        measure: "share of the air flow lost",
        severity: [0.2, 0.4, 0.6, 0.85],
        weight: [0.25, 0.35, 0.25, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): -; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b00010001,
                toward: Toward::Nothing,
                size: [-1.0, -3.0, -6.0, -11.0],
                no_change: 0.1,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): -; a compressor that holds the low side hides it; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11101110,
                toward: Toward::Nothing,
                size: [-0.3, -1.0, -2.0, -4.0],
                no_change: 0.4,
            },
            // @Rossi1997, @Chen2001, @Kim2008 (from memory): -; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -2.0, -4.0, -7.0],
                no_change: 0.15,
            },
            // @Rossi1997: air drop over the evaporator +: less air leaves colder; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.5, -2.0, -1.0],
                no_change: 0.4,
            },
            // @Rossi1997: -; @Chen2001, @Kim2008 (from memory): 0 or -; sizes engineering judgement
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.5, -2.5, -4.0],
                no_change: 0.4,
            },
            // @Rossi1997: -; @Chen2001, @Kim2008 (from memory): 0; sizes engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.3, -0.5, -1.0, -1.5],
                no_change: 0.5,
            },
            // @Rossi1997: discharge -; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.5, -3.0, -5.0],
                no_change: 0.4,
            },
            // physics: the low side reaches the cut-out sooner; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [0.1, 0.3, 0.6, 0.9],
                no_change: 0.3,
            },
        ],
    },
    FaultRow {
        fault: Fault::EvaporatorIcing,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.012,
        measure: "share of the face under frost",
        severity: [0.2, 0.45, 0.7, 0.95],
        weight: [0.25, 0.3, 0.25, 0.2],
        rest_spread_k: 0.0,
        effects: &[
            // physics: frost needs a coil below 0 °C; then as lost air flow; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-4.0, -7.0, -10.0, -15.0],
                no_change: 0.05,
            },
            // @Rossi1997, evaporator fouling: -; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -2.5, -4.5, -7.0],
                no_change: 0.15,
            },
            // common practice, no source: first colder, then hardly any cold air; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [-0.1, 0.05, 0.3, 0.7],
                no_change: 0.1,
            },
            // @Rossi1997, evaporator fouling: -; sizes engineering judgement
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.5, -2.5, -4.0],
                no_change: 0.4,
            },
            // physics: frost forms because the clutch is not let go in time; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.4, -0.8, -1.0, -1.1],
                no_change: 0.1,
            },
        ],
    },
    FaultRow {
        fault: Fault::MoistureIcing,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.01,
        measure: "share of the flow withheld while ice stands",
        severity: [0.2, 0.5, 0.8, 1.0],
        weight: [0.2, 0.3, 0.3, 0.2],
        rest_spread_k: 0.0,
        effects: &[
            // common practice, no source: the low side falls towards vacuum while ice stands, and recovers; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-4.0, -10.0, -18.0, -28.0],
                no_change: 0.35,
            },
            // engineering judgement: as a valve that withholds flow, sizes as well
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -3.0, -6.0, -9.0],
                no_change: 0.4,
            },
            // common practice, no source: cooling comes and goes; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.1, 0.3, 0.6, 0.9],
                no_change: 0.35,
            },
            // engineering judgement: as a valve that withholds flow, sizes as well
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [3.0, 9.0, 18.0, 27.0],
                no_change: 0.35,
            },
            // engineering judgement: as a valve that withholds flow, sizes as well
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 2.5, 4.0, 5.0],
                no_change: 0.4,
            },
        ],
    },
    FaultRow {
        fault: Fault::CompressorControlFault,
        systems: 0b11111111,
        // @association-2016-a, component failure; the share among components is engineering judgement
        prior: 0.045,
        measure: "share of its range that the control has lost",
        severity: [0.3, 0.55, 0.8, 1.0],
        weight: [0.2, 0.3, 0.25, 0.25],
        rest_spread_k: 4.0,
        effects: &[
            // from memory, a single case, one maker's service text: at minimum stroke the two sides sit close together; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11101110,
                toward: Toward::Rest(9.0),
                size: [0.25, 0.5, 0.75, 0.97],
                no_change: 0.02,
            },
            // from memory, a single case, one maker's service text: at minimum stroke the two sides sit close together; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11101110,
                toward: Toward::Rest(9.0),
                size: [0.35, 0.7, 0.88, 0.98],
                no_change: 0.05,
            },
            // physics: a switch or thermostat that keeps the clutch out lets the sides become equal; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b00010001,
                toward: Toward::Rest(4.0),
                size: [0.6, 0.9, 1.0, 1.0],
                no_change: 0.02,
            },
            // physics: a switch or thermostat that keeps the clutch out lets the sides become equal; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b00010001,
                toward: Toward::Rest(4.0),
                size: [0.7, 0.95, 1.0, 1.0],
                no_change: 0.02,
            },
            // physics: the capacity goes with the delivery
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.25, 0.55, 0.8, 0.97],
                no_change: 0.03,
            },
            // engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -2.0, -4.0, -6.0],
                no_change: 0.4,
            },
            // engineering judgement: less lift, cooler discharge
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-2.0, -6.0, -10.0, -16.0],
                no_change: 0.2,
            },
            // physics: a clutch that is kept out does not cycle; sizes engineering judgement
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -0.9, -1.1, -1.1],
                no_change: 0.2,
            },
        ],
    },
    FaultRow {
        fault: Fault::ClutchNotEngaged,
        systems: 0b00110011,
        // @association-2016-a, component failure; the share among components is engineering judgement
        prior: 0.045,
        measure: "share of the time not driven",
        severity: [0.85, 0.95, 1.0, 1.0],
        weight: [0.1, 0.2, 0.4, 0.3],
        rest_spread_k: 3.5,
        effects: &[
            // physics: the sides become equal at saturation
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Rest(4.0),
                size: [0.9, 0.97, 1.0, 1.0],
                no_change: 0.01,
            },
            // physics: the sides become equal at saturation
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Rest(4.0),
                size: [0.95, 0.98, 1.0, 1.0],
                no_change: 0.01,
            },
            // physics: no cooling
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.85, 0.95, 1.0, 1.0],
                no_change: 0.01,
            },
            // physics: all lines near saturation
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-6.0, -7.0, -7.5, -7.5],
                no_change: 0.1,
            },
            // physics: nothing is compressed
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-18.0, -22.0, -25.0, -25.0],
                no_change: 0.05,
            },
            // physics: a clutch that stays out does not cycle
            Effect {
                feature: Feature::ClutchCycles,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.8, -1.0, -1.1, -1.1],
                no_change: 0.05,
            },
        ],
    },
    FaultRow {
        fault: Fault::ClutchSlipping,
        systems: 0b01110111,
        // engineering judgement; no survey read names it
        prior: 0.015,
        measure: "share of the speed lost",
        severity: [0.15, 0.3, 0.5, 0.75],
        weight: [0.3, 0.35, 0.25, 0.1],
        rest_spread_k: 4.0,
        effects: &[
            // physics: less speed is less delivery; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Rest(9.0),
                size: [0.1, 0.25, 0.45, 0.75],
                no_change: 0.1,
            },
            // physics: less speed is less delivery; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Rest(9.0),
                size: [0.2, 0.45, 0.7, 0.9],
                no_change: 0.1,
            },
            // physics: less speed is less delivery; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.12, 0.25, 0.45, 0.75],
                no_change: 0.1,
            },
        ],
    },
    FaultRow {
        fault: Fault::HeaterAirMixing,
        systems: 0b11111111,
        // engineering judgement; @association-2015-a: 34 % of 667 vehicles had a fault outside the circuit only
        prior: 0.05,
        measure: "share of the air that passes the heater",
        severity: [0.15, 0.35, 0.6, 1.0],
        weight: [0.25, 0.35, 0.25, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // physics: warm air joins after the evaporator, the circuit does not notice; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [4.0, 9.0, 15.0, 25.0],
                no_change: 0.02,
            },
        ],
    },
    FaultRow {
        fault: Fault::HighSideRestriction,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.01,
        measure: "share of the flow area blocked",
        severity: [0.3, 0.6, 0.8, 0.95],
        weight: [0.25, 0.35, 0.25, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // engineering judgement: less flow reaches the expansion device
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -2.0, -5.0, -10.0],
                no_change: 0.25,
            },
            // engineering judgement, with the gauge between compressor and restriction
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [3.0, 7.0, 13.0, 22.0],
                no_change: 0.15,
            },
            // engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.04, 0.15, 0.35, 0.65],
                no_change: 0.1,
            },
            // physics: the pressure before the restriction overstates the saturation temperature behind it
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [4.0, 8.0, 14.0, 22.0],
                no_change: 0.15,
            },
            // engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 3.0, 6.0, 9.0],
                no_change: 0.3,
            },
        ],
    },
    FaultRow {
        fault: Fault::SuctionLineRestriction,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.008,
        measure: "share of the flow area blocked",
        severity: [0.3, 0.6, 0.8, 0.95],
        weight: [0.25, 0.35, 0.25, 0.15],
        rest_spread_k: 0.0,
        effects: &[
            // engineering judgement, with the gauge between restriction and compressor
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-3.0, -7.0, -13.0, -22.0],
                no_change: 0.1,
            },
            // physics: less mass flow; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-1.0, -3.0, -5.0, -9.0],
                no_change: 0.2,
            },
            // physics: less mass flow; sizes engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.08, 0.25, 0.5, 0.85],
                no_change: 0.05,
            },
            // physics: the same gas at a lower pressure; sizes engineering judgement
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [2.0, 6.0, 12.0, 20.0],
                no_change: 0.1,
            },
            // engineering judgement
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-0.5, -1.0, -2.0, -3.0],
                no_change: 0.5,
            },
            // physics: a higher pressure ratio; sizes engineering judgement
            Effect {
                feature: Feature::DischargeSuperheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [1.0, 4.0, 8.0, 12.0],
                no_change: 0.2,
            },
        ],
    },
    FaultRow {
        fault: Fault::WrongRefrigerant,
        systems: 0b11111111,
        // @association-2016-a: 8.6 % of vehicles carry contaminated refrigerant, half of those excess air
        prior: 0.03,
        measure: "",
        severity: [0.25, 0.5, 0.75, 1.0],
        weight: [0.3, 0.2, 0.3, 0.2],
        rest_spread_k: 0.0,
        effects: &[
            // physics: a mixture of higher pressure (first, third) or lower pressure (second, fourth) read on the wrong table; sizes engineering judgement
            Effect {
                feature: Feature::LowSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [3.0, -4.0, 8.0, -9.0],
                no_change: 0.2,
            },
            // physics, as for the low side; sizes engineering judgement
            Effect {
                feature: Feature::HighSide,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [5.0, -5.0, 12.0, -11.0],
                no_change: 0.1,
            },
            // engineering judgement
            Effect {
                feature: Feature::Vent,
                systems: 0b11111111,
                toward: Toward::Inlet,
                size: [0.1, 0.15, 0.25, 0.35],
                no_change: 0.2,
            },
            // physics: the saturation temperature is taken from the wrong table
            Effect {
                feature: Feature::Superheat,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [-3.0, 4.0, -6.0, 8.0],
                no_change: 0.2,
            },
            // physics: the saturation temperature is taken from the wrong table
            Effect {
                feature: Feature::Subcooling,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [5.0, -5.0, 10.0, -9.0],
                no_change: 0.2,
            },
            // physics: saturation of another fluid; sizes engineering judgement
            Effect {
                feature: Feature::RestPressure,
                systems: 0b11111111,
                toward: Toward::Nothing,
                size: [4.0, -5.0, 9.0, -10.0],
                no_change: 0.1,
            },
        ],
    },
    FaultRow {
        fault: Fault::GaugeError,
        systems: 0b11111111,
        // engineering judgement: gauges and thermometers together; its likelihood is computed from corrected readings, not from a row
        prior: 0.03,
        measure: "",
        severity: [0.0, 0.0, 0.0, 0.0],
        weight: [1.0, 0.0, 0.0, 0.0],
        rest_spread_k: 0.0,
        effects: &[],
    },
];
