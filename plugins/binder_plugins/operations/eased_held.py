"""By what a rod is held while a stretch of it is eased: a land, its other half, or the bar."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_solid.eased_along import eased_along

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.eased_along import Eased
    from binder_solid.facts import Located, Stretch

    Span = tuple[float, float]

ENDS = ("left", "right")
# A grip shorter than so many times the thickness lets the rod swing: common practice, no source.
_GRIP = 1.0
_SAME = 1e-6
# What is cut along the edge of an end; the rest lies where its spots are.
_EDGES = frozenset({"chamfered", "rounded", "bevelled"})


@dataclass(frozen=True, slots=True)
class Stretched:
    """What lies bare in one grip: `bare` of a rod `total` mm long, told from its `end`.

    `jaws` is the land that is gripped, without what is cut into it. An end of '' leaves all bare
    that is eased; one that `is_half` of the rod what lies there, from wherever its mate comes.
    Sizes in mm off the left-hand end.
    """

    end: str
    bare: Span
    jaws: Span
    total: float
    is_half: bool = False

    @property
    def long(self) -> float:
        """How much is gripped, in mm."""
        return self.jaws[1] - self.jaws[0]

    def takes(self, found: Eased) -> bool:
        """Whether any of what is eased for a mate is, here; of one in an unknown place it is."""
        return not found.own or bool(self.told(self.eased(found)))

    def eased(self, found: Eased) -> tuple[Span, ...]:
        """What is eased for a mate that can be tried from this end; halved, all that lies bare."""
        return found.own if self.is_half else found.from_end(self.end)

    def told(self, spans: Iterable[Span]) -> list[Span]:
        """What of the stretches lies bare, as it is measured off the end that is worked."""
        cut = [(max(low, self.bare[0]), min(high, self.bare[1])) for low, high in spans]
        cut = [(low, high) for low, high in cut if high > low + _SAME]
        if self.end != "right":
            return cut
        return [(self.total - high, self.total - low) for low, high in reversed(cut)]


def holds_of(work: Work, place: str) -> tuple[Stretched, ...] | None:
    """The grips in which all that is eased at a place is reached; None where only the bar holds it.

    One where a land of a diameter is left at an end of the step. Else one for either end, from
    which all lies bare that is eased for what comes from there, so that it can be tried. Where
    what is left beyond it is no grip, each half is held by the other.
    """
    total = work.form.size[0] if work.form is not None else 0.0
    steps = work.form.stretches if work.form is not None else ()
    step = next((one for one in steps if one.name == place), None)
    if step is None or work.form is None:
        return (Stretched("", (0.0, total), (0.0, 0.0), total),)
    least = _GRIP * step.across - _SAME
    cut = list(_cut(work.form.located, step))
    ways = list(_eased(work, place))
    eased = [one for _, one in ways] or [(step.start, step.end)]
    land = _land((step.start, step.end), [*cut, *eased])
    if land[1] - land[0] >= least and _is_at_end(land, eased):
        return (Stretched("", (0.0, total), land, total),)
    by_ends = tuple(_by_ends(step, cut, ways, total))
    if by_ends and all(one.long >= least for one in by_ends):
        return by_ends
    middle = (step.start + step.end) / 2
    left, right = (step.start, middle), (middle, step.end)
    halves = (
        Stretched("left", left, _land(right, cut), total, is_half=True),
        Stretched("right", right, _land(left, cut), total, is_half=True),
    )
    return halves if all(one.long >= least for one in halves) else None


def _by_ends(
    step: Stretch, cut: Sequence[Span], ways: Sequence[tuple[str, Span]], total: float
) -> Iterator[Stretched]:
    """A grip for either end that mates come from, beyond all that is eased for them."""
    to = max((high for end, (_, high) in ways if end == "left"), default=None)
    back = min((low for end, (low, _) in ways if end == "right"), default=None)
    if to is not None:
        yield Stretched("left", (step.start, to), _land((to, step.end), cut), total)
    if back is not None:
        yield Stretched("right", (back, step.end), _land((step.start, back), cut), total)


def _eased(work: Work, place: str) -> Iterator[tuple[str, Span]]:
    for half in work.halves.get(place, ()):
        if half.is_eased and half.upper is not None:
            yield from eased_along(half, work.design).from_ends


def _is_at_end(land: Span, eased: Sequence[Span]) -> bool:
    """Whether all that is eased lies on one side of the land, so that none of it is in the jaws."""
    return all(low >= land[1] - _SAME for low, _ in eased) or all(
        high <= land[0] + _SAME for _, high in eased
    )


def _cut(located: Iterable[Located], step: Stretch) -> Iterator[Span]:
    """What is cut into the outside of a step, and so leaves the jaws nothing."""
    for one in located:
        if one.kind in _EDGES:
            deep = one.diameter or 0.0
            if one.face == "left":
                yield step.start, step.start + deep
            elif one.face == "right":
                yield step.end - deep, step.end
            continue
        half = (one.length or one.width or one.diameter or 0.0) / 2
        for x, *_ in one.spots:
            if step.start - half < x < step.end + half and one.face == "across":
                yield x - half, x + half


def _land(within: Span, taken: Iterable[Span]) -> Span:
    """The longest stretch that nothing is taken of."""
    best, at = (within[0], within[0]), within[0]
    for low, high in sorted([*taken, (within[1], within[1])]):
        to = min(low, within[1])
        if to - at > best[1] - best[0]:
            best = (at, to)
        at = max(at, high)
    return best


__all__ = ["ENDS", "Stretched", "holds_of"]
