/* Two gauges and a thermometer: superheat, and the verdict. Build it from the root of the project:
 * cargo build --release -p coldloop-c
 * cc -Ibindings/c examples/c/gauges.c target/release/libcoldloop_c.a -lm -lpthread -ldl -o target/gauges && target/gauges
 */
#include "coldloop.h"
#include <stdio.h>

int main(void)
{
    double air_pa_abs, superheat_k;
    static char answer[COLDLOOP_ANSWER_MAX];
    const char *readings =
        "{\"system\": {\"refrigerant\": \"R-134a\", \"expansion\": \"txv\", \"compressor\": \"fixed-clutch\"},"
        " \"conditions\": {\"ambient\": \"74 degF\", \"altitude\": \"1600 m\"},"
        " \"readings\": {\"low_side\": \"115 psig\", \"high_side\": \"125 psig\", \"vent\": \"72 degF\"}}";

    if (coldloop_standard_pressure(1600.0, &air_pa_abs, NULL) ||
        coldloop_superheat(COLDLOOP_REFRIGERANT_R134A, 285.15, COLDLOOP_DATUM_GAUGE, 241316.0, air_pa_abs, &superheat_k, NULL) ||
        coldloop_diagnose(readings, answer, sizeof answer, NULL, NULL))
        return 1;
    printf("superheat %.1f K\n%s\n", superheat_k, answer);
    return 0;
}
