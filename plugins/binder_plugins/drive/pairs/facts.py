"""Facts of pairs: gears as they are cut, how they mesh, and belts as they run."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Fact

if TYPE_CHECKING:
    from binder_trade.belts.run import Run
    from binder_trade.gears.form_cutters import FormCutter
    from binder_trade.gears.gear import Blank, Gear
    from binder_trade.gears.identify import Identified
    from binder_trade.gears.measuring import Pins, Span
    from binder_trade.gears.pair import Mesh


@dataclass(frozen=True, slots=True)
class ToothFact(Fact):
    """The teeth of an item; the subject is its name. `joint` is the drive that asks for them.

    What cannot be told of it (a span over too few teeth, a cutter for inside teeth) is None.
    `dividing` says how it is indexed here.
    """

    joint: str
    gear: Gear
    blank: Blank | None
    cutter: FormCutter | None
    span: Span | None
    pins: Pins | None
    dividing: str
    refusal: str = ""
    way_out: str = ""


@dataclass(frozen=True, slots=True)
class FoundFact(Fact):
    """A gear of the scrap box that a drive names, and what it may be; the subject is its name.

    `mate` is the number of teeth of the gear beside it, 0 where it is not told; `told` the
    module in mm that the drive or a part says by itself, None where this gear decides it.
    """

    joint: str
    teeth: int
    outside: float
    mate: int
    told: float | None
    identified: Identified | None
    refusal: str = ""
    way_out: str = ""


@dataclass(frozen=True, slots=True)
class MeshFact(Fact):
    """Two gears in mesh; the subject is the joint and its number.

    `frame` is the distance in mm that the parts have between the axes, None where they do not
    tell; `wanted` what the teeth want, with their backlash.
    """

    joint: str
    pinion: str
    wheel: str
    mesh: Mesh | None
    wanted: float
    frame: float | None
    refusal: str = ""


@dataclass(frozen=True, slots=True)
class BeltFact(Fact):
    """A belt as it runs on each of its steps; the subject is the joint. Lengths are in mm.

    `free` is what a stretching belt is cut to, None for one that does not stretch; `suited`
    are the diameters of the driven pulley that would keep one belt for all steps. `placed` is
    how far the shafts stand apart in the model, None where that is not known.
    """

    belt: str
    section: float
    centres: float
    runs: tuple[Run, ...]
    apart: float
    free: float | None
    suited: tuple[float, ...]
    refusal: str = ""
    way_out: str = ""
    placed: float | None = None
