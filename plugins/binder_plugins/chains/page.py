"""Chains to their sheets: the sizes, what they leave, and the sum for the piece made last."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Block,
    ChainFact,
    ChainLink,
    Column,
    Design,
    Facts,
    Paragraph,
    Picture,
    Place,
    Reckoned,
    Section,
    Table,
    Text,
)
from binder_making.chains import Chain
from binder_plugins.chains.bands import bands, fails_under
from binder_plugins.chains.reckoning import printed, reckoned, suited

_COLUMNS = (
    Column("Size", 4),
    Column("As drawn", 2, is_figure=True),
    Column("May stray", 2, is_figure=True),
    Column("Limits from", 2.4),
    Column("It", 1.4),
    Column("Share", 1.2, is_figure=True),
    Column("Measured", 2.6),
)
_WORDS = (
    "Sizes of several parts add up to what is left where they meet. The worst case has every one "
    "of them at its bad limit; the likely band is the root of the sum of squares, which holds "
    "where they stray independently. With three sizes or fewer go by the worst case. Write down "
    "what you measure, and make the piece that closes the row to the sum."
)
_LEAVES = {
    "end float": "End float",
    "shoulders": "End float",
    "centres": "Distance",
    "slide": "Clearance",
    "lap": "Lap",
}


def chain_pages(design: Design) -> Iterator[Section]:
    """One sheet for each chain."""
    sheets = []
    for number, fact in enumerate(design.facts.all(ChainFact), 1):
        chain = reckoned(fact)
        if chain is not None:
            sheets.append(_sheet(number, fact, chain, design.units))
    if sheets:
        yield Section(
            "chains",
            "Sizes that add up",
            Place.INSPECTION,
            (Paragraph((_WORDS,)),),
            sections=tuple(sheets),
        )


def _sheet(number: int, fact: ChainFact, chain: Chain, units: str) -> Section:
    shares = {one.name: one.share for one in chain.contributions}
    rows = tuple(_row(link, shares[link.name], fact, units) for link in fact.links)
    says = (
        "wanted, worst case and likely, as bars over one scale; it "
        f"{fails_under(fact)} {fact.jams:g} mm"
    )
    blocks: list[Block] = [
        Table(_COLUMNS, rows),
        Picture(bands(fact, chain, units), says),
        Facts(tuple(_facts(fact, chain, units))),
    ]
    return Section(
        f"chain-{number}", fact.title, Place.INSPECTION, tuple(blocks), starts_page=False
    )


def _row(link: ChainLink, share: float, fact: ChainFact, units: str) -> tuple[Text, ...]:
    half = (link.upper - link.lower) / 2
    does = "opens" if link.factor > 0 else "closes"
    if link.nominal == 0 and link.upper == -link.lower:
        does = "either way"
    name = f"{link.name}, made last" if link.name == fact.closing and not fact.is_set else link.name
    return (
        (name,),
        (printed(link.nominal, units) if link.nominal else "",),
        (f"± {printed(half, units)}",),
        (link.why,),
        (does,),
        (f"{share:.0%}",),
        (Blank(link.key, units),),
    )


def _facts(fact: ChainFact, chain: Chain, units: str) -> Iterator[tuple[str, Text]]:
    leaves = _LEAVES[fact.kind]
    wanted = f"{printed(fact.least, units)} to {printed(fact.most, units)}"
    yield f"{leaves} wanted", (f"{wanted}; {printed(chain.nominal_mm, units)} as drawn",)
    worst = f"{printed(chain.least_mm, units)} to {printed(chain.most_mm, units)}"
    likely = f"{printed(chain.likely_least_mm, units)} to {printed(chain.likely_most_mm, units)}"
    yield "Worst case", (Reckoned(worst, f"likely {likely}"),)
    first = chain.largest
    words = f"{first.name}: ± {printed(first.half_mm, units)}, {first.share:.0%} of the worst case"
    yield "Strays most", (words,)
    yield from _closing(fact, chain, units)


def _closing(fact: ChainFact, chain: Chain, units: str) -> Iterator[tuple[str, Text]]:
    target = suited(fact, chain)
    if fact.kind == "centres" and fact.is_set:
        middle = printed((fact.least + fact.most) / 2, units)
        words = (
            "bore one hole; cut both gears; put the second bore where they run freely by hand on "
            f"the strip between the teeth, {middle} apart"
        )
        yield "Set in mesh", (words,)
    elif fact.kind == "slide" and fact.is_set:
        yield "Set by the gib", ("nip its screws until it drags, then back an eighth of a turn",)
    elif fact.kind == "lap" and fact.is_set:
        words = "left long, and filed back on the standing machine till it is moved as far as told"
        yield "Set by the tail", (words,)
    elif target is not None:
        room = f"± {printed(target.half_mm, units)}"
        yield "Made to suit", (f"{target.sum_text}, each as measured",)
        as_drawn = f"{printed(target.target_mm, units)} {room}"
        yield "If the others come as drawn", (Reckoned(as_drawn, "the same sum"),)
    elif not fact.closing:
        yield "If it comes out wrong", (fact.way_out,)
