/* What the receiver shows on the way over a station, course 120 selected, half a mile left of it: needle, TO and FROM, flag. */
#include <math.h>
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    static const char *const shown[] = {"OFF", "TO", "FROM"};
    static const char *const flags[] = {"", "abeam", "in the cone", "below the horizon", "out of range"};
    /* Ostvik: 420 ft high, declination 6 degrees west, so course 120 is 114 true. */
    const double lat = 61.25, lon = -11.50, true_course_deg = 114.0;

    for (double along_nm = -30.0; along_nm <= 30.0; along_nm += 10.0) {
        double aircraft_lat, aircraft_lon;
        lubber_offset_point(lat, lon, true_course_deg, -0.5, along_nm, &aircraft_lat, &aircraft_lon, NULL);

        double flag, to_from, deviation_deg, radial_deg, dme_nm;
        lubber_vor_receiver(lat, lon, 420.0, -6.0, aircraft_lat, aircraft_lon, 24000.0, 120.0, 10.0, 10.0, 130.0, 50.0, 30.0,
                            0.1, &flag, &to_from, &deviation_deg, NULL, &radial_deg, &dme_nm);
        printf("DME %4.1f  %-4s", dme_nm, shown[(int)to_from]);
        if (flag == LUBBER_FLAG_CLEAR)
            printf("  radial %05.1f, course %.1f degrees to the %s\n", radial_deg, fabs(deviation_deg),
                   deviation_deg < 0.0 ? "left" : "right");
        else
            printf("  %s\n", flags[(int)flag]);
    }
    return 0;
}

/* Prints
 * DME 30.3  TO    radial 301.0, course 1.0 degrees to the right
 * DME 20.4  TO    radial 301.4, course 1.4 degrees to the right
 * DME 10.7  TO    radial 302.9, course 2.9 degrees to the right
 * DME  3.9  OFF   in the cone
 * DME 10.7  FROM  radial 117.1, course 2.9 degrees to the right
 * DME 20.4  FROM  radial 118.6, course 1.4 degrees to the right
 * DME 30.3  FROM  radial 119.0, course 1.0 degrees to the right
 */
