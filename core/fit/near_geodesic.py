"""Fits the corrections by which the straight line between two near points of WGS-84 gives their geodesic.

Writes core/src/many/geodesic/near.rs and middle.rs. Run by hand, with numpy and pyproj: python core/fit/near_geodesic.py

In units of the semi-major axis: q is the squared chord, n its part to the north and e to the east in the horizontal of the
first point, t and c the sine and cosine of its latitude, z = n c. What the earth's shape can say to an observer there is
turned with him about the axis, so that
    squared distance = q + S(q, z, t)          with S even in (z, t) together,
    azimuth = atan2(e, n + c V(q, z, t))       with V odd in (z, t) together,
both smooth, at the poles too. The coefficients of their power series are found by least squares from Karney's
direct solution of points all over the earth.
"""
from pathlib import Path

import numpy as np
from pyproj import Geod

A = 6_378_137.0
F = 1 / 298.257_223_563
E2 = F * (2 - F)


def sample(count, reach_m, seed):
    random = np.random.default_rng(seed)
    sine = np.cos(np.pi * random.random(count))
    latitude = np.degrees(np.arcsin(sine))
    azimuth = 360 * random.random(count)
    distance = reach_m * np.sqrt(1 - (1 - random.random(count)) ** 1.5)
    there = Geod(a=A, f=F).fwd(np.zeros(count), latitude, azimuth, distance)
    return latitude, azimuth, distance, np.asarray(there[1]), np.asarray(there[0])


def chord(latitude, there_latitude, longitude):
    radians = np.radians
    t, c = np.sin(radians(latitude)), np.cos(radians(latitude))
    t2, c2 = np.sin(radians(there_latitude)), np.cos(radians(there_latitude))
    n1, n2 = 1 / np.sqrt(1 - E2 * t * t), 1 / np.sqrt(1 - E2 * t2 * t2)
    half = np.sin(radians(longitude / 2))
    outward = n2 * c2 - n1 * c - 2 * n2 * c2 * half * half
    east = n2 * c2 * np.sin(radians(longitude))
    poleward = (1 - E2) * (n2 * t2 - n1 * t)
    north = poleward * c - outward * t
    return t, c, outward**2 + east**2 + poleward**2, north, east


def fit(design, wanted, weight, names, drop_m):
    """Least squares in metres, without the terms that matter less than drop_m."""
    keep = np.arange(len(names))
    while True:
        matrix = design[:, keep] * weight[:, None]
        scale = np.sqrt((matrix**2).sum(0))
        answer = np.linalg.lstsq(matrix / scale, wanted * weight, rcond=1e-15)[0] / scale
        size = np.abs(matrix).max(0) * np.abs(answer)
        worst = np.abs(matrix @ answer - wanted * weight).max()
        if size.min() > drop_m:
            return [names[k] for k in keep], answer, worst
        small = np.argsort(size)[: max(1, int(0.2 * (size < drop_m).sum()))]
        keep = np.delete(keep, small)


# The reach in nautical miles, with a margin over what is promised; the order of the series; what a term must matter.
WANTED = {"Near": (310, 8, 1e-7), "Middle": (1020, 14, 1e-6)}

HEAD = """// Written by core/fit/near_geodesic.py; do not edit.

//! The power series of [`Series`], whose form `core/fit/near_geodesic.py` explains.

use super::series::Series;
use crate::many::arithmetic::{polynomial, sum};
"""


def corrections(reach_m, top, drop_m):
    latitude, azimuth, distance, there, longitude = sample(60000, reach_m, 1)
    t, c, q, n, e = chord(latitude, there, longitude)
    z, s = n * c, distance / A
    names = [(i, j, k) for i in range(0, 8) for j in range(0, 9) for k in range(0, 9)
             if 4 <= 2 * i + j <= top and (j + k) % 2 == 0 and j + k <= 8]
    design = np.stack([q**i * z**j * t**k for i, j, k in names], 1)
    square = fit(design, s * s - q, A / (2 * s), names, drop_m)
    sine, cosine = np.sin(np.radians(azimuth)), np.cos(np.radians(azimuth))
    names = [(i, j, k) for i in range(0, 7) for j in range(0, 9) for k in range(0, 9)
             if 2 <= 2 * i + j <= top - 1 and (j + k) % 2 == 1 and j + k <= 9]
    design = np.stack([sine * c * q**i * z**j * t**k for i, j, k in names], 1)
    north = fit(design, cosine * e - sine * n, A * s / np.hypot(e, n), names, drop_m)
    return square, north


