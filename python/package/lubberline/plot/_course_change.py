"""The plan of a course change: where the turn begins, how it is flown, what flying over or the rule of thumb would do."""

from __future__ import annotations

import numpy as np
from matplotlib.axes import Axes

from .._course_change import CourseChange
from .._functions import ground_distance_nm, least_dme_nm, rule_reading_nm
from . import _look
from ._labels import Labels


def course_change(change: CourseChange, *, fly_over: bool = True, rule: bool = True, ident: str = "", ax: Axes | None = None) -> Axes:
    """A course change from above, in the north that its courses are counted from.

    Shown are both courses, the turn as planned from roll-in to roll-out, the cone of confusion at its height, and at request the way of
    an aircraft that flies over the station first and the turn of one that begins where the rule of thumb says: at the DME reading of a third of a
    mile per 60 kt of groundspeed with the height in miles added (`lubberline.rule_reading_nm`).

    Parameters
    ----------
    change : CourseChange
        The course change.
    fly_over, rule : bool
        Whether these are drawn beside the turn. A rule that says to begin at less than
        the reading overhead is not drawn, nor one for the long way round.
    ident : str
        The station's name.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Raises
    ------
    ValueError
        A course change of NaN.

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=300.0, height_above_station_ft=9_000.0)
    >>> ax = lubberline.plot.course_change(change, ident="OST")
    >>> [line.get_label() for line in ax.get_lines() if not line.get_label().startswith("_")]
    ['courses', 'turn as planned', 'flown over first', 'begun by the rule of thumb']
    """
    if not np.isfinite(change.lead_nm):
        raise ValueError("the course change holds no numbers: there is nothing to draw")
    ax = _look.axes(ax, size=(6.4, 6.2))
    _look.plan(ax, of=ident or "the station")
    inbound_deg, outbound_deg = change.settings[0], change.settings[1]
    height_ft, side = change.settings[8], 1.0 if change.heading_change_deg >= 0.0 else -1.0
    over = change.fly_over
    beyond_nm = max(change.past_fix_at_roll_out_nm, over.established_past_fix_nm if fly_over else 0.0, change.lead_nm, 1.0)
    before_nm = max(change.lead_nm, change.past_fix_at_roll_out_nm, 1.0)
    margin_nm = 0.25 * before_nm

    _look.cone(ax, change.cone_radius_nm, name="cone of confusion")
    start = _pair(_look.place(inbound_deg + 180.0, before_nm + 2.0 * margin_nm))
    out = _pair(_look.place(outbound_deg, beyond_nm + margin_nm))
    ax.plot([start[0], 0.0, out[0]], [start[1], 0.0, out[1]], label="courses", **_look.LINES["course"])

    times_s = np.linspace(
        -1.6 * margin_nm / change.groundspeed_before_kt * 3600.0,
        change.duration_s + 1.6 * margin_nm / change.groundspeed_after_kt * 3600.0,
        241,
    )
    points = change.at(times_s)
    ax.plot(*_look.place(points.bearing_from_fix_deg, points.distance_nm), label="turn as planned", **_look.LINES["path"])
    if fly_over and np.isfinite(over.duration_s):
        way = change.fly_over_at(np.linspace(0.0, over.duration_s, 241))
        ax.plot(*_look.place(way.bearing_from_fix_deg, way.distance_nm), label="flown over first", **_look.LINES["over"])
    rule_lead_nm = _rule_lead_nm(change) if rule and abs(change.heading_change_deg) < 180.0 else np.nan
    if np.isfinite(rule_lead_nm):
        # The same turn, begun so much earlier or later.
        later = _look.place(inbound_deg, change.lead_nm - rule_lead_nm)
        turning = change.at(times_s[times_s >= 0.0])
        turn_east, turn_north = _look.place(turning.bearing_from_fix_deg, turning.distance_nm)
        ax.plot(turn_east + later[0], turn_north + later[1], label="begun by the rule of thumb", **_look.LINES["rule"])

    at_start, at_end = change.at(times_s[0] / 2.0), change.at((change.duration_s + times_s[-1]) / 2.0)
    for point, course_deg in ((at_start, inbound_deg), (at_end, outbound_deg)):
        _look.forward(ax, _pair(_look.place(point.bearing_from_fix_deg, point.distance_nm)), course_deg)
    begin = _pair(_look.place(inbound_deg + 180.0, change.lead_nm))
    end = _pair(_look.place(outbound_deg, change.past_fix_at_roll_out_nm))
    for at, marker in ((begin, "o"), (end, "s")):
        ax.plot(*at, marker=marker, markersize=7, color=_look.COLORS["path"], markeredgecolor="white", zorder=6)
    _look.station(ax)
    _look.widen(ax)
    _look.wind(ax, change.settings[3], change.settings[4])

    _look.legend(ax)
    labels = Labels(ax)
    begin_text = f"begin the turn\n{change.dme_at_roll_in_nm:.1f} DME\nradial {change.radial_at_roll_in_deg:03.0f}\N{DEGREE SIGN}"
    labels.add(begin, begin_text, prefer_deg=inbound_deg - 90.0 * side, color=_look.COLORS["path"])
    end_text = f"wings level\n{change.dme_at_roll_out_nm:.1f} DME\nradial {change.radial_at_roll_out_deg:03.0f}\N{DEGREE SIGN}"
    labels.add(end, end_text, prefer_deg=outbound_deg + 120.0 * side, color=_look.COLORS["path"])
    if np.isfinite(rule_lead_nm):
        where = _pair(_look.place(inbound_deg + 180.0, rule_lead_nm))
        ax.plot(*where, marker="D", markersize=7, color=_look.COLORS["rule"], markeredgecolor="white", zorder=5)
        reading_nm = rule_reading_nm(change.groundspeed_before_kt, _turned_deg(change), height_ft)
        labels.add(where, f"by rule\n{reading_nm:.1f} DME", prefer_deg=inbound_deg + 90.0 * side, color=_look.COLORS["rule"])
    if ident:
        labels.add((0.0, 0.0), ident, prefer_deg=inbound_deg - 45.0 * side, fontweight="bold")
    return ax


def _turned_deg(change: CourseChange) -> float:
    return float((change.settings[1] - change.settings[0] + 180.0) % 360.0 - 180.0)


def _rule_lead_nm(change: CourseChange) -> float:
    """How far before the station the DME shows what the rule says; NaN where it never shows so little."""
    height_ft = change.settings[8]
    reading_nm = rule_reading_nm(change.groundspeed_before_kt, _turned_deg(change), height_ft)
    return ground_distance_nm(reading_nm, height_ft) if reading_nm > abs(least_dme_nm(height_ft)) else np.nan


def _pair(point: tuple[_look.Array, _look.Array]) -> tuple[float, float]:
    return float(point[0]), float(point[1])
