/* Structures that grow: every size a program may give, the shorter ones of an older header and the longer ones of a newer. */

#include <string.h>

#include "expect.h"

enum { ROOM = 4096 + 64 };

static const unsigned char MARK = 0x55;

/* Every structure in turn, in memory that has room for more: its size, its boundaries, how it is set and how it is used. */
static union {
    unsigned char bytes[ROOM];
    size_t struct_size;
    struct lubber_course_change_input input;
    struct lubber_course_change_result result;
    struct lubber_flight_start start;
    struct lubber_flight_state state;
    struct lubber_error_model errors;
    struct lubber_sureness sureness;
    struct lubber_leg legs[2];
    struct lubber_leg_conditions conditions;
    struct lubber_path_segment segment;
    struct lubber_route_fix fixes[2];
    struct lubber_route_conditions on_route;
    struct lubber_route_leg route_leg;
    struct lubber_route_turn route_turn;
    struct lubber_route_summary summary;
    struct lubber_wind_level level;
    struct lubber_path_station station;
    struct lubber_path_surroundings surroundings;
    struct lubber_path_leg path_leg;
    struct lubber_path_turn path_turn;
    struct lubber_path_reading reading;
    struct lubber_path_check check;
} it;

static struct lubber_flight *flight;
static struct lubber_course_change_input good_input;
static struct lubber_error_model good_errors = {.struct_size = sizeof good_errors};
static struct lubber_leg good_legs[2];
static struct lubber_leg_conditions good_conditions;
static struct lubber_leg good_corner[3];
static struct lubber_path_station good_station;
static struct lubber_path_surroundings good_surroundings;
static struct lubber_route_fix good_fixes[3];
static struct lubber_route_conditions good_on_route;

static int32_t input_init(size_t size)
{
    int32_t status = lubber_course_change_input_init(&it.input, size);
    it.input.inbound_course_deg = 350.0;
    it.input.outbound_course_deg = 50.0;
    it.input.true_airspeed_kt = 430.0;
    return status;
}

static int32_t start_init(size_t size)
{
    int32_t status = lubber_flight_start_init(&it.start, size);
    it.start.latitude_deg = 60.0;
    it.start.longitude_deg = -20.0;
    it.start.altitude_ft = 9000.0;
    it.start.heading_deg = 10.0;
    it.start.true_airspeed_kt = 250.0;
    it.start.station_latitude_deg = 60.2;
    it.start.station_longitude_deg = -20.0;
    return status;
}

static int32_t errors_init(size_t size)
{
    return lubber_error_model_init(&it.errors, size);
}

static int32_t leg_init(size_t size)
{
    int32_t status = lubber_leg_init(&it.legs[0], size, 1);
    it.legs[0].fix_latitude_deg = 60.0;
    it.legs[0].fix_longitude_deg = -10.0;
    return status;
}

static int32_t conditions_init(size_t size)
{
    return lubber_leg_conditions_init(&it.conditions, size, 250.0, 9000.0);
}

static int32_t fix_init(size_t size)
{
    return lubber_route_fix_init(&it.fixes[0], size, 60.0, -10.0);
}

static int32_t on_route_init(size_t size)
{
    return lubber_route_conditions_init(&it.on_route, size, 250.0, 9000.0);
}

/* What has no usual values is set by the program itself. */
static int32_t by_hand(size_t size)
{
    memset(it.bytes, 0, sizeof it.bytes);
    it.struct_size = size;
    return LUBBER_OK;
}

static int32_t use_input(void)
{
    struct lubber_course_change_result result = {.struct_size = sizeof result};
    double distance_nm;
    int32_t status = lubber_course_change(&it.input, &result);
    EXPECT(isnan(result.lead_nm) == (status != LUBBER_OK) && result.struct_size == sizeof result);
    EXPECT((result.enters_cone == -1) == (status != LUBBER_OK));
    EXPECT(lubber_course_change_at(&it.input, 0.0, NULL, &distance_nm, NULL, NULL) == status);
    EXPECT(status == LUBBER_OK ? fabs(distance_nm - result.lead_nm) < 1e-9 : isnan(distance_nm));
    return status;
}

