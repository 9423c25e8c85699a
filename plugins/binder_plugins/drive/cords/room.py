"""A hanging load to how far it goes up and down over the bench that the model stands on."""

from __future__ import annotations

from binder.api import Design, Joint, Size
from binder_plugins.drive.cords.runs import runs_of
from binder_plugins.drive.train.strength import tackle_of
from binder_solid.placed import PlacedFact
from binder_solid.stands_at import corners_of


def travel_mm(joint: Joint) -> float:
    """How far the load goes, as it is written, in mm; 0 where that is left open."""
    height = getattr(joint.entry, "height", None)
    return float(height.mm) if isinstance(height, Size) else 0.0


def room_mm(joint: Joint, design: Design) -> float | None:
    """From the bench up to where the load is when its block comes to the sheave, in mm.

    What hangs lowest counts: all of the block's own assembly. None where the sheave or what
    stands is not placed.
    """
    rounds = [one.rounds[1] for one in runs_of(joint, design)]
    stands = [one for one in design.facts.all(PlacedFact) if not one.onto]
    if not rounds or rounds[0].radius <= 0 or not stands:
        return None
    bench = min(corner[2] for one in stands for corner in corners_of(one))
    sheave = rounds[0]
    room = sheave.middle[2] - sheave.radius - bench
    if tackle_of(joint).falls < 2:
        return room
    if len(rounds) < 2 or rounds[1].radius <= 0:
        return None
    block = rounds[1]
    hung = _hung_with(block.copy.item, sheave.copy.item, design)
    low = min(
        corner[2]
        for one in design.facts.all(PlacedFact)
        if one.item in hung
        for corner in corners_of(one)
    )
    return room - block.radius - (block.middle[2] - low)


def _hung_with(block: str, sheave: str, design: Design) -> frozenset[str]:
    """The items of the smallest assembly with the block in it and without the sheave above."""
    holding = [
        items
        for one in design.assemblies.values()
        if block in (items := frozenset(member.item for member in one.members))
        and sheave not in items
    ]
    return min(holding, key=len, default=frozenset()) | {block}
