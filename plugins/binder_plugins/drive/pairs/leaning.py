"""Helical, skew, bevel and worm drives to the teeth and the blank of each of their gears."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from math import cos, radians

from binder.api import Design, Joint, LeaningFact, Size
from binder_plugins.drive.duties.worm_hand import hand_of
from binder_plugins.drive.pairs.gears import gears_of
from binder_plugins.drive.train.told import module_of, teeth_of
from binder_trade.explained import NotDefined
from binder_trade.gears.bevel import BevelGear, BevelPair, bevel
from binder_trade.gears.gear import Gear
from binder_trade.gears.worm import worm

_RIGHT_ANGLE, _USUAL_PRESSURE = 90.0, 20.0


def leaning_facts(joint: Joint, design: Design) -> list[LeaningFact] | NotDefined:
    """The leaning teeth of a drive's parts, none where it has none; or why they cannot be."""
    build = _OF.get(joint.kind)
    if build is None:
        return []
    try:
        found = list(build(joint, design))
    except NotDefined as refusal:
        return refusal
    return [one for one in found if one.subject in design.parts]


def _helical(joint: Joint, design: Design) -> Iterator[LeaningFact]:
    """Helical gears on parallel shafts; a refusal of them is told where plain ones are."""
    gears = gears_of(joint, design)
    if isinstance(gears, list) and gears[0].helix_deg:
        hand = "each of the other hand than its mate"
        for end, gear in zip(joint.ends, gears, strict=False):
            yield _of_gear(end.item, joint, gear, hand)


def _skew(joint: Joint, design: Design) -> Iterator[LeaningFact]:
    """Helical gears on shafts that cross; both of one hand where nothing is told."""
    module = module_of(joint, design)
    helix = [abs(float(one.exact)) for one in joint.entry.helix]  # type: ignore[attr-defined]
    teeth = [teeth_of(joint, number, design) for number in range(len(joint.ends))]
    if module is None or not all(teeth):
        return
    hand = getattr(joint.entry, "hand", None) or "right"
    for end, count, one in zip(joint.ends, teeth, helix, strict=False):
        gear = Gear(count or 0, float(module), helix_deg=one)
        yield _of_gear(end.item, joint, gear, f"{hand} hand")


def _of_gear(item: str, joint: Joint, gear: Gear, hand: str) -> LeaningFact:
    return LeaningFact(
        subject=item,
        kind="helical",
        joint=joint.name,
        count=gear.teeth,
        module=gear.module_mm,
        outside=(gear.tip_mm,),
        inner=gear.tip_mm,
        long=0.0,
        angle=gear.helix_deg,
        lead=gear.lead_mm,
        seen=gear.virtual_teeth,
        depth=gear.depth_mm,
        pressure=gear.rack.angle_deg,
        hand=hand,
        is_dp=getattr(joint.entry, "dp", None) is not None,
    )


def _bevel(joint: Joint, design: Design) -> Iterator[LeaningFact]:
    module = module_of(joint, design)
    teeth = [teeth_of(joint, number, design) for number in (0, 1)]
    if module is None or not teeth[0] or not teeth[1]:
        return
    face = getattr(joint.entry, "face", None)
    pair = bevel(
        teeth[0],
        teeth[1],
        float(module),
        shafts_deg=_degrees(joint, "shafts_at", _RIGHT_ANGLE),
        face_mm=face.mm if isinstance(face, Size) else None,
    )
    for end, gear in zip(joint.ends, (pair.pinion, pair.wheel), strict=False):
        yield _of_bevel(end.item, joint, pair, gear)


def _of_bevel(item: str, joint: Joint, pair: BevelPair, gear: BevelGear) -> LeaningFact:
    return LeaningFact(
        subject=item,
        kind="bevel",
        joint=joint.name,
        count=gear.teeth,
        module=pair.module_mm,
        outside=(gear.outside_mm,),
        inner=gear.inner_outside_mm,
        long=gear.crown_depth_mm,
        angle=gear.root_cone_deg,
        lead=0.0,
        seen=gear.seen_teeth,
        depth=pair.addendum_mm + pair.dedendum_mm,
        inner_module=pair.inner_module_mm,
        pressure=_degrees(joint, "pressure_angle", _USUAL_PRESSURE),
        is_dp=getattr(joint.entry, "dp", None) is not None,
    )


def _worm(joint: Joint, design: Design) -> Iterator[LeaningFact]:
    """The worm as a screw, its wheel by the hollow of its face."""
    module, teeth = module_of(joint, design), teeth_of(joint, 1, design)
    diameter = getattr(joint.entry, "diameter", None)
    if module is None or teeth is None or not isinstance(diameter, Size):
        return
    starts = int(getattr(joint.entry, "starts", None) or 1)
    pressure = _degrees(joint, "pressure_angle", _USUAL_PRESSURE)
    made = worm(starts, teeth, float(module), diameter.mm, angle_deg=pressure)
    deep = (made.worm_outside_mm - made.worm_root_mm) / 2
    seen = teeth / cos(radians(made.lead_deg)) ** 3
    sides = (
        ("worm", starts, (made.worm_outside_mm,), made.worm_length_mm, made.lead_mm),
        ("worm wheel", teeth, (made.wheel_outside_mm, made.throat_mm), made.wheel_face_mm, 0.0),
    )
    for end, (kind, count, outside, long, lead) in zip(joint.ends, sides, strict=False):
        yield LeaningFact(
            subject=end.item,
            kind=kind,
            joint=joint.name,
            count=count,
            module=float(module),
            outside=outside,
            inner=outside[-1],
            long=long,
            angle=made.lead_deg,
            lead=lead,
            seen=seen,
            depth=deep,
            pressure=pressure,
            hand=f"{hand_of(joint, design)} hand",
            is_dp=getattr(joint.entry, "dp", None) is not None,
        )


def _degrees(joint: Joint, name: str, usual: float) -> float:
    said = getattr(joint.entry, name, None)
    return float(said.exact) if isinstance(said, Size) else usual


_OF: Mapping[str, Callable[[Joint, Design], Iterator[LeaningFact]]] = {
    "meshes": _helical,
    "skews": _skew,
    "bevels": _bevel,
    "worms": _worm,
}
