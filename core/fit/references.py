"""Writes core/src/many/functions/references.csv: sine, cosine, direction, logarithm and exponential of random and of hard
arguments, from fifty digits, each as a double and what its rounding leaves. Run by hand, with mpmath."""
import math
import random
from pathlib import Path

from mpmath import atan2, cos, exp, log, mp, mpf, pi, sin

mp.dps = 50
random.seed(7)


def row(name, x, y, value):
    high = float(value)
    return f"{name},{x!r},{y!r},{high!r},{float(value - mpf(high))!r}\n"


rows = []
angles = [random.uniform(-720, 720) for _ in range(250)] + [random.uniform(-1, 1) * 10.0**-k for k in range(12) for _ in range(8)]
angles += [45.0 * k + s * 10.0**-j for k in range(-9, 9) for j in (1, 5, 9) for s in (-1, 1)]
for x in angles:
    rows.append(row("sine", x, 0.0, sin(mpf(x) * pi / 180)))
    rows.append(row("cosine", x, 0.0, cos(mpf(x) * pi / 180)))
for _ in range(600):
    y, x = random.uniform(-1, 1) * 10 ** random.uniform(-6, 3), random.uniform(-1, 1) * 10 ** random.uniform(-6, 3)
    rows.append(row("direction", y, x, atan2(mpf(y), mpf(x)) * 180 / pi))
for _ in range(300):
    x = 10 ** random.uniform(-6, 6)
    rows.append(row("logarithm", x, 0.0, log(mpf(x))))
for _ in range(300):
    x = 1 + random.uniform(-1, 1) * 10 ** random.uniform(-9, -0.01)
    rows.append(row("logarithm", x, 0.0, log(mpf(x))))
for _ in range(500):
    x = random.uniform(-1, 1) * 10 ** random.uniform(-6, 2)
    rows.append(row("exponential", x, 0.0, exp(mpf(x))))
(Path(__file__).parents[1] / "src/many/functions/references.csv").write_text("".join(rows), encoding="utf-8")
