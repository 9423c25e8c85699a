"""A task to everything that is cut away for it: one set of tools for each of those alike."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from binder_plugins.shapes.cutting import holes, pockets, rounds, slots
from binder_plugins.shapes.cutting.box_edges import box_edges
from binder_plugins.shapes.cutting.task import Task
from binder_plugins.shapes.cutting.turned_edges import turned_edges
from binder_solid.forms import Form, Frame

EDGES = ("chamfered", "rounded")
# Made, and told in a note, but left smooth on the solid.
COSMETIC = ("screwed", "knurled")


def tools_for(task: Task, frames: tuple[Frame, ...]) -> Iterator[Form]:
    """What is cut away at each frame; nothing for what is not drawn."""
    kind = task.feature.kind
    if task.size <= 0.0:
        return
    if kind in EDGES:
        yield from turned_edges(task) if task.body.is_turned else box_edges(task)
        return
    make = _TOOLS.get(kind)
    if make is not None:
        for frame in frames:
            yield from make(task, frame)


_TOOLS: dict[str, Callable[[Task, Frame], Iterator[Form]]] = {
    "drilled": holes.hole,
    "reamed": holes.hole,
    "bored": holes.hole,
    "tapped": holes.hole,
    "centred": holes.centre,
    "counterbored": holes.recess,
    "spotfaced": holes.recess,
    "recessed": holes.recess,
    "countersunk": holes.countersink,
    "bossed": holes.boss,
    "slotted": slots.slot,
    "keywayed": slots.keyway,
    "t_slotted": slots.t_slot,
    "dovetailed": slots.dovetail,
    "pocketed": pockets.pocket,
    "stepped": pockets.rebate,
    "bevelled": pockets.bevel,
    "flatted": rounds.flat,
    "grooved": rounds.groove,
    "undercut": rounds.groove,
}
