"""Every function, over good and bad numbers alike: the call on plain numbers and the NumPy functions give the same answer and refuse
the same points, and nothing but a refusal raises a floating-point flag."""

import ast
import math
import random
import re

import numpy as np
import pytest
from conftest import ROOT

import lubberline
from lubberline import _native, ufunc

POINTS = 200

#: Usual values by the suffix of the parameter's name; the longest suffix that fits counts. Last a ratio, and the choices.
USUAL = {
    "_deg_per_s": [1.0, 3.0, 5.0, 7.5, math.inf],
    "_deg": [5.0, 15.0, 25.0, 30.0, 45.0, 61.0, 89.0],
    "_nm": [0.3, 5.0, 12.0, 30.0, 60.0],
    "_ft": [500.0, 1000.0, 3000.0, 8000.0, 18_000.0, 33_000.0, 45_000.0],
    "_kt": [20.0, 60.0, 90.0, 140.0, 250.0, 430.0],
    "_fpm": [500.0, -1500.0],
    "_s": [10.0, 60.0, 95.0, 3600.0],
    "_hpa": [25.0, 220.0, 850.0, 1013.25, 1040.0],
    "_degc": [-56.5, -20.0, 0.0, 15.0, 40.0],
    "_k": [0.0, -25.0, 10.0, 20.0],
    "_kg_per_m3": [0.4, 1.225],
    "": [0.0, 1.0, 2.0, 0.5, 0.8, 1.15],
    "flown": [0.0, 1.0],
    "sense": [1.0, -1.0],
    "rule": [0.0, 1.0, 2.0],
}
#: Values at and beyond the ends of what some function takes.
ODD = [0.0, -0.0, -1.0, 1.0, 3.0, 90.0, 180.0, 360.0, -725.0, 2e4, -2e4, 3e5, 1e9, 1e308, -1e308, 5e-324, math.inf, -math.inf, math.nan]

NAMES = sorted(_native.scalars)


def outputs(name):
    """The one-output NumPy functions of a function, in the order of its answer."""
    if name not in _native.many:
        return [_native.ufuncs[name]]
    answer = getattr(lubberline, name)(*[math.nan] * _native.many[name].nin)
    return [_native.ufuncs[f"{name}_{field}"] for field in answer._fields]


def parameters(function):
    """The names of a NumPy function's arguments, from its documentation."""
    signature = function.__doc__.split("\n\n")[1]
    return signature[signature.index("(") + 1 : signature.index(", /")].split(", ")


def example(name):
    """The arguments of the first example in a function's documentation, words as their codes."""
    call = re.search(rf"lubberline\.{name}(\(.*?\))[.:]", getattr(lubberline, name).__doc__).group(1)
    arguments = ast.literal_eval(call.replace(")", ",)").replace("float('inf',)", "1e999"))
    words = {word: code for codes in vars(lubberline._functions).values() if isinstance(codes, dict) for word, code in codes.items()}
    return [float(words.get(argument, argument)) for argument in arguments]


def points(name):
    """Usual points, points near the example, and as many in which one or two arguments are odd."""
    pools = [
        USUAL[max((suffix for suffix in USUAL if parameter.endswith(suffix)), key=len)]
        for parameter in parameters(outputs(name)[0])
    ]
    near = example(name)
    chance = random.Random(name)
    for index in range(POINTS):
        point = [chance.choice(pool) for pool in pools]
        if index % 2:
            point = near.copy()
            point[chance.randrange(len(point))] *= chance.uniform(0.99, 1.01)
        for _ in range(max(0, index // 2 % 4 - 1)):
            point[chance.randrange(len(point))] = chance.choice(ODD)
        yield point


# Functions with a loop of their own over arrays, which may round otherwise than a single call, as their documentation says.
OWN_LOOPS = {
    name
    for file in (ROOT / "core" / "src" / "plain").glob("*.rs")
    for name in re.findall(r"\bfn (\w+)_block\(", file.read_text(encoding="utf-8"))
}


def assert_agree(name, array, single):
    if name in OWN_LOOPS:
        np.testing.assert_allclose(array, single, rtol=1e-11, atol=1e-11)
    else:
        np.testing.assert_array_equal(array, single)


def scalar(name, point):
    """The answer as a tuple, None if it is refused."""
    try:
        answer = _native.scalars[name](*point)
    except lubberline.NavigationError as error:
        assert error.code < 0 and "allowed:" in str(error)
        return None
    assert answer is not None
    return answer if isinstance(answer, tuple) else (answer,)


@pytest.mark.parametrize("name", NAMES)
def test_numbers_and_arrays_agree(name):
    functions = outputs(name)
    assert [function.nin for function in functions] == [len(parameters(functions[0]))] * len(functions)
    given = list(points(name))
    answers = [scalar(name, point) for point in given]
    finite = sum(answer is not None and any(math.isfinite(value) for value in answer) for answer in answers)
    assert finite >= 10, "too few points have an answer for the comparison to say anything"

    for point, answer in zip(given, answers, strict=True):
        if any(math.isnan(value) for value in point):
            assert answer is not None and all(math.isnan(value) for value in answer)
        for index, function in enumerate(functions):
            if answer is None:
                with np.errstate(all="raise"), pytest.raises(FloatingPointError, match="invalid"):
                    function(*point)
                with np.errstate(all="raise", invalid="ignore"):
                    assert np.isnan(function(*point))
            else:
                with np.errstate(all="raise"):
                    assert_agree(name, function(*point), answer[index])

    columns = np.array(given).T
    expected = np.array([answer or [math.nan] * len(functions) for answer in answers]).T
    refused = any(answer is None for answer in answers)
    for index, function in enumerate(functions):
        with np.errstate(all="raise", invalid="ignore"):
            assert_agree(name, function(*columns), expected[index])
        if refused:
            with pytest.warns(RuntimeWarning, match="invalid value"):
                function(*columns)
    if name in _native.many:
        with np.errstate(all="raise", invalid="ignore"):
            assert_agree(name, _native.many[name](*columns), expected)


def test_every_function_is_among_them():
    reached = {function.__name__ for name in NAMES for function in outputs(name)}
    assert reached == set(ufunc.__all__)
