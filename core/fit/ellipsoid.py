"""Finds the coefficients of `normal` in core/src/many/geodesic/ellipsoid.rs: interpolation at Chebyshev nodes, in fifty digits.

Prints them. Run by hand, with mpmath: python core/fit/ellipsoid.py
"""
from mpmath import cos, lu_solve, matrix, mp, mpf, pi, sqrt

mp.dps = 50
F = 1 / mpf("298.257223563")
E2 = F * (2 - F)
COUNT = 6


def normal(z):
    return 1 / sqrt(1 - E2 * z)


nodes = [(1 + cos(pi * (2 * k + 1) / (2 * COUNT))) / 2 for k in range(COUNT)]
powers = matrix(COUNT, COUNT)
for row, z in enumerate(nodes):
    for column in range(COUNT):
        powers[row, column] = z**column
found = lu_solve(powers, matrix([normal(z) for z in nodes]))
off = max(abs(sum(c * z**p for p, c in enumerate(found)) / normal(z) - 1) for z in (mpf(k) / 500 for k in range(501)))
print(*(f"        {float(c)!r}," for c in found), f"off by {float(off):.1e} of the whole", sep="\n")
