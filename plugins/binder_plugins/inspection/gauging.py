"""A size with limits to the tool that can tell it, out of those in the workshop.

The step that a tool reads is held to a tenth of the limits' width, a fifth at the most: the
rule of ten, common practice, no source.
"""

from __future__ import annotations

from binder.api import FitFact, HalfFact, Workshop, exact
from binder_making.measuring import PLUG, Instrument, told_by

BEST = 10
LEAST = 5
_INCH = 25.4


def tool_for(half: HalfFact, workshop: Workshop, *, by_mate: bool = True) -> str:
    """What to measure with; a half that no owned tool can tell is tried with its mate.

    `by_mate` is false where that tells nothing, as of a nip: it is compared with a plug.

    The half that is made first has no mate yet: it is read as finely as the workshop can, and the
    other half is made to what was read.
    """
    if half.over is not None:
        return _over_pins(half.over, workshop, is_inside=half.is_inside)
    if half.judged is None:
        return _over_mate(half, by_mate=by_mate) if half.suits is not None else ""
    return told_by(
        half.judged,
        "inside" if is_hole(half) else "outside",
        (
            Instrument(
                one.name, one.measures, float(one.least), float(one.most), float(one.resolution)
            )
            for one in workshop.instruments()
        ),
        # A rod as bought is read and taken as it is: there is nothing to set a plug for.
        is_master=half.is_master or ("as bought" in half.what and not by_mate),
        by_mate=by_mate,
        shanks=((one.name, float(one.mm)) for one in workshop.drills()),
    )


def said_of(tool: str, half: HalfFact, units: str) -> str:
    """The tool as the row has it: of a plug gauge the sizes of its two ends."""
    if tool != PLUG or half.judged is None:
        return tool
    low, high = (_read(one, units) for one in half.judged)
    return f"{tool}: {low} goes in, {high} does not"


def _read(mm: float, units: str) -> str:
    return f"{mm / _INCH:.4f}" if units == "inch" else f"{mm:.3f}"


def _over_mate(half: HalfFact, *, by_mate: bool) -> str:
    """What tells a half whose mate may be of any size within a bar's own limits.

    A shaft in its bore tells neither the least gap nor the greatest: two plugs do.
    """
    is_bored = half.what.startswith("bore") and half.suits is not None and half.suits[0] > 0
    if by_mate and not is_bored:
        return "its own mate"
    return "two plugs turned to the mate" if is_hole(half) else "a micrometer, against its mate"


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


def if_out(half: HalfFact, fit: FitFact | None = None) -> str:
    """What to do next where the size came out wrong; nobody bushes a solid pin.

    Only a half whose mate is still made to it may keep the size that it has.
    """
    if half.over is not None and half.is_inside:
        return "too narrow: cut on; too wide: a thicker gib, or make it again"
    if half.over is not None:
        return "too wide: cut on; too narrow: write it down, make the slot to it"
    is_first = half.is_master if fit is None else bool(fit.suit) and half.suits is None
    if is_first:
        return "write it down, make the other half to it"
    if is_hole(half):
        return "too small: open it; too large: bush the hole or make again"
    if "as bought" in half.what:
        return "too large: polish down; too small: another rod, or bush the hole"
    return "too large: polish down; too small: make again"
