"""The named functions: keywords, defaults, numbers, errors."""

import inspect

import numpy as np
import pytest

import lubberline

FUNCTIONS = [name for name in lubberline._functions.__all__ if inspect.isfunction(getattr(lubberline, name))]
NUMBERS = [name for name in FUNCTIONS if lubberline._native.scalars.get(name)]


def test_keywords_and_defaults():
    by_position = lubberline.tas_from_cas_kt(280.0, 35_000.0, 10.0)
    by_name = lubberline.tas_from_cas_kt(cas_kt=280.0, isa_deviation_k=10.0, pressure_altitude_ft=35_000.0)
    assert by_position == by_name
    assert lubberline.tas_from_cas_kt(280.0, 35_000.0) == lubberline.tas_from_cas_kt(280.0, 35_000.0, 0.0)
    with pytest.raises(TypeError):
        lubberline.tas_from_cas_kt(280.0, 35_000.0, isa_deviation=3.0)


@pytest.mark.parametrize("number", [10, 10.0, np.float64(10), np.int64(10), np.float32(10), True + 9])
def test_every_kind_of_number_is_one(number):
    answer = lubberline.slant_range_nm(number, 30_000)
    assert type(answer) is float and answer == lubberline.slant_range_nm(10.0, 30_000.0)
    with pytest.raises(lubberline.NavigationError):
        lubberline.slant_range_nm(-number, 30_000)


def test_an_error_names_the_parameter_the_value_and_what_is_allowed():
    with pytest.raises(ValueError, match=r"bank_deg is 95 deg; allowed: above 0.0 below 90.0 deg") as caught:
        lubberline.turn_radius_nm(450.0, 95.0)
    assert caught.value.parameter == "bank_deg" and caught.value.code < 0
    with pytest.raises(lubberline.NavigationError, match="'inbound', 'outbound'"):
        lubberline.arc_exit(10.0, "sideways", 12.0, "clockwise", 200.0)


@pytest.mark.parametrize("wrong", ["ten", None, object(), 1j])
def test_what_is_no_number_is_a_type_error(wrong):
    with pytest.raises(TypeError):
        lubberline.slant_range_nm(wrong, 30_000.0)


def test_several_outputs_come_as_a_named_tuple():
    answer = lubberline.geodesic_inverse(61.0, -12.0, 62.0, -11.0)
    assert answer._fields == ("distance_nm", "initial_bearing_deg", "final_bearing_deg")
    distance_nm, bearing_deg, _ = answer
    back = lubberline.geodesic_direct(61.0, -12.0, bearing_deg, distance_nm)
    assert back.latitude_deg == pytest.approx(62.0, abs=1e-12)
    arrays = lubberline.geodesic_inverse([61.0, 61.0], -12.0, 62.0, -11.0)
    np.testing.assert_array_equal(arrays.distance_nm, [distance_nm, distance_nm])


def test_words_and_codes_choose_alike():
    word = lubberline.arc_entry(300.0, "inbound", 12.0, "clockwise", 210.0)
    code = lubberline.arc_entry(300.0, 0, 12.0, 1, 210.0)
    assert word == code
    with pytest.raises(lubberline.NavigationError, match="sense is 7"):
        lubberline.arc_entry(300.0, 0, 12.0, 7, 210.0)


@pytest.mark.parametrize("name", NUMBERS)
def test_nan_and_bad_numbers(name):
    function = lubberline._native.scalars[name]
    count = getattr(lubberline.ufunc, next(one for one in lubberline.ufunc.__all__ if one.startswith(name))).nin
    for argument in range(count):
        given = [1.0] * count
        given[argument] = float("nan")
        answer = function(*given)
        assert all(np.isnan(answer) if isinstance(answer, tuple) else [np.isnan(answer)])
        for bad in (float("inf"), -float("inf"), 1e308, -1e308, 5e-324):
            given[argument] = bad
            try:
                function(*given)
            except lubberline.NavigationError as error:
                assert error.code < 0 and str(error)


@pytest.mark.parametrize("name", FUNCTIONS)
def test_every_function_is_documented(name):
    text = getattr(lubberline, name).__doc__
    for heading in ("Parameters", "Returns", "Raises", "Notes", "Examples", "Source:"):
        assert heading in text
