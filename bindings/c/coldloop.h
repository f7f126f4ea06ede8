/*
 * coldloop - vehicle refrigerant properties and vehicle air-conditioning diagnosis.
 *
 * Conventions
 *
 *   Every quantity is plain SI, and its name says the unit: temperature_k in kelvin, pressure_pa_abs in pascals
 *   above vacuum, pressure_pa_gauge in pascals above the surrounding air.
 *
 *   A function that can fail returns a status: COLDLOOP_STATUS_OK (0), or why it has no answer. It writes its
 *   answer through an out-pointer; on failure it writes NaN there. The last parameter of such a function may point
 *   to a coldloop_error, which then receives the quantity, the value and the bounds; it may be NULL.
 *
 *   Codes enter as uint32_t and are checked; pass the enumerators below. Their numbers never change.
 *
 *   Pointers are NULL or point to memory that lives through the call; NULL where it is not allowed is answered
 *   with COLDLOOP_STATUS_NULL_POINTER. Text is UTF-8 and ends with a zero byte. What the library returns as
 *   const char * is constant and is never freed.
 *
 *   Nothing has to be aligned. Arguments have to be initialised: a struct in full, as {.size = sizeof x} does; of a
 *   coldloop_shares only the places in use. Memory for an answer need not be, except the size of a struct.
 *
 *   All arguments are copied before anything is written, so that an answer may overwrite an argument:
 *   coldloop_charge_shares(&charge, &charge, NULL). Two places for answers, the coldloop_error among them, must not
 *   overlap each other. Of the array forms, the answer of a row may overwrite that row, and no row that comes later.
 *
 *   A struct starts with its size. Set it to sizeof before the call: a struct may grow in a later version, and the size
 *   tells the library which fields the program knows. On failure its figures are NaN and its codes 0.
 *
 *   Array forms take a stride for every column, so that columns of plain arrays and fields of structs are served alike:
 *   the bytes from each row to the next. The pointer names the first row; a negative stride goes backwards from there,
 *   and 0 reads the same number for every row. Every row gets the bits of the single call, also where other rows
 *   fail.
 *
 *   The library holds no state, allocates nothing that outlives a call, takes no locks: every function may be
 *   called from any thread at any time. Recorders and sessions live in memory that the caller supplies: initialise it, copy
 *   it with memcpy if you like, and free it as your own; one of them is for one thread at a time.
 *
 * Chapters
 *
 *   constants, enumerations and structs;
 *   version; errors;
 *   refrigerants; saturation; states; transport properties; any charge;
 *   the surrounding air; moist air and water;
 *   superheat, subcooling and what else follows from readings; what a sound system should read;
 *   diagnosis, plan, proof and simulation; readings over time; a visit as it grows, and what a log says of it;
 *   units and text; names of the numbers.
 *
 * A first call
 *
 *     double pressure_pa_abs;
 *     if (coldloop_dew_pressure(COLDLOOP_REFRIGERANT_R134A, 273.15, &pressure_pa_abs, NULL) == COLDLOOP_STATUS_OK)
 *         printf("%.0f Pa\n", pressure_pa_abs);
 */

#ifndef COLDLOOP_H
#define COLDLOOP_H

/* Generated from bindings/c/src by tables/names; edit the sources, not this file. */

#include <stddef.h>
#include <stdint.h>

// The major version of this header.
#define COLDLOOP_VERSION_MAJOR 0

// The minor version of this header.
#define COLDLOOP_VERSION_MINOR 1

// The patch version of this header.
#define COLDLOOP_VERSION_PATCH 0

// Temperature (K) and absolute pressure (Pa).
#define COLDLOOP_PAIR_TP 1

// Temperature (K) and density (kg/m3).
#define COLDLOOP_PAIR_TD 2

// Temperature (K) and quality (0 liquid, 1 vapour).
#define COLDLOOP_PAIR_TQ 3

// Absolute pressure (Pa) and quality (0 liquid, 1 vapour).
#define COLDLOOP_PAIR_PQ 4

// Absolute pressure (Pa) and enthalpy (J/kg).
#define COLDLOOP_PAIR_PH 5

// Absolute pressure (Pa) and entropy (J/(kg K)).
#define COLDLOOP_PAIR_PS 6

// Enthalpy (J/kg) and entropy (J/(kg K)).
#define COLDLOOP_PAIR_HS 7

// The most parts of a charge, and the most components.
#define COLDLOOP_MOST_COMPONENTS 8

// Bytes that hold any answer of a function which writes text, the zero byte included. Only a refusal may be longer, where a
// key of the readings is very long.
#define COLDLOOP_ANSWER_MAX 262144

// Bytes of stack that coldloop_diagnose, coldloop_report, coldloop_page_html, coldloop_plan and coldloop_prove take at most, on a 64-bit machine; a
// test measures them.
#define COLDLOOP_STACK_MAX 65536

// Places for channels: that of a coldloop_channel is its number less 1. More than there are today.
#define COLDLOOP_MOST_CHANNELS 16

// Places for notes: that of a coldloop_log_note is its number less 1. More than there are today.
#define COLDLOOP_MOST_LOG_NOTES 16

// Places for the cautions of a step. More than there are today.
#define COLDLOOP_MOST_CAUTIONS 32

// Bytes of stack that any function of a recorder or a session takes at most, on a 64-bit machine; a test measures them.
#define COLDLOOP_SESSION_STACK_MAX 131072

// The most faults that a verdict names.
#define COLDLOOP_MOST_NAMED 4

// The pressure counts from vacuum.
#define COLDLOOP_DATUM_ABSOLUTE 1

// The pressure counts from the surrounding air.
#define COLDLOOP_DATUM_GAUGE 2

// The quantity that an error speaks of.
typedef enum coldloop_quantity {
    // Thermodynamic temperature, K.
    COLDLOOP_QUANTITY_TEMPERATURE = 1,
    // Temperature difference, K.
    COLDLOOP_QUANTITY_TEMPERATURE_DIFFERENCE = 2,
    // Absolute pressure, Pa.
    COLDLOOP_QUANTITY_ABSOLUTE_PRESSURE = 3,
    // Gauge pressure, Pa above the surrounding air.
    COLDLOOP_QUANTITY_GAUGE_PRESSURE = 4,
    // Geopotential altitude, m.
    COLDLOOP_QUANTITY_ALTITUDE = 5,
    // Relative humidity, 0 to 1.
    COLDLOOP_QUANTITY_RELATIVE_HUMIDITY = 6,
    // Mass of water per mass of dry air.
    COLDLOOP_QUANTITY_HUMIDITY_RATIO = 7,
    // Molar density, mol/m3.
    COLDLOOP_QUANTITY_DENSITY = 8,
    // Specific enthalpy, J/kg.
    COLDLOOP_QUANTITY_ENTHALPY = 9,
    // Specific entropy, J/(kg K).
    COLDLOOP_QUANTITY_ENTROPY = 10,
    // Mass fraction of vapour, 0 to 1.
    COLDLOOP_QUANTITY_QUALITY = 11,
    // Vehicle speed, m/s.
    COLDLOOP_QUANTITY_SPEED = 12,
    // Engine or compressor speed, revolutions per second.
    COLDLOOP_QUANTITY_ROTATIONAL_SPEED = 13,
    // Mass, kg.
    COLDLOOP_QUANTITY_MASS = 14,
    // Time, s.
    COLDLOOP_QUANTITY_DURATION = 15,
    // Events per second, 1/s.
    COLDLOOP_QUANTITY_FREQUENCY = 16,
    // Probability, 0 to 1.
    COLDLOOP_QUANTITY_PROBABILITY = 17,
    // Cost in the user's own unit.
    COLDLOOP_QUANTITY_COST = 18,
    // A name of the vocabulary.
    COLDLOOP_QUANTITY_NAME = 19,
    // Relative residual of a solver.
    COLDLOOP_QUANTITY_RESIDUAL = 20,
    // Voltage, V.
    COLDLOOP_QUANTITY_VOLTAGE = 21,
    // Blower setting, 0 (off) to 1 (highest).
    COLDLOOP_QUANTITY_BLOWER_SETTING = 22,
    // Rows of a table.
    COLDLOOP_QUANTITY_ROWS = 23,
    // Severity of a fault, 0 (sound) to 1.
    COLDLOOP_QUANTITY_SEVERITY = 24,
    // Volume, m3.
    COLDLOOP_QUANTITY_VOLUME = 25,
    // Size of a text, bytes.
    COLDLOOP_QUANTITY_SIZE = 26,
    // Displacement that the control commands, 0 to 1 of the full one.
    COLDLOOP_QUANTITY_DISPLACEMENT = 27,
    // Command of the condenser's fan, 0 (off) to 1 (full speed).
    COLDLOOP_QUANTITY_FAN_COMMAND = 28,
    // Evaporators of a system.
    COLDLOOP_QUANTITY_EVAPORATORS = 29,
    // Dynamic viscosity, Pa s.
    COLDLOOP_QUANTITY_VISCOSITY = 30,
    // Thermal conductivity, W/(m K).
    COLDLOOP_QUANTITY_CONDUCTIVITY = 31,
    // Surface tension, N/m.
    COLDLOOP_QUANTITY_SURFACE_TENSION = 32,
} coldloop_quantity;

// A refrigerant by its ANSI/ASHRAE Standard 34 designation.
typedef enum coldloop_refrigerant {
    // 1,1,1,2-Tetrafluoroethane.
    COLDLOOP_REFRIGERANT_R134A = 1,
    // 2,3,3,3-Tetrafluoroprop-1-ene.
    COLDLOOP_REFRIGERANT_R1234YF = 2,
    // Carbon dioxide.
    COLDLOOP_REFRIGERANT_R744 = 3,
    // 1,1-Difluoroethane.
    COLDLOOP_REFRIGERANT_R152A = 4,
    // Dichlorodifluoromethane.
    COLDLOOP_REFRIGERANT_R12 = 5,
    // Chlorodifluoromethane.
    COLDLOOP_REFRIGERANT_R22 = 6,
    // trans-1,3,3,3-Tetrafluoroprop-1-ene.
    COLDLOOP_REFRIGERANT_R1234ZE_E = 7,
    // Difluoromethane.
    COLDLOOP_REFRIGERANT_R32 = 8,
    // Pentafluoroethane.
    COLDLOOP_REFRIGERANT_R125 = 9,
    // 1,1,1-Trifluoroethane.
    COLDLOOP_REFRIGERANT_R143A = 10,
    // Propane.
    COLDLOOP_REFRIGERANT_R290 = 11,
    // Isobutane.
    COLDLOOP_REFRIGERANT_R600A = 12,
    // Butane.
    COLDLOOP_REFRIGERANT_R600 = 13,
    // 1-Chloro-1,2,2,2-tetrafluoroethane.
    COLDLOOP_REFRIGERANT_R124 = 14,
    // 1-Chloro-1,1-difluoroethane.
    COLDLOOP_REFRIGERANT_R142B = 15,
    // Chloropentafluoroethane.
    COLDLOOP_REFRIGERANT_R115 = 16,
    // Octafluoropropane.
    COLDLOOP_REFRIGERANT_R218 = 17,
    // 1,1,1,2,3,3,3-Heptafluoropropane.
    COLDLOOP_REFRIGERANT_R227EA = 18,
    // Trifluoroiodomethane.
    COLDLOOP_REFRIGERANT_R13I1 = 19,
    // Isopentane.
    COLDLOOP_REFRIGERANT_R601A = 20,
    // trans-1,1,1,4,4,4-Hexafluorobut-2-ene.
    COLDLOOP_REFRIGERANT_R1336MZZ_E = 21,
    // trans-1,2-Difluoroethene.
    COLDLOOP_REFRIGERANT_R1132E = 22,
    // Blend of R-125, R-143a and R-134a, 44/52/4 % by mass.
    COLDLOOP_REFRIGERANT_R404A = 23,
    // Blend of R-32, R-125 and R-134a, 20/40/40 % by mass.
    COLDLOOP_REFRIGERANT_R407A = 24,
    // Blend of R-32, R-125 and R-134a, 23/25/52 % by mass.
    COLDLOOP_REFRIGERANT_R407C = 25,
    // Blend of R-32, R-125 and R-134a, 30/30/40 % by mass.
    COLDLOOP_REFRIGERANT_R407F = 26,
    // Blend of R-32 and R-125, 50/50 % by mass.
    COLDLOOP_REFRIGERANT_R410A = 27,
    // Blend of R-32, R-125 and R-1234yf, 11/59/30 % by mass.
    COLDLOOP_REFRIGERANT_R452A = 28,
    // Blend of R-32, R-125, R-1234yf, R-134a and R-1234ze(E), 26/26/20/21/7 % by mass.
    COLDLOOP_REFRIGERANT_R448A = 29,
    // Blend of R-32, R-125, R-1234yf and R-134a, 24.3/24.7/25.3/25.7 % by mass.
    COLDLOOP_REFRIGERANT_R449A = 30,
    // Blend of R-32 and R-1234yf, 68.9/31.1 % by mass.
    COLDLOOP_REFRIGERANT_R454B = 31,
    // Blend of R-32 and R-1234yf, 21.5/78.5 % by mass.
    COLDLOOP_REFRIGERANT_R454C = 32,
    // Blend of R-744, R-32 and R-1234yf, 3/21.5/75.5 % by mass.
    COLDLOOP_REFRIGERANT_R455A = 33,
    // Blend of R-1234yf and R-134a, 56/44 % by mass.
    COLDLOOP_REFRIGERANT_R513A = 34,
    // Blend of R-134a and R-1234ze(E), 42/58 % by mass.
    COLDLOOP_REFRIGERANT_R450A = 35,
    // Blend of R-125 and R-143a, 50/50 % by mass.
    COLDLOOP_REFRIGERANT_R507A = 36,
    // Blend of R-125, R-134a and R-600a, 65.1/31.5/3.4 % by mass.
    COLDLOOP_REFRIGERANT_R422D = 37,
    // Blend of R-32, R-125, R-134a, R-600 and R-601a, 8.5/45/44.2/1.7/0.6 % by mass.
    COLDLOOP_REFRIGERANT_R438A = 38,
    // Blend of R-22, R-152a and R-124, 33/15/52 % by mass.
    COLDLOOP_REFRIGERANT_R401C = 39,
    // Blend of R-22, R-600a and R-142b, 55/4/41 % by mass.
    COLDLOOP_REFRIGERANT_R406A = 40,
    // Blend of R-22, R-124 and R-142b, 60/25/15 % by mass.
    COLDLOOP_REFRIGERANT_R409A = 41,
    // Blend of R-218, R-134a and R-600a, 9/88/3 % by mass.
    COLDLOOP_REFRIGERANT_R413A = 42,
    // Blend of R-22, R-124, R-600a and R-142b, 51/28.5/4/16.5 % by mass.
    COLDLOOP_REFRIGERANT_R414A = 43,
    // Blend of R-22, R-124, R-600a and R-142b, 50/39/1.5/9.5 % by mass.
    COLDLOOP_REFRIGERANT_R414B = 44,
    // Blend of R-134a, R-124 and R-600, 59/39.5/1.5 % by mass.
    COLDLOOP_REFRIGERANT_R416A = 45,
    // Blend of R-134a and R-142b, 88/12 % by mass.
    COLDLOOP_REFRIGERANT_R420A = 46,
    // Blend of R-125, R-134a, R-600 and R-601a, 5.1/93/1.3/0.6 % by mass.
    COLDLOOP_REFRIGERANT_R426A = 47,
    // Blend of R-12 and R-152a, 73.8/26.2 % by mass.
    COLDLOOP_REFRIGERANT_R500 = 48,
    // Blend of R-22 and R-115, 48.8/51.2 % by mass.
    COLDLOOP_REFRIGERANT_R502 = 49,
    // Blend of R-32, R-152a and R-1234ze(E), 12/5/83 % by mass.
    COLDLOOP_REFRIGERANT_R444A = 50,
    // Blend of R-744, R-134a and R-1234ze(E), 6/9/85 % by mass.
    COLDLOOP_REFRIGERANT_R445A = 51,
    // Blend of R-32, R-134a and R-1234ze(E), 6/45/49 % by mass.
    COLDLOOP_REFRIGERANT_R456A = 52,
    // Blend of R-32, R-1234yf and R-152a, 18/70/12 % by mass.
    COLDLOOP_REFRIGERANT_R457A = 53,
    // Blend of R-1132(E) and R-1234yf, 23/77 % by mass.
    COLDLOOP_REFRIGERANT_R474A = 54,
    // Blend of R-1234yf, R-134a and R-152a, 77.5/8.5/14 % by mass.
    COLDLOOP_REFRIGERANT_R516A = 55,
    // Pentane.
    COLDLOOP_REFRIGERANT_R601 = 56,
    // Blend of R-125, R-134a, R-600 and R-601, 19.5/78.5/1.4/0.6 % by mass.
    COLDLOOP_REFRIGERANT_R437A = 57,
} coldloop_refrigerant;

// Safety group of ANSI/ASHRAE Standard 34: toxicity A or B, flammability 1, 2L, 2 or 3.
typedef enum coldloop_safety_group {
    // Lower toxicity, no flame propagation.
    COLDLOOP_SAFETY_GROUP_A1 = 1,
    // Lower toxicity, lower flammability.
    COLDLOOP_SAFETY_GROUP_A2L = 2,
    // Lower toxicity, flammable.
    COLDLOOP_SAFETY_GROUP_A2 = 3,
    // Lower toxicity, higher flammability.
    COLDLOOP_SAFETY_GROUP_A3 = 4,
} coldloop_safety_group;

