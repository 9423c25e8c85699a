"""An assembly to its parts moved apart, each along the way in which it comes off."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import combinations, product

from binder.api import Assembly, Design, ShaftFact
from binder_plugins.arrangement.coming_clear import way_clear
from binder_plugins.arrangement.in_row import is_kept, pairs_of, shifts
from binder_plugins.arrangement.one_way_off import way_off
from binder_plugins.arrangement.space import NOWHERE_AT, scaled
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed, plus
from binder_solid.views import flat

Box = tuple[Vector, Vector]
_GAP = 5.0
_STEP = 2.0
_MOST_STEPS = 400
_COVERED = 0.25
_PARALLEL, _TOUCHES = 1 - 1e-6, 1e-6
# What of a piece is behind another where it is not seen, and how far apart pieces in a row are
# drawn, in their widths, until none is: common practice, no source.
_BURIED, _PARTS = 0.97, (0.25, 0.5, 0.8, 1.2, 1.6)
_FARTHER = 0.45  # of its own length a part goes on to show what lies behind it


@dataclass
class Unit:
    """What is moved as one: a part, or a whole assembly that has a sheet of its own."""

    name: str
    copies: list[PlacedFact] = field(default_factory=list)
    moved: Vector = NOWHERE_AT
    onto: Unit | None = None

    @property
    def box(self) -> Box:
        """The box that it stands in when it is together."""
        corners = [
            placed((x, y, z), copy.frame)
            for copy in self.copies
            for (a, b, c), (d, e, f) in [copy.corners]
            for x in (a, d)
            for y in (b, e)
            for z in (c, f)
        ]
        least = (min(p[0] for p in corners), min(p[1] for p in corners), min(p[2] for p in corners))
        most = (max(p[0] for p in corners), max(p[1] for p in corners), max(p[2] for p in corners))
        return least, most


def units_of(one: Assembly, design: Design, copies: Sequence[PlacedFact]) -> list[Unit]:
    """The parts and inner assemblies of an assembly, in the order in which they were placed."""
    owner: dict[str, str] = {}
    for member in one.members:
        for item in _inside(member.item, design):
            owner[item] = member.item
    units: dict[str, Unit] = {}
    for copy in copies:
        member_name = owner.get(copy.item)
        if member_name is None:
            continue
        is_group = member_name in design.assemblies or member_name in design.fabrications
        key = member_name if is_group else copy.subject
        units.setdefault(key, Unit(member_name)).copies.append(copy)
    return list(units.values())


def _inside(name: str, design: Design) -> Iterator[str]:
    yield name
    if name in design.assemblies:
        for member in design.assemblies[name].members:
            yield from _inside(member.item, design)
    if name in design.fabrications:
        for piece in design.fabrications[name].pieces:
            yield from _inside(piece.item, design)


def explode(units: Sequence[Unit], design: Design) -> list[tuple[Vector, Vector]]:
    """Moves units apart in the order of fitting; gives the lines along which they went.

    Each goes with what it was put on, then on along its own way until the boxes are clear. Where
    that would turn round the order in which they stand along an axis, as of a wheel between two
    plates, all that come off along it stay in that order.
    """
    lines = _apart(units, {}, 0, design)
    before = [unit.moved for unit in units]
    for axis in range(3):
        inside = _along(units, axis, design)
        copies = [units[n].copies for n in inside]
        pairs = pairs_of(copies, axis, design)
        if is_kept(pairs, copies, [before[n] for n in inside], axis):
            continue
        for part in _PARTS:
            found = shifts(copies, axis, design, part)
            far = {id(units[inside[n]]): shift for n, shift in found.items()}
            new = _apart(units, far, axis, design)
            if far and _are_apart(units) and (part == _PARTS[-1] or not _is_buried(units)):
                return new
    for unit, moved in zip(units, before, strict=True):
        unit.moved = moved
    return lines


def _apart(
    units: Sequence[Unit], shifted: Mapping[int, float], axis: int, design: Design
) -> list[tuple[Vector, Vector]]:
    """One after the other; `shifted` tells how far along an axis a unit by its id goes in a row."""
    home = {copy.subject: unit for unit in units for copy in unit.copies}
    lines: list[tuple[Vector, Vector]] = []
    done: list[Unit] = []
    for unit in units:
        key = _held(unit, home)
        unit.onto = home[key.onto] if key is not None else (done[0] if done else None)
        if unit.onto is not None:
            start = unit.onto.moved
            if id(unit) in shifted:
                along = [*start]
                along[axis] = shifted[id(unit)]
                unit.moved = (along[0], along[1], along[2])
            else:
                way = _freed(_way(unit, unit.onto, key, design), unit, key)
                unit.moved = plus(start, way, _clear(unit, start, way, done))
            middle = _middle(unit.box)
            lines.append((plus(middle, start), plus(middle, unit.moved)))
        done.append(unit)
    return lines


def _along(units: Sequence[Unit], axis: int, design: Design) -> list[int]:
    """The first unit, those that come off along an axis, and those of a shaft's row along it."""
    home = {copy.subject: unit for unit in units for copy in unit.copies}
    there = {copy.item: copy for unit in units for copy in unit.copies}
    row = {
        piece.item
        for fact in design.facts.all(ShaftFact)
        if fact.subject in there and abs(there[fact.subject].frame.x[axis]) > _PARALLEL
        for piece in fact.pieces
    }
    found = [0]
    for number, unit in enumerate(units[1:], 1):
        key = _held(unit, home)
        is_off = key is not None and abs(key.way[axis]) > _PARALLEL
        if is_off or any(copy.item in row for copy in unit.copies):
            found.append(number)
    return found


