"""What limits a turn at each speed, and the turn as it is flown, with its roll."""

import lubberline as lub
import numpy as np
from matplotlib.figure import Figure

from lubberline.plot import _look
from lubberline.plot._labels import Labels

from . import chart, figure, mark, picture


@picture
def turn_limits() -> Figure:
    drawn, axes = figure(7.0, 6.8, 3, sharex=True)
    speed_kt = np.linspace(60.0, 500.0, 441)
    turn = lub.limited_turn(speed_kt)
    # The speed at which both limits ask for the same bank.
    change_kt = float(speed_kt[np.argmax(turn.governed_by == 0.0)])
    rows = (
        ("bank (degrees)", turn.bank_deg, lub.bank_for_rate_deg(speed_kt, 3.0), np.full_like(speed_kt, 25.0), (0.0, 40.0)),
        ("rate of turn (\N{DEGREE SIGN}/s)", turn.turn_rate_deg_per_s, np.full_like(speed_kt, 3.0), lub.turn_rate_deg_per_s(speed_kt, 25.0), (0.0, 5.0)),
        ("radius (NM)", turn.radius_nm, lub.radius_at_rate_nm(speed_kt, 3.0), lub.turn_radius_nm(speed_kt, 25.0), (0.0, 8.0)),
    )
    for ax, (name, flown, by_rate, by_bank, limits) in zip(axes, rows, strict=True):
        chart(ax, "true airspeed (kt)" if ax is axes[-1] else "", name)
        ax.axvspan(60.0, change_kt, color="#eef2f6", linewidth=0.0)
        ax.plot(speed_kt, by_rate, label="3\N{DEGREE SIGN}/s at any bank", **_look.LINES["rule"])
        ax.plot(speed_kt, by_bank, label="25\N{DEGREE SIGN} of bank at any rate", **_look.LINES["over"])
        ax.plot(speed_kt, flown, label="as flown within both", **_look.LINES["path"])
        ax.set_ylim(*limits)
    axes[0].set_xlim(60.0, 500.0)
    for x_kt, text in (((60.0 + change_kt) / 2.0, "the rate governs"), ((change_kt + 500.0) / 2.0, "the bank governs")):
        axes[0].annotate(text, (x_kt, 3.0), ha="center", fontsize=8.5)
    drawn.legend(*axes[0].get_legend_handles_labels(), loc="outside lower center", ncols=3, frameon=False, fontsize=8.5, handlelength=3.4)
    return drawn


@picture
def roll_in() -> Figure:
    """A turn of 90 degrees at 320 kt in calm air, rolling with 5 degrees a second and without taking time for it."""
    drawn, axes = figure(8.8, 4.8, 2, 2, width_ratios=(1.25, 1.0))
    ax = drawn.add_subplot(axes[0, 0].get_gridspec()[:, 0])
    for one in axes[:, 0]:
        one.remove()
    above, below = axes[:, 1]
    _look.plan(ax, of="the roll-in")
    ends = []
    for roll_rate_deg_per_s, label, style in ((5.0, "rolling at 5\N{DEGREE SIGN}/s", "path"), (np.inf, "rolling at once", "over")):
        change = lub.course_change(0.0, 90.0, true_airspeed_kt=320.0, roll_rate_deg_per_s=roll_rate_deg_per_s)
        time_s = np.linspace(0.0, change.duration_s, 241)
        points = change.at(time_s)
        # About the fix, which lies a lead ahead of the roll-in.
        east, north = _look.place(points.bearing_from_fix_deg, points.distance_nm)
        ax.plot(east, north + change.lead_nm, label=label, **_look.LINES[style])
        ends.append((float(east[-1]), float(north[-1]) + change.lead_nm, change))
        beyond_s = np.concatenate([[-4.0, 0.0], time_s, [change.duration_s, change.duration_s + 4.0]])
        bank_deg = np.concatenate([[0.0, 0.0], points.bank_deg, [0.0, 0.0]])
        heading_deg = np.concatenate([[0.0, 0.0], points.heading_deg, [90.0, 90.0]])
        above.plot(beyond_s, bank_deg, **_look.LINES[style])
        below.plot(beyond_s, heading_deg, **_look.LINES[style])
    mark(ax, (0.0, 0.0))
    _look.widen(ax)
    _look.legend(ax, columns=2)
    labels = Labels(ax)
    labels.add((0.0, 0.0), "roll-in", prefer_deg=135.0)
    for (east_nm, north_nm, change), prefer_deg in zip(ends, (15.0, 165.0), strict=True):
        mark(ax, (east_nm, north_nm), "s")
        labels.add((east_nm, north_nm), f"lead {change.lead_nm:.2f} NM\n{change.duration_s:.1f} s", prefer_deg=prefer_deg)
    chart(above, "", "bank (degrees)")
    chart(below, "time (s)", "heading (degrees)")
    above.sharex(below)
    above.tick_params(labelbottom=False)
    below.set_yticks(range(0, 91, 30))
    return drawn
