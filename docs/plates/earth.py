"""Lines on the earth: what lies abeam, where a course meets an arc, a turn between courses, a rhumb line and the geodesic."""

import lubberline as lub
import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from lubberline.plot import _look
from lubberline.plot._labels import Labels

from . import figure, from_middle, mark, measure, middle_of, picture

OST = (61.25, -11.5)


@picture
def earth_lines() -> Figure:
    drawn, axes = figure(10.2, 8.4, 2, 2)
    for ax, draw, title in zip(
        axes.flat,
        (abeam, crossing, tangent_turn, rhumb),
        ("a point abeam of a course", "a course and a DME arc", "a turn between two courses", "rhumb line and geodesic"),
        strict=True,
    ):
        draw(ax)
        ax.set_title(title, fontsize=10)
    return drawn


def along(course_deg: float, first_nm: float, last_nm: float) -> tuple[np.ndarray, np.ndarray]:
    """A course through OST, from so many miles behind to so many beyond it."""
    way_nm = np.linspace(first_nm, last_nm, 121)
    point = lub.geodesic_direct(*OST, np.where(way_nm < 0.0, course_deg + 180.0, course_deg), np.abs(way_nm))
    return from_middle(OST, point.latitude_deg, point.longitude_deg)


def abeam(ax: Axes) -> None:
    _look.plan(ax, of="OST")
    place = (61.55, -10.4)
    seen = lub.cross_track(*OST, 75.0, *place)
    point, foot = from_middle(OST, *place), from_middle(OST, seen.abeam_latitude_deg, seen.abeam_longitude_deg)
    ax.plot(*along(75.0, -6.0, 46.0), **_look.LINES["course"])
    measure(ax, point, foot, color=_look.COLORS["over"])
    ax.plot(*along(75.0, 0.0, seen.along_track_nm), **_look.LINES["path"])
    mark(ax, foot)
    mark(ax, point, "D", color=_look.COLORS["over"])
    _look.station(ax)
    _look.widen(ax)
    labels = Labels(ax)
    side = "left" if seen.cross_track_nm < 0.0 else "right"
    labels.add(middle_of(point, foot), f"{abs(seen.cross_track_nm):.2f} NM {side}\nof the course", prefer_deg=270.0, color=_look.COLORS["over"])
    labels.add(middle_of((0.0, 0.0), foot), f"{seen.along_track_nm:.2f} NM along", prefer_deg=165.0, color=_look.COLORS["path"])
    labels.add(foot, "abeam", prefer_deg=150.0)
    labels.add((0.0, 0.0), "OST, course 075\N{DEGREE SIGN}", prefer_deg=165.0)


def crossing(ax: Axes) -> None:
    _look.plan(ax, of="OST")
    start, course_deg, radius_nm = (61.0, -12.2), 62.0, 15.0
    meet = lub.course_arc_crossing(*start, course_deg, *OST, radius_nm)
    circle = lub.geodesic_direct(*OST, np.linspace(0.0, 360.0, 181), radius_nm)
    ax.plot(*from_middle(OST, circle.latitude_deg, circle.longitude_deg), **_look.LINES["rule"])
    way = lub.geodesic_direct(*start, course_deg, np.linspace(0.0, 46.0, 121))
    ax.plot(*from_middle(OST, way.latitude_deg, way.longitude_deg), **_look.LINES["course"])
    mark(ax, from_middle(OST, *start), "s", color=_look.COLORS["course"])
    _look.station(ax)
    _look.widen(ax)
    labels = Labels(ax)
    points = ((meet.latitude1_deg, meet.longitude1_deg, meet.along1_nm), (meet.latitude2_deg, meet.longitude2_deg, meet.along2_nm))
    for (latitude_deg, longitude_deg, along_nm), prefer_deg in zip(points, (345.0, 165.0), strict=True):
        at = from_middle(OST, latitude_deg, longitude_deg)
        mark(ax, at)
        labels.add(at, f"after {along_nm:.2f} NM", prefer_deg=prefer_deg, color=_look.COLORS["path"])
    labels.add(from_middle(OST, *start), "course 062\N{DEGREE SIGN}", prefer_deg=150.0)
    labels.add((0.0, 0.0), "OST", prefer_deg=135.0, fontweight="bold")
    low = lub.geodesic_direct(*OST, 150.0, radius_nm)
    labels.add(from_middle(OST, low.latitude_deg, low.longitude_deg), "15 NM arc", prefer_deg=150.0, color=_look.COLORS["rule"])


