"""The room for the picture of an assembly, against the sheet that is printed under it."""

from __future__ import annotations

from math import ceil
from pathlib import Path

import pytest

from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder.pages import Binder, Checklist, Notice, Section, Table, text_of
from binder_plugins.arrangement.page import owners_of
from binder_plugins.arrangement.page_room import picture_height

SPECS = Path(__file__).parents[3] / "specs"
# The printed part of an A4 page with the margins of the paper's style (ISO 216: 297 high).
PAGE = 297.0 - 17.0 - 15.0
# Measured on the printed page: heading of the chapter, of sheet and table; a row; a line of
# each size; the edges of a step and of a notice.
CHAPTER, HEADS, ROW, LINE, SMALL_LINE, EDGES, NOTICE = 14.0, 18.0, 6.2, 5.0, 4.5, 2.0, 10.0
LETTERS, SMALL_LETTERS = 88, 98


def tall(section: Section) -> float:
    """How much of a page all blocks of an assembly's sheet take, its picture left out."""
    high = HEADS
    for block in section.blocks:
        if isinstance(block, Table):
            high += ROW * len(block.rows)
        elif isinstance(block, Checklist):
            for check in block.checks:
                high += EDGES + LINE * ceil(len(text_of(check.text)) / LETTERS)
                under = (ceil(len(text_of(line)) / SMALL_LETTERS) for line in check.detail)
                high += SMALL_LINE * sum(under)
        elif isinstance(block, Notice):
            high += NOTICE + LINE * ceil(len(text_of(block.text)) / LETTERS)
    return high


@pytest.mark.parametrize("name", ["tilt-hammer"])
def test_a_picture_leaves_the_steps_their_room(name: str, host: Host) -> None:
    outcome = compiled(Job(SPECS / name / f"{name}.yaml"), host, Phase.COMPOSE)
    assert isinstance(outcome.binder, Binder)
    assert outcome.design is not None
    (chapter,) = (one for one in outcome.binder.sections if one.id == "assembly")
    seen = 0
    for sheet in chapter.sections:
        assembly = sheet.id.removeprefix("assembly-")
        owners = owners_of(assembly, outcome.design)
        high = picture_height(assembly, owners, outcome.design)
        taken = tall(sheet) + (CHAPTER if sheet is chapter.sections[0] else 0.0)
        if taken + 95.0 < PAGE:
            seen += 1
            assert high + taken < PAGE + LINE, assembly
    assert seen
