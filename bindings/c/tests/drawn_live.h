/* Any bits at every entry point: recorders and sessions, in memory that holds one, another, or none. */

#ifndef DRAWN_LIVE_H
#define DRAWN_LIVE_H

#include "drawn_text.h"

static unsigned char a_recorder[16384], a_session[131072];

/* Memory that holds no recorder and no session; the bytes behind a mark are never random. */
static void *other_memory(void)
{
    static unsigned char nothing[64];
    for (size_t i = 0; i < sizeof nothing; i++)
        nothing[i] = (unsigned char)bits();
    return one_in(2) ? NULL : nothing;
}

static void *recorder_memory(void) { return one_in(16) ? other_memory() : a_recorder; }
static void *session_memory(void) { return one_in(16) ? one_in(2) ? (void *)a_recorder : other_memory() : a_session; }

/* A status of the door or of the library, and the same in the details. */
static int returned(uint32_t status)
{
    if (details_too_small())
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    return status != COLDLOOP_STATUS_INTERNAL && coldloop_status_text(status) != NULL && (details == NULL || details->status == status);
}

/* An answer is filled in where the status is OK, and blank where it is not. */
static int filled(uint32_t status, size_t size, size_t whole, int answered, int blank)
{
    if (size < whole || details_too_small())
        return status == COLDLOOP_STATUS_STRUCT_SIZE;
    return returned(status) && (status == COLDLOOP_STATUS_OK ? answered : blank);
}

static coldloop_conditions any_conditions(void)
{
    const coldloop_conditions drawn = {struct_size(sizeof drawn), code(2), one_in(2) ? 0 : code(2), any(280.0, 315.0), any(7e4, 1.05e5), part(),
                                       any(0.0, 60.0), part(), any(0.0, 40.0), any(0.0, 2e3), one_in(2) ? NAN : any(0.0, 60.0),
                                       one_in(2) ? NAN : part(), one_in(2) ? NAN : part()};
    return drawn;
}

static int recorder_begins(void)
{
    const size_t room = one_in(8) ? bits() % coldloop_recorder_size() : sizeof a_recorder;
    void *memory = one_in(8) ? NULL : a_recorder;
    return returned(coldloop_recorder_init(memory, room, one_in(8) ? code(2) : COLDLOOP_DATUM_GAUGE, details));
}

static int recorder_takes(void)
{
    enum { SAMPLES = 40, MOST = 14 };
    static double clock;
    double times[SAMPLES], values[SAMPLES * MOST];
    uint32_t channels[MOST];
    const size_t count = bits() % (SAMPLES + 1), width = bits() % (MOST + 1);
    for (size_t i = 0; i < SAMPLES; i++)
        times[i] = one_in(32) ? any(0.0, 1e4) : (clock += 1.0);
    for (size_t i = 0; i < SAMPLES * MOST; i++)
        values[i] = one_in(4) ? any(0.0, 1e6) : i % MOST < 2 ? any(2e5, 2.1e5) : any(280.0, 290.0);
    for (uint32_t i = 0; i < MOST; i++)
        channels[i] = one_in(32) ? code(13) : i + 1;
    return returned(coldloop_recorder_push(recorder_memory(), count, one_in(16) ? NULL : times, sizeof(double), width,
                                           one_in(16) ? NULL : channels, one_in(16) ? NULL : values, MOST * sizeof(double),
                                           sizeof(double), details));
}

static int recorder_tells(void)
{
    coldloop_log_summary summary;
    memset(&summary, 0x5a, sizeof summary);
    summary.size = struct_size(sizeof summary);
    const uint32_t status = coldloop_recorder_summary(recorder_memory(), &summary, details);
    return filled(status, summary.size, sizeof summary, coldloop_log_phase_name(summary.phase) != NULL && summary.elapsed_s >= 0.0,
                  summary.phase == 0 && isnan(summary.wait_s));
}

static int recorder_states(void)
{
    coldloop_log_state of;
    memset(&of, 0x5a, sizeof of);
    of.size = struct_size(sizeof of);
    const uint32_t status = coldloop_recorder_state(recorder_memory(), one_in(8) ? (size_t)bits() : bits() % 4, &of, details);
    return filled(status, of.size, sizeof of, of.seconds >= 0.0 && of.judged <= 1, isnan(of.seconds) && isnan(of.means[0]));
}

