"""Do the two of a mesh, a belt, a chain or a ratchet stand in one plane."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from binder.api import Design, Diagnostic, Joint, Passed, TrainFact
from binder_plugins.drive import shaft_codes as codes
from binder_plugins.drive.carrying.opposite import Opposite, opposite, play_of
from binder_plugins.drive.motion.axes import copies_of
from binder_plugins.drive.motion.reach import ring_of
from binder_plugins.drive.pairs.facts import BeltFact
from binder_plugins.drive.standing import axis_of
from binder_plugins.drive.train.bodies import bodies
from binder_trade.belts.alignment import offset_allowed_mm
from binder_trade.explained import NotDefined

# Of the narrower face, and in mm: what nobody sees the wear of. Common practice, no source.
_PART_OF_FACE = 0.1
_LEAST_MM = 0.1


def check_in_line(design: Design) -> Iterator[Diagnostic]:
    """Each drive of parallel shafts whose wheels are known to stand somewhere, and each pawl."""
    train = design.facts.about(TrainFact, "")
    for one in train.passed if train is not None else ():
        if one.kind in ("meshes", "rubs"):
            yield from _faces(one, design)
        elif one.kind in ("belted", "chained"):
            yield from _planes(one, design)
    for joint in design.joints.values():
        if joint.kind == "ratchets":
            yield from _pawl(joint, design)


def _pawl(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    """A pawl beside the teeth of its wheel, as both stand in the model; of copies the nearest."""
    wheel, pawl = joint.ends[0], joint.ends[-1]
    of = bodies(design)
    axis = axis_of(of[wheel.item].items, design) if wheel.item in of else None
    placed = [copies_of((end.item,), design) for end in (wheel, pawl)]
    if axis is None or not all(placed):
        return
    rings = [[ring_of(copy, axis) for copy in copies] for copies in placed]
    one, other = min(product(*rings), key=lambda pair: abs(pair[0].low - pair[1].low))
    pair = Opposite(
        joint, wheel, pawl, (one.low, one.high), (other.low, other.high), None,
        play_of(of[wheel.item].items, design),
    )  # fmt: skip
    allowed = max(_LEAST_MM, _PART_OF_FACE * pair.width, pair.play)
    if pair.sticks_out <= allowed:
        return
    yield codes.PAWL_OUT_OF_LINE.at(
        joint.at,
        f"'{wheel.item}' stands {pair.sticks_out:.2f} mm past the face of '{pawl.item}'; "
        f"{allowed:.2f} mm is allowed",
        help=f"a washer of {pair.sticks_out:.2f} mm under the pawl, or a thicker pawl",
    )


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
