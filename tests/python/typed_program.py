"""A program as a strict type checker sees it: what is declared holds, what is wrong is refused."""

import numpy as np
from matplotlib.axes import Axes
from numpy.typing import NDArray

import lubberline
import lubberline.plot

one: float = lubberline.slant_range_nm(10.0, 30_000.0)
narrow: float = lubberline.slant_range_nm(np.float32(10.0), np.int64(30_000))
many: NDArray[np.float64] = lubberline.slant_range_nm(np.arange(3.0), 30_000.0)
kept: NDArray[np.float64] = lubberline.slant_range_nm([1.0], 0.0, out=np.zeros(1))
distance: float = lubberline.geodesic_inverse(1.0, 2.0, 3.0, 4.0).distance_nm
distances: NDArray[np.float64] = lubberline.geodesic_inverse([1.0], 2.0, 3.0, 4.0).distance_nm
entry: float = lubberline.arc_entry(300.0, "inbound", 12.0, "clockwise", 210.0).radial_at_roll_out_deg
entries: NDArray[np.float64] = lubberline.arc_entry(
    300.0, ["inbound", "outbound"], 12.0, np.array([1, -1]), 210.0
).radial_at_roll_out_deg
change: lubberline.CourseChange = lubberline.course_change(1.0, 60.0, true_airspeed_kt=200.0)
lead: float = change.lead_nm + change.fly_over.extra_distance_nm
route: list[lubberline.RouteFix | lubberline.Station] = [
    lubberline.Station(1.0, 2.0),
    lubberline.RouteFix(lubberline.Station(1.5, 2.0), turn="left", wind_levels=[(9000.0, 0.0, 20.0)]),
    lubberline.Station(2.0, 3.0),
]
brief: lubberline.RouteBrief = lubberline.brief_route(
    route, true_airspeed_kt=200.0, pressure_altitude_ft=9000.0, errors=lubberline.usual_errors(), trials=10
)
begin: float = brief.turns[0].begin_at_dme_nm + brief.legs[0].straight_nm
sure: lubberline.Sureness | None = brief.turns[0].sureness
drawn: tuple[tuple[float, float], ...] = brief.turns[0].points
flight = {"heading_deg": 0.0, "true_airspeed_kt": 90.0, "station_latitude_deg": 1.5, "station_longitude_deg": 2.0}
dme: float = lubberline.Station(1.0, 2.0).observe(1.5, 2.0, 9000.0).dme_nm
dmes: NDArray[np.float64] = lubberline.Station(1.0, 2.0).observe([1.5], 2.0, 9000.0).dme_nm
axes: Axes = lubberline.plot.course_change(change, rule=False)
axes = lubberline.plot.needle(lubberline.Flight(1.0, 2.0, 0.0, **flight).run(5.0), ax=axes)
legs = [lubberline.Leg("IF", fix_latitude_deg=1.0, fix_longitude_deg=2.0), lubberline.Leg("TF", fix_latitude_deg=1.5, fix_longitude_deg=2.0)]
levels = [lubberline.WindLevel(2_000.0, 250.0, 20.0), (9_000.0, 280.0, 45.0)]
path: lubberline.PathBrief = lubberline.brief_path(
    legs, true_airspeed_kt=200.0, altitude_ft=4_000.0, wind_levels=levels, stations=[lubberline.Station(1.5, 2.0)], fixes={"END": (1.5, 2.0)}
)
distance = path.legs[1].distance_nm + sum(turn.begin.stations[0].dme_nm for turn in path.legs[1].turns)
path = lubberline.brief_path(legs, true_airspeed_kt=200.0, altitude_ft=4_000.0, wind_levels=np.array([[2_000.0, 250.0, 20.0]]), magnetic_variation_deg=-6.0)
magnetic: float | None = path.legs[1].magnetic_course_deg
sentences: list[str] = [check.sentence for check in path.checks]
function: np.ufunc = lubberline.ufunc.geodesic_inverse_distance_nm

try:
    lubberline.slant_range_nm(-1.0, 0.0)
except lubberline.NavigationError as error:
    code: int = error.code
    parameter: str | None = error.parameter


def refused() -> None:
    """Every line here is an error; an ignored error that is none would be one itself."""
    lubberline.slant_range_nm(10.0)  # type: ignore[call-overload]
    lubberline.slant_range_nm(10.0, height=3.0)  # type: ignore[call-overload]
    lubberline.arc_entry(300.0, "sideways", 12.0, "clockwise", 210.0)  # type: ignore[call-overload]
    lubberline.course_change(1.0, 60.0, true_airspeed_kt=200.0, turn="up")  # type: ignore[arg-type]
    lubberline.course_change(1.0, 60.0, 200.0)  # type: ignore[call-arg]
    lubberline.Station(1.0, 2.0, 300.0)  # type: ignore[call-arg]
    lubberline.plot.course_change(change, axes)  # type: ignore[call-arg, arg-type]
    change.lead_nm = 3.0  # type: ignore[misc]
    path.legs[0].distance_nm = 3.0  # type: ignore[misc]
    lubberline.brief_path(legs, true_airspeed_kt=200.0)  # type: ignore[call-arg]
    lubberline.brief_path(legs, true_airspeed_kt=200.0, altitude_ft=4_000.0, wind_levels=3.0)  # type: ignore[arg-type]
    lubberline.brief_route([(1.0, 2.0)], true_airspeed_kt=200.0, pressure_altitude_ft=0.0)  # type: ignore[list-item]
    lubberline.RouteFix(lubberline.Station(1.0, 2.0), "left")  # type: ignore[call-arg]
    brief.turns[0].bank_deg = 3.0  # type: ignore[misc]
