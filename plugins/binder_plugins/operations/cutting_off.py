"""How a piece comes off its bar: sawn before it is turned, or parted off after."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.early_corners import formed_behind, room_for
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.gripping import SUPPORTED
from binder_plugins.operations.lengthwise import BACK_MM
from binder_plugins.operations.outsides import room_in_waste
from binder_plugins.operations.reaching import SHORT, cut_reach
from binder_plugins.operations.spindle import passes
from binder_plugins.operations.threads_past import past_most

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning

# How far the parting tool stays off the jaws, in mm; common practice, no source.
CLEAR_MM = 2.0
# What a faced end takes of room, in mm; common practice, no source.
_FACED_MM = 2.0
_BY_HAND = "by hand"


def saw_off(turning: Turning) -> None:
    """Saws a piece off, where the bar does not pass the spindle until it is parted off."""
    across = turning.work.stock_across
    facing = turning.work.facing
    if turning.plan.is_parted and passes(turning, across):
        long = turning.length + facing + max(BACK_MM, room_in_waste(turning))
        turning.work.takes(long, verb="part off")
        return
    over = _grip_left(turning) if turning.plan.is_parted else 0.0
    long = turning.length + 2 * facing + over
    turning.work.takes(long, over)
    words = f"saw off {turning.work.mm(long)} of {_stock(turning)}"
    turning.add(
        "saw",
        "",
        Grip("bench vice", "bench", "the bar", across, free="right"),
        "",
        [turning.work.act("saw", words, amount=across or 1.0, tags=())],
    )


def past(turning: Turning) -> float:
    """How far from the free end in mm a hole must reach to be open when it is parted off."""
    over = max(BACK_MM, turning.work.facing)
    return turning.length + over if turning.plan.is_parted else 0.0


def _grip_left(turning: Turning) -> float:
    """What is left on a sawn piece to hold it by, with the width of the parting tool."""
    return max(15.0, turning.work.stock_across) + parting_mm(turning)


def parting_mm(turning: Turning) -> float:
    """The width of the parting tool in mm."""
    width = turning.work.design.workshop.parting_width
    return float(width) if width is not None else 2.0


def _stock(turning: Turning) -> str:
    return turning.work.cut.section_text if turning.work.cut is not None else "the stock"


def stand_out(turning: Turning) -> float:
    """How far the first grip lets the bar stand out, in mm."""
    waste = room_in_waste(turning)
    back = max(room_for(turning.early), waste - parting_mm(turning))
    over = past_most(turning)
    whole = turning.length + max(parting_mm(turning) + max(back, 0.0), over) + CLEAR_MM
    if turning.plan.is_parted and whole <= SUPPORTED * turning.work.stock_across:
        return whole
    reach = max(turning.plan.reach, cut_reach(turning, turning.plan.free), _FACED_MM)
    reach = max(reach, turning.length + over) if over else reach
    return reach + SHORT + waste


def parted(turning: Turning) -> Iterator[Act]:
    """The parting off, after what is formed behind it; by hacksaw where no parting tool serves."""
    across = turning.steps[0 if turning.plan.free == "right" else -1].across
    if (0 if turning.plan.free == "right" else len(turning.steps) - 1) not in turning.plan.first:
        across = max(across, turning.work.stock_across)
    tool = turning.work.design.workshop.entry.cutters.parting_tool
    if tool is not None and tool.reach is not None and across / 2 > tool.reach.mm:
        yield _sawn_off(turning, across)
        return
    name = f"parting tool {turning.work.mm(parting_mm(turning))}"
    over = turning.work.mm(turning.length + BACK_MM)
    parting = turning.work.act(
        "part-off",
        f"part off {over} long",
        machine=turning.lathe,
        tool=name,
        size=across,
        amount=across,
    )
    if parting.speed == _BY_HAND:
        yield _sawn_off(turning, across)
        return
    turning.over = BACK_MM
    # No back edge is broken here: the face behind it is cut again in the next grip.
    first, *others = [*formed_behind(turning), parting]
    yield _drawn_out(turning, first)
    yield from others


def _drawn_out(turning: Turning, act: Act) -> Act:
    """The first act at the back end, which may lie in the jaws until the bar is drawn out."""
    if _is_out(turning):
        return act
    long = turning.work.mm(math.ceil(turning.length + parting_mm(turning) + CLEAR_MM))
    return replace(act, what=f"draw the bar out to {long} and grip it again, {act.what}")


def _sawn_off(turning: Turning, across: float) -> Act:
    """Where no parting tool reaches, or no speed is slow enough for one."""
    long = turning.work.mm(turning.length + turning.work.facing)
    return turning.work.act(
        "part-off",
        f"stop the spindle, lay a board on the bed, saw it off in the chuck, {long} long",
        tool="hacksaw",
        amount=across,
        spoils="sawing into the bed; a spindle that turns under the saw",
    )


def _is_out(turning: Turning) -> bool:
    """Whether the whole length stands out of the jaws from the start."""
    return stand_out(turning) >= turning.length + parting_mm(turning)
