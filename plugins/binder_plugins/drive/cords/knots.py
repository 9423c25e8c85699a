"""The knot of a cord behind its flange, to whether it goes in there."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from typing import TYPE_CHECKING

from binder.api import Design, Diagnostic
from binder_plugins.drive import cord_codes as codes
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.train.strength import rope_of
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from binder_solid.facts import Located, Stretch

# A figure of eight, drawn tight, is so many cords thick; a hole for the end of a cord no wider
# than so many. Common practice, no source.
KNOT_CORDS = 3.0
_WIDEST = 2.0
_NEAR_MM = 0.05


def check_knots(design: Design) -> Iterator[Diagnostic]:
    """A finding for each drum whose knot has less room behind its flange than it is thick."""
    for joint in design.joints.values():
        rope = rope_of(joint, design) if joint.kind == "winds" else 0.0
        form = design.facts.about(FormFact, joint.ends[0].item)
        if not rope or form is None:
            continue
        for hole in form.located:
            step = _behind(hole, form.stretches, rope)
            wanted = KNOT_CORDS * rope
            if step is None or step.end - step.start >= wanted - _NEAR_MM:
                continue
            yield codes.KNOT_HAS_NO_ROOM.at(
                hole.at,
                f"behind '{hole.name}' is {size(step.end - step.start, design)}; a figure of "
                f"eight in a cord of {size(rope, design)} is {size(wanted, design)} thick",
                help=f"make '{step.name}' {size(wanted, design)} long, or take a thinner cord",
            )


def _behind(hole: Located, steps: tuple[Stretch, ...], rope: float) -> Stretch | None:
    """The step that the knot lies on, where a further one bars the way beyond it."""
    across = hole.diameter or 0.0
    is_along = abs(hole.frame.z[0]) > 1 - 1e-6
    if not is_along or not rope <= across <= _WIDEST * rope:
        return None
    aside = (hole.spots[0][1] ** 2 + hole.spots[0][2] ** 2) ** 0.5
    x = hole.spots[0][0] - hole.frame.z[0] * _NEAR_MM
    flange = next((one for one in steps if one.start < x < one.end), None)
    inner = steps[1:-1]
    for one, other in pairwise(steps):
        if flange not in (one, other):
            continue
        step = other if one is flange else one
        is_clear = step.across / 2 < aside - across / 2 + _NEAR_MM
        if (
            step in inner
            and is_clear
            and not _is_drum(step, one if step is other else other, steps)
        ):
            return step
    return None


def _is_drum(step: Stretch, flange: Stretch, steps: tuple[Stretch, ...]) -> bool:
    """Whether a step is the one that the cord lies on: it has a flange at its other end too."""
    at = steps.index(step)
    other = steps[at + 1] if steps[at - 1] is flange else steps[at - 1]
    return other.across > step.across + _NEAR_MM
