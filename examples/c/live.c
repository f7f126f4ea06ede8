/* A log from an array, and a visit that it begins: what the log says, and the step that a technician is sent to do, without any
 * JSON. Build it from the root of the project:
 * cargo build --release -p coldloop-c
 * cc -Ibindings/c examples/c/live.c target/release/libcoldloop_c.a -lm -lpthread -ldl -o target/live && target/live
 * The van is invented, of a municipal fleet garage at 1,600 m.
 */
#include "coldloop.h"
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

enum { SECONDS = 300, CHANNELS = 4 };

int main(void)
{
    static double times[SECONDS], values[SECONDS][CHANNELS];
    const uint32_t channels[CHANNELS] = {COLDLOOP_CHANNEL_LOW_SIDE, COLDLOOP_CHANNEL_HIGH_SIDE, COLDLOOP_CHANNEL_VENT,
                                         COLDLOOP_CHANNEL_ENGINE_SPEED};
    const coldloop_vehicle_system van = {.size = sizeof van,
                                         .refrigerant = COLDLOOP_REFRIGERANT_R134A,
                                         .expansion = COLDLOOP_EXPANSION_TXV,
                                         .compressor = COLDLOOP_COMPRESSOR_FIXED_CLUTCH,
                                         .nominal_charge_kg = 0.85,
                                         .high_cut_out_pa_gauge = NAN};
    coldloop_conditions yard = {.size = sizeof yard, .ambient_k = 297.15, .relative_humidity = NAN, .engine_speed_hz = NAN,
                                .blower = NAN, .vehicle_speed_m_s = NAN, .running_s = NAN, .compressor_speed_hz = NAN,
                                .commanded_displacement = NAN, .fan_command = NAN};
    coldloop_log_summary summary = {.size = sizeof summary};
    coldloop_next_step next = {.size = sizeof next};
    coldloop_standing standing = {.size = sizeof standing};
    coldloop_ranked_fault faults[3];
    size_t count = 0;

    /* Little pressure difference, and a vent that hardly cools: Pa above the surrounding air, K, revolutions per second. */
    for (int s = 0; s < SECONDS; s++) {
        times[s] = s;
        values[s][0] = 430e3 + 4e3 * sin(0.7 * s);
        values[s][1] = 810e3 + 6e3 * sin(0.9 * s);
        values[s][2] = 288.0 + 8.0 * exp(-s / 30.0);
        values[s][3] = 25.0;
    }
    void *recorder = malloc(coldloop_recorder_size()), *session = malloc(coldloop_session_size());
    if (recorder == NULL || session == NULL || coldloop_standard_pressure(1600.0, &yard.air_pa_abs, NULL) ||
        coldloop_recorder_init(recorder, coldloop_recorder_size(), COLDLOOP_DATUM_GAUGE, NULL) ||
        coldloop_recorder_push(recorder, SECONDS, times, sizeof times[0], CHANNELS, channels, &values[0][0], sizeof values[0],
                               sizeof values[0][0], NULL) ||
        coldloop_recorder_summary(recorder, &summary, NULL))
        return 1;
    printf("%.0f s: %s, wait %.0f s more\n", summary.elapsed_s, coldloop_log_phase_name(summary.phase), summary.wait_s);

    if (coldloop_session_init(session, coldloop_session_size(), &van, &yard, NULL, NULL) ||
        coldloop_session_log_standing(session, recorder, NULL, &standing, NULL) ||
        coldloop_session_log_odds(session, recorder, NULL, faults, 3, &count, NULL) ||
        coldloop_session_add_log(session, recorder, NULL, NULL) || coldloop_session_next(session, &next, NULL))
        return 1;
    printf("%s\n", coldloop_verdict_name(standing.verdict));
    for (size_t i = 0; i < count && i < 3; i++)
        printf("  %3.0f %%  %s\n", 100.0 * faults[i].probability, coldloop_fault_name(faults[i].fault));
    for (uint32_t i = 0; i < next.caution_count; i++)
        printf("careful: %s\n", coldloop_caution_name(next.cautions[i]));
    if (next.check != 0)
        printf("next: %s, %.0f min\n", coldloop_check_name(next.check), next.minutes);
    else if (next.repair != 0)
        printf("next: set right %s, %.0f min\n", coldloop_fault_name(next.repair), next.minutes);
    else
        printf("%s\n", next.hand_over ? "next: hand over" : "nothing is left to do");

    /* The answer to the question of the step; a wrong answer is undone. */
    if (next.observation != 0) {
        uint32_t undone = 0;
        if (coldloop_session_add_observation(session, next.observation, 1, NULL) || coldloop_session_undo(session, &undone, NULL))
            return 1;
        printf("answered %s, and taken back: %u step\n", coldloop_observation_name(next.observation), undone);
    }
    free(session);
    free(recorder);
    return 0;
}
