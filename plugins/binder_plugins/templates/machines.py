"""The workshop's mills to the screws that wind their tables."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Workshop, shown_length


@dataclass(frozen=True, slots=True)
class Screws:
    """A machine by name; travel for one turn and for one line of its dials in mm, x then y."""

    name: str
    words: str
    dials: tuple[tuple[float, float], tuple[float, float]]


def screws_of(workshop: Workshop) -> Iterator[Screws]:
    """The mills of which both screws of the table are told."""
    for name, mill in workshop.entry.machines.mills.items():
        dials = mill.dials
        if dials is None or dials.x is None or dials.y is None:
            continue
        x, y = ((one.turn.mm, one.division.mm) for one in (dials.x, dials.y))
        words = [
            f"{shown_length(one.turn.exact, _units(str(one.turn.text)))} a turn, "
            f"{shown_length(one.division.exact, _units(str(one.division.text)))} a line"
            for one in (dials.x, dials.y)
        ]
        told = words[0] if words[0] == words[1] else f"X {words[0]}; Y {words[1]}"
        yield Screws(name, told, (x, y))


def _units(written: str) -> str:
    """A screw of an inch machine is told in inches."""
    return "inch" if written.endswith(("in", "tpi", "thou", '"')) else "mm"
