"""A model that a screw moves says where it is drawn, and what it measures at the other end.

By hand: of 37 mm of thread 15 fill the nut wound out and 22 show; with 20 mm of travel 2 show
wound in. `screw-jack` over all: body 45, thread 22, head 11, saddle 11: 89; wound in 20 less.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from binder.api import Design
from binder_plugins.arrangement.wound import Wound, wound
from binder_solid.placed import PlacedFact
from binder_solid.space import plus
from tests.conftest import Compile
from tests.plugins.drive.train import spec

PARTS = """  body:
    material: brass
    turned:
      - {name: foot, diameter: 30 mm, length: 25 mm}
      - {name: boss, diameter: 25 mm, length: 15 mm}
    features: {way: {drilled: 11 mm, on: foot, depth: 25 mm},
      thread: {tapped: M10, on: boss, depth: 15 mm}}
  screw:
    material: mild steel
    turned:
      - {name: head, diameter: 14 mm, length: 8 mm}
      - {name: shank, diameter: 10 mm, length: 37 mm}
    features: {thread: {screwed: M10, on: shank, length: 37 mm}}
"""
FED = "lift: {feeds: [screw], travel: %s, what_travels: screw}"
LEADS = "  nut: {leads: [screw.thread, body.thread]}\n"


def _design(compile_text: Compile, travel: str = "20 mm") -> Design:
    text = spec("", FED % travel, parts=PARTS, joints=LEADS)
    design = compile_text(f"{text}stands: body\n").design
    assert design is not None
    return design


def _lowered(design: Design, mm: float) -> Design:
    """The same with the screw drawn so much lower."""
    moved = [
        replace(one, frame=replace(one.frame, origin=plus(one.frame.origin, (0.0, 0.0, -mm))))
        if one.item == "screw"
        else one
        for one in design.facts.all(PlacedFact)
    ]
    return replace(design, facts=design.facts.plus(moved))


def _only(design: Design) -> Wound:
    (found,) = wound(design)
    return found


@pytest.mark.parametrize(
    ("lower", "here", "said", "ends"),
    [
        (0.0, "up", "raised, 'nut' 20 mm up, as far as it goes", {"down": -20.0}),
        (8.0, "as drawn", "raised, 'nut' 12 mm up", {"down": -12.0, "up": 8.0}),
        (20.0, "down", "down, 'nut' wound in", {"up": 20.0}),
    ],
)
def test_it_is_told_how_far_up_a_screw_is_drawn(
    lower: float, here: str, said: str, ends: dict[str, float], compile_text: Compile
) -> None:
    design = _lowered(_design(compile_text), lower)
    found = _only(design)
    assert (found.here, found.told(design)) == (here, said)
    assert {name: way[2] for name, way in found.ends()} == pytest.approx(ends)
    assert found.items == {"screw"}


def test_a_level_screw_is_wound_in_and_out(compile_text: Compile) -> None:
    design = _design(compile_text)
    level = replace(_only(design), way=(1.0, 0.0, 0.0))
    assert level.told(design) == "with 'nut' 20 mm wound out, as far as it goes"
    assert (level.here, [name for name, _ in level.ends()]) == ("wound out", ["wound in"])


def test_a_screw_drawn_past_its_ends_is_not_spoken_of(compile_text: Compile) -> None:
    assert not wound(_lowered(_design(compile_text), 21.0))
    assert not wound(_lowered(_design(compile_text), -1.0))
