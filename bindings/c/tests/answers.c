/* The answers of the functions, compared with published values and with each other. */

#include "check.h"
#include "coldloop.h"

#include <math.h>
#include <string.h>

#define R134A COLDLOOP_REFRIGERANT_R134A
#define IIR COLDLOOP_REFERENCE_IIR

static int near(double found, double right, double within)
{
    return fabs(found - right) <= within;
}

static void a_state_comes_back_from_every_pair(void)
{
    coldloop_state gas = {.size = sizeof gas}, again = {.size = sizeof again};
    /* The reference itself: saturated liquid at 0 degrees Celsius has 200 kJ/kg and 1 kJ/(kg K). */
    CHECK(coldloop_state_temperature_quality(R134A, IIR, 273.15, 0.0, &again, NULL) == 0);
    CHECK(near(again.enthalpy_j_kg, 200e3, 1e-6) && near(again.entropy_j_kg_k, 1e3, 1e-9));
    CHECK(again.phase == COLDLOOP_PHASE_TWO_PHASE && again.quality == 0.0 && again.has_quality == 1);
    /* Saturated liquid has the response properties of one phase; of a mixture of liquid and vapour they are 0, not NaN. */
    CHECK(again.has_response == 1 && near(again.cp_j_kg_k, 1341.0, 3.0) && again.speed_of_sound_m_s > 400.0);
    CHECK(coldloop_state_temperature_quality(R134A, IIR, 273.15, 0.5, &again, NULL) == 0);
    CHECK(again.has_response == 0 && again.cp_j_kg_k == 0.0 && again.isobaric_expansion_1_k == 0.0);

    CHECK(coldloop_state_temperature_pressure(R134A, IIR, 283.15, 300e3, &gas, NULL) == 0);
    CHECK(gas.phase == COLDLOOP_PHASE_VAPOUR && gas.has_quality == 0 && gas.quality == 0.0 && gas.has_response == 1 && gas.size == sizeof gas);
    CHECK(near(gas.density_kg_m3, 14.1, 0.05) && gas.speed_of_sound_m_s > 100.0 && gas.cp_j_kg_k > gas.cv_j_kg_k);
    CHECK(near(gas.internal_energy_j_kg, gas.enthalpy_j_kg - gas.pressure_pa_abs / gas.density_kg_m3, 1e-6));
    CHECK(coldloop_state_temperature_density(R134A, IIR, 283.15, gas.density_kg_m3, &again, NULL) == 0);
    CHECK(near(again.pressure_pa_abs, 300e3, 1e-6));
    CHECK(coldloop_state_pressure_enthalpy(R134A, IIR, 300e3, gas.enthalpy_j_kg, &again, NULL) == 0 && near(again.temperature_k, 283.15, 1e-9));
    CHECK(coldloop_state_pressure_entropy(R134A, IIR, 300e3, gas.entropy_j_kg_k, &again, NULL) == 0 && near(again.temperature_k, 283.15, 1e-9));
    CHECK(coldloop_state_enthalpy_entropy(R134A, IIR, gas.enthalpy_j_kg, gas.entropy_j_kg_k, &again, NULL) == 0);
    CHECK(near(again.temperature_k, 283.15, 1e-7) && near(again.pressure_pa_abs, 300e3, 1e-3));
    CHECK(coldloop_state_pressure_quality(R134A, IIR, 300e3, 0.25, &again, NULL) == 0 && again.quality == 0.25);
}

