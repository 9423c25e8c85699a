"""A size with limits to the tool that can tell it, out of those in the workshop.

The step that a tool reads is held to a tenth of the limits' width, a fifth at the most: the
rule of ten, common practice, no source.
"""

from __future__ import annotations

from binder.api import HalfFact, Workshop, exact
from binder_making.measuring import Instrument, told_by

BEST = 10
LEAST = 5


def tool_for(half: HalfFact, workshop: Workshop, *, by_mate: bool = True) -> str:
    """What to measure with; a half that no owned tool can tell is tried with its mate.

    `by_mate` is false where that tells nothing, as of a nip: it is compared with a plug.

    The half that is made first has no mate yet: it is read as finely as the workshop can, and the
    other half is made to what was read.
    """
    if half.over is not None:
        return _over_pins(half.over, workshop, is_inside=half.is_inside)
    if half.lower is None or half.upper is None:
        return ""
    return told_by(
        (half.lower, half.upper),
        "inside" if is_hole(half) else "outside",
        (
            Instrument(
                one.name, one.measures, float(one.least), float(one.most), float(one.resolution)
            )
            for one in workshop.instruments()
        ),
        is_master=half.is_master,
        by_mate=by_mate,
    )


def _over_pins(over: float, workshop: Workshop, *, is_inside: bool) -> str:
    """The finest instrument that reaches; how thick the pins are stands with the size.

    It has no limits: the one half is made to what was read of the other.
    """
    way, where = ("inside", "between") if is_inside else ("outside", "over")
    finest = workshop.finest(exact(over), exact(over), way)
    name = finest.name if finest is not None else "a borrowed instrument"
    return f"{name}, {where} two pins"


def is_hole(half: HalfFact) -> bool:
    """Whether metal is around it: what is too large there cannot be put back."""
    return half.what.startswith(("ream", "bore", "drill", "lap", "hole"))


def if_out(half: HalfFact) -> str:
    """What to do next where the size came out wrong."""
    if half.over is not None and half.is_inside:
        return "too narrow: cut on; too wide: a thicker gib, or make it again"
    if half.over is not None:
        return "too wide: cut on; too narrow: write it down, make the slot to it"
    if is_hole(half):
        return "write it down, make the other half to it"
    return "too large: polish down; too small: bush or make again"
