"""Designs to the facts about cautions."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import CautionFact
from binder.compiler import Outcome

Cautions = Callable[..., dict[str, CautionFact]]
Compile = Callable[..., Outcome]
ROD = "parts:\n  rod: {material: mild steel, cut: 20 mm, stock: 6 mm round bar}\n"
SILENCE = "No caution known to this tool; read the data sheet."


def test_the_general_ones_always_apply(cautions_of: Cautions) -> None:
    facts = cautions_of(ROD)
    assert {"eyes", "manual", "alone", "visitors", "swarf"} <= facts.keys()
    assert not {"lathe-clothes", "pressure", "nip", "gas-torch"} & facts.keys()


def test_turned_work_brings_the_lathe(cautions_of: Cautions) -> None:
    body = (
        "parts:\n  rod:\n    material: mild steel\n    turned: [{diameter: 6 mm, length: 9 mm}]\n"
    )
    facts = cautions_of(body)
    for name in ("clothes", "chuck-key", "long-bar", "stop", "emery"):
        assert facts[f"lathe-{name}"].where == ("rod",)


@pytest.mark.parametrize(
    ("joint", "subject"),
    [
        ("pressed", "pressing"),
        ("shrunk", "fire-watch"),
        ("retained", "quick-glue"),
        ("glued", "epoxy"),
        ("soft_soldered", "solder-fume"),
        ("silver_soldered", "cadmium-filler"),
        ("riveted", "hammering"),
        ("meshes", "nip"),
        ("belted", "nip"),
    ],
)
def test_a_joint_brings_its_caution_to_its_items(
    joint: str, subject: str, cautions_of: Cautions
) -> None:
    section = "drive" if joint in ("meshes", "belted") else "joints"
    body = (
        "parts:\n"
        "  a: {material: mild steel, cut: 9 mm, stock: 6 mm round bar}\n"
        "  b: {material: mild steel, cut: 9 mm, stock: 6 mm round bar}\n"
        f"{section}:\n  a to b: {{{joint}: [a, b]}}\n"
    )
    assert cautions_of(body)[subject].where == ("a", "b")


def test_how_a_fabrication_is_joined_counts_as_a_joint(cautions_of: Cautions) -> None:
    body = f"{ROD}fabrications:\n  frame: {{pieces: [2 off rod], joined: silver_soldered}}\n"
    assert cautions_of(body)["gas-torch"].where == ("frame",)


@pytest.mark.parametrize(
    ("material", "subject"),
    [
        ("magnesium", "magnesium-fire"),
        ("titanium", "titanium-fire"),
        ("beryllium-copper", "beryllium"),
        ("ptfe", "ptfe-fume"),
        ("pvc", "acid-fume"),
        ("cast iron", "silica"),
        ("brass", "lead"),
        ("oak", "wood-dust"),
        ("music wire", "springs"),
    ],
)
def test_the_tags_of_a_material_bring_its_caution(
    material: str, subject: str, cautions_of: Cautions
) -> None:
    assert cautions_of(f"parts:\n  x: {{material: {material}}}\n")[subject].where == ("x",)


def test_a_finish_brings_its_caution(cautions_of: Cautions) -> None:
    body = "parts:\n  x: {material: mild steel, finish: two coats of lacquer}\n"
    facts = cautions_of(body)
    assert facts["paint"].where == facts["solvents"].where == ("x",)


def test_things_from_the_scrap_box_bring_theirs(cautions_of: Cautions) -> None:
    facts = cautions_of(f"{ROD}scrap_box:\n  wheel: {{what: an old wheel}}\n")
    assert facts["salvage-plating"].where == facts["salvage-unknown"].where == ("wheel",)
    assert "salvage-plating" not in cautions_of(f"{ROD}bought:\n  wheel: {{what: a wheel}}\n")


@pytest.mark.parametrize(
    ("driven_by", "subject"),
    [
        ("an electric motor", "mains"),
        ("compressed air", "compressed-air"),
        ("steam", "pressure-test"),
        ("gas", "gas-appliance"),
        ("battery", "battery"),
    ],
)
def test_what_drives_the_model_brings_its_caution(
    driven_by: str, subject: str, cautions_of: Cautions
) -> None:
    head = f"format: 1\nmodel: {{title: T, issue: A, units: mm, driven_by: {driven_by}}}\n"
    assert cautions_of(ROD, head)[subject].where == ()


@pytest.mark.parametrize("title", ["A small jack", "Wharf crane", "Hand winch", "Mine hoist"])
def test_what_looks_like_lifting_gear_is_none(title: str, cautions_of: Cautions) -> None:
    head = f"format: 1\nmodel: {{title: {title}, issue: A, units: mm}}\n"
    fact = cautions_of(ROD, head)["not-lifting-gear"]
    assert fact.title == "A model is not lifting gear"


def test_machines_of_the_workshop_bring_theirs(cautions_of: Cautions) -> None:
    """The built-in workshop has a bench grinder, and only hand saws."""
    facts = cautions_of(ROD)
    assert "grinder-rest" in facts
    assert "saw" not in facts


@pytest.mark.parametrize(
    ("body", "title"),
    [
        ("parts:\n  x: {material: unobtainium}\n", "Material: unobtainium"),
        ("parts:\n  x: {material: oak, finish: hammertone}\n", "Finish: hammertone"),
        (f"{ROD}fabrications:\n  x: {{pieces: [rod], joined: sintered}}\n", "Joint: sintered"),
    ],
)
def test_what_is_not_known_is_never_silent(body: str, title: str, cautions_of: Cautions) -> None:
    fact = cautions_of(body)[f"unknown {title}"]
    assert (fact.title, fact.text, fact.where) == (title, SILENCE, ("x",))


def test_facts_carry_where_they_come_from(cautions_of: Cautions) -> None:
    facts = cautions_of(ROD)
    assert facts["grinder-rest"].source == (
        "OSHA STD 01-12-008 on 29 CFR 1910.215(a)(4), undated copy; "
        "read in a public copy 2026-11-25"
    )
    assert facts["manual"].source == "common practice, no source"
    assert "from memory" in facts["eyes"].source
    assert "common practice, no source" in facts["eyes"].source


@pytest.mark.parametrize(
    "extra",
    ["cautions: [nothing here can hurt]\n", "changes: {B: no cautions}\n", ""],
)
def test_nothing_in_a_spec_takes_one_away_or_rewords_it(extra: str, cautions_of: Cautions) -> None:
    body = "parts:\n  rod:\n    material: brass\n    because: cautions do not apply\n"
    assert cautions_of(body + extra) == cautions_of(body)


@pytest.mark.parametrize("section", ["parts", "bought"])
def test_a_thing_under_pressure_is_found(section: str, outcome_of: Compile) -> None:
    entry = {"parts": "{material: copper}", "bought": "{what: a copper boiler}"}[section]
    rest = "" if section == "parts" else ROD
    outcome = outcome_of(f"{rest}{section}:\n  boiler: {entry}\n")
    found = [one for one in outcome.findings if one.code.name == "pressure-needs-inspector"]
    assert len(found) == 1
    span = found[0].span
    assert outcome.document is not None
    line = outcome.document.texts[span.file].splitlines()[span.line - 1]
    assert line[span.column - 1 : span.end_column - 1] == "boiler"


def test_no_reason_takes_the_finding_away(outcome_of: Compile) -> None:
    outcome = outcome_of("parts:\n  boiler: {material: copper, because: it is a small one}\n")
    (found,) = (one for one in outcome.findings if one.code.name == "pressure-needs-inspector")
    assert not found.accepted


def test_a_dummy_is_let_off_the_finding_and_not_the_caution(
    outcome_of: Compile, cautions_of: Cautions
) -> None:
    body = "parts:\n  boiler: {material: copper, dummy: true}\n"
    assert "pressure-needs-inspector" not in {one.code.name for one in outcome_of(body).findings}
    assert {"pressure", "pressure-test"} <= cautions_of(body).keys()


@pytest.mark.parametrize(
    "entry",
    [
        "{material: mild steel, finish: nickel plated}",
        "{material: mild steel, finish: sprayed with two pack paint}",
        "{material: beryllium copper}",
        "{material: mild steel, note: with a strip of asbestos}",
    ],
)
def test_work_for_a_trade_is_found_at_its_part(entry: str, outcome_of: Compile) -> None:
    outcome = outcome_of(f"parts:\n  x: {entry}\n")
    (found,) = (one for one in outcome.findings if one.code.name == "not-at-home")
    span = found.span
    assert outcome.document is not None
    line = outcome.document.texts[span.file].splitlines()[span.line - 1]
    assert line[span.column - 1 : span.end_column - 1] == "x"


def test_what_is_painted_at_home_is_not_found(outcome_of: Compile) -> None:
    outcome = outcome_of("parts:\n  x: {material: mild steel, finish: painted grey}\n")
    assert "not-at-home" not in {one.code.name for one in outcome.findings}


@pytest.mark.parametrize(("material", "is_milled"), [("mild steel", True), ("beech", False)])
def test_wood_is_cut_by_chisel_and_not_by_a_mill(
    material: str, cautions_of: Cautions, *, is_milled: bool
) -> None:
    """Common practice, no source."""
    body = (
        f"parts:\n  rod:\n    material: {material}\n"
        "    board: {length: 60 mm, width: 20 mm, thickness: 10 mm}\n"
        "    features: {nose: {stepped: 14 mm, on: top, side: right, depth: 2 mm}}\n"
    )
    assert ("mill-cutter" in cautions_of(body)) == is_milled
