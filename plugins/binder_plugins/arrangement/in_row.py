"""What comes apart along one axis, in the order in which it stands there when it is together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

from binder.api import Design, JointFact
from binder_plugins.arrangement.one_way_off import eased_off, pressed_off
from binder_solid.facts import FormFact
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.stands_at import corners_of

# What counts as beside one another and as thicker, in mm; a hair behind what it is fixed to.
_NEAR, _HAIR = 0.1, 1e-3
# How far apart pieces are drawn in mm at the least.
_GAP = 5.0
# The way to the viewer along each axis: an isometric picture is seen from the right, front and top.
_TO_VIEWER = (1, -1, 1)
_PARALLEL = 1 - 1e-6
Copies = Sequence[Sequence[PlacedFact]]


@dataclass(frozen=True, slots=True)
class Bit:
    """A copy of a unit on an axis: from `low` to `high` in mm, in order by `at`; its sides."""

    unit: int
    low: float
    high: float
    at: float
    sides: tuple[tuple[float, float], ...]
    is_rod: bool = False

    def is_over(self, other: Bit) -> bool:
        """Whether the two cover one another, seen along the axis."""
        return all(
            a[0] < b[1] - _NEAR and b[0] < a[1] - _NEAR
            for a, b in zip(self.sides, other.sides, strict=True)
        )

    @property
    def wide(self) -> float:
        """The narrower of its widths across the axis, in mm."""
        return min(high - low for low, high in self.sides)


@dataclass(frozen=True, slots=True)
class Pair:
    """One unit that stands before another on the axis; `least` is what parts them, in mm."""

    before: int
    after: int
    least: float
    is_plain: bool = True


def shifts(copies: Copies, axis: int, design: Design, part: float) -> dict[int, float]:
    """How far each unit goes along an axis of the model so that all keep their order, in mm.

    Two come as far apart as a `part` of how wide the narrower one is. The first unit stays; what
    is before and after it goes to either side. Nothing where the order runs in a ring, or no two
    stand one over the other.
    """
    pairs = pairs_of(copies, axis, design, part)
    early = _longest(pairs, len(copies))
    late = _longest([Pair(one.after, one.before, one.least) for one in pairs], len(copies))
    if not early or not late:
        return {}
    touched = {n for one in pairs for n in (one.before, one.after)}
    middle = [(a - b) / 2 for a, b in zip(early, late, strict=True)]
    return {n: middle[n] - middle[0] for n in touched}


def is_kept(pairs: Iterable[Pair], copies: Copies, moved: Sequence[Vector], axis: int) -> bool:
    """Whether no two that were moved apart have changed places on an axis.

    A rod may come out at either end, a bush at either face, and what stands in a frame on one
    side of it.
    """
    middles = [
        sum(sum(_span(one, axis)) / 2 for one in unit) / len(unit) + far[axis]
        for unit, far in zip(copies, moved, strict=True)
    ]
    return all(middles[one.after] >= middles[one.before] - _NEAR for one in pairs if one.is_plain)


def pairs_of(copies: Copies, axis: int, design: Design, part: float = 0.0) -> list[Pair]:
    """Which unit stands before which, of those that cover one another seen along the axis."""
    units = _bits(copies, axis, design)
    return [pair for a, b in combinations(units, 2) for pair in _pairs(a, b, axis, part)]


def _pairs(one: Sequence[Bit], other: Sequence[Bit], axis: int, part: float) -> Iterator[Pair]:
    met = [(a, b) for a in one for b in other if a.is_over(b)]
    if not met:
        return
    is_plain = not any(a.is_rod or b.is_rod or _nests(a, b) for a, b in met)
    signs = {_sign(a, b) for a, b in met}
    if len(signs) == 2:  # One of them stands round the other: that comes out to the viewer.
        is_round = _reach(one) >= _reach(other)
        signs = {_TO_VIEWER[axis] if is_round else -_TO_VIEWER[axis]}
        is_plain = False
    first_is_before = signs == {1}
    apart = [(a, b) if first_is_before else (b, a) for a, b in met]
    least = max(a.high - b.low + _GAP + part * min(a.wide, b.wide) for a, b in apart)
    yield Pair(apart[0][0].unit, apart[0][1].unit, least, is_plain)


def _nests(one: Bit, other: Bit) -> bool:
    """Whether the one reaches into the other along the axis, as a bush into its housing."""
    return min(one.high, other.high) - max(one.low, other.low) > _NEAR


def _sign(one: Bit, other: Bit) -> int:
    return 1 if one.at < other.at or (one.at == other.at and one.unit < other.unit) else -1


def _reach(unit: Sequence[Bit]) -> float:
    return max(one.high for one in unit) - min(one.low for one in unit)


def _longest(pairs: Sequence[Pair], count: int) -> list[float]:
    """The least way of each that keeps all pairs apart; [] where they run in a ring."""
    far = [0.0] * count
    for _ in range(count + 1):
        old = list(far)
        for one in pairs:
            far[one.after] = max(far[one.after], far[one.before] + one.least)
        if far == old:
            return far
    return []


def _bits(copies: Copies, axis: int, design: Design) -> list[list[Bit]]:
    """The copies of each unit; a rod stands in the order by its head, or what is fixed on it."""
    plain = [[_bit(number, one, axis) for one in unit] for number, unit in enumerate(copies)]
    known = {
        one.subject: bit
        for unit, bits in zip(copies, plain, strict=True)
        for one, bit in zip(unit, bits, strict=True)
    }
    there = {one.subject: one for unit in copies for one in unit}
    stood = {
        name: _as_rod(one, known[name], axis, known, there, design) for name, one in there.items()
    }
    return [[_as_pressed(one, axis, stood, there, design) for one in unit] for unit in copies]


def _bit(number: int, copy: PlacedFact, axis: int) -> Bit:
    low, high = _span(copy, axis)
    sides = tuple(_span(copy, n) for n in range(3) if n != axis)
    return Bit(number, low, high, (low + high) / 2, sides)


def _as_pressed(
    copy: PlacedFact,
    axis: int,
    stood: Mapping[str, Bit],
    there: Mapping[str, PlacedFact],
    design: Design,
) -> Bit:
    """A bush that is pressed in from one side alone stands on that side of what it is in."""
    bit, outer = stood[copy.subject], there.get(copy.onto)
    way = pressed_off(copy, outer, design) if outer is not None and copy.is_free else None
    if way is None or abs(way[axis]) < _PARALLEL:
        return bit
    return replace(bit, at=stood[copy.onto].at + way[axis] * _HAIR)


def _as_rod(
    copy: PlacedFact,
    bit: Bit,
    axis: int,
    known: Mapping[str, Bit],
    there: Mapping[str, PlacedFact],
    design: Design,
) -> Bit:
    form = design.facts.about(FormFact, copy.item)
    on_it = {
        name: other
        for name, other in known.items()
        if name != copy.subject and bit.is_over(other) and bit.low < other.at < bit.high
        and other.high - other.low < bit.high - bit.low
    }  # fmt: skip
    if form is None or not form.stretches or abs(copy.frame.x[axis]) < _PARALLEL or not on_it:
        return bit
    head = _head(copy, form, axis)
    fixed = [
        one.at for name, one in on_it.items() if _is_fixed(copy.item, there[name].item, design)
    ]
    out = _out([there[name] for name in on_it], copy, axis, design)
    if head is not None:
        at = head
    elif fixed:
        at = sum(fixed) / len(fixed) + _HAIR * (out or 1)
    elif (out or _TO_VIEWER[axis]) > 0:
        at = max(one.high for one in on_it.values())
    else:
        at = min(one.low for one in on_it.values())
    return Bit(bit.unit, bit.low, bit.high, at, bit.sides, is_rod=True)


def _out(on_it: Sequence[PlacedFact], rod: PlacedFact, axis: int, design: Design) -> int:
    """Which way along the axis, 1 or -1, a rod comes out of what it is eased for; 0 for either."""
    ways = [eased_off(one, rod, design) for one in on_it]
    signs = {-1 if way[axis] > 0 else 1 for way in ways if way is not None}
    return signs.pop() if len(signs) == 1 else 0


def _head(copy: PlacedFact, form: FormFact, axis: int) -> float | None:
    """The middle of a head in the model: of an end step that is thicker than all others."""
    if len(form.stretches) < 2:
        return None
    by_size = sorted(form.stretches, key=lambda one: one.across)
    thick = by_size[-1]
    is_end = thick in (form.stretches[0], form.stretches[-1])
    if not is_end or thick.across < by_size[-2].across + _NEAR:
        return None
    return copy.frame.origin[axis] + copy.frame.x[axis] * (thick.start + thick.end) / 2


def _is_fixed(one: str, other: str, design: Design) -> bool:
    """Whether two items are joined for good."""
    return any(
        {one, other} <= set(joint.items)
        and (said := design.facts.about(JointFact, joint.name)) is not None
        and said.is_lasting
        for joint in design.joints.values()
    )


def _span(copy: PlacedFact, axis: int) -> tuple[float, float]:
    along = [corner[axis] for corner in corners_of(copy)]
    return min(along), max(along)
