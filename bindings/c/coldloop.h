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
 *   The library holds no state, allocates nothing that outlives a call, takes no locks: every function may be
 *   called from any thread at any time.
 *
 * A first call
 *
 *     double pressure_pa_abs;
 *     if (coldloop_dew_pressure(COLDLOOP_REFRIGERANT_R134A, 273.15, &pressure_pa_abs, NULL) == COLDLOOP_STATUS_OK)
 *         printf("%.0f Pa\n", pressure_pa_abs);
 */

#ifndef COLDLOOP_H
#define COLDLOOP_H

/* Generated from bindings/c/src by tables/compile; edit the sources, not this file. */

#include <stddef.h>
#include <stdint.h>

// The major version of this header.
#define COLDLOOP_VERSION_MAJOR 0

// The minor version of this header.
#define COLDLOOP_VERSION_MINOR 1

// The patch version of this header.
#define COLDLOOP_VERSION_PATCH 0

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
} coldloop_refrigerant;

// A state of the system that explains its readings; `no-fault` is one of them.
typedef enum coldloop_fault {
    // The system is as it should be.
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
    // A gauge, its zero, its unit or its hose misleads.
    COLDLOOP_FAULT_GAUGE_ERROR = 20,
} coldloop_fault;

// What the readings allow one to say.
typedef enum coldloop_verdict {
    // The readings are those of a sound system.
    COLDLOOP_VERDICT_HEALTHY = 1,
    // One fault explains the readings.
    COLDLOOP_VERDICT_NAMED_FAULT = 2,
    // A short list explains the readings and these readings cannot part it.
    COLDLOOP_VERDICT_CANNOT_TELL = 3,
    // No single explanation fits: measure again.
    COLDLOOP_VERDICT_NOTHING_FITS = 4,
    // Too little was measured to judge.
    COLDLOOP_VERDICT_NOT_ENOUGH_EVIDENCE = 5,
} coldloop_verdict;

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
 * A status is enough to branch on; coldloop_status_text gives its sentence. Who wants to tell a user what to change
 * passes a coldloop_error and prints coldloop_error_message:
 *
 *     coldloop_error error = {sizeof error};
 *     char message[256];
 *     if (coldloop_dew_pressure(COLDLOOP_REFRIGERANT_R134A, 500.0, &pressure_pa_abs, &error))
 *         coldloop_error_message(&error, message, sizeof message);
 */

// One sentence for a status; for a number that is none, a sentence that says so.
const char *coldloop_status_text(uint32_t status);

// Writes a message that names quantity, value and bounds, and returns its length without the zero byte.
//
// At most `capacity` bytes are written, the zero byte included, as snprintf does; a longer message is cut after a
// whole character. `buffer` may be NULL to ask for the length. An `error` that is
// NULL or whose size is too small has an empty message.
size_t coldloop_error_message(const struct coldloop_error *error,
                              char *buffer,
                              size_t capacity);

// The id of a quantity, such as "temperature"; NULL for a number that is no coldloop_quantity.
const char *coldloop_quantity_name(uint32_t quantity);

/* ----------------------------------------------------------------------------
 * Refrigerants
 *
 * A refrigerant is a number from coldloop_refrigerant; text names it by its ANSI/ASHRAE Standard 34 designation.
 */

// The designation of a refrigerant, such as "R-134a"; NULL for a number that is no coldloop_refrigerant.
const char *coldloop_refrigerant_name(uint32_t refrigerant);

