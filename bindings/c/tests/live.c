/* Recorders and sessions: the contract in their chapters of the header. */

#include "check.h"
#include "coldloop.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { SECONDS = 300, CHANNELS = 5 };

/* A row of a logger. */
typedef struct {
    double time_s, low_pa, high_pa, vent_k, engine_hz, clutch;
} row;

static const uint32_t channels[CHANNELS] = {COLDLOOP_CHANNEL_LOW_SIDE, COLDLOOP_CHANNEL_HIGH_SIDE, COLDLOOP_CHANNEL_VENT,
                                            COLDLOOP_CHANNEL_ENGINE_SPEED, COLDLOOP_CHANNEL_CLUTCH};

/* A system in steady state; with a period, one whose clutch cycles. */
static void logged(row *rows, int period_s)
{
    for (int s = 0; s < SECONDS; s++) {
        const double part = period_s > 0 ? (double)(s % period_s) / period_s : 0.5;
        const int on = part < 0.6;
        const double swing = period_s > 0 ? (on ? part / 0.6 : (1.0 - part) / 0.4) : 0.5;
        rows[s].time_s = s;
        rows[s].low_pa = 300e3 - 140e3 * swing;
        rows[s].high_pa = 900e3 + 250e3 * swing;
        rows[s].vent_k = 281.0 + 12.0 * exp(-s / 30.0);
        rows[s].engine_hz = 25.0;
        rows[s].clutch = on;
    }
}

