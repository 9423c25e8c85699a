"""A toothed wheel as wanted: spur, helical, internal; its circles and thicknesses follow."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, within
from binder_trade.gears.involute import involute
from binder_trade.gears.racks import Rack, rack

ISO: Final = "ISO 21771"
_LEAST_TEETH: Final = 4
_MOST_TEETH: Final = 2000


@dataclass(frozen=True, slots=True)
class Gear:
    """A gear by its teeth, normal module in mm and basic rack; raises NotDefined if it is none.

    `shift` in modules, towards the tip of the teeth on an external gear and away from the
    centre on an internal one; `helix_deg` 0 for a spur gear; `thinning_mm` is what each tooth
    is thinner by along the pitch circle, for backlash; `topping` what its tip is short of a full
    addendum, in modules.
    """

    teeth: int
    module_mm: float
    rack: Rack = field(default_factory=rack)
    shift: float = 0.0
    helix_deg: float = 0.0
    is_internal: bool = False
    thinning_mm: float = 0.0
    topping: float = 0.0

    def __post_init__(self) -> None:
        within(self.teeth, _LEAST_TEETH, _MOST_TEETH, "a number of teeth")
        within(self.module_mm, 0.02, 100, "a module")
        within(self.helix_deg, 0, 60, "a helix angle", "°")
        within(self.shift, -2, 2, "a profile shift")
        within(self.topping, 0, 1, "what a tip is short of, in modules,")
        within(self.thinning_mm, 0, self.module_mm / 2, "what a tooth is thinner by, in mm,")
        if self.root_mm <= 0 or self.tip_mm <= 0:
            raise NotDefined("the teeth are deeper than the gear", "give it more teeth")

    @property
    def transverse_mm(self) -> float:
        """The module in the plane of the wheel, m_t = m / cos β; mm."""
        return self.module_mm / math.cos(math.radians(self.helix_deg))

    @property
    def angle(self) -> float:
        """The transverse pressure angle, tan α_t = tan α / cos β; radians."""
        return math.atan(math.tan(self.rack.angle) / math.cos(math.radians(self.helix_deg)))

    @property
    def pitch_mm(self) -> float:
        """The pitch diameter, d = z m_t."""
        return self.teeth * self.transverse_mm

    @property
    def base_mm(self) -> float:
        """The base diameter, d_b = d cos α_t."""
        return self.pitch_mm * math.cos(self.angle)

    @property
    def tip_mm(self) -> float:
        """The diameter over (internal: within) the tips, which is that of the blank."""
        return self.pitch_mm + 2 * self.module_mm * self._outward(self.rack.addendum - self.topping)

    @property
    def root_mm(self) -> float:
        """The diameter at the roots."""
        return self.pitch_mm + 2 * self.module_mm * self._outward(-self.rack.dedendum)

    @property
    def depth_mm(self) -> float:
        """The depth of cut, tip to root."""
        return abs(self.tip_mm - self.root_mm) / 2

    @property
    def thickness_mm(self) -> float:
        """Along the pitch circle, in the plane of the wheel."""
        outwards = -self.shift if self.is_internal else self.shift
        plain = math.pi / 2 * self.transverse_mm
        shifted = 2 * outwards * self.module_mm * math.tan(self.angle)
        return plain + shifted - self.thinning_mm

    @property
    def base_pitch_mm(self) -> float:
        """From flank to flank along the line of contact, in the plane of the wheel."""
        return math.pi * self.transverse_mm * math.cos(self.angle)

    @property
    def virtual_teeth(self) -> float:
        """The teeth that the form cutter sees, z / cos³ β."""
        return float(self.teeth / math.cos(math.radians(self.helix_deg)) ** 3)

    @property
    def lead_mm(self) -> float:
        """The axial length of a whole turn of the helix; infinite for a spur gear."""
        slope = math.tan(math.radians(self.helix_deg))
        return math.pi * self.pitch_mm / slope if slope else math.inf

    def thickness_at(self, diameter_mm: float) -> float:
        """Along another circle, not under the base circle; mm. Raises NotDefined there."""
        if diameter_mm < self.base_mm * (1 - 1e-12):
            raise NotDefined(
                f"there is no involute under the base circle of {self.base_mm:.3f} mm",
                "take a larger circle",
            )
        there = math.acos(min(1.0, self.base_mm / diameter_mm))
        turn = involute(self.angle) - involute(there)
        part = -turn if self.is_internal else turn
        return diameter_mm * (self.thickness_mm / self.pitch_mm + part)

    def _outward(self, height: float) -> float:
        return self.shift - height if self.is_internal else self.shift + height


@dataclass(frozen=True, slots=True)
class Blank:
    """What is turned and how deep it is cut; mm. An internal gear's tip is its bore."""

    gear: Gear
    blank_mm: float
    pitch_mm: float
    base_mm: float
    root_mm: float
    depth_mm: float
    addendum_mm: float
    thickness_mm: float
    tip_thickness_mm: float
    lead_mm: float
    steps: tuple[Step, ...]


def blank(gear: Gear) -> Blank:
    """The sizes of a gear and of its blank; mm. Raises NotDefined for teeth with no top.

    Source: ISO 21771.
    """
    top = gear.thickness_at(max(gear.tip_mm, gear.base_mm))
    if top <= 0:
        raise NotDefined(
            "the teeth come to a point under their tips", "take less profile shift or more teeth"
        )
    return Blank(
        gear,
        gear.tip_mm,
        gear.pitch_mm,
        gear.base_mm,
        gear.root_mm,
        gear.depth_mm,
        abs(gear.tip_mm - gear.pitch_mm) / 2,
        gear.thickness_mm,
        top,
        gear.lead_mm,
        _steps(gear),
    )


def _steps(gear: Gear) -> tuple[Step, ...]:
    sign = "−" if gear.is_internal else "+"
    other = "+" if gear.is_internal else "−"
    shift = f" + {2 * gear.shift:g} m" if gear.shift else ""
    tip, root = 2 * (gear.rack.addendum - gear.topping), 2 * gear.rack.dedendum
    pitch = "z m" if not gear.helix_deg else "z m / cos β"
    rows = (
        ("pitch diameter", pitch, gear.pitch_mm),
        ("base diameter", "d cos α", gear.base_mm),
        ("tip diameter", f"d {sign} {tip:g} m{shift}", gear.tip_mm),
        ("root diameter", f"d {other} {root:g} m{shift}", gear.root_mm),
        ("depth of cut", f"{gear.rack.depth - gear.topping:g} m", gear.depth_mm),
        ("thickness on the pitch circle", "m (π / 2 + 2 x tan α)", gear.thickness_mm),
    )
    source = f"{ISO}; {gear.rack.name}"
    return tuple(Step(name, formula, mm(value), source) for name, formula, value in rows)