// The phase of a state.
typedef enum coldloop_phase {
    // Liquid below the critical temperature.
    COLDLOOP_PHASE_LIQUID = 1,
    // Vapour below the critical temperature.
    COLDLOOP_PHASE_VAPOUR = 2,
    // Liquid and vapour in equilibrium.
    COLDLOOP_PHASE_TWO_PHASE = 3,
    // Above the critical temperature.
    COLDLOOP_PHASE_SUPERCRITICAL = 4,
} coldloop_phase;

// The state at which enthalpy and entropy are counted from; differences do not depend on it.
typedef enum coldloop_reference {
    // Saturated liquid at 0 °C has 200 kJ/kg and 1 kJ/(kg K).
    COLDLOOP_REFERENCE_IIR = 1,
    // Saturated liquid at -40 °C has zero of both.
    COLDLOOP_REFERENCE_ASHRAE = 2,
    // Saturated liquid at 101.325 kPa has zero of both.
    COLDLOOP_REFERENCE_NORMAL_BOILING_POINT = 3,
} coldloop_reference;

// The expansion device.
typedef enum coldloop_expansion {
    // Thermostatic expansion valve, with a receiver-drier.
    COLDLOOP_EXPANSION_TXV = 1,
    // Fixed orifice tube, with a suction accumulator.
    COLDLOOP_EXPANSION_ORIFICE_TUBE = 2,
} coldloop_expansion;

// The kind of compressor and of its control.
typedef enum coldloop_compressor {
    // Fixed displacement, cycled by a clutch.
    COLDLOOP_COMPRESSOR_FIXED_CLUTCH = 1,
    // Variable displacement, controlled by its own valve.
    COLDLOOP_COMPRESSOR_VARIABLE_INTERNAL = 2,
    // Variable displacement, controlled by an electric valve.
    COLDLOOP_COMPRESSOR_VARIABLE_EXTERNAL = 3,
    // Motor-driven, controlled by speed; high voltage.
    COLDLOOP_COMPRESSOR_ELECTRIC = 4,
} coldloop_compressor;

// Where the cabin blower draws its air from.
typedef enum coldloop_air_source {
    // Outside air.
    COLDLOOP_AIR_SOURCE_FRESH = 1,
    // Cabin air.
    COLDLOOP_AIR_SOURCE_RECIRCULATED = 2,
} coldloop_air_source;

// How true a pressure gauge is, as its maker states it.
typedef enum coldloop_gauge_class {
    // EN 837-1 class 1.0: within 1 % of the span.
    COLDLOOP_GAUGE_CLASS_CLASS1 = 1,
    // EN 837-1 class 1.6: within 1.6 % of the span.
    COLDLOOP_GAUGE_CLASS_CLASS1P6 = 2,
    // EN 837-1 class 2.5: within 2.5 % of the span.
    COLDLOOP_GAUGE_CLASS_CLASS2P5 = 3,
    // ASME B40.100 grade A: within 1 % of the span in its middle half, 2 % outside.
    COLDLOOP_GAUGE_CLASS_GRADE_A = 4,
    // ASME B40.100 grade B: within 2 % of the span in its middle half, 3 % outside.
    COLDLOOP_GAUGE_CLASS_GRADE_B = 5,
    // Electronic manifold: within 0.5 % of the span.
    COLDLOOP_GAUGE_CLASS_DIGITAL = 6,
} coldloop_gauge_class;

// What measured a temperature.
typedef enum coldloop_thermometer {
    // Thermocouple of type K, clamped to the line.
    COLDLOOP_THERMOMETER_CLAMP_THERMOCOUPLE = 1,
    // Thermistor, clamped to the line.
    COLDLOOP_THERMOMETER_CLAMP_THERMISTOR = 2,
    // Bimetal thermometer with a stem and a dial.
    COLDLOOP_THERMOMETER_POCKET_DIAL = 3,
    // Electronic thermometer with a stem.
    COLDLOOP_THERMOMETER_POCKET_DIGITAL = 4,
    // Infrared thermometer on a dull dark spot of the line.
    COLDLOOP_THERMOMETER_INFRARED = 5,
} coldloop_thermometer;

// A state of the system that explains its readings; `no-fault` is one of them.
typedef enum coldloop_fault {
    // No fault: the system is normal.
    COLDLOOP_FAULT_NO_FAULT = 0,
    // The compressor pumps too little: worn pistons, valves or gasket.
    COLDLOOP_FAULT_WORN_COMPRESSOR = 1,
    // Too little refrigerant.
    COLDLOOP_FAULT_UNDERCHARGE = 2,
    // Too much refrigerant.
    COLDLOOP_FAULT_OVERCHARGE = 3,
    // Too little air through the condenser: dirt, fan, shroud.
    COLDLOOP_FAULT_CONDENSER_AIRFLOW_LOSS = 4,
    // Air or another non-condensable gas in the circuit.
    COLDLOOP_FAULT_NON_CONDENSABLES = 5,
    // A restriction between condenser and expansion device, drier included.
    COLDLOOP_FAULT_LIQUID_LINE_RESTRICTION = 6,
    // The expansion valve feeds too much.
    COLDLOOP_FAULT_EXPANSION_VALVE_STUCK_OPEN = 7,
    // The expansion valve feeds too little.
    COLDLOOP_FAULT_EXPANSION_VALVE_STUCK_CLOSED = 8,
    // The orifice tube or its screen is clogged.
    COLDLOOP_FAULT_ORIFICE_RESTRICTED = 9,
    // Too little air over the evaporator: filter, blower, dirt.
    COLDLOOP_FAULT_EVAPORATOR_AIRFLOW_LOSS = 10,
    // Frost blocks the evaporator because its low limit fails.
    COLDLOOP_FAULT_EVAPORATOR_ICING = 11,
    // Water in the refrigerant freezes at the expansion device.
    COLDLOOP_FAULT_MOISTURE_ICING = 12,
    // The displacement or speed control holds the compressor back.
    COLDLOOP_FAULT_COMPRESSOR_CONTROL_FAULT = 13,
    // The compressor is not driven.
    COLDLOOP_FAULT_CLUTCH_NOT_ENGAGED = 14,
    // The clutch or the belt slips.
    COLDLOOP_FAULT_CLUTCH_SLIPPING = 15,
    // Warm air joins the cold: blend door or heater valve.
    COLDLOOP_FAULT_HEATER_AIR_MIXING = 16,
    // A restriction between compressor and condenser outlet.
    COLDLOOP_FAULT_HIGH_SIDE_RESTRICTION = 17,
    // A restriction between evaporator and compressor.
    COLDLOOP_FAULT_SUCTION_LINE_RESTRICTION = 18,
    // The charge is another refrigerant or a mixture.
    COLDLOOP_FAULT_WRONG_REFRIGERANT = 19,
    // A gauge, its zero, its unit, its hose or a thermometer misleads.
    COLDLOOP_FAULT_GAUGE_ERROR = 20,
} coldloop_fault;

// What the readings allow one to say.
typedef enum coldloop_verdict {
    // No fault stands out: the readings are normal here today.
    COLDLOOP_VERDICT_HEALTHY = 1,
    // One fault explains the readings.
    COLDLOOP_VERDICT_NAMED_FAULT = 2,
    // Not settled: more than one fault explains the readings.
    COLDLOOP_VERDICT_CANNOT_TELL = 3,
    // No single explanation fits: measure again.
    COLDLOOP_VERDICT_NOTHING_FITS = 4,
    // Too little was measured to judge.
    COLDLOOP_VERDICT_NOT_ENOUGH_EVIDENCE = 5,
} coldloop_verdict;

// What a pressure at rest says of one refrigerant.
typedef enum coldloop_pressure_match {
    // The charge can be this refrigerant, and nothing else.
    COLDLOOP_PRESSURE_MATCH_AGREES = 1,
    // The pressure is higher: with this refrigerant there is gas that does not condense, or another refrigerant.
    COLDLOOP_PRESSURE_MATCH_TOO_HIGH = 2,
    // The pressure is lower: it is another refrigerant, or no liquid is left, or the temperatures had not evened out.
    COLDLOOP_PRESSURE_MATCH_TOO_LOW = 3,
} coldloop_pressure_match;

// Where a circuit at rest leaks.
typedef enum coldloop_leak_phase {
    // Above the liquid: vapour escapes.
    COLDLOOP_LEAK_PHASE_VAPOUR = 1,
    // Below its surface: liquid escapes, and vapour when it is gone.
    COLDLOOP_LEAK_PHASE_LIQUID = 2,
} coldloop_leak_phase;

// Where the low-side port stands.
typedef enum coldloop_low_port {
    // At the evaporator or accumulator, before the suction line.
    COLDLOOP_LOW_PORT_EVAPORATOR = 1,
    // At the compressor, behind the suction line.
    COLDLOOP_LOW_PORT_COMPRESSOR = 2,
} coldloop_low_port;

// Where the high-side port stands.
typedef enum coldloop_high_port {
    // On the discharge line, before the condenser.
    COLDLOOP_HIGH_PORT_DISCHARGE = 1,
    // On the liquid line, behind the condenser.
    COLDLOOP_HIGH_PORT_LIQUID = 2,
} coldloop_high_port;

// A reading that an instrument gives.
typedef enum coldloop_reading_kind {
    // Low-side pressure.
    COLDLOOP_READING_KIND_LOW_SIDE = 1,
    // High-side pressure.
    COLDLOOP_READING_KIND_HIGH_SIDE = 2,
    // Air temperature at the centre vent.
    COLDLOOP_READING_KIND_VENT = 3,
    // Cabin air temperature.
    COLDLOOP_READING_KIND_CABIN = 4,
    // Temperature of the suction line at the compressor.
    COLDLOOP_READING_KIND_SUCTION_LINE = 5,
    // Temperature of the discharge line at the compressor.
    COLDLOOP_READING_KIND_DISCHARGE_LINE = 6,
    // Temperature of the liquid line before the expansion device.
    COLDLOOP_READING_KIND_LIQUID_LINE = 7,
    // Temperature of the line at the condenser outlet.
    COLDLOOP_READING_KIND_CONDENSER_OUTLET = 8,
    // Clutch engagements per minute.
    COLDLOOP_READING_KIND_CLUTCH_CYCLES = 9,
    // High-side pressure that the vehicle's own transducer tells a scan tool.
    COLDLOOP_READING_KIND_HIGH_SIDE_TRANSDUCER = 10,
    // Temperature of the fins, or of the air behind the evaporator, that the vehicle's own sensor tells a scan tool.
    COLDLOOP_READING_KIND_EVAPORATOR_SENSOR = 11,
} coldloop_reading_kind;

// What eyes, ears and hands find, answered yes or no.
typedef enum coldloop_observation {
    // The clutch is engaged: hub and pulley turn together.
    COLDLOOP_OBSERVATION_CLUTCH_ENGAGED = 1,
    // The clutch coil gets its voltage when cooling is asked for.
    COLDLOOP_OBSERVATION_CLUTCH_HAS_VOLTAGE = 2,
    // With the belt on and the clutch off, the hub turns by hand without resistance.
    COLDLOOP_OBSERVATION_HUB_TURNS_FREELY = 3,
    // With the clutch off, the hub cannot be turned by hand.
    COLDLOOP_OBSERVATION_HUB_LOCKED = 4,
    // The belt or the clutch slips: squeal, smell, glaze, or a hub slower than its pulley.
    COLDLOOP_OBSERVATION_BELT_SLIPS = 5,
    // The compressor knocks or rattles while it is engaged.
    COLDLOOP_OBSERVATION_COMPRESSOR_NOISY = 6,
    // The condenser fan runs while cooling is asked for.
    COLDLOOP_OBSERVATION_CONDENSER_FAN_RUNNING = 7,
    // The face of the condenser is covered by dirt, leaves or bent fins.
    COLDLOOP_OBSERVATION_CONDENSER_FACE_BLOCKED = 8,
    // Water sprayed on the condenser lowers the high side strongly within a minute.
    COLDLOOP_OBSERVATION_WATER_LOWERS_HIGH_SIDE = 9,
    // A step of temperature is felt along one condenser pass.
    COLDLOOP_OBSERVATION_CONDENSER_HAS_TEMPERATURE_STEP = 10,
    // A tube in the middle of the condenser is clearly colder than the saturation temperature of the high side.
    COLDLOOP_OBSERVATION_CONDENSER_TUBE_BELOW_SATURATION = 11,
    // Bubbles or foam stand in the sight glass after some minutes of steady running.
    COLDLOOP_OBSERVATION_SIGHT_GLASS_BUBBLES = 12,
    // Fresh oil or dye shows at a joint, hose, seal or heat exchanger.
    COLDLOOP_OBSERVATION_OIL_TRACES = 13,
    // The expansion device hisses or gurgles while the system runs.
    COLDLOOP_OBSERVATION_HISSING_AT_EXPANSION = 14,
    // The liquid line is clearly colder after the drier, or after another point, than before it.
    COLDLOOP_OBSERVATION_DROP_ACROSS_DRIER = 15,
    // Frost or a sharp cold step stands at the inlet of the expansion device.
    COLDLOOP_OBSERVATION_FROST_AT_EXPANSION = 16,
    // Frost or heavy sweat covers the suction line up to the compressor.
    COLDLOOP_OBSERVATION_FROST_ON_SUCTION_LINE = 17,
    // A step of temperature or frost begins at one point of the suction line.
    COLDLOOP_OBSERVATION_SUCTION_LINE_STEP = 18,
    // The low side follows when the bulb or head of the valve is warmed and cooled.
    COLDLOOP_OBSERVATION_LOW_SIDE_FOLLOWS_BULB = 19,
    // Frost covers the evaporator face.
    COLDLOOP_OBSERVATION_EVAPORATOR_FROSTED = 20,
    // The air at the vents weakens after some minutes and returns after a pause.
    COLDLOOP_OBSERVATION_AIRFLOW_FADES = 21,
    // Cooling comes and goes in minutes while the low side falls towards vacuum and recovers.
    COLDLOOP_OBSERVATION_COOLING_COMES_AND_GOES = 22,
    // Little air leaves the vents with the blower at its highest step.
    COLDLOOP_OBSERVATION_AIRFLOW_WEAK = 23,
    // Closing the heater valve, or clamping the heater hose, makes the vent clearly colder.
    COLDLOOP_OBSERVATION_CLOSING_HEATER_COOLS_VENT = 24,
    // Raising the engine to about 2,000 rpm lowers the low side and raises the high side.
    COLDLOOP_OBSERVATION_SPEED_LOWERS_LOW_SIDE = 25,
    // Commanding the compressor up with a scan tool moves both pressures apart.
    COLDLOOP_OBSERVATION_CONTROL_SIGNAL_MOVES_PRESSURES = 26,
    // After switching off, the two sides are equal in less than two minutes.
    COLDLOOP_OBSERVATION_SIDES_EQUALISE_QUICKLY = 27,
    // At rest and at one temperature, the pressure is clearly above saturation at the ambient.
    COLDLOOP_OBSERVATION_REST_PRESSURE_HIGH = 28,
    // At rest and at one temperature, the pressure is clearly below saturation at the ambient.
    COLDLOOP_OBSERVATION_REST_PRESSURE_LOW = 29,
    // A refrigerant identifier shows air.
    COLDLOOP_OBSERVATION_IDENTIFIER_SHOWS_AIR = 30,
    // A refrigerant identifier shows another refrigerant than the label.
    COLDLOOP_OBSERVATION_IDENTIFIER_SHOWS_OTHER = 31,
    // Clearly less refrigerant was recovered than the label names.
    COLDLOOP_OBSERVATION_RECOVERED_BELOW_LABEL = 32,
    // Clearly more refrigerant was recovered than the label names.
    COLDLOOP_OBSERVATION_RECOVERED_ABOVE_LABEL = 33,
    // Refrigerant was added since the system last worked well.
    COLDLOOP_OBSERVATION_RECENTLY_FILLED = 34,
    // A second set of gauges shows the same pressures.
    COLDLOOP_OBSERVATION_SECOND_GAUGES_AGREE = 35,
    // After ten to fifteen minutes on the road the air at the vents is cold, and stays cold.
    COLDLOOP_OBSERVATION_COOLS_ON_THE_ROAD = 36,
    // The vehicle's own transducer of the high side and the gauge show the same pressure.
    COLDLOOP_OBSERVATION_TRANSDUCER_AGREES = 37,
    // Dye of this refrigerant charge glows under UV light on the outside of the circuit.
    COLDLOOP_OBSERVATION_DYE_GLOWS = 38,
    // An electronic detector of refrigerant alarms at one place again and again.
    COLDLOOP_OBSERVATION_DETECTOR_ALARMS = 39,
    // Trace gas or test gas under pressure escapes at a place that a detector or foam shows.
    COLDLOOP_OBSERVATION_TRACE_GAS_ESCAPES = 40,
    // A test pressure holds: the loss is surely less than allowed.
    COLDLOOP_OBSERVATION_TEST_PRESSURE_HOLDS = 41,
    // A deep vacuum holds: no air comes in and no moisture boils.
    COLDLOOP_OBSERVATION_VACUUM_HOLDS = 42,
    // The circuit was evacuated deeply before it was filled.
    COLDLOOP_OBSERVATION_EVACUATED_BEFORE_FILLING = 43,
} coldloop_observation;

