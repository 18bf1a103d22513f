"""The brief of a route of stations: its legs, and the reading at which each turn begins."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, fields
from typing import Any, Literal, NamedTuple

from . import _native
from ._call import mapping, number, one_chosen, whole_wind
from ._course_change import CourseChange, FlyOver, course_change
from ._flight import Sureness
from ._functions import cas_from_tas_kt, mach_from_tas, standard_atmosphere
from ._geojson import CAUTION, feature, line, point
from ._station import Station
from ._table import html_table
from ._wind_levels import WindLevels, each_level

_SIDES = {"shortest": 0, "left": -1, "right": 1}
_ERRORS = (
    "station_bearing_deg",
    "dme_nm",
    "wind_speed_kt",
    "wind_direction_deg",
    "airspeed_kt",
    "bank_deg",
    "roll_in_delay_s",
    "height_ft",
    "mean_delay_s",
)


@dataclass(frozen=True)
class RouteFix:
    """A station on a route: which way to turn there, and the wind there and on the leg to it.

    Parameters
    ----------
    station : Station
        The station.
    name : str
        Its name, for reading.
    cone_half_angle_deg : float
        Half-angle of its cone of confusion from the vertical, above 0 below 90.
    turn : {"shortest", "left", "right"}
        Which way to turn; nothing is turned at the first station and the last.
    wind_from_deg, wind_speed_kt : float, optional
        Where the wind blows from, true, and its speed; the wind of the route if both are left out.
    wind_levels : sequence of WindLevel or of three numbers, optional
        Winds by level in place of that wind, of which the one at the altitude flown counts.

    Examples
    --------
    >>> import lubberline
    >>> fix = lubberline.RouteFix(lubberline.Station(58.72, -9.35, ident="TUL"), turn="left", wind_from_deg=240.0, wind_speed_kt=105.0)
    >>> fix.station.ident
    'TUL'
    """

    station: Station
    name: str = field(default="", kw_only=True)
    cone_half_angle_deg: float = field(default=50.0, kw_only=True)
    turn: Literal["shortest", "left", "right"] = field(default="shortest", kw_only=True)
    wind_from_deg: float | None = field(default=None, kw_only=True)
    wind_speed_kt: float | None = field(default=None, kw_only=True)
    wind_levels: WindLevels | None = field(default=None, kw_only=True)

    def __post_init__(self) -> None:
        if not isinstance(self.station, Station):
            raise TypeError(f"station must be a Station, not {type(self.station).__name__}")
        one_chosen(_SIDES, "turn", self.turn)
        if self.wind_levels is not None:
            if self.wind_from_deg is not None or self.wind_speed_kt is not None:
                raise TypeError("wind_levels and another wind are both given; allowed: one of them")
            object.__setattr__(self, "wind_levels", tuple(tuple(level) for level in each_level(self.wind_levels)))
        whole_wind(self.wind_from_deg, self.wind_speed_kt, "the wind of the route")

    def _spelled(self) -> tuple[list[float], int, list[list[float]]]:
        """As the native function takes it."""
        station, wind = self.station, (("wind_from_deg", self.wind_from_deg), ("wind_speed_kt", self.wind_speed_kt))
        numbers = [
            station.latitude_deg,
            station.longitude_deg,
            station.elevation_ft,
            station.declination_deg,
            number("cone_half_angle_deg", self.cone_half_angle_deg),
            *(math.nan if value is None else number(name, value) for name, value in wind),
        ]
        return numbers, one_chosen(_SIDES, "turn", self.turn), [] if self.wind_levels is None else each_level(self.wind_levels)


@dataclass(frozen=True)
class RuleOfThumb:
    """The common mental arithmetic for a turn, and its errors: rule less exact, positive if it begins the turn early."""

    lead_nm: float
    """The lead: a third of a mile for each 60 kt, for 90 degrees."""
    lead_error_nm: float
    lead_with_height_nm: float
    """The same with half a mile for each 10 000 ft above 5 000 ft."""
    lead_with_height_error_nm: float
    dme_nm: float
    """The reading: the lead added to the height in miles."""
    dme_error_nm: float


@dataclass(frozen=True)
class RouteLeg:
    """A leg of a route; made by `brief_route`. Radials are in the stations' own north, all else is true."""

    from_fix: RouteFix
    """The station it leads from."""
    to_fix: RouteFix
    """The station it leads to."""
    length_nm: float
    """From station to station."""
    initial_course_deg: float
    """Course where it begins."""
    final_course_deg: float
    """Course where it ends."""
    radial_from_deg: float
    """The radial of the first station it is flown on, away from it."""
    radial_to_deg: float
    """The radial of the second station it is flown on, toward it."""
    wind_from_deg: float
    """Where the wind on it blows from."""
    wind_speed_kt: float
    heading_deg: float
    """What holds the course half-way."""
    wind_correction_deg: float
    """Heading less course half-way, right positive."""
    groundspeed_kt: float
    """Groundspeed half-way."""
    straight_nm: float
    """What is left between the turns at its ends; negative if they overlap."""
    straight_time_s: float
    """The time for that; NaN if they overlap."""
    least_length_nm: float
    """The least length that would be enough for the turns at its ends."""
    long_enough: bool
    """Whether it is as long as that."""
    horizon_from_nm: float
    """Radio horizon of the first station at this altitude, over a smooth earth."""
    horizon_to_nm: float
    """Radio horizon of the second station."""
    unreceived_nm: float
    """How much of it lies beyond both horizons; 0 if none."""
    points: tuple[tuple[float, float], ...] = field(repr=False)
    """Latitudes and longitudes along what is flown straight; none if it is too short."""

    def _rows(self) -> dict[str, Any]:
        return _numbers(self, ("from_fix", "to_fix", "points"))


