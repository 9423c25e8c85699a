"""Which way a drum and its crank turn to wind, and where the cord leaves, seen from the crank."""

from __future__ import annotations

from binder.api import Design, Joint, TrainFact, TurningFact
from binder_plugins.drive.cords.runs import Run, drum_axis, off_axis, runs_of, winding
from binder_plugins.drive.duties.duty import Rows
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.standing import Axis
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus

_STEEP = 0.5
_PARALLEL = 0.999


def hand_rows(joint: Joint, design: Design) -> Rows:
    """`Leaves the drum` and `Winds`, where a pawl holds the drum; else nothing tells the hand."""
    way, axis = winding(joint, design), drum_axis(joint, design)
    runs = runs_of(joint, design)
    if way is None or axis is None or not runs:
        return ()
    side, look = _look(joint, axis, design)
    turns = [f"the drum {_round(way, look)}"]
    crank = _crank(joint, way, axis, design)
    if crank is not None:
        turns.append(f"the {side} {_round(crank, look)}")
    seen = f"seen from the {side}" if side else "seen from the front"
    return (
        ("Leaves the drum", f"{_leaves(runs[0], axis)}, the way that the pawl holds"),
        ("Winds up", f"{seen}: {', '.join(turns)}"),
    )


def _round(way: Vector, look: Vector) -> str:
    """A right-handed turn about an axis goes clockwise for who looks along it."""
    return "clockwise" if dot(way, look) > 0 else "anticlockwise"


def _look(joint: Joint, axis: Axis, design: Design) -> tuple[str, Vector]:
    """The item by hand on the mover, and the direction from its side along the drum's axis."""
    train = design.facts.about(TrainFact, "")
    name = design.joints[train.movers[0]].ends[0].item if train and train.movers else ""
    copies = {one.item: one for one in reversed(design.facts.all(PlacedFact))}
    mover, drum, item = copies.get(name), copies.get(joint.ends[0].item), design.item(name)
    if mover is not None and drum is not None and item is not None:
        along = dot(minus(drum.frame.origin, mover.frame.origin), axis.way)
        sign = 1.0 if along > 0 else -1.0
        return item.title, (sign * axis.way[0], sign * axis.way[1], sign * axis.way[2])
    sign = 1.0 if axis.way[1] > 0 else -1.0
    return "", (sign * axis.way[0], sign * axis.way[1], sign * axis.way[2])


def _crank(joint: Joint, way: Vector, axis: Axis, design: Design) -> Vector | None:
    """The axis about which the mover turns as the drum winds, where the two lie along."""
    from binder_plugins.drive.standing import axis_of

    train = design.facts.about(TrainFact, "")
    body = design.facts.about(TurningFact, train.mover_bodies[0]) if train is not None else None
    drum = turning_of(joint.ends[0].item, design)
    own = axis_of(body.items, design) if body is not None else None
    if body is None or drum is None or own is None or not (body.has_way and drum.has_way):
        return None
    if abs(dot(own.way, axis.way)) < _PARALLEL or not (body.speeds[0] and drum.speeds[0]):
        return None
    sign = 1.0 if body.speeds[0] * drum.speeds[0] > 0 else -1.0
    return (sign * way[0], sign * way[1], sign * way[2])


def _leaves(run: Run, axis: Axis) -> str:
    """`over the top`, `from underneath`, or the side of the drum where the cord leaves it."""
    aside = off_axis(run.lines[0][0], axis)
    if aside[2] > _STEEP:
        return "over the top"
    if aside[2] < -_STEEP:
        return "from underneath"
    towards = dot(aside, minus(run.rounds[1].middle, axis.origin))
    return "on the near side of the sheave" if towards > 0 else "on the side away from the sheave"
