/* Any bits at every entry point: structs filled in, and structs that come back. */

#ifndef DRAWN_STRUCTS_H
#define DRAWN_STRUCTS_H

#include "drawn.h"

static int of_state(uint32_t status, const coldloop_state *s, int null)
{
    const int wrong_size = s->size < sizeof *s;
    const int answered = s->phase >= 1 && s->phase <= 4 && isfinite(s->temperature_k) && isfinite(s->pressure_pa_abs)
        && isfinite(s->density_kg_m3) && isfinite(s->enthalpy_j_kg) && isfinite(s->entropy_j_kg_k)
        && (s->phase == COLDLOOP_PHASE_TWO_PHASE) == (s->has_quality == 1) && s->quality >= 0.0 && s->quality <= 1.0
        && (s->has_quality == 1 || s->has_response == 1) && !isnan(s->cp_j_kg_k) && !isnan(s->speed_of_sound_m_s)
        && (s->has_response == 1 || (s->cp_j_kg_k == 0.0 && s->cv_j_kg_k == 0.0));
    return told(status, null, wrong_size, answered, s->phase == 0 && isnan(s->enthalpy_j_kg) && isnan(s->cp_j_kg_k));
}

typedef uint32_t one_state(uint32_t, uint32_t, double, double, coldloop_state *, coldloop_error *);

static int single_state(one_state *call, double first, double second)
{
    coldloop_state s;
    const int null = one_in(16);
    memset(&s, 0x5a, sizeof s);
    s.size = struct_size(sizeof s);
    return of_state(call(code(REFRIGERANTS), code(REFERENCES), first, second, null ? NULL : &s, details), &s, null);
}

typedef uint32_t one_air(double, double, double, coldloop_moist_air *, coldloop_error *);

static int moist_air(one_air *call, double first, double second, double third)
{
    coldloop_moist_air air;
    const int null = one_in(16);
    memset(&air, 0x5a, sizeof air);
    air.size = struct_size(sizeof air);
    const uint32_t status = call(first, second, third, null ? NULL : &air, details);
    return told(status, null, air.size < sizeof air, isfinite(air.enthalpy_j_kg) && isfinite(air.wet_bulb_k),
                isnan(air.enthalpy_j_kg) && isnan(air.wet_bulb_k));
}

enum { ROWS = 9 };
static double in[2][4 * ROWS], result[4 * ROWS];

typedef uint32_t column(uint32_t, size_t, const double *, ptrdiff_t, double *, ptrdiff_t, size_t *, coldloop_error *);

static int columns(column *call, int of_pressure)
{
    const size_t count = bits() % (ROWS + 1), to = sizeof(double) * (1 + bits() % 4);
    const ptrdiff_t from = stride();
    const double *first = from < 0 ? in[0] + 4 * ROWS - 4 : in[0];
    const int null = one_in(16);
    size_t failed = 77, seen = 0;
    for (int i = 0; i < 4 * ROWS; i++)
        in[0][i] = of_pressure ? pascal() : kelvin();
    const uint32_t status = call(code(REFRIGERANTS), count, null ? NULL : first, from, result, (ptrdiff_t)to, &failed, details);
    if (details_too_small())
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    if (null && count > 0)
        return status == COLDLOOP_STATUS_NULL_POINTER && failed == 0;
    for (size_t i = 0; i < count; i++)
        seen += isnan(*(const double *)((const char *)result + i * to)) != 0;
    return seen == failed && (failed == 0) == (status == COLDLOOP_STATUS_OK) && status != COLDLOOP_STATUS_INTERNAL;
}

typedef uint32_t two_columns(uint32_t, uint32_t, double, size_t, const double *, ptrdiff_t, const double *, ptrdiff_t,
                             double *, ptrdiff_t, size_t *, coldloop_error *);

static int differences(two_columns *call)
{
    const size_t count = bits() % (ROWS + 1);
    size_t failed = 77, seen = 0;
    for (int i = 0; i < ROWS; i++) {
        in[0][i] = kelvin();
        in[1][i] = pascal();
    }
    const uint32_t status = call(code(REFRIGERANTS), code(2), any(6e4, 1.1e5), count, in[0], 8, in[1], one_in(2) ? 0 : 8, result, 8,
                                 &failed, details);
    if (details_too_small())
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    for (size_t i = 0; i < count; i++)
        seen += isnan(result[i]) != 0;
    return seen == failed && (failed == 0) == (status == COLDLOOP_STATUS_OK) && status != COLDLOOP_STATUS_INTERNAL;
}

/* The second of two figures that fix a state. */
static double property(void)
{
    return one_in(2) ? (double)(bits() % 2) : one_in(2) ? pascal() : any(0.0, 2e3);
}

typedef uint32_t property_column(uint32_t, uint32_t, size_t, const double *, ptrdiff_t, const double *, ptrdiff_t, double *, ptrdiff_t,
                                 size_t *, coldloop_error *);

