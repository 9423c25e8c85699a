"""Rows between two walls of one piece: spacers and grooves are made to the walls as measured.

Sums are by hand; that what fits a gap is made after the gap is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import ChainFact, Design, ShaftFact
from binder.compiler import Outcome
from binder_plugins.operations.facts import Route
from binder_plugins.shafts.row_chaining import spaced_last
from binder_solid.row_walls import spacers_of

Compile = Callable[..., Outcome]

# A wheel of 4 mm between RINGs of 3 mm each, in a gap of GAP between two plates of 2 mm.
FORK = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  side: {material: mild steel, quantity: 2, plate: {length: 20 mm, width: 20 mm, thickness: 2 mm}, features: {hole: {drilled: 3.8 mm, depth: through}}}
  bar: {material: mild steel, stock: 12 mm x 6 mm flat bar, cut: 20 mm}
  wheel: {material: brass, turned: [{name: rim, diameter: 16 mm, length: 4 mm}], features: {bore: {reamed: to suit, on: rim, depth: through}}}
  ring: {material: brass, quantity: 2, turned: [{name: rim, diameter: 7 mm, length: 3.9 mm}], features: {bore: {drilled: 4.1 mm, on: rim, depth: through}}}
  pin: {material: silver steel, stock: drawn rod, turned: [{name: journal, diameter: 4 mm, length: 18.4 mm}], features: {clips: {grooved: to suit, on: journal, each_end: true, at: 1 mm from left}}}
fabrications:
  fork:
    pieces: [2 off side, 1 off bar]
    joined: silver_soldered
    stack: [{piece: side}, {piece: bar, stands: on edge across}, {piece: side}]
    features: {eye: {reamed: to suit, depth: through}}
joints:
  wheel on pin: {runs_in: [wheel.bore, pin.journal], duty: slow and oiled}
  pin in fork: {slides: [pin.journal, fork.eye]}
  clips on pin: {clipped: [fork.eye, pin.clips], fastener: 4 mm external circlip}
shafts:
  pin: {along: [pin.clips, fork.eye, ROW, fork.eye, pin.clips], apart: 12 mmSUIT}
"""  # noqa: E501


def _fork(compile_text: Compile, row: str, suit: str = "") -> Design:
    design = compile_text(FORK.replace("ROW", row).replace("SUIT", suit)).design
    assert design is not None
    return design


def _said(design: Design, name: str) -> str:
    route = design.facts.about(Route, name)
    assert route is not None
    return "\n".join(act.what for setup in route.setups for act in setup.acts)


@pytest.mark.parametrize(
    ("row", "suit", "item", "count", "each"),
    [
        ("ring, wheel, ring", "", "ring", 2, (12 - 4 - 0.15) / 2),
        ("ring, wheel", "", "ring", 1, 12 - 4 - 0.15),
        ("ring, wheel, ring", ", to_suit: wheel", "wheel", 1, 12 - 2 * 3.9 - 0.15),
    ],
)
def test_what_closes_the_row_shares_the_gap(
    compile_text: Compile, row: str, suit: str, item: str, count: int, each: float
) -> None:
    design = _fork(compile_text, row, suit)
    (shaft,) = design.facts.all(ShaftFact)
    found = spacers_of(shaft, design)
    assert found is not None
    assert (found.item, found.count) == (item, count)
    assert found.drawn == pytest.approx(each)
    befores = list(spaced_last(shaft, design))
    assert ("make fork", f"make {item}") in {(one.earlier, one.later) for one in befores}


def test_nothing_is_faced_where_only_the_wheel_stands_in_the_gap(compile_text: Compile) -> None:
    design = _fork(compile_text, "wheel")
    (shaft,) = design.facts.all(ShaftFact)
    assert spacers_of(shaft, design) is None


def test_the_row_has_a_chain_of_its_own(compile_text: Compile) -> None:
    """12 - 4 - 2 x 3.9 = 0.2 mm."""
    design = _fork(compile_text, "ring, wheel, ring")
    (row,) = [one for one in design.facts.all(ChainFact) if one.subject == "pin: row"]
    assert sum(one.nominal * one.factor for one in row.links) == pytest.approx(0.2)
    assert row.closing.startswith("ring")


def test_the_leaves_measure_the_walls_and_give_the_sums(compile_text: Compile) -> None:
    """Outside: 2 + 12 + 2 = 16, two clips of 0.4 and 0.15 of float, 0.75 beyond each wall."""
    design = _fork(compile_text, "ring, wheel, ring")
    fork = _said(design, "fork")
    assert "gap between both walls" in fork
    assert "over both walls beside the eye: ______, 16 mm as drawn" in fork
    assert "÷ 2 = ______, 3.925 mm if" in _said(design, "ring")
    assert "= ______, 18.45 mm if" in _said(design, "pin")
    assert "the ring is made to it" in _said(design, "wheel")
