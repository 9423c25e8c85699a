"""Whether each hub of a row lies wholly on the step that is made to fit its bore."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Diagnostic,
    HalfFact,
    Located,
    Piece,
    Role,
    ShaftFact,
    exact,
    shown_length,
)
from binder_plugins.shafts import codes
from binder_plugins.shafts.stacking import bearings
from binder_solid.facts import FormFact, Stretch
from binder_solid.placed import PlacedFact
from binder_solid.stands_at import along_rod

# As near as a hub is set along its shaft; common practice, no source.
_NEAR_MM = 0.25
_HAIR_MM = 0.01
Span = tuple[float | None, float | None]


def check_seated(design: Design) -> Iterator[Diagnostic]:
    """Every hub that stands partly on the step beside its own."""
    for fact in design.facts.all(ShaftFact):
        shafts = [one for one in design.facts.all(PlacedFact) if one.item == fact.subject]
        form = design.facts.about(FormFact, fact.subject)
        if len(shafts) != 1 or form is None:
            continue
        told: set[str] = set()
        for n, piece in enumerate(fact.pieces):
            seat = _seat(fact.subject, piece, form, design)
            if seat is not None and piece.joint not in told:
                told.add(piece.joint)
                span = _span(shafts[0], piece, design) or _from_bearing(shafts[0], fact, n, design)
                yield from _beside(fact.subject, piece, seat, form, span, design)


def _seat(shaft: str, piece: Piece, form: FormFact, design: Design) -> Stretch | None:
    """The step that a fixed hub was made to fit; a rod as bought is the same beside it."""
    joint = design.joints.get(piece.joint)
    if joint is None or piece.role is not Role.FIXED:
        return None
    fitted = {
        half.place
        for half in design.facts.all(HalfFact)
        if half.joint == joint.name and half.item == shaft and "as bought" not in half.what
        and (half.suits is not None or half.lower is not None)
    }  # fmt: skip
    return next((one for one in form.stretches if one.name in fitted), None)


def _span(shaft: PlacedFact, piece: Piece, design: Design) -> Span | None:
    """From where to where the only copy of a hub that is as long as its bore stands."""
    spans = [along_rod(shaft, one) for one in design.facts.all(PlacedFact)
             if one.item == piece.item]  # fmt: skip
    if len(spans) != 1 or piece.length is None:
        return None
    low, high = spans[0]
    return (low, high) if abs(high - low - float(piece.length)) < _HAIR_MM else None


def _from_bearing(shaft: PlacedFact, fact: ShaftFact, n: int, design: Design) -> Span:
    """The inner face of an outer stop of which no more is known: beside its bearing."""
    places = bearings(fact.pieces)
    if fact.located is not Located.OUTSIDE or n not in fact.stops or not places:
        return None, None
    is_left = n < places[0]
    bearing = fact.pieces[places[0] if is_left else places[-1]]
    between = fact.pieces[n + 1 : places[0]] if is_left else fact.pieces[places[-1] + 1 : n]
    spans = [along_rod(shaft, one) for one in design.facts.all(PlacedFact)
             if one.item == bearing.item]  # fmt: skip
    if not spans or any(one.length is None for one in between):
        return None, None
    float_mm = float(fact.least + fact.most) / 4
    off = float_mm + sum(float(one.length) for one in between if one.length is not None)
    if is_left:
        return None, min(low for low, _ in spans) - off
    return max(high for _, high in spans) + off, None


def _beside(
    shaft: str, piece: Piece, seat: Stretch, form: FormFact, span: Span, design: Design
) -> Iterator[Diagnostic]:
    """One finding for a hub, where the step that it stands out on is as thick or thicker."""
    low, high = span
    for face, out, at in (
        (low, seat.start - (low if low is not None else seat.start), seat.start),
        (high, (high if high is not None else seat.end) - seat.end, seat.end),
    ):
        if face is None or out <= _NEAR_MM or not _goes_on(form, seat, at):
            continue
        name = seat.name.replace("_", " ")
        far, ends, stands = (
            shown_length(exact(round(mm, 2)), design.units) for mm in (out, at, face)
        )
        yield codes.HUB_BESIDE_SEAT.at(
            design.joints[piece.joint].at,
            f"the {piece.title} stands {far} beside the {name} of the {design.parts[shaft].title}, "
            f"which is made to fit it: its face comes to {stands} off the left-hand end, and the "
            f"{name} {'begins' if at == seat.start else 'ends'} at {ends}",
            help=f"lengthen the {name} by as much at that end, and shorten the step beside it, or "
            "move the bearings",
        )
        return


def _goes_on(form: FormFact, seat: Stretch, at: float) -> bool:
    """Whether a step that is no thinner lies beyond that end of a seat."""
    for one in form.stretches:
        meets = one is not seat and min(abs(one.start - at), abs(one.end - at)) < _HAIR_MM
        if meets and max(one.across, one.end_across) > seat.across - _HAIR_MM:
            return True
    return False