static int properties(property_column *call)
{
    const size_t count = bits() % (ROWS + 1);
    size_t failed = 77, seen = 0;
    for (int i = 0; i < ROWS; i++) {
        in[0][i] = one_in(2) ? kelvin() : pascal();
        in[1][i] = property();
    }
    const uint32_t status = call(code(REFRIGERANTS), code(5), count, in[0], 8, in[1], one_in(2) ? 0 : 8, result, 8, &failed, details);
    if (details_too_small())
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    for (size_t i = 0; i < count; i++)
        seen += isnan(result[i]) != 0;
    return seen == failed && (failed == 0) == (status == COLDLOOP_STATUS_OK) && status != COLDLOOP_STATUS_INTERNAL;
}

static int states(void)
{
    coldloop_state all[ROWS];
    const size_t count = bits() % (ROWS + 1);
    const int small = one_in(16);
    size_t failed = 77, seen = 0;
    memset(all, 0x5a, sizeof all);
    all[0].size = small ? 8 : sizeof all[0];
    for (int i = 0; i < ROWS; i++) {
        in[0][i] = one_in(2) ? kelvin() : pascal();
        in[1][i] = one_in(2) ? part() : one_in(2) ? pascal() : per_kg();
    }
    const uint32_t status = coldloop_states(code(REFRIGERANTS), code(REFERENCES), code(7), count, in[0], 8, in[1], 8, all, sizeof all[0], &failed,
                                            details);
    if (details_too_small() || (small && count > 0))
        return status == COLDLOOP_STATUS_STRUCT_SIZE && failed == 0;
    for (size_t i = 0; i < count; i++) {
        seen += all[i].phase == 0;
        if (all[i].size != sizeof all[0])
            return 0;
    }
    return seen == failed && (failed == 0) == (status == COLDLOOP_STATUS_OK) && status != COLDLOOP_STATUS_INTERNAL;
}

static coldloop_estimate reading(double value)
{
    coldloop_estimate e;
    e.value = one_in(3) ? NAN : value;
    e.standard_uncertainty = any(0.0, 1.0);
    return e;
}

static int derive(void)
{
    coldloop_readings r;
    coldloop_derived d;
    const int null = one_in(16);
    const int given = !one_in(16);
    memset(&d, 0x5a, sizeof d);
    r.size = struct_size(sizeof r);
    d.size = struct_size(sizeof d);
    r.datum = code(2);
    r.air_pa_abs = any(6e4, 1.1e5);
    r.low_side = reading(pascal());
    r.high_side = reading(pascal());
    r.ambient = reading(kelvin());
    r.vent = reading(kelvin());
    r.suction_line = reading(kelvin());
    r.discharge_line = reading(kelvin());
    r.liquid_line = reading(kelvin());
    const uint32_t status = coldloop_derive(code(REFRIGERANTS), given ? &r : NULL, null ? NULL : &d, details);
    if (details_too_small() || null || d.size < sizeof d)
        return told(status, null, d.size < sizeof d, 1, isnan(d.superheat_k.value));
    if (!given)
        return status == COLDLOOP_STATUS_NULL_POINTER;
    if (r.size < sizeof r)
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    return told(status, 0, 0, 1, isnan(d.superheat_k.value) && isnan(d.low_side_pa_abs.value));
}

static int expected(void)
{
    coldloop_conditions c;
    coldloop_bands b;
    const int null = one_in(16);
    memset(&b, 0x5a, sizeof b);
    c.size = sizeof c;
    b.size = struct_size(sizeof b);
    c.air_source = code(2);
    c.ambient_k = any(280.0, 320.0);
    c.air_pa_abs = any(6e4, 1.1e5);
    c.relative_humidity = one_in(2) ? NAN : part();
    c.engine_speed_hz = one_in(2) ? NAN : any(0.0, 60.0);
    c.blower = one_in(2) ? NAN : part();
    c.vehicle_speed_m_s = one_in(2) ? NAN : any(0.0, 40.0);
    c.running_s = one_in(2) ? NAN : any(0.0, 1e4);
    c.compressor_running = one_in(2) ? 0 : code(2);
    c.compressor_speed_hz = one_in(2) ? NAN : any(0.0, 60.0);
    c.commanded_displacement = one_in(2) ? NAN : part();
    c.fan_command = one_in(2) ? NAN : part();
    const uint32_t status = coldloop_expected(code(2), code(2), code(4), &c, null ? NULL : &b, details);
    return told(status, null, b.size < sizeof b, isfinite(b.low_side_pa_gauge.median) && isfinite(b.vent_k.high_95),
                isnan(b.low_side_pa_gauge.median));
}

static int saturated(void)
{
    coldloop_saturation s;
    const int null = one_in(16);
    memset(&s, 0x5a, sizeof s);
    s.size = struct_size(sizeof s);
    const uint32_t status = coldloop_saturated(code(REFRIGERANTS), code(REFERENCES), kelvin(), null ? NULL : &s, details);
    return told(status, null, s.size < sizeof s, isfinite(s.vapour_entropy_j_kg_k), isnan(s.liquid_density_kg_m3));
}

