"""The rows of the caution data as typed values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder_plugins.cautions.signs import SignKind

NO_SOURCE = "common practice, no source"
FROM_MEMORY = "from memory"
ALWAYS = "always"
_DONE = (SignKind.ACT, SignKind.JOINT, SignKind.FINISH)


@dataclass(frozen=True, slots=True)
class Caution:
    """A usual caution and what calls for it.

    `is_whole` is one about the model as a whole, whatever part of it calls for it. `verified`
    is the day on which its source was read (YYYY-MM-DD), or one of the two marks
    FROM_MEMORY and NO_SOURCE. `triggers` is empty where it always applies. `short` is printed
    where the work is done: at the acts, joints and finishes in `at`.
    """

    id: str
    hazard: str
    title: str
    text: str
    short: str
    source: str
    edition: str
    verified: str
    defers_to: str
    is_general: bool
    is_whole: bool
    is_elsewhere: bool
    triggers: Mapping[SignKind, frozenset[str]]
    at: frozenset[str]

    @property
    def printed_text(self) -> str:
        """The text, and who is asked first where the tool defers."""
        return f"{self.text} Ask first: {self.defers_to}." if self.defers_to else self.text

    @property
    def printed_source(self) -> str:
        """Where it comes from, and how far that was looked up."""
        if self.verified == NO_SOURCE:
            return NO_SOURCE
        if self.verified == FROM_MEMORY:
            return f"{self.source}, {self.edition}; from memory, not opened: {NO_SOURCE} read"
        return f"{self.source}, {self.edition}; read in a public copy {self.verified}"


@dataclass(frozen=True, slots=True)
class CautionTable:
    """All rows, the headings of their hazards in order of print, and what has none.

    `none` says by kind which words were thought of and need no caution of their own.
    """

    hazards: Mapping[str, str]
    cautions: tuple[Caution, ...]
    none: Mapping[SignKind, Mapping[str, str]]
    unknown: str

    def known(self, kind: SignKind) -> frozenset[str]:
        """Every word of a kind that has a caution or an explicit none."""
        words = (row.triggers.get(kind, frozenset()) for row in self.cautions)
        return frozenset(self.none.get(kind, {})).union(*words)


def read_table(data: Mapping[str, Any]) -> CautionTable:
    """The table from its data; a row without one of the keys raises KeyError."""
    return CautionTable(
        hazards=data["hazards"],
        cautions=tuple(_caution(row) for row in data["cautions"]),
        none={SignKind(kind): words for kind, words in data["none"].items()},
        unknown=data["unknown"],
    )


def _caution(row: Mapping[str, Any]) -> Caution:
    triggers = row["triggers"]
    is_general = triggers == ALWAYS
    called = {} if is_general else _triggers(triggers)
    return Caution(
        id=row["id"],
        hazard=row["hazard"],
        title=row["title"],
        text=row["text"],
        short=row["short"],
        source=row["source"],
        edition=row["edition"],
        verified=row["verified"],
        defers_to=row.get("defers_to", ""),
        is_general=is_general,
        is_whole=row.get("whole", False),
        is_elsewhere=row.get("elsewhere", False),
        triggers=called,
        at=frozenset(row["at"]) if "at" in row else _where_it_is_done(called),
    )


def _where_it_is_done(called: Mapping[SignKind, frozenset[str]]) -> frozenset[str]:
    """The acts, joints and finishes that call for it, where the row names no others."""
    return frozenset().union(*(called.get(kind, frozenset()) for kind in _DONE))


def _triggers(written: Mapping[str, list[str]]) -> Mapping[SignKind, frozenset[str]]:
    return {SignKind(kind): frozenset(words) for kind, words in written.items()}
