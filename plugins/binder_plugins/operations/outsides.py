"""Steps of turned work to the acts that turn them: rough, then to limits."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.closing_piece import closing_journal
from binder_plugins.operations.lengthwise import has_limits
from binder_plugins.operations.set_over import swung
from binder_plugins.operations.taper_mates import BLUE, mate_of, tried, tried_min
from binder_plugins.operations.taper_necks import neck_act, neck_between, stopped_short

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Stretch

# Common practice, no source: what roughing leaves on the diameter, in mm.
_LEFT_MM = 0.4
_SLENDER = 5.0
_SAME = 1e-6
_SLENDER_MM = 3.0
# The anvils of a micrometer are 6.5 mm across, from memory; what they want beside them, in mm.
_ANVIL_MM, _BESIDE_MM = 6.5, 0.5


def step_name(turning: Turning, place: int) -> str:
    """The name of a step, as features name theirs."""
    return turning.steps[place].name or f"step {place + 1}"


def max_across(step: Stretch) -> float:
    """The larger end of a step in mm."""
    return max(step.across, step.end_across)


def is_shaped(turning: Turning, place: int) -> bool:
    """Whether a step is a taper or a ball, for which the tool does not just go along the bed."""
    step = turning.steps[place]
    return abs(step.across - step.end_across) > _SAME or is_ball(turning, place)


def rough_turn(
    turning: Turning, place: int, free: str, tags: tuple[str, ...], there: float
) -> Iterator[Act]:
    """The roughing of a step, or all of it where it has no limits; the bar is `there` mm thick."""
    step, work = turning.steps[place], turning.work
    across = min(step.across, step.end_across)
    fitted = has_limits(step, work)
    to = across + _LEFT_MM if fitted else across
    act, words = _way(turning, place, to, free, fitted=fitted)
    start = max(there, to)
    long = _cut_long(turning, place, act, free)
    behind = [i for i in turning.plan.first if (i < place) == (free == "right") and i != place]
    # A neck made at the first end cannot wait for the roughing of the second.
    is_last = not turning.plan.second or place in turning.plan.second
    is_thin = any(_is_thin(turning.steps[i]) for i in (place, *behind))
    slender = ("slender",) if is_last and is_thin else ()
    yield from _neck(turning, place, free, (*tags, *slender), start)
    turned = work.act(
        act,
        words,
        machine=turning.lathe,
        feature=step_name(turning, place),
        tool=_tool(turning, place, act, free),
        size=to,
        start=start,
        deep=long,
        end=free,
        tags=(*tags, "outside", *(("rough",) if act == "turn" else ()), *slender),
    )
    mate = mate_of(work, step_name(turning, place)) if act == "taper" else None
    yield replace(turned, run=turned.run + tried_min(mate))


def room_in_waste(turning: Turning) -> float:
    """How far a neck before the bar goes on into the waste, in mm, for a micrometer to enter."""
    place = 0 if turning.plan.free == "right" else len(turning.steps) - 1
    step = turning.steps[place]
    is_neck = turning.plan.is_parted and place in turning.plan.behind
    if not is_neck or not has_limits(step, turning.work):
        return 0.0
    return max(_ANVIL_MM + _BESIDE_MM - (step.end - step.start), 0.0)


def _is_thin(step: Stretch) -> bool:
    """Whether a step bends under a heavy cut, or what stands before it on it does."""
    across = min(step.across, step.end_across)
    return (step.end - step.start) / across > _SLENDER or across < _SLENDER_MM


def finish_turn(turning: Turning, place: int, free: str, tags: tuple[str, ...]) -> Iterator[Act]:
    """The finishing cuts of a step with limits."""
    step, work = turning.steps[place], turning.work
    if not has_limits(step, work):
        return
    half = work.half(step.name)
    what = half.what if half is not None else f"turn ⌀{work.mm(step.across)}"
    is_told = "measured" in what
    how = f" ({half.how})" if half is not None and "suit" in half.how and not is_told else ""
    yield work.act(
        "turn",
        f"finish: {what}{how}",
        machine=turning.lathe,
        feature=step_name(turning, place),
        tool=f"{'left-hand ' if place in turning.plan.behind else ''}knife tool freshly honed",
        size=step.across,
        start=step.across + _LEFT_MM,
        deep=step.end - step.start,
        end=free,
        finish=True,
        tags=(*tags, "outside", "finish", "fit", "runs-true"),
        half=half,
    )


def _cut_long(turning: Turning, place: int, act: str, free: str) -> float:
    """How far a cut goes in mm: from the end on, over what is turned thinner after it."""
    step = turning.steps[place]
    if act != "turn" or place in turning.plan.behind:
        is_last = place in {0, len(turning.steps) - 1}
        return step.end - step.start + (room_in_waste(turning) if is_last else 0.0)
    return _ends_at(turning, place, free)[1]


def _ends_at(turning: Turning, place: int, free: str) -> tuple[float, float]:
    """How far the near and the far end of a step are from the end that is worked, in mm."""
    step = turning.steps[place]
    if free == "left":
        return step.start, step.end
    return turning.length - step.end, turning.length - step.start


def _way(turning: Turning, place: int, to: float, free: str, *, fitted: bool) -> tuple[str, str]:
    step, work = turning.steps[place], turning.work
    near, far = _ends_at(turning, place, free)
    long = f" × {work.mm(step.end - step.start)}"
    off = f", beginning {work.mm(near)} from the end" if near > _SAME else ""
    if is_ball(turning, place):
        return "form", f"turn the ball ⌀{work.mm(step.across)}"
    if abs(step.across - step.end_across) > _SAME:
        near_end, far_end = (
            (step.across, step.end_across) if free == "left" else (step.end_across, step.across)
        )
        ends = f"⌀{work.mm(near_end)} to ⌀{work.mm(far_end)}"
        mate = mate_of(work, step_name(turning, place))
        at = swung(near_end, far_end, step.end - step.start, has_mate=mate is not None)
        over = f"{at}{_past_it(turning, place, free)}{tried(work, mate)}"
        return "taper", f"turn the taper {ends}{long}{off}, {over}"
    verb = "rough to" if fitted else "turn"
    if place in turning.plan.behind or _is_pocket(turning, place):
        waste = 0.0 if 0 < place < len(turning.steps) - 1 else room_in_waste(turning)
        long = f" × {work.mm(step.end - step.start + waste)}"
        why = f"; {work.mm(waste)} of it is waste, where the micrometer goes in" if waste else ""
        return "turn", f"{verb} ⌀{work.mm(to)}{long}{off}{_behind(turning, place)}{why}"
    suited = closing_journal(work, step_name(turning, place))
    if suited:
        begins = f"{work.mm(near)} + " if near > _SAME else ""
        long = f"{begins}{suited} = ______ from the end, {work.mm(far)} as drawn"
        return "turn", f"{verb} ⌀{work.mm(to)}, to {long}"
    across = _left_across(turning, place, free)
    return "turn", f"{verb} ⌀{work.mm(to)}, {across}to {work.mm(far)} from the end"


def _left_across(turning: Turning, place: int, free: str) -> str:
    """Until the journal behind it, which is left of the bar, is as long as its mate wants it."""
    inner = place + (1 if free == "left" else -1)
    if place not in turning.plan.second or not 0 <= inner < len(turning.steps):
        return ""
    suited = closing_journal(turning.work, step_name(turning, inner))
    if not suited:
        return ""
    name = step_name(turning, inner).replace("_", " ")
    return f"until {suited} = ______ is left of the {name} across its shoulders; as drawn "


def _behind(turning: Turning, place: int) -> str:
    """No tool comes along the work to a step behind a larger one: it is plunged for first."""
    if _is_pocket(turning, place):
        return (
            f", between the flanges: plunge with the {parting(turning)}, then clean out both ways"
        )
    if place in turning.plan.behind:
        return f", behind the flange: plunge with the {parting(turning)}, then out to the flange"
    return ""


def parting(turning: Turning) -> str:
    """`parting tool, 2 mm wide` as this workshop has it."""
    width = turning.work.design.workshop.parting_width
    return f"parting tool, {turning.work.mm(float(width))} wide" if width else "parting tool"


def _is_pocket(turning: Turning, place: int) -> bool:
    """Whether a step lies between larger ones on both sides."""
    if not 0 < place < len(turning.steps) - 1:
        return False
    before, step, after = turning.steps[place - 1 : place + 2]
    return min(before.end_across, after.across) > max_across(step) + _SAME


def _front(turning: Turning, place: int, free: str) -> tuple[str, float]:
    """The larger step behind which a taper begins, so that no tool comes to it from the end.

    Its name, and how thick in mm it is there; no name and 0 where there is none.
    """
    step, is_right = turning.steps[place], free == "right"
    front, across = (place + 1, step.end_across) if is_right else (place - 1, step.across)
    is_cone = abs(step.across - step.end_across) > _SAME and not is_ball(turning, place)
    if not is_cone or not 0 <= front < len(turning.steps):
        return "", 0.0
    before = turning.steps[front]
    side = before.across if is_right else before.end_across
    name = step_name(turning, front).replace("_", " ")
    return (name, side) if side > across + _SAME else ("", 0.0)


def _neck(
    turning: Turning, place: int, free: str, tags: tuple[str, ...], there: float
) -> Iterator[Act]:
    """The neck in which such a taper begins, cut while the slide stands square; `there` in mm."""
    (before, side), step = _front(turning, place, free), turning.steps[place]
    if not before:
        return
    mm, long = turning.work.mm, step.end - step.start
    ends = (step.end_across, step.across) if free == "right" else (step.across, step.end_across)
    blade = float(turning.work.design.workshop.parting_width or 0)
    made = neck_between(long, ends, (side, there), blade)
    wide = f", {mm(made.wide)} wide," if made.wide > blade + _SAME else ""
    how = f" in {made.plunges} plunges side by side," if made.plunges > 1 else ""
    words = (
        f"behind the {before} to ⌀{mm(made.across)}{wide} with the {parting(turning)},{how} "
        f"beginning {mm(_ends_at(turning, place, free)[0])} from the end"
    )
    yield neck_act(turning, step_name(turning, place), (free, tags), (there, made), words)


def _past_it(turning: Turning, place: int, free: str) -> str:
    """The tool that reaches into the neck of a taper past the larger step before it.

    Its other flank leans ahead of the point, which stops short of a larger step behind the taper.
    """
    before, _ = _front(turning, place, free)
    if not before:
        return ""
    words = f", with a pointed tool relieved on both sides, which clears the {before}"
    step, last = turning.steps[place], place - 1 if free == "right" else place + 1
    if not 0 <= last < len(turning.steps):
        return words
    behind = turning.steps[last]
    across, side = (
        (step.across, behind.end_across) if free == "right" else (step.end_across, behind.across)
    )
    high = (side - across) / 2
    if high <= _SAME:
        return words
    name = step_name(turning, last).replace("_", " ")
    short = turning.work.mm(math.ceil(10 * stopped_short(high)) / 10)
    return f"{words}; stop its point {short} short of the {name}: its flank leans ahead of it"


def is_ball(turning: Turning, place: int) -> bool:
    """Whether a step is turned as a ball."""
    shape = getattr(turning.work.item, "shape", None)
    if not isinstance(shape, list) or len(shape) != len(turning.steps):
        return False
    return getattr(shape[place], "ball", None) is not None


def _tool(turning: Turning, place: int, act: str, free: str) -> str:
    """Into a pocket tools of both hands, behind a flange one that cuts towards it."""
    if act == "taper":
        is_necked = bool(_front(turning, place, free)[0])
        tool = f"{'pointed' if is_necked else 'knife'} tool and top-slide"
        mate = mate_of(turning.work, step_name(turning, place))
        return f"{tool}, {BLUE}" if mate is not None and mate.is_first else tool
    if act != "turn":
        return ""
    if _is_pocket(turning, place):
        return "parting tool, then knife tools of both hands"
    if place in turning.plan.behind:
        return "parting tool, then left-hand knife tool"
    return ""