@dataclass(frozen=True)
class RouteTurn:
    """A turn at a station of a route; made by `brief_route`. Radials are in the station's own north, all else is true."""

    fix: RouteFix
    """The station."""
    height_above_station_ft: float
    wind_from_deg: float
    """Where the wind blows from."""
    wind_speed_kt: float
    inbound_course_deg: float
    outbound_course_deg: float
    course_change_deg: float
    """The change between them, right positive, the short way."""
    inbound_radial_deg: float
    """The radial it is reached on."""
    outbound_radial_deg: float
    """The radial it is left on."""
    heading_before_deg: float
    heading_after_deg: float
    heading_change_deg: float
    """Heading to turn through, right positive, the way that is turned."""
    groundspeed_before_kt: float
    groundspeed_after_kt: float
    bank_deg: float
    """The greatest bank."""
    governed_by: str
    """What governs the bank: "bank_limit", "turn_rate_limit", "roll_rate" or "no_turn"."""
    radius_nm: float
    """Radius through the air at that bank; infinite if there is no turn."""
    begin_at_dme_nm: float
    """The DME reading at which the turn begins."""
    begin_on_radial_deg: float
    """The radial on which it begins."""
    begin_before_fix_nm: float
    """The lead: the distance before the station at which it begins; negative past it."""
    begin_latitude_deg: float
    begin_longitude_deg: float
    ground_per_dme_tenth_nm: float
    """What a tenth of a mile on the DME is along the ground there: much, close to overhead; infinite overhead."""
    begin_after_last_roll_out_s: float
    """When it begins, after the last roll-out or the start; NaN, like all times after the start, from a leg on that is too short."""
    begin_after_start_s: float
    """When it begins, after the start of the route."""
    turn_time_s: float
    """From its beginning to wings level."""
    turn_length_nm: float
    """Its length over the ground."""
    roll_out_after_start_s: float
    """When the wings are level again, after the start of the route."""
    roll_out_dme_nm: float
    """The DME reading there."""
    roll_out_radial_deg: float
    """The radial there."""
    roll_out_past_fix_nm: float
    """How far past the station that is, along the outbound course; negative before it."""
    roll_out_latitude_deg: float
    roll_out_longitude_deg: float
    closest_approach_nm: float
    """Least distance from the station over the ground."""
    cone_radius_nm: float
    """Radius of its cone of confusion at the height."""
    cone_edge_dme_nm: float
    """The DME reading at the edge of the cone."""
    begins_in_cone: bool
    """Whether the turn begins inside the cone."""
    enters_cone: bool
    """Whether the aircraft enters it at all."""
    fly_over: FlyOver
    """What flying over the station before turning would cost."""
    by_rule: RuleOfThumb
    """The common mental arithmetic beside it."""
    sureness: Sureness | None = field(hash=False)
    """What the errors make of it, if any were given."""
    points: tuple[tuple[float, float], ...] = field(repr=False)
    """Latitudes and longitudes of the turn as flown, at even times."""
    settings: tuple[float, ...] = field(repr=False)
    """True airspeed, limits of bank, rate of turn and roll, and the intercept angle it is flown with."""

    @property
    def change(self) -> CourseChange:
        """The turn as a course change, true to north, to look at its parts or to draw it."""
        airspeed, bank, rate, roll, intercept = self.settings
        return course_change(
            self.inbound_course_deg,
            self.outbound_course_deg,
            true_airspeed_kt=airspeed,
            wind_from_deg=self.wind_from_deg,
            wind_speed_kt=self.wind_speed_kt,
            bank_limit_deg=bank,
            turn_rate_limit_deg_per_s=rate,
            roll_rate_deg_per_s=roll,
            height_above_station_ft=self.height_above_station_ft,
            turn=self.fix.turn,
            intercept_angle_deg=intercept,
            cone_half_angle_deg=self.fix.cone_half_angle_deg,
        )

    def _rows(self) -> dict[str, Any]:
        return _numbers(self, ("fix", "fly_over", "by_rule", "sureness", "points", "settings"))

    def _repr_html_(self) -> str:
        return html_table(f"Turn at {self.fix.station.ident}".strip(), self._rows()) + self.fly_over._repr_html_()


