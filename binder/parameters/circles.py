"""Sizes that follow from one another in a circle to one finding with every line."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from binder.diagnostics import Diagnostic, Labelled, Span
from binder.parameters import codes
from binder.parameters.expression import Expression
from binder.parameters.functions import PICTURE
from binder.parameters.nodes import Measure, SizeName, walked
from binder.parameters.places import place_of
from binder.source.tree import Written

MOST_NAMED = 6
MOST_RELATED = 100

Behind = Callable[[str], Sequence[tuple[Written, Expression]]]


def circle_finding(circle: Sequence[str], behind: Behind) -> Diagnostic:
    """The finding for a circle, each of whose names follows from the next.

    `behind` gives the expressions of a name; the picture has several.
    """
    links = list(zip(circle, [*circle[1:], circle[0]], strict=True))
    places = [_place(behind(name), after) for name, after in links]
    related = [
        Labelled(place, f"{name} follows from {after}")
        for place, (name, after) in zip(places[1:MOST_RELATED], links[1:], strict=False)
    ]
    shown = [*circle[:MOST_NAMED], *(["\u2026"] if len(circle) > MOST_NAMED else []), circle[0]]
    message = f"sizes follow from one another in a circle: {', '.join(shown)}"
    return codes.SIZES_IN_A_CIRCLE.at(
        places[0],
        message,
        label=f"{circle[0]} follows from {links[0][1]}",
        related=related,
        help="give one of them a size of its own",
    )


def _place(texts: Sequence[tuple[Written, Expression]], name: str) -> Span:
    """Where an expression names a size, or measures on the picture."""
    for text, expression in texts:
        for node in walked(expression.root):
            is_named = isinstance(node, SizeName) and node.name == name
            if is_named or (name == PICTURE and isinstance(node, Measure)):
                return place_of(text, node.start, node.end - node.start)
    return texts[0][0].span
