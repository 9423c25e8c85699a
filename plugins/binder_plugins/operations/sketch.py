"""A grip to a small sketch: jaws or vice, and the outline of the part between them."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from binder.api import (
    Drawing,
    DrawnBox,
    DrawnShape,
    Line,
    Polyline,
    Stroke,
)
from binder_plugins.operations.parallels import (
    CLEAR,
    CLEAR_OF_CUT,
    gripped_axis,
    is_on_parallels,
    is_packed,
    under,
)
from binder_plugins.operations.second_grip import SOFT_JAWS, STUB
from binder_plugins.operations.sides import EDGES_UP, face_up
from binder_plugins.operations.uncut import WHOLE, Uncut

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Grip, SetUp
    from binder_solid.facts import FormFact

Along = Callable[[float], float]
WIDTH = 52.0
HEIGHT = 11.5
_LOW = 9.5
_JAW = 7.0
_LEAST_JAW = 1.5
_MARGIN = 3.0
_TALL = 7.0
_TINT = 0.14
# How much of the depth of a thread the stub in it is drawn to fill.
_ENGAGED = 0.9
_ROUND_TALL = 4.5
_AXIS_AT = 5.5
_DARK = 0.4
_BENT = frozenset({"wire", "spring"})


def sketch(
    setup: SetUp, form: FormFact | None, uncut: Uncut = WHOLE, stub: float = 0.0
) -> Drawing | None:
    """The sketch of a set-up in the lathe or in a vice; None at the bench.

    What is `uncut` is drawn as the bar that it still is; a `stub` is so many mm thick.
    """
    if form is None or form.shape in _BENT:
        return None
    if setup.place == "lathe" and form.stretches:
        return _in_the_lathe(setup.grip, form, uncut, stub)
    if setup.grip.kind == "vice" and not form.stretches:
        return _in_the_vice(setup, form)
    return _along_a_vee(setup, form) if setup.grip.kind == "vee" and form.stretches else None


def _in_the_lathe(grip: Grip, form: FormFact, uncut: Uncut, stub: float) -> Drawing:
    """The part along the axis, its free end to the right as it stands in the lathe."""
    length = form.size[0]
    low, high = min(0.0, grip.jaws[0]), max(length, grip.jaws[1])
    flip = grip.free == "left"
    bar = uncut.across if uncut.steps else 0.0
    scale = _scale(high - low, max(*form.size[1:], bar, stub))

    def at(x: float) -> float:
        return _MARGIN + _JAW / 2 + ((high - x) if flip else (x - low)) * scale

    middle = HEIGHT / 2
    shapes: list[DrawnShape] = [*_outline(form, at, middle, scale, uncut)]
    if grip.kind == "mandrel":
        shapes += _mandrel(grip, form, at, middle, scale)
    elif STUB in grip.on:
        shapes += _stub(form, grip, at, middle, (scale, stub))
    elif SOFT_JAWS in grip.holder:
        shapes += _soft_jaws(grip, form, at, middle, scale)
    else:
        shapes += _jaws(grip, at, middle, scale, form)
    if grip.support.startswith("tailstock"):
        end = at(0.0 if flip else length)
        shapes += [Polyline(((end + 7, middle - 3), (end, middle), (end + 7, middle + 3)))]
    shapes += _steady(grip, at, middle, scale, form)
    far = min(max(at(low), at(high)) + _MARGIN + _JAW, WIDTH - 1.0)
    shapes.append(Line(1.0, middle, far, middle, Stroke.CENTRE))
    return Drawing(WIDTH, HEIGHT, tuple(shapes))


def _steady(grip: Grip, at: Along, middle: float, scale: float, form: FormFact) -> list[DrawnShape]:
    """Two fingers of a steady on the land that they run on."""
    if grip.land == (0.0, 0.0):
        return []
    x = (at(grip.land[0]) + at(grip.land[1])) / 2
    near = (s.across for s in form.stretches if s.start <= sum(grip.land) / 2 <= s.end)
    half = next(near, 0.0) / 2 * scale
    low, high = middle - half, middle + half
    return [
        Polyline(((x - 1, 0.3), (x - 0.4, low), (x + 0.4, low), (x + 1, 0.3))),
        Polyline(((x - 1, HEIGHT - 0.3), (x - 0.4, high), (x + 0.4, high), (x + 1, HEIGHT - 0.3))),
    ]


def _scale(long: float, across: float) -> float:
    room = WIDTH - 2 * _MARGIN - _JAW - 7
    return min(room / max(long, 1e-3), _TALL / max(across, 1e-3))


def _outline(
    form: FormFact, at: Along, middle: float, scale: float, uncut: Uncut = WHOLE
) -> list[DrawnShape]:
    """The steps of turned work as seen from the front, thin and plain where they are bar still."""
    shapes: list[DrawnShape] = []
    for n, step in enumerate(form.stretches):
        x, y = at(step.start), at(step.end)
        is_bar = (step.name or f"step {n + 1}") in uncut.steps
        ends = (uncut.across,) * 2 if is_bar else (step.across, step.end_across)
        a, b = (across / 2 * scale for across in ends)
        corners = ((x, middle - a), (y, middle - b), (y, middle + b), (x, middle + a))
        stroke = Stroke.THIN if is_bar else Stroke.OUTLINE
        shapes.append(Polyline((*corners, corners[0]), stroke))
    return shapes


def _jaws(grip: Grip, at: Along, middle: float, scale: float, form: FormFact) -> list[DrawnShape]:
    """Two jaws on the gripped step, or on the bar beyond the part."""
    x, y = sorted((at(grip.jaws[0]), at(grip.jaws[1])))
    # Never over what stands out, however thin the part is.
    x = min(max(x, 0.5), y - _LEAST_JAW)
    half = (grip.across or max(form.size[1:])) / 2 * scale
    shapes: list[DrawnShape] = []
    is_on_bar = grip.jaws[0] < -1e-6 or grip.jaws[1] > form.size[0] + 1e-6
    if is_on_bar:
        far = at(0.0) if grip.free == "right" else at(form.size[0])
        shapes.append(DrawnBox(x, middle - half, max(far - x, 0.5), 2 * half, 0.0, Stroke.THIN))
    wide = min(y - x, _JAW)
    tall = HEIGHT / 2 - half - 0.5
    shapes.append(DrawnBox(y - wide, 0.5, wide, max(tall, 1.0), _TINT))
    shapes.append(DrawnBox(y - wide, middle + half, wide, max(tall, 1.0), _TINT))
    return shapes


def _soft_jaws(
    grip: Grip, form: FormFact, at: Along, middle: float, scale: float
) -> list[DrawnShape]:
    """Jaws bored with a floor behind the part; thin, what is faced off its free end."""
    floor, mouth = sorted((at(grip.jaws[0]), at(grip.jaws[1])))
    half, inner = grip.across / 2 * scale, grip.across / 4 * scale
    end = at(0.0 if grip.free == "left" else form.size[0])
    left, tall = max(mouth - _JAW, 0.5), max(HEIGHT / 2 - half - 0.5, 1.0)
    waste = mouth + grip.stand_out * scale - end
    return [
        DrawnBox(left, 0.5, mouth - left, tall, _TINT),
        DrawnBox(left, middle + half, mouth - left, tall, _TINT),
        DrawnBox(left, middle - half, floor - left, half - inner, _TINT),
        DrawnBox(left, middle + inner, floor - left, half - inner, _TINT),
        DrawnBox(end, middle - half, max(waste, 0.0), 2 * half, 0.0, Stroke.THIN),
    ]


def _mandrel(
    grip: Grip, form: FormFact, at: Along, middle: float, scale: float
) -> list[DrawnShape]:
    """The stub in the bore; a nut only where there is one, since it covers the end."""
    ends = sorted((at(0.0), at(form.size[0])))
    half = max(min(form.size[1] * scale / 6, 2.0), 0.8)
    if "nut" not in grip.holder:
        return [DrawnBox(0.5, middle - half, ends[1] - 1.5, 2 * half, _TINT)]
    return [
        DrawnBox(0.5, middle - half, ends[1] - 0.5 + 2, 2 * half, _TINT),
        DrawnBox(ends[1], middle - 2.2 * half, 2, 4.4 * half, _TINT),
    ]


def _stub(
    form: FormFact, grip: Grip, at: Along, middle: float, drawn: tuple[float, float]
) -> list[DrawnShape]:
    """The bar behind the part in the jaws, its shoulder on the part's face, its thread inside.

    `drawn` is the scale, and how thick the bar is in mm, 0 where that is not known.
    """
    scale, bar = drawn
    tapped = [one for one in form.located if one.kind == "tapped"]
    across = max((one.diameter or 0.0 for one in tapped), default=form.size[1] / 3)
    deep = min((one.depth or form.size[0] for one in tapped), default=form.size[0] / 2)
    thin, thick = across / 2 * scale, (bar / 2 or min(form.size[1] * 0.45, across)) * scale
    tall = HEIGHT / 2 - thick - 0.5
    face = at(form.size[0] if grip.free == "left" else 0.0)
    edge = max(at(grip.jaws[0]), at(grip.jaws[1]))
    start = max(edge - _JAW, 0.5)
    return [
        DrawnBox(start, middle - thick, face - start, 2 * thick),
        DrawnBox(face, middle - thin, deep * scale * _ENGAGED, 2 * thin, _TINT, Stroke.THIN),
        DrawnBox(start, 0.5, edge - start, tall, _TINT),
        DrawnBox(start, middle + thick, edge - start, tall, _TINT),
    ]


def _in_the_vice(setup: SetUp, form: FormFact) -> Drawing:
    """The end of a block between two jaws, on what its words lay under it, its made face up."""
    wide, high = _seen(setup, form)
    scale = min((WIDTH - 24) / max(wide, 1e-3), (_LOW - 5) / max(high, 1e-3))
    w, h = wide * scale, max(high * scale, 0.8)
    below = _under(setup, form, w)
    # Without packing it stands on the bed of the vice.
    left, floor = (WIDTH - w) / 2, _LOW - (4.5 if below else 2.5)
    jaw = max(h * 0.7, 3.0)
    return Drawing(
        WIDTH,
        _LOW,
        (
            DrawnBox(left - 7, floor - jaw, 7, _LOW - 0.5 - floor + jaw, _TINT),
            DrawnBox(left + w, floor - jaw, 7, _LOW - 0.5 - floor + jaw, _TINT),
            DrawnBox(left - 7, _LOW - 2.5, w + 14, 2.0, _TINT),
            DrawnBox(left, floor - h, w, h),
            *(
                DrawnBox(left + start, floor, end - start, 2.0, 0.0, Stroke.THIN)
                for start, end in below
            ),
        ),
    )


def _under(setup: SetUp, form: FormFact, wide: float) -> list[tuple[float, float]]:
    """From where to where packing lies under the work, `wide` on the paper, all in its mm."""
    if not is_on_parallels(setup.grip.holder):
        return [(0.0, wide)] if is_packed(setup.grip.holder) else []
    thick = min(2.0, wide / 3)
    if not setup.true.startswith((CLEAR, CLEAR_OF_CUT)):
        return [(0.0, thick), (wide - thick, wide)]
    cut = {act.feature for act in setup.acts}
    found = [one for one in form.located if one.name in cut]
    scale = wide / max(_seen(setup, form)[0], 1e-3)
    places = under(form.size, face_up(setup.datum), found, setup.grip.on).places
    return [(start * scale, end * scale) for start, end in places]


def _seen(setup: SetUp, form: FormFact) -> tuple[float, float]:
    """Width and height of the block as it stands in the vice, its face of the set-up up."""
    datum, (long, wide, high) = setup.datum, form.size
    if "on edge" in setup.grip.on:
        thin, across, _ = sorted(form.size)
        return thin, across
    if setup.grip.on == EDGES_UP:
        return setup.grip.across, sorted(form.size)[1]
    across = form.size[gripped_axis(setup.grip.on, face_up(datum), form.size)]
    if datum.startswith(("left", "right")):
        return across, long
    return across, wide if datum.startswith(("front", "back")) else high


def _along_a_vee(setup: SetUp, form: FormFact) -> Drawing:
    """Round work along its V-block as drawn, the clamp over it, the tool where it comes."""
    grip, length = setup.grip, form.size[0]
    scale = min((WIDTH - 2 * _MARGIN) / length, _ROUND_TALL / max(form.size[1:]))
    left = (WIDTH - length * scale) / 2

    def at(x: float) -> float:
        return left + x * scale

    middle, radius = _AXIS_AT, grip.across / 2 * scale
    start, end = (at(x) for x in grip.jaws)
    shapes: list[DrawnShape] = [
        DrawnBox(start, middle, end - start, HEIGHT - 0.5 - middle, _TINT, Stroke.THIN),
        *_outline(form, at, middle, scale),
        Line(left - 2, middle, at(length) + 2, middle, Stroke.CENTRE),
    ]
    if grip.land != (0.0, 0.0):
        a, b = (at(x) for x in grip.land)
        shapes.append(DrawnBox(a, middle - radius - 1.2, b - a, 1.2, _DARK))
    cut = {act.feature for act in setup.acts}
    places = {spot[0] for one in form.located if one.name in cut for spot in one.spots}
    shapes += [Line(at(x), 0.3, at(x), middle - radius, Stroke.ARROW) for x in sorted(places)]
    return Drawing(WIDTH, HEIGHT, tuple(shapes))
