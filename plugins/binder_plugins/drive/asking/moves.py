"""`binder reckon screw-travel`: turns and divisions of a handwheel."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Answer, NotAskedError, Result, Workshop, asked, with_nothing_loose
from binder_plugins.drive.asking.answering import ratio_of, reasons, whole
from binder_trade.screws.handwheel import handwheel

_TRAVEL = "lead 2 mm divisions 100 travel 12.34 mm"
_TRAVEL_NAMES = ("lead", "divisions", "travel", "gear")


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
