# Generated from core/src/plain; do not edit. To renew: cargo run -p lubberline-generate
"""The plain functions by name, for numbers and for arrays."""

from typing import NamedTuple

from . import ufunc
from ._call import calm, chosen, many, named, scalars

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

_COLD_TEMPERATURE_METHOD = {"formula": 0, "table": 1, "interpolated": 2, "interpolated_nearest_hundred": 3, "interpolated_up_to_hundred": 4, "four_percent": 5, "exact": 6}

_ATMOSPHERE_EDITION = {"icao_1993": 0, "united_states_1976": 1}

_TAS_FACTOR_METHOD = {"formula": 0, "table_metres": 1, "table_feet": 2}

_COURSE_REACH = {"onward": 0, "both_ways": 1}

_ARC_SENSE = {"clockwise": 1, "counterclockwise": -1}

_RADIAL_FLOWN = {"inbound": 0, "outbound": 1}

_DESIGN_UNITS = {"non_si": 0, "si": 1}

_CHORD_PLACEMENT = {"inside": 0, "outside": 1, "balanced": 2}

_HOLDING_BANK_RULE = {"icao": 0, "faa": 1, "faa_flight_director": 2}

_HOLDING_SIDE = {"right": 1, "left": -1}

_HOLDING_SPEED_RULE = {"faa": 0, "faa_air_force": 1, "faa_navy": 2, "icao": 3, "icao_turbulence": 4, "icao_categories_a_b": 5, "canada": 6, "canada_propeller": 7, "canada_jet": 8, "faa_icon": 9, "faa_climb_in": 10, "faa_propeller_nineties": 11, "faa_jet_nineties": 12, "icao_first_edition_propeller": 13, "icao_first_edition_jet": 14, "canada_military": 15, "canada_climb": 16}

_TIMING_AUTHORITY = {"icao": 0, "faa": 1}

_TIMED_LEG = {"inbound": 0, "outbound": 1, "outbound_from_level": 2}

_LEG_CODE = {"IF": 1, "TF": 2, "CF": 3, "DF": 4, "AF": 5, "RF": 6, "FA": 7, "FC": 8, "FD": 9, "FM": 10, "CA": 11, "CD": 12, "CI": 13, "CR": 14, "VA": 15, "VD": 16, "VI": 17, "VM": 18, "VR": 19, "HA": 20, "HF": 21, "HM": 22, "PI": 23}

_PASSAGE = {"fly_by": 0, "fly_over": 1}

_ARC_LEAD_RULE = {"plain": 0, "proportion": 1, "third": 2, "added_miles": 3}

_ARC_ENTRY_RULE = {"radius": 0, "radius_and_half": 1, "half_mile": 2}

_DRIFT_RULE = {"double": 2, "triple": 3}

_LEAD_RULE = {"third": 0, "third_and_allowance": 1, "third_and_margin": 2}

_TURN_CUE = {"reading": 0, "distance": 1, "exact": 2}

_ROLL_OUT_RULE = {"third": 0, "half": 1}

_BANK_RULE = {"fifteen_percent": 0, "tenth_and_seven": 1, "tenth_and_five": 2, "twenty_percent": 3}

_RADIUS_RULE = {"half_percent": 0, "one_percent": 1, "miles_a_minute_less_two": 2, "tenth_of_square": 3}

_RADIAL_ACCURACY = {"vor_en_route": 0, "vor_tracking": 1, "vor_intersecting": 2, "ndb_intersecting": 3, "vor_alignment": 4}

_DME_ACCURACY = {"pans_ops": 0, "annex_10": 1, "aim": 2, "since_1989": 3}

_RECEIVER_CHECK = {"test_signal": 0, "ground_checkpoint": 1, "airborne_checkpoint": 2, "airway_centerline": 3, "dual_receivers": 4}

_DME_COVERAGE = {"two_stations": 0, "more_stations": 1}

_CONTAINMENT = {"percent_95": 0, "percent_96": 1, "percent_97": 2, "percent_98": 3, "percent_99": 4, "percent_99_5": 5}

_HORIZON_RULE = {"four_thirds": 0, "feet_miles": 1, "metres_kilometres": 2, "five_quarters": 3}

_SERVICE_CLASS = {"terminal": 0, "low": 1, "high": 2, "vor_low": 3, "vor_high": 4, "dme_low": 5, "dme_high": 6, "terminal_above_ground": 7, "low_above_ground": 8, "high_above_ground": 9, "compass_locator": 10, "ndb_mh": 11, "ndb_h": 12, "ndb_hh": 13}

_TURN_CONSTANTS = {"exact": 0, "pans_ops": 1, "pans_ops_metric": 2, "pans_ops_gravity": 3, "faa_order": 4, "handbook": 5}

_WIND_INTERPOLATION = {"components": 0, "direction_and_speed": 1}


def radial_tolerance_deg(accuracy, **kwargs):
    r"""The published tolerance of a radial or a bearing, by its source.

    The root of the sum of squares of its parts: VOR 3.5 degrees ground, 2.7 receiver, 1.0 monitor
    and 3.5 (en route) or 2.5 (terminal) flight technical; NDB 3 degrees ground and 5.4 receiver.

    Parameters
    ----------
    accuracy : {"vor_en_route", "vor_tracking", "vor_intersecting", "ndb_intersecting", "vor_alignment"}
        Which figure.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A choice that is none of its alternatives. In arrays such a point is NaN and
        NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Not rounded, where the sources print 5.7, 5.2, 4.5 and 6.2 degrees.

    Degenerate cases: None. A tolerance is two standard deviations.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.3.2 and Appendix B
    2.2, and Part I Section 2 Chapter 2, Table I-2-2-1 (from memory); FAA Aeronautical Information
    Manual 1-1-3, edition not shown in the copy read.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.radial_tolerance_deg('vor_intersecting'):.2f}"
    '4.53'
    """
    accuracy = chosen(_RADIAL_ACCURACY, "accuracy", accuracy)
    if not kwargs:
        answer = _scalar_radial_tolerance_deg(accuracy)
        if answer is not None:
            return answer
    return ufunc.radial_tolerance_deg(accuracy, **kwargs)


_scalar_radial_tolerance_deg = scalars["radial_tolerance_deg"]


class RadialError(NamedTuple):
    """How the parts of a radial's error combine: what `radial_error` gives."""

    aggregate_deg: object
    """Where the radial is: ground, receiver and monitor."""
    system_use_deg: object
    """Where an aircraft flying along it is: the aggregate and the flight technical part."""


def radial_error(ground_deg, receiver_deg, flight_technical_deg=0.0, monitor_deg=0.0, **kwargs):
    r"""How the independent parts of a radial's error combine.

    `sqrt(Eg^2 + Ea^2 + Em^2)` for the radial, and with `Ep^2` for the aircraft that flies along it.

    Parameters
    ----------
    ground_deg : array_like, in degrees
        Error of the signal, 0 to 90.
    receiver_deg : array_like, in degrees
        Error of the airborne receiver, 0 to 90.
    flight_technical_deg : array_like, in degrees
        Error of flying by the needle, 0 to 90 (default 0.0).
    monitor_deg : array_like, in degrees
        Error that the monitor lets pass, 0 to 90 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RadialError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `aggregate_deg`: Where the radial is: ground, receiver and monitor, in degrees.
        `system_use_deg`: Where an aircraft flying along it is: the aggregate and the flight
        technical part, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: Tolerances give a tolerance, standard deviations a standard deviation.

    Source: ICAO Annex 10 Vol I, Attachment C, 3.7.3.2; ICAO Doc 8168 Vol II (5th ed. 2006), Part II
    Section 3 Chapter 1, Appendix B, adds the monitor.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.radial_error(3.5, 2.7, 3.5, 1.0).system_use_deg:.2f}"
    '5.73'
    >>> [f"{value:.2f}" for value in lubberline.radial_error([3.5, 3.5], 2.7, 3.5, 1.0).system_use_deg]
    ['5.73', '5.73']
    """
    if not kwargs:
        answer = _scalar_radial_error(ground_deg, receiver_deg, flight_technical_deg, monitor_deg)
        if answer is not None:
            return named(RadialError, answer)
    return RadialError._make(many("radial_error", RadialError._fields, (ground_deg, receiver_deg, flight_technical_deg, monitor_deg), kwargs))


_scalar_radial_error = scalars["radial_error"]


def dme_tolerance_nm(dme_nm, accuracy, **kwargs):
    r"""The published tolerance of a DME at a slant range, by its source.

    `0.25 + 0.0125 d` (`pans_ops`), 0.2 (`annex_10`), the greater of 0.5 and `0.03 d` (`aim`),
    `sqrt(0.1^2 + 0.17^2)` (`since_1989`), in nautical miles.

    Parameters
    ----------
    dme_nm : array_like, in nautical miles
        Slant range, 0 to 10 900.
    accuracy : {"pans_ops", "annex_10", "aim", "since_1989"}
        Which figure.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published.

    Degenerate cases: None. A tolerance is two standard deviations.

    Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 2 Chapter 2, 2.4.2; ICAO Annex 10 Vol
    I, 3.5.3.1.3.3; FAA Aeronautical Information Manual 1-1-7, edition not shown in the copy read;
    ICAO Doc 8168 Vol II, Part III Section 1 Chapter 3, Appendix 3, 2.1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.dme_tolerance_nm(40.0, 'pans_ops'):.2f}"
    '0.75'
    >>> f"{lubberline.dme_tolerance_nm(40.0, 'aim'):.2f}"
    '1.20'
    >>> [f"{value:.2f}" for value in lubberline.dme_tolerance_nm([40.0, 40.0], 'pans_ops')]
    ['0.75', '0.75']
    """
    accuracy = chosen(_DME_ACCURACY, "accuracy", accuracy)
    if not kwargs:
        answer = _scalar_dme_tolerance_nm(dme_nm, accuracy)
        if answer is not None:
            return answer
    return ufunc.dme_tolerance_nm(dme_nm, accuracy, **kwargs)


_scalar_dme_tolerance_nm = scalars["dme_tolerance_nm"]


def receiver_check_limit_deg(check, **kwargs):
    r"""The greatest error with which a VOR receiver passes a check within the preceding 30 days.

    4 degrees for a test signal, a checkpoint on the ground and between two receivers; 6 degrees in
    the air.

    Parameters
    ----------
    check : {"test_signal", "ground_checkpoint", "airborne_checkpoint", "airway_centerline", "dual_receivers"}
        Which check.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A choice that is none of its alternatives. In arrays such a point is NaN and
        NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As published.

    Degenerate cases: None.

    Source: 14 CFR 91.171 (b) and (c).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.receiver_check_limit_deg('airborne_checkpoint'):.0f}"
    '6'
    """
    check = chosen(_RECEIVER_CHECK, "check", check)
    if not kwargs:
        answer = _scalar_receiver_check_limit_deg(check)
        if answer is not None:
            return answer
    return ufunc.receiver_check_limit_deg(check, **kwargs)


_scalar_receiver_check_limit_deg = scalars["receiver_check_limit_deg"]


class DmeDmeTolerances(NamedTuple):
    """Tolerances of area navigation by DME: what `dme_dme_tolerances` gives."""

    along_track_nm: object
    """Along the track."""
    across_track_nm: object
    """Across the track."""
    half_width_nm: object
    """Half the width of the area."""


def dme_dme_tolerances(dme_tolerance_nm, flight_technical_nm, buffer_nm, coverage="two_stations", system_nm=0.25, **kwargs):
    r"""Tolerances of area navigation by DME/DME, for procedure design.

    Along `sqrt((k d)^2 + st^2)`, across `sqrt((k d)^2 + ftt^2 + st^2)`, half-width `1.5 across +
    bv`, with `k` 1.29 for two stations and 1 for more.

    Parameters
    ----------
    dme_tolerance_nm : array_like, in nautical miles
        Tolerance of one DME, as `dme_tolerance_nm` gives it, 0 to 1000.
    flight_technical_nm : array_like, in nautical miles
        Flight technical tolerance, 0 to 1000.
    buffer_nm : array_like, in nautical miles
        Buffer value, 0 to 1000.
    coverage : {"two_stations", "more_stations"}
        From how many stations the position is taken (default "two_stations").
    system_nm : array_like, in nautical miles
        System computation tolerance, 0 to 1000 (default 0.25).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    DmeDmeTolerances
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `along_track_nm`: Along the track, in nautical miles.
        `across_track_nm`: Across the track, in nautical miles.
        `half_width_nm`: Half the width of the area, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Not rounded between steps, where the printed examples are.

    Degenerate cases: None.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendices 1 and 3;
    the factor of 1 is inferred from the examples.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.dme_dme_tolerances(1.34, 1.0, 1.0, 'two_stations', 0.25).half_width_nm:.2f}"
    '4.02'
    >>> [f"{value:.2f}" for value in lubberline.dme_dme_tolerances([1.34, 1.34], 1.0, 1.0, 'two_stations', 0.25).half_width_nm]
    ['4.02', '4.02']
    """
    coverage = chosen(_DME_COVERAGE, "coverage", coverage)
    if not kwargs:
        answer = _scalar_dme_dme_tolerances(dme_tolerance_nm, flight_technical_nm, buffer_nm, coverage, system_nm)
        if answer is not None:
            return named(DmeDmeTolerances, answer)
    return DmeDmeTolerances._make(many("dme_dme_tolerances", DmeDmeTolerances._fields, (dme_tolerance_nm, flight_technical_nm, buffer_nm, coverage, system_nm), kwargs))


_scalar_dme_dme_tolerances = scalars["dme_dme_tolerances"]


class StandardAtmosphere(NamedTuple):
    """The air at a pressure altitude: what `standard_atmosphere` gives."""

    temperature_degc: object
    """Static temperature."""
    pressure_hpa: object
    """Static pressure."""
    density_kg_per_m3: object
    """Density."""
    speed_of_sound_kt: object
    """Speed of sound."""


def standard_atmosphere(pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""The ICAO standard atmosphere at a pressure altitude, with an ISA deviation of the temperature.

    Layers of even temperature change from 15 degC at sea level: -6.5 K/km to 11 km, none to 20 km,
    +1 to 32 km, +2.8 to 47 km, none to 51 km, -2.8 to 71 km, -2 to 80 km, geopotential. Pressure by
    hydrostatic balance; density `p/(R T)`, speed of sound `sqrt(1.4 R T)`, R = 287.05287 J/(kg K).
    The deviation moves temperature, density and speed of sound and leaves the pressure. For a
    geometric altitude in the standard atmosphere give `geopotential_altitude_ft` of it.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    StandardAtmosphere
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `temperature_degc`: Static temperature, in degrees Celsius.
        `pressure_hpa`: Static pressure, in hectopascals.
        `density_kg_per_m3`: Density, in kilograms per cubic metre.
        `speed_of_sound_kt`: Speed of sound, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding; in arrays 1e-14 of the value. The pressures printed in the source above 20
    km differ by up to 4e-6 of themselves, having been worked out from rounded ones.

    Degenerate cases: None in the range.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.standard_atmosphere(35000.0, 0.0).temperature_degc:.1f}"
    '-54.3'
    >>> f"{lubberline.standard_atmosphere(35000.0, 0.0).pressure_hpa:.2f}"
    '238.42'
    >>> f"{lubberline.standard_atmosphere(6000.0, 15.0).density_kg_per_m3:.5f}"
    '0.97120'
    >>> f"{lubberline.standard_atmosphere(0.0, 0.0).speed_of_sound_kt:.2f}"
    '661.48'
    >>> [f"{value:.1f}" for value in lubberline.standard_atmosphere([35000.0, 35000.0], 0.0).temperature_degc]
    ['-54.3', '-54.3']
    """
    if not kwargs:
        answer = _scalar_standard_atmosphere(pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return named(StandardAtmosphere, answer)
    return StandardAtmosphere._make(many("standard_atmosphere", StandardAtmosphere._fields, (pressure_altitude_ft, isa_deviation_k), kwargs))


_scalar_standard_atmosphere = scalars["standard_atmosphere"]


def pressure_ratio(pressure_altitude_ft, **kwargs):
    r"""Pressure over standard sea-level pressure, the ratio called delta.

    The pressure of `standard_atmosphere` over 1013.25 hPa.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: 1 at zero altitude, exactly.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.pressure_ratio(35000.0):.4f}"
    '0.2353'
    >>> [f"{value:.4f}" for value in lubberline.pressure_ratio([35000.0, 35000.0])]
    ['0.2353', '0.2353']
    """
    if not kwargs:
        answer = _scalar_pressure_ratio(pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.pressure_ratio(pressure_altitude_ft, **kwargs)


_scalar_pressure_ratio = scalars["pressure_ratio"]


def density_ratio(pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""Density over standard sea-level density, the ratio called sigma.

    Pressure ratio over temperature ratio.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding. The sea-level density meant is `p0/(R T0)`, which is 1.225 kg/m3 to 1.5e-8.

    Degenerate cases: 1 at zero altitude and deviation, exactly.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.density_ratio(35000.0, 0.0):.4f}"
    '0.3099'
    >>> [f"{value:.4f}" for value in lubberline.density_ratio([35000.0, 35000.0], 0.0)]
    ['0.3099', '0.3099']
    """
    if not kwargs:
        answer = _scalar_density_ratio(pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.density_ratio(pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_density_ratio = scalars["density_ratio"]


def temperature_ratio(pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""Temperature over standard sea-level temperature, in kelvins, the ratio called theta.

    The temperature of `standard_atmosphere` over 288.15 K.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: 1 at zero altitude and deviation, exactly.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.temperature_ratio(35000.0, 0.0):.4f}"
    '0.7594'
    >>> [f"{value:.4f}" for value in lubberline.temperature_ratio([35000.0, 35000.0], 0.0)]
    ['0.7594', '0.7594']
    """
    if not kwargs:
        answer = _scalar_temperature_ratio(pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.temperature_ratio(pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_temperature_ratio = scalars["temperature_ratio"]


def isa_deviation_k(temperature_degc, pressure_altitude_ft, **kwargs):
    r"""How much warmer than the standard atmosphere the air is: the ISA deviation of a temperature.

    The temperature less the standard one at that pressure altitude.

    Parameters
    ----------
    temperature_degc : array_like, in degrees Celsius
        Static air temperature, -200 to 200.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in kelvins
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a deviation beyond 150 K. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None in the range.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.isa_deviation_k(-45.0, 35000.0):.2f}"
    '9.34'
    >>> [f"{value:.2f}" for value in lubberline.isa_deviation_k([-45.0, -45.0], 35000.0)]
    ['9.34', '9.34']
    """
    if not kwargs:
        answer = _scalar_isa_deviation_k(temperature_degc, pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.isa_deviation_k(temperature_degc, pressure_altitude_ft, **kwargs)


_scalar_isa_deviation_k = scalars["isa_deviation_k"]


def speed_of_sound_kt(temperature_degc, **kwargs):
    r"""The speed of sound in air of a temperature.

    `sqrt(1.4 R T)` with R = 287.05287 J/(kg K).

    Parameters
    ----------
    temperature_degc : array_like, in degrees Celsius
        Static air temperature, -200 to 200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding, for a gas of constant heat ratio: real air at 50 degC differs by less than
    0.1 percent.

    Degenerate cases: None in the range.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.speed_of_sound_kt(15.0):.2f}"
    '661.48'
    >>> [f"{value:.2f}" for value in lubberline.speed_of_sound_kt([15.0, 15.0])]
    ['661.48', '661.48']
    """
    if not kwargs:
        answer = _scalar_speed_of_sound_kt(temperature_degc)
        if answer is not None:
            return answer
    return ufunc.speed_of_sound_kt(temperature_degc, **kwargs)


_scalar_speed_of_sound_kt = scalars["speed_of_sound_kt"]


def pressure_altitude_from_pressure_ft(pressure_hpa, **kwargs):
    r"""Pressure altitude from static pressure: where the standard atmosphere has that pressure.

    The inverse of the pressure of `standard_atmosphere`.

    Parameters
    ----------
    pressure_hpa : array_like, in hectopascals
        Static pressure, above 0 to 2000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a pressure above that of -5 km (1777 hPa) or
        below that of 80 km (0.00886 hPa). In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding (1e-9 ft).

    Degenerate cases: None in the range.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.pressure_altitude_from_pressure_ft(500.0):.1f}"
    '18288.8'
    >>> f"{lubberline.pressure_altitude_from_pressure_ft(100.0):.0f}"
    '53083'
    >>> [f"{value:.1f}" for value in lubberline.pressure_altitude_from_pressure_ft([500.0, 500.0])]
    ['18288.8', '18288.8']
    """
    if not kwargs:
        answer = _scalar_pressure_altitude_from_pressure_ft(pressure_hpa)
        if answer is not None:
            return answer
    return ufunc.pressure_altitude_from_pressure_ft(pressure_hpa, **kwargs)


_scalar_pressure_altitude_from_pressure_ft = scalars["pressure_altitude_from_pressure_ft"]


def geopotential_altitude_ft(geometric_altitude_ft, **kwargs):
    r"""Geopotential altitude, in which the standard atmosphere is laid out, from geometric altitude.

    `r h/(r + h)` with r = 6 356 766 m.

    Parameters
    ----------
    geometric_altitude_ft : array_like, in feet
        Height above mean sea level as a length, -16 500 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding, in the gravity of the standard atmosphere; real gravity changes with
    latitude by up to 0.3 percent.

    Degenerate cases: Zero gives zero.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.geopotential_altitude_ft(60000.0):.1f}"
    '59827.9'
    >>> [f"{value:.1f}" for value in lubberline.geopotential_altitude_ft([60000.0, 60000.0])]
    ['59827.9', '59827.9']
    """
    if not kwargs:
        answer = _scalar_geopotential_altitude_ft(geometric_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.geopotential_altitude_ft(geometric_altitude_ft, **kwargs)


_scalar_geopotential_altitude_ft = scalars["geopotential_altitude_ft"]


def geometric_altitude_ft(geopotential_altitude_ft, **kwargs):
    r"""Geometric altitude from geopotential altitude: the inverse of `geopotential_altitude_ft`.

    `r H/(r - H)` with r = 6 356 766 m.

    Parameters
    ----------
    geopotential_altitude_ft : array_like, in feet
        Altitude in units of work against standard gravity, -16 513.1 to 392 472.6.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding, in the gravity of the standard atmosphere; real gravity changes with
    latitude by up to 0.3 percent.

    Degenerate cases: Zero gives zero.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.geometric_altitude_ft(60000.0):.1f}"
    '60173.1'
    >>> [f"{value:.1f}" for value in lubberline.geometric_altitude_ft([60000.0, 60000.0])]
    ['60173.1', '60173.1']
    """
    if not kwargs:
        answer = _scalar_geometric_altitude_ft(geopotential_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.geometric_altitude_ft(geopotential_altitude_ft, **kwargs)


_scalar_geometric_altitude_ft = scalars["geometric_altitude_ft"]


def tas_from_cas_kt(cas_kt, pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""True airspeed from calibrated airspeed, compressible.

    The impact pressure `q` of the calibrated airspeed at standard sea level, over the static
    pressure `p`, gives the Mach number by `q/p = (1 + 0.2 M^2)^3.5 - 1`, above Mach 1 by Rayleigh's
    pitot formula; times the speed of sound.

    Parameters
    ----------
    cas_kt : array_like, in knots
        Calibrated airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air
    of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.tas_from_cas_kt(280.0, 35000.0, 0.0):.2f}"
    '473.44'
    >>> f"{lubberline.tas_from_cas_kt(250.0, 10000.0, 15.0):.2f}"
    '296.66'
    >>> [f"{value:.2f}" for value in lubberline.tas_from_cas_kt([280.0, 280.0], 35000.0, 0.0)]
    ['473.44', '473.44']
    """
    if not kwargs:
        answer = _scalar_tas_from_cas_kt(cas_kt, pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.tas_from_cas_kt(cas_kt, pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_tas_from_cas_kt = scalars["tas_from_cas_kt"]


def cas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""Calibrated airspeed from true airspeed, compressible: the inverse of `tas_from_cas_kt`.

    The impact pressure at Mach `V/a` is what the calibrated airspeed is read from, as if at
    standard sea level.

    Parameters
    ----------
    tas_kt : array_like, in knots
        True airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air
    of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cas_from_tas_kt(450.0, 35000.0, 0.0):.2f}"
    '264.68'
    >>> [f"{value:.2f}" for value in lubberline.cas_from_tas_kt([450.0, 450.0], 35000.0, 0.0)]
    ['264.68', '264.68']
    """
    if not kwargs:
        answer = _scalar_cas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.cas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_cas_from_tas_kt = scalars["cas_from_tas_kt"]


def indicated_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa, **kwargs):
    r"""The altitude that a perfect altimeter shows with its setting.

    Pressure altitude less the pressure altitude of the setting: the setting turns the scale of the
    standard atmosphere as a whole.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    altimeter_setting_hpa : array_like, in hectopascals
        What the altimeter is set to, 400 to 1200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: With 1013.25 hPa it is the pressure altitude; with the pressure itself, zero.

    Source: The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.indicated_altitude_ft(5000.0, 1000.0):.1f}"
    '4636.2'
    >>> [f"{value:.1f}" for value in lubberline.indicated_altitude_ft([5000.0, 5000.0], 1000.0)]
    ['4636.2', '4636.2']
    """
    if not kwargs:
        answer = _scalar_indicated_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa)
        if answer is not None:
            return answer
    return ufunc.indicated_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa, **kwargs)


_scalar_indicated_altitude_ft = scalars["indicated_altitude_ft"]


def pressure_altitude_ft(indicated_altitude_ft, altimeter_setting_hpa, **kwargs):
    r"""Pressure altitude from what an altimeter shows with its setting: the inverse of `indicated_altitude_ft`.

    Indicated altitude plus the pressure altitude of the setting.

    Parameters
    ----------
    indicated_altitude_ft : array_like, in feet
        Altitude shown, -50 000 to 300 000.
    altimeter_setting_hpa : array_like, in hectopascals
        What the altimeter is set to, 400 to 1200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a pressure altitude outside -5 to 80 km. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: With 1013.25 hPa it is the indicated altitude.

    Source: The construction of the instrument; ICAO Doc 7488/3 (3rd edition 1993) for the scale.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.pressure_altitude_ft(5000.0, 1000.0):.1f}"
    '5363.8'
    >>> [f"{value:.1f}" for value in lubberline.pressure_altitude_ft([5000.0, 5000.0], 1000.0)]
    ['5363.8', '5363.8']
    """
    if not kwargs:
        answer = _scalar_pressure_altitude_ft(indicated_altitude_ft, altimeter_setting_hpa)
        if answer is not None:
            return answer
    return ufunc.pressure_altitude_ft(indicated_altitude_ft, altimeter_setting_hpa, **kwargs)


_scalar_pressure_altitude_ft = scalars["pressure_altitude_ft"]


def pressure_altitude_rule_ft(indicated_altitude_ft, altimeter_setting_hpa, **kwargs):
    r"""Pressure altitude by the rule of 1000 ft for each inch of mercury below 29.92.

    `indicated altitude + 1000 (29.92 - setting in inches)`, an inch of mercury being 33.86389 hPa.
    `pressure_altitude_ft` is exact.

    Parameters
    ----------
    indicated_altitude_ft : array_like, in feet
        Altitude shown, -50 000 to 300 000.
    altimeter_setting_hpa : array_like, in hectopascals
        What the altimeter is set to, 400 to 1200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a pressure altitude outside -5 to 80 km. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: An inch is 924 ft at sea level, so the rule is 8 percent of the correction too much.

    Degenerate cases: None in the range.

    Source: CNATRA P-203, Student Guide for Preflight Navigation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.pressure_altitude_rule_ft(5000.0, 1000.0):.1f}"
    '5390.0'
    >>> [f"{value:.1f}" for value in lubberline.pressure_altitude_rule_ft([5000.0, 5000.0], 1000.0)]
    ['5390.0', '5390.0']
    """
    if not kwargs:
        answer = _scalar_pressure_altitude_rule_ft(indicated_altitude_ft, altimeter_setting_hpa)
        if answer is not None:
            return answer
    return ufunc.pressure_altitude_rule_ft(indicated_altitude_ft, altimeter_setting_hpa, **kwargs)


_scalar_pressure_altitude_rule_ft = scalars["pressure_altitude_rule_ft"]


def altimeter_setting_hpa(station_pressure_hpa, elevation_ft, **kwargs):
    r"""The altimeter setting of a station, QNH: with it an altimeter at the station shows the elevation.

    The standard pressure at the station's pressure altitude less its elevation.

    Parameters
    ----------
    station_pressure_hpa : array_like, in hectopascals
        Pressure at the station, its QFE, above 0 to 2000.
    elevation_ft : array_like, in feet
        Elevation of the station, -16 500 to 60 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in hectopascals
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a setting outside 400 to 1200 hPa. In arrays such
        a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding. A station reports it rounded down to a whole hectopascal, which is 27 ft.

    Degenerate cases: At no elevation it is the pressure.

    Source: The definition of QNH, ICAO Annex 3 and Doc 8896 (from memory).
    `altimeter_setting_smithsonian_hpa` is the American one.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.altimeter_setting_hpa(832.0, 5430.0):.2f}"
    '1016.08'
    >>> [f"{value:.2f}" for value in lubberline.altimeter_setting_hpa([832.0, 832.0], 5430.0)]
    ['1016.08', '1016.08']
    """
    if not kwargs:
        answer = _scalar_altimeter_setting_hpa(station_pressure_hpa, elevation_ft)
        if answer is not None:
            return answer
    return ufunc.altimeter_setting_hpa(station_pressure_hpa, elevation_ft, **kwargs)


_scalar_altimeter_setting_hpa = scalars["altimeter_setting_hpa"]


def altimeter_setting_smithsonian_hpa(station_pressure_hpa, elevation_ft, **kwargs):
    r"""The altimeter setting of a station by the American formula, for a cockpit about 10 ft above it.

    `(p - 0.3) (1 + 1013.25^n 0.0065/288 h/(p - 0.3)^n)^(1/n)` with n = 0.190284, p in hectopascals,
    h in metres.

    Parameters
    ----------
    station_pressure_hpa : array_like, in hectopascals
        Pressure at the station, its QFE, above 0 to 2000.
    elevation_ft : array_like, in feet
        Elevation of the station, -16 500 to 60 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in hectopascals
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a setting outside 400 to 1200 hPa. In arrays such
        a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As published; 0.3 to 0.4 hPa less than `altimeter_setting_hpa`, which is the height of
    the cockpit.

    Degenerate cases: None in the range.

    Source: Smithsonian Meteorological Tables, 6th edition 1951, p. 269, read in a quotation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.altimeter_setting_smithsonian_hpa(832.0, 5430.0):.2f}"
    '1015.81'
    >>> [f"{value:.2f}" for value in lubberline.altimeter_setting_smithsonian_hpa([832.0, 832.0], 5430.0)]
    ['1015.81', '1015.81']
    """
    if not kwargs:
        answer = _scalar_altimeter_setting_smithsonian_hpa(station_pressure_hpa, elevation_ft)
        if answer is not None:
            return answer
    return ufunc.altimeter_setting_smithsonian_hpa(station_pressure_hpa, elevation_ft, **kwargs)


_scalar_altimeter_setting_smithsonian_hpa = scalars["altimeter_setting_smithsonian_hpa"]


def station_pressure_hpa(altimeter_setting_hpa, elevation_ft, **kwargs):
    r"""The pressure at a station, its QFE, from its altimeter setting: the inverse of `altimeter_setting_hpa`.

    The standard pressure at the elevation plus the pressure altitude of the setting.

    Parameters
    ----------
    altimeter_setting_hpa : array_like, in hectopascals
        What the altimeter is set to, 400 to 1200.
    elevation_ft : array_like, in feet
        Elevation of the station, -16 500 to 60 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in hectopascals
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a pressure outside 0 to 2000 hPa. In arrays such
        a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: At no elevation it is the setting.

    Source: As `altimeter_setting_hpa`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.station_pressure_hpa(1013.25, 5430.0):.2f}"
    '829.59'
    >>> [f"{value:.2f}" for value in lubberline.station_pressure_hpa([1013.25, 1013.25], 5430.0)]
    ['829.59', '829.59']
    """
    if not kwargs:
        answer = _scalar_station_pressure_hpa(altimeter_setting_hpa, elevation_ft)
        if answer is not None:
            return answer
    return ufunc.station_pressure_hpa(altimeter_setting_hpa, elevation_ft, **kwargs)


_scalar_station_pressure_hpa = scalars["station_pressure_hpa"]


class ArcTurn(NamedTuple):
    """A turn between a radial and an arc: what `arc_entry` and `arc_exit` give."""

    radial_at_roll_in_deg: object
    """Radial at which roll-in begins."""
    distance_at_roll_in_nm: object
    """Ground distance from the station at which roll-in begins."""
    radial_at_roll_out_deg: object
    """Radial at which the wings are level again."""
    distance_at_roll_out_nm: object
    """Ground distance from the station at which the wings are level again."""
    angle_at_station_deg: object
    """Angle at the station between the two, positive in the sense of the arc: the lead radials when leaving the arc."""
    heading_change_deg: object
    """Change of heading, right positive."""
    duration_s: object
    """From roll-in to wings level."""


def arc_entry(radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""Where on a radial to begin the turn onto a DME arc, in wind and with roll.

    The end of the turn lies on the arc with the track along it; the bearing of the end is the one
    for which the beginning lies on the radial. In still air with an instant roll the distance is
    `sqrt(D^2 + 2 D r)` inbound and `sqrt(D^2 - 2 D r)` outbound.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        The radial, any finite number.
    flown : {"inbound", "outbound"}
        Whether the radial is flown inbound or outbound.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 5000.
    sense : {"clockwise", "counterclockwise"}
        Which way round the station the arc is flown.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the radial's north (left out with the other half of the
        wind: calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `radial_at_roll_in_deg`: Radial at which roll-in begins, in degrees.
        `distance_at_roll_in_nm`: Ground distance from the station at which roll-in begins, in
        nautical miles.
        `radial_at_roll_out_deg`: Radial at which the wings are level again, in degrees.
        `distance_at_roll_out_nm`: Ground distance from the station at which the wings are level
        again, in nautical miles.
        `angle_at_station_deg`: Angle at the station between the two, positive in the sense of the
        arc: the lead radials when leaving the arc, in degrees.
        `heading_change_deg`: Change of heading, right positive, in degrees.
        `duration_s`: From roll-in to wings level, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a turn that does not fit (outbound in still air: an
        arc below twice the turn radius), a wind that the airspeed cannot hold. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.

    Degenerate cases: An arc counts along the ground; `ground_distance_nm` turns the DME reading
    that is flown into it.

    Source: Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_entry(300.0, 'inbound', 12.0, 'clockwise', 210.0, 250.0, 40.0, 25.0, 3.0, 5.0).distance_at_roll_in_nm:.2f}"
    '13.92'
    >>> [f"{value:.2f}" for value in lubberline.arc_entry([300.0, 300.0], 'inbound', 12.0, 'clockwise', 210.0, 250.0, 40.0, 25.0, 3.0, 5.0).distance_at_roll_in_nm]
    ['13.92', '13.92']
    """
    flown = chosen(_RADIAL_FLOWN, "flown", flown)
    sense = chosen(_ARC_SENSE, "sense", sense)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_arc_entry(radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(ArcTurn, answer)
    return ArcTurn._make(many("arc_entry", ArcTurn._fields, (radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_arc_entry = scalars["arc_entry"]


def arc_exit(radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""Where on a DME arc to begin the turn onto a radial, in wind and with roll: the lead radial.

    The turn begins on the arc along it and ends on the radial. In still air with an instant roll
    the lead is `asin(r / (D - r))` toward the station and `asin(r / (D + r))` away from it.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        The radial, any finite number.
    flown : {"inbound", "outbound"}
        Whether the radial is flown inbound or outbound.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 5000.
    sense : {"clockwise", "counterclockwise"}
        Which way round the station the arc is flown.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the radial's north (left out with the other half of the
        wind: calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `radial_at_roll_in_deg`: Radial at which roll-in begins, in degrees.
        `distance_at_roll_in_nm`: Ground distance from the station at which roll-in begins, in
        nautical miles.
        `radial_at_roll_out_deg`: Radial at which the wings are level again, in degrees.
        `distance_at_roll_out_nm`: Ground distance from the station at which the wings are level
        again, in nautical miles.
        `angle_at_station_deg`: Angle at the station between the two, positive in the sense of the
        arc: the lead radials when leaving the arc, in degrees.
        `heading_change_deg`: Change of heading, right positive, in degrees.
        `duration_s`: From roll-in to wings level, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a turn that does not fit (toward the station in
        still air: an arc below twice the turn radius), a wind that the airspeed cannot hold. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error in the plane; 2e-4 NM on the ellipsoid within 20 NM of the station.

    Degenerate cases: An arc counts along the ground; `ground_distance_nm` turns the DME reading
    that is flown into it.

    Source: Derived from the geometry of tangent curves and the equilibrium of a coordinated turn.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_exit(300.0, 'inbound', 12.0, 'clockwise', 210.0, 250.0, 40.0, 25.0, 3.0, 5.0).angle_at_station_deg:.2f}"
    '11.65'
    >>> [f"{value:.2f}" for value in lubberline.arc_exit([300.0, 300.0], 'inbound', 12.0, 'clockwise', 210.0, 250.0, 40.0, 25.0, 3.0, 5.0).angle_at_station_deg]
    ['11.65', '11.65']
    """
    flown = chosen(_RADIAL_FLOWN, "flown", flown)
    sense = chosen(_ARC_SENSE, "sense", sense)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_arc_exit(radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(ArcTurn, answer)
    return ArcTurn._make(many("arc_exit", ArcTurn._fields, (radial_deg, flown, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_arc_exit = scalars["arc_exit"]


def design_base_turn_offset_deg(true_airspeed_kt, outbound_time_s, units, **kwargs):
    r"""The angle between outbound track and inbound course of a base turn, as published.

    `36 / T` up to 170 kt, `0.215 V / T` above, with T in minutes; SI: up to 315 km/h, `0.116 V / T`
    above.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    outbound_time_s : array_like, in seconds
        Time outbound, above 0 to 1 000 000.
    units : {"non_si", "si"}
        In which units the formula is printed.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published: within 2 percent of `base_turn_offset_exact_deg` for two minutes, 7
    percent high at 250 kt for one.

    Degenerate cases: At 170 kt the two formulas differ by 1.5 percent.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, base turns.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.design_base_turn_offset_deg(157.23, 120.0, 'non_si'):.1f}"
    '18.0'
    >>> f"{lubberline.design_base_turn_offset_deg(200.0, 120.0, 'non_si'):.1f}"
    '21.5'
    >>> [f"{value:.1f}" for value in lubberline.design_base_turn_offset_deg([157.23, 157.23], 120.0, 'non_si')]
    ['18.0', '18.0']
    """
    units = chosen(_DESIGN_UNITS, "units", units)
    if not kwargs:
        answer = _scalar_design_base_turn_offset_deg(true_airspeed_kt, outbound_time_s, units)
        if answer is not None:
            return answer
    return ufunc.design_base_turn_offset_deg(true_airspeed_kt, outbound_time_s, units, **kwargs)


_scalar_design_base_turn_offset_deg = scalars["design_base_turn_offset_deg"]


def base_turn_offset_exact_deg(turn_radius_nm, outbound_leg_nm, **kwargs):
    r"""The angle of a base turn for which, in still air with an instant roll, the turn ends on the inbound course.

    `2 atan(r / L)`.

    Parameters
    ----------
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 1000.
    outbound_leg_nm : array_like, in nautical miles
        Length of the outbound leg, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: Without an outbound leg it is 180 degrees.

    Source: Derived: a circle tangent to two lines that cross at the fix.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.base_turn_offset_exact_deg(0.834, 5.241):.2f}"
    '18.08'
    >>> [f"{value:.2f}" for value in lubberline.base_turn_offset_exact_deg([0.834, 0.834], 5.241)]
    ['18.08', '18.08']
    """
    if not kwargs:
        answer = _scalar_base_turn_offset_exact_deg(turn_radius_nm, outbound_leg_nm)
        if answer is not None:
            return answer
    return ufunc.base_turn_offset_exact_deg(turn_radius_nm, outbound_leg_nm, **kwargs)


_scalar_base_turn_offset_exact_deg = scalars["base_turn_offset_exact_deg"]


class BaseTurn(NamedTuple):
    """A base turn in a wind: what `base_turn` and `base_turn_on_track` give."""

    track_deg: object
    """Direction over the ground outbound."""
    heading_deg: object
    """Heading that holds it."""
    offset_deg: object
    """From the reciprocal of the inbound course to the outbound track, right positive."""
    outbound_time_s: object
    """Time from the fix to the beginning of the turn."""
    heading_change_deg: object
    """Heading to turn through, right positive."""
    established_nm: object
    """Distance from the fix at which the wings are level on the inbound course."""
    duration_s: object
    """Time from the fix until then."""


def base_turn(inbound_course_deg, turn_side, outbound_time_s, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""The base turn of a time outbound in a steady wind, exactly: the track and heading from which the turn ends on the inbound course.

    The turn runs with its roll between the wind-corrected headings; over the ground wind times
    duration is added. Its end has no part across the inbound course.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    turn_side : {"right", "left"}
        Which way the turn inbound goes.
    outbound_time_s : array_like, in seconds
        Time outbound, above 0 to 1 000 000.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    BaseTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `track_deg`: Direction over the ground outbound, in degrees.
        `heading_deg`: Heading that holds it, in degrees.
        `offset_deg`: From the reciprocal of the inbound course to the outbound track, right
        positive, in degrees.
        `outbound_time_s`: Time from the fix to the beginning of the turn, in seconds.
        `heading_change_deg`: Heading to turn through, right positive, in degrees.
        `established_nm`: Distance from the fix at which the wings are level on the inbound course,
        in nautical miles.
        `duration_s`: Time from the fix until then, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, an inbound course that the airspeed cannot hold, a
        turn that ends past the fix whatever the heading. In arrays such a point is NaN and NumPy's
        `invalid` warning.

    Notes
    -----
    Accuracy: 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound
    track over the fix.

    Degenerate cases: In calm air with an instant roll the angle is that of
    `base_turn_offset_exact_deg`.

    Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.base_turn(100.0, 'right', 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0).heading_deg:.1f}"
    '271.7'
    >>> f"{lubberline.base_turn(100.0, 'right', 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0).established_nm:.2f}"
    '6.86'
    >>> [f"{value:.1f}" for value in lubberline.base_turn([100.0, 100.0], 'right', 120.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0).heading_deg]
    ['271.7', '271.7']
    """
    turn_side = chosen(_HOLDING_SIDE, "turn_side", turn_side)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_base_turn(inbound_course_deg, turn_side, outbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(BaseTurn, answer)
    return BaseTurn._make(many("base_turn", BaseTurn._fields, (inbound_course_deg, turn_side, outbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_base_turn = scalars["base_turn"]


def base_turn_on_track(inbound_course_deg, outbound_track_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""The base turn on a published outbound track in a steady wind, exactly: the heading, and the time after which the turn ends on the inbound course.

    As `base_turn`; for a given track the condition is linear in the time.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    outbound_track_deg : array_like, in degrees
        Direction over the ground outbound, against the same north.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    BaseTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `track_deg`: Direction over the ground outbound, in degrees.
        `heading_deg`: Heading that holds it, in degrees.
        `offset_deg`: From the reciprocal of the inbound course to the outbound track, right
        positive, in degrees.
        `outbound_time_s`: Time from the fix to the beginning of the turn, in seconds.
        `heading_change_deg`: Heading to turn through, right positive, in degrees.
        `established_nm`: Distance from the fix at which the wings are level on the inbound course,
        in nautical miles.
        `duration_s`: Time from the fix until then, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a track along the inbound course, a course that the
        airspeed cannot hold, a wind in which the turn does not end on the course before the fix. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1e-9 of its size in the plane of the fix. The aircraft is taken to be on the outbound
    track over the fix.

    Degenerate cases: The turn goes to the side of the inbound course.

    Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.base_turn_on_track(100.0, 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0).outbound_time_s:.1f}"
    '91.8'
    >>> f"{lubberline.base_turn_on_track(100.0, 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0).heading_deg:.1f}"
    '267.3'
    >>> [f"{value:.1f}" for value in lubberline.base_turn_on_track([100.0, 100.0], 262.0, 180.0, 40.0, 25.0, 25.0, 3.0, 5.0).outbound_time_s]
    ['91.8', '91.8']
    """
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_base_turn_on_track(inbound_course_deg, outbound_track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(BaseTurn, answer)
    return BaseTurn._make(many("base_turn_on_track", BaseTurn._fields, (inbound_course_deg, outbound_track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_base_turn_on_track = scalars["base_turn_on_track"]


class CourseArcCrossing(NamedTuple):
    """Where a course meets an arc: what `course_arc_crossing` gives."""

    latitude1_deg: object
    """Latitude of the point farther back along the course."""
    longitude1_deg: object
    """Its longitude."""
    along1_nm: object
    """Its distance along the course, negative behind its point."""
    latitude2_deg: object
    """Latitude of the point farther on along the course."""
    longitude2_deg: object
    """Its longitude."""
    along2_nm: object
    """Its distance along the course, negative behind its point."""


def course_arc_crossing(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm, **kwargs):
    r"""Where a course (a radial) meets a circle (a DME arc) on the WGS-84 ellipsoid: both points.

    The course is extended both ways; the arc is the geodesic circle about its centre.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    center_lat_deg : array_like, in degrees
        Latitude of the centre, -90 to 90.
    center_lon_deg : array_like, in degrees
        Longitude of the centre, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the circle, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    CourseArcCrossing
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude1_deg`: Latitude of the point farther back along the course, in degrees.
        `longitude1_deg`: Its longitude, in degrees.
        `along1_nm`: Its distance along the course, negative behind its point, in nautical miles.
        `latitude2_deg`: Latitude of the point farther on along the course, in degrees.
        `longitude2_deg`: Its longitude, in degrees.
        `along2_nm`: Its distance along the course, negative behind its point, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a course that misses the circle. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across; along, soft where the course only just cuts the circle.

    Degenerate cases: A course that touches the circle gives its point twice; a miss below a
    millimetre counts as touching.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.course_arc_crossing(60.0, -10.0, 90.0, 60.0, -9.0, 12.0).along1_nm:.3f}"
    '18.131'
    >>> [f"{value:.3f}" for value in lubberline.course_arc_crossing([60.0, 60.0], -10.0, 90.0, 60.0, -9.0, 12.0).along1_nm]
    ['18.131', '18.131']
    """
    if not kwargs:
        answer = _scalar_course_arc_crossing(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm)
        if answer is not None:
            return named(CourseArcCrossing, answer)
    return CourseArcCrossing._make(many("course_arc_crossing", CourseArcCrossing._fields, (lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm), kwargs))


_scalar_course_arc_crossing = scalars["course_arc_crossing"]


class ArcArcCrossing(NamedTuple):
    """Where two arcs meet: what `arc_arc_crossing` gives."""

    latitude1_deg: object
    """Latitude of the point left of the line from the first centre to the second."""
    longitude1_deg: object
    """Its longitude."""
    latitude2_deg: object
    """Latitude of the point right of that line."""
    longitude2_deg: object
    """Its longitude."""


def arc_arc_crossing(center1_lat_deg, center1_lon_deg, radius1_nm, center2_lat_deg, center2_lon_deg, radius2_nm, **kwargs):
    r"""Where two circles (two DME arcs) meet on the WGS-84 ellipsoid: both points.

    Geodesic circles about their centres; the points lie left and right of the line from the first
    centre to the second.

    Parameters
    ----------
    center1_lat_deg : array_like, in degrees
        Latitude of the first centre, -90 to 90.
    center1_lon_deg : array_like, in degrees
        Longitude of the first centre, any finite number.
    radius1_nm : array_like, in nautical miles
        Radius of the first circle, above 0 to 5000.
    center2_lat_deg : array_like, in degrees
        Latitude of the second centre, -90 to 90.
    center2_lon_deg : array_like, in degrees
        Longitude of the second centre, any finite number.
    radius2_nm : array_like, in nautical miles
        Radius of the second circle, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcArcCrossing
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude1_deg`: Latitude of the point left of the line from the first centre to the second,
        in degrees.
        `longitude1_deg`: Its longitude, in degrees.
        `latitude2_deg`: Latitude of the point right of that line, in degrees.
        `longitude2_deg`: Its longitude, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, circles that do not meet, or circles about one
        centre. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across the circles; along, soft where they only just meet.

    Degenerate cases: Circles that touch give their point twice; a miss below a millimetre counts as
    touching.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_arc_crossing(0.0, 0.0, 150.0, 0.0, -4.991, 150.0).longitude1_deg:.4f}"
    '-2.4955'
    >>> [f"{value:.4f}" for value in lubberline.arc_arc_crossing([0.0, 0.0], 0.0, 150.0, 0.0, -4.991, 150.0).longitude1_deg]
    ['-2.4955', '-2.4955']
    """
    if not kwargs:
        answer = _scalar_arc_arc_crossing(center1_lat_deg, center1_lon_deg, radius1_nm, center2_lat_deg, center2_lon_deg, radius2_nm)
        if answer is not None:
            return named(ArcArcCrossing, answer)
    return ArcArcCrossing._make(many("arc_arc_crossing", ArcArcCrossing._fields, (center1_lat_deg, center1_lon_deg, radius1_nm, center2_lat_deg, center2_lon_deg, radius2_nm), kwargs))


_scalar_arc_arc_crossing = scalars["arc_arc_crossing"]


class ArcTangents(NamedTuple):
    """The tangents from a point to an arc: what `arc_tangents` gives."""

    latitude1_deg: object
    """Latitude of the contact left of the line to the centre."""
    longitude1_deg: object
    """Its longitude."""
    course1_deg: object
    """True course of the tangent there, onward, 0 to 360."""
    latitude2_deg: object
    """Latitude of the contact right of the line to the centre."""
    longitude2_deg: object
    """Its longitude."""
    course2_deg: object
    """True course of the tangent there, onward, 0 to 360."""


def arc_tangents(point_lat_deg, point_lon_deg, center_lat_deg, center_lon_deg, radius_nm, **kwargs):
    r"""The tangents from a point to a circle (a DME arc) on the WGS-84 ellipsoid: both contacts.

    At the contact the geodesic from the point stands square to the radius.

    Parameters
    ----------
    point_lat_deg : array_like, in degrees
        Latitude of the point, -90 to 90.
    point_lon_deg : array_like, in degrees
        Longitude of the point, any finite number.
    center_lat_deg : array_like, in degrees
        Latitude of the centre, -90 to 90.
    center_lon_deg : array_like, in degrees
        Longitude of the centre, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the circle, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcTangents
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude1_deg`: Latitude of the contact left of the line to the centre, in degrees.
        `longitude1_deg`: Its longitude, in degrees.
        `course1_deg`: True course of the tangent there, onward, 0 to 360, in degrees.
        `latitude2_deg`: Latitude of the contact right of the line to the centre, in degrees.
        `longitude2_deg`: Its longitude, in degrees.
        `course2_deg`: True course of the tangent there, onward, 0 to 360, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a point inside the circle, or one whose antipode is
        inside. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre off the circle; the contact is soft along it.

    Degenerate cases: A point on the circle is its own contact, twice.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_tangents(40.0766111111, -67.2096388889, 40.1734722222, -70.2126666667, 100.0).latitude1_deg:.4f}"
    '38.9808'
    >>> [f"{value:.4f}" for value in lubberline.arc_tangents([40.0766111111, 40.0766111111], -67.2096388889, 40.1734722222, -70.2126666667, 100.0).latitude1_deg]
    ['38.9808', '38.9808']
    """
    if not kwargs:
        answer = _scalar_arc_tangents(point_lat_deg, point_lon_deg, center_lat_deg, center_lon_deg, radius_nm)
        if answer is not None:
            return named(ArcTangents, answer)
    return ArcTangents._make(many("arc_tangents", ArcTangents._fields, (point_lat_deg, point_lon_deg, center_lat_deg, center_lon_deg, radius_nm), kwargs))


_scalar_arc_tangents = scalars["arc_tangents"]


def arc_length_nm(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, sweep_deg, **kwargs):
    r"""Length of an arc of a circle on the WGS-84 ellipsoid.

    The integral of the reduced length of the geodesics from the centre over their azimuth; in the
    plane `r sweep`.

    Parameters
    ----------
    center_lat_deg : array_like, in degrees
        Latitude of the centre, -90 to 90.
    center_lon_deg : array_like, in degrees
        Longitude of the centre, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the circle, above 0 to 5000.
    start_bearing_deg : array_like, in degrees
        Bearing of the arc's beginning from the centre, any finite number.
    sweep_deg : array_like, in degrees
        Angle of the arc at the centre, clockwise positive, -360 to 360.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A micrometre.

    Degenerate cases: A sweep of zero has no length.

    Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), section 3;
    derived. Checked against FAA Order 8260.54A (2007).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_length_nm(38.2236388889, -77.9065, 5.0, 91.0, 135.0):.6f}"
    '11.780968'
    >>> [f"{value:.6f}" for value in lubberline.arc_length_nm([38.2236388889, 38.2236388889], -77.9065, 5.0, 91.0, 135.0)]
    ['11.780968', '11.780968']
    """
    if not kwargs:
        answer = _scalar_arc_length_nm(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, sweep_deg)
        if answer is not None:
            return answer
    return ufunc.arc_length_nm(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, sweep_deg, **kwargs)


_scalar_arc_length_nm = scalars["arc_length_nm"]


def on_arc(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, sense, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs):
    r"""Whether a point lies on an arc of a circle: 1 if it does, 0 if not.

    Within the tolerance off the circle, and between the bearings of the arc's ends, which belong to
    it.

    Parameters
    ----------
    center_lat_deg : array_like, in degrees
        Latitude of the centre, -90 to 90.
    center_lon_deg : array_like, in degrees
        Longitude of the centre, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the circle, above 0 to 5000.
    start_bearing_deg : array_like, in degrees
        Bearing of the arc's beginning from the centre, any finite number.
    end_bearing_deg : array_like, in degrees
        Bearing of the arc's end from the centre, any finite number.
    sense : {"clockwise", "counterclockwise"}
        Which way round the arc goes.
    point_lat_deg : array_like, in degrees
        Latitude of the point, -90 to 90.
    point_lon_deg : array_like, in degrees
        Longitude of the point, any finite number.
    tolerance_nm : array_like, in nautical miles
        How far off the circle still counts, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 15 nanometres off the circle.

    Degenerate cases: Equal bearings are the whole circle.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.on_arc(0.0, 0.0, 60.0, 0.0, 180.0, 'clockwise', 0.0, 0.998204, 0.001):.0f}"
    '1'
    >>> [f"{value:.0f}" for value in lubberline.on_arc([0.0, 0.0], 0.0, 60.0, 0.0, 180.0, 'clockwise', 0.0, 0.998204, 0.001)]
    ['1', '1']
    """
    sense = chosen(_ARC_SENSE, "sense", sense)
    if not kwargs:
        answer = _scalar_on_arc(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, sense, point_lat_deg, point_lon_deg, tolerance_nm)
        if answer is not None:
            return answer
    return ufunc.on_arc(center_lat_deg, center_lon_deg, radius_nm, start_bearing_deg, end_bearing_deg, sense, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs)


_scalar_on_arc = scalars["on_arc"]


class ArcExtent(NamedTuple):
    """How far a circle reaches along a course: what `arc_extent` gives."""

    latitude1_deg: object
    """Latitude of the point of the circle farthest on along the course."""
    longitude1_deg: object
    """Its longitude."""
    abeam1_latitude_deg: object
    """Latitude of the point of the course abeam of it."""
    abeam1_longitude_deg: object
    """Its longitude."""
    latitude2_deg: object
    """Latitude of the point of the circle farthest back along the course."""
    longitude2_deg: object
    """Its longitude."""
    abeam2_latitude_deg: object
    """Latitude of the point of the course abeam of it."""
    abeam2_longitude_deg: object
    """Its longitude."""


def arc_extent(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm, **kwargs):
    r"""How far a circle reaches along a course on the WGS-84 ellipsoid: its points whose tangents stand square to the course, and the points abeam.

    Farthest on along the course, then farthest back.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    center_lat_deg : array_like, in degrees
        Latitude of the centre, -90 to 90.
    center_lon_deg : array_like, in degrees
        Longitude of the centre, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the circle, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcExtent
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude1_deg`: Latitude of the point of the circle farthest on along the course, in
        degrees.
        `longitude1_deg`: Its longitude, in degrees.
        `abeam1_latitude_deg`: Latitude of the point of the course abeam of it, in degrees.
        `abeam1_longitude_deg`: Its longitude, in degrees.
        `latitude2_deg`: Latitude of the point of the circle farthest back along the course, in
        degrees.
        `longitude2_deg`: Its longitude, in degrees.
        `abeam2_latitude_deg`: Latitude of the point of the course abeam of it, in degrees.
        `abeam2_longitude_deg`: Its longitude, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A micrometre off the circle; soft along it.

    Degenerate cases: The course may miss, touch or cut the circle.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_extent(40.0766111111, -65.2113055556, 350.0, 40.1734722222, -70.2126666667, 50.0).latitude1_deg:.4f}"
    '40.9847'
    >>> [f"{value:.4f}" for value in lubberline.arc_extent([40.0766111111, 40.0766111111], -65.2113055556, 350.0, 40.1734722222, -70.2126666667, 50.0).latitude1_deg]
    ['40.9847', '40.9847']
    """
    if not kwargs:
        answer = _scalar_arc_extent(lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm)
        if answer is not None:
            return named(ArcExtent, answer)
    return ArcExtent._make(many("arc_extent", ArcExtent._fields, (lat_deg, lon_deg, course_deg, center_lat_deg, center_lon_deg, radius_nm), kwargs))


_scalar_arc_extent = scalars["arc_extent"]


def cold_temperature_correction_ft(height_ft, temperature_degc, elevation_ft=0.0, **kwargs):
    r"""Cold-temperature correction by ICAO's formula, to add to an altitude on the procedure.

    `H (15 - t0)/(273 + t0 - 0.5 L (H + E))` with height `H`, elevation `E` of the source, L =
    0.00198 degC/ft and `t0 = t + L E`. Offered beside it:
    `cold_temperature_correction_tabulated_ft`, `cold_temperature_correction_rule_ft` and, exact,
    `cold_temperature_correction_exact_ft`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Charted height above the altimeter setting source, 0 to 20 000.
    temperature_degc : array_like, in degrees Celsius
        Temperature at the altimeter setting source, -200 to 200.
    elevation_ft : array_like, in feet
        Elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The document gives 5 percent, for sources to 10 000 ft and heights to 5000 ft.

    Degenerate cases: Warmer than standard it is negative, which nobody subtracts in practice. No
    height, no correction.

    Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, from memory; it
    reproduces ICAO's table.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cold_temperature_correction_ft(1500.0, -20.0, 0.0):.1f}"
    '208.7'
    >>> f"{lubberline.cold_temperature_correction_ft(1500.0, -20.0, 3000.0):.1f}"
    '171.3'
    >>> [f"{value:.1f}" for value in lubberline.cold_temperature_correction_ft([1500.0, 1500.0], -20.0, 0.0)]
    ['208.7', '208.7']
    """
    if not kwargs:
        answer = _scalar_cold_temperature_correction_ft(height_ft, temperature_degc, elevation_ft)
        if answer is not None:
            return answer
    return ufunc.cold_temperature_correction_ft(height_ft, temperature_degc, elevation_ft, **kwargs)


_scalar_cold_temperature_correction_ft = scalars["cold_temperature_correction_ft"]


def cold_temperature_correction_tabulated_ft(height_ft, temperature_degc, **kwargs):
    r"""Cold-temperature correction as the published table has it: rounded up to the next 10 ft.

    The formula of `cold_temperature_correction_ft` for a source at sea level, rounded up; between
    the table's own heights (200 to 5000 ft) and temperatures (10 to -50 degC) likewise. To read off
    between cells instead, take `cold_temperature_correction_by_method_ft`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Charted height above the altimeter setting source, 0 to 20 000.
    temperature_degc : array_like, in degrees Celsius
        Temperature at the altimeter setting source, -200 to 200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: All 98 cells of the table.

    Degenerate cases: Warmer than 15 degC there is no correction, and none without height.

    Source: FAA Aeronautical Information Manual (20 April 2023), TBL 7-3-1, ICAO Cold Temperature
    Error Table, from ICAO Doc 8168 Vol I (5th ed. 2006), Table III-1-4-1 b).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cold_temperature_correction_tabulated_ft(1500.0, -20.0):.0f}"
    '210'
    >>> [f"{value:.0f}" for value in lubberline.cold_temperature_correction_tabulated_ft([1500.0, 1500.0], -20.0)]
    ['210', '210']
    """
    if not kwargs:
        answer = _scalar_cold_temperature_correction_tabulated_ft(height_ft, temperature_degc)
        if answer is not None:
            return answer
    return ufunc.cold_temperature_correction_tabulated_ft(height_ft, temperature_degc, **kwargs)


_scalar_cold_temperature_correction_tabulated_ft = scalars["cold_temperature_correction_tabulated_ft"]


def cold_temperature_correction_rule_ft(height_ft, temperature_degc, elevation_ft=0.0, **kwargs):
    r"""Cold-temperature correction by the rule of 4 percent for each 10 degC below standard at the source.

    `0.04 H (t_standard - t)/10`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Charted height above the altimeter setting source, 0 to 20 000.
    temperature_degc : array_like, in degrees Celsius
        Temperature at the altimeter setting source, -200 to 200.
    elevation_ft : array_like, in feet
        Elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published: on the safe side above -15 degC at the source.

    Degenerate cases: Warmer than standard it is negative.

    Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III Section 1 Chapter 4, 4.3.1, read in a
    quotation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cold_temperature_correction_rule_ft(1500.0, -10.0, 0.0):.1f}"
    '150.0'
    >>> [f"{value:.1f}" for value in lubberline.cold_temperature_correction_rule_ft([1500.0, 1500.0], -10.0, 0.0)]
    ['150.0', '150.0']
    """
    if not kwargs:
        answer = _scalar_cold_temperature_correction_rule_ft(height_ft, temperature_degc, elevation_ft)
        if answer is not None:
            return answer
    return ufunc.cold_temperature_correction_rule_ft(height_ft, temperature_degc, elevation_ft, **kwargs)


_scalar_cold_temperature_correction_rule_ft = scalars["cold_temperature_correction_rule_ft"]


def cold_temperature_correction_exact_ft(height_ft, temperature_degc, elevation_ft=0.0, **kwargs):
    r"""Cold-temperature correction, exact for air that is as cold against standard all the way up as at the source.

    The indicated height at which the true height is the charted one, less that: the inverse of
    `true_altitude_ft` for a source at standard pressure.

    Parameters
    ----------
    height_ft : array_like, in feet
        Charted height above the altimeter setting source, 0 to 20 000.
    temperature_degc : array_like, in degrees Celsius
        Temperature at the altimeter setting source, -200 to 200.
    elevation_ft : array_like, in feet
        Elevation of the altimeter setting source, -16 500 to 60 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding for such a column.

    Degenerate cases: Warmer than standard it is negative. No height, no correction.

    Source: Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cold_temperature_correction_exact_ft(1500.0, -20.0, 0.0):.1f}"
    '208.8'
    >>> [f"{value:.1f}" for value in lubberline.cold_temperature_correction_exact_ft([1500.0, 1500.0], -20.0, 0.0)]
    ['208.8', '208.8']
    """
    if not kwargs:
        answer = _scalar_cold_temperature_correction_exact_ft(height_ft, temperature_degc, elevation_ft)
        if answer is not None:
            return answer
    return ufunc.cold_temperature_correction_exact_ft(height_ft, temperature_degc, elevation_ft, **kwargs)


_scalar_cold_temperature_correction_exact_ft = scalars["cold_temperature_correction_exact_ft"]


class CrossTrack(NamedTuple):
    """Where a point lies relative to a course: what `cross_track` gives."""

    cross_track_nm: object
    """Distance across the course, positive right of it."""
    along_track_nm: object
    """Distance along the course to the point abeam, positive onward."""
    abeam_latitude_deg: object
    """Latitude of the point of the course abeam."""
    abeam_longitude_deg: object
    """Longitude of the point of the course abeam."""
    abeam_course_deg: object
    """True course there, 0 to 360."""


def cross_track(lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg, **kwargs):
    r"""Signed cross-track and along-track distance of a point from a course, and the point abeam, on the WGS-84 ellipsoid.

    Abeam, the geodesic to the point stands square to the course; found by Newton's method on its
    direction.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    point_lat_deg : array_like, in degrees
        Latitude of the point, -90 to 90.
    point_lon_deg : array_like, in degrees
        Longitude of the point, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    CrossTrack
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `cross_track_nm`: Distance across the course, positive right of it, in nautical miles.
        `along_track_nm`: Distance along the course to the point abeam, positive onward, in nautical
        miles.
        `abeam_latitude_deg`: Latitude of the point of the course abeam, in degrees.
        `abeam_longitude_deg`: Longitude of the point of the course abeam, in degrees.
        `abeam_course_deg`: True course there, 0 to 360, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A tenth of a micrometre within 5 000 NM.

    Degenerate cases: A point on the course is at a cross-track of zero. A point a quarter of the
    earth away on both sides has no abeam point that means anything.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cross_track(0.0, 0.0, 90.0, 0.5, 1.0).cross_track_nm:.2f}"
    '-29.85'
    >>> [f"{value:.2f}" for value in lubberline.cross_track([0.0, 0.0], 0.0, 90.0, 0.5, 1.0).cross_track_nm]
    ['-29.85', '-29.85']
    """
    if not kwargs:
        answer = _scalar_cross_track(lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg)
        if answer is not None:
            return named(CrossTrack, answer)
    return CrossTrack._make(many("cross_track", CrossTrack._fields, (lat_deg, lon_deg, course_deg, point_lat_deg, point_lon_deg), kwargs))


_scalar_cross_track = scalars["cross_track"]


class CourseCrossing(NamedTuple):
    """Where two courses meet: what `course_crossing` gives."""

    latitude_deg: object
    """Latitude of the point."""
    longitude_deg: object
    """Longitude of the point."""
    along_first_nm: object
    """Distance along the first course, negative behind its point."""
    along_second_nm: object
    """Distance along the second course, negative behind its point."""
    first_course_deg: object
    """True bearing of the first course there, 0 to 360."""
    second_course_deg: object
    """True bearing of the second course there, 0 to 360."""


def course_crossing(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, **kwargs):
    r"""Where two courses (two radials) meet on the WGS-84 ellipsoid.

    Extended both ways; of the two meeting points, which are all but antipodal, the one nearer to
    both points. Its distances along the courses say whether it lies ahead (positive) or behind.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of a point of the first course, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course1_deg : array_like, in degrees
        True course there, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of a point of the second course, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course2_deg : array_like, in degrees
        True course there, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    CourseCrossing
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude_deg`: Latitude of the point, in degrees.
        `longitude_deg`: Longitude of the point, in degrees.
        `along_first_nm`: Distance along the first course, negative behind its point, in nautical
        miles.
        `along_second_nm`: Distance along the second course, negative behind its point, in nautical
        miles.
        `first_course_deg`: True bearing of the first course there, 0 to 360, in degrees.
        `second_course_deg`: True bearing of the second course there, 0 to 360, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or courses along one line. In arrays such a point is
        NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across the courses; along them that divided by the sine of their angle.

    Degenerate cases: Courses along one line meet everywhere. At a pole the courses there are
    against the meridian of the longitude given.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.course_crossing(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2113055556, 187.0).along_first_nm:.3f}"
    '77.961'
    >>> [f"{value:.3f}" for value in lubberline.course_crossing([40.1734722222, 40.1734722222], -70.2126666667, 90.0, 42.0766111111, -68.2113055556, 187.0).along_first_nm]
    ['77.961', '77.961']
    """
    if not kwargs:
        answer = _scalar_course_crossing(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg)
        if answer is not None:
            return named(CourseCrossing, answer)
    return CourseCrossing._make(many("course_crossing", CourseCrossing._fields, (lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg), kwargs))


_scalar_course_crossing = scalars["course_crossing"]


def on_course(lat_deg, lon_deg, course_deg, reach, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs):
    r"""Whether a point lies on a course: 1 if it does, 0 if not.

    Within the tolerance across it, and for a course that reaches onward also behind its point.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    reach : {"onward", "both_ways"}
        How far the course reaches.
    point_lat_deg : array_like, in degrees
        Latitude of the point, -90 to 90.
    point_lon_deg : array_like, in degrees
        Longitude of the point, any finite number.
    tolerance_nm : array_like, in nautical miles
        How far across the course still counts, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As `cross_track`.

    Degenerate cases: The course's own point lies on it.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.on_course(0.0, 0.0, 90.0, 'onward', 0.0, 5.0, 0.0001):.0f}"
    '1'
    >>> [f"{value:.0f}" for value in lubberline.on_course([0.0, 0.0], 0.0, 90.0, 'onward', 0.0, 5.0, 0.0001)]
    ['1', '1']
    """
    reach = chosen(_COURSE_REACH, "reach", reach)
    if not kwargs:
        answer = _scalar_on_course(lat_deg, lon_deg, course_deg, reach, point_lat_deg, point_lon_deg, tolerance_nm)
        if answer is not None:
            return answer
    return ufunc.on_course(lat_deg, lon_deg, course_deg, reach, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs)


_scalar_on_course = scalars["on_course"]


def on_leg(lat1_deg, lon1_deg, lat2_deg, lon2_deg, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs):
    r"""Whether a point lies on the geodesic between two points: 1 if it does, 0 if not.

    Within the tolerance across it and beyond its ends.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the beginning, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of the beginning, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of the end, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of the end, any finite number.
    point_lat_deg : array_like, in degrees
        Latitude of the point, -90 to 90.
    point_lon_deg : array_like, in degrees
        Longitude of the point, any finite number.
    tolerance_nm : array_like, in nautical miles
        How far from it still counts, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As `cross_track`.

    Degenerate cases: Between coincident points only the point itself lies.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.on_leg(0.0, 0.0, 0.0, 6.0, 0.0, 7.0, 0.0001):.0f}"
    '0'
    >>> [f"{value:.0f}" for value in lubberline.on_leg([0.0, 0.0], 0.0, 0.0, 6.0, 0.0, 7.0, 0.0001)]
    ['0', '0']
    """
    if not kwargs:
        answer = _scalar_on_leg(lat1_deg, lon1_deg, lat2_deg, lon2_deg, point_lat_deg, point_lon_deg, tolerance_nm)
        if answer is not None:
            return answer
    return ufunc.on_leg(lat1_deg, lon1_deg, lat2_deg, lon2_deg, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs)


_scalar_on_leg = scalars["on_leg"]


def crossover_altitude_ft(cas_kt, mach, **kwargs):
    r"""The pressure altitude at which a calibrated airspeed and a Mach number are one speed.

    Where the static pressure is the impact pressure of the calibrated airspeed over the impact
    ratio of the Mach number; the temperature plays no part.

    Parameters
    ----------
    cas_kt : array_like, in knots
        Calibrated airspeed, 0 to 5000.
    mach : array_like
        Mach number, 0 to 10.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or no crossover from -5 to 80 km. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Speeds of zero cross nowhere.

    Source: The definitions of calibrated airspeed and Mach number, with ICAO Doc 7488/3 (3rd
    edition 1993).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.crossover_altitude_ft(300.0, 0.78):.0f}"
    '29314'
    >>> [f"{value:.0f}" for value in lubberline.crossover_altitude_ft([300.0, 300.0], 0.78)]
    ['29314', '29314']
    """
    if not kwargs:
        answer = _scalar_crossover_altitude_ft(cas_kt, mach)
        if answer is not None:
            return answer
    return ufunc.crossover_altitude_ft(cas_kt, mach, **kwargs)


_scalar_crossover_altitude_ft = scalars["crossover_altitude_ft"]


def density_altitude_ft(pressure_altitude_ft, temperature_degc, **kwargs):
    r"""Density altitude: where the standard atmosphere has the density of the air.

    In closed form within each layer, density going with `(T/T_b)^(-g/(L R) - 1)`.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    temperature_degc : array_like, in degrees Celsius
        Static air temperature, -200 to 200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a deviation beyond 150 K, or a density altitude
        outside -5 to 80 km. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding, for dry air. Moisture makes air lighter: at 35 degC and saturated, 700 ft
    more at sea level.

    Degenerate cases: In standard air it is the pressure altitude.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.density_altitude_ft(6000.0, 13.0):.0f}"
    '7147'
    >>> [f"{value:.0f}" for value in lubberline.density_altitude_ft([6000.0, 6000.0], 13.0)]
    ['7147', '7147']
    """
    if not kwargs:
        answer = _scalar_density_altitude_ft(pressure_altitude_ft, temperature_degc)
        if answer is not None:
            return answer
    return ufunc.density_altitude_ft(pressure_altitude_ft, temperature_degc, **kwargs)


_scalar_density_altitude_ft = scalars["density_altitude_ft"]


def density_altitude_rule_ft(pressure_altitude_ft, temperature_degc, **kwargs):
    r"""Density altitude by the rule of 120 ft for each degree above standard.

    `Hp + 120 (t - (15 - 2 Hp/1000))` with the pressure altitude `Hp`. `density_altitude_ft` is
    exact.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    temperature_degc : array_like, in degrees Celsius
        Static air temperature, -200 to 200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a density altitude outside -5 to 80 km. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Too much by up to 65 ft within 10 K of standard, 160 ft within 20 K and 300 ft within
    30 K, to 10 000 ft.

    Degenerate cases: None in the range.

    Source: Common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.density_altitude_rule_ft(6000.0, 13.0):.0f}"
    '7200'
    >>> [f"{value:.0f}" for value in lubberline.density_altitude_rule_ft([6000.0, 6000.0], 13.0)]
    ['7200', '7200']
    """
    if not kwargs:
        answer = _scalar_density_altitude_rule_ft(pressure_altitude_ft, temperature_degc)
        if answer is not None:
            return answer
    return ufunc.density_altitude_rule_ft(pressure_altitude_ft, temperature_degc, **kwargs)


_scalar_density_altitude_rule_ft = scalars["density_altitude_rule_ft"]


class ArcHeading(NamedTuple):
    """What is flown at one bearing of an arc: what `arc_heading` gives."""

    track_deg: object
    """Direction over the ground."""
    heading_deg: object
    """Heading that holds it."""
    groundspeed_kt: object
    """Groundspeed along the arc."""
    wind_correction_deg: object
    """Heading less track, right positive."""
    station_off_nose_deg: object
    """Where the station is from the nose, right positive: 90 or -90 in calm air."""
    ahead_of_wing_tip_deg: object
    """By how much the bearing pointer is kept ahead of the wing tip; behind it when negative."""
    bank_deg: object
    """Bank that bends the path over the ground along the arc, positive toward the station."""


def arc_heading(radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, **kwargs):
    r"""The heading at one bearing of a DME arc in a wind, where the bearing pointer then stands, and the bank that keeps to the arc.

    The track is square to the radial; the wind correction moves the station off the wing tip by as
    much. The heading turns at `(GS / D)(1 - (Vw / V) cos(w) / cos(c))`, with c the wind correction
    and w the angle from the track to where the wind comes from.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        Radial on which the aircraft is, any finite number.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 1000.
    sense : {"clockwise", "counterclockwise"}
        Which way round the station the arc is flown.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the radials' north (left out with the other half of the
        wind: calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcHeading
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `track_deg`: Direction over the ground, in degrees.
        `heading_deg`: Heading that holds it, in degrees.
        `groundspeed_kt`: Groundspeed along the arc, in knots.
        `wind_correction_deg`: Heading less track, right positive, in degrees.
        `station_off_nose_deg`: Where the station is from the nose, right positive: 90 or -90 in
        calm air, in degrees.
        `ahead_of_wing_tip_deg`: By how much the bearing pointer is kept ahead of the wing tip;
        behind it when negative, in degrees.
        `bank_deg`: Bank that bends the path over the ground along the arc, positive toward the
        station, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a track that the airspeed cannot hold. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error on a plane.

    Degenerate cases: In a wind near the airspeed the heading may have to turn away from the station
    for a while: the bank is negative there. An arc counts along the ground; `ground_distance_nm`
    turns the DME reading that is flown into it.

    Source: The triangle of velocities, differentiated along the arc.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_heading(130.0, 12.0, 'clockwise', 160.0, 310.0, 30.0).heading_deg:.1f}"
    '230.8'
    >>> f"{lubberline.arc_heading(130.0, 12.0, 'clockwise', 160.0, 310.0, 30.0).ahead_of_wing_tip_deg:.1f}"
    '10.8'
    >>> [f"{value:.1f}" for value in lubberline.arc_heading([130.0, 130.0], 12.0, 'clockwise', 160.0, 310.0, 30.0).heading_deg]
    ['230.8', '230.8']
    """
    sense = chosen(_ARC_SENSE, "sense", sense)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_arc_heading(radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(ArcHeading, answer)
    return ArcHeading._make(many("arc_heading", ArcHeading._fields, (radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_arc_heading = scalars["arc_heading"]


class ArcFlown(NamedTuple):
    """An arc from one radial to another: what `arc_flown` gives."""

    angle_deg: object
    """Angle at the station, in the sense of the arc."""
    distance_nm: object
    """Length of the arc."""
    time_s: object
    """Time along it."""


def arc_flown(from_radial_deg, to_radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, **kwargs):
    r"""How long a DME arc from one radial to another is, and how long it takes in a wind.

    `D a`, and the integral of `D / GS` over the bearing.

    Parameters
    ----------
    from_radial_deg : array_like, in degrees
        Radial on which the arc begins, any finite number.
    to_radial_deg : array_like, in degrees
        Radial on which it ends.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 1000.
    sense : {"clockwise", "counterclockwise"}
        Which way round the station the arc is flown.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the radials' north (left out with the other half of the
        wind: calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcFlown
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `angle_deg`: Angle at the station, in the sense of the arc, in degrees.
        `distance_nm`: Length of the arc, in nautical miles.
        `time_s`: Time along it, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a track on the way that the airspeed cannot hold. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1e-10 of the time for winds to half the airspeed.

    Degenerate cases: From a radial to itself there is no arc, not a full circle.

    Source: The triangle of velocities, integrated.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_flown(20.0, 110.0, 10.0, 'clockwise', 160.0, 310.0, 45.0).time_s:.1f}"
    '291.2'
    >>> [f"{value:.1f}" for value in lubberline.arc_flown([20.0, 20.0], 110.0, 10.0, 'clockwise', 160.0, 310.0, 45.0).time_s]
    ['291.2', '291.2']
    """
    sense = chosen(_ARC_SENSE, "sense", sense)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_arc_flown(from_radial_deg, to_radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(ArcFlown, answer)
    return ArcFlown._make(many("arc_flown", ArcFlown._fields, (from_radial_deg, to_radial_deg, arc_radius_nm, sense, true_airspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_arc_flown = scalars["arc_flown"]


class ArcChords(NamedTuple):
    """The straight legs of an arc: what `arc_chords` gives."""

    legs: object
    """How many legs there are."""
    angle_deg: object
    """Angle of each at the station, which is also the change of course from one to the next."""
    length_nm: object
    """Length of each."""
    distance_at_ends_nm: object
    """Distance from the station at which each begins and ends."""
    distance_at_middle_nm: object
    """Distance from the station in the middle of each."""


def arc_chords(from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm, **kwargs):
    r"""The straight legs of a DME arc that stay within a tolerance of it: how many, how long, and how far they depart.

    Half a leg sees the station under the angle h with `cos(h) = (D - t) / D` inside, `D / (D + t)`
    outside and `(D - t) / (D + t)` on both sides; the legs share the arc evenly.

    Parameters
    ----------
    from_radial_deg : array_like, in degrees
        Radial on which the arc begins, any finite number.
    to_radial_deg : array_like, in degrees
        Radial on which it ends.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 1000.
    sense : {"clockwise", "counterclockwise"}
        Which way round the station the arc is flown.
    placement : {"inside", "outside", "balanced"}
        Where the legs lie.
    tolerance_nm : array_like, in nautical miles
        Greatest distance from the arc, above 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcChords
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `legs`: How many legs there are.
        `angle_deg`: Angle of each at the station, which is also the change of course from one to
        the next, in degrees.
        `length_nm`: Length of each, in nautical miles.
        `distance_at_ends_nm`: Distance from the station at which each begins and ends, in nautical
        miles.
        `distance_at_middle_nm`: Distance from the station in the middle of each, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error on a plane. The turns between the legs are left out.

    Degenerate cases: From a radial to itself there is no leg. A tolerance near the radius and above
    still makes a leg for each 120 degrees.

    Source: The right triangle of station, middle and end of a leg.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_chords(350.0, 50.0, 12.0, 'clockwise', 'inside', 0.25).legs:.0f}"
    '3'
    >>> f"{lubberline.arc_chords(350.0, 50.0, 12.0, 'clockwise', 'inside', 0.25).length_nm:.2f}"
    '4.17'
    >>> [f"{value:.0f}" for value in lubberline.arc_chords([350.0, 350.0], 50.0, 12.0, 'clockwise', 'inside', 0.25).legs]
    ['3', '3']
    """
    sense = chosen(_ARC_SENSE, "sense", sense)
    placement = chosen(_CHORD_PLACEMENT, "placement", placement)
    if not kwargs:
        answer = _scalar_arc_chords(from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm)
        if answer is not None:
            return named(ArcChords, answer)
    return ArcChords._make(many("arc_chords", ArcChords._fields, (from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm), kwargs))


_scalar_arc_chords = scalars["arc_chords"]


class ArcChordLeg(NamedTuple):
    """One straight leg of an arc: what `arc_chord_leg` gives."""

    from_radial_deg: object
    """Radial of its beginning."""
    to_radial_deg: object
    """Radial of its end."""
    course_deg: object
    """Its course."""
    heading_deg: object
    """Heading that holds it."""
    groundspeed_kt: object
    """Groundspeed on it."""
    time_s: object
    """Time along it."""


def arc_chord_leg(from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm, leg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, **kwargs):
    r"""One of the straight legs of a DME arc, flown in a wind: radials, course, heading and time.

    The course is square to the radial of its middle. The legs are those of `arc_chords`.

    Parameters
    ----------
    from_radial_deg : array_like, in degrees
        Radial on which the arc begins, any finite number.
    to_radial_deg : array_like, in degrees
        Radial on which it ends.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 1000.
    sense : {"clockwise", "counterclockwise"}
        Which way round the station the arc is flown.
    placement : {"inside", "outside", "balanced"}
        Where the legs lie.
    tolerance_nm : array_like, in nautical miles
        Greatest distance from the arc, above 0 to 1000.
    leg : array_like
        Which leg, counted from 1: a whole number, 1 to 1 000 000.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the radials' north (left out with the other half of the
        wind: calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcChordLeg
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `from_radial_deg`: Radial of its beginning, in degrees.
        `to_radial_deg`: Radial of its end, in degrees.
        `course_deg`: Its course, in degrees.
        `heading_deg`: Heading that holds it, in degrees.
        `groundspeed_kt`: Groundspeed on it, in knots.
        `time_s`: Time along it, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a course that the airspeed cannot hold. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error on a plane. The turns between the legs are left out.

    Degenerate cases: A leg behind the last is NaN throughout.

    Source: The right triangle of station, middle and end of a leg.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_chord_leg(350.0, 50.0, 12.0, 'clockwise', 'inside', 0.25, 1.0, 150.0, 310.0, 30.0).course_deg:.1f}"
    '90.0'
    >>> f"{lubberline.arc_chord_leg(350.0, 50.0, 12.0, 'clockwise', 'inside', 0.25, 1.0, 150.0, 310.0, 30.0).heading_deg:.1f}"
    '82.6'
    >>> [f"{value:.1f}" for value in lubberline.arc_chord_leg([350.0, 350.0], 50.0, 12.0, 'clockwise', 'inside', 0.25, 1.0, 150.0, 310.0, 30.0).course_deg]
    ['90.0', '90.0']
    """
    sense = chosen(_ARC_SENSE, "sense", sense)
    placement = chosen(_CHORD_PLACEMENT, "placement", placement)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_arc_chord_leg(from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm, leg, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(ArcChordLeg, answer)
    return ArcChordLeg._make(many("arc_chord_leg", ArcChordLeg._fields, (from_radial_deg, to_radial_deg, arc_radius_nm, sense, placement, tolerance_nm, leg, true_airspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_arc_chord_leg = scalars["arc_chord_leg"]


class ArcRegained(NamedTuple):
    """A straight way back onto an arc: what `arc_regained` gives."""

    track_deg: object
    """Direction over the ground."""
    heading_deg: object
    """Heading that holds it."""
    distance_nm: object
    """Distance to the arc."""
    time_s: object
    """Time to the arc."""
    radial_deg: object
    """Radial on which the arc is met."""
    angle_deg: object
    """Angle at which the arc is met, without its side."""


def arc_regained(radial_deg, distance_nm, arc_radius_nm, sense, correction_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, **kwargs):
    r"""The straight way back onto a DME arc from inside or outside it: where and when the arc is met.

    On a track turned from square by a correction c, the way is `d sin(c) + sqrt(D^2 - d^2
    cos^2(c))` from inside, with the root taken away from outside.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        Radial on which the aircraft is, any finite number.
    distance_nm : array_like, in nautical miles
        Its ground distance from the station, 0 to 10 900.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 1000.
    sense : {"clockwise", "counterclockwise"}
        Which way round the station the arc is flown.
    correction_deg : array_like, in degrees
        Angle of the track from square to the radial, positive toward the station, any finite
        number.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the radials' north (left out with the other half of the
        wind: calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ArcRegained
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `track_deg`: Direction over the ground, in degrees.
        `heading_deg`: Heading that holds it, in degrees.
        `distance_nm`: Distance to the arc, in nautical miles.
        `time_s`: Time to the arc, in seconds.
        `radial_deg`: Radial on which the arc is met, in degrees.
        `angle_deg`: Angle at which the arc is met, without its side, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a track from outside that passes the arc, a track
        that the airspeed cannot hold. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error on a plane.

    Degenerate cases: On the arc the way is nothing. From outside the correction must be at least
    `acos(D / d)`, at which the arc is met along it.

    Source: The law of cosines.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_regained(200.0, 11.0, 10.0, 'clockwise', 30.0, 160.0, 310.0, 30.0).distance_nm:.2f}"
    '2.46'
    >>> f"{lubberline.arc_regained(200.0, 11.0, 10.0, 'clockwise', 30.0, 160.0, 310.0, 30.0).heading_deg:.1f}"
    '318.1'
    >>> [f"{value:.2f}" for value in lubberline.arc_regained([200.0, 200.0], 11.0, 10.0, 'clockwise', 30.0, 160.0, 310.0, 30.0).distance_nm]
    ['2.46', '2.46']
    """
    sense = chosen(_ARC_SENSE, "sense", sense)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_arc_regained(radial_deg, distance_nm, arc_radius_nm, sense, correction_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(ArcRegained, answer)
    return ArcRegained._make(many("arc_regained", ArcRegained._fields, (radial_deg, distance_nm, arc_radius_nm, sense, correction_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_arc_regained = scalars["arc_regained"]


def arc_least_correction_deg(distance_nm, arc_radius_nm, **kwargs):
    r"""The least correction toward the station with which a DME arc is met from outside.

    `acos(D / d)`, the tangent from a point to a circle.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Ground distance from the station, 0 to 10 900.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: Zero on the arc and inside it.

    Source: The tangent from a point to a circle.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_least_correction_deg(10.5, 10.0):.1f}"
    '17.8'
    >>> [f"{value:.1f}" for value in lubberline.arc_least_correction_deg([10.5, 10.5], 10.0)]
    ['17.8', '17.8']
    """
    if not kwargs:
        answer = _scalar_arc_least_correction_deg(distance_nm, arc_radius_nm)
        if answer is not None:
            return answer
    return ufunc.arc_least_correction_deg(distance_nm, arc_radius_nm, **kwargs)


_scalar_arc_least_correction_deg = scalars["arc_least_correction_deg"]


def rule_arc_correction_deg(distance_nm, arc_radius_nm, **kwargs):
    r"""By how much to displace the bearing pointer from the wing tip to get back onto a DME arc, by rule.

    5 degrees away from the station for each half mile inside, 10 degrees toward it for each half
    mile outside; positive toward the station.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance from the station, 0 to 10 900.
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A rule. From outside it is short of `arc_least_correction_deg`, so the arc is met only
    as the correction is renewed.

    Degenerate cases: On the arc there is nothing to displace.

    Source: CNATRA P-871 chapter 4, To adjust to/from the arc.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_arc_correction_deg(9.5, 10.0):.0f}"
    '-5'
    >>> f"{lubberline.rule_arc_correction_deg(10.5, 10.0):.0f}"
    '10'
    >>> [f"{value:.0f}" for value in lubberline.rule_arc_correction_deg([9.5, 9.5], 10.0)]
    ['-5', '-5']
    """
    if not kwargs:
        answer = _scalar_rule_arc_correction_deg(distance_nm, arc_radius_nm)
        if answer is not None:
            return answer
    return ufunc.rule_arc_correction_deg(distance_nm, arc_radius_nm, **kwargs)


_scalar_rule_arc_correction_deg = scalars["rule_arc_correction_deg"]


class GeodesicInverse(NamedTuple):
    """The shortest line between two points: what `geodesic_inverse` gives."""

    distance_nm: object
    """Length along the surface."""
    initial_bearing_deg: object
    """True bearing at the first point, 0 to 360; NaN between coincident points."""
    final_bearing_deg: object
    """True bearing at the second point, onward, 0 to 360; NaN between coincident points."""


def geodesic_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg, **kwargs):
    r"""The shortest line between two points on the WGS-84 ellipsoid: its length and its bearings.

    Karney's solution of the inverse geodesic problem.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the first point, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of the first point, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of the second point, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of the second point, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    GeodesicInverse
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `distance_nm`: Length along the surface, in nautical miles.
        `initial_bearing_deg`: True bearing at the first point, 0 to 360; NaN between coincident
        points, in degrees.
        `final_bearing_deg`: True bearing at the second point, onward, 0 to 360; NaN between
        coincident points, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A latitude beyond a pole, or an infinite number. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 15 nanometres for any two points. In arrays 1 micrometre of distance, and 4 of what a
    bearing moves the other end by; to 18 000 km a tenth of that. Points within ten metres of each
    other, and near each other's antipode, are computed one by one there.

    Degenerate cases: Coincident points have no bearing (NaN). Between antipodal points one of the
    shortest lines is given.

    Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi
    10.1007/s00190-012-0578-z.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.geodesic_inverse(51.0, 0.0, 52.0, 1.0).distance_nm:.3f}"
    '70.814'
    >>> f"{lubberline.geodesic_inverse(51.0, 0.0, 52.0, 1.0).initial_bearing_deg:.2f}"
    '31.58'
    >>> [f"{value:.3f}" for value in lubberline.geodesic_inverse([51.0, 51.0], 0.0, 52.0, 1.0).distance_nm]
    ['70.814', '70.814']
    """
    if not kwargs:
        answer = _scalar_geodesic_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg)
        if answer is not None:
            return named(GeodesicInverse, answer)
    return GeodesicInverse._make(many("geodesic_inverse", GeodesicInverse._fields, (lat1_deg, lon1_deg, lat2_deg, lon2_deg), kwargs))


_scalar_geodesic_inverse = scalars["geodesic_inverse"]


def slant_range_nm(ground_distance_nm, height_ft, **kwargs):
    r"""Slant range, which DME shows, from ground distance and height above the station.

    `sqrt(h^2 + 4 R (R + h) sin^2(d / 2R))`: the straight line over a sphere of the mean radius of
    WGS-84, never the sum of distance and height.

    Parameters
    ----------
    ground_distance_nm : array_like, in nautical miles
        Along the surface from the station, 0 to 10 900.
    height_ft : array_like, in feet
        Above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft. Arrays and single calls agree
    to 1e-15 of the range.

    Degenerate cases: Overhead the answer is the height.

    Source: The law of cosines between the radii R and R + h.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.slant_range_nm(10.0, 30000.0):.3f}"
    '11.159'
    >>> [f"{value:.3f}" for value in lubberline.slant_range_nm([10.0, 10.0], 30000.0)]
    ['11.159', '11.159']
    """
    if not kwargs:
        answer = _scalar_slant_range_nm(ground_distance_nm, height_ft)
        if answer is not None:
            return answer
    return ufunc.slant_range_nm(ground_distance_nm, height_ft, **kwargs)


_scalar_slant_range_nm = scalars["slant_range_nm"]


class GeodesicDirect(NamedTuple):
    """Where a geodesic leads: what `geodesic_direct` gives."""

    latitude_deg: object
    """Latitude of the point reached, -90 to 90."""
    longitude_deg: object
    """Longitude of the point reached, -180 to 180."""
    final_bearing_deg: object
    """True bearing of the line there, onward, 0 to 360."""


def geodesic_direct(lat_deg, lon_deg, bearing_deg, distance_nm, **kwargs):
    r"""The point reached along a geodesic of the WGS-84 ellipsoid.

    Karney's solution of the direct geodesic problem.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of the start, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of the start, any finite number.
    bearing_deg : array_like, in degrees
        True bearing at the start, any finite number.
    distance_nm : array_like, in nautical miles
        Length of the line, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    GeodesicDirect
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude_deg`: Latitude of the point reached, -90 to 90, in degrees.
        `longitude_deg`: Longitude of the point reached, -180 to 180, in degrees.
        `final_bearing_deg`: True bearing of the line there, onward, 0 to 360, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 15 nanometres; in arrays 0.1 micrometre, but single calls within a metre and at the
    poles.

    Degenerate cases: From a pole the bearing is taken against the meridian of the longitude given
    there.

    Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi
    10.1007/s00190-012-0578-z.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.geodesic_direct(0.0, 0.0, 90.0, 60.0).longitude_deg:.4f}"
    '0.9982'
    >>> [f"{value:.4f}" for value in lubberline.geodesic_direct([0.0, 0.0], 0.0, 90.0, 60.0).longitude_deg]
    ['0.9982', '0.9982']
    """
    if not kwargs:
        answer = _scalar_geodesic_direct(lat_deg, lon_deg, bearing_deg, distance_nm)
        if answer is not None:
            return named(GeodesicDirect, answer)
    return GeodesicDirect._make(many("geodesic_direct", GeodesicDirect._fields, (lat_deg, lon_deg, bearing_deg, distance_nm), kwargs))


_scalar_geodesic_direct = scalars["geodesic_direct"]


def ground_distance_nm(slant_range_nm, height_ft, **kwargs):
    r"""Ground distance from slant range and height above the station: the inverse of `slant_range_nm`.

    `2 R asin(sqrt((s^2 - h^2) / (4 R (R + h))))` over a sphere of the mean radius of WGS-84.

    Parameters
    ----------
    slant_range_nm : array_like, in nautical miles
        The DME reading, 0 to 10 900.
    height_ft : array_like, in feet
        Above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a slant range shorter than the height or longer
        than to the far side of the earth. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Within 1.1 m of the ellipsoid to 100 NM and 45 000 ft, beyond twice the height. Close
    to overhead a small change of range is a large one of distance: seven times at 1.01 times the
    height.

    Degenerate cases: A slant range of the height is overhead: zero.

    Source: The law of cosines between the radii R and R + h; in the plane `sqrt(s^2 - h^2)`, ICAO
    Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, 3.3.4.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.ground_distance_nm(11.159, 30000.0):.3f}"
    '10.000'
    >>> [f"{value:.3f}" for value in lubberline.ground_distance_nm([11.159, 11.159], 30000.0)]
    ['10.000', '10.000']
    """
    if not kwargs:
        answer = _scalar_ground_distance_nm(slant_range_nm, height_ft)
        if answer is not None:
            return answer
    return ufunc.ground_distance_nm(slant_range_nm, height_ft, **kwargs)


_scalar_ground_distance_nm = scalars["ground_distance_nm"]


def least_dme_nm(height_ft, **kwargs):
    r"""The least DME reading, overhead at a height above the station.

    The height in nautical miles, 6 076.1 ft each.

    Parameters
    ----------
    height_ft : array_like, in feet
        Above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: Below the station it is the depth.

    Source: The definition of slant range.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.least_dme_nm(12000.0):.3f}"
    '1.975'
    >>> [f"{value:.3f}" for value in lubberline.least_dme_nm([12000.0, 12000.0])]
    ['1.975', '1.975']
    """
    if not kwargs:
        answer = _scalar_least_dme_nm(height_ft)
        if answer is not None:
            return answer
    return ufunc.least_dme_nm(height_ft, **kwargs)


_scalar_least_dme_nm = scalars["least_dme_nm"]


class GreatCircleInverse(NamedTuple):
    """The great circle between two points of a sphere: what `great_circle_inverse` gives."""

    distance_nm: object
    """Length along the surface."""
    initial_bearing_deg: object
    """Bearing at the first point, 0 to 360; NaN between coincident points."""
    final_bearing_deg: object
    """Bearing at the second point, onward, 0 to 360; NaN between coincident points."""


def great_circle_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm=3440.069531, **kwargs):
    r"""The great circle between two points of a sphere: its length and its bearings.

    The central angle from its chords; bearings by spherical trigonometry.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the first point, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of the first point, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of the second point, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of the second point, any finite number.
    sphere_radius_nm : array_like, in nautical miles
        Radius of the sphere, 1 to 100 000 (default 3440.069531).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    GreatCircleInverse
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `distance_nm`: Length along the surface, in nautical miles.
        `initial_bearing_deg`: Bearing at the first point, 0 to 360; NaN between coincident points,
        in degrees.
        `final_bearing_deg`: Bearing at the second point, onward, 0 to 360; NaN between coincident
        points, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding on the sphere; against the ellipsoid up to 0.56 percent. For the earth itself
    use `geodesic_inverse`.

    Degenerate cases: Coincident points have no bearing (NaN).

    Source: Spherical trigonometry; the default radius is the mean one of WGS-84.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.great_circle_inverse(51.0, 0.0, 52.0, 1.0, 3440.069531).distance_nm:.3f}"
    '70.722'
    >>> [f"{value:.3f}" for value in lubberline.great_circle_inverse([51.0, 51.0], 0.0, 52.0, 1.0, 3440.069531).distance_nm]
    ['70.722', '70.722']
    """
    if not kwargs:
        answer = _scalar_great_circle_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm)
        if answer is not None:
            return named(GreatCircleInverse, answer)
    return GreatCircleInverse._make(many("great_circle_inverse", GreatCircleInverse._fields, (lat1_deg, lon1_deg, lat2_deg, lon2_deg, sphere_radius_nm), kwargs))


_scalar_great_circle_inverse = scalars["great_circle_inverse"]


class GreatCircleDirect(NamedTuple):
    """Where a great circle leads: what `great_circle_direct` gives."""

    latitude_deg: object
    """Latitude of the point reached, -90 to 90."""
    longitude_deg: object
    """Longitude of the point reached, -180 to 180."""
    final_bearing_deg: object
    """Bearing of the circle there, onward, 0 to 360."""


def great_circle_direct(lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm=3440.069531, **kwargs):
    r"""The point reached along a great circle of a sphere.

    Spherical trigonometry.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of the start, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of the start, any finite number.
    bearing_deg : array_like, in degrees
        Bearing at the start, any finite number.
    distance_nm : array_like, in nautical miles
        Length of the line, 0 to 10 900.
    sphere_radius_nm : array_like, in nautical miles
        Radius of the sphere, 1 to 100 000 (default 3440.069531).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    GreatCircleDirect
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude_deg`: Latitude of the point reached, -90 to 90, in degrees.
        `longitude_deg`: Longitude of the point reached, -180 to 180, in degrees.
        `final_bearing_deg`: Bearing of the circle there, onward, 0 to 360, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding on the sphere. For the earth itself use `geodesic_direct`.

    Degenerate cases: From a pole the bearing is taken against the meridian of the longitude given
    there.

    Source: Spherical trigonometry; the default radius is the mean one of WGS-84.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.great_circle_direct(0.0, 0.0, 90.0, 60.0, 3437.746771).longitude_deg:.4f}"
    '1.0000'
    >>> [f"{value:.4f}" for value in lubberline.great_circle_direct([0.0, 0.0], 0.0, 90.0, 60.0, 3437.746771).longitude_deg]
    ['1.0000', '1.0000']
    """
    if not kwargs:
        answer = _scalar_great_circle_direct(lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm)
        if answer is not None:
            return named(GreatCircleDirect, answer)
    return GreatCircleDirect._make(many("great_circle_direct", GreatCircleDirect._fields, (lat_deg, lon_deg, bearing_deg, distance_nm, sphere_radius_nm), kwargs))


_scalar_great_circle_direct = scalars["great_circle_direct"]


class StraightLine(NamedTuple):
    """The straight line between two points at their heights: what `straight_line` gives."""

    slant_range_nm: object
    """Its length: the slant range."""
    elevation_angle_deg: object
    """Angle of the second point above the horizontal of the first, negative below."""


def straight_line(lat1_deg, lon1_deg, elevation_ft, lat2_deg, lon2_deg, altitude_ft, **kwargs):
    r"""The straight line between two points at their heights over the WGS-84 ellipsoid: slant range and elevation angle.

    The difference of the earth-centred coordinates, in the horizon of the first point.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the first point, the antenna, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of the first point, any finite number.
    elevation_ft : array_like, in feet
        Elevation of the first point above mean sea level, -16 500 to 60 000.
    lat2_deg : array_like, in degrees
        Latitude of the second point, the aircraft, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of the second point, any finite number.
    altitude_ft : array_like, in feet
        Altitude of the second point above mean sea level, -16 500 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    StraightLine
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `slant_range_nm`: Its length: the slant range, in nautical miles.
        `elevation_angle_deg`: Angle of the second point above the horizontal of the first, negative
        below, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A micrometre. Mean sea level is taken for the ellipsoid.

    Degenerate cases: Coincident points are at range zero and elevation angle zero. The line is
    straight through the earth too: whether the second point is in sight is not asked.

    Source: Earth-centred coordinates of WGS-84 (NGA.STND.0036_1.0.0_WGS84, from memory).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.straight_line(61.25, -11.5, 420.0, 61.5, -11.0, 31000.0).slant_range_nm:.3f}"
    '21.462'
    >>> [f"{value:.3f}" for value in lubberline.straight_line([61.25, 61.25], -11.5, 420.0, 61.5, -11.0, 31000.0).slant_range_nm]
    ['21.462', '21.462']
    """
    if not kwargs:
        answer = _scalar_straight_line(lat1_deg, lon1_deg, elevation_ft, lat2_deg, lon2_deg, altitude_ft)
        if answer is not None:
            return named(StraightLine, answer)
    return StraightLine._make(many("straight_line", StraightLine._fields, (lat1_deg, lon1_deg, elevation_ft, lat2_deg, lon2_deg, altitude_ft), kwargs))


_scalar_straight_line = scalars["straight_line"]


def eas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""Equivalent airspeed from true airspeed.

    `Ve = V sqrt(density/density at standard sea level)`.

    Parameters
    ----------
    tas_kt : array_like, in knots
        True airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.eas_from_tas_kt(450.0, 35000.0, 0.0):.2f}"
    '250.50'
    >>> [f"{value:.2f}" for value in lubberline.eas_from_tas_kt([450.0, 450.0], 35000.0, 0.0)]
    ['250.50', '250.50']
    """
    if not kwargs:
        answer = _scalar_eas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.eas_from_tas_kt(tas_kt, pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_eas_from_tas_kt = scalars["eas_from_tas_kt"]


def tas_from_eas_kt(eas_kt, pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""True airspeed from equivalent airspeed: the inverse of `eas_from_tas_kt`.

    `V = Ve sqrt(density at standard sea level/density)`.

    Parameters
    ----------
    eas_kt : array_like, in knots
        Equivalent airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.tas_from_eas_kt(250.0, 35000.0, 0.0):.2f}"
    '449.10'
    >>> [f"{value:.2f}" for value in lubberline.tas_from_eas_kt([250.0, 250.0], 35000.0, 0.0)]
    ['449.10', '449.10']
    """
    if not kwargs:
        answer = _scalar_tas_from_eas_kt(eas_kt, pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.tas_from_eas_kt(eas_kt, pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_tas_from_eas_kt = scalars["tas_from_eas_kt"]


def eas_from_cas_kt(cas_kt, pressure_altitude_ft, **kwargs):
    r"""Equivalent airspeed from calibrated airspeed: less by the effect of compressibility.

    `Ve = M a0 sqrt(p/p0)` with the Mach number of `mach_from_cas`; the temperature plays no part.

    Parameters
    ----------
    cas_kt : array_like, in knots
        Calibrated airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.eas_from_cas_kt(280.0, 35000.0):.2f}"
    '263.55'
    >>> [f"{value:.2f}" for value in lubberline.eas_from_cas_kt([280.0, 280.0], 35000.0)]
    ['263.55', '263.55']
    """
    if not kwargs:
        answer = _scalar_eas_from_cas_kt(cas_kt, pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.eas_from_cas_kt(cas_kt, pressure_altitude_ft, **kwargs)


_scalar_eas_from_cas_kt = scalars["eas_from_cas_kt"]


def cas_from_eas_kt(eas_kt, pressure_altitude_ft, **kwargs):
    r"""Calibrated airspeed from equivalent airspeed: the inverse of `eas_from_cas_kt`.

    `M = Ve/(a0 sqrt(p/p0))`, and the calibrated airspeed of that Mach number.

    Parameters
    ----------
    eas_kt : array_like, in knots
        Equivalent airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cas_from_eas_kt(250.0, 35000.0):.2f}"
    '264.09'
    >>> [f"{value:.2f}" for value in lubberline.cas_from_eas_kt([250.0, 250.0], 35000.0)]
    ['264.09', '264.09']
    """
    if not kwargs:
        answer = _scalar_cas_from_eas_kt(eas_kt, pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.cas_from_eas_kt(eas_kt, pressure_altitude_ft, **kwargs)


_scalar_cas_from_eas_kt = scalars["cas_from_eas_kt"]


def eas_from_mach_kt(mach, pressure_altitude_ft, **kwargs):
    r"""Equivalent airspeed from Mach number.

    `Ve = M a0 sqrt(p/p0)`.

    Parameters
    ----------
    mach : array_like
        Mach number, 0 to 10.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.eas_from_mach_kt(0.78, 35000.0):.2f}"
    '250.28'
    >>> [f"{value:.2f}" for value in lubberline.eas_from_mach_kt([0.78, 0.78], 35000.0)]
    ['250.28', '250.28']
    """
    if not kwargs:
        answer = _scalar_eas_from_mach_kt(mach, pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.eas_from_mach_kt(mach, pressure_altitude_ft, **kwargs)


_scalar_eas_from_mach_kt = scalars["eas_from_mach_kt"]


def mach_from_eas(eas_kt, pressure_altitude_ft, **kwargs):
    r"""Mach number from equivalent airspeed.

    `M = Ve/(a0 sqrt(p/p0))`.

    Parameters
    ----------
    eas_kt : array_like, in knots
        Equivalent airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond Mach 10. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.mach_from_eas(250.0, 35000.0):.4f}"
    '0.7791'
    >>> [f"{value:.4f}" for value in lubberline.mach_from_eas([250.0, 250.0], 35000.0)]
    ['0.7791', '0.7791']
    """
    if not kwargs:
        answer = _scalar_mach_from_eas(eas_kt, pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.mach_from_eas(eas_kt, pressure_altitude_ft, **kwargs)


_scalar_mach_from_eas = scalars["mach_from_eas"]


def radial_error_across_nm(distance_nm, radial_error_deg, **kwargs):
    r"""How far a radial's error leads aside at a distance from the station.

    `R sin(d / R) error` on a sphere of the mean radius, with the error in radians; in the plane `d
    error`.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, above 0 to 5000.
    radial_error_deg : array_like, in degrees
        Error of the radial, 0 to 90.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Exact on the sphere along the arc; the ellipsoid moves it by less than 0.6 percent.

    Degenerate cases: None in the range.

    Source: Derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.radial_error_across_nm(40.0, 4.5):.2f}"
    '3.14'
    >>> [f"{value:.2f}" for value in lubberline.radial_error_across_nm([40.0, 40.0], 4.5)]
    ['3.14', '3.14']
    """
    if not kwargs:
        answer = _scalar_radial_error_across_nm(distance_nm, radial_error_deg)
        if answer is not None:
            return answer
    return ufunc.radial_error_across_nm(distance_nm, radial_error_deg, **kwargs)


_scalar_radial_error_across_nm = scalars["radial_error_across_nm"]


def dme_error_along_nm(distance_nm, dme_error_nm, height_ft=0.0, **kwargs):
    r"""How far a DME's error leads along the ground at a distance from the station.

    `error slant / ((R + h) sin(d / R))` on a sphere of the mean radius, in the plane `error slant /
    d`.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, above 0 to 5000.
    dme_error_nm : array_like, in nautical miles
        Error of the slant range, 0 to 1000.
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Exact on the sphere for small errors; the ellipsoid moves it by less than 0.6 percent.

    Degenerate cases: It grows without bound toward the station: overhead DME tells nothing of the
    place.

    Source: Derived from the slant range of `slant_range_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.dme_error_along_nm(3.0, 0.2, 36000.0):.2f}"
    '0.44'
    >>> [f"{value:.2f}" for value in lubberline.dme_error_along_nm([3.0, 3.0], 0.2, 36000.0)]
    ['0.44', '0.44']
    """
    if not kwargs:
        answer = _scalar_dme_error_along_nm(distance_nm, dme_error_nm, height_ft)
        if answer is not None:
            return answer
    return ufunc.dme_error_along_nm(distance_nm, dme_error_nm, height_ft, **kwargs)


_scalar_dme_error_along_nm = scalars["dme_error_along_nm"]


class FixError(NamedTuple):
    """The error of a fix, in standard deviations: what `fix_of_two_radials`, `fix_of_radial_and_dme` and `fix_of_two_dme` give."""

    semi_major_nm: object
    """Standard deviation along the long axis of the error ellipse."""
    semi_minor_nm: object
    """Standard deviation along its short axis."""
    major_axis_deg: object
    """Direction of the long axis, 0 to 180."""
    north_nm: object
    """Standard deviation by north."""
    east_nm: object
    """Standard deviation by east."""
    correlation: object
    """Correlation of the errors by north and by east, -1 to 1: with the two deviations the whole covariance."""
    along_track_nm: object
    """Standard deviation along the track."""
    across_track_nm: object
    """Standard deviation across the track."""
    root_mean_square_nm: object
    """Root mean square distance of the fix from the place; twice of it holds 95 to 98 percent."""


def fix_of_two_radials(first_radial_deg, first_distance_nm, second_radial_deg, second_distance_nm, first_error_deg, second_error_deg, track_deg=0.0, **kwargs):
    r"""The error of a fix from two radials.

    An error across one line moves the fix along the other: the covariance is `(s1^2 p2 p2' + s2^2
    p1 p1') / sin^2(crossing angle)`, with `s` the standard deviations across the lines and `p` the
    unit vectors along them.

    Parameters
    ----------
    first_radial_deg : array_like, in degrees
        Direction of the first radial at the fix, away from its station, any finite number.
    first_distance_nm : array_like, in nautical miles
        Distance from the first station along the ground, above 0 to 5000.
    second_radial_deg : array_like, in degrees
        Direction of the second radial at the fix, against the same north, any finite number.
    second_distance_nm : array_like, in nautical miles
        Distance from the second station along the ground, above 0 to 5000.
    first_error_deg : array_like, in degrees
        Standard deviation of the first radial, half a published tolerance, 0 to 90.
    second_error_deg : array_like, in degrees
        Standard deviation of the second radial, 0 to 90.
    track_deg : array_like, in degrees
        The track, against the same north, any finite number (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    FixError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `semi_major_nm`: Standard deviation along the long axis of the error ellipse, in nautical
        miles.
        `semi_minor_nm`: Standard deviation along its short axis, in nautical miles.
        `major_axis_deg`: Direction of the long axis, 0 to 180, in degrees.
        `north_nm`: Standard deviation by north, in nautical miles.
        `east_nm`: Standard deviation by east, in nautical miles.
        `correlation`: Correlation of the errors by north and by east, -1 to 1: with the two
        deviations the whole covariance.
        `along_track_nm`: Standard deviation along the track, in nautical miles.
        `across_track_nm`: Standard deviation across the track, in nautical miles.
        `root_mean_square_nm`: Root mean square distance of the fix from the place; twice of it
        holds 95 to 98 percent, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or radials that do not cross. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error for straight lines; it holds while the errors are small against the
    distances.

    Degenerate cases: Without error in either line the ellipse is a point. Directions of two
    stations have to be brought to one north.

    Source: Derived: the covariance of the solution of two linear equations.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.fix_of_two_radials(70.0, 40.0, 340.0, 20.0, 2.25, 2.25, 70.0).across_track_nm:.2f}"
    '1.57'
    >>> f"{lubberline.fix_of_two_radials(70.0, 40.0, 340.0, 20.0, 2.25, 2.25, 70.0).along_track_nm:.2f}"
    '0.79'
    >>> [f"{value:.2f}" for value in lubberline.fix_of_two_radials([70.0, 70.0], 40.0, 340.0, 20.0, 2.25, 2.25, 70.0).across_track_nm]
    ['1.57', '1.57']
    """
    if not kwargs:
        answer = _scalar_fix_of_two_radials(first_radial_deg, first_distance_nm, second_radial_deg, second_distance_nm, first_error_deg, second_error_deg, track_deg)
        if answer is not None:
            return named(FixError, answer)
    return FixError._make(many("fix_of_two_radials", FixError._fields, (first_radial_deg, first_distance_nm, second_radial_deg, second_distance_nm, first_error_deg, second_error_deg, track_deg), kwargs))


_scalar_fix_of_two_radials = scalars["fix_of_two_radials"]


def fix_of_radial_and_dme(radial_deg, radial_distance_nm, dme_bearing_deg, dme_distance_nm, radial_error_deg, dme_error_nm, height_ft=0.0, track_deg=0.0, **kwargs):
    r"""The error of a fix from a radial and a DME, of one station or of two.

    As `fix_of_two_radials`; the line of the DME runs across the bearing from its station, and its
    error along the ground is that of `dme_error_along_nm`.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        Direction of the radial at the fix, away from its station, any finite number.
    radial_distance_nm : array_like, in nautical miles
        Distance from the radial's station along the ground, above 0 to 5000.
    dme_bearing_deg : array_like, in degrees
        Direction from the DME station at the fix, against the same north; the radial, if it is one
        station.
    dme_distance_nm : array_like, in nautical miles
        Distance from the DME station along the ground, above 0 to 5000.
    radial_error_deg : array_like, in degrees
        Standard deviation of the radial, half a published tolerance, 0 to 90.
    dme_error_nm : array_like, in nautical miles
        Standard deviation of the slant range, half a published tolerance, 0 to 1000.
    height_ft : array_like, in feet
        Height above the DME station's antenna, -60 000 to 400 000 (default 0.0).
    track_deg : array_like, in degrees
        The track, against the same north, any finite number (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    FixError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `semi_major_nm`: Standard deviation along the long axis of the error ellipse, in nautical
        miles.
        `semi_minor_nm`: Standard deviation along its short axis, in nautical miles.
        `major_axis_deg`: Direction of the long axis, 0 to 180, in degrees.
        `north_nm`: Standard deviation by north, in nautical miles.
        `east_nm`: Standard deviation by east, in nautical miles.
        `correlation`: Correlation of the errors by north and by east, -1 to 1: with the two
        deviations the whole covariance.
        `along_track_nm`: Standard deviation along the track, in nautical miles.
        `across_track_nm`: Standard deviation across the track, in nautical miles.
        `root_mean_square_nm`: Root mean square distance of the fix from the place; twice of it
        holds 95 to 98 percent, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a radial square to the bearing from the DME
        station, whose line runs along it. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As `fix_of_two_radials`.

    Degenerate cases: Toward the DME station its error along the ground grows without bound.

    Source: Derived, as `fix_of_two_radials`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.fix_of_radial_and_dme(70.0, 40.0, 70.0, 40.0, 2.25, 0.1, 31000.0, 70.0).semi_major_nm:.2f}"
    '1.57'
    >>> f"{lubberline.fix_of_radial_and_dme(70.0, 40.0, 70.0, 40.0, 2.25, 0.1, 31000.0, 70.0).major_axis_deg:.0f}"
    '160'
    >>> [f"{value:.2f}" for value in lubberline.fix_of_radial_and_dme([70.0, 70.0], 40.0, 70.0, 40.0, 2.25, 0.1, 31000.0, 70.0).semi_major_nm]
    ['1.57', '1.57']
    """
    if not kwargs:
        answer = _scalar_fix_of_radial_and_dme(radial_deg, radial_distance_nm, dme_bearing_deg, dme_distance_nm, radial_error_deg, dme_error_nm, height_ft, track_deg)
        if answer is not None:
            return named(FixError, answer)
    return FixError._make(many("fix_of_radial_and_dme", FixError._fields, (radial_deg, radial_distance_nm, dme_bearing_deg, dme_distance_nm, radial_error_deg, dme_error_nm, height_ft, track_deg), kwargs))


_scalar_fix_of_radial_and_dme = scalars["fix_of_radial_and_dme"]


def fix_of_two_dme(first_bearing_deg, first_distance_nm, second_bearing_deg, second_distance_nm, first_error_nm, second_error_nm, first_height_ft=0.0, second_height_ft=0.0, track_deg=0.0, **kwargs):
    r"""The error of a fix from two DME.

    As `fix_of_two_radials`, with the lines across the bearings from the stations.

    Parameters
    ----------
    first_bearing_deg : array_like, in degrees
        Direction from the first station at the fix, any finite number.
    first_distance_nm : array_like, in nautical miles
        Distance from the first station along the ground, above 0 to 5000.
    second_bearing_deg : array_like, in degrees
        Direction from the second station at the fix, against the same north, any finite number.
    second_distance_nm : array_like, in nautical miles
        Distance from the second station along the ground, above 0 to 5000.
    first_error_nm : array_like, in nautical miles
        Standard deviation of the first slant range, half a published tolerance, 0 to 1000.
    second_error_nm : array_like, in nautical miles
        Standard deviation of the second slant range, 0 to 1000.
    first_height_ft : array_like, in feet
        Height above the first antenna, -60 000 to 400 000 (default 0.0).
    second_height_ft : array_like, in feet
        Height above the second antenna, -60 000 to 400 000 (default 0.0).
    track_deg : array_like, in degrees
        The track, against the same north, any finite number (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    FixError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `semi_major_nm`: Standard deviation along the long axis of the error ellipse, in nautical
        miles.
        `semi_minor_nm`: Standard deviation along its short axis, in nautical miles.
        `major_axis_deg`: Direction of the long axis, 0 to 180, in degrees.
        `north_nm`: Standard deviation by north, in nautical miles.
        `east_nm`: Standard deviation by east, in nautical miles.
        `correlation`: Correlation of the errors by north and by east, -1 to 1: with the two
        deviations the whole covariance.
        `along_track_nm`: Standard deviation along the track, in nautical miles.
        `across_track_nm`: Standard deviation across the track, in nautical miles.
        `root_mean_square_nm`: Root mean square distance of the fix from the place; twice of it
        holds 95 to 98 percent, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or stations in line with the fix. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As `fix_of_two_radials`.

    Degenerate cases: Two DME give two fixes, alike in their error; which one is meant is not asked
    here.

    Source: Derived, as `fix_of_two_radials`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.fix_of_two_dme(70.0, 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0).semi_major_nm:.3f}"
    '0.141'
    >>> f"{lubberline.fix_of_two_dme(70.0, 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0).major_axis_deg:.0f}"
    '10'
    >>> [f"{value:.3f}" for value in lubberline.fix_of_two_dme([70.0, 70.0], 40.0, 130.0, 55.0, 0.1, 0.1, 0.0, 0.0, 0.0).semi_major_nm]
    ['0.141', '0.141']
    """
    if not kwargs:
        answer = _scalar_fix_of_two_dme(first_bearing_deg, first_distance_nm, second_bearing_deg, second_distance_nm, first_error_nm, second_error_nm, first_height_ft, second_height_ft, track_deg)
        if answer is not None:
            return named(FixError, answer)
    return FixError._make(many("fix_of_two_dme", FixError._fields, (first_bearing_deg, first_distance_nm, second_bearing_deg, second_distance_nm, first_error_nm, second_error_nm, first_height_ft, second_height_ft, track_deg), kwargs))


_scalar_fix_of_two_dme = scalars["fix_of_two_dme"]


def ellipse_factor(confidence, **kwargs):
    r"""The factor by which an ellipse of one standard deviation grows to hold a share of all fixes.

    `sqrt(-2 ln(1 - p))`.

    Parameters
    ----------
    confidence : array_like
        The share, above 0 below 1.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error, for normal errors.

    Degenerate cases: One standard deviation holds 39 percent of the fixes, where along a line it
    holds 68.

    Source: The distribution of the radius of two independent normal errors (Rayleigh); derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.ellipse_factor(0.95):.3f}"
    '2.448'
    >>> [f"{value:.3f}" for value in lubberline.ellipse_factor([0.95, 0.95])]
    ['2.448', '2.448']
    """
    if not kwargs:
        answer = _scalar_ellipse_factor(confidence)
        if answer is not None:
            return answer
    return ufunc.ellipse_factor(confidence, **kwargs)


_scalar_ellipse_factor = scalars["ellipse_factor"]


def grid_from_true_deg(true_deg, convergence_deg, **kwargs):
    r"""A true direction counted from the north of a grid.

    `true - convergence`, 0 to 360.

    Parameters
    ----------
    true_deg : array_like, in degrees
        True direction, any finite number.
    convergence_deg : array_like, in degrees
        Angle from true to grid north at the place, positive east, -180 to 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The definition of convergence.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.grid_from_true_deg(90.0, 30.0):.0f}"
    '60'
    >>> [f"{value:.0f}" for value in lubberline.grid_from_true_deg([90.0, 90.0], 30.0)]
    ['60', '60']
    """
    if not kwargs:
        answer = _scalar_grid_from_true_deg(true_deg, convergence_deg)
        if answer is not None:
            return answer
    return ufunc.grid_from_true_deg(true_deg, convergence_deg, **kwargs)


_scalar_grid_from_true_deg = scalars["grid_from_true_deg"]


def true_from_grid_deg(grid_deg, convergence_deg, **kwargs):
    r"""A direction of a grid counted from true north.

    `grid + convergence`, 0 to 360.

    Parameters
    ----------
    grid_deg : array_like, in degrees
        Direction from the grid's north, any finite number.
    convergence_deg : array_like, in degrees
        Angle from true to grid north at the place, positive east, -180 to 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The definition of convergence.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.true_from_grid_deg(60.0, 30.0):.0f}"
    '90'
    >>> [f"{value:.0f}" for value in lubberline.true_from_grid_deg([60.0, 60.0], 30.0)]
    ['90', '90']
    """
    if not kwargs:
        answer = _scalar_true_from_grid_deg(grid_deg, convergence_deg)
        if answer is not None:
            return answer
    return ufunc.true_from_grid_deg(grid_deg, convergence_deg, **kwargs)


_scalar_true_from_grid_deg = scalars["true_from_grid_deg"]


def polar_grid_convergence_deg(lat_deg, lon_deg, **kwargs):
    r"""The angle from true north to the north of the polar grid, positive east.

    The longitude in the north, its negative in the south: the grid's north is the direction in
    which the meridian of Greenwich runs north.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude, -90 to 90; its sign tells the pole.
    lon_deg : array_like, in degrees
        Longitude, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Off the polar regions the grid is not used. At a pole the convergence goes
    with the longitude given.

    Source: The grid of the Universal Polar Stereographic projection; grid variation of the World
    Magnetic Model.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.polar_grid_convergence_deg(80.0, 30.0):.0f}"
    '30'
    >>> f"{lubberline.polar_grid_convergence_deg(-80.0, 30.0):.0f}"
    '-30'
    >>> [f"{value:.0f}" for value in lubberline.polar_grid_convergence_deg([80.0, 80.0], 30.0)]
    ['30', '30']
    """
    if not kwargs:
        answer = _scalar_polar_grid_convergence_deg(lat_deg, lon_deg)
        if answer is not None:
            return answer
    return ufunc.polar_grid_convergence_deg(lat_deg, lon_deg, **kwargs)


_scalar_polar_grid_convergence_deg = scalars["polar_grid_convergence_deg"]


def lambert_grid_convergence_deg(lon_deg, meridian_lon_deg, parallel1_lat_deg, parallel2_lat_deg, **kwargs):
    r"""The angle from true north to the north of a chart on Lambert's conformal cone, positive east.

    `n (longitude - meridian)`, the difference reduced to half a circle either way, with the
    constant of the cone n from the parallels on WGS-84.

    Parameters
    ----------
    lon_deg : array_like, in degrees
        Longitude, any finite number.
    meridian_lon_deg : array_like, in degrees
        Longitude of the meridian whose north is the chart's, any finite number.
    parallel1_lat_deg : array_like, in degrees
        One standard parallel, -90 to 90.
    parallel2_lat_deg : array_like, in degrees
        The other, or the same again, -90 to 90.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Parallels as far north as south make a cylinder: 0. With a pole for a parallel
    it is the polar grid.

    Source: J. P. Snyder, Map Projections: A Working Manual, US Geological Survey Professional Paper
    1395 (1987), equations 14-4, 15-8.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.lambert_grid_convergence_deg(-86.0, -96.0, 33.0, 45.0):.2f}"
    '6.30'
    >>> [f"{value:.2f}" for value in lubberline.lambert_grid_convergence_deg([-86.0, -86.0], -96.0, 33.0, 45.0)]
    ['6.30', '6.30']
    """
    if not kwargs:
        answer = _scalar_lambert_grid_convergence_deg(lon_deg, meridian_lon_deg, parallel1_lat_deg, parallel2_lat_deg)
        if answer is not None:
            return answer
    return ufunc.lambert_grid_convergence_deg(lon_deg, meridian_lon_deg, parallel1_lat_deg, parallel2_lat_deg, **kwargs)


_scalar_lambert_grid_convergence_deg = scalars["lambert_grid_convergence_deg"]


def transverse_grid_convergence_deg(lat_deg, lon_deg, meridian_lon_deg, **kwargs):
    r"""The angle from true north to the north of a map on the transverse Mercator projection, positive east.

    On a sphere `atan(tan(l) sin(lat))`, `l` the longitude from the meridian; on WGS-84 with the
    conformal latitude and Krueger's series.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude, any finite number.
    meridian_lon_deg : array_like, in degrees
        Longitude of the meridian whose north is the map's, within 60 degrees of `lon_deg`.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a place beyond 60 degrees from the meridian. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1e-13 degrees to 35 degrees from the meridian, 1e-11 to 45, 1e-9 to 60.

    Degenerate cases: Zero on the meridian and on the equator. At a pole it goes with the longitude
    given.

    Source: C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of
    Geodesy 85 (2011) 475-485, equations 7 to 11, 23 to 25.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.transverse_grid_convergence_deg(60.0, -6.0, -9.0):.4f}"
    '2.5987'
    >>> [f"{value:.4f}" for value in lubberline.transverse_grid_convergence_deg([60.0, 60.0], -6.0, -9.0)]
    ['2.5987', '2.5987']
    """
    if not kwargs:
        answer = _scalar_transverse_grid_convergence_deg(lat_deg, lon_deg, meridian_lon_deg)
        if answer is not None:
            return answer
    return ufunc.transverse_grid_convergence_deg(lat_deg, lon_deg, meridian_lon_deg, **kwargs)


_scalar_transverse_grid_convergence_deg = scalars["transverse_grid_convergence_deg"]


def utm_meridian_deg(lat_deg, lon_deg, **kwargs):
    r"""The meridian of the zone of the Universal Transverse Mercator grid in which a place lies.

    Zones are 6 degrees wide, but for those that are widened about Norway and Svalbard; a place
    between two belongs to the eastern one.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Exact.

    Degenerate cases: The grid is laid out from 80 degrees south to 84 north; toward the poles the
    zones go on, and the polar grid is used.

    Source: NGA.STND.0037_2.0.0_GRIDS, Universal Grids and Grid Reference Systems (2014), section 3
    (from memory).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.utm_meridian_deg(60.0, -10.0):.0f}"
    '-9'
    >>> f"{lubberline.utm_meridian_deg(60.0, 4.0):.0f}"
    '9'
    >>> [f"{value:.0f}" for value in lubberline.utm_meridian_deg([60.0, 60.0], -10.0)]
    ['-9', '-9']
    """
    if not kwargs:
        answer = _scalar_utm_meridian_deg(lat_deg, lon_deg)
        if answer is not None:
            return answer
    return ufunc.utm_meridian_deg(lat_deg, lon_deg, **kwargs)


_scalar_utm_meridian_deg = scalars["utm_meridian_deg"]


class EntrySector(NamedTuple):
    """How a holding pattern is entered: what `holding_entry` gives."""

    entry: object
    """The entry of the sector in which the heading lies: its number, `HoldingEntry`."""
    also: object
    """The entry across the boundary, `HoldingEntry`, if the heading lies in the zone about it; else NaN."""
    to_outbound_deg: object
    """From the heading to the outbound course, right positive."""
    to_boundary_deg: object
    """Angle between the heading and the nearest boundary of two sectors, without its side."""
    first_course_deg: object
    """The first course flown from the fix: the outbound course, 30 degrees off it into the holding side for an offset entry."""


def holding_entry(heading_deg, inbound_course_deg, side, **kwargs):
    r"""How to enter a holding pattern, by the sector in which the heading lies.

    With the angle from the heading to the outbound course counted positive to the side of the
    turns: from 0 to 70 degrees offset (sector 2, the teardrop), from 0 to -110 parallel (sector 1),
    else direct (sector 3). Within 5 degrees of a boundary the entry across it may be flown too.

    Parameters
    ----------
    heading_deg : array_like, in degrees
        Heading at which the fix is reached, any finite number.
    inbound_course_deg : array_like, in degrees
        Course flown to the fix in the pattern, against the same north.
    side : {"right", "left"}
        Which way the turns go.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    EntrySector
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `entry`: The entry of the sector in which the heading lies: its number, `HoldingEntry`.
        `also`: The entry across the boundary, `HoldingEntry`, if the heading lies in the zone about
        it; else NaN.
        `to_outbound_deg`: From the heading to the outbound course, right positive, in degrees.
        `to_boundary_deg`: Angle between the heading and the nearest boundary of two sectors,
        without its side, in degrees.
        `first_course_deg`: The first course flown from the fix: the outbound course, 30 degrees off
        it into the holding side for an offset entry, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: On a boundary both entries are given: at 0 offset is named first, at 70
    offset, at -110 parallel.

    Source: CNATRA P-821 figure 3-8, P-801 figures 17A and 17B; the zone: FAA Aeronautical
    Information Manual (3 April 2014), 5-3-8 j 6 (d), CNATRA P-821 and ICAO Doc 8168 Vol I (5th ed.
    2006), Part I Section 6 Chapter 1, from memory.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.holding_entry(15.0, 270.0, 'right').entry:.0f}"
    '3'
    >>> f"{lubberline.holding_entry(15.0, 270.0, 'right').also:.0f}"
    '2'
    >>> [f"{value:.0f}" for value in lubberline.holding_entry([15.0, 15.0], 270.0, 'right').entry]
    ['3', '3']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    if not kwargs:
        answer = _scalar_holding_entry(heading_deg, inbound_course_deg, side)
        if answer is not None:
            return named(EntrySector, answer)
    return EntrySector._make(many("holding_entry", EntrySector._fields, (heading_deg, inbound_course_deg, side), kwargs))


_scalar_holding_entry = scalars["holding_entry"]


class HoldingTiming(NamedTuple):
    """What is timed in a holding pattern: what `holding_timing` gives."""

    timed: object
    """The leg that is timed, `TimedLeg`."""
    time_s: object
    """Its time."""


def holding_timing(altitude_ft, authority, **kwargs):
    r"""Which leg of a holding pattern is timed, and for how long.

    One minute at or below 14 000 ft, a minute and a half above: of the outbound leg in still air by
    ICAO, of the inbound leg by the FAA.

    Parameters
    ----------
    altitude_ft : array_like, in feet
        Altitude or flight level, -50 000 to 300 000.
    authority : {"icao", "faa"}
        Whose timing.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    HoldingTiming
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `timed`: The leg that is timed, `TimedLeg`.
        `time_s`: Its time, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published.

    Degenerate cases: 14 000 ft belong to the lower band. Outbound the clock starts over or abeam
    the fix, whichever is later; where abeam cannot be told, with wings level.

    Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA
    Aeronautical Information Manual 5-3-8, edition not shown in the copy read, and CNATRA T-6B FTI
    chapter 7.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.holding_timing(14001.0, 'icao').time_s:.0f}"
    '90'
    >>> f"{lubberline.holding_timing(14001.0, 'icao').timed:.0f}"
    '1'
    >>> [f"{value:.0f}" for value in lubberline.holding_timing([14001.0, 14001.0], 'icao').time_s]
    ['90', '90']
    """
    authority = chosen(_TIMING_AUTHORITY, "authority", authority)
    if not kwargs:
        answer = _scalar_holding_timing(altitude_ft, authority)
        if answer is not None:
            return named(HoldingTiming, answer)
    return HoldingTiming._make(many("holding_timing", HoldingTiming._fields, (altitude_ft, authority), kwargs))


_scalar_holding_timing = scalars["holding_timing"]


class HoldingSpeed(NamedTuple):
    """The greatest speeds of a holding pattern: what `holding_speed` gives."""

    indicated_kt: object
    """The greatest indicated airspeed; NaN where only a Mach number or nothing limits."""
    mach: object
    """The greatest Mach number; NaN where only an airspeed or nothing limits."""
    calibrated_kt: object
    """The greatest calibrated airspeed that both leave, with the altitude taken for pressure altitude; NaN where nothing limits."""


def holding_speed(altitude_ft, rule, **kwargs):
    r"""The greatest speed at which a holding pattern may be flown.

    By authority and altitude, as published; a limit of both airspeed and Mach number means the
    lesser of the two.

    Parameters
    ----------
    altitude_ft : array_like, in feet
        Altitude or flight level, -16 420 to 262 467.
    rule : {"faa", "faa_air_force", "faa_navy", "icao", "icao_turbulence", "icao_categories_a_b", "canada", "canada_propeller", "canada_jet", "faa_icon", "faa_climb_in", "faa_propeller_nineties", "faa_jet_nineties", "icao_first_edition_propeller", "icao_first_edition_jet", "canada_military", "canada_climb"}
        Whose limit, with its edition.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    HoldingSpeed
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `indicated_kt`: The greatest indicated airspeed; NaN where only a Mach number or nothing
        limits, in knots.
        `mach`: The greatest Mach number; NaN where only an airspeed or nothing limits.
        `calibrated_kt`: The greatest calibrated airspeed that both leave, with the altitude taken
        for pressure altitude; NaN where nothing limits, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published. Limits change: each alternative of the rule names its edition.

    Degenerate cases: An altitude that bounds a band belongs to the band below it. Where nothing
    limits the speed, every output is NaN.

    Source: FAA Aeronautical Information Manual (20 April 2023), 5-3-8 j 2; AFMAN 11-217V1 (3
    January 2005), tables 10.1 and 18.4, the latter after ICAO Doc 8168; Transport Canada
    Aeronautical Information Manual, RAC 10.7, before and since October 2018, quoted; the FAA's of
    before 1998 and the first edition of ICAO Doc 8168, from memory.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.holding_speed(14000.0, 'faa').indicated_kt:.0f}"
    '230'
    >>> f"{lubberline.holding_speed(33900.0, 'icao_turbulence').calibrated_kt:.1f}"
    '278.8'
    >>> f"{lubberline.holding_speed(34001.0, 'icao').mach:.2f}"
    '0.83'
    >>> [f"{value:.0f}" for value in lubberline.holding_speed([14000.0, 14000.0], 'faa').indicated_kt]
    ['230', '230']
    """
    rule = chosen(_HOLDING_SPEED_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_holding_speed(altitude_ft, rule)
        if answer is not None:
            return named(HoldingSpeed, answer)
    return HoldingSpeed._make(many("holding_speed", HoldingSpeed._fields, (altitude_ft, rule), kwargs))


_scalar_holding_speed = scalars["holding_speed"]


class HoldingTurn(NamedTuple):
    """The turns of a holding pattern: what `holding_turn` gives."""

    bank_deg: object
    """The bank that is flown."""
    turn_rate_deg_per_s: object
    """The rate of turn at it."""
    radius_nm: object
    """The radius in still air."""
    governed_by: object
    """What governs the bank, `Governor`."""


def holding_turn(true_airspeed_kt, rule, **kwargs):
    r"""The turns of a holding pattern: standard rate or a bank, whichever needs less bank.

    The bank is the lesser of 25 degrees (30 by the FAA without a flight director) and `atan(rate V
    / g)` at 3 degrees per second.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    rule : {"icao", "faa", "faa_flight_director"}
        Whose limits.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    HoldingTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `bank_deg`: The bank that is flown, in degrees.
        `turn_rate_deg_per_s`: The rate of turn at it, in degrees per second.
        `radius_nm`: The radius in still air, in nautical miles.
        `governed_by`: What governs the bank, `Governor`.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: None in the range.

    Source: ICAO Doc 8168 Vol I (5th ed. 2006), Part I Section 6 Chapter 1, as quoted; FAA
    Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (b), and (20 April 2023), 5-3-8 j.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.holding_turn(220.0, 'icao').turn_rate_deg_per_s:.2f}"
    '2.32'
    >>> f"{lubberline.holding_turn(220.0, 'faa').bank_deg:.1f}"
    '30.0'
    >>> [f"{value:.2f}" for value in lubberline.holding_turn([220.0, 220.0], 'icao').turn_rate_deg_per_s]
    ['2.32', '2.32']
    """
    rule = chosen(_HOLDING_BANK_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_holding_turn(true_airspeed_kt, rule)
        if answer is not None:
            return named(HoldingTurn, answer)
    return HoldingTurn._make(many("holding_turn", HoldingTurn._fields, (true_airspeed_kt, rule), kwargs))


_scalar_holding_turn = scalars["holding_turn"]


def outbound_end_dme_nm(fix_dme_nm, inbound, before_fix_nm, across_nm, height_ft=0.0, **kwargs):
    r"""The DME reading at the end of the outbound leg of a holding pattern whose fix is a distance on a radial.

    The reading at the fix is turned into ground distance; the leg ends so far before the fix and so
    far across, as `holding_pattern` gives them in any wind; the distance there is turned back into
    slant range.

    Parameters
    ----------
    fix_dme_nm : array_like, in nautical miles
        DME reading at the fix, 0 to 10 900.
    inbound : {"inbound", "outbound"}
        Whether the inbound leg is flown toward the station (inbound) or away from it (outbound).
    before_fix_nm : array_like, in nautical miles
        Where the leg ends, before the fix along the inbound course, -10 000 to 10 000.
    across_nm : array_like, in nautical miles
        Where the leg ends, across the inbound course, -5000 to 5000.
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reading below the height. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: That of `slant_range_nm`; the pattern is laid out on a plane.

    Degenerate cases: Held away from the station, a leg that ends beyond it counts on.

    Source: The right triangle on the ground, and the law of cosines between the radii of the earth
    and of the flight.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.outbound_end_dme_nm(30.0, 'inbound', 4.7, 4.9, 14000.0):.2f}"
    '35.03'
    >>> [f"{value:.2f}" for value in lubberline.outbound_end_dme_nm([30.0, 30.0], 'inbound', 4.7, 4.9, 14000.0)]
    ['35.03', '35.03']
    """
    inbound = chosen(_RADIAL_FLOWN, "inbound", inbound)
    if not kwargs:
        answer = _scalar_outbound_end_dme_nm(fix_dme_nm, inbound, before_fix_nm, across_nm, height_ft)
        if answer is not None:
            return answer
    return ufunc.outbound_end_dme_nm(fix_dme_nm, inbound, before_fix_nm, across_nm, height_ft, **kwargs)


_scalar_outbound_end_dme_nm = scalars["outbound_end_dme_nm"]


class LimitingDme(NamedTuple):
    """The limiting outbound distance of a holding pattern: what `limiting_dme` gives."""

    limiting_dme_nm: object
    """DME reading at the end of the still-air outbound leg."""
    rounded_nm: object
    """To a whole nautical mile by the published rule; NaN for a pattern held away from the station, whose rule was not read."""


def limiting_dme(fix_dme_nm, inbound, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft=0.0, **kwargs):
    r"""The limiting outbound DME distance of procedure design, exact and rounded as published.

    `sqrt((Ds + ds)^2 + 4 r^2 + h^2)` in the published form, seen over a curved earth here. Held
    toward the station it is rounded up to a whole mile, but down if the decimal is below 0.25 (at
    or below 14 000 ft) or below 0.5 (above).

    Parameters
    ----------
    fix_dme_nm : array_like, in nautical miles
        DME reading at the fix, 0 to 10 900.
    inbound : {"inbound", "outbound"}
        Whether the inbound leg is flown toward the station (inbound) or away from it (outbound).
    outbound_leg_nm : array_like, in nautical miles
        Length of the outbound leg, 0 to 10 900.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 1000.
    altitude_ft : array_like, in feet
        Altitude, -16 500 to 400 000.
    station_elevation_ft : array_like, in feet
        Elevation of the station's antenna, -16 500 to 60 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    LimitingDme
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `limiting_dme_nm`: DME reading at the end of the still-air outbound leg, in nautical miles.
        `rounded_nm`: To a whole nautical mile by the published rule; NaN for a pattern held away
        from the station, whose rule was not read, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reading below the height. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The curve of the earth adds up to 0.01 NM to the flat form within 60 NM and 14 000 ft.

    Degenerate cases: Held away from the station the sign of the leg changes.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, 3.3.4 c) and
    d).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.limiting_dme(30.0, 'inbound', 4.677, 2.461, 14000.0, 0.0).rounded_nm:.0f}"
    '35'
    >>> [f"{value:.0f}" for value in lubberline.limiting_dme([30.0, 30.0], 'inbound', 4.677, 2.461, 14000.0, 0.0).rounded_nm]
    ['35', '35']
    """
    inbound = chosen(_RADIAL_FLOWN, "inbound", inbound)
    if not kwargs:
        answer = _scalar_limiting_dme(fix_dme_nm, inbound, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft)
        if answer is not None:
            return named(LimitingDme, answer)
    return LimitingDme._make(many("limiting_dme", LimitingDme._fields, (fix_dme_nm, inbound, outbound_leg_nm, turn_radius_nm, altitude_ft, station_elevation_ft), kwargs))


_scalar_limiting_dme = scalars["limiting_dme"]


class Intercept(NamedTuple):
    """How a course is intercepted: what `intercept` gives."""

    track_deg: object
    """Direction over the ground to the course."""
    heading_deg: object
    """Heading that holds it."""
    groundspeed_kt: object
    """Groundspeed on the way."""
    distance_nm: object
    """Distance over the ground to the course."""
    time_s: object
    """Time to the course."""
    along_nm: object
    """Distance gained along the course on the way."""
    lead_nm: object
    """Distance before the course, along the track, at which the turn onto it begins."""
    distance_to_roll_in_nm: object
    """Distance over the ground to where the turn begins; negative where that is behind."""
    time_to_roll_in_s: object
    """Time to where the turn begins; negative where that is behind."""
    cross_track_at_roll_in_nm: object
    """Cross-track at which the turn begins, positive right of the course."""


def intercept(course_deg, cross_track_nm, intercept_angle_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""Heading, distance and time to intercept a course from beside it at an angle, in wind, and the lead of the turn onto it.

    `|x| / sin(angle)` to the course and `|x| / tan(angle)` along it, flown on the heading that
    holds that track; the turn onto the course begins its lead before, as `lead_nm` has it.

    Parameters
    ----------
    course_deg : array_like, in degrees
        The course, any finite number.
    cross_track_nm : array_like, in nautical miles
        Where the aircraft is, positive right of the course, -5000 to 5000.
    intercept_angle_deg : array_like, in degrees
        Angle at which the course is intercepted, above 0 to 90.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    Intercept
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `track_deg`: Direction over the ground to the course, in degrees.
        `heading_deg`: Heading that holds it, in degrees.
        `groundspeed_kt`: Groundspeed on the way, in knots.
        `distance_nm`: Distance over the ground to the course, in nautical miles.
        `time_s`: Time to the course, in seconds.
        `along_nm`: Distance gained along the course on the way, in nautical miles.
        `lead_nm`: Distance before the course, along the track, at which the turn onto it begins, in
        nautical miles.
        `distance_to_roll_in_nm`: Distance over the ground to where the turn begins; negative where
        that is behind, in nautical miles.
        `time_to_roll_in_s`: Time to where the turn begins; negative where that is behind, in
        seconds.
        `cross_track_at_roll_in_nm`: Cross-track at which the turn begins, positive right of the
        course, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a course or a way to it that the airspeed cannot
        hold. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error on a plane; 1e-4 of the distance on the ellipsoid within 60 NM, with
    the cross-track measured on it.

    Degenerate cases: On the course the track is the course; distance, time and lead are zero.
    Closer than the turn needs, the distance to roll-in is negative.

    Source: The right triangle of cross-track and track; the lead as `lead_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.intercept(90.0, -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0).heading_deg:.1f}"
    '109.0'
    >>> f"{lubberline.intercept(90.0, -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0).distance_to_roll_in_nm:.2f}"
    '7.65'
    >>> [f"{value:.1f}" for value in lubberline.intercept([90.0, 90.0], -4.0, 30.0, 180.0, 40.0, 35.0, 25.0, 3.0, 5.0).heading_deg]
    ['109.0', '109.0']
    """
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_intercept(course_deg, cross_track_nm, intercept_angle_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(Intercept, answer)
    return Intercept._make(many("intercept", Intercept._fields, (course_deg, cross_track_nm, intercept_angle_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_intercept = scalars["intercept"]


class RadialIntercept(NamedTuple):
    """The lead onto a radial: what `radial_intercept` gives."""

    heading_deg: object
    """Heading that holds the track to the radial."""
    groundspeed_kt: object
    """Groundspeed on it."""
    crossing_distance_nm: object
    """Distance from the station at which the track crosses the radial."""
    distance_to_crossing_nm: object
    """Distance along the track to there."""
    lead_nm: object
    """Distance before it at which the turn begins."""
    time_to_roll_in_s: object
    """Time to where the turn begins; negative where that is behind."""
    radial_at_roll_in_deg: object
    """Radial on which the turn begins."""
    distance_at_roll_in_nm: object
    """Ground distance from the station at which the turn begins."""
    needle_at_roll_in_deg: object
    """Degrees of the needle from its centre there, with the course set that is to be flown; positive when the course lies to the right."""
    cross_track_at_roll_in_nm: object
    """Cross-track at which the turn begins, positive right of the course."""
    distance_at_roll_out_nm: object
    """Distance from the station at which the wings are level on the radial; negative past the station."""
    turn_duration_s: object
    """From roll-in to wings level."""


def radial_intercept(radial_deg, distance_nm, wanted_radial_deg, flown, track_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""Where the turn onto a radial begins, from another radial along any track, in wind and with roll: distance, radial and needle.

    With p, t and w the aircraft, the track and the radial from the station, the track crosses the
    radial at `s = -(p x w) / (t x w)`; the turn begins its lead L before that, as `lead_nm` has it.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        Radial on which the aircraft is, any finite number.
    distance_nm : array_like, in nautical miles
        Its ground distance from the station, 0 to 10 900.
    wanted_radial_deg : array_like, in degrees
        Radial to intercept.
    flown : {"inbound", "outbound"}
        Whether the radial is then flown inbound or outbound.
    track_deg : array_like, in degrees
        Direction flown over the ground to the radial, against the station's north.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RadialIntercept
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `heading_deg`: Heading that holds the track to the radial, in degrees.
        `groundspeed_kt`: Groundspeed on it, in knots.
        `crossing_distance_nm`: Distance from the station at which the track crosses the radial, in
        nautical miles.
        `distance_to_crossing_nm`: Distance along the track to there, in nautical miles.
        `lead_nm`: Distance before it at which the turn begins, in nautical miles.
        `time_to_roll_in_s`: Time to where the turn begins; negative where that is behind, in
        seconds.
        `radial_at_roll_in_deg`: Radial on which the turn begins, in degrees.
        `distance_at_roll_in_nm`: Ground distance from the station at which the turn begins, in
        nautical miles.
        `needle_at_roll_in_deg`: Degrees of the needle from its centre there, with the course set
        that is to be flown; positive when the course lies to the right, in degrees.
        `cross_track_at_roll_in_nm`: Cross-track at which the turn begins, positive right of the
        course, in nautical miles.
        `distance_at_roll_out_nm`: Distance from the station at which the wings are level on the
        radial; negative past the station, in nautical miles.
        `turn_duration_s`: From roll-in to wings level, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a track that is parallel to the radial, leads away
        from it or crosses its line on the other side of the station, a reversal, a wind that the
        airspeed cannot hold. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error on a plane about the station; 1e-4 of the distance within 60 NM.

    Degenerate cases: On the radial, and closer to it than the lead, the time to roll-in is
    negative. Distances count along the ground.

    Source: Derived from the crossing of two lines and the equilibrium of a coordinated turn.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.radial_intercept(180.0, 30.0, 200.0, 'inbound', 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0).distance_at_roll_in_nm:.2f}"
    '18.61'
    >>> f"{lubberline.radial_intercept(180.0, 30.0, 200.0, 'inbound', 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0).needle_at_roll_in_deg:.2f}"
    '-2.07'
    >>> [f"{value:.2f}" for value in lubberline.radial_intercept([180.0, 180.0], 30.0, 200.0, 'inbound', 335.0, 240.0, 250.0, 40.0, 25.0, 3.0, 5.0).distance_at_roll_in_nm]
    ['18.61', '18.61']
    """
    flown = chosen(_RADIAL_FLOWN, "flown", flown)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_radial_intercept(radial_deg, distance_nm, wanted_radial_deg, flown, track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(RadialIntercept, answer)
    return RadialIntercept._make(many("radial_intercept", RadialIntercept._fields, (radial_deg, distance_nm, wanted_radial_deg, flown, track_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_radial_intercept = scalars["radial_intercept"]


class DoubleAngle(NamedTuple):
    """An intercept at double the angle: what `double_angle_intercept` gives."""

    track_deg: object
    """Direction over the ground to the radial."""
    heading_deg: object
    """Heading that holds it."""
    distance_nm: object
    """Distance to the radial, and from there to the station."""
    time_s: object
    """Time to the radial."""
    time_to_station_s: object
    """Time from there to the station."""


def double_angle_intercept(radial_deg, distance_nm, wanted_radial_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, **kwargs):
    r"""The intercept of a radial toward the station at twice the degrees to it, exactly.

    From the distance d and a degrees off the radial, the way to it is as long as what is left to
    the station: `d / (2 cos(a))`.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        Radial on which the aircraft is, any finite number.
    distance_nm : array_like, in nautical miles
        Its ground distance from the station, 0 to 10 900.
    wanted_radial_deg : array_like, in degrees
        Radial to intercept.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    DoubleAngle
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `track_deg`: Direction over the ground to the radial, in degrees.
        `heading_deg`: Heading that holds it, in degrees.
        `distance_nm`: Distance to the radial, and from there to the station, in nautical miles.
        `time_s`: Time to the radial, in seconds.
        `time_to_station_s`: Time from there to the station, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, more than 45 degrees off the radial, a course that
        the airspeed cannot hold. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error on a plane. Turns are left out.

    Degenerate cases: On the radial the way is the radial, and half the distance is left.

    Source: The isosceles triangle; the technique: CNATRA P-340 chapter 6, 609.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.double_angle_intercept(150.0, 24.0, 135.0, 200.0, 20.0, 50.0).distance_nm:.2f}"
    '12.42'
    >>> f"{lubberline.double_angle_intercept(150.0, 24.0, 135.0, 200.0, 20.0, 50.0).heading_deg:.1f}"
    '353.2'
    >>> [f"{value:.2f}" for value in lubberline.double_angle_intercept([150.0, 150.0], 24.0, 135.0, 200.0, 20.0, 50.0).distance_nm]
    ['12.42', '12.42']
    """
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_double_angle_intercept(radial_deg, distance_nm, wanted_radial_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(DoubleAngle, answer)
    return DoubleAngle._make(many("double_angle_intercept", DoubleAngle._fields, (radial_deg, distance_nm, wanted_radial_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_double_angle_intercept = scalars["double_angle_intercept"]


def rule_intercept_angle_deg(off_radial_deg, **kwargs):
    r"""The angle at which to intercept a radial by rule: twice the degrees to it, at least 20 and at most 90.

    `2 * degrees`, within 20 and 90.

    Parameters
    ----------
    off_radial_deg : array_like, in degrees
        Degrees to the radial, either way, reduced to half a circle.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A rule.

    Degenerate cases: On the radial it still says 20 degrees.

    Source: FAA-H-8083-15 (Instrument Flying Handbook), from memory.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_intercept_angle_deg(15.0):.0f}"
    '30'
    >>> f"{lubberline.rule_intercept_angle_deg(4.0):.0f}"
    '20'
    >>> [f"{value:.0f}" for value in lubberline.rule_intercept_angle_deg([15.0, 15.0])]
    ['30', '30']
    """
    if not kwargs:
        answer = _scalar_rule_intercept_angle_deg(off_radial_deg)
        if answer is not None:
            return answer
    return ufunc.rule_intercept_angle_deg(off_radial_deg, **kwargs)


_scalar_rule_intercept_angle_deg = scalars["rule_intercept_angle_deg"]


def rule_intercept_lead_deg(distance_nm, turn_radius_nm, intercept_angle_deg=90.0, **kwargs):
    r"""The lead onto a radial in radials by the sixty-to-one rule and a share for the angle of the intercept.

    `(60 / D) r`, times a third at 45 degrees, two thirds at 60, nothing up to 30; in between
    interpolated.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    intercept_angle_deg : array_like, in degrees
        Angle of the intercept, above 0 to 90 (default 90.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The exact share is `1 - cos(angle)`: 0.13 at 30 degrees, 0.29 at 45, 0.5 at 60. See
    `radial_intercept`.

    Degenerate cases: Close to the station it gives more radials than there are.

    Source: A third at 45 degrees: CNATRA P-1215, course intercepts. That, two thirds at 60, the
    whole at 90 and very little below 30: CNATRA P-1265 p. 2-11 (5-99), there of arcs. The library's
    own reading: nothing to 30 degrees, and straight lines from 30 to 45, to 60 and to the whole at
    90.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_intercept_lead_deg(15.0, 2.5, 45.0):.2f}"
    '3.33'
    >>> [f"{value:.2f}" for value in lubberline.rule_intercept_lead_deg([15.0, 15.0], 2.5, 45.0)]
    ['3.33', '3.33']
    """
    if not kwargs:
        answer = _scalar_rule_intercept_lead_deg(distance_nm, turn_radius_nm, intercept_angle_deg)
        if answer is not None:
            return answer
    return ufunc.rule_intercept_lead_deg(distance_nm, turn_radius_nm, intercept_angle_deg, **kwargs)


_scalar_rule_intercept_lead_deg = scalars["rule_intercept_lead_deg"]


def lead_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""Distance before a fix at which to begin the turn, so as to roll out on the outbound course.

    The displacement of the turn through the air (roll in at the roll rate, hold the bank, roll out
    wings level) plus wind times duration is a vector D; with u and v the unit vectors of the
    inbound and outbound course the lead is `(D x v) / (u x v)`. In still air with an instant roll
    that is `radius tan(change / 2)`.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    outbound_course_deg : array_like, in degrees
        Course flown from it, against the same north.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reversal, a wind that the airspeed cannot hold. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1.5e-5 NM against a fine integration over the ellipsoid for leads to 10 NM, 1.2e-4 NM
    to 20 NM. Arrays and single calls agree to 1e-12 of the radius and the rolls of the turn, over
    the sine of the change of course.

    Degenerate cases: No change of course has a lead of zero. The turn goes the short way.

    Source: Derived from the equilibrium of a coordinated turn; in still air the distance of turn
    anticipation of ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.lead_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0):.2f}"
    '5.41'
    >>> [f"{value:.2f}" for value in lubberline.lead_nm([40.0, 40.0], 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0)]
    ['5.41', '5.41']
    """
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_lead_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return answer
    return ufunc.lead_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, **kwargs)


_scalar_lead_nm = scalars["lead_nm"]


def dme_at_roll_in_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, height_above_station_ft=0.0, **kwargs):
    r"""The DME reading at which to begin the turn at a station, so as to roll out on the outbound radial.

    The slant range from the station to the point at the lead before it: `sqrt(h^2 + 4 R (R + h)
    sin^2(lead / 2R))`, with the lead as `lead_nm` gives it.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    outbound_course_deg : array_like, in degrees
        Course flown from it, against the same north.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    height_above_station_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: As `lead_nm`. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: That of `lead_nm`, and within 1.1 m for the slant.

    Degenerate cases: No change of course reads the height: it begins overhead.

    Source: As `lead_nm`, and the law of cosines between the radii of the earth and of the flight.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.dme_at_roll_in_nm(40.0, 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, 33000.0):.2f}"
    '7.67'
    >>> [f"{value:.2f}" for value in lubberline.dme_at_roll_in_nm([40.0, 40.0], 110.0, 430.0, 270.0, 60.0, 25.0, 3.0, 5.0, 33000.0)]
    ['7.67', '7.67']
    """
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_dme_at_roll_in_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, height_above_station_ft)
        if answer is not None:
            return answer
    return ufunc.dme_at_roll_in_nm(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, height_above_station_ft, **kwargs)


_scalar_dme_at_roll_in_nm = scalars["dme_at_roll_in_nm"]


def turn_anticipation_nm(turn_radius_nm, course_change_deg, **kwargs):
    r"""Distance of turn anticipation in still air with an instant roll.

    `r tan(change / 2)`.

    Parameters
    ----------
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    course_change_deg : array_like, in degrees
        Change of course, either way, reduced to half a circle.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a reversal. In arrays such a point is NaN and
        NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: It grows without bound toward a reversal.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 3 Chapter 8, 8.1.5.1.1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.turn_anticipation_nm(6.33, 90.0):.3f}"
    '6.330'
    >>> [f"{value:.3f}" for value in lubberline.turn_anticipation_nm([6.33, 6.33], 90.0)]
    ['6.330', '6.330']
    """
    if not kwargs:
        answer = _scalar_turn_anticipation_nm(turn_radius_nm, course_change_deg)
        if answer is not None:
            return answer
    return ufunc.turn_anticipation_nm(turn_radius_nm, course_change_deg, **kwargs)


_scalar_turn_anticipation_nm = scalars["turn_anticipation_nm"]


def arc_entry_inbound_nm(arc_radius_nm, turn_radius_nm, **kwargs):
    r"""Distance from the station at which a radial flown inbound is left for an arc.

    `sqrt(D^2 + 2 D r)` with D the radius of the arc and r that of the turn, in still air with an
    instant roll.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a turn that does not fit. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Exact in the plane.

    Degenerate cases: None in the range.

    Source: Derived: the turn is a circle tangent to the radial and to the arc.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_entry_inbound_nm(10.0, 2.5):.2f}"
    '12.25'
    >>> [f"{value:.2f}" for value in lubberline.arc_entry_inbound_nm([10.0, 10.0], 2.5)]
    ['12.25', '12.25']
    """
    if not kwargs:
        answer = _scalar_arc_entry_inbound_nm(arc_radius_nm, turn_radius_nm)
        if answer is not None:
            return answer
    return ufunc.arc_entry_inbound_nm(arc_radius_nm, turn_radius_nm, **kwargs)


_scalar_arc_entry_inbound_nm = scalars["arc_entry_inbound_nm"]


def arc_entry_outbound_nm(arc_radius_nm, turn_radius_nm, **kwargs):
    r"""Distance from the station at which a radial flown outbound is left for an arc.

    `sqrt(D^2 - 2 D r)` with D the radius of the arc and r that of the turn, in still air with an
    instant roll.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a turn that does not fit. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Exact in the plane.

    Degenerate cases: For an arc of twice the turn radius the turn begins over the station.

    Source: Derived: the turn is a circle tangent to the radial and to the arc.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.arc_entry_outbound_nm(10.0, 2.5):.2f}"
    '7.07'
    >>> [f"{value:.2f}" for value in lubberline.arc_entry_outbound_nm([10.0, 10.0], 2.5)]
    ['7.07', '7.07']
    """
    if not kwargs:
        answer = _scalar_arc_entry_outbound_nm(arc_radius_nm, turn_radius_nm)
        if answer is not None:
            return answer
    return ufunc.arc_entry_outbound_nm(arc_radius_nm, turn_radius_nm, **kwargs)


_scalar_arc_entry_outbound_nm = scalars["arc_entry_outbound_nm"]


def lead_radial_inbound_deg(arc_radius_nm, turn_radius_nm, **kwargs):
    r"""Angle at the station by which the turn off an arc begins before a radial to be flown inbound.

    `asin(r / (D - r))` with D the radius of the arc and r that of the turn, in still air with an
    instant roll.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a turn that does not fit. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Exact in the plane.

    Degenerate cases: For an arc of twice the turn radius it is 90 degrees.

    Source: Derived: the turn is a circle tangent to the radial and to the arc.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.lead_radial_inbound_deg(12.0, 0.6):.2f}"
    '3.02'
    >>> [f"{value:.2f}" for value in lubberline.lead_radial_inbound_deg([12.0, 12.0], 0.6)]
    ['3.02', '3.02']
    """
    if not kwargs:
        answer = _scalar_lead_radial_inbound_deg(arc_radius_nm, turn_radius_nm)
        if answer is not None:
            return answer
    return ufunc.lead_radial_inbound_deg(arc_radius_nm, turn_radius_nm, **kwargs)


_scalar_lead_radial_inbound_deg = scalars["lead_radial_inbound_deg"]


def lead_radial_outbound_deg(arc_radius_nm, turn_radius_nm, **kwargs):
    r"""Angle at the station by which the turn off an arc begins before a radial to be flown outbound.

    `asin(r / (D + r))` with D the radius of the arc and r that of the turn, in still air with an
    instant roll.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Ground distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a turn that does not fit. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Exact in the plane.

    Degenerate cases: None in the range.

    Source: Derived: the turn is a circle tangent to the radial and to the arc.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.lead_radial_outbound_deg(12.0, 0.6):.2f}"
    '2.73'
    >>> [f"{value:.2f}" for value in lubberline.lead_radial_outbound_deg([12.0, 12.0], 0.6)]
    ['2.73', '2.73']
    """
    if not kwargs:
        answer = _scalar_lead_radial_outbound_deg(arc_radius_nm, turn_radius_nm)
        if answer is not None:
            return answer
    return ufunc.lead_radial_outbound_deg(arc_radius_nm, turn_radius_nm, **kwargs)


_scalar_lead_radial_outbound_deg = scalars["lead_radial_outbound_deg"]


class LegMeaning(NamedTuple):
    """What the two letters of a leg say: what `leg_meaning` gives."""

    path: object
    """How its path is flown: a code of `LegPath`."""
    end: object
    """What ends it: a code of `LegEnd`."""


def leg_meaning(leg, **kwargs):
    r"""What the two letters of a leg say: how the path is flown, and what ends it.

    Most codes are one letter for the path and one for the end; IF, AF, RF and PI name their path by
    both.

    Parameters
    ----------
    leg : {"IF", "TF", "CF", "DF", "AF", "RF", "FA", "FC", "FD", "FM", "CA", "CD", "CI", "CR", "VA", "VD", "VI", "VM", "VR", "HA", "HF", "HM", "PI"}
        The leg's code.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    LegMeaning
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `path`: How its path is flown: a code of `LegPath`.
        `end`: What ends it: a code of `LegEnd`.

    Raises
    ------
    NavigationError
        For numbers: A code that is none. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Exact.

    Degenerate cases: None.

    Source: ARINC 424 path-and-terminator concept, as listed in AIXM 5.1, CodeSegmentPathBaseType;
    FAA Aeronautical Information Manual 1-2-1, edition not shown in the copy read.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.leg_meaning('CD').path:.0f}"
    '2'
    >>> f"{lubberline.leg_meaning('CD').end:.0f}"
    '3'
    """
    leg = chosen(_LEG_CODE, "leg", leg)
    if not kwargs:
        answer = _scalar_leg_meaning(leg)
        if answer is not None:
            return named(LegMeaning, answer)
    return LegMeaning._make(many("leg_meaning", LegMeaning._fields, (leg,), kwargs))


_scalar_leg_meaning = scalars["leg_meaning"]


def mach_from_cas(cas_kt, pressure_altitude_ft, **kwargs):
    r"""Mach number from calibrated airspeed; the temperature plays no part.

    `M = sqrt(5 ((q/p + 1)^(2/7) - 1))` with `q = p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`; each side above
    its Mach 1 by Rayleigh's pitot formula.

    Parameters
    ----------
    cas_kt : array_like, in knots
        Calibrated airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond Mach 10. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result, as much again between arrays and single calls), for air
    of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.mach_from_cas(280.0, 35000.0):.4f}"
    '0.8213'
    >>> f"{lubberline.mach_from_cas(600.0, 60000.0):.4f}"
    '2.8525'
    >>> [f"{value:.4f}" for value in lubberline.mach_from_cas([280.0, 280.0], 35000.0)]
    ['0.8213', '0.8213']
    """
    if not kwargs:
        answer = _scalar_mach_from_cas(cas_kt, pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.mach_from_cas(cas_kt, pressure_altitude_ft, **kwargs)


_scalar_mach_from_cas = scalars["mach_from_cas"]


def cas_from_mach_kt(mach, pressure_altitude_ft, **kwargs):
    r"""Calibrated airspeed from Mach number: the inverse of `mach_from_cas`.

    The impact pressure at that Mach number, read as if at standard sea level.

    Parameters
    ----------
    mach : array_like
        Mach number, 0 to 10.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cas_from_mach_kt(0.78, 35000.0):.2f}"
    '264.42'
    >>> [f"{value:.2f}" for value in lubberline.cas_from_mach_kt([0.78, 0.78], 35000.0)]
    ['264.42', '264.42']
    """
    if not kwargs:
        answer = _scalar_cas_from_mach_kt(mach, pressure_altitude_ft)
        if answer is not None:
            return answer
    return ufunc.cas_from_mach_kt(mach, pressure_altitude_ft, **kwargs)


_scalar_cas_from_mach_kt = scalars["cas_from_mach_kt"]


def tas_from_mach_kt(mach, pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""True airspeed from Mach number.

    `V = M a`, with the speed of sound `a = sqrt(1.4 R T)`.

    Parameters
    ----------
    mach : array_like
        Mach number, 0 to 10.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt or Mach 10. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.tas_from_mach_kt(0.78, 35000.0, 0.0):.2f}"
    '449.61'
    >>> [f"{value:.2f}" for value in lubberline.tas_from_mach_kt([0.78, 0.78], 35000.0, 0.0)]
    ['449.61', '449.61']
    """
    if not kwargs:
        answer = _scalar_tas_from_mach_kt(mach, pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.tas_from_mach_kt(mach, pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_tas_from_mach_kt = scalars["tas_from_mach_kt"]


def mach_from_tas(tas_kt, pressure_altitude_ft, isa_deviation_k=0.0, **kwargs):
    r"""Mach number from true airspeed.

    `M = V/a`, with the speed of sound `a = sqrt(1.4 R T)`.

    Parameters
    ----------
    tas_kt : array_like, in knots
        True airspeed, 0 to 5000.
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond Mach 10. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding (1e-14 of the result), for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: Zero gives zero.

    Source: The definitions of the airspeeds; ICAO Doc 7488/3 (3rd edition 1993) for the air, NACA
    Report 1135 (1953) for the pitot pressure above Mach 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.mach_from_tas(450.0, 35000.0, 0.0):.4f}"
    '0.7807'
    >>> [f"{value:.4f}" for value in lubberline.mach_from_tas([450.0, 450.0], 35000.0, 0.0)]
    ['0.7807', '0.7807']
    """
    if not kwargs:
        answer = _scalar_mach_from_tas(tas_kt, pressure_altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.mach_from_tas(tas_kt, pressure_altitude_ft, isa_deviation_k, **kwargs)


_scalar_mach_from_tas = scalars["mach_from_tas"]


class MagneticFieldOutput(NamedTuple):
    """The magnetic field at a place and date: what `magnetic_field` gives."""

    declination_deg: object
    """Angle from true to magnetic north, positive east: variation."""
    inclination_deg: object
    """Dip below the horizontal."""
    horizontal_nt: object
    """Horizontal field."""
    north_nt: object
    """Field toward true north."""
    east_nt: object
    """Field toward east."""
    down_nt: object
    """Field downward."""
    total_nt: object
    """The whole field."""
    declination_change_deg: object
    """Change of the declination in a year."""
    inclination_change_deg: object
    """Change of the inclination in a year."""
    horizontal_change_nt: object
    """Change of the horizontal field in a year."""
    north_change_nt: object
    """Change of the field toward true north in a year."""
    east_change_nt: object
    """Change of the field toward east in a year."""
    down_change_nt: object
    """Change of the field downward in a year."""
    total_change_nt: object
    """Change of the whole field in a year."""
    declination_uncertainty_deg: object
    """One standard deviation of the declination."""
    grid_variation_deg: object
    """Declination from the north of the polar grid; NaN between 55 degrees of latitude, where that is not used."""
    zone: object
    """How far a compass can be trusted: 0 clear, 1 caution, 2 blackout, as in `MagneticZone`."""
    in_date: object
    """1 if the date lies in the years the models are made for, 2020 to 2030, else 0."""


def magnetic_field(lat_deg, lon_deg, altitude_ft, decimal_year, **kwargs):
    r"""The earth's magnetic field at a place and date, by the World Magnetic Model.

    Schmidt semi-normalised spherical harmonics of degree and order 12, in double precision: the
    model of 2020 before 2025, that of 2025 from then on.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude, any finite number.
    altitude_ft : array_like, in feet
        Altitude above mean sea level, -16 500 to 400 000.
    decimal_year : array_like
        Date as a year and its fraction, 2020 to 2035.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    MagneticFieldOutput
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `declination_deg`: Angle from true to magnetic north, positive east: variation, in degrees.
        `inclination_deg`: Dip below the horizontal, in degrees.
        `horizontal_nt`: Horizontal field, in nanoteslas.
        `north_nt`: Field toward true north, in nanoteslas.
        `east_nt`: Field toward east, in nanoteslas.
        `down_nt`: Field downward, in nanoteslas.
        `total_nt`: The whole field, in nanoteslas.
        `declination_change_deg`: Change of the declination in a year, in degrees.
        `inclination_change_deg`: Change of the inclination in a year, in degrees.
        `horizontal_change_nt`: Change of the horizontal field in a year, in nanoteslas.
        `north_change_nt`: Change of the field toward true north in a year, in nanoteslas.
        `east_change_nt`: Change of the field toward east in a year, in nanoteslas.
        `down_change_nt`: Change of the field downward in a year, in nanoteslas.
        `total_change_nt`: Change of the whole field in a year, in nanoteslas.
        `declination_uncertainty_deg`: One standard deviation of the declination, in degrees.
        `grid_variation_deg`: Declination from the north of the polar grid; NaN between 55 degrees
        of latitude, where that is not used, in degrees.
        `zone`: How far a compass can be trusted: 0 clear, 1 caution, 2 blackout, as in
        `MagneticZone`.
        `in_date`: 1 if the date lies in the years the models are made for, 2020 to 2030, else 0.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The arithmetic to 1e-8 nT, and so far arrays and single calls agree, angles and what
    follows from them as far as that turns or changes them. The model: one standard deviation of 137
    nT north, 89 east, 141 down.

    Degenerate cases: Between 55 degrees of latitude there is no grid variation (NaN). At a pole the
    components are those of the meridian of the longitude given. About the magnetic poles, where
    `zone` is not 0, and out of date the declination must not be relied on.

    Source: The US/UK World Magnetic Model for 2025-2030: Technical Report, NOAA NCEI and BGS
    (2024).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.magnetic_field(-80.0, 240.0, 0.0, 2027.5).declination_deg:.2f}"
    '68.49'
    >>> f"{lubberline.magnetic_field(-80.0, 240.0, 0.0, 2027.5).down_nt:.1f}"
    '-51783.7'
    >>> [f"{value:.2f}" for value in lubberline.magnetic_field([-80.0, -80.0], 240.0, 0.0, 2027.5).declination_deg]
    ['68.49', '68.49']
    """
    if not kwargs:
        answer = _scalar_magnetic_field(lat_deg, lon_deg, altitude_ft, decimal_year)
        if answer is not None:
            return named(MagneticFieldOutput, answer)
    return MagneticFieldOutput._make(many("magnetic_field", MagneticFieldOutput._fields, (lat_deg, lon_deg, altitude_ft, decimal_year), kwargs))


_scalar_magnetic_field = scalars["magnetic_field"]


def variation_deg(lat_deg, lon_deg, altitude_ft, decimal_year, **kwargs):
    r"""Magnetic variation (declination) at a place and date, positive east.

    The declination of `magnetic_field`.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude, any finite number.
    altitude_ft : array_like, in feet
        Altitude above mean sea level, -16 500 to 400 000.
    decimal_year : array_like
        Date as a year and its fraction, 2020 to 2035.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As `magnetic_field`. Arrays and single calls agree to 1e-8 nT across the horizontal
    field, as far as that turns the declination.

    Degenerate cases: As `magnetic_field`. Near the magnetic poles (caution and blackout zones) and
    out of date it warns of nothing itself: `zone` and `in_date` of `magnetic_field` say so.

    Source: As `magnetic_field`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.variation_deg(-80.0, 240.0, 0.0, 2027.5):.2f}"
    '68.49'
    >>> [f"{value:.2f}" for value in lubberline.variation_deg([-80.0, -80.0], 240.0, 0.0, 2027.5)]
    ['68.49', '68.49']
    """
    if not kwargs:
        answer = _scalar_variation_deg(lat_deg, lon_deg, altitude_ft, decimal_year)
        if answer is not None:
            return answer
    return ufunc.variation_deg(lat_deg, lon_deg, altitude_ft, decimal_year, **kwargs)


_scalar_variation_deg = scalars["variation_deg"]


def decimal_year(year, month, day, **kwargs):
    r"""A calendar date as a year and its elapsed fraction, as `magnetic_field` takes it.

    The days elapsed since the year began, of 365, or 366 in a leap year of the Gregorian calendar.

    Parameters
    ----------
    year : array_like
        Year, whole, 2020 to 2034.
    month : array_like
        Month, whole, 1 to 12.
    day : array_like
        Day of the month from 1, with its elapsed fraction: 2.5 is noon of the second.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a date that the calendar has not. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The Gregorian calendar.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.decimal_year(2026.0, 7.0, 2.5):.4f}"
    '2026.5000'
    >>> f"{lubberline.decimal_year(2028.0, 3.0, 1.0):.4f}"
    '2028.1639'
    >>> [f"{value:.4f}" for value in lubberline.decimal_year([2026.0, 2026.0], 7.0, 2.5)]
    ['2026.5000', '2026.5000']
    """
    if not kwargs:
        answer = _scalar_decimal_year(year, month, day)
        if answer is not None:
            return answer
    return ufunc.decimal_year(year, month, day, **kwargs)


_scalar_decimal_year = scalars["decimal_year"]


def magnetic_from_true_deg(true_deg, variation_deg, **kwargs):
    r"""A true direction counted from magnetic north.

    `true - variation`, 0 to 360; variation is positive east.

    Parameters
    ----------
    true_deg : array_like, in degrees
        True direction, any finite number.
    variation_deg : array_like, in degrees
        Magnetic variation, positive east, -180 to 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The definition of variation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.magnetic_from_true_deg(5.0, 12.0):.0f}"
    '353'
    >>> [f"{value:.0f}" for value in lubberline.magnetic_from_true_deg([5.0, 5.0], 12.0)]
    ['353', '353']
    """
    if not kwargs:
        answer = _scalar_magnetic_from_true_deg(true_deg, variation_deg)
        if answer is not None:
            return answer
    return ufunc.magnetic_from_true_deg(true_deg, variation_deg, **kwargs)


_scalar_magnetic_from_true_deg = scalars["magnetic_from_true_deg"]


def true_from_magnetic_deg(magnetic_deg, variation_deg, **kwargs):
    r"""A magnetic direction counted from true north.

    `magnetic + variation`, 0 to 360; variation is positive east.

    Parameters
    ----------
    magnetic_deg : array_like, in degrees
        Magnetic direction, any finite number.
    variation_deg : array_like, in degrees
        Magnetic variation, positive east, -180 to 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The definition of variation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.true_from_magnetic_deg(353.0, 12.0):.0f}"
    '5'
    >>> [f"{value:.0f}" for value in lubberline.true_from_magnetic_deg([353.0, 353.0], 12.0)]
    ['5', '5']
    """
    if not kwargs:
        answer = _scalar_true_from_magnetic_deg(magnetic_deg, variation_deg)
        if answer is not None:
            return answer
    return ufunc.true_from_magnetic_deg(magnetic_deg, variation_deg, **kwargs)


_scalar_true_from_magnetic_deg = scalars["true_from_magnetic_deg"]


def station_misalignment_deg(station_declination_deg, variation_deg, **kwargs):
    r"""How far a station's radials read more than the magnetic bearing of the same direction, today.

    `variation - declination`, reduced to half a circle either way: the station's north was set up
    with its declination, and the field has moved on.

    Parameters
    ----------
    station_declination_deg : array_like, in degrees
        The station's declination, positive east, -180 to 180.
    variation_deg : array_like, in degrees
        Today's magnetic variation there, positive east, -180 to 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The definitions of declination and variation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.station_misalignment_deg(-6.0, -3.5):.1f}"
    '2.5'
    >>> [f"{value:.1f}" for value in lubberline.station_misalignment_deg([-6.0, -6.0], -3.5)]
    ['2.5', '2.5']
    """
    if not kwargs:
        answer = _scalar_station_misalignment_deg(station_declination_deg, variation_deg)
        if answer is not None:
            return answer
    return ufunc.station_misalignment_deg(station_declination_deg, variation_deg, **kwargs)


_scalar_station_misalignment_deg = scalars["station_misalignment_deg"]


def radial_from_true_deg(true_deg, station_declination_deg, **kwargs):
    r"""A true direction from a station as a radial, which is counted from the station's north.

    `true - declination`, 0 to 360.

    Parameters
    ----------
    true_deg : array_like, in degrees
        True direction from the station, any finite number.
    station_declination_deg : array_like, in degrees
        The station's declination, positive east, -180 to 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The definition of a station's declination.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.radial_from_true_deg(49.5, -6.0):.0f}"
    '56'
    >>> [f"{value:.0f}" for value in lubberline.radial_from_true_deg([49.5, 49.5], -6.0)]
    ['56', '56']
    """
    if not kwargs:
        answer = _scalar_radial_from_true_deg(true_deg, station_declination_deg)
        if answer is not None:
            return answer
    return ufunc.radial_from_true_deg(true_deg, station_declination_deg, **kwargs)


_scalar_radial_from_true_deg = scalars["radial_from_true_deg"]


def true_from_radial_deg(radial_deg, station_declination_deg, **kwargs):
    r"""A radial counted from true north: the true direction from the station.

    `radial + declination`, 0 to 360.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        Radial, any finite number.
    station_declination_deg : array_like, in degrees
        The station's declination, positive east, -180 to 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None.

    Source: The definition of a station's declination.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.true_from_radial_deg(56.0, -6.0):.0f}"
    '50'
    >>> [f"{value:.0f}" for value in lubberline.true_from_radial_deg([56.0, 56.0], -6.0)]
    ['50', '50']
    """
    if not kwargs:
        answer = _scalar_true_from_radial_deg(radial_deg, station_declination_deg)
        if answer is not None:
            return answer
    return ufunc.true_from_radial_deg(radial_deg, station_declination_deg, **kwargs)


_scalar_true_from_radial_deg = scalars["true_from_radial_deg"]


class OffsetPoint(NamedTuple):
    """A point beside a course: what `offset_point` gives."""

    latitude_deg: object
    """Its latitude."""
    longitude_deg: object
    """Its longitude."""
    direction_deg: object
    """Direction of the offset line there, 0 to 360."""


def offset_point(lat_deg, lon_deg, course_deg, offset_nm, along_nm, **kwargs):
    r"""The point of the line at a constant distance beside a course, abeam of a place along the course.

    Square to the course at that place, by the distance, on the WGS-84 ellipsoid. The line is no
    geodesic itself.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    offset_nm : array_like, in nautical miles
        Distance of the line from the course, right positive, -5000 to 5000.
    along_nm : array_like, in nautical miles
        Distance along the course from its point, negative behind, -10 000 to 10 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    OffsetPoint
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude_deg`: Its latitude, in degrees.
        `longitude_deg`: Its longitude, in degrees.
        `direction_deg`: Direction of the offset line there, 0 to 360, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 15 nanometres.

    Degenerate cases: An offset of zero is the course itself.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.offset_point(0.0, 0.0, 90.0, -60.0, 0.0).latitude_deg:.4f}"
    '1.0049'
    >>> [f"{value:.4f}" for value in lubberline.offset_point([0.0, 0.0], 0.0, 90.0, -60.0, 0.0).latitude_deg]
    ['1.0049', '1.0049']
    """
    if not kwargs:
        answer = _scalar_offset_point(lat_deg, lon_deg, course_deg, offset_nm, along_nm)
        if answer is not None:
            return named(OffsetPoint, answer)
    return OffsetPoint._make(many("offset_point", OffsetPoint._fields, (lat_deg, lon_deg, course_deg, offset_nm, along_nm), kwargs))


_scalar_offset_point = scalars["offset_point"]


class OffsetCrossTrack(NamedTuple):
    """Where a point lies relative to an offset line: what `offset_cross_track` gives."""

    cross_track_nm: object
    """Distance across the line, positive right of it."""
    along_track_nm: object
    """Distance along the course to the place abeam, positive onward."""
    abeam_latitude_deg: object
    """Latitude of the point of the line abeam."""
    abeam_longitude_deg: object
    """Longitude of the point of the line abeam."""
    abeam_direction_deg: object
    """Direction of the line there, 0 to 360."""


def offset_cross_track(lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg, **kwargs):
    r"""Where a point lies relative to the line at a constant distance beside a course, on the WGS-84 ellipsoid.

    What stands square to the course stands square to the line too (Gauss's lemma): the cross-track
    is that of the course less the offset, and the place abeam is one.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    offset_nm : array_like, in nautical miles
        Distance of the line from the course, right positive, -5000 to 5000.
    point_lat_deg : array_like, in degrees
        Latitude of the point, -90 to 90.
    point_lon_deg : array_like, in degrees
        Longitude of the point, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    OffsetCrossTrack
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `cross_track_nm`: Distance across the line, positive right of it, in nautical miles.
        `along_track_nm`: Distance along the course to the place abeam, positive onward, in nautical
        miles.
        `abeam_latitude_deg`: Latitude of the point of the line abeam, in degrees.
        `abeam_longitude_deg`: Longitude of the point of the line abeam, in degrees.
        `abeam_direction_deg`: Direction of the line there, 0 to 360, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As `cross_track`.

    Degenerate cases: With an offset of zero it is `cross_track`. A point a quarter of the earth
    away on both sides has no place abeam that means anything.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.offset_cross_track(0.0, 0.0, 90.0, -60.0, 0.5, 1.0).cross_track_nm:.2f}"
    '30.15'
    >>> [f"{value:.2f}" for value in lubberline.offset_cross_track([0.0, 0.0], 0.0, 90.0, -60.0, 0.5, 1.0).cross_track_nm]
    ['30.15', '30.15']
    """
    if not kwargs:
        answer = _scalar_offset_cross_track(lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg)
        if answer is not None:
            return named(OffsetCrossTrack, answer)
    return OffsetCrossTrack._make(many("offset_cross_track", OffsetCrossTrack._fields, (lat_deg, lon_deg, course_deg, offset_nm, point_lat_deg, point_lon_deg), kwargs))


_scalar_offset_cross_track = scalars["offset_cross_track"]


def on_offset(lat_deg, lon_deg, course_deg, reach, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs):
    r"""Whether a point lies on the line at a constant distance beside a course: 1 if it does, 0 if not.

    Within the tolerance across it, and for a course that reaches onward also before the place abeam
    of its point.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    reach : {"onward", "both_ways"}
        How far the course reaches.
    offset_nm : array_like, in nautical miles
        Distance of the line from the course, right positive, -5000 to 5000.
    point_lat_deg : array_like, in degrees
        Latitude of the point, -90 to 90.
    point_lon_deg : array_like, in degrees
        Longitude of the point, any finite number.
    tolerance_nm : array_like, in nautical miles
        How far across the line still counts, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As `cross_track`.

    Degenerate cases: With an offset of zero it is `on_course`.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.on_offset(0.0, 0.0, 0.0, 'onward', 60.0, 2.0, 1.0, 0.5):.0f}"
    '1'
    >>> [f"{value:.0f}" for value in lubberline.on_offset([0.0, 0.0], 0.0, 0.0, 'onward', 60.0, 2.0, 1.0, 0.5)]
    ['1', '1']
    """
    reach = chosen(_COURSE_REACH, "reach", reach)
    if not kwargs:
        answer = _scalar_on_offset(lat_deg, lon_deg, course_deg, reach, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm)
        if answer is not None:
            return answer
    return ufunc.on_offset(lat_deg, lon_deg, course_deg, reach, offset_nm, point_lat_deg, point_lon_deg, tolerance_nm, **kwargs)


_scalar_on_offset = scalars["on_offset"]


class OffsetCourseCrossing(NamedTuple):
    """Where an offset line meets a course: what `offset_course_crossing` gives."""

    latitude_deg: object
    """Latitude of the point."""
    longitude_deg: object
    """Longitude of the point."""
    along_first_nm: object
    """Distance along the course that the line runs beside, negative behind its point."""


def offset_course_crossing(lat1_deg, lon1_deg, course1_deg, offset_nm, lat2_deg, lon2_deg, course2_deg, **kwargs):
    r"""Where the line at a constant distance beside a course meets another course, on the WGS-84 ellipsoid.

    Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting
    nearest to it.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of a point of the first course, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course1_deg : array_like, in degrees
        True course there, any finite number.
    offset_nm : array_like, in nautical miles
        Distance of the line from the first course, right positive, -5000 to 5000.
    lat2_deg : array_like, in degrees
        Latitude of a point of the second course, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course2_deg : array_like, in degrees
        True course there, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    OffsetCourseCrossing
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude_deg`: Latitude of the point, in degrees.
        `longitude_deg`: Longitude of the point, in degrees.
        `along_first_nm`: Distance along the course that the line runs beside, negative behind its
        point, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, courses along one line, or no meeting within 1 000
        NM. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across the second course.

    Degenerate cases: An offset of zero is the meeting of the courses themselves.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.offset_course_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0).latitude_deg:.4f}"
    '1.0049'
    >>> [f"{value:.4f}" for value in lubberline.offset_course_crossing([0.0, 0.0], 0.0, 90.0, -60.0, 0.0, 3.0, 0.0).latitude_deg]
    ['1.0049', '1.0049']
    """
    if not kwargs:
        answer = _scalar_offset_course_crossing(lat1_deg, lon1_deg, course1_deg, offset_nm, lat2_deg, lon2_deg, course2_deg)
        if answer is not None:
            return named(OffsetCourseCrossing, answer)
    return OffsetCourseCrossing._make(many("offset_course_crossing", OffsetCourseCrossing._fields, (lat1_deg, lon1_deg, course1_deg, offset_nm, lat2_deg, lon2_deg, course2_deg), kwargs))


_scalar_offset_course_crossing = scalars["offset_course_crossing"]


class OffsetOffsetCrossing(NamedTuple):
    """Where two offset lines meet: what `offset_offset_crossing` gives."""

    latitude_deg: object
    """Latitude of the point."""
    longitude_deg: object
    """Longitude of the point."""
    along_first_nm: object
    """Distance along the first course to the place abeam, negative behind its point."""
    along_second_nm: object
    """Distance along the second course to the place abeam, negative behind its point."""


def offset_offset_crossing(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, **kwargs):
    r"""Where the lines at constant distances beside two courses meet, on the WGS-84 ellipsoid.

    Looked for within 1 000 NM of the meeting of the two courses along the first; the meeting
    nearest to it.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of a point of the first course, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course1_deg : array_like, in degrees
        True course there, any finite number.
    offset1_nm : array_like, in nautical miles
        Distance of the line beside the first course, right positive, -5000 to 5000.
    lat2_deg : array_like, in degrees
        Latitude of a point of the second course, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course2_deg : array_like, in degrees
        True course there, any finite number.
    offset2_nm : array_like, in nautical miles
        Distance of the line beside the second course, right positive, -5000 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    OffsetOffsetCrossing
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude_deg`: Latitude of the point, in degrees.
        `longitude_deg`: Longitude of the point, in degrees.
        `along_first_nm`: Distance along the first course to the place abeam, negative behind its
        point, in nautical miles.
        `along_second_nm`: Distance along the second course to the place abeam, negative behind its
        point, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, courses along one line, or no meeting within 1 000
        NM. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across the second line.

    Degenerate cases: With an offset of zero the line is the course itself.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.offset_offset_crossing(0.0, 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, 6.0).along_first_nm:.3f}"
    '186.324'
    >>> [f"{value:.3f}" for value in lubberline.offset_offset_crossing([0.0, 0.0], 0.0, 90.0, -60.0, 0.0, 3.0, 0.0, 6.0).along_first_nm]
    ['186.324', '186.324']
    """
    if not kwargs:
        answer = _scalar_offset_offset_crossing(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm)
        if answer is not None:
            return named(OffsetOffsetCrossing, answer)
    return OffsetOffsetCrossing._make(many("offset_offset_crossing", OffsetOffsetCrossing._fields, (lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm), kwargs))


_scalar_offset_offset_crossing = scalars["offset_offset_crossing"]


class OffsetArcCrossing(NamedTuple):
    """Where an offset line meets an arc: what `offset_arc_crossing` gives."""

    latitude1_deg: object
    """Latitude of the point farther back along the line."""
    longitude1_deg: object
    """Its longitude."""
    along1_nm: object
    """Distance along the course to the place abeam of it, negative behind its point."""
    latitude2_deg: object
    """Latitude of the point farther on along the line."""
    longitude2_deg: object
    """Its longitude."""
    along2_nm: object
    """Distance along the course to the place abeam of it, negative behind its point."""


def offset_arc_crossing(lat_deg, lon_deg, course_deg, offset_nm, center_lat_deg, center_lon_deg, radius_nm, **kwargs):
    r"""Where the line at a constant distance beside a course meets a circle (a DME arc), on the WGS-84 ellipsoid: both points.

    Looked for along the line as far as the circle can reach; the arc is the geodesic circle about
    its centre.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of a point of the course, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course_deg : array_like, in degrees
        True course there, any finite number.
    offset_nm : array_like, in nautical miles
        Distance of the line beside the course, right positive, -5000 to 5000.
    center_lat_deg : array_like, in degrees
        Latitude of the centre, -90 to 90.
    center_lon_deg : array_like, in degrees
        Longitude of the centre, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the circle, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    OffsetArcCrossing
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude1_deg`: Latitude of the point farther back along the line, in degrees.
        `longitude1_deg`: Its longitude, in degrees.
        `along1_nm`: Distance along the course to the place abeam of it, negative behind its point,
        in nautical miles.
        `latitude2_deg`: Latitude of the point farther on along the line, in degrees.
        `longitude2_deg`: Its longitude, in degrees.
        `along2_nm`: Distance along the course to the place abeam of it, negative behind its point,
        in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a line that misses the circle. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across the circle; along, soft where the line only just cuts it.

    Degenerate cases: A line that touches the circle gives its point twice; a miss below a
    millimetre counts as touching.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.offset_arc_crossing(60.0, -10.0, 90.0, 4.0, 60.0, -9.0, 12.0).along1_nm:.3f}"
    '18.898'
    >>> [f"{value:.3f}" for value in lubberline.offset_arc_crossing([60.0, 60.0], -10.0, 90.0, 4.0, 60.0, -9.0, 12.0).along1_nm]
    ['18.898', '18.898']
    """
    if not kwargs:
        answer = _scalar_offset_arc_crossing(lat_deg, lon_deg, course_deg, offset_nm, center_lat_deg, center_lon_deg, radius_nm)
        if answer is not None:
            return named(OffsetArcCrossing, answer)
    return OffsetArcCrossing._make(many("offset_arc_crossing", OffsetArcCrossing._fields, (lat_deg, lon_deg, course_deg, offset_nm, center_lat_deg, center_lon_deg, radius_nm), kwargs))


_scalar_offset_arc_crossing = scalars["offset_arc_crossing"]


def isentropic_pressure_ratio(mach, **kwargs):
    r"""Static over total pressure of a flow brought to rest without loss.

    `(1 + 0.2 M^2)^-3.5`. Above Mach 1 a pitot tube feels less than this total pressure: see
    `pitot_pressure_ratio`.

    Parameters
    ----------
    mach : array_like
        Mach number, 0 to 10.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding, for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: At rest the ratio is 1.

    Source: NACA Report 1135 (1953), equation 44 (number from memory), for a ratio of specific heats
    of 1.4.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.isentropic_pressure_ratio(0.84):.4f}"
    '0.6300'
    >>> [f"{value:.4f}" for value in lubberline.isentropic_pressure_ratio([0.84, 0.84])]
    ['0.6300', '0.6300']
    """
    if not kwargs:
        answer = _scalar_isentropic_pressure_ratio(mach)
        if answer is not None:
            return answer
    return ufunc.isentropic_pressure_ratio(mach, **kwargs)


_scalar_isentropic_pressure_ratio = scalars["isentropic_pressure_ratio"]


def pitot_pressure_ratio(mach, **kwargs):
    r"""Pitot over static pressure, behind a normal shock above Mach 1.

    `(1 + 0.2 M^2)^3.5`, above Mach 1 Rayleigh's `(1.2 M^2)^3.5 (6/(7 M^2 - 1))^2.5`.

    Parameters
    ----------
    mach : array_like
        Mach number, 0 to 10.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding, for air of constant heat ratio: good to about Mach 5.

    Degenerate cases: At rest the ratio is 1. The two forms meet at Mach 1 in value and slope.

    Source: NACA Report 1135 (1953), equations 44 and 100 (numbers from memory), for a ratio of
    specific heats of 1.4.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.pitot_pressure_ratio(1.0):.3f}"
    '1.893'
    >>> f"{lubberline.pitot_pressure_ratio(2.0):.3f}"
    '5.640'
    >>> [f"{value:.3f}" for value in lubberline.pitot_pressure_ratio([1.0, 1.0])]
    ['1.893', '1.893']
    """
    if not kwargs:
        answer = _scalar_pitot_pressure_ratio(mach)
        if answer is not None:
            return answer
    return ufunc.pitot_pressure_ratio(mach, **kwargs)


_scalar_pitot_pressure_ratio = scalars["pitot_pressure_ratio"]


def impact_pressure_hpa(cas_kt, **kwargs):
    r"""Impact pressure that a calibrated airspeed stands for, the same at every altitude.

    `p0 ((1 + 0.2 (Vc/a0)^2)^3.5 - 1)`, above the speed of sound at sea level by Rayleigh's pitot
    formula.

    Parameters
    ----------
    cas_kt : array_like, in knots
        Calibrated airspeed, 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in hectopascals
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Zero gives zero.

    Source: The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd
    edition 1993).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.impact_pressure_hpa(280.0):.2f}"
    '132.88'
    >>> [f"{value:.2f}" for value in lubberline.impact_pressure_hpa([280.0, 280.0])]
    ['132.88', '132.88']
    """
    if not kwargs:
        answer = _scalar_impact_pressure_hpa(cas_kt)
        if answer is not None:
            return answer
    return ufunc.impact_pressure_hpa(cas_kt, **kwargs)


_scalar_impact_pressure_hpa = scalars["impact_pressure_hpa"]


def cas_from_impact_pressure_kt(impact_pressure_hpa, **kwargs):
    r"""Calibrated airspeed of an impact pressure: the inverse of `impact_pressure_hpa`.

    `a0 sqrt(5 ((q/p0 + 1)^(2/7) - 1))`, above the speed of sound at sea level by Rayleigh's pitot
    formula.

    Parameters
    ----------
    impact_pressure_hpa : array_like, in hectopascals
        Pitot less static pressure, 0 to 80 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a result beyond 5000 kt. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Zero gives zero.

    Source: The definition of calibrated airspeed, with the sea level of ICAO Doc 7488/3 (3rd
    edition 1993).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cas_from_impact_pressure_kt(100.0):.2f}"
    '244.19'
    >>> [f"{value:.2f}" for value in lubberline.cas_from_impact_pressure_kt([100.0, 100.0])]
    ['244.19', '244.19']
    """
    if not kwargs:
        answer = _scalar_cas_from_impact_pressure_kt(impact_pressure_hpa)
        if answer is not None:
            return answer
    return ufunc.cas_from_impact_pressure_kt(impact_pressure_hpa, **kwargs)


_scalar_cas_from_impact_pressure_kt = scalars["cas_from_impact_pressure_kt"]


def procedure_tas_factor(altitude_ft, isa_deviation_k=15.0, **kwargs):
    r"""The factor from indicated to true airspeed of procedure design, which leaves compressibility out.

    `171233 sqrt(288 + D - 0.00198 H) / (288 - 0.00198 H)^2.628` with altitude `H` in feet and ISA
    deviation `D`. With a deviation of 15 it is also the form of the FAA's procedure design.
    `tas_from_cas_kt` is exact.

    Parameters
    ----------
    altitude_ft : array_like, in feet
        Altitude of the procedure, -2000 to 50 000.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150 (default 15.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published. Against the exact conversion it overstates the true airspeed: by 0.8
    percent for 250 kt at 10 000 ft and ISA + 15, more with speed and altitude; above the tropopause
    it does not hold.

    Degenerate cases: None in the range.

    Source: ICAO Doc 8168 (PANS-OPS) volume II, 5th edition 2006, Part I Section 4 Chapter 3
    Appendix C; constants read in a quotation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.procedure_tas_factor(6000.0, 15.0):.4f}"
    '1.1231'
    >>> [f"{value:.4f}" for value in lubberline.procedure_tas_factor([6000.0, 6000.0], 15.0)]
    ['1.1231', '1.1231']
    """
    if not kwargs:
        answer = _scalar_procedure_tas_factor(altitude_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.procedure_tas_factor(altitude_ft, isa_deviation_k, **kwargs)


_scalar_procedure_tas_factor = scalars["procedure_tas_factor"]


class ProcedureTurn(NamedTuple):
    """A 45/180 procedure turn in a wind: what `procedure_turn_45_180` gives."""

    off_track_deg: object
    """Track of the leg off the outbound course."""
    off_heading_deg: object
    """Heading that holds it."""
    back_heading_deg: object
    """Heading that holds the way back to the course."""
    straight_nm: object
    """Distance straight between the half circle and the turn onto the inbound course; negative where the course is crossed."""
    least_off_time_s: object
    """Time from the start of the first turn to the turn back that would leave just no straight part."""
    established_nm: object
    """Distance outbound from where the first turn began at which the wings are level on the inbound course; negative before it."""
    farthest_nm: object
    """How far outbound the path reaches."""
    widest_nm: object
    """How far from the course it reaches, to the side of the first turn."""
    duration_s: object
    """From the first turn to wings level inbound."""


def procedure_turn_45_180(outbound_course_deg, side, off_time_s, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""The geometry of a 45/180 procedure turn in a steady wind and with roll.

    Off the outbound course by 45 degrees, straight on that track until a time from the start of the
    turn, half a circle the other way onto the opposite track, straight until the lead of the turn
    onto the inbound course.

    Parameters
    ----------
    outbound_course_deg : array_like, in degrees
        Course flown outbound before the turn, any finite number.
    side : {"right", "left"}
        To which side the first turn goes.
    off_time_s : array_like, in seconds
        Time from the start of the first turn to the turn back, 0 to 3600: 60 for categories A and
        B, 75 for C to E.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ProcedureTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `off_track_deg`: Track of the leg off the outbound course, in degrees.
        `off_heading_deg`: Heading that holds it, in degrees.
        `back_heading_deg`: Heading that holds the way back to the course, in degrees.
        `straight_nm`: Distance straight between the half circle and the turn onto the inbound
        course; negative where the course is crossed, in nautical miles.
        `least_off_time_s`: Time from the start of the first turn to the turn back that would leave
        just no straight part, in seconds.
        `established_nm`: Distance outbound from where the first turn began at which the wings are
        level on the inbound course; negative before it, in nautical miles.
        `farthest_nm`: How far outbound the path reaches, in nautical miles.
        `widest_nm`: How far from the course it reaches, to the side of the first turn, in nautical
        miles.
        `duration_s`: From the first turn to wings level inbound, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a track that the airspeed cannot hold. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1e-9 of its size in the plane.

    Degenerate cases: A leg that is too short makes the straight part before the last turn negative:
    the course is crossed. A time shorter than the first turn leaves nothing straight off the
    course.

    Source: The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.1,
    its times as quoted; its geometry is derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.procedure_turn_45_180(250.0, 'right', 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0).off_heading_deg:.1f}"
    '284.8'
    >>> f"{lubberline.procedure_turn_45_180(250.0, 'right', 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0).straight_nm:.2f}"
    '0.51'
    >>> [f"{value:.1f}" for value in lubberline.procedure_turn_45_180([250.0, 250.0], 'right', 60.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0).off_heading_deg]
    ['284.8', '284.8']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_procedure_turn_45_180(outbound_course_deg, side, off_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(ProcedureTurn, answer)
    return ProcedureTurn._make(many("procedure_turn_45_180", ProcedureTurn._fields, (outbound_course_deg, side, off_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_procedure_turn_45_180 = scalars["procedure_turn_45_180"]


class ReverseTurn(NamedTuple):
    """An 80/260 procedure turn in a wind: what `procedure_turn_80_260` gives."""

    off_heading_deg: object
    """Heading at the end of the first turn."""
    across_nm: object
    """Distance from the course at its end, positive on the side of the first turn."""
    established_nm: object
    """Distance outbound from where the first turn began at its end; negative before it."""
    farthest_nm: object
    """How far outbound the path reaches."""
    widest_nm: object
    """How far from the course it reaches, to the side of the first turn."""
    duration_s: object
    """From the first turn to wings level inbound."""
    exact_angle_deg: object
    """The angle of the first turn for which it ends on the course; NaN where none up to 170 degrees does."""


def procedure_turn_80_260(outbound_course_deg, side, first_turn_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""The geometry of an 80/260 procedure turn in a steady wind and with roll, and the angle that would end it on the course.

    Off the outbound heading by an angle, and at once back the other way onto the heading that holds
    the inbound course. In calm air with an instant roll it ends `2 r cos(angle)` off the course, on
    the side away from the first turn.

    Parameters
    ----------
    outbound_course_deg : array_like, in degrees
        Course flown outbound before the turn, any finite number.
    side : {"right", "left"}
        To which side the first turn goes.
    first_turn_deg : array_like, in degrees
        Angle of the first turn, above 0 below 180: 80 as published.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    ReverseTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `off_heading_deg`: Heading at the end of the first turn, in degrees.
        `across_nm`: Distance from the course at its end, positive on the side of the first turn, in
        nautical miles.
        `established_nm`: Distance outbound from where the first turn began at its end; negative
        before it, in nautical miles.
        `farthest_nm`: How far outbound the path reaches, in nautical miles.
        `widest_nm`: How far from the course it reaches, to the side of the first turn, in nautical
        miles.
        `duration_s`: From the first turn to wings level inbound, in seconds.
        `exact_angle_deg`: The angle of the first turn for which it ends on the course; NaN where
        none up to 170 degrees does, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a course that the airspeed cannot hold. In arrays
        such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1e-9 of its size in the plane.

    Degenerate cases: In calm air with an instant roll the exact angle is 90 degrees.

    Source: The manoeuvre: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3, 3.5.4.2
    (number from memory), as quoted; its geometry is derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.procedure_turn_80_260(250.0, 'right', 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0).across_nm:.2f}"
    '0.30'
    >>> f"{lubberline.procedure_turn_80_260(250.0, 'right', 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0).exact_angle_deg:.1f}"
    '69.5'
    >>> [f"{value:.2f}" for value in lubberline.procedure_turn_80_260([250.0, 250.0], 'right', 80.0, 140.0, 200.0, 25.0, 25.0, 3.0, 5.0).across_nm]
    ['0.30', '0.30']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_procedure_turn_80_260(outbound_course_deg, side, first_turn_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(ReverseTurn, answer)
    return ReverseTurn._make(many("procedure_turn_80_260", ReverseTurn._fields, (outbound_course_deg, side, first_turn_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_procedure_turn_80_260 = scalars["procedure_turn_80_260"]


def cold_temperature_correction_by_method_ft(height_ft, temperature_degc, elevation_ft, method, **kwargs):
    r"""Cold-temperature correction by a named method, to add to an altitude on the procedure.

    The formula; the table, whose cells are the formula at sea level rounded up to 10 ft; the table
    read off evenly between its cells, as it is or rounded to the nearest 100 ft or up to 100 ft; 4
    percent of the height for each 10 degC; or the exact one. For 8 794 ft at -12 degC the FAA's
    example says 500 ft: 534 between the cells of the 5 000 ft column, to the nearest 100.

    Parameters
    ----------
    height_ft : array_like, in feet
        Charted height above the altimeter setting source, 0 to 20 000.
    temperature_degc : array_like, in degrees Celsius
        Temperature at the altimeter setting source, -200 to 200.
    elevation_ft : array_like, in feet
        Elevation of the altimeter setting source, -16 500 to 60 000; the methods by the table leave
        it out.
    method : {"formula", "table", "interpolated", "interpolated_nearest_hundred", "interpolated_up_to_hundred", "four_percent", "exact"}
        Which method.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published. The nearest 100 ft can be 50 ft too little.

    Degenerate cases: The methods that read off between cells have no answer below -50 degC: it is
    NaN. They take the 5 000 ft column for greater heights, and go evenly to nothing below 200 ft
    and between 10 and 15 degC. The others are as their own functions say.

    Source: Formula, table and 4 percent: ICAO Doc 8168 Vol I (5th ed. 2006), Part III Section 1
    Chapter 4 (the formula from memory) and its Table III-1-4-1 b). Reading off and rounding: FAA
    Aeronautical Information Manual (20 April 2023), 7-3-5 and 7-3-6, TBL 7-3-1. Exact: derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cold_temperature_correction_by_method_ft(8794.0, -12.0, 3206.0, 'interpolated'):.0f}"
    '534'
    >>> f"{lubberline.cold_temperature_correction_by_method_ft(8794.0, -12.0, 3206.0, 'interpolated_nearest_hundred'):.0f}"
    '500'
    >>> [f"{value:.0f}" for value in lubberline.cold_temperature_correction_by_method_ft([8794.0, 8794.0], -12.0, 3206.0, 'interpolated')]
    ['534', '534']
    """
    method = chosen(_COLD_TEMPERATURE_METHOD, "method", method)
    if not kwargs:
        answer = _scalar_cold_temperature_correction_by_method_ft(height_ft, temperature_degc, elevation_ft, method)
        if answer is not None:
            return answer
    return ufunc.cold_temperature_correction_by_method_ft(height_ft, temperature_degc, elevation_ft, method, **kwargs)


_scalar_cold_temperature_correction_by_method_ft = scalars["cold_temperature_correction_by_method_ft"]


def procedure_tas_factor_by_method(altitude_ft, isa_deviation_k, method, **kwargs):
    r"""The speed factor of procedure design by a named method: its formula, or read off its table.

    The formula is that of `procedure_tas_factor`; the table has it to four decimals every 500 m or
    every 1 000 ft, and between two entries the factor is taken evenly and rounded to four decimals.

    Parameters
    ----------
    altitude_ft : array_like, in feet
        Altitude, -2000 to 50 000.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150.
    method : {"formula", "table_metres", "table_feet"}
        Which method.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published. Reading off adds up to 3e-3 to the factor, most of it above 40 000 ft,
    and 1e-4 at 6 000 ft.

    Degenerate cases: On an entry of the table the methods agree to four decimals.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 4 Chapter 3 Appendix C, Table
    I-4-3-App C-1: its example in SI units (1.1244 for 1850 m) reads off the entries for 1500 and
    2000 m (1.1046, 1.1329); the step in feet is from memory.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.procedure_tas_factor_by_method(6069.553806, 15.0, 'table_metres'):.4f}"
    '1.1244'
    >>> f"{lubberline.procedure_tas_factor_by_method(6069.553806, 15.0, 'formula'):.4f}"
    '1.1243'
    >>> [f"{value:.4f}" for value in lubberline.procedure_tas_factor_by_method([6069.553806, 6069.553806], 15.0, 'table_metres')]
    ['1.1244', '1.1244']
    """
    method = chosen(_TAS_FACTOR_METHOD, "method", method)
    if not kwargs:
        answer = _scalar_procedure_tas_factor_by_method(altitude_ft, isa_deviation_k, method)
        if answer is not None:
            return answer
    return ufunc.procedure_tas_factor_by_method(altitude_ft, isa_deviation_k, method, **kwargs)


_scalar_procedure_tas_factor_by_method = scalars["procedure_tas_factor_by_method"]


class EditionAtmosphere(NamedTuple):
    """The air at a pressure altitude by a named edition: what `standard_atmosphere_by_edition` gives."""

    temperature_degc: object
    """Static temperature."""
    pressure_hpa: object
    """Static pressure."""
    density_kg_per_m3: object
    """Density."""
    speed_of_sound_kt: object
    """Speed of sound."""


def standard_atmosphere_by_edition(pressure_altitude_ft, isa_deviation_k, edition, **kwargs):
    r"""The standard atmosphere at a pressure altitude by a named edition, with an ISA deviation of the temperature.

    To 80 km both editions have the same layers; the U.S. one of 1976 has the gas constant
    8314.32/28.9644 = 287.05307 J/(kg K) for ICAO's 287.05287. Its pressure is `p0
    (p/p0)^(287.05287/287.05307)`.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Altitude, -16 420 to 262 467.2.
    isa_deviation_k : array_like, in kelvins
        Warmer than standard by this, -150 to 150.
    edition : {"icao_1993", "united_states_1976"}
        Whose atmosphere.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    EditionAtmosphere
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `temperature_degc`: Static temperature, in degrees Celsius.
        `pressure_hpa`: Static pressure, in hectopascals.
        `density_kg_per_m3`: Density, in kilograms per cubic metre.
        `speed_of_sound_kt`: Speed of sound, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding. The editions differ by up to 8e-6 of the pressure and the density, 0.0002 kt
    of the speed of sound.

    Degenerate cases: With ICAO's edition it is `standard_atmosphere`.

    Source: ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd edition 1993; U.S. Standard
    Atmosphere, 1976, NOAA-S/T 76-1562, Table 2 (the constants from memory, the layers' pressures
    read in a transcription).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.standard_atmosphere_by_edition(104986.87664, 0.0, 'icao_1993').pressure_hpa:.5f}"
    '8.68016'
    >>> f"{lubberline.standard_atmosphere_by_edition(104986.87664, 0.0, 'united_states_1976').pressure_hpa:.5f}"
    '8.68019'
    >>> [f"{value:.5f}" for value in lubberline.standard_atmosphere_by_edition([104986.87664, 104986.87664], 0.0, 'icao_1993').pressure_hpa]
    ['8.68016', '8.68016']
    """
    edition = chosen(_ATMOSPHERE_EDITION, "edition", edition)
    if not kwargs:
        answer = _scalar_standard_atmosphere_by_edition(pressure_altitude_ft, isa_deviation_k, edition)
        if answer is not None:
            return named(EditionAtmosphere, answer)
    return EditionAtmosphere._make(many("standard_atmosphere_by_edition", EditionAtmosphere._fields, (pressure_altitude_ft, isa_deviation_k, edition), kwargs))


_scalar_standard_atmosphere_by_edition = scalars["standard_atmosphere_by_edition"]


class PublishedTurn(NamedTuple):
    """A steady turn with the constants of a named source: what `published_turn` gives."""

    turn_rate_deg_per_s: object
    """Rate of turn."""
    radius_nm: object
    """Radius in still air."""


def published_turn(true_airspeed_kt, bank_deg, constants, **kwargs):
    r"""Rate and radius of a level turn in still air with the constants that a named source prints.

    Sources round gravity and the units, each in its own way: 3 431 / pi for the rate in knots, 6
    355 / pi in km/h, 68 625 or 68 625.4 for the radius, 1 091 and 11.26 in the handbook. Exact are
    1 092.206 and 68 625.37.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    bank_deg : array_like, in degrees
        Bank angle, above 0 to below 90.
    constants : {"exact", "pans_ops", "pans_ops_metric", "pans_ops_gravity", "faa_order", "handbook"}
        Whose constants.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    PublishedTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `turn_rate_deg_per_s`: Rate of turn, in degrees per second.
        `radius_nm`: Radius in still air, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published: the handbook's radius is 0.3 percent wide, its rate 0.11 percent slow,
    the others within 0.01 percent of exact.

    Degenerate cases: No limit of the rate is applied; see `limited_turn`.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3, 3.1.2.2; FAA Order
    8260.58, Chapters 1 and 2 (from memory); FAA-H-8083-25, chapter 5 (from memory); exact: ICAO Doc
    7488/3 (3rd edition 1993) for gravity.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.published_turn(100.0, 25.0, 'pans_ops').turn_rate_deg_per_s:.4f}"
    '5.0926'
    >>> f"{lubberline.published_turn(100.0, 25.0, 'exact').turn_rate_deg_per_s:.4f}"
    '5.0930'
    >>> [f"{value:.4f}" for value in lubberline.published_turn([100.0, 100.0], 25.0, 'pans_ops').turn_rate_deg_per_s]
    ['5.0926', '5.0926']
    """
    constants = chosen(_TURN_CONSTANTS, "constants", constants)
    if not kwargs:
        answer = _scalar_published_turn(true_airspeed_kt, bank_deg, constants)
        if answer is not None:
            return named(PublishedTurn, answer)
    return PublishedTurn._make(many("published_turn", PublishedTurn._fields, (true_airspeed_kt, bank_deg, constants), kwargs))


_scalar_published_turn = scalars["published_turn"]


class HoldingPattern(NamedTuple):
    """A holding pattern in a wind: what `holding_pattern` gives."""

    outbound_heading_deg: object
    """Heading to fly outbound."""
    outbound_correction_deg: object
    """Outbound heading less the reciprocal of the inbound course, right positive."""
    inbound_correction_deg: object
    """Inbound heading less inbound course, right positive."""
    drift_factor: object
    """By what the inbound correction has to be multiplied, and its side changed, to give the outbound one; NaN without an inbound correction."""
    outbound_time_s: object
    """Time straight outbound, from wings level to the turn inbound."""
    outbound_clock_s: object
    """Time on the outbound clock: from abeam the fix, or from wings level where the fix is passed abeam in the turn."""
    inbound_time_s: object
    """Time straight inbound, from wings level to the fix."""
    duration_s: object
    """From the fix to the fix."""
    outbound_end_before_fix_nm: object
    """Where the outbound leg ends, before the fix along the inbound course."""
    outbound_end_across_nm: object
    """Where the outbound leg ends, across the inbound course to the side of the turns."""
    inbound_leg_nm: object
    """Distance from the fix at which the wings are level on the inbound course."""
    length_nm: object
    """Length of the whole path over the ground, along the inbound course."""
    width_nm: object
    """Width of the whole path over the ground, across the inbound course."""
    bank_deg: object
    """The greatest bank."""


def holding_pattern(inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""The holding pattern that closes in a steady wind, exactly: outbound heading, times and size.

    A turn with its roll over the fix onto the outbound heading, straight outbound, a turn that ends
    on the inbound course, and that course to the fix; over the ground wind times duration is added
    to each. The outbound heading is the one for which the sum is nothing.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    side : {"right", "left"}
        Which way the turns go.
    timed : {"inbound", "outbound", "outbound_from_level"}
        The leg whose time is given, and where its clock starts.
    time_s : array_like, in seconds
        Time of that leg, 0 to 3600.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    HoldingPattern
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `outbound_heading_deg`: Heading to fly outbound, in degrees.
        `outbound_correction_deg`: Outbound heading less the reciprocal of the inbound course, right
        positive, in degrees.
        `inbound_correction_deg`: Inbound heading less inbound course, right positive, in degrees.
        `drift_factor`: By what the inbound correction has to be multiplied, and its side changed,
        to give the outbound one; NaN without an inbound correction.
        `outbound_time_s`: Time straight outbound, from wings level to the turn inbound, in seconds.
        `outbound_clock_s`: Time on the outbound clock: from abeam the fix, or from wings level
        where the fix is passed abeam in the turn, in seconds.
        `inbound_time_s`: Time straight inbound, from wings level to the fix, in seconds.
        `duration_s`: From the fix to the fix, in seconds.
        `outbound_end_before_fix_nm`: Where the outbound leg ends, before the fix along the inbound
        course, in nautical miles.
        `outbound_end_across_nm`: Where the outbound leg ends, across the inbound course to the side
        of the turns, in nautical miles.
        `inbound_leg_nm`: Distance from the fix at which the wings are level on the inbound course,
        in nautical miles.
        `length_nm`: Length of the whole path over the ground, along the inbound course, in nautical
        miles.
        `width_nm`: Width of the whole path over the ground, across the inbound course, in nautical
        miles.
        `bank_deg`: The greatest bank, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, an inbound course that the airspeed cannot hold, a
        wind in which no heading closes the pattern before the fix. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1e-9 of the size of the pattern, in the plane of the fix.

    Degenerate cases: In calm air the outbound heading is the reciprocal. Where several headings
    close the pattern, the one nearest to the reciprocal is meant.

    Source: Derived from the equilibrium of a coordinated turn and the triangle of velocities.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.holding_pattern(270.0, 'right', 'inbound', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0).outbound_heading_deg:.1f}"
    '68.5'
    >>> f"{lubberline.holding_pattern(270.0, 'right', 'inbound', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0).drift_factor:.2f}"
    '2.80'
    >>> [f"{value:.1f}" for value in lubberline.holding_pattern([270.0, 270.0], 'right', 'inbound', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0).outbound_heading_deg]
    ['68.5', '68.5']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    timed = chosen(_TIMED_LEG, "timed", timed)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_holding_pattern(inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(HoldingPattern, answer)
    return HoldingPattern._make(many("holding_pattern", HoldingPattern._fields, (inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_holding_pattern = scalars["holding_pattern"]


class HoldingPoint(NamedTuple):
    """A place in a holding pattern: what `holding_pattern_at` gives."""

    bearing_from_fix_deg: object
    """Bearing from the fix; NaN over it."""
    distance_nm: object
    """Distance from the fix over the ground."""
    heading_deg: object
    """Heading."""
    bank_deg: object
    """Bank, right positive."""


def holding_pattern_at(since_fix_s, inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""Where the aircraft is in the holding pattern that closes in a steady wind, a time after it passed the fix.

    The turn outbound, the outbound leg, the turn inbound and the inbound leg of `holding_pattern`,
    one after the other, round after round.

    Parameters
    ----------
    since_fix_s : array_like, in seconds
        Time since the fix was passed, -1 000 000 to 1 000 000.
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    side : {"right", "left"}
        Which way the turns go.
    timed : {"inbound", "outbound", "outbound_from_level"}
        The leg whose time is given, and where its clock starts.
    time_s : array_like, in seconds
        Time of that leg, 0 to 3600.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    HoldingPoint
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `bearing_from_fix_deg`: Bearing from the fix; NaN over it, in degrees.
        `distance_nm`: Distance from the fix over the ground, in nautical miles.
        `heading_deg`: Heading, in degrees.
        `bank_deg`: Bank, right positive, in degrees.

    Raises
    ------
    NavigationError
        For numbers: As `holding_pattern`; a time outside its range. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As `holding_pattern`.

    Degenerate cases: Over the fix there is no bearing. Before the fix the last round is meant.

    Source: As `holding_pattern`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.holding_pattern_at(100.0, 270.0, 'right', 'inbound', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0).heading_deg:.1f}"
    '68.5'
    >>> f"{lubberline.holding_pattern_at(100.0, 270.0, 'right', 'inbound', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0).distance_nm:.2f}"
    '2.32'
    >>> [f"{value:.1f}" for value in lubberline.holding_pattern_at([100.0, 100.0], 270.0, 'right', 'inbound', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0).heading_deg]
    ['68.5', '68.5']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    timed = chosen(_TIMED_LEG, "timed", timed)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_holding_pattern_at(since_fix_s, inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(HoldingPoint, answer)
    return HoldingPoint._make(many("holding_pattern_at", HoldingPoint._fields, (since_fix_s, inbound_course_deg, side, timed, time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_holding_pattern_at = scalars["holding_pattern_at"]


def radio_horizon_nm(aircraft_height_ft, antenna_height_ft=0.0, rule="four_thirds", **kwargs):
    r"""The greatest ground distance at which a station is received over a smooth earth.

    `Re (acos(Re / (Re + h1)) + acos(Re / (Re + h2)))` with `Re` 4/3 of the earth's radius, or a
    factor times `sqrt(h1) + sqrt(h2)`.

    Parameters
    ----------
    aircraft_height_ft : array_like, in feet
        Height of the aircraft above the surface, 0 to 400 000.
    antenna_height_ft : array_like, in feet
        Height of the antenna above the surface, 0 to 400 000 (default 0.0).
    rule : {"four_thirds", "feet_miles", "metres_kilometres", "five_quarters"}
        Which rule (default "four_thirds").
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Exact for its model; the rules differ by up to 2 percent, the air of the day and
    terrain by more.

    Degenerate cases: Two heights of zero see no distance.

    Source: 4/3 of the radius: derived, the factor from ITU-R P.310 (from memory). 1.23 sqrt(ft) NM
    and 4.11 sqrt(m) km: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3,
    Appendix. 1.25 sqrt(ft) NM: common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.radio_horizon_nm(31000.0, 40.0, 'four_thirds'):.1f}"
    '224.0'
    >>> f"{lubberline.radio_horizon_nm(10000.0, 0.0, 'feet_miles'):.1f}"
    '123.0'
    >>> [f"{value:.1f}" for value in lubberline.radio_horizon_nm([31000.0, 31000.0], 40.0, 'four_thirds')]
    ['224.0', '224.0']
    """
    rule = chosen(_HORIZON_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_radio_horizon_nm(aircraft_height_ft, antenna_height_ft, rule)
        if answer is not None:
            return answer
    return ufunc.radio_horizon_nm(aircraft_height_ft, antenna_height_ft, rule, **kwargs)


_scalar_radio_horizon_nm = scalars["radio_horizon_nm"]


def least_reception_height_ft(ground_distance_nm, antenna_height_ft=0.0, rule="four_thirds", **kwargs):
    r"""The least height at which a station is received at a ground distance over a smooth earth: the inverse of `radio_horizon_nm`.

    `Re (sec(d / Re - acos(Re / (Re + h))) - 1)` with `Re` 4/3 of the earth's radius, or the square
    of `d / factor - sqrt(h)`.

    Parameters
    ----------
    ground_distance_nm : array_like, in nautical miles
        Distance along the ground, 0 to 10 900.
    antenna_height_ft : array_like, in feet
        Height of the antenna above the surface, 0 to 400 000 (default 0.0).
    rule : {"four_thirds", "feet_miles", "metres_kilometres", "five_quarters"}
        Which rule (default "four_thirds").
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a distance at which 400 000 ft are not enough. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As `radio_horizon_nm`.

    Degenerate cases: Within the antenna's own horizon it is zero.

    Source: As `radio_horizon_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.least_reception_height_ft(130.0, 0.0, 'four_thirds'):.0f}"
    '11198'
    >>> f"{lubberline.least_reception_height_ft(123.0, 0.0, 'feet_miles'):.0f}"
    '10000'
    >>> [f"{value:.0f}" for value in lubberline.least_reception_height_ft([130.0, 130.0], 0.0, 'four_thirds')]
    ['11198', '11198']
    """
    rule = chosen(_HORIZON_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_least_reception_height_ft(ground_distance_nm, antenna_height_ft, rule)
        if answer is not None:
            return answer
    return ufunc.least_reception_height_ft(ground_distance_nm, antenna_height_ft, rule, **kwargs)


_scalar_least_reception_height_ft = scalars["least_reception_height_ft"]


def service_reach_nm(service_class, height_ft, antenna_height_ft=0.0, **kwargs):
    r"""How far the published service volume of a station's class reaches at a height.

    The farthest of the published layers that hold the height. The classes named `above_ground` are
    those of older editions, whose heights are counted from the ground at the station; all others
    count from the transmitter.

    Parameters
    ----------
    service_class : {"terminal", "low", "high", "vor_low", "vor_high", "dme_low", "dme_high", "terminal_above_ground", "low_above_ground", "high_above_ground", "compass_locator", "ndb_mh", "ndb_h", "ndb_hh"}
        The class of the station.
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    antenna_height_ft : array_like, in feet
        Height of the antenna above the ground, 0 to 400 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published: a floor belongs to its layer, a ceiling where the text says "including".

    Degenerate cases: Outside every layer the reach is zero. The lower edges below 1 000 ft that
    some editions print as curves, and the cone above the station (`cone_radius_nm`), are not in it.

    Source: FAA Aeronautical Information Manual of 2023, 1-1-8, TBL 1-1-1 and TBL 1-1-2 (DL and DH
    from memory of that table); for heights above the ground the editions of 2004 and 2016. Below 12
    900 ft the DME classes reach to the radio horizon (4/3 of the earth's radius).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.service_reach_nm('high', 18000.0, 0.0):.0f}"
    '130'
    >>> f"{lubberline.service_reach_nm('vor_low', 18000.0, 0.0):.0f}"
    '0'
    >>> f"{lubberline.service_reach_nm('dme_low', 9000.0, 30.0):.1f}"
    '123.5'
    >>> [f"{value:.0f}" for value in lubberline.service_reach_nm('high', [18000.0, 18000.0], 0.0)]
    ['130', '130']
    """
    service_class = chosen(_SERVICE_CLASS, "service_class", service_class)
    if not kwargs:
        answer = _scalar_service_reach_nm(service_class, height_ft, antenna_height_ft)
        if answer is not None:
            return answer
    return ufunc.service_reach_nm(service_class, height_ft, antenna_height_ft, **kwargs)


_scalar_service_reach_nm = scalars["service_reach_nm"]


class VorNeedle(NamedTuple):
    """What an indicator shows: what `vor_needle` gives."""

    deviation_deg: object
    """Angle at the station from the aircraft to the selected course, -90 to 90, positive when the course lies to the right."""
    deflection: object
    """Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre."""
    to_from: object
    """Whether the selected course leads to or from the station, `ToFrom`: 0 neither, 1 to, 2 from."""


def vor_needle(radial_deg, selected_course_deg, full_scale_deg=10.0, abeam_zone_deg=1.0, **kwargs):
    r"""What a course deviation indicator shows on a radial with a course selected.

    Within 90 degrees of the selected course FROM and `course - radial`; beyond, TO and `radial +
    180 - course`.

    Parameters
    ----------
    radial_deg : array_like, in degrees
        Radial of the aircraft, any finite number.
    selected_course_deg : array_like, in degrees
        The course selected, in the station's north, any finite number.
    full_scale_deg : array_like, in degrees
        Deviation at which the needle stands at the end of its scale, above 0 below 90 (default
        10.0).
    abeam_zone_deg : array_like, in degrees
        Half-width of the zone about 90 degrees from the course in which it shows neither TO nor
        FROM, 0 to 45 (default 1.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    VorNeedle
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `deviation_deg`: Angle at the station from the aircraft to the selected course, -90 to 90,
        positive when the course lies to the right, in degrees.
        `deflection`: Where the needle stands as a part of full scale, held at its end, -1 to 1,
        positive right of centre.
        `to_from`: Whether the selected course leads to or from the station, `ToFrom`: 0 neither, 1
        to, 2 from.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: Exactly abeam neither TO nor FROM is shown, whatever the zone's width.

    Source: FAA-H-8083-15 (Instrument Flying Handbook), VOR indications (from memory). Full scale:
    five dots of 2 degrees make 10 (FAA-H-8083-25, from memory); the Instrument Flying Handbook
    (FAA-H-8083-15A, p. 7-11) states 12 or more. The zone abeam: common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.vor_needle(227.0, 50.0, 10.0, 1.0).deflection:.1f}"
    '-0.3'
    >>> f"{lubberline.vor_needle(227.0, 50.0, 10.0, 1.0).to_from:.0f}"
    '1'
    >>> [f"{value:.1f}" for value in lubberline.vor_needle([227.0, 227.0], 50.0, 10.0, 1.0).deflection]
    ['-0.3', '-0.3']
    """
    if not kwargs:
        answer = _scalar_vor_needle(radial_deg, selected_course_deg, full_scale_deg, abeam_zone_deg)
        if answer is not None:
            return named(VorNeedle, answer)
    return VorNeedle._make(many("vor_needle", VorNeedle._fields, (radial_deg, selected_course_deg, full_scale_deg, abeam_zone_deg), kwargs))


_scalar_vor_needle = scalars["vor_needle"]


class VorIndication(NamedTuple):
    """What a VOR/DME receiver shows at a place: what `vor_receiver` gives."""

    flag: object
    """Why neither TO nor FROM is shown, `Flag`: 0 clear, 1 abeam, 2 in the cone, 3 below the horizon, 4 out of range."""
    to_from: object
    """Whether the selected course leads to or from the station, `ToFrom`: 0 neither, 1 to, 2 from."""
    deviation_deg: object
    """Angle at the station from the aircraft to the selected course, positive when the course lies to the right; NaN where the VOR is not to be used."""
    deflection: object
    """Where the needle stands as a part of full scale, -1 to 1, positive right of centre; NaN where the VOR is not to be used."""
    radial_deg: object
    """The radial, as a bearing pointer shows it; NaN where the VOR is not to be used."""
    dme_nm: object
    """The DME as displayed; NaN out of range and below the horizon."""


def vor_receiver(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft, selected_course_deg, full_scale_deg=10.0, abeam_zone_deg=1.0, reach_nm=199.0, cone_half_angle_deg=50.0, antenna_height_ft=0.0, dme_step_nm=0.1, **kwargs):
    r"""What a VOR/DME receiver shows at a place, with a perfect signal and a course selected.

    Radial and slant range of `observe`, the needle of `vor_needle`, the DME to the nearest step of
    its display. The flag is, in this order: out of range, below the radio horizon (4/3 of the
    earth's radius, smooth), in the cone, abeam.

    Parameters
    ----------
    station_latitude_deg : array_like, in degrees
        Latitude of the antenna, -90 to 90.
    station_longitude_deg : array_like, in degrees
        Longitude of the antenna, any finite number.
    station_elevation_ft : array_like, in feet
        Elevation of the antenna above mean sea level, -16 500 to 60 000.
    station_declination_deg : array_like, in degrees
        Angle from true north to the station's north, positive east, -180 to 180.
    latitude_deg : array_like, in degrees
        Latitude of the aircraft, -90 to 90.
    longitude_deg : array_like, in degrees
        Longitude of the aircraft, any finite number.
    altitude_ft : array_like, in feet
        Altitude of the aircraft above mean sea level, -16 500 to 400 000.
    selected_course_deg : array_like, in degrees
        The course selected, in the station's north, any finite number.
    full_scale_deg : array_like, in degrees
        Deviation at which the needle stands at the end of its scale, above 0 below 90 (default
        10.0).
    abeam_zone_deg : array_like, in degrees
        Half-width of the zone about 90 degrees from the course in which it shows neither TO nor
        FROM, 0 to 45 (default 1.0).
    reach_nm : array_like, in nautical miles
        Ground distance to which the station is received, 0 to 10 900 (default 199.0).
    cone_half_angle_deg : array_like, in degrees
        Half-angle of the cone of confusion from the vertical, above 0 below 90 (default 50.0).
    antenna_height_ft : array_like, in feet
        Height of the antenna above the smooth surface of the radio horizon, 0 to 400 000 (default
        0.0).
    dme_step_nm : array_like, in nautical miles
        Step in which the DME counts, above 0 to 10 (default 0.1).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    VorIndication
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `flag`: Why neither TO nor FROM is shown, `Flag`: 0 clear, 1 abeam, 2 in the cone, 3 below
        the horizon, 4 out of range.
        `to_from`: Whether the selected course leads to or from the station, `ToFrom`: 0 neither, 1
        to, 2 from.
        `deviation_deg`: Angle at the station from the aircraft to the selected course, positive
        when the course lies to the right; NaN where the VOR is not to be used, in degrees.
        `deflection`: Where the needle stands as a part of full scale, -1 to 1, positive right of
        centre; NaN where the VOR is not to be used.
        `radial_deg`: The radial, as a bearing pointer shows it; NaN where the VOR is not to be
        used, in degrees.
        `dme_nm`: The DME as displayed; NaN out of range and below the horizon, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Radial and slant range as `observe`; the bounds of reception are models.

    Degenerate cases: Exactly over or under the antenna there is no radial: the flag is that of the
    cone, unless the station is not received at all.

    Source: As `observe`, `vor_needle`, `radio_horizon_nm` and `cone_radius_nm`. 199 NM: FAA
    Aeronautical Information Manual 1-1-7, edition not shown in the copy read; `service_reach_nm`
    has the reach of a class. Tenths of a mile: common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.vor_receiver(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1).deflection:.2f}"
    '0.46'
    >>> f"{lubberline.vor_receiver(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1).dme_nm:.1f}"
    '21.5'
    >>> [f"{value:.2f}" for value in lubberline.vor_receiver([61.25, 61.25], -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0, 225.0, 10.0, 1.0, 199.0, 50.0, 0.0, 0.1).deflection]
    ['0.46', '0.46']
    """
    if not kwargs:
        answer = _scalar_vor_receiver(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft, selected_course_deg, full_scale_deg, abeam_zone_deg, reach_nm, cone_half_angle_deg, antenna_height_ft, dme_step_nm)
        if answer is not None:
            return named(VorIndication, answer)
    return VorIndication._make(many("vor_receiver", VorIndication._fields, (station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft, selected_course_deg, full_scale_deg, abeam_zone_deg, reach_nm, cone_half_angle_deg, antenna_height_ft, dme_step_nm), kwargs))


_scalar_vor_receiver = scalars["vor_receiver"]


def displayed_dme_nm(dme_nm, dme_step_nm=0.1, **kwargs):
    r"""A slant range as a DME display shows it: to the nearest of its steps, halves up.

    `round(dme / step) step`.

    Parameters
    ----------
    dme_nm : array_like, in nautical miles
        Slant range, 0 to 10 900.
    dme_step_nm : array_like, in nautical miles
        Step in which the display counts, above 0 to 10 (default 0.1).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Half a step.

    Degenerate cases: Below half a step zero is shown.

    Source: Common practice: displays count tenths of a mile.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.displayed_dme_nm(21.46, 0.1):.2f}"
    '21.50'
    >>> [f"{value:.2f}" for value in lubberline.displayed_dme_nm([21.46, 21.46], 0.1)]
    ['21.50', '21.50']
    """
    if not kwargs:
        answer = _scalar_displayed_dme_nm(dme_nm, dme_step_nm)
        if answer is not None:
            return answer
    return ufunc.displayed_dme_nm(dme_nm, dme_step_nm, **kwargs)


_scalar_displayed_dme_nm = scalars["displayed_dme_nm"]


def cross_track_of_deflection_nm(deflection, distance_nm, full_scale_deg=10.0, **kwargs):
    r"""Distance off course, right positive, for a deflection of the needle at a distance from the station.

    `-R asin(sin(d / R) sin(deflection full_scale))` on a sphere of the mean radius, in the plane
    `-d sin(deviation)`: right of course the needle stands left.

    Parameters
    ----------
    deflection : array_like
        Where the needle stands as a part of full scale, positive right of centre, -1 to 1.
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, above 0 to 5000.
    full_scale_deg : array_like, in degrees
        Deviation at full scale, above 0 below 90 (default 10.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.

    Degenerate cases: At either end of the scale it is the least distance that it may be.

    Source: The law of sines on the sphere.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cross_track_of_deflection_nm(0.5, 30.0, 10.0):.3f}"
    '-2.615'
    >>> [f"{value:.3f}" for value in lubberline.cross_track_of_deflection_nm([0.5, 0.5], 30.0, 10.0)]
    ['-2.615', '-2.615']
    """
    if not kwargs:
        answer = _scalar_cross_track_of_deflection_nm(deflection, distance_nm, full_scale_deg)
        if answer is not None:
            return answer
    return ufunc.cross_track_of_deflection_nm(deflection, distance_nm, full_scale_deg, **kwargs)


_scalar_cross_track_of_deflection_nm = scalars["cross_track_of_deflection_nm"]


class OffCourse(NamedTuple):
    """What a needle shows off course: what `deflection_of_cross_track` gives."""

    deviation_deg: object
    """Angle at the station from the aircraft to the course, -90 to 90, positive when the course lies to the right."""
    deflection: object
    """Where the needle stands as a part of full scale, held at its end, -1 to 1, positive right of centre."""


def deflection_of_cross_track(cross_track_nm, distance_nm, full_scale_deg=10.0, **kwargs):
    r"""Deviation and deflection for a distance off course at a distance from the station: the inverse of `cross_track_of_deflection_nm`.

    `-asin(sin(x / R) / sin(d / R))` on a sphere of the mean radius, in the plane `-asin(x / d)`.

    Parameters
    ----------
    cross_track_nm : array_like, in nautical miles
        Distance off course, right positive, -5000 to 5000.
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, above 0 to 5000.
    full_scale_deg : array_like, in degrees
        Deviation at full scale, above 0 below 90 (default 10.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    OffCourse
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `deviation_deg`: Angle at the station from the aircraft to the course, -90 to 90, positive
        when the course lies to the right, in degrees.
        `deflection`: Where the needle stands as a part of full scale, held at its end, -1 to 1,
        positive right of centre.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or an aircraft farther off course than from the
        station. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As `cross_track_of_deflection_nm`.

    Degenerate cases: Beyond full scale the needle is held at its end; the deviation goes on to 90
    degrees.

    Source: The law of sines on the sphere.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.deflection_of_cross_track(1.0, 30.0, 10.0).deflection:.3f}"
    '-0.191'
    >>> [f"{value:.3f}" for value in lubberline.deflection_of_cross_track([1.0, 1.0], 30.0, 10.0).deflection]
    ['-0.191', '-0.191']
    """
    if not kwargs:
        answer = _scalar_deflection_of_cross_track(cross_track_nm, distance_nm, full_scale_deg)
        if answer is not None:
            return named(OffCourse, answer)
    return OffCourse._make(many("deflection_of_cross_track", OffCourse._fields, (cross_track_nm, distance_nm, full_scale_deg), kwargs))


_scalar_deflection_of_cross_track = scalars["deflection_of_cross_track"]


class NeedleMotion(NamedTuple):
    """How a needle moves: what `needle_motion` gives."""

    needle_rate_deg_per_s: object
    """How fast the deviation changes, positive when the needle moves to the right."""
    full_scale_time_s: object
    """How long the needle takes from the end of its scale to the centre, at this distance and crossing; infinite along the course."""


def needle_motion(groundspeed_kt, distance_nm, crossing_angle_deg=90.0, full_scale_deg=10.0, **kwargs):
    r"""How fast the needle moves, for a groundspeed and a distance from the station.

    `-v sin(crossing) / (R sin(d / R))` on a sphere of the mean radius, in the plane `-v
    sin(crossing) / d`.

    Parameters
    ----------
    groundspeed_kt : array_like, in knots
        Groundspeed, 0 to 10 000.
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, above 0 to 5000.
    crossing_angle_deg : array_like, in degrees
        Angle, right positive, to the track from the direction away from the station (FROM) or to it
        (TO) (default 90.0).
    full_scale_deg : array_like, in degrees
        Deviation at full scale, above 0 below 90 (default 10.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    NeedleMotion
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `needle_rate_deg_per_s`: How fast the deviation changes, positive when the needle moves to
        the right, in degrees per second.
        `full_scale_time_s`: How long the needle takes from the end of its scale to the centre, at
        this distance and crossing; infinite along the course, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Exact on the sphere; the ellipsoid moves it by less than 0.6 percent.

    Degenerate cases: Along the course the needle stands still, and the time is infinite.

    Source: Derived: the motion across the line from the station.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.needle_motion(180.0, 10.0, -30.0, 10.0).needle_rate_deg_per_s:.3f}"
    '0.143'
    >>> f"{lubberline.needle_motion(180.0, 10.0, -30.0, 10.0).full_scale_time_s:.1f}"
    '69.5'
    >>> [f"{value:.3f}" for value in lubberline.needle_motion([180.0, 180.0], 10.0, -30.0, 10.0).needle_rate_deg_per_s]
    ['0.143', '0.143']
    """
    if not kwargs:
        answer = _scalar_needle_motion(groundspeed_kt, distance_nm, crossing_angle_deg, full_scale_deg)
        if answer is not None:
            return named(NeedleMotion, answer)
    return NeedleMotion._make(many("needle_motion", NeedleMotion._fields, (groundspeed_kt, distance_nm, crossing_angle_deg, full_scale_deg), kwargs))


_scalar_needle_motion = scalars["needle_motion"]


class RhumbInverse(NamedTuple):
    """The rhumb line between two points: what `rhumb_inverse` gives."""

    distance_nm: object
    """Length along the surface."""
    course_deg: object
    """True course all along, 0 to 360; NaN between coincident points."""


def rhumb_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg, **kwargs):
    r"""The rhumb line between two points of the WGS-84 ellipsoid, the short way round: its length and its constant course.

    `tan C = l / q`, `d = hypot(m, l m / q)` with the differences of longitude `l`, of isometric
    latitude `q` and of the arc of the meridian `m`; on a parallel `m / q` is its radius. Published
    tables of Mercator sailing count a minute of latitude as a mile.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the first point, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of the first point, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of the second point, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of the second point, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RhumbInverse
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `distance_nm`: Length along the surface, in nautical miles.
        `course_deg`: True course all along, 0 to 360; NaN between coincident points, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A latitude beyond a pole, or an infinite number. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 20 nanometres along the line and, for the course, 40 across its far end, which is what
    rounding leaves of a number of degrees.

    Degenerate cases: Coincident points have no course (NaN). A line to or from a pole runs along
    the meridian of the other point. Points half the world apart in longitude have two such lines;
    the eastward one is given.

    Source: C. F. F. Karney, The area of rhumb polygons, Studia Geophysica et Geodaetica 68 (2024)
    99-120, doi 10.1007/s11200-024-0709-z; the differences are derived beside the code.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rhumb_inverse(60.0, -30.0, 60.0, 30.0).distance_nm:.3f}"
    '1807.775'
    >>> f"{lubberline.rhumb_inverse(60.0, -30.0, 52.0, 10.0).course_deg:.2f}"
    '109.72'
    >>> [f"{value:.3f}" for value in lubberline.rhumb_inverse([60.0, 60.0], -30.0, 60.0, 30.0).distance_nm]
    ['1807.775', '1807.775']
    """
    if not kwargs:
        answer = _scalar_rhumb_inverse(lat1_deg, lon1_deg, lat2_deg, lon2_deg)
        if answer is not None:
            return named(RhumbInverse, answer)
    return RhumbInverse._make(many("rhumb_inverse", RhumbInverse._fields, (lat1_deg, lon1_deg, lat2_deg, lon2_deg), kwargs))


_scalar_rhumb_inverse = scalars["rhumb_inverse"]


class RhumbDirect(NamedTuple):
    """Where a rhumb line leads: what `rhumb_direct` gives."""

    latitude_deg: object
    """Latitude of the point reached, -90 to 90."""
    longitude_deg: object
    """Longitude of the point reached, -180 to 180."""


def rhumb_direct(lat_deg, lon_deg, course_deg, distance_nm, **kwargs):
    r"""The point reached along a rhumb line of the WGS-84 ellipsoid.

    The latitude is where the arc of the meridian is `d cos C`, by four steps of Newton's method;
    the longitude follows as `d sin C` over the mean radius of the parallels passed.

    Parameters
    ----------
    lat_deg : array_like, in degrees
        Latitude of the start, -90 to 90.
    lon_deg : array_like, in degrees
        Longitude of the start, any finite number.
    course_deg : array_like, in degrees
        True course, any finite number.
    distance_nm : array_like, in nautical miles
        Length of the line, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RhumbDirect
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `latitude_deg`: Latitude of the point reached, -90 to 90, in degrees.
        `longitude_deg`: Longitude of the point reached, -180 to 180, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range; a line that would pass a pole, or leave one in any
        direction but along a meridian, which winds about the pole without end. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 30 nanometres, but around a pole: within a metre of it a nanometre of the way is more
    of longitude.

    Degenerate cases: A line that ends within a micrometre of a pole ends at it, with the longitude
    of the start. From a pole a line runs along the meridian of the longitude given there.

    Source: As `rhumb_inverse`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rhumb_direct(60.0, -10.0, 45.0, 600.0).latitude_deg:.4f}"
    '67.0489'
    >>> f"{lubberline.rhumb_direct(60.0, -10.0, 45.0, 600.0).longitude_deg:.4f}"
    '5.8815'
    >>> [f"{value:.4f}" for value in lubberline.rhumb_direct([60.0, 60.0], -10.0, 45.0, 600.0).latitude_deg]
    ['67.0489', '67.0489']
    """
    if not kwargs:
        answer = _scalar_rhumb_direct(lat_deg, lon_deg, course_deg, distance_nm)
        if answer is not None:
            return named(RhumbDirect, answer)
    return RhumbDirect._make(many("rhumb_direct", RhumbDirect._fields, (lat_deg, lon_deg, course_deg, distance_nm), kwargs))


_scalar_rhumb_direct = scalars["rhumb_direct"]


class RhumbExcess(NamedTuple):
    """How a rhumb line departs from the geodesic: what `rhumb_excess` gives."""

    excess_nm: object
    """How much longer the rhumb line is."""
    conversion_angle_deg: object
    """Conversion angle: what is added to the course of the rhumb line for the bearing of the geodesic at the first point, -180 to 180; NaN between coincident points."""


def rhumb_excess(lat1_deg, lon1_deg, lat2_deg, lon2_deg, **kwargs):
    r"""How much longer the rhumb line between two points is than the geodesic, and by what angle the two set out apart.

    The results of `rhumb_inverse` less those of `geodesic_inverse`.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the first point, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of the first point, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of the second point, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of the second point, any finite number.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RhumbExcess
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `excess_nm`: How much longer the rhumb line is, in nautical miles.
        `conversion_angle_deg`: Conversion angle: what is added to the course of the rhumb line for
        the bearing of the geodesic at the first point, -180 to 180; NaN between coincident points,
        in degrees.

    Raises
    ------
    NavigationError
        For numbers: A latitude beyond a pole, or an infinite number. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 40 nanometres along the line and, for the angle, 60 across its far end.

    Degenerate cases: Coincident points have an excess of zero and no angle (NaN). Along a meridian
    the two are one.

    Source: As `rhumb_inverse` and `geodesic_inverse`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rhumb_excess(60.0, -30.0, 60.0, 30.0).excess_nm:.2f}"
    '62.97'
    >>> f"{lubberline.rhumb_excess(60.0, -30.0, 60.0, 30.0).conversion_angle_deg:.2f}"
    '-26.57'
    >>> [f"{value:.2f}" for value in lubberline.rhumb_excess([60.0, 60.0], -30.0, 60.0, 30.0).excess_nm]
    ['62.97', '62.97']
    """
    if not kwargs:
        answer = _scalar_rhumb_excess(lat1_deg, lon1_deg, lat2_deg, lon2_deg)
        if answer is not None:
            return named(RhumbExcess, answer)
    return RhumbExcess._make(many("rhumb_excess", RhumbExcess._fields, (lat1_deg, lon1_deg, lat2_deg, lon2_deg), kwargs))


_scalar_rhumb_excess = scalars["rhumb_excess"]


def splay_distance_nm(half_width_nm, angle_deg, **kwargs):
    r"""Distance along the course at which an angle has grown to a width: where a protected area begins to splay.

    `width / tan(angle)`.

    Parameters
    ----------
    half_width_nm : array_like, in nautical miles
        Half the width of the area, 0 to 1000.
    angle_deg : array_like, in degrees
        The angle, 0 to 90.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Over a flat earth.

    Degenerate cases: Without an angle it is infinite; without either it is NaN.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 3 Chapter 1, 1.4.2.3: 5 NM and 5.7
    degrees for VOR, beyond 49.8 NM.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.splay_distance_nm(4.0, 4.5):.1f}"
    '50.8'
    >>> [f"{value:.1f}" for value in lubberline.splay_distance_nm([4.0, 4.0], 4.5)]
    ['50.8', '50.8']
    """
    if not kwargs:
        answer = _scalar_splay_distance_nm(half_width_nm, angle_deg)
        if answer is not None:
            return answer
    return ufunc.splay_distance_nm(half_width_nm, angle_deg, **kwargs)


_scalar_splay_distance_nm = scalars["splay_distance_nm"]


def route_half_width_nm(distance_nm, containment="percent_95", **kwargs):
    r"""Half the width of the airspace that contains the traffic of a VOR route.

    Constant to 25 NM from the VOR, then growing linearly to 75 NM: for 95 percent from 4 to 6 NM.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance from the VOR along the route, 0 to 75.
    containment : {"percent_95", "percent_96", "percent_97", "percent_98", "percent_99", "percent_99_5"}
        The share of the flying time that is contained (default "percent_95").
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published.

    Degenerate cases: None in the range; beyond 75 NM nothing is published.

    Source: ICAO Annex 11 (13th ed.), Attachment A, 3.3 and 3.4.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.route_half_width_nm(50.0, 'percent_95'):.1f}"
    '5.0'
    >>> [f"{value:.1f}" for value in lubberline.route_half_width_nm([50.0, 50.0], 'percent_95')]
    ['5.0', '5.0']
    """
    containment = chosen(_CONTAINMENT, "containment", containment)
    if not kwargs:
        answer = _scalar_route_half_width_nm(distance_nm, containment)
        if answer is not None:
            return answer
    return ufunc.route_half_width_nm(distance_nm, containment, **kwargs)


_scalar_route_half_width_nm = scalars["route_half_width_nm"]


class RuleDensityAltitudeError(NamedTuple):
    """The rule of density altitude beside the exact altitude: what `rule_density_altitude_error` gives. The error is the rule less the exact answer."""

    rule_ft: object
    """The rule's answer."""
    exact_ft: object
    """The exact answer."""
    error_ft: object
    """The error: the sum of the terms."""
    standard_ft: object
    """The standard temperature as 15 less 2 degrees for 1000 ft."""
    slope_ft: object
    """120 ft to the degree for 118.6."""
    curve_ft: object
    """A straight line for a curve."""


def rule_density_altitude_error(pressure_altitude_ft, temperature_degc, **kwargs):
    r"""The rule of density altitude beside the density altitude of dry air, term by term.

    The rule of `density_altitude_rule_ft` less `density_altitude_ft`.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    temperature_degc : array_like, in degrees Celsius
        Temperature of the air, -200 to 200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleDensityAltitudeError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_ft`: The rule's answer, in feet.
        `exact_ft`: The exact answer, in feet.
        `error_ft`: The error: the sum of the terms, in feet.
        `standard_ft`: The standard temperature as 15 less 2 degrees for 1000 ft, in feet.
        `slope_ft`: 120 ft to the degree for 118.6, in feet.
        `curve_ft`: A straight line for a curve, in feet.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a temperature more than 150 K from standard, or a
        density altitude outside -5 to 80 km. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: In the stratosphere a degree is 96 ft, which stands in the last term.

    Source: The rule: common practice. The exact altitude: ICAO Doc 7488/3.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_density_altitude_error(6000.0, 13.0).error_ft:.0f}"
    '53'
    >>> [f"{value:.0f}" for value in lubberline.rule_density_altitude_error([6000.0, 6000.0], 13.0).error_ft]
    ['53', '53']
    """
    if not kwargs:
        answer = _scalar_rule_density_altitude_error(pressure_altitude_ft, temperature_degc)
        if answer is not None:
            return named(RuleDensityAltitudeError, answer)
    return RuleDensityAltitudeError._make(many("rule_density_altitude_error", RuleDensityAltitudeError._fields, (pressure_altitude_ft, temperature_degc), kwargs))


_scalar_rule_density_altitude_error = scalars["rule_density_altitude_error"]


class RulePressureAltitudeError(NamedTuple):
    """The rule of pressure altitude beside the exact altitude: what `rule_pressure_altitude_error` gives. The error is the rule less the exact answer."""

    rule_ft: object
    """The rule's answer."""
    exact_ft: object
    """The exact answer."""
    error_ft: object
    """The error: the sum of the terms."""
    datum_ft: object
    """29.92 for 29.9213 inches."""
    slope_ft: object
    """1000 ft to the inch for 924.8."""
    curve_ft: object
    """A straight line for a curve."""


def rule_pressure_altitude_error(indicated_altitude_ft, altimeter_setting_hpa, **kwargs):
    r"""The rule of pressure altitude beside the pressure altitude, term by term.

    The rule of `pressure_altitude_rule_ft` less `pressure_altitude_ft`.

    Parameters
    ----------
    indicated_altitude_ft : array_like, in feet
        Altitude that the altimeter shows, -50 000 to 300 000.
    altimeter_setting_hpa : array_like, in hectopascals
        Its setting, 400 to 1200.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RulePressureAltitudeError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_ft`: The rule's answer, in feet.
        `exact_ft`: The exact answer, in feet.
        `error_ft`: The error: the sum of the terms, in feet.
        `datum_ft`: 29.92 for 29.9213 inches, in feet.
        `slope_ft`: 1000 ft to the inch for 924.8, in feet.
        `curve_ft`: A straight line for a curve, in feet.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a pressure altitude outside -5 to 80 km. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: At the standard setting the first term is all: a foot.

    Source: The rule: CNATRA P-203. The exact altitude: ICAO Doc 7488/3.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_pressure_altitude_error(5000.0, 1000.0).error_ft:.0f}"
    '26'
    >>> [f"{value:.0f}" for value in lubberline.rule_pressure_altitude_error([5000.0, 5000.0], 1000.0).error_ft]
    ['26', '26']
    """
    if not kwargs:
        answer = _scalar_rule_pressure_altitude_error(indicated_altitude_ft, altimeter_setting_hpa)
        if answer is not None:
            return named(RulePressureAltitudeError, answer)
    return RulePressureAltitudeError._make(many("rule_pressure_altitude_error", RulePressureAltitudeError._fields, (indicated_altitude_ft, altimeter_setting_hpa), kwargs))


_scalar_rule_pressure_altitude_error = scalars["rule_pressure_altitude_error"]


class RuleColdTemperatureError(NamedTuple):
    """The rule of the cold-temperature correction beside the exact correction: what `rule_cold_temperature_error` gives. The error is the rule less the exact answer."""

    rule_ft: object
    """The rule's answer."""
    exact_ft: object
    """The exact answer."""
    error_ft: object
    """The error: the sum of the terms."""
    share_ft: object
    """4 percent for 10 degrees, where it is 10 degrees over the absolute temperature of the source."""
    column_ft: object
    """The temperature of the source for that of the column above it."""


def rule_cold_temperature_error(height_ft, temperature_degc, elevation_ft=0.0, **kwargs):
    r"""The rule of the cold-temperature correction beside the exact correction, term by term.

    The rule of `cold_temperature_correction_rule_ft` less `cold_temperature_correction_exact_ft`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Height above the altimeter setting source, 0 to 20 000.
    temperature_degc : array_like, in degrees Celsius
        Temperature at the source, -200 to 200.
    elevation_ft : array_like, in feet
        Elevation of the source (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleColdTemperatureError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_ft`: The rule's answer, in feet.
        `exact_ft`: The exact answer, in feet.
        `error_ft`: The error: the sum of the terms, in feet.
        `share_ft`: 4 percent for 10 degrees, where it is 10 degrees over the absolute temperature
        of the source, in feet.
        `column_ft`: The temperature of the source for that of the column above it, in feet.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: No height, no correction and no error.

    Source: The rule: ICAO Doc 8168 volume I, Part III Section 1 Chapter 4, 4.3.1. The exact
    correction: ICAO Doc 7488/3.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_cold_temperature_error(1500.0, -10.0, 0.0).error_ft:.1f}"
    '6.6'
    >>> [f"{value:.1f}" for value in lubberline.rule_cold_temperature_error([1500.0, 1500.0], -10.0, 0.0).error_ft]
    ['6.6', '6.6']
    """
    if not kwargs:
        answer = _scalar_rule_cold_temperature_error(height_ft, temperature_degc, elevation_ft)
        if answer is not None:
            return named(RuleColdTemperatureError, answer)
    return RuleColdTemperatureError._make(many("rule_cold_temperature_error", RuleColdTemperatureError._fields, (height_ft, temperature_degc, elevation_ft), kwargs))


_scalar_rule_cold_temperature_error = scalars["rule_cold_temperature_error"]


def rule_arc_entry_lead_nm(arc_radius_nm, turn_radius_nm, flown, rule, **kwargs):
    r"""The distance before an arc, along a radial, at which mental arithmetic begins the turn onto it.

    The radius of the turn; that and, inside 12 NM, half a mile more outbound or less inbound; or
    half a mile.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    flown : {"inbound", "outbound"}
        Whether the radial is flown inbound or outbound.
    rule : {"radius", "radius_and_half", "half_mile"}
        Which mental arithmetic.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A rule. See `arc_entry_inbound_nm` and `arc_entry_outbound_nm` for the exact distance
    in still air, `arc_entry` in wind.

    Degenerate cases: Inbound the radius less half a mile is zero for a turn of less than half a
    mile.

    Source: The radius: CNATRA P-871 chapter 4. With half a mile: CNATRA P-1265 p. 2-11 (5-99). Half
    a mile, to 150 kt: FAA-H-8083-15.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_arc_entry_lead_nm(10.0, 2.5, 'outbound', 'radius_and_half'):.1f}"
    '3.0'
    >>> [f"{value:.1f}" for value in lubberline.rule_arc_entry_lead_nm([10.0, 10.0], 2.5, 'outbound', 'radius_and_half')]
    ['3.0', '3.0']
    """
    flown = chosen(_RADIAL_FLOWN, "flown", flown)
    rule = chosen(_ARC_ENTRY_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_arc_entry_lead_nm(arc_radius_nm, turn_radius_nm, flown, rule)
        if answer is not None:
            return answer
    return ufunc.rule_arc_entry_lead_nm(arc_radius_nm, turn_radius_nm, flown, rule, **kwargs)


_scalar_rule_arc_entry_lead_nm = scalars["rule_arc_entry_lead_nm"]


class RuleArcEntryLeadError(NamedTuple):
    """A rule of the lead onto an arc beside the exact lead: what `rule_arc_entry_lead_error` gives. The error is the rule less the exact answer."""

    rule_nm: object
    """The rule's answer."""
    exact_nm: object
    """The exact answer."""
    error_nm: object
    """The error: the sum of the terms."""
    radius_nm: object
    """What the rule makes of the radius."""
    curve_nm: object
    """The radius for the lead, as if the arc were a straight line."""


def rule_arc_entry_lead_error(arc_radius_nm, turn_radius_nm, flown, rule, **kwargs):
    r"""A rule of the lead onto an arc beside the exact lead in still air with an instant roll, term by term.

    The rule of `rule_arc_entry_lead_nm` less `sqrt(D^2 + 2 D r) - D` inbound, `D - sqrt(D^2 - 2 D
    r)` outbound.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    flown : {"inbound", "outbound"}
        Whether the radial is flown inbound or outbound.
    rule : {"radius", "radius_and_half", "half_mile"}
        Which mental arithmetic.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleArcEntryLeadError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_nm`: The rule's answer, in nautical miles.
        `exact_nm`: The exact answer, in nautical miles.
        `error_nm`: The error: the sum of the terms, in nautical miles.
        `radius_nm`: What the rule makes of the radius, in nautical miles.
        `curve_nm`: The radius for the lead, as if the arc were a straight line, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or an arc below twice the turn radius when turning
        on its inside. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: None in the range.

    Source: Named at `rule_arc_entry_lead_nm`; the exact lead is derived from the geometry of
    tangent circles.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_arc_entry_lead_error(10.0, 2.5, 'inbound', 'radius_and_half').error_nm:.2f}"
    '-0.25'
    >>> [f"{value:.2f}" for value in lubberline.rule_arc_entry_lead_error([10.0, 10.0], 2.5, 'inbound', 'radius_and_half').error_nm]
    ['-0.25', '-0.25']
    """
    flown = chosen(_RADIAL_FLOWN, "flown", flown)
    rule = chosen(_ARC_ENTRY_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_arc_entry_lead_error(arc_radius_nm, turn_radius_nm, flown, rule)
        if answer is not None:
            return named(RuleArcEntryLeadError, answer)
    return RuleArcEntryLeadError._make(many("rule_arc_entry_lead_error", RuleArcEntryLeadError._fields, (arc_radius_nm, turn_radius_nm, flown, rule), kwargs))


_scalar_rule_arc_entry_lead_error = scalars["rule_arc_entry_lead_error"]


class RuleRadialsPerMileError(NamedTuple):
    """Radials to the mile by rule beside the exact number: what `rule_radials_per_mile_error` gives. The error is the rule less the exact answer."""

    rule: object
    """The rule's answer, degrees for a nautical mile."""
    exact: object
    """The exact answer."""
    error: object
    """The error, of a single term: 60 for 57.3."""


def rule_radials_per_mile_error(arc_radius_nm, **kwargs):
    r"""Radials to the mile along an arc by the sixty-to-one rule beside the degrees of a mile.

    `60 / D` less `57.3 / D`.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Distance of the arc from the station, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleRadialsPerMileError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule`: The rule's answer, degrees for a nautical mile.
        `exact`: The exact answer.
        `error`: The error, of a single term: 60 for 57.3.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 4.7 percent high throughout.

    Degenerate cases: None in the range.

    Source: The rule: CNATRA P-871 chapter 4 (`rule_radials_per_mile`).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_radials_per_mile_error(12.0).error:.3f}"
    '0.225'
    >>> [f"{value:.3f}" for value in lubberline.rule_radials_per_mile_error([12.0, 12.0]).error]
    ['0.225', '0.225']
    """
    if not kwargs:
        answer = _scalar_rule_radials_per_mile_error(arc_radius_nm)
        if answer is not None:
            return named(RuleRadialsPerMileError, answer)
    return RuleRadialsPerMileError._make(many("rule_radials_per_mile_error", RuleRadialsPerMileError._fields, (arc_radius_nm,), kwargs))


_scalar_rule_radials_per_mile_error = scalars["rule_radials_per_mile_error"]


class RuleArcCorrectionError(NamedTuple):
    """The rule of the way back onto an arc beside the least correction: what `rule_arc_correction_error` gives. The error is the rule less the exact answer."""

    rule_deg: object
    """The rule's answer."""
    exact_deg: object
    """The exact answer."""
    error_deg: object
    """The error, of a single term: a proportion for the tangent to a circle."""


def rule_arc_correction_error(distance_nm, arc_radius_nm, **kwargs):
    r"""The rule of the way back onto an arc beside the least correction that meets it.

    The rule of `rule_arc_correction_deg` less `acos(D / d)` from outside, less nothing from inside,
    where the track leads onto the arc by itself.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, 0 to 10 900.
    arc_radius_nm : array_like, in nautical miles
        Distance of the arc from the station, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleArcCorrectionError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_deg`: The rule's answer, in degrees.
        `exact_deg`: The exact answer, in degrees.
        `error_deg`: The error, of a single term: a proportion for the tangent to a circle, in
        degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error of the difference.

    Degenerate cases: Below zero from outside, the arc is passed: the rule has to be renewed on the
    way.

    Source: The rule: CNATRA P-871 chapter 4. The least correction: `arc_least_correction_deg`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_arc_correction_error(10.5, 10.0).error_deg:.1f}"
    '-7.8'
    >>> [f"{value:.1f}" for value in lubberline.rule_arc_correction_error([10.5, 10.5], 10.0).error_deg]
    ['-7.8', '-7.8']
    """
    if not kwargs:
        answer = _scalar_rule_arc_correction_error(distance_nm, arc_radius_nm)
        if answer is not None:
            return named(RuleArcCorrectionError, answer)
    return RuleArcCorrectionError._make(many("rule_arc_correction_error", RuleArcCorrectionError._fields, (distance_nm, arc_radius_nm), kwargs))


_scalar_rule_arc_correction_error = scalars["rule_arc_correction_error"]


class RuleInterceptAngleError(NamedTuple):
    """The rule of the intercept angle beside the exact angle: what `rule_intercept_angle_error` gives. The error is the rule less the exact answer."""

    rule_deg: object
    """The rule's answer."""
    exact_deg: object
    """The exact answer."""
    error_deg: object
    """The error: the sum of the terms."""
    limits_deg: object
    """At least 20 and at most 90."""
    doubling_deg: object
    """Twice the angle for that of the triangle."""


def rule_intercept_angle_error(off_radial_deg, **kwargs):
    r"""The rule of the intercept angle beside the angle that meets the radial halfway to the station, term by term.

    Twice the degrees within 20 and 90, less `atan2(sin d, cos d - 1/2)`: halfway is what doubling
    the degrees means.

    Parameters
    ----------
    off_radial_deg : array_like, in degrees
        Degrees to the radial, either way, reduced to half a circle.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleInterceptAngleError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_deg`: The rule's answer, in degrees.
        `exact_deg`: The exact answer, in degrees.
        `error_deg`: The error: the sum of the terms, in degrees.
        `limits_deg`: At least 20 and at most 90, in degrees.
        `doubling_deg`: Twice the angle for that of the triangle, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: On the radial the exact angle is zero. From 60 degrees on halfway is abeam or
    behind: the exact angle is 90 degrees and more.

    Source: The rule: FAA-H-8083-15 (`rule_intercept_angle_deg`). The exact angle: derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_intercept_angle_error(15.0).error_deg:.2f}"
    '0.95'
    >>> [f"{value:.2f}" for value in lubberline.rule_intercept_angle_error([15.0, 15.0]).error_deg]
    ['0.95', '0.95']
    """
    if not kwargs:
        answer = _scalar_rule_intercept_angle_error(off_radial_deg)
        if answer is not None:
            return named(RuleInterceptAngleError, answer)
    return RuleInterceptAngleError._make(many("rule_intercept_angle_error", RuleInterceptAngleError._fields, (off_radial_deg,), kwargs))


_scalar_rule_intercept_angle_error = scalars["rule_intercept_angle_error"]


class RuleInterceptLeadError(NamedTuple):
    """The lead radials onto a radial by rule beside the exact ones: what `rule_intercept_lead_error` gives. The error is the rule less the exact answer."""

    rule_deg: object
    """The rule's answer."""
    exact_deg: object
    """The exact answer."""
    error_deg: object
    """The error: the sum of the terms."""
    sixty_deg: object
    """60 for 57.3."""
    share_deg: object
    """The rule's share for `1 - cos i`."""
    arc_deg: object
    """The arc for its angle."""


def rule_intercept_lead_error(distance_nm, turn_radius_nm, intercept_angle_deg=90.0, **kwargs):
    r"""The lead onto a radial in radials by rule beside the exact one in still air with an instant roll, term by term.

    The rule of `rule_intercept_lead_deg` less `asin(r (1 - cos i) / D)`.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance from the station where the turn begins, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    intercept_angle_deg : array_like, in degrees
        Angle of the intercept, above 0 to 90 (default 90.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleInterceptLeadError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_deg`: The rule's answer, in degrees.
        `exact_deg`: The exact answer, in degrees.
        `error_deg`: The error: the sum of the terms, in degrees.
        `sixty_deg`: 60 for 57.3, in degrees.
        `share_deg`: The rule's share for `1 - cos i`, in degrees.
        `arc_deg`: The arc for its angle, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a turn that begins farther from the radial than
        from the station. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: None in the range.

    Source: The rule: CNATRA P-1215 and P-1265 p. 2-11 (`rule_intercept_lead_deg`). The exact lead:
    derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_intercept_lead_error(15.0, 2.5, 60.0).error_deg:.2f}"
    '1.89'
    >>> [f"{value:.2f}" for value in lubberline.rule_intercept_lead_error([15.0, 15.0], 2.5, 60.0).error_deg]
    ['1.89', '1.89']
    """
    if not kwargs:
        answer = _scalar_rule_intercept_lead_error(distance_nm, turn_radius_nm, intercept_angle_deg)
        if answer is not None:
            return named(RuleInterceptLeadError, answer)
    return RuleInterceptLeadError._make(many("rule_intercept_lead_error", RuleInterceptLeadError._fields, (distance_nm, turn_radius_nm, intercept_angle_deg), kwargs))


_scalar_rule_intercept_lead_error = scalars["rule_intercept_lead_error"]


class RuleLeastDmeError(NamedTuple):
    """The rule of the least DME beside the height itself: what `rule_least_dme_error` gives. The error is the rule less the exact answer."""

    rule_nm: object
    """The rule's answer."""
    exact_nm: object
    """The exact answer."""
    error_nm: object
    """The error, of a single term: a nautical mile of 6 000 ft."""


def rule_least_dme_error(height_ft, **kwargs):
    r"""The rule of the least DME overhead beside the height itself.

    `h / 6000` less `h`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleLeastDmeError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_nm`: The rule's answer, in nautical miles.
        `exact_nm`: The exact answer, in nautical miles.
        `error_nm`: The error, of a single term: a nautical mile of 6 000 ft, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 1.3 percent high throughout.

    Degenerate cases: None.

    Source: The rule: common practice (`rule_least_dme_nm`).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_least_dme_error(36000.0).error_nm:.3f}"
    '0.075'
    >>> [f"{value:.3f}" for value in lubberline.rule_least_dme_error([36000.0, 36000.0]).error_nm]
    ['0.075', '0.075']
    """
    if not kwargs:
        answer = _scalar_rule_least_dme_error(height_ft)
        if answer is not None:
            return named(RuleLeastDmeError, answer)
    return RuleLeastDmeError._make(many("rule_least_dme_error", RuleLeastDmeError._fields, (height_ft,), kwargs))


_scalar_rule_least_dme_error = scalars["rule_least_dme_error"]


class RuleConeRadiusError(NamedTuple):
    """The rule of the cone beside that of a half-angle: what `rule_cone_radius_error` gives. The error is the rule less the exact answer."""

    rule_nm: object
    """The rule's answer."""
    exact_nm: object
    """The exact answer."""
    error_nm: object
    """The error: the sum of the terms."""
    mile_nm: object
    """A nautical mile of 6 000 ft."""
    angle_nm: object
    """45 degrees for the half-angle."""


def rule_cone_radius_error(height_ft, cone_half_angle_deg=50.0, **kwargs):
    r"""The rule of the cone of confusion beside the cone of a half-angle, term by term.

    `h / 6000` less `h tan(half-angle)`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    cone_half_angle_deg : array_like, in degrees
        Half-angle from the vertical, above 0 below 90 (default 50.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleConeRadiusError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_nm`: The rule's answer, in nautical miles.
        `exact_nm`: The exact answer, in nautical miles.
        `error_nm`: The error: the sum of the terms, in nautical miles.
        `mile_nm`: A nautical mile of 6 000 ft, in nautical miles.
        `angle_nm`: 45 degrees for the half-angle, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: At the station's height and below it both are zero.

    Source: The rule: common practice (`rule_cone_radius_nm`); 50 degrees: `cone_radius_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_cone_radius_error(36000.0, 50.0).angle_nm:.2f}"
    '-1.14'
    >>> [f"{value:.2f}" for value in lubberline.rule_cone_radius_error([36000.0, 36000.0], 50.0).angle_nm]
    ['-1.14', '-1.14']
    """
    if not kwargs:
        answer = _scalar_rule_cone_radius_error(height_ft, cone_half_angle_deg)
        if answer is not None:
            return named(RuleConeRadiusError, answer)
    return RuleConeRadiusError._make(many("rule_cone_radius_error", RuleConeRadiusError._fields, (height_ft, cone_half_angle_deg), kwargs))


_scalar_rule_cone_radius_error = scalars["rule_cone_radius_error"]


class RuleBankError(NamedTuple):
    """A rule of the bank beside that of standard rate: what `rule_bank_error` gives. The error is the rule less the exact answer."""

    rule_deg: object
    """The rule's answer."""
    exact_deg: object
    """The exact answer."""
    error_deg: object
    """The error, of a single term: the rule's line for an arctangent."""


def rule_bank_error(true_airspeed_kt, rule, **kwargs):
    r"""A rule of the bank of a standard-rate turn beside the exact bank.

    The rule less `atan(V / 364.07)`.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed (the indicated one for `twenty_percent`), above 0 to 5000.
    rule : {"fifteen_percent", "tenth_and_seven", "tenth_and_five", "twenty_percent"}
        Which rule.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleBankError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_deg`: The rule's answer, in degrees.
        `exact_deg`: The exact answer, in degrees.
        `error_deg`: The error, of a single term: the rule's line for an arctangent, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error of the difference; the rules contradict each other.

    Degenerate cases: At jet speeds the rules give more bank than anyone flies.

    Source: Named at `rule_bank_deg`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_bank_error(120.0, 'tenth_and_seven').error_deg:.1f}"
    '0.8'
    >>> [f"{value:.1f}" for value in lubberline.rule_bank_error([120.0, 120.0], 'tenth_and_seven').error_deg]
    ['0.8', '0.8']
    """
    rule = chosen(_BANK_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_bank_error(true_airspeed_kt, rule)
        if answer is not None:
            return named(RuleBankError, answer)
    return RuleBankError._make(many("rule_bank_error", RuleBankError._fields, (true_airspeed_kt, rule), kwargs))


_scalar_rule_bank_error = scalars["rule_bank_error"]


class RuleTurnRadiusError(NamedTuple):
    """A rule of the radius beside that of the turn it is for: what `rule_turn_radius_error` gives. The error is the rule less the exact answer."""

    rule_nm: object
    """The rule's answer."""
    exact_nm: object
    """The exact answer."""
    error_nm: object
    """The error, of a single term: the rule's round number."""


def rule_turn_radius_error(speed_kt, rule, **kwargs):
    r"""A rule of the radius of a turn beside the radius of the turn that it is for.

    The rule less `V / (60 pi)`, `V / (30 pi)` or `V^2 / (g tan 30)`.

    Parameters
    ----------
    speed_kt : array_like, in knots
        Speed, above 0 to 5000.
    rule : {"half_percent", "one_percent", "miles_a_minute_less_two", "tenth_of_square"}
        Which rule.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleTurnRadiusError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_nm`: The rule's answer, in nautical miles.
        `exact_nm`: The exact answer, in nautical miles.
        `error_nm`: The error, of a single term: the rule's round number, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Standard and half standard rate: 6 percent short. A tenth of the square: 10 percent
    long.

    Degenerate cases: Miles a minute less two is zero below 120 kt.

    Source: Named at `rule_turn_radius_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_turn_radius_error(250.0, 'one_percent').error_nm:.3f}"
    '-0.153'
    >>> [f"{value:.3f}" for value in lubberline.rule_turn_radius_error([250.0, 250.0], 'one_percent').error_nm]
    ['-0.153', '-0.153']
    """
    rule = chosen(_RADIUS_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_turn_radius_error(speed_kt, rule)
        if answer is not None:
            return named(RuleTurnRadiusError, answer)
    return RuleTurnRadiusError._make(many("rule_turn_radius_error", RuleTurnRadiusError._fields, (speed_kt, rule), kwargs))


_scalar_rule_turn_radius_error = scalars["rule_turn_radius_error"]


class RuleOffCourseError(NamedTuple):
    """The rule of the distance off course beside the exact one: what `rule_off_course_error` gives. The error is the rule less the exact answer."""

    rule_nm: object
    """The rule's answer."""
    exact_nm: object
    """The exact answer."""
    error_nm: object
    """The error: the sum of the terms."""
    dot_nm: object
    """200 ft for 212 to a dot and a mile."""
    sine_nm: object
    """The angle for its sine."""


def rule_off_course_error(deflection_dots, distance_nm, **kwargs):
    r"""The rule of the distance off course beside the exact one, term by term.

    `-200 ft dots distance` less `-R asin(sin(d / R) sin(2 dots))`.

    Parameters
    ----------
    deflection_dots : array_like
        Where the needle stands in dots of two degrees, positive right of centre, -20 to 20.
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleOffCourseError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_nm`: The rule's answer, in nautical miles.
        `exact_nm`: The exact answer, in nautical miles.
        `error_nm`: The error: the sum of the terms, in nautical miles.
        `dot_nm`: 200 ft for 212 to a dot and a mile, in nautical miles.
        `sine_nm`: The angle for its sine, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: On course there is no error.

    Source: The rule: common practice (`rule_off_course_nm`). The exact distance:
    `cross_track_of_deflection_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_off_course_error(-2.0, 30.0).dot_nm:.3f}"
    '-0.119'
    >>> [f"{value:.3f}" for value in lubberline.rule_off_course_error([-2.0, -2.0], 30.0).dot_nm]
    ['-0.119', '-0.119']
    """
    if not kwargs:
        answer = _scalar_rule_off_course_error(deflection_dots, distance_nm)
        if answer is not None:
            return named(RuleOffCourseError, answer)
    return RuleOffCourseError._make(many("rule_off_course_error", RuleOffCourseError._fields, (deflection_dots, distance_nm), kwargs))


_scalar_rule_off_course_error = scalars["rule_off_course_error"]


class RuleLeadRadialsError(NamedTuple):
    """The lead radials by rule beside the exact ones: what `rule_lead_radials_error` gives. The error is the rule less the exact answer."""

    rule_deg: object
    """The rule's answer."""
    exact_deg: object
    """The exact answer."""
    error_deg: object
    """The error: the sum of the terms."""
    sixty_deg: object
    """60 for 57.3."""
    correction_deg: object
    """The rule's correction for the direction of the radial, which is there to make up for the next term."""
    geometry_deg: object
    """`r / D` for `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound."""


def rule_lead_radials_error(arc_radius_nm, turn_radius_nm, flown, rule, **kwargs):
    r"""The lead radials off an arc by rule beside the exact ones in still air with an instant roll, term by term.

    The rule of `rule_lead_radials_deg` less `asin(r / (D - r))` inbound, `asin(r / (D + r))`
    outbound.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    flown : {"inbound", "outbound"}
        Whether the radial is flown inbound or outbound.
    rule : {"plain", "proportion", "third", "added_miles"}
        Which correction.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleLeadRadialsError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_deg`: The rule's answer, in degrees.
        `exact_deg`: The exact answer, in degrees.
        `error_deg`: The error: the sum of the terms, in degrees.
        `sixty_deg`: 60 for 57.3, in degrees.
        `correction_deg`: The rule's correction for the direction of the radial, which is there to
        make up for the next term, in degrees.
        `geometry_deg`: `r / D` for `asin(r / (D - r))` inbound, `asin(r / (D + r))` outbound, in
        degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or an arc below twice the turn radius when turning
        on its inside. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: None in the range.

    Source: Named at `rule_lead_radials_deg`; the exact lead is derived from the geometry of tangent
    circles.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_lead_radials_error(10.0, 2.5, 'inbound', 'proportion').error_deg:.2f}"
    '-1.97'
    >>> [f"{value:.2f}" for value in lubberline.rule_lead_radials_error([10.0, 10.0], 2.5, 'inbound', 'proportion').error_deg]
    ['-1.97', '-1.97']
    """
    flown = chosen(_RADIAL_FLOWN, "flown", flown)
    rule = chosen(_ARC_LEAD_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_lead_radials_error(arc_radius_nm, turn_radius_nm, flown, rule)
        if answer is not None:
            return named(RuleLeadRadialsError, answer)
    return RuleLeadRadialsError._make(many("rule_lead_radials_error", RuleLeadRadialsError._fields, (arc_radius_nm, turn_radius_nm, flown, rule), kwargs))


_scalar_rule_lead_radials_error = scalars["rule_lead_radials_error"]


class RuleTimeToStationError(NamedTuple):
    """The rule of the time to a station beside the time itself: what `rule_time_to_station_error` gives. The error is the rule less the exact answer."""

    rule_s: object
    """The rule's answer."""
    exact_s: object
    """The exact answer."""
    error_s: object
    """The error: the sum of the terms."""
    sixty_s: object
    """60 for 57.3."""
    sine_s: object
    """The angle for its sine."""


def rule_time_to_station_error(elapsed_s, bearing_change_deg, **kwargs):
    r"""The rule of the time to a station abeam beside the time itself, term by term.

    `60 t / c` with the change in degrees less `t / sin(c)`.

    Parameters
    ----------
    elapsed_s : array_like, in seconds
        Time between the two bearings, above 0 to 1 000 000.
    bearing_change_deg : array_like, in degrees
        Change of the bearing, above 0 below 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleTimeToStationError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_s`: The rule's answer, in seconds.
        `exact_s`: The exact answer, in seconds.
        `error_s`: The error: the sum of the terms, in seconds.
        `sixty_s`: 60 for 57.3, in seconds.
        `sine_s`: The angle for its sine, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a change of 90 degrees and more, which a station
        abeam cannot make. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: The terms cancel at 30 degrees.

    Source: The rule: FAA-H-8083-15 (`time_to_station_rule_s`). The exact time: the law of sines.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_time_to_station_error(75.0, 10.0).error_s:.1f}"
    '18.1'
    >>> [f"{value:.1f}" for value in lubberline.rule_time_to_station_error([75.0, 75.0], 10.0).error_s]
    ['18.1', '18.1']
    """
    if not kwargs:
        answer = _scalar_rule_time_to_station_error(elapsed_s, bearing_change_deg)
        if answer is not None:
            return named(RuleTimeToStationError, answer)
    return RuleTimeToStationError._make(many("rule_time_to_station_error", RuleTimeToStationError._fields, (elapsed_s, bearing_change_deg), kwargs))


_scalar_rule_time_to_station_error = scalars["rule_time_to_station_error"]


class RuleOutboundCorrectionError(NamedTuple):
    """The outbound correction by rule beside the exact one: what `rule_outbound_correction_error` gives. The error is the rule less the exact answer."""

    rule_deg: object
    """The rule's answer."""
    exact_deg: object
    """The exact answer."""
    error_deg: object
    """The error, of a single term: a fixed multiple for what the wind does in the two turns."""


def rule_outbound_correction_error(inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, rule="triple", **kwargs):
    r"""The outbound correction of a holding pattern by rule beside that of the pattern which closes.

    A multiple of the inbound correction, the other way, less the outbound correction of
    `holding_pattern`; both right positive.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    side : {"right", "left"}
        Which way the turns go.
    inbound_time_s : array_like, in seconds
        Time of the inbound leg, 0 to 3600.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    rule : {"double", "triple"}
        By what the correction is multiplied (default "triple").
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleOutboundCorrectionError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_deg`: The rule's answer, in degrees.
        `exact_deg`: The exact answer, in degrees.
        `error_deg`: The error, of a single term: a fixed multiple for what the wind does in the two
        turns, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, an inbound course that the airspeed cannot hold, a
        wind in which no heading closes the pattern before the fix. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error of the difference.

    Degenerate cases: In calm air both are zero.

    Source: The rules: `rule_outbound_heading_deg`. The exact correction: `holding_pattern`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_outbound_correction_error(270.0, 'right', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, 'triple').error_deg:.1f}"
    '-1.5'
    >>> [f"{value:.1f}" for value in lubberline.rule_outbound_correction_error([270.0, 270.0], 'right', 60.0, 150.0, 0.0, 20.0, 25.0, 3.0, 5.0, 'triple').error_deg]
    ['-1.5', '-1.5']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    rule = chosen(_DRIFT_RULE, "rule", rule)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_rule_outbound_correction_error(inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule)
        if answer is not None:
            return named(RuleOutboundCorrectionError, answer)
    return RuleOutboundCorrectionError._make(many("rule_outbound_correction_error", RuleOutboundCorrectionError._fields, (inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule), kwargs))


_scalar_rule_outbound_correction_error = scalars["rule_outbound_correction_error"]


class RuleOutboundTimeByHeadwindError(NamedTuple):
    """The outbound time by the headwind beside the exact one: what `rule_outbound_time_by_headwind_error` gives. The error is the rule less the exact answer."""

    rule_s: object
    """The rule's answer."""
    exact_s: object
    """The exact answer."""
    error_s: object
    """The error: the sum of the terms."""
    knot_s: object
    """A second for each knot, where the legs go as their groundspeeds."""
    turns_s: object
    """What the wind does in the turns."""


def rule_outbound_time_by_headwind_error(inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""The outbound time of a holding pattern by a second for each knot of headwind, beside that of the pattern which closes, term by term.

    `t + headwind` less the outbound clock of `holding_pattern` for the same time inbound.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    side : {"right", "left"}
        Which way the turns go.
    inbound_time_s : array_like, in seconds
        Time of the inbound leg, 0 to 3600.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleOutboundTimeByHeadwindError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_s`: The rule's answer, in seconds.
        `exact_s`: The exact answer, in seconds.
        `error_s`: The error: the sum of the terms, in seconds.
        `knot_s`: A second for each knot, where the legs go as their groundspeeds, in seconds.
        `turns_s`: What the wind does in the turns, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, an inbound course that the airspeed cannot hold, a
        wind in which no heading closes the pattern before the fix. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: In calm air there is no error.

    Source: The rule: common practice (`rule_outbound_time_by_headwind_s`). The exact time:
    `holding_pattern`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_outbound_time_by_headwind_error(270.0, 'right', 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0).error_s:.0f}"
    '-8'
    >>> [f"{value:.0f}" for value in lubberline.rule_outbound_time_by_headwind_error([270.0, 270.0], 'right', 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0).error_s]
    ['-8', '-8']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_rule_outbound_time_by_headwind_error(inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(RuleOutboundTimeByHeadwindError, answer)
    return RuleOutboundTimeByHeadwindError._make(many("rule_outbound_time_by_headwind_error", RuleOutboundTimeByHeadwindError._fields, (inbound_course_deg, side, inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_rule_outbound_time_by_headwind_error = scalars["rule_outbound_time_by_headwind_error"]


class RuleOutboundTimeError(NamedTuple):
    """The next outbound time by rule beside the exact one: what `rule_outbound_time_error` gives. The error is the rule less the exact answer."""

    rule_s: object
    """The rule's answer."""
    exact_s: object
    """The exact answer."""
    error_s: object
    """The error: the sum of the terms."""
    groundspeed_s: object
    """Both legs at one groundspeed."""
    heading_s: object
    """The outbound heading, which has to change with the time."""


def rule_outbound_time_error(inbound_course_deg, side, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""The next outbound time of a holding pattern by rule, after a round that is flown, beside that of the pattern that is wanted, term by term.

    The last outbound time and what the inbound leg came out short (`rule_outbound_time_s`), less
    the outbound clock of `holding_pattern` for the inbound time that is wanted. The round is flown
    with the outbound heading that closes it.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    side : {"right", "left"}
        Which way the turns go.
    outbound_time_s : array_like, in seconds
        Time of the round that is flown, on its outbound clock, 0 to 3600.
    wanted_inbound_time_s : array_like, in seconds
        The inbound time that is wanted, 0 to 3600.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleOutboundTimeError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_s`: The rule's answer, in seconds.
        `exact_s`: The exact answer, in seconds.
        `error_s`: The error: the sum of the terms, in seconds.
        `groundspeed_s`: Both legs at one groundspeed, in seconds.
        `heading_s`: The outbound heading, which has to change with the time, in seconds.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, an inbound course that the airspeed cannot hold, a
        wind in which no heading closes the pattern before the fix. In arrays such a point is NaN
        and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: In calm air there is no error.

    Source: The rule: CNATRA P-871 chapter 4, figure 4-16. The exact time: `holding_pattern`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_outbound_time_error(270.0, 'right', 60.0, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0).error_s:.0f}"
    '-7'
    >>> [f"{value:.0f}" for value in lubberline.rule_outbound_time_error([270.0, 270.0], 'right', 60.0, 60.0, 150.0, 90.0, 20.0, 25.0, 3.0, 5.0).error_s]
    ['-7', '-7']
    """
    side = chosen(_HOLDING_SIDE, "side", side)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_rule_outbound_time_error(inbound_course_deg, side, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(RuleOutboundTimeError, answer)
    return RuleOutboundTimeError._make(many("rule_outbound_time_error", RuleOutboundTimeError._fields, (inbound_course_deg, side, outbound_time_s, wanted_inbound_time_s, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_rule_outbound_time_error = scalars["rule_outbound_time_error"]


class RuleLeadError(NamedTuple):
    """The mental arithmetic of a lead beside the exact answer: what `rule_lead_error` gives. Errors are the rule less the exact answer."""

    rule_lead_nm: object
    """The lead by the rule."""
    exact_lead_nm: object
    """The exact lead."""
    lead_error_nm: object
    """The error of the lead: the sum of the eight terms from `allowance_nm` to `roll_nm`."""
    rule_reading_nm: object
    """The DME reading by the rule: its lead and the height in miles, added."""
    exact_reading_nm: object
    """The exact DME reading."""
    reading_error_nm: object
    """The error of the reading: the sum of all ten terms."""
    allowance_nm: object
    """The allowance for height or the margin, if the rule makes one."""
    round_radius_nm: object
    """The standard-rate radius as speed over 180, where it is speed over 60 pi."""
    proportion_nm: object
    """The lead in proportion to the change, where it goes with the tangent of half of it."""
    standard_rate_nm: object
    """The radius of standard rate, where the bank limit makes it longer."""
    groundspeed_nm: object
    """The groundspeed as the speed of the turn, where the airspeed is."""
    heading_change_nm: object
    """The turn through the change of course, where that of heading has to be turned."""
    drift_nm: object
    """No drift during the turn."""
    roll_nm: object
    """A roll that takes no time."""
    mile_nm: object
    """A nautical mile of 6 000 ft in the height."""
    sum_nm: object
    """Distance and height added, where the slant is the root of their squares."""


def rule_lead_error(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft=0.0, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, rule="third", **kwargs):
    r"""The mental arithmetic of a lead beside the exact answer, term by term.

    Each term is what one simplification adds, positive where it makes the rule begin the turn too
    early. With `c` the change and `gs` the groundspeed inbound the lead goes in steps from `gs /
    180 c / 90` by `gs / (60 pi) c / 90`, `gs / (60 pi) tan(c / 2)`, `r(gs) tan(c / 2)` and `r(V)
    tan(c / 2)`, with `r` the radius that the limits leave, to the turn through the wind-corrected
    headings without its drift, with it, and with the roll; the reading adds the height as `h /
    6000`, as `h`, and in the slant range.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the station, any finite number.
    outbound_course_deg : array_like, in degrees
        Course flown from it, against the same north.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    height_above_station_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000 (default 0.0).
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    rule : {"third", "third_and_allowance", "third_and_margin"}
        Which mental arithmetic (default "third").
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleLeadError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_lead_nm`: The lead by the rule, in nautical miles.
        `exact_lead_nm`: The exact lead, in nautical miles.
        `lead_error_nm`: The error of the lead: the sum of the eight terms from `allowance_nm` to
        `roll_nm`, in nautical miles.
        `rule_reading_nm`: The DME reading by the rule: its lead and the height in miles, added, in
        nautical miles.
        `exact_reading_nm`: The exact DME reading, in nautical miles.
        `reading_error_nm`: The error of the reading: the sum of all ten terms, in nautical miles.
        `allowance_nm`: The allowance for height or the margin, if the rule makes one, in nautical
        miles.
        `round_radius_nm`: The standard-rate radius as speed over 180, where it is speed over 60 pi,
        in nautical miles.
        `proportion_nm`: The lead in proportion to the change, where it goes with the tangent of
        half of it, in nautical miles.
        `standard_rate_nm`: The radius of standard rate, where the bank limit makes it longer, in
        nautical miles.
        `groundspeed_nm`: The groundspeed as the speed of the turn, where the airspeed is, in
        nautical miles.
        `heading_change_nm`: The turn through the change of course, where that of heading has to be
        turned, in nautical miles.
        `drift_nm`: No drift during the turn, in nautical miles.
        `roll_nm`: A roll that takes no time, in nautical miles.
        `mile_nm`: A nautical mile of 6 000 ft in the height, in nautical miles.
        `sum_nm`: Distance and height added, where the slant is the root of their squares, in
        nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reversal, a wind that the airspeed cannot hold. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error. Taken back in another order they would
    share it out a little differently.

    Degenerate cases: In calm air the terms of the wind are zero to rounding error. Toward a
    reversal the rule stays finite where the exact lead does not.

    Source: The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). The exact answers:
    `lead_nm`, `dme_at_roll_in_nm`. The terms: derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_lead_error(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third').standard_rate_nm:.2f}"
    '-3.94'
    >>> f"{lubberline.rule_lead_error(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third').mile_nm:.2f}"
    '0.08'
    >>> [f"{value:.2f}" for value in lubberline.rule_lead_error([40.0, 40.0], 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third').standard_rate_nm]
    ['-3.94', '-3.94']
    """
    rule = chosen(_LEAD_RULE, "rule", rule)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_rule_lead_error(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule)
        if answer is not None:
            return named(RuleLeadError, answer)
    return RuleLeadError._make(many("rule_lead_error", RuleLeadError._fields, (inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule), kwargs))


_scalar_rule_lead_error = scalars["rule_lead_error"]


class RuleLeadFlown(NamedTuple):
    """Where a turn that mental arithmetic begins really ends: what `rule_lead_flown` gives."""

    reading_nm: object
    """The DME reading at which the turn begins."""
    before_station_nm: object
    """How far before the station that is, along the ground; negative past it."""
    overshoot_nm: object
    """How far beyond the outbound course the wings are level again, on the outer side of the turn; negative short of it."""
    past_station_nm: object
    """How far past the station that is, along the outbound course; negative before it."""
    began_in_cone: object
    """1 if the turn begins in the cone of confusion, else 0."""
    ended_in_cone: object
    """1 if it ends there, else 0."""
    verdict: object
    """What it comes to: the code of `TurnVerdict`, -1 early, 0 safe, 1 late."""


def rule_lead_flown(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft=0.0, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, rule="third", cue="reading", cone_half_angle_deg=50.0, allowed_beyond_nm=0.5, allowed_short_nm=1.0, **kwargs):
    r"""The turn that mental arithmetic begins, flown: where its wings are level again.

    Inbound on the heading that holds the course; from the cue on, the bank and the heading of the
    exact turn, over the ellipsoid. What the crew has wrong is where the turn begins, and nothing
    else. The turn is safe if it ends at most `allowed_beyond_nm` beyond the outbound course and
    `allowed_short_nm` short of it.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the station, any finite number.
    outbound_course_deg : array_like, in degrees
        Course flown from it, against the same north.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    height_above_station_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000 (default 0.0).
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    rule : {"third", "third_and_allowance", "third_and_margin"}
        Which mental arithmetic (default "third").
    cue : {"reading", "distance", "exact"}
        What the turn begins by: the rule's DME reading, its distance along the ground, or the exact
        reading (default "reading").
    cone_half_angle_deg : array_like, in degrees
        Half-angle of the cone of confusion from the vertical, above 0 below 90 (default 50.0).
    allowed_beyond_nm : array_like, in nautical miles
        How far beyond the outbound course is safe, 0 to 10 900 (default 0.5).
    allowed_short_nm : array_like, in nautical miles
        How far short of it is safe, 0 to 10 900 (default 1.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleLeadFlown
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `reading_nm`: The DME reading at which the turn begins, in nautical miles.
        `before_station_nm`: How far before the station that is, along the ground; negative past it,
        in nautical miles.
        `overshoot_nm`: How far beyond the outbound course the wings are level again, on the outer
        side of the turn; negative short of it, in nautical miles.
        `past_station_nm`: How far past the station that is, along the outbound course; negative
        before it, in nautical miles.
        `began_in_cone`: 1 if the turn begins in the cone of confusion, else 0.
        `ended_in_cone`: 1 if it ends there, else 0.
        `verdict`: What it comes to: the code of `TurnVerdict`, -1 early, 0 safe, 1 late.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reversal, a wind that the airspeed cannot hold. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A centimetre across the outbound course and half a metre along it for the flight
    itself. The station stands at 45 degrees of latitude; elsewhere it ends less than 0.001 NM away
    to leads of 10 NM. The exact reading ends within 1e-4 NM of the course at the surface, and 0.2
    percent of the lead short of it at 45 000 ft.

    Degenerate cases: No change of course is no turn: it ends where it begins, without an overshoot.
    An exact turn that begins past the station begins at its place, not by a reading.

    Source: The rules: common practice (`rule_lead_nm`, `rule_reading_nm`). What is allowed by
    default: half a mile is what DME may be off (FAA AIM 1-1-7), the other half mile is the trade's
    margin. The flight: docs/flight.md.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_lead_flown(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third', 'reading', 50.0, 0.5, 1.0).overshoot_nm:.2f}"
    '0.55'
    >>> f"{lubberline.rule_lead_flown(40.0, 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third', 'distance', 50.0, 0.5, 1.0).overshoot_nm:.2f}"
    '4.14'
    >>> [f"{value:.2f}" for value in lubberline.rule_lead_flown([40.0, 40.0], 130.0, 450.0, 36000.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third', 'reading', 50.0, 0.5, 1.0).overshoot_nm]
    ['0.55', '0.55']
    """
    rule = chosen(_LEAD_RULE, "rule", rule)
    cue = chosen(_TURN_CUE, "cue", cue)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_rule_lead_flown(inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule, cue, cone_half_angle_deg, allowed_beyond_nm, allowed_short_nm)
        if answer is not None:
            return named(RuleLeadFlown, answer)
    return RuleLeadFlown._make(many("rule_lead_flown", RuleLeadFlown._fields, (inbound_course_deg, outbound_course_deg, true_airspeed_kt, height_above_station_ft, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule, cue, cone_half_angle_deg, allowed_beyond_nm, allowed_short_nm), kwargs))


_scalar_rule_lead_flown = scalars["rule_lead_flown"]


def rule_holds_at_height_ft(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, rule="third", **kwargs):
    r"""The height above the station at which the rule's DME reading is the exact one: below it the turn begins too late, above it too early.

    Where `l + h / 6000 ft` is `sqrt(L^2 + h^2)`, with `l` the rule's lead and `L` the exact one;
    near `(L^2 - l^2) / (2 l)`.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the station, any finite number.
    outbound_course_deg : array_like, in degrees
        Course flown from it, against the same north.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    rule : {"third", "third_and_allowance", "third_and_margin"}
        Which mental arithmetic (default "third").
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reversal, a wind that the airspeed cannot hold. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding: a root in a bracket, of the readings over a curved earth.

    Degenerate cases: NaN where the rule is early at every height, as for a slow aircraft with a
    quick roll, and where it is late up to 400 000 ft.

    Source: Derived; the rule: `rule_reading_nm`, the exact reading: `dme_at_roll_in_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_holds_at_height_ft(40.0, 130.0, 350.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third'):.0f}"
    '19490'
    >>> [f"{value:.0f}" for value in lubberline.rule_holds_at_height_ft([40.0, 40.0], 130.0, 350.0, 0.0, 0.0, 25.0, 3.0, 5.0, 'third')]
    ['19490', '19490']
    """
    rule = chosen(_LEAD_RULE, "rule", rule)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_rule_holds_at_height_ft(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule)
        if answer is not None:
            return answer
    return ufunc.rule_holds_at_height_ft(inbound_course_deg, outbound_course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s, rule, **kwargs)


_scalar_rule_holds_at_height_ft = scalars["rule_holds_at_height_ft"]


def rule_outbound_heading_deg(inbound_course_deg, inbound_correction_deg, rule, **kwargs):
    r"""The outbound heading of a holding pattern by rule: a multiple of the inbound wind correction, the other way.

    `inbound course + 180 - k * correction`, with k = 2 or 3.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the fix, any finite number.
    inbound_correction_deg : array_like, in degrees
        Inbound heading less inbound course, right positive, any finite number.
    rule : {"double", "triple"}
        By what the correction is multiplied.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The rules contradict each other; see the drift factor of `holding_pattern` for the
    exact one.

    Degenerate cases: No correction inbound leaves the reciprocal.

    Source: Three times: FAA Aeronautical Information Manual (3 April 2014), 5-3-8 j 6 (c), and (20
    April 2023), 5-3-8 j; CNATRA P-871 chapter 4. Two to three times: CNATRA P-1244 p. 5-17.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_outbound_heading_deg(270.0, 5.0, 'triple'):.0f}"
    '75'
    >>> [f"{value:.0f}" for value in lubberline.rule_outbound_heading_deg([270.0, 270.0], 5.0, 'triple')]
    ['75', '75']
    """
    rule = chosen(_DRIFT_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_outbound_heading_deg(inbound_course_deg, inbound_correction_deg, rule)
        if answer is not None:
            return answer
    return ufunc.rule_outbound_heading_deg(inbound_course_deg, inbound_correction_deg, rule, **kwargs)


_scalar_rule_outbound_heading_deg = scalars["rule_outbound_heading_deg"]


def rule_outbound_time_s(outbound_time_s, inbound_time_s, wanted_inbound_time_s=60.0, **kwargs):
    r"""The next outbound time of a holding pattern by rule: the last one, and what the inbound leg came out short.

    `outbound + wanted - inbound`.

    Parameters
    ----------
    outbound_time_s : array_like, in seconds
        Time flown outbound, 0 to 3600.
    inbound_time_s : array_like, in seconds
        Time the inbound leg then took, 0 to 3600.
    wanted_inbound_time_s : array_like, in seconds
        Time the inbound leg is to take, 0 to 3600 (default 60.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in seconds
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: It leaves out that the legs are flown at different groundspeeds, so it takes several
    rounds to settle. See `holding_pattern`.

    Degenerate cases: Zero where the rule leaves no time.

    Source: CNATRA P-871 chapter 4, figure 4-16; against a strong headwind inbound it flies the
    first outbound leg for no less than 30 s.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_outbound_time_s(60.0, 50.0, 60.0):.0f}"
    '70'
    >>> [f"{value:.0f}" for value in lubberline.rule_outbound_time_s([60.0, 60.0], 50.0, 60.0)]
    ['70', '70']
    """
    if not kwargs:
        answer = _scalar_rule_outbound_time_s(outbound_time_s, inbound_time_s, wanted_inbound_time_s)
        if answer is not None:
            return answer
    return ufunc.rule_outbound_time_s(outbound_time_s, inbound_time_s, wanted_inbound_time_s, **kwargs)


_scalar_rule_outbound_time_s = scalars["rule_outbound_time_s"]


def rule_outbound_time_by_headwind_s(still_air_time_s, outbound_headwind_kt, **kwargs):
    r"""The outbound time of a holding pattern by rule for a known wind: a second more for each knot of headwind.

    `still air + headwind`, less for a tailwind.

    Parameters
    ----------
    still_air_time_s : array_like, in seconds
        Time outbound in still air, 0 to 3600.
    outbound_headwind_kt : array_like, in knots
        Headwind on the outbound leg, negative for a tailwind, -1000 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in seconds
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: See `holding_pattern` for the exact time.

    Degenerate cases: Zero where the rule leaves no time.

    Source: Common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_outbound_time_by_headwind_s(60.0, -15.0):.0f}"
    '45'
    >>> [f"{value:.0f}" for value in lubberline.rule_outbound_time_by_headwind_s([60.0, 60.0], -15.0)]
    ['45', '45']
    """
    if not kwargs:
        answer = _scalar_rule_outbound_time_by_headwind_s(still_air_time_s, outbound_headwind_kt)
        if answer is not None:
            return answer
    return ufunc.rule_outbound_time_by_headwind_s(still_air_time_s, outbound_headwind_kt, **kwargs)


_scalar_rule_outbound_time_by_headwind_s = scalars["rule_outbound_time_by_headwind_s"]


def rule_slant_negligible_from_nm(height_ft, **kwargs):
    r"""The DME reading from which on the trade does not count the slant: a mile for each 1 000 ft.

    `height / 1000`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: There the reading is 1.35 percent more than the distance along the ground. See
    `rule_ground_distance_error`.

    Degenerate cases: None.

    Source: FAA-H-8083-15 (Instrument Flying Handbook), as study notes quote it.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_slant_negligible_from_nm(30000.0):.0f}"
    '30'
    >>> [f"{value:.0f}" for value in lubberline.rule_slant_negligible_from_nm([30000.0, 30000.0])]
    ['30', '30']
    """
    if not kwargs:
        answer = _scalar_rule_slant_negligible_from_nm(height_ft)
        if answer is not None:
            return answer
    return ufunc.rule_slant_negligible_from_nm(height_ft, **kwargs)


_scalar_rule_slant_negligible_from_nm = scalars["rule_slant_negligible_from_nm"]


class RuleGroundDistanceError(NamedTuple):
    """The DME reading taken for the distance along the ground, beside that distance: what `rule_ground_distance_error` gives. The error is the rule less the exact answer."""

    rule_nm: object
    """The rule's answer."""
    exact_nm: object
    """The exact answer."""
    error_nm: object
    """The error: the sum of the terms."""
    triangle_nm: object
    """The slant for the side of the triangle."""
    curve_nm: object
    """A flat earth for a round one."""


def rule_ground_distance_error(slant_range_nm, height_ft, **kwargs):
    r"""The DME reading taken for the distance along the ground, beside that distance, term by term.

    The reading less `ground_distance_nm`.

    Parameters
    ----------
    slant_range_nm : array_like, in nautical miles
        DME reading, 0 to 10 900.
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleGroundDistanceError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_nm`: The rule's answer, in nautical miles.
        `exact_nm`: The exact answer, in nautical miles.
        `error_nm`: The error: the sum of the terms, in nautical miles.
        `triangle_nm`: The slant for the side of the triangle, in nautical miles.
        `curve_nm`: A flat earth for a round one, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a reading shorter than the height. In arrays such
        a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: Overhead the whole reading is error.

    Source: The rule: `rule_slant_negligible_from_nm`. The exact distance: `ground_distance_nm`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_ground_distance_error(30.0, 30000.0).error_nm:.2f}"
    '0.43'
    >>> [f"{value:.2f}" for value in lubberline.rule_ground_distance_error([30.0, 30.0], 30000.0).error_nm]
    ['0.43', '0.43']
    """
    if not kwargs:
        answer = _scalar_rule_ground_distance_error(slant_range_nm, height_ft)
        if answer is not None:
            return named(RuleGroundDistanceError, answer)
    return RuleGroundDistanceError._make(many("rule_ground_distance_error", RuleGroundDistanceError._fields, (slant_range_nm, height_ft), kwargs))


_scalar_rule_ground_distance_error = scalars["rule_ground_distance_error"]


class RuleRadioHorizonError(NamedTuple):
    """A rule of the radio horizon beside the exact horizon: what `rule_radio_horizon_error` gives. The error is the rule less the exact answer."""

    rule_nm: object
    """The rule's answer."""
    exact_nm: object
    """The exact answer."""
    error_nm: object
    """The error: the sum of the terms."""
    factor_nm: object
    """The rule's factor for 1.2289."""
    root_nm: object
    """The square roots of the heights for the tangents."""


def rule_radio_horizon_error(aircraft_height_ft, antenna_height_ft, rule, **kwargs):
    r"""A rule of the radio horizon beside the tangent to a sphere of 4/3 of the earth's radius, term by term.

    `radio_horizon_nm` by the rule less that of `four_thirds`.

    Parameters
    ----------
    aircraft_height_ft : array_like, in feet
        Height of the aircraft above the surface, 0 to 400 000.
    antenna_height_ft : array_like, in feet
        Height of the antenna above the surface, 0 to 400 000.
    rule : {"four_thirds", "feet_miles", "metres_kilometres", "five_quarters"}
        Which rule.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleRadioHorizonError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_nm`: The rule's answer, in nautical miles.
        `exact_nm`: The exact answer, in nautical miles.
        `error_nm`: The error: the sum of the terms, in nautical miles.
        `factor_nm`: The rule's factor for 1.2289, in nautical miles.
        `root_nm`: The square roots of the heights for the tangents, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: The rule `four_thirds` is the exact one and has no error.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 1 Chapter 3, Appendix, and common
    practice (`radio_horizon_nm`).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_radio_horizon_error(35000.0, 0.0, 'five_quarters').factor_nm:.2f}"
    '3.98'
    >>> [f"{value:.2f}" for value in lubberline.rule_radio_horizon_error([35000.0, 35000.0], 0.0, 'five_quarters').factor_nm]
    ['3.98', '3.98']
    """
    rule = chosen(_HORIZON_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_radio_horizon_error(aircraft_height_ft, antenna_height_ft, rule)
        if answer is not None:
            return named(RuleRadioHorizonError, answer)
    return RuleRadioHorizonError._make(many("rule_radio_horizon_error", RuleRadioHorizonError._fields, (aircraft_height_ft, antenna_height_ft, rule), kwargs))


_scalar_rule_radio_horizon_error = scalars["rule_radio_horizon_error"]


def rule_roll_out_lead_deg(bank_deg, rule, **kwargs):
    r"""The degrees of heading by which to begin the roll-out before the new heading, by a rule.

    A third of the bank, or half of it.

    Parameters
    ----------
    bank_deg : array_like, in degrees
        Bank, above 0 below 90.
    rule : {"third", "half"}
        Which rule.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A rule. See `rule_roll_out_lead_error`.

    Degenerate cases: None in the range.

    Source: A third: CNATRA P-1215, timed turns. Half: common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_roll_out_lead_deg(24.0, 'third'):.0f}"
    '8'
    >>> [f"{value:.0f}" for value in lubberline.rule_roll_out_lead_deg([24.0, 24.0], 'third')]
    ['8', '8']
    """
    rule = chosen(_ROLL_OUT_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_roll_out_lead_deg(bank_deg, rule)
        if answer is not None:
            return answer
    return ufunc.rule_roll_out_lead_deg(bank_deg, rule, **kwargs)


_scalar_rule_roll_out_lead_deg = scalars["rule_roll_out_lead_deg"]


class RuleRollOutLeadError(NamedTuple):
    """A rule of the roll-out beside the exact lead: what `rule_roll_out_lead_error` gives. The error is the rule less the exact answer."""

    rule_deg: object
    """The rule's answer."""
    exact_deg: object
    """The exact answer."""
    error_deg: object
    """The error: the sum of the terms."""
    share_deg: object
    """The share of the bank for the mean rate of turn over the time of the roll."""
    tangent_deg: object
    """A rate in proportion to the bank for one that goes with its tangent."""


def rule_roll_out_lead_error(true_airspeed_kt, bank_deg, roll_rate_deg_per_s=5.0, rule="third", **kwargs):
    r"""A rule of the roll-out beside the heading that is turned while the bank returns to zero, term by term.

    The rule less `g / (V p) ln sec b`.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    bank_deg : array_like, in degrees
        Bank, above 0 below 90.
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    rule : {"third", "half"}
        Which rule (default "third").
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RuleRollOutLeadError
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `rule_deg`: The rule's answer, in degrees.
        `exact_deg`: The exact answer, in degrees.
        `error_deg`: The error: the sum of the terms, in degrees.
        `share_deg`: The share of the bank for the mean rate of turn over the time of the roll, in
        degrees.
        `tangent_deg`: A rate in proportion to the bank for one that goes with its tangent, in
        degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: The terms sum to the whole to rounding error.

    Degenerate cases: A roll that takes no time turns no heading: the rule is all error.

    Source: Named at `rule_roll_out_lead_deg`; the exact lead is derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_roll_out_lead_error(120.0, 18.0, 5.0, 'third').error_deg:.1f}"
    '0.8'
    >>> [f"{value:.1f}" for value in lubberline.rule_roll_out_lead_error([120.0, 120.0], 18.0, 5.0, 'third').error_deg]
    ['0.8', '0.8']
    """
    rule = chosen(_ROLL_OUT_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_roll_out_lead_error(true_airspeed_kt, bank_deg, roll_rate_deg_per_s, rule)
        if answer is not None:
            return named(RuleRollOutLeadError, answer)
    return RuleRollOutLeadError._make(many("rule_roll_out_lead_error", RuleRollOutLeadError._fields, (true_airspeed_kt, bank_deg, roll_rate_deg_per_s, rule), kwargs))


_scalar_rule_roll_out_lead_error = scalars["rule_roll_out_lead_error"]


def rule_lead_nm(groundspeed_kt, course_change_deg, height_above_station_ft=0.0, **kwargs):
    r"""The lead of a course change by mental arithmetic: a third of a mile for each 60 kt, and more for height.

    `(gs / 60) / 3 * change / 90`, and half a nautical mile for each 10 000 ft above 5 000 ft.

    Parameters
    ----------
    groundspeed_kt : array_like, in knots
        Groundspeed, 0 to 10 000.
    course_change_deg : array_like, in degrees
        Change of course, either way, reduced to half a circle.
    height_above_station_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A rule: short by half at jet speeds, where no one flies the bank of standard rate. See
    `lead_nm` for the exact lead.

    Degenerate cases: Beyond 90 degrees the proportion goes on, while the exact lead grows like a
    tangent.

    Source: Common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_lead_nm(180.0, 90.0, 0.0):.2f}"
    '1.00'
    >>> f"{lubberline.rule_lead_nm(450.0, 60.0, 35000.0):.2f}"
    '3.17'
    >>> [f"{value:.2f}" for value in lubberline.rule_lead_nm([180.0, 180.0], 90.0, 0.0)]
    ['1.00', '1.00']
    """
    if not kwargs:
        answer = _scalar_rule_lead_nm(groundspeed_kt, course_change_deg, height_above_station_ft)
        if answer is not None:
            return answer
    return ufunc.rule_lead_nm(groundspeed_kt, course_change_deg, height_above_station_ft, **kwargs)


_scalar_rule_lead_nm = scalars["rule_lead_nm"]


def rule_reading_nm(groundspeed_kt, course_change_deg, height_above_station_ft=0.0, **kwargs):
    r"""The DME reading at which mental arithmetic begins the turn: the rule's lead added to the height in miles.

    `(gs / 60) / 3 * change / 90 + height / 6000`.

    Parameters
    ----------
    groundspeed_kt : array_like, in knots
        Groundspeed, 0 to 10 000.
    course_change_deg : array_like, in degrees
        Change of course, either way, reduced to half a circle.
    height_above_station_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A rule whose two errors work against each other: the lead of standard rate is too
    short for a fast aircraft, and the sum of distance and height is more than the slant. See
    `dme_at_roll_in_nm` for the exact reading.

    Degenerate cases: As `rule_lead_nm`.

    Source: Common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_reading_nm(450.0, 60.0, 36000.0):.2f}"
    '7.67'
    >>> [f"{value:.2f}" for value in lubberline.rule_reading_nm([450.0, 450.0], 60.0, 36000.0)]
    ['7.67', '7.67']
    """
    if not kwargs:
        answer = _scalar_rule_reading_nm(groundspeed_kt, course_change_deg, height_above_station_ft)
        if answer is not None:
            return answer
    return ufunc.rule_reading_nm(groundspeed_kt, course_change_deg, height_above_station_ft, **kwargs)


_scalar_rule_reading_nm = scalars["rule_reading_nm"]


def rule_least_dme_nm(height_ft, **kwargs):
    r"""The least DME reading overhead by rule: the height in miles, 6 000 ft to the mile.

    `height / 6000`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 1.3 percent high: a nautical mile is 6 076.1 ft. See `least_dme_nm`.

    Degenerate cases: None.

    Source: Common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_least_dme_nm(12000.0):.2f}"
    '2.00'
    >>> [f"{value:.2f}" for value in lubberline.rule_least_dme_nm([12000.0, 12000.0])]
    ['2.00', '2.00']
    """
    if not kwargs:
        answer = _scalar_rule_least_dme_nm(height_ft)
        if answer is not None:
            return answer
    return ufunc.rule_least_dme_nm(height_ft, **kwargs)


_scalar_rule_least_dme_nm = scalars["rule_least_dme_nm"]


def rule_cone_radius_nm(height_ft, **kwargs):
    r"""The cone of confusion by rule: as wide on each side as the aircraft is high.

    `height / 6000`, a half-angle of 45 degrees.

    Parameters
    ----------
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: ICAO Doc 8168 takes 50 degrees, which is wider by 19 percent. See `cone_radius_nm`.

    Degenerate cases: At the station's height and below it the radius is zero.

    Source: Common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_cone_radius_nm(36000.0):.2f}"
    '6.00'
    >>> [f"{value:.2f}" for value in lubberline.rule_cone_radius_nm([36000.0, 36000.0])]
    ['6.00', '6.00']
    """
    if not kwargs:
        answer = _scalar_rule_cone_radius_nm(height_ft)
        if answer is not None:
            return answer
    return ufunc.rule_cone_radius_nm(height_ft, **kwargs)


_scalar_rule_cone_radius_nm = scalars["rule_cone_radius_nm"]


def rule_bank_deg(true_airspeed_kt, rule, **kwargs):
    r"""The bank of a standard-rate turn by a rule of thumb.

    15 percent of the speed, a tenth of it and 7, a tenth of it and 5, or 20 percent of it.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed (the indicated one for `twenty_percent`), above 0 to 5000.
    rule : {"fifteen_percent", "tenth_and_seven", "tenth_and_five", "twenty_percent"}
        Which rule.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: They contradict each other; the exact bank is `atan(V / 364.07)`. See
    `bank_for_rate_deg`.

    Degenerate cases: At jet speeds the rules give more bank than anyone flies.

    Source: 15 percent, a tenth and 7, a tenth and 5: common practice. 20 percent: CNATRA P-1215.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_bank_deg(120.0, 'tenth_and_seven'):.1f}"
    '19.0'
    >>> [f"{value:.1f}" for value in lubberline.rule_bank_deg([120.0, 120.0], 'tenth_and_seven')]
    ['19.0', '19.0']
    """
    rule = chosen(_BANK_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_bank_deg(true_airspeed_kt, rule)
        if answer is not None:
            return answer
    return ufunc.rule_bank_deg(true_airspeed_kt, rule, **kwargs)


_scalar_rule_bank_deg = scalars["rule_bank_deg"]


def rule_turn_radius_nm(speed_kt, rule, **kwargs):
    r"""The radius of a turn by a rule of thumb.

    0.5 percent of the speed (standard rate), 1 percent (half standard rate), miles a minute less
    two, or a tenth of their square (30 degrees).

    Parameters
    ----------
    speed_kt : array_like, in knots
        Speed, above 0 to 5000.
    rule : {"half_percent", "one_percent", "miles_a_minute_less_two", "tenth_of_square"}
        Which rule.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Within 6 percent of `V / (60 pi)` and `V / (30 pi)`; the last is 10 percent high
    throughout. See `turn_radius_nm`.

    Degenerate cases: Miles a minute less two is zero below 120 kt.

    Source: CNATRA P-340 p. 6-98; CNATRA P-1282; AFMAN 11-217 (rescinded), as quoted.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_turn_radius_nm(250.0, 'one_percent'):.2f}"
    '2.50'
    >>> [f"{value:.2f}" for value in lubberline.rule_turn_radius_nm([250.0, 250.0], 'one_percent')]
    ['2.50', '2.50']
    """
    rule = chosen(_RADIUS_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_turn_radius_nm(speed_kt, rule)
        if answer is not None:
            return answer
    return ufunc.rule_turn_radius_nm(speed_kt, rule, **kwargs)


_scalar_rule_turn_radius_nm = scalars["rule_turn_radius_nm"]


def rule_radials_per_mile(arc_radius_nm, **kwargs):
    r"""Radials to the mile along an arc by the sixty-to-one rule.

    `60 / D`; the exact divisor is 57.3.

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Distance of the arc from the station, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 4.7 percent high.

    Degenerate cases: None in the range.

    Source: CNATRA P-871 chapter 4, Radial Interception from an Arc.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_radials_per_mile(12.0):.1f}"
    '5.0'
    >>> [f"{value:.1f}" for value in lubberline.rule_radials_per_mile([12.0, 12.0])]
    ['5.0', '5.0']
    """
    if not kwargs:
        answer = _scalar_rule_radials_per_mile(arc_radius_nm)
        if answer is not None:
            return answer
    return ufunc.rule_radials_per_mile(arc_radius_nm, **kwargs)


_scalar_rule_radials_per_mile = scalars["rule_radials_per_mile"]


def rule_lead_radials_deg(arc_radius_nm, turn_radius_nm, flown, rule, **kwargs):
    r"""The lead in radials for the turn off an arc, by the sixty-to-one rule and a correction.

    `(60 / D) r`, times (90 ± lead) / 90 (`proportion`), or a third more inbound and less outbound
    inside 10 NM (`third`).

    Parameters
    ----------
    arc_radius_nm : array_like, in nautical miles
        Distance of the arc from the station, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    flown : {"inbound", "outbound"}
        Whether the radial is flown inbound or outbound.
    rule : {"plain", "proportion", "third", "added_miles"}
        Which correction.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: A rule. See `arc_exit` for the exact lead in wind and with roll.

    Degenerate cases: Where the exact turn toward the station no longer fits, the rules still give a
    number.

    Source: CNATRA P-871 chapter 4; CNATRA P-1204 p. 76 (4-01), whose text multiplies by the radials
    per mile where its worked example adds the miles; CNATRA P-1265 p. 2-10 (5-99).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_lead_radials_deg(10.0, 2.5, 'inbound', 'proportion'):.1f}"
    '17.5'
    >>> [f"{value:.1f}" for value in lubberline.rule_lead_radials_deg([10.0, 10.0], 2.5, 'inbound', 'proportion')]
    ['17.5', '17.5']
    """
    flown = chosen(_RADIAL_FLOWN, "flown", flown)
    rule = chosen(_ARC_LEAD_RULE, "rule", rule)
    if not kwargs:
        answer = _scalar_rule_lead_radials_deg(arc_radius_nm, turn_radius_nm, flown, rule)
        if answer is not None:
            return answer
    return ufunc.rule_lead_radials_deg(arc_radius_nm, turn_radius_nm, flown, rule, **kwargs)


_scalar_rule_lead_radials_deg = scalars["rule_lead_radials_deg"]


def rule_off_course_nm(deflection_dots, distance_nm, **kwargs):
    r"""Distance off course by rule, right positive: 200 ft for each dot and each nautical mile from the station.

    `-200 ft dots distance`.

    Parameters
    ----------
    deflection_dots : array_like
        Where the needle stands in dots of two degrees, positive right of centre, -20 to 20.
    distance_nm : array_like, in nautical miles
        Distance from the station along the ground, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 6 percent short near the centre: two degrees are 212 ft at a nautical mile. See
    `cross_track_of_deflection_nm`.

    Degenerate cases: The proportion goes on past the end of the scale.

    Source: Common practice, as printed on training pages for the FAA's written test.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rule_off_course_nm(-2.0, 30.0):.2f}"
    '1.97'
    >>> [f"{value:.2f}" for value in lubberline.rule_off_course_nm([-2.0, -2.0], 30.0)]
    ['1.97', '1.97']
    """
    if not kwargs:
        answer = _scalar_rule_off_course_nm(deflection_dots, distance_nm)
        if answer is not None:
            return answer
    return ufunc.rule_off_course_nm(deflection_dots, distance_nm, **kwargs)


_scalar_rule_off_course_nm = scalars["rule_off_course_nm"]


class Observation(NamedTuple):
    """What an aircraft makes of a station: what `observe` gives."""

    radial_deg: object
    """Direction of the aircraft from the station, in the station's north, 0 to 360; NaN exactly overhead."""
    dme_nm: object
    """Straight distance from antenna to aircraft: the DME reading."""
    ground_distance_nm: object
    """Distance along the ground."""
    elevation_angle_deg: object
    """Angle of the aircraft above the station's horizontal."""


def observe(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft, **kwargs):
    r"""Radial, DME, ground distance and elevation angle of an aircraft from a station.

    The radial is the azimuth of the geodesic on WGS-84 at the station less its declination; the DME
    reading is the straight line between antenna and aircraft at their heights, in earth-centred
    coordinates.

    Parameters
    ----------
    station_latitude_deg : array_like, in degrees
        Latitude of the antenna, -90 to 90.
    station_longitude_deg : array_like, in degrees
        Longitude of the antenna, any finite number.
    station_elevation_ft : array_like, in feet
        Elevation of the antenna above mean sea level, -16 500 to 60 000.
    station_declination_deg : array_like, in degrees
        Angle from true north to the station's north, positive east, -180 to 180.
    latitude_deg : array_like, in degrees
        Latitude of the aircraft, -90 to 90.
    longitude_deg : array_like, in degrees
        Longitude of the aircraft, any finite number.
    altitude_ft : array_like, in feet
        Altitude of the aircraft above mean sea level, -16 500 to 400 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    Observation
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `radial_deg`: Direction of the aircraft from the station, in the station's north, 0 to 360;
        NaN exactly overhead, in degrees.
        `dme_nm`: Straight distance from antenna to aircraft: the DME reading, in nautical miles.
        `ground_distance_nm`: Distance along the ground, in nautical miles.
        `elevation_angle_deg`: Angle of the aircraft above the station's horizontal, in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 30 nanometres along the ground, a micrometre along the slant. In arrays a tenth of a
    micrometre to 300 NM and a micrometre to 18 000 km, along the ground and across; from there to
    10 560 NM three micrometres, across as far as the radial moves the other end; within a metre of
    the station and beyond 10 560 NM each point is computed as by itself. Mean sea level is taken
    for the ellipsoid.

    Degenerate cases: Exactly overhead the radial is NaN. Reception is not judged here.

    Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55;
    earth-centred coordinates of WGS-84 (NGA.STND.0036_1.0.0_WGS84, from memory).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.observe(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0).dme_nm:.2f}"
    '21.46'
    >>> f"{lubberline.observe(61.25, -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0).radial_deg:.2f}"
    '49.60'
    >>> [f"{value:.2f}" for value in lubberline.observe([61.25, 61.25], -11.5, 420.0, -6.0, 61.5, -11.0, 31000.0).dme_nm]
    ['21.46', '21.46']
    """
    if not kwargs:
        answer = _scalar_observe(station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft)
        if answer is not None:
            return named(Observation, answer)
    return Observation._make(many("observe", Observation._fields, (station_latitude_deg, station_longitude_deg, station_elevation_ft, station_declination_deg, latitude_deg, longitude_deg, altitude_ft), kwargs))


_scalar_observe = scalars["observe"]


def cone_radius_nm(height_ft, cone_half_angle_deg=50.0, **kwargs):
    r"""Radius of the cone of confusion above a station.

    `h tan(half-angle)`.

    Parameters
    ----------
    height_ft : array_like, in feet
        Height above the station's antenna, -60 000 to 400 000.
    cone_half_angle_deg : array_like, in degrees
        Half-angle from the vertical, above 0 below 90 (default 50.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Over a flat earth: 0.3 percent too much at 35 000 ft, 0.5 percent at 60 000 ft.

    Degenerate cases: At the station's height and below it the radius is zero.

    Source: 50 degrees for a VOR, 40 for an NDB: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section
    2 Chapter 2, 2.5.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.cone_radius_nm(35000.0, 50.0):.2f}"
    '6.86'
    >>> [f"{value:.2f}" for value in lubberline.cone_radius_nm([35000.0, 35000.0], 50.0)]
    ['6.86', '6.86']
    """
    if not kwargs:
        answer = _scalar_cone_radius_nm(height_ft, cone_half_angle_deg)
        if answer is not None:
            return answer
    return ufunc.cone_radius_nm(height_ft, cone_half_angle_deg, **kwargs)


_scalar_cone_radius_nm = scalars["cone_radius_nm"]


class SuccessiveTurns(NamedTuple):
    """Two turns one after the other: what `successive_turns` gives."""

    past_first_nm: object
    """Distance past the first fix, along the leg, at which its turn is done."""
    before_second_nm: object
    """Distance before the second fix, along the leg, at which its turn begins."""
    spare_nm: object
    """What the leg has left between the two; negative where it is too short."""
    straight_time_s: object
    """Time flown straight between the two turns; negative where the leg is too short."""
    largest_true_airspeed_kt: object
    """Largest true airspeed at which the leg is long enough; NaN where there is none, or no limit."""
    largest_groundspeed_kt: object
    """Groundspeed on the leg at that airspeed."""
    bank_needed_deg: object
    """Least bank, with no limit of the rate of turn, at which the leg is long enough; NaN where none is, or every bank."""
    crossing_past_first_nm: object
    """Where the course to the first fix crosses the course from the second, past the first fix; NaN for parallel courses."""
    crossing_before_second_nm: object
    """The same crossing, before the second fix along the course from it."""
    crossing_lead_nm: object
    """Lead of the one turn there that would do for both."""


def successive_turns(inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, first_passage, second_passage, true_airspeed_kt, wind_from_deg=None, wind_speed_kt=None, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""Whether a leg between two fixes is long enough for the turns at both, in wind and with roll, and if not, what is possible.

    `length - past first - before second`: the distance past its fix at which the first turn is
    done, and the lead of the second. The largest airspeed and the least bank are those that leave
    nothing to spare.

    Parameters
    ----------
    inbound_course_deg : array_like, in degrees
        Course flown to the first fix, any finite number.
    leg_course_deg : array_like, in degrees
        Course from the first fix to the second.
    outbound_course_deg : array_like, in degrees
        Course flown from the second fix.
    leg_length_nm : array_like, in nautical miles
        Distance between the fixes, 0 to 10 900.
    first_passage : {"fly_by", "fly_over"}
        How the first fix is passed.
    second_passage : {"fly_by", "fly_over"}
        How the second fix is passed.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, against the same north (left out with the other half of the wind:
        calm air).
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000 (left out with the other half of the wind: calm air).
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    SuccessiveTurns
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `past_first_nm`: Distance past the first fix, along the leg, at which its turn is done, in
        nautical miles.
        `before_second_nm`: Distance before the second fix, along the leg, at which its turn begins,
        in nautical miles.
        `spare_nm`: What the leg has left between the two; negative where it is too short, in
        nautical miles.
        `straight_time_s`: Time flown straight between the two turns; negative where the leg is too
        short, in seconds.
        `largest_true_airspeed_kt`: Largest true airspeed at which the leg is long enough; NaN where
        there is none, or no limit, in knots.
        `largest_groundspeed_kt`: Groundspeed on the leg at that airspeed, in knots.
        `bank_needed_deg`: Least bank, with no limit of the rate of turn, at which the leg is long
        enough; NaN where none is, or every bank, in degrees.
        `crossing_past_first_nm`: Where the course to the first fix crosses the course from the
        second, past the first fix; NaN for parallel courses, in nautical miles.
        `crossing_before_second_nm`: The same crossing, before the second fix along the course from
        it, in nautical miles.
        `crossing_lead_nm`: Lead of the one turn there that would do for both, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reversal at either fix, a wind that the airspeed
        cannot hold. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: That of `lead_nm`; the largest airspeed and the least bank to rounding.

    Degenerate cases: A first fix that is flown over is followed by an intercept of the leg at 30
    degrees; a second one that is flown over takes nothing of the leg. The largest airspeed is
    looked for from the one given: upward where the leg is long enough.

    Source: Derived from the leads of the two turns; the sum of two distances as in ICAO Doc 8168
    Vol II (5th ed. 2006), Part III Section 2 Chapter 1.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.successive_turns(40.0, 130.0, 60.0, 8.0, 'fly_by', 'fly_by', 400.0, 300.0, 40.0, 25.0, 3.0, 5.0).spare_nm:.2f}"
    '-2.71'
    >>> f"{lubberline.successive_turns(40.0, 130.0, 60.0, 8.0, 'fly_by', 'fly_by', 400.0, 300.0, 40.0, 25.0, 3.0, 5.0).largest_true_airspeed_kt:.0f}"
    '339'
    >>> [f"{value:.2f}" for value in lubberline.successive_turns([40.0, 40.0], 130.0, 60.0, 8.0, 'fly_by', 'fly_by', 400.0, 300.0, 40.0, 25.0, 3.0, 5.0).spare_nm]
    ['-2.71', '-2.71']
    """
    first_passage = chosen(_PASSAGE, "first_passage", first_passage)
    second_passage = chosen(_PASSAGE, "second_passage", second_passage)
    if wind_from_deg is None or wind_speed_kt is None:
        wind_from_deg, wind_speed_kt = calm(wind_from_deg, wind_speed_kt)
    if not kwargs:
        answer = _scalar_successive_turns(inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, first_passage, second_passage, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(SuccessiveTurns, answer)
    return SuccessiveTurns._make(many("successive_turns", SuccessiveTurns._fields, (inbound_course_deg, leg_course_deg, outbound_course_deg, leg_length_nm, first_passage, second_passage, true_airspeed_kt, wind_from_deg, wind_speed_kt, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_successive_turns = scalars["successive_turns"]


def stabilization_distance_nm(passage, course_change_deg, true_airspeed_kt, bank_deg=25.0, turn_rate_limit_deg_per_s=3.0, bank_onto_leg_deg=15.0, **kwargs):
    r"""What a turn at a waypoint takes of a leg in procedure design: the minimum stabilization distance.

    Flown by: `r tan(A/2) + 5 V / 3600`. Flown over, with an intercept at 30 degrees: `r1 sin(A) +
    r1 cos(A) tan(30) + r1 (1/sin(30) - 2 cos(A)/sin(60)) + r2 tan(15) + 10 V / 3600`. The least
    length of a leg is the sum of the distances of its two waypoints.

    Parameters
    ----------
    passage : {"fly_by", "fly_over"}
        How the waypoint is passed.
    course_change_deg : array_like, in degrees
        Change of course, either way, reduced to half a circle.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    bank_deg : array_like, in degrees
        Bank of the turn at the waypoint, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of that turn, above 0 (default 3.0).
    bank_onto_leg_deg : array_like, in degrees
        Bank of the turn onto the leg after flying over, above 0 below 90 (default 15.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a reversal that is flown by. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As published, without wind and roll; `successive_turns` has both.

    Degenerate cases: Flown over with a change below 30 degrees the sum has no meaning: it does not
    vanish without a change.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part III Section 2 Chapter 1: sequences and banks
    as read, formulas from memory.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.stabilization_distance_nm('fly_by', 90.0, 250.0, 25.0, 3.0, 15.0):.2f}"
    '2.30'
    >>> f"{lubberline.stabilization_distance_nm('fly_over', 90.0, 250.0, 25.0, 3.0, 15.0):.2f}"
    '7.46'
    >>> [f"{value:.2f}" for value in lubberline.stabilization_distance_nm('fly_by', [90.0, 90.0], 250.0, 25.0, 3.0, 15.0)]
    ['2.30', '2.30']
    """
    passage = chosen(_PASSAGE, "passage", passage)
    if not kwargs:
        answer = _scalar_stabilization_distance_nm(passage, course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg)
        if answer is not None:
            return answer
    return ufunc.stabilization_distance_nm(passage, course_change_deg, true_airspeed_kt, bank_deg, turn_rate_limit_deg_per_s, bank_onto_leg_deg, **kwargs)


_scalar_stabilization_distance_nm = scalars["stabilization_distance_nm"]


class TangentTurn(NamedTuple):
    """A turn of fixed radius between two courses: what `tangent_turn` gives."""

    center_latitude_deg: object
    """Latitude of the centre."""
    center_longitude_deg: object
    """Longitude of the centre."""
    begin_latitude_deg: object
    """Latitude where the turn leaves the first course."""
    begin_longitude_deg: object
    """Its longitude."""
    end_latitude_deg: object
    """Latitude where it joins the second course."""
    end_longitude_deg: object
    """Its longitude."""
    begin_bearing_deg: object
    """Bearing of its beginning from the centre, 0 to 360."""
    end_bearing_deg: object
    """Bearing of its end from the centre, 0 to 360."""
    length_nm: object
    """Length of the arc."""
    side: object
    """1 for a turn to the right, -1 to the left."""


def tangent_turn(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm, **kwargs):
    r"""The turn of fixed radius that leads from one course onto another on the WGS-84 ellipsoid.

    The short way by the directions of the courses where they meet; its centre is at the radius from
    both.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of a point of the first course, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course1_deg : array_like, in degrees
        True course there, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of a point of the second course, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course2_deg : array_like, in degrees
        True course there, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    TangentTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `center_latitude_deg`: Latitude of the centre, in degrees.
        `center_longitude_deg`: Longitude of the centre, in degrees.
        `begin_latitude_deg`: Latitude where the turn leaves the first course, in degrees.
        `begin_longitude_deg`: Its longitude, in degrees.
        `end_latitude_deg`: Latitude where it joins the second course, in degrees.
        `end_longitude_deg`: Its longitude, in degrees.
        `begin_bearing_deg`: Bearing of its beginning from the centre, 0 to 360, in degrees.
        `end_bearing_deg`: Bearing of its end from the centre, 0 to 360, in degrees.
        `length_nm`: Length of the arc, in nautical miles.
        `side`: 1 for a turn to the right, -1 to the left.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, courses along one line, or courses that no such turn
        touches. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across the courses; the contacts are soft along them.

    Degenerate cases: The nearer of the two meetings of the courses says which way is short; it
    matters where the radius is large and the courses are all but reciprocal.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid. Checked against FAA Order 8260.54A (2007), Appendix 2 Attachment C.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.tangent_turn(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0).center_latitude_deg:.4f}"
    '41.4240'
    >>> [f"{value:.4f}" for value in lubberline.tangent_turn([40.1734722222, 40.1734722222], -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0).center_latitude_deg]
    ['41.4240', '41.4240']
    """
    if not kwargs:
        answer = _scalar_tangent_turn(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm)
        if answer is not None:
            return named(TangentTurn, answer)
    return TangentTurn._make(many("tangent_turn", TangentTurn._fields, (lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm), kwargs))


_scalar_tangent_turn = scalars["tangent_turn"]


def tangent_turn_between_legs(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm, **kwargs):
    r"""The turn of fixed radius between two legs on the WGS-84 ellipsoid: from a course that begins at a point onto one that ends at another.

    The turn of `tangent_turn`, if it begins on the first course after its point and ends on the
    second before its own.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the first leg's beginning, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of it, any finite number.
    course1_deg : array_like, in degrees
        True course there, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of the second leg's end, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of it, any finite number.
    course2_deg : array_like, in degrees
        True course there, any finite number.
    radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    TangentTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `center_latitude_deg`: Latitude of the centre, in degrees.
        `center_longitude_deg`: Longitude of the centre, in degrees.
        `begin_latitude_deg`: Latitude where the turn leaves the first course, in degrees.
        `begin_longitude_deg`: Its longitude, in degrees.
        `end_latitude_deg`: Latitude where it joins the second course, in degrees.
        `end_longitude_deg`: Its longitude, in degrees.
        `begin_bearing_deg`: Bearing of its beginning from the centre, 0 to 360, in degrees.
        `end_bearing_deg`: Bearing of its end from the centre, 0 to 360, in degrees.
        `length_nm`: Length of the arc, in nautical miles.
        `side`: 1 for a turn to the right, -1 to the left.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, courses along one line, or a turn that does not fit
        between the points. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: As `tangent_turn`. A millimetre past an end is let pass.

    Degenerate cases: A turn that ends at the second leg's end fits.

    Source: FAA Order 8260.54A (2007), Appendix 2 Attachment C, table of turns tangent to two
    courses: each of the 39 it answers fits so; for the three that would end past the second point
    (tests 6, 36 and 51) it prints N/A. That this is its reason is inferred.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.tangent_turn_between_legs(40.1734722222, -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0).end_latitude_deg:.4f}"
    '41.2853'
    >>> [f"{value:.4f}" for value in lubberline.tangent_turn_between_legs([40.1734722222, 40.1734722222], -70.2126666667, 90.0, 42.0766111111, -68.2096388889, 7.0, 75.0).end_latitude_deg]
    ['41.2853', '41.2853']
    """
    if not kwargs:
        answer = _scalar_tangent_turn_between_legs(lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm)
        if answer is not None:
            return named(TangentTurn, answer)
    return TangentTurn._make(many("tangent_turn_between_legs", TangentTurn._fields, (lat1_deg, lon1_deg, course1_deg, lat2_deg, lon2_deg, course2_deg, radius_nm), kwargs))


_scalar_tangent_turn_between_legs = scalars["tangent_turn_between_legs"]


def offset_tangent_turn(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, radius_nm, **kwargs):
    r"""The turn of fixed radius that leads from a line beside one course onto a line beside another, on the WGS-84 ellipsoid.

    The short way by the directions of the courses where they meet; its centre is at the radius from
    both lines.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of a point of the first course, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course1_deg : array_like, in degrees
        True course there, any finite number.
    offset1_nm : array_like, in nautical miles
        Distance of the line beside the first course, right positive, -5000 to 5000.
    lat2_deg : array_like, in degrees
        Latitude of a point of the second course, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of that point, any finite number.
    course2_deg : array_like, in degrees
        True course there, any finite number.
    offset2_nm : array_like, in nautical miles
        Distance of the line beside the second course, right positive, -5000 to 5000.
    radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    TangentTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `center_latitude_deg`: Latitude of the centre, in degrees.
        `center_longitude_deg`: Longitude of the centre, in degrees.
        `begin_latitude_deg`: Latitude where the turn leaves the first course, in degrees.
        `begin_longitude_deg`: Its longitude, in degrees.
        `end_latitude_deg`: Latitude where it joins the second course, in degrees.
        `end_longitude_deg`: Its longitude, in degrees.
        `begin_bearing_deg`: Bearing of its beginning from the centre, 0 to 360, in degrees.
        `end_bearing_deg`: Bearing of its end from the centre, 0 to 360, in degrees.
        `length_nm`: Length of the arc, in nautical miles.
        `side`: 1 for a turn to the right, -1 to the left.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, courses along one line, or lines that no such turn
        touches. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: A micrometre across the lines; the contacts are soft along them.

    Degenerate cases: With offsets of zero it is `tangent_turn`.

    Source: Geodesics by C. F. F. Karney, Journal of Geodesy 87 (2013) 43-55; the root is found on
    the ellipsoid.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.offset_tangent_turn(60.0, -10.0, 0.0, 2.0, 60.5, -10.0, 90.0, 2.0, 3.0).begin_latitude_deg:.3f}"
    '60.417'
    >>> [f"{value:.3f}" for value in lubberline.offset_tangent_turn([60.0, 60.0], -10.0, 0.0, 2.0, 60.5, -10.0, 90.0, 2.0, 3.0).begin_latitude_deg]
    ['60.417', '60.417']
    """
    if not kwargs:
        answer = _scalar_offset_tangent_turn(lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, radius_nm)
        if answer is not None:
            return named(TangentTurn, answer)
    return TangentTurn._make(many("offset_tangent_turn", TangentTurn._fields, (lat1_deg, lon1_deg, course1_deg, offset1_nm, lat2_deg, lon2_deg, course2_deg, offset2_nm, radius_nm), kwargs))


_scalar_offset_tangent_turn = scalars["offset_tangent_turn"]


def time_to_fly_s(distance_nm, groundspeed_kt, **kwargs):
    r"""The time that a distance takes at a groundspeed.

    `d/V`.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance along the surface, 0 to 10 900.
    groundspeed_kt : array_like, in knots
        Groundspeed, above 0 to 10 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in seconds
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: No distance takes no time.

    Source: The definition of speed.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.time_to_fly_s(55.0, 220.0):.1f}"
    '900.0'
    >>> [f"{value:.1f}" for value in lubberline.time_to_fly_s([55.0, 55.0], 220.0)]
    ['900.0', '900.0']
    """
    if not kwargs:
        answer = _scalar_time_to_fly_s(distance_nm, groundspeed_kt)
        if answer is not None:
            return answer
    return ufunc.time_to_fly_s(distance_nm, groundspeed_kt, **kwargs)


_scalar_time_to_fly_s = scalars["time_to_fly_s"]


def distance_flown_nm(groundspeed_kt, elapsed_s, **kwargs):
    r"""The distance flown in a time at a groundspeed.

    `V t`.

    Parameters
    ----------
    groundspeed_kt : array_like, in knots
        Groundspeed, 0 to 10 000.
    elapsed_s : array_like, in seconds
        Time flown, above 0 to 1 000 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a distance above 10 900 NM. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: None in the range.

    Source: The definition of speed.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.distance_flown_nm(220.0, 900.0):.1f}"
    '55.0'
    >>> [f"{value:.1f}" for value in lubberline.distance_flown_nm([220.0, 220.0], 900.0)]
    ['55.0', '55.0']
    """
    if not kwargs:
        answer = _scalar_distance_flown_nm(groundspeed_kt, elapsed_s)
        if answer is not None:
            return answer
    return ufunc.distance_flown_nm(groundspeed_kt, elapsed_s, **kwargs)


_scalar_distance_flown_nm = scalars["distance_flown_nm"]


def groundspeed_from_time_kt(distance_nm, elapsed_s, **kwargs):
    r"""The groundspeed that a distance flown in a time tells.

    `d/t`.

    Parameters
    ----------
    distance_nm : array_like, in nautical miles
        Distance along the surface, 0 to 10 900.
    elapsed_s : array_like, in seconds
        Time flown, above 0 to 1 000 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a groundspeed above 10 000 kt. In arrays such a
        point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: No distance is no speed.

    Source: The definition of speed.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.groundspeed_from_time_kt(55.0, 900.0):.1f}"
    '220.0'
    >>> [f"{value:.1f}" for value in lubberline.groundspeed_from_time_kt([55.0, 55.0], 900.0)]
    ['220.0', '220.0']
    """
    if not kwargs:
        answer = _scalar_groundspeed_from_time_kt(distance_nm, elapsed_s)
        if answer is not None:
            return answer
    return ufunc.groundspeed_from_time_kt(distance_nm, elapsed_s, **kwargs)


_scalar_groundspeed_from_time_kt = scalars["groundspeed_from_time_kt"]


def time_between_fixes_s(lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt, **kwargs):
    r"""The time between two fixes at a groundspeed, along the geodesic of the WGS-84 ellipsoid.

    The distance of `geodesic_inverse` over the groundspeed.

    Parameters
    ----------
    lat1_deg : array_like, in degrees
        Latitude of the first fix, -90 to 90.
    lon1_deg : array_like, in degrees
        Longitude of the first fix, any finite number.
    lat2_deg : array_like, in degrees
        Latitude of the second fix, -90 to 90.
    lon2_deg : array_like, in degrees
        Longitude of the second fix, any finite number.
    groundspeed_kt : array_like, in knots
        Groundspeed, above 0 to 10 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in seconds
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A latitude beyond a pole, an infinite number, or a groundspeed outside its
        range. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 15 nanometres of distance.

    Degenerate cases: Coincident fixes take no time.

    Source: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, doi
    10.1007/s00190-012-0578-z.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.time_between_fixes_s(51.0, 0.0, 52.0, 1.0, 420.0):.1f}"
    '607.0'
    >>> [f"{value:.1f}" for value in lubberline.time_between_fixes_s([51.0, 51.0], 0.0, 52.0, 1.0, 420.0)]
    ['607.0', '607.0']
    """
    if not kwargs:
        answer = _scalar_time_between_fixes_s(lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt)
        if answer is not None:
            return answer
    return ufunc.time_between_fixes_s(lat1_deg, lon1_deg, lat2_deg, lon2_deg, groundspeed_kt, **kwargs)


_scalar_time_between_fixes_s = scalars["time_between_fixes_s"]


class StationByBearingChange(NamedTuple):
    """Where a station is: what `station_by_bearing_change` gives."""

    distance_nm: object
    """Distance to the station at the second bearing."""
    time_s: object
    """Time to the station from there, at the same groundspeed."""
    distance_before_nm: object
    """Distance to the station at the first bearing."""


def station_by_bearing_change(elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg=90.0, **kwargs):
    r"""The distance and time to a station from the change of its bearing while a straight track is flown: exact.

    With the angle off the bow `b` at the first bearing and the change `c`: `V t sin(b)/sin(c)` at
    the second bearing and `V t sin(b + c)/sin(c)` at the first. Where the angle off the bow
    doubles, the time to the station is the time flown. The rule is `time_to_station_rule_s`.

    Parameters
    ----------
    elapsed_s : array_like, in seconds
        Time flown, above 0 to 1 000 000.
    bearing_change_deg : array_like, in degrees
        Change of the bearing, without its side, above 0 below 180.
    groundspeed_kt : array_like, in knots
        Groundspeed, above 0 to 10 000.
    angle_off_bow_deg : array_like, in degrees
        Between the track and the first bearing, without its side, above 0 below 180 (default 90.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    StationByBearingChange
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `distance_nm`: Distance to the station at the second bearing, in nautical miles.
        `time_s`: Time to the station from there, at the same groundspeed, in seconds.
        `distance_before_nm`: Distance to the station at the first bearing, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, two angles that sum to 180 degrees or more, or a
        distance above 10 900 NM. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding on a plane. The bearings govern: with a change of 10 degrees, half a degree
    of error is 5 percent.

    Degenerate cases: None in the range.

    Source: The law of sines.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.station_by_bearing_change(75.0, 10.0, 120.0, 90.0).distance_nm:.2f}"
    '14.40'
    >>> f"{lubberline.station_by_bearing_change(75.0, 10.0, 120.0, 90.0).time_s:.1f}"
    '431.9'
    >>> f"{lubberline.station_by_bearing_change(75.0, 10.0, 120.0, 90.0).distance_before_nm:.2f}"
    '14.18'
    >>> [f"{value:.2f}" for value in lubberline.station_by_bearing_change([75.0, 75.0], 10.0, 120.0, 90.0).distance_nm]
    ['14.40', '14.40']
    """
    if not kwargs:
        answer = _scalar_station_by_bearing_change(elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg)
        if answer is not None:
            return named(StationByBearingChange, answer)
    return StationByBearingChange._make(many("station_by_bearing_change", StationByBearingChange._fields, (elapsed_s, bearing_change_deg, groundspeed_kt, angle_off_bow_deg), kwargs))


_scalar_station_by_bearing_change = scalars["station_by_bearing_change"]


def time_to_station_rule_s(elapsed_s, bearing_change_deg, **kwargs):
    r"""The time to a station abeam by the rule: minutes are seconds flown over degrees of change.

    `60 t/c` with the change `c` in degrees. `station_by_bearing_change` is exact.

    Parameters
    ----------
    elapsed_s : array_like, in seconds
        Time flown, above 0 to 1 000 000.
    bearing_change_deg : array_like, in degrees
        Change of the bearing, without its side, above 0 below 180.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in seconds
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Too long by 4.6 percent at 5 degrees of change, 4.2 at 10 and 2.6 at 20; right at 30.

    Degenerate cases: None in the range.

    Source: FAA-H-8083-15, Instrument Flying Handbook, time and distance check, read in a quotation.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.time_to_station_rule_s(75.0, 10.0):.1f}"
    '450.0'
    >>> [f"{value:.1f}" for value in lubberline.time_to_station_rule_s([75.0, 75.0], 10.0)]
    ['450.0', '450.0']
    """
    if not kwargs:
        answer = _scalar_time_to_station_rule_s(elapsed_s, bearing_change_deg)
        if answer is not None:
            return answer
    return ufunc.time_to_station_rule_s(elapsed_s, bearing_change_deg, **kwargs)


_scalar_time_to_station_rule_s = scalars["time_to_station_rule_s"]


def total_temperature_degc(temperature_degc, mach, recovery_factor=1.0, **kwargs):
    r"""Total air temperature, which a probe in the stream feels, from static air temperature.

    `T (1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.

    Parameters
    ----------
    temperature_degc : array_like, in degrees Celsius
        Static air temperature, -200 to 200.
    mach : array_like
        Mach number, 0 to 10.
    recovery_factor : array_like
        Share of the heat of compression that the probe feels, 0 to 1 (default 1.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees Celsius
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding, for air of constant heat ratio: good to about Mach 3.

    Degenerate cases: At rest, or with a recovery factor of zero, the two are one.

    Source: NACA Report 1135 (1953), equation 43 (number from memory), for a ratio of specific heats
    of 1.4.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.total_temperature_degc(-54.0, 0.82, 1.0):.1f}"
    '-24.5'
    >>> [f"{value:.1f}" for value in lubberline.total_temperature_degc([-54.0, -54.0], 0.82, 1.0)]
    ['-24.5', '-24.5']
    """
    if not kwargs:
        answer = _scalar_total_temperature_degc(temperature_degc, mach, recovery_factor)
        if answer is not None:
            return answer
    return ufunc.total_temperature_degc(temperature_degc, mach, recovery_factor, **kwargs)


_scalar_total_temperature_degc = scalars["total_temperature_degc"]


def static_temperature_degc(total_temperature_degc, mach, recovery_factor=1.0, **kwargs):
    r"""Static air temperature from total air temperature: the inverse of `total_temperature_degc`.

    `Tt/(1 + 0.2 k M^2)` in kelvins, with the recovery factor `k` of the probe.

    Parameters
    ----------
    total_temperature_degc : array_like, in degrees Celsius
        Total air temperature, -270 to 10 000.
    mach : array_like
        Mach number, 0 to 10.
    recovery_factor : array_like
        Share of the heat of compression that the probe feels, 0 to 1 (default 1.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees Celsius
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a static temperature outside -200 to 200 degC. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding, for air of constant heat ratio: good to about Mach 3.

    Degenerate cases: At rest, or with a recovery factor of zero, the two are one.

    Source: As `total_temperature_degc`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.static_temperature_degc(-24.5, 0.82, 1.0):.1f}"
    '-54.0'
    >>> [f"{value:.1f}" for value in lubberline.static_temperature_degc([-24.5, -24.5], 0.82, 1.0)]
    ['-54.0', '-54.0']
    """
    if not kwargs:
        answer = _scalar_static_temperature_degc(total_temperature_degc, mach, recovery_factor)
        if answer is not None:
            return answer
    return ufunc.static_temperature_degc(total_temperature_degc, mach, recovery_factor, **kwargs)


_scalar_static_temperature_degc = scalars["static_temperature_degc"]


def transition_level_ft(transition_altitude_ft, altimeter_setting_hpa, least_layer_ft=0.0, step_ft=500.0, **kwargs):
    r"""The transition level as a pressure altitude: the lowest flight level far enough above the transition altitude.

    The lowest multiple of the step at or above the transition altitude plus the least layer, both
    measured with the setting. The lowest usable flight levels of the United States are this from 18
    000 ft: 14 CFR 91.121 (2014) in steps of 500 ft, the AIM of 2023, TBL 7-2-1, in steps of 1000
    ft.

    Parameters
    ----------
    transition_altitude_ft : array_like, in feet
        Transition altitude, -50 000 to 300 000.
    altimeter_setting_hpa : array_like, in hectopascals
        What the altimeter is set to, 400 to 1200.
    least_layer_ft : array_like, in feet
        Least height of the transition layer, 0 to 10 000 (default 0.0).
    step_ft : array_like, in feet
        Flight levels are multiples of this, 100 to 10 000 (default 500.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a level beyond the range of pressure altitudes.
        In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Exact. A setting of 29.92 inches is 1.3 ft short of standard, which costs a level
    where the two should coincide: give 1013.25.

    Degenerate cases: None in the range.

    Source: ICAO Doc 8168 (PANS-OPS) volume I, Part III, and Doc 4444, from memory; states set the
    layer and the step.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.transition_level_ft(5000.0, 1003.0, 0.0, 500.0):.0f}"
    '5500'
    >>> f"{lubberline.transition_level_ft(18000.0, 998.0, 0.0, 500.0):.0f}"
    '18500'
    >>> [f"{value:.0f}" for value in lubberline.transition_level_ft([5000.0, 5000.0], 1003.0, 0.0, 500.0)]
    ['5500', '5500']
    """
    if not kwargs:
        answer = _scalar_transition_level_ft(transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft)
        if answer is not None:
            return answer
    return ufunc.transition_level_ft(transition_altitude_ft, altimeter_setting_hpa, least_layer_ft, step_ft, **kwargs)


_scalar_transition_level_ft = scalars["transition_level_ft"]


def true_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa=1013.25, elevation_ft=0.0, isa_deviation_k=0.0, **kwargs):
    r"""True altitude from pressure altitude, a station's altimeter setting and the ISA deviation.

    From the station up the air is `Hp - Hs + D (R/g) ln(ps/p)` thick, with the ISA deviation `D`
    the same all the way: hydrostatic balance, exact through the layers. Geopotential is turned into
    geometric height.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    altimeter_setting_hpa : array_like, in hectopascals
        The station's altimeter setting, 400 to 1200 (default 1013.25).
    elevation_ft : array_like, in feet
        Elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0).
    isa_deviation_k : array_like, in kelvins
        The air from the station up is warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding for such a column; 5 K of error in its mean temperature are 2 percent of the
    height.

    Degenerate cases: At the station's own pressure the answer is its elevation, whatever the
    temperature.

    Source: Hydrostatic balance with the layers of ICAO Doc 7488/3 (3rd edition 1993).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.true_altitude_ft(10000.0, 1013.25, 0.0, -20.0):.0f}"
    '9285'
    >>> f"{lubberline.true_altitude_ft(10000.0, 995.0, 2000.0, 15.0):.0f}"
    '9910'
    >>> [f"{value:.0f}" for value in lubberline.true_altitude_ft([10000.0, 10000.0], 1013.25, 0.0, -20.0)]
    ['9285', '9285']
    """
    if not kwargs:
        answer = _scalar_true_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.true_altitude_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k, **kwargs)


_scalar_true_altitude_ft = scalars["true_altitude_ft"]


def height_above_station_ft(pressure_altitude_ft, altimeter_setting_hpa=1013.25, elevation_ft=0.0, isa_deviation_k=0.0, **kwargs):
    r"""Height above a station from pressure altitude, the station's altimeter setting and the ISA deviation.

    `true_altitude_ft` less the elevation: the height that slant range asks for.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Pressure altitude, -16 420 to 262 467.2.
    altimeter_setting_hpa : array_like, in hectopascals
        The station's altimeter setting, 400 to 1200 (default 1013.25).
    elevation_ft : array_like, in feet
        Elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0).
    isa_deviation_k : array_like, in kelvins
        The air from the station up is warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As `true_altitude_ft`.

    Degenerate cases: Zero at the station's own pressure.

    Source: As `true_altitude_ft`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.height_above_station_ft(10000.0, 995.0, 2000.0, 15.0):.0f}"
    '7910'
    >>> [f"{value:.0f}" for value in lubberline.height_above_station_ft([10000.0, 10000.0], 995.0, 2000.0, 15.0)]
    ['7910', '7910']
    """
    if not kwargs:
        answer = _scalar_height_above_station_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.height_above_station_ft(pressure_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k, **kwargs)


_scalar_height_above_station_ft = scalars["height_above_station_ft"]


def pressure_altitude_at_true_altitude_ft(true_altitude_ft, altimeter_setting_hpa=1013.25, elevation_ft=0.0, isa_deviation_k=0.0, **kwargs):
    r"""Pressure altitude at a true altitude: the inverse of `true_altitude_ft`.

    By Newton's method on the thickness of the column.

    Parameters
    ----------
    true_altitude_ft : array_like, in feet
        Altitude above mean sea level, -16 500 to 400 000.
    altimeter_setting_hpa : array_like, in hectopascals
        The station's altimeter setting, 400 to 1200 (default 1013.25).
    elevation_ft : array_like, in feet
        Elevation of the station that gives the setting, -16 500 to 60 000 (default 0.0).
    isa_deviation_k : array_like, in kelvins
        The air from the station up is warmer than standard by this, -150 to 150 (default 0.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in feet
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a pressure altitude outside -5 to 80 km. In
        arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: 1e-8 ft.

    Degenerate cases: At the elevation it is the station's own pressure altitude, whatever the
    temperature.

    Source: As `true_altitude_ft`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.pressure_altitude_at_true_altitude_ft(10000.0, 1013.25, 0.0, -20.0):.0f}"
    '10772'
    >>> [f"{value:.0f}" for value in lubberline.pressure_altitude_at_true_altitude_ft([10000.0, 10000.0], 1013.25, 0.0, -20.0)]
    ['10772', '10772']
    """
    if not kwargs:
        answer = _scalar_pressure_altitude_at_true_altitude_ft(true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k)
        if answer is not None:
            return answer
    return ufunc.pressure_altitude_at_true_altitude_ft(true_altitude_ft, altimeter_setting_hpa, elevation_ft, isa_deviation_k, **kwargs)


_scalar_pressure_altitude_at_true_altitude_ft = scalars["pressure_altitude_at_true_altitude_ft"]


def turn_radius_nm(true_airspeed_kt, bank_deg, **kwargs):
    r"""Radius of a level turn in still air.

    `V^2 / (g tan(bank))` with standard gravity.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    bank_deg : array_like, in degrees
        Angle of bank, above 0 below 90.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error, in arrays 2e-15 of the radius over the cosine of the bank; standard
    gravity stands for the local one, which differs by up to 0.3 percent at the surface.

    Degenerate cases: Infinite at a bank whose tangent is less than any number.

    Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2
    Chapter 3.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.turn_radius_nm(450.0, 25.0):.2f}"
    '6.33'
    >>> [f"{value:.2f}" for value in lubberline.turn_radius_nm([450.0, 450.0], 25.0)]
    ['6.33', '6.33']
    """
    if not kwargs:
        answer = _scalar_turn_radius_nm(true_airspeed_kt, bank_deg)
        if answer is not None:
            return answer
    return ufunc.turn_radius_nm(true_airspeed_kt, bank_deg, **kwargs)


_scalar_turn_radius_nm = scalars["turn_radius_nm"]


def turn_rate_deg_per_s(true_airspeed_kt, bank_deg, **kwargs):
    r"""Rate of a level turn.

    `g tan(bank) / V` with standard gravity.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    bank_deg : array_like, in degrees
        Angle of bank, above 0 below 90.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees per second
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: None in the range.

    Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2
    Chapter 3.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.turn_rate_deg_per_s(120.0, 30.0):.2f}"
    '5.25'
    >>> [f"{value:.2f}" for value in lubberline.turn_rate_deg_per_s([120.0, 120.0], 30.0)]
    ['5.25', '5.25']
    """
    if not kwargs:
        answer = _scalar_turn_rate_deg_per_s(true_airspeed_kt, bank_deg)
        if answer is not None:
            return answer
    return ufunc.turn_rate_deg_per_s(true_airspeed_kt, bank_deg, **kwargs)


_scalar_turn_rate_deg_per_s = scalars["turn_rate_deg_per_s"]


def bank_for_rate_deg(true_airspeed_kt, turn_rate_deg_per_s=3.0, **kwargs):
    r"""The bank that turns at a rate.

    `atan(rate V / g)` with standard gravity.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    turn_rate_deg_per_s : array_like, in degrees per second
        Rate of turn, above 0 (default 3.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a bank of 90 degrees. In arrays such a point is
        NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: A rate that needs a bank of 90 degrees is refused.

    Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2
    Chapter 3.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.bank_for_rate_deg(180.0, 3.0):.2f}"
    '26.31'
    >>> [f"{value:.2f}" for value in lubberline.bank_for_rate_deg([180.0, 180.0], 3.0)]
    ['26.31', '26.31']
    """
    if not kwargs:
        answer = _scalar_bank_for_rate_deg(true_airspeed_kt, turn_rate_deg_per_s)
        if answer is not None:
            return answer
    return ufunc.bank_for_rate_deg(true_airspeed_kt, turn_rate_deg_per_s, **kwargs)


_scalar_bank_for_rate_deg = scalars["bank_for_rate_deg"]


def bank_for_radius_deg(true_airspeed_kt, turn_radius_nm, **kwargs):
    r"""The bank that turns on a radius in still air.

    `atan(V^2 / (g r))` with standard gravity.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    turn_radius_nm : array_like, in nautical miles
        Radius of the turn, above 0 to 5000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: A radius that needs a bank of 90 degrees to rounding is refused.

    Source: Equilibrium in a coordinated turn; ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2
    Chapter 3.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.bank_for_radius_deg(450.0, 6.33):.1f}"
    '25.0'
    >>> [f"{value:.1f}" for value in lubberline.bank_for_radius_deg([450.0, 450.0], 6.33)]
    ['25.0', '25.0']
    """
    if not kwargs:
        answer = _scalar_bank_for_radius_deg(true_airspeed_kt, turn_radius_nm)
        if answer is not None:
            return answer
    return ufunc.bank_for_radius_deg(true_airspeed_kt, turn_radius_nm, **kwargs)


_scalar_bank_for_radius_deg = scalars["bank_for_radius_deg"]


def radius_at_rate_nm(true_airspeed_kt, turn_rate_deg_per_s=3.0, **kwargs):
    r"""Radius of a turn at a rate in still air, whatever bank it takes.

    `V / rate`; at standard rate `V / (60 pi)` nautical miles with V in knots.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    turn_rate_deg_per_s : array_like, in degrees per second
        Rate of turn, above 0 (default 3.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: An infinite rate gives a radius of zero.

    Source: The definition of angular velocity.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.radius_at_rate_nm(180.0, 3.0):.3f}"
    '0.955'
    >>> [f"{value:.3f}" for value in lubberline.radius_at_rate_nm([180.0, 180.0], 3.0)]
    ['0.955', '0.955']
    """
    if not kwargs:
        answer = _scalar_radius_at_rate_nm(true_airspeed_kt, turn_rate_deg_per_s)
        if answer is not None:
            return answer
    return ufunc.radius_at_rate_nm(true_airspeed_kt, turn_rate_deg_per_s, **kwargs)


_scalar_radius_at_rate_nm = scalars["radius_at_rate_nm"]


def load_factor(bank_deg, **kwargs):
    r"""Load factor of a level turn.

    `1 / cos(bank)`.

    Parameters
    ----------
    bank_deg : array_like, in degrees
        Angle of bank, above 0 below 90.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: None in the range.

    Source: Equilibrium of lift and weight.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.load_factor(60.0):.3f}"
    '2.000'
    >>> [f"{value:.3f}" for value in lubberline.load_factor([60.0, 60.0])]
    ['2.000', '2.000']
    """
    if not kwargs:
        answer = _scalar_load_factor(bank_deg)
        if answer is not None:
            return answer
    return ufunc.load_factor(bank_deg, **kwargs)


_scalar_load_factor = scalars["load_factor"]


def bank_for_load_factor_deg(load_factor, **kwargs):
    r"""The bank of a level turn at a load factor.

    `acos(1 / n)`.

    Parameters
    ----------
    load_factor : array_like
        Lift over weight, above 1 to 100.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error, near a load factor of 1 too.

    Degenerate cases: None in the range.

    Source: Equilibrium of lift and weight.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.bank_for_load_factor_deg(1.3):.2f}"
    '39.72'
    >>> [f"{value:.2f}" for value in lubberline.bank_for_load_factor_deg([1.3, 1.3])]
    ['39.72', '39.72']
    """
    if not kwargs:
        answer = _scalar_bank_for_load_factor_deg(load_factor)
        if answer is not None:
            return answer
    return ufunc.bank_for_load_factor_deg(load_factor, **kwargs)


_scalar_bank_for_load_factor_deg = scalars["bank_for_load_factor_deg"]


class LimitedTurn(NamedTuple):
    """The turn that the limits leave: what `limited_turn` gives."""

    bank_deg: object
    """The bank that is flown."""
    turn_rate_deg_per_s: object
    """The rate of turn at it."""
    radius_nm: object
    """The radius in still air."""
    governed_by: object
    """What governs the bank: 0 the bank limit, 1 the limit of the rate of turn."""


def limited_turn(true_airspeed_kt, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, **kwargs):
    r"""The steady turn an aircraft makes within a bank limit and a limit of its rate of turn, and which of them governs.

    The bank is the lesser of the limit and `atan(rate V / g)`: rate-limited at low speed,
    bank-limited above `g tan(bank) / rate`.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    LimitedTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `bank_deg`: The bank that is flown, in degrees.
        `turn_rate_deg_per_s`: The rate of turn at it, in degrees per second.
        `radius_nm`: The radius in still air, in nautical miles.
        `governed_by`: What governs the bank: 0 the bank limit, 1 the limit of the rate of turn.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error.

    Degenerate cases: Where both limits ask for the same bank, the bank limit is named.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part I Section 2 Chapter 3 and Table I-4-3-App C-1
    (25 degrees, at most 3 deg/s).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.limited_turn(157.23, 25.0, 3.0).radius_nm:.2f}"
    '0.83'
    >>> f"{lubberline.limited_turn(450.0, 25.0, 3.0).bank_deg:.1f}"
    '25.0'
    >>> [f"{value:.2f}" for value in lubberline.limited_turn([157.23, 157.23], 25.0, 3.0).radius_nm]
    ['0.83', '0.83']
    """
    if not kwargs:
        answer = _scalar_limited_turn(true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s)
        if answer is not None:
            return named(LimitedTurn, answer)
    return LimitedTurn._make(many("limited_turn", LimitedTurn._fields, (true_airspeed_kt, bank_limit_deg, turn_rate_limit_deg_per_s), kwargs))


_scalar_limited_turn = scalars["limited_turn"]


class RolledTurn(NamedTuple):
    """A turn flown with its roll: what `rolled_turn` gives."""

    bank_deg: object
    """The greatest bank."""
    duration_s: object
    """From the first roll to wings level."""
    roll_duration_s: object
    """The duration of one roll, in or out."""
    advance_nm: object
    """Distance made good through the air along the first heading."""
    transfer_nm: object
    """Distance made good through the air across the first heading, right positive."""
    governed_by: object
    """What governs the bank: 0 the bank limit, 1 the limit of the rate of turn, 2 the roll, 3 no turn."""


def rolled_turn(true_airspeed_kt, heading_change_deg, bank_limit_deg=25.0, turn_rate_limit_deg_per_s=3.0, roll_rate_deg_per_s=5.0, **kwargs):
    r"""A level turn with its roll: bank growing at the roll rate to its target, held, and taken off again.

    Heading turned while rolling to bank b at rate p: `-(g / (V p)) ln(cos(b))`; the path is
    integrated over it.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    heading_change_deg : array_like, in degrees
        Change of heading, right positive, -360 to 360.
    bank_limit_deg : array_like, in degrees
        Greatest bank, above 0 below 90 (default 25.0).
    turn_rate_limit_deg_per_s : array_like, in degrees per second
        Greatest rate of turn, above 0 (default 3.0).
    roll_rate_deg_per_s : array_like, in degrees per second
        Rate of roll, above 0, infinite for an instant roll (default 5.0).
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    RolledTurn
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `bank_deg`: The greatest bank, in degrees.
        `duration_s`: From the first roll to wings level, in seconds.
        `roll_duration_s`: The duration of one roll, in or out, in seconds.
        `advance_nm`: Distance made good through the air along the first heading, in nautical miles.
        `transfer_nm`: Distance made good through the air across the first heading, right positive,
        in nautical miles.
        `governed_by`: What governs the bank: 0 the bank limit, 1 the limit of the rate of turn, 2
        the roll, 3 no turn.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: 1e-10 of the size of the turn against a fine integration in time.

    Degenerate cases: A change of zero takes no time and no distance.

    Source: Equilibrium in a coordinated level turn; derived.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.rolled_turn(450.0, 90.0, 25.0, 3.0, 5.0).duration_s:.1f}"
    '84.7'
    >>> f"{lubberline.rolled_turn(450.0, 90.0, 25.0, 3.0, float('inf')).advance_nm:.2f}"
    '6.33'
    >>> [f"{value:.1f}" for value in lubberline.rolled_turn([450.0, 450.0], 90.0, 25.0, 3.0, 5.0).duration_s]
    ['84.7', '84.7']
    """
    if not kwargs:
        answer = _scalar_rolled_turn(true_airspeed_kt, heading_change_deg, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
        if answer is not None:
            return named(RolledTurn, answer)
    return RolledTurn._make(many("rolled_turn", RolledTurn._fields, (true_airspeed_kt, heading_change_deg, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s), kwargs))


_scalar_rolled_turn = scalars["rolled_turn"]


def icao_wind_kt(altitude_ft, units, **kwargs):
    r"""The wind from all sides that procedure design assumes at an altitude.

    `2 h + 47` kt with h in thousands of feet; `12 h + 87` km/h with h in kilometres.

    Parameters
    ----------
    altitude_ft : array_like, in feet
        Altitude, -2000 to 50 000.
    units : {"non_si", "si"}
        In which units the formula is printed.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in knots
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published. The two forms differ by up to 2.4 percent.

    Degenerate cases: None in the range.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-2-3-1, ICAO standard wind.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.icao_wind_kt(6000.0, 'non_si'):.0f}"
    '59'
    >>> [f"{value:.0f}" for value in lubberline.icao_wind_kt([6000.0, 6000.0], 'non_si')]
    ['59', '59']
    """
    units = chosen(_DESIGN_UNITS, "units", units)
    if not kwargs:
        answer = _scalar_icao_wind_kt(altitude_ft, units)
        if answer is not None:
            return answer
    return ufunc.icao_wind_kt(altitude_ft, units, **kwargs)


_scalar_icao_wind_kt = scalars["icao_wind_kt"]


def turn_wind_effect_nm(angle_deg, turn_rate_deg_per_s, wind_speed_kt, **kwargs):
    r"""How far a wind carries an aircraft while it turns through an angle.

    `(angle / rate) wind`.

    Parameters
    ----------
    angle_deg : array_like, in degrees
        Angle turned through, either way, -360 to 360.
    turn_rate_deg_per_s : array_like, in degrees per second
        Rate of the turn, above 0.
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding error, for an instant roll.

    Degenerate cases: An infinite rate leaves no time to be carried.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 8 and 16 to 19.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.turn_wind_effect_nm(190.0, 3.0, 59.0):.2f}"
    '1.04'
    >>> [f"{value:.2f}" for value in lubberline.turn_wind_effect_nm([190.0, 190.0], 3.0, 59.0)]
    ['1.04', '1.04']
    """
    if not kwargs:
        answer = _scalar_turn_wind_effect_nm(angle_deg, turn_rate_deg_per_s, wind_speed_kt)
        if answer is not None:
            return answer
    return ufunc.turn_wind_effect_nm(angle_deg, turn_rate_deg_per_s, wind_speed_kt, **kwargs)


_scalar_turn_wind_effect_nm = scalars["turn_wind_effect_nm"]


class BaseTurnTemplate(NamedTuple):
    """The distances of the template of a base turn: what `base_turn_template` gives."""

    leg_nm: object
    """Length of the outbound leg in still air."""
    nearest_nm: object
    """Nearest place of the outbound leg's end, from the fix."""
    farthest_nm: object
    """Farthest place of the outbound leg's end, from the fix."""


def base_turn_template(true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm, **kwargs):
    r"""The distances of the template of a base turn in procedure design.

    `V T`, `(T - 5 s)(V - w) - z` and `(T + 21 s)(V + w) + z`.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    outbound_time_s : array_like, in seconds
        Time outbound, 0 to 3600.
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000.
    fix_tolerance_nm : array_like, in nautical miles
        Tolerance of the fix along the track, 0 to 10 900.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    BaseTurnTemplate
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `leg_nm`: Length of the outbound leg in still air, in nautical miles.
        `nearest_nm`: Nearest place of the outbound leg's end, from the fix, in nautical miles.
        `farthest_nm`: Farthest place of the outbound leg's end, from the fix, in nautical miles.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published; the tables printed beside it round speeds and winds to four figures
    before.

    Degenerate cases: A short time and a strong wind make the nearest place negative: past the fix.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Table I-4-3-App C-1, lines 10 to 15.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.base_turn_template(157.23, 120.0, 59.0, 0.83).nearest_nm:.2f}"
    '2.31'
    >>> f"{lubberline.base_turn_template(157.23, 120.0, 59.0, 0.83).farthest_nm:.2f}"
    '9.30'
    >>> [f"{value:.2f}" for value in lubberline.base_turn_template([157.23, 157.23], 120.0, 59.0, 0.83).nearest_nm]
    ['2.31', '2.31']
    """
    if not kwargs:
        answer = _scalar_base_turn_template(true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm)
        if answer is not None:
            return named(BaseTurnTemplate, answer)
    return BaseTurnTemplate._make(many("base_turn_template", BaseTurnTemplate._fields, (true_airspeed_kt, outbound_time_s, wind_speed_kt, fix_tolerance_nm), kwargs))


_scalar_base_turn_template = scalars["base_turn_template"]


def base_turn_sector_nm(true_airspeed_kt, outbound_time_s, units, **kwargs):
    r"""The radius of the sector that protects a base turn flown without a drawn area.

    `(V / 60 + 1.0) T + 1.5` NM; `(V / 60 + 1.9) T + 2.8` km with V in km/h.

    Parameters
    ----------
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    outbound_time_s : array_like, in seconds
        Time outbound, above 0 to 1 000 000.
    units : {"non_si", "si"}
        In which units the formula is printed.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in nautical miles
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: As published: the second form has the constants of the first, rounded after
    conversion.

    Degenerate cases: None in the range.

    Source: ICAO Doc 8168 Vol II (5th ed. 2006), Part II Section 2 Chapter 5, 5.3; a margin of 2.0
    NM is added on all sides there.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.base_turn_sector_nm(180.0, 120.0, 'non_si'):.1f}"
    '9.5'
    >>> [f"{value:.1f}" for value in lubberline.base_turn_sector_nm([180.0, 180.0], 120.0, 'non_si')]
    ['9.5', '9.5']
    """
    units = chosen(_DESIGN_UNITS, "units", units)
    if not kwargs:
        answer = _scalar_base_turn_sector_nm(true_airspeed_kt, outbound_time_s, units)
        if answer is not None:
            return answer
    return ufunc.base_turn_sector_nm(true_airspeed_kt, outbound_time_s, units, **kwargs)


_scalar_base_turn_sector_nm = scalars["base_turn_sector_nm"]


class WindTriangle(NamedTuple):
    """How to hold a course: what `wind_triangle` gives."""

    heading_deg: object
    """The heading to fly, 0 to 360, from the north of the course."""
    groundspeed_kt: object
    """The speed made good along the course."""


def wind_triangle(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, **kwargs):
    r"""The heading that holds a course in a wind, and the groundspeed it leaves.

    With `w` the angle from the course to where the wind comes from: wind correction `asin(Vw
    sin(w)/V)`, groundspeed `V cos(correction) - Vw cos(w)`. All directions share one north.

    Parameters
    ----------
    course_deg : array_like, in degrees
        The course to hold, any finite number.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, any finite number.
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    WindTriangle
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `heading_deg`: The heading to fly, 0 to 360, from the north of the course, in degrees.
        `groundspeed_kt`: The speed made good along the course, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, a crosswind above the airspeed, or no groundspeed
        left. In arrays such a point is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding; in arrays 1e-12 degrees, times the wind's speed over the airspeed where that
    is more, and 1e-14 of the speeds.

    Degenerate cases: In calm air the heading is the course. A wind faster than the aircraft leaves
    courses downwind that can be held; of the two headings that hold such a course the one with the
    higher groundspeed is given.

    Source: The triangle of velocities; FAA-H-8083-25, Pilot's Handbook of Aeronautical Knowledge,
    chapter 16 (from memory).

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.wind_triangle(90.0, 120.0, 45.0, 40.0).heading_deg:.1f}"
    '76.4'
    >>> f"{lubberline.wind_triangle(90.0, 120.0, 45.0, 40.0).groundspeed_kt:.1f}"
    '88.3'
    >>> [f"{value:.1f}" for value in lubberline.wind_triangle([90.0, 90.0], 120.0, 45.0, 40.0).heading_deg]
    ['76.4', '76.4']
    """
    if not kwargs:
        answer = _scalar_wind_triangle(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(WindTriangle, answer)
    return WindTriangle._make(many("wind_triangle", WindTriangle._fields, (course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_wind_triangle = scalars["wind_triangle"]


def wind_correction_deg(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, **kwargs):
    r"""The wind correction that holds a course: heading less course, right positive.

    `asin(Vw sin(w)/V)` with `w` the angle from the course to where the wind comes from.

    Parameters
    ----------
    course_deg : array_like, in degrees
        The course to hold, any finite number.
    true_airspeed_kt : array_like, in knots
        True airspeed, above 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, any finite number.
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    float or numpy.ndarray, in degrees
        A float if every argument is a plain number.

    Raises
    ------
    NavigationError
        For numbers: As `wind_triangle`. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: As `wind_triangle`.

    Source: As `wind_triangle`.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.wind_correction_deg(90.0, 120.0, 45.0, 40.0):.1f}"
    '-13.6'
    >>> [f"{value:.1f}" for value in lubberline.wind_correction_deg([90.0, 90.0], 120.0, 45.0, 40.0)]
    ['-13.6', '-13.6']
    """
    if not kwargs:
        answer = _scalar_wind_correction_deg(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return answer
    return ufunc.wind_correction_deg(course_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, **kwargs)


_scalar_wind_correction_deg = scalars["wind_correction_deg"]


class TrackAndGroundspeed(NamedTuple):
    """What a heading makes good: what `track_and_groundspeed` gives."""

    track_deg: object
    """Direction of motion over the ground, 0 to 360; NaN where there is no motion."""
    groundspeed_kt: object
    """Speed over the ground."""
    drift_deg: object
    """Track less heading, right positive, -180 to 180; NaN where there is no motion."""


def track_and_groundspeed(heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt, **kwargs):
    r"""The track and groundspeed that a heading makes good in a wind.

    The sum of the velocity through the air and the velocity of the air. All directions share one
    north.

    Parameters
    ----------
    heading_deg : array_like, in degrees
        The heading, any finite number.
    true_airspeed_kt : array_like, in knots
        True airspeed, 0 to 5000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, any finite number.
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    TrackAndGroundspeed
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `track_deg`: Direction of motion over the ground, 0 to 360; NaN where there is no motion, in
        degrees.
        `groundspeed_kt`: Speed over the ground, in knots.
        `drift_deg`: Track less heading, right positive, -180 to 180; NaN where there is no motion,
        in degrees.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Where the wind cancels the airspeed there is no track and no drift (NaN). With
    no airspeed the track is downwind.

    Source: The triangle of velocities.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.track_and_groundspeed(315.0, 150.0, 45.0, 30.0).track_deg:.1f}"
    '303.7'
    >>> f"{lubberline.track_and_groundspeed(315.0, 150.0, 45.0, 30.0).groundspeed_kt:.1f}"
    '153.0'
    >>> f"{lubberline.track_and_groundspeed(315.0, 150.0, 45.0, 30.0).drift_deg:.1f}"
    '-11.3'
    >>> [f"{value:.1f}" for value in lubberline.track_and_groundspeed([315.0, 315.0], 150.0, 45.0, 30.0).track_deg]
    ['303.7', '303.7']
    """
    if not kwargs:
        answer = _scalar_track_and_groundspeed(heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(TrackAndGroundspeed, answer)
    return TrackAndGroundspeed._make(many("track_and_groundspeed", TrackAndGroundspeed._fields, (heading_deg, true_airspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_track_and_groundspeed = scalars["track_and_groundspeed"]


class WindFromTrack(NamedTuple):
    """An observed wind: what `wind_from_track` gives."""

    wind_from_deg: object
    """Where the wind blows from, 0 to 360; 0 in calm air."""
    wind_speed_kt: object
    """Speed of the wind."""


def wind_from_track(heading_deg, true_airspeed_kt, track_deg, groundspeed_kt, **kwargs):
    r"""The wind that an observed track and groundspeed tell, with the heading and true airspeed flown.

    The velocity over the ground less the velocity through the air. All directions share one north.

    Parameters
    ----------
    heading_deg : array_like, in degrees
        The heading, any finite number.
    true_airspeed_kt : array_like, in knots
        True airspeed, 0 to 5000.
    track_deg : array_like, in degrees
        The track made good, any finite number.
    groundspeed_kt : array_like, in knots
        The groundspeed, 0 to 10 000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    WindFromTrack
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `wind_from_deg`: Where the wind blows from, 0 to 360; 0 in calm air, in degrees.
        `wind_speed_kt`: Speed of the wind, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a wind above 1000 kt. In arrays such a point is
        NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding; what matters is the observation. One degree of drift at 450 kt is 8 kt of
    wind across.

    Degenerate cases: Calm air is 0 kt from 0 degrees, as it is reported.

    Source: The triangle of velocities.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.wind_from_track(104.0, 165.0, 94.0, 146.0).wind_from_deg:.1f}"
    '154.1'
    >>> f"{lubberline.wind_from_track(104.0, 165.0, 94.0, 146.0).wind_speed_kt:.1f}"
    '33.1'
    >>> [f"{value:.1f}" for value in lubberline.wind_from_track([104.0, 104.0], 165.0, 94.0, 146.0).wind_from_deg]
    ['154.1', '154.1']
    """
    if not kwargs:
        answer = _scalar_wind_from_track(heading_deg, true_airspeed_kt, track_deg, groundspeed_kt)
        if answer is not None:
            return named(WindFromTrack, answer)
    return WindFromTrack._make(many("wind_from_track", WindFromTrack._fields, (heading_deg, true_airspeed_kt, track_deg, groundspeed_kt), kwargs))


_scalar_wind_from_track = scalars["wind_from_track"]


class WindComponents(NamedTuple):
    """A wind along and across a course: what `wind_components` gives."""

    headwind_kt: object
    """Against the course; a tailwind is negative."""
    crosswind_kt: object
    """From the right of the course; from the left is negative."""


def wind_components(course_deg, wind_from_deg, wind_speed_kt, **kwargs):
    r"""A wind split into its parts along and across a course, positive from ahead and from the right.

    `Vw cos(w)` and `Vw sin(w)` with `w` the angle from the course to where the wind comes from. A
    positive crosswind asks for a correction to the right.

    Parameters
    ----------
    course_deg : array_like, in degrees
        The course, any finite number.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, any finite number.
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    WindComponents
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `headwind_kt`: Against the course; a tailwind is negative, in knots.
        `crosswind_kt`: From the right of the course; from the left is negative, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Calm air has two parts of zero.

    Source: The two projections of a vector.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.wind_components(90.0, 120.0, 20.0).headwind_kt:.1f}"
    '17.3'
    >>> f"{lubberline.wind_components(90.0, 120.0, 20.0).crosswind_kt:.1f}"
    '10.0'
    >>> [f"{value:.1f}" for value in lubberline.wind_components([90.0, 90.0], 120.0, 20.0).headwind_kt]
    ['17.3', '17.3']
    """
    if not kwargs:
        answer = _scalar_wind_components(course_deg, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(WindComponents, answer)
    return WindComponents._make(many("wind_components", WindComponents._fields, (course_deg, wind_from_deg, wind_speed_kt), kwargs))


_scalar_wind_components = scalars["wind_components"]


class WindFromComponents(NamedTuple):
    """A wind put together from its parts: what `wind_from_components` gives."""

    wind_from_deg: object
    """Where the wind blows from, 0 to 360; 0 in calm air."""
    wind_speed_kt: object
    """Speed of the wind."""


def wind_from_components(course_deg, headwind_kt, crosswind_kt, **kwargs):
    r"""The wind whose parts along and across a course are given: the inverse of `wind_components`.

    Direction `course + atan2(crosswind, headwind)`, speed the root of the sum of the squares.

    Parameters
    ----------
    course_deg : array_like, in degrees
        The course, any finite number.
    headwind_kt : array_like, in knots
        Part against the course, -1000 to 1000.
    crosswind_kt : array_like, in knots
        Part from the right of the course, -1000 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    WindFromComponents
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `wind_from_deg`: Where the wind blows from, 0 to 360; 0 in calm air, in degrees.
        `wind_speed_kt`: Speed of the wind, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a wind above 1000 kt. In arrays such a point is
        NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: Two parts of zero are calm air: 0 kt from 0 degrees.

    Source: The two projections of a vector.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.wind_from_components(90.0, 17.32, 10.0).wind_from_deg:.1f}"
    '120.0'
    >>> f"{lubberline.wind_from_components(90.0, 17.32, 10.0).wind_speed_kt:.1f}"
    '20.0'
    >>> [f"{value:.1f}" for value in lubberline.wind_from_components([90.0, 90.0], 17.32, 10.0).wind_from_deg]
    ['120.0', '120.0']
    """
    if not kwargs:
        answer = _scalar_wind_from_components(course_deg, headwind_kt, crosswind_kt)
        if answer is not None:
            return named(WindFromComponents, answer)
    return WindFromComponents._make(many("wind_from_components", WindFromComponents._fields, (course_deg, headwind_kt, crosswind_kt), kwargs))


_scalar_wind_from_components = scalars["wind_from_components"]


class AirspeedForGroundspeed(NamedTuple):
    """How to be on time: what `airspeed_for_groundspeed` gives."""

    heading_deg: object
    """The heading to fly, 0 to 360, from the north of the course."""
    true_airspeed_kt: object
    """The true airspeed to fly."""


def airspeed_for_groundspeed(course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt, **kwargs):
    r"""The heading and true airspeed that make good a course at a wanted groundspeed.

    The velocity over the ground less the velocity of the air; there is always one answer.

    Parameters
    ----------
    course_deg : array_like, in degrees
        The course to make good, any finite number.
    groundspeed_kt : array_like, in knots
        The groundspeed wanted, 0 to 10 000.
    wind_from_deg : array_like, in degrees
        Where the wind blows from, any finite number.
    wind_speed_kt : array_like, in knots
        Speed of the wind, 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    AirspeedForGroundspeed
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `heading_deg`: The heading to fly, 0 to 360, from the north of the course, in degrees.
        `true_airspeed_kt`: The true airspeed to fly, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or a true airspeed that comes out at zero (the wind
        alone does it) or above 5000 kt. In arrays such a point is NaN and NumPy's `invalid`
        warning.

    Notes
    -----
    Accuracy: Rounding.

    Degenerate cases: A groundspeed of zero holds against the wind. A tailwind faster than the
    groundspeed wants the aircraft to face it.

    Source: The triangle of velocities.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.airspeed_for_groundspeed(351.0, 232.0, 33.0, 47.0).heading_deg:.1f}"
    '357.7'
    >>> f"{lubberline.airspeed_for_groundspeed(351.0, 232.0, 33.0, 47.0).true_airspeed_kt:.1f}"
    '268.8'
    >>> [f"{value:.1f}" for value in lubberline.airspeed_for_groundspeed([351.0, 351.0], 232.0, 33.0, 47.0).heading_deg]
    ['357.7', '357.7']
    """
    if not kwargs:
        answer = _scalar_airspeed_for_groundspeed(course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt)
        if answer is not None:
            return named(AirspeedForGroundspeed, answer)
    return AirspeedForGroundspeed._make(many("airspeed_for_groundspeed", AirspeedForGroundspeed._fields, (course_deg, groundspeed_kt, wind_from_deg, wind_speed_kt), kwargs))


_scalar_airspeed_for_groundspeed = scalars["airspeed_for_groundspeed"]


class WindBetweenLevels(NamedTuple):
    """A wind between two levels: what `wind_between_levels` and `wind_between_levels_by_method` give."""

    wind_from_deg: object
    """Where the wind blows from, 0 to 360; 0 in calm air."""
    wind_speed_kt: object
    """Speed of the wind."""


def wind_between_levels(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, **kwargs):
    r"""The wind at an altitude between two levels: its components change evenly with altitude.

    `w = w1 + (w2 - w1)(H - H1)/(H2 - H1)` for the north and for the east component.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Where the wind is wanted, -16 420 to 262 467.2.
    lower_altitude_ft : array_like, in feet
        Pressure altitude of the lower level, -16 420 to 262 467.2.
    lower_wind_from_deg : array_like, in degrees
        Where its wind blows from, any finite number.
    lower_wind_speed_kt : array_like, in knots
        Speed of its wind, 0 to 1000.
    upper_altitude_ft : array_like, in feet
        Pressure altitude of the upper level, above the lower one.
    upper_wind_from_deg : array_like, in degrees
        Where its wind blows from, any finite number.
    upper_wind_speed_kt : array_like, in knots
        Speed of its wind, 0 to 1000.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    WindBetweenLevels
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `wind_from_deg`: Where the wind blows from, 0 to 360; 0 in calm air, in degrees.
        `wind_speed_kt`: Speed of the wind, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or levels that do not ascend. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding, for winds that do change evenly.

    Degenerate cases: Below the lower level its wind holds, and above the upper one that one's. A
    wind that reverses passes through a calm.

    Source: Common practice.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.wind_between_levels(21000.0, 18000.0, 270.0, 40.0, 24000.0, 300.0, 60.0).wind_from_deg:.1f}"
    '288.1'
    >>> f"{lubberline.wind_between_levels(21000.0, 18000.0, 270.0, 40.0, 24000.0, 300.0, 60.0).wind_speed_kt:.1f}"
    '48.4'
    >>> [f"{value:.1f}" for value in lubberline.wind_between_levels([21000.0, 21000.0], 18000.0, 270.0, 40.0, 24000.0, 300.0, 60.0).wind_from_deg]
    ['288.1', '288.1']
    """
    if not kwargs:
        answer = _scalar_wind_between_levels(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt)
        if answer is not None:
            return named(WindBetweenLevels, answer)
    return WindBetweenLevels._make(many("wind_between_levels", WindBetweenLevels._fields, (pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt), kwargs))


_scalar_wind_between_levels = scalars["wind_between_levels"]


def wind_between_levels_by_method(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, method, **kwargs):
    r"""The wind at an altitude between two levels, by a named way of interpolating.

    By components, as `wind_between_levels`; or direction and speed each by itself, the direction by
    the shorter way, as it is taught for flight planning. Where the wind turns little between the
    levels the two are alike; where it turns by 90 degrees the former has 71 percent of the speed
    half-way.

    Parameters
    ----------
    pressure_altitude_ft : array_like, in feet
        Where the wind is wanted, -16 420 to 262 467.2.
    lower_altitude_ft : array_like, in feet
        Pressure altitude of the lower level, -16 420 to 262 467.2.
    lower_wind_from_deg : array_like, in degrees
        Where its wind blows from, any finite number.
    lower_wind_speed_kt : array_like, in knots
        Speed of its wind, 0 to 1000.
    upper_altitude_ft : array_like, in feet
        Pressure altitude of the upper level, above the lower one.
    upper_wind_from_deg : array_like, in degrees
        Where its wind blows from, any finite number.
    upper_wind_speed_kt : array_like, in knots
        Speed of its wind, 0 to 1000.
    method : {"components", "direction_and_speed"}
        Which way.
    **kwargs
        `out`, `where` and the other options of a NumPy function.

    Returns
    -------
    WindBetweenLevels
        A named tuple, of floats if every argument is a plain number, else of arrays:

        `wind_from_deg`: Where the wind blows from, 0 to 360; 0 in calm air, in degrees.
        `wind_speed_kt`: Speed of the wind, in knots.

    Raises
    ------
    NavigationError
        For numbers: A value outside its range, or levels that do not ascend. In arrays such a point
        is NaN and NumPy's `invalid` warning.

    Notes
    -----
    Accuracy: Rounding, for winds that do change so.

    Degenerate cases: Below the lower level its wind holds, and above the upper one that one's. By
    direction and speed a calm counts with the direction given for it, and winds straight against
    each other turn to the right.

    Source: Common practice, both: components in forecasting; direction and speed in the worked
    answer of a Transport Canada practice examination for private pilots, as a training page has it.

    Examples
    --------
    >>> import lubberline
    >>> f"{lubberline.wind_between_levels_by_method(5500.0, 3000.0, 280.0, 25.0, 6000.0, 270.0, 28.0, 'direction_and_speed').wind_speed_kt:.1f}"
    '27.5'
    >>> [f"{value:.1f}" for value in lubberline.wind_between_levels_by_method([5500.0, 5500.0], 3000.0, 280.0, 25.0, 6000.0, 270.0, 28.0, 'direction_and_speed').wind_speed_kt]
    ['27.5', '27.5']
    """
    method = chosen(_WIND_INTERPOLATION, "method", method)
    if not kwargs:
        answer = _scalar_wind_between_levels_by_method(pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, method)
        if answer is not None:
            return named(WindBetweenLevels, answer)
    return WindBetweenLevels._make(many("wind_between_levels_by_method", WindBetweenLevels._fields, (pressure_altitude_ft, lower_altitude_ft, lower_wind_from_deg, lower_wind_speed_kt, upper_altitude_ft, upper_wind_from_deg, upper_wind_speed_kt, method), kwargs))


_scalar_wind_between_levels_by_method = scalars["wind_between_levels_by_method"]
