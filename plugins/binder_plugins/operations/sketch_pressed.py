"""The sketch of a bush that is pressed in: what lies at the jaw, which of its ends goes first."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import DrawnBox, DrawnShape, JointFact, Line, Stroke
from binder_plugins.operations.sketch import HEIGHT
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed
from binder_solid.stands_at import corners_of, fixed_pair
from binder_solid.way_round import coming_out

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Design, Joint
    from binder_solid.forms import Vector

# In mm on the paper: the jaw, the pad, and a floor that is seen at any scale.
_TINT, _DARK, _JAW, _PAD, _FLOOR = 0.14, 0.4, 6.0, 1.0, 0.6
# Room in mm for the two parts side by side, and for the widest of what is fixed on the housing.
_TALL, _WIDE, _ALL = 7.0, 16.0, HEIGHT - 0.8
_ALONG = 0.999
_BORES = frozenset({"bored", "reamed", "drilled"})
# Width across the bore and length along it, in mm.
Size = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Fixed:
    """A part that is on the housing already: from where to where off its jaw's end, its width."""

    item: str
    low: float
    high: float
    wide: float


def fixed_before(joint: Joint, design: Design) -> list[Fixed]:
    """What a flame has fixed on the housing: it was there before, a bush would come loose in it."""
    pair = fixed_pair(joint, design)
    if pair is None:
        return []
    outer = next((one for one in pair if one.item == joint.ends[1].item), None)
    others = [
        item
        for one in design.joints.values()
        if outer is not None
        and outer.item in one.items
        and (said := design.facts.about(JointFact, one.name)) is not None
        and said.is_hot
        for item in one.items
        if item != outer.item
    ]
    copies = [one for one in design.facts.all(PlacedFact) if one.item in others]
    if outer is None or not copies:
        return []
    out = coming_out(joint, joint.ends[0].item, design) or _away(copies[0], outer, pair[0].frame.x)
    base = min(dot(spot, out) for spot in corners_of(outer))
    return [_fixed(one, out, base) for one in copies]


def _away(copy: PlacedFact, outer: PlacedFact, axis: Vector) -> Vector:
    """Along an axis from what is fixed: what goes in either way comes from the other side."""
    middles = [sum(dot(spot, axis) for spot in corners_of(one)) for one in (copy, outer)]
    return axis if middles[0] <= middles[1] else minus((0.0, 0.0, 0.0), axis)


def _fixed(copy: PlacedFact, out: Vector, base: float) -> Fixed:
    along = [dot(spot, out) - base for spot in corners_of(copy)]
    sizes = [
        high - low
        for n, (low, high) in enumerate(zip(*copy.corners, strict=True))
        if abs(dot(_axis(copy, n), out)) < 1 - _ALONG
    ]
    return Fixed(copy.item, min(along), max(along), min(sizes, default=0.0))


def _axis(copy: PlacedFact, n: int) -> Vector:
    unit = [0.0, 0.0, 0.0]
    unit[n] = 1.0
    return minus(placed((unit[0], unit[1], unit[2]), copy.frame), copy.frame.origin)


def floor_first(joint: Joint, design: Design) -> bool | None:
    """Whether the closed end of the bush's bore goes in first; None where it has none."""
    bush = joint.ends[0].item
    form, way = design.facts.about(FormFact, bush), coming_out(joint, bush, design)
    copy = next((one for one in fixed_pair(joint, design) or () if one.item == bush), None)
    if form is None or way is None or copy is None:
        return None
    for one in form.located:
        is_blind = one.depth is not None and abs(one.frame.z[0]) > _ALONG
        if is_blind and one.kind in _BORES:
            opens = minus(placed(one.frame.z, copy.frame), copy.frame.origin)
            return dot(opens, way) > 0
    return None


def pressed_shapes(
    inner: Size, outer: Size, fixed: Sequence[Fixed], *, is_floor_first: bool | None
) -> tuple[list[DrawnShape], tuple[float, float, float]]:
    """The housing against one jaw, the bush with its pad pushed in by the other.

    Then where on the paper the middles of the housing and the bush are, and where all of it ends.
    """
    low = min(0.0, *(one.low for one in fixed)) if fixed else 0.0
    long, high = inner[1] + outer[1] - low, max(inner[0], outer[0])
    scale = min(_WIDE / long, _TALL / high, *(_ALL / max(one.wide, 1e-3) for one in fixed))
    start, middle = _JAW - low * scale, HEIGHT / 2
    a, b = outer[1] * scale, inner[1] * scale
    up, down = outer[0] * scale, inner[0] * scale
    tall, pad = max(up, down) + 1.5, start + a + b
    shapes: list[DrawnShape] = [
        DrawnBox(_JAW - 5, middle - tall / 2, 5, tall, _TINT),
        DrawnBox(start, middle - up / 2, a, up),
        DrawnBox(start + a, middle - down / 2, b, down),
        *_plates(fixed, start, middle, scale),
        *_floor(start + a, middle, b, down, is_first=is_floor_first),
        DrawnBox(pad, middle - tall / 2, _PAD, tall),
        DrawnBox(pad + _PAD, middle - tall / 2, 5, tall, _TINT),
        Line(pad + 11.0, middle, pad + 6.0, middle, Stroke.ARROW),
    ]
    return shapes, (start + a / 2, start + a + b / 2, pad + 12.0)


def _plates(
    fixed: Sequence[Fixed], start: float, middle: float, scale: float
) -> Iterator[DrawnShape]:
    for one in fixed:
        wide, long = one.wide * scale, max((one.high - one.low) * scale, _FLOOR)
        yield DrawnBox(start + one.low * scale, middle - wide / 2, long, wide, _TINT)


def _floor(
    left: float, middle: float, long: float, high: float, *, is_first: bool | None
) -> Iterator[DrawnShape]:
    """The closed end of the bush, dark, on its side towards the housing or towards the pad."""
    if is_first is not None:
        x = left if is_first else left + long - _FLOOR
        yield DrawnBox(x, middle - high / 2, _FLOOR, high, _DARK)


def pressed_titles(
    inner: str, outer: str, fixed: Sequence[Fixed], design: Design, *, is_floored: bool
) -> tuple[str, str]:
    """What the sketch calls the two: with what is dark of the one, and what is on the other."""
    known = (design.item(one.item) for one in fixed)
    there = " and ".join(dict.fromkeys(one.title for one in known if one is not None))
    upper = f"{inner} (dark: the floor of its bore)" if is_floored else inner
    return upper, f"{outer}, the {there} on it" if there else outer
