"""Variation over the years against the declination of a station, and along a route."""

import lubberline as lub
import numpy as np
from matplotlib.figure import Figure

from lubberline.plot import _look

from . import chart, figure, measure, picture

OST, DECLINATION_DEG = (61.25, -11.5), -6.0
THERE = (63.0, -48.0)


@picture
def variation() -> Figure:
    drawn, (left, right) = figure(9.4, 4.0, 1, 2)
    year = np.linspace(2020.0, 2030.0, 121)
    found_deg = lub.variation_deg(*OST, 0.0, year)
    chart(left, "year", "positive east (degrees)")
    left.plot(year, found_deg, label="variation at OST", **_look.LINES["path"])
    left.axhline(DECLINATION_DEG, label="declination that OST was set up with", **_look.LINES["over"])
    left.set_xlim(2020.0, 2030.0)
    left.set_ylim(-7.0, 0.0)
    left.legend(loc="upper center", bbox_to_anchor=(0.5, -0.16), ncols=2, frameon=False, fontsize=8.5, handlelength=3.4)
    today_deg = lub.variation_deg(*OST, 0.0, 2026.5)
    measure(left, (2026.5, DECLINATION_DEG), (2026.5, today_deg))
    wrong_deg = lub.station_misalignment_deg(DECLINATION_DEG, today_deg)
    text = f"in July 2026 radials read {wrong_deg:.1f}\N{DEGREE SIGN}\nmore than magnetic bearings"
    thin = {"arrowstyle": "-", "color": _look.COLORS["course"], "linewidth": 0.8, "shrinkB": 0.0}
    middle = (2026.5, DECLINATION_DEG + 0.5 * wrong_deg)
    left.annotate(text, middle, xytext=(2023.4, -3.0), ha="center", va="center", fontsize=8.5, arrowprops=thin)

    line = lub.geodesic_inverse(*OST, *THERE)
    way_nm = np.linspace(0.0, line.distance_nm, 121)
    point = lub.geodesic_direct(*OST, line.initial_bearing_deg, way_nm)
    variation_deg = lub.variation_deg(point.latitude_deg, point.longitude_deg, 35_000.0, 2026.5)
    magnetic_deg = lub.magnetic_from_true_deg(point.final_bearing_deg, variation_deg)
    chart(right, "distance from OST (NM)", "course along the geodesic (degrees)")
    right.plot(way_nm, point.final_bearing_deg, label="true", **_look.LINES["course"])
    right.plot(way_nm, magnetic_deg, label="magnetic", **_look.LINES["path"])
    right.set_xlim(0.0, line.distance_nm)
    right.legend(loc="upper center", bbox_to_anchor=(0.5, -0.16), ncols=2, frameon=False, fontsize=8.5, handlelength=3.4)
    for number in (15, 105):
        at_nm, true_deg = float(way_nm[number]), float(point.final_bearing_deg[number])
        measure(right, (at_nm, true_deg), (at_nm, float(magnetic_deg[number])))
        side = 1.0 if number < 60 else -1.0
        said = f"variation\n{variation_deg[number]:.1f}\N{DEGREE SIGN}".replace("-", "\N{MINUS SIGN}")
        at = (at_nm, (true_deg + float(magnetic_deg[number])) / 2.0)
        right.annotate(said, at, xytext=(6.0 * side, 0), textcoords="offset points", ha="left" if side > 0.0 else "right", va="center", fontsize=8.5)
    return drawn
