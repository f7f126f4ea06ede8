/* Any bits at every entry point: texts, sound ones and such as were overwritten, doubled or dropped in part, and the
 * functions that read them or write one. */

#ifndef DRAWN_TEXT_H
#define DRAWN_TEXT_H

#include "drawn.h"

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
    return coldloop_refrigerant_sources(code(REFRIGERANTS), buffer, capacity, length, failure);
}

static uint32_t recorded(const char *given, char *buffer, size_t capacity, size_t *length, coldloop_error *failure)
{
    return coldloop_record(given, readings, code(21), buffer, capacity, length, failure);
}

static const char cases[] =
    "{\"case\": {\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
    " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"}, \"readings\": {\"vent\": \"63 degF\"}},"
    " \"truth\": [{\"fault\": \"worn-compressor\", \"severity\": 0.3}], \"id\": 7, \"group\": \"van\"}\n";

static uint32_t learned(const char *given, char *buffer, size_t capacity, size_t *length, coldloop_error *failure)
{
    if (one_in(2))
        return coldloop_learn(counts, given, buffer, capacity, length, failure);
    return coldloop_evaluate(given, one_in(4) ? "{\"named\": 0.8}" : "", code(3), buffer, capacity, length, failure);
}

static uint32_t drawing(const char *given, char *buffer, size_t capacity, size_t *length, coldloop_error *failure)
{
    return coldloop_picture_svg(given, code(7), buffer, capacity, length, failure);
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

#endif
