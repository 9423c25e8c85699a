"""Finished fits of parts that go through a flame: no alloy on them, and measured again cold.

Scale and alloy move a size that was finished before: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise
from typing import TYPE_CHECKING

from binder_plugins.operations.gauging import measured_with

if TYPE_CHECKING:
    from binder.api import HalfFact
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work

_MM_PER_INCH = 25.4
_SAME_MM = 0.05


def kept_bare(joint: str, works: Mapping[str, Work]) -> str:
    """What is blackened before the flame, '' where none of its parts has a finished fit."""
    places = dict.fromkeys(
        f"{_named(work, place)}{_with_shoulder(work, place)}"
        for work, place, _ in _finished(joint, works)
    )
    if not places:
        return ""
    *first, last = places
    told = f"{', '.join(first)} and {last}" if first else last
    return f"; blacken {told} with a soft pencil, so that no alloy takes there: no flux on it"


def _with_shoulder(work: Work, place: str) -> str:
    """The shoulder that a finished step of turned work runs up to.

    A bore has none: the face round its mouth may be where the alloy goes in.
    """
    steps = work.form.stretches if work.form is not None else ()
    for one, other in pairwise(steps):
        for step, beside in ((one, other), (other, one)):
            if step.name == place and beside.across > step.across + _SAME_MM:
                return " with the shoulder beside it"
    return ""


def fits_after_flame(joint: str, works: Mapping[str, Work]) -> Iterator[Act]:
    """Each finished fit measured again cold; what others are made to is not.

    What has limits is held against these, what was made to its mate against that as measured.
    """
    for work, place, half in _finished(joint, works):
        if any(one.is_master for one in work.halves[place]):
            continue
        yield work.act(
            "measure",
            f"cold and clean, scale and alloy scraped off {_named(work, place)} and what it seats "
            f"on, measure it again: {wanted(half, work.design.units)}",
            feature=place,
            tool=measured_with(work, half),
        )


def wanted(half: HalfFact, units: str) -> str:
    """What a size must still be: its limits, or what lay between it and its mate as measured."""
    unit = "in" if units == "inch" else "mm"
    if half.suits is None:
        low, high = (_fine(limit or 0.0, units) for limit in (half.lower, half.upper))
        return f"{low} to {high} {unit}, or it does not go on its mate"
    near, far = sorted(half.suits, key=abs)
    mate = f"the {half.mate} as you measured it"
    if half.is_eased:
        return f"no nearer than {_fine(abs(near), units)} {unit} to {mate}, or ease it there again"
    first, last = (_fine(abs(one), units) for one in (near, far))
    here, there = ("over" if one > 0 else "under" for one in (near, far))
    # A size that may be the mate's own has no side.
    side = "" if here == there or not near else f" {unit} {here}"
    return f"still {first}{side} to {last} {unit} {there} {mate}"


def _fine(mm: float, units: str) -> str:
    """To a thousandth of a millimetre, or to a tenth of a thou."""
    return f"{mm / _MM_PER_INCH:.4f}" if units == "inch" else f"{mm:.3f}"


def _finished(joint: str, works: Mapping[str, Work]) -> Iterator[tuple[Work, str, HalfFact]]:
    """The fits with limits on the parts of a joint that are finished before its flame."""
    items = next(iter(works.values())).design.joints[joint].items
    for work in (works[name] for name in items if name in works):
        for place, halves in work.halves.items():
            known = (one for one in halves if one.lower is not None or one.suits is not None)
            fit = next(known, None)
            is_here = any(one.joint == joint for one in halves)
            if fit is not None and not is_here and work.waits(place) is None:
                yield work, place, fit


def _named(work: Work, place: str) -> str:
    where = place.replace("_", " ")
    return f"the {where} of the {work.item.title}" if where else f"the {work.item.title}"
