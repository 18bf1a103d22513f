"""The plan of a holding pattern in wind, with that of still air and the sectors of its entry."""

from __future__ import annotations

from typing import Literal

import numpy as np
from matplotlib.axes import Axes
from matplotlib.patches import Wedge

from .._call import whole_wind
from .._functions import holding_pattern, holding_pattern_at
from . import _look
from ._labels import Labels

_POINTS = 240
_SECTORS = (("direct", 110.0, 290.0), ("parallel", 0.0, 110.0), ("offset", -70.0, 0.0))


def hold(
    inbound_course_deg: float,
    *,
    true_airspeed_kt: float,
    side: Literal["right", "left"] = "right",
    timed: Literal["inbound", "outbound", "outbound_from_level"] = "inbound",
    time_s: float = 60.0,
    wind_from_deg: float | None = None,
    wind_speed_kt: float | None = None,
    bank_limit_deg: float = 25.0,
    turn_rate_limit_deg_per_s: float = 3.0,
    roll_rate_deg_per_s: float = 5.0,
    entries: bool = True,
    ident: str = "",
    ax: Axes | None = None,
) -> Axes:
    """A holding pattern from above: as it closes in the wind, and beside it as it would be in calm air.

    Parameters
    ----------
    inbound_course_deg, true_airspeed_kt : float
        Course flown to the fix, and airspeed.
    side, timed, time_s, bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s
        As for `lubberline.holding_pattern`.
    wind_from_deg, wind_speed_kt : float, optional
        Where the wind blows from, against the same north, and its speed; calm air if both are left out.
    entries : bool
        Whether the sectors are shown from which it is entered directly, parallel or offset: by where an aircraft comes from.
    ident : str
        The fix's name.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline.plot
    >>> ax = lubberline.plot.hold(270.0, true_airspeed_kt=210.0, wind_from_deg=0.0, wind_speed_kt=35.0)
    >>> [line.get_label() for line in ax.get_lines() if not line.get_label().startswith("_")]
    ['inbound course', 'pattern in the wind', 'pattern in calm air', 'outbound leg ends', 'inbound leg begins']
    """
    wind_from_deg, wind_speed_kt = whole_wind(wind_from_deg, wind_speed_kt)
    sign = 1.0 if side == "right" else -1.0
    turns = (bank_limit_deg, turn_rate_limit_deg_per_s, roll_rate_deg_per_s)
    legs = (inbound_course_deg, side, timed, time_s, true_airspeed_kt)
    pattern = holding_pattern(*legs, wind_from_deg, wind_speed_kt, *turns)
    ax = _look.axes(ax, size=(6.4, 5.6))
    _look.plan(ax, of=ident or "the fix")
    size_nm = max(pattern.length_nm, pattern.width_nm)
    tail = _look.place(inbound_course_deg + 180.0, 1.05 * size_nm)
    ahead = _look.place(inbound_course_deg, 0.45 * size_nm)
    ax.plot([tail[0], ahead[0]], [tail[1], ahead[1]], label="inbound course", **_look.LINES["course"])

    def path(from_deg: float, speed_kt: float) -> tuple[_look.Array, _look.Array]:
        duration_s = holding_pattern(*legs, from_deg, speed_kt, *turns).duration_s
        points = holding_pattern_at(np.linspace(0.0, duration_s, _POINTS + 1), *legs, from_deg, speed_kt, *turns)
        return _look.place(points.bearing_from_fix_deg, points.distance_nm)

    east, north = path(wind_from_deg, wind_speed_kt)
    ax.plot(east, north, label="pattern in the wind" if wind_speed_kt else "pattern", **_look.LINES["path"])
    if wind_speed_kt:
        ax.plot(*path(0.0, 0.0), label="pattern in calm air", **_look.LINES["over"])

    bearing_deg = inbound_course_deg + np.degrees(
        np.arctan2(sign * pattern.outbound_end_across_nm, -pattern.outbound_end_before_fix_nm)
    )
    at = _pair(_look.place(bearing_deg, np.hypot(pattern.outbound_end_before_fix_nm, pattern.outbound_end_across_nm)))
    level = _pair(_look.place(inbound_course_deg + 180.0, pattern.inbound_leg_nm))
    ax.plot(*at, marker="s", markersize=7, linestyle="", label="outbound leg ends", color=_look.COLORS["path"], markeredgecolor="white", zorder=6)
    ax.plot(*level, marker="o", markersize=6, linestyle="", label="inbound leg begins", color=_look.COLORS["path"], markeredgecolor="white", zorder=6)
    # Half-way along each leg, counted back from its end.
    step_s = pattern.duration_s / _POINTS
    ends = int(np.argmin(np.hypot(east - at[0], north - at[1]))), _POINTS
    for end, leg_s in zip(ends, (pattern.outbound_time_s, pattern.inbound_time_s), strict=True):
        middle = max(end - round(0.5 * leg_s / step_s), 1)
        toward_deg = np.degrees(np.arctan2(east[middle] - east[middle - 1], north[middle] - north[middle - 1]))
        _look.forward(ax, (float(east[middle]), float(north[middle])), float(toward_deg))
    if entries:
        _sectors(ax, inbound_course_deg, sign, 0.26 * size_nm)
    _look.station(ax)
    _look.widen(ax)
    _look.wind(ax, wind_from_deg, wind_speed_kt)
    _look.legend(ax, columns=3)
    labels = Labels(ax)
    outbound = f"outbound heading {pattern.outbound_heading_deg:03.0f}\N{DEGREE SIGN}\nfor {_clock(pattern.outbound_time_s)}"
    labels.add(at, outbound, prefer_deg=inbound_course_deg + 90.0 * sign)
    heading = (inbound_course_deg + pattern.inbound_correction_deg) % 360.0
    inbound = (
        f"inbound {inbound_course_deg % 360.0:03.0f}\N{DEGREE SIGN}, heading {heading:03.0f}\N{DEGREE SIGN}\n"
        f"for {_clock(pattern.inbound_time_s)}"
    )
    labels.add((0.75 * level[0], 0.75 * level[1]), inbound, prefer_deg=inbound_course_deg - 90.0 * sign)
    if ident:
        labels.add((0.0, 0.0), ident, prefer_deg=inbound_course_deg - 45.0 * sign, fontweight="bold")
    return ax