// A further check: something to read, to look at, or to try.
typedef enum coldloop_check {
    // Read the low side with the system running.
    COLDLOOP_CHECK_READ_LOW_SIDE = 1,
    // Read the high side with the system running.
    COLDLOOP_CHECK_READ_HIGH_SIDE = 2,
    // Read the air at the centre vent after ten minutes on the coldest setting.
    COLDLOOP_CHECK_READ_VENT = 3,
    // Clamp a thermometer to the suction line at the compressor: it gives the superheat.
    COLDLOOP_CHECK_READ_SUCTION_LINE = 4,
    // Clamp a thermometer to the liquid line: it gives the subcooling.
    COLDLOOP_CHECK_READ_LIQUID_LINE = 5,
    // Clamp a thermometer to the discharge line.
    COLDLOOP_CHECK_READ_DISCHARGE_LINE = 6,
    // Count how often the clutch engages in three minutes.
    COLDLOOP_CHECK_COUNT_CLUTCH_CYCLES = 7,
    // Run the A/C on full cooling and read both sides after five minutes.
    COLDLOOP_CHECK_RUN_AND_READ = 8,
    // Check whether hub and pulley turn together.
    COLDLOOP_CHECK_WATCH_CLUTCH = 9,
    // Measure the voltage at the clutch connector with the A/C switched on.
    COLDLOOP_CHECK_MEASURE_CLUTCH_VOLTAGE = 10,
    // Engine off, belt on, clutch off: turn the hub by hand. A good compressor turns with an even resistance.
    COLDLOOP_CHECK_TURN_HUB = 11,
    // Watch belt and hub under load, and listen for a squeal.
    COLDLOOP_CHECK_LOOK_FOR_SLIP = 12,
    // Listen to the compressor while the clutch engages and while it runs.
    COLDLOOP_CHECK_LISTEN_TO_COMPRESSOR = 13,
    // Check whether the condenser fan runs.
    COLDLOOP_CHECK_WATCH_CONDENSER_FAN = 14,
    // Inspect the face of the condenser with a lamp, also between it and the radiator.
    COLDLOOP_CHECK_LOOK_AT_CONDENSER_FACE = 15,
    // Spray water on the condenser and watch the high side.
    COLDLOOP_CHECK_SPRAY_CONDENSER = 16,
    // Move a thermometer along the condenser from inlet to outlet and look for a sudden step.
    COLDLOOP_CHECK_FEEL_CONDENSER_PASSES = 17,
    // Clamp a thermometer to a tube in the middle of the condenser and compare it with the saturation temperature of the high side.
    COLDLOOP_CHECK_CLAMP_CONDENSER_MIDDLE = 18,
    // Look at the sight glass after five minutes of steady running.
    COLDLOOP_CHECK_LOOK_AT_SIGHT_GLASS = 19,
    // Search for a leak: look for oil and dye, and check the joints with an electronic detector.
    COLDLOOP_CHECK_LOOK_FOR_LEAKS = 20,
    // Listen at the expansion valve or orifice tube.
    COLDLOOP_CHECK_LISTEN_AT_EXPANSION = 21,
    // Measure the temperature of the liquid line before and after the drier.
    COLDLOOP_CHECK_DROP_ACROSS_DRIER = 22,
    // Look for frost at the inlet of the expansion valve or orifice tube.
    COLDLOOP_CHECK_LOOK_AT_EXPANSION = 23,
    // Check how far frost or sweat reaches along the suction line.
    COLDLOOP_CHECK_LOOK_AT_SUCTION_LINE = 24,
    // Move a thermometer along the suction line and look for a sudden step.
    COLDLOOP_CHECK_FOLLOW_SUCTION_LINE = 25,
    // Warm the bulb or head of the valve with the hand, then cool it with ice, and watch the low side.
    COLDLOOP_CHECK_WARM_AND_CHILL_BULB = 26,
    // Inspect the evaporator through the blower or a drain opening.
    COLDLOOP_CHECK_LOOK_AT_EVAPORATOR = 27,
    // Watch the vent and the low side for twenty minutes of running.
    COLDLOOP_CHECK_WATCH_TWENTY_MINUTES = 28,
    // Feel the air at the vents with the blower at its highest step, and inspect the cabin filter.
    COLDLOOP_CHECK_FEEL_AIRFLOW = 29,
    // Close the heater valve or clamp the heater hose and watch the vent.
    COLDLOOP_CHECK_CLOSE_HEATER = 30,
    // Raise the engine speed to about 2,000 rpm and watch both sides.
    COLDLOOP_CHECK_RAISE_ENGINE_SPEED = 31,
    // Command the compressor up and down with a scan tool and watch both sides.
    COLDLOOP_CHECK_DRIVE_CONTROL = 32,
    // Switch the A/C off and time how long both sides take to become equal.
    COLDLOOP_CHECK_TIME_EQUALISATION = 33,
    // Leave the system off until all parts have one temperature, then compare its pressure with the saturation pressure at ambient.
    COLDLOOP_CHECK_READ_REST_PRESSURE = 34,
    // Connect a refrigerant identifier to the low side.
    COLDLOOP_CHECK_IDENTIFY_REFRIGERANT = 35,
    // Recover the charge and weigh it against the label.
    COLDLOOP_CHECK_RECOVER_AND_WEIGH = 36,
    // Ask who last serviced the system, and what was added.
    COLDLOOP_CHECK_ASK_HISTORY = 37,
    // Check hoses, units and zero of the gauges and the contact of every probe, then compare with a second set of gauges.
    COLDLOOP_CHECK_COMPARE_GAUGES = 38,
    // Drive for ten to fifteen minutes on the coldest setting and check that it cools and keeps cooling.
    COLDLOOP_CHECK_ROAD_TEST = 39,
    // Compare the high side of the gauge with the vehicle's own pressure transducer on a scan tool.
    COLDLOOP_CHECK_COMPARE_TRANSDUCER = 40,
    // Search for the leak with dry nitrogen: empty the circuit, bring it to test pressure and check every joint with leak spray.
    COLDLOOP_CHECK_SEARCH_WITH_NITROGEN = 41,
} coldloop_check;

// How a check can come out.
typedef enum coldloop_result_kind {
    // The answer is yes.
    COLDLOOP_RESULT_KIND_YES = 1,
    // The answer is no.
    COLDLOOP_RESULT_KIND_NO = 2,
    // Below the normal range.
    COLDLOOP_RESULT_KIND_BELOW = 3,
    // Within the normal range.
    COLDLOOP_RESULT_KIND_WITHIN = 4,
    // Above the normal range.
    COLDLOOP_RESULT_KIND_ABOVE = 5,
} coldloop_result_kind;

// What can hurt, and what the law asks.
typedef enum coldloop_caution {
    // The circuit is under pressure even at rest: wear eye protection, and open no joint before the charge is out.
    COLDLOOP_CAUTION_PRESSURE = 1,
    // Escaping refrigerant freezes skin and eyes: wear gloves and goggles.
    COLDLOOP_CAUTION_FROSTBITE = 2,
    // Belts and fans start without warning, and so does the engine of a hybrid: keep hands, hair and clothes away; turn the hub only with the engine off and the key out.
    COLDLOOP_CAUTION_MOVING_PARTS = 3,
    // The refrigerant is flammable: keep ignition sources away, ventilate, and use only gauges, identifiers and machines made for flammable refrigerants.
    COLDLOOP_CAUTION_FLAMMABLE = 4,
    // The compressor runs on high voltage: only qualified persons may work on it, after the vehicle's own disconnection procedure and a check that no voltage is left.
    COLDLOOP_CAUTION_HIGH_VOLTAGE = 5,
    // Do not release refrigerant: it is unlawful in many places. Recover it with certified equipment.
    COLDLOOP_CAUTION_NO_VENTING = 6,
    // The judgement of a certified technician, the data of the vehicle's maker and the local rules come first.
    COLDLOOP_CAUTION_LOCAL_RULES = 7,
    // Refrigerant gathers in pits and closed rooms and displaces the air: ventilate at floor level. Keep flames and hot surfaces away: heat turns it into toxic gases.
    COLDLOOP_CAUTION_VENTILATION = 8,
    // Only certified persons may open a circuit, and in many places only they may buy refrigerant.
    COLDLOOP_CAUTION_CERTIFICATION = 9,
    // Pressure test: dry nitrogen only, through a regulator and a relief valve. Never oxygen, compressed air or a mix with refrigerant, and never above the pressure that the label and every part allow.
    COLDLOOP_CAUTION_TEST_PRESSURE = 10,
    // R-744 (carbon dioxide) stands at up to ten times the pressure of other refrigerants: use only gauges, hoses and parts made for it. It has no smell: above 3 to 4 per cent in the air it is dangerous, above 10 per cent a person soon loses consciousness. Ventilate, and leave the room if much escapes.
    COLDLOOP_CAUTION_CARBON_DIOXIDE = 11,
    // What is in the circuit is not known, and it may be flammable: identify it before a machine draws it in, and recover it into a separate marked cylinder.
    COLDLOOP_CAUTION_FOREIGN_REFRIGERANT = 12,
    // The discharge line, the engine and the exhaust burn the skin.
    COLDLOOP_CAUTION_HOT_PARTS = 13,
    // Do not run the compressor on an empty circuit or one with air in it: no refrigerant brings its oil back, and compressed air with oil or a flammable refrigerant can ignite.
    COLDLOOP_CAUTION_DO_NOT_RUN = 14,
    // This test pressure is above what the label allows, or above 30 bar where no label was given: let it down before anyone comes near, for the weakest part bursts first.
    COLDLOOP_CAUTION_TEST_TOO_HIGH = 15,
    // High voltage: keep hands, clamps, probes and water away from orange cables, their connectors and the compressor's inverter; stop if one is damaged.
    COLDLOOP_CAUTION_HIGH_VOLTAGE_CABLES = 16,
    // Run an engine outdoors or with its exhaust led outside: carbon monoxide kills without warning.
    COLDLOOP_CAUTION_EXHAUST = 17,
    // Before the engine is raised: parking brake on, wheels chocked, gear in park or neutral, nobody in front of the vehicle.
    COLDLOOP_CAUTION_PARK_AND_CHOCK = 18,
    // Hot coolant is under pressure and scalds: do not open the cooling system, wear gloves, and clamp a hose only with a hose clamp tool.
    COLDLOOP_CAUTION_HOT_COOLANT = 19,
    // Connect and disconnect the hoses with the engine and the A/C off and both manifold valves closed; lay the hoses clear of belts, fans and hot parts.
    COLDLOOP_CAUTION_CONNECT_STOPPED = 20,
    // Warm the valve with the hand or a warm cloth and cool it with ice. Never use a flame or a heat gun.
    COLDLOOP_CAUTION_HAND_AND_ICE = 21,
    // Measure the oil that came out and put back the same amount, with what stays in a replaced part: only the type that the compressor's maker names.
    COLDLOOP_CAUTION_RIGHT_OIL = 22,
    // The oil of a high-voltage compressor must insulate: use only the type that its maker names, with hoses and injectors that no other oil has been in.
    COLDLOOP_CAUTION_INSULATING_OIL = 23,
    // R-744 is released, not recovered, where the local rules allow it: outdoors or into an extraction, slowly through a fixed hose, with no person near its end. Wait until dry ice in the circuit is gone before a joint is opened.
    COLDLOOP_CAUTION_RELEASE_SLOWLY = 24,
    // The high side is close to its limit: watch it, and switch the A/C off if it rises further.
    COLDLOOP_CAUTION_HIGH_SIDE_NEAR_LIMIT = 25,
} coldloop_caution;

// What a log can hold; readings by the keys of a readings file.
typedef enum coldloop_channel {
    // Low-side pressure, Pa.
    COLDLOOP_CHANNEL_LOW_SIDE = 1,
    // High-side pressure, Pa.
    COLDLOOP_CHANNEL_HIGH_SIDE = 2,
    // Air at the centre vent, K.
    COLDLOOP_CHANNEL_VENT = 3,
    // Cabin air, K.
    COLDLOOP_CHANNEL_CABIN = 4,
    // Suction line at the compressor, K.
    COLDLOOP_CHANNEL_SUCTION_LINE = 5,
    // Discharge line at the compressor, K.
    COLDLOOP_CHANNEL_DISCHARGE_LINE = 6,
    // Liquid line before the expansion device, K.
    COLDLOOP_CHANNEL_LIQUID_LINE = 7,
    // Line at the condenser outlet, K.
    COLDLOOP_CHANNEL_CONDENSER_OUTLET = 8,
    // The vehicle's own high-side transducer, Pa.
    COLDLOOP_CHANNEL_HIGH_SIDE_TRANSDUCER = 9,
    // The vehicle's own sensor at the evaporator, K.
    COLDLOOP_CHANNEL_EVAPORATOR_SENSOR = 10,
    // Engine speed, revolutions per second.
    COLDLOOP_CHANNEL_ENGINE_SPEED = 11,
    // Speed of the compressor itself, revolutions per second.
    COLDLOOP_CHANNEL_COMPRESSOR_SPEED = 12,
    // Clutch: 1 engaged, 0 released.
    COLDLOOP_CHANNEL_CLUTCH = 13,
} coldloop_channel;

// In what state the last part of a log is.
typedef enum coldloop_log_phase {
    // Too little was logged to tell.
    COLDLOOP_LOG_PHASE_EMPTY = 1,
    // Readings still move towards where they settle.
    COLDLOOP_LOG_PHASE_SETTLING = 2,
    // The readings stand still but for noise.
    COLDLOOP_LOG_PHASE_SETTLED = 3,
    // The clutch cycles, and its cycles repeat.
    COLDLOOP_LOG_PHASE_CYCLING = 4,
    // The readings swing without a clutch that explains it, and do not repeat.
    COLDLOOP_LOG_PHASE_IRREGULAR = 5,
    // The compressor stands still.
    COLDLOOP_LOG_PHASE_AT_REST = 6,
} coldloop_log_phase;

// What of a log was refused, ignored or doubted; each is counted.
typedef enum coldloop_log_note {
    // A sample without a finite time, refused.
    COLDLOOP_LOG_NOTE_TIME_NOT_FINITE = 1,
    // A sample more than 30 s older than the newest, refused.
    COLDLOOP_LOG_NOTE_TOO_LATE = 2,
    // The clock jumped: what follows counts as a new stretch of the log.
    COLDLOOP_LOG_NOTE_CLOCK_JUMPED = 3,
    // An infinite value, refused.
    COLDLOOP_LOG_NOTE_NOT_FINITE = 4,
    // A value that the quantity cannot have, refused.
    COLDLOOP_LOG_NOTE_OUT_OF_RANGE = 5,
    // A sample with the time of the one before it, averaged with it.
    COLDLOOP_LOG_NOTE_REPEATED_TIME = 6,
    // A second without a value of a channel that had one before.
    COLDLOOP_LOG_NOTE_DROPOUT = 7,
    // A second without any sample.
    COLDLOOP_LOG_NOTE_GAP = 8,
    // A value far from both its neighbours, ignored.
    COLDLOOP_LOG_NOTE_SPIKE = 9,
    // A second in which a channel repeated the same value for more than a minute while others moved; ignored.
    COLDLOOP_LOG_NOTE_STUCK = 10,
    // A second in which a channel stood in another unit than before; ignored.
    COLDLOOP_LOG_NOTE_UNIT_STEP = 11,
    // A pressure or the vent of a state that is judged, which still drifted at its end; its uncertainty covers that.
    COLDLOOP_LOG_NOTE_DRIFT = 12,
} coldloop_log_note;

// A drawing of what a visit tells.
typedef enum coldloop_picture {
    // The readings in the ranges that are normal.
    COLDLOOP_PICTURE_READINGS = 1,
    // The likeliest explanations as bars.
    COLDLOOP_PICTURE_ODDS = 2,
    // The first steps of the plan as a tree.
    COLDLOOP_PICTURE_PLAN = 3,
    // The cycle on axes of pressure and enthalpy.
    COLDLOOP_PICTURE_CYCLE = 4,
    // The vent after the start.
    COLDLOOP_PICTURE_PULL_DOWN = 5,
    // The vacuum that was held.
    COLDLOOP_PICTURE_HOLD = 6,
    // The test pressure that was watched.
    COLDLOOP_PICTURE_PRESSURE_TEST = 7,
} coldloop_picture;

