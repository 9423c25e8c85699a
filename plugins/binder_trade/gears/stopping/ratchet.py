"""A ratchet wheel and its pawl: teeth, where the pawl turns, what it bears, what play is left."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within

PRACTICE: Final = "common practice, no source"
DRAWN_IN: Final = "the push passes inside the pawl's pin, so that load draws it in"
_FRICTION_DEG: Final = 8.5


@dataclass(frozen=True, slots=True)
class Ratchet:
    """A ratchet and its pawl; mm, degrees, N.

    `undercut_deg` leans the face of the teeth from the radius, so that the pawl is drawn in;
    `pivot_mm` is from the wheel's centre to the pawl's pin, which stands on the tangent at the
    tooth; `slack_deg` the most that the load falls back before it is caught.
    """

    teeth: int
    outside_mm: float
    root_mm: float
    depth_mm: float
    step_deg: float
    tooth_mm: float
    undercut_deg: float
    pawl_mm: float
    pivot_mm: float
    slack_deg: float
    slack_mm: float
    load_n: float
    draws_in: bool
    steps: tuple[Step, ...]


def ratchet(
    teeth: int,
    outside_mm: float,
    pawl_mm: float,
    *,
    depth_mm: float | None = None,
    undercut_deg: float = 10.0,
    pawls: int = 1,
    torque_n_mm: float = 0.0,
) -> Ratchet:
    """A ratchet of an outside diameter, its pawl so long from pin to nose; mm, degrees, N mm.

    Several pawls are set a part of a tooth apart, and share the slack, not the load.
    Raises NotDefined for teeth deeper than the wheel bears. Source: tangent rule; proportions
    common practice.
    """
    within(teeth, 4, 400, "a number of ratchet teeth")
    within(pawls, 1, 6, "a number of pawls")
    within(undercut_deg, 0, 30, "the undercut of the teeth", "°")
    radius, pawl = positive(outside_mm, "a ratchet wheel") / 2, positive(pawl_mm, "a pawl")
    tooth = 2 * math.pi * radius / teeth
    depth = 0.4 * tooth if depth_mm is None else positive(depth_mm, "the depth of the teeth")
    if depth >= 0.6 * radius:
        raise NotDefined("the teeth are deeper than the wheel bears", "take more teeth")
    meets = radius - depth / 2
    slack = 360 / teeth / pawls
    load = within(torque_n_mm, 0, 1e12, "a torque") / meets
    pivot = math.hypot(meets, pawl)
    draws = undercut_deg >= _FRICTION_DEG
    fall = math.radians(slack) * radius
    return Ratchet(
        teeth,
        2 * radius,
        2 * (radius - depth),
        depth,
        360 / teeth,
        tooth,
        undercut_deg,
        pawl,
        pivot,
        slack,
        fall,
        load,
        draws,
        (
            Step("step", "360° / z", f"{360 / teeth:.3f}°", "geometry"),
            Step("depth of teeth", "0.4 of their pitch", mm(depth), PRACTICE),
            Step("wheel's centre to pawl's pin", "√(r² + l²)", mm(pivot), DRAWN_IN),
            Step("falls back at most", "step / pawls", f"{slack:.3f}°", "geometry"),
            Step("load on the pawl", "T / r", f"{load:.1f} N", "statics"),
        ),
    )
