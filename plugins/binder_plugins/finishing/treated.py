"""Parts and fabrications of a design that have a finish, with what it asks for."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Fabrication, MaterialFact, Part, Span
from binder_plugins.finishing.heat import Heat, heat_for
from binder_plugins.finishing.processes import Process, processes_in


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


def _place(item: Part | Fabrication, design: Design) -> Span:
    """Where the words of the finish stand in the spec."""
    written = design.spec.written
    table = written.parts if isinstance(item, Part) else written.fabrications
    span = getattr(table[item.name].finish, "span", item.at)
    return span if isinstance(span, Span) else item.at


def _says(text: str, word: str) -> bool:
    words = re.findall(r"[a-z]+", text.lower())
    return any(one == word and (n == 0 or words[n - 1] != "not") for n, one in enumerate(words))
