"""The blocks that a section is built from."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from binder.pages.drawing import Drawing
from binder.pages.text import Text


@dataclass(frozen=True, slots=True)
class Paragraph:
    """A few sentences."""

    text: Text


@dataclass(frozen=True, slots=True)
class Subheading:
    """A heading inside a section; `id` makes it a target of links."""

    text: str
    id: str = ""


@dataclass(frozen=True, slots=True)
class Column:
    """A table column: its heading, share of the width, and whether it holds figures."""

    title: str
    share: float = 1.0
    is_figure: bool = False


@dataclass(frozen=True, slots=True)
class Group:
    """The heading over the next `count` rows of a table, a small picture at its right end."""

    title: Text
    count: int
    picture: Picture | None = None


@dataclass(frozen=True, slots=True)
class Table:
    """Rows under headings; a row has as many cells as there are columns.

    `ids` names rows that links may point at ('' for none), one for each row or none at all.
    `groups`, where there are any, head all rows in turn. One of `is_whole` waits for the next
    page, its heading with it, where it does not fit on what is left of this one.
    """

    columns: tuple[Column, ...]
    rows: tuple[tuple[Text, ...], ...]
    caption: str = ""
    ids: tuple[str, ...] = ()
    groups: tuple[Group, ...] = ()
    is_whole: bool = False


@dataclass(frozen=True, slots=True)
class Facts:
    """Pairs of a name and what it is, as in a title block."""

    pairs: tuple[tuple[str, Text], ...]


@dataclass(frozen=True, slots=True)
class Check:
    """A line with a tick box; `key` keeps the tick between visits on a tablet."""

    key: str
    text: Text
    detail: tuple[Text, ...] = ()


@dataclass(frozen=True, slots=True)
class Checklist:
    """Lines to be ticked in order."""

    checks: tuple[Check, ...]
    numbered: bool = True


class NoticeKind(StrEnum):
    """How loud a notice is; `CAUTION` is about people, the others about the work."""

    CAUTION = "caution"
    WARNING = "warning"
    ADVICE = "advice"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Notice:
    """A boxed remark with a headline; `source` is printed small beneath it."""

    kind: NoticeKind
    title: str
    text: Text
    source: str = ""


@dataclass(frozen=True, slots=True)
class Listing:
    """Lines of a file as they stand, with line numbers from `first`."""

    text: str
    first: int = 1


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing with its caption; `description` says in words what it shows.

    One of `is_true_size` is never scaled to fit: it is laid on the work.
    """

    drawing: Drawing
    description: str
    caption: str = ""
    is_true_size: bool = False


@dataclass(frozen=True, slots=True)
class Beside:
    """Words or a few facts with a small picture at their right; they stay together."""

    block: Paragraph | Facts | Table
    picture: Picture


Block = Paragraph | Subheading | Table | Facts | Checklist | Notice | Listing | Picture | Beside
