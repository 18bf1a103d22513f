"""The brief of a sequence of path-and-terminator legs: what is flown on each, and where its turns begin and end."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, fields
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from . import _native
from ._call import mapping, number
from ._functions import pressure_altitude_at_true_altitude_ft
from ._geojson import CAUTION, feature, line, point
from ._legs import GroundPath, Leg, PathSegment, _conditions
from ._station import Station
from ._table import html_table
from ._wind_levels import WindLevels

#: How far apart the points of straights, and of turns and arcs, are drawn, in nautical miles.
_SPACING_NM = (20.0, 0.1)


@dataclass(frozen=True)
class StationReading:
    """What a station is seen as from a place of a path."""

    station: Station
    dme_nm: float
    radial_deg: float
    """The radial, from the station's north; NaN overhead, within a metre on the ground."""
    flag: str
    """Whether they can be used: "clear", or "cone", "below_horizon" or "out_of_range"."""


@dataclass(frozen=True)
class PathPoint:
    """Where a turn of a path begins or ends."""

    latitude_deg: float
    longitude_deg: float
    altitude_ft: float
    after_start_s: float
    """Time since the first fix."""
    course_deg: float
    """True course there."""
    magnetic_course_deg: float | None
    """The same from magnetic north; None without a variation."""
    stations: tuple[StationReading, ...]
    """What each station is seen as."""


@dataclass(frozen=True)
class PathTurn:
    """A turn of a path."""

    begin: PathPoint
    """Where the roll into it begins."""
    roll_out: PathPoint
    """Where the wings are level on the new course."""
    heading_change_deg: float
    """Change of heading, right positive."""
    bank_deg: float
    """The greatest bank."""
    governed_by: str
    """What sets the bank: "bank_limit", "turn_rate_limit", "roll_rate" or "no_turn"."""
    radius_nm: float
    """Radius through the air at that bank."""
    time_s: float
    """From wings level to wings level."""

    def _rows(self) -> dict[str, Any]:
        return {one.name: getattr(self, one.name) for one in fields(self)[2:]}


@dataclass(frozen=True)
class PathCheck:
    """What a crew should know of a leg before flying it."""

    kind: str
    """What is found: "arc_bank", "cone", "holding_airspeed", "holding_mach", "not_received" or "altitude_passed"."""
    sentence: str
    """The same in words, with the numbers."""
    turn: int | None = None
    """The turn of the leg that begins in a cone, or begins or rolls out where a station is not received, counted from zero."""
    station: Station | None = None
    """The station of that cone, or that is not received; None for a leg's own that is not among the stations."""
    value: float = math.nan
    """What it takes: degrees of bank, knots of calibrated airspeed, Mach number, nautical miles from a station that is not received, or the
    altitude in feet at which a leg begins past its end."""
    limit: float = math.nan
    """The most there is or is allowed of that, or the altitude that ends the leg."""
    pressure_altitude_ft: float = math.nan
    """Where a racetrack ends that is flown too fast."""


@dataclass(frozen=True)
class PathLeg:
    """A leg as it is flown; made by `brief_path`. Directions are true where nothing else is said."""

    number: int
    """Which it is, counted from one."""
    code: str
    """Its two letters."""
    meaning: str
    """How its path is flown and what ends it, in words."""
    fix: str | None
    """What its fix is called, if that place has a name."""
    course_deg: float
    """Its course where it is first flown straight or round its arc; where it ends, if it is all turn."""
    heading_deg: float
    """The heading that holds that course."""
    magnetic_course_deg: float | None
    """That course from magnetic north; None without a variation."""
    magnetic_heading_deg: float | None
    """That heading from magnetic north; None without a variation."""
    wind_correction_deg: float
    """Heading less course, right positive."""
    groundspeed_kt: float
    wind_from_deg: float
    """Where the wind it is flown in blows from."""
    wind_speed_kt: float
    headwind_kt: float
    """The wind against the course; a tailwind is negative."""
    crosswind_kt: float
    """The wind from the right of the course; from the left is negative."""
    distance_nm: float
    """Over the ground, with its turns."""
    time_s: float
    """From its start to its end."""
    start_latitude_deg: float
    """Where the turn onto it begins, or it itself, if it has none."""
    start_longitude_deg: float
    start_course_deg: float
    start_altitude_ft: float
    start_time_s: float
    """Time at its beginning since the first fix."""
    end_latitude_deg: float
    """Where it ends, or the turn onto the next leg begins."""
    end_longitude_deg: float
    end_course_deg: float
    end_altitude_ft: float
    end_time_s: float
    """Time at its end since the first fix."""
    shortest_straight_nm: float
    """The shortest straight between its turns; NaN if it is all turn and arc."""
    arc_bank_deg: float
    """The greatest bank that keeps to its arc; NaN if it has none."""
    keeps_its_arc: bool
    """Whether that is within the limit of bank; so it is where there is no arc."""
    turns: tuple[PathTurn, ...]
    """Its turns, that onto it first."""
    checks: tuple[PathCheck, ...]
    """What a crew should know before flying it."""

    def _rows(self) -> dict[str, Any]:
        return {one.name: getattr(self, one.name) for one in fields(self) if one.name not in ("turns", "checks")}

    def _repr_html_(self) -> str:
        return html_table(f"Leg {self.number} {self.code}", self._rows())


