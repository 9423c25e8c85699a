"""Parts joined in a flame: what holds them while it burns, and what keeps their place.

A vice draws the heat off, so that the joint never reaches the alloy's heat: the parts stand free on
brick, held by wire or a weight. Common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.facts import Act, Grip
from binder_solid.laid_on import said_side
from binder_solid.set_there import turned_round
from binder_solid.stands_at import shown_mm, standing

if TYPE_CHECKING:
    from binder.api import Design, Joint
    from binder_plugins.operations.work import Work
    from binder_solid.stands_at import Standing

# Ends so near to one another, in mm, stand on one flat brick; common practice, no source.
_FLUSH_MM = 0.02
_HELD = "soft iron wire round both, or a weight on top; no vice or clamp on them"
# A step that cleans before it heats, as the rows of joints tell it: what is done with the faces
# apart, and the rest, by the verb that it begins with; and where the alloy is put then.
_APART = re.compile(r"(?P<faces>clean.+?), (?P<rest>(?P<verb>heat|sweat) .+)")
_ALLOY = {
    "heat": "lay snippets of the alloy, fluxed, in the upper corner of the joint all round, or "
    "touch its rod there when the flux has run clear, out of the flame; ",
    "sweat": "the tin on both faces is the alloy, a little more in the upper corner alone where no "
    "bright line shows all round; ",
}
HEARTH = Grip("soldering hearth", "bench", "brick, standing free: a vice draws off the heat")


def prepared(said: str, joint: str, work: Work) -> tuple[Act | None, str]:
    """What is done to the faces while they are apart, and what of the step is left for the flame.

    A bore with its mate in it is neither cleaned nor tinned.
    """
    found = _APART.match(said)
    if found is None:
        return None, said
    words = f"{found['faces']}, apart; touch them no more with bare fingers"
    tool = "fine abrasive cloth, flux and brush, iron" if "tin " in words else ""
    act = work.act("flux", words, tool=tool)
    return replace(act, joints=(joint,)), f"{_ALLOY.get(found['verb'], '')}{found['rest']}"


def placed(joint: Joint, works: Mapping[str, Work], work: Work) -> Act:
    """The parts set up for the flame: what stands on what, the stop, and what holds them."""
    design = work.design
    found = standing(joint, design)
    down = _down(joint, design)
    words = (
        f"{_stood(found, down, design)}{_turned(found, works, design)}; {_HELD}" if found else ""
    )
    act = work.act(
        "clamp-stack",
        words or f"put the parts together as they will stand; {_HELD}",
        tool="brick, iron wire, square",
        spoils="parts that swim on the alloy",
    )
    return replace(act, joints=(joint.name,))


def _down(joint: Joint, design: Design) -> str:
    """`, its top down`, where the part that stands round the other is not the same both ways."""
    found = turned_round(joint, design)
    return f", its {said_side(found.side)} down" if found is not None else ""


def _stood(found: Standing, down: str, design: Design) -> str:
    """The rod on the nearer of its ends, the other on that flat or on pieces of one height."""
    rod, other = _title(found.rod, design), _title(found.other, design)
    if found.low < -_FLUSH_MM:
        below = shown_mm(-found.low, design)
        return (
            f"stand {other} on a flat brick{down}, {rod} in it with its {found.end}-hand end down, "
            f"on a distance piece {below} high"
        )
    stood = f"stand {rod} on its {found.end}-hand end on a flat brick, square to it"
    if found.low <= _FLUSH_MM:
        return f"{stood}, and {other} round it on the same flat{down}: that is the stop"
    high = shown_mm(found.low, design)
    return (
        f"{stood}, and {other} round it{down}{',' if down else ''} on two distance pieces of "
        f"{high}, blackened with a soft pencil so that no alloy takes: they are the stop"
    )


def _turned(found: Standing, works: Mapping[str, Work], design: Design) -> str:
    """How the one is turned on the other; a hole that is not there yet is set out from it."""
    if not found.turn:
        return ""
    rod = works.get(found.rod)
    if rod is not None and rod.is_wholly_left(found.by):
        return f"; the {found.turn.rpartition(' the ')[2]} is drilled to it later"
    turn = found.turn.removeprefix("its ")
    return f"; the {turn} of {_title(found.rod, design)}: sight along a rod in it"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
