"""A wind is a direction and a speed: one without the other is refused by name, and neither is calm air."""

import inspect
import math

import matplotlib.pyplot as plt
import numpy as np
import pytest

import lubberline
from lubberline import plot

SKE = lubberline.Station(61.82, -14.40, ident="SKE")
OST = lubberline.Station(61.25, -11.50, ident="OST")
MAR = lubberline.Station(59.93, -10.90, ident="MAR")
CORNER = [
    lubberline.Leg(code, fix_latitude_deg=north, fix_longitude_deg=east)
    for code, north, east in (("IF", 60.0, -10.0), ("TF", 60.5, -10.0), ("TF", 60.5, -9.0))
]
PATH = lubberline.fly_legs(CORNER, true_airspeed_kt=250.0, altitude_ft=9000.0)


def flight(**wind):
    begun = lubberline.Flight(
        60.0, -10.0, 5000.0, heading_deg=20.0, true_airspeed_kt=200.0, station_latitude_deg=60.2, station_longitude_deg=-10.0, **wind
    )
    return begun.step(60.0)


def drawn(axes):
    return [(line.get_xydata().tolist(), line.get_label()) for line in axes.get_lines()]


# Each with what tells two answers apart.
TAKE_A_WIND = {
    "course_change": lambda **wind: lubberline.course_change(40.0, 110.0, true_airspeed_kt=430.0, **wind).settings,
    "fly_legs": lambda **wind: lubberline.fly_legs(CORNER, true_airspeed_kt=250.0, altitude_ft=9000.0, **wind).segments,
    "brief_path": lambda **wind: lubberline.brief_path(CORNER, true_airspeed_kt=250.0, altitude_ft=9000.0, **wind).data(),
    "brief_route": lambda **wind: lubberline.brief_route([SKE, OST, MAR], true_airspeed_kt=440.0, pressure_altitude_ft=35_000.0, **wind).data(),
    "Flight": flight,
    "plot.hold": lambda **wind: drawn(plot.hold(90.0, true_airspeed_kt=180.0, **wind)),
}
ALL = {
    **TAKE_A_WIND,
    "RouteFix": lambda **wind: lubberline.RouteFix(OST, **wind),
    "plot.route": lambda **wind: plot.route(PATH, **wind),
}


@pytest.fixture(autouse=True)
def closed():
    yield
    plt.close("all")


@pytest.mark.parametrize("name", ALL)
@pytest.mark.parametrize("value", [0.0, 20.0, math.nan])
def test_half_a_wind_is_refused_by_name(name, value):
    neither = {"RouteFix": "the wind of the route", "plot.route": "no arrow"}.get(name, "calm air")
    for given, missing in (("wind_speed_kt", "wind_from_deg"), ("wind_from_deg", "wind_speed_kt")):
        with pytest.raises(TypeError, match=f"^{given} is given without {missing}; allowed: both of them, or neither for {neither}$"):
            ALL[name](**{given: value})


@pytest.mark.parametrize("name", TAKE_A_WIND)
def test_neither_is_calm_air(name):
    asked = TAKE_A_WIND[name]
    assert asked() == asked(wind_from_deg=None, wind_speed_kt=None) == asked(wind_from_deg=0.0, wind_speed_kt=0.0)
    assert asked() != asked(wind_from_deg=0.0, wind_speed_kt=20.0) != asked(wind_from_deg=180.0, wind_speed_kt=20.0)


@pytest.mark.parametrize("name", ["fly_legs", "brief_path", "brief_route"])
def test_winds_by_level_stand_beside_no_other_wind(name):
    levels = [(0.0, 250.0, 20.0), (40_000.0, 270.0, 80.0)]
    for wind in ({"wind_from_deg": 0.0, "wind_speed_kt": 0.0}, {"wind_from_deg": np.array([1.0, 2.0]), "wind_speed_kt": 3.0}):
        with pytest.raises(TypeError, match="wind_levels and another wind are both given"):
            TAKE_A_WIND[name](wind_levels=levels, **wind)


def required(function):
    """A one for each parameter that must be given; what is refused first is the wind."""
    parameters = inspect.signature(function).parameters.values()
    return [1.0 for parameter in parameters if parameter.default is parameter.empty and parameter.kind is not parameter.VAR_KEYWORD]


PLAIN = [
    name
    for name, function in vars(lubberline).items()
    if inspect.isfunction(function) and name in lubberline._native.scalars and "wind_speed_kt=None" in str(inspect.signature(function))
]


@pytest.mark.parametrize("name", PLAIN)
@pytest.mark.parametrize("value", [20.0, math.nan, np.array([0.0, 20.0])])
def test_a_plain_function_takes_no_half_a_wind(name, value):
    function = getattr(lubberline, name)
    for given, missing in (("wind_speed_kt", "wind_from_deg"), ("wind_from_deg", "wind_speed_kt")):
        with pytest.raises(TypeError, match=f"^{given} is given without {missing}; allowed: both of them, or neither for calm air$"):
            function(*required(function), **{given: value})


def test_a_plain_function_is_calm_without_a_wind():
    assert len(PLAIN) > 20
    courses = np.array([110.0, 130.0])
    for outbound in (110.0, courses):
        wanted = lubberline.lead_nm(40.0, outbound, 430.0, 0.0, 0.0)
        np.testing.assert_array_equal(lubberline.lead_nm(40.0, outbound, 430.0), wanted)
        assert np.all(lubberline.lead_nm(40.0, outbound, 430.0, 270.0, 60.0) != wanted)
    assert " ".join(lubberline.lead_nm.__doc__.split()).count("left out with the other half of the wind: calm air") == 2


def test_a_station_without_a_wind_has_that_of_the_route():
    given = {"true_airspeed_kt": 440.0, "pressure_altitude_ft": 35_000.0, "wind_from_deg": 250.0, "wind_speed_kt": 60.0}
    brief = lubberline.brief_route([SKE, lubberline.RouteFix(OST, wind_from_deg=0.0, wind_speed_kt=0.0), MAR], **given)
    assert [leg.wind_speed_kt for leg in brief.legs] == [0.0, 60.0]


def test_a_route_is_drawn_with_an_arrow_if_there_is_a_wind():
    def texts(**wind):
        return [text.get_text() for text in plot.route(PATH, **wind).texts]

    assert "wind 250\N{DEGREE SIGN}/30 kt" in texts(wind_from_deg=250.0, wind_speed_kt=30.0)
    assert "calm" in texts(wind_from_deg=0.0, wind_speed_kt=0.0)
    assert "N" not in texts()
