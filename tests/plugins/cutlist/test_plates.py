"""Blanks of plate as they are sawn, and the strip that they come out of; in mm.

A blank is sawn 1 mm over and a disc 1.5 mm over, and a saw takes 2 mm between two: common
practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

from binder.api import Table
from binder.compiler import Outcome, Phase
from binder.pages import Section, text_of

TEXT = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  cheek:
    material: brass
    quantity: 2
    stock: 3 mm plate
    plate: {length: 60 mm, width: 40 mm, thickness: 3 mm}
    features: {eye: {drilled: 3 mm, depth: through}}
  wheel:
    material: brass
    stock: 3 mm plate
    disc: {diameter: 28 mm, thickness: 3 mm}
    features: {bore: {reamed: 4 mm, depth: through}}
"""


def section(compile_text: Callable[..., Outcome]) -> Section:
    outcome = compile_text(TEXT, Phase.COMPOSE)
    assert outcome.binder is not None
    (found,) = (one for one in outcome.binder.sections if one.id == "cut-list")
    return found


def rows(compile_text: Callable[..., Outcome]) -> list[list[str]]:
    tables = (block for block in section(compile_text).blocks if isinstance(block, Table))
    return [[text_of(cell) for cell in row] for table in tables for row in table.rows]


def test_the_cut_list_has_the_size_that_is_sawn(compile_text: Callable[..., Outcome]) -> None:
    told = {row[0].split()[-1]: row[3:] for row in rows(compile_text) if len(row) == 5}
    assert told["cheek"] == ["61 mm × 41 mm", "60 mm × 40 mm"]
    # 13 mm at either end are left to hold it by (`operations/test_disc_room`).
    assert told["wheel"][0] == "⌀29.5 mm, held by the rest of a piece 55.5 mm × 29.5 mm"


def test_plate_is_bought_too(compile_text: Callable[..., Outcome]) -> None:
    (strip,) = (row[2] for row in rows(compile_text) if len(row) == 3)
    # 2 × (41 + 2) + 29.5 + 2 along it, and as wide as the longest blank: across it there are
    # 61 − 29.5 mm to hold the disc by.
    assert strip.startswith("117.5 mm × 61 mm")


def test_the_strip_of_a_disc_has_room_to_hold_it(compile_text: Callable[..., Outcome]) -> None:
    """29.5 for the disc with 2 for the saw, and 29.5 + 2 × 13 across."""
    alone = TEXT[: TEXT.index("  cheek")] + TEXT[TEXT.index("  wheel") :]
    outcome = compile_text(alone, Phase.COMPOSE)
    assert outcome.binder is not None
    found = next(one for one in outcome.binder.sections if one.id == "cut-list")
    tables = (block for block in found.blocks if isinstance(block, Table))
    strip = next(text_of(row[2]) for table in tables for row in table.rows if len(row) == 3)
    assert strip.startswith("31.5 mm × 55.5 mm")


def test_the_cut_list_follows_on_the_lists(
    compile_text: Callable[..., Outcome],
) -> None:
    """A list before it that runs over by two lines leaves no empty page behind them."""
    assert not section(compile_text).starts_page
