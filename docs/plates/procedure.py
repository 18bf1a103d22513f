"""Intercepts at double the angle, course reversals as flown, an arc in straight legs."""

import lubberline as lub
import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from lubberline.plot import _look
from lubberline.plot._labels import Labels

from . import figure, mark, middle_of, picture

OST = (61.25, -11.5)


@picture
def double_angle() -> Figure:
    drawn, ax = figure(6.2, 5.4)
    _look.plan(ax, of="OST")
    on_deg, at_nm, wanted_deg = 220.0, 20.0, 200.0
    way = lub.double_angle_intercept(on_deg, at_nm, wanted_deg, 180.0, 290.0, 30.0)
    here = np.array(_look.place(on_deg, at_nm))
    there = here + np.array(_look.place(way.track_deg, way.distance_nm))
    for radial_deg, reach_nm in ((on_deg, at_nm + 2.0), (wanted_deg, 12.5)):
        end = _look.place(radial_deg, reach_nm)
        ax.plot([0.0, end[0]], [0.0, end[1]], label="radials" if radial_deg == on_deg else None, **_look.LINES["course"])
    ax.plot([here[0], there[0], 0.0], [here[1], there[1], 0.0], label="way over the ground, without its turns", **_look.LINES["path"])
    mark(ax, here)
    mark(ax, there)
    _look.forward(ax, middle_of(here, there), way.track_deg)
    _look.forward(ax, middle_of((0.0, 0.0), there), wanted_deg + 180.0)
    _look.station(ax)
    ax.set_xlim(-18.0, 5.0)
    ax.set_ylim(-19.0, 2.0)
    _look.wind(ax, 290.0, 30.0)
    _look.legend(ax)
    labels = Labels(ax)
    minutes = f"{way.distance_nm:.2f} NM, {way.time_s / 60.0:.1f} min"
    labels.add(middle_of(here, there), f"track {way.track_deg:03.0f}\N{DEGREE SIGN}, heading {way.heading_deg:03.0f}\N{DEGREE SIGN}\n{minutes}", prefer_deg=330.0, color=_look.COLORS["path"])
    labels.add(middle_of((0.0, 0.0), there), f"as far again,\n{way.time_to_station_s / 60.0:.1f} min", prefer_deg=110.0, color=_look.COLORS["path"])
    labels.add(tuple(map(float, here)), "radial 220\N{DEGREE SIGN},\n20 NM", prefer_deg=150.0)
    labels.add(tuple(map(float, _look.place(wanted_deg, 12.3))), "radial 200\N{DEGREE SIGN}", prefer_deg=90.0)
    labels.add((0.0, 0.0), "OST", prefer_deg=45.0, fontweight="bold")
    return drawn


AIRSPEED_KT, OUTBOUND_DEG, OFF_S = 140.0, 90.0, 60.0
WIND = {"wind_from_deg": 30.0, "wind_speed_kt": 25.0}


@picture
def course_reversals() -> Figure:
    """Right turns off the course outbound, in a wind."""
    drawn, axes = figure(9.6, 4.4, 1, 2)
    outbound_deg, inbound_deg = (held(course_deg).heading_deg for course_deg in (OUTBOUND_DEG, OUTBOUND_DEG + 180.0))
    turn = lub.procedure_turn_45_180(OUTBOUND_DEG, "right", OFF_S, AIRSPEED_KT, *WIND.values())
    first_s = lub.rolled_turn(AIRSPEED_KT, turn.off_heading_deg - outbound_deg).duration_s
    straight_s = turn.straight_nm / held(turn.off_track_deg + 180.0).groundspeed_kt * 3600.0
    ways = [(turn.off_heading_deg, "right", OFF_S - first_s), (turn.back_heading_deg, "left", straight_s), (inbound_deg, "left", 0.0)]
    east, north = fly(outbound_deg, ways)
    plan(axes[0], "45\N{DEGREE SIGN} off for a minute, 180\N{DEGREE SIGN} back")
    axes[0].plot(east, north, label="path", **_look.LINES["path"])
    ends = [[(float(east[-1]), float(north[-1])), f"level inbound\nafter {turn.duration_s:.0f} s,\n{turn.established_nm:.2f} NM out", "path", 195.0]]
    finish(axes[0], ends)

    plan(axes[1], "80\N{DEGREE SIGN} off, 260\N{DEGREE SIGN} back")
    published = lub.procedure_turn_80_260(OUTBOUND_DEG, "right", 80.0, AIRSPEED_KT, *WIND.values())
    ends = []
    for angle_deg, style, prefer_deg in ((80.0, "path", 160.0), (published.exact_angle_deg, "over", 340.0)):
        turn = lub.procedure_turn_80_260(OUTBOUND_DEG, "right", angle_deg, AIRSPEED_KT, *WIND.values())
        east, north = fly(outbound_deg, [(turn.off_heading_deg, "right", 0.0), (inbound_deg, "left", 0.0)])
        axes[1].plot(east, north, label=f"first turn {angle_deg:.1f}\N{DEGREE SIGN}", **_look.LINES[style])
        text = f"{abs(turn.across_nm):.2f} NM beside\nthe course" if style == "path" else "on the course"
        ends.append([(float(east[-1]), float(north[-1])), text, style, prefer_deg])
    finish(axes[1], ends)
    return drawn


