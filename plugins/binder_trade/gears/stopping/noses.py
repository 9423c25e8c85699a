"""The nose of a straight pawl: the angle of its end, and what clears the next tooth."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, amount, mm, positive, within

SEAT: Final = "the end lies on the whole stopping face, its corner at the foot of that"
PUSH: Final = "the push passes inside the pawl's pin, so that load draws it in"
# How far the side towards the wheel stands off the back of the next tooth, and how far out of
# square an end may be before the nose is thin and wedges under load, in degrees. Common practice,
# no source.
CLEAR_DEG: Final = 3.0
MOST_OUT_DEG: Final = 30.0


@dataclass(frozen=True, slots=True)
class RatchetSpace:
    """The space before a stopping face; degrees, mm.

    The face stands `tilt_deg` from the radius at its foot, towards the space, and `open_deg` from
    the back beside it, which is `back_mm` long.
    """

    tilt_deg: float
    open_deg: float
    back_mm: float


@dataclass(frozen=True, slots=True)
class PawlNose:
    """How the end of a straight pawl is filed; degrees, mm.

    `out_deg` is how far out of square: filed back from the corner at the wheel where it is
    positive, and towards that corner, which goes back by `back_mm`, where negative. `clear_deg`
    stays between the side towards the wheel and the next back after `relief_deg` are filed off
    that side. `push_deg` is how far the push passes inside the pin; `square_mm` the reach, from
    pin to end, with which a square end would lie flat, 0 where there is none.
    """

    out_deg: float
    back_mm: float
    clear_deg: float
    relief_deg: float
    push_deg: float
    square_mm: float
    steps: tuple[Step, ...]


def ratchet_space(
    teeth: int, outside_mm: float, depth_mm: float, lean_deg: float = 0.0
) -> RatchetSpace:
    """The space of a wheel whose faces lean back by an angle; plane geometry of the tooth.

    Raises NotDefined for teeth that leave no space.
    """
    within(teeth, 3, 400, "a number of ratchet teeth")
    tip = positive(outside_mm, "a ratchet wheel") / 2
    root = tip - within(depth_mm, 1e-3, tip * 0.999, "the depth of the teeth")
    lean = math.radians(within(lean_deg, 0, 30, "the lean of the faces", "°"))
    lag = math.asin(min(1.0, (tip - root) * math.tan(lean) / root))
    pitch = 2 * math.pi / teeth
    if lag >= pitch:
        raise NotDefined("the teeth are undercut through to the next", "let them lean less")
    # Seen from the foot, the radius upright: the point of the face, and that of the next tooth.
    tilt = math.atan2(tip * math.sin(lag), tip * math.cos(lag) - root)
    across, up = tip * math.sin(pitch + lag), tip * math.cos(pitch + lag) - root
    back = math.atan2(across, up) - tilt
    return RatchetSpace(math.degrees(tilt), math.degrees(back), math.hypot(across, up))


def pawl_nose(
    centres_mm: float, reach_mm: float, half_mm: float, root_mm: float, depth_mm: float,
    space: RatchetSpace,
) -> PawlNose:  # fmt: skip
    """The nose of a pawl, its pin so far from the wheel's axis; `root_mm` is a radius.

    `reach_mm` is from the pin to the end, `half_mm` from the pin across to the side towards the
    wheel. Raises NotDefined where the end does not come to the foot, would be thrown out by the
    tooth, or would be too thin. Source: `SEAT`, a triangle of pin, corner and axis.
    """
    centres, reach = positive(centres_mm, "the centres"), positive(reach_mm, "the pawl's reach")
    root, half = positive(root_mm, "the root"), amount(half_mm, "half the width of the pawl")
    square = square_reach(centres, half, root, space.tilt_deg)
    help_ = (
        f"let it reach {mm(square)} from its pin, where a square end seats"
        if square else "set its pin farther from the wheel"
    )  # fmt: skip
    out, back = _out(centres, reach, half, root, space.tilt_deg, help_), 0.0
    for _ in range(8 if out < 0 else 0):
        # The corner goes back as far as the facet over the tooth is out of square.
        back = depth_mm * math.tan(math.radians(-min(out, 0.0)))
        out = _out(centres, reach - back, half, root, space.tilt_deg, help_)
    push = out + math.degrees(math.atan2(half, reach - back))
    if push < 0:
        raise NotDefined("the tooth pushes its nose out", help_)
    if out > MOST_OUT_DEG:
        raise NotDefined(f"its end would stand {out:.0f}° out of square, too thin to bear", help_)
    gap = space.open_deg - (90.0 - out)
    relief = max(0.0, CLEAR_DEG - gap)
    steps = (
        Step("end out of square", "angle at the corner − 90° − atan (half / reach)",
             f"{out:.1f}°", SEAT),
        Step("push inside the pin", "angle at the corner − 90°", f"{push:.1f}°", PUSH),
        Step("a square end seats with", "√(a² − (root + half)²)", mm(square), SEAT),
    )  # fmt: skip
    return PawlNose(out, back, gap + relief, relief, push, square, steps)


def _out(
    centres: float, reach: float, half: float, root: float, tilt_deg: float, help_: str
) -> float:
    arm = math.hypot(reach, half)
    if not abs(centres - root) < arm < centres + root:
        raise NotDefined("its end does not come to the foot of a tooth", help_)
    cosine = (arm**2 + root**2 - centres**2) / (2 * arm * root)
    return math.degrees(math.acos(cosine) - math.atan2(half, reach)) - 90.0 + tilt_deg


def square_reach(centres_mm: float, half_mm: float, root_mm: float, tilt_deg: float) -> float:
    """From pin to end where a square end lies on the face, in mm; 0 where none does.

    The face leans by `tilt_deg` from the radius at its foot. Source: Pythagoras.
    """
    tilt = math.radians(tilt_deg)
    high = half_mm + root_mm * math.cos(tilt)
    if high >= centres_mm:
        return 0.0
    return root_mm * math.sin(tilt) + math.sqrt(centres_mm**2 - high**2)
