"""A drawing to one sheet, or to two where all its views on one come out too small to be read."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from binder_drafting import Request, Sheet, View, draft

# A view that is drawn smaller than life and gets no longer than this on the paper, in mm, shows
# its holes as blots. Common practice, no source.
_LEGIBLE = 50.0
_ASIDE = {"left": "from the left", "right": "from the right"}


def drafted(request: Request) -> tuple[Sheet, ...]:
    """One sheet; or two of one larger scale, the views from behind and below on the second."""
    whole = draft(request)
    if request.fields is None or not _is_too_small(whole, request):
        return (whole,)
    for second in _seconds(request):
        halves = tuple(_halves(request, second))
        sheets = tuple(draft(half) for half in halves)
        least = min(_scale(sheet) for sheet in sheets)
        if least > _scale(whole) and not any(sheet.problems for sheet in sheets):
            return _of_one_scale(halves, sheets, least)
    return (whole,)


def _seconds(request: Request) -> Iterator[frozenset[str]]:
    """The views of the second sheet: those that lie free, then those from the sides as well."""
    names = [view.name for view in request.views if not view.is_picture]
    free = {view.name for view in request.views if view.name in names and view.title}
    sides = free | {name for name in names if name in _ASIDE}
    for found in (free, sides):
        if found and len(found) < len(names):
            yield frozenset(found)


def _of_one_scale(
    halves: Sequence[Request], sheets: Sequence[Sheet], scale: float
) -> tuple[Sheet, ...]:
    return tuple(
        sheet if _scale(sheet) == scale else draft(replace(half, scales=(scale,)))
        for half, sheet in zip(halves, sheets, strict=True)
    )


def _is_too_small(sheet: Sheet, request: Request) -> bool:
    names = {view.name for view in request.views if not view.is_picture}
    longest = max(
        (max(one.box.width, one.box.height) for one in sheet.views if one.name in names),
        default=_LEGIBLE,
    )
    return _scale(sheet) < 1.0 and longest < _LEGIBLE


def _scale(sheet: Sheet) -> float:
    """The scale of the sheet as a number: 0.5 for 1 : 2."""
    paper, part = sheet.scale.split(" : ")
    return float(paper) / float(part)


def _halves(request: Request, second: frozenset[str]) -> Iterator[Request]:
    """Each with its own views and their sizes; what leaves its place on the sheet has a title."""
    fields = request.fields
    if fields is None:
        return
    for number, is_second in enumerate((False, True), 1):
        yield replace(
            request,
            views=tuple(
                _titled(view) if is_second else view
                for view in request.views
                if (view.name in second) is is_second
            ),
            sizes=tuple(size for size in request.sizes if (size.view in second) is is_second),
            details=tuple(one for one in request.details if (one.view in second) is is_second),
            data=() if is_second else request.data,
            fields=replace(fields, title=f"{fields.title}, sheet {number} of 2"),
        )


def _titled(view: View) -> View:
    return view if view.title else replace(view, side="", title=_ASIDE[view.name])
