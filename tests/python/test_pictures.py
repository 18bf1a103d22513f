"""The pictures of the documentation: drawn by its own script, shown by its pages, and as they would be drawn today."""

import importlib.util
import re

import matplotlib
import numpy as np
import pytest
from conftest import ROOT
from matplotlib import pyplot

from lubberline import plot

DOCS = ROOT / "docs"
SHOWN = {name for page in DOCS.rglob("*.md") for name in re.findall(r"!\[[^\]]+\]\((?:\.\./)?pictures/([\w.]+)\)", page.read_text())}
#: What the committed pictures were drawn with: the newest that the tests run with.
DRAWN_WITH = re.search(r"^matplotlib==([\d.]+); python_version >=", (ROOT / "tests/python/requirements.txt").read_text(), re.MULTILINE).group(1)


@pytest.fixture(scope="module")
def drawn(tmp_path_factory):
    specification = importlib.util.spec_from_file_location("draw", DOCS / "draw.py")
    script = importlib.util.module_from_spec(specification)
    specification.loader.exec_module(script)
    folder = tmp_path_factory.mktemp("pictures")
    return {path.name: path for path in script.main(folder)}


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
    if matplotlib.__version__ != DRAWN_WITH:
        pytest.skip("another matplotlib draws letters elsewhere")
    old, new = pyplot.imread(committed), pyplot.imread(drawn[name])
    # A letter may come to stand a pixel beside; a line elsewhere is more than that.
    assert np.abs(np.subtract(old.shape, new.shape)).max() <= 4, "draw them again: python docs/draw.py"
    rows, columns = np.minimum(old.shape, new.shape)[:2]
    assert np.abs(old[:rows, :columns] - new[:rows, :columns]).mean() < 0.01, "draw them again: python docs/draw.py"
