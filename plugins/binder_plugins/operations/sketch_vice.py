"""Work in a vice to a small sketch: each of the pieces between the jaws, and what lies under."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import Drawing, DrawnBox, Stroke
from binder_plugins.operations.parallels import (
    CLEAR,
    CLEAR_OF_CUT,
    gripped_axis,
    is_on_parallels,
    is_packed,
    under,
)
from binder_plugins.operations.sides import EDGES_UP, face_up

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import SetUp
    from binder_solid.facts import FormFact

WIDTH, TINT = 52.0, 0.14
_LOW, _LEAST = 9.5, 0.8
# How a grip says that several are held as one: before what it holds them on, or after the vice.
_TOGETHER = re.compile(r"(\d+) together(?:, |$)")


def in_the_vice(setup: SetUp, form: FormFact) -> Drawing:
    """The end of a block, or of a stack, between two jaws, on what its words lay under it."""
    count, on_edge = _held(setup), setup.grip.on == EDGES_UP
    wide, high = _seen(setup, form, count)
    scale = min((WIDTH - 24) / max(wide, 1e-3), (_LOW - 5) / max(high, 1e-3))
    w, h = wide * scale, high * scale
    least = _LEAST * count  # Each is seen by itself, however thin.
    w, h = (max(w, least), h) if on_edge else (w, max(h, least))
    below = _under(setup, form, w)
    # Without packing it stands on the bed of the vice.
    left, floor = (WIDTH - w) / 2, _LOW - (4.5 if below else 2.5)
    jaw = max(h * 0.7, 3.0)
    return Drawing(
        WIDTH,
        _LOW,
        (
            DrawnBox(left - 7, floor - jaw, 7, _LOW - 0.5 - floor + jaw, TINT),
            DrawnBox(left + w, floor - jaw, 7, _LOW - 0.5 - floor + jaw, TINT),
            DrawnBox(left - 7, _LOW - 2.5, w + 14, 2.0, TINT),
            *_pieces((left, floor, w, h), count, is_side_by_side=on_edge),
            *(
                DrawnBox(left + start, floor, end - start, 2.0, 0.0, Stroke.THIN)
                for start, end in below
            ),
        ),
    )


def _held(setup: SetUp) -> int:
    """How many lie in the vice as one."""
    found = _TOGETHER.search(f"{setup.grip.holder}, {setup.grip.on}")
    return int(found[1]) if found is not None else 1


def _on(setup: SetUp) -> str:
    """What it is held on, without how many are."""
    return _TOGETHER.sub("", setup.grip.on)


def _pieces(
    box: tuple[float, float, float, float], count: int, *, is_side_by_side: bool
) -> Iterator[DrawnBox]:
    """Each piece of a stack that stands on its edges, or lies, within its box on the paper."""
    left, floor, w, h = box
    for n in range(count):
        if is_side_by_side:
            yield DrawnBox(left + n * w / count, floor - h, w / count, h)
        else:
            yield DrawnBox(left, floor - h * (n + 1) / count, w, h / count)


def _under(setup: SetUp, form: FormFact, wide: float) -> list[tuple[float, float]]:
    """From where to where packing lies under the work, `wide` on the paper, all in its mm."""
    if not is_on_parallels(setup.grip.holder):
        return [(0.0, wide)] if is_packed(setup.grip.holder) else []
    thick = min(2.0, wide / 3)
    if not setup.true.startswith((CLEAR, CLEAR_OF_CUT)):
        return [(0.0, thick), (wide - thick, wide)]
    cut = {act.feature for act in setup.acts}
    found = [one for one in form.located if one.name in cut]
    scale = wide / max(_seen(setup, form, 1)[0], 1e-3)
    places = under(form.size, face_up(setup.datum), found, _on(setup)).places
    return [(start * scale, end * scale) for start, end in places]


def _seen(setup: SetUp, form: FormFact, count: int) -> tuple[float, float]:
    """Width and height in mm of what stands in the vice, its face of the set-up up."""
    datum, (long, wide, high) = setup.datum, form.size
    if "on edge" in setup.grip.on:
        thin, across, _ = sorted(form.size)
        return thin, across
    if setup.grip.on == EDGES_UP:
        return setup.grip.across, sorted(form.size)[1]
    across = form.size[gripped_axis(_on(setup), face_up(datum), form.size)]
    if datum.startswith(("left", "right")):
        return across, long * count
    return across, (wide if datum.startswith(("front", "back")) else high) * count
