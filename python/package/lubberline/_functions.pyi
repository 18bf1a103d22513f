# Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate

# A plain number is an `ArrayLike` too: the first of two overloads that fits is meant.
# mypy: disable-error-code="overload-overlap"

from typing import Any, Generic, Literal, NamedTuple, TypeAlias, TypeVar, overload

import numpy as np
from numpy.typing import ArrayLike, NDArray

from ._call import Number

_T = TypeVar("_T", float, NDArray[np.float64])
_Codes: TypeAlias = list[int] | list[str] | tuple[int, ...] | tuple[str, ...] | NDArray[Any]

__all__ = [
    "AirspeedForGroundspeed",
    "ArcArcCrossing",
    "ArcChordLeg",
    "ArcChords",
    "ArcExtent",
    "ArcFlown",
    "ArcHeading",
    "ArcRegained",
    "ArcTangents",
    "ArcTurn",
    "BaseTurn",
    "BaseTurnTemplate",
    "CourseArcCrossing",
    "CourseCrossing",
    "CrossTrack",
    "DmeDmeTolerances",
    "DoubleAngle",
    "EditionAtmosphere",
    "EntrySector",
    "FixError",
    "GeodesicDirect",
    "GeodesicInverse",
    "GreatCircleDirect",
    "GreatCircleInverse",
    "HoldingPattern",
    "HoldingPoint",
    "HoldingSpeed",
    "HoldingTiming",
    "HoldingTurn",
    "Intercept",
    "LegMeaning",
    "LimitedTurn",
    "LimitingDme",
    "MagneticFieldOutput",
    "NeedleMotion",
    "Observation",
    "OffCourse",
    "OffsetArcCrossing",
    "OffsetCourseCrossing",
    "OffsetCrossTrack",
    "OffsetOffsetCrossing",
    "OffsetPoint",
    "ProcedureTurn",
    "PublishedTurn",
    "RadialError",
    "RadialIntercept",
    "ReverseTurn",
    "RhumbDirect",
    "RhumbExcess",
    "RhumbInverse",
    "RolledTurn",
    "RuleArcCorrectionError",
    "RuleArcEntryLeadError",
    "RuleBankError",
    "RuleColdTemperatureError",
    "RuleConeRadiusError",
    "RuleDensityAltitudeError",
    "RuleGroundDistanceError",
    "RuleInterceptAngleError",
    "RuleInterceptLeadError",
    "RuleLeadError",
    "RuleLeadFlown",
    "RuleLeadRadialsError",
    "RuleLeastDmeError",
    "RuleOffCourseError",
    "RuleOutboundCorrectionError",
    "RuleOutboundTimeByHeadwindError",
    "RuleOutboundTimeError",
    "RulePressureAltitudeError",
    "RuleRadialsPerMileError",
    "RuleRadioHorizonError",
    "RuleRollOutLeadError",
    "RuleTimeToStationError",
    "RuleTurnRadiusError",
    "StandardAtmosphere",
    "StationByBearingChange",
    "StraightLine",
    "SuccessiveTurns",
    "TangentTurn",
    "TrackAndGroundspeed",
    "VorIndication",
    "VorNeedle",
    "WindBetweenLevels",
    "WindComponents",
    "WindFromComponents",
    "WindFromTrack",
    "WindTriangle",
    "airspeed_for_groundspeed",
    "altimeter_setting_hpa",
    "altimeter_setting_smithsonian_hpa",
    "arc_arc_crossing",
    "arc_chord_leg",
    "arc_chords",
    "arc_entry",
    "arc_entry_inbound_nm",
    "arc_entry_outbound_nm",
    "arc_exit",
    "arc_extent",
    "arc_flown",
    "arc_heading",
    "arc_least_correction_deg",
    "arc_length_nm",
    "arc_regained",
    "arc_tangents",
    "bank_for_load_factor_deg",
    "bank_for_radius_deg",
    "bank_for_rate_deg",
    "base_turn",
    "base_turn_offset_exact_deg",
    "base_turn_on_track",
    "base_turn_sector_nm",
    "base_turn_template",
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
    "course_arc_crossing",
    "course_crossing",
    "cross_track",
    "cross_track_of_deflection_nm",
    "crossover_altitude_ft",
    "decimal_year",
    "deflection_of_cross_track",
    "density_altitude_ft",
    "density_altitude_rule_ft",
    "density_ratio",
    "design_base_turn_offset_deg",
    "displayed_dme_nm",
    "distance_flown_nm",
    "dme_at_roll_in_nm",
    "dme_dme_tolerances",
    "dme_error_along_nm",
    "dme_tolerance_nm",
    "double_angle_intercept",
    "eas_from_cas_kt",
    "eas_from_mach_kt",
    "eas_from_tas_kt",
    "ellipse_factor",
    "fix_of_radial_and_dme",
    "fix_of_two_dme",
    "fix_of_two_radials",
    "geodesic_direct",
    "geodesic_inverse",
    "geometric_altitude_ft",
    "geopotential_altitude_ft",
    "great_circle_direct",
    "great_circle_inverse",
    "grid_from_true_deg",
    "ground_distance_nm",
    "groundspeed_from_time_kt",
    "height_above_station_ft",
    "holding_entry",
    "holding_pattern",
    "holding_pattern_at",
    "holding_speed",
    "holding_timing",
    "holding_turn",
    "icao_wind_kt",
    "impact_pressure_hpa",
    "indicated_altitude_ft",
    "intercept",
    "isa_deviation_k",
    "isentropic_pressure_ratio",
    "lambert_grid_convergence_deg",
    "lead_nm",
    "lead_radial_inbound_deg",
    "lead_radial_outbound_deg",
    "least_dme_nm",
    "least_reception_height_ft",
    "leg_meaning",
    "limited_turn",
    "limiting_dme",
    "load_factor",
    "mach_from_cas",
    "mach_from_eas",
    "mach_from_tas",
    "magnetic_field",
    "magnetic_from_true_deg",
    "needle_motion",
    "observe",
    "offset_arc_crossing",
    "offset_course_crossing",
    "offset_cross_track",
    "offset_offset_crossing",
    "offset_point",
    "offset_tangent_turn",
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
    "procedure_turn_45_180",
    "procedure_turn_80_260",
    "published_turn",
    "radial_error",
    "radial_error_across_nm",
    "radial_from_true_deg",
    "radial_intercept",
    "radial_tolerance_deg",
    "radio_horizon_nm",
    "radius_at_rate_nm",
    "receiver_check_limit_deg",
    "rhumb_direct",
    "rhumb_excess",
    "rhumb_inverse",
    "rolled_turn",
    "route_half_width_nm",
    "rule_arc_correction_deg",
    "rule_arc_correction_error",
    "rule_arc_entry_lead_error",
    "rule_arc_entry_lead_nm",
    "rule_bank_deg",
    "rule_bank_error",
    "rule_cold_temperature_error",
    "rule_cone_radius_error",
    "rule_cone_radius_nm",
    "rule_density_altitude_error",
    "rule_ground_distance_error",
    "rule_holds_at_height_ft",
    "rule_intercept_angle_deg",
    "rule_intercept_angle_error",
    "rule_intercept_lead_deg",
    "rule_intercept_lead_error",
    "rule_lead_error",
    "rule_lead_flown",
    "rule_lead_nm",
    "rule_lead_radials_deg",
    "rule_lead_radials_error",
    "rule_least_dme_error",
    "rule_least_dme_nm",
    "rule_off_course_error",
    "rule_off_course_nm",
    "rule_outbound_correction_error",
    "rule_outbound_heading_deg",
    "rule_outbound_time_by_headwind_error",
    "rule_outbound_time_by_headwind_s",
    "rule_outbound_time_error",
    "rule_outbound_time_s",
    "rule_pressure_altitude_error",
    "rule_radials_per_mile",
    "rule_radials_per_mile_error",
    "rule_radio_horizon_error",
    "rule_reading_nm",
    "rule_roll_out_lead_deg",
    "rule_roll_out_lead_error",
    "rule_slant_negligible_from_nm",
    "rule_time_to_station_error",
    "rule_turn_radius_error",
    "rule_turn_radius_nm",
    "service_reach_nm",
    "slant_range_nm",
    "speed_of_sound_kt",
    "splay_distance_nm",
    "stabilization_distance_nm",
    "standard_atmosphere",
    "standard_atmosphere_by_edition",
    "static_temperature_degc",
    "station_by_bearing_change",
    "station_misalignment_deg",
    "station_pressure_hpa",
    "straight_line",
    "successive_turns",
    "tangent_turn",
    "tangent_turn_between_legs",
    "tas_from_cas_kt",
    "tas_from_eas_kt",
    "tas_from_mach_kt",
    "temperature_ratio",
    "time_between_fixes_s",
    "time_to_fly_s",
    "time_to_station_rule_s",
    "total_temperature_degc",
    "track_and_groundspeed",
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
    "vor_needle",
    "vor_receiver",
    "wind_between_levels",
    "wind_between_levels_by_method",
    "wind_components",
    "wind_correction_deg",
    "wind_from_components",
    "wind_from_track",
    "wind_triangle",
]

