"""What is said of joints, one thing after another, gathered into a contribution."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from binder.api import (
    Bought,
    Contribution,
    Design,
    Diagnostic,
    Fact,
    Feature,
    HardwareFact,
    Joint,
    NumberOff,
    Working,
)
from binder_trade.fastening import hardware_count

_SMALL_MM = 1.0  # where no thickness is known, it counts among the small ones


@dataclass(frozen=True, slots=True)
class Wanted:
    """Hardware for a joint, `count` for one model; lengths in mm.

    `bought` is its name in the spec, '' where the joint only said words.
    """

    joint: Joint
    what: str
    bought: str
    count: int
    thick_mm: float | None = None
    length_mm: float | None = None
    grip_mm: float | None = None
    engagement_mm: float | None = None
    why: str = ""


Said = Fact | Feature | Working | Diagnostic | Wanted


def gather(said: Iterable[Said], design: Design) -> Contribution:
    """All that was said, each kind of thing in its place; equal hardware is one bought item."""
    things = list(said)
    wanted = [one for one in things if isinstance(one, Wanted)]
    facts = [one for one in things if isinstance(one, Fact)]
    names = _names(wanted, design)
    bought = list(_bought(wanted, names, design))
    return Contribution(
        facts=[
            *facts,
            *_hardware(wanted, names),
            *(NumberOff(item.name, item.quantity or 0) for item in bought),
        ],
        features=[one for one in things if isinstance(one, Feature)],
        bought=bought,
        workings=[one for one in things if isinstance(one, Working)],
        findings=[one for one in things if isinstance(one, Diagnostic)],
    )


def _names(wanted: list[Wanted], design: Design) -> dict[str, str]:
    """A name for each designation that is not listed under bought, none taken twice."""
    names: dict[str, str] = {}
    for one in wanted:
        if one.bought or one.what in names:
            continue
        name = re.sub(r"[^a-z0-9]+", "_", one.what.lower()).strip("_")
        name = name if name[:1].isalpha() else f"size_{name}"
        taken = set(names.values())
        while name in taken or design.item(name) is not None:
            name += "_more"
        names[one.what] = name
    return names


def _bought(wanted: list[Wanted], names: dict[str, str], design: Design) -> Iterable[Bought]:
    for what, name in names.items():
        alike = [one for one in wanted if one.what == what and not one.bought]
        yield Bought(
            name=name,
            title=what,
            at=alike[0].joint.at,
            quantity=sum(one.count for one in alike),
            note="",
            because="",
            what=what,
            sizes=(),
            measured=(),
            is_salvaged=False,
        )


def _hardware(wanted: list[Wanted], names: dict[str, str]) -> Iterable[HardwareFact]:
    """A fact for each joint and item; the spares of all stand with the first that needs it."""
    counts: dict[str, int] = {}
    for one in wanted:
        name = one.bought or names[one.what]
        counts[name] = counts.get(name, 0) + one.count
    for one in wanted:
        name = one.bought or names[one.what]
        total = counts.pop(name, 0)
        buy = hardware_count(total, one.thick_mm or _SMALL_MM)
        yield HardwareFact(
            subject=f"{one.joint.name}: {name}",
            joint=one.joint.name,
            name=name,
            what=one.what,
            count=one.count,
            length=one.length_mm,
            grip=one.grip_mm,
            engagement=one.engagement_mm,
            why=one.why,
            spares=buy - total,
        )
