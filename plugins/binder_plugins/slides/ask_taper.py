"""`binder reckon taper`: a cone from any of its figures, and the settings of the lathe."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from binder.api import Answer, Asked, Result, Workshop, asked, unread
from binder_plugins.slides.answering import reasons
from binder_trade.tapers import (
    Taper,
    from_angle,
    from_diameters,
    from_ratio,
    morse,
    set_over,
    sine_packing,
)

_NAMES = ("large", "small", "length", "angle", "between", "sine_bar")
_RATIO = re.compile(r"1 ?(?::|in) ?([0-9]+(?:\.[0-9]+)?)")
_MORSE = re.compile(r"(?:morse|mt)(?: taper)? ?(?:no\.? ?)?([0-9])", re.IGNORECASE)
_SAYS = {
    "holds": "It holds by itself: drive it out, or give it a draw screw.",
    "may hold": "It may hold when dry and let go when oiled: do not trust it without a screw.",
    "lets go": "It does not hold by itself: it needs a draw screw or a key.",
}


def taper_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """The answer; raises NotAskedError or NotDefined where there is none."""
    given = asked(words, _NAMES)
    cone, name = _cone(given)
    return Answer(
        name,
        tuple(_results(cone, given)),
        reasons(cone.steps),
        (_SAYS[cone.holding], "Tool exactly at centre height, or the cone is hollow and wrong."),
    )


def _cone(given: Asked) -> tuple[Taper, str]:
    loose = given.words.get("", "")
    if found := _MORSE.fullmatch(loose):
        made = morse(int(found[1]))
        return made.cone, f"Morse taper {made.number}, {made.source}"
    large, small = given.mm("large"), given.mm("small")
    half = given.degrees("angle")
    if half is not None:
        cone = from_angle(half, given.needed("length"), large_mm=large, small_mm=small)
    elif ratio := _RATIO.fullmatch(loose):
        cone = from_ratio(float(ratio[1]), given.needed("length"), large_mm=large, small_mm=small)
    elif loose:
        raise unread(loose, "no taper", "as `1:20`, or `Morse 2`")
    else:
        cone = from_diameters(given.needed("large"), given.needed("small"), given.needed("length"))
    return cone, f"Taper 1 : {cone.one_in:.4g}"


def _results(cone: Taper, given: Asked) -> Iterator[Result]:
    yield Result("large", cone.large_mm, "mm", "large end")
    yield Result("small", cone.small_mm, "mm", "small end")
    yield Result("length", cone.length_mm, "mm", "length of the taper")
    yield Result("one_in", cone.one_in, "", "1 in")
    yield Result("half_angle", cone.half_angle_deg, "deg", "topslide set to")
    yield Result("included_angle", cone.included_deg, "deg", "included angle")
    yield Result("per_foot", cone.per_foot_in, "in", "taper per foot")
    between = given.mm("between")
    if between is not None:
        yield Result("set_over", set_over(cone, between), "mm", "tailstock over by")
    bar = given.mm("sine_bar")
    if bar is not None:
        packing = sine_packing(cone.included_deg, bar)
        yield Result("sine_packing", packing, "mm", "packing under the sine bar")