class PathConditions(NamedTuple):
    """What a path is flown with, and the air it lies in; the wind is that where the path begins."""

    true_airspeed_kt: float
    altitude_ft: float
    wind_from_deg: float
    wind_speed_kt: float
    climb_fpm: float
    bank_limit_deg: float
    turn_rate_limit_deg_per_s: float
    roll_rate_deg_per_s: float
    altimeter_setting_hpa: float
    isa_deviation_k: float
    holding_rule: str
    magnetic_variation_deg: float | None
    """That of the legs' courses and headings; None where they are true."""


@dataclass(frozen=True, eq=False, repr=False)
class PathBrief:
    """What a sequence of legs comes to; made by `brief_path`."""

    conditions: PathConditions
    """What it is flown with."""
    stations: tuple[Station, ...]
    """The stations that are received along it."""
    fixes: dict[str, tuple[float, float]]
    """Places with names: latitude and longitude."""
    legs: tuple[PathLeg, ...]
    """Its legs, as many as were given."""
    path: GroundPath
    """The path over the ground, with points of its segments."""
    points: tuple[NDArray[np.float64], ...]
    """The points of each segment: a latitude and a longitude in each row."""
    total_distance_nm: float
    """Distance over the ground."""
    total_time_s: float
    """Time from the first fix to the end of the last leg."""

    @property
    def checks(self) -> tuple[PathCheck, ...]:
        """What a crew should know before flying it, leg by leg."""
        return tuple(check for leg in self.legs for check in leg.checks)

    def data(self, title: str = "Untitled plan") -> dict[str, Any]:
        """The brief as a dictionary that `json.dump` takes, with the keys of the brief that Rust's example gives as JSON.

        What has no number is None: a limit that is infinite, a straight or an arc that there is not, a radial overhead, what is magnetic without a
        variation. `courses_given` is "magnetic" with one, else "true": from that north the legs' courses and headings were given.

        Examples
        --------
        >>> import lubberline
        >>> fixes = {"START": (60.0, -10.0), "CORNER": (60.5, -10.0)}
        >>> codes = zip(["IF", "TF"], fixes.values())
        >>> legs = [lubberline.Leg(code, fix_latitude_deg=north, fix_longitude_deg=east) for code, (north, east) in codes]
        >>> brief = lubberline.brief_path(legs, true_airspeed_kt=200.0, altitude_ft=4000.0, fixes=fixes)
        >>> data = brief.data("Out of START")
        >>> f"{data['title']} to {data['legs'][1]['fix']}: {data['legs'][1]['distance_nm']:.1f} NM"
        'Out of START to CORNER: 30.1 NM'
        """
        given = self.conditions
        return {
            "title": title,
            "caution": CAUTION,
            **_norths(given),
            "pressure_altitude_ft": pressure_altitude_at_true_altitude_ft(
                given.altitude_ft, given.altimeter_setting_hpa, 0.0, given.isa_deviation_k
            ),
            "altimeter_setting_hpa": given.altimeter_setting_hpa,
            "isa_deviation_k": given.isa_deviation_k,
            "true_airspeed_kt": given.true_airspeed_kt,
            "wind_from_deg": given.wind_from_deg,
            "wind_speed_kt": given.wind_speed_kt,
            "climb_fpm": given.climb_fpm,
            "bank_limit_deg": given.bank_limit_deg,
            "turn_rate_limit_deg_per_s": _finite(given.turn_rate_limit_deg_per_s),
            "roll_rate_deg_per_s": _finite(given.roll_rate_deg_per_s),
            "total_distance_nm": self.total_distance_nm,
            "total_time_s": self.total_time_s,
            "legs": [_leg_data(leg) for leg in self.legs],
        }

    def geojson(self, title: str = "Untitled plan") -> dict[str, Any]:
        """The brief as a GeoJSON feature collection (RFC 7946), the same that Rust's example gives.

        The property `kind` tells features apart: "station", "fix", "straight", "turn", "arc", "begin" and "roll_out".

        Examples
        --------
        >>> import lubberline
        >>> fixes = [("IF", 60.0, -10.0), ("TF", 60.5, -10.0), ("TF", 60.5, -9.0)]
        >>> legs = [lubberline.Leg(code, fix_latitude_deg=north, fix_longitude_deg=east) for code, north, east in fixes]
        >>> brief = lubberline.brief_path(legs, true_airspeed_kt=250.0, altitude_ft=9000.0)
        >>> [feature["properties"]["kind"] for feature in brief.geojson()["features"]]
        ['straight', 'turn', 'straight', 'begin', 'roll_out']
        """
        features = [_station_feature(station) for station in self.stations]
        features += [feature(point(*place), {"kind": "fix", "ident": ident}) for ident, place in self.fixes.items()]
        for segment, drawn in zip(self.path.segments, self.points):
            features.append(_segment_feature(segment, self.legs[segment.leg], drawn))
        for leg in self.legs:
            for turn in leg.turns:
                features += [_point_feature("begin", leg, turn.begin), _point_feature("roll_out", leg, turn.roll_out)]
        about = {"title": title, "caution": CAUTION, **_norths(self.conditions)}
        return {"type": "FeatureCollection", **about, "features": features}

    @property
    def __geo_interface__(self) -> dict[str, Any]:
        """The feature collection of `geojson`."""
        return self.geojson()

    def _identity(self) -> tuple[Any, ...]:
        return self.conditions, self.stations, self.legs, self.path, tuple(self.fixes.items())

    def __eq__(self, other: object) -> bool:
        # NaN stands for what there is not, and is not equal to itself: what is shown is compared.
        return isinstance(other, PathBrief) and repr(self._identity()) == repr(other._identity()) and self.path == other.path

    def __hash__(self) -> int:
        return hash((self.conditions, self.path))

    def __repr__(self) -> str:
        return f"PathBrief({len(self.legs)} legs, {self.total_distance_nm:.3f} NM, {self.total_time_s:.1f} s)"

    def _repr_html_(self) -> str:
        return "".join(leg._repr_html_() for leg in self.legs)


