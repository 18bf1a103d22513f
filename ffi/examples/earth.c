/* On the earth: a leg between two stations, a point along it, how far off it an aircraft is, and where two courses cross. */
#include <math.h>
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    const double skerra_lat = 61.82, skerra_lon = -14.40, ostvik_lat = 61.25, ostvik_lon = -11.50;

    double distance_nm, leaving_deg, arriving_deg;
    lubber_geodesic_inverse(skerra_lat, skerra_lon, ostvik_lat, ostvik_lon, &distance_nm, &leaving_deg, &arriving_deg);
    printf("Skerra to Ostvik: %.2f NM, leaving on course %05.1f, arriving on %05.1f\n", distance_nm, leaving_deg, arriving_deg);

    double lat, lon, course_deg;
    lubber_geodesic_direct(skerra_lat, skerra_lon, leaving_deg, 40.0, &lat, &lon, &course_deg);
    printf("40 NM on: %.4f, %.4f, course %05.1f there\n", lat, lon, course_deg);

    /* An aircraft a little north of the leg. Right of course is positive, so this is left of it. */
    double across_nm, along_nm;
    lubber_cross_track(skerra_lat, skerra_lon, leaving_deg, 61.60, -13.00, &across_nm, &along_nm, NULL, NULL, NULL);
    printf("at 61.60, -13.00: %.2f NM %s of course, %.1f NM along\n", fabs(across_nm),
           across_nm < 0.0 ? "left" : "right", along_nm);

    double from_skerra_nm, from_ostvik_nm;
    lubber_course_crossing(skerra_lat, skerra_lon, 135.0, ostvik_lat, ostvik_lon, 250.0, &lat, &lon, &from_skerra_nm,
                           &from_ostvik_nm, NULL, NULL);
    printf("course 135 from Skerra and 250 from Ostvik cross at %.4f, %.4f: %.1f and %.1f NM out\n", lat, lon, from_skerra_nm,
           from_ostvik_nm);
    return 0;
}

/* Prints
 * Skerra to Ostvik: 90.07 NM, leaving on course 111.1, arriving on 113.7
 * 40 NM on: 61.5745, -13.0990, course 112.2 there
 * at 61.60, -13.00: 2.50 NM left of course, 42.0 NM along
 * course 135 from Skerra and 250 from Ostvik cross at 61.0196, -12.7707: 67.3 and 39.5 NM out
 */