class RouteConditions(NamedTuple):
    """What a route is flown with, and the air it lies in; the wind is 0 where it is given by level."""

    true_airspeed_kt: float
    pressure_altitude_ft: float
    altimeter_setting_hpa: float
    isa_deviation_k: float
    wind_from_deg: float
    wind_speed_kt: float
    bank_limit_deg: float
    turn_rate_limit_deg_per_s: float
    roll_rate_deg_per_s: float
    intercept_angle_deg: float


@dataclass(frozen=True, repr=False)
class RouteBrief:
    """What a route comes to; made by `brief_route`."""

    fixes: tuple[RouteFix, ...]
    """Its stations."""
    conditions: RouteConditions
    """What it is flown with."""
    errors: dict[str, float] | None = field(hash=False)
    """The errors that were given, with the limit, the confidence, the trials and the seed."""
    legs: tuple[RouteLeg, ...]
    """Its legs, one fewer than its stations."""
    turns: tuple[RouteTurn, ...]
    """The turns at its stations, without the first and the last."""
    total_distance_nm: float
    """Distance over the ground, with the turns; NaN if a leg is too short for its turns."""
    total_time_s: float
    """Time from the first station to the last, with the turns; NaN likewise."""

    def data(self, title: str = "Untitled plan") -> dict[str, Any]:
        """The brief as a dictionary that `json.dump` takes, with the keys of the brief that Rust's example gives as JSON.

        What has no number is None: a radius where there is no turn, a limit that is infinite, a time after a leg that is too short.

        Examples
        --------
        >>> import lubberline
        >>> fixes = [lubberline.Station(61.82, -14.4, ident="SKE"), lubberline.Station(61.25, -11.5, ident="OST")]
        >>> brief = lubberline.brief_route(fixes, true_airspeed_kt=440.0, pressure_altitude_ft=35_000.0)
        >>> data = brief.data("Skerra to Ostvik")
        >>> f"{data['legs'][0]['from']} - {data['legs'][0]['to']}: {data['total_distance_nm']:.1f} NM"
        'SKE - OST: 90.1 NM'
        """
        given = self.conditions
        airspeed = given.true_airspeed_kt, given.pressure_altitude_ft, given.isa_deviation_k
        return {
            "title": title,
            "caution": CAUTION,
            "pressure_altitude_ft": given.pressure_altitude_ft,
            "altimeter_setting_hpa": given.altimeter_setting_hpa,
            "temperature_degc": standard_atmosphere(given.pressure_altitude_ft, isa_deviation_k=given.isa_deviation_k).temperature_degc,
            "isa_deviation_k": given.isa_deviation_k,
            "calibrated_airspeed_kt": cas_from_tas_kt(*airspeed),
            "mach": mach_from_tas(*airspeed),
            "true_airspeed_kt": given.true_airspeed_kt,
            "bank_limit_deg": given.bank_limit_deg,
            "turn_rate_limit_deg_per_s": _finite(given.turn_rate_limit_deg_per_s),
            "roll_rate_deg_per_s": _finite(given.roll_rate_deg_per_s),
            "errors": None if self.errors is None else dict(self.errors),
            "total_distance_nm": _finite(self.total_distance_nm),
            "total_time_s": _finite(self.total_time_s),
            "legs": [_leg_data(leg) for leg in self.legs],
            "course_changes": [_turn_data(turn) for turn in self.turns],
        }

    def geojson(self, title: str = "Untitled plan") -> dict[str, Any]:
        """The brief as a GeoJSON feature collection (RFC 7946), the same that Rust's example gives.

        The property `kind` tells features apart: "station", "leg" (without a geometry if it is too short), "begin", "turn" and "roll_out".

        Examples
        --------
        >>> import lubberline
        >>> fixes = [lubberline.Station(61.82, -14.4, ident="SKE"), lubberline.Station(61.25, -11.5, ident="OST")]
        >>> brief = lubberline.brief_route(fixes, true_airspeed_kt=440.0, pressure_altitude_ft=35_000.0)
        >>> [feature["properties"]["kind"] for feature in brief.geojson()["features"]]
        ['station', 'station', 'leg']
        """
        features, drawn = [], set()
        for fix in self.fixes:
            # A route may come by a station twice; stations without an ident are told apart by where they are.
            key = fix.station.ident or fix.station
            if key not in drawn:
                drawn.add(key)
                features.append(_station_feature(fix))
        for index, leg in enumerate(self.legs):
            features.append(_leg_feature(leg))
            if index < len(self.turns):
                features += _turn_features(self.turns[index])
        return {"type": "FeatureCollection", "title": title, "caution": CAUTION, "features": features}

    @property
    def __geo_interface__(self) -> dict[str, Any]:
        """`geojson()`, as what draws maps asks for it."""
        return self.geojson()

    def __repr__(self) -> str:
        route = " - ".join(fix.station.ident or "?" for fix in self.fixes)
        return f"RouteBrief({route}, {self.total_distance_nm:.3f} NM, {self.total_time_s:.1f} s)"

    def _repr_html_(self) -> str:
        return "".join(turn._repr_html_() for turn in self.turns)