static int32_t use_result(void)
{
    return lubber_course_change(&good_input, &it.result);
}

static int32_t use_start(void)
{
    struct lubber_flight *made = flight;
    int32_t status = lubber_flight_new(&it.start, &made);
    EXPECT((made == NULL) == (status != LUBBER_OK));
    lubber_flight_free(made);
    return status;
}

static int32_t use_state(void)
{
    return lubber_flight_look(flight, &it.state);
}

static int32_t use_errors(void)
{
    struct lubber_sureness sureness = {.struct_size = sizeof sureness};
    int32_t status = lubber_course_change_sureness(&good_input, &it.errors, 0.5, 0.9, 10, 1, &sureness);
    EXPECT(isnan(sureness.margin_nm) == (status != LUBBER_OK));
    return status;
}

static int32_t use_sureness(void)
{
    return lubber_course_change_sureness(&good_input, &good_errors, 0.5, 0.9, 10, 1, &it.sureness);
}

/* Two legs as far apart as the size says, to a second fix; the second must have that size too. */
static int32_t use_leg(void)
{
    size_t size = it.struct_size, count = 77;
    const int32_t track_to_fix = 2;
    const double latitude_deg = 61.0;
    if (size > sizeof it.bytes / 2)
        return lubber_legs_fly(it.legs, 1, &good_conditions, NULL, 0, &count, NULL);
    memcpy(it.bytes + size, it.bytes, size);
    memcpy(it.bytes + size + offsetof(struct lubber_leg, code), &track_to_fix, sizeof track_to_fix);
    memcpy(it.bytes + size + offsetof(struct lubber_leg, fix_latitude_deg), &latitude_deg, sizeof latitude_deg);
    int32_t status = lubber_legs_fly(it.legs, 2, &good_conditions, NULL, 0, &count, NULL);
    EXPECT(status == LUBBER_OK || count == 0);
    it.bytes[size] ^= 8;
    EXPECT(lubber_legs_fly(it.legs, 2, &good_conditions, NULL, 0, &count, NULL) == LUBBER_ERROR_STRUCT);
    return status;
}

static int32_t use_conditions(void)
{
    size_t count;
    return lubber_legs_fly(good_legs, 2, &it.conditions, NULL, 0, &count, NULL);
}

static int32_t level_init(size_t size)
{
    by_hand(size);
    it.level.wind_speed_kt = 20.0;
    return LUBBER_OK;
}

static int32_t use_level(void)
{
    size_t count;
    struct lubber_leg_conditions aloft = good_conditions;
    aloft.wind_levels = &it.level;
    aloft.wind_level_count = 1;
    int32_t status = lubber_wind_levels_check(&it.level, 1, &count);
    EXPECT(lubber_legs_fly(good_legs, 2, &aloft, NULL, 0, &count, NULL) == status);
    return status;
}

static int32_t station_init(size_t size)
{
    return lubber_path_station_init(&it.station, size, 61.0, -10.0);
}

static int32_t use_station(void)
{
    size_t count;
    struct lubber_path_surroundings surroundings = good_surroundings;
    surroundings.stations = &it.station;
    return lubber_path_readings(good_corner, 3, &good_conditions, &surroundings, NULL, 0, &count, NULL);
}

static int32_t surroundings_init(size_t size)
{
    return lubber_path_surroundings_init(&it.surroundings, size);
}

static int32_t use_surroundings(void)
{
    size_t count;
    return lubber_path_legs(good_corner, 3, &good_conditions, &it.surroundings, NULL, 0, &count, NULL);
}

static int32_t use_path_leg(void)
{
    size_t count;
    return lubber_path_legs(good_corner, 3, &good_conditions, &good_surroundings, &it.path_leg, 1, &count, NULL);
}

static int32_t use_path_turn(void)
{
    size_t count;
    return lubber_path_turns(good_corner, 3, &good_conditions, &good_surroundings, &it.path_turn, 1, &count, NULL);
}

static int32_t use_reading(void)
{
    size_t count;
    return lubber_path_readings(good_corner, 3, &good_conditions, &good_surroundings, &it.reading, 1, &count, NULL);
}

