/* What the C tests share: a check that counts, and a closing line. */

#ifndef EXPECT_H
#define EXPECT_H

#include <math.h>
#include <stdio.h>

#include "lubberline.h"

static int expect_checks = 0;
static int expect_failures = 0;

static inline void expect_true(int holds, const char *what, int line)
{
    expect_checks++;
    if (!holds) {
        expect_failures++;
        printf("line %d: %s does not hold\n", line, what);
    }
}

static inline void expect_near(double value, double expected, double tolerance, const char *what, int line)
{
    expect_checks++;
    /* A NaN fails every comparison, so the test is for what must hold. */
    if (!(fabs(value - expected) <= tolerance)) {
        expect_failures++;
        printf("line %d: %s is %.12g, expected %.12g within %g\n", line, what, value, expected, tolerance);
    }
}

static inline int expect_close(void)
{
    printf("%d passed, %d failed\n", expect_checks - expect_failures, expect_failures);
    return expect_failures != 0 || expect_checks == 0;
}

#define EXPECT(condition) expect_true((condition) != 0, #condition, __LINE__)
#define EXPECT_NEAR(value, expected, tolerance) expect_near((value), (expected), (tolerance), #value, __LINE__)

#endif