// What a function returns: 0, or why it has no answer.
typedef enum coldloop_status {
    // The answer stands in the out-pointers.
    COLDLOOP_STATUS_OK = 0,
    // The value lies outside the range in which an answer would be physical.
    COLDLOOP_STATUS_OUT_OF_RANGE = 1,
    // The value is NaN or infinite.
    COLDLOOP_STATUS_NOT_FINITE = 2,
    // A quantity was written without its unit.
    COLDLOOP_STATUS_MISSING_UNIT = 3,
    // A pressure was written without saying gauge, absolute or vacuum.
    COLDLOOP_STATUS_MISSING_DATUM = 4,
    // The unit is not one that this quantity can have.
    COLDLOOP_STATUS_UNKNOWN_UNIT = 5,
    // A comma was used as the decimal mark.
    COLDLOOP_STATUS_DECIMAL_COMMA = 6,
    // The text does not start with a number.
    COLDLOOP_STATUS_NOT_A_NUMBER = 7,
    // The name is not in the vocabulary.
    COLDLOOP_STATUS_UNKNOWN_NAME = 8,
    // A solver stopped before it reached its tolerance.
    COLDLOOP_STATUS_NO_CONVERGENCE = 9,
    // Pressure and temperature lie on the saturation line and do not fix the state.
    COLDLOOP_STATUS_TWO_PHASE = 10,
    // A value that the answer needs was not given.
    COLDLOOP_STATUS_MISSING = 11,
    // Two given values contradict each other.
    COLDLOOP_STATUS_INCONSISTENT = 12,
    // No published data support an answer here.
    COLDLOOP_STATUS_NOT_AVAILABLE = 13,
    // The text is not a readings file.
    COLDLOOP_STATUS_SYNTAX = 14,
    // A pointer that must not be null was null.
    COLDLOOP_STATUS_NULL_POINTER = 1001,
    // The size field of a struct is not one that this library knows.
    COLDLOOP_STATUS_STRUCT_SIZE = 1002,
    // A text is not UTF-8.
    COLDLOOP_STATUS_NOT_UTF8 = 1003,
    // A defect of the library was caught at its boundary; please report it.
    COLDLOOP_STATUS_INTERNAL = 1004,
    // The memory holds no recorder or session of this library: initialise it first.
    COLDLOOP_STATUS_NOT_INITIALISED = 1005,
} coldloop_status;

// The details of a failure. Set `size` to sizeof(coldloop_error) before the call; the call fills in the rest.
typedef struct coldloop_error {
    // sizeof(coldloop_error), so that the struct can grow.
    size_t size;
    // A coldloop_status, the same that the function returns.
    uint32_t status;
    // The coldloop_quantity that the failure concerns; 0 where there is none.
    uint32_t quantity;
    // The value given, in SI; NaN where there is none.
    double value;
    // The lowest value that has an answer, in SI; NaN where there is none.
    double low;
    // The highest value that has an answer, in SI; NaN where there is none.
    double high;
} coldloop_error;

// Limits and published figures of a refrigerant, in SI; what is not known is NaN or 0. Set `size` to
// sizeof(coldloop_facts).
typedef struct coldloop_facts {
    // sizeof(coldloop_facts), so that the struct can grow.
    size_t size;
    // A coldloop_safety_group; 0 where none is known.
    uint32_t safety_group;
    // Whether `gwp` is only an upper bound: 1 or 0.
    uint32_t gwp_is_upper_bound;
    // Molar mass, kg/mol.
    double molar_mass_kg_mol;
    // Critical temperature of the equation of state, K: the upper end of the saturation line. The lines of a blend end at 0.99
    // of it.
    double critical_temperature_k;
    // Critical pressure of the equation of state, Pa.
    double critical_pressure_pa_abs;
    // Critical density of the equation of state, kg/m3.
    double critical_density_kg_m3;
    // The lowest temperature of the equation of state, K: the lower end of the saturation line.
    double lowest_temperature_k;
    // The highest temperature of the equation of state, K.
    double highest_temperature_k;
    // The highest pressure of the equation of state, Pa.
    double highest_pressure_pa_abs;
    // The published uncertainty of the saturation pressure, relative.
    double saturation_uncertainty;
    // Lower flammability limit in air, by volume, 0 to 1; NaN for a refrigerant that does not burn, and for a blend.
    double flammability_limit_volume;
    // Lower flammability limit in air, kg/m3.
    double flammability_limit_kg_m3;
    // Ozone depletion potential, R-11 being 1.
    double ozone_depletion;
    // Global warming potential over 100 years of the latest report, carbon dioxide being 1.
    double gwp;
} coldloop_facts;

// Both sides of the saturation line at one temperature, in SI. Set `size` to sizeof(coldloop_saturation).
typedef struct coldloop_saturation {
    // sizeof(coldloop_saturation), so that the struct can grow.
    size_t size;
    // Temperature, K.
    double temperature_k;
    // Pressure above vacuum, Pa; for a blend the bubble pressure, while the vapour is at its dew pressure.
    double pressure_pa_abs;
    // Density of the liquid, kg/m3.
    double liquid_density_kg_m3;
    // Density of the vapour, kg/m3.
    double vapour_density_kg_m3;
    // Specific enthalpy of the liquid, J/kg, from the reference state.
    double liquid_enthalpy_j_kg;
    // Specific enthalpy of the vapour, J/kg, from the reference state.
    double vapour_enthalpy_j_kg;
    // Specific entropy of the liquid, J/(kg K), from the reference state.
    double liquid_entropy_j_kg_k;
    // Specific entropy of the vapour, J/(kg K), from the reference state.
    double vapour_entropy_j_kg_k;
} coldloop_saturation;

// A state in SI. Set `size` to sizeof(coldloop_state) before the call.
typedef struct coldloop_state {
    // sizeof(coldloop_state), so that the struct can grow.
    size_t size;
    // A coldloop_phase; 0 where there is no state.
    uint32_t phase;
    // Mass fraction of vapour, where has_quality is 1; otherwise 0.
    double quality;
    // Temperature, K.
    double temperature_k;
    // Pressure above vacuum, Pa.
    double pressure_pa_abs;
    // Molar density, mol/m3.
    double density_mol_m3;
    // Density, kg/m3.
    double density_kg_m3;
    // Specific enthalpy, J/kg, from the reference state.
    double enthalpy_j_kg;
    // Specific entropy, J/(kg K), from the reference state.
    double entropy_j_kg_k;
    // Specific internal energy, J/kg, from the reference state.
    double internal_energy_j_kg;
    // Specific heat at constant volume, J/(kg K); where has_response is 0 it is 0, as all that follow.
    double cv_j_kg_k;
    // Specific heat at constant pressure, J/(kg K).
    double cp_j_kg_k;
    // Speed of sound, m/s.
    double speed_of_sound_m_s;
    // (dT/dp) at constant enthalpy, K/Pa.
    double joule_thomson_k_pa;
    // (dp/dT) at constant density, Pa/K.
    double pressure_slope_pa_k;
    // (dp/drho) at constant temperature, J/mol.
    double dp_drho_j_mol;
    // Isothermal compressibility, 1/Pa.
    double isothermal_compressibility_1_pa;
    // Isobaric expansion, 1/K.
    double isobaric_expansion_1_k;
    // 1 in two phases, where there is a quality; 0 elsewhere.
    uint32_t has_quality;
    // 1 where the figures from cv_j_kg_k on have a meaning: in one phase, and in a saturated liquid or vapour (quality exactly
    // 0 or 1); 0 where liquid and vapour are present together, and at the critical point.
    uint32_t has_response;
} coldloop_state;

// What a charge or one of its phases is made of. As an answer, pure refrigerants with mass fractions, each once.
typedef struct coldloop_shares {
    // How many places of the two arrays are in use, at most COLDLOOP_MOST_COMPONENTS.
    uint32_t count;
    // Each a coldloop_refrigerant.
    uint32_t refrigerants[COLDLOOP_MOST_COMPONENTS];
    // Their masses.
    double masses[COLDLOOP_MOST_COMPONENTS];
    // The mass of air.
    double air;
} coldloop_shares;

// A charge at a temperature and pressure. Set `size` to sizeof(coldloop_phase_split).
typedef struct coldloop_phase_split {
    // sizeof(coldloop_phase_split), so that the struct can grow.
    size_t size;
    // Density of all, kg/m3.
    double density_kg_m3;
    // Mass fraction of vapour, 0 to 1; NaN where there is one phase, as are the figures below.
    double quality;
    // Density of the denser phase, kg/m3.
    double liquid_density_kg_m3;
    // Density of the other, kg/m3.
    double vapour_density_kg_m3;
    // Composition of the denser phase; a count of 0 where there is one phase.
    struct coldloop_shares liquid;
    // Composition of the other.
    struct coldloop_shares vapour;
} coldloop_phase_split;

// What a leak has left. Set `size` to sizeof(coldloop_remainder).
typedef struct coldloop_remainder {
    // sizeof(coldloop_remainder), so that the struct can grow.
    size_t size;
    // Whether liquid is left: 1 or 0.
    uint32_t has_liquid;
    // Pressure at rest above vacuum, Pa.
    double pressure_pa_abs;
    // Composition, which can be the charge of a further call.
    struct coldloop_shares shares;
} coldloop_remainder;

// Moist air in SI. Set `size` to sizeof(coldloop_moist_air) before the call.
typedef struct coldloop_moist_air {
    // sizeof(coldloop_moist_air), so that the struct can grow.
    size_t size;
    // Temperature, K.
    double temperature_k;
    // Pressure above vacuum, Pa.
    double pressure_pa_abs;
    // Mass of water per mass of dry air.
    double humidity_ratio;
    // Relative humidity, 0 to 1.
    double relative_humidity;
    // Dew point, below 273.15 K frost point, K; NaN for air so dry that it lies below 173.15 K.
    double dew_point_k;
    // Thermodynamic wet-bulb temperature, K.
    double wet_bulb_k;
    // Partial pressure of the water vapour, Pa.
    double vapour_pressure_pa;
    // Enthalpy, J per kg of dry air.
    double enthalpy_j_kg;
    // Volume, m3 per kg of dry air.
    double volume_m3_kg;
    // Density of the mixture, kg/m3.
    double density_kg_m3;
} coldloop_moist_air;

// A value and its standard uncertainty (one sigma), in the same unit; a NaN value was not read, or does not follow.
typedef struct coldloop_estimate {
    // The value.
    double value;
    // Its standard uncertainty.
    double standard_uncertainty;
} coldloop_estimate;

// What the instruments show, in SI; what was not read has a NaN value. Set `size` to sizeof(coldloop_readings).
typedef struct coldloop_readings {
    // sizeof(coldloop_readings), so that the struct can grow.
    size_t size;
    // Where both pressures count from: COLDLOOP_DATUM_GAUGE or COLDLOOP_DATUM_ABSOLUTE.
    uint32_t datum;
    // The air in which the gauges were zeroed, Pa above vacuum; ignored for absolute pressures.
    double air_pa_abs;
    // Low side, Pa.
    struct coldloop_estimate low_side;
    // High side, Pa.
    struct coldloop_estimate high_side;
    // Air in front of the vehicle, K.
    struct coldloop_estimate ambient;
    // Air at the centre vent, K.
    struct coldloop_estimate vent;
    // Suction line at the compressor, K.
    struct coldloop_estimate suction_line;
    // Discharge line at the compressor, K.
    struct coldloop_estimate discharge_line;
    // Liquid line before the expansion device, or the condenser outlet, K.
    struct coldloop_estimate liquid_line;
} coldloop_readings;

// What follows from readings; a NaN value has no answer. Set `size` to sizeof(coldloop_derived).
typedef struct coldloop_derived {
    // sizeof(coldloop_derived), so that the struct can grow.
    size_t size;
    // Low-side pressure above vacuum, Pa.
    struct coldloop_estimate low_side_pa_abs;
    // High-side pressure above vacuum, Pa.
    struct coldloop_estimate high_side_pa_abs;
    // High side over low side, both above vacuum.
    struct coldloop_estimate pressure_ratio;
    // Dew temperature of the low side, K: where evaporation ends.
    struct coldloop_estimate low_dew_k;
    // Bubble temperature of the low side, K.
    struct coldloop_estimate low_bubble_k;
    // Dew temperature of the high side, K: where condensation begins.
    struct coldloop_estimate high_dew_k;
    // Bubble temperature of the high side, K.
    struct coldloop_estimate high_bubble_k;
    // Suction line above low-side dew point, K.
    struct coldloop_estimate superheat_k;
    // Liquid line below high-side bubble point, K.
    struct coldloop_estimate subcooling_k;
    // Discharge line above high-side dew point, K.
    struct coldloop_estimate discharge_superheat_k;
    // High-side dew point above the ambient air, K.
    struct coldloop_estimate condensing_above_ambient_k;
    // Vent air above the low-side dew point, K.
    struct coldloop_estimate vent_above_evaporating_k;
    // Heat taken up by each kilogram between liquid line and suction line, J/kg.
    struct coldloop_estimate cooling_j_kg;
    // Work of a loss-free compressor over the work done, 0 to 1.
    struct coldloop_estimate isentropic_efficiency;
} coldloop_derived;

// A pressure at rest beside the lines of one refrigerant. Set `size` to sizeof(coldloop_resting).
typedef struct coldloop_resting {
    // sizeof(coldloop_resting), so that the struct can grow.
    size_t size;
    // A coldloop_pressure_match.
    uint32_t pressure_match;
    // The pressure above that of the bubble line, Pa; where it is too high, the partial pressure of the gas, if it is gas.
    struct coldloop_estimate excess_pa;
    // The pressure above that of the dew line, Pa; of a pure refrigerant the same.
    struct coldloop_estimate above_dew_pa;
    // The mole share of gas in the vapour space, if it is gas; 0 unless the pressure is too high.
    double gas_share;
} coldloop_resting;

// Weather, place and how the vehicle is run, in SI. Set `size` to sizeof(coldloop_conditions).
typedef struct coldloop_conditions {
    // sizeof(coldloop_conditions), so that the struct can grow.
    size_t size;
    // A coldloop_air_source; 0 where it is not known.
    uint32_t air_source;
    // 1 where the compressor is driven, as seen or by a scan tool, 2 where it is not; 0 where it is not known. It
    // overrides what any speed implies.
    uint32_t compressor_running;
    // Air in the shade, in front of the vehicle, K.
    double ambient_k;
    // Pressure of that air above vacuum, Pa.
    double air_pa_abs;
    // Relative humidity, 0 to 1; NaN where it is not known, as all that follow.
    double relative_humidity;
    // Speed of the engine, revolutions per second; 0 at standstill. For an electric compressor its own speed, of which 0 says nothing.
    double engine_speed_hz;
    // Blower setting, 0 (off) to 1 (highest).
    double blower;
    // Vehicle speed, m/s.
    double vehicle_speed_m_s;
    // Time since the system was switched on, s.
    double running_s;
    // Speed of the compressor itself from a scan tool, revolutions per second; 0 at standstill.
    double compressor_speed_hz;
    // Displacement that the control of an externally controlled compressor commands, 0 to 1 of the full one.
    double commanded_displacement;
    // Command of the condenser's fan, 0 (off) to 1 (full speed).
    double fan_command;
} coldloop_conditions;

// The median of a reading over sound vehicles, and the bands that hold 80 % and 95 % of them.
typedef struct coldloop_band {
    // Lower end of the 95 % band.
    double low_95;
    // Lower end of the 80 % band.
    double low_80;
    // Median.
    double median;
    // Upper end of the 80 % band.
    double high_80;
    // Upper end of the 95 % band.
    double high_95;
} coldloop_band;

// The bands of every reading, in SI. Set `size` to sizeof(coldloop_bands).
typedef struct coldloop_bands {
    // sizeof(coldloop_bands), so that the struct can grow.
    size_t size;
    // Low side, Pa above the air of the place.
    struct coldloop_band low_side_pa_gauge;
    // High side, Pa above the air of the place.
    struct coldloop_band high_side_pa_gauge;
    // Air at the centre vent, K.
    struct coldloop_band vent_k;
    // Condensing temperature above the ambient, K.
    struct coldloop_band condensing_above_ambient_k;
    // Superheat at the compressor, K.
    struct coldloop_band superheat_k;
    // Subcooling in the liquid line, K.
    struct coldloop_band subcooling_k;
    // Discharge line above the saturation temperature of the high side, K.
    struct coldloop_band discharge_superheat_k;
    // Clutch engagements per second; NaN where no clutch cycles.
    struct coldloop_band clutch_cycles_hz;
} coldloop_bands;

// How a temperature came down after the start; NaN where it was not logged or did not come down.
typedef struct coldloop_fall {
    // Where it started, K.
    double from_k;
    // Its level in the last quarter of the log, K.
    double to_k;
    // When it had come down half of the way, s.
    double half_s;
    // 1 where it still falls in that quarter, by more than 0.5 K.
    uint32_t falls;
} coldloop_fall;

// What a log says so far. Set `size` to sizeof(coldloop_log_summary).
typedef struct coldloop_log_summary {
    // sizeof(coldloop_log_summary), so that the struct can grow.
    size_t size;
    // The state of its last part, a coldloop_log_phase.
    uint32_t phase;
    // Number of its states, as coldloop_recorder_state gives them.
    uint32_t states;
    // How many of them settled, or lasted long enough to be judged all the same.
    uint32_t judged;
    // How often the low side fell near vacuum and came back.
    uint32_t recoveries;
    // Length of the log, s.
    double elapsed_s;
    // How much longer the present state should last before more is told, s; 0 when it has lasted long enough.
    double wait_s;
    // Seconds after the compressor's stop until both sides were equal; NaN where that was not seen.
    double equal_after_s;
    // How the vent came down.
    struct coldloop_fall vent;
    // How the cabin came down.
    struct coldloop_fall cabin;
    // How often each coldloop_log_note happened.
    uint32_t notes[COLDLOOP_MOST_LOG_NOTES];
} coldloop_log_summary;

