"""Where pages of the PDF break: no page half empty, nothing torn from what it belongs to."""

from __future__ import annotations

import re
import subprocess
from dataclasses import replace
from pathlib import Path

import pytest

from binder.compiler import Job, compiled
from binder.host import Host
from binder.pages import (
    Binder,
    Block,
    Box,
    Check,
    Checklist,
    Column,
    Drawing,
    Group,
    Notice,
    NoticeKind,
    Paragraph,
    Picture,
    Place,
    Section,
    Subheading,
    Table,
    Text,
)
from binder.render.anchors import nouns
from binder.render.pdf import PdfOutcome, write_pdf
from tests.render.sample import sample

ROOT = Path(__file__).parent.parent.parent
# A large model takes half a minute more and has the same blocks.
SPECS = ("screw-jack",)
COLUMNS = (Column("What", 3), Column("How", 3))
PLACES = range(15, 31)
"""How many lines stand over what must not be torn: it comes to lie anywhere on a page."""
FRONT = 2
"""The cover, and the contents on which the first chapter may follow."""


def lines_of(binder: Binder, folder: Path) -> list[list[str]]:
    """The lines in the body of each page, from the top down."""
    path = folder / "trial.pdf"
    assert write_pdf(binder, path) == PdfOutcome(ok=True)
    pages = ["pdftotext", "-layout", str(path), "-"]
    try:
        done = subprocess.run(pages, capture_output=True, check=True)
    except FileNotFoundError:
        pytest.skip("pdftotext is not installed")
    found = []
    for number, page in enumerate(done.stdout.decode("utf-8").split("\f")[:-1]):
        lines = [line.strip() for line in page.splitlines() if line.strip()]
        assert re.search(r"page \d+ of \d+$", lines[-1])
        found.append(lines[1 if number else 0 : -1])
    return found


def binder_of(*sections: Section) -> Binder:
    return replace(sample(), sections=sections)


def chapter(name: str, *blocks: Block, starts: bool = True) -> Section:
    return Section(name, name, Place.CARE, blocks, starts_page=starts)


def rows(name: str, count: int) -> tuple[tuple[Text, ...], ...]:
    return tuple(((f"{name} row {number}",), ("by hand",)) for number in range(1, count + 1))


def filler(count: int) -> tuple[Block, ...]:
    return tuple(Paragraph((f"Filler {number}.",)) for number in range(count))


def page_with(pages: list[list[str]], words: str) -> int:
    (found,) = [n for n, page in enumerate(pages) if any(words in line for line in page)]
    return found


def test_short_chapters_share_a_page(tmp_path: Path) -> None:
    short = [chapter(f"Chapter {name}", *filler(5)) for name in "ABCD"]
    assert len(lines_of(binder_of(*short), tmp_path)) <= FRONT


def test_a_chapter_that_does_not_fit_waits_for_the_next_page(tmp_path: Path) -> None:
    pages = lines_of(binder_of(chapter("One", *filler(60)), chapter("Two", *filler(20))), tmp_path)
    assert pages[-1][0] == "Two"


def test_a_heading_goes_with_its_words_and_its_table(tmp_path: Path) -> None:
    """However much stands above, neither the heading nor its words are left at the foot."""
    blocks = [
        block
        for n in PLACES
        for block in (
            *filler(n),
            Subheading(f"Heading {n}"),
            Paragraph((f"Words {n} over the table.",)),
            Table(COLUMNS, rows(f"Long {n}", 9)),
        )
    ]
    pages = lines_of(binder_of(chapter("One", *blocks, starts=False)), tmp_path)
    for n in PLACES:
        words = (f"Heading {n}", f"Words {n} over", f"Long {n} row 1")
        assert len({page_with(pages, one) for one in words}) == 1


