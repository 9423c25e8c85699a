"""Pilot holes that are spotted from a mate to rows of the table of data: no size places them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_drafting import Datum
from binder_plugins.drawings.callouts import bare
from binder_solid.piloting import pilots_in

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design


def pilot_rows(item: str, design: Design) -> Iterator[Datum]:
    """`4 pilot holes ⌀2, 16 deep, in top`: `spotted from foot plate`, for each joint."""
    for one in pilots_in(item, design):
        many = f"{one.count} pilot holes" if one.count > 1 else "1 pilot hole"
        deep = f", {one.deep} deep" if one.deep else ""
        place = one.half.place.replace("_", " ")
        said = f"{many} ⌀{one.size}{deep}, in {place}" if place else f"{many} ⌀{one.size}{deep}"
        yield Datum(f"{one.half.subject}.pilots", bare(said), f"spotted from {one.mate}")
