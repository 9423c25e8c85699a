"""Where a bar is just long enough and just too short: kerf, trim and holding."""

from __future__ import annotations

from fractions import Fraction

import pytest

from binder_plugins.cutlist.job import Bar, Piece, Sawing
from binder_plugins.cutlist.packing import pack
from binder_plugins.cutlist.plan import CutBar, Kerf, Placed

mm = Fraction


def cut_one(lengths: list[int], bar: Bar, sawing: Sawing) -> CutBar | None:
    """The only bar with all pieces on it, or None where they do not all fit."""
    plan = pack([Piece(f"{length}", mm(length)) for length in lengths], [bar], sawing)
    return None if plan.unplaced else plan.bars[0]


def test_three_pieces_with_two_kerfs_fill_the_bar() -> None:
    # 996 + 2 * 2 = 1000: derived from sum(l) + (n - 1) k <= L, no printed source (A6-061).
    cut = cut_one([332, 332, 332], Bar("rod", mm(1000), 1), Sawing(kerf=mm(2)))
    assert cut is not None
    assert cut.remnant == 0
    assert cut.left_in_hand == 0
    assert cut.kerfs == (Kerf(mm(332), mm(334)), Kerf(mm(666), mm(668)))
    assert cut.pieces[-1] == Placed("332", mm(668), mm(1000))


def test_a_hair_more_does_not_fit() -> None:
    # The row above with one piece longer by 1/1000 mm: derived, no printed source.
    pieces = [Piece("a", mm(332), 2), Piece("b", mm(332) + mm(1, 1000))]
    plan = pack(pieces, [Bar("rod", mm(1000), 1)], Sawing(kerf=mm(2)))
    assert sum(left.piece.count for left in plan.unplaced) == 1
    assert plan.is_proven


def test_trim_at_both_ends_makes_the_bar_shorter() -> None:
    # Usable 1000 - 2 * 5 = 990, and 990 + 2 * 2 > 990: derived, no printed source (A6-062).
    bar, sawing = Bar("rod", mm(1000), 1), Sawing(kerf=mm(2), trim=mm(5))
    assert cut_one([330, 330, 330], bar, sawing) is None
    cut = cut_one([328, 329, 329], bar, sawing)
    assert cut is not None
    assert cut.pieces[0].start == 5
    assert cut.pieces[-1].end == 995
    assert cut.remnant == 0
    assert cut.left_in_hand == 5


def test_a_held_bar_loses_its_holding_once_and_a_kerf_for_each_piece() -> None:
    # 1 + 3 * 322 + 3 * 2 + 27 = 1000: derived from sum(l + k) <= L - losses, no printed source.
    # The longer of holding and trim is lost at the far end, so the trim of 1 counts once.
    sawing = Sawing(kerf=mm(2), trim=mm(1))
    cut = cut_one([322, 322, 322], Bar("rod", mm(1000), 1, mm(27)), sawing)
    assert cut is not None
    assert len(cut.kerfs) == 3
    assert cut.remnant == 0
    assert cut.left_in_hand == 27
    assert cut_one([322, 322, 322], Bar("rod", mm(1000), 1, mm(28)), sawing) is None


def test_a_held_piece_is_cut_off_even_where_cutting_loses_nothing() -> None:
    cut = cut_one([324, 324, 324], Bar("rod", mm(1000), 1, mm(28)), Sawing())
    assert cut is not None
    assert cut.kerfs[-1] == Kerf(mm(972), mm(972))
    assert len(cut.kerfs) == 3


def test_the_last_kerf_runs_out_of_the_bar() -> None:
    # 332 + 332 + 331 + 2 * 2 = 999: 1 mm is left, less than the blade takes.
    cut = cut_one([332, 332, 331], Bar("rod", mm(1000), 1), Sawing(kerf=mm(2)))
    assert cut is not None
    assert cut.kerfs[-1] == Kerf(mm(999), mm(1000))
    assert cut.remnant == 0


def test_the_remnant_is_what_a_further_piece_could_be_cut_from() -> None:
    rod, sawing = Bar("rod", mm(500), 1, mm(20)), Sawing(kerf=mm(3, 2))
    cut = cut_one([100, 60], rod, sawing)
    assert cut is not None
    assert cut.remnant == 500 - 20 - 160 - 3
    assert cut.left_in_hand == cut.remnant + 20
    further = Piece("further", cut.remnant - sawing.kerf)
    pieces = [Piece("100", mm(100)), Piece("60", mm(60)), further]
    assert not pack(pieces, [rod], sawing).unplaced


def test_inch_fractions_stay_exact() -> None:
    # 1 in = 25.4 mm exactly (ISO 80000-3). Four of 2 15/16 in and three kerfs of 1/12 in: 12 in.
    inch = mm(254, 10)
    plan = pack(
        [Piece("link", mm(47, 16) * inch, 4)],
        [Bar("strip", 12 * inch)],
        Sawing(kerf=inch / 12),
    )
    assert len(plan.bars) == 1
    assert plan.bars[0].remnant == 0


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: Piece("a", mm(0)),
        lambda: Piece("a", mm(1), 0),
        lambda: Bar("b", mm(0)),
        lambda: Bar("b", mm(1), -1),
        lambda: Bar("b", mm(1), 1, mm(-1)),
        lambda: Sawing(kerf=mm(-1)),
        lambda: Sawing(trim=mm(-1)),
    ],
)
def test_nonsense_is_refused(wrong: object) -> None:
    assert callable(wrong)
    with pytest.raises(ValueError, match=r"needs a|cannot give"):
        wrong()
