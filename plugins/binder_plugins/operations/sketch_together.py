"""Two parts worked together to a sketch: which is held, what lies on it, where the tool comes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import (
    Design,
    Drawing,
    DrawnBox,
    DrawnDisc,
    DrawnLabel,
    DrawnShape,
    Line,
    Polyline,
    Stroke,
    TogetherFact,
    text_width,
)
from binder_plugins.operations.sketch import HEIGHT
from binder_plugins.operations.sketch_leaning import RIGHT, goes_up, leaning_shapes, marked
from binder_plugins.operations.sketch_pressed import (
    fixed_before,
    floor_first,
    pressed_shapes,
    pressed_titles,
)
from binder_plugins.operations.sketch_vice import WIDTH
from binder_solid.facts import FormFact
from binder_solid.leaning import leaning

if TYPE_CHECKING:
    from binder.api import Joint
    from binder_plugins.operations.facts import SetUp

_TINT, _JAW, _LETTERS, _FLOOR = 0.14, 6.0, 2.5, 1.0
_PITCH = 1.35  # from line to line, in heights of letters
_UPPER, _LOWER, _MARK = "a", "b", 2.0  # the letters that say which of the two is which, and theirs
_PRESSED = ("pressed", "sized in place")
# Room in mm for the two parts one over the other, and side by side.
_TALL, _WIDE = 7.5, 16.0
Named = tuple[str, FormFact, tuple[float, float]]


def sketch_together(setup: SetUp, fact: TogetherFact, design: Design) -> Drawing | None:
    """The sketch of a set-up in which two parts of known form are worked; None of all others."""
    askew = _askew(setup, fact, design)
    if askew is not None:
        return askew
    pair = _pair(fact, design)
    if pair is None or setup.number > 1:
        return None
    if fact.how in _PRESSED:
        return _pressed(*pair, design.joints[fact.joints[0]], design)
    if fact.how != "drilled together":
        return None
    return _on_vee(*pair) if setup.grip.kind == "vee" else _in_vice(*pair)


def _askew(setup: SetUp, fact: TogetherFact, design: Design) -> Drawing | None:
    """A part that is drilled at a slant on a rod that carries something with a front."""
    if fact.how != "drilled together" or setup.number > 1:
        return None
    lean = leaning(design.joints[fact.joints[0]], design)
    is_up = goes_up(lean, fact, design) if lean is not None else None
    if lean is None or is_up is None:
        return None
    shapes = leaning_shapes(lean, fact, design, is_up=is_up)
    items = [design.item(name) for name in (lean.item, lean.base.item)]
    names = [one.title if one is not None else "" for one in items]
    upper, lower = names if is_up else names[::-1]
    marks = marked(lean, fact, design, (_LOWER, _UPPER) if is_up else (_UPPER, _LOWER), is_up=is_up)
    drawn = (*shapes, *marks, *_labels(RIGHT, upper, lower))
    return Drawing(WIDTH, HEIGHT, drawn) if shapes else None


def _pair(fact: TogetherFact, design: Design) -> tuple[Named, Named] | None:
    """The two parts of the first row, with their width across the tool and height along it."""
    places = fact.lines[0] if fact.lines else ()
    if fact.how in _PRESSED:
        joint = design.joints[fact.joints[0]]
        places = tuple(str(end) for end in joint.ends[:2])
    found = [one for place in places if (one := _named(place, design)) is not None]
    return (found[0], found[1]) if len(found) == len(places) == 2 else None


def _named(place: str, design: Design) -> Named | None:
    item, _, name = place.partition(".")
    form, known = design.facts.about(FormFact, item), design.item(item)
    if form is None or known is None:
        return None
    way = next((one.frame.z for one in form.located if one.name == name), (1.0, 0.0, 0.0))
    along = max(range(3), key=lambda n: abs(way[n]))
    across = min(size for n, size in enumerate(form.size) if n != along)
    return known.title, form, (across, form.size[along])


def _in_vice(upper: Named, lower: Named) -> Drawing:
    """The one over the other, the lower between the jaws, the drill from above."""
    wide, high = max(upper[2][0], lower[2][0]), upper[2][1] + lower[2][1]
    scale = min(_WIDE / wide, (_TALL - 2.0) / high)
    middle, floor = WIDTH / 2 - 8, HEIGHT - _FLOOR
    w, h = lower[2][0] * scale, lower[2][1] * scale
    top, above = upper[2][0] * scale, upper[2][1] * scale
    jaw = max(0.7 * h, 0.8)
    shapes: tuple[DrawnShape, ...] = (
        DrawnBox(middle - w / 2 - _JAW, floor - jaw, _JAW, jaw, _TINT),
        DrawnBox(middle + w / 2, floor - jaw, _JAW, jaw, _TINT),
        DrawnBox(middle - w / 2, floor - h, w, h),
        DrawnBox(middle - top / 2, floor - h - above, top, above),
        Line(middle, 0.3, middle, floor - h - above, Stroke.ARROW),
    )
    right = middle + max(w / 2 + _JAW, top / 2) + 1
    marks = (
        _mark(middle - top / 2, floor - h - above / 2, above, _UPPER),
        _mark(middle - w / 2, floor - h / 2, h, _LOWER),
    )
    return Drawing(WIDTH, HEIGHT, (*shapes, *marks, *_labels(right, upper[0], lower[0])))


def _on_vee(one: Named, other: Named) -> Drawing:
    """The round one end on in the V-block, the other flat on top of it, the drill from above."""
    round_one, flat_one = (one, other) if one[1].stretches else (other, one)
    middle, floor, radius = WIDTH / 2 - 8, HEIGHT - 0.5, 2.2
    top = floor - 4.6
    vee = (
        (middle - 7, floor), (middle - 7, top), (middle - 3.6, top), (middle, top + 3.6),
        (middle + 3.6, top), (middle + 7, top), (middle + 7, floor), (middle - 7, floor),
    )  # fmt: skip
    centre = top + 3.6 - radius * 1.414
    scale = 2 * radius / max(round_one[2][0], 1e-3)
    wide, high = min(flat_one[2][0] * scale, _WIDE), min(flat_one[2][1] * scale, 2.0)
    seat = centre - radius - high
    shapes: tuple[DrawnShape, ...] = (
        Polyline(vee),
        DrawnDisc(middle, centre, radius),
        DrawnBox(middle - wide / 2, seat, wide, high),
        Line(middle, 0.2, middle, seat, Stroke.ARROW),
    )
    right = middle + max(7.0, wide / 2) + 1
    marks = (
        _mark(middle - wide / 2, seat + high / 2, 0.0, _UPPER),
        DrawnLabel(middle - 0.6, centre + 0.7, _LOWER, _MARK),
    )
    return Drawing(WIDTH, HEIGHT, (*shapes, *marks, *_labels(right, flat_one[0], round_one[0])))


def _pressed(inner: Named, outer: Named, joint: Joint, design: Design) -> Drawing:
    """The housing against one jaw, the other part with its pad pushed in by the other."""
    fixed, floor = fixed_before(joint, design), floor_first(joint, design)
    shapes, (lower, upper, right) = pressed_shapes(inner[2], outer[2], fixed, is_floor_first=floor)
    names = pressed_titles(inner[0], outer[0], fixed, design, is_floored=floor is not None)
    marks = (
        DrawnLabel(upper - 0.6, HEIGHT / 2 + 0.7, _UPPER, _MARK),
        DrawnLabel(lower - 0.6, HEIGHT / 2 + 0.7, _LOWER, _MARK),
    )
    return Drawing(WIDTH, HEIGHT, (*shapes, *marks, *_labels(right, *names)))


def _mark(left: float, middle: float, high: float, letter: str) -> DrawnLabel:
    """The letter of a box in it, by its left edge, or before that where it is too low for it."""
    x = left + 0.5 if high >= _MARK else left - _MARK
    return DrawnLabel(x, middle + 0.35 * _MARK, letter, _MARK)


def _labels(x: float, upper: str, lower: str) -> tuple[DrawnLabel, ...]:
    """What moves or lies above is told above what is held, each with its letter."""
    named = (f"{_UPPER}: {upper}", f"{_LOWER}: {lower}")
    above, below = (_lines(one, WIDTH - x) for one in named)
    half = (HEIGHT / 2 - 1.2) / _PITCH / max(len(above), len(below))
    letters = min(half, *(_fitting(one, WIDTH - x) for one in (*above, *below)))
    high = letters * _PITCH
    top = HEIGHT / 2 - 0.6 - high * (len(above) - 1)
    bottom = HEIGHT / 2 + 0.6 + high
    return (
        *(DrawnLabel(x, top + high * n, said, letters) for n, said in enumerate(above)),
        *(DrawnLabel(x, bottom + high * n, said, letters) for n, said in enumerate(below)),
    )


def _lines(title: str, room: float) -> tuple[str, ...]:
    """A title in one line, or in the two of which the longer is the shortest."""
    if text_width(title, _LETTERS) <= room:
        return (title,)
    words = title.split()
    halves = [(" ".join(words[:n]), " ".join(words[n:])) for n in range(1, len(words))]
    return min(
        halves, key=lambda two: max(text_width(one, _LETTERS) for one in two), default=(title,)
    )


def _fitting(said: str, room: float) -> float:
    """The height of letters in mm at which a line fits its room."""
    return min(_LETTERS, _LETTERS * room / max(text_width(said, _LETTERS), 1e-6))
