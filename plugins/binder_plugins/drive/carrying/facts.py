"""Facts of shafts: what each carries, how it bends, and what there is to set turning."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Fact
from binder_trade.explained import Step

if TYPE_CHECKING:
    from binder_trade.fits.bearings import Wear
    from binder_trade.shafting.critical import Critical


@dataclass(frozen=True, slots=True)
class Bearing:
    """What one bearing of a shaft carries: the worst load in N, and how far the shaft leans in it.

    `wear` is pressure and speed against its metal, None where the metal has no limits or its
    size is not told; `refusal` says that it is no speed for a bush. `clearance` is the least of
    its fit in mm, `lean` in rad, `long` in mm. A single long bush is two halves, each a bearing.
    """

    item: str
    title: str
    joint: str
    load: float
    lean: float
    long: float
    clearance: float | None
    wear: Wear | None
    refusal: str = ""
    is_half: bool = False


@dataclass(frozen=True, slots=True)
class Sag:
    """How far the shaft gives way under a piece (mm) and leans there (rad), and what is allowed.

    `lean_allowed` is None but for gears; `source` says where the limits come from.
    """

    item: str
    joint: str
    sag: float
    allowed: float
    lean: float
    lean_allowed: float | None
    source: str

    @property
    def use(self) -> float:
        """The part of what is allowed that is used: of the deflection or of the lean."""
        leans = self.lean / self.lean_allowed if self.lean_allowed else 0.0
        return max(self.sag / self.allowed, leans)


@dataclass(frozen=True, slots=True)
class Taken:
    """A thrust in N along a shaft: 1 to its right end, -1 to its left, by which drives.

    `by_what` stops the shaft that way: '' for nothing, None where that is not known.
    """

    size: float
    way: int
    joints: tuple[str, ...]
    by_what: str | None


@dataclass(frozen=True, slots=True)
class CarriedFact(Fact):
    """A shaft of the train under its worst setting; the subject is its body.

    `is_placed` tells that things stand in the model and not in a row alone, `basis` what the
    pulls are reckoned from, `missing` what is left out. Without `bearings` the `refusal` says
    why. `stress` is the greatest shear in N/mm², `fastest` in r/min.
    """

    title: str
    shaft: str
    is_placed: bool = False
    basis: str = ""
    bearings: tuple[Bearing, ...] = ()
    sags: tuple[Sag, ...] = ()
    stress: float = 0.0
    least_mm: float = 0.0
    fastest: float = 0.0
    whirl: Critical | None = None
    missing: tuple[str, ...] = ()
    refusal: str = ""
    steps: tuple[Step, ...] = ()
    thrusts: tuple[Taken, ...] = ()


@dataclass(frozen=True, slots=True)
class Heavy:
    """A body of the train as a flywheel: its own inertia, and what is felt of it at the mover.

    kg·mm²; `felt` has a figure for each setting, as has `all_here`: the whole train as felt at
    this body, None where it stands. `missing` are pieces that are not weighed.
    """

    body: str
    title: str
    own: float
    felt: tuple[float, ...]
    missing: tuple[str, ...]
    all_here: tuple[float | None, ...] = ()


@dataclass(frozen=True, slots=True)
class InertiaFact(Fact):
    """All that a train sets turning; the subject is ''. `mover` is the body that it is felt at.

    `run_up` is the time in s in which the mover brings it to speed at each setting, None where
    no torque is told or none is left over; `left_nmm` the torque that is left over for it.
    """

    mover: str
    title: str
    bodies: tuple[Heavy, ...]
    loads: tuple[tuple[str, tuple[float, ...]], ...]
    total: tuple[float, ...]
    left_nmm: tuple[float | None, ...]
    run_up: tuple[float | None, ...]
    steps: tuple[Step, ...] = ()