def tangent_turn(ax: Axes) -> None:
    _look.plan(ax, of="OST")
    radius_nm, before_deg, after_deg = 4.0, 40.0, 125.0
    turn = lub.tangent_turn(*OST, before_deg, *OST, after_deg, radius_nm)
    center = (turn.center_latitude_deg, turn.center_longitude_deg)
    ax.plot(*along(before_deg, -9.0, 3.0), **_look.LINES["course"])
    ax.plot(*along(after_deg, -3.0, 9.0), **_look.LINES["course"])
    swept_deg = (turn.end_bearing_deg - turn.begin_bearing_deg) % 360.0
    arc = lub.geodesic_direct(*center, turn.begin_bearing_deg + np.linspace(0.0, swept_deg, 91), radius_nm)
    ax.plot(*from_middle(OST, arc.latitude_deg, arc.longitude_deg), **_look.LINES["path"])
    begin = from_middle(OST, turn.begin_latitude_deg, turn.begin_longitude_deg)
    end = from_middle(OST, turn.end_latitude_deg, turn.end_longitude_deg)
    middle = from_middle(OST, *center)
    for at in (begin, end):
        ax.plot([middle[0], at[0]], [middle[1], at[1]], color=_look.COLORS["rule"], linewidth=1.2)
    mark(ax, begin)
    mark(ax, end, "s")
    mark(ax, middle, "P", color=_look.COLORS["rule"])
    _look.station(ax)
    _look.widen(ax)
    labels = Labels(ax)
    before_nm = lub.geodesic_inverse(*OST, turn.begin_latitude_deg, turn.begin_longitude_deg).distance_nm
    labels.add(begin, f"begins {before_nm:.2f} NM\nbefore the meeting", prefer_deg=300.0, color=_look.COLORS["path"])
    labels.add(end, "ends", prefer_deg=45.0, color=_look.COLORS["path"])
    labels.add(from_middle(OST, arc.latitude_deg[45], arc.longitude_deg[45]), f"{turn.length_nm:.2f} NM of arc", prefer_deg=180.0, color=_look.COLORS["path"])
    labels.add(middle, "centre, 4 NM\nfrom both courses", prefer_deg=180.0, color=_look.COLORS["rule"])
    labels.add((0.0, 0.0), "OST", prefer_deg=30.0, fontweight="bold")


def rhumb(ax: Axes) -> None:
    """On a Mercator chart, where the rhumb line is straight."""
    there = (57.0, -60.0)
    line, shortest, excess = lub.rhumb_inverse(*OST, *there), lub.geodesic_inverse(*OST, *there), lub.rhumb_excess(*OST, *there)
    eccentricity = np.sqrt((2.0 - 1.0 / 298.257223563) / 298.257223563)

    def isometric(latitude_deg: np.ndarray) -> np.ndarray:
        sine = np.sin(np.radians(latitude_deg))
        return np.degrees(np.arctanh(sine) - eccentricity * np.arctanh(eccentricity * sine))

    steps_deg = np.linspace(40.0, 75.0, 3501)
    ax.set_yscale("function", functions=(isometric, lambda y: np.interp(y, isometric(steps_deg), steps_deg)))
    ax.set_aspect("equal", adjustable="box")
    way = lub.geodesic_direct(*OST, shortest.initial_bearing_deg, np.linspace(0.0, shortest.distance_nm, 121))
    ax.plot(way.longitude_deg, way.latitude_deg, label="geodesic", **_look.LINES["over"])
    kept = lub.rhumb_direct(*OST, line.course_deg, np.linspace(0.0, line.distance_nm, 121))
    ax.plot(kept.longitude_deg, kept.latitude_deg, label="rhumb line", **_look.LINES["path"])
    for latitude_deg, longitude_deg in (OST, there):
        mark(ax, (longitude_deg, latitude_deg))
    ax.set_xlim(-66.0, -6.0)
    ax.set_ylim(50.0, 67.0)
    ax.set_xticks(range(-60, -9, 10), [f"{-one}\N{DEGREE SIGN}W" for one in range(-60, -9, 10)])
    ax.set_yticks(range(50, 71, 5), [f"{one}\N{DEGREE SIGN}N" for one in range(50, 71, 5)])
    ax.grid(visible=True, color="#e6e6e6", linewidth=0.6)
    _look.plain(ax)
    labels = Labels(ax)
    kept_text = f"rhumb line: {line.course_deg:.1f}\N{DEGREE SIGN} all along,\n{line.distance_nm:.1f} NM"
    labels.add((float(kept.longitude_deg[70]), float(kept.latitude_deg[70])), kept_text, prefer_deg=165.0, color=_look.COLORS["path"])
    shorter = f"geodesic: from {shortest.initial_bearing_deg:.1f}\N{DEGREE SIGN} to {shortest.final_bearing_deg:.1f}\N{DEGREE SIGN},\n{excess.excess_nm:.1f} NM less"
    labels.add((float(way.longitude_deg[60]), float(way.latitude_deg[60])), shorter, prefer_deg=0.0, color=_look.COLORS["over"])
    labels.add((OST[1], OST[0]), "OST", prefer_deg=45.0, fontweight="bold")
