"""Do the two wheels of a mesh, a belt or a chain stand in one plane."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Passed, TrainFact
from binder_plugins.drive import shaft_codes as codes
from binder_plugins.drive.carrying.opposite import opposite
from binder_plugins.drive.pairs.facts import BeltFact
from binder_trade.belts.alignment import offset_allowed_mm
from binder_trade.explained import NotDefined

# Of the narrower face, and in mm: what nobody sees the wear of. Common practice, no source.
_PART_OF_FACE = 0.1
_LEAST_MM = 0.1


def check_in_line(design: Design) -> Iterator[Diagnostic]:
    """Each drive of parallel shafts whose wheels are known to stand somewhere."""
    train = design.facts.about(TrainFact, "")
    for one in train.passed if train is not None else ():
        if one.kind in ("meshes", "rubs"):
            yield from _faces(one, design)
        elif one.kind in ("belted", "chained"):
            yield from _planes(one, design)


def _faces(one: Passed, design: Design) -> Iterator[Diagnostic]:
    pair = opposite(one, 0, design)
    if pair is None or pair.width <= 0:
        return
    allowed = max(_LEAST_MM, _PART_OF_FACE * pair.width, pair.play)
    if pair.sticks_out <= allowed:
        return
    first, second = pair.first.item, pair.second.item
    misses = pair.one[0] >= pair.other[1] or pair.other[0] >= pair.one[1]
    how = "pass one another" if misses else f"stand {pair.sticks_out:.2f} mm past one another"
    yield codes.MESH_OUT_OF_LINE.at(
        pair.joint.at,
        f"the faces of '{first}' and '{second}' {how}; {allowed:.2f} mm is allowed",
        help=f"move one of them {pair.sticks_out:.2f} mm along its shaft: their middles are "
        f"{pair.offset:.2f} mm apart",
    )


def _planes(one: Passed, design: Design) -> Iterator[Diagnostic]:
    """The worst of all steps; a quarter-turn belt has planes of its own."""
    joint = design.joints[one.joint]
    if getattr(joint.entry, "quarter_turn", False):
        return
    pairs = [opposite(one, step, design) for step in range(len(one.ratios))]
    known = [pair for pair in pairs if pair is not None]
    if not known:
        return
    pair = max(known, key=lambda each: each.offset)
    apart = pair.apart or _centres(one.joint, design)
    if apart is None:
        return
    kind = "chain"
    if one.kind == "belted":
        kind = str(getattr(joint.entry, "belt", None) or "flat")
    try:
        allowed, source = offset_allowed_mm(kind, apart)
    except NotDefined:
        return
    allowed = max(_LEAST_MM, allowed)
    if pair.offset > allowed:
        yield codes.BELT_OUT_OF_LINE.at(
            joint.at,
            f"'{pair.first.item}' and '{pair.second.item}' stand {pair.offset:.2f} mm out of line; "
            f"{allowed:.2f} mm is allowed at {apart:.3g} mm between the shafts",
            help=f"move one of them {pair.offset:.2f} mm along its shaft ({source})",
        )


def _centres(joint: str, design: Design) -> float | None:
    belt = design.facts.about(BeltFact, joint)
    return belt.centres if belt is not None else None
