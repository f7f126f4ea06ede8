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
    if (strcmp(function, "gauge_pressure") == 0)
        return coldloop_gauge_pressure(x, y, answer, NULL);
    if (strcmp(function, "bubble_slope") == 0)
        return coldloop_bubble_slope(refrigerant, x, answer, NULL);
    if (strcmp(function, "glide") == 0)
        return coldloop_glide(refrigerant, x, answer, NULL);
    if (strcmp(function, "second_virial") == 0)
        return coldloop_virial_coefficients(refrigerant, x, answer, NULL, NULL);
    if (strcmp(function, "third_virial") == 0)
        return coldloop_virial_coefficients(refrigerant, x, NULL, answer, NULL);
    if (strcmp(function, "evaporating_mean") == 0)
        return coldloop_evaporating_mean(refrigerant, x, y, answer, NULL);
    if (strcmp(function, "evaporating_mean_ph") == 0)
        return coldloop_evaporating_mean_ph(refrigerant, COLDLOOP_REFERENCE_IIR, x, y, answer, NULL);
    if (strcmp(function, "viscosity") == 0)
        return coldloop_viscosity(refrigerant, COLDLOOP_PAIR_TP, x, y, answer, NULL);
    if (strcmp(function, "conductivity") == 0)
        return coldloop_conductivity(refrigerant, COLDLOOP_PAIR_TP, x, y, answer, NULL);
    if (strcmp(function, "saturated_viscosity") == 0)
        return coldloop_viscosity(refrigerant, COLDLOOP_PAIR_TQ, x, y, answer, NULL);
    if (strcmp(function, "saturated_conductivity") == 0)
        return coldloop_conductivity(refrigerant, COLDLOOP_PAIR_TQ, x, y, answer, NULL);
    if (strcmp(function, "surface_tension") == 0)
        return coldloop_surface_tension(refrigerant, x, answer, NULL);
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

enum { NAMED = 9 }; /* the pairs, then the states that have a function of their own and no pair */

static uint32_t place_of(const char *name)
{
    static const char *const names[NAMED] = {"tp", "td", "tq", "pq", "ph", "ps", "hs", "superheated_liquid", "subcooled_vapour"};
    uint32_t place = 0;
    while (place < NAMED && strcmp(name, names[place]) != 0)
        place++;
    return place;
}

/* A property that a state may lack: then its flag and its value are 0; after a failure the value is NaN. */
static int told(const char *field, uint32_t has, double x, uint32_t status)
{
    if (status != COLDLOOP_STATUS_OK)
        return has == 0 && isnan(x);
    return strcmp(field, "nan") == 0 ? has == 0 && x == 0.0 : has == 1 && same(field, x);
}

typedef uint32_t of_two(uint32_t, uint32_t, double, double, coldloop_state *, coldloop_error *);

