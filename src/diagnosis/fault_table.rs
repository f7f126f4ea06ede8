//! How common each fault is, where it can be, and what it does to the pressure at rest.
//!
//! Generated from tables/faults by tables/compile; edit the tables, not this file.

use super::rows::{AtRest, FaultRow};
use crate::names::Fault;

/// One row per fault, in the order of its code.
pub(super) const FAULTS: [FaultRow; 21] = [
    FaultRow {
        fault: Fault::NoFault,
        systems: 0b11111111,
        // engineering judgement: checks without a complaint, and checks after a repair
        prior: 0.4,
        measure: "",
        weight: [1.0, 0.0, 0.0, 0.0],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::WornCompressor,
        systems: 0b11111111,
        // @association-2016-a: 23.5 % of poor-cooling complaints are component failure; the share among components is engineering judgement
        prior: 0.06,
        measure: "share of the delivery lost",
        weight: [0.2, 0.4, 0.25, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::Undercharge,
        systems: 0b11111111,
        // @association-2016-a: 53 % of poor-cooling complaints are low charge; lowered because leaks found at once are seldom diagnosed by readings
        prior: 0.42,
        measure: "share of the charge missing",
        weight: [0.15, 0.35, 0.3, 0.2],
        at_rest: Some(AtRest {
            // physics: saturated while any liquid is left; the last severity at rest in a warm vehicle
            size: [0.0, 0.0, 0.0, -26.0],
            no_change: 0.5,
        }),
    },
    FaultRow {
        fault: Fault::Overcharge,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.06,
        measure: "share of the charge in excess",
        weight: [0.2, 0.35, 0.3, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::CondenserAirflowLoss,
        systems: 0b11111111,
        // engineering judgement; @association-2015-a: 34 % of 667 vehicles had a fault outside the circuit only
        prior: 0.07,
        measure: "share of the air flow lost",
        weight: [0.2, 0.35, 0.3, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::NonCondensables,
        systems: 0b11111111,
        // @association-2016-a: 8.6 % of vehicles carry contaminated refrigerant, half of those excess air
        prior: 0.045,
        measure: "gas as a share of what the circuit holds at one atmosphere",
        weight: [0.2, 0.35, 0.3, 0.15],
        at_rest: Some(AtRest {
            // physics: the partial pressure of the gas adds to saturation; sizes engineering judgement
            size: [2.0, 5.0, 9.0, 15.0],
            no_change: 0.1,
        }),
    },
    FaultRow {
        fault: Fault::LiquidLineRestriction,
        systems: 0b11111111,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.025,
        measure: "share of the flow area blocked",
        weight: [0.2, 0.35, 0.3, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::ExpansionValveStuckOpen,
        systems: 0b00001111,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.02,
        measure: "least opening of the valve",
        weight: [0.2, 0.35, 0.3, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::ExpansionValveStuckClosed,
        systems: 0b00001111,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.025,
        measure: "share of the opening out of reach",
        weight: [0.2, 0.3, 0.3, 0.2],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::OrificeRestricted,
        systems: 0b11110000,
        // engineering judgement; component failure of the @association-2016-a shared out
        prior: 0.035,
        measure: "share of the flow area blocked",
        weight: [0.2, 0.35, 0.3, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::EvaporatorAirflowLoss,
        systems: 0b11111111,
        // engineering judgement; @association-2015-a: 34 % of 667 vehicles had a fault outside the circuit only
        prior: 0.04,
        measure: "share of the air flow lost",
        weight: [0.25, 0.35, 0.25, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::EvaporatorIcing,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.012,
        measure: "share of the face under frost",
        weight: [0.25, 0.3, 0.25, 0.2],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::MoistureIcing,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.01,
        measure: "share of the flow withheld while ice stands",
        weight: [0.2, 0.3, 0.3, 0.2],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::CompressorControlFault,
        systems: 0b11111111,
        // @association-2016-a, component failure; the share among components is engineering judgement
        prior: 0.045,
        measure: "share of its range that the control has lost",
        weight: [0.2, 0.3, 0.25, 0.25],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::ClutchNotEngaged,
        systems: 0b01110111,
        // @association-2016-a, component failure; the share among components is engineering judgement
        prior: 0.045,
        measure: "share of the time not driven",
        weight: [0.1, 0.2, 0.4, 0.3],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::ClutchSlipping,
        systems: 0b01110111,
        // engineering judgement; no survey read names it
        prior: 0.015,
        measure: "share of the speed lost",
        weight: [0.3, 0.35, 0.25, 0.1],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::HeaterAirMixing,
        systems: 0b11111111,
        // engineering judgement; @association-2015-a: 34 % of 667 vehicles had a fault outside the circuit only
        prior: 0.05,
        measure: "share of the air that passes the heater",
        weight: [0.25, 0.35, 0.25, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::HighSideRestriction,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.01,
        measure: "share of the flow area blocked",
        weight: [0.25, 0.35, 0.25, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::SuctionLineRestriction,
        systems: 0b11111111,
        // engineering judgement; no survey read names it
        prior: 0.008,
        measure: "share of the flow area blocked",
        weight: [0.25, 0.35, 0.25, 0.15],
        at_rest: None,
    },
    FaultRow {
        fault: Fault::WrongRefrigerant,
        systems: 0b11111111,
        // @association-2016-a: 8.6 % of vehicles carry contaminated refrigerant, half of those excess air
        prior: 0.03,
        measure: "",
        weight: [0.3, 0.2, 0.3, 0.2],
        at_rest: Some(AtRest {
            // physics: saturation of another fluid; sizes engineering judgement
            size: [4.0, -5.0, 9.0, -10.0],
            no_change: 0.1,
        }),
    },
    FaultRow {
        fault: Fault::GaugeError,
        systems: 0b11111111,
        // engineering judgement: gauges and thermometers together; its likelihood is computed from corrected readings, not from a row
        prior: 0.03,
        measure: "",
        weight: [1.0, 0.0, 0.0, 0.0],
        at_rest: None,
    },
];
