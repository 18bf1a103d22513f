/* The legs of core/examples/brief/plans/approach.toml briefed in C, as JSON with the keys of that example; the test compares the two.
 * Before that: counts, room, what is null, winds by level, and the numbers of the checks. */

#include <string.h>

#include "expect.h"
#include "json.h"

enum { LEGS = 7, MOST = 64 };

static struct lubber_leg legs[LEGS];
static struct lubber_leg_conditions conditions;
static struct lubber_path_station station;
static struct lubber_path_surroundings surroundings;

static void fix(int leg, int32_t code, double latitude_deg, double longitude_deg)
{
    EXPECT(lubber_leg_init(&legs[leg], sizeof legs[leg], code) == LUBBER_OK);
    legs[leg].fix_latitude_deg = latitude_deg;
    legs[leg].fix_longitude_deg = longitude_deg;
    legs[leg].center_latitude_deg = station.latitude_deg;
    legs[leg].center_longitude_deg = station.longitude_deg;
    legs[leg].center_elevation_ft = station.elevation_ft;
    legs[leg].center_declination_deg = station.declination_deg;
}

static void make_plan(void)
{
    double true_airspeed_kt, altitude_ft;
    EXPECT(lubber_path_station_init(&station, sizeof station, 58.1, -7.3) == LUBBER_OK);
    station.elevation_ft = 95.0;
    station.declination_deg = -5.0;
    EXPECT(lubber_path_surroundings_init(&surroundings, sizeof surroundings) == LUBBER_OK);
    surroundings.stations = &station;
    surroundings.station_count = 1;
    surroundings.altimeter_setting_hpa = 1009.0;
    surroundings.isa_deviation_k = 4.0;
    EXPECT(surroundings.holding_rule == LUBBER_HOLDING_SPEED_RULE_ICAO);

    EXPECT(lubber_tas_from_cas_kt(150.0, 3000.0, 4.0, &true_airspeed_kt) == LUBBER_OK);
    EXPECT(lubber_true_altitude_ft(3000.0, 1009.0, 0.0, 4.0, &altitude_ft) == LUBBER_OK);
    EXPECT(lubber_leg_conditions_init(&conditions, sizeof conditions, true_airspeed_kt, altitude_ft) == LUBBER_OK);
    conditions.wind_from_deg = 250.0;
    conditions.wind_speed_kt = 25.0;

    fix(0, LUBBER_LEG_CODE_INITIAL_FIX, 58.4261, -7.7363);
    fix(1, LUBBER_LEG_CODE_TRACK_TO_FIX, 58.2633, -7.5172);
    fix(2, LUBBER_LEG_CODE_ARC_TO_FIX, 58.0821, -7.6753);
    legs[2].to_right = 0;
    fix(3, LUBBER_LEG_CODE_COURSE_TO_FIX, 58.1, -7.3);
    legs[3].course_deg = 85.0;
    legs[3].passage = LUBBER_PASSAGE_FLY_OVER;
    fix(4, LUBBER_LEG_CODE_COURSE_TO_DME, 58.1, -7.3);
    legs[4].course_deg = 85.0;
    legs[4].distance_nm = 6.0;
    fix(5, LUBBER_LEG_CODE_DIRECT_TO_FIX, 58.1, -7.3);
    legs[5].passage = LUBBER_PASSAGE_FLY_OVER;
    fix(6, LUBBER_LEG_CODE_HOLD_TO_MANUAL, 58.1, -7.3);
    legs[6].course_deg = 265.0;
    legs[6].to_right = 1;
}

static struct lubber_path_leg flown[MOST];
static struct lubber_path_turn turns[MOST];
static struct lubber_path_reading readings[MOST];
static struct lubber_path_check checks[MOST];
static size_t leg_count, turn_count, reading_count, check_count;

