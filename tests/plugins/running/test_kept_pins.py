"""A pin that slides in where clips keep it: nothing of it is run along or lapped."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome, Phase
from binder.pages import Binder, Checklist, text_of
from binder_plugins.running.tracing import faults, numbered

Compile = Callable[..., Outcome]
GROOVES = (
    "    features:\n"
    "      grooves: {grooved: to suit, on: journal, each_end: true, at: 0.95 mm from left}\n"
)
CLIPS = "  clips: {clipped: [jib.head, pin.grooves], fastener: 4 mm external circlip}\n"
SPEC = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  jib:
    material: mild steel
    plate: {length: 20 mm, width: 16 mm, thickness: 6 mm}
    features: {head: {reamed: to suit, depth: through, at: middle}}
  pin:
    material: silver steel
    stock: drawn rod
    turned: [{name: journal, diameter: 4 mm, length: 20 mm}]
GROOVES  sheave:
    material: brass
    turned: [{name: rim, diameter: 14 mm, length: 4 mm}]
    features: {bore: {reamed: to suit, on: rim, depth: through}}
joints:
  pin in jib: {slides: [pin.journal, jib.head]}
  sheave on pin: {runs_in: [sheave.bore, pin.journal], duty: slow and oiled}
CLIPSassemblies:
  head: {of: [jib, pin, sheave], test: the sheave spins}
"""


@pytest.mark.parametrize("is_clipped", [True, False])
def test_what_clips_keep_has_no_end_of_travel(compile_text: Compile, *, is_clipped: bool) -> None:
    """Who looks for its travel takes the clips off. Common practice, no source."""
    kept = {"CLIPS": CLIPS, "GROOVES": GROOVES} if is_clipped else {"CLIPS": "", "GROOVES": ""}
    text = SPEC
    for word, said in kept.items():
        text = text.replace(word, said)
    outcome = compile_text(text, Phase.COMPOSE)
    assert outcome.design is not None
    assert isinstance(outcome.binder, Binder)
    (page,) = [one for one in outcome.binder.sections if one.id == "first-run"]
    ticks = [one for block in page.blocks if isinstance(block, Checklist) for one in block.checks]
    has_run = any(text_of(one.text) == "Run each slide from end to end." for one in ticks)
    joints = numbered(outcome.design)
    signs = {one.sign for one in faults(joints, outcome.design)}
    travels = "It binds at one end of its travel" in signs
    assert (has_run, travels) == (not is_clipped, not is_clipped)
    assert ("pin in jib" in {one.name for one in joints}) == (not is_clipped)
    assert "sheave on pin" in {one.name for one in joints}


PINNED = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  arm:
    material: mild steel
    plate: {length: 20 mm, width: 12 mm, thickness: 3 mm}
    features: {tip: {drilled: to suit, depth: through, at: middle}}
  handle:
    material: brass
    turned: [{name: grip, diameter: 7 mm, length: 18 mm}]
    features: {bore: {drilled: to suit, on: grip, depth: through}}
  pin:
    material: silver steel
    stock: drawn rod
    turned:
      - {name: head, diameter: 6 mm, length: 2 mm}
      - {name: journal, diameter: 4 mm, length: 18.2 mm}
      - {name: tail, diameter: 3 mm, length: 4 mm}
joints:
  handle on arm: {swivels: [handle.bore, pin.journal], master: handle.bore}
  pin in arm: {HELD: [pin.tail, arm.tip]}
"""


@pytest.mark.parametrize("held", ["riveted", "pressed"])
def test_nothing_is_slacked_where_the_pin_is_riveted(compile_text: Compile, held: str) -> None:
    """A hammered head does not slack: it is felt with a slip of paper, else filed off and the pin
    made new. Common practice, no source."""
    design = compile_text(PINNED.replace("HELD", held)).design
    assert design is not None
    joints = numbered(design)
    said = " ".join(
        f"{cause.look}; {cause.cure}"
        for each in faults(joints, design)
        if each.sign.startswith("It will not turn")
        for cause in each.causes
    )
    assert ("slack what holds it" in said) == (held == "pressed")
    assert ("file off one head" in said) == (held == "riveted")
