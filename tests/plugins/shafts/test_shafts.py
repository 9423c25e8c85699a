"""Shafts told as one list: what stops them, what play is left, what is found.

The sums are lengths added along an axis, done by hand beside each case; common practice, no
source.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from pathlib import Path

import pytest

from binder.api import BuildSequence, DrawnBox, Located, Picture, ShaftFact, Table
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder.pages import Facts, Place, text_of
from binder_drafting import Along
from binder_plugins.drawings.sizes import sizes_of
from binder_plugins.operations.facts import Route
from binder_plugins.shafts.page import shaft_pages
from binder_solid.facts import FormFact

PARTS = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle:
    material: silver steel
    stock: drawn rod
    turned:
      - {name: journal, diameter: 4 mm, length: 40 mm}
  cheek:
    material: brass
    plate: {length: 30 mm, width: 20 mm, thickness: 3 mm}
    features: {bore: {reamed: 4 mm, on: top, depth: through}}
  drum:
    material: brass
    turned: [{name: barrel, diameter: 10 mm, length: 19.8 mm}]
    features: {bore: {reamed: 4 mm, on: barrel, depth: through}}
  washer:
    material: bronze
    disc: {diameter: 8 mm, thickness: 1 mm}
    features: {bore: {drilled: 4.1 mm, depth: through}}
bought:
  collar: {what: steel collar, sizes: {bore: 4 mm, length: 5 mm}}
  ring: {what: a ring of felt}
joints:
  axle in cheeks: {runs_in: [axle.journal, cheek.bore]}
  drum on axle: {retained: [drum.bore, axle.journal]}
"""
Compile = Callable[..., Outcome]


def shaft(line: str) -> str:
    """The spec with one shaft."""
    return f"{PARTS}shafts:\n  axle: {line}\n"


def of(compile_text: Compile, line: str) -> ShaftFact:
    """The fact of the one shaft."""
    design = compile_text(shaft(line)).design
    assert design is not None
    (fact,) = design.facts.all(ShaftFact)
    return fact


def codes_of(compile_text: Compile, line: str) -> set[str]:
    """The codes of this plugin that are found."""
    own = {
        "shaft-unknown",
        "no-end-float",
        "end-float-off",
        "not-located",
        "located-twice",
        "cannot-be-assembled",
        "shaft-gap-missing",
        "nothing-carries-shaft",
    }
    return {one.code.name for one in compile_text(shaft(line)).findings} & own


INSIDE = "[cheek.bore, drum, washer, cheek.bore]"


def test_what_fills_the_gap_locates_the_shaft(compile_text: Compile) -> None:
    fact = of(compile_text, f"{{along: {INSIDE}, apart: 21 mm}}")
    assert fact.located is Located.INSIDE
    assert fact.inside == Fraction("20.8")  # 19.8 + 1
    assert fact.play == Fraction("0.2")  # 21 - 20.8
    assert not codes_of(compile_text, f"{{along: {INSIDE}, apart: 21 mm}}")


def test_collars_outside_are_set_apart_by_span_and_float(compile_text: Compile) -> None:
    line = "{along: [collar, cheek.bore, drum, cheek.bore, washer, collar], apart: 30 mm}"
    fact = of(compile_text, line)
    assert fact.located is Located.OUTSIDE
    assert fact.span == 30 + 3 + 3 + 1  # gap, both cheeks, the loose washer
    assert not codes_of(compile_text, line)


def test_a_collar_and_a_hub_at_one_bearing_locate_it_there(compile_text: Compile) -> None:
    line = "{along: [collar, cheek.bore, drum, cheek.bore], apart: 30 mm}"
    fact = of(compile_text, line)
    assert fact.located is Located.ONE
    assert fact.span == 3
    assert not codes_of(compile_text, line)


@pytest.mark.parametrize(
    ("line", "code"),
    [
        (f"{{along: {INSIDE}, apart: 20.8 mm}}", "no-end-float"),
        (f"{{along: {INSIDE}, apart: 20.85 mm}}", "end-float-off"),
        (f"{{along: {INSIDE}, apart: 21 mm, end_float: 0.3 mm to 0.4 mm}}", "end-float-off"),
        (f"{{along: {INSIDE}}}", "shaft-gap-missing"),
        ("{along: [cheek.bore, drum, ring, cheek.bore], apart: 21 mm}", "shaft-gap-missing"),
        ("{along: [cheek.bore, washer, cheek.bore], apart: 21 mm}", "not-located"),
        ("{along: [collar, cheek.bore, washer, cheek.bore], apart: 21 mm}", "not-located"),
        (
            "{along: [collar, cheek.bore, drum, washer, cheek.bore, collar], apart: 21 mm}",
            "located-twice",
        ),
        ("{along: [drum]}", "nothing-carries-shaft"),
        ("{along: [cheek.bore, drumm, cheek.bore], apart: 21 mm}", "shaft-unknown"),
        (f"{{along: {INSIDE}, apart: 21 mm, to_suit: collar}}", "shaft-unknown"),
    ],
)
def test_what_is_wrong_is_found(compile_text: Compile, line: str, code: str) -> None:
    assert codes_of(compile_text, line) == {code}


