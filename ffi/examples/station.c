/* From a station: radial and DME of an aircraft, how far that is along the ground, and how far the station reaches. */
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* Ostvik, 420 ft high, its radials counted from 6 degrees west of true; an aircraft at 31 000 ft. */
    double radial_deg, dme_nm, ground_nm, elevation_deg;
    lubber_observe(61.25, -11.50, 420.0, -6.0, 61.60, -11.00, 31000.0, &radial_deg, &dme_nm, &ground_nm, &elevation_deg);
    printf("radial %05.1f, DME %.2f, %.2f NM along the ground, %.1f degrees high\n", radial_deg, dme_nm, ground_nm,
           elevation_deg);

    /* A DME counts along the slant: what 10.0 means, and the least it can show. */
    const double height_ft = 31000.0 - 420.0;
    double at_ten_nm, least_nm, cone_nm;
    lubber_ground_distance_nm(10.0, height_ft, &at_ten_nm);
    lubber_least_dme_nm(height_ft, &least_nm);
    lubber_cone_radius_nm(height_ft, 50.0, &cone_nm);
    printf("10.0 DME is %.2f NM along the ground; overhead it shows %.2f\n", at_ten_nm, least_nm);
    printf("the cone of confusion reaches out to %.2f NM\n", cone_nm);

    double horizon_nm, reach_nm;
    lubber_radio_horizon_nm(height_ft, 30.0, LUBBER_HORIZON_RULE_FOUR_THIRDS, &horizon_nm);
    lubber_service_reach_nm(LUBBER_SERVICE_CLASS_HIGH, height_ft, 30.0, &reach_nm);
    printf("radio horizon %.0f NM; usable as published to %.0f NM\n", horizon_nm, reach_nm);
    return 0;
}

/* Prints
 * radial 040.2, DME 26.03, 25.52 NM along the ground, 10.9 degrees high
 * 10.0 DME is 8.63 NM along the ground; overhead it shows 5.03
 * the cone of confusion reaches out to 6.00 NM
 * radio horizon 222 NM; usable as published to 130 NM
 */