def brief_path(
    legs: Sequence[Leg],
    *,
    true_airspeed_kt: float,
    altitude_ft: float,
    wind_from_deg: float | None = None,
    wind_speed_kt: float | None = None,
    wind_levels: WindLevels | None = None,
    bank_limit_deg: float = 25.0,
    turn_rate_limit_deg_per_s: float = 3.0,
    roll_rate_deg_per_s: float = 5.0,
    climb_fpm: float = 0.0,
    intercept_angle_deg: float = 30.0,
    manual_distance_nm: float = 10.0,
    magnetic_variation_deg: float | None = None,
    stations: Iterable[Station] = (),
    cone_half_angle_deg: float | Sequence[float] = 50.0,
    fixes: Mapping[str, tuple[float, float]] | None = None,
    altimeter_setting_hpa: float = 1013.25,
    isa_deviation_k: float = 0.0,
    holding_rule: str = "icao",
) -> PathBrief:
    """Brief a sequence of path-and-terminator legs: fly it, and say of each leg what a crew briefs.

    Of each leg that is its course, heading, groundspeed, wind, distance and time, where its turns begin and end and what the stations are
    seen as there, and what should be known before: an arc that takes more bank than the limit, a turn that begins in a cone, a
    station that is not received where it is needed, an altitude that is passed before the leg to it begins, a racetrack flown faster than is
    allowed.

    Parameters
    ----------
    legs : sequence of Leg
        The legs; the first says where the sequence begins: IF, or a leg from a fix.
    true_airspeed_kt, altitude_ft : float
        True airspeed, and altitude above mean sea level at the first fix.
    wind_from_deg, wind_speed_kt : float, optional
        Where the wind blows from, true, and its speed; calm air if both are left out.
    wind_levels : sequence of WindLevel or of three numbers, or array of three columns, optional
        Winds by level in place of that wind, as `fly_legs` takes them.
    bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s : float
        Limits of the turns.
    climb_fpm : float
        Rate of climb, negative to descend.
    intercept_angle_deg : float
        The angle at which a course is intercepted from beside it.
    manual_distance_nm : float
        How far a leg is drawn that is ended by hand.
    magnetic_variation_deg : float, optional
        Magnetic variation that the courses and headings of the legs are given with, as `fly_legs` takes it.
    stations : iterable of Station
        Stations that are received along it.
    cone_half_angle_deg : float or sequence of float
        Half-angle of the cone of confusion from the vertical: of all stations, or of each.
    fixes : mapping of str to (float, float), optional
        What places are called: latitude and longitude of each name. A leg to or from such a place, or a station, bears its name.
    altimeter_setting_hpa, isa_deviation_k : float
        Altimeter setting reduced to sea level, and deviation of the temperature from standard: from them follows the airspeed of a
        racetrack.
    holding_rule : str
        Whose speed limit a racetrack is checked against: a word of `holding_speed`.

    Returns
    -------
    PathBrief

    Raises
    ------
    NavigationError
        A value outside its range, one that a leg needs and lacks, or a leg that cannot be flown: the message says which and why.

    Examples
    --------
    An invented departure: north to a corner, east past it, with the DME of a station there.

    >>> import lubberline
    >>> fixes = [("IF", 60.0, -10.0), ("TF", 60.5, -10.0), ("TF", 60.5, -9.0)]
    >>> legs = [lubberline.Leg(code, fix_latitude_deg=north, fix_longitude_deg=east) for code, north, east in fixes]
    >>> corner = lubberline.Station(60.5, -10.0, elevation_ft=300.0, declination_deg=-4.0, ident="CNR")
    >>> brief = lubberline.brief_path(
    ...     legs, true_airspeed_kt=250.0, altitude_ft=9000.0, wind_from_deg=300.0, wind_speed_kt=40.0, stations=[corner]
    ... )
    >>> last = brief.legs[-1]
    >>> f"{last.code} {last.course_deg:03.0f}, heading {last.heading_deg:03.0f}, {last.groundspeed_kt:.0f} kt"
    'TF 090, heading 085, 284 kt'
    >>> begin = last.turns[0].begin.stations[0]
    >>> f"begin the turn at {begin.dme_nm:.1f} DME on radial {begin.radial_deg:03.0f}"
    'begin the turn at 2.6 DME on radial 184'
    """
    numbers = {
        "true_airspeed_kt": number("true_airspeed_kt", true_airspeed_kt),
        "bank_limit_deg": number("bank_limit_deg", bank_limit_deg),
        "turn_rate_limit_deg_per_s": number("turn_rate_limit_deg_per_s", turn_rate_limit_deg_per_s),
        "roll_rate_deg_per_s": number("roll_rate_deg_per_s", roll_rate_deg_per_s),
        "altitude_ft": number("altitude_ft", altitude_ft),
        "climb_fpm": number("climb_fpm", climb_fpm),
        "intercept_angle_deg": number("intercept_angle_deg", intercept_angle_deg),
        "manual_distance_nm": number("manual_distance_nm", manual_distance_nm),
    }
    if not isinstance(holding_rule, str):
        raise TypeError(f"holding_rule must be a text, not {type(holding_rule).__name__}")
    surroundings = number("altimeter_setting_hpa", altimeter_setting_hpa), number("isa_deviation_k", isa_deviation_k), holding_rule
    legs, stations = tuple(legs), tuple(stations)
    others = [leg for leg in legs if not isinstance(leg, Leg)]
    if others:
        raise TypeError(f"legs must be of Leg, not {type(others[0]).__name__}")
    given = mapping("fixes", {} if fixes is None else fixes)
    named = {ident: _place(ident, north, east) for ident, (north, east) in given.items()}
    briefed = _native.brief_path(
        [(leg.code, dict(leg.numbers)) for leg in legs],
        _conditions(
            wind_from_deg=wind_from_deg,
            wind_speed_kt=wind_speed_kt,
            levels=(None,) * 4,
            wind_levels=wind_levels,
            magnetic_variation_deg=magnetic_variation_deg,
            **numbers,
        ),
        _spelled(stations, cone_half_angle_deg),
        surroundings,
        _SPACING_NM,
    )
    wind = briefed["legs"][0]
    conditions = PathConditions(
        numbers["true_airspeed_kt"],
        numbers["altitude_ft"],
        wind["wind_from_deg"],
        wind["wind_speed_kt"],
        numbers["climb_fpm"],
        numbers["bank_limit_deg"],
        numbers["turn_rate_limit_deg_per_s"],
        numbers["roll_rate_deg_per_s"],
        *surroundings,
        None if magnetic_variation_deg is None else float(magnetic_variation_deg),
    )
    segments = tuple(PathSegment(leg, kind, *start, *end, *rest, *flying, *turn) for leg, kind, start, end, rest, flying, turn in briefed["segments"])
    points = tuple(np.array(each, dtype=float).reshape(-1, 2) for each in briefed["points"])
    # The end of each segment is the start of the next.
    drawn = np.concatenate([points[0][:1], *(each[1:] for each in points)])
    return PathBrief(
        conditions,
        stations,
        named,
        _legs(briefed, legs, stations, named),
        GroundPath(segments, drawn[:, 0], drawn[:, 1]),
        points,
        briefed["total_distance_nm"],
        briefed["total_time_s"],
    )


