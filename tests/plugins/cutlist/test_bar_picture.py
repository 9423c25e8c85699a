"""Bars in the cut list: every piece has its name or mark, and is said to be cut as it is.

What a drawing asks of its words is common practice, no source: none without its piece, none over
another.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

import pytest

from binder.api import (
    BarPlan,
    Checklist,
    Drawing,
    DrawnBox,
    DrawnLabel,
    Picture,
    Reckoned,
    Table,
    text_width,
)
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder.pages import Section, text_of

SPECS = Path(__file__).parents[3] / "specs"
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
# Discs of one bar, parted off one after another: each too thin for a word in it.
DISCS = HEAD + "".join(
    f"  disc_{n}: {{material: brass, stock: 10 mm round bar, quantity: {count},"
    f" turned: [{{diameter: 10 mm, length: {1 + n / 10:g} mm}}]}}\n"
    for n, count in enumerate((1, 6, 1, 2), 1)
)


def page(outcome: Outcome) -> Section:
    assert outcome.binder is not None, outcome.findings
    (found,) = (one for one in outcome.binder.sections if one.id == "cut-list")
    return found


def drawings(section: Section) -> list[Drawing]:
    return [block.drawing for block in section.blocks if isinstance(block, Picture)]


def ends(label: DrawnLabel) -> tuple[float, float]:
    half = text_width(label.text, label.height) / 2
    return label.x - half, label.x + half


def assert_each_is_named(drawing: Drawing) -> None:
    """A label in every piece, or one under it; none runs over another or off the drawing."""
    _, *pieces = (one for one in drawing.shapes if isinstance(one, DrawnBox))
    labels = [one for one in drawing.shapes if isinstance(one, DrawnLabel)]
    under = [one for one in labels if one.y > 9.0 + 1.0]
    counted = sum(int(found[1]) if (found := re.search(r"\((\d+) off\)", one.text)) else 1
                  for one in under)  # fmt: skip
    inside = [one for one in labels if one not in under]
    named = [
        piece
        for piece in pieces
        if any(piece.x < ends(one)[0] and ends(one)[1] < piece.x + piece.width for one in inside)
    ]
    assert len(named) == len(inside)
    assert len(named) + counted == len(pieces)
    for row in (inside, under):
        at = sorted(ends(one) for one in row)
        assert all(one[1] < other[0] for one, other in pairwise(at))
        assert all(left >= -0.01 and right <= drawing.width + 0.01 for left, right in at)
    assert all(one.y < drawing.height for one in labels)


@pytest.fixture(scope="module")
def jack(host: Host) -> Outcome:
    return compiled(Job(SPECS / "screw-jack" / "screw-jack.yaml", None), host, Phase.COMPOSE)


def test_every_piece_of_a_models_bars_has_its_name(jack: Outcome) -> None:
    for drawing in drawings(page(jack)):
        assert_each_is_named(drawing)


def test_thin_pieces_have_their_marks_under_the_bar(compile_text: Callable[..., Outcome]) -> None:
    section = page(compile_text(DISCS, Phase.COMPOSE))
    for drawing in drawings(section):
        assert_each_is_named(drawing)
    shown = {one.text for made in drawings(section) for one in made.shapes
             if isinstance(one, DrawnLabel)}  # fmt: skip
    assert "2 (6 off)" in shown


def test_a_tool_that_is_made_has_a_letter_and_its_key(jack: Outcome) -> None:
    section = page(jack)
    ticks = [text_of(one.text) for block in section.blocks if isinstance(block, Checklist)
             for one in block.checks]  # fmt: skip
    shown = [one.text.split()[0] for made in drawings(section) for one in made.shapes
             if isinstance(one, DrawnLabel)]  # fmt: skip
    lettered = [found[1] for one in ticks if (found := re.search(r"off piece (\w+), ", one))]
    assert lettered
    assert sorted(lettered) == sorted(one for one in shown if not one[0].isdigit())


def test_what_is_parted_off_is_not_to_be_sawn(jack: Outcome) -> None:
    assert jack.design is not None
    plans = jack.design.facts.all(BarPlan)
    (table, *_) = (block for block in page(jack).blocks if isinstance(block, Table))
    said = [run.why for row in table.rows for run in row[3] if isinstance(run, Reckoned)]
    for plan, words in zip(plans, said, strict=True):
        sawn = sum(one.count for one in plan.pieces if one.verb == "saw")
        parted = sum(one.count for one in plan.pieces if one.verb == "part off")
        assert bool(sawn) == bool(re.search(rf"\b{sawn} pieces? to saw", words))
        assert bool(parted) == bool(re.search(rf"\b{parted} (pieces? )?parted off", words))
    assert any("parted off" in words for words in said)
