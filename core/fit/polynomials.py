"""Finds the polynomials of core/src/many/functions/polynomials.rs: interpolation at Chebyshev nodes, in fifty digits.

Writes that file. Run by hand, with mpmath: python core/fit/polynomials.py
"""
from pathlib import Path

from mpmath import atan, atanh, cos, exp, log, lu_solve, matrix, mp, mpf, pi, sin, sqrt, tan

mp.dps = 50
HOME = Path(__file__).parents[1] / "src/many/functions/polynomials.rs"


def interpolated(function, low, high, count):
    low, high = mpf(low), mpf(high)
    nodes = [(low + high) / 2 + (high - low) / 2 * cos(pi * (2 * k + 1) / (2 * count)) for k in range(count)]
    powers = matrix(count, count)
    for row, x in enumerate(nodes):
        for column in range(count):
            powers[row, column] = x**column
    return list(lu_solve(powers, matrix([function(x) for x in nodes])))


def worst(function, coefficients, low, high, scale):
    found = 0
    for k in range(1, 400, 2):
        x = mpf(low) + (mpf(high) - mpf(low)) * k / 401
        found = max(found, abs(sum(c * x**p for p, c in enumerate(coefficients)) - function(x)) * abs(scale(x)))
    return found


WANTED = [
    # name, what of it the polynomial is, range, coefficients, what it is multiplied by over the whole
    ("SINE", "`(sin x - x)/x^3` in `x^2`, to 45 degrees", lambda z: (sin(sqrt(z)) - sqrt(z)) / sqrt(z) ** 3,
     0, (pi / 4 * 1.001) ** 2, 6, lambda z: z),
    ("COSINE", "`(cos x - 1 + x^2/2)/x^4` in `x^2`, to 45 degrees", lambda z: (cos(sqrt(z)) - 1 + z / 2) / z**2,
     0, (pi / 4 * 1.001) ** 2, 6, lambda z: z * z),
    ("SINE_OF_HALF", "`sin(x/2)/x` of x degrees in `x^2`, to 90 degrees", lambda z: sin(sqrt(z) * pi / 360) / sqrt(z),
     0, (90 * mpf("1.001")) ** 2, 7, lambda z: sqrt(z)),
    ("COSINE_OF_HALF", "`(cos(x/2) - 1)/x^2` of x degrees in `x^2`, to 90 degrees", lambda z: (cos(sqrt(z) * pi / 360) - 1) / z,
     0, (90 * mpf("1.001")) ** 2, 7, lambda z: z),
    ("ARCTANGENT", "`(180/pi atan x - 180/pi x)/x^3` in `x^2`, to 22.5 degrees",
     lambda z: (atan(sqrt(z)) - sqrt(z)) / sqrt(z) ** 3 * 180 / pi, 0, tan(pi / 8 * 1.001) ** 2, 11, lambda z: z * pi / 180),
    ("LOGARITHM", "`(2 atanh x - 2 x)/x^3` in `x^2`, to `(sqrt 2 - 1)/(sqrt 2 + 1)`",
     lambda z: (2 * atanh(sqrt(z)) - 2 * sqrt(z)) / sqrt(z) ** 3, 0, ((sqrt(mpf(2)) - 1) / (sqrt(mpf(2)) + 1) * 1.001) ** 2, 7, lambda z: z / 2),
    ("EXPONENTIAL", "`(exp x - 1 - x)/x^2` in `x`, to half of `ln 2` either way",
     lambda x: (exp(x) - 1 - x) / x**2, -log(2) / 2 * 1.001, log(2) / 2 * 1.001, 10, lambda x: x * x),
    ("IMPACT", "`((1 + x)^3.5 - 1)/x` in `x`, to 0.2, the speed of sound", lambda x: ((1 + x) ** mpf("3.5") - 1) / x,
     0, mpf("0.2") * mpf("1.0001"), 10, lambda x: x / ((1 + x) ** mpf("3.5") - 1)),
    ("EXPANSION", "`((1 + q)^(1/7) - 1)/q` in `q`, to 1.2^3.5 - 1, the speed of sound", lambda q: ((1 + q) ** (mpf(1) / 7) - 1) / q,
     0, (mpf("1.2") ** mpf("3.5") - 1) * mpf("1.0001"), 20, lambda q: q / ((1 + q) ** (mpf(1) / 7) - 1)),
    ("LOG_SECANT_SHALLOW", "`-ln(cos x)/x^2` in `x^2`, to 30 degrees", lambda z: -log(cos(sqrt(z))) / z,
     0, (pi / 6 * 1.001) ** 2, 9, lambda z: -z / log(cos(sqrt(z)))),
    ("LOG_SECANT", "`-ln(cos x)/x^2` in `x^2`, to 45 degrees", lambda z: -log(cos(sqrt(z))) / z,
     0, (pi / 4 * 1.001) ** 2, 14, lambda z: -z / log(cos(sqrt(z)))),
]


def main():
    text = ["// Written by core/fit/polynomials.py; do not edit.\n"]
    for name, what, function, low, high, count, scale in WANTED:
        coefficients = [float(c) for c in interpolated(function, low, high, count)]
        error = worst(function, interpolated(function, low, high, count), low, high, scale)
        text.append(f"\n/// {what}; off by {float(error):.1e} of the whole.\npub const {name}: [f64; {count}] = [\n")
        text += [f"    {c!r},\n" for c in coefficients]
        text.append("];\n")
    HOME.parent.mkdir(parents=True, exist_ok=True)
    HOME.write_text("".join(text), encoding="utf-8")
    print("".join(text))


main()
