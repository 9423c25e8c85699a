"""How far the second end stands out of its jaws: what is cut, and room for the tool."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.bench import round_holder
from binder_plugins.operations.gripping import COLLET_MM
from binder_plugins.operations.lengthwise import GRIP_MM, SAME, from_end, is_spoiled
from binder_plugins.operations.reaching import SHORT, cut_reach
from binder_plugins.operations.thickest import thickest

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Stretch

# Common practice, no source: work stands out so many times as far as it is gripped, and no more
# of it hangs behind a grip that is less than this part of its thickness; what stays clear of the
# jaws where an end is only faced, where the grip is short, and beside a rounded edge, in mm. A
# collet has no jaws to strike: beside one it is less, so that thin work is gripped over so many
# times its thickness where that can be had.
_GRIPS = 2.5
_SEAT = 1 / 6
_FACED = 2.0
_TIGHT, _TIGHT_COLLET = 1.0, 0.5
_LONG_GRIP = 1.5
_ROUND_CLEAR = 0.5


def stand_out(turning: Turning, place: int, end: str) -> float:
    """How far the finished end stands out of jaws that grip a step, in mm.

    A larger step between the grip and the end does not go into the jaws; one of the same size
    does, as far as it is neither turned nor threaded there.
    """
    near, far = _surface(turning, place, end)
    cut = cut_to(turning, end)
    long, tight = GRIP_MM, _TIGHT
    if _in_collet(turning, place):
        long, tight = max(_LONG_GRIP * turning.steps[place].across, GRIP_MM), _TIGHT_COLLET
    room = max(far - max(near, cut) - long, tight)
    out = max(near, cut + min(SHORT if cut else _FACED, room))
    rounded = rounded_to(turning, end) if near < SAME else 0.0
    return max(out, rounded + _ROUND_CLEAR if rounded else 0.0)


def _in_collet(turning: Turning, place: int) -> bool:
    step = turning.steps[place]
    most = thickest(turning.work, step)
    found = round_holder(turning.work.design.workshop, most, true=step.across <= COLLET_MM)
    return found[1] == "collet"


def gripped(turning: Turning, place: int, end: str) -> float:
    """How much of a step and its equals is gripped to work at an end, in mm."""
    return _surface(turning, place, end)[1] - stand_out(turning, place, end)


def is_firm(turning: Turning, place: int, end: str) -> bool:
    """Whether enough is gripped for what stands out, and for what hangs behind in the chuck."""
    out, long = stand_out(turning, place, end), gripped(turning, place, end)
    behind = turning.length - out - long
    is_seated = long >= _SEAT * turning.steps[place].across - SAME
    return max(out, 0.0 if is_seated else behind) <= _GRIPS * long + SAME


def cut_to(turning: Turning, end: str) -> float:
    """How far from an end metal is taken off in the second grip; 0 where it is only faced."""
    turned = [from_end(turning.steps[i], end, turning.length) for i in turning.plan.second]
    return max([*turned, cut_reach(turning, end)])


def between(turning: Turning, place: int, end: str) -> Sequence[Stretch]:
    """The steps from the gripped one to the end that is worked, that end last."""
    return turning.steps[:place][::-1] if end == "left" else turning.steps[place + 1 :]


def rounded_to(turning: Turning, end: str) -> float:
    """How far the edges rounded at an end reach along the work, in mm."""
    mine = turning.edges(end, first=False)
    mine += [one for one in turning.axial if not turning.is_first(one)]
    return max((one.diameter or 0.0 for one in mine if one.kind == "rounded"), default=0.0)


def _surface(turning: Turning, place: int, end: str) -> tuple[float, float]:
    """From where to where jaws may lie, from the end that is worked, in mm."""
    step = turning.steps[place]
    low, high = step.start, step.end
    for one in between(turning, place, end):
        is_same = abs(one.across - step.across) < SAME and abs(one.end_across - step.across) < SAME
        is_cut = turning.steps.index(one) in turning.plan.second
        if not is_same or is_cut or is_spoiled(turning.form.located, one):
            break
        low, high = min(low, one.start), max(high, one.end)
    return (low, high) if end == "left" else (turning.length - high, turning.length - low)