// The refrigerant of a designation, which may be written R-134a, R134a, r134a or 134a; 0 on failure.
//
// Errors: UNKNOWN_NAME, NULL_POINTER, NOT_UTF8.
uint32_t coldloop_refrigerant_from_name(const char *name,
                                        uint32_t *refrigerant,
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

// Dew pressures of `count` temperatures that stand `temperature_stride` bytes apart, written `pressure_stride` bytes
// apart; sizeof(double) for plain arrays, the size of a struct for one of its fields. The arrays may be the same.
//
// An element without an answer becomes NaN and the rest are computed all the same; `failed` (may be NULL) receives
// how many there were, and status and `error` are those of the first. Errors as coldloop_bubble_pressure.
uint32_t coldloop_dew_pressures(uint32_t refrigerant,
                                size_t count,
                                const double *temperature_k,
                                size_t temperature_stride,
                                double *pressure_pa_abs,
                                size_t pressure_stride,
                                size_t *failed,
                                struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * The surrounding air
 *
 * A gauge shows the pressure above the air around it. At 1,600 m that air weighs a fifth less than at sea level, so
 * a gauge pressure becomes absolute only with the air's own pressure: a barometer's, or the standard atmosphere's
 * at that altitude.
 */

// Pressure of the standard atmosphere at a geopotential altitude from -500 m to 9,000 m. Source: ISO 2533:1975.
//
// Errors: NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_standard_pressure(double altitude_m,
                                    double *pressure_pa_abs,
                                    struct coldloop_error *error);

// Pressure above vacuum of what a gauge shows that was zeroed in air of `air_pa_abs`, 28,000 Pa to 112,000 Pa.
//
// Errors: NOT_FINITE; OUT_OF_RANGE, also for a gauge that shows less than a vacuum.
uint32_t coldloop_absolute_pressure(double pressure_pa_gauge,
                                    double air_pa_abs,
                                    double *pressure_pa_abs,
                                    struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Superheat and subcooling
 *
 * A pressure comes with its datum: COLDLOOP_DATUM_ABSOLUTE, or COLDLOOP_DATUM_GAUGE with the pressure of the air in
 * which the gauge was zeroed. For an absolute pressure the air is not looked at; pass 0.
 */

// How far the suction line is above the dew point of the low-side pressure; negative when it reads colder than vapour
// of that pressure can be.
//
// Errors: UNKNOWN_NAME for a number that is no coldloop_refrigerant, MISSING_DATUM for one that is no datum,
// NOT_FINITE, OUT_OF_RANGE.
uint32_t coldloop_superheat(uint32_t refrigerant,
                            double suction_line_k,
                            uint32_t datum,
                            double pressure_pa,
                            double air_pa_abs,
                            double *superheat_k,
                            struct coldloop_error *error);

// How far the liquid line is below the bubble point of the high-side pressure; negative when it carries bubbles or
// the high side holds a gas that does not condense. Errors as coldloop_superheat.
uint32_t coldloop_subcooling(uint32_t refrigerant,
                             double liquid_line_k,
                             uint32_t datum,
                             double pressure_pa,
                             double air_pa_abs,
                             double *subcooling_k,
                             struct coldloop_error *error);

/* ----------------------------------------------------------------------------
 * Diagnosis
 *
 * One call with text on both sides, for every language that can pass a string. The readings are a JSON object of the
 * same shape as a readings file: "system", "conditions", "readings", "observations"; a quantity is text with its unit,
 * and a pressure says its datum:
 *
 *     const char *readings =
 *         "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
 *         " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"},"
 *         " \"readings\": {\"low_side\": \"37 psig\", \"high_side\": \"172 psig\", \"vent\": \"40 degF\"}}";
 *     size_t length;
 *     char answer[65536];
 *     uint32_t status = coldloop_diagnose(readings, answer, sizeof answer, &length, NULL);
 *
 * The answer is one JSON object: "verdict", "faults" with their odds and reasons, "expected", "derived",
 * "next_checks", "cautions", "quality". Readings that cannot be read are refused: the status says why, and the answer
 * is {"refused": {"key": ..., "value": ..., "message": ...}}, the message saying what to write instead.
 */

// Diagnoses a vehicle from its readings.
//
// At most `capacity` bytes are written to `answer`, the zero byte included, and `length` (may be NULL) receives the
// length of the whole answer without it, as snprintf tells it: when `length` is not less than `capacity` the answer
// was cut, and a second call with length + 1 bytes has all of it. `answer` may be NULL to ask for the length.
//
// Errors: every kind that a readings file can be refused for; NULL_POINTER, NOT_UTF8 and INTERNAL leave the answer
// empty.
uint32_t coldloop_diagnose(const char *readings_json,
                           char *answer,
                           size_t capacity,
                           size_t *length,
                           struct coldloop_error *error);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* COLDLOOP_H */
