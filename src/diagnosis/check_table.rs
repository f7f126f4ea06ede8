//! Observations, further checks and repairs.
//!
//! Generated from tables/checks by tables/compile; edit the tables, not this file.

use super::rows::{CheckRow, ObservationRow, Once, Repair, Reveals, Shared};
use crate::names::{Caution, Check, Fault, Feature, Observation};

/// One row per observation, in the order of its code.
pub(super) const OBSERVATIONS: [ObservationRow; 43] = [
    // common practice, no source: with cooling asked for, in warm weather
    // clutch-not-engaged: by its meaning
    // compressor-control-fault: engineering judgement: the clutch of a fixed compressor is kept out, a variable one stays in
    // clutch-slipping: engineering judgement
    // undercharge: engineering judgement: the low-pressure switch keeps it out when little is left
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.95,
        yes: [
            0.95, 0.95, 0.75, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.7, 0.02, 0.7, 0.95, 0.95,
            0.95, 0.95, 0.95,
        ],
    },
    // common practice, no source
    // clutch-not-engaged: engineering judgement: coil or gap against wiring and relay
    // compressor-control-fault: engineering judgement: a switch or thermostat keeps the voltage from a clutch; a control valve does not
    // undercharge: engineering judgement: the low-pressure switch
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.95,
        yes: [
            0.95, 0.95, 0.75, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.5, 0.5, 0.95, 0.95, 0.95,
            0.95, 0.95, 0.95,
        ],
    },
    // common practice, no source: a sound compressor needs a hand and gives resistance
    // noted wrongly: engineering judgement: the hand turns it or does not
    // worn-compressor: common practice, no source: free spinning means worn
    // compressor-control-fault: engineering judgement: at least stroke a sound one turns more easily, still with resistance
    // undercharge: engineering judgement: little gas gives little resistance
    ObservationRow {
        mistaken: 0.02,
        otherwise: 0.04,
        yes: [
            0.04, 0.85, 0.06, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.1, 0.04, 0.04, 0.04, 0.04,
            0.04, 0.04, 0.04,
        ],
    },
    // common practice, no source
    // noted wrongly: engineering judgement: the hand turns it or does not
    // worn-compressor: engineering judgement: seized
    // clutch-slipping: engineering judgement: a seized compressor makes belt and clutch slip
    // clutch-not-engaged: engineering judgement
    ObservationRow {
        mistaken: 0.02,
        otherwise: 0.01,
        yes: [
            0.01, 0.08, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.03, 0.25, 0.01, 0.01,
            0.01, 0.01, 0.01,
        ],
    },
    // common practice, no source
    // clutch-slipping: by its meaning
    // overcharge: engineering judgement: high load
    // condenser-airflow-loss: engineering judgement: high load
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.03,
        yes: [
            0.03, 0.03, 0.03, 0.06, 0.06, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.85, 0.03, 0.03,
            0.03, 0.03, 0.03,
        ],
    },
    // engineering judgement
    // worn-compressor: common practice, no source
    // overcharge: engineering judgement: liquid returns
    // expansion-valve-stuck-open: engineering judgement: liquid returns
    // clutch-slipping: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.08,
        yes: [
            0.08, 0.45, 0.08, 0.2, 0.08, 0.08, 0.08, 0.2, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.3, 0.08, 0.08,
            0.08, 0.08, 0.08,
        ],
    },
    // common practice, no source
    // condenser-airflow-loss: engineering judgement: half fan, half dirt and shrouds
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.97,
        yes: [
            0.97, 0.97, 0.97, 0.97, 0.5, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97,
            0.97, 0.97, 0.97,
        ],
    },
    // engineering judgement
    // condenser-airflow-loss: engineering judgement: half fan, half dirt and shrouds
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.1,
        yes: [
            0.1, 0.1, 0.1, 0.1, 0.55, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1,
        ],
    },
    // common practice, no source: every high side falls somewhat, a blocked one strongly
    // condenser-airflow-loss: common practice, no source
    // non-condensables: engineering judgement: the pressure of the gas stays
    // high-side-restriction: engineering judgement
    // overcharge: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.3,
        yes: [
            0.3, 0.3, 0.3, 0.35, 0.9, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.12, 0.3, 0.3, 0.3,
        ],
    },
    // engineering judgement
    // high-side-restriction: common practice, no source
    // non-condensables: engineering judgement: gas gathers cold at the outlet
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.05,
        yes: [
            0.05, 0.05, 0.05, 0.05, 0.05, 0.15, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.75,
            0.05, 0.05, 0.05,
        ],
    },
    // @Li2007: measured condensing temperature against saturation at the measured pressure
    // non-condensables: @Li2007: the feature that no other fault moves; figure engineering judgement
    // wrong-refrigerant: engineering judgement
    // high-side-restriction: engineering judgement: a lower pressure behind the restriction
    // overcharge: engineering judgement: liquid stands in the middle
    // gauge-error: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.06,
        yes: [
            0.06, 0.06, 0.06, 0.15, 0.06, 0.85, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.5,
            0.06, 0.5, 0.3,
        ],
    },
    // common practice, no source
    // undercharge: common practice, no source
    // liquid-line-restriction: engineering judgement: when the glass is behind it
    // non-condensables: engineering judgement
    // worn-compressor: engineering judgement
    // overcharge: common practice, no source: a clear glass
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.1,
        yes: [
            0.1, 0.25, 0.85, 0.01, 0.1, 0.3, 0.4, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1,
        ],
    },
    // engineering judgement
    // undercharge: common practice, no source: oil leaves with the leak
    // worn-compressor: engineering judgement: shaft seal
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.1,
        yes: [
            0.1, 0.2, 0.6, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1,
        ],
    },
    // engineering judgement
    // undercharge: common practice, no source: vapour in the liquid line
    // liquid-line-restriction: engineering judgement
    // expansion-valve-stuck-closed: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.12,
        yes: [
            0.12, 0.12, 0.55, 0.12, 0.12, 0.12, 0.4, 0.12, 0.3, 0.12, 0.12, 0.12, 0.12, 0.12, 0.12, 0.12, 0.12, 0.12,
            0.12, 0.12, 0.12,
        ],
    },
    // common practice, no source
    // liquid-line-restriction: common practice, no source: a restriction cools like an expansion device
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.03,
        yes: [
            0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.85, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03,
            0.03, 0.03, 0.03,
        ],
    },
    // common practice, no source
    // expansion-valve-stuck-closed: common practice, no source
    // orifice-restricted: common practice, no source
    // moisture-icing: common practice, no source
    // undercharge: engineering judgement
    // liquid-line-restriction: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.05,
        yes: [
            0.05, 0.05, 0.15, 0.05, 0.05, 0.05, 0.15, 0.05, 0.5, 0.55, 0.05, 0.05, 0.7, 0.05, 0.05, 0.05, 0.05, 0.05,
            0.05, 0.05, 0.05,
        ],
    },
    // engineering judgement
    // expansion-valve-stuck-open: common practice, no source
    // overcharge: engineering judgement
    // evaporator-airflow-loss: common practice, no source
    // evaporator-icing: common practice, no source
    // undercharge: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.08,
        yes: [
            0.08, 0.08, 0.05, 0.25, 0.08, 0.08, 0.08, 0.6, 0.08, 0.08, 0.4, 0.5, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08,
            0.08, 0.08, 0.08,
        ],
    },
    // engineering judgement
    // suction-line-restriction: physics: the pressure drop cools the gas at one point; figure engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.03,
        yes: [
            0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03,
            0.75, 0.03, 0.03,
        ],
    },
    // common practice, no source: a working valve closes when chilled and opens when warmed
    // expansion-valve-stuck-open: common practice, no source
    // expansion-valve-stuck-closed: common practice, no source
    // moisture-icing: engineering judgement
    // undercharge: engineering judgement: nothing left to feed
    // worn-compressor: engineering judgement
    // clutch-not-engaged: physics: nothing flows
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.9,
        yes: [
            0.9, 0.5, 0.6, 0.9, 0.9, 0.9, 0.9, 0.1, 0.12, 0.9, 0.9, 0.9, 0.5, 0.9, 0.05, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9,
        ],
    },
    // engineering judgement
    // evaporator-icing: by its meaning
    // evaporator-airflow-loss: engineering judgement
    // undercharge: engineering judgement: part of the face
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.03,
        yes: [
            0.03, 0.03, 0.1, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.4, 0.9, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03,
            0.03, 0.03, 0.03,
        ],
    },
    // engineering judgement
    // evaporator-icing: common practice, no source
    // evaporator-airflow-loss: engineering judgement: it ends in frost
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.03,
        yes: [
            0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.25, 0.85, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03,
            0.03, 0.03, 0.03,
        ],
    },
    // engineering judgement
    // moisture-icing: common practice, no source
    // evaporator-icing: engineering judgement
    // clutch-not-engaged: engineering judgement: loose contact
    // compressor-control-fault: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.06,
        yes: [
            0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.5, 0.85, 0.2, 0.15, 0.06, 0.06, 0.06,
            0.06, 0.06, 0.06,
        ],
    },
    // engineering judgement
    // evaporator-airflow-loss: by its meaning
    // evaporator-icing: common practice, no source
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.06,
        yes: [
            0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.85, 0.7, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06,
            0.06, 0.06, 0.06,
        ],
    },
    // engineering judgement
    // heater-air-mixing: common practice, no source
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.08,
        yes: [
            0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.08, 0.8, 0.08,
            0.08, 0.08, 0.08,
        ],
    },
    // common practice, no source
    // worn-compressor: common practice, no source: more speed hardly helps
    // compressor-control-fault: engineering judgement: the control holds it back at any speed
    // clutch-not-engaged: physics: it is not driven
    // clutch-slipping: engineering judgement
    // expansion-valve-stuck-open: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.85,
        yes: [
            0.85, 0.25, 0.85, 0.85, 0.85, 0.85, 0.85, 0.6, 0.85, 0.85, 0.85, 0.85, 0.85, 0.2, 0.03, 0.3, 0.85, 0.85,
            0.85, 0.85, 0.85,
        ],
    },
    // engineering judgement
    // compressor-control-fault: engineering judgement: it moves when the signal was at fault, not when the valve sticks
    // worn-compressor: engineering judgement
    // clutch-not-engaged: physics: it is not driven
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.9,
        yes: [
            0.9, 0.15, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.45, 0.03, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9,
        ],
    },
    // @military-manual-c: a sound compressor holds the sides apart longer than about two minutes; figure engineering judgement
    // worn-compressor: @military-manual-c: valve or gasket; figure engineering judgement
    // compressor-control-fault: engineering judgement: sides that sit close together soon become equal
    // clutch-not-engaged: physics: they are nearly equal already
    // clutch-slipping: engineering judgement
    // expansion-valve-stuck-open: engineering judgement
    // liquid-line-restriction: physics: the restriction holds them apart
    // expansion-valve-stuck-closed: physics: the valve holds them apart
    // orifice-restricted: physics: the clogged orifice holds them apart
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.15,
        yes: [
            0.15, 0.85, 0.15, 0.15, 0.15, 0.15, 0.05, 0.5, 0.05, 0.05, 0.15, 0.15, 0.15, 0.55, 0.7, 0.3, 0.15, 0.15,
            0.15, 0.15, 0.15,
        ],
    },
    // physics of saturation; figure engineering judgement
    // non-condensables: physics: the partial pressure of the gas adds to saturation
    // wrong-refrigerant: physics
    // gauge-error: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.04,
        yes: [
            0.04, 0.04, 0.04, 0.04, 0.04, 0.8, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04,
            0.04, 0.5, 0.3,
        ],
    },
    // physics of saturation; figure engineering judgement
    // undercharge: physics: only when no liquid is left
    // wrong-refrigerant: physics
    // gauge-error: engineering judgement
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.03,
        yes: [
            0.03, 0.03, 0.25, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03,
            0.03, 0.3, 0.3,
        ],
    },
    // @association-2016-a: about 4 % of vehicles carry excess air
    // non-condensables: by its meaning
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.03,
        yes: [
            0.03, 0.03, 0.03, 0.03, 0.03, 0.95, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03,
            0.03, 0.03, 0.03,
        ],
    },
    // @association-2016-a
    // noted wrongly: engineering judgement: an instrument
    // wrong-refrigerant: by its meaning
    ObservationRow {
        mistaken: 0.005,
        otherwise: 0.02,
        yes: [
            0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02,
            0.02, 0.95, 0.02,
        ],
    },
    // by its meaning: where the interval lies below the tolerance, about a tenth is missing or more, and there undercharge begins (tables/faults/charge.toml); what has another fault besides has two; figure engineering judgement
    // noted wrongly: engineering judgement: it is weighed, and the 95 % interval with what recovery leaves behind lies below the label's tolerance
    // undercharge: by its meaning
    // overcharge: by its meaning
    ObservationRow {
        mistaken: 0.005,
        otherwise: 0.01,
        yes: [
            0.01, 0.01, 0.95, 0.005, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01,
            0.01, 0.01, 0.01, 0.01,
        ],
    },
    // by its meaning, as above; figure engineering judgement
    // noted wrongly: engineering judgement: it is weighed, as above
    // overcharge: by its meaning
    // undercharge: by its meaning
    // non-condensables: engineering judgement: topped up by pressure
    ObservationRow {
        mistaken: 0.005,
        otherwise: 0.01,
        yes: [
            0.01, 0.01, 0.003, 0.92, 0.01, 0.15, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01,
            0.01, 0.01, 0.01, 0.01,
        ],
    },
    // engineering judgement
    // overcharge: common practice, no source
    // non-condensables: common practice, no source: filled without evacuation
    // wrong-refrigerant: common practice, no source
    // moisture-icing: engineering judgement: filled without evacuation
    // undercharge: engineering judgement: filled, and leaking again
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.15,
        yes: [
            0.15, 0.15, 0.3, 0.8, 0.15, 0.65, 0.15, 0.15, 0.15, 0.15, 0.15, 0.15, 0.5, 0.15, 0.15, 0.15, 0.15, 0.15,
            0.15, 0.75, 0.15,
        ],
    },
    // engineering judgement
    // gauge-error: by its meaning
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.97,
        yes: [
            0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97,
            0.97, 0.97, 0.1,
        ],
    },
    // engineering judgement: a fault that a customer complains of is felt in the vehicle, a slight one is not
    // no-fault: by its meaning
    // gauge-error: by its meaning: nothing is wrong with the vehicle
    // condenser-airflow-loss: common practice, no source: the wind on the road does the work of a dead fan
    // undercharge: engineering judgement: a small loss is not felt
    // overcharge: engineering judgement: the wind on the road brings the high side down
    // non-condensables: engineering judgement: the wind on the road brings the high side down
    // worn-compressor: engineering judgement: a faster compressor makes up for some of what it loses
    // clutch-not-engaged: physics: it is not driven
    // evaporator-icing: common practice, no source: it ices up after some minutes
    // moisture-icing: common practice, no source: it comes and goes
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.3,
        yes: [
            0.95, 0.3, 0.4, 0.5, 0.6, 0.5, 0.3, 0.3, 0.3, 0.3, 0.3, 0.1, 0.15, 0.3, 0.03, 0.3, 0.3, 0.3, 0.3, 0.3, 0.95,
        ],
    },
    // engineering judgement: a transducer that is off on a sound vehicle is rare
    // gauge-error: engineering judgement: the gauge of the high side, its hose or its unit is wrong; a probe in the wrong place or a low gauge is not seen so
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.95,
        yes: [
            0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95, 0.95,
            0.95, 0.95, 0.3,
        ],
    },
    // common practice, no source: dye of an earlier leak that was not wiped off; figure engineering judgement
    // undercharge: common practice, no source: dye leaves with the oil; not at the evaporator, which is out of sight; figure engineering judgement
    // non-condensables: engineering judgement: air came in through a leak
    // moisture-icing: engineering judgement: water came in through a leak
    // worn-compressor: engineering judgement: shaft seal
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.05,
        yes: [
            0.05, 0.15, 0.6, 0.05, 0.05, 0.12, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.12, 0.05, 0.05, 0.05, 0.05, 0.05,
            0.05, 0.05, 0.05,
        ],
    },
    // engineering judgement: oil, cleaner and damp air set a detector off
    // undercharge: SAE J2791 and J2913 ask that 4 g a year be found (from memory); figure engineering judgement, as some leaks are out of reach and some vehicles were filled short
    // non-condensables: engineering judgement: air came in through a leak
    // moisture-icing: engineering judgement: water came in through a leak
    ObservationRow {
        mistaken: 0.08,
        otherwise: 0.06,
        yes: [
            0.06, 0.06, 0.7, 0.06, 0.06, 0.12, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 0.12, 0.06, 0.06, 0.06, 0.06, 0.06,
            0.06, 0.06, 0.06,
        ],
    },
    // engineering judgement
    // noted wrongly: engineering judgement: an instrument or foam, under test pressure, with nothing else about that it answers to
    // undercharge: SAE J2970 asks of tracer gas detectors what J2791 does (from memory); figure engineering judgement, as above
    // non-condensables: engineering judgement: air came in through a leak
    // moisture-icing: engineering judgement: water came in through a leak
    ObservationRow {
        mistaken: 0.01,
        otherwise: 0.02,
        yes: [
            0.02, 0.02, 0.75, 0.02, 0.02, 0.12, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.12, 0.02, 0.02, 0.02, 0.02, 0.02,
            0.02, 0.02, 0.02,
        ],
    },
    // by its meaning; figure engineering judgement
    // noted wrongly: engineering judgement: the 95 % interval of the loss lies within the limit, or beyond nothing; a hose of the shop may leak
    // undercharge: engineering judgement: some vehicles were filled short, or leak less than the test sees
    // non-condensables: engineering judgement: air came in through a leak
    // moisture-icing: engineering judgement: water came in through a leak
    ObservationRow {
        mistaken: 0.01,
        otherwise: 0.98,
        yes: [
            0.98, 0.98, 0.4, 0.98, 0.98, 0.88, 0.98, 0.98, 0.98, 0.98, 0.98, 0.98, 0.88, 0.98, 0.98, 0.98, 0.98, 0.98,
            0.98, 0.98, 0.98,
        ],
    },
    // by its meaning; figure engineering judgement
    // noted wrongly: engineering judgement, as of a test pressure
    // undercharge: engineering judgement: a vacuum pulls at a leak with one bar only
    // non-condensables: engineering judgement: air came in through a leak
    // moisture-icing: physics: water in the circuit lifts the pressure to its own; figure engineering judgement
    ObservationRow {
        mistaken: 0.01,
        otherwise: 0.97,
        yes: [
            0.97, 0.97, 0.55, 0.97, 0.97, 0.85, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.3, 0.97, 0.97, 0.97, 0.97, 0.97,
            0.97, 0.97, 0.97,
        ],
    },
    // engineering judgement
    // noted wrongly: engineering judgement: a vacuum gauge was read
    // non-condensables: by its meaning: what was evacuated holds no air; some comes in with the charge and its hoses; figure engineering judgement
    // moisture-icing: physics: water boils off in a deep vacuum, and ice may hold some back; figure engineering judgement
    // wrong-refrigerant: by its meaning: what was evacuated holds nothing else, unless the cylinder does; figure engineering judgement
    ObservationRow {
        mistaken: 0.02,
        otherwise: 0.9,
        yes: [
            0.9, 0.9, 0.9, 0.9, 0.9, 0.07, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.2, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.3, 0.9,
        ],
    },
];

