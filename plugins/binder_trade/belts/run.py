"""Two pulleys and their centres to the exact length of the belt and its wrap on each."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, mm, positive

Layout = Literal["open", "crossed", "quarter-turn"]
GEOMETRY: Final = "geometry of the tangents, no series"
# What a friction belt should lie on, and how far a quarter-turn may leave its pulley's plane.
LEAST_WRAP_DEG: Final = 120.0
LEAST_WRAP_SOURCE: Final = "common practice, no source"
MOST_LEAN_DEG: Final = 25.0
MOST_LEAN_SOURCE: Final = "handbook limit for quarter-turn belts (from memory)"
LAW: Final = "geometry; law of belting: the belt enters each pulley in that pulley's own plane"


@dataclass(frozen=True, slots=True)
class Run:
    """A belt round two pulleys; mm and rad, diameters at the neutral line of the belt.

    `span_mm` is one free stretch. `lean_deg` is how far the belt leaves the plane of the pulley
    that it comes off: nothing but on a quarter-turn.
    """

    layout: Layout
    first_mm: float
    second_mm: float
    centres_mm: float
    length_mm: float
    span_mm: float
    wrap_first_rad: float
    wrap_second_rad: float
    lean_deg: float
    steps: tuple[Step, ...]

    @property
    def least_wrap_rad(self) -> float:
        """The smaller of the two wraps; rad."""
        return min(self.wrap_first_rad, self.wrap_second_rad)


def run(first_mm: float, second_mm: float, centres_mm: float, layout: Layout = "open") -> Run:
    """The exact length and wraps of a belt on two pulleys; mm, rad.

    Diameters are those of the belt's neutral line. Raises NotDefined where the pulleys would
    touch. On a quarter-turn the length is that of the middle line, twist left out; run one
    way only. Source: `GEOMETRY`, `LAW`.
    """
    one, two = positive(first_mm, "a pulley's diameter"), positive(second_mm, "a pulley's diameter")
    centres = positive(centres_mm, "the centre distance")
    if centres <= (one + two) / 2:
        raise NotDefined(
            f"pulleys of {one:g} and {two:g} mm touch at {centres:g} mm centres",
            f"set the centres more than {(one + two) / 2:g} mm apart",
        )
    return {"open": _open, "crossed": _crossed, "quarter-turn": _quarter}[layout](one, two, centres)


def length_of(one: float, two: float, centres: float, layout: Layout) -> float:
    """The length alone, mm, of sizes that were looked over before; for solvers."""
    if layout == "quarter-turn":
        return 2 * centres + sum(d / 2 * _turned(d, centres) for d in (one, two))
    sign = 1 if layout == "crossed" else -1
    lean = math.asin(min(1.0, abs(one + sign * two) / 2 / centres))
    span = 2 * centres * math.cos(lean)
    if layout == "crossed":
        return span + (math.pi / 2 + lean) * (one + two)
    return span + math.pi * (one + two) / 2 + lean * abs(one - two)


def _open(one: float, two: float, centres: float) -> Run:
    lean = math.asin((one - two) / 2 / centres)
    length = length_of(one, two, centres, "open")
    steps = (
        Step("lean β", "asin((D − d) / 2C)", f"{math.degrees(abs(lean)):.3f}°", GEOMETRY),
        Step("length of an open belt", "2C cos β + π (D + d)/2 + β (D − d)", mm(length), GEOMETRY),
    )
    wraps = (math.pi + 2 * lean, math.pi - 2 * lean)
    return _made("open", (one, two, centres), (length, centres * math.cos(lean), 0.0), wraps, steps)


def _crossed(one: float, two: float, centres: float) -> Run:
    lean = math.asin((one + two) / 2 / centres)
    length = length_of(one, two, centres, "crossed")
    steps = (
        Step("lean β", "asin((D + d) / 2C)", f"{math.degrees(lean):.3f}°", GEOMETRY),
        Step("length of a crossed belt", "2C cos β + (π/2 + β)(D + d)", mm(length), GEOMETRY),
    )
    wrap = math.pi + 2 * lean
    sizes = (length, centres * math.cos(lean), 0.0)
    return _made("crossed", (one, two, centres), sizes, (wrap, wrap), steps)


def _quarter(one: float, two: float, centres: float) -> Run:
    wraps = _turned(one, centres), _turned(two, centres)
    length = length_of(one, two, centres, "quarter-turn")
    lean = math.degrees(max(wraps) - math.pi)
    steps = (
        Step("wrap on each", "π + 2 atan(D / 2C)", f"{math.degrees(min(wraps)):.1f}°", LAW),
        Step("length of a quarter-turn belt", "2C + Σ D/2 · wrap", mm(length), LAW),
        Step("leaves the plane by", "2 atan(D / 2C) of the larger", f"{lean:.1f}°", LAW),
    )
    return _made("quarter-turn", (one, two, centres), (length, centres, lean), wraps, steps)


def _turned(diameter: float, centres: float) -> float:
    return math.pi + 2 * math.atan(diameter / 2 / centres)


def _made(
    layout: Layout,
    given: tuple[float, float, float],
    sizes: tuple[float, float, float],
    wraps: tuple[float, float],
    steps: tuple[Step, ...],
) -> Run:
    wrap = Step(
        "wrap on the pulleys",
        "from the lean",
        f"{math.degrees(wraps[0]):.1f}° and {math.degrees(wraps[1]):.1f}°",
        GEOMETRY,
    )
    return Run(layout, *given, *sizes[:2], *wraps, sizes[2], (*steps, wrap))
