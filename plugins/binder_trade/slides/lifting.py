"""Turns a screw, a load and its friction into torque, efficiency and whether it runs back."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, not_negative, positive, within
from binder_trade.slides.leadscrew import Leadscrew

SOURCE: Final = (
    "Bhandari, Design of Machine Elements, ch. 6 (friction raised by 1 / cos β, β in the axial"
    " plane)"
)
# Friction of a plain nut, from memory of textbook tables: (least, most).
FRICTION: Final = {
    "steel on bronze, oiled": (0.10, 0.16),
    "steel on cast iron, oiled": (0.11, 0.17),
    "steel on steel, oiled": (0.11, 0.17),
    "steel on brass, oiled": (0.10, 0.19),
    "steel on bronze, dry": (0.15, 0.23),
    "steel on steel, dry": (0.15, 0.25),
    "steel on acetal": (0.08, 0.20),
}
FRICTION_SOURCE: Final = "textbook range for screws in plain nuts (from memory)"
# Under this much to spare, shaking turns a screw that should hold.
_SHAKE: Final = 1.5


@dataclass(frozen=True, slots=True)
class Lift:
    """A load moved by a screw: torques in N mm, efficiency as a part of one.

    `raise_nmm` and `lower_nmm` include the collar. A negative `lower_nmm` drives the screw
    back: the load runs down by itself. `holds` is true where friction in the thread alone
    stops it, `holds_when_shaken` where it does so with half as much to spare.
    """

    raise_nmm: float
    lower_nmm: float
    collar_nmm: float
    efficiency: float
    holds: bool
    holds_when_shaken: bool
    steps: tuple[Step, ...]


def collar_torque(load_n: float, friction: float, outside_mm: float, inside_mm: float) -> float:
    """Torque lost under a collar or thrust washer; N mm. Source: uniform wear, μ W (Do+Di)/4."""
    outside = positive(outside_mm, "the outside of the collar")
    inside = not_negative(inside_mm, "the inside of the collar")
    if inside >= outside:
        raise NotDefined("the collar is smaller outside than inside", "exchange the two")
    force = positive(load_n, "the load in N")
    return within(friction, 0, 1, "the friction") * force * (outside + inside) / 4


def lift(screw: Leadscrew, load_n: float, friction: float, collar_nmm: float = 0.0) -> Lift:
    """What it takes to raise and lower a load in N; torques in N mm.

    Raises NotDefined where friction and slope together jam the screw. An order of magnitude:
    friction is known to a third at best. Source: see `SOURCE`.
    """
    force = positive(load_n, "the load in N")
    mu = within(friction, 0, 1, "the friction") / math.cos(math.radians(screw.flank_deg))
    slope = math.tan(math.radians(screw.lead_angle_deg))
    if mu * slope >= 1:
        raise NotDefined(
            "friction jams a screw as steep as this", "take fewer starts or a slipperier nut"
        )
    collar = not_negative(collar_nmm, "the torque of the collar in N mm")
    arm = force * screw.pitch_diameter_mm / 2
    up = arm * (mu + slope) / (1 - mu * slope) + collar
    down = arm * (mu - slope) / (1 + mu * slope) + collar
    share = force * screw.lead_mm / (2 * math.pi * up)
    return Lift(
        up,
        down,
        collar,
        share,
        mu >= slope,
        mu >= _SHAKE * slope,
        _steps(screw, mu, up, down, share),
    )


def _steps(screw: Leadscrew, mu: float, up: float, down: float, share: float) -> tuple[Step, ...]:
    return (
        Step("lead angle λ", "atan(lead / π d2)", f"{screw.lead_angle_deg:.2f}°", SOURCE),
        Step("friction on the slope of the flank", "μ / cos β", f"{mu:.3f}", SOURCE),
        Step(
            "torque to raise",
            "W d2/2 · (μ' + tan λ) / (1 − μ' tan λ) + collar",
            f"{up:.0f} N mm",
            SOURCE,
        ),
        Step(
            "torque to lower",
            "W d2/2 · (μ' − tan λ) / (1 + μ' tan λ) + collar",
            f"{down:.0f} N mm",
            SOURCE,
        ),
        Step("efficiency", "W · lead / (2 π torque)", f"{share * 100:.0f} %", SOURCE),
    )


def handle_force(torque_nmm: float, radius_mm: float) -> float:
    """Force in N at a handle of this radius in mm that gives the torque."""
    return positive(torque_nmm, "the torque in N mm") / positive(radius_mm, "the radius")


def nut_pressure(screw: Leadscrew, load_n: float, nut_mm: float) -> float:
    """Pressure on the threads in a nut of this length; MPa. Source: as `SOURCE`, on d² − d1²."""
    turns = positive(nut_mm, "the length of the nut") / screw.pitch_mm
    ring = math.pi / 4 * (screw.major_mm**2 - screw.nut_minor_mm**2)
    return positive(load_n, "the load in N") / (ring * turns)
