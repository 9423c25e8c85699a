"""Parts that are fixed for good, to where one stands on the other, and which way round."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import TogetherFact, exact, shown_length
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, frame_y, length, minus, placed, plus
from binder_solid.wheels import RATCHET_HAND

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint
    from binder_solid.facts import Located
    from binder_solid.forms import Vector

_NEAR = 1e-3
_DRILLED_LATER = ("drilled together", "drilled in place")
_SAME_DEG = 0.05
_CUT = {
    "drilled": "hole",
    "reamed": "hole",
    "tapped": "hole",
    "flatted": "flat",
    "slotted": "slot",
    "keywayed": "keyway",
}


@dataclass(frozen=True, slots=True)
class Standing:
    """From where to where in mm `other` stands off an end of `rod`, the nearer one; both items.

    `turn` says how it lies to the cut `by` across the rod; both are '' where nothing does.
    """

    rod: str
    other: str
    low: float
    high: float
    end: str
    turn: str
    by: str


def standing(joint: Joint, design: Design) -> Standing | None:
    """Where the one part of a joint stands on the other in mm; None where it is not known."""
    pair = fixed_pair(joint, design)
    if pair is None:
        return None
    rod, other = pair
    low, high = along_rod(rod, other)
    whole, end = rod.corners[1][0], "left"
    if low + high > whole:
        low, high, end = whole - high, whole - low, "right"
    turn, by = next(_turns(rod, other, design), ("", ""))
    return Standing(rod.item, other.item, low, high, end, turn, by)


def spans_on(rod: str, other: str, design: Design) -> tuple[tuple[float, float], ...]:
    """From where to where in mm off its left-hand end each copy of another sits round a rod.

    Nothing where the places are not known; of several rods alike on the first one.
    """
    first = next((one for one in design.facts.all(PlacedFact) if one.item == rod), None)
    if first is None:
        return ()
    whole = first.corners[1][0]
    found = set()
    for one in design.facts.all(PlacedFact):
        if one.item == other:
            low, high = (round(x, 2) for x in along_rod(first, one))
            if low < whole - _NEAR and high > _NEAR and _is_round(first, one):
                found.add((max(low, 0.0), min(high, whole)))
    return tuple(sorted(found))


def along_rod(rod: PlacedFact, other: PlacedFact) -> tuple[float, float]:
    """From where to where in mm off the left-hand end of a rod another part reaches."""
    along = [dot(minus(corner, rod.frame.origin), rod.frame.x) for corner in corners_of(other)]
    return min(along), max(along)


def _is_round(rod: PlacedFact, other: PlacedFact) -> bool:
    """Whether the axis of the rod goes through the envelope of the other."""
    for axis in (frame_y(rod.frame), rod.frame.z):
        aside = [dot(minus(corner, rod.frame.origin), axis) for corner in corners_of(other)]
        if min(aside) > _NEAR or max(aside) < -_NEAR:
            return False
    return True


def stands_at(joint: Joint, design: Design) -> str:
    """`the block from 38 mm to 56 mm off the left-hand end of the post, ...`; '' where not known.

    Told on the turned part of the two, on the longer where both are turned. Where the other is
    not round and the turned one has a cut across, the turn about the axis is told as well; of a
    ratchet wheel the way that its teeth look.
    """
    pair, found = fixed_pair(joint, design), standing(joint, design)
    if pair is None or found is None:
        return ""
    said = f"{_title(found.other, design)} from {shown_mm(found.low, design)} to "
    said += f"{shown_mm(found.high, design)} off the {found.end}-hand end of "
    said += _title(found.rod, design)
    return ", ".join((said, *filter(None, (_turned(found, design), _hand(*pair, design)))))


def _turned(found: Standing, design: Design) -> str:
    """How the other is turned; a hole that is drilled in both together later is no guide yet."""
    cut = f"{found.rod}.{found.by}"
    is_later = any(
        cut in fact.left for fact in design.facts.all(TogetherFact) if fact.how in _DRILLED_LATER
    )
    if not found.turn or not is_later:
        return found.turn
    return f"turned anyhow: the {found.turn.rpartition(' the ')[2]} is drilled to it later"


def faces_at(joint: Joint, design: Design) -> str:
    """The hand alone, for a ratchet wheel that is held by a screw or key; '' for all others."""
    pair = fixed_pair(joint, design)
    return _hand(*pair, design) if pair is not None else ""


def _hand(rod: PlacedFact, other: PlacedFact, design: Design) -> str:
    """From which end of the shaft the teeth of a ratchet wheel look clockwise."""
    form = design.facts.about(FormFact, other.item)
    along = dot(other.frame.x, rod.frame.x)
    if form is None or form.shape != "ratchet" or abs(along) < 1 - _NEAR:
        return ""
    hand, _, seen = RATCHET_HAND.partition(", seen from the ")
    end = seen if along > 0 else "left"
    return (
        f"the stopping faces of its teeth looking {hand}, seen from the {end}-hand end of "
        f"{_title(rod.item, design)}"
    )


def fixed_pair(joint: Joint, design: Design) -> tuple[PlacedFact, PlacedFact] | None:
    """The copies that are fixed to one another: of all those that stand nearest, the rod first."""
    if len(joint.items) < 2:
        return None
    rods, others = (
        [one for one in design.facts.all(PlacedFact) if one.item == item]
        for item in sorted(joint.items[:2], key=lambda name: _rank(name, design))
    )
    if not rods or not others or not _rank(rods[0].item, design)[1]:
        return None
    pairs = [(one, other) for one in rods for other in others if one is not other]
    return min(pairs, key=lambda two: length(minus(_middle(two[0]), _middle(two[1]))), default=None)


def _rank(name: str, design: Design) -> tuple[float, bool]:
    """The longest turned part comes first."""
    form = design.facts.about(FormFact, name)
    is_turned = form is not None and bool(form.stretches)
    return (-form.size[0] if form is not None and is_turned else 0.0, is_turned)


def corners_of(one: PlacedFact) -> Iterator[Vector]:
    """The corners of a copy's envelope in the model, in mm."""
    (a, b, c), (d, e, f) = one.corners
    for x in (a, d):
        for y in (b, e):
            for z in (c, f):
                yield placed((x, y, z), one.frame)


