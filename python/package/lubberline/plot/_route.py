"""The plan of a route or a procedure as it is flown over the ground."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from matplotlib.axes import Axes

from .._call import whole_wind
from .._functions import cone_radius_nm, geodesic_inverse
from .._legs import GroundPath, PathSegment
from .._station import Station
from . import _look
from ._labels import Labels


def route(
    path: GroundPath,
    *,
    stations: Sequence[Station] = (),
    names: Sequence[str] = (),
    cone_half_angle_deg: float | None = 50.0,
    wind_from_deg: float | None = None,
    wind_speed_kt: float | None = None,
    ax: Axes | None = None,
) -> Axes:
    """A path over the ground from above, its turns marked, with the reading of the nearest station where each turn begins. True north is up.

    Parameters
    ----------
    path : GroundPath
        What `lubberline.fly_legs` gives.
    stations : sequence of Station
        Stations to draw; the first is the middle of the plan (the path's beginning, if there is none).
    names : sequence of str
        What to call the legs, in order; an empty text names none.
    cone_half_angle_deg : float
        Half-angle of the cones of confusion, drawn as they are cut by the greatest altitude; None leaves them out.
    wind_from_deg, wind_speed_kt : float, optional
        The wind that the path was flown in, true, for an arrow beside that of north; without a wind neither is drawn.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> fixes = [("IF", 60.0, -10.0), ("TF", 60.5, -10.0), ("TF", 60.5, -9.0)]
    >>> legs = [lubberline.Leg(code, fix_latitude_deg=latitude, fix_longitude_deg=longitude) for code, latitude, longitude in fixes]
    >>> path = lubberline.fly_legs(legs, true_airspeed_kt=250.0, altitude_ft=9000.0)
    >>> ax = lubberline.plot.route(path, stations=[lubberline.Station(60.5, -10.0, ident="NOR")])
    >>> ax.get_ylabel()
    'north of NOR, true north (NM)'
    """
    wind = None if wind_from_deg is None and wind_speed_kt is None else whole_wind(wind_from_deg, wind_speed_kt, "no arrow")
    ax = _look.axes(ax, size=(6.4, 5.6))
    first = path.segments[0] if path.segments else None
    if stations:
        middle, of = (stations[0].latitude_deg, stations[0].longitude_deg), stations[0].ident or "the station"
    else:
        middle, of = ((first.start_latitude_deg, first.start_longitude_deg) if first else (0.0, 0.0)), "the beginning"
    _look.plan(ax, of=of, north="true")

    def place(latitude_deg: float, longitude_deg: float) -> tuple[float, float]:
        line = geodesic_inverse(*middle, latitude_deg, longitude_deg)
        east, north = _look.place(line.initial_bearing_deg, line.distance_nm)
        return float(east), float(north)

    every = geodesic_inverse(*middle, path.latitude_deg, path.longitude_deg)
    east, north = _look.place(every.initial_bearing_deg, every.distance_nm)
    altitude_ft = max((segment.end_altitude_ft for segment in path.segments), default=0.0)
    if cone_half_angle_deg is not None:
        for number, station in enumerate(stations):
            radius_nm = cone_radius_nm(altitude_ft - station.elevation_ft, cone_half_angle_deg)
            at = place(station.latitude_deg, station.longitude_deg)
            _look.cone(ax, radius_nm, at, name="cone of confusion" if number == 0 else None)
    ax.plot(east, north, label="path over the ground", **_look.LINES["path"])

    begins: list[tuple[PathSegment, tuple[float, float], str]] = []
    for number, segment in enumerate(path.segments):
        here = place(segment.start_latitude_deg, segment.start_longitude_deg)
        if segment.kind == "turn":
            name = "a turn begins" if not begins else None
            ax.plot(*here, marker="o", markersize=6, linestyle="", color=_look.COLORS["path"], markeredgecolor="white", zorder=6, label=name)
            before = path.segments[number - 1] if number else segment
            begins.append((segment, here, _reading(segment, before.end_altitude_ft, stations) if _is_join(path, number) else ""))
        elif segment.length_nm > 0.08 * path.length_nm:
            end = place(segment.end_latitude_deg, segment.end_longitude_deg)
            half = int(np.argmin(np.hypot(east - (here[0] + end[0]) / 2.0, north - (here[1] + end[1]) / 2.0)))
            half = max(half, 1)
            toward_deg = np.degrees(np.arctan2(east[half] - east[half - 1], north[half] - north[half - 1]))
            _look.forward(ax, (float(east[half]), float(north[half])), float(toward_deg))
    for station in stations:
        _look.station(ax, place(station.latitude_deg, station.longitude_deg))
    _look.widen(ax)
    if wind is not None:
        _look.wind(ax, *wind)

    _look.legend(ax, columns=3)
    labels = Labels(ax)
    for segment, here, reading in begins:
        turned = (segment.end_course_deg - segment.start_course_deg + 180.0) % 360.0 - 180.0
        if reading:
            labels.add(here, reading, prefer_deg=segment.start_course_deg - (90.0 if turned >= 0.0 else -90.0))
    for station in stations:
        if station.ident:
            labels.add(place(station.latitude_deg, station.longitude_deg), station.ident, prefer_deg=315.0, fontweight="bold")
    for number, name in enumerate(names):
        longest = max((one for one in path.segments if one.leg == number), key=lambda one: one.length_nm, default=None)
        if name and longest is not None:
            ends = (
                place(longest.start_latitude_deg, longest.start_longitude_deg),
                place(longest.end_latitude_deg, longest.end_longitude_deg),
            )
            chord = np.mean(ends, axis=0)
            nearest = int(np.argmin(np.hypot(east - chord[0], north - chord[1])))
            labels.add((float(east[nearest]), float(north[nearest])), name, prefer_deg=longest.start_course_deg + 90.0)
    return ax


def _is_join(path: GroundPath, number: int) -> bool:
    """Whether a turn is the first one of its leg: the others are turns within a racetrack or a procedure turn."""
    return all(one.leg != path.segments[number].leg or one.kind != "turn" for one in path.segments[:number])


def _reading(segment: PathSegment, altitude_ft: float, stations: Sequence[Station]) -> str:
    """Ident, DME and radial of the nearest station where a turn begins; nothing over it, where they say nothing."""
    seen = [(one, one.observe(segment.start_latitude_deg, segment.start_longitude_deg, altitude_ft)) for one in stations]
    if not seen:
        return ""
    station, nearest = min(seen, key=lambda pair: pair[1].dme_nm)
    if nearest.ground_distance_nm < 0.1 * nearest.dme_nm:
        return ""
    return f"{station.ident} {nearest.dme_nm:.1f} DME\nradial {nearest.radial_deg:03.0f}\N{DEGREE SIGN}".strip()
