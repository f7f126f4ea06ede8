/* How much stack the functions with readings take: each runs in a thread whose stack was filled with a pattern before. */

#define _POSIX_C_SOURCE 200809L

#include "coldloop.h"
#include "painted.h"

/* A visit with much in it: all readings, what was seen, the vehicle's own table and visits, and what was done since. */
static const char *const VISIT =
    "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"29 °C\", \"humidity\": \"35 %\", \"altitude\": \"1600 m\", \"running\": \"12 min\"},"
    " \"readings\": {\"low_side\": \"105 kPa gauge\", \"high_side\": \"1010 kPa gauge\", \"vent\": \"17 °C\","
    "  \"suction_line\": \"21 °C\", \"liquid_line\": \"41.5 °C\", \"clutch_cycles\": \"9 /min\"},"
    " \"observations\": {\"clutch_engaged\": true, \"condenser_fan_running\": true, \"sight_glass_bubbles\": true},"
    " \"after\": {\"conditions\": {\"ambient\": \"30 °C\", \"altitude\": \"1600 m\", \"running\": \"12 min\"},"
    "  \"readings\": {\"low_side\": \"190 kPa gauge\", \"high_side\": \"1350 kPa gauge\", \"vent\": \"8 °C\"}}}";

/* Two pressures only: much is left to be looked at, and two faults at once are weighed. */
static const char *const TWO_GAUGES =
    "{\"system\": {\"refrigerant\": \"R-1234yf\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"23 °C\", \"altitude\": \"0 m\"},"
    " \"readings\": {\"low_side\": \"70 psig\", \"high_side\": \"125 psig\"}}";

/* The same by settings of many kinds. */
static const char *const SETTINGS =
    "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"23 °C\", \"altitude\": \"1600 m\"},"
    " \"readings\": {\"low_side\": \"70 psig\", \"high_side\": \"125 psig\"},"
    " \"settings\": {\"named\": 0.8, \"priors\": {\"undercharge\": 0.3}, \"stakes\": {\"look\": 10},"
    "  \"looks\": {\"undercharge\": {\"sight_glass_bubbles\": 0.9}}, \"prices\": {\"recovery\": {\"minutes\": 20}},"
    "  \"counts\": {\"cases\": {\"undercharge\": 140, \"no-fault\": 60}}}}";

typedef uint32_t (*function)(const char *, char *, uintptr_t, uintptr_t *, coldloop_error *);

struct call {
    function function;
    const char *readings;
    char *answer;
    uint32_t status;
};

static void *made(void *given)
{
    struct call *call = given;
    call->status = call->function == NULL
                       ? COLDLOOP_STATUS_OK
                       : call->function(call->readings, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL);
    return NULL;
}

/* Bytes of a stack that a call leaves changed. */
static size_t used(struct call *call)
{
    const size_t bytes = stack_used(made, call);
    CHECK(call->status == COLDLOOP_STATUS_OK);
    return bytes;
}

int main(void)
{
    static const struct {
        const char *name;
        function function;
    } functions[] = {
        {"coldloop_diagnose", coldloop_diagnose},
        {"coldloop_report", coldloop_report},
        {"coldloop_page_html", coldloop_page_html},
        {"coldloop_plan", coldloop_plan},
        {"coldloop_prove", coldloop_prove},
    };
    const char *const texts[] = {VISIT, TWO_GAUGES, SETTINGS};
    char *answer = malloc(COLDLOOP_ANSWER_MAX);
    struct call none = {NULL, NULL, NULL, 0};
    size_t thread = used(&none); /* what a thread takes that calls nothing */
    size_t at, text;
    CHECK(answer != NULL);
    for (at = 0; at < sizeof functions / sizeof functions[0]; at++) {
        size_t most = 0;
        for (text = 0; text < sizeof texts / sizeof texts[0]; text++) {
            struct call call = {functions[at].function, texts[text], answer, 0};
            size_t bytes = used(&call) - thread;
            most = bytes > most ? bytes : most;
        }
        printf("%s: %zu bytes of stack\n", functions[at].name, most);
        CHECK(most > 1000 && most <= COLDLOOP_STACK_MAX);
    }
    free(answer);
    return checks_end();
}
