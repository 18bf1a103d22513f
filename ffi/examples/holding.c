/* A hold in wind: how to enter it, how long to fly outbound and on which heading, and the room it takes. */
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    static const char *const entries[] = {"", "parallel", "offset", "direct"};
    /* Right turns on inbound course 120 at 14 000 ft, 220 kt true, wind from 210 at 40; the fix is reached on heading 250. */
    const double inbound_deg = 120.0, tas_kt = 220.0;

    double entry, first_course_deg;
    lubber_holding_entry(250.0, inbound_deg, LUBBER_HOLDING_SIDE_RIGHT, &entry, NULL, NULL, NULL, &first_course_deg);
    printf("%s entry, first course %03.0f\n", entries[(int)entry], first_course_deg);

    double timed, leg_s;
    lubber_holding_timing(14000.0, LUBBER_TIMING_AUTHORITY_ICAO, &timed, &leg_s);
    printf("%s leg of %.0f s\n", timed == LUBBER_TIMED_LEG_INBOUND ? "inbound" : "outbound", leg_s);

    double bank_deg, heading_deg, factor, outbound_s, inbound_s, whole_s, length_nm, width_nm;
    int32_t status = lubber_holding_pattern(inbound_deg, LUBBER_HOLDING_SIDE_RIGHT, (int32_t)timed, leg_s, tas_kt, 210.0, 40.0,
                                            25.0, 3.0, 5.0, &heading_deg, NULL, NULL, &factor, NULL, &outbound_s, &inbound_s,
                                            &whole_s, NULL, NULL, NULL, &length_nm, &width_nm, &bank_deg);
    if (status != LUBBER_OK) {
        printf("no pattern: %s\n", lubber_status_text(status));
        return 1;
    }
    printf("bank %.1f; outbound heading %05.1f (%.1f times the drift), turn inbound after %.0f s\n", bank_deg, heading_deg,
           -factor, outbound_s);
    printf("inbound for %.0f s; once round in %.0f s, %.1f by %.1f NM\n", inbound_s, whole_s, length_nm, width_nm);
    return 0;
}

/* Prints
 * offset entry, first course 270
 * outbound leg of 60 s
 * bank 25.0; outbound heading 266.6 (-3.2 times the drift), turn inbound after 60 s
 * inbound for 60 s; once round in 297 s, 6.9 by 3.9 NM
 */
