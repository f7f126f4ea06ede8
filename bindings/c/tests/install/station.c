/* A small project that finds the installed library: it compares the versions of header and library and asks for a
 * pressure. */

#include <coldloop.h>
#include <stdio.h>
#include <string.h>

int main(void)
{
    char header[32];
    double pa = 0.0;
    snprintf(header, sizeof header, "%d.%d.%d", COLDLOOP_VERSION_MAJOR, COLDLOOP_VERSION_MINOR, COLDLOOP_VERSION_PATCH);
    if (strcmp(header, coldloop_version()) != 0) {
        printf("the header is %s, the library %s\n", header, coldloop_version());
        return 1;
    }
    if (coldloop_dew_pressure(COLDLOOP_REFRIGERANT_R134A, 273.15, &pa, NULL) != COLDLOOP_STATUS_OK)
        return 1;
    printf("coldloop %s: %.0f Pa\n", header, pa);
    return pa > 292e3 && pa < 293e3 ? 0 : 1;
}
