"""Which bars are taken: the shelf before the shop, little bought, few bars, nothing lost."""

from __future__ import annotations

from fractions import Fraction

from binder_plugins.cutlist.job import Bar, Piece, Sawing
from binder_plugins.cutlist.packing import pack
from binder_plugins.cutlist.plan import Plan

mm = Fraction


def lengths_used(plan: Plan) -> list[int]:
    return [int(cut.bar.length) for cut in plan.bars]


def test_the_shelf_comes_before_the_shop() -> None:
    bars = [Bar("shop", mm(300)), Bar("shelf", mm(400), 1)]
    plan = pack([Piece("axle", mm(290))], bars, Sawing(kerf=mm(2)))
    assert lengths_used(plan) == [400]
    assert plan.bought == 0
    assert plan.is_proven


def test_the_shortest_shelf_bar_that_serves_is_cut() -> None:
    bars = [Bar("long", mm(2000), 1), Bar("end", mm(120), 1), Bar("rest", mm(300), 1)]
    plan = pack([Piece("axle", mm(150)), Piece("pin", mm(100))], bars, Sawing(kerf=mm(2)))
    assert lengths_used(plan) == [300]


def test_the_least_length_is_bought_before_the_fewest_bars() -> None:
    # 3 * 300 fit one 1000, but three lengths of 310 come to 930: less metal, more bars.
    bars = [Bar("310", mm(310)), Bar("1000", mm(1000))]
    plan = pack([Piece("leg", mm(300), 3)], bars, Sawing(kerf=mm(2)))
    assert lengths_used(plan) == [310, 310, 310]
    assert plan.bought == plan.bought_bound == 930
    assert plan.is_proven


def test_of_equal_lengths_bought_the_fewest_bars() -> None:
    bars = [Bar("500", mm(500)), Bar("1000", mm(1000))]
    plan = pack([Piece("leg", mm(450), 2)], bars, Sawing(kerf=mm(2)))
    assert lengths_used(plan) == [1000]
    assert plan.lower_bound == 1
    assert plan.is_proven


def test_a_piece_longer_than_every_bar_is_listed() -> None:
    pieces = [Piece("post", mm(500), 2), Piece("pin", mm(20))]
    plan = pack(pieces, [Bar("rod", mm(330))], Sawing(kerf=mm(2)))
    assert [(left.piece, left.is_too_long) for left in plan.unplaced] == [(pieces[0], True)]
    assert [piece.label for cut in plan.bars for piece in cut.pieces] == ["pin"]
    assert plan.is_proven


def test_a_short_shelf_leaves_as_few_pieces_as_can_be() -> None:
    pieces = [Piece("post", mm(90)), Piece("pin", mm(49), 2)]
    plan = pack(pieces, [Bar("rod", mm(100), 1)], Sawing(kerf=mm(2)))
    assert [(left.piece, left.is_too_long) for left in plan.unplaced] == [(pieces[0], False)]
    assert plan.is_proven


def test_a_piece_that_fills_the_shelf_bar_still_gives_way_to_two_others() -> None:
    # By hand: 12 + 8 fill the bar but leave two pieces of 4; 12 + 4 + 4 leave only the 8.
    pieces = [Piece(f"{length}", mm(length)) for length in (12, 8, 4, 4)]
    plan = pack(pieces, [Bar("rod", mm(20), 1)], Sawing())
    assert [left.piece for left in plan.unplaced] == [pieces[1]]
    assert plan.is_proven


def test_a_shorter_bar_is_cut_before_a_longer_one_that_gives_no_more() -> None:
    bars = [Bar("free", mm(100), 1), Bar("held", mm(120), 1, mm(20)), Bar("spare", mm(105), 1)]
    plan = pack([Piece("post", mm(100), 2)], bars, Sawing())
    assert lengths_used(plan) == [100, 105]


def test_a_bar_shorter_than_its_holding_gives_nothing() -> None:
    plan = pack([Piece("pin", mm(5))], [Bar("stub", mm(30), 4, mm(30))], Sawing())
    assert plan.bars == ()
    assert plan.unplaced[0].is_too_long


def test_no_bars_and_no_pieces() -> None:
    assert pack([], [Bar("rod", mm(330))], Sawing()) == Plan((), (), 0, mm(0), is_proven=True)
    plan = pack([Piece("pin", mm(5))], [], Sawing())
    assert plan.unplaced[0].piece == Piece("pin", mm(5))
    assert plan.is_proven


# Three bars of 60 filled to the end: 45 + 15, 30 + 25 + 5, 29 + 24 + 7. Heaviest first, the
# pieces 30 and 29 share a bar, and a fourth one is needed.
THREE_FULL_BARS = [Piece(f"{length}", mm(length)) for length in (45, 30, 29, 25, 24, 15, 7, 5)]


def test_the_search_beats_fitting_heaviest_first() -> None:
    plan = pack(THREE_FULL_BARS, [Bar("rod", mm(60))], Sawing())
    assert len(plan.bars) == 3
    assert plan.is_proven


def test_a_stopped_search_claims_nothing() -> None:
    plan = pack(THREE_FULL_BARS, [Bar("rod", mm(60))], Sawing(), nodes=3)
    assert len(plan.bars) == 4
    assert plan.lower_bound == 3
    assert plan.bought_bound == 180
    assert not plan.is_proven
