"""The package as a whole: documentation examples, types, version."""

import doctest
import importlib
import pkgutil
import re
import subprocess
import sys
from pathlib import Path

import pytest
from conftest import ROOT

import lubberline

MODULES = ["lubberline", *(module.name for module in pkgutil.walk_packages(lubberline.__path__, "lubberline."))]


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
    manifest = (ROOT / "Cargo.toml").read_text()
    assert re.search(r'^version = "(.+)"$', manifest, re.MULTILINE).group(1) == lubberline.__version__


def run(*command):
    answer = subprocess.run([sys.executable, "-m", *command], capture_output=True, text=True, check=False)
    assert answer.returncode == 0, answer.stdout + answer.stderr


def test_the_stubs_agree_with_the_package(tmp_path):
    # The package's own `__all__` takes in that of `_functions`, which the type checker does not follow.
    allowed = Path(tmp_path) / "allowed"
    allowed.write_text("lubberline.__all__\n")
    run("mypy.stubtest", "lubberline", "--allowlist", str(allowed))


def test_what_is_exported_is_there():
    assert all(hasattr(lubberline, name) for name in lubberline.__all__)
    assert len(set(lubberline.__all__)) == len(lubberline.__all__)
    assert set(lubberline._native.scalars) < set(lubberline.__all__)


def strict(tmp_path, *what):
    # As Python 3.13 would have it: before 3.12, NumPy's `ArrayLike` lets anything pass.
    run("mypy", "--strict", "--python-version", "3.13", "--cache-dir", str(tmp_path / "cache"), *what)


def test_the_package_s_own_types(tmp_path):
    strict(tmp_path, "-p", "lubberline")


def test_the_types_serve_a_strict_program(tmp_path):
    program = ROOT / "tests" / "python" / "typed_program.py"
    strict(tmp_path, str(program))
    subprocess.run([sys.executable, str(program)], check=True)
