"""Turns one description of a dovetail slide into the widths and depths of both halves."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, not_negative, positive, within

GEOMETRY: Final = "plane geometry of the dovetail"
PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Wanted:
    """A slide as the maker says it; mm and degrees.

    `narrow_mm` is the male across its root, `wide_mm` the male across its top: one of them is
    given. `depth_mm` is the depth of the female; the male is `relief_mm` lower, so that the
    slide bears on the flats beside the male and never on its top (left out: a twentieth of
    the depth, at least 0.2 mm). `angle_deg` stands between flank and flat. `clearance_mm` is
    the whole sideways play, measured along the flats. `gib_mm` is the thickness of the strip,
    square to its faces; 0 for a slide without one.
    """

    depth_mm: float
    angle_deg: float = 60.0
    narrow_mm: float | None = None
    wide_mm: float | None = None
    clearance_mm: float = 0.0
    gib_mm: float = 0.0
    relief_mm: float | None = None


@dataclass(frozen=True, slots=True)
class Half:
    """One half of a slide in mm, at its sharp corners: narrow side, wide side, depth."""

    narrow_mm: float
    wide_mm: float
    depth_mm: float


@dataclass(frozen=True, slots=True)
class Dovetail:
    """Both halves of a slide in mm, and the steps that led to them.

    The female is measured without its gib: both of its flanks as cut. `gib_width_mm` is what
    the strip takes up along the flats, `flank_gap_mm` the play square to each flank when the
    slide stands in the middle.
    """

    angle_deg: float
    male: Half
    female: Half
    clearance_mm: float
    relief_mm: float
    gib_mm: float
    gib_width_mm: float
    flank_gap_mm: float
    steps: tuple[Step, ...]


def dovetail(wanted: Wanted) -> Dovetail:
    """Both halves of the slide that is wanted; mm. Raises NotDefined for what cannot be cut.

    Source: plane geometry; the relief and its default are common practice.
    """
    angle = within(wanted.angle_deg, 30, 85, "the angle of a dovetail", "°")
    depth = positive(wanted.depth_mm, "the depth")
    relief = _relief(wanted, depth)
    spread = 2 / math.tan(math.radians(angle))
    male = _male(wanted, depth - relief, spread)
    gib = not_negative(wanted.gib_mm, "the thickness of the gib")
    gib_width = gib / math.sin(math.radians(angle))
    clearance = not_negative(wanted.clearance_mm, "the clearance")
    mouth = male.narrow_mm + clearance + gib_width
    female = Half(mouth, mouth + spread * depth, depth)
    made = Dovetail(
        angle_deg=angle,
        male=male,
        female=female,
        clearance_mm=clearance,
        relief_mm=relief,
        gib_mm=gib,
        gib_width_mm=gib_width,
        flank_gap_mm=clearance / 2 * math.sin(math.radians(angle)),
        steps=(),
    )
    return replace(made, steps=_steps(made))


def _relief(wanted: Wanted, depth: float) -> float:
    relief = max(0.2, depth / 20) if wanted.relief_mm is None else wanted.relief_mm
    relief = not_negative(relief, "the relief")
    if relief < depth:
        return relief
    raise NotDefined(
        f"a relief of {relief:g} mm leaves nothing of a dovetail {depth:g} mm deep",
        "make the dovetail deeper or the relief smaller",
    )


def _male(wanted: Wanted, height: float, spread: float) -> Half:
    if (wanted.narrow_mm is None) == (wanted.wide_mm is None):
        raise NotDefined(
            "a dovetail starts from one width: across the root or across the top",
            "give narrow_mm or wide_mm, not both",
        )
    if wanted.narrow_mm is not None:
        narrow = positive(wanted.narrow_mm, "the width across the root")
        return Half(narrow, narrow + spread * height, height)
    wide = positive(wanted.wide_mm or 0.0, "the width across the top")
    narrow = wide - spread * height
    if narrow > 0:
        return Half(narrow, wide, height)
    raise NotDefined(
        f"a top of {wide:g} mm and {height:g} mm of height leave no root",
        f"make the top wider than {spread * height:.2f} mm, the dovetail lower or its flank"
        " steeper",
    )


def _steps(made: Dovetail) -> tuple[Step, ...]:
    male, female = made.male, made.female
    lines = [
        ("male height", "h = depth of the female − relief", male.depth_mm, PRACTICE),
        ("male across the root", "a", male.narrow_mm, GEOMETRY),
        ("male across the top", "a + 2 h / tan θ", male.wide_mm, GEOMETRY),
        ("gib along the flat", "t / sin θ", made.gib_width_mm, GEOMETRY),
        ("female across the mouth", "a + clearance + gib", female.narrow_mm, GEOMETRY),
        ("female across the floor", "mouth + 2 depth / tan θ", female.wide_mm, GEOMETRY),
    ]
    return tuple(Step(name, formula, mm(value), source) for name, formula, value, source in lines)