static int32_t use_check(void)
{
    size_t count;
    return lubber_path_checks(good_corner, 3, &good_conditions, &good_surroundings, &it.check, 1, &count, NULL);
}

static int32_t use_segment(void)
{
    size_t count;
    return lubber_legs_fly(good_legs, 2, &good_conditions, &it.segment, 1, &count, NULL);
}

/* Two stations as far apart as the size says, the second to the north; it must have that size too. */
static int32_t use_fix(void)
{
    size_t size = it.struct_size;
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    const double latitude_deg = 61.0;
    if (size > sizeof it.bytes / 2)
        return lubber_route_brief(it.fixes, 1, &good_on_route, NULL, 0, NULL, 0, &summary);
    memcpy(it.bytes + size, it.bytes, size);
    memcpy(it.bytes + size + offsetof(struct lubber_route_fix, latitude_deg), &latitude_deg, sizeof latitude_deg);
    int32_t status = lubber_route_brief(it.fixes, 2, &good_on_route, NULL, 0, NULL, 0, &summary);
    EXPECT(summary.leg_count == (status == LUBBER_OK) && isnan(summary.total_time_s) == (status != LUBBER_OK));
    it.bytes[size] ^= 8;
    EXPECT(lubber_route_brief(it.fixes, 2, &good_on_route, NULL, 0, NULL, 0, &summary) == LUBBER_ERROR_STRUCT);
    return status;
}

static int32_t use_on_route(void)
{
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    return lubber_route_brief(good_fixes, 3, &it.on_route, NULL, 0, NULL, 0, &summary);
}

static int32_t use_route_leg(void)
{
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    return lubber_route_brief(good_fixes, 3, &good_on_route, &it.route_leg, 1, NULL, 0, &summary);
}

static int32_t use_route_turn(void)
{
    struct lubber_route_summary summary = {.struct_size = sizeof summary};
    return lubber_route_brief(good_fixes, 3, &good_on_route, NULL, 0, &it.route_turn, 1, &summary);
}

static int32_t use_summary(void)
{
    return lubber_route_brief(good_fixes, 3, &good_on_route, NULL, 0, NULL, 0, &it.summary);
}

static const struct kind {
    const char *name;
    size_t whole, least;
    int is_answer;
    int32_t (*init)(size_t size);
    int32_t (*use)(void);
} KINDS[] = {
    {"input", sizeof it.input, offsetof(struct lubber_course_change_input, wind_from_deg), 0, input_init, use_input},
    {"result", sizeof it.result, offsetof(struct lubber_course_change_result, dme_at_roll_in_nm), 1, by_hand, use_result},
    {"start", sizeof it.start, offsetof(struct lubber_flight_start, station_elevation_ft), 0, start_init, use_start},
    {"state", sizeof it.state, offsetof(struct lubber_flight_state, latitude_deg), 1, by_hand, use_state},
    {"errors", sizeof it.errors, offsetof(struct lubber_error_model, dme_nm), 0, errors_init, use_errors},
    {"sureness", sizeof it.sureness, offsetof(struct lubber_sureness, begin_with_margin_at_dme_nm), 1, by_hand, use_sureness},
    {"leg", sizeof it.legs[0], offsetof(struct lubber_leg, course_deg), 0, leg_init, use_leg},
    {"conditions", sizeof it.conditions, offsetof(struct lubber_leg_conditions, climb_fpm), 0, conditions_init, use_conditions},
    {"level", sizeof it.level, sizeof it.level, 0, level_init, use_level},
    {"station", sizeof it.station, offsetof(struct lubber_path_station, elevation_ft), 0, station_init, use_station},
    {"surroundings", sizeof it.surroundings, offsetof(struct lubber_path_surroundings, altimeter_setting_hpa), 0, surroundings_init, use_surroundings},
    {"path leg", sizeof it.path_leg, offsetof(struct lubber_path_leg, start_longitude_deg), 1, by_hand, use_path_leg},
    {"path turn", sizeof it.path_turn, offsetof(struct lubber_path_turn, begin_longitude_deg), 1, by_hand, use_path_turn},
    {"reading", sizeof it.reading, offsetof(struct lubber_path_reading, radial_deg), 1, by_hand, use_reading},
    {"check", sizeof it.check, offsetof(struct lubber_path_check, value), 1, by_hand, use_check},
    {"segment", sizeof it.segment, offsetof(struct lubber_path_segment, start_longitude_deg), 1, by_hand, use_segment},
    {"route fix", sizeof it.fixes[0], offsetof(struct lubber_route_fix, elevation_ft), 0, fix_init, use_fix},
    {"route conditions", sizeof it.on_route, offsetof(struct lubber_route_conditions, altimeter_setting_hpa), 0, on_route_init, use_on_route},
    {"route leg", sizeof it.route_leg, offsetof(struct lubber_route_leg, initial_course_deg), 1, by_hand, use_route_leg},
    {"route turn", sizeof it.route_turn, offsetof(struct lubber_route_turn, begin_on_radial_deg), 1, by_hand, use_route_turn},
    {"route summary", sizeof it.summary, offsetof(struct lubber_route_summary, leg_count), 1, by_hand, use_summary},
};

