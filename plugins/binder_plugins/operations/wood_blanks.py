"""A board to its size by the plane: faces flat on the bench, then edges and ends in the vice.

A face that lies in the jaws cannot be planed. Common practice, no source.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Grip

if TYPE_CHECKING:
    from binder_plugins.operations.flat import Flat

_FLAT = "flat on the bench, against a bench stop"
_CLAMPED = "flat on the bench, clamped, the edge beyond it"
_PLANE, _WITH_SQUARE = "plane", "plane and try square"
_SPLITS = "a plane that runs off the end splits the edge"
_SAME = 1e-3
_FIRST, _SECOND = ("datum", "first-datum"), ("datum", "second-datum")


def planed(flat: Flat) -> None:
    """Two set-ups; the faces of a board that is bought just as thick stay as they come."""
    long, wide, high = flat.form.size
    mm = flat.work.mm
    if not _is_bought_so_thick(flat):
        words = (
            "plane the best face flat, out of wind by two straight edges; scribe all round from it "
            f"and plane the other to {mm(high)}"
        )
        act = flat.work.act("square", words, tool=_PLANE, feature="faces", tags=_FIRST)
        grip = Grip(_FLAT, "bench", "its faces, each up in turn")
        flat.add("bench", "", grip, "the best face", [act])
    acts = [
        flat.work.act(
            "square",
            f"plane one edge straight and square to the face, the other to {mm(wide)}",
            tool=_WITH_SQUARE,
            feature="edges",
            tags=_SECOND,
        ),
        flat.work.act(
            "square",
            f"plane the ends square, from both edges inwards, to {mm(long)}",
            tool=_WITH_SQUARE,
            feature="ends",
            tags=_SECOND,
            spoils=_SPLITS,
        ),
    ]
    flat.add("bench", "", _upright(flat, high), "the best face and edge", acts)


def _upright(flat: Flat, high: float) -> Grip:
    """The vice on both faces, where it opens as far as the board is thick."""
    name = bench_vice(flat.workshop)
    vice = flat.workshop.entry.holding.vices.get(name)
    if vice is None or vice.opens.mm < high:
        return Grip(_CLAMPED, "bench", "its faces")
    return Grip(name, "bench", "its faces, an edge or an end up", high)


def _is_bought_so_thick(flat: Flat) -> bool:
    cut = flat.work.cut
    if cut is None or cut.is_least or not cut.section:
        return False
    return any(abs(float(one) - flat.form.size[2]) < _SAME for one in cut.section)