static int recorder_reads(void)
{
    coldloop_estimate read = {0.0, 0.0};
    const coldloop_instruments drawn = {struct_size(sizeof drawn), code(6), code(6), code(6), code(5), code(5)};
    const uint32_t status = coldloop_recorder_reading(recorder_memory(), one_in(2) ? NULL : &drawn, code(11), &read, details);
    uint32_t seen = 9;
    const uint32_t looked = coldloop_recorder_observation(recorder_memory(), code(37), &seen, details);
    return returned(looked) && seen <= 1 && (status == COLDLOOP_STATUS_OK ? isfinite(read.value) && read.standard_uncertainty >= 0.0 : isnan(read.value));
}

static int session_begins(void)
{
    const size_t room = one_in(8) ? bits() % coldloop_session_size() : sizeof a_session;
    const coldloop_vehicle_system system = {struct_size(sizeof system), one_in(2) ? COLDLOOP_REFRIGERANT_R134A : code(REFRIGERANTS), code(2), code(4), code(2),
                                    code(2), one_in(8) ? code(2) : 0, one_in(8) ? code(2) : 0, one_in(2) ? NAN : any(0.3, 2.0),
                                    one_in(2) ? NAN : any(2e6, 3e6)};
    const coldloop_conditions conditions = any_conditions();
    void *memory = one_in(16) ? NULL : a_session;
    return returned(coldloop_session_init(memory, room, &system, &conditions, one_in(2) ? NULL : any_text("{\"named\": 0.8}"), details));
}

static uint32_t session_read(const char *given, char *buffer, size_t capacity, size_t *length, coldloop_error *failure)
{
    return coldloop_session_from_text(a_session, sizeof a_session, given, buffer, capacity, length, failure);
}

static uint32_t session_written(const char *given, char *buffer, size_t capacity, size_t *length, coldloop_error *failure)
{
    if (given == NULL)
        return coldloop_session_text(NULL, given, buffer, capacity, length, failure);
    return coldloop_session_text(a_session, one_in(2) ? NULL : given, buffer, capacity, length, failure);
}

static int session_grows(void)
{
    void *session = session_memory();
    uint32_t undone = 9;
    const coldloop_conditions conditions = any_conditions();
    switch (bits() % 8) {
    case 0: return returned(coldloop_session_add_reading(session, code(11), code(2), one_in(2) ? kelvin() : pascal(), any(0.0, 1e4), details));
    case 1: return returned(coldloop_session_add_log(session, recorder_memory(), NULL, details));
    case 2: return returned(coldloop_session_add_observation(session, code(37), code(2), details));
    case 3: return returned(coldloop_session_add_outcome(session, code(41), code(5), one_in(2) ? 0 : code(37), details));
    case 4: return returned(coldloop_session_set_conditions(session, one_in(16) ? NULL : &conditions, details));
    case 5: return returned(coldloop_session_add_repair(session, code(21), code(2), details));
    default: return returned(coldloop_session_undo(session, &undone, details)) && undone <= 1;
    }
}

static int session_tells(void)
{
    coldloop_standing standing;
    coldloop_next_step next;
    coldloop_ranked_fault faults[32];
    size_t count = 77;
    const size_t capacity = bits() % 33;
    uint32_t status;
    memset(&standing, 0x5a, sizeof standing);
    memset(&next, 0x5a, sizeof next);
    standing.size = struct_size(sizeof standing);
    next.size = struct_size(sizeof next);
    switch (bits() % 5) {
    case 0:
        status = coldloop_session_standing(session_memory(), &standing, details);
        return filled(status, standing.size, sizeof standing, coldloop_verdict_name(standing.verdict) != NULL && standing.none_of_these >= 0.0,
                      standing.verdict == 0 && isnan(standing.none_of_these));
    case 1:
        status = coldloop_session_next(session_memory(), &next, details);
        return filled(status, next.size, sizeof next, (next.check != 0) + (next.repair != 0) + next.hand_over <= 1, next.check == 0 && isnan(next.minutes));
    case 2:
        status = coldloop_session_log_standing(session_memory(), recorder_memory(), NULL, &standing, details);
        return filled(status, standing.size, sizeof standing, coldloop_verdict_name(standing.verdict) != NULL && standing.none_of_these >= 0.0,
                      standing.verdict == 0 && isnan(standing.none_of_these));
    case 3:
        status = coldloop_session_log_odds(session_memory(), recorder_memory(), NULL, one_in(8) ? NULL : faults, capacity, &count, details);
        return returned(status) && (count != 0) == (status == COLDLOOP_STATUS_OK);
    default:
        status = coldloop_session_odds(session_memory(), one_in(8) ? NULL : faults, capacity, &count, details);
        return returned(status) && (count != 0) == (status == COLDLOOP_STATUS_OK);
    }
}

#endif
