/* Every function with every kind of bad number in every argument: never a crash, NaN or an honest number, and a status. */

#include <float.h>

#include "expect.h"
#include "generated_dispatch.h"

int main(void)
{
    const double bad[] = {INFINITY, -INFINITY, DBL_MAX, -DBL_MAX, DBL_MIN, -DBL_MIN, 5e-324, 0.0, -0.0, 1e300, -1e300, 1e9, -1e9, 91.0};
    for (size_t index = 0; index < DISPATCH_COUNT; index++) {
        const struct dispatch *function = &DISPATCH[index];
        double in[24], out[24];
        for (int argument = 0; argument < function->inputs; argument++) {
            for (double ordinary = 1.0; ordinary <= 40.0; ordinary += 13.0) {
                for (size_t kind = 0; kind < sizeof bad / sizeof bad[0]; kind++) {
                    for (int other = 0; other < function->inputs; other++)
                        in[other] = ordinary;
                    in[argument] = bad[kind];
                    int32_t status = function->call(in, out);
                    EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL);
                    for (int output = 0; output < function->outputs; output++)
                        EXPECT(status == LUBBER_OK || isnan(out[output]));
                }
            }
        }
    }
    return expect_close();
}
