/* Path-and-terminator legs: three fixes flown by, and what is wrong with two. */

#include "expect.h"

int main(void)
{
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
    aloft.upper_wind_speed_kt = NAN;
    EXPECT(lubber_legs_fly(legs, 3, &aloft, segments, 3, &count, NULL) == LUBBER_ERROR_WIND_SPEED);

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
    EXPECT(lubber_leg_init(&legs[0], sizeof legs[0], 77) == LUBBER_ERROR_UNKNOWN_CHOICE);
    EXPECT(lubber_legs_fly(legs, 3, NULL, segments, 3, &count, &failed) == LUBBER_ERROR_STRUCT);
    return expect_close();
}