// A stretch of a log at one speed and load. Set `size` to sizeof(coldloop_log_state).
typedef struct coldloop_log_state {
    // sizeof(coldloop_log_state), so that the struct can grow.
    size_t size;
    // 1 where it settled or lasted long enough to be judged.
    uint32_t judged;
    // Whole cycles of the clutch that were seen; 0 where it does not cycle, and the figures of the swing are NaN.
    uint32_t cycles;
    // 1 where its cycles are alike and a switching compressor explains them.
    uint32_t repeats;
    // When it began, s since the first sample.
    double began_s;
    // Seconds over which the means are taken.
    double seconds;
    // Cycles per second.
    struct coldloop_estimate cycles_hz;
    // Part of the time that the clutch is engaged.
    double on_share;
    // Low side at which the compressor is switched off, Pa as logged.
    double cut_out_pa;
    // Low side at which it is switched on, Pa as logged.
    double cut_in_pa;
    // Lowest high side of a cycle, Pa as logged.
    double high_low_pa;
    // Highest high side of a cycle, Pa as logged.
    double high_high_pa;
    // Mean of each coldloop_channel over the state; NaN where it was not logged.
    double means[COLDLOOP_MOST_CHANNELS];
    // Standard uncertainty of each mean from the scatter of the samples, without that of the instrument.
    double uncertainties[COLDLOOP_MOST_CHANNELS];
    // How far each still drifts: the last part of the state less its mean.
    double drifts[COLDLOOP_MOST_CHANNELS];
} coldloop_log_state;

// What a log was read with. Set `size` to sizeof(coldloop_instruments); 0 for the usual: an electronic manifold, the vehicle's own
// transducer, a pocket thermometer in the air, thermocouples on the lines.
typedef struct coldloop_instruments {
    // sizeof(coldloop_instruments), so that the struct can grow.
    size_t size;
    // The low side's coldloop_gauge_class.
    uint32_t low_side;
    // The high side's.
    uint32_t high_side;
    // That of the vehicle's own transducer.
    uint32_t high_side_transducer;
    // The coldloop_thermometer of vent, cabin and evaporator.
    uint32_t air;
    // That of the lines.
    uint32_t lines;
} coldloop_instruments;

// The system of a vehicle. Set `size` to sizeof(coldloop_vehicle_system); the first three are needed.
typedef struct coldloop_vehicle_system {
    // sizeof(coldloop_vehicle_system), so that the struct can grow.
    size_t size;
    // The coldloop_refrigerant on the label.
    uint32_t refrigerant;
    // A coldloop_expansion.
    uint32_t expansion;
    // A coldloop_compressor.
    uint32_t compressor;
    // A coldloop_low_port; 0 where it is not known, as all codes that follow.
    uint32_t low_port;
    // A coldloop_high_port.
    uint32_t high_port;
    // 1 where there is a sight glass, 2 where there is none.
    uint32_t sight_glass;
    // Number of evaporators, 1 or 2.
    uint32_t evaporators;
    // The charge on the label, kg; NaN where it is not known, as the next field.
    double nominal_charge_kg;
    // Pressure at which a switch or the control stops the compressor, Pa above the air.
    double high_cut_out_pa_gauge;
} coldloop_vehicle_system;

// The verdict of a visit, and what was done. Set `size` to sizeof(coldloop_standing).
typedef struct coldloop_standing {
    // sizeof(coldloop_standing), so that the struct can grow.
    size_t size;
    // A coldloop_verdict.
    uint32_t verdict;
    // How many places of `named` are in use.
    uint32_t named_count;
    // The coldloop_fault that is named, or the short list.
    uint32_t named[COLDLOOP_MOST_NAMED];
    // The likeliest coldloop_fault beside the first; 0 where none is left that matters.
    uint32_t rival;
    // 1 once a repair was done.
    uint32_t after_repair;
    // Steps that can be undone.
    uint32_t undoable;
    // Probability that the cause is none of the faults.
    double none_of_these;
} coldloop_standing;

// A fault with its odds.
typedef struct coldloop_ranked_fault {
    // A coldloop_fault.
    uint32_t fault;
    // The likeliest other one.
    uint32_t rival;
    // Its probability.
    double probability;
    // The severities that explain the readings, in the fault's own measure: the least; NaN where it has none.
    double severity_low;
    // The greatest.
    double severity_high;
} coldloop_ranked_fault;

// What to do next: one of check, repair and handing over; none of them where nothing is left to do. Set `size` to
// sizeof(coldloop_next_step).
typedef struct coldloop_next_step {
    // sizeof(coldloop_next_step), so that the struct can grow.
    size_t size;
    // A coldloop_check, or 0.
    uint32_t check;
    // The coldloop_fault that is to be set right, or 0.
    uint32_t repair;
    // 1 where the work is handed over to a specialist.
    uint32_t hand_over;
    // The coldloop_reading_kind that the check fills, or 0.
    uint32_t reading;
    // The coldloop_observation that it fills, or 0; the first one where it answers two questions.
    uint32_t observation;
    // How many places of `cautions` are in use.
    uint32_t caution_count;
    // Each a coldloop_caution, the gravest first: to be read before the step is done.
    uint32_t cautions[COLDLOOP_MOST_CAUTIONS];
    // Labour time, min.
    double minutes;
    // Parts and materials, as minutes of work.
    double parts_in_minutes;
} coldloop_next_step;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/* ----------------------------------------------------------------------------
 * Version
 *
 * The macros above tell the header's version, the function the library's. Within one major version a newer library
 * serves an older header; compare them at start if they may come from different places.
 */

// The version of the library as "major.minor.patch".
const char *coldloop_version(void);

/* ----------------------------------------------------------------------------
 * Errors
 *
 * A status is enough to branch on; coldloop_status_text gives its sentence. A program that tells its user what to
 * change passes a coldloop_error and prints coldloop_error_message:
 *
 *     coldloop_error error = {.size = sizeof error};
 *     char message[256];
 *     if (coldloop_dew_pressure(COLDLOOP_REFRIGERANT_R134A, 500.0, &pressure_pa_abs, &error))
 *         coldloop_error_message(&error, message, sizeof message);
 */

// One sentence for a status; for a number that is no status, a sentence that says so.
const char *coldloop_status_text(uint32_t status);

// Writes a message that names quantity, value and bounds, and returns its length without the zero byte.
//
// At most `capacity` bytes are written, the zero byte included, as snprintf does; a longer message is cut after a
// whole character. `buffer` may be NULL to ask for the length. An `error` that is
// NULL or whose size is too small has an empty message.
size_t coldloop_error_message(const struct coldloop_error *error,
                              char *buffer,
                              size_t capacity);

/* ----------------------------------------------------------------------------
 * Refrigerants
 *
 * A refrigerant is a number from coldloop_refrigerant; text names it by its ANSI/ASHRAE Standard 34 designation, which
 * may be written R-134a, R134a, r134a or 134a.
 */

// Writes at most `capacity` codes of refrigerants to `codes`, which may be NULL, and returns how many there are.
size_t coldloop_refrigerants(uint32_t *codes,
                             size_t capacity);

// The limits and published figures of a refrigerant. Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant.
uint32_t coldloop_refrigerant_facts(uint32_t refrigerant,
                                    struct coldloop_facts *facts,
                                    struct coldloop_error *error);

// What is published of a refrigerant, with the source of each fact, as one JSON object: "name", "cas",
// "safety_group", "flammability_limit", "ozone_depletion", "warming" by report, "equation" with its DOI and stated
// uncertainty, "blend" with its components, the pairs without published parameters and the standard uncertainty (K) of
// either line. What is not known is null. The text is written as coldloop_diagnose writes its answer.
//
// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, with an empty text.
uint32_t coldloop_refrigerant_sources(uint32_t refrigerant,
                                      char *sources_json,
                                      size_t capacity,
                                      size_t *length,
                                      struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Saturation
 *
 * Bubble is where a liquid begins to boil, dew where a vapour begins to condense. For a pure refrigerant they are
 * one line, for a blend they are two: superheat is measured from dew, subcooling from bubble.
 */

// Pressure at which the liquid begins to boil, from the lowest temperature of the equation of state to the critical
// point.
//
// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_bubble_pressure(uint32_t refrigerant,
                                  double temperature_k,
                                  double *pressure_pa_abs,
                                  struct coldloop_error *error);

// Pressure at which the vapour begins to condense. Range and errors as coldloop_bubble_pressure.
uint32_t coldloop_dew_pressure(uint32_t refrigerant,
                               double temperature_k,
                               double *pressure_pa_abs,
                               struct coldloop_error *error);

// Temperature at which the liquid begins to boil, up to the critical pressure. Errors as coldloop_bubble_pressure.
uint32_t coldloop_bubble_temperature(uint32_t refrigerant,
                                     double pressure_pa_abs,
                                     double *temperature_k,
                                     struct coldloop_error *error);

// Temperature at which the vapour begins to condense, up to the critical pressure. Errors as
// coldloop_bubble_pressure.
uint32_t coldloop_dew_temperature(uint32_t refrigerant,
                                  double pressure_pa_abs,
                                  double *temperature_k,
                                  struct coldloop_error *error);

// Slope dp/dT of the saturation line, of a blend of its dew line, Pa/K. Range and errors as coldloop_bubble_pressure.
uint32_t coldloop_saturation_slope(uint32_t refrigerant,
                                   double temperature_k,
                                   double *slope_pa_k,
                                   struct coldloop_error *error);

// Glide, K: how much warmer the dew point is than the bubble point at a pressure; 0 for a pure refrigerant. Errors as
// coldloop_bubble_temperature.
uint32_t coldloop_glide(uint32_t refrigerant,
                        double pressure_pa_abs,
                        double *glide_k,
                        struct coldloop_error *error);

// Heat that boils a kilogram of liquid into vapour, J/kg; of a blend, over its glide, at the bubble pressure. Range and errors as coldloop_bubble_pressure.
uint32_t coldloop_latent_heat(uint32_t refrigerant,
                              double temperature_k,
                              double *latent_heat_j_kg,
                              struct coldloop_error *error);

// Slope dp/dT of the bubble line, Pa/K. Range and errors as coldloop_bubble_pressure.
uint32_t coldloop_bubble_slope(uint32_t refrigerant,
                               double temperature_k,
                               double *slope_pa_k,
                               struct coldloop_error *error);

// The mean of the evaporating range, K: half way between the temperature of the inlet, where the mass fraction `quality`
// is vapour, and the dew point. Of a pure refrigerant it is the saturation temperature. Superheat does not count from
// here, but from the dew point. Source: EN 12900 and AHRI Standard 540, from memory.
//
// Errors: as coldloop_state_pressure_quality.
uint32_t coldloop_evaporating_mean(uint32_t refrigerant,
                                   double pressure_pa_abs,
                                   double quality,
                                   double *mean_k,
                                   struct coldloop_error *error);

// The same for an inlet of the enthalpy of the liquid line, J/kg, counted from a coldloop_reference; where liquid comes in
// below its bubble point, the range begins at the bubble point.
//
// Errors: as coldloop_state_pressure_enthalpy; OUT_OF_RANGE for an inlet above the dew point.
uint32_t coldloop_evaporating_mean_ph(uint32_t refrigerant,
                                      uint32_t reference,
                                      double pressure_pa_abs,
                                      double enthalpy_j_kg,
                                      double *mean_k,
                                      struct coldloop_error *error);

// Densities, enthalpies and entropies of the boiling liquid and of the vapour over it, at one temperature.
//
// `reference` is a coldloop_reference: where enthalpy and entropy count from.
//
// Errors: those of coldloop_bubble_pressure; UNKNOWN_NAME also for a number that is no coldloop_reference; NOT_AVAILABLE
// when the refrigerant has no such reference state.
uint32_t coldloop_saturated(uint32_t refrigerant,
                            uint32_t reference,
                            double temperature_k,
                            struct coldloop_saturation *saturation,
                            struct coldloop_error *error);

// Dew pressures of `count` temperatures, with the bits of coldloop_dew_pressure. The temperatures are
// `temperature_stride` bytes apart, the pressures `pressure_stride` bytes: sizeof(double) for plain arrays, the size of a
// struct for one of its fields, 0 for one number that serves every row. The arrays may be the same.
//
// A row without an answer becomes NaN and the rest are computed all the same; `failed` (may be NULL) receives how many
// there were, and status and `error` are those of the first. Errors as coldloop_bubble_pressure.
uint32_t coldloop_dew_pressures(uint32_t refrigerant,
                                size_t count,
                                const double *temperature_k,
                                ptrdiff_t temperature_stride,
                                double *pressure_pa_abs,
                                ptrdiff_t pressure_stride,
                                size_t *failed,
                                struct coldloop_error *error);

// Bubble pressures of `count` temperatures. Strides and failures as for coldloop_dew_pressures.
uint32_t coldloop_bubble_pressures(uint32_t refrigerant,
                                   size_t count,
                                   const double *temperature_k,
                                   ptrdiff_t temperature_stride,
                                   double *pressure_pa_abs,
                                   ptrdiff_t pressure_stride,
                                   size_t *failed,
                                   struct coldloop_error *error);

// Dew temperatures of `count` pressures. Strides and failures as for coldloop_dew_pressures.
uint32_t coldloop_dew_temperatures(uint32_t refrigerant,
                                   size_t count,
                                   const double *pressure_pa_abs,
                                   ptrdiff_t pressure_stride,
                                   double *temperature_k,
                                   ptrdiff_t temperature_stride,
                                   size_t *failed,
                                   struct coldloop_error *error);