def brief_route(
    route: Iterable[RouteFix | Station],
    *,
    true_airspeed_kt: float,
    pressure_altitude_ft: float,
    altimeter_setting_hpa: float = 1013.25,
    isa_deviation_k: float = 0.0,
    wind_from_deg: float | None = None,
    wind_speed_kt: float | None = None,
    wind_levels: WindLevels | None = None,
    bank_limit_deg: float = 25.0,
    turn_rate_limit_deg_per_s: float = 3.0,
    roll_rate_deg_per_s: float = 5.0,
    intercept_angle_deg: float = 30.0,
    errors: Mapping[str, float] | None = None,
    limit_nm: float = 1.0,
    confidence: float = 0.95,
    trials: int = 20_000,
    seed: int = 1,
    spacing_nm: float = 20.0,
) -> RouteBrief:
    """Brief a route from station to station: its legs, and the turns between, with the DME reading at which each begins.

    Legs are geodesics of WGS-84. At each station but the first and the last the course changes from the final course of one leg to the initial course of the
    next, as a turn begun in time; what the turns take is not flown straight. Heights above the stations follow from the altimeter setting and the temperature.

    Parameters
    ----------
    route : sequence of RouteFix or Station
        The stations in the order flown; a `RouteFix` says how to turn there, and what wind blows there and on the leg to it.
    true_airspeed_kt : float
        True airspeed, above 0 to 5000: `tas_from_cas_kt` and `tas_from_mach_kt` give it.
    pressure_altitude_ft : float
        Pressure altitude, held all the way.
    altimeter_setting_hpa, isa_deviation_k : float
        Altimeter setting of the region, and how much warmer than the standard atmosphere it is.
    wind_from_deg, wind_speed_kt : float, optional
        Where the wind blows from, true, and its speed, at stations without a wind of their own; calm air if both are left out.
    wind_levels : sequence of WindLevel or of three numbers, or array of three columns, optional
        Winds by level in place of that wind, in ascending order, of which the one at the altitude flown counts.
    bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s : float
        Limits of the turns; the rates may be infinite.
    intercept_angle_deg : float
        The angle at which an outbound course would be intercepted after flying over a station, above 0 to 90.
    errors : mapping, optional
        Standard deviations, and `mean_delay_s`, by the names of the parameters of `course_change_sureness`, such as `usual_errors()`; one that is not named is 0.
        Each turn then has a `sureness`.
    limit_nm, confidence, trials, seed : float, float, int, int
        What the errors are asked with: the overshoot that matters, the chance with which it is to be kept, how many turns are drawn and by which seed.
    spacing_nm : float
        The most that two points of a leg are apart: above 0; infinite for its ends only.

    Returns
    -------
    RouteBrief

    Raises
    ------
    NavigationError
        A value outside its range or not a number, two stations at one place, a wind that a course cannot be held in, a reversal, a turn below the station: the
        message says at which station or on which leg.

    Notes
    -----
    Accuracy: that of `course_change` for the turns; leg times with the groundspeed half-way. A leg too short for its turns is briefed all the same, but
    from there on no time is given, nor a total: they would count what overlaps as flown backwards. Fewer than three stations make no turn.

    Examples
    --------
    >>> import lubberline
    >>> route = [
    ...     lubberline.Station(61.82, -14.40, elevation_ft=310.0, declination_deg=-8.0, ident="SKE"),
    ...     lubberline.Station(61.25, -11.50, elevation_ft=420.0, declination_deg=-6.0, ident="OST"),
    ...     lubberline.RouteFix(lubberline.Station(59.93, -10.90, declination_deg=-5.0, ident="MAR"), wind_from_deg=240.0, wind_speed_kt=105.0),
    ... ]
    >>> brief = lubberline.brief_route(
    ...     route, true_airspeed_kt=455.0, pressure_altitude_ft=35_000.0, wind_from_deg=255.0, wind_speed_kt=85.0, errors=lubberline.usual_errors()
    ... )
    >>> turn = brief.turns[0]
    >>> f"{turn.fix.station.ident}: begin at {turn.begin_at_dme_nm:.1f} DME on radial {turn.begin_on_radial_deg:.0f}"
    'OST: begin at 7.1 DME on radial 300'
    >>> all(leg.long_enough and leg.unreceived_nm == 0.0 for leg in brief.legs)
    True
    """
    fixes = tuple(fix if isinstance(fix, RouteFix) else RouteFix(fix) for fix in route)
    if wind_levels is not None and (wind_from_deg is not None or wind_speed_kt is not None):
        raise TypeError("wind_levels and another wind are both given; allowed: one of them")
    wind_from_deg, wind_speed_kt = whole_wind(wind_from_deg, wind_speed_kt)
    conditions = RouteConditions(
        true_airspeed_kt=number("true_airspeed_kt", true_airspeed_kt),
        pressure_altitude_ft=number("pressure_altitude_ft", pressure_altitude_ft),
        altimeter_setting_hpa=number("altimeter_setting_hpa", altimeter_setting_hpa),
        isa_deviation_k=number("isa_deviation_k", isa_deviation_k),
        wind_from_deg=wind_from_deg,
        wind_speed_kt=wind_speed_kt,
        bank_limit_deg=number("bank_limit_deg", bank_limit_deg),
        turn_rate_limit_deg_per_s=number("turn_rate_limit_deg_per_s", turn_rate_limit_deg_per_s),
        roll_rate_deg_per_s=number("roll_rate_deg_per_s", roll_rate_deg_per_s),
        intercept_angle_deg=number("intercept_angle_deg", intercept_angle_deg),
    )
    asked, told = _asked(errors, limit_nm, confidence, trials, seed)
    legs, turns, (distance, time) = _native.brief_route(
        [fix._spelled() for fix in fixes],
        (list(conditions), [] if wind_levels is None else each_level(wind_levels)),
        asked,
        number("spacing_nm", spacing_nm),
    )
    limits = conditions[0], *conditions[6:]
    return RouteBrief(
        fixes,
        conditions,
        told,
        tuple(_leg(leg, pair) for leg, pair in zip(legs, zip(fixes, fixes[1:]))),
        tuple(_turn(turn, fix, limits) for turn, fix in zip(turns, fixes[1:])),
        distance,
        time,
    )


