/* Any bits at every entry point: an answer that is finite, or a status and NaN; never a trap, never a hang, never a
 * caught panic. Each round calls one function, drawn at random; "any_bits 10000000" runs the long form. */

#include "check.h"
#include "coldloop.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

static uint64_t state = 88172645463325252u; /* Marsaglia 2003, doi:10.18637/jss.v008.i14, xorshift64 */

static uint64_t bits(void)
{
    state ^= state << 13;
    state ^= state >> 7;
    state ^= state << 17;
    return state;
}

static int one_in(unsigned n)
{
    return (bits() >> 20) % n == 0;
}

/* Any double at all, one of any size within reach of a physical quantity, or one of a quantity's usual size. */
static double any(double low, double high)
{
    double x;
    const uint64_t b = bits();
    switch (bits() >> 13 & 3) {
    case 0: memcpy(&x, &b, sizeof x); return x;
    case 1: return ldexp((double)(b >> 11), (int)(bits() % 40) - 60);
    default: return low + (high - low) * (double)(b >> 11) / 9007199254740992.0;
    }
}

static double kelvin(void) { return any(150.0, 480.0); }
static double pascal(void) { return one_in(2) ? any(1e3, 1e6) : any(1e5, 1e7); }
static double part(void) { return any(0.0, 1.0); }
static double per_kg(void) { return any(0.0, 6e5); }

static uint32_t code(uint32_t known)
{
    return one_in(8) ? (uint32_t)bits() : (uint32_t)(bits() >> 7) % (known + 2);
}

static size_t stride(void)
{
    return one_in(2) ? sizeof(double) : (size_t)(bits() % 25);
}

static coldloop_error error;
static coldloop_error *details; /* where a call writes its failure: NULL, too small, or right */

static void draw_details(void)
{
    memset(&error, 0x5a, sizeof error);
    error.size = one_in(16) ? bits() % sizeof error : sizeof error + bits() % 2 * 8;
    details = one_in(4) ? NULL : &error;
}

static int details_too_small(void)
{
    return details != NULL && details->size < sizeof error;
}

/* Whether the status is one that may come back, and agrees with the details and with there being an answer. */
static int told(uint32_t status, int null, int size_wrong, int answered, int blank)
{
    if (details_too_small())
        return status == COLDLOOP_STATUS_STRUCT_SIZE && (null || blank || size_wrong);
    if (details != NULL && details->status != status)
        return 0;
    if (null)
        return status == COLDLOOP_STATUS_NULL_POINTER;
    if (size_wrong)
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    if (status == COLDLOOP_STATUS_OK)
        return answered;
    return blank && status != COLDLOOP_STATUS_INTERNAL && status != COLDLOOP_STATUS_STRUCT_SIZE
        && status != COLDLOOP_STATUS_NULL_POINTER;
}

static double answer;
static double *out;

static double *any_out(void)
{
    answer = 1.0;
    out = one_in(16) ? NULL : &answer;
    return out;
}

static int number(uint32_t status)
{
    return told(status, out == NULL, 0, isfinite(answer), isnan(answer));
}

/* Plain arithmetic has no status; it must only return. */
static int returns(double x)
{
    return x == x || isnan(x);
}

static size_t struct_size(size_t whole)
{
    return one_in(16) ? bits() % whole : whole;
}

/* Text: random bytes, a quantity, or a readings file with bytes overwritten, doubled or dropped. */
static const char *const quantities[] = {"35 psig", "2.4 bar gauge", "101.3 kPa abs", "18 inHg vacuum", "74 \xc2\xb0""F",
    "5250 ft", "40 %", "1500 rpm", "650 g", "10 min", "3 /min", "2.5 V", "1,5 bar gauge", "35", "", "nan K", "1e400 K"};
static const char readings[] =
    "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"74 \xc2\xb0""F\", \"altitude\": \"1600 m\", \"humidity\": \"30 %\"},"
    " \"readings\": {\"low_side\": \"37 psig\", \"high_side\": {\"value\": \"172 psig\", \"gauge\": \"digital\"},"
    " \"vent\": \"40 \xc2\xb0""F\", \"suction_line\": \"56 \xc2\xb0""F\"}, \"observations\": {\"clutch_engaged\": true}}";
static const char trial[] =
    "{\"vehicle\": {\"class\": \"van\"},"
    " \"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"orifice-tube\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"30 \xc2\xb0""C\", \"altitude\": \"0 m\"}, \"faults\": {\"undercharge\": \"40 %\"}}";
