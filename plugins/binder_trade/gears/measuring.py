"""Measures of a finished gear: span over teeth, size over or between pins, chordal thickness."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from binder_trade.explained import NotDefined, Step, mm, positive
from binder_trade.gears.gear import ISO, Gear
from binder_trade.gears.involute import angle_of, involute


@dataclass(frozen=True, slots=True)
class Span:
    """The size over `across` teeth, between flat anvils, and where they touch; mm.

    `least_face_mm` is the face width that a helical gear needs to be so measured.
    """

    across: int
    span_mm: float
    touches_mm: float
    least_face_mm: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Pins:
    """The size over two pins in opposite spaces (internal: between them); mm.

    `best_mm` is the pin that touches at the middle of the flank, `touches_mm` the diameter at
    which this one does; `stands_out` says that it can be reached past the tips.
    """

    pin_mm: float
    best_mm: float
    size_mm: float
    touches_mm: float
    stands_out: bool
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Chord:
    """The thickness of a tooth across its chord, and the height of the tip above it; mm."""

    thickness_mm: float
    height_mm: float
    half_angle_deg: float
    steps: tuple[Step, ...]


def span(gear: Gear, across: int | None = None) -> Span:
    """The span over so many teeth, or over as many as touch nearest the middle; mm.

    Raises NotDefined for an internal gear, or where the anvils miss the flanks.
    Source: ISO 21771, W_k = m cos α (π (k − 0.5) + z inv α_t) + 2 x m sin α.
    """
    if gear.is_internal:
        raise NotDefined("teeth inside a ring cannot be spanned", "measure between pins")
    best = min(range(2, max(3, gear.teeth // 2 + 2)), key=lambda k: _off_middle(gear, k))
    wanted = best if across is None else across
    value, touches = _span(gear, wanted), _touches(gear, wanted)
    if wanted < 2 or touches > gear.tip_mm or value <= 0:
        raise NotDefined(f"a span over {wanted} teeth misses the flanks", f"take {best}")
    face = value * math.sin(_base_helix(gear))
    formula = "m cos α (π (k − ½) + z inv α) + 2 x m sin α"
    steps = (
        Step("teeth to span", "those that touch nearest the pitch circle", f"{wanted}", ISO),
        Step("span", formula, mm(value), ISO),
    )
    return Span(wanted, value, touches, face, steps)


def over_pins(gear: Gear, pin_mm: float | None = None) -> Pins:
    """The size over pins (internal: between), with this pin or with the best; mm.

    Raises NotDefined where the pin does not touch the flanks. Source: ISO 21771.
    """
    best = best_pin(gear)
    pin = positive(best if pin_mm is None else pin_mm, "a pin")
    angle = _pin_angle(gear, pin, best)
    across = gear.base_mm / math.cos(angle)
    odd = math.cos(math.pi / 2 / gear.teeth) if gear.teeth % 2 else 1.0
    size = across * odd + (-pin if gear.is_internal else pin)
    touches = _pin_touches(gear, pin, angle)
    low, high = sorted((gear.tip_mm, max(gear.root_mm, gear.base_mm)))
    if not low - 1e-9 <= touches <= high + 1e-9:
        raise NotDefined(
            f"a pin of {pin:.3f} mm does not touch the flanks", f"the best is {best:.3f} mm"
        )
    proud = across - pin < gear.tip_mm if gear.is_internal else across + pin > gear.tip_mm
    return Pins(pin, best, size, touches, proud, _pin_steps(gear, best, angle, size))


def best_pin(gear: Gear) -> float:
    """The pin that touches where the tooth is at half its height, or nearest; mm."""
    middle = max(gear.base_mm * (1 + 1e-9), gear.pitch_mm + 2 * gear.shift * gear.module_mm)
    space, slope = _space(gear), math.tan(math.acos(gear.base_mm / middle))
    if gear.is_internal:
        turn = slope - space
        return _pin_scale(gear) * (space - involute(turn))
    turn = slope + space
    return _pin_scale(gear) * (involute(turn) + space)


def choose_pin(gear: Gear, owned_mm: Iterable[float]) -> Pins:
    """The owned pin nearest to the best that can be used; mm. Raises NotDefined if none can."""
    best = best_pin(gear)
    for pin in sorted(owned_mm, key=lambda each: abs(each - best)):
        try:
            found = over_pins(gear, pin)
        except NotDefined:
            continue
        if found.stands_out:
            return found
    raise NotDefined("no pin that is owned touches the flanks", f"the best is {best:.3f} mm")


def chordal(gear: Gear) -> Chord:
    """The chordal thickness at the pitch circle and the height of the tip above; mm.

    External gears; a helical one in its normal plane. Source: ISO 21771.
    """
    if gear.is_internal:
        raise NotDefined("a caliper cannot enter an internal gear", "measure between pins")
    lean = math.cos(math.radians(gear.helix_deg))
    diameter = gear.pitch_mm / lean**2
    half = gear.thickness_mm * lean / diameter
    thickness = diameter * math.sin(half)
    height = (gear.tip_mm - gear.pitch_mm) / 2 + diameter / 2 * (1 - math.cos(half))
    return Chord(
        thickness,
        height,
        math.degrees(half),
        (
            Step("chordal thickness", "d sin ψ, ψ = s / d", mm(thickness), ISO),
            Step("height above it", "h_a + d / 2 (1 − cos ψ)", mm(height), ISO),
        ),
    )


def base_pitch_from(shorter_mm: float, longer_mm: float) -> float:
    """The base pitch from the spans over k and over k + 1 teeth; mm. It knows no shift."""
    return positive(longer_mm - shorter_mm, "the difference of the spans")


def _base_helix(gear: Gear) -> float:
    return math.asin(math.sin(math.radians(gear.helix_deg)) * math.cos(gear.rack.angle))


def _span(gear: Gear, across: int) -> float:
    angle = gear.rack.angle
    plain = math.pi * (across - 0.5) + gear.teeth * involute(gear.angle)
    shifted = 2 * gear.shift * gear.module_mm * math.sin(angle)
    thinner = gear.thinning_mm * math.cos(gear.angle) * math.cos(_base_helix(gear))
    return gear.module_mm * math.cos(angle) * plain + shifted - thinner


def _touches(gear: Gear, across: int) -> float:
    return math.hypot(gear.base_mm, _span(gear, across) * math.cos(_base_helix(gear)))


def _off_middle(gear: Gear, across: int) -> float:
    return abs(_touches(gear, across) - gear.pitch_mm - 2 * gear.shift * gear.module_mm)


def _space(gear: Gear) -> float:
    """Half the angle of a space at the base circle; radians, under nothing where it is closed."""
    gap = math.pi * gear.transverse_mm - gear.thickness_mm
    turn = involute(gear.angle)
    return gap / gear.pitch_mm + (turn if gear.is_internal else -turn)


def _pin_scale(gear: Gear) -> float:
    return gear.base_mm * math.cos(_base_helix(gear))


def _pin_angle(gear: Gear, pin: float, best: float) -> float:
    part = pin / _pin_scale(gear)
    value = _space(gear) - part if gear.is_internal else part - _space(gear)
    if value <= 0:
        raise NotDefined(
            f"a pin of {pin:.3f} mm does not rest on the flanks", f"the best is {best:.3f} mm"
        )
    return angle_of(value)


def _pin_touches(gear: Gear, pin: float, angle: float) -> float:
    along = gear.base_mm / 2 * math.tan(angle)
    half = pin / 2 * math.cos(_base_helix(gear))
    at = along + half if gear.is_internal else along - half
    return 2 * math.hypot(gear.base_mm / 2, at)


def _pin_steps(gear: Gear, best: float, angle: float, size: float) -> tuple[Step, ...]:
    middle = "inv φ = d_p / d_b − η" if not gear.is_internal else "inv φ = η − d_p / d_b"
    odd = " cos (90° / z)" if gear.teeth % 2 else ""
    sign = "−" if gear.is_internal else "+"
    return (
        Step("best pin", "touches half-way up the flank", mm(best), ISO),
        Step("angle at the pin's centre", middle, f"{math.degrees(angle):.4f}°", ISO),
        Step("size", f"d_b / cos φ{odd} {sign} d_p", mm(size), ISO),
    )
