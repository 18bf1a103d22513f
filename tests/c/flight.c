/* A flight at 60 frames a second: the turn at the station rolls out on the outbound course; and how sure that is. */

#include "expect.h"

/* Over the station on the inbound course, round the pattern that closes in the wind, by the clock and by DME, and over it again. */
static void holds(struct lubber_flight_start start)
{
    double heading_deg, time_s, round_s, inbound_s, before_nm, across_nm, dme_nm, correction_deg;
    start.latitude_deg = 60.0;
    start.longitude_deg = -20.0;
    start.altitude_ft = 9000.0;
    start.true_airspeed_kt = 210.0;
    start.wind_from_deg = 300.0;
    start.wind_speed_kt = 30.0;
    EXPECT(lubber_holding_pattern(0.0, LUBBER_HOLDING_SIDE_LEFT, LUBBER_TIMED_LEG_INBOUND, 60.0, 210.0, 300.0, 30.0, 25.0, 3.0, 5.0,
                                  &heading_deg, NULL, &correction_deg, NULL, &time_s, NULL, &inbound_s, &round_s, &before_nm, &across_nm,
                                  NULL, NULL, NULL, NULL)
           == LUBBER_OK);
    EXPECT(lubber_slant_range_nm(hypot(before_nm, across_nm), 9000.0, &dme_nm) == LUBBER_OK);
    start.heading_deg = correction_deg;
    for (int by_dme = 0; by_dme < 2; by_dme++) {
        struct lubber_flight *flight = NULL;
        struct lubber_flight_state state = {.struct_size = sizeof state};
        EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK);
        EXPECT(lubber_flight_hold(flight, 0.0, 0, LUBBER_HOLDING_ENTRY_DIRECT, heading_deg, time_s) == LUBBER_ERROR_UNKNOWN_CHOICE);
        EXPECT(lubber_flight_hold(flight, 0.0, LUBBER_HOLDING_SIDE_LEFT, 4, heading_deg, time_s) == LUBBER_ERROR_UNKNOWN_CHOICE);
        int32_t status = by_dme ? lubber_flight_hold_by_dme(flight, 0.0, LUBBER_HOLDING_SIDE_LEFT, LUBBER_HOLDING_ENTRY_DIRECT, heading_deg, dme_nm)
                                : lubber_flight_hold(flight, 0.0, LUBBER_HOLDING_SIDE_LEFT, LUBBER_HOLDING_ENTRY_DIRECT, heading_deg, time_s);
        EXPECT(status == LUBBER_OK);
        EXPECT(lubber_flight_step(flight, 0.25) == LUBBER_OK);
        for (double left_s = round_s - 0.25; left_s > 0.0; left_s -= 0.25) {
            EXPECT(lubber_flight_step(flight, left_s < 0.25 ? left_s : 0.25) == LUBBER_OK);
        }
        EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
        double away_nm;
        EXPECT(lubber_geodesic_inverse(60.0, -20.0, state.latitude_deg, state.longitude_deg, &away_nm, NULL, NULL) == LUBBER_OK);
        EXPECT_NEAR(away_nm, 0.0, 0.01);
        lubber_flight_free(flight);
    }
}