def grouped(terms):
    """The terms by their powers of q and z; of each the coefficients by the power of t."""
    groups = {}
    for (i, j, k), value in zip(terms[0], terms[1]):
        groups.setdefault((i, j), {})[k] = float(value)
    return groups


def by_latitude(powers):
    """A polynomial in the square of t, times t if its powers are odd."""
    odd = min(powers) % 2
    values = [powers.get(k, 0.0) for k in range(odd, max(powers) + 1, 2)]
    text = f"polynomial::<FMA, {len(values)}>(t2, [{', '.join(map(repr, values))}])" if len(values) > 1 else repr(values[0])
    return f"t * {text}" if odd else text


def by_point(groups, letter):
    """The sum over the powers of q and z. The least power of z of a row is a product by itself."""
    text = None
    for i in range(max(i for i, _ in groups), -1, -1):
        row = sorted(j for (one, j) in groups if one == i)
        inner = None
        for j in range(row[-1], row[0] - 1, -1) if row else ():
            term = f"self.{letter}{i}{j}" if j in row else None
            if inner is None:
                inner = term
            elif term is None:
                inner = f"z * ({inner})"
            else:
                inner = f"sum::<FMA>(z, {inner}, {term})"
        power = "" if not row or row[0] == 0 else "z" if row[0] == 1 else f"z{row[0]}"
        if text is None:
            text = f"{power} * ({inner})" if power else inner
        elif inner is None:
            text = f"q * ({text})"
        elif power:
            text = f"sum::<FMA>({power}, {inner}, q * ({text}))"
        else:
            text = f"sum::<FMA>(q, {text}, {inner})"
    return text


def source(kind, square, north):
    groups = {"s": grouped(square), "v": grouped(north)}
    fields = [(letter, i, j) for letter in groups for i, j in groups[letter]]
    lines = [HEAD, "", f"/// The corrections to {WANTED[kind][0]} NM; off by {square[2]:.1e} m along and {north[2]:.1e} m across at the fitted points.",
             "#[derive(Clone, Copy)]", f"pub struct {kind} {{"]
    lines += [f"    {letter}{i}{j}: f64," for letter, i, j in fields]
    lines += ["}", "", f"impl Series for {kind} {{", f"    const REACH_NM: f64 = {WANTED[kind][0]}.0;", "",
              "    #[inline(always)]", "    fn at<const FMA: bool>(t: f64) -> Self {", "        let t2 = t * t;", "        Self {"]
    lines += [f"            {letter}{i}{j}: {by_latitude(groups[letter][i, j])}," for letter, i, j in fields]
    lines += ["        }", "    }", "", "    #[inline(always)]", "    fn square<const FMA: bool>(&self, q: f64, z: f64) -> f64 {",
              "        let z2 = z * z;", "        let z4 = z2 * z2;",
              "        " + by_point(groups["s"], "s"), "    }", "",
              "    #[inline(always)]", "    fn north<const FMA: bool>(&self, q: f64, z: f64) -> f64 {",
              "        let z3 = z * (z * z);",
              "        " + by_point(groups["v"], "v"), "    }", "}", ""]
    return "\n".join(lines)


def main():
    home = Path(__file__).parents[1] / "src/many/geodesic"
    home.mkdir(parents=True, exist_ok=True)
    for kind, (reach_nm, top, drop_m) in WANTED.items():
        (home / f"{kind.lower()}.rs").write_text(source(kind, *corrections(reach_nm * 1852.0, top, drop_m)), encoding="utf-8")


if __name__ == "__main__":
    main()
