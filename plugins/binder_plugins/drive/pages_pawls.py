"""Pawls to a picture of the finished nose in the teeth of its wheel, on the leaf of the part."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import (
    Beside,
    Design,
    Drawing,
    Facts,
    Inset,
    Picture,
    Polyline,
    Stroke,
    Subheading,
    exact,
    shown_length,
)
from binder_solid.pawls import PawlFact

Point = tuple[float, float]
# Enlarged so many times, the largest at which the picture keeps to so many mm of paper.
_SCALES, _ROOM, _EDGE = (10, 5, 2, 1), 40.0, 2.0
# How much of the bar is shown, in its widths; how many teeth on either side of the nose.
_LONG, _TEETH = 1.2, (-1, 2)
_LEAST_DEG = 0.05


def pawl_leaves(design: Design) -> Iterator[Inset]:
    """The nose of each straight pawl that is filed to its wheel."""
    for fact in design.facts.all(PawlFact):
        item = design.item(fact.wheel)
        wheel = item.title if item is not None else fact.wheel
        scale = _scale(fact)
        picture = Picture(
            _drawn(fact, scale),
            f"the finished nose in a tooth of the {wheel}; dashed: an end left square",
        )
        heading = f"The nose in the {wheel}, {scale} : 1; dashed: an end left square"
        blocks = (Subheading(heading), Beside(Facts(tuple(_rows(fact, design))), picture))
        yield Inset(f"part-{fact.subject}", blocks)


def _rows(fact: PawlFact, design: Design) -> Iterator[tuple[str, tuple[str]]]:
    def mm(size: float) -> str:
        return shown_length(exact(round(size, 2)), design.units)

    nose = fact.nose
    yield "From the pin to the end", (mm(fact.reach),)
    yield "Corner at the foot of a tooth", (f"{fact.end}-hand end, {fact.side}",)
    yield "End out of square", (f"{abs(nose.out_deg):.1f}°",)
    if nose.out_deg > _LEAST_DEG:
        far = "front" if fact.side == "back" else "back"
        short = fact.across * math.tan(math.radians(nose.out_deg))
        yield f"Shorter at the {far} by", (mm(short),)
    if nose.back_mm:
        yield f"Shorter at the {fact.side} by", (mm(nose.back_mm),)
    if nose.relief_deg:
        yield f"Relief at the {fact.side}", (f"{nose.relief_deg:.1f}°",)
    yield f"The {fact.side} clears the next back by", (f"{nose.clear_deg:.1f}°",)
    yield "A square end would seat at", (f"{mm(nose.square_mm)} from the pin",)


def nose_outline(fact: PawlFact) -> tuple[Point, ...]:
    """The finished end in mm from the pin, the end to the right and the wheel below.

    It begins and ends where the bar is cut off in the picture.
    """
    nose, half, high = fact.nose, fact.half, fact.across - fact.half
    start = fact.reach - _LONG * fact.across
    tangent = math.tan(math.radians(abs(nose.out_deg)))
    foot = (fact.reach - nose.back_mm, -half)
    if nose.out_deg >= 0:
        end = [(fact.reach - fact.across * tangent, high), foot]
    else:
        end = [(fact.reach, high), (fact.reach, -half + nose.back_mm / max(tangent, 1e-9)), foot]
    side: list[Point] = []
    if nose.relief_deg:
        long = min(fact.space.back_mm + 1.0, _LONG * fact.across * 0.9)
        deep = long * math.tan(math.radians(nose.relief_deg))
        side = [(foot[0] - long, -half + deep), (foot[0] - long, -half)]
    return ((start, high), *end, *side, (start, -half))


def teeth_outline(fact: PawlFact) -> tuple[Point, ...]:
    """Teeth about the nose in mm from the pin, one face along the end as it is filed."""
    foot = (fact.reach - fact.nose.back_mm, -fact.half)
    up = math.radians(90.0 + fact.nose.out_deg - fact.space.tilt_deg)
    middle = (foot[0] - fact.root * math.cos(up), foot[1] - fact.root * math.sin(up))
    pitch = 2 * math.pi / fact.teeth
    # Two sides and the angle between them: how far the point lags behind its foot.
    tilt = math.radians(fact.space.tilt_deg)
    lag = tilt - math.asin(fact.root * math.sin(tilt) / fact.outside)

    def at(radius: float, turn: float) -> Point:
        return middle[0] + radius * math.cos(turn), middle[1] + radius * math.sin(turn)

    points: list[Point] = []
    for number in range(_TEETH[0], _TEETH[1] + 1):
        turn = up + number * pitch
        points += [at(fact.outside, turn + lag), at(fact.root, turn)]
    return tuple(points)


def _scale(fact: PawlFact) -> int:
    most = max(_LONG * fact.across, fact.outside)
    return next((one for one in _SCALES if most * one <= _ROOM), 1)


def _drawn(fact: PawlFact, scale: int) -> Drawing:
    start, high, low = fact.reach - _LONG * fact.across, fact.across - fact.half, -fact.half
    sawn = ((start, high), (fact.reach, high), (fact.reach, low), (start, low))
    chains = [
        (nose_outline(fact), Stroke.OUTLINE),
        (teeth_outline(fact), Stroke.OUTLINE),
        (sawn, Stroke.HIDDEN),
    ]
    # As the bar is drawn on its sheet: its nose to the left or right, the wheel at front or back.
    right, down = (1 if fact.end == "right" else -1), (-1 if fact.side == "front" else 1)
    turned = [[(right * x * scale, down * y * scale) for x, y in line] for line, _ in chains]
    low_x, low_y = (min(p[n] for line in turned for p in line) for n in (0, 1))
    wide, tall = (max(p[n] for line in turned for p in line) for n in (0, 1))
    shapes = tuple(
        Polyline(tuple((x - low_x + _EDGE, y - low_y + _EDGE) for x, y in line), stroke)
        for line, (_, stroke) in zip(turned, chains, strict=True)
    )
    return Drawing(wide - low_x + 2 * _EDGE, tall - low_y + 2 * _EDGE, shapes)
