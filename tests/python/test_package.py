"""The package as a whole: documentation examples, types, version."""

import doctest
import importlib
import pkgutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest
from conftest import ROOT

import lubberline

MODULES = ["lubberline", *(f"lubberline.{module.name}" for module in pkgutil.iter_modules(lubberline.__path__))]


@pytest.mark.parametrize("name", [name for name in MODULES if not name.endswith("_native")])
def test_documentation_examples(name):
    results = doctest.testmod(importlib.import_module(name))
    assert results.failed == 0
    if name == "lubberline._functions":
        assert results.attempted > 100


def test_the_readme_of_the_package():
    results = doctest.testfile(str(ROOT / "python" / "README.md"), module_relative=False)
    assert results.attempted > 0 and results.failed == 0


def test_the_version_is_the_workspace_s():
    manifest = tomllib.loads((ROOT / "Cargo.toml").read_text())
    assert lubberline.__version__ == manifest["workspace"]["package"]["version"]


def run(*command):
    answer = subprocess.run([sys.executable, "-m", *command], capture_output=True, text=True, check=False)
    assert answer.returncode == 0, answer.stdout + answer.stderr


def test_the_stubs_agree_with_the_package():
    run("mypy.stubtest", "lubberline", "--ignore-missing-stub")


def test_the_types_serve_a_strict_program(tmp_path):
    program = Path(tmp_path) / "program.py"
    program.write_text(
        "import numpy as np\n"
        "from numpy.typing import NDArray\n"
        "import lubberline\n"
        "one: float = lubberline.slant_range_nm(10.0, 30_000.0)\n"
        "many: NDArray[np.float64] = lubberline.slant_range_nm(np.arange(3.0), 30_000.0)\n"
        "line = lubberline.geodesic_inverse(1.0, 2.0, 3.0, 4.0)\n"
        "distance: float = line.distance_nm\n"
        "lines: NDArray[np.float64] = lubberline.geodesic_inverse([1.0], 2.0, 3.0, 4.0).distance_nm\n"
        "change: lubberline.CourseChange = lubberline.course_change(1.0, 60.0, true_airspeed_kt=200.0)\n"
        "lead: float = change.lead_nm + change.fly_over.extra_distance_nm\n"
        "dme: float = lubberline.Station(1.0, 2.0).observe(1.5, 2.0, 9000.0).dme_nm\n"
        "entry = lubberline.arc_entry(300.0, 'inbound', 12.0, 'clockwise', 210.0)\n"
        "try:\n    pass\nexcept lubberline.NavigationError as error:\n    code: int = error.code\n"
    )
    run("mypy", "--strict", "--cache-dir", str(tmp_path / "cache"), str(program))
