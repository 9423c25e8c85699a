"""How parts that are drilled together lie under the drill: in a V where round work has room."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import JointFact
from binder_plugins.operations.bench import vice_for
from binder_plugins.operations.facts import Grip
from binder_solid.clear_round import clear_round, hangs_under, pieces_of
from binder_solid.laid_on import ENDS, way_of
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed
from binder_solid.stands_at import face_over, fixed_pair

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.rows import Hole
    from binder_solid.clear_round import ClearRound
    from binder_solid.forms import Vector

# A V holds round work that lies in it over a diameter of its length: common practice, no source.
_LEAST, _SAME = 1.0, 1e-6


@dataclass(frozen=True, slots=True)
class Lying:
    """What holds the parts, and as words after the clamping what packs the other up level.

    `packed` tells how thick it is, `again` names it for the next hole of the same parts.
    """

    grip: Grip
    packed: str = ""
    again: str = ""


def lying(holes: Sequence[Hole]) -> Lying:
    """On a V-block where one of the parts is round and clear, else flat, else in the vice."""
    design = holes[0].work.design
    vice = vice_for(design.workshop)
    hole = next((one for one in holes if one.work.form and one.work.form.stretches), None)
    if hole is None:
        on = "both, with packing under the drill"
        return Lying(Grip(vice or "clamps on the table", "vice", on))
    title = hole.work.item.title
    others = [one.work for one in holes if one.work.name != hole.work.name]
    up = _up(hole, [one.name for one in others])
    if up is None or not all(pieces_of(one.name, design) for one in others):
        holder = f"V-block in the {vice}" if vice else "V-block, clamped"
        return Lying(Grip(holder, "vee", f"the {title}, the other clamped to it"))
    names = [one.name for one in others]
    clear = clear_round(hole.work.name, names, [hole.one.name], up, design)
    room = [one for one in clear if one.long >= _LEAST * one.across]
    if not room:
        on = f"both, on packing: of the {title} nothing round is clear for a V"
        return Lying(Grip("clamps and packing on the table", "plate", on))
    # Two stretches of one size are told together: blocks that are a pair may stand under both.
    across = max(room, key=lambda one: one.long).across
    spans = " or ".join(_said(hole, one) for one in room if one.across == across)
    on = f"the {title}, {spans}: there it is round and clear; the other clamped to it"
    packed = "".join(_packed(hole, one.item.title, one.name, across, up) for one in others)
    again = f"; under the {others[0].item.title} the same packing" if packed else ""
    return Lying(Grip("V-block, clamped on the table", "vee", on, across), packed, again)


def _said(hole: Hole, one: ClearRound) -> str:
    """`from 0 mm to 26 mm off its left-hand end`, off the nearer one."""
    form, mm = hole.work.form, hole.work.mm
    whole = form.size[0] if form is not None else one.high
    low, high, end = one.low, one.high, "left"
    if low + high > whole:
        low, high, end = whole - high, whole - low, "right"
    low, high = math.ceil(low * 10 - _SAME) / 10, math.floor(high * 10 + _SAME) / 10
    return f"from {mm(low)} to {mm(high)} off its {end}-hand end"


def _packed(hole: Hole, title: str, name: str, across: float, up: Vector) -> str:
    """How thick what goes under the other part is, told from the top of the round: geometry."""
    under = hangs_under(hole.work.name, name, up, hole.work.design)
    if under is None:
        return ""
    less, mm, top = round(across / 2 + under, 2), hole.work.mm, hole.work.item.title
    high = f"the height of the top of the {top} over the table as it lies in the V"
    if less:
        high += f", less {mm(less)}" if less > 0 else f", and {mm(-less)} more"
    return (
        f"; under the {title}, at its far end and beside the hole, clear of the drill, packing so "
        f"that both lie level: {high} = ______"
    )


def _up(hole: Hole, others: Sequence[str]) -> Vector | None:
    """Against the drill, in the model: as the face that is set level looks, else the others up."""
    design, name = hole.work.design, hole.work.name
    rod = next((one for one in design.facts.all(PlacedFact) if one.item == name), None)
    if rod is None or hole.one.face != "across":
        return None
    way = minus(placed(hole.one.frame.z, rod.frame), rod.frame.origin)
    back = minus((0.0, 0.0, 0.0), way)
    for joint in design.joints.values():
        said, pair = design.facts.about(JointFact, joint.name), fixed_pair(joint, design)
        if said is None or not said.is_hot or name not in joint.items or pair is None:
            continue
        other, face, _ = face_over(joint, hole.one.name, design)
        axis = next((n for n, names in enumerate(ENDS) if face in names), None)
        if other and other != name and axis is not None:
            sign = 1 if ENDS[axis].index(face) else -1
            return way if sign * dot(way_of(pair[1], axis), way) > 0 else back

    def hangs(one: Vector) -> float:
        found = (hangs_under(name, other, one, design) for other in others)
        return max((each for each in found if each is not None), default=0.0)

    return min((way, back), key=hangs)
