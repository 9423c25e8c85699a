"""Sizes that are made to suit: in brackets, and told where their sum stands.

A size in brackets is auxiliary, for information, and no tolerance governs it (ISO 129-1).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder.api import ChainFact, Link, Paragraph
from binder_solid.suited import sheet_id, summed_in

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Design, SummedFact, Text
    from binder_drafting import Along
    from binder_solid.facts import FormFact, Located, Stretch, Told

_SAME_MM = 1e-6


@dataclass(frozen=True, slots=True)
class SuitedSizes:
    """Which sizes of a part are worked to a sum: its steps, its grooves, its whole length.

    `moves` where the whole length only follows a step. Where it is cut as drawn, single
    `shoulders` move, told in mm from the left.
    """

    steps: frozenset[str] = frozenset()
    shoulders: tuple[float, ...] = ()
    grooves: frozenset[str] = frozenset()
    is_whole: bool = False
    moves: bool = False

    def along(self, size: Along, over: Sequence[Stretch]) -> Along:
        """A length over some steps: to suit where it ends with one that is, in brackets after."""
        if any(abs(size.end[0] - at) < _SAME_MM for at in self.shoulders):
            return _bracketed(size, is_told=True)
        names = [one.name for one in over]
        if self.steps.isdisjoint(names):
            return size
        far = names[-1] if size.datum == "from left" else names[0]
        return _bracketed(size, is_told=far in self.steps)

    def overall(self, size: Along) -> Along:
        """The whole length, which is made to suit, or follows what is."""
        return _bracketed(size, is_told=self.is_whole) if self.is_whole or self.moves else size

    def placed(self, told: Told, one: Located) -> Told:
        """Where a feature lies; a groove that is set from another one is drawn as that lies."""
        is_set = one.name in self.grooves and told.along == "x"
        return replace(told, text=f"({told.text}) to suit") if is_set else told


def suited_of(fact: FormFact, design: Design) -> SuitedSizes:
    """The sizes of a form that its leaf works to a sum."""
    found = summed_in(fact.subject, design)
    return SuitedSizes(
        frozenset(one.place for one in found if one.place and one.moves_whole),
        tuple(one.shoulder for one in found if one.shoulder is not None),
        frozenset(one.place for one in found if one.is_groove),
        any(not one.place for one in found),
        any(one.moves_whole for one in found),
    )


def suited_note(item: str, design: Design) -> Iterator[Paragraph]:
    """What the brackets of a drawing stand for, with the step and the sheet of each sum."""
    found = summed_in(item, design)
    if found:
        yield Paragraph(("In brackets as drawn, for information: ", *_each(found, design), "."))


def _each(found: Sequence[SummedFact], design: Design) -> Text:
    said: list[Link | str] = []
    for one in found:
        chain = design.facts.about(ChainFact, one.subject)
        if chain is not None:
            link = Link(chain.title, sheet_id(chain, design))
            told = f"{_what(one)} is made to suit, to the sum in set-up {one.setup}, see "
            said += ["; " if said else "", told, link]
    return tuple(said)


def _what(one: SummedFact) -> str:
    name = one.place.replace("_", " ")
    if one.is_groove:
        return f"the place of the last groove ({name})"
    return f"the length of the {name}" if name else "the whole length"


def _bracketed(size: Along, *, is_told: bool) -> Along:
    return replace(size, text=f"({size.text}){' to suit' if is_told else ''}")
