"""A design to findings about names and references."""

from __future__ import annotations

from collections.abc import Iterator
from graphlib import CycleError, TopologicalSorter
from itertools import chain

from binder.checks import codes
from binder.checks.places import places_of
from binder.design import Assembly, Bought, Design, End, Fabrication, Joint
from binder.diagnostics import Diagnostic, Labelled, Span
from binder.parameters.near import did_you_mean
from binder.spec.values import Member


def check_structure(design: Design) -> Iterator[Diagnostic]:
    """All findings of the checks without trade."""
    yield from _names(design)
    yield from _joint_names(design)
    yield from _members(design)
    for joint in design.joints.values():
        yield from _joint(joint, design)
    yield from _rings(design)
    yield from _left_over(design)
    yield from _unused_sizes(design)


def _names(design: Design) -> Iterator[Diagnostic]:
    seen: dict[str, Span] = {}
    for item in design.items():
        if item.name in seen:
            yield codes.NAME_TWICE.at(
                item.at,
                f"'{item.name}' is the name of two things",
                related=(Labelled(seen[item.name], "the first one"),),
                help="give one of them another name",
            )
        seen.setdefault(item.name, item.at)


def _joint_names(design: Design) -> Iterator[Diagnostic]:
    """A name under `drive` and under `joints`: of the two only one would be made."""
    written, document = design.spec.written, design.spec.resolved.document
    for name in written.joints:
        if name in written.drive:
            yield codes.NAME_TWICE.at(
                document.span(("joints", name), of_key=True),
                f"'{name}' is a joint and a drive",
                related=(
                    Labelled(document.span(("drive", name), of_key=True), "the drive of this name"),
                ),
                help="give one of them another name",
            )


def _known_item(name: str, span: Span, design: Design) -> Iterator[Diagnostic]:
    if design.item(name) is None:
        known = [item.name for item in design.items()]
        yield codes.ITEM_UNKNOWN.at(
            span,
            f"there is no '{name}'",
            help=did_you_mean(name, known) or "write it under parts or bought",
        )


def _members(design: Design) -> Iterator[Diagnostic]:
    for owner in _owners(design):
        for member in _parts_of(owner):
            yield from _known_item(member.item, member.span, design)


def _owners(design: Design) -> list[Assembly | Fabrication]:
    return [*design.assemblies.values(), *design.fabrications.values()]


def _parts_of(owner: Assembly | Fabrication) -> tuple[Member, ...]:
    return owner.members if isinstance(owner, Assembly) else owner.pieces


def _joint(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    for end in joint.ends:
        yield from _end(end, design)
    names = [str(end) for end in joint.ends]
    if len(set(names)) < len(names):
        yield codes.JOINT_WITH_ITSELF.at(
            joint.at,
            f"'{joint.name}' joins a surface to itself",
            help="name the two places that meet, each once",
        )
    master = joint.master
    if master is not None and str(master) not in names:
        yield codes.MASTER_NOT_AN_END.at(
            master.at,
            f"'{master}' is no end of '{joint.name}'",
            help=f"one of: {', '.join(names)}",
        )
    if joint.entry.held_by is not None:
        yield from _known_item(joint.held_by, joint.entry.held_by.span, design)


def _end(end: End, design: Design) -> Iterator[Diagnostic]:
    item = design.item(end.item)
    if item is None:
        yield from _known_item(end.item, end.at, design)
        return
    if isinstance(item, (Bought, Assembly)) or not end.place:
        return
    known = places_of(item)
    if end.place not in known:
        yield codes.PLACE_UNKNOWN.at(
            end.at,
            f"'{end.item}' has no '{end.place}'",
            related=(Labelled(item.at, "this part"),),
            help=did_you_mean(end.place, known) or f"it has: {', '.join(sorted(known))}",
        )


def _rings(design: Design) -> Iterator[Diagnostic]:
    sorter: TopologicalSorter[str] = TopologicalSorter()
    for assembly in design.assemblies.values():
        sorter.add(assembly.name, *(member.item for member in assembly.members))
    try:
        sorter.prepare()
    except CycleError as error:
        found: list[str] = error.args[1][:-1]
        first = found.index(min(found))
        ring = [*found[first:], *found[:first], found[first]]
        owner = design.assemblies[ring[0]]
        yield codes.ASSEMBLY_RING.at(
            owner.at, f"an assembly contains itself: {' in '.join(ring[:7])}"
        )


def _left_over(design: Design) -> Iterator[Diagnostic]:
    if not design.assemblies:
        return
    placed = {member.item for owner in _owners(design) for member in _parts_of(owner)}
    for item in chain(design.parts.values(), design.bought.values(), design.fabrications.values()):
        if item.name not in placed:
            yield codes.IN_NO_ASSEMBLY.at(
                item.at, f"'{item.name}' is in no assembly", help="add it to one under assemblies"
            )


def _unused_sizes(design: Design) -> Iterator[Diagnostic]:
    spec = design.spec
    for name, size in spec.resolved.sizes.items():
        if name not in spec.used:
            span = spec.resolved.document.span(("sizes", name), of_key=True)
            yield codes.SIZE_UNUSED.at(span, f"nothing uses the size '{name}' ({size.text})")
