"""Two gears in mesh: centres, working angle, backlash, contact, interference, sliding."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from binder_trade.explained import NotDefined, Step, mm
from binder_trade.gears.centres import (
    angle_at,
    apart_for,
    backlash_at,
    check_mates,
    reference,
    tight_centres,
)
from binder_trade.gears.contact import check_reach, clearance, interferes, lengths
from binder_trade.gears.gear import ISO, Gear

SMOOTH_RULE: Final = "at least 1.2 pairs of teeth in touch (common practice)"


@dataclass(frozen=True, slots=True)
class Mesh:
    """Two gears at a centre distance; mm and degrees.

    `tight_mm` is the distance without play for teeth of full thickness, `backlash_mm` the play
    along the pitch circles at `centres_mm`, under nothing where
    they bind. `clearance_mm` is left between a tip and the other's
    root, the less of the two. `has_interference` says that a tip digs under the involute.
    """

    pinion: Gear
    wheel: Gear
    ratio: float
    centres_mm: float
    reference_mm: float
    tight_mm: float
    working_angle_deg: float
    backlash_mm: float
    contact_ratio: float
    approach_mm: float
    recess_mm: float
    clearance_mm: float
    has_interference: bool
    reverses: bool
    steps: tuple[Step, ...]

    @property
    def path_mm(self) -> float:
        """How far a pair travels in touch, along the line that they push on."""
        return self.approach_mm + self.recess_mm

    @property
    def arc_mm(self) -> float:
        """The same along the pitch circle."""
        return self.path_mm / math.cos(self.pinion.angle)

    def sliding_mm_s(self, pinion_rpm: float) -> tuple[float, float]:
        """The sliding speed where a pair comes in touch, and where it leaves; mm/s."""
        turn = 2 * math.pi * abs(pinion_rpm) / 60
        sign = -1 if self.wheel.is_internal else 1
        both = turn * (1 + sign / self.ratio)
        return both * self.approach_mm, both * self.recess_mm


def mesh(
    pinion: Gear,
    wheel: Gear,
    *,
    centres_mm: float | None = None,
    backlash_mm: float = 0.0,
) -> Mesh:
    """Two gears in mesh, at a centre distance or at the one that gives a backlash; mm.

    Raises NotDefined for gears that are no mates or a distance at which they cannot mesh.
    Source: ISO 21771.
    """
    check_mates(pinion, wheel)
    if centres_mm is None:
        centres_mm = apart_for(pinion, wheel, backlash_mm)
    angle = angle_at(pinion, wheel, centres_mm)
    check_reach(pinion, wheel, centres_mm)
    play = backlash_at(pinion, wheel, centres_mm, angle)
    approach, recess = lengths(pinion, wheel, centres_mm, angle)
    made = Mesh(
        pinion,
        wheel,
        wheel.teeth / pinion.teeth,
        centres_mm,
        reference(pinion, wheel),
        tight_centres(pinion, wheel),
        math.degrees(angle),
        play,
        (approach + recess) / pinion.base_pitch_mm,
        approach,
        recess,
        clearance(pinion, wheel, centres_mm),
        interferes(pinion, wheel, centres_mm, angle),
        not wheel.is_internal,
        (),
    )
    return _with_steps(made)


def shifted(pinion: Gear, wheel: Gear) -> tuple[Gear, Gear]:
    """Both with their tips cut back so that the clearance stays whole at shifted centres.

    y = (a_w − a) / m, tips short by x₁ + x₂ − y. Source: ISO 21771, external pairs.
    """
    check_mates(pinion, wheel)
    if wheel.is_internal:
        raise NotDefined("tips of an internal pair are not cut back", "lessen the shift")
    moved = (tight_centres(pinion, wheel) - reference(pinion, wheel)) / pinion.module_mm
    short = max(0.0, pinion.shift + wheel.shift - moved)
    return replace(pinion, topping=short), replace(wheel, topping=short)


def _with_steps(made: Mesh) -> Mesh:
    sign = "−" if made.wheel.is_internal else "+"
    return replace(
        made,
        steps=(
            Step("pitch circles touch at", f"(d₂ {sign} d₁) / 2", mm(made.reference_mm), ISO),
            Step("centres without play", "a cos α / cos α_w", mm(made.tight_mm), ISO),
            Step("centres", "without play + play", mm(made.centres_mm), ISO),
            Step("working angle", "cos α_w = a cos α / a_w", f"{made.working_angle_deg:.3f}°", ISO),
            Step("backlash", "p_w − s₁ − s₂", mm(made.backlash_mm), ISO),
            Step("contact ratio", "path / base pitch", f"{made.contact_ratio:.3f}", SMOOTH_RULE),
        ),
    )
