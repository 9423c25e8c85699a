"""Turns a cited data file into tables whose rows are in millimetres, and names the nearest row."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from math import isfinite
from typing import Any, TypeAlias

from binder.api import load_data

PACKAGE = "binder_trade.hardware"
MM_PER_INCH = 25.4
_EXACT_INCH = Fraction(254, 10)
# Columns that are no lengths: angles, sizes of a cross recess, micrometres, forces, counts.
_NO_LENGTHS = ("_deg", "_no", "_um", "_kn")
_EXACT = 1e-6

Row: TypeAlias = Mapping[str, float]


class NotListed(LookupError):
    """A size that no table here lists: a plain reason, and what would serve."""

    def __init__(self, reason: str, way_out: str) -> None:
        super().__init__(f"{reason}; {way_out}")
        self.reason = reason
        self.way_out = way_out


@dataclass(frozen=True, slots=True, kw_only=True)
class Listed:
    """What every record says of its origin: the standard, and whether its table was read."""

    standard: str
    status: str

    @property
    def source(self) -> str:
        """The standard as printed, with the words for figures that no table was read for."""
        return cited(self.standard, self.status)


@dataclass(frozen=True, slots=True)
class Table:
    """One published table; lengths in mm, `words` for what is no number."""

    name: str
    series: tuple[str, ...]
    standard: str
    source: str
    status: str
    words: Mapping[str, str]
    rows: Mapping[str, Row]
    from_memory: frozenset[str]

    def status_of(self, key: str) -> str:
        """Whether the row was read in a published table: verified or memory."""
        return "memory" if key in self.from_memory else self.status

    def row(self, key: str, asked: str = "") -> Row:
        """The row of a key, in mm; raises NotListed with the nearest listed keys."""
        if key in self.rows:
            return self.rows[key]
        reason = f"{self.standard} does not list {asked or key}"
        raise NotListed(reason, f"listed: {listing(self.rows)}")

    def at(self, size_mm: float, what: str) -> str:
        """The key of a row named by its size in mm; raises NotListed with the nearest two."""
        for key in self.rows:
            if abs(float(key) - size_mm) < _EXACT:
                return key
        reason = f"{self.standard} does not list {what} {plain(size_mm)} mm"
        raise NotListed(reason, nearest({key: float(key) for key in self.rows}, size_mm, " mm"))


def cited(source: str, status: str) -> str:
    """A source as printed; one from memory says so, and common practice speaks for itself."""
    if status == "verified" or source.startswith("common practice"):
        return source
    return f"{source} (from memory)"


def nearest(sizes: Mapping[str, float], asked_mm: float, unit: str = "") -> str:
    """The way out that names the listed sizes next below and next above the one asked for."""
    below = [key for key in sizes if sizes[key] < asked_mm - _EXACT]
    above = [key for key in sizes if sizes[key] > asked_mm + _EXACT]
    found = []
    if below:
        found.append(max(below, key=lambda key: sizes[key]))
    if above:
        found.append(min(above, key=lambda key: sizes[key]))
    if not found or not isfinite(asked_mm):
        return f"listed: {listing(sizes)}{unit}"
    return f"nearest listed: {', '.join(found)}{unit}"


def listing(keys: Iterable[str]) -> str:
    """The listed keys as one line of words."""
    return ", ".join(keys) or "none"


def plain(size: float) -> str:
    """A number as makers write it, without a trailing zero."""
    return f"{size:g}"


@cache
def measure(value: float | str, unit: str) -> float:
    """A figure of a data file in mm: a number, or inches as text such as 1 1/4."""
    if unit != "in" and not isinstance(value, str):
        return float(value)
    number = sum((Fraction(part) for part in str(value).split()), Fraction(0))
    return float(number * _EXACT_INCH) if unit == "in" else float(number)


@cache
def tables(name: str) -> Mapping[str, Table]:
    """The tables of a data file by name, read once."""
    rows: Mapping[str, Mapping[str, Any]] = load_data(PACKAGE, name)
    return {key: _table(key, written) for key, written in rows.items()}


def table(file: str, name: str) -> Table:
    """One table of a data file."""
    return tables(file)[name]


def _table(name: str, written: Mapping[str, Any]) -> Table:
    unit = written.get("unit", "mm")
    columns: list[str] = written["columns"]
    return Table(
        name=name,
        series=tuple(written.get("series", ())),
        standard=written["standard"],
        source=written["source"],
        status=written["status"],
        words={key: value for key, value in written.items() if isinstance(value, str)},
        rows={str(key): _row(columns, row, unit) for key, row in written["rows"].items()},
        from_memory=frozenset(str(key) for key in written.get("from_memory", ())),
    )


def _row(columns: list[str], row: list[Any], unit: str) -> Row:
    """The figures of a row; a dash in the data is a figure that the table does not give."""
    pairs = zip(columns, row, strict=True)
    return {
        column: measure(value, "mm" if column.endswith(_NO_LENGTHS) else unit)
        for column, value in pairs
        if value is not None
    }
