"""Parts and their stock to a cutting plan for each material and section."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from binder.api import (
    NOWHERE,
    BarCut,
    BarPlan,
    BarUse,
    Contribution,
    CutPiece,
    CutSize,
    Design,
    Diagnostic,
    Given,
    MaterialFact,
    NumberOff,
    PlacedPiece,
    SmallWork,
    StockPiece,
    Working,
    load_data,
    parse_size,
    shown_length,
)
from binder_plugins.cutlist import codes
from binder_plugins.cutlist.job import Bar, Piece, Sawing
from binder_plugins.cutlist.packing import pack
from binder_plugins.cutlist.plan import CutBar, Plan

PACKAGE = "binder_plugins.cutlist"
# What a workshop that does not say it is taken to lose, mm; common practice, no source.
USUAL_KERF = Fraction(3, 2)
USUAL_FACING = Fraction(1, 2)
USUAL_HOLDING = Fraction(20)
_TIMBER = "board"


@dataclass(frozen=True, slots=True)
class Group:
    """Parts, and tools made for them, that share bars: one material, form and section."""

    material: str
    form: str
    section: tuple[Fraction, ...]
    section_text: str
    cuts: tuple[CutSize, ...]
    small: tuple[SmallWork, ...] = ()


@dataclass(frozen=True, slots=True)
class Losses:
    """What sawing, facing each end and gripping a bar lose, in mm."""

    kerf: Fraction
    facing: Fraction
    holding: Fraction


def plan_bars(design: Design) -> Contribution:
    """A plan for each group of parts that are cut from bars."""
    lengths: Mapping[str, list[str]] = load_data(PACKAGE, "sold.yaml")[design.units]
    plans: list[BarPlan] = []
    workings: list[Working] = []
    findings: list[Diagnostic] = []
    for group in _groups(design, lengths):
        losses = _losses(group.form, design)
        pieces = [_piece(cut, losses, design) for cut in group.cuts]
        pieces += [
            CutPiece(one.subject, one.length + 2 * losses.facing, one.count) for one in group.small
        ]
        bars = _bars(group, losses, design, lengths)
        plan = pack(
            [
                Piece(one.item, one.length + _wider(one, losses, design), one.count)
                for one in pieces
            ],
            bars,
            Sawing(losses.kerf),
        )
        findings.extend(_too_long(plan, group))
        plans.append(_fact(group, pieces, plan, losses))
        workings.extend(
            _working(piece, cut, losses, design.units)
            for piece, cut in zip(pieces, group.cuts, strict=False)
        )
    return Contribution(facts=plans, workings=workings, findings=findings)


def _groups(design: Design, lengths: Mapping[str, list[str]]) -> list[Group]:
    found: dict[tuple[str, str, tuple[Fraction, ...]], tuple[list[CutSize], list[SmallWork]]] = {}
    for cut in design.facts.all(CutSize):
        if cut.form in lengths:
            key = (_material(cut.subject, design), cut.form, cut.section)
            found.setdefault(key, ([], []))[0].append(cut)
    for work in design.facts.all(SmallWork):
        if work.form in lengths:
            key = (work.material, work.form, work.section)
            found.setdefault(key, ([], []))[1].append(work)
    return [
        Group(material, form, section, _section_text(cuts, small), tuple(cuts), tuple(small))
        for (material, form, section), (cuts, small) in found.items()
    ]


def _section_text(cuts: list[CutSize], small: list[SmallWork]) -> str:
    return cuts[0].section_text if cuts else small[0].section_text


def _material(part: str, design: Design) -> str:
    known = design.facts.about(MaterialFact, part)
    return known.id.replace("-", " ") if known is not None else design.parts[part].material


def _losses(form: str, design: Design) -> Losses:
    shop = design.workshop
    kerf, facing, holding = shop.kerf_for(form), shop.facing, shop.holding_length
    is_timber = form == _TIMBER
    return Losses(
        USUAL_KERF if kerf is None else kerf,
        USUAL_FACING if facing is None else facing,
        # A board is not held in a chuck: nothing of it is lost to the grip.
        Fraction(0) if is_timber else USUAL_HOLDING if holding is None else holding,
    )


def _piece(cut: CutSize, losses: Losses, design: Design) -> CutPiece:
    off = design.facts.about(NumberOff, cut.subject)
    use = design.facts.about(BarUse, cut.subject)
    count = off.count if off else 1
    if use is None:
        return CutPiece(cut.subject, cut.length + 2 * losses.facing, count)
    return CutPiece(cut.subject, use.length, count, use.over, use.verb)


def _wider(piece: CutPiece, losses: Losses, design: Design) -> Fraction:
    """What the parting tool takes more than the saw, in mm."""
    width = design.workshop.parting_width
    is_sawn = piece.verb == "saw" or width is None
    return Fraction(0) if is_sawn or width is None else max(width - losses.kerf, Fraction(0))


def _bars(
    group: Group, losses: Losses, design: Design, lengths: Mapping[str, list[str]]
) -> list[Bar]:
    """Bars on the shelf that fit, and the lengths that can be bought."""
    shop = design.workshop
    owned = [
        Bar(piece.text, piece.length, piece.count, losses.holding)
        for piece in shop.shelf()
        if piece.count is not None and _suits(piece, group)
    ]
    priced = [piece.length for piece in shop.sold() if _suits(piece, group)]
    sold = priced or shop.bar_lengths() or [parse_size(one).amount for one in lengths[group.form]]
    return [*owned, *(Bar("to buy", length, None, losses.holding) for length in sold)]


def _suits(piece: StockPiece, group: Group) -> bool:
    names = (group.material, group.material.replace(" ", "-"))
    return (
        piece.form == group.form
        and piece.section == group.section
        and piece.material.lower() in names
    )


def _too_long(plan: Plan, group: Group) -> Iterable[Diagnostic]:
    places = {cut.subject: cut.at for cut in group.cuts}
    places |= {one.subject: NOWHERE for one in group.small}
    for left in plan.unplaced:
        why = "no bar gives" if left.is_too_long else "the bars on the shelf are used up before"
        yield codes.BAR_TOO_SHORT.at(
            places[left.piece.label],
            f"{why} '{left.piece.label}', {shown_length(left.piece.length)} as sawn",
            help="join it from two, or list a longer bar on the shelf",
        )


def _fact(group: Group, pieces: list[CutPiece], plan: Plan, losses: Losses) -> BarPlan:
    return BarPlan(
        subject=f"{group.material} {group.section_text}",
        material=group.material,
        form=group.form,
        section_text=group.section_text,
        pieces=tuple(pieces),
        bars=tuple(_bar(cut) for cut in plan.bars),
        holding=losses.holding,
        least=plan.lower_bound,
        is_proven=plan.is_proven,
    )


def _bar(cut: CutBar) -> BarCut:
    placed = tuple(PlacedPiece(one.label, one.start, one.end) for one in cut.pieces)
    return BarCut(cut.bar.length, cut.bar.is_owned, placed, cut.left_in_hand)


def _working(piece: CutPiece, cut: CutSize, losses: Losses, units: str) -> Working:
    length = shown_length(cut.length, units)
    facing = shown_length(losses.facing, units)
    formula, why = f"{length} + 2 × {facing} to face", "both ends are faced after sawing"
    if piece.over:
        formula += f" + {shown_length(piece.over, units)} to hold it by"
        why = "the bar does not pass through the spindle, so a piece is held by its own end"
    elif piece.verb == "saw" and piece.length > cut.length + 2 * losses.facing:
        more = shown_length(piece.length - cut.length - 2 * losses.facing, units)
        formula += f" + {more} to try it by"
        why = "both ends are faced after sawing, and what is tried in its place is left long"
    elif piece.verb != "saw":
        more = shown_length(piece.length - cut.length, units)
        formula = f"{length} + {more} to face at both ends"
        why = "it is parted off the bar, and little is left to face at its back"
    return Working(
        id=f"{piece.item}.cut",
        title=f"length to cut off, {piece.item}",
        given=(Given("finished length", length, cut.at, f"{piece.item}.stock"),),
        formula=formula,
        result=shown_length(piece.length, units),
        because=why,
        source="common practice, no source",
        span=cut.at,
    )
