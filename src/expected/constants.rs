//! What a sound system reads, as published or judged.
//!
//! Generated from tables/bands/healthy.toml by tables/compile; edit the table, not this file.

use super::low_side::LowSide;
use crate::names::{Compressor, Expansion, Refrigerant};

/// Coolest ambient of the sources, K (55 °F). Source: makers' charts (from memory, a single case): orifice system, 13-18 °C.
pub(super) const AMBIENT_LOW_K: f64 = 285.95;

/// Warmest ambient of the sources, K (110 °F, with its last digit). Source: @military-manual-b.
pub(super) const AMBIENT_HIGH_K: f64 = 316.5;

/// Thinnest air, Pa (about 4,200 m). Source: engineering judgement: the altitude term is a derivation, not a measurement, and is not stretched further.
pub(super) const BAROMETER_LOW_PA: f64 = 60000.0;

/// Condensing temperature above the ambient of a standing vehicle, K. Source: @military-manual-b: middles 24.5, 23.1, 23.6, 22.6, 21.3 K at 70 to 110 °F; common practice, no source: 26.4 K at 74 °F.
pub(super) const APPROACH_STANDING_K: f64 = 24.5;

/// The same under ram air, K. Source: from memory, a single case, one maker's service page: 19 to 22 K (35 to 40 °F) above the ambient under ram air.
pub(super) const APPROACH_RAM_AIR_K: f64 = 20.5;

/// Vehicle speed over which the standing approach falls by 1/e towards that of ram air, m/s. Source: engineering judgement.
pub(super) const RAM_AIR_SPEED_M_S: f64 = 8.0;

/// Change of the approach per kelvin of ambient above the reference, K/K. Source: @military-manual-b: from 24.5 K at 21.1 °C to 21.3 K at 43.3 °C is -0.14 K/K; makers' charts (from memory, titles not kept; middle 25.6 K at 35 °C) soften it.
pub(super) const APPROACH_PER_AMBIENT: f64 = -0.12;

/// Spread of the approach between vehicles, downwards, K. Source: @military-manual-b: lowest limits 15.6 to 13.2 K; makers' charts (from memory, titles not kept): 19.2 K at 35 °C.
pub(super) const APPROACH_DOWN_K: f64 = 4.7;

/// Spread of the approach between vehicles, upwards, K. Source: makers' charts (from memory, titles not kept): 37.6 K at 35 °C; common practice, no source: 29.9 to 34 K at 80 to 90 °F.
pub(super) const APPROACH_UP_K: f64 = 6.5;

/// The approach grows as (standard barometer / barometer) to this power. Source: derivation: effectiveness 0.6 at sea level, air flow by volume kept, conductance as density to the power 0.5, heat rejected kept: 14 % more at 0.83 of the density.
pub(super) const APPROACH_THIN_AIR_EXPONENT: f64 = 0.7;

/// Rise of the condensing temperature per unit of humidity ratio, K. Source: makers' charts (from memory, titles not kept): 100 to 130 kPa, 3.1 K at 57 °C of R-134a, from about 0.010 to 0.028 kg/kg.
pub(super) const HIGH_SIDE_PER_HUMIDITY_RATIO_K: f64 = 170.0;

/// Rise of the evaporating temperature per unit of humidity ratio where nothing holds the low side, K. Source: makers' charts (from memory, titles not kept): 34 to 44 kPa, 2.7 K at 10 °C of R-134a, from about 0.010 to 0.028 kg/kg.
pub(super) const LOW_SIDE_PER_HUMIDITY_RATIO_K: f64 = 150.0;

/// Share of that rise, and of the effect of speed, that is left where the compressor holds the low side. Source: engineering judgement.
pub(super) const HELD_LOW_SIDE_SHARE: f64 = 0.3;

/// Change of the evaporating temperature per revolution per second of the engine, K s. Source: engineering judgement: 1.2 K for 600 rpm; a faster compressor draws the low side down.
pub(super) const LOW_SIDE_PER_ENGINE_SPEED_K_S: f64 = -0.12;

