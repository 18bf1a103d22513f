/* Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate */

#ifndef GENERATED_DISPATCH_H
#define GENERATED_DISPATCH_H

#include "lubberline.h"

/* A function of the library on arrays of its arguments and outputs; choices are given by their codes. */
struct dispatch {
    const char *name;
    int inputs;
    int outputs;
    const char *output_names[24];
    int32_t (*call)(const double *in, double *out);
};

static int32_t call_standard_atmosphere(const double *in, double *out)
{
    return lubber_standard_atmosphere(in[0], in[1], &out[0], &out[1], &out[2], &out[3]);
}

static int32_t call_pressure_ratio(const double *in, double *out)
{
    return lubber_pressure_ratio(in[0], &out[0]);
}

static int32_t call_density_ratio(const double *in, double *out)
{
    return lubber_density_ratio(in[0], in[1], &out[0]);
}

static int32_t call_temperature_ratio(const double *in, double *out)
{
    return lubber_temperature_ratio(in[0], in[1], &out[0]);
}

static int32_t call_isa_deviation_k(const double *in, double *out)
{
    return lubber_isa_deviation_k(in[0], in[1], &out[0]);
}

static int32_t call_speed_of_sound_kt(const double *in, double *out)
{
    return lubber_speed_of_sound_kt(in[0], &out[0]);
}

static int32_t call_pressure_altitude_from_pressure_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_from_pressure_ft(in[0], &out[0]);
}

static int32_t call_geopotential_altitude_ft(const double *in, double *out)
{
    return lubber_geopotential_altitude_ft(in[0], &out[0]);
}

static int32_t call_geometric_altitude_ft(const double *in, double *out)
{
    return lubber_geometric_altitude_ft(in[0], &out[0]);
}

static int32_t call_tas_from_cas_kt(const double *in, double *out)
{
    return lubber_tas_from_cas_kt(in[0], in[1], in[2], &out[0]);
}

static int32_t call_cas_from_tas_kt(const double *in, double *out)
{
    return lubber_cas_from_tas_kt(in[0], in[1], in[2], &out[0]);
}

static int32_t call_mach_from_cas(const double *in, double *out)
{
    return lubber_mach_from_cas(in[0], in[1], &out[0]);
}

static int32_t call_cas_from_mach_kt(const double *in, double *out)
{
    return lubber_cas_from_mach_kt(in[0], in[1], &out[0]);
}

static int32_t call_tas_from_mach_kt(const double *in, double *out)
{
    return lubber_tas_from_mach_kt(in[0], in[1], in[2], &out[0]);
}

static int32_t call_mach_from_tas(const double *in, double *out)
{
    return lubber_mach_from_tas(in[0], in[1], in[2], &out[0]);
}

static int32_t call_eas_from_tas_kt(const double *in, double *out)
{
    return lubber_eas_from_tas_kt(in[0], in[1], in[2], &out[0]);
}

static int32_t call_tas_from_eas_kt(const double *in, double *out)
{
    return lubber_tas_from_eas_kt(in[0], in[1], in[2], &out[0]);
}

static int32_t call_eas_from_cas_kt(const double *in, double *out)
{
    return lubber_eas_from_cas_kt(in[0], in[1], &out[0]);
}

static int32_t call_cas_from_eas_kt(const double *in, double *out)
{
    return lubber_cas_from_eas_kt(in[0], in[1], &out[0]);
}

static int32_t call_eas_from_mach_kt(const double *in, double *out)
{
    return lubber_eas_from_mach_kt(in[0], in[1], &out[0]);
}

static int32_t call_mach_from_eas(const double *in, double *out)
{
    return lubber_mach_from_eas(in[0], in[1], &out[0]);
}

static int32_t call_isentropic_pressure_ratio(const double *in, double *out)
{
    return lubber_isentropic_pressure_ratio(in[0], &out[0]);
}

static int32_t call_pitot_pressure_ratio(const double *in, double *out)
{
    return lubber_pitot_pressure_ratio(in[0], &out[0]);
}

static int32_t call_impact_pressure_hpa(const double *in, double *out)
{
    return lubber_impact_pressure_hpa(in[0], &out[0]);
}

static int32_t call_cas_from_impact_pressure_kt(const double *in, double *out)
{
    return lubber_cas_from_impact_pressure_kt(in[0], &out[0]);
}

static int32_t call_procedure_tas_factor(const double *in, double *out)
{
    return lubber_procedure_tas_factor(in[0], in[1], &out[0]);
}

