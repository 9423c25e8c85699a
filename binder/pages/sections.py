"""Sections, where they stand in a binder, and the binder itself."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

from binder.pages.blocks import Block


class Place(IntEnum):
    """The order of a binder's sections: the order in which the bench uses them."""

    COVER = 0
    REMARKS = 5
    READ_THIS = 10
    CAUTIONS = 20
    ARRANGEMENT = 30
    PARTS_LIST = 40
    SHOPPING = 50
    CUT_LIST = 60
    BUILD_ORDER = 70
    EVENINGS = 80
    PARTS = 90
    TOGETHER = 95
    JOINTS = 100
    THREADS = 110
    DRIVE = 120
    ASSEMBLY = 130
    TEMPLATES = 140
    INSPECTION = 150
    FINISHING = 160
    CARE = 170
    FIRST_RUN = 180
    CHANGES = 190
    WORKSHOP = 200
    SIZES = 210
    SOURCES = 220
    SPEC = 230


@dataclass(frozen=True, slots=True)
class Section:
    """One section: `id` is its link target.

    One that `starts_page` stands on a fresh leaf, unless all of it fits on what is left of one.
    """

    id: str
    title: str
    place: Place
    blocks: tuple[Block, ...]
    starts_page: bool = True
    sections: tuple[Section, ...] = ()


@dataclass(frozen=True, slots=True)
class Inset:
    """Blocks of one plugin for the head, or the foot, of another's section, named by its `id`."""

    section: str
    blocks: tuple[Block, ...]
    is_foot: bool = False


@dataclass(frozen=True, slots=True)
class Attachment:
    """A file that travels inside the PDF."""

    name: str
    content: bytes
    description: str


@dataclass(frozen=True, slots=True)
class Binder:
    """The whole document before it becomes HTML or PDF.

    `date` is ISO 8601 (YYYY-MM-DD) or '' for none; `digest` is the hash of the spec;
    `summary` holds the facts of the cover (what, how big, what drives it).
    """

    title: str
    issue: str
    date: str
    digest: str
    about: str
    summary: tuple[tuple[str, str], ...]
    sections: tuple[Section, ...]
    attachments: tuple[Attachment, ...] = ()
    language: str = "en"
