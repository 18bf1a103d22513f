"""Error and margin: how far a turn overshoots by chance, which error matters most, and what a margin on the lead does."""

from __future__ import annotations

import numpy as np
from matplotlib.axes import Axes

from .._course_change import CourseChange
from .._flight import Sureness, course_change_overshoots, course_change_sureness
from . import _look

_TITLES = {
    "station_bearing": "bearing of the signal",
    "dme": "DME reading",
    "wind_speed": "wind speed",
    "wind_direction": "wind direction",
    "airspeed": "airspeed",
    "bank": "bank",
    "roll_in_delay": "moment of roll-in",
    "height": "height",
}


def overshoot(
    change: CourseChange,
    *,
    limit_nm: float,
    confidence: float = 0.95,
    trials: int = 40_000,
    seed: int = 1,
    mean_delay_s: float = 0.0,
    ax: Axes | None = None,
    **errors: float,
) -> Axes:
    """How the cross-track at roll-out is spread by the errors of a course change, without a margin and with the margin that keeps a limit.

    Parameters
    ----------
    change : CourseChange
        The plan.
    limit_nm, confidence : float
        The overshoot that matters, and the chance with which the margin keeps it.
    trials, seed : int
        How many turns are flown for each of the two.
    mean_delay_s : float
        By how much the crew is late on the average.
    ax : Axes
        Where to draw; new axes if left out.
    **errors : float
        Standard deviations, as for `lubberline.course_change_sureness`.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0)
    >>> ax = lubberline.plot.overshoot(change, limit_nm=0.5, trials=2_000, bank_deg=2.0, mean_delay_s=2.0)
    >>> ax.get_xlabel()
    'overshoot at roll-out, outer side positive (NM)'
    """
    sure = course_change_sureness(
        change, limit_nm=limit_nm, confidence=confidence, trials=trials, seed=seed, mean_delay_s=mean_delay_s, **errors
    )
    plain = course_change_overshoots(change, trials=trials, seed=seed, mean_delay_s=mean_delay_s, **errors)
    drawn = [(plain, "over", "lead as computed")]
    # Without a change of course no lead helps, and there is no margin.
    if np.isfinite(sure.margin_nm):
        # A margin on the lead is a turn begun so much earlier.
        late_s = mean_delay_s - sure.margin_nm / change.groundspeed_before_kt * 3600.0
        safer = course_change_overshoots(change, trials=trials, seed=seed, mean_delay_s=late_s, **errors)
        drawn.append((safer, "path", f"lead {sure.margin_nm:+.2f} NM"))

    ax = _look.axes(ax, size=(6.4, 4.2))
    _look.plain(ax)
    low, high = np.percentile(np.concatenate([values for values, _, _ in drawn]), [0.2, 99.8])
    low, high = min(float(low), 0.0), max(float(high), limit_nm)
    width_nm = max((high - low) / 60.0, 1e-6)
    # The limit is an edge, so that what lies beyond it is shaded exactly.
    edges = limit_nm + width_nm * np.arange(np.floor((low - limit_nm) / width_nm) - 2, np.ceil((high - limit_nm) / width_nm) + 3)
    for values, name, title in drawn:
        share = np.histogram(values, edges)[0] / max(len(values), 1) / width_nm * 10.0
        beyond = float(np.mean(values > limit_nm)) * 100.0
        ax.stairs(share, edges, label=f"{title}: {beyond:.0f} % beyond the limit", **_look.LINES[name])
        past = np.where(edges[:-1] > limit_nm - 0.5 * width_nm, share, 0.0)
        ax.stairs(past, edges, fill=True, color=_look.COLORS[name], alpha=0.35, zorder=2)
    ax.axvline(0.0, **_look.LINES["course"])
    ax.axvline(limit_nm, color=_look.COLORS["ink"], linewidth=1.2, zorder=5)
    ax.annotate(
        f" limit {limit_nm:g} NM", (limit_nm, 1.0), xycoords=("data", "axes fraction"), va="top", fontsize=8.5, color=_look.COLORS["ink"]
    )
    ax.annotate("on the course ", (0.0, 1.0), xycoords=("data", "axes fraction"), va="top", ha="right", fontsize=8.5, color=_look.COLORS["ink"])
    ax.set_xlim(edges[0], edges[-1])
    ax.set_ylim(0.0, ax.get_ylim()[1] * 1.1)
    ax.set_xlabel("overshoot at roll-out, outer side positive (NM)")
    ax.set_ylabel("share of turns in each 0.1 NM (%)")
    _look.legend(ax, columns=1)
    return ax


def error_sources(sure: Sureness, *, ax: Axes | None = None) -> Axes:
    """What one standard deviation of each error moves the overshoot by, the most important on top, and all of them together.

    Parameters
    ----------
    sure : Sureness
        An answer of `lubberline.course_change_sureness`.
    ax : Axes
        Where to draw; new axes if left out.

    Returns
    -------
    Axes

    Examples
    --------
    >>> import lubberline
    >>> import lubberline.plot
    >>> change = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0)
    >>> sure = lubberline.course_change_sureness(change, bank_deg=2.0, dme_nm=0.1, trials=1_000)
    >>> [text.get_text() for text in lubberline.plot.error_sources(sure).get_yticklabels()]
    ['all together', 'bank', 'DME reading']
    """
    ax = _look.axes(ax, size=(6.4, 3.2))
    _look.plain(ax)
    worth = {source: abs(value) for source, value in sure.by_source_nm.items() if value != 0.0}
    ordered = sorted(worth, key=lambda source: worth[source], reverse=True)
    names = ["all together", *(_TITLES.get(source, source) for source in ordered)]
    lengths = [sure.linear_deviation_nm, *(worth[source] for source in ordered)]
    rows = np.arange(len(names))
    bars = ax.barh(rows, lengths, height=0.62, color=_look.COLORS["path"])
    bars[0].set(facecolor="white", edgecolor=_look.COLORS["path"], hatch="////")
    for row, length in zip(rows, lengths, strict=True):
        ax.annotate(f"{length:.2f}", (length, row), xytext=(4, 0), textcoords="offset points", va="center", fontsize=8.5)
    ax.set_yticks(rows, names)
    ax.invert_yaxis()
    ax.set_xlim(0.0, max(lengths, default=1.0) * 1.15 or 1.0)
    ax.set_xlabel("overshoot for one standard deviation (NM)")
    ax.grid(visible=True, axis="x", color="#e6e6e6", linewidth=0.6)
    return ax