static int32_t call_crossover_altitude_ft(const double *in, double *out)
{
    return lubber_crossover_altitude_ft(in[0], in[1], &out[0]);
}

static int32_t call_total_temperature_degc(const double *in, double *out)
{
    return lubber_total_temperature_degc(in[0], in[1], in[2], &out[0]);
}

static int32_t call_static_temperature_degc(const double *in, double *out)
{
    return lubber_static_temperature_degc(in[0], in[1], in[2], &out[0]);
}

static int32_t call_indicated_altitude_ft(const double *in, double *out)
{
    return lubber_indicated_altitude_ft(in[0], in[1], &out[0]);
}

static int32_t call_pressure_altitude_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_ft(in[0], in[1], &out[0]);
}

static int32_t call_pressure_altitude_rule_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_rule_ft(in[0], in[1], &out[0]);
}

static int32_t call_altimeter_setting_hpa(const double *in, double *out)
{
    return lubber_altimeter_setting_hpa(in[0], in[1], &out[0]);
}

static int32_t call_altimeter_setting_smithsonian_hpa(const double *in, double *out)
{
    return lubber_altimeter_setting_smithsonian_hpa(in[0], in[1], &out[0]);
}

static int32_t call_station_pressure_hpa(const double *in, double *out)
{
    return lubber_station_pressure_hpa(in[0], in[1], &out[0]);
}

static int32_t call_density_altitude_ft(const double *in, double *out)
{
    return lubber_density_altitude_ft(in[0], in[1], &out[0]);
}

static int32_t call_density_altitude_rule_ft(const double *in, double *out)
{
    return lubber_density_altitude_rule_ft(in[0], in[1], &out[0]);
}

static int32_t call_true_altitude_ft(const double *in, double *out)
{
    return lubber_true_altitude_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static int32_t call_height_above_station_ft(const double *in, double *out)
{
    return lubber_height_above_station_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static int32_t call_pressure_altitude_at_true_altitude_ft(const double *in, double *out)
{
    return lubber_pressure_altitude_at_true_altitude_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static int32_t call_transition_level_ft(const double *in, double *out)
{
    return lubber_transition_level_ft(in[0], in[1], in[2], in[3], &out[0]);
}

static int32_t call_cold_temperature_correction_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_ft(in[0], in[1], in[2], &out[0]);
}

static int32_t call_cold_temperature_correction_tabulated_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_tabulated_ft(in[0], in[1], &out[0]);
}

static int32_t call_cold_temperature_correction_rule_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_rule_ft(in[0], in[1], in[2], &out[0]);
}

static int32_t call_cold_temperature_correction_exact_ft(const double *in, double *out)
{
    return lubber_cold_temperature_correction_exact_ft(in[0], in[1], in[2], &out[0]);
}

static int32_t call_arc_entry(const double *in, double *out)
{
    return lubber_arc_entry(in[0], (int32_t)in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], in[8], in[9], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static int32_t call_arc_exit(const double *in, double *out)
{
    return lubber_arc_exit(in[0], (int32_t)in[1], in[2], (int32_t)in[3], in[4], in[5], in[6], in[7], in[8], in[9], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5], &out[6]);
}

static int32_t call_geodesic_inverse(const double *in, double *out)
{
    return lubber_geodesic_inverse(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static int32_t call_slant_range_nm(const double *in, double *out)
{
    return lubber_slant_range_nm(in[0], in[1], &out[0]);
}

static int32_t call_geodesic_direct(const double *in, double *out)
{
    return lubber_geodesic_direct(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static int32_t call_ground_distance_nm(const double *in, double *out)
{
    return lubber_ground_distance_nm(in[0], in[1], &out[0]);
}

static int32_t call_least_dme_nm(const double *in, double *out)
{
    return lubber_least_dme_nm(in[0], &out[0]);
}

static int32_t call_great_circle_inverse(const double *in, double *out)
{
    return lubber_great_circle_inverse(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2]);
}

static int32_t call_great_circle_direct(const double *in, double *out)
{
    return lubber_great_circle_direct(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2]);
}

static int32_t call_lead_nm(const double *in, double *out)
{
    return lubber_lead_nm(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], &out[0]);
}

static int32_t call_dme_at_roll_in_nm(const double *in, double *out)
{
    return lubber_dme_at_roll_in_nm(in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], in[8], &out[0]);
}

static int32_t call_turn_anticipation_nm(const double *in, double *out)
{
    return lubber_turn_anticipation_nm(in[0], in[1], &out[0]);
}