/* A tailwind of 20 kt below and of 60 kt above: half-way up it is one of 40, which is what an airspeed of 300 kt adds to. */
static void winds(struct lubber_flight_start start)
{
    struct lubber_flight *flight = NULL;
    struct lubber_flight_state state = {.struct_size = sizeof state};
    start.altitude_ft = 15000.0;
    start.heading_deg = 0.0;
    EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK);
    EXPECT(lubber_flight_set_wind_levels(flight, 20000.0, 180.0, 20.0, 10000.0, 180.0, 60.0) == LUBBER_ERROR_LEVELS_NOT_ASCENDING);
    EXPECT(lubber_flight_set_wind_levels(flight, 10000.0, 180.0, 20.0, 20000.0, 180.0, 60.0) == LUBBER_OK);
    EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
    EXPECT_NEAR(state.groundspeed_kt, 340.0, 1e-9);
    EXPECT(lubber_flight_climb_to(flight, 20000.0, 3000.0) == LUBBER_OK);
    for (int second = 0; second < 120; second++) {
        EXPECT(lubber_flight_step(flight, 1.0) == LUBBER_OK);
    }
    EXPECT(lubber_flight_set_airspeed(flight, 0.0) == LUBBER_ERROR_TRUE_AIRSPEED);
    EXPECT(lubber_flight_set_airspeed(flight, 250.0) == LUBBER_OK);
    EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
    EXPECT_NEAR(state.groundspeed_kt, 310.0, 1e-9);

    /* The same with a level between that changes nothing, and with one that does. */
    const size_t size = sizeof(struct lubber_wind_level);
    struct lubber_wind_level levels[17] = {{size, 10000.0, 180.0, 20.0}, {size, 14000.0, 180.0, 36.0}, {size, 20000.0, 180.0, 60.0}};
    double ends[2][3];
    for (int way = 0; way < 2; way++) {
        struct lubber_flight *other = NULL;
        EXPECT(lubber_flight_new(&start, &other) == LUBBER_OK);
        if (way == 0)
            EXPECT(lubber_flight_set_wind_levels(other, 10000.0, 180.0, 20.0, 20000.0, 180.0, 60.0) == LUBBER_OK);
        else
            EXPECT(lubber_flight_set_winds_aloft(other, levels, 3) == LUBBER_OK);
        EXPECT(lubber_flight_climb_to(other, 22000.0, 4000.0) == LUBBER_OK && lubber_flight_step(other, 100.0) == LUBBER_OK);
        EXPECT(lubber_flight_look(other, &state) == LUBBER_OK);
        ends[way][0] = state.latitude_deg;
        ends[way][1] = state.groundspeed_kt;
        ends[way][2] = state.altitude_ft;
        lubber_flight_free(other);
    }
    for (int number = 0; number < 3; number++)
        EXPECT_NEAR(ends[1][number], ends[0][number], 1e-9);
    levels[1].wind_speed_kt = 0.0;
    start.altitude_ft = 12000.0;
    lubber_flight_free(flight);
    EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK && lubber_flight_set_winds_aloft(flight, levels, 3) == LUBBER_OK);
    EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
    EXPECT_NEAR(state.groundspeed_kt, 310.0, 1e-9);

    /* What is refused leaves the flight as it was. */
    for (int index = 3; index < 17; index++)
        levels[index] = (struct lubber_wind_level){size, 20000.0 + 100.0 * index, 180.0, 60.0};
    EXPECT(lubber_flight_set_winds_aloft(flight, levels, 17) == LUBBER_ERROR_FLIGHT_WIND_LEVELS);
    EXPECT(lubber_flight_set_winds_aloft(flight, levels, 0) == LUBBER_ERROR_WIND_LEVELS);
    EXPECT(lubber_flight_set_winds_aloft(flight, NULL, 3) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_flight_set_winds_aloft(NULL, levels, 3) == LUBBER_ERROR_STRUCT);
    levels[2].wind_from_deg = NAN;
    EXPECT(lubber_flight_set_winds_aloft(flight, levels, 3) == LUBBER_ERROR_BEARING);
    EXPECT(lubber_flight_set_winds_aloft(flight, levels + 1, 1) == LUBBER_OK);
    EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
    EXPECT_NEAR(state.groundspeed_kt, 300.0, 1e-9);
    lubber_flight_free(flight);
}

/* In over one station, tuned to the next: nothing moves by it, and the turn planned for the next rolls out on its course. */
static void next_station(struct lubber_flight_start start)
{
    struct lubber_flight *flight = NULL;
    struct lubber_flight_state before = {.struct_size = sizeof before}, state = {.struct_size = sizeof state};
    start.latitude_deg = 60.0;
    start.longitude_deg = -20.0;
    start.altitude_ft = 20000.0;
    start.heading_deg = 70.0;
    start.wind_from_deg = 70.0;
    start.wind_speed_kt = 40.0;
    EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK);
    EXPECT(lubber_flight_step(flight, 60.0) == LUBBER_OK);
    EXPECT(lubber_flight_look(flight, &before) == LUBBER_OK);
    double latitude_deg, longitude_deg, inbound_deg, across_nm;
    EXPECT(lubber_geodesic_direct(60.0, -20.0, 70.0, 90.0, &latitude_deg, &longitude_deg, &inbound_deg) == LUBBER_OK);
    EXPECT(lubber_flight_tune(flight, latitude_deg, longitude_deg, 300.0, -7.0, inbound_deg + 7.0) == LUBBER_OK);
    EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
    EXPECT_NEAR(state.true_heading_deg, before.true_heading_deg, 1e-9);
    EXPECT_NEAR(state.true_track_deg, before.true_track_deg, 1e-9);
    EXPECT_NEAR(state.groundspeed_kt, before.groundspeed_kt, 1e-9);
    EXPECT_NEAR(state.deviation_deg, 0.0, 1e-3);
    EXPECT(lubber_flight_turn_at_station(flight, inbound_deg, inbound_deg - 100.0) == LUBBER_OK);
    for (int second = 0; second < 3000 && !state.done; second++) {
        EXPECT(lubber_flight_step(flight, 1.0) == LUBBER_OK);
        EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
    }
    EXPECT(state.done);
    EXPECT(lubber_cross_track(latitude_deg, longitude_deg, inbound_deg - 100.0, state.latitude_deg, state.longitude_deg, &across_nm, NULL,
                              NULL, NULL, NULL)
           == LUBBER_OK);
    EXPECT_NEAR(across_nm, 0.0, 0.01);
    lubber_flight_free(flight);
}

