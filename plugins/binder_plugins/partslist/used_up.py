"""What the work uses up, and what of the tools made for it is bought: one more row of the list."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import (
    Design,
    Fabrication,
    HalfFact,
    HardwareFact,
    Part,
    SmallWork,
    SupplyFact,
    TreatmentFact,
)
from binder_solid.filled import SPIRIT, is_degreased

# What is said of a joint in words to what it is bought as; common practice, no source.
_SAID = {
    "thread-lock": "thread-locking compound",
    "threadlock": "thread-locking compound",
    "thread seal": "sealant for threads",
}
# What is heated so far comes out black and glassy; common practice, no source.
_HOT = ("silver_soldered", "brazed", "silver soldered")
_PICKLE = "pickle: as the maker of the flux says, or citric acid"
_STEEL_FIRST = "cut the thread with a steel screw"
_ONE = "one serves all"
_METALS = ("brass", "bronze", "stainless")


def used_up(design: Design) -> dict[str, list[str]]:
    """Each thing with what it is for, in the order of the spec and of the work."""
    found: dict[str, list[str]] = {}
    supplies = ((one.what, one.of or one.subject) for one in design.facts.all(SupplyFact))
    sources = (
        *_of_notes(design),
        *_of_heat(design),
        *_of_bonds(design),
        *_of_screws(design),
        *_of_finishes(design),
        *supplies,
    )
    for what, name in sources:
        names = found.setdefault(what, [])
        if name not in names:
            names.append(name)
    return found


def for_tools(works: Iterable[SmallWork]) -> dict[str, tuple[int, list[str]]]:
    """What a tool that is made is made of, where no bar and no scrap box gives it: how many."""
    found: dict[str, list[str]] = {}
    for work in works:
        for what in work.buys:
            found.setdefault(what, []).append(work.subject)
    return {what: (1 if _ONE in what else len(of), of) for what, of in found.items()}


def _of_notes(design: Design) -> Iterator[tuple[str, str]]:
    for joint in design.joints.values():
        note = str(joint.entry.note or "").lower()
        yield from ((what, joint.name) for word, what in _SAID.items() if word in note)


def _of_heat(design: Design) -> Iterator[tuple[str, str]]:
    for joint in design.joints.values():
        if joint.kind in _HOT:
            yield _PICKLE, joint.name
    for one in design.fabrications.values():
        if one.joined.lower().replace("-", " ") in _HOT:
            yield _PICKLE, one.title


def _of_bonds(design: Design) -> Iterator[tuple[str, str]]:
    """What is degreased before it is bonded; wood is not."""
    for joint in design.joints.values():
        if is_degreased(joint, design):
            yield SPIRIT, joint.name


def _of_screws(design: Design) -> Iterator[tuple[str, str]]:
    """A steel screw of the size, where brass ones would be torn off in hard wood."""
    for half in design.facts.all(HalfFact):
        if _STEEL_FIRST not in half.how:
            continue
        for one in design.facts.all(HardwareFact):
            if one.joint == half.joint:
                yield f"{_in_steel(one.what)}, to cut the threads with", half.joint


def _in_steel(what: str) -> str:
    """The same screw in steel."""
    for metal in _METALS:
        if metal in what.split():
            return what.replace(metal, "steel")
    return f"{what}, of steel"


def _of_finishes(design: Design) -> Iterator[tuple[str, str]]:
    items: list[Part | Fabrication] = [*design.parts.values(), *design.fabrications.values()]
    for item in items:
        fact = design.facts.about(TreatmentFact, item.name)
        if fact is None:
            continue
        for step in (*fact.first, *fact.heat, *fact.bright, *fact.last):
            words = f"{item.title} ({item.finish})" if item.finish else item.title
            colour = _colour(item.finish or "")
            yield from ((what.format(colour=colour).strip(" ,"), words) for what in step.buys)


def _colour(finish: str) -> str:
    """`stone grey` of `painted stone grey, the holes masked`."""
    verb, _, rest = finish.partition(",")[0].partition(" ")
    return rest if verb.endswith("ed") else f"{verb} {rest}".strip()
