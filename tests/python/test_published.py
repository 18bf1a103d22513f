"""Published check values, through the named functions and the NumPy functions."""

import numpy as np
import pytest
from conftest import published_rows

import lubberline


@pytest.mark.parametrize("row", list(published_rows()))
def test_a_published_value(row):
    if row["note"].startswith("not held:"):
        pytest.skip(row["note"])
    inputs = [float(value) for value in row["inputs"].split(";")]
    if row["expected"] == "none":
        with pytest.raises(lubberline.NavigationError) as caught:
            getattr(lubberline, row["function"])(*inputs)
        assert caught.value.parameter is None, "there is no answer, but not for a value out of its range"
        return
    answer = getattr(lubberline, row["function"])(*inputs)
    several = row["output"] != row["function"]
    value = getattr(answer, row["output"]) if several else answer
    reproduced = value * float(row["scale"]) + float(row["offset"])
    assert abs(reproduced - float(row["expected"])) <= float(row["tolerance"]), row["source"]

    name = f"{row['function']}_{row['output']}" if several else row["function"]
    array = getattr(lubberline.ufunc, name)(*(np.array([value, value]) for value in inputs))
    # Arrays are held to what was published as well, and to 1e-11 more: they may round otherwise than a single call.
    in_array = array[0] * float(row["scale"]) + float(row["offset"])
    allowed = float(row["tolerance"]) + 1e-11 * (1.0 + abs(reproduced))
    assert abs(in_array - float(row["expected"])) <= allowed, row["source"]
    assert array[0] == array[1]
