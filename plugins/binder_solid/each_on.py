"""Where each copy of a part stands on a face of its mate, told from the edges of that."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from binder_solid.laid_on import ENDS, LEVEL, edge_of, lies_on, span_on
from binder_solid.placed import PlacedFact
from binder_solid.stands_at import shown_mm

if TYPE_CHECKING:
    from binder.api import Design


@dataclass(frozen=True, slots=True)
class EachOn:
    """The face of the mate, the place of each copy on it, and how far apart they stand.

    `between` is the room from copy to copy, '' where they do not stand in one row.
    """

    face: str
    places: tuple[str, ...]
    between: str

    @property
    def words(self) -> str:
        """`one with its front 5 mm in from the front, another with ..., so 22 mm between them`."""
        each = [f"{'another' if n else 'one'} with {one}" for n, one in enumerate(self.places)]
        return "; ".join(each) + (f"; so {self.between} between them" if self.between else "")


def each_on(mate: str, item: str, design: Design) -> EachOn | None:
    """Where all copies of an item stand on one face of one copy of its mate; None if not known.

    None as well where one of them lies askew. The sides are those of the drawings.
    """
    copies = [one for one in design.facts.all(PlacedFact) if one.item == item]
    for own in (one for one in design.facts.all(PlacedFact) if one.item == mate):
        for normal, names in enumerate(ENDS):
            for face in names:
                there = [one for one in copies if lies_on(own, face, one)]
                if len(there) > 1:
                    return _told(own, there, (normal, face), design)
    return None


def _told(
    own: PlacedFact, there: list[PlacedFact], at: tuple[int, str], design: Design
) -> EachOn | None:
    axes = [n for n in range(3) if n != at[0]]
    there = sorted(there, key=lambda one: [span_on(own, one, n)[0] for n in axes])
    edges = [[edge_of(own, one, n, design) for n in axes] for one in there]
    if not all(all(one) for one in edges):
        return None
    return EachOn(
        at[1], tuple(" and ".join(one) for one in edges), _between(own, there, axes, design)
    )


def _between(own: PlacedFact, there: list[PlacedFact], axes: list[int], design: Design) -> str:
    """The room between copies that stand in a row along one axis and level along the other."""
    for axis, across in (axes, axes[::-1]):
        rest = [span_on(own, one, across) for one in there]
        if max(low for low, _ in rest) - min(low for low, _ in rest) > LEVEL:
            continue
        spans = sorted(span_on(own, one, axis) for one in there)
        rooms = [later[0] - earlier[1] for earlier, later in pairwise(spans)]
        if min(rooms) > LEVEL and max(rooms) - min(rooms) <= LEVEL:
            return shown_mm(rooms[0], design)
    return ""
