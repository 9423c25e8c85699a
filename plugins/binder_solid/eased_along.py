"""From where to where a rod as bought is eased: from the end that goes in, to a land's far edge."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import HalfFact, JointFact, Role, ShaftFact
from binder_solid.facts import FormFact
from binder_solid.stands_at import spans_on

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Design, Joint
    from binder_solid.facts import Stretch

    Span = tuple[float, float]

_NEAR = 1e-3
# What is polished along with the rest, in mm: common practice, no source.
_REST_MM = 0.5


@dataclass(frozen=True, slots=True)
class Eased:
    """Stretches of a rod in mm off its left-hand end, for one of its mates.

    On `lands` the mate sits, `own` is eased to it; `from_ends` tells this by the end, `left` or
    `right`, from which the mate comes. `passed` lies on its way too, but belongs to the mate nearer
    to the end. Nothing where the places are not known.
    """

    lands: tuple[Span, ...]
    own: tuple[Span, ...]
    passed: tuple[tuple[Span, HalfFact], ...]
    from_ends: tuple[tuple[str, Span], ...] = ()

    def from_end(self, end: str) -> tuple[Span, ...]:
        """What is eased for the mate where it comes on from an end; '' stands for either."""
        return self.own if not end else tuple(one for name, one in self.from_ends if name == end)


def eased_along(half: HalfFact, design: Design) -> Eased:
    """What of a rod is eased so that a mate gets to its land: common practice, no source.

    It comes from the nearer end of the step: nothing of a rod as bought is thicker than that.
    """
    lands = _lands(half, design)
    ways = [(land, *_way(land, half, design)) for land in lands]
    others = [
        (span, other)
        for other in design.facts.all(HalfFact)
        if other.item == half.item and other.place == half.place and other.joint != half.joint
        for span in _ways(other, design)
    ]
    passed = [
        (span, other)
        for land, _, way in ways
        for span, other in others
        if _is_in(span, way) and not _meet(span, land)
    ]
    own = [(end, one) for _, end, way in ways for one in _less(way, [span for span, _ in passed])]
    return Eased(lands, _merged([one for _, one in own]), tuple(passed), tuple(own))


def comes_from(joint: Joint, design: Design) -> str:
    """The end of a rod from which the mate goes on that the rod is eased for; '' for either.

    The way from the other end is as bought, or eased for other mates. A mate that sits at both
    ends, or for which all of a step is eased, is told by neither.
    """
    for half in (one for one in design.facts.all(HalfFact) if one.joint == joint.name):
        lands, step = _lands(half, design), _step(half, design)
        if half.is_eased and step is not None and len(lands) == 1:
            end, (low, high) = _way(lands[0], half, design)
            rest = step.end - high if end == "left" else low - step.start
            return end if rest > _REST_MM else ""
    return ""


def come_over(half: HalfFact, end: str, design: Design) -> tuple[str, ...]:
    """The other steps as thick as its own over which a mate comes on from an end.

    They are as bought: what is eased begins beyond them, so the mate is tried over them as well.
    """
    form, step = design.facts.about(FormFact, half.item), _step(half, design)
    if form is None or step is None or end not in ("left", "right"):
        return ()
    return tuple(
        one.name
        for one in form.stretches
        if (one.end <= step.start + _NEAR if end == "left" else one.start >= step.end - _NEAR)
        and max(one.across, one.end_across or 0.0) >= step.across - _NEAR
    )


def slides_through(half: HalfFact, design: Design) -> tuple[str, Span] | None:
    """The end of a rod that goes in first, and the stretch that only passes the farther bearing.

    That is what lies between its bearings, where nothing stands there for good. None for a rod
    with one bearing, and for one whose bearings are put on from its two ends.
    """
    shaft, lands = design.facts.about(ShaftFact, half.item), sorted(_lands(half, design))
    if shaft is None or len(lands) < 2:
        return None
    bears = [n for n, one in enumerate(shaft.pieces) if one.role is Role.BEARING]
    if half.joint not in {shaft.pieces[n].joint for n in bears}:
        return None
    lasting = [n for n, one in enumerate(shaft.pieces) if _lasts(one.joint, design)]
    if any(bears[0] < n < bears[-1] for n in lasting):
        return None
    end = "right" if lasting and all(n < bears[0] for n in lasting) else "left"
    between = (lands[0][1], lands[-1][0])
    return (end, between) if between[1] > between[0] + _NEAR else None


def _lasts(joint: str, design: Design) -> bool:
    fact = design.facts.about(JointFact, joint)
    return fact is not None and fact.is_lasting


def _ways(half: HalfFact, design: Design) -> Iterator[Span]:
    yield from (_way(land, half, design)[1] for land in _lands(half, design))


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


def _way(land: Span, half: HalfFact, design: Design) -> tuple[str, Span]:
    """The end that a mate comes on by, and from that end of the step to its land's far edge."""
    low, high = land
    step = _step(half, design)
    if step is None:
        return "", land
    ways = (("left", (min(step.start, low), high)), ("right", (low, max(step.end, high))))
    return min(ways, key=lambda one: round(one[1][1] - one[1][0], 2))


def _step(half: HalfFact, design: Design) -> Stretch | None:
    form = design.facts.about(FormFact, half.item)
    steps = form.stretches if form is not None else ()
    return next((one for one in steps if one.name == half.place), None)


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
