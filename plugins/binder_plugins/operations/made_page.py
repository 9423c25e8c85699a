"""What is made without a leaf of its own: tools, gauges and small fittings, step by step."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Group,
    Paragraph,
    Place,
    Section,
    SmallWork,
    Strong,
    Table,
    Text,
    TickBox,
)
from binder_plugins.operations.space_picture import space_pictures
from binder_plugins.operations.wanted_page import MADE_SECTION

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

_COLUMNS = (Column("", 0.5), Column("Do", 12))
_INTRO = (
    "Made when they are first wanted, not all at the start: what is turned to a bore waits for "
    "the bore."
)
_HARDENED = re.compile(r"\b(harden|quench)")
_IN_OIL = re.compile(r"\bin oil\b")
_HOT = (
    " What is hardened here is no bigger than a finger: eye protection, tongs, nothing that burns "
    "near the quench"
)
_OIL = ", and the oil in a metal tin with a lid"


def made_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section, each thing with its stock, steps and minutes; nothing where none is made."""
    works = design.facts.all(SmallWork)
    if not works:
        return
    rows = tuple(row for work in works for row in _rows(work))
    groups = tuple(Group(tuple(_heading(work)), len(work.steps)) for work in works)
    table = Table(_COLUMNS, rows, groups=groups, is_whole=False)
    blocks: tuple[Block, ...] = (
        Paragraph((_first_words(works),)),
        table,
        *space_pictures(works, design),
    )
    yield Section(MADE_SECTION, "Tools to make", Place.TOGETHER, blocks)


def _first_words(works: Iterable[SmallWork]) -> str:
    """When they are made, and how what is hardened among them is handled."""
    hot = [step for work in works for step in work.steps if _HARDENED.search(step)]
    if not hot:
        return _INTRO
    oil = _OIL if any(_IN_OIL.search(step) for step in hot) else ""
    return f"{_INTRO}{_HOT}{oil}."


def _heading(work: SmallWork) -> Iterator[Strong | str]:
    off = f"{work.count} off " if work.count > 1 else ""
    name = f"{off}{work.subject}"
    yield Strong(name[0].upper() + name[1:])
    yield f": from {work.stock}. For: {work.of}. {work.minutes:.0f} min."


def _rows(work: SmallWork) -> Iterator[tuple[Text, ...]]:
    for number, step in enumerate(work.steps, 1):
        said = step[0].upper() + step[1:]
        yield ((TickBox(f"{work.subject} {number}"),), (said,))