static int32_t brief(size_t count)
{
    size_t failed;
    flown[0].struct_size = sizeof flown[0];
    turns[0].struct_size = sizeof turns[0];
    readings[0].struct_size = sizeof readings[0];
    checks[0].struct_size = sizeof checks[0];
    int32_t status = lubber_path_legs(legs, count, &conditions, &surroundings, flown, MOST, &leg_count, &failed);
    EXPECT(lubber_path_turns(legs, count, &conditions, &surroundings, turns, MOST, &turn_count, &failed) == status);
    EXPECT(lubber_path_readings(legs, count, &conditions, &surroundings, readings, MOST, &reading_count, &failed) == status);
    EXPECT(lubber_path_checks(legs, count, &conditions, &surroundings, checks, MOST, &check_count, &failed) == status);
    EXPECT(leg_count <= MOST && turn_count <= MOST && reading_count <= MOST && check_count <= MOST);
    return status;
}

/* What is briefed is the path that is flown. */
static void the_same_path(void)
{
    static struct lubber_path_segment segments[MOST];
    size_t segment_count, turn = 0, check = 0;
    segments[0].struct_size = sizeof segments[0];
    EXPECT(brief(LEGS) == LUBBER_OK && leg_count == LEGS && reading_count == 2 * turn_count);
    EXPECT(lubber_legs_fly(legs, LEGS, &conditions, segments, MOST, &segment_count, NULL) == LUBBER_OK && segment_count <= MOST);
    double distance_nm[LEGS] = {0.0};
    for (size_t index = 0; index < segment_count; index++) {
        const struct lubber_path_segment *segment = &segments[index];
        distance_nm[segment->leg] += segment->length_nm;
        if (segment->kind == LUBBER_SEGMENT_KIND_TURN) {
            EXPECT(turns[turn].leg == segment->leg && turns[turn].code == legs[segment->leg].code);
            EXPECT(turns[turn].begin_latitude_deg == segment->start_latitude_deg && turns[turn].roll_out_after_start_s == segment->end_time_s);
            EXPECT_NEAR(turns[turn].bank_deg, segment->bank_deg, 1e-12);
            turn++;
        }
    }
    EXPECT(turn == turn_count);
    turn = 0;
    for (size_t leg = 0; leg < leg_count; leg++) {
        EXPECT(flown[leg].code == legs[leg].code && flown[leg].struct_size == sizeof flown[leg]);
        EXPECT_NEAR(flown[leg].distance_nm, distance_nm[leg], 1e-9);
        EXPECT_NEAR(flown[leg].wind_from_deg, 250.0, 1e-9);
        EXPECT_NEAR(flown[leg].end_time_s - flown[leg].start_time_s, flown[leg].time_s, 1e-9);
        for (size_t end = turn + flown[leg].turn_count; turn < end; turn++)
            EXPECT(turns[turn].leg == leg);
        for (size_t end = check + flown[leg].check_count; check < end; check++)
            EXPECT(checks[check].leg == leg);
    }
    EXPECT(turn == turn_count && check == check_count);
    EXPECT(flown[leg_count - 1].end_time_s == segments[segment_count - 1].end_time_s);
    for (size_t index = 0; index < reading_count; index++) {
        const struct lubber_path_reading *reading = &readings[index];
        const struct lubber_path_turn *at = &turns[reading->turn];
        double dme_nm;
        EXPECT(reading->turn == index / 2 && reading->at_roll_out == (int32_t)(index % 2) && reading->station == 0);
        EXPECT(lubber_observe(58.1, -7.3, 95.0, -5.0, reading->at_roll_out ? at->roll_out_latitude_deg : at->begin_latitude_deg,
                   reading->at_roll_out ? at->roll_out_longitude_deg : at->begin_longitude_deg, at->begin_altitude_ft, NULL, &dme_nm, NULL,
                   NULL) == LUBBER_OK);
        EXPECT_NEAR(reading->dme_nm, dme_nm, 1e-9);
    }
}

