/* A DME arc in wind: off the inbound radial onto it, round it, and off it onto the final radial. */
#include <math.h>
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* Inbound on radial 250, the 12-mile arc clockwise to radial 330, at 190 kt in a wind from 290 at 30. */
    const double arc_nm = 12.0, tas_kt = 190.0, wind_from_deg = 290.0, wind_kt = 30.0;
    const int32_t sense = LUBBER_ARC_SENSE_CLOCKWISE, flown = LUBBER_RADIAL_FLOWN_INBOUND;

    double begin_nm, onto_radial_deg, change_deg;
    lubber_arc_entry(250.0, flown, arc_nm, sense, tas_kt, wind_from_deg, wind_kt, 25.0, 3.0, 5.0, NULL, &begin_nm,
                     &onto_radial_deg, NULL, NULL, &change_deg, NULL);
    printf("begin the turn onto the arc %.2f NM out: %.0f degrees %s, wings level on radial %03.0f\n", begin_nm, fabs(change_deg),
           change_deg < 0.0 ? "left" : "right", onto_radial_deg);

    for (double radial_deg = 260.0; radial_deg <= 320.0; radial_deg += 20.0) {
        double heading_deg, groundspeed_kt, ahead_deg, bank_deg;
        lubber_arc_heading(radial_deg, arc_nm, sense, tas_kt, wind_from_deg, wind_kt, NULL, &heading_deg,
                           &groundspeed_kt, NULL, NULL, &ahead_deg, &bank_deg);
        printf("radial %03.0f: heading %05.1f, %.0f kt, station %4.1f degrees %s the wing tip, bank %.1f\n", radial_deg,
               heading_deg, groundspeed_kt, fabs(ahead_deg), ahead_deg < 0.0 ? "behind" : "ahead of", bank_deg);
    }

    double off_radial_deg, lead_radials, length_nm, time_s;
    lubber_arc_exit(330.0, flown, arc_nm, sense, tas_kt, wind_from_deg, wind_kt, 25.0, 3.0, 5.0, &off_radial_deg, NULL,
                    NULL, NULL, &lead_radials, NULL, NULL);
    lubber_arc_flown(onto_radial_deg, off_radial_deg, arc_nm, sense, tas_kt, wind_from_deg, wind_kt,
                     NULL, &length_nm, &time_s);
    printf("leave it at radial %05.1f, %.1f radials before 330, after %.1f NM and %.0f s\n", off_radial_deg, lead_radials,
           length_nm, time_s);
    return 0;
}

/* Prints
 * begin the turn onto the arc 13.33 NM out: 86 degrees left, wings level on radial 255
 * radial 260: heading 342.1, 173 kt, station  7.9 degrees behind the wing tip, bank 2.1
 * radial 280: heading 001.1, 182 kt, station  8.9 degrees behind the wing tip, bank 2.3
 * radial 300: heading 021.1, 193 kt, station  8.9 degrees behind the wing tip, bank 2.6
 * radial 320: heading 042.1, 203 kt, station  7.9 degrees behind the wing tip, bank 2.9
 * leave it at radial 321.3, 8.7 radials before 330, after 13.8 NM and 267 s
 */
