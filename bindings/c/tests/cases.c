/* Every row of tests/cases through the C door; the Rust and Python doors run the same files. */

#include "check.h"
#include "coldloop.h"

#include <inttypes.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

/* Cuts the line at its commas; an empty field stays an empty field. */
static int fields(char *line, char *field[], int count)
{
    int n = 0;
    line[strcspn(line, "\r\n")] = '\0';
    while (line != NULL && n < count) {
        char *comma = strchr(line, ',');
        field[n++] = line;
        if (comma != NULL)
            *comma++ = '\0';
        line = comma;
    }
    return n;
}

static uint32_t call(const char *function, uint32_t refrigerant, double x, double y, double *answer)
{
    if (strcmp(function, "standard_pressure") == 0)
        return coldloop_standard_pressure(x, answer, NULL);
    if (strcmp(function, "standard_temperature") == 0)
        return coldloop_standard_temperature(x, answer, NULL);
    if (strcmp(function, "standard_density") == 0)
        return coldloop_standard_density(x, answer, NULL);
    if (strcmp(function, "standard_altitude") == 0)
        return coldloop_standard_altitude(x, answer, NULL);
    if (strcmp(function, "water_boiling_point") == 0)
        return coldloop_water_boiling_point(x, answer, NULL);
    if (strcmp(function, "water_saturation_pressure") == 0)
        return coldloop_water_saturation_pressure(x, answer, NULL);
    if (strcmp(function, "enhancement_factor") == 0)
        return coldloop_enhancement_factor(x, y, answer, NULL);
    if (strcmp(function, "saturation_slope") == 0)
        return coldloop_saturation_slope(refrigerant, x, answer, NULL);
    if (strcmp(function, "latent_heat") == 0)
        return coldloop_latent_heat(refrigerant, x, answer, NULL);
    if (strcmp(function, "absolute_pressure") == 0)
        return coldloop_absolute_pressure(x, y, answer, NULL);
    if (strcmp(function, "bubble_pressure") == 0)
        return coldloop_bubble_pressure(refrigerant, x, answer, NULL);
    if (strcmp(function, "dew_pressure") == 0)
        return coldloop_dew_pressure(refrigerant, x, answer, NULL);
    if (strcmp(function, "bubble_temperature") == 0)
        return coldloop_bubble_temperature(refrigerant, x, answer, NULL);
    if (strcmp(function, "dew_temperature") == 0)
        return coldloop_dew_temperature(refrigerant, x, answer, NULL);
    if (strcmp(function, "superheat") == 0)
        return coldloop_superheat(refrigerant, x, COLDLOOP_DATUM_ABSOLUTE, y, 0.0, answer, NULL);
    if (strcmp(function, "subcooling") == 0)
        return coldloop_subcooling(refrigerant, x, COLDLOOP_DATUM_ABSOLUTE, y, 0.0, answer, NULL);
    printf("%s is not a case\n", function);
    return UINT32_MAX;
}

/* Whether the field holds the bits of the number; a NaN has many and is written as such, or as nothing. */
static int same(const char *field, double x)
{
    uint64_t bits;
    memcpy(&bits, &x, sizeof bits);
    if (*field == '\0' || strcmp(field, "nan") == 0)
        return isnan(x);
    return bits == strtoull(field, NULL, 16);
}

static FILE *table(const char *path, char *line, int size)
{
    FILE *file = fopen(path, "r");
    CHECK(file != NULL && fgets(line, size, file) != NULL);
    return file;
}

static void functions(char *line, int size)
{
    char *field[6];
    FILE *file = table("tests/cases/functions.csv", line, size);
    while (file != NULL && fgets(line, size, file) != NULL) {
        uint32_t refrigerant = 0, status;
        double answer = 0.0;
        CHECK(fields(line, field, 6) == 6);
        if (*field[1] != '\0')
            CHECK(coldloop_refrigerant_from_name(field[1], &refrigerant, NULL) == COLDLOOP_STATUS_OK);
        status = call(field[0], refrigerant, strtod(field[2], NULL), strtod(field[3], NULL), &answer);
        CHECK(status == strtoul(field[4], NULL, 10));
        CHECK(same(field[5], answer));
    }
    if (file != NULL)
        fclose(file);
}

