"""Involute spur gears reckoned: diameters, thickness, span, size over pins, centres, contact.

Lengths in mm, angles in degrees. Symbols as in ISO 21771-1; proportions as in ISO 53.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from .faults import Unbuildable


@dataclass(frozen=True, slots=True)
class Gear:
    """A spur gear; addendum and clearance in modules (1 and 0.25: ISO 53 profile A).

    `shift` is the profile shift in modules; `backlash` is what each tooth is thinner by at the
    pitch circle, in mm.
    """

    module: float
    teeth: int
    pressure_angle: float = 20.0
    shift: float = 0.0
    addendum: float = 1.0
    clearance: float = 0.25
    backlash: float = 0.0

    @property
    def pitch_diameter(self) -> float:
        """Gives d = m z."""
        return self.module * self.teeth

    @property
    def base_diameter(self) -> float:
        """Gives d_b = d cos alpha."""
        return self.pitch_diameter * math.cos(self.angle)

    @property
    def tip_diameter(self) -> float:
        """Gives d_a = d + 2 m (h_a + x)."""
        return self.pitch_diameter + 2.0 * self.module * (self.addendum + self.shift)

    @property
    def root_diameter(self) -> float:
        """Gives d_f = d − 2 m (h_a + c − x)."""
        depth = self.addendum + self.clearance - self.shift
        return self.pitch_diameter - 2.0 * self.module * depth

    @property
    def whole_depth(self) -> float:
        """Gives the depth of tooth from tip to root."""
        return (self.tip_diameter - self.root_diameter) / 2.0

    @property
    def angle(self) -> float:
        """Gives the pressure angle in radians."""
        return math.radians(self.pressure_angle)

    @property
    def circular_pitch(self) -> float:
        """Gives p = π m."""
        return math.pi * self.module

    @property
    def base_pitch(self) -> float:
        """Gives p_b = π m cos alpha."""
        return self.circular_pitch * math.cos(self.angle)

    @property
    def tooth_thickness(self) -> float:
        """Gives the thickness along the pitch circle, s = m (π/2 + 2 x tan alpha)."""
        return self.module * (math.pi / 2.0 + 2.0 * self.shift * math.tan(self.angle)) - (
            self.backlash
        )


def involute(angle: float) -> float:
    """Gives inv alpha = tan alpha − alpha, in radians."""
    return math.tan(angle) - angle


def angle_of_involute(value: float) -> float:
    """Finds the angle in radians whose involute is a value from 0 on."""
    angle = (3.0 * value) ** (1.0 / 3.0) if value < 0.5 else math.atan(value + math.pi / 2.0)
    for _ in range(60):
        step = (involute(angle) - value) / max(math.tan(angle) ** 2, 1e-300)
        angle -= step
        if abs(step) < 1e-15:
            break
    return angle


def thickness_at(gear: Gear, diameter: float) -> float:
    """Gives the thickness of a tooth along another circle, not under the base circle."""
    here = math.acos(min(1.0, gear.base_diameter / diameter))
    half = gear.tooth_thickness / gear.pitch_diameter + involute(gear.angle) - involute(here)
    return diameter * half


def chordal(gear: Gear) -> tuple[float, float]:
    """Gives the thickness of a tooth across the chord and how deep it lies below the tip."""
    half = gear.tooth_thickness / gear.pitch_diameter
    sagitta = gear.pitch_diameter / 2.0 * (1.0 - math.cos(half))
    height = (gear.tip_diameter - gear.pitch_diameter) / 2.0
    return gear.pitch_diameter * math.sin(half), height + sagitta


def span(gear: Gear, teeth_spanned: int | None = None) -> float:
    """Gives the size over so many teeth, W_k; left out, over as many as meet near the pitch line.

    W = m cos alpha (π (k − 0.5) + z inv alpha) + 2 x m sin alpha (ISO 21771-1).
    """
    k = teeth_spanned or round(gear.teeth * gear.pressure_angle / 180.0 + 0.5)
    plain = math.pi * (k - 0.5) + gear.teeth * involute(gear.angle)
    shifted = 2.0 * gear.shift * gear.module * math.sin(gear.angle)
    thinner = gear.backlash * math.cos(gear.angle)
    return gear.module * math.cos(gear.angle) * plain + shifted - thinner


def over_pins(gear: Gear, pin: float) -> float:
    """Gives the size over two pins in spaces opposite one another, or as near as z is odd."""
    space = gear.circular_pitch - gear.tooth_thickness
    value = pin / gear.base_diameter - space / gear.pitch_diameter + involute(gear.angle)
    if value <= 0.0:
        raise Unbuildable("pins that fall to the root of the teeth")
    across = gear.base_diameter / math.cos(angle_of_involute(value))
    odd = math.cos(math.pi / 2.0 / gear.teeth) if gear.teeth % 2 else 1.0
    return across * odd + pin


def least_teeth(pressure_angle: float, addendum: float = 1.0) -> float:
    """Gives the teeth, no whole number, below which a rack undercuts: 2 h_a / sin² alpha."""
    return float(2.0 * addendum / math.sin(math.radians(pressure_angle)) ** 2)


def working_angle(one: Gear, other: Gear) -> float:
    """Gives the pressure angle, in radians, of two gears that mesh without play."""
    shift = one.shift + other.shift
    both = one.teeth + other.teeth
    return angle_of_involute(involute(one.angle) + 2.0 * shift * math.tan(one.angle) / both)


def centres(one: Gear, other: Gear) -> float:
    """Gives the distance between the centres of two gears that mesh without play."""
    plain = (one.pitch_diameter + other.pitch_diameter) / 2.0
    return plain * math.cos(one.angle) / math.cos(working_angle(one, other))


def path_of_contact(one: Gear, other: Gear, distance: float | None = None) -> float:
    """Gives how far a pair of teeth travels in touch, along the line that they push on."""
    apart = distance or centres(one, other)
    reach = [math.sqrt(gear.tip_diameter**2 - gear.base_diameter**2) / 2.0 for gear in (one, other)]
    bases = (one.base_diameter + other.base_diameter) / 2.0
    return sum(reach) - math.sqrt(apart**2 - bases**2)


def contact_ratio(one: Gear, other: Gear, distance: float | None = None) -> float:
    """Gives how many pairs of teeth are in touch on average."""
    return path_of_contact(one, other, distance) / one.base_pitch
