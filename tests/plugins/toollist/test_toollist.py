"""The workshop printed back: all that its file says, as its author wrote it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from importlib.metadata import EntryPoint
from importlib.resources import files
from pathlib import Path

import pytest

from binder.api import Facts, Model, Paragraph, Section, Subheading, Table
from binder.compiler import Job, compiled
from binder.host import Host
from binder.pages import Place, text_of
from binder.source import read_text

SPEC = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  rod: {material: brass, cut: 9 mm, stock: 6 mm round bar}
"""
HEAD = "format: 1\nname: shed at the end of the garden\nunits: mm\n"
BUILT_IN = files("binder.workshop").joinpath("default.yaml").read_text(encoding="utf-8")
FULL = (Path(__file__).parent / "full.yaml").read_text(encoding="utf-8")

PageOf = Callable[[str], tuple[Section, Model]]


@pytest.fixture(scope="module")
def tools() -> Host:
    names = ("materials", "shapes", "stock", "toollist")
    return Host.load(
        [EntryPoint(name, f"binder_plugins.{name}", "binder.plugins") for name in names]
    )


@pytest.fixture
def page_of(tools: Host, tmp_path: Path) -> PageOf:
    """The section of the workshop, and the file as typed; '' is the built-in one."""

    def run(workshop: str) -> tuple[Section, Model]:
        spec, file = tmp_path / "trial.yaml", tmp_path / "workshop.yaml"
        spec.write_text(SPEC, encoding="utf-8")
        file.write_text(workshop, encoding="utf-8")
        outcome = compiled(Job(spec, file if workshop else None), tools)
        assert outcome.binder is not None, outcome.findings
        assert outcome.design is not None
        (page,) = (one for one in outcome.binder.sections if one.place is Place.WORKSHOP)
        return page, outcome.design.workshop.entry

    return run


def _texts(page: Section) -> Iterator[str]:
    for block in page.blocks:
        if isinstance(block, Paragraph):
            yield text_of(block.text)
        elif isinstance(block, Subheading):
            yield block.text
        elif isinstance(block, Facts):
            yield from (f"{name}: {text_of(text)}" for name, text in block.pairs)
        elif isinstance(block, Table):
            yield from (" | ".join(text_of(cell) for cell in row) for row in block.rows)


def _written(node: object, path: tuple[str, ...] = ()) -> Iterator[tuple[tuple[str, ...], str]]:
    """Every value of a file, with the keys on the way to it."""
    if isinstance(node, str):
        yield path, " ".join(node.split())
    elif isinstance(node, dict):
        for key, value in node.items():
            yield from _written(value, (*path, key))
    elif isinstance(node, list):
        for value in node:
            yield from _written(value, path)


@pytest.mark.parametrize("workshop", ["", FULL], ids=["built in", "full"])
def test_all_that_the_file_says_is_on_the_page(workshop: str, page_of: PageOf) -> None:
    page, _ = page_of(workshop)
    words = "\n".join(_texts(page))
    flags = ("true", "false")
    document, _ = read_text(workshop or BUILT_IN, "workshop.yaml")
    assert document is not None
    values = [(path, text) for path, text in _written(document.root) if path != ("format",)]
    assert len(values) > 50
    missing = [one for one in values if one[1] not in flags and one[1] not in words]
    assert not missing
    flagged = {path[-1].replace("_", " ") for path, text in values if text == "true"}
    assert all(name in words.lower() for name in flagged)


def test_the_largest_bar_of_a_lathe_is_not_printed_as_its_bore(page_of: PageOf) -> None:
    """The field means what passes, which is less than the bore is wide: it says so."""
    words = "\n".join(_texts(page_of(FULL)[0]))
    assert "Largest bar through the spindle: 5/8 in" in words
    assert "Spindle bore" not in words


def _models(value: object) -> Iterator[Model]:
    """A table of the language and all tables in it."""
    if isinstance(value, Model):
        yield value
        for name in type(value).model_fields:
            yield from _models(getattr(value, name))
    elif isinstance(value, dict):
        for one in value.values():
            yield from _models(one)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from _models(one)


@pytest.mark.parametrize("workshop", ["", FULL], ids=["built in", "full"])
def test_every_name_that_the_maker_chose_is_on_the_page(workshop: str, page_of: PageOf) -> None:
    page, entry = page_of(workshop)
    words = "\n".join(_texts(page))
    tables = (getattr(model, name) for model in _models(entry) for name in type(model).model_fields)
    names = [name for table in tables if isinstance(table, dict) for name in table]
    assert len(names) > 10
    assert not [name for name in names if name not in words]


def test_the_full_file_writes_every_key(page_of: PageOf) -> None:
    """So that the tests above mean what they say."""
    _, entry = page_of(FULL)
    written: dict[type[Model], set[str]] = {}
    for model in _models(entry):
        written.setdefault(type(model), set()).update(model.model_fields_set)
    assert len(written) > 20
    for kind, keys in written.items():
        assert set(kind.model_fields) == keys, kind.__name__


def test_a_full_file_has_every_heading(page_of: PageOf) -> None:
    page, _ = page_of(FULL)
    headings = {block.text for block in page.blocks if isinstance(block, Subheading)}
    assert {
        "Lathe: little lathe",
        "Mill: knee mill",
        "Drilling machine: pillar drill",
        "Saws",
        "Other machines",
        "Holding",
        "Drills",
        "Reamers",
        "Taps and dies",
        "Cutters",
        "Measuring tools",
        "On the shelf",
        "Sold here",
        "Buying and cutting stock",
    } <= headings


def test_an_almost_empty_workshop_has_no_empty_table(page_of: PageOf) -> None:
    page, _ = page_of(f"{HEAD}machines:\n  saws: {{hacksaw: {{kerf: 1 mm, cuts: [bars]}}}}\n")
    assert all(block.rows for block in page.blocks if isinstance(block, Table))
    assert "No stock is listed." in _texts(page)
    assert "hacksaw | kerf 1 mm; cuts bars" in _texts(page)


def test_drills_are_counted_by_set(page_of: PageOf) -> None:
    page, _ = page_of(f"{HEAD}drills:\n  metric: [1 mm to 6 mm by 0.5 mm, 6.5 mm]\n")
    assert "metric | 1 mm to 6 mm by 0.5 mm, 6.5 mm | 12" in _texts(page)


def test_each_thread_tells_its_taps_and_its_die(page_of: PageOf) -> None:
    page, _ = page_of(f"{HEAD}taps: {{taper: [M3], plug: [M3]}}\ndies: [M3, 2 BA]\n")
    texts = list(_texts(page))
    assert "M3 | taper, plug | yes" in texts
    assert "2 BA | none | yes" in texts
    page, _ = page_of(f"{HEAD}taps: {{second: [M4]}}\n")
    assert "M4 | second | none" in _texts(page)


def test_pieces_on_the_shelf_are_listed_as_written(page_of: PageOf) -> None:
    shelf = "shelf:\n  - {stock: 1/2 in round bar, material: brass, length: 13 in, quantity: 2}\n"
    page, _ = page_of(HEAD + shelf)
    assert "2 | 1/2 in round bar | brass | 13 in |  |  | " in _texts(page)


def test_a_table_row_has_a_cell_for_each_column(page_of: PageOf) -> None:
    page, _ = page_of(FULL)
    for block in page.blocks:
        if isinstance(block, Table):
            assert {len(row) for row in block.rows} == {len(block.columns)}
