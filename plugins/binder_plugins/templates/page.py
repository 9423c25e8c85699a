"""Templates to their section of the binder, and a line on the leaf of each part that has one."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Block, Design, Diagnostic, Inset, Link, Paragraph, Picture, Place, Section
from binder_plugins.templates.coordinates import tables_of
from binder_plugins.templates.lettering import MANY, title_of
from binder_plugins.templates.machines import screws_of
from binder_plugins.templates.sheets import sheets_of, slips_of
from binder_plugins.templates.wanted import Template, templates_of

_ABOUT = (
    "Full size. Print at 100 %, not fitted to the page, and hold a rule against the lines at the "
    "foot of each sheet before you trust one. Stick the paper down with the metal clean, pop each "
    "crossing with a sharp punch, and saw outside the line. Numbers are those of the tables."
)
_TURNS = (
    "Set both dials to nought on the datum, arriving there with the figures growing. Arrive at "
    "every hole the same way: where the last column names a screw, its figure falls; run it half "
    "a turn past the hole and come back up, so that the slack lies always on one side. With an "
    "edge finder, take off half its diameter first."
)


def template_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section | Inset]:
    """One section with the sheets, then a table for each face with many holes."""
    templates = list(templates_of(design))
    if not templates:
        return
    tabled = [one for one in templates if len(one.flat.holes) >= MANY]
    sheets = tuple(
        Picture(sheet, f"full-size templates, sheet {number}", is_true_size=True)
        for number, sheet in enumerate(sheets_of(templates, design), 1)
    )
    about = (Paragraph((_ABOUT,)),) if sheets else ()
    yield Section(
        "templates",
        "Templates",
        Place.TEMPLATES,
        (*about, *sheets, *_too_large(templates, design)),
        sections=_tables(tabled, design),
    )
    for name in dict.fromkeys(one.part.name for one in templates):
        yield Inset(f"part-{name}", (_pointer(name, tabled),))


def _too_large(templates: Sequence[Template], design: Design) -> Iterator[Paragraph]:
    """What is marked out by its coordinates instead."""
    names = [title_of(one, design) for one in templates if not slips_of(one, design)]
    if names:
        words = f"Too large for paper, to be marked out by its coordinates: {'; '.join(names)}."
        yield Paragraph((words,))


def _tables(tabled: Sequence[Template], design: Design) -> tuple[Section, ...]:
    if not tabled:
        return ()
    about: tuple[Block, ...] = (
        (Paragraph((_TURNS,)),) if any(True for _ in screws_of(design.workshop)) else ()
    )
    parts = tuple(
        Section(
            _id(one),
            title_of(one, design),
            Place.TEMPLATES,
            tuple(tables_of(one.flat, design)),
            starts_page=False,
        )
        for one in tabled
    )
    return (Section("x-y-tables", "X-Y tables", Place.TEMPLATES, about, sections=parts),)


def _id(one: Template) -> str:
    return f"x-y-{one.part.name}-{one.flat.face}"


def _pointer(name: str, tabled: Sequence[Template]) -> Paragraph:
    table = next((one for one in tabled if one.part.name == name), None)
    start = Link("full-size template", "templates")
    if table is None:
        return Paragraph(("See the ", start, "."))
    return Paragraph(("See the ", start, " and the ", Link("X-Y table", _id(table)), "."))
