"""Chooses among the dovetail cutters that are owned the one that settles angle and depth."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace

from binder_trade.explained import NotDefined, positive, within
from binder_trade.slides.dovetail import Wanted, dovetail


@dataclass(frozen=True, slots=True)
class Cutter:
    """A dovetail cutter: angle from its face, greatest diameter, height of its teeth; mm."""

    angle_deg: float
    diameter_mm: float
    depth_mm: float


@dataclass(frozen=True, slots=True)
class CutterChoice:
    """The cutter, the slide as it can be cut with it, and what changed by that."""

    cutter: Cutter
    wanted: Wanted
    changes: tuple[str, ...]


def fit_cutter(cutters: Iterable[tuple[float, float, float]], wanted: Wanted) -> CutterChoice:
    """The owned cutter (angle, diameter, depth) that changes the slide least.

    The width that was given stays. Its order: nearest angle, nearest depth, then the stoutest
    that turns within the floor of the slot. Raises NotDefined where none can cut a slide of
    that width. Order: common practice, no source.
    """
    slide = dovetail(wanted)
    choices: list[tuple[float, float, float, CutterChoice]] = []
    for angle, diameter, depth in cutters:
        choice = _choice(_cutter(angle, diameter, depth), wanted)
        if choice is not None:
            changed = choice.wanted
            turned = abs(changed.angle_deg - wanted.angle_deg)
            choices.append((turned, wanted.depth_mm - changed.depth_mm, -diameter, choice))
    if choices:
        return min(choices, key=lambda each: each[:3])[3]
    raise NotDefined(
        "no dovetail cutter that is owned goes into this slot",
        f"a {wanted.angle_deg:g}° cutter up to {slide.female.wide_mm:.1f} mm across and"
        f" {wanted.depth_mm:g} mm deep serves",
    )


def _cutter(angle: float, diameter: float, depth: float) -> Cutter:
    return Cutter(
        within(angle, 30, 85, "the angle of a dovetail cutter", "°"),
        positive(diameter, "the diameter of a dovetail cutter"),
        positive(depth, "the depth of a dovetail cutter"),
    )


def _choice(cutter: Cutter, wanted: Wanted) -> CutterChoice | None:
    depth = min(wanted.depth_mm, cutter.depth_mm)
    changed = replace(wanted, angle_deg=cutter.angle_deg, depth_mm=depth)
    try:
        slide = dovetail(changed)
    except NotDefined:
        return None
    neck = cutter.diameter_mm - 2 * depth / math.tan(math.radians(cutter.angle_deg))
    if neck <= 0 or cutter.diameter_mm > slide.female.wide_mm:
        return None
    return CutterChoice(cutter, changed, tuple(_changes(wanted, changed)))


def _changes(wanted: Wanted, changed: Wanted) -> Iterable[str]:
    if changed.angle_deg != wanted.angle_deg:
        yield f"angle {changed.angle_deg:g}° instead of {wanted.angle_deg:g}°"
    if changed.depth_mm != wanted.depth_mm:
        yield f"depth {changed.depth_mm:g} mm instead of {wanted.depth_mm:g} mm"
