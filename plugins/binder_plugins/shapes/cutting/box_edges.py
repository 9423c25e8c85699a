"""Edges of blocks, plates and boards that are chamfered or rounded, to what is cut away."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations

from binder_plugins.shapes.cutting.pockets import edge_frame, parallel, wedge
from binder_plugins.shapes.cutting.task import CLEAR, Task
from binder_plugins.shapes.forming.body import FACES, Body
from binder_solid.forms import Arc, Form, Outline, Raised, Straight

Pair = tuple[str, str]
_UPRIGHT = ("left", "right", "front", "back")
_LYING = ("top", "underside")
# A plate is shaped in its outline; of a block the arrises are broken.
_FLAT = ("plate", "sheet")


def box_edges(task: Task) -> Iterator[Form]:
    """A prism for each edge: a wedge for a chamfer, a corner less a quarter round."""
    angle = math.radians(task.degrees("angle", 45.0))
    for face, side in pairs_of(task.word("on") or "edges", task.body):
        frame, long = edge_frame(task.body, face, side)
        if task.feature.kind == "rounded":
            yield Raised(quarter(task.size), long, frame)
        else:
            yield Raised(wedge(task.size, task.size * math.tan(angle)), long, frame)


def pairs_of(where: str, body: Body) -> tuple[Pair, ...]:
    """The edges that words mean, each by its two faces.

    `corners` are the upright ones; `edges` those of a plate's outline, and round the top of a
    block; a face means all round it, and of a plate's side its two corners.
    """
    every = [pair for pair in combinations((*_LYING, *_UPRIGHT), 2) if not parallel(*pair)]
    upright = tuple(pair for pair in every if not set(pair) & set(_LYING))
    is_flat = body.shape in _FLAT or _is_strip(body)
    if where == "all":
        return tuple(every)
    if where == "corners" or (where in ("edges", "outside") and is_flat):
        return upright
    if where in ("edges", "outside"):
        return tuple(pair for pair in every if "top" in pair)
    if where == "ends":
        return tuple(p for p in (upright if is_flat else every) if "left" in p or "right" in p)
    if where not in FACES:
        return ()
    among = upright if is_flat and where in _UPRIGHT else every
    return tuple(pair for pair in among if where in pair)


def _is_strip(body: Body) -> bool:
    """A length of flat bar is shaped like a plate."""
    long, wide, thick = body.size
    return body.shape == "cut" and thick < min(long, wide)


def quarter(radius: float) -> Outline:
    """The corner outside a quarter round, with a little beyond both faces."""
    lie = radius * (1 - math.sqrt(0.5))
    return Outline(
        (-CLEAR, -CLEAR),
        (
            Straight((radius, -CLEAR)),
            Straight((radius, 0.0)),
            Arc((lie, lie), (0.0, radius)),
            Straight((-CLEAR, radius)),
        ),
    )
