"""The Python example of the project's README, run as it stands; the C one is built with the C programs."""

import re
import subprocess
import sys

from conftest import ROOT

README = (ROOT / "README.md").read_text()


def example(language):
    return re.search(rf"```{language}\n(.*?)```", README, re.DOTALL).group(1)


def test_the_python_example(tmp_path):
    answer = subprocess.run([sys.executable, "-c", example("python")], capture_output=True, text=True, check=True, cwd=tmp_path)
    assert answer.stdout.splitlines()[0] == "begin at 7.7 DME"
    assert answer.stdout.splitlines()[1] == "[21.5 26. ]"
    assert answer.stdout.splitlines()[2] == "[49.6 40.2]"
