"""Faults of a workshop file that show only when several of its lines are seen together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import chain

from binder.diagnostics import Diagnostic, Labelled, Span
from binder.source import Document, Path
from binder.spec.forms import FORMS
from binder.spec.values import Size
from binder.units import Misread, read_thread, shown
from binder.workshop import codes
from binder.workshop.fields import same_thread
from binder.workshop.models import WorkshopEntry
from binder.workshop.owned import single_taps
from binder.workshop.tools import Owned


def faults(entry: WorkshopEntry, tools: Owned, document: Document) -> Iterator[Diagnostic]:
    """What contradicts, stands twice or lacks its other half."""
    yield from _unread_threads(tools)
    yield from _twice(entry, tools)
    yield from _contradicting(entry)
    yield from _gear_cutters(entry, document)
    yield from _stock(entry, document)
    yield from _prices(entry, document)
    yield from _machines(entry, document)


def _unread_threads(tools: Owned) -> Iterator[Diagnostic]:
    threads = chain(
        ((tap.designation, tap.at) for tap in tools.taps),
        ((die.designation, die.at) for die in tools.dies),
    )
    for designation, at in threads:
        name = read_thread(designation)
        if isinstance(name, Misread):
            message = f"which thread is '{designation}'?"
            yield codes.BAD_DESIGNATION.at(at, message, help=name.reason)


def _twice(entry: WorkshopEntry, tools: Owned) -> Iterator[Diagnostic]:
    taps = single_taps(entry)
    drawers: list[Iterable[tuple[object, str, Span]]] = [
        (((drill.drawer, drill.mm), drill.name, drill.at) for drill in tools.drills),
        (((one.drawer, one.mm), one.name, one.at) for one in tools.reamers),
        (((one.plunges, one.mm), one.name, one.at) for one in tools.end_cutters),
        (((kind, same_thread(tap)), f"the {kind} tap {tap}", tap.span) for kind, tap in taps),
        (
            (same_thread(die.designation), f"the die {die.designation}", die.at)
            for die in tools.dies
        ),
    ]
    for drawer in drawers:
        seen: dict[object, Span] = {}
        for key, name, at in sorted(drawer, key=lambda one: one[2]):
            if key in seen:
                yield _twice_at(name, at, seen[key])
            seen.setdefault(key, at)


def _twice_at(name: str, at: Span, first: Span) -> Diagnostic:
    related = [Labelled(first, "here already")] if first != at else []
    return codes.TOOL_TWICE.at(
        at, f"{name} stands twice here", related=related, help="drop one, or mend its size"
    )


def _pairs(entry: WorkshopEntry) -> Iterator[tuple[str, Size | None, str, Size]]:
    """What must not be more than what, each with its name."""
    for lathe in entry.machines.lathes.values():
        over = lathe.swing_over_cross_slide
        yield "the swing over the cross-slide", over, "the swing", lathe.swing
    for disc in (*entry.cutters.slitting_saws, *entry.cutters.tee_slot_cutters):
        yield "the width of the cutter", disc.width, "its diameter", disc.diameter
    for tool in entry.measuring.values():
        yield "the resolution", tool.resolution, "the largest size", tool.range.most


def _contradicting(entry: WorkshopEntry) -> Iterator[Diagnostic]:
    for small_name, small, large_name, large in _pairs(entry):
        if small is not None and small.exact > large.exact:
            yield codes.SIZES_CONTRADICT.at(
                small.span,
                f"{small_name}, {shown(small.quantity)}, is more than {large_name}",
                label=f"more than {shown(large.quantity)}",
                related=[Labelled(large.span, f"{large_name} is told here")],
                help="measure again; mostly the two were exchanged",
            )


def _gear_cutters(entry: WorkshopEntry, document: Document) -> Iterator[Diagnostic]:
    for index, cutters in enumerate(entry.cutters.gear_cutters):
        given = [cutters.module, cutters.diametral_pitch]
        if given.count(None) == 1:
            continue
        path: Path = ("cutters", "gear_cutters", index)
        if cutters.module is None:
            span, message = document.span((*path, "numbers"), of_key=True), "the pitch is not told"
        else:
            span = document.span((*path, "diametral_pitch"), of_key=True)
            message = "both a module and a diametral pitch are told"
        yield codes.ONE_OF_TWO.at(span, message, help="write one: `module` or `diametral_pitch`")


def _stock(entry: WorkshopEntry, document: Document) -> Iterator[Diagnostic]:
    pieces = chain(
        ((("shelf", index), piece) for index, piece in enumerate(entry.shelf)),
        ((("buying", "prices", index), piece) for index, piece in enumerate(entry.buying.prices)),
    )
    for path, piece in pieces:
        form = FORMS[piece.stock.form]
        if not piece.stock.sizes and form.sizes:
            wanted = " x ".join(form.sizes)
            yield codes.SHELF_SIZE_MISSING.at(
                piece.stock.span,
                f"which {piece.stock.form} is it?",
                help=f"write the {wanted} before it, as `20 mm round bar`",
            )
        if not form.is_bar and form.sizes and piece.width is None:
            yield codes.SHELF_SIZE_MISSING.at(
                document.span((*path, "stock")),
                f"the width of this {piece.stock.form} is not told",
                help="add `width:` beside its length",
            )


def _prices(entry: WorkshopEntry, document: Document) -> Iterator[Diagnostic]:
    if entry.buying.currency is not None:
        return
    for section, pieces in ((("shelf",), entry.shelf), (("buying", "prices"), entry.buying.prices)):
        for index, piece in enumerate(pieces):
            if piece.price is not None:
                span = document.span((*section, index, "price"))
                yield codes.CURRENCY_MISSING.at(
                    span, "a price of which currency?", help="add `currency:` under `buying`"
                )
                return


def _machines(entry: WorkshopEntry, document: Document) -> Iterator[Diagnostic]:
    machines = entry.machines
    if not (machines.lathes or machines.mills or machines.drilling_machines or machines.saws):
        yield codes.NO_MACHINE.at(
            document.span(("machines",), of_key=True),
            "this workshop has no machine",
            help="list the machines that may be used, under `machines`",
        )
