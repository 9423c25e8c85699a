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
        said = one.name.replace("_", " ")
        into = work.act(
            "clamp-stack",
            f"push a plug of the same metal into the {said}, to its floor: the drill is carried "
            "all round",
            feature=hole.name,
            tool=f"plug turned to the {said}",
        )
        out = work.act(
            "separate",
            f"drive the plug out of the {said}, turn the reamer through it once by hand",
            feature=hole.name,
            tool="pin punch, reamer",
        )
        acts = [into, *acts, out]
    return acts
