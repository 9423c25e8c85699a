"""An assembly to its parts moved apart, each along the way in which it comes off."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import product

from binder.api import Assembly, Design
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


def explode(units: Sequence[Unit]) -> list[tuple[Vector, Vector]]:
    """Moves units apart in the order of fitting; gives the lines along which they went.

    Each goes with what it was put on, then on along its own way until the boxes are clear.
    """
    home = {copy.subject: unit for unit in units for copy in unit.copies}
    lines: list[tuple[Vector, Vector]] = []
    done: list[Unit] = []
    for unit in units:
        key = _held(unit, home)
        unit.onto = home[key.onto] if key is not None else (done[0] if done else None)
        if unit.onto is not None:
            way = _way(unit, unit.onto, key)
            start = unit.onto.moved
            far = _clear(unit, start, way, done)
            unit.moved = plus(start, way, far)
            middle = _middle(unit.box)
            lines.append((plus(middle, start), plus(middle, unit.moved)))
        done.append(unit)
    return lines


def _held(unit: Unit, home: dict[str, Unit]) -> PlacedFact | None:
    """The copy by which a unit hangs on another."""
    for copy in unit.copies:
        other = home.get(copy.onto)
        if other is not None and other is not unit:
            return copy
    return None


def _way(unit: Unit, onto: Unit, key: PlacedFact | None) -> Vector:
    apart = minus(_middle(unit.box), _middle(onto.box))
    if key is None:
        most = max(range(3), key=lambda n: (round(abs(apart[n]), 6), n))
        axis = [0.0, 0.0, 0.0]
        axis[most] = 1.0 if apart[most] >= 0 else -1.0
        return (axis[0], axis[1], axis[2])
    if key.is_free and dot(apart, key.way) < -1e-6:
        return scaled(key.way, -1.0)
    return key.way


def _middle(box: Box) -> Vector:
    return scaled(plus(box[0], box[1]), 0.5)


def _hides(one: Box, other: Box) -> bool:
    """Whether two boxes cover one another in the picture by more than a little."""
    here, there = _seen(one), _seen(other)
    across = min(here[2], there[2]) - max(here[0], there[0])
    down = min(here[3], there[3]) - max(here[1], there[1])
    if across <= 0 or down <= 0:
        return False
    least = min(_area(here), _area(there))
    return across * down > _COVERED * least


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
