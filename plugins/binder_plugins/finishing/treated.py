"""Parts and fabrications of a design that have a finish, with what it asks for."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Fabrication, FitFact, HalfFact, MaterialFact, Part, Span, ThreadFact
from binder_plugins.finishing.heat import Heat, heat_for
from binder_plugins.finishing.processes import Process, processes_in

# Joints that are made after the coat, with a hole that locates and faces that bear.
_BEARING = frozenset({"pinned", "screwed", "bolted", "dowelled", "hinged"})


@dataclass(frozen=True, slots=True)
class Treated:
    """A thing with a finish: its words, its place in the spec, and the processes."""

    item: Part | Fabrication
    text: str
    at: Span
    processes: tuple[Process, ...]
    material: MaterialFact | None
    heat: Heat | None

    @property
    def is_hardened(self) -> bool:
        """Whether it is hardened through or in a case."""
        return _says(self.text, "hardened")

    @property
    def is_case(self) -> bool:
        """Whether it is case-hardened."""
        return bool(re.search(r"\bcase[- ]harden", self.text.lower()))

    @property
    def is_softened(self) -> bool:
        """Whether its stock is softened before it is cut."""
        return any(_says(self.text, word) for word in ("annealed", "softened"))

    @property
    def is_eased(self) -> bool:
        """Whether the stress is let out of it."""
        return "stress relieved" in self.text.lower().replace("-", " ")

    @property
    def is_tempered(self) -> bool:
        """Whether tempering is said."""
        return "temper" in self.text.lower()


def treated(design: Design) -> Iterator[Treated]:
    """All of them, in the order written."""
    items: list[Part | Fabrication] = [*design.parts.values(), *design.fabrications.values()]
    for item in items:
        if item.finish:
            material = material_of(item, design)
            at = _place(item, design)
            yield Treated(
                item, item.finish, at, processes_in(item.finish), material, heat_for(material)
            )


def material_of(item: Part | Fabrication, design: Design) -> MaterialFact | None:
    """Its material; that of a fabrication where all its made pieces are of one."""
    if isinstance(item, Part):
        return design.facts.about(MaterialFact, item.name)
    found = [
        fact
        for piece in item.pieces
        if (fact := design.facts.about(MaterialFact, piece.item)) is not None
    ]
    return found[0] if len({fact.id for fact in found}) == 1 else None


def bare_places(item: str, design: Design) -> tuple[str, ...]:
    """Fits, threads and seats of an item that no coat may reach, each with what it meets or is."""
    return (*_fits(item, design), *_threads(item, design), *_seats(item, design))


def _fits(item: str, design: Design) -> Iterator[str]:
    for fit in design.facts.all(FitFact):
        for place in (fit.hole, fit.shaft):
            owner, _, name = place.partition(".")
            if owner == item:
                clear = f"{max(fit.clearance_min_um, 0) / 1000:.3f} mm"
                yield f"{name or owner}: fit of '{fit.subject}', least clearance {clear}"


def _threads(item: str, design: Design) -> Iterator[str]:
    for thread in design.facts.all(ThreadFact):
        if thread.item == item:
            yield f"{thread.place}: thread {thread.designation}"


def _seats(item: str, design: Design) -> Iterator[str]:
    """Holes that locate, and faces that bear: paint between them opens what was drilled together.

    What is fixed before the coat, in a flame or by a filler, has its face covered already.
    """
    fits = {fit.subject for fit in design.facts.all(FitFact)}
    for half in design.facts.all(HalfFact):
        joint = design.joints.get(half.joint)
        if half.item != item or joint is None or half.joint in fits:
            continue
        mates = {end.item for end in joint.ends} - {item}
        if joint.kind in _BEARING and mates:
            named = [found.title for name in sorted(mates) if (found := design.item(name))]
            where = half.place.replace("_", " ")
            yield f"{where}: hole, and the face round it against the {' and the '.join(named)}"


def _place(item: Part | Fabrication, design: Design) -> Span:
    """Where the words of the finish stand in the spec."""
    written = design.spec.written
    table = written.parts if isinstance(item, Part) else written.fabrications
    span = getattr(table[item.name].finish, "span", item.at)
    return span if isinstance(span, Span) else item.at


def _says(text: str, word: str) -> bool:
    words = re.findall(r"[a-z]+", text.lower())
    return any(one == word and (n == 0 or words[n - 1] != "not") for n, one in enumerate(words))
