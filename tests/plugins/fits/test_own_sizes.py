"""Two halves that are each made to a size of their own: neither waits for the other's figure.

Common practice, no source: what is read and written down is what something is made to.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design, FitFact, HalfFact
from binder.compiler import Outcome, Phase
from binder_plugins.operations.facts import Route
from binder_plugins.shapes.leaves import part_leaves

Compile = Callable[..., Outcome]

HANDLE = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  grip: {material: brass, turned: [{name: body, diameter: 7 mm, length: 18 mm}], features: {bore: {HOLE, on: body, depth: through}}}
  pin: {material: mild steel, stock: drawn rod, turned: [{name: head, diameter: 4 mm, length: 1.5 mm}, {name: journal, diameter: 2.5 mm, length: 20 mm}]}
joints:
  grip on pin: {swivels: [grip.bore, pin.journal], master: grip.bore}
"""  # noqa: E501


def _design(compile_text: Compile, hole: str) -> Design:
    design = compile_text(HANDLE.replace("HOLE", hole), Phase.CHECK).design
    assert design is not None
    return design


def _said(design: Design) -> tuple[str, str]:
    """How the half of the bore is made, and what its leaf measures for another part."""
    (half,) = [one for one in design.facts.all(HalfFact) if one.item == "grip"]
    route = design.facts.about(Route, "grip")
    assert route is not None
    return half.how, " ".join(act.what for act in route.acts if act.act == "measure")


@pytest.mark.parametrize(
    ("hole", "is_suited"), [("drilled: 2.6 mm", False), ("reamed: to suit", True)]
)
def test_a_bore_is_measured_only_where_the_pin_is_made_to_it(
    compile_text: Compile, hole: str, is_suited: bool
) -> None:
    design = _design(compile_text, hole)
    fit = design.facts.about(FitFact, "grip on pin")
    assert fit is not None
    assert bool(fit.suit) is is_suited
    how, measured = _said(design)
    assert ("measure it" in how) is is_suited
    assert ("the bore" in measured) is is_suited


def test_the_leaf_says_why_a_half_comes_first(compile_text: Compile) -> None:
    tried = "make this half first: the other is tried with it"
    assert tried in _leaves(_design(compile_text, "drilled: 2.6 mm"))
    suited = _leaves(_design(compile_text, "reamed: to suit"))
    assert "make this half first" in suited
    assert tried not in suited


def _leaves(design: Design) -> str:
    return str(list(part_leaves(design, ())))
