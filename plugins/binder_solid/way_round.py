"""Which way round a part goes on the one that it is fixed to, where it is not alike both ways."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_solid.facts import FormFact
from binder_solid.laid_on import ENDS, facing, said_side
from binder_solid.opposite import BEHIND
from binder_solid.space import dot
from binder_solid.stands_at import fixed_pair, standing

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Design, Joint
    from binder_solid.facts import Located
    from binder_solid.forms import Vector

# What counts as one size, in mm.
_NEAR = 0.05
_ALONG = 0.999


@dataclass(frozen=True, slots=True)
class WayRound:
    """The `side` of `item` that looks to an `end` of turned work, and what stands at both.

    `side` and `end` are those of the drawings; `at_side` and `at_end` name what is seen there
    (a step, the open or the closed end of a bore), '' where nothing tells it.
    """

    item: str
    side: str
    at_side: str
    rod: str
    end: str
    at_end: str
    is_flat: bool

    def __str__(self) -> str:
        return f"its {said_side(self.side)}{_seen(self.at_side)} {self.towards}"

    @property
    def towards(self) -> str:
        """`towards the right-hand end of the post (the tenon)`."""
        return f"towards the {self.end}-hand end of {self.rod}{_seen(self.at_end)}"


def way_round(joint: Joint, design: Design) -> WayRound | None:
    """How the one of a pair is turned end for end; None where it is the same both ways.

    None as well where the two are not known to stand square to one another.
    """
    pair, found = fixed_pair(joint, design), standing(joint, design)
    if pair is None or found is None:
        return None
    rod, other = pair
    own, mine = (design.facts.about(FormFact, one.item) for one in (other, rod))
    side = facing(other, rod.frame.x, positive=found.end == "right")
    if own is None or mine is None or not side or own.shape in ("gear", "ratchet"):
        return None
    axis = next(n for n, names in enumerate(ENDS) if side in names)
    if _is_alike(own, axis) and not _is_spotted(other.item, design):
        return None
    item = design.item(rod.item)
    title = f"the {item.title if item is not None else rod.item}"
    seen, there = _at(own, side), _at(mine, found.end)
    return WayRound(other.item, side, seen, title, found.end, there, not own.stretches)


def entering(joint: Joint, bush: str, design: Design) -> str:
    """`from the right end (the body) of the housing, the closed end of its bore first`.

    How turned work that has no head goes into what it is pressed in; '' where it is the same
    both ways, or lies another way.
    """
    found, pair = way_round(joint, design), fixed_pair(joint, design)
    if found is None or pair is None or bush not in joint.items:
        return ""
    outer = next(one for one in pair if one.item != bush)
    form = design.facts.about(FormFact, outer.item)
    item = design.item(outer.item)
    if form is None or item is None:
        return ""
    is_other = found.item == bush
    far, first = (found.end, found.side) if is_other else (found.side, found.end)
    seen = (found.at_side if is_other else found.at_end) or f"its {said_side(first)}"
    near = BEHIND[far]
    return f"from the {said_side(near)}{_seen(_at(form, near))} of the {item.title}, {seen} first"


def coming_out(joint: Joint, bush: str, design: Design) -> Vector | None:
    """The way in the model in which a bush comes out again at the end from which it is `entering`.

    None where it goes in from either end, or where that is not known.
    """
    found, pair = way_round(joint, design), fixed_pair(joint, design)
    if found is None or pair is None or bush not in joint.items:
        return None
    x, y, z = pair[0].frame.x
    return (-x, -y, -z) if found.end == "right" else (x, y, z)


def _is_spotted(item: str, design: Design) -> bool:
    """Whether holes of it are led by one mate, so that it fits that mate one way alone."""
    return any(
        joint.made == "spotted through" and item in joint.items for joint in design.joints.values()
    )


def _seen(what: str) -> str:
    return f" ({what})" if what else ""


def _is_alike(form: FormFact, axis: int) -> bool:
    """Whether a part is the same when it is turned end for end along an axis of its own."""
    size = form.size[axis]
    steps = [(one.start, one.end, one.across, one.end_across) for one in form.stretches]
    turned = [(size - b, size - a, d, c) for a, b, c, d in reversed(steps)]
    if axis == 0 and not _same(steps, turned):
        return False
    marks = [_mark(one, axis, size, is_turned=False) for one in form.located]
    other = [_mark(one, axis, size, is_turned=True) for one in form.located]
    return all(any(kind == like and _same([a], [b]) for like, b in marks) for kind, a in other)


def _mark(
    one: Located, axis: int, size: float, *, is_turned: bool
) -> tuple[str, tuple[float, ...]]:
    """A feature in figures: its kind, its size, and how far along the axis it lies and looks."""
    way = _component(one.frame.z, axis)
    is_through = one.depth is None and abs(way) > _ALONG
    along = size / 2 if is_through else sum(spot[axis] for spot in one.spots) / len(one.spots)
    looks = 0.0 if is_through else way
    if is_turned:
        along, looks = size - along, -looks
    return one.kind, (one.diameter or 0.0, one.depth or 0.0, along, looks, len(one.spots))


def _component(way: Vector, axis: int) -> float:
    unit = [0.0, 0.0, 0.0]
    unit[axis] = 1.0
    return dot(way, (unit[0], unit[1], unit[2]))


def _same(one: Sequence[tuple[float, ...]], other: Sequence[tuple[float, ...]]) -> bool:
    return len(one) == len(other) and all(
        abs(a - b) < _NEAR
        for x, y in zip(one, other, strict=True)
        for a, b in zip(x, y, strict=True)
    )


def _at(form: FormFact, end: str) -> str:
    """What is seen at an end of turned work: the mouth or the floor of a bore, or a step."""
    if not form.stretches:
        return ""
    first, last = form.stretches[0], form.stretches[-1]
    if first.name != last.name:
        step = first if end == "left" else last
        return f"the {step.name.replace('_', ' ')}" if step.name else ""
    bore = next((one for one in form.located if _is_blind_bore(one)), None)
    if bore is None:
        return ""
    opens = "right" if bore.frame.z[0] > 0 else "left"
    return f"the {'open' if end == opens else 'closed'} end of its bore"


def _is_blind_bore(one: Located) -> bool:
    is_along = abs(one.frame.z[0]) > _ALONG
    return one.kind in ("bored", "reamed", "drilled") and one.depth is not None and is_along
