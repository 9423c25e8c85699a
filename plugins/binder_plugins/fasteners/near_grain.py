"""Wood screws where the parts stand, to how near they come to an edge and an end of the timber."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Design, Diagnostic, HardwareFact, Joint, MaterialFact, exact, shown_length
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.halves import WOODS
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, minus, placed
from binder_trade.hardware import NotListed, wood_screw

# Diameters of the screw from an edge, and from an end along the grain, with a pilot drilled.
# Source: recommended distances for wood screws in the commentary of the American National Design
# Specification for wood construction, from memory.
_FROM_EDGE, _FROM_END = 2.5, 5.0
NUMBER = re.compile(r"no\. ([0-9]+) ")
_PASSING = frozenset({"drilled", "slotted", "countersunk"})
_SAME = 0.05


def check_near_grain(design: Design) -> Iterator[Diagnostic]:
    """A finding for each joint whose wood screws would split the timber at its edge or end."""
    for fact in design.facts.all(HardwareFact):
        joint, across = design.joints.get(fact.joint), shank_mm(fact.what)
        if joint is None or across is None:
            continue
        found = min(_distances(joint, across, design), default=None)
        if found is not None and found[0] < -_SAME:
            _, has, needs, where, board = found
            told = getattr(joint.entry, "fastener", None)
            yield hole_codes.SCREW_SPLITS_WOOD.at(
                told.span if told is not None else joint.at,
                f"the screws of '{joint.name}' stand {said(has, design)} from an {where} of "
                f"'{board}'; {said(needs, design)} is the least",
                help="bring them in, make the timber larger, or take a thinner screw",
            )


def shank_mm(what: str) -> float | None:
    """The shank of a wood screw by its words, in mm; None for what is none."""
    number = NUMBER.search(what)
    if number is None or "wood screw" not in what:
        return None
    try:
        return wood_screw(int(number[1])).shank_mm
    except NotListed:
        return None


def said(mm: float, design: Design) -> str:
    """A length in mm to a hundredth, in the units of the model."""
    return shown_length(exact(round(mm, 2)), design.units)


def _distances(
    joint: Joint, across: float, design: Design
) -> Iterator[tuple[float, float, float, str, str]]:
    """What is over or lacking in mm, what there is and must be, from where, and of what."""
    boards = [name for name in joint.items if is_wood(name, design)]
    stands = [one for one in design.facts.all(PlacedFact) if one.item in joint.items]
    for board in (one for one in stands if one.item in boards[-1:]):
        for copy in (one for one in stands if one.item not in boards[-1:]):
            for point, way in screws_through(copy, joint, design):
                yield from _round(point, way, board, across)


def is_wood(name: str, design: Design) -> bool:
    """Whether a part is made of timber."""
    material = design.facts.about(MaterialFact, name)
    return material is not None and material.group in WOODS


def screws_through(
    copy: PlacedFact, joint: Joint, design: Design
) -> Iterator[tuple[Vector, Vector]]:
    """Where the screws go through a part, and which way, as the model sees them."""
    form = design.facts.about(FormFact, copy.item)
    for one in form.located if form is not None else ():
        if one.kind in _PASSING and _is_of(one, copy.item, joint, design):
            way = minus(placed(one.frame.z, copy.frame), copy.frame.origin)
            for x, y, z in one.spots:
                least, most = copy.corners
                aside = least[1] + most[1] - y if copy.is_opposite else y
                yield placed((x, aside, z), copy.frame), way


def _is_of(one: Located, item: str, joint: Joint, design: Design) -> bool:
    """Whether a hole is named by an end of the joint, or made by it."""
    named = any(end.item == item and end.place == one.name for end in joint.ends)
    features = design.parts[item].features if item in design.parts else ()
    return named or any(f.name == one.name and f.implied_by == joint.name for f in features)


def _round(
    point: Vector, way: Vector, board: PlacedFact, across: float
) -> Iterator[tuple[float, float, float, str, str]]:
    """The distances of a screw to the sides of the timber that it runs along.

    Timber lies with its length along the grain. A screw beside this board goes into another.
    """
    axes = (board.frame.x, frame_y(board.frame), board.frame.z)
    own = [dot(minus(point, board.frame.origin), axis) for axis in axes]
    found = []
    for n, axis in enumerate(axes):
        if abs(dot(way, axis)) < 0.5:
            has = min(own[n] - board.corners[0][n], board.corners[1][n] - own[n])
            where, times = ("end", _FROM_END) if n == 0 else ("edge", _FROM_EDGE)
            found.append((has - times * across, has, times * across, where, board.item))
    if all(has > -_SAME for _, has, *_ in found):
        yield from found
