/* A procedure as legs: from fix to fix past Ostvik, then climbing on a course; its segments, and points to draw it by. */
#include <stdio.h>
#include "lubberline.h"

enum { LEGS = 4, MOST = 16 };

int main(void)
{
    static const char *const kinds[] = {"straight", "turn", "arc"}, *const names[LEGS] = {"start", "Ostvik", "bend", "climb"};
    /* The codes of ARINC 424: 1 is an initial fix, 2 a track to a fix, 11 a course to an altitude. */
    const int32_t codes[LEGS] = {1, 2, 2, 11};
    const double latitudes[LEGS - 1] = {61.40, 61.25, 60.95}, longitudes[LEGS - 1] = {-12.20, -11.50, -11.36};
    struct lubber_leg legs[LEGS];
    for (int index = 0; index < LEGS; index++) {
        lubber_leg_init(&legs[index], sizeof legs[index], codes[index]);
        if (index < LEGS - 1) {
            legs[index].fix_latitude_deg = latitudes[index];
            legs[index].fix_longitude_deg = longitudes[index];
        }
    }
    legs[3].course_deg = 200.0;
    legs[3].altitude_ft = 9500.0;

    struct lubber_leg_conditions conditions;
    lubber_leg_conditions_init(&conditions, sizeof conditions, 220.0, 3000.0);
    conditions.wind_from_deg = 255.0;
    conditions.wind_speed_kt = 30.0;
    conditions.climb_fpm = 500.0;

    struct lubber_path_segment segments[MOST] = {{.struct_size = sizeof segments[0]}};
    size_t count, failed_leg, points;
    int32_t status = lubber_legs_fly(legs, LEGS, &conditions, segments, MOST, &count, &failed_leg);
    if (status != LUBBER_OK || count > MOST) {
        printf("leg %zu: %s\n", failed_leg, lubber_status_text(status));
        return 1;
    }
    for (size_t index = 0; index < count; index++)
        printf("%-6s %-8s %5.2f NM, to %.4f, %.4f on course %05.1f at %4.0f ft, %3.0f s\n", names[segments[index].leg],
               kinds[segments[index].kind], segments[index].length_nm, segments[index].end_latitude_deg,
               segments[index].end_longitude_deg, segments[index].end_course_deg, segments[index].end_altitude_ft,
               segments[index].end_time_s);
    lubber_legs_points(legs, LEGS, &conditions, 0.5, NULL, NULL, 0, &points);
    printf("%zu points draw it, half a mile apart\n", points);
    return 0;
}

/* Prints
 * Ostvik straight 21.13 NM, to 61.2571, -11.5325 on course 114.3 at 5614 ft, 314 s
 * bend   turn      1.87 NM, to 61.2345, -11.4927 on course 167.2 at 5858 ft, 343 s
 * bend   straight 17.55 NM, to 60.9500, -11.3600 on course 167.3 at 8286 ft, 634 s
 * climb  turn      1.08 NM, to 60.9324, -11.3620 on course 200.0 at 8442 ft, 653 s
 * climb  straight  7.11 NM, to 60.8214, -11.4448 on course 199.9 at 9500 ft, 780 s
 * 102 points draw it, half a mile apart
 */
