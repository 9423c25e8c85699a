"""Gears of the scrap box to facts: what each may be."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Joint
from binder_plugins.drive.pairs.facts import FoundFact
from binder_plugins.drive.train.salvage import identified, salvaged
from binder_plugins.drive.train.told import module_told, teeth_of
from binder_trade.explained import NotDefined


def found_facts(joint: Joint, design: Design) -> Iterator[FoundFact]:
    """Each end of a gear drive that lies in the scrap box and was measured."""
    told = module_told(joint, design)
    said = float(told) if told is not None else None
    teeth = [teeth_of(joint, number, design) for number in range(len(joint.ends))]
    for number, count in enumerate(teeth):
        item = salvaged(joint, number, count, design)
        if item is None or count is None:
            continue
        mate = teeth[number - 1] if number else teeth[1]
        outside = dict(item.sizes)["outside"].mm
        found = identified(item, count)
        if isinstance(found, NotDefined):
            yield FoundFact(
                item.name, joint.name, count, outside, mate or 0, said, None,
                found.reason, found.way_out,
            )  # fmt: skip
        else:
            yield FoundFact(item.name, joint.name, count, outside, mate or 0, said, found)
