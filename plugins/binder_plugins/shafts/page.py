"""Shafts to their sheets: the row drawn to scale, the lengths, and the float."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import (
    Anchor,
    Blank,
    Block,
    Column,
    Design,
    Diagnostic,
    Drawing,
    DrawnBox,
    DrawnLabel,
    Facts,
    ItemNumber,
    Line,
    Located,
    Paragraph,
    Picture,
    Piece,
    Place,
    PlaceFact,
    Reckoned,
    Role,
    Section,
    ShaftFact,
    Stroke,
    Table,
    Text,
    exact,
    shown_length,
)
from binder_plugins.shafts.clipped import clipped_play, ring_of
from binder_solid.eased_along import comes_from
from binder_solid.float_tried import float_tried

_COLUMNS = (
    Column("No."),
    Column("Left to right", 4),
    Column("It is", 3),
    Column("Length", 2, is_figure=True),
    Column("Put on from", 2),
    Column("Measured", 2),
)
_WIDTH = 170.0
_HEIGHT = 46.0
_GAP = 1.5
_UNKNOWN = 6.0
_SHADE = {Role.BEARING: 0.25, Role.FIXED: 0.08, Role.LOOSE: 0.0}


def shaft_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One sheet for each shaft."""
    sheets = tuple(_sheet(fact, design) for fact in design.facts.all(ShaftFact))
    if sheets:
        words = (
            "Each row is read from left to right, as the pieces stand on the shaft. Grey pieces "
            "carry it; lightly shaded ones are fixed on it; white ones are loose."
        )
        yield Section(
            "shafts",
            "Shafts",
            Place.JOINTS,
            (Paragraph((words,)),),
            starts_page=False,
            sections=sheets,
        )


def _sheet(fact: ShaftFact, design: Design) -> Section:
    part = design.parts[fact.subject]
    rows = tuple(_row(number, piece, fact, design) for number, piece in enumerate(fact.pieces, 1))
    names = ", ".join(piece.title for piece in fact.pieces)
    picture = Picture(_drawing(fact, design), f"along the shaft from left to right: {names}")
    blocks: list[Block] = [picture, Table(_COLUMNS, rows)]
    blocks.append(Facts(tuple(_facts(fact, design))))
    number = design.facts.about(ItemNumber, part.name)
    title = f"{number.number} {part.title}" if number else part.title
    return Section(f"shaft-{part.name}", title, Place.JOINTS, tuple(blocks), starts_page=False)


def _row(number: int, piece: Piece, fact: ShaftFact, design: Design) -> tuple[Text, ...]:
    length = shown_length(piece.length, design.units) if piece.length is not None else "as it is"
    words = piece.role.value
    ring = ring_of(piece, fact, design)
    if ring is not None:
        length = shown_length(exact(round(ring.thick, 3)), design.units)
        words = "a clip, in its groove"
    if fact.to_suit == number - 1:
        length, words = f"{length}, to suit", f"{words}; made last"
    blank: Text = (Blank(f"{fact.subject} {number}", design.units),)
    enters = piece.enters
    if enters == "either":
        enters = _eased_from(piece, fact, design) or "either end"
    return ((str(number),), (piece.title,), (words,), (length,), (enters,), blank)


def _eased_from(piece: Piece, fact: ShaftFact, design: Design) -> str:
    """The one end of a rod as bought from which it is eased for a piece; '' for either."""
    own = {piece.item, fact.subject}
    joints = (one for one in design.joints_at(piece.item) if own <= set(one.items))
    return next(filter(None, (comes_from(one, design) for one in joints)), "")