static void *recorder_of(const row *rows)
{
    void *recorder = malloc(coldloop_recorder_size());
    CHECK(coldloop_recorder_init(recorder, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_recorder_push(recorder, SECONDS, &rows[0].time_s, sizeof *rows, CHANNELS, channels, &rows[0].low_pa, sizeof *rows,
                                 sizeof(double), NULL) == COLDLOOP_STATUS_OK);
    return recorder;
}

static void recorders(void)
{
    row rows[SECONDS];
    const size_t size = coldloop_recorder_size();
    unsigned char blank[16384] = {0};
    coldloop_log_summary summary = {.size = sizeof summary}, other = {.size = sizeof other};
    coldloop_log_state state = {.size = sizeof state}, again = {.size = sizeof again};
    coldloop_estimate reading, coarse;
    uint32_t seen = 9;

    CHECK(size > 1024 && size <= 8 * 1024 + 8);
    CHECK(coldloop_recorder_init(NULL, size, COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(coldloop_recorder_init(blank, size - 1, COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_STRUCT_SIZE);
    CHECK(coldloop_recorder_init(blank, size, 9, NULL) == COLDLOOP_STATUS_MISSING_DATUM);
    CHECK(coldloop_recorder_summary(blank, &summary, NULL) == COLDLOOP_STATUS_NOT_INITIALISED);
    CHECK(summary.phase == 0 && isnan(summary.elapsed_s) && summary.size == sizeof summary);

    logged(rows, 0);
    void *recorder = recorder_of(rows);
    CHECK(coldloop_recorder_summary(recorder, &summary, NULL) == COLDLOOP_STATUS_OK);
    CHECK(summary.phase == COLDLOOP_LOG_PHASE_SETTLED && summary.states == 1 && summary.judged == 1);
    CHECK(summary.elapsed_s == SECONDS - 1 && summary.wait_s == 0.0);
    CHECK(fabs(summary.vent.to_k - 281.0) < 0.1 && summary.vent.half_s < 60.0 && summary.vent.falls == 0);
    CHECK(isnan(summary.cabin.from_k) && isnan(summary.equal_after_s));
    CHECK(coldloop_recorder_state(recorder, 0, &state, NULL) == COLDLOOP_STATUS_OK);
    CHECK(fabs(state.means[COLDLOOP_CHANNEL_LOW_SIDE - 1] - 230e3) < 1.0 && state.uncertainties[COLDLOOP_CHANNEL_LOW_SIDE - 1] >= 0.0 && state.cycles == 0 && isnan(state.on_share));
    CHECK(isnan(state.means[COLDLOOP_CHANNEL_CABIN - 1]) && state.judged == 1);
    CHECK(coldloop_recorder_state(recorder, 1, &state, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE && isnan(state.seconds));
    CHECK(coldloop_recorder_observation(recorder, COLDLOOP_OBSERVATION_CLUTCH_ENGAGED, &seen, NULL) == COLDLOOP_STATUS_OK && seen == 1);
    CHECK(coldloop_recorder_observation(recorder, COLDLOOP_OBSERVATION_OIL_TRACES, &seen, NULL) == COLDLOOP_STATUS_MISSING && seen == 0);
    CHECK(coldloop_recorder_reading(recorder, NULL, COLDLOOP_READING_KIND_LOW_SIDE, &reading, NULL) == COLDLOOP_STATUS_OK);
    CHECK(fabs(reading.value - 230e3) < 1.0 && reading.standard_uncertainty > 1e3);
    const coldloop_instruments dials = {.size = sizeof dials, .low_side = COLDLOOP_GAUGE_CLASS_CLASS2P5};
    CHECK(coldloop_recorder_reading(recorder, &dials, COLDLOOP_READING_KIND_LOW_SIDE, &coarse, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coarse.standard_uncertainty > reading.standard_uncertainty);
    CHECK(coldloop_recorder_reading(recorder, NULL, COLDLOOP_READING_KIND_CABIN, &reading, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(isnan(reading.value));

    /* A call that is refused takes no sample; a sample that comes too late is counted. */
    const uint32_t wrong = 99;
    CHECK(coldloop_recorder_push(recorder, 1, &rows[9].time_s, 0, 1, &wrong, &rows[9].low_pa, 0, 0, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(coldloop_recorder_push(recorder, 1, NULL, 0, 1, channels, &rows[9].low_pa, 0, 0, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(coldloop_recorder_push(recorder, 1, &rows[9].time_s, 0, 99, channels, &rows[9].low_pa, 0, 0, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(coldloop_recorder_push(recorder, 0, NULL, 0, 0, NULL, NULL, 0, 0, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_recorder_push(recorder, 1, &rows[9].time_s, 0, 1, channels, &rows[9].low_pa, 0, 0, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_recorder_summary(recorder, &other, NULL) == COLDLOOP_STATUS_OK);
    CHECK(other.notes[COLDLOOP_LOG_NOTE_TOO_LATE - 1] == 1 && other.elapsed_s == summary.elapsed_s);
    free(recorder);

    /* A cycling clutch; from a struct of rows, and from columns one after the other, one sample at a time, not aligned, and moved
     * halfway. */
    logged(rows, 24);
    recorder = recorder_of(rows);
    CHECK(coldloop_recorder_summary(recorder, &summary, NULL) == COLDLOOP_STATUS_OK && summary.phase == COLDLOOP_LOG_PHASE_CYCLING);
    CHECK(coldloop_recorder_state(recorder, 0, &state, NULL) == COLDLOOP_STATUS_OK && state.cycles > 8 && state.repeats == 1);
    CHECK(fabs(1.0 / state.cycles_hz.value - 24.0) < 2.0 && state.cut_out_pa < 180e3 && state.cut_in_pa > 270e3);
    double columns[CHANNELS][SECONDS];
    for (int s = 0; s < SECONDS; s++)
        for (int c = 0; c < CHANNELS; c++)
            columns[c][s] = (&rows[s].low_pa)[c];
    char *odd = malloc(size + 1), *moved = malloc(size + 3);
    CHECK(coldloop_recorder_init(odd + 1, size, COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_OK);
    for (int s = 0; s < SECONDS / 2; s++)
        CHECK(coldloop_recorder_push(odd + 1, 1, &rows[s].time_s, 0, CHANNELS, channels, &columns[0][s], 0, sizeof columns[0], NULL)
              == COLDLOOP_STATUS_OK);
    memcpy(moved + 3, odd + 1, size);
    free(odd);
    const int from = SECONDS / 2;
    CHECK(coldloop_recorder_push(moved + 3, SECONDS - from, &rows[from].time_s, sizeof *rows, CHANNELS, channels, &columns[0][from],
                                 sizeof(double), sizeof columns[0], NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_recorder_state(moved + 3, 0, &again, NULL) == COLDLOOP_STATUS_OK);
    CHECK(again.seconds == state.seconds && again.cut_out_pa == state.cut_out_pa && again.cycles_hz.value == state.cycles_hz.value);
    for (int c = 0; c < CHANNELS; c++)
        CHECK(again.means[channels[c] - 1] == state.means[channels[c] - 1]);
    free(moved);
    free(recorder);
}

static const coldloop_vehicle_system van = {.size = sizeof van,
                                    .refrigerant = COLDLOOP_REFRIGERANT_R134A,
                                    .expansion = COLDLOOP_EXPANSION_TXV,
                                    .compressor = COLDLOOP_COMPRESSOR_FIXED_CLUTCH,
                                    .nominal_charge_kg = 0.85,
                                    .high_cut_out_pa_gauge = NAN};
static const coldloop_conditions yard = {.size = sizeof yard,
                                         .ambient_k = 297.15,
                                         .air_pa_abs = 83500.0,
                                         .relative_humidity = NAN,
                                         .engine_speed_hz = NAN,
                                         .blower = NAN,
                                         .vehicle_speed_m_s = NAN,
                                         .running_s = NAN,
                                         .compressor_speed_hz = NAN,
                                         .commanded_displacement = NAN,
                                         .fan_command = NAN};

static void *session_of_van(void)
{
    void *session = malloc(coldloop_session_size());
    CHECK(coldloop_session_init(session, coldloop_session_size(), &van, &yard, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_add_reading(session, COLDLOOP_READING_KIND_LOW_SIDE, COLDLOOP_DATUM_GAUGE, 427e3, 10e3, NULL)
          == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_add_reading(session, COLDLOOP_READING_KIND_HIGH_SIDE, COLDLOOP_DATUM_ABSOLUTE, 897e3, 30e3, NULL)
          == COLDLOOP_STATUS_OK);
    return session;
}

/* The text of a session, to be freed. */
static char *stored(const void *session)
{
    char *text = malloc(COLDLOOP_ANSWER_MAX);
    size_t length = 0;
    CHECK(coldloop_session_text(session, NULL, text, COLDLOOP_ANSWER_MAX, &length, NULL) == COLDLOOP_STATUS_OK);
    CHECK(length > 100 && length < COLDLOOP_ANSWER_MAX);
    return text;
}

static int same(const void *session, const char *text)
{
    char *now = stored(session);
    const int equal = strcmp(now, text) == 0;
    free(now);
    return equal;
}

static double odds_of(const void *session, uint32_t fault)
{
    coldloop_ranked_fault faults[64];
    size_t count = 0;
    CHECK(coldloop_session_odds(session, faults, 64, &count, NULL) == COLDLOOP_STATUS_OK && count > 15 && count < 64);
    for (size_t i = 0; i < count; i++)
        if (faults[i].fault == fault)
            return faults[i].probability;
    return 0.0;
}

static void beginnings(void)
{
    const size_t size = coldloop_session_size();
    unsigned char *memory = calloc(1, size);
    coldloop_vehicle_system wrong = van;
    coldloop_conditions hot = yard;
    uint32_t undone = 9;
    char refusal[512];
    size_t length = 0;

    CHECK(coldloop_session_init(NULL, size, &van, &yard, NULL, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(coldloop_session_init(memory, size - 1, &van, &yard, NULL, NULL) == COLDLOOP_STATUS_STRUCT_SIZE);
    CHECK(coldloop_session_init(memory, size, NULL, &yard, NULL, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    CHECK(coldloop_session_init(memory, size, &van, NULL, NULL, NULL) == COLDLOOP_STATUS_NULL_POINTER);
    wrong.refrigerant = 999;
    CHECK(coldloop_session_init(memory, size, &wrong, &yard, NULL, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME);
    wrong = van, wrong.sight_glass = 3;
    CHECK(coldloop_session_init(memory, size, &wrong, &yard, NULL, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    hot.ambient_k = 900.0;
    CHECK(coldloop_session_init(memory, size, &van, &hot, NULL, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(coldloop_session_init(memory, size, &van, &yard, "{\"named\": 2}", NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(coldloop_session_undo(memory, &undone, NULL) == COLDLOOP_STATUS_NOT_INITIALISED && undone == 0);
    CHECK(coldloop_session_from_text(memory, size, "[system]\n", refusal, sizeof refusal, &length, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(strncmp(refusal, "{\"refused\":", 11) == 0 && length > 11);
    CHECK(coldloop_session_undo(memory, &undone, NULL) == COLDLOOP_STATUS_NOT_INITIALISED);
    CHECK(coldloop_session_init(memory, size, &van, &yard, "{\"named\": 0.8}", NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_undo(memory, &undone, NULL) == COLDLOOP_STATUS_OK && undone == 0);
    free(memory);
}

static void steps(void)
{
    void *session = session_of_van();
    coldloop_standing standing = {.size = sizeof standing};
    coldloop_next_step next = {.size = sizeof next};
    coldloop_conditions fast = yard;
    uint32_t undone = 9;

    CHECK(coldloop_session_standing(session, &standing, NULL) == COLDLOOP_STATUS_OK);
    CHECK(standing.verdict == COLDLOOP_VERDICT_CANNOT_TELL && standing.undoable == 2 && standing.after_repair == 0);
    CHECK(standing.named_count > 1 && standing.named_count <= COLDLOOP_MOST_NAMED && standing.named[0] != 0);
    CHECK(coldloop_session_next(session, &next, NULL) == COLDLOOP_STATUS_OK);
    CHECK(next.check != 0 && next.repair == 0 && next.hand_over == 0 && next.minutes > 0.0);
    CHECK((next.reading != 0) != (next.observation != 0));
    CHECK(next.caution_count > 0 && next.caution_count <= COLDLOOP_MOST_CAUTIONS && coldloop_caution_name(next.cautions[0]) != NULL);

    /* Each kind of step, what it does, and back to the same text. */
    char *texts[6];
    texts[0] = stored(session);
    CHECK(coldloop_session_add_observation(session, COLDLOOP_OBSERVATION_OIL_TRACES, 1, NULL) == COLDLOOP_STATUS_OK);
    texts[1] = stored(session);
    fast.engine_speed_hz = 25.0;
    CHECK(coldloop_session_set_conditions(session, &fast, NULL) == COLDLOOP_STATUS_OK);
    texts[2] = stored(session);
    CHECK(coldloop_session_add_outcome(session, COLDLOOP_CHECK_TURN_HUB, COLDLOOP_RESULT_KIND_YES,
                                       COLDLOOP_OBSERVATION_HUB_TURNS_FREELY, NULL) == COLDLOOP_STATUS_OK);
    texts[3] = stored(session);
    CHECK(coldloop_session_add_repair(session, COLDLOOP_FAULT_OVERCHARGE, 0, NULL) == COLDLOOP_STATUS_OK);
    CHECK(odds_of(session, COLDLOOP_FAULT_OVERCHARGE) == 0.0);
    texts[4] = stored(session);
    CHECK(coldloop_session_add_repair(session, COLDLOOP_FAULT_WORN_COMPRESSOR, 1, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_standing(session, &standing, NULL) == COLDLOOP_STATUS_OK && standing.after_repair == 1);
    texts[5] = stored(session);

    /* A refused step leaves the session unchanged. */
    CHECK(coldloop_session_add_reading(session, 99, COLDLOOP_DATUM_GAUGE, 1e5, 1e3, NULL) == COLDLOOP_STATUS_UNKNOWN_NAME);
    CHECK(coldloop_session_add_reading(session, COLDLOOP_READING_KIND_LOW_SIDE, 9, 1e5, 1e3, NULL) == COLDLOOP_STATUS_MISSING_DATUM);
    CHECK(coldloop_session_add_reading(session, COLDLOOP_READING_KIND_VENT, 0, NAN, 1.0, NULL) == COLDLOOP_STATUS_NOT_FINITE);
    CHECK(coldloop_session_add_reading(session, COLDLOOP_READING_KIND_VENT, 0, 280.0, -1.0, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(coldloop_session_add_reading(session, COLDLOOP_READING_KIND_VENT, 0, 900.0, 1.0, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(coldloop_session_add_observation(session, COLDLOOP_OBSERVATION_OIL_TRACES, 2, NULL) == COLDLOOP_STATUS_OUT_OF_RANGE);
    CHECK(coldloop_session_add_outcome(session, COLDLOOP_CHECK_TURN_HUB, COLDLOOP_RESULT_KIND_YES, 0, NULL)
          == COLDLOOP_STATUS_INCONSISTENT);
    CHECK(coldloop_session_add_outcome(session, COLDLOOP_CHECK_READ_VENT, COLDLOOP_RESULT_KIND_BELOW, 0, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(coldloop_session_add_repair(session, COLDLOOP_FAULT_NO_FAULT, 1, NULL) == COLDLOOP_STATUS_INCONSISTENT);
    fast.ambient_k = NAN;
    CHECK(coldloop_session_set_conditions(session, &fast, NULL) == COLDLOOP_STATUS_NOT_FINITE);
    CHECK(same(session, texts[5]));

    for (int i = 4; i >= 0; i--) {
        CHECK(coldloop_session_undo(session, &undone, NULL) == COLDLOOP_STATUS_OK && undone == 1);
        CHECK(same(session, texts[i]));
    }
    for (int i = 0; i < 6; i++)
        free(texts[i]);
    for (int i = 0; i < 20; i++)
        CHECK(coldloop_session_add_reading(session, COLDLOOP_READING_KIND_VENT, 0, 280.0 + i, 1.0, NULL) == COLDLOOP_STATUS_OK);
    for (undone = 1; undone == 1;)
        coldloop_session_undo(session, &undone, NULL);
    CHECK(coldloop_session_undo(session, &undone, NULL) == COLDLOOP_STATUS_NOT_AVAILABLE);
    free(session);
}

static void texts(void)
{
    void *session = session_of_van();
    char *text = stored(session), *kept = malloc(COLDLOOP_ANSWER_MAX), *begun = malloc(COLDLOOP_ANSWER_MAX);
    void *again = malloc(coldloop_session_size() + 1);
    again = (char *)again + 1;
    CHECK(coldloop_session_from_text(again, coldloop_session_size(), text, NULL, 0, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(same(again, text));
    for (uint32_t fault = 1; coldloop_fault_name(fault) != NULL; fault++)
        CHECK(odds_of(again, fault) == odds_of(session, fault));

    /* What the file keeps beside the session. */
    begun[0] = '\0';
    strcat(strcat(begun, text), "[meta]\n\"work order\" = \"117\"\n");
    CHECK(coldloop_session_from_text(again, coldloop_session_size(), begun, NULL, 0, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_text(again, begun, kept, COLDLOOP_ANSWER_MAX, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(strstr(kept, "117") != NULL && strstr(text, "117") == NULL);
    CHECK(coldloop_session_text(again, "[system]\n", kept, COLDLOOP_ANSWER_MAX, NULL, NULL) == COLDLOOP_STATUS_MISSING);
    free((char *)again - 1);
    free(begun);
    free(kept);
    free(text);
    free(session);
}

static void logs_of_sessions(void)
{
    row rows[SECONDS];
    coldloop_ranked_fault first;
    coldloop_standing standing = {.size = sizeof standing};
    size_t count = 0;
    logged(rows, 0);
    void *recorder = recorder_of(rows), *session = session_of_van(), *empty = malloc(coldloop_recorder_size());
    char *before = stored(session);
    CHECK(coldloop_recorder_init(empty, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_add_log(session, empty, NULL, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(coldloop_session_add_log(session, session, NULL, NULL) == COLDLOOP_STATUS_NOT_INITIALISED);
    CHECK(same(session, before));
    CHECK(coldloop_session_add_log(session, recorder, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_standing(session, &standing, NULL) == COLDLOOP_STATUS_OK && standing.undoable == 4);
    CHECK(coldloop_session_odds(session, &first, 1, &count, NULL) == COLDLOOP_STATUS_OK && count > 1);
    CHECK(first.probability > 0.0 && first.probability <= 1.0);
    CHECK(coldloop_session_odds(session, NULL, 1, &count, NULL) == COLDLOOP_STATUS_NULL_POINTER && count == 0);
    CHECK(coldloop_session_odds(session, NULL, 0, &count, NULL) == COLDLOOP_STATUS_OK && count > 1);
    free(before);
    free(empty);
    free(session);
    free(recorder);
}

/* Idle, then speed, with little pressure difference at both: a worn compressor. Each state alone tells less than both. */
static void states_of_a_log_together(void)
{
    enum { IDLE_S = 300, ROWS = 600 };
    static row rows[ROWS];
    static const uint32_t two[] = {COLDLOOP_CHANNEL_LOW_SIDE, COLDLOOP_CHANNEL_HIGH_SIDE, COLDLOOP_CHANNEL_VENT, COLDLOOP_CHANNEL_ENGINE_SPEED};
    coldloop_ranked_fault alone[32], both[32];
    coldloop_standing standing = {.size = sizeof standing}, again = {.size = sizeof again};
    size_t count = 0, count_both = 0;
    void *recorder = malloc(coldloop_recorder_size()), *session = malloc(coldloop_session_size()), *none = malloc(coldloop_recorder_size());
    for (int s = 0; s < ROWS; s++) {
        const int idles = s < IDLE_S;
        const row now = {s, idles ? 390e3 : 330e3, idles ? 850e3 : 1000e3, idles ? 289.0 : 287.0, idles ? 13.3 : 33.3, 1.0};
        rows[s] = now;
    }
    CHECK(coldloop_session_init(session, coldloop_session_size(), &van, &yard, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_recorder_init(recorder, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_recorder_init(none, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_log_standing(session, none, NULL, &standing, NULL) == COLDLOOP_STATUS_MISSING);
    CHECK(standing.verdict == 0 && isnan(standing.none_of_these));
    CHECK(coldloop_recorder_push(recorder, IDLE_S, &rows[0].time_s, sizeof rows[0], 4, two, &rows[0].low_pa, sizeof rows[0], sizeof(double), NULL)
          == COLDLOOP_STATUS_OK);

    /* With one state it is what the session says of a log that was added. */
    CHECK(coldloop_session_log_odds(session, recorder, NULL, both, 32, &count_both, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_log_standing(session, recorder, NULL, &standing, NULL) == COLDLOOP_STATUS_OK && standing.undoable == 0);
    CHECK(coldloop_session_add_log(session, recorder, NULL, NULL) == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_odds(session, alone, 32, &count, NULL) == COLDLOOP_STATUS_OK && count == count_both);
    for (size_t at = 0; at < count; at++)
        CHECK(alone[at].fault == both[at].fault && alone[at].probability == both[at].probability);
    CHECK(coldloop_session_standing(session, &again, NULL) == COLDLOOP_STATUS_OK && again.verdict == standing.verdict);

    /* With two it says more. */
    CHECK(coldloop_recorder_push(recorder, ROWS - IDLE_S, &rows[IDLE_S].time_s, sizeof rows[0], 4, two, &rows[IDLE_S].low_pa, sizeof rows[0],
                                 sizeof(double), NULL)
          == COLDLOOP_STATUS_OK);
    CHECK(coldloop_session_log_odds(session, recorder, NULL, both, 32, &count_both, NULL) == COLDLOOP_STATUS_OK);
    CHECK(both[0].fault == COLDLOOP_FAULT_WORN_COMPRESSOR && both[0].probability > odds_of(session, COLDLOOP_FAULT_WORN_COMPRESSOR));
    CHECK(coldloop_session_log_odds(session, recorder, NULL, NULL, 1, &count, NULL) == COLDLOOP_STATUS_NULL_POINTER && count == 0);
    CHECK(coldloop_session_log_odds(recorder, recorder, NULL, both, 32, &count, NULL) == COLDLOOP_STATUS_NOT_INITIALISED && count == 0);
    free(none);
    free(session);
    free(recorder);
}

int main(void)
{
    recorders();
    beginnings();
    steps();
    texts();
    logs_of_sessions();
    states_of_a_log_together();
    return checks_end();
}
