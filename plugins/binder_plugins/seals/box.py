"""Turns a packed rod into its stuffing box, and what both parts and the list print."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Diagnostic,
    Feature,
    HalfFact,
    Joint,
    Size,
    Slot,
    exact,
    implied_feature,
    made_size,
    shown_length,
)
from binder_plugins.seals import codes
from binder_plugins.seals.bought import Supply, made_times
from binder_plugins.seals.choosing import NoSizeError
from binder_plugins.seals.facts import BoxFact, Side
from binder_plugins.seals.kinds import SealEntry
from binder_plugins.seals.sides import side_of
from binder_trade.seals import SECTIONS, section_for, stuffing_box

_BORED = ("bored", "drilled", "reamed", "counterbored")
_CLOSE = 0.1  # packing may be as much too thick or thin, in parts of it; common practice
_UNDER = 1.0  # metal under a box, mm; common practice


def box_fact(joint: Joint, entry: SealEntry, design: Design) -> BoxFact:
    """The box; raises NoSizeError, or NotDefined where the packing does not suit the rod."""
    rod, gland = (side_of(end, design) for end in joint.ends[:2])
    told = entry.bore.mm if entry.bore is not None else None
    across = rod.across or told
    if across is None:
        raise NoSizeError(joint.name)
    section = _section(entry, gland, across)
    box = stuffing_box(across, section, entry.rings or 4)
    return BoxFact(joint.name, joint, rod, gland, box)


def _section(entry: SealEntry, gland: Side, rod: float) -> float:
    """The packing that is told, that a written box takes, or that suits the rod."""
    if entry.packing is not None:
        return section_for(rod, (entry.packing.mm,))
    written = written_box(gland)
    if written is not None:
        room = (written.mm - rod) / 2
        near = min(SECTIONS, key=lambda each: abs(each - room))
        if abs(near - room) <= _CLOSE * near:
            return near
    return section_for(rod)


def written_box(gland: Side) -> Size | None:
    """The bore of a box that is written with its size."""
    feature = gland.feature
    value = getattr(feature.entry, feature.kind, None) if feature is not None else None
    is_bore = feature is not None and feature.kind in _BORED
    return value if is_bore and isinstance(value, Size) else None


def box_features(fact: BoxFact, design: Design) -> Iterator[Feature]:
    """The box, where none is written or it is left to suit."""
    is_known = "bored" in design.spec.kinds.of(Slot.FEATURE)
    if not (is_known and fact.gland.is_made) or written_box(fact.gland) is not None:
        return
    joint, old = fact.joint, fact.gland.feature
    kept = (
        {name: getattr(old.entry, name) for name in type(old.entry).model_fields}
        if old is not None and old.kind == "bored"
        else {}
    )
    name = old.name if old is not None else f"{joint.name.replace(' ', '_')}_box"
    section = shown_length(exact(fact.box.section_mm), design.units)
    values: dict[str, object] = {
        "on": fact.gland.on or None,
        **kept,
        "bored": made_size(fact.box.box_mm, joint),
        "depth": made_size(fact.box.depth_mm, joint),
        "note": f"for {fact.box.rings} rings of {section} square packing",
    }
    yield implied_feature(design, joint, fact.gland.end.item, name, "bored", **values)


def box_findings(fact: BoxFact, design: Design) -> Iterator[Diagnostic]:
    """A written box that the packing does not fill, or a box that comes out at the back."""
    box, units = fact.box, design.units
    written = written_box(fact.gland)
    if written is not None:
        room = (written.mm - box.rod_mm) / 2
        if abs(room - box.section_mm) > _CLOSE * box.section_mm:
            yield codes.BOX_WRONG.at(
                written.span,
                f"a box of {shown_length(written.exact, units)} leaves "
                f"{shown_length(exact(max(0.0, room)), units)} for packing of "
                f"{shown_length(exact(box.section_mm), units)}",
                help=f"bore it {shown_length(exact(box.box_mm), units)}, or leave it `to suit`",
            )
    thick = fact.gland.under.thickness if fact.gland.under is not None else None
    if thick is not None and written is None and box.depth_mm + _UNDER > float(thick):
        yield codes.BOX_WRONG.at(
            fact.joint.at,
            f"a box {shown_length(exact(box.depth_mm), units)} deep comes out of the "
            f"'{fact.gland.end.item}', {shown_length(thick, units)} thick",
            help=_shallower(fact, float(thick)),
        )


def _shallower(fact: BoxFact, thick: float) -> str:
    """Fewer rings, or a longer gland."""
    fits = int((thick - _UNDER) / fact.box.section_mm) - 1
    if fits >= 2:
        return f"write `rings: {fits}`, or make it thicker"
    return "make it thicker, or seal the rod by an O-ring"


def box_halves(fact: BoxFact, design: Design) -> Iterator[HalfFact]:
    """The polished rod, and the box bored for it."""
    box, units, joint = fact.box, design.units, fact.joint
    rod, across, deep, clear = (
        shown_length(exact(size), units)
        for size in (box.rod_mm, box.box_mm, box.depth_mm, box.gland_bore_mm)
    )
    first = str(joint.master or joint.ends[0])
    yield HalfFact(
        subject=f"{joint.name}: {fact.rod.end}",
        joint=joint.name,
        item=fact.rod.end.item,
        place=fact.rod.end.place,
        what=f"rod ⌀{rod}, polished along",
        mate=str(fact.gland.end),
        how="no ring marks: packing wears on them",
        is_master=first == str(fact.rod.end),
    )
    yield HalfFact(
        subject=f"{joint.name}: {fact.gland.end}",
        joint=joint.name,
        item=fact.gland.end.item,
        place=fact.gland.end.place,
        what=f"box ⌀{across}, {deep} deep; gland ⌀{clear} round the rod",
        mate=str(fact.rod.end),
        how="bore box and rod hole at one setting",
        is_master=first == str(fact.gland.end),
    )


def box_supply(fact: BoxFact, design: Design) -> Iterator[Supply]:
    """The packing, cut into rings, with two rings to spare."""
    box, units = fact.box, design.units
    section, ring = (
        shown_length(exact(round(mm, 1)), units) for mm in (box.section_mm, box.ring_mm)
    )
    count = made_times(fact.joint, fact.gland.end.item, design) * box.rings
    what = f"ring of {section} square packing, cut {ring} long"
    yield Supply(fact.joint, what, count, "fills the box round the rod", 2)
