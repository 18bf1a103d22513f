"""Writes core/src/earth/rhumb_references.csv: rhumb lines of WGS-84 between random and between hard pairs of points, from fifty digits
of their definition: isometric latitude in closed form, the arc of the meridian by quadrature. Run by hand, with mpmath."""
import random
from pathlib import Path

from mpmath import asinh, atan2, atanh, cos, hypot, mp, mpf, pi, quad, sin, sqrt, tan

mp.dps = 50
random.seed(11)
A = mpf(6378137)
F = 1 / mpf("298.257223563")
E2 = F * (2 - F)
E = sqrt(E2)


def isometric(latitude):
    return asinh(tan(latitude)) - E * atanh(E * sin(latitude))


def arc(first, second):
    return quad(lambda b: A * (1 - E2) / (1 - E2 * sin(b) ** 2) ** 1.5, [first, second])


def row(lat1, lon1, lat2, lon2):
    first, second = (mpf(latitude) * pi / 180 for latitude in (lat1, lat2))
    way = mpf(lon2) - mpf(lon1)
    way = (way - 360 if way > 180 else way + 360 if way <= -180 else way) * pi / 180
    if first == second:
        radius = A * cos(first) / sqrt(1 - E2 * sin(first) ** 2)
        distance, course = abs(way) * radius, pi / 2 if way > 0 else -pi / 2
    else:
        stretched, north = isometric(second) - isometric(first), arc(first, second)
        distance, course = hypot(north, way * north / stretched), atan2(way, stretched)
    return f"{lat1!r},{lon1!r},{lat2!r},{lon2!r},{float(distance)!r},{float(course * 180 / pi % 360)!r}\n"


def any_point():
    return random.uniform(-89.9, 89.9), random.uniform(-180, 180)


rows = [row(*any_point(), *any_point()) for _ in range(100)]
for k in range(15):
    for _ in range(4):
        lat, lon = random.uniform(-85, 85), random.uniform(-180, 180)
        # Close to east and west, and close to each other.
        rows.append(row(lat, lon, lat + random.choice((-1, 0, 1)) * 10.0**-k, random.uniform(-180, 180)))
        near = 10.0 ** -min(k, 12)
        rows.append(row(lat, lon, lat + random.uniform(-1, 1) * near, lon + random.uniform(-1, 1) * near))
for k in range(10):
    # Around a pole, and from one to the other.
    side = random.choice((-1, 1))
    rows.append(row(side * (90 - 10.0**-k), random.uniform(-180, 180), side * (90 - random.uniform(0, 2) * 10.0**-k), random.uniform(-180, 180)))
    rows.append(row(side * (90 - 10.0**-k), random.uniform(-180, 180), -side * (90 - 10.0**-k), random.uniform(-180, 180)))
(Path(__file__).parents[1] / "src/earth/rhumb_references.csv").write_text("".join(rows), encoding="utf-8")
