"""The words of a fastener's name turned into its kind, head, drive, point and material."""

from __future__ import annotations

import difflib
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache

from binder_trade.fastening.faults import Unreadable, quoted
from binder_trade.fastening.vocabulary import (
    DRIVES,
    FILLERS,
    HEADS,
    KINDS,
    MATERIALS,
    POINTS,
)

_LONGEST_PHRASE = 3


@dataclass(slots=True)
class Said:
    """What the words say, in the order of the text, gathered while they are read."""

    kinds: list[str] = field(default_factory=list)
    heads: list[str] = field(default_factory=list)
    drives: list[str] = field(default_factory=list)
    points: list[str] = field(default_factory=list)
    materials: list[str] = field(default_factory=list)
    fillers: list[str] = field(default_factory=list)


def sort_words(words: tuple[str, ...], text: str) -> Said:
    """Each word under what it says, longest phrase first; raises Unreadable for a strange one."""
    said = Said()
    place = 0
    while place < len(words):
        length, slot, meaning = _longest(words[place : place + _LONGEST_PHRASE], text)
        {
            "kind": said.kinds,
            "head": said.heads,
            "drive": said.drives,
            "point": said.points,
            "material": said.materials,
            "filler": said.fillers,
        }[slot].append(meaning)
        place += length
    return said


def _longest(words: tuple[str, ...], text: str) -> tuple[int, str, str]:
    for length in range(len(words), 0, -1):
        found = _table().get(" ".join(words[:length]))
        if found is not None:
            return length, *found
    raise Unreadable(f"{quoted(text)} has the strange word {quoted(words[0])}", _near(words[0]))


def names_a_kind(text: str) -> bool:
    """Some word of the text is a kind of fastener, whatever the rest says."""
    return any(word in _nouns() for word in re.findall("[a-z]+", text.lower()))


@cache
def _nouns() -> frozenset[str]:
    lasts = {name.split()[-1] for name in KINDS}
    return frozenset(lasts | {f"{last}s" for last in lasts})


def _near(word: str) -> str:
    near = difflib.get_close_matches(word[:20], _words(), n=1)
    return f"did you mean '{near[0]}'" if near else "put it in a note"


@cache
def _words() -> tuple[str, ...]:
    return tuple(sorted({word for phrase in _table() for word in phrase.split()}))


@cache
def _table() -> Mapping[str, tuple[str, str]]:
    table: dict[str, tuple[str, str]] = {word: ("filler", word) for word in FILLERS}
    table |= {name: ("material", name) for name in MATERIALS}
    for name, point in POINTS.items():
        table[name] = table[f"{name} point"] = table[f"{name} pointed"] = ("point", point)
    table |= {name: ("drive", drive) for name, drive in DRIVES.items()}
    table |= {name: ("head", head) for name, head in HEADS.items()}
    for name, kind in KINDS.items():
        table[name] = table[f"{name}s"] = ("kind", kind)
    return table