/* pV = RT (1 + B rho + ...) in a thin gas */
static void a_thin_gas_follows_its_virial_coefficients(void)
{
    double b = 0.0, c = 0.0;
    coldloop_state gas = {.size = sizeof gas};
    CHECK(coldloop_virial_coefficients(R134A, 300.0, &b, &c, NULL) == 0 && b < 0.0);
    CHECK(coldloop_state_temperature_pressure(R134A, IIR, 300.0, 1e4, &gas, NULL) == 0);
    const double rho = gas.density_mol_m3, compressibility = 1e4 / (rho * 8.314471 * 300.0);
    CHECK(near(compressibility, 1.0 + b * rho + c * rho * rho, 1e-7));
    CHECK(coldloop_virial_coefficients(R134A, 1e6, &b, NULL, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE && isnan(b));
}

static void arguments_that_fix_no_state_are_refused(void)
{
    double pa = 0.0;
    coldloop_state state = {.size = sizeof state};
    coldloop_dew_pressure(R134A, 300.0, &pa, NULL);
    CHECK(coldloop_state_temperature_pressure(R134A, IIR, 300.0, pa, &state, NULL) == COLDLOOP_STATUS_TWO_PHASE);
    CHECK(state.phase == 0 && isnan(state.enthalpy_j_kg) && state.size == sizeof state);
    CHECK(coldloop_state_temperature_pressure(R134A, 99, 300.0, 1e5, &state, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(coldloop_state_temperature_pressure(R134A, IIR, 300.0, 1e5, NULL, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    state.size = 8;
    CHECK(coldloop_state_temperature_pressure(R134A, IIR, 300.0, 1e5, &state, NULL) == COLDLOOP_STATUS_STRUCT_SIZE && state.size == 8);
}

/* The struct of a later header is longer; the library leaves the part that it does not know unchanged. */
static void a_longer_struct_of_a_later_header_is_served(void)
{
    struct later {
        coldloop_state state;
        double more;
    } later;
    later.state.size = sizeof later;
    later.more = 7.0;
    CHECK(coldloop_state_temperature_pressure(R134A, IIR, 283.15, 300e3, &later.state, NULL) == 0);
    CHECK(later.state.phase == COLDLOOP_PHASE_VAPOUR && later.more == 7.0 && later.state.size == sizeof later);
}

static void arrays_have_the_bits_of_single_answers(void)
{
    enum { COUNT = 1000 };
    static struct row {
        double line_k, pressure_pa, dew_k, superheat_k;
        coldloop_state state;
    } rows[COUNT];
    const ptrdiff_t stride = sizeof rows[0];
    const double air_pa = 84e3;
    size_t failed = 99;
    for (int i = 0; i < COUNT; i++) {
        rows[i].line_k = 260.0 + 0.06 * i;
        rows[i].pressure_pa = 1e5 + 237.0 * i;
    }
    rows[0].state.size = sizeof rows[0].state;
    CHECK(coldloop_dew_temperatures(R134A, COUNT, &rows[0].pressure_pa, stride, &rows[0].dew_k, stride, &failed, NULL) == 0);
    CHECK(failed == 0);
    CHECK(coldloop_superheats(R134A, COLDLOOP_DATUM_GAUGE, air_pa, COUNT, &rows[0].line_k, stride, &rows[0].pressure_pa, stride,
                              &rows[0].superheat_k, stride, NULL, NULL) == 0);
    CHECK(coldloop_states(R134A, IIR, COLDLOOP_PAIR_TP, COUNT, &rows[0].line_k, stride, &rows[0].pressure_pa, stride,
                          &rows[0].state, stride, &failed, NULL) == 0);
    int differ = 0;
    for (int i = 0; i < COUNT; i++) {
        double dew_k, superheat_k;
        coldloop_state state = {.size = sizeof state};
        coldloop_dew_temperature(R134A, rows[i].pressure_pa, &dew_k, NULL);
        coldloop_superheat(R134A, rows[i].line_k, COLDLOOP_DATUM_GAUGE, rows[i].pressure_pa, air_pa, &superheat_k, NULL);
        coldloop_state_temperature_pressure(R134A, IIR, rows[i].line_k, rows[i].pressure_pa, &state, NULL);
        differ += dew_k != rows[i].dew_k || superheat_k != rows[i].superheat_k
            || state.density_kg_m3 != rows[i].state.density_kg_m3 || state.phase != rows[i].state.phase;
    }
    CHECK(differ == 0);

    /* One pressure for all rows: a stride of 0. */
    CHECK(coldloop_superheats(R134A, COLDLOOP_DATUM_ABSOLUTE, 0.0, COUNT, &rows[0].line_k, stride, &rows[0].pressure_pa, 0,
                              &rows[0].superheat_k, stride, &failed, NULL) == 0);
    CHECK(near(rows[9].superheat_k - rows[0].superheat_k, 9 * 0.06, 1e-9));
    CHECK(coldloop_states(R134A, IIR, 99, 1, &air_pa, 8, &air_pa, 8, &rows[0].state, stride, &failed, NULL)
          == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(failed == 1 && rows[0].state.phase == 0);
}

static void slope_and_latent_heat_agree_with_both_sides_of_the_saturation_line(void)
{
    double slope = 0.0, latent = 0.0;
    coldloop_saturation s = {.size = sizeof s};
    CHECK(coldloop_saturated(R134A, IIR, 273.15, &s, NULL) == 0);
    CHECK(coldloop_saturation_slope(R134A, 273.15, &slope, NULL) == 0);
    CHECK(coldloop_latent_heat(R134A, 273.15, &latent, NULL) == 0);
    CHECK(near(s.vapour_enthalpy_j_kg - s.liquid_enthalpy_j_kg, latent, 1e-6));
    CHECK(near(s.vapour_entropy_j_kg_k - s.liquid_entropy_j_kg_k, latent / 273.15, 1e-8));
    /* Clausius and Clapeyron */
    CHECK(near(latent / (273.15 * (1.0 / s.vapour_density_kg_m3 - 1.0 / s.liquid_density_kg_m3)) / slope, 1.0, 1e-9));
    CHECK(near(s.pressure_pa_abs, 292.8e3, 50.0));
}

static void a_blend_boils_over_a_glide(void)
{
    double bubble = 0.0, dew = 0.0, glide = 0.0, pure = 1.0;
    coldloop_state state = {.size = sizeof state};
    const uint32_t r407c = COLDLOOP_REFRIGERANT_R407C;
    CHECK(coldloop_bubble_temperature(r407c, 500e3, &bubble, NULL) == 0);
    CHECK(coldloop_dew_temperature(r407c, 500e3, &dew, NULL) == 0);
    CHECK(coldloop_glide(r407c, 500e3, &glide, NULL) == 0);
    CHECK(near(glide, dew - bubble, 1e-12) && glide > 6.0 && glide < 6.6);
    CHECK(coldloop_glide(R134A, 500e3, &pure, NULL) == 0 && pure == 0.0);
    CHECK(coldloop_state_pressure_quality(r407c, IIR, 500e3, 0.5, &state, NULL) == 0);
    CHECK(state.phase == COLDLOOP_PHASE_TWO_PHASE && state.temperature_k > bubble && state.temperature_k < dew);
}

static void a_charge_may_be_anything(void)
{
    double bubble = 0.0, dew = 0.0, mean = 0.0;
    coldloop_shares charge = {.count = 2}, found;
    coldloop_phase_split split = {.size = sizeof split};
    coldloop_remainder left = {.size = sizeof left};
    coldloop_error error = {.size = sizeof error};
    charge.refrigerants[0] = COLDLOOP_REFRIGERANT_R407C, charge.masses[0] = 4.0;
    charge.refrigerants[1] = R134A, charge.masses[1] = 1.0;
    CHECK(coldloop_charge_shares(&charge, &found, NULL) == 0 && found.count == 3 && found.air == 0.0);
    CHECK(found.refrigerants[2] == R134A && near(found.masses[2], 0.8 * 0.52 + 0.2, 1e-12));
    CHECK(coldloop_charge_bubble_pressure(&found, 298.15, &bubble, NULL) == 0);
    CHECK(coldloop_charge_dew_pressure(&charge, 298.15, &dew, NULL) == 0 && bubble > dew);
    CHECK(coldloop_charge_split(&charge, 298.15, 0.5 * (bubble + dew), &split, NULL) == 0);
    CHECK(split.quality > 0.0 && split.quality < 1.0 && split.liquid.count == 3);
    CHECK(split.vapour.masses[0] > split.liquid.masses[0]); /* R-32 boils first */
    CHECK(coldloop_charge_leaked(&charge, 298.15, 300.0, COLDLOOP_LEAK_PHASE_VAPOUR, 0.5, &left, NULL) == 0);
    CHECK(left.has_liquid == 1 && left.shares.masses[0] < found.masses[0] && left.pressure_pa_abs < bubble);
    CHECK(coldloop_charge_dew_pressure(&left.shares, 298.15, &mean, NULL) == 0 && mean < left.pressure_pa_abs);
    charge.count = 9;
    CHECK(coldloop_charge_dew_pressure(&charge, 298.15, &dew, &error) == COLDLOOP_STATUS_OUT_OF_RANGE && isnan(dew));
    CHECK(error.quantity == COLDLOOP_QUANTITY_ROWS && error.value == 9.0);
    CHECK(coldloop_charge_dew_pressure(NULL, 298.15, &dew, NULL) == COLDLOOP_STATUS_NULL_POINTER);

    CHECK(coldloop_dew_temperature(COLDLOOP_REFRIGERANT_R407C, 500e3, &dew, NULL) == 0);
    CHECK(coldloop_evaporating_mean(COLDLOOP_REFRIGERANT_R407C, 500e3, 0.25, &mean, NULL) == 0);
    CHECK(dew - mean > 2.0 && dew - mean < 3.0);
}

static void a_pressure_at_rest_tells_the_gas(void)
{
    coldloop_resting r = {.size = sizeof r};
    CHECK(coldloop_at_rest(R134A, COLDLOOP_DATUM_ABSOLUTE, 800e3, 3e3, 0.0, 298.15, 0.3, &r, NULL) == 0);
    CHECK(r.pressure_match == COLDLOOP_PRESSURE_MATCH_TOO_HIGH && near(r.excess_pa.value, 134.6e3, 500.0) && near(r.gas_share, 0.168, 1e-3));
    CHECK(coldloop_at_rest(R134A, COLDLOOP_DATUM_GAUGE, 581.4e3, 3e3, 84e3, 298.15, 0.3, &r, NULL) == 0);
    CHECK(r.pressure_match == COLDLOOP_PRESSURE_MATCH_AGREES && r.gas_share == 0.0);
    CHECK(coldloop_at_rest(R134A, COLDLOOP_DATUM_ABSOLUTE, 800e3, -3e3, 0.0, 298.15, 0.3, &r, NULL) != 0 && r.pressure_match == 0);
}

static void moist_air_is_that_of_the_textbook(void)
{
    /* Cengel & Boles, example 14-3: 25 degrees Celsius, wet bulb 15, 1 atm */
    coldloop_moist_air air = {.size = sizeof air}, again = {.size = sizeof again};
    CHECK(coldloop_air_of_wet_bulb(298.15, 101325.0, 288.15, &air, NULL) == 0);
    CHECK(near(air.humidity_ratio, 0.00653, 5e-5) && near(air.relative_humidity, 0.332, 2e-3));
    CHECK(near(air.enthalpy_j_kg, 41800.0, 100.0) && near(air.wet_bulb_k, 288.15, 1e-6));
    CHECK(coldloop_air_of_relative_humidity(298.15, 101325.0, air.relative_humidity, &again, NULL) == 0);
    CHECK(near(again.humidity_ratio, air.humidity_ratio, 1e-12));
    CHECK(coldloop_air_of_dew_point(298.15, 101325.0, air.dew_point_k, &again, NULL) == 0);
    CHECK(near(again.humidity_ratio, air.humidity_ratio, 1e-9));
    CHECK(coldloop_air_of_enthalpy(air.enthalpy_j_kg, 101325.0, air.humidity_ratio, &again, NULL) == 0);
    CHECK(near(again.temperature_k, 298.15, 1e-9));
    CHECK(coldloop_air_of_humidity_ratio(298.15, 101325.0, 0.5, &again, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(isnan(again.enthalpy_j_kg));
    CHECK(coldloop_air_of_relative_humidity(298.15, 101325.0, 0.0, &air, NULL) == 0 && isnan(air.dew_point_k));
}

static void water_boils_cold_under_vacuum(void)
{
    double kelvin = 0.0, pascal = 0.0;
    CHECK(coldloop_water_boiling_point(2400.0, &kelvin, NULL) == 0 && near(kelvin, 293.55, 0.1));
    CHECK(coldloop_water_saturation_pressure(kelvin, &pascal, NULL) == 0 && near(pascal, 2400.0, 1e-6));
    CHECK(coldloop_enhancement_factor(293.15, 101325.0, &kelvin, NULL) == 0 && near(kelvin, 1.004, 1e-4));
    CHECK(coldloop_standard_temperature(1000.0, &kelvin, NULL) == 0 && near(kelvin, 281.65, 1e-9));
    CHECK(coldloop_standard_density(0.0, &kelvin, NULL) == 0 && near(kelvin, 1.225, 1e-5)); /* ISO 2533:1975 */
    CHECK(coldloop_standard_altitude(89874.6, &kelvin, NULL) == 0 && near(kelvin, 1000.0, 0.01));
    CHECK(coldloop_gauge_pressure(334e3, 84e3, &pascal, NULL) == 0 && pascal == 250e3);
}

static void units_are_exact_and_text_says_its_datum(void)
{
    uint32_t datum = 9;
    double pa = 0.0, value = 0.0;
    coldloop_error error = {.size = sizeof error};
    char message[256];
    CHECK(near(coldloop_psi_to_pa(1.0), 6894.757293168361, 1e-11)); /* NIST SP 811, B.8 */
    CHECK(near(coldloop_inhg_to_pa(1.0), 3386.388640341, 1e-11));
    CHECK(coldloop_pa_to_psi(coldloop_psi_to_pa(35.0)) == 35.0 && coldloop_pa_to_bar(coldloop_bar_to_pa(2.4)) == 2.4);
    CHECK(near(coldloop_pa_to_microns(133.322387415), 1000.0, 1e-9) && near(coldloop_microns_to_pa(1000.0), 133.322387415, 1e-11));
    CHECK(near(coldloop_pa_to_inhg(3386.388640341), 1.0, 1e-15));
    CHECK(near(coldloop_fahrenheit_to_kelvin(32.0), 273.15, 1e-10) && coldloop_celsius_to_kelvin(0.0) == 273.15);
    CHECK(near(coldloop_kelvin_to_fahrenheit(373.15), 212.0, 1e-10) && near(coldloop_kelvin_to_celsius(373.15), 100.0, 1e-10));

    CHECK(coldloop_read_pressure("35 psig", &datum, &pa, NULL) == 0 && datum == COLDLOOP_DATUM_GAUGE);
    CHECK(pa == coldloop_psi_to_pa(35.0));
    CHECK(coldloop_read_pressure("101.3 kPa abs", &datum, &pa, NULL) == 0 && datum == COLDLOOP_DATUM_ABSOLUTE);
    CHECK(coldloop_read_pressure("35 psi", &datum, &pa, &error) == COLDLOOP_STATUS_MISSING_DATUM && datum == 0 && isnan(pa));
    coldloop_error_message(&error, message, sizeof message);
    CHECK(strstr(message, "psig") != NULL);
    CHECK(coldloop_read_quantity("5250 ft", COLDLOOP_QUANTITY_ALTITUDE, &value, NULL) == 0 && near(value, 1600.2, 1e-9));
    CHECK(coldloop_read_quantity("74 °F", COLDLOOP_QUANTITY_TEMPERATURE, &value, NULL) == 0 && near(value, 296.483, 1e-3));
    CHECK(coldloop_read_quantity("23,3 °C", COLDLOOP_QUANTITY_TEMPERATURE, &value, NULL) == COLDLOOP_STATUS_DECIMAL_COMMA);
    CHECK(coldloop_read_quantity("35 psig", COLDLOOP_QUANTITY_ABSOLUTE_PRESSURE, &value, NULL) != 0 && isnan(value));
    CHECK(coldloop_read_quantity("1", COLDLOOP_QUANTITY_COST, &value, NULL) == COLDLOOP_STATUS_NOT_AVAILABLE);
}

static coldloop_estimate reading(double value, double standard_uncertainty)
{
    coldloop_estimate reading;
    reading.value = value;
    reading.standard_uncertainty = standard_uncertainty;
    return reading;
}

static void what_follows_from_readings_carries_its_uncertainty(void)
{
    double gauge_pa = 0.0, clamp_k = 0.0, plain_k = 0.0;
    const coldloop_estimate none = {NAN, NAN};
    coldloop_readings r;
    coldloop_derived d = {.size = sizeof d};
    CHECK(coldloop_gauge_uncertainty(COLDLOOP_GAUGE_CLASS_CLASS1P6, -1e5, 1e6, 241e3, &gauge_pa, NULL) == 0);
    CHECK(near(gauge_pa, 0.016 * 1.1e6 / sqrt(3.0), 1e-6)); /* EN 837-1, class 1.6 of the span */
    CHECK(coldloop_thermometer_uncertainty(COLDLOOP_THERMOMETER_CLAMP_THERMOCOUPLE, 285.15, &clamp_k, NULL) == 0);
    CHECK(near(clamp_k, 2.5 / sqrt(3.0), 1e-9)); /* IEC 60584-1, type K, class 2 */

    r.size = sizeof r;
    r.datum = COLDLOOP_DATUM_GAUGE;
    r.air_pa_abs = 101325.0;
    r.low_side = reading(241316.0, gauge_pa);
    r.high_side = r.ambient = r.vent = r.discharge_line = r.liquid_line = none;
    r.suction_line = reading(285.15, clamp_k);
    CHECK(coldloop_derive(R134A, &r, &d, NULL) == 0);
    CHECK(coldloop_superheat(R134A, 285.15, COLDLOOP_DATUM_GAUGE, 241316.0, 101325.0, &plain_k, NULL) == 0);
    CHECK(d.superheat_k.value == plain_k && near(plain_k, 7.6, 0.05));
    CHECK(d.superheat_k.standard_uncertainty > clamp_k && d.superheat_k.standard_uncertainty < 2.5);
    CHECK(isnan(d.subcooling_k.value) && isnan(d.pressure_ratio.value));
    r.datum = 7;
    CHECK(coldloop_derive(R134A, &r, &d, NULL) == COLDLOOP_STATUS_MISSING_DATUM && isnan(d.superheat_k.value));
    CHECK(coldloop_derive(R134A, NULL, &d, NULL) == COLDLOOP_STATUS_NULL_POINTER);
}

static void bands_are_in_order(void)
{
    coldloop_conditions c = {.size = sizeof c};
    coldloop_bands b = {.size = sizeof b};
    c.ambient_k = 303.15;
    c.air_pa_abs = 84e3;
    c.relative_humidity = c.engine_speed_hz = c.blower = c.vehicle_speed_m_s = c.running_s = NAN;
    c.compressor_speed_hz = c.commanded_displacement = c.fan_command = NAN;
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_FIXED_CLUTCH, &c, &b, NULL) == 0);
    CHECK(b.high_side_pa_gauge.low_95 < b.high_side_pa_gauge.low_80 && b.high_side_pa_gauge.low_80 < b.high_side_pa_gauge.median);
    CHECK(b.high_side_pa_gauge.median < b.high_side_pa_gauge.high_80 && b.high_side_pa_gauge.high_80 < b.high_side_pa_gauge.high_95);
    CHECK(b.vent_k.median > 273.15 && b.vent_k.median < 303.15 && isfinite(b.clutch_cycles_hz.median));
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_ELECTRIC, &c, &b, NULL) == 0);
    CHECK(isnan(b.clutch_cycles_hz.median));
    /* What a scan tool reports of fan and compressor. */
    coldloop_bands slow = {.size = sizeof slow};
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_VARIABLE_EXTERNAL, &c, &b, NULL) == 0);
    c.fan_command = 0.1;
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_VARIABLE_EXTERNAL, &c, &slow, NULL) == 0);
    CHECK(slow.high_side_pa_gauge.median > b.high_side_pa_gauge.median);
    c.fan_command = 1.1;
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_VARIABLE_EXTERNAL, &c, &b, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    c.fan_command = NAN;
    c.commanded_displacement = -0.1;
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_VARIABLE_EXTERNAL, &c, &b, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    c.commanded_displacement = NAN;
    c.compressor_running = 3;
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_VARIABLE_EXTERNAL, &c, &b, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    c.compressor_running = 1;
    c.compressor_speed_hz = 0.0;
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_VARIABLE_EXTERNAL, &c, &b, NULL) == COLDLOOP_STATUS_INCONSISTENT);
    c.compressor_running = 0;
    c.compressor_speed_hz = NAN;
    c.ambient_k = 200.0;
    CHECK(coldloop_expected(R134A, COLDLOOP_EXPANSION_TXV, COLDLOOP_COMPRESSOR_ELECTRIC, &c, &b, NULL) != 0);
    CHECK(isnan(b.vent_k.median));
}