def _middle(one: PlacedFact) -> Vector:
    (a, b, c), (d, e, f) = one.corners
    return placed(((a + d) / 2, (b + e) / 2, (c + f) / 2), one.frame)


def _turns(rod: PlacedFact, other: PlacedFact, design: Design) -> Iterator[tuple[str, str]]:
    """How a face of the other lies to a cut across the rod, and which, the least angle first."""
    for face, angle, cut in _faces(rod, other, design):
        said = f"{cut.name.replace('_', ' ')} {_CUT[cut.kind]}"
        yield _turn(face, angle, said), cut.name


def _faces(
    rod: PlacedFact, other: PlacedFact, design: Design
) -> Iterator[tuple[str, float, Located]]:
    """A face of the other, its angle to a cut across the rod in degrees, and that cut."""
    form, mine = (design.facts.about(FormFact, one.item) for one in (other, rod))
    if form is None or form.stretches or mine is None:
        return
    axes = {"right": other.frame.x, "back": frame_y(other.frame), "top": other.frame.z}
    faces = {name: axis for name, axis in axes.items() if abs(dot(axis, rod.frame.x)) < _NEAR}
    for cut in mine.located:
        if cut.face == "across" and cut.kind in _CUT:
            way = minus(placed(cut.frame.z, rod.frame), rod.frame.origin)
            found = [(_angle(way, axis, rod.frame.x), name) for name, axis in faces.items()]
            for angle, name in sorted(found, key=lambda one: abs(one[0])):
                yield name, angle, cut


def face_over(joint: Joint, cut: str, design: Design) -> tuple[str, str, float]:
    """The flat part fixed round turned work, its face to which a cut across that is square.

    The third is by how many degrees it is not, -90 to 90; ('', '', 0.0) where not known.
    """
    pair = fixed_pair(joint, design)
    if pair is None:
        return "", "", 0.0
    for face, angle, by in _faces(*pair, design):
        if by.name == cut:
            return pair[1].item, face, angle if abs(angle) >= _SAME_DEG else 0.0
    return "", "", 0.0


def axis_heights(joint: Joint, face: str, design: Design) -> tuple[tuple[str, float], ...]:
    """How high in mm the axis of turned work stands over each face beside `face` of its mate."""
    pair = fixed_pair(joint, design)
    if pair is None:
        return ()
    rod, other = pair
    axes = {"x": other.frame.x, "y": frame_y(other.frame), "z": other.frame.z}
    sides = {"x": ("left", "right"), "y": ("front", "back"), "z": ("underside", "top")}
    found: list[tuple[str, float]] = []
    for name, axis in axes.items():
        if face not in sides[name] and abs(dot(axis, rod.frame.x)) < _NEAR:
            off = [dot(minus(one, rod.frame.origin), axis) for one in corners_of(other)]
            found += zip(sides[name], (round(-min(off), 3), round(max(off), 3)), strict=True)
    return tuple(found)


def _angle(one: Vector, other: Vector, axis: Vector) -> float:
    """From one direction to the line of another about an axis, in degrees, -90 to 90."""
    flat = plus(one, axis, -dot(one, axis))
    found = math.degrees(math.atan2(dot(cross(flat, other), axis), dot(flat, other)))
    return (found + 90.0) % 180.0 - 90.0


def _turn(face: str, angle: float, cut: str) -> str:
    if abs(angle) < _SAME_DEG:
        return f"its {face} face square to the {cut}"
    return f"its {face} face turned {abs(angle):.3g}° from square to the {cut}"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"


def shown_mm(mm: float, design: Design) -> str:
    """A length in the units of the model, to a hundredth of a millimetre."""
    return shown_length(exact(round(mm, 2) + 0.0), design.units)