// Bubble temperatures of `count` pressures. Strides and failures as for coldloop_dew_pressures.
uint32_t coldloop_bubble_temperatures(uint32_t refrigerant,
                                      size_t count,
                                      const double *pressure_pa_abs,
                                      ptrdiff_t pressure_stride,
                                      double *temperature_k,
                                      ptrdiff_t temperature_stride,
                                      size_t *failed,
                                      struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * States
 *
 * Two figures fix the state of a refrigerant, and each pair has its function: temperature and pressure, pressure and
 * enthalpy, and so on. A state always tells its phase. Enthalpy and entropy count from a reference
 * state: COLDLOOP_REFERENCE_IIR, COLDLOOP_REFERENCE_ASHRAE or COLDLOOP_REFERENCE_NORMAL_BOILING_POINT.
 *
 *     coldloop_state suction = {.size = sizeof suction};
 *     if (coldloop_state_temperature_pressure(COLDLOOP_REFRIGERANT_R134A, COLDLOOP_REFERENCE_IIR, 283.15, 300e3, &suction, NULL) == 0)
 *         printf("%.1f kg/m3, %.1f kJ/kg\n", suction.density_kg_m3, suction.enthalpy_j_kg / 1e3);
 *
 * A state with a quality of exactly 0 or 1 is a saturated liquid or vapour and has all figures of one phase. Where liquid and
 * vapour are present together some figures are undefined: has_response is 0 then, and they are 0. A figure is NaN only
 * where a function has failed.
 *
 * All of them refuse a number that is no coldloop_refrigerant or no coldloop_reference with UNKNOWN_NAME, NaN and
 * infinities with NOT_FINITE, figures beyond the limits of the equation of state (see coldloop_facts) with
 * OUT_OF_RANGE, and a reference state that the refrigerant does not have with NOT_AVAILABLE.
 */

// The state at a temperature and pressure.
//
// Errors: those above, and TWO_PHASE on the saturation line, where the two do not fix a state.
uint32_t coldloop_state_temperature_pressure(uint32_t refrigerant,
                                             uint32_t reference,
                                             double temperature_k,
                                             double pressure_pa_abs,
                                             struct coldloop_state *state,
                                             struct coldloop_error *error);

// The state at a temperature and a density, kg/m3.
uint32_t coldloop_state_temperature_density(uint32_t refrigerant,
                                            uint32_t reference,
                                            double temperature_k,
                                            double density_kg_m3,
                                            struct coldloop_state *state,
                                            struct coldloop_error *error);

// The state on the saturation line at a temperature and a quality, 0 (liquid) to 1 (vapour).
uint32_t coldloop_state_temperature_quality(uint32_t refrigerant,
                                            uint32_t reference,
                                            double temperature_k,
                                            double quality,
                                            struct coldloop_state *state,
                                            struct coldloop_error *error);

// The state on the saturation line at a pressure and a quality, 0 (liquid) to 1 (vapour).
uint32_t coldloop_state_pressure_quality(uint32_t refrigerant,
                                         uint32_t reference,
                                         double pressure_pa_abs,
                                         double quality,
                                         struct coldloop_state *state,
                                         struct coldloop_error *error);

// The state at a pressure and a specific enthalpy, J/kg.
//
// Errors: those above, and NO_CONVERGENCE with the relative residual as its value.
uint32_t coldloop_state_pressure_enthalpy(uint32_t refrigerant,
                                          uint32_t reference,
                                          double pressure_pa_abs,
                                          double enthalpy_j_kg,
                                          struct coldloop_state *state,
                                          struct coldloop_error *error);

// The state at a pressure and a specific entropy, J/(kg K). Errors as coldloop_state_pressure_enthalpy.
uint32_t coldloop_state_pressure_entropy(uint32_t refrigerant,
                                         uint32_t reference,
                                         double pressure_pa_abs,
                                         double entropy_j_kg_k,
                                         struct coldloop_state *state,
                                         struct coldloop_error *error);

// The state at a specific enthalpy, J/kg, and a specific entropy, J/(kg K). Errors as coldloop_state_pressure_enthalpy.
uint32_t coldloop_state_enthalpy_entropy(uint32_t refrigerant,
                                         uint32_t reference,
                                         double enthalpy_j_kg,
                                         double entropy_j_kg_k,
                                         struct coldloop_state *state,
                                         struct coldloop_error *error);

// The liquid at a temperature (K) below its saturation pressure (Pa above vacuum), which has not boiled yet: an
// extrapolation of the equation of state, between the saturation line and the spinodal.
//
// Errors: as coldloop_state_temperature_pressure; OUT_OF_RANGE in pressure with the spinodal and the saturation line as bounds.
uint32_t coldloop_superheated_liquid(uint32_t refrigerant,
                                     uint32_t reference,
                                     double temperature_k,
                                     double pressure_pa_abs,
                                     struct coldloop_state *state,
                                     struct coldloop_error *error);

// The vapour at a temperature (K) above its saturation pressure (Pa above vacuum), which has not condensed yet. Errors
// as coldloop_superheated_liquid.
uint32_t coldloop_subcooled_vapour(uint32_t refrigerant,
                                   uint32_t reference,
                                   double temperature_k,
                                   double pressure_pa_abs,
                                   struct coldloop_state *state,
                                   struct coldloop_error *error);

// States of `count` rows; `pair` is one of COLDLOOP_PAIR_TP to COLDLOOP_PAIR_HS and says what the two columns are.
//
// The strides are as for coldloop_dew_pressures. The `size` of the first state has to be set and counts for all. A row
// without an answer has phase 0 and NaN figures, and the rest are computed all the same; `failed` (may be NULL)
// receives how many there were, and status and `error` are those of the first.
//
// Errors: UNKNOWN_NAME also for a number that is no pair, otherwise those of the function of the pair.
uint32_t coldloop_states(uint32_t refrigerant,
                         uint32_t reference,
                         uint32_t pair,
                         size_t count,
                         const double *first,
                         ptrdiff_t first_stride,
                         const double *second,
                         ptrdiff_t second_stride,
                         struct coldloop_state *states,
                         ptrdiff_t states_stride,
                         size_t *failed,
                         struct coldloop_error *error);

// The second (m3/mol) and third (m6/mol2) virial coefficients of the equation of state at a temperature; either place
// may be NULL.
//
// Errors: UNKNOWN_NAME, NOT_FINITE, OUT_OF_RANGE; NOT_AVAILABLE for a blend.
uint32_t coldloop_virial_coefficients(uint32_t refrigerant,
                                      double temperature_k,
                                      double *second_m3_mol,
                                      double *third_m6_mol2,
                                      struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Transport properties
 *
 * Viscosity, thermal conductivity and surface tension by published correlations, for R-134a, R-1234yf, R-744, R-152a, R-32,
 * R-290, R-600a, R-125, R-1234ze(E), R-22 and R-12; for all others, and for blends, NOT_AVAILABLE.
 *
 * Two figures fix a state of one phase as in the chapter of states: COLDLOOP_PAIR_TP, COLDLOOP_PAIR_TD, or COLDLOOP_PAIR_TQ and
 * COLDLOOP_PAIR_PQ with a quality of exactly 0 (saturated liquid) or 1 (saturated vapour).
 *
 *     double viscosity_pa_s;
 *     if (coldloop_viscosity(COLDLOOP_REFRIGERANT_R134A, COLDLOOP_PAIR_TP, 283.15, 300e3, &viscosity_pa_s, NULL) == 0)
 *         printf("%.2f uPa s\n", viscosity_pa_s * 1e6);
 */

// Dynamic viscosity, Pa s, in the state of a pair.
//
// Errors: those of the function of the pair; UNKNOWN_NAME also for another pair; NOT_AVAILABLE without a correlation, and for liquid and
// vapour together; OUT_OF_RANGE beyond the temperatures and pressures of the correlation.
uint32_t coldloop_viscosity(uint32_t refrigerant,
                            uint32_t pair,
                            double first,
                            double second,
                            double *viscosity_pa_s,
                            struct coldloop_error *error);

// Thermal conductivity, W/(m K), in the state of a pair. Errors as coldloop_viscosity, and NOT_AVAILABLE at the critical point.
uint32_t coldloop_conductivity(uint32_t refrigerant,
                               uint32_t pair,
                               double first,
                               double second,
                               double *conductivity_w_m_k,
                               struct coldloop_error *error);

// Surface tension, N/m, between saturated liquid and vapour at a temperature, up to the critical one.
//
// Errors: UNKNOWN_NAME, NOT_FINITE, OUT_OF_RANGE; NOT_AVAILABLE without a correlation.
uint32_t coldloop_surface_tension(uint32_t refrigerant,
                                  double temperature_k,
                                  double *surface_tension_n_m,
                                  struct coldloop_error *error);

// Viscosities of `count` rows in the states of a pair. Strides and failures as for coldloop_dew_pressures, errors as
// coldloop_viscosity.
uint32_t coldloop_viscosities(uint32_t refrigerant,
                              uint32_t pair,
                              size_t count,
                              const double *first,
                              ptrdiff_t first_stride,
                              const double *second,
                              ptrdiff_t second_stride,
                              double *viscosity_pa_s,
                              ptrdiff_t viscosity_stride,
                              size_t *failed,
                              struct coldloop_error *error);

// Thermal conductivities of `count` rows in the states of a pair. Strides and failures as for coldloop_dew_pressures, errors as
// coldloop_conductivity.
uint32_t coldloop_conductivities(uint32_t refrigerant,
                                 uint32_t pair,
                                 size_t count,
                                 const double *first,
                                 ptrdiff_t first_stride,
                                 const double *second,
                                 ptrdiff_t second_stride,
                                 double *conductivity_w_m_k,
                                 ptrdiff_t conductivity_stride,
                                 size_t *failed,
                                 struct coldloop_error *error);

// Surface tensions of `count` temperatures. Strides and failures as for coldloop_dew_pressures, errors as
// coldloop_surface_tension.
uint32_t coldloop_surface_tensions(uint32_t refrigerant,
                                   size_t count,
                                   const double *temperature_k,
                                   ptrdiff_t temperature_stride,
                                   double *surface_tension_n_m,
                                   ptrdiff_t surface_tension_stride,
                                   size_t *failed,
                                   struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Any charge: leaked, mixed, contaminated
 *
 * The saturation lines of listed refrigerants are precomputed. Any other charge is given by its parts: refrigerants, pure or
 * blends, by mass in any common unit, and air. Its bubble and dew points are solved with the mixture model, which takes about
 * a tenth of a millisecond.
 *
 *     double pressure_pa_abs;
 *     coldloop_shares charge = {.count = 2};
 *     charge.refrigerants[0] = COLDLOOP_REFRIGERANT_R134A, charge.masses[0] = 0.9;
 *     charge.refrigerants[1] = COLDLOOP_REFRIGERANT_R22, charge.masses[1] = 0.1;
 *     coldloop_charge_bubble_pressure(&charge, 273.15, &pressure_pa_abs, NULL);
 *
 * All of them refuse a number that is no coldloop_refrigerant with UNKNOWN_NAME, NaN and infinities with NOT_FINITE, a
 * charge without a refrigerant with MISSING, and with OUT_OF_RANGE a mass below zero or above 1000, more than eight
 * components (the parts of blends count, and three for air), temperatures below 193.15 K or above 473.15 K, and what lies
 * beyond the critical point of the charge. A search that does not end is NO_CONVERGENCE.
 */

// The composition of a charge: blends as their parts, each component once, as mass fractions of sum one with the air.
uint32_t coldloop_charge_shares(const struct coldloop_shares *charge,
                                struct coldloop_shares *shares,
                                struct coldloop_error *error);

// Pressure at which the liquid of a charge begins to boil; air dissolved in it counts.
uint32_t coldloop_charge_bubble_pressure(const struct coldloop_shares *charge,
                                         double temperature_k,
                                         double *pressure_pa_abs,
                                         struct coldloop_error *error);

// Pressure at which the vapour of a charge begins to condense.
uint32_t coldloop_charge_dew_pressure(const struct coldloop_shares *charge,
                                      double temperature_k,
                                      double *pressure_pa_abs,
                                      struct coldloop_error *error);

// Temperature at which the liquid of a charge begins to boil.
uint32_t coldloop_charge_bubble_temperature(const struct coldloop_shares *charge,
                                            double pressure_pa_abs,
                                            double *temperature_k,
                                            struct coldloop_error *error);

// Temperature at which the vapour of a charge begins to condense.
uint32_t coldloop_charge_dew_temperature(const struct coldloop_shares *charge,
                                         double pressure_pa_abs,
                                         double *temperature_k,
                                         struct coldloop_error *error);

// A charge at a temperature and pressure: one phase, or liquid and vapour with what each is made of.
uint32_t coldloop_charge_split(const struct coldloop_shares *charge,
                               double temperature_k,
                               double pressure_pa_abs,
                               struct coldloop_phase_split *phase_split,
                               struct coldloop_error *error);

// What is left of a charge in a circuit at rest at a temperature, when the share `lost` (0 to 0.99) of its mass has escaped
// as one phase. `density_kg_m3` is the charge before the leak over the inner volume of the circuit; `leak_phase` is a
// coldloop_leak_phase: the phase that escapes, in equilibrium with the rest (Rayleigh's distillation). A leak while the system
// runs lies between the two phases.
//
// Errors: those above; OUT_OF_RANGE also for a density at which the charge is not liquid and vapour.
uint32_t coldloop_charge_leaked(const struct coldloop_shares *charge,
                                double temperature_k,
                                double density_kg_m3,
                                uint32_t leak_phase,
                                double lost,
                                struct coldloop_remainder *remainder,
                                struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * The surrounding air
 *
 * A gauge shows the pressure above the air around it. At 1,600 m the pressure of that air is a fifth less than at
 * sea level, so a gauge pressure becomes absolute only with the pressure of the air: from a barometer, or from the
 * standard atmosphere at that altitude.
 */

// Pressure of the standard atmosphere at a geopotential altitude from -500 m to 9,000 m. Source: ISO 2533:1975.
//
// Errors: NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_standard_pressure(double altitude_m,
                                    double *pressure_pa_abs,
                                    struct coldloop_error *error);

// Geopotential altitude at which the standard atmosphere has this pressure; the inverse of coldloop_standard_pressure.
//
// Errors: NOT_FINITE; OUT_OF_RANGE beyond the pressures from -500 m to 9,000 m.
uint32_t coldloop_standard_altitude(double pressure_pa_abs,
                                    double *altitude_m,
                                    struct coldloop_error *error);

// Temperature of the standard atmosphere. Range, errors and source as coldloop_standard_pressure.
uint32_t coldloop_standard_temperature(double altitude_m,
                                       double *temperature_k,
                                       struct coldloop_error *error);

// Density of the standard atmosphere. Range, errors and source as coldloop_standard_pressure.
uint32_t coldloop_standard_density(double altitude_m, double *density_kg_m3, struct coldloop_error *error);

// Pressure above vacuum of what a gauge shows that was zeroed in air of `air_pa_abs`, 28,000 Pa to 112,000 Pa.
//
// Errors: NOT_FINITE; OUT_OF_RANGE, also for a gauge that shows less than a vacuum.
uint32_t coldloop_absolute_pressure(double pressure_pa_gauge,
                                    double air_pa_abs,
                                    double *pressure_pa_abs,
                                    struct coldloop_error *error);

// What a gauge shows of a pressure above vacuum when it was zeroed in air of `air_pa_abs`, 28,000 Pa to 112,000 Pa.
//
// Errors: NOT_FINITE; OUT_OF_RANGE.
uint32_t coldloop_gauge_pressure(double pressure_pa_abs,
                                 double air_pa_abs,
                                 double *pressure_pa_gauge,
                                 struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Moist air and water
 *
 * One struct holds all that is known of moist air; a function fills it in from whichever humidity was measured. The
 * relations are those of the ASHRAE Handbook - Fundamentals (2017), chapter 1, with the saturation pressure raised by
 * the enhancement factor. Enthalpy and volume count per kilogram of dry air; enthalpy is zero for dry air and for
 * liquid water at 0 degrees Celsius. Temperatures go from 203.15 K to 373.15 K, air pressures from 28,000 Pa to
 * 112,000 Pa.
 */

// Moist air of a relative humidity, 0 to 1.
//
// Errors: NOT_FINITE; OUT_OF_RANGE, also where the water vapour would leave hardly any air.
uint32_t coldloop_air_of_relative_humidity(double temperature_k,
                                           double pressure_pa_abs,
                                           double relative_humidity,
                                           struct coldloop_moist_air *air,
                                           struct coldloop_error *error);

// Moist air with this mass of water per mass of dry air; more than saturates the air is OUT_OF_RANGE.
uint32_t coldloop_air_of_humidity_ratio(double temperature_k,
                                        double pressure_pa_abs,
                                        double humidity_ratio,
                                        struct coldloop_moist_air *air,
                                        struct coldloop_error *error);

// Moist air of a dew point (below 273.15 K, frost point); one above the temperature is OUT_OF_RANGE.
uint32_t coldloop_air_of_dew_point(double temperature_k,
                                   double pressure_pa_abs,
                                   double dew_point_k,
                                   struct coldloop_moist_air *air,
                                   struct coldloop_error *error);

// Moist air of a thermodynamic wet-bulb temperature; one above the temperature, or below that of dry air, is
// OUT_OF_RANGE.
uint32_t coldloop_air_of_wet_bulb(double temperature_k,
                                  double pressure_pa_abs,
                                  double wet_bulb_k,
                                  struct coldloop_moist_air *air,
                                  struct coldloop_error *error);

// Moist air of an enthalpy (J per kg of dry air) and a humidity ratio. Errors as coldloop_air_of_humidity_ratio.
uint32_t coldloop_air_of_enthalpy(double enthalpy_j_kg,
                                  double pressure_pa_abs,
                                  double humidity_ratio,
                                  struct coldloop_moist_air *air,
                                  struct coldloop_error *error);

// How much more water vapour saturated air holds than the same space without air, as a factor. Source: Greenspan 1976.
//
// Errors: NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_enhancement_factor(double temperature_k,
                                     double pressure_pa_abs,
                                     double *factor,
                                     struct coldloop_error *error);

// Pressure above vacuum under which water boils, or below 273.16 K ice sublimes, from 173.15 K to 473.15 K.
//
// Errors: NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_water_saturation_pressure(double temperature_k,
                                            double *pressure_pa_abs,
                                            struct coldloop_error *error);

// Temperature at which water boils, or ice sublimes, under a pressure above vacuum: what an evacuation has to stay
// below to dry a circuit. The inverse of coldloop_water_saturation_pressure.
//
// Errors: NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_water_boiling_point(double pressure_pa_abs,
                                      double *temperature_k,
                                      struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Superheat, subcooling and what else follows from readings
 *
 * A pressure comes with its datum: COLDLOOP_DATUM_ABSOLUTE, or COLDLOOP_DATUM_GAUGE with the pressure of the air in
 * which the gauge was zeroed. For an absolute pressure the air is ignored; pass 0.
 *
 * A reading is a value with the standard uncertainty (one sigma) of its instrument, and what follows from readings
 * carries its own: the root of the sum of squares of what the instruments, the air and the property model contribute
 * (JCGM 100:2008). The true value lies within twice that in about 95 of 100 cases.
 */

// How far the suction line is above the dew point of the low-side pressure, K; negative when it reads colder than
// vapour of that pressure can be.
//
// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, MISSING_DATUM for a number that is no datum,
// NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_superheat(uint32_t refrigerant,
                            double suction_line_k,
                            uint32_t datum,
                            double pressure_pa,
                            double air_pa_abs,
                            double *superheat_k,
                            struct coldloop_error *error);

// How far the liquid line is below the bubble point of the high-side pressure, K; negative when it carries bubbles or
// the high side holds a gas that does not condense. Errors as coldloop_superheat.
uint32_t coldloop_subcooling(uint32_t refrigerant,
                             double liquid_line_k,
                             uint32_t datum,
                             double pressure_pa,
                             double air_pa_abs,
                             double *subcooling_k,
                             struct coldloop_error *error);

// Superheats of `count` rows that share datum and air. Strides and failures as for coldloop_dew_pressures, errors as
// coldloop_superheat.
uint32_t coldloop_superheats(uint32_t refrigerant,
                             uint32_t datum,
                             double air_pa_abs,
                             size_t count,
                             const double *suction_line_k,
                             ptrdiff_t suction_line_stride,
                             const double *pressure_pa,
                             ptrdiff_t pressure_stride,
                             double *superheat_k,
                             ptrdiff_t superheat_stride,
                             size_t *failed,
                             struct coldloop_error *error);

// Subcoolings of `count` rows that share datum and air. Strides and failures as for coldloop_dew_pressures, errors as
// coldloop_superheat.
uint32_t coldloop_subcoolings(uint32_t refrigerant,
                              uint32_t datum,
                              double air_pa_abs,
                              size_t count,
                              const double *liquid_line_k,
                              ptrdiff_t liquid_line_stride,
                              const double *pressure_pa,
                              ptrdiff_t pressure_stride,
                              double *subcooling_k,
                              ptrdiff_t subcooling_stride,
                              size_t *failed,
                              struct coldloop_error *error);

// Standard uncertainty of a gauge of a coldloop_gauge_class whose scale runs from `low_pa_gauge` to `high_pa_gauge`,
// where it shows `shown_pa_gauge`, Pa. Source: EN 837-1:1996, ASME B40.100; electronic gauges: common practice.
//
// Errors: UNKNOWN_NAME for a number that is no coldloop_gauge_class, NOT_FINITE, OUT_OF_RANGE for a scale whose ends are equal or swapped.
uint32_t coldloop_gauge_uncertainty(uint32_t gauge_class,
                                    double low_pa_gauge,
                                    double high_pa_gauge,
                                    double shown_pa_gauge,
                                    double *uncertainty_pa,
                                    struct coldloop_error *error);

// Standard uncertainty of a coldloop_thermometer where it shows `temperature_k`, K. Source: IEC 60584-1:2013 for
// thermocouples, common practice for the others.
//
// Errors: UNKNOWN_NAME for a number that is no coldloop_thermometer, NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_thermometer_uncertainty(uint32_t thermometer,
                                          double temperature_k,
                                          double *uncertainty_k,
                                          struct coldloop_error *error);

