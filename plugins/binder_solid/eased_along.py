"""From where to where a rod as bought is eased: from the end that goes in, to a land's far edge."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import HalfFact
from binder_solid.facts import FormFact
from binder_solid.stands_at import spans_on

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Design

    Span = tuple[float, float]

_NEAR = 1e-3


@dataclass(frozen=True, slots=True)
class Eased:
    """Stretches of a rod in mm off its left-hand end, for one of its mates.

    On `lands` the mate sits, `own` is eased to it. `passed` lies on its way too, but belongs to the
    mate nearer to the end. Nothing where the places are not known.
    """

    lands: tuple[Span, ...]
    own: tuple[Span, ...]
    passed: tuple[tuple[Span, HalfFact], ...]


def eased_along(half: HalfFact, design: Design) -> Eased:
    """What of a rod is eased so that a mate gets to its land: common practice, no source.

    It comes from the nearer end of the step: nothing of a rod as bought is thicker than that.
    """
    lands = _lands(half, design)
    ways = [(land, _way(land, half, design)) for land in lands]
    others = [
        (span, other)
        for other in design.facts.all(HalfFact)
        if other.item == half.item and other.place == half.place and other.joint != half.joint
        for span in _ways(other, design)
    ]
    passed = [
        (span, other)
        for land, way in ways
        for span, other in others
        if _is_in(span, way) and not _meet(span, land)
    ]
    own = [one for _, way in ways for one in _less(way, [span for span, _ in passed])]
    return Eased(lands, _merged(own), tuple(passed))


def _ways(half: HalfFact, design: Design) -> Iterator[Span]:
    yield from (_way(land, half, design) for land in _lands(half, design))


def _lands(half: HalfFact, design: Design) -> tuple[Span, ...]:
    """Where a mate sits; of pieces joined to one all, since the rod goes through it."""
    joint = design.joints.get(half.joint)
    other = next((one for one in joint.items if one != half.item), "") if joint is not None else ""
    made_of = design.fabrications.get(other)
    if made_of is None:
        return spans_on(half.item, other, design)
    pieces = {one.item for one in made_of.pieces}
    found = [span for name in sorted(pieces) for span in spans_on(half.item, name, design)]
    return ((min(low for low, _ in found), max(high for _, high in found)),) if found else ()


def _way(land: Span, half: HalfFact, design: Design) -> Span:
    """From the end of the step that a mate comes on by, to the far edge of its land."""
    low, high = land
    form = design.facts.about(FormFact, half.item)
    steps = form.stretches if form is not None else ()
    step = next((one for one in steps if one.name == half.place), None)
    if step is None:
        return land
    ways = ((min(step.start, low), high), (low, max(step.end, high)))
    return min(ways, key=lambda one: round(one[1] - one[0], 2))


def _less(way: Span, taken: Sequence[Span]) -> Iterator[Span]:
    """What is left of a stretch without others."""
    at, end = way
    for low, high in sorted(taken):
        if low > at + _NEAR:
            yield at, min(low, end)
        at = max(at, high)
    if at < end - _NEAR:
        yield at, end


def _merged(spans: Sequence[Span]) -> tuple[Span, ...]:
    found: list[Span] = []
    for low, high in sorted(spans):
        if found and low <= found[-1][1] + _NEAR:
            found[-1] = (found[-1][0], max(found[-1][1], high))
        else:
            found.append((low, high))
    return tuple(found)


def _is_in(span: Span, way: Span) -> bool:
    return way[0] - _NEAR <= span[0] and span[1] <= way[1] + _NEAR


def _meet(one: Span, other: Span) -> bool:
    return one[0] < other[1] - _NEAR and one[1] > other[0] + _NEAR