/* A visit as TOML: what was done to a vehicle, and how to judge it. */
static const char visit[] =
    "[system]\nrefrigerant = \"R-134a\"\nexpansion = \"txv\"\ncompressor = \"fixed-clutch\"\nnominal_charge = \"850 g\"\n"
    "[conditions]\nambient = \"29 \xc2\xb0""C\"\naltitude = \"1600 m\"\n"
    "[settings]\nnamed = 0.7\npriors = { undercharge = 0.3 }\ncounts.cases = { undercharge = 14 }\n"
    "[readings]\nlow_side = { value = \"105 kPa gauge\", within = \"10 kPa\" }\nhigh_side = \"1010 kPa gauge\"\n"
    "[pressure_test]\ngas = \"nitrogen\"\nstart = \"10 bar gauge\"\nstart_temperature = \"26 \xc2\xb0""C\"\n"
    "end = \"9.8 bar gauge\"\nend_temperature = \"22 \xc2\xb0""C\"\nheld = \"60 min\"\nvolume = \"2.4 L\"\nallowed = \"5 g/year\"\n"
    "[evacuation]\nreached = \"420 micron\"\n"
    "[hold]\nsamples = [{ after = \"0 min\", pressure = \"420 micron\" }, { after = \"20 min\", pressure = \"450 micron\" }]\n"
    "[charge]\nrecovered = \"430 g\"\ncharged = \"900 g\"\nhose = { volume = \"40 cm3\", temperature = \"24 \xc2\xb0""C\" }\n"
    "[pull_down]\nsamples = [{ after = \"1 min\", vent = \"24 \xc2\xb0""C\" }, { after = \"8 min\", vent = \"8 \xc2\xb0""C\" }]\n"
    "[after.conditions]\nambient = \"26 \xc2\xb0""C\"\naltitude = \"1600 m\"\n"
    "[after.readings]\nlow_side = \"225 kPa gauge\"\nhigh_side = \"1290 kPa gauge\"\nvent = \"5.5 \xc2\xb0""C\"\n";
static const char counts[] =
    "[weight]\ncases = 100\nanswers = 20\n[cases]\nundercharge = 14\nno-fault = 9\n[answers.undercharge]\noil_traces = [11, 2]\n";
static char text[4096];

static const char *mangled(const char *sound)
{
    const size_t size = strlen(sound);
    strcpy(text, sound);
    for (int change = (int)(bits() % 5); change > 0 && size > 0; change--) {
        const size_t at = bits() % size, from = bits() % size;
        if (one_in(2))
            text[at] = (char)(bits() % 255 + 1);
        else
            memmove(text + at, sound + from, size - (from > at ? from : at));
    }
    return text;
}

static const char *any_text(const char *sound)
{
    if (one_in(32))
        return NULL;
    if (one_in(4)) {
        size_t length = bits() % 64;
        for (size_t i = 0; i < length; i++)
            text[i] = (char)(bits() % 255 + 1);
        text[length] = '\0';
        return text;
    }
    return mangled(sound);
}

static const char *any_quantity(void)
{
    return any_text(quantities[bits() % (sizeof quantities / sizeof quantities[0])]);
}

/* Exactly as many bytes as are promised, so that one too many is seen by the sanitizers and by valgrind. */
static int page(uint32_t (*write)(const char *, char *, size_t, size_t *, coldloop_error *), const char *sound)
{
    const size_t capacity = one_in(2) ? bits() % 64 : 16384;
    char *buffer = one_in(8) ? NULL : malloc(capacity + 1);
    size_t length = 77;
    const char *given = any_text(sound);
    const uint32_t status = write(given, buffer, capacity, one_in(8) ? NULL : &length, details);
    int right = status != COLDLOOP_STATUS_INTERNAL && (details == NULL || details_too_small() || details->status == status);
    if (given == NULL && !details_too_small())
        right &= status == COLDLOOP_STATUS_NULL_POINTER;
    if (buffer != NULL && capacity > 0)
        right &= memchr(buffer, 0, capacity) != NULL && (length == 77 || strlen(buffer) <= length);
    free(buffer);
    return right;
}

static uint32_t sources(const char *given, char *buffer, size_t capacity, size_t *length, coldloop_error *failure)
{
    if (given == NULL)
        return coldloop_diagnose(NULL, buffer, capacity, length, failure);
    return coldloop_refrigerant_sources(code(55), buffer, capacity, length, failure);
}

static uint32_t recorded(const char *given, char *buffer, size_t capacity, size_t *length, coldloop_error *failure)
{
    return coldloop_record(given, readings, code(21), buffer, capacity, length, failure);
}

