"""Where the copies of a part stand on a face of another that is scribed for them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_solid.laid_on import ENDS, LEVEL, facing, lies_on, said_side, span_on, way_of
from binder_solid.placed import PlacedFact
from binder_solid.stands_at import shown_mm

if TYPE_CHECKING:
    from binder.api import Design


@dataclass(frozen=True, slots=True)
class SetOn:
    """A `face` of the base with `lines` scribed on it, and how each copy is set there.

    `lines` says how far from which end; '' where a single copy is told by its edges alone. `side`
    is the side of the copy that lies on the face, `edges` how far in it stands.
    """

    face: str
    lines: str
    side: str
    edges: str


def set_on(base: str, mate: str, design: Design) -> SetOn | None:
    """How all copies of a mate that lie on one face of a base are set; None where not known.

    None as well where they lie askew, or not alike but for their way along one edge.
    """
    copies = list(design.facts.all(PlacedFact))
    mates = [one for one in copies if one.item == mate]
    for own in (one for one in copies if one.item == base):
        for normal, names in enumerate(ENDS):
            for end, face in enumerate(names):
                there = [one for one in mates if lies_on(own, face, one)]
                if there:
                    return _told(own, there, (normal, end), design)
    return None


def _told(
    own: PlacedFact, there: list[PlacedFact], at: tuple[int, int], design: Design
) -> SetOn | None:
    normal, end = at
    sides = {facing(one, way_of(own, normal), positive=end == 0) for one in there}
    lines, insets = "", []
    for axis in (n for n in range(3) if n != normal):
        spans = sorted(span_on(own, one, axis) for one in there)
        if spans[-1][0] - spans[0][0] <= LEVEL:
            insets.append(_inset(own, spans[0], axis, design))
        elif lines:
            return None
        else:
            far = [shown_mm(low - own.corners[0][axis], design) for low, _ in spans]
            lines = f"{', '.join(far[:-1])} and {far[-1]} from its {said_side(ENDS[axis][0])}"
            insets.append(f"the edge next to the {said_side(ENDS[axis][0])} on its line")
    if len(sides) != 1 or "" in sides:
        return None
    return SetOn(ENDS[normal][end], lines, said_side(sides.pop()), ", ".join(insets))


def _inset(own: PlacedFact, span: tuple[float, float], axis: int, design: Design) -> str:
    """How far in from the edges, or out over them, a copy stands along one axis."""
    low, high = span[0] - own.corners[0][axis], own.corners[1][axis] - span[1]
    if abs(low - high) <= LEVEL:
        how = "level with" if abs(low) <= LEVEL else _in_or_out(low, design)
        return f"{how} both edges"
    near, side = min((abs(low), 0), (abs(high), 1))
    gap = (low, high)[side]
    how = "level with" if near <= LEVEL else _in_or_out(gap, design)
    return f"{how} the {said_side(ENDS[axis][side])}"


def _in_or_out(gap: float, design: Design) -> str:
    return f"{shown_mm(abs(gap), design)} {'in from' if gap > 0 else 'out beyond'}"
