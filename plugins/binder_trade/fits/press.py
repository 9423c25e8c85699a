"""An interference to the grip of a press or shrink fit: pressure, stresses, push and torque."""

from __future__ import annotations

import math
from dataclasses import dataclass

from binder_trade.explained import NotDefined, Step, not_negative, positive, within
from binder_trade.fits.cylinders import (
    LAME,
    Joint,
    bore_closes_mm,
    interference_of_mm,
    outside_grows_mm,
    ring_factor,
    shaft_factor,
)
from binder_trade.fits.metals import Metal, flattening_parts
from binder_trade.fits.printed import SUM, figures, micrometres

# A brittle ring is allowed a third of its tensile strength: common practice, no source.
_BRITTLE_PART = 3.0
_MOST_FRICTION = 1.0


@dataclass(frozen=True, slots=True)
class Grip:
    """What an interference does, in MPa and mm; tension is above nothing.

    `hub_equivalent_mpa` is by maximum shear (Tresca) in a ring that yields, the hoop stress in a
    brittle one; `hub_use` and `shaft_use` are stress over what the metal may bear: above 1 the
    metal gives at its surface, and the sum, which is elastic, says too much. `plastic_use` is the
    pressure over that which makes a whole wall give, or which cracks a brittle ring: above 1 the
    joint is spoilt.
    """

    interference_mm: float
    pressure_mpa: float
    hub_hoop_mpa: float
    hub_outside_hoop_mpa: float
    hub_equivalent_mpa: float
    shaft_hoop_mpa: float
    shaft_bore_hoop_mpa: float
    bore_closes_mm: float
    outside_grows_mm: float
    hub_use: float
    shaft_use: float
    plastic_use: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Hold:
    """What a grip holds: axial force in N to slip it, torque in N·mm that it carries."""

    force_n: float
    torque_nmm: float
    steps: tuple[Step, ...]


def grip(made: Joint, interference_mm: float) -> Grip:
    """The grip of an interference on diameter in mm.

    Raises NotDefined for no interference, or one past 1 % of the diameter: no elastic metal bears
    that. Source: Lamé; for one metal and a solid shaft p = E·δ/(2·d)·(1 − (d/D)²).
    """
    amount = within(interference_mm, 1e-6, made.diameter_mm * 0.01, "the interference")
    pressure = amount / interference_of_mm(made, 1.0)
    hub_hoop = pressure * ring_factor(made)
    shaft_hoop = -pressure * shaft_factor(made)
    bore_hoop = shaft_hoop - pressure if made.bore_mm else shaft_hoop
    equivalent = hub_hoop if made.hub.brittle else hub_hoop + pressure
    return Grip(
        amount,
        pressure,
        hub_hoop,
        hub_hoop - pressure,
        equivalent,
        shaft_hoop,
        bore_hoop,
        bore_closes_mm(made, pressure),
        outside_grows_mm(made, pressure),
        equivalent / may_bear_mpa(made.hub),
        abs(bore_hoop) / made.shaft.strength_mpa,
        pressure / spoils_mpa(made),
        _grip_steps(made, amount, pressure, hub_hoop, equivalent),
    )


def may_bear_mpa(metal: Metal) -> float:
    """What a ring of a metal may bear: its yield, or a third of a brittle metal's strength."""
    return metal.strength_mpa / (_BRITTLE_PART if metal.brittle else 1.0)


def spoils_mpa(made: Joint) -> float:
    """The pressure in MPa at which a wall gives through and through, or a brittle ring cracks.

    Source: full plasticity of thick cylinders by maximum shear, p = yield × ln(D/d), at most the
    yield itself; a brittle ring by its hoop stress.
    """
    hub = _through_mpa(made.hub, made.outside_mm, made.diameter_mm)
    if made.hub.brittle:
        hub = may_bear_mpa(made.hub) / ring_factor(made)
    return min(hub, _through_mpa(made.shaft, made.diameter_mm, made.bore_mm))


