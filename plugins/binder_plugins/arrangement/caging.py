"""Parts that lie inside another one to those that no straight pull gets out.

It is judged pair by pair, by the solids: a part whose box lies in the box of another is moved
out in steps along its joint's axis, then in the six directions of the model, both ways. Where
it meets more of the other than it does at rest on every one of these, it is caged. A box that
a lid closes is two parts, and is left in peace: the lid goes on last.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product

from binder.api import Design, Diagnostic
from binder_plugins.arrangement import codes
from binder_plugins.arrangement.space import AXES, scaled
from binder_solid.cache import own_store
from binder_solid.forms import Frame, Vector
from binder_solid.jobs import Crowd, Crowded
from binder_solid.placed import PlacedFact
from binder_solid.solid import NamedForm
from binder_solid.space import dot, placed, plus
from binder_solid.spread import answered

Box = tuple[Vector, Vector]
_EPS = 1e-6
_STEPS = 6
_MOST = 60
LEAST = 0.05


def caged(design: Design, copies: Sequence[PlacedFact]) -> Iterator[Diagnostic]:
    """A finding for each item that one other part holds from all sides."""
    told: set[str] = set()
    for inner, outer in list(_enclosed(copies))[:_MOST]:
        if inner.item in told or any(_comes_out(inner, outer, way) for way in _ways(inner)):
            continue
        told.add(inner.item)
        item = design.item(inner.item)
        yield codes.PART_CAGED.at(
            item.at if item is not None else design.spec.resolved.document.span(()),
            f"'{inner.subject}' cannot be got out of '{outer.subject}', nor in",
            help=f"split '{outer.item}', or leave it open on one side",
        )


def _ways(one: PlacedFact) -> Iterator[Vector]:
    """Its own axis first, which mostly answers."""
    for way in (one.way, *AXES):
        yield way
        yield scaled(way, -1.0)


def _enclosed(copies: Sequence[PlacedFact]) -> Iterator[tuple[PlacedFact, PlacedFact]]:
    boxes = [box_of(one) for one in copies]
    for (inner, small), (outer, large) in product(zip(copies, boxes, strict=True), repeat=2):
        if inner is not outer and _lies_in(small, large) and not _lies_in(large, small):
            yield inner, outer


def _lies_in(small: Box, large: Box) -> bool:
    return all(
        least >= low - _EPS and most <= high + _EPS
        for least, low, most, high in zip(small[0], large[0], small[1], large[1], strict=True)
    )


def box_of(one: PlacedFact) -> Box:
    """The box of a copy along the axes of the model."""
    (a, b, c), (d, e, f) = one.corners
    points = [placed(at, one.frame) for at in product((a, d), (b, e), (c, f))]
    least = (min(p[0] for p in points), min(p[1] for p in points), min(p[2] for p in points))
    most = (max(p[0] for p in points), max(p[1] for p in points), max(p[2] for p in points))
    return least, most


def _comes_out(inner: PlacedFact, outer: PlacedFact, way: Vector) -> bool:
    """Whether it never meets more of the other on its way than it does at rest."""
    far = _exit(box_of(inner), box_of(outer), way)
    places = [far * n / _STEPS for n in range(_STEPS + 1)]
    moved = tuple(
        NamedForm(str(n), inner.form, _moved(inner.frame, way, place))
        for n, place in enumerate(places)
    )
    pairs = tuple((str(n), str(m)) for n in range(len(places)) for m in range(n))
    answer = answered(
        Crowd((NamedForm("outer", outer.form, outer.frame), *moved), pairs), own_store()
    )
    if not isinstance(answer, Crowded):
        return True
    shared = {clash.second: clash.volume_mm3 for clash in answer.clashes}
    return all(volume <= shared.get("0", 0.0) + LEAST for volume in shared.values())


def _exit(small: Box, large: Box, way: Vector) -> float:
    """How far a box must go until it has left another one."""
    reach = sum(abs(part) * (b - a) for part, a, b in zip(way, *large, strict=True))
    back = sum(abs(part) * (b - a) for part, a, b in zip(way, *small, strict=True))
    apart = dot(way, _middle(small)) - dot(way, _middle(large))
    return reach / 2 - apart + back / 2


def _middle(box: Box) -> Vector:
    return scaled(plus(box[0], box[1]), 0.5)


def _moved(frame: Frame, way: Vector, far: float) -> Frame:
    return Frame(plus(frame.origin, way, far), frame.z, frame.x)
