"""Items to the parts list and the list of what is bought.

The columns follow ISO 7573: item number, quantity, designation, reference, material and
remarks; stock stands beside material because the bench asks for both at once.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import (
    Assembly,
    Blank,
    Block,
    Bought,
    ClosedWithFact,
    Column,
    CutSize,
    Design,
    Diagnostic,
    Fabrication,
    HardwareFact,
    Item,
    ItemNumber,
    Link,
    MaterialFact,
    NumberOff,
    Paragraph,
    Part,
    Place,
    Section,
    Size,
    SmallWork,
    Subheading,
    Table,
    Text,
    exact,
    shown_length,
    size_text,
)
from binder_plugins.partslist.adhesives import adhesives
from binder_plugins.partslist.counting import members_of
from binder_plugins.partslist.for_places import for_places
from binder_plugins.partslist.room import most_outside
from binder_plugins.partslist.used_up import for_tools, used_up

_MADE = (
    Column("Item", 1.4, is_figure=True),
    Column("Off", 1.1, is_figure=True),
    Column("Designation", 4.4),
    Column("Reference", 3.4),
    Column("Material", 4.4),
    Column("Stock, finished length", 5.9),
    Column("Remarks", 3),
)
_OTHERS = (
    Column("Item", 1.5, is_figure=True),
    Column("Off", 1.3, is_figure=True),
    Column("Designation", 8),
    Column("Reference", 5),
    Column("Remarks", 11),
)


_FIRST_WORDS = (
    "Measure what is told by a size before anything is made to fit it, and write the figure "
    "down here. Screws and pins stand under Hardware; bars, plate and sheet in the cut list."
)


def list_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """The parts list, and the bought items with their critical sizes."""
    yield Section("parts-list", "Parts list", Place.PARTS_LIST, tuple(_lists(design)))
    if (
        _unlisted(design)
        or adhesives(design)
        or used_up(design)
        or for_tools(design.facts.all(SmallWork))
    ):
        yield Section(
            "shopping",
            "To buy and to find",
            Place.SHOPPING,
            tuple(_shopping(design)),
            starts_page=False,
        )


def _unlisted(design: Design) -> list[Bought]:
    """What is bought and stands in no list of hardware, or has to be measured."""
    listed = {fact.name for fact in design.facts.all(HardwareFact)}
    return [one for one in design.bought.values() if one.name not in listed or one.measured]


def _lists(design: Design) -> Iterator[Block]:
    made: list[Item] = [*design.parts.values(), *design.fabrications.values()]
    groups: tuple[tuple[str, Iterable[Item], bool], ...] = (
        ("Made", made, True),
        ("Bought in, or from the scrap box", design.bought.values(), False),
        ("Assemblies", design.assemblies.values(), False),
    )
    for title, items, is_made in groups:
        rows = tuple(_row(item, design, is_made=is_made) for item in items)
        if rows:
            yield Subheading(title)
            yield Table(_MADE if is_made else _OTHERS, rows)


def _row(item: Item, design: Design, *, is_made: bool) -> tuple[Text, ...]:
    number = design.facts.about(ItemNumber, item.name)
    count = design.facts.about(NumberOff, item.name)
    target = _target(item)
    name: Text = (Link(item.title, target),) if target else (item.title,)
    first: tuple[Text, ...] = (
        (str(number.number) if number else "",),
        (str(count.count) if count else "",),
        name,
        (item.name,),
    )
    stock: tuple[Text, ...] = ((_material(item, design),), (_stock(item, design),))
    return (*first, *(stock if is_made else ()), (_remarks(item, design),))


def _target(item: Item) -> str:
    if isinstance(item, (Part, Fabrication)):
        return f"part-{item.name}"
    return f"assembly-{item.name}" if isinstance(item, Assembly) else ""


def _material(item: Item, design: Design) -> str:
    if not isinstance(item, Part):
        return ""
    known = design.facts.about(MaterialFact, item.name)
    return f"{item.material} {known.designation}".strip() if known else item.material


def _stock(item: Item, design: Design) -> str:
    cut = design.facts.about(CutSize, item.name)
    if cut is None:
        return ""
    width = f" × {shown_length(cut.width, design.units)}" if cut.width is not None else ""
    return f"{cut.section_text}, {shown_length(cut.length, design.units)}{width}"


def _remarks(item: Item, design: Design) -> str:
    words: list[str] = []
    if isinstance(item, Part):
        words += ["one of each hand"] if item.handed else []
        words += ["dummy"] if item.is_dummy else []
        words += [item.finish] if item.finish else []
    if isinstance(item, Bought):
        words += ["from the scrap box"] if item.is_salvaged else []
        words += [f"measure first: {', '.join(item.measured)}"] if item.measured else []
    members = members_of(item)
    words += [_members(members, design)] if members else []
    return "; ".join(filter(None, (*words, _closed_with(item.name, design))))


def _members(members: Iterable[object], design: Design) -> str:
    return "of items " + ", ".join(_number(getattr(one, "item", ""), design) for one in members)


def _closed_with(name: str, design: Design) -> str:
    """The hardware that goes in with the members of an assembly; '' for none."""
    found = design.facts.about(ClosedWithFact, name)
    items = found.items if found is not None else ()
    return "closed with " + ", ".join(_number(one, design) for one, _ in items) if items else ""


def _number(name: str, design: Design) -> str:
    number = design.facts.about(ItemNumber, name)
    return str(number.number) if number else name


def _shopping(design: Design) -> Iterator[Block]:
    yield Paragraph((_FIRST_WORDS,))
    columns = (
        Column("Item", 1, is_figure=True),
        Column("Off", 1, is_figure=True),
        Column("What", 5),
        Column("Size that matters", 3),
        Column("Measured", 3),
        Column("Note", 4),
    )
    rows = [row for item in _unlisted(design) for row in _bought_rows(item, design)]
    for what, joints in (*adhesives(design).items(), *used_up(design).items()):
        places = f"for {len(joints)} place{'s' if len(joints) > 1 else ''}"
        rows.append((("",), ("1",), (what,), (places,), ("",), (for_places(joints),)))
    for what, (off, tools) in for_tools(design.facts.all(SmallWork)).items():
        note = f"to make: {', '.join(tools)}"
        rows.append((("",), (str(off),), (what,), ("",), ("",), (note,)))
    yield Table(columns, tuple(rows))


_COUNTED = ("teeth", "holes", "pins", "starts")


def _unit(measured: str) -> str:
    return "" if measured in _COUNTED else "mm"


def _of_cord(item: Bought, design: Design) -> dict[str, Size]:
    """The diameter of what is wound, as its drum wants it."""
    for joint in design.joints.values():
        rope = getattr(joint.entry, "rope", None)
        if joint.kind == "winds" and joint.ends[-1].item == item.name and isinstance(rope, Size):
            return {"diameter": rope}
    return {}


def _bought_rows(item: Bought, design: Design) -> Iterator[tuple[Text, ...]]:
    count = design.facts.about(NumberOff, item.name)
    sizes = {**_of_cord(item, design), **dict(item.sizes)}
    names = list(dict.fromkeys([*sizes, *item.measured])) or [""]
    for row, name in enumerate(names):
        size = f"{name} {size_text(sizes[name], design.units)}" if name in sizes else name
        most = most_outside(item.name, design) if name == "outside" and name not in sizes else None
        size += f", at most {shown_length(exact(most), design.units)}" if most else ""
        blank: Text = (
            (Blank(f"{item.name} {name}", _unit(name)),) if name in item.measured else ("",)
        )
        note = "; ".join(word for word in (item.note, item.because) if word)
        first: tuple[Text, ...] = (
            (_number(item.name, design),),
            (str(count.count) if count else "1",),
            (item.what + (" (scrap box)" if item.is_salvaged else ""),),
        )
        lead = first if row == 0 else (("",), ("",), ("",))
        yield (*lead, (size,), blank, (note if row == 0 else "",))
