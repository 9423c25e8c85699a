"""A model in inches says nothing in millimetres but the names of metric tools and hardware."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest

from binder.api import HalfFact, lengths_in
from binder.compiler import Outcome

# 25.4 mm to the inch, exact; four decimals, or a fraction to 1/64 where it is one.
SAID = {
    "counterbore ⌀6.5 × 3.4 mm deep": "counterbore ⌀0.2559 × 0.1339 in deep",
    "drill 2.5 mm; 2.4 to 2.6 mm will do": "drill 2.5 mm; 0.0945 to 0.1024 in will do",
    "a 2.5 mm hexagon key is 25.4 mm": "a 2.5 mm hexagon key is 1 in",
    "'M3 × 12 mm cap screw' stands 6.35 mm out": "'M3 × 12 mm cap screw' stands 1/4 in out",
    "M3 × 12 mm cap screw": "M3 × 12 mm cap screw",
    "groove to ⌀12.7, 2 off": "groove to ⌀1/2 in, 2 off",
    "write `hole: 3 mm`": "write `hole: 3 mm`",
    "94 N/mm² on 5 mm²": "94 N/mm² on 5 mm²",
    "the drill's point takes 12.7 mm, 'box' has 6.35 mm": "the drill's point takes 1/2 in, "
    "'box' has 1/4 in",
    "1/4 in (6.35 mm)": "1/4 in (6.35 mm)",
}
SPEC = """format: 1
model: {title: Trial, issue: A, units: inch}
parts:
  base: {material: mild steel, block: {length: 3 in, width: 1 1/2 in, height: 1/2 in}}
  foot: {material: cast iron, block: {length: 1 in, width: 1/2 in, height: 1 1/4 in}}
  spindle:
    material: silver steel
    stock: round bar
    turned: [{name: journal, diameter: 1/4 in, length: 2 1/2 in}]
  pulley:
    material: aluminium
    stock: round bar
    turned: [{name: boss, diameter: 3/4 in, length: 3/8 in}]
    features: {bore: {reamed: 1/4 in, on: boss, depth: through}}
joints:
  foot on base: {screwed: [base.underside, foot.underside], fastener: 4-40 UNC cap screw,
    pattern: "2 off, 1/4 in apart", head: counterbored}
  pulley on spindle: {clamped: [pulley.bore, spindle.journal], fastener: 4-40 UNC grub screw}
"""
INCH = Path(__file__).parents[2] / "specs" / "workshops" / "inch.yaml"


@pytest.mark.parametrize(("told", "said"), SAID.items())
def test_lengths_are_turned_and_names_are_not(told: str, said: str) -> None:
    assert lengths_in(told, "inch") == said
    assert lengths_in(told, "mm") == told


def test_findings_halves_and_sums_of_an_inch_model_are_in_inches(
    compile_text: Callable[..., Outcome],
) -> None:
    outcome = compile_text(SPEC)
    assert outcome.design is not None
    found = [f"{one.message} {one.help} {' '.join(one.notes)}" for one in outcome.findings]
    assert found  # 1/4 in apart is too near for 4-40 heads
    halves = [f"{one.what} {one.how}" for one in outcome.design.facts.all(HalfFact)]
    assert any("to the opposite side" in text for text in halves)
    sums = [
        one.formula
        for name, one in outcome.design.workings.items()
        if name.endswith((".length", ".depth"))
    ]
    assert sums
    metric = re.compile(r"(?<!drill )(?<![0-9.])[0-9.]+ mm(?! (?:drill|reamer|hexagon|key|\())")
    for text in (*found, *halves, *sums):
        assert not metric.search(lengths_free(text)), text


def lengths_free(text: str) -> str:
    """Without what stands in quotes."""
    return re.sub(r"'[^']*'|`[^`]*`", "", text)


def test_a_reckoned_size_is_not_shown_as_if_it_was_written_in_mm(
    compile_text: Callable[..., Outcome],
) -> None:
    """Rounded up to a thirty-second of an inch."""
    outcome = compile_text(SPEC)
    assert outcome.design is not None
    half = next(one for one in outcome.design.facts.all(HalfFact) if one.item == "foot")
    depth = re.search(r"tap 4-40 UNC, (\S+) in full", half.what)
    assert depth is not None
    over, under = (int(one) for one in depth[1].split("/"))
    assert (32 * over) % under == 0