/// Change of the condensing temperature per revolution per second of the engine, K s. Source: engineering judgement: 1 K for 600 rpm.
pub(super) const HIGH_SIDE_PER_ENGINE_SPEED_K_S: f64 = 0.1;

/// Engine speed of the charts, 1/s (1,320 rpm). Source: @military-manual-b at 1,000 rpm and @military-manual-c at 1,500 rpm, their middle.
pub(super) const REFERENCE_ENGINE_SPEED_HZ: f64 = 22.0;

/// Beyond this distance from the reference the effect of engine speed grows no further, 1/s. Source: engineering judgement: the displacement of the air-side limits takes over.
pub(super) const ENGINE_SPEED_REACH_HZ: f64 = 20.0;

/// Evaporating temperature at the lowest point of a cycle, where the clutch lets go, K. Source: @military-manual-b: 10-20 psig (-14.1 to -5.5 °C) at 70 °F, 15-30 psig (-9.5 to 1.4 °C) at 90 °F and above; -12 °C is a low one.
pub(super) const CUT_OUT_K: f64 = 261.15;

/// Ambient above which a variable compressor at low speed may run out of stroke, K. Source: from memory, a single case, one maker's service text: hot, low engine speed, blower on maximum; the figure is engineering judgement.
pub(super) const STROKE_LIMIT_AMBIENT_K: f64 = 305.15;

/// Engine speed below which it may, 1/s. Source: from memory, a single case, one maker's service text: hot, low engine speed, blower on maximum; the figure is engineering judgement.
pub(super) const STROKE_LIMIT_ENGINE_SPEED_HZ: f64 = 20.0;

/// Upward spread of the low side that this adds, K. Source: engineering judgement.
pub(super) const STROKE_LIMIT_UP_K: f64 = 4.0;

/// Ambient at which locations are given, K (74 °F). Source: common practice, no source.
pub(super) const REFERENCE_AMBIENT_K: f64 = 296.45;

/// Vent air at the reference ambient, K (42 °F). Source: common practice, no source: 36 to 46 °F at 74 °F; @military-manual-c: 40 to 50 °F at 70 °F.
pub(super) const VENT_K: f64 = 278.75;

/// Change of the vent per kelvin of ambient, K/K. Source: engineering judgement: about 54 °F at 100 °F ambient; the @military-manual-c says rising with ambient, without a figure.
pub(super) const VENT_PER_AMBIENT: f64 = 0.42;

/// Spread of the vent between vehicles, downwards, K. Source: common practice, no source: 36 °F is the coldest of a sound vehicle at 74 °F.
pub(super) const VENT_DOWN_K: f64 = 2.0;

/// Spread of the vent between vehicles, upwards, K. Source: @military-manual-c: 50 °F at 70 °F; common practice, no source: 60 °F at 74 °F is a fault.
pub(super) const VENT_UP_K: f64 = 3.0;

/// Rise of the vent per unit of humidity ratio, K. Source: makers' charts (from memory, titles not kept): 3 K from about 0.010 to 0.028 kg/kg.
pub(super) const VENT_PER_HUMIDITY_RATIO_K: f64 = 165.0;

/// Rise (fresh air) or fall (recirculated air) of the vent as a share of the ambient above 20 °C. Source: engineering judgement; the direction is common practice.
pub(super) const VENT_FRESH_AIR_SHARE: f64 = 0.1;

/// Change of the vent from the highest to the lowest step of the blower, K. Source: engineering judgement; the direction is common practice.
pub(super) const VENT_LOWER_BLOWER_K: f64 = -2.0;

/// No sound system blows colder air than this for long: the evaporator would ice, K. Source: physics of the coil: water freezes at 273.15 K.
pub(super) const VENT_COLDEST_K: f64 = 273.65;

/// Superheat at the compressor with an expansion valve, K. Source: common practice, no source: 5 to 15 °F at the evaporator outlet; 2.5 K more along the suction line is engineering judgement.
pub(super) const SUPERHEAT_TXV_K: f64 = 8.0;

/// Its spread, K. Source: common practice, no source: 5 to 15 °F.
pub(super) const SUPERHEAT_TXV_SPREAD_K: f64 = 3.5;