/* Less room, or none: the count is of all there are. Without surroundings there are no readings. */
static void room(void)
{
    struct lubber_path_turn two[2] = {{.struct_size = sizeof two[0]}};
    size_t count, all = turn_count, failed = 7;
    EXPECT(lubber_path_turns(legs, LEGS, &conditions, &surroundings, two, 2, &count, NULL) == LUBBER_OK && count == all && all > 2);
    EXPECT(two[1].begin_latitude_deg == turns[1].begin_latitude_deg);
    EXPECT(lubber_path_turns(legs, LEGS, &conditions, &surroundings, NULL, 0, &count, &failed) == LUBBER_OK && count == all && failed == 0);
    EXPECT(lubber_path_turns(legs, LEGS, &conditions, NULL, NULL, 0, &count, &failed) == LUBBER_OK && count == all);
    EXPECT(lubber_path_readings(legs, LEGS, &conditions, NULL, NULL, 0, &count, &failed) == LUBBER_OK && count == 0);
    EXPECT(lubber_path_checks(legs, LEGS, &conditions, NULL, NULL, 0, &count, &failed) == LUBBER_OK && count == 0);
}

/* What cannot be flown says which leg, and what is wrong of a station or a rule has its status. */
static void refused(void)
{
    size_t count = 7, failed = 7;
    double kept = legs[2].fix_latitude_deg;
    legs[2].fix_latitude_deg = NAN;
    EXPECT(lubber_path_legs(legs, LEGS, &conditions, &surroundings, NULL, 0, &count, &failed) == LUBBER_ERROR_LATITUDE && count == 0 && failed == 3);
    legs[2].fix_latitude_deg = 59.0;
    EXPECT(lubber_path_checks(legs, LEGS, &conditions, NULL, NULL, 0, &count, &failed) == LUBBER_ERROR_LEG_NOT_FLOWN && count == 0 && failed > 1);
    legs[2].fix_latitude_deg = kept;
    EXPECT(lubber_path_legs(legs, 1, &conditions, NULL, NULL, 0, &count, &failed) == LUBBER_ERROR_LEG_NOT_FLOWN && failed == 1);
    station.cone_half_angle_deg = 90.0;
    EXPECT(lubber_path_legs(legs, LEGS, &conditions, &surroundings, NULL, 0, &count, &failed) == LUBBER_ERROR_CONE_HALF_ANGLE && failed == 0);
    station.cone_half_angle_deg = 50.0;
    surroundings.holding_rule = 99;
    EXPECT(lubber_path_legs(legs, LEGS, &conditions, &surroundings, NULL, 0, &count, &failed) == LUBBER_ERROR_UNKNOWN_CHOICE && failed == 0);
    surroundings.holding_rule = LUBBER_HOLDING_SPEED_RULE_ICAO;
}

/* Winds by level: of each leg that where it begins; a turn that is led is flown in the wind of the leg before, those onto the arc and off it. */
static void aloft(void)
{
    const struct lubber_wind_level levels[3] = {
        {sizeof levels[0], 1000.0, 240.0, 10.0}, {sizeof levels[0], 2500.0, 250.0, 20.0}, {sizeof levels[0], 6000.0, 260.0, 50.0}};
    const struct lubber_leg_conditions steady = conditions;
    conditions.wind_levels = levels;
    conditions.wind_level_count = 3;
    conditions.climb_fpm = 150.0;
    EXPECT(brief(LEGS) == LUBBER_OK);
    size_t turn = 0;
    for (size_t leg = 0; leg < leg_count; turn += flown[leg++].turn_count) {
        double from_deg, speed_kt, pressure_altitude_ft;
        double altitude_ft = leg == 2 || leg == 3 ? turns[turn].roll_out_altitude_ft : flown[leg].start_altitude_ft;
        /* In the standard atmosphere the pressure altitude is the geopotential one. */
        EXPECT(lubber_geopotential_altitude_ft(altitude_ft, &pressure_altitude_ft) == LUBBER_OK);
        EXPECT(lubber_wind_between_levels(pressure_altitude_ft, 2500.0, 250.0, 20.0, 6000.0, 260.0, 50.0, &from_deg, &speed_kt) == LUBBER_OK);
        EXPECT_NEAR(flown[leg].wind_from_deg, from_deg, 1e-6);
        EXPECT_NEAR(flown[leg].wind_speed_kt, speed_kt, 1e-6);
        EXPECT_NEAR(flown[leg].headwind_kt, speed_kt * cos((from_deg - flown[leg].course_deg) * acos(-1.0) / 180.0), 1e-6);
    }
    conditions = steady;
}

