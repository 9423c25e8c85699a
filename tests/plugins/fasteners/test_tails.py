"""A pin that is spread at both ends: both plates are on before the first blow.

Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import JointFact
from binder.compiler import Outcome

TEXT = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  plate: {material: mild steel, QUANTITY plate: {length: 20 mm, width: 10 mm, thickness: 2 mm},
    features: {hole: {drilled: 2.1 mm, depth: through, at: 5 mm from left}}}
  pin: {material: mild steel, turned: [{name: near, diameter: NEAR, length: 3 mm},
    {name: middle, diameter: 4 mm, length: 6 mm}, {name: tail, diameter: 2 mm, length: 3 mm}]}
joints: {pin in plate: {riveted: [pin.tail, plate.hole]}}
"""


@pytest.mark.parametrize(
    ("quantity", "near", "is_both"),
    [("quantity: 2,", "2 mm", True), ("", "2 mm", False), ("quantity: 2,", "3 mm", False)],
)
def test_both_plates_are_on_before_the_first_tail_is_spread(
    compile_text: Callable[..., Outcome], *, quantity: str, near: str, is_both: bool
) -> None:
    design = compile_text(TEXT.replace("QUANTITY", quantity).replace("NEAR", near)).design
    assert design is not None
    said = design.facts.about(JointFact, "pin in plate")
    assert said is not None
    assert ("both parts" in said.step) == is_both
    assert ("turn it over" in said.step) == is_both
    assert "rest" in said.step.partition("spread")[0]
    assert "flat dolly" in said.step  # a tail that is still plain stands on a hard flat
