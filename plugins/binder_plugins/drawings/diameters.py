"""Steps of turned work to their diameters, one figure for neighbours that are alike."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import groupby

from binder.api import HalfFact
from binder_drafting import Across, Note, Size
from binder_plugins.drawings.callouts import bare, fine
from binder_solid.facts import FormFact, Stretch

Halves = Mapping[str, HalfFact]


def diameters(fact: FormFact, views: tuple[str, ...], halves: Halves, units: str) -> Iterator[Size]:
    """A size across each run of steps that are alike, with the limits of what it fits."""
    for key, run in groupby(fact.stretches, key=lambda one: _likeness(one, halves, units)):
        steps = tuple(run)
        if key is None:
            yield from _taper(steps[0], fact)
        elif steps[0].corners and "right" in views:
            yield from _flats(steps)
        else:
            yield _round(steps, halves, units)


def _likeness(one: Stretch, halves: Halves, units: str) -> object:
    """What steps have in common that are told by one figure; None for a taper, never alike."""
    if one.across != one.end_across:
        return None
    return (one.across, one.corners, one.text, _limits(halves.get(one.name), one.across, units))


def _round(steps: tuple[Stretch, ...], halves: Halves, units: str) -> Across:
    one = max(steps, key=lambda step: step.end - step.start)
    x = (one.start + one.end) / 2
    limits = _limits(halves.get(one.name), one.across, units)
    return Across(
        steps[0].ids[0],
        "front",
        (x, -one.across / 2),
        (x, one.across / 2),
        bare(one.text),
        limits,
        "fit" if limits else "free",
        also=tuple(step.ids[0] for step in steps[1:]),
    )


def _flats(steps: tuple[Stretch, ...]) -> Iterator[Note]:
    """A hexagon or square is told where its flats are seen."""
    keys = tuple(step.ids[0] for step in steps)
    at = (0.0, steps[0].across / 2)
    yield Note(keys[0], "right", at, (bare(steps[0].text),), tier="free", also=keys[1:])


def _taper(one: Stretch, fact: FormFact) -> Iterator[Size]:
    """Both ends, but for one that is as wide as the round step beside it.

    An end lies on the edge of a shoulder: a line across it stands a little into the taper.
    """
    first, last = one.text.split(" to ")
    long = one.end - one.start
    ends = (
        (one.start, one.across, first, "", long),
        (one.end, one.end_across, last, ".end", -long),
    )
    for place, across, words, end, into in ends:
        if end and _goes_on(one, fact):
            continue
        key, half = one.ids[0] + end, across / 2
        yield Across(key, "front", (place, -half), (place, half), bare(words), into=(into, 0.0))


def _goes_on(one: Stretch, fact: FormFact) -> bool:
    return any(
        step.start == one.end and step.across == step.end_across == one.end_across
        for step in fact.stretches
    )


def _limits(half: HalfFact | None, nominal: float, units: str) -> tuple[str, ...]:
    if half is not None and half.suits is not None and "as bought" not in half.what:
        # What it differs from its measured bore stands on the leaf: no limits of its own.
        return ("to suit",)
    if half is None or half.lower is None or half.upper is None:
        return ()
    return tuple(
        fine(size - nominal, units, "+").replace("-", "−") for size in (half.upper, half.lower)
    )
