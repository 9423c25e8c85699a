"""Layers and edges to places in columns, with few crossings and way points past boxes.

The usual layered drawing of a graph without rings: an edge over more than one layer is led
through way points, and each column is sorted by the mean place of its neighbours, to and
fro. Source: the barycentre method, common knowledge of graph drawing.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import pairwise

SWEEPS = 6


@dataclass(frozen=True, slots=True)
class Columns:
    """Places as (column, row) of boxes and way points, and each edge as a path of names."""

    places: Mapping[str, tuple[int, float]]
    paths: tuple[tuple[str, ...], ...]
    width: int
    height: int


def arranged(layers: Mapping[str, int], edges: Iterable[tuple[str, str]]) -> Columns:
    """The places of all boxes; equal input gives equal places."""
    pairs = list(edges)
    found = _pulled(layers, pairs)
    columns: dict[int, list[str]] = {}
    for name in layers:
        columns.setdefault(found[name], []).append(name)
    paths = tuple(_path(earlier, later, found, columns) for earlier, later in pairs)
    _sort_columns(columns, paths)
    height = max((len(column) for column in columns.values()), default=0)
    places = {
        name: (layer, row + (height - len(column)) / 2)
        for layer, column in columns.items()
        for row, name in enumerate(column)
    }
    return Columns(places, paths, max(columns, default=-1) + 1, height)


def _pulled(layers: Mapping[str, int], edges: list[tuple[str, str]]) -> dict[str, int]:
    """Layers with each box moved up to just before the first one that waits for it."""
    found = dict(layers)
    waiting: dict[str, list[str]] = {}
    for earlier, later in edges:
        waiting.setdefault(earlier, []).append(later)
    for name in sorted(found, key=lambda one: -found[one]):
        if name in waiting:
            found[name] = min(found[later] for later in waiting[name]) - 1
    return found


def _path(
    earlier: str, later: str, layers: Mapping[str, int], columns: dict[int, list[str]]
) -> tuple[str, ...]:
    """The edge with a way point in every column that it passes; these join the columns."""
    between = range(layers[earlier] + 1, layers[later])
    points = [f"{earlier} > {later} @ {layer}" for layer in between]
    for layer, point in zip(between, points, strict=True):
        columns.setdefault(layer, []).append(point)
    return (earlier, *points, later)


def _sort_columns(columns: dict[int, list[str]], paths: Iterable[tuple[str, ...]]) -> None:
    left: dict[str, list[str]] = {}
    right: dict[str, list[str]] = {}
    for path in paths:
        for one, other in pairwise(path):
            right.setdefault(one, []).append(other)
            left.setdefault(other, []).append(one)
    for sweep in range(SWEEPS):
        forward = sweep % 2 == 0
        for layer in sorted(columns, reverse=not forward):
            _sort_by(columns, layer, left if forward else right, -1 if forward else 1)


def _sort_by(
    columns: dict[int, list[str]], layer: int, neighbours: Mapping[str, list[str]], side: int
) -> None:
    rows = {name: row for row, name in enumerate(columns.get(layer + side, ()))}
    here = {name: row for row, name in enumerate(columns[layer])}

    def middle(name: str) -> float:
        known = [rows[one] for one in neighbours.get(name, ()) if one in rows]
        return sum(known) / len(known) if known else float(here[name])

    columns[layer].sort(key=middle)
