"""The triangle of velocities, and the wind between levels."""

import lubberline as lub
import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import FancyArrowPatch

from lubberline.plot import _look
from lubberline.plot._labels import Labels

from . import chart, figure, middle_of, picture

COURSE_DEG, AIRSPEED_KT, FROM_DEG, WIND_KT = 90.0, 120.0, 45.0, 40.0
LEVELS = ((3_000.0, 150.0, 20.0), (10_000.0, 280.0, 30.0), (18_000.0, 310.0, 55.0), (30_000.0, 290.0, 90.0))


@picture
def wind_triangle() -> Figure:
    drawn, ax = figure(7.4, 3.4)
    held = lub.wind_triangle(COURSE_DEG, AIRSPEED_KT, FROM_DEG, WIND_KT)
    parts = lub.wind_components(COURSE_DEG, FROM_DEG, WIND_KT)
    air = tuple(map(float, _look.place(held.heading_deg, AIRSPEED_KT)))
    ground = tuple(map(float, _look.place(COURSE_DEG, held.groundspeed_kt)))
    beside = (air[0], ground[1])
    chart(ax, "east (kt)", "north (kt)")
    ax.set_aspect("equal", adjustable="box")
    for start, end, name, label in (
        ((0.0, 0.0), ground, "course", "over the ground: course and groundspeed"),
        ((0.0, 0.0), air, "path", "through the air: heading and true airspeed"),
        (air, ground, "over", "the wind"),
    ):
        arrow(ax, start, end, _look.COLORS[name], label)
    for end in (air, ground):
        ax.plot([beside[0], end[0]], [beside[1], end[1]], color=_look.COLORS["rule"], linewidth=1.2, linestyle=(0, (1.2, 1.4)), zorder=3)
    ax.plot([], [], color=_look.COLORS["rule"], linewidth=1.2, linestyle=(0, (1.2, 1.4)), label="its parts along and across the course")
    ax.set_xlim(-8.0, 150.0)
    ax.set_ylim(-14.0, 40.0)
    ax.legend(loc="upper center", bbox_to_anchor=(0.5, -0.2), ncols=2, frameon=False, fontsize=8.5)
    labels = Labels(ax)
    labels.add(middle_of((0.0, 0.0), air), f"heading {held.heading_deg:.1f}\N{DEGREE SIGN}, {AIRSPEED_KT:.0f} kt", prefer_deg=330.0, color=_look.COLORS["path"])
    labels.add(middle_of((0.0, 0.0), ground), f"course 090\N{DEGREE SIGN}, {held.groundspeed_kt:.1f} kt", prefer_deg=180.0)
    labels.add(middle_of(air, ground), f"wind 045\N{DEGREE SIGN}/{WIND_KT:.0f} kt", prefer_deg=315.0, color=_look.COLORS["over"])
    labels.add(middle_of(beside, air), f"{-parts.crosswind_kt:.1f} kt from the left", prefer_deg=90.0, color=_look.COLORS["rule"])
    labels.add(middle_of(beside, ground), f"{parts.headwind_kt:.1f} kt from ahead", prefer_deg=180.0, color=_look.COLORS["rule"])
    return drawn


def arrow(ax: Axes, start: tuple[float, float], end: tuple[float, float], color: str, label: str) -> None:
    ax.plot([start[0], end[0]], [start[1], end[1]], color=color, linewidth=2.0, label=label)
    ax.add_patch(FancyArrowPatch(start, end, arrowstyle="-|>", mutation_scale=16, shrinkA=0.0, shrinkB=0.0, linewidth=0.0, color=color, zorder=5))


@picture
def winds_aloft() -> Figure:
    drawn, (left, right) = figure(7.6, 4.4, 1, 2, sharey=True)
    altitude_ft, direction_deg, speed_kt = (np.array(one) for one in zip(*LEVELS, strict=True))
    direct, speed, by_itself = [], [], []
    for lower, upper in zip(LEVELS, LEVELS[1:], strict=False):
        between = lub.wind_between_levels(np.linspace(lower[0], upper[0], 61), *lower, *upper)
        direct.append(between.wind_from_deg)
        speed.append(between.wind_speed_kt)
        by_itself.append(np.linspace(lower[0], upper[0], 61))
    heights = np.concatenate(by_itself) / 1000.0
    for ax, found, given, name in (
        (left, np.concatenate(direct), direction_deg, "wind from (degrees)"),
        (right, np.concatenate(speed), speed_kt, "speed (kt)"),
    ):
        chart(ax, name, "pressure altitude (1000 ft)" if ax is left else "")
        ax.plot(given, altitude_ft / 1000.0, label="direction and speed each by itself", **_look.LINES["over"])
        ax.plot(found, heights, label="components change evenly", **_look.LINES["path"])
        ax.plot(given, altitude_ft / 1000.0, marker="o", markersize=7, linestyle="", color=_look.COLORS["ink"], markeredgecolor="white", label="levels given", zorder=6)
    left.set_xlim(130.0, 330.0)
    right.set_xlim(0.0, 100.0)
    left.set_ylim(0.0, 32.0)
    drawn.legend(*left.get_legend_handles_labels(), loc="outside lower center", ncols=3, frameon=False, fontsize=8.5, handlelength=3.4)
    return drawn
