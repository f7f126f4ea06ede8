/* The promises of coldloop.h: statuses, NaN on failure, details, truncation, null pointers, versions. */

#include "check.h"
#include "coldloop.h"

#include <math.h>
#include <string.h>

static void version(void)
{
    char header[32];
    snprintf(header, sizeof header, "%d.%d.%d", COLDLOOP_VERSION_MAJOR, COLDLOOP_VERSION_MINOR, COLDLOOP_VERSION_PATCH);
    CHECK(strcmp(coldloop_version(), header) == 0);
}

static void air(void)
{
    double pa = 0.0;
    CHECK(coldloop_standard_pressure(1000.0, &pa, NULL) == COLDLOOP_STATUS_OK);
    CHECK(fabs(pa - 89874.6) < 0.1); /* ISO 2533:1975, table 5 */
    CHECK(coldloop_absolute_pressure(241316.0, pa, &pa, NULL) == COLDLOOP_STATUS_OK);
    CHECK(fabs(pa - 331190.6) < 0.1);
    CHECK(coldloop_absolute_pressure(NAN, 101325.0, &pa, NULL) == COLDLOOP_STATUS_NOT_FINITE);
    CHECK(isnan(pa));
    CHECK(coldloop_absolute_pressure(1e5, 14.7, &pa, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
}

static void a_failure_leaves_nan_and_fills_the_details(void)
{
    double pa = 1.0;
    coldloop_error error;
    error.size = sizeof error;
    CHECK(coldloop_standard_pressure(20000.0, &pa, &error) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(isnan(pa));
    CHECK(error.size == sizeof error);
    CHECK(error.status == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(error.quantity == COLDLOOP_QUANTITY_ALTITUDE);
    CHECK(error.value == 20000.0 && error.low == -500.0 && error.high == 9000.0);

    pa = 1.0;
    CHECK(coldloop_standard_pressure(NAN, &pa, &error) == COLDLOOP_STATUS_NOT_FINITE);
    CHECK(isnan(pa) && isnan(error.value));

    CHECK(coldloop_standard_pressure(0.0, &pa, &error) == COLDLOOP_STATUS_OK);
    CHECK(error.status == COLDLOOP_STATUS_OK && error.quantity == 0 && isnan(error.value));
}

static void messages_are_cut_as_snprintf_cuts(void)
{
    const char *whole = "altitude 20000 m is outside -500 m to 9000 m";
    char buffer[64];
    double pa;
    coldloop_error error;
    error.size = sizeof error;
    coldloop_standard_pressure(20000.0, &pa, &error);
    CHECK(coldloop_error_message(&error, NULL, 0) == strlen(whole));
    CHECK(coldloop_error_message(&error, buffer, sizeof buffer) == strlen(whole));
    CHECK(strcmp(buffer, whole) == 0);
    CHECK(coldloop_error_message(&error, buffer, 9) == strlen(whole));
    CHECK(strcmp(buffer, "altitude") == 0);
    CHECK(coldloop_error_message(NULL, buffer, sizeof buffer) == 0 && buffer[0] == '\0');
    error.size = 8;
    CHECK(coldloop_error_message(&error, buffer, sizeof buffer) == 0 && buffer[0] == '\0');
}

static void null_and_foreign_structs_are_refused(void)
{
    double pa = 1.0;
    coldloop_error error;
    error.size = sizeof error;
    CHECK(coldloop_standard_pressure(0.0, NULL, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(coldloop_standard_pressure(0.0, NULL, &error) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(error.status == COLDLOOP_STATUS_NULL_POINTER);
    error.size = 8;
    CHECK(coldloop_standard_pressure(0.0, &pa, &error) == COLDLOOP_STATUS_STRUCT_SIZE);
    CHECK(isnan(pa) && error.size == 8);
}

static void every_status_has_a_sentence(void)
{
    const char *none = coldloop_status_text(999);
    for (uint32_t status = COLDLOOP_STATUS_OK; status <= COLDLOOP_STATUS_NOT_AVAILABLE; status++)
        CHECK(strcmp(coldloop_status_text(status), none) != 0);
    for (uint32_t status = COLDLOOP_STATUS_NULL_POINTER; status <= COLDLOOP_STATUS_INTERNAL; status++)
        CHECK(strcmp(coldloop_status_text(status), none) != 0);
    CHECK(strcmp(coldloop_quantity_name(COLDLOOP_QUANTITY_VOLTAGE), "voltage") == 0);
    CHECK(coldloop_quantity_name(999) == NULL);
}

static void refrigerants_are_numbers_with_names(void)
{
    uint32_t refrigerant = 99;
    CHECK(strcmp(coldloop_refrigerant_name(COLDLOOP_REFRIGERANT_R134A), "R-134a") == 0);
    CHECK(coldloop_refrigerant_name(0) == NULL);
    CHECK(coldloop_refrigerant_from_name("r1234yf", &refrigerant, NULL) == COLDLOOP_STATUS_OK);
    CHECK(refrigerant == COLDLOOP_REFRIGERANT_R1234YF);
    CHECK(coldloop_refrigerant_from_name("R-9999", &refrigerant, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(refrigerant == 0);
    CHECK(coldloop_refrigerant_from_name("\xff", &refrigerant, NULL) == COLDLOOP_STATUS_NOT_UTF8);
    CHECK(coldloop_refrigerant_from_name(NULL, &refrigerant, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(coldloop_refrigerant_from_name("R-134a", NULL, NULL) == COLDLOOP_STATUS_NULL_POINTER);
}

static void dew_pressures_keep_their_stride(void)
{
    struct station {
        double temperature_k, pressure_pa_abs;
    } stations[3] = {{273.15, 0.0}, {1000.0, 0.0}, {300.0, 0.0}};
    const ptrdiff_t stride = sizeof stations[0];
    size_t failed = 99;
    double one = 0.0;
    coldloop_error error;
    error.size = sizeof error;

    CHECK(coldloop_dew_pressures(COLDLOOP_REFRIGERANT_R134A, 3, &stations[0].temperature_k, stride,
                                 &stations[0].pressure_pa_abs, stride, &failed, &error) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(failed == 1 && error.value == 1000.0 && isnan(stations[1].pressure_pa_abs));
    CHECK(coldloop_dew_pressure(COLDLOOP_REFRIGERANT_R134A, 300.0, &one, NULL) == COLDLOOP_STATUS_OK);
    CHECK(stations[2].pressure_pa_abs == one);
    CHECK(stations[0].temperature_k == 273.15 && stations[2].temperature_k == 300.0);

    CHECK(coldloop_dew_pressures(COLDLOOP_REFRIGERANT_R134A, 0, NULL, 8, NULL, 8, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_dew_pressures(COLDLOOP_REFRIGERANT_R134A, 1, NULL, 8, &one, 8, NULL, NULL)
          == COLDLOOP_STATUS_NULL_POINTER);
    /* The pointer names the first row, and a negative stride goes backwards from there. */
    CHECK(coldloop_dew_pressures(COLDLOOP_REFRIGERANT_R134A, 2, &stations[2].temperature_k, -2 * stride,
                                 &stations[0].pressure_pa_abs, 2 * stride, &failed, NULL) == COLDLOOP_STATUS_OK);
    CHECK(stations[0].pressure_pa_abs == one && failed == 0);
    stations[2].pressure_pa_abs = one;
    one = 300.0; /* in place */
    CHECK(coldloop_dew_pressures(COLDLOOP_REFRIGERANT_R134A, 1, &one, 8, &one, 8, &failed, NULL) == COLDLOOP_STATUS_OK);
    CHECK(one == stations[2].pressure_pa_abs && failed == 0);

    CHECK(coldloop_dew_pressure(0, 300.0, &one, &error) == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(isnan(one) && error.quantity == COLDLOOP_QUANTITY_NAME);
}

static void a_pressure_counts_from_its_datum(void)
{
    double air = 0.0, absolute = 0.0, by_gauge = 0.0, by_vacuum = 0.0;
    coldloop_error error;
    error.size = sizeof error;
    coldloop_standard_pressure(1600.0, &air, NULL);
    coldloop_absolute_pressure(241316.0, air, &absolute, NULL);
    CHECK(coldloop_superheat(COLDLOOP_REFRIGERANT_R134A, 285.15, COLDLOOP_DATUM_GAUGE, 241316.0, air, &by_gauge, NULL)
          == COLDLOOP_STATUS_OK);
    CHECK(coldloop_superheat(COLDLOOP_REFRIGERANT_R134A, 285.15, COLDLOOP_DATUM_ABSOLUTE, absolute, 0.0, &by_vacuum, NULL)
          == COLDLOOP_STATUS_OK);
    CHECK(by_gauge == by_vacuum && fabs(by_gauge - 9.1) < 0.1);
    CHECK(coldloop_subcooling(COLDLOOP_REFRIGERANT_R134A, 313.15, 3, 1.3e6, air, &by_gauge, &error)
          == COLDLOOP_STATUS_MISSING_DATUM);
    CHECK(isnan(by_gauge));
    CHECK(coldloop_subcooling(COLDLOOP_REFRIGERANT_R134A, 313.15, COLDLOOP_DATUM_GAUGE, 1.3e6, 14.7, &by_gauge, &error)
          == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(error.value == 14.7);
}

/* A function reads all its arguments before it writes, so that output and input may be the same object. */
static void an_output_may_overwrite_its_input(void)
{
    coldloop_shares mixed = {.count = 2}, alone;
    coldloop_remainder left = {.size = sizeof left}, again;
    coldloop_phase_split parted = {.size = sizeof parted}, parted_again;
    mixed.refrigerants[0] = COLDLOOP_REFRIGERANT_R134A, mixed.masses[0] = 0.9;
    mixed.refrigerants[1] = COLDLOOP_REFRIGERANT_R22, mixed.masses[1] = 0.1;

    CHECK(coldloop_charge_shares(&mixed, &alone, NULL) == COLDLOOP_STATUS_OK && alone.count == 2);
    left.shares = mixed, again = left;
    CHECK(coldloop_charge_leaked(&mixed, 293.15, 250.0, COLDLOOP_LEAK_PHASE_VAPOUR, 0.2, &left, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_charge_leaked(&again.shares, 293.15, 250.0, COLDLOOP_LEAK_PHASE_VAPOUR, 0.2, &again, NULL) == COLDLOOP_STATUS_OK);
    CHECK(left.pressure_pa_abs == again.pressure_pa_abs && left.shares.count == again.shares.count);
    CHECK(memcmp(left.shares.masses, again.shares.masses, sizeof left.shares.masses) == 0);

    parted.liquid = mixed, parted_again = parted;
    CHECK(coldloop_charge_split(&mixed, 293.15, 500e3, &parted, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_charge_split(&parted_again.liquid, 293.15, 500e3, &parted_again, NULL) == COLDLOOP_STATUS_OK);
    CHECK(parted.density_kg_m3 == parted_again.density_kg_m3 && parted.density_kg_m3 > 0.0);

    CHECK(coldloop_charge_shares(&mixed, &mixed, NULL) == COLDLOOP_STATUS_OK);
    CHECK(memcmp(mixed.masses, alone.masses, sizeof alone.masses) == 0 && mixed.air == alone.air);
}

int main(void)
{
    an_output_may_overwrite_its_input();
    a_pressure_counts_from_its_datum();
    dew_pressures_keep_their_stride();
    version();
    refrigerants_are_numbers_with_names();
    air();
    a_failure_leaves_nan_and_fills_the_details();
    messages_are_cut_as_snprintf_cuts();
    null_and_foreign_structs_are_refused();
    every_status_has_a_sentence();
    return checks_end();
}
