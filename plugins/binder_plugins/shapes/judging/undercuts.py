"""Holes beside dovetails and T-slots: those that break into a corner, or leave a thin wall."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Diagnostic, ThreadFact
from binder_plugins.shapes import form_codes
from binder_plugins.shapes.judging.bores import Bore, Look, looks
from binder_plugins.shapes.judging.hollows import (
    UNDERCUT,
    Hollow,
    Side,
    from_line,
    hollows,
    is_inside,
)
from binder_plugins.shapes.judging.walls import least_wall

_SAME = 1e-6


@dataclass(frozen=True, slots=True)
class Near:
    """How much metal in mm one hole leaves beside an undercut, and how wide it is there."""

    bore: Bore
    beside: str
    left: float
    across: float


def check_undercuts(design: Design) -> Iterator[Diagnostic]:
    """Of each hole, in patterns too, the worst place alone."""
    for look in looks(design):
        located = look.form.located if look.is_box else ()
        cuts = [cut for one in located for cut in hollows(one, UNDERCUT)]
        worst: dict[str, Near] = {}
        for near in _nears(look, cuts, design):
            name = near.bore.feature.name
            if name not in worst or near.left < worst[name].left:
                worst[name] = near
        for near in worst.values():
            if near.left < least_wall(near.across) - _SAME:
                yield _finding(look, near)


def _nears(look: Look, cuts: list[Hollow], design: Design) -> Iterator[Near]:
    for bore in look.bores:
        across = across_of(look, bore, design)
        for cut in cuts:
            left = _along(bore, cut) if bore.axis == cut.axis else _beside(bore, cut)
            if left is not None:
                yield Near(bore, cut.name, left - across / 2, across)


def across_of(look: Look, bore: Bore, design: Design) -> float:
    """How wide a hole is, of a tapped one over the thread."""
    thread = design.facts.about(ThreadFact, f"{look.part.name}.{bore.feature.name}")
    is_tapped = thread is not None and bore.located.is_thread
    return max(2 * bore.radius, float(thread.major) if thread and is_tapped else 0.0)


def _along(bore: Bore, cut: Hollow) -> float | None:
    """From the middle of a hole that runs the same way to the outline; negative inside it.

    None where they are nowhere equally deep, and of a plain hole that opens one side alone, as a
    channel in the floor for a screw does.
    """
    if bore.end <= cut.start + _SAME or cut.end <= bore.start + _SAME:
        return None
    aways = [from_line(bore.middle, side) for side in cut.sides]
    opened = sum(away < bore.radius - _SAME for away in aways)
    if opened == 1 and not bore.located.is_thread:
        return None
    away = min(aways)
    return -away if is_inside(bore.middle, cut.section) else away


def _beside(bore: Bore, cut: Hollow) -> float | None:
    """From the axis of a hole that runs across to the side of what is cut away.

    None where it is not so deep, or where its middle stands over the cut: it is meant to meet it.
    """
    others = [n for n in range(3) if n != bore.axis]
    along = bore.middle[others.index(cut.axis)]
    aside = next(n for n in others if n != cut.axis)
    middle = bore.middle[others.index(aside)]
    # Its place among the two axes of the section, and that of the way of the hole.
    x = [n for n in range(3) if n != cut.axis].index(aside)
    widest = [point[x] for point in cut.section]
    is_past = along + bore.radius <= cut.start or along - bore.radius >= cut.end
    if is_past or min(widest) < middle < max(widest):
        return None
    places = [at for side in cut.sides for at in _within(side, x, bore)]
    return min((abs(at - middle) for at in places), default=None)


def _within(side: Side, x: int, bore: Bore) -> Iterator[float]:
    """The places aside, at both ends of what of a line lies as deep as a hole goes."""
    (a, b), (c, d) = ((point[x], point[1 - x]) for point in side)
    low, high = max(min(b, d), bore.start), min(max(b, d), bore.end)
    if low > high + _SAME or (high - low < _SAME and abs(d - b) > _SAME):
        return
    if abs(d - b) <= _SAME:
        is_shared = bore.start + _SAME < b < bore.end - _SAME
        yield from (a, c) if is_shared else ()
        return
    for deep in (low, high):
        yield a + (c - a) * (deep - b) / (d - b)


def _finding(look: Look, near: Near) -> Diagnostic:
    least = least_wall(near.across)
    name, part = near.bore.feature.name, look.part.name
    what = f"the thread of '{name}'" if near.bore.located.is_thread else f"'{name}'"
    move = f"move it, or the cut, {least - near.left:.2f} mm away: {least:.2f} mm is the least"
    if near.left <= _SAME:
        return form_codes.FEATURES_OVERLAP.at(
            near.bore.feature.at,
            f"{what} breaks {-near.left:.2f} mm into the side of '{near.beside}' on '{part}'",
            help=move,
        )
    return form_codes.WALL_TOO_THIN.at(
        near.bore.feature.at,
        f"{near.left:.2f} mm of metal is left between {what} and '{near.beside}' on '{part}'; "
        f"{least:.2f} mm is the least",
        help=move.partition(":")[0] + ", or make it smaller",
    )
