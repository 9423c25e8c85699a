"""Cautions to the line that stands where the work is done."""

from __future__ import annotations

from collections.abc import Collection, Iterable

from binder.design import CautionFact, Design
from binder.pages import Link, Strong, Text

SECTION = "cautions"


def cautions_at(
    design: Design, doing: Collection[str], items: Collection[str] | None = None
) -> tuple[CautionFact, ...]:
    """The cautions of what is being done, in acts, joints or finishes, in the order of the table.

    Only those of the `items` where these are told, and those of the model as a whole.
    """
    words = frozenset(doing)
    return tuple(
        fact
        for fact in design.facts.all(CautionFact)
        if not words.isdisjoint(fact.at)
        and (items is None or not fact.where or not set(fact.where).isdisjoint(items))
    )


class CautionLines:
    """The lines of one sheet: each caution is said where it is met first, and not again."""

    def __init__(self, design: Design) -> None:
        self.design = design
        self._said: dict[str, None] = {}

    def at(self, doing: Collection[str], items: Collection[str] | None = None) -> Text:
        """What is new of the cautions of what is being done; () where nothing is.

        It names who is asked first, and sends to the page that has them in full.
        """
        found = cautions_at(self.design, doing, items)
        new = [fact for fact in found if fact.subject not in self._said]
        if not new:
            return ()
        is_first = not self._said
        self._said.update(dict.fromkeys(fact.subject for fact in new))
        said = "; ".join(_once(fact.short for fact in new))
        said = said[0].upper() + said[1:]
        asked = "".join(f" Ask first: {one}." for one in _once(fact.asks for fact in new))
        law = " Manual and local codes first." if is_first else ""
        above = "; as above" if len(new) < len(found) else ""
        return (Strong("Caution: "), f"{said}{above}.{asked}{law} ", Link("In full", SECTION), ".")


def _once(words: Iterable[str]) -> list[str]:
    return [one for one in dict.fromkeys(words) if one]