def _asked(
    errors: Mapping[str, float] | None, limit_nm: float, confidence: float, trials: int, seed: int
) -> tuple[tuple[Any, ...] | None, dict[str, float] | None]:
    """What is asked of the errors, as the native function takes it and as it is told."""
    if errors is None:
        return None, None
    unknown = [name for name in mapping("errors", errors) if name not in _ERRORS]
    if unknown:
        raise TypeError(f"errors has {unknown[0]!r}; allowed: {', '.join(map(repr, _ERRORS))}")
    given = {name: number(name, errors.get(name, 0.0)) for name in _ERRORS}
    limit, kept = number("limit_nm", limit_nm), number("confidence", confidence)
    told = {**given, "limit_nm": limit, "confidence": kept, "trials": trials, "seed": seed}
    return (list(given.values()), limit, kept, trials, seed), told


def _leg(plain: dict[str, Any], fixes: tuple[RouteFix, RouteFix]) -> RouteLeg:
    points = tuple(plain.pop("points"))
    return RouteLeg(*fixes, points=points, **plain)


def _turn(plain: dict[str, Any], fix: RouteFix, settings: tuple[float, ...]) -> RouteTurn:
    points, sure = tuple(plain.pop("points")), plain.pop("sureness")
    return RouteTurn(
        fix,
        fly_over=FlyOver(**plain.pop("fly_over")),
        by_rule=RuleOfThumb(**plain.pop("by_rule")),
        sureness=None if sure is None else Sureness(**sure[0], by_source_nm=sure[1]),
        points=points,
        settings=settings,
        **plain,
    )


