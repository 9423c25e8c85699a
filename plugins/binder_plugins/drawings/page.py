"""Parts to the drawing at the head of each leaf."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from binder.api import (
    CutSize,
    Design,
    Diagnostic,
    Drawing,
    ExportFile,
    Fabrication,
    Inset,
    ItemNumber,
    MaterialFact,
    NumberOff,
    Part,
    Picture,
    shown_length,
)
from binder_drafting import Datum, Fields, Request, draft
from binder_plugins.drawings.callouts import bare
from binder_plugins.drawings.eased import eased_rows
from binder_plugins.drawings.filed_sections import filed_sections
from binder_plugins.drawings.piloted import pilot_rows
from binder_plugins.drawings.sizes import sizes_of
from binder_plugins.drawings.suited import suited_note, suited_of
from binder_plugins.drawings.two_sheets import drafted
from binder_plugins.drawings.views import sheets_of
from binder_solid.facts import FormFact, JoinedFact, SolidFact, ViewsFact

# What a leaf has room for beside its tables, on one page where the part is simple; the last fills
# a page by itself, and a part with many sizes goes there at once, rather than to a scale at which
# nothing can be read.
ROOMS = ((178.0, 88.0), (178.0, 110.0), (178.0, 150.0), (178.0, 205.0), (178.0, 238.0))
MANY, FEW = 14, 6
TOLERANCE = "ISO 2768-1 m"


def drawing_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Inset]:
    """A drawing for each part and fabrication of which there are views."""
    for fact in (*design.facts.all(FormFact), *design.facts.all(JoinedFact)):
        found = design.facts.about(ViewsFact, fact.subject)
        if found is not None:
            note = suited_note(fact.subject, design)
            yield Inset(f"part-{fact.subject}", (*_pictures(fact, found, design), *note))


def drawing_files(design: Design) -> Iterator[ExportFile]:
    """Each drawing as a file of its own."""
    for fact in design.facts.all(FormFact):
        found = design.facts.about(ViewsFact, fact.subject)
        if found is not None:
            make = partial(_drawing, fact, found, design)
            yield ExportFile("drawing", fact.subject, "svg", make)


def _drawing(fact: FormFact, found: ViewsFact, design: Design) -> Drawing:
    return draft(request_for(fact, found, design)).drawing


def request_for(fact: FormFact, found: ViewsFact, design: Design) -> Request:
    """All that is drawn of a part."""
    views = sheets_of(fact, found)
    names = tuple(view.name for view in views)
    sizes = sizes_of(fact, names, design)
    rooms = ROOMS[-2:] if len(sizes) > MANY else ROOMS[1:] if len(sizes) > FEW else ROOMS
    return Request(
        views,
        sizes,
        rooms=rooms,
        fields=_fields(fact, design),
        first_angle=design.is_first_angle,
        data=(
            *_data(fact),
            *eased_rows(fact.subject, design),
            *pilot_rows(fact.subject, design),
        ),
    )


def _data(fact: FormFact) -> Iterator[Datum]:
    for number, one in enumerate(fact.data):
        ids = one.ids or (f"{fact.subject}.data{number}",)
        yield Datum(ids[0], one.caption, bare(one.text), ids[1:])


def _pictures(fact: FormFact, found: ViewsFact, design: Design) -> Iterator[Picture]:
    sheets = drafted(request_for(fact, found, design))
    item = design.item(fact.subject)
    title = item.title if item is not None else fact.subject
    for number, sheet in enumerate(sheets, 1):
        of = f", sheet {number} of {len(sheets)}" if len(sheets) > 1 else ""
        yield Picture(sheet.drawing, f"drawing of the {title}{of}, scale {sheet.scale}")
    yield from filed_sections(fact, design)


def _fields(fact: FormFact, design: Design) -> Fields:
    if isinstance(fact, JoinedFact):
        return _joined_fields(design.fabrications[fact.subject], design)
    part = design.parts[fact.subject]
    number = design.facts.about(ItemNumber, part.name)
    off = design.facts.about(NumberOff, part.name)
    material = design.facts.about(MaterialFact, part.name)
    grade = f" {material.designation}" if material is not None and material.designation else ""
    cut = design.facts.about(CutSize, part.name)
    solid = design.facts.about(SolidFact, part.name)
    head = design.spec.written.model
    return Fields(
        title=part.title,
        item=str(number.number) if number else "",
        material=f"{part.material}{grade}",
        stock=_stock(fact, cut, design) if cut else "",
        number_off=str(off.count if off else 1),
        mass=_mass(solid),
        finish=part.finish,
        tolerance=TOLERANCE,
        issue=str(head.issue),
        units=design.units,
        date=str(head.date or ""),
        hand=_hands(part, off.count if off else 1, design),
    )


def _stock(fact: FormFact, cut: CutSize, design: Design) -> str:
    """Section and length of the blank; in brackets where the length is made to suit."""
    long = shown_length(cut.length, design.units)
    suited = suited_of(fact, design)
    return f"{cut.section_text}, {f'({long})' if suited.is_whole or suited.moves else long}"


def _joined_fields(one: Fabrication, design: Design) -> Fields:
    number = design.facts.about(ItemNumber, one.name)
    off = design.facts.about(NumberOff, one.name)
    head = design.spec.written.model
    return Fields(
        title=one.title,
        item=str(number.number) if number else "",
        material=f"as its pieces, {one.joined.replace('_', ' ')}",
        number_off=str(off.count if off else 1),
        finish=one.finish,
        tolerance=TOLERANCE,
        issue=str(head.issue),
        units=design.units,
        date=str(head.date or ""),
    )


def _hands(part: Part, off: int, design: Design) -> str:
    """How many of each hand, as many of one as of the other; or whose other hand it is."""
    if part.is_mirrored:
        other = design.parts[part.like]
        number = design.facts.about(ItemNumber, other.name)
        return f"opposite hand of item {number.number if number else other.title}"
    if not part.handed:
        return ""
    return f"{off - off // 2} off as drawn, {off // 2} off opposite hand"


def _mass(solid: SolidFact | None) -> str:
    if solid is None or solid.mass is None:
        return ""
    return f"{solid.mass / 1000:.2f} kg" if solid.mass >= 1000 else f"{solid.mass:.1f} g"