def _place(ident: str, north: float, east: float) -> tuple[float, float]:
    """The place of a name, each checked."""
    if not isinstance(ident, str):
        raise TypeError(f"the name of a fix must be a text, not {type(ident).__name__}")
    place = number(f"latitude of {ident}", north), number(f"longitude of {ident}", east)
    _native.check_fix(ident, *place)
    return place


def _spelled(stations: tuple[Station, ...], cone_half_angle_deg: float | Sequence[float]) -> list[tuple[list[float], str]]:
    """The stations as the native function takes them."""
    for place, station in enumerate(stations, start=1):
        if not isinstance(station, Station):
            raise TypeError(f"station {place} must be a Station, not {type(station).__name__}")
    cones: Sequence[float] = [cone_half_angle_deg] * len(stations) if np.ndim(cone_half_angle_deg) == 0 else cone_half_angle_deg  # type: ignore[list-item, assignment]
    if len(cones) != len(stations):
        raise ValueError(f"cone_half_angle_deg has {len(cones)} values; allowed: one, or one for each of {len(stations)} stations")
    return [
        (
            [station.latitude_deg, station.longitude_deg, station.elevation_ft, station.declination_deg, number("cone_half_angle_deg", cone)],
            station.ident,
        )
        for station, cone in zip(stations, cones)
    ]


