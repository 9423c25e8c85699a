"""The words of an operation to the tools that they name, row by row of `tools.yaml`."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from binder.api import load_data

# A size, a drill's number or letter, or a thread, which stands before the name of a tool.
_SIZE = (
    r"(?:(?<![\w./-])(?:(?:no\.|letter) \w+"
    r"|\d[\d./]*(?: \d+/\d+)? (?:mm|in|thou)"
    r"|M\d[\d.]*(?: [x×] [\d.]+)?"
    r"|[\d/.]+(?:-\d+)?(?: [x×] \d+)? (?:BA|UNC|UNF|UNEF|BSW|BSF|BSP|BSB|ME)) )?"
)

_FIRST = re.compile(r"(?:(?:no\.|letter) \w+|\d[\d./]*(?: \d+/\d+)? (?:mm|in|thou))\b")


@dataclass(frozen=True, slots=True)
class Row:
    """One row: `name` as printed, '' for the words themselves; the rest as told there."""

    name: str
    says: re.Pattern[str]
    own: str
    has: re.Pattern[str]
    make: str
    spoken: re.Pattern[str] | None
    is_used_up: bool = False
    also: str = ""
    is_chucked: bool = False


@dataclass(frozen=True, slots=True)
class Said:
    """A tool that a text names: its row, and the words; `is_missing` where they say so."""

    row: Row
    words: str
    is_missing: bool = False

    @property
    def name(self) -> str:
        """As printed; which taps of a set are used first is told on the leaf."""
        name = self.row.name or self.words.partition(": ")[0]
        return name.replace("{size}", self.size)

    @property
    def size(self) -> str:
        """The first size of its words: `6.5 mm`; '' for none."""
        found = _FIRST.search(self.words)
        return found[0] if found else ""

    @property
    def also(self) -> str:
        """The tools that are used with it, as acts tell theirs."""
        return self.row.also.replace("{size}", self.size)


@cache
def rows() -> tuple[Row, ...]:
    """The table, read once."""
    return tuple(_row(one) for one in load_data("binder_plugins.operations", "tools.yaml")["tools"])


def _row(one: dict[str, Any]) -> Row:
    says = re.compile(one["says"].replace("{size}", _SIZE))
    has = re.compile(one.get("has") or one["says"].replace("{size}", ""), re.IGNORECASE)
    spoken = re.compile(one["spoken"]) if "spoken" in one else None
    name, make = one.get("name", ""), one.get("make", "")
    also = one.get("also", "")
    used_up, chucked = bool(one.get("used_up")), bool(one.get("chucked"))
    return Row(name, says, one["own"], has, make, spoken, used_up, also, chucked)


@cache
def _qualifiers() -> frozenset[str]:
    """What a tool's words say of how it is used, and no tool by itself."""
    return frozenset(load_data("binder_plugins.operations", "tools.yaml")["qualifiers"])


@lru_cache(maxsize=4096)
def said_in(text: str) -> tuple[Said, ...]:
    """The tools that a text names, in the order of the table."""
    return _read(text)[0]


@lru_cache(maxsize=4096)
def spoken_in(what: str) -> tuple[Said, ...]:
    """The tools that the words of an act speak of."""
    spoken = ((row, row.spoken.search(what)) for row in rows() if row.spoken is not None)
    return tuple(Said(row, match.group()) for row, match in spoken if match)


def unread(text: str) -> tuple[str, ...]:
    """The words of a text of tools that neither name a tool nor say how it is used."""
    left = re.findall(r"[a-z'-]{2,}", _read(text)[1].lower())
    return tuple(word for word in left if word.strip("'-") not in _qualifiers())


def _read(text: str) -> tuple[tuple[Said, ...], str]:
    found: list[Said] = []
    rest = text
    for row in rows():
        for match in list(row.says.finditer(rest)):
            words = match.group().strip()
            is_missing = text[match.end() :].lstrip(", ").startswith("not owned")
            found.append(Said(row, words, is_missing))
            blank = "|" * len(match.group())
            rest = f"{rest[: match.start()]}{blank}{rest[match.end() :]}"
    return tuple(found), rest
