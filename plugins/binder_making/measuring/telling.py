"""A size with limits to the words for what it is read with, one answer for every page."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from binder_making.measuring.judging import Grade, Instrument, judge

PLUG: Final = "a plug turned to size"
BORROWED: Final = "a borrowed instrument"
# What is felt when one half is tried in the other: it moves, and is not plainly loose, in µm.
# Common practice, no source.
_FELT = frozenset({"runs_in", "slides", "swivels", "hinged"})
_LOOSE_UM = 50.0
_SAME = 1e-6
# A plug gauge has two ends and gives no number; a mate made to the middle of them is off by half
# the band of the bore at most, which the fit's own band holds: geometry.
_BY_PLUG: Final = (
    "try {it} with both ends of the plug, thicker ones where the second goes in too; write down "
    "the middle between the end that goes in and the one that does not: its mate is made to it"
)


def is_tried(kind: str, least_um: float, most_um: float) -> bool:
    """Whether a mate tells a size: a nip, a gap to be filled and a rattling fit it does not."""
    return kind in _FELT and least_um >= -_SAME and most_um <= _LOOSE_UM


def noted(it: str, tool: str) -> str:
    """The act by which a size comes to be written down, by what `tool` can say of it."""
    if tool == PLUG:
        return _BY_PLUG.format(it=it)
    return f"measure {it}, write it down: its mate is made to it"


def told_by(
    limits_mm: tuple[float, float],
    way: str,
    owned: Iterable[Instrument],
    *,
    is_master: bool,
    by_mate: bool,
) -> str:
    """What a size is read with, `way` inside or outside; limits in mm.

    What no owned instrument tells is tried with its mate, where that tells it; what is made first
    has none yet and is read as near as can be; all else is compared with a plug. Raises
    NotDefined where the limits cross.
    """
    tools = tuple(owned)
    found = judge(*limits_mm, way, tools)
    if found.instrument is not None:
        return f"{found.instrument.name}{'' if found.grade is Grade.GOOD else ', read twice'}"
    if way == "inside":
        return PLUG
    if by_mate and not is_master:
        return "its own mate"
    low, high = limits_mm
    able = (
        one for one in tools if way in one.measures and one.low_mm <= low and high <= one.high_mm
    )
    finest = min(able, key=lambda one: (one.doubt_mm, one.high_mm), default=None)
    if finest is None:
        return BORROWED
    return f"{finest.name}, as near as it reads" if is_master else f"{finest.name}, against a plug"
