"""Gaps for compound, solder and glue."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.gaps import gap, hottest_deg, judge_gap


def test_gaps_of_the_trade() -> None:
    # Workshop practice: compound 0.02 to 0.05 on diameter, silver solder 1.5 to 3 thou.
    assert (gap("retained").least_um, gap("retained").most_um) == (20, 50)
    silver = gap("silver_soldered")
    assert silver.least_um == pytest.approx(1.5 * 25.4, abs=2)
    assert silver.most_um == pytest.approx(3 * 25.4, abs=4)


@pytest.mark.parametrize(
    ("kind", "least", "most", "good", "fails"),
    [  # limits of failing: workshop practice (0.1 on a bond, 0.02 and 0.15 on silver solder)
        ("retained", 20, 50, True, False),
        ("retained", 10, 60, False, False),
        ("retained", 20, 101, False, True),
        ("retained", -1, 20, False, True),
        ("silver soldered", 40, 80, True, False),
        ("silver soldered", 19, 80, False, True),
        ("silver soldered", 40, 151, False, True),
        ("silver soldered", 30, 100, False, False),
    ],
)
def test_verdicts(kind: str, least: float, most: float, good: bool, fails: bool) -> None:
    verdict = judge_gap(kind, least, most)
    assert (verdict.good, verdict.fails) == (good, fails)
    assert judge_gap(kind, most, least) == verdict


def test_the_reason_is_said() -> None:
    assert judge_gap("retained", -10, 10).says == "the compound is wiped off on the way in"
    assert judge_gap("soft soldered", 50, 130).says == "right for soft solder"


def test_compound_lets_go_below_soft_solder_heat() -> None:
    # Makers' sheets (from memory): common grades to 150 °C; tin solder melts near 190 °C.
    melts = gap("soft soldered").melts_deg
    assert melts is not None
    assert hottest_deg("retained") == 150 < melts


def test_other_kinds_are_refused() -> None:
    with pytest.raises(NotDefined, match="known are"):
        gap("riveted")
    with pytest.raises(NotDefined, match="holds until it melts"):
        hottest_deg("silver soldered")
