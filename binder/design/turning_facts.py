"""Typed facts of the drive: how fast each body turns, what it takes, and what joins them."""

from __future__ import annotations

from dataclasses import dataclass

from binder.design.facts import Fact
from binder.spec.values import Size


@dataclass(frozen=True, slots=True)
class TurningFact(Fact):
    """A body that turns; the subject is its name. A figure for each setting of the train.

    `speeds` are in r/min, with a sign for the way round, None where nothing settles it;
    `torques` in N·mm are what has to be put in there, `powers` in W; both None without a load.
    `has_way` is False beyond gears whose shafts are not parallel.
    """

    title: str
    items: tuple[str, ...]
    speeds: tuple[float | None, ...]
    torques: tuple[float | None, ...]
    powers: tuple[float | None, ...]
    has_way: bool = True
    is_driven: bool = True


@dataclass(frozen=True, slots=True)
class Passed:
    """One drive of the train, from the body nearer to the mover to the next one.

    `ratios` are speed of the driven over that of the driver, one for each step of its own;
    `kept` is the share of the power that comes through.
    """

    joint: str
    kind: str
    driver: str
    driven: str
    ratios: tuple[float, ...]
    labels: tuple[str, ...]
    kept: float
    loss_words: str


@dataclass(frozen=True, slots=True)
class TrainFact(Fact):
    """The whole train; the subject is ''. `settings` name its combinations of steps.

    `order` are the bodies outwards from the mover; `movers` the joints that turn them, and
    `strength` the torque in N·mm that each mover gives, where it is told.
    """

    settings: tuple[str, ...]
    order: tuple[str, ...]
    passed: tuple[Passed, ...]
    movers: tuple[str, ...]
    mover_bodies: tuple[str, ...]
    strength: tuple[float | None, ...]
    is_relative: bool = False


@dataclass(frozen=True, slots=True)
class StepSizeFact(Fact):
    """The diameter of a step that its part leaves to suit, as a drive wants it.

    The subject is the part and its step; `number` counts the steps of `item` from nothing.
    """

    item: str
    number: int
    size: Size
    joint: str


@dataclass(frozen=True, slots=True)
class LoadFact(Fact):
    """What a body has to do; the subject is the joint. The torque is in N·mm on that body."""

    body: str
    torque: float | None
    power: float | None
    words: str


@dataclass(frozen=True, slots=True)
class LeaningFact(Fact):
    """Teeth of a part that are no straight ones on a cylinder; the subject is its name.

    `kind` is helical, bevel, worm or worm wheel; `count` are its teeth, of a worm its starts;
    `module` in mm is the normal one, of a bevel that at its large end, of a worm the axial one.
    The blank is turned to one of `outside` in mm; that of a bevel goes down to `inner` over
    `long` along its axis, which is the length of a worm's thread and the face of its wheel.
    `angle` in degrees is that of the helix or lead, of a bevel that of its root cone to the axis;
    `lead` in mm is for one turn; `seen` the teeth by which a form cutter is chosen; `inner_module`
    that of a bevel's small end; `depth` in mm is that of the cut, at the large end.
    """

    kind: str
    joint: str
    count: int
    module: float
    outside: tuple[float, ...]
    inner: float
    long: float
    angle: float
    lead: float
    seen: float
    depth: float
    inner_module: float = 0.0
    pressure: float = 20.0
    hand: str = ""
    is_dp: bool = False


@dataclass(frozen=True, slots=True)
class CordFact(Fact):
    """The cord of a drum as the model stands; the subject is the joint.

    `leaves` and `winds` say where it leaves the drum and which way drum and crank turn to wind,
    '' where nothing tells the hand. `is_hung` is a load that pulls back by itself. `tips_nmm` is
    what the load turns the model over with, about the edge of what stands, `holds_nmm` what its
    weight holds it down with; None where the load hangs within the edge or is not told.
    `pass_min` is what winding the whole height up and down again takes in minutes, 0 where no
    speed or height tells it; `load` is what hangs in it, as it is written, and
    `cut` how long the cord is cut. `travel_mm` is how far the load goes, 0 where that is not
    written, `room_mm` how far it can go over the bench, None where the places are not known, and
    `edge` the edge of what stands that it hangs past, '' where it hangs within; `past_mm` how far
    past it, and `stands_mm` how high over the bench what has that edge is.
    """

    leaves: str = ""
    winds: str = ""
    is_hung: bool = False
    tips_nmm: float | None = None
    holds_nmm: float | None = None
    pass_min: float = 0.0
    load: str = ""
    cut: str = ""
    travel_mm: float = 0.0
    room_mm: float | None = None
    edge: str = ""
    past_mm: float = 0.0
    stands_mm: float = 0.0
