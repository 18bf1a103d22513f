/* Every function with every kind of bad number in every argument: never a crash, NaN or an honest number, and a status. */

#include <float.h>
#include <string.h>

#include "expect.h"
#include "generated_dispatch.h"

static const double NUMBERS[] = {INFINITY, -INFINITY, DBL_MAX, -DBL_MAX, DBL_MIN, -DBL_MIN, 5e-324, 0.0,  -0.0, 1e300,
                                 -1e300,   1e9,       -1e9,    91.0,     -91.0,   1e-9,     180.0,  360.0};
static const double CODES[] = {INT32_MIN, INT32_MAX, -2.0, -1.0, 0.0, 1.0, 2.0, 7.0};

/* A failure leaves NaN everywhere; success says nothing of what the numbers are. */
static void check(const struct dispatch *function, const double *in)
{
    double out[MOST_OPERANDS] = {0};
    int32_t status = function->call(in, out);
    EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT);
    EXPECT(strcmp(lubber_status_text(status), lubber_status_text(12345)) != 0);
    for (int output = 0; output < function->outputs; output++)
        EXPECT(status == LUBBER_OK || isnan(out[output]));
}

/* A NaN comes back as NaN, and is no failure. */
static void check_nan(const struct dispatch *function, const double *in)
{
    double out[MOST_OPERANDS] = {0};
    EXPECT(function->call(in, out) == LUBBER_OK);
    for (int output = 0; output < function->outputs; output++)
        EXPECT(isnan(out[output]));
}

int main(void)
{
    for (size_t index = 0; index < DISPATCH_COUNT; index++) {
        const struct dispatch *function = &DISPATCH[index];
        for (int argument = 0; argument < function->inputs; argument++) {
            int is_code = function->kinds[argument] == 'c';
            const double *bad = is_code ? CODES : NUMBERS;
            size_t kinds = is_code ? sizeof CODES / sizeof CODES[0] : sizeof NUMBERS / sizeof NUMBERS[0];
            double in[MOST_OPERANDS];
            memcpy(in, function->example, sizeof in);
            for (size_t kind = 0; kind < kinds; kind++) {
                in[argument] = bad[kind];
                check(function, in);
                /* Two bad ones at once. */
                for (int other = 0; other < function->inputs; other++) {
                    if (other == argument || function->kinds[other] == 'c')
                        continue;
                    for (size_t second = 0; second < sizeof NUMBERS / sizeof NUMBERS[0]; second++) {
                        in[other] = NUMBERS[second];
                        check(function, in);
                    }
                    in[other] = function->example[other];
                }
            }
            if (!is_code) {
                in[argument] = NAN;
                check_nan(function, in);
                /* Even with a wrong code beside it. */
                for (int other = 0; other < function->inputs; other++)
                    if (function->kinds[other] == 'c')
                        in[other] = INT32_MAX;
                check_nan(function, in);
            }
        }
    }
    return expect_close();
}
