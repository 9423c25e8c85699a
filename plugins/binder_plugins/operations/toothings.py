"""Teeth that are cut in a part: what they are, how many, how deep, and by which cutter."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder.api import Size
from binder_plugins.operations.end_cutters import STOUT_MM, end_cutter
from binder_plugins.operations.form_cutters import form_cutter_name
from binder_plugins.operations.ratchets import RatchetCut, fed_each_way, ratchet_cut

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact


_INCH = 25.4
# The depth of a tooth in modules: 1 of addendum, 1.25 of dedendum. Source: ISO 53, profile A.
WHOLE_DEPTH = 2.25
# The diameter of a gear cutter in mm: common practice, no source.
_CUTTER_MM = 50.0
_LEAST_TEETH = 3
_HAIR_MM = 0.005
_WHEELS = ("gear", "ratchet", "sprocket")


@dataclass(frozen=True, slots=True)
class Toothing:
    """Teeth to cut: what they are, how many, how deep in mm, by what cutter of what diameter.

    `module` in mm is 0 where they are no involute ones, or their mate tells it.
    """

    kind: str
    count: int
    depth: float
    said: str
    cutter: str
    across: float
    feature: str = "teeth"
    backs: str = ""
    module: float = 0.0
    is_dp: bool = False


def toothings(work: Work, form: FormFact) -> Iterator[Toothing]:
    """The teeth of the shape, then those of `toothed` features."""
    shape = getattr(work.item, "shape", None)
    for one in form.located:
        if one.kind in _WHEELS and one.name == "teeth":
            yield _of_shape(work, one.kind, one.depth or 0.0, shape)
    if form.shape == "rack":
        yield _involute(work, "rack", shape, int(getattr(shape, "teeth", 0)))
    for feature in work.item.features:
        if feature.kind == "toothed":
            count = int(getattr(feature.entry, "toothed", 0))
            found = _involute(work, "gear", feature.entry, count)
            yield replace(found, feature=feature.name)


def _of_shape(work: Work, kind: str, depth: float, shape: object) -> Toothing:
    count = int(getattr(shape, "teeth", 0))
    if kind == "gear":
        return _involute(work, kind, shape, count)
    if kind == "ratchet":
        tool, across = end_cutter(
            work.design.workshop, min(_gap(count, depth, _mm(shape, "outside")), STOUT_MM)
        )
        backs = _backs(work, shape, count, depth, across)
        return Toothing(kind, count, depth, "ratchet teeth", tool, across, backs=backs)
    roller = _mm(shape, "roller")
    pitch = work.mm(_mm(shape, "pitch"))
    tool = f"⌀{work.mm(roller)} cutter, as the rollers"
    return Toothing(kind, count, depth, f"sprocket teeth for {pitch} chain", tool, roller)


def _backs(work: Work, shape: object, count: int, depth: float, across: float) -> str:
    """Where the cutter stands for faces and for backs; faces that lean are set to a template."""
    lean = getattr(shape, "lean", None)
    if across <= 0 or count < _LEAST_TEETH or (lean is not None and float(lean.exact)):
        return "; all stopping faces first, then all backs"
    cut = ratchet_cut(count, _mm(shape, "outside"), depth, across)
    over, face, back = (work.mm(round(x, 2)) for x in (across / 2, cut.face_to, cut.back_to))
    return (
        f"; all stopping faces first: the cutter's side over the centre, so set over {over}, down "
        f"to {face} from it{_short(work, cut)}; then turn the work {cut.turn:.1f}° until a back "
        f"lies level, and cut all backs with its end, {back} from the centre, from the point on "
        f"till the cutter's axis is {_stop(work, cut.stop + across / 2)} of the work: set a stop, "
        f"farther on it cuts the stopping face away{_fed_along(work, shape)}{_corner(work, cut)}"
    )


def _fed_along(work: Work, shape: object) -> str:
    """How the round side of the cutter leaves no metal at the foot of a face."""
    each = work.mm(fed_each_way(_mm(shape, "width")))
    return (
        f"; its round side reaches the face only in line with its axis: at the stop feed it {each} "
        "each way along the work, from the middle of the width past both sides, or metal stays in "
        "the corners"
    )


def _short(work: Work, cut: RatchetCut) -> str:
    """Why the faces are not cut down to the root, where the backs rise under the cutter."""
    if cut.face_to - cut.root < _HAIR_MM:
        return ""
    more = work.mm(round(cut.face_to - cut.root, 2))
    return f" and no deeper, or its end cuts into the backs: the last {more} come with those"


def _corner(work: Work, cut: RatchetCut) -> str:
    """What the file takes out of the foot of a face that leans over its back."""
    if cut.left < _HAIR_MM:
        return ""
    return f"; the {work.mm(round(cut.left, 2))} left in each corner at the root take out by file"


def _stop(work: Work, axis: float) -> str:
    """Where the axis of the cutter stops, from its signed distance short of the work's centre."""
    if abs(axis) < _HAIR_MM:
        return "over the centre"
    return f"{work.mm(round(abs(axis), 2))} {'short of' if axis > 0 else 'past'} the centre"


def _gap(count: int, depth: float, outside: float) -> float:
    """From tooth to tooth at the root, in mm: a wider cutter takes the next point away."""
    return math.pi * max(outside - 2 * depth, 0.0) / count


def _mm(shape: object, name: str) -> float:
    size = getattr(shape, name, None)
    return size.mm if isinstance(size, Size) else 0.0


def _involute(work: Work, kind: str, entry: object, count: int) -> Toothing:
    module, dp = getattr(entry, "module", None), getattr(entry, "dp", None)
    size = float(module.mm) if module is not None else _INCH / float(dp.exact) if dp else 0.0
    said = f"{_INCH / size:.4g} DP" if dp and size else f"module {work.mm(size)}"
    if not size:
        said = "as its mate"
    if getattr(entry, "internal", False):
        kind, tool = "internal", f"planing tool ground to the space, {said}"
    else:
        seen = 1000 if kind == "rack" else count
        tool = form_cutter_name(work, said, size, seen, is_inch=bool(dp))
    depth = WHOLE_DEPTH * size
    teeth = f"teeth, {said}"
    return Toothing(kind, count, depth, teeth, tool, _CUTTER_MM, module=size, is_dp=bool(dp))
