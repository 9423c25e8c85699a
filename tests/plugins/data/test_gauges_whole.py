"""Whole gauge tables against a second print of them.

The second print is the table in the definitions of GNU units 2.22 (general library), which gives
BS 3737 and the number drills of ASME B94.11M at the gauges below and runs evenly between them.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest

INCH = Fraction("25.4")

# Place and size in inch; gauge 0 is place 0, 2/0 is place -1 and so on to 7/0.
WIRE = """
-6 .5 -5 .464 -3 .4 -2 .372 3 .252 6 .192 10 .128 14 .08 19 .04 23 .024 26 .018 28 .0148
30 .0124 39 .0052 49 .0012 50 .001
"""
DRILLS = """
1 .2280 2 .2210 3 .2130 4 .2090 5 .2055 6 .2040 7 .2010 8 .1990 9 .1960 10 .1935 11 .1910
12 .1890 13 .1850 14 .1820 15 .1800 16 .1770 17 .1730 18 .1695 19 .1660 20 .1610 22 .1570
23 .1540 24 .1520 25 .1495 26 .1470 27 .1440 28 .1405 29 .1360 30 .1285 31 .1200 32 .1160
33 .1130 34 .1110 35 .1100 36 .1065 38 .1015 39 .0995 40 .0980 41 .0960 42 .0935 43 .0890
44 .0860 45 .0820 46 .0810 48 .0760 51 .0670 52 .0635 53 .0595 54 .0550 55 .0520 56 .0465
57 .0430 65 .0350 66 .0330 68 .0310 69 .0292 70 .0280 71 .0260 73 .0240 74 .0225 75 .0210
76 .0200 78 .0160 79 .0145 80 .0135
"""
LETTERS = """
.234 .238 .242 .246 .250 .257 .261 .266 .272 .277 .281 .290 .295 .302 .316 .323 .332 .339 .348
.358 .368 .377 .386 .397 .404 .413
"""


def spread(text: str) -> list[Fraction]:
    numbers = [Fraction(word) for word in text.split()]
    points = list(zip(numbers[::2], numbers[1::2], strict=True))
    sizes = [points[0][1]]
    for (start, size), (end, last) in pairwise(points):
        step = (last - size) / (end - start)
        sizes += [size + step * place for place in range(1, int(end - start) + 1)]
    return sizes


@pytest.mark.parametrize(
    ("name", "sizes"),
    [
        ("swg", spread(WIRE)),
        ("number_drill", spread(DRILLS)),
        ("letter_drill", [Fraction(word) for word in LETTERS.split()]),
    ],
)
def test_every_size_agrees_with_a_second_print(
    gauges: dict[str, Any],
    mm: Callable[[str], Fraction],
    name: str,
    sizes: list[Fraction],
) -> None:
    assert [mm(text) / INCH for text in gauges[name]["members"].values()] == sizes
