"""Pieces of an assembly to the finding that no step of it puts them on."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Design, Diagnostic, Fabrication, HardwareFact, ShaftFact
from binder_plugins.buildorder import codes
from binder_plugins.buildorder.closing import joints_closed_in


def check_unput(design: Design) -> Iterator[Diagnostic]:
    """Members that are in no joint, in no row along a shaft, and in no step that is written.

    An assembly without any joint or step is a heap yet: nothing is told of it.
    """
    known = _put_on(design)
    for one in design.assemblies.values():
        if not one.steps and not joints_closed_in(one, design):
            continue
        for member in one.members:
            if member.item in design.assemblies or _is_put(member.item, known, design):
                continue
            if not _is_written(member.item, one, design):
                yield _found(member.item, one)


def _put_on(design: Design) -> frozenset[str]:
    """All items that a joint, its hardware, a rope or a row along a shaft puts on."""
    found: set[str] = set()
    for joint in design.joints.values():
        found |= {*joint.items, joint.held_by}
        over = getattr(joint.entry, "over", None)
        found |= {str(one) for one in over} if isinstance(over, list) else set()
        found.add(str(getattr(joint.entry, "dead_end", "")))
    for shaft in design.facts.all(ShaftFact):
        found |= {piece.item for piece in shaft.pieces}
    return frozenset(found | {one.name for one in design.facts.all(HardwareFact)})


def _is_put(item: str, known: frozenset[str], design: Design) -> bool:
    """Whether a step has the item, or a piece that it is joined of."""
    whole: Fabrication | None = design.fabrications.get(item)
    pieces = [piece.item for piece in whole.pieces] if whole is not None else []
    return item in known or any(piece in known for piece in pieces)


def _is_written(item: str, one: Assembly, design: Design) -> bool:
    """Whether the maker's own steps or notes tell where it goes."""
    found = design.item(item)
    title = found.title.partition(",")[0].lower() if found is not None else item
    words = " ".join((*one.steps, one.note)).lower()
    is_noted = found is not None and bool(found.note)
    return is_noted or title in words or item.replace("_", " ").lower() in words


def _found(item: str, one: Assembly) -> Diagnostic:
    return codes.PUT_ON_BY_NO_STEP.at(
        one.at,
        f"no step of '{one.name}' puts '{item}' on",
        help=f"put '{item}' in a joint, in the row along its shaft, or in `steps:` of '{one.name}'",
    )
