"""The tutorial of scripting: its record is the one its script makes, its pieces run one after the other and print what it says."""

import contextlib
import io
import re
import runpy

import numpy as np
import pytest
from conftest import ROOT

FOLDER = ROOT / "docs" / "tutorials"
PIECES = re.findall(r"```python\n(.*?)```(?:\n\n```text\n(.*?)```)?", (FOLDER / "scripting.md").read_text(), re.DOTALL)


def test_every_piece_prints_what_the_page_says(monkeypatch):
    monkeypatch.chdir(FOLDER)
    names = {}
    for code, said in PIECES:
        printed = io.StringIO()
        with contextlib.redirect_stdout(printed):
            exec(compile(code, "scripting.md", "exec"), names)
        assert printed.getvalue() == said, code
    assert len(PIECES) >= 6
    # What it finds is what was flown, to the noise of the record.
    script = runpy.run_path(str(FOLDER / "record_track.py"))
    assert names["begun_s"] - names["due_s"] == pytest.approx(script["LATE_S"], abs=0.7)
    assert names["wind"].wind_from_deg == pytest.approx(script["WIND"][0], abs=2.0)
    assert names["wind"].wind_speed_kt == pytest.approx(script["WIND"][1], abs=2.0)


def test_the_record_is_the_one_its_script_makes(tmp_path):
    script = runpy.run_path(str(FOLDER / "record_track.py"))
    script["main"](tmp_path / "track.csv")
    made, kept = ((folder / name).read_text().splitlines() for folder, name in ((tmp_path, "track.csv"), (FOLDER, "recorded_track.csv")))
    assert made[0] == kept[0] and len(made) == len(kept)
    # To the last place written: a digit may fall to the other side of its rounding.
    last_place = [0.0, 1e-5, 1e-5, 1.0, 0.1, 1.0]
    columns = [np.loadtxt(lines, delimiter=",", skiprows=1) for lines in (made, kept)]
    assert (np.abs(columns[0] - columns[1]) <= 1.01 * np.array(last_place)).all()
