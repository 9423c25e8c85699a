"""The mandrel for the divider: the words and sizes that its recipe is printed with."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Misread, read_thread
from binder_plugins.operations.aids.suited import Suited
from binder_plugins.operations.bench import divider
from binder_plugins.operations.table_mandrel import (
    FLANGE,
    Cut,
    TableMandrel,
    table_mandrel,
)
from binder_trade.threads import NotMade, from_name

if TYPE_CHECKING:
    from binder.api import Workshop
    from binder_plugins.operations.aids.sizes import Place

# Common practice, no source, in mm: what a nut's thread is thinner than the bore, and what sawing
# and facing take.
_THINNER, _SAWN = 0.5, 3.0


def mandrel_at(place: Place) -> TableMandrel | None:
    """The mandrel for the teeth of a set-up; None where they are no plain ones."""
    cut = next((act for act in place.setup.acts if act.act == "cut-teeth"), None)
    if cut is None:
        return None
    teeth = Cut(cut.feature, cut.deep, cut.size)
    return table_mandrel(place.design, place.route.subject, place.size, teeth)


def for_table(place: Place) -> Suited:
    """A mandrel as its wheel and cutter want it; in general words where its teeth tell no size."""
    found = mandrel_at(place)
    on = {"divider": divider(place.design.workshop) or "table"}
    nut = _nut(place.design.workshop, place.size)
    is_cut = nut != _NO_DIE
    bought = {
        "nut_tools": f", {nut} die, tailstock holder for dies" if is_cut else "",
        "nut_buy": f"{nut} nut and washer: {_FOR} (one serves all)" if is_cut else "",
    }
    if found is None:
        under = "thinner than what is cut on the work"
        return Suited(
            {**on, "neck": f"a shoulder, {under}, long enough for the cutter to pass",
             "spigot": "less than the work is thick", "nut": nut, "washer": under,
             "end": _END.format(flange=place.mm(FLANGE)),
             "centred": _CENTRED if place.setup.grip.support else "", **bought},
        )  # fmt: skip
    return Suited(
        {
            **on,
            "neck": _neck(found, place),
            "spigot": f"{place.mm(max(found.wide - 0.5, found.wide * 0.8))} long",
            "nut": nut,
            "washer": f"no wider than ⌀{place.mm(min(found.neck, found.low))}",
            "end": _HEAD if found.is_on_head
            else _END.format(flange=place.mm(FLANGE)),
            "centred": _CENTRED if place.setup.grip.support else "",
            **bought,
        },
        found.across,
        math.ceil(found.long + _SAWN),
    )  # fmt: skip


_NO_DIE = "to a thread thinner than the bore"
_FOR = "mandrels for the table"
_CENTRED = (
    "centre the nut's end for the footstock, no wider than the thread's core, while it is still "
    "in the chuck"
)
_END = (
    "leave {flange} of the bar's full size behind that as the flange that is clamped; saw off "
    "there, hold it by what is turned, and face the flange's back square: it lies on the table"
)
_HEAD = "leave the rest of the bar's full size, for the chuck of the head"


def _neck(found: TableMandrel, place: Place) -> str:
    """The shoulder under the teeth and what follows it."""
    stop = "the chuck" if found.is_on_head else "the flange"
    who = "it stands" if found.is_on_head else "clamps and nuts stand"
    free = (
        f"{stop} is {place.mm(found.apart)} behind the wheel, so that {who} clear of cutter and "
        "spindle"
    )
    low = f"the bottoms of the teeth lie at ⌀{place.mm(round(found.root, 2))}"
    if found.low < found.root:
        low = f"the backs of the teeth pass {place.mm(round(found.low / 2, 2))} from the axis"
    if found.is_grazed:
        low += ", so that the cutter grazes it, which does no harm in soft steel"
    if not found.swing:
        return f"⌀{place.mm(found.neck)} ({low}); go on at that size until {free}"
    return (
        f"⌀{place.mm(found.neck)} ({low}), {place.mm(found.swing)} long, as far as the cutter "
        f"swings past the wheel; then ⌀{place.mm(found.body)} until {free}"
    )


def _nut(workshop: Workshop, bore: float) -> str:
    """The thread of the nut that is cut with a die of this workshop."""
    sizes = []
    for one in workshop.dies():
        name = read_thread(one.designation)
        try:
            found = 0.0 if isinstance(name, Misread) else float(from_name(name).major_mm)
        except NotMade:
            continue
        if 0 < found <= bore - _THINNER:
            sizes.append((found, one.designation))
    return max(sizes)[1] if sizes else _NO_DIE
