// Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate

//! Every plain function as data, for what treats them alike: the bindings and the tests.

use super::block::{columns, each, wanted};
use super::function::one;
pub use super::function::{Block, Function};
use crate::Error;

/// Every plain function, in the order of `docs/functions.md`.
pub const FUNCTIONS: &[Function] = &[
    Function {
        name: "radial_tolerance_deg",
        inputs: &["accuracy"],
        outputs: &["radial_tolerance_deg"],
        run: |inputs, outputs| one(inputs, outputs, radial_tolerance_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, radial_tolerance_deg),
    },
    Function {
        name: "radial_error",
        inputs: &["ground_deg", "receiver_deg", "flight_technical_deg", "monitor_deg"],
        outputs: &["aggregate_deg", "system_use_deg"],
        run: |inputs, outputs| one(inputs, outputs, radial_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, radial_error),
    },
    Function {
        name: "dme_tolerance_nm",
        inputs: &["dme_nm", "accuracy"],
        outputs: &["dme_tolerance_nm"],
        run: |inputs, outputs| one(inputs, outputs, dme_tolerance_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, dme_tolerance_nm),
    },
    Function {
        name: "receiver_check_limit_deg",
        inputs: &["check"],
        outputs: &["receiver_check_limit_deg"],
        run: |inputs, outputs| one(inputs, outputs, receiver_check_limit_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, receiver_check_limit_deg),
    },
    Function {
        name: "dme_dme_tolerances",
        inputs: &["dme_tolerance_nm", "flight_technical_nm", "buffer_nm", "coverage", "system_nm"],
        outputs: &["along_track_nm", "across_track_nm", "half_width_nm"],
        run: |inputs, outputs| one(inputs, outputs, dme_dme_tolerances),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, dme_dme_tolerances),
    },
    Function {
        name: "standard_atmosphere",
        inputs: &["pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["temperature_degc", "pressure_hpa", "density_kg_per_m3", "speed_of_sound_kt"],
        run: |inputs, outputs| one(inputs, outputs, standard_atmosphere),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::air::standard_atmosphere_block, standard_atmosphere),
    },
    Function {
        name: "pressure_ratio",
        inputs: &["pressure_altitude_ft"],
        outputs: &["pressure_ratio"],
        run: |inputs, outputs| one(inputs, outputs, pressure_ratio),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, pressure_ratio),
    },
    Function {
        name: "density_ratio",
        inputs: &["pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["density_ratio"],
        run: |inputs, outputs| one(inputs, outputs, density_ratio),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, density_ratio),
    },
    Function {
        name: "temperature_ratio",
        inputs: &["pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["temperature_ratio"],
        run: |inputs, outputs| one(inputs, outputs, temperature_ratio),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, temperature_ratio),
    },
    Function {
        name: "isa_deviation_k",
        inputs: &["temperature_degc", "pressure_altitude_ft"],
        outputs: &["isa_deviation_k"],
        run: |inputs, outputs| one(inputs, outputs, isa_deviation_k),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, isa_deviation_k),
    },
    Function {
        name: "speed_of_sound_kt",
        inputs: &["temperature_degc"],
        outputs: &["speed_of_sound_kt"],
        run: |inputs, outputs| one(inputs, outputs, speed_of_sound_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, speed_of_sound_kt),
    },
    Function {
        name: "pressure_altitude_from_pressure_ft",
        inputs: &["pressure_hpa"],
        outputs: &["pressure_altitude_from_pressure_ft"],
        run: |inputs, outputs| one(inputs, outputs, pressure_altitude_from_pressure_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, pressure_altitude_from_pressure_ft),
    },
    Function {
        name: "geopotential_altitude_ft",
        inputs: &["geometric_altitude_ft"],
        outputs: &["geopotential_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, geopotential_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, geopotential_altitude_ft),
    },
    Function {
        name: "geometric_altitude_ft",
        inputs: &["geopotential_altitude_ft"],
        outputs: &["geometric_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, geometric_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, geometric_altitude_ft),
    },
    Function {
        name: "tas_from_cas_kt",
        inputs: &["cas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["tas_from_cas_kt"],
        run: |inputs, outputs| one(inputs, outputs, tas_from_cas_kt),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::airspeed::tas_from_cas_kt_block, tas_from_cas_kt),
    },
    Function {
        name: "cas_from_tas_kt",
        inputs: &["tas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["cas_from_tas_kt"],
        run: |inputs, outputs| one(inputs, outputs, cas_from_tas_kt),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::airspeed::cas_from_tas_kt_block, cas_from_tas_kt),
    },
    Function {
        name: "indicated_altitude_ft",
        inputs: &["pressure_altitude_ft", "altimeter_setting_hpa"],
        outputs: &["indicated_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, indicated_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, indicated_altitude_ft),
    },
    Function {
        name: "pressure_altitude_ft",
        inputs: &["indicated_altitude_ft", "altimeter_setting_hpa"],
        outputs: &["pressure_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, pressure_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, pressure_altitude_ft),
    },
    Function {
        name: "pressure_altitude_rule_ft",
        inputs: &["indicated_altitude_ft", "altimeter_setting_hpa"],
        outputs: &["pressure_altitude_rule_ft"],
        run: |inputs, outputs| one(inputs, outputs, pressure_altitude_rule_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, pressure_altitude_rule_ft),
    },
    Function {
        name: "altimeter_setting_hpa",
        inputs: &["station_pressure_hpa", "elevation_ft"],
        outputs: &["altimeter_setting_hpa"],
        run: |inputs, outputs| one(inputs, outputs, altimeter_setting_hpa),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, altimeter_setting_hpa),
    },
    Function {
        name: "altimeter_setting_smithsonian_hpa",
        inputs: &["station_pressure_hpa", "elevation_ft"],
        outputs: &["altimeter_setting_smithsonian_hpa"],
        run: |inputs, outputs| one(inputs, outputs, altimeter_setting_smithsonian_hpa),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, altimeter_setting_smithsonian_hpa),
    },
    Function {
        name: "station_pressure_hpa",
        inputs: &["altimeter_setting_hpa", "elevation_ft"],
        outputs: &["station_pressure_hpa"],
        run: |inputs, outputs| one(inputs, outputs, station_pressure_hpa),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, station_pressure_hpa),
    },
    Function {
        name: "arc_entry",
        inputs: &["radial_deg", "flown", "arc_radius_nm", "sense", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"],
        run: |inputs, outputs| one(inputs, outputs, arc_entry),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_entry),
    },
    Function {
        name: "arc_exit",
        inputs: &["radial_deg", "flown", "arc_radius_nm", "sense", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["radial_at_roll_in_deg", "distance_at_roll_in_nm", "radial_at_roll_out_deg", "distance_at_roll_out_nm", "angle_at_station_deg", "heading_change_deg", "duration_s"],
        run: |inputs, outputs| one(inputs, outputs, arc_exit),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_exit),
    },
    Function {
        name: "design_base_turn_offset_deg",
        inputs: &["true_airspeed_kt", "outbound_time_s", "units"],
        outputs: &["design_base_turn_offset_deg"],
        run: |inputs, outputs| one(inputs, outputs, design_base_turn_offset_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, design_base_turn_offset_deg),
    },
    Function {
        name: "base_turn_offset_exact_deg",
        inputs: &["turn_radius_nm", "outbound_leg_nm"],
        outputs: &["base_turn_offset_exact_deg"],
        run: |inputs, outputs| one(inputs, outputs, base_turn_offset_exact_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, base_turn_offset_exact_deg),
    },
    Function {
        name: "base_turn",
        inputs: &["inbound_course_deg", "turn_side", "outbound_time_s", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["track_deg", "heading_deg", "offset_deg", "outbound_time_s", "heading_change_deg", "established_nm", "duration_s"],
        run: |inputs, outputs| one(inputs, outputs, base_turn),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, base_turn),
    },
    Function {
        name: "base_turn_on_track",
        inputs: &["inbound_course_deg", "outbound_track_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["track_deg", "heading_deg", "offset_deg", "outbound_time_s", "heading_change_deg", "established_nm", "duration_s"],
        run: |inputs, outputs| one(inputs, outputs, base_turn_on_track),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, base_turn_on_track),
    },
    Function {
        name: "course_arc_crossing",
        inputs: &["lat_deg", "lon_deg", "course_deg", "center_lat_deg", "center_lon_deg", "radius_nm"],
        outputs: &["latitude1_deg", "longitude1_deg", "along1_nm", "latitude2_deg", "longitude2_deg", "along2_nm"],
        run: |inputs, outputs| one(inputs, outputs, course_arc_crossing),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, course_arc_crossing),
    },
    Function {
        name: "arc_arc_crossing",
        inputs: &["center1_lat_deg", "center1_lon_deg", "radius1_nm", "center2_lat_deg", "center2_lon_deg", "radius2_nm"],
        outputs: &["latitude1_deg", "longitude1_deg", "latitude2_deg", "longitude2_deg"],
        run: |inputs, outputs| one(inputs, outputs, arc_arc_crossing),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_arc_crossing),
    },
    Function {
        name: "arc_tangents",
        inputs: &["point_lat_deg", "point_lon_deg", "center_lat_deg", "center_lon_deg", "radius_nm"],
        outputs: &["latitude1_deg", "longitude1_deg", "course1_deg", "latitude2_deg", "longitude2_deg", "course2_deg"],
        run: |inputs, outputs| one(inputs, outputs, arc_tangents),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_tangents),
    },
    Function {
        name: "arc_length_nm",
        inputs: &["center_lat_deg", "center_lon_deg", "radius_nm", "start_bearing_deg", "sweep_deg"],
        outputs: &["arc_length_nm"],
        run: |inputs, outputs| one(inputs, outputs, arc_length_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_length_nm),
    },
    Function {
        name: "on_arc",
        inputs: &["center_lat_deg", "center_lon_deg", "radius_nm", "start_bearing_deg", "end_bearing_deg", "sense", "point_lat_deg", "point_lon_deg", "tolerance_nm"],
        outputs: &["on_arc"],
        run: |inputs, outputs| one(inputs, outputs, on_arc),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, on_arc),
    },
    Function {
        name: "arc_extent",
        inputs: &["lat_deg", "lon_deg", "course_deg", "center_lat_deg", "center_lon_deg", "radius_nm"],
        outputs: &["latitude1_deg", "longitude1_deg", "abeam1_latitude_deg", "abeam1_longitude_deg", "latitude2_deg", "longitude2_deg", "abeam2_latitude_deg", "abeam2_longitude_deg"],
        run: |inputs, outputs| one(inputs, outputs, arc_extent),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_extent),
    },
    Function {
        name: "cold_temperature_correction_ft",
        inputs: &["height_ft", "temperature_degc", "elevation_ft"],
        outputs: &["cold_temperature_correction_ft"],
        run: |inputs, outputs| one(inputs, outputs, cold_temperature_correction_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cold_temperature_correction_ft),
    },
    Function {
        name: "cold_temperature_correction_tabulated_ft",
        inputs: &["height_ft", "temperature_degc"],
        outputs: &["cold_temperature_correction_tabulated_ft"],
        run: |inputs, outputs| one(inputs, outputs, cold_temperature_correction_tabulated_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cold_temperature_correction_tabulated_ft),
    },
    Function {
        name: "cold_temperature_correction_rule_ft",
        inputs: &["height_ft", "temperature_degc", "elevation_ft"],
        outputs: &["cold_temperature_correction_rule_ft"],
        run: |inputs, outputs| one(inputs, outputs, cold_temperature_correction_rule_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cold_temperature_correction_rule_ft),
    },
    Function {
        name: "cold_temperature_correction_exact_ft",
        inputs: &["height_ft", "temperature_degc", "elevation_ft"],
        outputs: &["cold_temperature_correction_exact_ft"],
        run: |inputs, outputs| one(inputs, outputs, cold_temperature_correction_exact_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cold_temperature_correction_exact_ft),
    },
    Function {
        name: "cross_track",
        inputs: &["lat_deg", "lon_deg", "course_deg", "point_lat_deg", "point_lon_deg"],
        outputs: &["cross_track_nm", "along_track_nm", "abeam_latitude_deg", "abeam_longitude_deg", "abeam_course_deg"],
        run: |inputs, outputs| one(inputs, outputs, cross_track),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cross_track),
    },
    Function {
        name: "course_crossing",
        inputs: &["lat1_deg", "lon1_deg", "course1_deg", "lat2_deg", "lon2_deg", "course2_deg"],
        outputs: &["latitude_deg", "longitude_deg", "along_first_nm", "along_second_nm", "first_course_deg", "second_course_deg"],
        run: |inputs, outputs| one(inputs, outputs, course_crossing),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, course_crossing),
    },
    Function {
        name: "on_course",
        inputs: &["lat_deg", "lon_deg", "course_deg", "reach", "point_lat_deg", "point_lon_deg", "tolerance_nm"],
        outputs: &["on_course"],
        run: |inputs, outputs| one(inputs, outputs, on_course),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, on_course),
    },
    Function {
        name: "on_leg",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg", "point_lat_deg", "point_lon_deg", "tolerance_nm"],
        outputs: &["on_leg"],
        run: |inputs, outputs| one(inputs, outputs, on_leg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, on_leg),
    },
    Function {
        name: "crossover_altitude_ft",
        inputs: &["cas_kt", "mach"],
        outputs: &["crossover_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, crossover_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, crossover_altitude_ft),
    },
    Function {
        name: "density_altitude_ft",
        inputs: &["pressure_altitude_ft", "temperature_degc"],
        outputs: &["density_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, density_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, density_altitude_ft),
    },
    Function {
        name: "density_altitude_rule_ft",
        inputs: &["pressure_altitude_ft", "temperature_degc"],
        outputs: &["density_altitude_rule_ft"],
        run: |inputs, outputs| one(inputs, outputs, density_altitude_rule_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, density_altitude_rule_ft),
    },
    Function {
        name: "arc_heading",
        inputs: &["radial_deg", "arc_radius_nm", "sense", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["track_deg", "heading_deg", "groundspeed_kt", "wind_correction_deg", "station_off_nose_deg", "ahead_of_wing_tip_deg", "bank_deg"],
        run: |inputs, outputs| one(inputs, outputs, arc_heading),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_heading),
    },
    Function {
        name: "arc_flown",
        inputs: &["from_radial_deg", "to_radial_deg", "arc_radius_nm", "sense", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["angle_deg", "distance_nm", "time_s"],
        run: |inputs, outputs| one(inputs, outputs, arc_flown),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_flown),
    },
    Function {
        name: "arc_chords",
        inputs: &["from_radial_deg", "to_radial_deg", "arc_radius_nm", "sense", "placement", "tolerance_nm"],
        outputs: &["legs", "angle_deg", "length_nm", "distance_at_ends_nm", "distance_at_middle_nm"],
        run: |inputs, outputs| one(inputs, outputs, arc_chords),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_chords),
    },
    Function {
        name: "arc_chord_leg",
        inputs: &["from_radial_deg", "to_radial_deg", "arc_radius_nm", "sense", "placement", "tolerance_nm", "leg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["from_radial_deg", "to_radial_deg", "course_deg", "heading_deg", "groundspeed_kt", "time_s"],
        run: |inputs, outputs| one(inputs, outputs, arc_chord_leg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_chord_leg),
    },
    Function {
        name: "arc_regained",
        inputs: &["radial_deg", "distance_nm", "arc_radius_nm", "sense", "correction_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["track_deg", "heading_deg", "distance_nm", "time_s", "radial_deg", "angle_deg"],
        run: |inputs, outputs| one(inputs, outputs, arc_regained),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_regained),
    },
    Function {
        name: "arc_least_correction_deg",
        inputs: &["distance_nm", "arc_radius_nm"],
        outputs: &["arc_least_correction_deg"],
        run: |inputs, outputs| one(inputs, outputs, arc_least_correction_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_least_correction_deg),
    },
    Function {
        name: "rule_arc_correction_deg",
        inputs: &["distance_nm", "arc_radius_nm"],
        outputs: &["rule_arc_correction_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_arc_correction_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_arc_correction_deg),
    },
    Function {
        name: "geodesic_inverse",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg"],
        outputs: &["distance_nm", "initial_bearing_deg", "final_bearing_deg"],
        run: |inputs, outputs| one(inputs, outputs, geodesic_inverse),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::earth::geodesic_inverse_block, geodesic_inverse),
    },
    Function {
        name: "slant_range_nm",
        inputs: &["ground_distance_nm", "height_ft"],
        outputs: &["slant_range_nm"],
        run: |inputs, outputs| one(inputs, outputs, slant_range_nm),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::earth::slant_range_nm_block, slant_range_nm),
    },
    Function {
        name: "geodesic_direct",
        inputs: &["lat_deg", "lon_deg", "bearing_deg", "distance_nm"],
        outputs: &["latitude_deg", "longitude_deg", "final_bearing_deg"],
        run: |inputs, outputs| one(inputs, outputs, geodesic_direct),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::earth::geodesic_direct_block, geodesic_direct),
    },
    Function {
        name: "ground_distance_nm",
        inputs: &["slant_range_nm", "height_ft"],
        outputs: &["ground_distance_nm"],
        run: |inputs, outputs| one(inputs, outputs, ground_distance_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, ground_distance_nm),
    },
    Function {
        name: "least_dme_nm",
        inputs: &["height_ft"],
        outputs: &["least_dme_nm"],
        run: |inputs, outputs| one(inputs, outputs, least_dme_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, least_dme_nm),
    },
    Function {
        name: "great_circle_inverse",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg", "sphere_radius_nm"],
        outputs: &["distance_nm", "initial_bearing_deg", "final_bearing_deg"],
        run: |inputs, outputs| one(inputs, outputs, great_circle_inverse),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, great_circle_inverse),
    },
    Function {
        name: "great_circle_direct",
        inputs: &["lat_deg", "lon_deg", "bearing_deg", "distance_nm", "sphere_radius_nm"],
        outputs: &["latitude_deg", "longitude_deg", "final_bearing_deg"],
        run: |inputs, outputs| one(inputs, outputs, great_circle_direct),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, great_circle_direct),
    },
    Function {
        name: "straight_line",
        inputs: &["lat1_deg", "lon1_deg", "elevation_ft", "lat2_deg", "lon2_deg", "altitude_ft"],
        outputs: &["slant_range_nm", "elevation_angle_deg"],
        run: |inputs, outputs| one(inputs, outputs, straight_line),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, straight_line),
    },
    Function {
        name: "eas_from_tas_kt",
        inputs: &["tas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["eas_from_tas_kt"],
        run: |inputs, outputs| one(inputs, outputs, eas_from_tas_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, eas_from_tas_kt),
    },
    Function {
        name: "tas_from_eas_kt",
        inputs: &["eas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["tas_from_eas_kt"],
        run: |inputs, outputs| one(inputs, outputs, tas_from_eas_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, tas_from_eas_kt),
    },
    Function {
        name: "eas_from_cas_kt",
        inputs: &["cas_kt", "pressure_altitude_ft"],
        outputs: &["eas_from_cas_kt"],
        run: |inputs, outputs| one(inputs, outputs, eas_from_cas_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, eas_from_cas_kt),
    },
    Function {
        name: "cas_from_eas_kt",
        inputs: &["eas_kt", "pressure_altitude_ft"],
        outputs: &["cas_from_eas_kt"],
        run: |inputs, outputs| one(inputs, outputs, cas_from_eas_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cas_from_eas_kt),
    },
    Function {
        name: "eas_from_mach_kt",
        inputs: &["mach", "pressure_altitude_ft"],
        outputs: &["eas_from_mach_kt"],
        run: |inputs, outputs| one(inputs, outputs, eas_from_mach_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, eas_from_mach_kt),
    },
    Function {
        name: "mach_from_eas",
        inputs: &["eas_kt", "pressure_altitude_ft"],
        outputs: &["mach_from_eas"],
        run: |inputs, outputs| one(inputs, outputs, mach_from_eas),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, mach_from_eas),
    },
    Function {
        name: "radial_error_across_nm",
        inputs: &["distance_nm", "radial_error_deg"],
        outputs: &["radial_error_across_nm"],
        run: |inputs, outputs| one(inputs, outputs, radial_error_across_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, radial_error_across_nm),
    },
    Function {
        name: "dme_error_along_nm",
        inputs: &["distance_nm", "dme_error_nm", "height_ft"],
        outputs: &["dme_error_along_nm"],
        run: |inputs, outputs| one(inputs, outputs, dme_error_along_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, dme_error_along_nm),
    },
    Function {
        name: "fix_of_two_radials",
        inputs: &["first_radial_deg", "first_distance_nm", "second_radial_deg", "second_distance_nm", "first_error_deg", "second_error_deg", "track_deg"],
        outputs: &["semi_major_nm", "semi_minor_nm", "major_axis_deg", "north_nm", "east_nm", "correlation", "along_track_nm", "across_track_nm", "root_mean_square_nm"],
        run: |inputs, outputs| one(inputs, outputs, fix_of_two_radials),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, fix_of_two_radials),
    },
    Function {
        name: "fix_of_radial_and_dme",
        inputs: &["radial_deg", "radial_distance_nm", "dme_bearing_deg", "dme_distance_nm", "radial_error_deg", "dme_error_nm", "height_ft", "track_deg"],
        outputs: &["semi_major_nm", "semi_minor_nm", "major_axis_deg", "north_nm", "east_nm", "correlation", "along_track_nm", "across_track_nm", "root_mean_square_nm"],
        run: |inputs, outputs| one(inputs, outputs, fix_of_radial_and_dme),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, fix_of_radial_and_dme),
    },
    Function {
        name: "fix_of_two_dme",
        inputs: &["first_bearing_deg", "first_distance_nm", "second_bearing_deg", "second_distance_nm", "first_error_nm", "second_error_nm", "first_height_ft", "second_height_ft", "track_deg"],
        outputs: &["semi_major_nm", "semi_minor_nm", "major_axis_deg", "north_nm", "east_nm", "correlation", "along_track_nm", "across_track_nm", "root_mean_square_nm"],
        run: |inputs, outputs| one(inputs, outputs, fix_of_two_dme),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, fix_of_two_dme),
    },
    Function {
        name: "ellipse_factor",
        inputs: &["confidence"],
        outputs: &["ellipse_factor"],
        run: |inputs, outputs| one(inputs, outputs, ellipse_factor),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, ellipse_factor),
    },
    Function {
        name: "grid_from_true_deg",
        inputs: &["true_deg", "convergence_deg"],
        outputs: &["grid_from_true_deg"],
        run: |inputs, outputs| one(inputs, outputs, grid_from_true_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, grid_from_true_deg),
    },
    Function {
        name: "true_from_grid_deg",
        inputs: &["grid_deg", "convergence_deg"],
        outputs: &["true_from_grid_deg"],
        run: |inputs, outputs| one(inputs, outputs, true_from_grid_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, true_from_grid_deg),
    },
    Function {
        name: "polar_grid_convergence_deg",
        inputs: &["lat_deg", "lon_deg"],
        outputs: &["polar_grid_convergence_deg"],
        run: |inputs, outputs| one(inputs, outputs, polar_grid_convergence_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, polar_grid_convergence_deg),
    },
    Function {
        name: "lambert_grid_convergence_deg",
        inputs: &["lon_deg", "meridian_lon_deg", "parallel1_lat_deg", "parallel2_lat_deg"],
        outputs: &["lambert_grid_convergence_deg"],
        run: |inputs, outputs| one(inputs, outputs, lambert_grid_convergence_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, lambert_grid_convergence_deg),
    },
    Function {
        name: "transverse_grid_convergence_deg",
        inputs: &["lat_deg", "lon_deg", "meridian_lon_deg"],
        outputs: &["transverse_grid_convergence_deg"],
        run: |inputs, outputs| one(inputs, outputs, transverse_grid_convergence_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, transverse_grid_convergence_deg),
    },
    Function {
        name: "utm_meridian_deg",
        inputs: &["lat_deg", "lon_deg"],
        outputs: &["utm_meridian_deg"],
        run: |inputs, outputs| one(inputs, outputs, utm_meridian_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, utm_meridian_deg),
    },
    Function {
        name: "holding_entry",
        inputs: &["heading_deg", "inbound_course_deg", "side"],
        outputs: &["entry", "also", "to_outbound_deg", "to_boundary_deg", "first_course_deg"],
        run: |inputs, outputs| one(inputs, outputs, holding_entry),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, holding_entry),
    },
    Function {
        name: "holding_timing",
        inputs: &["altitude_ft", "authority"],
        outputs: &["timed", "time_s"],
        run: |inputs, outputs| one(inputs, outputs, holding_timing),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, holding_timing),
    },
    Function {
        name: "holding_speed",
        inputs: &["altitude_ft", "rule"],
        outputs: &["indicated_kt", "mach", "calibrated_kt"],
        run: |inputs, outputs| one(inputs, outputs, holding_speed),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, holding_speed),
    },
    Function {
        name: "holding_turn",
        inputs: &["true_airspeed_kt", "rule"],
        outputs: &["bank_deg", "turn_rate_deg_per_s", "radius_nm", "governed_by"],
        run: |inputs, outputs| one(inputs, outputs, holding_turn),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, holding_turn),
    },
    Function {
        name: "outbound_end_dme_nm",
        inputs: &["fix_dme_nm", "inbound", "before_fix_nm", "across_nm", "height_ft"],
        outputs: &["outbound_end_dme_nm"],
        run: |inputs, outputs| one(inputs, outputs, outbound_end_dme_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, outbound_end_dme_nm),
    },
    Function {
        name: "limiting_dme",
        inputs: &["fix_dme_nm", "inbound", "outbound_leg_nm", "turn_radius_nm", "altitude_ft", "station_elevation_ft"],
        outputs: &["limiting_dme_nm", "rounded_nm"],
        run: |inputs, outputs| one(inputs, outputs, limiting_dme),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, limiting_dme),
    },
    Function {
        name: "intercept",
        inputs: &["course_deg", "cross_track_nm", "intercept_angle_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["track_deg", "heading_deg", "groundspeed_kt", "distance_nm", "time_s", "along_nm", "lead_nm", "distance_to_roll_in_nm", "time_to_roll_in_s", "cross_track_at_roll_in_nm"],
        run: |inputs, outputs| one(inputs, outputs, intercept),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, intercept),
    },
    Function {
        name: "radial_intercept",
        inputs: &["radial_deg", "distance_nm", "wanted_radial_deg", "flown", "track_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["heading_deg", "groundspeed_kt", "crossing_distance_nm", "distance_to_crossing_nm", "lead_nm", "time_to_roll_in_s", "radial_at_roll_in_deg", "distance_at_roll_in_nm", "needle_at_roll_in_deg", "cross_track_at_roll_in_nm", "distance_at_roll_out_nm", "turn_duration_s"],
        run: |inputs, outputs| one(inputs, outputs, radial_intercept),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, radial_intercept),
    },
    Function {
        name: "double_angle_intercept",
        inputs: &["radial_deg", "distance_nm", "wanted_radial_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["track_deg", "heading_deg", "distance_nm", "time_s", "time_to_station_s"],
        run: |inputs, outputs| one(inputs, outputs, double_angle_intercept),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, double_angle_intercept),
    },
    Function {
        name: "rule_intercept_angle_deg",
        inputs: &["off_radial_deg"],
        outputs: &["rule_intercept_angle_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_intercept_angle_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_intercept_angle_deg),
    },
    Function {
        name: "rule_intercept_lead_deg",
        inputs: &["distance_nm", "turn_radius_nm", "intercept_angle_deg"],
        outputs: &["rule_intercept_lead_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_intercept_lead_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_intercept_lead_deg),
    },
    Function {
        name: "lead_nm",
        inputs: &["inbound_course_deg", "outbound_course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["lead_nm"],
        run: |inputs, outputs| one(inputs, outputs, lead_nm),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::lead::lead_nm_block, lead_nm),
    },
    Function {
        name: "dme_at_roll_in_nm",
        inputs: &["inbound_course_deg", "outbound_course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s", "height_above_station_ft"],
        outputs: &["dme_at_roll_in_nm"],
        run: |inputs, outputs| one(inputs, outputs, dme_at_roll_in_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, dme_at_roll_in_nm),
    },
    Function {
        name: "turn_anticipation_nm",
        inputs: &["turn_radius_nm", "course_change_deg"],
        outputs: &["turn_anticipation_nm"],
        run: |inputs, outputs| one(inputs, outputs, turn_anticipation_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, turn_anticipation_nm),
    },
    Function {
        name: "arc_entry_inbound_nm",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["arc_entry_inbound_nm"],
        run: |inputs, outputs| one(inputs, outputs, arc_entry_inbound_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_entry_inbound_nm),
    },
    Function {
        name: "arc_entry_outbound_nm",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["arc_entry_outbound_nm"],
        run: |inputs, outputs| one(inputs, outputs, arc_entry_outbound_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, arc_entry_outbound_nm),
    },
    Function {
        name: "lead_radial_inbound_deg",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["lead_radial_inbound_deg"],
        run: |inputs, outputs| one(inputs, outputs, lead_radial_inbound_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, lead_radial_inbound_deg),
    },
    Function {
        name: "lead_radial_outbound_deg",
        inputs: &["arc_radius_nm", "turn_radius_nm"],
        outputs: &["lead_radial_outbound_deg"],
        run: |inputs, outputs| one(inputs, outputs, lead_radial_outbound_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, lead_radial_outbound_deg),
    },
    Function {
        name: "leg_meaning",
        inputs: &["leg"],
        outputs: &["path", "end"],
        run: |inputs, outputs| one(inputs, outputs, leg_meaning),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, leg_meaning),
    },
    Function {
        name: "mach_from_cas",
        inputs: &["cas_kt", "pressure_altitude_ft"],
        outputs: &["mach_from_cas"],
        run: |inputs, outputs| one(inputs, outputs, mach_from_cas),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::mach::mach_from_cas_block, mach_from_cas),
    },
    Function {
        name: "cas_from_mach_kt",
        inputs: &["mach", "pressure_altitude_ft"],
        outputs: &["cas_from_mach_kt"],
        run: |inputs, outputs| one(inputs, outputs, cas_from_mach_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cas_from_mach_kt),
    },
    Function {
        name: "tas_from_mach_kt",
        inputs: &["mach", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["tas_from_mach_kt"],
        run: |inputs, outputs| one(inputs, outputs, tas_from_mach_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, tas_from_mach_kt),
    },
    Function {
        name: "mach_from_tas",
        inputs: &["tas_kt", "pressure_altitude_ft", "isa_deviation_k"],
        outputs: &["mach_from_tas"],
        run: |inputs, outputs| one(inputs, outputs, mach_from_tas),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, mach_from_tas),
    },
    Function {
        name: "magnetic_field",
        inputs: &["lat_deg", "lon_deg", "altitude_ft", "decimal_year"],
        outputs: &["declination_deg", "inclination_deg", "horizontal_nt", "north_nt", "east_nt", "down_nt", "total_nt", "declination_change_deg", "inclination_change_deg", "horizontal_change_nt", "north_change_nt", "east_change_nt", "down_change_nt", "total_change_nt", "declination_uncertainty_deg", "grid_variation_deg", "zone", "in_date"],
        run: |inputs, outputs| one(inputs, outputs, magnetic_field),
        block: |inputs, outputs, statuses| super::magnetic::magnetic_field_block(inputs, outputs, statuses, magnetic_field),
    },
    Function {
        name: "variation_deg",
        inputs: &["lat_deg", "lon_deg", "altitude_ft", "decimal_year"],
        outputs: &["variation_deg"],
        run: |inputs, outputs| one(inputs, outputs, variation_deg),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::magnetic::variation_deg_block, variation_deg),
    },
    Function {
        name: "decimal_year",
        inputs: &["year", "month", "day"],
        outputs: &["decimal_year"],
        run: |inputs, outputs| one(inputs, outputs, decimal_year),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, decimal_year),
    },
    Function {
        name: "magnetic_from_true_deg",
        inputs: &["true_deg", "variation_deg"],
        outputs: &["magnetic_from_true_deg"],
        run: |inputs, outputs| one(inputs, outputs, magnetic_from_true_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, magnetic_from_true_deg),
    },
    Function {
        name: "true_from_magnetic_deg",
        inputs: &["magnetic_deg", "variation_deg"],
        outputs: &["true_from_magnetic_deg"],
        run: |inputs, outputs| one(inputs, outputs, true_from_magnetic_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, true_from_magnetic_deg),
    },
    Function {
        name: "station_misalignment_deg",
        inputs: &["station_declination_deg", "variation_deg"],
        outputs: &["station_misalignment_deg"],
        run: |inputs, outputs| one(inputs, outputs, station_misalignment_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, station_misalignment_deg),
    },
    Function {
        name: "radial_from_true_deg",
        inputs: &["true_deg", "station_declination_deg"],
        outputs: &["radial_from_true_deg"],
        run: |inputs, outputs| one(inputs, outputs, radial_from_true_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, radial_from_true_deg),
    },
    Function {
        name: "true_from_radial_deg",
        inputs: &["radial_deg", "station_declination_deg"],
        outputs: &["true_from_radial_deg"],
        run: |inputs, outputs| one(inputs, outputs, true_from_radial_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, true_from_radial_deg),
    },
    Function {
        name: "offset_point",
        inputs: &["lat_deg", "lon_deg", "course_deg", "offset_nm", "along_nm"],
        outputs: &["latitude_deg", "longitude_deg", "direction_deg"],
        run: |inputs, outputs| one(inputs, outputs, offset_point),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, offset_point),
    },
    Function {
        name: "offset_cross_track",
        inputs: &["lat_deg", "lon_deg", "course_deg", "offset_nm", "point_lat_deg", "point_lon_deg"],
        outputs: &["cross_track_nm", "along_track_nm", "abeam_latitude_deg", "abeam_longitude_deg", "abeam_direction_deg"],
        run: |inputs, outputs| one(inputs, outputs, offset_cross_track),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, offset_cross_track),
    },
    Function {
        name: "on_offset",
        inputs: &["lat_deg", "lon_deg", "course_deg", "reach", "offset_nm", "point_lat_deg", "point_lon_deg", "tolerance_nm"],
        outputs: &["on_offset"],
        run: |inputs, outputs| one(inputs, outputs, on_offset),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, on_offset),
    },
    Function {
        name: "offset_course_crossing",
        inputs: &["lat1_deg", "lon1_deg", "course1_deg", "offset_nm", "lat2_deg", "lon2_deg", "course2_deg"],
        outputs: &["latitude_deg", "longitude_deg", "along_first_nm"],
        run: |inputs, outputs| one(inputs, outputs, offset_course_crossing),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, offset_course_crossing),
    },
    Function {
        name: "offset_offset_crossing",
        inputs: &["lat1_deg", "lon1_deg", "course1_deg", "offset1_nm", "lat2_deg", "lon2_deg", "course2_deg", "offset2_nm"],
        outputs: &["latitude_deg", "longitude_deg", "along_first_nm", "along_second_nm"],
        run: |inputs, outputs| one(inputs, outputs, offset_offset_crossing),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, offset_offset_crossing),
    },
    Function {
        name: "offset_arc_crossing",
        inputs: &["lat_deg", "lon_deg", "course_deg", "offset_nm", "center_lat_deg", "center_lon_deg", "radius_nm"],
        outputs: &["latitude1_deg", "longitude1_deg", "along1_nm", "latitude2_deg", "longitude2_deg", "along2_nm"],
        run: |inputs, outputs| one(inputs, outputs, offset_arc_crossing),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, offset_arc_crossing),
    },
    Function {
        name: "isentropic_pressure_ratio",
        inputs: &["mach"],
        outputs: &["isentropic_pressure_ratio"],
        run: |inputs, outputs| one(inputs, outputs, isentropic_pressure_ratio),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, isentropic_pressure_ratio),
    },
    Function {
        name: "pitot_pressure_ratio",
        inputs: &["mach"],
        outputs: &["pitot_pressure_ratio"],
        run: |inputs, outputs| one(inputs, outputs, pitot_pressure_ratio),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, pitot_pressure_ratio),
    },
    Function {
        name: "impact_pressure_hpa",
        inputs: &["cas_kt"],
        outputs: &["impact_pressure_hpa"],
        run: |inputs, outputs| one(inputs, outputs, impact_pressure_hpa),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, impact_pressure_hpa),
    },
    Function {
        name: "cas_from_impact_pressure_kt",
        inputs: &["impact_pressure_hpa"],
        outputs: &["cas_from_impact_pressure_kt"],
        run: |inputs, outputs| one(inputs, outputs, cas_from_impact_pressure_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cas_from_impact_pressure_kt),
    },
    Function {
        name: "procedure_tas_factor",
        inputs: &["altitude_ft", "isa_deviation_k"],
        outputs: &["procedure_tas_factor"],
        run: |inputs, outputs| one(inputs, outputs, procedure_tas_factor),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, procedure_tas_factor),
    },
    Function {
        name: "procedure_turn_45_180",
        inputs: &["outbound_course_deg", "side", "off_time_s", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["off_track_deg", "off_heading_deg", "back_heading_deg", "straight_nm", "least_off_time_s", "established_nm", "farthest_nm", "widest_nm", "duration_s"],
        run: |inputs, outputs| one(inputs, outputs, procedure_turn_45_180),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, procedure_turn_45_180),
    },
    Function {
        name: "procedure_turn_80_260",
        inputs: &["outbound_course_deg", "side", "first_turn_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["off_heading_deg", "across_nm", "established_nm", "farthest_nm", "widest_nm", "duration_s", "exact_angle_deg"],
        run: |inputs, outputs| one(inputs, outputs, procedure_turn_80_260),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, procedure_turn_80_260),
    },
    Function {
        name: "cold_temperature_correction_by_method_ft",
        inputs: &["height_ft", "temperature_degc", "elevation_ft", "method"],
        outputs: &["cold_temperature_correction_by_method_ft"],
        run: |inputs, outputs| one(inputs, outputs, cold_temperature_correction_by_method_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cold_temperature_correction_by_method_ft),
    },
    Function {
        name: "procedure_tas_factor_by_method",
        inputs: &["altitude_ft", "isa_deviation_k", "method"],
        outputs: &["procedure_tas_factor_by_method"],
        run: |inputs, outputs| one(inputs, outputs, procedure_tas_factor_by_method),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, procedure_tas_factor_by_method),
    },
    Function {
        name: "standard_atmosphere_by_edition",
        inputs: &["pressure_altitude_ft", "isa_deviation_k", "edition"],
        outputs: &["temperature_degc", "pressure_hpa", "density_kg_per_m3", "speed_of_sound_kt"],
        run: |inputs, outputs| one(inputs, outputs, standard_atmosphere_by_edition),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, standard_atmosphere_by_edition),
    },
    Function {
        name: "published_turn",
        inputs: &["true_airspeed_kt", "bank_deg", "constants"],
        outputs: &["turn_rate_deg_per_s", "radius_nm"],
        run: |inputs, outputs| one(inputs, outputs, published_turn),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, published_turn),
    },
    Function {
        name: "holding_pattern",
        inputs: &["inbound_course_deg", "side", "timed", "time_s", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["outbound_heading_deg", "outbound_correction_deg", "inbound_correction_deg", "drift_factor", "outbound_time_s", "outbound_clock_s", "inbound_time_s", "duration_s", "outbound_end_before_fix_nm", "outbound_end_across_nm", "inbound_leg_nm", "length_nm", "width_nm", "bank_deg"],
        run: |inputs, outputs| one(inputs, outputs, holding_pattern),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, holding_pattern),
    },
    Function {
        name: "holding_pattern_at",
        inputs: &["since_fix_s", "inbound_course_deg", "side", "timed", "time_s", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["bearing_from_fix_deg", "distance_nm", "heading_deg", "bank_deg"],
        run: |inputs, outputs| one(inputs, outputs, holding_pattern_at),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, holding_pattern_at),
    },
    Function {
        name: "radio_horizon_nm",
        inputs: &["aircraft_height_ft", "antenna_height_ft", "rule"],
        outputs: &["radio_horizon_nm"],
        run: |inputs, outputs| one(inputs, outputs, radio_horizon_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, radio_horizon_nm),
    },
    Function {
        name: "least_reception_height_ft",
        inputs: &["ground_distance_nm", "antenna_height_ft", "rule"],
        outputs: &["least_reception_height_ft"],
        run: |inputs, outputs| one(inputs, outputs, least_reception_height_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, least_reception_height_ft),
    },
    Function {
        name: "service_reach_nm",
        inputs: &["service_class", "height_ft", "antenna_height_ft"],
        outputs: &["service_reach_nm"],
        run: |inputs, outputs| one(inputs, outputs, service_reach_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, service_reach_nm),
    },
    Function {
        name: "vor_needle",
        inputs: &["radial_deg", "selected_course_deg", "full_scale_deg", "abeam_zone_deg"],
        outputs: &["deviation_deg", "deflection", "to_from"],
        run: |inputs, outputs| one(inputs, outputs, vor_needle),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, vor_needle),
    },
    Function {
        name: "vor_receiver",
        inputs: &["station_latitude_deg", "station_longitude_deg", "station_elevation_ft", "station_declination_deg", "latitude_deg", "longitude_deg", "altitude_ft", "selected_course_deg", "full_scale_deg", "abeam_zone_deg", "reach_nm", "cone_half_angle_deg", "antenna_height_ft", "dme_step_nm"],
        outputs: &["flag", "to_from", "deviation_deg", "deflection", "radial_deg", "dme_nm"],
        run: |inputs, outputs| one(inputs, outputs, vor_receiver),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, vor_receiver),
    },
    Function {
        name: "displayed_dme_nm",
        inputs: &["dme_nm", "dme_step_nm"],
        outputs: &["displayed_dme_nm"],
        run: |inputs, outputs| one(inputs, outputs, displayed_dme_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, displayed_dme_nm),
    },
    Function {
        name: "cross_track_of_deflection_nm",
        inputs: &["deflection", "distance_nm", "full_scale_deg"],
        outputs: &["cross_track_of_deflection_nm"],
        run: |inputs, outputs| one(inputs, outputs, cross_track_of_deflection_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cross_track_of_deflection_nm),
    },
    Function {
        name: "deflection_of_cross_track",
        inputs: &["cross_track_nm", "distance_nm", "full_scale_deg"],
        outputs: &["deviation_deg", "deflection"],
        run: |inputs, outputs| one(inputs, outputs, deflection_of_cross_track),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, deflection_of_cross_track),
    },
    Function {
        name: "needle_motion",
        inputs: &["groundspeed_kt", "distance_nm", "crossing_angle_deg", "full_scale_deg"],
        outputs: &["needle_rate_deg_per_s", "full_scale_time_s"],
        run: |inputs, outputs| one(inputs, outputs, needle_motion),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, needle_motion),
    },
    Function {
        name: "rhumb_inverse",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg"],
        outputs: &["distance_nm", "course_deg"],
        run: |inputs, outputs| one(inputs, outputs, rhumb_inverse),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rhumb_inverse),
    },
    Function {
        name: "rhumb_direct",
        inputs: &["lat_deg", "lon_deg", "course_deg", "distance_nm"],
        outputs: &["latitude_deg", "longitude_deg"],
        run: |inputs, outputs| one(inputs, outputs, rhumb_direct),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rhumb_direct),
    },
    Function {
        name: "rhumb_excess",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg"],
        outputs: &["excess_nm", "conversion_angle_deg"],
        run: |inputs, outputs| one(inputs, outputs, rhumb_excess),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rhumb_excess),
    },
    Function {
        name: "splay_distance_nm",
        inputs: &["half_width_nm", "angle_deg"],
        outputs: &["splay_distance_nm"],
        run: |inputs, outputs| one(inputs, outputs, splay_distance_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, splay_distance_nm),
    },
    Function {
        name: "route_half_width_nm",
        inputs: &["distance_nm", "containment"],
        outputs: &["route_half_width_nm"],
        run: |inputs, outputs| one(inputs, outputs, route_half_width_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, route_half_width_nm),
    },
    Function {
        name: "rule_density_altitude_error",
        inputs: &["pressure_altitude_ft", "temperature_degc"],
        outputs: &["rule_ft", "exact_ft", "error_ft", "standard_ft", "slope_ft", "curve_ft"],
        run: |inputs, outputs| one(inputs, outputs, rule_density_altitude_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_density_altitude_error),
    },
    Function {
        name: "rule_pressure_altitude_error",
        inputs: &["indicated_altitude_ft", "altimeter_setting_hpa"],
        outputs: &["rule_ft", "exact_ft", "error_ft", "datum_ft", "slope_ft", "curve_ft"],
        run: |inputs, outputs| one(inputs, outputs, rule_pressure_altitude_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_pressure_altitude_error),
    },
    Function {
        name: "rule_cold_temperature_error",
        inputs: &["height_ft", "temperature_degc", "elevation_ft"],
        outputs: &["rule_ft", "exact_ft", "error_ft", "share_ft", "column_ft"],
        run: |inputs, outputs| one(inputs, outputs, rule_cold_temperature_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_cold_temperature_error),
    },
    Function {
        name: "rule_arc_entry_lead_nm",
        inputs: &["arc_radius_nm", "turn_radius_nm", "flown", "rule"],
        outputs: &["rule_arc_entry_lead_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_arc_entry_lead_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_arc_entry_lead_nm),
    },
    Function {
        name: "rule_arc_entry_lead_error",
        inputs: &["arc_radius_nm", "turn_radius_nm", "flown", "rule"],
        outputs: &["rule_nm", "exact_nm", "error_nm", "radius_nm", "curve_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_arc_entry_lead_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_arc_entry_lead_error),
    },
    Function {
        name: "rule_radials_per_mile_error",
        inputs: &["arc_radius_nm"],
        outputs: &["rule", "exact", "error"],
        run: |inputs, outputs| one(inputs, outputs, rule_radials_per_mile_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_radials_per_mile_error),
    },
    Function {
        name: "rule_arc_correction_error",
        inputs: &["distance_nm", "arc_radius_nm"],
        outputs: &["rule_deg", "exact_deg", "error_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_arc_correction_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_arc_correction_error),
    },
    Function {
        name: "rule_intercept_angle_error",
        inputs: &["off_radial_deg"],
        outputs: &["rule_deg", "exact_deg", "error_deg", "limits_deg", "doubling_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_intercept_angle_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_intercept_angle_error),
    },
    Function {
        name: "rule_intercept_lead_error",
        inputs: &["distance_nm", "turn_radius_nm", "intercept_angle_deg"],
        outputs: &["rule_deg", "exact_deg", "error_deg", "sixty_deg", "share_deg", "arc_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_intercept_lead_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_intercept_lead_error),
    },
    Function {
        name: "rule_least_dme_error",
        inputs: &["height_ft"],
        outputs: &["rule_nm", "exact_nm", "error_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_least_dme_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_least_dme_error),
    },
    Function {
        name: "rule_cone_radius_error",
        inputs: &["height_ft", "cone_half_angle_deg"],
        outputs: &["rule_nm", "exact_nm", "error_nm", "mile_nm", "angle_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_cone_radius_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_cone_radius_error),
    },
    Function {
        name: "rule_bank_error",
        inputs: &["true_airspeed_kt", "rule"],
        outputs: &["rule_deg", "exact_deg", "error_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_bank_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_bank_error),
    },
    Function {
        name: "rule_turn_radius_error",
        inputs: &["speed_kt", "rule"],
        outputs: &["rule_nm", "exact_nm", "error_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_turn_radius_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_turn_radius_error),
    },
    Function {
        name: "rule_off_course_error",
        inputs: &["deflection_dots", "distance_nm"],
        outputs: &["rule_nm", "exact_nm", "error_nm", "dot_nm", "sine_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_off_course_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_off_course_error),
    },
    Function {
        name: "rule_lead_radials_error",
        inputs: &["arc_radius_nm", "turn_radius_nm", "flown", "rule"],
        outputs: &["rule_deg", "exact_deg", "error_deg", "sixty_deg", "correction_deg", "geometry_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_lead_radials_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_lead_radials_error),
    },
    Function {
        name: "rule_time_to_station_error",
        inputs: &["elapsed_s", "bearing_change_deg"],
        outputs: &["rule_s", "exact_s", "error_s", "sixty_s", "sine_s"],
        run: |inputs, outputs| one(inputs, outputs, rule_time_to_station_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_time_to_station_error),
    },
    Function {
        name: "rule_outbound_correction_error",
        inputs: &["inbound_course_deg", "side", "inbound_time_s", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s", "rule"],
        outputs: &["rule_deg", "exact_deg", "error_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_outbound_correction_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_outbound_correction_error),
    },
    Function {
        name: "rule_outbound_time_by_headwind_error",
        inputs: &["inbound_course_deg", "side", "inbound_time_s", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["rule_s", "exact_s", "error_s", "knot_s", "turns_s"],
        run: |inputs, outputs| one(inputs, outputs, rule_outbound_time_by_headwind_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_outbound_time_by_headwind_error),
    },
    Function {
        name: "rule_outbound_time_error",
        inputs: &["inbound_course_deg", "side", "outbound_time_s", "wanted_inbound_time_s", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["rule_s", "exact_s", "error_s", "groundspeed_s", "heading_s"],
        run: |inputs, outputs| one(inputs, outputs, rule_outbound_time_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_outbound_time_error),
    },
    Function {
        name: "rule_lead_error",
        inputs: &["inbound_course_deg", "outbound_course_deg", "true_airspeed_kt", "height_above_station_ft", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s", "rule"],
        outputs: &["rule_lead_nm", "exact_lead_nm", "lead_error_nm", "rule_reading_nm", "exact_reading_nm", "reading_error_nm", "allowance_nm", "round_radius_nm", "proportion_nm", "standard_rate_nm", "groundspeed_nm", "heading_change_nm", "drift_nm", "roll_nm", "mile_nm", "sum_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_lead_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_lead_error),
    },
    Function {
        name: "rule_lead_flown",
        inputs: &["inbound_course_deg", "outbound_course_deg", "true_airspeed_kt", "height_above_station_ft", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s", "rule", "cue", "cone_half_angle_deg", "allowed_beyond_nm", "allowed_short_nm"],
        outputs: &["reading_nm", "before_station_nm", "overshoot_nm", "past_station_nm", "began_in_cone", "ended_in_cone", "verdict"],
        run: |inputs, outputs| one(inputs, outputs, rule_lead_flown),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_lead_flown),
    },
    Function {
        name: "rule_holds_at_height_ft",
        inputs: &["inbound_course_deg", "outbound_course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s", "rule"],
        outputs: &["rule_holds_at_height_ft"],
        run: |inputs, outputs| one(inputs, outputs, rule_holds_at_height_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_holds_at_height_ft),
    },
    Function {
        name: "rule_outbound_heading_deg",
        inputs: &["inbound_course_deg", "inbound_correction_deg", "rule"],
        outputs: &["rule_outbound_heading_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_outbound_heading_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_outbound_heading_deg),
    },
    Function {
        name: "rule_outbound_time_s",
        inputs: &["outbound_time_s", "inbound_time_s", "wanted_inbound_time_s"],
        outputs: &["rule_outbound_time_s"],
        run: |inputs, outputs| one(inputs, outputs, rule_outbound_time_s),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_outbound_time_s),
    },
    Function {
        name: "rule_outbound_time_by_headwind_s",
        inputs: &["still_air_time_s", "outbound_headwind_kt"],
        outputs: &["rule_outbound_time_by_headwind_s"],
        run: |inputs, outputs| one(inputs, outputs, rule_outbound_time_by_headwind_s),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_outbound_time_by_headwind_s),
    },
    Function {
        name: "rule_slant_negligible_from_nm",
        inputs: &["height_ft"],
        outputs: &["rule_slant_negligible_from_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_slant_negligible_from_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_slant_negligible_from_nm),
    },
    Function {
        name: "rule_ground_distance_error",
        inputs: &["slant_range_nm", "height_ft"],
        outputs: &["rule_nm", "exact_nm", "error_nm", "triangle_nm", "curve_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_ground_distance_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_ground_distance_error),
    },
    Function {
        name: "rule_radio_horizon_error",
        inputs: &["aircraft_height_ft", "antenna_height_ft", "rule"],
        outputs: &["rule_nm", "exact_nm", "error_nm", "factor_nm", "root_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_radio_horizon_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_radio_horizon_error),
    },
    Function {
        name: "rule_roll_out_lead_deg",
        inputs: &["bank_deg", "rule"],
        outputs: &["rule_roll_out_lead_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_roll_out_lead_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_roll_out_lead_deg),
    },
    Function {
        name: "rule_roll_out_lead_error",
        inputs: &["true_airspeed_kt", "bank_deg", "roll_rate_deg_per_s", "rule"],
        outputs: &["rule_deg", "exact_deg", "error_deg", "share_deg", "tangent_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_roll_out_lead_error),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_roll_out_lead_error),
    },
    Function {
        name: "rule_lead_nm",
        inputs: &["groundspeed_kt", "course_change_deg", "height_above_station_ft"],
        outputs: &["rule_lead_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_lead_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_lead_nm),
    },
    Function {
        name: "rule_reading_nm",
        inputs: &["groundspeed_kt", "course_change_deg", "height_above_station_ft"],
        outputs: &["rule_reading_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_reading_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_reading_nm),
    },
    Function {
        name: "rule_least_dme_nm",
        inputs: &["height_ft"],
        outputs: &["rule_least_dme_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_least_dme_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_least_dme_nm),
    },
    Function {
        name: "rule_cone_radius_nm",
        inputs: &["height_ft"],
        outputs: &["rule_cone_radius_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_cone_radius_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_cone_radius_nm),
    },
    Function {
        name: "rule_bank_deg",
        inputs: &["true_airspeed_kt", "rule"],
        outputs: &["rule_bank_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_bank_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_bank_deg),
    },
    Function {
        name: "rule_turn_radius_nm",
        inputs: &["speed_kt", "rule"],
        outputs: &["rule_turn_radius_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_turn_radius_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_turn_radius_nm),
    },
    Function {
        name: "rule_radials_per_mile",
        inputs: &["arc_radius_nm"],
        outputs: &["rule_radials_per_mile"],
        run: |inputs, outputs| one(inputs, outputs, rule_radials_per_mile),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_radials_per_mile),
    },
    Function {
        name: "rule_lead_radials_deg",
        inputs: &["arc_radius_nm", "turn_radius_nm", "flown", "rule"],
        outputs: &["rule_lead_radials_deg"],
        run: |inputs, outputs| one(inputs, outputs, rule_lead_radials_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_lead_radials_deg),
    },
    Function {
        name: "rule_off_course_nm",
        inputs: &["deflection_dots", "distance_nm"],
        outputs: &["rule_off_course_nm"],
        run: |inputs, outputs| one(inputs, outputs, rule_off_course_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rule_off_course_nm),
    },
    Function {
        name: "observe",
        inputs: &["station_latitude_deg", "station_longitude_deg", "station_elevation_ft", "station_declination_deg", "latitude_deg", "longitude_deg", "altitude_ft"],
        outputs: &["radial_deg", "dme_nm", "ground_distance_nm", "elevation_angle_deg"],
        run: |inputs, outputs| one(inputs, outputs, observe),
        block: |inputs, outputs, statuses| wanted(inputs, outputs, statuses, super::station::observe_block, observe),
    },
    Function {
        name: "cone_radius_nm",
        inputs: &["height_ft", "cone_half_angle_deg"],
        outputs: &["cone_radius_nm"],
        run: |inputs, outputs| one(inputs, outputs, cone_radius_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, cone_radius_nm),
    },
    Function {
        name: "successive_turns",
        inputs: &["inbound_course_deg", "leg_course_deg", "outbound_course_deg", "leg_length_nm", "first_passage", "second_passage", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["past_first_nm", "before_second_nm", "spare_nm", "straight_time_s", "largest_true_airspeed_kt", "largest_groundspeed_kt", "bank_needed_deg", "crossing_past_first_nm", "crossing_before_second_nm", "crossing_lead_nm"],
        run: |inputs, outputs| one(inputs, outputs, successive_turns),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, successive_turns),
    },
    Function {
        name: "stabilization_distance_nm",
        inputs: &["passage", "course_change_deg", "true_airspeed_kt", "bank_deg", "turn_rate_limit_deg_per_s", "bank_onto_leg_deg"],
        outputs: &["stabilization_distance_nm"],
        run: |inputs, outputs| one(inputs, outputs, stabilization_distance_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, stabilization_distance_nm),
    },
    Function {
        name: "tangent_turn",
        inputs: &["lat1_deg", "lon1_deg", "course1_deg", "lat2_deg", "lon2_deg", "course2_deg", "radius_nm"],
        outputs: &["center_latitude_deg", "center_longitude_deg", "begin_latitude_deg", "begin_longitude_deg", "end_latitude_deg", "end_longitude_deg", "begin_bearing_deg", "end_bearing_deg", "length_nm", "side"],
        run: |inputs, outputs| one(inputs, outputs, tangent_turn),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, tangent_turn),
    },
    Function {
        name: "tangent_turn_between_legs",
        inputs: &["lat1_deg", "lon1_deg", "course1_deg", "lat2_deg", "lon2_deg", "course2_deg", "radius_nm"],
        outputs: &["center_latitude_deg", "center_longitude_deg", "begin_latitude_deg", "begin_longitude_deg", "end_latitude_deg", "end_longitude_deg", "begin_bearing_deg", "end_bearing_deg", "length_nm", "side"],
        run: |inputs, outputs| one(inputs, outputs, tangent_turn_between_legs),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, tangent_turn_between_legs),
    },
    Function {
        name: "offset_tangent_turn",
        inputs: &["lat1_deg", "lon1_deg", "course1_deg", "offset1_nm", "lat2_deg", "lon2_deg", "course2_deg", "offset2_nm", "radius_nm"],
        outputs: &["center_latitude_deg", "center_longitude_deg", "begin_latitude_deg", "begin_longitude_deg", "end_latitude_deg", "end_longitude_deg", "begin_bearing_deg", "end_bearing_deg", "length_nm", "side"],
        run: |inputs, outputs| one(inputs, outputs, offset_tangent_turn),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, offset_tangent_turn),
    },
    Function {
        name: "time_to_fly_s",
        inputs: &["distance_nm", "groundspeed_kt"],
        outputs: &["time_to_fly_s"],
        run: |inputs, outputs| one(inputs, outputs, time_to_fly_s),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, time_to_fly_s),
    },
    Function {
        name: "distance_flown_nm",
        inputs: &["groundspeed_kt", "elapsed_s"],
        outputs: &["distance_flown_nm"],
        run: |inputs, outputs| one(inputs, outputs, distance_flown_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, distance_flown_nm),
    },
    Function {
        name: "groundspeed_from_time_kt",
        inputs: &["distance_nm", "elapsed_s"],
        outputs: &["groundspeed_from_time_kt"],
        run: |inputs, outputs| one(inputs, outputs, groundspeed_from_time_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, groundspeed_from_time_kt),
    },
    Function {
        name: "time_between_fixes_s",
        inputs: &["lat1_deg", "lon1_deg", "lat2_deg", "lon2_deg", "groundspeed_kt"],
        outputs: &["time_between_fixes_s"],
        run: |inputs, outputs| one(inputs, outputs, time_between_fixes_s),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, time_between_fixes_s),
    },
    Function {
        name: "station_by_bearing_change",
        inputs: &["elapsed_s", "bearing_change_deg", "groundspeed_kt", "angle_off_bow_deg"],
        outputs: &["distance_nm", "time_s", "distance_before_nm"],
        run: |inputs, outputs| one(inputs, outputs, station_by_bearing_change),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, station_by_bearing_change),
    },
    Function {
        name: "time_to_station_rule_s",
        inputs: &["elapsed_s", "bearing_change_deg"],
        outputs: &["time_to_station_rule_s"],
        run: |inputs, outputs| one(inputs, outputs, time_to_station_rule_s),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, time_to_station_rule_s),
    },
    Function {
        name: "total_temperature_degc",
        inputs: &["temperature_degc", "mach", "recovery_factor"],
        outputs: &["total_temperature_degc"],
        run: |inputs, outputs| one(inputs, outputs, total_temperature_degc),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, total_temperature_degc),
    },
    Function {
        name: "static_temperature_degc",
        inputs: &["total_temperature_degc", "mach", "recovery_factor"],
        outputs: &["static_temperature_degc"],
        run: |inputs, outputs| one(inputs, outputs, static_temperature_degc),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, static_temperature_degc),
    },
    Function {
        name: "transition_level_ft",
        inputs: &["transition_altitude_ft", "altimeter_setting_hpa", "least_layer_ft", "step_ft"],
        outputs: &["transition_level_ft"],
        run: |inputs, outputs| one(inputs, outputs, transition_level_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, transition_level_ft),
    },
    Function {
        name: "true_altitude_ft",
        inputs: &["pressure_altitude_ft", "altimeter_setting_hpa", "elevation_ft", "isa_deviation_k"],
        outputs: &["true_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, true_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, true_altitude_ft),
    },
    Function {
        name: "height_above_station_ft",
        inputs: &["pressure_altitude_ft", "altimeter_setting_hpa", "elevation_ft", "isa_deviation_k"],
        outputs: &["height_above_station_ft"],
        run: |inputs, outputs| one(inputs, outputs, height_above_station_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, height_above_station_ft),
    },
    Function {
        name: "pressure_altitude_at_true_altitude_ft",
        inputs: &["true_altitude_ft", "altimeter_setting_hpa", "elevation_ft", "isa_deviation_k"],
        outputs: &["pressure_altitude_at_true_altitude_ft"],
        run: |inputs, outputs| one(inputs, outputs, pressure_altitude_at_true_altitude_ft),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, pressure_altitude_at_true_altitude_ft),
    },
    Function {
        name: "turn_radius_nm",
        inputs: &["true_airspeed_kt", "bank_deg"],
        outputs: &["turn_radius_nm"],
        run: |inputs, outputs| one(inputs, outputs, turn_radius_nm),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::turn::turn_radius_nm_block, turn_radius_nm),
    },
    Function {
        name: "turn_rate_deg_per_s",
        inputs: &["true_airspeed_kt", "bank_deg"],
        outputs: &["turn_rate_deg_per_s"],
        run: |inputs, outputs| one(inputs, outputs, turn_rate_deg_per_s),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, turn_rate_deg_per_s),
    },
    Function {
        name: "bank_for_rate_deg",
        inputs: &["true_airspeed_kt", "turn_rate_deg_per_s"],
        outputs: &["bank_for_rate_deg"],
        run: |inputs, outputs| one(inputs, outputs, bank_for_rate_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, bank_for_rate_deg),
    },
    Function {
        name: "bank_for_radius_deg",
        inputs: &["true_airspeed_kt", "turn_radius_nm"],
        outputs: &["bank_for_radius_deg"],
        run: |inputs, outputs| one(inputs, outputs, bank_for_radius_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, bank_for_radius_deg),
    },
    Function {
        name: "radius_at_rate_nm",
        inputs: &["true_airspeed_kt", "turn_rate_deg_per_s"],
        outputs: &["radius_at_rate_nm"],
        run: |inputs, outputs| one(inputs, outputs, radius_at_rate_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, radius_at_rate_nm),
    },
    Function {
        name: "load_factor",
        inputs: &["bank_deg"],
        outputs: &["load_factor"],
        run: |inputs, outputs| one(inputs, outputs, load_factor),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, load_factor),
    },
    Function {
        name: "bank_for_load_factor_deg",
        inputs: &["load_factor"],
        outputs: &["bank_for_load_factor_deg"],
        run: |inputs, outputs| one(inputs, outputs, bank_for_load_factor_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, bank_for_load_factor_deg),
    },
    Function {
        name: "limited_turn",
        inputs: &["true_airspeed_kt", "bank_limit_deg", "turn_rate_limit_deg_per_s"],
        outputs: &["bank_deg", "turn_rate_deg_per_s", "radius_nm", "governed_by"],
        run: |inputs, outputs| one(inputs, outputs, limited_turn),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, limited_turn),
    },
    Function {
        name: "rolled_turn",
        inputs: &["true_airspeed_kt", "heading_change_deg", "bank_limit_deg", "turn_rate_limit_deg_per_s", "roll_rate_deg_per_s"],
        outputs: &["bank_deg", "duration_s", "roll_duration_s", "advance_nm", "transfer_nm", "governed_by"],
        run: |inputs, outputs| one(inputs, outputs, rolled_turn),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, rolled_turn),
    },
    Function {
        name: "icao_wind_kt",
        inputs: &["altitude_ft", "units"],
        outputs: &["icao_wind_kt"],
        run: |inputs, outputs| one(inputs, outputs, icao_wind_kt),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, icao_wind_kt),
    },
    Function {
        name: "turn_wind_effect_nm",
        inputs: &["angle_deg", "turn_rate_deg_per_s", "wind_speed_kt"],
        outputs: &["turn_wind_effect_nm"],
        run: |inputs, outputs| one(inputs, outputs, turn_wind_effect_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, turn_wind_effect_nm),
    },
    Function {
        name: "base_turn_template",
        inputs: &["true_airspeed_kt", "outbound_time_s", "wind_speed_kt", "fix_tolerance_nm"],
        outputs: &["leg_nm", "nearest_nm", "farthest_nm"],
        run: |inputs, outputs| one(inputs, outputs, base_turn_template),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, base_turn_template),
    },
    Function {
        name: "base_turn_sector_nm",
        inputs: &["true_airspeed_kt", "outbound_time_s", "units"],
        outputs: &["base_turn_sector_nm"],
        run: |inputs, outputs| one(inputs, outputs, base_turn_sector_nm),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, base_turn_sector_nm),
    },
    Function {
        name: "wind_triangle",
        inputs: &["course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["heading_deg", "groundspeed_kt"],
        run: |inputs, outputs| one(inputs, outputs, wind_triangle),
        block: |inputs, outputs, statuses| columns(inputs, outputs, statuses, super::wind::wind_triangle_block, wind_triangle),
    },
    Function {
        name: "wind_correction_deg",
        inputs: &["course_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["wind_correction_deg"],
        run: |inputs, outputs| one(inputs, outputs, wind_correction_deg),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, wind_correction_deg),
    },
    Function {
        name: "track_and_groundspeed",
        inputs: &["heading_deg", "true_airspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["track_deg", "groundspeed_kt", "drift_deg"],
        run: |inputs, outputs| one(inputs, outputs, track_and_groundspeed),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, track_and_groundspeed),
    },
    Function {
        name: "wind_from_track",
        inputs: &["heading_deg", "true_airspeed_kt", "track_deg", "groundspeed_kt"],
        outputs: &["wind_from_deg", "wind_speed_kt"],
        run: |inputs, outputs| one(inputs, outputs, wind_from_track),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, wind_from_track),
    },
    Function {
        name: "wind_components",
        inputs: &["course_deg", "wind_from_deg", "wind_speed_kt"],
        outputs: &["headwind_kt", "crosswind_kt"],
        run: |inputs, outputs| one(inputs, outputs, wind_components),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, wind_components),
    },
    Function {
        name: "wind_from_components",
        inputs: &["course_deg", "headwind_kt", "crosswind_kt"],
        outputs: &["wind_from_deg", "wind_speed_kt"],
        run: |inputs, outputs| one(inputs, outputs, wind_from_components),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, wind_from_components),
    },
    Function {
        name: "airspeed_for_groundspeed",
        inputs: &["course_deg", "groundspeed_kt", "wind_from_deg", "wind_speed_kt"],
        outputs: &["heading_deg", "true_airspeed_kt"],
        run: |inputs, outputs| one(inputs, outputs, airspeed_for_groundspeed),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, airspeed_for_groundspeed),
    },
    Function {
        name: "wind_between_levels",
        inputs: &["pressure_altitude_ft", "lower_altitude_ft", "lower_wind_from_deg", "lower_wind_speed_kt", "upper_altitude_ft", "upper_wind_from_deg", "upper_wind_speed_kt"],
        outputs: &["wind_from_deg", "wind_speed_kt"],
        run: |inputs, outputs| one(inputs, outputs, wind_between_levels),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, wind_between_levels),
    },
    Function {
        name: "wind_between_levels_by_method",
        inputs: &["pressure_altitude_ft", "lower_altitude_ft", "lower_wind_from_deg", "lower_wind_speed_kt", "upper_altitude_ft", "upper_wind_from_deg", "upper_wind_speed_kt", "method"],
        outputs: &["wind_from_deg", "wind_speed_kt"],
        run: |inputs, outputs| one(inputs, outputs, wind_between_levels_by_method),
        block: |inputs, outputs, statuses| each(inputs, outputs, statuses, wind_between_levels_by_method),
    },
];

fn radial_tolerance_deg([accuracy]: [f64; 1]) -> Result<[f64; 1], Error> {
    if [accuracy].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::radial_tolerance_deg(crate::station::RadialAccuracy::from_code("accuracy", accuracy)?).map(|answer| [answer])
}

fn radial_error([ground_deg, receiver_deg, flight_technical_deg, monitor_deg]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::radial_error(ground_deg, receiver_deg, flight_technical_deg, monitor_deg).map(|answer| [answer.aggregate_deg, answer.system_use_deg])
}

fn dme_tolerance_nm([dme_nm, accuracy]: [f64; 2]) -> Result<[f64; 1], Error> {
    if [dme_nm, accuracy].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::dme_tolerance_nm(dme_nm, crate::station::DmeAccuracy::from_code("accuracy", accuracy)?).map(|answer| [answer])
}

fn receiver_check_limit_deg([check]: [f64; 1]) -> Result<[f64; 1], Error> {
    if [check].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::receiver_check_limit_deg(crate::station::ReceiverCheck::from_code("check", check)?).map(|answer| [answer])
}

fn dme_dme_tolerances([dme_tolerance_nm, flight_technical_nm, buffer_nm, coverage, system_nm]: [f64; 5]) -> Result<[f64; 3], Error> {
    if [dme_tolerance_nm, flight_technical_nm, buffer_nm, coverage, system_nm].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 3]);
    }
    super::dme_dme_tolerances(dme_tolerance_nm, flight_technical_nm, buffer_nm, crate::station::DmeCoverage::from_code("coverage", coverage)?, system_nm).map(|answer| [answer.along_track_nm, answer.across_track_nm, answer.half_width_nm])
}

fn standard_atmosphere([pressure_altitude_ft, isa_deviation_k]: [f64; 2]) -> Result<[f64; 4], Error> {
    super::standard_atmosphere(pressure_altitude_ft, isa_deviation_k).map(|answer| [answer.temperature_degc, answer.pressure_hpa, answer.density_kg_per_m3, answer.speed_of_sound_kt])
}

fn pressure_ratio([pressure_altitude_ft]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::pressure_ratio(pressure_altitude_ft).map(|answer| [answer])
}

fn density_ratio([pressure_altitude_ft, isa_deviation_k]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::density_ratio(pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn temperature_ratio([pressure_altitude_ft, isa_deviation_k]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::temperature_ratio(pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn isa_deviation_k([temperature_degc, pressure_altitude_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::isa_deviation_k(temperature_degc, pressure_altitude_ft).map(|answer| [answer])
}

fn speed_of_sound_kt([temperature_degc]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::speed_of_sound_kt(temperature_degc).map(|answer| [answer])
}

fn pressure_altitude_from_pressure_ft([pressure_hpa]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::pressure_altitude_from_pressure_ft(pressure_hpa).map(|answer| [answer])
}

fn geopotential_altitude_ft([geometric_altitude_ft]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::geopotential_altitude_ft(geometric_altitude_ft).map(|answer| [answer])
}

fn geometric_altitude_ft([geopotential_altitude_ft]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::geometric_altitude_ft(geopotential_altitude_ft).map(|answer| [answer])
}

fn tas_from_cas_kt([cas_kt, pressure_altitude_ft, isa_deviation_k]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::tas_from_cas_kt(cas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn cas_from_tas_kt([tas_kt, pressure_altitude_ft, isa_deviation_k]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::cas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn indicated_altitude_ft([pressure_altitude_ft, altimeter_setting_hpa]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::indicated_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa).map(|answer| [answer])
}

fn pressure_altitude_ft([indicated_altitude_ft, altimeter_setting_hpa]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::pressure_altitude_ft(indicated_altitude_ft, altimeter_setting_hpa).map(|answer| [answer])
}

fn pressure_altitude_rule_ft([indicated_altitude_ft, altimeter_setting_hpa]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::pressure_altitude_rule_ft(indicated_altitude_ft, altimeter_setting_hpa).map(|answer| [answer])
}

fn altimeter_setting_hpa([station_pressure_hpa, elevation_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::altimeter_setting_hpa(station_pressure_hpa, elevation_ft).map(|answer| [answer])
}

fn altimeter_setting_smithsonian_hpa([station_pressure_hpa, elevation_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::altimeter_setting_smithsonian_hpa(station_pressure_hpa, elevation_ft).map(|answer| [answer])
}

fn station_pressure_hpa([altimeter_setting_hpa, elevation_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::station_pressure_hpa(altimeter_setting_hpa, elevation_ft).map(|answer| [answer])
}

fn arc_entry([radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 10]) -> Result<[f64; 7], Error> {
    if [radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 7]);
    }
    super::arc_entry(radial_deg, crate::lead::RadialFlown::from_code("flown", flown)?, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.radial_at_roll_out_deg, answer.distance_at_roll_out_nm, answer.angle_at_station_deg, answer.heading_change_deg, answer.duration_s])
}

fn arc_exit([radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 10]) -> Result<[f64; 7], Error> {
    if [radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 7]);
    }
    super::arc_exit(radial_deg, crate::lead::RadialFlown::from_code("flown", flown)?, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.radial_at_roll_out_deg, answer.distance_at_roll_out_nm, answer.angle_at_station_deg, answer.heading_change_deg, answer.duration_s])
}

fn design_base_turn_offset_deg([true_airspeed_kt, outbound_time_s, units]: [f64; 3]) -> Result<[f64; 1], Error> {
    if [true_airspeed_kt, outbound_time_s, units].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::design_base_turn_offset_deg(true_airspeed_kt, outbound_time_s, crate::procedure::DesignUnits::from_code("units", units)?).map(|answer| [answer])
}

fn base_turn_offset_exact_deg([turn_radius_nm, outbound_leg_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::base_turn_offset_exact_deg(turn_radius_nm, outbound_leg_nm).map(|answer| [answer])
}

fn base_turn([inbound_course_deg, turn_side, outbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 9]) -> Result<[f64; 7], Error> {
    if [inbound_course_deg, turn_side, outbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 7]);
    }
    super::base_turn(inbound_course_deg, crate::procedure::HoldingSide::from_code("turn_side", turn_side)?, outbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.track_deg, answer.heading_deg, answer.offset_deg, answer.outbound_time_s, answer.heading_change_deg, answer.established_nm, answer.duration_s])
}

fn base_turn_on_track([inbound_course_deg, outbound_track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 8]) -> Result<[f64; 7], Error> {
    super::base_turn_on_track(inbound_course_deg, outbound_track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.track_deg, answer.heading_deg, answer.offset_deg, answer.outbound_time_s, answer.heading_change_deg, answer.established_nm, answer.duration_s])
}

fn course_arc_crossing([lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm]: [f64; 6]) -> Result<[f64; 6], Error> {
    super::course_arc_crossing(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.along1_nm, answer.latitude2_deg, answer.longitude2_deg, answer.along2_nm])
}

fn arc_arc_crossing([center1_lat_deg, center1_lon_deg, radius1_nm, center2_lat_deg, center2_lon_deg, radius2_nm]: [f64; 6]) -> Result<[f64; 4], Error> {
    super::arc_arc_crossing(center1_lat_deg, center1_lon_deg, radius1_nm, center2_lat_deg, center2_lon_deg, radius2_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.latitude2_deg, answer.longitude2_deg])
}

