"""Writes core/src/many/geodesic/karney.rs: Karney's series for WGS-84, as polynomials for loops without branches.

Run by hand, with mpmath: python core/fit/long_geodesic.py

C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013) 43-55, equations 17, 18, 21, 24 and 25, to the sixth
order. With m the squared cosine of the azimuth at the equator, the expansion parameter is a function of m and goes to zero
with it, so that the factor of the l-th sine is m^l times a smooth function of m: those functions are interpolated here, at
Chebyshev nodes from 0 to 1.
"""
from pathlib import Path

from mpmath import cos, lu_solve, matrix, mp, mpf, pi, sqrt

mp.dps = 40
F = 1 / mpf("298.257223563")
N = F / (2 - F)
SECOND = F * (2 - F) / (1 - F) ** 2


def expansion(m):
    root = sqrt(1 + SECOND * m)
    return (root - 1) / (root + 1)


def half(top):
    return mpf(1) / top


A1 = lambda e: (1 + e**2 / 4 + e**4 / 64 + e**6 / 256) / (1 - e)
C1 = {
    1: lambda e: -e / 2 + 3 * e**3 / 16 - e**5 / 32,
    2: lambda e: -e**2 / 16 + e**4 / 32 - 9 * e**6 / 2048,
    3: lambda e: -e**3 / 48 + 3 * e**5 / 256,
    4: lambda e: -5 * e**4 / 512 + 3 * e**6 / 512,
}
D1 = {
    1: lambda e: e / 2 - 9 * e**3 / 32 + 205 * e**5 / 1536,
    2: lambda e: 5 * e**2 / 16 - 37 * e**4 / 96 + 1335 * e**6 / 4096,
    3: lambda e: 29 * e**3 / 96 - 75 * e**5 / 128,
    4: lambda e: 539 * e**4 / 1536 - 2391 * e**6 / 2560,
}
A3 = lambda e: (1 - (half(2) - N / 2) * e - (half(4) + N / 8 - 3 * N**2 / 8) * e**2
                - (half(16) + 3 * N / 16 + N**2 / 16) * e**3 - (3 * half(64) + N / 32) * e**4 - 3 * half(128) * e**5)
C3 = {
    1: lambda e: ((half(4) - N / 4) * e + (half(8) - N**2 / 8) * e**2 + (3 * half(64) + 3 * N / 64 - N**2 / 64) * e**3
                  + (5 * half(128) + N / 64) * e**4 + 3 * half(128) * e**5),
    2: lambda e: ((half(16) - 3 * N / 32 + N**2 / 32) * e**2 + (3 * half(64) - N / 32 - 3 * N**2 / 64) * e**3
                  + (3 * half(128) + N / 128) * e**4 + 5 * half(256) * e**5),
    3: lambda e: (5 * half(192) - 3 * N / 64 + 5 * N**2 / 192) * e**3 + (3 * half(128) - 5 * N / 192) * e**4 + 7 * half(512) * e**5,
}


def of(series, order, factor=1):
    return lambda m: factor * series[order](expansion(m)) / m**order


WANTED = [
    ("LENGTH", "Length of an arc of one radian, of the semi-major axis: `b A1/a`", lambda m: (1 - F) * A1(expansion(m)), 5),
    ("LENGTH_1", "`2 C11/m`", of(C1, 1, 2), 4),
    ("LENGTH_2", "`4 C12/m^2`", of(C1, 2, 4), 3),
    ("LENGTH_3", "`2 C13/m^3`", of(C1, 3, 2), 2),
    ("LENGTH_4", "`8 C14/m^4`", of(C1, 4, 8), 1),
    ("ARC", "The arc, in radians, of one semi-major axis: `a/(b A1)`", lambda m: 1 / ((1 - F) * A1(expansion(m))), 5),
    ("ARC_1", "`2 C'11/m`", of(D1, 1, 2), 4),
    ("ARC_2", "`4 C'12/m^2`", of(D1, 2, 4), 4),
    ("ARC_3", "`2 C'13/m^3`", of(D1, 3, 2), 3),
    ("ARC_4", "`8 C'14/m^4`", of(D1, 4, 8), 2),
    ("LONGITUDE", "`f A3`", lambda m: F * A3(expansion(m)), 4),
    ("LONGITUDE_1", "`2 C31/m`", of(C3, 1, 2), 3),
    ("LONGITUDE_2", "`4 C32/m^2`", of(C3, 2, 4), 2),
    ("LONGITUDE_3", "`2 C33/m^3`", of(C3, 3, 2), 1),
    ("ROUGH", "`f A3`, to a first guess", lambda m: F * A3(expansion(m)), 2),
    ("ROUGH_1", "`2 C31/m`, to a first guess", of(C3, 1, 2), 2),
]


def interpolated(function, count):
    nodes = [(1 + cos(pi * (2 * k + 1) / (2 * count))) / 2 for k in range(count)]
    powers = matrix(count, count)
    for row, x in enumerate(nodes):
        for column in range(count):
            powers[row, column] = x**column
    found = lu_solve(powers, matrix([function(x) for x in nodes]))
    off = max(abs(sum(c * (mpf(k) / 200) ** p for p, c in enumerate(found)) - function(mpf(k) / 200)) for k in range(1, 201))
    return [float(c) for c in found], float(off)


def main():
    text = ["// Written by core/fit/long_geodesic.py; do not edit.\n\n",
            "//! Karney's series for WGS-84 by the squared cosine m of the azimuth at the equator; that script explains them.\n"]
    for name, what, function, count in WANTED:
        found, off = interpolated(function, count)
        text.append(f"\n/// {what}; off by {off:.1e}.\npub const {name}: [f64; {count}] = {found!r};\n")
    (Path(__file__).parents[1] / "src/many/geodesic/karney.rs").write_text("".join(text), encoding="utf-8")


main()
