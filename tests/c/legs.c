/* Path-and-terminator legs: every code to its end, three fixes flown by, and what is wrong with two. */

#include "expect.h"

/* A leg of a code from the fix at 60.3 N, 10 W, with what any code may need: a DME and its station, a radial, an altitude, a course. */
static struct lubber_leg leg_of(int32_t code)
{
    struct lubber_leg leg;
    EXPECT(lubber_leg_init(&leg, sizeof leg, code) == LUBBER_OK);
    leg.passage = LUBBER_PASSAGE_FLY_OVER;
    leg.to_right = 1;
    leg.fix_latitude_deg = 60.3;
    leg.fix_longitude_deg = -10.0;
    leg.course_deg = code >= LUBBER_LEG_CODE_HOLD_TO_ALTITUDE && code <= LUBBER_LEG_CODE_HOLD_TO_MANUAL ? 60.0 : 30.0;
    leg.altitude_ft = 12000.0;
    leg.distance_nm = 15.0;
    leg.center_latitude_deg = 60.2;
    leg.center_longitude_deg = -9.7;
    leg.center_elevation_ft = 300.0;
    leg.center_declination_deg = -7.0;
    leg.radial_deg = 10.0;
    leg.outbound_time_s = 60.0;
    return leg;
}

/* The end of the last of some legs. */
static struct lubber_path_segment end_of(const struct lubber_leg *legs, size_t leg_count)
{
    struct lubber_leg_conditions conditions;
    lubber_leg_conditions_init(&conditions, sizeof conditions, 220.0, 4000.0);
    conditions.climb_fpm = 900.0;
    conditions.wind_from_deg = 280.0;
    conditions.wind_speed_kt = 45.0;
    struct lubber_path_segment segments[80] = {{.struct_size = sizeof segments[0]}};
    size_t count = 0, failed = 0;
    int32_t status = lubber_legs_fly(legs, leg_count, &conditions, segments, 80, &count, &failed);
    EXPECT(status == LUBBER_OK && count > 0 && count <= 80);
    return segments[status == LUBBER_OK ? count - 1 : 0];
}

