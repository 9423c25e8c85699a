"""Parts to their leaves: what it is cut from, its sizes, and what is cut in it."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Blank,
    Block,
    Column,
    CutSize,
    Design,
    Diagnostic,
    Fabrication,
    Facts,
    Feature,
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
    shown,
    shown_length,
    size_text,
)
from binder_plugins.shapes.forming.turned import section_text
from binder_plugins.shapes.kinds import TurnedStep
from binder_plugins.shapes.turned import measured
from binder_plugins.shapes.words import what, where
from binder_plugins.shapes.written import written_rows
from binder_solid.facts import ViewsFact


def part_leaves(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """A section that holds one leaf for each part and fabrication."""
    leaves = [_leaf(part, design) for part in design.parts.values()]
    leaves += [_joined(one, design) for one in design.fabrications.values()]
    if leaves:
        yield Section("parts", "Parts", Place.PARTS, (), sections=tuple(leaves))


def _leaf(part: Part, design: Design) -> Section:
    is_drawn = design.facts.about(ViewsFact, part.name) is not None
    blocks: list[Block] = [] if is_drawn else list(_told(part, design))
    units = design.units
    if part.features:
        blocks.append(_features(part.name, part.features, units))
    blocks += _halves(part.name, design)
    if part.note:
        blocks.append(Paragraph((Strong("Note: "), part.note)))
    if part.because:
        blocks.append(Paragraph((Strong("Because: "), part.because)))
    return _as_leaf(part, design, blocks)


def _told(part: Part, design: Design) -> Iterator[Block]:
    """What a drawing and its title block would say, where there is none."""
    yield Facts(tuple(_head(part, design)))
    if isinstance(part.shape, list):
        yield _steps(part, design.units)
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


def _steps(part: Part, units: str) -> Table:
    columns = (
        Column("Step", 2),
        Column("Section", 3),
        Column("Length", 2, is_figure=True),
        Column("Ends at", 2, is_figure=True),
        Column("Measured", 2),
    )
    steps, _ = measured(part, part.shape if isinstance(part.shape, list) else [])
    rows: list[tuple[Text, ...]] = []
    for number, step in enumerate(steps, 1):
        name = str(step.step.name or number)
        length = shown_length(step.length, units) + (" (rest)" if step.is_rest else "")
        rows.append(
            (
                (name,),
                (_section(step.step, units),),
                (length,),
                (shown_length(step.end, units),),
                (Blank(f"{part.name} {name}", units),),
            )
        )
    return Table(columns, tuple(rows), caption="Steps, from the first face")


def _section(step: TurnedStep, units: str) -> str:
    words = section_text(step, units)
    if step.taper is not None:
        return f"taper {words}"
    if step.throw is None:
        return words
    clock = f", {shown(step.clock.quantity)} from the top" if step.clock is not None else ""
    return f"{words}, thrown {size_text(step.throw, units)}{clock}"


def _features(owner: str, features: tuple[Feature, ...], units: str) -> Table:
    columns = (
        Column("Feature", 2),
        Column("What", 4),
        Column("Where", 4),
        Column("Measured", 2),
    )
    rows = tuple(_feature(owner, feature, units) for feature in features)
    return Table(columns, rows, caption="Cut or formed in it")


def _feature(owner: str, feature: Feature, units: str) -> tuple[Text, ...]:
    notes = [note for note in (feature.entry.note, feature.entry.because) if note]
    dummy = " (dummy)" if feature.is_dummy else ""
    note = f"; {'; '.join(notes)}" if notes else ""
    return (
        (_name(feature),),
        (what(feature, units) + dummy + note,),
        (where(feature, units),),
        (Blank(f"{owner} {feature.name}", units),),
    )


def _name(feature: Feature) -> Typed | str:
    """The name as the maker typed it, or that of the joint which asked for the feature."""
    if feature.implied_by:
        return feature.name.replace("_", " ")
    return Typed(feature.name)


def _halves(owner: str, design: Design) -> Iterator[Block]:
    """What the joints ask of this part: the size, what it meets, how the half is made."""
    columns = (
        Column("Place", 2),
        Column("To size", 5),
        Column("Meets", 4),
        Column("How", 3.4),
        Column("Measured", 3),
    )
    halves = [half for half in design.facts.all(HalfFact) if half.item == owner]
    if halves:
        rows = tuple(_half(half, design) for half in halves)
        yield Table(columns, rows, caption="Where it meets other parts")


def _half(half: HalfFact, design: Design) -> tuple[Text, ...]:
    units = design.units
    how = f"{half.how}; make this half first" if half.is_master else half.how
    blank: Text = (Blank(f"joint {half.joint} {half.place}", units),)
    return ((Typed(half.place),), (half.what,), (_mate(half.mate, design),), (how,), blank)


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
    units = design.units
    joined = one.joined.replace("_", " ")
    blocks: list[Block] = [
        Facts((("Pieces", (pieces,)), ("Joined", (f"{joined}, then machined as one",))))
    ]
    if one.features:
        blocks.append(_features(one.name, one.features, units))
    blocks += _halves(one.name, design)
    if one.note:
        blocks.append(Paragraph((Strong("Note: "), one.note)))
    return _as_leaf(one, design, blocks)


def _item_title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
