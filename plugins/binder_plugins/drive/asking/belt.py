"""`binder reckon belt`: length and wraps for two pulleys, or centres for a length."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import degrees

from binder.api import (
    Answer,
    Asked,
    NotAskedError,
    NotSizeError,
    Result,
    Workshop,
    asked,
    asked_size,
    reasons,
    unread,
)
from binder_trade.belts.centres import centres_for
from binder_trade.belts.round_belt import cut_length
from binder_trade.belts.run import Layout, Run, run

_NAMES = ("centres", "length", "cord", "laid")
_EXAMPLE = "24 mm to 40 mm centres 180 mm"
_LAYOUTS: dict[str, Layout] = {
    "open": "open", "crossed": "crossed", "quarter-turn": "quarter-turn",
}  # fmt: skip
_SHORT_WRAP = 120.0


def belt_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """The answer; raises NotAskedError or NotDefined where there is none."""
    given = asked(words, _NAMES)
    first, second = _diameters(given.words.get("", ""))
    layout = _layout(given)
    centres, length = given.mm("centres"), given.mm("length")
    if (centres is None) == (length is None):
        raise NotAskedError(
            "a belt is told by its centres or by its length, and not by both",
            f"as `{_EXAMPLE}`",
        )
    if length is not None:
        found = centres_for(first, second, length, layout)
        made, steps = found.run, (*found.steps, *found.run.steps)
    else:
        made = run(first, second, centres or 0.0, layout)
        steps = made.steps
    title = f"{made.layout} belt on {first:g} and {second:g} mm"
    return Answer(title, tuple(_results(made, given)), reasons(steps), tuple(_notes(made)))


def _diameters(text: str) -> tuple[float, float]:
    parts = text.split(" to ")
    if len(parts) != 2:
        raise unread(text, "no pair of pulleys", f"as `{_EXAMPLE}`")
    try:
        one, two = (float(asked_size(part, f"`{_EXAMPLE}`").amount) for part in parts)
    except NotSizeError as fault:
        raise NotAskedError(fault.reason, fault.way_out) from fault
    return one, two


def _layout(given: Asked) -> Layout:
    said = given.words.get("laid", "open")
    if said not in _LAYOUTS:
        raise unread(said, "no way to lay a belt", f"one of: {', '.join(_LAYOUTS)}")
    return _LAYOUTS[said]


def _results(made: Run, given: Asked) -> Iterator[Result]:
    yield Result("length", made.length_mm, "mm", "run of the belt")
    yield Result("centres", made.centres_mm, "mm", "between the shafts")
    yield Result("span", made.span_mm, "mm", "free between the pulleys")
    yield Result("wrap_first", degrees(made.wrap_first_rad), "deg", "on the first pulley")
    yield Result("wrap_second", degrees(made.wrap_second_rad), "deg", "on the second")
    yield Result("ratio", made.first_mm / made.second_mm, "", "turns of the second for one")
    cord = given.mm("cord")
    if cord is not None:
        cut = cut_length(made.length_mm, cord)
        yield Result("cut", cut.free_mm, "mm", "cut the cord to")


def _notes(made: Run) -> Iterator[str]:
    yield "Diameters are those at the middle of the belt."
    if degrees(made.least_wrap_rad) < _SHORT_WRAP:
        yield "It lies on the small pulley over less than 120°: it will slip."
