"""One answer to which half is made first: leaf, fit sheet, table of joints and build order.

What comes as a tool or a bar leaves it is there first, and the other half is made to it; a bore
comes before its shaft: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.api import BuildSequence, CutSize, Design, FitFact, HalfFact
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.joints.first import first_half, fitted_in, halves_of, why_first

Compile = Callable[..., Outcome]
SPECS = Path(__file__).parents[3] / "specs"
MODELS = ("screw-jack", "tilt-hammer", "wharf-crane")
PARTS = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  pin:
    material: mild steel
    stock: STOCK
    turned: [{name: rod, diameter: 6 mm, length: 40 mm}]
  arm:
    material: brass
    block: {length: 30 mm, width: 20 mm, height: 8 mm}
    features: {bore: {BORED: 6 mm, on: top, depth: through}}
joints:
  pin in arm: {KIND: [ENDS]}
"""


def _design(name: str, host: Host) -> Design:
    outcome = compiled(Job(SPECS / name / f"{name}.yaml"), host, Phase.CHECK)
    assert outcome.design is not None
    return outcome.design


@pytest.mark.parametrize("name", MODELS)
def test_all_pages_agree_with_the_build_order(name: str, host: Host) -> None:
    design = _design(name, host)
    sequence = design.facts.about(BuildSequence, "")
    assert sequence is not None
    place = {step.task: number for number, step in enumerate(sequence.steps)}
    fitted, halves = fitted_in(design), halves_of(design)
    seen = 0
    for joint in design.joints.values():
        mine = halves.get(joint.name, [])
        told = {one.item for one in mine if one.is_master}
        assert len(told) <= 1, joint.name
        first = first_half(joint, design, fitted, mine) if joint.entry.meeting else None
        assert not told or (first is not None and first.item in told), joint.name
        fit = design.facts.about(FitFact, joint.name)
        if fit is not None and fit.suit:
            suited = fit.hole if fit.suit == "hole" else fit.shaft
            assert first is not None, joint.name
            assert str(first) != suited, joint.name
        if first is None or joint.made == "drilled together" or f"make {first.item}" not in place:
            continue
        for item in joint.items:
            if item != first.item and f"make {item}" in place:
                assert place[f"make {first.item}"] < place[f"make {item}"], joint.name
                seen += 1
    assert seen


def _first(compile_text: Compile, stock: str, bored: str, kind: str, ends: str) -> set[str]:
    text = PARTS.replace("STOCK", stock).replace("BORED", bored).replace("KIND", kind)
    design = compile_text(text.replace("ENDS", ends)).design
    assert design is not None
    return {f"{one.item}.{one.place}" for one in design.facts.all(HalfFact) if one.is_master}


@pytest.mark.parametrize("ends", ["pin.rod, arm.bore", "arm.bore, pin.rod"])
@pytest.mark.parametrize(
    ("stock", "bored", "kind", "first"),
    [
        ("round bar", "reamed", "runs_in", {"arm.bore"}),
        ("round bar", "bored", "runs_in", {"arm.bore"}),
        ("drawn rod", "bored", "runs_in", {"pin.rod"}),  # the rod stays as it is bought
        ("round bar", "bored", "retained", {"arm.bore"}),
        ("round bar", "reamed", "seated", {"arm.bore"}),  # the reamer has its own size
    ],
)
def test_what_comes_as_it_comes_is_there_first(
    compile_text: Compile, stock: str, bored: str, kind: str, first: set[str], ends: str
) -> None:
    assert _first(compile_text, stock, bored, kind, ends) == first


def test_a_bar_that_is_turned_to_a_fit_is_the_next_one_up(compile_text: Compile) -> None:
    """H7/f7 at 6 mm takes 10 to 22 µm off (ISO 286-2): no tool takes that off a 6 mm bar clean."""
    text = PARTS.replace("STOCK", "round bar").replace("BORED", "reamed")
    text = text.replace("KIND", "runs_in").replace("ENDS", "pin.rod, arm.bore")
    for stock, over in (("round bar", True), ("drawn rod", False)):
        design = compile_text(text.replace("stock: round bar", f"stock: {stock}")).design
        assert design is not None
        cut = design.facts.about(CutSize, "pin")
        assert cut is not None
        assert (float(cut.section[0]) > 6.1) is over


def test_no_reason_says_fitted_where_each_half_has_its_own_size(host: Host) -> None:
    """The handle is drilled 2.6 mm, its pin turned 2.5 mm: neither is made to the other."""
    design = _design("wharf-crane", host)
    joint, halves = design.joints["handle on arm"], halves_of(design)["handle on arm"]
    first = first_half(joint, design, fitted_in(design), halves)
    assert first is not None
    assert "its own size" in why_first(joint, first, halves, design)
    # Of one that is made to its measured mate the reason says so: common practice, no source.
    journal = design.joints["post in bush"]
    mine = halves_of(design)["post in bush"]
    first = first_half(journal, design, fitted_in(design), mine)
    assert first is not None
    assert "its own size" not in why_first(journal, first, mine, design)


WHEEL = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  pin:
    material: mild steel
    stock: round bar
    turned: [{name: rod, diameter: SIZE, length: 40 mm}]
MADEscrap_box:
  OTHER: {what: brass wheel, measure_first: [bore], note: from a broken clock}
joints:
  wheel on pin: {retained: [wheelPLACE, pin.rod]}
"""
MADE = """\
  wheel:
    material: brass
    stock: round bar
    turned: [{name: rim, diameter: 20 mm, length: 4 mm}]
    features: {bore: {reamed: 6 mm, on: rim, depth: through}}
"""


@pytest.mark.parametrize(
    ("made", "other", "place", "cuts", "why"),
    [
        (MADE, "spare", ".bore", "ream", "ream the bore"),
        ("", "wheel", "", "", "measure the bore, then bring the seat to it"),
    ],
)
def test_nobody_reams_what_lay_in_the_scrap_box(
    compile_text: Compile, made: str, other: str, place: str, cuts: str, why: str
) -> None:
    """A salvaged wheel keeps its bore, which is measured; common practice, no source."""
    text = WHEEL.replace("MADE", made).replace("OTHER", other).replace("PLACE", place)
    design = compile_text(text.replace("SIZE", "to suit" if made else "6 mm")).design
    assert design is not None
    joint = design.joints["wheel on pin"]
    halves = halves_of(design).get(joint.name, [])
    first = first_half(joint, design, fitted_in(design), halves)
    assert first is not None
    assert first.item == "wheel"
    said = why_first(joint, first, halves, design)
    assert said.startswith(why)
    assert ("ream" in said) == bool(cuts)
