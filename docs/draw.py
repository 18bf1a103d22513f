"""Draws every picture of the documentation: `python docs/draw.py [FOLDER]`, into docs/pictures if no folder is given.

It needs the package with its pictures: `pip install './python[plot]'`. Each function draws the picture of its name, here with `lubberline.plot`, in
docs/plates what has no function there. Stations and routes are invented.
"""

import contextlib
import io
import os
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import matplotlib

matplotlib.use("Agg")

import numpy as np  # noqa: E402
from matplotlib import pyplot  # noqa: E402
from matplotlib.figure import Figure  # noqa: E402
from PIL import Image  # noqa: E402

import lubberline  # noqa: E402
from lubberline import plot  # noqa: E402

sys.path.insert(0, str(Path(__file__).parent))
from plates import PICTURES, air, earth, figure, lead, north, picture, procedure as procedures, turn, wind  # noqa: E402, F401

FOLDER = Path(__file__).parent / "pictures"
DOTS_PER_INCH = 110

#: The turn of the lead and of what it would cost to fly over: at a height at which the cone leaves it some room.
CHANGE = lubberline.course_change(
    40.0, 110.0, true_airspeed_kt=320.0, wind_from_deg=270.0, wind_speed_kt=45.0, height_above_station_ft=9_000.0
)
#: What a crew, its aircraft and the forecast may be wrong by: docs/flight.md has the same numbers.
ERRORS = {
    "station_bearing_deg": 1.0,
    "dme_nm": 0.1,
    "wind_speed_kt": 15.0,
    "wind_direction_deg": 10.0,
    "airspeed_kt": 8.0,
    "bank_deg": 2.0,
    "roll_in_delay_s": 2.0,
    "height_ft": 200.0,
    "mean_delay_s": 2.0,
}


@contextlib.contextmanager
def inside(folder: Path) -> Iterator[None]:
    before = Path.cwd()
    os.chdir(folder)
    try:
        yield
    finally:
        os.chdir(before)


@picture
def course_change() -> Figure:
    drawn, ax = figure(7.4, 5.0)
    plot.course_change(CHANGE, ident="OST", ax=ax)
    return drawn


@picture
def readings() -> Figure:
    """What the crew sees in that turn, from ten miles before the station: the needle set to the outbound course."""
    start = lubberline.geodesic_direct(61.25, -11.5, 220.0, 10.0)
    flight = lubberline.Flight(
        start.latitude_deg,
        start.longitude_deg,
        9_000.0,
        heading_deg=CHANGE.heading_before_deg,
        true_airspeed_kt=320.0,
        wind_from_deg=270.0,
        wind_speed_kt=45.0,
        station_latitude_deg=61.25,
        station_longitude_deg=-11.5,
        course_deg=110.0,
    )
    flight.turn_at_station(40.0, 110.0)
    table = flight.run(190.0, step_s=0.5)
    drawn, axes = figure(6.6, 7.4, 4, sharex=True, height_ratios=(1.0, 1.0, 0.55, 1.0))
    for draw, ax in zip((plot.dme, plot.needle, plot.to_from, plot.bank), axes, strict=True):
        draw(table, ax=ax)
        ax.label_outer()
    begun = table["time_s"][abs(table["bank_deg"]) > 0.0][0]
    for ax in axes:
        ax.axvline(begun, color=plot.COLORS["over"], linewidth=1.2, linestyle=(0, (4, 2)))
    axes[0].annotate(
        f" the turn begins at {CHANGE.dme_at_roll_in_nm:.1f} DME", (begun, 0.55), xycoords=("data", "axes fraction"), fontsize=8.5
    )
    return drawn