static int32_t call_arc_entry_inbound_nm(const double *in, double *out)
{
    return lubber_arc_entry_inbound_nm(in[0], in[1], &out[0]);
}

static int32_t call_arc_entry_outbound_nm(const double *in, double *out)
{
    return lubber_arc_entry_outbound_nm(in[0], in[1], &out[0]);
}

static int32_t call_lead_radial_inbound_deg(const double *in, double *out)
{
    return lubber_lead_radial_inbound_deg(in[0], in[1], &out[0]);
}

static int32_t call_lead_radial_outbound_deg(const double *in, double *out)
{
    return lubber_lead_radial_outbound_deg(in[0], in[1], &out[0]);
}

static int32_t call_rule_lead_nm(const double *in, double *out)
{
    return lubber_rule_lead_nm(in[0], in[1], in[2], &out[0]);
}

static int32_t call_rule_reading_nm(const double *in, double *out)
{
    return lubber_rule_reading_nm(in[0], in[1], in[2], &out[0]);
}

static int32_t call_rule_least_dme_nm(const double *in, double *out)
{
    return lubber_rule_least_dme_nm(in[0], &out[0]);
}

static int32_t call_rule_cone_radius_nm(const double *in, double *out)
{
    return lubber_rule_cone_radius_nm(in[0], &out[0]);
}

static int32_t call_rule_bank_deg(const double *in, double *out)
{
    return lubber_rule_bank_deg(in[0], (int32_t)in[1], &out[0]);
}

static int32_t call_rule_turn_radius_nm(const double *in, double *out)
{
    return lubber_rule_turn_radius_nm(in[0], (int32_t)in[1], &out[0]);
}

static int32_t call_rule_radials_per_mile(const double *in, double *out)
{
    return lubber_rule_radials_per_mile(in[0], &out[0]);
}

static int32_t call_rule_lead_radials_deg(const double *in, double *out)
{
    return lubber_rule_lead_radials_deg(in[0], in[1], (int32_t)in[2], (int32_t)in[3], &out[0]);
}

static int32_t call_observe(const double *in, double *out)
{
    return lubber_observe(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1], &out[2], &out[3]);
}

static int32_t call_cone_radius_nm(const double *in, double *out)
{
    return lubber_cone_radius_nm(in[0], in[1], &out[0]);
}

static int32_t call_time_to_fly_s(const double *in, double *out)
{
    return lubber_time_to_fly_s(in[0], in[1], &out[0]);
}

static int32_t call_distance_flown_nm(const double *in, double *out)
{
    return lubber_distance_flown_nm(in[0], in[1], &out[0]);
}

static int32_t call_groundspeed_from_time_kt(const double *in, double *out)
{
    return lubber_groundspeed_from_time_kt(in[0], in[1], &out[0]);
}

static int32_t call_time_between_fixes_s(const double *in, double *out)
{
    return lubber_time_between_fixes_s(in[0], in[1], in[2], in[3], in[4], &out[0]);
}

