"""Parts to their leaves: what it is cut from, its sizes, and what is cut in it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    Block,
    Column,
    CutSize,
    Design,
    Diagnostic,
    Fabrication,
    Facts,
    Feature,
    FitFact,
    HalfFact,
    ItemNumber,
    MaterialFact,
    NumberOff,
    Paragraph,
    Part,
    Place,
    Section,
    Size,
    Strong,
    Table,
    Text,
    Typed,
    shown_length,
    size_text,
)
from binder_plugins.shapes.along import along, open_in
from binder_plugins.shapes.fitted import fitted_of, fitting
from binder_plugins.shapes.read_or_tried import cut_by_tool, is_read, measured, thread_in
from binder_plugins.shapes.step_names import named_steps, step_table
from binder_plugins.shapes.words import what, where
from binder_plugins.shapes.written import written_rows
from binder_solid.facts import ViewsFact
from binder_solid.piloting import pilots_in


def part_leaves(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """A section that holds one leaf for each part and fabrication."""
    leaves = [_leaf(part, design) for part in design.parts.values()]
    leaves += [_joined(one, design) for one in design.fabrications.values()]
    if leaves:
        yield Section("parts", "Parts", Place.PARTS, (), sections=tuple(leaves))


def _leaf(part: Part, design: Design) -> Section:
    is_drawn = design.facts.about(ViewsFact, part.name) is not None
    blocks = list(named_steps(part, design) if is_drawn else _told(part, design))
    blocks += _features(part.name, part.features, design)
    if part.note:
        blocks.append(Paragraph((Strong("Note: "), part.note)))
    if part.because:
        blocks.append(Paragraph((Strong("Because: "), part.because)))
    return _as_leaf(part, design, blocks)


def _told(part: Part, design: Design) -> Iterator[Block]:
    """What a drawing and its title block would say, where there is none."""
    yield Facts(tuple(_head(part, design)))
    if isinstance(part.shape, list):
        yield step_table(part, design.units)
    elif part.shape is not None:
        yield Facts(tuple(_sizes(part, design.units)))


def _as_leaf(item: Part | Fabrication, design: Design, blocks: list[Block]) -> Section:
    return Section(
        f"part-{item.name}", _title(item, design), Place.PARTS, tuple(blocks), starts_page=False
    )


def _title(item: Part | Fabrication, design: Design) -> str:
    number = design.facts.about(ItemNumber, item.name)
    return f"{number.number} {item.title}" if number else item.title


def _head(part: Part, design: Design) -> Iterator[tuple[str, Text]]:
    number = design.facts.about(NumberOff, part.name)
    hands = ", one of each hand" if part.handed else ""
    yield "Number off", (f"{number.count if number else part.quantity or 1}{hands}",)
    material = design.facts.about(MaterialFact, part.name)
    grade = f" ({material.designation})" if material and material.designation else ""
    yield "Material", (f"{part.material}{grade}",)
    cut = design.facts.about(CutSize, part.name)
    if cut is not None:
        yield (
            "Stock",
            (f"{cut.section_text}, {shown_length(cut.length, design.units)} long when finished",),
        )
    if part.finish:
        yield "Finish", (part.finish,)
    if part.is_dummy:
        yield "Dummy", ("made for looks",)


def _sizes(part: Part, units: str) -> Iterator[tuple[str, Text]]:
    if isinstance(part.shape, Size):
        yield "Length", (size_text(part.shape, units),)
        return
    for label, text in written_rows(part.shape, units):
        yield label, (text,)


# From which sides a place is told along each axis.
_ALONG = {
    None: (),
    0: ("from left", "from right"),
    1: ("from front", "from back"),
    2: ("from underside", "from top"),
}
_CUT = (
    Column("Feature", 2.1),
    Column("To size", 5),
    Column("Where", 3.2),
    Column("Meets", 4.9),
    Column("Measured", 2.7),
)


def _features(owner: str, features: tuple[Feature, ...], design: Design) -> Iterator[Table]:
    """What is cut in a part, and what its joints ask of it, each place said once."""
    halves = [half for half in design.facts.all(HalfFact) if half.item == owner]
    met = {half.place for half in halves} | {half.joint for half in halves}
    fits = {one.feature.name: fitting(one, design) for one in fitted_of(owner, design)}
    rows = [
        _feature(owner, one, fits.get(one.name, ""), design)
        for one in features
        if one.name not in met and one.implied_by not in met
    ]
    for half in halves:
        cut = _cut_for(half, [one for one in features if one.name not in met - {half.place}])
        rows.append(_half(half, cut, fits.get(cut.name, "") if cut is not None else "", design))
    if rows:
        yield Table(_CUT, tuple(rows), caption="Cut in it, and what it meets")


def _cut_for(half: HalfFact, features: Sequence[Feature]) -> Feature | None:
    """The feature that is a half of a joint: of the name of its place, or the joint's own."""
    named = (one for one in features if one.name == half.place)
    return next(named, next((one for one in features if one.implied_by == half.joint), None))


