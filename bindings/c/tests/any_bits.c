/* Any bits at every entry point: an answer that is finite, or a status and NaN; never a trap, never a hang. */

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

/* Half of them any double at all, half of them within reach of a physical quantity. */
static double any_double(void)
{
    double x;
    const uint64_t b = bits();
    memcpy(&x, &b, sizeof x);
    return b & 1 ? x : ldexp((double)(b >> 11), (int)(bits() % 40) - 60);
}

static uint32_t any_code(void)
{
    return bits() & 1 ? (uint32_t)(bits() % 40) : (uint32_t)bits();
}

static int told(uint32_t status, double answer, const coldloop_error *error)
{
    const int answered = status == COLDLOOP_STATUS_OK;
    return answered == (isfinite(answer) != 0) && (answered || isnan(answer)) && status == error->status
        && status < COLDLOOP_STATUS_NULL_POINTER;
}

int main(int count, char *argument[])
{
    const long rounds = count > 1 ? atol(argument[1]) : 200000;
    char message[64];
    double answer, in[4], out[4];
    long all_wrong = 0;
    size_t failed;
    coldloop_error error;
    error.size = sizeof error;
    for (long round = 0; round < rounds; round++) {
        const double x = any_double(), y = any_double();
        const uint32_t code = any_code();
        uint32_t status;
        long wrong = 0;
        status = coldloop_standard_pressure(x, &answer, &error);
        wrong += !told(status, answer, &error);
        status = coldloop_absolute_pressure(x, y, &answer, &error);
        wrong += !told(status, answer, &error);
        status = coldloop_bubble_pressure(code, x, &answer, &error);
        wrong += !told(status, answer, &error);
        status = coldloop_dew_pressure(code, x, &answer, &error);
        wrong += !told(status, answer, &error);
        status = coldloop_bubble_temperature(code, x, &answer, &error);
        wrong += !told(status, answer, &error);
        status = coldloop_dew_temperature(code, x, &answer, &error);
        wrong += !told(status, answer, &error);
        status = coldloop_superheat(code, x, code % 4, y, any_double(), &answer, &error);
        wrong += !told(status, answer, &error);
        status = coldloop_subcooling(code, x, code % 4, y, any_double(), &answer, &error);
        wrong += !told(status, answer, &error);
        for (int i = 0; i < 4; i++)
            in[i] = any_double();
        coldloop_dew_pressures(code, 4, in, sizeof in[0], out, sizeof out[0], &failed, &error);
        for (int i = 0; i < 4; i++)
            failed -= isnan(out[i]) != 0;
        wrong += failed != 0;
        error.status = code;
        error.quantity = any_code();
        error.value = x;
        wrong += coldloop_error_message(&error, message, code % sizeof message) == 0;
        wrong += coldloop_status_text(code) == NULL;
        coldloop_quantity_name(code);
        coldloop_refrigerant_name(code);
        if (wrong != 0 && all_wrong++ < 10)
            printf("round %ld: code %lu, x %a, y %a\n", round, (unsigned long)code, x, y);
    }
    CHECK(all_wrong == 0);
    return checks_end();
}
