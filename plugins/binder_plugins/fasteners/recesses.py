"""Blind bores on the axis of a fastener's hole to the metal that the mate fills there."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from binder.api import Design, End, PlaceFact

_FIRST = ("left", "underside")
_BORES = ("drilled", "reamed", "bored")


@dataclass(frozen=True, slots=True)
class Entered:
    """The other half: its item, the place that its end names, the step that its hole is in."""

    item: str
    place: PlaceFact | None
    step: str


def recess_in(
    end: End,
    place: PlaceFact | None,
    design: Design,
    thick: Fraction | None,
    radius: Fraction = Fraction(0),
) -> Fraction:
    """How deep a blind bore on the axis opens in this face of turned work, in mm; 0 for none.

    A hole that stands so far from the axis meets only those that are wider than that.
    """
    if place is None or thick is None or place.form != "face" or not place.is_round:
        return Fraction(0)
    depths = [
        fact.depth
        for fact in design.facts.all(PlaceFact)
        if fact.item == end.item
        and fact.depth is not None
        and (not radius or (fact.diameter or 0) > 2 * radius)
        and _opens_in(fact, place, design)
    ]
    deepest = max(depths, default=Fraction(0))
    return deepest if deepest < thick else Fraction(0)


def _opens_in(bore: PlaceFact, face: PlaceFact, design: Design) -> bool:
    """A plain bore that starts at this end of the part."""
    if bore.form != "hole" or bore.kind not in _BORES or bore.across or bore.pattern:
        return False
    if bore.on == face.place:
        return True
    step = design.facts.about(PlaceFact, f"{bore.item}.{bore.on}")
    if step is None or step.form != "step" or step.start is None or step.length is None:
        return False
    is_first = face.place in _FIRST
    return step.start == 0 if is_first else step.start + step.length == step.thickness


def filled(recess: float, item: str, mates: Iterable[Entered], design: Design) -> float:
    """How far a mate comes into a recess, in mm: the length of its step, the recess at most.

    A step enters where it is named, carries the named hole, or is told by another joint of the
    two to sit in a bore; a mate with a plain face stays outside.
    """
    if recess <= 0:
        return 0.0
    lengths = [length for mate in mates for length in _entering(item, mate, design)]
    return min(recess, max(lengths, default=0.0))


def _entering(item: str, mate: Entered, design: Design) -> Iterable[float]:
    names = [mate.place.place if mate.place is not None else "", mate.step]
    for joint in design.joints.values():
        if {item, mate.item} == {end.item for end in joint.ends}:
            names += [end.place for end in joint.ends if end.item == mate.item]
    for name in dict.fromkeys(names):
        step = design.facts.about(PlaceFact, f"{mate.item}.{name}")
        if name and step is not None and step.form == "step" and step.length is not None:
            yield float(step.length)
