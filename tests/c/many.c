/* Every array function against its single twin: operands apart, interleaved, backwards, shared, in place and unaligned. */

#include <stdlib.h>
#include <string.h>

#include "expect.h"
#include "generated_dispatch.h"

enum { COUNT = 150, PLACES = 2 * MOST_OPERANDS };

/* What single calls give for the same points. */
struct answer {
    double out[COUNT][MOST_OPERANDS];
    int32_t status[COUNT];
    size_t failures;
};

/* Near the documented example; every seventh point has a NaN, every eleventh an infinity, in one of its numbers. */
static void point(const struct dispatch *function, int index, double *in)
{
    for (int argument = 0; argument < function->inputs; argument++) {
        in[argument] = function->example[argument];
        if (function->kinds[argument] == 'n')
            in[argument] += (in[argument] != 0.0 ? in[argument] : 1.0) * 1e-3 * ((index * (argument + 3)) % 17);
    }
    int chosen = index % function->inputs;
    if (function->kinds[chosen] == 'n' && index % 7 == 6)
        in[chosen] = NAN;
    if (function->kinds[chosen] == 'n' && index % 11 == 10)
        in[chosen] = INFINITY;
}

static void single(const struct dispatch *function, double in[COUNT][MOST_OPERANDS], struct answer *answer)
{
    answer->failures = 0;
    for (int index = 0; index < COUNT; index++) {
        answer->status[index] = function->call(in[index], answer->out[index]);
        answer->failures += answer->status[index] != LUBBER_OK;
    }
}

/* A function with a loop of its own over arrays may round otherwise than its single call, as its documentation says. */
static int same(const struct dispatch *function, double one, double other)
{
    if (one == other || (isnan(one) && isnan(other)))
        return 1;
    return function->own_loop && fabs(one - other) <= 1e-11 * fmax(fabs(one), 1.0);
}

/* Runs the array function on a layout and compares; the memory starts `shift` bytes off. */
static void compare(const struct dispatch *function, double in[COUNT][MOST_OPERANDS], const struct answer *answer, int backwards,
                    int columns, size_t shift, int in_place)
{
    static char memory[(COUNT * PLACES + 1) * sizeof(double)];
    const double *inputs[MOST_OPERANDS];
    double *outputs[MOST_OPERANDS];
    ptrdiff_t input_strides[MOST_OPERANDS], output_strides[MOST_OPERANDS];
    int32_t status[COUNT];
    char *places[PLACES];
    ptrdiff_t stride = (ptrdiff_t)sizeof(double) * (columns ? 1 : PLACES);
    for (int place = 0; place < PLACES; place++) {
        places[place] = memory + shift + sizeof(double) * (size_t)(columns ? place * COUNT : place);
        if (backwards)
            places[place] += stride * (COUNT - 1);
    }
    if (backwards)
        stride = -stride;
    memset(memory, 0, sizeof memory);
    for (int argument = 0; argument < function->inputs; argument++) {
        for (int index = 0; index < COUNT; index++)
            memcpy(places[argument] + stride * index, &in[index][argument], sizeof(double));
        /* The caller of the array function reads the code of a choice itself, so that one stays aligned. */
        int is_code = function->kinds[argument] == 'c';
        inputs[argument] = is_code ? &in[0][argument] : (const double *)(void *)places[argument];
        input_strides[argument] = stride;
    }
    for (int output = 0; output < function->outputs; output++) {
        /* In place: the first outputs go where the inputs were. */
        int place = in_place ? output : function->inputs + output;
        outputs[output] = (double *)(void *)places[place];
        output_strides[output] = stride;
    }
    EXPECT(function->many(COUNT, inputs, input_strides, outputs, output_strides, status) == answer->failures);
    for (int index = 0; index < COUNT; index++) {
        EXPECT(status[index] == answer->status[index]);
        for (int output = 0; output < function->outputs; output++) {
            double value;
            memcpy(&value, (char *)(void *)outputs[output] + stride * index, sizeof value);
            EXPECT(same(function, value, answer->out[index][output]));
        }
    }
}

/* One value for all points, no status wanted, and no output wanted. */
static void shared(const struct dispatch *function)
{
    double expected[MOST_OPERANDS], out[MOST_OPERANDS][COUNT];
    const double *inputs[MOST_OPERANDS];
    double *outputs[MOST_OPERANDS], *nowhere[MOST_OPERANDS] = {NULL};
    ptrdiff_t still[MOST_OPERANDS] = {0}, strides[MOST_OPERANDS];
    EXPECT(function->call(function->example, expected) == LUBBER_OK);
    for (int place = 0; place < MOST_OPERANDS; place++) {
        inputs[place] = &function->example[place];
        outputs[place] = out[place];
        strides[place] = sizeof(double);
    }
    EXPECT(function->many(COUNT, inputs, still, outputs, strides, NULL) == 0);
    EXPECT(function->many(COUNT, inputs, still, nowhere, strides, NULL) == 0);
    EXPECT(function->many(0, inputs, still, nowhere, strides, NULL) == 0);
    for (int output = 0; output < function->outputs; output++)
        for (int index = 0; index < COUNT; index++)
            EXPECT(same(function, out[output][index], expected[output]));
}

int main(void)
{
    static double in[COUNT][MOST_OPERANDS];
    static struct answer answer;
    for (size_t which = 0; which < DISPATCH_COUNT; which++) {
        const struct dispatch *function = &DISPATCH[which];
        for (int index = 0; index < COUNT; index++)
            point(function, index, in[index]);
        single(function, in, &answer);
        for (int layout = 0; layout < 16; layout++)
            compare(function, in, &answer, layout & 1, (layout & 2) != 0, layout & 4 ? 3 : 0, (layout & 8) != 0);
        shared(function);
    }
    return expect_close();
}
