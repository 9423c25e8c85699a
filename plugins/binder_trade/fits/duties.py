"""A duty in a maker's own words to the ISO 286 classes that serve it, with the reason.

The classes are the preferred fits of the standard where one of them serves; which duty takes
which is common practice (no standard says it), and so says every choice.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, positive

_PACKAGE = "binder_trade.fits"
_WORD = re.compile(r"[^\W_0-9]+")
_LONGEST = 200


@dataclass(frozen=True, slots=True)
class Choice:
    """A fit that was chosen: the duty as understood, both classes, and why in ten words."""

    duty: str
    hole: str
    shaft: str
    hole_basis: bool
    why: str
    source: str
    notes: str = ""
    named: str = ""


def choose(text: str, nominal_mm: float, *, hole_basis: bool = True) -> Choice:
    """The fit for a duty as the maker wrote it, at a nominal size in mm.

    `hole_basis` False gives the counterpart whose shaft is h, for a shaft that is bought. Raises
    NotDefined for words that say nothing about a fit, or two things at once. Source: preferred
    fits of ANSI B4.2 Table 11 and ISO 286-1; choice by duty common practice.
    """
    size = positive(nominal_mm, "the diameter")
    row = _meant(_stems(text), text)
    fitted = row["small"] if "small" in row and size <= row["small"]["to"] else row
    classes = fitted if hole_basis else _rod(row["duty"], fitted)
    return Choice(
        row["duty"],
        classes["hole"],
        classes["shaft"],
        hole_basis,
        fitted["why"],
        _source(row),
        row.get("notes", ""),
        fitted.get("named", ""),
    )


def duties() -> tuple[str, ...]:
    """The duties that are understood, each by its own name, loosest first."""
    return tuple(row["duty"] for row in _table()["duties"])


def _meant(stems: frozenset[str], text: str) -> Mapping[str, Any]:
    """The one duty whose words are all written, the most words first."""
    scored = [
        (len(means), row)
        for row in _table()["duties"]
        for means in row["means"]
        if stems.issuperset(means)
    ]
    best = max((score for score, _ in scored), default=0)
    rows = [row for score, row in scored if score == best]
    if best < len(stems) or len(rows) != 1:
        said = " and ".join(sorted(stems))
        raise NotDefined(
            f"“{_short(text)}” says more than one thing of the fit: {said}",
            "say one duty: " + ", ".join(duties()),
        )
    meant: Mapping[str, Any] = rows[0]
    return meant


def _stems(text: str) -> frozenset[str]:
    """The words of a duty, each as the word that it is read as."""
    words = _WORD.findall(text[:_LONGEST].lower())
    read, passed = _words(), frozenset(_table()["passed_over"])
    stems = frozenset(read[word] for word in words if word in read)
    strange = [word for word in words if word not in read and word not in passed]
    if strange or not stems:
        raise _not_understood(text, strange)
    return stems


def _not_understood(text: str, strange: list[str]) -> NotDefined:
    near = [hit for word in strange for hit in get_close_matches(word, _words(), n=2)]
    way_out = "say one of: " + ", ".join(duties())
    if near:
        way_out = f"did you mean {', '.join(dict.fromkeys(near))}? Or {way_out}"
    said = f"“{strange[0]}” is no word for a fit" if strange else f"“{_short(text)}” names no fit"
    return NotDefined(said, way_out)


def _short(text: str) -> str:
    return text if len(text) <= 40 else text[:39] + "…"


def _rod(duty: str, fitted: Mapping[str, Any]) -> Mapping[str, Any]:
    if "rod" not in fitted:
        raise NotDefined(f"a {duty} has no shaft-basis counterpart", "keep the hole basis")
    rod: Mapping[str, Any] = fitted["rod"]
    return rod


def _source(row: Mapping[str, Any]) -> str:
    sources = _table()["sources"]
    where = sources[row["source"]]
    read = where if row["status"] == "verified" else f"{where} (from memory)"
    return f"{read}; choice by duty: {sources['practice']}"


@cache
def _words() -> dict[str, str]:
    stems: Mapping[str, list[str]] = _table()["stems"]
    return {word: stem for stem, words in stems.items() for word in words}


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data(_PACKAGE, "duties.yaml")
    return table
