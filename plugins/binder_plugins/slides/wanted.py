"""Turns a joint, its written halves and the cutters that are owned into the slide wanted."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import Design, Size, Workshop
from binder_plugins.slides.facts import Side
from binder_plugins.slides.kinds import DovetailEntry
from binder_trade.explained import within
from binder_trade.slides import Wanted, hand_sliding

USUAL_ANGLE = 60.0
ANGLES = (30.0, 85.0)
# Room to set a gib, sideways; common practice, no source.
GIB_PLAY = 0.2
# A dovetail a quarter as deep as it is wide; common practice, no source.
DEPTH_PART = 4


def owned_cutters(workshop: Workshop) -> tuple[tuple[float, float, float], ...]:
    """The dovetail cutters of a workshop: angle in degrees, diameter and depth in mm."""
    return tuple(
        (float(one.angle.exact), one.diameter.mm, one.width.mm)
        for one in workshop.entry.cutters.dovetail_cutters
        if ANGLES[0] <= one.angle.exact <= ANGLES[1]
    )


def wanted(entry: DovetailEntry, male: Side, female: Side, design: Design) -> Wanted | None:
    """The slide, None where nothing tells its width. Raises NotDefined for what is no size.

    What the joint says comes first, then the tail that is written, then the slot; the cutter
    that is owned decides the angle and depth that nobody wrote.
    """
    angle = _angle(entry, male, female, design.workshop)
    angle = within(angle, *ANGLES, "the angle of a dovetail", "°")
    gib = entry.gib.mm if entry.gib is not None else 0.0
    width = written_mm(male) if entry.width is None else entry.width.mm
    mouth = written_mm(female)
    if width is None and mouth is None:
        return None
    clearance = _clearance(entry, width or mouth or 0.0, gib)
    if width is None:
        width = (mouth or 0.0) - clearance - gib / math.sin(math.radians(angle))
    depth, relief = _depth(entry, male, female, width, design.workshop)
    return Wanted(depth, angle, width, None, clearance, gib, relief)


def _angle(entry: DovetailEntry, male: Side, female: Side, workshop: Workshop) -> float:
    for size in (entry.angle, *_angles(male), *_angles(female)):
        if size is not None:
            return float(size.exact)
    owned = [angle for angle, _, _ in owned_cutters(workshop)]
    return min(owned, key=lambda each: (abs(each - USUAL_ANGLE), each), default=USUAL_ANGLE)


def _angles(side: Side) -> Iterator[Size | None]:
    if side.entry is not None:
        yield side.entry.angle


def written_mm(side: Side) -> float | None:
    """The narrow width that is written on this half, None where it is left to suit.

    A plain slot at that end is taken as what is roughed out first, as wide as the mouth.
    """
    feature = side.feature
    if feature is None or feature.kind not in ("dovetailed", "slotted"):
        return None
    value = getattr(feature.entry, feature.kind, None)
    return value.mm if isinstance(value, Size) else None


def _clearance(entry: DovetailEntry, width: float, gib: float) -> float:
    if entry.clearance is not None:
        return entry.clearance.mm
    if gib:
        return GIB_PLAY
    play = hand_sliding(width)
    return (play.least_mm + play.most_mm) / 2


def _depth(
    entry: DovetailEntry, male: Side, female: Side, width: float, workshop: Workshop
) -> tuple[float, float | None]:
    """The depth of the slot, and the relief where the tail's height is what was written."""
    if entry.depth is not None:
        return entry.depth.mm, None
    if female.entry is not None and female.entry.depth is not None:
        return female.entry.depth.mm, None
    if male.entry is not None and male.entry.depth is not None:
        height = male.entry.depth.mm
        relief = max(0.2, height / 20)
        return height + relief, relief
    deep = [depth for _, diameter, depth in owned_cutters(workshop) if diameter <= 2 * width]
    return min(width / DEPTH_PART, max(deep, default=width / DEPTH_PART)), None
