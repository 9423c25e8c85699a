"""A step milled off is pointed at where it is, and has no centre: ISO 129-1, leaders end on it."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.drawings.pointing import pointed_at
from binder_solid.facts import FormFact
from binder_solid.open_ends import open_along

Compile = Callable[..., Outcome]
SPEC = """
format: 1
model: {{title: Trial, issue: A, units: mm}}
parts:
  bar:
    material: mild steel
    block: {{length: 100 mm, width: 20 mm, height: 10 mm}}
    features: {{nose: {{stepped: 14 mm, on: {face}, side: {side}, depth: 2 mm}}}}
"""


@pytest.mark.parametrize(
    ("face", "side", "place"),
    [
        # 14 off the right of 100: its middle at 93; seen from above 10 up, from the front 5.
        ("top", "right", (93.0, 10.0)),
        ("top", "front", (50.0, 7.0)),
        ("front", "right", (93.0, 5.0)),
    ],
)
def test_a_step_is_pointed_at_where_it_is(
    face: str, side: str, place: tuple[float, float], compile_text: Compile
) -> None:
    design = compile_text(SPEC.format(face=face, side=side)).design
    assert design is not None
    (fact,) = design.facts.all(FormFact)
    (step,) = fact.located
    assert pointed_at(step, fact, ("front", "top")).place == pytest.approx(place)


@pytest.mark.parametrize(
    ("slot", "is_open"),
    [
        ("{dovetailed: 8 mm, on: top, depth: 2 mm, inside: true}", True),
        ("{slotted: 6 mm, on: top, depth: 2 mm}", True),
        ("{slotted: 6 mm, on: top, depth: 2 mm, length: 20 mm}", False),
        # A tail is what two cuts leave.
        ("{dovetailed: 8 mm, on: top, depth: 2 mm}", False),
    ],
)
def test_a_slot_from_end_to_end_says_so(slot: str, compile_text: Compile, *, is_open: bool) -> None:
    """Nothing else tells its length, and a middle reads as a pocket: common practice, no source."""
    text = SPEC.format(face="top", side="right").partition("    features:")[0]
    design = compile_text(f"{text}    features: {{way: {slot}}}\n").design
    assert design is not None
    (fact,) = design.facts.all(FormFact)
    (way,) = fact.located
    assert ("from end to end" in way.note) == is_open
    assert (open_along(way, fact.size) == 0) == is_open
