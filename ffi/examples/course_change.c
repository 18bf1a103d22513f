/* The main job: where to begin the turn at a station, what the turn does, and where the aircraft is during it. */
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* Over Ostvik from course 120 to 173 of the station's north, at 461 kt in a wind from 261 at 85, 35 300 ft above it. */
    struct lubber_course_change_input input;
    lubber_course_change_input_init(&input, sizeof input);
    input.inbound_course_deg = 120.0;
    input.outbound_course_deg = 173.0;
    input.true_airspeed_kt = 461.0;
    input.wind_from_deg = 261.0;
    input.wind_speed_kt = 85.0;
    input.roll_rate_deg_per_s = 4.0;
    input.height_above_station_ft = 35300.0;

    struct lubber_course_change_result result = {.struct_size = sizeof result};
    int32_t status = lubber_course_change(&input, &result);
    if (status != LUBBER_OK) {
        printf("no turn: %s\n", lubber_status_text(status));
        return 1;
    }
    printf("begin at %.1f DME on radial %03.0f, %.2f NM before the station\n", result.dme_at_roll_in_nm,
           result.radial_at_roll_in_deg, result.lead_nm);
    printf("turn %.0f degrees, heading %03.0f to %03.0f, bank %.0f, %.0f s\n", result.heading_change_deg,
           result.heading_before_deg, result.heading_after_deg, result.bank_deg, result.duration_s);
    printf("roll out at %.1f DME on radial %03.0f\n", result.dme_at_roll_out_nm, result.radial_at_roll_out_deg);
    printf("flying over it would overshoot by %.1f NM and cost %.0f s%s\n", result.fly_over_greatest_overshoot_nm,
           result.fly_over_extra_time_s, result.enters_cone ? "; the turn is in the cone of confusion" : "");

    for (double time_s = 0.0; time_s < result.duration_s; time_s += 20.0) {
        double radial_deg, distance_nm, heading_deg, bank_deg;
        lubber_course_change_at(&input, time_s, &radial_deg, &distance_nm, &heading_deg, &bank_deg);
        printf("  after %2.0f s: radial %03.0f, %.2f NM out, heading %03.0f, bank %2.0f\n", time_s, radial_deg, distance_nm,
               heading_deg, bank_deg);
    }
    return 0;
}

/* Prints
 * begin at 7.3 DME on radial 300, 4.43 NM before the station
 * turn 57 degrees, heading 127 to 184, bank 25, 58 s
 * roll out at 7.1 DME on radial 173
 * flying over it would overshoot by 3.5 NM and cost 21 s; the turn is in the cone of confusion
 *   after  0 s: radial 300, 4.43 NM out, heading 127, bank  0
 *   after 20 s: radial 288, 1.63 NM out, heading 145, bank 25
 *   after 40 s: radial 182, 1.76 NM out, heading 167, bank 25
 */
