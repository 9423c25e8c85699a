"""What is melted or glued in stands on the list of what is bought; common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.partslist.adhesives import adhesives

TEXT = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  side: {material: STUFF, board: {length: 30 mm, width: 10 mm, thickness: 4 mm}}
  end: {material: STUFF, board: {length: 20 mm, width: 10 mm, thickness: 4 mm}}
fabrications:
  frame: {pieces: [2 off side, 2 off end], joined: HOW}
"""


@pytest.mark.parametrize(
    ("stuff", "how", "bought"),
    [
        ("oak", "glued", ["wood glue"]),
        ("mild steel", "glued", ["epoxy"]),
        ("mild steel", "silver_soldered", ["silver solder, free of cadmium, and its flux"]),
        ("mild steel", "soft_soldered", ["soft solder and its flux"]),
        ("mild steel", "riveted", []),
    ],
)
def test_a_fabrication_has_its_filler_bought(
    compile_text: Callable[..., Outcome], stuff: str, how: str, bought: list[str]
) -> None:
    outcome = compile_text(TEXT.replace("STUFF", stuff).replace("HOW", how))
    assert outcome.design is not None
    assert adhesives(outcome.design) == {one: ["frame"] for one in bought}