/* The numbers of each kind of check. */
static void numbers_of_checks(void)
{
    EXPECT(brief(LEGS) == LUBBER_OK && check_count > 0);
    for (size_t index = 0; index < check_count; index++) {
        EXPECT(checks[index].kind == LUBBER_PATH_CHECK_KIND_CONE && checks[index].station == 0 && isnan(checks[index].value));
        EXPECT(checks[index].holding_rule == -1 && turns[checks[index].turn].leg == checks[index].leg);
        EXPECT(readings[2 * checks[index].turn].flag == LUBBER_FLAG_CONE);
    }
    const struct lubber_leg_conditions kept = conditions;
    double limit_kt, calibrated_kt;
    conditions.true_airspeed_kt = 290.0;
    EXPECT(brief(LEGS) == LUBBER_OK);
    const struct lubber_path_check *held = &checks[check_count - 1];
    EXPECT(held->kind == LUBBER_PATH_CHECK_KIND_HOLDING_AIRSPEED && held->leg == 6 && held->turn == -1 && held->station == -1);
    EXPECT(held->holding_rule == LUBBER_HOLDING_SPEED_RULE_ICAO);
    EXPECT(lubber_holding_speed(3000.0, LUBBER_HOLDING_SPEED_RULE_ICAO, &limit_kt, NULL, NULL) == LUBBER_OK);
    EXPECT(lubber_cas_from_tas_kt(290.0, held->pressure_altitude_ft, 4.0, &calibrated_kt) == LUBBER_OK);
    EXPECT_NEAR(held->limit, limit_kt, 1e-9);
    EXPECT_NEAR(held->value, calibrated_kt, 1e-9);
    conditions = kept;

    /* An arc of 12 NM takes less than two degrees. */
    conditions.bank_limit_deg = 30.0;
    EXPECT(brief(LEGS) == LUBBER_OK && flown[2].keeps_its_arc == 1 && isnan(flown[1].arc_bank_deg));
    double radius_nm, bank_deg;
    EXPECT(lubber_geodesic_inverse(58.1, -7.3, 58.0821, -7.6753, &radius_nm, NULL, NULL) == LUBBER_OK);
    EXPECT(lubber_bank_for_radius_deg(conditions.true_airspeed_kt + 25.0, radius_nm, &bank_deg) == LUBBER_OK);
    EXPECT(flown[2].arc_bank_deg > 0.5 && flown[2].arc_bank_deg < bank_deg);
    conditions = kept;
    /* North for 200 NM and more than 4000 ft, then to an altitude that was passed on the way, and to one that was not. */
    struct lubber_leg climb[3];
    EXPECT(lubber_leg_init(&climb[0], sizeof climb[0], LUBBER_LEG_CODE_FIX_TO_DISTANCE) == LUBBER_OK);
    climb[0].fix_latitude_deg = 58.0;
    climb[0].fix_longitude_deg = -7.0;
    climb[0].course_deg = 0.0;
    climb[0].distance_nm = 200.0;
    EXPECT(lubber_leg_init(&climb[1], sizeof climb[1], LUBBER_LEG_CODE_COURSE_TO_ALTITUDE) == LUBBER_OK);
    climb[1].course_deg = 0.0;
    climb[1].altitude_ft = conditions.altitude_ft + 1000.0;
    climb[2] = climb[1];
    climb[2].altitude_ft = conditions.altitude_ft + 20000.0;
    conditions.climb_fpm = 100.0;
    size_t count = 0;
    EXPECT(lubber_path_legs(climb, 3, &conditions, NULL, flown, MOST, &leg_count, NULL) == LUBBER_OK && leg_count == 3);
    EXPECT(lubber_path_checks(climb, 3, &conditions, NULL, checks, MOST, &count, NULL) == LUBBER_OK && count == 1);
    EXPECT(checks[0].kind == LUBBER_PATH_CHECK_KIND_ALTITUDE_PASSED && checks[0].leg == 1 && checks[0].turn == -1);
    EXPECT(checks[0].holding_rule == -1 && checks[0].station == -1 && isnan(checks[0].pressure_altitude_ft));
    EXPECT_NEAR(checks[0].limit, climb[1].altitude_ft, 1e-6);
    EXPECT_NEAR(checks[0].value, flown[1].start_altitude_ft, 1e-6);
    EXPECT(checks[0].value > checks[0].limit + 1000.0 && flown[1].distance_nm == 0.0);
    conditions = kept;
    for (int32_t kind = -1; kind <= 7; kind++)
        EXPECT((strcmp(lubber_path_check_text(kind), "unknown check") == 0) == (kind < 1 || kind > 6));
}