def test_no_row_of_a_table_stands_alone(tmp_path: Path) -> None:
    blocks = [block for n in PLACES for block in (*filler(n), Table(COLUMNS, rows(f"Long {n}", 9)))]
    pages = lines_of(binder_of(chapter("One", *blocks, starts=False)), tmp_path)
    parted = 0
    for n in PLACES:
        counts = [sum(f"Long {n} row" in line for line in page) for page in pages]
        assert 1 not in counts
        assert sum(counts) == 9
        parted += 9 not in counts
    assert parted


def test_the_heading_of_a_set_up_goes_with_its_rows(tmp_path: Path) -> None:
    blocks: list[Block] = []
    for n in PLACES:
        groups = tuple(Group((f"Set-up {n}.{number}",), 3) for number in (1, 2, 3))
        blocks += [*filler(n), Table(COLUMNS, rows(f"Long {n}", 9), groups=groups)]
    pages = lines_of(binder_of(chapter("One", *blocks, starts=False)), tmp_path)
    for n in PLACES:
        for number in (1, 2, 3):
            first = page_with(pages, f"Long {n} row {3 * number - 2}")
            assert page_with(pages, f"Set-up {n}.{number}") == first


def test_a_note_under_a_checklist_goes_with_its_last_line(tmp_path: Path) -> None:
    blocks: list[Block] = []
    for n in PLACES:
        lines = tuple(Check(f"t{n} {k}", (f"Long {n} line {k}",)) for k in range(1, 5))
        note = Notice(NoticeKind.NOTE, f"Test {n}", ("It turns.",))
        blocks += [*filler(n), Checklist(lines), note]
    pages = lines_of(binder_of(chapter("One", *blocks, starts=False)), tmp_path)
    for n in PLACES:
        last = page_with(pages, f"Long {n} line 4")
        assert page_with(pages, f"Test {n}") == last
        # Nor is the last line torn off with it.
        assert page_with(pages, f"Long {n} line 3") == last


def test_what_is_said_of_a_table_goes_with_its_last_row(tmp_path: Path) -> None:
    # So small a block comes to lie at the edge of a page seldom: more places are tried.
    blocks: list[Block] = []
    for n in range(1, 46):
        said = Paragraph((f"Said of {n}: its rows.",))
        blocks += [*filler(n % 11), Table(COLUMNS, rows(f"Told {n}:", 7)), said]
    pages = lines_of(binder_of(chapter("One", *blocks, starts=False)), tmp_path)
    for n in range(1, 46):
        assert page_with(pages, f"Said of {n}: its rows.") == page_with(pages, f"Told {n}: row 7")


def test_a_whole_table_is_not_parted_and_takes_its_heading_along(tmp_path: Path) -> None:
    table = Table(COLUMNS, rows("Whole", 20), is_whole=True)
    blocks = (*filler(30), Subheading("Heading"), table)
    pages = lines_of(binder_of(chapter("One", *blocks, starts=False)), tmp_path)
    assert {page_with(pages, f"Whole row {n}") for n in (10, 20)} == {page_with(pages, "Heading")}


def test_what_is_cut_out_has_its_paper_to_itself(tmp_path: Path) -> None:
    square = Picture(Drawing(50, 50, (Box(5, 5, 40, 40),)), "A square.", "A square", True)
    pages = lines_of(
        binder_of(
            chapter("Before", *filler(2)),
            chapter("Templates", square),
            chapter("After", *filler(2)),
        ),
        tmp_path,
    )
    assert pages[page_with(pages, "A square")] == ["Templates", "A square"]


@pytest.mark.parametrize("name", SPECS)
def test_on_the_models_no_heading_is_left_at_the_foot(
    name: str, host: Host, tmp_path: Path
) -> None:
    binder = compiled(Job(ROOT / "specs" / name / f"{name}.yaml"), host).binder
    assert binder is not None
    pages = lines_of(binder, tmp_path)
    headings = {noun.text for noun in nouns(binder) if isinstance(noun, Subheading)}
    headings |= {noun.title for noun in nouns(binder) if isinstance(noun, Section)}
    assert [page[-1] for page in pages[FRONT:] if page[-1] in headings] == []
    assert [page[-1] for page in pages if page[-1].startswith("Set-up ")] == []
