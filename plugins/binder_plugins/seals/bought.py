"""Turns what seals use up into bought items, each once, with how many of it."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from binder.api import Bought, Design, Fact, HardwareFact, Joint, NumberOff


@dataclass(frozen=True, slots=True)
class Supply:
    """So many of a thing for one joint; `why` is ten words at most."""

    joint: Joint
    what: str
    count: int
    why: str
    spares: int = 0


def made_times(joint: Joint, item: str, design: Design) -> int:
    """How often a joint is made in one model: as often as the item that carries the seal."""
    counts = [design.facts.about(NumberOff, one) for one in (item, *joint.items)]
    known = [one.count for one in counts if one is not None]
    return known[0] if known else 1


def supplied(
    supplies: Iterable[Supply], design: Design
) -> tuple[tuple[Bought, ...], tuple[Fact, ...]]:
    """The bought items with their numbers off, and the hardware of each joint."""
    wanted = [one for one in supplies if not one.joint.held_by]
    names = {one.what: _name(one.what, design) for one in wanted}
    totals: dict[str, int] = {}
    for one in wanted:
        totals[one.what] = totals.get(one.what, 0) + one.count
    facts = [_hardware(one, names[one.what]) for one in wanted]
    numbers = [NumberOff(names[what], count) for what, count in totals.items()]
    joints = {one.what: one.joint for one in reversed(wanted)}
    items = (_bought(names[what], what, count, joints[what]) for what, count in totals.items())
    return tuple(items), (*facts, *numbers)


def _bought(name: str, what: str, count: int, joint: Joint) -> Bought:
    return Bought(
        name=name,
        title=what,
        at=joint.at,
        quantity=count,
        note="",
        because="",
        what=what,
        sizes=(),
        measured=(),
        is_salvaged=False,
    )


def _hardware(one: Supply, name: str) -> HardwareFact:
    return HardwareFact(
        subject=f"{one.joint.name}: {name}",
        joint=one.joint.name,
        name=name,
        what=one.what,
        count=one.count,
        why=one.why,
        spares=one.spares,
    )


def _name(what: str, design: Design) -> str:
    """A name for the parts list that nothing else has."""
    stem = re.sub(r"[^a-z0-9]+", "_", what.casefold().replace("×", "x")).strip("_")
    stem = stem if stem[:1].isalpha() else f"seal_{stem}"
    name, number = stem, 2
    while design.item(name) is not None:
        name, number = f"{stem}_{number}", number + 1
    return name
