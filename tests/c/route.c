/* The route of core/examples/brief/plans/islands.toml briefed in C, as JSON with the keys of that example; the test compares the two. */

#include <stdio.h>
#include <string.h>

#include "expect.h"
#include "json.h"

enum { FIXES = 5, LEGS = FIXES - 1, TURNS = FIXES - 2 };

static void tell_leg(const struct lubber_route_leg *leg)
{
#define NUMBER(field) number(#field, leg->field)
    open_with(NULL, '{');
    NUMBER(length_nm);
    NUMBER(initial_course_deg);
    NUMBER(final_course_deg);
    NUMBER(radial_from_deg);
    NUMBER(radial_to_deg);
    NUMBER(heading_deg);
    NUMBER(groundspeed_kt);
    NUMBER(straight_nm);
    NUMBER(straight_time_s);
    NUMBER(least_length_nm);
    NUMBER(horizon_from_nm);
    NUMBER(horizon_to_nm);
    NUMBER(unreceived_nm);
    truth("long_enough", leg->long_enough);
    close_with('}');
#undef NUMBER
    EXPECT(leg->received == 1 && leg->struct_size == sizeof *leg);
}

static void tell_turn(const struct lubber_route_turn *turn, const struct lubber_sureness *sure)
{
    static const char *const sources[8] = {"station_bearing", "dme", "wind_speed", "wind_direction", "airspeed", "bank", "roll_in_delay", "height"};
#define NUMBER(field) number(#field, turn->field)
#define OVER(field) number(#field, turn->fly_over_##field)
#define RULE(field) number(#field, turn->rule_##field)
    open_with(NULL, '{');
    NUMBER(height_above_station_ft);
    NUMBER(wind_from_deg);
    NUMBER(wind_speed_kt);
    NUMBER(inbound_course_deg);
    NUMBER(outbound_course_deg);
    NUMBER(course_change_deg);
    NUMBER(inbound_radial_deg);
    NUMBER(outbound_radial_deg);
    NUMBER(heading_before_deg);
    NUMBER(heading_after_deg);
    NUMBER(heading_change_deg);
    NUMBER(groundspeed_before_kt);
    NUMBER(groundspeed_after_kt);
    NUMBER(bank_deg);
    NUMBER(radius_nm);
    NUMBER(begin_at_dme_nm);
    NUMBER(begin_on_radial_deg);
    NUMBER(begin_before_fix_nm);
    NUMBER(ground_per_dme_tenth_nm);
    NUMBER(begin_after_last_roll_out_s);
    NUMBER(begin_after_start_s);
    NUMBER(turn_time_s);
    NUMBER(turn_length_nm);
    NUMBER(roll_out_after_start_s);
    NUMBER(roll_out_dme_nm);
    NUMBER(roll_out_radial_deg);
    NUMBER(roll_out_past_fix_nm);
    NUMBER(closest_approach_nm);
    NUMBER(cone_radius_nm);
    NUMBER(cone_edge_dme_nm);
    truth("begins_in_cone", turn->begins_in_cone);
    truth("enters_cone", turn->enters_cone);
    open_with("fly_over", '{');
    OVER(greatest_overshoot_nm);
    OVER(extra_distance_nm);
    OVER(extra_time_s);
    OVER(intercept_angle_deg);
    OVER(established_past_fix_nm);
    close_with('}');
    open_with("by_rule", '{');
    RULE(lead_nm);
    RULE(lead_error_nm);
    RULE(lead_with_height_nm);
    RULE(lead_with_height_error_nm);
    RULE(dme_nm);
    RULE(dme_error_nm);
    close_with('}');
    open_with("sureness", '{');
    number("mean_overshoot_nm", sure->mean_nm);
    number("deviation_nm", sure->deviation_nm);
    number("chance_beyond_limit", sure->chance_beyond);
    number("margin_nm", sure->margin_nm);
    number("begin_with_margin_at_dme_nm", sure->begin_with_margin_at_dme_nm);
    number("begin_with_margin_before_fix_nm", sure->begin_with_margin_before_fix_nm);
    number("linear_deviation_nm", sure->linear_deviation_nm);
    number("linear_chance_beyond_limit", sure->linear_chance_beyond);
    number("linear_margin_nm", sure->linear_margin_nm);
    open_with("by_source_nm", '{');
    for (int source = 0; source < 8; source++)
        number(sources[source], sure->by_source_nm[source]);
    close_with('}');
    close_with('}');
    close_with('}');
#undef NUMBER
#undef OVER
#undef RULE
    EXPECT(turn->governed_by == LUBBER_GOVERNOR_BANK_LIMIT && turn->struct_size == sizeof *turn);
    EXPECT(turn->side == (turn->heading_change_deg > 0.0 ? 1 : -1));
}

