"""Limits of size against figures read in public tables, and refusals."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder_trade.threads import NotDefined, Thread, engagement_normal, limits

Named = Callable[[str], Thread]
INCH = 25.4

# ASME B1.13M external limits as read in a public table: major max and min, pitch max and min,
# minor max of the flat form, minor min of the rounded. The table's 1.998 for the last of
# M2.5 x 0.35 lies too near its 2.191 (it is 0.216 below for M1.6 of the same pitch).
SCREWS = [
    ("M1.6", "6g", 1.581, 1.496, 1.354, 1.291, 1.202, 1.075),
    ("M1.6", "6h", 1.600, 1.515, 1.373, 1.310, 1.221, 1.094),
    ("M1.6", "4g6g", 1.581, 1.496, 1.354, 1.314, 1.202, 1.098),
    ("M2 x 0.25", "6g", 1.982, 1.915, 1.820, 1.764, 1.711, 1.610),
    ("M2.5", "4g6g", 2.480, 2.380, 2.188, 2.143, 1.993, 1.866),
    ("M2.5 x 0.35", "6g", 2.481, 2.396, 2.254, 2.191, 2.102, None),
    ("M3", "4g6g", 2.980, 2.874, 2.655, 2.607, 2.438, 2.299),
    ("M3 x 0.35", "6g", 2.981, 2.896, 2.754, 2.687, 2.602, 2.471),
    ("M3.5", "6h", 3.500, 3.375, 3.110, 3.025, 2.850, 2.655),
    ("M4", "4g6g", 3.978, 3.838, 3.523, 3.467, 3.220, 3.036),
    ("M4 x 0.5", "6g", 3.980, 3.874, 3.655, 3.580, 3.439, 3.272),
    ("M5", "4g6g", 4.976, 4.826, 4.456, 4.396, 4.110, 3.904),
    ("M6", "4g6g", 5.974, 5.794, 5.324, 5.253, 4.891, 4.637),
    ("M6 x 0.5", "6g", 5.980, 5.874, 5.655, 5.570, 5.439, 5.262),
    ("M6 x 0.75", "6g", 5.978, 5.838, 5.491, 5.391, 5.166, 4.929),
    ("M8", "4g6g", 7.972, 7.760, 7.160, 7.085, 6.619, 6.315),
    ("M10", "4g6g", 9.968, 9.732, 8.994, 8.909, 8.344, 7.985),
    ("M10 x 0.75", "4g6g", 9.978, 9.838, 9.491, 9.428, 9.166, 8.966),
    ("M11", "6g", 10.968, 10.732, 9.994, 9.862, 9.344, 8.938),
    ("M12 x 1", "6g", 11.974, 11.794, 11.324, 11.206, 10.891, 10.590),
    ("M12 x 1.25", "6g", 11.972, 11.760, 11.160, 11.028, 10.619, None),
]
# ASME B1.13M internal limits of class 6H as read in a public table: minor, then pitch.
NUTS = [
    ("M9", 7.647, 7.912, 8.188, 8.348),
    ("M9 x 0.75", 8.188, 8.378, 8.513, 8.645),
    ("M10", 8.376, 8.676, 9.026, 9.206),
    ("M10 x 1.25", 8.647, 8.912, 9.188, 9.348),
    ("M10 x 1", 8.917, 9.153, 9.350, 9.500),
    ("M10 x 0.5", 9.459, 9.599, 9.675, 9.787),
    ("M12", 10.106, 10.441, 10.863, 11.063),
    ("M12 x 1.5", 10.376, 10.676, 11.026, 11.216),
    ("M12 x 1.25", 10.647, 10.912, 11.188, 11.368),
    ("M12 x 1", 10.917, 11.153, 11.350, 11.510),
    ("M12 x 0.75", 11.188, 11.378, 11.513, 11.653),
    ("M14", 11.835, 12.210, 12.701, 12.913),
    ("M14 x 1.5", 12.376, 12.676, 13.026, 13.216),
]


@pytest.mark.parametrize("row", SCREWS, ids=lambda row: f"{row[0]} {row[1]}")
def test_metric_screws(
    row: tuple[str, str, float, float, float, float, float, float | None], named: Named
) -> None:
    text, cls, *expected = row
    found = limits(named(text), cls)
    sizes = (
        found.major_max,
        found.major_min,
        found.effective_max,
        found.effective_min,
        found.minor_max,
        found.minor_min,
    )
    for size, published in zip(sizes, expected, strict=True):
        if published is not None:
            assert size == pytest.approx(published, abs=0.0015)


@pytest.mark.parametrize("row", NUTS, ids=lambda row: row[0])
def test_metric_nuts(row: tuple[str, float, float, float, float], named: Named) -> None:
    text, *expected = row
    found = limits(named(text), is_internal=True)
    sizes = (found.minor_min, found.minor_max, found.effective_min, found.effective_max)
    assert sizes == pytest.approx(expected, abs=0.001)
    assert (found.cls, found.major_max) == ("6H", None)


def test_whitworth_medium_limits_are_of_the_standards_formula(named: Named) -> None:
    # BS 84: T = 0.002 D^(1/3) + 0.003 L^(1/2) + 0.005 p^(1/2) with L = D, in inches: for
    # 1/4 BSW 0.00126 + 0.0015 + 0.00112 = 0.0039. The major tolerance adds 0.01 p^(1/2).
    found = limits(named("1/4 BSW"))
    assert found.major_max is not None
    assert (found.effective_max - found.effective_min) / INCH == pytest.approx(0.0039, abs=5e-5)
    assert (found.major_max - found.major_min) / INCH == pytest.approx(0.0061, abs=5e-5)
    # 1/4 BSW medium screw 0.2168 to 0.2129 in, 0.2488 to 0.2427 in (from memory of BS 84).
    assert found.effective_max / INCH == pytest.approx(0.2168, abs=1e-4)
    assert found.effective_min / INCH == pytest.approx(0.2129, abs=1e-4)
    assert found.major_min / INCH == pytest.approx(0.2427, abs=1e-4)


def test_whitworth_classes_stand_two_to_three_to_four_and_a_half(named: Named) -> None:
    # A tap maker's drawing of the zones of BS 84: close 66 2/3, medium 100, free 150 % of T.
    one = named("1/2 BSF")
    width = {
        cls: limits(one, cls).effective_max - limits(one, cls).effective_min
        for cls in ("close", "medium", "free")
    }
    assert width["close"] / width["medium"] == pytest.approx(2 / 3)
    assert width["free"] / width["medium"] == pytest.approx(3 / 2)
    assert limits(one, "close").effective_max == one.effective_mm
    # No allowance above 3/4 in: the same drawing.
    thick = named("7/8 BSF")
    assert limits(thick, "medium").effective_max == thick.effective_mm


def test_threads_without_a_standard_say_whose_limits_they_borrow(named: Named) -> None:
    for text in ("1/4 x 40", "1/2 x 26"):
        assert "borrowed" in limits(named(text)).convention


def test_ba_nuts_and_small_screws(named: Named) -> None:
    # Machinery's Handbook 31st ed. p. 2115: nuts 0.12 p + 0.03 and 0.375 p; 11 to 16 BA
    # screws 0.25 p on the diameter and no allowance; close screws none either.
    nut = limits(named("2 BA"), is_internal=True)
    assert nut.minor_min is not None
    assert nut.effective_max - nut.effective_min == pytest.approx(0.1272)
    assert nut.minor_max - nut.minor_min == pytest.approx(0.30375)
    small = limits(named("12 BA"))
    assert small.major_max == pytest.approx(1.3)
    assert small.major_min == pytest.approx(1.3 - 0.25 * 0.28)
    assert limits(named("2 BA"), "close").major_max == pytest.approx(4.7)


def test_pipe_limits(named: Named) -> None:
    # ISO 228-1 table 1, from memory: G 1/8 effective 9.147 less 0.107 (A) or 0.214 (B),
    # diameter 9.728 less 0.214, bore 8.566 to 8.848.
    outer, coarse = limits(named("G 1/8")), limits(named("G 1/8"), "B")
    inner = limits(named("G 1/8 LH"), is_internal=True)
    assert outer.effective_min == pytest.approx(9.040, abs=0.001)
    assert coarse.effective_min == pytest.approx(8.933, abs=0.001)
    assert outer.major_min == pytest.approx(9.514, abs=0.001)
    assert (inner.minor_max, inner.effective_max) == pytest.approx((8.848, 9.254), abs=0.001)


def test_position_g_of_a_nut_lifts_every_diameter(named: Named) -> None:
    # ISO 965-1: EI of G is +26 at 1 mm; T_D2 of M6 grade 6 is 150, so 176 above basic, as a
    # tap maker's chart has it.
    found = limits(named("M6"), "6G")
    assert found.effective_max == pytest.approx(5.3505 + 0.176, abs=1e-4)
    assert found.major_min == pytest.approx(6.026)


@pytest.mark.parametrize(
    ("text", "cls", "is_internal"),
    [
        ("1/4-20 UNC", "3A", False),
        ("1/4 BSW", "normal", False),
        ("1/4 BSW", "close", True),
        ("2 BA", "free", False),
        ("12 BA", "close", False),
        ("2 BA", "close", True),
        ("G 1/8", "C", False),
        ("G 1/8", "B", True),
        ("M6", "2A", False),
    ],
)
def test_a_class_that_a_standard_has_not_is_refused(
    text: str, cls: str, *, is_internal: bool, named: Named
) -> None:
    with pytest.raises(NotDefined, match="use "):
        limits(named(text), cls, is_internal=is_internal)


def test_engagement_is_refused_where_no_table_has_it(named: Named) -> None:
    for text in ("1/4-20 UNC", "M6 x 0.5"):
        with pytest.raises(NotDefined):
            engagement_normal(named(text))
