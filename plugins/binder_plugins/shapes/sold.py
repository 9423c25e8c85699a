"""A section that is needed to the next larger one that is sold in its form."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import Design, Diagnostic, Quantity, shown
from binder_plugins.shapes import codes

# The series of sizes, metric and inch, in which each form of one size is sold.
_SERIES = {
    "round bar": ("drawn_rod", "drawn_rod_inch"),
    "drawn rod": ("drawn_rod", "drawn_rod_inch"),
    "hexagon bar": ("hexagon", "hexagon_inch"),
    "square bar": ("square", "square_inch"),
}
_ALSO = ("silver_steel", "silver_steel_inch", "hexagon_bsf", "hexagon_ba")


def sold_section(form: str, needed: tuple[Fraction, ...], design: Design) -> tuple[Fraction, ...]:
    """The next larger section of the model's own system of units; as needed where none is."""
    names = _SERIES.get(form)
    if names is None or len(needed) != 1:
        return needed
    name = names[0] if design.spec.written.model.units == "mm" else names[1]
    larger = (size.amount for size in _members(name, design) if size.amount >= needed[0])
    # Members stand smallest first.
    return (next(larger, needed[0]),)


def _members(name: str, design: Design) -> Iterator[Quantity]:
    series = design.spec.resolved.environment.series.get(name)
    if series is not None:
        yield from (size for _, size in series.members)


def check_sections(design: Design) -> Iterator[Diagnostic]:
    """Sections that were written and are in no series as sold, nor on the shelf."""
    shelf = {(piece.form, piece.section) for piece in design.workshop.shelf()}
    for part in design.parts.values():
        stock = part.stock
        if stock is None or len(stock.sizes) != 1 or stock.form not in _SERIES:
            continue
        size = stock.sizes[0]
        names = (*_SERIES[stock.form], *_ALSO)
        members = [one for name in names for one in _members(name, design)]
        known = any(one.amount == size.exact for one in members)
        if members and not known and (stock.form, (size.exact,)) not in shelf:
            near = min(members, key=lambda one: (abs(one.amount - size.exact), one.amount))
            yield codes.SECTION_NOT_SOLD.at(
                stock.span,
                f"{shown(size.quantity)} {stock.form} is not commonly sold",
                help=f"the nearest is {shown(near)}; or list yours on the shelf",
            )