def test_a_shaft_that_is_no_part(compile_text: Compile) -> None:
    outcome = compile_text(shaft("{along: [drum]}").replace("  axle: {along", "  axel: {along"))
    (finding,) = (one for one in outcome.findings if one.code.name == "shaft-unknown")
    assert finding.help == "did you mean 'axle'?"


WAIST = "      - {name: waist, diameter: 3 mm, length: 10 mm}\n"
FAR = "      - {name: far, diameter: 4 mm, length: 10 mm}\n"


def test_a_bore_between_two_thicker_steps_cannot_be_put_on(compile_text: Compile) -> None:
    journal = "      - {name: journal, diameter: 4 mm, length: 40 mm}\n"
    spec = PARTS.replace(journal, journal + WAIST + FAR)
    spec = spec.replace("drum.bore, axle.journal", "drum.bore, axle.waist")
    spec = spec.replace(
        "features: {bore: {reamed: 4 mm, on: barrel", "features: {bore: {reamed: 3 mm, on: barrel"
    )
    found = [one.code.name for one in compile_text(spec).findings]
    assert "cannot-be-assembled" in found
    open_end = spec.replace(FAR, "")
    assert "cannot-be-assembled" not in [one.code.name for one in compile_text(open_end).findings]


# Geometry: a hole of 1 through both walls of a drum meets the axle that is fixed in its bore.
@pytest.mark.parametrize(
    ("tie", "said"),
    [("across: barrel, depth: through", True), ("across: barrel, depth: 2 mm", False)],
)
def test_a_hole_across_a_filled_bore_is_stopped(
    tie: str, said: bool, compile_text: Compile
) -> None:
    bore = "bore: {reamed: 4 mm, on: barrel, depth: through}"
    text = PARTS.replace(bore, f"{bore}, tie: {{drilled: 1 mm, {tie}}}")
    found = [one for one in compile_text(text).findings if one.code.name == "hole-stopped-by-shaft"]
    assert bool(found) == said
    assert all(one.span.line == text[: text.index("tie:")].count("\n") + 1 for one in found)


def test_the_piece_made_to_suit_has_its_sum_on_the_sheet(compile_text: Compile) -> None:
    line = f"{{along: {INSIDE}, apart: 21 mm, to_suit: washer}}"
    binder = compile_text(shaft(line), Phase.COMPOSE).binder
    assert binder is not None
    (section,) = (one for one in binder.sections if one.id == "shafts")
    assert section.place is Place.JOINTS
    facts = section.sections[0].blocks[-1]
    assert isinstance(facts, Facts)
    words = {label: text_of(text) for label, text in facts.pairs}
    assert words["Made to suit"].endswith("0.15 mm = length of the washer")
    assert words["End float as drawn"] == "0.2 mm"


def test_the_piece_made_to_suit_is_made_last_of_its_row(compile_text: Compile) -> None:
    # The washer is written first in this text: only the row puts it behind the others.
    washer = PARTS[PARTS.index("  washer:") : PARTS.index("bought:")]
    text = shaft(f"{{along: {INSIDE}, apart: 21 mm, to_suit: washer}}")
    text = text.replace(washer, "").replace("parts:\n", f"parts:\n{washer}", 1)
    design = compile_text(text).design
    assert design is not None
    sequence = design.facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    assert order.index("make washer") > max(order.index("make drum"), order.index("make cheek"))


