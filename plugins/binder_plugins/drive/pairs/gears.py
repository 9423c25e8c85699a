"""Gear drives to the teeth of each wheel and the mesh of each pair."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from binder.api import Design, Joint, Size
from binder_plugins.drive.pairs.chaining import SET
from binder_plugins.drive.pairs.facts import MeshFact, ToothFact
from binder_plugins.drive.pairs.frame import centres_in_frame
from binder_plugins.drive.standing import centres_as_placed
from binder_plugins.drive.train.bodies import Body
from binder_plugins.drive.train.salvage import likeliest
from binder_plugins.drive.train.told import module_of, module_told, teeth_of
from binder_trade.explained import NotDefined
from binder_trade.gears.centres import reference
from binder_trade.gears.dividing.owned import divided
from binder_trade.gears.form_cutters import FormCutter, cutter_for
from binder_trade.gears.gear import Gear, blank
from binder_trade.gears.measuring import Pins, Span, over_pins, span
from binder_trade.gears.pair import mesh
from binder_trade.gears.racks import Rack, rack
from binder_trade.gears.strip import strip_for

# Of the module, between the middle of the usual range: from memory.
_BACKLASH = 0.04
_OLD_ANGLE = 14.5


def gears_of(joint: Joint, design: Design) -> list[Gear] | NotDefined | None:
    """The gears of a drive in order, why they are none, or None where too little is told."""
    module = module_of(joint, design)
    teeth = [teeth_of(joint, number, design) for number in range(len(joint.ends))]
    if module is None or any(one is None for one in teeth):
        return None
    try:
        return [
            _gear(joint, number, one or 0, float(module), design, last=number == len(teeth) - 1)
            for number, one in enumerate(teeth)
        ]
    except NotDefined as refusal:
        return refusal


def _gear(
    joint: Joint, number: int, teeth: int, module: float, design: Design, *, last: bool
) -> Gear:
    entry = joint.entry
    shifts = getattr(entry, "shift", None)
    shift = float(shifts[number].exact) if shifts and number < len(shifts) else 0.0
    helix = getattr(entry, "helix", None)
    return Gear(
        teeth,
        module,
        _rack_of(joint, design),
        shift,
        float(helix.exact) if isinstance(helix, Size) else 0.0,
        is_internal=bool(getattr(entry, "internal", False)) and last,
    )


def _rack_of(joint: Joint, design: Design) -> Rack:
    if module_told(joint, design) is None:
        teeth = tuple(teeth_of(joint, number, design) for number in range(len(joint.ends)))
        found = likeliest(joint, teeth, design)
        if found is not None:
            return found[1].rack
    angle = getattr(joint.entry, "pressure_angle", None)
    is_old = isinstance(angle, Size) and abs(float(angle.exact) - _OLD_ANGLE) < 0.1
    by_dp = getattr(joint.entry, "dp", None) is not None
    if is_old:
        return rack("14.5 DP")
    return rack("20 DP") if by_dp else rack("A")


def tooth_facts(joint: Joint, design: Design) -> Iterator[ToothFact]:
    """The teeth of each wheel of a gear drive."""
    gears = gears_of(joint, design)
    if isinstance(gears, NotDefined):
        yield ToothFact(
            joint.ends[0].item, joint.name, Gear(20, 1.0), None, None, None, None, "",
            gears.reason, gears.way_out,
        )  # fmt: skip
        return
    for end, gear in zip(joint.ends, gears or (), strict=False):
        yield _tooth(end.item, joint, gear, design)


def _tooth(item: str, joint: Joint, gear: Gear, design: Design) -> ToothFact:
    made: list[object] = []
    refusal: NotDefined | None = None
    for ask in (blank, cutter_for, span, over_pins):
        try:
            made.append(ask(gear))
        except NotDefined as said:
            refusal = refusal or (said if ask is blank else None)
            made.append(None)
    return ToothFact(
        subject=item,
        joint=joint.name,
        gear=gear,
        blank=made[0],  # type: ignore[arg-type]
        cutter=made[1] if isinstance(made[1], FormCutter) else None,
        span=made[2] if isinstance(made[2], Span) else None,
        pins=made[3] if isinstance(made[3], Pins) else None,
        dividing=divided(gear.teeth, design.workshop.dividers()),
        refusal=refusal.reason if refusal else "",
        way_out=refusal.way_out if refusal else "",
    )


def mesh_facts(joint: Joint, of: Mapping[str, Body], design: Design) -> Iterator[MeshFact]:
    """Each pair of neighbours at the distance that the frame has, or that the teeth want."""
    gears = gears_of(joint, design)
    if not isinstance(gears, list):
        return
    for number, (pinion, wheel) in enumerate(pairwise(gears)):
        a, b = joint.ends[number], joint.ends[number + 1]
        said = getattr(joint.entry, "centres", None)
        frame = said.mm if isinstance(said, Size) and len(gears) == 2 else None
        if frame is None and a.item in of and b.item in of:
            bodies = of[a.item].items, of[b.item].items
            frame = centres_in_frame(*bodies, design) or centres_as_placed(*bodies, design)
        play = getattr(joint.entry, "backlash", None)
        backlash = play.mm if isinstance(play, Size) else _BACKLASH * pinion.module_mm
        yield _mesh(f"{joint.name}: {number + 1}", joint, (a.item, b.item), (pinion, wheel),
                    frame, backlash)  # fmt: skip


def _mesh(
    subject: str,
    joint: Joint,
    items: tuple[str, str],
    pair: tuple[Gear, Gear],
    frame: float | None,
    backlash: float,
) -> MeshFact:
    small, large = sorted(pair, key=lambda gear: (gear.is_internal, gear.teeth))
    names = items if pair[0] is small else items[::-1]
    try:
        wanted = mesh(small, large, backlash_mm=backlash)
        if joint.made == SET and not large.is_internal:  # The strip decides, not the drawing.
            held = strip_for(wanted, wanted.centres_mm)
            wanted = mesh(small, large, centres_mm=wanted.tight_mm + held.apart_mm)
            return MeshFact(subject, joint.name, *names, wanted, wanted.centres_mm, frame)
        made = mesh(small, large, centres_mm=frame) if frame is not None else wanted
    except NotDefined as refusal:
        return MeshFact(
            subject, joint.name, *names, None, reference(small, large), frame, refusal.reason
        )
    return MeshFact(subject, joint.name, *names, made, wanted.centres_mm, frame)
