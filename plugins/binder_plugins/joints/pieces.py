"""Rivet holes that must meet to the task in which the deep ones are drilled through the thin."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import Before, Design, Fabrication, PlaceFact, Task, TaskKind, TogetherFact
from binder_plugins.joints.together import Drilling

IN_PLACE = "drilled in place"
# A drill that goes so many times its own thickness deep wanders off its mark: common practice.
_DEEP = 6
_MEET = "holes drilled alone do not meet so deep: the plate is the jig"
_FIRST = "its holes are drilled before the rivets go in"


def drilled_in_place(design: Design) -> Iterator[Drilling]:
    """A task for each riveted fabrication with a deep hole of the size of a plate's."""
    for one in design.fabrications.values():
        lines = tuple(_lines(one, design)) if one.joined.startswith("riveted") else ()
        if lines:
            yield _drilling(one, lines, design)


def _lines(one: Fabrication, design: Design) -> Iterator[tuple[str, str]]:
    """Pairs of holes: that of the plate which is the jig, and the deep one behind it."""
    holes = [place for piece in one.pieces for place in _holes(piece.item, design)]
    thin = [place for place in holes if not _is_deep(place)]
    for place in holes:
        jig = next((jig for jig in thin if jig.diameter == place.diameter), None)
        if _is_deep(place) and jig is not None:
            yield jig.subject, place.subject


def _holes(item: str, design: Design) -> Iterator[PlaceFact]:
    part = design.parts.get(item)
    for feature in part.features if part is not None else ():
        place = design.facts.about(PlaceFact, f"{item}.{feature.name}")
        if place is not None and place.kind == "drilled" and place.diameter is not None:
            yield place


def _is_deep(place: PlaceFact) -> bool:
    deep, across = place.thickness or Fraction(0), place.diameter or Fraction(1)
    return place.is_through and deep > _DEEP * across


def _drilling(one: Fabrication, lines: tuple[tuple[str, str], ...], design: Design) -> Drilling:
    task = Task(
        f"drill pieces of {one.name}",
        f"drill the pieces of the {one.title} in place",
        TaskKind.JOIN,
        one.name,
        "clamped as they will stand; the holes of the plates lead the drill from either side",
        one.at,
    )
    names = [item.title for piece in one.pieces if (item := design.parts.get(piece.item))]
    up = f"clamp the {' and the '.join(dict.fromkeys(names))} together as they will stand"
    left = tuple(deep for _, deep in lines)
    fact = TogetherFact(task.id, IN_PLACE, (), lines, left, up)
    befores = [
        Before(f"make {piece.item}", task.id, _MEET, at=one.at)
        for piece in one.pieces
        if piece.item in design.parts
    ]
    befores.append(Before(task.id, f"join {one.name}", _FIRST, is_must=True, at=one.at))
    return Drilling(task, fact, tuple(befores))