# The hangers stand 40 mm apart and are 12 mm long, from 28 to 92 mm of the shaft as it is set: on a
# journal from 28 to 92 both lie wholly, from 30 to 90 each stands out by 2 (sums of lengths).
@pytest.mark.parametrize(("seat", "journal", "is_beside"), [(28, 64, False), (30, 60, True)])
def test_a_bearing_lies_wholly_on_its_journal(
    seat: int, journal: int, is_beside: bool, host: Host, tmp_path: Path
) -> None:
    spec = Path(__file__).parents[3] / "specs" / "tilt-hammer"
    for file in spec.glob("*.yaml"):
        text = file.read_text(encoding="utf-8")
        text = text.replace("diameter: shaft, length: 28 mm", f"diameter: shaft, length: {seat} mm")
        long = f"diameter: shaft, length: {journal} mm"
        text = text.replace("diameter: shaft, length: 64 mm", long)
        (tmp_path / file.name).write_text(text, encoding="utf-8")
    findings = compiled(Job(tmp_path / "tilt-hammer.yaml"), host, Phase.CHECK).findings
    found = [one for one in findings if one.code.name == "bearing-beside-journal"]
    assert bool(found) is is_beside
    assert all("stands 2 mm beside the journal" in one.message for one in found)


# The wheel stops the shaft from outside: it stands where the hanger ends, at 92, with half of the
# float of 0.15 between them. A seat that begins at 93 leaves 0.92 of it on the rod as bought.
@pytest.mark.parametrize(
    ("before", "journal", "seat", "told"),
    [(28, 64, 13, ""), (27, 66, 12, "0.92 mm"), (26, 68, 11, "1.92 mm")],
)
def test_a_hub_lies_wholly_on_the_seat_that_is_made_to_it(
    before: int, journal: int, seat: int, told: str, host: Host, tmp_path: Path
) -> None:
    spec = Path(__file__).parents[3] / "specs" / "tilt-hammer"
    for file in spec.glob("*.yaml"):
        text = file.read_text(encoding="utf-8")
        for old, new in ((28, before), (64, journal), (13, seat)):
            text = text.replace(f"shaft, length: {old} mm", f"shaft, length: {new} mm")
        (tmp_path / file.name).write_text(text, encoding="utf-8")
    findings = compiled(Job(tmp_path / "tilt-hammer.yaml"), host, Phase.CHECK).findings
    found = [one for one in findings if one.code.name == "hub-beside-seat"]
    assert bool(found) is bool(told)
    assert all(f"stands {told} beside the gear seat" in one.message for one in found)
    assert all(one.span.line and one.help for one in found)


def test_a_clip_is_drawn_as_the_thin_ring_that_it_is(host: Host) -> None:
    """DIN 471: a ring for 4 mm is 0.4 mm thick, a tenth of the sheave of 4 mm beside it."""
    spec = Path(__file__).parents[3] / "specs" / "wharf-crane" / "wharf-crane.yaml"
    design = compiled(Job(spec), host, Phase.CHECK).design
    assert design is not None
    (section,) = shaft_pages(design, ())
    (sheet,) = [one for one in section.sections if one.id == "shaft-head_pin"]
    picture, rows, *_ = sheet.blocks
    assert isinstance(picture, Picture)
    assert isinstance(rows, Table)
    boxes = [one for one in picture.drawing.shapes if isinstance(one, DrawnBox)][1:]
    clip, _, _, sheave, *_, other = boxes
    assert clip.width == pytest.approx(sheave.width / 10)
    assert other.width == pytest.approx(clip.width)
    assert [text_of(row[3]) for row in rows.rows][::6] == ["0.4 mm", "0.4 mm"]


def test_the_walls_that_clips_bear_on_hold_the_float_however_wide_the_grooves(host: Host) -> None:
    """14.438 between the clips, two rings of 0.4 (DIN 471), float 0.1 to 0.2: by hand.

    The walls stand 0.95 - 0.5 / 2 = 0.7 from either end of the pin of 16.8: 15.4 apart as drawn,
    and no groove of 0.64 (H13) moves them, as its width grows inwards.
    """
    spec = Path(__file__).parents[3] / "specs" / "wharf-crane" / "wharf-crane.yaml"
    design = compiled(Job(spec), host, Phase.CHECK).design
    assert design is not None
    (section,) = shaft_pages(design, ())
    (sheet,) = [one for one in section.sections if one.id == "shaft-head_pin"]
    facts = next(one for one in sheet.blocks if isinstance(one, Facts))
    told = {name: text_of(text) for name, text in facts.pairs}
    walls = told["Outer walls of the grooves apart"]
    assert walls.startswith("15.338 mm to 15.438 mm, 15.4 mm as drawn")
    leaf = {act.what for route in design.facts.all(Route) if route.subject == "head_pin"
            for act in route.acts if act.act == "groove"}  # fmt: skip
    assert all("its outer wall 0.7 mm from this end" in what for what in leaf)
    assert leaf
    form = design.facts.about(FormFact, "head_pin")
    assert form is not None
    assert "0.7" in [
        one.text for one in sizes_of(form, ("front",), design) if isinstance(one, Along)
    ]