/// Answers of which at most one is yes.
pub(super) const EXCLUSIVE: &[&[Observation]] = &[
    // by their meaning
    &[Observation::HubTurnsFreely, Observation::HubLocked],
    // by their meaning
    &[Observation::RestPressureHigh, Observation::RestPressureLow],
    // by their meaning
    &[Observation::RecoveredBelowLabel, Observation::RecoveredAboveLabel],
];

/// Answers that share a cause beyond the fault.
pub(super) const SHARED: &[Shared] = &[
    // engineering judgement: the same gas and, for two of them, the same gauge
    Shared {
        members: &[
            Observation::CondenserTubeBelowSaturation,
            Observation::RestPressureHigh,
            Observation::IdentifierShowsAir,
        ],
        correlation: 0.4,
    },
    // engineering judgement: vapour in the same liquid line
    Shared {
        members: &[Observation::SightGlassBubbles, Observation::HissingAtExpansion],
        correlation: 0.5,
    },
    // engineering judgement: the same gauge of the high side
    Shared {
        members: &[Observation::SecondGaugesAgree, Observation::TransducerAgrees],
        correlation: 0.5,
    },
    // engineering judgement: the same cold coil
    Shared {
        members: &[
            Observation::FrostOnSuctionLine,
            Observation::EvaporatorFrosted,
            Observation::AirflowFades,
            Observation::AirflowWeak,
        ],
        correlation: 0.5,
    },
    // engineering judgement: the same stream of air
    Shared {
        members: &[
            Observation::CondenserFanRunning,
            Observation::CondenserFaceBlocked,
            Observation::WaterLowersHighSide,
        ],
        correlation: 0.3,
    },
    // engineering judgement: the same switches
    Shared {
        members: &[Observation::ClutchEngaged, Observation::ClutchHasVoltage],
        correlation: 0.5,
    },
    // engineering judgement: the same pump
    Shared {
        members: &[
            Observation::SpeedLowersLowSide,
            Observation::ControlSignalMovesPressures,
            Observation::SidesEqualiseQuickly,
        ],
        correlation: 0.4,
    },
    // engineering judgement: the same hand
    Shared {
        members: &[Observation::RecentlyFilled, Observation::RecoveredAboveLabel],
        correlation: 0.3,
    },
    // engineering judgement: the same leak, in reach or not
    Shared {
        members: &[
            Observation::OilTraces,
            Observation::DyeGlows,
            Observation::DetectorAlarms,
            Observation::TraceGasEscapes,
            Observation::TestPressureHolds,
            Observation::VacuumHolds,
        ],
        correlation: 0.4,
    },
];

