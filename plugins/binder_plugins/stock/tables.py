"""The plugin's tables to series and gauges."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from typing import Any

from binder.api import Gauge, Series, load_data, parse_size, series_of

PACKAGE = "binder_plugins.stock"
_TABLES = (
    (PACKAGE, "sections.yaml"),
    ("binder_trade.drills", "drills.yaml"),
    (PACKAGE, "gauges.yaml"),
)
Rows = Iterable[Mapping[str, Any]]


@cache
def all_sizes() -> tuple[Series | Gauge, ...]:
    """Every series and gauge of the tables, read once; pairs and decades are no plain series."""
    tables = [load_data(package, name) for package, name in _TABLES]
    series = [_series(row) for table in tables for row in table.get("series", ())]
    gauges = [_gauge(row) for table in tables for row in table.get("gauges", ())]
    return (*series, *gauges)


def _series(row: Mapping[str, Any]) -> Series:
    made: Series = series_of(row["name"], row["title"], row["members"], _source(row))
    return made


def _gauge(row: Mapping[str, Any]) -> Gauge:
    sizes = {str(member): parse_size(size) for member, size in row["members"].items()}
    return Gauge(row["name"], row["title"], sizes, _source(row))


def _source(row: Mapping[str, Any]) -> str:
    """The source, with the words that a figure nobody looked up must carry."""
    read = row["status"] == "verified"
    return row["source"] if read else f"{row['source']} (from memory)"
