"""A size with limits to the tool that can tell it, out of those in the workshop.

The step that a tool reads is held to a tenth of the limits' width, a fifth at the most: the
rule of ten, common practice, no source.
"""

from __future__ import annotations

from binder.api import HalfFact, Workshop, exact

BEST = 10
LEAST = 5


def tool_for(half: HalfFact, workshop: Workshop) -> str:
    """What to measure with; a half that no owned tool can tell is tried with its mate.

    The half that is made first has no mate yet: it is read as finely as the workshop can, and the
    other half is made to what was read.
    """
    if half.lower is None or half.upper is None:
        return ""
    width = float(exact(half.upper) - exact(half.lower))
    way = "inside" if is_hole(half) else "outside"
    tool = workshop.finest(exact(half.lower), exact(half.upper), way)
    if tool is None or float(tool.resolution) * LEAST > width:
        if is_hole(half):
            return "a plug turned to size"
        if not half.is_master:
            return "its own mate"
        return f"{tool.name}, as near as it reads" if tool is not None else "a borrowed instrument"
    doubt = "" if float(tool.resolution) * BEST <= width else ", read twice"
    return f"{tool.name}{doubt}"


def is_hole(half: HalfFact) -> bool:
    """Whether metal is around it: what is too large there cannot be put back."""
    return half.what.startswith(("ream", "bore", "drill", "lap", "hole"))


def if_out(half: HalfFact) -> str:
    """What to do next where the size came out wrong."""
    if is_hole(half):
        return "write it down, make the other half to it"
    return "too large: polish down; too small: bush or make again"