static int virials(void)
{
    double second = 1.0, third = 1.0;
    const uint32_t status = coldloop_virial_coefficients(code(REFRIGERANTS), kelvin(), &second, one_in(4) ? NULL : &third, details);
    return told(status, 0, 0, isfinite(second) && isfinite(third), isnan(second));
}

static int facts(void)
{
    coldloop_facts f;
    const int null = one_in(16);
    memset(&f, 0x5a, sizeof f);
    f.size = struct_size(sizeof f);
    const uint32_t status = coldloop_refrigerant_facts(code(REFRIGERANTS), null ? NULL : &f, details);
    return told(status, null, f.size < sizeof f, f.critical_temperature_k > 250.0, isnan(f.critical_temperature_k));
}

/* A composition with any count, codes and masses; a part of them is right more often than not. */
static coldloop_shares shares(void)
{
    coldloop_shares s;
    s.count = one_in(16) ? (uint32_t)bits() : (uint32_t)(bits() >> 9) % (COLDLOOP_MOST_COMPONENTS + 2);
    for (int i = 0; i < COLDLOOP_MOST_COMPONENTS; i++) {
        s.refrigerants[i] = one_in(4) ? code(REFRIGERANTS) : (uint32_t)(bits() >> 7) % REFRIGERANTS + 1;
        s.masses[i] = one_in(4) ? any(0.0, 1.0) : (double)(bits() >> 11) / 9007199254740992.0;
    }
    s.air = one_in(2) ? 0.0 : any(0.0, 0.1);
    return s;
}

/* Shares of sum one, none of them below zero. */
static int is_whole(const coldloop_shares *s)
{
    double sum = s->air;
    if (s->count < 1 || s->count > COLDLOOP_MOST_COMPONENTS || !(s->air >= 0.0))
        return 0;
    for (uint32_t i = 0; i < s->count; i++) {
        if (!(s->masses[i] >= 0.0) || coldloop_refrigerant_name(s->refrigerants[i]) == NULL)
            return 0;
        sum += s->masses[i];
    }
    return fabs(sum - 1.0) < 1e-9;
}

typedef uint32_t charge_point(const coldloop_shares *, double, double *, coldloop_error *);

static int point_of_charge(charge_point *call, double x)
{
    const coldloop_shares charge = shares();
    const int given = !one_in(16);
    const uint32_t status = call(given ? &charge : NULL, x, any_out(), details);
    if (!given && out != NULL && !details_too_small())
        return status == COLDLOOP_STATUS_NULL_POINTER && isnan(answer);
    return number(status);
}

static int shares_of_charge(void)
{
    const coldloop_shares charge = shares();
    coldloop_shares found;
    const int null = one_in(16);
    memset(&found, 0x5a, sizeof found);
    const uint32_t status = coldloop_charge_shares(&charge, null ? NULL : &found, details);
    return told(status, null, 0, is_whole(&found), found.count == 0 && isnan(found.air));
}

static int split(void)
{
    const coldloop_shares charge = shares();
    coldloop_phase_split p;
    const int null = one_in(16);
    memset(&p, 0x5a, sizeof p);
    p.size = struct_size(sizeof p);
    const uint32_t status = coldloop_charge_split(&charge, kelvin(), pascal(), null ? NULL : &p, details);
    const int two = is_whole(&p.liquid) && is_whole(&p.vapour) && p.quality > -1e-6 && p.quality < 1.0 + 1e-6;
    const int one = p.liquid.count == 0 && p.vapour.count == 0 && isnan(p.liquid_density_kg_m3);
    return told(status, null, p.size < sizeof p, isfinite(p.density_kg_m3) && (isnan(p.quality) ? one : two),
                isnan(p.density_kg_m3) && isnan(p.quality) && one);
}

static int leaked(void)
{
    const coldloop_shares charge = shares();
    coldloop_remainder r;
    const int null = one_in(16);
    memset(&r, 0x5a, sizeof r);
    r.size = struct_size(sizeof r);
    const uint32_t status = coldloop_charge_leaked(&charge, kelvin(), any(0.0, 1e3), code(2), part(), null ? NULL : &r, details);
    return told(status, null, r.size < sizeof r, isfinite(r.pressure_pa_abs) && r.has_liquid <= 1 && is_whole(&r.shares),
                isnan(r.pressure_pa_abs) && r.shares.count == 0);
}

static int at_rest(void)
{
    coldloop_resting r;
    const int null = one_in(16);
    memset(&r, 0x5a, sizeof r);
    r.size = struct_size(sizeof r);
    const uint32_t status = coldloop_at_rest(code(REFRIGERANTS), code(2), pascal(), any(0.0, 1e4), any(6e4, 1.1e5), kelvin(),
                                             any(0.0, 2.0), null ? NULL : &r, details);
    return told(status, null, r.size < sizeof r, r.pressure_match >= 1 && r.pressure_match <= 3 && isfinite(r.gas_share),
                r.pressure_match == 0 && isnan(r.excess_pa.value));
}

#endif
