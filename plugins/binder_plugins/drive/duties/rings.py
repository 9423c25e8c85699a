"""A turned form to rings: what its steps leave round the holes on its own axis."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from binder_solid.facts import FormFact, Located

_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Ring:
    """So long along the axis, `across` outside and `inside`; mm."""

    long: float
    across: float
    inside: float


def rings_of(form: FormFact) -> tuple[Ring, ...]:
    """The rings along the axis; holes beside it and shapes cut by eye are left out.

    A form that is not turned is taken as the disc that fits into it.
    """
    steps = [one for one in form.stretches if not one.corners]
    if not steps:
        long, *sides = sorted(form.size)
        return (Ring(long, min(sides), 0.0),)
    bores = [one for one in form.located if _is_on_axis(one)]
    edges = {edge for one in steps for edge in (one.start, one.end)}
    edges |= {edge for one in bores for edge in _reach(one, form) if 0 < edge < form.size[0]}
    found = []
    for start, end in pairwise(sorted(edges)):
        middle = (start + end) / 2
        across = next((one.across for one in steps if one.start < middle < one.end), 0.0)
        inside = max((_across(one, middle, form) for one in bores), default=0.0)
        if end - start > _NEAR and inside < across:
            found.append(Ring(end - start, across, inside))
    return tuple(found)


def _is_on_axis(one: Located) -> bool:
    is_along = abs(one.frame.z[0]) > 1 - _NEAR
    return (
        bool(one.diameter)
        and is_along
        and not one.adds
        and any(abs(y) < _NEAR and abs(z) < _NEAR for _, y, z in one.spots)
    )


def _reach(one: Located, form: FormFact) -> tuple[float, float]:
    """From where to where along the axis the hole goes."""
    mouth = one.frame.origin[0]
    if one.depth is None:
        return 0.0, form.size[0]
    end = mouth - one.depth * one.frame.z[0]
    return min(mouth, end), max(mouth, end)


def _across(one: Located, at: float, form: FormFact) -> float:
    low, high = _reach(one, form)
    return one.diameter or 0.0 if low < at < high else 0.0
