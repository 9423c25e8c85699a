"""A pawl to what its stroke feeds, and to what its tooth bears."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, amount, positive, within
from binder_trade.fits.printed import figures

FEED: Final = "whole teeth that the pawl passes"


@dataclass(frozen=True, slots=True)
class RatchetFeed:
    """What a stroke of the pawl feeds: whole teeth, degrees, what is lost, and mm of a screw."""

    teeth: int
    degrees: float
    lost_degrees: float
    feed_mm: float | None
    strokes_per_turn: float
    steps: tuple[Step, ...]


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
