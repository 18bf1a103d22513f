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


@pytest.mark.parametrize("side", ["right", "left"])
@pytest.mark.parametrize("by_dme", [False, True])
def test_the_pattern_of_a_wind_comes_back_over_its_fix(side, by_dme):
    wind = {"wind_from_deg": 300.0, "wind_speed_kt": 30.0}
    pattern = lubberline.holding_pattern(0.0, side, "inbound", 60.0, 210.0, **wind)
    flight = inbound(
        distance_nm=0.0, altitude_ft=9000.0, true_airspeed_kt=210.0, heading_deg=pattern.inbound_correction_deg, **wind
    )
    end_nm = math.hypot(pattern.outbound_end_before_fix_nm, pattern.outbound_end_across_nm)
    leg = (
        {"outbound_dme_nm": lubberline.slant_range_nm(end_nm, 9000.0)} if by_dme else {"outbound_time_s": pattern.outbound_time_s}
    )
    flight.hold(0.0, outbound_heading_deg=pattern.outbound_heading_deg, side=side, **leg)
    for _ in range(3):
        state = flight.run(pattern.duration_s, step_s=pattern.duration_s / 1000.0)[-1]
        away = lubberline.geodesic_inverse(60.0, -20.0, state["latitude_deg"], state["longitude_deg"]).distance_nm
        assert away == pytest.approx(0.0, abs=0.03)


@pytest.mark.parametrize("heading_deg", [190.0, 300.0, 80.0])
def test_each_entry_comes_onto_the_inbound_course(heading_deg):
    pattern = lubberline.holding_pattern(40.0, "right", "inbound", 60.0, 180.0)
    entry = lubberline.holding_entry(heading_deg, 40.0, "right")
    names = {1.0: "parallel", 2.0: "offset", 3.0: "direct"}
    flight = inbound(distance_nm=0.0, true_airspeed_kt=180.0, heading_deg=heading_deg, course_deg=40.0)
    flight.hold(
        40.0,
        outbound_heading_deg=pattern.outbound_heading_deg,
        outbound_time_s=pattern.outbound_time_s,
        entry=names.get(entry.entry, entry.entry),
    )
    table = flight.run(900.0, step_s=0.5)
    # The second time inbound it is on its course: the needle is in the middle, where it is not in the cone.
    inbound_now = (table["time_s"] > 400.0) & (np.abs(table["true_track_deg"] - 40.0) < 0.3) & (table["flag"] == 0.0)
    assert inbound_now.any() and np.abs(table["deviation_deg"][inbound_now]).max() < 0.5


def test_what_is_no_hold_is_refused():
    flight = inbound()
    with pytest.raises(ValueError, match="both given"):
        flight.hold(0.0, outbound_heading_deg=180.0, outbound_time_s=60.0, outbound_dme_nm=5.0)
    with pytest.raises(lubberline.NavigationError, match="'direct'"):
        flight.hold(0.0, outbound_heading_deg=180.0, entry="teardrop")


def test_the_wind_of_levels_is_the_one_between_them():
    flight = inbound(altitude_ft=15_000.0)
    levels = {"lower_from_deg": 180.0, "lower_speed_kt": 20.0, "upper_from_deg": 180.0, "upper_speed_kt": 60.0}
    flight.set_wind_levels(lower_altitude_ft=10_000.0, upper_altitude_ft=20_000.0, **levels)
    assert flight.state.groundspeed_kt == pytest.approx(340.0)
    flight.climb_to(20_000.0, 3_000.0)
    flight.run(120.0)
    flight.set_airspeed(250.0)
    assert flight.state.groundspeed_kt == pytest.approx(310.0)
    with pytest.raises(lubberline.NavigationError, match="ascend"):
        flight.set_wind_levels(lower_altitude_ft=20_000.0, upper_altitude_ft=10_000.0, **levels)


def test_the_winds_of_many_levels_are_those_between_them():
    levels = [(10_000.0, 180.0, 20.0), lubberline.WindLevel(14_000.0, 180.0, 0.0), (20_000.0, 180.0, 60.0)]
    flight = inbound(altitude_ft=12_000.0)
    for given in (levels, np.array(levels)):
        flight.set_winds_aloft(given)
        assert flight.state.groundspeed_kt == pytest.approx(310.0)
    flight.climb_to(20_000.0, 3_000.0)
    flight.run(200.0)
    assert flight.state.groundspeed_kt == pytest.approx(360.0)
    with pytest.raises(lubberline.NavigationError, match="wind level 2 is at 10000 ft"):
        flight.set_winds_aloft([levels[1], levels[0]])
    with pytest.raises(lubberline.NavigationError, match="^wind_levels has 17 levels; allowed: from 1.0 to 16.0$"):
        flight.set_winds_aloft([(1000.0 * place, 180.0, 60.0) for place in range(17)])
    with pytest.raises(TypeError, match="wind level 1 must be three numbers"):
        flight.set_winds_aloft([3.0])


def test_tuning_to_the_next_station_moves_nothing_but_what_is_shown():
    flight = inbound(wind_from_deg=300.0, wind_speed_kt=30.0)
    before = flight.step(30.0)
    flight.tune(61.0, -19.0, station_elevation_ft=200.0, station_declination_deg=-6.0, course_deg=50.0)
    after = flight.state
    for name in ("latitude_deg", "true_heading_deg", "true_track_deg", "groundspeed_kt", "bank_deg"):
        assert getattr(after, name) == pytest.approx(getattr(before, name), abs=1e-9), name
    station = lubberline.Station(61.0, -19.0, elevation_ft=200.0, declination_deg=-6.0)
    seen = station.observe(after.latitude_deg, after.longitude_deg, after.altitude_ft)
    assert (after.dme_nm, after.radial_deg) == (pytest.approx(seen.dme_nm), pytest.approx(seen.radial_deg))
    with pytest.raises(lubberline.NavigationError, match="station_latitude_deg"):
        flight.tune(91.0, 0.0)


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


def test_what_is_not_received_is_not_shown():
    far = lubberline.Flight(
        40.0, -11.5, 5_000.0, heading_deg=0.0, true_airspeed_kt=240.0, station_latitude_deg=61.25, station_longitude_deg=-11.5
    ).state
    assert far.flag != 0 and all(np.isnan([far.radial_deg, far.dme_nm, far.deviation_deg]))
    overhead = lubberline.Flight(
        61.26, -11.5, 30_000.0, heading_deg=0.0, true_airspeed_kt=240.0, station_latitude_deg=61.25, station_longitude_deg=-11.5
    ).state
    assert overhead.in_cone == 1.0 and np.isnan(overhead.radial_deg) and overhead.dme_nm == pytest.approx(4.97, abs=0.02)
