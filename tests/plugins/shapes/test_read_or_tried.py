"""What a leaf leaves to be filled in: nothing is read of an inside thread, so it is ticked.

An inside thread is accepted by what enters it, a limit plug gauge or a screw: ISO 1502.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from binder.api import Blank, Table, TickBox
from binder_plugins.shapes.leaves import part_leaves

if TYPE_CHECKING:
    from collections.abc import Callable

    from binder.api import Text
    from binder.compiler import Outcome

SPEC = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base:
    material: mild steel
    stock: 25 mm x 10 mm flat bar
    cut: 60 mm
    features:
      lone:  {tapped: M4, on: top, depth: through, at: 10 mm from left}
      plain: {drilled: 5 mm, on: top, depth: through, at: 50 mm from left}
      nut:   {tapped: to suit, on: top, depth: through, at: 30 mm from left}
  stud:
    material: mild steel
    stock: 6 mm drawn rod
    turned: [{name: rod, diameter: 6 mm, length: 30 mm}]
    features:
      end:  {screwed: M6, on: rod, length: 10 mm}
      ring: {grooved: 0.5 mm, on: rod, at: 5 mm from left, dummy: true}
      wide: {grooved: 2 mm, on: rod, at: 12 mm from left}
  lid:
    material: mild steel
    stock: 25 mm x 3 mm flat bar
    cut: 60 mm
joints:
  stud in base: {threaded: [stud.end, base.nut], fixed: true}
  lid on base:
    screwed: [lid.underside, base.top]
    fastener: M3 socket cap screw
    pattern: 2 off, 12 mm apart
"""


@pytest.fixture
def rows(compile_text: Callable[..., Outcome]) -> dict[str, Text]:
    """What is to be filled in for each place of the base and the stud, by what is cut there."""
    design = compile_text(SPEC).design
    assert design is not None
    (parts,) = part_leaves(design, ())
    tables = [one for leaf in parts.sections for one in leaf.blocks if isinstance(one, Table)]
    cut = [one for one in tables if one.columns[0].title == "Feature"]
    return {str(row[1][0]): row[4] for table in cut for row in table.rows}


def of(rows: dict[str, Text], begins: str) -> Text:
    """The last cell of the row whose size begins so."""
    return next(cell for what, cell in rows.items() if what.startswith(begins))


@pytest.mark.parametrize(
    ("begins", "words"),
    [
        ("tap M4", "M4 screw or gauge enters"),
        ("tap M6", "M6 screw or gauge enters"),
        ("tap M3", "M3 screw or gauge enters each"),
    ],
)
def test_a_tapped_hole_is_ticked_for_its_gauge(
    begins: str, words: str, rows: dict[str, Text]
) -> None:
    box, said = of(rows, begins)
    assert isinstance(box, TickBox)
    assert said == words


@pytest.mark.parametrize("begins", ["drill ⌀5 mm", "thread M6"])
def test_what_is_read_keeps_its_blank(begins: str, rows: dict[str, Text]) -> None:
    (blank,) = of(rows, begins)
    assert isinstance(blank, Blank)


def test_every_tick_has_a_key_of_its_own(rows: dict[str, Text]) -> None:
    keys = [run.key for cell in rows.values() for run in cell if isinstance(run, TickBox)]
    assert len(keys) == len(set(keys)) == 4  # three threads and the narrow groove


@pytest.mark.parametrize(("width", "is_ticked"), [("width 0.5 mm", True), ("width 2 mm", False)])
def test_a_groove_that_no_jaw_enters_is_ticked(
    rows: dict[str, Text], width: str, is_ticked: bool
) -> None:
    """From memory: the jaws and the rod of a caliper do not enter half a millimetre."""
    (cell,) = (cell for what, cell in rows.items() if width in what)
    assert isinstance(cell[0], TickBox) == is_ticked
