"""Thick cylinders (Lamé): what a pressure at the joint does to the ring and to the shaft.

Diameters and changes in mm, pressures and stresses in MPa, tension above nothing. Ends are free
(plane stress), the metals elastic and of one length, as in DIN 7190-1 and Machinery's Handbook.
In the formulas E is the modulus, m Poisson's ratio, Q the factor of ring or shaft.
"""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.explained import NotDefined, not_negative, positive
from binder_trade.fits.metals import Metal

LAME = "Lamé, thick cylinders, as in DIN 7190-1"


@dataclass(frozen=True, slots=True)
class Joint:
    """A ring on a shaft: the joint diameter, the bore of the shaft (0 is solid), the outside.

    `outside_mm` None is a plate or block so large that its outside no longer matters.
    """

    diameter_mm: float
    shaft: Metal
    hub: Metal
    outside_mm: float | None
    bore_mm: float = 0.0


def joint(
    diameter_mm: float,
    shaft: Metal,
    hub: Metal,
    outside_mm: float | None,
    bore_mm: float = 0.0,
) -> Joint:
    """A joint whose sizes can be: bore < diameter < outside, in mm; raises NotDefined."""
    diameter = positive(diameter_mm, "the joint diameter")
    bore = not_negative(bore_mm, "the bore of the shaft")
    if bore >= diameter * 0.999:
        raise NotDefined("the shaft has no wall left", "make the bore smaller")
    if outside_mm is None:
        return Joint(diameter, shaft, hub, None, bore)
    outside = positive(outside_mm, "the outside of the ring")
    if outside <= diameter * 1.001:
        raise NotDefined("the ring has no wall left", "make the ring larger outside")
    return Joint(diameter, shaft, hub, outside, bore)


def ring_factor(made: Joint) -> float:
    """(D² + d²)/(D² − d²) of the ring: hoop stress at its bore over the pressure."""
    if made.outside_mm is None:
        return 1.0
    outside, inside = made.outside_mm**2, made.diameter_mm**2
    return (outside + inside) / (outside - inside)


def shaft_factor(made: Joint) -> float:
    """(d² + b²)/(d² − b²) of the shaft: hoop stress at its outside over the pressure."""
    outside, inside = made.diameter_mm**2, made.bore_mm**2
    return (outside + inside) / (outside - inside)


def ring_opens_mm(made: Joint, pressure_mpa: float) -> float:
    """How much the bore of the ring opens on diameter: p·d·(Q + m)/E."""
    strain = pressure_mpa * (ring_factor(made) + made.hub.poisson) / made.hub.modulus_mpa
    return made.diameter_mm * strain


def shaft_closes_mm(made: Joint, pressure_mpa: float) -> float:
    """How much the outside of the shaft closes on diameter: p·d·(Q − m)/E."""
    strain = pressure_mpa * (shaft_factor(made) - made.shaft.poisson) / made.shaft.modulus_mpa
    return made.diameter_mm * strain


def bore_closes_mm(made: Joint, pressure_mpa: float) -> float:
    """How much the bore of the shaft (of a bush) closes on diameter: 2·p·b/(E·(1 − b²/d²))."""
    ratio = (made.bore_mm / made.diameter_mm) ** 2
    return 2 * pressure_mpa * made.bore_mm / (made.shaft.modulus_mpa * (1 - ratio))


def outside_grows_mm(made: Joint, pressure_mpa: float) -> float:
    """How much the outside of the ring grows on diameter: 2·p·D·d²/(E·(D² − d²))."""
    if made.outside_mm is None:
        return 0.0
    outside, inside = made.outside_mm**2, made.diameter_mm**2
    strain = 2 * pressure_mpa * inside / (outside - inside) / made.hub.modulus_mpa
    return made.outside_mm * strain


def interference_of_mm(made: Joint, pressure_mpa: float) -> float:
    """The interference on diameter that makes a pressure; both changes are in proportion to it."""
    return ring_opens_mm(made, pressure_mpa) + shaft_closes_mm(made, pressure_mpa)
