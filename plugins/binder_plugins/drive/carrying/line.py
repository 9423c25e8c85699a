"""A body of the train to a line: its shaft, its bearings, and where all stands along it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from binder.api import Design, End, PlaceFact, TurningFact
from binder_plugins.drive.carrying.row import Row, row_of
from binder_plugins.drive.motion.reach import Ring, ring_of
from binder_plugins.drive.standing import Axis
from binder_solid.facts import FormFact
from binder_solid.forms import Frame
from binder_solid.placed import MotionFact, PlacedFact
from binder_solid.space import dot, minus, placed

_RUNS = ("runs_in", "swivels")
_NEAR_MM = 0.05
Reach = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Bush:
    """What the shaft runs in: from where to where in mm, and the diameter that runs in it.

    `metal` is the item whose metal bears: the bush, or a wheel that runs on a stud itself.
    """

    item: str
    joint: str
    low: float
    high: float
    across: float | None
    metal: str

    @property
    def middle(self) -> float:
        """Where it carries."""
        return (self.low + self.high) / 2


@dataclass(frozen=True, slots=True)
class Line:
    """A shaft with what stands on it, in mm from its left end.

    `steps` are (length, diameter) of the shaft; `frame` where it stands in the model, its x
    along the shaft, None where the places come from its row.
    """

    shaft: str
    steps: tuple[tuple[float, float], ...]
    bushes: tuple[Bush, ...]
    stands: Mapping[str, Reach]
    frame: Frame | None

    @property
    def is_bored(self) -> bool:
        """Whether it is a wheel that runs on a stud, and no shaft."""
        return any(one.metal == self.shaft for one in self.bushes)

    @property
    def long(self) -> float:
        """The length of the shaft."""
        return sum(length for length, _ in self.steps)


def line_of(body: TurningFact, design: Design) -> Line | str:
    """The shaft of a body, or why it is not known where things stand on it."""
    shaft = _shaft_of(body, design)
    if shaft is None:
        return "no part of it is said to run in a bearing"
    form = design.facts.about(FormFact, shaft)
    if form is None or not form.stretches:
        return "its form is not told"
    steps = _merged([(one.end - one.start, one.across) for one in form.stretches])
    row = row_of(shaft, design)
    copies = [one for one in design.facts.all(PlacedFact) if one.item == shaft]
    if len(copies) == 1:
        line = _as_placed(copies[0], steps, body, design)
        if line.bushes:
            return line
    if row is None:
        return "neither its place in the model nor a row under `shafts:` tells where things stand"
    return _by_row(shaft, row, steps, design)


def _shaft_of(body: TurningFact, design: Design) -> str | None:
    """The part of a body that runs in what carries it; its own name first."""
    running = [
        joint.ends[0].item
        for joint in design.joints.values()
        if joint.kind in _RUNS
        and joint.ends[0].item in body.items
        and any(end.item not in body.items for end in joint.ends)
    ]
    found = [one for one in running if one in design.parts]
    return body.subject if body.subject in found else next(iter(found), None)


def _merged(steps: list[tuple[float, float]]) -> tuple[tuple[float, float], ...]:
    """Steps of one diameter beside one another as one."""
    found: list[tuple[float, float]] = []
    for length, across in steps:
        if found and found[-1][1] == across:
            found[-1] = (found[-1][0] + length, across)
        elif length > 0:
            found.append((length, across))
    return tuple(found)


def _as_placed(
    shaft: PlacedFact,
    steps: tuple[tuple[float, float], ...],
    body: TurningFact,
    design: Design,
) -> Line:
    axis = Axis(shaft.frame.origin, shaft.frame.x)
    rings: dict[str, Ring] = {}
    for copy in design.facts.all(PlacedFact):
        if copy.item in body.items and copy.item != shaft.item:
            ring, known = ring_of(copy, axis), rings.get(copy.item)
            # Of a piece made twice, for two shafts, the copy that lies round this one.
            if known is None or ring.inside < known.inside:
                rings[copy.item] = ring
    stands = {item: (ring.low, ring.high) for item, ring in rings.items()}
    long = sum(length for length, _ in steps)
    stands[shaft.item] = (0.0, long)
    bushes = [one for one in _bushes(shaft, long, axis, design) if one.high > one.low]
    bushes.sort(key=lambda one: one.low)
    return Line(shaft.item, steps, tuple(bushes), stands, shaft.frame)


def _bushes(shaft: PlacedFact, long: float, axis: Axis, design: Design) -> Iterator[Bush]:
    """The copies that a joint lets the shaft turn in, so far as it reaches into them."""
    copies = {one.subject: one for one in design.facts.all(PlacedFact)}
    for motion in design.facts.all(MotionFact):
        joint = design.joints.get(motion.joint)
        if joint is None or motion.motion != "turn" or joint.kind not in _RUNS:
            continue
        others = [name for name in (motion.one, motion.other) if name != shaft.subject]
        ends = [end for end in joint.ends if end.item != shaft.item]
        if len(others) != 1 or others[0] not in copies or not ends:
            continue
        copy = copies[others[0]]
        low, high = _hole_reach(copy, ends[0], axis, design)
        metal = shaft.item if _is_bored(shaft.item, joint.ends, design) else copy.item
        across = _running(joint.ends, design)
        yield Bush(copy.item, joint.name, max(low, 0.0), min(high, long), across, metal)


def _is_bored(item: str, ends: tuple[End, ...], design: Design) -> bool:
    """Whether it runs by a hole of its own, on a stud that stands."""
    own = next((design.facts.about(PlaceFact, str(end)) for end in ends if end.item == item), None)
    return own is not None and own.form == "hole"


def _running(ends: tuple[End, ...], design: Design) -> float | None:
    """The diameter of the journal, else of the bore."""
    facts = [design.facts.about(PlaceFact, str(end)) for end in ends]
    known = [float(one.diameter) for one in facts if one is not None and one.diameter is not None]
    return known[0] if known else None


def _hole_reach(copy: PlacedFact, end: End, axis: Axis, design: Design) -> Reach:
    """From where to where along the axis the hole goes; the whole piece where that is not told."""
    ring = ring_of(copy, axis)
    place = design.facts.about(PlaceFact, str(end))
    deep = (place.depth or place.thickness) if place is not None else None
    form = design.facts.about(FormFact, copy.item)
    hole = next((one for one in form.located if one.name == end.place), None) if form else None
    if deep is None or hole is None or float(deep) > ring.high - ring.low - _NEAR_MM:
        return ring.low, ring.high
    if copy.is_opposite:  # its mouth is mirrored: the middle of the piece is as near as is known
        middle = (ring.low + ring.high) / 2
        return middle - float(deep) / 2, middle + float(deep) / 2
    inwards = (-hole.frame.z[0], -hole.frame.z[1], -hole.frame.z[2])
    mouth = hole.frame.origin
    ends = [
        mouth,
        (
            mouth[0] + inwards[0] * float(deep),
            mouth[1] + inwards[1] * float(deep),
            mouth[2] + inwards[2] * float(deep),
        ),
    ]
    along = [dot(minus(placed(one, copy.frame), axis.origin), axis.way) for one in ends]
    return min(along), max(along)


def _by_row(
    shaft: str, row: Row, steps: tuple[tuple[float, float], ...], design: Design
) -> Line | str:
    """All that the row tells; the shaft as thick throughout as its thinnest step that carries."""
    bushes = tuple(
        Bush(
            piece.item,
            piece.joint,
            low,
            high,
            _running(design.joints[piece.joint].ends, design),
            piece.item,
        )
        for piece, (low, high) in row.bearings
        if piece.joint in design.joints
    )
    if not bushes:
        return "nothing in its row carries it"
    thin = min((one.across for one in bushes if one.across), default=min(d for _, d in steps))
    long = max(row.long, sum(length for length, _ in steps))
    stands = {**row.stands, shaft: (0.0, long)}
    return Line(shaft, ((long, thin),), bushes, stands, None)
