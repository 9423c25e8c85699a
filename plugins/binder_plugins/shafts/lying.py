"""Whether each bearing lies wholly on the journal that it was made for."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from binder.api import Design, Diagnostic, Piece, Role, ShaftFact, exact, shown_length
from binder_plugins.shafts import codes
from binder_solid.facts import FormFact, Stretch
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed

# As near as a shaft is set along its bearings; common practice, no source.
_NEAR_MM = 0.25
_HAIR_MM = 0.01


def check_lying(design: Design) -> Iterator[Diagnostic]:
    """Every bearing of a row that stands partly beside its journal."""
    for fact in design.facts.all(ShaftFact):
        shafts = [one for one in design.facts.all(PlacedFact) if one.item == fact.subject]
        if len(shafts) != 1:
            continue
        told: set[str] = set()
        for piece in fact.pieces:
            journal = _journal(fact.subject, piece, design)
            if piece.role is Role.BEARING and journal is not None and piece.joint not in told:
                told.add(piece.joint)
                yield from _beside(shafts[0], piece, journal, design)


def _journal(shaft: str, piece: Piece, design: Design) -> Stretch | None:
    joint, form = design.joints.get(piece.joint), design.facts.about(FormFact, shaft)
    if joint is None or form is None:
        return None
    names = {end.place for end in joint.ends if end.item == shaft}
    return next((one for one in form.stretches if one.name in names), None)


def _beside(
    shaft: PlacedFact, piece: Piece, journal: Stretch, design: Design
) -> Iterator[Diagnostic]:
    """One finding for a joint, at the copy that stands out most."""
    spans = [_along(shaft, one) for one in design.facts.all(PlacedFact) if one.item == piece.item]
    # What reaches farther along the shaft than its bore tells nothing of where the bore is.
    spans = [
        (low, high)
        for low, high in spans
        if piece.length is not None and abs(high - low - float(piece.length)) < _HAIR_MM
    ]
    out = max((max(journal.start - low, high - journal.end) for low, high in spans), default=0.0)
    if out <= _NEAR_MM:
        return
    title = design.parts[shaft.item].title
    yield codes.BEARING_BESIDE_JOURNAL.at(
        design.joints[piece.joint].at,
        f"the {piece.title} stands {shown_length(exact(round(out, 2)), design.units)} beside the "
        f"{journal.name.replace('_', ' ')} of the {title}",
        help=f"lengthen the {journal.name.replace('_', ' ')} by as much at that end, and shorten "
        "the step beside it, or move the bearing",
    )


def _along(shaft: PlacedFact, other: PlacedFact) -> tuple[float, float]:
    """From where to where another part reaches along the shaft, from its left end."""
    corners = [
        placed((x, y, z), other.frame) for x, y, z in product(*zip(*other.corners, strict=True))
    ]
    along = [dot(minus(one, shaft.frame.origin), shaft.frame.x) for one in corners]
    return min(along), max(along)
