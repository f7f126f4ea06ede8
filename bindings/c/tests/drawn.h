/* Numbers, codes, sizes and pointers drawn at random for every entry point, and the checks of what comes back. */

#ifndef DRAWN_H
#define DRAWN_H

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

/* A double of any bits, one with a random exponent, or one between `low` and `high`. */
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

/* Members of each vocabulary; the draw goes a little beyond the last one. */
enum { REFRIGERANTS = 57, REFERENCES = 3 };

static uint32_t code(uint32_t known)
{
    return one_in(8) ? (uint32_t)bits() : (uint32_t)(bits() >> 7) % (known + 2);
}

/* A stride in bytes: of a double, or from -24 to 24, so that it may be negative, 0 or not a multiple of a double's size. */
static ptrdiff_t stride(void)
{
    return one_in(2) ? (ptrdiff_t)sizeof(double) : (ptrdiff_t)(bits() % 49) - 24;
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

/* Whether the status is one that may come back, and agrees with the details and with whether there is an answer. */
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

#endif
