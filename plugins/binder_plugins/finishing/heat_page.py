"""Materials of a model to the sheet of heat: softening, hardening, and the colours."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    Checklist,
    Column,
    Design,
    Facts,
    MaterialFact,
    Notice,
    NoticeKind,
    Paragraph,
    Place,
    Section,
    Subheading,
    Table,
    Text,
    Tick,
)
from binder_plugins.finishing.heat import (
    Colour,
    Heat,
    colour_in,
    colour_source,
    colours,
    heat_for,
    heat_source,
    said,
)
from binder_plugins.finishing.treated import Treated

_SOFTENED = (
    Column("Material", 2),
    Column("Soften at", 1.6, is_figure=True),
    Column("How", 5),
)
_EASED = Column("Ease stress at", 1.8, is_figure=True)
_COLOURS = (Column("°C", 1, is_figure=True), Column("Colour", 3), Column("For", 5))
_SOFTEN = "Soften what is to be bent, spun or rolled, and again when it grows stiff."
# Every solder of the shop flows, or lets go under its own weight, at these heats of its metal.
_EASE = (
    " Ease the stress of {names} before its fits are finished, and of what is welded after the "
    "weld: an hour for each 25 mm of thickness, then cool it slowly. What is soldered, soft or "
    "silver, is eased before it is joined and never after: its joints would let go."
)
_CAUTION = (
    "Hot steel looks like cold steel. Tongs, face shield, leather, no synthetic clothes; oil for "
    "quenching in a metal bath with a lid, outdoors or in moving air, never near the face."
)


def heat_section(found: tuple[Treated, ...], design: Design) -> Section | None:
    """The sheet, None where no material of the model is ever heated."""
    rows = dict.fromkeys(
        heat for fact in design.facts.all(MaterialFact) if (heat := heat_for(fact)) is not None
    )
    # What no task asks for is not told: a heat that stands in a table gets used.
    eased = [one for one in found if one.is_eased and one.heat is not None and one.heat.stress]
    table = tuple(
        _row(one, is_eased=bool(eased)) for one in rows if one.anneal or (eased and one.stress)
    )
    hard = [one for one in found if one.is_hardened and one.heat is not None]
    if not table and not hard:
        return None
    blocks: list[Block] = []
    if table:
        blocks += _softened(table, eased)
    for one in hard:
        blocks += _hardened(one)
    if hard:
        blocks += [Notice(NoticeKind.CAUTION, "Hardening at home", (_CAUTION,), "common practice")]
    sources = f"Heats: {heat_source()}."
    if any(one.is_tempered for one in hard):
        blocks += [Subheading("Tempering colours"), _table_of_colours(hard)]
    if any(_tells_colour(one) for one in hard):
        sources += f" Colours: {colour_source()}."
    blocks.append(Paragraph((sources,)))
    return Section("heat", "Heat", Place.FINISHING, tuple(blocks), starts_page=bool(hard))


def _softened(table: tuple[tuple[Text, ...], ...], eased: list[Treated]) -> Iterator[Block]:
    """The table of softening; with what eases stress where a part's finish asks for that."""
    if not eased:
        yield Paragraph((_SOFTEN,))
        yield Table(_SOFTENED, table)
        return
    names = " and ".join(f"the {one.item.title}" for one in eased)
    yield Paragraph((_SOFTEN + _EASE.format(names=names),))
    yield Table((*_SOFTENED, _EASED), table)


def _row(heat: Heat, *, is_eased: bool) -> tuple[Text, ...]:
    row: tuple[Text, ...] = (
        (heat.name,),
        (said(heat.anneal) if heat.anneal else "",),
        (heat.anneal_how,),
    )
    return (*row, (said(heat.stress) if heat.stress else "",)) if is_eased else row


def _hardened(one: Treated) -> Iterator[Block]:
    yield Subheading(f"{one.item.title.capitalize()}: {one.text}")
    steps = tuple(_steps(one))
    key = f"heat {one.item.name}"
    yield Checklist(tuple(Tick(f"{key} {n}", (step,)) for n, step in enumerate(steps, 1)))
    if one.heat is not None and one.heat.hardens and not one.is_case:
        yield Facts((("Quench", (one.heat.quench,)),))


def _steps(one: Treated) -> Iterator[str]:
    """The steps of hardening a part of its material, in order."""
    heat = one.heat
    if heat is None:
        return
    yield "All holes, threads, flats and marks are done; no sharp inside corner is left."
    if one.is_case and heat.case is not None:
        yield f"Heat to {said(heat.case)}; {heat.case_how}."
        yield "A new file skates over it: the case is hard. Its core stays soft."
        return
    if heat.harden is None:
        return
    yield "Coat it with soft soap or chalk against scale."
    yield f"Heat it evenly to {said(heat.harden)}, {heat.glow}."
    yield f"Hold it there {heat.soak} minutes for each 25 mm of thickness, no longer."
    yield "Quench at once, straight in along its axis, and move it about until it is cold."
    yield "A new file skates over it: it is hard. If it bites, heat and quench again."
    yield _temper(heat, colour_in(one.text))


def _tells_colour(one: Treated) -> bool:
    """Whether its tempering goes by a colour."""
    told = " ".join(_steps(one))
    return one.is_tempered or any(colour.colour in told for colour in colours())


def _temper(heat: Heat, colour: Colour | None) -> str:
    if colour is None:
        return f"Brighten a face with emery and temper: {heat.temper}."
    return (
        f"Brighten a face with emery; warm slowly from the thick end until {colour.colour} "
        f"({colour.celsius} °C) reaches the working edge, then quench."
    )


def _table_of_colours(hard: list[Treated]) -> Table:
    asked = {colour.colour for one in hard if (colour := colour_in(one.text)) is not None}
    return Table(
        _COLOURS,
        tuple(
            (
                (str(one.celsius),),
                (f"{one.colour}  ← wanted here" if one.colour in asked else one.colour,),
                (one.use,),
            )
            for one in colours()
        ),
    )
