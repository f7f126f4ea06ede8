/* Every row of tests/cases/functions.csv through the C door; the Rust and Python doors run the same file. */

#include "check.h"
#include "coldloop.h"

#include <inttypes.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

/* Cuts the line at its commas; an empty field stays an empty field. */
static int fields(char *line, char *field[], int count)
{
    int n = 0;
    line[strcspn(line, "\r\n")] = '\0';
    while (line != NULL && n < count) {
        char *comma = strchr(line, ',');
        field[n++] = line;
        if (comma != NULL)
            *comma++ = '\0';
        line = comma;
    }
    return n;
}

static uint32_t call(const char *function, uint32_t refrigerant, double x, double y, double *answer)
{
    if (strcmp(function, "standard_pressure") == 0)
        return coldloop_standard_pressure(x, answer, NULL);
    if (strcmp(function, "absolute_pressure") == 0)
        return coldloop_absolute_pressure(x, y, answer, NULL);
    if (strcmp(function, "bubble_pressure") == 0)
        return coldloop_bubble_pressure(refrigerant, x, answer, NULL);
    if (strcmp(function, "dew_pressure") == 0)
        return coldloop_dew_pressure(refrigerant, x, answer, NULL);
    if (strcmp(function, "bubble_temperature") == 0)
        return coldloop_bubble_temperature(refrigerant, x, answer, NULL);
    if (strcmp(function, "dew_temperature") == 0)
        return coldloop_dew_temperature(refrigerant, x, answer, NULL);
    if (strcmp(function, "superheat") == 0)
        return coldloop_superheat(refrigerant, x, COLDLOOP_DATUM_ABSOLUTE, y, 0.0, answer, NULL);
    if (strcmp(function, "subcooling") == 0)
        return coldloop_subcooling(refrigerant, x, COLDLOOP_DATUM_ABSOLUTE, y, 0.0, answer, NULL);
    printf("%s is not a case\n", function);
    return UINT32_MAX;
}

int main(void)
{
    char line[256];
    char *field[6];
    FILE *file = fopen("tests/cases/functions.csv", "r");
    CHECK(file != NULL);
    if (file == NULL || fgets(line, sizeof line, file) == NULL)
        return 1;
    while (fgets(line, sizeof line, file) != NULL) {
        uint32_t refrigerant = 0, status;
        double answer = 0.0;
        uint64_t bits;
        CHECK(fields(line, field, 6) == 6);
        if (*field[1] != '\0')
            CHECK(coldloop_refrigerant_from_name(field[1], &refrigerant, NULL) == COLDLOOP_STATUS_OK);
        status = call(field[0], refrigerant, strtod(field[2], NULL), strtod(field[3], NULL), &answer);
        memcpy(&bits, &answer, sizeof bits);
        CHECK(status == strtoul(field[4], NULL, 10));
        if (status == COLDLOOP_STATUS_OK)
            CHECK(bits == strtoull(field[5], NULL, 16));
        else
            CHECK(isnan(answer));
    }
    fclose(file);
    CHECK(checks_passed > 300);
    return checks_end();
}