/* Whether some header may have had this size: a boundary of fields, each of eight bytes or half of such a pair. */
static int is_size(const struct kind *kind, size_t size)
{
    return size >= kind->least && size <= 4096 && size % 8 == 0;
}

static int all(const unsigned char *bytes, size_t count, unsigned char value)
{
    for (size_t index = 0; index < count; index++)
        if (bytes[index] != value)
            return 0;
    return 1;
}

/* A structure that is given: set and read no farther than its size, and refused if it sets what is unknown. */
static void given(const struct kind *kind, size_t size)
{
    int known = is_size(kind, size);
    memset(it.bytes, MARK, sizeof it.bytes);
    int32_t status = kind->init(size);
    if (kind->init != by_hand && kind->init != level_init) {
        EXPECT(status == (known ? LUBBER_OK : LUBBER_ERROR_STRUCT));
        EXPECT(!known || (it.struct_size == size && all(it.bytes + size, sizeof it.bytes - size, MARK)));
        if (known && size > kind->whole)
            EXPECT(all(it.bytes + kind->whole, size - kind->whole, 0));
    }
    it.struct_size = size;
    EXPECT(kind->use() == (known ? LUBBER_OK : LUBBER_ERROR_STRUCT));
    if (known && size > kind->whole) {
        it.struct_size = size;
        it.bytes[size - 1] = 1;
        EXPECT(kind->use() == LUBBER_ERROR_STRUCT);
    }
}

/* What lies between the kind of a segment and its first number is not said by anybody. */
static void without_padding(const struct kind *kind, unsigned char *bytes)
{
    size_t begin = offsetof(struct lubber_path_segment, kind) + sizeof it.segment.kind;
    if (kind->use == use_segment)
        memset(bytes + begin, 0, offsetof(struct lubber_path_segment, start_latitude_deg) - begin);
}

/* A structure that is filled: as far as its size, and no farther. */
static void filled(const struct kind *kind, size_t size)
{
    static unsigned char whole[sizeof it.result + sizeof it.segment + sizeof it.route_turn];
    by_hand(kind->whole);
    EXPECT(kind->use() == LUBBER_OK);
    memcpy(whole, it.bytes, kind->whole);
    without_padding(kind, whole);

    memset(it.bytes, MARK, sizeof it.bytes);
    it.struct_size = size;
    int known = is_size(kind, size);
    EXPECT(kind->use() == (known ? LUBBER_OK : LUBBER_ERROR_STRUCT));
    EXPECT(it.struct_size == size);
    if (known)
        without_padding(kind, it.bytes);
    size_t begin = sizeof it.struct_size, end = known ? size : begin, both = end < kind->whole ? end : kind->whole;
    EXPECT(memcmp(it.bytes + begin, whole + begin, both - begin) == 0);
    EXPECT(all(it.bytes + both, end - both, 0xFF));
    EXPECT(all(it.bytes + end, sizeof it.bytes - end, MARK));
}

