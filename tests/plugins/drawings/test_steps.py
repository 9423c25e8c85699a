"""A step milled off is pointed at where it is, and has no centre: ISO 129-1, leaders end on it."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.drawings.pointing import pointed_at
from binder_solid.facts import FormFact

Compile = Callable[..., Outcome]
SPEC = """
format: 1
model: {{title: Trial}}
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
