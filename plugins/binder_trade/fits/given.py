"""A maker's words about tool and bar, `reamed, bar as bought`, to what each half will measure."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, positive
from binder_trade.fits.duties import Choice
from binder_trade.fits.naming import cited, plain, way_out
from binder_trade.limits import limits

MM_PER_INCH = 25.4
_PACKAGE = "binder_trade.fits"
_CLASS = re.compile(r"\b([A-Za-z]{1,2}[0-9]{1,2})\b")
# A size, where one is written: `6 mm`, `1/4 in`, `7.5 in`, `1/4"`.
_SIZE = re.compile(
    r"(?:([0-9]{1,6})\s+)?([0-9]{1,6}(?:\.[0-9]{1,6}|/[0-9]{1,6})?)\s*(mm|inch|in|\"|”)",
    re.IGNORECASE,
)
_LONGEST = 200
# A size that was written in inches and turned into mm is still that size.
_EXACT = 1e-9


@dataclass(frozen=True, slots=True)
class Way:
    """How one half is made or bought: what it leaves, or the finest grade that it can make."""

    way: str
    half: str
    says: str
    source: str
    cls: str = ""
    least_grade: int = 0


@dataclass(frozen=True, slots=True)
class Told:
    """What a maker told of a joint: its size in mm where written, and the way of each half."""

    nominal_mm: float | None
    hole: Way | None
    shaft: Way | None


@dataclass(frozen=True, slots=True)
class Given:
    """What one half will measure: deviations from nominal in µm, and on whose word."""

    way: str
    half: str
    nominal_mm: float
    cls: str
    upper_um: float
    lower_um: float
    says: str
    source: str


def read_tool(text: str) -> Told:
    """Reads `reamed 6 mm, bar as bought`: halves apart by comma, semicolon, `in` or `on`.

    A class beside the words (`ground rod h6`) stands for what the workshop knows better. Raises
    NotDefined for words that are no tool or bar, or for two ways of one half.
    """
    size = _size(text[:_LONGEST])
    unsized = _SIZE.sub(" ", text[:_LONGEST])
    ways = [_way(phrase) for phrase in re.split(r"[,;]", unsized) if phrase.strip()]
    if not ways:
        raise NotDefined("neither tool nor bar is named", way_out("", (), _listed()))
    return Told(size, _of_half(ways, "hole"), _of_half(ways, "shaft"))


def ways() -> tuple[Way, ...]:
    """Every way that is known, holes first; a way's class or grade is the usual one."""
    return tuple(_plain_way(row) for row in _table()["ways"])


def given_by(way: Way, nominal_mm: float, wanted_cls: str = "") -> Given:
    """What a way will give at a nominal size in mm; deviations in µm.

    `wanted_cls` is what a way that is measured while it is done is asked for; it gets that class,
    or the same letter at the finest grade that the way can make. Raises NotDefined.
    """
    size = positive(nominal_mm, "the diameter")
    row = next(row for row in _table()["ways"] if row["way"] == way.way)
    if "bands" in row and not way.cls:
        upper, lower = _band(row["bands"], size)
        return Given(way.way, way.half, size, "", upper, lower, way.says, way.source)
    cls = way.cls or _made_to(way, wanted_cls)
    allowed = limits(size, cls)
    return Given(
        way.way, way.half, size, cls, allowed.upper_um, allowed.lower_um, way.says, way.source
    )


def given_for(choice: Choice, way: Way, nominal_mm: float) -> Given:
    """What a way gives where it is asked for its half of a choice; raises NotDefined."""
    return given_by(way, nominal_mm, choice.hole if way.half == "hole" else choice.shaft)


def _made_to(way: Way, wanted_cls: str) -> str:
    letters = wanted_cls.rstrip("0123456789")
    grade = wanted_cls[len(letters) :]
    if not letters or not grade:
        raise NotDefined(f"{way.way} makes what is asked for", "say which class, as H8 or g7")
    return f"{letters}{max(int(grade[:4]), way.least_grade)}"


def _band(bands: list[Mapping[str, float]], nominal_mm: float) -> tuple[float, float]:
    inches = nominal_mm / MM_PER_INCH
    for band in bands:
        if inches <= band["to_in"] + _EXACT:
            return band["upper"] * MM_PER_INCH, band["lower"] * MM_PER_INCH
    most = bands[-1]["to_in"] * MM_PER_INCH
    raise NotDefined(f"the table of drilled holes ends at {most:.1f} mm", "bore it, or measure it")


def _way(phrase: str) -> Way:
    """The way that a phrase names, the longest words first."""
    stated = _CLASS.search(phrase)
    asked = plain(_CLASS.sub(" ", phrase))
    row = _phrases().get(asked)
    if row is None:
        raise NotDefined(
            f"“{asked}” is no tool or bar that is known",
            way_out(asked, _phrases(), _listed()),
        )
    way = _plain_way(row)
    if stated is None:
        return way
    says = f"{stated[1]} as the workshop states"
    return Way(way.way, way.half, says, "the workshop", stated[1], way.least_grade)


def _of_half(ways: list[Way], half: str) -> Way | None:
    found = [way for way in ways if way.half == half]
    if len(found) > 1:
        raise NotDefined(
            f"the {half} is said twice: {found[0].way}, {found[1].way}", "say one of them"
        )
    return found[0] if found else None


def _size(text: str) -> float | None:
    found = _SIZE.search(text)
    if found is None:
        return None
    whole, part, unit = found[1], found[2], found[3].lower()
    top, _, bottom = part.partition("/")
    if (bottom and not int(bottom)) or (whole and not bottom):
        raise NotDefined(f"“{found[0]}” is no size", "write 6 mm, 1/4 in or 1 1/4 in")
    value = float(whole or 0) + (float(top) / float(bottom) if bottom else float(top))
    return positive(value * (1.0 if unit == "mm" else MM_PER_INCH), "the size")


def _listed() -> list[str]:
    return [row["way"] for row in _table()["ways"]]


def _plain_way(row: Mapping[str, Any]) -> Way:
    source = _table()["sources"][row["source"]]
    text = cited({"source": source["text"], "status": source["status"]})
    return Way(
        row["way"], row["half"], row["says"], text, row.get("leaves", ""), row.get("makes", 0)
    )


@cache
def _phrases() -> dict[str, Mapping[str, Any]]:
    rows = _table()["ways"]
    return {word: row for row in rows for word in (*row["words"], row["way"])}


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data(_PACKAGE, "tools.yaml")
    return table
