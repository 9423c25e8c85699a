"""A long part that is drilled askew on a rod, seen from above as it lies under the drill."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import DrawnBox, DrawnDisc, DrawnLabel, Polyline, text_width
from binder_plugins.operations.sketch import HEIGHT
from binder_solid.facts import FormFact
from binder_solid.laid_on import ENDS, way_of
from binder_solid.space import cross, dot
from binder_solid.stands_at import along_rod, face_over

if TYPE_CHECKING:
    from binder.api import Design, DrawnShape, TogetherFact
    from binder_solid.leaning import Lean

RIGHT = 34.0  # where the room for the names begins, mm
_LEFT, _LONG, _AXIS = 2.0, 30.0, HEIGHT / 2
_ROD, _BLOCK, _STRIP, _HOLE = 0.8, 2.0, 0.6, 0.35  # half of what is drawn across, mm
_RISE, _REACH, _BEHIND = 4.6, 14.0, 1.2
_BREAK = 0.9  # half of what the zigzag of a break goes to and fro, mm
_LETTERS, _GAP = 2.0, 0.6


def goes_up(lean: Lean, fact: TogetherFact, design: Design) -> bool | None:
    """Whether the far end lies above the rod on the page, its left-hand end to the left.

    The face of what the rod carries that is set level under the drill looks at the reader. None
    where nothing tells which that is.
    """
    place = _hole(lean, fact)
    if lean.on is None or not lean.side or not place:
        return None
    _, face, _ = face_over(design.joints[lean.by], place, design)
    axis = next((n for n, names in enumerate(ENDS) if names[1] == face), None)
    if axis is None:
        return None
    return dot(cross(way_of(lean.on, axis), lean.base.frame.x), lean.way) > 0


def leaning_shapes(
    lean: Lean, fact: TogetherFact, design: Design, *, is_up: bool
) -> tuple[DrawnShape, ...]:
    """The rod, what it carries with the side told, the hole, and the other part at its angle."""
    form = design.facts.about(FormFact, lean.base.item)
    place = _hole(lean, fact)
    found = [one for one in form.located if one.name == place] if form is not None else []
    if lean.on is None or not found:
        return ()
    scale = _LONG / (lean.base.corners[1][0] - lean.base.corners[0][0])
    hole = _LEFT + found[0].frame.origin[0] * scale
    low, high = (_LEFT + x * scale for x in along_rod(lean.base, lean.on))
    strip = _strip(lean, hole, is_up=is_up)
    over = min(x for x, _ in strip) < high + 1.0 and max(x for x, _ in strip) > low - 1.0
    return (
        DrawnBox(_LEFT, _AXIS - _ROD, _LONG, 2 * _ROD),
        DrawnBox(low, _AXIS - _BLOCK, high - low, 2 * _BLOCK),
        Polyline(strip),
        DrawnDisc(hole, _AXIS, _HOLE),
        _side(lean, (low + high) / 2, is_up=is_up, is_other=over),
    )


def marked(
    lean: Lean, fact: TogetherFact, design: Design, letters: tuple[str, str], *, is_up: bool
) -> tuple[DrawnLabel, ...]:
    """The letters of the rod, over its left-hand end, and of what leans, at its far end."""
    form = design.facts.about(FormFact, lean.base.item)
    found = [one for one in form.located if one.name == _hole(lean, fact)] if form else []
    if not found:
        return ()
    scale = _LONG / (lean.base.corners[1][0] - lean.base.corners[0][0])
    strip = _strip(lean, _LEFT + found[0].frame.origin[0] * scale, is_up=is_up)
    x, y = strip[0]
    return (
        DrawnLabel(_LEFT + 0.4, _AXIS - _ROD - _GAP, letters[0], _LETTERS),
        DrawnLabel(x + _GAP + _BREAK + 0.4, y + (_LETTERS if is_up else 0.0), letters[1], _LETTERS),
    )


def _hole(lean: Lean, fact: TogetherFact) -> str:
    """The name of the first hole in the rod."""
    places = (place.partition(".") for line in fact.lines for place in line)
    return next((name for item, _, name in places if item == lean.base.item), "")


def _strip(lean: Lean, hole: float, *, is_up: bool) -> tuple[tuple[float, float], ...]:
    """The part at its angle, with the zigzag of a break at its far end (ISO 128-2, from memory)."""
    angle = math.radians(lean.angle)
    along = math.cos(angle) * (1 if lean.end == "right" else -1)
    aside = math.sin(angle) * (-1 if is_up else 1)
    far = min(_RISE / math.sin(angle), _REACH)
    ends = [(far, _STRIP), (-_BEHIND, _STRIP), (-_BEHIND, -_STRIP), (far, -_STRIP)]
    # Open, it is read as the end itself, and the part as shorter than it is.
    ends += [(far, -_STRIP / 3), (far + _BREAK, -_STRIP / 6), (far - _BREAK, _STRIP / 6)]
    ends += [(far, _STRIP / 3), (far, _STRIP)]
    return tuple((hole + t * along - n * aside, _AXIS + t * aside + n * along) for t, n in ends)


def _side(lean: Lean, middle: float, *, is_up: bool, is_other: bool) -> DrawnLabel:
    """The side to which it leans by its name; where that would cross it, the one opposite."""
    names = next(each for each in ENDS if lean.side in each)
    said = names[1 - names.index(lean.side)] if is_other else lean.side
    x = middle - text_width(said, _LETTERS) / 2
    above, below = _AXIS - _BLOCK - _GAP, _AXIS + _BLOCK + _GAP + _LETTERS
    return DrawnLabel(x, above if is_up != is_other else below, said, _LETTERS)