fn arc_tangents([point_lat_deg, point_lon_deg, center_lat_deg, center_lon_deg, radius_nm]: [f64; 5]) -> Result<[f64; 6], Error> {
    super::arc_tangents(point_lat_deg, point_lon_deg, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.course1_deg, answer.latitude2_deg, answer.longitude2_deg, answer.course2_deg])
}

fn arc_length_nm([center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, sweep_deg]: [f64; 5]) -> Result<[f64; 1], Error> {
    super::arc_length_nm(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, sweep_deg).map(|answer| [answer])
}

fn on_arc([center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, sense, point_lat_deg, point_lon_deg, tolerance_nm]: [f64; 9]) -> Result<[f64; 1], Error> {
    if [center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, sense, point_lat_deg, point_lon_deg, tolerance_nm].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::on_arc(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, crate::lead::ArcSense::from_code("sense", sense)?, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer])
}

fn arc_extent([lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm]: [f64; 6]) -> Result<[f64; 8], Error> {
    super::arc_extent(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.abeam1_latitude_deg, answer.abeam1_longitude_deg, answer.latitude2_deg, answer.longitude2_deg, answer.abeam2_latitude_deg, answer.abeam2_longitude_deg])
}

fn cold_temperature_correction_ft([height_ft, temperature_degc, elevation_ft]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::cold_temperature_correction_ft(height_ft, temperature_degc, elevation_ft).map(|answer| [answer])
}

