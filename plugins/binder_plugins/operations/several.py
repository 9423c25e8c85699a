"""Parts made several at once: sheet pieces clamped in a stack, turned ones in a stick."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import SINKS, Where, narrows_to, through

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act, Grip, SetUp
    from binder_plugins.operations.flat import Flat
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# A stack that is deeper than this many drills across lets the drill wander: common practice,
# no source.
DEEP = 6.0
_PLAIN = frozenset({"drilled", "reamed"})


def stacked(flat: Flat, found: Sequence[Located]) -> list[Located]:
    """The holes that are drilled through all pieces at once: of sheet, plain, right through."""
    sinks = {one.name.removesuffix("_seat") for one in flat.form.located if one.kind in SINKS}
    return [one for one in found if is_stacked(flat, one) and one.name not in sinks]


def is_stacked(flat: Flat, one: Located) -> bool:
    """Whether a hole goes through a stack of all pieces at once."""
    feature = flat.work.feature(one.name)
    has_sink = getattr(feature.entry if feature else None, "counterbore", None) is not None
    deep = through(one, flat.form.size) * flat.work.count
    is_plain = one.kind in _PLAIN or (one.kind == "bored" and one.depth is None)
    return (
        flat.work.count > 1
        and flat.is_sheet()
        and not flat.is_wood
        and is_plain
        and not narrows_to(flat.work, one)
        and one.depth is None
        and not has_sink
        and deep <= DEEP * (one.diameter or 0.0)
    )


_UNSTUCK = (
    ": warm them to about 100 °C in moving air, no flame, or lay them in acetone till the film "
    "lets go, and slide them over one another, never prise; scrape the film off, and wipe the "
    "faces with acetone before they are measured or meet anything, cold again"
)


def clamped(flat: Flat, found: Sequence[Located], by: str) -> Act:
    """The clamping of the stack, pegged through the first hole before the second is drilled."""
    item = flat.work.item
    hands = ", those of either hand face to face" if getattr(item, "handed", False) else ""
    peg = "; a peg in the first hole before the next" if _many(found) else ""
    words = f"clamp {flat.work.count} together{hands}, {by}{peg}"
    return flat.work.act("clamp-stack", words)


def taken_apart(flat: Flat, clamp: Act) -> Act:
    """The stack taken apart, the pieces marked so that they stay a set.

    Instant glue holds pulled and lets go sheared, warm or in acetone: common practice, no source.
    """
    words = "mark them as a set, take them apart"
    if "superglue" in f"{clamp.tool} {clamp.what}":
        words += _UNSTUCK
    return flat.work.act("separate", words)


def in_stack(flat: Flat, where: Where) -> Where:
    """A hole as it is drilled through the whole stack."""
    deep = where.deep * flat.work.count
    return replace(where, deep=deep, tags=(*where.tags, "stacked"))


def gripped(flat: Flat, grip: Grip) -> Grip:
    """The grip on all of them."""
    return replace(grip, on=f"{flat.work.count} together, {grip.on}")


def _many(found: Sequence[Located]) -> bool:
    return sum(len(one.spots) for one in found) > 1


def in_a_stick(work: Work, setups: Sequence[SetUp]) -> list[SetUp]:
    """Set-ups in which one piece after another is parted off a bar that stays in the lathe."""
    return [
        replace(one, is_stick=True)
        if work.count > 1 and one.grip.on == "the bar" and _parts(one.acts)
        else one
        for one in setups
    ]


def _parts(acts: Sequence[Act]) -> bool:
    return any(act.act == "part-off" for act in acts)