@overload
def radial_tolerance_deg(accuracy: Literal["vor_en_route", "vor_tracking", "vor_intersecting", "ndb_intersecting", "vor_alignment"] | int) -> float: ...
@overload
def radial_tolerance_deg(accuracy: Literal["vor_en_route", "vor_tracking", "vor_intersecting", "ndb_intersecting", "vor_alignment"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

class RadialError(NamedTuple, Generic[_T]):
    aggregate_deg: _T
    system_use_deg: _T

@overload
def radial_error(ground_deg: Number, receiver_deg: Number, flight_technical_deg: Number = ..., monitor_deg: Number = ...) -> RadialError[float]: ...
@overload
def radial_error(ground_deg: ArrayLike, receiver_deg: ArrayLike, flight_technical_deg: ArrayLike = ..., monitor_deg: ArrayLike = ..., **kwargs: Any) -> RadialError[NDArray[np.float64]]: ...

@overload
def dme_tolerance_nm(dme_nm: Number, accuracy: Literal["pans_ops", "annex_10", "aim", "since_1989"] | int) -> float: ...
@overload
def dme_tolerance_nm(dme_nm: ArrayLike, accuracy: Literal["pans_ops", "annex_10", "aim", "since_1989"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def receiver_check_limit_deg(check: Literal["test_signal", "ground_checkpoint", "airborne_checkpoint", "airway_centerline", "dual_receivers"] | int) -> float: ...
@overload
def receiver_check_limit_deg(check: Literal["test_signal", "ground_checkpoint", "airborne_checkpoint", "airway_centerline", "dual_receivers"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

class DmeDmeTolerances(NamedTuple, Generic[_T]):
    along_track_nm: _T
    across_track_nm: _T
    half_width_nm: _T

@overload
def dme_dme_tolerances(dme_tolerance_nm: Number, flight_technical_nm: Number, buffer_nm: Number, coverage: Literal["two_stations", "more_stations"] | int = ..., system_nm: Number = ...) -> DmeDmeTolerances[float]: ...
@overload
def dme_dme_tolerances(dme_tolerance_nm: ArrayLike, flight_technical_nm: ArrayLike, buffer_nm: ArrayLike, coverage: Literal["two_stations", "more_stations"] | int | _Codes = ..., system_nm: ArrayLike = ..., **kwargs: Any) -> DmeDmeTolerances[NDArray[np.float64]]: ...

class StandardAtmosphere(NamedTuple, Generic[_T]):
    temperature_degc: _T
    pressure_hpa: _T
    density_kg_per_m3: _T
    speed_of_sound_kt: _T

@overload
def standard_atmosphere(pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> StandardAtmosphere[float]: ...
@overload
def standard_atmosphere(pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> StandardAtmosphere[NDArray[np.float64]]: ...

@overload
def pressure_ratio(pressure_altitude_ft: Number) -> float: ...
@overload
def pressure_ratio(pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def density_ratio(pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def density_ratio(pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def temperature_ratio(pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def temperature_ratio(pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def isa_deviation_k(temperature_degc: Number, pressure_altitude_ft: Number) -> float: ...
@overload
def isa_deviation_k(temperature_degc: ArrayLike, pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def speed_of_sound_kt(temperature_degc: Number) -> float: ...
@overload
def speed_of_sound_kt(temperature_degc: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def pressure_altitude_from_pressure_ft(pressure_hpa: Number) -> float: ...
@overload
def pressure_altitude_from_pressure_ft(pressure_hpa: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def geopotential_altitude_ft(geometric_altitude_ft: Number) -> float: ...
@overload
def geopotential_altitude_ft(geometric_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def geometric_altitude_ft(geopotential_altitude_ft: Number) -> float: ...
@overload
def geometric_altitude_ft(geopotential_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def tas_from_cas_kt(cas_kt: Number, pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def tas_from_cas_kt(cas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cas_from_tas_kt(tas_kt: Number, pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def cas_from_tas_kt(tas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def indicated_altitude_ft(pressure_altitude_ft: Number, altimeter_setting_hpa: Number) -> float: ...
@overload
def indicated_altitude_ft(pressure_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def pressure_altitude_ft(indicated_altitude_ft: Number, altimeter_setting_hpa: Number) -> float: ...
@overload
def pressure_altitude_ft(indicated_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def pressure_altitude_rule_ft(indicated_altitude_ft: Number, altimeter_setting_hpa: Number) -> float: ...
@overload
def pressure_altitude_rule_ft(indicated_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def altimeter_setting_hpa(station_pressure_hpa: Number, elevation_ft: Number) -> float: ...
@overload
def altimeter_setting_hpa(station_pressure_hpa: ArrayLike, elevation_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def altimeter_setting_smithsonian_hpa(station_pressure_hpa: Number, elevation_ft: Number) -> float: ...
@overload
def altimeter_setting_smithsonian_hpa(station_pressure_hpa: ArrayLike, elevation_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def station_pressure_hpa(altimeter_setting_hpa: Number, elevation_ft: Number) -> float: ...
@overload
def station_pressure_hpa(altimeter_setting_hpa: ArrayLike, elevation_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class ArcTurn(NamedTuple, Generic[_T]):
    radial_at_roll_in_deg: _T
    distance_at_roll_in_nm: _T
    radial_at_roll_out_deg: _T
    distance_at_roll_out_nm: _T
    angle_at_station_deg: _T
    heading_change_deg: _T
    duration_s: _T

@overload
def arc_entry(radial_deg: Number, flown: Literal["inbound", "outbound"] | int, arc_radius_nm: Number, sense: Literal["clockwise", "counterclockwise"] | int, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> ArcTurn[float]: ...
@overload
def arc_entry(radial_deg: ArrayLike, flown: Literal["inbound", "outbound"] | int | _Codes, arc_radius_nm: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> ArcTurn[NDArray[np.float64]]: ...

@overload
def arc_exit(radial_deg: Number, flown: Literal["inbound", "outbound"] | int, arc_radius_nm: Number, sense: Literal["clockwise", "counterclockwise"] | int, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> ArcTurn[float]: ...
@overload
def arc_exit(radial_deg: ArrayLike, flown: Literal["inbound", "outbound"] | int | _Codes, arc_radius_nm: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> ArcTurn[NDArray[np.float64]]: ...

@overload
def design_base_turn_offset_deg(true_airspeed_kt: Number, outbound_time_s: Number, units: Literal["non_si", "si"] | int) -> float: ...
@overload
def design_base_turn_offset_deg(true_airspeed_kt: ArrayLike, outbound_time_s: ArrayLike, units: Literal["non_si", "si"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def base_turn_offset_exact_deg(turn_radius_nm: Number, outbound_leg_nm: Number) -> float: ...
@overload
def base_turn_offset_exact_deg(turn_radius_nm: ArrayLike, outbound_leg_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class BaseTurn(NamedTuple, Generic[_T]):
    track_deg: _T
    heading_deg: _T
    offset_deg: _T
    outbound_time_s: _T
    heading_change_deg: _T
    established_nm: _T
    duration_s: _T

@overload
def base_turn(inbound_course_deg: Number, turn_side: Literal["right", "left"] | int, outbound_time_s: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> BaseTurn[float]: ...
@overload
def base_turn(inbound_course_deg: ArrayLike, turn_side: Literal["right", "left"] | int | _Codes, outbound_time_s: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> BaseTurn[NDArray[np.float64]]: ...

@overload
def base_turn_on_track(inbound_course_deg: Number, outbound_track_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> BaseTurn[float]: ...
@overload
def base_turn_on_track(inbound_course_deg: ArrayLike, outbound_track_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> BaseTurn[NDArray[np.float64]]: ...

class CourseArcCrossing(NamedTuple, Generic[_T]):
    latitude1_deg: _T
    longitude1_deg: _T
    along1_nm: _T
    latitude2_deg: _T
    longitude2_deg: _T
    along2_nm: _T

@overload
def course_arc_crossing(lat_deg: Number, lon_deg: Number, course_deg: Number, center_lat_deg: Number, center_lon_deg: Number, radius_nm: Number) -> CourseArcCrossing[float]: ...
@overload
def course_arc_crossing(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, center_lat_deg: ArrayLike, center_lon_deg: ArrayLike, radius_nm: ArrayLike, **kwargs: Any) -> CourseArcCrossing[NDArray[np.float64]]: ...

class ArcArcCrossing(NamedTuple, Generic[_T]):
    latitude1_deg: _T
    longitude1_deg: _T
    latitude2_deg: _T
    longitude2_deg: _T

@overload
def arc_arc_crossing(center1_lat_deg: Number, center1_lon_deg: Number, radius1_nm: Number, center2_lat_deg: Number, center2_lon_deg: Number, radius2_nm: Number) -> ArcArcCrossing[float]: ...
@overload
def arc_arc_crossing(center1_lat_deg: ArrayLike, center1_lon_deg: ArrayLike, radius1_nm: ArrayLike, center2_lat_deg: ArrayLike, center2_lon_deg: ArrayLike, radius2_nm: ArrayLike, **kwargs: Any) -> ArcArcCrossing[NDArray[np.float64]]: ...

class ArcTangents(NamedTuple, Generic[_T]):
    latitude1_deg: _T
    longitude1_deg: _T
    course1_deg: _T
    latitude2_deg: _T
    longitude2_deg: _T
    course2_deg: _T

@overload
def arc_tangents(point_lat_deg: Number, point_lon_deg: Number, center_lat_deg: Number, center_lon_deg: Number, radius_nm: Number) -> ArcTangents[float]: ...
@overload
def arc_tangents(point_lat_deg: ArrayLike, point_lon_deg: ArrayLike, center_lat_deg: ArrayLike, center_lon_deg: ArrayLike, radius_nm: ArrayLike, **kwargs: Any) -> ArcTangents[NDArray[np.float64]]: ...

@overload
def arc_length_nm(center_lat_deg: Number, center_lon_deg: Number, radius_nm: Number, start_bearing_deg: Number, sweep_deg: Number) -> float: ...
@overload
def arc_length_nm(center_lat_deg: ArrayLike, center_lon_deg: ArrayLike, radius_nm: ArrayLike, start_bearing_deg: ArrayLike, sweep_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def on_arc(center_lat_deg: Number, center_lon_deg: Number, radius_nm: Number, start_bearing_deg: Number, end_bearing_deg: Number, sense: Literal["clockwise", "counterclockwise"] | int, point_lat_deg: Number, point_lon_deg: Number, tolerance_nm: Number) -> float: ...
@overload
def on_arc(center_lat_deg: ArrayLike, center_lon_deg: ArrayLike, radius_nm: ArrayLike, start_bearing_deg: ArrayLike, end_bearing_deg: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, point_lat_deg: ArrayLike, point_lon_deg: ArrayLike, tolerance_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class ArcExtent(NamedTuple, Generic[_T]):
    latitude1_deg: _T
    longitude1_deg: _T
    abeam1_latitude_deg: _T
    abeam1_longitude_deg: _T
    latitude2_deg: _T
    longitude2_deg: _T
    abeam2_latitude_deg: _T
    abeam2_longitude_deg: _T

@overload
def arc_extent(lat_deg: Number, lon_deg: Number, course_deg: Number, center_lat_deg: Number, center_lon_deg: Number, radius_nm: Number) -> ArcExtent[float]: ...
@overload
def arc_extent(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, center_lat_deg: ArrayLike, center_lon_deg: ArrayLike, radius_nm: ArrayLike, **kwargs: Any) -> ArcExtent[NDArray[np.float64]]: ...

@overload
def cold_temperature_correction_ft(height_ft: Number, temperature_degc: Number, elevation_ft: Number = ...) -> float: ...
@overload
def cold_temperature_correction_ft(height_ft: ArrayLike, temperature_degc: ArrayLike, elevation_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cold_temperature_correction_tabulated_ft(height_ft: Number, temperature_degc: Number) -> float: ...
@overload
def cold_temperature_correction_tabulated_ft(height_ft: ArrayLike, temperature_degc: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cold_temperature_correction_rule_ft(height_ft: Number, temperature_degc: Number, elevation_ft: Number = ...) -> float: ...
@overload
def cold_temperature_correction_rule_ft(height_ft: ArrayLike, temperature_degc: ArrayLike, elevation_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cold_temperature_correction_exact_ft(height_ft: Number, temperature_degc: Number, elevation_ft: Number = ...) -> float: ...
@overload
def cold_temperature_correction_exact_ft(height_ft: ArrayLike, temperature_degc: ArrayLike, elevation_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class CrossTrack(NamedTuple, Generic[_T]):
    cross_track_nm: _T
    along_track_nm: _T
    abeam_latitude_deg: _T
    abeam_longitude_deg: _T
    abeam_course_deg: _T

@overload
def cross_track(lat_deg: Number, lon_deg: Number, course_deg: Number, point_lat_deg: Number, point_lon_deg: Number) -> CrossTrack[float]: ...
@overload
def cross_track(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, point_lat_deg: ArrayLike, point_lon_deg: ArrayLike, **kwargs: Any) -> CrossTrack[NDArray[np.float64]]: ...

class CourseCrossing(NamedTuple, Generic[_T]):
    latitude_deg: _T
    longitude_deg: _T
    along_first_nm: _T
    along_second_nm: _T
    first_course_deg: _T
    second_course_deg: _T

@overload
def course_crossing(lat1_deg: Number, lon1_deg: Number, course1_deg: Number, lat2_deg: Number, lon2_deg: Number, course2_deg: Number) -> CourseCrossing[float]: ...
@overload
def course_crossing(lat1_deg: ArrayLike, lon1_deg: ArrayLike, course1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, course2_deg: ArrayLike, **kwargs: Any) -> CourseCrossing[NDArray[np.float64]]: ...

@overload
def on_course(lat_deg: Number, lon_deg: Number, course_deg: Number, reach: Literal["onward", "both_ways"] | int, point_lat_deg: Number, point_lon_deg: Number, tolerance_nm: Number) -> float: ...
@overload
def on_course(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, reach: Literal["onward", "both_ways"] | int | _Codes, point_lat_deg: ArrayLike, point_lon_deg: ArrayLike, tolerance_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def on_leg(lat1_deg: Number, lon1_deg: Number, lat2_deg: Number, lon2_deg: Number, point_lat_deg: Number, point_lon_deg: Number, tolerance_nm: Number) -> float: ...
@overload
def on_leg(lat1_deg: ArrayLike, lon1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, point_lat_deg: ArrayLike, point_lon_deg: ArrayLike, tolerance_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def crossover_altitude_ft(cas_kt: Number, mach: Number) -> float: ...
@overload
def crossover_altitude_ft(cas_kt: ArrayLike, mach: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def density_altitude_ft(pressure_altitude_ft: Number, temperature_degc: Number) -> float: ...
@overload
def density_altitude_ft(pressure_altitude_ft: ArrayLike, temperature_degc: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def density_altitude_rule_ft(pressure_altitude_ft: Number, temperature_degc: Number) -> float: ...
@overload
def density_altitude_rule_ft(pressure_altitude_ft: ArrayLike, temperature_degc: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class ArcHeading(NamedTuple, Generic[_T]):
    track_deg: _T
    heading_deg: _T
    groundspeed_kt: _T
    wind_correction_deg: _T
    station_off_nose_deg: _T
    ahead_of_wing_tip_deg: _T
    bank_deg: _T

@overload
def arc_heading(radial_deg: Number, arc_radius_nm: Number, sense: Literal["clockwise", "counterclockwise"] | int, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None) -> ArcHeading[float]: ...
@overload
def arc_heading(radial_deg: ArrayLike, arc_radius_nm: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, **kwargs: Any) -> ArcHeading[NDArray[np.float64]]: ...

class ArcFlown(NamedTuple, Generic[_T]):
    angle_deg: _T
    distance_nm: _T
    time_s: _T

@overload
def arc_flown(from_radial_deg: Number, to_radial_deg: Number, arc_radius_nm: Number, sense: Literal["clockwise", "counterclockwise"] | int, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None) -> ArcFlown[float]: ...
@overload
def arc_flown(from_radial_deg: ArrayLike, to_radial_deg: ArrayLike, arc_radius_nm: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, **kwargs: Any) -> ArcFlown[NDArray[np.float64]]: ...

class ArcChords(NamedTuple, Generic[_T]):
    legs: _T
    angle_deg: _T
    length_nm: _T
    distance_at_ends_nm: _T
    distance_at_middle_nm: _T

@overload
def arc_chords(from_radial_deg: Number, to_radial_deg: Number, arc_radius_nm: Number, sense: Literal["clockwise", "counterclockwise"] | int, placement: Literal["inside", "outside", "balanced"] | int, tolerance_nm: Number) -> ArcChords[float]: ...
@overload
def arc_chords(from_radial_deg: ArrayLike, to_radial_deg: ArrayLike, arc_radius_nm: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, placement: Literal["inside", "outside", "balanced"] | int | _Codes, tolerance_nm: ArrayLike, **kwargs: Any) -> ArcChords[NDArray[np.float64]]: ...

class ArcChordLeg(NamedTuple, Generic[_T]):
    from_radial_deg: _T
    to_radial_deg: _T
    course_deg: _T
    heading_deg: _T
    groundspeed_kt: _T
    time_s: _T

@overload
def arc_chord_leg(from_radial_deg: Number, to_radial_deg: Number, arc_radius_nm: Number, sense: Literal["clockwise", "counterclockwise"] | int, placement: Literal["inside", "outside", "balanced"] | int, tolerance_nm: Number, leg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None) -> ArcChordLeg[float]: ...
@overload
def arc_chord_leg(from_radial_deg: ArrayLike, to_radial_deg: ArrayLike, arc_radius_nm: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, placement: Literal["inside", "outside", "balanced"] | int | _Codes, tolerance_nm: ArrayLike, leg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, **kwargs: Any) -> ArcChordLeg[NDArray[np.float64]]: ...

class ArcRegained(NamedTuple, Generic[_T]):
    track_deg: _T
    heading_deg: _T
    distance_nm: _T
    time_s: _T
    radial_deg: _T
    angle_deg: _T

@overload
def arc_regained(radial_deg: Number, distance_nm: Number, arc_radius_nm: Number, sense: Literal["clockwise", "counterclockwise"] | int, correction_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None) -> ArcRegained[float]: ...
@overload
def arc_regained(radial_deg: ArrayLike, distance_nm: ArrayLike, arc_radius_nm: ArrayLike, sense: Literal["clockwise", "counterclockwise"] | int | _Codes, correction_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, **kwargs: Any) -> ArcRegained[NDArray[np.float64]]: ...

@overload
def arc_least_correction_deg(distance_nm: Number, arc_radius_nm: Number) -> float: ...
@overload
def arc_least_correction_deg(distance_nm: ArrayLike, arc_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_arc_correction_deg(distance_nm: Number, arc_radius_nm: Number) -> float: ...
@overload
def rule_arc_correction_deg(distance_nm: ArrayLike, arc_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class GeodesicInverse(NamedTuple, Generic[_T]):
    distance_nm: _T
    initial_bearing_deg: _T
    final_bearing_deg: _T

@overload
def geodesic_inverse(lat1_deg: Number, lon1_deg: Number, lat2_deg: Number, lon2_deg: Number) -> GeodesicInverse[float]: ...
@overload
def geodesic_inverse(lat1_deg: ArrayLike, lon1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, **kwargs: Any) -> GeodesicInverse[NDArray[np.float64]]: ...

@overload
def slant_range_nm(ground_distance_nm: Number, height_ft: Number) -> float: ...
@overload
def slant_range_nm(ground_distance_nm: ArrayLike, height_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class GeodesicDirect(NamedTuple, Generic[_T]):
    latitude_deg: _T
    longitude_deg: _T
    final_bearing_deg: _T

@overload
def geodesic_direct(lat_deg: Number, lon_deg: Number, bearing_deg: Number, distance_nm: Number) -> GeodesicDirect[float]: ...
@overload
def geodesic_direct(lat_deg: ArrayLike, lon_deg: ArrayLike, bearing_deg: ArrayLike, distance_nm: ArrayLike, **kwargs: Any) -> GeodesicDirect[NDArray[np.float64]]: ...

@overload
def ground_distance_nm(slant_range_nm: Number, height_ft: Number) -> float: ...
@overload
def ground_distance_nm(slant_range_nm: ArrayLike, height_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def least_dme_nm(height_ft: Number) -> float: ...
@overload
def least_dme_nm(height_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class GreatCircleInverse(NamedTuple, Generic[_T]):
    distance_nm: _T
    initial_bearing_deg: _T
    final_bearing_deg: _T

@overload
def great_circle_inverse(lat1_deg: Number, lon1_deg: Number, lat2_deg: Number, lon2_deg: Number, sphere_radius_nm: Number = ...) -> GreatCircleInverse[float]: ...
@overload
def great_circle_inverse(lat1_deg: ArrayLike, lon1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, sphere_radius_nm: ArrayLike = ..., **kwargs: Any) -> GreatCircleInverse[NDArray[np.float64]]: ...

class GreatCircleDirect(NamedTuple, Generic[_T]):
    latitude_deg: _T
    longitude_deg: _T
    final_bearing_deg: _T

@overload
def great_circle_direct(lat_deg: Number, lon_deg: Number, bearing_deg: Number, distance_nm: Number, sphere_radius_nm: Number = ...) -> GreatCircleDirect[float]: ...
@overload
def great_circle_direct(lat_deg: ArrayLike, lon_deg: ArrayLike, bearing_deg: ArrayLike, distance_nm: ArrayLike, sphere_radius_nm: ArrayLike = ..., **kwargs: Any) -> GreatCircleDirect[NDArray[np.float64]]: ...

class StraightLine(NamedTuple, Generic[_T]):
    slant_range_nm: _T
    elevation_angle_deg: _T

@overload
def straight_line(lat1_deg: Number, lon1_deg: Number, elevation_ft: Number, lat2_deg: Number, lon2_deg: Number, altitude_ft: Number) -> StraightLine[float]: ...
@overload
def straight_line(lat1_deg: ArrayLike, lon1_deg: ArrayLike, elevation_ft: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, altitude_ft: ArrayLike, **kwargs: Any) -> StraightLine[NDArray[np.float64]]: ...

@overload
def eas_from_tas_kt(tas_kt: Number, pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def eas_from_tas_kt(tas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def tas_from_eas_kt(eas_kt: Number, pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def tas_from_eas_kt(eas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def eas_from_cas_kt(cas_kt: Number, pressure_altitude_ft: Number) -> float: ...
@overload
def eas_from_cas_kt(cas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cas_from_eas_kt(eas_kt: Number, pressure_altitude_ft: Number) -> float: ...
@overload
def cas_from_eas_kt(eas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def eas_from_mach_kt(mach: Number, pressure_altitude_ft: Number) -> float: ...
@overload
def eas_from_mach_kt(mach: ArrayLike, pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def mach_from_eas(eas_kt: Number, pressure_altitude_ft: Number) -> float: ...
@overload
def mach_from_eas(eas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def radial_error_across_nm(distance_nm: Number, radial_error_deg: Number) -> float: ...
@overload
def radial_error_across_nm(distance_nm: ArrayLike, radial_error_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def dme_error_along_nm(distance_nm: Number, dme_error_nm: Number, height_ft: Number = ...) -> float: ...
@overload
def dme_error_along_nm(distance_nm: ArrayLike, dme_error_nm: ArrayLike, height_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class FixError(NamedTuple, Generic[_T]):
    semi_major_nm: _T
    semi_minor_nm: _T
    major_axis_deg: _T
    north_nm: _T
    east_nm: _T
    correlation: _T
    along_track_nm: _T
    across_track_nm: _T
    root_mean_square_nm: _T

@overload
def fix_of_two_radials(first_radial_deg: Number, first_distance_nm: Number, second_radial_deg: Number, second_distance_nm: Number, first_error_deg: Number, second_error_deg: Number, track_deg: Number = ...) -> FixError[float]: ...
@overload
def fix_of_two_radials(first_radial_deg: ArrayLike, first_distance_nm: ArrayLike, second_radial_deg: ArrayLike, second_distance_nm: ArrayLike, first_error_deg: ArrayLike, second_error_deg: ArrayLike, track_deg: ArrayLike = ..., **kwargs: Any) -> FixError[NDArray[np.float64]]: ...

@overload
def fix_of_radial_and_dme(radial_deg: Number, radial_distance_nm: Number, dme_bearing_deg: Number, dme_distance_nm: Number, radial_error_deg: Number, dme_error_nm: Number, height_ft: Number = ..., track_deg: Number = ...) -> FixError[float]: ...
@overload
def fix_of_radial_and_dme(radial_deg: ArrayLike, radial_distance_nm: ArrayLike, dme_bearing_deg: ArrayLike, dme_distance_nm: ArrayLike, radial_error_deg: ArrayLike, dme_error_nm: ArrayLike, height_ft: ArrayLike = ..., track_deg: ArrayLike = ..., **kwargs: Any) -> FixError[NDArray[np.float64]]: ...

@overload
def fix_of_two_dme(first_bearing_deg: Number, first_distance_nm: Number, second_bearing_deg: Number, second_distance_nm: Number, first_error_nm: Number, second_error_nm: Number, first_height_ft: Number = ..., second_height_ft: Number = ..., track_deg: Number = ...) -> FixError[float]: ...
@overload
def fix_of_two_dme(first_bearing_deg: ArrayLike, first_distance_nm: ArrayLike, second_bearing_deg: ArrayLike, second_distance_nm: ArrayLike, first_error_nm: ArrayLike, second_error_nm: ArrayLike, first_height_ft: ArrayLike = ..., second_height_ft: ArrayLike = ..., track_deg: ArrayLike = ..., **kwargs: Any) -> FixError[NDArray[np.float64]]: ...

@overload
def ellipse_factor(confidence: Number) -> float: ...
@overload
def ellipse_factor(confidence: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def grid_from_true_deg(true_deg: Number, convergence_deg: Number) -> float: ...
@overload
def grid_from_true_deg(true_deg: ArrayLike, convergence_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def true_from_grid_deg(grid_deg: Number, convergence_deg: Number) -> float: ...
@overload
def true_from_grid_deg(grid_deg: ArrayLike, convergence_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def polar_grid_convergence_deg(lat_deg: Number, lon_deg: Number) -> float: ...
@overload
def polar_grid_convergence_deg(lat_deg: ArrayLike, lon_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def lambert_grid_convergence_deg(lon_deg: Number, meridian_lon_deg: Number, parallel1_lat_deg: Number, parallel2_lat_deg: Number) -> float: ...
@overload
def lambert_grid_convergence_deg(lon_deg: ArrayLike, meridian_lon_deg: ArrayLike, parallel1_lat_deg: ArrayLike, parallel2_lat_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def transverse_grid_convergence_deg(lat_deg: Number, lon_deg: Number, meridian_lon_deg: Number) -> float: ...
@overload
def transverse_grid_convergence_deg(lat_deg: ArrayLike, lon_deg: ArrayLike, meridian_lon_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def utm_meridian_deg(lat_deg: Number, lon_deg: Number) -> float: ...
@overload
def utm_meridian_deg(lat_deg: ArrayLike, lon_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class EntrySector(NamedTuple, Generic[_T]):
    entry: _T
    also: _T
    to_outbound_deg: _T
    to_boundary_deg: _T
    first_course_deg: _T

@overload
def holding_entry(heading_deg: Number, inbound_course_deg: Number, side: Literal["right", "left"] | int) -> EntrySector[float]: ...
@overload
def holding_entry(heading_deg: ArrayLike, inbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, **kwargs: Any) -> EntrySector[NDArray[np.float64]]: ...

class HoldingTiming(NamedTuple, Generic[_T]):
    timed: _T
    time_s: _T

@overload
def holding_timing(altitude_ft: Number, authority: Literal["icao", "faa"] | int) -> HoldingTiming[float]: ...
@overload
def holding_timing(altitude_ft: ArrayLike, authority: Literal["icao", "faa"] | int | _Codes, **kwargs: Any) -> HoldingTiming[NDArray[np.float64]]: ...

class HoldingSpeed(NamedTuple, Generic[_T]):
    indicated_kt: _T
    mach: _T
    calibrated_kt: _T

@overload
def holding_speed(altitude_ft: Number, rule: Literal["faa", "faa_air_force", "faa_navy", "icao", "icao_turbulence", "icao_categories_a_b", "canada", "canada_propeller", "canada_jet", "faa_icon", "faa_climb_in", "faa_propeller_nineties", "faa_jet_nineties", "icao_first_edition_propeller", "icao_first_edition_jet", "canada_military", "canada_climb"] | int) -> HoldingSpeed[float]: ...
@overload
def holding_speed(altitude_ft: ArrayLike, rule: Literal["faa", "faa_air_force", "faa_navy", "icao", "icao_turbulence", "icao_categories_a_b", "canada", "canada_propeller", "canada_jet", "faa_icon", "faa_climb_in", "faa_propeller_nineties", "faa_jet_nineties", "icao_first_edition_propeller", "icao_first_edition_jet", "canada_military", "canada_climb"] | int | _Codes, **kwargs: Any) -> HoldingSpeed[NDArray[np.float64]]: ...

class HoldingTurn(NamedTuple, Generic[_T]):
    bank_deg: _T
    turn_rate_deg_per_s: _T
    radius_nm: _T
    governed_by: _T

@overload
def holding_turn(true_airspeed_kt: Number, rule: Literal["icao", "faa", "faa_flight_director"] | int) -> HoldingTurn[float]: ...
@overload
def holding_turn(true_airspeed_kt: ArrayLike, rule: Literal["icao", "faa", "faa_flight_director"] | int | _Codes, **kwargs: Any) -> HoldingTurn[NDArray[np.float64]]: ...

@overload
def outbound_end_dme_nm(fix_dme_nm: Number, inbound: Literal["inbound", "outbound"] | int, before_fix_nm: Number, across_nm: Number, height_ft: Number = ...) -> float: ...
@overload
def outbound_end_dme_nm(fix_dme_nm: ArrayLike, inbound: Literal["inbound", "outbound"] | int | _Codes, before_fix_nm: ArrayLike, across_nm: ArrayLike, height_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class LimitingDme(NamedTuple, Generic[_T]):
    limiting_dme_nm: _T
    rounded_nm: _T

@overload
def limiting_dme(fix_dme_nm: Number, inbound: Literal["inbound", "outbound"] | int, outbound_leg_nm: Number, turn_radius_nm: Number, altitude_ft: Number, station_elevation_ft: Number = ...) -> LimitingDme[float]: ...
@overload
def limiting_dme(fix_dme_nm: ArrayLike, inbound: Literal["inbound", "outbound"] | int | _Codes, outbound_leg_nm: ArrayLike, turn_radius_nm: ArrayLike, altitude_ft: ArrayLike, station_elevation_ft: ArrayLike = ..., **kwargs: Any) -> LimitingDme[NDArray[np.float64]]: ...

class Intercept(NamedTuple, Generic[_T]):
    track_deg: _T
    heading_deg: _T
    groundspeed_kt: _T
    distance_nm: _T
    time_s: _T
    along_nm: _T
    lead_nm: _T
    distance_to_roll_in_nm: _T
    time_to_roll_in_s: _T
    cross_track_at_roll_in_nm: _T

@overload
def intercept(course_deg: Number, cross_track_nm: Number, intercept_angle_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> Intercept[float]: ...
@overload
def intercept(course_deg: ArrayLike, cross_track_nm: ArrayLike, intercept_angle_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> Intercept[NDArray[np.float64]]: ...

class RadialIntercept(NamedTuple, Generic[_T]):
    heading_deg: _T
    groundspeed_kt: _T
    crossing_distance_nm: _T
    distance_to_crossing_nm: _T
    lead_nm: _T
    time_to_roll_in_s: _T
    radial_at_roll_in_deg: _T
    distance_at_roll_in_nm: _T
    needle_at_roll_in_deg: _T
    cross_track_at_roll_in_nm: _T
    distance_at_roll_out_nm: _T
    turn_duration_s: _T

@overload
def radial_intercept(radial_deg: Number, distance_nm: Number, wanted_radial_deg: Number, flown: Literal["inbound", "outbound"] | int, track_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> RadialIntercept[float]: ...
@overload
def radial_intercept(radial_deg: ArrayLike, distance_nm: ArrayLike, wanted_radial_deg: ArrayLike, flown: Literal["inbound", "outbound"] | int | _Codes, track_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> RadialIntercept[NDArray[np.float64]]: ...

class DoubleAngle(NamedTuple, Generic[_T]):
    track_deg: _T
    heading_deg: _T
    distance_nm: _T
    time_s: _T
    time_to_station_s: _T

@overload
def double_angle_intercept(radial_deg: Number, distance_nm: Number, wanted_radial_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None) -> DoubleAngle[float]: ...
@overload
def double_angle_intercept(radial_deg: ArrayLike, distance_nm: ArrayLike, wanted_radial_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, **kwargs: Any) -> DoubleAngle[NDArray[np.float64]]: ...

@overload
def rule_intercept_angle_deg(off_radial_deg: Number) -> float: ...
@overload
def rule_intercept_angle_deg(off_radial_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_intercept_lead_deg(distance_nm: Number, turn_radius_nm: Number, intercept_angle_deg: Number = ...) -> float: ...
@overload
def rule_intercept_lead_deg(distance_nm: ArrayLike, turn_radius_nm: ArrayLike, intercept_angle_deg: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def lead_nm(inbound_course_deg: Number, outbound_course_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> float: ...
@overload
def lead_nm(inbound_course_deg: ArrayLike, outbound_course_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def dme_at_roll_in_nm(inbound_course_deg: Number, outbound_course_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ..., height_above_station_ft: Number = ...) -> float: ...
@overload
def dme_at_roll_in_nm(inbound_course_deg: ArrayLike, outbound_course_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., height_above_station_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def turn_anticipation_nm(turn_radius_nm: Number, course_change_deg: Number) -> float: ...
@overload
def turn_anticipation_nm(turn_radius_nm: ArrayLike, course_change_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def arc_entry_inbound_nm(arc_radius_nm: Number, turn_radius_nm: Number) -> float: ...
@overload
def arc_entry_inbound_nm(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def arc_entry_outbound_nm(arc_radius_nm: Number, turn_radius_nm: Number) -> float: ...
@overload
def arc_entry_outbound_nm(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def lead_radial_inbound_deg(arc_radius_nm: Number, turn_radius_nm: Number) -> float: ...
@overload
def lead_radial_inbound_deg(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def lead_radial_outbound_deg(arc_radius_nm: Number, turn_radius_nm: Number) -> float: ...
@overload
def lead_radial_outbound_deg(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class LegMeaning(NamedTuple, Generic[_T]):
    path: _T
    end: _T

@overload
def leg_meaning(leg: Literal["IF", "TF", "CF", "DF", "AF", "RF", "FA", "FC", "FD", "FM", "CA", "CD", "CI", "CR", "VA", "VD", "VI", "VM", "VR", "HA", "HF", "HM", "PI"] | int) -> LegMeaning[float]: ...
@overload
def leg_meaning(leg: Literal["IF", "TF", "CF", "DF", "AF", "RF", "FA", "FC", "FD", "FM", "CA", "CD", "CI", "CR", "VA", "VD", "VI", "VM", "VR", "HA", "HF", "HM", "PI"] | int | _Codes, **kwargs: Any) -> LegMeaning[NDArray[np.float64]]: ...

@overload
def mach_from_cas(cas_kt: Number, pressure_altitude_ft: Number) -> float: ...
@overload
def mach_from_cas(cas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cas_from_mach_kt(mach: Number, pressure_altitude_ft: Number) -> float: ...
@overload
def cas_from_mach_kt(mach: ArrayLike, pressure_altitude_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def tas_from_mach_kt(mach: Number, pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def tas_from_mach_kt(mach: ArrayLike, pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def mach_from_tas(tas_kt: Number, pressure_altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def mach_from_tas(tas_kt: ArrayLike, pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class MagneticFieldOutput(NamedTuple, Generic[_T]):
    declination_deg: _T
    inclination_deg: _T
    horizontal_nt: _T
    north_nt: _T
    east_nt: _T
    down_nt: _T
    total_nt: _T
    declination_change_deg: _T
    inclination_change_deg: _T
    horizontal_change_nt: _T
    north_change_nt: _T
    east_change_nt: _T
    down_change_nt: _T
    total_change_nt: _T
    declination_uncertainty_deg: _T
    grid_variation_deg: _T
    zone: _T
    in_date: _T

@overload
def magnetic_field(lat_deg: Number, lon_deg: Number, altitude_ft: Number, decimal_year: Number) -> MagneticFieldOutput[float]: ...
@overload
def magnetic_field(lat_deg: ArrayLike, lon_deg: ArrayLike, altitude_ft: ArrayLike, decimal_year: ArrayLike, **kwargs: Any) -> MagneticFieldOutput[NDArray[np.float64]]: ...

@overload
def variation_deg(lat_deg: Number, lon_deg: Number, altitude_ft: Number, decimal_year: Number) -> float: ...
@overload
def variation_deg(lat_deg: ArrayLike, lon_deg: ArrayLike, altitude_ft: ArrayLike, decimal_year: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def decimal_year(year: Number, month: Number, day: Number) -> float: ...
@overload
def decimal_year(year: ArrayLike, month: ArrayLike, day: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def magnetic_from_true_deg(true_deg: Number, variation_deg: Number) -> float: ...
@overload
def magnetic_from_true_deg(true_deg: ArrayLike, variation_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def true_from_magnetic_deg(magnetic_deg: Number, variation_deg: Number) -> float: ...
@overload
def true_from_magnetic_deg(magnetic_deg: ArrayLike, variation_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def station_misalignment_deg(station_declination_deg: Number, variation_deg: Number) -> float: ...
@overload
def station_misalignment_deg(station_declination_deg: ArrayLike, variation_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def radial_from_true_deg(true_deg: Number, station_declination_deg: Number) -> float: ...
@overload
def radial_from_true_deg(true_deg: ArrayLike, station_declination_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def true_from_radial_deg(radial_deg: Number, station_declination_deg: Number) -> float: ...
@overload
def true_from_radial_deg(radial_deg: ArrayLike, station_declination_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class OffsetPoint(NamedTuple, Generic[_T]):
    latitude_deg: _T
    longitude_deg: _T
    direction_deg: _T

@overload
def offset_point(lat_deg: Number, lon_deg: Number, course_deg: Number, offset_nm: Number, along_nm: Number) -> OffsetPoint[float]: ...
@overload
def offset_point(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, offset_nm: ArrayLike, along_nm: ArrayLike, **kwargs: Any) -> OffsetPoint[NDArray[np.float64]]: ...

class OffsetCrossTrack(NamedTuple, Generic[_T]):
    cross_track_nm: _T
    along_track_nm: _T
    abeam_latitude_deg: _T
    abeam_longitude_deg: _T
    abeam_direction_deg: _T

@overload
def offset_cross_track(lat_deg: Number, lon_deg: Number, course_deg: Number, offset_nm: Number, point_lat_deg: Number, point_lon_deg: Number) -> OffsetCrossTrack[float]: ...
@overload
def offset_cross_track(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, offset_nm: ArrayLike, point_lat_deg: ArrayLike, point_lon_deg: ArrayLike, **kwargs: Any) -> OffsetCrossTrack[NDArray[np.float64]]: ...

@overload
def on_offset(lat_deg: Number, lon_deg: Number, course_deg: Number, reach: Literal["onward", "both_ways"] | int, offset_nm: Number, point_lat_deg: Number, point_lon_deg: Number, tolerance_nm: Number) -> float: ...
@overload
def on_offset(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, reach: Literal["onward", "both_ways"] | int | _Codes, offset_nm: ArrayLike, point_lat_deg: ArrayLike, point_lon_deg: ArrayLike, tolerance_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class OffsetCourseCrossing(NamedTuple, Generic[_T]):
    latitude_deg: _T
    longitude_deg: _T
    along_first_nm: _T

@overload
def offset_course_crossing(lat1_deg: Number, lon1_deg: Number, course1_deg: Number, offset_nm: Number, lat2_deg: Number, lon2_deg: Number, course2_deg: Number) -> OffsetCourseCrossing[float]: ...
@overload
def offset_course_crossing(lat1_deg: ArrayLike, lon1_deg: ArrayLike, course1_deg: ArrayLike, offset_nm: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, course2_deg: ArrayLike, **kwargs: Any) -> OffsetCourseCrossing[NDArray[np.float64]]: ...

class OffsetOffsetCrossing(NamedTuple, Generic[_T]):
    latitude_deg: _T
    longitude_deg: _T
    along_first_nm: _T
    along_second_nm: _T

@overload
def offset_offset_crossing(lat1_deg: Number, lon1_deg: Number, course1_deg: Number, offset1_nm: Number, lat2_deg: Number, lon2_deg: Number, course2_deg: Number, offset2_nm: Number) -> OffsetOffsetCrossing[float]: ...
@overload
def offset_offset_crossing(lat1_deg: ArrayLike, lon1_deg: ArrayLike, course1_deg: ArrayLike, offset1_nm: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, course2_deg: ArrayLike, offset2_nm: ArrayLike, **kwargs: Any) -> OffsetOffsetCrossing[NDArray[np.float64]]: ...

class OffsetArcCrossing(NamedTuple, Generic[_T]):
    latitude1_deg: _T
    longitude1_deg: _T
    along1_nm: _T
    latitude2_deg: _T
    longitude2_deg: _T
    along2_nm: _T

@overload
def offset_arc_crossing(lat_deg: Number, lon_deg: Number, course_deg: Number, offset_nm: Number, center_lat_deg: Number, center_lon_deg: Number, radius_nm: Number) -> OffsetArcCrossing[float]: ...
@overload
def offset_arc_crossing(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, offset_nm: ArrayLike, center_lat_deg: ArrayLike, center_lon_deg: ArrayLike, radius_nm: ArrayLike, **kwargs: Any) -> OffsetArcCrossing[NDArray[np.float64]]: ...

@overload
def isentropic_pressure_ratio(mach: Number) -> float: ...
@overload
def isentropic_pressure_ratio(mach: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def pitot_pressure_ratio(mach: Number) -> float: ...
@overload
def pitot_pressure_ratio(mach: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def impact_pressure_hpa(cas_kt: Number) -> float: ...
@overload
def impact_pressure_hpa(cas_kt: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cas_from_impact_pressure_kt(impact_pressure_hpa: Number) -> float: ...
@overload
def cas_from_impact_pressure_kt(impact_pressure_hpa: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def procedure_tas_factor(altitude_ft: Number, isa_deviation_k: Number = ...) -> float: ...
@overload
def procedure_tas_factor(altitude_ft: ArrayLike, isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class ProcedureTurn(NamedTuple, Generic[_T]):
    off_track_deg: _T
    off_heading_deg: _T
    back_heading_deg: _T
    straight_nm: _T
    least_off_time_s: _T
    established_nm: _T
    farthest_nm: _T
    widest_nm: _T
    duration_s: _T

@overload
def procedure_turn_45_180(outbound_course_deg: Number, side: Literal["right", "left"] | int, off_time_s: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> ProcedureTurn[float]: ...
@overload
def procedure_turn_45_180(outbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, off_time_s: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> ProcedureTurn[NDArray[np.float64]]: ...

class ReverseTurn(NamedTuple, Generic[_T]):
    off_heading_deg: _T
    across_nm: _T
    established_nm: _T
    farthest_nm: _T
    widest_nm: _T
    duration_s: _T
    exact_angle_deg: _T

@overload
def procedure_turn_80_260(outbound_course_deg: Number, side: Literal["right", "left"] | int, first_turn_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> ReverseTurn[float]: ...
@overload
def procedure_turn_80_260(outbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, first_turn_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> ReverseTurn[NDArray[np.float64]]: ...

@overload
def cold_temperature_correction_by_method_ft(height_ft: Number, temperature_degc: Number, elevation_ft: Number, method: Literal["formula", "table", "interpolated", "interpolated_nearest_hundred", "interpolated_up_to_hundred", "four_percent", "exact"] | int) -> float: ...
@overload
def cold_temperature_correction_by_method_ft(height_ft: ArrayLike, temperature_degc: ArrayLike, elevation_ft: ArrayLike, method: Literal["formula", "table", "interpolated", "interpolated_nearest_hundred", "interpolated_up_to_hundred", "four_percent", "exact"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def procedure_tas_factor_by_method(altitude_ft: Number, isa_deviation_k: Number, method: Literal["formula", "table_metres", "table_feet"] | int) -> float: ...
@overload
def procedure_tas_factor_by_method(altitude_ft: ArrayLike, isa_deviation_k: ArrayLike, method: Literal["formula", "table_metres", "table_feet"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

class EditionAtmosphere(NamedTuple, Generic[_T]):
    temperature_degc: _T
    pressure_hpa: _T
    density_kg_per_m3: _T
    speed_of_sound_kt: _T

@overload
def standard_atmosphere_by_edition(pressure_altitude_ft: Number, isa_deviation_k: Number, edition: Literal["icao_1993", "united_states_1976"] | int) -> EditionAtmosphere[float]: ...
@overload
def standard_atmosphere_by_edition(pressure_altitude_ft: ArrayLike, isa_deviation_k: ArrayLike, edition: Literal["icao_1993", "united_states_1976"] | int | _Codes, **kwargs: Any) -> EditionAtmosphere[NDArray[np.float64]]: ...

class PublishedTurn(NamedTuple, Generic[_T]):
    turn_rate_deg_per_s: _T
    radius_nm: _T

@overload
def published_turn(true_airspeed_kt: Number, bank_deg: Number, constants: Literal["exact", "pans_ops", "pans_ops_metric", "pans_ops_gravity", "faa_order", "handbook"] | int) -> PublishedTurn[float]: ...
@overload
def published_turn(true_airspeed_kt: ArrayLike, bank_deg: ArrayLike, constants: Literal["exact", "pans_ops", "pans_ops_metric", "pans_ops_gravity", "faa_order", "handbook"] | int | _Codes, **kwargs: Any) -> PublishedTurn[NDArray[np.float64]]: ...

class HoldingPattern(NamedTuple, Generic[_T]):
    outbound_heading_deg: _T
    outbound_correction_deg: _T
    inbound_correction_deg: _T
    drift_factor: _T
    outbound_time_s: _T
    outbound_clock_s: _T
    inbound_time_s: _T
    duration_s: _T
    outbound_end_before_fix_nm: _T
    outbound_end_across_nm: _T
    inbound_leg_nm: _T
    length_nm: _T
    width_nm: _T
    bank_deg: _T

@overload
def holding_pattern(inbound_course_deg: Number, side: Literal["right", "left"] | int, timed: Literal["inbound", "outbound", "outbound_from_level"] | int, time_s: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> HoldingPattern[float]: ...
@overload
def holding_pattern(inbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, timed: Literal["inbound", "outbound", "outbound_from_level"] | int | _Codes, time_s: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> HoldingPattern[NDArray[np.float64]]: ...

class HoldingPoint(NamedTuple, Generic[_T]):
    bearing_from_fix_deg: _T
    distance_nm: _T
    heading_deg: _T
    bank_deg: _T

@overload
def holding_pattern_at(since_fix_s: Number, inbound_course_deg: Number, side: Literal["right", "left"] | int, timed: Literal["inbound", "outbound", "outbound_from_level"] | int, time_s: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> HoldingPoint[float]: ...
@overload
def holding_pattern_at(since_fix_s: ArrayLike, inbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, timed: Literal["inbound", "outbound", "outbound_from_level"] | int | _Codes, time_s: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> HoldingPoint[NDArray[np.float64]]: ...

@overload
def radio_horizon_nm(aircraft_height_ft: Number, antenna_height_ft: Number = ..., rule: Literal["four_thirds", "feet_miles", "metres_kilometres", "five_quarters"] | int = ...) -> float: ...
@overload
def radio_horizon_nm(aircraft_height_ft: ArrayLike, antenna_height_ft: ArrayLike = ..., rule: Literal["four_thirds", "feet_miles", "metres_kilometres", "five_quarters"] | int | _Codes = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def least_reception_height_ft(ground_distance_nm: Number, antenna_height_ft: Number = ..., rule: Literal["four_thirds", "feet_miles", "metres_kilometres", "five_quarters"] | int = ...) -> float: ...
@overload
def least_reception_height_ft(ground_distance_nm: ArrayLike, antenna_height_ft: ArrayLike = ..., rule: Literal["four_thirds", "feet_miles", "metres_kilometres", "five_quarters"] | int | _Codes = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def service_reach_nm(service_class: Literal["terminal", "low", "high", "vor_low", "vor_high", "dme_low", "dme_high", "terminal_above_ground", "low_above_ground", "high_above_ground", "compass_locator", "ndb_mh", "ndb_h", "ndb_hh"] | int, height_ft: Number, antenna_height_ft: Number = ...) -> float: ...
@overload
def service_reach_nm(service_class: Literal["terminal", "low", "high", "vor_low", "vor_high", "dme_low", "dme_high", "terminal_above_ground", "low_above_ground", "high_above_ground", "compass_locator", "ndb_mh", "ndb_h", "ndb_hh"] | int | _Codes, height_ft: ArrayLike, antenna_height_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class VorNeedle(NamedTuple, Generic[_T]):
    deviation_deg: _T
    deflection: _T
    to_from: _T

@overload
def vor_needle(radial_deg: Number, selected_course_deg: Number, full_scale_deg: Number = ..., abeam_zone_deg: Number = ...) -> VorNeedle[float]: ...
@overload
def vor_needle(radial_deg: ArrayLike, selected_course_deg: ArrayLike, full_scale_deg: ArrayLike = ..., abeam_zone_deg: ArrayLike = ..., **kwargs: Any) -> VorNeedle[NDArray[np.float64]]: ...

class VorIndication(NamedTuple, Generic[_T]):
    flag: _T
    to_from: _T
    deviation_deg: _T
    deflection: _T
    radial_deg: _T
    dme_nm: _T

@overload
def vor_receiver(station_latitude_deg: Number, station_longitude_deg: Number, station_elevation_ft: Number, station_declination_deg: Number, latitude_deg: Number, longitude_deg: Number, altitude_ft: Number, selected_course_deg: Number, full_scale_deg: Number = ..., abeam_zone_deg: Number = ..., reach_nm: Number = ..., cone_half_angle_deg: Number = ..., antenna_height_ft: Number = ..., dme_step_nm: Number = ...) -> VorIndication[float]: ...
@overload
def vor_receiver(station_latitude_deg: ArrayLike, station_longitude_deg: ArrayLike, station_elevation_ft: ArrayLike, station_declination_deg: ArrayLike, latitude_deg: ArrayLike, longitude_deg: ArrayLike, altitude_ft: ArrayLike, selected_course_deg: ArrayLike, full_scale_deg: ArrayLike = ..., abeam_zone_deg: ArrayLike = ..., reach_nm: ArrayLike = ..., cone_half_angle_deg: ArrayLike = ..., antenna_height_ft: ArrayLike = ..., dme_step_nm: ArrayLike = ..., **kwargs: Any) -> VorIndication[NDArray[np.float64]]: ...

@overload
def displayed_dme_nm(dme_nm: Number, dme_step_nm: Number = ...) -> float: ...
@overload
def displayed_dme_nm(dme_nm: ArrayLike, dme_step_nm: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def cross_track_of_deflection_nm(deflection: Number, distance_nm: Number, full_scale_deg: Number = ...) -> float: ...
@overload
def cross_track_of_deflection_nm(deflection: ArrayLike, distance_nm: ArrayLike, full_scale_deg: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class OffCourse(NamedTuple, Generic[_T]):
    deviation_deg: _T
    deflection: _T

@overload
def deflection_of_cross_track(cross_track_nm: Number, distance_nm: Number, full_scale_deg: Number = ...) -> OffCourse[float]: ...
@overload
def deflection_of_cross_track(cross_track_nm: ArrayLike, distance_nm: ArrayLike, full_scale_deg: ArrayLike = ..., **kwargs: Any) -> OffCourse[NDArray[np.float64]]: ...

class NeedleMotion(NamedTuple, Generic[_T]):
    needle_rate_deg_per_s: _T
    full_scale_time_s: _T

@overload
def needle_motion(groundspeed_kt: Number, distance_nm: Number, crossing_angle_deg: Number = ..., full_scale_deg: Number = ...) -> NeedleMotion[float]: ...
@overload
def needle_motion(groundspeed_kt: ArrayLike, distance_nm: ArrayLike, crossing_angle_deg: ArrayLike = ..., full_scale_deg: ArrayLike = ..., **kwargs: Any) -> NeedleMotion[NDArray[np.float64]]: ...

class RhumbInverse(NamedTuple, Generic[_T]):
    distance_nm: _T
    course_deg: _T

@overload
def rhumb_inverse(lat1_deg: Number, lon1_deg: Number, lat2_deg: Number, lon2_deg: Number) -> RhumbInverse[float]: ...
@overload
def rhumb_inverse(lat1_deg: ArrayLike, lon1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, **kwargs: Any) -> RhumbInverse[NDArray[np.float64]]: ...

class RhumbDirect(NamedTuple, Generic[_T]):
    latitude_deg: _T
    longitude_deg: _T

@overload
def rhumb_direct(lat_deg: Number, lon_deg: Number, course_deg: Number, distance_nm: Number) -> RhumbDirect[float]: ...
@overload
def rhumb_direct(lat_deg: ArrayLike, lon_deg: ArrayLike, course_deg: ArrayLike, distance_nm: ArrayLike, **kwargs: Any) -> RhumbDirect[NDArray[np.float64]]: ...

class RhumbExcess(NamedTuple, Generic[_T]):
    excess_nm: _T
    conversion_angle_deg: _T

@overload
def rhumb_excess(lat1_deg: Number, lon1_deg: Number, lat2_deg: Number, lon2_deg: Number) -> RhumbExcess[float]: ...
@overload
def rhumb_excess(lat1_deg: ArrayLike, lon1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, **kwargs: Any) -> RhumbExcess[NDArray[np.float64]]: ...

@overload
def splay_distance_nm(half_width_nm: Number, angle_deg: Number) -> float: ...
@overload
def splay_distance_nm(half_width_nm: ArrayLike, angle_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def route_half_width_nm(distance_nm: Number, containment: Literal["percent_95", "percent_96", "percent_97", "percent_98", "percent_99", "percent_99_5"] | int = ...) -> float: ...
@overload
def route_half_width_nm(distance_nm: ArrayLike, containment: Literal["percent_95", "percent_96", "percent_97", "percent_98", "percent_99", "percent_99_5"] | int | _Codes = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class RuleDensityAltitudeError(NamedTuple, Generic[_T]):
    rule_ft: _T
    exact_ft: _T
    error_ft: _T
    standard_ft: _T
    slope_ft: _T
    curve_ft: _T

@overload
def rule_density_altitude_error(pressure_altitude_ft: Number, temperature_degc: Number) -> RuleDensityAltitudeError[float]: ...
@overload
def rule_density_altitude_error(pressure_altitude_ft: ArrayLike, temperature_degc: ArrayLike, **kwargs: Any) -> RuleDensityAltitudeError[NDArray[np.float64]]: ...

class RulePressureAltitudeError(NamedTuple, Generic[_T]):
    rule_ft: _T
    exact_ft: _T
    error_ft: _T
    datum_ft: _T
    slope_ft: _T
    curve_ft: _T

@overload
def rule_pressure_altitude_error(indicated_altitude_ft: Number, altimeter_setting_hpa: Number) -> RulePressureAltitudeError[float]: ...
@overload
def rule_pressure_altitude_error(indicated_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike, **kwargs: Any) -> RulePressureAltitudeError[NDArray[np.float64]]: ...

class RuleColdTemperatureError(NamedTuple, Generic[_T]):
    rule_ft: _T
    exact_ft: _T
    error_ft: _T
    share_ft: _T
    column_ft: _T

@overload
def rule_cold_temperature_error(height_ft: Number, temperature_degc: Number, elevation_ft: Number = ...) -> RuleColdTemperatureError[float]: ...
@overload
def rule_cold_temperature_error(height_ft: ArrayLike, temperature_degc: ArrayLike, elevation_ft: ArrayLike = ..., **kwargs: Any) -> RuleColdTemperatureError[NDArray[np.float64]]: ...

@overload
def rule_arc_entry_lead_nm(arc_radius_nm: Number, turn_radius_nm: Number, flown: Literal["inbound", "outbound"] | int, rule: Literal["radius", "radius_and_half", "half_mile"] | int) -> float: ...
@overload
def rule_arc_entry_lead_nm(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, flown: Literal["inbound", "outbound"] | int | _Codes, rule: Literal["radius", "radius_and_half", "half_mile"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

class RuleArcEntryLeadError(NamedTuple, Generic[_T]):
    rule_nm: _T
    exact_nm: _T
    error_nm: _T
    radius_nm: _T
    curve_nm: _T

@overload
def rule_arc_entry_lead_error(arc_radius_nm: Number, turn_radius_nm: Number, flown: Literal["inbound", "outbound"] | int, rule: Literal["radius", "radius_and_half", "half_mile"] | int) -> RuleArcEntryLeadError[float]: ...
@overload
def rule_arc_entry_lead_error(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, flown: Literal["inbound", "outbound"] | int | _Codes, rule: Literal["radius", "radius_and_half", "half_mile"] | int | _Codes, **kwargs: Any) -> RuleArcEntryLeadError[NDArray[np.float64]]: ...

class RuleRadialsPerMileError(NamedTuple, Generic[_T]):
    rule: _T
    exact: _T
    error: _T

@overload
def rule_radials_per_mile_error(arc_radius_nm: Number) -> RuleRadialsPerMileError[float]: ...
@overload
def rule_radials_per_mile_error(arc_radius_nm: ArrayLike, **kwargs: Any) -> RuleRadialsPerMileError[NDArray[np.float64]]: ...

class RuleArcCorrectionError(NamedTuple, Generic[_T]):
    rule_deg: _T
    exact_deg: _T
    error_deg: _T

@overload
def rule_arc_correction_error(distance_nm: Number, arc_radius_nm: Number) -> RuleArcCorrectionError[float]: ...
@overload
def rule_arc_correction_error(distance_nm: ArrayLike, arc_radius_nm: ArrayLike, **kwargs: Any) -> RuleArcCorrectionError[NDArray[np.float64]]: ...

class RuleInterceptAngleError(NamedTuple, Generic[_T]):
    rule_deg: _T
    exact_deg: _T
    error_deg: _T
    limits_deg: _T
    doubling_deg: _T

@overload
def rule_intercept_angle_error(off_radial_deg: Number) -> RuleInterceptAngleError[float]: ...
@overload
def rule_intercept_angle_error(off_radial_deg: ArrayLike, **kwargs: Any) -> RuleInterceptAngleError[NDArray[np.float64]]: ...

class RuleInterceptLeadError(NamedTuple, Generic[_T]):
    rule_deg: _T
    exact_deg: _T
    error_deg: _T
    sixty_deg: _T
    share_deg: _T
    arc_deg: _T

@overload
def rule_intercept_lead_error(distance_nm: Number, turn_radius_nm: Number, intercept_angle_deg: Number = ...) -> RuleInterceptLeadError[float]: ...
@overload
def rule_intercept_lead_error(distance_nm: ArrayLike, turn_radius_nm: ArrayLike, intercept_angle_deg: ArrayLike = ..., **kwargs: Any) -> RuleInterceptLeadError[NDArray[np.float64]]: ...

class RuleLeastDmeError(NamedTuple, Generic[_T]):
    rule_nm: _T
    exact_nm: _T
    error_nm: _T

@overload
def rule_least_dme_error(height_ft: Number) -> RuleLeastDmeError[float]: ...
@overload
def rule_least_dme_error(height_ft: ArrayLike, **kwargs: Any) -> RuleLeastDmeError[NDArray[np.float64]]: ...

class RuleConeRadiusError(NamedTuple, Generic[_T]):
    rule_nm: _T
    exact_nm: _T
    error_nm: _T
    mile_nm: _T
    angle_nm: _T

@overload
def rule_cone_radius_error(height_ft: Number, cone_half_angle_deg: Number = ...) -> RuleConeRadiusError[float]: ...
@overload
def rule_cone_radius_error(height_ft: ArrayLike, cone_half_angle_deg: ArrayLike = ..., **kwargs: Any) -> RuleConeRadiusError[NDArray[np.float64]]: ...

class RuleBankError(NamedTuple, Generic[_T]):
    rule_deg: _T
    exact_deg: _T
    error_deg: _T

@overload
def rule_bank_error(true_airspeed_kt: Number, rule: Literal["fifteen_percent", "tenth_and_seven", "tenth_and_five", "twenty_percent"] | int) -> RuleBankError[float]: ...
@overload
def rule_bank_error(true_airspeed_kt: ArrayLike, rule: Literal["fifteen_percent", "tenth_and_seven", "tenth_and_five", "twenty_percent"] | int | _Codes, **kwargs: Any) -> RuleBankError[NDArray[np.float64]]: ...

class RuleTurnRadiusError(NamedTuple, Generic[_T]):
    rule_nm: _T
    exact_nm: _T
    error_nm: _T

@overload
def rule_turn_radius_error(speed_kt: Number, rule: Literal["half_percent", "one_percent", "miles_a_minute_less_two", "tenth_of_square"] | int) -> RuleTurnRadiusError[float]: ...
@overload
def rule_turn_radius_error(speed_kt: ArrayLike, rule: Literal["half_percent", "one_percent", "miles_a_minute_less_two", "tenth_of_square"] | int | _Codes, **kwargs: Any) -> RuleTurnRadiusError[NDArray[np.float64]]: ...

class RuleOffCourseError(NamedTuple, Generic[_T]):
    rule_nm: _T
    exact_nm: _T
    error_nm: _T
    dot_nm: _T
    sine_nm: _T

@overload
def rule_off_course_error(deflection_dots: Number, distance_nm: Number) -> RuleOffCourseError[float]: ...
@overload
def rule_off_course_error(deflection_dots: ArrayLike, distance_nm: ArrayLike, **kwargs: Any) -> RuleOffCourseError[NDArray[np.float64]]: ...

class RuleLeadRadialsError(NamedTuple, Generic[_T]):
    rule_deg: _T
    exact_deg: _T
    error_deg: _T
    sixty_deg: _T
    correction_deg: _T
    geometry_deg: _T

@overload
def rule_lead_radials_error(arc_radius_nm: Number, turn_radius_nm: Number, flown: Literal["inbound", "outbound"] | int, rule: Literal["plain", "proportion", "third", "added_miles"] | int) -> RuleLeadRadialsError[float]: ...
@overload
def rule_lead_radials_error(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, flown: Literal["inbound", "outbound"] | int | _Codes, rule: Literal["plain", "proportion", "third", "added_miles"] | int | _Codes, **kwargs: Any) -> RuleLeadRadialsError[NDArray[np.float64]]: ...

class RuleTimeToStationError(NamedTuple, Generic[_T]):
    rule_s: _T
    exact_s: _T
    error_s: _T
    sixty_s: _T
    sine_s: _T

@overload
def rule_time_to_station_error(elapsed_s: Number, bearing_change_deg: Number) -> RuleTimeToStationError[float]: ...
@overload
def rule_time_to_station_error(elapsed_s: ArrayLike, bearing_change_deg: ArrayLike, **kwargs: Any) -> RuleTimeToStationError[NDArray[np.float64]]: ...

class RuleOutboundCorrectionError(NamedTuple, Generic[_T]):
    rule_deg: _T
    exact_deg: _T
    error_deg: _T

@overload
def rule_outbound_correction_error(inbound_course_deg: Number, side: Literal["right", "left"] | int, inbound_time_s: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ..., rule: Literal["double", "triple"] | int = ...) -> RuleOutboundCorrectionError[float]: ...
@overload
def rule_outbound_correction_error(inbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, inbound_time_s: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., rule: Literal["double", "triple"] | int | _Codes = ..., **kwargs: Any) -> RuleOutboundCorrectionError[NDArray[np.float64]]: ...

class RuleOutboundTimeByHeadwindError(NamedTuple, Generic[_T]):
    rule_s: _T
    exact_s: _T
    error_s: _T
    knot_s: _T
    turns_s: _T

@overload
def rule_outbound_time_by_headwind_error(inbound_course_deg: Number, side: Literal["right", "left"] | int, inbound_time_s: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> RuleOutboundTimeByHeadwindError[float]: ...
@overload
def rule_outbound_time_by_headwind_error(inbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, inbound_time_s: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> RuleOutboundTimeByHeadwindError[NDArray[np.float64]]: ...

class RuleOutboundTimeError(NamedTuple, Generic[_T]):
    rule_s: _T
    exact_s: _T
    error_s: _T
    groundspeed_s: _T
    heading_s: _T

@overload
def rule_outbound_time_error(inbound_course_deg: Number, side: Literal["right", "left"] | int, outbound_time_s: Number, wanted_inbound_time_s: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> RuleOutboundTimeError[float]: ...
@overload
def rule_outbound_time_error(inbound_course_deg: ArrayLike, side: Literal["right", "left"] | int | _Codes, outbound_time_s: ArrayLike, wanted_inbound_time_s: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> RuleOutboundTimeError[NDArray[np.float64]]: ...

class RuleLeadError(NamedTuple, Generic[_T]):
    rule_lead_nm: _T
    exact_lead_nm: _T
    lead_error_nm: _T
    rule_reading_nm: _T
    exact_reading_nm: _T
    reading_error_nm: _T
    allowance_nm: _T
    round_radius_nm: _T
    proportion_nm: _T
    standard_rate_nm: _T
    groundspeed_nm: _T
    heading_change_nm: _T
    drift_nm: _T
    roll_nm: _T
    mile_nm: _T
    sum_nm: _T

@overload
def rule_lead_error(inbound_course_deg: Number, outbound_course_deg: Number, true_airspeed_kt: Number, height_above_station_ft: Number = ..., wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ..., rule: Literal["third", "third_and_allowance", "third_and_margin"] | int = ...) -> RuleLeadError[float]: ...
@overload
def rule_lead_error(inbound_course_deg: ArrayLike, outbound_course_deg: ArrayLike, true_airspeed_kt: ArrayLike, height_above_station_ft: ArrayLike = ..., wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., rule: Literal["third", "third_and_allowance", "third_and_margin"] | int | _Codes = ..., **kwargs: Any) -> RuleLeadError[NDArray[np.float64]]: ...

class RuleLeadFlown(NamedTuple, Generic[_T]):
    reading_nm: _T
    before_station_nm: _T
    overshoot_nm: _T
    past_station_nm: _T
    began_in_cone: _T
    ended_in_cone: _T
    verdict: _T

@overload
def rule_lead_flown(inbound_course_deg: Number, outbound_course_deg: Number, true_airspeed_kt: Number, height_above_station_ft: Number = ..., wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ..., rule: Literal["third", "third_and_allowance", "third_and_margin"] | int = ..., cue: Literal["reading", "distance", "exact"] | int = ..., cone_half_angle_deg: Number = ..., allowed_beyond_nm: Number = ..., allowed_short_nm: Number = ...) -> RuleLeadFlown[float]: ...
@overload
def rule_lead_flown(inbound_course_deg: ArrayLike, outbound_course_deg: ArrayLike, true_airspeed_kt: ArrayLike, height_above_station_ft: ArrayLike = ..., wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., rule: Literal["third", "third_and_allowance", "third_and_margin"] | int | _Codes = ..., cue: Literal["reading", "distance", "exact"] | int | _Codes = ..., cone_half_angle_deg: ArrayLike = ..., allowed_beyond_nm: ArrayLike = ..., allowed_short_nm: ArrayLike = ..., **kwargs: Any) -> RuleLeadFlown[NDArray[np.float64]]: ...

@overload
def rule_holds_at_height_ft(inbound_course_deg: Number, outbound_course_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ..., rule: Literal["third", "third_and_allowance", "third_and_margin"] | int = ...) -> float: ...
@overload
def rule_holds_at_height_ft(inbound_course_deg: ArrayLike, outbound_course_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., rule: Literal["third", "third_and_allowance", "third_and_margin"] | int | _Codes = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_outbound_heading_deg(inbound_course_deg: Number, inbound_correction_deg: Number, rule: Literal["double", "triple"] | int) -> float: ...
@overload
def rule_outbound_heading_deg(inbound_course_deg: ArrayLike, inbound_correction_deg: ArrayLike, rule: Literal["double", "triple"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_outbound_time_s(outbound_time_s: Number, inbound_time_s: Number, wanted_inbound_time_s: Number = ...) -> float: ...
@overload
def rule_outbound_time_s(outbound_time_s: ArrayLike, inbound_time_s: ArrayLike, wanted_inbound_time_s: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_outbound_time_by_headwind_s(still_air_time_s: Number, outbound_headwind_kt: Number) -> float: ...
@overload
def rule_outbound_time_by_headwind_s(still_air_time_s: ArrayLike, outbound_headwind_kt: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_slant_negligible_from_nm(height_ft: Number) -> float: ...
@overload
def rule_slant_negligible_from_nm(height_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class RuleGroundDistanceError(NamedTuple, Generic[_T]):
    rule_nm: _T
    exact_nm: _T
    error_nm: _T
    triangle_nm: _T
    curve_nm: _T

@overload
def rule_ground_distance_error(slant_range_nm: Number, height_ft: Number) -> RuleGroundDistanceError[float]: ...
@overload
def rule_ground_distance_error(slant_range_nm: ArrayLike, height_ft: ArrayLike, **kwargs: Any) -> RuleGroundDistanceError[NDArray[np.float64]]: ...

class RuleRadioHorizonError(NamedTuple, Generic[_T]):
    rule_nm: _T
    exact_nm: _T
    error_nm: _T
    factor_nm: _T
    root_nm: _T

@overload
def rule_radio_horizon_error(aircraft_height_ft: Number, antenna_height_ft: Number, rule: Literal["four_thirds", "feet_miles", "metres_kilometres", "five_quarters"] | int) -> RuleRadioHorizonError[float]: ...
@overload
def rule_radio_horizon_error(aircraft_height_ft: ArrayLike, antenna_height_ft: ArrayLike, rule: Literal["four_thirds", "feet_miles", "metres_kilometres", "five_quarters"] | int | _Codes, **kwargs: Any) -> RuleRadioHorizonError[NDArray[np.float64]]: ...

@overload
def rule_roll_out_lead_deg(bank_deg: Number, rule: Literal["third", "half"] | int) -> float: ...
@overload
def rule_roll_out_lead_deg(bank_deg: ArrayLike, rule: Literal["third", "half"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

class RuleRollOutLeadError(NamedTuple, Generic[_T]):
    rule_deg: _T
    exact_deg: _T
    error_deg: _T
    share_deg: _T
    tangent_deg: _T

@overload
def rule_roll_out_lead_error(true_airspeed_kt: Number, bank_deg: Number, roll_rate_deg_per_s: Number = ..., rule: Literal["third", "half"] | int = ...) -> RuleRollOutLeadError[float]: ...
@overload
def rule_roll_out_lead_error(true_airspeed_kt: ArrayLike, bank_deg: ArrayLike, roll_rate_deg_per_s: ArrayLike = ..., rule: Literal["third", "half"] | int | _Codes = ..., **kwargs: Any) -> RuleRollOutLeadError[NDArray[np.float64]]: ...

@overload
def rule_lead_nm(groundspeed_kt: Number, course_change_deg: Number, height_above_station_ft: Number = ...) -> float: ...
@overload
def rule_lead_nm(groundspeed_kt: ArrayLike, course_change_deg: ArrayLike, height_above_station_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_reading_nm(groundspeed_kt: Number, course_change_deg: Number, height_above_station_ft: Number = ...) -> float: ...
@overload
def rule_reading_nm(groundspeed_kt: ArrayLike, course_change_deg: ArrayLike, height_above_station_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_least_dme_nm(height_ft: Number) -> float: ...
@overload
def rule_least_dme_nm(height_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_cone_radius_nm(height_ft: Number) -> float: ...
@overload
def rule_cone_radius_nm(height_ft: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_bank_deg(true_airspeed_kt: Number, rule: Literal["fifteen_percent", "tenth_and_seven", "tenth_and_five", "twenty_percent"] | int) -> float: ...
@overload
def rule_bank_deg(true_airspeed_kt: ArrayLike, rule: Literal["fifteen_percent", "tenth_and_seven", "tenth_and_five", "twenty_percent"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_turn_radius_nm(speed_kt: Number, rule: Literal["half_percent", "one_percent", "miles_a_minute_less_two", "tenth_of_square"] | int) -> float: ...
@overload
def rule_turn_radius_nm(speed_kt: ArrayLike, rule: Literal["half_percent", "one_percent", "miles_a_minute_less_two", "tenth_of_square"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_radials_per_mile(arc_radius_nm: Number) -> float: ...
@overload
def rule_radials_per_mile(arc_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_lead_radials_deg(arc_radius_nm: Number, turn_radius_nm: Number, flown: Literal["inbound", "outbound"] | int, rule: Literal["plain", "proportion", "third", "added_miles"] | int) -> float: ...
@overload
def rule_lead_radials_deg(arc_radius_nm: ArrayLike, turn_radius_nm: ArrayLike, flown: Literal["inbound", "outbound"] | int | _Codes, rule: Literal["plain", "proportion", "third", "added_miles"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def rule_off_course_nm(deflection_dots: Number, distance_nm: Number) -> float: ...
@overload
def rule_off_course_nm(deflection_dots: ArrayLike, distance_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class Observation(NamedTuple, Generic[_T]):
    radial_deg: _T
    dme_nm: _T
    ground_distance_nm: _T
    elevation_angle_deg: _T

@overload
def observe(station_latitude_deg: Number, station_longitude_deg: Number, station_elevation_ft: Number, station_declination_deg: Number, latitude_deg: Number, longitude_deg: Number, altitude_ft: Number) -> Observation[float]: ...
@overload
def observe(station_latitude_deg: ArrayLike, station_longitude_deg: ArrayLike, station_elevation_ft: ArrayLike, station_declination_deg: ArrayLike, latitude_deg: ArrayLike, longitude_deg: ArrayLike, altitude_ft: ArrayLike, **kwargs: Any) -> Observation[NDArray[np.float64]]: ...

@overload
def cone_radius_nm(height_ft: Number, cone_half_angle_deg: Number = ...) -> float: ...
@overload
def cone_radius_nm(height_ft: ArrayLike, cone_half_angle_deg: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class SuccessiveTurns(NamedTuple, Generic[_T]):
    past_first_nm: _T
    before_second_nm: _T
    spare_nm: _T
    straight_time_s: _T
    largest_true_airspeed_kt: _T
    largest_groundspeed_kt: _T
    bank_needed_deg: _T
    crossing_past_first_nm: _T
    crossing_before_second_nm: _T
    crossing_lead_nm: _T

@overload
def successive_turns(inbound_course_deg: Number, leg_course_deg: Number, outbound_course_deg: Number, leg_length_nm: Number, first_passage: Literal["fly_by", "fly_over"] | int, second_passage: Literal["fly_by", "fly_over"] | int, true_airspeed_kt: Number, wind_from_deg: Number | None = None, wind_speed_kt: Number | None = None, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> SuccessiveTurns[float]: ...
@overload
def successive_turns(inbound_course_deg: ArrayLike, leg_course_deg: ArrayLike, outbound_course_deg: ArrayLike, leg_length_nm: ArrayLike, first_passage: Literal["fly_by", "fly_over"] | int | _Codes, second_passage: Literal["fly_by", "fly_over"] | int | _Codes, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike | None = None, wind_speed_kt: ArrayLike | None = None, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> SuccessiveTurns[NDArray[np.float64]]: ...

@overload
def stabilization_distance_nm(passage: Literal["fly_by", "fly_over"] | int, course_change_deg: Number, true_airspeed_kt: Number, bank_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., bank_onto_leg_deg: Number = ...) -> float: ...
@overload
def stabilization_distance_nm(passage: Literal["fly_by", "fly_over"] | int | _Codes, course_change_deg: ArrayLike, true_airspeed_kt: ArrayLike, bank_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., bank_onto_leg_deg: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

class TangentTurn(NamedTuple, Generic[_T]):
    center_latitude_deg: _T
    center_longitude_deg: _T
    begin_latitude_deg: _T
    begin_longitude_deg: _T
    end_latitude_deg: _T
    end_longitude_deg: _T
    begin_bearing_deg: _T
    end_bearing_deg: _T
    length_nm: _T
    side: _T

@overload
def tangent_turn(lat1_deg: Number, lon1_deg: Number, course1_deg: Number, lat2_deg: Number, lon2_deg: Number, course2_deg: Number, radius_nm: Number) -> TangentTurn[float]: ...
@overload
def tangent_turn(lat1_deg: ArrayLike, lon1_deg: ArrayLike, course1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, course2_deg: ArrayLike, radius_nm: ArrayLike, **kwargs: Any) -> TangentTurn[NDArray[np.float64]]: ...

@overload
def tangent_turn_between_legs(lat1_deg: Number, lon1_deg: Number, course1_deg: Number, lat2_deg: Number, lon2_deg: Number, course2_deg: Number, radius_nm: Number) -> TangentTurn[float]: ...
@overload
def tangent_turn_between_legs(lat1_deg: ArrayLike, lon1_deg: ArrayLike, course1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, course2_deg: ArrayLike, radius_nm: ArrayLike, **kwargs: Any) -> TangentTurn[NDArray[np.float64]]: ...

@overload
def offset_tangent_turn(lat1_deg: Number, lon1_deg: Number, course1_deg: Number, offset1_nm: Number, lat2_deg: Number, lon2_deg: Number, course2_deg: Number, offset2_nm: Number, radius_nm: Number) -> TangentTurn[float]: ...
@overload
def offset_tangent_turn(lat1_deg: ArrayLike, lon1_deg: ArrayLike, course1_deg: ArrayLike, offset1_nm: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, course2_deg: ArrayLike, offset2_nm: ArrayLike, radius_nm: ArrayLike, **kwargs: Any) -> TangentTurn[NDArray[np.float64]]: ...

@overload
def time_to_fly_s(distance_nm: Number, groundspeed_kt: Number) -> float: ...
@overload
def time_to_fly_s(distance_nm: ArrayLike, groundspeed_kt: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def distance_flown_nm(groundspeed_kt: Number, elapsed_s: Number) -> float: ...
@overload
def distance_flown_nm(groundspeed_kt: ArrayLike, elapsed_s: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def groundspeed_from_time_kt(distance_nm: Number, elapsed_s: Number) -> float: ...
@overload
def groundspeed_from_time_kt(distance_nm: ArrayLike, elapsed_s: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def time_between_fixes_s(lat1_deg: Number, lon1_deg: Number, lat2_deg: Number, lon2_deg: Number, groundspeed_kt: Number) -> float: ...
@overload
def time_between_fixes_s(lat1_deg: ArrayLike, lon1_deg: ArrayLike, lat2_deg: ArrayLike, lon2_deg: ArrayLike, groundspeed_kt: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class StationByBearingChange(NamedTuple, Generic[_T]):
    distance_nm: _T
    time_s: _T
    distance_before_nm: _T

@overload
def station_by_bearing_change(elapsed_s: Number, bearing_change_deg: Number, groundspeed_kt: Number, angle_off_bow_deg: Number = ...) -> StationByBearingChange[float]: ...
@overload
def station_by_bearing_change(elapsed_s: ArrayLike, bearing_change_deg: ArrayLike, groundspeed_kt: ArrayLike, angle_off_bow_deg: ArrayLike = ..., **kwargs: Any) -> StationByBearingChange[NDArray[np.float64]]: ...

@overload
def time_to_station_rule_s(elapsed_s: Number, bearing_change_deg: Number) -> float: ...
@overload
def time_to_station_rule_s(elapsed_s: ArrayLike, bearing_change_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def total_temperature_degc(temperature_degc: Number, mach: Number, recovery_factor: Number = ...) -> float: ...
@overload
def total_temperature_degc(temperature_degc: ArrayLike, mach: ArrayLike, recovery_factor: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def static_temperature_degc(total_temperature_degc: Number, mach: Number, recovery_factor: Number = ...) -> float: ...
@overload
def static_temperature_degc(total_temperature_degc: ArrayLike, mach: ArrayLike, recovery_factor: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def transition_level_ft(transition_altitude_ft: Number, altimeter_setting_hpa: Number, least_layer_ft: Number = ..., step_ft: Number = ...) -> float: ...
@overload
def transition_level_ft(transition_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike, least_layer_ft: ArrayLike = ..., step_ft: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def true_altitude_ft(pressure_altitude_ft: Number, altimeter_setting_hpa: Number = ..., elevation_ft: Number = ..., isa_deviation_k: Number = ...) -> float: ...
@overload
def true_altitude_ft(pressure_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike = ..., elevation_ft: ArrayLike = ..., isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def height_above_station_ft(pressure_altitude_ft: Number, altimeter_setting_hpa: Number = ..., elevation_ft: Number = ..., isa_deviation_k: Number = ...) -> float: ...
@overload
def height_above_station_ft(pressure_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike = ..., elevation_ft: ArrayLike = ..., isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def pressure_altitude_at_true_altitude_ft(true_altitude_ft: Number, altimeter_setting_hpa: Number = ..., elevation_ft: Number = ..., isa_deviation_k: Number = ...) -> float: ...
@overload
def pressure_altitude_at_true_altitude_ft(true_altitude_ft: ArrayLike, altimeter_setting_hpa: ArrayLike = ..., elevation_ft: ArrayLike = ..., isa_deviation_k: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def turn_radius_nm(true_airspeed_kt: Number, bank_deg: Number) -> float: ...
@overload
def turn_radius_nm(true_airspeed_kt: ArrayLike, bank_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def turn_rate_deg_per_s(true_airspeed_kt: Number, bank_deg: Number) -> float: ...
@overload
def turn_rate_deg_per_s(true_airspeed_kt: ArrayLike, bank_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def bank_for_rate_deg(true_airspeed_kt: Number, turn_rate_deg_per_s: Number = ...) -> float: ...
@overload
def bank_for_rate_deg(true_airspeed_kt: ArrayLike, turn_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def bank_for_radius_deg(true_airspeed_kt: Number, turn_radius_nm: Number) -> float: ...
@overload
def bank_for_radius_deg(true_airspeed_kt: ArrayLike, turn_radius_nm: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def radius_at_rate_nm(true_airspeed_kt: Number, turn_rate_deg_per_s: Number = ...) -> float: ...
@overload
def radius_at_rate_nm(true_airspeed_kt: ArrayLike, turn_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def load_factor(bank_deg: Number) -> float: ...
@overload
def load_factor(bank_deg: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def bank_for_load_factor_deg(load_factor: Number) -> float: ...
@overload
def bank_for_load_factor_deg(load_factor: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class LimitedTurn(NamedTuple, Generic[_T]):
    bank_deg: _T
    turn_rate_deg_per_s: _T
    radius_nm: _T
    governed_by: _T

@overload
def limited_turn(true_airspeed_kt: Number, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ...) -> LimitedTurn[float]: ...
@overload
def limited_turn(true_airspeed_kt: ArrayLike, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., **kwargs: Any) -> LimitedTurn[NDArray[np.float64]]: ...

class RolledTurn(NamedTuple, Generic[_T]):
    bank_deg: _T
    duration_s: _T
    roll_duration_s: _T
    advance_nm: _T
    transfer_nm: _T
    governed_by: _T

@overload
def rolled_turn(true_airspeed_kt: Number, heading_change_deg: Number, bank_limit_deg: Number = ..., turn_rate_limit_deg_per_s: Number = ..., roll_rate_deg_per_s: Number = ...) -> RolledTurn[float]: ...
@overload
def rolled_turn(true_airspeed_kt: ArrayLike, heading_change_deg: ArrayLike, bank_limit_deg: ArrayLike = ..., turn_rate_limit_deg_per_s: ArrayLike = ..., roll_rate_deg_per_s: ArrayLike = ..., **kwargs: Any) -> RolledTurn[NDArray[np.float64]]: ...

@overload
def icao_wind_kt(altitude_ft: Number, units: Literal["non_si", "si"] | int) -> float: ...
@overload
def icao_wind_kt(altitude_ft: ArrayLike, units: Literal["non_si", "si"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

@overload
def turn_wind_effect_nm(angle_deg: Number, turn_rate_deg_per_s: Number, wind_speed_kt: Number) -> float: ...
@overload
def turn_wind_effect_nm(angle_deg: ArrayLike, turn_rate_deg_per_s: ArrayLike, wind_speed_kt: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class BaseTurnTemplate(NamedTuple, Generic[_T]):
    leg_nm: _T
    nearest_nm: _T
    farthest_nm: _T

@overload
def base_turn_template(true_airspeed_kt: Number, outbound_time_s: Number, wind_speed_kt: Number, fix_tolerance_nm: Number) -> BaseTurnTemplate[float]: ...
@overload
def base_turn_template(true_airspeed_kt: ArrayLike, outbound_time_s: ArrayLike, wind_speed_kt: ArrayLike, fix_tolerance_nm: ArrayLike, **kwargs: Any) -> BaseTurnTemplate[NDArray[np.float64]]: ...

@overload
def base_turn_sector_nm(true_airspeed_kt: Number, outbound_time_s: Number, units: Literal["non_si", "si"] | int) -> float: ...
@overload
def base_turn_sector_nm(true_airspeed_kt: ArrayLike, outbound_time_s: ArrayLike, units: Literal["non_si", "si"] | int | _Codes, **kwargs: Any) -> NDArray[np.float64]: ...

class WindTriangle(NamedTuple, Generic[_T]):
    heading_deg: _T
    groundspeed_kt: _T

@overload
def wind_triangle(course_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number, wind_speed_kt: Number) -> WindTriangle[float]: ...
@overload
def wind_triangle(course_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike, wind_speed_kt: ArrayLike, **kwargs: Any) -> WindTriangle[NDArray[np.float64]]: ...

@overload
def wind_correction_deg(course_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number, wind_speed_kt: Number) -> float: ...
@overload
def wind_correction_deg(course_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike, wind_speed_kt: ArrayLike, **kwargs: Any) -> NDArray[np.float64]: ...

class TrackAndGroundspeed(NamedTuple, Generic[_T]):
    track_deg: _T
    groundspeed_kt: _T
    drift_deg: _T

@overload
def track_and_groundspeed(heading_deg: Number, true_airspeed_kt: Number, wind_from_deg: Number, wind_speed_kt: Number) -> TrackAndGroundspeed[float]: ...
@overload
def track_and_groundspeed(heading_deg: ArrayLike, true_airspeed_kt: ArrayLike, wind_from_deg: ArrayLike, wind_speed_kt: ArrayLike, **kwargs: Any) -> TrackAndGroundspeed[NDArray[np.float64]]: ...

class WindFromTrack(NamedTuple, Generic[_T]):
    wind_from_deg: _T
    wind_speed_kt: _T

@overload
def wind_from_track(heading_deg: Number, true_airspeed_kt: Number, track_deg: Number, groundspeed_kt: Number) -> WindFromTrack[float]: ...
@overload
def wind_from_track(heading_deg: ArrayLike, true_airspeed_kt: ArrayLike, track_deg: ArrayLike, groundspeed_kt: ArrayLike, **kwargs: Any) -> WindFromTrack[NDArray[np.float64]]: ...

class WindComponents(NamedTuple, Generic[_T]):
    headwind_kt: _T
    crosswind_kt: _T

@overload
def wind_components(course_deg: Number, wind_from_deg: Number, wind_speed_kt: Number) -> WindComponents[float]: ...
@overload
def wind_components(course_deg: ArrayLike, wind_from_deg: ArrayLike, wind_speed_kt: ArrayLike, **kwargs: Any) -> WindComponents[NDArray[np.float64]]: ...

class WindFromComponents(NamedTuple, Generic[_T]):
    wind_from_deg: _T
    wind_speed_kt: _T

@overload
def wind_from_components(course_deg: Number, headwind_kt: Number, crosswind_kt: Number) -> WindFromComponents[float]: ...
@overload
def wind_from_components(course_deg: ArrayLike, headwind_kt: ArrayLike, crosswind_kt: ArrayLike, **kwargs: Any) -> WindFromComponents[NDArray[np.float64]]: ...

class AirspeedForGroundspeed(NamedTuple, Generic[_T]):
    heading_deg: _T
    true_airspeed_kt: _T

@overload
def airspeed_for_groundspeed(course_deg: Number, groundspeed_kt: Number, wind_from_deg: Number, wind_speed_kt: Number) -> AirspeedForGroundspeed[float]: ...
@overload
def airspeed_for_groundspeed(course_deg: ArrayLike, groundspeed_kt: ArrayLike, wind_from_deg: ArrayLike, wind_speed_kt: ArrayLike, **kwargs: Any) -> AirspeedForGroundspeed[NDArray[np.float64]]: ...

class WindBetweenLevels(NamedTuple, Generic[_T]):
    wind_from_deg: _T
    wind_speed_kt: _T

@overload
def wind_between_levels(pressure_altitude_ft: Number, lower_altitude_ft: Number, lower_wind_from_deg: Number, lower_wind_speed_kt: Number, upper_altitude_ft: Number, upper_wind_from_deg: Number, upper_wind_speed_kt: Number) -> WindBetweenLevels[float]: ...
@overload
def wind_between_levels(pressure_altitude_ft: ArrayLike, lower_altitude_ft: ArrayLike, lower_wind_from_deg: ArrayLike, lower_wind_speed_kt: ArrayLike, upper_altitude_ft: ArrayLike, upper_wind_from_deg: ArrayLike, upper_wind_speed_kt: ArrayLike, **kwargs: Any) -> WindBetweenLevels[NDArray[np.float64]]: ...

@overload
def wind_between_levels_by_method(pressure_altitude_ft: Number, lower_altitude_ft: Number, lower_wind_from_deg: Number, lower_wind_speed_kt: Number, upper_altitude_ft: Number, upper_wind_from_deg: Number, upper_wind_speed_kt: Number, method: Literal["components", "direction_and_speed"] | int) -> WindBetweenLevels[float]: ...
@overload
def wind_between_levels_by_method(pressure_altitude_ft: ArrayLike, lower_altitude_ft: ArrayLike, lower_wind_from_deg: ArrayLike, lower_wind_speed_kt: ArrayLike, upper_altitude_ft: ArrayLike, upper_wind_from_deg: ArrayLike, upper_wind_speed_kt: ArrayLike, method: Literal["components", "direction_and_speed"] | int | _Codes, **kwargs: Any) -> WindBetweenLevels[NDArray[np.float64]]: ...