def _pair(point: tuple[_look.Array, _look.Array]) -> tuple[float, float]:
    return float(point[0]), float(point[1])


def _clock(time_s: float) -> str:
    minutes, seconds = divmod(round(time_s), 60)
    return f"{minutes}:{seconds:02d}"


def _sectors(ax: Axes, inbound_deg: float, sign: float, radius_nm: float) -> None:
    """Wedges at the fix, on the side an aircraft comes from, named by the entry."""
    tones = {"direct": "#eef2f6", "parallel": "#d5dfe9", "offset": "#b9c9d9"}
    for name, low, high in _SECTORS:
        # Where an aircraft comes from, counted from the inbound course to the side of the turns.
        bearings = [inbound_deg + sign * angle for angle in (low, high)]
        first, last = (90.0 - bearings[1], 90.0 - bearings[0]) if sign > 0.0 else (90.0 - bearings[0], 90.0 - bearings[1])
        ax.add_patch(Wedge((0.0, 0.0), radius_nm, first, last, facecolor=tones[name], edgecolor="white", linewidth=1.2, zorder=0.6))
        # The direct sector holds the inbound leg: its name goes beside that.
        aside_deg = 30.0 * sign if name == "direct" else 0.0
        middle = _look.place((bearings[0] + bearings[1]) / 2.0 + aside_deg, 0.64 * radius_nm)
        ax.annotate(name, (float(middle[0]), float(middle[1])), ha="center", va="center", fontsize=8, color=_look.COLORS["path"], zorder=1)