// All that follows from readings, each figure with its uncertainty.
//
// Errors: those of coldloop_superheat for readings that are impossible. A figure for which a reading is missing, or that
// this refrigerant does not have there, is NaN; that is no error.
uint32_t coldloop_derive(uint32_t refrigerant,
                         const struct coldloop_readings *readings,
                         struct coldloop_derived *derived,
                         struct coldloop_error *error);

// Whether a circuit or cylinder at rest, with liquid in it and at one temperature throughout, can hold this refrigerant, and how
// much non-condensable gas with it. Pressure and temperature have their standard uncertainties. Call it for every refrigerant to
// see which ones a pressure agrees with; often several do. A second reading some 15 K warmer or colder tells more than the
// first, an analyser more than both. Source: Dalton's law; the method is common practice, no source.
//
// Errors: as coldloop_superheat; OUT_OF_RANGE where the refrigerant has no line at that temperature.
uint32_t coldloop_at_rest(uint32_t refrigerant,
                          uint32_t datum,
                          double pressure_pa,
                          double pressure_uncertainty_pa,
                          double air_pa_abs,
                          double temperature_k,
                          double temperature_uncertainty_k,
                          struct coldloop_resting *resting,
                          struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * What a sound system should read
 *
 * The bands of every reading over sound vehicles of a kind in given weather, at a given place: the median, and the
 * ends of the bands that hold 80 % and 95 % of them. What is not known of the conditions is NaN (or 0 for a code) and
 * makes the bands wider.
 */

// What a sound system with this coldloop_refrigerant, coldloop_expansion and coldloop_compressor shows in these
// conditions.
//
// Errors: UNKNOWN_NAME for an unknown code; NOT_FINITE and OUT_OF_RANGE for conditions that no source covers
// (they cover 5 to 50 degrees Celsius and up to about 4,100 m); NOT_AVAILABLE for a system that none covers.
uint32_t coldloop_expected(uint32_t refrigerant,
                           uint32_t expansion,
                           uint32_t compressor,
                           const struct coldloop_conditions *conditions,
                           struct coldloop_bands *bands,
                           struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Diagnosis, plan, proof and simulation
 *
 * Text on both sides, for every language that can pass a string. The readings are those of a readings file, as JSON or
 * as TOML of the same shape: "system", "conditions", "readings", "observations". A quantity is text with its unit, and
 * a pressure says its datum:
 *
 *     const char *readings =
 *         "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
 *         " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"},"
 *         " \"readings\": {\"low_side\": \"37 psig\", \"high_side\": \"172 psig\", \"vent\": \"40 degF\"}}";
 *     char *answer = malloc(COLDLOOP_ANSWER_MAX);
 *     uint32_t status = coldloop_diagnose(readings, answer, COLDLOOP_ANSWER_MAX, NULL, NULL);
 *
 * "settings" may say how to judge: "priors" of the faults, thresholds, "prices", the chances of "looks", and the
 * "counts" of confirmed cases. What was done to the vehicle since may be added to them: "pressure_test",
 * "evacuation", "hold", "charge", "pull_down" and "after", the conditions and readings after the repair.
 *
 * Input that cannot be read is refused: the status says why, and the answer is {"refused": {"key": ..., "value": ...,
 * "message": ..., "mistakes": [...]}}. The message has a line for every mistake, up to a dozen, which says what to write
 * instead; "mistakes" has the same one by one, each with "key", "value", "line", "column" and "message". Status, key and
 * value are those of the first mistake.
 *
 * The functions here write text as snprintf does. At most `capacity` bytes go to the buffer, the zero byte
 * included, and `length` (may be NULL) receives the length of the whole text without it: when `length` is not less than
 * `capacity` the text was cut, after a whole character. COLDLOOP_ANSWER_MAX bytes take every answer in one call; keep
 * such a buffer and use it again. A second call with a larger buffer, or a first one with NULL to ask for the length,
 * works the answer out once more. NULL_POINTER, NOT_UTF8 and INTERNAL leave the text empty.
 */

// Diagnoses a vehicle from its readings.
//
// The answer is one JSON object: "verdict", "faults" with their odds and reasons, "expected", "derived", "next_checks",
// "cautions", "quality"; and "proof", as coldloop_prove gives it, where something was done since.
//
// Errors: every kind that a readings file can be refused for, and those of the text above.
uint32_t coldloop_diagnose(const char *readings,
                           char *answer,
                           size_t capacity,
                           size_t *length,
                           struct coldloop_error *error);

// The same diagnosis as a page for people, in the units in which the readings were written: what it is, what to do first with
// its cautions, the readings beside what is normal, why, and what limits the result. "language" in the "settings" of the
// readings chooses English ("en") or Spanish ("es"), "details": true all figures, limits and cautions in full; a refusal is JSON as above. Errors as coldloop_diagnose.
uint32_t coldloop_report(const char *readings,
                         char *report,
                         size_t capacity,
                         size_t *length,
                         struct coldloop_error *error);

// The same as a page to look at: one self-contained HTML document with its drawings as SVG, without script, which is read on a
// phone and prints on one sheet; a refusal is JSON as above. Errors as coldloop_diagnose.
uint32_t coldloop_page_html(const char *readings,
                            char *page,
                            size_t capacity,
                            size_t *length,
                            struct coldloop_error *error);

// One drawing of that page, a coldloop_picture, as an SVG document by itself: the readings in their ranges, the odds, the plan, the
// cycle, or a curve over time. The text is empty, and the status OK, where the readings have nothing to draw of it; a
// refusal is JSON as above. Errors as coldloop_diagnose; UNKNOWN_NAME for a number that is no coldloop_picture.
uint32_t coldloop_picture_svg(const char *readings,
                              uint32_t picture,
                              char *svg,
                              size_t capacity,
                              size_t *length,
                              struct coldloop_error *error);

// What to do next, three steps deep: the checks worth their cost and the repairs that they lead to, by the readings that
// coldloop_diagnose takes. Times are those of work, in minutes.
//
// The answer is one JSON object: "expected_minutes", "without_checks_minutes", "steps", each step with its cautions, its
// cost and its "branches", one for every result.
//
// Errors: as coldloop_diagnose.
uint32_t coldloop_plan(const char *readings,
                       char *plan,
                       size_t capacity,
                       size_t *length,
                       struct coldloop_error *error);

// What was done to a vehicle, judged: whether it was dry, tight and rightly charged, and whether it cools now, by the
// readings that coldloop_diagnose takes:
//
//     {"system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
//      "conditions": {"ambient": "20 °C", "altitude": "1600 m"},
//      "evacuation": {"reached": "420 micron", "coldest": "18 °C"},
//      "hold": {"samples": [{"after": "0 min", "pressure": "420 micron"}, {"after": "20 min", "pressure": "450 micron"}]}}
//
// The answer is one JSON object: "pressure_test", "evacuation", "hold", "charge", "pull_down", "repair", each with its
// "finding", what that "says" and its figures in plain SI; null for what was not done or cannot be judged. "closing" is the
// judgement from all of them together, with the "weakest" of them. "refused" tells what cannot be judged, and why: a bad entry refuses
// only its own table, and is an error where nothing is left to judge.
//
// Errors: as coldloop_diagnose.
uint32_t coldloop_prove(const char *readings,
                        char *proof,
                        size_t capacity,
                        size_t *length,
                        struct coldloop_error *error);

// What a vehicle would read: the steady state of the whole system in its conditions, with its faults.
//
// "system" and "conditions" are those of a readings file; "vehicle" may name the class ("small-car", "car", "large-car",
// "van", "bus"; a car where it is left out) and "faults" gives each fault its severity, a wrong refrigerant its name or
// also how much of the charge it is, as "30 % R-22":
//
//     {"vehicle": {"class": "van"},
//      "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "variable-internal"},
//      "conditions": {"ambient": "30 °C", "altitude": "1600 m"},
//      "faults": {"undercharge": "40 %"}}
//
// The answer is one JSON object: "readings", "swing", "looks", "states", "figures", "solver", in plain SI.
//
// Errors: as coldloop_diagnose; NOT_AVAILABLE for a fault that the system cannot have; NO_CONVERGENCE.
uint32_t coldloop_simulate(const char *trial,
                           char *answer,
                           size_t capacity,
                           size_t *length,
                           struct coldloop_error *error);

// What a program has to know to ask the right questions about a system: the "system" of a readings file, whose other tables
// are ignored.
//
// The answer is one JSON object: "faults" that the system can have (what each "says", the "measure" of its severity, its
// "prior", its "repair" with cost and cautions), "checks" that exist for it (with cost, cautions and the "questions" that
// they answer) and "observations", the entries of that table of a readings file.
//
// Errors: as coldloop_diagnose.
uint32_t coldloop_catalogue(const char *readings,
                            char *catalogue,
                            size_t capacity,
                            size_t *length,
                            struct coldloop_error *error);

// Counts one confirmed case: `counts` is the TOML text of the cases so far (empty for none) and `learned` receives that
// text with one case more, to be kept and given back as the "counts" of the "settings".
//
// `readings` are those of the case, of which the system and the observations before the repair count; `cause` is the
// coldloop_fault that the repair confirmed, or 0 for a cause that is not in the list.
//
// Errors: as coldloop_diagnose; UNKNOWN_NAME for a number that is neither 0 nor a coldloop_fault.
uint32_t coldloop_record(const char *counts,
                         const char *readings,
                         uint32_t cause,
                         char *learned,
                         size_t capacity,
                         size_t *length,
                         struct coldloop_error *error);

// Counts confirmed cases, as coldloop_record does one: `cases` are lines as coldloop_evaluate takes them. A case with several
// causes is skipped.
//
// Errors: as coldloop_diagnose, for the first line that cannot be read; nothing is counted then.
uint32_t coldloop_learn(const char *counts,
                        const char *cases,
                        char *learned,
                        size_t capacity,
                        size_t *length,
                        struct coldloop_error *error);

// How good the answers are: judges confirmed cases and counts how often the answer was right.
//
// `cases` has a JSON object on each line: "case" (readings as coldloop_diagnose takes them, as JSON), "truth" (what was found:
// [{"fault": "undercharge", "severity": 0.3}], the severity where it is known; "no-fault" for a sound vehicle,
// "none-of-these" for a cause that is not in the list), and where wanted "id", "significant" (false for a fault that
// nobody would have noticed) and "group" (make, shop, mechanic: cases that are alike).
//
// `settings` say how to judge, as the JSON of the "settings" of readings, and replace those in the cases; empty
// for the usual ones. With `priors_told` 1 the prior of each cause is its share of the cases, with 0 the priors are those of the
// settings.
//
// The answer is one JSON object: "cases", "refused" (lines that cannot be read or judged), "groups", the figures, each
// with its "value", its 95 % interval from "low" to "high" (a bootstrap over groups, or over cases where there are none) and
// the "cases" over which it is taken; "reliability", ten bins; and "refusals", the first dozen. The figures: "first_right",
// "in_first_three", "sound_led" and "sound_named" (sound vehicles of which a fault leads, or is named), "named_right",
// "named_wrong", "missed", "not_told" and "list_holds" (significant faults), "sure_right" (odds of 0.8 and more),
// "log_loss", "calibration_error".
//
// Errors: as coldloop_diagnose, for the settings; OUT_OF_RANGE for `priors_told` other than 0 and 1; MISSING where the priors are
// to come from the cases and no case can be read. A line that cannot be read is no error.
uint32_t coldloop_evaluate(const char *cases,
                           const char *settings,
                           uint32_t priors_told,
                           char *answer,
                           size_t capacity,
                           size_t *length,
                           struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Readings over time
 *
 * A recorder takes the samples of one vehicle and finds what they say: states at one speed and load, cycles of a clutch, readings
 * with their uncertainty. It lives in memory of the caller, of coldloop_recorder_size() bytes, whatever the length of the log, and
 * needs no freeing:
 *
 *     void *recorder = malloc(coldloop_recorder_size());
 *     coldloop_recorder_init(recorder, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL);
 *     const uint32_t channels[] = {COLDLOOP_CHANNEL_LOW_SIDE, COLDLOOP_CHANNEL_HIGH_SIDE};
 *     double time_s = 0.0, sample[] = {210e3, 1150e3};
 *     coldloop_recorder_push(recorder, 1, &time_s, 0, 2, channels, sample, 0, sizeof(double), NULL);
 *
 * Values are in SI: pressures in Pa from the datum of the recorder, temperatures in K, speeds in revolutions per second, the clutch
 * as 1 or 0. NaN is a value that was not logged. A sample may come up to 30 s late; what is refused, ignored or doubted is counted.
 * Memory that holds no recorder gives NOT_INITIALISED. A recorder belongs to the version of the library that initialised it; no
 * other version can use it.
 */

// Bytes that a recorder takes.
size_t coldloop_recorder_size(void);

// Makes an empty recorder in `size` bytes of memory, for a log whose pressures count from this datum:
// COLDLOOP_DATUM_GAUGE or COLDLOOP_DATUM_ABSOLUTE.
//
// Errors: NULL_POINTER, STRUCT_SIZE for less than coldloop_recorder_size(), MISSING_DATUM; nothing is written then.
uint32_t coldloop_recorder_init(void *recorder,
                                size_t size,
                                uint32_t datum,
                                struct coldloop_error *error);

// Takes `count` samples: their times, and of each the values of the coldloop_channels in `channels`.
//
// `row_stride` are the bytes from each sample to the next, `channel_stride` those from each channel to the next, so that rows of a
// struct and columns of arrays are served alike. Time is that of the logger's clock, s; only differences count. Impossible values are
// refused and counted, see coldloop_log_note.
//
// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME for a number that is no coldloop_channel; no sample is taken then.
uint32_t coldloop_recorder_push(void *recorder,
                                size_t count,
                                const double *time_s,
                                ptrdiff_t time_stride,
                                size_t channel_count,
                                const uint32_t *channels,
                                const double *values,
                                ptrdiff_t row_stride,
                                ptrdiff_t channel_stride,
                                struct coldloop_error *error);

// What the log says so far. Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE.
uint32_t coldloop_recorder_summary(const void *recorder,
                                   struct coldloop_log_summary *summary,
                                   struct coldloop_error *error);

// A state of the log, counted from 0 in the order of time; the present one is the last.
//
// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, OUT_OF_RANGE for a state that is not there.
uint32_t coldloop_recorder_state(const void *recorder,
                                 size_t place,
                                 struct coldloop_log_state *state,
                                 struct coldloop_error *error);

// A reading of the state that is known best, with its standard uncertainty, from the instrument and from the scatter of the samples.
//
// `kind` is a coldloop_reading_kind; `instruments` may be NULL for the usual ones. Pa from the datum of the log, K, or cycles per
// second.
//
// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, UNKNOWN_NAME; MISSING where no state has lasted long enough or the log does
// not tell it.
uint32_t coldloop_recorder_reading(const void *recorder,
                                   const struct coldloop_instruments *instruments,
                                   uint32_t kind,
                                   struct coldloop_estimate *reading,
                                   struct coldloop_error *error);

// What the log tells of a coldloop_observation: 1 for yes, 0 for no.
//
// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME; MISSING where the log does not tell it.
uint32_t coldloop_recorder_observation(const void *recorder,
                                       uint32_t observation,
                                       uint32_t *seen,
                                       struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * A visit as it grows
 *
 * A session holds what is known of a vehicle: readings, logs, looks and repairs are added one by one, each can be undone, and it
 * says what to do next. Verdict, odds and steps are numbers and enumerators. It lives in memory of the caller, of
 * coldloop_session_size() bytes, and needs no freeing:
 *
 *     coldloop_vehicle_system van = {
 *         .size = sizeof van, .refrigerant = COLDLOOP_REFRIGERANT_R134A, .expansion = COLDLOOP_EXPANSION_TXV,
 *         .compressor = COLDLOOP_COMPRESSOR_FIXED_CLUTCH, .nominal_charge_kg = NAN, .high_cut_out_pa_gauge = NAN};
 *     void *session = malloc(coldloop_session_size());
 *     coldloop_session_init(session, coldloop_session_size(), &van, &conditions, NULL, NULL);
 *     coldloop_session_add_reading(session, COLDLOOP_READING_KIND_LOW_SIDE, COLDLOOP_DATUM_GAUGE, 427e3, 10e3, NULL);
 *     coldloop_next_step next = {.size = sizeof next};
 *     coldloop_session_next(session, &next, NULL);
 *
 * The next step is held, because the technician may already be on the way to do it: it changes only when another one saves
 * clearly more. Memory that holds no session gives NOT_INITIALISED; a call that is refused leaves the session as it was. A session
 * belongs to the version of the library that initialised it: store it as text to keep it or to hand it to another version.
 */

// Bytes that a session takes.
size_t coldloop_session_size(void);

// Makes a session without readings in `size` bytes of memory.
//
// `settings` may be NULL, or a JSON object in the shape of the "settings" of a readings file.
//
// Errors: NULL_POINTER, STRUCT_SIZE for less than coldloop_session_size() and for structs, UNKNOWN_NAME, NOT_FINITE, OUT_OF_RANGE,
// INCONSISTENT for contradictions, NOT_UTF8 and those of a readings file for settings; nothing is written then.
uint32_t coldloop_session_init(void *session,
                               size_t size,
                               const struct coldloop_vehicle_system *system,
                               const struct coldloop_conditions *conditions,
                               const char *settings,
                               struct coldloop_error *error);

// Makes a session of a text: a stored session, or the start of one from any readings file, in TOML or JSON.
//
// A refusal of the text is written to `refusal` as coldloop_diagnose writes it; `refusal` may be NULL.
//
// Errors: those of coldloop_diagnose, and STRUCT_SIZE for less than coldloop_session_size(); the session is not written then.
uint32_t coldloop_session_from_text(void *session,
                                    size_t size,
                                    const char *stored,
                                    char *refusal,
                                    size_t capacity,
                                    size_t *length,
                                    struct coldloop_error *error);

// Adds a reading of a coldloop_reading_kind, which replaces one of the same kind: Pa from the datum, K, or engagements per second,
// with its standard uncertainty in the same unit.
//
// `datum` is COLDLOOP_DATUM_GAUGE or COLDLOOP_DATUM_ABSOLUTE for a pressure, and does not matter otherwise;
// coldloop_gauge_uncertainty and coldloop_thermometer_uncertainty tell the uncertainty of an instrument.
//
// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME, MISSING_DATUM, NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_session_add_reading(void *session,
                                      uint32_t kind,
                                      uint32_t datum,
                                      double reading,
                                      double standard_uncertainty,
                                      struct coldloop_error *error);

// Adds the state of a recorder's log that is known best, and before it, as a step of its own, the speeds that were logged in that
// state. `instruments` may be NULL for the usual ones. coldloop_session_log_standing judges all states of the log together.
//
// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, UNKNOWN_NAME; MISSING where no state has lasted long enough, and those of
// coldloop_session_add_reading.
uint32_t coldloop_session_add_log(void *session,
                                  const void *recorder,
                                  const struct coldloop_instruments *instruments,
                                  struct coldloop_error *error);

// Adds the answer to a question, a coldloop_observation: 1 for yes, 0 for no.
//
// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME, OUT_OF_RANGE for another answer, INCONSISTENT.
uint32_t coldloop_session_add_observation(void *session,
                                          uint32_t observation,
                                          uint32_t seen,
                                          struct coldloop_error *error);

// Adds how a coldloop_check came out, a coldloop_result_kind: yes or no; of a check with two questions with the coldloop_observation
// to which a yes belongs, 0 otherwise.
//
// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME; MISSING for a check whose result is a number (add it as a reading), INCONSISTENT.
uint32_t coldloop_session_add_outcome(void *session,
                                      uint32_t check,
                                      uint32_t result,
                                      uint32_t question,
                                      struct coldloop_error *error);

// Replaces the conditions. Errors: as coldloop_session_init.
uint32_t coldloop_session_set_conditions(void *session,
                                         const struct coldloop_conditions *conditions,
                                         struct coldloop_error *error);

// Notes that a coldloop_fault was repaired: what is added from now on describes the vehicle after the repair. With 0 for `helped`
// the repair did not help: its fault is ruled out, and all readings still hold.
//
// Errors: NULL_POINTER, NOT_INITIALISED, UNKNOWN_NAME, OUT_OF_RANGE for another `helped` than 0 and 1, INCONSISTENT for a fault that
// the system cannot have.
uint32_t coldloop_session_add_repair(void *session,
                                     uint32_t fault,
                                     uint32_t helped,
                                     struct coldloop_error *error);

// Takes the last step back; `undone` receives 1, or 0 where nothing was added yet.
//
// Errors: NULL_POINTER, NOT_INITIALISED, NOT_AVAILABLE where only steps are left that are too old.
uint32_t coldloop_session_undo(void *session, uint32_t *undone, struct coldloop_error *error);

// The verdict now. Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, and those of coldloop_diagnose.
uint32_t coldloop_session_standing(const void *session,
                                   struct coldloop_standing *standing,
                                   struct coldloop_error *error);

// The faults that were considered with their odds, the most likely first. At most `capacity` of them go to `faults`; `count` receives
// how many there are.
//
// Errors: NULL_POINTER, NOT_INITIALISED, and those of coldloop_diagnose; `count` is 0 then.
uint32_t coldloop_session_odds(const void *session,
                               struct coldloop_ranked_fault *faults,
                               size_t capacity,
                               size_t *count,
                               struct coldloop_error *error);

// What to do next, with its cautions and the entry that its result belongs to; it is held from here on.
//
// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, and those of coldloop_diagnose.
uint32_t coldloop_session_next(void *session, struct coldloop_next_step *next, struct coldloop_error *error);

// The session as a readings file in TOML, from which it is resumed to the same bits. `file` is the text that it began with, whose
// "meta" and further tables are kept as they were written, or NULL.
//
// Buffer, capacity and length as for coldloop_diagnose.
//
// Errors: NULL_POINTER, NOT_INITIALISED, those of a readings file for `file`; NOT_AVAILABLE for a pressure table or earlier visits of a
// text that is not given.
uint32_t coldloop_session_text(const void *session,
                               const char *file,
                               char *stored,
                               size_t capacity,
                               size_t *length,
                               struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * What a log says of the vehicle of a session
 *
 * A log may hold several states, at idle and at speed for instance. coldloop_session_add_log adds the one that is known best
 * to the session. The two functions here judge all of them together with what the session knows, and change nothing: a program
 * shows their answers while a log runs.
 */

// The verdict from all judged states of a recorder's log together, with what the session knows beside it.
//
// `instruments` may be NULL for the usual ones. After a repair the vehicle is judged by itself, without what was found before.
//
// Errors: NULL_POINTER, NOT_INITIALISED, STRUCT_SIZE, UNKNOWN_NAME; MISSING where no state has lasted long enough, and those of
// coldloop_diagnose.
uint32_t coldloop_session_log_standing(const void *session,
                                       const void *recorder,
                                       const struct coldloop_instruments *instruments,
                                       struct coldloop_standing *told,
                                       struct coldloop_error *error);

// The faults that were considered with their odds, from the same judgement. Places, capacity and count as for coldloop_session_odds.
//
// Errors: as coldloop_session_log_standing; `count` is 0 then.
uint32_t coldloop_session_log_odds(const void *session,
                                   const void *recorder,
                                   const struct coldloop_instruments *instruments,
                                   struct coldloop_ranked_fault *faults,
                                   size_t capacity,
                                   size_t *count,
                                   struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Units and text
 *
 * Every function of this library takes and gives SI; these convert what a gauge shows or a person writes. The factors follow
 * from exact definitions: a psi is a pound times standard gravity over an inch squared, an inch of mercury has the density
 * of mercury at 0 degrees Celsius. The conversions are plain arithmetic without a check of range; the datum of a
 * pressure does not change.
 *
 * Text is read strictly: a unit is required, a pressure must say gauge, absolute or vacuum, a comma is refused. Case,
 * spaces, dots, brackets and degree signs do not matter:
 *
 *     uint32_t datum;
 *     double pressure_pa;
 *     coldloop_read_pressure("35 psig", &datum, &pressure_pa, NULL);
 */

// Kelvin of degrees Celsius.
double coldloop_celsius_to_kelvin(double celsius);

// Kelvin of degrees Fahrenheit.
double coldloop_fahrenheit_to_kelvin(double fahrenheit);

// Degrees Celsius of kelvin.
double coldloop_kelvin_to_celsius(double temperature_k);

// Degrees Fahrenheit of kelvin.
double coldloop_kelvin_to_fahrenheit(double temperature_k);

// Pascals of pounds-force per square inch.
double coldloop_psi_to_pa(double psi);

// Pounds-force per square inch of pascals.
double coldloop_pa_to_psi(double pa);

// Pascals of bars.
double coldloop_bar_to_pa(double bar);

// Bars of pascals.
double coldloop_pa_to_bar(double pa);

// Pascals of inches of mercury; a vacuum of 20 inches is a gauge pressure of minus that.
double coldloop_inhg_to_pa(double inhg);

// Inches of mercury of pascals.
double coldloop_pa_to_inhg(double pa);

// Pascals of microns of mercury.
double coldloop_microns_to_pa(double microns);

// Microns of mercury of pascals.
double coldloop_pa_to_microns(double pa);

// Reads a pressure with its unit and datum: "35 psig", "2.4 bar gauge", "101.3 kPa abs", "18 inHg vacuum".
//
// `datum` receives COLDLOOP_DATUM_ABSOLUTE or COLDLOOP_DATUM_GAUGE (0 on failure), `pressure_pa` the pascals from there.
//
// Errors: MISSING_DATUM, MISSING_UNIT, UNKNOWN_UNIT, DECIMAL_COMMA, NOT_A_NUMBER, OUT_OF_RANGE; coldloop_error_message
// says what to write instead.
uint32_t coldloop_read_pressure(const char *text,
                                uint32_t *datum,
                                double *pressure_pa,
                                struct coldloop_error *error);

// Reads any other quantity with its unit into SI: "74 °F" as COLDLOOP_QUANTITY_TEMPERATURE, "5250 ft" as
// COLDLOOP_QUANTITY_ALTITUDE, "1500 rpm" as COLDLOOP_QUANTITY_ROTATIONAL_SPEED.
//
// Errors: those of coldloop_read_pressure; NOT_AVAILABLE for a quantity that is not read from text; UNKNOWN_NAME for a
// number that is no coldloop_quantity. The two pressures are read too, and refused when the text has the other datum.
uint32_t coldloop_read_quantity(const char *text,
                                uint32_t quantity,
                                double *value,
                                struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Names of the numbers
 *
 * Each vocabulary of this header has its ids, which are those of readings files and answers. Back from an id,
 * case does not matter.
 *
 * Generated from tables/names.toml.
 */

// The id of a coldloop_quantity, such as "temperature"; NULL for a number that is none.
const char *coldloop_quantity_name(uint32_t quantity);

// The coldloop_quantity of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_quantity_from_name(const char *name, uint32_t *quantity, struct coldloop_error *error);

// The id of a coldloop_refrigerant, such as "R-134a"; NULL for a number that is none.
const char *coldloop_refrigerant_name(uint32_t refrigerant);

// The coldloop_refrigerant of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_refrigerant_from_name(const char *name,
                                        uint32_t *refrigerant,
                                        struct coldloop_error *error);

// The id of a coldloop_safety_group, such as "A1"; NULL for a number that is none.
const char *coldloop_safety_group_name(uint32_t safety_group);

// The coldloop_safety_group of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_safety_group_from_name(const char *name,
                                         uint32_t *safety_group,
                                         struct coldloop_error *error);

// The id of a coldloop_phase, such as "liquid"; NULL for a number that is none.
const char *coldloop_phase_name(uint32_t phase);

// The coldloop_phase of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_phase_from_name(const char *name, uint32_t *phase, struct coldloop_error *error);

// The id of a coldloop_reference, such as "liquid-at-0-celsius"; NULL for a number that is none.
const char *coldloop_reference_name(uint32_t reference);

// The coldloop_reference of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_reference_from_name(const char *name, uint32_t *reference, struct coldloop_error *error);

// The id of a coldloop_expansion, such as "txv"; NULL for a number that is none.
const char *coldloop_expansion_name(uint32_t expansion);

// The coldloop_expansion of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_expansion_from_name(const char *name, uint32_t *expansion, struct coldloop_error *error);

// The id of a coldloop_compressor, such as "fixed-clutch"; NULL for a number that is none.
const char *coldloop_compressor_name(uint32_t compressor);

// The coldloop_compressor of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_compressor_from_name(const char *name, uint32_t *compressor, struct coldloop_error *error);

// The id of a coldloop_air_source, such as "fresh"; NULL for a number that is none.
const char *coldloop_air_source_name(uint32_t air_source);

// The coldloop_air_source of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_air_source_from_name(const char *name, uint32_t *air_source, struct coldloop_error *error);

// The id of a coldloop_gauge_class, such as "class-1.0"; NULL for a number that is none.
const char *coldloop_gauge_class_name(uint32_t gauge_class);

// The coldloop_gauge_class of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_gauge_class_from_name(const char *name,
                                        uint32_t *gauge_class,
                                        struct coldloop_error *error);

// The id of a coldloop_thermometer, such as "clamp-thermocouple"; NULL for a number that is none.
const char *coldloop_thermometer_name(uint32_t thermometer);

// The coldloop_thermometer of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_thermometer_from_name(const char *name,
                                        uint32_t *thermometer,
                                        struct coldloop_error *error);

// The id of a coldloop_fault, such as "no-fault"; NULL for a number that is none.
const char *coldloop_fault_name(uint32_t fault);

// The coldloop_fault of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_fault_from_name(const char *name, uint32_t *fault, struct coldloop_error *error);

// The id of a coldloop_verdict, such as "healthy"; NULL for a number that is none.
const char *coldloop_verdict_name(uint32_t verdict);

// The coldloop_verdict of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_verdict_from_name(const char *name, uint32_t *verdict, struct coldloop_error *error);

// The id of a coldloop_pressure_match, such as "agrees"; NULL for a number that is none.
const char *coldloop_pressure_match_name(uint32_t pressure_match);

// The coldloop_pressure_match of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_pressure_match_from_name(const char *name,
                                           uint32_t *pressure_match,
                                           struct coldloop_error *error);

