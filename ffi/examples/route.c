/* The brief of a route over four stations, in winds by level: its legs, and the reading at which each turn begins. */
#include <stdio.h>
#include "lubberline.h"

enum { FIXES = 4, LEGS = FIXES - 1, TURNS = FIXES - 2 };

int main(void)
{
    static const char *const names[FIXES] = {"Skerra", "Ostvik", "Marram", "Tulloch"}, *const sides[] = {"left", "none", "right"};
    const double latitudes[FIXES] = {61.82, 61.25, 59.93, 58.72}, longitudes[FIXES] = {-14.40, -11.50, -10.90, -9.35};
    const double elevations[FIXES] = {310.0, 420.0, 95.0, 780.0}, declinations[FIXES] = {-8.0, -6.0, -5.0, -5.0};
    struct lubber_route_fix fixes[FIXES];
    for (int index = 0; index < FIXES; index++) {
        lubber_route_fix_init(&fixes[index], sizeof fixes[index], latitudes[index], longitudes[index]);
        fixes[index].elevation_ft = elevations[index];
        fixes[index].declination_deg = declinations[index];
    }

    const size_t size = sizeof(struct lubber_wind_level);
    const struct lubber_wind_level winds[] = {{size, 30000.0, 250.0, 70.0}, {size, 34000.0, 255.0, 85.0}, {size, 39000.0, 270.0, 95.0}};
    double airspeed_kt;
    lubber_tas_from_mach_kt(0.78, 35000.0, 7.0, &airspeed_kt);
    struct lubber_route_conditions conditions;
    lubber_route_conditions_init(&conditions, sizeof conditions, airspeed_kt, 35000.0);
    conditions.altimeter_setting_hpa = 1004.0;
    conditions.isa_deviation_k = 7.0;
    conditions.wind_levels = winds;
    conditions.wind_level_count = sizeof winds / sizeof *winds;

    struct lubber_route_leg legs[LEGS] = {{.struct_size = sizeof legs[0]}};
    struct lubber_route_turn turns[TURNS] = {{.struct_size = sizeof turns[0]}};
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    int32_t status = lubber_route_brief(fixes, FIXES, &conditions, legs, LEGS, turns, TURNS, &summary);
    if (status != LUBBER_OK) {
        printf("station %zu, leg %zu: %s\n", summary.failed_fix, summary.failed_leg, lubber_status_text(status));
        return 1;
    }
    for (int index = 0; index < LEGS; index++) {
        printf("%s - %s: %.1f NM on radial %03.0f, heading %03.0f at %.0f kt, %.1f NM straight in %.0f s%s\n", names[index],
               names[index + 1], legs[index].length_nm, legs[index].radial_from_deg, legs[index].heading_deg,
               legs[index].groundspeed_kt, legs[index].straight_nm, legs[index].straight_time_s,
               legs[index].long_enough ? "" : ", TOO SHORT");
        if (index < TURNS)
            printf("%s: turn %s at %.1f DME on radial %03.0f, %.0f s from the start; bank %.0f; rolled out at %.1f DME%s\n",
                   names[index + 1], sides[turns[index].side + 1], turns[index].begin_at_dme_nm,
                   turns[index].begin_on_radial_deg, turns[index].begin_after_start_s, turns[index].bank_deg,
                   turns[index].roll_out_dme_nm, turns[index].begins_in_cone ? "; begun in the cone" : "");
    }
    printf("%.1f NM in %.0f s\n", summary.total_distance_nm, summary.total_time_s);

    struct lubber_error_model errors;
    lubber_error_model_init(&errors, sizeof errors);
    struct lubber_sureness sure[TURNS] = {{.struct_size = sizeof sure[0]}};
    size_t count;
    lubber_route_sureness(fixes, FIXES, &conditions, &errors, 1.0, 0.95, 20000, 1, sure, TURNS, &count);
    for (size_t index = 0; index < count; index++)
        printf("%s: to overshoot by less than a mile 95 times of 100, begin at %.1f DME\n", names[index + 1],
               sure[index].begin_with_margin_at_dme_nm);
    return 0;
}

/* Prints
 * Skerra - Ostvik: 90.1 NM on radial 119, heading 118 at 526 kt, 85.7 NM straight in 587 s
 * Ostvik: turn right at 7.3 DME on radial 300, 587 s from the start; bank 25; rolled out at 7.1 DME; begun in the cone
 * Ostvik - Marram: 81.4 NM on radial 173, heading 178 at 450 kt, 75.8 NM straight in 607 s
 * Marram: turn left at 6.1 DME on radial 353, 1251 s from the start; bank 25; rolled out at 6.1 DME; begun in the cone
 * Marram - Tulloch: 87.0 NM on radial 151, heading 157 at 481 kt, 85.3 NM straight in 638 s
 * 257.8 NM in 1914 s
 * Ostvik: to overshoot by less than a mile 95 times of 100, begin at 7.4 DME
 * Marram: to overshoot by less than a mile 95 times of 100, begin at 5.9 DME
 */
