"""Every part of the examples has a drawing with every size of its spec, once and legible."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from binder.api import Design
from binder.compiler import Job, compiled
from binder.host import Host
from binder.pages import Binder, Picture, Section
from binder_drafting import Request, draft
from binder_plugins.drawings.page import request_for
from binder_plugins.drawings.sizes import told_by
from binder_solid.facts import FormFact, JoinedFact, ViewsFact
from tests.drafting.proofs import struck
from tests.plugins.drawings.generated import spec

ROOT = Path(__file__).resolve().parents[3]
FORTY = "forty generated parts"
SPECS = ("screw-jack", "tilt-hammer", "wharf-crane", FORTY)
_LEAST = 2.5  # mm: the least height of letters on a drawing (ISO 3098-1)


@pytest.fixture(scope="module", params=SPECS)
def built(
    request: pytest.FixtureRequest, host: Host, tmp_path_factory: pytest.TempPathFactory
) -> tuple[Design, Binder]:
    """One example, or the generated parts, compiled whole."""
    path = ROOT / "specs" / request.param / f"{request.param}.yaml"
    if request.param == FORTY:
        path = tmp_path_factory.mktemp("forty") / "forty.yaml"
        path.write_text(spec(), encoding="utf-8")
    outcome = compiled(Job(path), host)
    assert outcome.design is not None
    assert outcome.binder is not None, [one.message for one in outcome.findings]
    return outcome.design, outcome.binder


def drawn(design: Design) -> Iterator[tuple[FormFact, Request]]:
    """All that is drawn: parts, and fabrications whose stack is told."""
    for fact in (*design.facts.all(FormFact), *design.facts.all(JoinedFact)):
        views = design.facts.about(ViewsFact, fact.subject)
        assert views is not None, fact.subject
        yield fact, request_for(fact, views, design)


def leaves(binder: Binder) -> dict[str, Section]:
    """The leaves of the parts by the part's name."""
    (parts,) = (one for one in binder.sections if one.id == "parts")
    return {one.id.removeprefix("part-"): one for one in parts.sections}


def test_every_part_has_a_drawing_on_its_leaf(built: tuple[Design, Binder]) -> None:
    design, binder = built
    for name in design.parts:
        pictures = [one for one in leaves(binder)[name].blocks if isinstance(one, Picture)]
        drawings = [one for one in pictures if one.description.startswith("drawing of")]
        told = [re.search(r"sheet (\d) of (\d)", one.description) for one in drawings]
        sheets = [one.groups() if one else ("1", "1") for one in told]
        count = len(drawings)
        assert sheets == [(str(n), str(count)) for n in range(1, count + 1)], name
        assert 1 <= count <= 2, name


def test_every_size_of_a_part_stands_on_its_drawing_once(built: tuple[Design, Binder]) -> None:
    design, _ = built
    for fact, request in drawn(design):
        sheet = draft(request)
        others = {size.id: told_by(size)[1:] for size in request.sizes}
        others |= {one.id: one.also for one in request.data}
        words = [one.id for one in sheet.placed if one.id]
        # What several features share (a length, a callout) is told once and stands for all.
        placed = [*words, *(key for one in words for key in others[one])]
        assert len(placed) == len(set(placed)), fact.subject
        told = dict(told_of(fact))
        shown = {told[one] for one in placed if one in told}
        missing = [one for one in wanted(fact) if one not in placed and told.get(one) not in shown]
        assert not missing, fact.subject
        assert not sheet.problems, (fact.subject, sheet.problems)


def test_no_line_runs_through_words(
    built: tuple[Design, Binder],
) -> None:
    design, _ = built
    wrong = {}
    for fact, request in drawn(design):
        if found := struck(draft(request)):
            wrong[fact.subject] = found
    assert not wrong


def told_of(fact: FormFact) -> list[tuple[str, object]]:
    """Each length told, by its id, with what makes two of them the same."""
    lengths = [*fact.told, *(told for one in fact.located for told in one.told)]
    return [(f"{t.id}.{t.along}", (t.along, t.start, t.end, t.text)) for t in lengths]


def wanted(fact: FormFact) -> set[str]:
    """The ids of all that is told of a form."""
    found = {key for step in fact.stretches for key in step.ids}
    found |= {f"{one.id}.{one.along}" for one in fact.told if one.id not in found}
    for one in fact.located:
        found |= set(one.ids) if one.note else set()
        found |= {f"{told.id}.{told.along}" for told in one.told}
    return found | {key for one in fact.data for key in one.ids}


def test_no_two_labels_overlap_and_none_leaves_the_sheet(built: tuple[Design, Binder]) -> None:
    design, _ = built
    for fact, request in drawn(design):
        sheet = draft(request)
        boxes = [one.box for one in sheet.placed]
        for number, one in enumerate(boxes):
            assert one.left >= 0, fact.subject
            assert one.top >= 0, fact.subject
            assert one.right <= sheet.drawing.width, fact.subject
            assert one.bottom <= sheet.drawing.height, fact.subject
            for other in boxes[number + 1 :]:
                apart = (
                    one.right <= other.left + 1e-6
                    or other.right <= one.left + 1e-6
                    or one.bottom <= other.top + 1e-6
                    or other.bottom <= one.top + 1e-6
                )
                assert apart, (fact.subject, one, other)


def test_no_letter_is_smaller_than_can_be_read(built: tuple[Design, Binder]) -> None:
    _, binder = built
    for leaf in leaves(binder).values():
        for block in leaf.blocks:
            if isinstance(block, Picture):
                heights = [getattr(shape, "height", _LEAST) for shape in block.drawing.shapes]
                labels = [getattr(shape, "text", "") for shape in block.drawing.shapes]
                assert all(
                    height >= _LEAST for height, text in zip(heights, labels, strict=True) if text
                )
