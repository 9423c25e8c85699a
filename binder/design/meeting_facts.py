"""Typed facts of where parts meet: places, halves of joints, fits, threads and hardware."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import dropwhile, takewhile

from binder.design.facts import Fact
from binder.diagnostics import NOWHERE, Span
from binder.units import ThreadName


@dataclass(frozen=True, slots=True)
class JointFact(Fact):
    """How a joint reads and is done: `phrase` says what meets, `step` what is done.

    A lasting joint cannot be taken apart; a hot one brings a flame to its parts; in a
    fitted one a half is made to the measured size of the other.
    """

    phrase: str
    step: str
    group: str
    is_lasting: bool = False
    is_hot: bool = False
    is_fitted: bool = False


Stack = tuple[tuple[Fraction, Fraction], ...]


def metal_at(radius: Fraction, stack: Stack) -> Fraction | None:
    """The metal along a hole so far from the axis of turned work, in mm.

    `stack` is how wide and how long each section is that the drill meets. Narrower ones before
    the first that is wide enough are air; None where none reaches so far out.
    """
    within = list(dropwhile(lambda one: one[0] <= 2 * radius, stack))
    run = takewhile(lambda one: one[0] > 2 * radius, within)
    return sum((length for _, length in run), Fraction(0)) if within else None


@dataclass(frozen=True, slots=True)
class PlaceFact(Fact):
    """What is known of a place of an item; the subject is `item.place`, or `item` alone.

    `form` is face, step, hole, thread, bore of a bought item (`size`) or the item as a
    whole (`whole`). Lengths are exact mm and None where they are not known: `diameter` of
    a step, hole or thread; `thickness`, the metal along the axis of a hole made here;
    `depth` of a hole (None where through); `length` and `width` of a face, or the length of
    a step, which `start` places along the axis; `recess`, how deep a counterbore lets a head
    in; `stack`, for turned work, the sections below a face or step, from it inwards: how wide
    and how long each is. `kind` is that of the feature
    (reamed, tapped ...), `on` the step or face that it stands on; `count` how many alike on
    one item. A hole that is `is_to_suit` gets its size from its joint; `is_bought_rod` is
    an outside that is left as the drawn rod came.
    """

    item: str
    place: str
    form: str
    diameter: Fraction | None = None
    thickness: Fraction | None = None
    depth: Fraction | None = None
    length: Fraction | None = None
    width: Fraction | None = None
    recess: Fraction | None = None
    start: Fraction | None = None
    stack: Stack = ()
    is_through: bool = False
    is_round: bool = True
    is_bought_rod: bool = False
    is_to_suit: bool = False
    thread: ThreadName | None = None
    kind: str = ""
    on: str = ""
    across: str = ""
    count: int = 1
    pattern: str = ""
    at: Span = NOWHERE


@dataclass(frozen=True, slots=True)
class HalfFact(Fact):
    """One half of a joint as its part's leaf prints it; the subject is `joint: item.place`.

    `what` is the size and its limits (`ream ⌀6 H7, 6.000 to 6.012`), `mate` the other half,
    `how` the way it is made. `lower` and `upper` are sizes in mm where there are limits. Of a
    half that is made to its measured mate they are the sizes at which it may be aimed, and
    `suits` is what counts: the least and most that is added to the mate as measured, in mm. `over`
    is what is read over, or where the half `is_inside` between, two pins as thick as `pin`, in mm.
    `eased` is what is done to its corners by hand once it is cut. `gauged` is what tells it where
    that is no matter of its limits alone, as at the bottom of a narrow groove; `fed` how it is
    cut to size where nothing reads it.
    """

    joint: str
    item: str
    place: str
    what: str
    mate: str
    how: str
    is_master: bool = False
    lower: float | None = None
    upper: float | None = None
    suits: tuple[float, float] | None = None
    over: float | None = None
    pin: float | None = None
    is_inside: bool = False
    eased: str = ""
    gauged: str = ""
    fed: str = ""

    @property
    def is_eased(self) -> bool:
        """Whether it stays as the bar was bought, unless its measured mate is tight on it."""
        return "as bought" in self.what and self.how.startswith("eased")

    @property
    def judged(self) -> tuple[float, float] | None:
        """The limits that a gauge must tell, in mm; of a half made to its mate, about its aim."""
        if self.lower is None or self.upper is None:
            return None
        if self.suits is None:
            return self.lower, self.upper
        middle, half = (self.lower + self.upper) / 2, (self.suits[1] - self.suits[0]) / 2
        return middle - half, middle + half

    @property
    def largest(self) -> float | None:
        """The most that it may come out at, in mm, its mate at its largest; None without limits."""
        if self.upper is None or self.suits is None:
            return self.upper
        return self.upper + (self.suits[1] - self.suits[0]) / 2


@dataclass(frozen=True, slots=True)
class RoundBottomFact(Fact):
    """A groove whose bottom is half round, as wide as it is; the subject is `item.feature`."""


@dataclass(frozen=True, slots=True)
class AsideFact(Fact):
    """Holes that a joint taps through a wall beside it; the subject is that of their half.

    `place` is that of the half on the leaf, `along` where they stand and `below` how far under
    the face; `drill` is the name of the tapping drill. Lengths are in mm; `major` is the thread's
    outside, `wall` the metal that they go through on their axis, `tapped` what of it is threaded,
    from its outside; the drill must go `leans` deeper where the far side of the wall leans.
    `slot` is the feature whose middle they stand about, '' where nothing tells that; `side` the
    face of the part from which they are drilled, '' where it is not known.
    """

    item: str
    place: str
    thread: str
    major: float
    drill: str
    drill_mm: float
    wall: float
    tapped: float
    along: tuple[float, ...]
    below: float
    how: str
    leans: float = 0.0
    slot: str = ""
    side: str = ""


@dataclass(frozen=True, slots=True)
class OffMiddleFact(Fact):
    """What sits in a place stands off its middle; the subject is the place, `bed.way`.

    `off` is how far, in mm along the axes of the part that has the place.
    """

    off: tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class TogetherFact(Fact):
    """Work on parts that are put together for it; the subject is the id of its task.

    `how` is what is done (pressed, reamed in line, drilled together, set in mesh ...) and
    `joints` are those that it serves. Each of `lines` is a row of places, as `item.place`,
    that one tool goes through; the places in `left` get their size in this task and not on
    their own leaf. `up` says how the parts are held, `note` what else the maker must know.
    `held` are the joints that hold them up meanwhile, `items` all that stands in it, where
    that is not just what the joints join.
    """

    how: str
    joints: tuple[str, ...]
    lines: tuple[tuple[str, ...], ...] = ()
    left: tuple[str, ...] = ()
    up: str = ""
    note: str = ""
    held: tuple[str, ...] = ()
    items: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class FitFact(Fact):
    """The fit of a joint: classes, deviations and clearances in µm from a nominal in mm.

    A class is '' where that half is as bought or made to suit; negative clearance is
    interference. `suit` is the half that is made to the measured size of the other, and
    `wanted_um` the clearance to aim at then. `eased_um` are the least and most clearance of a rod
    as bought that is polished where it is thicker than that, None of all others; `suited_um` are
    those of a half that is made to its measured mate, whatever that came out at.
    """

    nominal: Fraction
    says: str
    hole: str
    shaft: str
    hole_class: str
    shaft_class: str
    hole_upper_um: float
    hole_lower_um: float
    shaft_upper_um: float
    shaft_lower_um: float
    suit: str = ""
    wanted_um: float = 0.0
    why: str = ""
    source: str = ""
    eased_um: tuple[float, float] | None = None
    suited_um: tuple[float, float] | None = None

    @property
    def clearance_max_um(self) -> float:
        """The loosest that the limits allow."""
        if (kept := self.eased_um or self.suited_um) is not None:
            return kept[1]
        return self.hole_upper_um - self.shaft_lower_um

    @property
    def clearance_min_um(self) -> float:
        """The tightest; negative is interference."""
        if (kept := self.eased_um or self.suited_um) is not None:
            return kept[0]
        return self.hole_lower_um - self.shaft_upper_um


@dataclass(frozen=True, slots=True)
class ThreadFact(Fact):
    """A thread of the model; the subject is `item.place`.

    Diameters and depths are in mm; `drill` is the tapping drill by name, '' for an outside
    thread; `percent` the depth of thread that it gives, with its basis in words.
    """

    item: str
    place: str
    designation: str
    is_internal: bool
    major: float
    effective: float
    pitch: float
    drill: str = ""
    drill_mm: float = 0.0
    percent: str = ""
    full_depth: Fraction | None = None
    drill_depth: float | None = None
    turn_to: float | None = None
    over_wires: str = ""
    count: int = 1
    note: str = ""


@dataclass(frozen=True, slots=True)
class LayerFact(Fact):
    """What lies between two parts and is clamped with them; the subject is its joint.

    `thickness` is in mm as it stays when it is pulled down, `what` what it is.
    """

    items: tuple[str, ...]
    what: str
    thickness: float


@dataclass(frozen=True, slots=True)
class HardwareFact(Fact):
    """Bought hardware that a joint needs; the subject is the joint and the item's name.

    `name` is the name of the bought item, `what` its designation; `count` for one model.
    Lengths are in mm: what is gripped, and what engages. `kept` says what keeps it in, where
    the maker sees to that when the joint is closed. What `is_made` here is not bought.
    """

    joint: str
    name: str
    what: str
    count: int
    length: float | None = None
    grip: float | None = None
    engagement: float | None = None
    why: str = ""
    spares: int = 0
    kept: str = ""
    is_made: bool = False
