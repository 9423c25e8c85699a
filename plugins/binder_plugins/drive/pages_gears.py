"""Gears to their tables: how each is turned, cut and measured, and how they mesh."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Block,
    Column,
    Design,
    Facts,
    Inset,
    Reckoned,
    Subheading,
    Table,
    Text,
    exact,
    shown_length,
)
from binder_plugins.drive.pages_dividing import dial_blocks
from binder_plugins.drive.pairs.facts import MeshFact, ToothFact


def gear_blocks(design: Design) -> Iterator[Block]:
    """The tables of all gears of the model."""
    teeth = [
        one
        for one in design.facts.all(ToothFact)
        if one.blank is not None and one.subject in design.parts
    ]
    if teeth:
        yield Subheading("Gears")
        yield _cut(teeth, design)
        yield _measured(teeth, design)
    meshes = [one for one in design.facts.all(MeshFact) if one.mesh is not None]
    if meshes:
        yield Subheading("Centres")
        yield _centres(meshes, design)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name


def _size(mm: float, design: Design) -> str:
    return shown_length(exact(round(mm, 3)), design.units)


def _cut(teeth: list[ToothFact], design: Design) -> Table:
    columns = (
        Column("Gear", 3),
        Column("Teeth", 1.2, is_figure=True),
        Column("Pitch", 2),
        Column("Blank", 2, is_figure=True),
        Column("Depth of cut", 2, is_figure=True),
        Column("Cutter", 2.4),
    )
    rows: list[tuple[Text, ...]] = []
    for one in teeth:
        blank = one.blank
        if blank is None:
            continue
        rows.append((
            (_title(one.subject, design),),
            (str(one.gear.teeth),),
            (pitch_words(one),),
            (Reckoned(_size(blank.blank_mm, design), "module × (teeth + 2)"),),
            (_size(blank.depth_mm, design),),
            (cutter_words(one),),
        ))  # fmt: skip
    return Table(columns, tuple(rows))


def _measured(teeth: list[ToothFact], design: Design) -> Table:
    columns = (Column("Gear", 3), Column("Divide", 4), Column("Measure", 5))
    rows: list[tuple[Text, ...]] = [
        ((_title(one.subject, design),), (one.dividing or "nothing that divides is owned",),
         (measure_words(one, design),))
        for one in teeth
    ]  # fmt: skip
    return Table(columns, tuple(rows))


def pitch_words(one: ToothFact) -> str:
    """`module 0.5, 20°`, with the helix where there is one."""
    gear = one.gear
    helix = f", helix {gear.helix_deg:g}°" if gear.helix_deg else ""
    if gear.rack.system == "DP":
        return f"{25.4 / gear.module_mm:.4g} DP, {gear.rack.angle_deg:g}°{helix}"
    return f"module {gear.module_mm:.4g}, {gear.rack.angle_deg:g}°{helix}"


def cutter_words(one: ToothFact) -> str:
    """`no. 7, 14 to 16 teeth`."""
    if one.cutter is None:
        return "shaped, not milled"
    most = f"to {one.cutter.most} teeth" if one.cutter.most else "teeth to a rack"
    return f"no. {one.cutter.number}, {one.cutter.least} {most}"


def measure_words(one: ToothFact, design: Design) -> str:
    """The span over teeth, and the size over pins."""
    found = []
    if one.span is not None:
        found.append(f"{_size(one.span.span_mm, design)} over {one.span.across} teeth")
    if one.pins is not None:
        pin = _size(one.pins.pin_mm, design)
        found.append(f"{_size(one.pins.size_mm, design)} over {pin} pins")
    return "; ".join(found)


def _centres(meshes: list[MeshFact], design: Design) -> Table:
    columns = (
        Column("Pair", 4),
        Column("Centres wanted", 2, is_figure=True),
        Column("Frame has", 2, is_figure=True),
        Column("Play at pitch", 2, is_figure=True),
        Column("Teeth in contact", 2, is_figure=True),
    )
    rows: list[tuple[Text, ...]] = []
    for one in meshes:
        if one.mesh is None:
            continue
        frame = _size(one.frame, design) if one.frame is not None else "not told"
        rows.append((
            (f"{_title(one.pinion, design)} and {_title(one.wheel, design)}",),
            (_size(one.wanted, design),),
            (frame,),
            (_size(one.mesh.backlash_mm, design),),
            (f"{one.mesh.contact_ratio:.2f}",),
        ))  # fmt: skip
    return Table(columns, tuple(rows))


def gear_leaves(design: Design) -> Iterator[Inset]:
    """The teeth of a gear on its own leaf, as a gear's drawing states them (ISO 1340)."""
    for one in design.facts.all(ToothFact):
        if one.subject not in design.parts or one.blank is None:
            continue
        rows = (
            ("Teeth", str(one.gear.teeth)),
            ("Pitch", pitch_words(one)),
            ("Pitch diameter", _size(one.blank.pitch_mm, design)),
            ("Blank", _size(one.blank.blank_mm, design)),
            ("Depth of cut", _size(one.blank.depth_mm, design)),
            ("Cutter", cutter_words(one)),
            ("Divide", one.dividing),
            ("Measure", measure_words(one, design)),
        )
        told = tuple((name, (value,)) for name, value in rows if value)
        places = dial_blocks(one.gear.teeth, design.workshop)
        yield Inset(f"part-{one.subject}", (Subheading("Teeth"), Facts(told), *places))
