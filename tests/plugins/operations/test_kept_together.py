"""What stays clamped from one set-up to another is worked on without a break.

All: common practice, no source.
"""

from __future__ import annotations

from itertools import pairwise

import pytest

from binder_plugins.operations.facts import Route
from binder_plugins.operations.jobs import Piece
from binder_plugins.operations.kept_together import clamped_on, together
from tests.plugins.operations.test_order import MODELS, design_of, plan_of


def piece(name: str, then: str = "", *, goes_on: bool = False) -> Piece:
    return Piece(name, name, 1, None, then=then, goes_on=goes_on)


def ordered(text: str, **waits: str) -> str:
    """`ab` of pieces with a letter each: A is clamped on for B, C stays in the chuck."""
    pieces = {one: piece(one) for one in text}
    pieces["A"] = piece("A", "B")
    if "C" in pieces:
        pieces["C"] = piece("C", goes_on=True)
    return "".join(together(text, {one: tuple(waits.get(one, "")) for one in text}, pieces))


@pytest.mark.parametrize(
    ("text", "waits", "found"),
    [
        ("AxB", {}, "ABx"),
        ("wAxByz", {"x": "w"}, "wABxyz"),
        # The second half of it waits for x, which is done before; y waits for A, and so for both.
        ("AxyB", {"B": "Ax", "y": "A"}, "xABy"),
        # Nothing can be done where x stands between by what it waits for.
        ("AxB", {"x": "A", "B": "x"}, "AxB"),
        # What is in the chuck for A stays before it, that for u with u.
        ("CAxB", {"B": "x"}, "xCAB"),
        ("ACuxB", {"B": "C"}, "CuABx"),
    ],
)
def test_nothing_stands_between_what_stays_clamped(
    text: str, waits: dict[str, str], found: str
) -> None:
    assert ordered(text, **waits) == found


@pytest.mark.parametrize("name", MODELS)
def test_no_evening_has_another_job_between_a_clamping_and_the_parting(
    name: str,
) -> None:
    design = design_of(name)
    jobs = [
        job.split(", part ", maxsplit=1)[0]
        for evening in plan_of(name).evenings
        for job in evening.jobs
    ]
    order = list(dict.fromkeys(jobs))
    for route in design.facts.all(Route):
        for run in clamped_on(route.setups):
            places = [order.index(f"{route.subject} {setup.number}") for setup in run]
            assert all(b - a == 1 for a, b in pairwise(places)), route.subject
