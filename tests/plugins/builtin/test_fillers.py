"""What is melted or glued in stands on the list of what is bought; common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import CautionLines, JointFact
from binder.compiler import Outcome
from binder_plugins.partslist.adhesives import adhesives
from binder_solid.filled import done_as

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


PEGS = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base: {material: STUFF, board: {length: 60 mm, width: 30 mm, thickness: 10 mm}, features: {hole:
    {drilled: 6 mm, on: top, depth: through}}}
  peg: {material: STUFF, stock: 6 mm round bar, turned: [{name: peg, diameter: 6 mm, length: 10
    mm}]}
joints: {peg: {glued: [peg.peg, base.hole]}}
assemblies: {whole: {of: [base, peg]}}
"""


@pytest.mark.parametrize(
    ("stuff", "said", "warned"), [("oak", "wood glue on", False), ("brass", "roughen", True)]
)
def test_wood_glue_is_neither_roughened_for_nor_warned_of_as_resin(
    compile_text: Callable[..., Outcome], stuff: str, said: str, warned: bool
) -> None:
    design = compile_text(PEGS.replace("STUFF", stuff)).design
    assert design is not None
    joint = design.facts.about(JointFact, "peg")
    assert joint is not None
    assert joint.step.startswith(said)
    short = CautionLines(design).at((done_as(design.joints["peg"], design),), ["peg"])
    assert ("Resin and hardener" in str(short)) == warned
