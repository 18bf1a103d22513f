# Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate

import numpy as np

__all__ = [
    "airspeed_for_groundspeed_heading_deg",
    "airspeed_for_groundspeed_true_airspeed_kt",
    "altimeter_setting_hpa",
    "altimeter_setting_smithsonian_hpa",
    "arc_arc_crossing_latitude1_deg",
    "arc_arc_crossing_latitude2_deg",
    "arc_arc_crossing_longitude1_deg",
    "arc_arc_crossing_longitude2_deg",
    "arc_chord_leg_course_deg",
    "arc_chord_leg_from_radial_deg",
    "arc_chord_leg_groundspeed_kt",
    "arc_chord_leg_heading_deg",
    "arc_chord_leg_time_s",
    "arc_chord_leg_to_radial_deg",
    "arc_chords_angle_deg",
    "arc_chords_distance_at_ends_nm",
    "arc_chords_distance_at_middle_nm",
    "arc_chords_legs",
    "arc_chords_length_nm",
    "arc_entry_angle_at_station_deg",
    "arc_entry_distance_at_roll_in_nm",
    "arc_entry_distance_at_roll_out_nm",
    "arc_entry_duration_s",
    "arc_entry_heading_change_deg",
    "arc_entry_inbound_nm",
    "arc_entry_outbound_nm",
    "arc_entry_radial_at_roll_in_deg",
    "arc_entry_radial_at_roll_out_deg",
    "arc_exit_angle_at_station_deg",
    "arc_exit_distance_at_roll_in_nm",
    "arc_exit_distance_at_roll_out_nm",
    "arc_exit_duration_s",
    "arc_exit_heading_change_deg",
    "arc_exit_radial_at_roll_in_deg",
    "arc_exit_radial_at_roll_out_deg",
    "arc_extent_abeam1_latitude_deg",
    "arc_extent_abeam1_longitude_deg",
    "arc_extent_abeam2_latitude_deg",
    "arc_extent_abeam2_longitude_deg",
    "arc_extent_latitude1_deg",
    "arc_extent_latitude2_deg",
    "arc_extent_longitude1_deg",
    "arc_extent_longitude2_deg",
    "arc_flown_angle_deg",
    "arc_flown_distance_nm",
    "arc_flown_time_s",
    "arc_heading_ahead_of_wing_tip_deg",
    "arc_heading_bank_deg",
    "arc_heading_groundspeed_kt",
    "arc_heading_heading_deg",
    "arc_heading_station_off_nose_deg",
    "arc_heading_track_deg",
    "arc_heading_wind_correction_deg",
    "arc_least_correction_deg",
    "arc_length_nm",
    "arc_regained_angle_deg",
    "arc_regained_distance_nm",
    "arc_regained_heading_deg",
    "arc_regained_radial_deg",
    "arc_regained_time_s",
    "arc_regained_track_deg",
    "arc_tangents_course1_deg",
    "arc_tangents_course2_deg",
    "arc_tangents_latitude1_deg",
    "arc_tangents_latitude2_deg",
    "arc_tangents_longitude1_deg",
    "arc_tangents_longitude2_deg",
    "bank_for_load_factor_deg",
    "bank_for_radius_deg",
    "bank_for_rate_deg",
    "base_turn_duration_s",
    "base_turn_established_nm",
    "base_turn_heading_change_deg",
    "base_turn_heading_deg",
    "base_turn_offset_deg",
    "base_turn_offset_exact_deg",
    "base_turn_on_track_duration_s",
    "base_turn_on_track_established_nm",
    "base_turn_on_track_heading_change_deg",
    "base_turn_on_track_heading_deg",
    "base_turn_on_track_offset_deg",
    "base_turn_on_track_outbound_time_s",
    "base_turn_on_track_track_deg",
    "base_turn_outbound_time_s",
    "base_turn_sector_nm",
    "base_turn_template_farthest_nm",
    "base_turn_template_leg_nm",
    "base_turn_template_nearest_nm",
    "base_turn_track_deg",
    "cas_from_eas_kt",
    "cas_from_impact_pressure_kt",
    "cas_from_mach_kt",
    "cas_from_tas_kt",
    "cold_temperature_correction_by_method_ft",
    "cold_temperature_correction_exact_ft",
    "cold_temperature_correction_ft",
    "cold_temperature_correction_rule_ft",
    "cold_temperature_correction_tabulated_ft",
    "cone_radius_nm",
    "course_arc_crossing_along1_nm",
    "course_arc_crossing_along2_nm",
    "course_arc_crossing_latitude1_deg",
    "course_arc_crossing_latitude2_deg",
    "course_arc_crossing_longitude1_deg",
    "course_arc_crossing_longitude2_deg",
    "course_crossing_along_first_nm",
    "course_crossing_along_second_nm",
    "course_crossing_first_course_deg",
    "course_crossing_latitude_deg",
    "course_crossing_longitude_deg",
    "course_crossing_second_course_deg",
    "cross_track_abeam_course_deg",
    "cross_track_abeam_latitude_deg",
    "cross_track_abeam_longitude_deg",
    "cross_track_along_track_nm",
    "cross_track_cross_track_nm",
    "cross_track_of_deflection_nm",
    "crossover_altitude_ft",
    "decimal_year",
    "deflection_of_cross_track_deflection",
    "deflection_of_cross_track_deviation_deg",
    "density_altitude_ft",
    "density_altitude_rule_ft",
    "density_ratio",
    "design_base_turn_offset_deg",
    "displayed_dme_nm",
    "distance_flown_nm",
    "dme_at_roll_in_nm",
    "dme_dme_tolerances_across_track_nm",
    "dme_dme_tolerances_along_track_nm",
    "dme_dme_tolerances_half_width_nm",
    "dme_error_along_nm",
    "dme_tolerance_nm",
    "double_angle_intercept_distance_nm",
    "double_angle_intercept_heading_deg",
    "double_angle_intercept_time_s",
    "double_angle_intercept_time_to_station_s",
    "double_angle_intercept_track_deg",
    "eas_from_cas_kt",
    "eas_from_mach_kt",
    "eas_from_tas_kt",
    "ellipse_factor",
    "fix_of_radial_and_dme_across_track_nm",
    "fix_of_radial_and_dme_along_track_nm",
    "fix_of_radial_and_dme_correlation",
    "fix_of_radial_and_dme_east_nm",
    "fix_of_radial_and_dme_major_axis_deg",
    "fix_of_radial_and_dme_north_nm",
    "fix_of_radial_and_dme_root_mean_square_nm",
    "fix_of_radial_and_dme_semi_major_nm",
    "fix_of_radial_and_dme_semi_minor_nm",
    "fix_of_two_dme_across_track_nm",
    "fix_of_two_dme_along_track_nm",
    "fix_of_two_dme_correlation",
    "fix_of_two_dme_east_nm",
    "fix_of_two_dme_major_axis_deg",
    "fix_of_two_dme_north_nm",
    "fix_of_two_dme_root_mean_square_nm",
    "fix_of_two_dme_semi_major_nm",
    "fix_of_two_dme_semi_minor_nm",
    "fix_of_two_radials_across_track_nm",
    "fix_of_two_radials_along_track_nm",
    "fix_of_two_radials_correlation",
    "fix_of_two_radials_east_nm",
    "fix_of_two_radials_major_axis_deg",
    "fix_of_two_radials_north_nm",
    "fix_of_two_radials_root_mean_square_nm",
    "fix_of_two_radials_semi_major_nm",
    "fix_of_two_radials_semi_minor_nm",
    "geodesic_direct_final_bearing_deg",
    "geodesic_direct_latitude_deg",
    "geodesic_direct_longitude_deg",
    "geodesic_inverse_distance_nm",
    "geodesic_inverse_final_bearing_deg",
    "geodesic_inverse_initial_bearing_deg",
    "geometric_altitude_ft",
    "geopotential_altitude_ft",
    "great_circle_direct_final_bearing_deg",
    "great_circle_direct_latitude_deg",
    "great_circle_direct_longitude_deg",
    "great_circle_inverse_distance_nm",
    "great_circle_inverse_final_bearing_deg",
    "great_circle_inverse_initial_bearing_deg",
    "grid_from_true_deg",
    "ground_distance_nm",
    "groundspeed_from_time_kt",
    "height_above_station_ft",
    "holding_entry_also",
    "holding_entry_entry",
    "holding_entry_first_course_deg",
    "holding_entry_to_boundary_deg",
    "holding_entry_to_outbound_deg",
    "holding_pattern_at_bank_deg",
    "holding_pattern_at_bearing_from_fix_deg",
    "holding_pattern_at_distance_nm",
    "holding_pattern_at_heading_deg",
    "holding_pattern_bank_deg",
    "holding_pattern_drift_factor",
    "holding_pattern_duration_s",
    "holding_pattern_inbound_correction_deg",
    "holding_pattern_inbound_leg_nm",
    "holding_pattern_inbound_time_s",
    "holding_pattern_length_nm",
    "holding_pattern_outbound_clock_s",
    "holding_pattern_outbound_correction_deg",
    "holding_pattern_outbound_end_across_nm",
    "holding_pattern_outbound_end_before_fix_nm",
    "holding_pattern_outbound_heading_deg",
    "holding_pattern_outbound_time_s",
    "holding_pattern_width_nm",
    "holding_speed_calibrated_kt",
    "holding_speed_indicated_kt",
    "holding_speed_mach",
    "holding_timing_time_s",
    "holding_timing_timed",
    "holding_turn_bank_deg",
    "holding_turn_governed_by",
    "holding_turn_radius_nm",
    "holding_turn_turn_rate_deg_per_s",
    "icao_wind_kt",
    "impact_pressure_hpa",
    "indicated_altitude_ft",
    "intercept_along_nm",
    "intercept_cross_track_at_roll_in_nm",
    "intercept_distance_nm",
    "intercept_distance_to_roll_in_nm",
    "intercept_groundspeed_kt",
    "intercept_heading_deg",
    "intercept_lead_nm",
    "intercept_time_s",
    "intercept_time_to_roll_in_s",
    "intercept_track_deg",
    "isa_deviation_k",
    "isentropic_pressure_ratio",
    "lambert_grid_convergence_deg",
    "lead_nm",
    "lead_radial_inbound_deg",
    "lead_radial_outbound_deg",
    "least_dme_nm",
    "least_reception_height_ft",
    "leg_meaning_end",
    "leg_meaning_path",
    "limited_turn_bank_deg",
    "limited_turn_governed_by",
    "limited_turn_radius_nm",
    "limited_turn_turn_rate_deg_per_s",
    "limiting_dme_limiting_dme_nm",
    "limiting_dme_rounded_nm",
    "load_factor",
    "mach_from_cas",
    "mach_from_eas",
    "mach_from_tas",
    "magnetic_field_declination_change_deg",
    "magnetic_field_declination_deg",
    "magnetic_field_declination_uncertainty_deg",
    "magnetic_field_down_change_nt",
    "magnetic_field_down_nt",
    "magnetic_field_east_change_nt",
    "magnetic_field_east_nt",
    "magnetic_field_grid_variation_deg",
    "magnetic_field_horizontal_change_nt",
    "magnetic_field_horizontal_nt",
    "magnetic_field_in_date",
    "magnetic_field_inclination_change_deg",
    "magnetic_field_inclination_deg",
    "magnetic_field_north_change_nt",
    "magnetic_field_north_nt",
    "magnetic_field_total_change_nt",
    "magnetic_field_total_nt",
    "magnetic_field_zone",
    "magnetic_from_true_deg",
    "needle_motion_full_scale_time_s",
    "needle_motion_needle_rate_deg_per_s",
    "observe_dme_nm",
    "observe_elevation_angle_deg",
    "observe_ground_distance_nm",
    "observe_radial_deg",
    "offset_arc_crossing_along1_nm",
    "offset_arc_crossing_along2_nm",
    "offset_arc_crossing_latitude1_deg",
    "offset_arc_crossing_latitude2_deg",
    "offset_arc_crossing_longitude1_deg",
    "offset_arc_crossing_longitude2_deg",
    "offset_course_crossing_along_first_nm",
    "offset_course_crossing_latitude_deg",
    "offset_course_crossing_longitude_deg",
    "offset_cross_track_abeam_direction_deg",
    "offset_cross_track_abeam_latitude_deg",
    "offset_cross_track_abeam_longitude_deg",
    "offset_cross_track_along_track_nm",
    "offset_cross_track_cross_track_nm",
    "offset_offset_crossing_along_first_nm",
    "offset_offset_crossing_along_second_nm",
    "offset_offset_crossing_latitude_deg",
    "offset_offset_crossing_longitude_deg",
    "offset_point_direction_deg",
    "offset_point_latitude_deg",
    "offset_point_longitude_deg",
    "offset_tangent_turn_begin_bearing_deg",
    "offset_tangent_turn_begin_latitude_deg",
    "offset_tangent_turn_begin_longitude_deg",
    "offset_tangent_turn_center_latitude_deg",
    "offset_tangent_turn_center_longitude_deg",
    "offset_tangent_turn_end_bearing_deg",
    "offset_tangent_turn_end_latitude_deg",
    "offset_tangent_turn_end_longitude_deg",
    "offset_tangent_turn_length_nm",
    "offset_tangent_turn_side",
    "on_arc",
    "on_course",
    "on_leg",
    "on_offset",
    "outbound_end_dme_nm",
    "pitot_pressure_ratio",
    "polar_grid_convergence_deg",
    "pressure_altitude_at_true_altitude_ft",
    "pressure_altitude_from_pressure_ft",
    "pressure_altitude_ft",
    "pressure_altitude_rule_ft",
    "pressure_ratio",
    "procedure_tas_factor",
    "procedure_tas_factor_by_method",
    "procedure_turn_45_180_back_heading_deg",
    "procedure_turn_45_180_duration_s",
    "procedure_turn_45_180_established_nm",
    "procedure_turn_45_180_farthest_nm",
    "procedure_turn_45_180_least_off_time_s",
    "procedure_turn_45_180_off_heading_deg",
    "procedure_turn_45_180_off_track_deg",
    "procedure_turn_45_180_straight_nm",
    "procedure_turn_45_180_widest_nm",
    "procedure_turn_80_260_across_nm",
    "procedure_turn_80_260_duration_s",
    "procedure_turn_80_260_established_nm",
    "procedure_turn_80_260_exact_angle_deg",
    "procedure_turn_80_260_farthest_nm",
    "procedure_turn_80_260_off_heading_deg",
    "procedure_turn_80_260_widest_nm",
    "published_turn_radius_nm",
    "published_turn_turn_rate_deg_per_s",
    "radial_error_across_nm",
    "radial_error_aggregate_deg",
    "radial_error_system_use_deg",
    "radial_from_true_deg",
    "radial_intercept_cross_track_at_roll_in_nm",
    "radial_intercept_crossing_distance_nm",
    "radial_intercept_distance_at_roll_in_nm",
    "radial_intercept_distance_at_roll_out_nm",
    "radial_intercept_distance_to_crossing_nm",
    "radial_intercept_groundspeed_kt",
    "radial_intercept_heading_deg",
    "radial_intercept_lead_nm",
    "radial_intercept_needle_at_roll_in_deg",
    "radial_intercept_radial_at_roll_in_deg",
    "radial_intercept_time_to_roll_in_s",
    "radial_intercept_turn_duration_s",
    "radial_tolerance_deg",
    "radio_horizon_nm",
    "radius_at_rate_nm",
    "receiver_check_limit_deg",
    "rhumb_direct_latitude_deg",
    "rhumb_direct_longitude_deg",
    "rhumb_excess_conversion_angle_deg",
    "rhumb_excess_excess_nm",
    "rhumb_inverse_course_deg",
    "rhumb_inverse_distance_nm",
    "rolled_turn_advance_nm",
    "rolled_turn_bank_deg",
    "rolled_turn_duration_s",
    "rolled_turn_governed_by",
    "rolled_turn_roll_duration_s",
    "rolled_turn_transfer_nm",
    "route_half_width_nm",
    "rule_arc_correction_deg",
    "rule_arc_correction_error_error_deg",
    "rule_arc_correction_error_exact_deg",
    "rule_arc_correction_error_rule_deg",
    "rule_arc_entry_lead_error_curve_nm",
    "rule_arc_entry_lead_error_error_nm",
    "rule_arc_entry_lead_error_exact_nm",
    "rule_arc_entry_lead_error_radius_nm",
    "rule_arc_entry_lead_error_rule_nm",
    "rule_arc_entry_lead_nm",
    "rule_bank_deg",
    "rule_bank_error_error_deg",
    "rule_bank_error_exact_deg",
    "rule_bank_error_rule_deg",
    "rule_cold_temperature_error_column_ft",
    "rule_cold_temperature_error_error_ft",
    "rule_cold_temperature_error_exact_ft",
    "rule_cold_temperature_error_rule_ft",
    "rule_cold_temperature_error_share_ft",
    "rule_cone_radius_error_angle_nm",
    "rule_cone_radius_error_error_nm",
    "rule_cone_radius_error_exact_nm",
    "rule_cone_radius_error_mile_nm",
    "rule_cone_radius_error_rule_nm",
    "rule_cone_radius_nm",
    "rule_density_altitude_error_curve_ft",
    "rule_density_altitude_error_error_ft",
    "rule_density_altitude_error_exact_ft",
    "rule_density_altitude_error_rule_ft",
    "rule_density_altitude_error_slope_ft",
    "rule_density_altitude_error_standard_ft",
    "rule_ground_distance_error_curve_nm",
    "rule_ground_distance_error_error_nm",
    "rule_ground_distance_error_exact_nm",
    "rule_ground_distance_error_rule_nm",
    "rule_ground_distance_error_triangle_nm",
    "rule_holds_at_height_ft",
    "rule_intercept_angle_deg",
    "rule_intercept_angle_error_doubling_deg",
    "rule_intercept_angle_error_error_deg",
    "rule_intercept_angle_error_exact_deg",
    "rule_intercept_angle_error_limits_deg",
    "rule_intercept_angle_error_rule_deg",
    "rule_intercept_lead_deg",
    "rule_intercept_lead_error_arc_deg",
    "rule_intercept_lead_error_error_deg",
    "rule_intercept_lead_error_exact_deg",
    "rule_intercept_lead_error_rule_deg",
    "rule_intercept_lead_error_share_deg",
    "rule_intercept_lead_error_sixty_deg",
    "rule_lead_error_allowance_nm",
    "rule_lead_error_drift_nm",
    "rule_lead_error_exact_lead_nm",
    "rule_lead_error_exact_reading_nm",
    "rule_lead_error_groundspeed_nm",
    "rule_lead_error_heading_change_nm",
    "rule_lead_error_lead_error_nm",
    "rule_lead_error_mile_nm",
    "rule_lead_error_proportion_nm",
    "rule_lead_error_reading_error_nm",
    "rule_lead_error_roll_nm",
    "rule_lead_error_round_radius_nm",
    "rule_lead_error_rule_lead_nm",
    "rule_lead_error_rule_reading_nm",
    "rule_lead_error_standard_rate_nm",
    "rule_lead_error_sum_nm",
    "rule_lead_flown_before_station_nm",
    "rule_lead_flown_began_in_cone",
    "rule_lead_flown_ended_in_cone",
    "rule_lead_flown_overshoot_nm",
    "rule_lead_flown_past_station_nm",
    "rule_lead_flown_reading_nm",
    "rule_lead_flown_verdict",
    "rule_lead_nm",
    "rule_lead_radials_deg",
    "rule_lead_radials_error_correction_deg",
    "rule_lead_radials_error_error_deg",
    "rule_lead_radials_error_exact_deg",
    "rule_lead_radials_error_geometry_deg",
    "rule_lead_radials_error_rule_deg",
    "rule_lead_radials_error_sixty_deg",
    "rule_least_dme_error_error_nm",
    "rule_least_dme_error_exact_nm",
    "rule_least_dme_error_rule_nm",
    "rule_least_dme_nm",
    "rule_off_course_error_dot_nm",
    "rule_off_course_error_error_nm",
    "rule_off_course_error_exact_nm",
    "rule_off_course_error_rule_nm",
    "rule_off_course_error_sine_nm",
    "rule_off_course_nm",
    "rule_outbound_correction_error_error_deg",
    "rule_outbound_correction_error_exact_deg",
    "rule_outbound_correction_error_rule_deg",
    "rule_outbound_heading_deg",
    "rule_outbound_time_by_headwind_error_error_s",
    "rule_outbound_time_by_headwind_error_exact_s",
    "rule_outbound_time_by_headwind_error_knot_s",
    "rule_outbound_time_by_headwind_error_rule_s",
    "rule_outbound_time_by_headwind_error_turns_s",
    "rule_outbound_time_by_headwind_s",
    "rule_outbound_time_error_error_s",
    "rule_outbound_time_error_exact_s",
    "rule_outbound_time_error_groundspeed_s",
    "rule_outbound_time_error_heading_s",
    "rule_outbound_time_error_rule_s",
    "rule_outbound_time_s",
    "rule_pressure_altitude_error_curve_ft",
    "rule_pressure_altitude_error_datum_ft",
    "rule_pressure_altitude_error_error_ft",
    "rule_pressure_altitude_error_exact_ft",
    "rule_pressure_altitude_error_rule_ft",
    "rule_pressure_altitude_error_slope_ft",
    "rule_radials_per_mile",
    "rule_radials_per_mile_error_error",
    "rule_radials_per_mile_error_exact",
    "rule_radials_per_mile_error_rule",
    "rule_radio_horizon_error_error_nm",
    "rule_radio_horizon_error_exact_nm",
    "rule_radio_horizon_error_factor_nm",
    "rule_radio_horizon_error_root_nm",
    "rule_radio_horizon_error_rule_nm",
    "rule_reading_nm",
    "rule_roll_out_lead_deg",
    "rule_roll_out_lead_error_error_deg",
    "rule_roll_out_lead_error_exact_deg",
    "rule_roll_out_lead_error_rule_deg",
    "rule_roll_out_lead_error_share_deg",
    "rule_roll_out_lead_error_tangent_deg",
    "rule_slant_negligible_from_nm",
    "rule_time_to_station_error_error_s",
    "rule_time_to_station_error_exact_s",
    "rule_time_to_station_error_rule_s",
    "rule_time_to_station_error_sine_s",
    "rule_time_to_station_error_sixty_s",
    "rule_turn_radius_error_error_nm",
    "rule_turn_radius_error_exact_nm",
    "rule_turn_radius_error_rule_nm",
    "rule_turn_radius_nm",
    "service_reach_nm",
    "slant_range_nm",
    "speed_of_sound_kt",
    "splay_distance_nm",
    "stabilization_distance_nm",
    "standard_atmosphere_by_edition_density_kg_per_m3",
    "standard_atmosphere_by_edition_pressure_hpa",
    "standard_atmosphere_by_edition_speed_of_sound_kt",
    "standard_atmosphere_by_edition_temperature_degc",
    "standard_atmosphere_density_kg_per_m3",
    "standard_atmosphere_pressure_hpa",
    "standard_atmosphere_speed_of_sound_kt",
    "standard_atmosphere_temperature_degc",
    "static_temperature_degc",
    "station_by_bearing_change_distance_before_nm",
    "station_by_bearing_change_distance_nm",
    "station_by_bearing_change_time_s",
    "station_misalignment_deg",
    "station_pressure_hpa",
    "straight_line_elevation_angle_deg",
    "straight_line_slant_range_nm",
    "successive_turns_bank_needed_deg",
    "successive_turns_before_second_nm",
    "successive_turns_crossing_before_second_nm",
    "successive_turns_crossing_lead_nm",
    "successive_turns_crossing_past_first_nm",
    "successive_turns_largest_groundspeed_kt",
    "successive_turns_largest_true_airspeed_kt",
    "successive_turns_past_first_nm",
    "successive_turns_spare_nm",
    "successive_turns_straight_time_s",
    "tangent_turn_begin_bearing_deg",
    "tangent_turn_begin_latitude_deg",
    "tangent_turn_begin_longitude_deg",
    "tangent_turn_between_legs_begin_bearing_deg",
    "tangent_turn_between_legs_begin_latitude_deg",
    "tangent_turn_between_legs_begin_longitude_deg",
    "tangent_turn_between_legs_center_latitude_deg",
    "tangent_turn_between_legs_center_longitude_deg",
    "tangent_turn_between_legs_end_bearing_deg",
    "tangent_turn_between_legs_end_latitude_deg",
    "tangent_turn_between_legs_end_longitude_deg",
    "tangent_turn_between_legs_length_nm",
    "tangent_turn_between_legs_side",
    "tangent_turn_center_latitude_deg",
    "tangent_turn_center_longitude_deg",
    "tangent_turn_end_bearing_deg",
    "tangent_turn_end_latitude_deg",
    "tangent_turn_end_longitude_deg",
    "tangent_turn_length_nm",
    "tangent_turn_side",
    "tas_from_cas_kt",
    "tas_from_eas_kt",
    "tas_from_mach_kt",
    "temperature_ratio",
    "time_between_fixes_s",
    "time_to_fly_s",
    "time_to_station_rule_s",
    "total_temperature_degc",
    "track_and_groundspeed_drift_deg",
    "track_and_groundspeed_groundspeed_kt",
    "track_and_groundspeed_track_deg",
    "transition_level_ft",
    "transverse_grid_convergence_deg",
    "true_altitude_ft",
    "true_from_grid_deg",
    "true_from_magnetic_deg",
    "true_from_radial_deg",
    "turn_anticipation_nm",
    "turn_radius_nm",
    "turn_rate_deg_per_s",
    "turn_wind_effect_nm",
    "utm_meridian_deg",
    "variation_deg",
    "vor_needle_deflection",
    "vor_needle_deviation_deg",
    "vor_needle_to_from",
    "vor_receiver_deflection",
    "vor_receiver_deviation_deg",
    "vor_receiver_dme_nm",
    "vor_receiver_flag",
    "vor_receiver_radial_deg",
    "vor_receiver_to_from",
    "wind_between_levels_by_method_wind_from_deg",
    "wind_between_levels_by_method_wind_speed_kt",
    "wind_between_levels_wind_from_deg",
    "wind_between_levels_wind_speed_kt",
    "wind_components_crosswind_kt",
    "wind_components_headwind_kt",
    "wind_correction_deg",
    "wind_from_components_wind_from_deg",
    "wind_from_components_wind_speed_kt",
    "wind_from_track_wind_from_deg",
    "wind_from_track_wind_speed_kt",
    "wind_triangle_groundspeed_kt",
    "wind_triangle_heading_deg",
]

