/* The header says that nothing is allocated: every function on numbers, and the course change, is watched, with good numbers
 * and bad ones, alone and on arrays. */

#include <stdlib.h>
#include <string.h>

#include "expect.h"
#include "generated_dispatch.h"

/* The linker sends every call here (--wrap), those of the library too. */
static unsigned long allocations = 0;

void *__real_malloc(size_t size);
void *__real_calloc(size_t count, size_t size);
void *__real_realloc(void *old, size_t size);
int __real_posix_memalign(void **memory, size_t alignment, size_t size);
void *__wrap_malloc(size_t size);
void *__wrap_calloc(size_t count, size_t size);
void *__wrap_realloc(void *old, size_t size);
int __wrap_posix_memalign(void **memory, size_t alignment, size_t size);

void *__wrap_malloc(size_t size)
{
    allocations++;
    return __real_malloc(size);
}

void *__wrap_calloc(size_t count, size_t size)
{
    allocations++;
    return __real_calloc(count, size);
}

void *__wrap_realloc(void *old, size_t size)
{
    allocations++;
    return __real_realloc(old, size);
}

int __wrap_posix_memalign(void **memory, size_t alignment, size_t size)
{
    allocations++;
    return __real_posix_memalign(memory, alignment, size);
}

/* Allocations while a function runs on a set of arguments, by itself and over an array. */
static unsigned long while_running(const struct dispatch *function, const double *in)
{
    enum { COUNT = 200 };
    static double out[MOST_OPERANDS][COUNT];
    static int32_t status[COUNT];
    const double *inputs[MOST_OPERANDS];
    double single[MOST_OPERANDS], *outputs[MOST_OPERANDS];
    ptrdiff_t still[MOST_OPERANDS] = {0}, strides[MOST_OPERANDS];
    for (int place = 0; place < MOST_OPERANDS; place++) {
        inputs[place] = &in[place];
        outputs[place] = out[place];
        strides[place] = sizeof(double);
    }
    unsigned long before = allocations;
    lubber_status_text(function->call(in, single));
    function->many(COUNT, inputs, still, outputs, strides, status);
    return allocations - before;
}

/* Allocations while a flight is steered by every law, stepped and looked at, as a simulator's loop does it. */
static unsigned long while_flying(void)
{
    struct lubber_flight_start start;
    struct lubber_flight_state state = {.struct_size = sizeof state};
    struct lubber_flight *flight = NULL;
    EXPECT(lubber_flight_start_init(&start, sizeof start) == LUBBER_OK);
    start.latitude_deg = 59.8;
    start.longitude_deg = start.station_longitude_deg = -20.0;
    start.station_latitude_deg = 60.0;
    start.altitude_ft = 9000.0;
    start.heading_deg = 0.0;
    start.true_airspeed_kt = 240.0;
    EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK);
    unsigned long before = allocations;
    EXPECT(lubber_flight_set_wind_levels(flight, 5000.0, 250.0, 20.0, 12000.0, 290.0, 40.0) == LUBBER_OK);
    EXPECT(lubber_flight_climb_to(flight, 10000.0, 500.0) == LUBBER_OK);
    for (int law = 0; law < 7; law++) {
        int32_t status = law == 0   ? lubber_flight_hold_heading(flight, 10.0)
                         : law == 1 ? lubber_flight_track(flight, 0.0, 4.0)
                         : law == 2 ? lubber_flight_intercept(flight, 0.0, 30.0, 4.0)
                         : law == 3 ? lubber_flight_turn_at_station(flight, 0.0, 70.0)
                         : law == 4 ? lubber_flight_arc(flight, 12.0, LUBBER_ARC_SENSE_CLOCKWISE)
                         : law == 5 ? lubber_flight_hold(flight, 0.0, LUBBER_HOLDING_SIDE_RIGHT, LUBBER_HOLDING_ENTRY_OFFSET, 180.0, 60.0)
                                    : lubber_flight_hold_by_dme(flight, 0.0, LUBBER_HOLDING_SIDE_LEFT, LUBBER_HOLDING_ENTRY_PARALLEL, 180.0, 9.0);
        EXPECT(status == LUBBER_OK);
        for (int frame = 0; frame < 1800; frame++) {
            EXPECT(lubber_flight_step(flight, 1.0 / 60.0) == LUBBER_OK);
            EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
        }
    }
    EXPECT(lubber_flight_tune(flight, 60.5, -19.0, 300.0, -7.0, 40.0) == LUBBER_OK);
    EXPECT(lubber_flight_track(flight, NAN, 4.0) < 0);
    unsigned long used = allocations - before;
    lubber_flight_free(flight);
    return used;
}

int main(void)
{
    /* The watch itself works. */
    void *volatile some = malloc(1);
    EXPECT(allocations == 1);
    free(some);
    for (size_t index = 0; index < DISPATCH_COUNT; index++) {
        const struct dispatch *function = &DISPATCH[index];
        double in[MOST_OPERANDS];
        memcpy(in, function->example, sizeof in);
        EXPECT(while_running(function, in) == 0);
        for (int argument = 0; argument < function->inputs; argument++) {
            in[argument] = function->kinds[argument] == 'c' ? 99.0 : INFINITY;
            EXPECT(while_running(function, in) == 0);
            in[argument] = function->example[argument];
        }
    }
    struct lubber_course_change_input input;
    struct lubber_course_change_result result;
    result.struct_size = sizeof result;
    lubber_course_change_input_init(&input, sizeof input);
    input.inbound_course_deg = 350.0;
    input.outbound_course_deg = 50.0;
    input.true_airspeed_kt = 430.0;
    input.wind_speed_kt = 60.0;
    unsigned long before = allocations;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_OK);
    input.wind_speed_kt = 600.0;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_ERROR_WIND_TOO_STRONG);
    EXPECT(allocations == before);
    EXPECT(while_flying() == 0);
    return expect_close();
}
