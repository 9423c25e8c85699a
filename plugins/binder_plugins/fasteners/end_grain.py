"""Wood screws as the parts stand: along the grain under a bearing, and heads over an edge."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, HardwareFact, Joint
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.near_grain import NUMBER, is_wood, said, screws_through
from binder_solid.facts import FormFact
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, minus
from binder_trade.hardware import NotListed, wood_screw

_RUNS = ("runs_in", "swivels")
_HAIR_MM = 0.05
_HOLES = ("drilled", "bored", "reamed")
Screw = tuple[PlacedFact, Vector, Vector]


def check_end_grain(design: Design) -> Iterator[Diagnostic]:
    """A finding for each joint whose screws run up the grain, or whose heads stand over."""
    for fact in design.facts.all(HardwareFact):
        joint, number = design.joints.get(fact.joint), NUMBER.search(fact.what)
        if joint is None or number is None or "wood screw" not in fact.what:
            continue
        screws = list(_standing(joint, design))
        board = next((name for name in joint.items if is_wood(name, design)), "")
        if _bears(joint, design) and any(_is_up(one, board, design) for one in screws):
            yield hole_codes.SCREW_IN_END_GRAIN.at(
                joint.ends[0].at,
                f"the screws of '{joint.name}' go into the end of '{board}', and hold a bearing",
                help="screw it to a side of the board; or bore the board across the grain where "
                "they go, and glue pegs in",
            )
        yield from _heads(joint, int(number[1]), screws, design)


def _standing(joint: Joint, design: Design) -> Iterator[Screw]:
    for copy in design.facts.all(PlacedFact):
        if copy.item in joint.items and not is_wood(copy.item, design):
            yield from ((copy, point, way) for point, way in screws_through(copy, joint, design))


def _bears(joint: Joint, design: Design) -> bool:
    """Whether a part that it holds carries what turns."""
    return any(
        one.kind in _RUNS and set(one.items) & set(joint.items) for one in design.joints.values()
    )


def _is_up(screw: Screw, board: str, design: Design) -> bool:
    """Whether a screw goes up the grain of a board, which lies along it, and through no peg."""
    _, point, way = screw
    for one in design.facts.all(PlacedFact):
        if one.item == board and abs(dot(way, one.frame.x)) > 0.5:
            return not _is_pegged(point, one, design)
    return False


def _is_pegged(point: Vector, board: PlacedFact, design: Design) -> bool:
    """Whether a hole across the grain, which is there for a peg, lies in the way of a screw."""
    form = design.facts.about(FormFact, board.item)
    there = minus(point, board.frame.origin)
    aside, high = dot(there, frame_y(board.frame)), dot(there, board.frame.z)
    for one in form.located if form is not None else ():
        half = (one.diameter or 0.0) / 2
        if one.kind in _HOLES and abs(one.frame.z[2]) > 0.5:
            for _, y, z in one.spots:
                deep = one.depth if one.depth is not None else board.corners[1][2]
                if abs(y - aside) < half and abs(z - high) < deep:
                    return True
    return False


def _heads(joint: Joint, number: int, screws: list[Screw], design: Design) -> Iterator[Diagnostic]:
    try:
        half = wood_screw(number).head_mm / 2
    except NotListed:
        return
    over = max((half - _to_edge(*one) for one in screws), default=0.0)
    if over > _HAIR_MM:
        yield hole_codes.HEAD_OVER_EDGE.at(
            joint.ends[0].at,
            f"the heads of '{joint.name}', {said(2 * half, design)} wide, stand "
            f"{said(over, design)} over the edge of the part under them",
            help=f"bring the holes in by {said(over, design)}, or take a thinner screw",
        )


def _to_edge(copy: PlacedFact, point: Vector, way: Vector) -> float:
    """From a hole to the nearest edge of its part, across the way of the screw."""
    axes = (copy.frame.x, frame_y(copy.frame), copy.frame.z)
    own = [dot(minus(point, copy.frame.origin), axis) for axis in axes]
    return min(
        min(own[n] - copy.corners[0][n], copy.corners[1][n] - own[n])
        for n, axis in enumerate(axes)
        if abs(dot(way, axis)) < 0.5
    )
