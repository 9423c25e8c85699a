"""Finishes and heat: each code at its exact place, the tables, and what stays bare."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest

from binder.compiler import Outcome, Phase
from binder.pages import Binder, Checklist, Facts, Paragraph, Section, Table, text_of
from binder_plugins.finishing import coat_codes, codes, heat_codes
from binder_plugins.finishing.heat import colour_in, colours, heats
from binder_plugins.finishing.processes import processes, processes_in
from binder_plugins.materials.records import records
from tests.plugins.drive.marks import marked

Compile = Callable[..., Outcome]
OWN = {code.name for table in (codes, heat_codes, coat_codes) for code in table.CODES}


def spec(material: str, finish: str, more: str = "") -> str:
    return (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
        "  arm:\n"
        f"    material: {material}\n    finish: {finish}\n"
        "    block: {length: 40 mm, width: 20 mm, height: 6 mm}\n"
        "    features:\n"
        "      bore: {reamed: 6 mm, on: top, depth: through}\n"
        "      screw: {tapped: M3, on: top, depth: through, at: 8 mm from left}\n"
        f"{more}"
    )


PIN = "  pin: {material: brass, stock: 6 mm drawn rod, cut: 40 mm}\njoints:\n"
HOT = f"{PIN}  a: {{silver_soldered: [pin, arm.bore]}}\n"
COLD = f"{PIN}  a: {{retained: [pin, arm.bore]}}\n"
SOFT = COLD.replace("retained", "soft_soldered")
TOGETHER = (
    f"{PIN}  a: {{pinned: [pin, arm.bore], fastener: 2 mm x 12 mm steel dowel pin,"
    " made: drilled together}\n"
)


def spindle(finish: str, long: int) -> str:
    """A spindle of 6 mm with a fit."""
    return (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n  pin:\n"
        f"    material: silver steel\n    finish: {finish}\n"
        f"    stock: 6 mm drawn rod\n    cut: {long} mm\n"
        "  arm: {material: brass, block: {length: 40 mm, width: 20 mm, height: 9 mm},"
        " features: {bore: {reamed: 6 mm, on: top, depth: through}}}\n"
        "joints: {a: {slides: [pin, arm.bore]}}\n"
    )


def joined(finish: str, how: str) -> str:
    """Two pieces of one kind with a finish, put together as one."""
    return (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n  side:\n"
        f"    material: mild steel\n    finish: {finish}\n"
        "    plate: {length: 40 mm, width: 20 mm, thickness: 2 mm}\n"
        f"fabrications: {{frame: {{pieces: [2 off side], joined: {how}}}}}\n"
    )


CASES = {
    "finish-on-wrong-metal": (spec("brass", "⟪black oxide⟫"), spec("mild steel", "black oxide")),
    "will-not-harden": (
        spec("mild steel", "⟪hardened and tempered⟫"),
        spec("mild steel", "case hardened"),
    ),
    "hardened-not-tempered": (
        spec("silver steel", "⟪hardened, polished⟫"),
        spec("silver steel", "hardened and tempered to dark straw, polished"),
    ),
    "flame-draws-temper": (
        spec("silver steel", "⟪hardened and tempered⟫", HOT),
        spec("silver steel", "hardened and tempered", COLD),
    ),
    "temper-does-nothing": (
        spec("mild steel", "⟪tempered to dark straw⟫"),
        spec("silver steel", "tempered to dark straw"),
    ),
    "temper-colour-wrong": (
        spec("spring steel", "⟪hardened and tempered to dark straw⟫"),
        spec("spring steel", "hardened and tempered to bright blue"),
    ),
    "hardened-too-soon": (
        spec("silver steel", "⟪hardened and tempered⟫", TOGETHER),
        spec(
            "silver steel",
            "hardened and tempered",
            TOGETHER.replace(", made: drilled", "").replace(" together", ""),
        ),
    ),
    "bends-in-the-quench": (spindle("⟪hardened and tempered⟫", 100), spindle("polished", 100)),
    "heat-not-known": (spec("oak", "⟪annealed⟫"), spec("brass", "annealed")),
    "finish-melts-solder": (
        spec("brass", "⟪powder coated, pin masked⟫", SOFT),
        spec("brass", "painted, pin masked", SOFT),
    ),
    "finish-loosens-bond": (
        spec("mild steel", "⟪heat blued, pin masked⟫", COLD),
        spec("mild steel", "chemically blacked, pin masked", COLD),
    ),
    "finish-before-joining": (
        joined("⟪painted black⟫", "silver_soldered"),
        joined("painted black", "screwed"),
    ),
    "plated-hard-steel": (
        spec("silver steel", "⟪hardened and tempered, zinc plated, bore masked⟫"),
        spec("silver steel", "hardened and tempered, zinc plated and baked, bore masked"),
    ),
    "finish-locked-in": (
        spec("mild steel", "⟪painted black⟫", COLD),
        spec("mild steel", "painted black, the pin masked", COLD),
    ),
    "finish-unknown": (spec("brass", "⟪like the old one⟫"), spec("brass", "lacquered")),
}


@pytest.mark.parametrize("code", sorted(CASES))
def test_found_at_its_place_and_not_once_mended(code: str, compile_text: Compile) -> None:
    text, place = marked(CASES[code][0])
    found = [one for one in compile_text(text).findings if one.code.name == code]
    assert [(one.span.line, one.span.column, one.span.end_column) for one in found] == [place]
    mended = {one.code.name for one in compile_text(CASES[code][1]).findings}
    assert not mended & OWN


def test_every_code_has_a_case() -> None:
    assert set(CASES) == OWN


@pytest.mark.parametrize(
    ("words", "names"),
    [
        ("polished and lacquered", ["polish", "lacquer"]),
        ("painted stone grey, bore masked", ["paint"]),
        ("oil blacked", ["oil black"]),  # not chemical black as well
        ("hard anodised", ["anodise"]),
        ("two coats of oil", ["oil"]),
        ("hardened and tempered to dark straw", ["heat treatment"]),
        ("", []),
        ("x" * 4000, []),
    ],
)
def test_the_longest_phrase_counts(words: str, names: list[str]) -> None:
    assert [one.name for one in processes_in(words)] == names


def test_no_phrase_means_two_processes() -> None:
    phrases = [word for one in processes() for word in one.words]
    assert len(phrases) == len(set(phrases))


def test_colours_come_in_the_order_of_their_heat() -> None:
    heat = [one.celsius for one in colours()]
    assert all(cool < hot for cool, hot in pairwise(heat))
    # From memory, as handbooks print them: pale straw 230, purple about 275, blue 290 to 300 °C.
    found = {one.colour: one.celsius for one in colours()}
    assert found["pale straw"] == 230
    assert found["light purple"] < 275 < found["dark purple"]
    assert (found["dark blue"], found["bright blue"]) == (290, 300)


def test_a_colour_is_read_from_the_finish() -> None:
    colour = colour_in("hardened, and tempered to  Dark Straw")
    assert colour is not None
    assert colour.celsius == 240


def test_heats_are_ranges_and_in_their_order() -> None:
    for one in heats():
        for low, high in filter(None, (one.harden, one.case, one.anneal, one.stress)):
            assert 100 < low < high < 1200, one.name
        if one.anneal and one.stress:
            assert one.stress[1] <= one.anneal[0], one.name
        assert one.hardens == (one.harden is not None)
        assert not one.harden or one.quench


def test_silver_steel_and_aluminium() -> None:
    # Silver steel 770 to 790 °C in water: makers' sheets for BS 1407, from memory. Aluminium
    # melts at 660 °C (pure) and its alloys from about 500: softening stays far below.
    rows = {one.name: one for one in heats()}
    assert rows["silver steel"].harden == (770, 790)
    soft = rows["aluminium"].anneal
    assert soft is not None
    assert soft[1] < 450


def test_heats_name_materials_and_groups_that_are_there() -> None:
    ids = set(records().by_id)
    groups = {one.group for one in records().by_id.values()}
    for one in heats():
        assert set(one.ids) | set(one.skips) <= ids
        assert set(one.groups) <= groups
    for process in processes():
        assert set(process.on) <= groups
    (anodise,) = [one for one in processes() if one.name == "anodise"]
    assert anodise.on == ("aluminium",)


def sheets(outcome: Outcome) -> list[Section]:
    assert isinstance(outcome.binder, Binder)
    found = [one for one in outcome.binder.sections if one.id == "finishing"]
    return [sheet for section in found for sheet in section.sections]


def lines(sheet: Section) -> list[str]:
    lists = [one for one in sheet.blocks if isinstance(one, Checklist)]
    return [text_of(tick.text) for one in lists for tick in one.checks]


def test_fits_and_threads_of_the_part_are_kept_bare(compile_text: Compile) -> None:
    pin = (
        "  pin: {material: silver steel, stock: round bar, turned:"
        " [{name: rod, diameter: 6 mm, length: 30 mm}]}\n"
        "joints:\n  arm on pin: {swivels: [arm.bore, pin.rod]}\n"
    )
    paint, _heat = sheets(compile_text(spec("mild steel", "painted", pin), Phase.COMPOSE))
    # H8/f7 at 6 mm: 10 µm at the least (ISO 286-2).
    assert "arm, bore: fit of 'arm on pin', least clearance 0.010 mm" in lines(paint)
    assert "arm, screw: thread M3" in lines(paint)


def test_hardening_is_told_with_its_heat_and_colour(compile_text: Compile) -> None:
    text = spec("silver steel", "hardened and tempered to dark straw")
    (heat,) = sheets(compile_text(text, Phase.COMPOSE))
    words = " ".join(lines(heat))
    assert "770 to 790 °C" in words
    assert "dark straw (240 °C)" in words


@pytest.mark.parametrize(
    ("material", "finish", "told"),
    [
        ("silver steel", "hardened and tempered to dark straw", True),
        ("mild steel", "painted", False),
    ],
)
def test_colours_have_their_source_where_one_is_told(
    material: str, finish: str, compile_text: Compile, *, told: bool
) -> None:
    *_, heat = sheets(compile_text(spec(material, finish), Phase.COMPOSE))
    words = " ".join(text_of(one.text) for one in heat.blocks if isinstance(one, Paragraph))
    assert "Heats:" in words
    assert ("Colours:" in words) is told


@pytest.mark.parametrize("finish", ['"<b>painted</b> {x}"', '"☃ \u202e"', '"hardened " '])
def test_strange_words_make_no_traceback(finish: str, compile_text: Compile) -> None:
    outcome = compile_text(spec("silver steel", finish), Phase.COMPOSE)
    assert "plugin-broken" not in {one.code.name for one in outcome.findings}


@pytest.mark.parametrize(("joined", "waits"), [("glued", True), ("riveted", False)])
def test_what_is_glued_cures_before_it_is_painted(
    compile_text: Callable[..., Outcome], joined: str, *, waits: bool
) -> None:
    """24 h for glue, common practice, no source; a rivet holds at once."""
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
        "  side: {material: oak, board: {length: 30 mm, width: 10 mm, thickness: 4 mm}}\n"
        "fabrications:\n"
        f"  frame: {{pieces: [2 off side], joined: {joined}, finish: painted grey}}\n"
    )
    outcome = compile_text(text, Phase.COMPOSE)
    assert isinstance(outcome.binder, Binder)
    (page,) = [one for one in outcome.binder.sections if one.id == "finishing"]
    facts = [one for each in page.sections for one in each.blocks if isinstance(one, Facts)]
    told = {name: text_of(words) for one in facts for name, words in one.pairs}
    assert ("Cured first" in told) is waits
    assert not waits or "24 h" in told["Cured first"]


def test_the_seat_of_what_is_screwed_on_is_kept_bare(compile_text: Compile) -> None:
    cap = (
        "  cap: {material: brass, disc: {diameter: 12 mm, thickness: 2 mm}}\n"
        "joints:\n  cap on arm:"
        " {screwed: [cap.underside, arm.top], fastener: M3 cheese head screw}\n"
    )
    paint, _heat = sheets(compile_text(spec("mild steel", "painted", cap), Phase.COMPOSE))
    assert any("against the cap" in one for one in lines(paint))


@pytest.mark.parametrize("finish", ["painted", "stress relieved"])
def test_stress_is_eased_where_a_finish_asks_for_it_and_never_in_a_soldered_joint(
    finish: str, compile_text: Compile
) -> None:
    """Soft solder is liquid at 183 to 240 °C, silver solder at 610 to 740 °C (ISO 9453, ISO
    17672): the 550 to 650 °C of mild steel, an hour long, melts the one and lets the other go."""
    *_, heat = sheets(compile_text(spec("mild steel", finish), Phase.COMPOSE))
    words = " ".join(text_of(one.text) for one in heat.blocks if isinstance(one, Paragraph))
    (table,) = [one for one in heat.blocks if isinstance(one, Table)]
    heads = [one.title for one in table.columns]
    is_eased = finish == "stress relieved"
    assert ("Ease stress at" in heads) is is_eased
    assert ("Ease the stress of the arm" in words) is is_eased
    assert ("never after" in words) is is_eased
    assert "joined by heat" not in words