fn cold_temperature_correction_tabulated_ft([height_ft, temperature_degc]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::cold_temperature_correction_tabulated_ft(height_ft, temperature_degc).map(|answer| [answer])
}

fn cold_temperature_correction_rule_ft([height_ft, temperature_degc, elevation_ft]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::cold_temperature_correction_rule_ft(height_ft, temperature_degc, elevation_ft).map(|answer| [answer])
}

fn cold_temperature_correction_exact_ft([height_ft, temperature_degc, elevation_ft]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::cold_temperature_correction_exact_ft(height_ft, temperature_degc, elevation_ft).map(|answer| [answer])
}

fn cross_track([lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg]: [f64; 5]) -> Result<[f64; 5], Error> {
    super::cross_track(lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg).map(|answer| [answer.cross_track_nm, answer.along_track_nm, answer.abeam_latitude_deg, answer.abeam_longitude_deg, answer.abeam_course_deg])
}

fn course_crossing([lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg]: [f64; 6]) -> Result<[f64; 6], Error> {
    super::course_crossing(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.along_first_nm, answer.along_second_nm, answer.first_course_deg, answer.second_course_deg])
}

fn on_course([lat_deg, lon_deg, course_deg, reach, point_lat_deg, point_lon_deg, tolerance_nm]: [f64; 7]) -> Result<[f64; 1], Error> {
    if [lat_deg, lon_deg, course_deg, reach, point_lat_deg, point_lon_deg, tolerance_nm].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::on_course(lat_deg, lon_deg, course_deg, crate::earth::CourseReach::from_code("reach", reach)?, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer])
}

