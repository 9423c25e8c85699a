"""What a drive says of its ends, or else what the parts say themselves: teeth, pitch, diameters."""

from __future__ import annotations

from fractions import Fraction

from binder.api import Design, End, Joint, Part, PlaceFact, Size
from binder_plugins.drive.train.salvage import likeliest
from binder_plugins.drive.train.seats import cut_depth, grooves_of, seats_of

_INCH = Fraction("25.4")
_FINE = 10**6
_TOOTHED = ("gear", "ratchet", "sprocket", "rack")


def teeth_of(joint: Joint, number: int, design: Design) -> int | None:
    """The teeth at one end: as the drive says, the shape of the part, or its teeth as a feature."""
    said = getattr(joint.entry, "teeth", None)
    if isinstance(said, int):
        return said
    if said is not None and number < len(said):
        return int(said[number])
    part = design.parts.get(joint.ends[number].item)
    if part is None:
        return None
    if part.shape_kind in _TOOTHED:
        return int(getattr(part.shape, "teeth", 0)) or None
    cut = [one.entry for one in part.features if one.kind == "toothed"]
    return int(getattr(cut[0], "toothed", 0)) or None if cut else None


def module_of(joint: Joint, design: Design) -> Fraction | None:
    """The module in mm: as told, else that of a salvaged gear, as what it most likely is."""
    told = module_told(joint, design)
    if told is not None:
        return told
    teeth = tuple(teeth_of(joint, number, design) for number in range(len(joint.ends)))
    found = likeliest(joint, teeth, design)
    return Fraction(found[1].pitch.module_mm).limit_denominator(_FINE) if found else None


def module_told(joint: Joint, design: Design) -> Fraction | None:
    """The module in mm: as the drive says, else of the first part that tells it."""
    return _module(joint.entry) or next(
        (
            found
            for end in joint.ends
            if (found := part_module(design.parts.get(end.item))) is not None
        ),
        None,
    )


def part_module(part: Part | None) -> Fraction | None:
    """The module that a part's own shape or teeth have."""
    if part is None:
        return None
    if part.shape_kind in _TOOTHED:
        return _module(part.shape)
    cut = [one.entry for one in part.features if one.kind == "toothed"]
    return _module(cut[0]) if cut else None


def _module(entry: object) -> Fraction | None:
    module, dp = getattr(entry, "module", None), getattr(entry, "dp", None)
    if isinstance(module, Size):
        return module.exact
    return _INCH / dp.exact if isinstance(dp, Size) and dp.exact > 0 else None


def running_diameters(end: End, section: Fraction, design: Design) -> tuple[Fraction, ...]:
    """The diameters in mm at the middle of a round belt, one for each groove of the pulley.

    The belt lies on the bottom of its groove (common practice, no source).
    """
    part = design.parts.get(end.item)
    if part is None:
        return ()
    if part.shape_kind == "pulley":
        return tuple(one.outside.exact - one.sunk for one in seats_of(end, section, design))
    found = []
    for groove in grooves_of(part, end):
        step = getattr(groove.entry, "on", None) or ""
        place = design.facts.about(PlaceFact, f"{part.name}.{step}")
        if place is not None and place.diameter is not None:
            found.append(place.diameter - 2 * cut_depth(groove, section) + section)
    return tuple(found)