def _numbers(shown: RouteLeg | RouteTurn, others: Sequence[str]) -> dict[str, Any]:
    """Its fields but those that are no numbers or words."""
    return {one.name: getattr(shown, one.name) for one in fields(shown) if one.name not in others}


def _finite(value: Any) -> Any:
    """None for a number that JSON has no word for."""
    return None if isinstance(value, float) and not math.isfinite(value) else value


def _leg_data(leg: RouteLeg) -> dict[str, Any]:
    numbers = {name: _finite(value) for name, value in leg._rows().items()}
    return {"from": leg.from_fix.station.ident, "to": leg.to_fix.station.ident, **numbers}


def _turn_data(turn: RouteTurn) -> dict[str, Any]:
    over, rule, sure = turn.fly_over, turn.by_rule, turn.sureness
    return {
        "fix": turn.fix.station.ident,
        "name": turn.fix.name,
        **{name: _finite(value) for name, value in turn._rows().items()},
        "fly_over": {one.name: _finite(getattr(over, one.name)) for one in fields(over)},
        "by_rule": {one.name: getattr(rule, one.name) for one in fields(rule)},
        "sureness": None if sure is None else _sureness_data(sure),
    }


def _sureness_data(sure: Sureness) -> dict[str, Any]:
    data = {
        "mean_overshoot_nm": sure.mean_nm,
        "deviation_nm": sure.deviation_nm,
        "chance_beyond_limit": sure.chance_beyond,
        "margin_nm": sure.margin_nm,
        "begin_with_margin_at_dme_nm": sure.begin_with_margin_at_dme_nm,
        "begin_with_margin_before_fix_nm": sure.begin_with_margin_before_fix_nm,
        "linear_deviation_nm": sure.linear_deviation_nm,
        "linear_chance_beyond_limit": sure.linear_chance_beyond,
        "linear_margin_nm": sure.linear_margin_nm,
    }
    return {
        **{name: _finite(value) for name, value in data.items()},
        "foremost": sure.foremost,
        "by_source_nm": {name: _finite(value) for name, value in sure.by_source_nm.items()},
    }


