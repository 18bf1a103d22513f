"""A flight and its table; the sureness of a course change."""

import copy
import math

import numpy as np
import pytest

import lubberline

STATION = {"station_latitude_deg": 60.0, "station_longitude_deg": -20.0}


def inbound(distance_nm=12.0, altitude_ft=5000.0, **more):
    start = lubberline.geodesic_direct(60.0, -20.0, 180.0, distance_nm)
    settings = {"heading_deg": 0.0, "true_airspeed_kt": 300.0, "course_deg": 70.0} | STATION | more
    return lubberline.Flight(start.latitude_deg, start.longitude_deg, altitude_ft, **settings)


def test_the_turn_rolls_out_on_its_course_and_the_table_shows_it():
    flight = inbound()
    flight.turn_at_station(0.0, 70.0)
    table = flight.run(600.0, step_s=0.5, until_done=True)
    end = table[-1]
    assert end["done"] == 1.0 and table["done"][:-1].sum() == 0.0
    across = lubberline.cross_track(60.0, -20.0, 70.0, end["latitude_deg"], end["longitude_deg"]).cross_track_nm
    assert across == pytest.approx(0.0, abs=0.003)
    lead = lubberline.course_change(0.0, 70.0, true_airspeed_kt=300.0, height_above_station_ft=5000.0)
    banked = table[np.abs(table["bank_deg"]) > 0.0]
    assert banked["dme_nm"][0] == pytest.approx(lead.dme_at_roll_in_nm, abs=300.0 / 7200.0 + 1e-6)
    assert np.allclose(np.diff(table["time_s"]), 0.5)


def test_steps_and_a_table_are_one_flight_and_a_copy_is_its_own():
    flight = inbound(wind_from_deg=250.0, wind_speed_kt=40.0)
    other = copy.copy(flight)
    table = flight.run(10.0, step_s=1.0)
    for _ in range(10):
        state = other.step(1.0)
    assert state == flight.state == tuple(table[-1])
    before = flight.state
    assert other.step(math.nan) == before and other.step(-1.0) == before


def test_what_is_refused_is_named():
    with pytest.raises(lubberline.NavigationError, match="true_airspeed_kt"):
        inbound(true_airspeed_kt=math.nan)
    flight = inbound()
    with pytest.raises(lubberline.NavigationError, match="reversal"):
        flight.turn_at_station(0.0, 180.0)
    with pytest.raises(ValueError, match="step_s|steps"):
        flight.run(10.0, step_s=0.0)
    with pytest.raises(ValueError, match="clockwise"):
        flight.arc(10.0, "backwards")


def test_a_hold_comes_back_to_its_fix_and_a_climb_levels_off():
    flight = inbound(distance_nm=0.0, altitude_ft=5000.0, true_airspeed_kt=200.0, wind_from_deg=300.0, wind_speed_kt=20.0)
    flight.hold(0.0, outbound_heading_deg=170.0)
    flight.climb_to(6000.0, 500.0)
    table = flight.run(600.0, step_s=0.5)
    assert table["altitude_ft"][-1] == pytest.approx(6000.0)
    after = table[table["time_s"] > 120.0]
    assert after["dme_nm"].min() < 1.05
    assert table["dme_nm"].max() < 8.0


def test_a_late_crew_needs_the_way_it_flies():
    change = lubberline.course_change(0.0, 70.0, true_airspeed_kt=300.0, height_above_station_ft=5000.0)
    late = lubberline.course_change_sureness(change, mean_delay_s=3.0, trials=1000)
    assert late.margin_nm == pytest.approx(0.25, abs=1e-4)
    errors = {"bank_deg": 2.0, "dme_nm": 0.1, "roll_in_delay_s": 1.0}
    once = lubberline.course_change_sureness(change, **errors, seed=5)
    assert once == lubberline.course_change_sureness(change, **errors, seed=5)
    assert once.deviation_nm == pytest.approx(once.linear_deviation_nm, rel=0.1)
    assert once.linear_deviation_nm == pytest.approx(math.hypot(*once.by_source_nm.values()))
    each_nm = lubberline.course_change_overshoots(change, **errors, seed=5)
    assert each_nm.mean() == pytest.approx(once.mean_nm) and each_nm.std() == pytest.approx(once.deviation_nm)
    with pytest.raises(ValueError, match="trials"):
        lubberline.course_change_overshoots(change, trials=-1)
    with pytest.raises(lubberline.NavigationError, match="bank_deg"):
        lubberline.course_change_sureness(change, bank_deg=-1.0)
    assert math.isnan(lubberline.course_change_sureness(change, bank_deg=math.nan).mean_nm)
