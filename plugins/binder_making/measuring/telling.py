"""A size with limits to the words for what it is read with, one answer for every page."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from binder_making.measuring.judging import Grade, Instrument, judge

PLUG: Final = "a plug turned to size"
MATE: Final = "its own mate"
KNOWN: Final = "against a known piece"
BORROWED: Final = "a borrowed instrument"
# What is felt when one half is tried in the other: it moves, and is not plainly loose, in µm.
# Common practice, no source.
_FELT = frozenset({"runs_in", "slides", "swivels", "hinged"})
_LOOSE_UM = 50.0
_SAME = 1e-6
# A drill by its name, and its size in mm.
Shank = tuple[str, float]
SHANKS: Final = "shanks of drills"
# Below this the jaws of a caliper tell no hole, in mm. Common practice, no source.
_SMALL_MM = 5.0
_PAIR = 2
# A plug gauge has two ends and gives no number; a mate made to the middle of them is off by half
# the band of the bore at most, which the fit's own band holds: geometry.
_BY_PLUG: Final = (
    "try {it} with both ends of the plug, thicker ones where the second goes in too; write down "
    "the middle between the end that goes in and the one that does not: its mate is made to it"
)


def by_shanks(
    limits_mm: tuple[float, float],
    owned: Iterable[Instrument],
    shanks: Iterable[tuple[str, float]],
) -> tuple[Shank, Shank] | None:
    """The drills, by name and size in mm, whose shanks tell a small hole: goes in, does not.

    None where an owned instrument reads it, or no two shanks lie within its limits in mm. What
    they tell is the hole that is accepted, so that its limits can be no wider.
    """
    low, high = limits_mm
    if low >= _SMALL_MM or any(_reads_inside(one, limits_mm) for one in owned):
        return None
    within = sorted((mm, name) for name, mm in shanks if low - _SAME <= mm <= high + _SAME)
    if len(within) < _PAIR or within[-1][0] - within[0][0] < _SAME:
        return None
    (thin, goes), (thick, stays) = within[0], within[-1]
    return (goes, thin), (stays, thick)


def _reads_inside(one: Instrument, limits_mm: tuple[float, float]) -> bool:
    """Whether it is made for the inside: flat jaws of a caliper read a small hole small."""
    is_inside = "inside" in one.measures and "outside" not in one.measures
    return is_inside and one.low_mm <= limits_mm[0] and limits_mm[1] <= one.high_mm


def is_tried(kind: str, least_um: float, most_um: float) -> bool:
    """Whether a mate tells a size: a nip, a gap to be filled and a rattling fit it does not."""
    return kind in _FELT and least_um >= -_SAME and most_um <= _LOOSE_UM


def noted(it: str, tool: str) -> str:
    """The act by which a size comes to be written down, by what `tool` can say of it."""
    if tool == PLUG:
        return _BY_PLUG.format(it=it)
    if tool.startswith(SHANKS):
        return f"try {it} with the shanks of drills; write down the thickest that goes in"
    return f"measure {it}, write it down: its mate is made to it"


def noted_for_mandrel(it: str, tool: str, *, is_master: bool) -> str:
    """The act by which a bore is written down before a mandrel is turned to it.

    `is_master` where its mate is made to the same figure.
    """
    words = noted(it, tool)
    if not is_master:
        words = words.partition(": its mate")[0]
    ends = ", and the mandrel turned" if ": its mate" in words else ": the mandrel is turned to it"
    return f"burr off its mouth, chips out of it: {words}{ends}"


def told_by(
    limits_mm: tuple[float, float],
    way: str,
    owned: Iterable[Instrument],
    *,
    is_master: bool,
    by_mate: bool,
    shanks: Iterable[tuple[str, float]] = (),
) -> str:
    """What a size is read with, `way` inside or outside; limits in mm.

    `shanks` are the drills at hand by name and size in mm: they tell a hole that no jaws go into.
    What no owned instrument tells is tried with its mate, where that tells it; what is made first
    has none yet and is read as near as can be; all else is compared with a piece whose size is
    known. Raises NotDefined where the limits cross.
    """
    tools = tuple(owned)
    if way == "inside" and limits_mm[0] < _SMALL_MM:
        if (found := by_shanks(limits_mm, tools, shanks)) is not None:
            return f"{SHANKS}: {found[0][0]} goes in, {found[1][0]} does not"
        tools = tuple(one for one in tools if _reads_inside(one, limits_mm))
    verdict = judge(*limits_mm, way, tools)
    if verdict.instrument is not None:
        return f"{verdict.instrument.name}{'' if verdict.grade is Grade.GOOD else ', read twice'}"
    if way == "inside":
        return PLUG
    low, high = limits_mm
    able = (
        one for one in tools if way in one.measures and one.low_mm <= low and high <= one.high_mm
    )
    finest = min(able, key=lambda one: (one.doubt_mm, one.high_mm), default=None)
    if by_mate and not is_master:
        # The size that is reckoned from the measured mate is come near by reading, first.
        return MATE if finest is None else f"{finest.name}, then {MATE}"
    if finest is None:
        return BORROWED
    return f"{finest.name}, {'as near as it reads' if is_master else KNOWN}"