def _station_feature(fix: RouteFix) -> dict[str, Any]:
    station = fix.station
    properties = {
        "kind": "station",
        "ident": station.ident,
        "name": fix.name,
        "elevation_ft": station.elevation_ft,
        "declination_deg": station.declination_deg,
    }
    return feature(point(station.latitude_deg, station.longitude_deg), properties)


def _leg_feature(leg: RouteLeg) -> dict[str, Any]:
    properties = {
        "kind": "leg",
        "from": leg.from_fix.station.ident,
        "to": leg.to_fix.station.ident,
        "initial_course_deg": leg.initial_course_deg,
        "final_course_deg": leg.final_course_deg,
        "length_nm": leg.length_nm,
        "straight_nm": leg.straight_nm,
        "straight_time_s": _finite(leg.straight_time_s),
        "groundspeed_kt": leg.groundspeed_kt,
        "long_enough": leg.long_enough,
    }
    return feature(line(leg.points), properties)


def _turn_features(turn: RouteTurn) -> list[dict[str, Any]]:
    fix = turn.fix.station.ident
    begin = {
        "kind": "begin",
        "fix": fix,
        "dme_nm": turn.begin_at_dme_nm,
        "radial_deg": turn.begin_on_radial_deg,
        "before_fix_nm": turn.begin_before_fix_nm,
        "after_start_s": _finite(turn.begin_after_start_s),
    }
    flown = {
        "kind": "turn",
        "fix": fix,
        "turn_time_s": turn.turn_time_s,
        "bank_deg": turn.bank_deg,
        "governed_by": turn.governed_by,
        "heading_change_deg": turn.heading_change_deg,
    }
    roll_out = {
        "kind": "roll_out",
        "fix": fix,
        "dme_nm": turn.roll_out_dme_nm,
        "radial_deg": turn.roll_out_radial_deg,
        "past_fix_nm": turn.roll_out_past_fix_nm,
        "after_start_s": _finite(turn.roll_out_after_start_s),
    }
    return [
        feature(point(turn.begin_latitude_deg, turn.begin_longitude_deg), begin),
        feature(line(turn.points), flown),
        feature(point(turn.roll_out_latitude_deg, turn.roll_out_longitude_deg), roll_out),
    ]
