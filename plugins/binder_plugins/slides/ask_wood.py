"""`binder reckon wood`: how far a board moves, and the slot that lets it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import Answer, Asked, Result, Workshop, asked, reasons, unread
from binder_trade.explained import Step
from binder_trade.wood import HEATED_ROOM, Cut, Movement, Season, movement, slot, wood

_NAMES = ("width", "cut", "now", "driest", "dampest", "hole")
_CUTS: dict[str, Cut] = {"flat-sawn": "flat-sawn", "quarter-sawn": "quarter-sawn"}


def wood_answer(words: Sequence[str], _workshop: Workshop) -> Answer:
    """The answer; raises NotAskedError or NotDefined where there is none."""
    given = asked(words, _NAMES)
    kind = wood(given.words.get("", ""))
    season = _season(given)
    moved = movement(given.needed("width"), kind, season, _cut(given))
    results, steps = _slot(moved, given)
    return Answer(
        f"{kind.name.capitalize()}, {moved.width_mm:g} mm across the grain",
        (
            Result("shrinks", moved.shrinks_mm, "mm", "shrinks by"),
            Result("swells", moved.swells_mm, "mm", "swells by"),
            *results,
        ),
        reasons((*moved.steps, *steps)),
        tuple(_notes(season, kind.listed)),
    )


def _cut(given: Asked) -> Cut:
    text = given.words.get("cut", "flat-sawn")
    if text not in _CUTS:
        raise unread(text, "no way to cut a board", "flat-sawn or quarter-sawn")
    return _CUTS[text]


def _season(given: Asked) -> Season:
    told = [given.number(name) for name in ("now", "driest", "dampest")]
    usual = (HEATED_ROOM.now, HEATED_ROOM.driest, HEATED_ROOM.dampest)
    now, driest, dampest = (
        normal if value is None else value for value, normal in zip(told, usual, strict=True)
    )
    return Season(now, driest, dampest)


def _slot(moved: Movement, given: Asked) -> tuple[tuple[Result, ...], tuple[Step, ...]]:
    hole = given.mm("hole")
    if hole is None:
        return (), ()
    made = slot(moved, hole)
    return (
        Result("slot", made.length_mm, "mm", "slot long, across the grain"),
        Result("from_inner_end", made.from_inner_end_mm, "mm", "screw from its inner end"),
    ), made.steps


def _notes(season: Season, listed: str) -> Iterator[str]:
    yield f"Figures are those of {listed}."
    yield (
        f"Moisture {season.now:g} % at the bench, {season.driest:g} to {season.dampest:g} % in "
        "use: measure it where it matters."
    )
