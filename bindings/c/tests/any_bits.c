/* Random bits at every entry point: each call gives a finite answer, or a status and NaN; none traps or hangs, and none ends
 * with the status of a caught panic. Each round calls one function, drawn at random; "any_bits 10000000" runs the long form.
 * "any_bits 1000000 painted" prints rows of the table in docs/security.md: functions that read texts run in one thread and the
 * others in a second one, and the stack of each thread is filled with a pattern first. */

#define _POSIX_C_SOURCE 200809L

#include "painted.h"
#include "drawn_live.h"
#include "drawn_structs.h"
#include "drawn_text.h"

#include <sys/resource.h>
#include <time.h>

static uint32_t superheat(void)
{
    return coldloop_superheat(code(REFRIGERANTS), kelvin(), code(2), pascal(), any(6e4, 1.1e5), any_out(), details);
}

static uint32_t subcooling(void)
{
    return coldloop_subcooling(code(REFRIGERANTS), kelvin(), code(2), pascal(), any(6e4, 1.1e5), any_out(), details);
}

static uint32_t gauge_uncertainty(void)
{
    return coldloop_gauge_uncertainty(code(6), any(-1e5, 0.0), pascal(), pascal(), any_out(), details);
}

static uint32_t evaporating_mean_ph(void)
{
    return coldloop_evaporating_mean_ph(code(REFRIGERANTS), code(REFERENCES), pascal(), per_kg(), any_out(), details);
}

#define NAMES(x, id) from_name(coldloop_##x##_from_name, coldloop_##x##_name, id)

enum { ENTRIES = 115 };

/* Calls the entry point of this number; returns whether it kept its contract. */
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
    case 9: return number(coldloop_bubble_pressure(code(REFRIGERANTS), kelvin(), any_out(), details));
    case 10: return number(coldloop_dew_pressure(code(REFRIGERANTS), kelvin(), any_out(), details));
    case 11: return number(coldloop_bubble_temperature(code(REFRIGERANTS), pascal(), any_out(), details));
    case 12: return number(coldloop_dew_temperature(code(REFRIGERANTS), pascal(), any_out(), details));
    case 13: return number(coldloop_saturation_slope(code(REFRIGERANTS), kelvin(), any_out(), details));
    case 14: return number(coldloop_latent_heat(code(REFRIGERANTS), kelvin(), any_out(), details));
    case 75: return number(coldloop_glide(code(REFRIGERANTS), pascal(), any_out(), details));
    case 15: return saturated();
    case 16: return columns(coldloop_dew_pressures, 0);
    case 17: return columns(coldloop_bubble_pressures, 0);
    case 18: return columns(coldloop_dew_temperatures, 1);
    case 19: return columns(coldloop_bubble_temperatures, 1);
    case 20: return single_state(coldloop_state_temperature_pressure, kelvin(), pascal());
    case 21: return single_state(coldloop_state_temperature_density, kelvin(), any(0.0, 2e3));
    case 22: return single_state(coldloop_state_temperature_quality, kelvin(), part());
    case 23: return single_state(coldloop_state_pressure_quality, pascal(), part());
    case 24: return single_state(coldloop_state_pressure_enthalpy, pascal(), per_kg());
    case 25: return single_state(coldloop_state_pressure_entropy, pascal(), any(0.0, 3e3));
    case 26: return single_state(coldloop_state_enthalpy_entropy, per_kg(), any(0.0, 3e3));
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
    case 42: return page(one_in(2) ? coldloop_page_html : coldloop_report, readings);
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
    case 63: return returns(coldloop_celsius_to_kelvin(kelvin())) && returns(coldloop_fahrenheit_to_kelvin(kelvin()));
    case 64: return returns(coldloop_kelvin_to_celsius(kelvin())) && returns(coldloop_kelvin_to_fahrenheit(kelvin()));
    case 65: return returns(coldloop_psi_to_pa(pascal())) && returns(coldloop_pa_to_psi(pascal()));
    case 66: return returns(coldloop_bar_to_pa(pascal())) && returns(coldloop_pa_to_bar(pascal()));
    case 67: return returns(coldloop_inhg_to_pa(pascal())) && returns(coldloop_pa_to_inhg(pascal()));
    case 68: return returns(coldloop_microns_to_pa(pascal())) && returns(coldloop_pa_to_microns(pascal()));
    case 69: return virials();
    case 70: return page(one_in(2) ? coldloop_plan : coldloop_catalogue, readings);
    case 71: return page(coldloop_prove, visit);
    case 72: return page(one_in(2) ? coldloop_diagnose : coldloop_report, visit);
    case 73: return one_in(2) ? page(recorded, counts) : page(learned, cases);
    case 74: return single_state(one_in(2) ? coldloop_superheated_liquid : coldloop_subcooled_vapour, kelvin(), pascal());
    case 76: return NAMES(pressure_match, "too-high");
    case 77: return NAMES(leak_phase, "vapour");
    case 78: return number(coldloop_bubble_slope(code(REFRIGERANTS), kelvin(), any_out(), details));
    case 79: return number(coldloop_evaporating_mean(code(REFRIGERANTS), pascal(), part(), any_out(), details));
    case 80: return number(evaporating_mean_ph());
    case 81: return shares_of_charge();
    case 82: return one_in(8) ? point_of_charge(coldloop_charge_bubble_pressure, kelvin()) : at_rest();
    case 83: return one_in(8) ? point_of_charge(coldloop_charge_dew_pressure, kelvin()) : at_rest();
    case 84: return one_in(8) ? point_of_charge(coldloop_charge_bubble_temperature, pascal()) : at_rest();
    case 85: return one_in(8) ? point_of_charge(coldloop_charge_dew_temperature, pascal()) : at_rest();
    case 86: return one_in(8) ? split() : at_rest();
    case 87: return one_in(32) ? leaked() : at_rest();
    case 88: return number(coldloop_viscosity(code(REFRIGERANTS), code(5), one_in(2) ? kelvin() : pascal(), property(), any_out(), details));
    case 89: return number(coldloop_conductivity(code(REFRIGERANTS), code(5), one_in(2) ? kelvin() : pascal(), property(), any_out(), details));
    case 90: return number(coldloop_surface_tension(code(REFRIGERANTS), kelvin(), any_out(), details));
    case 91: return properties(coldloop_viscosities);
    case 92: return properties(coldloop_conductivities);
    case 93: return columns(coldloop_surface_tensions, 0);
    case 94: return NAMES(low_port, "evaporator");
    case 95: return NAMES(high_port, "liquid-line");
    case 96: return NAMES(reading_kind, "vent");
    case 97: return NAMES(observation, "oil_traces");
    case 98: return NAMES(check, "turn-hub");
    case 99: return NAMES(result_kind, "yes");
    case 100: return NAMES(caution, "pressure");
    case 101: return NAMES(channel, "engine_speed");
    case 102: return NAMES(log_phase, "settled");
    case 103: return NAMES(log_note, "gap");
    case 104: return recorder_begins();
    case 105: return recorder_takes();
    case 106: return recorder_tells();
    case 107: return recorder_states();
    case 108: return recorder_reads();
    case 109: return one_in(4) ? session_begins() : page(session_read, visit);
    case 110: return page(session_written, visit);
    case 111: return session_grows();
    case 112: return one_in(8) ? session_tells() : session_grows();
    /* Calls that cost thousands of times as much as the others are drawn less often; these take their places. */
    case 113: return NAMES(picture, "cycle");
    case 114: return page(drawing, visit);
    default: return number(coldloop_dew_pressure(code(REFRIGERANTS), kelvin(), any_out(), details));
    }
}