static int of_state(uint32_t status, const coldloop_state *s, int null)
{
    const int wrong_size = s->size < sizeof *s;
    const int answered = s->phase >= 1 && s->phase <= 4 && isfinite(s->temperature_k) && isfinite(s->pressure_pa_abs)
        && isfinite(s->density_kg_m3) && isfinite(s->enthalpy_j_kg) && isfinite(s->entropy_j_kg_k)
        && (s->phase == COLDLOOP_PHASE_TWO_PHASE) == !isnan(s->quality)
        && (s->phase == COLDLOOP_PHASE_TWO_PHASE) == !!isnan(s->cp_j_kg_k);
    return told(status, null, wrong_size, answered, s->phase == 0 && isnan(s->enthalpy_j_kg) && isnan(s->cp_j_kg_k));
}

typedef uint32_t one_state(uint32_t, uint32_t, double, double, coldloop_state *, coldloop_error *);

static int single_state(one_state *call, double first, double second)
{
    coldloop_state s;
    const int null = one_in(16);
    memset(&s, 0x5a, sizeof s);
    s.size = struct_size(sizeof s);
    return of_state(call(code(55), code(3), first, second, null ? NULL : &s, details), &s, null);
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

typedef uint32_t column(uint32_t, size_t, const double *, size_t, double *, size_t, size_t *, coldloop_error *);

static int columns(column *call, int of_pressure)
{
    const size_t count = bits() % (ROWS + 1), from = stride(), to = sizeof(double) * (1 + bits() % 4);
    const int null = one_in(16);
    size_t failed = 77, seen = 0;
    for (int i = 0; i < 4 * ROWS; i++)
        in[0][i] = of_pressure ? pascal() : kelvin();
    const uint32_t status = call(code(55), count, null ? NULL : in[0], from, result, to, &failed, details);
    if (details_too_small())
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    if (null && count > 0)
        return status == COLDLOOP_STATUS_NULL_POINTER && failed == 0;
    for (size_t i = 0; i < count; i++)
        seen += isnan(*(const double *)((const char *)result + i * to)) != 0;
    return seen == failed && (failed == 0) == (status == COLDLOOP_STATUS_OK) && status != COLDLOOP_STATUS_INTERNAL;
}

typedef uint32_t two_columns(uint32_t, uint32_t, double, size_t, const double *, size_t, const double *, size_t, double *,
                             size_t, size_t *, coldloop_error *);

static int differences(two_columns *call)
{
    const size_t count = bits() % (ROWS + 1);
    size_t failed = 77, seen = 0;
    for (int i = 0; i < ROWS; i++) {
        in[0][i] = kelvin();
        in[1][i] = pascal();
    }
    const uint32_t status = call(code(55), code(2), any(6e4, 1.1e5), count, in[0], 8, in[1], one_in(2) ? 0 : 8, result, 8,
                                 &failed, details);
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
    const uint32_t status = coldloop_states(code(55), code(3), code(7), count, in[0], 8, in[1], 8, all, sizeof all[0], &failed,
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
    const uint32_t status = coldloop_derive(code(55), given ? &r : NULL, null ? NULL : &d, details);
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
    const uint32_t status = coldloop_saturated(code(55), code(3), kelvin(), null ? NULL : &s, details);
    return told(status, null, s.size < sizeof s, isfinite(s.vapour_entropy_j_kg_k), isnan(s.liquid_density_kg_m3));
}

static int virials(void)
{
    double second = 1.0, third = 1.0;
    const uint32_t status = coldloop_virial_coefficients(code(55), kelvin(), &second, one_in(4) ? NULL : &third, details);
    return told(status, 0, 0, isfinite(second) && isfinite(third), isnan(second));
}

static int facts(void)
{
    coldloop_facts f;
    const int null = one_in(16);
    memset(&f, 0x5a, sizeof f);
    f.size = struct_size(sizeof f);
    const uint32_t status = coldloop_refrigerant_facts(code(55), null ? NULL : &f, details);
    return told(status, null, f.size < sizeof f, f.critical_temperature_k > 250.0, isnan(f.critical_temperature_k));
}

static int read_pressure(void)
{
    uint32_t datum = 9;
    const char *given = any_quantity();
    const uint32_t status = coldloop_read_pressure(given, &datum, any_out(), details);
    if (given == NULL && out != NULL && !details_too_small())
        return status == COLDLOOP_STATUS_NULL_POINTER;
    return number(status) && (status == 0) == (datum == COLDLOOP_DATUM_ABSOLUTE || datum == COLDLOOP_DATUM_GAUGE);
}

static int read_quantity(void)
{
    const char *given = any_quantity();
    const uint32_t status = coldloop_read_quantity(given, code(24), any_out(), details);
    if (given == NULL && out != NULL && !details_too_small())
        return status == COLDLOOP_STATUS_NULL_POINTER;
    return number(status);
}

static int from_name(uint32_t (*call)(const char *, uint32_t *, coldloop_error *), const char *(*back)(uint32_t), const char *id)
{
    uint32_t found = 99;
    const int null = one_in(16);
    const char *given = any_text(id);
    const uint32_t status = call(given, null ? NULL : &found, details);
    if (given == NULL && !null && !details_too_small())
        return status == COLDLOOP_STATUS_NULL_POINTER && found == 0;
    back((uint32_t)bits());
    return told(status, null, 0, back(found) != NULL, found == 0);
}

static int message(void)
{
    char buffer[64];
    memset(buffer, 1, sizeof buffer);
    error.status = code(14);
    error.quantity = code(24);
    error.value = any(0.0, 1.0);
    error.low = any(0.0, 1.0);
    error.high = any(0.0, 1.0);
    const size_t capacity = bits() % sizeof buffer;
    const size_t length = coldloop_error_message(details, one_in(8) ? NULL : buffer, capacity);
    return (length == 0) == (details == NULL || details_too_small());
}

static int listed(void)
{
    uint32_t codes[64];
    const size_t capacity = bits() % 64, count = coldloop_refrigerants(one_in(8) ? NULL : codes, capacity);
    return count > 20 && count < 64;
}

static uint32_t superheat(void)
{
    return coldloop_superheat(code(55), kelvin(), code(2), pascal(), any(6e4, 1.1e5), any_out(), details);
}

static uint32_t subcooling(void)
{
    return coldloop_subcooling(code(55), kelvin(), code(2), pascal(), any(6e4, 1.1e5), any_out(), details);
}

static uint32_t gauge_uncertainty(void)
{
    return coldloop_gauge_uncertainty(code(6), any(-1e5, 0.0), pascal(), pascal(), any_out(), details);
}

#define NAMES(x, id) from_name(coldloop_##x##_from_name, coldloop_##x##_name, id)

enum { ENTRIES = 77 };

/* Calls the entry point of this number; whether it kept its promise. */
static int call(unsigned entry)
{
    switch (entry) {
    case 0: return number(coldloop_standard_pressure(any(-600.0, 9100.0), any_out(), details));
    case 1: return number(coldloop_standard_altitude(pascal(), any_out(), details));
    case 2: return number(coldloop_standard_temperature(any(-600.0, 9100.0), any_out(), details));
    case 3: return number(coldloop_standard_density(any(-600.0, 9100.0), any_out(), details));
    case 4: return number(coldloop_absolute_pressure(pascal(), any(6e4, 1.1e5), any_out(), details));
    case 5: return number(coldloop_gauge_pressure(pascal(), any(6e4, 1.1e5), any_out(), details));
    case 6: return number(coldloop_enhancement_factor(kelvin(), any(6e4, 1.1e5), any_out(), details));
    case 7: return number(coldloop_water_saturation_pressure(kelvin(), any_out(), details));
    case 8: return number(coldloop_water_boiling_point(pascal(), any_out(), details));
    case 9: return number(coldloop_bubble_pressure(code(55), kelvin(), any_out(), details));
    case 10: return number(coldloop_dew_pressure(code(55), kelvin(), any_out(), details));
    case 11: return number(coldloop_bubble_temperature(code(55), pascal(), any_out(), details));
    case 12: return number(coldloop_dew_temperature(code(55), pascal(), any_out(), details));
    case 13: return number(coldloop_saturation_slope(code(55), kelvin(), any_out(), details));
    case 14: return number(coldloop_latent_heat(code(55), kelvin(), any_out(), details));
    case 75: return number(coldloop_glide(code(55), pascal(), any_out(), details));
    case 15: return saturated();
    case 16: return columns(coldloop_dew_pressures, 0);
    case 17: return columns(coldloop_bubble_pressures, 0);
    case 18: return columns(coldloop_dew_temperatures, 1);
    case 19: return columns(coldloop_bubble_temperatures, 1);
    case 20: return single_state(coldloop_state_tp, kelvin(), pascal());
    case 21: return single_state(coldloop_state_td, kelvin(), any(0.0, 2e3));
    case 22: return single_state(coldloop_state_tq, kelvin(), part());
    case 23: return single_state(coldloop_state_pq, pascal(), part());
    case 24: return single_state(coldloop_state_ph, pascal(), per_kg());
    case 25: return single_state(coldloop_state_ps, pascal(), any(0.0, 3e3));
    case 26: return single_state(coldloop_state_hs, per_kg(), any(0.0, 3e3));
    case 27: return states();
    case 28: return moist_air(coldloop_air_of_relative_humidity, kelvin(), any(6e4, 1.1e5), part());
    case 29: return moist_air(coldloop_air_of_humidity_ratio, kelvin(), any(6e4, 1.1e5), any(0.0, 0.05));
    case 30: return moist_air(coldloop_air_of_dew_point, kelvin(), any(6e4, 1.1e5), kelvin());
    case 31: return moist_air(coldloop_air_of_wet_bulb, kelvin(), any(6e4, 1.1e5), kelvin());
    case 32: return moist_air(coldloop_air_of_enthalpy, any(0.0, 1e5), any(6e4, 1.1e5), any(0.0, 0.05));
    case 33: return number(superheat());
    case 34: return number(subcooling());
    case 35: return differences(coldloop_superheats);
    case 36: return differences(coldloop_subcoolings);
    case 37: return number(gauge_uncertainty());
    case 38: return number(coldloop_thermometer_uncertainty(code(5), kelvin(), any_out(), details));
    case 39: return derive();
    case 40: return expected();
    case 41: return page(coldloop_diagnose, readings);
    case 42: return page(coldloop_report, readings);
    case 43: return page(coldloop_simulate, trial);
    case 44: return page(sources, "");
    case 45: return facts();
    case 46: return listed();
    case 47: return read_pressure();
    case 48: return read_quantity();
    case 49: return message();
    case 50: return coldloop_status_text(code(14)) != NULL && coldloop_version() != NULL;
    case 51: return NAMES(quantity, "voltage");
    case 52: return NAMES(refrigerant, "R-1234ze(E)");
    case 53: return NAMES(safety_group, "A2L");
    case 54: return NAMES(phase, "two-phase");
    case 55: return NAMES(reference, "IIR");
    case 56: return NAMES(expansion, "txv");
    case 57: return NAMES(compressor, "fixed-clutch");
    case 58: return NAMES(air_source, "fresh");
    case 59: return NAMES(gauge_class, "digital");
    case 60: return NAMES(thermometer, "infrared");
    case 61: return NAMES(fault, "undercharge");
    case 62: return NAMES(verdict, "healthy");
    case 63: return returns(coldloop_kelvin_of_celsius(kelvin())) && returns(coldloop_kelvin_of_fahrenheit(kelvin()));
    case 64: return returns(coldloop_celsius_of_kelvin(kelvin())) && returns(coldloop_fahrenheit_of_kelvin(kelvin()));
    case 65: return returns(coldloop_pa_of_psi(pascal())) && returns(coldloop_psi_of_pa(pascal()));
    case 66: return returns(coldloop_pa_of_bar(pascal())) && returns(coldloop_bar_of_pa(pascal()));
    case 67: return returns(coldloop_pa_of_inhg(pascal())) && returns(coldloop_inhg_of_pa(pascal()));
    case 68: return returns(coldloop_pa_of_microns(pascal())) && returns(coldloop_microns_of_pa(pascal()));
    case 69: return virials();
    case 70: return page(coldloop_plan, readings);
    case 71: return page(coldloop_prove, visit);
    case 72: return page(one_in(2) ? coldloop_diagnose : coldloop_report, visit);
    case 73: return page(recorded, counts);
    case 74: return single_state(one_in(2) ? coldloop_superheated_liquid : coldloop_subcooled_vapour, kelvin(), pascal());
    /* The calls that cost thousands of times the others come up less often, these in their place. */
    default: return number(coldloop_dew_pressure(code(55), kelvin(), any_out(), details));
    }
}

int main(int count, char *argument[])
{
    const long rounds = count > 1 ? atol(argument[1]) : 200000;
    long all_wrong = 0;
    for (long round = 0; round < rounds; round++) {
        const uint64_t seed = state;
        const unsigned entry = (unsigned)((bits() >> 24) % ENTRIES);
        draw_details();
        if (!call(entry) && all_wrong++ < 10)
            printf("round %ld, state %llu: entry %u\n", round, (unsigned long long)seed, entry);
    }
    printf("%ld calls\n", rounds);
    CHECK(all_wrong == 0);
    return checks_end();
}