radial_tolerance_deg: np.ufunc
radial_error_aggregate_deg: np.ufunc
radial_error_system_use_deg: np.ufunc
dme_tolerance_nm: np.ufunc
receiver_check_limit_deg: np.ufunc
dme_dme_tolerances_along_track_nm: np.ufunc
dme_dme_tolerances_across_track_nm: np.ufunc
dme_dme_tolerances_half_width_nm: np.ufunc
standard_atmosphere_temperature_degc: np.ufunc
standard_atmosphere_pressure_hpa: np.ufunc
standard_atmosphere_density_kg_per_m3: np.ufunc
standard_atmosphere_speed_of_sound_kt: np.ufunc
pressure_ratio: np.ufunc
density_ratio: np.ufunc
temperature_ratio: np.ufunc
isa_deviation_k: np.ufunc
speed_of_sound_kt: np.ufunc
pressure_altitude_from_pressure_ft: np.ufunc
geopotential_altitude_ft: np.ufunc
geometric_altitude_ft: np.ufunc
tas_from_cas_kt: np.ufunc
cas_from_tas_kt: np.ufunc
indicated_altitude_ft: np.ufunc
pressure_altitude_ft: np.ufunc
pressure_altitude_rule_ft: np.ufunc
altimeter_setting_hpa: np.ufunc
altimeter_setting_smithsonian_hpa: np.ufunc
station_pressure_hpa: np.ufunc
arc_entry_radial_at_roll_in_deg: np.ufunc
arc_entry_distance_at_roll_in_nm: np.ufunc
arc_entry_radial_at_roll_out_deg: np.ufunc
arc_entry_distance_at_roll_out_nm: np.ufunc
arc_entry_angle_at_station_deg: np.ufunc
arc_entry_heading_change_deg: np.ufunc
arc_entry_duration_s: np.ufunc
arc_exit_radial_at_roll_in_deg: np.ufunc
arc_exit_distance_at_roll_in_nm: np.ufunc
arc_exit_radial_at_roll_out_deg: np.ufunc
arc_exit_distance_at_roll_out_nm: np.ufunc
arc_exit_angle_at_station_deg: np.ufunc
arc_exit_heading_change_deg: np.ufunc
arc_exit_duration_s: np.ufunc
design_base_turn_offset_deg: np.ufunc
base_turn_offset_exact_deg: np.ufunc
base_turn_track_deg: np.ufunc
base_turn_heading_deg: np.ufunc
base_turn_offset_deg: np.ufunc
base_turn_outbound_time_s: np.ufunc
base_turn_heading_change_deg: np.ufunc
base_turn_established_nm: np.ufunc
base_turn_duration_s: np.ufunc
base_turn_on_track_track_deg: np.ufunc
base_turn_on_track_heading_deg: np.ufunc
base_turn_on_track_offset_deg: np.ufunc
base_turn_on_track_outbound_time_s: np.ufunc
base_turn_on_track_heading_change_deg: np.ufunc
base_turn_on_track_established_nm: np.ufunc
base_turn_on_track_duration_s: np.ufunc
course_arc_crossing_latitude1_deg: np.ufunc
course_arc_crossing_longitude1_deg: np.ufunc
course_arc_crossing_along1_nm: np.ufunc
course_arc_crossing_latitude2_deg: np.ufunc
course_arc_crossing_longitude2_deg: np.ufunc
course_arc_crossing_along2_nm: np.ufunc
arc_arc_crossing_latitude1_deg: np.ufunc
arc_arc_crossing_longitude1_deg: np.ufunc
arc_arc_crossing_latitude2_deg: np.ufunc
arc_arc_crossing_longitude2_deg: np.ufunc
arc_tangents_latitude1_deg: np.ufunc
arc_tangents_longitude1_deg: np.ufunc
arc_tangents_course1_deg: np.ufunc
arc_tangents_latitude2_deg: np.ufunc
arc_tangents_longitude2_deg: np.ufunc
arc_tangents_course2_deg: np.ufunc
arc_length_nm: np.ufunc
on_arc: np.ufunc
arc_extent_latitude1_deg: np.ufunc
arc_extent_longitude1_deg: np.ufunc
arc_extent_abeam1_latitude_deg: np.ufunc
arc_extent_abeam1_longitude_deg: np.ufunc
arc_extent_latitude2_deg: np.ufunc
arc_extent_longitude2_deg: np.ufunc
arc_extent_abeam2_latitude_deg: np.ufunc
arc_extent_abeam2_longitude_deg: np.ufunc
cold_temperature_correction_ft: np.ufunc
cold_temperature_correction_tabulated_ft: np.ufunc
cold_temperature_correction_rule_ft: np.ufunc
cold_temperature_correction_exact_ft: np.ufunc
cross_track_cross_track_nm: np.ufunc
cross_track_along_track_nm: np.ufunc
cross_track_abeam_latitude_deg: np.ufunc
cross_track_abeam_longitude_deg: np.ufunc
cross_track_abeam_course_deg: np.ufunc
course_crossing_latitude_deg: np.ufunc
course_crossing_longitude_deg: np.ufunc
course_crossing_along_first_nm: np.ufunc
course_crossing_along_second_nm: np.ufunc
course_crossing_first_course_deg: np.ufunc
course_crossing_second_course_deg: np.ufunc
on_course: np.ufunc
on_leg: np.ufunc
crossover_altitude_ft: np.ufunc
density_altitude_ft: np.ufunc
density_altitude_rule_ft: np.ufunc
arc_heading_track_deg: np.ufunc
arc_heading_heading_deg: np.ufunc
arc_heading_groundspeed_kt: np.ufunc
arc_heading_wind_correction_deg: np.ufunc
arc_heading_station_off_nose_deg: np.ufunc
arc_heading_ahead_of_wing_tip_deg: np.ufunc
arc_heading_bank_deg: np.ufunc
arc_flown_angle_deg: np.ufunc
arc_flown_distance_nm: np.ufunc
arc_flown_time_s: np.ufunc
arc_chords_legs: np.ufunc
arc_chords_angle_deg: np.ufunc
arc_chords_length_nm: np.ufunc
arc_chords_distance_at_ends_nm: np.ufunc
arc_chords_distance_at_middle_nm: np.ufunc
arc_chord_leg_from_radial_deg: np.ufunc
arc_chord_leg_to_radial_deg: np.ufunc
arc_chord_leg_course_deg: np.ufunc
arc_chord_leg_heading_deg: np.ufunc
arc_chord_leg_groundspeed_kt: np.ufunc
arc_chord_leg_time_s: np.ufunc
arc_regained_track_deg: np.ufunc
arc_regained_heading_deg: np.ufunc
arc_regained_distance_nm: np.ufunc
arc_regained_time_s: np.ufunc
arc_regained_radial_deg: np.ufunc
arc_regained_angle_deg: np.ufunc
arc_least_correction_deg: np.ufunc
rule_arc_correction_deg: np.ufunc
geodesic_inverse_distance_nm: np.ufunc
geodesic_inverse_initial_bearing_deg: np.ufunc
geodesic_inverse_final_bearing_deg: np.ufunc
slant_range_nm: np.ufunc
geodesic_direct_latitude_deg: np.ufunc
geodesic_direct_longitude_deg: np.ufunc
geodesic_direct_final_bearing_deg: np.ufunc
ground_distance_nm: np.ufunc
least_dme_nm: np.ufunc
great_circle_inverse_distance_nm: np.ufunc
great_circle_inverse_initial_bearing_deg: np.ufunc
great_circle_inverse_final_bearing_deg: np.ufunc
great_circle_direct_latitude_deg: np.ufunc
great_circle_direct_longitude_deg: np.ufunc
great_circle_direct_final_bearing_deg: np.ufunc
straight_line_slant_range_nm: np.ufunc
straight_line_elevation_angle_deg: np.ufunc
eas_from_tas_kt: np.ufunc
tas_from_eas_kt: np.ufunc
eas_from_cas_kt: np.ufunc
cas_from_eas_kt: np.ufunc
eas_from_mach_kt: np.ufunc
mach_from_eas: np.ufunc
radial_error_across_nm: np.ufunc
dme_error_along_nm: np.ufunc
fix_of_two_radials_semi_major_nm: np.ufunc
fix_of_two_radials_semi_minor_nm: np.ufunc
fix_of_two_radials_major_axis_deg: np.ufunc
fix_of_two_radials_north_nm: np.ufunc
fix_of_two_radials_east_nm: np.ufunc
fix_of_two_radials_correlation: np.ufunc
fix_of_two_radials_along_track_nm: np.ufunc
fix_of_two_radials_across_track_nm: np.ufunc
fix_of_two_radials_root_mean_square_nm: np.ufunc
fix_of_radial_and_dme_semi_major_nm: np.ufunc
fix_of_radial_and_dme_semi_minor_nm: np.ufunc
fix_of_radial_and_dme_major_axis_deg: np.ufunc
fix_of_radial_and_dme_north_nm: np.ufunc
fix_of_radial_and_dme_east_nm: np.ufunc
fix_of_radial_and_dme_correlation: np.ufunc
fix_of_radial_and_dme_along_track_nm: np.ufunc
fix_of_radial_and_dme_across_track_nm: np.ufunc
fix_of_radial_and_dme_root_mean_square_nm: np.ufunc
fix_of_two_dme_semi_major_nm: np.ufunc
fix_of_two_dme_semi_minor_nm: np.ufunc
fix_of_two_dme_major_axis_deg: np.ufunc
fix_of_two_dme_north_nm: np.ufunc
fix_of_two_dme_east_nm: np.ufunc
fix_of_two_dme_correlation: np.ufunc
fix_of_two_dme_along_track_nm: np.ufunc
fix_of_two_dme_across_track_nm: np.ufunc
fix_of_two_dme_root_mean_square_nm: np.ufunc
ellipse_factor: np.ufunc
grid_from_true_deg: np.ufunc
true_from_grid_deg: np.ufunc
polar_grid_convergence_deg: np.ufunc
lambert_grid_convergence_deg: np.ufunc
transverse_grid_convergence_deg: np.ufunc
utm_meridian_deg: np.ufunc
holding_entry_entry: np.ufunc
holding_entry_also: np.ufunc
holding_entry_to_outbound_deg: np.ufunc
holding_entry_to_boundary_deg: np.ufunc
holding_entry_first_course_deg: np.ufunc
holding_timing_timed: np.ufunc
holding_timing_time_s: np.ufunc
holding_speed_indicated_kt: np.ufunc
holding_speed_mach: np.ufunc
holding_speed_calibrated_kt: np.ufunc
holding_turn_bank_deg: np.ufunc
holding_turn_turn_rate_deg_per_s: np.ufunc
holding_turn_radius_nm: np.ufunc
holding_turn_governed_by: np.ufunc
outbound_end_dme_nm: np.ufunc
limiting_dme_limiting_dme_nm: np.ufunc
limiting_dme_rounded_nm: np.ufunc
intercept_track_deg: np.ufunc
intercept_heading_deg: np.ufunc
intercept_groundspeed_kt: np.ufunc
intercept_distance_nm: np.ufunc
intercept_time_s: np.ufunc
intercept_along_nm: np.ufunc
intercept_lead_nm: np.ufunc
intercept_distance_to_roll_in_nm: np.ufunc
intercept_time_to_roll_in_s: np.ufunc
intercept_cross_track_at_roll_in_nm: np.ufunc
radial_intercept_heading_deg: np.ufunc
radial_intercept_groundspeed_kt: np.ufunc
radial_intercept_crossing_distance_nm: np.ufunc
radial_intercept_distance_to_crossing_nm: np.ufunc
radial_intercept_lead_nm: np.ufunc
radial_intercept_time_to_roll_in_s: np.ufunc
radial_intercept_radial_at_roll_in_deg: np.ufunc
radial_intercept_distance_at_roll_in_nm: np.ufunc
radial_intercept_needle_at_roll_in_deg: np.ufunc
radial_intercept_cross_track_at_roll_in_nm: np.ufunc
radial_intercept_distance_at_roll_out_nm: np.ufunc
radial_intercept_turn_duration_s: np.ufunc
double_angle_intercept_track_deg: np.ufunc
double_angle_intercept_heading_deg: np.ufunc
double_angle_intercept_distance_nm: np.ufunc
double_angle_intercept_time_s: np.ufunc
double_angle_intercept_time_to_station_s: np.ufunc
rule_intercept_angle_deg: np.ufunc
rule_intercept_lead_deg: np.ufunc
lead_nm: np.ufunc
dme_at_roll_in_nm: np.ufunc
turn_anticipation_nm: np.ufunc
arc_entry_inbound_nm: np.ufunc
arc_entry_outbound_nm: np.ufunc
lead_radial_inbound_deg: np.ufunc
lead_radial_outbound_deg: np.ufunc
leg_meaning_path: np.ufunc
leg_meaning_end: np.ufunc
mach_from_cas: np.ufunc
cas_from_mach_kt: np.ufunc
tas_from_mach_kt: np.ufunc
mach_from_tas: np.ufunc
magnetic_field_declination_deg: np.ufunc
magnetic_field_inclination_deg: np.ufunc
magnetic_field_horizontal_nt: np.ufunc
magnetic_field_north_nt: np.ufunc
magnetic_field_east_nt: np.ufunc
magnetic_field_down_nt: np.ufunc
magnetic_field_total_nt: np.ufunc
magnetic_field_declination_change_deg: np.ufunc
magnetic_field_inclination_change_deg: np.ufunc
magnetic_field_horizontal_change_nt: np.ufunc
magnetic_field_north_change_nt: np.ufunc
magnetic_field_east_change_nt: np.ufunc
magnetic_field_down_change_nt: np.ufunc
magnetic_field_total_change_nt: np.ufunc
magnetic_field_declination_uncertainty_deg: np.ufunc
magnetic_field_grid_variation_deg: np.ufunc
magnetic_field_zone: np.ufunc
magnetic_field_in_date: np.ufunc
variation_deg: np.ufunc
decimal_year: np.ufunc
magnetic_from_true_deg: np.ufunc
true_from_magnetic_deg: np.ufunc
station_misalignment_deg: np.ufunc
radial_from_true_deg: np.ufunc
true_from_radial_deg: np.ufunc
offset_point_latitude_deg: np.ufunc
offset_point_longitude_deg: np.ufunc
offset_point_direction_deg: np.ufunc
offset_cross_track_cross_track_nm: np.ufunc
offset_cross_track_along_track_nm: np.ufunc
offset_cross_track_abeam_latitude_deg: np.ufunc
offset_cross_track_abeam_longitude_deg: np.ufunc
offset_cross_track_abeam_direction_deg: np.ufunc
on_offset: np.ufunc
offset_course_crossing_latitude_deg: np.ufunc
offset_course_crossing_longitude_deg: np.ufunc
offset_course_crossing_along_first_nm: np.ufunc
offset_offset_crossing_latitude_deg: np.ufunc
offset_offset_crossing_longitude_deg: np.ufunc
offset_offset_crossing_along_first_nm: np.ufunc
offset_offset_crossing_along_second_nm: np.ufunc
offset_arc_crossing_latitude1_deg: np.ufunc
offset_arc_crossing_longitude1_deg: np.ufunc
offset_arc_crossing_along1_nm: np.ufunc
offset_arc_crossing_latitude2_deg: np.ufunc
offset_arc_crossing_longitude2_deg: np.ufunc
offset_arc_crossing_along2_nm: np.ufunc
isentropic_pressure_ratio: np.ufunc
pitot_pressure_ratio: np.ufunc
impact_pressure_hpa: np.ufunc
cas_from_impact_pressure_kt: np.ufunc
procedure_tas_factor: np.ufunc
procedure_turn_45_180_off_track_deg: np.ufunc
procedure_turn_45_180_off_heading_deg: np.ufunc
procedure_turn_45_180_back_heading_deg: np.ufunc
procedure_turn_45_180_straight_nm: np.ufunc
procedure_turn_45_180_least_off_time_s: np.ufunc
procedure_turn_45_180_established_nm: np.ufunc
procedure_turn_45_180_farthest_nm: np.ufunc
procedure_turn_45_180_widest_nm: np.ufunc
procedure_turn_45_180_duration_s: np.ufunc
procedure_turn_80_260_off_heading_deg: np.ufunc
procedure_turn_80_260_across_nm: np.ufunc
procedure_turn_80_260_established_nm: np.ufunc
procedure_turn_80_260_farthest_nm: np.ufunc
procedure_turn_80_260_widest_nm: np.ufunc
procedure_turn_80_260_duration_s: np.ufunc
procedure_turn_80_260_exact_angle_deg: np.ufunc
cold_temperature_correction_by_method_ft: np.ufunc
procedure_tas_factor_by_method: np.ufunc
standard_atmosphere_by_edition_temperature_degc: np.ufunc
standard_atmosphere_by_edition_pressure_hpa: np.ufunc
standard_atmosphere_by_edition_density_kg_per_m3: np.ufunc
standard_atmosphere_by_edition_speed_of_sound_kt: np.ufunc
published_turn_turn_rate_deg_per_s: np.ufunc
published_turn_radius_nm: np.ufunc
holding_pattern_outbound_heading_deg: np.ufunc
holding_pattern_outbound_correction_deg: np.ufunc
holding_pattern_inbound_correction_deg: np.ufunc
holding_pattern_drift_factor: np.ufunc
holding_pattern_outbound_time_s: np.ufunc
holding_pattern_outbound_clock_s: np.ufunc
holding_pattern_inbound_time_s: np.ufunc
holding_pattern_duration_s: np.ufunc
holding_pattern_outbound_end_before_fix_nm: np.ufunc
holding_pattern_outbound_end_across_nm: np.ufunc
holding_pattern_inbound_leg_nm: np.ufunc
holding_pattern_length_nm: np.ufunc
holding_pattern_width_nm: np.ufunc
holding_pattern_bank_deg: np.ufunc
holding_pattern_at_bearing_from_fix_deg: np.ufunc
holding_pattern_at_distance_nm: np.ufunc
holding_pattern_at_heading_deg: np.ufunc
holding_pattern_at_bank_deg: np.ufunc
radio_horizon_nm: np.ufunc
least_reception_height_ft: np.ufunc
service_reach_nm: np.ufunc
vor_needle_deviation_deg: np.ufunc
vor_needle_deflection: np.ufunc
vor_needle_to_from: np.ufunc
vor_receiver_flag: np.ufunc
vor_receiver_to_from: np.ufunc
vor_receiver_deviation_deg: np.ufunc
vor_receiver_deflection: np.ufunc
vor_receiver_radial_deg: np.ufunc
vor_receiver_dme_nm: np.ufunc
displayed_dme_nm: np.ufunc
cross_track_of_deflection_nm: np.ufunc
deflection_of_cross_track_deviation_deg: np.ufunc
deflection_of_cross_track_deflection: np.ufunc
needle_motion_needle_rate_deg_per_s: np.ufunc
needle_motion_full_scale_time_s: np.ufunc
rhumb_inverse_distance_nm: np.ufunc
rhumb_inverse_course_deg: np.ufunc
rhumb_direct_latitude_deg: np.ufunc
rhumb_direct_longitude_deg: np.ufunc
rhumb_excess_excess_nm: np.ufunc
rhumb_excess_conversion_angle_deg: np.ufunc
splay_distance_nm: np.ufunc
route_half_width_nm: np.ufunc
rule_density_altitude_error_rule_ft: np.ufunc
rule_density_altitude_error_exact_ft: np.ufunc
rule_density_altitude_error_error_ft: np.ufunc
rule_density_altitude_error_standard_ft: np.ufunc
rule_density_altitude_error_slope_ft: np.ufunc
rule_density_altitude_error_curve_ft: np.ufunc
rule_pressure_altitude_error_rule_ft: np.ufunc
rule_pressure_altitude_error_exact_ft: np.ufunc
rule_pressure_altitude_error_error_ft: np.ufunc
rule_pressure_altitude_error_datum_ft: np.ufunc
rule_pressure_altitude_error_slope_ft: np.ufunc
rule_pressure_altitude_error_curve_ft: np.ufunc
rule_cold_temperature_error_rule_ft: np.ufunc
rule_cold_temperature_error_exact_ft: np.ufunc
rule_cold_temperature_error_error_ft: np.ufunc
rule_cold_temperature_error_share_ft: np.ufunc
rule_cold_temperature_error_column_ft: np.ufunc
rule_arc_entry_lead_nm: np.ufunc
rule_arc_entry_lead_error_rule_nm: np.ufunc
rule_arc_entry_lead_error_exact_nm: np.ufunc
rule_arc_entry_lead_error_error_nm: np.ufunc
rule_arc_entry_lead_error_radius_nm: np.ufunc
rule_arc_entry_lead_error_curve_nm: np.ufunc
rule_radials_per_mile_error_rule: np.ufunc
rule_radials_per_mile_error_exact: np.ufunc
rule_radials_per_mile_error_error: np.ufunc
rule_arc_correction_error_rule_deg: np.ufunc
rule_arc_correction_error_exact_deg: np.ufunc
rule_arc_correction_error_error_deg: np.ufunc
rule_intercept_angle_error_rule_deg: np.ufunc
rule_intercept_angle_error_exact_deg: np.ufunc
rule_intercept_angle_error_error_deg: np.ufunc
rule_intercept_angle_error_limits_deg: np.ufunc
rule_intercept_angle_error_doubling_deg: np.ufunc
rule_intercept_lead_error_rule_deg: np.ufunc
rule_intercept_lead_error_exact_deg: np.ufunc
rule_intercept_lead_error_error_deg: np.ufunc
rule_intercept_lead_error_sixty_deg: np.ufunc
rule_intercept_lead_error_share_deg: np.ufunc
rule_intercept_lead_error_arc_deg: np.ufunc
rule_least_dme_error_rule_nm: np.ufunc
rule_least_dme_error_exact_nm: np.ufunc
rule_least_dme_error_error_nm: np.ufunc
rule_cone_radius_error_rule_nm: np.ufunc
rule_cone_radius_error_exact_nm: np.ufunc
rule_cone_radius_error_error_nm: np.ufunc
rule_cone_radius_error_mile_nm: np.ufunc
rule_cone_radius_error_angle_nm: np.ufunc
rule_bank_error_rule_deg: np.ufunc
rule_bank_error_exact_deg: np.ufunc
rule_bank_error_error_deg: np.ufunc
rule_turn_radius_error_rule_nm: np.ufunc
rule_turn_radius_error_exact_nm: np.ufunc
rule_turn_radius_error_error_nm: np.ufunc
rule_off_course_error_rule_nm: np.ufunc
rule_off_course_error_exact_nm: np.ufunc
rule_off_course_error_error_nm: np.ufunc
rule_off_course_error_dot_nm: np.ufunc
rule_off_course_error_sine_nm: np.ufunc
rule_lead_radials_error_rule_deg: np.ufunc
rule_lead_radials_error_exact_deg: np.ufunc
rule_lead_radials_error_error_deg: np.ufunc
rule_lead_radials_error_sixty_deg: np.ufunc
rule_lead_radials_error_correction_deg: np.ufunc
rule_lead_radials_error_geometry_deg: np.ufunc
rule_time_to_station_error_rule_s: np.ufunc
rule_time_to_station_error_exact_s: np.ufunc
rule_time_to_station_error_error_s: np.ufunc
rule_time_to_station_error_sixty_s: np.ufunc
rule_time_to_station_error_sine_s: np.ufunc
rule_outbound_correction_error_rule_deg: np.ufunc
rule_outbound_correction_error_exact_deg: np.ufunc
rule_outbound_correction_error_error_deg: np.ufunc
rule_outbound_time_by_headwind_error_rule_s: np.ufunc
rule_outbound_time_by_headwind_error_exact_s: np.ufunc
rule_outbound_time_by_headwind_error_error_s: np.ufunc
rule_outbound_time_by_headwind_error_knot_s: np.ufunc
rule_outbound_time_by_headwind_error_turns_s: np.ufunc
rule_outbound_time_error_rule_s: np.ufunc
rule_outbound_time_error_exact_s: np.ufunc
rule_outbound_time_error_error_s: np.ufunc
rule_outbound_time_error_groundspeed_s: np.ufunc
rule_outbound_time_error_heading_s: np.ufunc
rule_lead_error_rule_lead_nm: np.ufunc
rule_lead_error_exact_lead_nm: np.ufunc
rule_lead_error_lead_error_nm: np.ufunc
rule_lead_error_rule_reading_nm: np.ufunc
rule_lead_error_exact_reading_nm: np.ufunc
rule_lead_error_reading_error_nm: np.ufunc
rule_lead_error_allowance_nm: np.ufunc
rule_lead_error_round_radius_nm: np.ufunc
rule_lead_error_proportion_nm: np.ufunc
rule_lead_error_standard_rate_nm: np.ufunc
rule_lead_error_groundspeed_nm: np.ufunc
rule_lead_error_heading_change_nm: np.ufunc
rule_lead_error_drift_nm: np.ufunc
rule_lead_error_roll_nm: np.ufunc
rule_lead_error_mile_nm: np.ufunc
rule_lead_error_sum_nm: np.ufunc
rule_lead_flown_reading_nm: np.ufunc
rule_lead_flown_before_station_nm: np.ufunc
rule_lead_flown_overshoot_nm: np.ufunc
rule_lead_flown_past_station_nm: np.ufunc
rule_lead_flown_began_in_cone: np.ufunc
rule_lead_flown_ended_in_cone: np.ufunc
rule_lead_flown_verdict: np.ufunc
rule_holds_at_height_ft: np.ufunc
rule_outbound_heading_deg: np.ufunc
rule_outbound_time_s: np.ufunc
rule_outbound_time_by_headwind_s: np.ufunc
rule_slant_negligible_from_nm: np.ufunc
rule_ground_distance_error_rule_nm: np.ufunc
rule_ground_distance_error_exact_nm: np.ufunc
rule_ground_distance_error_error_nm: np.ufunc
rule_ground_distance_error_triangle_nm: np.ufunc
rule_ground_distance_error_curve_nm: np.ufunc
rule_radio_horizon_error_rule_nm: np.ufunc
rule_radio_horizon_error_exact_nm: np.ufunc
rule_radio_horizon_error_error_nm: np.ufunc
rule_radio_horizon_error_factor_nm: np.ufunc
rule_radio_horizon_error_root_nm: np.ufunc
rule_roll_out_lead_deg: np.ufunc
rule_roll_out_lead_error_rule_deg: np.ufunc
rule_roll_out_lead_error_exact_deg: np.ufunc
rule_roll_out_lead_error_error_deg: np.ufunc
rule_roll_out_lead_error_share_deg: np.ufunc
rule_roll_out_lead_error_tangent_deg: np.ufunc
rule_lead_nm: np.ufunc
rule_reading_nm: np.ufunc
rule_least_dme_nm: np.ufunc
rule_cone_radius_nm: np.ufunc
rule_bank_deg: np.ufunc
rule_turn_radius_nm: np.ufunc
rule_radials_per_mile: np.ufunc
rule_lead_radials_deg: np.ufunc
rule_off_course_nm: np.ufunc
observe_radial_deg: np.ufunc
observe_dme_nm: np.ufunc
observe_ground_distance_nm: np.ufunc
observe_elevation_angle_deg: np.ufunc
cone_radius_nm: np.ufunc
successive_turns_past_first_nm: np.ufunc
successive_turns_before_second_nm: np.ufunc
successive_turns_spare_nm: np.ufunc
successive_turns_straight_time_s: np.ufunc
successive_turns_largest_true_airspeed_kt: np.ufunc
successive_turns_largest_groundspeed_kt: np.ufunc
successive_turns_bank_needed_deg: np.ufunc
successive_turns_crossing_past_first_nm: np.ufunc
successive_turns_crossing_before_second_nm: np.ufunc
successive_turns_crossing_lead_nm: np.ufunc
stabilization_distance_nm: np.ufunc
tangent_turn_center_latitude_deg: np.ufunc
tangent_turn_center_longitude_deg: np.ufunc
tangent_turn_begin_latitude_deg: np.ufunc
tangent_turn_begin_longitude_deg: np.ufunc
tangent_turn_end_latitude_deg: np.ufunc
tangent_turn_end_longitude_deg: np.ufunc
tangent_turn_begin_bearing_deg: np.ufunc
tangent_turn_end_bearing_deg: np.ufunc
tangent_turn_length_nm: np.ufunc
tangent_turn_side: np.ufunc
tangent_turn_between_legs_center_latitude_deg: np.ufunc
tangent_turn_between_legs_center_longitude_deg: np.ufunc
tangent_turn_between_legs_begin_latitude_deg: np.ufunc
tangent_turn_between_legs_begin_longitude_deg: np.ufunc
tangent_turn_between_legs_end_latitude_deg: np.ufunc
tangent_turn_between_legs_end_longitude_deg: np.ufunc
tangent_turn_between_legs_begin_bearing_deg: np.ufunc
tangent_turn_between_legs_end_bearing_deg: np.ufunc
tangent_turn_between_legs_length_nm: np.ufunc
tangent_turn_between_legs_side: np.ufunc
offset_tangent_turn_center_latitude_deg: np.ufunc
offset_tangent_turn_center_longitude_deg: np.ufunc
offset_tangent_turn_begin_latitude_deg: np.ufunc
offset_tangent_turn_begin_longitude_deg: np.ufunc
offset_tangent_turn_end_latitude_deg: np.ufunc
offset_tangent_turn_end_longitude_deg: np.ufunc
offset_tangent_turn_begin_bearing_deg: np.ufunc
offset_tangent_turn_end_bearing_deg: np.ufunc
offset_tangent_turn_length_nm: np.ufunc
offset_tangent_turn_side: np.ufunc
time_to_fly_s: np.ufunc
distance_flown_nm: np.ufunc
groundspeed_from_time_kt: np.ufunc
time_between_fixes_s: np.ufunc
station_by_bearing_change_distance_nm: np.ufunc
station_by_bearing_change_time_s: np.ufunc
station_by_bearing_change_distance_before_nm: np.ufunc
time_to_station_rule_s: np.ufunc
total_temperature_degc: np.ufunc
static_temperature_degc: np.ufunc
transition_level_ft: np.ufunc
true_altitude_ft: np.ufunc
height_above_station_ft: np.ufunc
pressure_altitude_at_true_altitude_ft: np.ufunc
turn_radius_nm: np.ufunc
turn_rate_deg_per_s: np.ufunc
bank_for_rate_deg: np.ufunc
bank_for_radius_deg: np.ufunc
radius_at_rate_nm: np.ufunc
load_factor: np.ufunc
bank_for_load_factor_deg: np.ufunc
limited_turn_bank_deg: np.ufunc
limited_turn_turn_rate_deg_per_s: np.ufunc
limited_turn_radius_nm: np.ufunc
limited_turn_governed_by: np.ufunc
rolled_turn_bank_deg: np.ufunc
rolled_turn_duration_s: np.ufunc
rolled_turn_roll_duration_s: np.ufunc
rolled_turn_advance_nm: np.ufunc
rolled_turn_transfer_nm: np.ufunc
rolled_turn_governed_by: np.ufunc
icao_wind_kt: np.ufunc
turn_wind_effect_nm: np.ufunc
base_turn_template_leg_nm: np.ufunc
base_turn_template_nearest_nm: np.ufunc
base_turn_template_farthest_nm: np.ufunc
base_turn_sector_nm: np.ufunc
wind_triangle_heading_deg: np.ufunc
wind_triangle_groundspeed_kt: np.ufunc
wind_correction_deg: np.ufunc
track_and_groundspeed_track_deg: np.ufunc
track_and_groundspeed_groundspeed_kt: np.ufunc
track_and_groundspeed_drift_deg: np.ufunc
wind_from_track_wind_from_deg: np.ufunc
wind_from_track_wind_speed_kt: np.ufunc
wind_components_headwind_kt: np.ufunc
wind_components_crosswind_kt: np.ufunc
wind_from_components_wind_from_deg: np.ufunc
wind_from_components_wind_speed_kt: np.ufunc
airspeed_for_groundspeed_heading_deg: np.ufunc
airspeed_for_groundspeed_true_airspeed_kt: np.ufunc
wind_between_levels_wind_from_deg: np.ufunc
wind_between_levels_wind_speed_kt: np.ufunc
wind_between_levels_by_method_wind_from_deg: np.ufunc
wind_between_levels_by_method_wind_speed_kt: np.ufunc

def some(function: str, *outputs: str) -> np.ufunc: ...
