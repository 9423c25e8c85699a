"""What is done with a shaft as it goes into its bearings: what rides on it, and what comes off."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Design, Joint, Piece, Role, ShaftFact
from binder_plugins.buildorder.as_marked import each_end
from binder_plugins.buildorder.closing import (
    bearing_joints,
    homes,
    housings,
    insides_of,
    is_shut,
    outside,
    slides_in,
)
from binder_plugins.buildorder.float_set import movable
from binder_solid.filled import adhesive


def beside(joint: Joint, one: Assembly, design: Design) -> str:
    """What the step of a running joint says besides, or of a bond next to it; else ''."""
    for fact in design.facts.all(ShaftFact):
        if joint.name in bearing_joints(fact):
            return "".join(_clauses(fact, joint, one, design))
        if joint.name in outside(fact) and adhesive(joint, design):
            return _beside_a_bearing(fact, adhesive(joint, design), design)
    return ""


def _clauses(fact: ShaftFact, joint: Joint, one: Assembly, design: Design) -> Iterator[str]:
    inner, outer = _split(fact)
    if inner:
        names = ", ".join(f"the {piece.title}" for piece in inner)
        order = " in this order" if len(inner) > 1 else ""
        where = "bearings, with the shaft" if joint.kind == "runs_in" else "plates, on the pin"
        yield f"; between the {where}{order}: {names}"
    if is_shut(fact, design):
        yield f"; the bearings go on from the two ends{each_end(joint, design)}"
        others = [f"the {design.parts[name].title}" for name in _fellows(fact, design)]
        yield f", at one go over {' and '.join(others)} too" if others else ""
    left = _left_over(fact)
    if left:
        yield f"; then outside them, outwards: {', '.join(f'the {one.title}' for one in left)}"
    off = [piece for piece in outer if _comes_off(piece, one, design)]
    if off:
        names = " and ".join(f"the {piece.title}" for piece in off)
        is_set = any(piece in movable(fact, design) for piece in off)
        how = "slid on again afterwards, not tightened yet" if is_set else "put back as before"
        yield f"; take {names} off first, {how}"


def put_on_first(joint: Joint, design: Design) -> str:
    """What no joint holds and a step of a joint closes over, outside the bearings; else ''."""
    for fact in design.facts.all(ShaftFact):
        loose = list(_closed_over(joint, fact))
        if loose:
            names = ", then ".join(f"the {piece.title.partition(',')[0]}" for piece in loose)
            shaft = design.parts[fact.subject].title
            return f"slide {names} over the {shaft} first; then "
    return ""


def _closed_over(joint: Joint, fact: ShaftFact) -> Iterator[Piece]:
    """The loose pieces between the bearings and a piece of this joint outside them."""
    if joint.name in bearing_joints(fact):
        return
    for side in _sides(fact):
        waiting: list[Piece] = []
        for piece in side:
            if piece.joint == joint.name:
                yield from waiting
                break
            waiting = [] if piece.joint else [*waiting, piece]


def _left_over(fact: ShaftFact) -> list[Piece]:
    """What stands outside the bearings in the row, and no joint of the row closes over."""
    found: list[Piece] = []
    for side in _sides(fact):
        last = max((n for n, piece in enumerate(side) if piece.joint), default=-1)
        found += [piece for piece in side[last + 1 :] if piece.item != fact.subject]
    return found


def _sides(fact: ShaftFact) -> list[list[Piece]]:
    """The pieces outside the bearings on either side, outwards."""
    places = [n for n, piece in enumerate(fact.pieces) if piece.role is Role.BEARING]
    if not places:
        return []
    return [list(reversed(fact.pieces[: places[0]])), list(fact.pieces[places[-1] + 1 :])]


def _beside_a_bearing(fact: ShaftFact, what: str, design: Design) -> str:
    """Bonded clear of the bearings where it can be; else both are kept clean of the other."""
    if slides_in(fact, design):
        return ", before the shaft goes into its bearings"
    return f"; the bearing beside it is oiled: keep oil off the joint, {what} off the bearing"


def _split(fact: ShaftFact) -> tuple[list[Piece], list[Piece]]:
    """What stands between the outer bearings, without bearings, and what stands outside."""
    places = [n for n, piece in enumerate(fact.pieces) if piece.role is Role.BEARING]
    first, last = places[0], places[-1]
    inner = [piece for piece in fact.pieces[first:last] if piece.role is not Role.BEARING]
    return inner, [*fact.pieces[:first], *fact.pieces[last + 1 :]]


def _fellows(fact: ShaftFact, design: Design) -> Iterator[str]:
    """Shafts that the same housings shut in, and so go in together with this one."""
    held = set(housings(fact, design))
    for other in design.facts.all(ShaftFact):
        if other != fact and is_shut(other, design) and held & set(housings(other, design)):
            yield other.subject


def _comes_off(piece: Piece, one: Assembly, design: Design) -> bool:
    """Whether a piece was fixed on the shaft in an assembly inside this one."""
    joint = design.joints.get(piece.joint)
    return joint is not None and one.name not in homes(joint, insides_of(design), design)
