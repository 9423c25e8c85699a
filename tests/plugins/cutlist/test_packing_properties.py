"""What holds for every plan, whatever the job."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from binder_plugins.cutlist.job import Bar, Piece, Sawing
from binder_plugins.cutlist.packing import pack
from binder_plugins.cutlist.plan import Plan

NODES = 300
few = settings(max_examples=150, deadline=None, derandomize=True, database=None)


def sizes(low: int, high: int) -> st.SearchStrategy[Fraction]:
    """Whole, quarter and third parts of a millimetre."""
    return st.builds(Fraction, st.integers(low, high), st.sampled_from([1, 4, 3]))


jobs = st.tuples(
    st.lists(
        st.builds(Piece, st.sampled_from("abcdef"), sizes(1, 300), st.integers(1, 4)), max_size=8
    ),
    st.lists(
        st.builds(
            Bar,
            st.sampled_from("xyz"),
            sizes(20, 400),
            st.one_of(st.none(), st.integers(0, 3)),
            st.one_of(st.just(Fraction(0)), sizes(1, 30)),
        ),
        max_size=5,
    ),
    st.builds(Sawing, sizes(0, 9), sizes(0, 9)),
)
Job = tuple[list[Piece], list[Bar], Sawing]


def pieces_met(plan: Plan) -> Counter[tuple[str, Fraction]]:
    met = Counter(
        (piece.label, piece.end - piece.start) for cut in plan.bars for piece in cut.pieces
    )
    for left in plan.unplaced:
        met[left.piece.label, left.piece.length] += left.piece.count
    return met


@given(jobs)
@few
def test_every_piece_is_placed_once_or_listed(job: Job) -> None:
    wanted = Counter[tuple[str, Fraction]]()
    for piece in job[0]:
        wanted[piece.label, piece.length] += piece.count
    assert pieces_met(pack(*job, nodes=NODES)) == wanted


@given(jobs)
@few
def test_pieces_and_kerfs_follow_one_another_inside_the_usable_bar(job: Job) -> None:
    sawing = job[2]
    for cut in pack(*job, nodes=NODES).bars:
        limit = cut.bar.length - max(cut.bar.holding, sawing.trim)
        spans = sorted(
            [(piece.start, piece.end) for piece in cut.pieces]
            + [(kerf.start, kerf.end) for kerf in cut.kerfs]
        )
        assert spans[0][0] == sawing.trim
        assert all(one[1] == other[0] for one, other in pairwise(spans))
        assert spans[-1][1] + cut.remnant == limit
        assert cut.remnant >= 0
        assert cut.left_in_hand >= max(cut.bar.holding, cut.remnant)


@given(jobs)
@few
def test_kerfs_are_whole_but_for_one_that_runs_out(job: Job) -> None:
    kerf = job[2].kerf
    for cut in pack(*job, nodes=NODES).bars:
        whole = [taken for taken in cut.kerfs if taken.end - taken.start == kerf]
        needed = len(cut.pieces) - (0 if cut.bar.holding else 1)
        assert len(whole) >= needed
        assert len(cut.kerfs) - len(whole) <= (1 if cut.remnant == 0 else 0)


@given(jobs)
@few
def test_no_more_bars_are_cut_than_are_on_the_shelf(job: Job) -> None:
    owned = Counter[Bar]()
    for bar in job[1]:
        owned[replace(bar, count=0)] += bar.count or 0
    used = Counter(
        replace(cut.bar, count=0) for cut in pack(*job, nodes=NODES).bars if cut.bar.is_owned
    )
    assert used <= owned


@given(jobs)
@few
def test_what_is_left_over_is_scarce_or_too_long(job: Job) -> None:
    pieces, bars, sawing = job
    for left in pack(*job, nodes=NODES).unplaced:
        alone = pack([replace(left.piece, count=1)], bars, sawing)
        assert bool(alone.unplaced) == left.is_too_long
        buyable = [bar for bar in bars if not bar.is_owned]
        assert pack([left.piece], buyable, sawing).unplaced
    assert pieces or not pack(*job, nodes=NODES).bars


@given(jobs, st.randoms(use_true_random=False), st.sampled_from([0, 7, NODES]))
@few
def test_the_order_of_the_input_does_not_matter(job: Job, chance: Random, nodes: int) -> None:
    pieces, bars, sawing = job
    shuffled = [replace(piece, count=1) for piece in pieces for _ in range(piece.count)]
    others = list(bars)
    chance.shuffle(shuffled)
    chance.shuffle(others)
    assert pack(shuffled, others, sawing, nodes) == pack(pieces, bars, sawing, nodes)


@given(jobs)
@few
def test_the_bounds_stay_below_the_plan_and_meet_it_when_proven(job: Job) -> None:
    plan = pack(*job, nodes=NODES)
    assert plan.bought_bound <= plan.bought
    assert plan.lower_bound <= len(plan.bars)
    if plan.is_proven:
        assert (plan.bought_bound, plan.lower_bound) == (plan.bought, len(plan.bars))


@given(jobs)
@few
def test_more_search_never_makes_a_plan_worse(job: Job) -> None:
    quick, long = pack(*job, nodes=0), pack(*job, nodes=NODES)
    assert standing(long) <= standing(quick)
    assert not quick.is_proven or standing(long) == standing(quick)


def standing(plan: Plan) -> tuple[int, Fraction, Fraction, int]:
    left = [unplaced.piece for unplaced in plan.unplaced]
    length = sum((piece.length * piece.count for piece in left), Fraction(0))
    return sum(piece.count for piece in left), length, plan.bought, len(plan.bars)
