"""Turns a ring and the bore, rod or face that it seals into its groove and how it is pressed."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, mm, not_negative, positive, within
from binder_trade.seals.housing import Duty, Housing, housing
from binder_trade.seals.ranges import Remark, remarks
from binder_trade.seals.rings import Ring

Place = Literal["piston", "rod", "face"]
STRETCH: Final = "(seat − inside of the ring) / inside of the ring"
_MOST_STRETCH: Final = 25.0
THINNING: Final = "SAE AS4716, appendix A, thinning of the cord by stretch (from memory)"


@dataclass(frozen=True, slots=True)
class Groove:
    """A groove with its ring in it; mm, and per cent.

    `diameter_mm` is the floor of the groove (piston, rod) or the side that the pressure
    pushes the ring against (face). `squeeze_least` and `squeeze_most` have the tolerance of
    the cord in them and that of the depth. `stretch` is negative where the ring is crowded
    together. `remarks` name what is out of its range.
    """

    place: Place
    ring: Ring
    housing: Housing
    diameter_mm: float
    depth_mm: float
    squeeze: float
    squeeze_least: float
    squeeze_most: float
    stretch: float
    fill: float
    remarks: tuple[Remark, ...]
    steps: tuple[Step, ...]


def piston_groove(
    ring: Ring, bore_mm: float, duty: Duty = "moving", tolerance_mm: float = 0.03
) -> Groove:
    """The groove turned in a piston or plug for a ring that seals in a bore; mm.

    The floor is bore − 2 × depth. Raises NotDefined where nothing is left. Source: housing
    table; `tolerance_mm` is what the depth may be out by, ±.
    """
    section = housing(ring.cord_mm, duty)
    floor = positive(bore_mm, "the bore") - 2 * section.depth_mm
    if floor <= 0:
        raise NotDefined(f"the groove cuts through a piston of {bore_mm:g} mm", "a thinner cord")
    return _groove("piston", ring, section, floor, floor, tolerance_mm)


def rod_groove(
    ring: Ring, rod_mm: float, duty: Duty = "moving", tolerance_mm: float = 0.03
) -> Groove:
    """The groove bored in a housing for a ring that seals on a rod; mm.

    The floor is rod + 2 × depth; the ring's seat is the rod. Source: housing table.
    """
    section = housing(ring.cord_mm, duty)
    rod = positive(rod_mm, "the rod")
    return _groove("rod", ring, section, rod + 2 * section.depth_mm, rod, tolerance_mm)


def face_groove(ring: Ring, *, inside_pressure: bool, tolerance_mm: float = 0.05) -> Groove:
    """The groove cut in a face; mm. Its outside (pressure inside) or inside bears the ring.

    Source: housing table; the ring stands free against the side away from the pressure.
    """
    section = housing(ring.cord_mm, "face")
    bearing = ring.outside_mm if inside_pressure else ring.inside_mm
    if inside_pressure and bearing <= 2 * section.width_mm:
        raise NotDefined("the ring is too small for a groove in a face", "take a larger ring")
    return _groove("face", ring, section, bearing, ring.inside_mm, tolerance_mm)


def thinned(cord_mm: float, stretch: float) -> float:
    """The cord of a ring stretched by so many per cent; mm.

    Source: SAE AS4716, appendix A (from memory): to 3 % the cord loses 0.01 + 1.06 X −
    0.1 X² per cent, beyond 0.56 + 0.59 X − 0.0046 X². Not defined above 25 %.
    """
    x = within(stretch, -100, 1e6, "the stretch of the ring in per cent")
    if x <= 0:
        return cord_mm
    if x > _MOST_STRETCH:
        raise NotDefined(f"the ring would be stretched by {x:.0f} %", "take a larger ring")
    loss = 0.01 + 1.06 * x - 0.1 * x**2 if x <= 3 else 0.56 + 0.59 * x - 0.0046 * x**2
    return cord_mm * (1 - loss / 100)


def _groove(
    place: Place, ring: Ring, section: Housing, floor: float, seat: float, tolerance: float
) -> Groove:
    play = not_negative(tolerance, "the tolerance of the depth")
    if play >= section.depth_mm:
        raise NotDefined(
            "the tolerance of the groove is as large as its depth", "turn the groove closer"
        )
    stretch = 100 * (seat - ring.inside_mm) / ring.inside_mm
    cord = thinned(ring.cord_mm, stretch)
    thin, thick = (
        thinned(ring.cord_mm + sign * ring.cord_tolerance_mm, stretch) for sign in (-1, 1)
    )
    squeeze = _squeeze(cord, section.depth_mm)
    fill = 100 * math.pi / 4 * cord**2 / (section.depth_mm * section.width_mm)
    return Groove(
        place,
        ring,
        section,
        floor,
        section.depth_mm,
        squeeze,
        _squeeze(thin, section.depth_mm + play),
        _squeeze(thick, section.depth_mm - play),
        stretch,
        fill,
        remarks(place, section.duty, squeeze, stretch, fill),
        _steps(section, floor, cord, squeeze, stretch, fill),
    )


def _squeeze(cord: float, depth: float) -> float:
    return 100 * (cord - depth) / cord


def _steps(  # the lines of one printed sum
    section: Housing, floor: float, cord: float, squeeze: float, stretch: float, fill: float
) -> tuple[Step, ...]:
    table = section.source
    return (
        Step("depth of the housing", "by the cord", mm(section.depth_mm), table),
        Step("width of the groove", "by the cord", mm(section.width_mm), table),
        Step("diameter of the groove", "bore − 2 t, rod + 2 t or ring", mm(floor), table),
        Step("stretch", STRETCH, f"{stretch:.1f} %", "definition"),
        Step("cord as stretched", "cord − loss by stretch", mm(cord), THINNING),
        Step("squeeze", "(cord − depth) / cord", f"{squeeze:.1f} %", "definition"),
        Step("fill", "π/4 cord² / (depth · width)", f"{fill:.0f} %", "definition"),
    )
