"""What each drive does, as figures and as a curve over one turn."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Block, Design, Facts, Picture, Subheading
from binder_plugins.drive.duties.duty import DutyFact
from binder_plugins.drive.pictures.turn import turn_of


def duty_blocks(design: Design) -> Iterator[Block]:
    """A table of figures for each duty, and its curve where something moves to and fro."""
    for duty in design.facts.all(DutyFact):
        same = duty.title.lower() == duty.subject.replace("_", " ").lower()
        yield Subheading(duty.title if same else f"{duty.title}: {duty.subject}")
        yield Facts(tuple((name, (value,)) for name, value in duty.rows))
        for curve in duty.curves:
            words = f"{curve.words}, over one turn of the driving shaft"
            yield Picture(turn_of(curve), words, words[0].upper() + words[1:])