fn on_leg([lat1_deg, lon1_deg, lat2_deg, lon2_deg, point_lat_deg, point_lon_deg, tolerance_nm]: [f64; 7]) -> Result<[f64; 1], Error> {
    super::on_leg(lat1_deg, lon1_deg, lat2_deg, lon2_deg, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer])
}

fn crossover_altitude_ft([cas_kt, mach]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::crossover_altitude_ft(cas_kt, mach).map(|answer| [answer])
}

fn density_altitude_ft([pressure_altitude_ft, temperature_degc]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::density_altitude_ft(pressure_altitude_ft, temperature_degc).map(|answer| [answer])
}

fn density_altitude_rule_ft([pressure_altitude_ft, temperature_degc]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::density_altitude_rule_ft(pressure_altitude_ft, temperature_degc).map(|answer| [answer])
}

fn arc_heading([radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 6]) -> Result<[f64; 7], Error> {
    if [radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 7]);
    }
    super::arc_heading(radial_deg, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.heading_deg, answer.groundspeed_kt, answer.wind_correction_deg, answer.station_off_nose_deg, answer.ahead_of_wing_tip_deg, answer.bank_deg])
}

fn arc_flown([from_radial_deg, to_radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 7]) -> Result<[f64; 3], Error> {
    if [from_radial_deg, to_radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 3]);
    }
    super::arc_flown(from_radial_deg, to_radial_deg, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.angle_deg, answer.distance_nm, answer.time_s])
}

