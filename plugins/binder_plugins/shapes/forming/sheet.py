"""Parts of sheet to bodies: flat by their outline, or bent up from a strip."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Part, Size, shown, size_text
from binder_plugins.shapes.forming.bends import bent_frames, developed, section_of
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.outline import Node, fault_of, outline_of
from binder_plugins.shapes.forming.told import figure, note_at
from binder_plugins.shapes.vocabulary.points import bulge
from binder_plugins.shapes.vocabulary.rods import Bend, Sheet
from binder_solid.facts import Located, Told
from binder_solid.forms import Box, Frame, Raised
from binder_solid.lines import least_and_most


def sheet_nodes(shape: Sheet) -> tuple[Node, ...]:
    """The outline of a flat part."""
    return tuple(
        Node((one.x.mm, one.y.mm), bulge(one), one.corner.mm if one.corner is not None else 0.0)
        for one in shape.points or ()
    )


def sheet_body(part: Part, shape: Sheet, units: str) -> Body | None:
    """The part as it is when it is done."""
    if shape.bends:
        return _bent(part, shape, units)
    long, wide, thick = shape.length.mm, shape.width.mm, shape.thickness.mm
    told = tuple(_sides(part, shape, units))
    form: Box | Raised = Box(long, wide, thick)
    if shape.points:
        nodes = sheet_nodes(shape)
        if fault_of(nodes) is not None:
            return None
        form = Raised(outline_of(nodes), thick)
    notes = tuple(_spots(part, shape, units))
    return Body("sheet", form, (0.0, 0.0, 0.0), (long, wide, thick), told=told, notes=notes)


def _sides(part: Part, shape: Sheet, units: str) -> Iterator[Told]:
    for along, name in zip("xyz", ("length", "width", "thickness"), strict=True):
        size: Size = getattr(shape, name)
        yield Told(f"{part.name}.{name}", along, 0.0, size.mm, size_text(size, units))


def _spots(part: Part, shape: Sheet, units: str) -> Iterator[Located]:
    """Each point of the outline, told from the lower left corner, each place once."""
    seen = {("x", 0), ("y", 0), ("x", shape.length.exact), ("y", shape.width.exact)}
    for number, one in enumerate(shape.points or (), 1):
        key = f"{part.name}.points.{number}"
        told = [
            Told(f"{key}.{name}", name, 0.0, size.mm, size_text(size, units))
            for name, size in (("x", one.x), ("y", one.y))
            if (name, size.exact) not in seen
        ]
        seen |= {("x", one.x.exact), ("y", one.y.exact)}
        fields = [name for name in ("arc", "hollow", "corner") if getattr(one, name) is not None]
        words = ", ".join(
            f"R{size_text(getattr(one, name), units)}{' hollow' if name == 'hollow' else ''}"
            for name in fields
        )
        yield note_at(
            part, f"point {number}", (one.x.mm, one.y.mm, shape.thickness.mm), words,
            [f"points.{number}.{name}" for name in fields], face="top", told=tuple(told),
        )  # fmt: skip


def _bent(part: Part, shape: Sheet, units: str) -> Body | None:
    """The strip's section raised across its width; each leg has a face of its own."""
    section = section_of(shape)
    if section is None:
        return None
    wide = shape.width.mm
    form = Raised(section, wide, Frame((0.0, wide, 0.0), (0.0, -1.0, 0.0), (1.0, 0.0, 0.0)))
    (x, z), (u, w) = least_and_most(section)
    size = size_text(shape.width, units)
    told = (Told(f"{part.name}.width", "y", 0.0, wide, size),)
    return Body(
        "sheet", form, (x, 0.0, z), (u, wide, w),
        told=told, notes=tuple(_bend_notes(part, shape, units)),
        faces=bent_frames(shape), metal=shape.thickness.mm,
    )  # fmt: skip


def _bend_notes(part: Part, shape: Sheet, units: str) -> Iterator[Located]:
    spots = [frame.origin for _, frame in bent_frames(shape)]
    flat = f"{figure(developed(shape))} mm flat"
    words = (
        f"{size_text(shape.thickness, units)} thick, {size_text(shape.length, units)} "
        f"over the outsides, {flat}"
    )
    yield note_at(part, "strip", spots[0], words, ("thickness", "length"))
    for number, (bend, spot) in enumerate(zip(shape.bends, spots[1:], strict=True), 1):
        fields = [f"bends.{number}.{name}" for name in ("at", "angle", "inside")]
        fields += [f"bends.{number}.k"] if bend.k is not None else []
        yield note_at(part, f"bend {number}", spot, _words(bend, units), fields)


def _words(bend: Bend, units: str) -> str:
    way = bend.way or "up"
    return (
        f"bend {shown(bend.angle.quantity)} {way}, R{size_text(bend.inside, units)} inside, "
        f"corner {size_text(bend.at, units)} from left"
    )
