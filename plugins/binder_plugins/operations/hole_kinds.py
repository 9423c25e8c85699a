"""The kinds of holes and sinks, and what is told of the place where one is made."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Size

if TYPE_CHECKING:
    from binder_plugins.operations.mouths import Shoulder
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

HOLES = frozenset({"drilled", "reamed", "bored", "tapped"})
_TAPERED = HOLES - {"tapped"}
SINKS = {"counterbored": "counterbore", "spotfaced": "counterbore", "countersunk": "countersink"}


@dataclass(frozen=True, slots=True)
class Where:
    """Where a hole is made: on which machine, at which end or face, and so deep in mm.

    `meets` are features that it breaks into; `is_started` is true where a centre is there;
    `first` is the size of a hole that is there already; `is_open` where it ends in a bore;
    `is_together` where its parts are put together for it, so that nothing is left to be done.
    `beside` is what stands up next to its mouth, `mouth` the edge that is told for it. `past` is
    how far from the mouth in mm a bar is parted off or sawn through; 0 where a hole comes out.
    """

    machine: str
    deep: float
    end: str = ""
    meets: tuple[str, ...] = ()
    tags: tuple[str, ...] = ()
    is_started: bool = False
    first: float = 0.0
    is_lathe: bool = False
    is_open: bool = False
    is_together: bool = False
    beside: Shoulder | None = None
    mouth: Located | None = None
    past: float = 0.0


def through(one: Located, size: tuple[float, float, float]) -> float:
    """How deep a hole is in mm; what it goes through where nothing is told."""
    if one.depth is not None:
        return one.depth
    return sum(abs(way) * size for way, size in zip(one.frame.z, size, strict=True))


def hole_volume(across: float, deep: float) -> float:
    """What the time of a drilled hole goes by: its volume in mm³."""
    return max(math.pi / 4 * across**2 * deep, 1.0)


def many_of(one: Located) -> str:
    """`4 × ` before what is done to alike holes; nothing before a single one."""
    return f"{len(one.spots)} × " if len(one.spots) > 1 else ""


def narrows_to(work: Work, one: Located) -> float:
    """The small end of a taper bore in mm, at its depth; 0 of a hole that is straight."""
    small = getattr(entry_of(work, one), "narrows_to", None)
    if one.kind not in _TAPERED or not isinstance(small, Size):
        return 0.0
    return float(small.mm) if 0 < small.mm < (one.diameter or 0.0) else 0.0


def least_across(work: Work, one: Located) -> float:
    """The smallest diameter of a hole in mm: of a taper bore the small end."""
    return narrows_to(work, one) or one.diameter or 0.0


def entry_of(work: Work, one: Located) -> object:
    """What is written of a hole, None where its shape has it."""
    found = work.feature(one.name)
    return found.entry if found is not None else None
