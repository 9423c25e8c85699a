"""Bent parts to the working of their developed length."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Given, Part, Working, exact, shown, shown_length
from binder_plugins.shapes.vocabulary.rods import Sheet, Wire

_HANDBOOK = "k: Machinery's Handbook, straight sections before bending (from memory)"


def laid_flat(part: Part, units: str) -> Iterator[Working]:
    """The sum behind the length of the strip or wire that a part is bent from."""
    if isinstance(part.shape, Sheet) and part.shape.bends:
        yield _sheet(part, part.shape, units)
    elif isinstance(part.shape, Wire):
        yield _wire(part, part.shape, units)


def _sheet(part: Part, shape: Sheet, units: str) -> Working:
    from binder_plugins.shapes.forming.bends import developed, turns_of

    given = [
        Given("T, thickness", shown_length(shape.thickness.exact, units), shape.thickness.span)
    ]
    for number, (bend, turn) in enumerate(zip(shape.bends, turns_of(shape), strict=True), 1):
        words = (
            f"{shown(bend.angle.quantity)}, R {shown_length(bend.inside.exact, units)}, "
            f"k {turn.k:.3f}"
        )
        given.append(Given(f"bend {number}", words, bend.at.span))
    return Working(
        id=f"{part.name}.developed",
        title=f"flat length of the {part.title}",
        given=tuple(given),
        formula="straights + sum of angle × (R + k T)",
        result=shown_length(exact(developed(shape)), units),
        because="the neutral line keeps its length",
        source=_HANDBOOK,
        span=part.at,
    )


def _wire(part: Part, shape: Wire, units: str) -> Working:
    from binder_plugins.shapes.forming.rods import developed

    sizes = (("d, wire", shape.diameter), ("R, bends inside", shape.bend))
    return Working(
        id=f"{part.name}.developed",
        title=f"length of wire for the {part.title}",
        given=tuple(Given(name, shown_length(one.exact, units), one.span) for name, one in sizes),
        formula="legs + sum of (R + d/2) × (angle − 2 tan(angle/2))",
        result=shown_length(exact(developed(shape)), units),
        because="the middle line of the wire keeps its length",
        source="geometry",
        span=part.at,
    )
