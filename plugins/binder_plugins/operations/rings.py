"""Holes beside the axis of turned work, a ring of them or one alone; and spokes."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice, drill_for, mill_for, place_of, vice_for
from binder_plugins.operations.beside_steps import beside_step
from binder_plugins.operations.disc import CIRCLES
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import HOLES, SINKS, Where, through
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.parallels import CLEAR, OVER
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located, Stretch

_SAME = 1e-6
# The body of the centre drill that spots, in mm; it must pass what stands beside the hole.
_SPOT_MM = 3.0
_PUNCH_DEG, _CLEAR_MM = 60.0, 0.05
_POP = "; no centre drill passes what stands beside it"
_NO_POP = "; neither centre drill nor punch passes what stands beside it"
_KINDS = HOLES | SINKS.keys()


def is_beside(one: Located) -> bool:
    """Whether a hole lies beside the axis, where no tool in the tailstock gets at it."""
    return one.kind in _KINDS and (len(one.spots) > 1 or from_axis(one) > _SAME)


def from_axis(one: Located) -> float:
    """How far the holes of a ring are from the axis, in mm."""
    return max((math.hypot(*spot[1:]) for spot in one.spots), default=0.0)


def ring_setups(turning: Turning, number: int) -> Iterator[SetUp]:
    """Each ring by coordinates on the mill, else marked out for the drill; then spokes."""
    workshop = turning.work.design.workshop
    for one in turning.beside:
        machine = mill_for(workshop) or drill_for(workshop, one.diameter or 0.0)
        place = place_of(workshop, machine)
        acts = list(_drilled(turning, one, machine, by_rows=place == "mill"))
        if not acts:
            continue
        vice = vice_for(workshop)
        end = "right" if one.frame.z[0] > 0 else "left"
        grip = Grip(f"{vice or 'clamps'}, on parallels", "vice", f"its rim, {end}-hand end up")
        first = "; first hole as drawn" if len(one.spots) > 1 else ""
        made = tuple(acts)
        near = from_axis(one) + (one.diameter or 0.0) / 2 > max(turning.form.size[1:]) / 2 - OVER
        clear = CLEAR if one.depth is None and near else ""
        yield SetUp(number, place, machine, grip, f"the axis, clocked{first}", made, clear, "",
                    holding_min(grip.kind))  # fmt: skip
        number += 1
    yield from _spokes(turning, number)


def _drilled(turning: Turning, one: Located, machine: str, *, by_rows: bool) -> Iterator[Act]:
    work, far = turning.work, f"{turning.work.mm(from_axis(one))} from the axis"
    tags = ("coordinates",) if by_rows else ()
    holes = list(hole_acts(work, one, Where(machine, through(one, turning.form.size), tags=tags)))
    if not by_rows and holes:
        count = len(one.spots)
        words = f"scribe the circle {far}, mark out {count} hole{'s' if count > 1 else ''} on it"
        yield work.act("mark-out", words, feature=f"marks {one.name}", tool=CIRCLES, amount=count)
    flange = _flange(turning, one)
    for number, act in enumerate(holes):
        said = act.what if number else f"{act.what}, {far}"
        if act.act == "drill" and flange is not None:
            said += f": the {_step(turning, flange)} alone, stop when its point is out behind it"
        told = replace(act, what=said)
        yield _started(told, turning, one, by_rows=by_rows) if act.act == "spot" else told


def _started(spot: Act, turning: Turning, one: Located, *, by_rows: bool) -> Act:
    """The start of a hole beside a higher step: by the centre drill, the punch, or its own drill.

    A punch of 60° is as thick at a height as that is high times 2 tan 30°: between them it is
    struck aside. Common practice, no source.
    """
    room, high = beside_step(turning.steps, one)
    if room >= _SPOT_MM / 2:
        return spot
    if room >= high * math.tan(math.radians(_PUNCH_DEG / 2)) + _CLEAR_MM:
        said = spot.what.replace("spot for", "pop for", 1)
        return replace(spot, what=f"{said}{_POP}", tool="centre punch", speed="", feed="")
    where = "by the dials from the axis" if by_rows else "where the scribed lines cross"
    said = spot.what.replace("spot for", "start", 1)
    tool = f"{drill_name(turning.work, one.diameter or 0.0, fitted=False)} itself, gripped short"
    words = f"{said}, {where}, with its own drill, gripped short, lightly{_NO_POP}"
    return replace(spot, what=words, tool=tool)


def flange_burrs(turning: Turning) -> Iterator[Act]:
    """What such a hole throws up behind its flange, where no countersink comes at it."""
    for one in turning.beside:
        flange = _flange(turning, one)
        if flange is not None and not turning.work.is_wholly_left(one.name):
            yield turning.work.act(
                "clear",
                f"scrape the burr off the {one.name.replace('_', ' ')} behind the "
                f"{_step(turning, flange)}, and break its mouth",
                feature=one.name,
                tool="three-square scraper",
                spoils="scoring what stands beside the hole",
            )


def _flange(turning: Turning, one: Located) -> Stretch | None:
    """The step that a blind hole goes right through, out beside a thinner one behind it."""
    if one.depth is None or not one.spots:
        return None
    x, way = one.spots[0][0], one.frame.z[0]
    order = turning.steps[::-1] if way > 0 else turning.steps
    for step, behind in pairwise(order):
        mouth, back = (step.end, step.start) if way > 0 else (step.start, step.end)
        if abs(x - mouth) > _SAME:
            continue
        across = behind.end_across if way > 0 else behind.across
        is_clear = from_axis(one) - (one.diameter or 0.0) / 2 > across / 2 - _SAME
        return step if is_clear and one.depth >= abs(back - mouth) - _SAME else None
    return None


def _step(turning: Turning, step: Stretch) -> str:
    return step.name.replace("_", " ") or f"step {turning.steps.index(step) + 1}"


def _spokes(turning: Turning, number: int) -> Iterator[SetUp]:
    spokes = [one for one in turning.form.located if one.kind == "spokes"]
    if not spokes:
        return
    act = turning.work.act(
        "cross-out",
        f"saw and file out between: {spokes[0].note}",
        feature="spokes",
        amount=math.pi * turning.form.size[1],
    )
    vice = bench_vice(turning.work.design.workshop)
    grip = Grip(f"{vice or 'vice'}, soft jaws", "bench", "the plain part")
    yield SetUp(number, "bench", "", grip, "lines scribed from the axis", (act,))
