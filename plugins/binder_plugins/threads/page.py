"""The threads of a design to their pages: holes, outsides, and how the figures are meant."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from binder.api import (
    Block,
    Column,
    Design,
    Diagnostic,
    Feature,
    Paragraph,
    Place,
    PlaceFact,
    Reckoned,
    Section,
    Size,
    Subheading,
    Table,
    Text,
    ThreadFact,
    lengths_in,
    shown_length,
)
from binder_plugins.threads.found import thread_in
from binder_trade.threading import screwcutting

_HOLES = (
    Column("Thread", 2),
    Column("Where", 6),
    Column("Off", 1, is_figure=True),
    Column("Drill", 3),
    Column("Per cent of thread", 3),
    Column("Full thread", 2, is_figure=True),
    Column("Drill to", 2, is_figure=True),
    Column("How", 3),
)
_OUTSIDES = (
    Column("Thread", 2),
    Column("Where", 5),
    Column("Off", 1, is_figure=True),
    Column("Length", 2, is_figure=True),
    Column("Turn to for a die", 2, is_figure=True),
    Column("Over wires or drill shanks", 4),
)
_CUTTING = (
    Column("Thread", 2),
    Column("Pitch", 2, is_figure=True),
    Column("Tool's point", 2),
    Column("Square in", 2, is_figure=True),
    Column("Slide at", 1, is_figure=True),
    Column("Along the slide", 2, is_figure=True),
    Column("Run-out groove", 3),
)
INTRO = (
    "Per cent of thread is printed on both bases in use: ISO, of 1.0825 P (5/8 H, ISO 68-1), and "
    "US, of 1.299 P (3/4 H, US charts). The same hole gives a figure 1.2 times as large on the "
    "first. Depths to drill are those of the full diameter; the point goes deeper."
)
_ISO = " of 1.0825 P (5/8 H, ISO 68-1)"
_US = " of 1.299 P (3/4 H, US charts)"


def thread_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section with the tapped holes, the outside threads, and how to screwcut them."""
    facts = design.facts.all(ThreadFact)
    holes = [fact for fact in facts if fact.is_internal]
    outsides = [fact for fact in facts if not fact.is_internal]
    blocks: list[Block] = [Paragraph((INTRO,))]
    if holes:
        rows = tuple(_hole(alike, design) for alike in _grouped(holes))
        blocks += [Subheading("Tapped holes"), Table(_HOLES, rows)]
    if outsides:
        rows = tuple(_outside(alike, design) for alike in _grouped(outsides))
        blocks += [Subheading("Outside threads"), Table(_OUTSIDES, rows)]
        blocks += [
            Subheading("For the lathe"),
            Table(_CUTTING, tuple(_cutting(outsides, design))),
        ]
    if facts:
        yield Section("threads", "Threads", Place.THREADS, tuple(blocks), starts_page=False)


def _grouped(facts: Iterable[ThreadFact]) -> list[list[ThreadFact]]:
    """Threads that are made alike, so that one row says it for all of them."""
    groups: dict[object, list[ThreadFact]] = {}
    for one in facts:
        key = (one.designation, one.drill, one.full_depth, one.drill_depth, one.turn_to, one.note)
        groups.setdefault(key, []).append(one)
    return list(groups.values())


def _where(alike: list[ThreadFact], design: Design) -> Text:
    return ("; ".join(_place(fact, design) for fact in alike),)


def _place(fact: ThreadFact, design: Design) -> str:
    item = design.item(fact.item)
    title = item.title if item is not None else fact.item
    off = f" ({fact.count} off)" if fact.count > 1 else ""
    return f"{title}, {fact.place.replace('_', ' ')}{off}"


def _basis(percent: str) -> str:
    """The bases by the short names that the head of the page explains."""
    return percent.replace(_ISO, " ISO").replace(_US, " US")


def _hole(alike: list[ThreadFact], design: Design) -> tuple[Text, ...]:
    units = design.units
    fact = alike[0]
    why = design.workings.get(f"{fact.subject}.drill")
    drill: Text = ("none that serves is owned",)
    if fact.drill:
        drill = (Reckoned(fact.drill, why.because if why is not None else ""),)
    full = shown_length(fact.full_depth, units) if fact.full_depth is not None else "through"
    return (
        (fact.designation,),
        _where(alike, design),
        (str(sum(one.count for one in alike)),),
        drill,
        (_basis(fact.percent),),
        (full,),
        (_length(fact.drill_depth, units),),
        (fact.note,),
    )


def _outside(alike: list[ThreadFact], design: Design) -> tuple[Text, ...]:
    units = design.units
    fact = alike[0]
    length = shown_length(fact.full_depth, units) if fact.full_depth is not None else "all along"
    turn = Reckoned(_length(fact.turn_to, units), "a die squeezes the crests up a little")
    return (
        (fact.designation,),
        _where(alike, design),
        (str(sum(one.count for one in alike)),),
        (length,),
        (turn,),
        (fact.over_wires,),
    )


def _length(mm: float | None, units: str) -> str:
    return "" if mm is None else shown_length(Fraction(round(mm * 100), 100), units)


def _cutting(outsides: Iterable[ThreadFact], design: Design) -> Iterator[tuple[Text, ...]]:
    outsides, units = tuple(outsides), design.units
    for name in dict.fromkeys(fact.designation for fact in outsides):
        thread = thread_in(name)
        if thread is None:
            continue
        figures = screwcutting(thread)
        tpi = f" ({thread.tpi} to the inch)" if thread.tpi is not None else ""
        mine = tuple(fact for fact in outsides if fact.designation == name)
        groove = "; ".join(dict.fromkeys(_grooves(mine, design)))
        usual = f"{figures.groove_mm:.2f} mm wide, {figures.groove_diameter_mm:.2f} mm across"
        groove = groove or f"none drawn; where one is wanted, {usual}"
        for infeed in figures.infeeds:
            yield (
                (name,),
                (f"{lengths_in(f'{thread.pitch_mm:.4g} mm', units)}{tpi}",),
                (infeed.point,),
                (lengths_in(f"{infeed.depth_mm:.3f} mm", units),),
                (f"{figures.slide_deg:g}°",),
                (lengths_in(f"{infeed.along_slide_mm:.3f} mm", units),),
                (lengths_in(groove, units),),
            )


def _grooves(outsides: Iterable[ThreadFact], design: Design) -> Iterator[str]:
    """The undercuts that the parts have beside a thread, as they are drawn."""
    for fact in outsides:
        part = design.parts.get(fact.item)
        features = part.features if part is not None else ()
        steps = {_on(one) for one in features if one.name == fact.place}
        for one in features:
            if one.kind == "undercut" and _on(one) in steps:
                yield _groove(one, design.facts.about(PlaceFact, f"{fact.item}.{_on(one)}"))


def _on(feature: Feature) -> str:
    return str(getattr(feature.entry, "on", None) or "")


def _groove(one: Feature, step: PlaceFact | None) -> str:
    width, depth = (getattr(one.entry, name, None) for name in ("undercut", "depth"))
    said = f"{width.mm:.2f} mm wide" if isinstance(width, Size) else ""
    if isinstance(depth, Size) and step is not None and step.diameter is not None:
        said += f", {float(step.diameter) - 2 * depth.mm:.2f} mm across"
    return said
