"""Finishes to their pages: steps, masks and waits for each, and the heat for each material."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    CautionLines,
    Checklist,
    Design,
    Fabrication,
    Facts,
    Paragraph,
    Part,
    Place,
    Section,
    Subheading,
    Text,
    Tick,
)
from binder_making.times import joining
from binder_plugins.finishing.bare import bare_places
from binder_plugins.finishing.heat_page import heat_section
from binder_plugins.finishing.processes import Process, finish_source
from binder_plugins.finishing.treated import Treated, treated
from binder_solid.filled import locking
from binder_trade.fits.finish import lost_clearance_um

_WORDS = (
    "Finish nothing before the dry assembly runs. Then take apart what the build order says, "
    "wash off oil and chips, and work through one finish at a time: what is polished is polished "
    "before it is coated, and what is heated is heated before either. Keep paint and swarf on "
    "different days. "
)
_NO_FINISH = (
    "No part is told a finish: all stays as the tools leave it, wiped clean, with a film of oil on "
    "bare metal. (Common practice, no source.)"
)
# Words for a fabrication to the kind of joint that sets so.
_LIKE = {"bonded": "glued"}


def finishing_pages(design: Design) -> Iterator[Section]:
    """One section: each finish with the parts that get it, then the heat."""
    found = tuple(treated(design))
    heat = heat_section(found, design)
    sheets = tuple(_sheets(found, design))
    if sheets or heat is not None:
        sections = (*sheets, *((heat,) if heat is not None else ()))
        yield Section(
            "finishing",
            "Finishing",
            Place.FINISHING,
            (Paragraph((_first_words(design) if found else _NO_FINISH,)),),
            sections=sections,
        )


def _first_words(design: Design) -> str:
    return f"{_WORDS}{_locked_later(design)}(Steps: {finish_source()}.)"


def _locked_later(design: Design) -> str:
    """That what is locked comes apart for it still; '' where nothing is locked."""
    locks = dict.fromkeys(filter(None, (locking(one) for one in design.joints.values())))
    if not locks:
        return ""
    return (
        f"Nothing is locked yet: the {' and the '.join(locks)} goes on last of all, when all is "
        "together for good and has run in. "
    )


def _sheets(found: tuple[Treated, ...], design: Design) -> Iterator[Section]:
    order = dict.fromkeys(
        process for one in found for process in one.processes if not process.is_heat
    )
    for number, process in enumerate(order, 1):
        parts = [one for one in found if process in one.processes]
        yield _sheet(number, process, parts, design)


def _sheet(number: int, process: Process, parts: list[Treated], design: Design) -> Section:
    blocks: list[Block] = [Facts(tuple(_facts(process, parts)))]
    caution = CautionLines(design).at(
        {process.name, *process.words}, [one.item.name for one in parts]
    )
    if caution:
        blocks.append(Paragraph(caution))
    key = f"finish {process.name}"
    ticks = (Tick(f"{key} {n}", (step,)) for n, step in enumerate(process.steps, 1))
    blocks.append(Checklist(tuple(ticks)))
    if process.masks:
        blocks += _masks(process, parts, design)
    return Section(
        f"finish-{number}",
        process.name.capitalize(),
        Place.FINISHING,
        tuple(blocks),
        starts_page=False,
    )


def _facts(process: Process, parts: list[Treated]) -> Iterator[tuple[str, Text]]:
    yield "For", ("; ".join(f"{one.item.title} ({one.text})" for one in parts),)
    if process.coats != "none":
        yield "Coats", (process.coats,)
    waits = (
        (process.next_h, "before the next coat"),
        (process.handle_h, "before it is handled"),
        (process.hard_h, "until it is hard"),
    )
    times = [f"{_hours(hours)} {words}" for hours, words in waits if hours]
    cures = [words for one in parts if (words := _cure(one.item))]
    if cures:
        yield "Cured first", ("; ".join(cures),)
    if times:
        yield "Waits", ("; ".join(times),)
    if process.coat is not None:
        least, most = process.coat.grows_um
        eaten = lost_clearance_um(most, most)
        words = f"{least:g} to {most:g} µm on each surface"
        if most:
            words += f"; up to {eaten:g} µm off a clearance where both halves get it"
        yield "Builds", (f"{words} ({process.coat.source})",)


def _cure(item: Part | Fabrication) -> str:
    """How long what joins a fabrication sets before anything is put on it."""
    if not isinstance(item, Fabrication):
        return ""
    how = item.joined.lower().replace("-", "_").replace(" ", "_")
    hours = joining(_LIKE.get(how, how)).wait_h
    words = f"{item.title}: {_hours(round(hours))} after it is {item.joined.replace('_', ' ')}"
    return f"{words}; longer where the sheet of the adhesive says so" if hours else ""


def _hours(hours: int) -> str:
    return f"{hours // 24} days" if hours > 48 else f"{hours} h"


def _masks(process: Process, parts: list[Treated], design: Design) -> Iterator[Block]:
    """A line to tick for each place that stays bare; a part with none says so."""
    ticks: list[Tick] = []
    for one in parts:
        places = bare_places(one.item.name, design)
        for place in places:
            key = f"mask {process.name} {one.item.name} {place}"
            ticks.append(Tick(key, (f"{one.item.title}, {place}",)))
    yield Subheading("Keep bare")
    if ticks:
        yield Checklist(tuple(ticks), numbered=False)
    else:
        yield Paragraph(("No fit and no thread: only the faces on which a part seats.",))