@picture
def hunting() -> Figure:
    """The same needle tracker with a low and a high gain, past a station, in a crosswind that it does not know: what is a small angle far out is a
    small distance near the station."""
    drawn, axes = figure(7.4, 7.4, 4, 2, sharex=True, sharey="row")
    for column, gain in enumerate((4.0, 15.0)):
        start = lubberline.geodesic_direct(61.25, -11.5, 180.0, 5.0)
        flight = lubberline.Flight(
            start.latitude_deg,
            start.longitude_deg,
            1_500.0,
            heading_deg=0.0,
            true_airspeed_kt=120.0,
            station_latitude_deg=61.25,
            station_longitude_deg=-11.5,
            course_deg=0.0,
            reaction_s=2.0,
        )
        flight.track(0.0, gain=gain)
        flight.set_wind(90.0, 20.0)
        table = flight.run(260.0, step_s=0.5)
        plot.dme(table, ax=axes[0, column])
        plot.needle(table, ax=axes[1, column])
        off = lubberline.cross_track(61.25, -11.5, 0.0, table["latitude_deg"], table["longitude_deg"])
        beside(axes[2, column], table, off)
        plot.bank(table, ax=axes[3, column])
        axes[0, column].set_title(f"gain {gain:g}", fontsize=9.5)
    for ax in axes.flat:
        ax.label_outer()
    return drawn


def beside(ax: Any, table: Any, off: Any) -> None:
    """How far an aircraft is off its course, and how far the edge of the needle's scale, 10 degrees, is."""
    edge_nm = np.abs(off.along_track_nm) * np.tan(np.radians(10.0))
    ax.fill_between(table["time_s"], -edge_nm, edge_nm, color="#dcebf5", linewidth=0.0)
    ax.axhline(0.0, color=plot.COLORS["course"], linewidth=0.9, linestyle=(0, (9, 3, 2, 3)))
    ax.plot(table["time_s"], off.cross_track_nm, color=plot.COLORS["path"], linewidth=2.4)
    ax.set_ylabel("right of the\ncourse (NM)")
    ax.set_ylim(-0.62, 0.62)
    ax.grid(visible=True, color="#e6e6e6", linewidth=0.6)
    ax.spines[["top", "right"]].set_visible(False)
    ax.annotate("needle on its scale", (0.03, 0.06), xycoords="axes fraction", fontsize=8)


@picture
def margin() -> Figure:
    high = lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0, height_above_station_ft=33_000.0)
    drawn, (left, right) = figure(9.6, 4.0, 1, 2, width_ratios=(1.25, 1.0))
    plot.overshoot(high, limit_nm=0.5, ax=left, **ERRORS)
    sure = lubberline.course_change_sureness(high, limit_nm=0.5, trials=1_000, **ERRORS)
    plot.error_sources(sure, ax=right)
    return drawn


@picture
def rule_of_thumb_error() -> Figure:
    drawn, axes = figure(8.8, 7.6, 2, 2, sharex=True, sharey=True)
    for ax, change_deg in zip(axes.flat, (30.0, 60.0, 90.0, 120.0), strict=True):
        plot.rule_error(change_deg, key=False, ax=ax)
        ax.label_outer()
    bar = drawn.colorbar(axes[0, 0].collections[0], ax=axes, format=lambda nm, _: f"{nm:+g}".replace("-", "\N{MINUS SIGN}") if nm else "0", aspect=34, pad=0.02)
    bar.set_label("rolls out short of the outbound course (\N{MINUS SIGN}) or beyond it (+) by (NM)")
    drawn.legend(*axes[0, 0].get_legend_handles_labels(), loc="outside lower center", ncols=2, frameon=False, fontsize=9.5, handlelength=3.4)
    return drawn


@picture
def station_profile() -> Figure:
    drawn, ax = figure(7.4, 3.9)
    plot.profile(33_000.0, ident="OST", ax=ax)
    return drawn