/* With a variation the plan's courses are magnetic: charted so, the approach is flown as before, and each direction told from both norths. */
static void magnetic_courses(void)
{
    static struct lubber_path_leg by_true[MOST];
    static struct lubber_path_turn true_turns[MOST];
    EXPECT(brief(LEGS) == LUBBER_OK);
    size_t true_count = turn_count;
    memcpy(by_true, flown, sizeof by_true);
    memcpy(true_turns, turns, sizeof true_turns);
    for (int leg = 0; leg < LEGS; leg++)
        legs[leg].course_deg -= 10.0;
    conditions.magnetic_variation_deg = 10.0;
    EXPECT(brief(LEGS) == LUBBER_OK && turn_count == true_count);
    double magnetic_deg;
    for (size_t leg = 0; leg < leg_count; leg++) {
        EXPECT(flown[leg].course_deg == by_true[leg].course_deg && flown[leg].heading_deg == by_true[leg].heading_deg);
        EXPECT(flown[leg].end_time_s == by_true[leg].end_time_s);
        EXPECT(isnan(by_true[leg].magnetic_course_deg) && isnan(by_true[leg].magnetic_heading_deg));
        EXPECT(lubber_magnetic_from_true_deg(flown[leg].course_deg, 10.0, &magnetic_deg) == LUBBER_OK);
        EXPECT_NEAR(flown[leg].magnetic_course_deg, magnetic_deg, 1e-9);
        EXPECT(lubber_magnetic_from_true_deg(flown[leg].heading_deg, 10.0, &magnetic_deg) == LUBBER_OK);
        EXPECT_NEAR(flown[leg].magnetic_heading_deg, magnetic_deg, 1e-9);
    }
    EXPECT_NEAR(flown[4].magnetic_course_deg, 75.0, 1e-9);
    for (size_t turn = 0; turn < turn_count; turn++) {
        EXPECT(turns[turn].begin_latitude_deg == true_turns[turn].begin_latitude_deg);
        EXPECT(isnan(true_turns[turn].begin_magnetic_course_deg) && isnan(true_turns[turn].roll_out_magnetic_course_deg));
        EXPECT(lubber_magnetic_from_true_deg(turns[turn].begin_course_deg, 10.0, &magnetic_deg) == LUBBER_OK);
        EXPECT_NEAR(turns[turn].begin_magnetic_course_deg, magnetic_deg, 1e-9);
        EXPECT(lubber_magnetic_from_true_deg(turns[turn].roll_out_course_deg, 10.0, &magnetic_deg) == LUBBER_OK);
        EXPECT_NEAR(turns[turn].roll_out_magnetic_course_deg, magnetic_deg, 1e-9);
    }
    size_t failed;
    conditions.magnetic_variation_deg = 200.0;
    EXPECT(lubber_path_legs(legs, LEGS, &conditions, NULL, NULL, 0, &leg_count, &failed) == LUBBER_ERROR_MAGNETIC_VARIATION && leg_count == 0 && failed == 0);
    conditions.magnetic_variation_deg = NAN;
    const int32_t code = legs[1].code;
    legs[1].code = 99;
    EXPECT(lubber_path_legs(legs, LEGS, &conditions, NULL, NULL, 0, &leg_count, &failed) == LUBBER_ERROR_UNKNOWN_CHOICE && failed == 2);
    legs[1].code = code;
    for (int leg = 0; leg < LEGS; leg++)
        legs[leg].course_deg += 10.0;
}

