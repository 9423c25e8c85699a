"""A workshop file as written to its tools and stock as plugins see them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TypeVar

from binder.source import Document, Written
from binder.workshop.fields import same_thread
from binder.workshop.models import WorkshopEntry
from binder.workshop.runs import Run
from binder.workshop.shelf import Piece, ShelfPiece
from binder.workshop.tools import (
    Die,
    Drill,
    EndCutter,
    Instrument,
    Owned,
    Reamer,
    StockPiece,
    Tap,
)

TAP_KINDS = ("taper", "second", "plug")
Sized = TypeVar("Sized", Drill, Reamer, EndCutter)


def owned(entry: WorkshopEntry, document: Document) -> Owned:
    """All tools and stock of a valid file."""
    return Owned(
        drills=_by_size(_drills(entry)),
        reamers=_by_size(_reamers(entry)),
        end_cutters=_by_size(_end_cutters(entry)),
        taps=tuple(_taps(entry)),
        dies=tuple(Die(str(designation), designation.span) for designation in entry.dies),
        instruments=tuple(_instruments(entry, document)),
        shelf=tuple(_piece(piece, piece.quantity) for piece in entry.shelf),
        sold=tuple(_piece(piece, None) for piece in entry.buying.prices),
    )


def _by_size(tools: Iterable[Sized]) -> tuple[Sized, ...]:
    return tuple(sorted(tools, key=lambda tool: (tool.mm, tool.name)))


def _drills(entry: WorkshopEntry) -> Iterator[Drill]:
    for drawer, runs in entry.drills.items():
        for run in runs:
            yield from (Drill(one.name, one.mm, drawer, run.span) for one in run.members)


def _reamers(entry: WorkshopEntry) -> Iterator[Reamer]:
    for drawer, reamers in entry.reamers.items():
        gives = reamers.gives or ""
        for run in reamers.sizes:
            for one in run.members:
                yield Reamer(one.name, one.mm, drawer, str(gives), reamers.by_hand, run.span)


def _end_cutters(entry: WorkshopEntry) -> Iterator[EndCutter]:
    kinds: list[tuple[tuple[Run, ...] | None, bool]] = [
        (entry.cutters.end_mills, False),
        (entry.cutters.slot_drills, True),
    ]
    for runs, plunges in kinds:
        for run in runs or ():
            yield from (EndCutter(one.name, one.mm, plunges, run.span) for one in run.members)


def single_taps(entry: WorkshopEntry) -> Iterator[tuple[str, Written]]:
    """Every tap by its kind and designation; a set counts as its three taps."""
    for designation in entry.taps.sets:
        yield from ((kind, designation) for kind in TAP_KINDS)
    for kind in TAP_KINDS:
        yield from ((kind, designation) for designation in getattr(entry.taps, kind))


def _taps(entry: WorkshopEntry) -> Iterator[Tap]:
    """Those of one thread together, in the order of their places."""
    threads: dict[object, list[tuple[str, Written]]] = {}
    for kind, designation in single_taps(entry):
        threads.setdefault(same_thread(designation), []).append((kind, designation))
    for taps in sorted(threads.values(), key=lambda taps: taps[0][1].span):
        owned_kinds = {kind for kind, _ in taps}
        kinds = tuple(kind for kind in TAP_KINDS if kind in owned_kinds)
        yield Tap(str(taps[0][1]), kinds, taps[0][1].span)


def _instruments(entry: WorkshopEntry, document: Document) -> Iterator[Instrument]:
    for name, tool in entry.measuring.items():
        yield Instrument(
            name,
            tuple(str(word) for word in tool.measures),
            tool.range.least.exact,
            tool.range.most.exact,
            tool.resolution.exact,
            document.span(("measuring", name), of_key=True),
        )


def _piece(piece: Piece | ShelfPiece, count: int | None) -> StockPiece:
    return StockPiece(
        form=piece.stock.form,
        section=tuple(size.exact for size in piece.stock.sizes),
        material=" ".join(piece.material.split()),
        length=piece.length.exact,
        width=piece.width.exact if piece.width is not None else None,
        count=count,
        price=piece.price,
        text=str(piece.stock.text),
        at=piece.stock.span,
    )
