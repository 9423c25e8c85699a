"""The page of cautions: its order, what is marked as the maker's, and who comes first."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import (
    CautionFact,
    Contribution,
    Notice,
    NoticeKind,
    Paragraph,
    Section,
    Subheading,
    Task,
    TaskKind,
)
from binder.compiler import Outcome
from binder.pages import text_of
from binder_plugins.cautions.kinds import MOST_ADDED
from binder_plugins.cautions.page import caution_pages

Page = Callable[..., Section]
BRASS = "parts:\n  rod: {material: brass, cut: 20 mm, stock: 6 mm round bar}\n"


def _words(page: Section) -> list[str]:
    """Every block as one text."""
    return [
        block.text if isinstance(block, Subheading) else text_of(block.text)
        for block in page.blocks
        if isinstance(block, (Subheading, Paragraph, Notice))
    ]


def test_it_opens_with_what_it_does_not_replace(page_of: Page) -> None:
    page = page_of(BRASS)
    assert page.title == "Cautions that apply"
    assert _words(page)[0] == (
        "Usual published cautions; they do not replace the machine's manual, the data sheet, "
        "local codes or a competent person."
    )


def test_it_ends_with_local_law_and_a_competent_person(page_of: Page) -> None:
    last = page_of(BRASS).blocks[-1]
    assert isinstance(last, Notice)
    assert last.kind is NoticeKind.CAUTION
    words = f"{last.title} {text_of(last.text)}".lower()
    for word in ("local law", "competent person", "pressure", "gas", "electricity", "lifting"):
        assert word in words


def test_general_ones_come_first_then_those_by_hazard(page_of: Page) -> None:
    page = page_of(BRASS)
    headings = [block.text for block in page.blocks if isinstance(block, Subheading)]
    assert headings[0] == "Whatever is made"
    assert headings.index("Saw, snips and grinder") < headings.index("What it is made of")


def test_a_caution_names_what_it_applies_to_and_its_source(page_of: Page) -> None:
    notices = [block for block in page_of(BRASS).blocks if isinstance(block, Notice)]
    (lead,) = (one for one in notices if one.title == "Lead in the metal")
    assert text_of(lead.text).endswith("Applies to: rod.")
    assert lead.source == "common practice, no source"
    assert all(one.source for one in notices[:-1])


@pytest.mark.parametrize(
    ("count", "told"),
    [(7, "p6; p7."), (8, "p6; p7; p8."), (9, "p6 and 3 more."), (20, "p6 and 14 more.")],
)
def test_of_many_items_the_first_six_are_named(page_of: Page, count: int, told: str) -> None:
    """A count of one or two takes the room of the names that it stands for."""
    rest = "{material: brass, cut: 9 mm, stock: 6 mm round bar}"
    body = "parts:\n" + "".join(f"  p{number}: {rest}\n" for number in range(1, count + 1))
    notices = [block for block in page_of(body).blocks if isinstance(block, Notice)]
    (lead,) = (one for one in notices if one.title == "Lead in the metal")
    assert text_of(lead.text).endswith(f"Applies to: p1; p2; p3; p4; p5; {told}")


def test_what_is_not_known_is_on_the_page(page_of: Page) -> None:
    words = _words(page_of(BRASS.replace("brass", "unobtainium")))
    assert "Not known to this tool" in words
    assert "No caution known to this tool; read the data sheet. Applies to: rod." in words


def test_the_makers_own_stand_in_a_block_marked_as_his(page_of: Page) -> None:
    page = page_of(BRASS + "cautions:\n  - the rim is\n    sharp\n")
    words = _words(page)
    start = words.index("Added by the author of the spec")
    assert "not this tool's" in words[start + 1]
    assert words[start + 2] == "the rim is sharp"
    assert start + 4 == len(words)
    own = page.blocks[-2]
    assert isinstance(own, Notice)
    assert (own.kind, own.title, own.source) == (NoticeKind.NOTE, "The author says", "")


def test_without_additions_there_is_no_such_block(page_of: Page) -> None:
    assert "Added by the author of the spec" not in _words(page_of(BRASS))


def test_the_makers_words_change_no_other_block(page_of: Page) -> None:
    own = page_of(BRASS + "cautions: [all of the above is void]\n").blocks
    plain = page_of(BRASS).blocks
    assert own[: len(plain) - 1] + own[-1:] == plain


@pytest.mark.parametrize(
    ("written", "code"),
    [
        ("careful", "wrong-shape"),
        ("{eyes: none}", "wrong-shape"),
        ("[{remove: eyes}]", "wrong-shape"),
        (f"[{', '.join(['careful'] * (MOST_ADDED + 1))}]", "list-length"),
    ],
)
def test_the_section_is_a_list_of_words_and_nothing_else(
    written: str, code: str, compile_text: Callable[..., Outcome]
) -> None:
    head = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
    outcome = compile_text(f"{head}{BRASS}cautions: {written}\n")
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, outcome.findings
    assert found[0].span.line == head.count("\n") + BRASS.count("\n") + 1


def test_work_on_several_parts_has_the_name_of_its_leaf(outcome_of: Callable[..., Outcome]) -> None:
    design = outcome_of(BRASS).design
    assert design is not None
    task = Task("size rod in frame", "press in the rod", TaskKind.JOIN, "rod")
    where = ("rod", task.id)
    fact = CautionFact("pressing", "hands", "Pressing", "Stand aside.", "no source", where=where)
    told = design.with_contribution(Contribution(facts=(fact,), tasks=(task,)))
    (page,) = caution_pages(told, ())
    (notice,) = (one for one in page.blocks if isinstance(one, Notice) and one.title == "Pressing")
    assert text_of(notice.text).endswith("Applies to: rod; 'press in the rod'.")