fn arc_chords([from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm]: [f64; 6]) -> Result<[f64; 5], Error> {
    if [from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 5]);
    }
    super::arc_chords(from_radial_deg, to_radial_deg, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, crate::procedure::ChordPlacement::from_code("placement", placement)?, tolerance_nm).map(|answer| [answer.legs, answer.angle_deg, answer.length_nm, answer.distance_at_ends_nm, answer.distance_at_middle_nm])
}

fn arc_chord_leg([from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm, leg, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 10]) -> Result<[f64; 6], Error> {
    if [from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm, leg, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 6]);
    }
    super::arc_chord_leg(from_radial_deg, to_radial_deg, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, crate::procedure::ChordPlacement::from_code("placement", placement)?, tolerance_nm, leg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.from_radial_deg, answer.to_radial_deg, answer.course_deg, answer.heading_deg, answer.groundspeed_kt, answer.time_s])
}

fn arc_regained([radial_deg, distance_nm, arc_radius_nm, sense, correction_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 8]) -> Result<[f64; 6], Error> {
    if [radial_deg, distance_nm, arc_radius_nm, sense, correction_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 6]);
    }
    super::arc_regained(radial_deg, distance_nm, arc_radius_nm, crate::lead::ArcSense::from_code("sense", sense)?, correction_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.heading_deg, answer.distance_nm, answer.time_s, answer.radial_deg, answer.angle_deg])
}

