"""A hub fixed on the end of a piece of the row: does the piece or the hub meet the bearing."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from binder.api import Design, Diagnostic, Joint, Piece, PlaceFact, ShaftFact, shown_length
from binder_plugins.shafts import codes
from binder_plugins.shafts.stacking import bearings
from binder_trade.limits import stray_mm

_FIXED = frozenset(
    {"retained", "soft_soldered", "silver_soldered", "pressed", "shrunk", "glued", "riveted"}
)
_NEAR = 1e-9


def check_flush(fact: ShaftFact, design: Design) -> Iterator[Diagnostic]:
    """Each hub on an end of a piece beside a bearing with a wider face.

    The row counts the length of the piece. Where its seat does not stand out of the hub by what
    both may stray (ISO 2768-1 m), a hub a little too thick takes up the float that was reckoned.
    """
    told: set[str] = set()
    listed = {one.item for one in fact.pieces}
    carrying = bearings(fact.pieces)
    for n, m in pairwise(range(len(fact.pieces))):
        for own, by in ((n, m), (m, n)):
            if own in carrying or by not in carrying:
                continue
            piece, beside = fact.pieces[own], fact.pieces[by]
            for joint, seat, hub in _on_ends(piece, design):
                if (
                    hub.item not in listed
                    and joint.name not in told
                    and _meets(seat, beside, design)
                ):
                    found = list(_judged(joint, seat, hub, beside, design))
                    told.update(joint.name for _ in found)
                    yield from found


def _on_ends(piece: Piece, design: Design) -> Iterator[tuple[Joint, PlaceFact, PlaceFact]]:
    """What is fixed on the first or the last step of a piece: the joint, its seat and its bore."""
    steps = [
        fact
        for fact in design.facts.all(PlaceFact)
        if fact.item == piece.item and fact.form == "step" and fact.start is not None
    ]
    if not steps:
        return
    ends = {fact.subject for fact in (min(steps, key=_start), max(steps, key=_start))}
    for joint in design.joints.values():
        if joint.kind not in _FIXED:
            continue
        places = [design.facts.about(PlaceFact, str(end)) for end in joint.ends]
        seat = next((fact for fact in places if fact is not None and fact.subject in ends), None)
        hub = next((fact for fact in places if fact is not None and fact.form == "hole"), None)
        if seat is not None and hub is not None and hub.item != piece.item:
            yield joint, seat, hub


def _start(fact: PlaceFact) -> float:
    return float(fact.start or 0)


def _meets(seat: PlaceFact, beside: Piece, design: Design) -> bool:
    """Whether the piece beside it reaches out over the seat, so that it meets the hub as well."""
    across = [
        float(fact.diameter)
        for fact in design.facts.all(PlaceFact)
        if fact.item == beside.item and fact.form == "step" and fact.diameter is not None
    ]
    return bool(across) and seat.diameter is not None and max(across) > float(seat.diameter) + _NEAR


def _judged(
    joint: Joint, seat: PlaceFact, hub: PlaceFact, beside: Piece, design: Design
) -> Iterator[Diagnostic]:
    if seat.length is None or hub.thickness is None or not hub.is_through:
        return
    out = float(seat.length - hub.thickness)
    wants = stray_mm(float(seat.length)) + stray_mm(float(hub.thickness))
    if out >= wants - _NEAR:
        return
    shown = shown_length(seat.length - hub.thickness, design.units)
    yield codes.FLUSH_AT_BEARING.at(
        joint.at,
        f"'{seat.subject}' stands {shown} out of '{hub.item}', and the {beside.title} meets both: "
        f"the two may stray {wants:.2g} mm, and the float is reckoned without",
        help=f"let the seat stand {wants:.2g} mm out of it or more, or make what is beside it "
        f"smaller than the seat",
    )
