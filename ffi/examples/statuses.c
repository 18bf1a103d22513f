/* What goes wrong: every call gives a status, its text says what is allowed, and every output is then NaN. */
#include <math.h>
#include <stdio.h>
#include "lubberline.h"

static void show(const char *what, int32_t status, const double *value)
{
    printf("%s: %s (%d)%s\n", what, lubber_status_text(status), (int)status, isnan(*value) ? ", NaN" : "");
}

int main(void)
{
    double value = 0.0;
    show("a speed of zero", lubber_turn_radius_nm(0.0, 25.0, &value), &value);
    show("a bank of 90", lubber_turn_radius_nm(250.0, 90.0, &value), &value);
    show("150 kt across 120", lubber_wind_triangle(90.0, 120.0, 0.0, 150.0, NULL, &value), &value);
    show("a reversal", lubber_lead_nm(90.0, 270.0, 250.0, 0.0, 0.0, 25.0, 3.0, 5.0, &value), &value);
    show("an unknown rule", lubber_radio_horizon_nm(9000.0, 30.0, 99, &value), &value);

    /* No number is a number that is not known: it comes back as NaN, and nothing is wrong. */
    show("a speed that is NaN", lubber_turn_radius_nm(NAN, 25.0, &value), &value);

    /* So a chain of calls needs one look at its end. */
    double tas_kt, radius_nm, anticipation_nm;
    lubber_tas_from_cas_kt(-280.0, 35000.0, 0.0, &tas_kt);
    lubber_turn_radius_nm(tas_kt, 25.0, &radius_nm);
    show("the last of three", lubber_turn_anticipation_nm(radius_nm, 60.0, &anticipation_nm), &anticipation_nm);

    /* A structure whose size was forgotten. */
    struct lubber_course_change_result result = {0};
    show("no struct_size", lubber_course_change(NULL, &result), &result.lead_nm);
    return 0;
}

/* Prints
 * a speed of zero: true airspeed out of range; allowed: above 0.0 to 5000.0 kt (-17), NaN
 * a bank of 90: bank out of range; allowed: above 0.0 below 90.0 deg (-6), NaN
 * 150 kt across 120: the airspeed cannot hold the course against the wind (-102), NaN
 * a reversal: the course change is a reversal and has no lead (-101), NaN
 * an unknown rule: a choice is none of its alternatives (-106), NaN
 * a speed that is NaN: ok (0), NaN
 * the last of three: ok (0), NaN
 * no struct_size: a pointer is null, or a structure has a size or a setting that this library does not know (-1001)
 */