fn arc_least_correction_deg([distance_nm, arc_radius_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::arc_least_correction_deg(distance_nm, arc_radius_nm).map(|answer| [answer])
}

fn rule_arc_correction_deg([distance_nm, arc_radius_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::rule_arc_correction_deg(distance_nm, arc_radius_nm).map(|answer| [answer])
}

fn geodesic_inverse([lat1_deg, lon1_deg, lat2_deg, lon2_deg]: [f64; 4]) -> Result<[f64; 3], Error> {
    super::geodesic_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg).map(|answer| [answer.distance_nm, answer.initial_bearing_deg, answer.final_bearing_deg])
}

fn slant_range_nm([ground_distance_nm, height_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::slant_range_nm(ground_distance_nm, height_ft).map(|answer| [answer])
}

fn geodesic_direct([lat_deg, lon_deg, bearing_deg, distance_nm]: [f64; 4]) -> Result<[f64; 3], Error> {
    super::geodesic_direct(lat_deg, lon_deg, bearing_deg, distance_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.final_bearing_deg])
}

fn ground_distance_nm([slant_range_nm, height_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::ground_distance_nm(slant_range_nm, height_ft).map(|answer| [answer])
}

fn least_dme_nm([height_ft]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::least_dme_nm(height_ft).map(|answer| [answer])
}

fn great_circle_inverse([lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm]: [f64; 5]) -> Result<[f64; 3], Error> {
    super::great_circle_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm).map(|answer| [answer.distance_nm, answer.initial_bearing_deg, answer.final_bearing_deg])
}

fn great_circle_direct([lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm]: [f64; 5]) -> Result<[f64; 3], Error> {
    super::great_circle_direct(lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.final_bearing_deg])
}

fn straight_line([lat1_deg, lon1_deg, elevation_ft, lat2_deg, lon2_deg, altitude_ft]: [f64; 6]) -> Result<[f64; 2], Error> {
    super::straight_line(lat1_deg, lon1_deg, elevation_ft, lat2_deg, lon2_deg, altitude_ft).map(|answer| [answer.slant_range_nm, answer.elevation_angle_deg])
}

fn eas_from_tas_kt([tas_kt, pressure_altitude_ft, isa_deviation_k]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::eas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn tas_from_eas_kt([eas_kt, pressure_altitude_ft, isa_deviation_k]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::tas_from_eas_kt(eas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn eas_from_cas_kt([cas_kt, pressure_altitude_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::eas_from_cas_kt(cas_kt, pressure_altitude_ft).map(|answer| [answer])
}

fn cas_from_eas_kt([eas_kt, pressure_altitude_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::cas_from_eas_kt(eas_kt, pressure_altitude_ft).map(|answer| [answer])
}

fn eas_from_mach_kt([mach, pressure_altitude_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::eas_from_mach_kt(mach, pressure_altitude_ft).map(|answer| [answer])
}

fn mach_from_eas([eas_kt, pressure_altitude_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::mach_from_eas(eas_kt, pressure_altitude_ft).map(|answer| [answer])
}

fn radial_error_across_nm([distance_nm, radial_error_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::radial_error_across_nm(distance_nm, radial_error_deg).map(|answer| [answer])
}

fn dme_error_along_nm([distance_nm, dme_error_nm, height_ft]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::dme_error_along_nm(distance_nm, dme_error_nm, height_ft).map(|answer| [answer])
}

fn fix_of_two_radials([first_radial_deg, first_distance_nm, second_radial_deg, second_distance_nm, first_error_deg, second_error_deg, track_deg]: [f64; 7]) -> Result<[f64; 9], Error> {
    super::fix_of_two_radials(first_radial_deg, first_distance_nm, second_radial_deg, second_distance_nm, first_error_deg, second_error_deg, track_deg).map(|answer| [answer.semi_major_nm, answer.semi_minor_nm, answer.major_axis_deg, answer.north_nm, answer.east_nm, answer.correlation, answer.along_track_nm, answer.across_track_nm, answer.root_mean_square_nm])
}

fn fix_of_radial_and_dme([radial_deg, radial_distance_nm, dme_bearing_deg, dme_distance_nm, radial_error_deg, dme_error_nm, height_ft, track_deg]: [f64; 8]) -> Result<[f64; 9], Error> {
    super::fix_of_radial_and_dme(radial_deg, radial_distance_nm, dme_bearing_deg, dme_distance_nm, radial_error_deg, dme_error_nm, height_ft, track_deg).map(|answer| [answer.semi_major_nm, answer.semi_minor_nm, answer.major_axis_deg, answer.north_nm, answer.east_nm, answer.correlation, answer.along_track_nm, answer.across_track_nm, answer.root_mean_square_nm])
}

fn fix_of_two_dme([first_bearing_deg, first_distance_nm, second_bearing_deg, second_distance_nm, first_error_nm, second_error_nm, first_height_ft, second_height_ft, track_deg]: [f64; 9]) -> Result<[f64; 9], Error> {
    super::fix_of_two_dme(first_bearing_deg, first_distance_nm, second_bearing_deg, second_distance_nm, first_error_nm, second_error_nm, first_height_ft, second_height_ft, track_deg).map(|answer| [answer.semi_major_nm, answer.semi_minor_nm, answer.major_axis_deg, answer.north_nm, answer.east_nm, answer.correlation, answer.along_track_nm, answer.across_track_nm, answer.root_mean_square_nm])
}

fn ellipse_factor([confidence]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::ellipse_factor(confidence).map(|answer| [answer])
}

fn grid_from_true_deg([true_deg, convergence_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::grid_from_true_deg(true_deg, convergence_deg).map(|answer| [answer])
}

fn true_from_grid_deg([grid_deg, convergence_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::true_from_grid_deg(grid_deg, convergence_deg).map(|answer| [answer])
}

fn polar_grid_convergence_deg([lat_deg, lon_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::polar_grid_convergence_deg(lat_deg, lon_deg).map(|answer| [answer])
}

fn lambert_grid_convergence_deg([lon_deg, meridian_lon_deg, parallel1_lat_deg, parallel2_lat_deg]: [f64; 4]) -> Result<[f64; 1], Error> {
    super::lambert_grid_convergence_deg(lon_deg, meridian_lon_deg, parallel1_lat_deg, parallel2_lat_deg).map(|answer| [answer])
}

fn transverse_grid_convergence_deg([lat_deg, lon_deg, meridian_lon_deg]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::transverse_grid_convergence_deg(lat_deg, lon_deg, meridian_lon_deg).map(|answer| [answer])
}

fn utm_meridian_deg([lat_deg, lon_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::utm_meridian_deg(lat_deg, lon_deg).map(|answer| [answer])
}

fn holding_entry([heading_deg, inbound_course_deg, side]: [f64; 3]) -> Result<[f64; 5], Error> {
    if [heading_deg, inbound_course_deg, side].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 5]);
    }
    super::holding_entry(heading_deg, inbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?).map(|answer| [answer.entry, answer.also, answer.to_outbound_deg, answer.to_boundary_deg, answer.first_course_deg])
}

fn holding_timing([altitude_ft, authority]: [f64; 2]) -> Result<[f64; 2], Error> {
    if [altitude_ft, authority].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 2]);
    }
    super::holding_timing(altitude_ft, crate::procedure::TimingAuthority::from_code("authority", authority)?).map(|answer| [answer.timed, answer.time_s])
}

fn holding_speed([altitude_ft, rule]: [f64; 2]) -> Result<[f64; 3], Error> {
    if [altitude_ft, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 3]);
    }
    super::holding_speed(altitude_ft, crate::procedure::HoldingSpeedRule::from_code("rule", rule)?).map(|answer| [answer.indicated_kt, answer.mach, answer.calibrated_kt])
}

fn holding_turn([true_airspeed_kt, rule]: [f64; 2]) -> Result<[f64; 4], Error> {
    if [true_airspeed_kt, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 4]);
    }
    super::holding_turn(true_airspeed_kt, crate::procedure::HoldingBankRule::from_code("rule", rule)?).map(|answer| [answer.bank_deg, answer.turn_rate_deg_per_s, answer.radius_nm, answer.governed_by])
}

fn outbound_end_dme_nm([fix_dme_nm, inbound, before_fix_nm, across_nm, height_ft]: [f64; 5]) -> Result<[f64; 1], Error> {
    if [fix_dme_nm, inbound, before_fix_nm, across_nm, height_ft].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::outbound_end_dme_nm(fix_dme_nm, crate::lead::RadialFlown::from_code("inbound", inbound)?, before_fix_nm, across_nm, height_ft).map(|answer| [answer])
}

fn limiting_dme([fix_dme_nm, inbound, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft]: [f64; 6]) -> Result<[f64; 2], Error> {
    if [fix_dme_nm, inbound, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 2]);
    }
    super::limiting_dme(fix_dme_nm, crate::lead::RadialFlown::from_code("inbound", inbound)?, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft).map(|answer| [answer.limiting_dme_nm, answer.rounded_nm])
}

fn intercept([course_deg, cross_track_nm, intercept_angle_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 9]) -> Result<[f64; 10], Error> {
    super::intercept(course_deg, cross_track_nm, intercept_angle_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.track_deg, answer.heading_deg, answer.groundspeed_kt, answer.distance_nm, answer.time_s, answer.along_nm, answer.lead_nm, answer.distance_to_roll_in_nm, answer.time_to_roll_in_s, answer.cross_track_at_roll_in_nm])
}

fn radial_intercept([radial_deg, distance_nm, wanted_radial_deg, flown, track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 11]) -> Result<[f64; 12], Error> {
    if [radial_deg, distance_nm, wanted_radial_deg, flown, track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 12]);
    }
    super::radial_intercept(radial_deg, distance_nm, wanted_radial_deg, crate::lead::RadialFlown::from_code("flown", flown)?, track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.heading_deg, answer.groundspeed_kt, answer.crossing_distance_nm, answer.distance_to_crossing_nm, answer.lead_nm, answer.time_to_roll_in_s, answer.radial_at_roll_in_deg, answer.distance_at_roll_in_nm, answer.needle_at_roll_in_deg, answer.cross_track_at_roll_in_nm, answer.distance_at_roll_out_nm, answer.turn_duration_s])
}

fn double_angle_intercept([radial_deg, distance_nm, wanted_radial_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 6]) -> Result<[f64; 5], Error> {
    super::double_angle_intercept(radial_deg, distance_nm, wanted_radial_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.heading_deg, answer.distance_nm, answer.time_s, answer.time_to_station_s])
}

fn rule_intercept_angle_deg([off_radial_deg]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::rule_intercept_angle_deg(off_radial_deg).map(|answer| [answer])
}

fn rule_intercept_lead_deg([distance_nm, turn_radius_nm, intercept_angle_deg]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::rule_intercept_lead_deg(distance_nm, turn_radius_nm, intercept_angle_deg).map(|answer| [answer])
}

fn lead_nm([inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 8]) -> Result<[f64; 1], Error> {
    super::lead_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer])
}

fn dme_at_roll_in_nm([inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, height_above_station_ft]: [f64; 9]) -> Result<[f64; 1], Error> {
    super::dme_at_roll_in_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, height_above_station_ft).map(|answer| [answer])
}

