"""Geneva wheels, ratchets and toggles to their timing, feed and force."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, amount, positive, within
from binder_trade.fits.printed import figures

GENEVA: Final = "geometry of the pin in its slot, entering along it"
FEED: Final = "whole teeth that the pawl passes"
TOGGLE: Final = "balance of forces at the knee, F / (2 tan angle)"


@dataclass(frozen=True, slots=True)
class Geneva:
    """The timing of a wheel with a driver of one pin; rad, parts of a turn of the driver.

    `most_ratio` is the wheel's greatest speed over the driver's.
    """

    slots: int
    crank_over_centres: float
    index_rad: float
    index_share: float
    dwell_share: float
    most_ratio: float
    steps: tuple[Step, ...]

    def at(self, driver_rad: float) -> tuple[float, float]:
        """Angle of the wheel from mid-index in rad, and its speed over the driver's.

        The driver's angle is told from the line of centres; outside the index the wheel rests.
        """
        angle = math.remainder(driver_rad, 2 * math.pi)
        if abs(angle) >= self.index_rad / 2:
            return math.copysign(math.pi / self.slots, angle), 0.0
        share, cosine = self.crank_over_centres, math.cos(angle)
        ratio = share * (cosine - share) / (1 - 2 * share * cosine + share**2)
        return math.atan2(share * math.sin(angle), 1 - share * cosine), ratio


@dataclass(frozen=True, slots=True)
class RatchetFeed:
    """What a stroke of the pawl feeds: whole teeth, degrees, what is lost, and mm of a screw."""

    teeth: int
    degrees: float
    lost_degrees: float
    feed_mm: float | None
    strokes_per_turn: float
    steps: tuple[Step, ...]


def geneva(slots: int) -> Geneva:
    """An external Geneva wheel; raises NotDefined below three slots. Source: `GENEVA`."""
    count = int(within(slots, 3, 60, "the number of slots"))
    share = math.sin(math.pi / count)
    index = math.pi - 2 * math.pi / count
    most = share / (1 - share)
    steps = (
        Step("crank over centres", "sin(180° / n)", f"{share:.4f}", GENEVA),
        Step("turns while", "180° − 360° / n of the driver", f"{math.degrees(index):.1f}°", GENEVA),
        Step("greatest speed", "sin / (1 − sin)", f"{most:.3f} × the driver's", GENEVA),
    )
    part = index / (2 * math.pi)
    return Geneva(count, share, index, part, 1 - part, most, steps)


def ratchet_feed(
    teeth: int, swing_deg: float, lead_mm: float | None = None, pawls: int = 1
) -> RatchetFeed:
    """The feed of a pawl that swings through an angle; with a screw's lead also in mm.

    Pawls set a part of a tooth apart feed by parts of a tooth. Raises NotDefined where the
    swing takes no tooth. Source: `FEED`.
    """
    count = int(within(teeth, 4, 1000, "the number of teeth"))
    swing = within(swing_deg, 1e-3, 360, "the swing", "°")
    parts = count * int(within(pawls, 1, 6, "the number of pawls"))
    taken = math.floor(swing / 360 * parts + 1e-9)
    if taken == 0:
        raise NotDefined(
            f"a swing of {swing:g}° does not reach the next of {count} teeth",
            f"swing more than {360 / parts:.2f}°, or take more teeth",
        )
    fed = taken / parts * 360
    feed = None if lead_mm is None else positive(lead_mm, "the lead") * taken / parts
    steps = (
        Step("fed by a stroke", "whole teeth", f"{fed:.2f}°", FEED),
        Step("lost", "swing − whole teeth", f"{swing - fed:.2f}°", FEED),
        *(
            ()
            if feed is None
            else (Step("feed", "lead × teeth / all teeth", f"{feed:.4f} mm", FEED),)
        ),
    )
    return RatchetFeed(taken, fed, swing - fed, feed, parts / taken, steps)


def pawl_load(
    torque_nmm: float, diameter_mm: float, face_mm: float, depth_mm: float
) -> tuple[float, float, tuple[Step, ...]]:
    """The force in N on a ratchet tooth and its pressure in N/mm² over face × depth; N mm, mm.

    The diameter is at the middle of the tooth's depth. Source: statics.
    """
    arm = positive(diameter_mm, "the ratchet's diameter") / 2
    force = amount(torque_nmm, "the torque in N mm") / arm
    area = positive(face_mm, "the face of the tooth") * positive(depth_mm, "the tooth's depth")
    steps = (
        Step("force on the pawl", "torque / radius", figures(force, "N"), "statics"),
        Step(
            "pressure on the tooth", "F / face × depth", figures(force / area, "N/mm²"), "statics"
        ),
    )
    return force, force / area, steps


def toggle_force(push_n: float, angle_deg: float) -> tuple[float, Step]:
    """The force in N of two equal links whose knee is pushed, each `angle_deg` from straight.

    Raises NotDefined at nothing: it grows without end there. Source: `TOGGLE`.
    """
    angle = math.radians(within(angle_deg, 0.05, 89, "the angle of the links", "°"))
    force = amount(push_n, "the push in N") / (2 * math.tan(angle))
    return force, Step("force of the toggle", "F / (2 tan angle)", figures(force, "N"), TOGGLE)


def toggle_reach(link_mm: float, angle_deg: float) -> float:
    """How far, mm, the ends of two equal links are short of straight: 2 l (1 − cos angle)."""
    angle = math.radians(within(angle_deg, 0, 89, "the angle of the links", "°"))
    return 2 * positive(link_mm, "a link") * (1 - math.cos(angle))