// The id of a coldloop_leak_phase, such as "vapour"; NULL for a number that is none.
const char *coldloop_leak_phase_name(uint32_t leak_phase);

// The coldloop_leak_phase of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_leak_phase_from_name(const char *name, uint32_t *leak_phase, struct coldloop_error *error);

// The id of a coldloop_low_port, such as "evaporator"; NULL for a number that is none.
const char *coldloop_low_port_name(uint32_t low_port);

// The coldloop_low_port of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_low_port_from_name(const char *name, uint32_t *low_port, struct coldloop_error *error);

// The id of a coldloop_high_port, such as "discharge-line"; NULL for a number that is none.
const char *coldloop_high_port_name(uint32_t high_port);

// The coldloop_high_port of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_high_port_from_name(const char *name, uint32_t *high_port, struct coldloop_error *error);

// The id of a coldloop_reading_kind, such as "low_side"; NULL for a number that is none.
const char *coldloop_reading_kind_name(uint32_t reading_kind);

// The coldloop_reading_kind of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_reading_kind_from_name(const char *name,
                                         uint32_t *reading_kind,
                                         struct coldloop_error *error);

// The id of a coldloop_observation, such as "clutch_engaged"; NULL for a number that is none.
const char *coldloop_observation_name(uint32_t observation);

// The coldloop_observation of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_observation_from_name(const char *name,
                                        uint32_t *observation,
                                        struct coldloop_error *error);

// The id of a coldloop_check, such as "read-low-side"; NULL for a number that is none.
const char *coldloop_check_name(uint32_t check);

// The coldloop_check of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_check_from_name(const char *name, uint32_t *check, struct coldloop_error *error);

// The id of a coldloop_result_kind, such as "yes"; NULL for a number that is none.
const char *coldloop_result_kind_name(uint32_t result_kind);

// The coldloop_result_kind of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_result_kind_from_name(const char *name,
                                        uint32_t *result_kind,
                                        struct coldloop_error *error);

// The id of a coldloop_caution, such as "pressure"; NULL for a number that is none.
const char *coldloop_caution_name(uint32_t caution);

// The coldloop_caution of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_caution_from_name(const char *name, uint32_t *caution, struct coldloop_error *error);

// The id of a coldloop_channel, such as "low_side"; NULL for a number that is none.
const char *coldloop_channel_name(uint32_t channel);

// The coldloop_channel of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_channel_from_name(const char *name, uint32_t *channel, struct coldloop_error *error);

// The id of a coldloop_log_phase, such as "empty"; NULL for a number that is none.
const char *coldloop_log_phase_name(uint32_t log_phase);

// The coldloop_log_phase of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_log_phase_from_name(const char *name, uint32_t *log_phase, struct coldloop_error *error);

// The id of a coldloop_log_note, such as "time-not-finite"; NULL for a number that is none.
const char *coldloop_log_note_name(uint32_t log_note);

// The coldloop_log_note of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_log_note_from_name(const char *name, uint32_t *log_note, struct coldloop_error *error);

// The id of a coldloop_picture, such as "readings"; NULL for a number that is none.
const char *coldloop_picture_name(uint32_t picture);

// The coldloop_picture of an id; 0 on failure. Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_picture_from_name(const char *name, uint32_t *picture, struct coldloop_error *error);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* COLDLOOP_H */
