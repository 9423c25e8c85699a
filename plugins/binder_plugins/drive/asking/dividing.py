"""`binder reckon divide`: turns and holes of a dividing head or table, or places by its dial."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from fractions import Fraction

from binder.api import Answer, Divider, NotAskedError, Result, Workshop, asked, reasons, unread
from binder_plugins.drive.asking.answering import ratio_of, whole
from binder_trade.explained import NotDefined
from binder_trade.gears.dividing.dial import Dial, dial
from binder_trade.gears.dividing.owned import minutes_text, place_words
from binder_trade.gears.dividing.simple import Indexing, index, nearest

_EXAMPLE = "54 ratio 40 holes 27 33 39"
_MARK = re.compile(r"([0-9./]+) ?(deg|min)")
_MINUTES = 60
_MOST_PLACES = 144


def divide_answer(words: Sequence[str], workshop: Workshop) -> Answer:
    """The first way that goes: direct or by plates on each device in turn, then by a dial."""
    given = asked(words, ("ratio", "holes", "mark"))
    text = given.words.get("", "").removesuffix(" teeth").removesuffix(" divisions")
    divisions = whole(text, "number of divisions", _EXAMPLE)
    devices = list(_told(given.words) or workshop.dividers())
    if not devices:
        raise NotAskedError(
            "the workshop has no dividing head and no rotary table",
            f"tell one: `{_EXAMPLE}`, or `54 ratio 90 mark 1 min`",
        )
    refusal: NotDefined | None = None
    for one in devices:
        try:
            return _by_plates(divisions, one)
        except NotDefined as said:
            refusal = refusal or said
    for one in devices:
        if one.mark is not None:
            return _by_dial(divisions, one, one.mark)
    raise NotAskedError(str(refusal.reason if refusal else ""), _near(divisions, devices[0]))


def _near(divisions: int, one: Divider) -> str:
    near = nearest(divisions, one.ratio, one.plates).nearest
    return f"{near} goes; or index it compound or differentially"


def _told(words: dict[str, str]) -> list[Divider]:
    """The device that the question tells, by its worm, its circles and its dial."""
    if not {"ratio", "holes", "mark"} & set(words):
        return []
    ratio = whole(words.get("ratio", "40"), "ratio of a worm", "ratio 40")
    holes = tuple(
        whole(one, "circle of holes", "holes 27 33 39")
        for one in words.get("holes", "").replace(",", " ").split()
    )
    plates = {"the circles told": holes} if holes else {}
    mark = _mark(words["mark"]) if "mark" in words else None
    return [Divider("table told" if mark is not None else "head told", ratio, plates, (), mark)]


def _mark(text: str) -> Fraction:
    found = _MARK.fullmatch(text.strip())
    if found is None:
        raise unread(text, "no mark of a dial", "as `mark 0.1 deg` or `mark 5 min`")
    size = ratio_of(found[1], "mark 5 min")
    return size if found[2] == "deg" else size / _MINUTES


def _by_plates(divisions: int, one: Divider) -> Answer:
    made = index(divisions, one.ratio, one.plates)
    return Answer(
        f"{divisions} divisions on the {one.name}",
        tuple(_moves(made)),
        reasons(made.steps),
        _others(made),
    )


def _moves(made: Indexing) -> Iterator[Result]:
    yield Result("turns", made.turns, "", "whole turns of the crank")
    yield Result("holes", made.holes, "", "and holes")
    yield Result("circle", made.circle, "", "of this circle", made.plate)


def _others(made: Indexing) -> tuple[str, ...]:
    others = [f"{holes} of {circle}" for holes, circle in made.others]
    return (f"The same on other circles: {', '.join(others)}.",) if others else ()


def _by_dial(divisions: int, one: Divider, mark: Fraction) -> Answer:
    """Each place from the first, so that what is rounded does not add up."""
    made = dial(divisions, one.ratio, mark)
    results = (
        Result("turn", made.turn_deg, "deg", "a turn of the handwheel"),
        Result("mark", made.mark_deg, "deg", "a mark of its dial", minutes_text(made.mark_deg)),
        Result("worst", made.worst_deg * _MINUTES, "min", "the worst place is off by"),
        Result("worst_on_100_mm", made.worst_mm(100), "mm", "on a rim of 100 mm diameter"),
    )
    return Answer(
        f"{divisions} divisions by the dial of the {one.name}",
        results,
        reasons(made.steps),
        tuple(_places(made)),
    )


def _places(made: Dial) -> Iterator[str]:
    yield "Set each place from the first, turning one way; go back past it and come up again."
    for one in made.settings[:_MOST_PLACES]:
        yield f"{one.number}: {place_words(one)}"
    if made.divisions > _MOST_PLACES:
        yield f"And so on: place n stands at (n − 1) × 360° / {made.divisions}."