def _legs(
    briefed: dict[str, Any], legs: tuple[Leg, ...], stations: tuple[Station, ...], named: dict[str, tuple[float, float]]
) -> tuple[PathLeg, ...]:
    """The legs with their turns and checks."""
    seen: dict[tuple[int, bool], list[StationReading]] = {}
    for turn, at_roll_out, station, *reading in briefed["readings"]:
        seen.setdefault((turn, at_roll_out), []).append(StationReading(stations[station], *reading))
    turns: list[list[PathTurn]] = [[] for _ in legs]
    first: list[int] = []
    for place, turn in enumerate(briefed["turns"]):
        leg, begin, roll_out = turn.pop("leg"), turn.pop("begin"), turn.pop("roll_out")
        begun, ended = (_point(at, seen.get((place, at is roll_out), [])) for at in (begin, roll_out))
        turns[leg].append(PathTurn(begun, ended, **turn))
    for flown in turns:
        first.append(first[-1] + len(turns[len(first) - 1]) if first else 0)
    checks: list[list[PathCheck]] = [[] for _ in legs]
    for check in briefed["checks"]:
        leg, turn, station = (check.pop(name) for name in ("leg", "turn", "station"))
        of_leg = None if turn is None else turn - first[leg]
        checks[leg].append(PathCheck(**check, turn=of_leg, station=None if station is None else stations[station]))
    places: dict[tuple[Any, Any], str] = {place: ident for ident, place in reversed(named.items())}
    for station in stations:
        places.setdefault((station.latitude_deg, station.longitude_deg), station.ident)
    return tuple(
        PathLeg(
            number=place + 1,
            fix=places.get((leg.numbers.get("fix_latitude_deg", math.nan), leg.numbers.get("fix_longitude_deg", math.nan))) or None,
            turns=tuple(turns[place]),
            checks=tuple(checks[place]),
            **briefed["legs"][place],
        )
        for place, leg in enumerate(legs)
    )


