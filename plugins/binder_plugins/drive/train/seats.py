"""A pulley to the seats of its belt: the steps that carry it, and how deep each groove is."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from binder.api import Design, End, Feature, Part, Size


@dataclass(frozen=True, slots=True)
class Seat:
    """One step of a pulley: its number in the shape, its outside, and the depth of its groove.

    The outside may be to suit. `sunk` is how much smaller in mm the running diameter is: a belt
    lies on the bottom of its groove (common practice, no source).
    """

    number: int
    outside: Size
    sunk: Fraction


def seats_of(end: End, section: Fraction, design: Design) -> tuple[Seat, ...]:
    """The seats in the order in which the part lists them; none where it tells no steps."""
    part = design.parts.get(end.item)
    if part is None:
        return ()
    if part.shape_kind == "pulley":
        sunk = 2 * groove_depth(part.shape, section) - section
        sizes: Sequence[Size] = getattr(part.shape, "diameters", ())
        return tuple(Seat(number, size, sunk) for number, size in enumerate(sizes))
    return tuple(_turned(part, end, section)) if part.shape_kind == "turned" else ()


def groove_depth(shape: object, section: Fraction) -> Fraction:
    """How deep the grooves of a pulley are in mm: as told, else as deep as its belt is thick."""
    if getattr(shape, "groove", "") == "flat":
        return Fraction(0)
    told = getattr(shape, "depth", None) or getattr(shape, "belt", None)
    return told.exact if isinstance(told, Size) else section


def grooves_of(part: Part, end: End) -> Iterator[Feature]:
    """The grooves that the end may mean: all, or that of the step or groove that it names."""
    for one in part.features:
        if one.kind == "grooved" and end.place in ("", one.name, getattr(one.entry, "on", None)):
            yield one


def cut_depth(groove: Feature, section: Fraction) -> Fraction:
    """The depth of a groove in mm; half of its cord where nothing is said."""
    depth = getattr(groove.entry, "depth", None)
    return depth.exact if isinstance(depth, Size) else section / 2


def _turned(part: Part, end: End, section: Fraction) -> Iterator[Seat]:
    """The steps with a groove; where none has one, those that are to suit: a flat belt's."""
    steps = {str(step.name): number for number, step in enumerate(part.shape)}  # type: ignore[arg-type, var-annotated]
    sizes = [step.diameter for step in part.shape]  # type: ignore[attr-defined]
    grooves = list(grooves_of(part, end))
    for groove in grooves:
        number = steps.get(str(getattr(groove.entry, "on", None)))
        if number is not None and sizes[number] is not None:
            yield Seat(number, sizes[number], 2 * cut_depth(groove, section) - section)
    for name, number in steps.items() if not grooves else ():
        size = sizes[number]
        if size is not None and size.is_to_suit and end.place in ("", name):
            yield Seat(number, size, -section)