/// Superheat after the accumulator of an orifice system, K. Source: engineering judgement: an accumulator gives off nearly saturated vapour, the suction line adds a few kelvin.
pub(super) const SUPERHEAT_ORIFICE_K: f64 = 4.0;

/// Its spread downwards, K. Source: engineering judgement.
pub(super) const SUPERHEAT_ORIFICE_DOWN_K: f64 = 2.5;

/// Its spread upwards, K. Source: engineering judgement.
pub(super) const SUPERHEAT_ORIFICE_UP_K: f64 = 4.0;

/// Subcooling in the liquid line, K. Source: common practice, no source: 10 to 20 °F at the condenser outlet.
pub(super) const SUBCOOLING_K: f64 = 7.5;

/// Its spread, K. Source: common practice, no source: 10 to 20 °F; a receiver without a subcooling pass gives less.
pub(super) const SUBCOOLING_SPREAD_K: f64 = 3.5;

/// Spread of the discharge superheat between vehicles, downwards, K. Source: @Darr1992: isentropic efficiency 0.675 to 0.578 from 1,000 to 3,000 rpm, and the spread of suction superheat.
pub(super) const DISCHARGE_SUPERHEAT_DOWN_K: f64 = 7.0;

/// The same upwards, K. Source: @Darr1992: isentropic efficiency 0.675 to 0.578 from 1,000 to 3,000 rpm, and the spread of suction superheat.
pub(super) const DISCHARGE_SUPERHEAT_UP_K: f64 = 9.0;

/// ln(1 + engagements per minute) of a cycling clutch at the reference ambient. Source: common practice, no source: a few times a minute in mild weather.
pub(super) const CLUTCH_CYCLES: f64 = 1.1;

/// Its change per kelvin of ambient: in hot weather the clutch stays in. Source: engineering judgement.
pub(super) const CLUTCH_CYCLES_PER_AMBIENT: f64 = -0.05;

/// Its spread. Source: engineering judgement.
pub(super) const CLUTCH_CYCLES_SPREAD: f64 = 0.4;

/// Spread of an unknown relative humidity around one half. Source: engineering judgement: 0 to 1 within two spreads.
pub(super) const HUMIDITY_UNKNOWN_SPREAD: f64 = 0.25;

/// Spread that an unknown air source adds, as a share of half the difference it makes. Source: engineering judgement.
pub(super) const AIR_SOURCE_UNKNOWN_SHARE: f64 = 0.5;

/// Time after which a system counts as settled, s. Source: common practice, no source: vent judged after 10 to 15 minutes.
pub(super) const SETTLED_S: f64 = 600.0;

/// Time over which the pressures settle by 1/e, s. Source: engineering judgement.
pub(super) const SETTLE_PRESSURES_S: f64 = 90.0;

/// Time over which the vent settles by 1/e, s. Source: engineering judgement: 5 % left after ten minutes.
pub(super) const SETTLE_VENT_S: f64 = 200.0;

/// Spread that the pressures have more at the moment of switching on, K. Source: engineering judgement.
pub(super) const UNSETTLED_PRESSURES_K: f64 = 5.0;

/// Median of a system at rest, K. Source: physics: saturation at the temperature of the coldest part; engineering judgement for the warmth of the vehicle.
pub(super) const REST_K: f64 = 1.0;

/// Its spread downwards, K. Source: engineering judgement.
pub(super) const REST_DOWN_K: f64 = 1.5;

/// Its spread upwards, K. Source: engineering judgement: parts still warm.
pub(super) const REST_UP_K: f64 = 3.0;