int main(void)
{
    struct lubber_flight_start start;
    lubber_flight_start_init(&start, sizeof start);
    start.station_latitude_deg = 60.0;
    start.station_longitude_deg = -20.0;
    EXPECT(lubber_geodesic_direct(60.0, -20.0, 180.0, 12.0, &start.latitude_deg, &start.longitude_deg, NULL) == LUBBER_OK);
    start.altitude_ft = 20000.0;
    start.heading_deg = 0.0;
    start.true_airspeed_kt = 300.0;
    start.course_deg = 70.0;

    struct lubber_flight *flight = NULL;
    EXPECT(lubber_flight_new(&start, &flight) == LUBBER_OK && flight != NULL);
    EXPECT(lubber_flight_turn_at_station(flight, 0.0, 180.0) == LUBBER_ERROR_COURSE_REVERSAL);
    EXPECT(lubber_flight_turn_at_station(flight, 0.0, 70.0) == LUBBER_OK);
    struct lubber_flight_state state = {.struct_size = sizeof state};
    int frames = 0;
    do {
        EXPECT(lubber_flight_step(flight, 1.0 / 60.0) == LUBBER_OK);
        EXPECT(lubber_flight_look(flight, &state) == LUBBER_OK);
    } while (!state.done && ++frames < 20000);
    EXPECT(state.done);
    EXPECT_NEAR(state.time_s, (frames + 1) / 60.0, 1e-6);

    /* On the course to the 0.2 percent that the height takes off the ground. */
    double across_nm;
    EXPECT(lubber_cross_track(60.0, -20.0, 70.0, state.latitude_deg, state.longitude_deg, &across_nm, NULL, NULL, NULL, NULL)
           == LUBBER_OK);
    EXPECT_NEAR(across_nm, 0.0, 0.01);
    EXPECT(state.flag == LUBBER_FLAG_CONE && state.in_cone && isnan(state.deviation_deg));
    lubber_flight_free(flight);

    holds(start);
    winds(start);
    next_station(start);
    start.true_airspeed_kt = NAN;
    EXPECT(lubber_flight_new(&start, &flight) == LUBBER_ERROR_TRUE_AIRSPEED && flight == NULL);
    EXPECT(lubber_flight_step(NULL, 1.0) == LUBBER_ERROR_STRUCT);

    struct lubber_course_change_input input;
    lubber_course_change_input_init(&input, sizeof input);
    input.inbound_course_deg = 0.0;
    input.outbound_course_deg = 70.0;
    input.true_airspeed_kt = 300.0;
    input.height_above_station_ft = 20000.0;
    struct lubber_error_model errors = {.struct_size = sizeof errors, .mean_delay_s = 3.0};
    struct lubber_sureness sure = {.struct_size = sizeof sure};
    EXPECT(lubber_course_change_sureness(&input, &errors, 0.0, 0.95, 1000, 1, &sure) == LUBBER_OK);
    /* Three seconds late at 300 kt. */
    EXPECT_NEAR(sure.margin_nm, 0.25, 1e-4);
    EXPECT(sure.foremost == -1.0);
    /* Each trial by itself: without other errors every one is late by as much. */
    double overshoots_nm[3];
    EXPECT(lubber_course_change_overshoots(&input, &errors, 1, 3, overshoots_nm) == LUBBER_OK);
    EXPECT_NEAR(overshoots_nm[0], sure.mean_nm, 1e-9);
    EXPECT_NEAR(overshoots_nm[2], sure.mean_nm, 1e-9);
    /* What is usual: ICAO Doc 8168 prints 5.7 degrees for two deviations, Annex 10 0.2 NM. */
    EXPECT(lubber_error_model_init(NULL, sizeof errors) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_error_model_init(&errors, sizeof errors) == LUBBER_OK);
    EXPECT_NEAR(2.0 * errors.station_bearing_deg, 5.7, 0.05);
    EXPECT_NEAR(2.0 * errors.dme_nm, 0.2, 1e-9);
    EXPECT(lubber_course_change_sureness(&input, &errors, 1.0, 0.95, 20000, 1, &sure) == LUBBER_OK);
    EXPECT(sure.deviation_nm > 0.1 && sure.deviation_nm < 2.0);
    errors.bank_deg = -1.0;
    EXPECT(lubber_course_change_overshoots(&input, &errors, 1, 3, overshoots_nm) == LUBBER_ERROR_STANDARD_DEVIATION);
    EXPECT(isnan(overshoots_nm[0]) && isnan(overshoots_nm[2]));
    EXPECT(lubber_course_change_overshoots(&input, &errors, 1, 3, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_course_change_sureness(&input, &errors, 0.0, 0.95, 1000, 1, &sure) == LUBBER_ERROR_STANDARD_DEVIATION);
    EXPECT(isnan(sure.mean_nm));
    return expect_close();
}
