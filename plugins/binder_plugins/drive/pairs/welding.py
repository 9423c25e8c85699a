"""A round cord to the work of making a belt of it: cut, welded and trimmed before it goes on."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Joint, SmallWork, exact, shown_length
from binder_plugins.drive.pairs.facts import BeltFact

# The weld tried on an offcut, made, held while it cools and trimmed. Common practice, no source.
_MINUTES = 20.0


def welded(belt: BeltFact, joint: Joint, design: Design) -> Iterator[SmallWork]:
    """The belt as small work that its drive waits for; nothing for one that is not cut."""
    if belt.free is None:
        return
    long = shown_length(exact(round(belt.free, 1)), design.units)
    thick = shown_length(exact(belt.section), design.units)
    yield SmallWork(
        subject=f"belt, {joint.name}",
        count=1,
        stock=f"the {thick} cord, see To buy and to find",
        steps=(
            f"cut the cord to {long}, both ends square, with a sharp knife",
            "weld an offcut first: both ends against a hot blade till a bead shows all round",
            "draw the blade out, press them together in line, and hold them still till cold",
            "weld the belt the same way, without a twist; by an open window: the fume harms",
            "bend the weld back on itself: one that opens is cut out and made again",
            "trim the bead flush with the cord",
        ),
        minutes=_MINUTES,
        of=joint.name,
        joints=(joint.name,),
        tools="steel rule, sharp knife, old blade, torch",
    )