static uint32_t pair_of(const char *name)
{
    static const char *const names[] = {"tp", "td", "tq", "pq", "ph", "ps", "hs"};
    for (uint32_t pair = COLDLOOP_PAIR_TP; pair <= COLDLOOP_PAIR_HS; pair++)
        if (strcmp(name, names[pair - COLDLOOP_PAIR_TP]) == 0)
            return pair;
    return 0;
}

typedef uint32_t of_two(uint32_t, uint32_t, double, double, coldloop_state *, coldloop_error *);

/* Each row by its own function and as an array of one; both have to give the same. */
static void states(char *line, int size)
{
    static of_two *const by_pair[] = {coldloop_state_tp, coldloop_state_td, coldloop_state_tq, coldloop_state_pq,
                                      coldloop_state_ph, coldloop_state_ps, coldloop_state_hs};
    char *field[17];
    FILE *file = table("tests/cases/states.csv", line, size);
    while (file != NULL && fgets(line, size, file) != NULL) {
        uint32_t refrigerant = 0, reference = 0, status;
        coldloop_state s = {.size = sizeof s}, row = {.size = sizeof row};
        CHECK(fields(line, field, 17) == 17);
        const uint32_t pair = pair_of(field[0]);
        const double x = strtod(field[3], NULL), y = strtod(field[4], NULL);
        CHECK(pair != 0 && coldloop_refrigerant_from_name(field[1], &refrigerant, NULL) == COLDLOOP_STATUS_OK);
        CHECK(coldloop_reference_from_name(field[2], &reference, NULL) == COLDLOOP_STATUS_OK);
        status = by_pair[pair - COLDLOOP_PAIR_TP](refrigerant, reference, x, y, &s, NULL);
        CHECK(status == strtoul(field[5], NULL, 10) && s.phase == strtoul(field[6], NULL, 10));
        CHECK(same(field[7], s.quality) && same(field[8], s.temperature_k) && same(field[9], s.pressure_pa_abs));
        CHECK(same(field[10], s.density_kg_m3) && same(field[11], s.enthalpy_j_kg) && same(field[12], s.entropy_j_kg_k));
        CHECK(same(field[13], s.internal_energy_j_kg) && same(field[14], s.cv_j_kg_k) && same(field[15], s.cp_j_kg_k));
        CHECK(same(field[16], s.speed_of_sound_m_s));
        CHECK(coldloop_states(refrigerant, reference, pair, 1, &x, 8, &y, 8, &row, sizeof row, NULL, NULL) == status);
        CHECK(row.phase == s.phase && same(field[11], row.enthalpy_j_kg) && same(field[16], row.speed_of_sound_m_s));
    }
    if (file != NULL)
        fclose(file);
}

static void moist_air(char *line, int size)
{
    char *field[13];
    FILE *file = table("tests/cases/moist_air.csv", line, size);
    while (file != NULL && fgets(line, size, file) != NULL) {
        coldloop_moist_air a = {.size = sizeof a};
        uint32_t status = UINT32_MAX;
        CHECK(fields(line, field, 13) == 13);
        const double kelvin = strtod(field[1], NULL), pascal = strtod(field[2], NULL), x = strtod(field[3], NULL);
        if (strcmp(field[0], "relative_humidity") == 0)
            status = coldloop_air_of_relative_humidity(kelvin, pascal, x, &a, NULL);
        if (strcmp(field[0], "humidity_ratio") == 0)
            status = coldloop_air_of_humidity_ratio(kelvin, pascal, x, &a, NULL);
        if (strcmp(field[0], "dew_point_k") == 0)
            status = coldloop_air_of_dew_point(kelvin, pascal, x, &a, NULL);
        if (strcmp(field[0], "wet_bulb_k") == 0)
            status = coldloop_air_of_wet_bulb(kelvin, pascal, x, &a, NULL);
        CHECK(status == strtoul(field[4], NULL, 10));
        CHECK(same(field[5], a.humidity_ratio) && same(field[6], a.relative_humidity) && same(field[7], a.dew_point_k));
        CHECK(same(field[8], a.wet_bulb_k) && same(field[9], a.vapour_pressure_pa) && same(field[10], a.enthalpy_j_kg));
        CHECK(same(field[11], a.volume_m3_kg) && same(field[12], a.density_kg_m3));
    }
    if (file != NULL)
        fclose(file);
}

int main(void)
{
    static char line[1024];
    functions(line, sizeof line);
    CHECK(checks_passed > 40000);
    states(line, sizeof line);
    moist_air(line, sizeof line);
    return checks_end();
}
