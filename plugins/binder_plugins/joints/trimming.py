"""Pegs glued through a part and longer than it is thick: cut flush when the glue is hard."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from binder.api import (
    Assembly,
    Before,
    Bought,
    Design,
    Joint,
    PlaceFact,
    Task,
    TaskKind,
    TogetherFact,
    parse_size,
)
from binder_plugins.joints.together import Drilling
from binder_solid.glued_in import fills

TRIMMED = "cut off flush"
_HARD = "the glue is hard before a saw pulls at what it holds"
_FLUSH = "the part lies flat, and is measured from its faces, when nothing stands out of them"
_LONG = re.compile(r"(\d[\d./ ]*(?:mm|in)) long\b")
# What stands out by less is taken off with the finish, in mm; common practice, no source.
_LEAST_MM = 0.1


def trimmings(joints: Iterable[Joint], design: Design, others: Iterable[TogetherFact]) -> Iterator[
    Drilling
]:  # fmt: skip
    """A task for each part that has longer pegs glued through it; `others` is other work on it."""
    there = [*design.facts.all(TogetherFact), *others]
    known = list(joints)
    for assembly in design.assemblies.values():
        part = fills(assembly, design)
        found = [one for one in known if part and _stands_out(one, part, design)]
        if found:
            yield _trimming(assembly, part, found[0], there, design)


def _stands_out(joint: Joint, part: str, design: Design) -> bool:
    """Whether a bought piece of the joint is longer than the through hole that it is glued in."""
    bought = [design.bought[name] for name in joint.items if name in design.bought]
    places = [design.facts.about(PlaceFact, str(end)) for end in joint.ends if end.item == part]
    hole = next((one for one in places if one is not None and one.is_through), None)
    if not bought or hole is None or hole.thickness is None:
        return False
    return _long(bought[0]) > float(hole.thickness) + _LEAST_MM


def _long(piece: Bought) -> float:
    """Its length in mm by its sizes or its words; 0 where neither tells it."""
    size = next((one for name, one in piece.sizes if name == "length"), None)
    if size is not None:
        return float(size.mm)
    said = _LONG.search(piece.what)
    return float(parse_size(said[1]).amount) if said else 0.0


def _trimming(
    assembly: Assembly, part: str, joint: Joint, there: Iterable[TogetherFact], design: Design
) -> Drilling:
    title = design.parts[part].title
    task = Task(
        f"trim {part}",
        f"cut the pegs of the {title} flush",
        TaskKind.JOIN,
        part,
        "what stands out of its faces is sawn off and pared when the glue is hard",
        joint.at,
    )
    fact = TogetherFact(task.id, TRIMMED, (joint.name,), items=(part,))
    later = [one.subject for one in there if part in one.items]
    later += [
        f"assemble {name}"
        for name, one in design.assemblies.items()
        if any(member.item == assembly.name for member in one.members)
    ]
    befores = [Before(f"assemble {assembly.name}", task.id, _HARD, at=joint.at)]
    befores += [Before(task.id, name, _FLUSH, at=joint.at) for name in later]
    return Drilling(task, fact, tuple(befores))
