"""X-Y tables: places by hand, turns of the maker's own screws, and the side that they come from."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.api import Paragraph, Table
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder.pages import Section, text_of
from tests.plugins.templates.models import COVER, FRAME, HEAD

ROOT = Path(__file__).resolve().parents[3]

PLATE = """  plate:
    material: brass
    stock: 3 mm plate
    plate: {length: 60 mm, width: 40 mm, thickness: 3 mm}
    features:
      holes: {drilled: 4 mm, depth: through, off: 4, pattern: "at the corners, 8 mm in"}
      eye: {drilled: 3.3 mm, depth: through, at: "25 mm from left, 7.25 mm from front"}
"""


def section_of(outcome: Outcome, part: str) -> Section:
    assert outcome.binder is not None, outcome.findings
    (templates,) = (one for one in outcome.binder.sections if one.id == "templates")
    (tables,) = templates.sections
    (found,) = (one for one in tables.sections if one.id.startswith(f"x-y-{part}-"))
    return found


def rows_of(section: Section) -> list[list[str]]:
    (table,) = (block for block in section.blocks if isinstance(block, Table))
    return [[text_of(cell) for cell in row] for row in table.rows]


def test_a_plate_by_hand(compile_text: Callable[..., Outcome]) -> None:
    # The built-in mill has screws of 2 mm and lines of 0.02 mm: own arithmetic.
    section = section_of(compile_text(HEAD + PLATE, Phase.COMPOSE), "plate")
    assert [[row[0], *row[2:]] for row in rows_of(section)] == [
        ["1", "8 mm", "8 mm", "4 + 0", "4 + 0", ""],
        ["2", "8 mm", "32 mm", "4 + 0", "16 + 0", ""],
        ["3", "52 mm", "8 mm", "26 + 0", "4 + 0", "Y"],
        ["4", "52 mm", "32 mm", "26 + 0", "16 + 0", ""],
        ["5", "25 mm", "7.25 mm", "12 + 50", "3 + 62.5", "X and Y"],
    ]
    (table,) = (block for block in section.blocks if isinstance(block, Table))
    assert table.caption == (
        "From the lower left corner. On the mill-drill: 2 mm a turn, 0.02 mm a line"
    )


def test_an_inch_mill_winds_in_its_own_turns(host: Host, tmp_path: Path) -> None:
    # 52 mm is 2.04724 in; of 0.1 in turns and thou lines that is 20 + 47.24, read as 47.
    spec = tmp_path / "trial.yaml"
    spec.write_text(HEAD + PLATE, encoding="utf-8")
    job = Job(spec, ROOT / "specs" / "workshops" / "inch.yaml")
    section = section_of(compiled(job, host), "plate")
    (first,) = (row for row in rows_of(section) if row[0] == "4")
    assert first[4] == "20 + 47"
    (table,) = (block for block in section.blocks if isinstance(block, Table))
    assert "0.1 in a turn, 0.001 in a line; to half a line" in table.caption


@pytest.mark.parametrize(
    ("part", "text", "words"),
    [
        # D sin(180° / 6) is half of the pitch circle (Machinery's Handbook, length of chords)
        ("cover", COVER, "6 holes evenly on ⌀48 mm: dividers at about 24 mm, hole to hole."),
        ("frame", FRAME, "6 holes evenly on ⌀80 mm: dividers at about 40 mm, hole to hole."),
    ],
)
def test_dividers_are_set_to_the_chord(
    compile_text: Callable[..., Outcome], part: str, text: str, words: str
) -> None:
    section = section_of(compile_text(HEAD + text, Phase.COMPOSE), part)
    said = [text_of(block.text) for block in section.blocks if isinstance(block, Paragraph)]
    assert said == [words]


def test_places_before_the_datum_are_wound_back(compile_text: Callable[..., Outcome]) -> None:
    section = section_of(compile_text(HEAD + COVER, Phase.COMPOSE), "cover")
    rows = rows_of(section)
    assert rows[0][2:] == ["0 mm", "0 mm", "0 + 0", "0 + 0", ""]
    assert rows[1][2:] == ["−24 mm", "0 mm", "−(12 + 0)", "0 + 0", "X"]


def test_the_leaf_of_the_part_points_at_both(compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(HEAD + PLATE, Phase.COMPOSE)
    assert outcome.binder is not None
    (parts,) = (one for one in outcome.binder.sections if one.id == "parts")
    (leaf,) = (one for one in parts.sections if one.id == "part-plate")
    said = [text_of(block.text) for block in leaf.blocks if isinstance(block, Paragraph)]
    assert "See the full-size template and the X-Y table." in said


def test_a_hole_that_gears_place_is_not_popped(compile_text: Callable[..., Outcome]) -> None:
    # Common practice, no source: a bore set in mesh is put where the cut gears run freely.
    outcome = compile_text(HEAD + MESHED, Phase.COMPOSE)
    words = {row[1] for row in rows_of(section_of(outcome, "plate"))}
    assert sum("not popped" in one for one in words) == 1
    assert len(words) == 3


MESHED = """  plate:
    material: brass
    stock: 3 mm plate
    plate: {length: 60 mm, width: 40 mm, thickness: 3 mm}
    features:
      one: {reamed: 4 mm, depth: through, at: "15 mm from left, 20 mm from front"}
      feet: {drilled: 3 mm, depth: through, off: 4, pattern: "at the corners, 5 mm in"}
      two: {reamed: 4 mm, depth: through, at: "33.1 mm from left, 20 mm from front"}
  first: {material: silver steel, turned: [{name: rod, diameter: 4 mm, length: 20 mm}]}
  second: {material: silver steel, turned: [{name: rod, diameter: 4 mm, length: 20 mm}]}
  pinion:
    material: brass
    disc: {diameter: 10 mm, thickness: 6 mm}
    features: {bore: {reamed: 4 mm, depth: through}}
  wheel:
    material: brass
    disc: {diameter: 28 mm, thickness: 6 mm}
    features: {bore: {reamed: 4 mm, depth: through}}
joints:
  a: {runs_in: [first.rod, plate.one]}
  b: {runs_in: [second.rod, plate.two]}
  c: {retained: [pinion.bore, first.rod]}
  d: {retained: [wheel.bore, second.rod]}
drive:
  gears: {meshes: [pinion, wheel], teeth: [18, 54], module: 0.5 mm, made: set in mesh}
"""
