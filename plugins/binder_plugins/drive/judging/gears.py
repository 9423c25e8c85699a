"""Do teeth, blanks, bores and centres of gears go together, and can they be cut here."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Part, PlaceFact, Size, shown_length
from binder.api import exact as exactly
from binder_plugins.drive import gear_codes as codes
from binder_plugins.drive.pairs.facts import MeshFact, ToothFact
from binder_plugins.drive.train.told import module_of, part_module, teeth_of
from binder_trade.explained import NotDefined
from binder_trade.gears.dividing.owned import can_divide
from binder_trade.gears.proportions import body, largest_bore
from binder_trade.gears.undercut import limits

_NEAR_MM = 0.011
_LEAST_CONTACT = 1.1
_FAR = 3.0  # of the usual play: it rattles
_TIGHT = 0.25  # of the usual play: a tight tooth locks it


def check_gears(design: Design) -> Iterator[Diagnostic]:
    """Each gear drive of the model."""
    for joint in design.joints.values():
        if joint.kind == "meshes":
            yield from _told(joint.name, design)
    for tooth in design.facts.all(ToothFact):
        yield from _tooth(tooth, design)
    for mesh in design.facts.all(MeshFact):
        yield from _mesh(mesh, design)


def _told(name: str, design: Design) -> Iterator[Diagnostic]:
    """The module is told, once, and the parts agree with it and with the teeth."""
    joint = design.joints[name]
    dp = getattr(joint.entry, "dp", None)
    if isinstance(dp, Size) and dp.exact <= 0:
        yield codes.GEAR_IMPOSSIBLE.at(
            dp.span, f"a diametral pitch of {float(dp.exact):g} is none", help="as `dp: 48`"
        )
        return
    module = module_of(joint, design)
    if module is None:
        yield codes.MODULE_MISSING.at(
            joint.at, f"'{name}' tells no module", help="write `module: 0.5 mm`, or `dp: 48`"
        )
        return
    for number, end in enumerate(joint.ends):
        part = design.parts.get(end.item)
        own = part_module(part)
        if own is not None and abs(own - module) > exactly(1e-4):
            yield codes.MODULES_DIFFER.at(
                end.at,
                f"'{end.item}' has module {float(own):.4g} and '{name}' {float(module):.4g}",
                help="give both one module; a diametral pitch is 25.4 divided by it",
            )
        said, cut = (
            teeth_of(joint, number, design),
            getattr(getattr(part, "shape", None), "teeth", None),
        )
        if said is not None and isinstance(cut, int) and said != cut:
            yield codes.TEETH_DIFFER.at(
                end.at,
                f"'{end.item}' has {cut} teeth by its shape and {said} in '{name}'",
                help="leave `teeth:` out where the parts tell them",
            )


def _tooth(tooth: ToothFact, design: Design) -> Iterator[Diagnostic]:
    joint = design.joints[tooth.joint]
    end = next((one for one in joint.ends if one.item == tooth.subject), joint.ends[0])
    if tooth.refusal:
        yield codes.GEAR_IMPOSSIBLE.at(end.at, tooth.refusal, help=tooth.way_out)
        return
    gear = tooth.gear
    if not gear.is_internal:
        found = limits(gear)
        if found.is_undercut:
            yield codes.TOO_FEW_TEETH.at(
                end.at,
                f"{gear.teeth} teeth of '{tooth.subject}' are undercut; "
                f"{found.least_teeth:.1f} is the least without a shift",
                help=f"take more teeth, or shift the profile by {found.least_shift:.2f} modules",
            )
    part = design.parts.get(tooth.subject)
    if part is not None:
        yield from _blank(tooth, part, design)
        yield from _bore(tooth, part, design)
        if not can_divide(gear.teeth, design.workshop.dividers()):
            yield codes.CANNOT_DIVIDE.at(
                end.at, f"{gear.teeth} teeth: {tooth.dividing}", help="take that number, or a "
                "printed strip of paper round a wheel for a rough gear",
            )  # fmt: skip


def _blank(tooth: ToothFact, part: Part, design: Design) -> Iterator[Diagnostic]:
    """A disc, or the step that is as thick as a blank, has the outside of the teeth."""
    if tooth.blank is None or part.shape_kind not in ("disc", "turned") or tooth.gear.is_internal:
        return
    wanted = tooth.blank.blank_mm
    known = [
        (place, float(place.diameter))
        for place in design.facts.all(PlaceFact)
        if place.item == part.name and place.form == "step" and place.diameter is not None
    ]
    if not known or any(abs(size - wanted) <= _NEAR_MM for _, size in known):
        return
    place, size = max(known, key=lambda one: one[1])
    yield codes.BLANK_WRONG.at(
        place.at,
        f"{tooth.gear.teeth} teeth of module {tooth.gear.module_mm:g} want a blank of "
        f"{shown_length(exactly(wanted), design.units)}; '{part.name}' has "
        f"{shown_length(exactly(size), design.units)}",
        help=f"turn it to {shown_length(exactly(wanted), design.units)}",
    )


def _bore(tooth: ToothFact, part: Part, design: Design) -> Iterator[Diagnostic]:
    bores = [
        float(place.diameter)
        for place in design.facts.all(PlaceFact)
        if place.item == part.name
        and place.form == "hole"
        and place.diameter is not None
        and not place.across
        and place.is_through
        and not place.pattern
    ]
    if not bores or tooth.gear.is_internal:
        return
    bore = max(bores)
    try:
        if body(tooth.gear, bore).is_sound:
            return
        most = largest_bore(tooth.gear)
    except NotDefined as refusal:
        yield codes.ROOT_UNDER_BORE.at(part.at, refusal.reason, help=refusal.way_out)
        return
    yield codes.ROOT_UNDER_BORE.at(
        part.at,
        f"a bore of {bore:g} mm leaves {(tooth.gear.root_mm - bore) / 2:.2f} mm under the teeth "
        f"of '{part.name}'",
        help=f"a bore of {most:.2f} mm at the most, more teeth, or cut it solid with its shaft",
    )


def _mesh(fact: MeshFact, design: Design) -> Iterator[Diagnostic]:
    joint = design.joints[fact.joint]
    said = getattr(joint.entry, "centres", None)
    at = said.span if isinstance(said, Size) else joint.at
    if fact.mesh is None:
        yield codes.CENTRES_DISAGREE.at(
            at, fact.refusal, help=f"bore the frame at {fact.wanted:.3f} mm"
        )
        return
    mesh = fact.mesh
    usual = max(fact.wanted - mesh.tight_mm, 1e-3)
    if fact.frame is not None and (
        fact.frame < mesh.tight_mm + _TIGHT * usual or abs(fact.frame - fact.wanted) > _FAR * usual
    ):
        yield codes.CENTRES_DISAGREE.at(
            at,
            f"'{fact.pinion}' and '{fact.wheel}' want {fact.wanted:.3f} mm between their axes, "
            f"the frame has {fact.frame:.3f} mm",
            help=f"bore it at {fact.wanted:.3f} mm, backlash included",
        )
    if mesh.contact_ratio < _LEAST_CONTACT:
        yield codes.CONTACT_SHORT.at(
            joint.at,
            f"'{fact.pinion}' and '{fact.wheel}' are {mesh.contact_ratio:.2f} teeth in contact",
            help="bring the centres together, take more teeth or a full-depth form",
        )
    if mesh.has_interference:
        yield codes.TIPS_INTERFERE.at(
            joint.at,
            f"the tips of '{fact.wheel}' dig into the feet of '{fact.pinion}'",
            help="take more teeth for the small one, or shift its profile",
        )
