/* A procedure briefed: along a course to Ostvik and past it into a hold, with the radial and DME at which each turn begins and what a crew
 * should know of it. */
#include <stdio.h>
#include "lubberline.h"

enum { LEGS = 4, MOST = 32 };

int main(void)
{
    /* The codes of ARINC 424. */
    const int32_t codes[LEGS] = {
        LUBBER_LEG_CODE_INITIAL_FIX, LUBBER_LEG_CODE_TRACK_TO_FIX, LUBBER_LEG_CODE_TRACK_TO_FIX, LUBBER_LEG_CODE_HOLD_TO_FIX};
    const double latitudes[LEGS] = {61.40, 61.25, 60.95, 60.95}, longitudes[LEGS] = {-12.20, -11.50, -11.36, -11.36};
    static const char *const names[LEGS] = {"IF start", "TF Ostvik", "TF bend", "HF bend"};
    struct lubber_leg legs[LEGS];
    for (int index = 0; index < LEGS; index++) {
        lubber_leg_init(&legs[index], sizeof legs[index], codes[index]);
        legs[index].fix_latitude_deg = latitudes[index];
        legs[index].fix_longitude_deg = longitudes[index];
    }
    legs[2].passage = LUBBER_PASSAGE_FLY_OVER;
    legs[3].course_deg = 170.0;

    /* Winds at as many levels as are known. */
    const struct lubber_wind_level winds[] = {
        {sizeof winds[0], 2000.0, 240.0, 15.0}, {sizeof winds[0], 5000.0, 255.0, 30.0}, {sizeof winds[0], 9000.0, 270.0, 50.0}};
    struct lubber_leg_conditions conditions;
    lubber_leg_conditions_init(&conditions, sizeof conditions, 275.0, 3000.0);
    conditions.climb_fpm = 500.0;
    conditions.wind_levels = winds;
    conditions.wind_level_count = sizeof winds / sizeof winds[0];

    struct lubber_path_station ostvik;
    struct lubber_path_surroundings surroundings;
    lubber_path_station_init(&ostvik, sizeof ostvik, 61.25, -11.50);
    ostvik.elevation_ft = 420.0;
    ostvik.declination_deg = -6.0;
    lubber_path_surroundings_init(&surroundings, sizeof surroundings);
    surroundings.stations = &ostvik;
    surroundings.station_count = 1;

    struct lubber_path_leg flown[MOST] = {{.struct_size = sizeof flown[0]}};
    struct lubber_path_turn turns[MOST] = {{.struct_size = sizeof turns[0]}};
    struct lubber_path_reading readings[MOST] = {{.struct_size = sizeof readings[0]}};
    struct lubber_path_check checks[MOST] = {{.struct_size = sizeof checks[0]}};
    size_t leg_count, turn_count, reading_count, check_count, failed_leg;
    int32_t status = lubber_path_legs(legs, LEGS, &conditions, &surroundings, flown, MOST, &leg_count, &failed_leg);
    if (status != LUBBER_OK) {
        printf("leg %zu: %s\n", failed_leg, lubber_status_text(status));
        return 1;
    }
    lubber_path_turns(legs, LEGS, &conditions, &surroundings, turns, MOST, &turn_count, NULL);
    lubber_path_readings(legs, LEGS, &conditions, &surroundings, readings, MOST, &reading_count, NULL);
    lubber_path_checks(legs, LEGS, &conditions, &surroundings, checks, MOST, &check_count, NULL);
    if (turn_count > MOST || reading_count > MOST || check_count > MOST)
        return 1;

    for (size_t leg = 0; leg < leg_count; leg++)
        printf("%-9s course %03.0f heading %03.0f %3.0f kt %5.1f NM in %4.0f s, wind %03.0f at %2.0f kt, to %4.0f ft\n", names[leg],
               flown[leg].course_deg, flown[leg].heading_deg, flown[leg].groundspeed_kt, flown[leg].distance_nm, flown[leg].time_s,
               flown[leg].wind_from_deg, flown[leg].wind_speed_kt, flown[leg].end_altitude_ft);
    for (size_t index = 0; index < reading_count; index++)
        if (!readings[index].at_roll_out) {
            const struct lubber_path_turn *turn = &turns[readings[index].turn];
            printf("onto %s: begin at %4.1f DME on radial %03.0f, turn %3.0f degrees %s in %2.0f s\n", names[turn->leg], readings[index].dme_nm,
                   readings[index].radial_deg, turn->heading_change_deg < 0.0 ? -turn->heading_change_deg : turn->heading_change_deg,
                   turn->heading_change_deg < 0.0 ? "left" : "right", turn->time_s);
        }
    for (size_t index = 0; index < check_count; index++) {
        printf("%s: %s", names[checks[index].leg], lubber_path_check_text(checks[index].kind));
        if (checks[index].kind == LUBBER_PATH_CHECK_KIND_CONE)
            printf("\n");
        else
            printf(" (%.0f, not %.0f)\n", checks[index].value, checks[index].limit);
    }
    return 0;
}

/* Prints
 * IF start  course 114 heading 117 288 kt   0.0 NM in    0 s, wind 247 at 20 kt, to 3000 ft
 * TF Ostvik course 114 heading 117 288 kt  20.7 NM in  259 s, wind 247 at 20 kt, to 5155 ft
 * TF bend   course 167 heading 174 273 kt  19.8 NM in  260 s, wind 258 at 32 kt, to 7320 ft
 * HF bend   course 320 heading 313 249 kt  23.1 NM in  308 s, wind 265 at 41 kt, to 9886 ft
 * onto TF bend: begin at  1.6 DME on radial 300, turn  54 degrees right in 34 s
 * onto HF bend: begin at 18.5 DME on radial 173, turn 137 degrees right in 79 s
 * onto HF bend: begin at 16.9 DME on radial 192, turn 225 degrees right in 127 s
 * HF bend: the racetrack is flown at a higher calibrated airspeed than the rule allows (238, not 230)
 */