/// Evaporating temperature by what holds it.
pub(super) const LOW_SIDE: &[LowSide] = &[
    // common practice, no source: 35-45 psig (4.4 to 9.8 °C) at 74 °F, about keeps to 90 °F; makers' charts (from memory, titles not kept): 3.0 to 17.7 °C at 35 °C
    LowSide {
        compressor: Compressor::FixedClutch,
        expansion: Expansion::Txv,
        at_reference_k: 280.15,
        per_ambient: 0.2,
        down_k: 3.5,
        up_k: 4.0,
        held: false,
    },
    // makers' charts (from memory, a single case): -4.1 to 4.8 °C at 13-18 °C, 11.0 to 18.2 °C at 36-41 °C; common practice, no source: 35-45 psig at 74 °F
    LowSide {
        compressor: Compressor::FixedClutch,
        expansion: Expansion::OrificeTube,
        at_reference_k: 278.65,
        per_ambient: 0.6,
        down_k: 3.5,
        up_k: 3.5,
        held: false,
    },
    // makers' charts (from memory, a single case): -1.1 to 1.3 °C at 21 °C, -3.2 to -0.5 °C at 38 °C; from memory, a single case, one maker's service text: about 2 bar gauge; upwards engineering judgement: 35-45 psig of common practice is met on variable compressors too
    LowSide {
        compressor: Compressor::VariableInternal,
        expansion: Expansion::Txv,
        at_reference_k: 274.65,
        per_ambient: -0.1,
        down_k: 3.0,
        up_k: 4.5,
        held: true,
    },
    // makers' charts (from memory, a single case): -1.1 to 1.3 °C at 21 °C, -3.2 to -0.5 °C at 38 °C; from memory, a single case, one maker's service text: about 2 bar gauge; upwards engineering judgement: 35-45 psig of common practice is met on variable compressors too
    LowSide {
        compressor: Compressor::VariableInternal,
        expansion: Expansion::OrificeTube,
        at_reference_k: 274.65,
        per_ambient: -0.1,
        down_k: 3.0,
        up_k: 4.5,
        held: true,
    },
    // makers' charts (from memory, a single case): -1.1 to 1.3 °C at 21 °C, -3.2 to -0.5 °C at 38 °C; from memory, a single case, one maker's service text: about 2 bar gauge; upwards engineering judgement: 35-45 psig of common practice is met on variable compressors too
    LowSide {
        compressor: Compressor::VariableExternal,
        expansion: Expansion::Txv,
        at_reference_k: 274.65,
        per_ambient: -0.1,
        down_k: 3.0,
        up_k: 4.5,
        held: true,
    },
    // makers' charts (from memory, a single case): -1.1 to 1.3 °C at 21 °C, -3.2 to -0.5 °C at 38 °C; from memory, a single case, one maker's service text: about 2 bar gauge; upwards engineering judgement: 35-45 psig of common practice is met on variable compressors too
    LowSide {
        compressor: Compressor::VariableExternal,
        expansion: Expansion::OrificeTube,
        at_reference_k: 274.65,
        per_ambient: -0.1,
        down_k: 3.0,
        up_k: 4.5,
        held: true,
    },
    // engineering judgement: speed controlled to an evaporator air temperature of 3 to 5 °C
    LowSide {
        compressor: Compressor::Electric,
        expansion: Expansion::Txv,
        at_reference_k: 276.65,
        per_ambient: 0.1,
        down_k: 3.5,
        up_k: 4.5,
        held: true,
    },
    // engineering judgement: speed controlled to an evaporator air temperature of 3 to 5 °C
    LowSide {
        compressor: Compressor::Electric,
        expansion: Expansion::OrificeTube,
        at_reference_k: 276.65,
        per_ambient: 0.1,
        down_k: 3.5,
        up_k: 4.5,
        held: true,
    },
];

/// Discharge superheat, K, of the refrigerants that have bands.
pub(super) const DISCHARGE_SUPERHEAT_K: &[(Refrigerant, f64)] = &[
    (Refrigerant::R134a, 27.0), // computed: 3 °C evaporating, 8 K superheat, 50 °C condensing, isentropic efficiency 0.65 (@Darr1992) gives 26.8 K
    (Refrigerant::R407C, 37.0), // computed the same way, from dew 36.7 K
    (Refrigerant::R513A, 20.0), // computed the same way 19.7 K
    (Refrigerant::R152a, 40.0), // computed the same way 40.4 K; @Ghodbane1999, from memory: discharge line 5 to 20 K hotter than with R-134a in the same system
    (Refrigerant::R1234yf, 18.0), // computed the same way 15.1 K; @Lee2012, @NavarroEsbri2013, @Tasdemirci2022: discharge about 6.5 K cooler than R-134a in the same system, which gives 20.5 K
];
