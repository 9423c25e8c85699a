"""Two alike blocks that carry one shaft: bored through in one setting, held as a pair."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.bolted import bolt_holes, in_jaws
from binder_plugins.operations.hole_kinds import narrows_to, through
from binder_plugins.operations.several import DEEP
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, length, minus, placed, unit

if TYPE_CHECKING:
    from binder_plugins.operations.flat import Flat
    from binder_solid.facts import Located
    from binder_solid.forms import Vector

_PAIR = 2
# Bores whose axes lie so near in mm, and lean so little, are in one row. Places of copies are
# reckoned, so that rounding alone parts them.
_ROW_MM, _LEAN = 0.05, 1e-3
_JAWS = "flat plate, superglue; both in the jaws: no clamp hangs on a spindle"


def is_paired(flat: Flat, one: Located) -> bool:
    """Whether two alike blocks are bored through in one setting, as a pair for one shaft is.

    Bored singly, each keeps its own height over the base: common practice, no source.
    """
    deep = through(one, flat.form.size) * flat.work.count
    is_deep = deep > DEEP * (one.diameter or 0.0)
    is_able = flat.work.count == _PAIR and one.kind == "bored" and one.depth is None
    is_straight = not narrows_to(flat.work, one)
    return is_able and is_straight and not is_deep and _in_one_row(flat, one)


def _in_one_row(flat: Flat, one: Located) -> bool:
    """Whether one shaft runs through both where they stand; so taken where that is not known."""
    axes = [
        _axis(one, copy)
        for copy in flat.work.design.facts.all(PlacedFact)
        if copy.item == flat.work.name
    ]
    if len(axes) != _PAIR:
        return True
    (here, way), (there, other) = axes
    apart = cross(minus(there, here), way)
    return abs(dot(way, other)) > 1 - _LEAN and length(apart) < _ROW_MM


def _axis(one: Located, copy: PlacedFact) -> tuple[Vector, Vector]:
    """A point and the direction of a hole's axis in the model; of the other hand mirrored."""
    at, way = one.spots[0], one.frame.z
    if copy.is_opposite:  # Its mirror image, front for back.
        least, most = copy.corners
        at = (at[0], least[1] + most[1] - at[1], at[2])
        way = (way[0], -way[1], way[2])
    origin = placed(at, copy.frame)
    return origin, unit(minus(placed(way, copy.frame), copy.frame.origin))


def pair_by(flat: Flat, one: Located) -> str:
    """How the two lie on one another: by the faces that the bore leaves free."""
    flush = {
        "top": "two edges",
        "underside": "two edges",
        "left": "base and one side",
        "right": "base and one side",
    }.get(one.face, "base and edges")
    way = "" if getattr(flat.work.item, "handed", False) else "the same way round, "
    return f"{way}{flush} flush on a flat plate, a film of superglue between till both are held"


def pair_held(flat: Flat, one: Located) -> str:
    """What holds the two as they turn: bolts or pegs only where holes lie along the bore."""
    cut = cut_by_now(flat)
    along = (
        other
        for other in flat.form.located
        if other.name != one.name
        and other.name in cut
        and other.depth is None
        and abs(dot(other.frame.z, one.frame.z)) > 1 - _LEAN
    )
    return in_jaws(bolt_holes(flat.work, one, cut, pieces=_PAIR)) if any(along) else _JAWS


def cut_by_now(flat: Flat) -> set[str]:
    """The holes that are drilled in the set-ups so far."""
    return {act.feature for setup in flat.setups for act in setup.acts if act.act == "drill"}
