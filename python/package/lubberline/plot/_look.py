"""What all pictures have in common: colours, lines, plans with north up, arrows, the legend."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.markers import MarkerStyle
from matplotlib.patches import Circle
from matplotlib.path import Path
from matplotlib.ticker import MaxNLocator
from matplotlib.transforms import Affine2D, ScaledTranslation
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]

#: What a colour stands for. They differ in lightness too, so that they are told apart without red, green or any hue.
COLORS: Mapping[str, str] = MappingProxyType(
    {
        "path": "#10355e",
        "over": "#d8611a",
        "rule": "#2f978f",
        "course": "#6b6b6b",
        "cone": "#e9dcae",
        "ink": "#1c1c1c",
        "early": "#7fb3d5",
        "late": "#e08a4f",
    }
)

#: How each of the lines above is drawn.
LINES: Mapping[str, dict[str, Any]] = MappingProxyType(
    {
        "path": {"color": COLORS["path"], "linewidth": 2.4, "linestyle": "-", "zorder": 4},
        "over": {"color": COLORS["over"], "linewidth": 1.8, "linestyle": (0, (6, 2)), "zorder": 3},
        "rule": {"color": COLORS["rule"], "linewidth": 1.8, "linestyle": (0, (1.2, 1.4)), "zorder": 3},
        "course": {"color": COLORS["course"], "linewidth": 0.9, "linestyle": (0, (9, 3, 2, 3)), "zorder": 2},
    }
)

#: An arrow head that points up.
_HEAD = Path([(0.0, 1.0), (-0.62, -0.8), (0.0, -0.42), (0.62, -0.8), (0.0, 1.0)], closed=True)


def axes(ax: Axes | None, *, size: tuple[float, float] = (6.4, 4.8)) -> Axes:
    """The axes given, or new ones."""
    if ax is not None:
        return ax
    from matplotlib import pyplot

    return pyplot.subplots(figsize=size, layout="constrained")[1]


def plan(ax: Axes, *, of: str, north: str = "") -> None:
    """Makes axes a plan: north up, one scale both ways, miles. Which north it is, is said if it is known."""
    ax.set_aspect("equal", adjustable="box")
    ax.margins(0.16, 0.16)
    for axis in (ax.xaxis, ax.yaxis):
        axis.set_major_locator(MaxNLocator(nbins="auto", steps=[1, 2, 5, 10]))
    said = f", {north} north" if north else ""
    ax.set_xlabel(f"east of {of} (NM)")
    ax.set_ylabel(f"north of {of}{said} (NM)")
    ax.grid(visible=True, color="#e6e6e6", linewidth=0.6)
    plain(ax)


def widen(ax: Axes) -> None:
    """Keeps a plan from being a sliver: its shorter side is at least half of the longer."""
    low, high = np.array(ax.dataLim.min), np.array(ax.dataLim.max)
    middle, span = (low + high) / 2.0, high - low
    half = np.maximum(span, 0.5 * span.max()) / 2.0
    if np.isfinite(half).all():
        ax.update_datalim(np.array([middle - half, middle + half]))
    ax.autoscale_view()


def plain(ax: Axes) -> None:
    """Takes away what is not read."""
    ax.set_axisbelow(True)
    for side in ("top", "right"):
        ax.spines[side].set_visible(False)


def place(bearing_deg: ArrayLike, distance_nm: ArrayLike) -> tuple[Array, Array]:
    """East and north of bearings and distances; over the point itself there is no bearing, and none is needed."""
    bearing_rad = np.radians(np.nan_to_num(np.asarray(bearing_deg, dtype=float)))
    distance = np.asarray(distance_nm, dtype=float)
    return distance * np.sin(bearing_rad), distance * np.cos(bearing_rad)


def forward(ax: Axes, at: tuple[float, float], bearing_deg: float, *, color: str = COLORS["path"]) -> None:
    """An arrow head on a line: which way it is flown."""
    marker = MarkerStyle(_HEAD, transform=Affine2D().rotate_deg(-bearing_deg))
    ax.plot(*at, marker=marker, markersize=13, color=color, markeredgecolor="white", markeredgewidth=0.7, zorder=5)


def station(ax: Axes, at: tuple[float, float] = (0.0, 0.0)) -> None:
    """A station: a hexagon with a dot."""
    ink = COLORS["ink"]
    ax.plot(*at, marker="h", markersize=11, markerfacecolor="white", markeredgecolor=ink, markeredgewidth=1.3, zorder=6)
    ax.plot(*at, marker="o", markersize=2.4, color=ink, zorder=6)


def cone(ax: Axes, radius_nm: float, at: tuple[float, float] = (0.0, 0.0), *, name: str | None = None) -> None:
    """The cone of confusion as it is cut by the height."""
    if radius_nm > 0.0:
        edge, hatch = "#a08c3c", "...."
        ax.add_patch(Circle(at, radius_nm, facecolor=COLORS["cone"], edgecolor=edge, linewidth=0.8, alpha=0.55, zorder=1, label=name))
        ax.add_patch(Circle(at, radius_nm, fill=False, edgecolor=edge, linewidth=0.0, hatch=hatch, alpha=0.25, zorder=1))
        ax.update_datalim([(at[0] - radius_nm, at[1] - radius_nm), (at[0] + radius_nm, at[1] + radius_nm)])


def wind(ax: Axes, from_deg: float, speed_kt: float) -> None:
    """A north arrow and, if there is wind, an arrow that flies with it, in the corner that is freest of lines."""
    corner = _free_corner(ax)
    # The middle of both, in points from the corner.
    across, up = (-46.0 if corner[0] else 46.0), (-32.0 if corner[1] else 36.0)
    aside = 15.0 if speed_kt > 0.0 else 0.0
    north_look = {"color": COLORS["course"], "linewidth": 0.9, "mutation_scale": 8}
    _arrow(ax, corner, (across - aside, up), 0.0, 13.0, north_look)
    written: dict[str, Any] = {"xycoords": "axes fraction", "textcoords": "offset points", "ha": "center", "fontsize": 8}
    ax.annotate("N", corner, xytext=(across - aside, up + 13.0), va="bottom", color=COLORS["course"], **written)
    text = "calm"
    if speed_kt > 0.0:
        wind_look = {"color": COLORS["ink"], "linewidth": 1.8, "mutation_scale": 12}
        _arrow(ax, corner, (across + 12.0, up), from_deg + 180.0, 15.0, wind_look)
        text = f"wind {from_deg % 360.0:03.0f}\N{DEGREE SIGN}/{speed_kt:.0f} kt"
    ax.annotate(text, corner, xytext=(across, up - 19.0), va="top", color=COLORS["ink"], **written)


def _arrow(
    ax: Axes, corner: tuple[int, int], middle: tuple[float, float], toward_deg: float, half: float, look: dict[str, Any]
) -> None:
    """An arrow measured in points from a corner of the axes, so that its direction is true whatever their shape."""
    figure = ax.get_figure()
    if figure is None:
        return
    east, north = half * np.sin(np.radians(toward_deg)), half * np.cos(np.radians(toward_deg))
    ends = [
        ax.transAxes + ScaledTranslation((middle[0] + way * east) / 72, (middle[1] + way * north) / 72, figure.dpi_scale_trans)
        for way in (-1.0, 1.0)
    ]
    arrow = {"arrowstyle": "-|>", "shrinkA": 0.0, "shrinkB": 0.0} | look
    ax.annotate(
        "", corner, xytext=corner, textcoords=ends[0], xycoords=ends[1], arrowprops=arrow, zorder=7, annotation_clip=False
    )


def _free_corner(ax: Axes) -> tuple[int, int]:
    """The corner of the axes that is farthest from every line."""
    places = [ax.transAxes.inverted().transform(ax.transData.transform(line.get_xydata())) for line in ax.get_lines()]
    every = np.vstack([one[np.isfinite(one).all(axis=1)] for one in places]) if places else np.empty((0, 2))
    every = every[((every >= 0.0) & (every <= 1.0)).all(axis=1)]
    corners = [(1, 1), (0, 1), (1, 0), (0, 0)]

    def room(corner: tuple[int, int]) -> float:
        return float(np.hypot(*(every - np.array(corner)).T).min(initial=9.0))

    return max(corners, key=room)


def legend(ax: Axes, *, columns: int = 2) -> None:
    """What the lines are, below the axes and what is written there."""
    figure = ax.get_figure()
    if figure is None:
        return
    ax.legend(
        loc="upper center",
        bbox_to_anchor=(0.5, 0.0),
        bbox_transform=ax.transAxes + ScaledTranslation(0.0, -38.0 / 72.0, figure.dpi_scale_trans),
        ncols=columns,
        frameon=False,
        fontsize=8.5,
        handlelength=3.4,
        columnspacing=1.6,
    )