/// What comes before the gauges where no pressure is known. Source: common practice, no source: eyes and hands come before hoses.
pub(super) const LOOKS_FIRST: [Check; 3] = [Check::WatchClutch, Check::WatchCondenserFan, Check::TurnHub];

/// What comes before the circuit is opened, and before the vehicle is handed over or given back. Source: common practice, no source: both pressures and the vent are read before a closed circuit is opened.
pub(super) const BEFORE_OPENING: [Check; 3] = [Check::ReadLowSide, Check::ReadHighSide, Check::ReadVent];

/// What each check reveals and costs; source: engineering judgement: minutes and money. Cautions: common practice, no source.
pub(super) const CHECKS: [CheckRow; 44] = [
    CheckRow {
        check: Check::ReadLowSide,
        reveals: Reveals::Feature(Feature::LowSide),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::Pressure,
            Caution::Frostbite,
            Caution::MovingParts,
            Caution::Exhaust,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
            Caution::CarbonDioxide,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ReadHighSide,
        reveals: Reveals::Feature(Feature::HighSide),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::Pressure,
            Caution::Frostbite,
            Caution::MovingParts,
            Caution::Exhaust,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
            Caution::CarbonDioxide,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ReadVent,
        reveals: Reveals::Feature(Feature::Vent),
        minutes: 10.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::ReadSuctionLine,
        reveals: Reveals::Feature(Feature::Superheat),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::MovingParts,
            Caution::HotParts,
            Caution::Exhaust,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ReadLiquidLine,
        reveals: Reveals::Feature(Feature::Subcooling),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::MovingParts,
            Caution::HotParts,
            Caution::Exhaust,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ReadDischargeLine,
        reveals: Reveals::Feature(Feature::DischargeSuperheat),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::MovingParts,
            Caution::HotParts,
            Caution::Exhaust,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::CountClutchCycles,
        reveals: Reveals::Feature(Feature::ClutchCycles),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b00010001,
        cautions: &[Caution::MovingParts, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::WatchClutch,
        reveals: Reveals::Observation(Observation::ClutchEngaged),
        minutes: 1.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b00110011,
        cautions: &[Caution::MovingParts, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::MeasureClutchVoltage,
        reveals: Reveals::Observation(Observation::ClutchHasVoltage),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b00010001,
        cautions: &[Caution::MovingParts, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::TurnHub,
        reveals: Reveals::Observation(Observation::HubTurnsFreely),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b01110111,
        cautions: &[Caution::MovingParts],
        once: None,
    },
    CheckRow {
        check: Check::TurnHub,
        reveals: Reveals::Observation(Observation::HubLocked),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b01110111,
        cautions: &[Caution::MovingParts],
        once: None,
    },
    CheckRow {
        check: Check::LookForSlip,
        reveals: Reveals::Observation(Observation::BeltSlips),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b01110111,
        cautions: &[Caution::MovingParts, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::ListenToCompressor,
        reveals: Reveals::Observation(Observation::CompressorNoisy),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::HighVoltageCables, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::WatchCondenserFan,
        reveals: Reveals::Observation(Observation::CondenserFanRunning),
        minutes: 1.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::LookAtCondenserFace,
        reveals: Reveals::Observation(Observation::CondenserFaceBlocked),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::HighVoltageCables],
        once: None,
    },
    CheckRow {
        check: Check::SprayCondenser,
        reveals: Reveals::Observation(Observation::WaterLowersHighSide),
        minutes: 4.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::HighVoltageCables, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::FeelCondenserPasses,
        reveals: Reveals::Observation(Observation::CondenserHasTemperatureStep),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::MovingParts,
            Caution::HotParts,
            Caution::Exhaust,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ClampCondenserMiddle,
        reveals: Reveals::Observation(Observation::CondenserTubeBelowSaturation),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: true,
        systems: 0b11111111,
        cautions: &[
            Caution::MovingParts,
            Caution::HotParts,
            Caution::Exhaust,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::LookAtSightGlass,
        reveals: Reveals::Observation(Observation::SightGlassBubbles),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b00001111,
        cautions: &[Caution::MovingParts, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::LookForLeaks,
        reveals: Reveals::Observation(Observation::OilTraces),
        minutes: 20.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::Ventilation,
            Caution::Flammable,
            Caution::MovingParts,
            Caution::CarbonDioxide,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ListenAtExpansion,
        reveals: Reveals::Observation(Observation::HissingAtExpansion),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::DropAcrossDrier,
        reveals: Reveals::Observation(Observation::DropAcrossDrier),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::HotParts,
            Caution::MovingParts,
            Caution::Exhaust,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::LookAtExpansion,
        reveals: Reveals::Observation(Observation::FrostAtExpansion),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::Exhaust, Caution::HighVoltageCables],
        once: None,
    },
    CheckRow {
        check: Check::LookAtSuctionLine,
        reveals: Reveals::Observation(Observation::FrostOnSuctionLine),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::Exhaust, Caution::HighVoltageCables],
        once: None,
    },
    CheckRow {
        check: Check::FollowSuctionLine,
        reveals: Reveals::Observation(Observation::SuctionLineStep),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::Exhaust, Caution::HighVoltageCables],
        once: None,
    },
    CheckRow {
        check: Check::WarmAndChillBulb,
        reveals: Reveals::Observation(Observation::LowSideFollowsBulb),
        minutes: 15.0,
        money: 2.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b00001111,
        cautions: &[
            Caution::MovingParts,
            Caution::Frostbite,
            Caution::HandAndIce,
            Caution::Exhaust,
        ],
        once: None,
    },
    CheckRow {
        check: Check::LookAtEvaporator,
        reveals: Reveals::Observation(Observation::EvaporatorFrosted),
        minutes: 15.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::MovingParts, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::WatchTwentyMinutes,
        reveals: Reveals::Observation(Observation::AirflowFades),
        minutes: 20.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::WatchTwentyMinutes,
        reveals: Reveals::Observation(Observation::CoolingComesAndGoes),
        minutes: 20.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::FeelAirflow,
        reveals: Reveals::Observation(Observation::AirflowWeak),
        minutes: 3.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::CloseHeater,
        reveals: Reveals::Observation(Observation::ClosingHeaterCoolsVent),
        minutes: 8.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::HotParts,
            Caution::MovingParts,
            Caution::Exhaust,
            Caution::HotCoolant,
        ],
        once: None,
    },
    CheckRow {
        check: Check::RaiseEngineSpeed,
        reveals: Reveals::Observation(Observation::SpeedLowersLowSide),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b01110111,
        cautions: &[Caution::MovingParts, Caution::Exhaust, Caution::ParkAndChock],
        once: None,
    },
    CheckRow {
        check: Check::DriveControl,
        reveals: Reveals::Observation(Observation::ControlSignalMovesPressures),
        minutes: 12.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11001100,
        cautions: &[Caution::MovingParts, Caution::HighVoltageCables, Caution::Exhaust],
        once: None,
    },
    CheckRow {
        check: Check::TimeEqualisation,
        reveals: Reveals::Observation(Observation::SidesEqualiseQuickly),
        minutes: 4.0,
        money: 0.0,
        recovery: false,
        at_rest: false,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::Pressure,
            Caution::Exhaust,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
            Caution::CarbonDioxide,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ReadRestPressure,
        reveals: Reveals::Observation(Observation::RestPressureHigh),
        minutes: 60.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::Pressure,
            Caution::Frostbite,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
            Caution::CarbonDioxide,
        ],
        once: None,
    },
    CheckRow {
        check: Check::ReadRestPressure,
        reveals: Reveals::Observation(Observation::RestPressureLow),
        minutes: 60.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::Pressure,
            Caution::Frostbite,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
            Caution::CarbonDioxide,
        ],
        once: None,
    },
    CheckRow {
        check: Check::IdentifyRefrigerant,
        reveals: Reveals::Observation(Observation::IdentifierShowsAir),
        minutes: 5.0,
        money: 2.0,
        recovery: false,
        at_rest: true,
        not_r744: true,
        systems: 0b11111111,
        cautions: &[
            Caution::ForeignRefrigerant,
            Caution::Pressure,
            Caution::Frostbite,
            Caution::NoVenting,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow {
        check: Check::IdentifyRefrigerant,
        reveals: Reveals::Observation(Observation::IdentifierShowsOther),
        minutes: 5.0,
        money: 2.0,
        recovery: false,
        at_rest: true,
        not_r744: true,
        systems: 0b11111111,
        cautions: &[
            Caution::ForeignRefrigerant,
            Caution::Pressure,
            Caution::Frostbite,
            Caution::NoVenting,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
        ],
        once: None,
    },
    CheckRow { check: Check::RecoverAndWeigh, reveals: Reveals::Observation(Observation::RecoveredBelowLabel), minutes: 5.0, money: 0.0, recovery: true, at_rest: true, not_r744: true, systems: 0b11111111, cautions: &[Caution::ForeignRefrigerant], once: // common practice, no source: the charge is weighed where the charge is suspected
Some(Once { leads: &[Fault::Undercharge, Fault::Overcharge], or_open: &[] }) },
    CheckRow { check: Check::RecoverAndWeigh, reveals: Reveals::Observation(Observation::RecoveredAboveLabel), minutes: 5.0, money: 0.0, recovery: true, at_rest: true, not_r744: true, systems: 0b11111111, cautions: &[Caution::ForeignRefrigerant], once: // common practice, no source: the charge is weighed where the charge is suspected
Some(Once { leads: &[Fault::Undercharge, Fault::Overcharge], or_open: &[] }) },
    CheckRow {
        check: Check::AskHistory,
        reveals: Reveals::Observation(Observation::RecentlyFilled),
        minutes: 2.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[],
        once: None,
    },
    CheckRow {
        check: Check::CompareGauges,
        reveals: Reveals::Observation(Observation::SecondGaugesAgree),
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b11111111,
        cautions: &[
            Caution::Pressure,
            Caution::Frostbite,
            Caution::NoVenting,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
            Caution::CarbonDioxide,
        ],
        once: None,
    },
    CheckRow { check: Check::RoadTest, reveals: Reveals::Observation(Observation::CoolsOnTheRoad), minutes: 15.0, money: 0.0, recovery: false, at_rest: false, not_r744: false, systems: 0b11111111, cautions: &[], once: // common practice, no source: a complaint that the readings do not bear out is first made sure of
Some(Once { leads: &[Fault::NoFault], or_open: &[Check::ReadVent] }) },
    CheckRow {
        check: Check::CompareTransducer,
        reveals: Reveals::Observation(Observation::TransducerAgrees),
        minutes: 4.0,
        money: 0.0,
        recovery: false,
        at_rest: true,
        not_r744: false,
        systems: 0b11001100,
        cautions: &[
            Caution::Pressure,
            Caution::Frostbite,
            Caution::ConnectStopped,
            Caution::Flammable,
            Caution::HighVoltageCables,
            Caution::CarbonDioxide,
        ],
        once: None,
    },
];

/// What setting right each fault costs, in the order of its code; source: engineering judgement: minutes and money. What is said and the
/// cautions: common practice, no source.
pub(super) static REPAIRS: [Repair; 21] = [
    Repair {
        fault: Fault::NoFault,
        minutes: 10.0,
        money: 0.0,
        recovery: false,
        cautions: &[],
        says: "Nothing to repair: keep these readings on file as normal for this vehicle.",
        says_r744: "Nothing to repair: keep these readings on file as normal for this vehicle.",
    },
    Repair {
        fault: Fault::WornCompressor,
        minutes: 120.0,
        money: 500.0,
        recovery: true,
        cautions: &[Caution::MovingParts, Caution::HighVoltage, Caution::HotParts],
        says: "Recover the charge, replace the compressor and the drier, flush the lines or fit a filter, pressure-test, evacuate and charge by weight.",
        says_r744: "Release the charge slowly, replace the compressor and the drier, flush the lines or fit a filter, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::Undercharge,
        minutes: 60.0,
        money: 90.0,
        recovery: true,
        cautions: &[],
        says: "Recover what is left, find and repair the leak, pressure-test, evacuate and charge by weight.",
        says_r744: "Release what is left slowly, find and repair the leak with parts made for R-744, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::Overcharge,
        minutes: 10.0,
        money: 10.0,
        recovery: true,
        cautions: &[],
        says: "Recover the charge, evacuate and charge by weight to the amount on the label.",
        says_r744: "Release the charge slowly, evacuate and charge by weight to the amount on the label.",
    },
    Repair {
        fault: Fault::CondenserAirflowLoss,
        minutes: 45.0,
        money: 80.0,
        recovery: false,
        cautions: &[Caution::MovingParts, Caution::HotParts],
        says: "Clean the condenser and the radiator behind it, and repair the fan or its shroud.",
        says_r744: "Clean the condenser and the radiator behind it, and repair the fan or its shroud.",
    },
    Repair {
        fault: Fault::NonCondensables,
        minutes: 20.0,
        money: 40.0,
        recovery: true,
        cautions: &[Caution::ForeignRefrigerant],
        says: "Recover the charge, evacuate for long enough and charge clean refrigerant by weight.",
        says_r744: "Release the charge slowly, evacuate for long enough and charge clean refrigerant by weight.",
    },
    Repair {
        fault: Fault::LiquidLineRestriction,
        minutes: 60.0,
        money: 100.0,
        recovery: true,
        cautions: &[],
        says: "Recover the charge, replace the drier or the blocked part, pressure-test, evacuate and charge by weight.",
        says_r744: "Release the charge slowly, replace the drier or the blocked part, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::ExpansionValveStuckOpen,
        minutes: 90.0,
        money: 90.0,
        recovery: true,
        cautions: &[],
        says: "First check how the bulb is clamped and insulated. Then recover the charge, replace the valve and the drier, pressure-test, evacuate and charge by weight.",
        says_r744: "First check how the bulb is clamped and insulated. Then release the charge slowly, replace the valve and the drier, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::ExpansionValveStuckClosed,
        minutes: 90.0,
        money: 90.0,
        recovery: true,
        cautions: &[],
        says: "Recover the charge, replace the valve and the drier, look for debris, pressure-test, evacuate and charge by weight.",
        says_r744: "Release the charge slowly, replace the valve and the drier, look for debris, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::OrificeRestricted,
        minutes: 40.0,
        money: 30.0,
        recovery: true,
        cautions: &[],
        says: "Recover the charge, replace the orifice tube and the accumulator, find where the debris came from, pressure-test, evacuate and charge by weight.",
        says_r744: "Release the charge slowly, replace the orifice tube and the accumulator, find where the debris came from, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::EvaporatorAirflowLoss,
        minutes: 30.0,
        money: 40.0,
        recovery: false,
        cautions: &[Caution::MovingParts],
        says: "Replace the cabin filter, clean the evaporator and repair the blower.",
        says_r744: "Replace the cabin filter, clean the evaporator and repair the blower.",
    },
    Repair {
        fault: Fault::EvaporatorIcing,
        minutes: 40.0,
        money: 60.0,
        recovery: false,
        cautions: &[Caution::MovingParts],
        says: "Repair the evaporator sensor, thermostat or low-side switch that should have stopped the icing.",
        says_r744: "Repair the evaporator sensor, thermostat or low-side switch that should have stopped the icing.",
    },
    Repair {
        fault: Fault::MoistureIcing,
        minutes: 60.0,
        money: 80.0,
        recovery: true,
        cautions: &[],
        says: "Recover the charge, replace the drier, evacuate to a deep vacuum, hold it, and charge by weight.",
        says_r744: "Release the charge slowly, replace the drier, evacuate to a deep vacuum, hold it, and charge by weight.",
    },
    Repair {
        fault: Fault::CompressorControlFault,
        minutes: 60.0,
        money: 120.0,
        recovery: true,
        cautions: &[Caution::HighVoltage, Caution::MovingParts],
        says: "Check the wiring and the signal of the control first. If they are good, recover the charge, replace the control valve, pressure-test, evacuate and charge by weight.",
        says_r744: "Check the wiring and the signal of the control first. If they are good, release the charge slowly, replace the control valve, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::ClutchNotEngaged,
        minutes: 50.0,
        money: 100.0,
        recovery: false,
        cautions: &[Caution::MovingParts],
        says: "Trace the voltage to the clutch: pressure switches, relay, coil and air gap. A low charge also keeps the clutch from engaging.",
        says_r744: "Trace the voltage to the clutch: pressure switches, relay, coil and air gap. A low charge also keeps the clutch from engaging.",
    },
    Repair {
        fault: Fault::ClutchSlipping,
        minutes: 50.0,
        money: 90.0,
        recovery: false,
        cautions: &[Caution::MovingParts],
        says: "Tighten or replace the belt, adjust the air gap of the clutch, and check that the compressor turns easily.",
        says_r744: "Tighten or replace the belt, adjust the air gap of the clutch, and check that the compressor turns easily.",
    },
    Repair {
        fault: Fault::HeaterAirMixing,
        minutes: 60.0,
        money: 60.0,
        recovery: false,
        cautions: &[Caution::HotParts, Caution::HotCoolant],
        says: "Repair or adjust the blend door or the heater valve.",
        says_r744: "Repair or adjust the blend door or the heater valve.",
    },
    Repair {
        fault: Fault::HighSideRestriction,
        minutes: 90.0,
        money: 200.0,
        recovery: true,
        cautions: &[],
        says: "Recover the charge, replace the blocked condenser or line and the drier, pressure-test, evacuate and charge by weight.",
        says_r744: "Release the charge slowly, replace the blocked condenser or line and the drier, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::SuctionLineRestriction,
        minutes: 80.0,
        money: 100.0,
        recovery: true,
        cautions: &[],
        says: "Recover the charge, replace the kinked or blocked suction line, pressure-test, evacuate and charge by weight.",
        says_r744: "Release the charge slowly, replace the kinked or blocked suction line, pressure-test, evacuate and charge by weight.",
    },
    Repair {
        fault: Fault::WrongRefrigerant,
        minutes: 60.0,
        money: 120.0,
        recovery: true,
        cautions: &[Caution::ForeignRefrigerant],
        says: "Recover the charge into a cylinder for mixed refrigerant, evacuate and charge by weight with the refrigerant on the label.",
        says_r744: "Do not release what is in the circuit, for it is not known: have it collected, then evacuate and charge R-744 by weight.",
    },
    Repair {
        fault: Fault::GaugeError,
        minutes: 5.0,
        money: 0.0,
        recovery: false,
        cautions: &[Caution::Pressure, Caution::Frostbite],
        says: "Correct hoses, units and zero of the gauges and the contact of the probes, and read again.",
        says_r744: "Correct hoses, units and zero of the gauges and the contact of the probes, and read again.",
    },
];

/// Recovering, evacuating and charging again, paid once, min. Source: engineering judgement: minutes and money.
pub(super) const RECOVERY_MINUTES: f64 = 40.0;

/// Running the system after a repair to see whether it helped, min. Source: engineering judgement: minutes and money.
pub(super) const VERIFY_MINUTES: f64 = 10.0;

/// Until somebody who knows more has found the cause, min. Source: engineering judgement: minutes and money.
pub(super) const NONE_OF_THESE_MINUTES: f64 = 240.0;
