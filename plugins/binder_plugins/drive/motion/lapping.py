"""A toothed wheel under a lever's tail to the chain of its lap: tooth and tail less centres."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from binder.api import ChainFact, ChainLink, Design, HalfFact, Joint, Size, exact, shown_length
from binder_plugins.drive.motion.trips import stood_trip
from binder_trade.explained import NotDefined
from binder_trade.limits import stray_mm
from binder_trade.mechanisms.tappets import Trip

_GENERAL = "ISO 2768-1 m"
# The lift goes by the square root of the lap: a fifth more or less of the lap is a tenth of it.
_OF_LAP = 0.2
TAIL = "tail from its pivot"


def laps(design: Design) -> Iterator[ChainFact]:
    """The chain of each trip that stands somewhere."""
    for joint in design.joints.values():
        if joint.kind != "trips":
            continue
        try:
            stood = stood_trip(joint, design)
        except NotDefined:
            continue  # It has its finding where its lift is reckoned.
        if stood is not None:
            yield _chain(joint, stood, design)


def left_long(design: Design) -> Iterator[HalfFact]:
    """What is left long, for the leaf of its lever."""
    for joint in design.joints.values():
        if joint.kind == "trips":
            yield from _left(joint, design)


def _chain(joint: Joint, stood: Trip, design: Design) -> ChainFact:
    centres = stood.tip_mm + stood.tail_mm - stood.overlap_mm
    links = (
        _link(joint, "tooth from its axis", stood.tip_mm, 1, stray_mm(2 * stood.tip_mm) / 2),
        _link(joint, TAIL, stood.tail_mm, 1, stray_mm(stood.tail_mm)),
        # Wheel and pivot are each placed from the edge of what they stand on.
        _link(joint, "axis of the wheel from the pivot", centres, -1, 2 * stray_mm(centres)),
    )
    strays = sum(one.upper for one in links)
    long = getattr(joint.entry, "left_long", None)
    is_set = isinstance(long, Size) and long.mm >= strays
    wanted = shown_length(exact(ceil(strays * 2) / 2), design.units)
    return ChainFact(
        subject=f"{joint.name}: lap",
        kind="lap",
        title=f"Lap of tooth and tail of '{joint.name}'",
        items=joint.items,
        links=links,
        least=(1 - _OF_LAP) * stood.overlap_mm,
        most=(1 + _OF_LAP) * stood.overlap_mm,
        jams=0.0,
        closing=TAIL if is_set else "",
        is_set=is_set,
        way_out=f"make the tail {wanted} longer, say `left_long: {wanted}`, and file it to the "
        "lift on the standing machine",
        at=joint.at,
    )


def _link(joint: Joint, name: str, size: float, factor: int, half: float) -> ChainLink:
    return ChainLink(name, size, half, -half, float(factor), f"{joint.name} {name}", _GENERAL)


def _left(joint: Joint, design: Design) -> Iterator[HalfFact]:
    long = getattr(joint.entry, "left_long", None)
    if not isinstance(long, Size):
        return
    wheel, lever = joint.ends[0].item, joint.ends[-1].item
    yield HalfFact(
        subject=f"{joint.name}: {lever} tail",
        joint=joint.name,
        item=lever,
        place="tail",
        what=f"the end that the wheel takes is made {shown_length(long.exact, design.units)} "
        "longer than it will be",
        mate=wheel,
        how="filed back to the lift on the standing machine",
        is_master=False,
    )
