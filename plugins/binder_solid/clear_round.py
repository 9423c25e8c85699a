"""Where a rod can lie in a V: from where to where it is round, of one size, and nothing is on it.

A part that leans across it counts as far as it comes near the V, not by its whole envelope.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import JointFact
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, minus
from binder_solid.stands_at import corners_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from binder.api import Design
    from binder_solid.facts import Stretch
    from binder_solid.forms import Vector

    Span = tuple[float, float]

_NEAR = 1e-3
# Half the width of a small V-block and how far it reaches under the axis, in mm. Common
# practice, no source.
_BESIDE_MM, _UNDER_MM = 20.0, 40.0
_CUT_AWAY = frozenset({"flatted", "slotted", "keywayed"})
_QUADS = ((0, 1, 3, 2), (4, 5, 7, 6), (0, 1, 5, 4), (2, 3, 7, 6), (0, 2, 6, 4), (1, 3, 7, 5))


@dataclass(frozen=True, slots=True)
class ClearRound:
    """From `low` to `high` off the left-hand end a rod is clear, round and `across` thick; mm."""

    low: float
    high: float
    across: float

    @property
    def long(self) -> float:
        """How long it is, in mm."""
        return self.high - self.low


def clear_round(
    rod: str, others: Sequence[str], holes: Iterable[str], up: Vector | None, design: Design
) -> tuple[ClearRound, ...]:
    """The clear stretches of a rod, from its left-hand end on.

    `others` are put to it now, what is fixed to it for good is there already; through `holes` a
    drill comes out into the V. `up`, in the model, looks away from the V. Nothing where the places
    of the others are not known.
    """
    form, first = design.facts.about(FormFact, rod), _first(rod, design)
    if form is None or first is None or up is None:
        return ()
    there = [*others, *_lasting(rod, design)]
    copies = [one for name in there for one in pieces_of(name, design)]
    if not all(pieces_of(name, design) for name in others):
        return ()
    taken = [span for one in copies if (span := _beside(first, one, up)) is not None]
    through = set(holes)
    for one in form.located:
        half = (one.length or one.diameter or 0.0) / 2
        if one.face == "across" and (one.kind in _CUT_AWAY or one.name in through):
            taken.append((one.frame.origin[0] - half, one.frame.origin[0] + half))
        elif one.kind == "screwed":
            x = one.frame.origin[0]
            taken += [(s.start, s.end) for s in form.stretches if s.start <= x <= s.end]
    free: list[ClearRound] = []
    for low, high, across in _rounds(form.stretches):
        free += [ClearRound(a, b, across) for a, b in _without((low, high), taken)]
    return tuple(free)


def hangs_under(rod: str, other: str, up: Vector, design: Design) -> float | None:
    """How far in mm the lowest of another part lies under the axis of a rod; None if unknown."""
    first, copies = _first(rod, design), pieces_of(other, design)
    if first is None or not copies:
        return None
    found = (dot(minus(c, first.frame.origin), up) for one in copies for c in corners_of(one))
    return -min(found)


def pieces_of(item: str, design: Design) -> list[PlacedFact]:
    """The copies of a part, or of all pieces of what is joined of several, where they stand."""
    whole = design.fabrications.get(item)
    names = {piece.item for piece in whole.pieces} if whole is not None else {item}
    return [one for one in design.facts.all(PlacedFact) if one.item in names]


def _first(rod: str, design: Design) -> PlacedFact | None:
    return next((one for one in design.facts.all(PlacedFact) if one.item == rod), None)


def _lasting(rod: str, design: Design) -> Iterator[str]:
    """What is joined to a rod for good: before the last holes go through it."""
    for joint in design.joints.values():
        said = design.facts.about(JointFact, joint.name)
        if said is not None and said.is_lasting and rod in joint.items:
            yield from (name for name in joint.items if name != rod)


def _rounds(steps: Sequence[Stretch]) -> Iterator[tuple[float, float, float]]:
    """Runs of steps of one diameter, of which no tool takes more along."""
    at: tuple[float, float, float] | None = None
    for one in steps:
        is_round = not one.corners and abs(one.across - one.end_across) < _NEAR
        is_round = is_round and one.aside == (0.0, 0.0)
        if is_round and at is not None and abs(one.across - at[2]) < _NEAR:
            at = (at[0], one.end, at[2])
            continue
        if at is not None:
            yield at
        at = (one.start, one.end, one.across) if is_round else None
    if at is not None:
        yield at


def _without(way: Span, taken: Iterable[Span]) -> Iterator[Span]:
    at, end = way
    for low, high in sorted(taken):
        if low > at + _NEAR:
            yield at, min(low, end)
        at = max(at, high)
        if at >= end:
            return
    if at < end - _NEAR:
        yield at, end


def _beside(rod: PlacedFact, other: PlacedFact, up: Vector) -> Span | None:
    """From where to where along a rod another part comes into the room of a V-block; geometry.

    The V ends at the height of the axis: what lies on top of the rod is not in its way.
    """
    axis = rod.frame.x
    side = cross(axis, up)
    radius = max(abs(x) for corner in rod.corners for x in corner[1:])
    corners = [minus(one, rod.frame.origin) for one in corners_of(other)]
    points = [(dot(c, axis), dot(c, side), dot(c, up)) for c in corners]
    wide = max(_BESIDE_MM, radius)
    planes = ((1, 1.0, wide), (1, -1.0, wide), (2, 1.0, 0.0), (2, -1.0, _UNDER_MM))
    along: list[float] = []
    for quad in _QUADS:
        face = [points[n] for n in quad]
        for plane in planes:
            face = _clipped(face, *plane)
        along += [one[0] for one in face]
    return (min(along), max(along)) if along and max(along) - min(along) > _NEAR else None


def _clipped(face: list[Vector], axis: int, sign: float, most: float) -> list[Vector]:
    """The part of a polygon whose points lie no farther out than `most` along an axis."""
    found: list[Vector] = []
    for one, after in zip(face, face[1:] + face[:1], strict=True):
        a, b = sign * one[axis] - most, sign * after[axis] - most
        if a <= 0:
            found.append(one)
        if a * b < 0:
            t = a / (a - b)
            x, y, z = (p + (q - p) * t for p, q in zip(one, after, strict=True))
            found.append((x, y, z))
    return found
