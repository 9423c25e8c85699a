"""Screwed spigots to findings: does the shoulder come down before the end meets the bottom."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Design, Diagnostic, End, Joint, Labelled, PlaceFact, shown_length
from binder_plugins.threads import codes
from binder_plugins.threads.found import Found
from binder_trade.threads import Thread

_SAME_MM = 0.02


def check_seating(
    joint: Joint, halves: Sequence[tuple[End, Found]], design: Design
) -> Iterator[Diagnostic]:
    """A spigot below a shoulder against the depth of the hole; a screw that travels seats not."""
    nut = next((half for _, half in halves if half.is_internal), None)
    screw = next((half for _, half in halves if not half.is_internal), None)
    if joint.kind == "leads" or nut is None or screw is None or nut.depth is None:
        return
    step = screw.surface
    if not nut.is_blind or step is None or step.length is None:
        return
    if step.length <= nut.depth or not has_shoulder(step, screw.thread, design):
        return
    units = design.units
    yield codes.SCREW_BOTTOMS.at(
        screw.at,
        f"{shown_length(step.length, units)} of '{step.place}' goes into "
        f"{shown_length(nut.depth, units)} of {nut.thread.designation}: it cannot seat",
        related=(Labelled(nut.at, "this hole"),),
        help=f"make '{step.place}' shorter by {shown_length(step.length - nut.depth, units)} or "
        "more, or tap deeper where there is metal",
    )


def has_shoulder(step: PlaceFact, thread: Thread, design: Design) -> bool:
    """Whether the step beside it is thicker than the thread."""
    if step.start is None or step.length is None:
        return False
    end = step.start + step.length
    return any(
        other.item == step.item
        and other.form == "step"
        and other.start is not None
        and other.length is not None
        and other.diameter is not None
        and float(other.diameter) > thread.major_mm + _SAME_MM
        and (other.start == end or other.start + other.length == step.start)
        for other in design.facts.all(PlaceFact)
    )
