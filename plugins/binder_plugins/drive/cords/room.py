"""A hanging load to how far it goes up and down over the bench that the model stands on."""

from __future__ import annotations

from binder.api import Design, Joint, Size
from binder_plugins.drive.cords.runs import Round, runs_of
from binder_plugins.drive.train.strength import tackle_of
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.stands_at import corners_of


def travel_mm(joint: Joint) -> float:
    """How far the load goes, as it is written, in mm; 0 where that is left open."""
    height = getattr(joint.entry, "height", None)
    return float(height.mm) if isinstance(height, Size) else 0.0


def room_mm(joint: Joint, design: Design) -> float | None:
    """From the bench up to where the load is when its block comes to what stops it, in mm.

    The rims of the sheaves stop one another, not the grooves that the cord lies in; and a block
    is not drawn up past what its cord is made fast to. What hangs lowest counts: all of the
    block's own assembly. None where the sheave or what stands is not placed.
    """
    rounds = [one.rounds[1] for one in runs_of(joint, design)]
    stands = [one for one in design.facts.all(PlacedFact) if not one.onto]
    if not rounds or rounds[0].radius <= 0 or not stands:
        return None
    bench = min(corner[2] for one in stands for corner in corners_of(one))
    sheave = rounds[0]
    if tackle_of(joint).falls < 2:
        return sheave.middle[2] - sheave.radius - bench
    if len(rounds) < 2 or rounds[1].radius <= 0:
        return None
    block = rounds[1]
    low, high = _hung_span(block.copy.item, sheave.copy.item, design)
    rims = _rim(sheave, design) + _rim(block, design)
    tops = [sheave.middle[2] - rims - (block.middle[2] - low)]
    # The two lines lean alike: as the loop grows short, its bottom comes to the dead end's height.
    dead = [one for one in rounds[2:] if one.radius <= 0]
    tops += [min(corner[2] for corner in corners_of(one.copy)) - (high - low) for one in dead]
    return min(tops) - bench


def _rim(one: Round, design: Design) -> float:
    """The radius of a sheave over all in mm."""
    form = design.facts.about(FormFact, one.copy.item)
    steps = form.stretches if form is not None else ()
    return max((step.across for step in steps), default=2 * one.radius) / 2


def _hung_span(block: str, sheave: str, design: Design) -> tuple[float, float]:
    """From where to where in mm, as it stands, all that hangs with the block reaches upwards."""
    hung = _hung_with(block, sheave, design)
    heights = [
        corner[2]
        for one in design.facts.all(PlacedFact)
        if one.item in hung
        for corner in corners_of(one)
    ]
    return min(heights), max(heights)


def _hung_with(block: str, sheave: str, design: Design) -> frozenset[str]:
    """The items of the smallest assembly with the block in it and without the sheave above."""
    holding = [
        items
        for one in design.assemblies.values()
        if block in (items := frozenset(member.item for member in one.members))
        and sheave not in items
    ]
    return min(holding, key=len, default=frozenset()) | {block}
