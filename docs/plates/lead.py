"""From a radial onto a DME arc, and from the arc onto another radial."""

import lubberline as lub
import numpy as np
from matplotlib.figure import Figure

from lubberline.plot import _look
from lubberline.plot._labels import Labels

from . import figure, from_middle, mark, picture

OST, ARC_NM, FIRST_DEG, SECOND_DEG = (61.25, -11.5), 12.0, 300.0, 30.0
AIRSPEED_KT, WIND = 210.0, {"wind_from_deg": 250.0, "wind_speed_kt": 40.0}


@picture
def arc_turns() -> Figure:
    """Flown by the legs AF and CF; the points where the turns begin are those of `arc_entry` and `arc_exit`."""
    drawn, ax = figure(7.4, 5.6)
    _look.plan(ax, of="OST", north="true")

    def at(radial_deg: float, distance_nm: float) -> dict[str, float]:
        point = lub.geodesic_direct(*OST, radial_deg, distance_nm)
        return {"fix_latitude_deg": point.latitude_deg, "fix_longitude_deg": point.longitude_deg}

    legs = [
        lub.Leg("IF", **at(FIRST_DEG, 19.0)),
        lub.Leg("TF", **at(FIRST_DEG, ARC_NM)),
        lub.Leg("AF", **at(SECOND_DEG, ARC_NM), center_latitude_deg=OST[0], center_longitude_deg=OST[1], to_right=True),
        lub.Leg("CF", **at(SECOND_DEG, 0.5), course_deg=SECOND_DEG + 180.0),
    ]
    path = lub.fly_legs(legs, true_airspeed_kt=AIRSPEED_KT, altitude_ft=4_000.0, spacing_nm=0.1, **WIND)
    for radial_deg, reach_nm in ((FIRST_DEG, 19.0), (SECOND_DEG, 15.0)):
        line = lub.geodesic_direct(*OST, radial_deg, np.linspace(0.0, reach_nm, 61))
        ax.plot(*from_middle(OST, line.latitude_deg, line.longitude_deg), label="radials" if reach_nm > 16.0 else None, **_look.LINES["course"])
    arc = lub.geodesic_direct(*OST, np.linspace(FIRST_DEG - 12.0, SECOND_DEG + 372.0, 181), ARC_NM)
    ax.plot(*from_middle(OST, arc.latitude_deg, arc.longitude_deg), label="12 NM arc", **_look.LINES["rule"])
    east, north = from_middle(OST, path.latitude_deg, path.longitude_deg)
    ax.plot(east, north, label="as flown", **_look.LINES["path"])
    half = int(np.argmin(np.abs(east)))
    _look.forward(ax, (float(east[half]), float(north[half])), float(np.degrees(np.arctan2(east[half + 1] - east[half], north[half + 1] - north[half]))))
    onto = lub.arc_entry(FIRST_DEG, "inbound", ARC_NM, "clockwise", AIRSPEED_KT, *WIND.values())
    off = lub.arc_exit(SECOND_DEG, "inbound", ARC_NM, "clockwise", AIRSPEED_KT, *WIND.values())
    _look.station(ax)
    points = []
    for turn in (onto, off):
        points.append(_look.place(turn.radial_at_roll_in_deg, turn.distance_at_roll_in_nm))
        mark(ax, points[-1])
        mark(ax, _look.place(turn.radial_at_roll_out_deg, turn.distance_at_roll_out_nm), "s")
    _look.widen(ax)
    _look.wind(ax, *WIND.values())
    _look.legend(ax, columns=3)
    labels = Labels(ax)
    place = (float(points[0][0]), float(points[0][1]))
    before_nm = onto.distance_at_roll_in_nm - ARC_NM
    text = f"leave radial 300\N{DEGREE SIGN}\nat {onto.distance_at_roll_in_nm:.2f} NM, {before_nm:.2f}\nbefore the arc"
    labels.add(place, text, prefer_deg=225.0, color=_look.COLORS["path"])
    place = (float(points[1][0]), float(points[1][1]))
    text = f"leave the arc on radial {off.radial_at_roll_in_deg % 360.0:05.1f}\N{DEGREE SIGN},\n{off.angle_at_station_deg:.1f}\N{DEGREE SIGN} before radial 030\N{DEGREE SIGN}"
    labels.add(place, text, prefer_deg=15.0, color=_look.COLORS["path"])
    labels.add((0.0, 0.0), "OST", prefer_deg=200.0, fontweight="bold")
    return drawn
