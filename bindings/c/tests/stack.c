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

/* Two pressures only: many checks are left, and pairs of faults are considered. */
static const char *const TWO_GAUGES =
    "{\"system\": {\"refrigerant\": \"R-1234yf\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"23 °C\", \"altitude\": \"0 m\"},"
    " \"readings\": {\"low_side\": \"70 psig\", \"high_side\": \"125 psig\"}}";

/* The same with settings of many kinds. */
static const char *const SETTINGS =
    "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"23 °C\", \"altitude\": \"1600 m\"},"
    " \"readings\": {\"low_side\": \"70 psig\", \"high_side\": \"125 psig\"},"
    " \"settings\": {\"named\": 0.8, \"priors\": {\"undercharge\": 0.3}, \"stakes\": {\"look\": 10},"
    "  \"looks\": {\"undercharge\": {\"sight_glass_bubbles\": 0.9}}, \"prices\": {\"recovery\": {\"minutes\": 20}},"
    "  \"counts\": {\"cases\": {\"undercharge\": 140, \"no-fault\": 60}}}}";

/* What a call works on. */
struct call {
    uint32_t (*made)(const struct call *);
    const char *readings;
    char *answer;
    void *session;
    void *recorder;
    uint32_t status;
};

static uint32_t nothing(const struct call *call)
{
    (void)call;
    return COLDLOOP_STATUS_OK;
}

static uint32_t diagnose(const struct call *call) { return coldloop_diagnose(call->readings, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL); }
static uint32_t report(const struct call *call) { return coldloop_report(call->readings, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL); }
static uint32_t page_html(const struct call *call) { return coldloop_page_html(call->readings, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL); }
static uint32_t plan(const struct call *call) { return coldloop_plan(call->readings, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL); }
static uint32_t prove(const struct call *call) { return coldloop_prove(call->readings, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL); }

static uint32_t session_from_text(const struct call *call)
{
    return coldloop_session_from_text(call->session, coldloop_session_size(), call->readings, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL);
}

static uint32_t session_text(const struct call *call)
{
    return coldloop_session_text(call->session, NULL, call->answer, COLDLOOP_ANSWER_MAX, NULL, NULL);
}

static uint32_t session_standing(const struct call *call)
{
    coldloop_standing standing = {.size = sizeof standing};
    return coldloop_session_standing(call->session, &standing, NULL);
}

static uint32_t session_odds(const struct call *call)
{
    coldloop_ranked_fault faults[8];
    size_t count;
    return coldloop_session_odds(call->session, faults, 8, &count, NULL);
}

static uint32_t session_next(const struct call *call)
{
    coldloop_next_step next = {.size = sizeof next};
    return coldloop_session_next(call->session, &next, NULL);
}

static uint32_t session_add_log(const struct call *call)
{
    const uint32_t status = coldloop_session_add_log(call->session, call->recorder, NULL, NULL);
    uint32_t undone;
    coldloop_session_undo(call->session, &undone, NULL);
    return status;
}

static uint32_t log_standing(const struct call *call)
{
    coldloop_standing standing = {.size = sizeof standing};
    return coldloop_session_log_standing(call->session, call->recorder, NULL, &standing, NULL);
}

static uint32_t log_odds(const struct call *call)
{
    coldloop_ranked_fault faults[8];
    size_t count;
    return coldloop_session_log_odds(call->session, call->recorder, NULL, faults, 8, &count, NULL);
}

static uint32_t recorder_push(const struct call *call)
{
    static const uint32_t channels[] = {COLDLOOP_CHANNEL_LOW_SIDE, COLDLOOP_CHANNEL_HIGH_SIDE};
    const double time_s = 1e3, values[] = {200e3, 1e6};
    return coldloop_recorder_push(call->recorder, 1, &time_s, 0, 2, channels, values, 0, sizeof values[0], NULL);
}

static uint32_t recorder_state(const struct call *call)
{
    coldloop_log_state state = {.size = sizeof state};
    coldloop_log_summary summary = {.size = sizeof summary};
    coldloop_recorder_state(call->recorder, 0, &state, NULL);
    return coldloop_recorder_summary(call->recorder, &summary, NULL);
}

