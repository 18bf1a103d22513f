/* In a wind: the heading for a course, the time for a leg, and the wind itself from what is observed. */
#include <math.h>
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* Course 114 at 461 kt true in a wind from 255 at 85; all directions from the same north. */
    const double course_deg = 114.0, tas_kt = 461.0, wind_from_deg = 255.0, wind_kt = 85.0;

    double heading_deg, groundspeed_kt, headwind_kt, crosswind_kt, time_s;
    lubber_wind_triangle(course_deg, tas_kt, wind_from_deg, wind_kt, &heading_deg, &groundspeed_kt);
    lubber_wind_components(course_deg, wind_from_deg, wind_kt, &headwind_kt, &crosswind_kt);
    lubber_time_to_fly_s(90.0, groundspeed_kt, &time_s);
    printf("heading %05.1f, groundspeed %.0f kt\n", heading_deg, groundspeed_kt);
    printf("%.0f kt of %s, %.0f kt from the %s\n", fabs(headwind_kt), headwind_kt < 0.0 ? "tailwind" : "headwind",
           fabs(crosswind_kt), crosswind_kt < 0.0 ? "left" : "right");
    printf("90 NM take %.1f minutes\n", time_s / 60.0);

    /* On heading 120 the aircraft is seen to track 113 at 530 kt: the wind has changed. */
    double found_from_deg, found_kt;
    lubber_wind_from_track(120.0, tas_kt, 113.0, 530.0, &found_from_deg, &found_kt);
    printf("found wind: %03.0f at %.0f kt\n", found_from_deg, found_kt);

    /* Forecast for FL300 and FL340; the flight is at FL320. */
    lubber_wind_between_levels(32000.0, 30000.0, 250.0, 70.0, 34000.0, 270.0, 90.0, &found_from_deg, &found_kt);
    printf("between the levels: %03.0f at %.0f kt\n", found_from_deg, found_kt);
    return 0;
}

/* Prints
 * heading 120.7, groundspeed 524 kt
 * 66 kt of tailwind, 53 kt from the right
 * 90 NM take 10.3 minutes
 * found wind: 255 at 92 kt
 * between the levels: 261 at 79 kt
 */