/* Each row through its own function, and each pair through an array of one element too; both must give the same. */
static void states(char *line, int size)
{
    static of_two *const by_name[NAMED] = {coldloop_state_temperature_pressure, coldloop_state_temperature_density, coldloop_state_temperature_quality, coldloop_state_pressure_quality,
                                           coldloop_state_pressure_enthalpy, coldloop_state_pressure_entropy, coldloop_state_enthalpy_entropy,
                                           coldloop_superheated_liquid, coldloop_subcooled_vapour};
    char *field[17];
    FILE *file = table("tests/cases/states.csv", line, size);
    while (file != NULL && fgets(line, size, file) != NULL) {
        uint32_t refrigerant = 0, reference = 0, status;
        coldloop_state s = {.size = sizeof s}, row = {.size = sizeof row};
        CHECK(fields(line, field, 17) == 17);
        const uint32_t place = place_of(field[0]), pair = COLDLOOP_PAIR_TP + place;
        const double x = strtod(field[3], NULL), y = strtod(field[4], NULL);
        CHECK(place < NAMED && coldloop_refrigerant_from_name(field[1], &refrigerant, NULL) == COLDLOOP_STATUS_OK);
        CHECK(coldloop_reference_from_name(field[2], &reference, NULL) == COLDLOOP_STATUS_OK);
        if (place >= NAMED)
            continue;
        status = by_name[place](refrigerant, reference, x, y, &s, NULL);
        CHECK(status == strtoul(field[5], NULL, 10) && s.phase == strtoul(field[6], NULL, 10));
        CHECK(told(field[7], s.has_quality, s.quality, status));
        CHECK(same(field[8], s.temperature_k) && same(field[9], s.pressure_pa_abs));
        CHECK(same(field[10], s.density_kg_m3) && same(field[11], s.enthalpy_j_kg) && same(field[12], s.entropy_j_kg_k));
        CHECK(same(field[13], s.internal_energy_j_kg) && told(field[14], s.has_response, s.cv_j_kg_k, status));
        CHECK(told(field[15], s.has_response, s.cp_j_kg_k, status));
        CHECK(told(field[16], s.has_response, s.speed_of_sound_m_s, status));
        if (pair > COLDLOOP_PAIR_HS)
            continue;
        CHECK(coldloop_states(refrigerant, reference, pair, 1, &x, 8, &y, 8, &row, sizeof row, NULL, NULL) == status);
        CHECK(row.phase == s.phase && same(field[11], row.enthalpy_j_kg));
        CHECK(told(field[16], row.has_response, row.speed_of_sound_m_s, status));
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

/* "R-32 0.23 R-125 0.25 air 0.01" */
static coldloop_shares charge_of(char *text)
{
    coldloop_shares charge = {.count = 0};
    for (char *name = strtok(text, " "); name != NULL; name = strtok(NULL, " ")) {
        const double mass = strtod(strtok(NULL, " "), NULL);
        if (strcmp(name, "air") == 0) {
            charge.air = mass;
            continue;
        }
        CHECK(coldloop_refrigerant_from_name(name, &charge.refrigerants[charge.count], NULL) == COLDLOOP_STATUS_OK);
        charge.masses[charge.count++] = mass;
    }
    return charge;
}

enum { FIGURES = 11 };

/* The values of a call in the columns of the table: NaN where the call gives none. */
static uint32_t charge_call(const char *call, const coldloop_shares *charge, const double x[3], double figure[FIGURES])
{
    uint32_t status;
    for (int i = 0; i < FIGURES; i++)
        figure[i] = NAN;
    if (strcmp(call, "bubble_pressure") == 0)
        return coldloop_charge_bubble_pressure(charge, x[0], figure, NULL);
    if (strcmp(call, "dew_pressure") == 0)
        return coldloop_charge_dew_pressure(charge, x[0], figure, NULL);
    if (strcmp(call, "bubble_temperature") == 0)
        return coldloop_charge_bubble_temperature(charge, x[0], figure, NULL);
    if (strcmp(call, "dew_temperature") == 0)
        return coldloop_charge_dew_temperature(charge, x[0], figure, NULL);
    if (strcmp(call, "split") == 0) {
        coldloop_phase_split p = {.size = sizeof p};
        status = coldloop_charge_split(charge, x[0], x[1], &p, NULL);
        const double found[] = {p.density_kg_m3, p.quality, p.liquid_density_kg_m3, p.vapour_density_kg_m3,
                                p.liquid.masses[0], p.vapour.masses[0], p.liquid.air, p.vapour.air};
        memcpy(figure, found, sizeof found);
        return status;
    }
    coldloop_remainder r = {.size = sizeof r};
    const uint32_t leak_phase = strcmp(call, "leaked_vapour") == 0 ? COLDLOOP_LEAK_PHASE_VAPOUR : COLDLOOP_LEAK_PHASE_LIQUID;
    status = coldloop_charge_leaked(charge, x[0], x[1], leak_phase, x[2], &r, NULL);
    if (status != COLDLOOP_STATUS_OK)
        return status;
    figure[0] = r.pressure_pa_abs;
    figure[1] = r.has_liquid;
    memcpy(figure + 2, r.shares.masses, sizeof r.shares.masses);
    figure[FIGURES - 1] = r.shares.air;
    return status;
}

static void charges(char *line, int size)
{
    char *field[6 + FIGURES];
    FILE *file = table("tests/cases/charges.csv", line, size);
    while (file != NULL && fgets(line, size, file) != NULL) {
        double figure[FIGURES];
        CHECK(fields(line, field, 6 + FIGURES) == 6 + FIGURES);
        const coldloop_shares charge = charge_of(field[1]);
        const double x[] = {strtod(field[2], NULL), strtod(field[3], NULL), strtod(field[4], NULL)};
        CHECK(charge_call(field[0], &charge, x, figure) == strtoul(field[5], NULL, 10));
        for (int i = 0; i < FIGURES; i++)
            CHECK(same(field[6 + i], figure[i]));
    }
    if (file != NULL)
        fclose(file);
}

static void rest(char *line, int size)
{
    char *field[13];
    FILE *file = table("tests/cases/rest.csv", line, size);
    while (file != NULL && fgets(line, size, file) != NULL) {
        uint32_t refrigerant = 0, status;
        double x[6];
        coldloop_resting r = {.size = sizeof r};
        CHECK(fields(line, field, 13) == 13);
        CHECK(coldloop_refrigerant_from_name(field[0], &refrigerant, NULL) == COLDLOOP_STATUS_OK);
        for (int i = 1; i < 6; i++)
            x[i] = strtod(field[i], NULL);
        status = coldloop_at_rest(refrigerant, *field[3] == '\0' ? COLDLOOP_DATUM_ABSOLUTE : COLDLOOP_DATUM_GAUGE, x[1], x[2],
                                  x[3], x[4], x[5], &r, NULL);
        CHECK(status == strtoul(field[6], NULL, 10) && r.pressure_match == strtoul(field[7], NULL, 10));
        CHECK(same(field[8], r.excess_pa.value) && same(field[9], r.excess_pa.standard_uncertainty));
        CHECK(same(field[10], r.above_dew_pa.value) && same(field[11], r.above_dew_pa.standard_uncertainty));
        CHECK(same(field[12], r.gas_share));
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
    charges(line, sizeof line);
    rest(line, sizeof line);
    return checks_end();
}
