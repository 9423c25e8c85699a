"""Parts as solids: what they weigh, and what is found when nothing whole is left.

Masses: volume by the closed formula times the density of the material's own row.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder.api import MaterialFact
from binder.compiler import Outcome, Phase
from binder_plugins.solids import build
from binder_solid.facts import SolidFact, ViewsFact

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
PIN = (
    "  pin: {material: brass, stock: 6 mm drawn rod,"
    " turned: [{name: rod, diameter: 6 mm, length: 40 mm}]}\n"
)


def block(features: str) -> str:
    """A block of 40 × 30 × 20 mm with features."""
    return (
        f"{HEAD}  block:\n    material: brass\n    block: {{length: 40 mm, width: 30 mm,"
        f" height: 20 mm}}\n    features:\n      {features}\n"
    )


def codes_of(outcome: Outcome) -> set[str]:
    """The codes of this plugin that were found."""
    own = {"solid-unbuildable", "solid-in-pieces", "solid-empty", "kernel-missing"}
    return {one.code.name for one in outcome.findings} & own


def test_a_part_weighs_its_volume_times_its_density(compile_text: Compile) -> None:
    outcome = compile_text(HEAD + PIN, Phase.COMPOSE)
    assert outcome.design is not None
    solid = outcome.design.facts.about(SolidFact, "pin")
    metal = outcome.design.facts.about(MaterialFact, "pin")
    assert solid is not None
    assert solid.mass is not None
    assert metal is not None
    assert metal.density is not None
    assert solid.volume == pytest.approx(math.pi * 9 * 40, rel=1e-6)
    assert solid.mass == pytest.approx(math.pi * 9 * 40 / 1000 * metal.density, rel=1e-6)
    assert solid.centre[0] == pytest.approx(20)
    assert not codes_of(outcome)


def test_a_check_opens_no_kernel(compile_text: Compile) -> None:
    outcome = compile_text(HEAD + PIN, Phase.CHECK)
    assert outcome.design is not None
    assert not outcome.design.facts.all(SolidFact)


def test_a_turned_part_with_a_bore_is_drawn_half_in_section(compile_text: Compile) -> None:
    bored = PIN.replace("}]}", "}], features: {bore: {drilled: 3 mm, on: rod, depth: through}}}")
    outcome = compile_text(HEAD + bored, Phase.COMPOSE)
    assert outcome.design is not None
    views = outcome.design.facts.about(ViewsFact, "pin")
    assert views is not None
    (half,) = views.sections
    assert half.faces
    assert [one.name for one in views.views] == ["front", "isometric"]


def test_a_cut_right_through_leaves_two_pieces(compile_text: Compile) -> None:
    outcome = compile_text(block("slot: {slotted: 4 mm, on: top, depth: through}"), Phase.COMPOSE)
    assert "solid-in-pieces" in codes_of(outcome)
    shallow = block("slot: {slotted: 4 mm, on: top, depth: 5 mm}")
    assert not codes_of(compile_text(shallow, Phase.COMPOSE))


def test_nothing_left_is_found(compile_text: Compile) -> None:
    features = "slot: {slotted: 31 mm, on: top, depth: through}"
    assert codes_of(compile_text(block(features), Phase.COMPOSE)) & {
        "solid-empty",
        "solid-unbuildable",
    }


def test_without_the_kernel_the_binder_stands_and_says_so(
    compile_text: Compile, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(build, "is_kernel_there", lambda: False)
    outcome = compile_text(HEAD + PIN, Phase.COMPOSE)
    assert codes_of(outcome) == {"kernel-missing"}
    assert outcome.binder is not None
    (finding,) = (one for one in outcome.findings if one.code.name == "kernel-missing")
    assert "build-binder[solid]" in finding.help
