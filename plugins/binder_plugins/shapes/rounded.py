"""Shapes that are filed round in words, to the radius that the hole in their mate asks for."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Contribution, Design, Feature, Size
from binder_plugins.shapes.fitted import Fitted, filed_later, fitted, target_of, words_of
from binder_solid.rounded import RoundedFact

_ROUND = re.compile(r"\bround(ed)?\b")
_HOLES = ("drilled", "reamed", "bored")


def fit_things(design: Design) -> Contribution:
    """What another is filed to comes before it, and the section that it gives to what is round."""
    return Contribution(befores=list(filed_later(design)), facts=list(rounded(design)))


def rounded(design: Design) -> Iterator[RoundedFact]:
    """One for each shape that its words call round, and whose mate's hole has sizes."""
    for one in fitted(design):
        if isinstance(one, Fitted) and _ROUND.search(words_of(one.feature)):
            target = target_of(one, design)
            found = _section(target) if target is not None else None
            if found is not None:
                yield RoundedFact(f"{one.feature.owner}.{one.feature.name}", *found)


def _section(hole: Feature) -> tuple[float, float] | None:
    """Radius and distance of the centres in mm.

    A slot ends round, as its cutter leaves it, unless it is filed to the part itself.
    """
    size, long = getattr(hole.entry, hole.kind, None), getattr(hole.entry, "length", None)
    if not isinstance(size, Size):
        return None
    if hole.kind in _HOLES:
        return size.mm / 2, 0.0
    if hole.kind != "slotted" or not isinstance(long, Size) or words_of(hole):
        return None
    return size.mm / 2, max(long.mm - size.mm, 0.0)