static void *made(void *given)
{
    struct call *call = given;
    call->status = call->made(call);
    return NULL;
}

/* Bytes of a stack that a call leaves changed. */
static size_t used(struct call *call)
{
    const size_t bytes = stack_used(made, call);
    CHECK(call->status == COLDLOOP_STATUS_OK);
    return bytes;
}

/* A log of three states, each at its own speed. */
static void logged(void *recorder)
{
    static const uint32_t channels[] = {COLDLOOP_CHANNEL_LOW_SIDE, COLDLOOP_CHANNEL_HIGH_SIDE, COLDLOOP_CHANNEL_VENT, COLDLOOP_CHANNEL_ENGINE_SPEED};
    int s;
    coldloop_log_summary summary = {.size = sizeof summary};
    CHECK(coldloop_recorder_init(recorder, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_OK);
    for (s = 0; s < 900; s++) {
        const int state = s / 300;
        const double time_s = s, values[] = {330e3 - 50e3 * state, 900e3 + 120e3 * state, 288.0 - 2.0 * state, 13.0 + 10.0 * state};
        CHECK(coldloop_recorder_push(recorder, 1, &time_s, 0, 4, channels, values, 0, sizeof values[0], NULL) == COLDLOOP_STATUS_OK);
    }
    CHECK(coldloop_recorder_summary(recorder, &summary, NULL) == COLDLOOP_STATUS_OK && summary.judged == 3);
}

int main(void)
{
    static const struct {
        const char *name;
        uint32_t (*made)(const struct call *);
        size_t most;
    } functions[] = {
        {"coldloop_diagnose", diagnose, COLDLOOP_STACK_MAX},
        {"coldloop_report", report, COLDLOOP_STACK_MAX},
        {"coldloop_page_html", page_html, COLDLOOP_STACK_MAX},
        {"coldloop_plan", plan, COLDLOOP_STACK_MAX},
        {"coldloop_prove", prove, COLDLOOP_STACK_MAX},
        {"coldloop_session_from_text", session_from_text, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_session_text", session_text, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_session_standing", session_standing, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_session_odds", session_odds, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_session_next", session_next, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_session_add_log", session_add_log, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_session_log_standing", log_standing, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_session_log_odds", log_odds, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_recorder_push", recorder_push, COLDLOOP_SESSION_STACK_MAX},
        {"coldloop_recorder_state", recorder_state, COLDLOOP_SESSION_STACK_MAX},
    };
    const char *const texts[] = {VISIT, TWO_GAUGES, SETTINGS};
    char *answer = malloc(COLDLOOP_ANSWER_MAX);
    void *session = malloc(coldloop_session_size()), *recorder = malloc(coldloop_recorder_size());
    struct call none = {nothing, NULL, NULL, NULL, NULL, 0};
    size_t thread = used(&none); /* what a thread takes that calls nothing */
    size_t at, text;
    CHECK(answer != NULL && session != NULL && recorder != NULL);
    for (at = 0; at < sizeof functions / sizeof functions[0]; at++) {
        size_t most = 0;
        for (text = 0; text < sizeof texts / sizeof texts[0]; text++) {
            struct call call = {functions[at].made, texts[text], answer, session, recorder, 0};
            size_t bytes;
            logged(recorder);
            CHECK(coldloop_session_from_text(session, coldloop_session_size(), texts[text], NULL, 0, NULL, NULL) == COLDLOOP_STATUS_OK);
            bytes = used(&call) - thread;
            most = bytes > most ? bytes : most;
        }
        printf("%s: %zu bytes of stack\n", functions[at].name, most);
        /* What a thread takes as it ends lies in the same place: of a push, which takes little more, only the rest is seen. */
        CHECK(most > (functions[at].made == recorder_push ? 0 : 1000) && most <= functions[at].most);
    }
    free(recorder);
    free(session);
    free(answer);
    return checks_end();
}
