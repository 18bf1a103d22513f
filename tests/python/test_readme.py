"""The examples of the project's README, run as they stand."""

import re
import subprocess
import sys
from pathlib import Path

from conftest import ROOT

README = (ROOT / "README.md").read_text()


def example(language):
    return re.search(rf"```{language}\n(.*?)```", README, re.DOTALL).group(1)


def test_the_python_example(tmp_path):
    answer = subprocess.run([sys.executable, "-c", example("python")], capture_output=True, text=True, check=True, cwd=tmp_path)
    assert answer.stdout.splitlines()[0] == "begin at 7.7 DME"
    assert answer.stdout.splitlines()[1] == "[21.5 26. ]"


def test_the_c_example_is_the_one_that_is_compiled():
    assert example("c") == Path(ROOT, "tests/c/readme.c").read_text()