def _are_apart(units: Sequence[Unit]) -> bool:
    """Whether no part of one unit stands in a part of another."""
    boxes = [
        [_shifted(Unit(unit.name, [copy]).box, unit.moved) for copy in unit.copies]
        for unit in units
    ]
    return not any(
        _overlap(a, b) for one, other in combinations(boxes, 2) for a in one for b in other
    )


def _is_buried(units: Sequence[Unit]) -> bool:
    """Whether one of them lies wholly behind another in the picture."""
    shown = [(_shifted(unit.box, unit.moved), unit) for unit in units]
    return any(
        _depth(there) > _depth(here) and _shared(here, there) > _BURIED * _area(_seen(here))
        for here, one in shown
        for there, other in shown
        if one is not other
    )


def _depth(box: Box) -> float:
    """How near the viewer its middle is: to the right, the front and up."""
    x, y, z = _middle(box)
    return x - y + z


def _overlap(one: Box, other: Box) -> bool:
    return all(
        a < d - _TOUCHES and c < b - _TOUCHES
        for a, b, c, d in zip(one[0], one[1], other[0], other[1], strict=True)
    )


def _held(unit: Unit, home: dict[str, Unit]) -> PlacedFact | None:
    """The copy by which a unit hangs on another."""
    for copy in unit.copies:
        other = home.get(copy.onto)
        if other is not None and other is not unit:
            return copy
    return None


def _way(unit: Unit, onto: Unit, key: PlacedFact | None, design: Design) -> Vector:
    apart = minus(_middle(unit.box), _middle(onto.box))
    if key is None:
        most = max(range(3), key=lambda n: (round(abs(apart[n]), 6), n))
        axis = [0.0, 0.0, 0.0]
        axis[most] = 1.0 if apart[most] >= 0 else -1.0
        return (axis[0], axis[1], axis[2])
    if key.is_free:
        told = next(one for one in onto.copies if one.subject == key.onto)
        one_way = way_off(key, told, design)
        if one_way is not None:
            return one_way
    if key.is_free and dot(apart, key.way) < -1e-6:
        return scaled(key.way, -1.0)
    return key.way


def _freed(way: Vector, unit: Unit, key: PlacedFact | None) -> Vector:
    """The way, or one that goes past what the unit straddles or hangs under."""
    if key is None or unit.onto is None:
        return way
    told = next(one for one in unit.onto.copies if one.subject == key.onto)
    own = [Unit(unit.name, [copy]).box for copy in unit.copies]
    return way_clear(way, own, Unit(unit.name, [told]).box)


def _middle(box: Box) -> Vector:
    return scaled(plus(box[0], box[1]), 0.5)


def _hides(one: Box, other: Box) -> bool:
    """Whether two boxes cover one another in the picture by more than a little."""
    return _shared(one, other) > _COVERED * min(_area(_seen(one)), _area(_seen(other)))


def _shared(one: Box, other: Box) -> float:
    """What the frames of two boxes have in common in the picture, in mm²."""
    here, there = _seen(one), _seen(other)
    across = min(here[2], there[2]) - max(here[0], there[0])
    down = min(here[3], there[3]) - max(here[1], there[1])
    return max(across, 0.0) * max(down, 0.0)


def _seen(box: Box) -> tuple[float, float, float, float]:
    (a, b, c), (e, f, g) = box
    corners = [flat(at, "isometric") for at in product((a, e), (b, f), (c, g))]
    us, vs = [c[0] for c in corners], [c[1] for c in corners]
    return min(us), min(vs), max(us), max(vs)


def _area(one: tuple[float, float, float, float]) -> float:
    return (one[2] - one[0]) * (one[3] - one[1])


def _clear(unit: Unit, start: Vector, way: Vector, done: Sequence[Unit]) -> float:
    """How far a unit goes until it stands clear of all that is there."""
    taken = [_shifted(other.box, other.moved) for other in done]
    own = unit.box

    def is_clear(far: float) -> bool:
        here = _shifted(own, plus(start, way, far))
        return not any(_meet(here, one) for one in taken)

    def is_seen(far: float) -> bool:
        here = _shifted(own, plus(start, way, far))
        return not any(_hides(here, one) for one in taken)

    least = _first(is_clear, 0.0)
    long = max(most - low for low, most in zip(*own, strict=True))
    wanted = min(_first(is_seen, 0.0), least + _FARTHER * long)
    return _first(is_clear, max(least, wanted))


def _first(is_right: Callable[[float], bool], start: float) -> float:
    """The first place from `start` on that is right; `start` where none is."""
    for step in range(_MOST_STEPS):
        if is_right(start + step * _STEP):
            return start + step * _STEP
    return start


def _shifted(box: Box, moved: Vector) -> Box:
    return plus(box[0], moved), plus(box[1], moved)


def _meet(one: Box, other: Box) -> bool:
    return all(
        a - _GAP < d and c - _GAP < b
        for a, b, c, d in zip(one[0], one[1], other[0], other[1], strict=True)
    )
