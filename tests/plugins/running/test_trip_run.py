"""A hammer that is tripped is lifted whole or not at all, so it is not run in by shares of a load.

Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder.pages import Checklist, text_of
from binder_plugins.running.first_page import first_run_pages
from tests.plugins.drive.train import HAND, spec

Compile = Callable[..., Outcome]
WHOLE = "assemblies:\n  all: {of: [a, b], test: it strikes}\n"
MOTOR = "motor: {turns: [a], by: motor, speeds: [SPEEDS]}"
TRIPS = "x: {trips: [a, b], lifts: 4, lift: 5 mm}"
CAM = "x: {cams: [a, b], lift: 6 mm, base: 60 mm, rise: 120 deg, follower: flat}"


def _said(compile_text: Compile, *drive: str) -> tuple[list[str], str, str]:
    design = compile_text(spec("a b", *drive, more=WHOLE)).design
    assert design is not None
    blocks = [block for page in first_run_pages(design) for block in page.blocks]
    lines = [text_of(t.text) for one in blocks if isinstance(one, Checklist) for t in one.checks]
    return lines, design.tasks["run all"].detail, design.tasks["test all"].detail


@pytest.mark.parametrize(
    ("speeds", "then"),
    [("60 r/min", "then 10 more"), ("60 r/min, 90 r/min", "10 minutes at the lowest speed")],
)
def test_the_head_is_blocked_up_and_then_lifted_at_the_lowest_speed(
    compile_text: Compile, speeds: str, then: str
) -> None:
    lines, run, test = _said(compile_text, MOTOR.replace("SPEEDS", speeds), TRIPS)
    blocked = next(n for n, one in enumerate(lines) if "tie a block of wood under it" in one)
    motor = next(n for n, one in enumerate(lines) if one.startswith("10 minutes, then stop"))
    free = next(n for n, one in enumerate(lines) if "without load" in one)
    on = next(n for n, one in enumerate(lines) if one.startswith("Take the block out"))
    assert blocked < motor < free < on
    assert then in lines[on]
    assert not [one for one in (*lines, run) if "uarter" in one]
    assert "with what is lifted at the lowest speed" in run
    assert test.startswith("at its work")


def test_by_hand_it_goes_slowly_first(compile_text: Compile) -> None:
    lines, *_ = _said(compile_text, HAND, TRIPS)
    assert any("10 times slowly, then 10 times faster" in one for one in lines)


def test_what_has_shares_keeps_them(compile_text: Compile) -> None:
    lines, run, test = _said(compile_text, MOTOR.replace("SPEEDS", "60 r/min"), CAM)
    assert any(one.startswith("A quarter of the load") for one in lines)
    assert "under a quarter and half of the load" in run
    assert test.startswith("under all of the load")
    assert not any("block of wood" in one for one in lines)