fn turn_anticipation_nm([turn_radius_nm, course_change_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::turn_anticipation_nm(turn_radius_nm, course_change_deg).map(|answer| [answer])
}

fn arc_entry_inbound_nm([arc_radius_nm, turn_radius_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::arc_entry_inbound_nm(arc_radius_nm, turn_radius_nm).map(|answer| [answer])
}

fn arc_entry_outbound_nm([arc_radius_nm, turn_radius_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::arc_entry_outbound_nm(arc_radius_nm, turn_radius_nm).map(|answer| [answer])
}

fn lead_radial_inbound_deg([arc_radius_nm, turn_radius_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::lead_radial_inbound_deg(arc_radius_nm, turn_radius_nm).map(|answer| [answer])
}

fn lead_radial_outbound_deg([arc_radius_nm, turn_radius_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::lead_radial_outbound_deg(arc_radius_nm, turn_radius_nm).map(|answer| [answer])
}

fn leg_meaning([leg]: [f64; 1]) -> Result<[f64; 2], Error> {
    if [leg].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 2]);
    }
    super::leg_meaning(crate::procedure::LegCode::from_code("leg", leg)?).map(|answer| [answer.path, answer.end])
}

fn mach_from_cas([cas_kt, pressure_altitude_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::mach_from_cas(cas_kt, pressure_altitude_ft).map(|answer| [answer])
}

fn cas_from_mach_kt([mach, pressure_altitude_ft]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::cas_from_mach_kt(mach, pressure_altitude_ft).map(|answer| [answer])
}

fn tas_from_mach_kt([mach, pressure_altitude_ft, isa_deviation_k]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::tas_from_mach_kt(mach, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn mach_from_tas([tas_kt, pressure_altitude_ft, isa_deviation_k]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::mach_from_tas(tas_kt, pressure_altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn magnetic_field([lat_deg, lon_deg, altitude_ft, decimal_year]: [f64; 4]) -> Result<[f64; 18], Error> {
    super::magnetic_field(lat_deg, lon_deg, altitude_ft, decimal_year).map(|answer| [answer.declination_deg, answer.inclination_deg, answer.horizontal_nt, answer.north_nt, answer.east_nt, answer.down_nt, answer.total_nt, answer.declination_change_deg, answer.inclination_change_deg, answer.horizontal_change_nt, answer.north_change_nt, answer.east_change_nt, answer.down_change_nt, answer.total_change_nt, answer.declination_uncertainty_deg, answer.grid_variation_deg, answer.zone, answer.in_date])
}

fn variation_deg([lat_deg, lon_deg, altitude_ft, decimal_year]: [f64; 4]) -> Result<[f64; 1], Error> {
    super::variation_deg(lat_deg, lon_deg, altitude_ft, decimal_year).map(|answer| [answer])
}

fn decimal_year([year, month, day]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::decimal_year(year, month, day).map(|answer| [answer])
}

fn magnetic_from_true_deg([true_deg, variation_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::magnetic_from_true_deg(true_deg, variation_deg).map(|answer| [answer])
}

fn true_from_magnetic_deg([magnetic_deg, variation_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::true_from_magnetic_deg(magnetic_deg, variation_deg).map(|answer| [answer])
}

fn station_misalignment_deg([station_declination_deg, variation_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::station_misalignment_deg(station_declination_deg, variation_deg).map(|answer| [answer])
}

fn radial_from_true_deg([true_deg, station_declination_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::radial_from_true_deg(true_deg, station_declination_deg).map(|answer| [answer])
}

fn true_from_radial_deg([radial_deg, station_declination_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::true_from_radial_deg(radial_deg, station_declination_deg).map(|answer| [answer])
}

fn offset_point([lat_deg, lon_deg, course_deg, offset_nm, along_nm]: [f64; 5]) -> Result<[f64; 3], Error> {
    super::offset_point(lat_deg, lon_deg, course_deg, offset_nm, along_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.direction_deg])
}

fn offset_cross_track([lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg]: [f64; 6]) -> Result<[f64; 5], Error> {
    super::offset_cross_track(lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg).map(|answer| [answer.cross_track_nm, answer.along_track_nm, answer.abeam_latitude_deg, answer.abeam_longitude_deg, answer.abeam_direction_deg])
}

fn on_offset([lat_deg, lon_deg, course_deg, reach, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm]: [f64; 8]) -> Result<[f64; 1], Error> {
    if [lat_deg, lon_deg, course_deg, reach, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::on_offset(lat_deg, lon_deg, course_deg, crate::earth::CourseReach::from_code("reach", reach)?, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm).map(|answer| [answer])
}

fn offset_course_crossing([lat1_deg, lon1_deg, course1_deg, offset_nm, lat2_deg, lon2_deg, course2_deg]: [f64; 7]) -> Result<[f64; 3], Error> {
    super::offset_course_crossing(lat1_deg, lon1_deg, course1_deg, offset_nm, lat2_deg, lon2_deg, course2_deg).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.along_first_nm])
}

fn offset_offset_crossing([lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm]: [f64; 8]) -> Result<[f64; 4], Error> {
    super::offset_offset_crossing(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg, answer.along_first_nm, answer.along_second_nm])
}

fn offset_arc_crossing([lat_deg, lon_deg, course_deg, offset_nm, center_lat_deg, center_lon_deg, radius_nm]: [f64; 7]) -> Result<[f64; 6], Error> {
    super::offset_arc_crossing(lat_deg, lon_deg, course_deg, offset_nm, center_lat_deg, center_lon_deg, radius_nm).map(|answer| [answer.latitude1_deg, answer.longitude1_deg, answer.along1_nm, answer.latitude2_deg, answer.longitude2_deg, answer.along2_nm])
}

fn isentropic_pressure_ratio([mach]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::isentropic_pressure_ratio(mach).map(|answer| [answer])
}

fn pitot_pressure_ratio([mach]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::pitot_pressure_ratio(mach).map(|answer| [answer])
}

fn impact_pressure_hpa([cas_kt]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::impact_pressure_hpa(cas_kt).map(|answer| [answer])
}

fn cas_from_impact_pressure_kt([impact_pressure_hpa]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::cas_from_impact_pressure_kt(impact_pressure_hpa).map(|answer| [answer])
}

fn procedure_tas_factor([altitude_ft, isa_deviation_k]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::procedure_tas_factor(altitude_ft, isa_deviation_k).map(|answer| [answer])
}

fn procedure_turn_45_180([outbound_course_deg, side, off_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 9]) -> Result<[f64; 9], Error> {
    if [outbound_course_deg, side, off_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 9]);
    }
    super::procedure_turn_45_180(outbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?, off_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.off_track_deg, answer.off_heading_deg, answer.back_heading_deg, answer.straight_nm, answer.least_off_time_s, answer.established_nm, answer.farthest_nm, answer.widest_nm, answer.duration_s])
}

fn procedure_turn_80_260([outbound_course_deg, side, first_turn_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 9]) -> Result<[f64; 7], Error> {
    if [outbound_course_deg, side, first_turn_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 7]);
    }
    super::procedure_turn_80_260(outbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?, first_turn_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.off_heading_deg, answer.across_nm, answer.established_nm, answer.farthest_nm, answer.widest_nm, answer.duration_s, answer.exact_angle_deg])
}

fn cold_temperature_correction_by_method_ft([height_ft, temperature_degc, elevation_ft, method]: [f64; 4]) -> Result<[f64; 1], Error> {
    if [height_ft, temperature_degc, elevation_ft, method].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::cold_temperature_correction_by_method_ft(height_ft, temperature_degc, elevation_ft, crate::air::ColdTemperatureMethod::from_code("method", method)?).map(|answer| [answer])
}

fn procedure_tas_factor_by_method([altitude_ft, isa_deviation_k, method]: [f64; 3]) -> Result<[f64; 1], Error> {
    if [altitude_ft, isa_deviation_k, method].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::procedure_tas_factor_by_method(altitude_ft, isa_deviation_k, crate::air::TasFactorMethod::from_code("method", method)?).map(|answer| [answer])
}

fn standard_atmosphere_by_edition([pressure_altitude_ft, isa_deviation_k, edition]: [f64; 3]) -> Result<[f64; 4], Error> {
    if [pressure_altitude_ft, isa_deviation_k, edition].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 4]);
    }
    super::standard_atmosphere_by_edition(pressure_altitude_ft, isa_deviation_k, crate::air::AtmosphereEdition::from_code("edition", edition)?).map(|answer| [answer.temperature_degc, answer.pressure_hpa, answer.density_kg_per_m3, answer.speed_of_sound_kt])
}

fn published_turn([true_airspeed_kt, bank_deg, constants]: [f64; 3]) -> Result<[f64; 2], Error> {
    if [true_airspeed_kt, bank_deg, constants].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 2]);
    }
    super::published_turn(true_airspeed_kt, bank_deg, crate::turn::TurnConstants::from_code("constants", constants)?).map(|answer| [answer.turn_rate_deg_per_s, answer.radius_nm])
}

fn holding_pattern([inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 10]) -> Result<[f64; 14], Error> {
    if [inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 14]);
    }
    super::holding_pattern(inbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?, crate::procedure::TimedLeg::from_code("timed", timed)?, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.outbound_heading_deg, answer.outbound_correction_deg, answer.inbound_correction_deg, answer.drift_factor, answer.outbound_time_s, answer.outbound_clock_s, answer.inbound_time_s, answer.duration_s, answer.outbound_end_before_fix_nm, answer.outbound_end_across_nm, answer.inbound_leg_nm, answer.length_nm, answer.width_nm, answer.bank_deg])
}

fn holding_pattern_at([since_fix_s, inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 11]) -> Result<[f64; 4], Error> {
    if [since_fix_s, inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 4]);
    }
    super::holding_pattern_at(since_fix_s, inbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?, crate::procedure::TimedLeg::from_code("timed", timed)?, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.bearing_from_fix_deg, answer.distance_nm, answer.heading_deg, answer.bank_deg])
}

fn radio_horizon_nm([aircraft_height_ft, antenna_height_ft, rule]: [f64; 3]) -> Result<[f64; 1], Error> {
    if [aircraft_height_ft, antenna_height_ft, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::radio_horizon_nm(aircraft_height_ft, antenna_height_ft, crate::station::HorizonRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn least_reception_height_ft([ground_distance_nm, antenna_height_ft, rule]: [f64; 3]) -> Result<[f64; 1], Error> {
    if [ground_distance_nm, antenna_height_ft, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::least_reception_height_ft(ground_distance_nm, antenna_height_ft, crate::station::HorizonRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn service_reach_nm([service_class, height_ft, antenna_height_ft]: [f64; 3]) -> Result<[f64; 1], Error> {
    if [service_class, height_ft, antenna_height_ft].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::service_reach_nm(crate::station::ServiceClass::from_code("service_class", service_class)?, height_ft, antenna_height_ft).map(|answer| [answer])
}

fn vor_needle([radial_deg, selected_course_deg, full_scale_deg, abeam_zone_deg]: [f64; 4]) -> Result<[f64; 3], Error> {
    super::vor_needle(radial_deg, selected_course_deg, full_scale_deg, abeam_zone_deg).map(|answer| [answer.deviation_deg, answer.deflection, answer.to_from])
}

fn vor_receiver([station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft, selected_course_deg, full_scale_deg, abeam_zone_deg, reach_nm, cone_half_angle_deg, antenna_height_ft, dme_step_nm]: [f64; 14]) -> Result<[f64; 6], Error> {
    super::vor_receiver(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft, selected_course_deg, full_scale_deg, abeam_zone_deg, reach_nm, cone_half_angle_deg, antenna_height_ft, dme_step_nm).map(|answer| [answer.flag, answer.to_from, answer.deviation_deg, answer.deflection, answer.radial_deg, answer.dme_nm])
}

fn displayed_dme_nm([dme_nm, dme_step_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::displayed_dme_nm(dme_nm, dme_step_nm).map(|answer| [answer])
}

fn cross_track_of_deflection_nm([deflection, distance_nm, full_scale_deg]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::cross_track_of_deflection_nm(deflection, distance_nm, full_scale_deg).map(|answer| [answer])
}

fn deflection_of_cross_track([cross_track_nm, distance_nm, full_scale_deg]: [f64; 3]) -> Result<[f64; 2], Error> {
    super::deflection_of_cross_track(cross_track_nm, distance_nm, full_scale_deg).map(|answer| [answer.deviation_deg, answer.deflection])
}

fn needle_motion([groundspeed_kt, distance_nm, crossing_angle_deg, full_scale_deg]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::needle_motion(groundspeed_kt, distance_nm, crossing_angle_deg, full_scale_deg).map(|answer| [answer.needle_rate_deg_per_s, answer.full_scale_time_s])
}

fn rhumb_inverse([lat1_deg, lon1_deg, lat2_deg, lon2_deg]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::rhumb_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg).map(|answer| [answer.distance_nm, answer.course_deg])
}

fn rhumb_direct([lat_deg, lon_deg, course_deg, distance_nm]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::rhumb_direct(lat_deg, lon_deg, course_deg, distance_nm).map(|answer| [answer.latitude_deg, answer.longitude_deg])
}

fn rhumb_excess([lat1_deg, lon1_deg, lat2_deg, lon2_deg]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::rhumb_excess(lat1_deg, lon1_deg, lat2_deg, lon2_deg).map(|answer| [answer.excess_nm, answer.conversion_angle_deg])
}

fn splay_distance_nm([half_width_nm, angle_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::splay_distance_nm(half_width_nm, angle_deg).map(|answer| [answer])
}

fn route_half_width_nm([distance_nm, containment]: [f64; 2]) -> Result<[f64; 1], Error> {
    if [distance_nm, containment].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::route_half_width_nm(distance_nm, crate::station::Containment::from_code("containment", containment)?).map(|answer| [answer])
}

fn rule_density_altitude_error([pressure_altitude_ft, temperature_degc]: [f64; 2]) -> Result<[f64; 6], Error> {
    super::rule_density_altitude_error(pressure_altitude_ft, temperature_degc).map(|answer| [answer.rule_ft, answer.exact_ft, answer.error_ft, answer.standard_ft, answer.slope_ft, answer.curve_ft])
}

fn rule_pressure_altitude_error([indicated_altitude_ft, altimeter_setting_hpa]: [f64; 2]) -> Result<[f64; 6], Error> {
    super::rule_pressure_altitude_error(indicated_altitude_ft, altimeter_setting_hpa).map(|answer| [answer.rule_ft, answer.exact_ft, answer.error_ft, answer.datum_ft, answer.slope_ft, answer.curve_ft])
}

fn rule_cold_temperature_error([height_ft, temperature_degc, elevation_ft]: [f64; 3]) -> Result<[f64; 5], Error> {
    super::rule_cold_temperature_error(height_ft, temperature_degc, elevation_ft).map(|answer| [answer.rule_ft, answer.exact_ft, answer.error_ft, answer.share_ft, answer.column_ft])
}

fn rule_arc_entry_lead_nm([arc_radius_nm, turn_radius_nm, flown, rule]: [f64; 4]) -> Result<[f64; 1], Error> {
    if [arc_radius_nm, turn_radius_nm, flown, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::rule_arc_entry_lead_nm(arc_radius_nm, turn_radius_nm, crate::lead::RadialFlown::from_code("flown", flown)?, crate::rules::ArcEntryRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn rule_arc_entry_lead_error([arc_radius_nm, turn_radius_nm, flown, rule]: [f64; 4]) -> Result<[f64; 5], Error> {
    if [arc_radius_nm, turn_radius_nm, flown, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 5]);
    }
    super::rule_arc_entry_lead_error(arc_radius_nm, turn_radius_nm, crate::lead::RadialFlown::from_code("flown", flown)?, crate::rules::ArcEntryRule::from_code("rule", rule)?).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.radius_nm, answer.curve_nm])
}

fn rule_radials_per_mile_error([arc_radius_nm]: [f64; 1]) -> Result<[f64; 3], Error> {
    super::rule_radials_per_mile_error(arc_radius_nm).map(|answer| [answer.rule, answer.exact, answer.error])
}

fn rule_arc_correction_error([distance_nm, arc_radius_nm]: [f64; 2]) -> Result<[f64; 3], Error> {
    super::rule_arc_correction_error(distance_nm, arc_radius_nm).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg])
}

fn rule_intercept_angle_error([off_radial_deg]: [f64; 1]) -> Result<[f64; 5], Error> {
    super::rule_intercept_angle_error(off_radial_deg).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.limits_deg, answer.doubling_deg])
}

fn rule_intercept_lead_error([distance_nm, turn_radius_nm, intercept_angle_deg]: [f64; 3]) -> Result<[f64; 6], Error> {
    super::rule_intercept_lead_error(distance_nm, turn_radius_nm, intercept_angle_deg).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.sixty_deg, answer.share_deg, answer.arc_deg])
}

fn rule_least_dme_error([height_ft]: [f64; 1]) -> Result<[f64; 3], Error> {
    super::rule_least_dme_error(height_ft).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm])
}

fn rule_cone_radius_error([height_ft, cone_half_angle_deg]: [f64; 2]) -> Result<[f64; 5], Error> {
    super::rule_cone_radius_error(height_ft, cone_half_angle_deg).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.mile_nm, answer.angle_nm])
}

fn rule_bank_error([true_airspeed_kt, rule]: [f64; 2]) -> Result<[f64; 3], Error> {
    if [true_airspeed_kt, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 3]);
    }
    super::rule_bank_error(true_airspeed_kt, crate::rules::BankRule::from_code("rule", rule)?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg])
}

fn rule_turn_radius_error([speed_kt, rule]: [f64; 2]) -> Result<[f64; 3], Error> {
    if [speed_kt, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 3]);
    }
    super::rule_turn_radius_error(speed_kt, crate::rules::RadiusRule::from_code("rule", rule)?).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm])
}

fn rule_off_course_error([deflection_dots, distance_nm]: [f64; 2]) -> Result<[f64; 5], Error> {
    super::rule_off_course_error(deflection_dots, distance_nm).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.dot_nm, answer.sine_nm])
}

fn rule_lead_radials_error([arc_radius_nm, turn_radius_nm, flown, rule]: [f64; 4]) -> Result<[f64; 6], Error> {
    if [arc_radius_nm, turn_radius_nm, flown, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 6]);
    }
    super::rule_lead_radials_error(arc_radius_nm, turn_radius_nm, crate::lead::RadialFlown::from_code("flown", flown)?, crate::rules::ArcLeadRule::from_code("rule", rule)?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.sixty_deg, answer.correction_deg, answer.geometry_deg])
}

fn rule_time_to_station_error([elapsed_s, bearing_change_deg]: [f64; 2]) -> Result<[f64; 5], Error> {
    super::rule_time_to_station_error(elapsed_s, bearing_change_deg).map(|answer| [answer.rule_s, answer.exact_s, answer.error_s, answer.sixty_s, answer.sine_s])
}

fn rule_outbound_correction_error([inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule]: [f64; 10]) -> Result<[f64; 3], Error> {
    if [inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 3]);
    }
    super::rule_outbound_correction_error(inbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, crate::rules::DriftRule::from_code("rule", rule)?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg])
}

fn rule_outbound_time_by_headwind_error([inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 9]) -> Result<[f64; 5], Error> {
    if [inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 5]);
    }
    super::rule_outbound_time_by_headwind_error(inbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.rule_s, answer.exact_s, answer.error_s, answer.knot_s, answer.turns_s])
}