def held(course_deg: float) -> "lub.WindTriangle":
    return lub.wind_triangle(course_deg, AIRSPEED_KT, *WIND.values())


def plan(ax: Axes, title: str) -> None:
    _look.plan(ax, of="the first turn")
    ax.set_title(title, fontsize=10)
    ax.axhline(0.0, label="course", **_look.LINES["course"])


def finish(ax: Axes, ends: list[list]) -> None:
    mark(ax, (0.0, 0.0))
    for at, _, style, _ in ends:
        mark(ax, at, "s", color=_look.COLORS[style])
    _look.widen(ax)
    _look.wind(ax, *WIND.values())
    _look.legend(ax, columns=3)
    labels = Labels(ax)
    for at, text, style, prefer_deg in ends:
        labels.add(at, text, prefer_deg=prefer_deg, color=_look.COLORS[style])


def fly(heading_deg: float, ways: list[tuple[float, str, float]]) -> tuple[np.ndarray, np.ndarray]:
    """East and north of a path of turns onto headings, each then held for a time. A turn is that of a course change in calm air, and the wind
    carries it along."""
    drift_nm_s = np.array(_look.place(WIND["wind_from_deg"] + 180.0, WIND["wind_speed_kt"] / 3600.0))
    points = [np.zeros((1, 2))]
    for toward_deg, side, hold_s in ways:
        turn = lub.course_change(heading_deg, toward_deg, true_airspeed_kt=AIRSPEED_KT, turn=side)
        time_s = np.linspace(0.0, turn.duration_s, 121)
        place = turn.at(time_s)
        through_air = np.column_stack(_look.place(place.bearing_from_fix_deg, place.distance_nm))
        points.append(points[-1][-1] + through_air - through_air[0] + np.outer(time_s, drift_nm_s))
        speed_nm_s = np.array(_look.place(toward_deg, AIRSPEED_KT / 3600.0)) + drift_nm_s
        points.append(points[-1][-1] + np.outer([0.0, hold_s], speed_nm_s))
        heading_deg = toward_deg
    return tuple(np.vstack(points).T)


@picture
def arc_in_legs() -> Figure:
    """Legs on both sides of an arc, a quarter of a mile from it at most, in a wind."""
    drawn, ax = figure(7.6, 4.6)
    _look.plan(ax, of="OST")
    arc = (330.0, 60.0, 12.0, "clockwise", "balanced", 0.25)
    chords = lub.arc_chords(*arc)
    legs = lub.arc_chord_leg(*arc, np.arange(1.0, chords.legs + 1.0), 150.0, 310.0, 30.0)
    for radial_deg in (330.0, 60.0):
        end = _look.place(radial_deg, 12.8)
        ax.plot([0.0, end[0]], [0.0, end[1]], label="radials" if radial_deg > 100.0 else None, **_look.LINES["course"])
    ax.plot(*_look.place(np.linspace(330.0, 420.0, 121), 12.0), label="12 NM arc", **_look.LINES["rule"])
    corners = np.column_stack(_look.place(np.append(legs.from_radial_deg, legs.to_radial_deg[-1]), chords.distance_at_ends_nm))
    ax.plot(*corners.T, label="legs", **_look.LINES["path"])
    for corner in corners:
        mark(ax, corner)
    _look.station(ax)
    _look.widen(ax)
    _look.wind(ax, 310.0, 30.0)
    _look.legend(ax, columns=3)
    labels = Labels(ax)
    for number in range(int(chords.legs)):
        middle = middle_of(corners[number], corners[number + 1])
        _look.forward(ax, middle, float(legs.course_deg[number]))
        minutes, seconds = divmod(round(float(legs.time_s[number])), 60)
        text = f"course {legs.course_deg[number]:03.0f}\N{DEGREE SIGN}\nheading {legs.heading_deg[number]:03.0f}\N{DEGREE SIGN}\n{minutes}:{seconds:02d}"
        labels.add(middle, text, prefer_deg=float(legs.course_deg[number]) + 90.0, color=_look.COLORS["path"])
    labels.add((0.0, 0.0), "OST", prefer_deg=135.0, fontweight="bold")
    return drawn
