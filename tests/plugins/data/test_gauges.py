"""Wire gauges and gauge drills: no gaps, ever thinner, and the published sizes."""

from __future__ import annotations

import string
from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest

Gauges = dict[str, Any]
Reader = Callable[[str], Fraction]
INCH = Fraction("25.4")


def sizes(gauges: Gauges, name: str, mm: Reader) -> list[Fraction]:
    return [mm(text) for text in gauges[name]["members"].values()]


@pytest.mark.parametrize(
    ("name", "members"),
    [
        ("swg", [*(f"{n}/0" for n in range(7, 1, -1)), *(str(n) for n in range(51))]),
        ("number_drill", [str(n) for n in range(1, 81)]),
        ("letter_drill", list(string.ascii_uppercase)),
    ],
)
def test_no_gauge_is_missing(gauges: Gauges, name: str, members: list[str]) -> None:
    assert list(gauges[name]["members"]) == members


@pytest.mark.parametrize("name", ["swg", "number_drill"])
def test_a_higher_number_is_thinner(gauges: Gauges, mm: Reader, name: str) -> None:
    assert all(thick > thin for thick, thin in pairwise(sizes(gauges, name, mm)))


def test_a_later_letter_is_larger(gauges: Gauges, mm: Reader) -> None:
    assert all(small < large for small, large in pairwise(sizes(gauges, "letter_drill", mm)))


def test_gauges_are_written_in_inch(gauges: Gauges) -> None:
    # The standards define them so; a size in mm would be a rounded one.
    for row in gauges.values():
        assert all(text.endswith(" in") for text in row["members"].values())


def test_steps_of_the_wire_gauge_fall_smoothly(gauges: Gauges, mm: Reader) -> None:
    # BS 3737 holds one step over runs of gauges and lessens it: a slipped digit breaks that.
    steps = [thick - thin for thick, thin in pairwise(sizes(gauges, "swg", mm))]
    assert all(later <= earlier for earlier, later in pairwise(steps))


def test_letters_follow_the_numbers(gauges: Gauges, mm: Reader) -> None:
    letters, numbers = gauges["letter_drill"]["members"], gauges["number_drill"]["members"]
    assert mm(letters["A"]) > mm(numbers["1"])


@pytest.mark.parametrize(
    # BS 3737 / Imperial Standard Wire Gauge, as printed in two public tables.
    ("gauge", "inch", "millimetre"),
    [
        ("7/0", "0.5", 12.7),
        ("3", "0.252", 6.401),
        ("6", "0.192", 4.877),
        ("8", "0.16", 4.064),
        ("10", "0.128", 3.251),
        ("12", "0.104", 2.642),
        ("13", "0.092", 2.337),
        ("18", "0.048", 1.219),
        ("20", "0.036", 0.914),  # one public table has 0.038, which is wrong
        ("22", "0.028", 0.711),
        ("27", "0.0164", 0.417),
        ("32", "0.0108", 0.274),
        ("36", "0.0076", 0.193),
        ("50", "0.001", 0.025),
    ],
)
def test_published_wire_gauges(
    gauges: Gauges, mm: Reader, gauge: str, inch: str, millimetre: float
) -> None:
    size = mm(gauges["swg"]["members"][gauge])
    assert size == Fraction(inch) * INCH
    assert abs(float(size) - millimetre) <= 0.0005


@pytest.mark.parametrize(
    # Another public table, in mm to 0.01 (sheet gauges of a metal merchant).
    ("gauge", "millimetre"),
    [("4", 5.89), ("14", 2.03), ("16", 1.63), ("19", 1.02), ("24", 0.56), ("26", 0.46)],
)
def test_wire_gauges_of_a_second_table(
    gauges: Gauges, mm: Reader, gauge: str, millimetre: float
) -> None:
    assert abs(float(mm(gauges["swg"]["members"][gauge])) - millimetre) <= 0.005


@pytest.mark.parametrize(
    # ASME B94.11M, as printed in public tables. Nos. 5, 10, 18 and 28 end in half a thou, which
    # one table rounds away.
    ("number", "inch", "millimetre"),
    [
        ("5", "0.2055", 5.22),
        ("8", "0.199", 5.055),
        ("10", "0.1935", 4.915),
        ("16", "0.177", 4.496),
        ("18", "0.1695", 4.305),
        ("24", "0.152", 3.861),
        ("28", "0.1405", 3.569),
        ("29", "0.136", 3.454),
        ("33", "0.113", 2.87),
        ("38", "0.1015", 2.578),
        ("40", "0.098", 2.489),
        ("43", "0.089", 2.261),
        ("44", "0.086", 2.184),
        ("47", "0.0785", 1.994),
        ("49", "0.073", 1.854),
        ("52", "0.0635", 1.613),
        ("53", "0.0595", 1.511),
        ("54", "0.055", 1.397),
        ("55", "0.052", 1.321),
        ("56", "0.0465", 1.181),
        ("60", "0.04", 1.016),
        ("70", "0.028", 0.711),
        ("75", "0.021", 0.533),
        ("80", "0.0135", 0.343),
        # Tapping drills of ASME B1.1 screws at 75 % (tables of tapping drills).
        ("50", "0.07", 1.778),
        ("25", "0.1495", 3.797),
        ("21", "0.159", 4.039),
        ("7", "0.201", 5.105),
    ],
)
def test_published_number_drills(
    gauges: Gauges, mm: Reader, number: str, inch: str, millimetre: float
) -> None:
    size = mm(gauges["number_drill"]["members"][number])
    assert size == Fraction(inch) * INCH
    assert abs(float(size) - millimetre) <= 0.0006


@pytest.mark.parametrize(
    # ASME B94.11M letter drills, as printed in public tables.
    ("letter", "inch", "millimetre"),
    [
        ("A", "0.234", 5.944),
        ("C", "0.242", 6.147),
        ("E", "0.25", 6.35),  # just a quarter inch
        ("F", "0.257", 6.528),
        ("I", "0.272", 6.909),
        ("J", "0.277", 7.036),
        ("K", "0.281", 7.137),
        ("P", "0.323", 8.204),
        ("U", "0.368", 9.347),
        ("X", "0.397", 10.084),
    ],
)
def test_published_letter_drills(
    gauges: Gauges, mm: Reader, letter: str, inch: str, millimetre: float
) -> None:
    size = mm(gauges["letter_drill"]["members"][letter])
    assert size == Fraction(inch) * INCH
    assert abs(float(size) - millimetre) <= 0.0006