/* The points of legs and turns join, and end where the turns say they do. */
static void tell_points(const struct lubber_route_fix *fixes, const struct lubber_route_conditions *conditions, const struct lubber_route_turn *turns)
{
    double latitudes[64], longitudes[64], last_latitude = fixes[0].latitude_deg, last_longitude = fixes[0].longitude_deg;
    size_t count;
    for (size_t leg = 0; leg < LEGS; leg++) {
        open_with(NULL, '[');
        EXPECT(lubber_route_leg_points(fixes, FIXES, conditions, leg, 20.0, latitudes, longitudes, 64, &count) == LUBBER_OK && count > 2 && count <= 64);
        for (size_t point = 0; point < count; point++)
            printf("%s[%.17g, %.17g]", point == 0 ? "" : ", ", longitudes[point], latitudes[point]);
        close_with(']');
        EXPECT(latitudes[0] == last_latitude && longitudes[0] == last_longitude);
        if (leg < TURNS) {
            EXPECT(latitudes[count - 1] == turns[leg].begin_latitude_deg && longitudes[count - 1] == turns[leg].begin_longitude_deg);
            open_with(NULL, '[');
            EXPECT(lubber_route_turn_points(fixes, FIXES, conditions, leg, latitudes, longitudes, 64, &count) == LUBBER_OK && count == 41);
            for (size_t point = 0; point < count; point++)
                printf("%s[%.17g, %.17g]", point == 0 ? "" : ", ", longitudes[point], latitudes[point]);
            close_with(']');
            EXPECT(latitudes[0] == turns[leg].begin_latitude_deg && latitudes[40] == turns[leg].roll_out_latitude_deg);
            EXPECT(longitudes[0] == turns[leg].begin_longitude_deg && longitudes[40] == turns[leg].roll_out_longitude_deg);
            last_latitude = latitudes[40], last_longitude = longitudes[40];
        }
    }
}

/* What cannot be briefed says where, and leaves the arrays alone. */
static void failures(const struct lubber_route_fix *good, const struct lubber_route_conditions *conditions)
{
    struct lubber_route_fix fixes[FIXES];
    struct lubber_route_leg legs[LEGS];
    memset(legs, 0x55, sizeof legs);
    legs[0].struct_size = sizeof legs[0];
    struct lubber_route_leg before = legs[0];
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    const struct lubber_wind_level levels[2] = {{sizeof levels[0], 30000.0, 250.0, 70.0}, {sizeof levels[0], 30000.0, 250.0, 70.0}};
    struct {
        int32_t status;
        size_t fix, leg, level;
    } expected[] = {
        {LUBBER_ERROR_LATITUDE, 2, 0, 0}, {LUBBER_ERROR_SAME_PLACE, 0, 2, 0}, {LUBBER_ERROR_COURSE_REVERSAL, 2, 0, 0},
        {LUBBER_ERROR_LEVELS_NOT_ASCENDING, 4, 0, 2}, {LUBBER_ERROR_BELOW_STATION, 3, 0, 0}, {LUBBER_ERROR_UNKNOWN_CHOICE, 2, 0, 0},
        {LUBBER_ERROR_TRUE_AIRSPEED, 0, 0, 0}, {LUBBER_ERROR_LEVELS_NOT_ASCENDING, 0, 0, 2}, {LUBBER_ERROR_WIND_SPEED, 5, 0, 0},
    };
    for (size_t index = 0; index < sizeof expected / sizeof *expected; index++) {
        struct lubber_route_conditions odd = *conditions;
        memcpy(fixes, good, sizeof fixes);
        switch (index) {
        case 0: fixes[1].latitude_deg = 95.0; break;
        case 1: fixes[2] = fixes[1]; break;
        case 2: fixes[2] = fixes[0]; break;
        case 3: fixes[3].wind_levels = levels, fixes[3].wind_level_count = 2; break;
        case 4: fixes[2].elevation_ft = 29000.0, odd.pressure_altitude_ft = 20000.0; break;
        case 5: fixes[1].turn = 9; break;
        case 6: odd.true_airspeed_kt = NAN; break;
        case 7: odd.wind_levels = levels, odd.wind_level_count = 2; break;
        default: fixes[4].wind_from_deg = 10.0; break;
        }
        int32_t status = lubber_route_brief(fixes, FIXES, &odd, legs, LEGS, NULL, 0, &summary);
        EXPECT(status == expected[index].status && summary.failed_fix == expected[index].fix);
        EXPECT(summary.failed_leg == expected[index].leg && summary.failed_wind_level == expected[index].level);
        EXPECT(summary.leg_count == 0 && summary.turn_count == 0 && isnan(summary.total_distance_nm));
        EXPECT(memcmp(legs, &before, sizeof before) == 0);
    }
    /* A NaN in the errors makes NaN of every number. */
    struct lubber_error_model errors = {.struct_size = sizeof errors, .dme_nm = NAN};
    struct lubber_sureness sure[TURNS] = {{.struct_size = sizeof sure[0]}};
    size_t count;
    EXPECT(lubber_route_sureness(good, FIXES, conditions, &errors, 1.0, 0.95, 20, 1, sure, TURNS, &count) == LUBBER_OK && count == TURNS);
    EXPECT(isnan(sure[0].mean_nm) && isnan(sure[2].begin_with_margin_at_dme_nm));
}

