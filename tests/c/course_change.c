/* The course change at a station: where to begin the turn, and what it does. */

#include <string.h>

#include "expect.h"

int main(void)
{
    struct lubber_course_change_input input;
    struct lubber_course_change_result result;

    /* Still air and an instant roll: the lead is the radius times the tangent of half the change. */
    lubber_course_change_input_init(&input, sizeof input);
    input.inbound_course_deg = 350.0;
    input.outbound_course_deg = 50.0;
    input.true_airspeed_kt = 430.0;
    input.roll_rate_deg_per_s = INFINITY;
    input.height_above_station_ft = 33000.0;
    result.struct_size = sizeof result;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_OK);
    EXPECT_NEAR(result.lead_nm, result.radius_nm * tan(30.0 * acos(-1.0) / 180.0), 1e-9);
    EXPECT_NEAR(result.past_fix_at_roll_out_nm, result.lead_nm, 1e-9);
    EXPECT(result.governed_by == LUBBER_GOVERNOR_BANK_LIMIT);
    EXPECT_NEAR(result.radial_at_roll_in_deg, 170.0, 1e-9);
    EXPECT(result.dme_at_roll_in_nm > result.lead_nm && result.dme_at_roll_in_nm < result.lead_nm + 33000.0 * 0.3048 / 1852.0);
    EXPECT(result.fly_over_extra_time_s > 0.0 && result.fly_over_greatest_overshoot_nm > 0.0);

    /* The generated function and the structure give the same lead. */
    double lead_nm;
    input.wind_from_deg = 270.0;
    input.wind_speed_kt = 80.0;
    input.roll_rate_deg_per_s = 4.0;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_OK);
    EXPECT(lubber_lead_nm(350.0, 50.0, 430.0, 270.0, 80.0, 25.0, 3.0, 4.0, &lead_nm) == LUBBER_OK);
    EXPECT(lead_nm == result.lead_nm);

    /* Along the turn: it begins at the lead, wings level, and ends on the outbound course. */
    double bearing_deg, distance_nm, heading_deg, bank_deg;
    EXPECT(lubber_course_change_at(&input, 0.0, &bearing_deg, &distance_nm, &heading_deg, &bank_deg) == LUBBER_OK);
    EXPECT_NEAR(distance_nm, result.lead_nm, 1e-9);
    EXPECT_NEAR(heading_deg, result.heading_before_deg, 1e-9);
    EXPECT_NEAR(bank_deg, 0.0, 1e-9);
    EXPECT(lubber_course_change_at(&input, result.duration_s / 2.0, NULL, NULL, NULL, &bank_deg) == LUBBER_OK);
    EXPECT_NEAR(bank_deg, result.bank_deg, 1e-9);
    EXPECT(lubber_course_change_at(&input, result.duration_s, &bearing_deg, NULL, &heading_deg, NULL) == LUBBER_OK);
    EXPECT_NEAR(bearing_deg, input.outbound_course_deg, 1e-6);
    EXPECT_NEAR(heading_deg, result.heading_after_deg, 1e-9);
    EXPECT(lubber_course_change_at(&input, INFINITY, &bearing_deg, NULL, NULL, NULL) == LUBBER_ERROR_TURN_TIME);
    EXPECT(isnan(bearing_deg));
    EXPECT(lubber_course_change_at(&input, NAN, NULL, &distance_nm, NULL, NULL) == LUBBER_OK);
    EXPECT(isnan(distance_nm));
    EXPECT(lubber_course_change_at(NULL, 0.0, NULL, &distance_nm, NULL, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(isnan(distance_nm));

    /* Over the station first: from there back onto the outbound course. */
    EXPECT(lubber_fly_over_at(&input, 0.0, NULL, &distance_nm, &heading_deg, &bank_deg) == LUBBER_OK);
    EXPECT_NEAR(distance_nm, 0.0, 1e-9);
    EXPECT_NEAR(heading_deg, result.heading_before_deg, 1e-9);
    EXPECT(lubber_fly_over_at(&input, result.fly_over_duration_s, &bearing_deg, &distance_nm, NULL, NULL) == LUBBER_OK);
    EXPECT_NEAR(distance_nm, result.fly_over_established_past_fix_nm, 1e-9);
    EXPECT_NEAR(bearing_deg, input.outbound_course_deg, 1e-6);
    EXPECT(lubber_fly_over_at(&input, INFINITY, &bearing_deg, NULL, NULL, NULL) == LUBBER_ERROR_TURN_TIME);
    EXPECT(isnan(bearing_deg));
    EXPECT(lubber_fly_over_at(NULL, 0.0, NULL, &distance_nm, NULL, NULL) == LUBBER_ERROR_STRUCT);
    EXPECT(isnan(distance_nm));

    /* The long way round to the left begins past the station. */
    input.turn = LUBBER_TURN_SIDE_LEFT;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_OK);
    EXPECT(result.heading_change_deg < -180.0);

    /* Failures have a status and leave NaN. */
    input.turn = 7;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_ERROR_UNKNOWN_CHOICE);
    EXPECT(isnan(result.lead_nm) && isnan(result.fly_over_extra_time_s));
    input.turn = LUBBER_TURN_SIDE_SHORTEST;
    input.outbound_course_deg = 170.0;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_ERROR_COURSE_REVERSAL);
    input.outbound_course_deg = NAN;
    EXPECT(lubber_course_change(&input, &result) == LUBBER_OK);
    EXPECT(isnan(result.lead_nm) && result.governed_by == -1 && result.enters_cone == -1);
    EXPECT(lubber_course_change(NULL, &result) == LUBBER_ERROR_STRUCT);
    EXPECT(lubber_course_change(&input, NULL) == LUBBER_ERROR_STRUCT);

    /* Any number in any field: no crash, and NaN with a negative status or an answer. */
    const double bad[] = {NAN, INFINITY, -INFINITY, 1e308, -1e308, 5e-324, 0.0, -1.0, 90.0, 180.0, 1e9};
    double *fields = &input.inbound_course_deg;
    size_t count = (offsetof(struct lubber_course_change_input, turn) - sizeof input.struct_size) / sizeof(double);
    for (size_t field = 0; field < count; field++) {
        for (size_t kind = 0; kind < sizeof bad / sizeof bad[0]; kind++) {
            lubber_course_change_input_init(&input, sizeof input);
            input.inbound_course_deg = 350.0;
            input.outbound_course_deg = 50.0;
            input.true_airspeed_kt = 430.0;
            fields[field] = bad[kind];
            int32_t status = lubber_course_change(&input, &result);
            EXPECT(status <= 0 && status != LUBBER_ERROR_INTERNAL && status != LUBBER_ERROR_STRUCT);
            EXPECT(status == LUBBER_OK || (isnan(result.lead_nm) && isnan(result.fly_over_extra_time_s)));
            EXPECT(!isnan(bad[kind]) || (status == LUBBER_OK && isnan(result.lead_nm)));
        }
    }

    EXPECT(strcmp(lubber_status_text(LUBBER_OK), "ok") == 0);
    EXPECT(lubber_status_text(12345) != NULL);
    return expect_close();
}
