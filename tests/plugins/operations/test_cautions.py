"""Each hazard of the trade is printed at the act where it hurts, not only on its own page."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from binder.api import Checklist, Design, Notice, Paragraph, Section
from binder.pages import text_of
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.finishing.page import finishing_pages
from binder_plugins.operations.leaf import operation_pages
from binder_plugins.running.first_page import first_run_pages
from tests.plugins.operations.conftest import HEAD, Plan

TURNED = "stock: 12 mm round bar, turned: [{name: body, diameter: 10 mm, length: 30 mm}]"
BLOCK = (
    "block: {length: 30 mm, width: 20 mm, height: 12 mm},"
    " features: {hole: {drilled: 5 mm, on: top, depth: through}}"
)
LAW = "local codes first"
TWO = (
    "  part: {material: mild steel, stock: 6 mm round bar, cut: 20 mm}\n"
    "  other: {material: brass, stock: 6 mm round bar, cut: 20 mm}\n"
    "assemblies: {all: {of: [part, other]}}\n"
)


def one(text: str, more: str = "") -> str:
    """A spec of one part."""
    return f"{HEAD}  part: {{{text}}}\n{more}"


def joined(how: str, material: str = "mild steel") -> str:
    """A fabrication of two blocks."""
    piece = f"{{material: {material}, block: {{length: 30 mm, width: 20 mm, height: 6 mm}}}}"
    return (
        f"{HEAD}  piece: {piece}\nfabrications:\n  part: {{pieces: [2 off piece], joined: {how}}}\n"
    )


def _leaf(design: Design) -> Iterator[str]:
    """What is said over the acts of the item `part`."""
    for inset in operation_pages(design, ()):
        if inset.section == "part-part":
            yield from (text_of(b.text) for b in inset.blocks if isinstance(b, Paragraph))


# Hazard, spec, heading of the set-up that carries it, and its words.
AT_THE_ACT = {
    "eye protection": (one(f"material: mild steel, {TURNED}"), "lathe", "eye protection on"),
    "hair, sleeves, gloves": (one(f"material: mild steel, {TURNED}"), "lathe", "long hair tied"),
    "chuck key": (one(f"material: mild steel, {TURNED}"), "lathe", "key out of the chuck"),
    "swarf": (one(f"material: mild steel, {TURNED}"), "lathe", "swarf off with a brush"),
    "long bar": (one(f"material: mild steel, {TURNED}"), "lathe", "bar behind the headstock"),
    "work that swings": (one(f"material: brass, {BLOCK}"), "drill", "work clamped"),
    "beryllium copper": (one(f"material: beryllium copper, {TURNED}"), "lathe", "poison"),
    "magnesium": (one(f"material: magnesium, {TURNED}"), "lathe", "dry sand"),
    "titanium": (one(f"material: titanium, {TURNED}"), "lathe", "dry sand"),
    "lead in brass": (one(f"material: brass, {TURNED}"), "lathe", "holds lead"),
    "wood dust": (one("material: oak, block: {length: 60 mm, width: 20 mm, height: 12 mm}"),
                  "saw", "fitted mask"),
    "sheared sheet": (one("material: brass, plate: {length: 60 mm, width: 20 mm,"
                          " thickness: 1 mm}"), "saw", "sheared edges"),
    "spring wire": (one("material: music wire, stock: 1 mm wire,"
                        " spring: {kind: compression, wire: 1 mm, mean: 8 mm, coils: 6,"
                        " free: 20 mm}"),
                    "bench", "hold both ends"),
    "flame": (joined("silver_soldered"), "bench", "water in reach"),
    "cadmium filler": (joined("silver_soldered"), "bench", "free of cadmium"),
    "pickling acid": (joined("silver_soldered"), "bench", "acid into water"),
    "closed hollow": (joined("silver_soldered"), "bench", "hollow vented"),
    "zinc fume": (joined("silver_soldered", "brass"), "bench", "zinc fumes"),
    "solvent": (joined("soft_soldered"), "bench", "degrease in moving air"),
    "retaining compound": (joined("retained"), "bench", "it bonds skin"),
    "welding": (joined("welded"), "bench", "the right shade"),
    "pressing": (joined("pressed"), "bench", "stand out of line"),
    "pressure": (one(f"material: copper, title: boiler shell, {TURNED}"), "lathe",
                 "by somebody competent"),
}  # fmt: skip


@pytest.mark.parametrize("hazard", AT_THE_ACT)
def test_a_hazard_is_named_over_the_act(hazard: str, plan: Plan) -> None:
    text, place, words = AT_THE_ACT[hazard]
    design = plan(text).design
    assert design is not None
    said = [line for line in _leaf(design) if line.startswith("Set-up")]
    held = [line for line in said if place in line.partition(":")[0]]
    assert any(words in line.lower() for line in held), said
    first = next(line for line in said if "Caution: " in line)
    assert LAW in first


def test_pressure_at_its_act_names_who_is_asked_first(plan: Plan) -> None:
    design = plan(AT_THE_ACT["pressure"][0]).design
    assert design is not None
    assert any("Ask first: a boiler inspector" in line for line in _leaf(design))


def test_what_a_part_does_not_do_is_not_said_over_it(plan: Plan) -> None:
    design = plan(AT_THE_ACT["wood dust"][0]).design
    assert design is not None
    assert not [line for line in _leaf(design) if "chuck" in line or "lead" in line]


def test_a_caution_is_said_once_on_a_leaf(plan: Plan) -> None:
    """In the first of its set-ups; the later ones point upwards."""
    spec = one(
        "material: mild steel, stock: 12 mm round bar, turned:"
        " [{name: body, diameter: 10 mm, length: 30 mm}], features:"
        " {cross: {drilled: 3 mm, across: body, at: 10 mm from right}}"
    )
    design = plan(spec).design
    assert design is not None
    said = " ".join(_leaf(design))
    assert said.count("eye protection on".capitalize()) == 1
    assert "as above" in said


def _lines(sections: Iterator[Section]) -> Iterator[str]:
    for section in sections:
        for block in section.blocks:
            if isinstance(block, Checklist):
                for tick in block.checks:
                    yield from (text_of(more) for more in (tick.text, *tick.detail))
            elif isinstance(block, (Notice, Paragraph)):
                yield text_of(block.text)
        yield from _lines(iter(section.sections))


# Hazard, what stands after two pieces, its words at the step of the assembly.
AT_THE_STEP = {
    "retaining compound": ("joints: {it: {retained: [part, other]}}", "it bonds skin"),
    "flame": ("joints: {it: {silver_soldered: [part, other]}}", "water in reach"),
    "pressing": ("joints: {it: {pressed: [part, other]}}", "stand out of line"),
    "rivets": ("joints: {it: {riveted: [part, other]}}", "splinters fly"),
    "nip points": ("drive: {it: {belted: [part, other]}}", "guard every nip"),
}


@pytest.mark.parametrize("hazard", AT_THE_STEP)
def test_a_hazard_is_named_at_the_step_of_the_assembly(hazard: str, plan: Plan) -> None:
    more, words = AT_THE_STEP[hazard]
    design = plan(f"{HEAD}{TWO}{more}\n").design
    assert design is not None
    said = [line for line in _lines(assembly_pages(design, ())) if line.startswith("Caution: ")]
    assert any(words in line.lower() for line in said), said
    assert LAW in said[0]


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        ("salvaged plating", "until its plating is known"),
        ("salvaged metal", "may be hard"),
        ("hardened steel", "hardened steel shatters"),
    ],
)
def test_scrap_of_unknown_plating_and_hard_steel_is_named_where_it_is_joined(
    kind: str, words: str, plan: Plan
) -> None:
    wheel = "a hardened wheel" if kind == "hardened steel" else "an old wheel"
    more = (
        f"scrap_box: {{wheel: {{what: {wheel}, measure_first: [bore]}}}}\n"
        "joints: {it: {pressed: [wheel, part]}}\n"
    )
    text = f"{HEAD}{TWO}{more}".replace("[part, other]", "[part, other, wheel]")
    design = plan(text).design
    assert design is not None
    said = [line for line in _lines(assembly_pages(design, ())) if line.startswith("Caution: ")]
    assert any(words in line.lower() for line in said), said


@pytest.mark.parametrize(
    ("head", "words"),
    [
        ("title: A winch", "not lifting gear"),
        ("title: Trial, driven_by: an electric motor", "residual-current"),
        ("title: Trial, driven_by: compressed air", "relief valve"),
        ("title: Trial, driven_by: steam", "witnessed by an inspector"),
        ("title: A flywheel engine", "plane of the wheel"),
    ],
)
def test_what_runs_is_cautioned_before_it_runs(head: str, words: str, plan: Plan) -> None:
    text = f"{HEAD}{TWO}drive: {{it: {{belted: [part, other]}}}}\n".replace("title: Trial", head)
    design = plan(text).design
    assert design is not None
    first, *_ = [line for line in _lines(first_run_pages(design)) if "nip" in line]
    assert words in first.lower()
    assert LAW in first


def test_a_finish_is_cautioned_where_it_is_put_on(plan: Plan) -> None:
    spec = one(f"material: mild steel, {TURNED}, finish: painted grey")
    design = plan(spec).design
    assert design is not None
    said = [line for line in _lines(finishing_pages(design)) if line.startswith("Caution: ")]
    assert any("no flame or heater" in line for line in said), said
