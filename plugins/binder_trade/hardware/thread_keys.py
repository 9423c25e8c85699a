"""Turns the printed name of a thread, such as 4-40 UNC, into its series, size and diameter."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from binder_trade.hardware.listing import NotListed, Table, nearest, plain, table, tables

_METRIC = re.compile(r"M([0-9]{1,3}(?:\.[0-9]{1,2})?)")
_ASSOCIATION = re.compile(r"([0-9]{1,2}) BA")
_UNIFIED = re.compile(r"([0-9]{1,2}(?:/[0-9]{1,2})?)-([0-9]{1,3}) (UNC|UNF)")
_WHITWORTH = re.compile(r"([0-9]{1,2}(?:/[0-9]{1,2})?) (BSW|BSF)")
_WAYS = "write it as M3, 2 BA, 4-40 UNC, 10-32 UNF or 1/4 BSW"


@dataclass(frozen=True, slots=True)
class ThreadKey:
    """A thread's name taken apart: `size` is its row in the tables of hardware; mm."""

    name: str
    series: str
    size: str
    nominal_mm: float


def thread_key(name: str) -> ThreadKey:
    """The series, row and diameter of a thread's printed name; raises NotListed."""
    if found := _METRIC.fullmatch(name):
        return ThreadKey(name, "M", plain(float(found[1])), float(found[1]))
    if found := _ASSOCIATION.fullmatch(name):
        return _listed(name, "BA", found[1])
    if found := _UNIFIED.fullmatch(name):
        return _unified(name, found[1], found[2], found[3])
    if found := _WHITWORTH.fullmatch(name):
        return _listed(name, found[2], found[1])
    raise NotListed(f"{name[:40]!r} is no thread that hardware is listed for", _WAYS)


def nominal_mm(name: str) -> float:
    """The nominal diameter in mm of a thread's printed name; raises NotListed."""
    return thread_key(name).nominal_mm


def sizes_mm(of: Table, series: str) -> dict[str, float]:
    """The rows of a table of one series by their printed names, with their diameters in mm."""
    if series == "M":
        return {printed(series, size): float(size) for size in of.rows}
    known = tables("threads.yaml")[series].rows
    return {printed(series, size): known[size]["d"] for size in of.rows if size in known}


def row_key(of: Table, key: ThreadKey) -> str:
    """The row of a table for a thread; raises NotListed that names the nearest listed threads."""
    if key.size in of.rows:
        return key.size
    reason = f"{of.standard} does not list {key.name}"
    raise NotListed(reason, nearest(sizes_mm(of, key.series), key.nominal_mm))


@cache
def printed(series: str, size: str) -> str:
    """The printed name of a row: series and size put together again."""
    if series == "M":
        return f"M{size}"
    if series in ("UNC", "UNF"):
        return f"{size}-{plain(_tpi(series, size))} {series}"
    return f"{size} {series}"


def _listed(name: str, series: str, size: str) -> ThreadKey:
    rows = table("threads.yaml", series)
    return ThreadKey(name, series, size, rows.row(size, name)["d"])


def _unified(name: str, size: str, tpi: str, series: str) -> ThreadKey:
    key = _listed(name, series, size)
    if _tpi(series, size) != int(tpi):
        raise NotListed(f"ASME B1.1 does not list {name}", f"listed: {printed(series, size)}")
    return key


def _tpi(series: str, size: str) -> float:
    return tables("threads.yaml")[series].rows[size]["tpi_no"]
