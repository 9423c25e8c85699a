"""Friction, wrap and tension to what a belt can pull before it slips."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, amount, amount_or_nothing, positive, within
from binder_trade.fits.naming import cited
from binder_trade.fits.printed import figures

CAPSTAN: Final = "capstan equation T1/T2 = exp(μ θ / sin(half groove)); Khurmi, Theory of Machines"
PRETENSION: Final = "T1 + T2 = 2 T0; Khurmi, Theory of Machines"
CENTRIFUGAL: Final = "Tc = m v²; Khurmi, Theory of Machines"
_FLAT: Final = 180.0
_MOST_RATIO: Final = 1e30


@dataclass(frozen=True, slots=True)
class Grip:
    """The most that a belt pulls: forces in N, power in W.

    `shaft_n` is the load on the shaft from both strands, added as if they were parallel.
    """

    tension_ratio: float
    tight_n: float
    slack_n: float
    centrifugal_n: float
    pull_n: float
    power_w: float
    shaft_n: float
    steps: tuple[Step, ...]

    def torque_nmm(self, diameter_mm: float) -> float:
        """The torque that this pull gives on a pulley of this diameter; N mm."""
        return self.pull_n * positive(diameter_mm, "the pulley's diameter") / 2


def friction_range(material: str) -> tuple[float, float, str]:
    """Least and most friction of a belt on a dry metal pulley, with the source.

    Raises NotDefined for a material that is not kept.
    """
    table = load_data("binder_trade.belts", "friction.yaml")
    if material not in table["rows"]:
        known = ", ".join(table["rows"])
        raise NotDefined(f"no friction known for “{material[:40]}”", f"one of: {known}")
    least, most = table["rows"][material]
    return least, most, cited(table)


def tension_ratio(friction: float, wrap_rad: float, groove_deg: float = _FLAT) -> float:
    """Tight over slack tension at the point of slipping; the groove's included angle, 180 flat.

    Raises NotDefined. Source: `CAPSTAN`.
    """
    mu = within(friction, 0, 2, "the friction")
    wrap = within(wrap_rad, 0, 40 * math.pi, "the wrap in rad")
    half = math.radians(within(groove_deg, 10, 180, "the angle of the groove", "°") / 2)
    power = mu * wrap / math.sin(half)
    if power > 60:
        raise NotDefined("a rope wound so often holds anything", "reckon with fewer turns")
    return math.exp(power)


def grip_by_pretension(
    pretension_n: float, ratio: float, speed_ms: float = 0.0, mass_kg_m: float = 0.0
) -> Grip:
    """What a belt pulls that was put on with this tension in each strand; N, W.

    Raises NotDefined where the belt's own whirl takes all of the tension. Source: `PRETENSION`.
    """
    within(ratio, 1, _MOST_RATIO, "the ratio of tensions")
    fixed = amount(pretension_n, "the pretension in N")
    whirl = _whirl(speed_ms, mass_kg_m)
    pull = 2 * (fixed - whirl) * (ratio - 1) / (ratio + 1)
    return _grip(ratio, fixed + pull / 2, pull, whirl, speed_ms)


def grip_by_limit(
    tight_n: float, ratio: float, speed_ms: float = 0.0, mass_kg_m: float = 0.0
) -> Grip:
    """What a belt pulls whose tight strand may bear this force; N, W. Source: `CAPSTAN`."""
    within(ratio, 1, _MOST_RATIO, "the ratio of tensions")
    most = amount(tight_n, "the tension of the tight strand in N")
    whirl = _whirl(speed_ms, mass_kg_m)
    return _grip(ratio, most, (most - whirl) * (1 - 1 / ratio), whirl, speed_ms)


def best_speed_ms(tight_n: float, mass_kg_m: float) -> float:
    """The speed in m/s at which a belt of limited tension gives most power: √(T / 3m)."""
    return math.sqrt(
        amount(tight_n, "the tension in N") / 3 / amount(mass_kg_m, "the mass a metre")
    )


def held_by(load_n: float, friction: float, turns: float) -> float:
    """The force in N at the free end that holds a load on a rope with turns round a post."""
    return amount(load_n, "the load in N") / tension_ratio(friction, 2 * math.pi * turns)


def pretension_for(pull_n: float, ratio: float) -> float:
    """The tension in N in each strand at rest that gives this pull. Source: `PRETENSION`."""
    if not 1 < ratio < _MOST_RATIO:
        raise NotDefined("a belt without friction pulls nothing", "give friction and wrap")
    return amount(pull_n, "the pull in N") / 2 * (ratio + 1) / (ratio - 1)


def _whirl(speed_ms: float, mass_kg_m: float) -> float:
    speed = amount_or_nothing(speed_ms, "the speed of the belt in m/s")
    return amount_or_nothing(mass_kg_m, "the mass of the belt a metre") * speed**2


def _grip(ratio: float, tight: float, pull: float, whirl: float, speed: float) -> Grip:
    if pull <= 0:
        raise NotDefined(
            "the belt pulls nothing: it has no grip, or whirls off its pulleys",
            "raise tension, wrap or friction, or run it slower",
        )
    slack = tight - pull
    steps = (
        Step("tight over slack", "exp(μ θ / sin(half groove))", f"{ratio:.3f}", CAPSTAN),
        Step("lost to whirling", "m v²", figures(whirl, "N"), CENTRIFUGAL),
        Step("tight strand", "T1", figures(tight, "N"), PRETENSION),
        Step("slack strand", "T2 = Tc + (T1 − Tc) / ratio", figures(slack, "N"), CAPSTAN),
        Step("most pull", "T1 − T2", figures(pull, "N"), CAPSTAN),
    )
    return Grip(ratio, tight, slack, whirl, pull, pull * speed, tight + slack, steps)
