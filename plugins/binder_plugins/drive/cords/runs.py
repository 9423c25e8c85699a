"""A drum, its sheaves and the dead end to the straight runs of the cord between them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import copysign, dist, hypot, sqrt

from binder.api import Design, Joint
from binder_plugins.drive.standing import Axis
from binder_plugins.drive.train.strength import drum_radius, rope_of
from binder_solid.facts import FormFact
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, length, minus, placed, plus, unit

_PARALLEL = 1e-6
_DOWN: Vector = (0.0, 0.0, -1.0)
_NEAR_MM = 1e-6
Flat = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Round:
    """What the cord goes round: its copy, and the radius to the middle of the cord in mm.

    A dead end is a round of no radius. `reach` is from where to where the cord may lie along
    the axis.
    """

    copy: PlacedFact
    middle: Vector
    radius: float
    reach: tuple[float, float]


@dataclass(frozen=True, slots=True)
class Run:
    """A straight run of the cord, as it may lie; the ends are in the model, in mm.

    `rounds` are what it runs between.
    """

    rounds: tuple[Round, Round]
    lines: tuple[tuple[Vector, Vector], ...]


def runs_of(joint: Joint, design: Design) -> tuple[Run, ...]:
    """The runs from the drum to the dead end; none where a sheave lies askew or is not placed.

    A drum that a ratchet holds winds the way that the pawl lets it; any other is taken to wind
    so that the cord does not cross over.
    """
    axis = drum_axis(joint, design)
    rounds = _rounds(joint, axis, design) if axis is not None else ()
    if axis is None or len(rounds) < 2:
        return ()
    across = _across(axis.way)
    flat = [_flat(one.middle, across) for one in rounds]
    # Past a last sheave the line hangs straight down.
    hangs = [_flat(plus(rounds[-1].middle, _DOWN), across)] if rounds[-1].radius else []
    senses = _senses([*flat, *hangs], winding(joint, design), axis)
    made = []
    for n, (one, other) in enumerate(pairwise(rounds)):
        touch = _tangent(flat[n], senses[n] * one.radius, flat[n + 1],
                         senses[n + 1] * other.radius)  # fmt: skip
        if touch is not None:
            made.append(Run((one, other), tuple(_lines(one, other, touch, across, axis))))
    return tuple(made)


def drum_axis(joint: Joint, design: Design) -> Axis | None:
    """The axis of the drum as it stands."""
    for one in design.facts.all(PlacedFact):
        if one.item == joint.ends[0].item:
            return Axis(one.frame.origin, one.frame.x)
    return None


def winding(joint: Joint, design: Design) -> Vector | None:
    """The axis about which the drum turns, right-handed, as it winds; None where no pawl tells it.

    The stopping faces look clockwise from the wheel's own right (`RATCHET_HAND`), and stop it
    that way: it winds the other.
    """
    from binder_plugins.drive.judging.running import turning_of

    body = turning_of(joint.ends[0].item, design)
    wheels = {one.ends[0].item for one in design.joints.values() if one.kind == "ratchets"}
    for one in design.facts.all(PlacedFact):
        form = design.facts.about(FormFact, one.item)
        is_held = body is not None and one.item in body.items and one.item in wheels
        if is_held and form is not None and form.shape == "ratchet":
            return one.frame.x
    return None


def _rounds(joint: Joint, axis: Axis, design: Design) -> tuple[Round, ...]:
    radius = drum_radius(joint, design)
    copies = [one for one in design.facts.all(PlacedFact) if one.item == joint.ends[0].item]
    if radius is None or not copies:
        return ()
    rope = rope_of(joint, design)
    low, high = _stretch(copies[0], joint.ends[0].place, design)
    inset = min(rope / 2, (high - low) / 2)
    middle = placed(((low + high) / 2, 0.0, 0.0), copies[0].frame)
    rounds = [Round(copies[0], middle, radius, (low + inset, high - inset))]
    for name in [str(one) for one in getattr(joint.entry, "over", None) or ()]:
        copy = _nearest(name, rounds[-1].middle, design)
        if copy is None or abs(abs(dot(copy.frame.x, axis.way)) - 1) > _PARALLEL:
            return ()
        rounds.append(Round(copy, _middle(copy), _path(copy, rope, design), (0.0, 0.0)))
    end = getattr(joint.entry, "dead_end", None)
    last = _nearest(str(end), rounds[-1].middle, design) if end is not None else None
    if last is not None:
        rounds.append(Round(last, _middle(last), 0.0, (0.0, 0.0)))
    return tuple(rounds)


def _stretch(copy: PlacedFact, place: str, design: Design) -> tuple[float, float]:
    form = design.facts.about(FormFact, copy.item)
    steps = form.stretches if form is not None else ()
    found = next(((one.start, one.end) for one in steps if one.name == place), None)
    return found or (copy.corners[0][0], copy.corners[1][0])


def _path(copy: PlacedFact, rope: float, design: Design) -> float:
    """From the axis of a sheave to the middle of the cord, in the ground of its groove."""
    form = design.facts.about(FormFact, copy.item)
    if form is None:
        return 0.0
    rim = max((one.across for one in form.stretches), default=min(form.size[1:])) / 2
    deep = max((one.depth or 0.0 for one in form.located if one.kind == "grooved"), default=0.0)
    return rim - deep + rope / 2


def _nearest(name: str, to: Vector, design: Design) -> PlacedFact | None:
    found = [one for one in design.facts.all(PlacedFact) if one.item == name]
    return min(found, key=lambda one: dist(_middle(one), to), default=None)


def _middle(one: PlacedFact) -> Vector:
    (a, b, c), (d, e, f) = one.corners
    return placed(((a + d) / 2, (b + e) / 2, (c + f) / 2), one.frame)


def _across(way: Vector) -> tuple[Vector, Vector]:
    """Two directions square to the axis, so that a turn from one to the other is right-handed."""
    least = min(range(3), key=lambda n: (abs(way[n]), n))
    other = tuple(1.0 if n == least else 0.0 for n in range(3))
    first = unit(cross((other[0], other[1], other[2]), way))
    return first, cross(way, first)


def _flat(point: Vector, across: tuple[Vector, Vector]) -> Flat:
    return dot(point, across[0]), dot(point, across[1])


def _senses(flat: Sequence[Flat], winds: Vector | None, axis: Axis) -> list[float]:
    """Which way round the cord goes, followed from the drum: 1 right-handed about the axis."""
    found = [0.0]
    for a, b, c in zip(flat, flat[1:], flat[2:], strict=False):
        turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])
        found.append(copysign(1.0, turn) if abs(turn) > _NEAR_MM else found[-1])
    found.append(found[-1])
    first = found[1] or 1.0
    found[0] = first if winds is None else -copysign(1.0, dot(winds, axis.way))
    return [one or first for one in found]


def _tangent(a: Flat, turn_a: float, b: Flat, turn_b: float) -> tuple[Flat, Flat] | None:
    """Where the cord leaves one round and comes to the next; radii with the sign of their turn.

    The normal n of the line holds n·(b − a) = turn_b − turn_a, and the cord goes along it
    turned a right angle back.
    """
    way = (b[0] - a[0], b[1] - a[1])
    apart = hypot(*way)
    if apart <= abs(turn_b - turn_a) + _NEAR_MM:
        return None
    lean = (turn_b - turn_a) / apart
    rest = sqrt(1 - lean * lean)
    along = (way[0] / apart, way[1] / apart)
    normal = (lean * along[0] - rest * along[1], lean * along[1] + rest * along[0])
    return (
        (a[0] - turn_a * normal[0], a[1] - turn_a * normal[1]),
        (b[0] - turn_b * normal[0], b[1] - turn_b * normal[1]),
    )


def _lines(
    one: Round, other: Round, touch: tuple[Flat, Flat], across: tuple[Vector, Vector], axis: Axis
) -> list[tuple[Vector, Vector]]:
    """The run from either end of a drum, and from its middle; one line between sheaves."""
    spots = sorted({one.reach[0], sum(one.reach) / 2, one.reach[1]})
    starts = [
        dot(placed((at, 0.0, 0.0), one.copy.frame), axis.way) if len(spots) > 1
        else dot(one.middle, axis.way)
        for at in spots
    ]  # fmt: skip
    end = _lifted(touch[1], dot(other.middle, axis.way), across, axis)
    return [(_lifted(touch[0], at, across, axis), end) for at in starts]


def _lifted(flat: Flat, along: float, across: tuple[Vector, Vector], axis: Axis) -> Vector:
    point = plus(plus((0.0, 0.0, 0.0), across[0], flat[0]), across[1], flat[1])
    return plus(point, axis.way, along)


def off_axis(point: Vector, axis: Axis) -> Vector:
    """The way from an axis to a point, square to it, of length 1."""
    arm = minus(point, axis.origin)
    aside = plus(arm, axis.way, -dot(arm, axis.way))
    return unit(aside) if length(aside) > _NEAR_MM else aside
