"""Writes the recorded track of the tutorial: an invented flight past an invented station, flown by the library and blurred as a recorder would.

`python docs/tutorials/record_track.py [FILE]` writes recorded_track.csv beside itself if no file is given. The same seed gives the same record.
"""

import sys
from pathlib import Path

import numpy as np

import lubberline

STATION = lubberline.Station(61.25, -11.5, elevation_ft=420.0, declination_deg=-6.0, ident="OST")
ALTITUDE_FT, AIRSPEED_KT = 24_000.0, 400.0
#: Where the wind blows from, true, and its speed.
WIND = (285.0, 55.0)
#: The radial flown inbound and the one flown outbound, from the station's north.
INBOUND_RADIAL_DEG, OUTBOUND_RADIAL_DEG = 224.0, 104.0
LATE_S = 9.0


def fly() -> "np.ndarray":
    """A crew that begins its turn too late, sees it, and comes back to its course at 20 degrees: a state each second."""
    inbound_deg = float(lubberline.true_from_radial_deg(INBOUND_RADIAL_DEG, STATION.declination_deg)) - 180.0
    outbound_deg = float(lubberline.true_from_radial_deg(OUTBOUND_RADIAL_DEG, STATION.declination_deg))
    wind = {"wind_from_deg": WIND[0], "wind_speed_kt": WIND[1]}
    height_ft = ALTITUDE_FT - STATION.elevation_ft
    plan = lubberline.course_change(
        inbound_deg, outbound_deg, true_airspeed_kt=AIRSPEED_KT, height_above_station_ft=height_ft, **wind
    )
    start = lubberline.geodesic_direct(STATION.latitude_deg, STATION.longitude_deg, inbound_deg + 180.0, 18.0)
    flight = lubberline.Flight(
        start.latitude_deg,
        start.longitude_deg,
        ALTITUDE_FT,
        heading_deg=plan.heading_before_deg,
        true_airspeed_kt=AIRSPEED_KT,
        station_latitude_deg=STATION.latitude_deg,
        station_longitude_deg=STATION.longitude_deg,
        station_elevation_ft=STATION.elevation_ft,
        station_declination_deg=STATION.declination_deg,
        course_deg=OUTBOUND_RADIAL_DEG,
        **wind,
    )
    before_s = (18.0 - plan.lead_nm) / plan.groundspeed_before_kt * 3600.0
    flown = [flight.run(round(before_s + LATE_S))]
    flight.turn_at_station(inbound_deg, outbound_deg)
    flown.append(flight.run(600.0, until_done=True)[1:])
    flight.hold_heading(plan.heading_after_deg + 20.0)
    for _ in range(120):
        flown.append(flight.run(1.0)[1:])
        here = flight.state
        off = lubberline.cross_track(
            STATION.latitude_deg, STATION.longitude_deg, outbound_deg, here.latitude_deg, here.longitude_deg
        )
        # The turn back takes some four tenths of a mile across the course.
        if off.cross_track_nm > -0.42:
            break
    flight.hold_heading(plan.heading_after_deg)
    flown.append(flight.run(150.0)[1:])
    return np.concatenate(flown)


def main(path: Path) -> None:
    states, noise = fly(), np.random.default_rng(11)
    count = len(states)
    # Ten metres of position, half a degree of heading, two knots of airspeed.
    columns = {
        "time_s": (states["time_s"], 0.0, "%.0f"),
        "latitude_deg": (states["latitude_deg"], 9e-5, "%.5f"),
        "longitude_deg": (states["longitude_deg"], 1.8e-4, "%.5f"),
        "altitude_ft": (states["altitude_ft"], 15.0, "%.0f"),
        "true_heading_deg": (states["true_heading_deg"], 0.5, "%.1f"),
        "true_airspeed_kt": (np.full(count, AIRSPEED_KT), 2.0, "%.0f"),
    }
    blurred = np.column_stack([values + deviation * noise.standard_normal(count) for values, deviation, _ in columns.values()])
    formats = [format for _, _, format in columns.values()]
    np.savetxt(path, blurred, fmt=formats, delimiter=",", header=",".join(columns), comments="")


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).with_name("recorded_track.csv"))
