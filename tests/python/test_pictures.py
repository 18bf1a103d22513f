"""The pictures of the documentation: drawn by its own script, shown by its pages, and as they would be drawn today."""

import importlib.util
import itertools
import re

import matplotlib
import numpy as np
import pytest
from conftest import ROOT
from matplotlib import ft2font, pyplot
from PIL import Image

from lubberline import plot

DOCS = ROOT / "docs"
SHOWN = {name for page in DOCS.rglob("*.md") for name in re.findall(r"!\[[^\]]+\]\((?:\.\./)?pictures/([\w.]+)\)", page.read_text())}
#: What the committed pictures were drawn with: the newest matplotlib that the tests run with, and the FreeType that comes with it and draws letters.
DRAWN_WITH = (
    re.search(r"^matplotlib==([\d.]+); python_version >=", (ROOT / "tests/python/requirements.txt").read_text(), re.MULTILINE).group(1),
    "2.14.3",
)
#: So many pixels may look like nothing that is in the other picture near by. Drawn by the same matplotlib there is none; of the course change, the curve
#: of the rule is 385 and the planned turn 953, of the readings each curve some 2000; the thinnest of all lines, all but hidden by another one, is 126.
PIXELS = 60


@pytest.fixture(scope="module")
def script():
    specification = importlib.util.spec_from_file_location("draw", DOCS / "draw.py")
    script = importlib.util.module_from_spec(specification)
    specification.loader.exec_module(script)
    return script


@pytest.fixture(scope="module")
def drawn(script, tmp_path_factory):
    folder = tmp_path_factory.mktemp("pictures")
    return {path.name: path for path in script.main(folder)}


def unlike(one, other):
    """How many pixels of either picture are darker or lighter than all that the other one has within two pixels.

    So a line that is drawn two pixels beside counts for nothing, and one that is missing counts with all its length, however white the rest is.
    """
    one, other = (np.asarray(Image.open(path).convert("RGB"), dtype=np.int16) for path in (one, other))
    assert np.abs(np.subtract(one.shape, other.shape)).max() <= 2, f"{one.shape} and {other.shape}: draw them again, python docs/draw.py"
    rows, columns = np.minimum(one.shape, other.shape)[:2]
    one, other = one[:rows, :columns], other[:rows, :columns]
    return int(np.count_nonzero(beyond(one, other) | beyond(other, one)))


def beyond(picture, near, by=20, reach=2):
    """Where a picture is out of the range of another one's neighbourhood, in any colour, by more than 20 of 255."""
    padded = np.pad(near, ((reach, reach), (reach, reach), (0, 0)), mode="edge")
    low = high = near
    for down, right in itertools.product(range(2 * reach + 1), repeat=2):
        shifted = padded[down : down + near.shape[0], right : right + near.shape[1]]
        low, high = np.minimum(low, shifted), np.maximum(high, shifted)
    return ((picture < low - by) | (picture > high + by)).any(axis=-1)


def test_each_picture_is_shown_and_each_one_shown_is_drawn(drawn):
    assert set(drawn) == SHOWN
    assert {path.name for path in (DOCS / "pictures").glob("*.png")} == SHOWN


def test_the_page_of_pictures_names_each_function_and_its_example_draws(tmp_path, monkeypatch):
    page = (DOCS / "pictures.md").read_text()
    assert set(re.findall(r"`(\w+)\([^`]*\)`", page)) == set(plot.__all__) - {"COLORS"}
    monkeypatch.chdir(tmp_path)
    exec(compile(re.search(r"```python\n(.*?)```", page, re.DOTALL).group(1), "pictures.md", "exec"), {})
    assert (tmp_path / "turn.png").stat().st_size > 5_000


@pytest.mark.parametrize("name", sorted(SHOWN))
def test_a_picture_is_small_and_the_one_drawn_today(drawn, name):
    committed = DOCS / "pictures" / name
    assert 5_000 < committed.stat().st_size < 150_000
    if (matplotlib.__version__, ft2font.__freetype_version__) != DRAWN_WITH:
        pytest.skip("another matplotlib draws letters elsewhere")
    assert unlike(committed, drawn[name]) < PIXELS, "draw them again: python docs/draw.py"


@pytest.mark.parametrize("name", ["course_change", "readings", "recorded_turn"])
def test_a_picture_without_one_of_its_curves_is_told_from_it(script, drawn, tmp_path, name):
    erased = tmp_path / "erased.png"
    for number in range(60):
        figure = getattr(script, name)()
        curves = [line for ax in figure.axes for line in ax.get_lines() if len(line.get_xdata()) > 100]
        if number == len(curves):
            pyplot.close(figure)
            break
        curves[number].set_alpha(0.0)
        script.write(figure, erased)
        assert unlike(erased, drawn[f"{name}.png"]) > 3 * PIXELS, f"{number}: {curves[number].get_label()}"
    assert number > 1
