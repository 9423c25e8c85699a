"""Materials to what heat does to them: hardening, tempering, annealing, stress relief."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import MaterialFact, load_data

PACKAGE = "binder_plugins.finishing"
Range = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Heat:
    """The heats of a material in °C, least and most; None where it is not done.

    `soak` is minutes at heat for each 25 mm of thickness.
    """

    name: str
    hardens: bool
    harden: Range | None
    glow: str
    quench: str
    soak: int
    temper: str
    tempers: Range | None
    case: Range | None
    case_how: str
    anneal: Range | None
    anneal_how: str
    stress: Range | None
    ids: tuple[str, ...]
    groups: tuple[str, ...]
    skips: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Colour:
    """An oxide colour of tempering: °C, its name, and what is let down to it."""

    celsius: int
    colour: str
    use: str


@cache
def heats() -> tuple[Heat, ...]:
    """The table of materials, read once."""
    return tuple(_heat(row) for row in load_data(PACKAGE, "heat.yaml")["rows"])


@cache
def colours() -> tuple[Colour, ...]:
    """The table of colours, coolest first."""
    rows = load_data(PACKAGE, "tempering.yaml")["colours"]
    return tuple(Colour(row["celsius"], row["colour"], row["for"]) for row in rows)


def said(found: Range) -> str:
    """`770 to 790 °C`."""
    return f"{found[0]} to {found[1]} °C"


def heat_source() -> str:
    """What the heats go by."""
    return str(load_data(PACKAGE, "heat.yaml")["source"])


def colour_source() -> str:
    """What the colours go by."""
    return str(load_data(PACKAGE, "tempering.yaml")["source"])


def heat_for(fact: MaterialFact | None) -> Heat | None:
    """The row of a material, by its id before its group."""
    if fact is None:
        return None
    by_id = (row for row in heats() if fact.id in row.ids)
    by_group = (row for row in heats() if fact.group in row.groups and fact.id not in row.skips)
    return next(by_id, None) or next(by_group, None)


def colour_in(text: str) -> Colour | None:
    """The colour that a finish names (`tempered to dark straw`)."""
    plain = " ".join(text.lower().split())
    return next((one for one in colours() if one.colour in plain), None)


def _heat(row: Mapping[str, Any]) -> Heat:
    return Heat(
        row["name"],
        row["hardens"],
        _range(row, "harden"),
        row.get("glow", ""),
        row.get("quench", ""),
        row.get("soak", 0),
        row.get("temper", ""),
        _range(row, "tempers"),
        _range(row, "case"),
        row.get("case_how", ""),
        _range(row, "anneal"),
        row.get("anneal_how", ""),
        _range(row, "stress"),
        tuple(row.get("ids", ())),
        tuple(row.get("groups", ())),
        tuple(row.get("skips", ())),
    )


def _range(row: Mapping[str, Any], name: str) -> Range | None:
    found = row.get(name)
    return (found[0], found[1]) if found else None
