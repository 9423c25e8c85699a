"""A screw that carries part of the model, as it is drawn: how far it is wound out, and the rest."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, exact, shown_length
from binder_plugins.arrangement.space import carried, scaled
from binder_solid.facts import FormFact
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.screw_ends import ScrewEnds, screw_ends
from binder_solid.space import dot, minus, placed

_NEAR = 0.01


@dataclass(frozen=True, slots=True)
class Wound:
    """A screw as it is drawn: `out` mm wound out of so much `travel`, by its joint.

    `items` go with it, along `way` in the model as it is wound out.
    """

    joint: str
    out: float
    travel: float
    way: Vector
    items: frozenset[str]

    @property
    def is_upright(self) -> bool:
        """Whether what it carries goes straight up as it is wound out."""
        return self.way[2] > 1 - _NEAR

    @property
    def here(self) -> str:
        """The end at which it is drawn; `as drawn` between the two."""
        low, high = self._named
        if self.out < _NEAR:
            return low
        return high if self.travel - self.out < _NEAR else "as drawn"

    def ends(self) -> Iterator[tuple[str, Vector]]:
        """The ends at which it is not drawn, and how far what it carries goes to each."""
        low, high = self._named
        if self.out > _NEAR:
            yield low, scaled(self.way, -self.out)
        if self.travel - self.out > _NEAR:
            yield high, scaled(self.way, self.travel - self.out)

    @property
    def _named(self) -> tuple[str, str]:
        return ("down", "up") if self.is_upright else ("wound in", "wound out")

    def told(self, design: Design) -> str:
        """`raised, 'screw in body' 20 mm up, as far as it goes`."""
        if self.out < _NEAR:
            return f"{'down,' if self.is_upright else 'with'} '{self.joint}' wound in"
        by = shown_length(exact(round(self.out, 2)), design.units)
        whole = ", as far as it goes" if self.travel - self.out < _NEAR else ""
        if self.is_upright:
            return f"raised, '{self.joint}' {by} up{whole}"
        return f"with '{self.joint}' {by} wound out{whole}"


def wound(design: Design) -> tuple[Wound, ...]:
    """Every screw whose ends are known, and which carries nothing that its nut carries as well."""
    found = []
    for joint in design.joints.values():
        ends = screw_ends(joint, design)
        shown = _shown(ends, design) if ends is not None else None
        if ends is None or shown is None:
            continue
        items = _with(ends.item, joint.name, design)
        travel = ends.shown_out - ends.shown_in
        is_between = -_NEAR < shown[0] - ends.shown_in < travel + _NEAR
        if is_between and ends.nut_place.partition(".")[0] not in items:
            found.append(Wound(joint.name, shown[0] - ends.shown_in, travel, shown[1], items))
    return tuple(found)


def _shown(ends: ScrewEnds, design: Design) -> tuple[float, Vector] | None:
    """How much of its thread a screw shows as it stands, in mm, and the way it is wound out."""
    item, _, place = ends.nut_place.partition(".")
    screw, nut = (_stands(one, design) for one in (ends.item, item))
    form = design.facts.about(FormFact, item)
    hole = next((one for one in form.located if one.name == place), None) if form else None
    if screw is None or nut is None or hole is None:
        return None
    way = carried(hole.frame.z, nut.frame)
    off = dot(
        minus(placed((ends.at, 0.0, 0.0), screw.frame), placed(hole.spots[0], nut.frame)), way
    )
    if off > -_NEAR:
        return off, way
    return (-ends.filled - off, scaled(way, -1.0)) if off < _NEAR - ends.filled else None


def _stands(item: str, design: Design) -> PlacedFact | None:
    """Where an item stands of which there is one."""
    found = [one for one in design.facts.all(PlacedFact) if one.item == item]
    return found[0] if len(found) == 1 else None


def _with(item: str, but: str, design: Design) -> frozenset[str]:
    """The items that hang together with one, by all joints but the one of its thread."""
    found, waiting = {item}, [item]
    while waiting:
        here = waiting.pop()
        for joint in design.joints_at(here):
            new = set(joint.items) - found if joint.name != but else set()
            found |= new
            waiting += sorted(new)
    return frozenset(found)