fn rule_outbound_time_error([inbound_course_deg, side, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 10]) -> Result<[f64; 5], Error> {
    if [inbound_course_deg, side, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 5]);
    }
    super::rule_outbound_time_error(inbound_course_deg, crate::procedure::HoldingSide::from_code("side", side)?, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.rule_s, answer.exact_s, answer.error_s, answer.groundspeed_s, answer.heading_s])
}

fn rule_lead_error([inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule]: [f64; 10]) -> Result<[f64; 16], Error> {
    if [inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 16]);
    }
    super::rule_lead_error(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, crate::rules::LeadRule::from_code("rule", rule)?).map(|answer| [answer.rule_lead_nm, answer.exact_lead_nm, answer.lead_error_nm, answer.rule_reading_nm, answer.exact_reading_nm, answer.reading_error_nm, answer.allowance_nm, answer.round_radius_nm, answer.proportion_nm, answer.standard_rate_nm, answer.groundspeed_nm, answer.heading_change_nm, answer.drift_nm, answer.roll_nm, answer.mile_nm, answer.sum_nm])
}

fn rule_lead_flown([inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule, cue, cone_half_angle_deg, allowed_beyond_nm, allowed_short_nm]: [f64; 14]) -> Result<[f64; 7], Error> {
    if [inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule, cue, cone_half_angle_deg, allowed_beyond_nm, allowed_short_nm].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 7]);
    }
    super::rule_lead_flown(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, crate::rules::LeadRule::from_code("rule", rule)?, crate::rules::TurnCue::from_code("cue", cue)?, cone_half_angle_deg, allowed_beyond_nm, allowed_short_nm).map(|answer| [answer.reading_nm, answer.before_station_nm, answer.overshoot_nm, answer.past_station_nm, answer.began_in_cone, answer.ended_in_cone, answer.verdict])
}

fn rule_holds_at_height_ft([inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule]: [f64; 9]) -> Result<[f64; 1], Error> {
    if [inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::rule_holds_at_height_ft(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, crate::rules::LeadRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn rule_outbound_heading_deg([inbound_course_deg, inbound_correction_deg, rule]: [f64; 3]) -> Result<[f64; 1], Error> {
    if [inbound_course_deg, inbound_correction_deg, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::rule_outbound_heading_deg(inbound_course_deg, inbound_correction_deg, crate::rules::DriftRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn rule_outbound_time_s([outbound_time_s, inbound_time_s, wanted_inbound_time_s]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::rule_outbound_time_s(outbound_time_s, inbound_time_s, wanted_inbound_time_s).map(|answer| [answer])
}

fn rule_outbound_time_by_headwind_s([still_air_time_s, outbound_headwind_kt]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::rule_outbound_time_by_headwind_s(still_air_time_s, outbound_headwind_kt).map(|answer| [answer])
}

fn rule_slant_negligible_from_nm([height_ft]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::rule_slant_negligible_from_nm(height_ft).map(|answer| [answer])
}

fn rule_ground_distance_error([slant_range_nm, height_ft]: [f64; 2]) -> Result<[f64; 5], Error> {
    super::rule_ground_distance_error(slant_range_nm, height_ft).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.triangle_nm, answer.curve_nm])
}

fn rule_radio_horizon_error([aircraft_height_ft, antenna_height_ft, rule]: [f64; 3]) -> Result<[f64; 5], Error> {
    if [aircraft_height_ft, antenna_height_ft, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 5]);
    }
    super::rule_radio_horizon_error(aircraft_height_ft, antenna_height_ft, crate::station::HorizonRule::from_code("rule", rule)?).map(|answer| [answer.rule_nm, answer.exact_nm, answer.error_nm, answer.factor_nm, answer.root_nm])
}

fn rule_roll_out_lead_deg([bank_deg, rule]: [f64; 2]) -> Result<[f64; 1], Error> {
    if [bank_deg, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::rule_roll_out_lead_deg(bank_deg, crate::rules::RollOutRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn rule_roll_out_lead_error([true_airspeed_kt, bank_deg, roll_rate_deg_per_s, rule]: [f64; 4]) -> Result<[f64; 5], Error> {
    if [true_airspeed_kt, bank_deg, roll_rate_deg_per_s, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 5]);
    }
    super::rule_roll_out_lead_error(true_airspeed_kt, bank_deg, roll_rate_deg_per_s, crate::rules::RollOutRule::from_code("rule", rule)?).map(|answer| [answer.rule_deg, answer.exact_deg, answer.error_deg, answer.share_deg, answer.tangent_deg])
}

fn rule_lead_nm([groundspeed_kt, course_change_deg, height_above_station_ft]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::rule_lead_nm(groundspeed_kt, course_change_deg, height_above_station_ft).map(|answer| [answer])
}

fn rule_reading_nm([groundspeed_kt, course_change_deg, height_above_station_ft]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::rule_reading_nm(groundspeed_kt, course_change_deg, height_above_station_ft).map(|answer| [answer])
}

fn rule_least_dme_nm([height_ft]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::rule_least_dme_nm(height_ft).map(|answer| [answer])
}

fn rule_cone_radius_nm([height_ft]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::rule_cone_radius_nm(height_ft).map(|answer| [answer])
}

fn rule_bank_deg([true_airspeed_kt, rule]: [f64; 2]) -> Result<[f64; 1], Error> {
    if [true_airspeed_kt, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::rule_bank_deg(true_airspeed_kt, crate::rules::BankRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn rule_turn_radius_nm([speed_kt, rule]: [f64; 2]) -> Result<[f64; 1], Error> {
    if [speed_kt, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::rule_turn_radius_nm(speed_kt, crate::rules::RadiusRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn rule_radials_per_mile([arc_radius_nm]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::rule_radials_per_mile(arc_radius_nm).map(|answer| [answer])
}

fn rule_lead_radials_deg([arc_radius_nm, turn_radius_nm, flown, rule]: [f64; 4]) -> Result<[f64; 1], Error> {
    if [arc_radius_nm, turn_radius_nm, flown, rule].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::rule_lead_radials_deg(arc_radius_nm, turn_radius_nm, crate::lead::RadialFlown::from_code("flown", flown)?, crate::rules::ArcLeadRule::from_code("rule", rule)?).map(|answer| [answer])
}

fn rule_off_course_nm([deflection_dots, distance_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::rule_off_course_nm(deflection_dots, distance_nm).map(|answer| [answer])
}

fn observe([station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft]: [f64; 7]) -> Result<[f64; 4], Error> {
    super::observe(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft).map(|answer| [answer.radial_deg, answer.dme_nm, answer.ground_distance_nm, answer.elevation_angle_deg])
}

fn cone_radius_nm([height_ft, cone_half_angle_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::cone_radius_nm(height_ft, cone_half_angle_deg).map(|answer| [answer])
}

fn successive_turns([inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, first_passage, second_passage, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 12]) -> Result<[f64; 10], Error> {
    if [inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, first_passage, second_passage, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 10]);
    }
    super::successive_turns(inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, crate::procedure::Passage::from_code("first_passage", first_passage)?, crate::procedure::Passage::from_code("second_passage", second_passage)?, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.past_first_nm, answer.before_second_nm, answer.spare_nm, answer.straight_time_s, answer.largest_true_airspeed_kt, answer.largest_groundspeed_kt, answer.bank_needed_deg, answer.crossing_past_first_nm, answer.crossing_before_second_nm, answer.crossing_lead_nm])
}

fn stabilization_distance_nm([passage, course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg]: [f64; 6]) -> Result<[f64; 1], Error> {
    if [passage, course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::stabilization_distance_nm(crate::procedure::Passage::from_code("passage", passage)?, course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg).map(|answer| [answer])
}

fn tangent_turn([lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm]: [f64; 7]) -> Result<[f64; 10], Error> {
    super::tangent_turn(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm).map(|answer| [answer.center_latitude_deg, answer.center_longitude_deg, answer.begin_latitude_deg, answer.begin_longitude_deg, answer.end_latitude_deg, answer.end_longitude_deg, answer.begin_bearing_deg, answer.end_bearing_deg, answer.length_nm, answer.side])
}

fn tangent_turn_between_legs([lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm]: [f64; 7]) -> Result<[f64; 10], Error> {
    super::tangent_turn_between_legs(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm).map(|answer| [answer.center_latitude_deg, answer.center_longitude_deg, answer.begin_latitude_deg, answer.begin_longitude_deg, answer.end_latitude_deg, answer.end_longitude_deg, answer.begin_bearing_deg, answer.end_bearing_deg, answer.length_nm, answer.side])
}

fn offset_tangent_turn([lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, radius_nm]: [f64; 9]) -> Result<[f64; 10], Error> {
    super::offset_tangent_turn(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, radius_nm).map(|answer| [answer.center_latitude_deg, answer.center_longitude_deg, answer.begin_latitude_deg, answer.begin_longitude_deg, answer.end_latitude_deg, answer.end_longitude_deg, answer.begin_bearing_deg, answer.end_bearing_deg, answer.length_nm, answer.side])
}

fn time_to_fly_s([distance_nm, groundspeed_kt]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::time_to_fly_s(distance_nm, groundspeed_kt).map(|answer| [answer])
}

fn distance_flown_nm([groundspeed_kt, elapsed_s]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::distance_flown_nm(groundspeed_kt, elapsed_s).map(|answer| [answer])
}

fn groundspeed_from_time_kt([distance_nm, elapsed_s]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::groundspeed_from_time_kt(distance_nm, elapsed_s).map(|answer| [answer])
}

fn time_between_fixes_s([lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt]: [f64; 5]) -> Result<[f64; 1], Error> {
    super::time_between_fixes_s(lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt).map(|answer| [answer])
}

fn station_by_bearing_change([elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg]: [f64; 4]) -> Result<[f64; 3], Error> {
    super::station_by_bearing_change(elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg).map(|answer| [answer.distance_nm, answer.time_s, answer.distance_before_nm])
}

fn time_to_station_rule_s([elapsed_s, bearing_change_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::time_to_station_rule_s(elapsed_s, bearing_change_deg).map(|answer| [answer])
}

fn total_temperature_degc([temperature_degc, mach, recovery_factor]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::total_temperature_degc(temperature_degc, mach, recovery_factor).map(|answer| [answer])
}

fn static_temperature_degc([total_temperature_degc, mach, recovery_factor]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::static_temperature_degc(total_temperature_degc, mach, recovery_factor).map(|answer| [answer])
}

fn transition_level_ft([transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft]: [f64; 4]) -> Result<[f64; 1], Error> {
    super::transition_level_ft(transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft).map(|answer| [answer])
}

fn true_altitude_ft([pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]: [f64; 4]) -> Result<[f64; 1], Error> {
    super::true_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k).map(|answer| [answer])
}

fn height_above_station_ft([pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]: [f64; 4]) -> Result<[f64; 1], Error> {
    super::height_above_station_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k).map(|answer| [answer])
}

fn pressure_altitude_at_true_altitude_ft([true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k]: [f64; 4]) -> Result<[f64; 1], Error> {
    super::pressure_altitude_at_true_altitude_ft(true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k).map(|answer| [answer])
}

fn turn_radius_nm([true_airspeed_kt, bank_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::turn_radius_nm(true_airspeed_kt, bank_deg).map(|answer| [answer])
}

fn turn_rate_deg_per_s([true_airspeed_kt, bank_deg]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::turn_rate_deg_per_s(true_airspeed_kt, bank_deg).map(|answer| [answer])
}

fn bank_for_rate_deg([true_airspeed_kt, turn_rate_deg_per_s]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::bank_for_rate_deg(true_airspeed_kt, turn_rate_deg_per_s).map(|answer| [answer])
}

fn bank_for_radius_deg([true_airspeed_kt, turn_radius_nm]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::bank_for_radius_deg(true_airspeed_kt, turn_radius_nm).map(|answer| [answer])
}

fn radius_at_rate_nm([true_airspeed_kt, turn_rate_deg_per_s]: [f64; 2]) -> Result<[f64; 1], Error> {
    super::radius_at_rate_nm(true_airspeed_kt, turn_rate_deg_per_s).map(|answer| [answer])
}

fn load_factor([bank_deg]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::load_factor(bank_deg).map(|answer| [answer])
}

fn bank_for_load_factor_deg([load_factor]: [f64; 1]) -> Result<[f64; 1], Error> {
    super::bank_for_load_factor_deg(load_factor).map(|answer| [answer])
}

fn limited_turn([true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s]: [f64; 3]) -> Result<[f64; 4], Error> {
    super::limited_turn(true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s).map(|answer| [answer.bank_deg, answer.turn_rate_deg_per_s, answer.radius_nm, answer.governed_by])
}

fn rolled_turn([true_airspeed_kt, heading_change_deg, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s]: [f64; 5]) -> Result<[f64; 6], Error> {
    super::rolled_turn(true_airspeed_kt, heading_change_deg, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s).map(|answer| [answer.bank_deg, answer.duration_s, answer.roll_duration_s, answer.advance_nm, answer.transfer_nm, answer.governed_by])
}

fn icao_wind_kt([altitude_ft, units]: [f64; 2]) -> Result<[f64; 1], Error> {
    if [altitude_ft, units].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::icao_wind_kt(altitude_ft, crate::procedure::DesignUnits::from_code("units", units)?).map(|answer| [answer])
}

fn turn_wind_effect_nm([angle_deg, turn_rate_deg_per_s, wind_speed_kt]: [f64; 3]) -> Result<[f64; 1], Error> {
    super::turn_wind_effect_nm(angle_deg, turn_rate_deg_per_s, wind_speed_kt).map(|answer| [answer])
}

fn base_turn_template([true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm]: [f64; 4]) -> Result<[f64; 3], Error> {
    super::base_turn_template(true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm).map(|answer| [answer.leg_nm, answer.nearest_nm, answer.farthest_nm])
}

fn base_turn_sector_nm([true_airspeed_kt, outbound_time_s, units]: [f64; 3]) -> Result<[f64; 1], Error> {
    if [true_airspeed_kt, outbound_time_s, units].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 1]);
    }
    super::base_turn_sector_nm(true_airspeed_kt, outbound_time_s, crate::procedure::DesignUnits::from_code("units", units)?).map(|answer| [answer])
}

fn wind_triangle([course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::wind_triangle(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.heading_deg, answer.groundspeed_kt])
}

fn wind_correction_deg([course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 4]) -> Result<[f64; 1], Error> {
    super::wind_correction_deg(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer])
}

fn track_and_groundspeed([heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 4]) -> Result<[f64; 3], Error> {
    super::track_and_groundspeed(heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.track_deg, answer.groundspeed_kt, answer.drift_deg])
}

fn wind_from_track([heading_deg, true_airspeed_kt, track_deg, groundspeed_kt]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::wind_from_track(heading_deg, true_airspeed_kt, track_deg, groundspeed_kt).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt])
}

fn wind_components([course_deg, wind_from_deg, wind_speed_kt]: [f64; 3]) -> Result<[f64; 2], Error> {
    super::wind_components(course_deg, wind_from_deg, wind_speed_kt).map(|answer| [answer.headwind_kt, answer.crosswind_kt])
}

fn wind_from_components([course_deg, headwind_kt, crosswind_kt]: [f64; 3]) -> Result<[f64; 2], Error> {
    super::wind_from_components(course_deg, headwind_kt, crosswind_kt).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt])
}

fn airspeed_for_groundspeed([course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt]: [f64; 4]) -> Result<[f64; 2], Error> {
    super::airspeed_for_groundspeed(course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt).map(|answer| [answer.heading_deg, answer.true_airspeed_kt])
}

fn wind_between_levels([pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt]: [f64; 7]) -> Result<[f64; 2], Error> {
    super::wind_between_levels(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt])
}

fn wind_between_levels_by_method([pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, method]: [f64; 8]) -> Result<[f64; 2], Error> {
    if [pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, method].iter().any(|input: &f64| input.is_nan()) {
        return Ok([f64::NAN; 2]);
    }
    super::wind_between_levels_by_method(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, crate::wind::WindInterpolation::from_code("method", method)?).map(|answer| [answer.wind_from_deg, answer.wind_speed_kt])
}
