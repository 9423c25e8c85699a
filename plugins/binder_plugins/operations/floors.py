"""Pins that reach the floor of a blind reamed socket: their end clears what the lead leaves."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import FitFact, Size, exact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Feature
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Stretch

# The lead of a machine reamer, bevelled at 45°: of its diameter, and at the least, in mm; and what
# a chamfer is larger than it must be. Common practice, no source.
_LEAD, _LEAST, _CLEAR = 0.1, 0.5, 0.1
_BROKEN = frozenset({"chamfered", "rounded", "bevelled"})


def floor_chamfers(turning: Turning, end: str, tags: tuple[str, ...]) -> Iterator[Act]:
    """The chamfer on the end of a pin that is about as long as its socket is deep."""
    step = turning.steps[0 if end == "left" else -1]
    if any(one.face == end and one.kind in _BROKEN for one in turning.form.located):
        return
    work = turning.work
    for socket, title in _sockets(work, step):
        leg = _leg(work, step, socket)
        if leg > 0:
            yield work.act(
                "chamfer",
                f"chamfer the end {work.mm(leg)} × 45°: the reamer leaves a cone at the floor of "
                f"the {socket.name.replace('_', ' ')} of the {title}",
                machine=turning.lathe,
                feature=f"{end} end",
                size=step.across,
                end=end,
                tags=tags,
            )
            return


def floor_leg(work: Work, step: Stretch) -> float:
    """The legs in mm of the chamfer with which a pin reaches the floor of its socket, or 0."""
    return max((_leg(work, step, socket) for socket, _ in _sockets(work, step)), default=0.0)


def _sockets(work: Work, step: Stretch) -> Iterator[tuple[Feature, str]]:
    """The blind reamed holes that a step is fitted to, with the titles of their parts."""
    design, own = work.design, f"{work.name}.{step.name}"
    for fact in design.facts.where(FitFact, "shaft", own):
        item, _, place = fact.hole.partition(".")
        part = design.item(item)
        if part is None:
            continue
        for one in getattr(part, "features", ()):
            if one.name == place and one.kind == "reamed":
                yield one, part.title


def _leg(work: Work, step: Stretch, socket: Feature) -> float:
    """How long the legs of the chamfer are in mm; 0 where the socket is deep enough without."""
    depth = getattr(socket.entry, "depth", None)
    is_reamed = work.design.workshop.owns_reamer(exact(round(step.across, 4))) is not None
    if not isinstance(depth, Size) or not is_reamed:
        return 0.0
    lead = max(_LEAD * step.across, _LEAST)
    left = lead - (depth.mm - (step.end - step.start))
    return math.ceil((left + _CLEAR) * 10 - 1e-6) / 10 if left > 1e-6 else 0.0