/* On a failure an answer is NaN, and its codes are -1, as far as its size. */
static void failed(void)
{
    double number;
    memset(it.bytes, MARK, sizeof it.bytes);
    it.result.struct_size = sizeof it.result + 16;
    EXPECT(lubber_course_change(NULL, &it.result) == LUBBER_ERROR_STRUCT);
    EXPECT(isnan(it.result.lead_nm) && isnan(it.result.fly_over_extra_time_s) && it.result.governed_by == -1);
    memcpy(&number, it.bytes + sizeof it.result + 8, sizeof number);
    EXPECT(isnan(number) && it.bytes[sizeof it.result + 16] == MARK);

    it.state.struct_size = sizeof it.state;
    EXPECT(lubber_flight_look(NULL, &it.state) == LUBBER_ERROR_STRUCT);
    EXPECT(isnan(it.state.time_s) && isnan(it.state.dme_nm) && it.state.done == -1);

    it.sureness.struct_size = sizeof it.sureness;
    EXPECT(lubber_course_change_sureness(&good_input, NULL, 0.5, 0.9, 10, 1, &it.sureness) == LUBBER_ERROR_STRUCT);
    EXPECT(isnan(it.sureness.mean_nm) && isnan(it.sureness.by_source_nm[7]) && isnan(it.sureness.foremost));
    EXPECT(isnan(it.sureness.begin_with_margin_at_dme_nm) && isnan(it.sureness.begin_with_margin_before_fix_nm));

    it.summary.struct_size = sizeof it.summary + 8;
    EXPECT(lubber_route_brief(NULL, 3, &good_on_route, NULL, 0, NULL, 0, &it.summary) == LUBBER_ERROR_STRUCT);
    EXPECT(isnan(it.summary.total_time_s) && it.summary.leg_count == 0 && it.summary.turn_count == 0 && it.summary.failed_fix == 0);
    memcpy(&number, it.bytes + sizeof it.summary, sizeof number);
    EXPECT(isnan(number));
}

int main(void)
{
    EXPECT(start_init(sizeof it.start) == LUBBER_OK && lubber_flight_new(&it.start, &flight) == LUBBER_OK);
    EXPECT(input_init(sizeof it.input) == LUBBER_OK);
    good_input = it.input;
    for (int index = 0; index < 2; index++) {
        EXPECT(lubber_leg_init(&good_legs[index], sizeof good_legs[index], 1 + index) == LUBBER_OK);
        good_legs[index].fix_latitude_deg = 60.0 + index;
        good_legs[index].fix_longitude_deg = -10.0;
    }
    EXPECT(lubber_leg_conditions_init(&good_conditions, sizeof good_conditions, 250.0, 9000.0) == LUBBER_OK);
    for (int index = 0; index < 3; index++) {
        good_corner[index] = good_legs[index > 0];
        good_corner[index].fix_longitude_deg = index == 2 ? -9.0 : -10.0;
    }
    EXPECT(lubber_path_station_init(&good_station, sizeof good_station, 61.0, -10.0) == LUBBER_OK);
    EXPECT(lubber_path_surroundings_init(&good_surroundings, sizeof good_surroundings) == LUBBER_OK);
    good_station.cone_half_angle_deg = 85.0;
    good_surroundings.stations = &good_station;
    good_surroundings.station_count = 1;

    for (int index = 0; index < 3; index++)
        EXPECT(lubber_route_fix_init(&good_fixes[index], sizeof good_fixes[index], 60.0 + 0.5 * index, index == 2 ? -9.0 : -10.0) == LUBBER_OK);
    EXPECT(lubber_route_conditions_init(&good_on_route, sizeof good_on_route, 250.0, 9000.0) == LUBBER_OK);

    for (size_t index = 0; index < sizeof KINDS / sizeof *KINDS; index++) {
        const struct kind *kind = &KINDS[index];
        EXPECT(kind->whole % 8 == 0);
        int before = expect_failures;
        for (size_t size = 0; size <= kind->whole + 64; size++)
            (kind->is_answer ? filled : given)(kind, size);
        for (size_t size = 4096 - 8; size <= 4096 + 16; size += 8)
            (kind->is_answer ? filled : given)(kind, size);
        it.struct_size = (size_t)-1;
        EXPECT(kind->use() == LUBBER_ERROR_STRUCT);
        if (expect_failures != before)
            printf("so it is with %s\n", kind->name);
    }
    failed();
    lubber_flight_free(flight);
    return expect_close();
}
