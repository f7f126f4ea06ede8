/* Counts the checks that pass and those that fail. */

#ifndef CHECK_H
#define CHECK_H

#include <stdio.h>

static int checks_passed, checks_failed;

#define CHECK(claim)                                                       \
    do {                                                                   \
        if (claim) {                                                       \
            checks_passed++;                                               \
        } else {                                                           \
            checks_failed++;                                               \
            printf("%s:%d: %s\n", __FILE__, __LINE__, #claim);             \
        }                                                                  \
    } while (0)

static int checks_end(void)
{
    printf("test result: %d passed; %d failed\n", checks_passed, checks_failed);
    return checks_failed != 0;
}

#endif