def _through_mpa(metal: Metal, outside_mm: float | None, inside_mm: float) -> float:
    if outside_mm is None or inside_mm <= 0:
        return metal.strength_mpa
    return metal.strength_mpa * min(1.0, math.log(outside_mm / inside_mm))


def interference_for_mm(made: Joint, pressure_mpa: float) -> float:
    """The interference on diameter in mm that gives a pressure in MPa; raises NotDefined."""
    return interference_of_mm(made, positive(pressure_mpa, "the pressure"))


def most_interference_mm(made: Joint) -> float:
    """The interference on diameter in mm at which ring or shaft first reaches what it may bear.

    Source: Lamé with maximum shear (Tresca); a brittle ring by its hoop stress.
    """
    factor = ring_factor(made) if made.hub.brittle else ring_factor(made) + 1.0
    shaft = shaft_factor(made) + (1.0 if made.bore_mm else 0.0)
    pressure = min(may_bear_mpa(made.hub) / factor, made.shaft.strength_mpa / shaft)
    return interference_of_mm(made, pressure)


def hold(made: Joint, pressure_mpa: float, length_mm: float, friction: float) -> Hold:
    """What a pressure in MPa holds over a length in mm: force N = µ·p·π·d·L, torque N·mm = F·d/2.

    Raises NotDefined. Source: DIN 7190-1; friction from its clause 5 (see `metals.friction`).
    """
    pressure = positive(pressure_mpa, "the pressure")
    length = positive(length_mm, "the length of the joint")
    rubs = within(friction, 1e-6, _MOST_FRICTION, "the friction")
    force = rubs * pressure * math.pi * made.diameter_mm * length
    torque = force * made.diameter_mm / 2
    return Hold(
        force,
        torque,
        (
            Step("force to slip", "µ × p × π × d × L", figures(force, "N"), "DIN 7190-1"),
            Step("torque carried", "force × d ÷ 2", figures(torque / 1000, "N·m"), "DIN 7190-1"),
        ),
    )


def left_of_interference_mm(
    interference_mm: float,
    roughness_shaft_um: float,
    roughness_hub_um: float,
    convention: str = "DIN 7190-1",
) -> tuple[float, tuple[Step, ...]]:
    """What is left of a measured interference in mm when the roughness (Rz in µm) has flattened.

    Published practice differs: `DIN 7190-1` takes 0.4, `DIN 7190` 0.8, `tenth` 0.2 of both Rz
    together. Raises NotDefined where nothing is left.
    """
    amount = positive(interference_mm, "the interference")
    parts, source = flattening_parts(convention)
    both = not_negative(roughness_shaft_um, "the roughness of the shaft") + not_negative(
        roughness_hub_um, "the roughness of the hub"
    )
    lost_um = parts * both
    left = amount - lost_um / 1000
    if left <= 0:
        raise NotDefined("the roughness takes all of the interference", "finish both surfaces")
    steps = (
        Step("lost to roughness", f"{parts:g} × (Rz + Rz)", micrometres(lost_um), source),
        Step("left", "interference − lost", micrometres(left * 1000), SUM),
    )
    return left, steps


def _grip_steps(
    made: Joint, amount: float, pressure: float, hub_hoop: float, equivalent: float
) -> tuple[Step, ...]:
    rule = "hoop stress" if made.hub.brittle else "hoop + pressure (maximum shear)"
    return (
        Step("interference", "shaft − hole, on diameter", micrometres(amount * 1000), SUM),
        Step(
            "pressure",
            "δ ÷ d ÷ (ring (Q + m)/E + shaft (Q − m)/E)",
            figures(pressure, "N/mm²"),
            LAME,
        ),
        Step(
            "hoop stress of the ring", "p × (D² + d²)/(D² − d²)", figures(hub_hoop, "N/mm²"), LAME
        ),
        Step(
            "against the metal",
            f"{rule}, may bear {may_bear_mpa(made.hub):.0f} N/mm²",
            figures(equivalent, "N/mm²"),
            made.hub.source,
        ),
    )
