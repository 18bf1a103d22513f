/* A turn in still air: which limit governs it, and the room it takes with its roll in and out. */
#include <stdio.h>
#include "lubberline.h"

int main(void)
{
    /* At most 25 degrees of bank and 3 degrees per second. */
    const double speeds_kt[] = {120.0, 180.0, 250.0, 460.0};
    for (int index = 0; index < 4; index++) {
        double standard_rate_deg, bank_deg, rate_deg_per_s, radius_nm, governor;
        lubber_bank_for_rate_deg(speeds_kt[index], 3.0, &standard_rate_deg);
        lubber_limited_turn(speeds_kt[index], 25.0, 3.0, &bank_deg, &rate_deg_per_s, &radius_nm, &governor);
        printf("%3.0f kt: standard rate needs %.1f degrees; flown at %.1f, %.2f a second, radius %.2f NM, by the %s\n",
               speeds_kt[index], standard_rate_deg, bank_deg, rate_deg_per_s, radius_nm,
               governor == LUBBER_GOVERNOR_BANK_LIMIT ? "bank limit" : "rate limit");
    }

    /* 53 degrees to the right at 460 kt, rolling at 4 degrees per second. */
    double duration_s, roll_s, advance_nm, transfer_nm, load;
    lubber_rolled_turn(460.0, 53.0, 25.0, 3.0, 4.0, NULL, &duration_s, &roll_s, &advance_nm, &transfer_nm, NULL);
    lubber_load_factor(25.0, &load);
    printf("53 degrees take %.0f s, of which %.1f rolling in and out each\n", duration_s, roll_s);
    printf("they end %.2f NM ahead and %.2f NM to the side, at %.2f g\n", advance_nm, transfer_nm, load);
    return 0;
}

/* Prints
 * 120 kt: standard rate needs 18.2 degrees; flown at 18.2, 3.00 a second, radius 0.64 NM, by the rate limit
 * 180 kt: standard rate needs 26.3 degrees; flown at 25.0, 2.83 a second, radius 1.01 NM, by the bank limit
 * 250 kt: standard rate needs 34.5 degrees; flown at 25.0, 2.04 a second, radius 1.95 NM, by the bank limit
 * 460 kt: standard rate needs 51.6 degrees; flown at 25.0, 1.11 a second, radius 6.61 NM, by the bank limit
 * 53 degrees take 54 s, of which 6.2 rolling in and out each
 * they end 5.94 NM ahead and 2.96 NM to the side, at 1.10 g
 */