def _point(place: tuple[float, float, float, float, float, float | None], seen: list[StationReading]) -> PathPoint:
    return PathPoint(*place, tuple(seen))


def _norths(given: PathConditions) -> dict[str, Any]:
    """From which north courses and headings were given."""
    variation = given.magnetic_variation_deg
    return {"courses_given": "true" if variation is None else "magnetic", "magnetic_variation_deg": variation}


def _finite(value: Any) -> Any:
    """None for a number that JSON has no word for."""
    return None if isinstance(value, float) and not math.isfinite(value) else value


def _leg_data(leg: PathLeg) -> dict[str, Any]:
    names = ["number", "code", "meaning", "fix", "course_deg", "heading_deg", "magnetic_course_deg", "magnetic_heading_deg", "groundspeed_kt"]
    return {
        **{name: getattr(leg, name) for name in (*names, "headwind_kt", "crosswind_kt", "distance_nm", "time_s")},
        "end_after_start_s": leg.end_time_s,
        "end_altitude_ft": leg.end_altitude_ft,
        "shortest_straight_nm": _finite(leg.shortest_straight_nm),
        "arc_bank_deg": _finite(leg.arc_bank_deg),
        "turns": [_turn_data(turn) for turn in leg.turns],
        "checks": [check.sentence for check in leg.checks],
    }


def _turn_data(turn: PathTurn) -> dict[str, Any]:
    return {
        "begin": _point_data(turn.begin),
        "roll_out": _point_data(turn.roll_out),
        "heading_change_deg": turn.heading_change_deg,
        "bank_deg": turn.bank_deg,
        "governed_by": turn.governed_by,
        "time_s": turn.time_s,
    }


def _point_data(place: PathPoint) -> dict[str, Any]:
    data = {one.name: getattr(place, one.name) for one in fields(place)[:6]}
    return {**data, "stations": [_reading_data(reading) for reading in place.stations]}


def _reading_data(reading: StationReading) -> dict[str, Any]:
    return {"ident": reading.station.ident, "dme_nm": reading.dme_nm, "radial_deg": _finite(reading.radial_deg), "flag": reading.flag}


def _station_feature(station: Station) -> dict[str, Any]:
    properties = {
        "kind": "station",
        "ident": station.ident,
        "elevation_ft": station.elevation_ft,
        "declination_deg": station.declination_deg,
    }
    return feature(point(station.latitude_deg, station.longitude_deg), properties)


def _segment_feature(segment: PathSegment, leg: PathLeg, drawn: NDArray[np.float64]) -> dict[str, Any]:
    properties = {
        "kind": segment.kind,
        "leg": leg.number,
        "code": leg.code,
        "length_nm": segment.length_nm,
        "time_s": segment.duration_s,
        "end_after_start_s": segment.end_time_s,
        "end_altitude_ft": segment.end_altitude_ft,
    }
    return feature(line(map(tuple, drawn.tolist())), properties)


def _point_feature(kind: str, leg: PathLeg, place: PathPoint) -> dict[str, Any]:
    properties = {
        "kind": kind,
        "leg": leg.number,
        "code": leg.code,
        "altitude_ft": place.altitude_ft,
        "after_start_s": place.after_start_s,
        "stations": [_reading_data(reading) for reading in place.stations],
    }
    return feature(point(place.latitude_deg, place.longitude_deg), properties)
