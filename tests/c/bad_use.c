/* What a C program may do wrong: null pointers, nothing to do, operands over each other, odd strides and numbers that are none.
 * Never a crash; and where sizes and counts say how far memory reaches, no step beyond, for there lies a page that must not be
 * touched. Every size of a structure is tried in structures.c. */

#define _DEFAULT_SOURCE

#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <unistd.h>

#include "expect.h"

enum { PAGES = 4 };

/* Memory between two pages that must not be touched. */
static unsigned char *low_edge, *high_edge;

static void make_edges(void)
{
    size_t page = (size_t)sysconf(_SC_PAGESIZE);
    unsigned char *whole = mmap(NULL, (PAGES + 2) * page, PROT_NONE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
    if (whole == MAP_FAILED || mprotect(whole + page, PAGES * page, PROT_READ | PROT_WRITE) != 0)
        exit(2);
    low_edge = whole + page;
    high_edge = low_edge + PAGES * page;
}

/* The last `size` bytes before the high edge, filled. */
static void *last(size_t size)
{
    memset(low_edge, 0x55, (size_t)(high_edge - low_edge));
    return high_edge - size;
}

static struct lubber_course_change_input input;
static struct lubber_flight_start start;
static struct lubber_leg legs[3];
static struct lubber_leg_conditions conditions;
static struct lubber_route_fix fixes[3];
static struct lubber_route_conditions on_route;
static struct lubber_error_model errors = {.struct_size = sizeof errors, .dme_nm = 0.1};

static void make_good_ones(void)
{
    EXPECT(lubber_course_change_input_init(&input, sizeof input) == LUBBER_OK);
    input.inbound_course_deg = 350.0;
    input.outbound_course_deg = 50.0;
    input.true_airspeed_kt = 430.0;
    EXPECT(lubber_flight_start_init(&start, sizeof start) == LUBBER_OK);
    start.latitude_deg = 59.8;
    start.longitude_deg = start.station_longitude_deg = -20.0;
    start.altitude_ft = 9000.0;
    start.heading_deg = 0.0;
    start.true_airspeed_kt = 250.0;
    start.station_latitude_deg = 60.0;
    for (int index = 0; index < 3; index++) {
        EXPECT(lubber_leg_init(&legs[index], sizeof legs[index], index == 0 ? 1 : 2) == LUBBER_OK);
        legs[index].fix_latitude_deg = index == 2 ? 60.5 : 60.0 + 0.5 * index;
        legs[index].fix_longitude_deg = index == 2 ? -9.0 : -10.0;
    }
    EXPECT(lubber_leg_conditions_init(&conditions, sizeof conditions, 250.0, 9000.0) == LUBBER_OK);
    for (int index = 0; index < 3; index++)
        EXPECT(lubber_route_fix_init(&fixes[index], sizeof fixes[index], 60.0 + 0.5 * index, index == 2 ? -9.0 : -10.0) == LUBBER_OK);
    EXPECT(lubber_route_conditions_init(&on_route, sizeof on_route, 250.0, 9000.0) == LUBBER_OK);
}

static void null_pointers(void)
{
    struct lubber_course_change_result result = {.struct_size = sizeof result};
    struct lubber_flight_state state = {.struct_size = sizeof state};
    struct lubber_sureness sure = {.struct_size = sizeof sure};
    struct lubber_path_segment segments[9] = {{.struct_size = sizeof segments[0]}};
    size_t count = 7, failed = 7;
    double numbers[9];

    EXPECT(lubber_course_change_input_init(NULL, sizeof input) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_start_init(NULL, sizeof start) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_leg_init(NULL, sizeof legs[0], 1) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_leg_conditions_init(NULL, sizeof conditions, 250.0, 9000.0) == LUBBER_ERROR_STRUCT);

    EXPECT(lubber_course_change(NULL, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_course_change(NULL, &result) == LUBBER_ERROR_STRUCT && isnan(result.lead_nm));
    EXPECT(lubber_course_change(&input, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_course_change_at(NULL, 1.0, NULL, NULL, NULL, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_course_change_at(&input, 1.0, NULL, NULL, NULL, NULL) == LUBBER_OK);
    EXPECT(lubber_course_change_sureness(NULL, &errors, 0.5, 0.9, 10, 1, &sure) == LUBBER_ERROR_STRUCT && isnan(sure.mean_nm));
    EXPECT(lubber_course_change_sureness(&input, NULL, 0.5, 0.9, 10, 1, &sure) == LUBBER_ERROR_STRUCT && isnan(sure.mean_nm));
    EXPECT(lubber_course_change_sureness(&input, &errors, 0.5, 0.9, 10, 1, NULL) == LUBBER_ERROR_STRUCT);

    struct lubber_flight *flight = (struct lubber_flight *)numbers;
    EXPECT(lubber_flight_new(NULL, &flight) == LUBBER_ERROR_STRUCT && flight == NULL);
    EXPECT(lubber_flight_new(&start, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_look(NULL, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_look(NULL, &state) == LUBBER_ERROR_STRUCT && isnan(state.dme_nm));
    EXPECT(lubber_flight_step(NULL, 1.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_hold_heading(NULL, 1.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_turn_at_station(NULL, 0.0, 90.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_track(NULL, 0.0, 4.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_intercept(NULL, 0.0, 30.0, 4.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_arc(NULL, 10.0, 1) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_hold(NULL, 0.0, 1, 3, 180.0, 60.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_hold_by_dme(NULL, 0.0, 1, 3, 180.0, 8.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_climb_to(NULL, 9000.0, 500.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_set_wind(NULL, 0.0, 0.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_set_wind_levels(NULL, 0.0, 0.0, 0.0, 9000.0, 0.0, 0.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_set_airspeed(NULL, 250.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_tune(NULL, 60.0, -20.0, 0.0, 0.0, 90.0) == LUBBER_ERROR_STRUCT);
    lubber_flight_free(NULL);

    EXPECT(lubber_legs_fly(NULL, 3, &conditions, segments, 9, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0 && failed == 0);
    EXPECT(lubber_legs_fly(legs, 3, NULL, segments, 9, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_legs_fly(legs, 3, &conditions, NULL, 9, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 9, NULL, &failed) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count == 3);
    EXPECT(lubber_legs_points(NULL, 3, &conditions, 1.0, numbers, numbers, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_legs_points(legs, 3, NULL, 1.0, numbers, numbers, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    count = 7;
    EXPECT(lubber_legs_points(legs, 3, &conditions, 1.0, NULL, numbers, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_legs_points(legs, 3, &conditions, 1.0, numbers, NULL, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_legs_points(legs, 3, &conditions, 1.0, numbers, numbers, 9, NULL) == LUBBER_ERROR_STRUCT);

    struct lubber_route_leg route_legs[2] = {{.struct_size = sizeof route_legs[0]}};
    struct lubber_route_turn turns[1] = {{.struct_size = sizeof turns[0]}};
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    EXPECT(lubber_route_fix_init(NULL, sizeof fixes[0], 60.0, -10.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_route_conditions_init(NULL, sizeof on_route, 250.0, 9000.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_route_brief(NULL, 3, &on_route, route_legs, 2, turns, 1, &summary) == LUBBER_ERROR_STRUCT && isnan(summary.total_time_s));
    EXPECT(lubber_route_brief(fixes, 3, NULL, route_legs, 2, turns, 1, &summary) == LUBBER_ERROR_STRUCT && summary.leg_count == 0);
    EXPECT(lubber_route_brief(fixes, 3, &on_route, NULL, 2, turns, 1, &summary) == LUBBER_ERROR_STRUCT && summary.leg_count == 0);
    EXPECT(lubber_route_brief(fixes, 3, &on_route, route_legs, 2, NULL, 1, &summary) == LUBBER_ERROR_STRUCT && summary.turn_count == 0);
    EXPECT(lubber_route_brief(fixes, 3, &on_route, route_legs, 2, turns, 1, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_route_brief(fixes, 3, &on_route, route_legs, 2, turns, 1, &summary) == LUBBER_OK && summary.leg_count == 2);
    count = 7;
    EXPECT(lubber_route_sureness(fixes, 3, &on_route, NULL, 0.5, 0.9, 10, 1, &sure, 1, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_route_sureness(fixes, 3, &on_route, &errors, 0.5, 0.9, 10, 1, NULL, 1, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_route_sureness(fixes, 3, &on_route, &errors, 0.5, 0.9, 10, 1, &sure, 1, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_route_sureness(NULL, 3, &on_route, &errors, 0.5, 0.9, 10, 1, &sure, 1, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_route_leg_points(NULL, 3, &on_route, 0, 1.0, numbers, numbers, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_route_leg_points(fixes, 3, &on_route, 0, 1.0, NULL, numbers, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_route_turn_points(fixes, 3, NULL, 0, numbers, numbers, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_route_turn_points(fixes, 3, &on_route, 0, numbers, NULL, 9, &count) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_route_turn_points(fixes, 3, &on_route, 0, numbers, numbers, 9, NULL) == LUBBER_ERROR_STRUCT);

    /* Winds by level that are said to be and are not. */
    struct lubber_route_fix windy[2] = {fixes[0], fixes[1]};
    windy[1].wind_level_count = 2;
    EXPECT(lubber_route_brief(windy, 2, &on_route, NULL, 0, NULL, 0, &summary) == LUBBER_ERROR_STRUCT);
    windy[1].wind_level_count = (size_t)-1;
    EXPECT(lubber_route_brief(windy, 2, &on_route, NULL, 0, NULL, 0, &summary) == LUBBER_ERROR_WIND_LEVELS && summary.failed_fix == 2);

    /* An array that is null where values are needed fails every point; none is needed where there is nothing to do. */
    int32_t status[3] = {7, 7, 7};
    numbers[0] = numbers[1] = numbers[2] = 7.0;
    EXPECT(lubber_slant_range_nm_n(3, NULL, 8, numbers, 8, numbers, 8, status) == 3);
    EXPECT(isnan(numbers[0]) && isnan(numbers[2]) && status[0] == LUBBER_ERROR_STRUCT && status[2] == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_slant_range_nm_n(3, NULL, 8, NULL, 8, NULL, 8, NULL) == 3);
    EXPECT(lubber_slant_range_nm_n(0, NULL, 8, NULL, 8, NULL, 8, NULL) == 0);
}

static void nothing_to_do(void)
{
    size_t count = 7, failed = 7;
    struct lubber_path_segment segments[1] = {{.struct_size = 0}};
    int32_t none = lubber_legs_fly(NULL, 0, &conditions, NULL, 0, &count, &failed);
    EXPECT(none <= 0 && none != LUBBER_ERROR_INTERNAL && count == 0);
    EXPECT(lubber_legs_fly(legs, 0, &conditions, NULL, 0, &count, &failed) == none && count == 0);
    EXPECT(lubber_legs_points(NULL, 0, &conditions, 1.0, NULL, NULL, 0, &count) == none && count == 0);
    EXPECT(lubber_legs_fly(legs, 3, &conditions, NULL, 0, &count, &failed) == LUBBER_OK && count == 3);
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 0, &count, &failed) == LUBBER_OK && count == 3);
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 1, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0);
    struct lubber_route_leg route_legs[1] = {{.struct_size = 0}};
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    for (size_t stations = 0; stations < 3; stations++) {
        EXPECT(lubber_route_brief(stations == 0 ? NULL : fixes, stations, &on_route, NULL, 0, NULL, 0, &summary) == LUBBER_OK);
        EXPECT(summary.leg_count == stations / 2 && summary.turn_count == 0 && (summary.total_time_s > 0.0) == (stations == 2));
    }
    EXPECT(lubber_route_brief(fixes, 3, &on_route, route_legs, 0, NULL, 0, &summary) == LUBBER_OK && summary.leg_count == 2);
    EXPECT(lubber_route_brief(fixes, 3, &on_route, route_legs, 1, NULL, 0, &summary) == LUBBER_ERROR_STRUCT && summary.leg_count == 0);
    EXPECT(lubber_route_leg_points(fixes, 3, &on_route, 2, 1.0, NULL, NULL, 0, &count) == LUBBER_OK && count == 0);
    EXPECT(lubber_route_leg_points(fixes, 3, &on_route, (size_t)-1, 1.0, NULL, NULL, 0, &count) == LUBBER_OK && count == 0);
    EXPECT(lubber_route_turn_points(fixes, 3, &on_route, (size_t)-1, NULL, NULL, 0, &count) == LUBBER_OK && count == 0);
    EXPECT(lubber_route_sureness(fixes, 2, &on_route, &errors, 0.5, 0.9, 10, 1, NULL, 0, &count) == LUBBER_OK && count == 0);
    EXPECT(lubber_route_sureness(fixes, 3, &on_route, &errors, 0.5, 0.9, 0, 1, NULL, 0, &count) < 0 && count == 0);
    struct lubber_sureness sure = {.struct_size = sizeof sure};
    EXPECT(lubber_course_change_sureness(&input, &errors, 0.5, 0.9, 0, 1, &sure) < 0 && isnan(sure.mean_nm));
    EXPECT(lubber_course_change_sureness(&input, &errors, 0.5, 0.9, UINT64_MAX, 1, &sure) < 0 && isnan(sure.mean_nm));
}

/* The size and the count say where memory ends. */
static void no_step_beyond(void)
{
    struct lubber_course_change_result result = {.struct_size = sizeof result};
    size_t count, least = offsetof(struct lubber_course_change_input, wind_from_deg);
    for (size_t size = least; size <= sizeof input; size += 8) {
        struct lubber_course_change_input *short_input = last(size);
        EXPECT(lubber_course_change_input_init(short_input, size) == LUBBER_OK);
        memcpy(&short_input->inbound_course_deg, &input.inbound_course_deg, least - sizeof size);
        EXPECT(lubber_course_change(short_input, &result) == LUBBER_OK);
        EXPECT(lubber_course_change_at(short_input, 1.0, NULL, NULL, NULL, NULL) == LUBBER_OK);
    }
    for (size_t size = 16; size <= sizeof result; size += 8) {
        struct lubber_course_change_result *short_result = last(size);
        memcpy(short_result, &size, sizeof size);
        EXPECT(lubber_course_change(&input, short_result) == LUBBER_OK);
        EXPECT(lubber_course_change(NULL, short_result) == LUBBER_ERROR_STRUCT);
    }
    struct lubber_flight *flight;
    EXPECT(lubber_flight_new(memcpy(last(sizeof start), &start, sizeof start), &flight) == LUBBER_OK);
    for (size_t size = 16; size <= sizeof(struct lubber_flight_state); size += 8)
        EXPECT(lubber_flight_look(flight, memcpy(last(size), &size, sizeof size)) == LUBBER_OK);
    lubber_flight_free(flight);

    /* Three legs, of all their bytes and of fewer. */
    for (size_t size = offsetof(struct lubber_leg, course_deg); size <= sizeof legs[0]; size += 8) {
        unsigned char *places = last(3 * size);
        for (size_t index = 0; index < 3; index++) {
            memcpy(places + index * size, &legs[index], size);
            memcpy(places + index * size, &size, sizeof size);
        }
        EXPECT(lubber_legs_fly((struct lubber_leg *)(void *)places, 3, &conditions, NULL, 0, &count, NULL) == LUBBER_OK);
    }
    /* Room for one segment, or two, of the three there are; and for two points of many. */
    size_t whole = sizeof(struct lubber_path_segment);
    for (size_t room = 1; room <= 2; room++)
        for (size_t size = whole - 16; size <= whole; size += 8) {
            struct lubber_path_segment *segments = memcpy(last(room * size), &size, sizeof size);
            EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, room, &count, NULL) == LUBBER_OK && count == 3);
        }
    double *latitudes = last(4 * sizeof(double)), *longitudes = latitudes + 2;
    EXPECT(lubber_legs_points(legs, 3, &conditions, 1.0, latitudes, longitudes, 2, &count) == LUBBER_OK && count > 2);
    EXPECT(fabs(latitudes[0] - 60.0) < 1e-9 && fabs(longitudes[0] + 10.0) < 1e-9);

    /* Stations, legs, turns and answers on a route, up to the edge. */
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    for (size_t size = offsetof(struct lubber_route_fix, elevation_ft); size <= sizeof fixes[0]; size += 8) {
        unsigned char *places = last(3 * size);
        for (size_t index = 0; index < 3; index++) {
            memcpy(places + index * size, &fixes[index], size);
            memcpy(places + index * size, &size, sizeof size);
        }
        const struct lubber_route_fix *stations = (struct lubber_route_fix *)(void *)places;
        EXPECT(lubber_route_brief(stations, 3, &on_route, NULL, 0, NULL, 0, &summary) == LUBBER_OK && summary.turn_count == 1);
    }
    for (size_t size = offsetof(struct lubber_route_conditions, altimeter_setting_hpa); size <= sizeof on_route; size += 8) {
        struct lubber_route_conditions *short_ones = memcpy(last(size), &on_route, size);
        memcpy(short_ones, &size, sizeof size);
        EXPECT(lubber_route_brief(fixes, 3, short_ones, NULL, 0, NULL, 0, &summary) == LUBBER_OK);
    }
    for (size_t room = 1; room <= 2; room++)
        for (size_t size = 16; size <= sizeof(struct lubber_route_leg); size += 8) {
            struct lubber_route_leg *short_legs = memcpy(last(room * size), &size, sizeof size);
            EXPECT(lubber_route_brief(fixes, 3, &on_route, short_legs, room, NULL, 0, &summary) == LUBBER_OK && summary.leg_count == 2);
        }
    for (size_t size = 16; size <= sizeof(struct lubber_route_turn); size += 8)
        EXPECT(lubber_route_brief(fixes, 3, &on_route, NULL, 0, memcpy(last(size), &size, sizeof size), 1, &summary) == LUBBER_OK);
    for (size_t size = offsetof(struct lubber_route_summary, leg_count); size <= sizeof summary; size += 8) {
        struct lubber_route_summary *short_summary = memcpy(last(size), &size, sizeof size);
        EXPECT(lubber_route_brief(fixes, 3, &on_route, NULL, 0, NULL, 0, short_summary) == LUBBER_OK);
        EXPECT(lubber_route_brief(NULL, 3, &on_route, NULL, 0, NULL, 0, short_summary) == LUBBER_ERROR_STRUCT);
    }
    size_t sure_size = sizeof(struct lubber_sureness);
    struct lubber_sureness *one_sure = memcpy(last(sure_size), &sure_size, sizeof sure_size);
    EXPECT(lubber_route_sureness(fixes, 3, &on_route, &errors, 0.5, 0.9, 10, 1, one_sure, 1, &count) == LUBBER_OK && count == 1);
    latitudes = last(4 * sizeof(double)), longitudes = latitudes + 2;
    EXPECT(lubber_route_leg_points(fixes, 3, &on_route, 0, 1.0, latitudes, longitudes, 2, &count) == LUBBER_OK && count > 2);
    EXPECT(lubber_route_turn_points(fixes, 3, &on_route, 0, latitudes, longitudes, 2, &count) == LUBBER_OK && count == 41);
    size_t level_size = sizeof(struct lubber_wind_level);
    struct lubber_wind_level levels[2] = {{level_size, 3000.0, 270.0, 20.0}, {level_size, 12000.0, 290.0, 40.0}};
    struct lubber_route_fix windy[3] = {fixes[0], fixes[1], fixes[2]};
    windy[1].wind_levels = memcpy(last(sizeof levels), levels, sizeof levels);
    windy[1].wind_level_count = 2;
    EXPECT(lubber_route_brief(windy, 3, &on_route, NULL, 0, NULL, 0, &summary) == LUBBER_OK);

    /* Arrays up to one edge and, backwards, down to the other; one value for all; statuses at the edge. */
    const size_t counts[] = {1, 7, 8, 9, 127, 128, 129, 300};
    for (size_t index = 0; index < sizeof counts / sizeof *counts; index++) {
        size_t points = counts[index];
        double *forward = last(points * sizeof(double)), *backward = (double *)(void *)low_edge + points - 1;
        for (size_t point = 0; point < points; point++)
            forward[point] = backward[-(ptrdiff_t)point] = (double)point;
        EXPECT(lubber_slant_range_nm_n(points, forward, 8, backward, -8, forward, 8, NULL) == 0);
        double height_ft = 9000.0;
        EXPECT(lubber_slant_range_nm_n(points, backward, -8, &height_ft, 0, backward, -8, NULL) == 0);
        double *shared = last(sizeof(double));
        *shared = 9000.0;
        backward[1 - (ptrdiff_t)points] = 1.0;
        EXPECT(lubber_slant_range_nm_n(points, (double *)(void *)low_edge, 0, shared, 0, NULL, 8, NULL) == 0);
        int32_t *status = last(points * sizeof(int32_t));
        EXPECT(lubber_slant_range_nm_n(points, &height_ft, 0, &height_ft, 0, NULL, 0, status) == 0 && status[points - 1] == 0);
        EXPECT(lubber_slant_range_nm_n(points, NULL, 0, &height_ft, 0, NULL, 0, status) == points);
        EXPECT(status[points - 1] == LUBBER_ERROR_STRUCT);
    }
}

/* Operands that lie over each other: the last that is written stands, and nothing else is harmed. */
static void over_each_other(void)
{
    double one, all, distance_nm;
    EXPECT(lubber_course_change_at(&input, 1.0, NULL, &distance_nm, NULL, &one) == LUBBER_OK);
    EXPECT(lubber_course_change_at(&input, 1.0, &all, &all, &all, &all) == LUBBER_OK && all == one);

    /* The question and the answer in one place. */
    union {
        struct lubber_course_change_input input;
        struct lubber_course_change_result result;
    } both = {.input = input};
    struct lubber_course_change_result result = {.struct_size = sizeof both.input};
    EXPECT(lubber_course_change(&input, &result) == LUBBER_OK);
    EXPECT(lubber_course_change(&both.input, &both.result) == LUBBER_OK);
    EXPECT(memcmp(&both.result, &result, sizeof both.input) == 0);

    size_t count;
    double points[400];
    EXPECT(lubber_legs_points(legs, 3, &conditions, 1.0, points, points, 400, &count) == LUBBER_OK);
    EXPECT(count < 400 && fabs(points[count - 1] + 9.0) < 1e-9);
    EXPECT(lubber_legs_fly(legs, 3, &conditions, NULL, 0, &count, &count) == LUBBER_OK && count == 3);

    /* Every point to one place; each point a step behind what the last one wrote. */
    double distances[200], height_ft = 9000.0;
    for (int index = 0; index < 200; index++)
        distances[index] = index;
    EXPECT(lubber_slant_range_nm_n(200, distances, 8, &height_ft, 0, &all, 0, NULL) == 0);
    EXPECT(lubber_slant_range_nm(199.0, 9000.0, &one) == LUBBER_OK && fabs(all - one) < 1e-11);
    EXPECT(lubber_slant_range_nm_n(199, distances, 8, &height_ft, 0, distances + 1, 8, NULL) == 0);
    double chained = 0.0;
    for (int index = 0; index < 199; index++)
        EXPECT(lubber_slant_range_nm(chained, 9000.0, &chained) == LUBBER_OK);
    EXPECT(fabs(chained - distances[199]) < 1e-9);

    /* Strides that are no multiple of a value's size, forwards and backwards. */
    unsigned char bytes[20 * 13];
    for (int index = 0; index < 20; index++) {
        double value = index;
        memcpy(bytes + 13 * index, &value, sizeof value);
    }
    double out[20];
    EXPECT(lubber_slant_range_nm_n(20, (double *)(void *)(bytes + 13 * 19), -13, &height_ft, 0, out, 8, NULL) == 0);
    EXPECT(lubber_slant_range_nm(0.0, 9000.0, &one) == LUBBER_OK && fabs(out[19] - one) < 1e-11);
}

/* A flight asked for what cannot be stays as it was, and one that is flown for ever comes back. */
static void flights(void)
{
    const double bad[] = {NAN, INFINITY, -INFINITY, -1.0, 0.0, 5e-324, 1e300, -1e300};
    struct lubber_flight_state state = {.struct_size = sizeof state};
    for (size_t index = 0; index < sizeof bad / sizeof *bad; index++) {
        struct lubber_flight *flight;
        double value = bad[index];
        EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK);
        const int32_t statuses[] = {
            lubber_flight_hold_heading(flight, value),
            lubber_flight_turn_at_station(flight, value, 70.0),
            lubber_flight_turn_at_station(flight, 0.0, value),
            lubber_flight_track(flight, value, 4.0),
            lubber_flight_track(flight, 0.0, value),
            lubber_flight_intercept(flight, value, 30.0, 4.0),
            lubber_flight_intercept(flight, 0.0, value, 4.0),
            lubber_flight_intercept(flight, 0.0, 30.0, value),
            lubber_flight_arc(flight, value, 1),
            lubber_flight_arc(flight, 10.0, 99),
            lubber_flight_hold(flight, value, 1, 3, 180.0, 60.0),
            lubber_flight_hold(flight, 0.0, 99, 3, 180.0, 60.0),
            lubber_flight_hold(flight, 0.0, 1, 99, 180.0, 60.0),
            lubber_flight_hold(flight, 0.0, 1, 3, value, 60.0),
            lubber_flight_hold(flight, 0.0, 1, 3, 180.0, value),
            lubber_flight_hold_by_dme(flight, 0.0, 1, 3, 180.0, value),
            lubber_flight_climb_to(flight, value, 500.0),
            lubber_flight_climb_to(flight, 9000.0, value),
            lubber_flight_set_wind(flight, value, 20.0),
            lubber_flight_set_wind(flight, 0.0, value),
            lubber_flight_set_wind_levels(flight, value, 0.0, 20.0, 9000.0, 0.0, 20.0),
            lubber_flight_set_wind_levels(flight, 0.0, 0.0, 20.0, value, 0.0, value),
            lubber_flight_set_airspeed(flight, value),
            lubber_flight_tune(flight, value, -20.0, 0.0, 0.0, 90.0),
            lubber_flight_tune(flight, 60.0, value, 0.0, 0.0, 90.0),
            lubber_flight_tune(flight, 60.0, -20.0, value, 0.0, 90.0),
            lubber_flight_tune(flight, 60.0, -20.0, 0.0, value, value),
            lubber_flight_step(flight, value),
            lubber_flight_step(flight, 1.0),
        };
        for (size_t call = 0; call < sizeof statuses / sizeof *statuses; call++)
            EXPECT(statuses[call] <= 0 && statuses[call] != LUBBER_ERROR_INTERNAL && statuses[call] != LUBBER_ERROR_STRUCT);
        EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
        EXPECT(isfinite(state.latitude_deg) && isfinite(state.altitude_ft) && isfinite(state.time_s));
        lubber_flight_free(flight);

        /* In a climb and a bank, any speed. */
        EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK);
        EXPECT(lubber_flight_climb_to(flight, 20000.0, 20000.0) == LUBBER_OK);
        EXPECT(lubber_flight_hold_heading(flight, 170.0) == LUBBER_OK && lubber_flight_step(flight, 8.0) == LUBBER_OK);
        EXPECT(lubber_flight_set_airspeed(flight, value) <= 0 && lubber_flight_step(flight, 8.0) == LUBBER_OK);
        EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
        EXPECT(isfinite(state.latitude_deg) && isfinite(state.altitude_ft) && isfinite(state.true_heading_deg));
        lubber_flight_free(flight);

        struct lubber_flight_start odd = start;
        double *fields = &odd.latitude_deg;
        for (size_t field = 0; field < (sizeof odd - sizeof odd.struct_size) / sizeof(double); field++) {
            odd = start;
            fields[field] = value;
            int32_t status = lubber_flight_new(&odd, &flight);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && (flight == NULL) == (status != LUBBER_OK));
            EXPECT(!isnan(value) || status != LUBBER_OK);
            if (flight != NULL) {
                EXPECT(lubber_flight_step(flight, 1.0) == LUBBER_OK);
                EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK && isfinite(state.latitude_deg));
            }
            lubber_flight_free(flight);
        }
    }
    /* One step of eleven days is many short ones. */
    double latitudes_deg[2];
    for (int way = 0; way < 2; way++) {
        struct lubber_flight *flight;
        EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK);
        for (int step = 0; step < (way == 0 ? 1 : 1000); step++)
            EXPECT(lubber_flight_step(flight, way == 0 ? 1e6 : 1e3) == LUBBER_OK);
        EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
        latitudes_deg[way] = state.latitude_deg;
        lubber_flight_free(flight);
    }
    EXPECT_NEAR(latitudes_deg[0], latitudes_deg[1], 1e-6);
}

/* Winds by level: null with a count, too many, out of order, numbers that are none; every failure says which level. */
static void wind_levels(void)
{
    enum { MOST = 1000 };
    static struct lubber_wind_level many[MOST + 1];
    for (int index = 0; index <= MOST; index++)
        many[index] = (struct lubber_wind_level){sizeof many[0], 100.0 * index, 10.0 * index, 30.0};
    struct lubber_leg_conditions aloft = conditions;
    size_t count = 7, failed = 7;
#define FLOWN() lubber_legs_fly(legs, 3, &aloft, NULL, 0, &count, NULL)

    EXPECT(lubber_wind_levels_check(many, MOST, &failed) == LUBBER_OK && failed == 0);
    EXPECT(lubber_wind_levels_check(many, MOST, NULL) == LUBBER_OK);
    EXPECT(lubber_wind_levels_check(many, MOST + 1, &failed) == LUBBER_ERROR_WIND_LEVELS && failed == 0);
    EXPECT(lubber_wind_levels_check(NULL, SIZE_MAX, &failed) == LUBBER_ERROR_WIND_LEVELS);
    EXPECT(lubber_wind_levels_check(many, 0, &failed) == LUBBER_ERROR_WIND_LEVELS);
    EXPECT(lubber_wind_levels_check(NULL, 3, &failed) == LUBBER_ERROR_STRUCT && failed == 0);

    aloft.wind_levels = many;
    aloft.wind_level_count = MOST;
    EXPECT(FLOWN() == LUBBER_OK && count == 3);
    aloft.wind_level_count = MOST + 1;
    EXPECT(FLOWN() == LUBBER_ERROR_WIND_LEVELS && count == 0);
    aloft.wind_level_count = SIZE_MAX;
    EXPECT(FLOWN() == LUBBER_ERROR_WIND_LEVELS);
    aloft.wind_level_count = 0;
    EXPECT(FLOWN() == LUBBER_OK);
    aloft.wind_levels = NULL;
    aloft.wind_level_count = 1;
    EXPECT(FLOWN() == LUBBER_ERROR_STRUCT && count == 0);

    /* As many as there is memory for, of this size only. */
    aloft.wind_levels = memcpy(last(3 * sizeof many[0]), many, 3 * sizeof many[0]);
    aloft.wind_level_count = 3;
    EXPECT(FLOWN() == LUBBER_OK);
    for (size_t level = 0; level < 3; level++)
        for (size_t size = 0; size <= sizeof many[0] + 8; size++) {
            if (size == sizeof many[0] || (level == 0 && size == sizeof many[0] + 8))
                continue;
            struct lubber_wind_level odd[3] = {many[0], many[1], many[2]};
            odd[level].struct_size = size;
            aloft.wind_levels = odd;
            EXPECT(FLOWN() == LUBBER_ERROR_STRUCT);
        }

    /* Each number of each level. */
    const double bad[] = {NAN, INFINITY, -INFINITY, 1e300, -1e300};
    for (size_t level = 0; level < 3; level++) {
        const int32_t statuses[3] = {LUBBER_ERROR_PRESSURE_ALTITUDE, LUBBER_ERROR_BEARING, LUBBER_ERROR_WIND_SPEED};
        struct lubber_wind_level odd[3] = {many[0], many[1], many[2]};
        aloft.wind_levels = odd;
        for (size_t index = 0; index < sizeof bad / sizeof *bad; index++)
            for (size_t field = 0; field < 3; field++) {
                double *number = &odd[level].pressure_altitude_ft + field, good = *number;
                *number = bad[index];
                int32_t status = field == 1 && isfinite(bad[index]) ? LUBBER_OK : statuses[field];
                EXPECT(FLOWN() == status);
                EXPECT(lubber_wind_levels_check(odd, 3, &failed) == status && failed == (status == LUBBER_OK ? 0 : level + 1));
                *number = good;
            }
        /* Not above the one before. */
        if (level > 0) {
            odd[level].pressure_altitude_ft = odd[level - 1].pressure_altitude_ft;
            EXPECT(FLOWN() == LUBBER_ERROR_LEVELS_NOT_ASCENDING);
            EXPECT(lubber_wind_levels_check(odd, 3, &failed) == LUBBER_ERROR_LEVELS_NOT_ASCENDING && failed == level + 1);
        }
    }
#undef FLOWN
}

/* The brief of legs: null, sizes that are none, as much room as there is memory, and numbers that are none. */
static void paths(void)
{
    struct lubber_path_station station;
    struct lubber_path_surroundings surroundings;
    struct lubber_path_leg flown[3] = {{.struct_size = sizeof flown[0]}};
    size_t count = 7, failed = 7;
    EXPECT(lubber_path_station_init(NULL, sizeof station, 60.5, -10.0) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_path_surroundings_init(NULL, sizeof surroundings) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_path_station_init(&station, sizeof station, 60.5, -10.0) == LUBBER_OK);
    EXPECT(lubber_path_surroundings_init(&surroundings, sizeof surroundings) == LUBBER_OK);

    EXPECT(lubber_path_legs(NULL, 3, &conditions, &surroundings, flown, 3, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0 && failed == 0);
    EXPECT(lubber_path_legs(legs, 3, NULL, &surroundings, flown, 3, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_path_legs(legs, 3, &conditions, &surroundings, NULL, 3, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0);
    EXPECT(lubber_path_legs(legs, 3, &conditions, &surroundings, flown, 3, NULL, &failed) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_path_legs(legs, 3, &conditions, NULL, flown, 3, &count, NULL) == LUBBER_OK && count == 3);
    EXPECT(lubber_path_turns(NULL, 3, &conditions, NULL, NULL, 0, &count, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_path_readings(NULL, 3, &conditions, NULL, NULL, 0, &count, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_path_checks(NULL, 3, &conditions, NULL, NULL, 0, &count, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_path_turns(NULL, 0, &conditions, NULL, NULL, 0, &count, NULL) == LUBBER_ERROR_LEG_NOT_FLOWN);

    /* Stations that are said to be there and are not, or are of no size. */
    surroundings.station_count = 1;
    EXPECT(lubber_path_legs(legs, 3, &conditions, &surroundings, flown, 3, &count, &failed) == LUBBER_ERROR_STRUCT && count == 0);
    surroundings.stations = &station;
    EXPECT(lubber_path_legs(legs, 3, &conditions, &surroundings, flown, 3, &count, &failed) == LUBBER_OK && count == 3);
    station.struct_size--;
    EXPECT(lubber_path_legs(legs, 3, &conditions, &surroundings, flown, 3, &count, &failed) == LUBBER_ERROR_STRUCT);
    station.struct_size++;
    surroundings.struct_size = 0;
    EXPECT(lubber_path_legs(legs, 3, &conditions, &surroundings, flown, 3, &count, &failed) == LUBBER_ERROR_STRUCT);
    surroundings.struct_size = sizeof surroundings;
    surroundings.station_count = 0;
    EXPECT(lubber_path_readings(legs, 3, &conditions, &surroundings, NULL, 0, &count, NULL) == LUBBER_OK && count == 0);

    /* Stations up to the edge of memory, and room for fewer than there are. */
    struct lubber_path_station *edge = last(2 * sizeof station);
    edge[0] = edge[1] = station;
    surroundings.stations = edge;
    surroundings.station_count = 2;
    EXPECT(lubber_path_readings(legs, 3, &conditions, &surroundings, NULL, 0, &count, NULL) == LUBBER_OK && count == 4);
    surroundings.stations = &station;
    surroundings.station_count = 1;
    for (size_t room = 1; room <= 2; room++)
        for (size_t less = 0; less <= 16; less += 8) {
            size_t size = sizeof(struct lubber_path_leg) - less;
            EXPECT(lubber_path_legs(legs, 3, &conditions, &surroundings, memcpy(last(room * size), &size, sizeof size), room, &count, NULL) == LUBBER_OK && count == 3);
            size = sizeof(struct lubber_path_turn) - less;
            EXPECT(lubber_path_turns(legs, 3, &conditions, &surroundings, memcpy(last(size), &size, sizeof size), 1, &count, NULL) == LUBBER_OK && count == 1);
            size = sizeof(struct lubber_path_reading) - less / 2;
            int32_t known = size % 8 == 0 ? LUBBER_OK : LUBBER_ERROR_STRUCT;
            EXPECT(lubber_path_readings(legs, 3, &conditions, &surroundings, memcpy(last(room * size), &size, sizeof size), room, &count, NULL) == known);
        }
    station.cone_half_angle_deg = 85.0;
    for (size_t less = 0; less <= 16; less += 8) {
        size_t size = sizeof(struct lubber_path_check) - less;
        EXPECT(lubber_path_checks(legs, 3, &conditions, &surroundings, memcpy(last(size), &size, sizeof size), 1, &count, NULL) == LUBBER_OK && count == 1);
    }

    const double bad[] = {NAN, INFINITY, -INFINITY, -1.0, 0.0, 5e-324, 1e300, -1e300};
    for (size_t index = 0; index < sizeof bad / sizeof *bad; index++) {
        double *const numbers[] = {&station.latitude_deg, &station.longitude_deg, &station.elevation_ft, &station.declination_deg,
            &station.cone_half_angle_deg, &surroundings.altimeter_setting_hpa, &surroundings.isa_deviation_k, &conditions.true_airspeed_kt,
            &conditions.altitude_ft, &conditions.climb_fpm};
        for (size_t place = 0; place < sizeof numbers / sizeof *numbers; place++) {
            double good = *numbers[place];
            *numbers[place] = bad[index];
            int32_t status = lubber_path_legs(legs, 3, &conditions, &surroundings, flown, 3, &count, &failed);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT && count == (status == LUBBER_OK ? 3 : 0));
            EXPECT(!isnan(bad[index]) || status != LUBBER_OK);
            EXPECT(lubber_path_checks(legs, 3, &conditions, &surroundings, NULL, 0, &count, &failed) == status);
            *numbers[place] = good;
        }
    }
}

/* Every number of the legs, the conditions and the errors. */
static void odd_numbers(void)
{
    const double bad[] = {NAN, INFINITY, -INFINITY, -1.0, 0.0, 5e-324, 1e300, -1e300};
    struct lubber_path_segment segments[9] = {{.struct_size = sizeof segments[0]}};
    size_t count, failed;
    double points[2][9];
    for (size_t index = 0; index < sizeof bad / sizeof *bad; index++) {
        double value = bad[index];
        for (int32_t code = -1; code <= 24; code++) {
            struct lubber_leg two[2] = {legs[0]};
            if (lubber_leg_init(&two[1], sizeof two[1], code) != LUBBER_OK) {
                two[1] = legs[1];
                two[1].code = code;
            }
            for (double *field = &two[1].fix_latitude_deg; field <= &two[1].outbound_time_s; field++)
                *field = value;
            two[1].passage = two[1].to_right = code;
            int32_t status = lubber_legs_fly(two, 2, &conditions, segments, 9, &count, &failed);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT);
            EXPECT(status == LUBBER_OK || count == 0);
        }
        struct lubber_leg_conditions odd = conditions;
        for (double *field = &odd.true_airspeed_kt; field <= &odd.upper_wind_speed_kt; field++) {
            double usual = *field;
            *field = value;
            int32_t status = lubber_legs_fly(legs, 3, &odd, segments, 9, &count, &failed);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT);
            *field = usual;
        }
        struct lubber_route_leg route_legs[2] = {{.struct_size = sizeof route_legs[0]}};
        struct lubber_route_turn turns[1] = {{.struct_size = sizeof turns[0]}};
        struct lubber_route_summary summary = {.struct_size = sizeof summary};
        for (double *field = &fixes[1].latitude_deg; field <= &fixes[1].wind_speed_kt; field++) {
            double good = *field;
            *field = value;
            int32_t status = lubber_route_brief(fixes, 3, &on_route, route_legs, 2, turns, 1, &summary);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT);
            EXPECT(isnan(summary.total_time_s) == (status != LUBBER_OK) && summary.leg_count == (status == LUBBER_OK ? 2 : 0));
            *field = good;
        }
        for (double *field = &on_route.true_airspeed_kt; field <= &on_route.intercept_angle_deg; field++) {
            double good = *field;
            *field = value;
            int32_t status = lubber_route_brief(fixes, 3, &on_route, route_legs, 2, turns, 1, &summary);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT);
            EXPECT(status == LUBBER_OK || (isnan(summary.total_time_s) && summary.turn_count == 0));
            *field = good;
        }
        EXPECT(lubber_route_leg_points(fixes, 3, &on_route, 0, value, points[0], points[1], 9, &count) <= 0);
        EXPECT(lubber_legs_points(legs, 3, &conditions, value, points[0], points[1], 9, &count) <= 0);
        for (size_t field = 0; field < (sizeof errors - sizeof errors.struct_size) / sizeof(double); field++) {
            struct lubber_error_model odd = errors;
            struct lubber_sureness sure = {.struct_size = sizeof sure};
            (&odd.station_bearing_deg)[field] = value;
            int32_t status = lubber_course_change_sureness(&input, &odd, 0.5, 0.9, 20, 1, &sure);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT);
            EXPECT(status == LUBBER_OK || isnan(sure.mean_nm));
        }
    }
}

int main(void)
{
    make_edges();
    make_good_ones();
    null_pointers();
    nothing_to_do();
    no_step_beyond();
    over_each_other();
    flights();
    wind_levels();
    paths();
    odd_numbers();
    return expect_close();
}