def _where(owner: str, feature: Feature, design: Design) -> str:
    """Where it is; what is open at both ends begins nowhere along its run."""
    but = _ALONG[open_in(owner, feature, design)]
    told = where(feature, design.units, but)
    ends = "from end to end" if but else ""
    return ", ".join(filter(None, (told, ends, along(owner, feature, design))))


def _feature(owner: str, feature: Feature, fits: str, design: Design) -> tuple[Text, ...]:
    key, thread = f"{owner} {feature.name}", thread_in(owner, design, feature.name)
    return (
        (_name(feature),),
        (what(feature, design.units) + _remarks(feature),),
        (_where(owner, feature, design),),
        (fits,),
        measured(key, thread, design.units) if is_read(feature) else cut_by_tool(key),
    )


def _remarks(feature: Feature) -> str:
    notes = [note for note in (feature.entry.note, feature.entry.because) if note]
    return (" (dummy)" if feature.is_dummy else "") + "".join(f"; {note}" for note in notes)


def _name(feature: Feature) -> Typed | str:
    """The name as the maker typed it, or that of the joint which asked for the feature."""
    if feature.implied_by:
        return feature.name.replace("_", " ")
    return Typed(feature.name)


def _half(half: HalfFact, feature: Feature | None, fits: str, design: Design) -> tuple[Text, ...]:
    """What a joint asks of a place: the size, what it meets, how the half is made."""
    how = f"{half.how}; {_first(half, design)}" if half.is_master else half.how
    cut = feature.name if feature is not None else ""
    is_tapped = half.what.startswith("tap ")
    thread = thread_in(half.item, design, half.place, cut) if is_tapped else None
    return (
        (Typed(half.place),),
        (half.what + (_remarks(feature) if feature else ""),),
        (_where(half.item, feature, design) if feature else _spotted(half, design),),
        ("; ".join(one for one in (_meets(half, how, design), fits) if one),),
        measured(f"joint {half.joint} {half.place}", thread, design.units),
    )


def _spotted(half: HalfFact, design: Design) -> str:
    """Where pilot holes come to lie: their mate is the jig, and stands where it is told."""
    for one in pilots_in(half.item, design):
        if one.half is half:
            where = f": {one.where}" if one.where else ""
            return f"spotted from the {one.mate}{where}"
    return ""


def _first(half: HalfFact, design: Design) -> str:
    """Why a half comes first: the other is made to it, or no more than tried with it."""
    fit = design.facts.about(FitFact, half.joint)
    is_tried = fit is not None and not fit.suit
    return f"make this half first{': the other is tried with it' if is_tried else ''}"


def _meets(half: HalfFact, how: str, design: Design) -> str:
    mate = _mate(half.mate, design)
    return f"{mate}: {how}" if how else mate


def _mate(mate: str, design: Design) -> str:
    """`bore of the arm` for `arm.bore`; what is in words already stays."""
    item, _, place = mate.partition(".")
    found = design.item(item)
    if found is None or " " in place:
        return mate
    return f"{place.replace('_', ' ')} of the {found.title}" if place else found.title


def _joined(one: Fabrication, design: Design) -> Section:
    pieces = ", ".join(
        f"{member.count} off {_item_title(member.item, design)}" for member in one.pieces
    )
    joined = one.joined.replace("_", " ")
    blocks: list[Block] = [
        Facts((("Pieces", (pieces,)), ("Joined", (f"{joined}, then machined as one",))))
    ]
    blocks += _features(one.name, one.features, design)
    if one.note:
        blocks.append(Paragraph((Strong("Note: "), one.note)))
    return _as_leaf(one, design, blocks)


def _item_title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