def _facts(fact: ShaftFact, design: Design) -> Iterator[tuple[str, Text]]:
    units = design.units
    wanted = f"{shown_length(fact.least, units)} to {shown_length(fact.most, units)}"
    tried = float_tried(float(fact.least), float(fact.most), design)
    yield "End float wanted", (f"{wanted} ({tried})",)
    yield "Located", (fact.located.value,)
    if fact.apart is not None:
        yield "Between the bearings", (shown_length(fact.apart, units),)
    if fact.play is not None and fact.inside is not None:
        why = f"{shown_length(fact.apart or Fraction(0))} − {shown_length(fact.inside)}"
        yield "End float as drawn", (Reckoned(shown_length(fact.play, units), why),)
    if fact.span is not None and fact.located in (Located.OUTSIDE, Located.ONE):
        middle = fact.span + (fact.least + fact.most) / 2
        why = "what lies between them, and the middle of the float wanted"
        yield "Set the stops apart", (Reckoned(shown_length(middle, units), why),)
        play = clipped_play(fact, design)
        if play is not None:
            why = "outer walls of the grooves − both clips − what lies between them"
            yield "End float as drawn", (Reckoned(shown_length(play, units), why),)
            yield "Outer walls of the grooves apart", (_walls(fact, play, design),)
    if fact.to_suit is not None:
        yield "Made to suit", (_suit(fact, units),)


def _walls(fact: ShaftFact, play: Fraction, design: Design) -> Reckoned:
    """How far apart the walls may lie on which the clips bear; the grooves' width is no matter."""
    units, span = design.units, fact.span or Fraction(0)
    rings = (ring_of(fact.pieces[n], fact, design) for n in (fact.stops[0], fact.stops[-1]))
    clips = sum((exact(round(one.thick, 3)) for one in rings if one is not None), Fraction(0))
    low, high = (shown_length(span + clips + one, units) for one in (fact.least, fact.most))
    drawn = shown_length(span + clips + play, units)
    said = f"{low} to {high}, {drawn} as drawn; a wider groove grows inwards"
    return Reckoned(said, "what lies between them as measured, both clips, the float")


def _suit(fact: ShaftFact, units: str) -> str:
    middle = shown_length((fact.least + fact.most) / 2, units)
    piece = fact.pieces[fact.to_suit or 0]
    others = "" if fact.inside == piece.length else " − the others as measured"
    return f"gap as measured{others} − {middle} = length of the {piece.title}"


def _drawing(fact: ShaftFact, design: Design) -> Drawing:
    """The pieces side by side, lengths and heights to one scale; the gaps are for the eye."""
    sizes = [_size(one, fact, design) for one in fact.pieces]
    long = sum(length for length, _ in sizes)
    tall = max(height for _, height in sizes)
    room = _WIDTH - _GAP * (len(sizes) + 1) - 20
    scale = min(room / long, (_HEIGHT - 14) / tall, 4.0)
    axis = 5 + tall * scale / 2
    x = (_WIDTH - long * scale - _GAP * (len(sizes) - 1)) / 2
    shapes: list[Line | DrawnBox | DrawnLabel] = []
    shaft = _shaft_across(fact, design) * scale
    start, end = x - 8, _WIDTH - x + 8
    shapes.append(DrawnBox(start, axis - shaft / 2, end - start, shaft))
    for number, (piece, (length, height)) in enumerate(zip(fact.pieces, sizes, strict=True), 1):
        tint = _SHADE[piece.role]
        top, width = axis - height * scale / 2, length * scale
        shapes.append(DrawnBox(x, top, width, height * scale, tint))
        middle = x + width / 2
        shapes.append(
            DrawnLabel(middle, axis + tall * scale / 2 + 5, str(number), 3.5, Anchor.MIDDLE)
        )
        x += width + _GAP
    shapes.append(Line(start - 3, axis, end + 3, axis, Stroke.CENTRE))
    return Drawing(_WIDTH, axis + tall * scale / 2 + 7, tuple(shapes))


def _shaft_across(fact: ShaftFact, design: Design) -> float:
    sizes = [
        float(one.diameter or 0)
        for one in design.facts.all(PlaceFact)
        if one.item == fact.subject and one.form == "step"
    ]
    return max(sizes, default=0.0) or 3.0


def _size(piece: Piece, fact: ShaftFact, design: Design) -> tuple[float, float]:
    """How long and how high a piece is drawn, in mm; a clip as the thin ring that it is."""
    ring = ring_of(piece, fact, design)
    if ring is not None:
        return ring.thick, ring.outside
    return float(piece.length or 0) or _UNKNOWN, _high(piece, fact, design)


def _high(piece: Piece, fact: ShaftFact, design: Design) -> float:
    across = float(piece.across or 0)
    return max(across, _shaft_across(fact, design) * 1.6)