static void refrigerants_have_facts_and_ids(void)
{
    uint32_t codes[64], fault = 0;
    coldloop_facts f = {.size = sizeof f};
    char text[8192];
    size_t length = 0;
    const size_t count = coldloop_refrigerants(codes, 64);
    CHECK(count > 20 && coldloop_refrigerants(NULL, 0) == count && codes[0] == R134A);
    for (size_t i = 0; i < count && i < 64; i++)
        CHECK(coldloop_refrigerant_facts(codes[i], &f, NULL) == 0 && f.critical_temperature_k > f.lowest_temperature_k);
    CHECK(coldloop_refrigerant_facts(R134A, &f, NULL) == 0);
    CHECK(f.safety_group == COLDLOOP_SAFETY_GROUP_A1 && near(f.molar_mass_kg_mol, 0.10203, 1e-5) && isnan(f.flammability_limit_kg_m3));
    CHECK(near(f.critical_temperature_k, 374.21, 0.05));
    CHECK(coldloop_refrigerant_sources(R134A, text, sizeof text, &length, NULL) == 0 && length == strlen(text));
    CHECK(strstr(text, "10.1063/1.555958") != NULL); /* the paper of the equation of state */
    CHECK(strcmp(coldloop_fault_name(COLDLOOP_FAULT_UNDERCHARGE), "undercharge") == 0);
    CHECK(coldloop_fault_from_name("gauge-error", &fault, NULL) == 0 && fault == COLDLOOP_FAULT_GAUGE_ERROR);
    CHECK(coldloop_fault_from_name("gremlins", &fault, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME && fault == 0);
    CHECK(coldloop_verdict_name(0) == NULL && coldloop_phase_name(COLDLOOP_PHASE_LIQUID) != NULL);
}

static void a_vehicle_reads_what_the_model_says(void)
{
    static char answer[65536];
    size_t length = 0;
    CHECK(coldloop_simulate(
              "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"variable-internal\"},"
              " \"conditions\": {\"ambient\": \"30 degC\", \"altitude\": \"1600 m\"}, \"faults\": {\"undercharge\": \"30 %\"}}",
              answer, sizeof answer, &length, NULL) == 0);
    CHECK(length == strlen(answer) && strncmp(answer, "{\"readings\":{\"low_side_pa_gauge\":", 32) == 0);
    CHECK(coldloop_simulate("{\"system\": {}}", answer, sizeof answer, &length, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(strstr(answer, "\"refused\"") != NULL);
}

int main(void)
{
    a_state_comes_back_from_every_pair();
    a_thin_gas_follows_its_virial_coefficients();
    arguments_that_fix_no_state_are_refused();
    a_longer_struct_of_a_later_header_is_served();
    arrays_have_the_bits_of_single_answers();
    slope_and_latent_heat_agree_with_both_sides_of_the_saturation_line();
    a_blend_boils_over_a_glide();
    a_charge_may_be_anything();
    a_pressure_at_rest_tells_the_gas();
    moist_air_is_that_of_the_textbook();
    water_boils_cold_under_vacuum();
    units_are_exact_and_text_says_its_datum();
    what_follows_from_readings_carries_its_uncertainty();
    bands_are_in_order();
    refrigerants_have_facts_and_ids();
    a_vehicle_reads_what_the_model_says();
    return checks_end();
}