@picture
def route() -> Figure:
    """An invented route over four stations, each turn begun before its station."""
    stations = [
        lubberline.Station(61.25, -11.5, declination_deg=-6.0, ident="OST"),
        lubberline.Station(60.72, -12.35, declination_deg=-6.0, ident="VIK"),
        lubberline.Station(61.35, -10.35, declination_deg=-6.0, ident="HOL"),
        lubberline.Station(61.0, -9.5, declination_deg=-6.0, ident="NES"),
    ]
    order = [stations[1], stations[0], stations[2], stations[3]]
    legs = [
        lubberline.Leg("TF" if number else "IF", fix_latitude_deg=one.latitude_deg, fix_longitude_deg=one.longitude_deg)
        for number, one in enumerate(order)
    ]
    wind = {"wind_from_deg": 250.0, "wind_speed_kt": 70.0}
    path = lubberline.fly_legs(legs, true_airspeed_kt=420.0, altitude_ft=31_000.0, **wind)
    drawn, ax = figure(7.4, 5.0)
    plot.route(path, stations=stations, ax=ax, **wind)
    return drawn


@picture
def procedure() -> Figure:
    """An invented approach: to a fix, along a DME arc, inbound to the station, and a hold there."""
    station = lubberline.Station(61.25, -11.5, declination_deg=-6.0, ident="OST")

    def at(bearing_deg: float, distance_nm: float) -> dict[str, float]:
        point = lubberline.geodesic_direct(station.latitude_deg, station.longitude_deg, bearing_deg, distance_nm)
        return {"fix_latitude_deg": point.latitude_deg, "fix_longitude_deg": point.longitude_deg}

    center = {"center_latitude_deg": station.latitude_deg, "center_longitude_deg": station.longitude_deg}
    legs = [
        lubberline.Leg("IF", **at(150.0, 22.0)),
        lubberline.Leg("TF", **at(150.0, 12.0)),
        lubberline.Leg("AF", **at(220.0, 12.0), **center, to_right=True),
        lubberline.Leg("CF", **at(0.0, 0.0), course_deg=40.0, fly_over=True),
        lubberline.Leg("HM", **at(0.0, 0.0), course_deg=40.0, to_right=True, outbound_time_s=60.0),
    ]
    wind = {"wind_from_deg": 300.0, "wind_speed_kt": 25.0}
    path = lubberline.fly_legs(legs, true_airspeed_kt=190.0, altitude_ft=4_000.0, spacing_nm=0.1, **wind)
    drawn, ax = figure(6.8, 6.2)
    plot.route(path, stations=[station], names=["", "TF", "AF", "CF", "HM"], ax=ax, **wind)
    return drawn


@picture
def hold() -> Figure:
    drawn, ax = figure(6.8, 5.4)
    plot.hold(270.0, true_airspeed_kt=180.0, wind_from_deg=350.0, wind_speed_kt=30.0, ident="OST", ax=ax)
    return drawn


@picture
def recorded_turn() -> Figure:
    """What the pieces of the scripting tutorial end with."""
    page = Path(__file__).parent / "tutorials" / "scripting.md"
    names: dict[str, Any] = {}
    with inside(page.parent), contextlib.redirect_stdout(io.StringIO()):
        for piece in re.findall(r"```python\n(.*?)```", page.read_text(), re.DOTALL):
            exec(compile(piece, str(page), "exec"), names)  # noqa: S102
    drawn = names["ax"].get_figure()
    drawn.set_size_inches(6.6, 5.0)
    return drawn


def write(drawn: Figure, path: Path) -> None:
    """Writes a picture into a file and closes it."""
    paper = io.BytesIO()
    drawn.savefig(paper, dpi=DOTS_PER_INCH, bbox_inches="tight", pad_inches=0.08)
    pyplot.close(drawn)
    # 256 colours are enough, and a third of the file. It holds no date and no version, so that the same picture is the same file.
    Image.open(paper).convert("RGB").quantize(256, dither=Image.Dither.NONE).save(path, optimize=True)


def main(folder: Path = FOLDER) -> list[Path]:
    """Draws all of them and says where they are."""
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for draw in PICTURES:
        written.append(folder / f"{draw.__name__}.png")
        write(draw(), written[-1])
    return written


if __name__ == "__main__":
    for one in main(*map(Path, sys.argv[1:])):
        print(one)
