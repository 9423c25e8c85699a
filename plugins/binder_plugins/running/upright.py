"""Shafts that stand upright: what their weight rests on, and what keeps them in."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Diagnostic, FitFact, Joint, MaterialFact, ShaftFact
from binder_plugins.running import codes
from binder_solid.facts import FormFact
from binder_solid.placed import MotionFact, PlacedFact
from binder_solid.space import dot, frame_y, minus, placed
from binder_solid.stands_at import corners_of

_UPRIGHT = 0.999
# So far under its end, in mm, is looked for what a shaft rests on.
_UNDER_MM = 0.2
_WOOD = frozenset({"hardwood", "softwood", "plywood"})
_KEEPS = frozenset({"clipped", "threaded", "leads"})


@dataclass(frozen=True, slots=True)
class Upright:
    """A joint whose shaft stands upright, that shaft, and the item that its lower end rests on.

    `rests_on` is '' where nothing stands close under its end.
    """

    joint: Joint
    shaft: str
    rests_on: str


def uprights(design: Design) -> Iterator[Upright]:
    """Each running joint that turns about an upright axis, as the model stands."""
    told: set[str] = set()
    for motion in design.facts.all(MotionFact):
        joint, fit = design.joints.get(motion.joint), design.facts.about(FitFact, motion.joint)
        if joint is None or fit is None or motion.motion != "turn" or joint.kind != "runs_in":
            continue
        shaft = fit.shaft.partition(".")[0]
        copy = next((one for one in design.facts.all(PlacedFact) if one.item == shaft), None)
        if abs(motion.way[2]) < _UPRIGHT or copy is None or joint.name in told:
            continue
        told.add(joint.name)
        yield Upright(joint, shaft, _under(copy, motion, design))


def _under(copy: PlacedFact, motion: MotionFact, design: Design) -> str:
    low = min(corner[2] for corner in corners_of(copy))
    spot = (motion.origin[0], motion.origin[1], low - _UNDER_MM)
    for other in design.facts.all(PlacedFact):
        if other.item != copy.item and _is_in(spot, other) and not _is_bored(spot, other, design):
            return other.item
    return ""


def _is_in(spot: tuple[float, float, float], other: PlacedFact) -> bool:
    arm = minus(spot, other.frame.origin)
    own = (dot(arm, other.frame.x), dot(arm, frame_y(other.frame)), dot(arm, other.frame.z))
    low, high = other.corners
    return all(low[n] < own[n] < high[n] for n in range(3))


def _is_bored(spot: tuple[float, float, float], other: PlacedFact, design: Design) -> bool:
    """Whether a hole of the part leaves nothing where the shaft ends."""
    form = design.facts.about(FormFact, other.item)
    for hole in form.located if form is not None else ():
        if not hole.diameter or hole.adds:
            continue
        for point in hole.spots:
            mouth = placed(point, other.frame)
            aside = ((mouth[0] - spot[0]) ** 2 + (mouth[1] - spot[1]) ** 2) ** 0.5
            deep = abs(mouth[2] - spot[2])
            if aside < hole.diameter / 2 and (hole.depth is None or deep < hole.depth):
                return True
    return False


def check_thrust(design: Design) -> Iterator[Diagnostic]:
    """An upright shaft whose end turns on wood or on paint."""
    for one in uprights(design):
        item = design.parts.get(one.rests_on) or design.fabrications.get(one.rests_on)
        metal = design.facts.about(MaterialFact, one.rests_on)
        is_wood = metal is not None and metal.group in _WOOD
        is_painted = item is not None and "paint" in str(item.finish or "").lower()
        if item is None or not (is_wood or is_painted):
            continue
        what = " and ".join(
            [*(["wood"] if is_wood else []), *(["its paint"] if is_painted else [])]
        )
        yield codes.WEIGHT_ON_BARE_END.at(
            one.joint.at,
            f"the weight on '{one.shaft}' turns on '{one.rests_on}': on {what}",
            help="leave a floor in its bush, or put a bronze pad under its end, with oil on it; "
            "mask what it stands on",
        )


def lifts_out(design: Design) -> str:
    """The line on how the model is lifted, '' where each upright shaft is kept in."""
    rows = {fact.subject for fact in design.facts.all(ShaftFact)}
    for one in uprights(design):
        kept = any(
            joint.kind in _KEEPS and one.shaft in joint.items for joint in design.joints.values()
        )
        base = next((fact for fact in design.facts.all(PlacedFact) if not fact.onto), None)
        if kept or one.shaft in rows or base is None:
            continue
        shaft, foot = design.item(one.shaft), design.item(base.item)
        titles = [
            item.title if item is not None else name
            for item, name in ((shaft, one.shaft), (foot, base.item))
        ]
        return (
            f"Lift and carry it by the {titles[1]}: nothing but its weight keeps the {titles[0]} "
            "in its bearing."
        )
    return ""
