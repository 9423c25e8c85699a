"""A thread to the figures for cutting it on the lathe or with a die."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import Step
from binder_trade.threads import MOVING, Thread

_SIXTY_DEG: Final = 60.0
# Set the top slide a trifle inside the half angle, so that the trailing edge takes a shaving.
_SLIDE_60_DEG: Final = 29.0
_FLAT_DEPTH: Final = 0.649519053
_DIE_UNDER: Final = 0.1
_GROOVE_REGULAR, _GROOVE_NARROW = 3.0, 2.0
_GROOVE_UNDER: Final = 0.37
_COMMON_PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Infeed:
    """How far a tool of one point goes in, in mm: square to the work, and along the slide."""

    point: str
    depth_mm: float
    along_slide_mm: float
    source: str


@dataclass(frozen=True, slots=True)
class Screwcutting:
    """Figures in mm for an external thread.

    `slide_deg` is the top slide's setting from square. `turned_mm` is the blank for
    screwcutting, `die_blank_mm` for a die. The run-out groove is as wide as `groove_mm`, or
    `groove_narrow_mm` where short of room, down to `groove_diameter_mm`; `chamfer_mm` × 45° ends
    the bar below the core.
    """

    slide_deg: float
    infeeds: tuple[Infeed, ...]
    turned_mm: float
    die_blank_mm: float
    groove_mm: float
    groove_narrow_mm: float
    groove_diameter_mm: float
    chamfer_mm: float
    steps: tuple[Step, ...]


def screwcutting(thread: Thread) -> Screwcutting:
    """The figures for cutting an external thread, in mm and degrees.

    Source: depth by the thread's standard (and 0.6495 P for a tool with a flat of P/8, as lathe
    tables give); slide at 29° for 60° forms, else half the angle; die blank 0.1 P under and the
    groove's widths common practice; its diameter about d − 1.6 P as ISO 4755, from memory.
    """
    form, pitch = thread.form, thread.pitch_mm
    slide = _SLIDE_60_DEG if form.angle_deg == _SIXTY_DEG else form.angle_deg / 2
    infeeds = [_infeed(_point(thread), thread.depth_mm, slide, form.standard)]
    if form.angle_deg == _SIXTY_DEG:
        source = "depth 0.6495 P, as published lathe tables give"
        infeeds.append(_infeed("flat of P/8", _FLAT_DEPTH * pitch, slide, source))
    return Screwcutting(
        slide_deg=slide,
        infeeds=tuple(infeeds),
        turned_mm=thread.major_mm,
        die_blank_mm=_die_blank(thread),
        groove_mm=_GROOVE_REGULAR * pitch,
        groove_narrow_mm=_GROOVE_NARROW * pitch,
        groove_diameter_mm=thread.minor_external_mm - _GROOVE_UNDER * pitch,
        chamfer_mm=thread.depth_mm,
        steps=_steps(thread, infeeds[0], slide),
    )


def _point(thread: Thread) -> str:
    """The tool's point: round, or for a screw that moves as wide as its groove at the bottom."""
    form = thread.form
    if thread.family not in MOVING:
        return f"point of {form.radius:.3g} P radius"
    below = thread.depth_mm - form.effective_drop * thread.pitch_mm / 2
    narrower = 2 * below * math.tan(math.radians(form.angle_deg / 2))
    return f"flat of {thread.pitch_mm / 2 - narrower:.3f} mm"


def blank_rule(thread: Thread) -> str:
    """The formula of the blank for a die."""
    return "D" if thread.family in MOVING else "D − 0.1 P"


def _die_blank(thread: Thread) -> float:
    """A screw that moves is turned to its size: the crests of its flat threads are not squeezed."""
    under = 0.0 if thread.family in MOVING else _DIE_UNDER * thread.pitch_mm
    return thread.major_mm - under


def _infeed(point: str, depth: float, slide_deg: float, source: str) -> Infeed:
    return Infeed(point, depth, depth / math.cos(math.radians(slide_deg)), source)


def _steps(thread: Thread, infeed: Infeed, slide: float) -> tuple[Step, ...]:
    blank = _die_blank(thread)
    along = f"{infeed.along_slide_mm:.3f} mm"
    groove = f"{_GROOVE_REGULAR * thread.pitch_mm:.2f} mm"
    under = thread.minor_external_mm - _GROOVE_UNDER * thread.pitch_mm
    return (
        Step("depth, square in", "by the form", f"{infeed.depth_mm:.3f} mm", infeed.source),
        Step(f"along a slide at {slide:g}°", f"depth ÷ cos {slide:g}°", along, "geometry"),
        Step("turn for a die", blank_rule(thread), f"{blank:.2f} mm", _COMMON_PRACTICE),
        Step("groove, width", "3 P, 2 P where short", groove, _COMMON_PRACTICE),
        Step("groove, diameter", "core − 0.37 P", f"{under:.2f} mm", "ISO 4755, from memory"),
    )
