"""How a part is laid on a face of another: which side down, which edges level, what stands out."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, minus, placed
from binder_solid.stands_at import corners_of, shown_mm

if TYPE_CHECKING:
    from binder.api import Design
    from binder_solid.facts import Located
    from binder_solid.forms import Vector

# What counts as touching and as level, in mm; common practice, no source.
_TOUCHES, LEVEL = 0.05, 0.02
_ASKEW = 1e-6
ENDS = (("left", "right"), ("front", "back"), ("underside", "top"))


def laid_on(base: str, face: str, mate: str, design: Design) -> str:
    """`its top on it, its left end level with the back, its front 11 mm beyond the top`.

    Told of the copy of the mate that lies on the face; the sides of both are those of the drawing.
    '' where no copy is known to lie there, or where it lies askew.
    """
    found = _pair(base, face, mate, design)
    if found is None:
        return ""
    own, other = found
    normal = _axis(face)
    here = facing(other, way_of(own, normal), positive=face == ENDS[normal][0])
    edges = [edge_of(own, other, n, design) for n in range(3) if n != normal]
    if not here or not all(edges):
        return ""
    hand = "the one of the opposite hand, " if other.is_opposite else ""
    return f"{hand}its {here} on it, {', '.join(edges)} of the work"


def rods_through(base: str, mate: str, holes: tuple[Located, ...], design: Design) -> list[Located]:
    """The holes of a mate that a rod goes through from copy to copy beside the base, two at most.

    The two that lie farthest apart of those that are given.
    """
    own = next((one for one in design.facts.all(PlacedFact) if one.item == base), None)
    other = next(
        (one for one in design.facts.all(PlacedFact) if one.item == mate and not one.is_opposite),
        None,
    )
    if own is None or other is None:
        return []
    clear = []
    for one in holes:
        spot = placed(one.spots[0], other.frame)
        way = minus(placed(one.frame.z, other.frame), other.frame.origin)
        if _is_clear(own, spot, way, one):
            clear.append(one)
    apart = {
        (a.name, b.name): (_far(a, b), [a, b]) for n, a in enumerate(clear) for b in clear[n + 1 :]
    }
    return max(apart.values(), key=lambda one: one[0])[1] if apart else clear[:1]


def overhangs(base: str, face: str, mate: str, design: Design) -> bool:
    """Whether a mate on a face stands out over every pair of sides that a vice could hold.

    False where no copy is known to lie there.
    """
    found = _pair(base, face, mate, design)
    if found is None:
        return False
    own, other = found
    return all(
        low < own.corners[0][n] - LEVEL or high > own.corners[1][n] + LEVEL
        for n in range(3)
        if n != _axis(face)
        for low, high in [span_on(own, other, n)]
    )


def reach_along(item: str, axis: int, design: Design) -> float:
    """From end to end of all copies of a part along an axis of its own, in mm; 0 if not known."""
    copies = [one for one in design.facts.all(PlacedFact) if one.item == item]
    spans = [span_on(copies[0], one, axis) for one in copies]
    return max((high for _, high in spans), default=0.0) - min(
        (low for low, _ in spans), default=0.0
    )


def _far(one: Located, other: Located) -> float:
    way = minus(one.spots[0], other.spots[0])
    return dot(way, way)


def _is_clear(own: PlacedFact, spot: Vector, way: Vector, hole: Located) -> bool:
    """Whether a rod along a hole goes past the part, seen along the hole."""
    half, off = (hole.diameter or 0.0) / 2, minus(spot, own.frame.origin)
    return any(
        not own.corners[0][n] - half < dot(off, way_of(own, n)) < own.corners[1][n] + half
        for n in range(3)
        if abs(dot(way_of(own, n), way)) < _ASKEW
    )


def _pair(base: str, face: str, mate: str, design: Design) -> tuple[PlacedFact, PlacedFact] | None:
    """A copy of the base, and one of the mate that touches it there."""
    placed_ones = list(design.facts.all(PlacedFact))
    for own in (one for one in placed_ones if one.item == base):
        for other in (one for one in placed_ones if one.item == mate):
            if lies_on(own, face, other):
                return own, other
    return None


def lies_on(own: PlacedFact, face: str, other: PlacedFact) -> bool:
    """Whether a part touches a face of another and lies over it."""
    normal = _axis(face)
    spans = [span_on(own, other, n) for n in range(3)]
    beside = [
        spans[n][1] > own.corners[0][n] and spans[n][0] < own.corners[1][n]
        for n in range(3)
        if n != normal
    ]
    is_far = face == ENDS[normal][1]
    gap = spans[normal][0] - own.corners[1][normal] if is_far else (
        own.corners[0][normal] - spans[normal][1]
    )  # fmt: skip
    return all(beside) and abs(gap) < _TOUCHES


def edge_of(own: PlacedFact, other: PlacedFact, axis: int, design: Design) -> str:
    """Along an axis of the base: which side of the mate is level, or how far out or in it is."""
    low, high = span_on(own, other, axis)
    gaps = (own.corners[0][axis] - low, high - own.corners[1][axis])
    near = min((0, 1), key=lambda n: abs(gaps[n]))
    side = facing(other, way_of(own, axis), positive=bool(near))
    end = ENDS[axis][near]
    if not side:
        return ""
    if abs(gaps[near]) < LEVEL:
        return f"its {said_side(side)} level with the {said_side(end)}"
    off = shown_mm(abs(gaps[near]), design)
    how = "beyond" if gaps[near] > 0 else "in from"
    return f"its {said_side(side)} {off} {how} the {said_side(end)}"


def facing(one: PlacedFact, way: Vector, *, positive: bool) -> str:
    """The side of a part, as it is drawn, that looks along a direction; '' where it lies askew."""
    for n, names in enumerate(ENDS):
        along = dot(way_of(one, n), way) * (1 if positive else -1)
        # What is of the opposite hand is drawn as the first: its front is where the back was.
        along *= -1 if one.is_opposite and n == 1 else 1
        if abs(along) > 1 - _ASKEW:
            return names[along > 0]
    return ""


def said_side(side: str) -> str:
    """`left end`, `front`: a side as it is told."""
    return f"{side} end" if side in ENDS[0] else side


def _axis(face: str) -> int:
    return next(n for n, names in enumerate(ENDS) if face in names)


def way_of(one: PlacedFact, axis: int) -> Vector:
    """An axis of a part, as it lies in the model."""
    return (one.frame.x, frame_y(one.frame), one.frame.z)[axis]


def span_on(own: PlacedFact, other: PlacedFact, axis: int) -> tuple[float, float]:
    """From where to where in mm a part reaches along an axis of another, in its own sizes."""
    along = [dot(minus(spot, own.frame.origin), way_of(own, axis)) for spot in corners_of(other)]
    return min(along), max(along)
