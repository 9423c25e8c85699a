"""Stretches along one line: the plainer kind lies over the fainter, and what is left is joined."""

from __future__ import annotations

from collections.abc import Iterable

from .views import Kind

Span = tuple[float, float]
RANKS: tuple[Kind, ...] = ("section", "visible", "smooth", "hidden")


def overlaid(
    spans: Iterable[tuple[Kind, Span]], touch: float, slack: float
) -> list[tuple[Kind, Span]]:
    """Gives the stretches of each kind that no plainer kind covers.

    Stretches nearer than `touch` are one; what is left shorter than `touch` goes. A visible one
    shorter than `slack` that runs on as a hidden one is hidden.
    """
    every = list(spans)
    covered: list[Span] = []
    found: list[tuple[Kind, Span]] = []
    for kind in RANKS:
        own = joined((span for other, span in every if other == kind), touch)
        for span in own:
            found.extend((kind, rest) for rest in _less(span, covered, touch))
        covered = joined([*covered, *own], touch)
    return _settled(found, touch, slack)


def joined(spans: Iterable[Span], touch: float) -> list[Span]:
    """Gives stretches that do not touch one another."""
    found: list[Span] = []
    for start, end in sorted(spans):
        if found and start <= found[-1][1] + touch:
            found[-1] = (found[-1][0], max(found[-1][1], end))
        else:
            found.append((start, end))
    return found


def _less(span: Span, covered: list[Span], touch: float) -> list[Span]:
    rest: list[Span] = []
    here, last = span
    for start, end in covered:
        if end <= here or start >= last:
            continue
        if start - here > touch:
            rest.append((here, start))
        here = max(here, end)
    if last - here > touch:
        rest.append((here, last))
    return rest


def _settled(found: list[tuple[Kind, Span]], touch: float, slack: float) -> list[tuple[Kind, Span]]:
    hidden = [span for kind, span in found if kind == "hidden"]
    slivers = [
        (kind, span)
        for kind, span in found
        if kind == "visible"
        and span[1] - span[0] < slack
        and any(_meet(span, other, touch) for other in hidden)
    ]
    if not slivers:
        return found
    kept = [entry for entry in found if entry not in slivers and entry[0] != "hidden"]
    rest = joined([*hidden, *(span for _, span in slivers)], touch)
    return [*kept, *(("hidden", span) for span in rest)]


def _meet(one: Span, other: Span, touch: float) -> bool:
    return abs(one[1] - other[0]) <= touch or abs(other[1] - one[0]) <= touch