static int reads_text(unsigned entry)
{
    switch (entry) {
    case 41: case 42: case 43: case 47: case 48: case 70: case 71: case 72: case 73: case 109: case 110: return 1;
    default: return 0;
    }
}

/* Some rounds with one kind of functions. */
struct rounds {
    const char *name;
    int texts;
    long calls, wrong;
    double slowest_ms;
    unsigned slowest;
};

/* Processor time of this thread, ms, without the time spent waiting for the processor. */
static double processor_ms(void)
{
    struct timespec now;
    if (clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now) != 0)
        abort();
    return 1e3 * (double)now.tv_sec + 1e-6 * (double)now.tv_nsec;
}

/* Peak memory of the process, kB. */
static long resident_kb(void)
{
    struct rusage used;
    if (getrusage(RUSAGE_SELF, &used) != 0)
        abort();
    return used.ru_maxrss;
}

static void *run(void *given)
{
    struct rounds *rounds = given;
    for (long round = 0; round < rounds->calls; round++) {
        const uint64_t seed = state;
        unsigned entry;
        double began, ms;
        do
            entry = (unsigned)((bits() >> 24) % ENTRIES);
        while (reads_text(entry) != rounds->texts);
        draw_details();
        began = processor_ms();
        if (!call(entry) && rounds->wrong++ < 10)
            printf("%s, round %ld, state %llu: entry %u\n", rounds->name, round, (unsigned long long)seed, entry);
        ms = processor_ms() - began;
        if (ms > rounds->slowest_ms) {
            rounds->slowest_ms = ms;
            rounds->slowest = entry;
        }
    }
    return NULL;
}

static void *nothing(void *given) { return given; }

int main(int count, char *argument[])
{
    const long calls = count > 1 ? atol(argument[1]) : 200000;
    struct rounds kinds[] = {
        {"C, numbers and structs", 0, calls - calls / 10, 0, 0.0, 0},
        {"C, texts", 1, calls / 10, 0, 0.0, 0},
    };
    for (size_t kind = 0; kind < sizeof kinds / sizeof kinds[0]; kind++) {
        struct rounds *rounds = &kinds[kind];
        if (count > 2) {
            const size_t thread = stack_used(nothing, NULL);
            const long before_kb = resident_kb();
            const size_t stack = stack_used(run, rounds) - thread;
            printf("| %s | %ld | | %.1f ms (entry %u) | %zu kB | %ld kB | |\n", rounds->name, rounds->calls, rounds->slowest_ms,
                   rounds->slowest, (stack + 999) / 1000, resident_kb() - before_kb);
        } else {
            run(rounds);
        }
        CHECK(rounds->wrong == 0);
    }
    return checks_end();
}
