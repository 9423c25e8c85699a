"""A row of bores that one reamer should line up, and what does it where its flutes are short."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import TYPE_CHECKING

from binder.api import Role, ShaftFact, exact, load_data

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.rows import Hole

# What a D-bit is longer than the bores lie apart, to be turned by; common practice, no source.
_TO_TURN_MM = 25.0


def bridge_mm(hole: Hole, joints: Sequence[str]) -> float | None:
    """What the flutes must bridge in mm to cut the last bore while the first still guides them.

    That is what lies between the bores and the last of them; None where no shaft tells it.
    """
    for fact in hole.work.design.facts.all(ShaftFact):
        lengths = [
            one.length
            for one in fact.pieces
            if one.role is Role.BEARING and one.joint in joints and _is_at(one.place, hole)
            and one.item == hole.work.name
        ]  # fmt: skip
        if len(lengths) > 1 and fact.apart is not None and lengths[-1] is not None:
            return float(fact.apart + lengths[-1])
    return None


def _is_at(place: str, hole: Hole) -> bool:
    return place in {"", hole.one.name}


def flutes_mm(size: float, *, is_hand: bool) -> float:
    """How long the flutes of a reamer of a diameter are, in mm; 0 beyond the table."""
    rows = _table()["hand" if is_hand else "machine"]
    return next((long for most, long in rows if size <= most), 0.0)


@cache
def _table() -> Mapping[str, list[tuple[float, float]]]:
    found = load_data("binder_plugins.operations", "reamer_flutes.yaml")
    return {kind: [(a, b) for a, b in found[kind]] for kind in ("machine", "hand")}


def short_of(row: Sequence[Hole], joints: Sequence[str]) -> float | None:
    """What a row asks of the owned reamer in mm where its flutes are shorter, else None."""
    hole = row[0]
    bridge = bridge_mm(hole, joints)
    size = hole.one.diameter or 0.0
    if bridge is None or hole.work.design.workshop.owns_reamer(exact(size)) is None:
        return None
    return bridge if flutes_mm(size, is_hand=_is_hand(hole)) < bridge else None


def by_hand(hole: Hole, act: Act) -> Act:
    """A reamer that is turned by hand: one for machines has no lead, and wants a bush before it.

    Common practice, no source: a hand reamer tapers over its first quarter and finds its own way,
    a machine reamer cuts on a short chamfer alone and starts askew.
    """
    if hole.work.design.workshop.owns_reamer(exact(hole.one.diameter or 0.0)) is None:
        return act
    size = act.tool.removesuffix(" reamer").removesuffix(" hand")
    if _is_hand(hole):
        return replace(act, tool=f"{size} reamer in a tap wrench")
    return replace(
        act,
        what=f"{act.what}; a machine reamer has no lead to start by: turn it slowly by hand, "
        "square in a pilot bush that a stepped plug sets before the first bore while it is "
        "clamped, or borrow a hand reamer",
        tool=f"{size} reamer in a tap wrench, pilot bush",
    )


def guided(row: Sequence[Hole], act: Act, bridge: float, of: str, longest: float) -> Iterator[Act]:
    """The first bore reamed, the others cut by a D-bit that runs in it, then reamed to size.

    `longest` is what the longest row of that size asks in mm: one D-bit does them all.
    """
    hole, count = row[0], sum(one.work.count for one in row)
    flutes = hole.work.mm(flutes_mm(hole.one.diameter or 0.0, is_hand=_is_hand(hole)))
    others = "the other bore" if count == 2 else f"the other {count - 1} bores"
    alone = (
        f"{act.what}, in the first bore alone: flutes of about {flutes} do not bridge the "
        f"{hole.work.mm(bridge)} to the end of the last"
    )
    yield by_hand(hole, replace(act, what=alone))
    words = (
        f"{of}cut {others} with the D-bit, its round shank guided in the first, a little at a "
        "time, then ream to the same size from the side where the wrench has room; where it "
        "strikes what stands near, a drill chuck held in the hand turns either"
    )
    size = act.tool.removesuffix(" reamer").removesuffix(" hand")
    tool = f"{size} D-bit, then {size} reamer, in a tap wrench"
    yield replace(act, id=f"{act.id} guided", what=words, tool=tool, aid_mm=longest + _TO_TURN_MM)


def _is_hand(hole: Hole) -> bool:
    reamer = hole.work.design.workshop.owns_reamer(exact(hole.one.diameter or 0.0))
    return reamer is not None and reamer.is_hand
