"""Stepped pulleys left to suit: the sizes that their belt gives them, by the geometry of a belt."""

from __future__ import annotations

from collections.abc import Callable
from math import asin, cos, pi

import pytest

from binder.api import PlaceFact
from binder.compiler import Outcome
from binder_plugins.drive.pairs.facts import BeltFact
from binder_solid.facts import FormFact
from tests.plugins.drive.marks import marked
from tests.plugins.drive.train import HAND, spec

Compile = Callable[..., Outcome]
CONE = "x: {belted: [driver, driven], belt: round, section: 3 mm, %scentres: 90 mm}"
RATIOS = "ratios: [0.5, 1, 2], smallest: 20 mm, "


def stepped(name: str, *sizes: str, deep: str = "1.5 mm") -> str:
    """A turned pulley of three steps, each with a groove."""
    steps = "".join(
        f"      - {{name: s{n}, diameter: {size}, length: 6 mm}}\n" for n, size in enumerate(sizes)
    )
    cut = "".join(f"      g{n}: {{grooved: 3 mm, on: s{n}, depth: {deep}}}\n" for n in range(3))
    return f"  {name}:\n    material: brass\n    turned:\n{steps}    features:\n{cut}"


def cone(told: str, driver: str, driven: str) -> str:
    """Two pulleys under one belt, turned by hand."""
    return spec("a", HAND.replace("[a]", "[driver]"), CONE % told, parts=driver + driven)


def belt_of(first: float, second: float, centres: float) -> float:
    """L = 2 C cos β + π (D + d) / 2 + β (D − d), sin β = (D − d) / 2 C: geometry."""
    lean = asin((second - first) / 2 / centres)
    return 2 * centres * cos(lean) + pi * (first + second) / 2 + lean * (second - first)


SUIT = ("to suit",) * 3


def test_every_step_is_written_into_both_parts(compile_text: Compile) -> None:
    """20 × 2 = 40; the middle has (L − 2 C) / π. The cord's middle runs at the rim."""
    outcome = compile_text(cone(RATIOS, stepped("driver", *SUIT), stepped("driven", *SUIT)))
    assert not [one for one in outcome.findings if one.is_error], outcome.findings
    assert outcome.design is not None
    middle = (belt_of(20, 40, 90) - 180) / pi
    for name, sizes in (("driver", (20, middle, 40)), ("driven", (40, middle, 20))):
        places = [outcome.design.facts.about(PlaceFact, f"{name}.s{n}") for n in range(3)]
        found = [float(one.diameter) for one in places if one is not None and one.diameter]
        assert found == pytest.approx(sizes, abs=1e-3)
        form = outcome.design.facts.about(FormFact, name)
        assert form is not None
        assert max(one.across for one in form.stretches) == pytest.approx(40)


def test_a_deeper_groove_wants_a_larger_step(compile_text: Compile) -> None:
    """2 mm deep under a cord of 3 its middle lies 2 × 2 − 3 = 1 mm of diameter below the rim."""
    pulleys = (stepped(name, *SUIT, deep="2 mm") for name in ("driver", "driven"))
    outcome = compile_text(cone(RATIOS, *pulleys))
    assert outcome.design is not None
    place = outcome.design.facts.about(PlaceFact, "driver.s0")
    assert place is not None
    assert place.diameter == 21


@pytest.mark.parametrize("side", ["driver", "driven"])
def test_one_pulley_follows_the_other(side: str, compile_text: Compile) -> None:
    """One step of both is told; the others keep its belt, whichever of the two is to suit."""
    first, second = ("20 mm", "30 mm", "36 mm"), ("40 mm", *SUIT[1:])
    sizes = (first, second) if side == "driven" else (second, first)
    pulleys = (stepped("driver", *sizes[0]), stepped("driven", *sizes[1]))
    outcome = compile_text(cone("", *pulleys))
    assert outcome.design is not None, outcome.findings
    fact = outcome.design.facts.about(BeltFact, "x")
    assert fact is not None
    lengths = [
        belt_of(min(run.first_mm, run.second_mm), max(run.first_mm, run.second_mm), 90)
        for run in fact.runs
    ]
    assert lengths == pytest.approx([belt_of(20, 40, 90)] * 3, abs=0.01)


def test_a_pulley_by_its_own_shape(compile_text: Compile) -> None:
    """Grooves as deep as the cord: its middle lies 3 mm of diameter below the rim."""
    shape = (
        "  {0}: {{material: brass, pulley: {{groove: round, belt: 3 mm, width: 6 mm, "
        "diameters: [to suit, to suit, to suit]}}}}\n"
    )
    outcome = compile_text(cone(RATIOS, shape.format("driver"), shape.format("driven")))
    assert outcome.design is not None
    form = outcome.design.facts.about(FormFact, "driver")
    assert form is not None, outcome.findings
    middle = (belt_of(20, 40, 90) - 180) / pi
    across = [one.across for one in form.stretches]
    assert across == pytest.approx([23, middle + 3, 43], abs=1e-3)


@pytest.mark.parametrize(
    ("code", "text"),
    [
        ("still-to-suit", spec("a b", HAND, "x: {rubs: [a, b], diameters: [20 mm, 40 mm]}",
                               parts=stepped("driver", "20 mm", "30 mm", "⟪to suit⟫"))),
        ("belt-diameters", cone(RATIOS.replace("0.5, 1, 2", "0.5, 2"), stepped("driver", *SUIT),
                                stepped("driven", *SUIT)).replace("[driver, ", "[⟪driver⟫, ")),
        ("cone-impossible", cone("", stepped("driver", "20 mm", "30 mm", "to suit"),
                                 stepped("driven", "40 mm", "30 mm", "to suit"))
         .replace("x: {", "⟪x⟫: {")),
        ("cone-impossible", cone("", stepped("driver", *SUIT), stepped("driven", *SUIT))
         .replace("x: {", "⟪x⟫: {").replace(", centres: 90 mm", "")),
        ("pulley-differs", cone(RATIOS, stepped("driver", *SUIT[1:], "⟪39 mm⟫"),
                                stepped("driven", *SUIT))),
    ],
)  # fmt: skip
def test_what_cannot_be_settled(code: str, text: str, compile_text: Compile) -> None:
    plain, at = marked(text)
    outcome = compile_text(plain)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_column) == at
    assert "plugin-failed" not in [one.code.name for one in outcome.findings]