static void tell_point(const char *name, size_t turn, int at_roll_out)
{
    static const char *const flags[] = {"clear", "abeam", "cone", "below_horizon", "out_of_range"};
    const struct lubber_path_turn *flown_turn = &turns[turn];
#define POINT(field) at_roll_out ? flown_turn->roll_out_##field : flown_turn->begin_##field
    open_with(name, '{');
    number("latitude_deg", POINT(latitude_deg));
    number("longitude_deg", POINT(longitude_deg));
    number("altitude_ft", POINT(altitude_ft));
    number("after_start_s", POINT(after_start_s));
    number("course_deg", POINT(course_deg));
    number("magnetic_course_deg", POINT(magnetic_course_deg));
#undef POINT
    open_with("stations", '[');
    for (size_t index = 0; index < reading_count; index++)
        if (readings[index].turn == turn && readings[index].at_roll_out == at_roll_out) {
            open_with(NULL, '{');
            number("dme_nm", readings[index].dme_nm);
            number("radial_deg", readings[index].radial_deg);
            word("flag", flags[readings[index].flag]);
            close_with('}');
        }
    close_with(']');
    close_with('}');
}

static void tell(void)
{
    static const char *const codes[] = {"", "IF", "TF", "CF", "DF", "AF", "RF", "FA", "FC", "FD", "FM", "CA", "CD", "CI", "CR", "VA",
        "VD", "VI", "VM", "VR", "HA", "HF", "HM", "PI"};
    static const char *const governors[] = {"bank_limit", "turn_rate_limit", "roll_rate", "no_turn"};
    EXPECT(brief(LEGS) == LUBBER_OK);
    double distance_nm = 0.0;
    size_t turn = 0;
    open_with(NULL, '{');
    open_with("legs", '[');
    for (size_t leg = 0; leg < leg_count; leg++) {
        const struct lubber_path_leg *of = &flown[leg];
        distance_nm += of->distance_nm;
        open_with(NULL, '{');
        number("number", (double)(leg + 1));
        word("code", codes[of->code]);
        number("course_deg", of->course_deg);
        number("heading_deg", of->heading_deg);
        number("magnetic_course_deg", of->magnetic_course_deg);
        number("magnetic_heading_deg", of->magnetic_heading_deg);
        number("groundspeed_kt", of->groundspeed_kt);
        number("headwind_kt", of->headwind_kt);
        number("crosswind_kt", of->crosswind_kt);
        number("distance_nm", of->distance_nm);
        number("time_s", of->time_s);
        number("end_after_start_s", of->end_time_s);
        number("end_altitude_ft", of->end_altitude_ft);
        number("shortest_straight_nm", of->shortest_straight_nm);
        number("arc_bank_deg", of->arc_bank_deg);
        number("checks", (double)of->check_count);
        open_with("turns", '[');
        for (size_t end = turn + of->turn_count; turn < end; turn++) {
            open_with(NULL, '{');
            tell_point("begin", turn, 0);
            tell_point("roll_out", turn, 1);
            number("heading_change_deg", turns[turn].heading_change_deg);
            number("bank_deg", turns[turn].bank_deg);
            number("time_s", turns[turn].time_s);
            word("governed_by", governors[turns[turn].governed_by]);
            close_with('}');
        }
        close_with(']');
        close_with('}');
    }
    close_with(']');
    number("true_airspeed_kt", conditions.true_airspeed_kt);
    number("total_distance_nm", distance_nm);
    number("total_time_s", flown[leg_count - 1].end_time_s);
    close_with('}');
}

int main(void)
{
    make_plan();
    the_same_path();
    room();
    refused();
    aloft();
    numbers_of_checks();
    magnetic_courses();
    if (expect_failures == 0)
        tell();
    return expect_close();
}
