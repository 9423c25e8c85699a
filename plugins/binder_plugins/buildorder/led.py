"""A rope that is made fast, to how it is led from there: over which sheaves, and where it ends."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, CordFact, Design, Joint
from binder_plugins.buildorder.closing import inside_of
from binder_plugins.buildorder.tied import cut_to, dead_end, is_tied_before, tie_of


def passed(joint: Joint) -> list[str]:
    """The items that a rope is led over, from the drum on."""
    over = getattr(joint.entry, "over", None)
    return [str(one) for one in over] if isinstance(over, list) else []


def led(joint: Joint, one: Assembly, design: Design) -> str:
    """What the step of a rope says besides, '' for every other joint."""
    return "".join(_clauses(joint, one, design))


def _clauses(joint: Joint, one: Assembly, design: Design) -> Iterator[str]:
    over, cord = passed(joint), design.facts.about(CordFact, joint.name)
    tie = tie_of(joint, design)
    if is_tied_before(joint, one, design):
        yield f"; it is knotted in {tie} already"
    elif tie:
        yield f"{cut_to(joint, design)}; one end through {tie}, a figure of eight behind it"
    if cord is not None and cord.leaves:
        yield f"; it leaves the drum {cord.leaves} ({cord.winds})"
    if over:
        way = [
            f"{'round' if n % 2 else 'over'} {_title(name, design)}" for n, name in enumerate(over)
        ]
        yield f"; lead it {', '.join(way)}"
    end = getattr(joint.entry, "dead_end", None)
    if end is not None:
        knot = " with two half hitches" if cord is not None else ""
        yield f"; make its other end fast to {dead_end(str(end), over, design)}{knot}"
    for name in _hanging(over, one, design):
        yield f"; {_title(name, design)} hangs in it"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"


def _hanging(over: list[str], one: Assembly, design: Design) -> Iterator[str]:
    """What goes in here with a sheave of the rope in it, and is held by nothing else."""
    mine = inside_of(one, design)
    for member in one.members:
        inner = design.assemblies.get(member.item)
        within = inside_of(inner, design) if inner is not None else frozenset()
        if within & set(over) and not _is_held(within, mine, design):
            yield member.item


def _is_held(within: frozenset[str], mine: frozenset[str], design: Design) -> bool:
    outside = mine - within
    return any(
        set(joint.items) & within and set(joint.items) & outside for joint in design.joints.values()
    )