/* A racetrack by the time or the length of a leg or by DME, and either procedure turn, are flown as they are given. */
static void lengths_and_forms(void)
{
    struct lubber_leg_conditions conditions;
    lubber_leg_conditions_init(&conditions, sizeof conditions, 220.0, 4000.0);
    conditions.wind_from_deg = 280.0;
    conditions.wind_speed_kt = 30.0;
    struct lubber_path_segment segments[9] = {{.struct_size = sizeof segments[0]}};
    size_t count = 0;
    struct lubber_leg hold = leg_of(LUBBER_LEG_CODE_HOLD_TO_FIX);
    EXPECT(hold.timed == LUBBER_TIMED_LEG_OUTBOUND_FROM_LEVEL && isnan(hold.hold_distance_nm) && isnan(hold.hold_dme_nm));
    EXPECT(lubber_legs_fly(&hold, 1, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count == 4);
    EXPECT_NEAR(segments[1].duration_s, 60.0, 0.01);
    hold.timed = LUBBER_TIMED_LEG_INBOUND;
    EXPECT(lubber_legs_fly(&hold, 1, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count == 4);
    EXPECT_NEAR(segments[3].duration_s, 60.0, 0.3);
    hold.hold_distance_nm = 5.0;
    EXPECT(lubber_legs_fly(&hold, 1, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count == 4);
    EXPECT_NEAR(segments[3].length_nm, 5.0, 0.01);
    hold.hold_dme_nm = 14.0;
    EXPECT(lubber_legs_fly(&hold, 1, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count == 4);
    double dme_nm;
    lubber_observe(60.2, -9.7, 300.0, -7.0, segments[1].end_latitude_deg, segments[1].end_longitude_deg, 4000.0, NULL, &dme_nm, NULL, NULL);
    EXPECT_NEAR(dme_nm, 14.0, 0.005);
    hold.timed = 7;
    EXPECT(lubber_legs_fly(&hold, 1, &conditions, segments, 9, &count, NULL) == LUBBER_ERROR_UNKNOWN_CHOICE);

    struct lubber_leg back[2] = {leg_of(LUBBER_LEG_CODE_PROCEDURE_TURN), leg_of(LUBBER_LEG_CODE_COURSE_TO_FIX)};
    back[0].course_deg = 250.0;
    back[0].distance_nm = 4.0;
    back[0].off_time_s = 75.0;
    back[1].course_deg = 70.0;
    EXPECT(lubber_legs_fly(back, 2, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count > 4);
    EXPECT_NEAR(segments[1].duration_s + segments[2].duration_s, 75.0, 0.05);
    back[0].reversal = 1;
    EXPECT(lubber_legs_fly(back, 2, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count > 3);
    EXPECT_NEAR(segments[1].heading_change_deg, 80.0, 1e-9);
    EXPECT(segments[2].heading_change_deg < -200.0);
}

/* Each code ends where its letters say. */
static void every_code(void)
{
    double latitude, longitude, distance_nm, dme_nm, radial_deg;
    struct lubber_leg legs[3] = {leg_of(LUBBER_LEG_CODE_INITIAL_FIX), leg_of(LUBBER_LEG_CODE_TRACK_TO_FIX)};
    legs[0].fix_latitude_deg = 60.0;
    for (int32_t code = LUBBER_LEG_CODE_FIX_TO_ALTITUDE; code <= LUBBER_LEG_CODE_HOLD_TO_MANUAL; code++) {
        int from_fix = code <= LUBBER_LEG_CODE_FIX_TO_MANUAL;
        int onto_next = code == LUBBER_LEG_CODE_COURSE_TO_INTERCEPT || code == LUBBER_LEG_CODE_HEADING_TO_INTERCEPT;
        if (onto_next)
            continue;
        legs[2] = leg_of(code);
        struct lubber_path_segment end = from_fix ? end_of(&legs[2], 1) : end_of(legs, 3);
        lubber_geodesic_inverse(60.3, -10.0, end.end_latitude_deg, end.end_longitude_deg, &distance_nm, NULL, NULL);
        lubber_observe(60.2, -9.7, 300.0, -7.0, end.end_latitude_deg, end.end_longitude_deg, end.end_altitude_ft, &radial_deg, &dme_nm, NULL, NULL);
        switch (code) {
        case LUBBER_LEG_CODE_FIX_TO_ALTITUDE:
        case LUBBER_LEG_CODE_COURSE_TO_ALTITUDE:
        case LUBBER_LEG_CODE_HEADING_TO_ALTITUDE:
            EXPECT_NEAR(end.end_altitude_ft, 12000.0, 1e-6);
            break;
        case LUBBER_LEG_CODE_FIX_TO_DISTANCE:
            EXPECT_NEAR(distance_nm, 15.0, 1e-6);
            break;
        case LUBBER_LEG_CODE_FIX_TO_MANUAL:
            EXPECT_NEAR(distance_nm, 10.0, 1e-6);
            break;
        case LUBBER_LEG_CODE_FIX_TO_DME:
        case LUBBER_LEG_CODE_COURSE_TO_DME:
        case LUBBER_LEG_CODE_HEADING_TO_DME:
            EXPECT_NEAR(dme_nm, 15.0, 1e-6);
            break;
        case LUBBER_LEG_CODE_COURSE_TO_RADIAL:
        case LUBBER_LEG_CODE_HEADING_TO_RADIAL:
            EXPECT_NEAR(radial_deg, 10.0, 1e-6);
            break;
        case LUBBER_LEG_CODE_HEADING_TO_MANUAL:
            EXPECT_NEAR(end.start_heading_deg, 30.0, 0.1);
            break;
        default: /* racetracks end over their fix, inbound */
            EXPECT_NEAR(distance_nm, 0.0, 1e-6);
            EXPECT_NEAR(end.end_course_deg, 60.0, 0.1);
        }
    }

    /* To a fix by course, directly, and from a course or heading that meets the next leg. */
    struct lubber_leg next = leg_of(LUBBER_LEG_CODE_COURSE_TO_FIX);
    next.fix_latitude_deg = 60.8;
    next.fix_longitude_deg = -8.6;
    next.course_deg = 95.0;
    const int32_t before[2] = {LUBBER_LEG_CODE_COURSE_TO_INTERCEPT, LUBBER_LEG_CODE_HEADING_TO_INTERCEPT};
    for (int index = 0; index < 2; index++) {
        struct lubber_leg met[4] = {legs[0], legs[1], leg_of(before[index]), next};
        EXPECT_NEAR(end_of(met, 4).end_course_deg, 95.0, 0.1);
    }
    next.code = LUBBER_LEG_CODE_DIRECT_TO_FIX;
    struct lubber_leg direct[3] = {legs[0], legs[1], next};
    EXPECT_NEAR(end_of(direct, 3).end_latitude_deg, 60.8, 1e-9);

    /* Arcs: by DME about a station, and of a fixed radius about a centre. */
    for (int32_t code = LUBBER_LEG_CODE_ARC_TO_FIX; code <= LUBBER_LEG_CODE_RADIUS_TO_FIX; code++) {
        double far_latitude, far_longitude, course_deg = code == LUBBER_LEG_CODE_ARC_TO_FIX ? 270.0 : 180.0;
        struct lubber_leg arc[3] = {leg_of(LUBBER_LEG_CODE_INITIAL_FIX), leg_of(LUBBER_LEG_CODE_TRACK_TO_FIX), leg_of(code)};
        arc[1].passage = LUBBER_PASSAGE_FLY_BY;
        lubber_geodesic_direct(60.2, -9.7, 270.0, 12.0, &latitude, &longitude, NULL);
        lubber_geodesic_direct(latitude, longitude, course_deg, 12.0, &far_latitude, &far_longitude, NULL);
        arc[0].fix_latitude_deg = far_latitude, arc[0].fix_longitude_deg = far_longitude;
        arc[1].fix_latitude_deg = latitude, arc[1].fix_longitude_deg = longitude;
        lubber_geodesic_direct(60.2, -9.7, 0.0, 12.0, &latitude, &longitude, NULL);
        arc[2].fix_latitude_deg = latitude, arc[2].fix_longitude_deg = longitude;
        struct lubber_path_segment end = end_of(arc, 3);
        EXPECT(end.kind == 2);
        EXPECT_NEAR(end.end_latitude_deg, latitude, 1e-9);
    }

    /* A course and a heading that meet the arc, or end at its DME reading, roll out on it, from outside and from inside. */
    for (int index = 0; index < 8; index++) {
        const int32_t onto[4] = {LUBBER_LEG_CODE_COURSE_TO_INTERCEPT, LUBBER_LEG_CODE_HEADING_TO_INTERCEPT,
            LUBBER_LEG_CODE_COURSE_TO_DME, LUBBER_LEG_CODE_HEADING_TO_DME};
        int inside = index >= 4;
        struct lubber_leg arc[3] = {leg_of(LUBBER_LEG_CODE_INITIAL_FIX), leg_of(onto[index % 4]), leg_of(LUBBER_LEG_CODE_ARC_TO_FIX)};
        lubber_geodesic_direct(60.2, -9.7, inside ? 90.0 : 270.0, inside ? 2.0 : 30.0, &latitude, &longitude, NULL);
        arc[0].fix_latitude_deg = latitude, arc[0].fix_longitude_deg = longitude;
        arc[1].course_deg = 80.0;
        arc[1].distance_nm = 12.0;
        arc[2].to_right = !inside;
        lubber_geodesic_direct(60.2, -9.7, 0.0, 12.0, &latitude, &longitude, NULL);
        arc[2].fix_latitude_deg = latitude, arc[2].fix_longitude_deg = longitude;
        struct lubber_path_segment end = end_of(arc, 3);
        EXPECT(end.kind == 2);
        EXPECT_NEAR(end.end_latitude_deg, latitude, 1e-9);
        lubber_geodesic_inverse(60.2, -9.7, end.start_latitude_deg, end.start_longitude_deg, &distance_nm, NULL, NULL);
        EXPECT_NEAR(distance_nm, 12.0, 1e-6);
    }

    /* A procedure turn comes back on the course after it. */
    struct lubber_leg back[2] = {leg_of(LUBBER_LEG_CODE_PROCEDURE_TURN), leg_of(LUBBER_LEG_CODE_COURSE_TO_FIX)};
    back[0].course_deg = 250.0;
    back[0].distance_nm = 6.0;
    back[1].course_deg = 70.0;
    EXPECT_NEAR(end_of(back, 2).end_course_deg, 70.0, 0.1);
}

/* With a variation a course is magnetic, true less variation; what a program of an older header gives is true. */
static void magnetic_courses(void)
{
    struct lubber_leg_conditions conditions;
    EXPECT(lubber_leg_conditions_init(&conditions, sizeof conditions, 220.0, 4000.0) == LUBBER_OK && isnan(conditions.magnetic_variation_deg));
    conditions.wind_from_deg = 280.0;
    conditions.wind_speed_kt = 45.0;
    struct lubber_path_segment segments[9] = {{.struct_size = sizeof segments[0]}}, same[9] = {{.struct_size = sizeof same[0]}};
    size_t count, same_count, failed;
    const int32_t codes[3] = {LUBBER_LEG_CODE_COURSE_TO_RADIAL, LUBBER_LEG_CODE_HEADING_TO_RADIAL, LUBBER_LEG_CODE_HEADING_TO_MANUAL};
    for (int index = 0; index < 3; index++) {
        struct lubber_leg legs[3] = {leg_of(LUBBER_LEG_CODE_INITIAL_FIX), leg_of(codes[index]), leg_of(LUBBER_LEG_CODE_COURSE_TO_ALTITUDE)};
        size_t leg_count = index == 2 ? 2 : 3;
        legs[2].altitude_ft = 6000.0;
        conditions.climb_fpm = 200.0;
        conditions.magnetic_variation_deg = NAN;
        EXPECT(lubber_legs_fly(legs, leg_count, &conditions, same, 9, &same_count, NULL) == LUBBER_OK && same_count >= leg_count - 1);
        for (size_t leg = 0; leg < leg_count; leg++)
            legs[leg].course_deg += 6.5;
        conditions.magnetic_variation_deg = -6.5;
        EXPECT(lubber_legs_fly(legs, leg_count, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count == same_count);
        for (size_t segment = 0; segment < count; segment++) {
            EXPECT(segments[segment].start_course_deg == same[segment].start_course_deg && segments[segment].end_time_s == same[segment].end_time_s);
            EXPECT(segments[segment].end_latitude_deg == same[segment].end_latitude_deg);
        }

        /* As large as it was before there was a variation: what lies beyond is not looked at, and courses are true. */
        for (size_t leg = 0; leg < leg_count; leg++)
            legs[leg].course_deg -= 6.5;
        conditions.struct_size = offsetof(struct lubber_leg_conditions, magnetic_variation_deg);
        EXPECT(lubber_legs_fly(legs, leg_count, &conditions, segments, 9, &count, NULL) == LUBBER_OK && count == same_count);
        EXPECT(segments[count - 1].end_latitude_deg == same[count - 1].end_latitude_deg);
        conditions.struct_size = sizeof conditions;
    }
    struct lubber_leg away = leg_of(LUBBER_LEG_CODE_FIX_TO_MANUAL);
    const double beyond[3] = {200.0, -180.5, INFINITY};
    for (int index = 0; index < 3; index++) {
        conditions.magnetic_variation_deg = beyond[index];
        EXPECT(lubber_legs_fly(&away, 1, &conditions, segments, 9, &count, &failed) == LUBBER_ERROR_MAGNETIC_VARIATION && count == 0 && failed == 0);
    }
}

int main(void)
{
    every_code();
    lengths_and_forms();
    magnetic_courses();
    struct lubber_leg legs[3];
    const double latitudes[3] = {60.0, 60.5, 60.5}, longitudes[3] = {-10.0, -10.0, -9.0};
    for (int index = 0; index < 3; index++) {
        EXPECT(lubber_leg_init(&legs[index], sizeof legs[index], index == 0 ? 1 : 2) == LUBBER_OK);
        legs[index].fix_latitude_deg = latitudes[index];
        legs[index].fix_longitude_deg = longitudes[index];
    }
    struct lubber_leg_conditions conditions;
    lubber_leg_conditions_init(&conditions, sizeof conditions, 250.0, 9000.0);
    conditions.wind_from_deg = 280.0;
    conditions.wind_speed_kt = 30.0;

    size_t count = 0, failed = 99;
    EXPECT(lubber_legs_fly(legs, 3, &conditions, NULL, 0, &count, &failed) == LUBBER_OK);
    EXPECT(count == 3 && failed == 0);
    struct lubber_path_segment segments[3] = {{.struct_size = sizeof segments[0]}};
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 3, &count, NULL) == LUBBER_OK);
    EXPECT(segments[0].kind == 0 && segments[1].kind == 1 && segments[2].kind == 0);
    EXPECT_NEAR(segments[2].end_latitude_deg, 60.5, 1e-9);
    EXPECT_NEAR(segments[2].end_longitude_deg, -9.0, 1e-9);

    /* The turn has the bank and the change of heading that the corner takes; each end is flown on its heading at its groundspeed. */
    double heading_in_deg, heading_out_deg, groundspeed_out_kt;
    EXPECT(lubber_wind_triangle(segments[0].end_course_deg, 250.0, 280.0, 30.0, &heading_in_deg, NULL) == LUBBER_OK);
    EXPECT(lubber_wind_triangle(segments[2].start_course_deg, 250.0, 280.0, 30.0, &heading_out_deg, &groundspeed_out_kt) == LUBBER_OK);
    EXPECT_NEAR(segments[1].start_heading_deg, heading_in_deg, 1e-9);
    EXPECT_NEAR(segments[2].start_groundspeed_kt, groundspeed_out_kt, 1e-9);
    EXPECT_NEAR(segments[1].heading_change_deg, heading_out_deg - heading_in_deg + 360.0, 0.2);
    EXPECT_NEAR(segments[1].bank_deg, 25.0, 1e-9);
    EXPECT(segments[0].bank_deg == 0.0 && segments[0].heading_change_deg == 0.0);

    /* The corner is cut by as much as the lead says. */
    double lead_nm, leg_nm, course_in_deg, course_out_deg;
    EXPECT(lubber_geodesic_inverse(60.0, -10.0, 60.5, -10.0, &leg_nm, NULL, &course_in_deg) == LUBBER_OK);
    EXPECT(lubber_geodesic_inverse(60.5, -10.0, 60.5, -9.0, NULL, &course_out_deg, NULL) == LUBBER_OK);
    EXPECT(lubber_lead_nm(course_in_deg, course_out_deg, 250.0, 280.0, 30.0, 25.0, 3.0, 5.0, &lead_nm) == LUBBER_OK);
    EXPECT_NEAR(segments[0].length_nm, leg_nm - lead_nm, 1e-9);

    double points[2][200];
    EXPECT(lubber_legs_points(legs, 3, &conditions, 0.5, points[0], points[1], 200, &count) == LUBBER_OK);
    EXPECT(count > 100 && count < 200);
    EXPECT_NEAR(points[0][0], 60.0, 1e-12);
    EXPECT_NEAR(points[1][count - 1], -9.0, 1e-9);

    /* With an upper wind, the last leg of a climb is flown in more wind than the first. */
    struct lubber_leg_conditions aloft = conditions;
    aloft.climb_fpm = 1000.0;
    aloft.wind_speed_kt = 0.0;
    aloft.wind_altitude_ft = 9000.0;
    aloft.upper_wind_altitude_ft = 29000.0;
    aloft.upper_wind_from_deg = 280.0;
    aloft.upper_wind_speed_kt = 80.0;
    EXPECT(lubber_legs_fly(legs, 3, &aloft, segments, 3, &count, NULL) == LUBBER_OK);
    EXPECT_NEAR(segments[0].start_groundspeed_kt, 250.0, 0.5);
    EXPECT(segments[2].start_groundspeed_kt > 260.0);
    struct lubber_path_segment by_two[3] = {segments[0], segments[1], segments[2]};
    aloft.upper_wind_speed_kt = NAN;
    EXPECT(lubber_legs_fly(legs, 3, &aloft, segments, 3, &count, NULL) == LUBBER_ERROR_WIND_SPEED);

    /* The same two levels as an array take the place of every other wind, a level between them that changes nothing too. */
    const struct lubber_wind_level levels[3] = {
        {sizeof levels[0], 9000.0, 280.0, 0.0}, {sizeof levels[0], 19000.0, 280.0, 40.0}, {sizeof levels[0], 29000.0, 280.0, 80.0}};
    const struct lubber_wind_level outer[2] = {levels[0], levels[2]};
    aloft.wind_speed_kt = NAN;
    aloft.wind_levels = outer;
    aloft.wind_level_count = 2;
    EXPECT(lubber_legs_fly(legs, 3, &aloft, segments, 3, &count, NULL) == LUBBER_OK && count == 3);
    for (int index = 0; index < 3; index++) {
        EXPECT(segments[index].end_latitude_deg == by_two[index].end_latitude_deg && segments[index].end_time_s == by_two[index].end_time_s);
        EXPECT(segments[index].start_groundspeed_kt == by_two[index].start_groundspeed_kt);
    }
    aloft.wind_levels = levels;
    aloft.wind_level_count = 3;
    EXPECT(lubber_legs_fly(legs, 3, &aloft, segments, 3, &count, NULL) == LUBBER_OK);
    EXPECT_NEAR(segments[2].end_time_s, by_two[2].end_time_s, 1e-6);

    /* One level is one wind at every altitude. */
    const struct lubber_wind_level only = {sizeof only, 30000.0, 280.0, 30.0};
    struct lubber_leg_conditions steady = conditions;
    steady.climb_fpm = aloft.climb_fpm;
    EXPECT(lubber_legs_fly(legs, 3, &steady, by_two, 3, &count, NULL) == LUBBER_OK);
    aloft.wind_levels = &only;
    aloft.wind_level_count = 1;
    EXPECT(lubber_legs_fly(legs, 3, &aloft, segments, 3, &count, NULL) == LUBBER_OK);
    EXPECT(segments[2].end_time_s == by_two[2].end_time_s && segments[2].end_longitude_deg == by_two[2].end_longitude_deg);

    /* The three straight legs of an arc in one call: the first ends where the second begins. */
    const double from = 350.0, to = 50.0, radius = 12.0, within = 0.25, speed = 150.0, wind_from = 310.0, wind_speed = 30.0;
    const double number[3] = {1.0, 2.0, 3.0};
    double begins[3], ends[3], course[3], heading[3];
    const ptrdiff_t each = sizeof(double);
    EXPECT(lubber_arc_chord_leg_n(3, &from, 0, &to, 0, &radius, 0, LUBBER_ARC_SENSE_CLOCKWISE, LUBBER_CHORD_PLACEMENT_INSIDE,
               &within, 0, number, each, &speed, 0, &wind_from, 0, &wind_speed, 0, begins, each, ends, each, course, each,
               heading, each, NULL, 0, NULL, 0, NULL) == 0);
    EXPECT_NEAR(course[0], 90.0, 1e-9);
    EXPECT_NEAR(course[2], 130.0, 1e-9);
    EXPECT_NEAR(begins[1], ends[0], 1e-9);
    EXPECT_NEAR(heading[0], 82.6, 0.05);

    /* A second leg too short for its turn says so; a number that is missing has its own status. */
    legs[1].fix_latitude_deg = 60.01;
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 3, &count, &failed) == LUBBER_ERROR_LEG_NOT_FLOWN);
    EXPECT(count == 0 && failed == 2);
    legs[1].fix_latitude_deg = NAN;
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 3, &count, &failed) == LUBBER_ERROR_LATITUDE);
    EXPECT(count == 0 && failed == 2);
    EXPECT(lubber_leg_init(&legs[0], sizeof legs[0], 77) == LUBBER_ERROR_UNKNOWN_CHOICE);
    /* Which leg is none, or has an alternative that is none, is told too. */
    legs[1].code = 99;
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 3, &count, &failed) == LUBBER_ERROR_UNKNOWN_CHOICE && failed == 2);
    legs[1].code = LUBBER_LEG_CODE_TRACK_TO_FIX;
    legs[2].passage = 7;
    EXPECT(lubber_legs_fly(legs, 3, &conditions, segments, 3, &count, &failed) == LUBBER_ERROR_UNKNOWN_CHOICE && failed == 3);
    EXPECT(lubber_legs_fly(legs, 3, NULL, segments, 3, &count, &failed) == LUBBER_ERROR_STRUCT);
    return expect_close();
}
