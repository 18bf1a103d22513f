"""A climb in calibrated airspeed and then by Mach number, and what cold air asks to be added."""

import lubberline as lub
import numpy as np
from matplotlib.figure import Figure

from lubberline.plot import _look
from lubberline.plot._labels import Labels

from . import chart, figure, mark, picture

CLIMB_KT, CLIMB_MACH = 300.0, 0.78


@picture
def airspeeds() -> Figure:
    drawn, (left, right) = figure(8.6, 4.8, 1, 2, sharey=True, width_ratios=(1.6, 1.0))
    crossover_ft = lub.crossover_altitude_ft(CLIMB_KT, CLIMB_MACH)
    altitude_ft = np.append(np.linspace(0.0, crossover_ft, 121), np.linspace(crossover_ft, 41_000.0, 81))
    below = altitude_ft <= crossover_ft
    calibrated_kt = np.where(below, CLIMB_KT, lub.cas_from_mach_kt(CLIMB_MACH, altitude_ft))
    mach = np.where(below, lub.mach_from_cas(CLIMB_KT, altitude_ft), CLIMB_MACH)
    level = altitude_ft / 1000.0
    chart(left, "speed (kt)", "pressure altitude (1000 ft)")
    left.plot(calibrated_kt, level, label="calibrated", **_look.LINES["path"])
    left.plot(lub.eas_from_cas_kt(calibrated_kt, altitude_ft), level, label="equivalent", **_look.LINES["rule"])
    left.plot(lub.tas_from_cas_kt(calibrated_kt, altitude_ft), level, label="true", **_look.LINES["over"])
    warm = lub.tas_from_cas_kt(calibrated_kt, altitude_ft, 15.0)
    left.plot(warm, level, label="true, ISA + 15", color=_look.COLORS["late"], linewidth=1.3, linestyle=(0, (3, 1.5, 1, 1.5)))
    chart(right, "Mach number", "")
    right.plot(mach, level, **_look.LINES["path"])
    for ax in (left, right):
        ax.axhline(crossover_ft / 1000.0, **_look.LINES["course"])
    left.set_xlim(200.0, 510.0)
    left.set_ylim(0.0, 41.0)
    right.set_xlim(0.4, 0.85)
    left.legend(loc="upper center", bbox_to_anchor=(0.5, -0.14), ncols=4, frameon=False, fontsize=8.5, handlelength=3.0, columnspacing=1.2)
    labels = Labels(left)
    mark(left, (CLIMB_KT, crossover_ft / 1000.0))
    labels.add((CLIMB_KT, crossover_ft / 1000.0), f"crossover\n{crossover_ft:.0f} ft", prefer_deg=45.0)
    labels.add((CLIMB_KT, 12.0), f"{CLIMB_KT:.0f} kt calibrated", prefer_deg=270.0, color=_look.COLORS["path"])
    mark(right, (CLIMB_MACH, crossover_ft / 1000.0))
    Labels(right).add((CLIMB_MACH, 36.0), f"Mach {CLIMB_MACH:g}", prefer_deg=270.0, color=_look.COLORS["path"])
    return drawn


@picture
def cold_air() -> Figure:
    drawn, ax = figure(7.0, 4.6)
    temperature_degc = np.linspace(-50.0, 15.0, 131)
    chart(ax, "temperature at the altimeter setting source (\N{DEGREE SIGN}C)", "to add to the charted height (ft)")
    for number, height_ft in enumerate((1_000.0, 2_000.0, 3_000.0, 5_000.0)):
        exact = lub.cold_temperature_correction_exact_ft(height_ft, temperature_degc)
        rule = lub.cold_temperature_correction_rule_ft(height_ft, temperature_degc)
        ax.plot(temperature_degc, exact, label=None if number else "exact", **_look.LINES["path"])
        ax.plot(temperature_degc, rule, label=None if number else "the rule of 4 percent for 10\N{DEGREE SIGN}", **_look.LINES["over"])
        ax.annotate(f"{height_ft:.0f} ft", (-50.0, float(exact[0])), xytext=(-6, 0), textcoords="offset points", ha="right", va="center", fontsize=8.5)
    ax.set_xlim(-56.5, 15.0)
    ax.set_xticks(range(-50, 16, 10))
    ax.set_ylim(0.0, 1_600.0)
    ax.legend(loc="upper right", frameon=False, fontsize=8.5, handlelength=3.4)
    return drawn