int main(void)
{
    const double places[FIXES][4] = {
        {61.82, -14.40, 310.0, -8.0}, {61.25, -11.50, 420.0, -6.0}, {59.93, -10.90, 95.0, -5.0}, {58.72, -9.35, 780.0, -5.0}, {59.66, -7.02, 1240.0, -4.0},
    };
    struct lubber_route_fix fixes[FIXES];
    for (int index = 0; index < FIXES; index++) {
        EXPECT(lubber_route_fix_init(&fixes[index], sizeof fixes[index], places[index][0], places[index][1]) == LUBBER_OK);
        fixes[index].elevation_ft = places[index][2];
        fixes[index].declination_deg = places[index][3];
    }
    fixes[3].wind_from_deg = 240.0;
    fixes[3].wind_speed_kt = 105.0;
    double airspeed_kt;
    EXPECT(lubber_tas_from_mach_kt(0.78, 35000.0, 7.0, &airspeed_kt) == LUBBER_OK);
    struct lubber_route_conditions conditions;
    EXPECT(lubber_route_conditions_init(&conditions, sizeof conditions, airspeed_kt, 35000.0) == LUBBER_OK);
    conditions.altimeter_setting_hpa = 1004.0;
    conditions.isa_deviation_k = 7.0;
    conditions.wind_from_deg = 255.0;
    conditions.wind_speed_kt = 85.0;
    conditions.roll_rate_deg_per_s = 4.0;

    struct lubber_route_leg legs[LEGS] = {{.struct_size = sizeof legs[0]}};
    struct lubber_route_turn turns[TURNS] = {{.struct_size = sizeof turns[0]}};
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    EXPECT(lubber_route_brief(fixes, FIXES, &conditions, legs, LEGS, turns, TURNS, &summary) == LUBBER_OK);
    EXPECT(summary.leg_count == LEGS && summary.turn_count == TURNS && summary.failed_fix == 0 && summary.failed_leg == 0);
    struct lubber_error_model errors;
    EXPECT(lubber_error_model_init(&errors, sizeof errors) == LUBBER_OK);
    struct lubber_sureness sure[TURNS] = {{.struct_size = sizeof sure[0]}};
    size_t count;
    EXPECT(lubber_route_sureness(fixes, FIXES, &conditions, &errors, 1.0, 0.95, 20000, 1, sure, TURNS, &count) == LUBBER_OK && count == TURNS);

    open_with(NULL, '{');
    number("true_airspeed_kt", airspeed_kt);
    number("total_distance_nm", summary.total_distance_nm);
    number("total_time_s", summary.total_time_s);
    open_with("legs", '[');
    for (int index = 0; index < LEGS; index++)
        tell_leg(&legs[index]);
    close_with(']');
    open_with("course_changes", '[');
    for (int index = 0; index < TURNS; index++)
        tell_turn(&turns[index], &sure[index]);
    close_with(']');
    open_with("lines", '[');
    tell_points(fixes, &conditions, turns);
    close_with(']');
    close_with('}');
    failures(fixes, &conditions);
    return expect_close();
}