static int32_t call_station_by_bearing_change(const double *in, double *out)
{
    return lubber_station_by_bearing_change(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static int32_t call_time_to_station_rule_s(const double *in, double *out)
{
    return lubber_time_to_station_rule_s(in[0], in[1], &out[0]);
}

static int32_t call_turn_radius_nm(const double *in, double *out)
{
    return lubber_turn_radius_nm(in[0], in[1], &out[0]);
}

static int32_t call_turn_rate_deg_per_s(const double *in, double *out)
{
    return lubber_turn_rate_deg_per_s(in[0], in[1], &out[0]);
}

static int32_t call_bank_for_rate_deg(const double *in, double *out)
{
    return lubber_bank_for_rate_deg(in[0], in[1], &out[0]);
}

static int32_t call_bank_for_radius_deg(const double *in, double *out)
{
    return lubber_bank_for_radius_deg(in[0], in[1], &out[0]);
}

static int32_t call_radius_at_rate_nm(const double *in, double *out)
{
    return lubber_radius_at_rate_nm(in[0], in[1], &out[0]);
}

static int32_t call_load_factor(const double *in, double *out)
{
    return lubber_load_factor(in[0], &out[0]);
}

static int32_t call_bank_for_load_factor_deg(const double *in, double *out)
{
    return lubber_bank_for_load_factor_deg(in[0], &out[0]);
}

static int32_t call_limited_turn(const double *in, double *out)
{
    return lubber_limited_turn(in[0], in[1], in[2], &out[0], &out[1], &out[2], &out[3]);
}

static int32_t call_rolled_turn(const double *in, double *out)
{
    return lubber_rolled_turn(in[0], in[1], in[2], in[3], in[4], &out[0], &out[1], &out[2], &out[3], &out[4], &out[5]);
}

static int32_t call_wind_triangle(const double *in, double *out)
{
    return lubber_wind_triangle(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static int32_t call_wind_correction_deg(const double *in, double *out)
{
    return lubber_wind_correction_deg(in[0], in[1], in[2], in[3], &out[0]);
}

static int32_t call_track_and_groundspeed(const double *in, double *out)
{
    return lubber_track_and_groundspeed(in[0], in[1], in[2], in[3], &out[0], &out[1], &out[2]);
}

static int32_t call_wind_from_track(const double *in, double *out)
{
    return lubber_wind_from_track(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static int32_t call_wind_components(const double *in, double *out)
{
    return lubber_wind_components(in[0], in[1], in[2], &out[0], &out[1]);
}

static int32_t call_wind_from_components(const double *in, double *out)
{
    return lubber_wind_from_components(in[0], in[1], in[2], &out[0], &out[1]);
}

static int32_t call_airspeed_for_groundspeed(const double *in, double *out)
{
    return lubber_airspeed_for_groundspeed(in[0], in[1], in[2], in[3], &out[0], &out[1]);
}

static int32_t call_wind_between_levels(const double *in, double *out)
{
    return lubber_wind_between_levels(in[0], in[1], in[2], in[3], in[4], in[5], in[6], &out[0], &out[1]);
}

static const struct dispatch DISPATCH[] = {
    {"standard_atmosphere", 2, 4, {"temperature_degc", "pressure_hpa", "density_kg_per_m3", "speed_of_sound_kt"}, call_standard_atmosphere},
    {"pressure_ratio", 1, 1, {"pressure_ratio"}, call_pressure_ratio},
    {"density_ratio", 2, 1, {"density_ratio"}, call_density_ratio},
    {"temperature_ratio", 2, 1, {"temperature_ratio"}, call_temperature_ratio},
    {"isa_deviation_k", 2, 1, {"isa_deviation_k"}, call_isa_deviation_k},
    {"speed_of_sound_kt", 1, 1, {"speed_of_sound_kt"}, call_speed_of_sound_kt},
    {"pressure_altitude_from_pressure_ft", 1, 1, {"pressure_altitude_from_pressure_ft"}, call_pressure_altitude_from_pressure_ft},
    {"geopotential_altitude_ft", 1, 1, {"geopotential_altitude_ft"}, call_geopotential_altitude_ft},
    {"geometric_altitude_ft", 1, 1, {"geometric_altitude_ft"}, call_geometric_altitude_ft},
    {"tas_from_cas_kt", 3, 1, {"tas_from_cas_kt"}, call_tas_from_cas_kt},
    {"cas_from_tas_kt", 3, 1, {"cas_from_tas_kt"}, call_cas_from_tas_kt},
    {"mach_from_cas", 2, 1, {"mach_from_cas"}, call_mach_from_cas},
    {"cas_from_mach_kt", 2, 1, {"cas_from_mach_kt"}, call_cas_from_mach_kt},
    {"tas_from_mach_kt", 3, 1, {"tas_from_mach_kt"}, call_tas_from_mach_kt},
    {"mach_from_tas", 3, 1, {"mach_from_tas"}, call_mach_from_tas},
    {"eas_from_tas_kt", 3, 1, {"eas_from_tas_kt"}, call_eas_from_tas_kt},
    {"tas_from_eas_kt", 3, 1, {"tas_from_eas_kt"}, call_tas_from_eas_kt},
    {"eas_from_cas_kt", 2, 1, {"eas_from_cas_kt"}, call_eas_from_cas_kt},
    {"cas_from_eas_kt", 2, 1, {"cas_from_eas_kt"}, call_cas_from_eas_kt},
    {"eas_from_mach_kt", 2, 1, {"eas_from_mach_kt"}, call_eas_from_mach_kt},
    {"mach_from_eas", 2, 1, {"mach_from_eas"}, call_mach_from_eas},
    {"isentropic_pressure_ratio", 1, 1, {"isentropic_pressure_ratio"}, call_isentropic_pressure_ratio},
    {"pitot_pressure_ratio", 1, 1, {"pitot_pressure_ratio"}, call_pitot_pressure_ratio},
    {"impact_pressure_hpa", 1, 1, {"impact_pressure_hpa"}, call_impact_pressure_hpa},
    {"cas_from_impact_pressure_kt", 1, 1, {"cas_from_impact_pressure_kt"}, call_cas_from_impact_pressure_kt},
    {"procedure_tas_factor", 2, 1, {"procedure_tas_factor"}, call_procedure_tas_factor},
    {"crossover_altitude_ft", 2, 1, {"crossover_altitude_ft"}, call_crossover_altitude_ft},
    {"total_temperature_degc", 3, 1, {"total_temperature_degc"}, call_total_temperature_degc},
    {"static_temperature_degc", 3, 1, {"static_temperature_degc"}, call_static_temperature_degc},
    {"indicated_altitude_ft", 2, 1, {"indicated_altitude_ft"}, call_indicated_altitude_ft},
    {"pressure_altitude_ft", 2, 1, {"pressure_altitude_ft"}, call_pressure_altitude_ft},
    {"pressure_altitude_rule_ft", 2, 1, {"pressure_altitude_rule_ft"}, call_pressure_altitude_rule_ft},
    {"altimeter_setting_hpa", 2, 1, {"altimeter_setting_hpa"}, call_altimeter_setting_hpa},
    {"altimeter_setting_smithsonian_hpa", 2, 1, {"altimeter_setting_smithsonian_hpa"}, call_altimeter_setting_smithsonian_hpa},
    {"station_pressure_hpa", 2, 1, {"station_pressure_hpa"}, call_station_pressure_hpa},
    {"density_altitude_ft", 2, 1, {"density_altitude_ft"}, call_density_altitude_ft},
    {"density_altitude_rule_ft", 2, 1, {"density_altitude_rule_ft"}, call_density_altitude_rule_ft},
    {"true_altitude_ft", 4, 1, {"true_altitude_ft"}, call_true_altitude_ft},
    {"height_above_station_ft", 4, 1, {"height_above_station_ft"}, call_height_above_station_ft},
    {"pressure_altitude_at_true_altitude_ft", 4, 1, {"pressure_altitude_at_true_altitude_ft"}, call_pressure_altitude_at_true_altitude_ft},
    {"transition_level_ft", 4, 1, {"transition_level_ft"}, call_transition_level_ft},
    {"cold_temperature_correction_ft", 3, 1, {"cold_temperature_correction_ft"}, call_cold_temperature_correction_ft},
    {"cold_temperature_correction_tabulated_ft", 2, 1, {"cold_temperature_correction_tabulated_ft"}, call_cold_temperature_correction_tabulated_ft},
    {"cold_temperature_correction_rule_ft", 3, 1, {"cold_temperature_correction_rule_ft"}, call_cold_temperature_correction_rule_ft},
    {"cold_temperature_correction_exact_ft", 3, 1, {"cold_temperature_correction_exact_ft"}, call_cold_temperature_correction_exact_ft},
    {"arc_entry", 10, 7, {"radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"}, call_arc_entry},
    {"arc_exit", 10, 7, {"radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"}, call_arc_exit},
    {"geodesic_inverse", 4, 3, {"distance_nm", "initial_bearing_deg", "final_bearing_deg"}, call_geodesic_inverse},
    {"slant_range_nm", 2, 1, {"slant_range_nm"}, call_slant_range_nm},
    {"geodesic_direct", 4, 3, {"latitude_deg", "longitude_deg", "final_bearing_deg"}, call_geodesic_direct},
    {"ground_distance_nm", 2, 1, {"ground_distance_nm"}, call_ground_distance_nm},
    {"least_dme_nm", 1, 1, {"least_dme_nm"}, call_least_dme_nm},
    {"great_circle_inverse", 5, 3, {"distance_nm", "initial_bearing_deg", "final_bearing_deg"}, call_great_circle_inverse},
    {"great_circle_direct", 5, 3, {"latitude_deg", "longitude_deg", "final_bearing_deg"}, call_great_circle_direct},
    {"lead_nm", 8, 1, {"lead_nm"}, call_lead_nm},
    {"dme_at_roll_in_nm", 9, 1, {"dme_at_roll_in_nm"}, call_dme_at_roll_in_nm},
    {"turn_anticipation_nm", 2, 1, {"turn_anticipation_nm"}, call_turn_anticipation_nm},
    {"arc_entry_inbound_nm", 2, 1, {"arc_entry_inbound_nm"}, call_arc_entry_inbound_nm},
    {"arc_entry_outbound_nm", 2, 1, {"arc_entry_outbound_nm"}, call_arc_entry_outbound_nm},
    {"lead_radial_inbound_deg", 2, 1, {"lead_radial_inbound_deg"}, call_lead_radial_inbound_deg},
    {"lead_radial_outbound_deg", 2, 1, {"lead_radial_outbound_deg"}, call_lead_radial_outbound_deg},
    {"rule_lead_nm", 3, 1, {"rule_lead_nm"}, call_rule_lead_nm},
    {"rule_reading_nm", 3, 1, {"rule_reading_nm"}, call_rule_reading_nm},
    {"rule_least_dme_nm", 1, 1, {"rule_least_dme_nm"}, call_rule_least_dme_nm},
    {"rule_cone_radius_nm", 1, 1, {"rule_cone_radius_nm"}, call_rule_cone_radius_nm},
    {"rule_bank_deg", 2, 1, {"rule_bank_deg"}, call_rule_bank_deg},
    {"rule_turn_radius_nm", 2, 1, {"rule_turn_radius_nm"}, call_rule_turn_radius_nm},
    {"rule_radials_per_mile", 1, 1, {"rule_radials_per_mile"}, call_rule_radials_per_mile},
    {"rule_lead_radials_deg", 4, 1, {"rule_lead_radials_deg"}, call_rule_lead_radials_deg},
    {"observe", 7, 4, {"radial_deg", "dme_nm", "ground_distance_nm", "elevation_angle_deg"}, call_observe},
    {"cone_radius_nm", 2, 1, {"cone_radius_nm"}, call_cone_radius_nm},
    {"time_to_fly_s", 2, 1, {"time_to_fly_s"}, call_time_to_fly_s},
    {"distance_flown_nm", 2, 1, {"distance_flown_nm"}, call_distance_flown_nm},
    {"groundspeed_from_time_kt", 2, 1, {"groundspeed_from_time_kt"}, call_groundspeed_from_time_kt},
    {"time_between_fixes_s", 5, 1, {"time_between_fixes_s"}, call_time_between_fixes_s},
    {"station_by_bearing_change", 4, 3, {"distance_nm", "time_s", "distance_before_nm"}, call_station_by_bearing_change},
    {"time_to_station_rule_s", 2, 1, {"time_to_station_rule_s"}, call_time_to_station_rule_s},
    {"turn_radius_nm", 2, 1, {"turn_radius_nm"}, call_turn_radius_nm},
    {"turn_rate_deg_per_s", 2, 1, {"turn_rate_deg_per_s"}, call_turn_rate_deg_per_s},
    {"bank_for_rate_deg", 2, 1, {"bank_for_rate_deg"}, call_bank_for_rate_deg},
    {"bank_for_radius_deg", 2, 1, {"bank_for_radius_deg"}, call_bank_for_radius_deg},
    {"radius_at_rate_nm", 2, 1, {"radius_at_rate_nm"}, call_radius_at_rate_nm},
    {"load_factor", 1, 1, {"load_factor"}, call_load_factor},
    {"bank_for_load_factor_deg", 1, 1, {"bank_for_load_factor_deg"}, call_bank_for_load_factor_deg},
    {"limited_turn", 3, 4, {"bank_deg", "turn_rate_deg_per_s", "radius_nm", "governed_by"}, call_limited_turn},
    {"rolled_turn", 5, 6, {"bank_deg", "duration_s", "roll_duration_s", "advance_nm", "transfer_nm", "governed_by"}, call_rolled_turn},
    {"wind_triangle", 4, 2, {"heading_deg", "groundspeed_kt"}, call_wind_triangle},
    {"wind_correction_deg", 4, 1, {"wind_correction_deg"}, call_wind_correction_deg},
    {"track_and_groundspeed", 4, 3, {"track_deg", "groundspeed_kt", "drift_deg"}, call_track_and_groundspeed},
    {"wind_from_track", 4, 2, {"wind_from_deg", "wind_speed_kt"}, call_wind_from_track},
    {"wind_components", 3, 2, {"headwind_kt", "crosswind_kt"}, call_wind_components},
    {"wind_from_components", 3, 2, {"wind_from_deg", "wind_speed_kt"}, call_wind_from_components},
    {"airspeed_for_groundspeed", 4, 2, {"heading_deg", "true_airspeed_kt"}, call_airspeed_for_groundspeed},
    {"wind_between_levels", 7, 2, {"wind_from_deg", "wind_speed_kt"}, call_wind_between_levels},
};

#define DISPATCH_COUNT (sizeof DISPATCH / sizeof DISPATCH[0])

#endif
