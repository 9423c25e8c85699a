"""Every item of a design as the planner takes it up: its form, stock, metal and halves."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import CutSize, Design, Fabrication, HalfFact, MaterialFact, Part, TogetherFact
from binder_making.cutting import Group, Machine, group_of
from binder_plugins.operations.bench import instruments
from binder_plugins.operations.work import WHOLLY, Work
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Iterator


def works(design: Design) -> Iterator[Work]:
    """Every part and fabrication with its form, stock, metal and halves."""
    halves: dict[str, dict[str, list[HalfFact]]] = {}
    for one in design.facts.all(HalfFact):
        halves.setdefault(one.item, {}).setdefault(one.place, []).append(one)
    tools = instruments(design.workshop)
    machines: dict[str, Machine | None] = {}
    left = _left(design)
    made: list[Part | Fabrication] = [*design.parts.values(), *design.fabrications.values()]
    for item in made:
        at = {place: tuple(found) for place, found in halves.get(item.name, {}).items()}
        yield Work(
            design,
            item,
            design.facts.about(FormFact, item.name),
            design.facts.about(CutSize, item.name),
            _group(design, item),
            at,
            tools,
            left.get(item.name, {}),
            machines=machines,
        )


def _left(design: Design) -> dict[str, dict[str, tuple[TogetherFact, ...]]]:
    """By item and place the work in which it gets its size, what is wholly left first."""
    found: dict[str, dict[str, tuple[TogetherFact, ...]]] = {}
    for fact in sorted(design.facts.all(TogetherFact), key=lambda one: one.how not in WHOLLY):
        for place in fact.left:
            item, _, name = place.partition(".")
            at = found.setdefault(item, {})
            at[name] = (*at.get(name, ()), fact)
    return found


def _group(design: Design, item: Part | Fabrication) -> Group | None:
    """The metal; of a fabrication that of its pieces, where all that are made here have one."""
    names = [one.item for one in item.pieces] if isinstance(item, Fabrication) else [item.name]
    found = {
        group_of(f"{metal.id} {metal.group}".replace("-", " "))
        for name in names
        if (metal := design.facts.about(MaterialFact, str(name))) is not None
    }
    return found.pop() if len(found) == 1 else None
