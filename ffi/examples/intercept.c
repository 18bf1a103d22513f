/* Onto a course from beside it: the heading to fly there, and where the turn onto it begins. */
#include <math.h>
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* 4 NM left of course 090, intercepting at 35 degrees at 240 kt in a wind from 010 at 35. */
    double heading_deg, groundspeed_kt, along_nm, lead_nm, time_to_roll_in_s, cross_track_nm;
    lubber_intercept(90.0, -4.0, 35.0, 240.0, 10.0, 35.0, 25.0, 3.0, 5.0, NULL, &heading_deg, &groundspeed_kt, NULL, NULL,
                     &along_nm, &lead_nm, NULL, &time_to_roll_in_s, &cross_track_nm);
    printf("heading %03.0f, groundspeed %.0f kt\n", heading_deg, groundspeed_kt);
    printf("turn after %.0f s, %.2f NM off course and %.2f NM before it; it is reached %.1f NM on\n", time_to_roll_in_s,
           -cross_track_nm, lead_nm, along_nm);

    /* From radial 250 at 22 NM on track 160 to radial 220, then outbound on it: what is shown when the turn begins. */
    double radial_deg, distance_nm, needle_deg, time_s;
    int32_t status = lubber_radial_intercept(250.0, 22.0, 220.0, LUBBER_RADIAL_FLOWN_OUTBOUND, 160.0, 240.0, 10.0, 35.0, 25.0,
                                             3.0, 5.0, NULL, NULL, NULL, NULL, NULL, &time_s, &radial_deg, &distance_nm,
                                             &needle_deg, NULL, NULL, NULL);
    if (status != LUBBER_OK) {
        printf("no intercept: %s\n", lubber_status_text(status));
        return 1;
    }
    printf("after %.0f s at radial %05.1f, %.1f NM out, needle %.1f degrees to the %s: turn\n", time_s, radial_deg, distance_nm,
           fabs(needle_deg), needle_deg < 0.0 ? "left" : "right");
    return 0;
}

/* Prints
 * heading 117, groundspeed 253 kt
 * turn after 88 s, 0.45 NM off course and 0.78 NM before it; it is reached 5.7 NM on
 * after 149 s at radial 223.1, 24.7 NM out, needle 3.1 degrees to the left: turn
 */
