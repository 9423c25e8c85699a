"""Numbers off are rolled up over assemblies and fabrications."""

from __future__ import annotations

from collections.abc import Callable

from binder.api import ItemNumber, NumberOff
from binder.compiler import Outcome

TEXT = """\
format: 1
model: {title: Counting, issue: A, units: mm}
parts:
  pin: {material: brass, stock: 3 mm drawn rod, cut: 10 mm}
  side: {material: brass, stock: 6 mm x 3 mm flat bar, cut: 30 mm}
  wheel: {material: brass, stock: 20 mm round bar, cut: 4 mm}
bought:
  screw: {what: M2 x 6 screw}
fabrications:
  frame: {pieces: [2 off side, 3 off pin], joined: soft_soldered}
assemblies:
  bogie: {of: [frame, 4 off wheel, 2 off screw]}
  truck: {of: [2 off bogie, pin, screw]}
"""


def test_every_use_at_every_depth_is_counted(compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(TEXT)
    assert outcome.design is not None
    counts = {fact.subject: fact.count for fact in outcome.design.facts.all(NumberOff)}
    # By hand: one truck, 2 bogies, 2 frames; 2 x 2 sides; 2 x 3 + 1 pins; 2 x 4 wheels;
    # 2 x 2 + 1 screws.
    assert counts == {
        "truck": 1,
        "bogie": 2,
        "frame": 2,
        "side": 4,
        "pin": 7,
        "wheel": 8,
        "screw": 5,
    }
    working = outcome.design.workings["pin.off"]
    assert working.result == "7"
    assert "3 in each of 2 frame" in working.formula


def test_item_numbers_follow_the_spec(compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(TEXT)
    assert outcome.design is not None
    numbers = [fact.subject for fact in outcome.design.facts.all(ItemNumber)]
    assert numbers == ["pin", "side", "wheel", "frame", "screw", "bogie", "truck"]
