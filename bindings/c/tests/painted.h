/* Measures the stack that a function uses: it runs in a thread whose stack was filled with a pattern. */

#ifndef PAINTED_H
#define PAINTED_H

#include "check.h"

#include <pthread.h>
#include <stdlib.h>
#include <string.h>

enum { STACK = 1 << 20, PATTERN = 0xa5 };

/* Bytes of a stack that a function leaves changed. */
static size_t stack_used(void *(*function)(void *), void *given)
{
    void *stack = NULL;
    pthread_attr_t attributes;
    pthread_t thread;
    size_t untouched = 0;
    CHECK(posix_memalign(&stack, 4096, STACK) == 0);
    memset(stack, PATTERN, STACK);
    CHECK(pthread_attr_init(&attributes) == 0);
    CHECK(pthread_attr_setstack(&attributes, stack, STACK) == 0);
    CHECK(pthread_create(&thread, &attributes, function, given) == 0);
    CHECK(pthread_join(thread, NULL) == 0);
    CHECK(pthread_attr_destroy(&attributes) == 0);
    while (untouched < STACK && ((unsigned char *)stack)[untouched] == PATTERN) {
        untouched++;
    }
    free(stack);
    return STACK - untouched;
}

#endif
