"""`binder reckon screw-travel` and `divide`: turns and divisions of a handwheel or a head."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Answer, NotAskedError, Result, Workshop, asked, with_nothing_loose
from binder_plugins.drive.asking.answering import ratio_of, reasons, whole
from binder_trade.explained import NotDefined
from binder_trade.gears.dividing.simple import index, nearest
from binder_trade.screws.handwheel import handwheel

_TRAVEL = "lead 2 mm divisions 100 travel 12.34 mm"
_TRAVEL_NAMES = ("lead", "divisions", "travel", "gear")
Plates = dict[str, tuple[int, ...]]


def travel_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """Travel for a turn and a division, and a travel as turns and divisions."""
    given = with_nothing_loose(asked(words, _TRAVEL_NAMES), _TRAVEL_NAMES)
    if "divisions" not in given.words:
        raise NotAskedError("nothing tells the divisions of the dial", f"as `{_TRAVEL}`")
    gear = float(ratio_of(given.words["gear"], "gear 1:2")) if "gear" in given.words else 1.0
    made = handwheel(
        given.needed("lead"), whole(given.words["divisions"], "number of divisions", _TRAVEL), gear
    )
    results = [
        Result("turn", made.turn_mm, "mm", "travel for a turn"),
        Result("division", made.division_mm, "mm", "travel for a division"),
    ]
    travel = given.mm("travel")
    if travel is not None:
        turns, divisions = made.dialled(travel)
        results.append(Result("turns", turns, "", "whole turns"))
        results.append(Result("divisions", divisions, "", "and divisions"))
    return Answer(
        f"a dial of {made.divisions} divisions",
        tuple(results),
        reasons(made.steps),
        ("Come to every place from the same side, so that the play of the nut is taken up.",),
    )


def divide_answer(words: Sequence[str], workshop: Workshop) -> Answer:
    """Turns and holes for so many divisions, with the plates owned or told."""
    given = asked(words, ("ratio", "holes"))
    text = given.words.get("", "").removesuffix(" teeth").removesuffix(" divisions")
    divisions = whole(text, "number of divisions", "54 ratio 40")
    heads = list(_heads(given.words, workshop))
    if not heads:
        raise NotAskedError(
            "the workshop has no dividing head", "tell one: `54 ratio 40 holes 27 33 39`"
        )
    name, ratio, plates = heads[0]
    try:
        made = index(divisions, ratio, plates)
    except NotDefined as refusal:
        near = nearest(divisions, ratio, plates)
        raise NotAskedError(
            f"{refusal.reason}", f"{near.nearest} goes; or index it compound or differentially"
        ) from refusal
    results = (
        Result("turns", made.turns, "", "whole turns of the crank"),
        Result("holes", made.holes, "", "and holes"),
        Result("circle", made.circle, "", "of this circle", made.plate),
    )
    others = [f"{holes} of {circle}" for holes, circle in made.others]
    notes = (f"The same on other circles: {', '.join(others)}.",) if others else ()
    return Answer(f"{divisions} divisions on the {name}", results, reasons(made.steps), notes)


def _heads(words: dict[str, str], workshop: Workshop) -> Iterator[tuple[str, int, Plates]]:
    if "ratio" in words or "holes" in words:
        ratio = whole(words.get("ratio", "40"), "ratio of a worm", "ratio 40")
        holes = tuple(whole(one, "circle of holes", "holes 27 33 39")
                      for one in words.get("holes", "").replace(",", " ").split())  # fmt: skip
        yield "head told", ratio, {"the circles told": holes} if holes else {}
        return
    for name, head in workshop.entry.holding.dividing_heads.items():
        yield name, int(head.ratio), {
            plate: tuple(int(one) for one in row) for plate, row in head.plates.items()
        }  # fmt: skip
