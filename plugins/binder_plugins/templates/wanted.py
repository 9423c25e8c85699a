"""All faces of a model that are marked out, each with its lines, in the order of the parts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from binder.api import Design, Part, TogetherFact
from binder_drafting import Edge
from binder_plugins.templates.marking import marked
from binder_solid.facts import FlatFact, FlatViewsFact
from binder_solid.flats import Flat

_BY_GEARS = "set in mesh"
_UNPOPPED = "not popped nor drilled from here: set in mesh"


@dataclass(frozen=True, slots=True)
class Template:
    """A face of a part with its lines; `is_only` where the part has no other."""

    part: Part
    flat: Flat
    edges: tuple[Edge, ...]
    is_only: bool

    @property
    def face(self) -> str:
        """Which face it is, where that must be said."""
        if self.flat.bends:
            return "laid flat"
        return "" if self.is_only and self.flat.face == "top" else f"{self.flat.face} face"


def templates_of(design: Design) -> Iterator[Template]:
    """Every face that a part lays flat."""
    for fact in design.facts.all(FlatFact):
        found = design.facts.about(FlatViewsFact, fact.subject)
        none = (None,) * len(fact.flats)
        views = (found.cut, found.seen) if found is not None else (none, none)
        for flat, cut, seen in zip(fact.flats, *views, strict=True):
            part = design.parts[fact.subject]
            edges = marked(flat, cut, seen)
            yield Template(part, _warned(flat, part, design), edges, len(fact.flats) == 1)


def _warned(flat: Flat, part: Part, design: Design) -> Flat:
    """A hole whose place the cut gears tell is drawn as a check, and popped by nobody."""
    left = {
        place
        for fact in design.facts.all(TogetherFact)
        if fact.how == _BY_GEARS
        for place in fact.left
    }
    holes = tuple(
        replace(one, words=f"{one.words}; {_UNPOPPED}")
        if f"{part.name}.{one.feature}" in left
        else one
        for one in flat.holes
    )
    return replace(flat, holes=holes)
