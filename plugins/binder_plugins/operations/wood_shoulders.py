"""Shoulders across wood: marked all round, sawn in one set-up, and the cheeks pared after them.

Each face as a set-up of its own leaves shoulders that do not meet at the corners: one knife line
runs round all of them, and the saw follows it by one fence. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.sides import SAID
from binder_solid.along_axes import spans_of

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.flat import Flat
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

_ACROSS = frozenset({"stepped", "slotted"})
_SAME, _SQUARE = 1e-6, 0.9
_TURNED = "its faces, one after the other"
# How long an outline the saw, and the chisel after it, is taken to follow, in mm of filing.
_EACH = 10.0
_FACES = ("front", "back", "top", "underside")


@dataclass(frozen=True, slots=True)
class Shoulder:
    """A cut across the grain from one face: its shoulders in mm from the left end, and how deep."""

    cut: Located
    at: tuple[float, ...]
    deep: float


def shoulder_of(one: Located, size: Sequence[float]) -> Shoulder | None:
    """The shoulders of a step or slot that runs right across a board `size` mm large.

    None for what is cut along the grain, from an end, right through, or short of an edge.
    """
    if one.kind not in _ACROSS or len(one.tools) != 1 or one.depth is None:
        return None
    spans = spans_of(one.tools[0])
    way = max(range(3), key=lambda n: abs(one.frame.z[n]))
    if spans is None or way == 0 or abs(one.frame.z[way]) < _SQUARE:
        return None
    low, high = spans[3 - way]
    if low > _SAME or high < size[3 - way] - _SAME:
        return None
    at = tuple(x for x in spans[0] if _SAME < x < size[0] - _SAME)
    return Shoulder(one, at, one.depth) if at else None


def shouldered_at(work: Work) -> tuple[float, ...]:
    """Where a wooden part has shoulders, in mm from its left end."""
    if work.form is None or (work.group is not None and work.group.name != "wood"):
        return ()
    found = (shoulder_of(one, work.form.size) for one in work.form.located)
    return tuple(x for one in found if one is not None for x in one.at)


def shouldered(flat: Flat, found: Sequence[Shoulder]) -> None:
    """One set-up in which all shoulders are marked and sawn, and one for the cheeks."""
    marks = flat.work.act(
        "mark-out",
        f"{_lines(flat, found)}; {_gauged(flat, found)}",
        feature="marks of the shoulders",
        tool="sharp knife, square, marking gauge",
    )
    saws = [
        flat.work.act(
            "file",
            f"saw {_which(one)}, down to the gauge line: {one.cut.note}",
            feature=one.cut.name,
            tool="tenon saw",
            amount=_EACH,
            tags=("rough",),
        )
        for one in found
    ]
    fence = "by hand, hard against its fence, face after face"
    flat.add(
        "bench", "", Grip("bench hook", "bench", fence), "the best face and edge", [marks, *saws]
    )
    cheeks = [
        flat.work.act(
            "file",
            f"{_cheek(one)} with the chisel, down to the gauge line and square into the shoulder",
            feature=one.cut.name,
            tool="chisel, square",
            amount=_EACH,
            tags=("finish",),
        )
        for one in found
    ]
    vice = bench_vice(flat.workshop) or "vice"
    flat.add("bench", "", Grip(vice, "bench", _TURNED), "the shoulders and gauge lines", cheeks)


def _lines(flat: Flat, found: Sequence[Shoulder]) -> str:
    """`knife a line all round, 107.5 mm from the left end, by the square ...`."""
    places: dict[float, list[str]] = {}
    for one in found:
        for x in one.at:
            places.setdefault(round(x, 3), []).append(one.cut.face)
    long = flat.form.size[0]
    said = []
    for x, faces in sorted(places.items()):
        off, end = min((x, "left"), (long - x, "right"))
        is_round = set(_FACES) <= set(faces)
        where = "all round" if is_round else f"on the {_named(faces)}"
        said.append(f"{where}, {flat.work.mm(off)} from the {end} end")
    lines = "a line" if len(said) == 1 else "lines"
    return (
        f"knife {lines} {'; '.join(said)}, the square against the best face, then the best edge, "
        "each from where the last one ended"
    )


def _gauged(flat: Flat, found: Sequence[Shoulder]) -> str:
    """`gauge how deep from the faces themselves: 1 mm from the front and back, ...`."""
    depths: dict[float, list[str]] = {}
    for one in found:
        depths.setdefault(round(one.deep, 3), []).append(one.cut.face)
    told = ", ".join(
        f"{flat.work.mm(deep)} from the {_named(faces)}" for deep, faces in depths.items()
    )
    return f"gauge how deep, on the sides and round the end: {told}; hatch the waste"


def _named(faces: Sequence[str]) -> str:
    names = list(dict.fromkeys(SAID.get(face, face) for face in faces))
    return " and ".join(filter(None, (", ".join(names[:-1]), names[-1])))


def _which(one: Shoulder) -> str:
    face = SAID.get(one.cut.face, one.cut.face)
    many = "shoulder" if len(one.at) == 1 else "two shoulders"
    return f"the {many} on the {face}, in the waste beside the line"


def _cheek(one: Shoulder) -> str:
    what = "cheek" if len(one.at) == 1 else "floor"
    return f"pare the {what} on the {SAID.get(one.cut.face, one.cut.face)}"


def shoulders(flat: Flat) -> Iterator[Shoulder]:
    """Those of a wooden part; nothing of metal, which is milled."""
    if not flat.is_wood:
        return
    for one in flat.form.located:
        found = shoulder_of(one, flat.form.size)
        if found is not None:
            yield found
