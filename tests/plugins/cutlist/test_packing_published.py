"""Published least numbers of bars: bounds never above them, plans never below."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from binder_plugins.cutlist.job import Bar, Piece, Sawing
from binder_plugins.cutlist.packing import pack
from binder_plugins.cutlist.plan import Plan

BINPACK1 = Path(__file__).parent / "data" / "or_library_binpack1.txt"

# Least numbers of bars that were proved again by integer programming, beside the row of the
# project's list of checks. Instances and first values: J. E. Beasley, OR-Library, binpack1.
PROVED = {
    "u120_00": 48,  # A6-001
    "u120_01": 49,  # A6-002
    "u120_03": 49,  # A6-004
    "u120_05": 48,  # A6-006
    "u120_06": 48,  # A6-007
    "u120_08": 50,  # A6-009
    "u120_10": 52,  # A6-011
    "u120_11": 49,  # A6-012
    "u120_13": 49,  # A6-014
    "u120_15": 48,  # A6-016
    "u120_16": 52,  # A6-017
    "u120_18": 49,  # A6-019
}


def instances() -> list[tuple[str, int, int, list[Piece]]]:
    rows = BINPACK1.read_text(encoding="utf-8").splitlines()
    found = []
    for name, length, least, *pieces in (row.split() for row in rows if row[0] != "#"):
        whole = [Piece(piece, Fraction(piece)) for piece in pieces]
        found.append((name, int(length), int(least), whole))
    return found


def job(stock: int, pieces: dict[int, int]) -> Plan:
    wanted = [Piece(f"{length}", Fraction(length), count) for length, count in pieces.items()]
    return pack(wanted, [Bar("roll", Fraction(stock))], Sawing())


def assert_honest(plan: Plan, least: int) -> None:
    assert plan.lower_bound <= least <= len(plan.bars)
    assert not plan.is_proven or len(plan.bars) == least


def test_the_file_agrees_with_the_least_that_was_proved() -> None:
    listed = {name: least for name, _, least, _ in instances()}
    assert len(listed) == 20
    assert {name: listed[name] for name in PROVED} == PROVED


@pytest.mark.parametrize(
    ("length", "least", "pieces"),
    [pytest.param(*instance, id=name) for name, *instance in instances()],
)
def test_uniform_bin_packing(length: int, least: int, pieces: list[Piece]) -> None:
    plan = pack(pieces, [Bar("bar", Fraction(length))], Sawing())
    assert sum(len(cut.pieces) for cut in plan.bars) == len(pieces) == 120
    assert_honest(plan, least)
    # Common practice, no source: heaviest first is off by one bar at most on these.
    assert len(plan.bars) <= least + 1


def test_chvatal_rolls() -> None:
    # V. Chvatal, Linear Programming (1983), chapter 13: 453 rolls (A6-054).
    assert_honest(job(100, {45: 97, 36: 610, 31: 395, 14: 211}), 453)


def test_roll_trimming() -> None:
    # R. Fourer, D. M. Gay, B. W. Kernighan, chapter on cutting stock: 47 rolls. From memory,
    # proved again by integer programming (A6-056). This one heaviest first finds.
    plan = job(110, {20: 48, 45: 35, 50: 24, 55: 10, 75: 8})
    assert_honest(plan, 47)
    assert len(plan.bars) == 47


def test_three_stock_lengths_at_their_prices() -> None:
    # P. C. Gilmore, R. E. Gomory, Operations Research 9 (1961): least cost 170. From memory,
    # proved again by integer programming (A6-057). We buy by length, so no plan of ours may
    # cost less; and 2 * 20 + 3 * 10 + 4 * 20 = 150 is the least length.
    prices = {5: 6, 6: 7, 9: 10}
    pieces = [Piece("2", Fraction(2), 20), Piece("3", Fraction(3), 10), Piece("4", Fraction(4), 20)]
    plan = pack(pieces, [Bar(f"{length}", Fraction(length)) for length in prices], Sawing())
    assert sum(prices[int(cut.bar.length)] for cut in plan.bars) >= 170
    assert plan.bought >= plan.bought_bound == 150
