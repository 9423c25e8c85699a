"""A blind tapped hole to the depths to drill: full thread, lead of the tap, chips, point."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.threads import Thread

# Lead of hand taps in pitches, by their names in British shops. American shops call the second
# tap a plug tap, and the plug tap a bottoming tap.
LEADS: Final = {"taper": 8.0, "second": 4.0, "plug": 2.0}
LEAD_SOURCE: Final = "handbook: taper taps 8 to 10 threads, second 3 to 5, plug 1½; middle figures"
_CHIPS: Final = 2.0
_POINT_HALF_DEG: Final = 59.0
_COMMON_PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class BlindHole:
    """How deep to drill and tap, in mm.

    `drill_mm` is the depth of the full diameter, as dimensioned; the point goes `point_mm`
    further, so the metal must be thicker than `tip_mm`.
    """

    full_thread_mm: float
    tap_kind: str
    lead_mm: float
    chips_mm: float
    drill_mm: float
    point_mm: float
    tip_mm: float
    why: str
    steps: tuple[Step, ...]


def point_length(drill_mm: float) -> float:
    """How far the point of a 118° drill stands out, in mm: 0.30 of its diameter.

    Raises `NotDefined` for a diameter that no drill has. Source: geometry.
    """
    return positive(drill_mm, "a drill") / 2 / math.tan(math.radians(_POINT_HALF_DEG))


def tap_lead(thread: Thread, tap_kind: str) -> float:
    """The length in mm over which a hand tap cuts no full thread: taper, second or plug.

    Raises `NotDefined` for another kind. Source: handbook leads of hand taps, in pitches.
    """
    if tap_kind not in LEADS:
        raise NotDefined(f"no tap is called {tap_kind!r}", f"say {', '.join(LEADS)}")
    return LEADS[tap_kind] * thread.pitch_mm


def blind(
    thread: Thread, full_depth_mm: float, tap_kind: str, drill_mm: float | None = None
) -> BlindHole:
    """The depths for a blind hole with this much full thread in mm, cut by this tap last.

    `drill_mm` is the tapping drill, D − P where left out. Raises `NotDefined` for a depth of
    nothing or an unknown tap. Source: leads of hand taps; two pitches for chips, common
    practice.
    """
    full = positive(full_depth_mm, "a depth of thread")
    lead = tap_lead(thread, tap_kind)
    chips = _CHIPS * thread.pitch_mm
    point = point_length(thread.major_mm - thread.pitch_mm if drill_mm is None else drill_mm)
    depth = full + lead + chips
    steps = (
        Step("lead of the tap", f"{LEADS[tap_kind]:g} P", f"{lead:.2f} mm", LEAD_SOURCE),
        Step("room for chips", f"{_CHIPS:g} P", f"{chips:.2f} mm", _COMMON_PRACTICE),
        Step("depth to drill", "full thread + lead + chips", f"{depth:.2f} mm", "calculation"),
        Step("point of the drill", "½ d ÷ tan 59°", f"{point:.2f} mm", "geometry, 118° point"),
        Step("deepest point", "depth + point", f"{depth + point:.2f} mm", "calculation"),
    )
    why = f"{full:g} mm of thread, {lead:.1f} for the {tap_kind} tap, {chips:.1f} for chips"
    return BlindHole(full, tap_kind, lead, chips, depth, point, depth + point, why, steps)


def full_thread_in(thread: Thread, drilled_mm: float, tap_kind: str) -> float:
    """The full thread in mm that a hole drilled so deep in mm can get; nothing where too shallow.

    Raises `NotDefined` as `blind`.
    """
    depth = positive(drilled_mm, "a drilled depth")
    return max(0.0, depth - tap_lead(thread, tap_kind) - _CHIPS * thread.pitch_mm)
