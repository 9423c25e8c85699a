"""A master half that was measured to the size that its mate is made to."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from binder_trade.explained import NotDefined, Step, positive, within
from binder_trade.fits.printed import SUM, micrometres, millimetres

Half = Literal["hole", "shaft"]
_MOST_UM = 1e6


@dataclass(frozen=True, slots=True)
class Target:
    """What the mate is made to: the size in mm, least and most that still fit, and the sum.

    `says` is the line for the page, with the master as a blank: `bore measured ____ − 0.025 =`.
    """

    makes: Half
    target_mm: float
    least_mm: float
    most_mm: float
    says: str
    steps: tuple[Step, ...]


def wanted_um(clearance_min_um: float, clearance_max_um: float) -> float:
    """The clearance to aim at in µm: the middle of least and most; raises NotDefined."""
    least = within(clearance_min_um, -_MOST_UM, _MOST_UM, "the least clearance")
    return (least + within(clearance_max_um, -_MOST_UM, _MOST_UM, "the greatest clearance")) / 2


def target_mm(
    measured_mm: float, master: str, clearance_min_um: float, clearance_max_um: float
) -> Target:
    """The mate of a measured master (`hole` or `shaft`), both in mm, by clearances in µm.

    Interference is a clearance below nothing. The target takes the middle clearance; any size
    between least and most fits. Raises NotDefined. Source: clearance = hole − shaft, ISO 286-1.
    """
    measured = positive(measured_mm, "the measured size")
    if master not in ("hole", "shaft"):
        raise NotDefined("the master is the hole or the shaft", "name the half that was measured")
    aim = wanted_um(clearance_min_um, clearance_max_um)
    tight, loose = sorted((clearance_min_um, clearance_max_um))
    sign = -1 if master == "hole" else 1
    sizes = sorted(measured + sign * each / 1000 for each in (tight, loose))
    target = measured + sign * aim / 1000
    if sizes[0] <= 0:
        raise NotDefined("that leaves no mate at all", "look at the unit of the clearance")
    makes: Half = "shaft" if master == "hole" else "hole"
    steps = (
        Step("aim", "middle of least and most", micrometres(aim), "ISO 286-1"),
        Step("target", _sum(master, aim), millimetres(target), SUM),
        Step("fits from", "loosest to tightest", " to ".join(map(millimetres, sizes)), SUM),
    )
    return Target(makes, target, sizes[0], sizes[1], says(master, aim), steps)


def says(master: str, aim_um: float) -> str:
    """The sum as it is printed, with blanks: `bore measured ____ − 0.025 = turn to ____ mm`."""
    measured = "bore" if master == "hole" else "shaft"
    verb = "turn to" if master == "hole" else "bore to"
    return f"{measured} measured ____ {_signed(master, aim_um)} = {verb} ____ mm"


def _sum(master: str, aim_um: float) -> str:
    return f"measured {master} {_signed(master, aim_um)}"


def _signed(master: str, aim_um: float) -> str:
    """The clearance with the sign that it has in the sum of this master."""
    added = -aim_um if master == "hole" else aim_um
    return f"{'+' if added >= 0 else '−'} {abs(added) / 1000:.3f}"
