"""Sizes measured off a picture, and their errors."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

import pytest

from binder.parameters import Environment, KnownLength, parse
from binder.units import LENGTH, Quantity


def picture(
    bench: Environment,
    length: Quantity | None = None,
    tilt: Fraction = Fraction(0),
    depth: Fraction = Fraction(0),
) -> Environment:
    """The bench with a picture that is off in the given ways, and its ends placed exactly."""
    known = bench.picture
    assert known is not None
    length = length or known.length
    new = KnownLength(known.pixels, length, known.text, Fraction(0), tilt, depth)
    return replace(bench, picture=new)


def relative(text: str, environment: Environment) -> float:
    size = parse(text).evaluate(environment)
    return size.spread / float(size.amount)


def test_photo_scaling(bench: Environment) -> None:
    # A7-007: 615 px where 1380 px are 92 mm are 41.0 mm.
    assert parse("picture(615 px)").evaluate(bench).amount == 41


@pytest.mark.parametrize(("degrees", "percent"), [(10, 1.519), (15, 3.4), (20, 6.0)])
def test_tilt_reads_short(degrees: int, percent: float, bench: Environment) -> None:
    # A7-009: cos(10 deg) - 1 = -1.519 %; 15 and 20 deg: plane geometry, worked out to 0.1 %.
    found = relative("picture(615 px)", picture(bench, tilt=Fraction(degrees)))
    assert found * 100 == pytest.approx(percent, abs=0.001 if degrees == 10 else 0.05)


def test_depth_is_offset_over_distance(bench: Environment) -> None:
    # Half a length off the plane at twenty lengths: 2.5 % (similar triangles).
    found = relative("picture(615 px)", picture(bench, depth=Fraction(1, 40)))
    assert found == pytest.approx(0.025)


def test_the_ends_of_both_lengths(bench: Environment) -> None:
    # Each end of a length is placed to 1 px: root 2 px on the length, relative variances add
    # (JCGM 100:2008, 5.1.6, equation 12).
    found = relative("picture(615 px)", bench)
    assert found == pytest.approx(math.hypot(math.sqrt(2) / 615, math.sqrt(2) / 1380))


def test_the_known_lengths_own_error_comes_through(bench: Environment) -> None:
    length = Quantity(Fraction(92), LENGTH, (("rule", 0.92),))
    assert relative("picture(615 px)", picture(bench, length=length)) == pytest.approx(0.01)


def test_all_four_add_in_squares(bench: Environment) -> None:
    known = bench.picture
    assert known is not None
    length = Quantity(Fraction(92), LENGTH, (("rule", 0.92),))
    full = KnownLength(
        Fraction(1380), length, known.text, Fraction(2), Fraction(10), Fraction(1, 40)
    )
    shares = (
        2 * math.sqrt(2) / 615,
        2 * math.sqrt(2) / 1380,
        0.01,
        1 - math.cos(math.radians(10)),
        0.025,
    )
    found = relative("picture(615 px)", replace(bench, picture=full))
    assert found == pytest.approx(math.hypot(*shares))


def test_what_two_measures_share_cancels_in_their_ratio(bench: Environment) -> None:
    ratio = relative("picture(615 px) / picture(500 px)", bench)
    assert ratio == pytest.approx(math.hypot(math.sqrt(2) / 615, math.sqrt(2) / 500))


def test_two_readings_of_equal_length_are_two_readings(bench: Environment) -> None:
    off = parse("picture(615 px) - picture(615 px)").evaluate(bench)
    assert off.amount == 0
    assert off.spread == pytest.approx(2 * 92 / 1380, rel=1e-9)


def test_one_reading_used_twice_is_one_reading(bench: Environment) -> None:
    size = parse("picture(615 px)").evaluate(bench, "jib")
    other = parse("picture(615 px)").evaluate(bench, "mast")
    assert (size - size).spread == 0
    assert (size - other).spread > 0
