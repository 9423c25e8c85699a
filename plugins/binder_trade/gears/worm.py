"""Worm and wheel: sizes, lead angle, efficiency both ways, and whether it holds by itself."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, mm, positive, within

Holding = Literal["holds", "may hold", "runs back"]
GEOMETRY: Final = "geometry of the screw"
USUAL: Final = "usual proportions of worm gears"
FRICTION: Final = "efficiency of a screw with sloping flanks"
SURE_PART: Final = 0.6
HOLDS: Final = "lead under 0.6 of the friction angle; shaking undoes any worm (common practice)"


@dataclass(frozen=True, slots=True)
class WormPair:
    """A cylindrical worm and its wheel at right angles; mm, degrees.

    `efficiency` is for the worm driving, `back_efficiency` for the wheel, nothing or less where
    it holds. `throat_mm` is the wheel's diameter in the middle, `wheel_outside_mm` over its
    edges, `throat_radius_mm` the hollow.
    """

    starts: int
    teeth: int
    module_mm: float
    angle_deg: float
    friction: float
    ratio: float
    worm_mm: float
    worm_outside_mm: float
    worm_root_mm: float
    wheel_mm: float
    throat_mm: float
    wheel_outside_mm: float
    throat_radius_mm: float
    centres_mm: float
    lead_mm: float
    lead_deg: float
    worm_length_mm: float
    wheel_face_mm: float
    efficiency: float
    back_efficiency: float
    holding: Holding
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class WormForces:
    """Forces on the worm; N. Those on the wheel are the same, across for along."""

    tangential_n: float
    axial_n: float
    radial_n: float
    steps: tuple[Step, ...]


def worm(
    starts: int,
    teeth: int,
    module_mm: float,
    worm_mm: float,
    *,
    angle_deg: float = 20.0,
    friction: float = 0.08,
) -> WormPair:
    """A worm of a pitch diameter and axial module, with its wheel; mm, degrees.

    Raises NotDefined for a worm that is thinner than its threads are deep.
    Source: tan λ = z₁ m / d₁; a = (d₁ + m z₂) / 2; wheel face 2 m √(q + 1).
    """
    within(starts, 1, 12, "a number of starts")
    within(teeth, 12, 500, "a number of teeth of a worm wheel")
    module, pitch = positive(module_mm, "a module"), positive(worm_mm, "a worm")
    if pitch <= 4 * module:
        raise NotDefined("the worm is too thin for its threads", "make it over 5 modules thick")
    lead = math.atan(starts * module / pitch)
    ahead = efficiency(math.degrees(lead), friction, angle_deg)
    back = back_efficiency(math.degrees(lead), friction, angle_deg)
    wheel, quotient = module * teeth, pitch / module
    made = WormPair(
        starts,
        teeth,
        module,
        angle_deg,
        friction,
        teeth / starts,
        pitch,
        pitch + 2 * module,
        pitch - 2.4 * module,
        wheel,
        wheel + 2 * module,
        wheel + 3 * module,
        pitch / 2 - module,
        (pitch + wheel) / 2,
        math.pi * module * starts,
        math.degrees(lead),
        math.pi * module * (4.5 + 0.02 * teeth),
        2 * module * math.sqrt(quotient + 1),
        ahead,
        back,
        holds(math.degrees(lead), friction, angle_deg),
        (),
    )
    return _explained(made)


def efficiency(lead_deg: float, friction: float, angle_deg: float = 20.0) -> float:
    """Of work put in at the worm, the part that comes out at the wheel; normal angle in degrees.

    η = tan λ (cos α − μ tan λ) / (cos α tan λ + μ). Source: mechanics of the screw.
    """
    slope, cosine, rough = _screw(lead_deg, friction, angle_deg)
    return slope * (cosine - rough * slope) / (cosine * slope + rough)


def back_efficiency(lead_deg: float, friction: float, angle_deg: float = 20.0) -> float:
    """Of work put in at the wheel, the part that comes out at the worm; under nothing it holds."""
    slope, cosine, rough = _screw(lead_deg, friction, angle_deg)
    return (cosine * slope - rough) / (slope * (cosine + rough * slope))


def holds(lead_deg: float, friction: float, angle_deg: float = 20.0) -> Holding:
    """Whether a wheel under load is held by its worm at rest; shaking undoes it."""
    slope, cosine, rough = _screw(lead_deg, friction, angle_deg)
    part = math.atan(slope) / math.atan(rough / cosine) if rough else math.inf
    return "holds" if part <= SURE_PART else "may hold" if part <= 1 else "runs back"


def worm_forces(pair: WormPair, torque_n_mm: float) -> WormForces:
    """The forces that a torque on the worm makes; N from N mm. Source: mechanics of the screw."""
    tangential = 2 * within(torque_n_mm, 0, 1e12, "a torque") / pair.worm_mm
    slope, cosine, rough = _screw(pair.lead_deg, pair.friction, pair.angle_deg)
    across = cosine * slope + rough
    axial = tangential * (cosine - rough * slope) / across
    sine = math.sin(math.radians(pair.angle_deg))
    radial = tangential * sine / (math.cos(math.atan(slope)) * across)
    return WormForces(
        tangential,
        axial,
        radial,
        (
            Step("across the worm", "2 T / d₁", f"{tangential:.1f} N", "statics"),
            Step("along the worm", "F (cos α − μ tan λ) / (…)", f"{axial:.1f} N", FRICTION),
            Step("apart", "F sin α / (cos α sin λ + μ cos λ)", f"{radial:.1f} N", FRICTION),
        ),
    )


def _screw(lead_deg: float, friction: float, angle_deg: float) -> tuple[float, float, float]:
    within(lead_deg, 0.05, 60, "a lead angle", "°")
    within(angle_deg, 0, 45, "a pressure angle", "°")
    within(friction, 0, 0.6, "a coefficient of friction")
    return math.tan(math.radians(lead_deg)), math.cos(math.radians(angle_deg)), friction


def _explained(made: WormPair) -> WormPair:
    percent = f"{100 * made.efficiency:.0f} %"
    return replace(
        made,
        steps=(
            Step("lead", "π m z₁", mm(made.lead_mm), GEOMETRY),
            Step("lead angle", "tan λ = z₁ m / d₁", f"{made.lead_deg:.3f}°", GEOMETRY),
            Step("centres", "(d₁ + m z₂) / 2", mm(made.centres_mm), GEOMETRY),
            Step("throat", "m (z₂ + 2)", mm(made.throat_mm), USUAL),
            Step("wheel's face", "2 m √(d₁ / m + 1)", mm(made.wheel_face_mm), USUAL),
            Step("worm's length", "π m (4.5 + 0.02 z₂)", mm(made.worm_length_mm), USUAL),
            Step("efficiency", "tan λ (cos α − μ tan λ) / (cos α tan λ + μ)", percent, FRICTION),
            Step("the wheel under load", "λ against atan (μ / cos α)", made.holding, HOLDS),
        ),
    )
