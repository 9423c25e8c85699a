"""A hole that cuts the wall of a reamed one: that is reamed first, and plugged for the drill."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located

# A drill wanders into the hole that it cuts where its axis is so far aside, in diameters of that
# hole; nearer the middle it goes in and out square. Common practice, no source.
_ASIDE = 0.2
# What a plug stands out of a blind hole for the pliers, in mm. Common practice, no source.
_PROUD_MM = 10
_FINE = frozenset({"reamed", "bored"})


def cut_by(hole: Located, form: FormFact) -> list[Located]:
    """The reamed or bored holes of other faces whose walls a hole cuts aside of their middle."""
    if hole.kind != "drilled":
        return []
    return [
        one
        for one in form.located
        if one.kind in _FINE and one.face != hole.face and _cuts(hole, one, form)
    ]


def _cuts(hole: Located, other: Located, form: FormFact) -> bool:
    mine, its = (_axis(one) for one in (hole, other))
    if mine == its:
        return False
    across = next(n for n in range(3) if n not in (mine, its))
    return any(
        _reaches(hole, here, mine, there[mine], form)
        and _reaches(other, there, its, here[its], form)
        and _ASIDE * (other.diameter or 0.0)
        < abs(here[across] - there[across])
        < ((hole.diameter or 0.0) + (other.diameter or 0.0)) / 2
        for here in hole.spots
        for there in other.spots
    )


def _axis(one: Located) -> int:
    return max(range(3), key=lambda n: abs(one.frame.z[n]))


def _reaches(one: Located, spot: Sequence[float], axis: int, place: float, form: FormFact) -> bool:
    """Whether a hole is as deep as a place on its axis."""
    deep = one.depth if one.depth is not None else form.size[axis]
    return math.isclose(abs(spot[axis] - place), deep) or abs(spot[axis] - place) < deep


def fine_first(sides: dict[str, list[Located]], form: FormFact) -> list[str]:
    """The faces in order, that of a hole which another cuts before that of the other."""
    order = list(sides)
    for face in list(order):
        for one in sides[face]:
            for fine in cut_by(one, form):
                if fine.face in order and order.index(fine.face) > order.index(face):
                    order.remove(fine.face)
                    order.insert(order.index(face), fine.face)
    return order


def plugged(work: Work, hole: Located, form: FormFact, acts: list[Act]) -> list[Act]:
    """The acts of a hole, with a plug in each fine hole that it cuts while it is drilled."""
    for one in cut_by(hole, form):
        acts = [_into(work, hole, one), *acts, _out(work, hole, one)]
    return acts


def _into(work: Work, hole: Located, fine: Located) -> Act:
    said = fine.name.replace("_", " ")
    end = (
        f"to its floor, {_PROUD_MM} mm of it left standing out"
        if fine.depth is not None
        else "flush"
    )
    return work.act(
        "clamp-stack",
        f"push a plug of the same metal into the {said}, {end}: the drill is carried all round",
        feature=hole.name,
        tool=f"plug turned to the {said}",
    )


def _out(work: Work, hole: Located, fine: Located) -> Act:
    """A plug in a blind hole cannot be driven: it is drawn by what stands out of it."""
    said = fine.name.replace("_", " ")
    blind = fine.depth is not None
    way = "twist" if blind else "drive"
    how = "by hand, to the floor" if blind else "through it once by hand"
    return work.act(
        "separate",
        f"{way} the plug out of the {said}, turn the reamer {how}",
        feature=hole.name,
        tool=f"{'pliers' if blind else 'pin punch'}, {work.mm(fine.diameter or 0.0)} reamer",
    )
