"""Where a binder is made: the pictures of the whole and of each assembly, and what collides."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Contribution, Design, Fact
from binder_plugins.arrangement.caging import caged
from binder_plugins.arrangement.colliding import collisions
from binder_plugins.arrangement.exploding import explode, units_of
from binder_plugins.arrangement.gathering import PictureFact, buildable, pictured
from binder_plugins.arrangement.general import SIDES
from binder_plugins.arrangement.space import NOWHERE_AT
from binder_solid.placed import PlacedFact
from binder_solid.presence import is_kernel_there

MOST_DRAWN = 120
"""Copies above which the hidden lines of the whole would take minutes."""


def picture_parts(design: Design) -> Contribution:
    """A `PictureFact` of the whole and of each assembly; parts that stand in one another."""
    copies = buildable(design)
    if len(copies) < 2 or not is_kernel_there():
        return Contribution()
    facts: list[Fact] = []
    if len(copies) <= MOST_DRAWN:
        whole = pictured("arrangement", [(one, NOWHERE_AT) for one in copies], SIDES)
        facts += [whole] if whole is not None else []
        facts += _exploded(design, copies)
    findings = [*collisions(design, copies), *caged(design, copies)]
    return Contribution(facts=facts, findings=findings)


def _exploded(design: Design, copies: tuple[PlacedFact, ...]) -> Iterator[PictureFact]:
    for one in design.assemblies.values():
        units = units_of(one, design, copies)
        if len(units) < 2:
            continue
        lines = explode(units, design)
        moved = [(copy, unit.moved) for unit in units for copy in unit.copies]
        fact = pictured(f"exploded {one.name}", moved, ("isometric",), lines)
        if fact is not None:
            yield fact
